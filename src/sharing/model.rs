//! The problem without its origin: loads, places and rows.
//!
//! A row is one limit. It has a coefficient for each load at each place, so that a tree of
//! breakers, the two legs of a 120/240 V supply and whatever comes next are all the same to the
//! solvers: more rows. There are two sorts.
//!
//! * **Thermal**: with `NC` the running currents of loads of short use and `C` of continuous
//!   ones, `NC + C / f <= limit` where `f` is the share of the limit allowed for three hours or
//!   more. Kept in whole numbers as `F * NC + 1000 * C <= F * limit`, `F` in thousandths.
//! * **Surge**: every load running and any one of them starting: `sum r + max e <= limit`, where
//!   `e` is starting less running current.
//!
//! Currents add as plain numbers. That is an upper bound of their phasor sum, so it is on the
//! safe side for any mix of power factors.
//!
//! Removing a load from a set that holds never breaks it, since no coefficient is negative and a
//! greatest element can only fall. Everything in this folder rests on that.

use super::set::LoadSet;

/// One load. Currents are in milliamperes on each leg it uses, or in millivolt-amperes, like the limits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Load {
    /// Current while it runs.
    pub running: i64,
    /// Current while it starts; at least `running`.
    pub starting: i64,
    /// Whether it runs for three hours or more.
    pub continuous: bool,
    /// Whether it is a "must"; else it is a "wish".
    pub must: bool,
    /// What serving it is worth among those of its sort. At least one.
    pub weight: u64,
    /// The places it may be plugged in.
    pub allowed: Vec<usize>,
}

impl Load {
    /// Starting less running current.
    #[must_use]
    pub fn excess(&self) -> i64 {
        (self.starting - self.running).max(0)
    }
}

/// One limit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// What the sum may come to.
    pub capacity: i64,
    /// Whether this row counts when the greatest use is to be made small.
    pub balanced: bool,
    /// The coefficient of each load at each place: `load * places + place`.
    pub sums: Vec<i64>,
    /// For a surge row, likewise what is added for the one load that starts. Else empty.
    pub peaks: Vec<i64>,
}

impl Row {
    /// Whether this is a surge row.
    #[must_use]
    pub fn is_surge(&self) -> bool {
        !self.peaks.is_empty()
    }

    /// What is added there for the one load that starts; nothing in a thermal row.
    fn peak(&self, index: usize) -> i64 {
        self.peaks.get(index).copied().unwrap_or(0)
    }
}

/// The whole problem.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Model {
    /// The loads; at most [`LoadSet::CAPACITY`].
    pub loads: Vec<Load>,
    /// For each place, how many plugs it takes; at most 64 places.
    pub sockets: Vec<u32>,
    /// The limits.
    pub rows: Vec<Row>,
    /// The sets of loads that are on at the same time at some moment of the day, none within
    /// another. Empty: all at once.
    pub moments: Vec<LoadSet>,
    /// What it costs that a load is at a place, on or not: `load * places + place`. Empty: nothing.
    pub costs: Vec<i64>,
    /// Up to so many thousandths, one greatest use is as good as another.
    pub enough: i64,
}

/// A row with what is asked of it again and again.
struct Told<'a> {
    row: &'a Row,
    /// From the first coefficient that is not nothing to after the last.
    span: std::ops::Range<usize>,
}

impl<'a> Told<'a> {
    fn of(row: &'a Row) -> Self {
        let counts = |index: &usize| row.sums[*index] != 0 || row.peak(*index) != 0;
        let end = row.sums.len();
        let first = (0..end).find(counts).unwrap_or(end);
        let after = (0..end).rfind(counts).map_or(end, |last| last + 1);
        Self {
            row,
            span: first..after,
        }
    }

    /// Whether every load takes up no greater a share of this row than of the other.
    fn within(&self, other: &Self) -> bool {
        let (one, two) = (self.row, other.row);
        // A row without room has no shares.
        if one.capacity <= 0
            || two.capacity <= 0
            || (one.balanced && !two.balanced)
            || one.is_surge() != two.is_surge()
            || self.span.start < other.span.start
            || self.span.end > other.span.end
        {
            return false;
        }
        let no_more = |a: i64, b: i64| {
            i128::from(a) * i128::from(two.capacity) <= i128::from(b) * i128::from(one.capacity)
        };
        self.span.clone().all(|index| {
            no_more(one.sums[index], two.sums[index]) && no_more(one.peak(index), two.peak(index))
        })
    }
}

/// Where each load is plugged in.
pub type Places = [Option<usize>];

impl Model {
    /// The most places a model can have.
    pub const MOST_PLACES: usize = 64;

    /// Adds a thermal row for the loads and places that `carries` says pass this point.
    pub fn thermal(
        &mut self,
        limit: i64,
        continuous_permille: i64,
        balanced: bool,
        carries: impl Fn(usize, usize) -> bool,
    ) {
        let sums = self.table(|load, place| {
            let factor = if self.loads[load].continuous {
                1000
            } else {
                continuous_permille
            };
            i64::from(carries(load, place)) * factor * self.loads[load].running
        });
        self.rows.push(Row {
            capacity: continuous_permille * limit,
            balanced,
            sums,
            peaks: Vec::new(),
        });
    }

    /// Adds a surge row likewise.
    pub fn surge(&mut self, limit: i64, carries: impl Fn(usize, usize) -> bool) {
        let sums =
            self.table(|load, place| i64::from(carries(load, place)) * self.loads[load].running);
        let peaks =
            self.table(|load, place| i64::from(carries(load, place)) * self.loads[load].excess());
        self.rows.push(Row {
            capacity: limit,
            balanced: false,
            sums,
            peaks,
        });
    }

    /// Leaves out rows that say no more than another: no load takes up a greater share of it
    /// anywhere than of the other.
    ///
    /// Proof. A sum of such shares is no greater either, nor is it with the greatest peak added:
    /// what keeps the other row keeps this one. The other is no less used, so when it is balanced,
    /// too, the greatest use stays what it was. Of rows that say the same the first stays.
    pub fn tighten(&mut self) {
        let rows: Vec<Told> = self.rows.iter().map(Told::of).collect();
        let mut out = vec![false; rows.len()];
        for index in 0..rows.len() {
            out[index] = (0..rows.len()).any(|other| {
                other != index
                    && !out[other]
                    && rows[index].within(&rows[other])
                    && (other < index || !rows[other].within(&rows[index]))
            });
        }
        let mut out = out.into_iter();
        self.rows.retain(|_| !out.next().unwrap_or(false));
    }

    fn table(&self, value: impl Fn(usize, usize) -> i64) -> Vec<i64> {
        (0..self.loads.len())
            .flat_map(|load| (0..self.sockets.len()).map(move |place| (load, place)))
            .map(|(load, place)| value(load, place))
            .collect()
    }

    /// Sets the moments from sets of loads that are on at once, dropping those within another:
    /// a limit that holds for the larger set holds for the smaller.
    pub fn set_moments(&mut self, on: impl IntoIterator<Item = LoadSet>) {
        let mut sets: Vec<LoadSet> = on.into_iter().collect();
        sets.sort_unstable();
        sets.dedup();
        self.moments = sets
            .iter()
            .filter(|set| {
                !sets
                    .iter()
                    .any(|other| other != *set && set.is_subset(other))
            })
            .copied()
            .collect();
    }

    /// The moments, with the one of all loads when none are given.
    #[must_use]
    pub fn moments(&self) -> Vec<LoadSet> {
        if self.moments.is_empty() {
            vec![LoadSet::below(self.loads.len())]
        } else {
            self.moments.clone()
        }
    }

    /// Whether everything that is plugged in, all of it running, holds: every row, every socket,
    /// every load where it is allowed.
    #[must_use]
    pub fn holds(&self, at: &Places) -> bool {
        self.plugs_fit(at) && self.at(at).holds(&plugged(at))
    }

    /// Whether the plugs fit all day and every moment holds.
    #[must_use]
    pub fn holds_all_day(&self, at: &Places) -> bool {
        let fixed = self.at(at);
        let all = plugged(at);
        self.plugs_fit(at)
            && self
                .moments()
                .iter()
                .all(|moment| fixed.holds(&all.intersection(moment)))
    }

    fn plugs_fit(&self, at: &Places) -> bool {
        let mut left: Vec<i64> = self.sockets.iter().map(|count| i64::from(*count)).collect();
        for (load, place) in at.iter().enumerate() {
            if let Some(place) = *place {
                left[place] -= 1;
                if !self.loads[load].allowed.contains(&place) {
                    return false;
                }
            }
        }
        left.iter().all(|left| *left >= 0)
    }

    /// What it costs that a load is there.
    #[must_use]
    pub fn cost(&self, load: usize, place: usize) -> i64 {
        let index = load * self.sockets.len() + place;
        self.costs.get(index).copied().unwrap_or(0)
    }

    /// What all of it costs.
    #[must_use]
    pub fn cost_of(&self, at: &Places) -> i64 {
        let cost = |(load, place): (usize, &Option<usize>)| Some(self.cost(load, (*place)?));
        at.iter().enumerate().filter_map(cost).sum()
    }

    /// The greatest use of any balanced row at any moment, in thousandths, rounded up; what is
    /// enough where it is no more than that.
    #[must_use]
    pub fn use_permille(&self, at: &Places) -> i64 {
        let fixed = self.at(at);
        let all = plugged(at);
        let mut most = self.enough;
        for moment in self.moments() {
            let on = all.intersection(&moment);
            for (row, of) in fixed.rows.iter().zip(&self.rows) {
                if of.balanced {
                    most = most.max(permille_up(row.sum(&on), row.capacity));
                }
            }
        }
        most
    }

    /// The weight of the loads that are plugged in: musts, then wishes.
    #[must_use]
    pub fn weights(&self, at: &Places) -> (u64, u64) {
        let mut weights = (0, 0);
        for load in plugged(at).iter() {
            let of = &self.loads[load];
            *(if of.must {
                &mut weights.0
            } else {
                &mut weights.1
            }) += of.weight;
        }
        weights
    }

    /// The rows with every load at its place. A load that is nowhere is in no row.
    #[must_use]
    pub fn at(&self, at: &Places) -> Fixed {
        let places = self.sockets.len();
        let pick = |table: &[i64]| -> Vec<i64> {
            at.iter()
                .enumerate()
                .map(|(load, place)| place.map_or(0, |place| table[load * places + place]))
                .collect()
        };
        Fixed {
            loads: at.len(),
            rows: self
                .rows
                .iter()
                .map(|row| FixedRow {
                    capacity: row.capacity,
                    sums: pick(&row.sums),
                    peaks: if row.is_surge() {
                        pick(&row.peaks)
                    } else {
                        Vec::new()
                    },
                })
                .collect(),
        }
    }
}

/// The loads that are plugged in somewhere.
#[must_use]
pub fn plugged(at: &Places) -> LoadSet {
    at.iter()
        .enumerate()
        .filter(|(_, place)| place.is_some())
        .map(|(load, _)| load)
        .collect()
}

/// `sum` as thousandths of `capacity`, rounded up. Nothing is no use, of whatever capacity.
pub(super) fn permille_up(sum: i64, capacity: i64) -> i64 {
    if sum == 0 {
        return 0;
    }
    let capacity = capacity.max(1);
    if let Some(up) = sum
        .checked_mul(1000)
        .and_then(|sum| sum.checked_add(capacity - 1))
    {
        return up / capacity;
    }
    let wide = (i128::from(sum) * 1000 + i128::from(capacity) - 1) / i128::from(capacity);
    i64::try_from(wide).unwrap_or(i64::MAX)
}

/// One row with every load at its place.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct FixedRow {
    /// What the sum may come to.
    pub capacity: i64,
    /// The coefficient of each load.
    pub sums: Vec<i64>,
    /// For a surge row, what is added for the one load that starts. Else empty.
    pub peaks: Vec<i64>,
}

impl FixedRow {
    /// The sum over a set.
    #[must_use]
    pub fn sum(&self, set: &LoadSet) -> i64 {
        set.iter().map(|load| self.sums[load]).sum()
    }

    /// The greatest peak in a set, nothing for a thermal row.
    #[must_use]
    pub fn peak(&self, set: &LoadSet) -> i64 {
        if self.peaks.is_empty() {
            return 0;
        }
        set.iter().map(|load| self.peaks[load]).max().unwrap_or(0)
    }

    /// What a load adds for starting.
    #[must_use]
    pub fn peak_of(&self, load: usize) -> i64 {
        self.peaks.get(load).copied().unwrap_or(0)
    }

    /// Whether the set keeps this row.
    #[must_use]
    pub fn holds(&self, set: &LoadSet) -> bool {
        self.sum(set) + self.peak(set) <= self.capacity
    }
}

/// The rows of a model with every load at its place: which loads may run at once is now a
/// question about sets alone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fixed {
    /// How many loads there are, plugged in or not.
    pub loads: usize,
    /// The limits.
    pub rows: Vec<FixedRow>,
}

impl Fixed {
    /// Whether the set may run at once.
    #[must_use]
    pub fn holds(&self, set: &LoadSet) -> bool {
        self.rows.iter().all(|row| row.holds(set))
    }

    /// The rows of running loads only: as if nothing took more to start.
    #[must_use]
    pub fn once_started(&self) -> Self {
        Self {
            loads: self.loads,
            rows: self
                .rows
                .iter()
                .filter(|row| row.peaks.is_empty())
                .cloned()
                .collect(),
        }
    }

    /// The same rows, each once for every moment with only the loads that are on in it: a set
    /// that holds there may be wanted on its hours without passing a limit at any moment.
    #[must_use]
    pub fn by_moment(&self, moments: &[LoadSet]) -> Self {
        let mask = |table: &[i64], moment: &LoadSet| -> Vec<i64> {
            table
                .iter()
                .enumerate()
                .map(|(load, value)| if moment.contains(load) { *value } else { 0 })
                .collect()
        };
        Self {
            loads: self.loads,
            rows: moments
                .iter()
                .flat_map(|moment| {
                    self.rows.iter().map(|row| FixedRow {
                        capacity: row.capacity,
                        sums: mask(&row.sums, moment),
                        peaks: mask(&row.peaks, moment),
                    })
                })
                .collect(),
        }
    }

    /// The same question with fewer rows: those that even everything at once keeps are left
    /// out, and of rows with the same coefficients only the tightest stays.
    #[must_use]
    pub fn essential(&self, among: &LoadSet) -> Self {
        let mut rows: Vec<FixedRow> = self
            .rows
            .iter()
            .filter(|row| !row.holds(among))
            .cloned()
            .collect();
        rows.sort_by(|a, b| (&a.sums, &a.peaks, a.capacity).cmp(&(&b.sums, &b.peaks, b.capacity)));
        rows.dedup_by(|later, first| later.sums == first.sums && later.peaks == first.peaks);
        Self {
            loads: self.loads,
            rows,
        }
    }
}

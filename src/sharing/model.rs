//! The problem without its origin: loads, places and rows.
//!
//! A row is one limit: the places behind it, and what each load adds to it at any of them. So a tree
//! of breakers, the two legs of a 120/240 V supply and whatever comes next are all the same to the
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
use crate::quantity::product_up;

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

/// One limit: of what is plugged in at some places, of each load the same wherever among them it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// What the sum may come to.
    pub capacity: i64,
    /// Whether this row counts when the greatest use is to be made small.
    pub balanced: bool,
    /// The places behind this limit, as bits.
    pub places: u64,
    /// What each load adds at any of them.
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

    /// What a load adds for starting; nothing in a thermal row.
    #[must_use]
    pub fn peak(&self, load: usize) -> i64 {
        self.peaks.get(load).copied().unwrap_or(0)
    }

    /// Whether a place is behind this limit.
    #[must_use]
    pub const fn has(&self, place: usize) -> bool {
        self.places >> place & 1 == 1
    }

    /// Whether no load takes up a greater share of this row than of the other, anywhere.
    fn within(&self, other: &Self) -> bool {
        // A row without room has no shares.
        if self.capacity <= 0
            || other.capacity <= 0
            || (self.balanced && !other.balanced)
            || self.is_surge() != other.is_surge()
            || self.places & !other.places != 0
        {
            return false;
        }
        let no_more =
            |a: i64, b: i64| i128::from(a) * i128::from(other.capacity) <= i128::from(b) * i128::from(self.capacity);
        (0..self.sums.len())
            .all(|load| no_more(self.sums[load], other.sums[load]) && no_more(self.peak(load), other.peak(load)))
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
    /// Limits that follow from the others, and show sooner that something is too much.
    pub implied: Vec<Row>,
    /// The sets of loads that are on at the same time at some moment of the day, none within
    /// another. Empty: all at once.
    pub moments: Vec<LoadSet>,
    /// What it costs that a load is at a place, on or not: `load * places + place`. Empty: nothing.
    pub costs: Vec<i64>,
    /// Up to so many thousandths, one greatest use is as good as another.
    pub enough: i64,
}

/// Where each load is plugged in.
pub type Places = [Option<usize>];

impl Model {
    /// The most places a model can have.
    pub const MOST_PLACES: usize = 64;

    /// Adds a thermal row for the places that `carries` says are behind this point.
    pub fn thermal(&mut self, limit: i64, continuous_permille: i64, balanced: bool, carries: impl Fn(usize) -> bool) {
        let factor = |load: &Load| {
            if load.continuous { 1000 } else { continuous_permille }
        };
        self.rows.push(Row {
            capacity: continuous_permille * limit,
            balanced,
            places: self.behind(carries),
            sums: (self.loads.iter()).map(|load| factor(load) * load.running).collect(),
            peaks: Vec::new(),
        });
    }

    /// Adds a surge row likewise.
    pub fn surge(&mut self, limit: i64, carries: impl Fn(usize) -> bool) {
        self.rows.push(Row {
            capacity: limit,
            balanced: false,
            places: self.behind(carries),
            sums: self.loads.iter().map(|load| load.running).collect(),
            peaks: self.loads.iter().map(Load::excess).collect(),
        });
    }

    /// Notes that what keeps the last two rows, of one limit on either leg, asks no more than twice that of
    /// both together. Of a load on both, which counts in each, that is said of half.
    pub fn both_legs(&mut self) {
        if let [.., one, other] = self.rows.as_slice() {
            let mut both = one.clone();
            both.capacity += other.capacity;
            both.places |= other.places;
            both.balanced = false;
            self.implied.push(both);
        }
    }

    fn behind(&self, carries: impl Fn(usize) -> bool) -> u64 {
        mask((0..self.sockets.len()).filter(|place| carries(*place)))
    }

    /// Leaves out rows that say no more than another: no load takes up a greater share of it
    /// anywhere than of the other.
    ///
    /// Proof. A sum of such shares is no greater either, nor is it with the greatest peak added:
    /// what keeps the other row keeps this one. The other is no less used, so when it is balanced,
    /// too, the greatest use stays what it was. Of rows that say the same the first stays.
    pub fn tighten(&mut self) {
        let rows = &self.rows;
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

    /// Sets the moments from sets of loads that are on at once, dropping those within another:
    /// a limit that holds for the larger set holds for the smaller.
    pub fn set_moments(&mut self, on: impl IntoIterator<Item = LoadSet>) {
        let mut sets: Vec<LoadSet> = on.into_iter().collect();
        sets.sort_unstable();
        sets.dedup();
        self.moments = sets
            .iter()
            .filter(|set| !sets.iter().any(|other| other != *set && set.is_subset(other)))
            .copied()
            .collect();
    }

    /// The moments, with the one of all loads when none are given.
    #[must_use]
    pub fn moments(&self) -> Vec<LoadSet> {
        if self.moments.is_empty() { vec![LoadSet::below(self.loads.len())] } else { self.moments.clone() }
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

    /// The rows with every load at its place. A load that is nowhere is in no row.
    #[must_use]
    pub fn at(&self, at: &Places) -> Fixed {
        let pick = |row: &Row, table: &[i64]| -> Vec<i64> {
            let of = at.iter().zip(table);
            of.map(|(place, value)| match place {
                Some(place) if row.has(*place) => *value,
                _ => 0,
            })
            .collect()
        };
        Fixed {
            loads: at.len(),
            rows: self
                .rows
                .iter()
                .map(|row| FixedRow {
                    capacity: row.capacity,
                    sums: pick(row, &row.sums),
                    peaks: pick(row, &row.peaks),
                })
                .collect(),
        }
    }
}

/// Places as bits.
pub(super) fn mask(places: impl IntoIterator<Item = usize>) -> u64 {
    places.into_iter().fold(0, |mask, place| mask | 1 << place)
}

/// The places of a mask, rising.
pub(super) fn bits(mut mask: u64) -> impl Iterator<Item = usize> {
    std::iter::from_fn(move || {
        (mask != 0).then(|| {
            let bit = mask.trailing_zeros() as usize;
            mask &= mask - 1;
            bit
        })
    })
}

/// The loads that are plugged in somewhere.
#[must_use]
pub fn plugged(at: &Places) -> LoadSet {
    at.iter().enumerate().filter(|(_, place)| place.is_some()).map(|(load, _)| load).collect()
}

/// `sum` as thousandths of `capacity`, rounded up. Nothing is no use, of whatever capacity.
pub(super) fn permille_up(sum: i64, capacity: i64) -> i64 {
    if sum == 0 {
        return 0;
    }
    product_up(sum, 1000, capacity.max(1))
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
        Self { loads: self.loads, rows: self.rows.iter().filter(|row| row.peaks.is_empty()).cloned().collect() }
    }

    /// The same rows, each once for every moment with only the loads that are on in it: a set of these
    /// that holds there may be wanted on its hours without passing a limit at any moment. Rows that even
    /// all of them at once keep are left out.
    #[must_use]
    pub fn by_moment(&self, moments: &[LoadSet], among: &LoadSet) -> Self {
        let mask = |table: &[i64], moment: &LoadSet| -> Vec<i64> {
            table.iter().enumerate().map(|(load, value)| if moment.contains(load) { *value } else { 0 }).collect()
        };
        let rows = moments.iter().flat_map(|moment| {
            let on = among.intersection(moment);
            let passed = self.rows.iter().filter(move |row| !row.holds(&on));
            passed.map(|row| FixedRow {
                capacity: row.capacity,
                sums: mask(&row.sums, moment),
                peaks: mask(&row.peaks, moment),
            })
        });
        Self { loads: self.loads, rows: rows.collect() }
    }

    /// The same question with fewer rows: those that even everything at once keeps are left
    /// out, and of rows with the same coefficients only the tightest stays.
    #[must_use]
    pub fn essential(&self, among: &LoadSet) -> Self {
        let mut rows: Vec<FixedRow> = self.rows.iter().filter(|row| !row.holds(among)).cloned().collect();
        rows.sort_by(|a, b| (&a.sums, &a.peaks, a.capacity).cmp(&(&b.sums, &b.peaks, b.capacity)));
        rows.dedup_by(|later, first| later.sums == first.sums && later.peaks == first.peaks);
        Self { loads: self.loads, rows }
    }
}

/// What a set that grows and shrinks comes to in each row.
#[derive(Clone, Debug)]
pub(super) struct Sums {
    pub(super) used: Vec<i64>,
    pub(super) peak: Vec<i64>,
    /// The peaks before each load that was added, row by row.
    before: Vec<i64>,
}

impl Sums {
    pub(super) fn of(fixed: &Fixed, set: &LoadSet) -> Self {
        Self {
            used: fixed.rows.iter().map(|row| row.sum(set)).collect(),
            peak: fixed.rows.iter().map(|row| row.peak(set)).collect(),
            before: Vec::new(),
        }
    }

    pub(super) fn add(&mut self, fixed: &Fixed, load: usize) {
        self.before.extend_from_slice(&self.peak);
        for (r, row) in fixed.rows.iter().enumerate() {
            self.used[r] += row.sums[load];
            self.peak[r] = self.peak[r].max(row.peak_of(load));
        }
    }

    /// Takes away the load that was added last.
    pub(super) fn remove(&mut self, fixed: &Fixed, load: usize) {
        let from = self.before.len() - self.peak.len();
        self.peak.copy_from_slice(&self.before[from..]);
        self.before.truncate(from);
        for (used, row) in self.used.iter_mut().zip(&fixed.rows) {
            *used -= row.sums[load];
        }
    }

    pub(super) fn hold(&self, fixed: &Fixed) -> bool {
        let sums = self.used.iter().zip(&self.peak);
        let mut rows = fixed.rows.iter().zip(sums);
        rows.all(|(row, (used, peak))| used + peak <= row.capacity)
    }

    /// Whether the set and this load hold.
    pub(super) fn fit(&self, fixed: &Fixed, load: usize) -> bool {
        fixed.rows.iter().enumerate().all(|(r, row)| {
            let peak = self.peak[r].max(row.peak_of(load));
            self.used[r] + row.sums[load] + peak <= row.capacity
        })
    }
}

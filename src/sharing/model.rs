//! The problem without its origin: loads, places and rows.
//!
//! A row is one limit: the places behind it, and what each load adds to it at any of them. A tree of breakers and the
//! two legs of a 120/240 V supply are the same to the solvers: more rows. There are two kinds.
//!
//! * **Thermal**: with `NC` the running current of short-use loads and `C` that of continuous ones,
//!   `NC + C / f <= limit`, where `f` is the share of the limit allowed for three hours or more. Kept in whole numbers
//!   as `F * NC + 1000 * C <= F * limit`, with `F` in thousandths.
//! * **Surge**: every load running and any one of them starting: `sum r + max e <= limit`, where `e` is starting less
//!   running current.
//!
//! Currents add as plain numbers. That is an upper bound on their phasor sum, so it is safe for any mix of power
//! factors.
//!
//! Removing a load from a set that holds never breaks it, because no coefficient is negative and a maximum can only
//! fall. Every solver here relies on that.

use super::set::LoadSet;
use crate::quantity::product_up;

/// One load. Currents are in milliamperes on each leg it uses, or in millivolt-amperes if the limits are.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Load {
    /// Current while it runs.
    pub running: i64,
    /// Current while it starts; at least `running`.
    pub starting: i64,
    /// Whether it runs for three hours or more.
    pub continuous: bool,
    /// Whether it is a "must". Otherwise it is a "wish".
    pub must: bool,
    /// Its weight among loads of its sort. At least one.
    pub weight: u64,
    /// The places where it may be plugged in.
    pub allowed: Vec<usize>,
}

impl Load {
    /// Returns the starting less the running current.
    #[must_use]
    pub fn excess(&self) -> i64 {
        (self.starting - self.running).max(0)
    }
}

/// One limit. It covers some places, and a load adds the same at any of them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The most that the sum may be.
    pub capacity: i64,
    /// Whether this row counts when the greatest use is minimized.
    pub balanced: bool,
    /// The places behind this limit, as bits.
    pub places: u64,
    /// What each load adds at any of these places.
    pub sums: Vec<i64>,
    /// For a surge row, what each load would add if it is the one that starts. Otherwise empty.
    pub peaks: Vec<i64>,
}

impl Row {
    /// Whether this is a surge row.
    #[must_use]
    pub fn is_surge(&self) -> bool {
        !self.peaks.is_empty()
    }

    /// Returns what a load adds by starting. Zero in a thermal row.
    #[must_use]
    pub fn peak(&self, load: usize) -> i64 {
        self.peaks.get(load).copied().unwrap_or(0)
    }

    /// Whether a place is behind this limit.
    #[must_use]
    pub const fn has(&self, place: usize) -> bool {
        self.places >> place & 1 == 1
    }

    /// Whether no load takes a greater share of this row than of the other at any place.
    fn within(&self, other: &Self) -> bool {
        // Shares of a row without capacity are undefined.
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
    /// The loads, at most [`LoadSet::CAPACITY`].
    pub loads: Vec<Load>,
    /// How many plugs each place takes. At most [`Self::MOST_PLACES`] places.
    pub sockets: Vec<u32>,
    /// The limits.
    pub rows: Vec<Row>,
    /// Limits that follow from the others, and show excess sooner.
    pub implied: Vec<Row>,
    /// The sets of loads on at the same moment of the day, none within another. Empty: one moment with all loads.
    pub moments: Vec<LoadSet>,
    /// The cost of a load at a place, on or off, at `load * places + place`. Empty: no costs.
    pub costs: Vec<i64>,
    /// A greatest use up to this many thousandths is as good as any lower one.
    pub enough: i64,
}

/// Where each load is plugged in.
pub type Places = [Option<usize>];

impl Model {
    /// The most places a model can have.
    pub const MOST_PLACES: usize = 64;

    /// Adds a thermal row for the places for which `carries` is true.
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

    /// Adds a surge row for the places for which `carries` is true.
    pub fn surge(&mut self, limit: i64, carries: impl Fn(usize) -> bool) {
        self.rows.push(Row {
            capacity: limit,
            balanced: false,
            places: self.behind(carries),
            sums: self.loads.iter().map(|load| load.running).collect(),
            peaks: self.loads.iter().map(Load::excess).collect(),
        });
    }

    /// Adds the row implied by the last two, which are the same limit on either leg: together they admit at most the
    /// sum of their capacities. A load on both legs counts in each of them but only once here, so the row is weaker for
    /// it, but true.
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

    /// Removes rows that say no more than another: no load takes a greater share of them than of the other at any
    /// place.
    ///
    /// Proof. A sum of such shares is no greater either, nor is it with the greatest peak added, so what keeps the
    /// other row keeps this one. The other row is used at least as much, so if it is balanced whenever this one is, the
    /// greatest use stays the same. Of equivalent rows the first stays.
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

    /// Sets the moments from sets of loads on at once. A set within another is dropped, because a limit that holds for
    /// the larger set holds for the smaller.
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

    /// Returns the moments, or one of all loads if none are set.
    #[must_use]
    pub fn moments(&self) -> Vec<LoadSet> {
        if self.moments.is_empty() { vec![LoadSet::below(self.loads.len())] } else { self.moments.clone() }
    }

    /// Returns the cost of a load at a place.
    #[must_use]
    pub fn cost(&self, load: usize, place: usize) -> i64 {
        let index = load * self.sockets.len() + place;
        self.costs.get(index).copied().unwrap_or(0)
    }

    /// Returns the cost of a whole placing.
    #[must_use]
    pub fn cost_of(&self, at: &Places) -> i64 {
        let cost = |(load, place): (usize, &Option<usize>)| Some(self.cost(load, (*place)?));
        at.iter().enumerate().filter_map(cost).sum()
    }

    /// Returns the rows with every load at its place. An unplaced load is in no row.
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

/// Returns places as bits.
pub(super) fn mask(places: impl IntoIterator<Item = usize>) -> u64 {
    places.into_iter().fold(0, |mask, place| mask | 1 << place)
}

/// Returns the places of a mask, in ascending order.
pub(super) fn bits(mut mask: u64) -> impl Iterator<Item = usize> {
    std::iter::from_fn(move || {
        (mask != 0).then(|| {
            let bit = mask.trailing_zeros() as usize;
            mask &= mask - 1;
            bit
        })
    })
}

/// Returns the loads that are plugged in somewhere.
#[must_use]
pub fn plugged(at: &Places) -> LoadSet {
    at.iter().enumerate().filter(|(_, place)| place.is_some()).map(|(load, _)| load).collect()
}

/// Returns `sum` as thousandths of `capacity`, rounded up. A sum of zero is no use, whatever the capacity.
pub(super) fn permille_up(sum: i64, capacity: i64) -> i64 {
    if sum == 0 {
        return 0;
    }
    product_up(sum, 1000, capacity.max(1))
}

/// One row with every load at its place.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct FixedRow {
    /// The most that the sum may be.
    pub capacity: i64,
    /// The coefficient of each load.
    pub sums: Vec<i64>,
    /// For a surge row, what each load would add if it is the one that starts. Otherwise empty.
    pub peaks: Vec<i64>,
}

impl FixedRow {
    /// Returns the sum over a set, without peaks.
    #[must_use]
    pub fn sum(&self, set: &LoadSet) -> i64 {
        set.iter().map(|load| self.sums[load]).sum()
    }

    /// Returns the greatest peak in a set. Zero for a thermal row.
    #[must_use]
    pub fn peak(&self, set: &LoadSet) -> i64 {
        if self.peaks.is_empty() {
            return 0;
        }
        set.iter().map(|load| self.peaks[load]).max().unwrap_or(0)
    }

    /// Returns what a load adds by starting.
    #[must_use]
    pub fn peak_of(&self, load: usize) -> i64 {
        self.peaks.get(load).copied().unwrap_or(0)
    }

    /// Whether the set keeps within this row.
    #[must_use]
    pub fn holds(&self, set: &LoadSet) -> bool {
        self.sum(set) + self.peak(set) <= self.capacity
    }
}

/// The rows of a model with every load at its place. What may run at once is then a question about sets alone.
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

    /// Returns the thermal rows alone, as if nothing took more to start.
    #[must_use]
    pub fn once_started(&self) -> Self {
        Self { loads: self.loads, rows: self.rows.iter().filter(|row| row.peaks.is_empty()).cloned().collect() }
    }

    /// Returns the same rows for each moment, with only the loads on at that moment. A set that holds in them keeps
    /// every limit at every moment if each of its loads runs in its own hours. Rows that all of `among` at once keep
    /// are left out.
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

    /// Returns the same question with fewer rows. Rows that all of `among` at once keep are left out, and of rows with
    /// the same coefficients only the tightest stays.
    #[must_use]
    pub fn essential(&self, among: &LoadSet) -> Self {
        let mut rows: Vec<FixedRow> = self.rows.iter().filter(|row| !row.holds(among)).cloned().collect();
        rows.sort_by(|a, b| (&a.sums, &a.peaks, a.capacity).cmp(&(&b.sums, &b.peaks, b.capacity)));
        rows.dedup_by(|later, first| later.sums == first.sums && later.peaks == first.peaks);
        Self { loads: self.loads, rows }
    }
}

/// The sum and peak in each row of a set that grows and shrinks.
#[derive(Clone, Debug)]
pub(super) struct Sums {
    pub(super) used: Vec<i64>,
    pub(super) peak: Vec<i64>,
    /// A stack of the peaks before each added load, row by row.
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

    /// Removes `load`, which must be the last one added.
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

    /// Whether the set with this load added holds.
    pub(super) fn fit(&self, fixed: &Fixed, load: usize) -> bool {
        fixed.rows.iter().enumerate().all(|(r, row)| {
            let peak = self.peak[r].max(row.peak_of(load));
            self.used[r] + row.sums[load] + peak <= row.capacity
        })
    }
}

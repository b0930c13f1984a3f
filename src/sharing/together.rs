//! What may run at once, and what may not, with every load at its place.
//!
//! Two families are the whole answer: the **largest sets that hold** and the **smallest sets that do not**. Each
//! determines the other: the smallest conflicts are the smallest sets that meet the complement of every largest set. So
//! a complete list of one proves the other complete.

use super::budget::Budget;
use super::model::{Fixed, FixedRow, Sums};
use super::set::LoadSet;

/// A sorted family of sets, and whether it is complete.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Family {
    /// The sets.
    pub sets: Vec<LoadSet>,
    /// Whether none is missing.
    pub complete: bool,
}

/// Which loads are interchangeable. Of sets that differ only in such loads, only the one with the first of them is
/// kept.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Alike {
    before: Vec<Option<usize>>,
}

impl Alike {
    /// Creates it from the load just before each one that equals it in every row, if there is one.
    pub fn new(before: impl IntoIterator<Item = Option<usize>>) -> Self {
        Self { before: before.into_iter().collect() }
    }

    /// Creates one in which no two loads are alike.
    #[must_use]
    pub fn nothing() -> Self {
        Self::default()
    }

    /// Returns the load just before this one among its equals.
    fn before(&self, load: usize) -> Option<usize> {
        self.before.get(load).copied().flatten()
    }

    /// Whether the set contains, with each load, the one before it.
    pub(super) fn leads(&self, set: &LoadSet) -> bool {
        set.iter().all(|load| self.before(load).is_none_or(|before| set.contains(before)))
    }
}

/// Returns all sets among `loads` that hold, but with no other load added. Stops after `most` sets or at the end of the
/// budget, which makes the family incomplete.
///
/// `along` has, for each load, those that stay on whenever it is on, if any loads do. They are in each set with it, and
/// have none of their own.
#[must_use]
pub fn largest(
    fixed: &Fixed,
    loads: &LoadSet,
    alike: &Alike,
    along: &[LoadSet],
    most: usize,
    budget: &mut Budget,
) -> Family {
    let mut fixed = fixed.essential(loads);
    // The row with the greatest demand for its capacity shows soonest that a set does not hold.
    fixed.rows.sort_by_cached_key(|row| {
        let asked: i64 = loads.iter().map(|load| row.sums[load]).sum();
        let share = i128::from(asked) * 1_000_000 / i128::from(row.capacity.max(1));
        std::cmp::Reverse(share)
    });
    // What stays on with others first, since it decides whether they may come. Then the largest, because they decide
    // most. What is left over then mostly fits or mostly does not.
    let mut order: Vec<usize> = loads.iter().collect();
    let stays = along.iter().fold(LoadSet::default(), LoadSet::union);
    order.sort_by_key(|load| (!stays.contains(*load), -weight(&fixed, *load), *load));
    let rows = fixed.rows.len();
    let mut rest = vec![vec![0; rows]; order.len() + 1];
    let mut high = vec![vec![0; rows]; order.len() + 1];
    for (step, load) in order.iter().enumerate().rev() {
        for (r, row) in fixed.rows.iter().enumerate() {
            rest[step][r] = rest[step + 1][r] + row.sums[*load];
            high[step][r] = high[step + 1][r].max(row.peak_of(*load));
        }
    }
    let mut walk = Largest {
        fixed: &fixed,
        order: &order,
        rest: &rest,
        high: &high,
        alike,
        along,
        most,
        found: Vec::new(),
        open: Vec::new(),
        sums: Sums::of(&fixed, &LoadSet::default()),
    };
    let complete = walk.descend(0, LoadSet::default(), budget);
    let mut sets = walk.found;
    sets.sort_unstable();
    Family { sets, complete }
}

/// Returns the size of a load: its greatest share of any row, in millionths.
fn weight(fixed: &Fixed, load: usize) -> i64 {
    fixed
        .rows
        .iter()
        .map(|row| {
            let wide = i128::from(row.sums[load] + row.peak_of(load)) * 1_000_000 / i128::from(row.capacity.max(1));
            i64::try_from(wide).unwrap_or(i64::MAX)
        })
        .max()
        .unwrap_or(0)
}

struct Largest<'a> {
    fixed: &'a Fixed,
    order: &'a [usize],
    /// The sum and the greatest peak of all loads from this step on, by row.
    rest: &'a [Vec<i64>],
    high: &'a [Vec<i64>],
    alike: &'a Alike,
    /// What stays on with each load.
    along: &'a [LoadSet],
    most: usize,
    found: Vec<LoadSet>,
    /// Loads left out although they would have fitted. Something later must shut them out.
    open: Vec<usize>,
    /// The sums of the set so far.
    sums: Sums,
}

impl Largest<'_> {
    /// Returns `false` if it had to stop early.
    fn descend(&mut self, step: usize, set: LoadSet, budget: &mut Budget) -> bool {
        let rows = &self.fixed.rows;
        if !budget.spend((rows.len() * (self.open.len() + 2)) as u64 + 1) {
            return false;
        }
        let Sums { used, peak, .. } = &self.sums;
        // A load left out that still fits must be shut out in the end. If it holds together with everything that can
        // still come, it holds with any part of that, and no largest set lies below here. Once shut out it stays so,
        // because sets only grow.
        let (rest, high) = (&self.rest[step], &self.high[step]);
        let doomed = self.open.iter().any(|load| {
            rows.iter().enumerate().all(|(r, row)| {
                used[r] + rest[r] + row.sums[*load] + peak[r].max(high[r]).max(row.peak_of(*load)) <= row.capacity
            })
        });
        if doomed {
            return true;
        }
        let Some(&load) = self.order.get(step) else {
            if self.found.len() == self.most {
                return false;
            }
            // Nothing more can come, and no open load fits, so each is shut out.
            self.found.push(set);
            return true;
        };
        // The equal load before it was left out. If that one is shut out in the end, so is this one, so leave it out
        // too.
        if self.alike.before(load).is_some_and(|before| !set.contains(before)) {
            return self.descend(step + 1, set, budget);
        }
        // What stays on with it was decided before. Where that was shut out, so is this.
        let fits = self.along.get(load).is_none_or(|along| along.is_subset(&set)) && self.sums.fit(self.fixed, load);
        if fits {
            self.sums.add(self.fixed, load);
            let complete = self.descend(step + 1, set.with(load), budget);
            self.sums.remove(self.fixed, load);
            if !complete {
                return false;
            }
            self.open.push(load);
        }
        let complete = self.descend(step + 1, set, budget);
        if fits {
            self.open.pop();
        }
        complete
    }
}

/// Returns all sets of at most `size` among `loads` that do not hold, but do with any one load removed. Stops after
/// `most` sets or at the end of the budget, which makes the family incomplete.
#[must_use]
pub fn conflicts(
    fixed: &Fixed,
    loads: &LoadSet,
    alike: &Alike,
    size: usize,
    most: usize,
    budget: &mut Budget,
) -> Family {
    let fixed = fixed.essential(loads);
    let mut sets = Vec::new();
    let mut complete = true;
    for row in &fixed.rows {
        let mut order: Vec<usize> = loads.iter().filter(|load| row.sums[*load] > 0 || row.peak_of(*load) > 0).collect();
        order.sort_by_key(|load| (-row.sums[*load], *load));
        // A smallest conflict exceeds at least one row. In a surge row it has a load whose peak is the greatest of the
        // set, and with that load fixed the row is a plain sum.
        let starters: Vec<Option<usize>> =
            if row.peaks.is_empty() { vec![None] } else { order.iter().copied().map(Some).collect() };
        for starter in starters {
            let (order, set, room) = match starter {
                None => (order.clone(), LoadSet::default(), row.capacity),
                Some(starter) => (
                    order
                        .iter()
                        .copied()
                        .filter(|load| *load != starter && row.peak_of(*load) <= row.peak_of(starter))
                        .collect(),
                    LoadSet::default().with(starter),
                    row.capacity - row.sums[starter] - row.peak_of(starter),
                ),
            };
            let mut walk = Covers {
                fixed: &fixed,
                sums: Sums::of(&fixed, &set),
                rest: suffixes(row, &order),
                row,
                order,
                alike,
                size,
                most,
                found: &mut sets,
            };
            complete &= walk.descend(0, set, room, budget);
        }
        sets.sort_unstable();
        sets.dedup();
    }
    Family { sets, complete }
}

fn suffixes(row: &FixedRow, order: &[usize]) -> Vec<i64> {
    let mut rest = vec![0; order.len() + 1];
    for (step, load) in order.iter().enumerate().rev() {
        rest[step] = rest[step + 1] + row.sums[*load];
    }
    rest
}

struct Covers<'a> {
    fixed: &'a Fixed,
    /// The sums of the set so far.
    sums: Sums,
    row: &'a FixedRow,
    order: Vec<usize>,
    rest: Vec<i64>,
    alike: &'a Alike,
    size: usize,
    most: usize,
    found: &'a mut Vec<LoadSet>,
}

impl Covers<'_> {
    /// Adds loads, largest first, until the room is exceeded. Every smallest conflict of the row is found: in that
    /// order all its loads but the last still fit, because without the last, which is among the smallest, it holds.
    fn descend(&mut self, step: usize, set: LoadSet, room: i64, budget: &mut Budget) -> bool {
        let rows = self.fixed.rows.len();
        if !budget.spend(if room < 0 { rows * set.len() } else { rows } as u64 + 1) {
            return false;
        }
        if room < 0 {
            let smallest = self.alike.leads(&set) && set.iter().all(|load| self.fixed.holds(&set.without(load)));
            if smallest {
                if self.found.len() >= self.most && !self.found.contains(&set) {
                    return false;
                }
                self.found.push(set);
            }
            return true;
        }
        // Stop if everything left does not exceed the room, if the set is as large as allowed, or if it already fails
        // elsewhere, so that nothing larger is a smallest conflict.
        if self.rest[step] <= room || set.len() >= self.size || (!set.is_empty() && !self.sums.hold(self.fixed)) {
            return true;
        }
        let load = self.order[step];
        // No load comes before its equal. The order is by sum and then index, so an equal that is not in the set yet
        // never will be.
        if self.alike.before(load).is_some_and(|before| !set.contains(before)) {
            return self.descend(step + 1, set, room, budget);
        }
        self.sums.add(self.fixed, load);
        let complete = self.descend(step + 1, set.with(load), room - self.row.sums[load], budget);
        self.sums.remove(self.fixed, load);
        complete && self.descend(step + 1, set, room, budget)
    }
}

//! In what order to switch on.
//!
//! Starting a load costs, on each surge row, the running current of everything already on plus
//! its own starting current. The order is found from the last place to the first: into the last
//! place goes any load that may be last. That needs no search. Say some order keeps every limit,
//! and load `k` may be started last, after all the others. Move `k` to the end of that order: the
//! loads after it now start with less running, so they still keep every limit, and `k` keeps them
//! because it may be last. So taking any such `k` loses nothing, and when there is none, no order
//! exists. With one row, the load with the least starting-less-running current costs least in
//! the last place; so without rules of precedence the best order is the largest of that first,
//! which is not the same as the largest starting current first.

use super::budget::Budget;
use super::model::{Fixed, FixedRow};
use super::set::LoadSet;

/// The loads of a set that something else of it waits for: none of them may come last.
fn awaited(set: &LoadSet, after: &[LoadSet]) -> LoadSet {
    let waited = set.iter().map(|load| after[load].without(load));
    waited.fold(LoadSet::default(), |all, some| all.union(&some))
}

/// An order of `set` that keeps every surge row at each step, or `None` with proof that none
/// exists. Among the loads that may come last the one with the least peak is taken, and of
/// equals the one of the greatest number, so that what is largest comes first.
#[must_use]
pub fn order(fixed: &Fixed, set: &LoadSet, after: &[LoadSet]) -> Option<Vec<usize>> {
    let rows: Vec<&FixedRow> = fixed.rows.iter().filter(|row| !row.peaks.is_empty()).collect();
    let mut left = *set;
    let mut sums: Vec<i64> = rows.iter().map(|row| row.sum(set)).collect();
    let mut order = Vec::new();
    while !left.is_empty() {
        let last = left
            .minus(&awaited(&left, after))
            .iter()
            .filter(|load| {
                rows.iter().zip(&sums).all(|(row, sum)| {
                    // Only rows the load is in are asked: it starts nothing elsewhere.
                    (row.sums[*load] == 0 && row.peak_of(*load) == 0) || sum + row.peak_of(*load) <= row.capacity
                })
            })
            .min_by_key(|load| {
                let peak = rows.iter().map(|row| row.peak_of(*load)).max().unwrap_or(0);
                (peak, usize::MAX - *load)
            })?;
        left.remove(last);
        for (sum, row) in sums.iter_mut().zip(&rows) {
            *sum -= row.sums[last];
        }
        order.push(last);
    }
    order.reverse();
    Some(order)
}

/// When no order of `set` exists: the load that stands in the way. That is one without which
/// there is an order, the first by `rank` of several; if no one load is enough, the first by
/// `rank` of all. Those that the budget leaves no work for are taken not to be enough.
pub fn reason<K: Ord>(
    fixed: &Fixed,
    set: &LoadSet,
    after: &[LoadSet],
    mut rank: impl FnMut(usize) -> K,
    budget: &mut Budget,
) -> Option<usize> {
    let work = (set.len() * set.len() * 2) as u64;
    let mut enough = |load: &usize| budget.spend(work) && order(fixed, &set.without(*load), after).is_some();
    set.iter()
        .filter(|load| enough(load))
        .min_by_key(|load| rank(*load))
        .or_else(|| set.iter().min_by_key(|load| rank(*load)))
}

//! In what order to switch on.
//!
//! On each surge row, starting a load needs the running current of everything already on plus its own starting current.
//! The order is found from the last place to the first, without a search: the last place goes to any load that may be
//! last.
//!
//! Proof. Say some order keeps every limit, and load `k` may be started after all the others. Move `k` to the end of
//! that order. The loads after it now start with less running, so they still keep every limit, and `k` does because it
//! may be last. So choosing any such `k` loses nothing, and if there is none, no order exists.
//!
//! With one row, the load with the least starting-less-running current costs least in the last place. So without rules
//! of precedence the best order begins with the largest of these, which need not be the largest starting current.

use super::budget::Budget;
use super::model::{Fixed, FixedRow};
use super::set::LoadSet;

/// Returns the loads of a set that others in it must wait for. None of them may come last.
fn awaited(set: &LoadSet, after: &[LoadSet]) -> LoadSet {
    let waited = set.iter().map(|load| after[load].without(load));
    waited.fold(LoadSet::default(), |all, some| all.union(&some))
}

/// Returns an order of `set` that keeps every surge row at each step, or `None`, which proves that there is none.
/// `after` gives for each load those that must be on before it. Among the loads that may come last it takes the one
/// with the least peak, and of equals the one with the highest index, so that the largest come first.
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
                    // Rows without the load do not matter: it starts nothing there.
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

/// Returns the load that stands in the way when no order of `set` exists: one without which there is an order, the
/// first by `rank`. If no single load is enough, the first of all by `rank`. Loads that the budget leaves no work for
/// count as not enough.
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

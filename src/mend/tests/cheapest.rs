//! The cheapest set of changes after which everything holds, found by trying every set in the order
//! of its cost: slow, and plainly right. The program's own search is held against it, and it against
//! the cases of `tests/sharing`.

use std::cmp::Reverse;
use std::collections::BinaryHeap;

/// What the search for repairs found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cheapest {
    /// The changes, by number, rising; `None` when none was found.
    pub changes: Option<Vec<usize>>,
    /// Their cost.
    pub cost: u64,
    /// Whether that is settled: nothing cheaper helps, or nothing helps at all.
    pub proven: bool,
}

/// Tries sets of changes in the order of their cost, and among equals with the fewest and then
/// the first numbers, until `mends` says yes. `allowed` says whether changes may be made together;
/// a set that may not be is not grown, so it must be true of every part of a set it is true of. At
/// most so many `steps`.
pub fn cheapest(
    costs: &[u64],
    mut allowed: impl FnMut(&[usize]) -> bool,
    mut mends: impl FnMut(&[usize]) -> bool,
    mut steps: u64,
) -> Cheapest {
    // Each set is reached once, from the set without its greatest number, which costs no more:
    // so sets leave the heap in the order of their cost.
    let mut heap = BinaryHeap::from([Reverse((0, 0, Vec::new()))]);
    while let Some(Reverse((cost, size, set))) = heap.pop() {
        if steps == 0 {
            return Cheapest { changes: None, cost, proven: false };
        }
        steps -= 1;
        if mends(&set) {
            return Cheapest { changes: Some(set), cost, proven: true };
        }
        let next = set.last().map_or(0, |last| last + 1);
        for (change, price) in costs.iter().enumerate().skip(next) {
            let mut more = set.clone();
            more.push(change);
            if allowed(&more) {
                heap.push(Reverse((cost + price, size + 1, more)));
            }
        }
    }
    Cheapest { changes: None, cost: 0, proven: true }
}

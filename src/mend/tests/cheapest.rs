//! A brute-force search for the cheapest set of changes after which everything holds. It is slow but obviously correct.
//! The program's own search is tested against it, and it is tested against the cases of `tests/sharing`.

use std::cmp::Reverse;
use std::collections::BinaryHeap;

/// The result of the search.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cheapest {
    /// The indices of the changes, ascending. `None` if no set was found.
    pub changes: Option<Vec<usize>>,
    /// The cost of the changes, or of the set at which the search stopped.
    pub cost: u64,
    /// Whether the result is certain: nothing cheaper helps, or nothing helps at all.
    pub proven: bool,
}

/// Tries sets in order of cost until `mends` accepts one; among equals the fewest changes first, then the lowest
/// indices.
///
/// `allowed` tells whether changes may be made together. A set it rejects is not grown, so it must accept every subset
/// of a set it accepts. Tries at most `steps` sets.
pub fn cheapest(
    costs: &[u64],
    mut allowed: impl FnMut(&[usize]) -> bool,
    mut mends: impl FnMut(&[usize]) -> bool,
    mut steps: u64,
) -> Cheapest {
    // Each set is reached once, from the set without its highest index, which costs no more. So sets leave the heap in
    // order of cost.
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

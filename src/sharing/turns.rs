//! Whose turn it is: the fewest groups such that each load is in one and each group holds.

use super::budget::Budget;
use super::model::Fixed;
use super::set::LoadSet;

/// A division into turns.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Turns {
    /// The groups, without the loads that always run. With slots, one for each slot used.
    pub groups: Vec<LoadSet>,
    /// Loads that do not hold even alone beside those that always run.
    pub cannot_run: LoadSet,
    /// Whether the loads that always run hold by themselves. If not, nothing else is filled in.
    pub always_hold: bool,
    /// Whether no fewer groups do. Else `at_least` says how many are needed as far as is known.
    pub proven: bool,
    /// No fewer than this.
    pub at_least: usize,
}

/// The fewest groups of `loads`, each holding together with all of `always`.
#[must_use]
pub fn fewest(fixed: &Fixed, loads: &LoadSet, always: &LoadSet, budget: &mut Budget) -> Turns {
    let slots = vec![*loads; loads.len()];
    // As many slots as loads is always enough, so there is an answer.
    in_slots(fixed, loads, always, &slots, budget).unwrap_or_else(|turns| turns)
}

/// The same, where group `g` must be drawn from `slots[g]` (the loads that may run at that hour)
/// and as few slots as possible are used.
///
/// # Errors
/// When some load fits in no slot whatever is done: the turns without groups.
pub fn in_slots(
    fixed: &Fixed,
    loads: &LoadSet,
    always: &LoadSet,
    slots: &[LoadSet],
    budget: &mut Budget,
) -> Result<Turns, Turns> {
    let mut turns = Turns {
        groups: Vec::new(),
        cannot_run: LoadSet::default(),
        always_hold: fixed.holds(always),
        proven: true,
        at_least: 0,
    };
    if !turns.always_hold {
        return Ok(turns);
    }
    let others = loads.minus(always);
    turns.cannot_run = others
        .iter()
        .filter(|load| !fixed.holds(&always.with(*load)))
        .collect();
    let need = others.minus(&turns.cannot_run);
    if need.is_empty() {
        return Ok(turns);
    }
    let all: LoadSet = need.iter().chain(always.iter()).collect();
    let fixed = fixed.essential(&all);

    // Slots open to the same loads are alike: of those not yet in use only the first is tried.
    let mut classes: Vec<LoadSet> = slots.iter().map(|s| s.intersection(&need)).collect();
    classes.sort_unstable();
    classes.dedup();
    let class: Vec<usize> = slots
        .iter()
        .map(|s| {
            classes
                .binary_search(&s.intersection(&need))
                .unwrap_or_default()
        })
        .collect();

    let mut order: Vec<usize> = need.iter().collect();
    let size = |load: usize| -> i64 {
        fixed
            .rows
            .iter()
            .map(|row| {
                let room = (row.capacity - row.sum(always)).max(1);
                let wide = i128::from(row.sums[load]) * 1_000_000 / i128::from(room);
                i64::try_from(wide).unwrap_or(i64::MAX)
            })
            .max()
            .unwrap_or(0)
    };
    let choices = |load: usize| classes.iter().filter(|c| c.contains(load)).count();
    order.sort_by_key(|load| (choices(*load), -size(*load), *load));

    // No fewer than the sum of any row needs.
    let mut count = fixed
        .rows
        .iter()
        .map(|row| groups_for(row.sum(&need), row.capacity - row.sum(always)))
        .max()
        .unwrap_or(0)
        .max(1);
    while count <= slots.len() {
        let mut search = Fill {
            fixed: &fixed,
            always,
            order: &order,
            slots,
            class: &class,
            count,
            groups: vec![None; slots.len()],
            open: 0,
            rest: rests(&fixed, &order),
        };
        match search.descend(0, budget) {
            Some(true) => {
                turns.groups = search.groups.into_iter().flatten().collect();
                turns.at_least = if turns.proven { count } else { turns.at_least };
                return Ok(turns);
            }
            Some(false) => {}
            None => {
                // Not settled. Fill the slots one load after the other instead, and say so.
                turns.proven = false;
                turns.at_least = count;
                turns.groups = first_fit(&fixed, &order, always, slots);
                return Ok(turns);
            }
        }
        count += 1;
    }
    Err(turns)
}

/// How many groups a sum needs when each takes so much.
fn groups_for(sum: i64, room: i64) -> usize {
    if sum <= 0 {
        0
    } else if room <= 0 {
        usize::MAX / 2
    } else {
        usize::try_from((sum + room - 1) / room).unwrap_or(usize::MAX / 2)
    }
}

fn rests(fixed: &Fixed, order: &[usize]) -> Vec<Vec<i64>> {
    let mut rest = vec![vec![0; fixed.rows.len()]; order.len() + 1];
    for (step, load) in order.iter().enumerate().rev() {
        for (r, row) in fixed.rows.iter().enumerate() {
            rest[step][r] = rest[step + 1][r] + row.sums[*load];
        }
    }
    rest
}

fn first_fit(fixed: &Fixed, order: &[usize], always: &LoadSet, slots: &[LoadSet]) -> Vec<LoadSet> {
    let mut groups = vec![LoadSet::default(); slots.len()];
    for load in order {
        let all = |group: &LoadSet| -> LoadSet { group.iter().chain(always.iter()).collect() };
        if let Some(slot) = (0..slots.len()).find(|slot| {
            slots[*slot].contains(*load) && fixed.holds(&all(&groups[*slot]).with(*load))
        }) {
            groups[slot].insert(*load);
        }
    }
    groups.retain(|group| !group.is_empty());
    groups
}

struct Fill<'a> {
    fixed: &'a Fixed,
    always: &'a LoadSet,
    order: &'a [usize],
    slots: &'a [LoadSet],
    class: &'a [usize],
    /// How many slots may be used.
    count: usize,
    groups: Vec<Option<LoadSet>>,
    open: usize,
    /// Sum of the loads from this step on, by row.
    rest: Vec<Vec<i64>>,
}

impl Fill<'_> {
    /// `Some(true)` when the rest was fitted in, `Some(false)` when it cannot be, `None` when
    /// the budget ended.
    fn descend(&mut self, step: usize, budget: &mut Budget) -> Option<bool> {
        let Some(&load) = self.order.get(step) else {
            return Some(true);
        };
        if !budget.step() {
            return None;
        }
        // What is left must fit, in each row, into the room of all the groups there may be:
        // whatever is placed in a group adds at least its sum there.
        let crowded = self.fixed.rows.iter().enumerate().any(|(r, row)| {
            let each = row.capacity - row.sum(self.always);
            let taken: i64 = self
                .groups
                .iter()
                .flatten()
                .map(|group| row.sum(group))
                .sum();
            let count = i64::try_from(self.count).unwrap_or(i64::MAX);
            self.rest[step][r] > each.saturating_mul(count) - taken
        });
        if crowded {
            return Some(false);
        }
        let mut tried = Vec::new();
        for slot in 0..self.slots.len() {
            if !self.slots[slot].contains(load) {
                continue;
            }
            let before = self.groups[slot];
            let group = if let Some(group) = before {
                group
            } else {
                // Unused slots of one class are interchangeable: renaming them turns any filling
                // of one into a filling of the other.
                if self.open == self.count || tried.contains(&self.class[slot]) {
                    continue;
                }
                tried.push(self.class[slot]);
                LoadSet::default()
            };
            let all: LoadSet = group.iter().chain(self.always.iter()).collect();
            if !self.fixed.holds(&all.with(load)) {
                continue;
            }
            self.groups[slot] = Some(group.with(load));
            self.open += usize::from(before.is_none());
            let filled = self.descend(step + 1, budget);
            if filled != Some(false) {
                return filled;
            }
            self.open -= usize::from(before.is_none());
            self.groups[slot] = before;
        }
        Some(false)
    }
}

//! Whose turn it is: the fewest groups such that each load is in one and each group holds.

use super::budget::Budget;
use super::model::{Fixed, Sums};
use super::set::LoadSet;

/// A division into turns.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Turns {
    /// The groups, without the loads that always run. With slots, one for each slot used.
    pub groups: Vec<LoadSet>,
    /// Loads that do not hold with those that always run, even without any others.
    pub cannot_run: LoadSet,
    /// Whether the loads that always run hold by themselves. If not, the other fields stay empty.
    pub always_hold: bool,
    /// Whether it is proven that no fewer groups would do.
    pub proven: bool,
    /// A lower bound on the number of groups.
    pub at_least: usize,
}

/// Returns the fewest groups of `loads`, each holding together with all of `always`.
#[must_use]
pub fn fewest(fixed: &Fixed, loads: &LoadSet, always: &LoadSet, budget: &mut Budget) -> Turns {
    let slots = vec![*loads; loads.len()];
    // As many slots as loads is always enough, so there is an answer.
    in_slots(fixed, loads, always, &slots, budget).unwrap_or_else(|turns| turns)
}

/// Does the same where group `g` must be drawn from `slots[g]` (the loads that may run at that hour), using as few
/// slots as possible.
///
/// # Errors
/// When the loads cannot be fitted into the slots, with the turns but no groups.
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
    let beside = Sums::of(fixed, always);
    turns.cannot_run = others.iter().filter(|load| !beside.fit(fixed, *load)).collect();
    let need = others.minus(&turns.cannot_run);
    if need.is_empty() {
        return Ok(turns);
    }
    let all: LoadSet = need.iter().chain(always.iter()).collect();
    let fixed = fixed.essential(&all);

    // Slots open to the same loads are alike. Of those not yet in use only the first is tried.
    let mut classes: Vec<LoadSet> = slots.iter().map(|s| s.intersection(&need)).collect();
    classes.sort_unstable();
    classes.dedup();
    let class: Vec<usize> =
        slots.iter().map(|s| classes.binary_search(&s.intersection(&need)).unwrap_or_default()).collect();

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
    order.sort_by_cached_key(|load| (choices(*load), -size(*load), *load));

    // No fewer than the sum in any row needs.
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
            order: &order,
            slots,
            class: &class,
            count,
            groups: vec![None; slots.len()],
            open: 0,
            empty: Sums::of(&fixed, always),
            taken: vec![0; fixed.rows.len()],
            rest: rests(&fixed, &order),
        };
        match search.descend(0, budget) {
            Some(true) => {
                turns.groups = search.groups();
                turns.at_least = if turns.proven { count } else { turns.at_least };
                return Ok(turns);
            }
            Some(false) => {}
            None => {
                // Undecided within the budget. Fill the slots one load at a time instead, and report that.
                turns.proven = false;
                turns.at_least = count;
                turns.groups = first_fit(&fixed, &order, search.empty, slots);
                return Ok(turns);
            }
        }
        count += 1;
    }
    Err(turns)
}

/// Returns how many groups a sum needs if each holds `room`.
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

fn first_fit(fixed: &Fixed, order: &[usize], empty: Sums, slots: &[LoadSet]) -> Vec<LoadSet> {
    let mut groups = vec![(LoadSet::default(), empty); slots.len()];
    for load in order {
        let mut groups = groups.iter_mut().zip(slots);
        let free = groups.find(|((_, sums), slot)| slot.contains(*load) && sums.fit(fixed, *load));
        if let Some(((set, sums), _)) = free {
            set.insert(*load);
            sums.add(fixed, *load);
        }
    }
    let sets = groups.into_iter().map(|(set, _)| set);
    sets.filter(|set| !set.is_empty()).collect()
}

struct Fill<'a> {
    fixed: &'a Fixed,
    order: &'a [usize],
    slots: &'a [LoadSet],
    class: &'a [usize],
    /// How many slots may be used.
    count: usize,
    /// The contents of each slot in use, and their sums together with what always runs.
    groups: Vec<Option<(LoadSet, Sums)>>,
    open: usize,
    /// The sums of what always runs.
    empty: Sums,
    /// The sums of all groups, by row.
    taken: Vec<i64>,
    /// The sums of the loads from this step on, by row.
    rest: Vec<Vec<i64>>,
}

impl Fill<'_> {
    fn groups(self) -> Vec<LoadSet> {
        self.groups.into_iter().flatten().map(|(set, _)| set).collect()
    }

    /// Fits in the loads from `step` on. `Some(true)` if the rest was fitted in, `Some(false)` if it cannot be, `None`
    /// if the budget ran out.
    fn descend(&mut self, step: usize, budget: &mut Budget) -> Option<bool> {
        let Some(&load) = self.order.get(step) else {
            return Some(true);
        };
        let fixed = self.fixed;
        if !budget.spend((fixed.rows.len() * (self.open + 2) + self.slots.len()) as u64) {
            return None;
        }
        // In each row, what is left must fit into the room of all the groups allowed, because whatever is placed in a
        // group adds at least its sum there.
        let crowded = fixed.rows.iter().enumerate().any(|(r, row)| {
            let each = row.capacity - self.empty.used[r];
            let count = i64::try_from(self.count).unwrap_or(i64::MAX);
            self.rest[step][r] > each.saturating_mul(count) - self.taken[r]
        });
        if crowded {
            return Some(false);
        }
        let mut tried = Vec::new();
        for slot in 0..self.slots.len() {
            if !self.slots[slot].contains(load) {
                continue;
            }
            let new = self.groups[slot].is_none();
            // Unused slots of one class are interchangeable: renaming them turns a filling of one into a filling of the
            // other.
            if new && (self.open == self.count || tried.contains(&self.class[slot])) {
                continue;
            }
            if new {
                tried.push(self.class[slot]);
            }
            let (set, mut sums) = self.groups[slot].take().unwrap_or_else(|| (LoadSet::default(), self.empty.clone()));
            if sums.fit(fixed, load) {
                sums.add(fixed, load);
                self.groups[slot] = Some((set.with(load), sums));
                self.count_in(load, 1);
                self.open += usize::from(new);
                let filled = self.descend(step + 1, budget);
                if filled != Some(false) {
                    return filled;
                }
                self.open -= usize::from(new);
                self.count_in(load, -1);
                let (_, back) = self.groups[slot].take()?;
                sums = back;
                sums.remove(fixed, load);
            }
            self.groups[slot] = (!new).then_some((set, sums));
        }
        Some(false)
    }

    fn count_in(&mut self, load: usize, sign: i64) {
        for (taken, row) in self.taken.iter_mut().zip(&self.fixed.rows) {
            *taken += sign * row.sums[load];
        }
    }
}

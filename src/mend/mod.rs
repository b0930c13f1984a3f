//! The cheapest changes after which a plan has no danger left and serves every must.
//!
//! **The list.** What may be changed is stated in [`Change`], its costs in `costs.toml`, and
//! which of it bears on which problem in [`list`].
//!
//! **The search** goes through sets of changes in the order of their cost. Whatever clears a plan
//! clears any one problem of it, so it holds a change that bears on that one: a set is grown only
//! by those, and the first set without a problem is the cheapest. What all the problems left must
//! still cost at least (`to_pay`) is counted in before a set's turn comes. "Cheapest" is so of the sets that
//! the list reaches, when every change answers a problem that the others leave.
//!
//! **The proof.** Every set is judged by the whole check ([`report::judge`]) on the changed plan,
//! and by nothing else. What helped nothing in the end is dropped again. What it leaves may not be
//! worse than what it found: no more warnings, and no finding on air that was not there, or was
//! milder. To unplug a bad cord and run its things beside the engine is no repair.
//!
//! A change is of the plan. People have to make it in the camp.

mod change;
mod list;

pub use change::Change;
pub use list::Problem;

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet, BinaryHeap};

use crate::plan::{Id, Plan};
use crate::report::{self, Effect, Report, Signal, Tally};

/// How many plans are checked at most: well under a second.
pub const PLANS: usize = 600;

/// Counts what is wrong with a plan: troubles, as every other place does.
#[must_use]
pub fn tally(plan: &Plan, report: &Report) -> Tally {
    let musts: BTreeSet<Id> = list::waiting(plan, report).into_iter().flatten().collect();
    Tally {
        dangers: report.count(Signal::Danger),
        warnings: report.count(Signal::Warning),
        unserved_musts: musts.len(),
    }
}

/// A plan mended as far as the list goes.
#[derive(Clone, Debug)]
pub struct Mended {
    /// The changes, in the order they were made.
    pub changes: Vec<Change>,
    /// The changed plan.
    pub plan: Plan,
    /// Its report, from the whole check.
    pub report: Report,
    /// Before and after.
    pub effect: Effect,
}

impl Mended {
    /// Tells the report of the plan as it was what would help.
    pub fn tell(&self, before: &Plan, report: &mut Report) {
        let sharing = &mut report.figures.sharing;
        sharing.repairs = self
            .changes
            .iter()
            .map(|change| change.repair(before, &self.plan))
            .collect();
        sharing.repairs.sort_by_key(|repair| repair.cost);
        // Where the things go that lost their place to another change. They cost no more: the
        // price of that change counts them.
        for (load, old) in self.plan.loads.iter().zip(&before.loads) {
            let moved = Change::Move(load.id.clone());
            if let (Some(on), Some(was)) = (&load.on, &old.on)
                && on != was
                && !self.changes.contains(&moved)
            {
                let mut repair = moved.repair(before, &self.plan);
                repair.cost = 0;
                sharing.repairs.push(repair);
            }
        }
        sharing.mended = Some(self.effect.clone());
    }
}

/// Finds the cheapest changes that clear every danger and serve every must; then, if `warnings`,
/// whatever else on the list leaves fewer warnings, the cheapest first.
#[must_use]
pub fn mend(plan: &Plan, warnings: bool) -> Mended {
    mend_within(plan, warnings, PLANS)
}

/// The same, checking at most so many plans.
#[must_use]
pub fn mend_within(plan: &Plan, warnings: bool, plans: usize) -> Mended {
    let mut search = Search::new(plan, plans);
    let before = search.before.tally;
    let (mut changes, proven) = search.cheapest();
    let cheapest = changes.len();
    if warnings {
        search.fewer_warnings(&mut changes);
    }
    // Beyond the dangers one change after the other is added, and none taken back.
    let proven = proven && changes.len() == cheapest;
    search.drop_idle(&mut changes, warnings);
    let mut after = search.state(&changes);
    if let Some(settled) = settle(plan, &changes, &after)
        && !search.worsens(&settled)
    {
        after = settled;
    }
    let proven = proven && after.report.figures.sharing.families_complete;
    Mended {
        effect: Effect {
            before,
            after: after.tally,
            cost: changes.iter().map(Change::cost).sum(),
            proven,
        },
        changes,
        plan: after.plan,
        report: after.report,
    }
}

/// A plan with some changes, checked.
struct State {
    plan: Plan,
    report: Report,
    tally: Tally,
}

impl State {
    fn of(plan: Plan) -> Self {
        let report = report::judge(&plan);
        let tally = tally(&plan, &report);
        Self {
            plan,
            report,
            tally,
        }
    }

    fn badness(&self) -> (usize, usize) {
        (
            self.tally.dangers + self.tally.unserved_musts,
            self.tally.warnings,
        )
    }
}

/// A set of changes in its turn: what it costs at least once it clears the plan, what it costs
/// now, how many changes it has, and which.
type Turn = Reverse<(u32, u32, usize, Vec<Change>)>;

struct Search<'a> {
    plan: &'a Plan,
    before: State,
    left: usize,
}

impl<'a> Search<'a> {
    fn new(plan: &'a Plan, plans: usize) -> Self {
        Self {
            plan,
            before: State::of(plan.clone()),
            left: plans,
        }
    }

    /// Whether the plan is worse off than before in what no danger cleared makes up for.
    fn worsens(&self, state: &State) -> bool {
        state.tally.warnings > self.before.tally.warnings
            || worse_air(&self.before.report, &state.report)
    }

    /// The plan with these changes.
    fn state(&self, changes: &[Change]) -> State {
        let mut plan = self.plan.clone();
        // In the order of their kinds, whatever order they were found in.
        let mut sorted = changes.to_vec();
        sorted.sort();
        for change in &sorted {
            change.apply(&mut plan);
        }
        State::of(plan)
    }

    /// The cheapest set, sorted, and whether that is settled. Of a plan that nothing on the list
    /// clears, the set that leaves least.
    fn cheapest(&mut self) -> (Vec<Change>, bool) {
        // What nothing on the list bears on stays, and is no reason to give up on the rest.
        let mut hopeless: Option<BTreeSet<Problem>> = None;
        let mut seen: BTreeSet<Vec<Change>> = BTreeSet::new();
        let mut best: Option<((usize, usize), Vec<Change>)> = None;
        let mut heap: BinaryHeap<Turn> = BinaryHeap::from([Reverse((0, 0, 0, Vec::new()))]);
        while let Some(Reverse((_, cost, size, set))) = heap.pop() {
            if self.left == 0 {
                return (best.map(|(_, set)| set).unwrap_or_default(), false);
            }
            self.left -= 1;
            let state = self.state(&set);
            let problems = list::problems(&state.plan, &state.report, Signal::Danger);
            let lists: Vec<(Problem, Vec<Change>)> = problems
                .into_iter()
                .map(|problem| {
                    let mut list = list::changes(&state.plan, &state.report, &problem);
                    list.retain(|change| set.iter().all(|made| !made.clashes(change)));
                    (problem, list)
                })
                .collect();
            let hopeless = hopeless.get_or_insert_with(|| {
                lists
                    .iter()
                    .filter(|(_, list)| list.is_empty())
                    .map(|(problem, _)| problem.clone())
                    .collect()
            });
            let badness = state.badness();
            let worsens = self.worsens(&state);
            if !worsens && best.as_ref().is_none_or(|(least, _)| badness.0 < least.0) {
                best = Some((badness, set.clone()));
            }
            // The shortest list first: it leaves the least to try.
            let mut open: Vec<&Vec<Change>> = lists
                .iter()
                .filter(|(problem, _)| !hopeless.contains(problem))
                .map(|(_, list)| list)
                .collect();
            open.sort_by_key(|list| list.len());
            let Some(first) = open.first() else {
                if worsens {
                    continue;
                }
                return (set, true);
            };
            let to_pay = to_pay(&open);
            for change in *first {
                let mut more = set.clone();
                more.push(change.clone());
                more.sort();
                if seen.insert(more.clone()) {
                    let paid = cost + change.cost();
                    // Of what was to pay before, this change has paid its own cost at most.
                    let rest = to_pay.saturating_sub(change.cost());
                    heap.push(Reverse((paid + rest, paid, size + 1, more)));
                }
            }
        }
        (best.map(|(_, set)| set).unwrap_or_default(), true)
    }

    /// Adds, for each warning that is left, the cheapest change that leaves fewer of them and
    /// nothing worse.
    fn fewer_warnings(&mut self, changes: &mut Vec<Change>) {
        let mut now = self.state(changes);
        'again: loop {
            let mut lists: Vec<Change> = list::problems(&now.plan, &now.report, Signal::Warning)
                .iter()
                .flat_map(|problem| list::changes(&now.plan, &now.report, problem))
                .filter(|change| changes.iter().all(|made| !made.clashes(change)))
                .collect();
            lists.sort_by_key(Change::cost);
            lists.dedup();
            for change in lists {
                if self.left == 0 {
                    return;
                }
                self.left -= 1;
                let mut more = changes.clone();
                more.push(change);
                let then = self.state(&more);
                if then.badness() < now.badness()
                    && then.tally.warnings < now.tally.warnings
                    && !self.worsens(&then)
                {
                    *changes = more;
                    now = then;
                    continue 'again;
                }
            }
            return;
        }
    }

    /// Drops every change without which the plan is as well off.
    fn drop_idle(&self, changes: &mut Vec<Change>, warnings: bool) {
        let worth = |state: &State| {
            let (worst, warned) = state.badness();
            (worst, if warnings { warned } else { 0 })
        };
        let target = worth(&self.state(changes));
        let mut at = 0;
        while at < changes.len() {
            let mut fewer = changes.clone();
            fewer.remove(at);
            let state = self.state(&fewer);
            if worth(&state) <= target && !self.worsens(&state) {
                *changes = fewer;
            } else {
                at += 1;
            }
        }
        changes.sort();
    }
}

/// Whether some finding on air is new or graver than before. A notice there is about noise. What is
/// brought out from under a cover is rained on: that is told beside it, and exhaust kills sooner.
fn worse_air(before: &Report, after: &Report) -> bool {
    let worst = |report: &Report, code: &str| {
        let findings = report.findings.iter();
        let of_code = findings.filter(|finding| finding.code == code);
        of_code.map(|finding| finding.signal).min()
    };
    after
        .findings
        .iter()
        .filter(|finding| finding.area == "air" && finding.signal <= Signal::Caution)
        .filter(|finding| finding.code != "AIR004" || worst(before, "AIR003").is_none())
        .any(|finding| worst(before, finding.code).is_none_or(|was| finding.signal < was))
}

/// What is still to pay at least. Each list needs one of its changes. Every list in turn takes
/// what its cheapest change has left to give, and all of its changes give that much; no change
/// gives more than its cost, so whatever set meets every list costs at least what was taken.
fn to_pay(lists: &[&Vec<Change>]) -> u32 {
    let mut left: BTreeMap<&Change, u32> = BTreeMap::new();
    let mut sum = 0;
    for list in lists {
        let give = list
            .iter()
            .map(|change| *left.entry(change).or_insert_with(|| change.cost()))
            .min()
            .unwrap_or(0);
        for change in *list {
            if let Some(left) = left.get_mut(change) {
                *left -= give;
            }
        }
        sum += give;
    }
    sum
}

/// Writes down where each moved load goes, so that the plan says it, if that leaves the plan as
/// well off.
fn settle(before: &Plan, changes: &[Change], state: &State) -> Option<State> {
    let mut plan = state.plan.clone();
    let mut moved = false;
    for (load, old) in plan.loads.iter_mut().zip(&before.loads) {
        if load.on.is_some() || old.on.is_none() {
            continue;
        }
        let facts = &state.report.figures.loads;
        let mut places: Vec<&Id> = state
            .report
            .figures
            .sharing
            .placed
            .iter()
            .filter(|placed| {
                facts
                    .iter()
                    .any(|fact| fact.id == placed.load && fact.of == load.id)
            })
            .map(|placed| &placed.at)
            .collect();
        places.dedup();
        if let [place] = places.as_slice() {
            load.on = Some((*place).clone());
            load.now = None;
            moved = true;
        }
    }
    if !moved || changes.is_empty() {
        return None;
    }
    let settled = State::of(plan);
    (settled.badness() <= state.badness()).then_some(settled)
}

#[cfg(test)]
mod tests;

//! The cheapest changes after which a plan has no danger left and serves every must.
//!
//! **The list.** What may be changed is stated in [`Change`], its costs in `costs.toml`, and
//! which of it bears on which problem in [`list`].
//!
//! **The search** goes through sets of changes in the order of their cost, and of those that cost
//! the same in that of how hard they are on people ([`Change::weight`]). Whatever clears a plan
//! clears any one problem of it, so it holds a change that bears on that one: a set is grown only
//! by those, and the first set without a problem is the cheapest. What all the problems left must
//! still cost at least (`to_pay`) is counted in before a set's turn comes. "Cheapest" is so of the sets that
//! the list reaches, when every change answers a problem that the others leave.
//!
//! **The steps.** A set counts only if people can carry it out: its changes, and what they bring
//! about, have an order in which each finds its part and a free socket ([`steps`]). They are told in
//! that order, and what was promised is the check of the plan that they lead to.
//!
//! **The proof.** A set on trial is judged by the rules that find dangers ([`report::trial`]); what
//! comes of it by the whole check ([`report::judge`]) on the plan after its steps, and by nothing
//! else. What helped nothing in the end is dropped again. What it leaves may not be
//! worse than what it found: no more warnings, and no finding on air that was not there, or was
//! milder. To unplug a bad cord and run its things beside the engine is no repair.
//!
//! A change is of the plan. People have to make it in the camp.

mod change;
mod list;
mod places;
mod steps;

pub use change::{Change, Seat};
pub use list::Problem;
use list::List;
pub use steps::Step;

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet, BinaryHeap};

use crate::plan::{Id, Plan};
use crate::report::{self, Effect, Report, Signal, Tally};

/// How many plans are checked at most: well under a second.
pub const PLANS: usize = 600;

/// Counts what is wrong with a plan.
#[must_use]
pub fn tally(plan: &Plan, report: &Report) -> Tally {
    let count = |signal| {
        report
            .findings
            .iter()
            .filter(|finding| finding.signal == signal)
            .count()
    };
    let musts: BTreeSet<Id> = list::waiting(plan, report).into_iter().flatten().collect();
    Tally {
        dangers: count(Signal::Danger),
        warnings: count(Signal::Warning),
        unserved_musts: musts.len(),
    }
}

/// A plan mended as far as the list goes.
#[derive(Clone, Debug)]
pub struct Mended {
    /// What to do, in an order in which each step finds what it needs.
    pub steps: Vec<Step>,
    /// The plan after them.
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
            .steps
            .iter()
            .map(|step| {
                let mut repair = step.change.repair(before, &self.plan);
                if step.comes_along {
                    repair.cost = 0;
                }
                repair
            })
            .collect();
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
    let (mut done, proven) = search.cheapest();
    let cheapest = done.changes.len();
    if !done.state.tally.clear() {
        // Not all of it can be cleared, or not in so many plans: one thing after the other, then.
        search.left += plans / 4;
        search.fewer(&mut done, Signal::Danger);
    }
    if warnings {
        search.fewer(&mut done, Signal::Warning);
    }
    // Beyond the dangers one change after the other is added, and none taken back.
    let proven = proven && done.changes.len() == cheapest;
    search.drop_idle(&mut done, warnings);
    let proven = proven && done.state.report.figures.sharing.families_complete;
    Mended {
        effect: Effect {
            before,
            after: done.state.tally,
            cost: done.changes.iter().map(Change::cost).sum(),
            proven,
        },
        steps: done.steps,
        plan: done.state.plan,
        report: done.state.report,
    }
}

/// A plan with some changes, checked.
struct State {
    plan: Plan,
    report: Report,
    tally: Tally,
    worst: Worst,
}

/// How many dangers there are and musts without what they need; then, how much they name: it is less when
/// one of several parts is out of a danger.
type Worst = (usize, usize);

impl State {
    /// By the whole check.
    fn of(plan: Plan) -> Self {
        let report = report::judge(&plan);
        Self::judged(plan, report)
    }

    /// By as much of it as finds dangers and gives everything its place.
    fn trial(plan: Plan) -> Self {
        let report = report::trial(&plan);
        Self::judged(plan, report)
    }

    fn judged(plan: Plan, report: Report) -> Self {
        let tally = tally(&plan, &report);
        let named = list::problems(&plan, &report, Signal::Danger);
        let named = named.iter().map(Problem::size).sum();
        Self {
            worst: (tally.dangers + tally.unserved_musts, named),
            plan,
            report,
            tally,
        }
    }

    const fn badness(&self) -> (Worst, usize) {
        (self.worst, self.tally.warnings)
    }
}

/// A set of changes as people carry it out.
struct Done {
    changes: Vec<Change>,
    steps: Vec<Step>,
    state: State,
}

/// A set of changes in its turn: what it weighs at least once it clears the plan, what it weighs
/// now, how many changes it has, and which.
type Turn = Reverse<(u64, u64, usize, Vec<Change>)>;

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

    /// The plan with these changes, in the order of their kinds, whatever order they were found in;
    /// `None` if one of them has nothing to be made on.
    fn changed(&self, changes: &[Change]) -> Option<Plan> {
        let mut plan = self.plan.clone();
        let mut sorted = changes.to_vec();
        sorted.sort();
        sorted
            .iter()
            .all(|change| change.apply(&mut plan))
            .then_some(plan)
    }

    /// Whether one more plan may be checked.
    fn may_try(&mut self) -> bool {
        let may = self.left > 0;
        self.left = self.left.saturating_sub(1);
        may
    }

    /// The set carried out, if it can be and leaves nothing worse: with every load that moves where
    /// the sharing put it, if that leaves the plan as well off, and else where it fits by then.
    fn carried_out(&self, changes: &[Change]) -> Option<Done> {
        let state = State::of(self.changed(changes)?);
        if self.worsens(&state) {
            return None;
        }
        let mended = (&state.plan, &state.report);
        [true, false].into_iter().find_map(|seated| {
            let steps = steps::with_moves(self.plan, changes, mended, seated);
            let (steps, plan) = steps::in_order(self.plan, steps)?;
            let after = State::of(plan);
            (after.badness() <= state.badness() && !self.worsens(&after)).then(|| Done {
                changes: changes.to_vec(),
                steps,
                state: after,
            })
        })
    }

    /// Nothing done.
    fn nothing(&self) -> Done {
        Done {
            changes: Vec::new(),
            steps: Vec::new(),
            state: State {
                plan: self.before.plan.clone(),
                report: self.before.report.clone(),
                tally: self.before.tally,
                worst: self.before.worst,
            },
        }
    }

    /// The cheapest set, and whether that is settled. Of a plan that nothing on the list
    /// clears, the set that leaves least.
    fn cheapest(&mut self) -> (Done, bool) {
        // What nothing on the list bears on stays, and is no reason to give up on the rest.
        let first = list::problems(self.plan, &self.before.report, Signal::Danger);
        let mut seen: BTreeSet<Vec<Change>> = BTreeSet::new();
        let mut best = self.nothing();
        let mut heap: BinaryHeap<Turn> = BinaryHeap::from([Reverse((0, 0, 0, Vec::new()))]);
        while let Some(Reverse((_, weight, size, set))) = heap.pop() {
            if !self.may_try() {
                return (best, false);
            }
            let Some(plan) = self.changed(&set) else {
                continue;
            };
            let state = State::trial(plan);
            let of_plan = List::of(&state.plan, &state.report);
            let mut lists: Vec<Vec<Change>> = Vec::new();
            for problem in list::problems(&state.plan, &state.report, Signal::Danger) {
                let mut list = of_plan.changes(&problem);
                if list.is_empty() && first.iter().any(|whole| problem.within(whole)) {
                    continue;
                }
                list.retain(|change| set.iter().all(|made| !made.clashes(change)));
                lists.push(list);
            }
            let clear = lists.is_empty();
            if clear && set.is_empty() {
                return (best, true);
            }
            if state.worst < best.state.worst
                && let Some(done) = self.carried_out(&set)
                && done.state.worst < best.state.worst
            {
                best = done;
                if clear {
                    return (best, true);
                }
            }
            // The shortest list first: it leaves the least to try.
            let mut open: Vec<&Vec<Change>> = lists.iter().collect();
            open.sort_by_key(|list| list.len());
            let to_pay = self.to_pay(&open);
            for changes in grown(&open) {
                let mut more = set.clone();
                more.extend(changes.iter().copied().cloned());
                more.sort();
                if seen.insert(more.clone()) {
                    let price: u64 = changes.iter().map(|it| it.weight(self.plan)).sum();
                    let paid = weight + price;
                    // Of what was to pay before, these changes have paid their own cost at most.
                    let rest = to_pay.saturating_sub(price);
                    heap.push(Reverse((paid + rest, paid, size + changes.len(), more)));
                }
            }
        }
        (best, true)
    }

    /// Adds, for each problem of this signal or worse that is left, the cheapest change that leaves
    /// fewer of them and nothing worse.
    fn fewer(&mut self, done: &mut Done, down_to: Signal) {
        let worth = |state: &State| {
            let (worst, warnings) = state.badness();
            (worst, if down_to == Signal::Danger { 0 } else { warnings })
        };
        'again: loop {
            let now = &done.state;
            let of_plan = List::of(&now.plan, &now.report);
            let mut lists: Vec<Change> = list::problems(&now.plan, &now.report, down_to)
                .iter()
                .flat_map(|problem| of_plan.changes(problem))
                .filter(|change| done.changes.iter().all(|made| !made.clashes(change)))
                .collect();
            lists.sort_by_key(|change| change.weight(self.plan));
            lists.dedup();
            for change in lists {
                if !self.may_try() {
                    return;
                }
                let mut more = done.changes.clone();
                more.push(change);
                let Some(plan) = self.changed(&more) else {
                    continue;
                };
                // What leaves more dangers is no answer to a warning, and the whole check is long.
                let most = worth(&done.state);
                let worst = State::trial(plan).worst;
                if (worst, 0) < most
                    && let Some(then) = self.carried_out(&more)
                    && worth(&then.state) < most
                {
                    *done = then;
                    continue 'again;
                }
            }
            return;
        }
    }

    /// Drops every change without which the plan is as well off.
    fn drop_idle(&mut self, done: &mut Done, warnings: bool) {
        let worth = |state: &State| {
            let (worst, warned) = state.badness();
            (worst, if warnings { warned } else { 0 })
        };
        let mut at = 0;
        while done.changes.len() > 1 && at < done.changes.len() {
            let mut fewer = done.changes.clone();
            fewer.remove(at);
            let target = worth(&done.state);
            let helps = |plan| State::trial(plan).worst <= target.0;
            let fewer = self
                .changed(&fewer)
                .is_some_and(helps)
                .then(|| self.carried_out(&fewer))
                .flatten()
                .filter(|fewer| worth(&fewer.state) <= target);
            match fewer {
                Some(fewer) => *done = fewer,
                None => at += 1,
            }
        }
    }

    /// What is still to pay at least. Each list needs one of its changes. Every list in turn takes
    /// what its cheapest change has left to give, and all of its changes give that much; no change
    /// gives more than its cost, so whatever set meets every list costs at least what was taken.
    fn to_pay(&self, lists: &[&Vec<Change>]) -> u64 {
        let mut left: BTreeMap<&Change, u64> = BTreeMap::new();
        let mut sum = 0;
        for list in lists {
            let give = list
                .iter()
                .map(|change| *left.entry(change).or_insert_with(|| change.weight(self.plan)))
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
}

/// What a set is grown by, the shortest list being the first: what is alone on its list goes with
/// every set that clears the plan, so all of that at once; else each change of the first list.
fn grown<'a>(open: &[&'a Vec<Change>]) -> Vec<Vec<&'a Change>> {
    if open.iter().any(|list| list.is_empty()) {
        return Vec::new();
    }
    let mut only: Vec<&Change> = open
        .iter()
        .filter_map(|list| match list.as_slice() {
            [only] => Some(only),
            _ => None,
        })
        .collect();
    only.sort();
    only.dedup();
    let apart = |(at, one): (usize, &&Change)| only[..at].iter().all(|other| !one.clashes(other));
    if !only.is_empty() && only.iter().enumerate().all(apart) {
        return vec![only];
    }
    open.first()
        .map(|list| list.iter().map(|change| vec![change]).collect())
        .unwrap_or_default()
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

#[cfg(test)]
mod tests;

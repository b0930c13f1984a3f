//! The search through sets of changes.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet, BinaryHeap};

use super::change::Change;
use super::list::{self, List, Problem};
use super::places::ends_of;
use super::steps::{self, Step};
use super::tally;
use crate::plan::{Id, Plan};
use crate::report::{self, Report, Signal, Tally};

/// A plan with some changes, checked.
pub(super) struct State {
    pub plan: Plan,
    pub report: Report,
    pub tally: Tally,
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

/// How many sets are kept that leave least, for a plan that none clears.
const MOST_OF_LEAST: usize = 5;

/// A set of changes as people carry it out.
pub(super) struct Done {
    pub changes: Vec<Change>,
    pub steps: Vec<Step>,
    pub state: State,
}

/// A set of changes that was tried.
#[derive(Clone)]
struct Tried {
    worst: Worst,
    /// Whether it leaves something worse than it was, as far as a trial tells, which counts no warnings.
    worsens: bool,
    /// For each problem that something bears on, what does.
    lists: Vec<Vec<Change>>,
}

/// What a weight costs on the stated list.
const fn points(weight: u64) -> u64 {
    weight >> 32
}

/// What a set is gone by in its turn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Pass {
    /// What the problems left cost each by itself, whatever was paid: soon at an end.
    Dive,
    /// What was paid, and twice what all of them together must still cost at least: no set that it ends
    /// with is twice as dear as the cheapest.
    Near,
    /// The same, and that once: the first that clears the plan is the cheapest.
    Exact,
}

/// A set of changes in its turn: how it is gone by, what it weighs, and which.
type Turn = Reverse<((u64, usize), u64, Vec<Change>)>;

pub(super) struct Search<'a> {
    plan: &'a Plan,
    before: State,
    /// The problems of the plan as it is.
    first: Vec<Problem>,
    left: usize,
    tried: BTreeMap<Vec<Change>, Option<Tried>>,
}

impl<'a> Search<'a> {
    pub fn new(plan: &'a Plan, plans: usize) -> Self {
        let before = State::of(plan.clone());
        Self {
            first: list::problems(plan, &before.report, Signal::Danger),
            plan,
            before,
            left: plans,
            tried: BTreeMap::new(),
        }
    }

    /// The plan as it is.
    pub const fn before(&self) -> &State {
        &self.before
    }

    /// Lets so many more plans be checked.
    pub const fn allow(&mut self, plans: usize) {
        self.left += plans;
    }

    /// Whether a change is not of where a part goes that another change brings: that one says where.
    fn has_its_place(&self, change: &Change) -> bool {
        let Change::Replug { part, .. } = change else {
            return true;
        };
        let cords = self.plan.cords.iter().map(|it| &it.id);
        let mut parts = cords.chain(self.plan.boxes.iter().map(|it| &it.id));
        parts.any(|id| id == part)
    }

    /// Whether the plan is worse off than before in what no danger cleared makes up for.
    fn worsens(&self, state: &State) -> bool {
        state.tally.warnings > self.before.tally.warnings
            || worse_air(&self.before.report, &state.report)
            || evicts_bonding_plug(&self.before.report, &state.report)
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

    /// What a set leaves; `None` if it cannot be made.
    ///
    /// # Errors
    /// When no more plans may be checked.
    fn tried(&mut self, set: &[Change]) -> Result<Option<&Tried>, Spent> {
        if !self.tried.contains_key(set) {
            if self.left == 0 {
                return Err(Spent);
            }
            self.left -= 1;
            let tried = self.changed(set).map(|plan| self.tries(plan, set));
            self.tried.insert(set.to_vec(), tried);
        }
        Ok(self.tried.get(set).and_then(Option::as_ref))
    }

    fn tries(&self, plan: Plan, set: &[Change]) -> Tried {
        let state = State::trial(plan);
        let of_plan = List::of(&state.plan, &state.report);
        let mut lists: Vec<Vec<Change>> = Vec::new();
        for problem in list::problems(&state.plan, &state.report, Signal::Danger) {
            let mut list = of_plan.changes(&problem);
            list.retain(|change| self.has_its_place(change));
            // What nothing on the list bears on stays, and is no reason to give up on the rest.
            if list.is_empty() && self.first.iter().any(|whole| problem.within(whole)) {
                continue;
            }
            list.retain(|change| set.iter().all(|made| !made.clashes(change)));
            lists.push(list);
        }
        // The shortest first: it leaves the least to try.
        lists.sort_by_key(Vec::len);
        Tried {
            worst: state.worst,
            worsens: self.worsens(&state),
            lists,
        }
    }

    /// The set carried out, if it can be and leaves nothing worse: with every load that moves where
    /// the sharing put it, if that leaves the plan as well off, and else where it fits by then.
    fn carried_out(&mut self, changes: &[Change]) -> Option<Done> {
        // The whole check of two plans.
        self.left = self.left.saturating_sub(2);
        let state = State::of(self.changed(changes)?);
        if self.worsens(&state) {
            return None;
        }
        let mended = (&state.plan, &state.report);
        [true, false].into_iter().find_map(|seated| {
            let steps = steps::with_moves(self.plan, changes, mended, seated);
            let (steps, plan) = steps::in_order(self.plan, steps)?;
            let after = State::of(plan);
            let better = after.badness() <= state.badness() && !self.worsens(&after);
            (better && !self.brings_idle(&after)).then(|| Done {
                changes: changes.to_vec(),
                steps,
                state: after,
            })
        })
    }

    /// Whether a new part is there for nothing.
    fn brings_idle(&self, after: &State) -> bool {
        let placed = &after.report.figures.sharing.placed;
        let (cords, boxes) = (&after.plan.cords, &after.plan.boxes);
        let used = |end: &Id| {
            placed.iter().any(|it| it.at == *end)
                || cords.iter().any(|it| it.from.as_ref() == Some(end))
                || boxes.iter().any(|it| it.from.as_ref() == Some(end))
        };
        let known = |id: &Id| {
            self.plan.cords.iter().any(|it| it.id == *id)
                || self.plan.boxes.iter().any(|it| it.id == *id)
        };
        let ids = cords
            .iter()
            .map(|it| &it.id)
            .chain(boxes.iter().map(|it| &it.id));
        ids.filter(|id| !known(id))
            .any(|id| !ends_of(&after.plan, id).iter().any(used))
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
    /// clears, a set that leaves least.
    pub fn cheapest(&mut self) -> (Done, bool) {
        let all = self.left;
        let mut best: Option<Done> = None;
        let mut least: BTreeSet<(Worst, Vec<Change>)> = BTreeSet::new();
        let mut ended = Found::Nothing;
        for (pass, share) in [(Pass::Dive, 3), (Pass::Near, 3), (Pass::Exact, 1)] {
            let kept = self.left.saturating_sub(all / share);
            self.left -= kept;
            let most = best.as_ref().map(|done| self.weight(&done.changes));
            ended = match self.best_first(pass, most, &mut least) {
                Ok(done) => {
                    best = Some(done);
                    Found::Clear
                }
                Err(ended) => ended,
            };
            self.left += kept;
            if ended == Found::Nothing {
                break;
            }
        }
        let settled = ended != Found::TooLong;
        if let Some(best) = best {
            return (best, settled);
        }
        let mut left = least.iter().take(MOST_OF_LEAST);
        let done = left.find_map(|(_, set)| self.carried_out(set));
        let done = done.filter(|done| done.state.worst < self.before.worst);
        (done.unwrap_or_else(|| self.nothing()), settled)
    }

    fn weight(&self, set: &[Change]) -> u64 {
        set.iter().map(|change| change.weight(self.plan)).sum()
    }

    /// How a set is gone by that weighs so much, has so many changes and leaves that.
    fn turn(&self, pass: Pass, weight: u64, size: usize, lists: &[Vec<Change>]) -> (u64, usize) {
        match pass {
            // The larger set first: it is nearer to an end.
            Pass::Dive => (each_by_itself(self.plan, lists), usize::MAX - size),
            Pass::Near => (weight + 2 * to_pay(self.plan, lists), size),
            Pass::Exact => (weight + to_pay(self.plan, lists), size),
        }
    }

    /// Goes through sets in their turns, and stops at the first that clears the plan and weighs less than
    /// `most`. Puts those that leave least into `least`.
    fn best_first(
        &mut self,
        pass: Pass,
        most: Option<u64>,
        least: &mut BTreeSet<(Worst, Vec<Change>)>,
    ) -> Result<Done, Found> {
        let mut seen: BTreeSet<Vec<Change>> = BTreeSet::new();
        let mut heap: BinaryHeap<Turn> = BinaryHeap::from([Reverse(((0, 0), 0, Vec::new()))]);
        while let Some(Reverse((taken, weight, set))) = heap.pop() {
            let tried = match self.tried(&set) {
                Err(Spent) => {
                    // What is left would cost no less, and only be a little less hard on people.
                    let no_less = most.is_some_and(|most| points(taken.0) >= points(most));
                    let settled = pass == Pass::Exact && no_less;
                    return Err(if settled {
                        Found::Nothing
                    } else {
                        Found::TooLong
                    });
                }
                Ok(None) => continue,
                Ok(Some(tried)) => tried,
            };
            let (worst, worsens, lists) = (tried.worst, tried.worsens, tried.lists.clone());
            // What it leaves is known only now.
            let turn = self.turn(pass, weight, set.len(), &lists);
            if turn > taken {
                heap.push(Reverse((turn, weight, set)));
                continue;
            }
            if lists.is_empty() {
                if worst < self.before.worst
                    && !worsens
                    && let Some(done) = self.carried_out(&set)
                    && done.state.worst <= worst
                {
                    return Ok(done);
                }
                continue;
            }
            if worst < self.before.worst && !worsens {
                least.insert((worst, set.clone()));
                if least.len() > MOST_OF_LEAST {
                    least.pop_last();
                }
            }
            let left = to_pay(self.plan, &lists);
            let growths = grown(&lists);
            let price = |changes: &[&Change]| -> u64 {
                changes.iter().map(|it| it.weight(self.plan)).sum()
            };
            let cheapest = growths
                .iter()
                .map(|growth| price(growth))
                .min()
                .unwrap_or(0);
            for changes in growths {
                let price = price(&changes);
                let paid = weight + price;
                // Of what was to pay before, these changes have paid their own cost at most.
                let rest = left.saturating_sub(price);
                let mut more = set.clone();
                more.extend(changes.into_iter().cloned());
                more.sort();
                if most.is_none_or(|most| paid + rest < most) && seen.insert(more.clone()) {
                    let by = match pass {
                        // As if the dearer ones left more.
                        Pass::Dive => (taken.0 + price).saturating_sub(2 * cheapest),
                        Pass::Near => paid + 2 * rest,
                        Pass::Exact => paid + rest,
                    };
                    let size = if pass == Pass::Dive {
                        usize::MAX - more.len()
                    } else {
                        more.len()
                    };
                    heap.push(Reverse(((by, size), paid, more)));
                }
            }
        }
        Err(Found::Nothing)
    }

    /// Adds, for each problem of this signal or worse that is left, the cheapest change that leaves
    /// fewer of them and nothing worse.
    pub fn fewer(&mut self, done: &mut Done, down_to: Signal) {
        let worth = |state: &State| {
            let (worst, warnings) = state.badness();
            (
                worst,
                if down_to == Signal::Danger {
                    0
                } else {
                    warnings
                },
            )
        };
        'again: loop {
            let now = &done.state;
            let of_plan = List::of(&now.plan, &now.report);
            let mut lists: Vec<Change> = list::problems(&now.plan, &now.report, down_to)
                .iter()
                .flat_map(|problem| of_plan.changes(problem))
                .filter(|change| self.has_its_place(change))
                .filter(|change| done.changes.iter().all(|made| !made.clashes(change)))
                .collect();
            lists.sort_by_key(|change| change.weight(self.plan));
            lists.dedup();
            for change in lists {
                if self.left == 0 {
                    return;
                }
                self.left -= 1;
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
    pub fn drop_idle(&mut self, done: &mut Done, warnings: bool) {
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
}

/// As many plans were checked as may be.
struct Spent;

/// How a search ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Found {
    /// With a set that clears the plan.
    Clear,
    /// Nothing is left to try.
    Nothing,
    /// No more plans may be checked.
    TooLong,
}

/// What each problem left costs at least by itself: more than they need to, if one change answers two.
fn each_by_itself(plan: &Plan, lists: &[Vec<Change>]) -> u64 {
    let least = |list: &Vec<Change>| list.iter().map(|change| change.weight(plan)).min();
    lists.iter().filter_map(least).sum()
}

/// What is still to pay at least. Each list needs one of its changes. Every list in turn takes
/// what its cheapest change has left to give, and all of its changes give that much; no change
/// gives more than its cost, so whatever set meets every list costs at least what was taken.
fn to_pay(plan: &Plan, lists: &[Vec<Change>]) -> u64 {
    let mut left: BTreeMap<&Change, u64> = BTreeMap::new();
    let mut sum = 0;
    for list in lists {
        let give = list
            .iter()
            .map(|change| *left.entry(change).or_insert_with(|| change.weight(plan)))
            .min()
            .unwrap_or(0);
        for change in list {
            if let Some(left) = left.get_mut(change) {
                *left -= give;
            }
        }
        sum += give;
    }
    sum
}

/// What a set is grown by, the shortest list being the first: what is alone on its list goes with
/// every set that clears the plan, so all of that at once; else each change of the first list.
fn grown(open: &[Vec<Change>]) -> Vec<Vec<&Change>> {
    if open.iter().any(Vec::is_empty) {
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

/// Whether the bonding plug of the generator has lost its socket.
fn evicts_bonding_plug(before: &Report, after: &Report) -> bool {
    let lost = |report: &Report| {
        let mut findings = report.findings.iter();
        findings.any(|it| it.code == "FIT001" && it.fix.key == "bonding-plug")
    };
    lost(after) && !lost(before)
}

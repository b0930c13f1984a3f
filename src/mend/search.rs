//! The search through sets of changes.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet, BinaryHeap};
use std::rc::Rc;

use super::change::Change;
use super::list::{self, List, Problem};
use super::places::{Sockets, at_the_set, campers_on_no_cord, ends_of, on_bought_gear, on_cords};
use super::steps::{self, Step};
use super::tally;
use crate::judge;
use crate::plan::{Id, Plan};
use crate::report::{Finding, LoadFacts, Report, Signal, Tally, Trouble};

/// A plan with some changes made, checked.
pub(super) struct State {
    pub plan: Plan,
    pub report: Report,
    pub tally: Tally,
    worst: Worst,
}

/// How many dangers and unserved musts there are, then how many parts and loads they name. The second falls when one of
/// several parts is out of a danger.
type Worst = (usize, usize);

impl State {
    /// Judges the plan by the whole check.
    fn of(plan: Plan) -> Self {
        let report = judge::judge(&plan);
        Self::judged(plan, report)
    }

    /// Judges the plan only as far as placing every load and finding what is at `down_to` or graver.
    fn trial(plan: Plan, down_to: Signal) -> Self {
        let report = judge::trial(&plan, down_to);
        Self::judged(plan, report)
    }

    fn judged(plan: Plan, report: Report) -> Self {
        let tally = tally(&plan, &report);
        let named = list::problems(&plan, &report, Signal::Danger);
        let named = named.iter().map(Problem::size).sum();
        Self { worst: (tally.dangers + tally.unserved_musts, named), plan, report, tally }
    }

    const fn badness(&self) -> (Worst, usize) {
        (self.worst, self.tally.warnings)
    }
}

/// What carrying out a set costs of the budget, in trials, since it takes the whole check.
const WHOLE: usize = 4;
/// How many of the least bad sets to keep, for a plan that no set clears.
const MOST_OF_LEAST: usize = 5;

/// A set of changes, carried out.
pub(super) struct Done {
    pub changes: Vec<Change>,
    pub steps: Vec<Step>,
    pub state: State,
}

/// The index of a change, in the order of discovery.
type Number = usize;

/// The changes found so far, with their weights.
struct Known<'a> {
    plan: &'a Plan,
    numbers: BTreeMap<Change, Number>,
    changes: Vec<(Change, u64)>,
}

impl Known<'_> {
    fn number(&mut self, change: Change) -> Number {
        if let Some(number) = self.numbers.get(&change) {
            return *number;
        }
        let number = self.changes.len();
        let weight = change.weight(self.plan);
        self.changes.push((change.clone(), weight));
        self.numbers.insert(change, number);
        number
    }

    fn change(&self, number: Number) -> &Change {
        &self.changes[number].0
    }

    fn weight(&self, number: Number) -> u64 {
        self.changes[number].1
    }

    fn weights(&self, set: &[Number]) -> u64 {
        set.iter().map(|number| self.weight(*number)).sum()
    }

    fn clash(&self, one: Number, other: Number) -> bool {
        self.change(one).clashes(self.change(other))
    }

    /// Sums the cost of each problem's cheapest change. An overestimate if one change answers two problems.
    fn each_by_itself(&self, lists: &[&Vec<Number>]) -> u64 {
        lists.iter().filter_map(|list| self.least(list)).sum()
    }

    fn least(&self, list: &[Number]) -> Option<u64> {
        list.iter().map(|number| self.weight(*number)).min()
    }

    /// Returns a lower bound on the cost of what remains, where each list needs one of its changes.
    ///
    /// This is greedy dual ascent. Each list in turn is charged what its cheapest change has left, and all its changes
    /// are reduced by that. No change is charged more than its weight, so any set that meets every list costs at least
    /// the sum of the charges. The bound depends on the order, so it is computed both shortest list first and dearest
    /// first, and the larger counts.
    fn to_pay(&self, lists: &[&Vec<Number>]) -> u64 {
        let mut dearest = lists.to_vec();
        dearest.sort_by_cached_key(|list| Reverse(self.least(list)));
        self.taken(lists).max(self.taken(&dearest))
    }

    fn taken(&self, lists: &[&Vec<Number>]) -> u64 {
        let mut left: BTreeMap<Number, u64> = BTreeMap::new();
        let mut sum = 0;
        for list in lists {
            let give = list
                .iter()
                .map(|number| *left.entry(*number).or_insert_with(|| self.weight(*number)))
                .min()
                .unwrap_or(0);
            for number in *list {
                if let Some(left) = left.get_mut(number) {
                    *left -= give;
                }
            }
            sum += give;
        }
        sum
    }

    /// Returns what a set is grown by: all changes that are alone on their lists at once, since every clearing set has
    /// them; else each change of the first list, which is the shortest.
    fn grown(&self, open: &[Vec<Number>]) -> Vec<Vec<Number>> {
        if open.iter().any(Vec::is_empty) {
            return Vec::new();
        }
        let alone = open.iter().filter(|list| list.len() == 1);
        let only: BTreeSet<Number> = alone.flatten().copied().collect();
        let apart = |one: &Number| only.range(..one).all(|other| !self.clash(*one, *other));
        if !only.is_empty() && only.iter().all(apart) {
            return vec![only.into_iter().collect()];
        }
        let first = open.first().into_iter().flatten();
        first.map(|number| vec![*number]).collect()
    }
}

/// The outcome of a tried set.
struct Tried {
    worst: Worst,
    /// Whether it makes something worse, as far as a trial can tell (a trial counts no warnings), or buys something for
    /// nothing.
    amiss: bool,
    /// The candidates for each remaining problem, the shortest list first, which leaves the least to try. Original
    /// problems without candidates are left out. Any other empty list is a dead end.
    lists: Vec<Vec<Number>>,
}

/// Returns the cost in points of a weight.
const fn points(weight: u64) -> u64 {
    weight >> 32
}

/// How the sets are ordered in a pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Pass {
    /// By the remaining problems, each on its own, regardless of what was paid. Ends soon.
    Dive,
    /// By what was paid plus the lower bound on the rest. The first set that clears the plan is the cheapest.
    Exact,
    /// By what was paid plus twice the bound, for when `Exact` takes too long. The result costs at most twice the
    /// cheapest.
    Near,
}

/// An entry of the queue: its order, its weight and its set.
type Turn = Reverse<((u64, usize, u64), u64, Vec<Number>)>;

pub(super) struct Search<'a> {
    plan: &'a Plan,
    before: State,
    /// The problems of the original plan.
    first: Vec<Problem>,
    /// The loads used near people, and the campers, that are on no long cord in the original plan.
    at_the_set: BTreeSet<Id>,
    /// The loads that are at the end of a cord in the original plan.
    on_cords: BTreeSet<Id>,
    left: usize,
    known: Known<'a>,
    tried: BTreeMap<Vec<Number>, Option<Rc<Tried>>>,
}

impl<'a> Search<'a> {
    pub fn new(plan: &'a Plan, plans: usize) -> Self {
        let before = State::of(plan.clone());
        Self {
            first: list::problems(plan, &before.report, Signal::Danger),
            at_the_set: &at_the_set(plan, &before.report) | &campers_on_no_cord(plan, &before.report),
            on_cords: on_cords(plan, &before.report),
            plan,
            before,
            left: plans,
            known: Known { plan, numbers: BTreeMap::new(), changes: Vec::new() },
            tried: BTreeMap::new(),
        }
    }

    /// Returns the original plan's state.
    pub fn into_before(self) -> State {
        self.before
    }

    /// Whether something on the list leaves fewer dangers or lets more run, trying at most so many plans.
    pub fn finds_more(plan: &'a Plan, plans: usize) -> bool {
        let mut search = Self::new(plan, plans);
        let (done, _) = search.cheapest();
        !done.changes.is_empty() && done.state.worst < search.before.worst
    }

    /// Adds to the budget of plans to check.
    pub const fn allow(&mut self, plans: usize) {
        self.left += plans;
    }

    /// Whether the plan is worse off in a way that no cleared danger makes up for.
    fn worsens(&self, state: &State) -> bool {
        let troubles = state.report.figures.troubles.iter();
        let mut warnings =
            troubles.filter(|it| it.signal == Signal::Warning && !of_newcomers(&self.before.report, &it.about));
        warnings.any(|it| is_new(&self.before.report, &state.report, it))
            || !self.brought(state).is_empty()
            || worse_air(&self.before.report, &state.report)
            || evicts_bonding_plug(&self.before.report, &state.report)
    }

    /// Finds loads used near people that are at the generator only now, and loads that moved from a cord to bought gear
    /// at the generator.
    fn brought(&self, state: &State) -> Vec<Problem> {
        let now = at_the_set(&state.plan, &state.report);
        let bought = on_bought_gear(&state.plan, &state.report, self.plan);
        let new = &(&now - &self.at_the_set) | &(&bought & &self.on_cords);
        new.into_iter().map(Problem::AtTheSet).collect()
    }

    /// Returns the plan with these changes made in the order of their kinds, or `None` if one of them has nothing to
    /// act on.
    fn changed(&self, changes: &[Change]) -> Option<Plan> {
        let mut plan = self.plan.clone();
        let mut sorted = changes.to_vec();
        sorted.sort();
        sorted.iter().all(|change| change.apply(&mut plan)).then_some(plan)
    }

    fn changes(&self, set: &[Number]) -> Vec<Change> {
        let changes = set.iter().map(|number| self.known.change(*number));
        changes.cloned().collect()
    }

    /// Tries a set and returns what it leaves, or `None` if it cannot be made.
    ///
    /// # Errors
    /// Returns [`Spent`] when no more plans may be checked.
    fn tried(&mut self, set: &[Number]) -> Result<Option<Rc<Tried>>, Spent> {
        if let Some(tried) = self.tried.get(set) {
            return Ok(tried.clone());
        }
        if self.left == 0 {
            return Err(Spent);
        }
        self.left -= 1;
        let plan = self.changed(&self.changes(set));
        let tried = plan.map(|plan| Rc::new(self.tries(plan, set)));
        self.tried.insert(set.to_vec(), tried.clone());
        Ok(tried)
    }

    fn tries(&mut self, plan: Plan, set: &[Number]) -> Tried {
        let state = State::trial(plan, Signal::Danger);
        let of_plan = List::of(&state.plan, &state.report, self.plan);
        let mut lists: Vec<Vec<Number>> = Vec::new();
        let mut problems = list::problems(&state.plan, &state.report, Signal::Danger);
        problems.extend(self.brought(&state));
        for problem in problems {
            let list = of_plan.changes(&problem);
            // A problem that nothing on the list bears on remains, and is no reason to give up on the others.
            if list.is_empty() && self.first.iter().any(|whole| problem.within(whole)) {
                continue;
            }
            let list = list.into_iter().map(|change| self.known.number(change));
            let mut list: Vec<Number> = list.collect();
            list.retain(|number| set.iter().all(|made| !self.known.clash(*made, *number)));
            lists.push(list);
        }
        lists.sort_by_key(Vec::len);
        Tried {
            worst: state.worst,
            amiss: self.worsens(&state) || for_nothing(&self.changes(set), &state.report),
            lists,
        }
    }

    /// Carries a set out, if that is possible and makes nothing worse. First with every moved load where the sharing
    /// put it, then with the loads wherever they fit by then.
    fn carried_out(&mut self, changes: &[Change]) -> Option<Done> {
        self.left = self.left.saturating_sub(WHOLE);
        let state = State::trial(self.changed(changes)?, Signal::Danger);
        if for_nothing(changes, &state.report) {
            return None;
        }
        let mended = (&state.plan, &state.report);
        [true, false].into_iter().find_map(|seated| {
            let mut steps = steps::with_moves(self.plan, changes, mended, seated);
            let (mut told, plan) = steps::in_order(self.plan, steps.clone())?;
            let after = State::of(plan);
            // Only the whole check knows what the new card shows.
            if steps::pull_out_what_is_nowhere(&mut steps, &after.report) {
                let (again, plan) = steps::in_order(self.plan, steps)?;
                told = (plan == after.plan).then_some(again)?;
            }
            let steps = told;
            let fine = after.worst <= state.worst && !self.worsens(&after);
            let idle = self.brings_idle(&after) || for_nothing(changes, &after.report);
            (fine && !idle && !into_refused(&steps, &after.plan)).then(|| Done {
                changes: changes.to_vec(),
                steps,
                state: after,
            })
        })
    }

    /// Whether a new part ends up unused.
    fn brings_idle(&self, after: &State) -> bool {
        let placed = &after.report.figures.sharing.placed;
        let used = |end: &Id| placed.iter().any(|it| it.at == *end) || after.plan.gear().any(|it| it.from == Some(end));
        let mut new = after.plan.gear().filter(|it| self.plan.gear_of(it.id).is_none());
        new.any(|it| !ends_of(&after.plan, it.id).iter().any(used))
    }

    /// Returns the original plan, with nothing done.
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

    /// Returns the cheapest set and how certain that is. If no set clears the plan, returns one of the least bad.
    pub fn cheapest(&mut self) -> (Done, Sure) {
        let all = self.left;
        let mut best: Option<(u64, Done)> = None;
        let mut least: BTreeSet<(Worst, Vec<Number>)> = BTreeSet::new();
        let mut settled = false;
        let mut ended_early = false;
        let passes = [(Pass::Dive, all / 3), (Pass::Exact, all * 2 / 3), (Pass::Near, all)];
        for (pass, share) in passes {
            let kept = self.left.saturating_sub(share);
            self.left -= kept;
            let most = best.as_ref().map(|(weight, _)| *weight);
            let ended = match self.best_first(pass, most, &mut least) {
                Ok(found) => {
                    best = Some(found);
                    Found::Clear
                }
                Err(ended) => ended,
            };
            self.left += kept;
            ended_early = ended == Found::TooLong;
            settled = ended == Found::Nothing || (pass == Pass::Exact && ended == Found::Clear);
            if settled {
                break;
            }
        }
        let sure = if settled { Sure::Proven } else { Sure::Reached };
        if let Some((weight, best)) = best {
            if best.state.tally.clear() {
                return (best, sure);
            }
            // The set stops where nothing bears on the rest. Prefer one that leaves no more for less.
            let for_less = least.into_iter().find_map(|(worst, set)| {
                let less = worst <= best.state.worst && self.known.weights(&set) < weight;
                let done = less.then(|| self.carried_out(&self.changes(&set)))??;
                (done.state.worst <= best.state.worst).then_some(done)
            });
            return for_less.map_or((best, sure), |done| (done, Sure::Reached));
        }
        let left = least.into_iter().map(|(_, set)| self.changes(&set));
        let left: Vec<Vec<Change>> = left.collect();
        let done = left.iter().find_map(|set| self.carried_out(set));
        let done = done.filter(|done| done.state.worst < self.before.worst);
        let sure = match &done {
            _ if ended_early => Sure::Stopped,
            None => Sure::Proven,
            // Among sets that leave equally much, no cheapest was sought.
            Some(_) => Sure::Reached,
        };
        (done.unwrap_or_else(|| self.nothing()), sure)
    }

    /// Returns the queue order of a set from its weight, its size and the estimate of what remains. Among equals the
    /// larger set first, since it is nearer to an end.
    const fn turn(pass: Pass, weight: u64, size: usize, left: u64) -> (u64, usize, u64) {
        let by = match pass {
            Pass::Dive => left,
            Pass::Exact => points(weight + left),
            Pass::Near => weight + 2 * left,
        };
        (by, usize::MAX - size, weight + left)
    }

    /// Estimates the cost of these problems for a pass.
    fn left_by(&self, pass: Pass, lists: &[&Vec<Number>]) -> u64 {
        match pass {
            Pass::Dive => self.known.each_by_itself(lists),
            Pass::Exact | Pass::Near => self.known.to_pay(lists),
        }
    }

    /// Searches best-first and returns the first set, lighter than `most`, that leaves no problem with candidates.
    /// Collects the least bad sets in `least`.
    fn best_first(
        &mut self,
        pass: Pass,
        most: Option<u64>,
        least: &mut BTreeSet<(Worst, Vec<Number>)>,
    ) -> Result<(u64, Done), Found> {
        let mut seen: BTreeSet<Vec<Number>> = BTreeSet::new();
        let mut heap: BinaryHeap<Turn> = BinaryHeap::from([Reverse(((0, 0, 0), 0, Vec::new()))]);
        while let Some(Reverse((taken, weight, set))) = heap.pop() {
            let tried = match self.tried(&set) {
                Err(Spent) => {
                    // Whatever remains costs no less in points and could only be easier on people.
                    let no_less = most.is_some_and(|most| taken.0 >= points(most));
                    let settled = pass == Pass::Exact && no_less;
                    return Err(if settled { Found::Nothing } else { Found::TooLong });
                }
                Ok(None) => continue,
                Ok(Some(tried)) => tried,
            };
            // The estimate was the parent's until now, so queue the set again if it got worse.
            let left = self.left_by(pass, &tried.lists.iter().collect::<Vec<_>>());
            let turn = Self::turn(pass, weight, set.len(), left);
            if turn > taken {
                heap.push(Reverse((turn, weight, set)));
                continue;
            }
            let better = tried.worst < self.before.worst && !tried.amiss;
            if tried.lists.is_empty() {
                if better
                    && let Some(done) = self.carried_out(&self.changes(&set))
                    && done.state.worst <= tried.worst
                {
                    return Ok((weight, done));
                }
                continue;
            }
            if better {
                least.insert((tried.worst, set.clone()));
                if least.len() > MOST_OF_LEAST {
                    least.pop_last();
                }
            }
            for growth in self.known.grown(&tried.lists) {
                let paid = weight + self.known.weights(&growth);
                // What this growth does not answer remains.
                let lists = tried.lists.iter();
                let others: Vec<&Vec<Number>> =
                    lists.filter(|list| growth.iter().all(|number| !list.contains(number))).collect();
                let whole = paid + self.known.to_pay(&others);
                let mut more = set.clone();
                more.extend(growth);
                more.sort_unstable();
                if most.is_some_and(|most| whole >= most) || !seen.insert(more.clone()) {
                    continue;
                }
                let turn = Self::turn(pass, paid, more.len(), self.left_by(pass, &others));
                heap.push(Reverse((turn, paid, more)));
            }
        }
        Err(Found::Nothing)
    }

    /// Greedily adds changes accepted by `of`. For the problems at `down_to` or graver, each round adds the cheapest
    /// change that leaves fewer of them and makes nothing worse. Returns whether all were tried.
    pub fn fewer(&mut self, done: &mut Done, down_to: Signal, of: impl Fn(&Change) -> bool) -> bool {
        let worth = |state: &State| {
            let (worst, warnings) = state.badness();
            (worst, if down_to == Signal::Danger { 0 } else { warnings })
        };
        // A change that did not help once is not carried out again next to others, because that is slow.
        let mut no_better: Vec<Change> = Vec::new();
        let mut made_since = false;
        'again: loop {
            let now = &done.state;
            let of_plan = List::of(&now.plan, &now.report, self.plan);
            let most = worth(now);
            let on_trial = State::trial(now.plan.clone(), down_to);
            let mut lists: Vec<(Change, bool)> = Vec::new();
            for problem in list::problems(&now.plan, &now.report, down_to) {
                let seen = problem.is_found_in(&on_trial.report);
                let changes = of_plan.changes(&problem).into_iter().filter(&of);
                lists.extend(changes.map(|change| (change, seen)));
            }
            lists.retain(|(change, _)| done.changes.iter().all(|made| !made.clashes(change)));
            lists.sort_by_key(|(change, seen)| (change.weight(self.plan), *seen));
            let mut skipped = false;
            for (change, seen) in lists {
                if no_better.contains(&change) {
                    skipped |= made_since;
                    continue;
                }
                if self.left == 0 {
                    return false;
                }
                self.left -= 1;
                let mut more = done.changes.clone();
                more.push(change.clone());
                let Some(plan) = self.changed(&more) else {
                    continue;
                };
                // The whole check is slow, so skip what a trial already rules out: more dangers, or a problem that a
                // trial sees and that remains.
                let trial = State::trial(plan, down_to);
                let helps = (trial.worst, 0) < most && (!seen || worth(&trial) < worth(&on_trial));
                if !helps {
                    continue;
                }
                match self.carried_out(&more) {
                    Some(then) if worth(&then.state) < most => {
                        *done = then;
                        made_since = !no_better.is_empty();
                        continue 'again;
                    }
                    _ => no_better.push(change),
                }
            }
            return !skipped;
        }
    }

    /// Drops everything if there was no danger to begin with and no count got better.
    pub fn drop_vain(&self, done: &mut Done) {
        if self.before.tally.dangers == 0 && done.state.tally == self.before.tally {
            *done = self.nothing();
        }
    }

    /// Sets aside each plugged-in cord or box that must not be used for a fault of its own or its receptacles, wherever
    /// that makes nothing worse.
    pub fn pull_out_refused(&mut self, done: &mut Done) {
        let plan = &done.state.plan;
        let in_use = plan.gear().filter(|it| it.from.is_some());
        let refused = in_use.filter(|it| {
            let why = done.state.report.refused(it.id);
            why.is_some_and(|why| why.at == *it.id || ends_of(plan, it.id).contains(&why.at))
        });
        let refused: Vec<Id> = refused.map(|it| it.id.clone()).collect();
        for part in refused {
            let mut more = done.changes.clone();
            more.push(Change::SetAside(part));
            if let Some(then) = self.carried_out(&more)
                && then.state.badness() <= done.state.badness()
            {
                *done = then;
            }
        }
    }

    /// Drops each change that makes no difference.
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
            let helps = |plan| State::trial(plan, Signal::Danger).worst <= target.0;
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

/// Whether a change is pointless: an appliance is bought of which not every unit gets a place, a cord or box is bought
/// downstream of what must not be used, or a load is moved or shifted that may not run then.
fn for_nothing(changes: &[Change], report: &Report) -> bool {
    let mut gear = changes.iter().filter_map(|change| match change {
        Change::OutdoorCord(id)
        | Change::ProtectedCord(id)
        | Change::GroundedCord(id)
        | Change::Thicker { cord: id, .. }
        | Change::Shorter { cord: id, .. }
        | Change::ListedBox(id) => Some(id),
        _ => None,
    });
    // Only the whole check has verdicts; a trial has none.
    let behind = |id: &Id| {
        let mut limits = report.figures.limits.iter();
        let limit = limits.find(|limit| limit.id == *id || limit.path.contains(id));
        let mut ahead = limit.into_iter().flat_map(|it| it.path.iter().take_while(|it| *it != id));
        let why = report.refused(id);
        why.is_some_and(|why| ahead.any(|ahead| *ahead == why.at))
    };
    if gear.any(behind) {
        return true;
    }
    let figures = &report.figures;
    let placed = |unit: &LoadFacts| figures.sharing.place(&unit.id).is_some();
    changes.iter().any(|change| match change {
        Change::Smaller { load, .. } => !figures.units(load).all(placed),
        Change::Move { load, .. }
        | Change::TakeTurns { load, .. }
        | Change::Shift { load, .. }
        | Change::LessTime { load, .. }
        | Change::OffAtNight(load) => !figures.units(load).any(|unit| placed(unit) && figures.may_run(&unit.id)),
        _ => false,
    })
}

/// Whether a step plugs in a part that must not be used afterwards, or plugs something into one.
fn into_refused(steps: &[Step], after: &Plan) -> bool {
    let sockets = Sockets::of(after);
    steps.iter().any(|step| match &step.change {
        Change::Replug { part, to } => {
            let ends = ends_of(after, part);
            let dead = ends.iter().all(|end| sockets.refused(end).is_some());
            dead || sockets.refused(to).is_some()
        }
        Change::Move { to: Some(seat), .. } => sockets.refused(&seat.at).is_some(),
        Change::TakeTurns { at, .. }
        | Change::ProtectedOutlet { at, .. }
        | Change::ThreeWay { at, .. }
        | Change::NewBox(at) => sockets.refused(at).is_some(),
        _ => false,
    })
}

/// How certain it is that no other set on the list does more, or as much for less.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Sure {
    /// No set does.
    Proven,
    /// No set does more, but one may do as much for less.
    Reached,
    /// One may do more: the search was stopped.
    Stopped,
}

/// The budget of plans is used up.
struct Spent;

/// How a pass ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Found {
    /// With a set that clears the plan.
    Clear,
    /// With nothing left to try.
    Nothing,
    /// With the budget used up.
    TooLong,
}

/// Whether an air finding is new or graver than before. Notices do not count, since they are about noise.
///
/// Not counted as worse:
///
/// - Rain on a generator that comes out from under a cover (AIR004). It is reported separately, and exhaust kills
///   sooner.
/// - A caution that the engine runs at night, or that a cord does not reach as far as people are said to be, for loads
///   that had no place before. The generator is in the open, far enough away and there is an alarm.
/// - That no load is on a cord anymore. Loads used near people are not brought to the generator, and the rest may be
///   used there.
fn worse_air(before: &Report, after: &Report) -> bool {
    let worst = |report: &Report, code: &str| {
        let findings = report.findings.iter();
        let of_code = findings.filter(|finding| finding.code == code);
        of_code.map(|finding| finding.signal).min()
    };
    let mild = |it: &Finding| matches!(it.code, "AIR005" | "AIR006") && it.signal == Signal::Caution;
    after
        .findings
        .iter()
        .filter(|finding| finding.area == "air" && finding.signal <= Signal::Caution)
        .filter(|finding| finding.code != "AIR004" || worst(before, "AIR003").is_none())
        .filter(|it| !(it.code == "AIR005" && it.fix.key == "no-cord"))
        .filter(|it| !(mild(it) && of_newcomers(before, &it.about)))
        .any(|finding| worst(before, finding.code).is_none_or(|was| finding.signal < was))
}

/// Whether this names only loads that had no place before. They bring the finding wherever they are plugged in, and are
/// no better off without a place. A finding that also names a part or another load is about where and with what they
/// run.
fn of_newcomers(before: &Report, about: &[Id]) -> bool {
    let sharing = &before.figures.sharing;
    let newcomer = |id: &Id| {
        let units = before.figures.loads.iter();
        let mut units = units.filter(|unit| unit.of == *id || unit.id == *id);
        let lost = |unit: &LoadFacts| sharing.without_place(&unit.id).is_some();
        units.next().is_some_and(lost) && units.all(lost)
    };
    !about.is_empty() && about.iter().all(newcomer)
}

/// Whether no finding of the trouble was there before, as grave or graver, for any part or load that it names.
fn is_new(before: &Report, after: &Report, trouble: &Trouble) -> bool {
    !after.findings_of(trouble).any(|finding| {
        let same = |was: &&Finding| was.code == finding.code && was.signal <= finding.signal;
        let mut was = before.findings.iter().filter(same);
        was.any(|was| was.about.is_empty() || was.about.iter().any(|id| finding.about.contains(id)))
    })
}

/// Whether the generator's bonding plug has lost its socket.
fn evicts_bonding_plug(before: &Report, after: &Report) -> bool {
    let lost = |report: &Report| {
        let mut findings = report.findings.iter();
        findings.any(|it| it.code == "FIT001" && it.fix.key == "bonding-plug")
    };
    lost(after) && !lost(before)
}

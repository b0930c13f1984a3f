//! The cheapest changes after which a plan has no danger left and serves every must.
//!
//! **The list.** What may be changed is stated in [`Change`], its costs in `costs.toml`, and
//! which of it bears on which problem in [`list`].
//!
//! **The search** goes through sets of changes, by what they cost; of those that cost the same the largest
//! first, and then by how hard they are on people ([`Change::weight`]). Whatever clears a plan clears any
//! one problem of it, so it holds a change that bears on that one: a set is grown only by those. First some
//! set is looked for that clears it, going by what each problem left costs by itself; then a cheaper one,
//! going by what all of them together must still cost at least. "Cheapest" is so of the sets that the list
//! reaches, when every change answers a problem that the others leave.
//!
//! **The steps.** A set counts only if people can carry it out: its changes, and what they bring
//! about, have an order in which each finds its part and a free socket ([`steps`]). They are told in
//! that order, and what was promised is the check of the plan that they lead to.
//!
//! **The proof.** A set on trial is judged by the rules that find dangers or speak of air
//! (`judge::trial`); what comes of it by the whole check ([`crate::judge::judge`]) on the plan after
//! its steps, and by nothing else. What helped nothing in the end is dropped again. What it leaves may not be
//! worse than what it found: no more warnings, but those that a thing brings which had no place before and
//! has one now; and no finding on air that was not there, or was milder. Nor may it bring to the set what is
//! used where people are, a room heater, a lamp or what a life depends on: to unplug a bad cord and run these
//! beside the engine is no repair. A kettle or a tool can be used there; but for one that was on a cord
//! nothing is bought that stands at the set itself. A new cord leads as far as the set must stand from people, but an
//! adapter, and one that another cord is plugged into or that is plugged into one.
//!
//! A change is of the plan. People have to make it in the camp.

mod change;
mod list;
mod places;
mod search;
mod steps;

pub use change::{Change, Seat};
pub use list::Problem;
pub use steps::Step;

use std::collections::BTreeSet;

use search::{Search, Sure};

use crate::judge;
use crate::plan::{self, Id, Load, Plan};
use crate::report::{Effect, Repair, Report, Sharing, Signal, Tally, Value, Values};
use crate::supply::Supply;

/// How many changed plans are tried at most: for well under a second to 20 loads, and not much longer with more,
/// each trial of which takes longer.
fn plans(plan: &Plan) -> usize {
    const PLANS: usize = 240;
    const SMALL: usize = 12;
    let loads: usize = (plan.loads.iter()).map(|load| usize::from(load.count)).sum();
    PLANS * SMALL / loads.max(SMALL)
}

/// Counts what is wrong with a plan: troubles, as every other place does, and those too that buying the right thing clears,
/// for a plan on trial does not tell them apart.
#[must_use]
pub fn tally(plan: &Plan, report: &Report) -> Tally {
    let troubles = &report.figures.troubles;
    let count = |signal| troubles.iter().filter(|trouble| trouble.signal == signal).count();
    let musts: BTreeSet<Id> = list::waiting(plan, report).into_iter().flatten().collect();
    Tally { dangers: count(Signal::Danger), warnings: count(Signal::Warning), unserved_musts: musts.len(), at_home: 0 }
}

/// How many things the changed plan has no more.
fn at_home(before: &Plan, after: &Plan) -> usize {
    let stays = |load: &&Load| after.loads.iter().all(|it| it.id != load.id);
    let home = before.loads.iter().filter(stays);
    home.map(|load| usize::from(load.count)).sum()
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
    /// The plan with those of the repairs told in this report that somebody takes, by their place. What needs another
    /// that was not taken is not made.
    #[must_use]
    pub fn taken(&self, before: &Plan, report: &Report, wanted: impl Fn(usize) -> bool) -> Plan {
        let repairs = &report.figures.sharing.repairs;
        if (0..repairs.len()).all(&wanted) {
            return self.plan.clone();
        }
        let mut plan = before.clone();
        for step in &self.steps {
            let repair = step.change.repair(before, &self.plan);
            let same = |it: &Repair| (it.key, &it.about) == (repair.key, &repair.about);
            let mut next = plan.clone();
            let made = repairs.iter().position(same).is_none_or(&wanted) && step.change.apply(&mut next);
            // A part may be plugged into what was to come with another change.
            if made && plan::read(&plan::write(&next)).is_ok() {
                plan = next;
            }
        }
        plan
    }

    /// Tells the report of the plan as it was what would help.
    fn tell(&self, before: &Plan, report: &mut Report) {
        let mut repairs: Vec<Repair> = Vec::new();
        for step in &self.steps {
            let mut repair = step.change.repair(before, &self.plan);
            if step.comes_along {
                repair.cost = 0;
            }
            self.tell_of_load(step, &mut repair);
            // A cord that several changes are about is bought once.
            let same = |it: &&mut Repair| it.key == "other-cord" && it.about == repair.about;
            match repairs.iter_mut().find(same) {
                Some(told) if repair.key == told.key => told.cost += repair.cost,
                _ => repairs.push(repair),
            }
        }
        let sharing = &mut report.figures.sharing;
        if self.moves_more(sharing, &repairs) {
            repairs.push(Repair { key: "as-the-card", about: Vec::new(), values: Values::new(), cost: 0 });
        }
        sharing.repairs = repairs;
        sharing.mended = Some(self.effect.clone());
    }

    /// What only the new report knows of the load that a repair is about: how many of it have a place, and whether
    /// a smaller one is used away from the set.
    fn tell_of_load(&self, step: &Step, repair: &mut Repair) {
        let figures = &self.report.figures;
        match &step.change {
            Change::Move { load, .. } => {
                let units = || figures.units(load);
                let there = units().filter(|unit| figures.sharing.place(&unit.id).is_some()).count();
                let total = units().count();
                repair.values.insert("some", Value::yes_no(there < total));
                repair.values.insert("count", Value::Count(there));
                repair.values.insert("total", Value::Count(total));
            }
            Change::Smaller { load, .. } => {
                let apart = places::used_apart(&self.plan, &self.report).contains(load);
                repair.values.insert("apart", Value::yes_no(apart));
            }
            _ => {}
        }
    }

    /// Whether something is to be elsewhere than the old card shows, and no repair says so.
    fn moves_more(&self, before: &Sharing, repairs: &[Repair]) -> bool {
        let figures = &self.report.figures;
        let mut placed = figures.sharing.placed.iter();
        let named = |unit: &Id| {
            let load = figures.load(unit).map(|it| &it.of);
            repairs.iter().any(|it| it.about.iter().any(|id| Some(id) == load))
        };
        let moved = placed.any(|now| !before.placed.contains(now) && !named(&now.load));
        moved && !repairs.is_empty()
    }
}

/// Finds the cheapest changes that clear every danger and serve every must; then, if `warnings`,
/// whatever else on the list leaves fewer warnings, the cheapest first, and else only the cords to lay out that
/// leave fewer.
#[must_use]
pub fn mend(plan: &Plan, warnings: bool) -> Mended {
    mend_within(plan, warnings, plans(plan)).0
}

/// The same, trying at most so many plans. With the plan as it is, judged.
fn mend_within(plan: &Plan, warnings: bool, plans: usize) -> (Mended, Report) {
    let mut search = Search::new(plan, plans);
    let (mut done, sure) = search.cheapest();
    let cheapest = done.changes.len();
    let mut all_tried = sure != Sure::Stopped;
    if !done.state.tally.clear() {
        // Not all of it can be cleared, or not in so many plans: one thing after the other, then.
        search.allow(plans / 4);
        all_tried &= search.fewer(&mut done, Signal::Danger, |_| true);
    }
    let mut proven = sure == Sure::Proven;
    if warnings {
        search.allow(plans / 2);
        proven &= search.fewer(&mut done, Signal::Warning, |_| true);
    }
    // Beyond the dangers one change after the other is added, and none taken back.
    proven &= all_tried && done.changes.len() == cheapest;
    search.drop_idle(&mut done, warnings);
    // Nobody is left with a warning that laying out a cord clears. It is done last, so that nothing else is chosen
    // for it, and what was cheapest stays so.
    search.allow(plans / 4);
    let _ = search.fewer(&mut done, Signal::Warning, |change| matches!(change, Change::Uncoil(_)));
    search.drop_vain(&mut done);
    // Nor does anything stay plugged in that label and card forbid.
    search.pull_out_refused(&mut done);
    // What stays is told as `check` of the changed plan tells it, a guess as a guess.
    let supply = Supply::build(&done.state.plan);
    let report = judge::in_full(&done.state.plan, &supply, done.state.report);
    let proven = proven && report.figures.sharing.families_complete;
    let troubles = report.figures.troubles.iter();
    let left = troubles
        .filter(|trouble| trouble.signal <= Signal::Warning)
        .filter_map(|trouble| report.findings_of(trouble).next().cloned())
        .collect();
    let before = search.into_before();
    let mended = Mended {
        effect: Effect {
            before: before.tally,
            after: Tally { at_home: at_home(plan, &done.state.plan), ..done.state.tally },
            // Of what is told: what is pulled out needs nothing else done to it.
            cost: (done.steps.iter()).filter(|step| !step.comes_along).map(|step| step.change.cost()).sum(),
            proven,
            stopped: !all_tried && !done.state.tally.clear(),
            unplaced: report.figures.sharing.unplaced.clone(),
            left,
            turns: !report.figures.sharing.turns.is_empty(),
            loads: report.figures.loads.clone(),
        },
        steps: done.steps,
        plan: done.state.plan,
        report,
    };
    (mended, before.report)
}

/// The report of a plan with what would clear it, and the plan mended. Whoever tells of the changes, on
/// screen or on paper, has them from here, so that all tell the same.
#[must_use]
pub fn advised(plan: &Plan, warnings: bool) -> (Report, Mended) {
    let (mended, judged) = mend_within(plan, warnings, plans(plan));
    let mut report = judge::in_full(plan, &Supply::build(plan), judged);
    mended.tell(plan, &mut report);
    (report, mended)
}

#[cfg(test)]
mod tests;

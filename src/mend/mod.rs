//! Finds the cheapest changes that leave a plan without dangers and serve every must-have load.
//!
//! **The list.** [`Change`] states what may be changed, `costs.toml` what each change costs, and [`list`] which changes
//! bear on which problem.
//!
//! **The search** is best-first over sets of changes: by cost, then the larger set, then the lighter burden on people
//! ([`Change::weight`]). A set that clears the plan clears each of its problems, so a set grows only by changes that
//! bear on one of the problems it leaves. A first pass finds some set quickly, estimating each remaining problem on its
//! own. The next looks for a cheaper one with a lower bound on the cost of all that remains. "Cheapest" holds among the
//! sets that the list can reach in which each change answers a problem that the others leave.
//!
//! **The steps.** A set counts only if people can carry it out. Its changes and their consequences need an order in
//! which each step finds its part and a free socket ([`steps`]). They are reported in that order, and the effect
//! claimed is the check of the resulting plan.
//!
//! **The proof.** A set on trial is judged only by the rules that find dangers or concern air (`judge::trial`). The
//! result is judged by the whole check ([`crate::judge::judge`]) of the plan after the steps. Changes that turn out not
//! to help are dropped. The result may not be worse than the original:
//!
//! - No new warnings, except those that come with a load that had no place before and now has one.
//! - No air finding that is new or graver.
//! - Nothing that is used near people is brought to the generator: a room heater, a lamp or medical equipment.
//!   Unplugging a bad cord and running these next to the engine is no repair. A kettle or a tool can be used there, but
//!   for one that was on a cord no new gear is bought that stands at the generator itself.
//! - A new cord is long enough to keep the generator away from people, unless it is an adapter or chained to another
//!   cord.
//!
//! A change only edits the plan. People still have to make it at the camp.

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

/// Returns the most plans to try. This keeps the search well under a second for 20 loads, and not much longer for more
/// loads, where each trial takes longer.
fn plans(plan: &Plan) -> usize {
    const PLANS: usize = 240;
    const SMALL: usize = 12;
    let loads: usize = (plan.loads.iter()).map(|load| usize::from(load.count)).sum();
    PLANS * SMALL / loads.max(SMALL)
}

/// Counts what is wrong with a plan, in troubles, as the rest of the program does.
#[must_use]
pub fn tally(plan: &Plan, report: &Report) -> Tally {
    let musts: BTreeSet<Id> = list::waiting(plan, report).into_iter().flatten().collect();
    Tally {
        dangers: report.count(Signal::Danger),
        warnings: report.count(Signal::Warning),
        unserved_musts: musts.len(),
        at_home: 0,
    }
}

/// Counts the appliances that the changed plan no longer has.
fn at_home(before: &Plan, after: &Plan) -> usize {
    let stays = |load: &&Load| after.loads.iter().all(|it| it.id != load.id);
    let home = before.loads.iter().filter(stays);
    home.map(|load| usize::from(load.count)).sum()
}

/// A plan repaired as far as the list allows.
#[derive(Clone, Debug)]
pub struct Mended {
    /// The steps, in an order in which each finds what it needs.
    pub steps: Vec<Step>,
    /// The plan after the steps.
    pub plan: Plan,
    /// The report of that plan, from the whole check.
    pub report: Report,
    /// The state before and after, and the cost.
    pub effect: Effect,
}

impl Mended {
    /// Returns the plan with only the repairs that `wanted` accepts, by their index in `report`. A repair that depends
    /// on a rejected one is not made.
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
            // The part's receptacle may belong to a change that was rejected.
            if made && plan::read(&plan::write(&next)).is_ok() {
                plan = next;
            }
        }
        plan
    }

    /// Writes the repairs and their effect into the report of the original plan.
    fn tell(&self, before: &Plan, report: &mut Report) {
        let mut repairs: Vec<Repair> = Vec::new();
        for step in &self.steps {
            let mut repair = step.change.repair(before, &self.plan);
            if step.comes_along {
                repair.cost = 0;
            }
            self.tell_of_load(step, &mut repair);
            // Several changes to one cord are one purchase.
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

    /// Adds what only the new report knows about a load: how many of it have a place, and whether a smaller one is used
    /// away from the generator.
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

    /// Whether a load is placed differently than on the old card and no repair says so.
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

/// Finds the cheapest changes that clear every danger and serve every must.
///
/// Then, with `warnings`, adds the cheapest changes that reduce the warnings. Without it, only lays out coiled cords
/// for that.
#[must_use]
pub fn mend(plan: &Plan, warnings: bool) -> Mended {
    mend_within(plan, warnings, plans(plan)).0
}

/// Mends with a budget of plans to try. Also returns the report of the original plan.
fn mend_within(plan: &Plan, warnings: bool, plans: usize) -> (Mended, Report) {
    let mut search = Search::new(plan, plans);
    let (mut done, sure) = search.cheapest();
    let cheapest = done.changes.len();
    let mut all_tried = sure != Sure::Stopped;
    if !done.state.tally.clear() {
        // Not everything can be cleared, or not within the budget, so clear one problem after another.
        search.allow(plans / 4);
        all_tried &= search.fewer(&mut done, Signal::Danger, |_| true);
    }
    let mut proven = sure == Sure::Proven;
    if warnings {
        search.allow(plans / 2);
        proven &= search.fewer(&mut done, Signal::Warning, |_| true);
    }
    // Greedy additions beyond the dangers are never revised, so nothing is proven about them.
    proven &= all_tried && done.changes.len() == cheapest;
    search.drop_idle(&mut done, warnings);
    // A coiled cord is a warning that is always worth clearing. Last, so that it does not influence the choice above.
    search.allow(plans / 4);
    let _ = search.fewer(&mut done, Signal::Warning, |change| matches!(change, Change::Uncoil(_)));
    search.drop_vain(&mut done);
    // Labels and card forbid these parts, so they may not stay plugged in.
    search.pull_out_refused(&mut done);
    // A set that clears one thing may open the way for a change that bore on nothing before.
    let stopped = !done.state.tally.clear() && (!all_tried || Search::finds_more(&done.state.plan, plans / 2));
    // The full report marks what rests on a guess, as `check` would for the changed plan.
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
            // Only the steps that count: what is unplugged along the way costs nothing.
            cost: (done.steps.iter()).filter(|step| !step.comes_along).map(|step| step.change.cost()).sum(),
            proven,
            stopped,
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

/// Returns a plan's report with the repairs in it, and the repaired plan. Screen and paper both start here, so they
/// agree.
#[must_use]
pub fn advised(plan: &Plan, warnings: bool) -> (Report, Mended) {
    let (mended, judged) = mend_within(plan, warnings, plans(plan));
    let mut report = judge::in_full(plan, &Supply::build(plan), judged);
    mended.tell(plan, &mut report);
    (report, mended)
}

#[cfg(test)]
mod tests;

//! Judges a plan: computes its figures, runs the rules on them, and puts the report together.
//!
//! [`build`] does all of it. [`judge`] leaves out what rests on unknowns, and a trial of [`crate::mend`] leaves out
//! everything it does not need.

pub mod ask;
#[cfg(test)]
mod campers;
mod looks;
#[cfg(test)]
mod properties;
#[cfg(test)]
mod tests;
mod troubles;
mod unknowns;
mod verdicts;

use crate::loads;
use crate::plan::{Id, Plan};
use crate::report::{FORMAT, Figures, Finding, LoadFacts, Look, Report, Signal, limits};
use crate::rules::{self, Facts, Rule};
use crate::sharing::places;
use crate::supply::Supply;
use crate::verdict::Verdicts;
pub(crate) use looks::as_bought;
use unknowns::{Changes, Wanted};

/// Returns the full report of a plan.
#[must_use]
pub fn build(plan: &Plan) -> Report {
    let supply = Supply::build(plan);
    let report = judged(plan, &supply, &Verdicts::of(plan, &supply));
    in_full(plan, &supply, report)
}

/// Returns what to look at when these fields could not be found out. The next thing may be easier to find out.
#[must_use]
pub(crate) fn looks_beside(plan: &Plan, in_vain: &[String]) -> Vec<Look> {
    let supply = Supply::build(plan);
    let report = judged(plan, &supply, &Verdicts::of(plan, &supply));
    in_full_beside(plan, &supply, report, in_vain).figures.looks
}

/// Completes a judged report with what rests on unknowns, what to look at, and what to do next.
#[must_use]
pub(crate) fn in_full(plan: &Plan, supply: &Supply, report: Report) -> Report {
    in_full_beside(plan, supply, report, &[])
}

fn in_full_beside(plan: &Plan, supply: &Supply, mut report: Report, in_vain: &[String]) -> Report {
    let Report { findings, figures, .. } = &mut report;
    let now = unknowns::sum_of_limits(figures, supply, &Verdicts::of(plan, supply));
    let again = |answered: &Plan, changes: Changes, wanted: Wanted<'_>, trial: &mut Figures| {
        let other = changes.supply.then(|| Supply::build(answered));
        let supply = other.as_ref().unwrap_or(supply);
        let verdicts = Verdicts::of(answered, supply);
        let limits = other.as_ref().map(|supply| std::mem::replace(&mut trial.limits, limits(supply, &verdicts)));
        let loads = changes.loads.then(|| {
            let facts = loads::facts(answered);
            std::mem::replace(&mut trial.loads, facts)
        });
        let sharing = changes.places.then(|| {
            let sharing = places(answered, supply, &verdicts, &loads::units(answered).0);
            std::mem::replace(&mut trial.sharing, sharing)
        });
        let found = rules::check_some(&Facts::new(answered, supply, &verdicts, trial), wanted);
        let sum = unknowns::sum_of_limits(trial, supply, &verdicts);
        if let Some(limits) = limits {
            trial.limits = limits;
        }
        if let Some(loads) = loads {
            trial.loads = loads;
        }
        if let Some(sharing) = sharing {
            trial.sharing = sharing;
        }
        (sum, found)
    };
    let answers = unknowns::answers(plan, figures, findings, in_vain, now, again);
    for (at, field) in answers.rests_on {
        let assumption = figures.assumed.iter().find(|it| it.field == field);
        findings[at].rests_on.extend(assumption.filter(|it| !in_vain.contains(&it.field)).cloned());
    }
    let mut trial = figures.clone();
    report.figures.looks = looks::looks(plan, &report, &answers.served, |answered, changes| {
        again(answered, changes, &unknowns::counts, &mut trial).1
    });
    // A label says of each outlet on an unknown leg that its leg is unknown.
    let told = report.figures.assumed.iter();
    let told = told.filter(|it| it.why == "leg" || answers.matters.contains(&it.field));
    report.figures.matters = told.map(|it| it.field.clone()).collect();
    report.figures.next = looks::next(plan, &report);
    verdicts::guesses_of_spare_parts(plan, supply, &mut report.figures);
    report
}

/// Returns the report without what rests on unknowns and what follows from that, which takes longer than everything
/// else. For callers that try many plans.
#[must_use]
pub fn judge(plan: &Plan) -> Report {
    let supply = Supply::build(plan);
    judged(plan, &supply, &Verdicts::of(plan, &supply))
}

/// Returns the part of a report that a trial plan needs: findings of this signal or worse, and the placing. Runs the
/// rules that can find as much, and those about air. For the figures see [`Figures::of_trial`].
pub(crate) fn trial(plan: &Plan, down_to: Signal) -> Report {
    let supply = Supply::build(plan);
    let verdicts = Verdicts::of(plan, &supply);
    let mut figures = Figures::of_trial(plan, &supply, &verdicts);
    let facts = Facts::new(plan, &supply, &verdicts, &figures);
    let of_trial = |rule: &Rule| rule.worst <= down_to || rule.area == "air";
    let findings = rules::check_some(&facts, of_trial);
    figures.troubles = troubles::of_findings(plan, &findings);
    Report { format: FORMAT, findings, figures }
}

/// See [`Figures::lives_too_many`].
fn lives_too_many(figures: &Figures, findings: &[Finding]) -> Vec<Id> {
    let several = |it: &&Finding| it.fix.key == "life-alone" && it.about.len() > 1;
    let found: Vec<&Finding> = findings.iter().filter(several).collect();
    let named = |load: &&LoadFacts| found.iter().any(|it| it.about.contains(&load.id) || it.about.contains(&load.of));
    let lives = figures.loads.iter().filter(|load| load.life()).filter(named);
    lives.map(|load| load.id.clone()).collect()
}

fn judged(plan: &Plan, supply: &Supply, verdicts: &Verdicts<'_>) -> Report {
    let mut figures = Figures::of_plan(plan, supply, verdicts);
    let by_rules = rules::assumed(plan, &figures.energy);
    figures.assumed.extend(by_rules);
    let findings = rules::check(&Facts::new(plan, supply, verdicts, &figures));
    figures.troubles = troubles::of_findings(plan, &findings);
    figures.lives_too_many = lives_too_many(&figures, &findings);
    figures.verdicts = verdicts::of_points(plan, supply, verdicts, &figures, &findings);
    let (spare, told) = verdicts::of_spare_parts(plan, supply);
    figures.verdicts.extend(verdicts::lost(supply, &findings, &spare));
    figures.verdicts.extend(spare);
    figures.spare = told;
    Report { format: FORMAT, findings, figures }
}

//! What the tool knows about danger: one rule per file, in the folder of its area.
//!
//! A rule's file opens with its page, which `explain CODE` prints and which lives in `i18n/en/explain`. Its [`Rule`],
//! its check and its tests follow. To add a rule, write the file, name it in its area's list, and give it words and a
//! page in every language.
//!
//! Tests hold every rule to the same form: a page, words, a plan that sets it off and a near miss that does not.

mod air;
mod assumed;
mod cite;
mod cord;
mod demand;
mod fit;
mod fuel;
mod halves;
mod health;
mod night;
mod noise;
mod overcurrent;
mod power;
mod shock;
#[cfg(test)]
pub(crate) mod testing;
mod voltage;

use std::cell::OnceCell;

use self::overcurrent::{Overload, overloads};
use crate::plan::Id;
use crate::plan::Plan;
use crate::report::{Figures, Finding, Fix, Signal, Value, Values};
use crate::supply::Supply;
use crate::tables::source::Source;
use crate::verdict::Verdicts;

/// What a check may look at.
#[derive(Clone, Debug)]
pub struct Facts<'a> {
    /// The user's answers.
    pub plan: &'a Plan,
    /// The tree built from the plan.
    pub supply: &'a Supply,
    /// What may be used, and why not.
    pub verdicts: &'a Verdicts<'a>,
    /// The figures computed from the tree.
    pub figures: &'a Figures,
    /// The needs, computed once because most rules ask for them.
    needs: Vec<demand::Need<'a>>,
    /// The placed needs that pass each node, computed on first use.
    passing: OnceCell<Vec<Vec<demand::Need<'a>>>>,
    /// The overloaded parts, computed on first use.
    overloads: OnceCell<Vec<Overload<'a>>>,
}

impl<'a> Facts<'a> {
    /// Gathers what the rules may look at.
    #[must_use]
    pub fn new(plan: &'a Plan, supply: &'a Supply, verdicts: &'a Verdicts<'a>, figures: &'a Figures) -> Self {
        Self {
            plan,
            supply,
            verdicts,
            figures,
            needs: demand::needs(plan, supply, verdicts, figures),
            passing: OnceCell::new(),
            overloads: OnceCell::new(),
        }
    }

    /// Returns every part whose load exceeds what it carries for a short time.
    fn overloads(&self) -> &[Overload<'a>] {
        self.overloads.get_or_init(|| overloads(self))
    }
}

/// An edit of the example plan that tests start from: the text to replace, and its replacement.
#[cfg(test)]
pub(crate) type Edit = (&'static str, &'static str);

/// One rule.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Area and number, such as `AIR001`. A code is never reused.
    pub code: &'static str,
    /// The hazard, in kebab case.
    pub name: &'static str,
    /// The area's name.
    pub area: &'static str,
    /// The worst signal that it may give.
    pub worst: Signal,
    /// The documents it rests on.
    pub sources: &'static [Source],
    /// The keys of every remedy it may name. Its message has an attribute `fix-KEY` for each.
    pub fixes: &'static [&'static str],
    /// The function that looks for the hazard.
    pub check: fn(&Facts<'_>, &mut Findings<'_>),
    /// Plans that set it off, as edits of the example plan. Together they use every remedy.
    #[cfg(test)]
    pub(crate) fires: &'static [&'static [Edit]],
    /// Near misses that do not set it off.
    #[cfg(test)]
    pub(crate) spares: &'static [&'static [Edit]],
}

/// A collector for what a check finds.
#[derive(Debug)]
pub struct Findings<'a> {
    rule: &'a Rule,
    list: &'a mut Vec<Finding>,
}

impl Findings<'_> {
    /// Adds a finding of this rule with all of its sources.
    pub fn add(&mut self, signal: Signal, about: Vec<Id>, values: Values, fix: &'static str, fix_values: Values) {
        debug_assert!(self.rule.fixes.contains(&fix), "{} {fix}", self.rule.code);
        debug_assert!(signal >= self.rule.worst, "{} {signal:?}", self.rule.code);
        self.list.push(Finding {
            code: self.rule.code,
            name: self.rule.name,
            area: self.rule.area,
            signal,
            about,
            values,
            fix: Fix { key: fix, values: fix_values },
            sources: self.rule.sources.to_vec(),
            rests_on: Vec::new(),
        });
    }
}

/// Collects named values for a finding.
#[must_use]
pub fn values<const N: usize>(pairs: [(&'static str, Value); N]) -> Values {
    pairs.into_iter().collect()
}

pub(crate) use assumed::assumed;
pub(crate) use cite::{
    NEC_210_21_B2 as EIGHTY_PER_CENT, NEC_551_42 as CAMPER_MAIN, NEC_DROP as DROP_ADVICE, OSHA_LETTER as TESTER,
};
pub(crate) use night::night;

/// Iterates over all rules, in the fixed order of the areas and their codes.
pub fn all() -> impl Iterator<Item = &'static Rule> {
    [
        power::RULES,
        overcurrent::RULES,
        cord::RULES,
        voltage::RULES,
        shock::RULES,
        fit::RULES,
        air::RULES,
        noise::RULES,
        fuel::RULES,
        health::RULES,
    ]
    .into_iter()
    .flatten()
}

/// Looks up a rule by code or name, ignoring case.
#[must_use]
pub fn find(code_or_name: &str) -> Option<&'static Rule> {
    let wanted = code_or_name.trim();
    all().find(|rule| rule.code.eq_ignore_ascii_case(wanted) || rule.name.eq_ignore_ascii_case(wanted))
}

/// Areas in the order in which their hazards kill, soonest and surest first: exhaust before shock, shock before fire.
/// The order breaks ties between equally grave findings. Areas not listed come last.
const SOONEST: [&str; 5] = ["air", "shock", "overcurrent", "cord", "fit"];

/// Returns everything that the rules find: worst first, then what kills sooner, then by code, then in the rule's own
/// order, which is that of the plan. Ids play no part in the order.
#[must_use]
pub fn check(facts: &Facts<'_>) -> Vec<Finding> {
    check_some(facts, |_| true)
}

/// Returns what the `wanted` rules find, in the same order.
#[must_use]
pub fn check_some(facts: &Facts<'_>, wanted: impl Fn(&Rule) -> bool) -> Vec<Finding> {
    let mut list = Vec::new();
    for rule in all().filter(|rule| wanted(rule)) {
        rule.run(facts, &mut list);
    }
    let rank = |finding: &Finding| {
        let place = SOONEST.iter().position(|area| *area == finding.area);
        (finding.signal, place.unwrap_or(SOONEST.len()), finding.code)
    };
    list.sort_by_key(rank);
    list
}

impl Rule {
    /// Runs only this rule.
    pub fn run(&self, facts: &Facts<'_>, list: &mut Vec<Finding>) {
        (self.check)(facts, &mut Findings { rule: self, list });
    }
}

/// What nearly every rule's file needs.
mod prelude {
    pub(super) use super::{Facts, Findings, Rule, cite, values};
    pub(super) use crate::report::{Signal, Value};
}

#[cfg(test)]
mod form;

//! What the tool knows about danger: one rule a file, in the folder of its area.
//!
//! A rule's file opens with its page, which `explain CODE` prints and which lies in
//! `i18n/en/explain`; then its [`Rule`], its check and its tests. To add one: write the file, name
//! it in its area's list, and give it words and a page in every language.
//!
//! Tests hold every rule to the same form: its page, its words, a plan that sets it off and a near
//! miss that does not.

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
    /// What the user said.
    pub plan: &'a Plan,
    /// The tree built from it.
    pub supply: &'a Supply,
    /// What may be used of it, and why not.
    pub verdicts: &'a Verdicts<'a>,
    /// The numbers worked out on it.
    pub figures: &'a Figures,
    /// Worked out once, for most rules ask for them.
    needs: Vec<demand::Need<'a>>,
    /// What may be switched on and passes each point, worked out when the first rule asks.
    passing: OnceCell<Vec<Vec<demand::Need<'a>>>>,
    /// Worked out when the first of the rules that speak of it asks.
    overloads: OnceCell<Vec<Overload<'a>>>,
}

impl<'a> Facts<'a> {
    /// What there is to look at in a plan: the tree built from it, and the numbers worked out on that.
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

    /// Every part that is asked for more than it holds for a short time.
    fn overloads(&self) -> &[Overload<'a>] {
        self.overloads.get_or_init(|| overloads(self))
    }
}

/// An edit of the example plan that tests start from: this text becomes that one.
#[cfg(test)]
pub(crate) type Edit = (&'static str, &'static str);

/// One rule.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Area and number, as `AIR001`. Never used again once given.
    pub code: &'static str,
    /// The hazard, in kebab case.
    pub name: &'static str,
    /// The area's name.
    pub area: &'static str,
    /// The gravest signal that it may give.
    pub worst: Signal,
    /// By what authority.
    pub sources: &'static [Source],
    /// Every remedy it may name: its message has an attribute `fix-KEY` for each.
    pub fixes: &'static [&'static str],
    /// Looks for the hazard.
    pub check: fn(&Facts<'_>, &mut Findings<'_>),
    /// Plans that set it off, as edits of the example plan. Together they use every remedy.
    #[cfg(test)]
    pub(crate) fires: &'static [&'static [Edit]],
    /// Near misses, which do not.
    #[cfg(test)]
    pub(crate) spares: &'static [&'static [Edit]],
}

/// Where a check puts what it finds.
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

/// Named values for a finding.
#[must_use]
pub fn values<const N: usize>(pairs: [(&'static str, Value); N]) -> Values {
    pairs.into_iter().collect()
}

pub(crate) use assumed::assumed;
pub(crate) use cite::{
    NEC_210_21_B2 as EIGHTY_PER_CENT, NEC_551_42 as CAMPER_MAIN, NEC_DROP as DROP_ADVICE, OSHA_LETTER as TESTER,
};
pub(crate) use night::night;

/// Every rule, in the fixed order of the areas and their codes.
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

/// The rule of that code or name; case does not matter.
#[must_use]
pub fn find(code_or_name: &str) -> Option<&'static Rule> {
    let wanted = code_or_name.trim();
    all().find(|rule| rule.code.eq_ignore_ascii_case(wanted) || rule.name.eq_ignore_ascii_case(wanted))
}

/// Of what is as grave, what kills sooner and more surely comes first: exhaust before shock, shock
/// before fire. Areas that are not here come after these.
const SOONEST: [&str; 5] = ["air", "shock", "overcurrent", "cord", "fit"];

/// Everything that every rule finds: worst first, then what kills sooner, then by code, then in
/// the order of the rule, which is that of the plan: ids are names and nothing else.
#[must_use]
pub fn check(facts: &Facts<'_>) -> Vec<Finding> {
    check_some(facts, |_| true)
}

/// What the rules that `wanted` names find, in the same order.
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
    /// Runs the rule alone.
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

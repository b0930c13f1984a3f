//! What the tool knows about danger: one rule a file, in the folder of its area.
//!
//! A rule's file opens with its page, which `explain CODE` prints, under fixed headings; then
//! its [`Rule`], its check and its tests. To add one: write the file, name it in its area's
//! list, and give it words in every language.

use crate::plan::Id;
use crate::plan::Plan;
use crate::report::{Figures, Finding, Fix, Signal, Value, Values};
use crate::supply::Supply;
use crate::tables::source::Source;

/// What a check may look at.
#[derive(Clone, Copy, Debug)]
pub struct Facts<'a> {
    /// What the user said.
    pub plan: &'a Plan,
    /// The tree built from it.
    pub supply: &'a Supply,
    /// The numbers worked out on it.
    pub figures: &'a Figures,
}

/// One rule.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Area and number, as `AIR001`. Never used again once given.
    pub code: &'static str,
    /// The hazard, in kebab case.
    pub name: &'static str,
    /// The area's name.
    pub area: &'static str,
    /// The text of the rule's own file, whose opening comment is its page.
    pub text: &'static str,
    /// By what authority.
    pub sources: &'static [Source],
    /// Looks for the hazard.
    pub check: fn(&Facts<'_>, &mut Findings<'_>),
}

/// Where a check puts what it finds.
#[derive(Debug)]
pub struct Findings<'a> {
    rule: &'a Rule,
    list: &'a mut Vec<Finding>,
}

impl Findings<'_> {
    /// Adds a finding of this rule with all of its sources.
    pub fn add(
        &mut self,
        signal: Signal,
        about: Vec<Id>,
        values: Values,
        fix: &'static str,
        fix_values: Values,
    ) {
        self.list.push(Finding {
            code: self.rule.code,
            name: self.rule.name,
            area: self.rule.area,
            signal,
            about,
            values,
            fix: Fix {
                key: fix,
                values: fix_values,
            },
            sources: self.rule.sources.to_vec(),
        });
    }
}

/// Named values for a finding.
#[must_use]
pub fn values<const N: usize>(pairs: [(&'static str, Value); N]) -> Values {
    pairs.into_iter().collect()
}

impl Rule {
    /// Runs the rule alone.
    pub fn run(&self, facts: &Facts<'_>, list: &mut Vec<Finding>) {
        (self.check)(facts, &mut Findings { rule: self, list });
    }

    /// The rule's page: its file's opening comment.
    #[must_use]
    pub fn page(&self) -> String {
        self.text
            .lines()
            .map_while(|line| line.strip_prefix("//!"))
            .map(|line| line.strip_prefix(' ').unwrap_or(line))
            .collect::<Vec<_>>()
            .join("\n")
    }
}

/// Declares the rules of an area: a module for each name, and the list of them.
macro_rules! area {
    ($($rule:ident),* $(,)?) => {
        $(mod $rule;)*
        /// The rules of this area, in the order of their codes.
        pub(super) const RULES: &[crate::rules::Rule] = &[$($rule::RULE),*];
    };
}
pub(crate) use area;

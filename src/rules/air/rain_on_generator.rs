#![doc = include_str!("../../../i18n/en/explain/AIR004.md")]

use crate::plan::{Answer, Ground, Stands};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "AIR004",
    name: "rain-on-generator",
    area: "air",
    worst: Signal::Caution,
    sources: &[cite::RED_CROSS, cite::OSHA_RAIN, cite::PRACTICE],
    fixes: &["roof"],
    check,
    #[cfg(test)]
    fires: &[&[("stands = \"roof\"", "stands = \"open\"")]],
    #[cfg(test)]
    spares: &[&[], &[("stands = \"roof\"", "stands = \"open\""), ("ground = \"wet\"", "ground = \"damp\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let site = &facts.plan.site;
    let wet = !matches!(site.ground, Answer::Known(Ground::Dry | Ground::Damp));
    // If it is unknown where the generator is, rule AIR003 reports that.
    if wet && site.stands == Answer::Known(Stands::Open) {
        found.add(Signal::Caution, vec![], values([]), "roof", values([]));
    }
}

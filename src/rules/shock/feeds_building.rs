#![doc = include_str!("../../../i18n/en/explain/SHOCK003.md")]

use crate::plan::Answer;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK003",
    name: "feeds-building",
    area: "shock",
    worst: Signal::Danger,
    sources: &[cite::NEC_702_5],
    fixes: &["stop", "ask"],
    check,
    #[cfg(test)]
    fires: &[
        &[("feeds_building = false", "feeds_building = true")],
        &[("feeds_building = false", "feeds_building = \"unknown\"")],
    ],
    #[cfg(test)]
    spares: &[&[], &[("feeds_building = false", "")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let fix = match facts.plan.site.feeds_building {
        Answer::Known(true) => "stop",
        Answer::Unknown => "ask",
        // Nobody feeds a building without meaning to, so silence means no.
        Answer::Known(false) | Answer::Missing => return,
    };
    found.add(Signal::Danger, vec![], values([]), fix, values([]));
}

#![doc = include_str!("../../../i18n/en/explain/POWER007.md")]

use crate::plan::{Answer, LoadKind};
use crate::rules::demand::Need;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "POWER007",
    name: "economy-idle",
    area: "power",
    worst: Signal::Notice,
    sources: &[cite::PRACTICE],
    fixes: &["off"],
    check,
    #[cfg(test)]
    // 1800 W of 3600 W.
    fires: &[&[
        ("inverter = false", "inverter = true"),
        ("kind = \"electronic\" # fan", "kind = \"motor\"\nstarting = \"1800 W\""),
    ]],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("inverter = false", "inverter = true"),
            ("kind = \"electronic\" # fan", "kind = \"motor\"\nstarting = \"1799 W\""),
        ],
    ],
};

/// Returns the motor that starts hardest, if it is too much for an engine on economy idle.
pub(in crate::rules) fn too_hard<'f>(facts: &'f Facts<'_>) -> Option<Need<'f>> {
    if facts.plan.generator.inverter == Answer::Known(false) {
        return None;
    }
    let needs = facts.needs();
    let largest = needs
        .iter()
        .filter(|need| need.load.may_be(LoadKind::Motor))
        // The first if several are equal.
        .rev()
        .max_by_key(|need| need.starting());
    largest.copied().filter(|need| need.starting() + need.starting() >= facts.supply.rated)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let Some(need) = too_hard(facts) else { return };
    let (starting, rated) = (need.starting(), facts.supply.rated);
    found.add(
        Signal::Notice,
        vec![need.load.id.clone()],
        values([("starting", starting.into()), ("rated", rated.into())]),
        "off",
        values([]),
    );
}

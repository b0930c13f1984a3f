#![doc = include_str!("../../../i18n/en/explain/POWER007.md")]

use crate::plan::{Answer, LoadKind};
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

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.plan.generator.inverter == Answer::Known(false) {
        return;
    }
    let needs = facts.needs();
    let largest = needs
        .iter()
        .filter(|need| need.load.may_be(LoadKind::Motor))
        // The first of equal ones.
        .rev()
        .max_by_key(|need| need.starting());
    let Some(need) = largest else { return };
    let (starting, rated) = (need.starting(), facts.supply.rated);
    if starting + starting >= rated {
        found.add(
            Signal::Notice,
            vec![need.load.id.clone()],
            values([("starting", starting.into()), ("rated", rated.into())]),
            "off",
            values([]),
        );
    }
}

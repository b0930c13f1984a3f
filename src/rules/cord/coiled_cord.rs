#![doc = include_str!("../../../i18n/en/explain/CORD003.md")]

use crate::plan::{Answer, Id};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "CORD003",
    name: "coiled-cord",
    area: "cord",
    worst: Signal::Warning,
    sources: &[cite::ROSPA, cite::PRACTICE],
    fixes: &["unwind", "look"],
    check,
    #[cfg(test)]
    fires: &[&[("coiled = false # long", "coiled = true")], &[("coiled = false # long", "coiled = \"unknown\"")]],
    #[cfg(test)]
    spares: &[&[]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    for (_, node) in facts.supply.cords() {
        let Some(cord) = facts.plan.cord(&node.id) else {
            continue;
        };
        let (signal, fix) = match cord.is_coiled() {
            Answer::Known(true) => (Signal::Warning, "unwind"),
            // Nobody coils a short adapter; the supply tree has already ruled that out.
            _ if taken_for_coiled(facts, &cord.id) => (Signal::Caution, "look"),
            _ => continue,
        };
        found.add(signal, vec![node.id.clone()], values([("limit", node.rating.into())]), fix, values([]));
    }
}

/// Whether the supply tree took the cord for coiled because nobody knows.
fn taken_for_coiled(facts: &Facts<'_>, cord: &Id) -> bool {
    let field = format!("cord.{cord}.coiled");
    let assumed = &facts.supply.assumed;
    assumed.iter().any(|assumption| assumption.field == field)
}

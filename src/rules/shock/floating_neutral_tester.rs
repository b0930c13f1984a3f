#![doc = include_str!("../../../i18n/en/explain/SHOCK002.md")]

use crate::rules::prelude::*;
use crate::verdict::Sure;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK002",
    name: "floating-neutral-tester",
    area: "shock",
    worst: Signal::Notice,
    sources: &[cite::OSHA_LETTER, cite::PRACTICE],
    fixes: &["find-out"],
    check,
    #[cfg(test)]
    fires: &[&[("neutral = \"bonded\"", "neutral = \"unknown\"")], &[("neutral = \"bonded\"", "")]],
    #[cfg(test)]
    spares: &[
        &[],
        &[("neutral = \"bonded\"", "neutral = \"floating\"")],
        &[("neutral = \"bonded\"", "neutral = \"floating\""), ("bonding_plug = false", "bonding_plug = true")],
        // A joint in a box: the tester reads correct wiring.
        &[("neutral = \"bonded\"", "neutral = \"floating\""), ("bond = false", "bond = true")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    // Every tester sees a joint in a box that may be used.
    if facts.verdicts.grounding_in_use().joined() == Sure::Unknown {
        found.add(Signal::Notice, vec![], values([]), "find-out", values([]));
    }
}

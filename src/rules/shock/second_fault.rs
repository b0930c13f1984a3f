#![doc = include_str!("../../../i18n/en/explain/SHOCK009.md")]

use crate::plan::{Answer, Id, Neutral};
use crate::rules::demand::once;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK009",
    name: "second-fault",
    area: "shock",
    worst: Signal::Caution,
    sources: &[cite::IET_OSG, cite::OSHA_LETTER],
    fixes: &["protect"],
    check,
    #[cfg(test)]
    fires: &[
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ],
        &[("neutral = \"bonded\"", ""), ("gfci = true # left", "gfci = false"), ("gfci = true # right", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // One appliance only.
        &[("neutral = \"bonded\"", "neutral = \"floating\""), ("gfci = true # left", "gfci = false")],
        // A bonding plug, if there is one, would blind the GFCI, but also ground the neutral.
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = \"unknown\""),
            ("gfci = false # twist", "gfci = true"),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ],
        // The neutral is bonded, so a first fault is cleared.
        &[("gfci = true # left", "gfci = false"), ("gfci = true # right", "gfci = false")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let set = &facts.plan.generator;
    if set.neutral == Answer::Known(Neutral::Bonded) || set.bonding_plug == Answer::Known(true) {
        return;
    }
    let needs = facts.needs();
    let bare: Vec<(Option<&Id>, &Id)> = needs
        .iter()
        // A GFCI that a joint blinds counts too: that joint grounds the neutral (rule SHOCK013).
        .filter(|need| need.at.is_some_and(|at| facts.supply.up(at).all(|(_, node)| !node.gfci)))
        .map(|need| (facts.plan.around(need.load).map(|camper| &camper.id), &need.load.id))
        .collect();
    // Everything in a camper counts as one appliance, because its metal is joined.
    let mut campers: Vec<&Id> = bare.iter().filter_map(|(camper, _)| *camper).collect();
    campers.sort_unstable();
    campers.dedup();
    let alone = bare.iter().filter(|(camper, _)| camper.is_none());
    let bare: Vec<&Id> = alone.map(|(_, load)| *load).chain(campers).collect();
    if bare.len() > 1 {
        let about = once(bare);
        found.add(Signal::Caution, about, values([]), "protect", values([]));
    }
}

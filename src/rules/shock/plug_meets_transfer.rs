#![doc = include_str!("../../../i18n/en/explain/SHOCK010.md")]

use crate::plan::{Answer, Id};
use crate::rules::prelude::*;
use crate::verdict::camper;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK010",
    name: "plug-meets-transfer",
    area: "shock",
    worst: Signal::Warning,
    sources: &[cite::NEC_250_142, cite::PRACTICE],
    fixes: &["building", "camper"],
    check,
    #[cfg(test)]
    fires: &[
        &[("bonding_plug = false", "bonding_plug = \"unknown\""), ("feeds_building = false", "feeds_building = true")],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true"),
            ("feeds_building = false", "feeds_building = \"unknown\""),
        ],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true"),
            ("plug = \"5-15P\" # fan\non = \"right\" # fan", "plug = \"TT-30P\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("feeds_building = false", "feeds_building = true"), ("bonding_plug = false", "")],
        &[("neutral = \"bonded\"", "neutral = \"floating\""), ("bonding_plug = false", "bonding_plug = true")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let plan = facts.plan;
    // Silence means that there is none: whoever put one in knows of it.
    if !matches!(plan.generator.bonding_plug, Answer::Known(true) | Answer::Unknown) {
        return;
    }
    if matches!(plan.site.feeds_building, Answer::Known(true) | Answer::Unknown) {
        found.add(Signal::Warning, vec![], values([]), "building", values([]));
    }
    let loads = plan.loads.iter().filter(|load| camper(load));
    let boxes = plan.boxes.iter().filter(|it| it.is_camper() && it.from.is_some());
    let campers = boxes.map(|it| &it.id).chain(loads.map(|load| &load.id));
    let campers: Vec<Id> = campers.cloned().collect();
    if !campers.is_empty() {
        found.add(Signal::Notice, campers, values([]), "camper", values([]));
    }
}

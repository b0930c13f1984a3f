#![doc = include_str!("../../../i18n/en/explain/SHOCK007.md")]

use crate::quantity::{Current, Length};
use crate::rules::demand::once;
use crate::rules::prelude::*;
use crate::supply::NodeIx;
use crate::tables::gfci;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK007",
    name: "leakage-trips-protection",
    area: "shock",
    worst: Signal::Notice,
    sources: &[cite::NEC_CLASS_A, cite::UL_101, cite::PRACTICE],
    fixes: &["nearer"],
    check,
    #[cfg(test)]
    // 200 ft of cord behind the GFCI, a kettle and a fan: 4.2 mA.
    fires: &[&[
        ("gfci = false # twist", "gfci = true"),
        ("length = \"50 ft\"", "length = \"200 ft\""),
    ]],
    #[cfg(test)]
    // 185 ft: 3.96 mA.
    spares: &[
        &[],
        &[
            ("gfci = false # twist", "gfci = true"),
            ("length = \"50 ft\"", "length = \"185 ft\""),
        ],
    ],
};

/// The leakage assumed for one appliance, in microamperes.
const APPLIANCE: i64 = 500;
/// The length of cord whose leakage alone may trip the GFCI: 250 ft, in millimeters.
const LONGEST: i64 = 76_200;

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let needs = facts.needs();
    for (ix, node) in facts.supply.points() {
        if !node.gfci {
            continue;
        }
        let through = facts.through(&needs, ix);
        if through.is_empty() {
            continue;
        }
        let millimetres: i64 = facts
            .supply
            .nodes
            .iter()
            .enumerate()
            .filter(|(below, node)| node.kind.is_cord() && facts.supply.up(NodeIx(*below)).any(|(up, _)| up == ix))
            .filter_map(|(_, node)| facts.length_of(&node.id))
            .map(Length::millimetres)
            .sum();
        let cords = (millimetres * gfci::NEVER_BELOW.milliamps() * 1000 + LONGEST - 1) / LONGEST;
        let appliances = APPLIANCE * i64::try_from(through.len()).unwrap_or(i64::MAX / APPLIANCE);
        let micro = cords + appliances;
        if micro <= gfci::NEVER_BELOW.milliamps() * 1000 {
            continue;
        }
        let loads = through.iter().map(|need| &need.load.id);
        let about = once(std::iter::once(&node.id).chain(loads));
        found.add(
            Signal::Notice,
            about,
            values([
                ("leak", Current::from_milliamps((micro + 999) / 1000).into()),
                ("least", gfci::NEVER_BELOW.into()),
            ]),
            "nearer",
            values([]),
        );
    }
}

//! # CORD006 hot-cord
//!
//! ## What it checks
//! Whether the air is hotter than the 30 °C (86 °F) that the ampacity of cords is published for, and
//! a cord in use has to carry more than it may in such air.
//!
//! ## Why it hurts
//! The heat of the current comes on top of the heat of the air. Insulation that is too hot for long
//! goes soft, then brittle, and cracks where the cord is bent. No breaker knows how hot the air is.
//!
//! ## The arithmetic
//! The published ampacity times the published factor for conductors of 60 °C: 0.91 up to 35 °C, 0.82
//! up to 40 °C, 0.71 up to 45 °C, 0.58 up to 50 °C, 0.41 up to 55 °C, above that nothing. Against it
//! stands the greatest current that runs through the cord at any time: a caution. Where the current
//! is small enough now but the cord's limit is lower than what the label shows, a notice. Air that
//! nobody knows counts as 100 °F, which is 0.82. A coiled cord is cut first by its coil (CORD003).
//! A cord in the sun is hotter than the air; that is not counted.
//!
//! ## What to do
//! Run fewer things on it at the hottest time, use a thicker cord, and lay it in the shade, not under
//! a rug or a bag.
//!
//! ## Sources
//! - NFPA 70 (NEC), Table 310.15(B)(1): factors for hot air (from a secondary copy).
//! - NFPA 70 (NEC), Table 400.5(A)(1): ampacity of cords at 30 °C (from a secondary copy).

use crate::plan::Id;
use crate::quantity::{Current, Percent};
use crate::rules::demand::{busiest, clock};
use crate::rules::prelude::*;
use crate::supply::{LimitReason, NodeIx, NodeKind};
use crate::tables::conductor::{flexible_ampacity, in_air};

pub(super) const RULE: Rule = Rule {
    code: "CORD006",
    name: "hot-cord",
    area: "cord",
    text: include_str!("hot_cord.rs"),
    sources: &[cite::NEC_310_15, cite::NEC_400_5],
    fixes: &["less", "label"],
    check,
    #[cfg(test)]
    fires: &[
        // 12.9 A through 14 AWG, 18 A, at 50 °C: 10.44 A.
        &[
            ("air = \"59 °F\"", "air = \"122 °F\""),
            ("wire = \"10 AWG\"", "wire = \"14 AWG\""),
        ],
        // 30 A at 40 °C is 24.6 A.
        &[("air = \"59 °F\"", "air = \"104 °F\"")],
        &[("air = \"59 °F\"", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // 30 °C exactly.
        &[("air = \"59 °F\"", "air = \"86 °F\"")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let air = facts.supply.air;
    // What is left of a hundred amperes is what is left in per cent.
    let share = Percent::from_millipercent(in_air(Current::from_milliamps(100_000), air).milliamps());
    let mut quiet: Vec<Id> = Vec::new();
    let needs = facts.needs();
    for (at, node) in facts.supply.nodes.iter().enumerate() {
        let ix = NodeIx(at);
        if !matches!(node.kind, NodeKind::Cord { .. })
            || matches!(node.reason, LimitReason::CoiledCord | LimitReason::NotFed)
        {
            continue;
        }
        let through = facts.through(&needs, ix);
        if through.is_empty() {
            continue;
        }
        let Some(cord) = facts.plan.cords.iter().find(|cord| cord.id == node.id) else {
            continue;
        };
        // An unknown wire is the tree's thinnest, whose ampacity is the node's rating or more.
        let cool = cord
            .wire
            .known()
            .map_or(node.rating, |wire| {
                flexible_ampacity(*wire, cord.circuit().into())
            });
        let hot = in_air(cool, air);
        let busiest = busiest(&through, |on| facts.worst_leg(on));
        let demand = facts.worst_leg(&busiest.on);
        let limit: Current = facts.supply.limit(ix).short;
        // More than the cord carries in any air is rule CORD001's.
        if demand > node.rating || hot >= limit {
            continue;
        }
        if demand <= hot {
            // The label promises more than that.
            quiet.push(node.id.clone());
            continue;
        }
        let mut about = vec![node.id.clone()];
        about.extend(busiest.ids());
        found.add(
            Signal::Caution,
            about,
            values([
                ("air", air.into()),
                ("limit", hot.into()),
                ("cool", cool.into()),
                ("demand", demand.into()),
                ("time", clock(busiest.minute)),
                ("share", share.into()),
            ]),
            "less",
            values([]),
        );
    }
    if !quiet.is_empty() {
        found.add(
            Signal::Notice,
            quiet,
            values([("air", air.into()), ("share", share.into())]),
            "label",
            values([]),
        );
    }
}

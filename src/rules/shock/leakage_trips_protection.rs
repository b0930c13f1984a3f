//! # SHOCK007 leakage-trips-protection
//!
//! ## What it checks
//! Whether the ordinary leakage of long cords and many appliances past one GFCI adds up to what may trip it
//! with nothing wrong.
//!
//! ## Why it hurts
//! A GFCI that keeps tripping at night gets bypassed: people move the plug to a receptacle without
//! one, and nobody moves it back. A fridge or a medical device may be off for hours unnoticed.
//!
//! ## The arithmetic
//! A class A GFCI never trips below 4 mA and always at 6 mA; in between it may. Every cord leaks a little
//! through its insulation, and filters in appliances leak to ground by design. Counted here: 4 mA for 250
//! ft of cord past one GFCI, which is the longest run that is commonly advised, and 0.5 mA for each
//! appliance, the most that a new one may leak. Of several GFCIs each counts all that is past it. 4 mA or
//! less passes. Wet joints leak far more; no figure is claimed.
//!
//! ## What to do
//! Take the GFCI nearer to where things are used: shorter cords behind each, and fewer appliances.
//! Keep joints dry and off the ground. If it trips with everything unplugged, stop using it. Never
//! bypass it.
//!
//! ## Sources
//! - NFPA 70 (NEC), article 100, note on class A: trips at 6 mA or more, not below 4 mA (confirmed).
//! - UL 101, leakage current: 0.5 mA for a portable appliance (from memory, not verified).
//! - 250 ft of cord behind one GFCI is common practice, no source.

use crate::quantity::{Current, Length};
use crate::rules::demand::once;
use crate::rules::prelude::*;
use crate::supply::{NodeIx, NodeKind};
use crate::tables::gfci;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK007",
    name: "leakage-trips-protection",
    area: "shock",
    worst: Signal::Notice,
    text: include_str!("leakage_trips_protection.rs"),
    sources: &[cite::NEC_CLASS_A, cite::UL_101, cite::PRACTICE],
    fixes: &["nearer"],
    check,
    #[cfg(test)]
    // 200 ft behind it, a kettle and a fan: 4.2 mA.
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

/// What an appliance may leak, in microamperes.
const APPLIANCE: i64 = 500;
/// A cord that leaks as much as trips the first GFCI: 250 ft, in millimetres.
const LONGEST: i64 = 76_200;

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let needs = facts.needs();
    for (at, node) in facts.supply.nodes.iter().enumerate() {
        let ix = NodeIx(at);
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
            .filter(|(below, node)| {
                matches!(node.kind, NodeKind::Cord { .. })
                    && facts.supply.up(NodeIx(*below)).any(|(up, _)| up == ix)
            })
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

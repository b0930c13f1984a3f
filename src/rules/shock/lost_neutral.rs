//! # SHOCK011 lost-neutral
//!
//! ## What it checks
//! On a 120/240 V supply, whether a cord with four-slot ends may lack its neutral while 120 V things
//! hang beyond it.
//!
//! ## Why it hurts
//! Without a neutral the 120 V things on the two legs are in series across 240 V. The smaller of them
//! gets nearly all of it: electronics burn at once, heaters glow. No breaker sees too much current.
//!
//! ## The arithmetic
//! Such a cord needs four conductors: two hots, neutral and ground. Fewer is a danger, on dry ground
//! too, and so are "I don't know" and silence. A fan of 50 W on one leg and a kettle of 1500 W on
//! the other, as resistances of 288 and 9.6 ohm, would share 240 V as 232 V and 8 V.
//!
//! ## What to do
//! Count the blades and read the jacket: "10/4" has four conductors, "10/3" three. Leave the cord out
//! until you are sure. If lamps grow brighter when something else is switched on, stop the engine.
//!
//! ## Sources
//! - NEMA WD 6: conductors of each configuration (from memory, not verified).
//! - That an open neutral puts both legs in series is Ohm's law: common practice, no source.

use crate::plan::{Cord, Id};
use crate::rules::prelude::*;
use crate::supply::{Legs, NodeKind};
use crate::tables::shape::Circuit;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK011",
    name: "lost-neutral",
    area: "shock",
    worst: Signal::Danger,
    text: include_str!("lost_neutral.rs"),
    sources: &[cite::WD_6, cite::PRACTICE],
    fixes: &["leave", "count"],
    check,
    #[cfg(test)]
    fires: &[
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-30P\"\nends = [\"L14-30R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
        ],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-30P\"\nends = [\"L14-30R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
            ("conductors = 3", "conductors = \"unknown\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-30P\"\nends = [\"L14-30R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
            ("conductors = 3", "conductors = 4"),
        ],
    ],
};

/// Two hots, neutral and ground.
const FOUR: u8 = 4;

/// Whether it passes both legs on, and something with a neutral hangs beyond it.
fn splits_legs(facts: &Facts<'_>, cord: &Cord) -> bool {
    let supply = facts.supply;
    let is_it = |kind: &NodeKind| matches!(kind, NodeKind::Cord { .. });
    cord.circuit() == Circuit::TwoLegsNeutral
        && supply
            .nodes
            .iter()
            .any(|node| node.id == cord.id && is_it(&node.kind) && node.legs == Legs::Both)
        && supply.receptacles().any(|(ix, _, shape, _)| {
            shape.0.circuit() != Circuit::TwoLegs
                && supply
                    .up(ix)
                    .any(|(_, node)| node.id == cord.id && is_it(&node.kind))
        })
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let with = |wanted: fn(Option<u8>) -> bool| -> Vec<Id> {
        facts
            .plan
            .cords
            .iter()
            .filter(|cord| wanted(cord.conductors.known().copied()) && splits_legs(facts, cord))
            .map(|cord| cord.id.clone())
            .collect()
    };
    for (about, fix) in [
        (with(|count| count.is_some_and(|count| count < FOUR)), "leave"),
        (with(|count| count.is_none()), "count"),
    ] {
        if !about.is_empty() {
            found.add(Signal::Danger, about, values([]), fix, values([]));
        }
    }
}

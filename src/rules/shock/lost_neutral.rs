//! # SHOCK011 lost-neutral
//!
//! ## What it checks
//! On a 120/240 V supply, whether a cord with four-slot ends may lack its neutral while 120 V things are
//! past it.
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
use crate::supply::{NodeIx, NodeKind};
use crate::verdict::lost_neutral;

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
fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let cords = facts.supply.nodes.iter().enumerate();
    let lost: Vec<&Cord> = cords
        .filter(|(_, node)| matches!(node.kind, NodeKind::Cord { .. }))
        .filter_map(|(at, node)| {
            let cord = facts.plan.cords.iter().find(|cord| cord.id == node.id)?;
            lost_neutral(facts.supply, NodeIx(at), cord).then_some(cord)
        })
        .collect();
    let (known, unknown): (Vec<&Cord>, Vec<&Cord>) =
        lost.into_iter().partition(|cord| cord.conductors.is_known());
    for (cords, fix) in [(known, "leave"), (unknown, "count")] {
        if !cords.is_empty() {
            let about: Vec<Id> = cords.iter().map(|cord| cord.id.clone()).collect();
            found.add(Signal::Danger, about, values([]), fix, values([]));
        }
    }
}

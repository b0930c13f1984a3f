//! # CORD003 coiled-cord
//!
//! ## What it checks
//! Whether a cord in use stays coiled or on a reel.
//!
//! ## Why it hurts
//! A coil cannot get rid of its heat. The inner turns melt first, out of sight, and the reel burns.
//! The breaker sees nothing, because the current is what it should be.
//!
//! ## The arithmetic
//! A coiled cord is reckoned at a third of its ampacity, rounded down. "I don't know" counts as
//! coiled and is a caution.
//!
//! ## What to do
//! Unwind the whole cord and lay it out in loose curves where nobody trips on it. If it is far too
//! long, use a shorter one.
//!
//! ## Sources
//! - RoSPA, advice on extension leads: unwind fully (confirmed).
//! - A third of the rating when wound is common practice, no source.

use crate::plan::{Answer, Cord};
use crate::rules::prelude::*;
use crate::supply::NodeKind;

pub(super) const RULE: Rule = Rule {
    code: "CORD003",
    name: "coiled-cord",
    area: "cord",
    text: include_str!("coiled_cord.rs"),
    sources: &[cite::ROSPA, cite::PRACTICE],
    fixes: &["unwind"],
    check,
    #[cfg(test)]
    fires: &[
        &[("coiled = false # long", "coiled = true")],
        &[("coiled = false # long", "coiled = \"unknown\"")],
    ],
    #[cfg(test)]
    spares: &[&[]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    for Cord { id, coiled, .. } in &facts.plan.cords {
        let signal = match coiled {
            Answer::Known(true) => Signal::Warning,
            Answer::Unknown => Signal::Caution,
            Answer::Known(false) | Answer::Missing => continue,
        };
        let Some(node) = facts
            .supply
            .nodes
            .iter()
            .find(|node| node.id == *id && matches!(node.kind, NodeKind::Cord { .. }))
        else {
            continue;
        };
        found.add(
            signal,
            vec![id.clone()],
            values([("limit", node.rating.into())]),
            "unwind",
            values([]),
        );
    }
}

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
//! A coiled cord counts as a third of its ampacity, rounded down. In hot air it is a third of what that air
//! leaves: coil and air both use up the rise that the insulation is allowed, so the shares multiply. "I
//! don't know" and silence count as coiled and are a caution, except for adapters of 2 m or less.
//!
//! ## What to do
//! Unwind the whole cord and lay it out in loose curves where nobody trips on it. If it is far too
//! long, use a shorter one.
//!
//! ## Sources
//! - RoSPA, advice on extension leads: unwind fully (confirmed).
//! - A third of the rating when wound is common practice, no source.

use crate::plan::{Answer, Id};
use crate::rules::prelude::*;
use crate::supply::NodeKind;

pub(super) const RULE: Rule = Rule {
    code: "CORD003",
    name: "coiled-cord",
    area: "cord",
    worst: Signal::Warning,
    text: include_str!("coiled_cord.rs"),
    sources: &[cite::ROSPA, cite::PRACTICE],
    fixes: &["unwind", "look"],
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
    for node in &facts.supply.nodes {
        if !matches!(node.kind, NodeKind::Cord { .. }) {
            continue;
        }
        let Some(cord) = facts.plan.cords.iter().find(|cord| cord.id == node.id) else {
            continue;
        };
        let (signal, fix) = match cord.coiled {
            Answer::Known(true) => (Signal::Warning, "unwind"),
            // Nobody coils a short adapter: the tree has decided that already.
            _ if taken_for_coiled(facts, &cord.id) => (Signal::Caution, "look"),
            _ => continue,
        };
        found.add(
            signal,
            vec![node.id.clone()],
            values([("limit", node.rating.into())]),
            fix,
            values([]),
        );
    }
}

/// Whether the tree took the cord for coiled because nobody knows.
fn taken_for_coiled(facts: &Facts<'_>, cord: &Id) -> bool {
    let field = format!("cord.{cord}.coiled");
    let assumed = &facts.supply.assumed;
    assumed.iter().any(|assumption| assumption.field == field)
}

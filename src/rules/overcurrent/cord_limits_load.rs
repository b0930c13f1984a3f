//! # OVER003 cord-limits-load
//!
//! ## What it checks
//! Whether a cord carries less than the breaker before it lets through, where a code allows that:
//! cord sets of 16 AWG or larger on 15 A and 20 A circuits.
//!
//! ## Why it hurts
//! The breaker will not stop you from asking too much of this cord. It is up to whoever plugs
//! things in. An overloaded cord gets hot along its whole length.
//!
//! ## The arithmetic
//! The cord's own limit (the smaller of its plug's rating and its ampacity) against the smallest
//! breaker upstream. Where the breaker is larger but no more than 20 A, and the wire is 16 AWG
//! (1.31 mm²) or larger, this is allowed and a caution. Any other such cord is a danger by rule
//! OVER001.
//!
//! ## What to do
//! Add up what is plugged in at the cord's end and keep it at or below the cord's limit. The label
//! for the cord says the figure.
//!
//! ## Sources
//! - NFPA 70 (NEC), 240.5(B)(4): cord sets of 16 AWG or larger on 20 A circuits (confirmed).
//! - NFPA 70 (NEC), Table 400.5(A)(1): ampacity of cords (from a secondary copy).

use super::unprotected_rating::{CORD_SET_CIRCUIT, allowed_cord_set, protection};
use crate::rules::prelude::*;
use crate::supply::{LimitReason, NodeIx, NodeKind};

pub(super) const RULE: Rule = Rule {
    code: "OVER003",
    name: "cord-limits-load",
    area: "overcurrent",
    text: include_str!("cord_limits_load.rs"),
    sources: &[cite::NEC_240_5_B4, cite::NEC_400_5],
    fixes: &["add-up"],
    check,
    #[cfg(test)]
    fires: &[&[
        ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
        ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
        ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
        ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"long\"\ninlet = \"5-20P\""),
    ]],
    #[cfg(test)]
    spares: &[
        &[],
        // 12 AWG carries what the breaker lets through.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"12 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"long\"\ninlet = \"5-20P\""),
        ],
        // Behind 30 A it is no caution but a danger, by another rule.
        &[("wire = \"10 AWG\"", "wire = \"14 AWG\"")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    for (at, node) in facts.supply.nodes.iter().enumerate() {
        // A coil is another rule's, with another remedy.
        if !matches!(node.kind, NodeKind::Cord { .. })
            || matches!(
                node.reason,
                LimitReason::CoiledCord | LimitReason::NotFed
            )
        {
            continue;
        }
        let Some(breaker) = protection(facts, NodeIx(at)) else {
            continue;
        };
        if breaker > node.rating
            && breaker <= CORD_SET_CIRCUIT
            && allowed_cord_set(facts.plan, &node.id)
        {
            found.add(
                Signal::Caution,
                vec![node.id.clone()],
                values([("limit", node.rating.into()), ("breaker", breaker.into())]),
                "add-up",
                values([]),
            );
        }
    }
}

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
//! The cord's own limit (the least of its plug's rating, its ampacity and, with a household plug, what
//! cords of its gauge and length are usually marked with: 18 AWG 10 A up to 50 ft and 7 A beyond, 16 AWG
//! 13 and 10 A, 14 AWG 15 and 13 A, 12 AWG 20 and 15 A) against the smallest breaker upstream. Where the
//! breaker is larger but no more than 20 A, and the wire is 16 AWG (1.31 mm²) or larger, this is allowed.
//! It is a notice: what is plugged in beyond the cord is added up by rule CORD001, which finds it where it
//! is too much. Where the generator itself cannot give more than the cord stands (rule OVER001), nothing is
//! found. Any other such cord is a danger by rule OVER001.
//!
//! ## What to do
//! Add up what is plugged in at the cord's end and keep it at or below the cord's limit. The label
//! for the cord says the figure. The amps on the cord's own tag count where they are fewer.
//!
//! ## Sources
//! - NFPA 70 (NEC), 240.5(B)(3), 2023: the cord of a listed extension cord set counts as protected when
//!   it is used within its listing, which its tag tells (from a secondary copy).
//! - NFPA 70 (NEC), 240.5(B)(4): cord sets put together in the field, 16 AWG or larger, on 20 A circuits
//!   (confirmed).
//! - UL 817, cord sets by length, tables 114 and 115: their marks, as a cord supplier
//!   and a forum tell them (from a secondary copy).
//! - NFPA 70 (NEC), Table 400.5(A)(1): ampacity of cords (from a secondary copy).

use crate::rules::prelude::*;
use crate::verdict::Overcurrent;
use crate::supply::{LimitReason, NodeIx, NodeKind};

pub(super) const RULE: Rule = Rule {
    code: "OVER003",
    name: "cord-limits-load",
    area: "overcurrent",
    worst: Signal::Notice,
    text: include_str!("cord_limits_load.rs"),
    sources: &[cite::NEC_240_5_B3, cite::NEC_240_5_B4, cite::UL_817, cite::NEC_400_5],
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
        // Behind 30 A it is a danger, by another rule.
        &[("wire = \"10 AWG\"", "wire = \"14 AWG\"")],
        // The generator gives 12.5 A, and 16.7 A for a moment: 16 AWG carries 13 A.
        &[
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1500 W\""),
            ("peak = \"4500 W\"", "peak = \"2000 W\""),
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"long\"\ninlet = \"5-20P\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    for (at, node) in facts.supply.nodes.iter().enumerate() {
        // A coil is another rule's, with another remedy.
        if !matches!(node.kind, NodeKind::Cord { .. }) || node.reason == LimitReason::CoiledCord {
            continue;
        }
        if let Overcurrent::Allowed { breaker, .. } = Overcurrent::of(facts.plan, facts.supply, NodeIx(at)) {
            found.add(
                Signal::Notice,
                vec![node.id.clone()],
                values([("limit", node.rating.into()), ("breaker", breaker.into())]),
                "add-up",
                values([]),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::quantity::Current;
    use crate::report::{Signal, Value};
    use crate::rules::testing::findings;

    /// UL 817 as a cord supplier and a forum tell it (secondary): 16 AWG 13 A up to 50 ft and 10 A
    /// beyond, 14 AWG 15 and 13 A. A breaker of 15 A lets more through; without a length it is long.
    #[test]
    fn a_long_thin_cord_carries_less_than_its_wire() {
        for (wire, length, breaker, limit) in [
            ("16 AWG", "\"50 ft\"", "15 A", Some(13_000)),
            ("16 AWG", "\"51 ft\"", "15 A", Some(10_000)),
            ("14 AWG", "\"50 ft\"", "15 A", None),
            ("14 AWG", "\"100 ft\"", "15 A", Some(13_000)),
            ("14 AWG", "\"unknown\"", "15 A", Some(13_000)),
            ("12 AWG", "\"100 ft\"", "15 A", None),
            ("12 AWG", "\"100 ft\"", "20 A", Some(15_000)),
            ("12 AWG", "\"50 ft\"", "20 A", None),
            ("10 AWG", "\"100 ft\"", "20 A", None),
        ] {
            let (wire, length) = (format!("wire = \"{wire}\""), format!("length = {length} # long"));
            let before = format!("breaker = \"{breaker}\"");
            let found = findings(&[
                (
                    "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                    "from = \"front\"\nplug = \"5-20P\"\nends = [\"5-20R\"]",
                ),
                ("from = \"long\"\ninlet", "inlet"),
                ("breaker = \"20 A\" # front", before.as_str()),
                ("wire = \"10 AWG\" # long", wire.as_str()),
                ("length = \"50 ft\" # long", length.as_str()),
                ("on = \"left\" # kettle", "on = \"front\""),
                ("on = \"right\" # fan", "on = \"long\""),
            ]);
            let found: Vec<_> = found.iter().filter(|found| found.code == "OVER003").collect();
            assert!(found.iter().all(|found| found.signal == Signal::Notice));
            let limits: Vec<Value> = found.iter().map(|found| found.values["limit"].clone()).collect();
            let expected: Vec<Value> = limit.into_iter().map(|limit| Current::from_milliamps(limit).into()).collect();
            assert_eq!(limits, expected, "{wire} {length} {breaker}");
        }
    }
}

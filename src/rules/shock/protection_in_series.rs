//! # SHOCK008 protection-in-series
//!
//! ## What it checks
//! Whether a receptacle in use has more than one GFCI between it and the generator.
//!
//! ## Why it hurts
//! It protects no better, and it confuses. One fault may trip either of them or both: people press
//! RESET on the one they see, nothing comes back, and they move the plug to where there is none.
//!
//! ## The arithmetic
//! The devices on the path are counted. All of class A trip between 4 mA and 6 mA, with the same
//! time curve, so which one is first is chance: they cannot be graded as breakers can. The leakage
//! of everything beyond counts in the one nearest the generator.
//!
//! ## What to do
//! It may stay so. When something trips, unplug the load first, then press RESET on the one nearest
//! the generator, then on the next. Test each with its own TEST button, the farthest first: only
//! that one must go off.
//!
//! ## Sources
//! - UL 943, trip time: one curve for every class A device (from a secondary copy).
//! - NFPA 70 (NEC), article 100, note on class A: trips at 6 mA or more, not below 4 mA (confirmed).

use crate::plan::Id;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK008",
    name: "protection-in-series",
    area: "shock",
    worst: Signal::Notice,
    text: include_str!("protection_in_series.rs"),
    sources: &[crate::tables::gfci::CURVE, cite::NEC_CLASS_A],
    fixes: &["reset"],
    check,
    #[cfg(test)]
    fires: &[&[("gfci = false # twist", "gfci = true")]],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("gfci = false # twist", "gfci = true"),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let mut about: Vec<Id> = Vec::new();
    let mut count = 0;
    for need in facts.needs() {
        let Some(at) = need.at else { continue };
        // A protected outlet's breaker and receptacle are one device.
        let mut devices: Vec<Id> = facts
            .supply
            .up(at)
            .filter(|(_, node)| node.gfci)
            .map(|(_, node)| node.id.clone())
            .collect();
        devices.dedup();
        if devices.len() < 2 {
            continue;
        }
        count = count.max(devices.len());
        // From the generator on, as they are reset.
        for id in devices.into_iter().rev() {
            if !about.contains(&id) {
                about.push(id);
            }
        }
    }
    if count > 1 {
        found.add(
            Signal::Notice,
            about,
            values([("count", Value::Count(count))]),
            "reset",
            values([]),
        );
    }
}

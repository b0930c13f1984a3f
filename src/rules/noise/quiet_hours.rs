//! # NOISE002 quiet-hours
//!
//! ## What it checks
//! Whether anything is meant to run while the camp must be quiet.
//!
//! ## Why it hurts
//! Nobody is hurt, but the set will be switched off by a neighbour or a host, perhaps in the middle
//! of something that matters.
//!
//! ## The arithmetic
//! The hours of each load against the quiet hours, minute by minute. A medical load without hours
//! counts as running at night; other loads without hours can run by day. What somebody's health depends
//! on and a battery of its own carries through the night is not counted.
//!
//! ## What to do
//! Move it to another time, or run it from a battery that was charged by day. What someone's health
//! depends on moves to no other time: ask the host before you come, or run it from a battery made for it.
//!
//! ## Sources
//! - The host's own hours decide: common practice, no source.

use crate::plan::{Answer, Id, LoadKind};
use crate::rules::demand::clock;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "NOISE002",
    name: "quiet-hours",
    area: "noise",
    worst: Signal::Notice,
    text: include_str!("quiet_hours.rs"),
    sources: &[cite::PRACTICE],
    fixes: &["move", "life"],
    check,
    #[cfg(test)]
    fires: &[
        &[("hours = [\"18:00-23:00\"]", "hours = [\"18:00-23:01\"]")],
        &[("hours = [\"18:00-23:00\"]", ""), ("kind = \"electronic\" # fan", "kind = \"medical\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("hours = [\"18:00-23:00\"]", "")],
        // On its battery at night.
        &[
            ("hours = [\"18:00-23:00\"]", ""),
            ("kind = \"electronic\" # fan", "kind = \"medical\"\nbackup = true"),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let Some(quiet) = facts.plan.site.quiet_hours.known().copied() else {
        return;
    };
    let loud = |life: bool| -> Vec<Id> {
        facts
            .plan
            .loads
            .iter()
            .filter(|load| load.may_be(LoadKind::Medical) == life)
            // Its battery carries it through the night.
            .filter(|load| !(life && load.backup == Answer::Known(true)))
            .filter(|load| {
                if load.hours.is_empty() {
                    return life;
                }
                // Two spans meet exactly when one begins inside the other.
                load.hours
                    .iter()
                    .any(|span| span.contains(quiet.from) || quiet.contains(span.from))
            })
            .map(|load| load.id.clone())
            .collect()
    };
    for (about, fix) in [(loud(false), "move"), (loud(true), "life")] {
        if !about.is_empty() {
            found.add(
                Signal::Notice,
                about,
                values([("from", clock(quiet.from)), ("to", clock(quiet.to))]),
                fix,
                values([]),
            );
        }
    }
}

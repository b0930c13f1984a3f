//! # HEALTH001 medical-load
//!
//! ## What it checks
//! Whether someone's health depends on a thing that runs from this one generator.
//!
//! ## Why it hurts
//! A portable set stops: it runs dry, trips, floods, or is switched off by someone else. A person
//! asleep on a breathing aid may not notice until too late. Switching it off to refuel is part of
//! its ordinary day.
//!
//! ## The arithmetic
//! None: one source is one source, however large.
//!
//! ## What to do
//! Bring a battery made for the device that lasts the whole night, or stay where there is utility
//! power. Ask the person's doctor or the device's supplier what it needs, how long it may be off,
//! and whether it may run from a generator at all. Keep the hospital's and host's numbers at hand.
//!
//! ## Sources
//! - A device that a life depends on has a second source: common practice, no source.

use crate::plan::{Id, LoadKind};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "HEALTH001",
    name: "medical-load",
    area: "health",
    text: include_str!("medical_load.rs"),
    sources: &[cite::PRACTICE],
    fixes: &["battery"],
    check,
    #[cfg(test)]
    fires: &[&[("kind = \"electronic\" # fan", "kind = \"medical\"")]],
    #[cfg(test)]
    spares: &[&[]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let about: Vec<Id> = facts
        .plan
        .loads
        .iter()
        .filter(|load| load.kind == LoadKind::Medical)
        .map(|load| load.id.clone())
        .collect();
    if !about.is_empty() {
        found.add(Signal::Warning, about, values([]), "battery", values([]));
    }
}

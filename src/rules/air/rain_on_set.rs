//! # AIR004 rain-on-set
//!
//! ## What it checks
//! Whether the generator stands in the open where it is wet, so that rain falls on it and into its
//! outlets.
//!
//! ## Why it hurts
//! Water in an outlet puts voltage on the frame and on wet hands. And whoever sees rain on the generator
//! carries it, running, to where it is dry: a tent, a porch, a car. Both kill.
//!
//! ## The arithmetic
//! None. Wet or unknown ground and a generator in the open are a caution. Where nobody said what it stands
//! under, rule AIR003 speaks.
//!
//! ## What to do
//! Decide before the rain what you do in it. Either stop the generator, or stand it on a dry, level place
//! under a roof that is open on all sides and well above it. A tarp on the generator or close over it is
//! not such a roof. Boxes, cord ends and plugs want the same: off the ground and under cover. Dry your hands
//! before you touch any of it.
//!
//! ## Sources
//! - American Red Cross, generator advice: dry surface, under an open structure like a canopy, not with
//!   wet hands (from a secondary copy).
//! - OSHA, portable generator advice: not in rain or wet, under a canopy if needed (from a secondary
//!   copy).
//! - Cord ends and boxes off wet ground are common practice, no source.

use crate::plan::{Answer, Ground, Stands};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "AIR004",
    name: "rain-on-set",
    area: "air",
    worst: Signal::Caution,
    text: include_str!("rain_on_set.rs"),
    sources: &[cite::RED_CROSS, cite::OSHA_RAIN, cite::PRACTICE],
    fixes: &["roof"],
    check,
    #[cfg(test)]
    fires: &[&[("stands = \"roof\"", "stands = \"open\"")]],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("stands = \"roof\"", "stands = \"open\""),
            ("ground = \"wet\"", "ground = \"damp\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let site = &facts.plan.site;
    let wet = !matches!(
        site.ground,
        Answer::Known(Ground::Dry | Ground::Damp)
    );
    // Where nobody knows or said where it stands, rule AIR003 speaks already.
    if wet && site.stands == Answer::Known(Stands::Open) {
        found.add(Signal::Caution, vec![], values([]), "roof", values([]));
    }
}

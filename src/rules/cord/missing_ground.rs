//! # CORD004 missing-ground
//!
//! ## What it checks
//! Whether the ground goes all the way: cords with too few conductors for their plug, and two-blade plugs
//! or adapters with three-hole receptacles past them.
//!
//! ## Why it hurts
//! Everything with a metal case relies on the ground. Without it a fault puts full voltage on the
//! case and nothing trips until a person touches it.
//!
//! ## The arithmetic
//! The conductors that a plug calls for, ground included: three at 120 V or 240 V, four at
//! 120/240 V. Fewer means that the ground, or worse the neutral, ends there. "I don't know" and
//! silence count as fewer. On wet, damp or unknown ground this is a danger, on dry ground a warning. Such a cord
//! is not to be used on any.
//!
//! ## What to do
//! Leave the cord or adapter out. Use a three-wire cord. Never break off a ground pin and never use
//! an adapter that drops it.
//!
//! ## Sources
//! - 29 CFR, 1910.334(a)(3): cords for grounded equipment carry a ground, and nothing may
//!   interrupt it (from a secondary copy).

use crate::plan::{Answer, Cord, Ground};
use crate::rules::prelude::*;
use crate::verdict::lifts_ground;

pub(super) const RULE: Rule = Rule {
    code: "CORD004",
    name: "missing-ground",
    area: "cord",
    worst: Signal::Danger,
    text: include_str!("missing_ground.rs"),
    sources: &[cite::OSHA_334],
    fixes: &["replace", "count"],
    check,
    #[cfg(test)]
    fires: &[
        &[("conductors = 3 # long", "conductors = 2")],
        &[("conductors = 3 # long", "conductors = \"unknown\"")],
        &[("conductors = 3 # long", "")],
        // A ground-lifting adapter.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"1-15P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-15R\"]"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("conductors = 3 # long", "conductors = 4")],
        // An adapter from four slots to one 120 V receptacle: hot, neutral and ground are enough.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\"", "shape = \"L14-30R\"\nbreaker = \"30 A\""),
            ("plug = \"L5-30P\" # long", "plug = \"L14-30P\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let signal = if facts.plan.site.ground == Answer::Known(Ground::Dry) {
        Signal::Warning
    } else {
        Signal::Danger
    };
    let plugged_in = || facts.plan.cords.iter().filter(|cord| cord.from.is_some());
    let with = |lifts: Option<bool>| -> Vec<&Cord> {
        plugged_in().filter(|cord| lifts_ground(cord) == lifts).collect()
    };
    let (broken, doubtful) = (with(Some(true)), with(None));
    for (cords, fix) in [(broken, "replace"), (doubtful, "count")] {
        if !cords.is_empty() {
            let about = cords.iter().map(|cord| cord.id.clone()).collect();
            found.add(signal, about, values([]), fix, values([]));
        }
    }
}

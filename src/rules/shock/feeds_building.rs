//! # SHOCK003 feeds-building
//!
//! ## What it checks
//! Whether someone means to feed the wiring of a house, a cabin or a vehicle hook-up's building
//! from the generator.
//!
//! ## Why it hurts
//! Power fed into a building's wiring goes out to the street through the transformer, at thousands
//! of volts, onto lines that repair crews believe dead. A cord with two plugs has live bare blades.
//! When the utility comes back, the generator can burn or burst.
//!
//! ## The arithmetic
//! None: any such connection without equipment that keeps the two supplies apart is a danger. An
//! answer of "I don't know" counts as yes. A plan that says nothing of it counts as no: whoever feeds a
//! building sets out to do so.
//!
//! ## What to do
//! Do not connect it. Plug things into the generator's own receptacles by cords. Where a building
//! must be fed, a licensed electrician installs transfer equipment first, with a permit.
//!
//! ## Sources
//! - NFPA 70 (NEC), 702.5: transfer equipment that prevents both supplies at once (from a
//!   secondary copy).

use crate::plan::Answer;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK003",
    name: "feeds-building",
    area: "shock",
    worst: Signal::Danger,
    text: include_str!("feeds_building.rs"),
    sources: &[cite::NEC_702_5],
    fixes: &["stop", "ask"],
    check,
    #[cfg(test)]
    fires: &[
        &[("feeds_building = false", "feeds_building = true")],
        &[("feeds_building = false", "feeds_building = \"unknown\"")],
    ],
    #[cfg(test)]
    spares: &[&[], &[("feeds_building = false", "")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let fix = match facts.plan.site.feeds_building {
        Answer::Known(true) => "stop",
        Answer::Unknown => "ask",
        // Nobody feeds a building without meaning to, so silence is a no.
        Answer::Known(false) | Answer::Missing => return,
    };
    found.add(Signal::Danger, vec![], values([]), fix, values([]));
}

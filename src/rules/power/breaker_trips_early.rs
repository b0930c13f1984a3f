//! # POWER004 breaker-trips-early
//!
//! ## What it checks
//! Whether a breaker has been seen to trip below its marking, or only above it.
//!
//! ## Why it hurts
//! The circuit goes dark again at the same load, in the evening or under a medical device. A
//! breaker that trips early may be worn, hot from a loose joint beside it, or warm from the
//! engine; a loose joint is how outlets burn.
//!
//! ## The arithmetic
//! The current at which it tripped takes the place of its marking in every limit past it. Its marking still
//! counts where the question is what it protects, because it may not always trip early. A current above the
//! marking changes no figure: any breaker lets more pass for a while.
//!
//! ## What to do
//! Plan with the lower of the two figures, the marking or the current at which it tripped. Open nothing: have
//! a service shop or a licensed electrician look at the generator. Stop using the outlet if it smells,
//! discolors or is too warm to touch.
//!
//! ## Sources
//! - A seen trip is that breaker's rating from then on: common practice, no source.

use crate::plan::Outlet;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "POWER004",
    name: "breaker-trips-early",
    area: "power",
    worst: Signal::Caution,
    text: include_str!("breaker_trips_early.rs"),
    sources: &[cite::PRACTICE],
    fixes: &["service", "late"],
    check,
    #[cfg(test)]
    fires: &[
        &[("breaker = \"30 A\" # twist", "breaker = \"30 A\"\ntrips_at = \"29 A\"")],
        &[("breaker = \"30 A\" # twist", "breaker = \"30 A\"\ntrips_at = \"31 A\"")],
    ],
    #[cfg(test)]
    spares: &[&[("breaker = \"30 A\" # twist", "breaker = \"30 A\"\ntrips_at = \"30 A\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let boxes = facts.plan.boxes.iter().flat_map(|it| &it.outlets);
    let outlets = facts.plan.generator.outlets.iter().chain(boxes);
    for Outlet {
        id,
        breaker,
        trips_at,
        ..
    } in outlets
    {
        if let (Some(marked), Some(trips)) = (breaker.known(), trips_at)
            && trips != marked
        {
            let fix = if trips < marked { "service" } else { "late" };
            found.add(
                Signal::Caution,
                vec![id.clone()],
                values([("marked", (*marked).into()), ("trips", (*trips).into())]),
                fix,
                values([]),
            );
        }
    }
}

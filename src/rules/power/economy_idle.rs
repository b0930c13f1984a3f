//! # POWER007 economy-idle
//!
//! ## What it checks
//! Whether a motor that needs much to start runs from an inverter generator, whose economy idle lets the
//! engine run slowly until it is asked for power.
//!
//! ## Why it hurts
//! At idle the engine needs a second or two to come up to speed. A compressor needs all of its starting
//! power at once: the generator trips, or the motor hums and gets hot without turning.
//!
//! ## The arithmetic
//! The largest starting power of a load of kind motor against the generator's running power, derated. Half
//! of it or more is a notice. "I don't know" whether it is an inverter generator counts as yes.
//!
//! ## What to do
//! Switch economy idle off before such a motor starts, and leave it off while it starts and stops by
//! itself, as a fridge does. Switch it on again for small steady loads: it saves fuel and noise.
//!
//! ## Sources
//! - That idle costs a start is common practice, no source; half of the running power as the bound too.

use crate::plan::{Answer, LoadKind};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "POWER007",
    name: "economy-idle",
    area: "power",
    worst: Signal::Notice,
    text: include_str!("economy_idle.rs"),
    sources: &[cite::PRACTICE],
    fixes: &["off"],
    check,
    #[cfg(test)]
    // 1800 W of 3600 W.
    fires: &[&[
        ("inverter = false", "inverter = true"),
        ("kind = \"electronic\" # fan", "kind = \"motor\"\nstarting = \"1800 W\""),
    ]],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("inverter = false", "inverter = true"),
            ("kind = \"electronic\" # fan", "kind = \"motor\"\nstarting = \"1799 W\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.plan.generator.inverter == Answer::Known(false) {
        return;
    }
    let needs = facts.needs();
    let largest = needs
        .iter()
        .filter(|need| need.load.may_be(LoadKind::Motor))
        // The first of equal ones.
        .rev()
        .max_by_key(|need| need.starting());
    let Some(need) = largest else { return };
    let (starting, rated) = (need.starting(), facts.supply.rated);
    if starting + starting >= rated {
        found.add(
            Signal::Notice,
            vec![need.load.id.clone()],
            values([("starting", starting.into()), ("rated", rated.into())]),
            "off",
            values([]),
        );
    }
}

//! # AIR002 no-co-alarm
//!
//! ## What it checks
//! Whether everyone sleeps with a working carbon monoxide alarm. "I don't know" and silence count
//! as no.
//!
//! ## Why it hurts
//! Distance can fail: the wind turns, a neighbour moves in, a door stays open. Carbon monoxide
//! cannot be seen or smelled, and a sleeper does not wake from it. An alarm is what wakes them.
//!
//! ## The arithmetic
//! None. An alarm sounds well before the levels that kill: above 150 to 200 ppm people pass out.
//!
//! ## What to do
//! Put a battery-powered carbon monoxide alarm in every tent and camper where people sleep, press its
//! test button each evening, and agree what to do: everybody out into fresh air, engine off from
//! outside if you can reach it, then call for help. A smoke alarm does not do this.
//!
//! ## Sources
//! - US CPSC, carbon monoxide levels: effects by ppm (from a secondary copy).
//! - An alarm in every place where people sleep is common practice, no source.

use crate::plan::Answer;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "AIR002",
    name: "no-co-alarm",
    area: "air",
    text: include_str!("no_co_alarm.rs"),
    sources: &[cite::CPSC_LEVELS, cite::PRACTICE],
    fixes: &["alarm"],
    check,
    #[cfg(test)]
    fires: &[
        &[("co_alarm = true", "co_alarm = false")],
        &[("co_alarm = true", "co_alarm = \"unknown\"")],
        &[("co_alarm = true", "")],
    ],
    #[cfg(test)]
    spares: &[&[]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.plan.site.co_alarm != Answer::Known(true) {
        found.add(Signal::Warning, vec![], values([]), "alarm", values([]));
    }
}

//! # AIR002 no-co-alarm
//!
//! ## What it checks
//! Whether everyone sleeps with a working carbon monoxide alarm. "I don't know" and silence count
//! as no. Where the plan says that nobody sleeps here, nothing is found.
//!
//! ## Why it hurts
//! Distance can fail: the wind turns, a neighbor moves in, a door stays open. Carbon monoxide cannot be
//! seen or smelled, and people who sleep do not wake from it. An alarm is what wakes them.
//!
//! ## The arithmetic
//! None. An alarm is not quick at every level: it must sound within 60 to 240 minutes at 70 ppm, 10 to
//! 50 minutes at 150 ppm, and 4 to 15 minutes at 400 ppm. Above 150 to 200 ppm people pass out. So it
//! is the last help, not the first: distance is.
//!
//! ## What to do
//! Put a battery-powered carbon monoxide alarm in every tent and camper where people sleep, press its
//! test button each evening, and agree what to do: everybody out into fresh air, then call 911; engine
//! off only if you need not breathe its exhaust. The same when anyone is dizzy, sick, weak or has a
//! headache, alarm or not: one person is enough. A smoke alarm does not do this.
//!
//! ## Sources
//! - US CPSC, carbon monoxide levels: effects by ppm (from a secondary copy).
//! - UL 2034, alarm times by level (from a secondary copy).
//! - An alarm in every place where people sleep is common practice, no source.

use crate::plan::Answer;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "AIR002",
    name: "no-co-alarm",
    area: "air",
    worst: Signal::Warning,
    text: include_str!("no_co_alarm.rs"),
    sources: &[cite::CPSC_LEVELS, cite::UL_2034, cite::PRACTICE],
    fixes: &["alarm", "look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("co_alarm = true", "co_alarm = false")],
        &[("co_alarm = true", "co_alarm = \"unknown\"")],
        &[("co_alarm = true", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // Nobody sleeps here.
        &[
            ("co_alarm = true", ""),
            ("stands = \"roof\"", "stands = \"roof\"\npeople_sleep = false"),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if !facts.plan.site.sleeps() {
        return;
    }
    let fix = match facts.plan.site.co_alarm {
        Answer::Known(true) => return,
        Answer::Known(false) => "alarm",
        Answer::Unknown | Answer::Missing => "look",
    };
    found.add(Signal::Warning, vec![], values([]), fix, values([]));
}

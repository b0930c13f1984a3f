//! # AIR003 no-free-air
//!
//! ## What it checks
//! Whether the generator runs in, under or against something: a tent, porch, vehicle, trailer, shed,
//! garage or box; a tarp, cover or awning; a wall.
//!
//! ## Why it hurts
//! Exhaust gathers in whatever is closed on some side, an open door or not, and seeps from there into where
//! people are. A tarp on a running generator also keeps its heat in, melts on the muffler and burns. Of 228
//! deaths by carbon monoxide of generators from 1990 to 2003, nearly 70 % were at a home, often with the
//! generator in a basement, a crawlspace, a garage or an enclosed carport.
//!
//! ## The arithmetic
//! None. In something is a danger, whatever the distance, and so is under a tarp, cover or awning or
//! close to a wall. "I don't know" and silence count as that, and the finding says that it is not
//! known. Clear on every side is 4 ft, the larger of the published 3 to 4 ft.
//!
//! ## What to do
//! Where it runs in something: everybody out, and nobody goes in again, not even to stop it. From outside, call
//! the fire department, 911, and let them turn it off. Whoever walks into a shed or a van that an engine has
//! filled with gas goes down too. Where it is only covered, or close to something, stop the engine. Stand the generator in the
//! open when it is cool: nothing over it, or only a roof on posts well above it, and 4 ft clear on all
//! sides. Then measure again how far people are.
//!
//! ## Sources
//! - FEMA, clear space of 3 to 4 ft all round, 2011 (confirmed).
//! - US CPSC, generator advice, 2020-07-24: never inside a home, garage, shed or the like, doors open
//!   or not (from a secondary copy).
//! - NC DHHS, carbon monoxide advice: names the camper (confirmed).
//! - US CPSC, portable generator deaths, release, 2004-05-20: where they stood (confirmed).
//! - That a tarp burns on a muffler is common practice, no source. So is that nobody goes into gas to
//!   stop an engine.

use crate::plan::{Answer, Stands};
use crate::rules::prelude::*;
use crate::tables::exhaust::CLEAR;

pub(super) const RULE: Rule = Rule {
    code: "AIR003",
    name: "no-free-air",
    area: "air",
    worst: Signal::Danger,
    text: include_str!("no_free_air.rs"),
    sources: &[
        cite::FEMA_2011,
        cite::CPSC_DISTANCE,
        cite::NC_DHHS,
        cite::CPSC_2004,
        cite::PRACTICE,
    ],
    fixes: &["out", "uncover", "look", "choose"],
    check,
    #[cfg(test)]
    fires: &[
        &[("stands = \"roof\"", "stands = \"enclosed\"")],
        &[("stands = \"roof\"", "stands = \"covered\"")],
        &[("stands = \"roof\"", "stands = \"unknown\"")],
        &[("stands = \"roof\"", "")],
    ],
    #[cfg(test)]
    spares: &[&[], &[("stands = \"roof\"", "stands = \"open\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let (signal, fix) = match facts.plan.site.stands {
        Answer::Known(Stands::Open | Stands::Roof) => return,
        Answer::Known(Stands::Enclosed) => (Signal::Danger, "out"),
        Answer::Known(Stands::Covered) => (Signal::Danger, "uncover"),
        Answer::Unknown => (Signal::Danger, "look"),
        // Nobody said: a set in a tent looks the same in a plan as one in the open.
        Answer::Missing => (Signal::Danger, "choose"),
    };
    found.add(
        signal,
        vec![],
        values([("clear", CLEAR.into())]),
        fix,
        values([]),
    );
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::signals;

    /// CPSC and FEMA: outdoors only. No distance from people makes up for a roof with walls.
    #[test]
    fn far_from_people_an_enclosed_set_is_still_a_danger() {
        for (stands, signal) in [
            ("enclosed", Some(Signal::Danger)),
            ("covered", Some(Signal::Danger)),
            ("unknown", Some(Signal::Danger)),
            ("", Some(Signal::Danger)),
            ("roof", None),
            ("open", None),
        ] {
            // Left out where nothing is said.
            let stands = match stands {
                "" => String::new(),
                stands => format!("stands = \"{stands}\""),
            };
            let edits = [
                ("stands = \"roof\"", stands.as_str()),
                ("sleepers_at = \"60 ft\"", "sleepers_at = \"900 ft\""),
            ];
            assert_eq!(signals("AIR003", &edits).first().copied(), signal, "{stands}");
        }
    }
}

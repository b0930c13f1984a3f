//! # AIR001 carbon-monoxide-distance
//!
//! ## What it checks
//! How far the generator stands from the nearest tent, vehicle or building with people in it. Neighbors'
//! tents and vehicles count too. If nobody has measured the distance, we count it as too near.
//!
//! ## Why it hurts
//! Engine exhaust holds carbon monoxide, which cannot be seen or smelled. It gathers in tents, campers and
//! rooms, and people who sleep do not wake up. Above 70 ppm it brings headache; above 150 to 200 ppm
//! unconsciousness and death.
//!
//! ## The arithmetic
//! Distance as given, against two bounds. Under 20 ft (6.096 m) is a danger: it is below the
//! least distance that agencies publish. Under 25 ft (7.62 m) is a caution: wind and exhaust
//! direction can undo a bare 20 ft, and one study put the distance at up to 25 ft. No distance
//! allows for running an engine indoors, in a porch or under an awning.
//!
//! ## What to do
//! Stop the engine, let it cool, and move it farther away, outdoors, exhaust pointing away from
//! people. Where it is in something closed, or nobody knows that it is not, nobody goes in to stop it:
//! see rule AIR003. Use a longer cord of the right thickness. Measure from the exhaust to the nearest
//! door, window or vent: count each step as 2 ft. If you are not sure, count fewer feet, not more.
//!
//! ## Sources
//! - US CPSC, generator advice, 2020-07-24: at least 20 ft (from a secondary copy).
//! - NC DHHS, carbon monoxide advice: 20 ft from doors, windows and vents; names the camper
//!   (confirmed).
//! - NIST, Emmerich and Wang, 2011: more than 4.6 m with the exhaust pointed away (confirmed).
//! - NIST, portable generators and carbon monoxide, 2021: at least 25 ft (confirmed).
//! - US CPSC, carbon monoxide levels: effects by ppm (from a secondary copy).

use crate::plan::{Answer, Stands};
use crate::rules::prelude::*;
use crate::tables::exhaust::{AMPLE, LEAST};

pub(super) const RULE: Rule = Rule {
    code: "AIR001",
    name: "carbon-monoxide-distance",
    area: "air",
    worst: Signal::Danger,
    text: include_str!("carbon_monoxide_distance.rs"),
    sources: &[
        cite::CPSC_DISTANCE,
        cite::NC_DHHS,
        cite::NIST_2011,
        cite::NIST_2021,
        cite::CPSC_LEVELS,
    ],
    fixes: &["move", "closed", "farther", "measure"],
    check,
    #[cfg(test)]
    fires: &[
        &[("sleepers_at = \"60 ft\"", "sleepers_at = \"19.9 ft\"")],
        &[
            ("sleepers_at = \"60 ft\"", "sleepers_at = \"19.9 ft\""),
            ("stands = \"roof\"", "stands = \"enclosed\""),
        ],
        &[("sleepers_at = \"60 ft\"", "sleepers_at = \"24.9 ft\"")],
        &[("sleepers_at = \"60 ft\"", "sleepers_at = \"unknown\"")],
        &[("sleepers_at = \"60 ft\"", "")],
    ],
    #[cfg(test)]
    spares: &[&[("sleepers_at = \"60 ft\"", "sleepers_at = \"25 ft\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let bounds = [("least", LEAST.into()), ("ample", AMPLE.into())];
    match facts.plan.site.sleepers_at {
        Answer::Known(at) if at >= AMPLE => {}
        Answer::Known(at) => {
            let (signal, fix) = if at < LEAST {
                // Nobody goes into what is closed to stop an engine, or into what may be.
                let fix = match facts.plan.site.stands {
                    Answer::Known(Stands::Open | Stands::Roof | Stands::Covered) => "move",
                    Answer::Known(Stands::Enclosed) | Answer::Unknown | Answer::Missing => "closed",
                };
                (Signal::Danger, fix)
            } else {
                (Signal::Caution, "farther")
            };
            let mut shown = values(bounds);
            shown.insert("distance", at.into());
            found.add(signal, vec![], shown, fix, values([]));
        }
        Answer::Unknown | Answer::Missing => {
            let mut shown = values(bounds);
            shown.insert("distance", Value::Word { word: "not-known" });
            found.add(Signal::Danger, vec![], shown, "measure", values([]));
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::{findings, signals};

    /// An engine that runs in a shed or van has filled it with gas. The English words as they stand.
    #[test]
    fn nobody_goes_in_to_stop_it() {
        let words = crate::words::Words::english();
        let near = ("sleepers_at = \"60 ft\"", "sleepers_at = \"12 ft\"");
        for (stands, closed) in [
            ("stands = \"open\"", false),
            ("stands = \"roof\"", false),
            ("stands = \"covered\"", false),
            ("stands = \"enclosed\"", true),
            ("stands = \"unknown\"", true),
            ("", true),
        ] {
            let found = findings(&[near, ("stands = \"roof\"", stands)]);
            let fix = |code: &str| {
                let found = found.iter().find(|it| it.code == code)?;
                Some(words.finding(found, &[]).fix)
            };
            let distance = fix("AIR001").expect("too near");
            assert_eq!(distance.contains("Stop the engine"), !closed, "{stands}: {distance}");
            assert_eq!(distance.contains("911"), closed, "{stands}: {distance}");
            if stands.contains("enclosed") {
                let out = fix("AIR003").expect("in something");
                assert!(!out.contains("Stop the engine") && out.contains("911"), "{out}");
            }
        }
    }

    /// The bounds are those of CPSC (2020) and NIST (2021), 20 ft and 25 ft.
    #[test]
    fn danger_below_twenty_feet_and_caution_below_twenty_five() {
        for (distance, signal) in [
            ("5.9 m", Some(Signal::Danger)),
            ("20 ft", Some(Signal::Caution)),
            ("25 ft", None),
        ] {
            let edit = format!("sleepers_at = \"{distance}\"");
            assert_eq!(
                signals("AIR001", &[("sleepers_at = \"60 ft\"", &edit)]).first().copied(),
                signal,
                "{distance}"
            );
        }
    }
}

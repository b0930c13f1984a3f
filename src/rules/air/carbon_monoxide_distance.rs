#![doc = include_str!("../../../i18n/en/explain/AIR001.md")]

use crate::plan::{Answer, Stands};
use crate::rules::prelude::*;
use crate::tables::exhaust::{AMPLE, LEAST};

pub(super) const RULE: Rule = Rule {
    code: "AIR001",
    name: "carbon-monoxide-distance",
    area: "air",
    worst: Signal::Danger,
    sources: &[cite::CPSC_DISTANCE, cite::NC_DHHS, cite::NIST_2011, cite::NIST_2021, cite::CPSC_LEVELS],
    fixes: &["move", "closed", "farther", "measure"],
    check,
    #[cfg(test)]
    fires: &[
        &[("sleepers_at = \"60 ft\"", "sleepers_at = \"19.9 ft\"")],
        &[("sleepers_at = \"60 ft\"", "sleepers_at = \"19.9 ft\""), ("stands = \"roof\"", "stands = \"enclosed\"")],
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
                // Nobody may enter an enclosed space, or one that may be enclosed, to stop an engine.
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

    /// An engine that runs in a shed or van has filled it with gas. Checked against the English words.
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
        for (distance, signal) in [("5.9 m", Some(Signal::Danger)), ("20 ft", Some(Signal::Caution)), ("25 ft", None)] {
            let edit = format!("sleepers_at = \"{distance}\"");
            assert_eq!(signals("AIR001", &[("sleepers_at = \"60 ft\"", &edit)]).first().copied(), signal, "{distance}");
        }
    }
}

//! # HEALTH001 medical-load
//!
//! ## What it checks
//! Whether someone's health depends on a thing that runs from this one generator.
//!
//! ## Why it hurts
//! A portable set stops: it runs dry, trips, floods, or is switched off by someone else. A person
//! asleep on a breathing aid may not notice until too late. Switching it off to refuel is part of
//! its ordinary day.
//!
//! ## The arithmetic
//! None: one source is one source, however large. A device whose plan says that a battery made for it
//! takes over for the night is a notice, and nothing tells anybody to get one. "I don't know" and silence
//! count as none: a warning. So is a thing of which nobody knows what it does. A wheelchair is such a
//! device: whoever sits in it goes nowhere without it. A plan does not say which device is for oxygen, so
//! each finding tells how far that stays from flames: 10 ft (3.048 m). Some suppliers say 15 ft.
//!
//! ## What to do
//! Bring a battery made for the device that lasts the whole night, or stay where there is utility
//! power. Ask the person's doctor or the device's supplier what it needs, how long it may be off,
//! and whether it may run from a generator at all. Keep the hospital's and host's numbers at hand.
//! Oxygen is prescribed: its flow is never changed, in an outage the supplier's reserve takes over,
//! nobody smokes and no flame or heater comes within 10 ft of it, and suppliers want no extension cord, without which this set cannot stand
//! far enough away: only the supplier can say what goes first.
//!
//! ## Sources
//! - Suppliers of home oxygen, advice to patients (from a secondary copy).
//! - A device that a life depends on has a second source: common practice, no source.

use crate::plan::{Answer, Id, LoadKind};
use crate::quantity::Length;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "HEALTH001",
    name: "medical-load",
    area: "health",
    worst: Signal::Warning,
    text: include_str!("medical_load.rs"),
    sources: &[cite::OXYGEN, cite::PRACTICE],
    fixes: &["battery", "charged", "find-out"],
    check,
    #[cfg(test)]
    fires: &[
        &[("kind = \"electronic\" # fan", "kind = \"medical\"")],
        &[(
            "kind = \"electronic\" # fan",
            "kind = \"medical\"\nbackup = true",
        )],
        &[("kind = \"electronic\" # fan", "kind = \"unknown\"")],
    ],
    #[cfg(test)]
    spares: &[&[]],
};

/// As near as a flame may come to oxygen: 10 ft, as suppliers of home oxygen tell their patients (from a
/// secondary copy).
const FLAMES: Length = Length::from_millimetres(3_048);

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let medical = |backed: bool, known: bool| -> Vec<Id> {
        facts
            .plan
            .loads
            .iter()
            .filter(|load| load.may_be(LoadKind::Medical) && load.kind.is_known() == known)
            .filter(|load| (load.backup == Answer::Known(true)) == backed)
            .map(|load| load.id.clone())
            .collect()
    };
    for (about, signal, fix) in [
        (medical(false, true), Signal::Warning, "battery"),
        (medical(false, false), Signal::Warning, "find-out"),
        (medical(true, true), Signal::Notice, "charged"),
    ] {
        if !about.is_empty() {
            let flames = values([("flames", FLAMES.into())]);
            found.add(signal, about, flames, fix, values([]));
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::signals;

    #[test]
    fn what_nobody_knows_of_a_battery_is_none() {
        for (backup, signal) in [
            ("", Signal::Warning),
            ("backup = \"unknown\"", Signal::Warning),
            ("backup = false", Signal::Warning),
            ("backup = true", Signal::Notice),
        ] {
            let kind = format!("kind = \"medical\"\n{backup}");
            let edits = [("kind = \"electronic\" # fan", kind.as_str())];
            assert_eq!(signals("HEALTH001", &edits), [signal], "{backup}");
        }
    }
}

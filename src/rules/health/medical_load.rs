#![doc = include_str!("../../../i18n/en/explain/HEALTH001.md")]

use crate::plan::{Answer, Id, LoadKind};
use crate::quantity::Length;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "HEALTH001",
    name: "medical-load",
    area: "health",
    worst: Signal::Warning,
    sources: &[cite::OXYGEN, cite::PRACTICE],
    fixes: &["battery", "charged", "find-out"],
    check,
    #[cfg(test)]
    fires: &[
        &[("kind = \"electronic\" # fan", "kind = \"medical\"")],
        &[("kind = \"electronic\" # fan", "kind = \"medical\"\nbackup = true")],
        &[("kind = \"electronic\" # fan", "kind = \"unknown\"")],
        &[("kind = \"electronic\" # fan", "kind = \"unknown\"\nbackup = true")],
    ],
    #[cfg(test)]
    spares: &[&[]],
};

/// The distance to keep flames from oxygen: 10 ft, as suppliers of home oxygen tell their patients (from a secondary
/// copy).
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
        (medical(true, true), Signal::Caution, "charged"),
        (medical(true, false), Signal::Caution, "find-out"),
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
    use crate::rules::testing::{findings, signals};
    use crate::words::Words;

    /// Returns what each finding in the plan says, in the English words.
    fn said(edits: &[(&str, &str)]) -> Vec<String> {
        let words = Words::english();
        findings(edits)
            .iter()
            .map(|finding| words.finding(finding, &[]))
            .map(|text| format!("{} {} {}", text.title, text.why, text.fix))
            .collect()
    }

    /// At the generator's own outlet, all day and all night, on a single short cord.
    const HARD: [(&str, &str); 2] = [("hours = [\"18:00-23:00\"]", ""), ("on = \"right\" # fan", "on = \"front\"")];

    #[test]
    fn who_has_a_battery_is_told_nowhere_to_get_one() {
        for hours in ["", "hours = [\"22:00-06:00\"]"] {
            for (backup, told) in [("true", false), ("false", true), ("\"unknown\"", true)] {
                let kind = format!("kind = \"medical\"\nbackup = {backup}");
                let edits = [(HARD[0].0, hours), HARD[1], ("kind = \"electronic\" # fan", kind.as_str())];
                let get = said(&edits).iter().any(|text| {
                    let text = text.replace("Put a battery carbon monoxide alarm", "");
                    let get = ["Bring a battery", "or a battery made", "about a battery", "on a battery made"];
                    get.iter().any(|get| text.contains(get))
                });
                assert_eq!(get, told, "{backup} {hours}: {:#?}", said(&edits));
            }
        }
    }

    /// 10 ft, as suppliers tell their patients (from a secondary copy).
    #[test]
    fn how_far_oxygen_stays_from_flames_is_told_where_it_is_used() {
        for kind in ["\"medical\"", "\"medical\"\nbackup = true", "\"unknown\"", "\"unknown\"\nbackup = true"] {
            let kind = format!("kind = {kind}");
            let said = said(&[("kind = \"electronic\" # fan", kind.as_str())]);
            let flames = |text: &&String| text.contains("flame") && text.contains("10\u{a0}ft");
            assert_eq!(said.iter().filter(flames).count(), 1, "{kind}: {said:#?}");
        }
        let flames = |text: &String| text.contains("oxygen");
        assert!(!said(&[]).iter().any(flames));
    }

    #[test]
    fn what_nobody_knows_of_a_battery_is_none() {
        for (backup, signal) in [
            ("", Signal::Warning),
            ("backup = \"unknown\"", Signal::Warning),
            ("backup = false", Signal::Warning),
            ("backup = true", Signal::Caution),
        ] {
            for kind in ["medical", "unknown"] {
                let kind = format!("kind = \"{kind}\"\n{backup}");
                let edits = [("kind = \"electronic\" # fan", kind.as_str())];
                assert_eq!(signals("HEALTH001", &edits), [signal], "{kind}");
            }
        }
    }
}

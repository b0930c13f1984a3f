#![doc = include_str!("../../../i18n/en/explain/AIR003.md")]

use crate::plan::{Answer, Stands};
use crate::rules::prelude::*;
use crate::tables::exhaust::CLEAR;

pub(super) const RULE: Rule = Rule {
    code: "AIR003",
    name: "no-free-air",
    area: "air",
    worst: Signal::Danger,
    sources: &[cite::FEMA_2011, cite::CPSC_DISTANCE, cite::NC_DHHS, cite::CPSC_2004, cite::PRACTICE],
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
        // With no answer, a generator in a tent looks the same in a plan as one in the open.
        Answer::Missing => (Signal::Danger, "choose"),
    };
    found.add(signal, vec![], values([("clear", CLEAR.into())]), fix, values([]));
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
            // Leave the field out.
            let stands = match stands {
                "" => String::new(),
                stands => format!("stands = \"{stands}\""),
            };
            let edits =
                [("stands = \"roof\"", stands.as_str()), ("sleepers_at = \"60 ft\"", "sleepers_at = \"900 ft\"")];
            assert_eq!(signals("AIR003", &edits).first().copied(), signal, "{stands}");
        }
    }
}

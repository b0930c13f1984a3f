#![doc = include_str!("../../../i18n/en/explain/HEALTH002.md")]

use crate::plan::{Answer, Id, LoadKind, Span};
use crate::rules::demand::{Need, clock};
use crate::rules::night::{AtNight, how_known, night};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "HEALTH002",
    name: "heat-while-asleep",
    area: "health",
    worst: Signal::Warning,
    sources: &[cite::CPSC_HEATERS, cite::NFPA_USFA_HEATERS],
    fixes: &["off", "cook", "when"],
    check,
    #[cfg(test)]
    fires: &[
        &[("hours = [\"18:30-19:00\"]", "hours = [\"22:00-24:00\"]")],
        &[
            ("hours = [\"18:30-19:00\"]", "hours = [\"22:00-24:00\"]"),
            ("kind = \"heater\" # kettle", "kind = \"cooker\""),
        ],
        &[("hours = [\"18:30-19:00\"]", ""), ("continuous = false # kettle", "continuous = true")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // One minute less than an hour of the night, which begins at 23:00.
        &[("hours = [\"18:30-19:00\"]", "hours = [\"22:00-23:59\"]")],
        // At any time, and for less than three hours.
        &[("hours = [\"18:30-19:00\"]", "")],
        // A waffle iron, with neither its hours nor its running time known.
        &[
            ("hours = [\"18:30-19:00\"]", ""),
            ("continuous = false # kettle", "continuous = \"unknown\""),
            ("kind = \"heater\" # kettle", "kind = \"cooker\""),
        ],
        // Nobody sleeps here.
        &[
            ("hours = [\"18:30-19:00\"]", "hours = [\"22:00-24:00\"]"),
            ("stands = \"roof\"", "stands = \"roof\"\npeople_sleep = false"),
        ],
        // Not a heater.
        &[("hours = [\"18:00-23:00\"]", "hours = [\"18:00-06:00\"]")],
    ],
};

/// More minutes of the night than an early riser needs.
const LONG: u16 = 60;

/// Returns the key of the remedy for a load that makes heat at night, or may; `None` for any other.
fn hot_at_night(need: &Need<'_>, night: Span) -> Option<&'static str> {
    if !need.load.may_heat() {
        return None;
    }
    match need.at_night(night) {
        AtNight::Runs(minutes) if minutes >= LONG => {
            let cooks = need.load.kind == Answer::Known(LoadKind::Cooker);
            Some(if cooks { "cook" } else { "off" })
        }
        AtNight::May => Some("when"),
        AtNight::Runs(_) | AtNight::Not => None,
    }
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let site = &facts.plan.site;
    let Some(night) = night(site) else {
        return;
    };
    for fix in ["off", "cook", "when"] {
        let mut about: Vec<Id> = facts
            .needs()
            .iter()
            .filter(|need| hot_at_night(need, night) == Some(fix))
            .map(|need| need.load.id.clone())
            .collect();
        // Several alike come one after the other.
        about.dedup();
        if !about.is_empty() {
            found.add(
                Signal::Warning,
                about,
                values([("from", clock(night.from)), ("to", clock(night.to)), ("night", how_known(site))]),
                fix,
                values([]),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::signals;

    const HOURS: &str = "hours = [\"18:30-19:00\"]";
    const QUIET: &str = "quiet_hours = \"23:00-07:00\"";

    #[test]
    fn what_nobody_knows_is_the_night() {
        // Whether it runs for long.
        for unknown in ["", "continuous = \"unknown\""] {
            let edits = [(HOURS, ""), ("continuous = false # kettle", unknown)];
            assert_eq!(signals("HEALTH002", &edits), [Signal::Warning], "{unknown}");
        }
        // When the camp sleeps: from 22:00 to 06:00.
        for quiet in ["", "quiet_hours = \"unknown\""] {
            for (hours, found) in [
                ("hours = [\"22:00-23:00\"]", 1),
                ("hours = [\"21:00-22:59\"]", 0),
                ("hours = [\"05:00-09:00\"]", 1),
                ("hours = [\"06:00-09:00\"]", 0),
            ] {
                let edits = [(QUIET, quiet), (HOURS, hours)];
                assert_eq!(signals("HEALTH002", &edits).len(), found, "{hours} {quiet}");
            }
        }
    }

    #[test]
    fn several_alike_are_named_once_and_their_hours_add_up() {
        let edits = [(HOURS, "count = 3\nhours = [\"01:00-01:30\", \"03:00-03:30\"]")];
        let found = crate::rules::testing::findings(&edits);
        let found: Vec<_> = found.iter().filter(|it| it.code == "HEALTH002").collect();
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].about.len(), 1);
    }
}

#![doc = include_str!("../../../i18n/en/explain/AIR006.md")]

use crate::plan::{Answer, Id, LoadKind, Site, Stands};
use crate::rules::demand::{Need, clock, ids};
use crate::rules::night::{AtNight, night};
use crate::rules::prelude::*;
use crate::tables::exhaust::AMPLE;

pub(super) const RULE: Rule = Rule {
    code: "AIR006",
    name: "runs-while-asleep",
    area: "air",
    worst: Signal::Warning,
    sources: &[cite::CPSC_LEVELS, cite::CPSC_DISTANCE, cite::NIST_2021, cite::PRACTICE],
    fixes: &["by-day", "life-by-day", "life-charged", "when"],
    check,
    #[cfg(test)]
    fires: &[
        // One minute of the night, which begins at 23:00, and no alarm.
        &[("hours = [\"18:00-23:00\"]", "hours = [\"18:00-23:01\"]"), ("co_alarm = true", "co_alarm = false")],
        // Otherwise in good order.
        &[("hours = [\"18:00-23:00\"]", "hours = [\"18:00-23:01\"]")],
        &[("hours = [\"18:00-23:00\"]", "")],
        &[("hours = [\"18:00-23:00\"]", ""), ("kind = \"electronic\" # fan", "kind = \"medical\"")],
        // Its battery could carry it, but the plan has it on the generator.
        &[
            ("hours = [\"18:00-23:00\"]", "hours = [\"22:00-06:00\"]"),
            ("kind = \"electronic\" # fan", "kind = \"medical\"\nbackup = true"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        // Until the night begins.
        &[],
        // It can run by day.
        &[("hours = [\"18:00-23:00\"]", ""), ("continuous = true # fan", "continuous = false")],
        // Its battery carries it, and the plan does not put it on the generator.
        &[("hours = [\"18:00-23:00\"]", ""), ("kind = \"electronic\" # fan", "kind = \"medical\"\nbackup = true")],
        // Nobody sleeps here.
        &[
            ("hours = [\"18:00-23:00\"]", "hours = [\"18:00-06:00\"]"),
            ("stands = \"roof\"", "stands = \"roof\"\npeople_sleep = false"),
        ],
    ],
};

/// Whether everything that makes it no worse than a caution is known to be in place.
fn kept(site: &Site) -> bool {
    let open = matches!(site.stands, Answer::Known(Stands::Open | Stands::Roof));
    let far = site.sleepers_at.known().is_some_and(|at| *at >= AMPLE);
    open && far && site.co_alarm == Answer::Known(true)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let site = &facts.plan.site;
    let Some(night) = night(site) else {
        return;
    };
    let needs = facts.needs();
    let (mut runs, mut may): (Vec<Need<'_>>, Vec<Need<'_>>) = (Vec::new(), Vec::new());
    for need in needs {
        match need.generator_at_night(night) {
            AtNight::Not => {}
            AtNight::Runs(_) => runs.push(need),
            AtNight::May => may.push(need),
        }
    }
    // One engine runs for all of them, so the certain loads are reported.
    let life: Vec<Need<'_>> =
        runs.iter().filter(|need| need.load.kind == Answer::Known(LoadKind::Medical)).copied().collect();
    // If every medical load has a battery, the remedy is to use it; otherwise it is to get one.
    let (charged, bare): (Vec<Need<'_>>, Vec<Need<'_>>) =
        life.iter().copied().partition(|need| need.load.backup == Answer::Known(true));
    let (about, fix): (Vec<Id>, _) = match (runs.is_empty(), life.is_empty(), bare.is_empty()) {
        (false, true, _) => (ids(&runs), "by-day"),
        (false, false, false) => (ids(&runs), "life-by-day"),
        (false, false, true) => (ids(&runs), "life-charged"),
        (true, ..) if may.is_empty() => return,
        (true, ..) => (ids(&may), "when"),
    };
    let life = if bare.is_empty() { charged } else { bare };
    let signal = if kept(site) { Signal::Caution } else { Signal::Warning };
    found.add(
        signal,
        about,
        values([
            ("from", clock(night.from)),
            ("to", clock(night.to)),
            ("night", crate::rules::night::how_known(site)),
            ("ample", AMPLE.into()),
        ]),
        fix,
        values([("life", Value::Parts(ids(&life)))]),
    );
}

#[cfg(test)]
mod tests {
    use crate::plan::Id;
    use crate::report::Signal;
    use crate::rules::testing::{findings, signals};

    const HOURS: (&str, &str) = ("hours = [\"18:00-23:00\"]", "hours = [\"18:00-06:00\"]");

    /// In the open, 25 ft or more from people, with an alarm where they sleep, it is a caution. Without any of these,
    /// or with any of them unknown, it is a warning.
    #[test]
    fn a_caution_at_best() {
        let roof = "stands = \"roof\"";
        let far = "sleepers_at = \"60 ft\"";
        let alarm = "co_alarm = true";
        for (edit, signal) in [
            ((roof, "stands = \"open\""), Signal::Caution),
            ((far, "sleepers_at = \"25 ft\""), Signal::Caution),
            ((far, "sleepers_at = \"24.9 ft\""), Signal::Warning),
            ((far, "sleepers_at = \"unknown\""), Signal::Warning),
            ((far, ""), Signal::Warning),
            ((roof, "stands = \"covered\""), Signal::Warning),
            ((roof, "stands = \"enclosed\""), Signal::Warning),
            ((roof, "stands = \"unknown\""), Signal::Warning),
            ((roof, ""), Signal::Warning),
            ((alarm, "co_alarm = false"), Signal::Warning),
            ((alarm, "co_alarm = \"unknown\""), Signal::Warning),
            ((alarm, ""), Signal::Warning),
        ] {
            assert_eq!(signals("AIR006", &[HOURS, edit]), [signal], "{edit:?}");
        }
        assert_eq!(signals("AIR006", &[HOURS]), [Signal::Caution]);
    }

    /// An unknown alarm makes the finding graver, but not a guess: the generator does run.
    #[test]
    fn that_it_runs_is_no_guess_where_the_alarm_is_one() {
        let words = crate::words::Words::english();
        let found = findings(&[HOURS, ("co_alarm = true", "co_alarm = \"unknown\"")]);
        let found = found.iter().find(|it| it.code == "AIR006").expect("found");
        assert!(!found.rests_on.is_empty());
        let said = words.finding(found, &[]);
        assert!(said.title.starts_with("The generator"), "{}", said.title);
        assert_eq!(said.look.len(), 1);
    }

    /// If nobody knows when the camp sleeps, the usual night applies, and the words say so.
    #[test]
    fn an_unknown_night_is_the_usual_one() {
        let quiet = "quiet_hours = \"23:00-07:00\"";
        for unknown in ["", "quiet_hours = \"unknown\""] {
            for (hours, count) in [("18:00-22:00", 0), ("18:00-22:01", 1), ("05:59-06:30", 1), ("06:00-06:30", 0)] {
                let hours = format!("hours = [\"{hours}\"]");
                let edits = [(quiet, unknown), (HOURS.0, hours.as_str())];
                assert_eq!(signals("AIR006", &edits).len(), count, "{hours}");
            }
        }
        let words = crate::words::Words::english();
        let said = |edits: &[(&str, &str)]| {
            let found = findings(edits);
            let found = found.iter().find(|it| it.code == "AIR006").expect("found");
            words.finding(found, &[]).why
        };
        assert!(said(&[HOURS, (quiet, "")]).contains("so we assumed"));
        assert!(!said(&[HOURS]).contains("assumed"));
    }

    /// A cooker counts as running at night only if the plan gives such hours: nobody cooks in their sleep.
    #[test]
    fn what_is_cooked_with_is_not_taken_to_run_at_night() {
        const COOKING: &str = "hours = [\"18:30-19:00\"]";
        for (kind, continuous, count) in [
            ("cooker", "true", 0),
            ("cooker", "\"unknown\"", 0),
            ("heater", "\"unknown\"", 1),
            ("heater", "false", 0),
            // It may be medical.
            ("unknown", "false", 1),
        ] {
            let kind = format!("kind = \"{kind}\"");
            let continuous = format!("continuous = {continuous}");
            let edits = [
                ("kind = \"heater\" # kettle", kind.as_str()),
                ("continuous = false # kettle", continuous.as_str()),
                (COOKING, ""),
            ];
            assert_eq!(signals("AIR006", &edits).len(), count, "{kind} {continuous}");
        }
        let early = [("kind = \"heater\" # kettle", "kind = \"cooker\""), (COOKING, "hours = [\"06:30-07:30\"]")];
        assert_eq!(signals("AIR006", &early), [Signal::Caution]);
    }

    /// The rules on sleep, heat and quiet hours word the alternative to running at night alike.
    #[test]
    fn what_to_do_instead_is_said_alike() {
        let report = crate::rules::testing::report;
        let fix = |edits: &[(&str, &str)], code: &str| {
            let report = report(edits);
            let found = report.findings.iter().find(|it| it.code == code).expect(code);
            crate::words::Words::english().finding(found, &report.figures.loads).fix
        };
        let first = |text: String| text.split_inclusive(". ").next().map(|it| it.trim().to_owned());
        let late = [("hours = [\"18:00-23:00\"]", "hours = [\"22:00-23:30\"]")];
        assert_eq!(first(fix(&late, "AIR006")), first(fix(&late, "NOISE002")));
        let whenever = [("hours = [\"18:30-19:00\"]", ""), ("continuous = false # kettle", "continuous = true")];
        assert_eq!(first(fix(&whenever, "AIR006")), first(fix(&whenever, "HEALTH002")));
        let medical = ("kind = \"electronic\" # fan", "kind = \"medical\"");
        let life = [late[0], medical];
        let battery = "Ask the doctor or supplier about a battery";
        assert!(["AIR006", "NOISE002"].iter().all(|code| fix(&life, code).contains(battery)));
        assert!(!fix(&late, "NOISE002").contains(battery));
    }

    /// One engine: loads that certainly run are reported before those that may. A medical load has its own remedy.
    #[test]
    fn what_runs_for_certain_is_told() {
        let kettle = [("hours = [\"18:30-19:00\"]", ""), ("continuous = false # kettle", "continuous = true")];
        let told = |edits: &[(&str, &str)]| -> Vec<(Vec<String>, &'static str)> {
            findings(edits)
                .into_iter()
                .filter(|it| it.code == "AIR006")
                .map(|it| (it.about.iter().map(Id::to_string).collect(), it.fix.key))
                .collect()
        };
        let just = |id: &str, fix| vec![(vec![id.to_owned()], fix)];
        assert_eq!(told(&kettle), just("kettle", "when"));
        assert_eq!(told(&[kettle[0], kettle[1], HOURS]), just("fan", "by-day"));
        let medical = ("kind = \"electronic\" # fan", "kind = \"medical\"");
        assert_eq!(told(&[kettle[0], kettle[1], medical, (HOURS.0, "")]), just("fan", "life-by-day"));
    }

    /// Whoever has a battery for the night is told to charge it and switch to it, not to ask for one. Near misses: no
    /// battery, and an unknown one. Checked against the English words.
    #[test]
    fn who_has_a_battery_is_told_to_use_it() {
        for (backup, key) in [("true", "life-charged"), ("false", "life-by-day"), ("\"unknown\"", "life-by-day")] {
            let kind = format!("kind = \"medical\"\nbackup = {backup}");
            let found = findings(&[HOURS, ("kind = \"electronic\" # fan", kind.as_str())]);
            let found = found.iter().find(|it| it.code == "AIR006").expect("found");
            assert_eq!(found.fix.key, key, "{backup}");
            let said = crate::words::Words::english().finding(found, &[]).fix;
            assert!(said.contains("top the engine before anyone goes to sleep"), "{said}");
            let charged = key == "life-charged";
            assert_eq!(said.contains("Charge the battery of “fan” during the day"), charged, "{said}");
            assert_eq!(said.contains("Ask the doctor"), !charged, "{said}");
        }
    }
}

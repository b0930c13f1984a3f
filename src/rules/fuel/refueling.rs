#![doc = include_str!("../../../i18n/en/explain/FUEL001.md")]

use crate::report::{Stretch, assumed_hours};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "FUEL001",
    name: "refueling",
    area: "fuel",
    worst: Signal::Warning,
    sources: &[cite::FEMA_2020, cite::PRACTICE],
    fixes: &["pause", "find-out", "life-pause", "life-find-out"],
    check,
    #[cfg(test)]
    fires: &[
        &[("running = \"50 W\"", "running = \"1800 W\""), ("hours = [\"18:00-23:00\"]", "hours = [\"00:00-24:00\"]")],
        &[(RUNTIME, "")],
        // A breathing aid without hours runs all day.
        &[LIFE, ("hours = [\"18:00-23:00\"]", "")],
        &[LIFE, (RUNTIME, "")],
    ],
    #[cfg(test)]
    spares: &[&[], &[(RUNTIME, ""), ("hours = [\"18:00-23:00\"]", "hours = [\"18:00-21:00\"]")]],
};

#[cfg(test)]
const LIFE: (&str, &str) = ("kind = \"electronic\" # fan", "kind = \"medical\"");

/// The running times of the example plan.
#[cfg(test)]
const RUNTIME: &str = "runtime = [ { load = \"25 %\", lasts = \"14 h\" }, { load = \"100 %\", lasts = \"5 h\" } ]";

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let energy = &facts.figures.energy;
    let Some(stretch) = energy.stretch.as_ref().filter(|it| it.is_too_long()) else {
        return;
    };
    let Stretch { span, hours, burns, usable, life } = stretch;
    let (known, set) = (energy.hours_per_tank, &facts.plan.generator);
    let fix = match (known.is_some(), life.is_empty()) {
        (true, true) => "pause",
        (true, false) => "life-pause",
        (false, true) => "find-out",
        (false, false) => "life-find-out",
    };
    // A load on which somebody's health depends cannot wait for the engine to cool.
    let signal = if life.is_empty() { Signal::Caution } else { Signal::Warning };
    let mut shown = values([
        ("from", Value::Time(span.from)),
        ("to", Value::Time(span.to)),
        ("stretch", (*hours).into()),
        ("burns", (*burns).into()),
        ("usable", (*usable).into()),
        ("tank", known.unwrap_or_else(|| assumed_hours(set)).into()),
    ]);
    if known.is_none() {
        // With running times, the rated power is what is missing.
        shown.insert("timed", Value::yes_no(!set.runtime.is_empty()));
    }
    found.add(signal, life.clone(), shown, fix, values([("life", Value::Parts(life.clone()))]));
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::judge::build;
    use crate::plan::Id;
    use crate::quantity::{Hours, Percent};
    use crate::report::Finding;
    use crate::rules::testing::{codes, plan};

    const PUBLISHED: &str = "{ load = \"100 %\", lasts = \"3.15 h\" }";

    /// Returns a plan with an 1,800 W generator, these running times, and these loads: name, kind and further fields,
    /// watts, hours.
    fn camp(runtime: &str, loads: &[(&str, &str, u32, &str)]) -> String {
        let mut text = format!(
            "format = 1\n[site]\naltitude = \"0 ft\"\nair = \"59 °F\"\nquiet_hours = \"22:00-06:00\"\n\
             [generator]\nrated = \"1800 W\"\n\
             voltage = \"120 V\"\ntank = \"1 gal\"\nruntime = [ {runtime} ]\n[[generator.outlet]]\n\
             id = \"front\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = true\n"
        );
        for (id, kind, watts, hours) in loads {
            let load = format!(
                "[[load]]\nid = \"{id}\"\nname = \"{id}\"\nkind = {kind}\nrunning = \"{watts} W\"\n\
                 power_factor = 1.0\nplug = \"5-15P\"\nhours = [{hours}]\n"
            );
            text += &load;
        }
        text
    }

    fn found(text: &str) -> Option<Finding> {
        let found = build(&plan(text)).findings;
        found.into_iter().find(|it| it.code == "FUEL001")
    }

    fn value(finding: &Finding, name: &str) -> String {
        match &finding.values[name] {
            Value::Amount(amount) => amount.amount.to_string(),
            Value::Time(minute) => crate::plan::Span::clock(*minute),
            other => panic!("{other:?}"),
        }
    }

    /// 1,700 W for four hours on 3.15 h of full load, whatever else runs that day. An average over the day would
    /// promise hours that do not exist.
    #[test]
    fn four_hours_of_griddle_are_more_than_a_tank() {
        let lamp = ("lamp", "\"lamp\"", 10, "\"18:00-20:00\"");
        let griddle = |hours| ("griddle", "\"heater\"", 1700, hours);
        let text = camp(PUBLISHED, &[griddle("\"08:00-12:00\""), lamp]);
        let long = found(&text).expect("it is found");
        assert_eq!((value(&long, "from"), value(&long, "to")), ("08:00".into(), "12:00".into()));
        assert_eq!(long.signal, Signal::Caution);
        // 4 / 3.15 = 1.26984 of a tank.
        assert_eq!(value(&long, "burns"), "126.985");
        let energy = build(&plan(&text)).figures.energy;
        assert_eq!(energy.hours_per_tank, Some(Hours::from_millihours(3_150)));
        assert_eq!(energy.busiest_by, Id::new("griddle"));
        // 3 h 9 min are one tank, and so are two hours twice with a break between.
        assert_eq!(found(&camp(PUBLISHED, &[griddle("\"08:00-11:09\""), lamp])), None);
        let twice = "\"08:00-10:00\", \"10:30-12:30\"";
        assert_eq!(found(&camp(PUBLISHED, &[griddle(twice), lamp])), None);
        let twice = "\"08:00-10:00\", \"10:29-12:29\"";
        assert!(found(&camp(PUBLISHED, &[griddle(twice), lamp])).is_some());
    }

    /// By hand, with 14 h at a quarter load and 5 h at full load: 8 h of 90 W are 8 / 14 of a tank, and an hour of
    /// 1,440 W is at 80 %: (1 / 14 + (1 / 5 − 1 / 14) × 55 / 75) × 1.1 = 0.18229 of one.
    #[test]
    fn the_night_of_a_breathing_machine_and_breakfast_are_one_tank() {
        let runtime = |quarter| {
            format!(
                "{{ load = \"25 %\", lasts = \"{quarter}\" }}, \
            {{ load = \"100 %\", lasts = \"5 h\" }}"
            )
        };
        let night = |kind| ("cpap", kind, 90, "\"22:00-06:00\"");
        let breakfast = |hours| ("griddle", "\"heater\"", 1440, hours);
        let medical = "\"medical\"";
        let both = [night(medical), breakfast("\"06:30-07:30\"")];
        let text = camp(&runtime("14 h"), &both);
        let energy = build(&plan(&text)).figures.energy;
        let stretch = energy.stretch.expect("a stretch");
        assert_eq!(stretch.span.to_string(), "22:00-07:30");
        assert_eq!(stretch.burns, Percent::from_millipercent(75_372));
        // That lasts. 11 h at a quarter load do not: 8 / 11 + 0.188 = 0.91527, and the limit is 0.9.
        assert_eq!(found(&text), None);
        let long = found(&camp(&runtime("11 h"), &both)).expect("it is found");
        assert_eq!((long.fix.key, value(&long, "burns")), ("life-pause", "91.528".into()));
        assert_eq!(long.signal, Signal::Warning);
        assert_eq!(long.about, [Id::new("cpap").expect("an id")]);
        // For a lamp the whole tank counts, and it is refueled before breakfast.
        let lamp = [night("\"lamp\""), breakfast("\"06:30-07:30\"")];
        assert_eq!(found(&camp(&runtime("11 h"), &lamp)), None);
        // With its own battery it can wait like the lamp.
        let backed = [night("\"medical\"\nbackup = true"), breakfast("\"06:30-07:30\"")];
        assert_eq!(found(&camp(&runtime("11 h"), &backed)), None);
        // Breakfast an hour and a half later is on another tank.
        let late = [night(medical), breakfast("\"07:30-08:30\"")];
        assert_eq!(found(&camp(&runtime("11 h"), &late)), None);
    }

    /// A medical load may use nine tenths of a tank; the whole tank is too much.
    #[test]
    fn nine_tenths_of_a_tank_count_for_a_life() {
        let night = |kind, hours| [("cpap", kind, 90, hours)];
        let lasts = "{ load = \"25 %\", lasts = \"10 h\" }";
        let (nine, more) = ("\"21:00-06:00\"", "\"21:00-06:01\"");
        assert_eq!(found(&camp(lasts, &night("\"medical\"", nine))), None);
        assert!(found(&camp(lasts, &night("\"medical\"", more))).is_some());
        assert_eq!(found(&camp(lasts, &night("\"lamp\"", "\"20:00-06:00\""))), None);
        assert!(found(&camp(lasts, &night("\"lamp\"", "\"20:00-06:01\""))).is_some());
    }

    /// Two spans of generator hours, from 8 to 10 and from 16 to 20: the quiet in the afternoon is not night, so
    /// somebody may refuel then.
    #[test]
    fn quiet_in_the_afternoon_is_no_night() {
        let loads = [("griddle", "\"heater\"", 1700, "\"08:00-10:00\", \"16:00-18:00\"")];
        let text = camp(PUBLISHED, &loads);
        let quiet = |spans| text.replacen("\"22:00-06:00\"", spans, 1);
        assert_eq!(found(&quiet("[\"10:00-16:00\", \"20:00-08:00\"]")), None);
        // At night nobody does.
        let night = text.replacen("\"08:00-10:00\", \"16:00-18:00\"", "\"20:00-22:00\", \"02:00-04:00\"", 1);
        assert!(found(&night).is_some());
    }

    /// 2 h at full load and an unknown rated power: the finding tells the hours that were counted, and asks for the
    /// power, not for the hours that the plan has.
    #[test]
    fn an_unknown_power_is_asked_for_where_the_hours_are_known() {
        let words = crate::words::Words::english();
        let lamp = [("lamp", "\"lamp\"", 10, "\"12:00-16:00\"")];
        let runtime = "{ load = \"100 %\", lasts = \"2 h\" }";
        for (runtime, rated, hours, asks) in [
            (runtime, "\"unknown\"", "2", "nameplate"),
            ("", "\"unknown\"", "3", "hours on one tank"),
            ("", "\"1800 W\"", "3", "hours on one tank"),
        ] {
            for kind in ["\"lamp\"", "\"medical\""] {
                let mut loads = lamp;
                loads[0].1 = kind;
                let text = camp(runtime, &loads).replacen("rated = \"1800 W\"", &format!("rated = {rated}"), 1);
                let long = found(&text).expect("it is found");
                assert_eq!(value(&long, "tank"), hours, "{runtime} {rated} {kind}");
                let said = words.finding(&long, &[]);
                assert!(said.why.contains(&format!("{hours}\u{a0}h")), "{}", said.why);
                let told = said.fix.contains(asks) || said.fix.contains("how many hours") && asks != "nameplate";
                assert!(told && (asks == "nameplate") == said.fix.contains("nameplate"), "{}", said.fix);
                let assumed = build(&plan(&text)).figures.assumed;
                assert_eq!(assumed.iter().any(|it| it.field == "generator.runtime"), runtime.is_empty(), "{assumed:?}");
            }
        }
    }

    #[test]
    fn an_unknown_running_time_is_told_where_it_matters() {
        let told = |edits: &[crate::rules::Edit]| {
            let assumed = crate::rules::testing::report(edits).figures.assumed;
            assumed.iter().any(|it| it.why == "runtime")
        };
        assert!(told(&[(RUNTIME, "")]) && codes(&[(RUNTIME, "")]).contains(&"FUEL001"));
        let short = ("hours = [\"18:00-23:00\"]", "hours = [\"18:00-21:00\"]");
        assert!(!told(&[(RUNTIME, ""), short]) && !told(&[]));
    }
}

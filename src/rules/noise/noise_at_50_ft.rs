#![doc = include_str!("../../../i18n/en/explain/NOISE001.md")]

use crate::plan::Answer;
use crate::report::noise::{BOUND, MEASURED_AT};
use crate::rules::power::too_hard;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "NOISE001",
    name: "noise-at-50-ft",
    area: "noise",
    worst: Signal::Notice,
    sources: &[cite::CFR_36_2_12, cite::PRACTICE],
    fixes: &["quieter", "busiest", "alone", "look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("level = \"56 dBA\"", "level = \"66.9 dBA\"")],
        &[("noise = { level = \"56 dBA\", at = \"23 ft\", load = \"25 %\" }", "noise = \"unknown\"")],
        // The kettle and the fan are 43.1 % of 3,600 W: 2.41 dB(A) above a quarter load, so 60.06 at 50 ft.
        &[("level = \"56 dBA\"", "level = \"64.4 dBA\"")],
        // The fan at another time.
        &[("level = \"56 dBA\"", "level = \"64.6 dBA\""), ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-23:00\"]")],
    ],
    #[cfg(test)]
    spares: &[
        // 59.86 dB(A) at the busiest minute; at full load it would be 67.46.
        &[("level = \"56 dBA\"", "level = \"64.2 dBA\"")],
        &[(
            "level = \"56 dBA\", at = \"23 ft\", load = \"25 %\"",
            "level = \"66.7 dBA\", at = \"23 ft\", load = \"100 %\"",
        )],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.plan.generator.noise == Answer::Unknown {
        let shown = values([("limit", BOUND.into()), ("distance", MEASURED_AT.into())]);
        found.add(Signal::Notice, vec![], shown, "look", values([]));
        return;
    }
    let noise = &facts.figures.noise;
    let (Some(measured), Some(busiest)) = (noise.at_50ft_dba, noise.at_50ft_busiest_dba) else {
        return;
    };
    if busiest <= BOUND {
        return;
    }
    let fix = if measured > BOUND {
        // With less load it is taken to be no quieter than it was measured.
        "quieter"
    } else if one_thing(facts) {
        "alone"
    } else {
        "busiest"
    };
    let mut shown = values([
        ("level", measured.into()),
        ("busiest", busiest.into()),
        ("limit", BOUND.into()),
        ("distance", MEASURED_AT.into()),
    ]);
    if let Some(more) = noise.more_at_busiest {
        shown.insert("more", more.into());
    }
    // If economy idle must stay off for a motor, nobody is told to turn it on for the noise.
    let idle = values([("idle", Value::yes_no(too_hard(facts).is_none()))]);
    found.add(Signal::Notice, vec![], shown, fix, idle);
}

/// Whether one load alone draws everything in the busiest minute, so that there is nothing to run fewer of.
fn one_thing(facts: &Facts<'_>) -> bool {
    let energy = &facts.figures.energy;
    let by = energy.busiest_by.as_ref().and_then(|by| facts.figures.load(by));
    let most = energy.peak_hour.as_ref().map(|peak| peak.watts);
    by.zip(most).is_some_and(|(by, most)| by.running_watts >= most)
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::{codes, report};

    /// 60 dB(A) at 50 ft (36 CFR 2.12) is 66.8 dB(A) at 7 m, by the published fall of 6 dB per doubling of distance: 20
    /// log10(15.24 / 7) = 6.76 dB.
    #[test]
    fn the_bound_at_seven_metres() {
        for (level, found) in [("66.7 dBA", false), ("66.8 dBA", true)] {
            let noise = format!("level = \"{level}\", at = \"7 m\", load = \"100 %\"");
            let as_it_is = "level = \"56 dBA\", at = \"23 ft\", load = \"25 %\"";
            let edits = [(as_it_is, noise.as_str())];
            assert_eq!(codes(&edits).contains(&"NOISE001"), found, "{level}");
        }
    }

    /// If the level was measured at no stated load or at part load, the level at the busiest minute counts, and the
    /// report states the assumption. By hand: 1,550 W of 3,600 W are 43.056 %, so 10 dB(A) × 18.056 / 75 above a
    /// quarter load: 2.408 dB(A).
    #[test]
    fn what_the_plan_runs_is_what_counts() {
        let as_it_is = "level = \"56 dBA\", at = \"23 ft\", load = \"25 %\"";
        for (noise, found, assumed) in [
            ("level = \"66.7 dBA\", at = \"7 m\", load = \"100 %\"", false, false),
            ("level = \"66.7 dBA\", at = \"7 m\", load = \"50 %\"", false, false),
            ("level = \"64.3 dBA\", at = \"7 m\", load = \"25 %\"", false, true),
            ("level = \"64.4 dBA\", at = \"7 m\", load = \"25 %\"", true, true),
            ("level = \"64.4 dBA\", at = \"7 m\"", true, true),
        ] {
            let edits = [(as_it_is, noise)];
            assert_eq!(codes(&edits).contains(&"NOISE001"), found, "{noise}");
            let list = report(&edits).figures.assumed;
            let told = list.iter().any(|it| it.why == "noise-full-load");
            assert_eq!(told, assumed, "{noise}");
        }
        // Full load, if the generator's rated power is unknown.
        let loud = "level = \"57 dBA\", at = \"7 m\", load = \"25 %\"";
        let unknown = ("rated = \"3600 W\"", "rated = \"unknown\"");
        assert!(!codes(&[(as_it_is, loud)]).contains(&"NOISE001"));
        assert!(codes(&[(as_it_is, loud), unknown]).contains(&"NOISE001"));
    }

    /// Nobody is told both to turn economy idle on for the noise and to leave it off for a motor.
    #[test]
    fn economy_idle_stays_off_for_a_motor() {
        let told = |starting: &str| {
            let motor = format!("kind = \"motor\"\nstarting = \"{starting} W\"");
            let found = crate::rules::testing::findings(&[
                ("level = \"56 dBA\"", "level = \"66.9 dBA\""),
                ("inverter = false", "inverter = true"),
                ("kind = \"electronic\" # fan", motor.as_str()),
            ]);
            let of = |code: &str| found.iter().find(|it| it.code == code);
            let noise = crate::words::Words::english().finding(of("NOISE001").expect("found"), &[]);
            (of("POWER007").is_some(), noise.fix.to_lowercase().contains("economy idle"))
        };
        assert_eq!((told("1800"), told("1799")), ((true, false), (false, true)));
    }

    /// A limit measured at a fixed distance is not met by moving, and nobody is to stand nearer than exhaust allows. So
    /// no message on noise names any distance but the one at which it is measured.
    #[test]
    fn no_place_is_quiet_enough() {
        let words = crate::words::Words::english();
        for edits in super::RULE.fires {
            let findings = crate::rules::testing::findings(edits);
            let found = findings.iter().find(|it| it.code == "NOISE001").expect("it is found");
            let text = words.finding(found, &[]);
            let all = format!("{} {} {}", text.title, text.why, text.fix);
            let lengths: Vec<&str> = all.split(['\u{a0}', ' ', ',', '.', ':']).collect();
            let feet: Vec<&str> = lengths.windows(2).filter(|it| it[1] == "ft").map(|it| it[0]).collect();
            assert_eq!(feet, ["50"], "{all}");
        }
    }

    /// Running fewer things at once helps only if several are on at the busiest minute and that is what is too loud. A
    /// generator that is too loud at its test load stays so with a single lamp.
    #[test]
    fn nobody_is_told_to_run_fewer_of_one_thing() {
        let words = crate::words::Words::english();
        let apart = ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-23:00\"]");
        for (level, edits, fewer) in
            [("64.6", &[][..], true), ("64.6", &[apart][..], false), ("67.5", &[], false), ("67.5", &[apart], false)]
        {
            let level = format!("level = \"{level} dBA\"");
            let edits = [&[("level = \"56 dBA\"", level.as_str())][..], edits].concat();
            let findings = crate::rules::testing::findings(&edits);
            let found = findings.iter().find(|it| it.code == "NOISE001").expect("it is found");
            let told = words.finding(found, &[]).fix.contains("fewer");
            assert_eq!(told, fewer, "{edits:?} {}", found.fix.key);
        }
    }
}

//! Unknown answers about the site and the set that the rules take for the unsafe case.
//!
//! What the supply tree, the loads and the fuel assume is said where they are reckoned; this is
//! the rest, so that every unknown has its line.

use crate::plan::{Answer, LoadKind, Plan};
use crate::quantity::SoundLevel;
use crate::report::{Assumption, Value};
use crate::tables::sound::more_at_full_load;

use super::fuel::{UNKNOWN_TANK, stretch};

/// The assumptions, in the order of the plan file.
#[must_use]
pub(crate) fn assumed(plan: &Plan) -> Vec<Assumption> {
    let mut list = Vec::new();
    let mut assume = |field: String, word: &'static str, why: &'static str| {
        list.push(Assumption {
            field,
            value: Value::Word { word },
            why,
        });
    };
    let site = &plan.site;
    if !site.ground.is_known() {
        assume("site.ground".into(), "ground-wet", "ground");
    }
    if !site.sleepers_at.is_known() {
        assume("site.sleepers_at".into(), "assumed-too-near", "sleepers");
    }
    if !site.co_alarm.is_known() {
        assume("site.co_alarm".into(), "assumed-no", "co-alarm");
    }
    // Silence is a no here: see rule SHOCK003.
    if site.feeds_building == Answer::Unknown {
        assume("site.feeds_building".into(), "assumed-yes", "building");
    }
    if !site.stands.is_known() {
        assume("site.stands".into(), "assumed-covered", "stands");
    }
    if !plan.generator.neutral.is_known() {
        assume("generator.neutral".into(), "assumed-floating", "neutral");
    }
    // Silence means that there is none: whoever put one in knows of it.
    if plan.generator.bonding_plug == Answer::Unknown {
        assume(
            "generator.bonding_plug".into(),
            "assumed-yes",
            "bonding-plug",
        );
    }
    if let Some(parallel) = plan.generator.parallel
        && !parallel.kit.is_known()
    {
        assume(
            "generator.parallel.kit".into(),
            "assumed-no",
            "parallel-kit",
        );
    }
    if let Answer::Known(noise) = plan.generator.noise
        && !noise.load.is_known()
    {
        assume(
            "generator.noise.load".into(),
            "assumed-quarter",
            "noise-load",
        );
    }
    if let Answer::Known(noise) = plan.generator.noise {
        let more = more_at_full_load(noise.load);
        if more > SoundLevel::ZERO {
            list.push(Assumption {
                field: "generator.noise.full_load".into(),
                value: more.into(),
                why: "noise-full-load",
            });
        }
    }
    let set = &plan.generator;
    // Only where somebody means to run on and on.
    if (set.runtime.is_empty() || !set.rated.is_known()) && stretch(plan) > UNKNOWN_TANK {
        list.push(Assumption {
            field: "generator.runtime".into(),
            value: UNKNOWN_TANK.into(),
            why: "runtime",
        });
    }
    let mut assume = |field: String, word: &'static str, why: &'static str| {
        list.push(Assumption {
            field,
            value: Value::Word { word },
            why,
        });
    };
    // Silence is nothing that anybody was asked.
    if set.noise == Answer::Unknown {
        assume("generator.noise".into(), "assumed-loud", "noise");
    }
    for load in &plan.loads {
        if load.kind == LoadKind::Medical && !load.backup.is_known() {
            assume(format!("load.{}.backup", load.id), "assumed-no", "backup");
        }
    }
    for cord in plan.cords.iter().filter(|cord| cord.from.is_some()) {
        if !cord.outdoor.is_known() {
            assume(
                format!("cord.{}.outdoor", cord.id),
                "assumed-no",
                "cord-outdoor",
            );
        }
    }
    for holder in plan.boxes.iter().filter(|holder| holder.from.is_some()) {
        if !holder.listed.is_known() {
            assume(
                format!("box.{}.listed", holder.id),
                "assumed-no",
                "box-listed",
            );
        }
        let silent = holder.bond == Answer::Missing && holder.listed == Answer::Known(true);
        if !holder.bond.is_known() && !silent {
            assume(format!("box.{}.bond", holder.id), "assumed-yes", "box-bond");
        }
    }
    list
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::report;

    const RUNTIME: &str = "runtime = [ { load = \"25 %\", lasts = \"14 h\" }, { load = \"100 %\", lasts = \"5 h\" } ]";

    #[test]
    fn what_nobody_knows_is_said() {
        let fields = |edits: &[(&str, &str)]| -> Vec<(String, &'static str)> {
            report(edits)
                .figures
                .assumed
                .into_iter()
                .map(|it| (it.field, it.why))
                .collect()
        };
        for (edit, expected) in [
            (("ground = \"wet\"", ""), ("site.ground", "ground")),
            (
                ("sleepers_at = \"60 ft\"", "sleepers_at = \"unknown\""),
                ("site.sleepers_at", "sleepers"),
            ),
            (("co_alarm = true", ""), ("site.co_alarm", "co-alarm")),
            (
                ("feeds_building = false", "feeds_building = \"unknown\""),
                ("site.feeds_building", "building"),
            ),
            (("stands = \"roof\"", ""), ("site.stands", "stands")),
            (
                ("neutral = \"bonded\"", "neutral = \"unknown\""),
                ("generator.neutral", "neutral"),
            ),
            (
                (", load = \"25 %\" }", " }"),
                ("generator.noise.load", "noise-load"),
            ),
            (
                (
                    "noise = { level = \"56 dBA\", at = \"23 ft\", load = \"25 %\" }",
                    "noise = \"unknown\"",
                ),
                ("generator.noise", "noise"),
            ),
            ((RUNTIME, ""), ("generator.runtime", "runtime")),
            (
                (
                    "inverter = false",
                    "inverter = true\nparallel = { sets = 2 }",
                ),
                ("generator.parallel.kit", "parallel-kit"),
            ),
            (
                ("kind = \"electronic\" # fan", "kind = \"medical\""),
                ("load.fan.backup", "backup"),
            ),
            (
                ("outdoor = true # long", ""),
                ("cord.long.outdoor", "cord-outdoor"),
            ),
        ] {
            let expected = (expected.0.to_owned(), expected.1);
            assert!(fields(&[edit]).contains(&expected), "{expected:?}");
            assert!(!fields(&[]).contains(&expected), "{expected:?}");
        }
    }

    #[test]
    fn every_assumption_has_words() {
        let words = crate::words::Words::english();
        let report = report(&[
            ("ground = \"wet\"", ""),
            ("sleepers_at = \"60 ft\"", ""),
            ("co_alarm = true", ""),
            ("feeds_building = false", "feeds_building = \"unknown\""),
            ("stands = \"roof\"", ""),
            ("neutral = \"bonded\"", ""),
            ("outdoor = true # long", ""),
            (", load = \"25 %\" }", " }"),
            ("kind = \"electronic\" # fan", "kind = \"medical\""),
            ("listed = true", ""),
            ("bond = false", ""),
            (RUNTIME, ""),
            (
                "inverter = false",
                "inverter = true\nparallel = { sets = 2 }",
            ),
        ]);
        assert!(report.figures.assumed.len() >= 7);
        for assumption in &report.figures.assumed {
            words.assumption(assumption);
        }
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

//! Unknown answers about the site and the generator that the rules take for the unsafe case.
//!
//! The supply tree, the loads and the fuel record their own assumptions. This module adds the rest, so that every
//! unknown has its line.

use crate::plan::{Answer, DistributionBox, Generator, Load, LoadKind, Plan, Site};
use crate::quantity::SoundLevel;
use crate::report::{Assumption, EnergyUse, Value};
use crate::tables::night::told;
use crate::tables::sound::{ALL, more_at};

use super::night::night;

/// Returns the assumptions in the order of the plan file.
pub(crate) fn assumed(plan: &Plan, energy: &EnergyUse) -> Vec<Assumption> {
    let mut list = List::default();
    list.site(&plan.site);
    list.set(plan);
    list.noise(&plan.generator, energy);
    for load in &plan.loads {
        if load.may_be(LoadKind::Medical) && !load.backup.is_known() {
            list.word(format!("load.{}.backup", load.id), "assumed-no", "backup");
        }
    }
    list.gear(plan);
    list.night(plan);
    list.0
}

/// The assumptions collected so far.
#[derive(Default)]
struct List(Vec<Assumption>);

impl List {
    fn add(&mut self, field: impl Into<String>, value: Value, why: &'static str) {
        self.0.push(Assumption { field: field.into(), value, why });
    }

    fn word(&mut self, field: impl Into<String>, word: &'static str, why: &'static str) {
        self.add(field, Value::Word { word }, why);
    }

    fn words<const N: usize>(&mut self, all: [(bool, &str, &'static str, &'static str); N]) {
        for (_, field, word, why) in all.into_iter().filter(|(unknown, ..)| *unknown) {
            self.word(field, word, why);
        }
    }

    fn site(&mut self, site: &Site) {
        self.words([
            (!site.ground.is_known(), "site.ground", "ground-wet", "ground"),
            (!site.sleepers_at.is_known(), "site.sleepers_at", "assumed-too-near", "sleepers"),
            // Silence means yes here, and assumes nothing.
            (site.people_sleep == Answer::Unknown, "site.people_sleep", "assumed-yes", "people-sleep"),
            (site.sleeps() && !site.co_alarm.is_known(), "site.co_alarm", "assumed-no", "co-alarm"),
            // Silence means no here; see rule SHOCK003.
            (site.feeds_building == Answer::Unknown, "site.feeds_building", "assumed-yes", "building"),
            (!site.stands.is_known(), "site.stands", "assumed-covered", "stands"),
        ]);
    }

    fn set(&mut self, plan: &Plan) {
        let set = &plan.generator;
        let kit = set.parallel.is_some_and(|joined| !joined.kit.is_known());
        self.words([
            (!set.neutral.is_known(), "generator.neutral", "assumed-floating", "neutral"),
            // Silence means that there is none: whoever put one in knows of it.
            (set.bonding_plug == Answer::Unknown, "generator.bonding_plug", "assumed-yes", "bonding-plug"),
            (kit, "generator.parallel.kit", "assumed-no", "parallel-kit"),
        ]);
    }

    fn noise(&mut self, set: &Generator, energy: &EnergyUse) {
        match set.noise {
            Answer::Known(noise) => {
                if !noise.load.is_known() {
                    self.word("generator.noise.load", "assumed-quarter", "noise-load");
                }
                let more = more_at(energy.busiest_load.unwrap_or(ALL), noise.load);
                if more > SoundLevel::ZERO {
                    let field = "generator.noise.full_load";
                    self.add(field, more.into(), "noise-full-load");
                }
            }
            Answer::Unknown => self.word("generator.noise", "assumed-loud", "noise"),
            // A loud generator hurts nobody, so rule NOISE001 stays silent and nothing asks for the figure. A host may
            // still want it off.
            Answer::Missing => self.word("generator.noise", "assumed-loud", "noise-not-told"),
        }
    }

    /// Records the hours of the night if they matter: for loads with hours, and for medical loads.
    fn night(&mut self, plan: &Plan) {
        let site = &plan.site;
        let asks = |load: &Load| !load.hours.is_empty() || load.may_be(LoadKind::Medical);
        let asked = told(site).is_none() && plan.loads.iter().any(asks);
        if let Some(night) = night(site).filter(|_| asked) {
            // The given quiet hours may be empty, or include no night.
            let why = if site.quiet_hours.is_known() { "night" } else { "quiet-hours" };
            self.add("site.quiet_hours", Value::Hours(vec![night]), why);
        }
    }

    fn gear(&mut self, plan: &Plan) {
        for it in plan.of_unknown_shape() {
            for (unknown, why) in [(it.plug, "shape-plug"), (it.outlets, "shape-outlets")] {
                if let Some((table, key)) = unknown {
                    self.word(format!("{table}.{}.{key}", it.part), "assumed-unused", why);
                }
            }
        }
        for cord in plan.cords.iter().filter(|cord| cord.from.is_some()) {
            if !cord.outdoor.is_known() {
                let field = format!("cord.{}.outdoor", cord.id);
                self.word(field, "assumed-no", "cord-outdoor");
            }
        }
        for holder in plan.boxes.iter().filter(|holder| holder.from.is_some()) {
            if holder.is_camper() {
                self.camper(holder);
            }
            if !holder.is_listed().is_known() {
                let field = format!("box.{}.listed", holder.id);
                self.word(field, "assumed-no", "box-listed");
            }
            if !holder.joins().is_known() {
                let field = format!("box.{}.bond", holder.id);
                self.word(field, "assumed-yes", "box-bond");
            }
        }
    }

    /// Records what is assumed of every camper.
    fn camper(&mut self, camper: &DistributionBox) {
        let field = |name: &str| format!("box.{}.{name}", camper.id);
        if camper.listed == Answer::Missing {
            self.word(field("listed"), "assumed-yes", "camper-listed");
        }
        if camper.bond == Answer::Missing && camper.joins().is_known() {
            self.word(field("bond"), "assumed-no", "camper-bond");
        }
        self.word(field("gfci"), "assumed-yes", "camper-gfci");
        self.word(field("cord"), "assumed-yes", "camper-cord");
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::report;

    const RUNTIME: &str = "runtime = [ { load = \"25 %\", lasts = \"14 h\" }, { load = \"100 %\", lasts = \"5 h\" } ]";

    /// A cord of unknown shape.
    const SPARE: crate::rules::Edit =
        ("[[box]]", "[[cord]]\nid = \"spare\"\nplug = \"unknown\"\nends = \"unknown\"\n[[box]]");

    const NOISE: &str = "noise = { level = \"56 dBA\", at = \"23 ft\", load = \"25 %\" }";

    #[test]
    fn what_nobody_knows_is_said() {
        let fields = |edits: &[(&str, &str)]| -> Vec<(String, &'static str)> {
            report(edits).figures.assumed.into_iter().map(|it| (it.field, it.why)).collect()
        };
        for (edit, expected) in [
            (("ground = \"wet\"", ""), ("site.ground", "ground")),
            (("sleepers_at = \"60 ft\"", "sleepers_at = \"unknown\""), ("site.sleepers_at", "sleepers")),
            (("co_alarm = true", ""), ("site.co_alarm", "co-alarm")),
            (
                ("stands = \"roof\"", "stands = \"roof\"\npeople_sleep = \"unknown\""),
                ("site.people_sleep", "people-sleep"),
            ),
            (("feeds_building = false", "feeds_building = \"unknown\""), ("site.feeds_building", "building")),
            (("stands = \"roof\"", ""), ("site.stands", "stands")),
            (("neutral = \"bonded\"", "neutral = \"unknown\""), ("generator.neutral", "neutral")),
            ((", load = \"25 %\" }", " }"), ("generator.noise.load", "noise-load")),
            ((NOISE, "noise = \"unknown\""), ("generator.noise", "noise")),
            ((NOISE, ""), ("generator.noise", "noise-not-told")),
            ((RUNTIME, ""), ("generator.runtime", "runtime")),
            (("quiet_hours = \"23:00-07:00\"", ""), ("site.quiet_hours", "quiet-hours")),
            (
                ("inverter = false", "inverter = true\nparallel = { sets = 2 }"),
                ("generator.parallel.kit", "parallel-kit"),
            ),
            (("kind = \"electronic\" # fan", "kind = \"medical\""), ("load.fan.backup", "backup")),
            (("outdoor = true # long", ""), ("cord.long.outdoor", "cord-outdoor")),
            (("plug = \"L5-30P\" # long", "plug = \"unknown\""), ("cord.long.plug", "shape-plug")),
            (SPARE, ("cord.spare.ends", "shape-outlets")),
            (("inlet = \"L5-30P\" # box", "inlet = \"unknown\""), ("box.box.inlet", "shape-plug")),
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
            ("quiet_hours = \"23:00-07:00\"", ""),
            ("stands = \"roof\"", "people_sleep = \"unknown\""),
            ("neutral = \"bonded\"", ""),
            ("outdoor = true # long", ""),
            (", load = \"25 %\" }", " }"),
            ("kind = \"electronic\" # fan", "kind = \"medical\""),
            ("listed = true", ""),
            SPARE,
            ("bond = false", ""),
            (RUNTIME, ""),
            ("inverter = false", "inverter = true\nparallel = { sets = 2 }"),
        ]);
        assert!(report.figures.assumed.len() >= 7);
        for assumption in &report.figures.assumed {
            words.assumed_together(std::slice::from_ref(assumption), &[]);
        }
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

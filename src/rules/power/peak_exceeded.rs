#![doc = include_str!("../../../i18n/en/explain/POWER002.md")]

use crate::plan::{Id, Leg, Wanted};
use crate::quantity::{ApparentPower, Current, Power};
use crate::report::Values;
use crate::rules::demand::{Beside, Busiest, Need, beside, busy, ids, when};
use crate::rules::prelude::*;
use crate::supply::NodeIx;

pub(super) const RULE: Rule = Rule {
    code: "POWER002",
    name: "peak-exceeded",
    area: "power",
    worst: Signal::Warning,
    sources: &[cite::NEC_430_251, cite::NEC_430_7, cite::PRACTICE],
    fixes: &[
        "alone",
        "again",
        "fewer",
        "leg-alone",
        "amps-alone",
        "amps-again",
        "amps-fewer",
        "life-alone",
        "life-together",
        "life-off",
        "life-turns",
    ],
    check,
    #[cfg(test)]
    fires: &[
        &[("power_factor = 1.0", "starting = \"4501 W\"")],
        &[("power_factor = 1.0", "starting = \"4500 W\"")],
        // Two starters, each fine alone, but the second cannot start beside the first in either order.
        &[
            ("power_factor = 1.0", "starting = \"4000 W\""),
            ("running = \"50 W\"", "running = \"1440 W\"\nstarting = \"3400 W\""),
        ],
        // 2400 W are 20 A, and a leg of 4500 W has 18.75 A.
        &[("voltage = \"120 V\"", "voltage = \"120/240 V\""), ("power_factor = 1.0", "starting = \"2400 W\"")],
        // 4400 W at 0.9 are 40.7 A, of 37.5 A.
        &[("power_factor = 1.0", "power_factor = 0.9\nstarting = \"4400 W\"")],
        // 4040 W at 0.9 are 37.4 A, and 37.8 A with the fan already on.
        &[("power_factor = 1.0", "power_factor = 0.9\nstarting = \"4040 W\"")],
        // 14.8 A running and 25.9 A starting are 40.7 A, whichever comes first; in watts, 4400.
        &[
            ("running = \"1500 W\"", "running = \"1600 W\"\nstarting = \"2800 W\""),
            ("power_factor = 1.0", "power_factor = 0.9"),
            ("running = \"50 W\"", "running = \"1600 W\"\nstarting = \"2800 W\""),
            ("power_factor = 1.0 # fan", "power_factor = 0.9"),
        ],
        // The fan is a breathing aid.
        &[LIFE, ("running = \"50 W\"", "running = \"50 W\"\nstarting = \"4501 W\"")],
        &[LIFE, ("running = \"50 W\"", "count = 2\nrunning = \"400 W\"\nstarting = \"4200 W\"")],
        &[LIFE, ("power_factor = 1.0", "starting = \"4500 W\"")],
        &[
            LIFE,
            ("running = \"50 W\"", "running = \"50 W\"\nstarting = \"2000 W\""),
            ("running = \"1500 W\"", "count = 2\nrunning = \"1500 W\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        // 4450 W + 50 W is exactly the peak.
        &[("power_factor = 1.0", "starting = \"4450 W\"")],
        // 18.33 A beside the fan's 0.42 A: the peak of a leg is 18.75 A.
        &[("voltage = \"120 V\"", "voltage = \"120/240 V\""), ("power_factor = 1.0", "starting = \"2199 W\"")],
    ],
};

#[cfg(test)]
const LIFE: (&str, &str) = ("kind = \"electronic\" # fan", "kind = \"medical\"");

/// The unit in which a start is judged: watts of the whole generator, or amperes of one leg.
struct Judge<'j, 'a> {
    running: fn(&Need<'_>) -> i64,
    starting: fn(&Need<'_>) -> i64,
    /// What the generator or the leg gives for a moment (`peak`) and for hours (`rated`).
    peak: i64,
    rated: i64,
    /// Whether a load's draw was only assumed.
    guessed: &'j dyn Fn(&Need<'a>) -> bool,
    /// Whether this unit alone shows what a load demands.
    judges: &'j dyn Fn(&Need<'a>) -> bool,
    /// Returns those of the loads that draw on the generator or the leg.
    draws: &'j dyn Fn(&[Need<'a>]) -> Vec<Need<'a>>,
    value: &'j dyn Fn(i64) -> Value,
    /// The peak as findings report it.
    told: Value,
    /// The keys of the remedies: too much alone, fits in one order only, fits in no order.
    fixes: [&'static str; 3],
}

impl<'a> Judge<'_, 'a> {
    fn step(&self, need: &Need<'_>) -> i64 {
        (self.starting)(need) - (self.running)(need)
    }

    fn sum(&self, on: &[Need<'_>]) -> i64 {
        on.iter().map(self.running).sum()
    }

    /// Returns the demand at the worst moment: all running, plus the largest starting step.
    fn worst(&self, on: &[Need<'a>]) -> i64 {
        let on = (self.draws)(on);
        self.sum(&on) + on.iter().map(|need| self.step(need)).max().unwrap_or(0)
    }

    fn fits(&self, on: &[Need<'a>]) -> bool {
        self.worst(on) <= self.peak
    }

    /// Whether starting in this order never exceeds the peak.
    fn holds(&self, order: &[Need<'_>]) -> bool {
        let mut running = 0;
        order.iter().all(|need| {
            let fits = running + (self.starting)(need) <= self.peak;
            running += (self.running)(need);
            fits
        })
    }

    fn shown(&self, demand: i64) -> Values {
        values([
            ("demand", (self.value)(demand)),
            ("limit", self.told.clone()),
            ("over", (self.value)(demand - self.peak)),
        ])
    }

    /// Reports loads that can never start, at any hour, and removes them from `needs`.
    fn alone(&self, needs: &mut Vec<Need<'a>>, found: &mut Findings<'_>) {
        // A load that cannot even run is for rule POWER001.
        let runs = |need: &Need<'a>| !need.ever_on() || (self.running)(need) <= self.rated;
        let said = |need: &Need<'a>| !(self.guessed)(need);
        let over = |need: &Need<'a>| (self.judges)(need) && (self.starting)(need) > self.peak;
        let too_much: Vec<Need<'a>> = needs.iter().filter(|need| over(need) && runs(need)).copied().collect();
        // Certain findings and those that rest on an unknown are separate: each unknown has its own thing to look up.
        for (life, sure) in [(true, true), (true, false), (false, true), (false, false)] {
            let mut alone = too_much.clone();
            alone.retain(|need| need.life() == life && said(need) == sure);
            alone.sort_by_key(|need| std::cmp::Reverse((self.starting)(need)));
            let Some(largest) = alone.first() else {
                continue;
            };
            let shown = self.shown((self.starting)(largest));
            // A load that must run but cannot start is of no use at all.
            let must = alone.iter().any(|need| need.load.wanted == Wanted::Must);
            let (signal, fix) = match (life, must) {
                (true, _) => (Signal::Warning, "life-alone"),
                (false, true) => (Signal::Warning, self.fixes[0]),
                (false, false) => (Signal::Caution, self.fixes[0]),
            };
            found.add(signal, ids(&alone), shown, fix, values([]));
        }
        needs.retain(|need| !over(need) && runs(need));
    }

    /// Reports what is too much at the worst moment of the day, and at the worst moment of every other minute in which
    /// a life depends on a running load. Returns the loads reported.
    fn together(&self, needs: &[Need<'a>], told: &[Id], found: &mut Findings<'_>) -> Vec<Id> {
        let mut told = told.to_vec();
        let before = told.len();
        for busiest in busy(needs, |on| self.worst(on)) {
            let about = self.at(&busiest, &told, found);
            told.extend(about);
        }
        told.split_off(before)
    }

    /// Does the same for one minute.
    fn at(&self, busiest: &Busiest<'a>, told: &[Id], found: &mut Findings<'_>) -> Vec<Id> {
        let mut order = (self.draws)(&busiest.on);
        order.sort_by_key(|need| std::cmp::Reverse(self.step(need)));
        let about = ids(&order);
        // Too much while running is another rule's finding; this one is about starting.
        let starts = order.first().is_some_and(|largest| self.step(largest) > 0);
        let all_told = |these: &[Id]| these.iter().all(|id| told.contains(id));
        if self.fits(&order)
            || !order.iter().all(self.judges)
            || !starts
            || self.sum(&order) > self.rated
            || all_told(&about)
        {
            return Vec::new();
        }
        let mut shown = self.shown(self.worst(&order));
        shown.extend(when(busiest.minute, &busiest.on));
        let (signal, fix, off) = match beside(&order, |on| self.fits(on)) {
            // Started first, the largest would fit, but nobody is there when it restarts.
            Beside::Nothing if self.holds(&order) => (Signal::Caution, self.fixes[1], None),
            Beside::Nothing => (Signal::Caution, self.fixes[2], None),
            Beside::TooMuch(life) if all_told(&life) && !told.is_empty() => return Vec::new(),
            Beside::TooMuch(life) => {
                shown.insert("life", Value::Parts(life));
                (Signal::Warning, "life-together", None)
            }
            Beside::Off { life, off } => {
                let fix = if off.is_empty() { "life-turns" } else { "life-off" };
                shown.insert("life", Value::Parts(life));
                (Signal::Warning, fix, Some(off))
            }
        };
        let off = off.map(|off| ("off", Value::Parts(off)));
        found.add(signal, about.clone(), shown, fix, off.into_iter().collect());
        about
    }
}

fn check<'a>(facts: &Facts<'a>, found: &mut Findings<'_>) {
    let (peak, rated) = (facts.supply.peak, facts.supply.rated);
    let assumed = &facts.figures.assumed;
    let guessed = |need: &Need<'a>| {
        let of_load = format!("load.{}.", need.load.id);
        assumed.iter().any(|it| it.field.starts_with(&of_load))
    };
    let watts = Judge {
        running: |need| need.running().milliwatts(),
        starting: |need| need.starting().milliwatts(),
        peak: peak.milliwatts(),
        rated: rated.milliwatts(),
        guessed: &guessed,
        judges: &|need| need.by_watts(facts.supply),
        draws: &<[_]>::to_vec,
        value: &|count| Power::from_milliwatts(count).into(),
        told: peak.into(),
        fixes: ["alone", "again", "fewer"],
    };
    let alone = match facts.supply.node(NodeIx(0)).legs.all() {
        [_] => "amps-alone",
        _ => "leg-alone",
    };
    let on_a = |on: &[Need<'a>]| facts.those_on_leg(on, Leg::A);
    let on_b = |on: &[Need<'a>]| facts.those_on_leg(on, Leg::B);
    let amps = |count| {
        let apparent = ApparentPower::from_millivolt_amps(count);
        Current::of_apparent(apparent, facts.supply.volts).into()
    };
    let leg = |draws| Judge {
        running: |need| need.apparent().millivolt_amps(),
        starting: |need| need.starting_apparent().millivolt_amps(),
        peak: facts.supply.peak_room().millivolt_amps(),
        rated: facts.supply.room(NodeIx(0)).millivolt_amps(),
        guessed: &guessed,
        judges: &|_| true,
        draws,
        value: &amps,
        told: facts.supply.leg_peak.into(),
        fixes: [alone, "amps-again", "amps-fewer"],
    };
    let legs = [leg(&on_a), leg(&on_b)];
    // First what can never start: it stays home, and the rest is judged without it.
    let mut needs = facts.needs();
    watts.alone(&mut needs, found);
    legs[0].alone(&mut needs, found);
    needs.retain(Need::asks_the_set);
    let mut told = watts.together(&needs, &[], found);
    for leg in &legs {
        told.extend(leg.together(&needs, &told, found));
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::{findings, signals};

    /// Starting takes 4501 W of 4500 W: a warning for a load that must run, a caution for a wish. At 4450 W, beside the
    /// 50 W of the fan, nothing is found.
    #[test]
    fn what_must_run_and_never_starts_is_a_warning() {
        let start = |watts: &'static str| ("power_factor = 1.0", watts);
        let wish = ("wanted = \"must\" # kettle", "wanted = \"wish\"");
        let over = start("starting = \"4501 W\"");
        assert_eq!(signals("POWER002", &[over]), [Signal::Warning]);
        assert_eq!(signals("POWER002", &[over, wish]), [Signal::Caution]);
        assert_eq!(signals("POWER002", &[start("starting = \"4450 W\"")]), []);
    }

    /// Two loads that cannot start beside one another, with no hours in the plan: the finding names no hour. With the
    /// hours of one of them, it does.
    #[test]
    fn no_hour_is_named_that_nobody_gave() {
        let told = |hours: &'static str| -> (bool, bool) {
            let report = crate::rules::testing::report(&[
                ("power_factor = 1.0", "starting = \"4000 W\""),
                ("running = \"50 W\"", "running = \"1440 W\"\nstarting = \"3400 W\""),
                ("hours = [\"18:00-23:00\"]", ""),
                ("hours = [\"18:30-19:00\"]", hours),
            ]);
            let found = report.findings.iter().find(|it| it.code == "POWER002");
            let found = found.expect("it is found");
            let words = crate::words::Words::english();
            let why = words.finding(found, &report.figures.loads).why;
            (found.values.contains_key("time"), why.contains("At any hour"))
        };
        assert_eq!(told(""), (false, true));
        assert_eq!(told("hours = [\"18:30-19:00\"]"), (true, false));
    }

    /// A medical load of 50 W takes 4480 W to start, too much beside the kettle in the evening and the grill in the
    /// morning: both hours are reported. For a fan with the same start, only the worst is.
    #[test]
    fn what_a_life_depends_on_is_told_of_at_every_hour() {
        let grill = "[[load]]\nid = \"grill\"\nname = \"Grill\"\nkind = \"heater\"\nrunning = \"750 W\"\n\
             hours = [\"07:00-07:30\"]\nplug = \"5-15P\"\n[[load]]\nid = \"fan\"";
        let edits = [
            ("[[load]]\nid = \"fan\"", grill),
            ("hours = [\"18:00-23:00\"]", "hours = [\"06:00-23:00\"]"),
            ("running = \"50 W\"", "running = \"50 W\"\nstarting = \"4480 W\""),
        ];
        let hours = |edits: &[(&str, &str)]| -> Vec<u16> {
            let found = findings(edits);
            let found = found.iter().filter(|it| it.code == "POWER002");
            let mut hours: Vec<u16> = found
                .map(|it| match it.values["time"] {
                    crate::report::Value::Time(minute) => minute,
                    _ => panic!("a time is no time"),
                })
                .collect();
            hours.sort_unstable();
            hours
        };
        assert_eq!(hours(&[&[super::LIFE], &edits[..]].concat()), [7 * 60, 18 * 60 + 30]);
        assert_eq!(hours(&edits), [18 * 60 + 30]);
    }

    /// A load that surely cannot start and one whose start is unknown: the first finding is certain, the second a
    /// guess.
    #[test]
    fn what_is_certain_is_told_apart_from_a_guess() {
        let told = |fan: &str| -> Vec<(Vec<String>, bool)> {
            let fan = format!("kind = \"motor\"\nstarting = {fan}");
            let edits = [
                ("power_factor = 1.0", "starting = \"4501 W\""),
                ("kind = \"electronic\" # fan", fan.as_str()),
                ("running = \"50 W\"", "running = \"1400 W\""),
            ];
            let found = crate::rules::testing::report(&edits).findings;
            let found = found.into_iter().filter(|it| it.code == "POWER002");
            let about = |ids: Vec<crate::plan::Id>| ids.iter().map(ToString::to_string).collect();
            found.map(|it| (about(it.about), it.rests_on.is_empty())).collect()
        };
        let each = |ids: &[&str], sure| (ids.iter().map(ToString::to_string).collect(), sure);
        assert_eq!(told("\"unknown\""), [each(&["kettle"], true), each(&["fan"], false)]);
        assert_eq!(told("\"4600 W\""), [each(&["fan", "kettle"], true)]);
    }

    /// 37.6 A locked rotor are 4512 VA at 120 V, whatever the power factor, and 37.0 A are 4440 VA. Read as watts and
    /// divided by a power factor of 0.8, the 37.0 A would be 46 A, more than the generator's 37.5 A.
    #[test]
    fn locked_rotor_amps_are_divided_by_nothing() {
        let amps =
            |start: &'static str| [("kind = \"heater\" # kettle", "kind = \"motor\""), ("power_factor = 1.0", start)];
        let found = |start| signals("POWER002", &amps(start));
        let told = "power_factor = 0.8\nstarting_current = \"37.0 A\"";
        assert_eq!(found(told), []);
        assert_eq!(found("power_factor = 0.8\nstarting_current = \"37.6 A\""), [Signal::Warning]);
        assert_eq!(found("power_factor = 0.8\nstarting = \"4440 W\""), [Signal::Warning]);
    }

    /// NEC 430.251(A): a ½ hp motor at 115 V has 58.8 A locked rotor, six times its 9.8 A. At the 120 V used here that
    /// is 7056 W, more than the generator's 4500 W.
    #[test]
    fn a_motor_starts_at_six_times_its_running_current() {
        let motor = [
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("running = \"1500 W\"\npower_factor = 1.0", "motor = { hp = \"1/2\" }"),
        ];
        let found = findings(&motor);
        let peak = found.iter().find(|it| it.code == "POWER002");
        let demand = peak.and_then(|it| it.values.get("demand"));
        assert_eq!(demand, Some(&crate::quantity::Power::from_milliwatts(7_056_000).into()));
    }
}

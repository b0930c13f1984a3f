#![doc = include_str!("../../../i18n/en/explain/VOLT001.md")]

use crate::plan::{Id, LoadKind};
use crate::quantity::{Percent, Voltage};
use crate::report::Drop;
use crate::rules::demand::once;
use crate::rules::prelude::*;
use crate::supply::drop::{lost, volts_lost};
use crate::tables::volts::{MUCH, NOTED, USE_LEAST, USE_LEAST_B, at_nominal};

/// The dip above which a start is in doubt.
const DIP: Percent = Percent::from_millipercent(15_000);

pub(super) const RULE: Rule = Rule {
    code: "VOLT001",
    name: "voltage-drop",
    area: "voltage",
    worst: Signal::Warning,
    sources: &[cite::NEC_DROP, cite::NEC_TABLE_8, cite::IEC_60228, cite::C84_1, cite::C84_1_IN_USE, cite::PRACTICE],
    fixes: &["thicker", "range-b", "below-b", "start", "start-alone"],
    check,
    #[cfg(test)]
    fires: &[
        &[("length = \"50 ft\"", "length = \"200 ft\"")],
        &[("length = \"50 ft\"", "length = \"430 ft\"")],
        &[("length = \"50 ft\"", "length = \"600 ft\"")],
        &[
            ("length = \"50 ft\"", "length = \"200 ft\""),
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("power_factor = 1.0", "power_factor = 1.0\nstarting = \"4440 W\""),
        ],
        // Only beside the fan.
        &[
            ("length = \"50 ft\"", "length = \"196 ft\""),
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("power_factor = 1.0", "power_factor = 1.0\nstarting = \"4440 W\""),
        ],
    ],
    #[cfg(test)]
    spares: &[&[]],
};

/// Returns a drop on starting as a share of nominal voltage, rounded up.
fn share(facts: &Facts<'_>, drop: &Drop) -> Percent {
    share_of(facts, drop, drop.volts_starting)
}

/// Returns `volts` as a share of the nominal voltage at a drop's receptacle, rounded up.
fn share_of(facts: &Facts<'_>, drop: &Drop, volts: Voltage) -> Percent {
    let nominal = facts.figures.limit(&drop.receptacle).map_or(facts.supply.volts, |limit| limit.volts);
    let nominal = nominal.millivolts().max(1);
    Percent::from_millipercent((volts.millivolts() * 100_000 + nominal - 1) / nominal)
}

/// Returns the loads, worst drop first, each once.
fn places(mut drops: Vec<(Percent, &Drop)>) -> Vec<Id> {
    drops.sort_by_key(|(percent, _)| std::cmp::Reverse(*percent));
    once(drops.into_iter().map(|(_, drop)| &drop.at))
}

/// Iterates over the drops at everything plugged in, including loads that are too large for the generator.
fn all<'f>(facts: &Facts<'f>) -> impl Iterator<Item = &'f Drop> {
    facts.figures.drops.iter().chain(&facts.figures.drops_alone)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let running: Vec<(Percent, &Drop)> =
        all(facts).map(|drop| (drop.percent_running, drop)).filter(|(percent, _)| *percent > NOTED).collect();
    if let Some((percent, worst)) = running.iter().copied().max_by_key(|(percent, _)| *percent) {
        let left = worst.volts_left;
        let nominal = left + worst.volts_running;
        let bound = |bound| at_nominal(bound, nominal);
        let fix = if left < bound(USE_LEAST_B) {
            "below-b"
        } else if left < bound(USE_LEAST) {
            "range-b"
        } else {
            "thicker"
        };
        found.add(
            if percent > MUCH { Signal::Caution } else { Signal::Notice },
            places(running),
            values([
                ("drop", worst.volts_running.into()),
                ("percent", percent.into()),
                ("left", left.into()),
                ("least", bound(USE_LEAST).into()),
                ("least-b", bound(USE_LEAST_B).into()),
                ("noted", NOTED.into()),
                ("much", MUCH.into()),
            ]),
            fix,
            values([]),
        );
    }
    let starting: Vec<(Percent, &Drop)> = all(facts)
        // A start dips further than running only if it draws more.
        .filter(|drop| starts(facts, &drop.at))
        .map(|drop| (share(facts, drop), drop))
        .filter(|(percent, _)| *percent > DIP)
        .collect();
    let (motors, others): (Vec<_>, Vec<_>) = starting.into_iter().partition(|(_, drop)| may_turn(facts, &drop.at));
    for (signal, starting) in [(Signal::Warning, motors), (Signal::Caution, others)] {
        let most = starting.iter().copied().max_by_key(|(percent, _)| *percent);
        let Some((percent, worst)) = most else {
            continue;
        };
        found.add(
            signal,
            places(starting),
            values([("drop", worst.volts_starting.into()), ("percent", percent.into()), ("much", DIP.into())]),
            if too_far_alone(facts, worst) { "start-alone" } else { "start" },
            values([]),
        );
    }
}

/// Whether the dip is too large with nothing else on, so that starting it alone would not help.
fn too_far_alone(facts: &Facts<'_>, drop: &Drop) -> bool {
    let supply = facts.supply;
    let load = facts.figures.load(&drop.at);
    let (Some(load), Some(at)) = (load, supply.receptacle(&drop.receptacle)) else {
        return false;
    };
    let gone = lost(volts_lost(supply.resistance_to(at), load.starting_amps));
    share_of(facts, drop, gone) > DIP
}

/// Whether a load draws more as it starts.
fn starts(facts: &Facts<'_>, id: &Id) -> bool {
    let load = facts.figures.load(id);
    load.is_some_and(|load| load.starting_amps > load.running_amps)
}

/// Whether a load has, or may have, a motor that a dip can stall. Some medical loads have one.
fn may_turn(facts: &Facts<'_>, id: &Id) -> bool {
    let of = facts.figures.load(id);
    let load = of.and_then(|of| facts.plan.load(&of.of));
    load.is_none_or(|load| load.may_be(LoadKind::Motor) || load.may_be(LoadKind::Medical))
}

#[cfg(test)]
mod tests {
    use crate::report::{Signal, Value};
    use crate::rules::testing::{findings, signals};

    /// 10 AWG has 1.24 ohm per 1000 ft (NEC Chapter 9 Table 8), out and back, for the kettle's 1500 W, which drops as
    /// the volts sink, and the fan's 50 W, which does not. By the greater root of v^2 (1/R + 1500/120^2) - 120 v/R +
    /// 50 = 0, 108 V is left at some 413 ft and 104 V at some 570 ft (ANSI C84.1, ranges A and B).
    #[test]
    fn the_ranges_of_volts_in_use() {
        for (feet, fix) in [(200, "thicker"), (410, "thicker"), (415, "range-b"), (560, "range-b"), (580, "below-b")] {
            let length = format!("length = \"{feet} ft\"");
            let found = findings(&[("length = \"50 ft\"", &length)]);
            let found = found.iter().find(|it| it.code == "VOLT001").expect("found");
            let Value::Amount(left) = &found.values["left"] else { panic!("{found:?}") };
            assert_eq!(found.fix.key, fix, "{feet} ft leaves {left:?}");
            let range = match left.amount {
                volts if volts >= 108.into() => "thicker",
                volts if volts >= 104.into() => "range-b",
                _ => "below-b",
            };
            assert_eq!(range, fix);
        }
    }

    /// 1500 W of heat and 300 W of electronics behind 102 ft of 12 AWG, 0.40392 ohm (1.98 ohm per 1000 ft, NEC Chapter
    /// 9 Table 8). By the root above, with 300 for 50, 5.86 V are lost, 4.9 %. With the heater at its full current it
    /// would be 6.11 V, 5.1 %, a caution. At 106 ft 6.09 V really are lost.
    #[test]
    fn a_heater_that_sinks_with_the_volts_is_no_false_caution() {
        for (feet, expected) in [(102, Signal::Notice), (106, Signal::Caution)] {
            let length = format!("length = \"{feet} ft\"");
            let edits = [
                (
                    "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                    "from = \"front\"\nplug = \"5-20P\"\nends = [\"5-20R\", \"5-20R\"]",
                ),
                ("from = \"long\"\ninlet", "inlet"),
                ("wire = \"10 AWG\" # long", "wire = \"12 AWG\""),
                ("length = \"50 ft\"", length.as_str()),
                ("running = \"50 W\"", "running = \"300 W\""),
                ("on = \"left\" # kettle", "on = \"long.1\""),
                ("on = \"right\" # fan", "on = \"long.2\""),
            ];
            assert_eq!(signals("VOLT001", &edits), [expected], "{feet} ft");
        }
    }

    /// The kettle takes 4501 W of 4500 W to start, behind 200 ft of 10 AWG, 0.496 ohm: while it runs, its 12.5 A lose
    /// 6.2 V of 120 V, whatever the generator can start. At 50 ft only the generator is reported.
    #[test]
    fn what_cannot_start_loses_its_volts_all_the_same() {
        let large = ("power_factor = 1.0", "power_factor = 1.0\nstarting = \"4501 W\"");
        let long = ("length = \"50 ft\"", "length = \"200 ft\"");
        let told = |edits: &[(&str, &str)]| -> Vec<&str> {
            let found = findings(edits);
            let of_kettle = |it: &&crate::report::Finding| it.about.iter().any(|id| id.as_str() == "kettle");
            let codes = found.iter().filter(of_kettle).map(|it| it.code);
            codes.filter(|code| ["POWER002", "VOLT001"].contains(code)).collect()
        };
        let both = told(&[large, long]);
        assert!(both.contains(&"POWER002") && both.contains(&"VOLT001"), "{both:?}");
        assert_eq!(told(&[large]), ["POWER002"]);
    }

    /// The kettle, here a motor, starts with 37 A. Through 200 ft of 10 AWG, 0.496 ohm, that is a dip of 18.35 V,
    /// 15.3 % of 120 V, even with all else off. Through 196 ft, 0.48608 ohm, it is 17.98 V, 14.99 %, and with the fan's
    /// 0.42 A 18.19 V, 15.2 %.
    #[test]
    fn a_dip_at_which_a_motor_stalls_is_a_warning() {
        let motor = ("kind = \"heater\" # kettle", "kind = \"motor\"");
        let electronic = ("kind = \"heater\" # kettle", "kind = \"electronic\"");
        let start = ("power_factor = 1.0", "power_factor = 1.0\nstarting = \"4440 W\"");
        let away = ("on = \"right\" # fan", "on = \"front\"");
        for (edits, feet, expected) in [
            (&[motor, start][..], 200, Some((Signal::Warning, "start-alone"))),
            (&[motor, start, away], 200, Some((Signal::Warning, "start-alone"))),
            (&[electronic, start], 200, Some((Signal::Caution, "start-alone"))),
            (&[motor, start], 196, Some((Signal::Warning, "start"))),
            (&[motor, start, away], 196, None),
        ] {
            let length = format!("length = \"{feet} ft\"");
            let mut edits = edits.to_vec();
            edits.push(("length = \"50 ft\"", length.as_str()));
            let found = findings(&edits);
            let found = found
                .iter()
                .filter(|it| it.code == "VOLT001" && it.fix.key.starts_with("start"))
                .map(|it| (it.signal, it.fix.key));
            assert_eq!(found.collect::<Vec<_>>(), Vec::from_iter(expected), "{edits:?}");
        }
    }
}

//! # VOLT001 voltage-drop
//!
//! ## What it checks
//! How much voltage is lost between the generator and each place of use while everything that may
//! run together runs, and in the moment the heaviest load there starts.
//!
//! ## Why it hurts
//! Low voltage makes motors and compressors draw more and run hot, makes them fail to start, dims
//! lamps and upsets chargers. It wastes power as heat in the cord. It rarely hurts anyone by
//! itself.
//!
//! ## The arithmetic
//! Amperes times the resistance of the conductors out and back, added up along the path, as a
//! share of nominal voltage. Resistance is the published figure for copper at 75 °C. Above 3 % is
//! noted, above 5 % is a caution: both are informational figures, nobody enforces them. Above 5 %
//! also leaves less than the 114 V that a 120 V service may go down to. What steady volts are left at
//! the worst place is told by the ranges of ANSI C84.1 for things of 120 V: down to 108 V is range A,
//! what they are made for; from 108 V to 104 V is range B, uncommon and to be put right soon; below
//! 104 V they may stop or be harmed. At 240 V it is twice that. The set is taken to give its nominal
//! voltage: under load it may give less. A dip of more than 15 % on starting is a caution, because
//! many motors then fail to start.
//!
//! ## What to do
//! Use a thicker or a shorter cord, or move the load nearer to the generator's end of it. Two steps
//! thicker (14 to 12 to 10 AWG) loses well under half.
//!
//! ## Sources
//! - NFPA 70 (NEC), 210.19, informational note, 2023: 3 % and 5 % (from a secondary copy).
//! - NFPA 70 (NEC), Chapter 9 Table 8: resistance of copper (confirmed).
//! - COMAR (Maryland), as ANSI C84.1 range A, 20.50.07.02: 114 to 126 V (confirmed).
//! - ANSI C84.1, as Pacific Gas and Electric's voltage tolerance boundary and a revision draft give it,
//!   utilization voltage of 120 V: ranges A and B (from a secondary copy).
//! - A dip of 15 % on starting is common practice, no source.

use crate::plan::Id;
use crate::quantity::{Percent, Voltage};
use crate::report::Drop;
use crate::rules::demand::{once, quantity};
use crate::rules::prelude::*;
use crate::tables::volts::{MUCH, NOTED, USE_LEAST, USE_LEAST_B, at_nominal};

/// A start is in doubt above this.
const DIP: Percent = Percent::from_millipercent(15_000);

pub(super) const RULE: Rule = Rule {
    code: "VOLT001",
    name: "voltage-drop",
    area: "voltage",
    worst: Signal::Caution,
    text: include_str!("voltage_drop.rs"),
    sources: &[
        cite::NEC_DROP,
        cite::NEC_TABLE_8,
        cite::C84_1,
        cite::C84_1_IN_USE,
        cite::PRACTICE,
    ],
    fixes: &["thicker", "range-b", "below-b", "start"],
    check,
    #[cfg(test)]
    fires: &[
        &[("length = \"50 ft\"", "length = \"200 ft\"")],
        &[("length = \"50 ft\"", "length = \"400 ft\"")],
        &[("length = \"50 ft\"", "length = \"600 ft\"")],
        &[
            ("length = \"50 ft\"", "length = \"200 ft\""),
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("power_factor = 1.0", "power_factor = 1.0\nstarting = \"4440 W\""),
        ],
    ],
    #[cfg(test)]
    spares: &[&[]],
};

/// A drop on starting as a share of nominal voltage, rounded up.
fn share(facts: &Facts<'_>, drop: &Drop) -> Percent {
    let volts: Voltage = quantity(&drop.volts_starting);
    let nominal: Voltage = facts
        .figures
        .limits
        .iter()
        .find(|limit| limit.id == drop.receptacle)
        .map_or(facts.supply.volts, |limit| quantity(&limit.volts));
    let nominal = nominal.millivolts().max(1);
    Percent::from_millipercent((volts.millivolts() * 100_000 + nominal - 1) / nominal)
}

/// The places, the worst first, each once.
fn places(mut drops: Vec<(Percent, &Drop)>) -> Vec<Id> {
    drops.sort_by_key(|(percent, _)| std::cmp::Reverse(*percent));
    once(drops.into_iter().map(|(_, drop)| &drop.at))
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let running: Vec<(Percent, &Drop)> = facts
        .figures
        .drops
        .iter()
        .map(|drop| (quantity::<Percent>(&drop.percent_running), drop))
        .filter(|(percent, _)| *percent > NOTED)
        .collect();
    if let Some((percent, worst)) = running.iter().copied().max_by_key(|(percent, _)| *percent) {
        let left: Voltage = quantity(&worst.volts_left);
        let nominal = left + quantity::<Voltage>(&worst.volts_running);
        let bound = |bound| at_nominal(bound, nominal);
        let fix = if left < bound(USE_LEAST_B) {
            "below-b"
        } else if left < bound(USE_LEAST) {
            "range-b"
        } else {
            "thicker"
        };
        found.add(
            if percent > MUCH {
                Signal::Caution
            } else {
                Signal::Notice
            },
            places(running),
            values([
                ("drop", quantity::<Voltage>(&worst.volts_running).into()),
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
    let starting: Vec<(Percent, &Drop)> = facts
        .figures
        .drops
        .iter()
        // Nothing dips further when it starts than while it runs, unless it draws more then.
        .filter(|drop| {
            quantity::<Voltage>(&drop.volts_starting) > quantity::<Voltage>(&drop.volts_running)
        })
        .map(|drop| (share(facts, drop), drop))
        .filter(|(percent, _)| *percent > DIP)
        .collect();
    if let Some((percent, worst)) = starting.iter().copied().max_by_key(|(percent, _)| *percent) {
        found.add(
            Signal::Caution,
            places(starting),
            values([
                ("drop", quantity::<Voltage>(&worst.volts_starting).into()),
                ("percent", percent.into()),
                ("much", DIP.into()),
            ]),
            "start",
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use crate::quantity::Voltage;
    use crate::report::Value;
    use crate::rules::demand::quantity;
    use crate::rules::testing::findings;

    /// 1.24 ohm per 1000 ft of 10 AWG (NEC Chapter 9 Table 8), out and back, for the 12.5 A of the
    /// kettle and the fan beside it: about 0.032 V a foot. 108 V is left at some 370 ft, 104 V at some
    /// 495 ft (ANSI C84.1, ranges A and B).
    #[test]
    fn the_ranges_of_volts_in_use() {
        for (feet, fix) in [(200, "thicker"), (360, "thicker"), (390, "range-b"), (480, "range-b"), (520, "below-b")] {
            let length = format!("length = \"{feet} ft\"");
            let found = findings(&[("length = \"50 ft\"", &length)]);
            let found = found.iter().find(|it| it.code == "VOLT001").expect("found");
            let Value::Amount(left) = &found.values["left"] else {
                panic!("{found:?}")
            };
            let left = quantity::<Voltage>(left).millivolts();
            assert_eq!(found.fix.key, fix, "{feet} ft leaves {left} mV");
            let range = match left {
                108_000.. => "thicker",
                104_000.. => "range-b",
                _ => "below-b",
            };
            assert_eq!(range, fix);
        }
    }
}

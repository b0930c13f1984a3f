#![doc = include_str!("../../../i18n/en/explain/OVER005.md")]

use crate::plan::Answer;
use crate::quantity::{Current, Resistance};
use crate::rules::demand::{Need, once};
use crate::rules::prelude::*;
use crate::supply::NodeIx;

pub(super) const RULE: Rule = Rule {
    code: "OVER005",
    name: "current-limited-fault",
    area: "overcurrent",
    worst: Signal::Caution,
    sources: &[cite::UL_489, cite::NEC_TABLE_8, cite::IEC_60228, cite::PRACTICE],
    fixes: &["set", "look", "wire"],
    check,
    #[cfg(test)]
    fires: &[
        // 37.5 A from the generator. The breaker of the outlet in use is 15 A, that of the cord 30 A.
        &[("inverter = false", "inverter = true"), ("gfci = true # left", "gfci = false")],
        &[("inverter = false", "")],
        // 400 ft of 18 AWG: 6.36 ohm, 18.9 A. No GFCI cuts off a ground fault instead.
        &[
            ("length = \"50 ft\"", "length = \"400 ft\""),
            ("wire = \"10 AWG\"", "wire = \"18 AWG\""),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // The generator stops by itself, and a GFCI is on each path.
        &[("inverter = false", "inverter = true")],
        // 120 A.
        &[
            ("inverter = false", "inverter = true"),
            ("gfci = true # left", "gfci = false"),
            ("peak = \"4500 W\"", "peak = \"14400 W\""),
        ],
    ],
};

/// Returns the current of a dead short at the end of a resistance, rounded down. `None` if the resistance is zero, so
/// that the wire sets no bound.
pub(in crate::rules) fn through_wire(volts: crate::quantity::Voltage, loop_resistance: Resistance) -> Option<Current> {
    let ohms = i128::from(loop_resistance.microohms());
    // Millivolts over micro-ohms are thousands of amperes.
    (ohms > 0).then(|| {
        let milliamps = i128::from(volts.millivolts()) * 1_000_000 / ohms;
        Current::from_milliamps(i64::try_from(milliamps).unwrap_or(i64::MAX))
    })
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let limits_itself = facts.plan.generator.inverter != Answer::Known(false);
    let needs = facts.needs();
    // The worst fault of each breaker: the place with the least current.
    let mut worst: Vec<(NodeIx, Current, Current, NodeIx, bool)> = Vec::new();
    for need in &needs {
        let Some(at) = need.at else { continue };
        for (ix, _) in facts.supply.up(at) {
            let Some((breaker, marked)) = facts.supply.node(ix).protected_at else {
                continue;
            };
            let wire = through_wire(facts.supply.volts, facts.supply.resistance_to(ix));
            let from_set = limits_itself.then_some(facts.supply.leg_peak);
            let Some(fault) = wire.into_iter().chain(from_set).min() else {
                continue;
            };
            if fault.milliamps() >= marked.milliamps().saturating_mul(2) {
                continue;
            }
            let set_limits = from_set == Some(fault);
            match worst.iter_mut().find(|(known, ..)| *known == breaker) {
                Some(entry) if entry.2 <= fault => {}
                Some(entry) => *entry = (breaker, marked, fault, ix, set_limits),
                None => worst.push((breaker, marked, fault, ix, set_limits)),
            }
        }
    }
    for set_limits in [true, false] {
        let these: Vec<_> = worst.iter().filter(|entry| entry.4 == set_limits).collect();
        // The one farthest from tripping stands for all.
        let Some((_, marked, fault, _, _)) = these.iter().min_by_key(|(_, marked, fault, ..)| {
            i128::from(fault.milliamps()) * 1_000_000 / i128::from(marked.milliamps().max(1))
        }) else {
            continue;
        };
        let places = these.iter().map(|(_, _, _, at, _)| *at);
        let about = once(places.map(|at| &facts.supply.node(at).id));
        let covered = these.iter().all(|(_, _, _, at, _)| needs_are_covered(facts, &needs, *at));
        // An inverter generator stops by itself before any breaker trips.
        let stops = set_limits && facts.plan.generator.inverter == Answer::Known(true);
        if stops && covered {
            continue;
        }
        found.add(
            if covered || stops { Signal::Notice } else { Signal::Caution },
            about,
            values([
                ("fault", (*fault).into()),
                ("breaker", (*marked).into()),
                ("soon", Current::from_milliamps(marked.milliamps().saturating_mul(2)).into()),
            ]),
            match (set_limits, stops) {
                (true, true) => "set",
                (true, false) => "look",
                (false, _) => "wire",
            },
            values([]),
        );
    }
}

/// Whether every load beyond this node has ground-fault protection upstream.
fn needs_are_covered<'a>(facts: &Facts<'a>, needs: &[Need<'a>], at: NodeIx) -> bool {
    facts.through(needs, at).iter().all(|need| need.at.is_some_and(|at| facts.verdicts.protected(at)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Length, Voltage, Wire};
    use crate::rules::testing::signals;
    use crate::tables::copper::out_and_back;

    /// 37.5 A from the generator, behind breakers of 15 and 30 A, with no GFCI upstream.
    #[test]
    fn a_set_that_stops_by_itself_is_a_notice() {
        let bare = [("gfci = true # left", "gfci = false"), ("gfci = true # right", "gfci = false")];
        for (inverter, expected) in [
            ("inverter = true", vec![Signal::Notice]),
            ("inverter = \"unknown\"", vec![Signal::Caution]),
            ("inverter = false", vec![]),
        ] {
            let edits = [bare[0], bare[1], ("inverter = false", inverter)];
            assert_eq!(signals("OVER005", &edits), expected, "{inverter}");
        }
    }

    /// NEC Chapter 9 Table 8: 3.14 ohm per 1000 ft of 14 AWG, so 100 ft out and back is 0.628 ohm, and a dead short at
    /// 120 V draws 191.08 A.
    #[test]
    fn the_current_of_a_short_by_ohms_law() {
        let wire = out_and_back(Wire::Awg(14), Length::from_millimetres(30_480));
        let amps = through_wire(Voltage::from_millivolts(120_000), wire).expect("a bound");
        assert_eq!(amps.milliamps(), 191_082);
        assert_eq!(through_wire(Voltage::from_millivolts(120_000), Resistance::ZERO), None);
    }
}

//! # OVER005 current-limited-fault
//!
//! ## What it checks
//! Whether a short circuit at the far end would draw enough current to trip the breaker soon, or whether
//! the generator or the wire lets through so little that it may not.
//!
//! ## Why it hurts
//! A breaker waits: the smaller the current above its marking, the longer. A generator that limits its own
//! current, as inverter generators do, can feed a fault for a long time at a current the breaker takes for
//! an ordinary overload, while the damaged place glows.
//!
//! ## The arithmetic
//! The current a dead short can draw at the end of each path is the smaller of two: the voltage over the
//! resistance of the conductors out and back, and what the generator itself can drive. For an inverter
//! generator that is its peak power over its voltage; silence and "I don't know" count as an inverter. For
//! others only the wire is counted: how long their alternator holds up a short is not known.
//!
//! A UL 489 breaker must trip within an hour at 135 % of its marking, and one of up to 30 A within two
//! minutes at 200 %. Of the small protectors to UL 1077 the maker says when they trip (a trade page); that
//! many small generators have those is from memory, and they may trip later. Below 200 % this rule speaks.
//!
//! What protects then: the generator's own shutdown, which acts on what it can drive and not on where the
//! fault is; the GFCI, for what goes to ground; and whoever smells it and presses stop. Of an inverter
//! generator, whose own shutdown comes first, it is a notice, and nothing where a GFCI is on every path as
//! well: then something acts on each of the two kinds of fault. Where we do not know if it is one, and
//! where the wire lets through too little, nothing is known to act: a caution, and a notice where a GFCI is
//! on the path, because most faults in wet gear go to ground.
//!
//! ## What to do
//! Know how to stop the engine and where its overload light is. When lamps go dim at once or
//! something smells hot: stop the engine, unplug, and only then look. A shorter or thicker cord lets
//! a breaker act sooner, where the wire is what limits.
//!
//! ## Sources
//! - UL 489, calibration: 135 % within an hour, 200 % within two minutes up to 30 A (from a secondary
//!   copy).
//! - NFPA 70 (NEC), Chapter 9 Table 8: resistance of copper (confirmed).
//! - That an inverter set limits a short to about its peak and then shuts down is common practice, no
//!   source.

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
    text: include_str!("current_limited_fault.rs"),
    sources: &[cite::UL_489, cite::NEC_TABLE_8, cite::PRACTICE],
    fixes: &["set", "look", "wire"],
    check,
    #[cfg(test)]
    fires: &[
        // 37.5 A from the set; the breaker of the outlet in use is 20 A, the one of the cord 30 A.
        &[("inverter = false", "inverter = true"), ("gfci = true # left", "gfci = false")],
        &[("inverter = false", "")],
        // 400 ft of 18 AWG: 6.36 ohm, 18.9 A. Nothing cuts off a fault to ground instead.
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
        // The set stops by itself, and a GFCI is on each path.
        &[("inverter = false", "inverter = true")],
        // 120 A.
        &[
            ("inverter = false", "inverter = true"),
            ("gfci = true # left", "gfci = false"),
            ("peak = \"4500 W\"", "peak = \"14400 W\""),
        ],
    ],
};

/// The current of a dead short at the end of a resistance, rounded down. `None`: no resistance is
/// counted, and the wire sets no bound.
pub(in crate::rules) fn through_wire(
    volts: crate::quantity::Voltage,
    loop_resistance: Resistance,
) -> Option<Current> {
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
    // The worst of each breaker: the place with the least current.
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
        let these: Vec<_> = worst
            .iter()
            .filter(|entry| entry.4 == set_limits)
            .collect();
        // The one that is farthest from tripping stands for all.
        let Some((_, marked, fault, _, _)) = these
            .iter()
            .min_by_key(|(_, marked, fault, ..)| {
                i128::from(fault.milliamps()) * 1_000_000 / i128::from(marked.milliamps().max(1))
            })
        else {
            continue;
        };
        let places = these.iter().map(|(_, _, _, at, _)| *at);
        let about = once(places.map(|at| &facts.supply.node(at).id));
        let covered = these
            .iter()
            .all(|(_, _, _, at, _)| needs_are_covered(facts, &needs, *at));
        // An inverter set stops by itself before any breaker.
        let stops = set_limits && facts.plan.generator.inverter == Answer::Known(true);
        if stops && covered {
            continue;
        }
        found.add(
            if covered || stops {
                Signal::Notice
            } else {
                Signal::Caution
            },
            about,
            values([
                ("fault", (*fault).into()),
                ("breaker", (*marked).into()),
                (
                    "soon",
                    Current::from_milliamps(marked.milliamps().saturating_mul(2)).into(),
                ),
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

/// Whether every load beyond this point has ground-fault protection on its path.
fn needs_are_covered<'a>(facts: &Facts<'a>, needs: &[Need<'a>], at: NodeIx) -> bool {
    facts
        .through(needs, at)
        .iter()
        .all(|need| need.at.is_some_and(|at| facts.verdicts.protected(at)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Length, Voltage, Wire};
    use crate::rules::testing::signals;
    use crate::tables::copper::out_and_back;

    /// 37.5 A from the set, behind breakers of 15 and 30 A, with no GFCI anywhere on the way.
    #[test]
    fn a_set_that_stops_by_itself_is_a_notice() {
        let bare = [
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ];
        for (inverter, expected) in [
            ("inverter = true", vec![Signal::Notice]),
            ("inverter = \"unknown\"", vec![Signal::Caution]),
            ("inverter = false", vec![]),
        ] {
            let edits = [bare[0], bare[1], ("inverter = false", inverter)];
            assert_eq!(signals("OVER005", &edits), expected, "{inverter}");
        }
    }

    /// NEC Chapter 9 Table 8: 3.14 ohm per 1000 ft of 14 AWG, so 100 ft out and back is 0.628 ohm
    /// and a dead short at 120 V draws 191.08 A.
    #[test]
    fn the_current_of_a_short_by_ohms_law() {
        let wire = out_and_back(Wire::Awg(14), Length::from_millimetres(30_480));
        let amps = through_wire(Voltage::from_millivolts(120_000), wire).expect("a bound");
        assert_eq!(amps.milliamps(), 191_082);
        assert_eq!(
            through_wire(Voltage::from_millivolts(120_000), Resistance::ZERO),
            None
        );
    }
}

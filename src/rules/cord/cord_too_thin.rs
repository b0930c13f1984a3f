#![doc = include_str!("../../../i18n/en/explain/CORD001.md")]

use crate::plan::{Cord, Id};
use crate::quantity::Current;
use crate::rules::demand::{Need, busiest, planned};
use crate::rules::prelude::*;
use crate::supply::{LimitReason, NodeIx, UNKNOWN_CORD};
use crate::tables::conductor::CORD_SET_CIRCUIT;
use crate::tables::conductor::{flexible_ampacity, in_air};
use crate::verdict::own_limit;

pub(super) const RULE: Rule = Rule {
    code: "CORD001",
    name: "cord-too-thin",
    area: "cord",
    worst: Signal::Danger,
    sources: &[cite::NEC_400_5, cite::NEC_400_5_A, cite::BS_7671, cite::UL_817, cite::WD_6],
    fixes: &["thicker", "unwind", "unwind-less", "plug", "tag"],
    check,
    #[cfg(test)]
    fires: &[
        // 13.3 A through 16 AWG behind 20 A.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "inlet = \"L5-30P\""),
            ("running = \"1500 W\"", "running = \"1600 W\""),
            ("on = \"left\" # kettle", "on = \"long\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
        // 12.5 A through 16 AWG longer than 50 ft, which is marked 10 A.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("length = \"50 ft\" # long", "length = \"51 ft\" # long"),
            ("from = \"long\"\ninlet = \"L5-30P\"", "inlet = \"L5-30P\""),
            ("on = \"left\" # kettle", "on = \"long\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
        // 16.7 A through a 15 A plug on 12 AWG.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-15P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-15R\"]"),
            ("wire = \"10 AWG\"", "wire = \"12 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "inlet = \"L5-30P\""),
            ("running = \"1500 W\"", "current = \"16.7 A\""),
            ("on = \"left\" # kettle", "on = \"long\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
        // Coiled.
        &[("coiled = false", "coiled = true")],
        // Too thin and coiled.
        &[("coiled = false", "coiled = true"), ("wire = \"10 AWG\"", "wire = \"18 AWG\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // 12.5 A through 16 AWG behind 20 A.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "inlet = \"L5-30P\""),
            ("on = \"left\" # kettle", "on = \"long\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
        // 13.3 A through 16 AWG behind 20 A, on a generator that gives 12.5 A, and 16.7 A for a moment.
        &[
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1500 W\""),
            ("peak = \"4500 W\"", "peak = \"2000 W\""),
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "inlet = \"L5-30P\""),
            ("running = \"1500 W\"", "running = \"1600 W\""),
            ("on = \"left\" # kettle", "on = \"long\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
    ],
};

/// Returns how the cord's wire is marked.
fn wire(cord: Option<&Cord>) -> Value {
    cord.and_then(|cord| cord.wire.known())
        .map_or(Value::Word { word: "not-known" }, |wire| Value::Name(wire.to_string()))
}

/// Returns what the wire itself carries in cool air, laid out straight.
fn ampacity(cord: &Cord) -> Current {
    flexible_ampacity(cord.wire.or(UNKNOWN_CORD))
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let needs = facts.needs();
    for (ix, node) in facts.supply.cords().filter(|(_, node)| node.reason != LimitReason::NotFed) {
        // If only the heat makes it too much, rule CORD006 reports it.
        let limit = node.when_cool;
        if stops_first(facts, ix, limit) {
            continue;
        }
        let Some(Asked { demand, about }) = asked(facts, &needs, ix, limit) else {
            continue;
        };
        let loads = facts.plan.loads.iter().filter(|load| about.contains(&load.id));
        // A load that runs in a camper cannot go to another outlet.
        let inside = loads.clone().all(|load| facts.plan.around(load).is_some());
        let there = planned(loads);
        let plan = facts.plan.cord(&node.id);
        let laid_out = node.laid_out;
        let fix = match plan {
            // Coiled, the cord is limited neither by its plug nor by its mark. Uncoiling alone is no remedy for what is
            // too much even laid out.
            _ if limit < laid_out && demand <= laid_out => "unwind",
            _ if limit < laid_out => "unwind-less",
            Some(cord) if cord.plug.known().is_some_and(|plug| laid_out == plug.0.rating()) => "plug",
            Some(cord) if laid_out < ampacity(cord) => "tag",
            _ => "thicker",
        };
        // A code allows a cord set behind such a breaker, and its wire carries all of the demand as it lies.
        let small = node.protected_at.is_some_and(|(_, breaker)| breaker <= CORD_SET_CIRCUIT);
        let carried = limit == laid_out && plan.is_some_and(|cord| demand <= in_air(ampacity(cord), facts.supply.air));
        found.add(
            if matches!(fix, "plug" | "tag") && small && carried { Signal::Warning } else { Signal::Danger },
            about,
            values([
                ("demand", demand.into()),
                // Derated for heat too, as this limit is reported everywhere else.
                ("limit", node.rating.into()),
                ("wire", wire(plan)),
                ("planned", there),
            ]),
            fix,
            values([("inside", Value::yes_no(inside))]),
        );
    }
}

/// Whether a breaker on either side of this cord, or the generator itself, stops a current above its limit, so that no
/// cord rule has anything to report.
pub(super) fn stops_first(facts: &Facts<'_>, cord: NodeIx, limit: Current) -> bool {
    let own = own_limit(facts.plan, facts.supply);
    let breakers = facts.supply.node(cord).protected_at.into_iter().chain(facts.supply.main_past(cord));
    breakers.map(|(_, breaker)| breaker).any(|breaker| breaker <= limit) || own.is_some_and(|own| own.spares(limit))
}

/// A demand beyond a cord's limit.
pub(super) struct Asked {
    /// The current on the busier leg.
    pub demand: Current,
    /// The cord, then the loads that draw the current.
    pub about: Vec<Id>,
}

/// Returns the greatest demand on this cord, from the loads on beyond it at one time or from a load that it keeps out;
/// `None` if that is within the limit.
pub(super) fn asked<'a>(facts: &Facts<'a>, needs: &[Need<'a>], cord: NodeIx, limit: Current) -> Option<Asked> {
    let id = &facts.supply.node(cord).id;
    let through = facts.through(needs, cord);
    let busiest = busiest(&through, |on| facts.worst_leg(on));
    let together = facts.worst_leg(&busiest.on);
    let (demand, loads) = if together > limit {
        (together, busiest.ids())
    } else {
        let (load, amps) = kept_out(facts, needs, id, limit)?;
        (amps, vec![load])
    };
    let mut about = vec![id.clone()];
    about.extend(loads);
    Some(Asked { demand, about })
}

/// Returns a load without a place that this cord alone would keep out: its plug fits only beyond the cord, and it draws
/// more than the limit. Other obstacles do not matter: in a chain of two thin cords, both keep it out.
fn kept_out(facts: &Facts<'_>, needs: &[Need<'_>], cord: &Id, limit: Current) -> Option<(Id, Current)> {
    needs.iter().find_map(|need| {
        if need.at.is_some() || need.amps() <= limit {
            return None;
        }
        let plug = *need.load.plug.known()?;
        let mut fits = facts.figures.limits.iter().filter(|limit| limit.shape.takes(plug)).peekable();
        fits.peek()?;
        fits.all(|limit| limit.path.contains(cord)).then(|| (need.load.id.clone(), need.amps()))
    })
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::findings;

    /// 12.9 A through a coil of 18 AWG, which carries 10 A laid out in air at 30 °C, and a third of that coiled.
    #[test]
    fn unwinding_is_no_remedy_for_what_is_too_much_unwound() {
        for (wire, fix) in [("10 AWG", "unwind"), ("18 AWG", "unwind-less")] {
            let wire = format!("wire = \"{wire}\"");
            let found = findings(&[("coiled = false # long", "coiled = true"), ("wire = \"10 AWG\"", wire.as_str())]);
            let found = found.iter().find(|found| found.code == "CORD001");
            assert_eq!(found.map(|found| found.fix.key), Some(fix), "{wire}");
        }
    }

    /// 15.8 A through a 15 A plug on 10 AWG, which carries 30 A, and a third of that coiled.
    #[test]
    fn a_coil_carries_no_more_for_being_asked_more() {
        for (coiled, signal) in [("false", Signal::Warning), ("true", Signal::Danger)] {
            let coiled = format!("coiled = {coiled}");
            let found = findings(&[
                (
                    "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                    "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]",
                ),
                ("from = \"long\"\ninlet", "inlet"),
                ("coiled = false # long", coiled.as_str()),
                ("running = \"1500 W\"", "running = \"1900 W\""),
                ("on = \"left\" # kettle", "on = \"long\""),
                ("on = \"right\" # fan", "on = \"front\""),
            ]);
            let found = found.iter().find(|found| found.code == "CORD001").expect("found");
            assert_eq!(found.signal, signal, "{coiled}");
        }
    }

    /// Twice 16.7 A inside a camper, past 10 AWG, 30 A, on a breaker of 50 A. Only a main breaker that somebody has
    /// read stops that, and only if it is no larger than what the cord carries as it lies.
    #[test]
    fn a_camper_s_own_main_breaker_stops_an_overload_of_its_adapter() {
        let told = |main: &str, coiled: &str| {
            let camper = format!("{main}\n[[box]]\nid = \"box\"");
            let coiled = format!("coiled = {coiled}");
            let report = crate::rules::testing::report(&[
                ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"14-50R\"\nbreaker = \"50 A\" # twist"),
                ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"14-50P\"\nends = [\"TT-30R\"]"),
                ("coiled = false # long", coiled.as_str()),
                ("from = \"long\"\ninlet", "inlet"),
                ("[[box]]\nid = \"box\"", camper.as_str()),
                ("running = \"1500 W\"", "running = \"2000 W\""),
                ("running = \"50 W\"", "running = \"2000 W\""),
                ("plug = \"5-15P\" # kettle\non = \"left\" # kettle", "on = \"camper\""),
                ("plug = \"5-15P\" # fan\non = \"right\" # fan", "on = \"camper\""),
            ]);
            let told = report.findings.iter().filter(|found| matches!(found.code, "CORD001" | "OVER001" | "OVER006"));
            let mut told: Vec<(&str, Signal)> = told.map(|found| (found.code, found.signal)).collect();
            told.sort_unstable_by_key(|(code, _)| *code);
            told
        };
        let camper = "[[box]]\nid = \"camper\"\nkind = \"camper\"\nfrom = \"long\"\ninlet = \"TT-30P\"";
        let read = format!("{camper}\nbreaker = \"30 A\"");
        let (cord, over) = (("CORD001", Signal::Danger), ("OVER006", Signal::Warning));
        assert_eq!(told(&read, "false"), [("OVER001", Signal::Caution), over]);
        assert_eq!(told(camper, "false"), [cord, ("OVER001", Signal::Warning), over]);
        assert_eq!(told(&read, "true"), [cord, ("OVER001", Signal::Caution), over]);
    }

    /// 12 AWG carries 25 A and 16 AWG 13 A (NEC table 400.5(A)(1)), and a 5-15P 15 A. A cord of 16 AWG longer than
    /// 50 ft is marked 10 A.
    #[test]
    fn the_remedy_is_for_what_sets_the_limit() {
        for (plug, wire, length, amps, breaker, expected) in [
            ("5-15P", "12 AWG", "50 ft", "16 A", "20 A", ("plug", Signal::Warning)),
            ("5-15P", "16 AWG", "50 ft", "16 A", "20 A", ("thicker", Signal::Danger)),
            ("5-15P", "16 AWG", "100 ft", "12.5 A", "15 A", ("tag", Signal::Warning)),
            ("5-15P", "16 AWG", "100 ft", "13.5 A", "15 A", ("tag", Signal::Danger)),
            ("5-20P", "12 AWG", "50 ft", "22 A", "30 A", ("plug", Signal::Danger)),
        ] {
            let plug = format!("from = \"front\"\nplug = \"{plug}\"\nends = [\"5-20R\"]");
            let (wire, length) = (format!("wire = \"{wire}\""), format!("length = \"{length}\""));
            let (amps, breaker) = (format!("current = \"{amps}\""), format!("breaker = \"{breaker}\""));
            let edits = [
                ("from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]", plug.as_str()),
                ("from = \"long\"\ninlet", "inlet"),
                ("breaker = \"20 A\" # front", breaker.as_str()),
                ("wire = \"10 AWG\" # long", wire.as_str()),
                ("length = \"50 ft\" # long", length.as_str()),
                ("running = \"1500 W\"\npower_factor = 1.0", amps.as_str()),
                ("on = \"left\" # kettle", "on = \"long\""),
                ("on = \"right\" # fan", "on = \"front\""),
            ];
            let found = findings(&edits);
            let found = found.iter().find(|found| found.code == "CORD001").expect("found");
            assert_eq!((found.fix.key, found.signal), expected, "{edits:?}");
        }
    }
}

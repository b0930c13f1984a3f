#![doc = include_str!("../../../i18n/en/explain/POWER003.md")]

use crate::plan::{Id, Leg};
use crate::quantity::{Current, Power};
use crate::report::flow;
use crate::rules::demand::{Need, busiest};
use crate::rules::overcurrent::crowded;
use crate::rules::prelude::*;
use crate::supply::{NodeIx, NodeKind};

/// A gain too small to change anything for.
const SMALL: Power = Power::from_milliwatts(50_000);

pub(super) const RULE: Rule = Rule {
    code: "POWER003",
    name: "stranded-power",
    area: "power",
    worst: Signal::Notice,
    sources: &[cite::PRACTICE, cite::WD_6],
    fixes: &["outlet", "socket", "accept"],
    check,
    #[cfg(test)]
    fires: &[
        // Everything on the 20 A outlet of a 3600 W generator: 2400 W.
        &[NO_ROOM, ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\"")],
        // A 15 A plug in one of the two sockets of a 20 A outlet, and nothing else anywhere.
        &[
            NO_ROOM,
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-15P\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"5-20R\"\nsockets = 2\nbreaker = \"20 A\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"L5-30R\"\nshares = \"front\""),
        ],
        // No other outlet would help.
        &[
            NO_ROOM,
            ("rated = \"3600 W\"", "rated = \"7000 W\""),
            ("peak = \"4500 W\"", "peak = \"8000 W\""),
            ("breaker = \"20 A\" # front", "shares = \"twist\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[NO_ROOM],
        &[NO_ROOM, ("rated = \"3600 W\"", "rated = \"3640 W\"")],
        // Nothing wants more than reaches it.
        &[("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\"")],
    ],
};

/// More fans than sockets.
#[cfg(test)]
const NO_ROOM: (&str, &str) = ("wanted = \"must\" # fan", "count = 9\nwanted = \"wish\" # fan");

/// Returns what an outlet of the generator passes on a leg: the least of breaker, shape and leg.
fn on_leg(facts: &Facts<'_>, outlet: &Id, leg: Leg) -> Current {
    let Some(ix) = facts.supply.receptacle(outlet) else {
        return Current::ZERO;
    };
    if !facts.supply.node(ix).legs.all().contains(&leg) {
        return Current::ZERO;
    }
    facts.supply.up(ix).map(|(_, node)| node.rating).min().unwrap_or(Current::ZERO)
}

/// Returns how much power using this outlet as well would add. On two legs, an outlet adds only what the outlets in use
/// leave of its legs.
fn gain(facts: &Facts<'_>, used: &[Id], outlet: &Id, reachable: Power) -> Power {
    let supply = facts.supply;
    let legs = supply.node(NodeIx(0)).legs.all();
    legs.iter()
        .map(|leg| {
            let taken = if legs.len() == 1 {
                // With one leg, the power taken is known exactly.
                Current::of_capacity(reachable, supply.volts)
            } else {
                used.iter().map(|id| on_leg(facts, id, *leg)).sum()
            };
            let taken = taken.min(supply.leg_rated);
            let more = on_leg(facts, outlet, *leg).min(supply.leg_rated - taken);
            Power::of_capacity(more, supply.volts)
        })
        .sum()
}

/// Returns how much power a free socket of an outlet in use would add, since a cord with a small plug takes less than
/// the outlet's breaker passes. Never more than every part upstream has left.
fn second_cord(facts: &Facts<'_>, outlet: &Id) -> Power {
    let supply = facts.supply;
    let Some(ix) = supply.receptacle(outlet) else {
        return Power::ZERO;
    };
    let gear = supply.fed_from(ix).count();
    let free = facts.verdicts.grounding.beside_gear(ix);
    let loads = facts.needs().iter().filter(|need| need.at == Some(ix)).count();
    // A load plugged in directly may take all that the outlet has.
    if loads > 0 || gear == 0 || free == 0 {
        return Power::ZERO;
    }
    let scene = (facts.plan, supply, &facts.figures.sharing);
    let legs = supply.node(ix).legs.all();
    legs.iter()
        .map(|leg| {
            supply
                .up(ix)
                .map(|(at, node)| {
                    let limit = match node.kind {
                        NodeKind::Source => supply.leg_rated,
                        _ => node.rating,
                    };
                    limit - flow(scene, facts.verdicts, at, *leg)
                })
                .min()
                .unwrap_or(Current::ZERO)
        })
        .map(|more| Power::of_capacity(more, supply.volts))
        .sum()
}

/// Whether something wanted has no room: either it has no place although its plug fits one, or the busiest loads exceed
/// both a part upstream and all that can be reached.
fn wants_room(facts: &Facts<'_>, reachable: Power) -> bool {
    let all = |on: &[Need<'_>]| on.iter().map(Need::running).sum::<Power>();
    let asked = all(&busiest(&facts.needs(), all).on);
    let unplaced = &facts.figures.sharing.unplaced;
    let crowded_out = ["no-room", "too-large"];
    unplaced.iter().any(|lost| crowded_out.contains(&lost.reason)) || (asked > reachable && crowded(facts))
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let usable = &facts.figures.usable;
    // Readers see whole watts, and the parts must add up to the sum.
    let whole = |power: Power| Power::from_milliwatts(power.milliwatts() / 1000 * 1000);
    let (rated, reachable) = (whole(usable.rated_watts), whole(usable.reachable_watts));
    let stranded = rated - reachable;
    if stranded < SMALL || reachable == Power::ZERO || !wants_room(facts, reachable) {
        return;
    }
    let in_use = |id: &Id| {
        facts
            .supply
            .receptacle(id)
            .is_some_and(|ix| facts.supply.fed_from(ix).any(|(fed, _)| facts.verdicts.leads_on(fed)))
            || facts.figures.sharing.placed.iter().any(|placed| placed.at == *id)
    };
    let outlets = &facts.plan.generator.outlets;
    let breaker = |id: &Id| {
        let receptacle = facts.supply.receptacle(id)?;
        facts.supply.node(receptacle).parent
    };
    // An outlet on the breaker of one in use has nothing more to give.
    let spent = |id: &Id| outlets.iter().any(|other| in_use(&other.id) && breaker(&other.id) == breaker(id));
    let used: Vec<Id> = outlets.iter().map(|outlet| &outlet.id).filter(|id| in_use(id)).cloned().collect();
    if used.is_empty() {
        return;
    }
    let others = outlets
        .iter()
        .filter(|outlet| !in_use(&outlet.id) && !spent(&outlet.id))
        .map(|outlet| (gain(facts, &used, &outlet.id, reachable), &outlet.id, "outlet"));
    let sockets = outlets
        .iter()
        .filter(|outlet| in_use(&outlet.id))
        .map(|outlet| (second_cord(facts, &outlet.id), &outlet.id, "socket"));
    let mut cures: Vec<(Power, &Id, &'static str)> = others
        .chain(sockets)
        .map(|(more, id, fix)| ((reachable + more).min(rated), id, fix))
        .filter(|(reach, ..)| *reach - reachable >= SMALL)
        .collect();
    cures.retain(|(_, id, _)| {
        let at = facts.supply.receptacle(id);
        at.is_some_and(|at| facts.verdicts.no_loads(at).is_none() && !facts.verdicts.full_of_bonding_plug(at))
    });
    let cure = cures
        .into_iter()
        // The first if several are equal.
        .rev()
        .max_by_key(|(reach, ..)| *reach);
    let shown = values([("rated", rated.into()), ("reachable", reachable.into()), ("stranded", stranded.into())]);
    match cure {
        Some((reach, outlet, fix)) => found.add(
            Signal::Notice,
            used,
            shown,
            fix,
            values([("outlet", outlet.into()), ("reach", whole(reach).into())]),
        ),
        None => found.add(Signal::Notice, used, shown, "accept", values([])),
    }
}

#[cfg(test)]
mod tests {
    use crate::quantity::Power;
    use crate::report::Value;
    use crate::rules::testing::{codes, findings};

    /// An outlet with an unknown breaker is never named as the cure.
    #[test]
    fn a_dangerous_outlet_is_no_cure() {
        let on_front = ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\"");
        let fix = |edits: &[(&str, &str)]| {
            let mut all = vec![super::NO_ROOM];
            all.extend_from_slice(edits);
            let found = findings(&all);
            found.iter().find(|it| it.code == "POWER003").map(|it| it.fix.key)
        };
        assert_eq!(fix(&[on_front]), Some("outlet"));
        assert!(codes(&[on_front, ("breaker = \"30 A\" # twist", "")]).contains(&"OVER001"));
        assert_eq!(fix(&[on_front, ("breaker = \"30 A\" # twist", "")]), Some("accept"));
        // The bonding plug is in the only socket of the other outlet.
        let second = |sockets: u8| format!("shape = \"5-20R\"\nsockets = {sockets}\nbreaker = \"20 A\"");
        for (sockets, key) in [(1, "accept"), (2, "outlet")] {
            let plugged = [
                on_front,
                ("neutral = \"bonded\"", "neutral = \"floating\""),
                ("ground = \"wet\"", "ground = \"dry\""),
                ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"twist\""),
                ("shape = \"L5-30R\"\nbreaker = \"30 A\"", &second(sockets)),
            ];
            assert_eq!(fix(&plugged), Some(key), "{sockets}");
        }
    }

    /// An unplanned outlet has a label that lets nothing in, so the remedy changes the plan first.
    #[test]
    fn no_outlet_is_used_past_its_label() {
        for edits in &super::RULE.fires[..2] {
            let report = crate::rules::testing::report(edits);
            let found = report.findings.iter().find(|it| it.code == "POWER003").expect("found");
            assert_ne!(found.fix.key, "accept");
            let fix = crate::words::Words::english().finding(found, &report.figures.loads).fix;
            assert!(fix.contains("the plan, and check again"), "{fix}");
        }
    }

    /// At an altitude that leaves a fraction of a watt of the 3600 W, the reported figures add up in whole watts.
    #[test]
    fn what_is_told_adds_up() {
        let found = findings(&[
            super::NO_ROOM,
            ("altitude = \"0 ft\"", "altitude = \"4321 ft\""),
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
        ]);
        let found = found.iter().find(|it| it.code == "POWER003").expect("found");
        let [rated, reachable, stranded] = ["rated", "reachable", "stranded"].map(|key| {
            let Some(Value::Amount(told)) = found.values.get(key) else { panic!("{key}") };
            told.amount
        });
        assert_eq!(reachable + stranded, rated);
        assert!([rated, reachable, stranded].iter().all(|it| it.fract().is_zero()));
    }

    /// 12.5 A and 8.3 A on a 20 A cord, at the same time and one after the other.
    #[test]
    fn what_is_too_much_at_once_has_no_room() {
        let on_front = ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\"");
        let heavy = ("running = \"50 W\"", "running = \"1000 W\"");
        let after = ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-21:00\"]");
        assert!(codes(&[on_front, heavy]).contains(&"POWER003"));
        assert!(!codes(&[on_front, heavy, after]).contains(&"POWER003"));
        // 14.6 A for hours on a 15 A box outlet, and 1,750 W of the 2,400 W that reach it.
        let long = ("running = \"50 W\"", "running = \"1750 W\"");
        let found = codes(&[on_front, long, after]);
        assert!(found.contains(&"OVER002") && !found.contains(&"POWER003"), "{found:?}");
    }

    /// A 7200 W generator with two legs, 30 A each, and everything on a 20 A outlet of leg A: an outlet on the same leg
    /// adds 10 A, one on both legs 10 A and 30 A.
    #[test]
    fn the_outlet_with_the_idle_leg_is_named() {
        let outlet = |shape: &str, leg: &str| {
            format!(
                "shape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = true\nleg = \"A\"\n\
                 [[generator.outlet]]\nid = \"twist\"\nshape = \"{shape}\"\n\
                 breaker = \"30 A\"\ngfci = false\n{leg}\n"
            )
        };
        for (shape, leg, watts) in [("L5-30R", "leg = \"A\"", 3_600), ("L14-30R", "", 7_200)] {
            let outlets = outlet(shape, leg);
            let found = findings(&[
                super::NO_ROOM,
                ("rated = \"3600 W\"", "rated = \"7200 W\""),
                ("peak = \"4500 W\"", "peak = \"9000 W\""),
                ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                (
                    "shape = \"5-20R\"\nbreaker = \"20 A\" # front\ngfci = true # front\n\n\
                     [[generator.outlet]]\nid = \"twist\"\nshape = \"L5-30R\"\n\
                     breaker = \"30 A\" # twist\ngfci = false # twist\n",
                    &outlets,
                ),
                ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
                ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
                ("inlet = \"L5-30P\"", "inlet = \"5-20P\""),
            ]);
            let reach =
                found.iter().find(|it| it.code == "POWER003").and_then(|it| it.fix.values.get("reach").cloned());
            let expected: Value = Power::from_milliwatts(watts * 1000).into();
            assert_eq!(reach, Some(expected), "{shape}");
        }
    }
}

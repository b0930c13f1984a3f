#![doc = include_str!("../../../i18n/en/explain/FIT006.md")]

use crate::plan::{Answer, Id, System, Uses};
use crate::quantity::Voltage;
use crate::rules::prelude::*;
use crate::supply::Legs;
use crate::tables::shape::Circuit;
use crate::verdict::is_trap;

pub(super) const RULE: Rule = Rule {
    code: "FIT006",
    name: "wrong-voltage",
    area: "fit",
    worst: Signal::Danger,
    sources: &[cite::WD_6, cite::PRACTICE],
    fixes: &["adapter", "leave", "look", "part"],
    check,
    #[cfg(test)]
    fires: &[
        // An adapter from a 240 V outlet to a household receptacle.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("[[box]]", "[[cord]]\nid = \"trap\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [\"5-20R\"]\n[[box]]"),
        ],
        // The kettle needs 240 V, and nothing here gives that.
        &[("plug = \"5-15P\" # kettle", "plug = \"6-20P\""), ("on = \"left\" # kettle", "")],
        &[
            ("voltage = \"120 V\"", "voltage = \"unknown\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("plug = \"5-15P\" # kettle", "plug = \"6-20P\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ],
        // Four contacts on one leg.
        &[
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"14-30R\"\nbreaker = \"30 A\""),
            ("plug = \"5-15P\" # kettle", "plug = \"14-30P\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("voltage = \"120 V\"", "voltage = \"120/240 V\"")],
        // The load that needs 240 V has it.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("plug = \"5-15P\" # kettle", "plug = \"6-20P\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ],
        // An adapter from four contacts to three takes one leg and the neutral.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"L14-20R\"\nbreaker = \"20 A\""),
            (
                "[[box]]",
                "[[cord]]\nid = \"fine\"\nfrom = \"front\"\nplug = \"L14-20P\"\nends = [\"5-20R\"]\n\
                 conductors = 3\n[[box]]",
            ),
        ],
    ],
};

/// Returns the loads that need 240 V.
pub(super) fn loads_for_240(facts: &Facts<'_>) -> Vec<Id> {
    let loads = facts.plan.loads.iter();
    loads.filter(|load| load.needs_240()).map(|load| load.id.clone()).collect()
}

/// Returns the legs that feed a load's receptacle: the one the plan puts it at, or else the one it was placed at.
fn feed_of(facts: &Facts<'_>, load: &Id) -> Option<Legs> {
    let of = facts.plan.load(load)?;
    let place = |unit: &Id| facts.figures.sharing.place(unit);
    let at = of.on.as_ref().or_else(|| place(load)).or_else(|| place(&load.end(1)))?;
    let at = facts.supply.receptacle(at)?;
    Some(facts.supply.node(at).legs)
}

/// Returns the loads that need 240 V and do not get it, as far as anybody knows.
pub(super) fn unserved(facts: &Facts<'_>) -> Vec<Id> {
    let mut loads = loads_for_240(facts);
    let sure = facts.plan.generator.voltage.known() == Some(&System::V120_240);
    if sure {
        // If it has no place although there is 240 V, other rules say why.
        loads.retain(|load| matches!(feed_of(facts, load), Some(Legs::One(_))));
    }
    loads
}

/// Returns the receptacles that lack 240 V for the same reason as these loads: all of them if the generator is the
/// reason, or else those that the loads are at.
fn unfed(facts: &Facts<'_>, loads: &[Id]) -> Vec<Id> {
    let sure = facts.plan.generator.voltage.known() == Some(&System::V120_240);
    let here = |at: &Id| {
        let planned = facts.plan.loads.iter().filter(|load| loads.contains(&load.id));
        planned.filter_map(|load| load.on.as_ref()).any(|on| on == at)
    };
    let all = super::outlet_not_fed::not_fed(facts).map(|node| node.id.clone());
    all.filter(|at| !sure || here(at)).collect()
}

/// Returns the receptacles that give 240 V without neutral although their shape says otherwise.
pub(super) fn traps(facts: &Facts<'_>) -> Vec<Id> {
    let supply = facts.supply;
    supply.receptacles().filter(|(ix, ..)| is_trap(supply, *ix)).map(|(_, node, ..)| node.id.clone()).collect()
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let one: Voltage = facts.supply.volts;
    let two = Voltage::from_millivolts(one.millivolts() * 2);
    let volts = || values([("volts", one.into()), ("twice", two.into())]);
    let traps = traps(facts);
    if !traps.is_empty() {
        found.add(Signal::Danger, traps, volts(), "adapter", values([]));
    }
    // What is built into a camper cannot be left at home or unplugged.
    let built_in = |load: &Id| facts.plan.load(load).is_some_and(|load| facts.plan.around(load).is_some());
    let apart = |loads: Vec<Id>| {
        let (built_in, loose): (Vec<Id>, Vec<Id>) = loads.into_iter().partition(built_in);
        [(false, loose), (true, built_in)].into_iter().filter(|(_, loads)| !loads.is_empty())
    };
    for (inside, unserved) in apart(unserved(facts)) {
        let fix = if facts.plan.generator.voltage.is_known() { "leave" } else { "look" };
        let inside = values([("inside", Value::yes_no(inside))]);
        let mut shown = volts();
        shown.extend(inside.clone());
        shown.insert("unfed", Value::Parts(unfed(facts, &unserved)));
        found.add(Signal::Warning, unserved, shown, fix, inside);
    }
    let halved: Vec<Id> = facts
        .plan
        .loads
        .iter()
        .filter(|load| {
            let both = match facts.plan.around(load) {
                Some(camper) => camper.inlet.known().filter(|_| load.voltage == Answer::Known(Uses::V120AndV240)),
                None => load.plug.known().filter(|_| load.voltage != Answer::Known(Uses::V120)),
            };
            both.is_some_and(|plug| plug.0.circuit() == Circuit::TwoLegsNeutral) && !load.needs_240()
        })
        .filter(|load| matches!(feed_of(facts, &load.id), Some(Legs::One(_))))
        .map(|load| load.id.clone())
        .collect();
    for (inside, halved) in apart(halved) {
        let inside = values([("inside", Value::yes_no(inside))]);
        let mut shown = volts();
        shown.extend(inside.clone());
        found.add(Signal::Caution, halved, shown, "part", inside);
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::{codes, report, signals};

    const TWO_LEGS: (&str, &str) = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
    const OUTLET_240: (&str, &str) =
        ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\"");
    const PLUG_240: (&str, &str) = ("plug = \"5-15P\" # kettle", "plug = \"6-20P\"");

    /// A 240 V load on a 120 V generator is reported once, with the remedy. On a 120/240 V generator it has its place
    /// (NEMA WD 6: 6-20 is 250 V, two poles, no neutral; from memory).
    #[test]
    fn what_needs_240_volts_says_so_on_a_set_of_120() {
        let free = ("on = \"left\" # kettle", "");
        assert_eq!(signals("FIT006", &[PLUG_240, free]), [Signal::Warning]);
        assert!(!codes(&[PLUG_240, free]).contains(&"FIT001"));
        // Its outlet is there, but gets 120 V at most.
        let on = ("on = \"left\" # kettle", "on = \"front\"");
        let edits = [OUTLET_240, PLUG_240, on];
        assert_eq!(signals("FIT006", &edits), [Signal::Warning]);
        let edits = [TWO_LEGS, OUTLET_240, PLUG_240, on];
        assert_eq!(signals("FIT006", &edits), []);
    }

    /// A load that needs 240 V is one trouble with the outlet that would have it on another generator, or on this one
    /// if its nameplate says so. A dead outlet of a box on one leg is a separate trouble, because the generator has the
    /// 240 V that the load needs.
    #[test]
    fn one_lack_of_240_volts_is_one_trouble() {
        let lack = |edits: &[(&str, &str)]| -> Vec<Vec<&'static str>> {
            let report = report(edits);
            let troubles = report.figures.troubles.iter();
            let codes = troubles.map(|it| report.findings_of(it).map(|it| it.code).collect());
            codes.filter(|codes: &Vec<_>| codes.iter().any(|it| ["FIT003", "FIT006"].contains(it))).collect()
        };
        let free = ("on = \"left\" # kettle", "");
        let unknown = ("voltage = \"120 V\"", "voltage = \"unknown\"");
        let one = [vec!["FIT006", "FIT003"]];
        assert_eq!(lack(&[OUTLET_240, PLUG_240, free]), one);
        assert_eq!(lack(&[OUTLET_240, PLUG_240, free, unknown]), one);
        // The existing outlet does not take its plug.
        let other = ("plug = \"5-15P\" # kettle", "plug = \"14-30P\"\nvoltage = \"240 V\"");
        assert_eq!(lack(&[OUTLET_240, other, free, unknown]), one);
        // Nothing needs 240 V.
        assert_eq!(lack(&[OUTLET_240, unknown]), [vec!["FIT003"]]);
        // Four contacts on one leg, and a dead outlet elsewhere.
        let on_one_leg = [
            TWO_LEGS,
            ("shape = \"5-15R\" # right", "shape = \"6-20R\""),
            ("shape = \"5-15R\" # left", "shape = \"14-30R\""),
            ("plug = \"5-15P\" # kettle", "plug = \"14-30P\"\nvoltage = \"240 V\""),
        ];
        let each = lack(&on_one_leg);
        assert!(each.contains(&vec!["FIT003"]) && each.len() == 2, "{each:?}");
    }

    /// On one leg, a load with a four-contact plug that uses only 240 V cannot run at all. One that uses both voltages
    /// half works.
    #[test]
    fn what_uses_240_volts_only_is_not_told_that_half_of_it_works() {
        let outlet = ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"14-30R\"\nbreaker = \"30 A\"");
        let on = ("on = \"left\" # kettle", "on = \"front\"");
        for (uses, expected) in [("240 V", Signal::Warning), ("120/240 V", Signal::Caution)] {
            let plug = format!("plug = \"14-30P\"\nvoltage = \"{uses}\"");
            let plug = ("plug = \"5-15P\" # kettle", plug.as_str());
            assert_eq!(signals("FIT006", &[outlet, plug, on]), [expected], "{uses}");
            assert_eq!(signals("FIT006", &[TWO_LEGS, outlet, plug, on]), [], "{uses}");
        }
    }

    /// A four-slot receptacle behind a 240 V plug has no neutral to give: 120 V loads on its two halves would be in
    /// series.
    #[test]
    fn no_adapter_makes_a_neutral() {
        for ends in ["5-15R", "L5-30R", "L14-30R", "14-50R"] {
            let cord =
                format!("[[cord]]\nid = \"trap\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [\"{ends}\"]\n[[box]]");
            let edits = [TWO_LEGS, OUTLET_240, ("[[box]]", cord.as_str())];
            assert_eq!(signals("FIT006", &edits), [Signal::Danger], "{ends}");
            // On a 120 V generator that outlet is dead, and so is what is plugged into it.
            assert_eq!(signals("FIT006", &edits[1..]), [], "{ends}");
        }
        let through = "[[cord]]\nid = \"through\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [\"6-20R\"]\n[[box]]";
        assert_eq!(signals("FIT006", &[TWO_LEGS, OUTLET_240, ("[[box]]", through)]), []);
    }
}

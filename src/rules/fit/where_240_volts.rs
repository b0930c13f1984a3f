#![doc = include_str!("../../../i18n/en/explain/FIT007.md")]

use crate::plan::{Answer, Id, System};
use crate::quantity::Voltage;
use crate::rules::prelude::*;
use crate::supply::{Legs, LimitReason};
use crate::tables::shape::Circuit;

use super::wrong_voltage::loads_for_240;

pub(super) const RULE: Rule = Rule {
    code: "FIT007",
    name: "where-240-volts",
    area: "fit",
    worst: Signal::Caution,
    sources: &[cite::WD_6],
    fixes: &["nothing", "these", "maybe", "plate"],
    check,
    #[cfg(test)]
    fires: &[
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"L14-20R\"\nbreaker = \"20 A\""),
        ],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("plug = \"5-15P\" # kettle", "plug = \"6-20P\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ],
        &[
            ("voltage = \"120 V\"", "voltage = \"unknown\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"L14-20R\"\nbreaker = \"20 A\""),
        ],
        // Four slots on a 120 V generator.
        &[("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"L14-20R\"\nbreaker = \"20 A\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // Two legs, but no receptacle that gets both of them.
        &[("voltage = \"120 V\"", "voltage = \"120/240 V\"")],
        // The one with both legs feeds the box and has no free socket.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker", "shape = \"L14-30R\"\nbreaker"),
            ("plug = \"L5-30P\" # long", "plug = \"L14-30P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"L14-30R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
            ("conductors = 3", "conductors = 4"),
        ],
        // A dead one in a box is for rule FIT003.
        &[("shape = \"5-15R\" # right", "shape = \"6-20R\"")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let one: Voltage = facts.supply.volts;
    let two = Voltage::from_millivolts(one.millivolts() * 2);
    let mut shown = values([("volts", one.into()), ("twice", two.into())]);
    let needs = loads_for_240(facts);
    let names: Vec<&str> = needs.iter().map(Id::as_str).collect();
    shown.insert("needs", Value::Name(names.join(", ")));
    let voltage = facts.plan.generator.voltage;
    if voltage == Answer::Known(System::V120) {
        let outlets = facts.plan.generator.outlets.iter();
        let odd: Vec<Id> = outlets
            .filter(|outlet| outlet.shape.0.circuit() != Circuit::OneLeg)
            .map(|outlet| outlet.id.clone())
            .collect();
        if !odd.is_empty() {
            found.add(Signal::Caution, odd, shown, "plate", values([]));
        }
        return;
    }
    let placed = &facts.figures.sharing.placed;
    let free = |at, id: &Id, sockets: u8| {
        let taken = facts.supply.fed_from(at).count() + placed.iter().filter(|it| it.at == *id).count();
        taken < usize::from(sockets)
    };
    let all = !voltage.is_known() || !needs.is_empty();
    let carry: Vec<Id> = facts
        .supply
        .receptacles()
        .filter(|(at, node, _, sockets)| {
            matches!(node.legs, Legs::Both | Legs::Between)
                && node.reason != LimitReason::NotFed
                && (all || free(*at, &node.id, *sockets))
        })
        .map(|(_, node, ..)| node.id.clone())
        .collect();
    if carry.is_empty() {
        return;
    }
    let (signal, fix) = match (voltage.is_known(), needs.is_empty()) {
        (false, _) => (Signal::Caution, "maybe"),
        (true, true) => (Signal::Notice, "nothing"),
        (true, false) => (Signal::Notice, "these"),
    };
    found.add(signal, carry, shown, fix, values([]));
}

#[cfg(test)]
mod tests {
    use crate::report::Value;
    use crate::rules::testing::{findings, report};

    /// Four slots on a generator that the plan says is 120 V: label and card count on the whole power, so the remedy
    /// gives no other figure. Once the plan says 120/240 V, each outlet has half.
    #[test]
    fn the_remedy_tells_no_figure_that_the_labels_do_not_have() {
        let four = ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"L14-20R\"\nbreaker = \"20 A\"");
        let both = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
        let most = |edits: &[(&str, &str)]| {
            let limits = report(edits).figures.limits;
            let twist = limits.iter().find(|limit| limit.id.as_str() == "twist");
            twist.expect("its limit").short_amps.milliamps()
        };
        assert_eq!([most(&[four]), most(&[]), most(&[four, both])], [30_000, 30_000, 15_000]);
        let report = report(&[four]);
        let found = report.findings.iter().find(|it| it.code == "FIT007").expect("found");
        let text = crate::words::Words::english().finding(found, &report.figures.loads);
        assert!(!text.fix.contains("half") && text.fix.contains("new labels"), "{}", text.fix);
    }

    /// L14-20 carries both legs and neutral, 5-20 one leg (NEMA WD 6, from memory).
    #[test]
    fn the_receptacles_and_the_loads_are_named() {
        let found = findings(&[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-30P\"\nends = [\"L14-30R\"]"),
            ("conductors = 3 # long", "conductors = 4"),
            ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
            ("plug = \"5-15P\" # kettle", "plug = \"6-20P\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ]);
        let found = found.iter().find(|it| it.code == "FIT007").expect("it is found");
        let about: Vec<_> = found.about.iter().map(crate::plan::Id::as_str).collect();
        assert_eq!(about, ["front", "twist", "long"]);
        assert_eq!(found.values["needs"], Value::Name("kettle".into()));
    }
}

#![doc = include_str!("../../../i18n/en/explain/FIT003.md")]

use crate::plan::Id;
use crate::quantity::Voltage;
use crate::rules::prelude::*;
use crate::supply::{LimitReason, Node};

pub(super) const RULE: Rule = Rule {
    code: "FIT003",
    name: "outlet-not-fed",
    area: "fit",
    worst: Signal::Caution,
    sources: &[cite::WD_6],
    fixes: &["leave", "look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("shape = \"5-15R\" # right", "shape = \"6-20R\"")],
        // Nobody knows whether there is 240 V.
        &[
            ("voltage = \"120 V\"", "voltage = \"unknown\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
        ],
    ],
};

/// Iterates over the receptacles that cannot give what their shape promises.
pub(super) fn not_fed<'a>(facts: &'a Facts<'_>) -> impl Iterator<Item = &'a Node> {
    let traps = super::wrong_voltage::traps(facts);
    let all = facts.supply.receptacles().map(|(_, node, ..)| node);
    all.filter(move |node| node.reason == LimitReason::NotFed && !traps.contains(&node.id))
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let (doubtful, live): (Vec<_>, Vec<_>) = not_fed(facts).partition(|node| facts.supply.may_have_240(node));
    for (of, fix) in [(live, "leave"), (doubtful, "look")] {
        let about: Vec<Id> = of.into_iter().map(|node| node.id.clone()).collect();
        if !about.is_empty() {
            let twice = Voltage::from_millivolts(facts.supply.volts.millivolts() * 2);
            found.add(Signal::Caution, about, values([("twice", twice.into())]), fix, values([]));
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::report;

    /// 6-20 has two hots and no neutral (NEMA WD 6, from memory). From a 5-20P it gets a hot and a neutral.
    #[test]
    fn what_is_live_with_other_volts_is_not_to_be_used() {
        let report = report(&[(
            "[[box]]",
            "[[cord]]\nid = \"ad\"\nfrom = \"front\"\nplug = \"5-20P\"\nends = [\"6-20R\"]\n\
             wire = \"12 AWG\"\nconductors = 3\nlength = \"1 ft\"\ncoiled = false\n[[box]]",
        )]);
        let ad = crate::plan::Id::new("ad").expect("an id");
        assert_eq!(report.refused(&ad).map(|why| why.code), Some("FIT003"));
    }
}

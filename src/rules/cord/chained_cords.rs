#![doc = include_str!("../../../i18n/en/explain/CORD005.md")]

use crate::plan::{Cord, Id};
use crate::quantity::Length;
use crate::rules::prelude::*;
use crate::supply::{Node, NodeKind};

/// The length up to which a cord or adapter adds too little to count.
const SHORT: Length = Length::from_millimetres(2_000);

pub(super) const RULE: Rule = Rule {
    code: "CORD005",
    name: "chained-cords",
    area: "cord",
    worst: Signal::Caution,
    sources: &[cite::PRACTICE],
    fixes: &["one-cord"],
    check,
    #[cfg(test)]
    fires: &[&[(
        "[[box]]\nid = \"box\"\nfrom = \"long\"",
        "[[cord]]\nid = \"more\"\nfrom = \"long\"\nplug = \"L5-30P\"\nends = [\"L5-30R\"]\n\
         wire = \"10 AWG\"\nconductors = 3\nlength = \"25 ft\"\noutdoor = true\ncoiled = false\n\
         [[box]]\nid = \"box\"\nfrom = \"more\"",
    )]],
    #[cfg(test)]
    spares: &[
        &[],
        &[(
            "[[box]]\nid = \"box\"\nfrom = \"long\"",
            "[[cord]]\nid = \"more\"\nfrom = \"long\"\nplug = \"L5-30P\"\nends = [\"L5-30R\"]\n\
             wire = \"10 AWG\"\nconductors = 3\nlength = \"6 ft\"\noutdoor = true\ncoiled = false\n\
             [[box]]\nid = \"box\"\nfrom = \"more\"",
        )],
    ],
};

/// Returns the long cord that a node is, if it is one.
fn long_cord<'a>(facts: &Facts<'a>, node: &Node) -> Option<&'a Cord> {
    let cord = facts.plan.cord(&node.id).filter(|_| node.kind.is_cord())?;
    let short = cord.length.known().is_some_and(|length| *length <= SHORT);
    (!short).then_some(cord)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    // The chain that each long cord ends, from the nearest box upstream or the generator.
    let mut chains: Vec<Vec<Id>> = Vec::new();
    for (ix, _) in facts.supply.cords().filter(|(_, node)| long_cord(facts, node).is_some()) {
        let mut chain: Vec<Id> = facts
            .supply
            .up(ix)
            .take_while(|(_, node)| !matches!(node.kind, NodeKind::Inlet { .. }))
            .filter_map(|(_, node)| long_cord(facts, node).map(|cord| cord.id.clone()))
            .collect();
        chain.reverse();
        // A chain that this one begins with is part of it.
        chains.retain(|shorter| !chain.starts_with(shorter));
        chains.push(chain);
    }
    for chain in chains.into_iter().filter(|chain| chain.len() > 1) {
        let count = Value::Count(chain.len());
        found.add(Signal::Caution, chain, values([("count", count)]), "one-cord", values([]));
    }
}

#![doc = include_str!("../../../i18n/en/explain/SHOCK011.md")]

use crate::plan::{Cord, Id};
use crate::rules::prelude::*;
use crate::verdict::lost_neutral;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK011",
    name: "lost-neutral",
    area: "shock",
    worst: Signal::Danger,
    sources: &[cite::WD_6, cite::PRACTICE],
    fixes: &["leave", "count"],
    check,
    #[cfg(test)]
    fires: &[
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-30P\"\nends = [\"L14-30R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
        ],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-30P\"\nends = [\"L14-30R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
            ("conductors = 3", "conductors = \"unknown\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-30P\"\nends = [\"L14-30R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
            ("conductors = 3", "conductors = 4"),
        ],
    ],
};

/// Reports cords that should have two hots, a neutral and a ground, but may lack the neutral.
fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let cords = facts.supply.cords().filter_map(|(at, node)| Some((at, facts.plan.cord(&node.id)?)));
    let lost = cords.filter(|(at, cord)| lost_neutral(facts.supply, *at, cord)).map(|(_, cord)| cord);
    let lost: Vec<&Cord> = lost.collect();
    let (known, unknown): (Vec<&Cord>, Vec<&Cord>) = lost.into_iter().partition(|cord| cord.conductors.is_known());
    for (cords, fix) in [(known, "leave"), (unknown, "count")] {
        if !cords.is_empty() {
            let about: Vec<Id> = cords.iter().map(|cord| cord.id.clone()).collect();
            found.add(Signal::Danger, about, values([]), fix, values([]));
        }
    }
}

//! # SHOCK009 second-fault
//!
//! ## What it checks
//! Whether, on a floating neutral or one that nobody knows, two or more appliances run from
//! receptacles without ground-fault protection.
//!
//! ## Why it hurts
//! On a floating supply a first fault does nothing: no shock, no trip, and nobody notices. It makes
//! the supply a grounded one by accident. A second fault, in another appliance and on the other
//! wire, then puts full voltage between the two cases, and a person who touches both is across it.
//!
//! ## The arithmetic
//! Two appliances or more, none of them past a GFCI, on a neutral that is not joined to ground. Behind one
//! that may be blind, rule SHOCK013, neutral and ground are joined, and this cannot be. With whole ground
//! wires a second fault on the other wire is a short circuit, which a breaker clears if the generator can
//! drive enough current (rule OVER005). With one ground wire broken the voltage stays. One appliance alone
//! cannot have both faults in two cases; a GFCI sees the second fault as current that does not come back.
//!
//! ## What to do
//! Plug everything into receptacles with a GFCI. Take a thing out of use at its first tingle, cut or
//! scorch mark, although it still works. Do not join neutral and ground yourself.
//!
//! ## Sources
//! - IET On-Site Guide, 2.4.1: a floating set feeds class II items, or one class I item at most (from
//!   a secondary copy).
//! - OSHA letter of interpretation, 1993-09-03: what a floating set is (confirmed).

use crate::plan::{Answer, Id, Neutral};
use crate::rules::demand::once;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK009",
    name: "second-fault",
    area: "shock",
    worst: Signal::Caution,
    text: include_str!("second_fault.rs"),
    sources: &[cite::IET_OSG, cite::OSHA_LETTER],
    fixes: &["protect"],
    check,
    #[cfg(test)]
    fires: &[
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ],
        &[
            ("neutral = \"bonded\"", ""),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", ""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // One appliance only.
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("gfci = true # left", "gfci = false"),
        ],
        // A bonding plug that nobody knows of would blind the GFCI, and ground the neutral.
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = \"unknown\""),
            ("gfci = false # twist", "gfci = true"),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ],
        // The neutral is joined: a first fault is cleared.
        &[("gfci = true # left", "gfci = false"), ("gfci = true # right", "gfci = false")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let set = &facts.plan.generator;
    if set.neutral == Answer::Known(Neutral::Bonded)
        || set.bonding_plug == Answer::Known(true)
    {
        return;
    }
    let needs = facts.needs();
    let bare: Vec<&Id> = needs
        .iter()
        // A GFCI that a joint blinds is there: that joint grounds the neutral (rule SHOCK013).
        .filter(|need| need.at.is_some_and(|at| facts.supply.up(at).all(|(_, node)| !node.gfci)))
        .map(|need| &need.load.id)
        .collect();
    if bare.len() > 1 {
        let about = once(bare);
        found.add(Signal::Caution, about, values([]), "protect", values([]));
    }
}

//! # SHOCK004 two-bonds
//!
//! ## What it checks
//! Whether neutral is joined to ground in more than one place: in the generator, by a bonding plug,
//! or in a box.
//!
//! ## Why it hurts
//! With two joints the ground wire carries a share of the ordinary current. Frames and boxes that
//! people touch are then part of the circuit, a broken neutral puts full voltage on them, and GFCIs
//! trip for no visible reason or fail to trip when they should.
//!
//! ## The arithmetic
//! The joints are counted: a bonded set (each of several in parallel), a fitted bonding plug, each box with a bond. One is right;
//! two or more is a warning.
//!
//! ## What to do
//! Take a bonding plug out of a set that is bonded already. Of sets in parallel ask the maker whether
//! bonded ones may be joined. Leave a box with a bond unused until a
//! licensed electrician has looked at it.
//!
//! ## Sources
//! - NFPA 70 (NEC), 250.142(B): neutral and ground are not joined again on the load side (from a
//!   secondary copy).

use crate::plan::{Answer, Id, Neutral, Plan};
use crate::report::Amount;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK004",
    name: "two-bonds",
    area: "shock",
    text: include_str!("two_bonds.rs"),
    sources: &[cite::NEC_250_142],
    fixes: &["plug", "box"],
    check,
    #[cfg(test)]
    fires: &[
        &[("bonding_plug = false", "bonding_plug = true")],
        &[("bond = false", "bond = true")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true"),
        ],
    ],
};

/// How often the set's own end joins neutral and ground: by its maker and by a plug.
pub(super) fn bonds_at_set(plan: &Plan) -> usize {
    // Each of several sets in parallel has its own.
    let sets = usize::try_from(plan.generator.sets()).unwrap_or(1);
    sets * usize::from(plan.generator.neutral == Answer::Known(Neutral::Bonded))
        + usize::from(plan.generator.bonding_plug == Answer::Known(true))
}

/// The boxes that join them.
pub(super) fn bonded_boxes(plan: &Plan) -> Vec<Id> {
    plan.boxes
        .iter()
        .filter(|it| it.from.is_some() && it.bond == Answer::Known(true))
        .map(|it| it.id.clone())
        .collect()
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let at_set = bonds_at_set(facts.plan);
    let boxes = bonded_boxes(facts.plan);
    let bonds = at_set + boxes.len();
    if bonds < 2 {
        return;
    }
    let fix = if boxes.is_empty() { "plug" } else { "box" };
    found.add(
        Signal::Warning,
        boxes,
        values([("bonds", Amount::count(bonds).into())]),
        fix,
        values([]),
    );
}

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
//! The joints are counted: a bonded generator (each of several in parallel), a fitted bonding plug, each
//! box with a bond. One is right; two or more is a warning. Where we do not know, a joint may be there: two
//! or more with those counted is a caution.
//!
//! ## What to do
//! Take a bonding plug out of a generator that is bonded already. Of generators in parallel ask the maker
//! whether bonded ones may be joined. Leave a box with a bond unused until a licensed electrician has
//! looked at it. Where we do not know, find out before you use both.
//!
//! ## Sources
//! - NFPA 70 (NEC), 250.142(B): neutral and ground are not joined again on the load side (from a
//!   secondary copy).

use crate::plan::{Answer, Plan};
use crate::verdict::{bonded_boxes, bonds_at_set, doubtful_boxes};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK004",
    name: "two-bonds",
    area: "shock",
    worst: Signal::Warning,
    text: include_str!("two_bonds.rs"),
    sources: &[cite::NEC_250_142],
    fixes: &["plug", "sets", "box", "find-out"],
    check,
    #[cfg(test)]
    fires: &[
        &[("bonding_plug = false", "bonding_plug = true")],
        // Two sets, each bonded by its maker, and no plug.
        &[(
            "inverter = false",
            "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = true }",
        )],
        &[("bond = false", "bond = true")],
        &[
            ("neutral = \"bonded\"", "neutral = \"unknown\""),
            ("bonding_plug = false", "bonding_plug = true"),
        ],
        &[("bonding_plug = false", "bonding_plug = \"unknown\"")],
        &[("bond = false", "bond = \"unknown\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // One at most, wherever it is.
        &[("neutral = \"bonded\"", "neutral = \"unknown\"")],
        // Silence about a plug means that there is none.
        &[("bonding_plug = false", "")],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true"),
        ],
    ],
};

/// How many more joints there may be at the set's own end.
fn doubtful_at_set(plan: &Plan) -> usize {
    let sets = usize::try_from(plan.generator.sets()).unwrap_or(1);
    sets * usize::from(!plan.generator.neutral.is_known())
        + usize::from(plan.generator.bonding_plug == Answer::Unknown)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let mut boxes = bonded_boxes(facts.plan);
    let doubtful = doubtful_boxes(facts.plan);
    let mut bonds = bonds_at_set(facts.plan) + boxes.len();
    let (signal, fix) = if bonds < 2 {
        bonds += doubtful_at_set(facts.plan) + doubtful.len();
        (Signal::Caution, "find-out")
    } else if !boxes.is_empty() {
        (Signal::Warning, "box")
    } else if facts.plan.generator.bonding_plug == Answer::Known(true) {
        (Signal::Warning, "plug")
    } else {
        // Only the makers' own joints are left.
        (Signal::Warning, "sets")
    };
    boxes.extend(doubtful);
    if bonds > 1 {
        let bonds = Value::Count(bonds);
        found.add(signal, boxes, values([("bonds", bonds)]), fix, values([]));
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::findings;

    /// A plug that nobody has cannot be taken out.
    #[test]
    fn a_plug_is_named_only_where_there_is_one() {
        let joined = (
            "inverter = false",
            "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = true }",
        );
        let plug = ("bonding_plug = false", "bonding_plug = true");
        for (edits, fix) in [
            (vec![joined], "sets"),
            (vec![plug], "plug"),
            (vec![joined, plug], "plug"),
        ] {
            let found = findings(&edits);
            let found = found.iter().find(|it| it.code == "SHOCK004").expect("found");
            assert_eq!(found.fix.key, fix, "{edits:?}");
        }
    }
}

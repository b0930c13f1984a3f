//! # FIT003 receptacle-not-fed
//!
//! ## What it checks
//! Whether a receptacle gets no power because of what it hangs on: a 240 V shape on a 120 V feed, or
//! what hangs on such a receptacle.
//!
//! ## Why it hurts
//! Nobody is hurt, but something will not run, and people start to change plugs to make it.
//!
//! ## The arithmetic
//! A 240 V shape needs both legs of a 120/240 V set. A 120 V shape needs one leg and a neutral. An
//! adapter cannot make the one that is missing. One that gives 240 V instead is rule FIT006's.
//!
//! ## What to do
//! Leave it, or feed it from an outlet of the generator that has what it needs.
//!
//! ## Sources
//! - NEMA WD 6: volts and conductors of each configuration (from memory, not verified).

use crate::plan::Id;
use crate::rules::prelude::*;
use crate::supply::LimitReason;

pub(super) const RULE: Rule = Rule {
    code: "FIT003",
    name: "receptacle-not-fed",
    area: "fit",
    worst: Signal::Notice,
    text: include_str!("receptacle_not_fed.rs"),
    sources: &[cite::WD_6],
    fixes: &["leave"],
    check,
    #[cfg(test)]
    fires: &[&[("shape = \"5-15R\" # right", "shape = \"6-20R\"")]],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let traps = super::wrong_voltage::traps(facts);
    let dead: Vec<Id> = facts
        .supply
        .receptacles()
        .filter(|(_, node, ..)| node.reason == LimitReason::NotFed)
        .map(|(_, node, ..)| node.id.clone())
        .filter(|id| !traps.contains(id))
        .collect();
    if !dead.is_empty() {
        found.add(Signal::Notice, dead, values([]), "leave", values([]));
    }
}

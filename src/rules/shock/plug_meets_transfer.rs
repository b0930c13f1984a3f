//! # SHOCK010 plug-meets-transfer
//!
//! ## What it checks
//! Whether a bonding plug stays in a generator that is to feed a building, or a camper's or vehicle's
//! inlet.
//!
//! ## Why it hurts
//! The plug joins neutral to ground at the generator. Much transfer equipment leaves neutral connected, and
//! the building has its own joint; some campers have one too while on their own inverter. With two, the
//! ground wire and every metal skin carry ordinary current, and a GFCI trips or is blinded.
//!
//! ## The arithmetic
//! None. A plug of which nobody knows counts as one. With a building in the plan, or nobody sure, it
//! is a warning beside the danger of rule SHOCK003. With a load that plugs into a camper's configuration
//! (TT-30, 14-50, L5-30, L14-30) it is a notice.
//!
//! ## What to do
//! Take the bonding plug out before the generator feeds anything with a joint of its own. Ask the camper's
//! maker or a licensed electrician whether it has one. Do not join neutral and ground yourself.
//!
//! ## Sources
//! - NFPA 70 (NEC), 250.142(B): neutral and ground are not joined again on the load side (from a
//!   secondary copy).
//! - That transfer equipment often leaves neutral connected is common practice, no source.

use crate::plan::{Answer, Id};
use crate::rules::demand::camper;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK010",
    name: "plug-meets-transfer",
    area: "shock",
    worst: Signal::Warning,
    text: include_str!("plug_meets_transfer.rs"),
    sources: &[cite::NEC_250_142, cite::PRACTICE],
    fixes: &["building", "camper"],
    check,
    #[cfg(test)]
    fires: &[
        &[
            ("bonding_plug = false", "bonding_plug = \"unknown\""),
            ("feeds_building = false", "feeds_building = true"),
        ],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true"),
            ("feeds_building = false", "feeds_building = \"unknown\""),
        ],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true"),
            ("plug = \"5-15P\" # fan\non = \"right\" # fan", "plug = \"TT-30P\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("feeds_building = false", "feeds_building = true"), ("bonding_plug = false", "")],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true"),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let plan = facts.plan;
    // Silence means that there is none: whoever put one in knows of it.
    if !matches!(
        plan.generator.bonding_plug,
        Answer::Known(true) | Answer::Unknown
    ) {
        return;
    }
    if matches!(
        plan.site.feeds_building,
        Answer::Known(true) | Answer::Unknown
    ) {
        found.add(Signal::Warning, vec![], values([]), "building", values([]));
    }
    let campers: Vec<Id> = plan
        .loads
        .iter()
        .filter(|load| camper(load))
        .map(|load| load.id.clone())
        .collect();
    if !campers.is_empty() {
        found.add(Signal::Notice, campers, values([]), "camper", values([]));
    }
}

//! # SHOCK001 no-ground-fault-protection
//!
//! ## What it checks
//! Whether every receptacle in use, and every free one that an appliance's plug fits, has
//! ground-fault protection (GFCI) somewhere between it and the
//! generator, at the receptacle, in the box, in a cord or in the set. Protection that nobody has
//! confirmed counts as none. Ground that nobody has described counts as wet.
//!
//! ## Why it hurts
//! Wet hands and bare feet on wet ground carry current through the heart if an appliance or a cord
//! has a fault. A breaker does not see it: it takes 15 A or more to trip, and a person dies of a
//! small part of one ampere. A class A GFCI trips at 4 to 6 thousandths of an ampere.
//!
//! ## The arithmetic
//! Each receptacle with a load on it, or with a free socket of the household shapes (5-15R and
//! 5-20R), is walked back to the generator until something with
//! ground-fault protection is met. If none is: wet or unknown ground is a danger, damp a warning,
//! dry a caution. The longest a class A device may take is (20 / I)^1.43 seconds, I in mA: 5.6 s at
//! 6 mA, 0.56 s at 30 mA, 0.025 s at 264 mA. A wet person across 120 V draws about 100 mA (from
//! memory): it is off within a tenth of a second. The cord that feeds a protected box is itself not protected by it: keep its
//! connections off the ground and out of the wet.
//!
//! ## What to do
//! Plug into a receptacle that has protection (look for a TEST and a RESET button), or use a cord
//! or a box with it built in, the nearer to the generator the better. Press TEST before each use:
//! the power must go off.
//!
//! No authority here speaks of a camp. The rules on temporary power are for construction, maintenance
//! and the like, and are borrowed. They differ on small sets: OSHA's rule leaves out two-wire sets of
//! 5 kW or less whose wires are insulated from the frame; the NEC dropped its own such exemption in
//! 2002. The stricter one is used, because a camp is wetter than most building sites and nobody checks
//! the cords.
//!
//! A camper may leak more than a class A device allows, with nothing wrong, and the NEC asks for none
//! at the 30 A and 50 A outlets of camp sites. It is still found here, because this is no such site,
//! and the finding says what may happen.
//!
//! ## Sources
//! - NFPA 70 (NEC), 590.6(A)(3), borrowed from building sites: receptacles of sets of 15 kW or less used
//!   for temporary power (from a secondary copy).
//! - NFPA 70 (NEC), 551.71(F), asks none at 30 A and 50 A outlets for campers (from a secondary copy).
//! - NFPA 70 (NEC), 445.20: protection on portable sets (from a secondary copy).
//! - 29 CFR, 1926.404(b)(1)(ii), building sites; exempts small two-wire sets (confirmed).
//! - NFPA 70 (NEC), article 100, note on class A: trips at 6 mA or more, not below 4 mA (confirmed).
//! - UL 943, trip time: the curve (from a secondary copy).

use crate::plan::{Answer, Ground, Id};
use crate::rules::prelude::*;
use crate::rules::demand::camper;
use crate::supply::LimitReason;
use crate::tables::shape::Configuration;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK001",
    name: "no-ground-fault-protection",
    area: "shock",
    worst: Signal::Danger,
    text: include_str!("no_ground_fault_protection.rs"),
    sources: &[
        cite::NEC_590_6,
        cite::NEC_551_71,
        cite::NEC_445_20,
        cite::OSHA_404_B,
        cite::NEC_CLASS_A,
        crate::tables::gfci::CURVE,
    ],
    fixes: &["protect", "camper"],
    check,
    #[cfg(test)]
    fires: &[
        &[("gfci = true # left", "gfci = false")],
        &[("gfci = true # left", "gfci = \"unknown\"")],
        // Nothing is on it, but a socket is free.
        &[("gfci = true # front", "gfci = false")],
        &[("gfci = true # left", "")],
        // A camper on the 30 A outlet.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"5-20P\""),
            ("plug = \"5-15P\" # kettle", "plug = \"L5-30P\""),
            ("on = \"left\" # kettle", "on = \"twist\""),
        ],
        &[("gfci = true # left", "gfci = false"), ("ground = \"wet\"", "")],
        &[("gfci = true # left", "gfci = false"), ("ground = \"wet\"", "ground = \"dry\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // Protected further up.
        &[("gfci = true # left", "gfci = false"), ("gfci = false # twist", "gfci = true")],
    ],
};

/// The receptacles that loads are on, or that invite one because a household plug fits and a
/// socket is free, in the order of the tree. What is not fed invites nothing.
fn in_reach(facts: &Facts<'_>) -> Vec<Id> {
    let needs = facts.needs();
    facts
        .supply
        .receptacles()
        .filter(|(ix, node, shape, sockets)| {
            let used = needs.iter().any(|need| need.at == Some(*ix));
            let household = matches!(shape.0, Configuration::N5_15 | Configuration::N5_20);
            let free = facts.supply.fed_from(*ix).count() < usize::from(*sockets);
            used || (household && free && node.reason != LimitReason::NotFed)
        })
        .map(|(_, node, ..)| node.id.clone())
        .collect()
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let bare: Vec<Id> = in_reach(facts)
        .into_iter()
        .filter(|id| {
            facts
                .figures
                .limits
                .iter()
                .find(|limit| limit.id == *id)
                .is_none_or(|limit| !limit.gfci)
        })
        .collect();
    if bare.is_empty() {
        return;
    }
    let (signal, ground) = match facts.plan.site.ground {
        Answer::Known(Ground::Wet) => (Signal::Danger, "ground-wet"),
        Answer::Known(Ground::Damp) => (Signal::Warning, "ground-damp"),
        Answer::Known(Ground::Dry) => (Signal::Caution, "ground-dry"),
        Answer::Unknown | Answer::Missing => (Signal::Danger, "ground-unknown"),
    };
    // One that a camper is on, by its plug.
    let needs = facts.needs();
    let (campers, others): (Vec<Id>, Vec<Id>) = bare.into_iter().partition(|id| {
        needs.iter().any(|need| {
            need.at.map(|at| &facts.supply.node(at).id) == Some(id) && camper(need.load)
        })
    });
    for (about, fix) in [(others, "protect"), (campers, "camper")] {
        if !about.is_empty() {
            let ground = Value::Word { word: ground };
            found.add(signal, about, values([("ground", ground)]), fix, values([]));
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::signals;

    #[test]
    fn the_wetter_the_worse_and_unknown_is_wet() {
        for (ground, signal) in [
            ("ground = \"wet\"", Signal::Danger),
            ("ground = \"damp\"", Signal::Warning),
            ("ground = \"dry\"", Signal::Caution),
            ("ground = \"unknown\"", Signal::Danger),
        ] {
            assert_eq!(
                signals(
                    "SHOCK001",
                    &[("gfci = true # left", ""), ("ground = \"wet\"", ground)]
                ),
                [signal],
                "{ground}"
            );
        }
    }
}

//! # SHOCK012 unprotected-feed
//!
//! ## What it checks
//! Whether a cord in use lies before the first ground-fault protection (GFCI) on its way, as the cord from
//! a 30 A outlet to a distribution box whose own receptacles are protected.
//!
//! ## Why it hurts
//! A GFCI protects what is past it and nothing ahead of it. Where this cord is cut, or one of its joints
//! lies in the wet, current can pass through whoever touches it, and nothing trips in time.
//!
//! ## The arithmetic
//! Each cord that something is plugged in beyond is walked back to the generator. If no ground-fault
//! protection is met and some stands beyond, it is a caution, whatever the ground but for dry. Where
//! none stands beyond either, rule SHOCK001 speaks. Ground that nobody has described counts as wet, and a
//! cord of unknown length as 100 ft.
//!
//! ## What to do
//! Keep every joint of it off the ground and dry, and leave it alone while the engine runs: stop the
//! engine before it is plugged in, pulled out or moved. An outlet or a cord with protection built in, at
//! the generator, covers the whole way.
//!
//! ## Sources
//! - NFPA 70 (NEC), 590.6(A)(3), borrowed from building sites: receptacles of sets of 15 kW or less
//!   used for temporary power have protection, which covers every cord (from a secondary copy).
//! - Joints off the ground and dry are common practice, no source.

use crate::plan::{Answer, Cord, Ground, Id};
use crate::quantity::Length;
use crate::rules::prelude::*;
use crate::supply::{LimitReason, NodeIx, NodeKind};

pub(super) const RULE: Rule = Rule {
    code: "SHOCK012",
    name: "unprotected-feed",
    area: "shock",
    worst: Signal::Caution,
    text: include_str!("unprotected_feed.rs"),
    sources: &[cite::NEC_590_6, cite::PRACTICE],
    fixes: &["dry", "first"],
    check,
    #[cfg(test)]
    fires: &[
        // A cord from an outlet without it to a box with it, on wet ground.
        &[],
        &[("ground = \"wet\"", "")],
        // The same from a household outlet.
        HOUSEHOLD,
    ],
    #[cfg(test)]
    spares: &[
        &[("gfci = false # twist", "gfci = true")],
        &[("ground = \"wet\"", "ground = \"dry\"")],
        // No protection beyond either: that is rule SHOCK001's.
        &[("gfci = true # left", "gfci = false"), ("gfci = true # right", "gfci = false")],
    ],
};

#[cfg(test)]
const HOUSEHOLD: &[crate::rules::Edit] = &[
    ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
    ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
    ("inlet = \"L5-30P\"", "inlet = \"5-20P\""),
    ("gfci = true # front", "gfci = false"),
];

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.plan.site.ground == Answer::Known(Ground::Dry) {
        return;
    }
    let supply = facts.supply;
    let needs = facts.needs();
    let beyond = |ix: NodeIx| {
        let nodes = supply.nodes.iter().enumerate();
        nodes.filter(move |(at, _)| supply.up(NodeIx(*at)).any(|(above, _)| above == ix))
    };
    let bare: Vec<Id> = supply
        .nodes
        .iter()
        .enumerate()
        .map(|(at, node)| (NodeIx(at), node))
        .filter(|(_, node)| {
            matches!(node.kind, NodeKind::Cord { .. }) && node.reason != LimitReason::NotFed
        })
        .filter(|(ix, _)| !facts.verdicts.protected(*ix))
        .filter(|(ix, _)| beyond(*ix).any(|(at, _)| facts.verdicts.protected(NodeIx(at))))
        .filter(|(ix, _)| !facts.through(&needs, *ix).is_empty())
        .map(|(_, node)| node.id.clone())
        .collect();
    if !bare.is_empty() {
        let lengths = bare.iter().filter_map(|cord| facts.length_of(cord));
        let length: Length = lengths.sum();
        // A cord with a GFCI has a household plug, and goes in ahead of one.
        let plain = |cord: &&Cord| bare == [cord.id.clone()] && cord.plug.0.household();
        let first = facts.plan.cords.iter().find(plain).and_then(|cord| cord.from.clone());
        if let Some(place) = first {
            let place = values([("place", Value::Parts(vec![place]))]);
            found.add(Signal::Caution, bare, values([("length", length.into())]), "first", place);
            return;
        }
        found.add(Signal::Caution, bare, values([("length", length.into())]), "dry", values([]));
    }
}

#![doc = include_str!("../../../i18n/en/explain/SHOCK012.md")]

use crate::plan::{Answer, Cord, Ground, Id};
use crate::quantity::Length;
use crate::rules::prelude::*;
use crate::supply::{LimitReason, NodeIx};
use crate::verdict::Protection;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK012",
    name: "unprotected-feed",
    area: "shock",
    worst: Signal::Caution,
    sources: &[cite::NEC_590_6, cite::PRACTICE],
    fixes: &["dry", "first"],
    check,
    #[cfg(test)]
    fires: &[
        // A cord from an unprotected outlet to a protected box, on wet ground.
        &[],
        &[("ground = \"wet\"", "")],
        // The same from a household outlet.
        HOUSEHOLD,
    ],
    #[cfg(test)]
    spares: &[
        &[("gfci = false # twist", "gfci = true")],
        // The outlet's GFCI might be blind, because nobody knows how the listed box is wired.
        &[("gfci = false # twist", "gfci = true"), ("bond = false", "bond = \"unknown\"")],
        &[("ground = \"wet\"", "ground = \"dry\"")],
        // A box beyond a joint that blinds a GFCI is not used behind another GFCI either.
        &[("bond = false", "bond = true")],
        // No protection beyond the cord either: rule SHOCK001 reports that.
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
        .filter(|(_, node)| node.kind.is_cord() && node.reason != LimitReason::NotFed)
        // If a GFCI ahead of the cord may be blind, rules SHOCK005 and SHOCK013 report what may blind it.
        .filter(|(ix, _)| matches!(facts.verdicts.protection(*ix), Protection::None | Protection::Blind { .. }))
        // Gear that must not be used is not used behind a cord with a GFCI either.
        .filter(|(ix, _)| {
            let works = |at| facts.verdicts.protected(at) && facts.verdicts.refused(at).is_none();
            beyond(*ix).any(|(at, _)| works(NodeIx(at)))
        })
        .filter(|(ix, _)| !facts.through(&needs, *ix).is_empty())
        .map(|(_, node)| node.id.clone())
        .collect();
    if !bare.is_empty() {
        let lengths = bare.iter().filter_map(|cord| facts.length_of(cord));
        let length: Length = lengths.sum();
        // A cord with a GFCI has a household plug, so it can only go ahead of a household cord.
        let plain = |cord: &&Cord| bare == [cord.id.clone()] && cord.is_household();
        let first = facts.plan.cords.iter().find(plain).and_then(|cord| cord.from.clone());
        if let Some(place) = first {
            let place = values([("place", Value::Parts(vec![place]))]);
            found.add(Signal::Caution, bare, values([("length", length.into())]), "first", place);
            return;
        }
        found.add(Signal::Caution, bare, values([("length", length.into())]), "dry", values([]));
    }
}

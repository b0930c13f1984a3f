//! # FIT001 plug-does-not-fit
//!
//! ## What it checks
//! Whether everything has somewhere to plug in: each load a receptacle that takes its plug, each
//! cord and box the receptacle that it is said to plug into.
//!
//! ## Why it hurts
//! A plug that does not go in is how people come to file blades, break off ground pins and buy
//! adapters that defeat the shapes. The shapes differ so that a plug cannot meet the wrong volts or
//! amperes.
//!
//! ## The arithmetic
//! A plug goes into the receptacle of its own configuration. A 5-15P also goes into a 5-20R, and a
//! 1-15P into both. Nothing else goes. A part is also found when its receptacle is not in the plan,
//! is taken already, or leads back to itself. Where the only receptacle that takes a load's plug gives
//! nothing, or other volts than its shape says, that is said instead.
//!
//! ## What to do
//! Check the shape on the part itself. Use another receptacle, or a listed cord or box that brings
//! the right one with a breaker of the right size. Do not alter a plug.
//!
//! ## Sources
//! - NEMA WD 6: plug and receptacle configurations (from memory, not verified).

use crate::plan::Id;
use crate::rules::prelude::*;
use crate::supply::{DetachReason, NodeKind};

pub(super) const RULE: Rule = Rule {
    code: "FIT001",
    name: "plug-does-not-fit",
    area: "fit",
    worst: Signal::Caution,
    text: include_str!("plug_does_not_fit.rs"),
    sources: &[cite::WD_6],
    fixes: &["load", "dead", "part", "lost"],
    check,
    #[cfg(test)]
    fires: &[
        &[("plug = \"5-15P\" # kettle", "plug = \"14-30P\""), ("on = \"left\" # kettle", "")],
        &[("plug = \"L5-30P\" # long", "plug = \"TT-30P\"")],
        // The end of an adapter that brings 240 V.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            (
                "[[box]]",
                "[[cord]]\nid = \"trap\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [\"5-20R\"]\n[[box]]",
            ),
            ("on = \"left\" # kettle", "on = \"trap\""),
        ],
        // A second cord in a single receptacle.
        &[(
            "[[box]]",
            "[[cord]]\nid = \"other\"\nfrom = \"twist\"\nplug = \"L5-30P\"\nends = [\"L5-30R\"]\n[[box]]",
        )],
    ],
    #[cfg(test)]
    spares: &[&[], &[("plug = \"5-15P\" # kettle", "plug = \"1-15P\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    // Of what needs 240 V where there is none, rule FIT006 says more.
    let wrong_volts = super::wrong_voltage::unserved(facts);
    let loads: Vec<Id> = facts
        .plan
        .loads
        .iter()
        .filter(|load| !wrong_volts.contains(&load.id))
        .filter(|load| {
            let unplaced = facts.figures.sharing.unplaced.iter().any(|unplaced| {
                unplaced.reason == "no-receptacle-fits"
                    && (unplaced.load == load.id || unplaced.load == load.id.end(1))
            });
            let misplaced = load
                .on
                .as_ref()
                .and_then(|on| facts.supply.receptacle(on))
                .zip(load.plug.known())
                .is_some_and(|(at, plug)| match facts.supply.node(at).kind {
                    NodeKind::Receptacle { shape, .. } => !shape.takes(*plug),
                    _ => false,
                });
            unplaced || misplaced
        })
        .map(|load| load.id.clone())
        .collect();
    // What takes its plug and gives nothing, or other volts, is there.
    let dead = |id: &Id| {
        let load = facts.plan.loads.iter().find(|load| load.id == *id);
        let plug = load.and_then(|load| load.plug.known());
        facts.supply.receptacles().any(|(at, _, shape, _)| {
            !facts.gives(at) && plug.is_some_and(|plug| shape.takes(*plug))
        })
    };
    let (dead, without): (Vec<Id>, Vec<Id>) = loads.into_iter().partition(dead);
    if !without.is_empty() {
        found.add(Signal::Caution, without, values([]), "load", values([]));
    }
    if !dead.is_empty() {
        found.add(Signal::Caution, dead, values([]), "dead", values([]));
    }
    let parts: Vec<Id> = facts
        .supply
        .detached
        .iter()
        .filter(|part| part.reason == DetachReason::PlugDoesNotFit)
        .map(|part| part.id.clone())
        .collect();
    if !parts.is_empty() {
        found.add(Signal::Caution, parts, values([]), "part", values([]));
    }
    // What hangs on a part that hangs on nothing needs no line of its own.
    let lost: Vec<Id> = facts
        .supply
        .detached
        .iter()
        .filter(|part| {
            matches!(
                part.reason,
                DetachReason::NoFreeSocket | DetachReason::NoSuchReceptacle | DetachReason::Loop
            )
        })
        .map(|part| part.id.clone())
        .collect();
    if !lost.is_empty() {
        found.add(Signal::Caution, lost, values([]), "lost", values([]));
    }
}

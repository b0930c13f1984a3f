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
//! nothing, or other volts than its shape says, that is said instead. A bonding plug takes a household
//! socket of the set for itself: one is left for it, and where the plan leaves none, that is found.
//!
//! ## What to do
//! Check the shape on the part itself. Use another receptacle, or a listed cord or box that brings
//! the right one with a breaker of the right size. Do not alter a plug.
//!
//! ## Sources
//! - NEMA WD 6: plug and receptacle configurations (from memory, not verified).

use crate::plan::{Answer, Id};
use crate::rules::prelude::*;
use crate::verdict::BONDING_PLUG;
use crate::supply::{DetachReason, NodeKind};

pub(super) const RULE: Rule = Rule {
    code: "FIT001",
    name: "plug-does-not-fit",
    area: "fit",
    worst: Signal::Caution,
    text: include_str!("plug_does_not_fit.rs"),
    sources: &[cite::WD_6],
    fixes: &["load", "dead", "part", "lost", "bonding-plug"],
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
        // The one household outlet of the set with a kettle in each socket, and a bonding plug.
        &[
            ("bonding_plug = false", "bonding_plug = true"),
            ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ],
        // A second cord in a single receptacle.
        &[(
            "[[box]]",
            "[[cord]]\nid = \"other\"\nfrom = \"twist\"\nplug = \"L5-30P\"\nends = [\"L5-30R\"]\n[[box]]",
        )],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("plug = \"5-15P\" # kettle", "plug = \"1-15P\"")],
        // A socket is left for it, also of one that a kettle would be sent to.
        &[
            ("bonding_plug = false", "bonding_plug = true"),
            ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\""),
            ("on = \"left\" # kettle", ""),
            ("shape = \"5-15R\" # left", "shape = \"TT-30R\""),
            ("on = \"right\" # fan", ""),
        ],
    ],
};

/// Whether a household socket of the set is left for the plug that joins neutral and ground.
fn bonding_plug_fits(facts: &Facts<'_>) -> bool {
    let needs = facts.needs();
    facts.plan.generator.outlets.iter().any(|outlet| {
        let Some(ix) = facts.supply.receptacle(&outlet.id) else {
            return false;
        };
        let loads = needs.iter().filter(|need| need.at == Some(ix)).count();
        let taken = facts.supply.fed_from(ix).count() + loads;
        outlet.shape.takes(BONDING_PLUG) && taken < usize::from(outlet.socket_count())
    })
}

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
    if facts.plan.generator.bonding_plug == Answer::Known(true) && !bonding_plug_fits(facts) {
        found.add(Signal::Caution, vec![], values([]), "bonding-plug", values([]));
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

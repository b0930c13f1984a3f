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
//! 1-15P into both. Nothing else goes.
//!
//! ## What to do
//! Check the shape on the part itself. Use another receptacle, or a listed cord or box that brings
//! the right one with a breaker of the right size. Do not alter a plug.
//!
//! ## Sources
//! - NEMA WD 6: plug and receptacle configurations (from memory, not verified).

use crate::plan::Id;
use crate::rules::prelude::*;
use crate::supply::NodeKind;

pub(super) const RULE: Rule = Rule {
    code: "FIT001",
    name: "plug-does-not-fit",
    area: "fit",
    text: include_str!("plug_does_not_fit.rs"),
    sources: &[cite::WD_6],
    fixes: &["load", "part"],
    check,
    #[cfg(test)]
    fires: &[
        &[("plug = \"5-15P\" # kettle", "plug = \"14-30P\""), ("on = \"left\" # kettle", "")],
        &[("plug = \"L5-30P\" # long", "plug = \"TT-30P\"")],
    ],
    #[cfg(test)]
    spares: &[&[], &[("plug = \"5-15P\" # kettle", "plug = \"5-20P\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let loads: Vec<Id> = facts
        .plan
        .loads
        .iter()
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
    if !loads.is_empty() {
        found.add(Signal::Caution, loads, values([]), "load", values([]));
    }
    // Parts that are said to be plugged in somewhere and hang on nothing all the same. What hangs
    // on them hangs on nothing for that reason only.
    let meant = |id: &Id| {
        let cord = facts.plan.cords.iter().find(|cord| cord.id == *id);
        let a_box = facts.plan.boxes.iter().find(|a_box| a_box.id == *id);
        cord.and_then(|cord| cord.from.clone())
            .or_else(|| a_box.and_then(|a_box| a_box.from.clone()))
    };
    let parts: Vec<Id> = facts
        .supply
        .detached
        .iter()
        .filter(|id| meant(id).is_some_and(|from| facts.supply.receptacle(&from).is_some()))
        .cloned()
        .collect();
    if !parts.is_empty() {
        found.add(Signal::Caution, parts, values([]), "part", values([]));
    }
}

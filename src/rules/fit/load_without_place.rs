//! # FIT004 load-without-place
//!
//! ## What it checks
//! Whether a load that must run is left without a receptacle although some take its plug: because
//! it asks for more than any of them carries, or because all of them are taken.
//!
//! ## Why it hurts
//! It will be plugged in all the same, into whatever is free, and something trips or gets hot.
//!
//! ## The arithmetic
//! The load's running amperes against the limit at each receptacle that takes its plug, the largest
//! of which is named; for a load of three hours or more, against the limit for that long. A wish that finds no place is not found here; the card says so.
//!
//! ## What to do
//! If it is too large: leave it at home, use its lower setting, or use an outlet that carries more.
//! If all are taken: plug it in when another is unplugged.
//!
//! ## Sources
//! - NFPA 70 (NEC), 210.21(B)(2): the most to plug in at a receptacle, in all (from a secondary
//!   copy).
//! - The rest is arithmetic on the limits: common practice, no source.

use crate::plan::{Id, Wanted};
use crate::quantity::Current;
use crate::report::Limit;
use crate::rules::demand::{Need, once, quantity};
use crate::rules::prelude::*;
use crate::supply::LimitReason;

pub(super) const RULE: Rule = Rule {
    code: "FIT004",
    name: "load-without-place",
    area: "fit",
    worst: Signal::Caution,
    text: include_str!("load_without_place.rs"),
    sources: &[cite::NEC_210_21_B2, cite::PRACTICE],
    fixes: &["too-large", "no-room"],
    check,
    #[cfg(test)]
    fires: &[
        // 18.3 A on 15 A.
        &[("running = \"1500 W\"", "running = \"2200 W\"")],
        &[("wanted = \"must\" # fan", "count = 9\nwanted = \"must\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // 15 A on 15 A, for half an hour.
        &[("running = \"1500 W\"", "running = \"1800 W\"")],
        &[("wanted = \"must\" # fan", "count = 9\nwanted = \"wish\"")],
    ],
};

/// The best receptacle that a load can use: the one it is said to be on, else the one that
/// carries most of those that take its plug.
fn best<'a>(facts: &Facts<'a>, need: &Need<'_>) -> Option<&'a Limit> {
    let load = need.load;
    facts
        .figures
        .limits
        .iter()
        .filter(|limit| match &load.on {
            Some(on) => *on == limit.id,
            None => load
                .plug
                .known()
                .is_none_or(|plug| limit.shape.takes(*plug)),
        })
        .max_by_key(|limit| quantity::<Current>(&limit.short_amps))
}

/// What the load asks for and what the best receptacle carries, where that is less.
fn too_large(facts: &Facts<'_>, need: &Need<'_>) -> Option<Current> {
    let best = best(facts, need)?;
    // Of a thing that is said to be on a thin or coiled cord, the hazard is the cord's, and a rule
    // of that area's.
    if need.load.on.is_some()
        && matches!(
            best.set_by.reason,
            LimitReason::CordAmpacity | LimitReason::CordMark | LimitReason::CoiledCord | LimitReason::HotCord
        )
    {
        return None;
    }
    // Of one that has its place, rule OVER002 watches the long hours.
    let limit: Current = quantity(if need.at.is_none() && need.continuous() {
        &best.continuous_amps
    } else {
        &best.short_amps
    });
    (need.amps() > limit).then_some(limit)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let unplaced = |need: &Need<'_>, reason: &str| {
        facts
            .figures
            .sharing
            .unplaced
            .iter()
            .any(|lost| lost.load == need.facts.id && lost.reason == reason)
    };
    let must: Vec<Need<'_>> = facts
        .needs()
        .into_iter()
        .filter(|need| need.load.wanted == Wanted::Must)
        .collect();
    // One finding for each load that is too large: each has its own numbers.
    let mut named: Vec<&Id> = Vec::new();
    for need in &must {
        if need.at.is_none() && !unplaced(need, "too-large") {
            continue;
        }
        if let Some(limit) = too_large(facts, need)
            && !named.contains(&&need.load.id)
        {
            named.push(&need.load.id);
            found.add(
                Signal::Caution,
                vec![need.load.id.clone()],
                values([("demand", need.amps().into()), ("limit", limit.into())]),
                "too-large",
                values([]),
            );
        }
    }
    // What would fit a receptacle that a cord has taken is without room too. One that only cannot
    // be started is rule POWER002's.
    let starts = |need: &Need<'_>| need.starting_amps() <= facts.supply.leg_peak;
    let without_room = must.iter().filter(|need| {
        unplaced(need, "no-room")
            || need.at.is_none()
                && unplaced(need, "too-large")
                && starts(need)
                && !named.contains(&&need.load.id)
    });
    let crowded = once(without_room.map(|need| &need.load.id));
    if !crowded.is_empty() {
        found.add(Signal::Caution, crowded, values([]), "no-room", values([]));
    }
}

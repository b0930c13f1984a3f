//! # POWER003 stranded-power
//!
//! ## What it checks
//! Whether the outlets in use can pass on all that the generator can make.
//!
//! ## Why it hurts
//! Nobody is hurt, but people buy, carry and fuel a set whose power never reaches them, and then
//! overload the one outlet they use.
//!
//! ## The arithmetic
//! Each outlet of the generator with something plugged in passes what its breaker and its shape
//! allow, at nominal volts; an outlet on one leg of a two-leg set reaches that leg only. The sum,
//! no more than the rated watts after derating, is what can be reached. The rest is stranded.
//! Then each unused outlet is tried in turn, and the one that would reach most is named. Less
//! than 50 W is not worth a line.
//!
//! ## What to do
//! Plug the box or a second cord into the outlet named. Never feed two outlets into one box or
//! join two cords' ends.
//!
//! ## Sources
//! - Arithmetic on the markings: common practice, no source.
//! - NEMA WD 6: amperes of each configuration (from memory, not verified).

use crate::plan::Id;
use crate::quantity::{Current, Power};
use crate::rules::demand::quantity;
use crate::rules::prelude::*;
use crate::supply::NodeKind;
use crate::tables::shape::Circuit;

/// Below this nothing is worth changing.
const SMALL: Power = Power::from_milliwatts(50_000);

pub(super) const RULE: Rule = Rule {
    code: "POWER003",
    name: "stranded-power",
    area: "power",
    text: include_str!("stranded_power.rs"),
    sources: &[cite::PRACTICE, cite::WD_6],
    fixes: &["outlet", "accept"],
    check,
    #[cfg(test)]
    fires: &[
        // Everything on the 20 A outlet of a 3600 W set: 2400 W.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
        ],
        // No other outlet would help.
        &[
            ("rated = \"3600 W\"", "rated = \"7000 W\""),
            ("peak = \"4500 W\"", "peak = \"8000 W\""),
            ("breaker = \"20 A\" # front", "shares = \"twist\""),
        ],
    ],
    #[cfg(test)]
    spares: &[&[], &[("rated = \"3600 W\"", "rated = \"3640 W\"")]],
};

/// What an outlet of the generator could pass on by itself: the smaller of breaker and shape.
fn capacity(facts: &Facts<'_>, outlet: &Id) -> Option<Power> {
    let ix = facts.supply.receptacle(outlet)?;
    let node = facts.supply.node(ix);
    let NodeKind::Receptacle { shape, .. } = node.kind else {
        return None;
    };
    let amps = facts
        .supply
        .up(ix)
        .map(|(_, node)| node.rating)
        .min()
        .unwrap_or(Current::ZERO);
    let volts = match shape.0.circuit() {
        Circuit::OneLeg => facts.supply.volts,
        Circuit::TwoLegs | Circuit::TwoLegsNeutral => facts.supply.volts + facts.supply.volts,
    };
    Some(Power::of_capacity(amps, volts))
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let usable = &facts.figures.usable;
    let stranded: Power = quantity(&usable.stranded_watts);
    let reachable: Power = quantity(&usable.reachable_watts);
    let rated: Power = quantity(&usable.rated_watts);
    if stranded < SMALL || reachable == Power::ZERO {
        return;
    }
    let in_use = |id: &Id| {
        facts
            .supply
            .receptacle(id)
            .is_some_and(|ix| facts.supply.fed_from(ix).next().is_some())
            || facts.figures.sharing.placed.iter().any(|placed| placed.at == *id)
    };
    let outlets = &facts.plan.generator.outlets;
    let breaker = |id: &Id| {
        let receptacle = facts.supply.receptacle(id)?;
        facts.supply.node(receptacle).parent
    };
    // An outlet behind the breaker of one in use has nothing more to give.
    let spent = |id: &Id| {
        outlets
            .iter()
            .any(|other| in_use(&other.id) && breaker(&other.id) == breaker(id))
    };
    let cure = outlets
        .iter()
        .filter(|outlet| !in_use(&outlet.id) && !spent(&outlet.id))
        .filter_map(|outlet| Some((capacity(facts, &outlet.id)?, &outlet.id)))
        .map(|(more, id)| ((reachable + more).min(rated), id))
        .filter(|(reach, _)| *reach - reachable >= SMALL)
        // The first of equals.
        .rev()
        .max_by_key(|(reach, _)| *reach);
    let used: Vec<Id> = outlets
        .iter()
        .map(|outlet| &outlet.id)
        .filter(|id| in_use(id))
        .cloned()
        .collect();
    let shown = values([
        ("rated", rated.into()),
        ("reachable", reachable.into()),
        ("stranded", stranded.into()),
    ]);
    match cure {
        Some((reach, outlet)) => found.add(
            Signal::Notice,
            used,
            shown,
            "outlet",
            values([("outlet", outlet.into()), ("reach", reach.into())]),
        ),
        None => found.add(Signal::Notice, used, shown, "accept", values([])),
    }
}

//! # CORD001 cord-too-thin
//!
//! ## What it checks
//! Whether a cord is asked to carry more than its wire or its plug is made for, where no breaker
//! would stop it.
//!
//! ## Why it hurts
//! An overloaded cord gets hot along its whole length, hottest where it is covered or coiled. The
//! breaker belongs to the outlet, not to the cord, so nothing trips. Cords under a rug or a tent
//! floor start fires this way.
//!
//! ## The arithmetic
//! For each cord: the amperes of all loads placed beyond it that are on in the same minute, on the
//! busier leg, against the smaller of its plug's rating and its ampacity (two current-carrying
//! conductors: 18 AWG 10 A, 16 AWG 13 A, 14 AWG 18 A, 12 AWG 25 A, 10 AWG 30 A; three: 7, 10, 15,
//! 20, 25 A; a third where it stays coiled). Where only the heat of the air makes it too much, rule CORD006
//! speaks. A load that found no place because of a cord counts
//! against that cord. Where a breaker upstream is no larger than the cord's limit, the breaker
//! trips first and this rule is silent.
//!
//! ## What to do
//! Use a thicker cord, or plug some of it in elsewhere. A smaller AWG number is a thicker wire.
//!
//! ## Sources
//! - NFPA 70 (NEC), Table 400.5(A)(1): ampacity of flexible cord (from a secondary copy).
//! - Reckoning hot, neutral and ground at 120 V as two current-carrying conductors is common
//!   practice, no source.

use crate::plan::{Cord, Id};
use crate::quantity::Current;
use crate::rules::demand::{Need, busiest, clock};
use crate::rules::prelude::*;
use crate::supply::{LimitReason, NodeIx, NodeKind};

pub(super) const RULE: Rule = Rule {
    code: "CORD001",
    name: "cord-too-thin",
    area: "cord",
    worst: Signal::Danger,
    text: include_str!("cord_too_thin.rs"),
    sources: &[cite::NEC_400_5, cite::PRACTICE],
    fixes: &["thicker", "unwind"],
    check,
    #[cfg(test)]
    fires: &[
        // 13.3 A through 16 AWG behind 20 A.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "inlet = \"L5-30P\""),
            ("running = \"1500 W\"", "running = \"1600 W\""),
            ("on = \"left\" # kettle", "on = \"long\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
        // Coiled.
        &[
            ("coiled = false", "coiled = true"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // 12.5 A through 16 AWG behind 20 A.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "inlet = \"L5-30P\""),
            ("on = \"left\" # kettle", "on = \"long\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
    ],
};

/// How the cord's wire is marked.
fn wire(cord: Option<&Cord>) -> Value {
    cord.and_then(|cord| cord.wire.known())
        .map_or(Value::Word { word: "not-known" }, |wire| {
            Value::Name(wire.to_string())
        })
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let needs = facts.needs();
    for (at, node) in facts.supply.nodes.iter().enumerate() {
        let ix = NodeIx(at);
        if !matches!(node.kind, NodeKind::Cord { .. }) || node.reason == LimitReason::NotFed {
            continue;
        }
        // Where only the heat makes it too much, it is rule CORD006's.
        let limit = node.when_cool;
        // What trips first is not this rule's.
        if node.protected_at.is_some_and(|(_, breaker)| breaker <= limit) {
            continue;
        }
        let Some(Asked { demand, about, time }) = asked(facts, &needs, ix, limit) else {
            continue;
        };
        let plan = facts.plan.cords.iter().find(|cord| cord.id == node.id);
        found.add(
            Signal::Danger,
            about,
            values([
                ("demand", demand.into()),
                ("limit", limit.into()),
                ("wire", wire(plan)),
                ("time", time),
            ]),
            // What is too much for it laid out as well needs another cord.
            if demand <= node.laid_out {
                "unwind"
            } else {
                "thicker"
            },
            values([]),
        );
    }
}

/// What is asked of a cord beyond a limit.
pub(super) struct Asked {
    /// The current on its busier leg.
    pub demand: Current,
    /// The cord, then the loads that ask for it.
    pub about: Vec<Id>,
    /// When.
    pub time: Value,
}

/// The most that is asked of this cord, by what is on beyond it at one time or by a load that it
/// keeps out, where that is more than the limit.
pub(super) fn asked(
    facts: &Facts<'_>,
    needs: &[Need<'_>],
    cord: NodeIx,
    limit: Current,
) -> Option<Asked> {
    let id = &facts.supply.node(cord).id;
    let through = facts.through(needs, cord);
    let busiest = busiest(&through, |on| facts.worst_leg(on));
    let together = facts.worst_leg(&busiest.on);
    let (demand, loads) = if together > limit {
        (together, busiest.ids())
    } else {
        let (load, amps) = kept_out(facts, needs, id, limit)?;
        (amps, vec![load])
    };
    let mut about = vec![id.clone()];
    about.extend(loads);
    let time = clock(busiest.minute);
    Some(Asked { demand, about, time })
}

/// A load without a place that this cord by itself keeps out: its plug fits only beyond the cord,
/// and it asks more than this limit of the cord. What else keeps it out does not matter: a chain of
/// two thin cords has two of them.
fn kept_out(
    facts: &Facts<'_>,
    needs: &[Need<'_>],
    cord: &Id,
    limit: Current,
) -> Option<(Id, Current)> {
    needs.iter().find_map(|need| {
        if need.at.is_some() || need.amps() <= limit {
            return None;
        }
        let plug = *need.load.plug.known()?;
        let mut fits = facts
            .figures
            .limits
            .iter()
            .filter(|limit| limit.shape.takes(plug))
            .peekable();
        fits.peek()?;
        fits.all(|limit| limit.path.contains(cord))
            .then(|| (need.load.id.clone(), need.amps()))
    })
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::findings;

    /// 12.9 A through a coil of 18 AWG: 10 A in air of 30 °C when it is laid out, a third of it coiled.
    #[test]
    fn unwinding_is_no_remedy_for_what_is_too_much_unwound() {
        for (wire, fix) in [("10 AWG", "unwind"), ("18 AWG", "thicker")] {
            let wire = format!("wire = \"{wire}\"");
            let found = findings(&[
                ("coiled = false # long", "coiled = true"),
                ("wire = \"10 AWG\"", wire.as_str()),
            ]);
            let found = found.iter().find(|found| found.code == "CORD001");
            assert_eq!(found.map(|found| found.fix.key), Some(fix), "{wire}");
        }
    }
}

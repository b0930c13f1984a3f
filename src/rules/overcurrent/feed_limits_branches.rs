//! # OVER004 feed-limits-branches
//!
//! ## What it checks
//! Whether the breakers of a box add up to more than what feeds it.
//!
//! ## Why it hurts
//! Nobody is hurt: this is ordinary. But each receptacle of the box promises its own figure, and all
//! of them together cannot have it. The breaker at the generator trips and everything goes dark.
//!
//! ## The arithmetic
//! The sum of the box's breakers on each leg, each counted once however many receptacles it feeds,
//! against the smallest rating between the generator and the box's inlet. A box with one breaker shares
//! with nobody, and a box into which nothing may be plugged has nothing to share.
//!
//! ## What to do
//! Keep the sum of what runs at once below the feed's figures, for hours and for less. The card has the table of what may run
//! together.
//!
//! ## Sources
//! - Branch breakers that add up to more than the feed are ordinary diversity: common practice, no
//!   source.

use crate::plan::{Id, Leg};
use crate::quantity::Current;
use crate::rules::prelude::*;
use crate::supply::{NodeIx, NodeKind};

pub(super) const RULE: Rule = Rule {
    code: "OVER004",
    name: "feed-limits-branches",
    area: "overcurrent",
    worst: Signal::Notice,
    text: include_str!("feed_limits_branches.rs"),
    sources: &[cite::PRACTICE],
    fixes: &["sum"],
    check,
    #[cfg(test)]
    fires: &[&[("breaker = \"15 A\" # right", "breaker = \"20 A\"")]],
    #[cfg(test)]
    spares: &[
        // 15 A and 15 A on 30 A.
        &[],
        // A second receptacle behind the same breaker adds nothing.
        &[
            ("breaker = \"15 A\" # left", "breaker = \"20 A\""),
            ("breaker = \"15 A\" # right", "shares = \"left\""),
        ],
        // One breaker for both, larger than the feed.
        &[
            ("breaker = \"15 A\" # left", "breaker = \"40 A\""),
            ("breaker = \"15 A\" # right", "shares = \"left\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    for (at, inlet) in facts.supply.nodes.iter().enumerate() {
        let ix = NodeIx(at);
        if !matches!(inlet.kind, NodeKind::Inlet { .. }) {
            continue;
        }
        // A box that nothing may be plugged into has nothing to share.
        if !facts.verdicts.leads_on(ix) {
            continue;
        }
        let limit = facts.supply.limit(ix);
        let feed = limit.short;
        let breakers: Vec<_> = facts
            .supply
            .fed_from(ix)
            .filter(|(_, node)| matches!(node.kind, NodeKind::Breaker { .. }))
            .map(|(_, node)| node)
            .collect();
        let sum = [Leg::A, Leg::B]
            .into_iter()
            .map(|leg| {
                breakers
                    .iter()
                    .filter(|breaker| breaker.legs.all().contains(&leg))
                    .map(|breaker| breaker.rating)
                    .sum::<Current>()
            })
            .max()
            .unwrap_or(Current::ZERO);
        // With one breaker nobody shares.
        if sum > feed && breakers.len() > 1 {
            let mut about: Vec<Id> = vec![inlet.id.clone()];
            about.extend(breakers.iter().map(|breaker| breaker.id.clone()));
            found.add(
                Signal::Notice,
                about,
                values([
                    ("sum", sum.into()),
                    ("feed", feed.into()),
                    ("hours", limit.continuous.into()),
                ]),
                "sum",
                values([]),
            );
        }
    }
}

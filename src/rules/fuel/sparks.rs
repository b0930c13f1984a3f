//! # FUEL002 sparks
//!
//! ## What it checks
//! Whether the generator is to run on dry ground, where a spark or a hot muffler can light grass.
//!
//! ## Why it hurts
//! Bits of glowing carbon leave the exhaust, and the muffler is hot enough to light dry grass that
//! touches it. A fire in grass outruns people.
//!
//! ## The arithmetic
//! None: ground that is dry is a caution. Whether a generator has a spark arrester the plan does not say.
//! While fires are restricted, orders forbid engines by day, or allow a generator only with an approved
//! spark arrester on cleared ground.
//!
//! ## What to do
//! Ask the host or the ranger whether fires are restricted and engines may run at all today. Look for an
//! approved spark arrester in the exhaust. Stand the generator on bare soil or rock with nothing dry
//! around it, and keep water or an extinguisher there.
//!
//! ## Sources
//! - USDA Forest Service, order 03-09-00-22-08, fire restrictions, 2022: with an approved spark arrester,
//!   3 ft cleared round the generator (from a secondary copy).
//! - USDA Forest Service, spark arrester qualification, as US Army TM 9-6115-673-13&P cites it
//!   (confirmed).
//! - FEMA, clear space of 3 to 4 ft all round, 2011 (confirmed).

use crate::plan::{Answer, Ground};
use crate::rules::prelude::*;
use crate::tables::exhaust::CLEAR;

pub(super) const RULE: Rule = Rule {
    code: "FUEL002",
    name: "sparks",
    area: "fuel",
    worst: Signal::Caution,
    text: include_str!("sparks.rs"),
    sources: &[cite::USFS_ORDER, cite::USFS_ARRESTER, cite::FEMA_2011],
    fixes: &["arrester"],
    check,
    #[cfg(test)]
    fires: &[&[("ground = \"wet\"", "ground = \"dry\"")]],
    #[cfg(test)]
    spares: &[&[], &[("ground = \"wet\"", "ground = \"damp\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.plan.site.ground == Answer::Known(Ground::Dry) {
        found.add(
            Signal::Caution,
            vec![],
            values([("clear", CLEAR.into())]),
            "arrester",
            values([]),
        );
    }
}

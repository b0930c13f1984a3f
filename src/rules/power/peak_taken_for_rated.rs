//! # POWER005 peak-taken-for-rated
//!
//! ## What it checks
//! Whether the running power and the peak power of the generator are the same, or nearly so.
//!
//! ## Why it hurts
//! The large figure on the box of a generator is its peak, which it gives for seconds. Whoever takes it for
//! the running power plans with a tenth to a third more than there is: the generator trips at supper, or
//! its voltage sags for hours and motors run hot.
//!
//! ## The arithmetic
//! Running power at 95 % of the peak or more. Most generators have a running power of 75 % to 92 % of their
//! peak. Where a plan has the running power alone it is taken for the peak as well, and where it has the
//! peak alone three quarters of it are taken for the running power; either is said among what was assumed.
//!
//! ## What to do
//! Read the plate, not the box: "running", "rated" or "continuous" watts. Put that in the plan.
//!
//! ## Sources
//! - What most sets have is common practice, no source.

use crate::rules::prelude::*;

/// In per cent: from here on the two are one figure.
const SAME: i64 = 95;

pub(super) const RULE: Rule = Rule {
    code: "POWER005",
    name: "peak-taken-for-rated",
    area: "power",
    worst: Signal::Notice,
    text: include_str!("peak_taken_for_rated.rs"),
    sources: &[cite::PRACTICE],
    fixes: &["plate"],
    check,
    #[cfg(test)]
    fires: &[&[("peak = \"4500 W\"", "peak = \"3600 W\"")]],
    #[cfg(test)]
    // 94.7 %.
    spares: &[&[], &[("peak = \"4500 W\"", "peak = \"3800 W\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let set = &facts.plan.generator;
    if let (Some(rated), Some(peak)) = (set.rated.known(), set.peak.known())
        && i128::from(rated.milliwatts()) * 100 >= i128::from(peak.milliwatts()) * i128::from(SAME)
    {
        found.add(
            Signal::Notice,
            vec![],
            values([("rated", (*rated).into()), ("peak", (*peak).into())]),
            "plate",
            values([]),
        );
    }
}

#![doc = include_str!("../../../i18n/en/explain/POWER005.md")]

use crate::rules::prelude::*;

/// From this share on, in percent, the two count as the same figure.
const SAME: i64 = 95;

pub(super) const RULE: Rule = Rule {
    code: "POWER005",
    name: "peak-given-as-rated",
    area: "power",
    worst: Signal::Notice,
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

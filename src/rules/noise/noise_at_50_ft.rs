//! # NOISE001 noise-at-50-ft
//!
//! ## What it checks
//! Whether the generator is louder than 60 dB(A) at 50 ft, the limit in national parks that many
//! camps borrow.
//!
//! ## Why it hurts
//! Nobody is hurt, but a ranger or host may have it switched off, and neighbours who cannot sleep
//! do the same.
//!
//! ## The arithmetic
//! The published level falls by 6 dB for each doubling of distance, in the open and without echoes;
//! ground, trees and walls are not reckoned with. 60 dB(A) at 50 ft is the same as 66.8 dB(A) at
//! 7 m (23 ft), where makers usually measure, often at part load: one that nobody knows counts as a
//! quarter. At full load it is louder, by how much no plate says. Sets in parallel add up.
//!
//! ## What to do
//! Run fewer things at once, set economy idle if it has one, stand it on soft ground away from
//! walls, and ask the host what the limit is there. Never put it in an enclosure to quiet it.
//!
//! ## Sources
//! - 36 CFR, 2.12(a)(1)(i): 60 dB(A) at 50 ft (from a secondary copy).
//! - The fall of 6 dB by doubling is arithmetic on a free field: common practice, no source.

use crate::quantity::SoundLevel;
use crate::rules::demand::quantity;
use crate::rules::prelude::*;

/// 60 dB(A).
const LIMIT: SoundLevel = SoundLevel::from_millidecibels(60_000);

pub(super) const RULE: Rule = Rule {
    code: "NOISE001",
    name: "noise-at-50-ft",
    area: "noise",
    text: include_str!("noise_at_50_ft.rs"),
    sources: &[cite::CFR_36_2_12, cite::PRACTICE],
    fixes: &["quieter"],
    check,
    #[cfg(test)]
    fires: &[&[("level = \"60 dBA\"", "level = \"66.9 dBA\"")]],
    // 66.7 dB(A) at 23 ft is 59.96 at 50 ft.
    #[cfg(test)]
    spares: &[&[("level = \"60 dBA\"", "level = \"66.7 dBA\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let Some(level) = &facts.figures.noise.at_50ft_dba else {
        return;
    };
    let level: SoundLevel = quantity(level);
    if level > LIMIT {
        found.add(
            Signal::Notice,
            vec![],
            values([
                ("level", level.into()),
                ("limit", LIMIT.into()),
                (
                    "distance",
                    crate::quantity::Length::from_millimetres(15_240).into(),
                ),
            ]),
            "quieter",
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::codes;

    /// 60 dB(A) at 50 ft (36 CFR 2.12) is 66.8 dB(A) at 7 m by the published fall of 6 dB for each
    /// doubling: 20 log10(15.24 / 7) = 6.76 dB.
    #[test]
    fn the_bound_at_seven_metres() {
        for (level, found) in [("66.7 dBA", false), ("66.8 dBA", true)] {
            let noise = format!("level = \"{level}\", at = \"7 m\"");
            let edits = [("level = \"60 dBA\", at = \"23 ft\"", noise.as_str())];
            assert_eq!(codes(&edits).contains(&"NOISE001"), found, "{level}");
        }
    }
}

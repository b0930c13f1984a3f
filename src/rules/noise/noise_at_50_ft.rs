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
//! quarter. At full load a set is louder, by how much no plate says: 10 dB(A) are taken over what it
//! makes at a quarter load or less, in proportion less over what it makes at more. Where only that
//! brings it above the limit, the finding says so. "I don't know" counts as louder; where nobody was
//! asked, only the list of what was taken says so. Sets in parallel add up: two are 3 dB louder.
//!
//! ## What to do
//! Run fewer things at once, set economy idle if it has one, stand it on soft ground away from
//! walls, and ask the host what the limit is there. Never put it in an enclosure to quiet it.
//!
//! ## Sources
//! - 36 CFR, 2.12(a)(1)(i): 60 dB(A) at 50 ft (from a secondary copy).
//! - The fall of 6 dB by doubling is arithmetic on a free field; 10 dB(A) for full load is the upper
//!   end of what makers print who print both: common practice, no source.

use crate::plan::Answer;
use crate::quantity::SoundLevel;
use crate::report::Amount;
use crate::report::noise::MEASURED_AT;
use crate::rules::demand::quantity;
use crate::rules::prelude::*;

/// 60 dB(A).
const LIMIT: SoundLevel = SoundLevel::from_millidecibels(60_000);

pub(super) const RULE: Rule = Rule {
    code: "NOISE001",
    name: "noise-at-50-ft",
    area: "noise",
    worst: Signal::Notice,
    text: include_str!("noise_at_50_ft.rs"),
    sources: &[cite::CFR_36_2_12, cite::PRACTICE],
    fixes: &["quieter", "full-load", "look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("level = \"56 dBA\"", "level = \"66.9 dBA\"")],
        &[(
            "noise = { level = \"56 dBA\", at = \"23 ft\", load = \"25 %\" }",
            "noise = \"unknown\"",
        )],
        // At a quarter load.
        &[("level = \"56 dBA\"", "level = \"56.9 dBA\"")],
    ],
    #[cfg(test)]
    spares: &[
        // 56.7 dB(A) at 23 ft and a quarter load is 59.96 at 50 ft and full load.
        &[("level = \"56 dBA\"", "level = \"56.7 dBA\"")],
        &[(
            "level = \"56 dBA\", at = \"23 ft\", load = \"25 %\"",
            "level = \"66.7 dBA\", at = \"23 ft\", load = \"100 %\"",
        )],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.plan.generator.noise == Answer::Unknown {
        let shown = values([("limit", LIMIT.into()), ("distance", MEASURED_AT.into())]);
        found.add(Signal::Notice, vec![], shown, "look", values([]));
        return;
    }
    let noise = &facts.figures.noise;
    let level = |of: &Option<Amount>| of.as_ref().map(quantity::<SoundLevel>);
    let (Some(measured), Some(full)) = (level(&noise.at_50ft_dba), level(&noise.at_50ft_full_dba))
    else {
        return;
    };
    if full <= LIMIT {
        return;
    }
    let (fix, from) = if measured > LIMIT {
        ("quieter", &noise.quiet_from)
    } else {
        ("full-load", &noise.quiet_from_full)
    };
    let mut shown = values([
        ("level", measured.into()),
        ("full", full.into()),
        ("limit", LIMIT.into()),
        ("distance", MEASURED_AT.into()),
    ]);
    for (name, amount) in [("more", &noise.more_at_full_load), ("from", from)] {
        if let Some(amount) = amount {
            shown.insert(name, (*amount).into());
        }
    }
    found.add(Signal::Notice, vec![], shown, fix, values([]));
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::{codes, report};

    /// 60 dB(A) at 50 ft (36 CFR 2.12) is 66.8 dB(A) at 7 m by the published fall of 6 dB for each
    /// doubling: 20 log10(15.24 / 7) = 6.76 dB.
    #[test]
    fn the_bound_at_seven_metres() {
        for (level, found) in [("66.7 dBA", false), ("66.8 dBA", true)] {
            let noise = format!("level = \"{level}\", at = \"7 m\", load = \"100 %\"");
            let as_it_is = "level = \"56 dBA\", at = \"23 ft\", load = \"25 %\"";
            let edits = [(as_it_is, noise.as_str())];
            assert_eq!(codes(&edits).contains(&"NOISE001"), found, "{level}");
        }
    }
    /// Without a load, and with one in part, the level at full load is what counts, and the plan is
    /// told that it was taken.
    #[test]
    fn part_load_is_no_full_load() {
        let as_it_is = "level = \"56 dBA\", at = \"23 ft\", load = \"25 %\"";
        for (noise, found, assumed) in [
            ("level = \"60 dBA\", at = \"7 m\", load = \"100 %\"", false, false),
            ("level = \"60 dBA\", at = \"7 m\", load = \"75 %\"", false, true),
            ("level = \"60 dBA\", at = \"7 m\", load = \"50 %\"", false, true),
            ("level = \"60 dBA\", at = \"7 m\", load = \"25 %\"", true, true),
            ("level = \"60 dBA\", at = \"7 m\"", true, true),
        ] {
            let edits = [(as_it_is, noise)];
            assert_eq!(codes(&edits).contains(&"NOISE001"), found, "{noise}");
            let list = report(&edits).figures.assumed;
            let told = list.iter().any(|it| it.why == "noise-full-load");
            assert_eq!(told, assumed, "{noise}");
        }
    }
}

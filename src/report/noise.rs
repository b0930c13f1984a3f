//! Sound over distance in a free field: 6 dB less for each doubling.
//!
//! Trees, slopes and walls change it, either way. The published level is often for part load, and [`more_at`] gives
//! what more load adds. A plan's own sound is that of its busiest minute.

use super::{EnergyUse, NoiseAt};
use crate::plan::{Noise, Plan};
use crate::quantity::{BITS, Length, SoundLevel, log2, narrow};
use crate::tables::sound::{ALL, more_at};

/// The distance at which 36 CFR 2.12(a)(1)(i) measures: 50 ft.
pub const MEASURED_AT: Length = Length::from_millimetres(15_240);
/// The limit there: 60 dB(A).
pub const BOUND: SoundLevel = SoundLevel::from_millidecibels(60_000);

/// Returns the figures for a plan.
pub(super) fn of_plan(plan: &Plan, energy: &EnergyUse) -> NoiseAt {
    let Some(noise) = source(plan) else {
        return NoiseAt::default();
    };
    let (busy, more) = busiest(noise, energy);
    let full = louder(noise, more_at(ALL, noise.load));
    let at_sleepers = |noise: Noise| {
        let distance = plan.site.sleepers_at.known();
        distance.map(|distance| level_at(noise, *distance))
    };
    NoiseAt {
        at_sleepers_dba: at_sleepers(noise),
        at_50ft_dba: Some(level_at(noise, MEASURED_AT)),
        more_at_full_load: Some(more_at(ALL, noise.load)),
        at_sleepers_full_dba: at_sleepers(full),
        at_50ft_full_dba: Some(level_at(full, MEASURED_AT)),
        more_at_busiest: Some(more),
        at_sleepers_busiest_dba: at_sleepers(busy),
        at_50ft_busiest_dba: Some(level_at(busy, MEASURED_AT)),
    }
}

/// Returns the sound at the busiest minute of a plan, and how much louder that is than the published level. Full load
/// is assumed where the share of its power is unknown.
pub(super) fn busiest(noise: Noise, energy: &EnergyUse) -> (Noise, SoundLevel) {
    let more = more_at(energy.busiest_load.unwrap_or(ALL), noise.load);
    (louder(noise, more), more)
}

fn louder(noise: Noise, more: SoundLevel) -> Noise {
    Noise { level: SoundLevel::from_millidecibels(noise.level.millidecibels() + more.millidecibels()), ..noise }
}

/// Returns the published level of all generators that run as one. `None` where it is unknown.
pub(super) fn source(plan: &Plan) -> Option<Noise> {
    let noise = *plan.generator.noise.known()?;
    Some(Noise { level: of_several(noise.level, plan.generator.sets()), ..noise })
}

/// Returns the level of several equal generators side by side.
fn of_several(one: SoundLevel, sets: i64) -> SoundLevel {
    let more = more_of_several(sets);
    SoundLevel::from_millidecibels(one.millidecibels() + more.millidecibels())
}

/// Returns how much louder several equal generators are than one: sound power adds, so 10 log10(n) dB, rounded up.
#[must_use]
pub fn more_of_several(sets: i64) -> SoundLevel {
    // 10 log10(2) is 3.010 299 957 dB.
    let nano = (log2(sets, 1) * 3_010_299_957) >> BITS;
    SoundLevel::from_millidecibels(narrow((nano + 999_999) / 1_000_000))
}

/// Returns the level at a distance, rounded up.
#[must_use]
pub fn level_at(noise: Noise, distance: Length) -> SoundLevel {
    SoundLevel::from_millidecibels(
        noise.level.millidecibels() - twenty_log10(distance.millimetres().max(1), noise.at.millimetres().max(1)),
    )
}

/// Returns 20 log10(above / below) in thousandths of a decibel, rounded down.
fn twenty_log10(above: i64, below: i64) -> i64 {
    let log2 = log2(above, below);
    // 20 log10(2) is 6.020 599 913 dB.
    let nano = (log2 * 6_020_599_913) >> BITS;
    narrow(nano.div_euclid(1_000_000))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Answer;

    fn feet(feet: i64) -> Length {
        Length::from_millimetres(feet * 3048 / 10)
    }

    fn noise(millidecibels: i64, at: Length) -> Noise {
        Noise { level: SoundLevel::from_millidecibels(millidecibels), at, load: Answer::Missing }
    }

    #[test]
    fn a_table_of_the_audio_trade() {
        // From 20 ft to 40, 60 and 80: -6, -9.5, -12 dB; exactly -6.02, -9.54, -12.04.
        let source = noise(80_000, feet(20));
        for (distance, lost) in [(40, 6020), (60, 9542), (80, 12_041)] {
            let level = level_at(source, feet(distance)).millidecibels();
            assert!((80_000 - level - lost).abs() <= 1, "{distance} ft: {level}");
        }
        // Ten times the distance is 20 dB less, and a tenth of it 20 dB more.
        assert_eq!(twenty_log10(10_000, 1000) / 10, 1999);
        assert_eq!(twenty_log10(1000, 1000), 0);
        assert_eq!(twenty_log10(1000, 10_000) / 10, -2000);
    }

    /// Two equal sources are 3.01 dB louder than one, and ten are 10 dB louder (sums of sound power, as in any table of
    /// decibels).
    #[test]
    fn two_alike_are_three_decibels_louder() {
        let one = SoundLevel::from_millidecibels(60_000);
        assert_eq!(of_several(one, 1), one);
        assert_eq!(of_several(one, 2).millidecibels(), 63_011);
        let ten = of_several(one, 10).millidecibels();
        assert!((70_000..=70_001).contains(&ten), "{ten}");
    }

    #[test]
    fn the_bound_at_50_feet_is_66_8_at_7_metres() {
        let source = noise(66_758, Length::from_millimetres(7000));
        let level = level_at(source, MEASURED_AT).millidecibels();
        assert!((level - 60_000).abs() <= 2, "{level}");
    }
}

//! How much louder a generator is at a higher load than the one at which its noise was measured.
//!
//! No published figure was found. The measurement standards (ISO 3744, ISO 8528-10) say how to measure, at a load that
//! the manufacturer states, but not how the level grows. Manufacturers that print two levels for generators that slow
//! down at light load show some 5 to 10 dB between a quarter load and full load.

use crate::plan::Answer;
use crate::quantity::{Percent, SoundLevel};

/// What full load adds to a level measured at a quarter load or less: 10 dB(A) (common practice, no source). The upper
/// end of the range, and about twice as loud to the ear.
pub const FULL_LOAD: SoundLevel = SoundLevel::from_millidecibels(10_000);

/// The assumed load of a measurement that does not state it (common practice, no source), since manufacturers like to
/// measure there.
pub const UNKNOWN_LOAD: Percent = Percent::from_millipercent(25_000);

/// Full load.
pub const ALL: Percent = Percent::from_millipercent(100_000);

/// Returns how much louder the generator is assumed to be at `load` than at the measured load: all of [`FULL_LOAD`]
/// from a quarter to full load, proportionally in between, rounded up.
///
/// Less than a quarter counts as a quarter, and at a lower load than measured it is never assumed to be quieter.
#[must_use]
pub fn more_at(load: Percent, measured: Answer<Percent>) -> SoundLevel {
    let quarter = UNKNOWN_LOAD.millipercent();
    let within = |load: Percent| load.millipercent().clamp(quarter, ALL.millipercent());
    let span = ALL.millipercent() - quarter;
    let steps = (within(load) - within(measured.or(UNKNOWN_LOAD))).max(0);
    SoundLevel::from_millidecibels((FULL_LOAD.millidecibels() * steps + span - 1) / span)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 10 dB over three quarters of the load is 10 / 3 dB for each quarter.
    #[test]
    fn in_proportion_between_a_quarter_and_all() {
        for (load, more) in [(10, 10_000), (25, 10_000), (50, 6_667), (75, 3_334), (100, 0)] {
            let load = Answer::Known(Percent::from_millipercent(load * 1000));
            assert_eq!(more_at(ALL, load).millidecibels(), more, "{load:?}");
        }
        let percent = |load: i64| Percent::from_millipercent(load * 1000);
        for (load, measured, more) in [
            (50, 25, 3_334),
            (100, 50, 6_667),
            (75, 50, 3_334),
            // At a lower load than measured, no lower level is promised.
            (25, 50, 0),
            (5, 5, 0),
            (30, 5, 667),
        ] {
            let louder = more_at(percent(load), Answer::Known(percent(measured)));
            assert_eq!(louder.millidecibels(), more, "{load} {measured}");
        }
        assert_eq!(more_at(ALL, Answer::Unknown), FULL_LOAD);
        assert_eq!(more_at(ALL, Answer::Missing), FULL_LOAD);
    }
}

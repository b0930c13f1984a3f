//! How much louder a set is at full load than at the load its noise was measured at.
//!
//! No published figure was found: the standards for measuring (ISO 3744, ISO 8528-10) say how, at a
//! load that the maker states, and not how the level grows. Makers who print two levels for sets that
//! slow down when little is asked of them print some 5 to 10 dB between a quarter load and all of it.

use crate::plan::Answer;
use crate::quantity::{Percent, SoundLevel};

/// What full load adds to a level measured at a quarter load or less: 10 dB(A) (common practice, no
/// source). The upper end, and about twice as loud to the ear.
pub const FULL_LOAD: SoundLevel = SoundLevel::from_millidecibels(10_000);

/// A load that nobody knows (common practice, no source): what makers like to measure at.
pub const UNKNOWN_LOAD: Percent = Percent::from_millipercent(25_000);

/// Full load.
const ALL: i64 = 100_000;

/// How much louder the set is taken to be at full load than at this one: all of [`FULL_LOAD`] at a
/// quarter, nothing at full load, in proportion between, rounded up.
#[must_use]
pub fn more_at_full_load(measured: Answer<Percent>) -> SoundLevel {
    let quarter = UNKNOWN_LOAD.millipercent();
    let at = measured.or(UNKNOWN_LOAD).millipercent().clamp(quarter, ALL);
    let span = ALL - quarter;
    let more = FULL_LOAD.millidecibels() * (ALL - at);
    SoundLevel::from_millidecibels((more + span - 1) / span)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 10 dB over three quarters of the load is 10 / 3 dB for each quarter.
    #[test]
    fn in_proportion_between_a_quarter_and_all() {
        for (load, more) in [
            (10, 10_000),
            (25, 10_000),
            (50, 6_667),
            (75, 3_334),
            (100, 0),
        ] {
            let load = Answer::Known(Percent::from_millipercent(load * 1000));
            assert_eq!(more_at_full_load(load).millidecibels(), more, "{load:?}");
        }
        assert_eq!(more_at_full_load(Answer::Unknown), FULL_LOAD);
        assert_eq!(more_at_full_load(Answer::Missing), FULL_LOAD);
    }
}

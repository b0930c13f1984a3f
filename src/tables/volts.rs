//! How much voltage may be lost on the way: NFPA 70 (NEC) 210.19, informational note, 2023, 3 %
//! on a branch and 5 % in all (from a secondary copy). Advice, not law. And what a supply of 120 V is
//! held to.

use super::source::{Mark, Source};
use crate::quantity::{Percent, Voltage};

/// Worth a note above this.
pub const NOTED: Percent = Percent::from_millipercent(3_000);
/// Too much above this.
pub const MUCH: Percent = Percent::from_millipercent(5_000);

/// The least of range A for a service of 120 V; at 240 V it is twice that. Made for utilities: nobody
/// enforces it at a portable set, but what people plug in is made for it.
pub const SERVICE_LEAST: Voltage = Voltage::from_millivolts(114_000);
/// The most of it.
pub const SERVICE_MOST: Voltage = Voltage::from_millivolts(126_000);

/// The least of range A where a thing of 120 V is plugged in: the wiring behind the service may lose
/// 6 V more. Things are made for this and up.
pub const USE_LEAST: Voltage = Voltage::from_millivolts(108_000);
/// The least of range B there. Between the two it works and is put right as soon as can be; below
/// it what is plugged in may not work, and may be harmed.
pub const USE_LEAST_B: Voltage = Voltage::from_millivolts(104_000);

/// No set gives more than a tenth above nominal: the neutral may be lost, or the set is broken (common practice, no
/// source).
pub const HIGH: Voltage = Voltage::from_millivolts(132_000);

/// Such a bound, given for 120 V, at another nominal voltage; rounded up.
#[must_use]
pub const fn at_nominal(bound: Voltage, nominal: Voltage) -> Voltage {
    const BASE: i64 = 120_000;
    let scaled = bound.millivolts() * nominal.millivolts();
    Voltage::from_millivolts((scaled + BASE - 1) / BASE)
}

/// Where the bounds at the place of use stand: "The Range B utilization voltage range is plus 6% to
/// minus 13% of nominal", and of a table of a revision draft of the standard the row for 120 V: 126,
/// 114, 108; 127, 110, 104.
pub const RANGES_IN_USE: Source = Source::new("ANSI C84.1", "", "", Mark::Secondary).noted("volts-in-use");

/// Where range A stands.
pub const RANGE_A: Source = Source::new("COMAR (Maryland)", "20.50.07.02", "", Mark::Confirmed).noted("range-a");

#[cfg(test)]
mod tests {
    use super::*;

    /// ANSI C84.1, the row for 120 V of a revision draft's table (from a secondary copy): range A 126,
    /// 114, 108; range B 127, 110, 104. A utility's document gives range B in use as -13 % of nominal.
    #[test]
    fn the_bounds_are_those_of_the_table() {
        let volts = |volts: i64| Voltage::from_millivolts(volts * 1000);
        let typed = [126, 114, 108, 104].map(volts);
        assert_eq!([SERVICE_MOST, SERVICE_LEAST, USE_LEAST, USE_LEAST_B], typed);
        // 0.87 x 120 V is 104.4 V, which the table rounds.
        assert!((USE_LEAST_B.millivolts() - 104_400).abs() < 500);
        assert_eq!(at_nominal(USE_LEAST, volts(240)), volts(216));
        assert_eq!(at_nominal(USE_LEAST_B, volts(240)), volts(208));
    }
}

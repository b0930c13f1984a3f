//! How much voltage may be lost on the way: 3 % on a branch circuit and 5 % in total, by NFPA 70 (NEC) 210.19,
//! informational note, 2023 (from a secondary copy). Advice, not law. Also the limits for a 120 V supply.

use super::source::{Mark, Source};
use crate::quantity::{Percent, Voltage};

/// Above this a drop is worth a note.
pub const NOTED: Percent = Percent::from_millipercent(3_000);
/// Above this a drop is too much.
pub const MUCH: Percent = Percent::from_millipercent(5_000);

/// The lower limit of range A for a 120 V service; at 240 V it is twice that. It is meant for utilities and nobody
/// enforces it on a portable generator, but appliances are made for it.
pub const SERVICE_LEAST: Voltage = Voltage::from_millivolts(114_000);
/// The upper limit of range A for a 120 V service.
pub const SERVICE_MOST: Voltage = Voltage::from_millivolts(126_000);

/// The lower limit of range A where a 120 V appliance is plugged in, since the wiring downstream of the service may
/// lose another 6 V. Appliances are made for this voltage and up.
pub const USE_LEAST: Voltage = Voltage::from_millivolts(108_000);
/// The lower limit of range B where an appliance is plugged in. Between this and [`USE_LEAST`] it works, but the
/// voltage should be corrected soon. Below this it may fail or be damaged.
pub const USE_LEAST_B: Voltage = Voltage::from_millivolts(104_000);

/// A tenth above nominal. No generator should supply more: the neutral may be lost or the generator broken (common
/// practice, no source).
pub const HIGH: Voltage = Voltage::from_millivolts(132_000);

/// Scales a limit for 120 V to another nominal voltage, rounded up.
#[must_use]
pub const fn at_nominal(bound: Voltage, nominal: Voltage) -> Voltage {
    const BASE: i64 = 120_000;
    let scaled = bound.millivolts() * nominal.millivolts();
    Voltage::from_millivolts((scaled + BASE - 1) / BASE)
}

/// The source of the limits at the point of use: "The Range B utilization voltage range is plus 6% to minus 13% of
/// nominal", and the 120 V row of a table in a revision draft of the standard: 126, 114, 108; 127, 110, 104.
pub const RANGES_IN_USE: Source = Source::new("ANSI C84.1", "", "", Mark::Secondary).noted("volts-in-use");

/// The source of range A.
pub const RANGE_A: Source = Source::new("COMAR (Maryland)", "20.50.07.02", "", Mark::Confirmed).noted("range-a");

#[cfg(test)]
mod tests {
    use super::*;

    /// ANSI C84.1, the 120 V row of the table in a revision draft (from a secondary copy): range A 126, 114, 108; range
    /// B 127, 110, 104. A utility's document gives range B at the point of use as -13 % of nominal.
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

//! How much voltage may be lost on the way: NFPA 70 (NEC) 210.19(A), informational note 4, 2023, 3 %
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

/// Where range A stands.
pub const RANGE_A: Source = Source::new(
    "COMAR (Maryland), as ANSI C84.1 range A",
    "20.50.07.02",
    "",
    Mark::Confirmed,
);

//! The length of a refueling break, and assumptions about a tank.

use crate::quantity::{Hours, Percent};

/// The minutes of pouring once the engine has cooled (common practice, no source).
pub const POUR: u16 = 10;
/// The minutes before and after the night of medical equipment in which nobody refuels (our own choice). A spill, or an
/// engine that does not start again, must not fall into that night.
pub const BESIDE: u16 = 60;
/// How long a tank of unknown duration lasts: 3 h, as for a small generator at full load (common practice, no source).
pub const UNKNOWN_TANK: Hours = Hours::from_millihours(3_000);
/// The share of a tank that medical equipment may count on. Published times, and the fuel use in between, are off by up
/// to about a tenth (common practice, no source).
pub const USABLE_FOR_LIFE: Percent = Percent::from_millipercent(90_000);

//! What a break to refuel takes, and how long a tank lasts of which nobody knows it.

use crate::quantity::{Hours, Percent};

/// Minutes to pour once the engine has cooled (common practice, no source).
pub const POUR: u16 = 10;
/// So many minutes before and after the night of what somebody's health depends on nobody pours (ours):
/// a spill, or an engine that does not start again, must not fall into that night.
pub const BESIDE: u16 = 60;
/// A tank that nobody knows how long it lasts: 3 h, that of a small set at full load (common practice,
/// no source).
pub const UNKNOWN_TANK: Hours = Hours::from_millihours(3_000);
/// What of a tank what somebody's health depends on may count on: published times and what engines burn
/// between them are off by up to about a tenth (common practice, no source).
pub const USABLE_FOR_LIFE: Percent = Percent::from_millipercent(90_000);

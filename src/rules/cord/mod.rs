//! Rules on cords.

mod chained_cords;
mod coiled_cord;
mod cord_too_thin;
mod felt_hot;
mod heater_on_cord;
mod hot_cord;
mod indoor_cord_outdoors;
mod missing_ground;
mod strip_behind_cord;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[
    cord_too_thin::RULE,
    indoor_cord_outdoors::RULE,
    coiled_cord::RULE,
    missing_ground::RULE,
    chained_cords::RULE,
    hot_cord::RULE,
    strip_behind_cord::RULE,
    heater_on_cord::RULE,
    felt_hot::RULE,
];

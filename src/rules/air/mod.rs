//! Rules on air: carbon monoxide and room to breathe.

mod carbon_monoxide_distance;
mod cord_too_short;
mod no_co_alarm;
mod no_free_air;
mod rain_on_generator;
mod runs_while_asleep;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[
    carbon_monoxide_distance::RULE,
    no_co_alarm::RULE,
    no_free_air::RULE,
    rain_on_generator::RULE,
    cord_too_short::RULE,
    runs_while_asleep::RULE,
];

//! Rules on power: what the generator can make, and how much of it arrives.

mod breaker_trips_early;
mod economy_idle;
mod legs_out_of_balance;
mod parallel_generators;
mod peak_exceeded;
mod peak_given_as_rated;
mod plug_too_small;
mod rated_power_exceeded;
mod stranded_power;

use super::Rule;
pub(super) use economy_idle::too_hard;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[
    rated_power_exceeded::RULE,
    peak_exceeded::RULE,
    stranded_power::RULE,
    breaker_trips_early::RULE,
    peak_given_as_rated::RULE,
    legs_out_of_balance::RULE,
    economy_idle::RULE,
    parallel_generators::RULE,
    plug_too_small::RULE,
];

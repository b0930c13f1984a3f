//! Rules on overcurrent: what trips, and what only gets hot.

mod breaker_overloaded;
mod continuous_over_80_percent;
mod cord_limits_load;
mod current_limited_fault;
mod unprotected_rating;

use super::Rule;
pub(super) use breaker_overloaded::{Overload, overloads};
pub(super) use continuous_over_80_percent::crowded;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[
    unprotected_rating::RULE,
    continuous_over_80_percent::RULE,
    cord_limits_load::RULE,
    current_limited_fault::RULE,
    breaker_overloaded::RULE,
];

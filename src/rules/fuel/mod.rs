//! Rules on fuel.

mod refueling;
mod spare_fuel;
mod sparks;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[refueling::RULE, sparks::RULE, spare_fuel::RULE];

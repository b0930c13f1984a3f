//! Rules on fuel.

mod refuelling;
mod spare_fuel;
mod sparks;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[refuelling::RULE, sparks::RULE, spare_fuel::RULE];

//! Rules on noise.

mod noise_at_50_ft;
mod quiet_hours;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[noise_at_50_ft::RULE, quiet_hours::RULE];

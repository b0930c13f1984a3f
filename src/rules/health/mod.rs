//! Rules on health.

mod heat_while_asleep;
mod medical_load;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[medical_load::RULE, heat_while_asleep::RULE];

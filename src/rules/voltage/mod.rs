//! Rules on voltage: how much is lost on the way.

mod voltage_drop;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[voltage_drop::RULE];

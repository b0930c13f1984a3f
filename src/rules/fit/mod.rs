//! Rules on what plugs in where.

mod adapter_raises_rating;
mod load_without_place;
mod look_alike_shapes;
mod outlet_not_fed;
mod plug_does_not_fit;
mod where_240_volts;
mod wrong_voltage;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[
    plug_does_not_fit::RULE,
    adapter_raises_rating::RULE,
    outlet_not_fed::RULE,
    load_without_place::RULE,
    look_alike_shapes::RULE,
    wrong_voltage::RULE,
    where_240_volts::RULE,
];

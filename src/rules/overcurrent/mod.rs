//! Rules on overcurrent: what trips, and what only gets hot.

crate::rules::area! {
    unprotected_rating,
    continuous_over_80_percent,
    cord_limits_load,
    current_limited_fault,
    breaker_overloaded,
}

pub(super) use breaker_overloaded::{Overload, overloads};
pub(super) use continuous_over_80_percent::crowded;

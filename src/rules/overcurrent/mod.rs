//! Rules on overcurrent: what trips, and what only gets hot.

crate::rules::area! {
    unprotected_rating,
    continuous_over_80_percent,
    cord_limits_load,
    feed_limits_branches,
    current_limited_fault,
    breaker_overloaded,
}

mod own_limit;
mod proof;

pub(super) use continuous_over_80_percent::crowded;
pub(super) use own_limit::own_limit;
pub(crate) use proof::proofs;
pub(super) use unprotected_rating::CORD_SET_CIRCUIT;
pub(crate) use unprotected_rating::{Proof, prove};

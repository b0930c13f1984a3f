//! Rules on overcurrent: what trips, and what only gets hot.

crate::rules::area! {
    unprotected_rating,
    continuous_over_80_percent,
}

pub(super) use unprotected_rating::protection;

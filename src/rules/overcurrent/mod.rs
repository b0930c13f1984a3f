//! Rules on overcurrent.

crate::rules::area! { unprotected_rating }

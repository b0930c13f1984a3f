//! Rules on health.

crate::rules::area! {}

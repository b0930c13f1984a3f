//! Rules on shock.

crate::rules::area! {}

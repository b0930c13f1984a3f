//! Rules on cord.

crate::rules::area! {}

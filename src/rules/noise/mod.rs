//! Rules on noise.

crate::rules::area! {}

//! Rules on voltage.

crate::rules::area! {}

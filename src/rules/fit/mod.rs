//! Rules on fit.

crate::rules::area! {}

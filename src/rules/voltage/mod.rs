//! Rules on voltage: what is lost on the way.

crate::rules::area! { voltage_drop }

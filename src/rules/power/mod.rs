//! Rules on power.

crate::rules::area! { rated_power_exceeded }

//! Rules on air.

crate::rules::area! { carbon_monoxide_distance }

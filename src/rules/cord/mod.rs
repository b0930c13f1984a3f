//! Rules on cords.

crate::rules::area! { cord_too_thin }

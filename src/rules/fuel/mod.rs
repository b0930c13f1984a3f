//! Rules on fuel.

crate::rules::area! {
    refuelling,
    sparks,
    spare_fuel,
}

pub(super) use refuelling::{UNKNOWN_TANK, stretch};

//! Rules on fuel.

crate::rules::area! {
    refuelling,
    sparks,
    spare_fuel,
}

//! Rules on fuel.

crate::rules::area! {
    refuelling,
}

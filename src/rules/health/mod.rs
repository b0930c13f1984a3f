//! Rules on health.

crate::rules::area! {
    medical_load,
    heat_while_asleep,
}

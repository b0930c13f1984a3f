//! Rules on health.

crate::rules::area! {
    medical_load,
}

//! Rules on health.

crate::rules::area! {
    medical_load,
    heat_while_asleep,
}

pub(crate) use heat_while_asleep::NIGHT;

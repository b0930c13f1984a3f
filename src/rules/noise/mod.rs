//! Rules on noise.

crate::rules::area! {
    noise_at_50_ft,
    quiet_hours,
}

//! Rules on power: what the set can make, and what of it arrives.

crate::rules::area! {
    rated_power_exceeded,
    peak_exceeded,
    stranded_power,
    breaker_trips_early,
    peak_taken_for_rated,
    legs_out_of_balance,
    economy_idle,
    parallel_sets,
    plug_too_small,
}

pub(super) use economy_idle::too_hard;

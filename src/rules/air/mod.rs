//! Rules on air: carbon monoxide and room to breathe.

crate::rules::area! {
    carbon_monoxide_distance,
    no_co_alarm,
    no_free_air,
    rain_on_set,
    cord_too_short,
    runs_while_asleep,
}

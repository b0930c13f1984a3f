//! Rules on cords.

crate::rules::area! {
    cord_too_thin,
    indoor_cord_outdoors,
    coiled_cord,
    missing_ground,
    chained_cords,
    hot_cord,
    strip_behind_cord,
    heater_on_cord,
    felt_hot,
}

//! Rules on what plugs in where.

crate::rules::area! {
    plug_does_not_fit,
    adapter_raises_rating,
    receptacle_not_fed,
    load_without_place,
    look_alike_shapes,
    wrong_voltage,
    where_240_volts,
}

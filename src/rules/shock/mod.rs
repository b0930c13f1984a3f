//! Rules on electric shock.

crate::rules::area! {
    no_ground_fault_protection,
    floating_neutral_tester,
    feeds_building,
    two_bonds,
    bond_in_box,
    unlisted_box,
    leakage_trips_protection,
    protection_in_series,
    second_fault,
    plug_meets_transfer,
    lost_neutral,
    unprotected_feed,
    blind_protection,
}

mod exposed;

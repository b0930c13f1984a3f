//! Rules on electric shock.

mod blind_protection;
mod bond_in_box;
mod exposed;
mod feeds_building;
mod floating_neutral_tester;
mod gfci_past_gfci;
mod leakage_trips_protection;
mod lost_neutral;
mod no_gfci;
mod plug_meets_transfer;
mod second_fault;
mod two_bonds;
mod unlisted_box;
mod unprotected_feed;

use super::Rule;

/// The rules of this area, in order of their codes.
pub(super) const RULES: &[Rule] = &[
    no_gfci::RULE,
    floating_neutral_tester::RULE,
    feeds_building::RULE,
    two_bonds::RULE,
    bond_in_box::RULE,
    unlisted_box::RULE,
    leakage_trips_protection::RULE,
    gfci_past_gfci::RULE,
    second_fault::RULE,
    plug_meets_transfer::RULE,
    lost_neutral::RULE,
    unprotected_feed::RULE,
    blind_protection::RULE,
];

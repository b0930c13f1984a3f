//! How far exhaust must stay from people.

use crate::quantity::Length;

/// The least distance that agencies publish: 20 ft. US CPSC, generator advice, 2020-07-24 (from a secondary copy).
pub const LEAST: Length = Length::from_millimetres(6_096);
/// The larger published distance: 25 ft. NIST, portable generators and carbon monoxide, 2021 (confirmed).
pub const AMPLE: Length = Length::from_millimetres(7_620);
/// The clearance on every side of a running generator: 4 ft, the larger of the published 3 to 4 ft. FEMA, 2011
/// (confirmed).
pub const CLEAR: Length = Length::from_millimetres(1_219);
/// The length of an adult's step where people pace off a distance: 2 ft. Common practice, no source. Most step farther,
/// so a distance paced off is longer than it counts.
pub const STEP: Length = Length::from_millimetres(609);

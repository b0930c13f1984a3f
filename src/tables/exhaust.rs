//! How far exhaust stays from people.

use crate::quantity::Length;

/// The least distance agencies publish: 20 ft. US CPSC, generator advice, 2020-07-24 (from a
/// secondary copy).
pub const LEAST: Length = Length::from_millimetres(6_096);
/// The larger published distance: 25 ft. NIST, portable generators and carbon monoxide, 2021 (confirmed).
pub const AMPLE: Length = Length::from_millimetres(7_620);
/// Clear on every side of a running set: 4 ft, the larger of the published 3 to 4 ft. FEMA, 2011
/// (confirmed).
pub const CLEAR: Length = Length::from_millimetres(1_219);
/// What one step of a grown-up counts for, where people pace a length out: 2 ft. Common practice, no
/// source; most step farther, so that what is paced out is rather farther than it counts.
pub const STEP: Length = Length::from_millimetres(609);

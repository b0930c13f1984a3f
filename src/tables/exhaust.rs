//! How far exhaust stays from people.

use crate::quantity::Length;

/// The least distance agencies publish: 20 ft. US CPSC, generator advice, 2020-07-24 (from a
/// secondary copy).
pub const LEAST: Length = Length::from_millimetres(6_096);
/// The larger published distance: 25 ft. NIST generator study, 2009 (from a secondary copy).
pub const AMPLE: Length = Length::from_millimetres(7_620);

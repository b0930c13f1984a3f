//! How much voltage may be lost on the way: NFPA 70 (NEC) 210.19(A), informational note 4, 2023, 3 %
//! on a branch and 5 % in all (from a secondary copy). Advice, not law.

use crate::quantity::Percent;

/// Worth a note above this.
pub const NOTED: Percent = Percent::from_millipercent(3_000);
/// Too much above this.
pub const MUCH: Percent = Percent::from_millipercent(5_000);

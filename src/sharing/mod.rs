//! Where each load plugs in, what may run together, in what order to switch on, and whose turn it is.
//!
//! [`share`] answers for a plan. Below it is a core that knows neither plans nor trees, only loads, places and rows
//! ([`model`]), and a solver for each question:
//!
//! | question | solver | how |
//! | --- | --- | --- |
//! | what is served, and where | [`place`](mod@place) | small changes, then branch and bound, first which, then where |
//! | what may run at once, what may not | [`together`] | all largest sets, all smallest conflicts |
//! | in what order to switch on | [`start`] | from the last to the first, no search |
//! | whose turn it is | [`turns`] | the fewest groups, trying one more each time |
//!
//! All are exact, use whole numbers, and give the same answer on every machine. Work is counted ([`budget`]), never
//! timed, and an answer that the budget cut short says so. The best placing is rarely unique, so compare placings by
//! their worth, not their places.

pub mod budget;
mod from_plan;
pub mod model;
pub mod place;
pub mod set;
pub mod start;
pub mod together;
mod told;
pub mod turns;

pub use from_plan::share;
pub(crate) use from_plan::{AT_SET, length_of, one_by_one, places};
pub use told::{Effect, Placed, Repair, Sharing, Start, StartStep, StartVerdict, Tally, Unplaced};

//! Who plugs in where, what may run together, in what order to switch on, and whose turn it is.

pub mod budget;
mod from_plan;
pub mod model;
pub mod place;
pub mod repair;
pub mod set;
pub mod start;
pub mod together;
pub mod turns;

pub use from_plan::share;

//! Published figures with their sources, and typed lookups.
//!
//! A figure is stored in a data file in this folder, with the document, clause, edition and mark of its source. The
//! modules here read the files and state the units.

pub mod appliances;
pub mod conductor;
pub mod cooling;
pub mod copper;
mod data;
pub mod day;
pub mod derating;
pub mod emergency;
pub mod exhaust;
pub mod gfci;
pub mod kinds;
pub mod motors;
pub mod night;
pub mod occasions;
pub mod refuel;
pub mod shape;
pub mod sound;
pub mod source;
pub mod volts;

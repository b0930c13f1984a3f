//! Published figures, each beside its source, and typed look-ups.
//!
//! A figure lives in a data file of this folder with the document, clause, edition and mark of
//! its source; the modules here read it and say what its unit is.

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

//! Plans a portable generator for a camp: what each receptacle can carry, what may run
//! together, what is dangerous, and the labels and the card that say so.
//!
//! The core runs one way and is pure: [`plan`] → [`supply`] → [`report`]. It prints nothing and
//! reads no file, clock, environment or locale. [`words`], [`mod@print`] and [`interview`] are the
//! shell round it. DEVELOPERS.md has the map.

pub mod interview;
pub mod mend;
pub mod plan;
pub mod print;
pub mod quantity;
pub mod report;
pub mod rules;
pub mod sharing;
pub mod supply;
pub mod tables;
mod value;
pub mod verdict;
pub mod words;

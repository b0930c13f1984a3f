//! What the user told us: the plan, its file format, and how it is kept on disk.
//!
//! [`model`] is the plan itself. A field a beginner may not know is an [`Answer`], so that
//! "not said", "I don't know" and a value stay three different things all the way to the rules.
//! What may be said of each part stands in `table`, a row for each field: who reads, writes, asks or
//! draws a plan goes by it. [`bounds`] says what each figure may be, for the file and for the
//! interview alike.
//! [`read()`] takes a plan file apart and reports everything that is wrong with it at once;
//! [`write()`] is its reverse.

#[cfg(test)]
pub(crate) mod arbitrary;
pub mod bounds;
pub mod demo;
mod kinds;
pub mod model;
mod read;
pub(crate) mod row;
pub mod store;
mod table;
mod write;

pub use model::*;
pub use read::{MOST_LOADS, MOST_PARTS, Problem, Problems, Refusal, lines, problem, read};
pub use write::write;

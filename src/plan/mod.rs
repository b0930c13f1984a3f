//! What the user told us: the plan, its file format, and how it is kept on disk.
//!
//! [`model`] is the plan itself. A field that a beginner may not know is an [`Answer`], so that "not said", "I don't
//! know" and a value stay distinct all the way to the rules. `table` has a row for each field of each part, which
//! serves reading, writing, asking and test generation. [`bounds`] states the allowed values of each figure, for the
//! file and the interview alike. [`read()`] parses a plan file and reports everything wrong with it at once.
//! [`write()`] is its reverse.

#[cfg(test)]
pub(crate) mod arbitrary;
pub mod bounds;
pub mod demo;
mod kinds;
mod letters;
pub mod model;
mod read;
pub(crate) mod row;
pub mod store;
mod table;
mod write;

pub use letters::can_print;
pub use model::*;
pub use read::{MOST_LOADS, MOST_PARTS, Problem, Problems, Refusal, lines, problem, read};
pub use write::write;

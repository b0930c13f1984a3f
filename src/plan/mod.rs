//! What the user told us: the plan, its file format, and how it is kept on disk.
//!
//! [`model`] is the plan itself. A field a beginner may not know is an [`Answer`], so that
//! "not said", "I don't know" and a value stay three different things all the way to the rules.

pub mod model;

pub use model::*;

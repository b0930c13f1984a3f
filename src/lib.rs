//! Plans a portable generator for a camp: what each receptacle can carry, what can run together, what is dangerous,
//! and the labels and card that say so.
//!
//! The core is pure and runs one way: [`plan`] → [`supply`] → [`report`], driven by [`judge`]. It prints nothing and
//! reads no file, clock, environment or locale. [`words`], [`mod@print`] and [`interview`] are the shell around it.
//! DEVELOPERS.md has the code map.
//!
//! Read a plan, judge it, and print in words what is wrong with it:
//!
//! ```
//! use tallywatt::report::Signal;
//! use tallywatt::words::Words;
//! use tallywatt::{judge, plan};
//!
//! let text = r#"
//! format = 1
//!
//! [generator]
//! rated = "2800 W"
//! voltage = "120 V"
//!
//! [[generator.outlet]]
//! id = "front"
//! shape = "5-20R"
//! breaker = "20 A"
//!
//! [[load]]
//! id = "kettle"
//! kind = "cooker"
//! on = "front"
//! running = "1500 W"
//! "#;
//! let plan = plan::read(text)?;
//! let report = judge::build(&plan);
//! let words = Words::english();
//! for trouble in &report.figures.troubles {
//!     if let Some(told) = words.trouble(&report, trouble) {
//!         println!("{}: {}. {} {}", told.signal, told.title, told.why, told.fix);
//!     }
//! }
//! // Nobody has said how far the generator stands from people, or whether the receptacle has a GFCI.
//! assert_eq!(report.worst(), Some(Signal::Danger));
//! # Ok::<(), plan::Problems>(())
//! ```

pub mod interview;
pub mod judge;
pub mod learned;
pub mod loads;
pub mod mend;
pub mod nearest;
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

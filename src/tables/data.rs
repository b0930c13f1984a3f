//! Reads the data files in this folder.
//!
//! They are compiled in, so an error in one is a bug here. Reading panics, and a test reads every file.

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::Deserialize;
use serde::de::DeserializeOwned;

use super::source::{Mark, Source};

/// A source as written in a data file.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Cited {
    #[serde(default)]
    document: String,
    #[serde(default)]
    clause: String,
    #[serde(default)]
    note: String,
    #[serde(default)]
    edition: String,
    mark: Mark,
}

impl From<Cited> for Source {
    // Leaks once for each set of rows. `Source` holds static text so that rules can define theirs as constants.
    fn from(cited: Cited) -> Self {
        Self::new(cited.document.leak(), cited.clause.leak(), cited.edition.leak(), cited.mark).noted(cited.note.leak())
    }
}

/// Rows that share a source.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Rows<T> {
    pub(super) source: Cited,
    pub(super) rows: Vec<T>,
}

/// Parses a data file.
pub(super) fn read<T: DeserializeOwned>(name: &str, text: &str) -> T {
    toml::from_str(text).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// Parses a printed decimal as an exact count of `10^-scale`. Panics if it is not a whole number of those.
pub(super) fn count(text: &str, scale: u32) -> i64 {
    text.parse::<Decimal>()
        .ok()
        .map(|number| number * Decimal::from(10_i64.pow(scale)))
        .filter(|number| number.fract().is_zero())
        .and_then(|number| number.to_i64())
        .unwrap_or_else(|| panic!("{text} is not a whole number of 10^-{scale}"))
}

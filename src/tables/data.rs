//! Reading the data files of this folder.
//!
//! They are part of the program, so a mistake in one is a mistake of ours: reading stops with a
//! panic, and a test reads every file.

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::Deserialize;
use serde::de::DeserializeOwned;

use super::source::{Mark, Source};

/// A source as a data file writes it.
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
    // Once for each row set in the life of the program; `Source` holds static text so that rules
    // can list theirs as constants.
    fn from(cited: Cited) -> Self {
        Self::new(cited.document.leak(), cited.clause.leak(), cited.edition.leak(), cited.mark).noted(cited.note.leak())
    }
}

/// A set of rows with the one source of all of them.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Rows<T> {
    pub(super) source: Cited,
    pub(super) rows: Vec<T>,
}

/// A data file as a type.
pub(super) fn read<T: DeserializeOwned>(name: &str, text: &str) -> T {
    toml::from_str(text).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// A printed decimal as a count of `10^-scale`, exactly.
pub(super) fn count(text: &str, scale: u32) -> i64 {
    text.parse::<Decimal>()
        .ok()
        .map(|number| number * Decimal::from(10_i64.pow(scale)))
        .filter(|number| number.fract().is_zero())
        .and_then(|number| number.to_i64())
        .unwrap_or_else(|| panic!("{text} is not a whole number of 10^-{scale}"))
}

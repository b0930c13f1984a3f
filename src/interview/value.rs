//! Values of messages, until somebody puts them into words.

use fluent_bundle::FluentValue;

use crate::quantity::{Amount, Unit};
use crate::words::{Show, Words};

/// A value of a message. What a user typed is never taken for the key of another message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Value {
    /// As it stands: numbers, ids, what was typed.
    Text(String),
    /// The text of this message.
    Word(String),
    /// The texts of these messages, as a list.
    Words(Vec<String>),
    /// Numbers with their units as plans keep them, as the reader would type them.
    Numbers(String),
    /// An amount, as the reader writes it.
    Amount(Amount),
    /// The units in which the reader may give it.
    Units(Unit),
}

impl Value {
    /// The text of a message.
    pub fn word(key: impl Into<String>) -> Self {
        Self::Word(key.into())
    }

    fn text(&self, words: &Words) -> String {
        match self {
            Self::Text(text) => text.clone(),
            Self::Word(key) => words.text(key),
            Self::Words(keys) => {
                // In quotation marks: “Electric cooler, compressor” is one of them.
                let quoted =
                    |key: &String| words.with("id-quoted", [("id", words.text(key).into())]);
                let all: Vec<String> = keys.iter().map(quoted).collect();
                all.join(&words.text("list-comma"))
            }
            Self::Numbers(text) => words.typed_numbers(text),
            Self::Units(unit) => words.units_for(*unit),
            // A distance as it is: 19.99 ft is not 20.
            Self::Amount(amount) if amount.unit == Unit::Metre => {
                words.amount(*amount, Show::AtMost)
            }
            Self::Amount(amount) => words.amount(*amount, Show::Exact),
        }
    }
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<Unit> for Value {
    fn from(unit: Unit) -> Self {
        Self::Units(unit)
    }
}

impl From<Amount> for Value {
    fn from(amount: Amount) -> Self {
        Self::Amount(amount)
    }
}

/// Values by their names, in words.
pub(super) fn spoken<'v>(
    words: &Words,
    values: &'v [(&'static str, Value)],
) -> impl Iterator<Item = (&'v str, FluentValue<'v>)> {
    values
        .iter()
        .map(|(name, value)| (*name, FluentValue::from(value.text(words))))
}

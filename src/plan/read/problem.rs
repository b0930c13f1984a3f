//! The reasons to refuse a plan file or an answer in the interview, each a message key with values. The text is
//! in the messages `plan-KEY` and `reject-KEY`; [`crate::words::problem`] joins the two.

use std::ops::Range;

use crate::plan::hides;
use crate::quantity::{Amount, Unit};

/// Everything that is wrong with a plan file, in the order of the file. Never empty.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problems(pub Vec<Problem>);

/// Lists keys and byte ranges, for logs and tests. [`crate::words::problem::render`] is for people.
impl std::fmt::Display for Problems {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        for (at, problem) in self.0.iter().enumerate() {
            let comma = if at == 0 { "" } else { ", " };
            let (Range { start, end }, key) = (&problem.span, problem.why.key);
            write!(f, "{comma}{key} {start}..{end}")?;
        }
        Ok(())
    }
}

impl std::error::Error for Problems {}

/// One thing that is wrong, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// The byte range in the text. Empty and at the start if the problem is about the whole file.
    pub span: Range<usize>,
    /// The reason.
    pub why: Refusal,
    /// The byte range of the first item, if this is the second of two that cannot both be there.
    pub first: Option<Range<usize>>,
}

/// A reason why something is refused.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// The message key, without the prefix for a file or for an answer.
    pub key: &'static str,
    /// The values that the message needs.
    pub values: Vec<(&'static str, Value)>,
    /// Whether one of the values is a guess at what was meant.
    pub near: bool,
}

impl Refusal {
    /// Creates a reason without values.
    #[must_use]
    pub const fn new(key: &'static str) -> Self {
        Self { key, values: Vec::new(), near: false }
    }

    /// Adds a value to the reason.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<Value>) -> Self {
        self.values.push((name, value.into()));
        self
    }

    /// Adds the beginning of what was found, safe to show.
    pub(crate) fn found(self, text: &str) -> Self {
        self.with("found", shorten(text.trim()))
    }

    /// Adds a guess, if there is one.
    pub(crate) fn near(mut self, name: &'static str, guess: Option<impl Into<Value>>) -> Self {
        self.near = guess.is_some();
        self.values.extend(guess.map(|guess| (name, guess.into())));
        self
    }
}

/// A value of a message. What a user typed is never taken for a message key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Value {
    /// Shown as it is: numbers, ids, what was typed.
    Text(String),
    /// The text of the message with this key.
    Word(String),
    /// The texts of the messages with these keys, as a list.
    Words(Vec<String>),
    /// All of these, shown as they are.
    All(Vec<String>),
    /// Any one of these, shown as they are.
    Any(Vec<String>),
    /// Numbers with their units as plans store them, shown as the reader's texts have them.
    Numbers(String),
    /// An amount, shown as the reader writes it.
    Amount(Amount),
    /// The units in which the reader may give the value.
    Units(Unit),
}

impl Value {
    /// Creates a value that shows the message with this key.
    pub fn word(key: impl Into<String>) -> Self {
        Self::Word(key.into())
    }

    /// Creates a value that shows any one of the given texts.
    pub(crate) fn any(all: impl IntoIterator<Item: Into<String>>) -> Self {
        Self::Any(all.into_iter().map(Into::into).collect())
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

/// Returns the beginning of what was found, short and clean enough for a message.
pub(crate) fn shorten(text: &str) -> String {
    const LONGEST: usize = 40;
    let clean = |c: char| if hides(c) { ' ' } else { c };
    let shown: String = text.chars().take(LONGEST + 1).map(clean).collect();
    match shown.char_indices().nth(LONGEST) {
        Some(_) => format!("{}…", shown.chars().take(LONGEST - 1).collect::<String>()),
        None => shown.trim().to_owned(),
    }
}

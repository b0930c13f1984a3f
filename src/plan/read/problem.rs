//! Why something is not taken, in a plan file or as an answer in the interview: a key and values. The
//! words are messages `plan-KEY` and `reject-KEY`; [`crate::words::problem`] joins the two.

use std::ops::Range;

use crate::plan::hides;
use crate::quantity::{Amount, Unit};

/// Everything that is wrong with a plan file, in the order of the file. Never empty.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problems(pub Vec<Problem>);

/// For logs and tests: codes and places. People get [`crate::words::problem::render`].
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
    /// The bytes of the text it is about; empty at the start for the file as a whole.
    pub span: Range<usize>,
    /// What it is.
    pub why: Refusal,
    /// Where the other one of two stands.
    pub first: Option<Range<usize>>,
}

/// Why something is not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// The message that says it, without what comes before it for a file or for an answer.
    pub key: &'static str,
    /// The values that its words need.
    pub values: Vec<(&'static str, Value)>,
    /// Whether one of them is a guess at what was meant.
    pub near: bool,
}

impl Refusal {
    /// A reason without values.
    #[must_use]
    pub const fn new(key: &'static str) -> Self {
        Self { key, values: Vec::new(), near: false }
    }

    /// The reason with one value more.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<Value>) -> Self {
        self.values.push((name, value.into()));
        self
    }

    /// The reason with the beginning of what was found, fit to be shown.
    pub(crate) fn found(self, text: &str) -> Self {
        self.with("found", shorten(text.trim()))
    }

    /// The reason with a guess, if there is one.
    pub(crate) fn near(mut self, name: &'static str, guess: Option<impl Into<Value>>) -> Self {
        self.near = guess.is_some();
        self.values.extend(guess.map(|guess| (name, guess.into())));
        self
    }
}

/// A value of a message. What a user typed is never taken for the key of another message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Value {
    /// As it stands: numbers, ids, what was typed.
    Text(String),
    /// The text of this message.
    Word(String),
    /// The texts of these messages, as a list.
    Words(Vec<String>),
    /// All of these, as they stand.
    All(Vec<String>),
    /// Any one of these, as they stand.
    Any(Vec<String>),
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

    /// Any one of these.
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

/// What was found, short enough for a message.
pub(crate) fn shorten(text: &str) -> String {
    const LONGEST: usize = 40;
    let clean = |c: char| if hides(c) { ' ' } else { c };
    let shown: String = text.chars().take(LONGEST + 1).map(clean).collect();
    match shown.char_indices().nth(LONGEST) {
        Some(_) => format!("{}…", shown.chars().take(LONGEST - 1).collect::<String>()),
        None => shown.trim().to_owned(),
    }
}

//! Values as plain data, the unknowns that one of them was taken for, and findings, which are made of values:
//! what every stage from the supply to the report may say, and none of them words.

use std::collections::BTreeMap;

use serde::{Serialize, Serializer};

use crate::plan::{Id, Span};
use crate::quantity::Amount;
use crate::tables::source::Source;

/// A value in a finding: an amount, or a word that is data (an id, a shape, a gauge).
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(untagged)]
pub enum Value {
    /// An amount.
    Amount(Amount),
    /// How many, so that a sentence can choose its form by it. In JSON an amount as well.
    #[serde(serialize_with = "count")]
    Count(usize),
    /// A name that is the same in every language.
    Name(String),
    /// A minute of the day, which each reader's clock shows in its own way. In JSON as in a plan file.
    #[serde(serialize_with = "time")]
    Time(u16),
    /// Parts of the day, likewise.
    #[serde(serialize_with = "hours")]
    Hours(Vec<Span>),
    /// A word from the language files, by its key.
    Word {
        /// Its message key.
        word: &'static str,
    },
    /// Parts or loads, told as a list.
    Parts(Vec<Id>),
    /// Shapes of plugs or of sockets, one for each, by their names.
    Shapes(Vec<String>),
}

// serde hands every field to its serializer by reference.
#[allow(clippy::trivially_copy_pass_by_ref)]
fn count<S: Serializer>(count: &usize, serializer: S) -> Result<S::Ok, S::Error> {
    Amount::count(*count).serialize(serializer)
}

// serde hands every field to its serializer by reference.
#[allow(clippy::trivially_copy_pass_by_ref)]
fn time<S: Serializer>(minute: &u16, serializer: S) -> Result<S::Ok, S::Error> {
    Span::clock(*minute).serialize(serializer)
}

fn hours<S: Serializer>(hours: &[Span], serializer: S) -> Result<S::Ok, S::Error> {
    let hours: Vec<String> = hours.iter().map(Span::to_string).collect();
    hours.join(", ").serialize(serializer)
}

impl<T: Into<Amount>> From<T> for Value {
    fn from(amount: T) -> Self {
        Self::Amount(amount.into())
    }
}

impl Value {
    /// What a sentence chooses its form by where there are two.
    pub(crate) fn yes_no(yes: bool) -> Self {
        Self::Name(if yes { "yes" } else { "no" }.to_owned())
    }
}

impl From<&Id> for Value {
    fn from(id: &Id) -> Self {
        Self::Name(id.to_string())
    }
}

/// An unknown that was taken for the unsafe case.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Assumption {
    /// The field, as in `generator.outlet.front.breaker`.
    pub field: String,
    /// The value used in its place.
    pub value: Value,
    /// The message key of the reason: `assume-KEY`.
    pub why: &'static str,
}

impl Assumption {
    /// Whether it is true of all of its kind, and was no unknown: nobody has to look.
    pub(crate) fn of_all_campers(&self) -> bool {
        self.why.starts_with("camper-") && self.why != "camper-main"
    }

    /// Whether it is of the leg that feeds this outlet or end of a cord.
    pub(crate) fn is_leg_of(&self, id: &Id) -> bool {
        let of = self.field.strip_suffix(".leg");
        let rest = of.and_then(|of| of.strip_suffix(id.as_str()));
        self.why == "leg" && rest.is_some_and(|rest| rest.ends_with('.'))
    }
}

/// How bad a finding is, by the published signal words. Worst first, so that sorting puts the
/// worst on top.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Signal {
    /// If not avoided, will result in death or serious injury.
    Danger,
    /// Could result in death or serious injury.
    Warning,
    /// Could result in minor or moderate injury.
    Caution,
    /// Not about injury.
    Notice,
}

impl Signal {
    /// Its name in messages and templates, as in the JSON.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Danger => "danger",
            Self::Warning => "warning",
            Self::Caution => "caution",
            Self::Notice => "notice",
        }
    }
}

/// Named values, in the order of their names.
pub type Values = BTreeMap<&'static str, Value>;

/// What to do about a finding. The words are the message `CODE-fix-KEY` of the language files.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Fix {
    /// Which remedy.
    pub key: &'static str,
    /// Its numbers.
    pub values: Values,
}

/// One thing a rule found.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Finding {
    /// The rule's code, as `AIR001`.
    pub code: &'static str,
    /// The rule's name: the hazard.
    pub name: &'static str,
    /// The rule's area.
    pub area: &'static str,
    /// How bad.
    pub signal: Signal,
    /// The parts and loads it is about, the one to look at first.
    pub about: Vec<Id>,
    /// The numbers that show why.
    pub values: Values,
    /// What to do.
    pub fix: Fix,
    /// By what authority.
    pub sources: Vec<Source>,
    /// What was only assumed in it: with a better answer to any of these it goes away, or loses a part or its
    /// gravity. Not of notices, and of cautions only of a rule that may find worse; only where that was asked for
    /// ([`crate::judge::build`]).
    pub rests_on: Vec<Assumption>,
}

impl Finding {
    /// Whether it is only a guess. How wet the ground is makes a finding graver, and is no part of it.
    pub(crate) fn guessed(&self) -> bool {
        self.rests_on.iter().any(|it| it.field != "site.ground")
    }
}

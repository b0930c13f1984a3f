//! Plain data that every stage from the supply to the report produces: values, assumptions, and the findings made of
//! them. None of it is prose.

use std::collections::BTreeMap;

use serde::{Serialize, Serializer};

use crate::plan::{Id, Span};
use crate::quantity::Amount;
use crate::tables::source::Source;

/// A value in a finding: an amount, or a word that is data, such as an id, a shape or a gauge.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(untagged)]
pub enum Value {
    /// An amount.
    Amount(Amount),
    /// A count, so that a sentence can choose its plural form. An amount in JSON.
    #[serde(serialize_with = "count")]
    Count(usize),
    /// A name that is the same in every language.
    Name(String),
    /// A minute of the day, shown in the reader's own clock format. In JSON, as in a plan file.
    #[serde(serialize_with = "time")]
    Time(u16),
    /// Spans of the day, likewise.
    #[serde(serialize_with = "hours")]
    Hours(Vec<Span>),
    /// A word from the language files.
    Word {
        /// Its message key.
        word: &'static str,
    },
    /// Parts or loads, shown as a list.
    Parts(Vec<Id>),
    /// Names of plug or receptacle shapes, one for each plug or receptacle.
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
    /// Returns the selector for a sentence with two forms.
    pub(crate) fn yes_no(yes: bool) -> Self {
        Self::Name(if yes { "yes" } else { "no" }.to_owned())
    }
}

impl From<&Id> for Value {
    fn from(id: &Id) -> Self {
        Self::Name(id.to_string())
    }
}

/// The unsafe value used in place of an unknown answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Assumption {
    /// The path of the field, such as `generator.outlet.front.breaker`.
    pub field: String,
    /// The value used.
    pub value: Value,
    /// The message key of the reason: `assume-KEY`.
    pub why: &'static str,
}

impl Assumption {
    /// Whether this holds for every camper and was never in question, so there is nothing to look at.
    pub(crate) fn of_all_campers(&self) -> bool {
        self.why.starts_with("camper-") && self.why != "camper-main"
    }

    /// Whether this is about the leg that feeds the given outlet or cord end.
    pub(crate) fn is_leg_of(&self, id: &Id) -> bool {
        let of = self.field.strip_suffix(".leg");
        let rest = of.and_then(|of| of.strip_suffix(id.as_str()));
        self.why == "leg" && rest.is_some_and(|rest| rest.ends_with('.'))
    }
}

/// The severity of a finding, by the published signal words. Declared worst first, so that sorting puts the worst on
/// top.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Signal {
    /// Will result in death or serious injury if not avoided.
    Danger,
    /// Could result in death or serious injury.
    Warning,
    /// Could result in minor or moderate injury.
    Caution,
    /// Not about injury.
    Notice,
}

impl Signal {
    /// Returns the name used in messages, templates and JSON.
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

/// Named values, ordered by name.
pub type Values = BTreeMap<&'static str, Value>;

/// What to do about a finding. The words are the message `CODE-fix-KEY` in the language files.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Fix {
    /// The key of the remedy.
    pub key: &'static str,
    /// The numbers its message needs.
    pub values: Values,
}

/// One thing a rule found.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Finding {
    /// The rule's code, such as `AIR001`.
    pub code: &'static str,
    /// The rule's name, which is the hazard.
    pub name: &'static str,
    /// The rule's area.
    pub area: &'static str,
    /// How severe it is.
    pub signal: Signal,
    /// The parts and loads it is about. The one to look at first comes first.
    pub about: Vec<Id>,
    /// The numbers that show why.
    pub values: Values,
    /// What to do.
    pub fix: Fix,
    /// The sources it rests on.
    pub sources: Vec<Source>,
    /// The assumptions it rests on. A better answer to any of them makes the finding go away, lose a part, or become
    /// less severe. Always empty for notices, and for cautions whose rule finds nothing worse. Filled only on request
    /// (see [`crate::judge::build`]).
    pub rests_on: Vec<Assumption>,
}

impl Finding {
    /// Whether the finding itself is a guess. How wet the ground is does not count: it only makes a finding more
    /// severe.
    pub(crate) fn guessed(&self) -> bool {
        self.rests_on.iter().any(|it| it.field != "site.ground")
    }
}

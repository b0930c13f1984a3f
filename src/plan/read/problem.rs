//! What can be wrong with a plan file, as codes and values. The words are in
//! `i18n/LANGUAGE/plan.ftl`; [`crate::words::problem`] joins the two.

use std::ops::Range;

use crate::plan::Id;
use crate::quantity::Amount;

/// Everything that is wrong with a plan file, in the order of the file. Never empty.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problems(pub Vec<Problem>);

/// For logs and tests: codes and places. People get [`crate::words::problem::render`].
impl std::fmt::Display for Problems {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        for (at, problem) in self.0.iter().enumerate() {
            let comma = if at == 0 { "" } else { ", " };
            let (Range { start, end }, key) = (&problem.span, problem.kind.key());
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
    pub kind: ProblemKind,
}

/// What is wrong, with the values that its words need.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ProblemKind {
    /// It is no TOML.
    Syntax(Syntax),
    /// There is nothing in the file.
    Empty,
    /// No `format`, so that nobody can tell what the rest means.
    NoFormat,
    /// A format version from a later program.
    NewerFormat {
        /// The version in the file.
        found: String,
    },
    /// A format version that never was.
    NoSuchFormat {
        /// The version in the file.
        found: String,
    },
    /// A key that must be there is not.
    MissingKey {
        /// The key.
        key: &'static str,
        /// How a line with it looks.
        example: &'static str,
    },
    /// A table that must be there is not.
    MissingTable {
        /// Its name.
        table: &'static str,
    },
    /// A key that has no meaning here.
    UnknownKey {
        /// The key as written.
        found: String,
        /// The key that was likely meant.
        nearest: Option<&'static str>,
        /// The keys that have a meaning here.
        allowed: Vec<&'static str>,
        /// Whether it is a heading in brackets rather than a line.
        heading: bool,
    },
    /// A value of the wrong kind.
    WrongType {
        /// Its key.
        key: &'static str,
        /// What it is.
        found: Type,
        /// What it should be.
        wanted: Type,
    },
    /// `"unknown"` where the plan cannot do without.
    UnknownNotAllowed {
        /// Its key.
        key: &'static str,
        /// Whether it may be left out.
        optional: bool,
    },
    /// An empty text.
    EmptyText {
        /// Its key.
        key: &'static str,
    },
    /// A text too long to print, or with characters that cannot be printed.
    BadText {
        /// Its key.
        key: &'static str,
        /// How many characters are taken at most.
        most: usize,
    },
    /// A number without a unit.
    NoUnit {
        /// Its key.
        key: &'static str,
        /// The number as written.
        found: String,
        /// The units it may have.
        allowed: Vec<&'static str>,
    },
    /// A unit that measures something else, or nothing.
    UnknownUnit {
        /// Its key.
        key: &'static str,
        /// The unit as written.
        found: String,
        /// The units it may have.
        allowed: Vec<&'static str>,
    },
    /// No number where a quantity is due.
    NoNumber {
        /// Its key.
        key: &'static str,
        /// The text as written.
        found: String,
        /// A quantity that would do.
        example: String,
    },
    /// A number with a mark that some write before decimals and others between thousands.
    TwoReadings {
        /// Its key.
        key: &'static str,
        /// As written.
        found: String,
        /// With the mark before decimals, as a plan would have it.
        decimals: String,
        /// With the mark between thousands, likewise.
        thousands: String,
    },
    /// A quantity that cannot be right.
    OutOfRange {
        /// Its key.
        key: &'static str,
        /// As written.
        found: String,
        /// The least that is taken.
        least: Amount,
        /// The most that is taken.
        most: Amount,
    },
    /// A size that no wire has.
    WireSize {
        /// As written.
        found: String,
    },
    /// A word that is none of the choices.
    NotAChoice {
        /// Its key.
        key: &'static str,
        /// As written.
        found: String,
        /// The choice that was likely meant.
        nearest: Option<&'static str>,
        /// The choices.
        allowed: Vec<&'static str>,
        /// Whether `"unknown"` would do as well.
        or_unknown: bool,
    },
    /// No tag of a language.
    NotALanguage {
        /// As written.
        found: String,
    },
    /// A plug or receptacle shape that is not in the tables.
    UnknownShape {
        /// Its key.
        key: &'static str,
        /// As written.
        found: String,
        /// The name that was likely meant.
        nearest: Option<String>,
        /// All names for this half.
        allowed: Vec<String>,
    },
    /// The name of a plug where a receptacle is due, or the other way round.
    WrongHalf {
        /// Its key.
        key: &'static str,
        /// As written.
        found: String,
        /// The name of the other half.
        meant: String,
        /// Whether a plug is due here.
        plug: bool,
    },
    /// Text that cannot be an id.
    BadId {
        /// As written.
        found: String,
        /// An id made from it, if one can be.
        nearest: Option<String>,
    },
    /// An id that is taken.
    DuplicateId {
        /// The id.
        id: String,
        /// The line it was first given on, counting from one.
        line: usize,
        /// Where it was first given.
        first: Range<usize>,
    },
    /// The id that is the set's own.
    SetsId {
        /// The id.
        id: String,
    },
    /// The name of something that is not in the plan.
    UnknownReference {
        /// Its key.
        key: &'static str,
        /// As written.
        found: String,
        /// The id that was likely meant.
        nearest: Option<String>,
    },
    /// The name of a part that has no receptacle of that name.
    NotAReceptacle {
        /// Its key.
        key: &'static str,
        /// As written.
        found: String,
        /// The receptacles that the part has.
        allowed: Vec<String>,
    },
    /// Parts that are plugged in in a ring.
    Loop {
        /// The parts, each plugged into the next and the last into the first.
        through: Vec<Id>,
    },
    /// An outlet that shares the breaker of an outlet it cannot share with: itself, one of
    /// another unit, or one that shares in turn.
    BadShare {
        /// As written.
        found: String,
        /// The outlets it may share with.
        allowed: Vec<String>,
    },
    /// An outlet that shares a breaker and gives another marking for it.
    ShareDiffers {
        /// The outlet it shares with.
        with: String,
    },
    /// Two figures that cannot both be right.
    LessThan {
        /// The key of the figure that should be the larger.
        key: &'static str,
        /// The figure.
        found: Amount,
        /// The key of the other.
        other: &'static str,
        /// The other figure.
        least: Amount,
    },
    /// A load that gives what it draws more than once.
    TwoDraws {
        /// The key that counts.
        first: &'static str,
        /// The one too many.
        second: &'static str,
    },
    /// A place for a bonding plug of which the plan says that it is not in.
    PlaceForNoPlug {
        /// The key of the place.
        place: &'static str,
        /// The key that says that there is none.
        plug: &'static str,
    },
    /// No part of the day.
    BadHours {
        /// Its key.
        key: &'static str,
        /// As written.
        found: String,
    },
    /// A letter that no motor has.
    MotorCode {
        /// As written.
        found: String,
    },
    /// A generator or box without an outlet, or a cord without a receptacle.
    NoOutlets {
        /// `generator`, `box` or `cord`.
        part: &'static str,
    },
    /// More than the program is made for.
    TooMany {
        /// `parts` or `loads`.
        what: &'static str,
        /// How many there are.
        found: usize,
        /// How many are taken.
        most: usize,
    },
}

/// What is wrong with the TOML itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Syntax {
    /// A key given twice.
    DuplicateKey,
    /// A text without quotes.
    Unquoted,
    /// A quote that is not closed, or a text with characters that it cannot have.
    BadString,
    /// A number that is none.
    BadNumber,
    /// A key without an equals sign.
    NoEquals,
    /// A key without a value.
    NoValue,
    /// A list that is not closed, or lacks a comma.
    BadList,
    /// An inline table that is not closed, or lacks a comma.
    BadInline,
    /// A table's heading without its closing bracket.
    BadHeading,
    /// A key with characters that it cannot have.
    BadKey,
    /// Something after the end of a value.
    Extra,
    /// Lists in lists in lists.
    TooDeep,
    /// A character that no TOML has.
    BadCharacter,
    /// Something else.
    Other,
}

/// The kinds of value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Type {
    /// A text in quotes.
    Text,
    /// A text in quotes: a number and a unit.
    Quantity,
    /// A whole number.
    Whole,
    /// A number.
    Number,
    /// `true` or `false`.
    YesNo,
    /// `true`, `false` or `"unknown"`.
    YesNoUnknown,
    /// A date or a time of day without quotes.
    Date,
    /// A list in square brackets.
    List,
    /// A table.
    Table,
    /// A list of tables, each under a heading in two square brackets.
    Tables,
}

impl Type {
    /// Its stable name, part of its message key.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::Text => "text",
            Self::Quantity => "quantity",
            Self::Whole => "whole",
            Self::Number => "number",
            Self::YesNo => "yes-no",
            Self::YesNoUnknown => "yes-no-unknown",
            Self::Date => "date",
            Self::List => "list",
            Self::Table => "table",
            Self::Tables => "tables",
        }
    }
}

impl ProblemKind {
    /// Its message key: the title, with an attribute `help`.
    #[must_use]
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Syntax(syntax) => match syntax {
                Syntax::DuplicateKey => "plan-duplicate-key",
                Syntax::Unquoted => "plan-unquoted",
                Syntax::BadString => "plan-bad-string",
                Syntax::BadNumber => "plan-bad-number",
                Syntax::NoEquals => "plan-no-equals",
                Syntax::NoValue => "plan-no-value",
                Syntax::BadList => "plan-bad-list",
                Syntax::BadInline => "plan-bad-inline",
                Syntax::BadHeading => "plan-bad-heading",
                Syntax::BadKey => "plan-bad-key",
                Syntax::Extra => "plan-extra",
                Syntax::TooDeep => "plan-too-deep",
                Syntax::BadCharacter => "plan-bad-character",
                Syntax::Other => "plan-syntax",
            },
            Self::Empty => "plan-empty",
            Self::NoFormat => "plan-no-format",
            Self::NewerFormat { .. } => "plan-newer-format",
            Self::NoSuchFormat { .. } => "plan-no-such-format",
            Self::MissingKey { .. } => "plan-missing-key",
            Self::MissingTable { .. } => "plan-missing-table",
            Self::UnknownKey { .. } => "plan-unknown-key",
            Self::WrongType { .. } => "plan-wrong-type",
            Self::UnknownNotAllowed { .. } => "plan-unknown-not-allowed",
            Self::EmptyText { .. } => "plan-empty-text",
            Self::BadText { .. } => "plan-bad-text",
            Self::NoUnit { .. } => "plan-no-unit",
            Self::UnknownUnit { .. } => "plan-unknown-unit",
            Self::NoNumber { .. } => "plan-no-number",
            Self::TwoReadings { .. } => "plan-two-readings",
            Self::OutOfRange { .. } => "plan-out-of-range",
            Self::WireSize { .. } => "plan-wire-size",
            Self::NotAChoice { .. } => "plan-not-a-choice",
            Self::NotALanguage { .. } => "plan-not-a-language",
            Self::UnknownShape { .. } => "plan-unknown-shape",
            Self::WrongHalf { .. } => "plan-wrong-half",
            Self::BadId { .. } => "plan-bad-id",
            Self::DuplicateId { .. } => "plan-duplicate-id",
            Self::SetsId { .. } => "plan-sets-id",
            Self::UnknownReference { .. } => "plan-unknown-reference",
            Self::NotAReceptacle { .. } => "plan-not-a-receptacle",
            Self::Loop { .. } => "plan-loop",
            Self::BadShare { .. } => "plan-bad-share",
            Self::ShareDiffers { .. } => "plan-share-differs",
            Self::LessThan { .. } => "plan-less-than",
            Self::TwoDraws { .. } => "plan-two-draws",
            Self::PlaceForNoPlug { .. } => "plan-place-for-no-plug",
            Self::BadHours { .. } => "plan-bad-hours",
            Self::MotorCode { .. } => "plan-motor-code",
            Self::NoOutlets { .. } => "plan-no-outlets",
            Self::TooMany { .. } => "plan-too-many",
        }
    }

    /// Whether it may be only the consequence of a line that could not be read.
    pub(super) const fn follows_from_damage(&self) -> bool {
        matches!(
            self,
            Self::Empty
                | Self::NoFormat
                | Self::MissingKey { .. }
                | Self::MissingTable { .. }
                | Self::UnknownReference { .. }
                | Self::NotAReceptacle { .. }
                | Self::NoOutlets { .. }
                | Self::BadShare { .. }
                | Self::ShareDiffers { .. }
        )
    }
}

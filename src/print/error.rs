//! What can keep paper from being printed: a code and its data. The words are the messages
//! `print-error-CODE` of the language files.

use fluent_bundle::FluentValue;

use super::Document;
use crate::plan::Plan;
use crate::words::Words;

/// A text that does not fit its place at the legible minimum.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Misfit {
    /// The text.
    pub text: String,
    /// The words that would fit are at most this share of its length, in per cent.
    pub percent: u32,
}

/// Why there is no paper.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PrintError {
    /// Messages are missing or lack a value: a label with a hole in it is not printed.
    #[error("words-incomplete: {}", faults.join("; "))]
    WordsIncomplete {
        /// Each of them.
        faults: Vec<String>,
    },
    /// No face has a glyph for some characters of a text.
    #[error("no-glyph: {text:?} has {characters:?}")]
    NoGlyph {
        /// The whole text.
        text: String,
        /// The characters that cannot be printed.
        characters: String,
    },
    /// Texts that do not fit at the legible minimum.
    #[error("too-long: in {document:?}: {misfits:?}")]
    TooLong {
        /// On which document.
        document: Document,
        /// The texts, in the order of the paper.
        misfits: Vec<Misfit>,
    },
    /// A text was laid out beyond its page or its cell.
    #[error("off-page: {text:?} on page {page} of {document:?}")]
    OffPage {
        /// On which document.
        document: Document,
        /// The text.
        text: String,
        /// The page, counting from one.
        page: usize,
    },
    /// A text in letters too small for the distance that the document is read from: in a template of
    /// the user's own, or a fault of one of ours.
    #[error("too-small: {text:?} on page {page} of {document:?} at {percent} %")]
    TooSmall {
        /// On which document.
        document: Document,
        /// The text.
        text: String,
        /// The page, counting from one.
        page: usize,
        /// Its height in per cent of the least.
        percent: u32,
    },
    /// There is no label stock of that name.
    #[error("unknown-stock: {name:?}")]
    UnknownStock {
        /// What was asked for.
        name: String,
        /// What there is.
        known: Vec<String>,
    },
    /// A stock file cannot be used.
    #[error("bad-stock: {name:?}: {message}")]
    BadStock {
        /// The stock.
        name: String,
        /// What is wrong, from the TOML reader or naming the field.
        message: String,
    },
    /// The sheet has no such position.
    #[error("bad-start: {start_at} of {count}")]
    BadStart {
        /// The position asked for, counting from one.
        start_at: usize,
        /// How many labels a sheet has.
        count: usize,
    },
    /// The typesetter refused a template.
    #[error("template: {file}:{line}:{column}: {message}")]
    Template {
        /// The template's file.
        file: String,
        /// Line, counting from one; 0 when it is not known.
        line: usize,
        /// Column, counting from one; 0 when it is not known.
        column: usize,
        /// What the typesetter says.
        message: String,
    },
}

impl PrintError {
    /// With the whole text that the owner wrote in place of the piece of it that stood out: only
    /// the whole can be found in a plan and shortened there.
    pub(super) fn of_whole(self, plan: &Plan) -> Self {
        match self {
            Self::OffPage { document, text, page } => {
                let loads = plan.loads.iter().map(|load| &load.name);
                // In a list it has the list's comma.
                let piece = text.trim_end().trim_end_matches(',');
                let whole = loads
                    .chain([&plan.site.name, &plan.generator.name])
                    .filter(|name| name.contains(piece))
                    .max_by_key(|name| name.len());
                Self::OffPage { document, text: whole.unwrap_or(&text).clone(), page }
            }
            other => other,
        }
    }

    /// Its stable code.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::WordsIncomplete { .. } => "words-incomplete",
            Self::NoGlyph { .. } => "no-glyph",
            Self::TooLong { .. } => "too-long",
            Self::OffPage { .. } => "off-page",
            Self::TooSmall { .. } => "too-small",
            Self::UnknownStock { .. } => "unknown-stock",
            Self::BadStock { .. } => "bad-stock",
            Self::BadStart { .. } => "bad-start",
            Self::Template { .. } => "template",
        }
    }

    /// The error in words: one line for each text it names.
    #[must_use]
    pub fn in_words(&self, words: &Words) -> String {
        let key = format!("print-error-{}", self.code());
        let say = |args: Vec<(&'static str, String)>| {
            words.with(&key, args.into_iter().map(|(name, value)| (name, FluentValue::from(value))))
        };
        match self {
            Self::WordsIncomplete { faults } => say(vec![("faults", faults.join("; "))]),
            Self::NoGlyph { text, characters } => say(vec![("text", text.clone()), ("characters", characters.clone())]),
            Self::TooLong { document, misfits } => misfits
                .iter()
                .map(|misfit| {
                    say(vec![
                        ("document", document.file_name().to_owned()),
                        ("text", misfit.text.clone()),
                        ("percent", misfit.percent.to_string()),
                    ])
                })
                .collect::<Vec<_>>()
                .join("\n"),
            Self::OffPage { document, text, page } => say(vec![
                ("document", document.file_name().to_owned()),
                ("text", text.clone()),
                ("page", page.to_string()),
            ]),
            Self::TooSmall { document, text, page, percent } => say(vec![
                ("document", document.file_name().to_owned()),
                ("text", text.clone()),
                ("page", page.to_string()),
                ("percent", percent.to_string()),
            ]),
            Self::UnknownStock { name, known } => say(vec![("name", name.clone()), ("known", words.list(known))]),
            Self::BadStock { name, message } => say(vec![("name", name.clone()), ("message", message.clone())]),
            Self::BadStart { start_at, count } => {
                say(vec![("start", start_at.to_string()), ("count", count.to_string())])
            }
            Self::Template { file, line, column, message } => say(vec![
                ("file", file.clone()),
                ("line", line.to_string()),
                ("column", column.to_string()),
                ("message", message.clone()),
            ]),
        }
    }
}

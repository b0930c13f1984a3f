//! Reasons not to print: a code and its data. The text is the message `print-error-CODE` of the language files.

use fluent_bundle::FluentValue;

use super::Document;
use crate::plan::Plan;
use crate::words::Words;

/// A text that does not fit its place at the smallest legible size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Misfit {
    /// The text.
    pub text: String,
    /// How much of the text would fit, in percent of its length.
    pub percent: u32,
}

/// Why nothing is printed.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PrintError {
    /// Messages are missing or lack a value. A label with a gap in it is not printed.
    #[error("words-incomplete: {}", faults.join("; "))]
    WordsIncomplete {
        /// Each fault in words.
        faults: Vec<String>,
    },
    /// Some characters of a text have no glyph in some face, or hide or reorder text.
    #[error("no-glyph: {text:?} has {characters:?}")]
    NoGlyph {
        /// The whole text.
        text: String,
        /// The characters that cannot be printed.
        characters: String,
    },
    /// Texts do not fit at the smallest legible size.
    #[error("too-long: in {document:?}: {misfits:?}")]
    TooLong {
        /// The document that they are in.
        document: Document,
        /// The texts, in the order of the pages.
        misfits: Vec<Misfit>,
    },
    /// A text extends past its page or its cell.
    #[error("off-page: {text:?} on page {page} of {document:?}")]
    OffPage {
        /// The document that it is in.
        document: Document,
        /// The text.
        text: String,
        /// The page, counting from one.
        page: usize,
    },
    /// A text is too small for the reading distance of its document. The template at fault is the user's or a built-in
    /// one.
    #[error("too-small: {text:?} on page {page} of {document:?} at {percent} %")]
    TooSmall {
        /// The document that it is in.
        document: Document,
        /// The text.
        text: String,
        /// The page, counting from one.
        page: usize,
        /// Its height, in percent of the required minimum.
        percent: u32,
    },
    /// There is no label stock with this name.
    #[error("unknown-stock: {name:?}")]
    UnknownStock {
        /// The name asked for.
        name: String,
        /// The names that exist.
        known: Vec<String>,
    },
    /// A stock file is invalid.
    #[error("bad-stock: {name:?}: {message}")]
    BadStock {
        /// The stock's name.
        name: String,
        /// The TOML parser's message, or the field at fault.
        message: String,
    },
    /// The start position is not on the sheet.
    #[error("bad-start: {start_at} of {count}")]
    BadStart {
        /// The position asked for, counting from one.
        start_at: usize,
        /// The number of labels on a sheet.
        count: usize,
    },
    /// The typesetter rejected a template.
    #[error("template: {file}:{line}:{column}: {message}")]
    Template {
        /// The template's file.
        file: String,
        /// The line, counting from one. 0 if unknown.
        line: usize,
        /// The column, counting from one. 0 if unknown.
        column: usize,
        /// The typesetter's message.
        message: String,
    },
}

impl PrintError {
    /// Replaces the fragment that extends past its cell with the whole text that the user wrote, since only that can be
    /// found in the plan and shortened.
    pub(super) fn of_whole(self, plan: &Plan) -> Self {
        match self {
            Self::OffPage { document, text, page } => {
                let loads = plan.loads.iter().map(|load| &load.name);
                // In a list, the fragment ends in the list's comma.
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

    /// The stable code.
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

    /// Describes the error: one line for each text at fault.
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

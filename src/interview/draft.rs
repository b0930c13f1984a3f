//! The answers so far, in the form that is saved between questions.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use crate::plan::Answer;

/// The version of the draft format.
pub const FORMAT: u32 = 1;

/// One answer, as the user gave it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Said {
    /// The answer, in the user's own units.
    Is(String),
    /// The suggested name, accepted unchanged: the key of its message, which is put into the language of the finished
    /// plan.
    Word(String),
    /// "I don't know."
    Unknown,
    /// There is none, or the user would rather not say.
    None,
}

impl Said {
    /// Wraps text as an answer.
    pub fn is(text: impl Into<String>) -> Self {
        Self::Is(text.into())
    }

    /// Returns the text the user gave, if the answer is text.
    #[must_use]
    pub fn text(&self) -> Option<&str> {
        match self {
            Self::Is(text) => Some(text),
            Self::Word(_) | Self::Unknown | Self::None => None,
        }
    }
}

/// All answers so far, by the key of their question.
///
/// Answers to questions that no longer apply are kept, so that changing an answer back loses nothing. The plan uses
/// only those that apply.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// The draft's name in the list of drafts.
    pub name: String,
    /// The plan file this draft edits, if it was opened from one.
    pub plan: Option<String>,
    /// The content of that file when it was opened. Others may have changed it since.
    pub base: Option<String>,
    /// The answers.
    pub answers: BTreeMap<String, Said>,
    /// The words for parts and loads that nobody has named, in the reader's language.
    ///
    /// Not saved, since the draft may be resumed in another language.
    pub called: Called,
}

/// Words for the ids of parts and loads, by the word in the code, which stands in for any that is missing.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Called(BTreeMap<String, String>);

impl Called {
    /// Returns the word to use for this one.
    #[must_use]
    pub fn word<'w>(&'w self, word: &'w str) -> &'w str {
        self.0.get(word).map_or(word, String::as_str)
    }
}

impl FromIterator<(String, String)> for Called {
    fn from_iter<I: IntoIterator<Item = (String, String)>>(words: I) -> Self {
        Self(words.into_iter().collect())
    }
}

/// The format on disk: answer texts and message keys by question, and the questions answered "unknown" or "none".
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    format: u32,
    name: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    plan: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    base: Option<String>,
    #[serde(default)]
    unknown: BTreeSet<String>,
    #[serde(default)]
    none: BTreeSet<String>,
    #[serde(default)]
    answers: BTreeMap<String, String>,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    words: BTreeMap<String, String>,
}

/// The reason a text is not a draft.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum DraftError {
    /// The text is not TOML of the right form.
    #[error("not a draft of this program")]
    Form(#[from] toml::de::Error),
    /// A later version of the program wrote it.
    #[error("a draft of format {found}, newer than {FORMAT}")]
    Newer {
        /// The format number in the draft.
        found: u32,
    },
}

impl Draft {
    /// Creates a draft without answers.
    pub fn new(name: impl Into<String>) -> Self {
        Self { name: name.into(), plan: None, base: None, answers: BTreeMap::new(), called: Called::default() }
    }

    /// Returns the text to save.
    ///
    /// # Panics
    /// Never, since strings and lists of strings are always valid TOML.
    #[must_use]
    pub fn to_text(&self) -> String {
        let without = |wanted: &Said| {
            let keys = self.answers.iter().filter(|(_, said)| *said == wanted);
            keys.map(|(key, _)| key.clone()).collect()
        };
        let with = |text: fn(&Said) -> Option<&str>| {
            let texts = self.answers.iter();
            let texts = texts.filter_map(|(key, said)| Some((key.clone(), text(said)?.to_owned())));
            texts.collect()
        };
        let file = File {
            format: FORMAT,
            name: self.name.clone(),
            plan: self.plan.clone(),
            base: self.base.clone(),
            unknown: without(&Said::Unknown),
            none: without(&Said::None),
            answers: with(Said::text),
            words: with(|said| match said {
                Said::Word(word) => Some(word),
                _ => None,
            }),
        };
        toml::to_string_pretty(&file).expect("texts are TOML")
    }

    /// Parses what [`Self::to_text`] wrote.
    ///
    /// # Errors
    /// When the text is not a draft, or has a later format.
    pub fn from_text(text: &str) -> Result<Self, DraftError> {
        // Check the format first, so that fields added by a later version are not reported as malformed.
        #[derive(Deserialize)]
        struct Format {
            format: u32,
        }
        let Format { format } = toml::from_str(text)?;
        if format > FORMAT {
            return Err(DraftError::Newer { found: format });
        }
        let file: File = toml::from_str(text)?;
        let unknown = file.unknown.into_iter().map(|key| (key, Said::Unknown));
        let none = file.none.into_iter().map(|key| (key, Said::None));
        let texts = file.answers.into_iter();
        let texts = texts.map(|(key, text)| (key, Said::Is(text)));
        let words = file.words.into_iter();
        let words = words.map(|(key, word)| (key, Said::Word(word)));
        let answers = unknown.chain(none).chain(texts).chain(words).collect();
        Ok(Self { name: file.name, plan: file.plan, base: file.base, answers, called: Called::default() })
    }

    /// Returns the answer under a key.
    #[must_use]
    pub fn get(&self, key: &str) -> Option<&Said> {
        self.answers.get(key)
    }

    /// Returns what a plan field gets from the answer under a key.
    #[must_use]
    pub fn answer(&self, key: &str) -> Answer<&str> {
        match self.get(key) {
            Some(Said::Is(text)) => Answer::Known(text),
            Some(Said::Unknown) => Answer::Unknown,
            Some(Said::None | Said::Word(_)) | None => Answer::Missing,
        }
    }

    /// Returns the same, parsed by `read`. A text that does not parse counts as missing.
    pub fn read<T>(&self, key: &str, read: impl Fn(&str) -> Option<T>) -> Answer<T> {
        match self.answer(key) {
            Answer::Known(text) => read(text).map_or(Answer::Missing, Answer::Known),
            Answer::Unknown => Answer::Unknown,
            Answer::Missing => Answer::Missing,
        }
    }

    /// Returns the text under a key, if the answer is text.
    #[must_use]
    pub fn text(&self, key: &str) -> Option<&str> {
        self.get(key).and_then(Said::text)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn comes_back_as_it_was() {
        let mut draft = Draft::new("lake");
        for (key, said) in [
            ("generator.rated", Said::is("2.8 kW")),
            ("generator.name", Said::is("the \"big\" one\\ \u{1F525}")),
            ("generator.peak", Said::Unknown),
            ("site.quiet_hours", Said::None),
            ("site.name", Said::is("@ the lake")),
            ("load.1.name", Said::Word("appliance-kettle".into())),
        ] {
            draft.answers.insert(key.into(), said);
        }
        assert_eq!(Draft::from_text(&draft.to_text()).unwrap(), draft);
    }

    #[test]
    fn refuses_what_it_cannot_know() {
        assert!(Draft::from_text("").is_err());
        assert!(Draft::from_text("format = 1\nname = \"a\"\nextra = 1\n").is_err());
        let later = "format = 2\nname = \"a\"\nextra = 1\n";
        assert!(matches!(Draft::from_text(later), Err(DraftError::Newer { found: 2 })));
    }
}

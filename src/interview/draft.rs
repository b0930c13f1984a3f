//! The answers so far: what is kept on disk between one question and the next.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// The version of the draft format.
pub const FORMAT: u32 = 1;

/// One answer, as the user gave it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Said {
    /// The answer, in the user's own units.
    Is(String),
    /// "I don't know."
    Unknown,
    /// There is none, or the user would rather not say.
    None,
}

impl Said {
    /// An answer from text.
    pub fn is(text: impl Into<String>) -> Self {
        Self::Is(text.into())
    }

    /// The text of the answer, if there is one.
    #[must_use]
    pub fn text(&self) -> Option<&str> {
        match self {
            Self::Is(text) => Some(text),
            Self::Unknown | Self::None => None,
        }
    }
}

/// All answers so far, by the key of the question. Answers to questions that no longer apply
/// stay, so that changing one's mind twice loses nothing; the plan is made only of those that
/// apply.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Draft {
    /// The version of this format.
    pub format: u32,
    /// What the draft is called where drafts are listed.
    pub name: String,
    /// The answers.
    pub answers: BTreeMap<String, Said>,
}

/// Why a text is no draft.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum DraftError {
    /// It is not JSON of the right form.
    #[error("not a draft of this program")]
    Form(#[from] serde_json::Error),
    /// A later version of the program wrote it.
    #[error("a draft of format {found}, newer than {FORMAT}")]
    Newer {
        /// Its format number.
        found: u32,
    },
}

impl Draft {
    /// A draft without answers.
    pub fn new(name: impl Into<String>) -> Self {
        Self {
            format: FORMAT,
            name: name.into(),
            answers: BTreeMap::new(),
        }
    }

    /// The form it is kept in.
    ///
    /// # Panics
    /// Never: a map of texts is always JSON.
    #[must_use]
    pub fn to_json(&self) -> String {
        let mut text = serde_json::to_string_pretty(self).expect("a map of texts is JSON");
        text.push('\n');
        text
    }

    /// Reads what [`Self::to_json`] wrote.
    ///
    /// # Errors
    /// When it is something else, or of a later format.
    pub fn from_json(text: &str) -> Result<Self, DraftError> {
        let draft: Self = serde_json::from_str(text)?;
        if draft.format > FORMAT {
            return Err(DraftError::Newer {
                found: draft.format,
            });
        }
        Ok(draft)
    }

    /// The answer under a key.
    #[must_use]
    pub fn get(&self, key: &str) -> Option<&Said> {
        self.answers.get(key)
    }

    /// The text under a key.
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
        draft
            .answers
            .insert("generator.rated".into(), Said::is("2.8 kW"));
        draft.answers.insert("generator.peak".into(), Said::Unknown);
        draft.answers.insert("site.quiet".into(), Said::None);
        assert_eq!(Draft::from_json(&draft.to_json()).unwrap(), draft);
    }

    #[test]
    fn refuses_what_it_cannot_know() {
        assert!(Draft::from_json("{}").is_err());
        let later = Draft {
            format: FORMAT + 1,
            ..Draft::new("x")
        };
        assert!(matches!(
            Draft::from_json(&later.to_json()),
            Err(DraftError::Newer { found: 2 })
        ));
    }
}

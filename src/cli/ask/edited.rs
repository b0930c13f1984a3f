//! A plan file that is being changed.

use std::path::{Path, PathBuf};

use tallywatt::interview::{self, Draft};
use tallywatt::plan::{self, Plan, store};
use tallywatt::words::Words;

use super::STEM;
use crate::cli::failure::{Failure, Kind};
use crate::cli::{command, prints};

/// A plan file and the interview's view of it. Someone else may change the file meanwhile, so the changes are merged
/// into whatever it holds at the end.
pub(super) struct Edited {
    /// The path of the file.
    pub(super) path: PathBuf,
    /// The answers that produce the plan.
    pub(super) draft: Draft,
    /// The text of the file when editing began.
    base: String,
    /// The plan at that time, as the interview represents it.
    before: Plan,
}

impl Edited {
    /// Opens a plan file with its current contents.
    pub(super) fn open(path: &Path, words: &Words) -> Result<Self, Failure> {
        let text = read(path, words)?;
        let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
        Self::from_text(path, text, words)
    }

    /// Resumes a draft that changes a file.
    pub(super) fn resume(draft: &Draft, path: &str, words: &Words) -> Result<Self, Failure> {
        let base = draft.base.clone();
        let base = base.map_or_else(|| read(Path::new(path), words), Ok)?;
        Self::from_text(path.into(), base, words)
    }

    fn from_text(path: PathBuf, base: String, words: &Words) -> Result<Self, Failure> {
        let plan = prints::read(&base, &path, words)?;
        let shown = path.display().to_string();
        let mut draft = interview::draft_of(&plan, STEM).ok_or_else(|| {
            let values = [("path", shown.as_str().into())];
            let check = command(&["tallywatt", "check", &shown]);
            Failure::text(Kind::Usage, words.with("interview-too-large", values))
                .hint(words.with("interview-too-large-help", [("command", check.into())]))
        })?;
        draft.plan = Some(shown);
        draft.base = Some(base.clone());
        Ok(Self { before: interview::plan_of(&draft, &|key| words.text(key)), path, draft, base })
    }

    /// Returns the current text of the file, which must be a plan, or the original text if the file is gone.
    pub(super) fn now(&self, words: &Words) -> Result<String, Failure> {
        if !self.path.exists() {
            return Ok(self.base.clone());
        }
        let text = read(&self.path, words)?;
        prints::read(&text, &self.path, words).map(|_| text)
    }

    /// Returns `text` with the changes merged in, or the plan written anew if they cannot be merged.
    pub(super) fn changed(&self, text: &str, plan: &Plan) -> String {
        interview::merge(text, &self.before, plan).unwrap_or_else(|| plan::write(plan))
    }

    /// Whether `other` is the same file.
    pub(super) fn is(&self, other: &Path) -> bool {
        let real = std::fs::canonicalize(&self.path);
        real.is_ok_and(|real| std::fs::canonicalize(other).is_ok_and(|other| real == other))
    }
}

fn read(path: &Path, words: &Words) -> Result<String, Failure> {
    store::read_text(path).map_err(|error| prints::stored(&error, Kind::Usage, words))
}

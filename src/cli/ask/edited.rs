//! A plan file that is being changed.

use std::path::{Path, PathBuf};

use tallywatt::interview::{self, Draft};
use tallywatt::plan::{self, Plan, store};
use tallywatt::words::Words;

use super::STEM;
use crate::cli::failure::{Failure, Kind};
use crate::cli::{command, prints};

/// A plan file, and what the interview made of it. Somebody else may change the file meanwhile:
/// what is changed here is put into whatever stands there at the end.
pub(super) struct Edited {
    /// The file.
    pub(super) path: PathBuf,
    /// The answers that make it.
    pub(super) draft: Draft,
    /// Its text when the changes began.
    base: String,
    /// Its plan then, as the interview knows it.
    before: Plan,
}

impl Edited {
    /// Begins with what stands in the file.
    pub(super) fn open(path: &Path, words: &Words) -> Result<Self, Failure> {
        let text = read(path, words)?;
        let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
        Self::from_text(path, text, words)
    }

    /// Goes on with a draft that changes a file.
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

    /// What stands in the file now, which must be a plan; what stood there, if it is gone.
    pub(super) fn now(&self, words: &Words) -> Result<String, Failure> {
        if !self.path.exists() {
            return Ok(self.base.clone());
        }
        let text = read(&self.path, words)?;
        prints::read(&text, &self.path, words).map(|_| text)
    }

    /// This text of the file with the changes in it.
    pub(super) fn changed(&self, text: &str, plan: &Plan) -> String {
        interview::merge(text, &self.before, plan).unwrap_or_else(|| plan::write(plan))
    }

    /// Whether this is the file.
    pub(super) fn is(&self, other: &Path) -> bool {
        let real = std::fs::canonicalize(&self.path);
        real.is_ok_and(|real| std::fs::canonicalize(other).is_ok_and(|other| real == other))
    }
}

fn read(path: &Path, words: &Words) -> Result<String, Failure> {
    store::read_text(path).map_err(|error| prints::stored(&error, Kind::Usage, words))
}

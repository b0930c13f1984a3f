//! Failures of the shell and their exit statuses.

use std::fmt::Write as _;
use std::io::Write as _;
use std::process::ExitCode;

use tallywatt::words::Words;

/// The kinds of failure. Their exit statuses follow the C library's `sysexits.h` where it has one, so that scripts can
/// tell them apart. 1 and 2 are left for the findings of `check`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    /// The command line was wrong.
    Usage,
    /// A plan could not be read or understood.
    BadPlan,
    /// Something could not be written, or could not be printed without loss.
    CannotWrite,
    /// The user interrupted the program.
    Interrupted,
}

impl Kind {
    const fn status(self) -> u8 {
        match self {
            Self::Usage => 64,
            Self::BadPlan => 65,
            Self::CannotWrite => 73,
            Self::Interrupted => 130,
        }
    }
}

/// A failure, with hints kept apart from the message.
#[derive(Debug)]
pub(super) struct Failure {
    kind: Kind,
    error: anyhow::Error,
    /// Whether the message is shown without a lead-in because it explains itself, as a plan's problems do in place.
    whole: bool,
    hints: Vec<String>,
}

impl Failure {
    pub(super) fn new(kind: Kind, error: impl Into<anyhow::Error>) -> Self {
        Self { kind, error: error.into(), whole: false, hints: Vec::new() }
    }

    /// Creates a failure from a finished message.
    pub(super) fn text(kind: Kind, text: String) -> Self {
        Self::new(kind, anyhow::Error::msg(text))
    }

    pub(super) fn whole(mut self) -> Self {
        self.whole = true;
        self
    }

    pub(super) fn hint(mut self, hint: String) -> Self {
        self.hints.push(hint);
        self
    }

    /// Adds a hint with the nearest valid name, if there is one.
    pub(super) fn near(self, nearest: Option<&str>, words: &Words) -> Self {
        let Some(nearest) = nearest else {
            return self;
        };
        self.hint(words.with("usage-nearest", [("nearest", nearest.into())]))
    }

    /// Returns the exit status.
    pub(super) const fn status(&self) -> u8 {
        self.kind.status()
    }

    /// Returns the text for standard error.
    pub(super) fn shown(&self, words: &Words) -> String {
        let mut text = if self.whole {
            format!("{}\n", self.error.to_string().trim_end())
        } else {
            format!("{} {:#}\n", words.text("failure-lead"), self.error)
        };
        for hint in &self.hints {
            let _ = writeln!(text, "{} {hint}", words.text("failure-hint"));
        }
        text
    }

    /// Prints the failure to standard error and returns its exit status.
    pub(super) fn report(self, words: &Words) -> ExitCode {
        let text = self.shown(words);
        // If standard error fails too, there is nowhere left to report it.
        let _ = anstream::stderr().lock().write_all(text.as_bytes());
        self.status().into()
    }
}

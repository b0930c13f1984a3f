//! What can go wrong at the edge, and the exit status each kind has.

use std::fmt::Write as _;
use std::io::Write as _;
use std::process::ExitCode;

use tallywatt::words::Words;

/// The kinds of failure. Their numbers are those of the C library's `sysexits.h` where it has
/// one, so that scripts can tell them apart; 1 and 2 are left for what `check` finds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    /// The call was wrong.
    Usage,
    /// A plan could not be understood.
    BadPlan,
    /// Something could not be written, or not printed without loss.
    CannotWrite,
    /// The user broke off.
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
    /// Shown without a lead-in, because it explains itself (a plan's problems, in place).
    whole: bool,
    hints: Vec<String>,
}

impl Failure {
    pub(super) fn new(kind: Kind, error: impl Into<anyhow::Error>) -> Self {
        Self { kind, error: error.into(), whole: false, hints: Vec::new() }
    }

    /// A failure whose text is finished.
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

    /// With what was meant, perhaps.
    pub(super) fn near(self, nearest: Option<&str>, words: &Words) -> Self {
        let Some(nearest) = nearest else {
            return self;
        };
        self.hint(words.with("usage-nearest", [("nearest", nearest.into())]))
    }

    /// Its exit status.
    pub(super) const fn status(&self) -> u8 {
        self.kind.status()
    }

    /// What is said on standard error.
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

    /// Says it and gives the exit status.
    pub(super) fn report(self, words: &Words) -> ExitCode {
        let text = self.shown(words);
        // There is nowhere left to complain to.
        let _ = anstream::stderr().lock().write_all(text.as_bytes());
        self.status().into()
    }
}

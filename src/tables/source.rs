//! Where a figure comes from, and how well that was checked.

/// How a figure was checked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mark {
    /// Read in a stored copy of the document, or on a public agency's page.
    Confirmed,
    /// Read only in a secondary copy.
    Secondary,
    /// Written from memory, not verified.
    Memory,
    /// Common practice of the trade, no source.
    CommonPractice,
}

/// One source of one figure or duty. Names and numbers of a document are the same in every language; what
/// else is to be said of it is a message.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, serde::Serialize)]
pub struct Source {
    /// Document, as "NFPA 70 (NEC)"; empty where only the note names it.
    pub document: &'static str,
    /// Clause or table, as "210.21(B)(2)"; empty where none applies.
    pub clause: &'static str,
    /// What a reader is told with the clause, by the key of its message `source-NOTE`; empty where there is
    /// no more to say.
    pub note: &'static str,
    /// Edition or date; empty where it is not known.
    pub edition: &'static str,
    /// How it was checked.
    pub mark: Mark,
}

impl Source {
    /// A source with all its parts.
    #[must_use]
    pub const fn new(document: &'static str, clause: &'static str, edition: &'static str, mark: Mark) -> Self {
        Self { document, clause, note: "", edition, mark }
    }

    /// The same with something to say of it, by the key of its message `source-NOTE`.
    #[must_use]
    pub const fn noted(self, note: &'static str) -> Self {
        Self { note, ..self }
    }

    /// Trade practice without a document.
    #[must_use]
    pub const fn common_practice() -> Self {
        Self::new("", "", "", Mark::CommonPractice)
    }
}

//! The source of a figure, and how well it was checked.

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

/// The source of a figure or duty. Document names and numbers are the same in every language; anything else about it is
/// a message.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, serde::Serialize)]
pub struct Source {
    /// The document, such as "NFPA 70 (NEC)"; empty if only the note names it.
    pub document: &'static str,
    /// The clause or table, such as "210.21(B)(2)"; empty if none applies.
    pub clause: &'static str,
    /// What else readers are told, by the key of its message `source-NOTE`; empty if nothing.
    pub note: &'static str,
    /// The edition or date; empty if unknown.
    pub edition: &'static str,
    /// How it was checked.
    pub mark: Mark,
}

impl Source {
    /// Creates a source without a note.
    #[must_use]
    pub const fn new(document: &'static str, clause: &'static str, edition: &'static str, mark: Mark) -> Self {
        Self { document, clause, note: "", edition, mark }
    }

    /// Adds a note, by the key of its message `source-NOTE`.
    #[must_use]
    pub const fn noted(self, note: &'static str) -> Self {
        Self { note, ..self }
    }

    /// Returns the source of a trade practice without a document.
    #[must_use]
    pub const fn common_practice() -> Self {
        Self::new("", "", "", Mark::CommonPractice)
    }
}

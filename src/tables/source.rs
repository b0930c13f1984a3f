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

/// One source of one figure or duty. The text is a citation, the same in every language.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, serde::Serialize)]
pub struct Source {
    /// Document, as "NFPA 70 (NEC)".
    pub document: &'static str,
    /// Clause or table, as "210.21(B)(2)"; empty where none applies.
    pub clause: &'static str,
    /// Edition or date; empty where it is not known.
    pub edition: &'static str,
    /// How it was checked.
    pub mark: Mark,
}

impl Source {
    /// A source with all its parts.
    #[must_use]
    pub const fn new(
        document: &'static str,
        clause: &'static str,
        edition: &'static str,
        mark: Mark,
    ) -> Self {
        Self {
            document,
            clause,
            edition,
            mark,
        }
    }

    /// Trade practice without a document.
    #[must_use]
    pub const fn common_practice() -> Self {
        Self::new("", "", "", Mark::CommonPractice)
    }
}

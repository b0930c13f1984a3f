//! What was learned at camp, in words.

use super::Words;
use crate::learned::{Felt, Learned, Unclear};
use crate::plan::Id;

impl Words {
    /// The words for what is felt, as a reader types them.
    #[must_use]
    pub fn felt(&self) -> Felt {
        let all = |key| self.text(key).split(' ').map(str::to_owned).collect();
        Felt {
            hot: all("learned-word-hot"),
            warm: all("learned-word-warm"),
        }
    }

    /// What it means.
    pub fn learned(&self, learned: &Learned) -> String {
        let key = format!("learned-{}", learned.key);
        self.format(&key, &self.values(&learned.values, &[]))
    }

    /// Why it is not understood, and what to say instead.
    pub fn unclear(&self, unclear: &Unclear) -> (String, String) {
        let quoted = |ids: &[Id]| self.quoted(ids.iter().map(Id::as_str));
        let (key, parts) = match unclear {
            Unclear::NoPart => ("learned-no-part", String::new()),
            Unclear::Parts(ids) => ("learned-parts", quoted(ids)),
            Unclear::NoFigure => ("learned-no-figure", String::new()),
            Unclear::NoBreaker(id) => ("learned-no-breaker", quoted(std::slice::from_ref(id))),
        };
        let why = self.with(key, [("parts", parts.into())]);
        (why, self.text("learned-say"))
    }
}

//! What was observed at camp, in words.

use super::Words;
use crate::learned::{Learned, Unclear, Vocabulary};
use crate::plan::Id;
use crate::report::LoadFacts;

impl Words {
    /// Returns the words for what a camper may observe, as a reader types them.
    #[must_use]
    pub fn vocabulary(&self) -> Vocabulary {
        let all = |what: &str| {
            let words = self.text(&format!("learned-word-{what}"));
            words.split(' ').map(str::to_owned).collect()
        };
        Vocabulary {
            alarm: all("alarm"),
            fire: all("fire"),
            shock: all("shock"),
            hot: all("hot"),
            warm: all("warm"),
            very: all("very"),
            not: all("not"),
            trip: all("trip"),
            numbers: all("number").iter().map(|forms| forms.split('/').map(str::to_owned).collect()).collect(),
            half: all("half"),
        }
    }

    /// Explains what an observation means.
    pub fn learned(&self, learned: &Learned, loads: &[LoadFacts]) -> String {
        let key = format!("learned-{}", learned.key);
        self.format(&key, &self.values(&learned.values, loads))
    }

    /// Returns why an observation is unclear, and what to say instead about this plan.
    pub fn unclear(&self, unclear: &Unclear, plan: &str) -> (String, String) {
        let quoted = |ids: &[Id]| self.quoted(ids.iter().map(Id::as_str));
        let (key, parts) = match unclear {
            Unclear::NoPart => ("learned-no-part", String::new()),
            Unclear::Parts(ids) => ("learned-parts", quoted(ids)),
            Unclear::Not => ("learned-not", String::new()),
            Unclear::NoFigure => ("learned-no-figure", String::new()),
            Unclear::NoAmps(id) => ("learned-no-amps", quoted(std::slice::from_ref(id))),
            Unclear::NoTrip => ("learned-no-trip", String::new()),
            Unclear::NoBreaker(id) => ("learned-no-breaker", quoted(std::slice::from_ref(id))),
        };
        let why = self.with(key, [("parts", parts.into())]);
        let instead = match unclear {
            Unclear::NoAmps(id) => self.with("learned-say-amps", [("plan", plan.into()), ("id", id.as_str().into())]),
            _ => self.text("learned-say"),
        };
        (why, instead)
    }
}

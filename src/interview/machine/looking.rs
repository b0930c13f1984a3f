//! Going through what is to be looked at: the questions about it, one after another.

use super::{Cursor, Machine, Place, Question};
use crate::interview::{build, live};
use crate::judge;
use crate::plan::Plan;
use crate::report::{Look, Report};

impl Machine {
    /// The plan as it stands.
    fn plan(&self) -> Plan {
        build::plan(&self.draft, &|key| key.to_owned())
    }

    /// The same judged in full.
    pub(super) fn judged(&self) -> Report {
        judge::build(&self.plan())
    }

    /// The questions that find out what dangers and warnings rest on, what clears most first.
    pub(super) fn looks(&self, looks: &[Look]) -> Vec<String> {
        let mut keys = self.ask_for(looks.iter().flat_map(|look| &look.fields));
        // What is not bought yet is on the list of what to buy, and nobody can look at it.
        let places = self.places();
        let to_buy = |key: &String| {
            let mut asked = places.iter().filter(|place| place.key() == *key);
            asked.any(|place| super::is_to_buy(&self.draft, place.step, place.at))
        };
        keys.retain(|key| !to_buy(key));
        keys
    }

    /// The keys of the questions that ask for these fields, each once.
    fn ask_for<'f>(&self, fields: impl Iterator<Item = &'f String>) -> Vec<String> {
        let line_of = self.lines();
        let mut keys: Vec<String> = Vec::new();
        for field in fields {
            let key = self.asks_for(field, &line_of);
            keys.extend(key.filter(|key| !keys.contains(key)));
        }
        keys
    }

    /// These questions, outside any turn.
    pub(crate) fn questions(&self, fields: &[String]) -> Vec<Question> {
        let places = self.places();
        let asked = self.ask_for(fields.iter()).into_iter();
        let asked = asked.filter_map(|key| places.iter().find(|place| place.key() == key));
        asked.map(|place| self.ask(place, false)).collect()
    }

    /// The question that asks for a field of the plan.
    pub(super) fn asks_for(&self, field: &str, line_of: &impl Fn(&str) -> Option<String>) -> Option<String> {
        let (path, name) = field.rsplit_once('.')?;
        let some = self.draft.text("outlets.gfci") == Some("some");
        let line = match name {
            "bonding_plug_in" => "outlets".to_owned(),
            // Of some of them: each by itself.
            "gfci" if some => line_of(path.rsplit('.').next()?)?,
            _ => live::line(field, line_of)?,
        };
        let asked = match name {
            "wire" | "conductors" if path.starts_with("cord.") => &["jacket"],
            // Told by the letters of the jacket where it is not asked by itself.
            "outdoor" => &["outdoor", "jacket"][..],
            "co_alarm" | "people_sleep" => &["alarm"],
            "bonding_plug" => &["neutral"],
            "bonding_plug_in" => &["bonding"],
            "legs" => &["voltage"],
            "inlet" => &["plug"],
            "outlet" => &["outs"],
            name => &[name],
        };
        let of_part = self.of_part(&line);
        let asks = |asked: &&str| of_part.iter().find(|place| place.step.field == *asked);
        asked.iter().find_map(asks).map(Place::key)
    }

    /// To the next of these questions that was not asked yet: an answer may have made others needless. To the review
    /// page after the last.
    pub(super) fn look_on(&mut self) -> Cursor {
        let places = self.places();
        let asked = self.looked_at.take().unwrap_or_default();
        let in_vain: Vec<String> = {
            let assumed = judge::judge(&self.plan()).figures.assumed;
            let line_of = self.lines();
            let was_asked = |field: &String| self.asks_for(field, &line_of).is_some_and(|key| asked.contains(&key));
            assumed.into_iter().map(|it| it.field).filter(was_asked).collect()
        };
        let looks = self.looks(&judge::looks_beside(&self.plan(), &in_vain));
        let asked = self.looked_at.insert(asked);
        let next = looks.into_iter().find(|key| {
            let applies = places.iter().any(|place| place.key() == *key);
            applies && !asked.contains(key)
        });
        let Some(key) = next else {
            self.looked_at = None;
            return Cursor::Front;
        };
        asked.push(key.clone());
        Cursor::At { key, from_page: Some("review".into()) }
    }

    /// To the question before, of those that are looked at; nothing ahead of the first.
    pub(super) fn look_back(&mut self) -> Option<Cursor> {
        let mut asked = self.looked_at.take()?;
        asked.pop();
        let key = asked.last()?.clone();
        self.looked_at = Some(asked);
        Some(Cursor::At { key, from_page: Some("review".into()) })
    }

    /// Begins to go through what is to be looked at.
    pub(crate) fn start_looking(&mut self) {
        self.looked_at = None;
        self.cursor = self.look_on();
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::interview::draft_of;
    use crate::plan::arbitrary;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(96))]

        /// Whatever is to be looked at has a question that asks for it.
        #[test]
        fn every_look_has_a_question(plan in arbitrary::camp()) {
            let Some(draft) = draft_of(&plan, "t") else {
                return Ok(());
            };
            let machine = Machine::new(draft);
            let plan = build::plan(&machine.draft, &|key| key.to_owned());
            let line_of = machine.lines();
            for look in judge::build(&plan).figures.looks {
                for field in look.fields {
                    prop_assert!(machine.asks_for(&field, &line_of).is_some(), "{field}");
                }
            }
        }
    }
}

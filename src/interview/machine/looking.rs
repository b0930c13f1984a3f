//! Going through what is to be looked at: the questions about it, one after another.

use super::{Cursor, Machine, Place, Question};
use crate::interview::{build, live};
use crate::judge;
use crate::plan::Plan;
use crate::report::{Look, Marking, Report};

impl Machine {
    /// The plan as it stands.
    fn plan(&self) -> Plan {
        build::plan(&self.draft, &|key| key.to_owned())
    }

    /// The same judged in full.
    pub(super) fn judged(&self) -> Report {
        judge::build(&self.plan())
    }

    /// The questions of the look sheet, in its order. What is not bought yet is on the list of what to buy, and nobody can
    /// look at it.
    pub(super) fn looks(&self, looks: &[Look]) -> Vec<String> {
        let here = looks.iter().filter(|look| look.read != Marking::Package);
        self.ask_for(here.flat_map(|look| &look.fields))
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

    /// To the next question of what is looked at: first those of the sheet that somebody took along, but for what another
    /// answer has told or made needless; then those that the answers led to. To the review page after the last.
    pub(super) fn look_on(&mut self) -> Cursor {
        let Some(mut looking) = self.looking.take() else {
            return Cursor::Front;
        };
        let open: Vec<String> = judge::judge(&self.plan()).figures.assumed.into_iter().map(|it| it.field).collect();
        let open_keys = self.ask_for(open.iter());
        let waits = |key: &String, asked: &[String]| open_keys.contains(key) && !asked.contains(key);
        let listed = looking.list.iter().find(|key| waits(key, &looking.asked)).cloned();
        let next = listed.or_else(|| {
            let line_of = self.lines();
            let in_vain = |field: &String| {
                let key = self.asks_for(field, &line_of);
                key.is_some_and(|key| looking.asked.contains(&key))
            };
            let in_vain: Vec<String> = open.iter().filter(|field| in_vain(field)).cloned().collect();
            looking.list = self.looks(&judge::looks_beside(&self.plan(), &in_vain));
            looking.list.iter().find(|key| waits(key, &looking.asked)).cloned()
        });
        let Some(key) = next else {
            return Cursor::Front;
        };
        looking.asked.push(key.clone());
        self.looking = Some(looking);
        Cursor::At { key, from_page: Some("review".into()) }
    }

    /// To the question before, of those that are looked at; nothing ahead of the first.
    pub(super) fn look_back(&mut self) -> Option<Cursor> {
        let mut looking = self.looking.take()?;
        looking.asked.pop();
        let key = looking.asked.last()?.clone();
        self.looking = Some(looking);
        Some(Cursor::At { key, from_page: Some("review".into()) })
    }

    /// Begins to go through what is to be looked at.
    pub(crate) fn start_looking(&mut self) {
        self.looking = Some(Looking::default());
        self.cursor = self.look_on();
    }
}

/// What is gone through.
#[derive(Clone, Debug, Default)]
pub(super) struct Looking {
    /// The questions.
    list: Vec<String>,
    /// Those that were asked.
    asked: Vec<String>,
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

//! Going through the things to look up: the questions about them, one after another.

use super::{Cursor, LookAt, Machine, Place, Question};
use crate::interview::{build, live};
use crate::judge;
use crate::plan::Plan;
use crate::report::{Look, Marking, Report};

impl Machine {
    /// Returns the plan that the current answers make.
    fn plan(&self) -> Plan {
        build::plan(&self.draft, &|key| key.to_owned())
    }

    /// Returns the full report on that plan.
    pub(super) fn judged(&self) -> Report {
        judge::build(&self.plan())
    }

    /// Returns the keys of the questions on the look sheet, in its order.
    ///
    /// Things read from a package are left out: they are still to be bought, so nobody can look at them.
    pub(super) fn looks(&self, looks: &[Look]) -> Vec<String> {
        let here = looks.iter().filter(|look| look.read != Marking::Package);
        self.ask_for(here.flat_map(|look| &look.fields))
    }

    /// Returns the keys of the questions that ask for these fields, each once.
    fn ask_for<'f>(&self, fields: impl Iterator<Item = &'f String>) -> Vec<String> {
        let line_of = self.lines();
        let mut keys: Vec<String> = Vec::new();
        for field in fields {
            let key = self.asks_for(field, &line_of);
            keys.extend(key.filter(|key| !keys.contains(key)));
        }
        keys
    }

    /// Returns the questions that ask for these fields, out of turn.
    pub(crate) fn questions(&self, fields: &[String]) -> Vec<Question> {
        let places = self.places();
        let asked = self.ask_for(fields.iter()).into_iter();
        let asked = asked.filter_map(|key| places.iter().find(|place| place.key() == key));
        asked.map(|place| self.ask(place, false)).collect()
    }

    /// Returns the key of the question that asks for this field of the plan. `line_of` finds the review line of a part
    /// by its id.
    pub(super) fn asks_for(&self, field: &str, line_of: &impl Fn(&str) -> Option<String>) -> Option<String> {
        let (path, name) = field.rsplit_once('.')?;
        let some = self.draft.text("outlets.gfci") == Some("some");
        let line = match name {
            "bonding_plug_in" => "outlets".to_owned(),
            // "Some" outlets have a GFCI, so ask about each outlet.
            "gfci" if some => line_of(path.rsplit('.').next()?)?,
            _ => live::line(field, line_of)?,
        };
        let asked = match name {
            "wire" | "conductors" if path.starts_with("cord.") => &["jacket"],
            // The letters on the jacket answer this when it has no question of its own.
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

    /// Moves to the next thing to look up, or to the review page after the last.
    ///
    /// The questions are those of the sheet, without those that other answers made needless. Where something could not be
    /// found out, what may be easier to find out comes next.
    pub(super) fn look_on(&mut self) -> Cursor {
        let Some(mut looking) = self.looking.take() else {
            return Cursor::Front;
        };
        let open: Vec<String> = judge::judge(&self.plan()).figures.assumed.into_iter().map(|it| it.field).collect();
        let open_keys = self.ask_for(open.iter());
        let waits = |key: &String, asked: &[(String, LookAt)]| {
            open_keys.contains(key) && asked.iter().all(|(other, _)| other != key)
        };
        let next = |looking: &Looking| looking.list.iter().position(|key| waits(key, &looking.asked));
        let at = next(&looking).or_else(|| {
            let line_of = self.lines();
            let in_vain = |field: &String| {
                let key = self.asks_for(field, &line_of);
                key.is_some_and(|key| looking.asked.iter().any(|(other, _)| *other == key))
            };
            let in_vain: Vec<String> = open.iter().filter(|field| in_vain(field)).cloned().collect();
            if in_vain.is_empty() && !looking.asked.is_empty() {
                return None;
            }
            looking.list = self.looks(&judge::looks_beside(&self.plan(), &in_vain));
            looking.list.retain(|key| waits(key, &looking.asked));
            looking.lists += 1;
            next(&looking)
        });
        let Some(at) = at else {
            return Cursor::Front;
        };
        let key = looking.list[at].clone();
        looking.asked.push((key.clone(), LookAt { at, total: looking.list.len(), more: looking.lists > 1 }));
        self.looking = Some(looking);
        Cursor::At { key, from_page: Some("review".into()) }
    }

    /// Moves back to the previous thing to look up. `None` at the first.
    pub(super) fn look_back(&mut self) -> Option<Cursor> {
        let mut looking = self.looking.take()?;
        looking.asked.pop();
        let (key, _) = looking.asked.last()?.clone();
        self.looking = Some(looking);
        Some(Cursor::At { key, from_page: Some("review".into()) })
    }

    /// Returns the place of a question among the things to look at, if it is the one the user is at.
    pub(super) fn look_at(&self, key: &str) -> Option<LookAt> {
        let (asked, at) = self.looking.as_ref()?.asked.last()?;
        (asked == key).then_some(*at)
    }

    /// Starts going through the things to look up.
    pub(crate) fn start_looking(&mut self) {
        self.looking = Some(Looking::default());
        self.cursor = self.look_on();
    }
}

/// Progress through the things to look up.
#[derive(Clone, Debug, Default)]
pub(super) struct Looking {
    /// The keys of the questions to ask.
    list: Vec<String>,
    /// How many lists there were so far.
    lists: usize,
    /// The keys of the questions already asked, each with its place in its list.
    asked: Vec<(String, LookAt)>,
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::interview::draft_of;
    use crate::plan::arbitrary;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(96))]

        /// Every field on the look sheet of any plan has a question that asks for it.
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

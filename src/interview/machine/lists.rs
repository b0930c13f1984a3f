//! Lists answered all at once: what the user marks becomes parts, and existing parts show as marked.

use super::{Machine, Note, Place, part_key};
use crate::interview::draft::{Draft, Said};
use crate::interview::form;
use crate::interview::parts::{self, Ids};
use crate::interview::steps::{self, Group};
use crate::plan::problem::Value;
use crate::plan::{Refusal, bounds};
use crate::tables::occasions;

/// The id of the question about what runs in a camper. Its marks are existing loads.
pub(super) const INSIDE: &str = "gear-inside";

/// Where the parts of a list are stored in the draft.
struct List {
    /// The prefix of the keys of its parts.
    prefix: String,
    /// The field that says what a part is.
    field: &'static str,
    most: u8,
    /// The fewest parts that answer the list.
    least: u8,
}

impl List {
    /// Returns where the list is stored, or `None` for a list stored as one answer.
    fn of(place: &Place) -> Option<Self> {
        let (prefix, field, most, least) = match place.step.id {
            "outlet-list" => ("outlet".to_owned(), "face", steps::MOST_OUTLETS, 1),
            "load-list" => ("load".to_owned(), "what", steps::MOST_LOADS, 1),
            "gear-list" => ("gear".to_owned(), "what", steps::MOST_GEAR, 0),
            "out-list" => (format!("{}.out", part_key(Group::Gear, place.at)), "face", steps::MOST_OUTS, 1),
            _ => return None,
        };
        Some(Self { prefix, field, most, least })
    }

    fn key(&self, n: u8) -> String {
        format!("{}.{n}.{}", self.prefix, self.field)
    }

    /// Returns the key of the count of identical items, if the list stores them as one part.
    fn count_key(&self, n: u8, value: &str) -> Option<String> {
        let counted = match self.prefix.as_str() {
            "outlet" | "gear" => false,
            "load" => value != "own",
            _ => true,
        };
        counted.then(|| format!("{}.{n}.count", self.prefix))
    }

    /// Returns the first number that is not a part.
    fn end(&self, draft: &Draft) -> Option<u8> {
        (1..=self.most).find(|n| matches!(draft.text(&self.key(*n)), None | Some("done")))
    }

    /// Whether the user has ended the list.
    fn is_ended(&self, draft: &Draft) -> bool {
        self.end(draft).is_none_or(|end| draft.text(&self.key(end)).is_some())
    }

    /// Returns the remaining parts: number, value, and count.
    fn parts(&self, draft: &Draft) -> Vec<(u8, String, u8)> {
        let last = self.end(draft).unwrap_or(self.most + 1);
        let parts = (1..last).filter_map(|n| {
            let key = self.key(n);
            let value = draft.text(&key).filter(|value| *value != "removed")?;
            let whole = steps::face_said(draft, &key);
            let whole = whole.and_then(|said| said.text().map(str::to_owned));
            let count = self.count_key(n, value).and_then(|key| {
                let text = draft.text(&key)?;
                form::count(text, bounds::COUNT).ok()
            });
            Some((n, whole.unwrap_or_else(|| value.to_owned()), count.unwrap_or(1)))
        });
        parts.collect()
    }

    /// Returns the total count of each value, in list order.
    fn marked(&self, draft: &Draft) -> Vec<(u8, String)> {
        let mut marked = Vec::new();
        for (_, value, count) in self.parts(draft) {
            add(&mut marked, count, &value);
        }
        marked
    }

    /// Changes the count of one value: removes the last parts first, and adds new ones at the end.
    fn make(&self, draft: &mut Draft, value: &str, wanted: u8) -> Result<(), Refusal> {
        let mut there = self.parts(draft);
        there.retain(|(_, other, _)| other == value);
        let mut have = there.iter().fold(0_u8, |all, (.., count)| all.saturating_add(*count));
        for (n, _, count) in there.iter().rev() {
            let less = have.saturating_sub(wanted).min(*count);
            have -= less;
            if less == 0 {
                break;
            }
            if less == *count {
                draft.answers.insert(self.key(*n), Said::is("removed"));
            } else if let Some(key) = self.count_key(*n, value) {
                let count = count - less;
                draft.answers.insert(key, Said::is(count.to_string()));
            }
        }
        while have < wanted {
            let more = wanted - have;
            let same = there.first().filter(|_| have > 0);
            let same = same.and_then(|(n, _, count)| Some((self.count_key(*n, value)?, count)));
            if let Some((key, count)) = same {
                draft.answers.insert(key, Said::is((count + more).to_string()));
                return Ok(());
            }
            have += self.append(draft, value, more)?;
        }
        Ok(())
    }

    /// Returns the beginnings of the tokens by which answers refer to a part's places.
    fn places(&self, n: u8) -> Vec<String> {
        match self.prefix.split('.').collect::<Vec<_>>()[..] {
            ["outlet"] => vec![format!("outlet {n} ")],
            ["gear"] => ["cord", "box", "camper"].map(|part| format!("{part} {n} ")).to_vec(),
            ["gear", of, _] => vec![format!("box {of} {n} ")],
            _ => Vec::new(),
        }
    }

    /// Adds one part, holding as many identical items as one part can, and returns how many that is.
    fn append(&self, draft: &mut Draft, value: &str, count: u8) -> Result<u8, Refusal> {
        let end = self.end(draft);
        let removed = |n: &u8| draft.text(&self.key(*n)) == Some("removed");
        let free = (1..=self.most).find(|n| Some(*n) == end || removed(n));
        let n = free.ok_or_else(|| Refusal::new("full"))?;
        // Answers under this number, and whatever was plugged into its places, belonged to an earlier part.
        let own = format!("{}.{n}.", self.prefix);
        let places = self.places(n);
        let in_it = |key: &str, said: &Said| {
            let refers = [".from", ".on", ".shares", ".bonding"];
            let token = said.text().map(|text| format!("{text} "));
            let token = token.filter(|_| refers.iter().any(|field| key.ends_with(field)));
            token.is_some_and(|token| places.iter().any(|place| token.starts_with(place)))
        };
        draft.answers.retain(|key, said| !key.starts_with(&own) && !in_it(key, said));
        let next = (Some(n) == end && n < self.most).then(|| self.key(n + 1));
        draft.answers.extend(next.map(|key| (key, Said::is("done"))));
        let key = self.key(n);
        match (steps::breaker_key(&key), steps::split_face(value)) {
            (Some(breaker_key), Some((shape, breaker))) => {
                draft.answers.insert(breaker_key, Said::is(breaker));
                draft.answers.insert(key, Said::is(shape));
            }
            _ => {
                draft.answers.insert(key, Said::is(value));
            }
        }
        match self.count_key(n, value) {
            Some(key) => {
                if count > 1 {
                    draft.answers.insert(key, Said::is(count.to_string()));
                }
                Ok(count)
            }
            None => Ok(1),
        }
    }
}

fn add(marked: &mut Vec<(u8, String)>, count: u8, value: &str) {
    match marked.iter_mut().find(|(_, other)| other == value) {
        Some((before, _)) => *before = before.saturating_add(count),
        None => marked.push((count, value.to_owned())),
    }
}

fn text_of(marked: &[(u8, String)]) -> String {
    let one = |(count, value): &(u8, String)| form::picked(*count, value);
    marked.iter().map(one).collect::<Vec<_>>().join(", ")
}

impl Machine {
    /// Returns the ids of the loads in this camper.
    fn inside(&self, camper: u8) -> Vec<String> {
        let loads = parts::load_ids(&self.draft, &Ids::new(&self.draft)).into_iter();
        let inside = loads.filter(|(n, _)| parts::around(&self.draft, *n) == Some(camper));
        inside.map(|(_, id)| id).collect()
    }

    /// Moves the marked loads into a camper, and the unmarked ones out of it.
    fn keep_inside(&mut self, place: &Place, picks: &[(u8, &str)]) {
        let token = parts::Place::Inside(place.at.n).token();
        for (n, id) in parts::load_ids(&self.draft, &Ids::new(&self.draft)) {
            let marked = picks.iter().any(|(_, value)| *value == id);
            let is_in = parts::around(&self.draft, n) == Some(place.at.n);
            let on = if marked { &token } else { "any" };
            if marked || is_in {
                self.draft.answers.insert(format!("load.{n}.on"), Said::is(on));
            }
        }
        self.draft.answers.insert(place.key(), Said::is("done"));
    }

    /// Returns what is marked in a list, or `None` if the list is not answered.
    pub(super) fn marked(&self, place: &Place) -> Option<Said> {
        if self.may_be_unknown(place) && self.draft.get(&place.key()) == Some(&Said::Unknown) {
            return Some(Said::Unknown);
        }
        if place.step.id == INSIDE {
            self.draft.get(&place.key())?;
            let inside = self.inside(place.at.n);
            let none = inside.is_empty().then(|| "done".to_owned());
            return Some(Said::Is(none.unwrap_or_else(|| inside.join(", "))));
        }
        let Some(list) = List::of(place) else {
            // Each end of a cord is listed separately, so count those that are alike.
            let text = self.draft.text(&place.key())?;
            let mut marked = Vec::new();
            for end in form::faces(text)? {
                add(&mut marked, 1, &end.to_string());
            }
            return Some(Said::Is(text_of(&marked)));
        };
        let marked = list.marked(&self.draft);
        if !list.is_ended(&self.draft) || marked.len() < usize::from(list.least) {
            return None;
        }
        Some(Said::Is(if marked.is_empty() { "done".to_owned() } else { text_of(&marked) }))
    }

    /// Returns what is marked so far, even if the list is not ended.
    pub(super) fn marked_so_far(&self, place: &Place) -> Option<Said> {
        let marked = List::of(place)?.marked(&self.draft);
        (!marked.is_empty()).then(|| Said::Is(text_of(&marked)))
    }

    /// Checks that these marks may answer the list.
    pub(super) fn check_marked(&self, place: &Place, text: &str, rows: &[steps::Item]) -> Result<(), Refusal> {
        let picks = form::picks(text)?;
        // A plan file may hold more than can be marked here.
        let there = List::of(place).map(|list| list.marked(&self.draft));
        for (count, value) in &picks {
            let there = there.iter().flatten().any(|(have, it)| it == value && have >= count);
            if *count > form::MOST_PICKED && !there {
                return Err(Refusal::new("count").with("least", "1").with("most", form::MOST_PICKED.to_string()));
            }
            if *count > 1 && value.starts_with(steps::OCCASION) {
                return Err(Refusal::new("ready-made"));
            }
        }
        let alone = usize::from(place.step.id != INSIDE);
        let least = List::of(place).map_or(alone, |list| list.least.into());
        // Adding nothing to a list is fine.
        if picks.is_empty() && least > 0 && !self.is_adding() {
            return Err(Refusal::new("mark-one"));
        }
        let known = |value: &str| rows.iter().any(|row| row.value == value);
        let all = picks.iter().all(|(_, value)| known(value));
        let total: usize = picks.iter().map(|(count, _)| usize::from(*count)).sum();
        // The ends of a cord are a single answer, so their total is limited.
        let fits = List::of(place).is_some() || place.step.id == INSIDE || total <= usize::from(form::MOST_PICKED);
        if all && fits { Ok(()) } else { Err(Refusal::new("choice")) }
    }

    /// Turns the marked items into parts, replacing the existing ones or joining them.
    pub(super) fn keep_marked(&mut self, place: &Place, text: &str, beside: bool) -> Result<Option<Note>, Refusal> {
        let picks = form::picks(text)?;
        if place.step.id == INSIDE {
            self.keep_inside(place, &picks);
            return Ok(None);
        }
        let Some(list) = List::of(place) else {
            let each = picks.iter().flat_map(|(count, value)| vec![*value; usize::from(*count)]);
            let all: Vec<&str> = each.collect();
            self.draft.answers.insert(place.key(), Said::Is(all.join(",")));
            return Ok(None);
        };
        // The list is known now, so drop an earlier "I don't know".
        self.draft.answers.remove(&place.key());
        let before = list.marked(&self.draft);
        let mut wanted: Vec<(u8, String)> = if beside { before.clone() } else { Vec::new() };
        let mut usual = Vec::new();
        for (count, value) in picks {
            match value.strip_prefix(steps::OCCASION) {
                Some(occasion) => {
                    let occasion = occasions::named(occasion).ok_or_else(|| Refusal::new("choice"))?;
                    usual.extend(occasion.appliances.iter().map(String::as_str));
                }
                None => add(&mut wanted, count, value),
            }
        }
        let mut added = Vec::new();
        for thing in usual {
            if wanted.iter().all(|(_, other)| other != thing) {
                wanted.push((1, thing.to_owned()));
                added.push(format!("appliance-{thing}"));
            }
        }
        let gone = before.iter().filter(|(_, value)| wanted.iter().all(|(_, other)| other != value));
        let zero = gone.map(|(_, value)| (0, value.clone())).collect::<Vec<_>>();
        for (count, value) in zero.iter().chain(&wanted) {
            list.make(&mut self.draft, value, *count)?;
        }
        if let Some(end) = list.end(&self.draft) {
            self.draft.answers.insert(list.key(end), Said::is("done"));
        }
        Ok((!added.is_empty()).then(|| Note {
            key: "added",
            values: vec![("count", added.len().to_string().into()), ("things", Value::Words(added))],
        }))
    }
}

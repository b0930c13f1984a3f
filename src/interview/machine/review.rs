//! The review page, with the whole plan on one screen, and a page for each part.

use std::collections::BTreeSet;

use super::{Cursor, Kind, Machine, Place, Question, load_label};
use crate::interview::Input;
use crate::interview::draft::Said;
use crate::interview::parts::{self, Ids};
use crate::interview::steps::{Ask, Group, Item, Label, Suggestion, Takes};
use crate::plan::Refusal;
use crate::report::Assumption;

/// The key of the page that asks whether to quit.
pub(super) const QUIT: &str = "quit";

impl Machine {
    /// Returns the keys of the parts with a line on the review page.
    pub(super) fn parts(&self) -> Vec<String> {
        let draft = &self.draft;
        let mut parts = vec!["generator".to_owned()];
        parts.extend(parts::outlets(draft).map(|n| format!("outlet.{n}")));
        parts.push("outlets".into());
        parts.extend(parts::loads(draft).map(|n| format!("load.{n}")));
        parts.push("site".into());
        parts.push("fuel".into());
        for n in parts::gear(draft) {
            parts.push(format!("gear.{n}"));
            if parts::is_box(draft, n) {
                parts.extend(parts::outs(draft, n).map(|m| format!("gear.{n}.out.{m}")));
            }
        }
        parts
    }

    /// Returns the questions about one part.
    pub(super) fn of_part(&self, part: &str) -> Vec<Place> {
        let mut all = self.places();
        all.retain(|place| place.part() == part);
        all
    }

    pub(super) fn page(&self) -> Question {
        let (key, id, about, rows) = if self.cursor == Cursor::Part("add".into()) {
            let rows = [
                ("back", "pick-review-back"),
                ("add outlet", "pick-review-add-outlet"),
                ("add load", "pick-review-add-load"),
                ("add gear", "pick-review-add-gear"),
            ];
            let rows = rows.map(|(value, word)| plain_item(value, word)).into();
            ("add".into(), "review-add", None, rows)
        } else if self.cursor == Cursor::Part(QUIT.into()) {
            let rows = vec![plain_item("back", "pick-review-stay")];
            (QUIT.into(), "review-quit", None, rows)
        } else if let Cursor::Part(part) = &self.cursor {
            let mut rows: Vec<Item> = self
                .of_part(part)
                .iter()
                .map(|place| {
                    let title = Label::word(format!("ask-{}.row", place.step.id));
                    let row = Label::Row(Box::new(title), vec![self.shown(place)]);
                    Item::new(place.key(), row)
                })
                .collect();
            rows.insert(0, plain_item("back", "pick-review-back"));
            (part.clone(), "review-part", Some(self.title(part)), rows)
        } else {
            let mut rows = vec![plain_item("check", "pick-review-check")];
            let report = self.judged();
            let looks = self.looks(&report.figures.looks).len();
            if looks > 0 {
                let label = Label::Word("pick-review-look".into(), vec![("count", looks.to_string().into())]);
                rows.push(Item::new("look", label));
            }
            // An assumption about hours affects the energy only, and nobody can look up what holds for every camper.
            let counts = |it: &&Assumption| it.why != "all-day" && !it.of_all_campers();
            let line_of = self.lines();
            let assumed = report.figures.assumed.iter().filter(counts);
            let open = assumed.filter_map(|it| self.leaves_open(&it.field, &line_of));
            let open: BTreeSet<String> = open.collect();
            rows.extend(self.parts().iter().map(|part| self.line(part, &open)));
            rows.push(plain_item("add", "pick-review-add"));
            ("review".into(), "review", None, rows)
        };
        // In a plan that was checked before, the lookups are what is left to do.
        let looks = rows.iter().any(|row| row.value == "look");
        let start = match id {
            "review" if looks && self.draft.plan.is_some() => "look",
            "review" => "check",
            _ => "back",
        };
        Question {
            key,
            id,
            group: Group::Generator,
            about,
            kind: Kind::Page(rows),
            default: Suggestion::Said(Said::is(start)),
            besides: Vec::new(),
            in_turn: false,
            look: None,
        }
    }

    /// Returns a function that finds the key of a part's review line by the part's id.
    pub(super) fn lines(&self) -> impl Fn(&str) -> Option<String> {
        let ids = Ids::new(&self.draft);
        let loads = parts::load_ids(&self.draft, &ids);
        move |id: &str| {
            let mut parts = ids.all().filter(|(part, _)| !part.is_empty());
            let part = parts.find(|(_, other)| *other == id).map(|(part, _)| part);
            let load = || loads.iter().find(|(_, other)| other == id);
            part.or_else(|| load().map(|(n, _)| format!("load.{n}")))
        }
    }

    fn title(&self, part: &str) -> Label {
        let ids = Ids::new(&self.draft);
        let places = self.of_part(part);
        let of = places.first().map(|place| (place.step.group, place.at.n));
        match of {
            Some((Group::Outlet, n)) => Label::Plain(ids.outlet(n)),
            Some((Group::Load, n)) => load_label(&self.draft, n),
            Some((Group::Gear, n)) => Label::Plain(ids.gear(n)),
            Some((Group::Out, n)) => Label::Word("part-out".into(), vec![("box", ids.gear(n).into())]),
            _ => Label::word(format!("part-{part}")),
        }
    }

    /// Returns one line of the review page: the most important facts about the part.
    ///
    /// It is marked if the plan assumes the unsafe case for one of the part's questions in `open`.
    fn line(&self, part: &str, open: &BTreeSet<String>) -> Item {
        let mut shown = Vec::new();
        let mut unread = false;
        let places = self.of_part(part);
        let unused = match places.first() {
            Some(first) if part.starts_with("gear.") => parts::has_unknown_shape(&self.draft, first.at.n),
            _ => false,
        };
        // The line for all outlets shows which of them have a GFCI.
        let of_one = |key: &String| {
            let path: Vec<&str> = key.split('.').collect();
            part == "outlets" && matches!(path[..], ["outlet", _, "gfci"])
        };
        let marked = unused || open.iter().any(of_one) || places.iter().any(|place| open.contains(&place.key()));
        let asked = part != "fuel" || self.draft.text("fuel.more") == Some("yes");
        for place in places.into_iter().filter(|_| asked) {
            let said = self.draft.get(&place.key());
            let telling = matches!(
                place.step.id,
                "generator-name"
                    | "generator-rated"
                    | "generator-voltage"
                    | "generator-sets"
                    | "outlet-face"
                    | "outlet-breaker"
                    | "generator-fuel"
                    | "generator-tank"
                    | "generator-noise"
                    | "outlets-gfci"
                    | "outlets-odd"
                    | "load-draw"
                    | "load-count"
                    | "load-backup"
                    | "site-name"
                    | "site-ground"
                    | "site-sleepers"
                    | "gear-what"
                    | "gear-jacket"
                    | "gear-length"
                    | "gear-from"
                    | "out-face"
                    | "out-count"
                    | "out-breaker"
            );
            let text = said.and_then(Said::text);
            let dull = match place.step.id {
                "load-count" | "out-count" | "generator-sets" => text.unwrap_or("1") == "1",
                "outlets-odd" => text.unwrap_or("no") == "no",
                // A missing name is not worth showing.
                "generator-name" | "site-name" => text.is_none(),
                _ => false,
            };
            let unknown = matches!(said, Some(Said::Unknown));
            unread |= unknown;
            // For a part that is not in use, show only what it is.
            if telling && !dull && !unknown && (!unused || place.step.id == "gear-what") {
                let label = self.shown(&place);
                shown.push(match (place.step.id, text) {
                    ("load-count" | "out-count", Some(count)) => {
                        Label::Word("shown-times".into(), vec![("count", count.into())])
                    }
                    _ => label,
                });
            }
        }
        if unused {
            // First, where a narrow screen does not cut it off.
            shown.insert(0, Label::word("shown-unused"));
        }
        if shown.is_empty() {
            shown.push(Label::word(if unread { "shown-unknown" } else { "shown-open-one" }));
        }
        let row = Label::Row(Box::new(self.title(part)), shown);
        Item::new(part, if marked { Label::Marked(Box::new(row)) } else { row })
    }

    /// Returns the answer to a question as the reader sees it.
    fn shown(&self, place: &Place) -> Label {
        let said = self.earlier(place);
        let suggested = || match (place.ask, self.suggestion(place)) {
            // A question asked only on the review page keeps its suggestion until then.
            (Ask::Later, Suggestion::Said(said)) => Some(said),
            _ => None,
        };
        // A part that fits only one place is plugged in there without a question.
        let sole = || parts::fed_from(&self.draft, place.at.n);
        match said.or_else(suggested) {
            None if place.step.id == "gear-from" && sole().is_some() => {
                let at = sole().map(|at| Ids::new(&self.draft).of(at));
                Label::Word("shown-in".into(), vec![("place", at.unwrap_or_default().into())])
            }
            None => Label::word("shown-open-one"),
            Some(Said::Unknown) => Label::word("shown-unknown"),
            Some(Said::None) => Label::word(format!("pick-{}-none", place.step.id)),
            Some(Said::Word(word)) => Label::word(word),
            // Name the outlets that have a GFCI, rather than show "some".
            Some(Said::Is(text)) if place.key() == "outlets.gfci" && text == "some" => {
                let ids = Ids::new(&self.draft);
                let has = |n: &u8| self.draft.text(&format!("outlet.{n}.gfci")) == Some("yes");
                let told = |n: u8| self.draft.text(&format!("outlet.{n}.gfci")).is_some();
                let none =
                    if parts::outlets(&self.draft).all(told) { "pick-outlets-gfci-none" } else { "shown-unknown" };
                let has: Vec<String> = parts::outlets(&self.draft).filter(has).map(|n| ids.outlet(n)).collect();
                if has.is_empty() { Label::word(none) } else { Label::Plain(has.join(", ")) }
            }
            Some(Said::Is(text)) => match place.step.takes {
                Takes::YesNo => Label::word(format!("pick-{text}")),
                Takes::Typed(form) if form.has_numbers() => Label::Numbers(text),
                Takes::Typed(_) | Takes::Many(_) => Label::Plain(text),
                Takes::Pick(_) if text.ends_with('R') || text.ends_with('P') => Label::Plain(text),
                Takes::Pick(_) if place.step.id == "load-what" && text != "own" => {
                    Label::word(format!("appliance-{text}"))
                }
                _ => place.items(&self.draft).into_iter().find(|item| item.value == text).map_or(
                    Label::Plain(text),
                    |item| match item.label {
                        Label::Place(id, _) => Label::Word("shown-in".into(), vec![("place", id.into())]),
                        label => label,
                    },
                ),
            },
        }
    }

    pub(super) fn pick_line(&mut self, input: Input) -> Result<(), Refusal> {
        let page = self.page();
        let value = match input {
            Input::Answer(text) if !text.trim().is_empty() => text.trim().to_owned(),
            Input::Answer(_) | Input::Skip => match page.default {
                Suggestion::Said(Said::Is(value)) => value,
                _ => return Err(Refusal::new("choice")),
            },
            _ => return Err(Refusal::new("no-unknown")),
        };
        let Kind::Page(rows) = page.kind else {
            return Err(Refusal::new("choice"));
        };
        if !rows.iter().any(|row| row.value == value) {
            return Err(Refusal::new("choice"));
        }
        self.cursor = match value.as_str() {
            "add" => Cursor::Part("add".into()),
            // Fuel is not answered yet, so ask its questions in a row.
            "fuel" if self.draft.text("fuel.more") != Some("yes") => {
                self.draft.answers.insert("fuel.more".into(), Said::is("yes"));
                Cursor::Front
            }
            "check" => {
                self.over = true;
                Cursor::Front
            }
            "look" => {
                self.start_looking();
                return Ok(());
            }
            "back" => Cursor::Front,
            "add outlet" => add("outlets.faces"),
            "add load" => add("loads.what"),
            "add gear" => add("gears.what"),
            part if page.id == "review" => Cursor::Part(part.to_owned()),
            question => Cursor::At { key: question.to_owned(), from_page: Some(page.key) },
        };
        Ok(())
    }
}

/// Returns the position of the list that adds a part.
fn add(list: &str) -> Cursor {
    Cursor::At { key: list.to_owned(), from_page: Some("review".into()) }
}

fn plain_item(value: &str, word: &str) -> Item {
    Item::new(value, Label::word(word))
}

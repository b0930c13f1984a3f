//! The questions as data: their order, when each applies, what it takes, and what is suggested.
//!
//! A question's text is the message `ask-ID`, with the attributes `why`, `help` and `row`. The text of a choice is
//! `pick-ID-VALUE`.

mod faces;
mod gear;
mod generator;
mod loads;
mod outlets;
mod site;

pub(super) use faces::{breaker_key, face_said, split_face};
pub(super) use gear::{COMMON, GEAR, GEAR_AFTER, GEARS, MOST_GEAR, MOST_OUTS, OUT, OUT_LIST, adapters};
pub(super) use generator::{FUEL, GENERATOR, GENERATOR_AFTER};
pub(super) use loads::{LOAD, LOADS, MOST_LOADS, OCCASION};
pub(super) use outlets::{MOST_OUTLETS, OUTLET, OUTLET_AFTER, OUTLET_LIST, OUTLETS};
pub(super) use site::SITE;

use super::draft::{Draft, Said};
use super::form::Form;
use super::machine::Input;
use super::parts::{Ids, Place};
use crate::plan::problem::Value;
use crate::plan::{Choice, bounds};
use crate::tables::shape::{Configuration, Plug, Receptacle};

/// A part of the interview.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    /// The generator itself.
    Generator,
    /// The generator's fuel, tank and noise.
    Fuel,
    /// One outlet of the generator.
    Outlet,
    /// All outlets of the generator.
    Outlets,
    /// All loads.
    Loads,
    /// One load.
    Load,
    /// The site.
    Site,
    /// All cords, adapters and boxes.
    Gears,
    /// One cord, adapter or box.
    Gear,
    /// One kind of outlet of a box.
    Out,
}

/// The part a question is about: outlet `n`, load `n`, or outlet kind `m` of box `n`, from one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct At {
    /// The number of the part, or 0 if there is only one.
    pub n: u8,
    /// The number within the part, or 0 if it has none.
    pub m: u8,
}

/// When a question is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ask {
    /// Never, since it does not apply.
    No,
    /// In its turn.
    Flow,
    /// Only when picked on the review page. Until then its default or the plan's value holds.
    Later,
}

/// A text from the language files, or one that is the same in all languages.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Label {
    /// A message with its values.
    Word(String, Vec<(&'static str, Value)>),
    /// Literal text.
    Plain(String),
    /// Numbers with their units, in the notation of plans.
    Numbers(String),
    /// A place to plug in: its id and its shape.
    Place(String, Receptacle),
    /// A row that rests on an assumption.
    Marked(Box<Self>),
    /// A title and the answers shown with it.
    Row(Box<Label>, Vec<Label>),
}

impl Label {
    /// Creates a message without values.
    pub fn word(key: impl Into<String>) -> Self {
        Self::Word(key.into(), Vec::new())
    }
}

/// One choice of a list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Item {
    /// The value that is stored.
    pub value: String,
    /// The text that is shown.
    pub label: Label,
    /// The message with further words to find it by.
    pub also: Option<String>,
    /// The watts it draws, or 0. Of equal matches in a search, the smaller comes first.
    pub watts: u32,
}

impl Item {
    pub(super) fn new(value: impl Into<String>, label: Label) -> Self {
        Self { value: value.into(), label, also: None, watts: 0 }
    }

    /// Adds the words of this message to find it by.
    pub(super) fn found_by(self, also: impl Into<String>) -> Self {
        Self { also: Some(also.into()), ..self }
    }
}

/// The kind of answer a question takes.
#[derive(Clone, Copy, Debug)]
pub enum Takes {
    /// One item of a list.
    Pick(fn(&Draft, At) -> Vec<Item>),
    /// One item of a fixed list, with its texts under the question's id.
    OneOf(fn(&str) -> Vec<Item>),
    /// One of these values, with their texts under the question's id.
    Words(&'static [&'static str]),
    /// Several items of a list, with a count of each.
    Many(fn(&Draft, At) -> Vec<Item>),
    /// Yes or no.
    YesNo,
    /// Typed text.
    Typed(Form),
}

/// A suggested answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Suggestion {
    /// No suggestion.
    Nothing,
    /// This answer.
    Said(Said),
}

/// One question.
#[derive(Clone, Copy, Debug)]
#[allow(clippy::struct_excessive_bools)] // they are independent of each other
pub struct Step {
    /// The part it belongs to.
    pub group: Group,
    /// The name of its answer within the part. This is also the name of the plan field, if it fills just one.
    pub field: &'static str,
    /// The name of its messages.
    pub id: &'static str,
    /// The kind of answer it takes.
    pub takes: Takes,
    /// Whether "I don't know" is an answer.
    pub unknown: bool,
    /// Whether "none" is an answer.
    pub none: bool,
    /// Whether "not bought yet" is an answer. It holds for the whole thing.
    pub to_buy: bool,
    /// Whether the buyer decides this about a thing not bought yet. Everything else will be on its package.
    pub chosen: bool,
    /// When it is asked.
    pub when: fn(&Draft, At) -> Ask,
    /// The suggested answer.
    pub suggest: fn(&Draft, At) -> Suggestion,
}

impl PartialEq for Step {
    fn eq(&self, other: &Self) -> bool {
        (self.group, self.id) == (other.group, other.id)
    }
}

impl Eq for Step {}

const fn step(group: Group, field: &'static str, id: &'static str, takes: Takes) -> Step {
    Step {
        group,
        field,
        id,
        takes,
        unknown: false,
        none: false,
        to_buy: false,
        chosen: false,
        when: |_, _| Ask::Flow,
        suggest: |_, _| Suggestion::Nothing,
    }
}

impl Step {
    /// Returns the items to pick from, or `None` for a question without a list.
    pub fn items(&self, draft: &Draft, at: At) -> Option<Vec<Item>> {
        match self.takes {
            Takes::Pick(items) | Takes::Many(items) => Some(items(draft, at)),
            Takes::OneOf(items) => Some(items(self.id)),
            Takes::Words(values) => Some(words(self.id, values)),
            Takes::YesNo | Takes::Typed(_) => None,
        }
    }

    /// Returns the other inputs that count as an answer.
    pub fn besides(&self) -> Vec<Input> {
        let all = [(self.unknown, Input::Unknown), (self.none, Input::Skip), (self.to_buy, Input::NotBought)];
        all.into_iter().filter(|(is, _)| *is).map(|(_, it)| it).collect()
    }

    const fn unknown(mut self) -> Self {
        self.unknown = true;
        self
    }

    const fn chosen(mut self) -> Self {
        self.chosen = true;
        self
    }

    const fn none(mut self) -> Self {
        self.none = true;
        self
    }

    const fn or_to_buy(mut self) -> Self {
        self.to_buy = true;
        self
    }

    const fn when(mut self, when: fn(&Draft, At) -> Ask) -> Self {
        self.when = when;
        self
    }

    const fn later(mut self) -> Self {
        self.when = |_, _| Ask::Later;
        self
    }

    const fn suggest(mut self, suggest: fn(&Draft, At) -> Suggestion) -> Self {
        self.suggest = suggest;
        self
    }

    /// Suggests "I don't know", for questions where a wrong guess is worse than a cautious assumption.
    const fn rather_unknown(self) -> Self {
        self.unknown().suggest(|_, _| Suggestion::Said(Said::Unknown))
    }
}

/// Asks whether somebody felt a part get hot. No answer means no.
const fn hot(group: Group) -> Step {
    step(group, "hot", "hot", Takes::YesNo).later()
}

/// Asks whether a thing is already there. No answer means yes.
const fn bought(group: Group) -> Step {
    let bought = step(group, "bought", "bought", Takes::YesNo).later();
    bought.suggest(|_, _| said("yes"))
}

/// Asks how many plugs an outlet takes. Until somebody counts, the usual number for its shape holds.
const fn sockets(group: Group) -> Step {
    let takes = Takes::Typed(Form::Count(bounds::SOCKETS));
    let sockets = step(group, "sockets", "outlet-sockets", takes).later();
    sockets.suggest(|draft, at| {
        let face = match at.m {
            0 => format!("outlet.{}.face", at.n),
            m => format!("gear.{}.out.{m}.face", at.n),
        };
        let shape = draft.text(&face).and_then(Receptacle::named);
        shape.map_or(Suggestion::Nothing, |shape| said(shape.usual_sockets().to_string()))
    })
}

fn said(text: impl Into<String>) -> Suggestion {
    Suggestion::Said(Said::is(text))
}

/// Suggests the text of a message as a name.
fn word(key: impl Into<String>) -> Suggestion {
    Suggestion::Said(Said::Word(key.into()))
}

/// The arrangements of outlets that look alike, which give their names: by position, or by number.
const LIE: &[&str] = &["across", "down", "number"];

/// Asks in turn if `now`, and otherwise only on the review page.
const fn flow_if(now: bool) -> Ask {
    if now { Ask::Flow } else { Ask::Later }
}

/// Asks in turn if `so`, and otherwise not at all.
const fn only_if(so: bool) -> Ask {
    if so { Ask::Flow } else { Ask::No }
}

fn words(id: &str, values: &[&str]) -> Vec<Item> {
    values.iter().map(|value| Item::new(*value, Label::word(format!("pick-{id}-{value}")))).collect()
}

/// Returns all choices of a kind as items.
fn choices<C: Choice>(id: &str) -> Vec<Item> {
    let picks: Vec<String> = C::ALL.iter().map(|(choice, _)| choice.pick()).collect();
    let picks: Vec<&str> = picks.iter().map(String::as_str).collect();
    words(id, &picks)
}

/// Adds the item that removes a part again.
fn or_removed(mut items: Vec<Item>) -> Vec<Item> {
    items.push(Item::new("removed", Label::word("pick-removed")));
    items
}

fn plugs(shapes: &[Configuration]) -> Vec<Item> {
    let plugs = shapes.iter().copied().map(Plug);
    let item = |plug: Plug| {
        let item = Item::new(plug.to_string(), Label::word(format!("shape-{plug}")));
        item.found_by(format!("face-{}.also", Receptacle(plug.0)))
    };
    plugs.map(item).collect()
}

/// Returns what a load is called.
pub(super) fn load_label(draft: &Draft, n: u8) -> Label {
    let name = draft.text(&format!("load.{n}.name"));
    let what = draft.text(&format!("load.{n}.what")).unwrap_or_default();
    match name {
        Some(name) => Label::Plain(name.to_owned()),
        _ if what == "own" => Label::word("part-load"),
        _ => Label::word(format!("appliance-{what}")),
    }
}

fn place_item(draft: &Draft, ids: &Ids, place: Place) -> Option<Item> {
    let id = ids.of(place);
    let label = match (place.shape(draft), place) {
        (Some(shape), _) => Label::Place(id, shape),
        // A load can run in a camper whose plug is not known.
        (None, Place::Inside(_)) => Label::Plain(id),
        (None, _) => return None,
    };
    Some(Item::new(place.token(), label))
}

/// Returns every question there is.
#[cfg(test)]
pub(super) fn all() -> impl Iterator<Item = &'static Step> {
    [
        GENERATOR,
        GENERATOR_AFTER,
        FUEL,
        OUTLET_LIST,
        OUTLET,
        OUTLETS,
        OUTLET_AFTER,
        LOADS,
        LOAD,
        SITE,
        GEARS,
        GEAR,
        OUT_LIST,
        OUT,
        GEAR_AFTER,
    ]
    .into_iter()
    .flatten()
}

//! The questions, as data: in which order, when each applies, what it takes, what is suggested.
//!
//! A question's words are the message `ask-ID` with the attributes `why`, `help` and `row`; those
//! of a choice are `pick-ID-VALUE`.

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
    /// The set itself.
    Generator,
    /// Its fuel, tank and noise.
    Fuel,
    /// One of its outlets.
    Outlet,
    /// All of its outlets.
    Outlets,
    /// Everything to run.
    Loads,
    /// Something to run.
    Load,
    /// Where it stands.
    Site,
    /// All cords, adapters and boxes.
    Gears,
    /// A cord, adapter or box.
    Gear,
    /// A kind of outlet of a box.
    Out,
}

/// Which of its kind: outlet `n`, load `n`, kind of outlet `m` of box `n`; from one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct At {
    /// The number of the part; 0 where there is but one.
    pub n: u8,
    /// The number within the part; 0 where there is none.
    pub m: u8,
}

/// When a question is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ask {
    /// It does not apply.
    No,
    /// In its turn.
    Flow,
    /// Only when picked on the review page; until then its default or the plan's holds.
    Later,
}

/// A text from the language files, or one that is the same in all.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Label {
    /// A message, with values.
    Word(String, Vec<(&'static str, Value)>),
    /// As it stands.
    Plain(String),
    /// Numbers with their units, as plans keep them.
    Numbers(String),
    /// A place to plug in: its id and the message that describes its shape.
    Place(String, Receptacle),
    /// A row that holds something assumed.
    Marked(Box<Self>),
    /// A title and what is known of it.
    Row(Box<Label>, Vec<Label>),
}

impl Label {
    /// A message without values.
    pub fn word(key: impl Into<String>) -> Self {
        Self::Word(key.into(), Vec::new())
    }
}

/// One choice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Item {
    /// What is kept.
    pub value: String,
    /// What is shown.
    pub label: Label,
    /// The message with further words by which it is found.
    pub also: Option<String>,
    /// What it draws, where that tells it from others: of what is found alike the smaller comes first.
    pub watts: u32,
}

impl Item {
    pub(super) fn new(value: impl Into<String>, label: Label) -> Self {
        Self { value: value.into(), label, also: None, watts: 0 }
    }

    /// Found by the words of this message too.
    pub(super) fn found_by(self, also: impl Into<String>) -> Self {
        Self { also: Some(also.into()), ..self }
    }
}

/// What is taken for an answer.
#[derive(Clone, Copy, Debug)]
pub enum Takes {
    /// One of a list.
    Pick(fn(&Draft, At) -> Vec<Item>),
    /// One of a list that is always the same, whose words the question names.
    OneOf(fn(&str) -> Vec<Item>),
    /// The same by its values.
    Words(&'static [&'static str]),
    /// Several of a list, and how many of each.
    Many(fn(&Draft, At) -> Vec<Item>),
    /// Yes or no.
    YesNo,
    /// Typed text.
    Typed(Form),
}

/// A suggested answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Suggestion {
    /// Nothing is suggested.
    Nothing,
    /// This answer.
    Said(Said),
}

/// One question.
#[derive(Clone, Copy, Debug)]
#[allow(clippy::struct_excessive_bools)] // any of them may be with any other
pub struct Step {
    /// The part it belongs to.
    pub group: Group,
    /// The name of its answer within the part: the key of the plan that it fills, where it fills
    /// just one.
    pub field: &'static str,
    /// The name of its messages.
    pub id: &'static str,
    /// What it takes.
    pub takes: Takes,
    /// Whether "I don't know" is an answer.
    pub unknown: bool,
    /// Whether "none" is an answer.
    pub none: bool,
    /// Whether "not bought yet" is an answer: said of the whole thing.
    pub to_buy: bool,
    /// Whether somebody chooses it of what is not bought yet. Whatever else there is to know stands on its package then.
    pub chosen: bool,
    /// When it is asked.
    pub when: fn(&Draft, At) -> Ask,
    /// What is suggested.
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
    /// What there is to pick from, if it is a list.
    pub fn items(&self, draft: &Draft, at: At) -> Option<Vec<Item>> {
        match self.takes {
            Takes::Pick(items) | Takes::Many(items) => Some(items(draft, at)),
            Takes::OneOf(items) => Some(items(self.id)),
            Takes::Words(values) => Some(words(self.id, values)),
            Takes::YesNo | Takes::Typed(_) => None,
        }
    }

    /// What is an answer besides.
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

    /// Suggests "I don't know": where a wrong guess would be worse than a cautious assumption.
    const fn rather_unknown(self) -> Self {
        self.unknown().suggest(|_, _| Suggestion::Said(Said::Unknown))
    }
}

/// Whether somebody felt a part hot. Silence is a no, so nobody has to answer.
const fn hot(group: Group) -> Step {
    step(group, "hot", "hot", Takes::YesNo).later()
}

/// Whether a thing is there already. Silence is a yes.
const fn bought(group: Group) -> Step {
    let bought = step(group, "bought", "bought", Takes::YesNo).later();
    bought.suggest(|_, _| said("yes"))
}

/// How many plugs an outlet takes: until somebody counts them, as many as its shape mostly does.
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

/// The text of a message, as a name.
fn word(key: impl Into<String>) -> Suggestion {
    Suggestion::Said(Said::Word(key.into()))
}

/// How outlets lie that look alike, whose names are their places then.
const LIE: &[&str] = &["across", "down", "number"];

/// In its turn if so, else only on the review page.
const fn flow_if(now: bool) -> Ask {
    if now { Ask::Flow } else { Ask::Later }
}

/// In its turn if so, else not at all.
const fn only_if(so: bool) -> Ask {
    if so { Ask::Flow } else { Ask::No }
}

fn words(id: &str, values: &[&str]) -> Vec<Item> {
    values.iter().map(|value| Item::new(*value, Label::word(format!("pick-{id}-{value}")))).collect()
}

/// All choices of a kind.
fn choices<C: Choice>(id: &str) -> Vec<Item> {
    let picks: Vec<String> = C::ALL.iter().map(|(choice, _)| choice.pick()).collect();
    let picks: Vec<&str> = picks.iter().map(String::as_str).collect();
    words(id, &picks)
}

/// With the one that takes a part out again.
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

/// What a load is called.
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
        // What runs in a camper is in it, whatever its plug.
        (None, Place::Inside(_)) => Label::Plain(id),
        (None, _) => return None,
    };
    Some(Item::new(place.token(), label))
}

/// Every question there is.
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

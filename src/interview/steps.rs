//! The questions, as data: in which order, when each applies, what it takes, what is suggested.
//!
//! A question's words are the message `ask-ID` with the attributes `why`, `help` and `row`; those
//! of a choice are `pick-ID-VALUE`.

use super::draft::{Draft, Said};
use super::form::Form;
use super::parts::{self, Place};
use crate::plan::LoadKind;
use crate::quantity::Quantity;
use crate::tables::shape::{Circuit, Configuration, Plug, Receptacle};
use crate::tables::{appliances, occasions};

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
    /// Something to run.
    Load,
    /// Where it stands.
    Site,
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
    Word(String, Vec<(&'static str, String)>),
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
}

impl Item {
    fn new(value: impl Into<String>, label: Label) -> Self {
        Self {
            value: value.into(),
            label,
            also: None,
        }
    }
}

/// What is taken for an answer.
#[derive(Clone, Copy, Debug)]
pub enum Takes {
    /// One of a list.
    Pick(fn(&Draft, At) -> Vec<Item>),
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
    /// The text of this message.
    Word(&'static str),
}

/// One question.
#[derive(Clone, Copy, Debug)]
pub struct Step {
    /// The part it belongs to.
    pub group: Group,
    /// The name of its answer within the part.
    pub field: &'static str,
    /// The name of its messages.
    pub id: &'static str,
    /// What it takes.
    pub takes: Takes,
    /// Whether "I don't know" is an answer.
    pub unknown: bool,
    /// Whether "none" is an answer.
    pub none: bool,
    /// When it is asked.
    pub when: fn(&Draft, At) -> Ask,
    /// What is suggested.
    pub suggest: fn(&Draft, At) -> Suggestion,
}

impl PartialEq for Step {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id
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
        when: |_, _| Ask::Flow,
        suggest: |_, _| Suggestion::Nothing,
    }
}

impl Step {
    const fn unknown(mut self) -> Self {
        self.unknown = true;
        self
    }

    const fn none(mut self) -> Self {
        self.none = true;
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
        self.unknown()
            .suggest(|_, _| Suggestion::Said(Said::Unknown))
    }
}

fn said(text: impl Into<String>) -> Suggestion {
    Suggestion::Said(Said::is(text))
}

/// In its turn if so, else only on the review page.
const fn flow_if(now: bool) -> Ask {
    if now { Ask::Flow } else { Ask::Later }
}

fn words(id: &str, values: &[&str]) -> Vec<Item> {
    values
        .iter()
        .map(|value| Item::new(*value, Label::word(format!("pick-{id}-{value}"))))
        .collect()
}

// ---- The generator -------------------------------------------------------------------------

/// Asked once the review page has been told to; none of it is about danger.
fn more(draft: &Draft, _: At) -> Ask {
    flow_if(draft.text("fuel.more") == Some("yes"))
}

pub(super) const GENERATOR: &[Step] = &[
    step(
        Group::Generator,
        "name",
        "generator-name",
        Takes::Typed(Form::Name),
    )
    .later()
    .suggest(|_, _| Suggestion::Word("suggest-generator-name")),
    step(
        Group::Generator,
        "rated",
        "generator-rated",
        Takes::Typed(Form::Power),
    )
    .rather_unknown(),
    step(
        Group::Generator,
        "peak",
        "generator-peak",
        Takes::Typed(Form::Power),
    )
    .rather_unknown(),
    step(
        Group::Generator,
        "voltage",
        "generator-voltage",
        Takes::Pick(|_, _| words("generator-voltage", &["120", "120-240"])),
    )
    .unknown()
    .suggest(|_, _| said("120")),
    step(
        Group::Generator,
        "neutral",
        "generator-neutral",
        Takes::Pick(|_, _| words("generator-neutral", &["floating", "plug", "bonded"])),
    )
    .rather_unknown(),
    step(
        Group::Generator,
        "inverter",
        "generator-inverter",
        Takes::YesNo,
    )
    .rather_unknown(),
];

/// Fuel, tank and noise.
pub(super) const FUEL: &[Step] = &[
    step(
        Group::Fuel,
        "fuel",
        "generator-fuel",
        Takes::Pick(|_, _| words("generator-fuel", &["gasoline", "propane", "diesel"])),
    )
    .unknown()
    .when(more)
    .suggest(|_, _| said("gasoline")),
    step(
        Group::Fuel,
        "tank",
        "generator-tank",
        Takes::Typed(Form::Volume),
    )
    .rather_unknown()
    .when(more),
    step(
        Group::Fuel,
        "runtime",
        "generator-runtime",
        Takes::Typed(Form::Runtime),
    )
    .rather_unknown()
    .when(more),
    step(
        Group::Fuel,
        "noise",
        "generator-noise",
        Takes::Typed(Form::Noise),
    )
    .rather_unknown()
    .when(more),
];

// ---- Its outlets ---------------------------------------------------------------------------

/// The most outlets of a set.
pub(super) const MOST_OUTLETS: u8 = 12;

fn shapes(two_legs: bool) -> impl Iterator<Item = Receptacle> {
    Configuration::ALL
        .into_iter()
        // Nobody builds a set with a receptacle that has no ground.
        .filter(|c| c.grounded())
        .filter(move |c| two_legs || c.circuit() == Circuit::OneLeg)
        .map(Receptacle)
}

/// Each shape with the breaker that belongs to it, then each with another number: so that the
/// usual case is one answer and the other is not forgotten.
fn shape_items(two_legs: bool) -> Vec<Item> {
    let row = |shape: Receptacle, value: String, word: &str| {
        Item::new(
            value,
            Label::Word(
                word.into(),
                vec![
                    ("shape", format!("@face-{shape}")),
                    ("code", shape.to_string()),
                    ("amps", shape.0.rating().amount().to_string()),
                ],
            ),
        )
    };
    let usual = shapes(two_legs).map(|shape| row(shape, with_breaker(shape), "pick-face-usual"));
    let other = shapes(two_legs).map(|shape| row(shape, shape.to_string(), "pick-face-other"));
    usual.chain(other).collect()
}

/// A shape and the breaker that belongs to it, as one answer.
fn with_breaker(shape: Receptacle) -> String {
    format!("{shape} {}", usual_breaker(shape))
}

/// The breaker that belongs to a shape.
fn usual_breaker(shape: Receptacle) -> String {
    format!("{} A", shape.0.rating().amount())
}

/// The key of the breaker of the outlet whose shape has this key.
pub(super) fn breaker_key(face_key: &str) -> Option<String> {
    face_key
        .strip_suffix(".face")
        .map(|part| format!("{part}.breaker"))
}

/// Splits the answer that names a shape and its breaker.
pub(super) fn split_face(value: &str) -> Option<(&str, &str)> {
    value.split_once(' ')
}

/// Whether the outlet under this key has the breaker that belongs to its shape.
fn has_usual_breaker(draft: &Draft, face_key: &str) -> bool {
    let shape = draft.text(face_key).and_then(Receptacle::named);
    let breaker = breaker_key(face_key);
    let breaker = breaker.as_deref().and_then(|key| draft.text(key));
    matches!((shape, breaker), (Some(shape), Some(breaker)) if breaker == usual_breaker(shape))
}

/// What was answered for a shape, with its breaker where both were one answer.
pub(super) fn face_said(draft: &Draft, face_key: &str) -> Option<Said> {
    let shape = draft.text(face_key).and_then(Receptacle::named)?;
    has_usual_breaker(draft, face_key).then(|| Said::is(with_breaker(shape)))
}

fn usual(shape: &str) -> Suggestion {
    Receptacle::named(shape).map_or(Suggestion::Nothing, |shape| said(with_breaker(shape)))
}

/// The words that end a list come first, where Enter finds them; the one that takes a thing out
/// again, only where there is one.
fn ended(mut items: Vec<Item>, id: &str, draft: &Draft, key: &str, may_end: bool) -> Vec<Item> {
    if may_end {
        items.insert(0, Item::new("done", Label::word(format!("pick-{id}-done"))));
    }
    let here = draft.text(key);
    if here.is_some_and(|value| value != "done") {
        items.push(Item::new("removed", Label::word("pick-removed")));
    }
    items
}

fn outlet_faces(draft: &Draft, at: At) -> Vec<Item> {
    let two_legs = draft.text("generator.voltage") != Some("120");
    ended(
        shape_items(two_legs),
        "outlet-face",
        draft,
        &format!("outlet.{}.face", at.n),
        at.n > 1,
    )
}

fn odd(draft: &Draft, wanted: &str) -> bool {
    draft
        .text("outlets.odd")
        .is_some_and(|odd| odd == wanted || odd == "both")
}

pub(super) const OUTLET: &[Step] = &[
    step(
        Group::Outlet,
        "face",
        "outlet-face",
        Takes::Pick(outlet_faces),
    )
    .suggest(|draft, at| {
        if at.n > 1 {
            said("done")
        } else if draft.text("generator.voltage") == Some("120-240") {
            usual("L14-30R")
        } else {
            usual("5-20R")
        }
    }),
    step(
        Group::Outlet,
        "breaker",
        "outlet-breaker",
        Takes::Typed(Form::Current),
    )
    .unknown()
    .when(|draft, at| flow_if(!has_usual_breaker(draft, &format!("outlet.{}.face", at.n)))),
    step(
        Group::Outlet,
        "name",
        "outlet-name",
        Takes::Typed(Form::Ident),
    )
    .later()
    .suggest(|draft, at| said(parts::outlet_id(draft, at.n))),
    step(
        Group::Outlet,
        "sockets",
        "outlet-sockets",
        Takes::Typed(Form::Count),
    )
    .later()
    .suggest(|draft, at| {
        Receptacle::named(
            draft
                .text(&format!("outlet.{}.face", at.n))
                .unwrap_or_default(),
        )
        .map_or(Suggestion::Nothing, |shape| {
            said(shape.usual_sockets().to_string())
        })
    }),
    step(
        Group::Outlet,
        "leg",
        "outlet-leg",
        Takes::Pick(|_, _| words("outlet-leg", &["a", "b"])),
    )
    .rather_unknown()
    .when(|draft, at| {
        let face = draft
            .text(&format!("outlet.{}.face", at.n))
            .and_then(Receptacle::named);
        let one = face.is_some_and(|face| face.0.circuit() == Circuit::OneLeg);
        if one && draft.text("generator.voltage") == Some("120-240") {
            Ask::Later
        } else {
            Ask::No
        }
    }),
];

pub(super) const OUTLETS: &[Step] = &[
    step(
        Group::Outlets,
        "gfci",
        "outlets-gfci",
        Takes::Pick(|draft, _| {
            let several = parts::outlets(draft).count() > 1;
            words(
                "outlets-gfci",
                if several {
                    &["all", "none", "some"]
                } else {
                    &["all", "none"]
                },
            )
        }),
    )
    .rather_unknown(),
    step(
        Group::Outlets,
        "odd",
        "outlets-odd",
        Takes::Pick(|draft, _| {
            let several = parts::outlets(draft).count() > 1;
            words(
                "outlets-odd",
                if several {
                    &["no", "share", "early", "both"]
                } else {
                    &["no", "early"]
                },
            )
        }),
    )
    .suggest(|_, _| said("no")),
];

/// Asked of single outlets after the questions about all.
pub(super) const OUTLET_AFTER: &[Step] = &[
    step(Group::Outlet, "gfci", "outlet-gfci", Takes::YesNo)
        .rather_unknown()
        .when(|draft, _| {
            if draft.text("outlets.gfci") == Some("some") {
                Ask::Flow
            } else {
                Ask::No
            }
        }),
    step(
        Group::Outlet,
        "shares",
        "outlet-shares",
        Takes::Pick(|draft, at| {
            let mut items = words("outlet-shares", &["own"]);
            items.extend(parts::outlets(draft).filter(|n| *n < at.n).filter_map(|n| {
                let place = Place::Outlet(n);
                let shape = place.shape(draft)?;
                Some(Item::new(
                    place.token(),
                    Label::Place(place.id(draft), shape),
                ))
            }));
            items
        }),
    )
    .when(|draft, at| {
        let others = parts::outlets(draft).any(|n| n < at.n);
        if odd(draft, "share") && others {
            Ask::Flow
        } else {
            Ask::No
        }
    })
    .suggest(|_, _| said("own")),
    step(
        Group::Outlet,
        "trips",
        "outlet-trips",
        Takes::Typed(Form::Current),
    )
    .none()
    .when(|draft, _| {
        if odd(draft, "early") {
            Ask::Flow
        } else {
            Ask::No
        }
    })
    .suggest(|_, _| Suggestion::Said(Said::None)),
];

// ---- What is to run ------------------------------------------------------------------------

/// The most different things to run.
pub(super) const MOST_LOADS: u8 = 60;

/// Before the key of an occasion, where its usual things are picked all at once.
pub(super) const OCCASION: &str = "occasion-";

fn load_whats(draft: &Draft, at: At) -> Vec<Item> {
    let mut items: Vec<Item> = appliances::all()
        .iter()
        .map(|appliance| Item {
            value: appliance.key.clone(),
            label: Label::Word(
                "pick-load-what-appliance".into(),
                vec![
                    ("name", format!("@appliance-{}", appliance.key)),
                    ("watts", appliance.running.amount().to_string()),
                ],
            ),
            also: Some(format!("appliance-{}.also", appliance.key)),
        })
        .collect();
    let usual = occasions::all().iter().map(|occasion| Item {
        value: format!("{OCCASION}{}", occasion.key),
        label: Label::Word(
            "pick-load-what-occasion".into(),
            vec![
                ("name", format!("@occasion-{}", occasion.key)),
                ("count", occasion.appliances.len().to_string()),
            ],
        ),
        also: Some("pick-load-what-occasion.also".into()),
    });
    items.splice(0..0, usual);
    items.insert(0, Item::new("own", Label::word("pick-load-what-own")));
    ended(
        items,
        "load-what",
        draft,
        &format!("load.{}.what", at.n),
        at.n > 1,
    )
}

fn own(draft: &Draft, at: At) -> bool {
    draft.text(&format!("load.{}.what", at.n)) == Some("own")
}

fn own_first(draft: &Draft, at: At) -> Ask {
    flow_if(own(draft, at))
}

fn table(draft: &Draft, at: At) -> Option<&'static appliances::Appliance> {
    draft
        .text(&format!("load.{}.what", at.n))
        .and_then(appliances::named)
}

pub(super) const LOAD: &[Step] = &[
    step(Group::Load, "what", "load-what", Takes::Pick(load_whats)).suggest(|_, at| {
        if at.n > 1 {
            said("done")
        } else {
            Suggestion::Nothing
        }
    }),
    step(Group::Load, "name", "load-name", Takes::Typed(Form::Name))
        .when(own_first)
        .suggest(|draft, at| {
            table(draft, at).map_or(Suggestion::Nothing, |a| {
                Suggestion::Said(Said::is(format!("@appliance-{}", a.key)))
            })
        }),
    step(
        Group::Load,
        "kind",
        "load-kind",
        Takes::Pick(|_, _| {
            words(
                "load-kind",
                &["heater", "motor", "electronic", "lamp", "medical"],
            )
        }),
    )
    .unknown()
    .when(own_first)
    .suggest(|draft, at| {
        table(draft, at).map_or_else(|| said("motor"), |a| said(parts::kind_word(a.kind)))
    }),
    step(Group::Load, "draw", "load-draw", Takes::Typed(Form::Draw))
        .unknown()
        .when(own_first)
        .suggest(|draft, at| {
            table(draft, at).map_or(Suggestion::Nothing, |a| {
                said(format!("{} W", a.running.amount()))
            })
        }),
    step(
        Group::Load,
        "count",
        "load-count",
        Takes::Typed(Form::Count),
    )
    .when(own_first)
    .suggest(|_, _| said("1")),
    step(
        Group::Load,
        "starting",
        "load-starting",
        Takes::Typed(Form::Power),
    )
    .unknown()
    .when(|draft, at| {
        let motor = draft.text(&format!("load.{}.kind", at.n)) == Some("motor");
        flow_if(own(draft, at) && motor)
    })
    .suggest(|draft, at| {
        // The table's starting figure belongs to the table's running figure.
        let changed = draft.get(&format!("load.{}.draw", at.n)).is_some();
        table(draft, at)
            .filter(|_| !changed)
            .map_or(Suggestion::Said(Said::Unknown), |a| {
                said(format!("{} W", a.starting.amount()))
            })
    }),
    step(
        Group::Load,
        "factor",
        "load-factor",
        Takes::Typed(Form::Ratio),
    )
    .unknown()
    .later()
    .suggest(|draft, at| {
        table(draft, at).map_or(Suggestion::Said(Said::Unknown), |a| {
            said(a.power_factor.amount().to_string())
        })
    }),
    step(Group::Load, "continuous", "load-continuous", Takes::YesNo)
        .unknown()
        .when(own_first)
        .suggest(|draft, at| {
            table(draft, at).map_or(Suggestion::Said(Said::Unknown), |a| {
                said(if a.continuous { "yes" } else { "no" })
            })
        }),
    step(
        Group::Load,
        "plug",
        "load-plug",
        Takes::Pick(|_, _| plugs()),
    )
    .unknown()
    .when(own_first)
    .suggest(|_, _| said("5-15P")),
    step(
        Group::Load,
        "wanted",
        "load-wanted",
        Takes::Pick(|_, _| words("load-wanted", &["must", "wish"])),
    )
    .later()
    .suggest(|_, _| said("must")),
    step(
        Group::Load,
        "hours",
        "load-hours",
        Takes::Typed(Form::Spans),
    )
    .none()
    .later()
    .suggest(|_, _| Suggestion::Said(Said::None)),
    step(
        Group::Load,
        "on",
        "load-on",
        Takes::Pick(|draft, at| {
            let mut items = words("load-on", &["any"]);
            let plug = draft
                .text(&format!("load.{}.plug", at.n))
                .and_then(Plug::named)
                .unwrap_or(Plug(Configuration::N5_15));
            items.extend(
                parts::places(draft)
                    .into_iter()
                    .filter(|place| place.shape(draft).is_some_and(|shape| shape.takes(plug)))
                    .filter_map(|place| place_item(draft, place)),
            );
            items
        }),
    )
    .later()
    .suggest(|_, _| said("any")),
];

fn plugs() -> Vec<Item> {
    Configuration::ALL
        .into_iter()
        .map(Plug)
        .map(|plug| Item::new(plug.to_string(), Label::word(format!("shape-{plug}"))))
        .collect()
}

fn place_item(draft: &Draft, place: Place) -> Option<Item> {
    let shape = place.shape(draft)?;
    Some(Item::new(
        place.token(),
        Label::Place(place.id(draft), shape),
    ))
}

// ---- The site ------------------------------------------------------------------------------

pub(super) const SITE: &[Step] = &[
    step(Group::Site, "name", "site-name", Takes::Typed(Form::Name))
        .later()
        .suggest(|_, _| Suggestion::Word("suggest-site-name")),
    step(
        Group::Site,
        "ground",
        "site-ground",
        Takes::Pick(|_, _| words("site-ground", &["wet", "damp", "dry"])),
    )
    .unknown()
    .suggest(|_, _| said("wet")),
    step(
        Group::Site,
        "sleepers",
        "site-sleepers",
        Takes::Typed(Form::Length),
    )
    .rather_unknown(),
    step(
        Group::Site,
        "stands",
        "site-stands",
        Takes::Pick(|_, _| words("site-stands", &["open", "roof", "covered", "enclosed"])),
    )
    .unknown()
    .suggest(|_, _| said("open")),
    step(Group::Site, "alarm", "site-alarm", Takes::YesNo).rather_unknown(),
    step(Group::Site, "building", "site-building", Takes::YesNo)
        .unknown()
        .suggest(|_, _| said("no")),
    step(
        Group::Site,
        "altitude",
        "site-altitude",
        Takes::Typed(Form::Length),
    )
    .rather_unknown(),
    step(
        Group::Site,
        "air",
        "site-air",
        Takes::Typed(Form::Temperature),
    )
    .rather_unknown()
    .later(),
    step(Group::Site, "quiet", "site-quiet", Takes::Typed(Form::Span))
        .rather_unknown()
        .none()
        // Without hours everything can run by day, but for what someone's health depends on.
        .when(|draft, _| {
            flow_if(parts::loads(draft).any(|n| {
                let hours = draft.text(&format!("load.{n}.hours")).is_some();
                let table = draft
                    .text(&format!("load.{n}.what"))
                    .and_then(appliances::named)
                    .is_some_and(|table| table.kind == LoadKind::Medical);
                let told = draft.text(&format!("load.{n}.kind"));
                hours || told.map_or(table, |kind| kind == "medical")
            }))
        }),
];

// ---- Cords, adapters and boxes -------------------------------------------------------------

/// The most cords, adapters and boxes.
pub(super) const MOST_GEAR: u8 = 30;
/// The most kinds of outlets of one box.
pub(super) const MOST_OUTS: u8 = 8;

/// Common gear: the word for it, its plug and its ends. A box has no ends here.
pub(super) const COMMON: &[(&str, &str, &str)] = &[
    ("extension", "5-15P", "5-15R"),
    ("three-way", "5-15P", "5-15R,5-15R,5-15R"),
    ("strip", "5-15P", "5-15R,5-15R,5-15R,5-15R,5-15R,5-15R"),
    ("twist-30", "L5-30P", "L5-30R"),
    ("camper-30", "TT-30P", "TT-30R"),
    ("twist-30-four", "L14-30P", "L14-30R"),
    ("split-30", "L5-30P", "5-20R,5-20R,5-20R"),
    ("split-30-four", "L14-30P", "5-20R,5-20R,5-20R,5-20R"),
    ("camper-to-twist", "L5-30P", "TT-30R"),
    ("camper-to-home", "5-15P", "TT-30R"),
    ("home-to-camper", "TT-30P", "5-15R"),
    ("four-to-twist", "L14-30P", "L5-30R"),
    ("cord", "", ""),
    ("box-twist-30", "L5-30P", ""),
    ("box-camper-30", "TT-30P", ""),
    ("box-twist-30-four", "L14-30P", ""),
    ("box-50", "14-50P", ""),
    ("box", "", ""),
];

fn gear_whats(draft: &Draft, at: At) -> Vec<Item> {
    let words: Vec<&str> = COMMON.iter().map(|(word, ..)| *word).collect();
    ended(
        self::words("gear-what", &words),
        "gear-what",
        draft,
        &format!("gear.{}.what", at.n),
        true,
    )
}

/// First a cord for the largest outlet; after a cord that needs a box, the box; then the end.
fn likely_gear(draft: &Draft, at: At) -> Suggestion {
    let shapes: Vec<String> = parts::outlets(draft)
        .filter_map(|n| draft.text(&format!("outlet.{n}.face")))
        .map(str::to_owned)
        .collect();
    let has = |shape: &str| shapes.iter().any(|face| face == shape);
    let first = match at.n {
        1 if has("L14-30R") => "twist-30-four",
        1 if has("L5-30R") => "twist-30",
        1 if has("TT-30R") => "camper-30",
        1 => "extension",
        2 => match draft.text("gear.1.what") {
            Some("twist-30") => "box-twist-30",
            Some("twist-30-four") => "box-twist-30-four",
            _ => "done",
        },
        _ => "done",
    };
    said(first)
}

fn only_if(so: bool) -> Ask {
    if so { Ask::Flow } else { Ask::No }
}

fn is_box(draft: &Draft, at: At) -> bool {
    parts::is_box(draft, at.n)
}

fn if_cord(draft: &Draft, at: At) -> Ask {
    only_if(!is_box(draft, at))
}

pub(super) const GEAR: &[Step] = &[
    step(Group::Gear, "what", "gear-what", Takes::Pick(gear_whats)).suggest(likely_gear),
    step(
        Group::Gear,
        "plug",
        "gear-plug",
        Takes::Pick(|_, _| plugs()),
    )
    .when(|draft, at| {
        only_if(matches!(
            draft.text(&format!("gear.{}.what", at.n)),
            Some("cord" | "box")
        ))
    })
    .suggest(|_, _| said("5-15P")),
    step(Group::Gear, "ends", "gear-ends", Takes::Typed(Form::Faces))
        .when(|draft, at| only_if(draft.text(&format!("gear.{}.what", at.n)) == Some("cord")))
        .suggest(|draft, at| {
            parts::gear_plug(draft, at.n).map_or(Suggestion::Nothing, |plug| {
                said(Receptacle(plug.0).to_string())
            })
        }),
    step(
        Group::Gear,
        "jacket",
        "gear-jacket",
        Takes::Typed(Form::Jacket),
    )
    .rather_unknown()
    .when(if_cord),
    step(
        Group::Gear,
        "length",
        "gear-length",
        Takes::Typed(Form::Length),
    )
    .rather_unknown()
    .when(if_cord),
    step(Group::Gear, "outdoor", "gear-outdoor", Takes::YesNo)
        .rather_unknown()
        .when(|draft, at| {
            if is_box(draft, at) {
                return Ask::No;
            }
            // The letters of the jacket may have said it already.
            let told = draft
                .text(&format!("gear.{}.jacket", at.n))
                .and_then(|text| super::form::jacket(text).ok())
                .and_then(|jacket| jacket.outdoor);
            only_if(told.is_none())
        }),
    step(Group::Gear, "coiled", "gear-coiled", Takes::YesNo)
        .unknown()
        .when(if_cord)
        .suggest(|_, _| said("no")),
    step(Group::Gear, "gfci", "gear-gfci", Takes::YesNo)
        .unknown()
        .when(|draft, at| {
            if is_box(draft, at) {
                Ask::No
            } else {
                Ask::Later
            }
        })
        .suggest(|_, _| said("no")),
    step(Group::Gear, "listed", "gear-listed", Takes::YesNo)
        .rather_unknown()
        .when(|draft, at| only_if(is_box(draft, at))),
    step(Group::Gear, "bond", "gear-bond", Takes::YesNo)
        .rather_unknown()
        .when(|draft, at| {
            if !is_box(draft, at) {
                return Ask::No;
            }
            // Nobody can see it from outside. Of a factory-made box its papers tell, and the
            // review page takes that; until then it counts as not known.
            flow_if(draft.text(&format!("gear.{}.listed", at.n)) != Some("yes"))
        }),
];

fn out_faces(draft: &Draft, at: At) -> Vec<Item> {
    ended(
        shape_items(true),
        "out-face",
        draft,
        &format!("gear.{}.out.{}.face", at.n, at.m),
        at.m > 1,
    )
}

pub(super) const OUT: &[Step] = &[
    step(Group::Out, "face", "out-face", Takes::Pick(out_faces)).suggest(|_, at| {
        if at.m > 1 {
            said("done")
        } else {
            usual("5-20R")
        }
    }),
    step(Group::Out, "count", "out-count", Takes::Typed(Form::Count)).suggest(|_, _| said("1")),
    step(
        Group::Out,
        "breaker",
        "out-breaker",
        Takes::Typed(Form::Current),
    )
    .none()
    .rather_unknown()
    .when(|draft, at| {
        let face = format!("gear.{}.out.{}.face", at.n, at.m);
        flow_if(!has_usual_breaker(draft, &face))
    }),
    step(Group::Out, "gfci", "out-gfci", Takes::YesNo).rather_unknown(),
    step(Group::Out, "wire", "out-wire", Takes::Typed(Form::Wire))
        .rather_unknown()
        .later(),
];

/// Asked of a cord or box after its own questions, when its ends are known.
pub(super) const GEAR_AFTER: &[Step] = &[
    step(
        Group::Gear,
        "from",
        "gear-from",
        Takes::Pick(|draft, at| {
            let mut items: Vec<Item> = parts::may_feed(draft, at.n)
                .into_iter()
                .filter_map(|place| place_item(draft, place))
                .collect();
            items.push(Item::new("none", Label::word("pick-gear-from-none")));
            items
        }),
    )
    // With one place it fits there is nothing to ask; the review page can still change it.
    .when(|draft, at| {
        if parts::may_feed(draft, at.n).is_empty() {
            Ask::No
        } else {
            flow_if(parts::sole_feed(draft, at.n).is_none())
        }
    })
    .suggest(|draft, at| {
        parts::likely_feed(draft, at.n).map_or(Suggestion::Nothing, |place| said(place.token()))
    }),
    step(Group::Gear, "name", "gear-name", Takes::Typed(Form::Ident))
        .later()
        .suggest(|draft, at| said(parts::gear_id(draft, at.n))),
];

/// Every question there is.
#[cfg(test)]
pub(super) fn all() -> impl Iterator<Item = &'static Step> {
    [
        GENERATOR,
        FUEL,
        OUTLET,
        OUTLETS,
        OUTLET_AFTER,
        LOAD,
        SITE,
        GEAR,
        OUT,
        GEAR_AFTER,
    ]
    .into_iter()
    .flatten()
}

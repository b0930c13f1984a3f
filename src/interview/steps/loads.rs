//! Questions about the loads.

use super::Takes::{Many, OneOf, Pick, Typed, Words, YesNo};
use super::{
    Ask, At, Group, Item, Label, Step, Suggestion, Takes, choices, flow_if, hot, only_if, or_removed, place_item,
    plugs, said, step, word, words,
};
use crate::interview::draft::{Draft, Said};
use crate::interview::form::Form::{Count, Draw, Name, Ratio, Spans, Start};
use crate::interview::parts::{self, Ids};
use crate::plan::problem::Value;

use crate::plan::{Choice, LoadKind, Uses, Wanted, bounds};
use crate::quantity::Quantity;
use crate::tables::shape::{Configuration, Plug};
use crate::tables::{appliances, occasions};

const fn load(field: &'static str, id: &'static str, takes: Takes) -> Step {
    step(Group::Load, field, id, takes)
}

const fn loads(field: &'static str, id: &'static str, takes: Takes) -> Step {
    step(Group::Loads, field, id, takes)
}

/// The most different loads.
pub(in crate::interview) const MOST_LOADS: u8 = 60;

/// The prefix of an occasion's key in a list. Such an item picks all the usual appliances of the occasion.
pub(in crate::interview) const OCCASION: &str = "occasion-";

fn appliance_items(_: &Draft, _: At) -> Vec<Item> {
    let table = appliances::all().iter().map(|appliance| Item {
        value: appliance.key.clone(),
        label: Label::Word(
            "pick-load-what-appliance".into(),
            vec![
                ("name", Value::word(format!("appliance-{}", appliance.key))),
                ("watts", appliance.running.amount().to_string().into()),
            ],
        ),
        also: Some(format!("appliance-{}.also", appliance.key)),
        watts: u32::try_from(appliance.running.milliwatts() / 1000).unwrap_or(u32::MAX),
    });
    let own = Item::new("own", Label::word("pick-load-what-own"));
    std::iter::once(own).chain(table).collect()
}

fn load_list(draft: &Draft, at: At) -> Vec<Item> {
    let usual = occasions::all().iter().map(|occasion| Item {
        value: format!("{OCCASION}{}", occasion.key),
        label: Label::Word(
            "pick-load-what-occasion".into(),
            vec![
                ("name", Value::word(format!("occasion-{}", occasion.key))),
                ("count", occasion.appliances.len().to_string().into()),
            ],
        ),
        also: Some("pick-load-what-occasion.also".into()),
        watts: 0,
    });
    // Occasions come first because they ask nothing more. A user without a nameplate at hand is not led to an item that
    // asks for one.
    usual.chain(appliance_items(draft, at)).collect()
}

fn own(draft: &Draft, at: At) -> bool {
    draft.text(&format!("load.{}.what", at.n)) == Some("own")
}

fn own_first(draft: &Draft, at: At) -> Ask {
    flow_if(own(draft, at))
}

/// Suggests the table's figure, or "I don't know" for a load that is not in the table.
fn table(draft: &Draft, at: At, text: fn(&appliances::Appliance) -> String) -> Suggestion {
    let listed = parts::appliance(draft, at.n);
    listed.map_or(Suggestion::Said(Said::Unknown), |it| said(text(it)))
}

/// The question that lists all loads at once.
pub(in crate::interview) const LOADS: &[Step] = &[loads("what", "load-list", Many(load_list))];

pub(in crate::interview) const LOAD: &[Step] = &[
    load("what", "load-what", Pick(|draft, at| or_removed(appliance_items(draft, at)))).later(),
    load("name", "load-name", Typed(Name)).when(own_first).suggest(|draft, at| match parts::appliance(draft, at.n) {
        Some(listed) => word(format!("appliance-{}", listed.key)),
        None => word("suggest-load-name"),
    }),
    load("kind", "load-kind", OneOf(choices::<LoadKind>))
        .unknown()
        .when(own_first)
        .suggest(|draft, at| table(draft, at, |it| it.kind.pick())),
    load("running", "load-draw", Typed(Draw))
        .unknown()
        .when(own_first)
        .suggest(|draft, at| table(draft, at, |it| format!("{} W", it.running.amount()))),
    load("count", "load-count", Typed(Count(bounds::COUNT)))
        // The list already gave the count.
        .later()
        .suggest(|_, _| said("1")),
    load("starting", "load-starting", Typed(Start))
        .unknown()
        .when(|draft, at| {
            let kind = draft.text(&format!("load.{}.kind", at.n));
            let motor = kind.and_then(LoadKind::named) == Some(LoadKind::Motor);
            flow_if(own(draft, at) && motor)
        })
        .suggest(|draft, at| {
            // The table's starting figure belongs to its running figure.
            if draft.get(&format!("load.{}.running", at.n)).is_some() {
                return Suggestion::Said(Said::Unknown);
            }
            table(draft, at, |it| format!("{} W", it.starting.amount()))
        }),
    load("power_factor", "load-factor", Typed(Ratio(&bounds::POWER_FACTOR)))
        .unknown()
        .later()
        .suggest(|draft, at| table(draft, at, |it| it.power_factor.amount().to_string())),
    load("continuous", "load-continuous", YesNo)
        .unknown()
        .later()
        .suggest(|draft, at| table(draft, at, |it| if it.continuous { "yes" } else { "no" }.to_owned())),
    load("backup", "load-backup", Words(&["battery", "none"]))
        .rather_unknown()
        .when(|draft, at| only_if(parts::is_medical(draft, at.n))),
    load("plug", "load-plug", Pick(|_, _| plugs(&Configuration::ALL)))
        .unknown()
        // A load inside a camper may be wired in.
        .when(|draft, at| match parts::around(draft, at.n) {
            Some(_) => Ask::No,
            None => own_first(draft, at),
        })
        .suggest(|_, _| said("5-15P")),
    load("voltage", "load-voltage", OneOf(choices::<Uses>))
        .rather_unknown()
        .when(|draft, at| if parts::may_use_both(draft, at.n) { own_first(draft, at) } else { Ask::No }),
    load("wanted", "load-wanted", OneOf(choices::<Wanted>)).later().suggest(|_, _| said(Wanted::Must.pick())),
    load("hours", "load-hours", Typed(Spans)).none().later().suggest(|_, _| Suggestion::Said(Said::None)),
    load(
        "on",
        "load-on",
        Pick(|draft, at| {
            let mut items = words("load-on", &["any"]);
            let ids = Ids::new(draft);
            let plug =
                draft.text(&format!("load.{}.plug", at.n)).and_then(Plug::named).unwrap_or(Plug(Configuration::N5_15));
            let offers = parts::offers_load(draft, at.n, plug).into_iter();
            items.extend(offers.filter_map(|place| place_item(draft, &ids, place)));
            items
        }),
    )
    .later()
    .suggest(|_, _| said("any")),
    hot(Group::Load),
];

//! What is to run.

use super::{
    Ask, At, Group, Item, Label, Step, Suggestion, Takes, choices, flow_if, hot, or_removed,
    place_item, plugs, said, step, word, words,
};
use crate::interview::draft::{Draft, Said};
use crate::interview::form::Form;
use crate::interview::parts::{self, Ids};
use crate::plan::problem::Value;

use crate::plan::{Choice, LoadKind, Uses, Wanted, bounds};
use crate::quantity::Quantity;
use crate::tables::shape::{Configuration, Plug};
use crate::tables::{appliances, occasions};

/// The most different things to run.
pub(in crate::interview) const MOST_LOADS: u8 = 60;

/// Before the key of an occasion, where its usual things are picked all at once.
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
    });
    // First what asks for nothing more: who has no nameplate at hand is not led to what asks for it.
    usual.chain(appliance_items(draft, at)).collect()
}

fn own(draft: &Draft, at: At) -> bool {
    draft.text(&format!("load.{}.what", at.n)) == Some("own")
}

fn own_first(draft: &Draft, at: At) -> Ask {
    flow_if(own(draft, at))
}

fn table(draft: &Draft, at: At) -> Option<&'static appliances::Appliance> {
    parts::appliance(draft, at.n)
}

/// All at once.
pub(in crate::interview) const LOADS: &[Step] = &[step(
    Group::Loads,
    "what",
    "load-list",
    Takes::Many(load_list),
)];

pub(in crate::interview) const LOAD: &[Step] = &[
    step(
        Group::Load,
        "what",
        "load-what",
        Takes::Pick(|draft, at| or_removed(appliance_items(draft, at))),
    )
    .later(),
    step(Group::Load, "name", "load-name", Takes::Typed(Form::Name))
        .when(own_first)
        .suggest(|draft, at| {
            table(draft, at).map_or_else(
                || word("suggest-load-name"),
                |a| word(format!("appliance-{}", a.key)),
            )
        }),
    step(
        Group::Load,
        "kind",
        "load-kind",
        Takes::Pick(|_, _| choices::<LoadKind>("load-kind")),
    )
    .unknown()
    .when(own_first)
    .suggest(|draft, at| {
        table(draft, at).map_or(Suggestion::Said(Said::Unknown), |a| said(a.kind.pick()))
    }),
    step(
        Group::Load,
        "running",
        "load-draw",
        Takes::Typed(Form::Draw),
    )
    .unknown()
    .when(own_first)
    .suggest(|draft, at| {
        table(draft, at).map_or(Suggestion::Said(Said::Unknown), |a| {
            said(format!("{} W", a.running.amount()))
        })
    }),
    step(
        Group::Load,
        "count",
        "load-count",
        Takes::Typed(Form::Count(bounds::COUNT)),
    )
    // The list said how many.
    .later()
    .suggest(|_, _| said("1")),
    step(
        Group::Load,
        "starting",
        "load-starting",
        Takes::Typed(Form::Start),
    )
    .unknown()
    .when(|draft, at| {
        let kind = draft.text(&format!("load.{}.kind", at.n));
        let motor = kind.and_then(LoadKind::named) == Some(LoadKind::Motor);
        flow_if(own(draft, at) && motor)
    })
    .suggest(|draft, at| {
        // The table's starting figure belongs to the table's running figure.
        let changed = draft.get(&format!("load.{}.running", at.n)).is_some();
        table(draft, at)
            .filter(|_| !changed)
            .map_or(Suggestion::Said(Said::Unknown), |a| {
                said(format!("{} W", a.starting.amount()))
            })
    }),
    step(
        Group::Load,
        "power_factor",
        "load-factor",
        Takes::Typed(Form::Ratio(&bounds::POWER_FACTOR)),
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
        .later()
        .suggest(|draft, at| {
            table(draft, at).map_or(Suggestion::Said(Said::Unknown), |a| {
                said(if a.continuous { "yes" } else { "no" })
            })
        }),
    step(
        Group::Load,
        "backup",
        "load-backup",
        Takes::Pick(|_, _| words("load-backup", &["battery", "none"])),
    )
    .rather_unknown()
    .when(|draft, at| {
        if parts::is_medical(draft, at.n) {
            Ask::Flow
        } else {
            Ask::No
        }
    }),
    step(
        Group::Load,
        "plug",
        "load-plug",
        Takes::Pick(|_, _| plugs(&Configuration::ALL)),
    )
    .unknown()
    // What runs in a camper may be wired in.
    .when(|draft, at| match parts::around(draft, at.n) {
        Some(_) => Ask::No,
        None => own_first(draft, at),
    })
    .suggest(|_, _| said("5-15P")),
    step(
        Group::Load,
        "voltage",
        "load-voltage",
        Takes::Pick(|_, _| choices::<Uses>("load-voltage")),
    )
    .rather_unknown()
    .when(|draft, at| {
        if parts::may_use_both(draft, at.n) {
            own_first(draft, at)
        } else {
            Ask::No
        }
    }),
    step(
        Group::Load,
        "wanted",
        "load-wanted",
        Takes::Pick(|_, _| choices::<Wanted>("load-wanted")),
    )
    .later()
    .suggest(|_, _| said(Wanted::Must.pick())),
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
            let ids = Ids::new(draft);
            let plug = draft
                .text(&format!("load.{}.plug", at.n))
                .and_then(Plug::named)
                .unwrap_or(Plug(Configuration::N5_15));
            items.extend(
                parts::offers_load(draft, at.n, plug)
                    .into_iter()
                    .filter_map(|place| place_item(draft, &ids, place)),
            );
            items
        }),
    )
    .later()
    .suggest(|_, _| said("any")),
    hot(Group::Load),
];

//! Questions about the generator's outlets.

use super::Takes::{Many, OneOf, Pick, Typed, Words, YesNo};
use super::faces::{has_usual_breaker, shape_items};
use super::{
    Ask, At, Group, Item, LIE, Step, Suggestion, Takes, choices, flow_if, hot, only_if, or_removed, place_item, said,
    sockets, step, words,
};
use crate::interview::draft::{Draft, Said};
use crate::interview::form::Form::{Current, Ident};
use crate::interview::parts::{self, Ids, Place};
use crate::plan::{Leg, System, bounds};
use crate::tables::shape::{Circuit, Receptacle};

const fn outlet(field: &'static str, id: &'static str, takes: Takes) -> Step {
    step(Group::Outlet, field, id, takes)
}

const fn outlets(field: &'static str, id: &'static str, takes: Takes) -> Step {
    step(Group::Outlets, field, id, takes)
}

/// The most outlets of a generator.
pub(in crate::interview) const MOST_OUTLETS: u8 = 12;

/// Returns the receptacle shapes of a generator. 240 V shapes are always offered, since a receptacle is there whatever
/// was answered about volts.
fn outlet_faces(_: &Draft, _: At) -> Vec<Item> {
    shape_items(true)
}

/// The question that lists all outlets at once, and how those alike are arranged, since their positions name them.
pub(in crate::interview) const OUTLET_LIST: &[Step] = &[
    outlets("faces", "outlet-list", Many(outlet_faces)).chosen(),
    outlets("places", "outlets-places", Words(LIE))
        .when(|draft, _| only_if(parts::has_alike(draft)))
        .suggest(|_, _| said("number")),
];

pub(in crate::interview) const OUTLET: &[Step] = &[
    outlet("face", "outlet-face", Pick(|draft, at| or_removed(outlet_faces(draft, at)))).later(),
    outlet("breaker", "outlet-breaker", Typed(Current(&bounds::BREAKER)))
        .rather_unknown()
        .when(|draft, at| flow_if(!has_usual_breaker(draft, &format!("outlet.{}.face", at.n)))),
    outlet("name", "outlet-name", Typed(Ident)).later().suggest(|draft, at| said(Ids::new(draft).outlet(at.n))),
    sockets(Group::Outlet),
    outlet("leg", "outlet-leg", OneOf(choices::<Leg>)).rather_unknown().when(|draft, at| {
        let face = draft.text(&format!("outlet.{}.face", at.n)).and_then(Receptacle::named);
        let one = face.is_some_and(|face| face.0.circuit() == Circuit::OneLeg);
        if one && parts::legs(draft) == Some(System::V120_240) { Ask::Later } else { Ask::No }
    }),
    hot(Group::Outlet),
];

pub(in crate::interview) const OUTLETS: &[Step] = &[
    outlets(
        "gfci",
        "outlets-gfci",
        Pick(|draft, _| {
            let several = parts::outlets(draft).count() > 1;
            words("outlets-gfci", if several { &["all", "none", "some"] } else { &["all", "none"] })
        }),
    )
    .rather_unknown(),
    outlets(
        "odd",
        "outlets-odd",
        Pick(|draft, _| {
            let several = parts::outlets(draft).count() > 1;
            words("outlets-odd", if several { &["no", "share", "early", "both"] } else { &["no", "early"] })
        }),
    )
    // Not knowing this costs power, never safety, so it is left to the review page.
    .later()
    .suggest(|_, _| said("no")),
    // Without a bonding plug, or with only one receptacle that accepts it, there is nothing to pick.
    outlets(
        "bonding",
        "outlets-bonding",
        Pick(|draft, _| {
            let ids = Ids::new(draft);
            let items = parts::household_outlets(draft);
            items.filter_map(|n| place_item(draft, &ids, Place::Outlet(n))).collect()
        }),
    )
    .rather_unknown()
    .when(|draft, _| {
        let several = parts::household_outlets(draft).count() > 1;
        only_if(draft.text("generator.neutral") == Some("plug") && several)
    }),
];

/// Questions about single outlets, asked after those about all of them.
pub(in crate::interview) const OUTLET_AFTER: &[Step] = &[
    outlet("gfci", "outlet-gfci", YesNo)
        .rather_unknown()
        .when(|draft, _| only_if(draft.text("outlets.gfci") == Some("some"))),
    outlet(
        "shares",
        "outlet-shares",
        Pick(|draft, at| {
            let mut items = words("outlet-shares", &["own"]);
            let ids = Ids::new(draft);
            items.extend(
                parts::outlets(draft)
                    .filter(|n| *n < at.n)
                    // An outlet behind another's breaker has none of its own to share.
                    .filter(|n| parts::shares(draft, *n).is_none())
                    .filter_map(|n| place_item(draft, &ids, Place::Outlet(n))),
            );
            items
        }),
    )
    .when(|draft, at| {
        let others = parts::outlets(draft).any(|n| n < at.n);
        only_if(parts::odd(draft, "share") && others)
    })
    .suggest(|_, _| said("own")),
    outlet("trips_at", "outlet-trips", Typed(Current(&bounds::TRIPS_AT)))
        .none()
        .when(|draft, _| only_if(parts::odd(draft, "early")))
        .suggest(|_, _| Suggestion::Said(Said::None)),
];

//! The outlets of the set.

use super::faces::{has_usual_breaker, shape_items};
use super::{
    Ask, At, Group, Item, Step, Suggestion, Takes, choices, flow_if, hot, only_if, or_removed,
    place_item, said, step, words,
};
use crate::interview::draft::{Draft, Said};
use crate::interview::form::Form;
use crate::interview::parts::{self, Ids, Place};
use crate::plan::{Leg, System, bounds};
use crate::tables::shape::{Circuit, Receptacle};

/// The most outlets of a set.
pub(in crate::interview) const MOST_OUTLETS: u8 = 12;

/// A hole that needs 240 V is there whatever was said of volts.
fn outlet_faces(_: &Draft, _: At) -> Vec<Item> {
    shape_items(true)
}

/// All at once.
pub(in crate::interview) const OUTLET_LIST: &[Step] = &[step(
    Group::Outlets,
    "faces",
    "outlet-list",
    Takes::Many(outlet_faces),
)];

pub(in crate::interview) const OUTLET: &[Step] = &[
    step(
        Group::Outlet,
        "face",
        "outlet-face",
        Takes::Pick(|draft, at| or_removed(outlet_faces(draft, at))),
    )
    .later(),
    step(
        Group::Outlet,
        "breaker",
        "outlet-breaker",
        Takes::Typed(Form::Current(&bounds::BREAKER)),
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
    .suggest(|draft, at| said(Ids::new(draft).outlet(at.n))),
    step(
        Group::Outlet,
        "sockets",
        "outlet-sockets",
        Takes::Typed(Form::Count(bounds::SOCKETS)),
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
        Takes::Pick(|_, _| choices::<Leg>("outlet-leg")),
    )
    .rather_unknown()
    .when(|draft, at| {
        let face = draft
            .text(&format!("outlet.{}.face", at.n))
            .and_then(Receptacle::named);
        let one = face.is_some_and(|face| face.0.circuit() == Circuit::OneLeg);
        if one && parts::legs(draft) == Some(System::V120_240) {
            Ask::Later
        } else {
            Ask::No
        }
    }),
    hot(Group::Outlet),
];

pub(in crate::interview) const OUTLETS: &[Step] = &[
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
    // It costs power and no safety: who knows of it says so on the review page.
    .later()
    .suggest(|_, _| said("no")),
    // Without such a plug, or with one receptacle for it, there is nothing to pick.
    step(
        Group::Outlets,
        "bonding",
        "outlets-bonding",
        Takes::Pick(|draft, _| {
            let ids = Ids::new(draft);
            let items = parts::household_outlets(draft);
            items
                .filter_map(|n| place_item(draft, &ids, Place::Outlet(n)))
                .collect()
        }),
    )
    .rather_unknown()
    .when(|draft, _| {
        let several = parts::household_outlets(draft).count() > 1;
        only_if(draft.text("generator.neutral") == Some("plug") && several)
    }),
];

/// Asked of single outlets after the questions about all.
pub(in crate::interview) const OUTLET_AFTER: &[Step] = &[
    step(Group::Outlet, "gfci", "outlet-gfci", Takes::YesNo)
        .rather_unknown()
        .when(|draft, _| only_if(draft.text("outlets.gfci") == Some("some"))),
    step(
        Group::Outlet,
        "shares",
        "outlet-shares",
        Takes::Pick(|draft, at| {
            let mut items = words("outlet-shares", &["own"]);
            let ids = Ids::new(draft);
            items.extend(
                parts::outlets(draft)
                    .filter(|n| *n < at.n)
                    // A breaker is not shared on: it is that of the other's other.
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
    step(
        Group::Outlet,
        "trips_at",
        "outlet-trips",
        Takes::Typed(Form::Current(&bounds::TRIPS_AT)),
    )
    .none()
    .when(|draft, _| only_if(parts::odd(draft, "early")))
    .suggest(|_, _| Suggestion::Said(Said::None)),
];

//! Cords, adapters and boxes.

use super::faces::{has_usual_breaker, shape_items};
use super::{
    Ask, At, Group, Item, Label, Step, Suggestion, Takes, ended, flow_if, place_item, plugs, said,
    step, words,
};
use crate::interview::draft::Draft;
use crate::interview::form::{self, Form};
use crate::interview::parts::{self, Ids};
use crate::plan::bounds;
use crate::tables::shape::{Circuit, Receptacle};

/// The most cords, adapters and boxes.
pub(in crate::interview) const MOST_GEAR: u8 = 30;
/// The most kinds of outlets of one box.
pub(in crate::interview) const MOST_OUTS: u8 = 8;

/// Common gear: the word for it, its plug and its ends. A box has no ends here.
pub(in crate::interview) const COMMON: &[(&str, &str, &str)] = &[
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

fn only_if(so: bool) -> Ask {
    if so { Ask::Flow } else { Ask::No }
}

fn is_box(draft: &Draft, at: At) -> bool {
    parts::is_box(draft, at.n)
}

fn if_cord(draft: &Draft, at: At) -> Ask {
    only_if(!is_box(draft, at))
}

pub(in crate::interview) const GEAR: &[Step] = &[
    step(Group::Gear, "what", "gear-what", Takes::Pick(gear_whats))
        // Nobody has a cord by Enter alone.
        .suggest(|_, _| said("done")),
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
        Takes::Typed(Form::Length(&bounds::LENGTH)),
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
                .and_then(|text| form::jacket(text).ok())
                .and_then(|jacket| jacket.outdoor);
            only_if(told.is_none())
        }),
    step(Group::Gear, "coiled", "gear-coiled", Takes::YesNo)
        .rather_unknown()
        .when(if_cord),
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

/// Whether both legs come in: no other box has anything to feed a receptacle for 240 V from.
fn has_two_legs(draft: &Draft, at: At) -> bool {
    parts::gear_plug(draft, at.n).is_none_or(|inlet| inlet.0.circuit() != Circuit::OneLeg)
}

fn out_faces(draft: &Draft, at: At) -> Vec<Item> {
    ended(
        shape_items(has_two_legs(draft, at)),
        "out-face",
        draft,
        &format!("gear.{}.out.{}.face", at.n, at.m),
        at.m > 1,
    )
}

pub(in crate::interview) const OUT: &[Step] = &[
    step(Group::Out, "face", "out-face", Takes::Pick(out_faces)).suggest(|_, at| {
        if at.m > 1 {
            said("done")
        } else {
            Suggestion::Nothing
        }
    }),
    // A box with one outlet would hardly be a box.
    step(
        Group::Out,
        "count",
        "out-count",
        Takes::Typed(Form::Count(parts::OUT_COUNT)),
    )
    .suggest(|_, _| said("2")),
    step(
        Group::Out,
        "breaker",
        "out-breaker",
        Takes::Typed(Form::Current(&bounds::BREAKER)),
    )
    .none()
    .rather_unknown()
    .when(|draft, at| {
        let face = format!("gear.{}.out.{}.face", at.n, at.m);
        flow_if(!has_usual_breaker(draft, &face))
    }),
    step(Group::Out, "gfci", "out-gfci", Takes::YesNo).rather_unknown(),
    step(Group::Out, "leg", "out-leg", Takes::Typed(Form::Legs))
        .rather_unknown()
        .when(|draft, at| only_if(parts::has_leg(draft, at.n, at.m))),
    step(Group::Out, "wire", "out-wire", Takes::Typed(Form::Wire))
        .rather_unknown()
        .later(),
];

/// Asked of a cord or box after its own questions, when its ends are known.
pub(in crate::interview) const GEAR_AFTER: &[Step] = &[
    step(
        Group::Gear,
        "from",
        "gear-from",
        Takes::Pick(|draft, at| {
            let ids = Ids::new(draft);
            let mut items: Vec<Item> = parts::offers(draft, at.n)
                .into_iter()
                .filter_map(|place| place_item(draft, &ids, place))
                .collect();
            items.push(Item::new("none", Label::word("pick-gear-from-none")));
            items
        }),
    )
    // With one place it fits there is nothing to ask; the review page can still change it.
    .when(|draft, at| {
        if parts::fits_somewhere(draft, at.n) {
            flow_if(parts::sole_feed(draft, at.n).is_none())
        } else {
            Ask::No
        }
    })
    .suggest(|draft, at| match parts::likely_feed(draft, at.n) {
        Some(place) => said(place.token()),
        None => said("none"),
    }),
    step(Group::Gear, "name", "gear-name", Takes::Typed(Form::Ident))
        .later()
        .suggest(|draft, at| said(Ids::new(draft).gear(at.n))),
];

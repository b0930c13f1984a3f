//! Questions about cords, adapters and boxes.

use super::faces::{face_item, has_usual_breaker, shape_items};
use super::{
    Ask, At, Group, Item, LIE, Label, Step, Suggestion, Takes, bought, flow_if, hot, load_label, only_if, or_removed,
    place_item, plugs, said, sockets, step, words,
};
use crate::interview::build;
use crate::interview::draft::{Draft, Said};
use crate::interview::form::{self, Form};
use crate::interview::parts::{self, Ids, Place};
use crate::plan::{Cord, Id, bounds};
use crate::supply::Supply;
use crate::tables::shape::{Circuit, Configuration, Plug, Receptacle};
use crate::verdict::Verdicts;

/// The most cords, adapters and boxes together.
pub(in crate::interview) const MOST_GEAR: u8 = 30;
/// The most kinds of outlets of one box.
pub(in crate::interview) const MOST_OUTS: u8 = 8;

/// Common gear: its word, plug and ends. The outlets of a box are not listed here.
pub(in crate::interview) const COMMON: &[(&str, &str, &str)] = &[
    // First, so that nobody has to search for it. A camper's owner may have no other gear.
    ("camper", "", ""),
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

/// Returns the message keys of common adapters by which a part's plug fits an outlet of the generator.
pub(in crate::interview) fn adapters(draft: &Draft, n: u8) -> Vec<String> {
    let Some(plug) = parts::gear_plug(draft, n) else {
        return Vec::new();
    };
    let shapes = parts::outlets(draft).filter_map(|n| Place::Outlet(n).shape(draft));
    let shapes: Vec<Receptacle> = shapes.collect();
    let fits = |(_, own, ends): &&(&str, &str, &str)| {
        let goes_in = Plug::named(own).is_some_and(|own| shapes.iter().any(|it| it.takes(own)));
        goes_in && Receptacle::named(ends).is_some_and(|end| end.takes(plug))
    };
    let fitting = COMMON.iter().filter(fits);
    fitting.map(|(word, ..)| format!("pick-gear-what-{word}")).collect()
}

/// The plugs of campers, most common first.
const CAMPERS: [Configuration; 6] = [
    Configuration::TT30,
    Configuration::N14_50,
    Configuration::L5_30,
    Configuration::N5_15,
    Configuration::N5_20,
    Configuration::L14_30,
];

fn gear_whats(_: &Draft, _: At) -> Vec<Item> {
    let words: Vec<&str> = COMMON.iter().map(|(word, ..)| *word).collect();
    let found_by = |item: Item| {
        let kind = match item.value.as_str() {
            "camper" => "camper",
            what if what.starts_with("box") => "box",
            _ => "cord",
        };
        item.found_by(format!("pick-gear-what-{kind}.also"))
    };
    let items = self::words("gear-what", &words).into_iter();
    items.map(found_by).collect()
}

/// Returns the shapes of cord ends, described by what they look like. Ends have no breaker.
fn ends(_: &Draft, _: At) -> Vec<Item> {
    let faces = Configuration::ALL.into_iter().map(Receptacle);
    let item = |face| face_item(face, face.to_string(), "pick-face-end");
    faces.map(item).collect()
}

fn is_box(draft: &Draft, at: At) -> bool {
    parts::is_box(draft, at.n)
}

fn is_camper(draft: &Draft, at: At) -> bool {
    parts::is_camper(draft, at.n)
}

/// Asks about a box in turn. For a camper, the usual answer holds unless changed on the review page.
fn if_box(draft: &Draft, at: At) -> Ask {
    match (is_box(draft, at), is_camper(draft, at)) {
        (false, _) => Ask::No,
        (_, true) => Ask::Later,
        _ => Ask::Flow,
    }
}

/// Suggests what holds for every camper, and "I don't know" for any other box.
fn of_camper(draft: &Draft, at: At, usual: &str) -> Suggestion {
    if is_camper(draft, at) { said(usual) } else { Suggestion::Said(Said::Unknown) }
}

/// Returns the loads as items, by id.
fn things(draft: &Draft, _: At) -> Vec<Item> {
    let loads = parts::load_ids(draft, &Ids::new(draft)).into_iter();
    let item = |(n, id)| Item::new(id, load_label(draft, n));
    loads.map(item).collect()
}

/// Asks for the name of a part that has one from the plan file on the review page.
fn if_named(draft: &Draft, at: At) -> Ask {
    if draft.get(&format!("gear.{}.name", at.n)).is_some() { Ask::Later } else { Ask::No }
}

/// Asks for the color of every cord, and of boxes if there are several: a camp has many cords, and one box is “the box”.
fn if_colored(draft: &Draft, at: At) -> Ask {
    let is_box = |n: u8| parts::is_box(draft, n) && !parts::is_camper(draft, n);
    let color = draft.get(&format!("gear.{}.color", at.n));
    match if_named(draft, at) {
        _ if is_camper(draft, at) => Ask::No,
        // The name from the plan file stays until somebody changes it.
        Ask::Later if color.is_none() => Ask::No,
        _ => flow_if(!is_box(at.n) || parts::gear(draft).filter(|n| is_box(*n)).count() > 1),
    }
}

/// Returns the colors to name a part by.
fn colors(draft: &Draft, at: At) -> Vec<Item> {
    let mut values = parts::COLORS.to_vec();
    values.push("own");
    values.extend((!parts::has_twin(draft, at.n)).then_some("none"));
    words("gear-color", &values)
}

fn if_cord(draft: &Draft, at: At) -> Ask {
    only_if(!is_box(draft, at))
}

/// The question that lists all gear at once. Enter alone adds no cord.
pub(in crate::interview) const GEARS: &[Step] =
    &[step(Group::Gears, "what", "gear-list", Takes::Many(gear_whats)).suggest(|_, _| said("done"))];

pub(in crate::interview) const GEAR: &[Step] = &[
    step(Group::Gear, "what", "gear-what", Takes::Pick(|draft, at| or_removed(gear_whats(draft, at)))).later(),
    step(Group::Gear, "color", "gear-color", Takes::Pick(colors))
        .chosen()
        .when(if_colored)
        // Only the user can tell two alike apart, and a number would not say which is which.
        .suggest(|draft, at| if parts::has_twin(draft, at.n) { Suggestion::Nothing } else { said("none") }),
    step(Group::Gear, "name", "gear-name", Takes::Typed(Form::Ident))
        .chosen()
        .when(|draft, at| match draft.text(&format!("gear.{}.color", at.n)) {
            Some("own") => Ask::Flow,
            Some(_) => Ask::No,
            None if is_camper(draft, at) => flow_if(parts::has_twin(draft, at.n)),
            None => if_named(draft, at),
        })
        .suggest(
            |draft, at| {
                if parts::has_twin(draft, at.n) { Suggestion::Nothing } else { said(Ids::new(draft).gear(at.n)) }
            },
        ),
    step(
        Group::Gear,
        "plug",
        "gear-plug",
        Takes::Pick(|draft, at| if is_camper(draft, at) { plugs(&CAMPERS) } else { plugs(&Configuration::ALL) }),
    )
    .unknown()
    .chosen()
    .when(|draft, at| only_if(matches!(draft.text(&format!("gear.{}.what", at.n)), Some("cord" | "box" | "camper")))),
    step(Group::Gear, "breaker", "gear-main", Takes::Typed(Form::Current(&bounds::BREAKER)))
        .rather_unknown()
        // Few boxes have a main breaker. It is asked for a camper, and kept for review if a plan file gave one for a
        // box.
        .when(|draft, at| match draft.get(&format!("gear.{}.breaker", at.n)) {
            _ if is_camper(draft, at) => Ask::Flow,
            Some(_) if is_box(draft, at) => Ask::Later,
            _ => Ask::No,
        }),
    step(Group::Gear, "inside", "gear-inside", Takes::Many(things))
        .chosen()
        .when(|draft, at| only_if(is_camper(draft, at))),
    step(Group::Gear, "ends", "gear-ends", Takes::Many(ends))
        .unknown()
        .chosen()
        .when(|draft, at| only_if(draft.text(&format!("gear.{}.what", at.n)) == Some("cord"))),
    step(Group::Gear, "jacket", "gear-jacket", Takes::Typed(Form::Jacket)).rather_unknown().or_to_buy().when(if_cord),
    step(Group::Gear, "length", "gear-length", Takes::Typed(Form::Length(&bounds::LENGTH)))
        .rather_unknown()
        .chosen()
        .when(if_cord),
    step(Group::Gear, "outdoor", "gear-outdoor", Takes::YesNo).rather_unknown().when(|draft, at| {
        if is_box(draft, at) {
            return Ask::No;
        }
        // The letters on the jacket may answer this. If they could not be read, it waits for the review page.
        let told = draft.text(&format!("gear.{}.jacket", at.n));
        match told.and_then(|text| form::jacket(text).ok()) {
            Some(jacket) => only_if(jacket.outdoor.is_none()),
            None => Ask::Later,
        }
    }),
    step(Group::Gear, "coiled", "gear-coiled", Takes::YesNo).rather_unknown().when(|draft, at| {
        // Nobody coils an adapter.
        let length = draft.text(&format!("gear.{}.length", at.n));
        let length = length.and_then(|text| bounds::LENGTH.read(text).ok());
        match if_cord(draft, at) {
            Ask::Flow if length.is_some_and(|length| length <= Cord::TOO_SHORT_TO_COIL) => Ask::Later,
            ask => ask,
        }
    }),
    step(Group::Gear, "gfci", "gear-gfci", Takes::YesNo)
        .unknown()
        .when(|draft, at| if is_box(draft, at) { Ask::No } else { Ask::Later })
        .suggest(|_, _| said("no")),
    step(Group::Gear, "listed", "gear-listed", Takes::YesNo)
        .unknown()
        .or_to_buy()
        .suggest(|draft, at| of_camper(draft, at, "yes"))
        .when(if_box),
    step(Group::Gear, "bond", "gear-bond", Takes::YesNo)
        .unknown()
        .suggest(|draft, at| of_camper(draft, at, "no"))
        .when(|draft, at| {
            if !is_box(draft, at) {
                return Ask::No;
            }
            // It cannot be seen from outside. The papers say, and until then it counts as unknown.
            Ask::Later
        }),
    hot(Group::Gear),
    bought(Group::Gear),
];

/// Whether both legs come in. Any other box has nothing to feed a 240 V receptacle from.
fn has_two_legs(draft: &Draft, at: At) -> bool {
    parts::gear_plug(draft, at.n).is_none_or(|inlet| inlet.0.circuit() != Circuit::OneLeg)
}

fn out_faces(draft: &Draft, at: At) -> Vec<Item> {
    shape_items(has_two_legs(draft, at))
}

/// The question that lists all outlets of a box at once, with a count of each kind.
pub(in crate::interview) const OUT_LIST: &[Step] = &[step(Group::Gear, "outs", "out-list", Takes::Many(out_faces))
    .unknown()
    .chosen()
    .when(|draft, at| only_if(is_box(draft, at) && !is_camper(draft, at)))];

pub(in crate::interview) const OUT: &[Step] = &[
    step(Group::Out, "face", "out-face", Takes::Pick(|draft, at| or_removed(out_faces(draft, at)))).later(),
    step(Group::Out, "count", "out-count", Takes::Typed(Form::Count(parts::TYPED_OUT_COUNT)))
        .later()
        .suggest(|_, _| said("1")),
    sockets(Group::Out),
    step(Group::Out, "breaker", "out-breaker", Takes::Typed(Form::Current(&bounds::BREAKER)))
        .none()
        .rather_unknown()
        .when(|draft, at| {
            let face = format!("gear.{}.out.{}.face", at.n, at.m);
            flow_if(!has_usual_breaker(draft, &face))
        }),
    step(Group::Out, "gfci", "out-gfci", Takes::YesNo).rather_unknown(),
    // Two or three alike are named by position. Outlets from a plan file have names already.
    step(Group::Out, "places", "out-places", Takes::Words(LIE))
        .when(|draft, at| {
            let named = draft.text(&format!("gear.{}.out.{}.ids", at.n, at.m));
            let alone = parts::outs(draft, at.n).count() == 1;
            let few = parts::FEW.contains(&parts::out_count(draft, at.n, at.m));
            only_if(named.is_none() && alone && few)
        })
        .suggest(|_, _| said("number")),
    step(Group::Out, "leg", "out-leg", Takes::Typed(Form::Legs))
        .rather_unknown()
        // The papers say. Until then the worse leg is assumed.
        .when(|draft, at| if parts::has_leg(draft, at.n, at.m) { Ask::Later } else { Ask::No }),
    step(Group::Out, "wire", "out-wire", Takes::Typed(Form::Wire)).rather_unknown().later(),
    hot(Group::Out),
];

/// The question asked about a cord or box after its own questions, once all ends are known.
pub(in crate::interview) const GEAR_AFTER: &[Step] = &[step(
    Group::Gear,
    "from",
    "gear-from",
    Takes::Pick(|draft, at| {
        let ids = Ids::new(draft);
        let mut items: Vec<Item> =
            parts::offers(draft, at.n).into_iter().filter_map(|place| place_item(draft, &ids, place)).collect();
        items.push(Item::new("none", Label::word("pick-gear-from-none")));
        items
    }),
)
.unknown()
.chosen()
// With only one place to go there is nothing to ask, but the review page can still change it.
.when(
    |draft, at| {
        if parts::fits_somewhere(draft, at.n) { flow_if(parts::sole_feed(draft, at.n).is_none()) } else { Ask::No }
    },
)
.suggest(|draft, at| {
    let offers = parts::offers(draft, at.n);
    // Fall back on the only place it fits, where it is plugged in without a question.
    match likely_feed(draft, &offers).or_else(|| parts::sole_feed(draft, at.n)) {
        Some(place) => said(place.token()),
        None if offers.is_empty() => said("none"),
        None => Suggestion::Said(Said::Unknown),
    }
})];

/// Returns the place nearest to the generator that has a working GFCI and a breaker of known rating.
///
/// Places where either may be missing are never suggested.
fn likely_feed(draft: &Draft, offers: &[Place]) -> Option<Place> {
    let plan = build::plan(draft, &|key| key.to_owned());
    let supply = Supply::build(&plan);
    let verdicts = Verdicts::of(&plan, &supply);
    let ids = Ids::new(draft);
    let good = offers.iter().filter_map(|place| {
        let at = supply.receptacle(&Id::reference(&ids.of(*place))?)?;
        let good = verdicts.protected(at) && supply.own_breaker(at).is_some();
        good.then(|| (supply.up(at).count(), *place))
    });
    good.min().map(|(_, place)| place)
}

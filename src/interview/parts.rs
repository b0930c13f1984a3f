//! The parts in the answers: which ones exist, what they are called, and what fits where.

use std::collections::{BTreeMap, BTreeSet};

use super::draft::{Draft, Said};
use super::form;
use super::steps::{COMMON, MOST_GEAR, MOST_LOADS, MOST_OUTLETS, MOST_OUTS};
use crate::plan::bounds::{self, Whole};
use crate::plan::{Answer, Choice, Id, LoadKind, Span, System};
use crate::tables::appliances::{self, Appliance};
use crate::tables::shape::{Circuit, Configuration, Plug, Receptacle};

/// Returns the numbers of the remaining parts of a list: those before "done" that were not removed.
fn standing(draft: &Draft, most: u8, key: impl Fn(u8) -> String) -> impl Iterator<Item = u8> {
    (1..=most)
        .map_while(move |n| match draft.text(&key(n)) {
            None | Some("done") => None,
            Some(value) => Some((n, value != "removed")),
        })
        .filter_map(|(n, stands)| stands.then_some(n))
}

pub(super) fn outlets(draft: &Draft) -> impl Iterator<Item = u8> + use<'_> {
    standing(draft, MOST_OUTLETS, |n| format!("outlet.{n}.face"))
}

pub(super) fn loads(draft: &Draft) -> impl Iterator<Item = u8> + use<'_> {
    standing(draft, MOST_LOADS, |n| format!("load.{n}.what"))
}

pub(super) fn gear(draft: &Draft) -> impl Iterator<Item = u8> + use<'_> {
    standing(draft, MOST_GEAR, |n| format!("gear.{n}.what"))
}

/// Returns the kinds of outlets of a box. Empty if the outlets are unknown, whatever was listed before.
pub(super) fn outs(draft: &Draft, n: u8) -> impl Iterator<Item = u8> + use<'_> {
    let known = draft.get(&format!("gear.{n}.outs")) != Some(&Said::Unknown);
    standing(draft, MOST_OUTS, move |m| format!("gear.{n}.out.{m}.face")).filter(move |_| known)
}

/// Returns the table entry this load was picked from, if it was.
pub(super) fn appliance(draft: &Draft, n: u8) -> Option<&'static Appliance> {
    let what = draft.text(&format!("load.{n}.what"))?;
    appliances::named(what)
}

/// Whether someone's health depends on this load.
pub(super) fn is_medical(draft: &Draft, n: u8) -> bool {
    let table = appliance(draft, n).is_some_and(|table| table.kind == LoadKind::Medical);
    let told = draft.text(&format!("load.{n}.kind"));
    told.map_or(table, |kind| LoadKind::named(kind) == Some(LoadKind::Medical))
}

/// Whether a load's plug brings both 120 V and 240 V, so that the load may use either or both. Inside a camper, the
/// camper's plug counts.
pub(super) fn may_use_both(draft: &Draft, n: u8) -> bool {
    let plug = match around(draft, n) {
        Some(camper) => gear_plug(draft, camper),
        None => draft.text(&format!("load.{n}.plug")).and_then(Plug::named),
    };
    plug.is_some_and(|plug| plug.0.circuit() == Circuit::TwoLegsNeutral)
}

/// Returns the generator's voltage system, if it is known. A 240 V receptacle settles it, whatever was answered.
pub(super) fn legs(draft: &Draft) -> Option<System> {
    if has_240_volts(draft) {
        return Some(System::V120_240);
    }
    draft.text("generator.voltage").and_then(System::named)
}

/// Whether an outlet of the generator needs 240 V.
pub(super) fn has_240_volts(draft: &Draft) -> bool {
    let shapes = outlets(draft).filter_map(|n| Place::Outlet(n).shape(draft));
    shapes.map(|shape| shape.0.circuit()).any(|circuit| circuit != Circuit::OneLeg)
}

/// Whether each box outlet of this kind is on one of two incoming legs.
pub(super) fn has_leg(draft: &Draft, n: u8, m: u8) -> bool {
    let face = draft.text(&format!("gear.{n}.out.{m}.face"));
    let inlet = gear_plug(draft, n);
    legs(draft) == Some(System::V120_240)
        && inlet.is_some_and(|inlet| inlet.0.circuit() == Circuit::TwoLegsNeutral)
        && face.and_then(Receptacle::named).is_some_and(|face| face.0.circuit() == Circuit::OneLeg)
}

pub(super) fn is_box(draft: &Draft, n: u8) -> bool {
    draft.text(&format!("gear.{n}.what")).is_some_and(|what| what.starts_with("box") || what == "camper")
}

/// Whether a box is a camper.
pub(super) fn is_camper(draft: &Draft, n: u8) -> bool {
    draft.text(&format!("gear.{n}.what")) == Some("camper")
}

/// Returns the camper that a load runs in.
pub(super) fn around(draft: &Draft, load: u8) -> Option<u8> {
    let on = draft.text(&format!("load.{load}.on"))?;
    let mut campers = gear(draft).filter(|n| is_camper(draft, *n));
    campers.find(|n| Place::Inside(*n).token() == on)
}

/// Returns the words for a cord or box: the plain one, and the one that tells it from others of another shape.
fn gear_words(draft: &Draft, n: u8) -> [&'static str; 2] {
    match draft.text(&format!("gear.{n}.what")).unwrap_or_default() {
        "camper" => ["our-camper"; 2],
        "extension" => ["cord", "regular-cord"],
        "twist-30" => ["cord", "twist-cord"],
        "twist-30-four" => ["cord", "four-wire-cord"],
        "camper-30" => ["cord", "camper-cord"],
        "three-way" => ["three-way"; 2],
        "strip" => ["strip"; 2],
        "split-30" => ["splitter", "twist-splitter"],
        "split-30-four" => ["splitter", "four-wire-splitter"],
        "camper-to-twist" | "camper-to-home" => ["adapter", "camper-adapter"],
        "home-to-camper" => ["adapter", "regular-adapter"],
        "four-to-twist" => ["adapter", "twist-adapter"],
        "box-twist-30" => ["box", "twist-box"],
        "box-twist-30-four" => ["box", "four-wire-box"],
        "box-camper-30" => ["box", "camper-box"],
        "box-50" => ["box", "large-box"],
        "box" => ["box"; 2],
        _ => ["cord"; 2],
    }
}

/// Returns the word for a cord or box: the plain one, unless other gear needs the same word.
fn gear_word(draft: &Draft, n: u8) -> &'static str {
    let [alone, among] = gear_words(draft, n);
    let others = gear(draft).map(|other| gear_words(draft, other));
    let told_apart = others.into_iter().any(|[other, word]| other == alone && word != among);
    if told_apart { among } else { alone }
}

/// The colors by which cords and boxes are named.
pub(super) const COLORS: [&str; 9] = ["orange", "yellow", "green", "black", "blue", "red", "gray", "white", "brown"];

/// Returns the color that a cord or box is named by.
fn gear_color(draft: &Draft, n: u8) -> Option<&'static str> {
    let said = draft.text(&format!("gear.{n}.color"))?;
    COLORS.into_iter().find(|color| *color == said)
}

/// Whether a cord or box would be named by this color and the same word as another.
pub(super) fn has_color_of_other(draft: &Draft, n: u8, color: &str) -> bool {
    let word = gear_word(draft, n);
    gear(draft).any(|other| other != n && gear_color(draft, other) == Some(color) && gear_word(draft, other) == word)
}

/// Returns what a cord or box without a typed name is called, in the words of the code: its color, if it is named by
/// one, and its word. The color is enough unless other gear has both.
fn gear_called(draft: &Draft, n: u8) -> String {
    let Some(color) = gear_color(draft, n) else {
        return gear_word(draft, n).to_owned();
    };
    let [alone, among] = gear_words(draft, n);
    let mut others = gear(draft).filter(|other| *other != n && gear_color(draft, *other) == Some(color));
    let word = if others.any(|other| gear_words(draft, other)[0] == alone) { among } else { alone };
    colored(color, word)
}

/// Returns the name of a word and a color, in the words of the code.
pub(super) fn colored(color: &str, word: &str) -> String {
    format!("{color}-{word}")
}

/// Whether only a name can tell a cord or box from another.
pub(super) fn has_twin(draft: &Draft, n: u8) -> bool {
    let word = gear_word(draft, n);
    gear(draft).any(|other| other != n && gear_word(draft, other) == word)
}

/// Returns an outlet's position among the generator outlets that look alike, from one, and their number.
fn among_alike(draft: &Draft, n: u8) -> (u8, u8) {
    let word = |n: u8| Place::Outlet(n).shape(draft).map(shape_word);
    let alike: Vec<u8> = outlets(draft).filter(|other| word(*other) == word(n)).collect();
    let before = alike.iter().filter(|other| **other < n).count();
    let small = |count: usize| u8::try_from(count).unwrap_or(u8::MAX);
    (small(before + 1), small(alike.len()))
}

/// Whether some unnamed generator outlets look alike and are few enough to be named by position.
pub(super) fn has_alike(draft: &Draft) -> bool {
    let named = |n: &u8| draft.text(&format!("outlet.{n}.name")).is_some();
    outlets(draft).any(|n| !named(&n) && FEW.contains(&among_alike(draft, n).1))
}

/// The group sizes in which outlets are named by position.
pub(super) const FEW: std::ops::RangeInclusive<u8> = 2..=3;

fn common(draft: &Draft, n: u8) -> Option<(&'static str, &'static str)> {
    let what = draft.text(&format!("gear.{n}.what"))?;
    COMMON.iter().find(|(word, ..)| *word == what).map(|(_, plug, ends)| (*plug, *ends))
}

/// Returns the plug of a cord or box, as far as it was answered.
pub(super) fn gear_plug_said(draft: &Draft, n: u8) -> Answer<Plug> {
    match common(draft, n) {
        Some(("", _)) => draft.read(&format!("gear.{n}.plug"), Plug::named),
        common => common.and_then(|(plug, _)| Plug::named(plug)).map_or(Answer::Missing, Answer::Known),
    }
}

pub(super) fn gear_plug(draft: &Draft, n: u8) -> Option<Plug> {
    gear_plug_said(draft, n).known().copied()
}

/// Whether a part is not in use because its plug or its outlets are unknown.
pub(super) fn has_unknown_shape(draft: &Draft, n: u8) -> bool {
    let outlets = match (is_camper(draft, n), is_box(draft, n)) {
        (true, _) => false,
        (_, true) => draft.get(&format!("gear.{n}.outs")) == Some(&Said::Unknown),
        _ => gear_ends_said(draft, n) == Answer::Unknown,
    };
    outlets || gear_plug_said(draft, n) == Answer::Unknown
}

/// Returns the receptacles of a cord, as far as they were answered. `Missing` for a box.
pub(super) fn gear_ends_said(draft: &Draft, n: u8) -> Answer<Vec<Receptacle>> {
    match common(draft, n) {
        _ if is_box(draft, n) => Answer::Missing,
        Some(("", _)) => draft.read(&format!("gear.{n}.ends"), form::faces),
        common => common.and_then(|(_, ends)| form::faces(ends)).map_or(Answer::Missing, Answer::Known),
    }
}

pub(super) fn gear_ends(draft: &Draft, n: u8) -> Vec<Receptacle> {
    gear_ends_said(draft, n).known().cloned().unwrap_or_default()
}

/// Returns how many outlets of this kind a box has.
pub(super) fn out_count(draft: &Draft, n: u8, m: u8) -> u8 {
    draft.text(&format!("gear.{n}.out.{m}.count")).and_then(|text| form::count(text, OUT_COUNT).ok()).unwrap_or(1)
}

/// The number of outlets of one kind that a box may have.
pub(super) const OUT_COUNT: Whole = Whole { least: 1, most: 99 };
/// The number of outlets of one kind that can be typed. More is a slip.
pub(super) const TYPED_OUT_COUNT: Whole = Whole { least: 1, most: 12 };

/// Returns the number of parts as a plan counts them: outlets, ends of cords, and boxes. A cord without ends counts as
/// one.
pub(super) fn count(draft: &Draft) -> usize {
    let of_gear = |n: u8| {
        if is_box(draft, n) {
            let outs = outs(draft, n).map(|m| usize::from(out_count(draft, n, m)));
            1 + outs.sum::<usize>()
        } else {
            gear_ends(draft, n).len().max(1)
        }
    };
    outlets(draft).count() + gear(draft).map(of_gear).sum::<usize>()
}

/// Returns the number of loads, counting each unit of a load.
pub(super) fn load_count(draft: &Draft) -> usize {
    loads(draft).map(|n| usize::from(many(draft, n))).sum::<usize>()
}

/// Returns the number of units of a load.
pub(super) fn many(draft: &Draft, n: u8) -> u8 {
    draft.text(&format!("load.{n}.count")).and_then(|text| form::count(text, bounds::COUNT).ok()).unwrap_or(1)
}

/// Returns the generator outlets that accept a bonding plug.
pub(super) fn household_outlets(draft: &Draft) -> impl Iterator<Item = u8> {
    outlets(draft).filter(|n| {
        let shape = Place::Outlet(*n).shape(draft);
        shape.is_some_and(|shape| shape.takes(Plug::BONDING))
    })
}

/// Whether some of the generator's breakers have this oddity, `share` or `early`.
pub(super) fn odd(draft: &Draft, wanted: &str) -> bool {
    draft.text("outlets.odd").is_some_and(|odd| odd == wanted || odd == "both")
}

/// Returns the earlier outlet whose breaker this generator outlet is behind.
pub(super) fn shares(draft: &Draft, n: u8) -> Option<u8> {
    shared(draft, n, draft.text(&format!("outlet.{n}.shares"))?)
}

/// Returns the same for the answer `token`.
pub(super) fn shared(draft: &Draft, n: u8, token: &str) -> Option<u8> {
    outlets(draft)
        .filter(|other| odd(draft, "share") && *other < n)
        .find(|other| Place::Outlet(*other).token() == token)
}

/// A place to plug in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Place {
    /// An outlet of the generator.
    Outlet(u8),
    /// An end of a cord: the cord and the end, from one.
    End(u8, u8),
    /// An outlet of a box: the box, the kind, and the number within the kind, from one.
    Out(u8, u8, u8),
    /// The inside of a camper.
    Inside(u8),
}

impl Place {
    /// Returns how answers refer to it. Renaming a part does not change this.
    pub(super) fn token(self) -> String {
        match self {
            Self::Outlet(n) => format!("outlet {n}"),
            Self::End(n, end) => format!("cord {n} {end}"),
            Self::Out(n, m, copy) => format!("box {n} {m} {copy}"),
            Self::Inside(n) => format!("camper {n}"),
        }
    }

    fn part(self) -> Option<u8> {
        match self {
            Self::Outlet(_) => None,
            Self::End(n, _) | Self::Out(n, ..) | Self::Inside(n) => Some(n),
        }
    }

    pub(super) fn shape(self, draft: &Draft) -> Option<Receptacle> {
        match self {
            Self::Outlet(n) => draft.text(&format!("outlet.{n}.face")).and_then(Receptacle::named),
            Self::End(n, end) => gear_ends(draft, n).get(usize::from(end).checked_sub(1)?).copied(),
            Self::Out(n, m, _) => draft.text(&format!("gear.{n}.out.{m}.face")).and_then(Receptacle::named),
            Self::Inside(n) => gear_plug(draft, n).map(|plug| Receptacle(plug.0)),
        }
    }

    /// Returns how many plugs it takes, as answered or as usual for its shape.
    fn sockets(self, draft: &Draft, shape: Option<Receptacle>) -> usize {
        let told = match self {
            Self::Outlet(n) => {
                draft.text(&format!("outlet.{n}.sockets")).and_then(|text| form::count(text, bounds::SOCKETS).ok())
            }
            Self::End(..) => Some(1),
            Self::Out(n, m, copy) => told_sockets(draft, n, m, copy),
            // Any number of loads may run in a camper.
            Self::Inside(_) => Some(u8::MAX),
        };
        usize::from(told.unwrap_or_else(|| shape.map_or(1, Receptacle::usual_sockets)))
    }
}

/// Returns how many plugs a box outlet takes, if answered.
///
/// The answer is one number for all outlets of the kind or, from a plan file, one for each.
pub(super) fn told_sockets(draft: &Draft, n: u8, m: u8, copy: u8) -> Option<u8> {
    let each = draft.text(&format!("gear.{n}.out.{m}.sockets"))?;
    let own = usize::from(copy).checked_sub(1)?;
    let own = each.split(',').nth(if each.contains(',') { own } else { 0 })?;
    form::count(own, bounds::SOCKETS).ok()
}

/// Returns every place to plug in.
pub(super) fn places(draft: &Draft) -> Vec<Place> {
    let mut found: Vec<Place> = outlets(draft).map(Place::Outlet).collect();
    for n in gear(draft) {
        if is_box(draft, n) {
            for m in outs(draft, n) {
                found.extend((1..=out_count(draft, n, m)).map(|copy| Place::Out(n, m, copy)));
            }
            found.extend(is_camper(draft, n).then_some(Place::Inside(n)));
        } else {
            let ends = u8::try_from(gear_ends(draft, n).len()).unwrap_or(u8::MAX);
            found.extend((1..=ends).map(|end| Place::End(n, end)));
        }
    }
    found
}

/// Every place with its shape, and the chosen place of every part, read from the answers once.
struct Layout {
    places: Vec<(Place, Option<Receptacle>)>,
    /// How many plugs each place takes.
    sockets: BTreeMap<Place, usize>,
    /// The chosen place of each part, whether or not it still fits.
    chosen: BTreeMap<u8, Place>,
    /// The loads with a chosen place.
    loads: Vec<Plugged>,
}

/// A load with a chosen place.
struct Plugged {
    /// The load's number.
    n: u8,
    place: Place,
    count: usize,
    /// When the load is on. Empty if not answered.
    hours: Vec<Span>,
}

/// Returns the most sockets these loads take at one time. Loads that are on at different hours take turns.
fn at_once<'a>(loads: &(impl Iterator<Item = &'a Plugged> + Clone)) -> usize {
    let minutes = loads.clone().flat_map(|load| &load.hours).map(|span| span.from);
    std::iter::once(0)
        .chain(minutes)
        .map(|minute| {
            loads
                .clone()
                .filter(|load| load.hours.is_empty() || load.hours.iter().any(|span| span.contains(minute)))
                .map(|load| load.count)
                .sum()
        })
        .max()
        .unwrap_or(0)
}

impl Layout {
    fn new(draft: &Draft) -> Self {
        // All ends of a cord are one answer, so parse it once.
        let mut ends: BTreeMap<u8, Vec<Receptacle>> = BTreeMap::new();
        let shapes: Vec<(Place, Option<Receptacle>)> = places(draft)
            .into_iter()
            .map(|place| match place {
                Place::End(n, end) => {
                    let all = ends.entry(n).or_insert_with(|| gear_ends(draft, n));
                    (place, all.get(usize::from(end) - 1).copied())
                }
                _ => (place, place.shape(draft)),
            })
            .collect();
        let tokens: BTreeMap<String, Place> = shapes.iter().map(|(place, _)| (place.token(), *place)).collect();
        let chosen = gear(draft)
            .filter_map(|n| {
                let token = draft.text(&format!("gear.{n}.from"))?;
                Some((n, *tokens.get(token)?))
            })
            .collect();
        let loads = loads(draft)
            .filter_map(|n| {
                let token = draft.text(&format!("load.{n}.on"))?;
                let hours = draft.text(&format!("load.{n}.hours"));
                Some(Plugged {
                    n,
                    place: *tokens.get(token)?,
                    count: usize::from(many(draft, n)),
                    hours: hours.and_then(|text| form::spans(text).ok()).unwrap_or_default(),
                })
            })
            .collect();
        let sockets = shapes.iter().map(|(place, shape)| (*place, place.sockets(draft, *shape))).collect();
        Self { places: shapes, sockets, chosen, loads }
    }

    /// Whether the place has a free socket besides its loads and this many parts.
    fn has_room(&self, place: Place, gear: usize) -> bool {
        let loads = at_once(&self.loads.iter().filter(|load| load.place == place));
        gear + loads < self.sockets.get(&place).copied().unwrap_or(0)
    }

    /// Returns the places where a part's plug fits without feeding the part from itself.
    fn may_feed(&self, draft: &Draft, n: u8) -> Vec<Place> {
        let Some(plug) = gear_plug(draft, n) else {
            return Vec::new();
        };
        let feeds_itself = |place: Place| {
            let mut seen = BTreeSet::new();
            let mut part = place.part();
            while let Some(at) = part {
                if at == n {
                    return true;
                }
                if !seen.insert(at) {
                    return true;
                }
                part = self.chosen.get(&at).copied().and_then(Place::part);
            }
            false
        };
        self.places
            .iter()
            .filter(|(_, shape)| shape.is_some_and(|shape| shape.takes(plug)))
            .map(|(place, _)| *place)
            .filter(|place| !matches!(place, Place::Inside(_)) && !feeds_itself(*place))
            .filter(|place| place.part().is_none_or(|part| !has_unknown_shape(draft, part)))
            .collect()
    }

    /// Returns where each part up to `last` is plugged in, in order: the chosen place, or the only free place it fits.
    fn feeds(&self, draft: &Draft, last: u8) -> Vec<(u8, Option<Place>)> {
        let mut found: Vec<(u8, Option<Place>)> = Vec::new();
        for n in gear(draft).take_while(|n| *n <= last) {
            let said = draft.get(&format!("gear.{n}.from"));
            // The plan says nothing about where such a part goes, and nothing downstream of it is checked.
            let loose = matches!(said, Some(Said::Unknown))
                || said.and_then(Said::text) == Some("none")
                || has_unknown_shape(draft, n);
            let place = if loose {
                None
            } else {
                let fits = self.may_feed(draft, n);
                self.chosen
                    .get(&n)
                    .copied()
                    .filter(|place| fits.contains(place))
                    .or_else(|| sole(&self.free(&fits, &found), n))
            };
            found.push((n, place));
        }
        found
    }

    fn free(&self, fits: &[Place], taken: &[(u8, Option<Place>)]) -> Vec<Place> {
        let has_room = |place: &Place| self.has_room(*place, parts_in(taken, *place));
        fits.iter().copied().filter(has_room).collect()
    }

    /// Returns the places to offer a part.
    ///
    /// These are the places where its plug fits and a socket is free, and the place it is in, unless earlier parts take
    /// all sockets there.
    fn offers(&self, draft: &Draft, n: u8) -> Vec<Place> {
        let others: Vec<(u8, Option<Place>)> =
            self.feeds(draft, u8::MAX).into_iter().filter(|(other, _)| *other != n).collect();
        let before: Vec<_> = others.iter().copied().filter(|(other, _)| *other < n).collect();
        let own = |place: Place| {
            self.chosen.get(&n) == Some(&place)
                && parts_in(&before, place) < self.sockets.get(&place).copied().unwrap_or(0)
        };
        let fits = self.may_feed(draft, n).into_iter();
        fits.filter(|place| own(*place) || self.has_room(*place, parts_in(&others, *place))).collect()
    }
}

/// Returns how many of these parts are in a place.
fn parts_in(gear: &[(u8, Option<Place>)], at: Place) -> usize {
    gear.iter().filter(|(_, place)| *place == Some(at)).count()
}

/// Whether a part's plug fits anywhere without feeding the part from itself.
pub(super) fn fits_somewhere(draft: &Draft, n: u8) -> bool {
    !Layout::new(draft).may_feed(draft, n).is_empty()
}

/// Returns the places to offer a part.
pub(super) fn offers(draft: &Draft, n: u8) -> Vec<Place> {
    Layout::new(draft).offers(draft, n)
}

/// Returns the places to offer a load with this plug.
///
/// These are the places that accept the plug and have sockets free during the load's hours, and the place it is in,
/// unless gear and earlier loads take all sockets there.
pub(super) fn offers_load(draft: &Draft, n: u8, plug: Plug) -> Vec<Place> {
    let layout = Layout::new(draft);
    let gear = layout.feeds(draft, u8::MAX);
    let hours = draft.text(&format!("load.{n}.hours"));
    let hours = hours.and_then(|text| form::spans(text).ok()).unwrap_or_default();
    let own = layout.loads.iter().find(|load| load.n == n).map(|load| load.place);
    // A load inside a camper needs no plug.
    let fits = |(place, shape): &&(Place, Option<Receptacle>)| {
        matches!(place, Place::Inside(_)) || shape.is_some_and(|shape| shape.takes(plug))
    };
    let places = layout.places.iter().filter(fits);
    places
        .map(|(place, _)| *place)
        .filter(|place| {
            let this = Plugged { n, place: *place, count: usize::from(many(draft, n)), hours: hours.clone() };
            let others = layout
                .loads
                .iter()
                .filter(|load| load.place == *place && (load.n < n || (load.n > n && own != Some(*place))));
            let taken = at_once(&others.chain([&this]));
            parts_in(&gear, *place) + taken <= layout.sockets.get(place).copied().unwrap_or(0)
        })
        .collect()
}

/// Returns the only free place, if it is on the generator or on an earlier part.
///
/// Looking backward only, no two parts can end up feeding each other without a question.
fn sole(free: &[Place], n: u8) -> Option<Place> {
    match free {
        [place] if place.part().is_none_or(|part| part < n) => Some(*place),
        _ => None,
    }
}

/// Returns the free places where a part's plug fits.
fn free_feeds(draft: &Draft, n: u8) -> Vec<Place> {
    let layout = Layout::new(draft);
    let taken = n.checked_sub(1).map(|last| layout.feeds(draft, last));
    layout.free(&layout.may_feed(draft, n), &taken.unwrap_or_default())
}

/// Whether a part has more than one free place on the generator and the earlier parts.
pub(super) fn has_choice(draft: &Draft, n: u8) -> bool {
    let before = |place: &&Place| place.part().is_none_or(|part| part < n);
    free_feeds(draft, n).iter().filter(before).count() > 1
}

/// Returns where a part is plugged in: the chosen place, or the only free place it fits.
pub(super) fn fed_from(draft: &Draft, n: u8) -> Option<Place> {
    Layout::new(draft).feeds(draft, n).into_iter().find(|(other, _)| *other == n).and_then(|(_, place)| place)
}

/// Returns what is plugged in past a part, directly or not: gear and loads, by their numbers.
pub(super) fn past(draft: &Draft, n: u8) -> (BTreeSet<u8>, BTreeSet<u8>) {
    let layout = Layout::new(draft);
    let feeds = layout.feeds(draft, u8::MAX);
    let mut past = BTreeSet::from([n]);
    let fed_from = |past: &BTreeSet<u8>, place: Place| place.part().is_some_and(|part| past.contains(&part));
    // Each round adds what is one plug further.
    for _ in &feeds {
        let fed = feeds.iter().filter(|(_, place)| place.is_some_and(|place| fed_from(&past, place)));
        let fed: Vec<u8> = fed.map(|(part, _)| *part).collect();
        past.extend(fed);
    }
    let loads = layout.loads.iter().filter(|load| fed_from(&past, load.place)).map(|load| load.n).collect();
    past.remove(&n);
    (past, loads)
}

/// Returns the only free place a part fits, if nothing needs to be asked.
pub(super) fn sole_feed(draft: &Draft, n: u8) -> Option<Place> {
    sole(&free_feeds(draft, n), n)
}

/// The words in the code for outlets and loads without a name. Their messages are `id-WORD`.
pub(super) const WORDS: [&str; 11] =
    ["regular", "camper", "twist", "large", "outlet", "load", "left", "right", "top", "bottom", "middle"];

/// The same for cords and boxes: the plain word, and the words that tell its shapes apart.
pub(super) const GEAR_WORDS: [(&str, &[&str]); 7] = [
    ("our-camper", &[]),
    ("cord", &["regular-cord", "twist-cord", "four-wire-cord", "camper-cord"]),
    ("three-way", &[]),
    ("strip", &[]),
    ("splitter", &["twist-splitter", "four-wire-splitter"]),
    ("adapter", &["camper-adapter", "regular-adapter", "twist-adapter"]),
    ("box", &["twist-box", "four-wire-box", "camper-box", "large-box"]),
];

/// Returns the word for the position of one of several outlets, given how they are arranged.
fn place_word(lie: Option<&str>, (at, count): (u8, u8)) -> Option<&'static str> {
    let words: &[&str] = match (lie?, count) {
        ("across", 2) => &["left", "right"],
        ("across", 3) => &["left", "middle", "right"],
        ("down", 2) => &["top", "bottom"],
        ("down", 3) => &["top", "middle", "bottom"],
        _ => &[],
    };
    words.get(usize::from(at).checked_sub(1)?).copied()
}

/// Returns the everyday word for an outlet of this shape.
const fn shape_word(shape: Receptacle) -> &'static str {
    match shape.0 {
        Configuration::N1_15 | Configuration::N5_15 | Configuration::N5_20 => "regular",
        Configuration::TT30 => "camper",
        Configuration::L5_20 | Configuration::L5_30 | Configuration::L14_20 | Configuration::L14_30 => "twist",
        Configuration::N6_20 | Configuration::N14_30 | Configuration::N14_50 => "large",
    }
}

/// The ids of the parts in the plan.
///
/// A part has the name the user or the plan file gave it. Otherwise its id comes from its shape or kind, plus its
/// position among those alike, or a number where nothing else tells them apart. Ids are unique: given names are taken
/// first, and generated ones avoid them.
pub(super) struct Ids {
    outlets: BTreeMap<u8, String>,
    gear: BTreeMap<u8, String>,
    outs: BTreeMap<(u8, u8, u8), String>,
    cords_with_one_end: BTreeSet<u8>,
    taken: BTreeSet<String>,
}

impl Ids {
    pub(super) fn new(draft: &Draft) -> Self {
        let mut ids = Self {
            outlets: BTreeMap::new(),
            gear: BTreeMap::new(),
            outs: BTreeMap::new(),
            cords_with_one_end: gear(draft).filter(|n| !is_box(draft, *n) && gear_ends(draft, *n).len() == 1).collect(),
            taken: BTreeSet::from([Id::SET.to_owned()]),
        };
        ids.take_named(draft);
        ids.name_outlets(draft);
        ids.name_gear(draft);
        ids
    }

    /// Takes the names that were given.
    fn take_named(&mut self, draft: &Draft) {
        let name = |key: &str| draft.text(key).map(str::trim).map(str::to_owned);
        for n in outlets(draft) {
            if let Some(name) = name(&format!("outlet.{n}.name"))
                && self.taken.insert(name.clone())
            {
                self.outlets.insert(n, name);
            }
        }
        for n in gear(draft) {
            let own = draft.text(&format!("gear.{n}.color")).is_none_or(|color| color == "own");
            if let Some(name) = name(&format!("gear.{n}.name")).filter(|_| own)
                && self.taken.insert(name.clone())
            {
                self.gear.insert(n, name);
            }
            for m in outs(draft, n).filter(|_| is_box(draft, n)) {
                // The plan file has named them.
                let named = draft.text(&format!("gear.{n}.out.{m}.ids"));
                let named = named.into_iter().flat_map(|ids| ids.split(','));
                for (copy, id) in (1..=out_count(draft, n, m)).zip(named) {
                    if self.taken.insert(id.to_owned()) {
                        self.outs.insert((n, m, copy), id.to_owned());
                    }
                }
            }
        }
    }

    fn name_outlets(&mut self, draft: &Draft) {
        for n in outlets(draft) {
            if self.outlets.contains_key(&n) {
                continue;
            }
            let word = Place::Outlet(n).shape(draft).map_or("outlet", shape_word);
            let own = draft.called.word(word);
            let (at, count) = among_alike(draft, n);
            let place = place_word(draft.text("outlets.places"), (at, count)).map(|place| draft.called.word(place));
            let at = usize::from(at);
            let id = self.free(at, |number| match place.filter(|_| number == at) {
                Some(place) => format!("{own}-{place}"),
                None if count == 1 && number == 1 => own.to_owned(),
                None => format!("{own}-{number}"),
            });
            self.outlets.insert(n, id);
        }
    }

    fn name_gear(&mut self, draft: &Draft) {
        for n in gear(draft) {
            if !self.gear.contains_key(&n) {
                let own = gear_called(draft, n);
                let own = draft.called.word(&own);
                // Without a hyphen, which the outlets of a box have before their number.
                let id = self.free(1, |number| match number {
                    1 => own.to_owned(),
                    number => format!("{own}{number}"),
                });
                self.gear.insert(n, id);
            }
            let mut number = 0;
            // Leave room after a long name for a number or a position.
            let stem: String = self.gear(n).chars().take(Id::LONGEST - 10).collect();
            for m in outs(draft, n).filter(|_| is_box(draft, n)) {
                for copy in 1..=out_count(draft, n, m) {
                    number += 1;
                    if !self.outs.contains_key(&(n, m, copy)) {
                        let lie = draft.text(&format!("gear.{n}.out.{m}.places"));
                        let word = place_word(lie, (copy, out_count(draft, n, m)));
                        let word = word.map(|word| draft.called.word(word));
                        let id = self.free(number, |at| match word.filter(|_| at == number) {
                            Some(word) => format!("{stem}-{word}"),
                            None => format!("{stem}-{at}"),
                        });
                        self.outs.insert((n, m, copy), id);
                    }
                }
            }
        }
    }

    /// Takes the first free name, counting up from this number.
    fn free(&mut self, from: usize, name: impl Fn(usize) -> String) -> String {
        // With one more candidate than there are taken names, one is always free.
        let id = (from..=from + self.taken.len()).map(name).find(|id| !self.taken.contains(id)).unwrap_or_default();
        self.taken.insert(id.clone());
        id
    }

    pub(super) fn outlet(&self, n: u8) -> String {
        self.outlets.get(&n).cloned().unwrap_or_default()
    }

    pub(super) fn gear(&self, n: u8) -> String {
        self.gear.get(&n).cloned().unwrap_or_default()
    }

    /// Returns the id of a place.
    pub(super) fn of(&self, place: Place) -> String {
        match place {
            Place::Outlet(n) => self.outlet(n),
            Place::End(n, _) if self.cords_with_one_end.contains(&n) => self.gear(n),
            Place::End(n, end) => format!("{}.{end}", self.gear(n)),
            Place::Out(n, m, copy) => self.outs.get(&(n, m, copy)).cloned().unwrap_or_default(),
            Place::Inside(n) => self.gear(n),
        }
    }

    /// Returns every id with the key of its part. The generator's key is empty.
    pub(super) fn all(&self) -> impl Iterator<Item = (String, &str)> {
        let outlets = self.outlets.iter().map(|(n, id)| (format!("outlet.{n}"), id));
        let gear = self.gear.iter().map(|(n, id)| (format!("gear.{n}"), id));
        let outs = self.outs.iter();
        let outs = outs.map(|((n, m, _), id)| (format!("gear.{n}.out.{m}"), id));
        let all = outlets.chain(gear).chain(outs);
        let set = std::iter::once((String::new(), Id::SET));
        set.chain(all.map(|(key, id)| (key, id.as_str())))
    }
}

/// Returns the ids of all loads by their numbers: the appliance or the user's name for it, with a number if that is
/// taken.
pub(super) fn load_ids(draft: &Draft, parts: &Ids) -> Vec<(u8, String)> {
    let mut taken = parts.taken.clone();
    // The plan file has named them.
    let named = |n: u8| draft.text(&format!("load.{n}.id"));
    let in_file: BTreeSet<&str> = loads(draft).filter_map(named).collect();
    loads(draft)
        .map(|n| {
            if let Some(id) = named(n)
                && taken.insert(id.to_owned())
            {
                return (n, id.to_owned());
            }
            let what = draft.text(&format!("load.{n}.what")).unwrap_or_default();
            let base = if what == "own" {
                slug(draft.text(&format!("load.{n}.name")).unwrap_or_default(), draft.called.word("load"))
            } else {
                draft.called.word(what).to_owned()
            };
            let mut id = base.clone();
            let mut number = 2;
            while in_file.contains(id.as_str()) || !taken.insert(id.clone()) {
                id = format!("{base}-{number}");
                number += 1;
            }
            (n, id)
        })
        .collect()
}

pub(super) fn slug(name: &str, otherwise: &str) -> String {
    let mut slug = String::new();
    for c in name.chars() {
        if c.is_alphanumeric() {
            slug.extend(c.to_lowercase());
        } else if !slug.ends_with('-') && !slug.is_empty() {
            slug.push('-');
        }
        if slug.chars().count() >= Id::LONGEST - 4 {
            break;
        }
    }
    let slug = slug.trim_end_matches('-');
    if Id::new(slug).is_some() { slug.to_owned() } else { otherwise.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::interview::draft::Said;

    #[test]
    fn nothing_gets_the_id_of_the_set() {
        let mut draft = Draft::new("any");
        for (key, text) in [("outlet.1.face", "5-20R"), ("load.1.what", "own"), ("load.1.name", "Generator")] {
            draft.answers.insert(key.to_owned(), Said::is(text));
        }
        let parts = Ids::new(&draft);
        assert_eq!(load_ids(&draft, &parts), [(1, "generator-2".to_owned())]);
        // The id of the generator itself is reserved.
        assert!(parts.all().any(|(key, id)| id == Id::SET && key.is_empty()));
    }

    #[test]
    fn names_become_ids() {
        assert_eq!(slug("Dad's radio (old)", "load"), "dad-s-radio-old");
        assert_eq!(slug("¡!", "load"), "load");
        assert_eq!(slug("Wärmelampe", "load"), "wärmelampe");
        assert!(Id::new(&slug(&"x".repeat(90), "load")).is_some());
    }
}

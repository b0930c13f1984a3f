//! The parts the answers speak of: which there are, what they are called, what fits where.

use std::collections::BTreeSet;

use super::draft::Draft;
use super::form;
use super::steps::{COMMON, MOST_GEAR, MOST_LOADS, MOST_OUTLETS, MOST_OUTS};
use crate::plan::{Id, LoadKind};
use crate::tables::shape::{Configuration, Plug, Receptacle};

/// The numbers of a list of parts that stand: up to the one that says "done", without those
/// taken out.
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

pub(super) fn outs(draft: &Draft, n: u8) -> impl Iterator<Item = u8> + use<'_> {
    standing(draft, MOST_OUTS, move |m| format!("gear.{n}.out.{m}.face"))
}

pub(super) const fn kind_word(kind: LoadKind) -> &'static str {
    match kind {
        LoadKind::Heater => "heater",
        LoadKind::Motor => "motor",
        LoadKind::Electronic => "electronic",
        LoadKind::Lamp => "lamp",
        LoadKind::Medical => "medical",
    }
}

/// Whether someone's health depends on this load.
pub(super) fn is_medical(draft: &Draft, n: u8) -> bool {
    let table = draft
        .text(&format!("load.{n}.what"))
        .and_then(crate::tables::appliances::named)
        .is_some_and(|table| table.kind == LoadKind::Medical);
    let told = draft.text(&format!("load.{n}.kind"));
    told.map_or(table, |kind| kind == "medical")
}

pub(super) fn is_box(draft: &Draft, n: u8) -> bool {
    draft
        .text(&format!("gear.{n}.what"))
        .is_some_and(|what| what.starts_with("box"))
}

fn common(draft: &Draft, n: u8) -> Option<(&'static str, &'static str)> {
    let what = draft.text(&format!("gear.{n}.what"))?;
    COMMON
        .iter()
        .find(|(word, ..)| *word == what)
        .map(|(_, plug, ends)| (*plug, *ends))
}

pub(super) fn gear_plug(draft: &Draft, n: u8) -> Option<Plug> {
    let (plug, _) = common(draft, n)?;
    if plug.is_empty() {
        draft.text(&format!("gear.{n}.plug")).and_then(Plug::named)
    } else {
        Plug::named(plug)
    }
}

/// The receptacles of a cord; none of a box.
pub(super) fn gear_ends(draft: &Draft, n: u8) -> Vec<Receptacle> {
    let Some((plug, ends)) = common(draft, n) else {
        return Vec::new();
    };
    if is_box(draft, n) {
        return Vec::new();
    }
    let text = if plug.is_empty() {
        draft.text(&format!("gear.{n}.ends")).unwrap_or_default()
    } else {
        ends
    };
    form::faces(text).unwrap_or_default()
}

/// How many outlets of this kind a box has.
pub(super) fn out_count(draft: &Draft, n: u8, m: u8) -> u8 {
    draft
        .text(&format!("gear.{n}.out.{m}.count"))
        .and_then(|text| form::count(text).ok())
        .unwrap_or(1)
}

/// A place to plug in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Place {
    /// Outlet of the set.
    Outlet(u8),
    /// End of a cord, from one.
    End(u8, u8),
    /// Outlet of a box: the box, the kind, which of the kind; from one.
    Out(u8, u8, u8),
}

impl Place {
    /// How answers refer to it. It stays the same when a part is renamed.
    pub(super) fn token(self) -> String {
        match self {
            Self::Outlet(n) => format!("outlet {n}"),
            Self::End(n, end) => format!("cord {n} {end}"),
            Self::Out(n, m, copy) => format!("box {n} {m} {copy}"),
        }
    }

    fn part(self) -> Option<u8> {
        match self {
            Self::Outlet(_) => None,
            Self::End(n, _) | Self::Out(n, ..) => Some(n),
        }
    }

    pub(super) fn shape(self, draft: &Draft) -> Option<Receptacle> {
        match self {
            Self::Outlet(n) => draft
                .text(&format!("outlet.{n}.face"))
                .and_then(Receptacle::named),
            Self::End(n, end) => gear_ends(draft, n)
                .get(usize::from(end).checked_sub(1)?)
                .copied(),
            Self::Out(n, m, _) => draft
                .text(&format!("gear.{n}.out.{m}.face"))
                .and_then(Receptacle::named),
        }
    }

    /// Its id in the plan.
    pub(super) fn id(self, draft: &Draft) -> String {
        match self {
            Self::Outlet(n) => outlet_id(draft, n),
            Self::End(n, end) => {
                let id = gear_id(draft, n);
                if gear_ends(draft, n).len() == 1 {
                    id
                } else {
                    format!("{id}.{end}")
                }
            }
            Self::Out(n, m, copy) => {
                // The file that the plan was read from has named them.
                let named = draft.text(&format!("gear.{n}.out.{m}.ids"));
                if let Some(id) = named.and_then(|ids| ids.split(',').nth(usize::from(copy) - 1)) {
                    return id.to_owned();
                }
                let before: u8 = outs(draft, n)
                    .take_while(|other| *other < m)
                    .map(|other| out_count(draft, n, other))
                    .fold(0, u8::saturating_add);
                format!("{}-{}", gear_id(draft, n), before.saturating_add(copy))
            }
        }
    }
}

/// Every place to plug in.
pub(super) fn places(draft: &Draft) -> Vec<Place> {
    let mut found: Vec<Place> = outlets(draft).map(Place::Outlet).collect();
    for n in gear(draft) {
        if is_box(draft, n) {
            for m in outs(draft, n) {
                found.extend((1..=out_count(draft, n, m)).map(|copy| Place::Out(n, m, copy)));
            }
        } else {
            let ends = u8::try_from(gear_ends(draft, n).len()).unwrap_or(u8::MAX);
            found.extend((1..=ends).map(|end| Place::End(n, end)));
        }
    }
    found
}

/// The answers' choice of where a part is plugged in, whether or not it still fits.
fn chosen(draft: &Draft, n: u8) -> Option<Place> {
    let token = draft.text(&format!("gear.{n}.from"))?;
    places(draft)
        .into_iter()
        .find(|place| place.token() == token)
}

/// Where a part's plug goes in, without it feeding itself.
pub(super) fn may_feed(draft: &Draft, n: u8) -> Vec<Place> {
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
            part = chosen(draft, at).and_then(Place::part);
        }
        false
    };
    places(draft)
        .into_iter()
        .filter(|place| place.shape(draft).is_some_and(|shape| shape.takes(plug)))
        .filter(|place| !feeds_itself(*place))
        .collect()
}

/// Where each part is plugged in, in order: as chosen, or the one free place it fits. A place
/// for one plug that an earlier part is in is not free.
fn feeds(draft: &Draft, last: u8) -> Vec<(u8, Option<Place>)> {
    let mut found: Vec<(u8, Option<Place>)> = Vec::new();
    for n in gear(draft).take_while(|n| *n <= last) {
        let place = if draft.text(&format!("gear.{n}.from")) == Some("none") {
            None
        } else {
            let fits = may_feed(draft, n);
            chosen(draft, n)
                .filter(|place| fits.contains(place))
                .or_else(|| sole(&free(draft, &fits, &found), n))
        };
        found.push((n, place));
    }
    found
}

fn free(draft: &Draft, fits: &[Place], taken: &[(u8, Option<Place>)]) -> Vec<Place> {
    let has_room = |place: &Place| {
        place
            .shape(draft)
            .is_some_and(|shape| shape.usual_sockets() > 1)
            || taken.iter().all(|(_, other)| other.as_ref() != Some(place))
    };
    fits.iter().copied().filter(has_room).collect()
}

/// The only one, if it is a part named before: going only backwards, no two parts can come to
/// feed each other unasked.
fn sole(free: &[Place], n: u8) -> Option<Place> {
    match free {
        [place] if place.part().is_none_or(|part| part < n) => Some(*place),
        _ => None,
    }
}

/// The free places where a part's plug goes in.
fn free_feeds(draft: &Draft, n: u8) -> Vec<Place> {
    let taken = n.checked_sub(1).map(|last| feeds(draft, last));
    free(draft, &may_feed(draft, n), &taken.unwrap_or_default())
}

/// Whether the outlets and the parts named before offer more than one place for a part.
pub(super) fn has_choice(draft: &Draft, n: u8) -> bool {
    let before = |place: &&Place| place.part().is_none_or(|part| part < n);
    free_feeds(draft, n).iter().filter(before).count() > 1
}

/// Of the places where a part's plug goes in, the last that nothing else is plugged into: the
/// end of the cord named before a box, rather than the outlet the cord is in.
pub(super) fn likely_feed(draft: &Draft, n: u8) -> Option<Place> {
    let fits = may_feed(draft, n);
    let taken: Vec<Place> = feeds(draft, u8::MAX)
        .into_iter()
        .filter(|(other, _)| *other != n)
        .filter_map(|(_, place)| place)
        .collect();
    let free = |place: &&Place| !taken.contains(*place);
    fits.iter()
        .rev()
        .find(free)
        .or_else(|| fits.last())
        .copied()
}

/// Where a part is plugged in: as chosen, or the one place it fits.
pub(super) fn fed_from(draft: &Draft, n: u8) -> Option<Place> {
    feeds(draft, n)
        .into_iter()
        .find(|(other, _)| *other == n)
        .and_then(|(_, place)| place)
}

/// The one free place a part fits, if nothing needs to be asked.
pub(super) fn sole_feed(draft: &Draft, n: u8) -> Option<Place> {
    sole(&free_feeds(draft, n), n)
}

/// As the user calls it, else by its shape, with a number where another has it.
pub(super) fn outlet_id(draft: &Draft, n: u8) -> String {
    let named = |n: u8| draft.text(&format!("outlet.{n}.name")).map(str::trim);
    if let Some(name) = named(n) {
        return name.to_owned();
    }
    let word = |n: u8| Place::Outlet(n).shape(draft).map_or("outlet", shape_word);
    let own = draft.called.word(word(n));
    let taken = |id: &str| outlets(draft).any(|other| named(other) == Some(id));
    let before = outlets(draft)
        .filter(|other| *other < n && named(*other).is_none() && word(*other) == word(n))
        .count();
    (1_usize..)
        .map(|number| match number {
            1 => own.to_owned(),
            number => format!("{own}-{number}"),
        })
        .filter(|id| !taken(id))
        .nth(before)
        .unwrap_or_else(|| format!("{}{n}", draft.called.word("outlet")))
}

/// The words of the code for what has no name yet: messages `id-WORD`.
pub(super) const WORDS: [&str; 8] = [
    "home", "camper", "twist", "large", "outlet", "cord", "box", "load",
];

/// What people call an outlet of this shape.
const fn shape_word(shape: Receptacle) -> &'static str {
    match shape.0 {
        Configuration::N1_15 | Configuration::N5_15 | Configuration::N5_20 => "home",
        Configuration::TT30 => "camper",
        Configuration::L5_20
        | Configuration::L5_30
        | Configuration::L14_20
        | Configuration::L14_30 => "twist",
        Configuration::N6_20 | Configuration::N14_30 | Configuration::N14_50 => "large",
    }
}

pub(super) fn gear_id(draft: &Draft, n: u8) -> String {
    if let Some(name) = draft.text(&format!("gear.{n}.name")) {
        return name.trim().to_owned();
    }
    let number = gear(draft)
        .filter(|other| *other <= n && is_box(draft, *other) == is_box(draft, n))
        .count()
        .max(1);
    let word = if is_box(draft, n) { "box" } else { "cord" };
    format!("{}{number}", draft.called.word(word))
}

/// The ids of all loads, by their numbers: from the appliance or the user's name for it, with a
/// number where that is taken.
pub(super) fn load_ids(draft: &Draft) -> Vec<(u8, String)> {
    let mut taken: BTreeSet<String> = part_ids(draft).into_iter().map(|(_, id)| id).collect();
    loads(draft)
        .map(|n| {
            let what = draft.text(&format!("load.{n}.what")).unwrap_or_default();
            // The file that the plan was read from has named it.
            let base = if let Some(id) = draft.text(&format!("load.{n}.id")) {
                id.to_owned()
            } else if what == "own" {
                slug(
                    draft.text(&format!("load.{n}.name")).unwrap_or_default(),
                    draft.called.word("load"),
                )
            } else {
                draft.called.word(what).to_owned()
            };
            let mut id = base.clone();
            let mut number = 2;
            while !taken.insert(id.clone()) {
                id = format!("{base}-{number}");
                number += 1;
            }
            (n, id)
        })
        .collect()
}

/// The ids of the set, outlets, cords, boxes and the outlets of boxes, with the key of the answer
/// that names each; no answer names the set's.
pub(super) fn part_ids(draft: &Draft) -> Vec<(String, String)> {
    let set = (String::new(), Id::SET.to_owned());
    let outlets = outlets(draft).map(|n| (format!("outlet.{n}.name"), outlet_id(draft, n)));
    let mut ids: Vec<(String, String)> = std::iter::once(set).chain(outlets).collect();
    for n in gear(draft) {
        ids.push((format!("gear.{n}.name"), gear_id(draft, n)));
    }
    for place in places(draft) {
        if let Place::Out(n, ..) = place {
            ids.push((format!("gear.{n}.name"), place.id(draft)));
        }
    }
    ids
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
    if Id::new(slug).is_some() {
        slug.to_owned()
    } else {
        otherwise.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::interview::draft::Said;

    #[test]
    fn nothing_gets_the_id_of_the_set() {
        let mut draft = Draft::new("any");
        for (key, text) in [
            ("outlet.1.face", "5-20R"),
            ("load.1.what", "own"),
            ("load.1.name", "Generator"),
        ] {
            draft.answers.insert(key.to_owned(), Said::is(text));
        }
        assert_eq!(load_ids(&draft), [(1, "generator-2".to_owned())]);
        // What nobody may name their outlet or cord.
        let taken = part_ids(&draft);
        assert!(
            taken
                .iter()
                .any(|(key, id)| id == Id::SET && key.is_empty()),
            "{taken:?}"
        );
    }

    #[test]
    fn names_become_ids() {
        assert_eq!(slug("Dad's radio (old)", "load"), "dad-s-radio-old");
        assert_eq!(slug("¡!", "load"), "load");
        assert_eq!(slug("Wärmelampe", "load"), "wärmelampe");
        assert!(Id::new(&slug(&"x".repeat(90), "load")).is_some());
    }
}

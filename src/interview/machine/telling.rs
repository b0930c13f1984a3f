//! Messages between questions: dangers, assumptions for unknown answers, and the power left.

use std::collections::{BTreeMap, BTreeSet};

use super::{Machine, Note, Place, load_label};
use crate::interview::draft::Draft;
use crate::interview::parts::{self, Ids};
use crate::interview::steps::{self, Group, Label};
use crate::interview::{build, form, live};
use crate::plan::problem::Value;
use crate::plan::{Answer, Id, Outlet, Plan};
use crate::quantity::{Amount, Length, Power, Temperature};
use crate::report::{Assumption, Finding, Report};
use crate::supply::{Supply, rated_of_peak};
use crate::tables::shape::Receptacle;

impl Machine {
    /// Returns the ids of parts and loads, split by whether all their questions are answered, and of the parts that
    /// nothing feeds.
    pub(in crate::interview) fn told_parts(&self) -> live::Parts {
        let draft = &self.draft;
        let ids = Ids::new(draft);
        let loads = parts::load_ids(draft, &ids);
        let flow = self.flow();
        let waiting = flow
            .iter()
            .filter(|place| !self.is_answered(place))
            // A thing without a kind is not a part yet.
            .filter(|place| place.step.field != "what")
            .filter_map(|place| match place.step.group {
                Group::Gear | Group::Out => Some(ids.gear(place.at.n)),
                Group::Load => loads.iter().find(|(n, _)| *n == place.at.n).map(|(_, id)| id.clone()),
                _ => None,
            });
        let waiting = waiting.collect();
        let gear = parts::gear(draft).map(|n| ids.gear(n));
        let all = gear.chain(loads.iter().map(|(_, id)| id.clone()));
        let finished = all.filter(|id| !BTreeSet::contains(&waiting, id)).collect();
        let plan = build::plan(draft, &|key| key.to_owned());
        let unknown: Vec<&Id> = plan.of_unknown_shape().map(|it| it.part).collect();
        let unplugged = plan.gear().filter(|it| it.from.is_none() || unknown.contains(&it.id));
        live::Parts { finished, waiting, unplugged: unplugged.map(|it| it.id.clone()).collect() }
    }

    /// Returns the findings so far. See [`live::findings`].
    pub(in crate::interview) fn findings(&self, judge: fn(&Plan) -> Report) -> Vec<Finding> {
        live::findings(&self.draft, &self.told_parts().waiting, judge)
    }

    /// Returns the dangers that the answers so far make certain.
    pub(in crate::interview) fn dangers(&self, judge: fn(&Plan) -> Report) -> Vec<Finding> {
        live::dangers(&self.draft, &self.told_parts().waiting, judge)
    }

    /// Returns what the plan assumes because nobody knows the answer to this question, for each part that the question
    /// covers.
    ///
    /// For an answer that fills several fields, only the first kind of assumption is returned.
    pub(in crate::interview) fn taken(&self, key: &str) -> Vec<Assumption> {
        let line_of = self.lines();
        let mut plan = build::plan(&self.draft, &|key| key.to_owned());
        plug_all_in(&mut plan);
        let mut taken = crate::judge::judge(&plan).figures.assumed;
        taken.retain(|it| self.leaves_open(&it.field, &line_of).as_deref() == Some(key));
        let why = taken.first().map(|it| it.why);
        taken.retain(|it| Some(it.why) == why);
        taken
    }

    /// Returns the key of the question whose missing answer leaves this field to an assumption.
    ///
    /// If the rated power may be the peak, that is the question of which of the two it is.
    pub(super) fn leaves_open(&self, field: &str, line_of: &impl Fn(&str) -> Option<String>) -> Option<String> {
        let key = self.asks_for(field, line_of)?;
        let figure = "generator.figure";
        let is_figure = key == "generator.rated" && self.draft.get(figure).is_some();
        Some(if is_figure { figure.to_owned() } else { key })
    }

    /// Returns what is plugged in past the part that the question with this key is about.
    pub(in crate::interview) fn past(&self, key: &str) -> Vec<Label> {
        let Some(n) = key.split('.').nth(1).and_then(|n| n.parse().ok()) else {
            return Vec::new();
        };
        let ids = Ids::new(&self.draft);
        let (gear, loads) = parts::past(&self.draft, n);
        let gear = gear.into_iter().map(|n| Label::Plain(ids.gear(n)));
        gear.chain(loads.into_iter().map(|n| load_label(&self.draft, n))).collect()
    }

    /// Returns where each fully answered part is plugged in without a question, because it fits only one place.
    ///
    /// `None` for a part whose plug fits nowhere yet.
    pub(super) fn plugged_in(&self) -> BTreeMap<u8, Option<parts::Place>> {
        let draft = &self.draft;
        let asked = self.flow();
        let waiting = |n: u8| {
            let of_part = |place: &&Place| matches!(place.step.group, Group::Gear | Group::Out) && place.at.n == n;
            let mut own = asked.iter().filter(of_part);
            own.any(|place| !self.is_answered(place) && place.step.field != "from")
        };
        let there = parts::gear(draft).filter(|n| !parts::has_unknown_shape(draft, *n));
        let unasked = there.filter(|n| draft.get(&format!("gear.{n}.from")).is_none());
        unasked
            .filter_map(|n| {
                parts::gear_plug(draft, n)?;
                if !parts::fits_somewhere(draft, n) {
                    // With a generator still to be bought, the outlets may come with it.
                    parts::outlets(draft).next()?;
                    return Some((n, None));
                }
                let place = parts::sole_feed(draft, n).filter(|_| !waiting(n))?;
                Some((n, Some(place)))
            })
            .collect()
    }

    /// Returns notes about parts that just got plugged in, or that just turned out to fit nowhere.
    pub(super) fn plugged_notes(&self, before: &BTreeMap<u8, Option<parts::Place>>) -> Vec<Note> {
        let ids = Ids::new(&self.draft);
        let now = self.plugged_in().into_iter();
        let new = now.filter(|(n, place)| before.get(n) != Some(place));
        let note = |(n, place): (u8, Option<parts::Place>)| {
            let part = ("part", ids.gear(n).into());
            let Some(place) = place else {
                let adapters = steps::adapters(&self.draft, n);
                let key = if adapters.is_empty() { "fits-nowhere" } else { "fits-by-adapter" };
                let adapters = ("adapters", Value::Words(adapters));
                return Note { key, values: vec![part, adapters] };
            };
            let values = vec![part, ("place", ids.of(place).into())];
            Note { key: "plugged", values }
        };
        new.map(note).collect()
    }

    /// Returns a note of how the print on a cord was understood.
    fn read_on(&self, place: &Place) -> Option<Note> {
        let read = form::jacket(self.draft.text(&place.key())?).ok()?;
        let outdoor = match read.outdoor {
            Some(true) => "yes",
            Some(false) => "no",
            None => "unknown",
        };
        let count = read.conductors.map_or_else(|| "unknown".to_owned(), |it| it.to_string());
        Some(Note {
            key: "jacket",
            values: vec![
                ("wire", read.wire.to_string().into()),
                ("count", count.into()),
                ("outdoor", outdoor.to_owned().into()),
            ],
        })
    }

    /// Returns the generator's rated power and peak, at sea level and in cool air. For sets in parallel, this is what
    /// they deliver together.
    fn power(&self) -> (Answer<Power>, Answer<Power>) {
        let one = build::set_power(&self.draft);
        let mut plan = build::plan(&self.draft, &|key| key.to_owned());
        if plan.generator.parallel.is_none() || !one.0.is_known() {
            return one;
        }
        plan.site.altitude = Answer::Known(Length::ZERO);
        plan.site.air = Answer::Known(Temperature::from_millicelsius(0));
        let supply = Supply::build(&plan);
        (Answer::Known(supply.rated), Answer::Known(supply.peak))
    }

    /// Returns a note that the power given is taken as that of each set, if several run in parallel.
    fn joined(&self) -> Option<Note> {
        let sets = self.draft.text("generator.sets").filter(|sets| *sets != "1");
        let rated = sets.and_then(|_| build::set_power(&self.draft).0.known().copied())?;
        Some(Note { key: "joined", values: vec![("rated", Amount::of(rated).into())] })
    }

    /// Returns notes on the power left once these loads run, or on each load too large for the generator.
    ///
    /// The watts are plain sums. The rules also count starting and power factor.
    pub(super) fn notes(&self, place: &Place) -> Vec<Note> {
        let draft = &self.draft;
        if place.step.field == "jacket" {
            return self.read_on(place).into_iter().collect();
        }
        if place.step.field == "sets" {
            return self.joined().into_iter().collect();
        }
        let told: Vec<u8> = match (place.step.group, place.step.field) {
            (Group::Loads, _) => parts::loads(draft).collect(),
            (Group::Load, "running" | "count" | "starting") => vec![place.at.n],
            _ => return Vec::new(),
        };
        let told: Vec<(u8, Power)> = told.into_iter().filter_map(|n| Some((n, build::load_watts(draft, n)?))).collect();
        if told.is_empty() {
            return Vec::new();
        }
        let all: Power = parts::loads(draft).filter_map(|n| build::load_watts(draft, n)).sum();
        // Round to whole watts: demand up, supply down.
        let whole = |watts: i64| Value::from(Amount::of(Power::from_milliwatts(watts * 1000)));
        let watts = |power: Power| whole((power.milliwatts() + 999).div_euclid(1000));
        let (rated, peak) = self.power();
        let taken = || peak.known().map(|peak| rated_of_peak(*peak));
        let Some(rated) = rated.known().copied().or_else(taken) else {
            return vec![Note { key: "load-named", values: vec![("all", watts(all))] }];
        };
        let given = whole(rated.milliwatts().div_euclid(1000));
        let peak = peak.or(rated).max(rated);
        let beyond = |(n, this): (u8, Power)| {
            let name = ("load", load_name(draft, n));
            let starting = build::load_starting(draft, n).filter(|power| *power > peak);
            if this > rated {
                let values = vec![name, ("this", watts(this)), ("rated", given.clone())];
                return Some(("load-too-large", values));
            }
            let values = vec![name, ("starting", watts(starting?)), ("peak", watts(peak))];
            Some(("load-cannot-start", values))
        };
        let beyond: Vec<Note> = told.into_iter().filter_map(beyond).map(|(key, values)| Note { key, values }).collect();
        if !beyond.is_empty() {
            return beyond;
        }
        let left = (rated.milliwatts() - all.milliwatts()).div_euclid(1000);
        vec![Note {
            key: if all > rated { "load-turns" } else { "load-left" },
            values: vec![("all", watts(all)), ("rated", given), ("left", whole(left))],
        }]
    }
}

/// Gives each unplugged part an outlet of its own, because nothing is assumed for a part that is not in use, and where
/// a part is plugged in is asked last.
fn plug_all_in(plan: &mut Plan) {
    let cords = plan.cords.iter_mut().map(|cord| (cord.usable_plug(), &mut cord.from));
    let boxes = plan.boxes.iter_mut().map(|holder| (holder.inlet.known().copied(), &mut holder.from));
    for (at, (plug, from)) in cords.chain(boxes).enumerate() {
        if let (Some(plug), None, Some(id)) = (plug, &from, Id::new(&format!("outlet-of-{at}"))) {
            *from = Some(id.clone());
            plan.generator.outlets.push(Outlet { id, shape: Receptacle(plug.0), ..Outlet::default() });
        }
    }
}

/// Returns a load's name, as the value of a message.
fn load_name(draft: &Draft, n: u8) -> Value {
    match load_label(draft, n) {
        Label::Word(key, _) => Value::word(key),
        Label::Plain(name) => name.into(),
        _ => Value::word("part-load"),
    }
}

//! What is told between questions: dangers, what is taken for an unknown answer, what is left.

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
    /// The parts and loads, by whether all is answered of them.
    pub(in crate::interview) fn told_parts(&self) -> live::Parts {
        let draft = &self.draft;
        let ids = Ids::new(draft);
        let loads = parts::load_ids(draft, &ids);
        let flow = self.flow();
        let waiting = flow
            .iter()
            .filter(|place| !self.is_answered(place))
            // What is not named yet is no part.
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
        live::Parts { finished, waiting }
    }

    /// The findings so far, as [`live::findings`].
    pub(in crate::interview) fn findings(&self, judge: fn(&Plan) -> Report) -> Vec<Finding> {
        live::findings(&self.draft, &self.told_parts().waiting, judge)
    }

    /// The dangers that are certain from the answers so far.
    pub(in crate::interview) fn dangers(&self, judge: fn(&Plan) -> Report) -> Vec<Finding> {
        live::dangers(&self.draft, &self.told_parts().waiting, judge)
    }

    /// What the plan takes for the answer to this question, which nobody knows, of each part that it asks about. Of
    /// an answer that says several things the first.
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

    /// The question whose answer leaves this field open, so that something is taken for it: of a figure that may be
    /// the peak, the one of what it is.
    pub(super) fn leaves_open(&self, field: &str, line_of: &impl Fn(&str) -> Option<String>) -> Option<String> {
        let key = self.asks_for(field, line_of)?;
        let figure = "generator.figure";
        let is_figure = key == "generator.rated" && self.draft.get(figure).is_some();
        Some(if is_figure { figure.to_owned() } else { key })
    }

    /// Where each part of which all is answered is plugged in without a question, for it fits one place; `None` of one
    /// whose plug goes in nowhere so far.
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
                    // Of a generator to buy the outlets may come with it.
                    parts::outlets(draft).next()?;
                    return Some((n, None));
                }
                let place = parts::sole_feed(draft, n).filter(|_| !waiting(n))?;
                Some((n, Some(place)))
            })
            .collect()
    }

    /// What is told of the parts that were plugged in just now, or of which it came out that they go in nowhere.
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

    /// What was read on a cord, as it was understood.
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

    /// What the set keeps up and what it gives for a moment, at the sea and in cool air; of several that run as one, what they
    /// do together.
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

    /// Of several sets that run as one, that the power that was told is taken for that of each.
    fn joined(&self) -> Option<Note> {
        let sets = self.draft.text("generator.sets").filter(|sets| *sets != "1");
        let rated = sets.and_then(|_| build::set_power(&self.draft).0.known().copied())?;
        Some(Note { key: "joined", values: vec![("rated", Amount::of(rated).into())] })
    }

    /// What the set has left once these are named, in watts as they stand: the rules will count
    /// starting and power factor too. Of each that it cannot run at all, that.
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
        // Whole watts: of what is asked the next above, of what there is the next below.
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

/// Gives each part that is plugged into nothing an outlet of its own: of what is not in use nothing is assumed, and
/// where a part goes is asked last.
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

/// What a load is called, as the value of a message.
fn load_name(draft: &Draft, n: u8) -> Value {
    match load_label(draft, n) {
        Label::Word(key, _) => Value::word(key),
        Label::Plain(name) => name.into(),
        _ => Value::word("part-load"),
    }
}

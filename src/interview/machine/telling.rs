//! What is told between questions: dangers, what is taken for an unknown answer, what is left.

use super::{Machine, Note, Place, load_label};
use crate::interview::draft::Draft;
use crate::interview::parts::{self, Ids};
use crate::interview::steps::{Group, Label};
use crate::interview::{build, live};
use crate::plan::Plan;
use crate::plan::problem::Value;
use crate::quantity::{Amount, Power};
use crate::report::{Assumption, Finding, Report};
use crate::supply::rated_of_peak;

impl Machine {
    /// Whether questions are still to come.
    pub(in crate::interview) fn open(&self) -> bool {
        self.flow().iter().any(|place| !self.is_answered(place))
    }

    /// The dangers that are certain from the answers so far.
    pub(in crate::interview) fn dangers(&self, judge: fn(&Plan) -> Report) -> Vec<Finding> {
        let draft = &self.draft;
        let ids = Ids::new(draft);
        let loads = parts::load_ids(draft, &ids);
        let unfinished = self
            .flow()
            .iter()
            .filter(|place| !self.is_answered(place))
            // What is not named yet is no part.
            .filter(|place| place.step.field != "what")
            .filter_map(|place| match place.step.group {
                Group::Gear | Group::Out => Some(ids.gear(place.at.n)),
                Group::Load => loads
                    .iter()
                    .find(|(n, _)| *n == place.at.n)
                    .map(|(_, id)| id.clone()),
                _ => None,
            })
            .collect();
        live::dangers(draft, &unfinished, judge)
    }

    /// What the plan takes for the answer to this question, which nobody knows.
    pub(in crate::interview) fn taken(&self, key: &str) -> Option<Assumption> {
        let draft = &self.draft;
        let place = self.places().into_iter().find(|place| place.key() == key)?;
        let n = place.at.n;
        let ids = Ids::new(draft);
        let of = match place.step.group {
            Group::Generator | Group::Fuel => "generator".to_owned(),
            Group::Site => "site".into(),
            Group::Loads | Group::Gears => return None,
            Group::Outlets => {
                let first = parts::outlets(draft).next()?;
                format!("generator.outlet.{}", ids.outlet(first))
            }
            Group::Outlet => format!("generator.outlet.{}", ids.outlet(n)),
            Group::Load => {
                let loads = parts::load_ids(draft, &ids);
                let (_, id) = loads.into_iter().find(|(other, _)| *other == n)?;
                format!("load.{id}")
            }
            Group::Gear if parts::is_box(draft, n) => format!("box.{}", ids.gear(n)),
            Group::Gear => format!("cord.{}", ids.gear(n)),
            Group::Out => {
                let out = ids.of(parts::Place::Out(n, place.at.m, 1));
                format!("box.{}.outlet.{out}", ids.gear(n))
            }
        };
        let field = match (place.step.group, place.step.field) {
            (Group::Site, "alarm") => "co_alarm",
            (Group::Generator, "kit") => "parallel.kit",
            (Group::Generator, "limit") => "parallel.limit",
            // What it keeps up is what nobody knows then.
            (Group::Generator, "figure") => "rated",
            (_, "jacket") => "wire",
            (_, field) => field,
        };
        let field = format!("{of}.{field}");
        let plan = build::plan(draft, &|key| key.to_owned());
        let assumed = crate::judge::judge(&plan).figures.assumed;
        assumed.into_iter().find(|taken| taken.field == field)
    }

    /// What the set has left once these are named, in watts as they stand: the rules will count
    /// starting and power factor too. Of each that it cannot run at all, that.
    pub(super) fn notes(&self, place: &Place) -> Vec<Note> {
        let draft = &self.draft;
        let told: Vec<u8> = match (place.step.group, place.step.field) {
            (Group::Loads, _) => parts::loads(draft).collect(),
            (Group::Load, "running" | "count" | "starting") => vec![place.at.n],
            _ => return Vec::new(),
        };
        let told: Vec<(u8, Power)> = told
            .into_iter()
            .filter_map(|n| Some((n, build::load_watts(draft, n)?)))
            .collect();
        if told.is_empty() {
            return Vec::new();
        }
        let all: Power = parts::loads(draft)
            .filter_map(|n| build::load_watts(draft, n))
            .sum();
        // Whole watts: of what is asked the next above, of what there is the next below.
        let whole = |watts: i64| Value::from(Amount::of(Power::from_milliwatts(watts * 1000)));
        let watts = |power: Power| whole((power.milliwatts() + 999).div_euclid(1000));
        let (rated, peak) = build::set_power(draft);
        let taken = || peak.known().map(|peak| rated_of_peak(*peak));
        let Some(rated) = rated.known().copied().or_else(taken) else {
            return vec![Note {
                key: "load-named",
                values: vec![("all", watts(all))],
            }];
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
        let beyond: Vec<Note> = told
            .into_iter()
            .filter_map(beyond)
            .map(|(key, values)| Note { key, values })
            .collect();
        if !beyond.is_empty() {
            return beyond;
        }
        let left = (rated.milliwatts() - all.milliwatts()).div_euclid(1000);
        vec![Note {
            key: if all > rated {
                "load-turns"
            } else {
                "load-left"
            },
            values: vec![("all", watts(all)), ("rated", given), ("left", whole(left))],
        }]
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

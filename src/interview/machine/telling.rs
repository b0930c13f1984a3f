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

    /// What the plan takes for the answer to this question, which nobody knows, of each part that it asks about. Of
    /// an answer that says several things the first.
    pub(in crate::interview) fn taken(&self, key: &str) -> Vec<Assumption> {
        let line_of = self.lines();
        let plan = build::plan(&self.draft, &|key| key.to_owned());
        let mut taken = crate::judge::judge(&plan).figures.assumed;
        taken.retain(|it| self.leaves_open(&it.field, &line_of).as_deref() == Some(key));
        let why = taken.first().map(|it| it.why);
        taken.retain(|it| Some(it.why) == why);
        taken
    }

    /// The question whose answer leaves this field open, so that something is taken for it: of a figure that may be
    /// the peak, the one of what it is.
    pub(super) fn leaves_open(
        &self,
        field: &str,
        line_of: &impl Fn(&str) -> Option<String>,
    ) -> Option<String> {
        let key = self.asks_for(field, line_of)?;
        let figure = "generator.figure";
        let is_figure = key == "generator.rated" && self.draft.get(figure).is_some();
        Some(if is_figure { figure.to_owned() } else { key })
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

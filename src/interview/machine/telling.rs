//! What is told between questions: dangers, what is taken for an unknown answer, what is left.

use super::{Machine, Note, Place};
use crate::interview::parts::{self, Ids};
use crate::interview::steps::Group;
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
        // Of one figure it is asked next which it is: then it is known what is taken for the other.
        if place.step.id == "generator-peak" && draft.text("generator.rated").is_some() {
            return None;
        }
        let n = place.at.n;
        let ids = Ids::new(draft);
        let of = match place.step.group {
            Group::Generator | Group::Fuel => "generator".to_owned(),
            Group::Site => "site".into(),
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

    /// What the set has left once this is named, in watts as they stand: the rules will count
    /// starting and power factor too.
    pub(super) fn note(&self, place: &Place) -> Option<Note> {
        let draft = &self.draft;
        if place.step.group != Group::Load {
            return None;
        }
        let named = match place.step.field {
            "what" => {
                draft.text(&place.key()) != Some("done") && draft.text(&place.key()) != Some("own")
            }
            "running" | "count" | "starting" => true,
            _ => false,
        };
        if !named {
            return None;
        }
        let this = build::load_watts(draft, place.at.n)?;
        let all: Power = parts::loads(draft)
            .filter_map(|n| build::load_watts(draft, n))
            .sum();
        // Whole watts: of what is asked the next above, of what there is the next below.
        let whole = |watts: i64| Value::from(Amount::of(Power::from_milliwatts(watts * 1000)));
        let watts = |power: Power| whole((power.milliwatts() + 999).div_euclid(1000));
        let (rated, peak) = build::set_power(draft);
        let taken = || peak.known().map(|peak| rated_of_peak(*peak));
        let Some(rated) = rated.known().copied().or_else(taken) else {
            return Some(Note {
                key: "load-named",
                values: vec![("all", watts(all))],
            });
        };
        let values = vec![
            ("this", watts(this)),
            ("all", watts(all)),
            ("rated", whole(rated.milliwatts().div_euclid(1000))),
            (
                "left",
                whole((rated.milliwatts() - all.milliwatts()).div_euclid(1000)),
            ),
        ];
        let peak = peak.or(rated).max(rated);
        let starting = build::load_starting(draft, place.at.n).filter(|power| *power > peak);
        if let Some(starting) = starting.filter(|_| this <= rated) {
            let values = vec![("starting", watts(starting)), ("peak", watts(peak))];
            return Some(Note {
                key: "load-cannot-start",
                values,
            });
        }
        let key = if this > rated {
            "load-too-large"
        } else if all > rated {
            "load-turns"
        } else {
            "load-left"
        };
        Some(Note { key, values })
    }
}

//! From the answers to the plan.

use std::collections::BTreeSet;

use super::draft::{Draft, Said};
use super::form::{self, Start};
use super::parts::{self, Ids, Place};
use crate::plan::bounds::{self, Bounds};
use crate::plan::{
    Answer, Choice, Cord, DistributionBox, Draw, Generator, Id, Load, Neutral, Outlet, Parallel,
    Plan, Region, Site,
};
use crate::quantity::{Current, Power, Quantity, Ratio, Wire};
use crate::report::loads::least_current;
use crate::tables::appliances;
use crate::tables::shape::{Configuration, Plug, Receptacle};

/// The plan of these answers. Those that are missing or no longer make sense are left out of
/// it. `named` gives the text of a message, for names the user took from a list.
pub fn plan(draft: &Draft, named: &dyn Fn(&str) -> String) -> Plan {
    let ids = Ids::new(draft);
    let build = Build { draft, named, ids };
    Plan {
        region: Region::NorthAmerica,
        language: None,
        site: build.site(),
        generator: build.generator(),
        cords: build.cords(),
        boxes: build.boxes(),
        loads: build.loads(),
    }
}

/// The power a load draws for sure: what its draw says, at its voltage where it is a current.
/// `None` where nobody knows.
pub(super) fn load_watts(draft: &Draft, n: u8) -> Option<Power> {
    let count = parts::many(draft, n);
    let one = match load_draw(draft, n).known()? {
        Draw::Power(power) => *power,
        Draw::Current(current) => Power::of_capacity(*current, Region::default().line_to_neutral()),
        Draw::Motor { .. } => return None,
    };
    Some(Power::from_milliwatts(one.milliwatts() * i64::from(count)))
}

/// What the set keeps up and what it gives for a moment. One figure alone, of which nobody says that it is
/// the running power, is mostly the large one in its name: then it is the peak.
pub(super) fn set_power(draft: &Draft) -> (Answer<Power>, Answer<Power>) {
    let read = |key: &str, bounds: &Bounds<Power>| match draft.get(key) {
        Some(Said::Is(text)) => bounds.read(text).map_or(Answer::Missing, Answer::Known),
        Some(Said::Unknown) => Answer::Unknown,
        Some(Said::None | Said::Word(_)) | None => Answer::Missing,
    };
    let rated = read("generator.rated", &bounds::RATED);
    let peak = read("generator.peak", &bounds::PEAK);
    let is_peak = match draft.get("generator.figure") {
        Some(Said::Unknown) => true,
        Some(said) => said.text() == Some("peak"),
        None => false,
    };
    match (rated, peak) {
        (Answer::Known(only), Answer::Unknown) if is_peak => (Answer::Unknown, Answer::Known(only)),
        both => both,
    }
}

/// What one of a load asks for in the moment it starts, where that was told or is in the table.
pub(super) fn load_starting(draft: &Draft, n: u8) -> Option<Power> {
    let own_draw = draft.get(&format!("load.{n}.draw")).is_some();
    match draft.get(&format!("load.{n}.starting")) {
        Some(said) => match form::start(said.text()?).ok()? {
            Start::Power(power) => Some(power),
            Start::Current(current) => Some(Power::of_capacity(
                current,
                Region::default().line_to_neutral(),
            )),
        },
        // The table's starting figure belongs to the table's running figure.
        None if own_draw => None,
        None => load_table(draft, n).map(|table| table.starting),
    }
}

fn load_table(draft: &Draft, n: u8) -> Option<&'static appliances::Appliance> {
    draft
        .text(&format!("load.{n}.what"))
        .and_then(appliances::named)
}

/// What one of a load draws.
pub(super) fn load_draw(draft: &Draft, n: u8) -> Answer<Draw> {
    let said = draft.get(&format!("load.{n}.draw"));
    match (said, load_table(draft, n)) {
        (Some(Said::Is(text)), _) => form::draw(text).map_or(Answer::Missing, Answer::Known),
        (Some(_), _) => Answer::Unknown,
        (None, Some(table)) => Answer::Known(Draw::Power(table.running)),
        (None, None) => Answer::Missing,
    }
}

/// What a load draws more than its plug carries, whatever nobody said of it: its amperes, and the plug. Of
/// one answer `text` is taken for what it is to be.
pub(super) fn beyond_plug(
    draft: &Draft,
    n: u8,
    field: &str,
    text: &str,
) -> Option<(Current, Plug)> {
    let table = load_table(draft, n);
    let said = |name: &str| {
        if name == field {
            Some(text)
        } else {
            draft.text(&format!("load.{n}.{name}"))
        }
    };
    let plug = match said("plug") {
        Some(name) => Plug::named(name)?,
        None if table.is_some() => Plug(Configuration::N5_15),
        None => return None,
    };
    let draw = match said("draw") {
        Some(text) => form::draw(text).ok()?,
        None => Draw::Power(table?.running),
    };
    let factor = match (said("factor"), table) {
        (Some(text), _) => bounds::POWER_FACTOR
            .read(text)
            .map_or(Answer::Missing, Answer::Known),
        (None, Some(table)) if draft.get(&format!("load.{n}.factor")).is_none() => {
            Answer::Known(table.power_factor)
        }
        (None, _) => Answer::Missing,
    };
    if least_current(&draw, factor, plug) <= plug.0.rating() {
        return None;
    }
    let amps = match draw {
        Draw::Power(power) => {
            let unity = Ratio::from_permille(1000);
            Current::of_load(power, factor.or(unity), plug.0.volts())
        }
        draw => least_current(&draw, factor, plug),
    };
    Some((amps, plug))
}

struct Build<'a> {
    draft: &'a Draft,
    named: &'a dyn Fn(&str) -> String,
    ids: Ids,
}

impl Build<'_> {
    fn read<T>(&self, key: &str, read: impl Fn(&str) -> Option<T>) -> Answer<T> {
        match self.draft.get(key) {
            None | Some(Said::None | Said::Word(_)) => Answer::Missing,
            Some(Said::Unknown) => Answer::Unknown,
            Some(Said::Is(text)) => read(text).map_or(Answer::Missing, Answer::Known),
        }
    }

    fn amount<Q: Quantity>(&self, key: &str, bounds: &Bounds<Q>) -> Answer<Q> {
        self.read(key, |text| bounds.read(text).ok())
    }

    fn choice<C: Choice>(&self, key: &str) -> Answer<C> {
        self.read(key, C::named)
    }

    fn yes(&self, key: &str) -> Answer<bool> {
        self.read(key, |text| match text {
            "yes" => Some(true),
            "no" => Some(false),
            _ => None,
        })
    }

    fn name(&self, key: &str, word: &str) -> String {
        match self.draft.get(key) {
            Some(Said::Is(text)) => text.trim().to_owned(),
            Some(Said::Word(taken)) => (self.named)(taken),
            _ => (self.named)(word),
        }
    }

    fn site(&self) -> Site {
        Site {
            name: self.name("site.name", "suggest-site-name"),
            ground: self.choice("site.ground"),
            sleepers_at: self.amount("site.sleepers", &bounds::SLEEPERS_AT),
            altitude: self.amount("site.altitude", &bounds::ALTITUDE),
            air: self.amount("site.air", &bounds::AIR),
            // None is an answer of its own: nobody has to be quiet.
            quiet_hours: match self.draft.get("site.quiet") {
                Some(Said::None) => Answer::Known(Vec::new()),
                _ => self.read("site.quiet", |text| form::spans(text).ok()),
            },
            // Where nobody sleeps nothing is said of an alarm.
            co_alarm: self.yes("site.alarm"),
            feeds_building: self.yes("site.building"),
            stands: self.choice("site.stands"),
            people_sleep: match self.draft.text("site.alarm") {
                Some("nobody") => Answer::Known(false),
                _ => Answer::Missing,
            },
        }
    }

    fn generator(&self) -> Generator {
        let extra = |key: &str| format!("fuel.{key}");
        let (rated, peak) = set_power(self.draft);
        Generator {
            name: self.name("generator.name", "suggest-generator-name"),
            rated,
            peak,
            voltage: self.choice("generator.voltage"),
            neutral: match self.draft.text("generator.neutral") {
                // A plug joins what the set leaves apart.
                Some("plug") => Answer::Known(Neutral::Floating),
                _ => self.choice("generator.neutral"),
            },
            bonding_plug: match self.draft.text("generator.neutral") {
                Some("plug") => Answer::Known(true),
                Some(said) if Neutral::named(said) == Some(Neutral::Floating) => {
                    Answer::Known(false)
                }
                _ => Answer::Missing,
            },
            bonding_plug_in: self
                .draft
                .text("outlets.bonding")
                .filter(|_| self.draft.text("generator.neutral") == Some("plug"))
                .and_then(|token| self.place(token))
                .and_then(|place| Id::new(&self.ids.of(place))),
            inverter: self.yes("generator.inverter"),
            fuel: self.choice(&extra("fuel")),
            rated_on: self.choice(&extra("rated_on")),
            parallel: self
                .draft
                .text("generator.sets")
                .and_then(|text| text.parse().ok())
                .filter(|sets| *sets > 1)
                .map(|sets| Parallel {
                    sets,
                    limit: self.amount("generator.limit", &bounds::KIT_LIMIT),
                    kit: self.yes("generator.kit"),
                }),
            tank: self.amount(&extra("tank"), &bounds::TANK),
            runtime: self
                .draft
                .text(&extra("runtime"))
                .and_then(|text| form::runtime(text).ok())
                .unwrap_or_default(),
            noise: self.read(&extra("noise"), |text| form::noise(text).ok()),
            outlets: parts::outlets(self.draft)
                .filter_map(|n| self.outlet(n))
                .collect(),
        }
    }

    fn outlet(&self, n: u8) -> Option<Outlet> {
        let key = |field: &str| format!("outlet.{n}.{field}");
        let shares =
            parts::shares(self.draft, n).and_then(|other| Id::new(&self.ids.outlet(other)));
        Some(Outlet {
            id: Id::new(&self.ids.outlet(n))?,
            shape: self.draft.text(&key("face")).and_then(Receptacle::named)?,
            sockets: self
                .draft
                .text(&key("sockets"))
                .and_then(|text| form::count(text, bounds::SOCKETS).ok()),
            breaker: self.amount(&key("breaker"), &bounds::BREAKER),
            shares,
            trips_at: self
                .amount(&key("trips"), &bounds::TRIPS_AT)
                .known()
                .copied()
                .filter(|_| parts::odd(self.draft, "early")),
            gfci: match self.draft.get("outlets.gfci") {
                Some(Said::Is(all)) if all == "all" => Answer::Known(true),
                Some(Said::Is(all)) if all == "none" => Answer::Known(false),
                Some(Said::Is(_)) => self.yes(&key("gfci")),
                Some(_) => Answer::Unknown,
                None => Answer::Missing,
            },
            wire: Answer::Missing,
            leg: self.choice(&key("leg")),
        })
    }

    fn place(&self, token: &str) -> Option<Place> {
        parts::places(self.draft)
            .into_iter()
            .find(|place| place.token() == token)
    }

    /// What a part is plugged into, unless the parts would feed each other in a ring.
    fn from(&self, n: u8) -> Option<Id> {
        let place = parts::fed_from(self.draft, n)?;
        let mut seen = BTreeSet::from([n]);
        let mut at = Some(place);
        while let Some(Place::End(part, _) | Place::Out(part, ..)) = at {
            if !seen.insert(part) {
                return None;
            }
            at = parts::fed_from(self.draft, part);
        }
        Id::reference(&self.ids.of(place))
    }

    fn cords(&self) -> Vec<Cord> {
        parts::gear(self.draft)
            .filter(|n| !parts::is_box(self.draft, *n))
            .filter_map(|n| {
                let key = |field: &str| format!("gear.{n}.{field}");
                let plug = parts::gear_plug(self.draft, n)?;
                let jacket = self.read(&key("jacket"), |text| form::jacket(text).ok());
                let told = jacket.known().copied();
                let part = |known: Option<Answer<u8>>| known.unwrap_or(Answer::Unknown);
                Some(Cord {
                    id: Id::new(&self.ids.gear(n))?,
                    from: self.from(n),
                    plug,
                    ends: parts::gear_ends(self.draft, n),
                    wire: match jacket {
                        Answer::Known(jacket) => Answer::Known(jacket.wire),
                        Answer::Unknown => Answer::Unknown,
                        Answer::Missing => Answer::Missing,
                    },
                    conductors: part(told.and_then(|j| j.conductors).map(Answer::Known)),
                    length: self.amount(&key("length"), &bounds::LENGTH),
                    outdoor: match told.and_then(|jacket| jacket.outdoor) {
                        Some(outdoor) => Answer::Known(outdoor),
                        None => self.yes(&key("outdoor")),
                    },
                    coiled: self.yes(&key("coiled")),
                    gfci: self.yes(&key("gfci")),
                })
            })
            .collect()
    }

    fn boxes(&self) -> Vec<DistributionBox> {
        parts::gear(self.draft)
            .filter(|n| parts::is_box(self.draft, *n))
            .filter_map(|n| {
                let key = |field: &str| format!("gear.{n}.{field}");
                Some(DistributionBox {
                    id: Id::new(&self.ids.gear(n))?,
                    from: self.from(n),
                    inlet: parts::gear_plug(self.draft, n)?,
                    listed: self.yes(&key("listed")),
                    bond: self.yes(&key("bond")),
                    outlets: parts::outs(self.draft, n)
                        .flat_map(|m| {
                            (1..=parts::out_count(self.draft, n, m)).map(move |copy| (m, copy))
                        })
                        .filter_map(|(m, copy)| self.out(n, m, copy))
                        .collect(),
                })
            })
            .collect()
    }

    fn out(&self, n: u8, m: u8, copy: u8) -> Option<Outlet> {
        let key = |field: &str| format!("gear.{n}.out.{m}.{field}");
        Some(Outlet {
            id: Id::new(&self.ids.of(Place::Out(n, m, copy)))?,
            shape: self.draft.text(&key("face")).and_then(Receptacle::named)?,
            sockets: parts::told_sockets(self.draft, n, m, copy),
            breaker: self.amount(&key("breaker"), &bounds::BREAKER),
            shares: None,
            trips_at: None,
            gfci: self.yes(&key("gfci")),
            wire: self.read(&key("wire"), |text| Wire::parse(text).ok()),
            // One letter is for all of them.
            leg: self.read(&key("leg"), |text| {
                let legs = form::legs(text).ok()?;
                let own = if legs.len() == 1 {
                    0
                } else {
                    usize::from(copy) - 1
                };
                legs.get(own).copied()
            }),
        })
    }

    fn loads(&self) -> Vec<Load> {
        parts::load_ids(self.draft, &self.ids)
            .into_iter()
            .filter_map(|(n, id)| self.load(n, &id))
            .collect()
    }

    fn load(&self, n: u8, id: &str) -> Option<Load> {
        let key = |field: &str| format!("load.{n}.{field}");
        let table = load_table(self.draft, n);
        let own_draw = self.draft.get(&key("draw")).is_some();
        let kind = match (self.draft.get(&key("kind")), table) {
            (None, Some(table)) => Answer::Known(table.kind),
            _ => self.choice(&key("kind")),
        };
        Some(Load {
            id: Id::new(id)?,
            name: self.name(
                &key("name"),
                &table.map_or_else(
                    || "part-load".to_owned(),
                    |table| format!("appliance-{}", table.key),
                ),
            ),
            kind,
            running: load_draw(self.draft, n),
            count: parts::many(self.draft, n),
            starting: match (self.draft.get(&key("starting")), table) {
                // The table's starting figure belongs to the table's running figure.
                (None, Some(table)) if !own_draw => Answer::Known(table.starting),
                _ => self.read(&key("starting"), |text| match form::start(text) {
                    Ok(Start::Power(power)) => Some(power),
                    _ => None,
                }),
            },
            // Nobody knows either: that is said once.
            starting_current: match self.draft.text(&key("starting")).map(form::start) {
                Some(Ok(Start::Current(amps))) => Answer::Known(amps),
                _ => Answer::Missing,
            },
            power_factor: match (self.draft.get(&key("factor")), table) {
                (None, Some(table)) => Answer::Known(table.power_factor),
                _ => self.amount(&key("factor"), &bounds::POWER_FACTOR),
            },
            continuous: match (self.draft.get(&key("continuous")), table) {
                (None, Some(table)) => Answer::Known(table.continuous),
                _ => self.yes(&key("continuous")),
            },
            wanted: self
                .choice(&key("wanted"))
                .known()
                .copied()
                .unwrap_or_default(),
            hours: self
                .draft
                .text(&key("hours"))
                .and_then(|text| form::spans(text).ok())
                .unwrap_or_default(),
            plug: match self.draft.get(&key("plug")) {
                None if table.is_some() => Answer::Known(Plug(Configuration::N5_15)),
                _ => self.read(&key("plug"), Plug::named),
            },
            voltage: if parts::may_use_both(self.draft, n) {
                self.choice(&key("voltage"))
            } else {
                Answer::Missing
            },
            on: self
                .draft
                .text(&key("on"))
                .and_then(|token| self.place(token))
                .and_then(|place| Id::reference(&self.ids.of(place))),
            backup: self.read(&key("backup"), |text| match text {
                "battery" => Some(true),
                "none" => Some(false),
                _ => None,
            }),
            // Not asked: of equals the check keeps a place that somebody wrote down.
            now: None,
        })
    }
}

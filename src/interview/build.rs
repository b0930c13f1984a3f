//! Building a plan from the answers.

use std::collections::BTreeSet;

use super::draft::{Draft, Said};
use super::form::{self, Start};
use super::parts::{self, Ids, Place};
use super::steps::{FUEL, GEAR, GENERATOR, GENERATOR_AFTER, LOAD, OUT, OUTLET, OUTLET_AFTER, SITE, Step};
use crate::loads::least_current;
use crate::plan::bounds::{self, Bounds};
use crate::plan::row::Part;
use crate::plan::{
    Answer, BoxKind, Cord, DistributionBox, Draw, Generator, Id, Load, Neutral, Outlet, Parallel, Plan, Region, Site,
    System,
};
use crate::quantity::{Current, Power, Ratio};
use crate::tables::shape::{Configuration, Plug};

/// Builds the plan that these answers make.
///
/// Answers that are missing or no longer valid are left out. `named` returns the text of a message, for names picked
/// from a list.
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

/// Returns the power that all units of a load draw together, not counting its power factor.
///
/// A current counts at the region's line-to-neutral voltage. `None` if the draw is unknown or in horsepower.
pub(super) fn load_watts(draft: &Draft, n: u8) -> Option<Power> {
    let count = parts::many(draft, n);
    let one = match load_draw(draft, n).known()? {
        Draw::Power(power) => *power,
        Draw::Current(current) => Power::of_capacity(*current, Region::default().line_to_neutral()),
        Draw::Motor { .. } => return None,
    };
    Some(Power::from_milliwatts(one.milliwatts() * i64::from(count)))
}

/// Returns the rated power and the peak of one generator.
///
/// A single figure is usually the large one in the model's name, so it counts as the peak if nobody can say that it is
/// the running power.
pub(super) fn set_power(draft: &Draft) -> (Answer<Power>, Answer<Power>) {
    let read = |key: &str, bounds: &Bounds<Power>| draft.read(key, |text| bounds.read(text).ok());
    let rated = read("generator.rated", &bounds::RATED);
    // One question takes both figures, so a peak it did not get is unknown.
    let peak = match read("generator.peak", &bounds::PEAK) {
        Answer::Missing if draft.get("generator.rated").is_some() => Answer::Unknown,
        peak => peak,
    };
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

/// Returns the starting power of one unit of a load, as answered or from the table.
pub(super) fn load_starting(draft: &Draft, n: u8) -> Option<Power> {
    let own_draw = draft.get(&format!("load.{n}.running")).is_some();
    match draft.get(&format!("load.{n}.starting")) {
        Some(said) => match form::start(said.text()?).ok()? {
            Start::Power(power) => Some(power),
            Start::Current(current) => Some(Power::of_capacity(current, Region::default().line_to_neutral())),
        },
        // The table's starting figure belongs to its running figure.
        None if own_draw => None,
        None => parts::appliance(draft, n).map(|table| table.starting),
    }
}

/// Returns the draw of one unit of a load.
pub(super) fn load_draw(draft: &Draft, n: u8) -> Answer<Draw> {
    let said = draft.get(&format!("load.{n}.running"));
    match (said, parts::appliance(draft, n)) {
        (Some(Said::Is(text)), _) => form::draw(text).map_or(Answer::Missing, Answer::Known),
        (Some(_), _) => Answer::Unknown,
        (None, Some(table)) => Answer::Known(Draw::Power(table.running)),
        (None, None) => Answer::Missing,
    }
}

/// Returns a load's current and plug if it draws more than the plug carries, whatever the unknown answers are.
///
/// `text` stands in for the answer to `field`.
pub(super) fn beyond_plug(draft: &Draft, n: u8, field: &str, text: &str) -> Option<(Current, Plug)> {
    // A load inside a camper has no plug of its own.
    if parts::around(draft, n).is_some() {
        return None;
    }
    let table = parts::appliance(draft, n);
    let said = |name: &str| {
        if name == field { Some(text) } else { draft.text(&format!("load.{n}.{name}")) }
    };
    let plug = match said("plug") {
        Some(name) => Plug::named(name)?,
        None if table.is_some() => Plug(Configuration::N5_15),
        None => return None,
    };
    let draw = match said("running") {
        Some(text) => form::draw(text).ok()?,
        None => Draw::Power(table?.running),
    };
    let factor = match (said("power_factor"), table) {
        (Some(text), _) => bounds::POWER_FACTOR.read(text).map_or(Answer::Missing, Answer::Known),
        (None, Some(table)) if draft.get(&format!("load.{n}.power_factor")).is_none() => {
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
    /// Fills the fields of a part from the answers to these steps, which are named after the fields.
    fn fill<P: Part>(&self, part: &mut P, prefix: &str, steps: &[Step]) {
        for step in steps {
            let Some(row) = P::row(step.field) else {
                continue;
            };
            let key = format!("{prefix}.{}", step.field);
            row.take(part, self.draft.answer(&key));
        }
    }

    fn yes(&self, key: &str) -> Answer<bool> {
        self.draft.read(key, |text| match text {
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
        let mut site = Site::default();
        self.fill(&mut site, "site", SITE);
        site.name = self.name("site.name", "suggest-site-name");
        site.quiet_hours = match self.draft.get("site.quiet_hours") {
            // "None" is an answer: there are no quiet hours.
            Some(Said::None) => Answer::Known(Vec::new()),
            _ => self.draft.read("site.quiet_hours", |text| form::spans(text).ok()),
        };
        // Where nobody sleeps, the plan says nothing about an alarm.
        if self.draft.text("site.alarm") == Some("nobody") {
            site.people_sleep = Answer::Known(false);
        } else {
            site.co_alarm = self.yes("site.alarm");
        }
        site
    }

    fn generator(&self) -> Generator {
        let mut set = Generator::default();
        self.fill(&mut set, "generator", GENERATOR);
        self.fill(&mut set, "generator", GENERATOR_AFTER);
        self.fill(&mut set, "fuel", FUEL);
        if parts::has_240_volts(self.draft) {
            set.voltage = Answer::Known(System::V120_240);
        }
        set.name = self.name("generator.name", "suggest-generator-name");
        (set.rated, set.peak) = set_power(self.draft);
        let neutral = self.draft.text("generator.neutral");
        if neutral == Some("plug") {
            // A bonding plug bonds the neutral that the generator leaves floating.
            set.neutral = Answer::Known(Neutral::Floating);
            set.bonding_plug = Answer::Known(true);
            let place = self.draft.text("outlets.bonding");
            set.bonding_plug_in =
                place.and_then(|token| self.place(token)).and_then(|place| Id::new(&self.ids.of(place)));
        } else if set.neutral == Answer::Known(Neutral::Floating) {
            set.bonding_plug = Answer::Known(false);
        }
        let mut joined = Parallel::default();
        self.fill(&mut joined, "generator", GENERATOR_AFTER);
        set.parallel = Some(joined).filter(|joined| joined.sets > 1);
        let runtime = self.draft.text("fuel.runtime").map(form::runtime);
        set.runtime = runtime.and_then(Result::ok).unwrap_or_default();
        set.noise = self.draft.read("fuel.noise", |text| form::noise(text).ok());
        let outlets = parts::outlets(self.draft);
        set.outlets = outlets.filter_map(|n| self.outlet(n)).collect();
        set
    }

    fn outlet(&self, n: u8) -> Option<Outlet> {
        let prefix = format!("outlet.{n}");
        let mut outlet = Outlet::default();
        self.fill(&mut outlet, &prefix, OUTLET);
        self.fill(&mut outlet, &prefix, OUTLET_AFTER);
        outlet.id = Id::new(&self.ids.outlet(n))?;
        outlet.shape = Place::Outlet(n).shape(self.draft)?;
        let shares = parts::shares(self.draft, n);
        outlet.shares = shares.and_then(|other| Id::new(&self.ids.outlet(other)));
        if !parts::odd(self.draft, "early") {
            outlet.trips_at = None;
        }
        outlet.gfci = match self.draft.get("outlets.gfci") {
            Some(Said::Is(all)) if all == "all" => Answer::Known(true),
            Some(Said::Is(all)) if all == "none" => Answer::Known(false),
            Some(Said::Is(_)) => outlet.gfci,
            Some(_) => Answer::Unknown,
            None => Answer::Missing,
        };
        Some(outlet)
    }

    fn place(&self, token: &str) -> Option<Place> {
        parts::places(self.draft).into_iter().find(|place| place.token() == token)
    }

    /// Returns what a part is plugged into, unless that would make parts feed each other in a ring.
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
        let cords = parts::gear(self.draft).filter(|n| !parts::is_box(self.draft, *n));
        cords.filter_map(|n| self.cord(n)).collect()
    }

    fn cord(&self, n: u8) -> Option<Cord> {
        let prefix = format!("gear.{n}");
        let mut cord = Cord::default();
        self.fill(&mut cord, &prefix, GEAR);
        cord.id = Id::new(&self.ids.gear(n))?;
        cord.from = self.from(n);
        (cord.plug, cord.ends) = match (parts::gear_plug_said(self.draft, n), parts::gear_ends_said(self.draft, n)) {
            // A cord with an unknown plug is not asked about its ends.
            (Answer::Unknown, Answer::Missing) => (Answer::Unknown, Answer::Unknown),
            // Not asked yet.
            (Answer::Missing, _) | (_, Answer::Missing) => return None,
            both => both,
        };
        let jacket = self.draft.read(&format!("{prefix}.jacket"), |text| form::jacket(text).ok());
        cord.wire = match jacket {
            Answer::Known(jacket) => Answer::Known(jacket.wire),
            Answer::Unknown => Answer::Unknown,
            Answer::Missing => Answer::Missing,
        };
        let told = jacket.known();
        let conductors = told.and_then(|jacket| jacket.conductors);
        cord.conductors = conductors.map_or(Answer::Unknown, Answer::Known);
        // The letters on the jacket answer this before the question is asked.
        if let Some(outdoor) = told.and_then(|jacket| jacket.outdoor) {
            cord.outdoor = Answer::Known(outdoor);
        }
        Some(cord)
    }

    fn boxes(&self) -> Vec<DistributionBox> {
        let boxes = parts::gear(self.draft).filter(|n| parts::is_box(self.draft, *n));
        boxes.filter_map(|n| self.distribution_box(n)).collect()
    }

    fn distribution_box(&self, n: u8) -> Option<DistributionBox> {
        let mut part = DistributionBox::default();
        self.fill(&mut part, &format!("gear.{n}"), GEAR);
        part.id = Id::new(&self.ids.gear(n))?;
        if parts::is_camper(self.draft, n) {
            part.kind = BoxKind::Camper;
        }
        part.from = self.from(n);
        part.inlet = parts::gear_plug_said(self.draft, n);
        // Not asked yet.
        if part.inlet == Answer::Missing {
            return None;
        }
        for m in parts::outs(self.draft, n) {
            let copies = 1..=parts::out_count(self.draft, n, m);
            let outs = copies.filter_map(|copy| self.out(n, m, copy));
            part.outlets.extend(outs);
        }
        Some(part)
    }

    fn out(&self, n: u8, m: u8, copy: u8) -> Option<Outlet> {
        let prefix = format!("gear.{n}.out.{m}");
        let mut outlet = Outlet::default();
        self.fill(&mut outlet, &prefix, OUT);
        let place = Place::Out(n, m, copy);
        outlet.id = Id::new(&self.ids.of(place))?;
        outlet.shape = place.shape(self.draft)?;
        outlet.sockets = parts::told_sockets(self.draft, n, m, copy);
        // A single letter applies to all of them.
        outlet.leg = self.draft.read(&format!("{prefix}.leg"), |text| {
            let legs = form::legs(text).ok()?;
            let own = if legs.len() == 1 { 0 } else { usize::from(copy) - 1 };
            legs.get(own).copied()
        });
        Some(outlet)
    }

    fn loads(&self) -> Vec<Load> {
        parts::load_ids(self.draft, &self.ids).into_iter().filter_map(|(n, id)| self.load(n, &id)).collect()
    }

    fn load(&self, n: u8, id: &str) -> Option<Load> {
        let key = |field: &str| format!("load.{n}.{field}");
        let mut load = Load::default();
        let mut called = "part-load".to_owned();
        if let Some(table) = parts::appliance(self.draft, n) {
            called = format!("appliance-{}", table.key);
            load.kind = Answer::Known(table.kind);
            load.power_factor = Answer::Known(table.power_factor);
            load.continuous = Answer::Known(table.continuous);
            load.plug = Answer::Known(Plug(Configuration::N5_15));
            // The table's starting figure belongs to its running figure.
            if self.draft.get(&key("running")).is_none() {
                load.starting = Answer::Known(table.starting);
            }
        }
        self.fill(&mut load, &format!("load.{n}"), LOAD);
        load.id = Id::new(id)?;
        load.name = self.name(&key("name"), &called);
        load.running = load_draw(self.draft, n);
        match self.draft.text(&key("starting")).map(form::start) {
            Some(Ok(Start::Power(power))) => load.starting = Answer::Known(power),
            Some(Ok(Start::Current(amps))) => {
                load.starting = Answer::Missing;
                load.starting_current = Answer::Known(amps);
            }
            Some(Err(_)) => load.starting = Answer::Missing,
            None => {}
        }
        let hours = self.draft.text(&key("hours")).map(form::spans);
        load.hours = hours.and_then(Result::ok).unwrap_or_default();
        if parts::around(self.draft, n).is_some() {
            load.plug = Answer::Missing;
        }
        if !parts::may_use_both(self.draft, n) {
            load.voltage = Answer::Missing;
        }
        let on = self.draft.text(&key("on"));
        load.on = on.and_then(|token| self.place(token)).and_then(|place| Id::reference(&self.ids.of(place)));
        load.backup = self.draft.read(&key("backup"), |text| match text {
            "battery" => Some(true),
            "none" => Some(false),
            _ => None,
        });
        Some(load)
    }
}

//! A single change to a plan: its cost, the part it concerns, and its entry in the report.

mod carry;

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::plan::{Answer, Choice, Cord, DistributionBox, Draw, Id, Load, Plan, Span, Stands};
use crate::quantity::{Length, Power};
use crate::report::{Repair, Value, Values};
use crate::tables::exhaust::AMPLE;
use crate::tables::shape::Plug;
use crate::verdict::wrong_anywhere;

pub(super) use carry::{LENGTHS, begun_at, shape_of};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Price {
    cost: u32,
    #[serde(default)]
    step: u32,
    /// A note for readers of `costs.toml`.
    #[serde(rename = "why")]
    _why: String,
}

/// The costs from `costs.toml`, by [`Change::key`].
static PRICES: LazyLock<BTreeMap<String, Price>> = LazyLock::new(|| {
    // The file is compiled in, so an error is a bug here, and a test reads every row.
    toml::from_str(include_str!("costs.toml")).unwrap_or_else(|error| panic!("costs: {error}"))
});

/// A receptacle that a load is plugged into.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Seat {
    /// The receptacle.
    pub at: Id,
    /// Whether the load is fixed there ([`Load::on`]), not just plugged in there at the moment.
    pub stays: bool,
}

/// A change that people can make.
///
/// The variants are in the order in which independent changes are carried out: the site, then what is removed, what is
/// replaced, what is new, what is plugged in elsewhere, and the hours.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Change {
    /// Move the generator into the open and far enough from people. One move covers both, and it comes first: the
    /// generator may be running where nobody may go.
    OpenAir,
    /// Move the generator farther from people.
    Distance,
    /// Stop feeding a building's wiring.
    NoBuilding,
    /// Put a CO alarm wherever people sleep.
    Alarm,
    /// Run one of several paralleled sets, by itself.
    RunAlone,
    /// Stop using a load.
    LeaveHome(Id),
    /// Put a cord or box away, with everything plugged into it.
    SetAside(Id),
    /// Unplug a load, cord or box to free a socket, before it is plugged in again elsewhere.
    Unplug(Id),
    /// Remove the bonding plug.
    BondingPlugOut,
    /// Move the bonding plug to this receptacle.
    BondingPlug(Id),
    /// Lay out a coiled cord.
    Uncoil(Id),
    /// Replace this cord with one marked for outdoor use.
    OutdoorCord(Id),
    /// Replace this cord with a grounded one.
    GroundedCord(Id),
    /// Add a cord or adapter with GFCI protection where this cord plugs in.
    ProtectedCord(Id),
    /// Replace this cord with a shorter one.
    Shorter {
        /// The cord.
        cord: Id,
        /// Its new length.
        length: Length,
    },
    /// Replace this cord with a thicker one.
    Thicker {
        /// The cord.
        cord: Id,
        /// Its new gauge, AWG.
        gauge: i8,
        /// How many cord sizes thicker it is.
        steps: u32,
    },
    /// Replace this appliance with a smaller one.
    Smaller {
        /// The load.
        load: Id,
        /// The divisor of its power: 2 for half, 3 for a third.
        part: u8,
    },
    /// Replace a splitter without breakers with a listed box that has them.
    BoxForSplitter {
        /// The splitter.
        cord: Id,
        /// Whether the box goes at the end of a new cord, as far out as the splitter's outlets were.
        far: bool,
    },
    /// Replace this box with a listed one.
    ListedBox(Id),
    /// Add GFCI adapters to sockets of a receptacle, for what is plugged in there.
    ProtectedOutlet {
        /// The receptacle.
        at: Id,
        /// The number of sockets.
        sockets: u8,
    },
    /// Add a three-outlet cord with GFCI protection to a socket of a receptacle.
    ThreeWay {
        /// The receptacle.
        at: Id,
        /// Whether the loads plugged in there are unplugged first to make room.
        clears: bool,
    },
    /// Plug a listed box into a free receptacle.
    NewBox(Id),
    /// Plug a cord or box in elsewhere.
    Replug {
        /// The part.
        part: Id,
        /// The receptacle.
        to: Id,
    },
    /// Plug a load in elsewhere.
    Move {
        /// The load.
        load: Id,
        /// The receptacle, or `None` for wherever it fits best.
        to: Option<Seat>,
    },
    /// Let loads with different hours share the sockets of a receptacle.
    TakeTurns {
        /// The load without a socket.
        load: Id,
        /// The loads that have the sockets.
        with: Vec<Id>,
        /// The receptacle.
        at: Id,
    },
    /// Run a load at another hour.
    Shift {
        /// The load.
        load: Id,
        /// The index into its hours.
        span: usize,
        /// The new start, in minutes of the day.
        to: u16,
    },
    /// Run a load for less than three hours at a stretch.
    LessTime {
        /// The load.
        load: Id,
        /// The index into its hours.
        span: usize,
    },
    /// Run a load only while people are awake.
    OffAtNight(Id),
}

impl Change {
    /// Returns the change that frees a load from its receptacle and lets it go wherever it fits best.
    #[must_use]
    pub const fn moved(load: Id) -> Self {
        Self::Move { load, to: None }
    }

    /// Returns the key under which its cost is listed.
    #[must_use]
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Distance => "more-distance",
            Self::NoBuilding => "no-building",
            Self::Alarm => "alarm",
            Self::OpenAir => "open-air",
            Self::RunAlone => "run-alone",
            Self::LeaveHome(_) => "leave-home",
            Self::SetAside(_) => "set-aside",
            Self::Unplug(_) => "unplug",
            Self::BondingPlugOut => "bonding-plug-out",
            Self::BondingPlug(_) => "bonding-plug",
            Self::Uncoil(_) => "uncoil",
            Self::OutdoorCord(_) => "outdoor-cord",
            Self::GroundedCord(_) => "grounded-cord",
            Self::ProtectedCord(_) => "protected-cord",
            Self::Shorter { .. } => "shorter-cord",
            Self::Thicker { .. } => "thicker-cord",
            Self::Smaller { .. } => "smaller-appliance",
            Self::BoxForSplitter { .. } => "box-for-splitter",
            Self::ListedBox(_) => "listed-box",
            Self::ProtectedOutlet { .. } => "protected-outlet",
            Self::ThreeWay { .. } => "three-way-cord",
            Self::NewBox(_) => "new-box",
            Self::Replug { .. } => "replug",
            Self::Move { .. } => "move",
            Self::TakeTurns { .. } => "take-turns",
            Self::Shift { .. } => "another-hour",
            Self::LessTime { .. } => "less-time",
            Self::OffAtNight(_) => "off-at-night",
        }
    }

    /// Returns the key of its message and of its repair in the report. All changes to one cord share a key, since only
    /// one new cord is bought.
    #[must_use]
    pub const fn told(&self) -> &'static str {
        match self {
            Self::OutdoorCord(_) | Self::GroundedCord(_) | Self::Shorter { .. } | Self::Thicker { .. } => "other-cord",
            // Its message states the hours before and after, like that of a shift.
            Self::LessTime { .. } => "another-hour",
            _ => self.key(),
        }
    }

    /// Returns its cost in points, from `costs.toml`.
    #[must_use]
    pub fn cost(&self) -> u32 {
        let price = &PRICES[self.key()];
        let steps = match self {
            Self::Thicker { steps, .. } => steps.saturating_sub(1),
            Self::Smaller { part, .. } => u32::from(part.saturating_sub(2)),
            Self::ProtectedOutlet { sockets, .. } => u32::from(sockets.saturating_sub(1)),
            Self::BoxForSplitter { far, .. } => u32::from(*far),
            _ => 0,
        };
        price.cost + price.step * steps
    }

    /// Returns the search key: the cost in the upper 32 bits, the burden on people below.
    ///
    /// Only [`Change::Shift`] has a burden. A wish is shifted sooner than a must, a short stretch sooner than a long
    /// one, and by as few minutes as possible.
    pub(super) fn weight(&self, plan: &Plan) -> u64 {
        let minor = match self {
            Self::Shift { load, span, to } => {
                plan.load(load).and_then(|of| Some((of, of.hours.get(*span)?))).map_or(0, |(of, hours)| {
                    let must = u64::from(of.wanted == crate::plan::Wanted::Must);
                    let day = u64::from(Span::DAY);
                    let by = u64::from(apart(hours.from, *to));
                    (must * day + u64::from(hours.minutes())) * day + by
                })
            }
            _ => 0,
        };
        // A plan has too few loads for the lower half of a sum to carry into the upper.
        (u64::from(self.cost()) << 32) + minor
    }

    /// Returns the part or load it changes; `None` for the site and the generator as a whole.
    #[must_use]
    pub const fn about(&self) -> Option<&Id> {
        match self {
            Self::Distance
            | Self::NoBuilding
            | Self::Alarm
            | Self::OpenAir
            | Self::RunAlone
            | Self::BondingPlugOut
            | Self::BondingPlug(_) => None,
            Self::LeaveHome(id)
            | Self::SetAside(id)
            | Self::Unplug(id)
            | Self::Replug { part: id, .. }
            | Self::Move { load: id, .. }
            | Self::TakeTurns { load: id, .. }
            | Self::Shift { load: id, .. }
            | Self::LessTime { load: id, .. }
            | Self::OffAtNight(id)
            | Self::Uncoil(id)
            | Self::OutdoorCord(id)
            | Self::GroundedCord(id)
            | Self::ProtectedCord(id)
            | Self::Shorter { cord: id, .. }
            | Self::Thicker { cord: id, .. }
            | Self::Smaller { load: id, .. }
            | Self::BoxForSplitter { cord: id, .. }
            | Self::ListedBox(id)
            | Self::ProtectedOutlet { at: id, .. }
            | Self::ThreeWay { at: id, .. }
            | Self::NewBox(id) => Some(id),
        }
    }

    /// Whether the two changes exclude each other.
    #[must_use]
    pub fn clashes(&self, other: &Self) -> bool {
        match (self, other) {
            (
                Self::Shift { load, span, .. } | Self::LessTime { load, span },
                Self::Shift { load: l, span: s, .. } | Self::LessTime { load: l, span: s },
            ) => load == l && span == s,
            (Self::Shift { load, .. } | Self::LessTime { load, .. }, Self::OffAtNight(l))
            | (Self::OffAtNight(l), Self::Shift { load, .. } | Self::LessTime { load, .. }) => load == l,
            // Nothing more is done to a part or load that is no longer used, and a box replaces the cord.
            (Self::SetAside(id) | Self::BoxForSplitter { cord: id, .. } | Self::LeaveHome(id), it)
            | (it, Self::SetAside(id) | Self::BoxForSplitter { cord: id, .. } | Self::LeaveHome(id)) => {
                it.about() == Some(id) || matches!(it, Self::TakeTurns { with, .. } if with.contains(id))
            }
            (Self::BondingPlugOut, Self::BondingPlug(_)) | (Self::BondingPlug(_), Self::BondingPlugOut) => true,
            // Loads that share a socket stay at it.
            (Self::TakeTurns { load, with, .. }, Self::Move { load: l, .. })
            | (Self::Move { load: l, .. }, Self::TakeTurns { load, with, .. }) => load == l || with.contains(l),
            (Self::TakeTurns { load, with, at }, Self::TakeTurns { load: l, with: w, at: a }) => {
                let both = |id: &Id| id == load || with.contains(id);
                load == l || (at != a && (both(l) || w.iter().any(both)))
            }
            _ => self.key() == other.key() && self.about() == other.about(),
        }
    }

    /// Returns the report's entry for this change. `before` is the plan as given, `after` the plan with all changes
    /// made.
    #[must_use]
    pub fn repair(&self, before: &Plan, after: &Plan) -> Repair {
        let mut values = Values::new();
        match self {
            Self::Distance => {
                values.insert("distance", AMPLE.into());
            }
            Self::OpenAir => {
                // Nobody is told to walk in and carry out a generator that may be running.
                let stands = match before.site.stands {
                    Answer::Known(bad @ (Stands::Enclosed | Stands::Covered)) => bad.word(),
                    _ => "unknown",
                };
                values.insert("distance", AMPLE.into());
                values.insert("stands", Value::Name(stands.to_owned()));
            }
            Self::OutdoorCord(id)
            | Self::GroundedCord(id)
            | Self::Shorter { cord: id, .. }
            | Self::Thicker { cord: id, .. } => {
                // Everything known about the new cord, for its buyer, including what other changes require of it.
                let cord = after.cord(id);
                let none = || Value::Name("none".to_owned());
                let wires = cord.and_then(|it| it.conductors.known());
                let length = cord.and_then(|it| it.length.known());
                let wire = cord.and_then(|it| it.wire.known());
                values.insert("wires", wires.map_or_else(none, |it| Value::Count((*it).into())));
                values.insert("length", length.map_or_else(none, |it| (*it).into()));
                // Adding protection is a separate step.
                let guarded = before.cord(id).is_some_and(|it| it.gfci == Answer::Known(true));
                values.insert("gfci", Value::yes_no(guarded));
                values.insert("wire", wire.map_or_else(none, |it| Value::Name(it.to_string())));
            }
            Self::SetAside(id) => {
                // A part that is fine but has no place here may be used elsewhere.
                let wrong = wrong_anywhere(before, id).map_or("no", |_| "yes");
                values.insert("wrong", Value::Name(wrong.to_owned()));
            }
            Self::Replug { to, .. } | Self::BondingPlug(to) => {
                values.insert("to", to.into());
            }
            Self::Move { load, to } => {
                let none = Value::Word { word: "change-by-the-card" };
                let was = before.load(load).and_then(Load::plugged_into);
                values.insert("from", was.map_or(none.clone(), Value::from));
                values.insert("to", to.as_ref().map_or(none, |seat| (&seat.at).into()));
                // `Mended::tell_of_load` overwrites this from the new report.
                values.insert("some", Value::yes_no(false));
            }
            Self::TakeTurns { with, at, .. } => {
                values.insert("to", at.into());
                values.insert("with", Value::Parts(with.clone()));
            }
            Self::Shift { load, span, .. } | Self::LessTime { load, span } => {
                for (name, plan) in [("from", before), ("to", after)] {
                    let hours = plan.load(load).and_then(|it| it.hours.get(*span).copied());
                    values.insert(name, Value::Hours(hours.into_iter().collect()));
                }
            }
            Self::OffAtNight(id) => {
                let hours = after.load(id).map(|load| load.hours.clone());
                values.insert("to", Value::Hours(hours.unwrap_or_default()));
            }
            Self::ProtectedOutlet { at, sockets } => {
                let new = new_cords(at, before, after).filter(|cord| cord.ends().len() == 1);
                values.insert("sockets", Value::Count(usize::from(*sockets)));
                values.extend(called(new.map(|cord| cord.id.clone()).collect()));
            }
            Self::ThreeWay { at, .. } => {
                let mut new = new_cords(at, before, after).filter(|cord| cord.ends().len() > 1);
                let new = new.next();
                let length = new.and_then(|cord| cord.length.known().copied());
                values.insert("length", length.unwrap_or(Length::ZERO).into());
                values.extend(called(new.map(|cord| cord.id.clone()).into_iter().collect()));
            }
            Self::Smaller { load, .. } => values.extend(of_smaller(load, before, after)),
            Self::BoxForSplitter { cord, .. } => values.extend(of_lead(cord, before, after)),
            _ => {}
        }
        values.extend(self.shapes(before, after));
        Repair { key: self.told(), about: self.about().into_iter().cloned().collect(), values, cost: self.cost() }
    }

    /// Returns the receptacle and plug shapes of what is bought.
    fn shapes(&self, before: &Plan, after: &Plan) -> Values {
        let of_cord = |cord: Option<&Cord>| cord.map(shapes_of_cord);
        let of_box = |it: Option<&DistributionBox>| it.map(shapes_of_box);
        let told = match self {
            Self::OutdoorCord(id)
            | Self::GroundedCord(id)
            | Self::ProtectedCord(id)
            | Self::Shorter { cord: id, .. }
            | Self::Thicker { cord: id, .. } => of_cord(after.cord(id)),
            Self::ProtectedOutlet { at, .. } => {
                of_cord(new_cords(at, before, after).find(|cord| cord.ends().len() == 1))
            }
            Self::ThreeWay { at, .. } => of_cord(new_cords(at, before, after).find(|cord| cord.ends().len() > 1)),
            Self::ListedBox(id) | Self::BoxForSplitter { cord: id, .. } => of_box(after.holder(id)),
            Self::NewBox(at) => {
                let mut new = after.boxes.iter().filter(|it| before.holder(&it.id).is_none());
                of_box(new.find(|it| it.from.as_ref() == Some(at)))
            }
            _ => None,
        };
        told.unwrap_or_default()
    }
}

/// Returns the shape of a plug, as shown to a buyer.
fn shape_of_plug(plug: Answer<Plug>) -> Value {
    Value::Shapes(plug.known().into_iter().map(ToString::to_string).collect())
}

/// Returns the shapes of a cord's plug and ends, as shown to a buyer.
fn shapes_of_cord(cord: &Cord) -> Values {
    let ends = cord.ends().iter().map(ToString::to_string);
    [("plug", shape_of_plug(cord.plug)), ("ends", Value::Shapes(ends.collect()))].into()
}

/// Returns the shapes of a box's inlet and outlets, one for each plug they take, and the ids of box and outlets so that
/// later steps can name them.
fn shapes_of_box(it: &DistributionBox) -> Values {
    let sockets = it.outlets.iter().flat_map(|outlet| {
        let (_, plugs) = outlet.plugs();
        std::iter::repeat_n(outlet.shape.to_string(), usize::from(plugs))
    });
    let outlets = it.outlets.iter().map(|outlet| outlet.id.clone());
    [
        ("plug", shape_of_plug(it.inlet)),
        ("ends", Value::Shapes(sockets.collect())),
        ("box", Value::Parts(vec![it.id.clone()])),
        ("outlets", Value::Parts(outlets.collect())),
    ]
    .into()
}

/// Returns the ids of new gear, so that later steps can name it.
fn called(ids: Vec<Id>) -> Values {
    [("named", Value::yes_no(!ids.is_empty())), ("names", Value::Parts(ids))].into()
}

/// Returns the length and wire of a new cord that leads to a new box, or `none` where the box has no new cord.
fn of_lead(inlet: &Id, before: &Plan, after: &Plan) -> Values {
    let from = after.holder(inlet).and_then(|it| it.from.as_ref());
    let lead = from.and_then(|from| after.cord(from)).filter(|it| before.cord(&it.id).is_none());
    let none = || Value::Name("none".to_owned());
    let length = lead.and_then(|it| it.length.known());
    let wire = lead.and_then(|it| it.wire.known());
    let mut values = called(lead.map(|it| it.id.clone()).into_iter().collect());
    values.insert("length", length.map_or_else(none, |it| (*it).into()));
    values.insert("wire", wire.map_or_else(none, |it| Value::Name(it.to_string())));
    values
}

/// Returns the cords in this receptacle that only `after` has.
fn new_cords<'p>(at: &'p Id, before: &'p Plan, after: &'p Plan) -> impl Iterator<Item = &'p Cord> {
    after.cords.iter().filter(move |cord| cord.from.as_ref() == Some(at) && before.cord(&cord.id).is_none())
}

/// Returns what to look for in a smaller appliance, next to the power of the one it replaces.
fn of_smaller(load: &Id, before: &Plan, after: &Plan) -> Values {
    let power_of = |plan: &Plan| match plan.load(load).map(|it| &it.running) {
        Some(Answer::Known(Draw::Power(power))) => *power,
        _ => Power::ZERO,
    };
    let running = power_of(after);
    // States the starting draw too, since a motor of fewer watts may need just as much to start.
    let units = crate::loads::units(after).0;
    let mut units = units.iter().filter(|unit| after.loads[unit.load].id == *load);
    let starting = units.next().map_or(running, |unit| unit.starting);
    [
        ("old", power_of(before).into()),
        ("power", running.into()),
        ("starts", Value::yes_no(starting > running)),
        ("starting", starting.into()),
        // `Mended::tell_of_load` overwrites this from the new report.
        ("apart", Value::yes_no(false)),
    ]
    .into()
}

/// Returns the minutes between two minutes of the day, the shorter way around the clock.
pub(super) fn apart(one: u16, other: u16) -> u16 {
    let on = (other + Span::DAY - one) % Span::DAY;
    on.min(Span::DAY - on)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_of_change_has_its_price_and_no_price_is_for_nothing() {
        let id = Id::new("a").expect("an id");
        let at = || id.clone();
        let all = [
            Change::Distance,
            Change::NoBuilding,
            Change::Alarm,
            Change::OpenAir,
            Change::RunAlone,
            Change::LeaveHome(at()),
            Change::SetAside(at()),
            Change::Unplug(at()),
            Change::BondingPlugOut,
            Change::BondingPlug(at()),
            Change::Replug { part: at(), to: at() },
            Change::moved(at()),
            Change::TakeTurns { load: at(), with: vec![at()], at: at() },
            Change::Shift { load: at(), span: 0, to: 0 },
            Change::LessTime { load: at(), span: 0 },
            Change::OffAtNight(at()),
            Change::Uncoil(at()),
            Change::OutdoorCord(at()),
            Change::GroundedCord(at()),
            Change::ProtectedCord(at()),
            Change::Shorter { cord: at(), length: AMPLE },
            Change::Thicker { cord: at(), gauge: 12, steps: 1 },
            Change::Smaller { load: at(), part: 2 },
            Change::BoxForSplitter { cord: at(), far: false },
            Change::ListedBox(at()),
            Change::ProtectedOutlet { at: at(), sockets: 1 },
            Change::ThreeWay { at: at(), clears: false },
            Change::NewBox(at()),
        ];
        let mut keys: Vec<&str> = all.iter().map(Change::key).collect();
        keys.sort_unstable();
        let stated: Vec<&str> = PRICES.keys().map(String::as_str).collect();
        assert_eq!(keys, stated);
        assert!(all.iter().all(|change| change.cost() > 0));
        let words = crate::words::Words::english();
        for key in all.iter().map(Change::told) {
            assert!(words.has(&format!("change-{key}")), "{key}");
        }
    }

    /// Programs read the id itself, without quotation marks, which vary by language.
    #[test]
    fn where_a_load_goes_is_an_id_and_no_text() {
        let before = crate::plan::read(crate::plan::demo::MENDED).expect("the demo's plan");
        let load = before.loads.iter().find(|load| load.on.is_some());
        let load = load.expect("something is plugged in somewhere");
        let change = Change::moved(load.id.clone());
        let mut after = before.clone();
        assert!(change.apply(&mut after));
        let repair = change.repair(&before, &after);
        let on = load.on.as_ref().expect("as asked for");
        assert_eq!(repair.values["from"], Value::Name(on.to_string()));
        let card = "change-by-the-card";
        assert_eq!(repair.values["to"], Value::Word { word: card });
        let seat = Seat { at: on.clone(), stays: true };
        let there = Change::Move { load: load.id.clone(), to: Some(seat) };
        let repair = there.repair(&before, &after);
        assert_eq!(repair.values["to"], Value::Name(on.to_string()));
    }

    #[test]
    fn minutes_apart_go_round_midnight() {
        for (one, other, minutes) in [(0, 0, 0), (0, 90, 90), (1_410, 30, 60), (30, 1_410, 60)] {
            assert_eq!(apart(one, other), minutes);
        }
    }

    /// Shifting prefers a wish to a must, then the shorter stretch, then the smaller shift.
    #[test]
    fn who_wants_less_waits() {
        let mut plan = crate::plan::read(crate::plan::demo::MENDED).expect("the demo's plan");
        let hours = |from, to| vec![Span { from, to }];
        plan.loads[0].hours = hours(600, 900);
        plan.loads[1].hours = hours(600, 615);
        plan.loads[2].hours = hours(600, 900);
        plan.loads[2].wanted = crate::plan::Wanted::Wish;
        let shift = |load: usize, to| {
            let load = plan.loads[load].id.clone();
            Change::Shift { load, span: 0, to }.weight(&plan)
        };
        assert!(shift(1, 0) < shift(0, 601));
        assert!(shift(2, 0) < shift(1, 601));
        assert!(shift(1, 615) < shift(1, 630) && shift(1, 585) == shift(1, 615));
        assert!(shift(0, 0) < Change::OffAtNight(plan.loads[0].id.clone()).weight(&plan) + (1 << 32));
    }
}

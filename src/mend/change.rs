//! One change of a plan: what it costs, what it touches, and how the plan looks after it.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::plan::{Answer, Cord, DistributionBox, Draw, Id, Outlet, Plan, Span, Stands};
use crate::quantity::{Current, Length, Power, Wire};
use crate::report::{Repair, Value, Values};
use crate::rules::night;
use crate::tables::exhaust::AMPLE;
use crate::tables::shape::{Circuit, Configuration, Plug, Receptacle};

/// How long a new adapter and a new three-way cord are taken to be.
const ADAPTER: Length = Length::from_millimetres(610);
const THREE_WAY: Length = Length::from_millimetres(7_620);

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Price {
    cost: u32,
    #[serde(default)]
    step: u32,
    /// For whoever reads the file.
    #[serde(rename = "why")]
    _why: String,
}

/// The stated costs, by the key of the change.
static PRICES: LazyLock<BTreeMap<String, Price>> = LazyLock::new(|| {
    // Part of the program: a mistake in it is ours, and a test reads every row.
    toml::from_str(include_str!("costs.toml")).unwrap_or_else(|error| panic!("costs: {error}"))
});

/// A change that people can make. They are applied in the order they are listed here: parts are
/// taken away before sockets are counted, and new parts come last.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Change {
    /// The set stands farther from people.
    Distance,
    /// No building's wiring is fed.
    NoBuilding,
    /// Everyone sleeps with an alarm.
    Alarm,
    /// The set stands in the open.
    OpenAir,
    /// A cord or box stays unused, with all that hangs on it.
    SetAside(Id),
    /// A cord or box is plugged in elsewhere.
    Replug {
        /// The part.
        part: Id,
        /// The receptacle.
        to: Id,
    },
    /// A load is plugged in where it fits best, not where the plan has it.
    Move(Id),
    /// A load runs later.
    Shift {
        /// The load.
        load: Id,
        /// Which of its hours.
        span: usize,
        /// The minute of the day at which it begins now.
        to: u16,
    },
    /// A load runs only while people are awake.
    OffAtNight(Id),
    /// A cord is laid out.
    Uncoil(Id),
    /// A cord marked for outdoor use in place of this one.
    OutdoorCord(Id),
    /// A cord with a ground in place of this one.
    GroundedCord(Id),
    /// A cord or adapter with ground-fault protection where this cord plugs in.
    ProtectedCord(Id),
    /// A shorter cord in place of this one.
    Shorter {
        /// The cord.
        cord: Id,
        /// Its new length.
        length: Length,
    },
    /// A thicker cord in place of this one.
    Thicker {
        /// The cord.
        cord: Id,
        /// Its gauge.
        gauge: i8,
        /// How many sizes of cord thicker.
        steps: u32,
    },
    /// A smaller appliance in place of this one.
    Smaller {
        /// The load.
        load: Id,
        /// One over so much of its power.
        part: u8,
    },
    /// A listed box with breakers in place of a splitter without.
    BoxForSplitter(Id),
    /// A listed box in place of this one.
    ListedBox(Id),
    /// Ground-fault protection in each free socket of a receptacle.
    ProtectedOutlet {
        /// The receptacle.
        at: Id,
        /// How many sockets are free.
        sockets: u8,
    },
    /// A cord with three ends and ground-fault protection, in a free socket.
    ThreeWay(Id),
    /// A listed box in a free receptacle.
    NewBox(Id),
}

impl Change {
    /// Its key: of its cost, its words and its repair in the report.
    #[must_use]
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Distance => "more-distance",
            Self::NoBuilding => "no-building",
            Self::Alarm => "alarm",
            Self::OpenAir => "open-air",
            Self::SetAside(_) => "set-aside",
            Self::Replug { .. } => "replug",
            Self::Move(_) => "move",
            Self::Shift { .. } => "another-hour",
            Self::OffAtNight(_) => "off-at-night",
            Self::Uncoil(_) => "uncoil",
            Self::OutdoorCord(_) => "outdoor-cord",
            Self::GroundedCord(_) => "grounded-cord",
            Self::ProtectedCord(_) => "protected-cord",
            Self::Shorter { .. } => "shorter-cord",
            Self::Thicker { .. } => "thicker-cord",
            Self::Smaller { .. } => "smaller-appliance",
            Self::BoxForSplitter(_) => "box-for-splitter",
            Self::ListedBox(_) => "listed-box",
            Self::ProtectedOutlet { .. } => "protected-outlet",
            Self::ThreeWay(_) => "three-way-cord",
            Self::NewBox(_) => "new-box",
        }
    }

    /// What it costs on the stated list.
    #[must_use]
    pub fn cost(&self) -> u32 {
        let price = &PRICES[self.key()];
        let steps = match self {
            Self::Thicker { steps, .. } => steps.saturating_sub(1),
            Self::Smaller { part, .. } => u32::from(part.saturating_sub(2)),
            Self::ProtectedOutlet { sockets, .. } => u32::from(sockets.saturating_sub(1)),
            _ => 0,
        };
        price.cost + price.step * steps
    }

    /// The part or load it is about.
    #[must_use]
    pub const fn about(&self) -> Option<&Id> {
        match self {
            Self::Distance | Self::NoBuilding | Self::Alarm | Self::OpenAir => None,
            Self::SetAside(id)
            | Self::Replug { part: id, .. }
            | Self::Move(id)
            | Self::Shift { load: id, .. }
            | Self::OffAtNight(id)
            | Self::Uncoil(id)
            | Self::OutdoorCord(id)
            | Self::GroundedCord(id)
            | Self::ProtectedCord(id)
            | Self::Shorter { cord: id, .. }
            | Self::Thicker { cord: id, .. }
            | Self::Smaller { load: id, .. }
            | Self::BoxForSplitter(id)
            | Self::ListedBox(id)
            | Self::ProtectedOutlet { at: id, .. }
            | Self::ThreeWay(id)
            | Self::NewBox(id) => Some(id),
        }
    }

    /// Whether the two cannot both be made: they say different things of the same.
    #[must_use]
    pub fn clashes(&self, other: &Self) -> bool {
        match (self, other) {
            (
                Self::Shift { load, span, .. },
                Self::Shift {
                    load: l, span: s, ..
                },
            ) => load == l && span == s,
            (Self::Shift { load, .. }, Self::OffAtNight(l))
            | (Self::OffAtNight(l), Self::Shift { load, .. }) => load == l,
            // What is set aside needs nothing more, and a box replaces the cord.
            (Self::SetAside(id) | Self::BoxForSplitter(id), it)
            | (it, Self::SetAside(id) | Self::BoxForSplitter(id)) => it.about() == Some(id),
            _ => self.key() == other.key() && self.about() == other.about(),
        }
    }

    /// The change as the report has it. `before` is the plan without any change, `after` the
    /// plan with all of them.
    #[must_use]
    pub fn repair(&self, before: &Plan, after: &Plan) -> Repair {
        let mut values = Values::new();
        match self {
            Self::Distance => {
                values.insert("distance", AMPLE.into());
            }
            Self::Replug { to, .. } => {
                values.insert("to", to.into());
            }
            Self::Move(id) => {
                let on = |plan: &Plan| {
                    let load = plan.loads.iter().find(|load| load.id == *id)?;
                    load.on.as_ref().map(Value::from)
                };
                let none = || Value::Word {
                    word: "change-by-the-card",
                };
                values.insert("from", on(before).unwrap_or_else(none));
                values.insert("to", on(after).unwrap_or_else(none));
            }
            Self::Shift { load, span, .. } => {
                for (name, plan) in [("from", before), ("to", after)] {
                    let hours = plan
                        .loads
                        .iter()
                        .find(|it| it.id == *load)
                        .and_then(|it| it.hours.get(*span));
                    let text = hours.map(Span::to_string);
                    values.insert(name, Value::Name(text.unwrap_or_default()));
                }
            }
            Self::OffAtNight(id) => {
                let load = after.loads.iter().find(|it| it.id == *id);
                let hours = load.map_or(&[][..], |load| &load.hours);
                let text: Vec<String> = hours.iter().map(Span::to_string).collect();
                values.insert("to", Value::Name(text.join(", ")));
            }
            Self::Shorter { length, .. } => {
                values.insert("length", (*length).into());
            }
            Self::Thicker { gauge, .. } => {
                values.insert("wire", Value::Name(format!("{gauge} AWG")));
            }
            Self::Smaller { load, .. } => {
                let power =
                    after
                        .loads
                        .iter()
                        .find(|it| it.id == *load)
                        .and_then(|it| match it.running {
                            Answer::Known(Draw::Power(power)) => Some(power),
                            _ => None,
                        });
                values.insert("power", power.unwrap_or(Power::ZERO).into());
            }
            _ => {}
        }
        Repair {
            key: self.key(),
            about: self.about().into_iter().cloned().collect(),
            values,
            cost: self.cost(),
        }
    }

    /// Makes the change. `false` when there is nothing to make it on.
    pub fn apply(&self, plan: &mut Plan) -> bool {
        match self {
            Self::Distance => plan.site.sleepers_at = Answer::Known(AMPLE),
            Self::NoBuilding => plan.site.feeds_building = Answer::Known(false),
            Self::Alarm => plan.site.co_alarm = Answer::Known(true),
            Self::OpenAir => plan.site.stands = Answer::Known(Stands::Open),
            Self::SetAside(id) => return set_aside(plan, id),
            Self::Replug { part, to } => {
                let cord = plan.cords.iter_mut().find(|it| it.id == *part);
                let inlet = plan.boxes.iter_mut().find(|it| it.id == *part);
                let from = match (cord, inlet) {
                    (Some(cord), _) => &mut cord.from,
                    (None, Some(it)) => &mut it.from,
                    (None, None) => return false,
                };
                *from = Some(to.clone());
            }
            Self::Move(id) => match plan.loads.iter_mut().find(|it| it.id == *id) {
                Some(load) => load.now = load.on.take(),
                None => return false,
            },
            Self::Shift { load, span, to } => {
                let hours = plan
                    .loads
                    .iter_mut()
                    .find(|it| it.id == *load)
                    .and_then(|it| it.hours.get_mut(*span));
                match hours {
                    Some(hours) => *hours = later(*hours, *to),
                    None => return false,
                }
            }
            Self::OffAtNight(id) => return off_at_night(plan, id),
            Self::Uncoil(id) => return edit(plan, id, |it| it.coiled = Answer::Known(false)),
            Self::OutdoorCord(id) => return edit(plan, id, |it| it.outdoor = Answer::Known(true)),
            Self::ProtectedCord(id) => return edit(plan, id, |it| it.gfci = Answer::Known(true)),
            Self::GroundedCord(id) => return edit(plan, id, ground),
            Self::Shorter { cord, length } => {
                return edit(plan, cord, |it| it.length = Answer::Known(*length));
            }
            Self::Thicker { cord, gauge, .. } => {
                return edit(plan, cord, |it| it.wire = Answer::Known(Wire::Awg(*gauge)));
            }
            Self::Smaller { load, part } => return smaller(plan, load, *part),
            Self::BoxForSplitter(id) => return box_for_splitter(plan, id),
            Self::ListedBox(id) => match plan.boxes.iter_mut().find(|it| it.id == *id) {
                Some(it) => list(it),
                None => return false,
            },
            Self::ProtectedOutlet { at, sockets } => return protect(plan, at, *sockets),
            Self::ThreeWay(at) => return three_way(plan, at),
            Self::NewBox(at) => return new_box(plan, at),
        }
        true
    }
}

/// What a load's hours leave of the day; where that is nothing, or nobody said when it runs, so
/// long before the night.
fn off_at_night(plan: &mut Plan, id: &Id) -> bool {
    const BEFORE: u16 = 120;
    let Some(night) = night(&plan.site) else {
        return false;
    };
    let Some(load) = plan.loads.iter_mut().find(|it| it.id == *id) else {
        return false;
    };
    let runs = |minute: u16| {
        !night.contains(minute) && load.hours.iter().any(|span| span.contains(minute))
    };
    // From the end of the night on, so that no stretch is cut in two by midnight.
    let day = (0..Span::DAY).map(|minute| (night.to + minute) % Span::DAY);
    let mut hours: Vec<Span> = Vec::new();
    let mut before = false;
    for minute in day {
        let now = runs(minute);
        let to = if minute + 1 == Span::DAY {
            Span::DAY
        } else {
            minute + 1
        };
        match hours.last_mut() {
            Some(last) if now && before => last.to = to,
            _ if now => hours.push(Span { from: minute, to }),
            _ => {}
        }
        before = now;
    }
    if hours.is_empty() {
        let from = (night.from + Span::DAY - BEFORE) % Span::DAY;
        hours.push(Span {
            from,
            to: night.from,
        });
    }
    load.hours = hours;
    true
}

/// The same stretch, begun at another minute.
fn later(hours: Span, from: u16) -> Span {
    let to = (from + hours.minutes()) % Span::DAY;
    Span {
        from,
        to: if to == 0 { Span::DAY } else { to },
    }
}

fn edit(plan: &mut Plan, id: &Id, change: impl FnOnce(&mut Cord)) -> bool {
    plan.cords
        .iter_mut()
        .find(|it| it.id == *id)
        .map(change)
        .is_some()
}

/// Unplugs the part and whatever hangs on it, and frees the loads plugged in there.
fn set_aside(plan: &mut Plan, id: &Id) -> bool {
    let mut parts = vec![id.clone()];
    let mut found = false;
    while let Some(part) = parts.pop() {
        let mut ends: Vec<Id> = Vec::new();
        if let Some(cord) = plan.cords.iter_mut().find(|it| it.id == part) {
            cord.from = None;
            ends.extend((0..cord.ends.len()).map(|end| cord.end_id(end)));
            found = true;
        } else if let Some(it) = plan.boxes.iter_mut().find(|it| it.id == part) {
            it.from = None;
            ends.extend(it.outlets.iter().map(|outlet| outlet.id.clone()));
            found = true;
        }
        for load in &mut plan.loads {
            if load.on.as_ref().is_some_and(|on| ends.contains(on)) {
                load.on = None;
            }
            if load.now.as_ref().is_some_and(|now| ends.contains(now)) {
                load.now = None;
            }
        }
        let on = |from: &Option<Id>| from.as_ref().is_some_and(|from| ends.contains(from));
        parts.extend(
            plan.cords
                .iter()
                .filter(|it| on(&it.from))
                .map(|it| it.id.clone()),
        );
        parts.extend(
            plan.boxes
                .iter()
                .filter(|it| on(&it.from))
                .map(|it| it.id.clone()),
        );
    }
    found
}

fn ground(cord: &mut Cord) {
    if !cord.plug.0.grounded()
        && let Some(end) = cord.ends.first()
    {
        cord.plug = Plug(end.0);
    }
    cord.conductors = Answer::Known(match cord.plug.0.circuit() {
        Circuit::OneLeg | Circuit::TwoLegs => 3,
        Circuit::TwoLegsNeutral => 4,
    });
}

/// An appliance of a part of the power; what it takes to start falls with it.
fn smaller(plan: &mut Plan, id: &Id, part: u8) -> bool {
    let Some(load) = plan.loads.iter_mut().find(|it| it.id == *id) else {
        return false;
    };
    let Answer::Known(Draw::Power(running)) = load.running else {
        return false;
    };
    // Up: a demand.
    let part = i64::from(part);
    let less = |power: Power| Power::from_milliwatts((power.milliwatts() + part - 1) / part);
    load.running = Answer::Known(Draw::Power(less(running)));
    if let Answer::Known(starting) = load.starting {
        load.starting = Answer::Known(less(starting));
    }
    if let Answer::Known(amps) = load.starting_current {
        let less = (amps.milliamps() + part - 1) / part;
        load.starting_current = Answer::Known(Current::from_milliamps(less));
    }
    true
}

/// Wire that its breaker protects, by the usual sizes for 15, 20, 30 and 50 A.
fn wire_for(shape: Configuration) -> Wire {
    Wire::Awg(match shape.rating().milliamps() {
        0..=15_000 => 14,
        15_001..=20_000 => 12,
        20_001..=30_000 => 10,
        _ => 6,
    })
}

/// The outlet as a listed box has it: its own breaker and ground-fault protection.
fn guard(outlet: &mut Outlet) {
    let rating = outlet.shape.0.rating();
    outlet.breaker = match outlet.breaker {
        Answer::Known(amps) if amps <= rating => Answer::Known(amps),
        _ => Answer::Known(rating),
    };
    outlet.shares = None;
    outlet.gfci = Answer::Known(true);
    outlet.wire = Answer::Known(wire_for(outlet.shape.0));
}

fn list(it: &mut DistributionBox) {
    it.listed = Answer::Known(true);
    it.bond = Answer::Known(false);
    it.outlets.iter_mut().for_each(guard);
}

fn outlet(id: Id, shape: Receptacle, sockets: u8) -> Outlet {
    Outlet {
        id,
        shape,
        sockets: Some(sockets),
        breaker: Answer::Missing,
        shares: None,
        trips_at: None,
        gfci: Answer::Missing,
        wire: Answer::Missing,
        leg: Answer::Missing,
    }
}

/// The splitter's plug and ends again, as a box with a breaker for each.
fn box_for_splitter(plan: &mut Plan, id: &Id) -> bool {
    let Some(index) = plan.cords.iter().position(|it| it.id == *id) else {
        return false;
    };
    let cord = plan.cords.remove(index);
    let mut renamed: Vec<(Id, Id)> = Vec::new();
    let mut outlets = Vec::new();
    for (end, shape) in cord.ends.iter().enumerate() {
        let new = free_id(plan, &format!("{id}-{}", end + 1));
        renamed.push((cord.end_id(end), new.clone()));
        outlets.push(outlet(new, *shape, 1));
    }
    let mut it = DistributionBox {
        id: cord.id.clone(),
        from: cord.from,
        inlet: cord.plug,
        listed: Answer::Known(true),
        bond: Answer::Known(false),
        outlets,
    };
    list(&mut it);
    plan.boxes.push(it);
    let rename = |on: &mut Option<Id>| {
        if let Some(on) = on
            && let Some((_, new)) = renamed.iter().find(|(old, _)| old == on)
        {
            *on = new.clone();
        }
    };
    plan.loads.iter_mut().for_each(|it| {
        rename(&mut it.on);
        rename(&mut it.now);
    });
    plan.cords.iter_mut().for_each(|it| rename(&mut it.from));
    plan.boxes.iter_mut().for_each(|it| rename(&mut it.from));
    true
}

/// The shape of a receptacle of the plan.
pub(super) fn shape_of(plan: &Plan, at: &Id) -> Option<Receptacle> {
    let boxes = plan.boxes.iter().flat_map(|it| &it.outlets);
    let outlets = plan.generator.outlets.iter().chain(boxes);
    let of_cord = || {
        plan.cords.iter().find_map(|cord| {
            let end = (0..cord.ends.len()).find(|end| cord.end_id(*end) == *at)?;
            Some(cord.ends[end])
        })
    };
    outlets
        .clone()
        .find(|outlet| outlet.id == *at)
        .map(|outlet| outlet.shape)
        .or_else(of_cord)
}

/// A cord as one would buy it today: three-wire, for outdoors, laid out, with protection.
fn new_cord(plan: &Plan, at: &Id, stem: &str, shape: Receptacle) -> Cord {
    let conductors = match shape.0.circuit() {
        Circuit::OneLeg | Circuit::TwoLegs => 3,
        Circuit::TwoLegsNeutral => 4,
    };
    Cord {
        id: free_id(plan, &format!("{at}-{stem}")),
        from: Some(at.clone()),
        plug: Plug(shape.0),
        ends: vec![shape],
        wire: Answer::Known(wire_for(shape.0)),
        conductors: Answer::Known(conductors),
        length: Answer::Known(ADAPTER),
        outdoor: Answer::Known(true),
        coiled: Answer::Known(false),
        gfci: Answer::Known(true),
    }
}

fn protect(plan: &mut Plan, at: &Id, sockets: u8) -> bool {
    let Some(shape) = shape_of(plan, at) else {
        return false;
    };
    let mut new = Vec::new();
    for _ in 0..sockets {
        let cord = new_cord(plan, at, "gfci", shape);
        new.push(cord.id.clone());
        plan.cords.push(cord);
    }
    // What was plugged in there is plugged in behind the protection now.
    let mut next = new.into_iter();
    for load in plan
        .loads
        .iter_mut()
        .filter(|it| it.on.as_ref() == Some(at))
    {
        load.on = next.next();
    }
    true
}

fn three_way(plan: &mut Plan, at: &Id) -> bool {
    let Some(shape) = shape_of(plan, at) else {
        return false;
    };
    let small = Configuration::N5_15;
    let plug = if Receptacle(shape.0).takes(Plug(small)) {
        Plug(small)
    } else {
        return false;
    };
    let cord = Cord {
        plug,
        ends: vec![Receptacle(small); 3],
        wire: Answer::Known(Wire::Awg(12)),
        length: Answer::Known(THREE_WAY),
        ..new_cord(plan, at, "three", Receptacle(small))
    };
    plan.cords.push(cord);
    true
}

/// A box with two 20 A receptacles, for one leg or for two.
fn new_box(plan: &mut Plan, at: &Id) -> bool {
    let Some(shape) = shape_of(plan, at) else {
        return false;
    };
    let id = free_id(plan, &format!("{at}-box"));
    let mut it = DistributionBox {
        id: id.clone(),
        from: Some(at.clone()),
        inlet: Plug(shape.0),
        listed: Answer::Known(true),
        bond: Answer::Known(false),
        outlets: ["1", "2"]
            .map(|number| {
                let id = free_id(plan, &format!("{id}-{number}"));
                outlet(id, Receptacle(Configuration::N5_20), 2)
            })
            .into(),
    };
    if shape.0.circuit() == Circuit::TwoLegsNeutral {
        it.outlets[1].leg = Answer::Known(crate::plan::Leg::B);
        it.outlets[0].leg = Answer::Known(crate::plan::Leg::A);
    }
    list(&mut it);
    plan.boxes.push(it);
    true
}

/// An id that nothing in the plan has: this text, else with a number after it.
fn free_id(plan: &Plan, wanted: &str) -> Id {
    let stem: String = wanted
        .replace('.', "-")
        .chars()
        .take(Id::LONGEST - 4)
        .collect();
    let boxes = || plan.boxes.iter();
    let taken = |id: &Id| {
        plan.generator.outlets.iter().any(|it| it.id == *id)
            || plan.cords.iter().any(|it| it.id == *id)
            || boxes().any(|it| it.id == *id || it.outlets.iter().any(|it| it.id == *id))
            || plan.loads.iter().any(|it| it.id == *id)
    };
    std::iter::once(stem.clone())
        .chain((2..=u16::MAX).map(|number| format!("{stem}-{number}")))
        .filter_map(|text| Id::new(&text))
        .find(|id| !taken(id))
        // A plan has fewer parts than there are numbers, and a stem made of ids is one.
        .unwrap_or_else(|| plan.generator.outlets[0].id.clone())
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
            Change::SetAside(at()),
            Change::Replug {
                part: at(),
                to: at(),
            },
            Change::Move(at()),
            Change::Shift {
                load: at(),
                span: 0,
                to: 0,
            },
            Change::OffAtNight(at()),
            Change::Uncoil(at()),
            Change::OutdoorCord(at()),
            Change::GroundedCord(at()),
            Change::ProtectedCord(at()),
            Change::Shorter {
                cord: at(),
                length: AMPLE,
            },
            Change::Thicker {
                cord: at(),
                gauge: 12,
                steps: 1,
            },
            Change::Smaller {
                load: at(),
                part: 2,
            },
            Change::BoxForSplitter(at()),
            Change::ListedBox(at()),
            Change::ProtectedOutlet {
                at: at(),
                sockets: 1,
            },
            Change::ThreeWay(at()),
            Change::NewBox(at()),
        ];
        let mut keys: Vec<&str> = all.iter().map(Change::key).collect();
        keys.sort_unstable();
        let stated: Vec<&str> = PRICES.keys().map(String::as_str).collect();
        assert_eq!(keys, stated);
        assert!(all.iter().all(|change| change.cost() > 0));
        let words = crate::words::Words::english();
        for key in keys {
            assert!(words.has(&format!("change-{key}")), "{key}");
        }
    }

    /// Quotation marks are a language's: another program reads the id itself.
    #[test]
    fn where_a_load_goes_is_an_id_and_no_text() {
        let before = crate::plan::read(crate::plan::demo::MENDED).expect("the demo's plan");
        let load = before.loads.iter().find(|load| load.on.is_some());
        let load = load.expect("something is plugged in somewhere");
        let change = Change::Move(load.id.clone());
        let mut after = before.clone();
        assert!(change.apply(&mut after));
        let repair = change.repair(&before, &after);
        let on = load.on.as_ref().expect("as asked for");
        assert_eq!(repair.values["from"], Value::Name(on.to_string()));
        let card = "change-by-the-card";
        assert_eq!(repair.values["to"], Value::Word { word: card });
    }

    /// What a part of 1,001 W or of 0.001 W asks for is a demand.
    #[test]
    fn a_part_of_a_power_rounds_up() {
        for (whole, part, less) in [(1_001_000, 3, 333_667), (1, 2, 1), (900, 3, 300)] {
            let mut plan = crate::plan::read(crate::plan::demo::MENDED).expect("the demo's plan");
            let load = &mut plan.loads[0];
            load.running = Answer::Known(Draw::Power(Power::from_milliwatts(whole)));
            load.starting = Answer::Known(Power::from_milliwatts(whole));
            let id = load.id.clone();
            assert!(Change::Smaller { load: id, part }.apply(&mut plan));
            let less = Power::from_milliwatts(less);
            assert_eq!(plan.loads[0].running, Answer::Known(Draw::Power(less)));
            assert_eq!(plan.loads[0].starting, Answer::Known(less));
        }
    }

    #[test]
    fn hours_keep_their_length() {
        let late = later(Span { from: 1380, to: 60 }, 1400);
        assert_eq!((late.from, late.to, late.minutes()), (1400, 80, 120));
        assert_eq!(later(Span { from: 0, to: 60 }, 1380).to, Span::DAY);
    }
}

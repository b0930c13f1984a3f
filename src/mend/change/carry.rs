//! Applies a change to a plan.

use super::{Change, Seat};
use crate::loads::CONTINUOUS_MINUTES;
use crate::mend::places::{Leads, ends_of};
use crate::plan::row::Part;
use crate::plan::{Answer, Cord, DistributionBox, Draw, Id, LONGEST_NAME, LoadKind, Outlet, Plan, Span, Stands};
use crate::quantity::{Current, Length, Power, Wire};
use crate::rules::night;
use crate::sharing::{AT_SET, length_of};
use crate::tables::conductor::gauge_of;
use crate::tables::exhaust::AMPLE;
use crate::tables::shape::{Circuit, Configuration, Plug, Receptacle};

/// The assumed length of a new adapter: 610 mm, about 2 ft.
const ADAPTER: Length = Length::from_millimetres(610);
/// The lengths in which cords are sold: 25 ft, 50 ft and 100 ft.
pub(in crate::mend) const LENGTHS: [Length; 3] =
    [Length::from_millimetres(7_620), Length::from_millimetres(15_240), Length::from_millimetres(30_480)];

impl Change {
    /// Makes the change. Returns `false` when the plan lacks what it changes.
    ///
    /// A plug that comes out of a hot outlet is still recorded as hot wherever it goes.
    pub fn apply(&self, plan: &mut Plan) -> bool {
        let were_hot = plan.in_hot_outlets();
        let made = self.make(plan);
        if !were_hot.is_empty() {
            let still = plan.in_hot_outlets();
            for (id, _) in were_hot.iter().filter(|it| !still.contains(it)) {
                if plan.gear_of(id).is_none_or(|it| it.hot.is_none()) {
                    plan.feel_hot(id);
                }
            }
        }
        made
    }

    fn make(&self, plan: &mut Plan) -> bool {
        match self {
            Self::Distance => plan.site.sleepers_at = Answer::Known(AMPLE),
            Self::NoBuilding => plan.site.feeds_building = Answer::Known(false),
            Self::Alarm => plan.site.co_alarm = Answer::Known(true),
            Self::OpenAir => {
                let site = &mut plan.site;
                site.stands = Answer::Known(Stands::Open);
                if site.sleepers_at.known().is_none_or(|at| *at < AMPLE) {
                    site.sleepers_at = Answer::Known(AMPLE);
                }
            }
            Self::RunAlone => return plan.generator.parallel.take().is_some(),
            Self::LeaveHome(id) => {
                let before = plan.loads.len();
                plan.loads.retain(|load| load.id != *id);
                return plan.loads.len() < before;
            }
            Self::SetAside(id) => return set_aside(plan, id),
            Self::Unplug(id) => return unplug(plan, id),
            Self::BondingPlugOut => {
                plan.generator.bonding_plug = Answer::Known(false);
                plan.generator.bonding_plug_in = None;
            }
            Self::BondingPlug(to) => plan.generator.bonding_plug_in = Some(to.clone()),
            Self::Replug { part, to } => match from_of(plan, part) {
                Some(from) => *from = Some(to.clone()),
                None => return false,
            },
            Self::Move { load, to } => return plug_in(plan, load, to.as_ref()),
            Self::TakeTurns { load, with, at } => {
                return std::iter::once(load).chain(with).all(|load| {
                    let seat = Seat { at: at.clone(), stays: true };
                    plug_in(plan, load, Some(&seat))
                });
            }
            Self::Shift { load, span, to } => {
                let hours = plan.load_mut(load).and_then(|it| it.hours.get_mut(*span));
                match hours {
                    Some(hours) => *hours = begun_at(*hours, *to),
                    None => return false,
                }
            }
            Self::LessTime { load, span } => return less_time(plan, load, *span),
            Self::OffAtNight(id) => return off_at_night(plan, id),
            Self::Uncoil(id) => return edit(plan, id, |it| it.coiled = Answer::Known(false)),
            Self::OutdoorCord(id) => return replace(plan, id, |_| {}),
            Self::ProtectedCord(id) => return edit(plan, id, |it| it.gfci = Answer::Known(true)),
            Self::GroundedCord(id) => return replace(plan, id, ground),
            Self::Shorter { cord, length } => {
                return replace(plan, cord, |it| it.length = Answer::Known(*length));
            }
            Self::Thicker { cord, gauge, .. } => {
                return replace(plan, cord, |it| it.wire = Answer::Known(Wire::Awg(*gauge)));
            }
            Self::Smaller { load, part } => return smaller(plan, load, *part),
            Self::BoxForSplitter { cord, far } => return box_for_splitter(plan, cord, *far),
            Self::ListedBox(id) => match plan.holder_mut(id) {
                Some(it) => list(it),
                None => return false,
            },
            Self::ProtectedOutlet { at, sockets } => return protect(plan, at, *sockets),
            Self::ThreeWay { at, clears } => return three_way(plan, at, *clears),
            Self::NewBox(at) => return new_box(plan, at),
        }
        true
    }
}

/// Returns the receptacle that a cord or box is plugged into.
fn from_of<'a>(plan: &'a mut Plan, part: &Id) -> Option<&'a mut Option<Id>> {
    plan.gear_mut().find(|(id, _)| *id == part).map(|(_, from)| from)
}

/// Plugs a load in at `to`, or leaves its place open.
fn plug_in(plan: &mut Plan, load: &Id, to: Option<&Seat>) -> bool {
    // A load that runs inside a camper stays in it.
    if plan.load(load).is_some_and(|it| plan.around(it).is_some()) {
        return false;
    }
    let Some(load) = plan.load_mut(load) else {
        return false;
    };
    let there = |stays| to.filter(|seat| seat.stays == stays).map(|seat| seat.at.clone());
    load.on = there(true);
    load.now = there(false);
    true
}

fn unplug(plan: &mut Plan, id: &Id) -> bool {
    if let Some(from) = from_of(plan, id) {
        *from = None;
        return true;
    }
    plug_in(plan, id, None)
}

/// Unplugs the loads from these receptacles.
fn empty(plan: &mut Plan, receptacles: &[Id]) {
    // Loads inside a camper stay in it.
    let campers: Vec<Id> = plan.boxes.iter().filter(|it| it.is_camper()).map(|it| it.id.clone()).collect();
    for load in &mut plan.loads {
        for place in [&mut load.on, &mut load.now] {
            place.take_if(|at| receptacles.contains(at) && !campers.contains(at));
        }
    }
}

/// Cuts the night out of a load's hours. If nothing is left, or no hours are given, it runs for the two hours before
/// the night.
fn off_at_night(plan: &mut Plan, id: &Id) -> bool {
    const BEFORE: u16 = 120;
    let Some(night) = night(&plan.site) else {
        return false;
    };
    let Some(load) = plan.load_mut(id) else {
        return false;
    };
    let runs = |minute: u16| !night.contains(minute) && load.wants(minute);
    // Starts at the end of the night so that midnight does not split a stretch.
    let day = (0..Span::DAY).map(|minute| (night.to + minute) % Span::DAY);
    let mut hours: Vec<Span> = Vec::new();
    let mut before = false;
    for minute in day {
        let now = runs(minute);
        let to = if minute + 1 == Span::DAY { Span::DAY } else { minute + 1 };
        match hours.last_mut() {
            Some(last) if now && before => last.to = to,
            _ if now => hours.push(Span { from: minute, to }),
            _ => {}
        }
        before = now;
    }
    if hours.is_empty() {
        let from = (night.from + Span::DAY - BEFORE) % Span::DAY;
        hours.push(Span { from, to: night.from });
    }
    load.hours = hours;
    true
}

/// Cuts a stretch to half an hour less than what counts as continuous.
fn less_time(plan: &mut Plan, load: &Id, span: usize) -> bool {
    const LESS: u16 = 30;
    let long = |span: &Span| span.minutes() >= CONTINUOUS_MINUTES;
    let Some(load) = plan.load_mut(load) else {
        return false;
    };
    let Some(hours) = load.hours.get_mut(span).filter(|hours| long(hours)) else {
        return false;
    };
    let minutes = CONTINUOUS_MINUTES - LESS;
    let to = (hours.from + minutes) % Span::DAY;
    hours.to = if to == 0 { Span::DAY } else { to };
    // The answer "runs for three hours or more" was about these hours.
    if load.continuous == Answer::Known(true) && !load.hours.iter().any(long) {
        load.continuous = Answer::Missing;
    }
    true
}

/// Returns the same stretch with another start.
pub(in crate::mend) fn begun_at(hours: Span, from: u16) -> Span {
    let to = (from + hours.minutes()) % Span::DAY;
    Span { from, to: if to == 0 { Span::DAY } else { to } }
}

fn edit(plan: &mut Plan, id: &Id, change: impl FnOnce(&mut Cord)) -> bool {
    plan.cord_mut(id).map(change).is_some()
}

/// Unplugs a part with everything downstream of it, and frees the loads plugged in there.
fn set_aside(plan: &mut Plan, id: &Id) -> bool {
    let mut parts = vec![id.clone()];
    let mut found = false;
    let ahead = from_of(plan, id).and_then(|from| from.clone());
    while let Some(part) = parts.pop() {
        let Some(from) = from_of(plan, &part) else {
            continue;
        };
        *from = None;
        found = true;
        let ends = ends_of(plan, &part);
        empty(plan, &ends);
        let on = plan.gear().filter(|it| it.from.is_some_and(|from| ends.contains(from)));
        parts.extend(on.map(|it| it.id.clone()));
    }
    if let Some(cord) = ahead.and_then(|ahead| idle_cord(plan, &ahead)) {
        set_aside(plan, &cord);
    }
    found
}

/// Returns the cord with this end if nothing is left to plug into any of its ends. It would lie there live for nothing.
fn idle_cord(plan: &Plan, end: &Id) -> Option<Id> {
    let mut cords = plan.cords.iter();
    let cord = cords.find(|cord| cord.end_ids().any(|it| it == *end))?;
    let takes = |plug: &Plug| cord.ends().iter().any(|shape| shape.takes(*plug));
    let mut loads = plan.loads.iter();
    let for_loads = loads.any(|load| load.plug.known().is_none_or(takes));
    let feeds = |from: &Id| cord.end_ids().any(|it| it == *from);
    let feeds = plan.gear().any(|it| it.from.is_some_and(feeds));
    (!for_loads && !feeds).then(|| cord.id.clone())
}

/// Replaces a cord with one for outdoor use that is long enough. If it has to be longer, it is also thick enough to
/// keep the voltage drop down.
fn replace(plan: &mut Plan, id: &Id, new: impl FnOnce(&mut Cord)) -> bool {
    let longer = longer(plan, id);
    // The old plug is as hot as its outlet, but the new cord was never in it.
    let in_hot = plan.in_hot_outlets().iter().any(|(part, _)| part == id);
    edit(plan, id, |cord| {
        cord.outdoor = Answer::Known(true);
        cord.hot = in_hot.then_some(false);
        if let Some(length) = longer {
            cord.length = Answer::Known(length);
        }
        new(cord);
        let Some(thick) = cord.plug.known().map(|plug| far_wire(plug.0)) else {
            return;
        };
        let thinner = |wire: &Wire| gauge_of(*wire) > gauge_of(thick);
        if longer.is_some() && cord.wire.known().is_none_or(thinner) {
            cord.wire = Answer::Known(thick);
        }
    })
}

/// Returns the length of a replacement cord if the old length is unknown or too short to keep the generator away from
/// people.
///
/// `None` keeps the length: for an adapter, and for a cord chained to another, where the other one is to be longer.
fn longer(plan: &Plan, id: &Id) -> Option<Length> {
    let cord = plan.cord(id)?;
    let ends = ends_of(plan, id);
    let mut cords = plan.cords.iter();
    let feeds_cord = cords.any(|it| it.from.as_ref().is_some_and(|from| ends.contains(from)));
    let leads = Leads::of(plan);
    let chained = feeds_cord || cord.from.as_ref().is_some_and(|from| leads.ends_long(from));
    let own = length_of(cord);
    let adapter = own <= AT_SET;
    let least = if plan.loads.iter().any(|load| load.may_be(LoadKind::Medical)) { people(plan) } else { AMPLE };
    let now = leads.through(&ends);
    if chained || adapter || (cord.length.is_known() && now >= least) {
        return None;
    }
    // The length that the other cords contribute.
    let others = now - own;
    Some(usual(people(plan) - others.min(people(plan))))
}

/// Returns how far from the generator people are said to be, or how far they must be if that is more.
fn people(plan: &Plan) -> Length {
    let said = plan.site.sleepers_at.known().copied();
    said.map_or(AMPLE, |at| at.max(AMPLE))
}

/// Returns the shortest length sold that is at least `least`, or the longest one sold.
fn usual(least: Length) -> Length {
    let [.., longest] = LENGTHS;
    let mut lengths = LENGTHS.into_iter();
    lengths.find(|length| *length >= least).unwrap_or(longest)
}

fn ground(cord: &mut Cord) {
    if cord.plug.known().is_some_and(|plug| !plug.0.grounded())
        && let Some(end) = cord.ends().first()
    {
        cord.plug = Answer::Known(Plug(end.0));
    }
    let circuit = cord.plug.known().map_or(Circuit::TwoLegsNeutral, |plug| plug.0.circuit());
    cord.conductors = Answer::Known(circuit.conductors() + 1);
}

/// Divides an appliance's running and starting power, in whole watts, and renames it so that readers of the new card do
/// not take the old one.
fn smaller(plan: &mut Plan, id: &Id, part: u8) -> bool {
    let Some(load) = plan.load_mut(id) else {
        return false;
    };
    let Answer::Known(Draw::Power(running)) = load.running else {
        return false;
    };
    // Rounds down, because this is the power people may bring and the check assumes no less.
    let part = i64::from(part);
    let whole = |power: Power| power.milliwatts() / part / 1000;
    let watts = whole(running);
    if watts == 0 {
        return false;
    }
    load.running = Answer::Known(Draw::Power(Power::from_milliwatts(watts * 1000)));
    if let Answer::Known(starting) = load.starting {
        let starting = whole(starting).max(watts);
        load.starting = Answer::Known(Power::from_milliwatts(starting * 1000));
    }
    if let Answer::Known(amps) = load.starting_current {
        let less = (amps.milliamps() + part - 1) / part;
        load.starting_current = Answer::Known(Current::from_milliamps(less));
    }
    load.name = name_with(&load.name, watts);
    true
}

/// Returns the name with the wattage at its end, replacing one already there. In parentheses, because names stand
/// between commas.
fn name_with(name: &str, watts: i64) -> String {
    let ending = format!(" ({watts} W)");
    let bare = match name.rsplit_once(" (") {
        Some((bare, last)) if is_watts(last) => bare,
        _ => name,
    };
    let room = LONGEST_NAME.saturating_sub(ending.chars().count());
    let bare: String = bare.chars().take(room).collect();
    format!("{}{ending}", bare.trim_end())
}

fn is_watts(text: &str) -> bool {
    let figure = text.strip_suffix(" W)");
    figure.is_some_and(|it| !it.is_empty() && it.bytes().all(|it| it.is_ascii_digit()))
}

/// Returns the wire that a breaker of the shape's rating protects, by the usual sizes for 15, 20, 30 and 50 A.
fn wire_for(shape: Configuration) -> Wire {
    Wire::Awg(match shape.rating().milliamps() {
        0..=15_000 => 14,
        15_001..=20_000 => 12,
        20_001..=30_000 => 10,
        _ => 6,
    })
}

/// Returns the wire for a cord that leads to people: as by [`wire_for`], but at least 12 AWG.
fn far_wire(shape: Configuration) -> Wire {
    const THICK: Wire = Wire::Awg(12);
    let wire = wire_for(shape);
    if gauge_of(wire) > gauge_of(THICK) { THICK } else { wire }
}

/// Gives an outlet what a listed box has: its own breaker and GFCI protection.
fn guard(outlet: &mut Outlet) {
    let rating = outlet.shape.0.rating();
    outlet.breaker = match outlet.breaker {
        Answer::Known(amps) if amps <= rating => Answer::Known(amps),
        _ => Answer::Known(rating),
    };
    outlet.shares = None;
    outlet.gfci = Answer::Known(true);
    outlet.hot = None;
    outlet.wire = Answer::Known(wire_for(outlet.shape.0));
}

fn list(it: &mut DistributionBox) {
    it.listed = Answer::Known(true);
    it.bond = Answer::Known(false);
    it.hot = None;
    it.outlets.iter_mut().for_each(guard);
}

fn outlet(id: Id, shape: Receptacle, sockets: u8) -> Outlet {
    Outlet { id, shape, sockets: Some(sockets), ..Outlet::default() }
}

/// Rebuilds a splitter as a box with a breaker for each end. If `far`, the box is at the end of a cord as long as the
/// splitter, or as long as it should have been.
fn box_for_splitter(plan: &mut Plan, id: &Id, far: bool) -> bool {
    let Some(index) = plan.cords.iter().position(|it| it.id == *id) else {
        return false;
    };
    let Some(plug) = plan.cords[index].usable_plug() else {
        return false;
    };
    let length = longer(plan, id);
    let cord = plan.cords.remove(index);
    let shape = Receptacle(plug.0);
    let lead = far.then(|| Cord {
        from: cord.from.clone(),
        length: length.map_or(cord.length, Answer::Known),
        wire: Answer::Known(far_wire(plug.0)),
        gfci: Answer::Known(false),
        ..new_cord(plan, id, "cord", shape)
    });
    let mut renamed: Vec<(Id, Id)> = Vec::new();
    let mut outlets = Vec::new();
    for (end, shape) in cord.ends().iter().enumerate() {
        let new = free_id(plan, &format!("{id}-{}", end + 1));
        renamed.push((cord.end_id(end), new.clone()));
        outlets.push(outlet(new, *shape, 1));
    }
    let mut it = DistributionBox {
        id: cord.id.clone(),
        from: lead.as_ref().map_or(cord.from, |lead| Some(lead.id.clone())),
        inlet: cord.plug,
        listed: Answer::Known(true),
        bond: Answer::Known(false),
        outlets,
        ..DistributionBox::default()
    };
    list(&mut it);
    plan.cords.extend(lead);
    plan.boxes.push(it);
    // Loads are placed anew. Gear keeps its place, but the second of two in one socket was never really plugged in.
    for (old, new) in &renamed {
        empty(plan, std::slice::from_ref(old));
        let there = plan.gear_mut().filter(|(_, from)| from.as_ref() == Some(old));
        for (at, (_, from)) in there.enumerate() {
            *from = (at == 0).then(|| new.clone());
        }
    }
    true
}

/// Returns the shape of a receptacle in the plan.
pub(in crate::mend) fn shape_of(plan: &Plan, at: &Id) -> Option<Receptacle> {
    let of_cord = || {
        plan.cords.iter().find_map(|cord| {
            let end = cord.end_ids().position(|end| end == *at)?;
            Some(cord.ends()[end])
        })
    };
    plan.outlet(at).map(|outlet| outlet.shape).or_else(of_cord)
}

/// Builds a cord as sold today: grounded, for outdoor use, laid out, with GFCI protection.
fn new_cord(plan: &Plan, at: &Id, stem: &str, shape: Receptacle) -> Cord {
    Cord {
        id: free_id(plan, &format!("{at}-{stem}")),
        from: Some(at.clone()),
        plug: Answer::Known(Plug(shape.0)),
        ends: Answer::Known(vec![shape]),
        wire: Answer::Known(wire_for(shape.0)),
        conductors: Answer::Known(shape.0.circuit().conductors() + 1),
        length: Answer::Known(ADAPTER),
        ..Cord::best()
    }
}

/// Adds GFCI adapters to this many sockets. Loads plugged in there come out, to be placed behind the adapters.
fn protect(plan: &mut Plan, at: &Id, sockets: u8) -> bool {
    let Some(shape) = shape_of(plan, at) else {
        return false;
    };
    empty(plan, std::slice::from_ref(at));
    for _ in 0..sockets {
        let cord = new_cord(plan, at, "gfci", shape);
        plan.cords.push(cord);
    }
    true
}

/// Returns the length of a new three-way cord: enough to reach people, but only an adapter's at the end of a long cord,
/// since long cords are not chained.
fn three_way_length(plan: &Plan, at: &Id) -> Length {
    if Leads::of(plan).ends_long(at) {
        return ADAPTER;
    }
    usual(people(plan))
}

fn three_way(plan: &mut Plan, at: &Id, clears: bool) -> bool {
    let small = Configuration::N5_15;
    if !shape_of(plan, at).is_some_and(|shape| shape.takes(Plug(small))) {
        return false;
    }
    if clears {
        empty(plan, std::slice::from_ref(at));
    }
    let cord = Cord {
        plug: Answer::Known(Plug(small)),
        ends: Answer::Known(vec![Receptacle(small); 3]),
        wire: Answer::Known(far_wire(small)),
        length: Answer::Known(three_way_length(plan, at)),
        ..new_cord(plan, at, "three", Receptacle(small))
    };
    plan.cords.push(cord);
    true
}

/// Adds a box with two 20 A duplex receptacles, one on each leg where the shape has two legs and a neutral.
fn new_box(plan: &mut Plan, at: &Id) -> bool {
    let Some(shape) = shape_of(plan, at) else {
        return false;
    };
    let id = free_id(plan, &format!("{at}-box"));
    let mut it = DistributionBox {
        id: id.clone(),
        from: Some(at.clone()),
        inlet: Answer::Known(Plug(shape.0)),
        listed: Answer::Known(true),
        bond: Answer::Known(false),
        outlets: ["1", "2"]
            .map(|number| {
                let id = free_id(plan, &format!("{id}-{number}"));
                outlet(id, Receptacle(Configuration::N5_20), 2)
            })
            .into(),
        ..DistributionBox::default()
    };
    if shape.0.circuit() == Circuit::TwoLegsNeutral {
        it.outlets[1].leg = Answer::Known(crate::plan::Leg::B);
        it.outlets[0].leg = Answer::Known(crate::plan::Leg::A);
    }
    list(&mut it);
    plan.boxes.push(it);
    true
}

/// Returns an id that is free in the plan: the text itself, or with a number after it.
fn free_id(plan: &Plan, wanted: &str) -> Id {
    let stem: String = wanted.replace('.', "-").chars().take(Id::LONGEST - 4).collect();
    let taken = |id: &Id| plan.outlet(id).is_some() || plan.gear_of(id).is_some() || plan.load(id).is_some();
    std::iter::once(stem.clone())
        .chain((2..=u16::MAX).map(|number| format!("{stem}-{number}")))
        .filter_map(|text| Id::new(&text))
        .find(|id| !taken(id))
        // Unreachable: a plan has fewer parts than there are numbers, and a stem made of ids is a valid id.
        .unwrap_or_else(|| plan.generator.outlets[0].id.clone())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A third of 1,001 W is 333 whole watts, and less than 2 W has no half.
    #[test]
    fn a_part_of_a_power_is_whole_watts() {
        for (whole, part, less) in
            [(1_001_000, 3, Some(333_000)), (1_500_000, 2, Some(750_000)), (2_000, 2, Some(1_000)), (1_999, 2, None)]
        {
            let mut plan = crate::plan::read(crate::plan::demo::MENDED).expect("the demo's plan");
            let load = &mut plan.loads[0];
            load.running = Answer::Known(Draw::Power(Power::from_milliwatts(whole)));
            load.starting = Answer::Known(Power::from_milliwatts(whole));
            let id = load.id.clone();
            let made = Change::Smaller { load: id, part }.apply(&mut plan);
            assert_eq!(made, less.is_some(), "{whole}");
            let less = Power::from_milliwatts(less.unwrap_or(whole));
            assert_eq!(plan.loads[0].running, Answer::Known(Draw::Power(less)));
            assert_eq!(plan.loads[0].starting, Answer::Known(less));
        }
    }

    #[test]
    fn a_smaller_appliance_has_a_name_of_its_own() {
        for (old, new) in [
            ("Electric kettle", "Electric kettle (750 W)"),
            ("Kettle (1500 W)", "Kettle (750 W)"),
            ("Pot (red)", "Pot (red) (750 W)"),
            ("W)", "W) (750 W)"),
        ] {
            assert_eq!(name_with(old, 750), new);
        }
        let long = name_with(&"ü".repeat(LONGEST_NAME), 750);
        assert_eq!(crate::plan::name(&long), Some(long));
    }

    #[test]
    fn hours_keep_their_length() {
        let late = begun_at(Span { from: 1380, to: 60 }, 1400);
        assert_eq!((late.from, late.to, late.minutes()), (1400, 80, 120));
        assert_eq!(begun_at(Span { from: 0, to: 60 }, 1380).to, Span::DAY);
    }
}

//! Random valid plans, for property tests here and elsewhere.

use std::collections::BTreeMap;

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::Index;
use proptest::strategy::{NewTree, ValueTree};
use proptest::test_runner::{RngAlgorithm, TestRng, TestRunner};

use super::row::Part;
use super::{Answer, BoxKind, Cord, DistributionBox, Draw, Generator, Id, Load, Outlet, Plan, Region, Site};
use crate::quantity::{Current, Length, Power, Quantity, Wire};
use crate::tables::shape::{Configuration, Plug, Receptacle};

/// Generates a part with any value in each field.
pub(super) fn part<P: Part>() -> impl Strategy<Value = P> {
    Apart(P::default()).prop_map(|drawn: Vec<P>| {
        let mut part = P::default();
        for (row, from) in P::ROWS.iter().zip(drawn) {
            row.copy(&from, &mut part);
        }
        part
    })
}

/// Generates, for each field of a part, a part with any value in that field. Each field draws from its own random
/// stream, chosen by its key, so that a new field leaves the values of the others alone.
#[derive(Debug)]
struct Apart<P>(P);

impl<P: Part> Strategy for Apart<P> {
    type Tree = <Vec<Stream<P>> as Strategy>::Tree;
    type Value = Vec<P>;

    fn new_tree(&self, runner: &mut TestRunner) -> NewTree<Self> {
        let seed = any::<[u8; 32]>().new_tree(runner)?.current();
        let fields = P::ROWS.iter().map(|row| {
            let mut seed = seed;
            for (byte, letter) in seed.iter_mut().zip(row.keys()[0].bytes()) {
                *byte ^= letter;
            }
            let field = row.any();
            Stream { seed, field }
        });
        fields.collect::<Vec<_>>().new_tree(runner)
    }
}

#[derive(Debug)]
struct Stream<P> {
    seed: [u8; 32],
    field: BoxedStrategy<P>,
}

impl<P: Part> Strategy for Stream<P> {
    type Tree = <BoxedStrategy<P> as Strategy>::Tree;
    type Value = P;

    fn new_tree(&self, runner: &mut TestRunner) -> NewTree<Self> {
        let own = TestRng::from_seed(RngAlgorithm::ChaCha, &self.seed);
        let mut own = TestRunner::new_with_rng(runner.config().clone(), own);
        self.field.new_tree(&mut own)
    }
}

fn site() -> impl Strategy<Value = Site> {
    // Most plans do not say whether people sleep there.
    (part::<Site>(), prop::bool::weighted(0.2)).prop_map(|(mut site, said)| {
        if !said {
            site.people_sleep = Answer::Missing;
        }
        site
    })
}

fn generator() -> impl Strategy<Value = Generator> {
    (part::<Generator>(), vec(part(), 1..5)).prop_map(|(mut set, outlets): (_, Vec<Outlet>)| {
        set.outlets = outlets;
        for outlet in &mut set.outlets {
            // Only boxes have their wiring recorded.
            outlet.wire = Answer::Missing;
        }
        raise(&mut set.peak, set.rated);
        set
    })
}

fn distribution_box() -> impl Strategy<Value = DistributionBox> {
    (part(), vec(part(), 1..4)).prop_map(|(mut part, outlets): (DistributionBox, _)| {
        // One in four is a camper.
        if part.hot.is_some() {
            part.kind = BoxKind::Distribution;
        }
        // A few have unknown receptacles.
        let unknown = part.hot == Some(true) && part.bought == Some(true);
        DistributionBox { outlets: if unknown { Vec::new() } else { outlets }, ..part }
    })
}

pub(crate) fn load() -> impl Strategy<Value = Load> {
    (part::<Load>(), any::<bool>()).prop_map(|(mut load, in_amps)| {
        load.count = 1 + load.count % 5;
        // At most one of the two.
        if in_amps {
            load.starting = Answer::Missing;
        } else {
            load.starting_current = Answer::Missing;
        }
        match load.running {
            Answer::Known(Draw::Power(power)) => raise(&mut load.starting, Answer::Known(power)),
            Answer::Known(Draw::Current(amps)) => {
                raise(&mut load.starting_current, Answer::Known(amps));
            }
            _ => {}
        }
        load
    })
}

/// Raises a figure to the least it can be.
fn raise<Q: Quantity>(figure: &mut Answer<Q>, least: Answer<Q>) {
    if let (Answer::Known(figure), Answer::Known(least)) = (figure, least) {
        *figure = (*figure).max(least);
    }
}

fn id(stem: &str, number: usize) -> Id {
    Id::new(&format!("{stem}-{number}")).expect("stems are ids")
}

/// Picks one of the receptacles, or none.
fn pick(receptacles: &[Id], index: Option<&Index>) -> Option<Id> {
    let index = index?;
    (!receptacles.is_empty()).then(|| index.get(receptacles).clone())
}

fn name_outlets(outlets: &mut [Outlet], stem: &str, shares: &[bool]) -> Vec<Id> {
    for (at, outlet) in outlets.iter_mut().enumerate() {
        outlet.id = id(stem, at);
    }
    if let Some((first, others)) = outlets.split_first_mut() {
        first.shares = None;
        for (other, shares) in others.iter_mut().zip(shares) {
            other.shares = None;
            if *shares {
                other.shares = Some(first.id.clone());
            }
        }
    }
    share_breakers(outlets);
    outlets.iter().map(|outlet| outlet.id.clone()).collect()
}

/// Outlets on the breaker of the first say the same about it, or nothing.
fn share_breakers(outlets: &mut [Outlet]) {
    if let Some((first, others)) = outlets.split_first_mut() {
        for other in others.iter_mut().filter(|it| it.shares.is_some() && it.breaker.is_known()) {
            other.breaker = first.breaker;
        }
    }
}

/// Generates a plan that reads: every part is plugged into an earlier one or is a spare.
pub(crate) fn plan() -> impl Strategy<Value = Plan> {
    (
        site(),
        generator(),
        vec((part(), option::weighted(0.9, any::<Index>())), 0..5),
        vec((distribution_box(), option::weighted(0.9, any::<Index>())), 0..3),
        vec((load(), option::of(any::<Index>())), 0..6),
        vec(any::<bool>(), 4),
    )
        .prop_map(|(site, mut generator, cords, boxes, loads, shares)| {
            let cords: Vec<(Cord, Option<Index>)> = cords;
            let mut receptacles = name_outlets(&mut generator.outlets, "outlet", &shares);
            generator.bonding_plug_in = None;
            let mut household = generator.outlets.iter().filter(|outlet| outlet.shape.takes(Plug::BONDING));
            if let Some(at) = household.next_back().filter(|_| shares.last() == Some(&true)) {
                generator.bonding_plug_in = Some(at.id.clone());
                // Saying where it is means that there is one.
                if matches!(generator.bonding_plug, Answer::Missing | Answer::Known(false)) {
                    generator.bonding_plug = Answer::Known(true);
                }
            }
            let mut named_cords = Vec::new();
            let mut named_boxes = Vec::new();
            let mut campers = Vec::new();
            for (at, (mut cord, from)) in cords.into_iter().enumerate() {
                cord.id = id("cord", at);
                cord.from = pick(&receptacles, from.as_ref());
                receptacles.extend(cord.end_ids());
                named_cords.push(cord);
            }
            for (at, (mut part, from)) in boxes.into_iter().enumerate() {
                part.id = id("box", at);
                part.from = pick(&receptacles, from.as_ref());
                let stem = format!("box{at}-outlet");
                receptacles.extend(name_outlets(&mut part.outlets, &stem, &shares));
                campers.extend(part.is_camper().then(|| part.id.clone()));
                named_boxes.push(part);
            }
            let places = [receptacles, campers.clone()].concat();
            let loads = loads
                .into_iter()
                .enumerate()
                .map(|(at, (mut load, on))| {
                    load.id = id("load", at);
                    load.on = pick(&places, on.as_ref());
                    load.now = None;
                    if load.on.as_ref().is_some_and(|on| campers.contains(on)) {
                        load.plug = Answer::Missing;
                        return load;
                    }
                    // About half of these are places that the load may leave.
                    if load.on.as_ref().is_some_and(|on| on.as_str().len() % 2 == 0) {
                        load.now = load.on.take();
                    }
                    load
                })
                .collect();
            Plan {
                region: Region::NorthAmerica,
                language: None,
                site,
                generator,
                cords: named_cords,
                boxes: named_boxes,
                loads,
            }
        })
}

/// Generates a plausible camp: like [`plan`], but most plugs fit, and the figures are in the range of portable
/// generators and their gear, so that something runs.
pub(crate) fn camp() -> impl Strategy<Value = Plan> {
    plan().prop_map(|mut plan| {
        let mut shapes: BTreeMap<Id, Receptacle> = BTreeMap::new();
        let set = &mut plan.generator;
        if let Answer::Known(rated) = set.rated {
            let rated = 1_000_000 + rated.milliwatts() % 9_000_000;
            set.rated = Answer::Known(Power::from_milliwatts(rated));
            if let Answer::Known(peak) = set.peak {
                let peak = rated + peak.milliwatts() % 3_000_000;
                set.peak = Answer::Known(Power::from_milliwatts(peak));
            }
        }
        for outlet in &mut set.outlets {
            likely_outlet(outlet);
            shapes.insert(outlet.id.clone(), outlet.shape);
        }
        share_breakers(&mut set.outlets);
        for cord in &mut plan.cords {
            if let Some(shape) = cord.from.as_ref().and_then(|from| shapes.get(from)) {
                cord.plug = Answer::Known(Plug(shape.0));
            }
            // Most shapes are known.
            if cord.coiled != Answer::Unknown {
                cord.plug = Answer::Known(cord.plug.or(Plug::default()));
                if !cord.ends.is_known() {
                    cord.ends = Answer::Known(vec![Receptacle(Configuration::N5_15)]);
                }
            }
            cord.hot = cord.hot.filter(|_| cord.coiled == Answer::Unknown);
            if let Answer::Known(wire) = cord.wire {
                cord.wire = Answer::Known(likely_wire(wire));
            }
            if let Answer::Known(length) = cord.length {
                // Long enough that it might be coiled.
                let length = Length::from_millimetres(2_001 + length.millimetres() % 58_000);
                cord.length = Answer::Known(length);
            }
            for (at, end) in cord.ends().iter().enumerate() {
                shapes.insert(cord.end_id(at), *end);
            }
        }
        for part in &mut plan.boxes {
            if let Some(shape) = part.from.as_ref().and_then(|from| shapes.get(from)) {
                part.inlet = Answer::Known(Plug(shape.0));
            }
            if part.bond != Answer::Unknown {
                part.inlet = Answer::Known(part.inlet.or(Plug::default()));
            }
            part.hot = part.hot.filter(|_| part.listed == Answer::Unknown);
            for outlet in &mut part.outlets {
                likely_outlet(outlet);
                shapes.insert(outlet.id.clone(), outlet.shape);
            }
            share_breakers(&mut part.outlets);
        }
        let inside: Vec<bool> = plan.loads.iter().map(|it| plan.around(it).is_some()).collect();
        for (load, inside) in plan.loads.iter_mut().zip(inside) {
            likely_load(load, &shapes);
            if inside {
                load.plug = Answer::Missing;
            }
        }
        plan
    })
}

fn likely_outlet(outlet: &mut Outlet) {
    let likely = |amps: Current| {
        let amps = [15, 20, 30, 50][usize::try_from(amps.milliamps() % 4).expect("below 4")];
        Current::from_milliamps(amps * 1000)
    };
    if let Answer::Known(amps) = outlet.breaker {
        outlet.breaker = Answer::Known(likely(amps));
    }
    // Half of them have the household shape and its usual breaker.
    if outlet.sockets.is_none() {
        outlet.shape = Receptacle(Configuration::N5_20);
        outlet.breaker = Answer::Known(outlet.shape.0.rating());
    }
    // Few felt hot, and few breakers were seen to trip.
    outlet.hot = outlet.hot.filter(|_| outlet.trips_at.is_some_and(|amps| amps.milliamps() % 8 == 1));
    outlet.trips_at = outlet
        .trips_at
        .filter(|amps| amps.milliamps() % 4 == 0)
        .map(|amps| Current::from_milliamps(8_000 + amps.milliamps() % 20_000));
    if let Answer::Known(wire) = outlet.wire {
        outlet.wire = Answer::Known(likely_wire(wire));
    }
}

fn likely_wire(wire: Wire) -> Wire {
    match wire {
        Wire::Awg(gauge) => Wire::Awg(6 + gauge % 7 * 2),
        Wire::Area(area) => Wire::Area(750 + area % 10_000),
    }
}

pub(crate) fn likely_load(load: &mut Load, shapes: &BTreeMap<Id, Receptacle>) {
    let shape = load.on.as_ref().and_then(|on| shapes.get(on));
    let shape = shape.map_or(Configuration::N5_15, |shape| shape.0);
    load.plug = Answer::Known(Plug(shape));
    load.hot = load.hot.filter(|_| load.continuous == Answer::Unknown);
    if let Answer::Known(draw) = &mut load.running {
        *draw = match draw {
            Draw::Power(power) => Draw::Power(Power::from_milliwatts(10_000 + power.milliwatts() % 2_000_000)),
            Draw::Current(amps) => Draw::Current(Current::from_milliamps(100 + amps.milliamps() % 15_000)),
            Draw::Motor { millihorsepower, code } => {
                Draw::Motor { millihorsepower: 1 + *millihorsepower % 1_000, code: *code }
            }
        };
    }
    if let Answer::Known(starting) = load.starting {
        let starting = 2_010_000 + starting.milliwatts() % 3_000_000;
        load.starting = Answer::Known(Power::from_milliwatts(starting));
    }
    if let Answer::Known(amps) = load.starting_current {
        let amps = 15_100 + amps.milliamps() % 30_000;
        load.starting_current = Answer::Known(Current::from_milliamps(amps));
    }
}

//! Any plan that reads, for property tests of this module and of the others.

use std::collections::BTreeMap;

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{Index, select};

use super::bounds::{self, Bounds};
use super::{
    Answer, Choice, Cord, DistributionBox, Draw, Fuel, Generator, Ground, Id, Leg, Load, LoadKind,
    Neutral, Noise, Outlet, Parallel, Plan, Region, Runtime, Site, Span, Stands, System, Uses,
    Wanted,
};
use crate::quantity::{Current, Length, Power, Quantity, Wire};
use crate::tables::shape::{Configuration, Plug, Receptacle};

fn answer<T: Clone + std::fmt::Debug>(
    known: impl Strategy<Value = T>,
) -> impl Strategy<Value = Answer<T>> {
    (0..6_u8, known).prop_map(|(which, known)| match which {
        0 => Answer::Missing,
        1 => Answer::Unknown,
        _ => Answer::Known(known),
    })
}

fn choice<C: Choice>() -> impl Strategy<Value = C> {
    select(C::ALL).prop_map(|(choice, _)| choice)
}

fn quantity<Q: Quantity>(least: i64, most: i64) -> impl Strategy<Value = Q> {
    (least..=most).prop_map(Q::from_count)
}

fn within<Q: Quantity>(bounds: &Bounds<Q>) -> impl Strategy<Value = Q> + use<Q> {
    quantity(bounds.least.count(), bounds.most.count())
}

fn shape() -> impl Strategy<Value = Configuration> {
    select(Configuration::ALL.to_vec())
}

fn wire() -> impl Strategy<Value = Wire> {
    prop_oneof![
        (0..=30_i8).prop_map(Wire::Awg),
        (100..=400_000_i32).prop_map(Wire::Area)
    ]
}

fn name() -> impl Strategy<Value = String> {
    // Words of any script, with the characters that need care in TOML.
    "[\\p{L}\"'\\\\#=\\[{][\\p{L}\\p{N} \"'\\\\#=,.-]{0,18}[\\p{L}\\p{N}\"\\\\]"
}

fn span() -> impl Strategy<Value = Span> {
    (0..Span::DAY, 1..=Span::DAY).prop_map(|(from, to)| Span { from, to })
}

fn site() -> impl Strategy<Value = Site> {
    (
        prop_oneof![Just(String::new()), name()],
        answer(choice::<Ground>()),
        answer(within(&bounds::SLEEPERS_AT)),
        answer(within(&bounds::ALTITUDE)),
        answer(within(&bounds::AIR)),
        answer(vec(span(), 0..3)),
        answer(any::<bool>()),
        (
            answer(any::<bool>()),
            answer(choice::<Stands>()),
            // Mostly not said.
            prop_oneof![4 => Just(Answer::Missing), 1 => answer(any::<bool>())],
        ),
    )
        .prop_map(
            |(
                name,
                ground,
                sleepers_at,
                altitude,
                air,
                quiet_hours,
                co_alarm,
                (feeds_building, stands, people_sleep),
            )| {
                Site {
                    name,
                    ground,
                    sleepers_at,
                    altitude,
                    air,
                    quiet_hours,
                    co_alarm,
                    feeds_building,
                    stands,
                    people_sleep,
                }
            },
        )
}

fn outlet() -> impl Strategy<Value = Outlet> {
    (
        shape().prop_map(Receptacle),
        option::of(bounds::SOCKETS.least..=bounds::SOCKETS.most),
        answer(within(&bounds::BREAKER)),
        option::of(within(&bounds::TRIPS_AT)),
        answer(any::<bool>()),
        answer(wire()),
        answer(choice::<Leg>()),
    )
        .prop_map(
            |(shape, sockets, breaker, trips_at, gfci, wire, leg)| Outlet {
                id: id("to be named", 0),
                shape,
                sockets,
                breaker,
                shares: None,
                trips_at,
                gfci,
                wire,
                leg,
            },
        )
}

fn fuel() -> impl Strategy<Value = Answer<Fuel>> {
    answer(choice::<Fuel>())
}

fn parallel() -> impl Strategy<Value = Parallel> {
    (
        2..=4_u8,
        answer(within(&bounds::KIT_LIMIT)),
        answer(any::<bool>()),
    )
        .prop_map(|(sets, limit, kit)| Parallel { sets, limit, kit })
}

fn generator() -> impl Strategy<Value = Generator> {
    let runtime = (within(&bounds::SHARE), within(&bounds::LASTS))
        .prop_map(|(load, lasts)| Runtime { load, lasts });
    let noise = (
        within(&bounds::NOISE_LEVEL),
        within(&bounds::NOISE_AT),
        answer(within(&bounds::SHARE)),
    )
        .prop_map(|(level, at, load)| Noise { level, at, load });
    (
        (
            prop_oneof![Just(String::new()), name()],
            prop_oneof![
                // It may be unknown, but not left out.
                1 => Just(Answer::Unknown),
                4 => quantity::<Power>(50_000, 50_000_000).prop_map(Answer::Known),
            ],
            answer(quantity::<Power>(50_000_000, 100_000_000)),
            select(vec![
                Answer::Unknown,
                Answer::Known(System::V120),
                Answer::Known(System::V120_240),
            ]),
            answer(choice::<Neutral>()),
            answer(any::<bool>()),
            answer(any::<bool>()),
        ),
        (fuel(), fuel(), option::of(parallel())),
        answer(within(&bounds::TANK)),
        vec(runtime, 0..3),
        answer(noise),
        vec(outlet(), 1..5),
    )
        .prop_map(|(first, fuel, tank, runtime, noise, mut outlets)| {
            for outlet in &mut outlets {
                // Only the wiring of boxes is asked for.
                outlet.wire = Answer::Missing;
            }
            Generator {
                name: first.0,
                rated: first.1,
                peak: first.2,
                voltage: first.3,
                neutral: first.4,
                bonding_plug: first.5,
                // Named once its outlets have names.
                bonding_plug_in: None,
                inverter: first.6,
                fuel: fuel.0,
                rated_on: fuel.1,
                parallel: fuel.2,
                tank,
                runtime,
                noise,
                outlets,
            }
        })
}

fn cord() -> impl Strategy<Value = Cord> {
    (
        shape().prop_map(Plug),
        vec(shape().prop_map(Receptacle), 1..4),
        answer(wire()),
        answer(2..=5_u8),
        answer(within(&bounds::LENGTH)),
        answer(any::<bool>()),
        answer(any::<bool>()),
        answer(any::<bool>()),
    )
        .prop_map(
            |(plug, ends, wire, conductors, length, outdoor, coiled, gfci)| Cord {
                id: id("to be named", 0),
                from: None,
                plug,
                ends,
                wire,
                conductors,
                length,
                outdoor,
                coiled,
                gfci,
            },
        )
}

fn distribution_box() -> impl Strategy<Value = DistributionBox> {
    (
        shape().prop_map(Plug),
        answer(any::<bool>()),
        answer(any::<bool>()),
        vec(outlet(), 1..4),
    )
        .prop_map(|(inlet, listed, bond, outlets)| DistributionBox {
            id: id("to be named", 0),
            from: None,
            inlet,
            listed,
            bond,
            outlets,
        })
}

pub(crate) fn load() -> impl Strategy<Value = Load> {
    let draw = prop_oneof![
        quantity::<Power>(1, 50_000_000).prop_map(Draw::Power),
        within(&bounds::CURRENT).prop_map(Draw::Current),
        (1..=10_000_u32, option::of(select(vec!['A', 'G', 'V']))).prop_map(
            |(millihorsepower, code)| Draw::Motor {
                millihorsepower,
                code
            }
        ),
    ];
    (
        (
            name(),
            prop_oneof![
                // It may be unknown, but not left out.
                1 => Just(Answer::Unknown),
                9 => choice::<LoadKind>().prop_map(Answer::Known),
            ],
            answer(draw),
            1..=5_u8,
            answer(any::<bool>()),
        ),
        (
            answer(quantity::<Power>(50_000_000, 100_000_000)),
            // No less than any current that something runs with.
            answer(quantity::<Current>(
                bounds::CURRENT.most.milliamps(),
                bounds::STARTING_CURRENT.most.milliamps(),
            )),
            any::<bool>(),
        ),
        answer(within(&bounds::POWER_FACTOR)),
        answer(any::<bool>()),
        choice::<Wanted>(),
        vec(span(), 0..3),
        (answer(shape().prop_map(Plug)), answer(choice::<Uses>())),
    )
        .prop_map(
            |(
                (name, kind, running, count, backup),
                (starting, starting_current, in_amps),
                power_factor,
                continuous,
                wanted,
                hours,
                (plug, voltage),
            )| {
                // One of the two at most.
                let (starting, starting_current) = if in_amps {
                    (Answer::Missing, starting_current)
                } else {
                    (starting, Answer::Missing)
                };
                Load {
                    id: id("to be named", 0),
                    name,
                    kind,
                    running,
                    count,
                    starting,
                    starting_current,
                    power_factor,
                    continuous,
                    wanted,
                    hours,
                    plug,
                    voltage,
                    on: None,
                    backup,
                    now: None,
                }
            },
        )
}

fn id(stem: &str, number: usize) -> Id {
    let text = format!("{}-{number}", stem.replace(' ', "-"));
    Id::new(&text).expect("stems are ids")
}

/// One of the receptacles, or none.
fn pick(receptacles: &[Id], index: Option<&Index>) -> Option<Id> {
    let index = index?;
    (!receptacles.is_empty()).then(|| index.get(receptacles).clone())
}

fn name_outlets(outlets: &mut [Outlet], stem: &str, shares: &[bool]) -> Vec<Id> {
    for (at, outlet) in outlets.iter_mut().enumerate() {
        outlet.id = id(stem, at);
    }
    if let Some((first, others)) = outlets.split_first_mut() {
        for (other, shares) in others.iter_mut().zip(shares) {
            if *shares {
                other.shares = Some(first.id.clone());
                if other.breaker.is_known() {
                    other.breaker = first.breaker;
                }
            }
        }
    }
    outlets.iter().map(|outlet| outlet.id.clone()).collect()
}

/// Any plan that reads: every part plugged into an earlier one, or lying in the bin.
pub(crate) fn plan() -> impl Strategy<Value = Plan> {
    (
        site(),
        generator(),
        vec((cord(), option::weighted(0.9, any::<Index>())), 0..5),
        vec(
            (distribution_box(), option::weighted(0.9, any::<Index>())),
            0..3,
        ),
        vec((load(), option::of(any::<Index>())), 0..6),
        vec(any::<bool>(), 4),
    )
        .prop_map(|(site, mut generator, cords, boxes, loads, shares)| {
            let mut receptacles = name_outlets(&mut generator.outlets, "outlet", &shares);
            if shares.last() == Some(&true) {
                // A place says that there is one.
                if matches!(
                    generator.bonding_plug,
                    Answer::Missing | Answer::Known(false)
                ) {
                    generator.bonding_plug = Answer::Known(true);
                }
                generator.bonding_plug_in = receptacles.last().cloned();
            }
            let mut named_cords = Vec::new();
            let mut named_boxes = Vec::new();
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
                named_boxes.push(part);
            }
            let loads = loads
                .into_iter()
                .enumerate()
                .map(|(at, (mut load, on))| {
                    load.id = id("load", at);
                    load.on = pick(&receptacles, on.as_ref());
                    // Where it may stay, when nothing says where it must.
                    if load
                        .on
                        .as_ref()
                        .is_some_and(|on| on.as_str().len() % 2 == 0)
                    {
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

/// A plan as a camp may have it: like [`plan`], but most plugs fit what they go into and the
/// figures are of the size that portable sets and their gear have, so that something runs.
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
        for cord in &mut plan.cords {
            if let Some(shape) = cord.from.as_ref().and_then(|from| shapes.get(from)) {
                cord.plug = Plug(shape.0);
            }
            if let Answer::Known(wire) = cord.wire {
                cord.wire = Answer::Known(likely_wire(wire));
            }
            if let Answer::Known(length) = cord.length {
                // Longer than what nobody coils.
                let length = Length::from_millimetres(2_001 + length.millimetres() % 58_000);
                cord.length = Answer::Known(length);
            }
            for (at, end) in cord.ends.iter().enumerate() {
                shapes.insert(cord.end_id(at), *end);
            }
        }
        for part in &mut plan.boxes {
            if let Some(shape) = part.from.as_ref().and_then(|from| shapes.get(from)) {
                part.inlet = Plug(shape.0);
            }
            for outlet in &mut part.outlets {
                likely_outlet(outlet);
                shapes.insert(outlet.id.clone(), outlet.shape);
            }
        }
        for load in &mut plan.loads {
            likely_load(load, &shapes);
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
    // Half of them are the household shape behind its usual breaker.
    if outlet.sockets.is_none() {
        outlet.shape = Receptacle(Configuration::N5_20);
        outlet.breaker = Answer::Known(outlet.shape.0.rating());
    }
    // Few breakers have been seen to trip.
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
    if let Answer::Known(draw) = &mut load.running {
        *draw = match draw {
            Draw::Power(power) => Draw::Power(Power::from_milliwatts(
                10_000 + power.milliwatts() % 2_000_000,
            )),
            Draw::Current(amps) => {
                Draw::Current(Current::from_milliamps(100 + amps.milliamps() % 15_000))
            }
            Draw::Motor {
                millihorsepower,
                code,
            } => Draw::Motor {
                millihorsepower: 1 + *millihorsepower % 1_000,
                code: *code,
            },
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

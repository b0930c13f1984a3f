//! What a meter should read at each step of switching on, the worst voltage drops that can really happen, and how long
//! each cord might be.
//!
//! All of it is for loads that may run together, with one of them starting at a time. How the generator's own voltage
//! changes under load is unknown and not counted: readings are for a generator that gives its nominal voltage.

use std::collections::BTreeMap;

use serde::Serialize;

use super::drops::{Scene, Settled, share};
use super::{Sharing, Through};
use crate::plan::{Cord, Id, Plan};
use crate::quantity::{Current, Length, Percent, Voltage, Wire};
use crate::supply::drop::{Flow, Running, lost};
use crate::supply::{Legs, NodeIx, NodeKind, Supply};
use crate::tables::conductor::{flexible_ampacity, longest_marked};
use crate::tables::copper::{COPPER, longest};
use crate::tables::volts::{MUCH, NOTED, SERVICE_LEAST, SERVICE_MOST, USE_LEAST, USE_LEAST_B};
use crate::verdict::protects_wire;

/// The drops for which the longest runs are given. Both are informational, and nobody enforces them.
const SHARES: [Percent; 2] = [NOTED, MUCH];

/// Everything about volts that concerns more than one load.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Volts {
    /// The lower end of ANSI C84.1 range A at the service, for 120 V.
    pub service_least: Option<Voltage>,
    /// The upper end.
    pub service_most: Option<Voltage>,
    /// The lower end of range A where a 120 V load is plugged in.
    pub use_least: Option<Voltage>,
    /// The lower end of range B there.
    pub use_least_b: Option<Voltage>,
    /// One entry for each step of the start order.
    pub steps: Vec<StepVolts>,
    /// The place that loses the largest share of its volts while loads that may run together run.
    pub worst_running: Option<Worst>,
    /// The same at the moment one of them starts. `None` where no load takes more to start than to run.
    pub worst_start: Option<Worst>,
    /// How long each cord in use might be, by gauge, thinnest first.
    pub longest: Vec<Longest>,
}

/// What a meter should read when a load of the start order is on, with all before it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct StepVolts {
    /// The load that was switched on.
    pub load: Id,
    /// The receptacle it is plugged into.
    pub receptacle: Id,
    /// The least voltage there once it runs.
    pub volts: Voltage,
    /// The voltage there at the moment it starts.
    pub dips_to: Voltage,
    /// The least voltage at the receptacles of each box in use, in tree order.
    pub boxes: Vec<Reading>,
}

/// A reading at a box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Reading {
    /// The box.
    pub at: Id,
    /// The lowest voltage of its receptacles in use.
    pub volts: Voltage,
}

/// The worst voltage drop.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Worst {
    /// The load that has it.
    pub at: Id,
    /// Its receptacle.
    pub receptacle: Id,
    /// The loads that run.
    pub running: Vec<Id>,
    /// The one of them that starts.
    pub starting: Option<Id>,
    /// Volts lost there.
    pub lost: Voltage,
    /// The same as a share of the nominal voltage.
    pub percent: Percent,
    /// Volts left there.
    pub left: Voltage,
    /// The cords on the way to it, from the generator on. Volts lost are the sum of their amps times ohms. Empty where
    /// the line cannot carry the set.
    pub cords: Vec<Through>,
}

/// How long a cord of one gauge might be.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Longest {
    /// The cord.
    pub cord: Id,
    /// The most current through it of loads that may run together.
    pub amps: Current,
    /// The gauge.
    pub wire: String,
    /// Whether that gauge carries this current at all, and is marked for it at some length.
    pub carries: bool,
    /// The greatest length that loses at most 3 % of nominal, in this cord alone, and is usually marked for the
    /// current.
    pub for_3_percent: Length,
    /// The same for 5 %.
    pub for_5_percent: Length,
}

pub(super) fn of_plan(plan: &Plan, supply: &Supply, sharing: &Sharing, scene: &Scene<'_>) -> Volts {
    Volts {
        service_least: Some(SERVICE_LEAST),
        service_most: Some(SERVICE_MOST),
        use_least: Some(USE_LEAST),
        use_least_b: Some(USE_LEAST_B),
        steps: steps(supply, sharing, scene),
        worst_running: worst_running(supply, scene),
        worst_start: worst_start(supply, scene),
        longest: longest_runs(plan, supply, scene),
    }
}

/// Returns the volts left at a point, rounded down. Zero where the line cannot carry the current.
fn left(supply: &Supply, at: NodeIx, flow: Option<&Flow<'_>>) -> Voltage {
    let volts = supply.volts_at(at);
    let gone = flow.map_or(volts, |flow| lost(flow.drop(at)));
    volts - gone.min(volts)
}

fn steps(supply: &Supply, sharing: &Sharing, scene: &Scene<'_>) -> Vec<StepVolts> {
    let mut running: Vec<Running> = Vec::new();
    let mut steps = Vec::new();
    let boxes = boxes(supply, scene);
    for step in &sharing.start_order {
        let Some(own) = scene.of(&step.load) else {
            continue;
        };
        let at = own.load.at;
        // While it starts, every load counts with its nominal current.
        let mut starting = running.clone();
        starting.push(own.starting());
        running.push(own.load);
        let flow = supply.settled_flow(&running);
        let volts = left(supply, at, flow.as_ref());
        let read = |(part, outlets): (&Id, &Vec<NodeIx>)| {
            let least = outlets.iter().map(|outlet| left(supply, *outlet, flow.as_ref())).min()?;
            Some(Reading { at: part.clone(), volts: least })
        };
        steps.push(StepVolts {
            load: step.load.clone(),
            receptacle: supply.node(at).id.clone(),
            volts,
            dips_to: if own.starts() {
                left(supply, at, Some(&supply.nominal_flow(&starting))).min(volts)
            } else {
                volts
            },
            boxes: boxes.iter().filter_map(|(part, outlets)| read((part, outlets))).collect(),
        });
    }
    steps
}

/// Returns the boxes that something is plugged into, each with its own receptacles that feed it. Of these only the ones
/// with the lowest nominal voltage are kept, which are those a meter goes into.
fn boxes(supply: &Supply, scene: &Scene<'_>) -> Vec<(Id, Vec<NodeIx>)> {
    let mut boxes: BTreeMap<NodeIx, Vec<NodeIx>> = BTreeMap::new();
    for placed in &scene.placed {
        let path: Vec<NodeIx> = supply.up(placed.load.at).map(|(ix, _)| ix).collect();
        for (below, ix) in path.iter().enumerate() {
            if !matches!(supply.node(*ix).kind, NodeKind::Inlet { .. }) {
                continue;
            }
            let outlet = path[..below].iter().rfind(|ix| matches!(supply.node(**ix).kind, NodeKind::Receptacle { .. }));
            let outlets = boxes.entry(*ix).or_default();
            if let Some(outlet) = outlet
                && !outlets.contains(outlet)
            {
                outlets.push(*outlet);
            }
        }
    }
    boxes
        .into_iter()
        .map(|(inlet, mut outlets)| {
            let least = outlets.iter().map(|ix| supply.volts_at(*ix)).min();
            outlets.retain(|ix| Some(supply.volts_at(*ix)) == least);
            (supply.node(inlet).id.clone(), outlets)
        })
        .collect()
}

fn worst_running(supply: &Supply, scene: &Scene<'_>) -> Option<Worst> {
    let members = scene
        .costs()
        .enumerate()
        .flat_map(|(set, costs)| costs.enumerate().map(move |(at, (_, cost))| (set, at, cost)));
    let members: Vec<_> = members.collect();
    // Reversed, so that the first wins a tie.
    let worst = scene.worst_of(members.into_iter().rev(), &mut Settled::new());
    let (set, at, _) = worst?;
    let own = scene.sets[set][at];
    let running: Vec<Running> = scene.sets[set].iter().map(|at| scene.placed[*at].load).collect();
    let flow = supply.settled_flow(&running);
    Some(told(supply, scene, (set, own), None, flow.as_ref()))
}

fn worst_start(supply: &Supply, scene: &Scene<'_>) -> Option<Worst> {
    let mut worst: Option<(i128, usize, usize, usize)> = None;
    for (at, set) in scene.costs().enumerate() {
        let members = &scene.sets[at];
        for (own, running) in set {
            // Of all that may start, the load that costs the most. The first wins a tie.
            let starting = members.iter().copied();
            let starting = starting
                .filter(|starts| scene.placed[*starts].starts())
                .map(|starts| (scene.starting_share(own, starts) - scene.share(own, starts), starts))
                .reduce(|most, next| if next.0 > most.0 { next } else { most });
            let Some((more, starts)) = starting else {
                continue;
            };
            let gone = share(running + more, supply.volts_of(&scene.placed[own].load));
            if worst.is_none_or(|(most, ..)| gone > most) {
                worst = Some((gone, at, own, starts));
            }
        }
    }
    let (_, set, own, starts) = worst?;
    let running: Vec<Running> = scene.sets[set]
        .iter()
        .map(|at| {
            let placed = &scene.placed[*at];
            if *at == starts { placed.starting() } else { placed.load }
        })
        .collect();
    let flow = supply.nominal_flow(&running);
    Some(told(supply, scene, (set, own), Some(starts), Some(&flow)))
}

/// Returns the entry for a member of a set at this flow. Without a flow, the line cannot carry the set, and no volts
/// are left.
fn told(
    supply: &Supply,
    scene: &Scene<'_>,
    (set, own): (usize, usize),
    starts: Option<usize>,
    flow: Option<&Flow<'_>>,
) -> Worst {
    let id = |at: usize| scene.placed[at].unit.id.clone();
    let load = &scene.placed[own].load;
    let volts = supply.volts_of(load);
    let gone = flow.map_or(volts, |flow| lost(flow.lost_by(load)).min(volts));
    let cords = flow.map(|flow| flow.through_cords_to(load));
    Worst {
        at: id(own),
        receptacle: supply.node(load.at).id.clone(),
        running: scene.sets[set].iter().map(|at| id(*at)).collect(),
        starting: starts.map(id),
        lost: gone,
        percent: super::drops::percent(gone, volts),
        left: volts - gone,
        cords: super::drops::through(supply, cords.unwrap_or_default()),
    }
}

fn longest_runs(plan: &Plan, supply: &Supply, scene: &Scene<'_>) -> Vec<Longest> {
    let mut list = Vec::new();
    for (at, node) in supply.cords() {
        let Some(cord) = plan.cord(&node.id) else {
            continue;
        };
        let amps = most_through(supply, scene, at);
        if amps > Current::ZERO {
            list.extend(by_gauge(supply, cord, node.legs, amps, |wire| protects_wire(plan, supply, at, wire)));
        }
    }
    list
}

/// Returns the most current on one leg through a point, of loads that may run together.
fn most_through(supply: &Supply, scene: &Scene<'_>, point: NodeIx) -> Current {
    let passes: Vec<bool> =
        scene.placed.iter().map(|placed| supply.up(placed.load.at).any(|(ix, _)| ix == point)).collect();
    let legs = supply.node(point).legs.all();
    let sums = scene.sets.iter().flat_map(|set| {
        legs.iter().map(|leg| -> Current {
            set.iter()
                .filter(|at| passes[**at])
                .map(|at| scene.placed[*at].load)
                .filter(|load| supply.counts_on(load.at).contains(leg))
                .map(|load| load.current)
                .sum()
        })
    });
    sums.max().unwrap_or(Current::ZERO)
}

fn by_gauge(supply: &Supply, cord: &Cord, legs: Legs, amps: Current, protected: impl Fn(Wire) -> bool) -> Vec<Longest> {
    let nominal = match legs {
        // With a neutral, a load may be on one leg, where the nominal voltage is 120 V.
        Legs::One(_) | Legs::Both => supply.volts,
        Legs::Between => Voltage::from_millivolts(supply.volts.millivolts() * 2),
    };
    let wires = COPPER.awg.iter().map(|row| Wire::Awg(row.gauge));
    wires
        .map(|wire| {
            let marked = longest_marked(wire, amps).filter(|_| cord.is_household());
            let [three, five] = SHARES.map(|share| {
                let millivolts = i128::from(nominal.millivolts()) * i128::from(share.millipercent());
                let lost = Voltage::from_millivolts(crate::quantity::narrow(millivolts / 100_000));
                let by_volts = longest(wire, lost, amps);
                marked.map_or(by_volts, |marked| by_volts.min(marked))
            });
            Longest {
                cord: cord.id.clone(),
                amps,
                wire: wire.to_string(),
                carries: flexible_ampacity(wire) >= amps && marked != Some(Length::ZERO) && protected(wire),
                for_3_percent: three,
                for_5_percent: five,
            }
        })
        .collect()
}

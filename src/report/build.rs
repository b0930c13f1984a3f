//! Putting the report together.

use super::loads::{self, LoadUnit};
use super::{
    FORMAT, Figures, Limit, LoadFacts, Report, SetBy, Sharing, Usable, decides, drops, energy,
    noise, proofs, volts,
};
use crate::plan::{Leg, Plan};
use crate::quantity::{Current, Power};
use crate::rules::{self, Facts};
use crate::sharing::share;
use crate::supply::{NodeIx, NodeKind, Supply};

/// The report of a plan.
#[must_use]
pub fn build(plan: &Plan) -> Report {
    let supply = Supply::build(plan);
    let mut report = judged(plan, &supply);
    let Report {
        findings, figures, ..
    } = &mut report;
    let decides = decides::most(plan, figures, findings, |answered, field, trial| {
        let other = decides::changes_supply(field).then(|| Supply::build(answered));
        let limits = other
            .as_ref()
            .map(|supply| std::mem::replace(&mut trial.limits, limits(supply)));
        let loads = decides::changes_loads(field).then(|| {
            let facts = facts(answered, &loads::units(answered).0);
            std::mem::replace(&mut trial.loads, facts)
        });
        let found = rules::check_some(
            &Facts::new(answered, other.as_ref().unwrap_or(&supply), trial),
            decides::counts,
        );
        let standing = decides::Standing::of(trial, &found);
        if let Some(limits) = limits {
            trial.limits = limits;
        }
        if let Some(loads) = loads {
            trial.loads = loads;
        }
        standing
    });
    report.figures.decides = decides;
    report
}

/// The same without the unknown that decides most ([`Figures::decides`]), which takes longer than
/// all the rest: for whoever asks about many plans.
#[must_use]
pub fn judge(plan: &Plan) -> Report {
    judged(plan, &Supply::build(plan))
}

fn judged(plan: &Plan, supply: &Supply) -> Report {
    let (units, load_assumptions) = loads::units(plan);
    let sharing = share(plan, supply, &units);
    let mut assumed = supply.assumed.clone();
    assumed.extend(load_assumptions);
    let (energy, energy_assumptions) = energy::of_plan(plan, &units, &sharing);
    assumed.extend(energy_assumptions);
    assumed.extend(rules::assumed(plan, &energy));
    let scene = drops::Scene::new(supply, &units, &sharing);
    let plugged_in = scene.placed.iter();
    let plugged_in = plugged_in.map(|it| (&it.unit.id, it.unit.plug, it.load.at));
    let figures = Figures {
        limits: limits(supply),
        protection: rules::proofs(plan, supply, plugged_in),
        loads: facts(plan, &units),
        usable: usable(plan, supply, &sharing),
        drops: drops::of_scene(&scene),
        volts: volts::of_plan(plan, supply, &sharing, &scene),
        tests: proofs::of_plan(plan, supply),
        sharing,
        noise: noise::of_plan(plan, &energy),
        energy,
        assumed,
        decides: None,
    };
    let findings = rules::check(&Facts::new(plan, supply, &figures));
    Report {
        format: FORMAT,
        findings,
        figures,
    }
}

pub(super) fn facts(plan: &Plan, units: &[LoadUnit]) -> Vec<LoadFacts> {
    units.iter().map(|unit| unit.facts(plan)).collect()
}

/// The limit of every receptacle, in the order of the tree.
pub(super) fn limits(supply: &Supply) -> Vec<Limit> {
    supply
        .receptacles()
        .map(|(ix, node, shape, _)| {
            let limit = supply.limit(ix);
            let volts = supply.volts_at(ix);
            Limit {
                id: node.id.clone(),
                shape,
                volts: volts.into(),
                marked_amps: supply.own_breaker(ix).unwrap_or(shape.0.rating()).into(),
                continuous_amps: limit.continuous.into(),
                short_amps: limit.short.into(),
                continuous_watts: Power::of_capacity(limit.continuous, volts).into(),
                short_watts: Power::of_capacity(limit.short, volts).into(),
                set_by: SetBy {
                    id: supply.node(limit.set_by).id.clone(),
                    reason: limit.reason,
                    enforced: limit.reason.enforced(),
                },
                gfci: supply.gfci(ix),
                path: supply.path(ix),
            }
        })
        .collect()
}

/// What of the power can be had through the outlets in use and the gear plugged into them. With
/// nothing in use, through all outlets.
fn usable(plan: &Plan, supply: &Supply, sharing: &Sharing) -> Usable {
    let used = used(plan, supply, sharing);
    let reach = Reach::of(supply, &used);
    let root = NodeIx(0);
    let legs = supply.node(root).legs.all();
    let flows: Vec<Current> = legs.iter().map(|leg| reach.flow(root, *leg)).collect();
    let reachable = if flows.iter().all(|flow| *flow == supply.leg_rated) {
        supply.rated
    } else {
        flows
            .iter()
            .map(|flow| Power::of_capacity(*flow, supply.volts))
            .sum::<Power>()
            .min(supply.rated)
    };
    Usable {
        rated_watts: supply.rated.into(),
        peak_watts: supply.peak.into(),
        reachable_watts: reachable.into(),
        stranded_watts: (supply.rated - reachable).into(),
    }
}

/// The receptacles that loads are plugged into.
fn used(plan: &Plan, supply: &Supply, sharing: &Sharing) -> Vec<NodeIx> {
    plan.loads
        .iter()
        .filter_map(|load| load.on.as_ref())
        .chain(sharing.placed.iter().map(|placed| &placed.at))
        .filter_map(|id| supply.receptacle(id))
        .collect()
}

/// The most current that can be drawn through a node on a leg, by what is in use beyond it.
pub(crate) fn flow(
    (plan, supply, sharing): (&Plan, &Supply, &Sharing),
    at: NodeIx,
    leg: Leg,
) -> Current {
    Reach::of(supply, &used(plan, supply, sharing)).flow(at, leg)
}

struct Reach<'a> {
    supply: &'a Supply,
    /// Receptacles that loads are plugged into.
    used: &'a [NodeIx],
    /// Count every receptacle as in use.
    everything: bool,
}

impl<'a> Reach<'a> {
    fn of(supply: &'a Supply, used: &'a [NodeIx]) -> Self {
        Self {
            supply,
            used,
            everything: used.is_empty()
                && !supply.nodes.iter().any(|node| {
                    matches!(node.kind, NodeKind::Cord { .. } | NodeKind::Inlet { .. })
                }),
        }
    }

    /// The most current that can be drawn through a node on one leg.
    fn flow(&self, at: NodeIx, leg: Leg) -> Current {
        let node = self.supply.node(at);
        if !node.legs.all().contains(&leg) {
            return Current::ZERO;
        }
        let mut below: Current = self
            .supply
            .fed_from(at)
            .map(|(child, _)| self.flow(child, leg))
            .sum();
        if let NodeKind::Receptacle { .. } = node.kind {
            let feeds_gear = self.supply.fed_from(at).next().is_some();
            // The receptacles of a cord or box are there to be used; those of the generator
            // are in use when something is plugged in.
            let of_gear = self.supply.up(at).skip(1).any(|(_, above)| {
                matches!(above.kind, NodeKind::Cord { .. } | NodeKind::Inlet { .. })
            });
            if self.used.contains(&at) || self.everything || (of_gear && !feeds_gear) {
                below = node.rating;
            }
        }
        below.min(node.rating)
    }
}

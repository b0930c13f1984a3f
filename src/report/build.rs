//! Putting the report together.

use super::loads::{self, LoadUnit};
use super::{
    Acts, Admits, Because, EnergyUse, FORMAT, Figures, Finding, GfciCord, Limit, LoadFacts, Report,
    SetBy, Sharing, Shock, ShockState, Signal, Usable, Verdict, Volts, decides, drops, energy,
    noise, proofs, telling, troubles, volts,
};
use crate::plan::{Id, Leg, Plan};
use crate::quantity::{Current, Power};
use crate::rules::{self, Facts, Rule};
use crate::sharing::{places, share};
use crate::supply::{self, NodeIx, NodeKind, Supply};
use crate::verdict::{OnlyIf, Protection, Refusal, Verdicts, wrong_anywhere};

/// The report of a plan.
#[must_use]
pub fn build(plan: &Plan) -> Report {
    in_full(plan, judge(plan))
}

/// The report of a plan that is judged already, with the unknown that decides most and what rests on others.
#[must_use]
pub(crate) fn in_full(plan: &Plan, mut report: Report) -> Report {
    let supply = Supply::build(plan);
    let Report {
        findings, figures, ..
    } = &mut report;
    let answers = decides::answers(plan, figures, findings, |answered, changes, trial| {
        let other = changes.supply.then(|| Supply::build(answered));
        let supply = other.as_ref().unwrap_or(&supply);
        let verdicts = Verdicts::of(answered, supply);
        let limits = other
            .as_ref()
            .map(|supply| std::mem::replace(&mut trial.limits, limits(supply, &verdicts)));
        let loads = changes.loads.then(|| {
            let facts = facts(answered, &loads::units(answered).0);
            std::mem::replace(&mut trial.loads, facts)
        });
        let found = rules::check_some(
            &Facts::new(answered, supply, &verdicts, trial),
            decides::counts,
        );
        let sum = decides::sum_of_limits(trial);
        if let Some(limits) = limits {
            trial.limits = limits;
        }
        if let Some(loads) = loads {
            trial.loads = loads;
        }
        (sum, found)
    });
    for (at, field) in answers.rests_on {
        let assumption = figures.assumed.iter().find(|it| it.field == field);
        findings[at].rests_on.extend(assumption.cloned());
    }
    // A label says of each leg that nobody knows that it is not known.
    let told = report.figures.assumed.iter();
    let told = told.filter(|it| it.why == "leg" || answers.matters.contains(&it.field));
    report.figures.matters = told.map(|it| it.field.clone()).collect();
    report.figures.decides = answers.decides;
    report
}

/// The same without the unknown that decides most ([`Figures::decides`]), which takes longer than
/// all the rest: for whoever asks about many plans.
#[must_use]
pub fn judge(plan: &Plan) -> Report {
    let supply = Supply::build(plan);
    judged(plan, &supply, &Verdicts::of(plan, &supply))
}

/// As much of it as says what a plan on trial has of this signal or worse, and who has a place: a sharing with
/// little work and without what runs together, orders and turns, and what the rules find that may find
/// that much or speak of air. Volts, energy and readings are empty, and all power is taken to reach its outlets.
#[must_use]
pub(crate) fn trial(plan: &Plan, down_to: Signal) -> Report {
    let supply = Supply::build(plan);
    let verdicts = Verdicts::of(plan, &supply);
    let (units, _) = loads::units(plan);
    let sharing = places(plan, &supply, &verdicts, &units);
    let mut figures = Figures {
        limits: limits(&supply, &verdicts),
        verdicts: Vec::new(),
        spare: Vec::new(),
        troubles: Vec::new(),
        protection: Vec::new(),
        loads: facts(plan, &units),
        usable: Usable {
            rated_watts: supply.rated,
            peak_watts: supply.peak,
            reachable_watts: supply.rated,
            stranded_watts: Power::ZERO,
        },
        drops: Vec::new(),
        volts: Volts::default(),
        tests: Vec::new(),
        sharing,
        energy: EnergyUse::default(),
        noise: noise::of_plan(plan, &EnergyUse::default()),
        assumed: Vec::new(),
        matters: Vec::new(),
        decides: None,
    };
    let facts = Facts::new(plan, &supply, &verdicts, &figures);
    let of_trial = |rule: &Rule| rule.worst <= down_to || rule.area == "air";
    let findings = rules::check_some(&facts, of_trial);
    figures.troubles = troubles::of_findings(plan, &findings);
    Report {
        format: FORMAT,
        findings,
        figures,
    }
}

fn judged(plan: &Plan, supply: &Supply, verdicts: &Verdicts<'_>) -> Report {
    let (units, load_assumptions) = loads::units(plan);
    let sharing = share(plan, supply, verdicts, &units);
    let mut assumed = supply.assumed.clone();
    assumed.extend(verdicts.assumed(plan));
    assumed.extend(load_assumptions);
    let (energy, energy_assumptions) = energy::of_plan(plan, supply, &units, &sharing);
    assumed.extend(energy_assumptions);
    assumed.extend(rules::assumed(plan, &energy));
    let scene = drops::Scene::new(supply, &units, &sharing);
    let plugged_in = scene.placed.iter();
    let plugged_in = plugged_in.map(|it| (&it.unit.id, it.unit.plug, it.load.at));
    let mut figures = Figures {
        limits: limits(supply, verdicts),
        verdicts: Vec::new(),
        spare: Vec::new(),
        troubles: Vec::new(),
        protection: super::protection::protection(plan, supply, plugged_in),
        loads: facts(plan, &units),
        usable: usable(plan, supply, verdicts, &sharing),
        drops: drops::of_scene(&scene),
        volts: volts::of_plan(plan, supply, &sharing, &scene),
        tests: proofs::of_plan(supply, verdicts),
        sharing,
        noise: noise::of_plan(plan, &energy),
        energy,
        assumed,
        matters: Vec::new(),
        decides: None,
    };
    let findings = rules::check(&Facts::new(plan, supply, verdicts, &figures));
    figures.troubles = troubles::of_findings(plan, &findings);
    figures.verdicts = of_points(plan, supply, verdicts, &figures, &findings);
    let (spare, told) = of_spare_parts(plan, supply);
    figures.verdicts.extend(lost(supply, &findings, &spare));
    figures.verdicts.extend(spare);
    figures.spare = told;
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
pub(super) fn limits(supply: &Supply, verdicts: &Verdicts<'_>) -> Vec<Limit> {
    supply
        .receptacles()
        .map(|(ix, node, shape, _)| {
            let limit = supply.limit(ix);
            let volts = supply.volts_at(ix);
            Limit {
                id: node.id.clone(),
                shape,
                volts,
                marked_amps: supply.own_breaker(ix).unwrap_or(shape.0.rating()),
                continuous_amps: limit.continuous,
                short_amps: limit.short,
                continuous_watts: Power::of_capacity(limit.continuous, volts),
                short_watts: Power::of_capacity(limit.short, volts),
                continuous_set_by: set_by(supply, limit.continuous_by),
                set_by: set_by(supply, limit.short_by),
                acts: acts(supply, limit.acts),
                legs: supply.node(ix).legs.all(),
                gfci: verdicts.protected(ix),
                shock: shock(supply, verdicts.protection(ix)),
                path: supply.path(ix),
            }
        })
        .collect()
}

/// What sets a limit, in ids.
pub(crate) fn set_by(supply: &Supply, by: supply::SetBy) -> SetBy {
    SetBy {
        id: supply.node(by.node).id.clone(),
        reason: by.reason,
        enforced: by.reason.enforced(),
        share: by.share,
    }
}

/// What acts past a limit, in ids.
pub(crate) fn acts(supply: &Supply, acts: supply::Acts) -> Acts {
    let id = |at: NodeIx| supply.node(at).id.clone();
    match acts {
        supply::Acts::At(at) => Acts::AtLimit { id: id(at) },
        supply::Acts::Above(at, amps) => Acts::Above { id: id(at), amps },
        supply::Acts::Never => Acts::Never,
    }
}

fn shock(supply: &Supply, protection: Protection) -> Shock {
    let joint = match protection {
        Protection::Blind { joint, .. } | Protection::Doubtful { joint, .. } => Some(joint),
        Protection::Works(_) | Protection::None => None,
    };
    let id = |at: NodeIx| supply.node(at).id.clone();
    Shock {
        state: match protection {
            Protection::Works(_) => ShockState::Works,
            Protection::Blind { .. } => ShockState::Blind,
            Protection::Doubtful { .. } => ShockState::Doubtful,
            Protection::None => ShockState::None,
        },
        by: protection.device().map(id),
        joint: joint.map(id),
    }
}

/// The verdict on each receptacle, cord and box.
fn of_points(
    plan: &Plan,
    supply: &Supply,
    verdicts: &Verdicts<'_>,
    figures: &Figures,
    findings: &[Finding],
) -> Vec<Verdict> {
    let id = |at: NodeIx| &supply.node(at).id;
    let lifted_by = |refusal: &Refusal| {
        let (code, at) = (refusal.cause.code(), id(refusal.at));
        telling(findings, &figures.limits, code, at).map(|finding| finding.fix.key)
    };
    let mut points: Vec<Verdict> = Vec::new();
    for (at, node) in supply.nodes.iter().enumerate() {
        let ix = NodeIx(at);
        let receptacle = matches!(node.kind, NodeKind::Receptacle { .. });
        // A cord's only end has the id of the cord, and speaks for it.
        let spoken_for = |ix: NodeIx| {
            let mut ends = supply.fed_from(ix);
            ends.any(|(_, end)| end.id == node.id)
        };
        match node.kind {
            NodeKind::Cord { .. } if spoken_for(ix) => continue,
            NodeKind::Receptacle { .. } | NodeKind::Cord { .. } | NodeKind::Inlet { .. } => {}
            _ => continue,
        }
        let (refused, why) = (verdicts.refused(ix), verdicts.no_loads(ix));
        let (only, bonding_plug) = verdicts.named(ix);
        let only: Vec<Id> = only.into_iter().map(|part| id(part).clone()).collect();
        let sharing = &figures.sharing;
        let placed = sharing.placed.iter().filter(|placed| placed.at == node.id);
        let of = |load: &Id| {
            let fact = figures.loads.iter().find(|fact| fact.id == *load);
            fact.map(|fact| &fact.of)
        };
        let loads: Vec<Id> = placed
            .map(|placed| placed.load.clone())
            .filter(|load| receptacle && sharing.may_run(load, of))
            .collect();
        let at_once = |set: &Vec<Id>| loads.iter().all(|load| set.contains(load));
        let one_at_a_time = loads.len() > 1 && !sharing.together.iter().any(at_once);
        points.push(Verdict {
            id: node.id.clone(),
            bonding_plug,
            admits: match why {
                None => Admits::Everything,
                Some(_) if !only.is_empty() || bonding_plug && refused.is_none() => Admits::Named,
                Some(_) if verdicts.takes_guarded(ix) => Admits::Guarded,
                Some(_) => Admits::Nothing,
            },
            only,
            why: why.map(|refusal| Because {
                code: refusal.cause.code(),
                at: id(refusal.at).clone(),
                lifted_by: lifted_by(&refusal),
            }),
            gfci_cord: verdicts.guard_goes(ix).map(|into| GfciCord {
                into: id(into).clone(),
                ahead_of: verdicts
                    .to_go_past(into)
                    .into_iter()
                    .map(|part| id(part).clone())
                    .collect(),
            }),
            only_if: OnlyIf::of(plan, supply, ix).filter(|_| refused.is_none()),
            one_at_a_time,
            not_together: if one_at_a_time {
                not_together(sharing, &loads)
            } else {
                Vec::new()
            },
            loads,
            assumed: assumed_on_the_way(supply, ix, figures),
        });
    }
    points
}

/// Of loads that may not all run at once, the sets that may not, if two of them may: all of them in one where none
/// is known that holds no other.
fn not_together(sharing: &Sharing, loads: &[Id]) -> Vec<Vec<Id>> {
    let of_these = |set: &&Vec<Id>| set.iter().filter(|id| loads.contains(id)).count() > 1;
    if sharing.together.iter().find(of_these).is_none() {
        return Vec::new();
    }
    let never = sharing.never.iter();
    let never = never.filter(|set| set.iter().all(|id| loads.contains(id)));
    let never: Vec<Vec<Id>> = never.cloned().collect();
    if never.is_empty() {
        return vec![loads.to_vec()];
    }
    never
}

/// The verdict on what is plugged into a socket that is not there, or does not take its plug, and on what hangs
/// on that. A part that the plan plugs in nowhere is in the bin: there is nothing to say of it.
/// What must not be used wherever it is plugged in has its verdict.
fn lost(supply: &Supply, findings: &[Finding], spare: &[Verdict]) -> Vec<Verdict> {
    let detached = supply.detached.iter();
    let left = detached.filter(|part| spare.iter().all(|it| it.id != part.id));
    let verdicts = left.filter_map(|part| {
        let mut of_rule = findings.iter().filter(|it| it.code == "FIT001");
        let finding = of_rule.find(|finding| finding.about.contains(&part.begins))?;
        Some(Verdict {
            id: part.id.clone(),
            admits: Admits::Nothing,
            only: Vec::new(),
            bonding_plug: false,
            why: Some(Because {
                code: finding.code,
                at: part.begins.clone(),
                lifted_by: Some(finding.fix.key),
            }),
            gfci_cord: None,
            only_if: None,
            loads: Vec::new(),
            one_at_a_time: false,
            not_together: Vec::new(),
            assumed: Vec::new(),
        })
    });
    verdicts.collect()
}

/// The verdicts on cords and boxes that are plugged into nothing, or into a socket that does not exist, and that must
/// not be used anywhere; with the findings that say why. These findings are no troubles of the plan, because
/// nobody uses the parts.
fn of_spare_parts(plan: &Plan, supply: &Supply) -> (Vec<Verdict>, Vec<Finding>) {
    let refused = supply.detached.iter().filter_map(|part| {
        let (refusal, at, best) = wrong_anywhere(plan, &part.id)?;
        let code = refusal.cause.code();
        let report = trial(&best, Signal::Notice);
        let finding = telling(&report.findings, &report.figures.limits, code, &at)?.clone();
        let verdict = Verdict {
            id: part.id.clone(),
            admits: Admits::Nothing,
            only: Vec::new(),
            bonding_plug: false,
            why: Some(Because {
                code,
                at,
                lifted_by: Some(finding.fix.key),
            }),
            gfci_cord: None,
            only_if: None,
            loads: Vec::new(),
            one_at_a_time: false,
            not_together: Vec::new(),
            assumed: Vec::new(),
        };
        Some((verdict, finding))
    });
    refused.unzip()
}

/// What was assumed of the generator and of the parts on the way to a point.
fn assumed_on_the_way(supply: &Supply, at: NodeIx, figures: &Figures) -> Vec<String> {
    let path: Vec<&Id> = supply.up(at).map(|(_, node)| &node.id).collect();
    let of_path = |field: &str| {
        let mut parts = field.split('.');
        match (parts.next(), parts.next(), parts.next()) {
            (Some("cord" | "box"), Some(_), Some("outlet"))
            | (Some("generator"), Some("outlet"), Some(_)) => {
                let outlet = field.split('.').rev().nth(1);
                path.iter().any(|id| Some(id.as_str()) == outlet)
            }
            (Some("cord" | "box"), Some(part), _) => path
                .iter()
                .any(|id| id.as_str() == part || id.as_str().split('.').next() == Some(part)),
            (Some("generator"), _, _) | (Some("site"), Some("air" | "altitude" | "ground"), _) => {
                true
            }
            _ => false,
        }
    };
    let fields = figures.assumed.iter().map(|assumption| &assumption.field);
    fields.filter(|field| of_path(field)).cloned().collect()
}

/// What of the power can be had through the outlets in use and the gear plugged into them. With
/// nothing in use, through all outlets.
fn usable(plan: &Plan, supply: &Supply, verdicts: &Verdicts<'_>, sharing: &Sharing) -> Usable {
    let used = used(plan, supply, sharing);
    let reach = Reach::of(supply, verdicts, &used);
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
        rated_watts: supply.rated,
        peak_watts: supply.peak,
        reachable_watts: reachable,
        stranded_watts: supply.rated - reachable,
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
    verdicts: &Verdicts<'_>,
    at: NodeIx,
    leg: Leg,
) -> Current {
    Reach::of(supply, verdicts, &used(plan, supply, sharing)).flow(at, leg)
}

struct Reach<'a> {
    supply: &'a Supply,
    verdicts: &'a Verdicts<'a>,
    /// Receptacles that loads are plugged into.
    used: &'a [NodeIx],
    /// Count every receptacle as in use.
    everything: bool,
}

impl<'a> Reach<'a> {
    fn of(supply: &'a Supply, verdicts: &'a Verdicts<'a>, used: &'a [NodeIx]) -> Self {
        Self {
            supply,
            verdicts,
            used,
            everything: used.is_empty() && !supply.nodes.iter().any(|node| node.kind.is_gear()),
        }
    }

    /// The most current that can be drawn through a node on one leg.
    fn flow(&self, at: NodeIx, leg: Leg) -> Current {
        let node = self.supply.node(at);
        // Nothing is drawn through what must not be used.
        if !node.legs.all().contains(&leg) || self.verdicts.refused(at).is_some() {
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
            let of_gear = self
                .supply
                .up(at)
                .skip(1)
                .any(|(_, above)| above.kind.is_gear());
            let open = self.verdicts.no_loads(at).is_none();
            if open && (self.used.contains(&at) || self.everything || (of_gear && !feeds_gear)) {
                below = node.rating;
            }
        }
        below.min(node.rating)
    }
}

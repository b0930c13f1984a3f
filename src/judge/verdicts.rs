//! The verdicts of [`crate::verdict`] in terms of ids, with the findings that explain them.

use super::trial;
use super::unknowns::{all_answered, cleared};
use crate::plan::{Id, Plan};
use crate::report::{Admits, Because, EnergyUse, Figures, Finding, GfciCord, Signal, Verdict, telling};
use crate::rules;
use crate::supply::{NodeIx, NodeKind, Supply};
use crate::verdict::{OnlyIf, Refusal, Verdicts, wrong_anywhere};

/// Returns the verdict on each receptacle, cord and box.
pub(super) fn of_points(
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
    for (ix, node) in supply.points() {
        let receptacle = matches!(node.kind, NodeKind::Receptacle { .. });
        // A cord's only end has the cord's id and speaks for it. So does the inside of a camper.
        let spoken_for = supply.receptacle(&node.id).is_some();
        match node.kind {
            NodeKind::Cord { .. } | NodeKind::Inlet { .. } if spoken_for => continue,
            NodeKind::Receptacle { .. } | NodeKind::Cord { .. } | NodeKind::Inlet { .. } => {}
            _ => continue,
        }
        let (refused, why) = (verdicts.refused(ix), verdicts.no_loads(ix));
        let (only, plug) = verdicts.named(ix);
        let only: Vec<Id> = only.into_iter().map(|part| id(part).clone()).collect();
        let sharing = &figures.sharing;
        let placed = sharing.placed.iter().filter(|placed| placed.at == node.id);
        let loads: Vec<Id> =
            placed.map(|placed| placed.load.clone()).filter(|load| receptacle && figures.may_run(load)).collect();
        let clash = sharing.clashes.iter().find(|it| receptacle && it.at == node.id);
        points.push(Verdict {
            id: node.id.clone(),
            bonding_plug: verdicts.holds_bonding_plug(ix),
            admits: match why {
                _ if !only.is_empty() || plug && refused.is_none() => Admits::Named,
                None => Admits::Everything,
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
                ahead_of: verdicts.to_go_past(into).into_iter().map(|part| id(part).clone()).collect(),
            }),
            only_if: OnlyIf::of(plan, supply, ix).filter(|_| refused.is_none()),
            one_at_a_time: clash.is_some(),
            not_together: clash.map_or_else(Vec::new, |it| it.never.clone()),
            loads,
            assumed: assumed_on_the_way(supply, ix, figures),
        });
    }
    points
}

/// Returns the verdicts on parts plugged into a socket that does not exist or does not take their plug, and on what
/// hangs on them. A part that the plan plugs in nowhere is in the bin and has none, unless it must not be used anywhere
/// (`spare`).
pub(super) fn lost(supply: &Supply, findings: &[Finding], spare: &[Verdict]) -> Vec<Verdict> {
    let detached = supply.detached.iter();
    let left = detached.filter(|part| spare.iter().all(|it| it.id != part.id));
    let verdicts = left.filter_map(|part| {
        let mut of_rule = findings.iter().filter(|it| it.code == "FIT001");
        let finding = of_rule.find(|finding| finding.about.contains(&part.begins))?;
        Some(unusable(&part.id, &part.begins, finding))
    });
    verdicts.collect()
}

/// Returns the verdict that a part must not be used because of what a finding says about `at`, wherever anything is
/// plugged in.
fn unusable(part: &Id, at: &Id, finding: &Finding) -> Verdict {
    let why = Because { code: finding.code, at: at.clone(), lifted_by: Some(finding.fix.key) };
    Verdict { id: part.clone(), admits: Admits::Nothing, why: Some(why), ..Verdict::default() }
}

/// Returns the verdicts on cords and boxes that are not plugged in, or are plugged into a socket that does not exist,
/// and that must not be used anywhere. Also the findings that explain them. These are no troubles of the plan, because
/// nobody uses the parts.
pub(super) fn of_spare_parts(plan: &Plan, supply: &Supply) -> (Vec<Verdict>, Vec<Finding>) {
    let (mut verdicts, mut told) = (Vec::new(), Vec::new());
    for part in &supply.detached {
        let Some((refusal, at, best)) = wrong_anywhere(plan, &part.id) else {
            continue;
        };
        let code = refusal.cause.code();
        let report = trial(&best, Signal::Notice);
        let Some(own) = telling(&report.findings, &report.figures.limits, code, &at) else {
            continue;
        };
        verdicts.push(unusable(&part.id, &at, own));
        // A finding that is cleared together with this one is a reason as well, and may be a better one.
        let mut troubles = report.figures.troubles.iter();
        let trouble = troubles.find(|it| report.findings_of(it).any(|of| of == own));
        let with = trouble.into_iter().flat_map(|it| report.findings_of(it));
        let with = with.filter(|it| *it != own && it.about.contains(&at));
        told.extend(std::iter::once(own).chain(with).cloned());
    }
    (verdicts, told)
}

/// Adds to the findings about spare parts what they rest on: the unknowns for which a better answer removes the finding
/// wherever the part is plugged in.
pub(super) fn guesses_of_spare_parts(plan: &Plan, supply: &Supply, figures: &mut Figures) {
    for part in &supply.detached {
        // Most are sound, and have no findings.
        if figures.verdicts.iter().all(|it| it.id != part.id) {
            continue;
        }
        let Some((_, at, best)) = wrong_anywhere(plan, &part.id) else {
            continue;
        };
        let assumed = rules::assumed(&best, &EnergyUse::default()).into_iter();
        let of_gear = Supply::build(&best).assumed.into_iter();
        for it in assumed.chain(of_gear) {
            // Answers about other parts change nothing.
            if it.field.split('.').all(|of| of != at.as_str()) {
                continue;
            }
            let answered = all_answered(&best, std::slice::from_ref(&it.field));
            let then = trial(&answered, Signal::Notice).findings;
            let of_part = figures.spare.iter_mut().filter(|own| own.about.contains(&at));
            for own in of_part.filter(|own| cleared(own, &then)) {
                if !own.rests_on.contains(&it) {
                    own.rests_on.push(it.clone());
                }
            }
        }
    }
}

/// Returns the fields that were assumed for the generator and for the parts on the way to a point.
fn assumed_on_the_way(supply: &Supply, at: NodeIx, figures: &Figures) -> Vec<String> {
    let path: Vec<&Id> = supply.up(at).map(|(_, node)| &node.id).collect();
    let of_path = |field: &str| {
        let mut parts = field.split('.');
        match (parts.next(), parts.next(), parts.next()) {
            (Some("cord" | "box"), Some(_), Some("outlet")) | (Some("generator"), Some("outlet"), Some(_)) => {
                let outlet = field.split('.').rev().nth(1);
                path.iter().any(|id| Some(id.as_str()) == outlet)
            }
            (Some("cord" | "box"), Some(part), _) => {
                path.iter().any(|id| id.as_str() == part || id.as_str().split('.').next() == Some(part))
            }
            (Some("generator"), _, _) | (Some("site"), Some("air" | "altitude" | "ground"), _) => true,
            _ => false,
        }
    };
    let unknown = figures.assumed.iter().filter(|it| !it.of_all_campers());
    let fields = unknown.map(|assumption| &assumption.field);
    fields.filter(|field| of_path(field)).cloned().collect()
}

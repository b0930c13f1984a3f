//! What is gone once something is looked at, and what has to be found there for that.
//!
//! Where there is more to an answer than yes or no, the least demanding one that is enough is named: "12/3", not the
//! thickest wire on sale. It is tried, as everything else.

use super::{Trials, reading};
use crate::judge::unknowns::{Changes, all_answered, answer_as, cleared, counts};
use crate::plan::{Id, Plan};
use crate::quantity::{Amount, Current, Quantity};
use crate::report::{Finding, Found, Look, Marking, Report, Signal};
use crate::rules;
use crate::supply::Supply;
use crate::value::Value;

/// Answers in steps that people know, the least demanding first. The best answer comes after the last.
const STEPS: [(&str, &[&str]); 4] = [
    ("altitude", &["5000 ft", "4000 ft", "3000 ft", "2000 ft", "1000 ft"]),
    ("sleepers_at", &["25 ft", "30 ft", "40 ft", "60 ft"]),
    ("wire", &["16 AWG", "14 AWG", "12 AWG"]),
    ("length", &["100 ft", "50 ft"]),
];

/// Completes a look with what is gone after it. `before` are the fields answered before it, and `fields` those with it.
pub(super) fn tell<F: FnMut(&Plan, Changes) -> Vec<Finding>>(
    report: &Report,
    trials: &mut Trials<'_, F>,
    before: &[String],
    fields: &[String],
    look: &mut Look,
) {
    let now = if before.is_empty() { report.findings.clone() } else { trials.found(before).to_vec() };
    let then = trials.found(fields).to_vec();
    // Rules that are not run again say nothing here.
    let judged = |it: &Finding| it.signal <= Signal::Caution && rules::find(it.code).is_some_and(counts);
    let all = report.findings.iter().enumerate();
    let gone = all.filter(|(_, it)| judged(it) && cleared(it, &then) && !cleared(it, &now));
    let mut gone: Vec<(usize, &Finding)> = gone.collect();
    let worst = gone.iter().map(|(_, it)| it.signal).min();
    gone.retain(|(_, it)| Some(it.signal) == worst);
    look.gone = gone.iter().map(|(at, _)| *at).collect();
    let gone: Vec<&Finding> = gone.into_iter().map(|(_, it)| it).collect();

    let mut best = all_answered(trials.plan, fields);
    look.carries = carries(look, &best).filter(|amps| Some(*amps) > carries(look, trials.plan));
    let bears = |field: &String| {
        let printed =
            look.carries.is_some() && matches!(reading(field).1, Marking::Print) && !field.ends_with("outdoor");
        printed || gone.iter().any(|it| it.rests_on.iter().any(|on| on.field == *field))
    };
    let find: Vec<String> = look.fields.iter().filter(|field| bears(field)).cloned().collect();
    // Where loads get an outlet, they have to be placed again.
    let places = gone.iter().any(|it| trials.served.iter().any(|(served, _)| served == it));
    for field in &find {
        let steps = STEPS.iter().find(|(name, _)| field.rsplit('.').next() == Some(name));
        for text in steps.into_iter().flat_map(|(_, steps)| *steps) {
            let mut other = best.clone();
            if answer_as(&mut other, field, text).is_none() || carries(look, &other) != carries(look, &best) {
                continue;
            }
            let found = (trials.found_with)(&other, Changes { places, ..Changes::of_all(fields) });
            if gone.iter().all(|it| cleared(it, &found)) {
                best = other;
                break;
            }
        }
    }
    look.find = find.into_iter().map(|field| Found { value: value(&best, &field), field }).collect();
}

/// Returns what the cord that is looked at can carry, at the end that carries the most.
fn carries(look: &Look, plan: &Plan) -> Option<Current> {
    let cord = look.at.as_ref().filter(|_| look.read == Marking::Print)?;
    let supply = Supply::build(plan);
    let ends = supply.receptacles().filter(|(_, node, ..)| plan.part_of(&node.id) == Some(cord));
    ends.map(|(at, ..)| supply.limit(at).short).max()
}

/// Returns the value of a field, if it is an amount, a count or a name.
fn value(plan: &Plan, field: &str) -> Option<Value> {
    fn amount<Q: Quantity>(of: &crate::plan::Answer<Q>) -> Option<Value> {
        of.known().map(|it| Amount::of(*it).into())
    }
    let (path, name) = field.rsplit_once('.')?;
    let id = path.rsplit('.').next()?;
    let cord = || plan.cord(id);
    let outlet = || plan.outlet(&Id::new(id)?);
    match name {
        "altitude" => amount(&plan.site.altitude),
        "sleepers_at" => amount(&plan.site.sleepers_at),
        "rated" => amount(&plan.generator.rated),
        "peak" => amount(&plan.generator.peak),
        "length" => amount(&cord()?.length),
        "breaker" => amount(&outlet()?.breaker),
        "wire" => cord()?.wire.known().map(|it| Value::Name(it.to_string())),
        "conductors" => cord()?.conductors.known().map(|it| Value::Count((*it).into())),
        _ => None,
    }
}

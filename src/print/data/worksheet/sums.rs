//! The sums that decide what runs together, and the peaks of switching on, term by term.

use std::fmt::Write as _;

use super::super::Context;
use super::{Section, Sheet};
use crate::plan::Leg;
use crate::quantity::{ApparentPower, Quantity, Ratio};
use crate::report::StepVolts;
use crate::report::sums::{Adder, StartSum, Sum, Term};
use crate::supply::NodeKind;

/// The most steps of switching on that are listed.
const MOST_STEPS: usize = 40;

/// Formats the volt-amperes that the calculation uses. Amps would have to be rounded, and their sums would not add up.
fn volt_amps(context: &Context<'_>, apparent: ApparentPower) -> String {
    format!("{}\u{a0}VA", context.words.number(apparent.amount()))
}

/// Formats what a sum may come to: whole volt-amperes as on labels, unless rounding would change whether the sum fits.
fn limit(context: &Context<'_>, limit: ApparentPower, asks: ApparentPower) -> String {
    let whole = ApparentPower::from_millivolt_amps(limit.millivolt_amps() / 1000 * 1000);
    let same = (asks <= whole) == (asks <= limit);
    volt_amps(context, if same { whole } else { limit })
}

/// Formats a term: "Kettle 1500 VA", "Lamps 3 × 12 VA", "Fridge 480 VA ÷ 80 %".
fn term(context: &Context<'_>, term: &Term) -> String {
    let mut text = context.load_name(&term.load);
    if !text.is_empty() {
        text.push(' ');
    }
    if term.count > 1 {
        let _ = write!(text, "{}\u{a0}×\u{a0}", term.count);
    }
    text.push_str(&volt_amps(context, term.each));
    if term.over != Ratio::from_permille(1000) {
        let _ = write!(text, "\u{a0}÷\u{a0}{}", context.percent(term.over));
    }
    text
}

fn on_leg(context: &Context<'_>, text: String, leg: Option<Leg>) -> String {
    match leg {
        None => text,
        Some(leg) => {
            let leg = match leg {
                Leg::A => "A",
                Leg::B => "B",
            };
            context.say("ws-sum-leg", &[("part", &text), ("leg", leg)])
        }
    }
}

/// Names the point of a sum.
fn part(context: &Context<'_>, sum: &Sum) -> String {
    let node = context.supply.node(sum.at);
    let name = match node.kind {
        NodeKind::Source => context.plan.generator.name.as_str(),
        _ => node.id.as_str(),
    };
    let what = match (&node.kind, &sum.starts) {
        (NodeKind::Source, Some(_)) => context.say("ws-sum-peak", &[]),
        _ => context.say(&format!("ws-reason-{}", node.reason.code()), &[]),
    };
    on_leg(context, format!("{name}, {what}"), sum.leg)
}

/// Returns the row of a sum. `above` is the total of the row before: if this sum is that total plus one start, it
/// begins with the total instead of repeating its terms.
fn row(context: &Context<'_>, set: String, sum: &Sum, above: Option<ApparentPower>) -> Vec<String> {
    let mut terms: Vec<String> = sum.terms.iter().map(|it| term(context, it)).collect();
    if let (Some(starts), Some(above)) = (&sum.starts, above)
        && above + (starts.starting - starts.running) == sum.asks
    {
        terms = vec![volt_amps(context, above)];
    }
    let mut adds = if terms.is_empty() { volt_amps(context, ApparentPower::ZERO) } else { terms.join(" + ") };
    if let Some(starts) = &sum.starts {
        let _ = write!(
            adds,
            " + ({} {}\u{a0}−\u{a0}{})",
            context.load_name(&starts.load),
            volt_amps(context, starts.starting),
            volt_amps(context, starts.running),
        );
    }
    vec![set, part(context, sum), adds, volt_amps(context, sum.asks), limit(context, sum.limit, sum.asks)]
}

/// The sums that decide, each with the index of its set.
pub(super) struct Deciding {
    /// For each point, the sum of the fullest set that may run together. Those of the other sets are farther from the
    /// limit there.
    pub fullest: Vec<(usize, Sum)>,
    /// For each point, the sum that is over the limit by the least.
    least: Vec<(usize, Sum)>,
}

pub(super) fn deciding(context: &Context<'_>) -> Deciding {
    let sharing = &context.report.figures.sharing;
    let adder = &Adder::new(context.report, context.supply);
    let mut deciding = Deciding { fullest: Vec::new(), least: Vec::new() };
    let keep = |all: &mut Vec<(usize, Sum)>, at: usize, sum: Sum, fuller: bool| {
        let same = |one: &&mut (usize, Sum)| {
            let known = &one.1;
            (known.at, known.leg, known.starts.is_some()) == (sum.at, sum.leg, sum.starts.is_some())
        };
        match all.iter_mut().find(same) {
            Some(known) if (sum.asks > known.1.asks) == fuller => *known = (at, sum),
            Some(_) => {}
            None => all.push((at, sum)),
        }
    };
    for (at, set) in sharing.together.iter().enumerate() {
        for sum in adder.of_set(set) {
            keep(&mut deciding.fullest, at, sum, true);
        }
    }
    for (at, set) in sharing.never.iter().enumerate() {
        if let Some(sum) = adder.of_never(set) {
            keep(&mut deciding.least, at, sum, false);
        }
    }
    deciding
}

pub(super) fn sets(sheet: &Sheet<'_>, deciding: &Deciding) -> Section {
    let context = sheet.context;
    let name = |key: &str, at: usize| context.say(key, &[("number", &(at + 1).to_string())]);
    let mut rows = Vec::new();
    let mut above = None;
    for (at, sum) in &deciding.fullest {
        rows.push(row(context, name("ws-together-row", *at), sum, above));
        above = Some(sum.asks);
    }
    for (at, sum) in &deciding.least {
        rows.push(row(context, name("ws-never-row", *at), sum, None));
    }
    sheet.section(
        "sums",
        context.sentences(&["ws-sums-how", "ws-sums-start", "ws-sums-which"]),
        &[],
        &[("set", 4), ("part", 5), ("adds-up", 12), ("#sum", 4), ("#limit", 4)],
        rows,
    )
}

/// Returns the rows of one step, one for each leg. The first also says what a meter then reads.
fn step_rows(context: &Context<'_>, step: &StartSum) -> Vec<Vec<String>> {
    let names = context.words.set_names(context.report, &step.loads);
    let name = names.join(" + ");
    let volts = &context.report.figures.volts.steps;
    let reads = volts.iter().find(|it| step.loads.last() == Some(&it.load));
    let rows = step.legs.iter().enumerate().map(|(index, leg)| {
        let mut adds = vec![volt_amps(context, leg.on)];
        adds.extend(leg.just_before.iter().map(|it| {
            let times = if it.count > 1 { format!("{}\u{a0}×\u{a0}", it.count) } else { String::new() };
            format!("{times}{}", volt_amps(context, it.each))
        }));
        adds.extend(leg.starting.map(|starting| volt_amps(context, starting)));
        let reads = reads.filter(|_| index == 0);
        let told = |of: &dyn Fn(&StepVolts) -> String| reads.map_or_else(String::new, of);
        vec![
            on_leg(context, name.clone(), leg.leg),
            adds.join(" + "),
            volt_amps(context, leg.asks),
            limit(context, leg.limit, leg.asks),
            volt_amps(context, leg.then),
            told(&|it| it.receptacle.to_string()),
            told(&|it| context.capacity(it.dips_to)),
            told(&|it| context.capacity(it.volts)),
            told(&|it| {
                let boxes = it.boxes.iter();
                let boxes = boxes.map(|reading| format!("{}\u{a0}{}", reading.at, context.capacity(reading.volts)));
                boxes.collect::<Vec<String>>().join(", ")
            }),
        ]
    });
    rows.collect()
}

/// Returns the section on each step of switching on.
pub(super) fn starts(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let steps = Adder::new(context.report, context.supply).of_start();
    let mut formulas = context.sentences(&["ws-starts-how", "ws-starts-then", "ws-volts-how", "ws-volts-low"]);
    if steps.len() > MOST_STEPS {
        formulas.push(context.say("ws-starts-more", &[("count", &MOST_STEPS.to_string())]));
    }
    let rows = steps.iter().take(MOST_STEPS);
    sheet.section(
        "starts",
        formulas,
        &[],
        &[
            ("load", 6),
            ("on-and-starts", 7),
            ("#sum", 4),
            ("#limit", 3),
            ("#then", 4),
            ("at", 3),
            ("#dips", 2),
            ("#reads-volts", 2),
            ("boxes", 3),
        ],
        rows.flat_map(|step| step_rows(context, step)).collect(),
    )
}

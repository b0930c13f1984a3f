//! The sums behind who runs together and behind the peaks of switching on, term by term.

use std::fmt::Write as _;

use super::super::Context;
use super::{Section, Sheet};
use crate::plan::Leg;
use crate::quantity::{ApparentPower, Current, Power, Quantity, Ratio};
use crate::report::sums::{Adder, StartSum, Sum, Term};
use crate::supply::NodeKind;

/// The most sets of each sort that are added up. Hundreds would be paper that nobody reads; the
/// others are added up likewise.
const MOST: usize = 12;

/// The most steps of switching on.
const MOST_STEPS: usize = 40;

/// As it was counted with, or sums would not come out: amps where they are whole milliamperes, else the
/// volt-amps over the volts.
fn amps(context: &Context<'_>, apparent: ApparentPower) -> String {
    let volts = context.supply.volts;
    let amps = Current::of_apparent(apparent, volts);
    if ApparentPower::of_load(amps, volts) == apparent {
        return format!("{}\u{a0}A", context.words.number(amps.amount()));
    }
    let number = context.words.number(apparent.amount());
    format!("{number}\u{a0}VA\u{a0}÷\u{a0}{}", context.exact(volts))
}

fn watts(context: &Context<'_>, watts: Power) -> String {
    format!("{}\u{a0}W", context.words.number(watts.amount()))
}

/// "Kettle 12.5 A", "Lamps 3 × 0.1 A", "Fridge 4 A ÷ 80 %".
fn term(context: &Context<'_>, term: &Term) -> String {
    let mut text = context.load_name(&term.load);
    if !text.is_empty() {
        text.push(' ');
    }
    if term.count > 1 {
        let _ = write!(text, "{}\u{a0}×\u{a0}", term.count);
    }
    text.push_str(&amps(context, term.each));
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

/// The point that a sum is of.
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

/// `above` is the sum of the row before, of the same set.
fn row(context: &Context<'_>, set: String, sum: &Sum, above: Option<ApparentPower>) -> Vec<String> {
    let mut terms: Vec<String> = sum.terms.iter().map(|it| term(context, it)).collect();
    if let (Some(starts), Some(above)) = (&sum.starts, above)
        && above + (starts.starting - starts.running) == sum.asks
    {
        terms = vec![amps(context, above)];
    }
    let mut adds = if terms.is_empty() {
        amps(context, ApparentPower::ZERO)
    } else {
        terms.join(" + ")
    };
    if let Some(starts) = &sum.starts {
        let _ = write!(
            adds,
            " + ({} {}\u{a0}−\u{a0}{})",
            context.load_name(&starts.load),
            amps(context, starts.starting),
            amps(context, starts.running),
        );
    }
    // Volt-amperes at the generator. Elsewhere what counts is amps.
    let power = |it: ApparentPower| watts(context, Power::from_milliwatts(it.millivolt_amps()));
    let (asked, most) = match context.supply.node(sum.at).kind {
        NodeKind::Source => (power(sum.asks), power(sum.limit)),
        _ => ("–".to_owned(), "–".to_owned()),
    };
    vec![
        set,
        part(context, sum),
        adds,
        amps(context, sum.asks),
        amps(context, sum.limit),
        asked,
        most,
    ]
}

/// Each set at the points that decide.
pub(super) fn sets(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let sharing = &context.report.figures.sharing;
    let adder = &Adder::new(context.report, context.supply);
    let mut rows = Vec::new();
    for (index, set) in sharing.together.iter().take(MOST).enumerate() {
        let number = (index + 1).to_string();
        let name = context.say("ws-together-row", &[("number", &number)]);
        let sums = adder.of_set(set);
        let mut above = None;
        for sum in &sums {
            rows.push(row(context, name.clone(), sum, above));
            above = Some(sum.asks);
        }
    }
    for (index, set) in sharing.never.iter().take(MOST).enumerate() {
        let number = (index + 1).to_string();
        let name = context.say("ws-never-row", &[("number", &number)]);
        let sum = adder.of_never(set);
        rows.extend(sum.map(|sum| row(context, name, &sum, None)));
    }
    let mut formulas = vec![
        context.say("ws-sums-how", &[]),
        context.say("ws-sums-start", &[]),
        context.say("ws-sums-which", &[]),
    ];
    if sharing.together.len() > MOST || sharing.never.len() > MOST {
        formulas.push(context.say("ws-sums-more", &[("count", &MOST.to_string())]));
    }
    sheet.section(
        "sums",
        formulas,
        &[],
        &[
            ("set", 3),
            ("part", 4),
            ("adds-up", 9),
            ("#sum", 2),
            ("#limit", 2),
            ("#watts", 3),
            ("#limit-watts", 3),
        ],
        rows,
    )
}

/// The rows of one step: one for each leg, the watts of all of them in the last.
fn step_rows(context: &Context<'_>, step: &StartSum) -> Vec<Vec<String>> {
    let names = context.words.set_names(context.report, &step.loads);
    let name = names.join(" + ");
    let last = step.legs.len();
    let rows = step.legs.iter().enumerate().map(|(index, leg)| {
        let mut adds = vec![amps(context, leg.on)];
        adds.extend(leg.just_before.iter().map(|it| {
            let times = if it.count > 1 {
                format!("{}\u{a0}×\u{a0}", it.count)
            } else {
                String::new()
            };
            format!("{times}{}", amps(context, it.each))
        }));
        adds.extend(leg.starting.map(|starting| amps(context, starting)));
        vec![
            on_leg(context, name.clone(), leg.leg),
            adds.join(" + "),
            amps(context, leg.asks),
            amps(context, leg.limit),
            if index + 1 == last {
                watts(context, step.watts)
            } else {
                String::new()
            },
            amps(context, leg.then),
        ]
    });
    rows.collect()
}

/// Each step of switching on.
pub(super) fn starts(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let steps = Adder::new(context.report, context.supply).of_start();
    let mut formulas = vec![
        context.say(
            "ws-starts-how",
            &[("volts", &context.exact(context.supply.volts))],
        ),
        context.say("ws-starts-then", &[]),
    ];
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
            ("on-and-starts", 6),
            ("#sum", 3),
            ("#limit", 3),
            ("#peak-watts", 3),
            ("#then", 3),
        ],
        rows.flat_map(|step| step_rows(context, step)).collect(),
    )
}

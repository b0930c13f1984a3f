//! What to tick at each set-up, worst first.

use serde::Serialize;

use super::emergency::{self, Emergency};
use super::{Common, Context};
use crate::report::{Finding, Next, Signal};

/// The data of `cautions.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Cautions {
    common: Common,
    summary: String,
    /// What to do next, unless it is no more than the dangers right below it say.
    next: Vec<String>,
    /// What keeps the engine off, with the signal word for all of it.
    danger: String,
    dangers: Vec<Caution>,
    /// The rest, by where one stands.
    groups: Vec<Group>,
    /// What to do with what was only assumed, where something was.
    look: Option<String>,
    emergencies: Vec<Emergency>,
}

/// What there is to do in one place.
#[derive(Debug, Serialize)]
struct Group {
    title: String,
    /// At every set-up, whatever the plan says.
    always: Vec<String>,
    findings: Vec<Caution>,
}

#[derive(Debug, Serialize)]
struct Caution {
    signal: &'static str,
    word: String,
    /// Of all its findings.
    codes: String,
    /// The warning sign, and its name for whoever cannot see it; none with what hurts nobody.
    symbol: Option<(&'static str, String)>,
    title: String,
    /// Of dangers; empty where another has said so already.
    why: String,
    fix: String,
    /// What was only assumed: where on the look sheet it stands, or where to look.
    look: String,
}

const KEYS: &[&str] =
    &["cautions-stop", "cautions-always", "next-title", "look", "emergency-title", "defer", "none-found"];

/// Where one stands, and the messages `always-NUMBER` of what is done there at every set-up.
const PLACES: [(&str, &[usize]); 4] = [("generator", &[1, 5]), ("people", &[2]), ("gear", &[3, 4]), ("fuel", &[6])];

/// Where one stands to do something about it.
fn place(code: &str, area: &str) -> &'static str {
    match (code, area) {
        ("AIR002" | "AIR006" | "NOISE002", _) | (_, "health") => "people",
        ("AIR005", _) | (_, "shock" | "overcurrent" | "cord" | "voltage" | "fit") => "gear",
        (_, "fuel") => "fuel",
        _ => "generator",
    }
}

pub(super) fn data(context: &Context<'_>) -> Cautions {
    let report = context.report;
    let figures = &report.figures;
    let mut dangers = Vec::new();
    let mut others: Vec<(&'static str, Caution)> = Vec::new();
    for trouble in &report.figures.troubles {
        let (Some(lead), Some(text)) = (report.findings_of(trouble).next(), context.words.trouble(report, trouble))
        else {
            continue;
        };
        let danger = lead.signal == Signal::Danger;
        let told = !danger || dangers.iter().any(|it: &Caution| it.why == text.why);
        let caution = Caution {
            signal: lead.signal.name(),
            word: text.signal,
            codes: report.codes_of(trouble),
            symbol: symbol(lead).map(|name| (name, context.say(&format!("symbol-{name}"), &[]))),
            title: text.title,
            why: if told { String::new() } else { text.why },
            fix: text.fix,
            look: look(context, lead, &text.look),
        };
        if danger {
            dangers.push(caution);
        } else {
            others.push((place(lead.code, lead.area), caution));
        }
    }
    let mut all = dangers.iter().chain(others.iter().map(|(_, it)| it));
    let looked = all.any(|caution| !caution.look.is_empty());
    let count = |signal: Signal| report.count(signal);
    let ample = context.ample();
    let always = |number: &usize| context.say(&format!("always-{number}"), &[("ample", &ample)]);
    let looks = |next: &Next| matches!(next, Next::Look(_));
    Cautions {
        common: context.common("cautions-title", KEYS),
        summary: context.words.with(
            "print-cautions-summary",
            [
                ("danger", count(Signal::Danger).into()),
                ("warning", count(Signal::Warning).into()),
                ("rest", (count(Signal::Caution) + count(Signal::Notice)).into()),
            ],
        ),
        next: if dangers.is_empty() || figures.next.iter().any(looks) {
            context.words.next(report)
        } else {
            Vec::new()
        },
        danger: context.words.signal(Signal::Danger),
        dangers,
        groups: PLACES
            .iter()
            .map(|(name, numbers)| Group {
                title: context.say(&format!("cautions-{name}"), &[]),
                always: numbers.iter().map(always).collect(),
                findings: others.extract_if(.., |(place, _)| place == name).map(|(_, caution)| caution).collect(),
            })
            .collect(),
        look: looked.then(|| context.say("look-then", &[])),
        emergencies: emergency::all(context),
    }
}

/// Where to look for what a finding rests on: the lines of the look sheet that clear it, or, where it is on none of them,
/// the sentences themselves.
fn look(context: &Context<'_>, finding: &Finding, told: &[String]) -> String {
    let looks = context.report.figures.looks.iter().zip(1_usize..);
    let lines = looks.filter(|(look, _)| {
        let mut rests_on = finding.rests_on.iter();
        rests_on.any(|it| look.fields.contains(&it.field))
    });
    let lines: Vec<String> = lines.map(|(_, line)| line.to_string()).collect();
    if lines.is_empty() {
        return told.join(" ");
    }
    let count = lines.len();
    context.words.with("print-look-see", [("lines", context.words.list(&lines).into()), ("count", count.into())])
}

/// The published warning sign for what a rule's area is about: what the current, the heat or the
/// exhaust does to somebody.
fn symbol(finding: &Finding) -> Option<&'static str> {
    (finding.signal != Signal::Notice).then_some(match (finding.code, finding.area) {
        // Rain on the set is a matter of the air round it, and hurts by shock.
        ("AIR004", _) | (_, "shock") => "electric",
        (_, "overcurrent" | "cord") => "hot",
        (_, "air") => "toxic",
        (_, "fuel") => "fire",
        _ => "general",
    })
}

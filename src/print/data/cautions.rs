//! The checklist for each setup, most severe first.

use serde::Serialize;

use super::emergency::{self, Emergency};
use super::{Common, Context};
use crate::report::{Finding, Next, Signal};

/// The data of `cautions.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Cautions {
    common: Common,
    summary: String,
    /// What to do next. Empty if the dangers right below say the same.
    next: Vec<String>,
    /// The signal word for all dangers, which keep the engine off.
    danger: String,
    dangers: Vec<Caution>,
    /// The other cautions, by the place where they are dealt with.
    groups: Vec<Group>,
    /// What to do about assumptions, if any are listed.
    look: Option<String>,
    emergencies: Vec<Emergency>,
}

/// What there is to do in one place.
#[derive(Debug, Serialize)]
struct Group {
    title: String,
    /// What to do at every setup, whatever the plan says.
    always: Vec<String>,
    findings: Vec<Caution>,
}

#[derive(Debug, Serialize)]
struct Caution {
    signal: &'static str,
    word: String,
    /// Names the rules of all its findings.
    codes: String,
    /// The warning sign and its alternative text. `None` for a notice, which is not about injury.
    symbol: Option<(&'static str, String)>,
    title: String,
    fix: String,
    /// Where to look for what was only assumed: lines of the look sheet, or the places themselves.
    look: String,
}

const KEYS: &[&str] =
    &["cautions-stop", "cautions-always", "next-title", "look", "emergency-title", "defer", "none-found"];

/// The places, each with the numbers of the messages `always-NUMBER` for what is done there at every setup.
const PLACES: [(&str, &[usize]); 5] =
    [("generator", &[1, 5]), ("people", &[2]), ("gear", &[3, 4]), ("fuel", &[6]), ("leaving", &[7])];

/// Returns the place where someone deals with a finding.
fn place(code: &str, area: &str) -> &'static str {
    match (code, area) {
        ("AIR002" | "AIR006" | "NOISE002", _) | (_, "health") => "people",
        ("AIR005", _) | (_, "shock" | "overcurrent" | "cord" | "voltage" | "fit") => "gear",
        (_, "fuel") => "fuel",
        _ => "generator",
    }
}

/// Returns the line below a caution that names its rules.
fn rules(context: &Context<'_>, codes: &str) -> String {
    let count = codes.split(' ').count();
    context.words.with("print-cautions-rules", [("count", count.into()), ("codes", codes.to_owned().into())])
}

pub(super) fn data(context: &Context<'_>) -> Cautions {
    let report = context.report;
    let figures = &report.figures;
    let mut dangers = Vec::new();
    let mut others: Vec<(&'static str, Caution)> = Vec::new();
    for trouble in &figures.troubles {
        let (Some(lead), Some(text)) = (report.findings_of(trouble).next(), context.words.trouble(report, trouble))
        else {
            continue;
        };
        let danger = lead.signal == Signal::Danger;
        let caution = Caution {
            signal: lead.signal.name(),
            word: text.signal,
            codes: rules(context, &report.codes_of(trouble)),
            symbol: symbol(lead).map(|name| (name, context.say(&format!("symbol-{name}"), &[]))),
            title: text.title,
            fix: text.fix,
            look: context.look_lines(lead).unwrap_or_else(|| text.look.join(" ")),
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

/// Returns the published warning sign for a finding: what the current, the heat or the exhaust does to someone.
fn symbol(finding: &Finding) -> Option<&'static str> {
    (finding.signal != Signal::Notice).then_some(match (finding.code, finding.area) {
        // Rain belongs to the area of air around the generator, but its danger is a shock.
        ("AIR004", _) | (_, "shock") => "electric",
        (_, "overcurrent" | "cord") => "hot",
        (_, "air") => "toxic",
        (_, "fuel") => "fire",
        _ => "general",
    })
}

//! What to tick at each set-up, worst first.

use serde::Serialize;

use super::emergency::{self, Emergency};
use super::{Common, Context};
use crate::report::{Finding, Signal};

/// The data of `cautions.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Cautions {
    common: Common,
    summary: String,
    /// What to do next.
    next: Vec<String>,
    findings: Vec<Caution>,
    /// What somebody has done at every set-up, found or not, to check off.
    done: Vec<String>,
    /// What always counts.
    always: Vec<String>,
    /// What to do with what was only assumed, where something was.
    look: Option<String>,
    emergencies: Vec<Emergency>,
}

#[derive(Debug, Serialize)]
struct Caution {
    signal: &'static str,
    word: String,
    code: &'static str,
    /// The warning sign, and its name for whoever cannot see it; none with what hurts nobody.
    symbol: Option<(&'static str, String)>,
    title: String,
    why: String,
    fix: String,
    /// What was only assumed: where on the look sheet it stands, or where to look.
    look: String,
    /// What else the same remedy clears.
    also: Vec<String>,
}

const KEYS: &[&str] = &[
    "cautions-tick",
    "next-title",
    "do",
    "also",
    "look",
    "always-title",
    "emergency-title",
    "defer",
    "none-found",
];

pub(super) fn data(context: &Context<'_>) -> Cautions {
    let report = context.report;
    let troubles = report.figures.troubles.iter();
    let findings: Vec<Caution> = troubles
        .filter_map(|trouble| {
            let lead = report.findings_of(trouble).next()?;
            let text = context.words.trouble(report, trouble)?;
            Some(Caution {
                signal: lead.signal.name(),
                word: text.signal,
                code: lead.code,
                symbol: symbol(lead)
                    .map(|name| (name, context.say(&format!("symbol-{name}"), &[]))),
                title: text.title,
                why: text.why,
                fix: text.fix,
                look: look(context, lead, &text.look),
                also: text.also,
            })
        })
        .collect();
    let looked = findings.iter().any(|finding| !finding.look.is_empty());
    let count = |signal: Signal| report.count(signal);
    let ample = context.ample();
    let always = |number: usize| context.say(&format!("always-{number}"), &[("ample", &ample)]);
    Cautions {
        common: context.common("cautions-title", KEYS),
        summary: context.words.with(
            "print-cautions-summary",
            [
                ("danger", count(Signal::Danger).into()),
                ("warning", count(Signal::Warning).into()),
                (
                    "rest",
                    (count(Signal::Caution) + count(Signal::Notice)).into(),
                ),
            ],
        ),
        next: context.words.next(report),
        findings,
        done: (1..=4).map(always).collect(),
        always: (5..=7).map(always).collect(),
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
    let lines: Vec<&str> = lines.iter().map(String::as_str).collect();
    context.words.with(
        "print-look-see",
        [
            ("lines", context.words.list(&lines).into()),
            ("count", count.into()),
        ],
    )
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

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
    findings: Vec<Caution>,
    /// Dangers that every set-up has, found or not.
    always: Vec<String>,
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
    sources: Vec<String>,
}

const KEYS: &[&str] = &[
    "cautions-tick",
    "do",
    "authority",
    "always-title",
    "emergency-title",
    "defer",
    "none-found",
];

pub(super) fn data(context: &Context<'_>) -> Cautions {
    let findings: Vec<Caution> = context
        .report
        .findings
        .iter()
        .map(|finding| {
            let text = context
                .words
                .finding(finding, &context.report.figures.loads);
            Caution {
                signal: Context::signal(finding.signal),
                word: text.signal,
                code: finding.code,
                symbol: symbol(finding)
                    .map(|name| (name, context.say(&format!("symbol-{name}"), &[]))),
                title: text.title,
                why: text.why,
                fix: text.fix,
                sources: text.sources,
            }
        })
        .collect();
    let count = |signal: Signal| {
        context
            .report
            .findings
            .iter()
            .filter(|finding| finding.signal == signal)
            .count()
    };
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
        findings,
        always: (1..=6)
            .map(|number| context.say(&format!("always-{number}"), &[]))
            .collect(),
        emergencies: emergency::all(context),
    }
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

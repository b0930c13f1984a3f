//! `check`: what is wrong with a plan.

use std::path::Path;

use serde::Serialize;
use tallywatt::judge;
use tallywatt::report::{Report, Signal};
use tallywatt::words::{Words, wrapping};

use super::args::{Check, Format};
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, prints, width};

pub(super) fn run(arguments: &Check, reader: &Reader) -> Result<Done, Failure> {
    let mut output = String::new();
    let mut worst = None;
    for path in &arguments.plans {
        let plan = prints::load(path, &reader.words)?;
        let words = &*reader.of_plan(&plan);
        let report = judge::build(&plan);
        match arguments.format {
            Format::Json => output.push_str(&json(&report, arguments.plans.len() == 1, words)?),
            Format::Text => {
                if arguments.plans.len() > 1 {
                    output.push_str(&heading(path, words));
                }
                let text = if arguments.long { text } else { brief };
                output.push_str(&text(&report, words));
            }
        }
        worst = worst.into_iter().chain(report.worst()).min();
    }
    Ok(Done { output, status: status(worst) })
}

/// What to do, for people.
pub(super) fn brief(report: &Report, words: &Words) -> String {
    let width = width();
    let line = |key| textwrap::fill(&words.text(key), wrapping(width));
    format!(
        "{}{}\n{}\n{}\n",
        words.brief(report, width),
        textwrap::fill(&words.count(report), wrapping(width)),
        line("check-long"),
        line("check-defer"),
    )
}

/// The whole report for people: why, and what each outlet can carry.
pub(super) fn text(report: &Report, words: &Words) -> String {
    let width = width();
    // Where nothing was found there is no rule to ask about.
    let more = if report.findings.is_empty() {
        String::new()
    } else {
        textwrap::fill(&words.text("check-more"), wrapping(width)) + "\n"
    };
    format!(
        "{}{}\n{}{}\n{}{more}{}\n",
        words.troubles(report, width),
        words.limits(report, width),
        words.sharing(report, width),
        textwrap::fill(&words.count(report), wrapping(width)),
        words.dangers(report, width),
        textwrap::fill(&words.text("check-defer"), wrapping(width)),
    )
}

fn heading(path: &Path, words: &Words) -> String {
    format!("{}\n\n", words.with("check-plan", [("name", path.display().to_string().into())]))
}

/// One report or answer: laid out for reading when it is alone, one a line when there are several.
pub(super) fn json(told: &impl Serialize, alone: bool, words: &Words) -> Result<String, Failure> {
    let text = if alone { serde_json::to_string_pretty(told) } else { serde_json::to_string(told) };
    text.map(|text| text + "\n")
        .map_err(|error| Failure::new(Kind::CannotWrite, anyhow::Error::new(error).context(words.text("failure-json"))))
}

/// 0 nothing above a caution, 1 a warning, 2 a danger.
pub(super) const fn status(worst: Option<Signal>) -> u8 {
    match worst {
        Some(Signal::Danger) => 2,
        Some(Signal::Warning) => 1,
        Some(Signal::Caution | Signal::Notice) | None => 0,
    }
}

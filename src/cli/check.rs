//! `check`: reports what is wrong with a plan.

use std::path::Path;

use serde::Serialize;
use tallywatt::judge;
use tallywatt::plan;
use tallywatt::report::{Figures, Finding, Report, Signal};
use tallywatt::words::{Words, wrapping};

use super::args::{Check, FailOn, Format};
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, prints, width};

pub(super) fn run(arguments: &Check, reader: &Reader) -> Result<Done, Failure> {
    let mut output = String::new();
    let mut worst = None;
    for path in &arguments.plans {
        let (file, plan) = prints::load_text(path, &reader.words)?;
        let words = &*reader.of_plan(&plan);
        let report = judge::build(&plan);
        match arguments.format {
            Format::Json => output.push_str(&told(&report, &file, arguments.plans.len() == 1, words)?),
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
    let least = arguments.fail_on.map(|least| match least {
        FailOn::Danger => Signal::Danger,
        FailOn::Warning => Signal::Warning,
        FailOn::Caution => Signal::Caution,
    });
    let status = match (least, worst) {
        (None, worst) => status(worst),
        (Some(least), Some(worst)) if worst <= least => status(Some(worst)).max(1),
        _ => 0,
    };
    Ok(Done { output, status })
}

/// A report for other programs. Each finding also has its text and its place in the plan file.
#[derive(Serialize)]
struct Told<'a> {
    format: u32,
    findings: Vec<ToldFinding<'a>>,
    #[serde(flatten)]
    figures: &'a Figures,
}

#[derive(Serialize)]
struct ToldFinding<'a> {
    #[serde(flatten)]
    finding: &'a Finding,
    told: Sentences,
    place: Option<Place>,
}

/// A finding in the reader's language.
#[derive(Serialize)]
struct Sentences {
    title: String,
    why: String,
    /// What to do about it.
    todo: String,
    /// What was assumed, and where to look for the fact.
    look: Vec<String>,
}

/// The first place in the plan file that describes what a finding is about.
#[derive(Serialize)]
struct Place {
    part: String,
    /// The line number, counting from 1.
    line: usize,
}

/// Returns the report of the plan in `text` as JSON. `alone` is passed to [`json`].
pub(super) fn told(report: &Report, text: &str, alone: bool, words: &Words) -> Result<String, Failure> {
    let lines = plan::lines(text);
    let loads = &report.figures.loads;
    let place = |finding: &Finding| {
        let line = |part: &str| Some(Place { part: part.to_owned(), line: *lines.get(part)? });
        let Some(first) = finding.about.first() else {
            return line(if finding.area == "fuel" { "generator" } else { "site" }).or_else(|| line("generator"));
        };
        // For one of several identical loads or one end of a cord, fall back to its part in the file.
        let of = loads.iter().find(|load| load.id == *first).map(|load| load.of.as_str());
        let end = first.as_str().rsplit_once('.').map(|(cord, _)| cord);
        [Some(first.as_str()), of, end].into_iter().flatten().find_map(line)
    };
    let sentences = |finding: &Finding| {
        let text = words.finding(finding, loads);
        Sentences { title: text.title, why: text.why, todo: text.fix, look: text.look }
    };
    let findings = report.findings.iter();
    let findings = findings.map(|finding| ToldFinding { finding, told: sentences(finding), place: place(finding) });
    json(&Told { format: report.format, findings: findings.collect(), figures: &report.figures }, alone, words)
}

/// Returns the short report, which says what to do.
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

/// Returns the full report, with reasons and with what each outlet can carry.
pub(super) fn text(report: &Report, words: &Words) -> String {
    let width = width();
    // Without findings there is no rule to ask about.
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

/// Serializes a report or an answer: indented if it is alone, on one line if there are several.
pub(super) fn json(told: &impl Serialize, alone: bool, words: &Words) -> Result<String, Failure> {
    let text = if alone { serde_json::to_string_pretty(told) } else { serde_json::to_string(told) };
    text.map(|text| text + "\n")
        .map_err(|error| Failure::new(Kind::CannotWrite, anyhow::Error::new(error).context(words.text("failure-json"))))
}

/// Returns 2 for a danger, 1 for a warning and 0 for anything milder.
pub(super) const fn status(worst: Option<Signal>) -> u8 {
    match worst {
        Some(Signal::Danger) => 2,
        Some(Signal::Warning) => 1,
        Some(Signal::Caution | Signal::Notice) | None => 0,
    }
}

//! `may`: says whether some loads may be switched on now.

use std::path::Path;

use tallywatt::judge;
use tallywatt::judge::ask::{self, NoSuchLoad};
use tallywatt::plan::Id;
use tallywatt::report::Report;
use tallywatt::words::Words;

use super::args::{Format, May};
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, check, command, prints, width};

pub(super) fn run(arguments: &May, reader: &Reader) -> Result<Done, Failure> {
    let plan =
        prints::load(&arguments.plan, &reader.words).map_err(|failure| plan_first(arguments, failure, reader))?;
    let words = &*reader.of_plan(&plan);
    let report = judge::build(&plan);
    let wanted = named(&arguments.loads, &report, words)?;
    let running = named(&arguments.r#while, &report, words)?;
    let answer = ask::ask(&plan, &report, &wanted, &running);
    let output = match arguments.format {
        Format::Text => words.may(&report, &answer, width()),
        Format::Json => check::json(&answer, true, words)?,
    };
    Ok(Done { output, status: u8::from(!answer.may) })
}

/// Adds a hint that the plan comes first, if it was given after a load.
fn plan_first(arguments: &May, failure: Failure, reader: &Reader) -> Failure {
    let at = arguments.loads.iter().position(|it| !arguments.plan.exists() && Path::new(it).is_file());
    let Some(at) = at else {
        return failure;
    };
    let first = arguments.plan.display().to_string();
    let mut call = vec!["tallywatt", "may", &arguments.loads[at], &first];
    call.extend(arguments.loads.iter().enumerate().filter(|(place, _)| *place != at).map(|(_, load)| load.as_str()));
    failure.hint(reader.words.with("usage-plan-first", [("command", command(&call).into())]))
}

fn named(asked: &[String], report: &Report, words: &Words) -> Result<Vec<Id>, Failure> {
    let mut ids = Vec::new();
    for text in asked {
        ids.extend(ask::named(report, text).map_err(|lost| unknown(&lost, report, words))?);
    }
    Ok(ids)
}

fn unknown(lost: &NoSuchLoad, report: &Report, words: &Words) -> Failure {
    let asked = words.with("id-quoted", [("id", lost.asked.as_str().into())]);
    let failure = Failure::text(Kind::Usage, words.with("may-no-load", [("asked", asked.into())]));
    failure.hint(if let Some(nearest) = &lost.nearest {
        words.with("may-no-load-nearest", [("nearest", nearest.as_str().into())])
    } else {
        let mut known: Vec<String> = Vec::new();
        for load in &report.figures.loads {
            let quoted = words.with("id-quoted", [("id", load.name.as_str().into())]);
            if !known.contains(&quoted) {
                known.push(quoted);
            }
        }
        words.with("may-no-load-known", [("known", words.list(&known).into())])
    })
}

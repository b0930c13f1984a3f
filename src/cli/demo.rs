//! `demo`: every print of a made-up weekend, with no question asked.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use tallywatt::judge;
use tallywatt::plan::demo::{MENDED, WEEKEND, named};
use tallywatt::plan::{self, store};
use tallywatt::words::{Library, Units, Words, wrapping};

use super::args::Demo;
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, prints, width};

const FOLDER: &str = "tallywatt-demo";
const FOLDER_FIXED: &str = "tallywatt-demo-fixed";

const PLAN: &str = "plan.toml";

fn in_language(text: &str, words: &Words) -> String {
    named(text, &|id| words.text(&format!("demo-name-{id}")))
}

/// Whether this is one of the demo plans as they were written, in whichever language.
fn is_demo(found: &str) -> bool {
    let mut tags = Library::built_in().offered();
    tags.any(|tag| {
        let words = Words::new(tag, Units::default());
        words.is_some_and(|words| [WEEKEND, MENDED].iter().any(|text| in_language(text, &words) == found))
    })
}

pub(super) fn run(arguments: &Demo, reader: &Reader) -> Result<Done, Failure> {
    let words = &*reader.words;
    let (text, folder) = if arguments.fixed { (MENDED, FOLDER_FIXED) } else { (WEEKEND, FOLDER) };
    let into = arguments.into.clone().unwrap_or_else(|| PathBuf::from(folder));
    // Whoever changed the demo's plan, as its own output says, keeps it.
    let there = into.join(PLAN);
    let found = store::read_text(&there);
    let theirs = match &found {
        Ok(text) => !is_demo(text),
        Err(error) => error.key() != "store-not-found",
    };
    if theirs {
        let shown = there.display().to_string();
        let text = words.with("demo-changed", [("path", shown.into())]);
        return Err(Failure::text(Kind::CannotWrite, text).hint(words.text("demo-changed-hint")));
    }
    let text = &*in_language(text, words);
    let plan = plan::read(text).map_err(|problems| prints::bad_plan(&problems, text, Path::new(folder), words))?;
    let report = judge::build(&plan);
    let prints = prints::render(&plan, reader, &prints::defaults(), None)?.0;
    let mut files = prints.files;
    let json = report.to_json().map_err(|error| Failure::new(Kind::CannotWrite, error))?;
    files.push(("report.json".to_owned(), (json + "\n").into_bytes()));
    files.push((PLAN.to_owned(), text.as_bytes().to_vec()));
    prints::write(&into, &files, &prints.needless, words)?;

    let mut output = String::new();
    let shown = std::path::absolute(&into).unwrap_or(into);
    let _ = writeln!(output, "{}", words.with("demo-wrote", [("dir", shown.display().to_string().into())]));
    for (name, _) in &files {
        let stem = name.split(['.', '-']).next().unwrap_or(name);
        let options = wrapping(width()).initial_indent("  ").subsequent_indent("                 ");
        let line = format!("{name:<14} {}", words.text(&format!("demo-file-{stem}")));
        let _ = writeln!(output, "{}", textwrap::fill(&line, options));
    }
    let _ = write!(output, "\n{}", words.next_list(&report, width()));
    if !arguments.fixed {
        let _ = writeln!(output, "\n{}", textwrap::fill(&words.text("demo-other"), wrapping(width())));
    }
    Ok(Done::saying(output))
}

//! `demo`: makes every print of a made-up weekend without asking a question.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use tallywatt::judge;
use tallywatt::plan::demo::{MENDED, WEEKEND, named};
use tallywatt::words::{Words, wrapping};

use super::args::Demo;
use super::failure::Failure;
use super::reader::Reader;
use super::{Done, check, prints, width};

const FOLDER: &str = "tallywatt-demo";
const FOLDER_FIXED: &str = "tallywatt-demo-fixed";

fn in_language(text: &str, words: &Words) -> String {
    named(text, &|key| words.text(key))
}

pub(super) fn run(arguments: &Demo, reader: &Reader) -> Result<Done, Failure> {
    let words = &*reader.words;
    let (text, folder) = if arguments.fixed { (MENDED, FOLDER_FIXED) } else { (WEEKEND, FOLDER) };
    let into = arguments.into.clone().unwrap_or_else(|| PathBuf::from(folder));
    let text = &*in_language(text, words);
    let plan = prints::read(text, Path::new(folder), words)?;
    let report = judge::build(&plan);
    let prints = prints::render(&plan, reader, &prints::defaults(), None)?.0;
    let mut files = prints.files;
    files.push(("report.json".to_owned(), check::told(&report, text, true, words)?.into_bytes()));
    files.push(("plan.toml".to_owned(), text.as_bytes().to_vec()));
    prints::write(&into, &files, &[], &prints.needless, words)?;

    let mut output = String::new();
    let shown = std::path::absolute(&into).unwrap_or(into);
    let _ = writeln!(output, "{}", words.with("demo-wrote", [("dir", shown.display().to_string().into())]));
    for (name, _) in &files {
        let stem = name.split(['.', '-']).next().unwrap_or(name);
        let options = wrapping(width()).initial_indent("  ").subsequent_indent("                 ");
        let line = format!("{name:<14} {}", words.text(&format!("demo-file-{stem}")));
        let _ = writeln!(output, "{}", textwrap::fill(&line, options));
    }
    if !arguments.fixed {
        let purpose = words.text("demo-purpose");
        let _ = writeln!(output, "\n{}", textwrap::fill(&purpose, wrapping(width())));
    }
    let _ = write!(output, "\n{}", words.next_list(&report, width()));
    if !arguments.fixed {
        let _ = writeln!(output, "\n{}", textwrap::fill(&words.text("demo-other"), wrapping(width())));
    }
    Ok(Done::saying(output))
}

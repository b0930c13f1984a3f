//! `words`: helps translators. Makes the sheet on which a native speaker sees every message side by side, and checks a
//! language as far as a program can.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use tallywatt::plan::store::{self, Fault, StoreError};
use tallywatt::words::language::{self, Kind as Wrong};
use tallywatt::words::{FIRST_LANGUAGE, Library, PAGES, Words};

use super::Done;
use super::args::Words as Arguments;
use super::failure::{Failure, Kind};
use super::prints::stored;

pub(super) fn run(arguments: &Arguments, words: &Words) -> Result<Done, Failure> {
    let library = match &arguments.from {
        Some(folder) => read(folder, words)?,
        None => Library::built_in().clone(),
    };
    let there: Vec<&str> = library.folders().map(|(tag, _)| tag).collect();
    let tags: Vec<&str> =
        if arguments.languages.is_empty() { there } else { arguments.languages.iter().map(String::as_str).collect() };
    for tag in &tags {
        if library.folder(tag).is_none() {
            let text = words.with("words-no-folder", [("tag", (*tag).into())]);
            return Err(Failure::text(Kind::Usage, text));
        }
    }
    if arguments.check {
        Ok(check(&library, &tags, words))
    } else {
        let tags: Vec<&str> = tags.into_iter().filter(|tag| *tag != FIRST_LANGUAGE).collect();
        Ok(Done::saying(language::sheet(&library, &tags, words)))
    }
}

/// Lists each problem on a line of its own. Missing messages are only counted by file, because a draft lacks many and
/// nobody reads a thousand lines.
fn check(library: &Library, tags: &[&str], words: &Words) -> Done {
    let mut output = String::new();
    let mut status = 0;
    for tag in tags {
        let found = language::check(library, tag);
        let mut missing: BTreeMap<&str, usize> = BTreeMap::new();
        for problem in &found {
            if problem.kind == Wrong::Missing {
                *missing.entry(&problem.file).or_default() += 1;
                continue;
            }
            let (what, model) = problem.kind.details();
            let text = words.with(
                &format!("words-problem-{}", problem.kind.code()),
                [("what", what.into()), ("model", model.into())],
            );
            let _ = writeln!(output, "{tag}/{}: {}: {text}", problem.file, problem.key);
            status = 1;
        }
        for (file, count) in &missing {
            let text = words.with("words-missing", [("count", (*count).into())]);
            let _ = writeln!(output, "{tag}/{file}: {text}");
        }
        let complete = library.folder(tag).is_some_and(tallywatt::words::Folder::complete);
        let key = match (found.is_empty(), complete) {
            (true, true) => "words-offered",
            (true, false) => "words-can-be-offered",
            (false, _) => "words-not-done",
        };
        let text = words.with(key, [("tag", (*tag).into())]);
        let _ = writeln!(output, "{text}");
    }
    Done { output, status }
}

/// Reads the language folders in a folder on disk.
fn read(folder: &Path, words: &Words) -> Result<Library, Failure> {
    let unreadable = |error| stored(&StoreError::read(folder, Fault::System(error)), Kind::Usage, words);
    let mut library = Library::default();
    for language in folder.read_dir().map_err(unreadable)? {
        let language = language.map_err(unreadable)?.path();
        if !language.is_dir() {
            continue;
        }
        let named = |path: &Path| Some(path.file_name()?.to_str()?.to_owned());
        let pages = language.join(PAGES);
        let mut folders: Vec<(PathBuf, &str, &str)> = vec![(language.clone(), "ftl", "")];
        if pages.is_dir() {
            folders.push((pages, "md", PAGES));
        }
        for (within, extension, under) in folders {
            for file in within.read_dir().map_err(unreadable)? {
                let file = file.map_err(unreadable)?.path();
                if let (Some(tag), Some(name)) = (named(&language), named(&file))
                    && file.extension().is_some_and(|its| its == extension)
                {
                    let name = match under {
                        "" => name,
                        under => format!("{under}/{name}"),
                    };
                    let text = store::read_text(&file).map_err(|error| stored(&error, Kind::Usage, words))?;
                    library.add(&tag, &name, text);
                }
            }
        }
    }
    Ok(library)
}

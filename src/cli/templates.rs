//! `templates`: writes the templates of the prints into a folder, to be changed and printed with.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;

use tallywatt::plan::store;
use tallywatt::print;
use tallywatt::words::{Words, wrapping};

use super::args::Templates;
use super::failure::{Failure, Kind};
use super::{Done, prints, width};

pub(super) fn run(arguments: &Templates, words: &Words) -> Result<Done, Failure> {
    let unwritten = |error| prints::stored(&error, Kind::CannotWrite, words);
    let mut folders: BTreeMap<&Path, Vec<(&str, &str)>> = BTreeMap::new();
    for (path, text) in print::templates() {
        // Never replace a file: it may be a template that the user changed.
        store::is_free(&arguments.into.join(path)).map_err(unwritten)?;
        let path = Path::new(path);
        if let (Some(folder), Some(name)) = (path.parent(), path.file_name().and_then(|n| n.to_str())) {
            folders.entry(folder).or_default().push((name, text));
        }
    }
    for (folder, files) in folders {
        store::write_new_set(&arguments.into.join(folder), files).map_err(unwritten)?;
    }
    let paths = print::templates().into_iter().map(|(path, _)| path);
    let mut output = prints::wrote(&arguments.into, paths, words);
    let shown = std::path::absolute(&arguments.into).unwrap_or_else(|_| arguments.into.clone());
    let how = words.with("templates-how", [("dir", shown.display().to_string().into())]);
    let _ = writeln!(output, "\n{}", textwrap::fill(&how, wrapping(width())));
    Ok(Done::saying(output))
}

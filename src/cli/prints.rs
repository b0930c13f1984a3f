//! `print`: makes the prints. Everything is rendered and checked in memory before a file is touched.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;

use tallywatt::interview;
use tallywatt::mend;
use tallywatt::plan::store::{self, Set, StoreError};
use tallywatt::plan::{self, Plan, Problems};
use tallywatt::print::{self, Document, Options, PrintError, Prints, Stock};
use tallywatt::report::{Report, Signal};
use tallywatt::words::problem::{self, Look};
use tallywatt::words::{Words, wrapping};

use super::args::{CardSize, Ink, Only, Paper, PaperOptions, Print};
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, nearest, width};

pub(super) fn run(arguments: &Print, reader: &Reader) -> Result<Done, Failure> {
    let plan = load(&arguments.plan, &reader.words)?;
    let words = &*reader.of_plan(&plan);
    let options = options(&arguments.paper, words)?;
    let (prints, report) = render(&plan, reader, &options, arguments.paper.templates.as_deref())?;
    let files = &prints.files;
    let gone = write(&arguments.into, files, &[], &prints.needless, words)?;
    // What to do comes before what was written, which is seen in the folder too.
    let mut output = format!(
        "{}\n{}\n",
        words.next_list(&report, width()),
        textwrap::fill(&words.count(&report), wrapping(width()))
    );
    if let Some(text) = dangers_left(&report, words) {
        let _ = writeln!(output, "{}", textwrap::fill(&text, wrapping(width())));
    }
    let _ = write!(output, "\n{}", wrote(&arguments.into, files.iter().map(|(name, _)| name), words));
    for text in gone.into_iter().chain(told(&prints, options.card, words)) {
        let _ = writeln!(output, "\n{}", textwrap::fill(&text, wrapping(width())));
    }
    Ok(Done::saying(output))
}

/// Writes a set of prints and removes files of an earlier set that this one does not need. Files named in `new` never
/// replace anything. Returns a message for each file removed.
pub(super) fn write(
    into: &Path,
    files: &[(String, Vec<u8>)],
    new: &[&str],
    needless: &[String],
    words: &Words,
) -> Result<Vec<String>, Failure> {
    let set = Set { files, new, needless };
    let gone = store::write_set(into, set).map_err(|error| stored(&error, Kind::CannotWrite, words))?;
    let told = gone.into_iter();
    Ok(told.map(|name| words.with("print-look-gone", [("file", name.into())])).collect())
}

/// Lists the files that were written to a folder, one per line.
pub(super) fn wrote<N: std::fmt::Display>(into: &Path, names: impl IntoIterator<Item = N>, words: &Words) -> String {
    let shown = std::path::absolute(into).unwrap_or_else(|_| into.to_owned());
    let mut output = words.with("print-wrote", [("dir", shown.display().to_string().into())]);
    output.push('\n');
    for name in names {
        let _ = writeln!(output, "  {name}");
    }
    output
}

/// Returns what to say about the paper: that the card takes several sheets, if it does, and how many labels are used.
pub(super) fn told(prints: &Prints, size: print::CardSize, words: &Words) -> Vec<String> {
    let labels = prints.labels.map(|used| {
        let next = used.next.unwrap_or_default();
        words.with("print-labels-used", [("count", used.count.into()), ("next", next.into())])
    });
    let sheets = many_sheets(prints.card_sheets, size, words);
    sheets.into_iter().chain(labels).collect()
}

/// Says that the card takes several sheets and what to do about it. `None` if one sheet is enough.
fn many_sheets(sheets: usize, size: print::CardSize, words: &Words) -> Option<String> {
    let key = match size {
        print::CardSize::Sheet | print::CardSize::Phone => "print-card-sheets",
        print::CardSize::Half => "print-card-sheets-half",
        print::CardSize::Pocket => "print-card-sheets-pocket",
    };
    (sheets > 1).then(|| words.with(key, [("count", sheets.into())]))
}

/// Says that the printed plan still has dangers and what to do about them. `None` if it has none.
pub(super) fn dangers_left(report: &Report, words: &Words) -> Option<String> {
    let dangers = report.count(Signal::Danger);
    (dangers > 0).then(|| words.with("print-dangers-left", [("count", dangers.into())]))
}

/// Renders the prints in each of their languages, and returns them with the report they show. Fails if a text does not
/// fit. `own` is the folder of the templates in `options`.
pub(super) fn render(
    plan: &Plan,
    reader: &Reader,
    options: &Options,
    own: Option<&Path>,
) -> Result<(Prints, Report), Failure> {
    // The worksheet shows what would clear the plan.
    let (report, _) = mend::advised(plan, false);
    let screen = reader.of_plan(plan);
    let sets = reader.sets(plan);
    let mut all = Prints::default();
    for (mark, words) in sets {
        let set = print::prints(plan, &report, &words, options).map_err(|error| refused(&error, own, &screen))?;
        // Of several languages, the one that takes the most sheets counts.
        all.card_sheets = all.card_sheets.max(set.card_sheets);
        // Every language starts at the same label and has the same number of them.
        all.labels = set.labels;
        let marked = |name: String| {
            let with_tag = mark.as_ref().and_then(|tag| {
                let (stem, ending) = name.rsplit_once('.')?;
                Some(format!("{stem}-{tag}.{ending}"))
            });
            with_tag.unwrap_or(name)
        };
        let files = set.files.into_iter();
        all.files.extend(files.map(|(name, bytes)| (marked(name), bytes)));
        all.needless.extend(set.needless.into_iter().map(marked));
    }
    Ok((all, report))
}

/// Returns the default options: Letter paper, and plain labels with cut marks.
pub(super) fn defaults() -> Options {
    Options::default()
}

fn options(arguments: &PaperOptions, words: &Words) -> Result<Options, Failure> {
    Ok(Options {
        paper: match arguments.paper {
            Paper::Letter => print::Paper::Letter,
            Paper::A4 => print::Paper::A4,
        },
        stock: arguments.stock.as_deref().map(|name| stock(name, words)).transpose()?,
        start_at: arguments.start_at as usize,
        copies: arguments.copies as usize,
        offset: arguments.offset.unwrap_or_default(),
        alignment: arguments.alignment,
        card: match arguments.card {
            CardSize::Sheet => print::CardSize::Sheet,
            CardSize::Half => print::CardSize::Half,
            CardSize::Pocket => print::CardSize::Pocket,
            CardSize::Phone => print::CardSize::Phone,
        },
        ink: match arguments.ink {
            Ink::Colour => print::Ink::Colour,
            Ink::Black => print::Ink::Black,
        },
        only: arguments.only.iter().map(|only| document(*only)).collect(),
        date: arguments.date,
        png: arguments.png,
        templates: arguments
            .templates
            .as_deref()
            .map(|folder| templates(folder, words))
            .transpose()?
            .unwrap_or_default(),
    })
}

/// Reads the user's own templates. A folder without any of the templates that are printed is refused as a mistake.
fn templates(folder: &Path, words: &Words) -> Result<BTreeMap<String, String>, Failure> {
    let own = store::read_folder(folder, "typ").map_err(|error| stored(&error, Kind::Usage, words))?;
    if print::templates().iter().any(|(path, _)| own.contains_key(*path)) {
        Ok(own)
    } else {
        Err(Failure::text(Kind::Usage, words.with("templates-none", [("path", folder.display().to_string().into())]))
            .hint(words.text("templates-none-hint")))
    }
}

const fn document(only: Only) -> Document {
    match only {
        Only::Labels => Document::Labels,
        Only::Card => Document::Card,
        Only::Cautions => Document::Cautions,
        Only::Look => Document::Look,
        Only::Worksheet => Document::Worksheet,
    }
}

/// Finds a built-in stock by name, or reads the user's own stock from a `.toml` file.
fn stock(name: &str, words: &Words) -> Result<Stock, Failure> {
    let named = if Path::new(name).extension().is_some_and(|extension| extension == "toml") {
        let text = store::read_text(Path::new(name)).map_err(|error| stored(&error, Kind::Usage, words))?;
        Stock::read(name, &text)
    } else {
        Stock::named(name)
    };
    named.map_err(|error| {
        let failure = Failure::text(Kind::Usage, error.in_words(words));
        let PrintError::UnknownStock { known, .. } = &error else {
            return failure;
        };
        let near = nearest(name, known.iter().map(String::as_str));
        failure.near(near, words)
    })
}

/// Suggests a folder for the prints of a plan file.
pub(super) fn folder_for(path: &Path) -> String {
    let stem = path.file_stem().unwrap_or_default();
    format!("tallywatt-{}", interview::stem(&stem.to_string_lossy()))
}

fn refused(error: &PrintError, own: Option<&Path>, words: &Words) -> Failure {
    let kind = match error {
        PrintError::BadStart { .. } => Kind::Usage,
        _ => Kind::CannotWrite,
    };
    let failure = Failure::text(kind, error.in_words(words));
    // Templates of another version may ask for data that is missing, or leave out data that is there.
    match own.filter(|_| matches!(error, PrintError::Template { .. })) {
        Some(folder) => {
            let path = folder.display().to_string();
            failure.hint(words.with("templates-failed-hint", [("path", path.into())]))
        }
        None => failure,
    }
}

/// Reads a plan file, or standard input for `-`.
pub(super) fn load(path: &Path, words: &Words) -> Result<Plan, Failure> {
    load_text(path, words).map(|(_, plan)| plan)
}

/// Reads a plan as [`load`] does, and returns its text too.
pub(super) fn load_text(path: &Path, words: &Words) -> Result<(String, Plan), Failure> {
    let text =
        if path.as_os_str() == "-" { store::read_from(std::io::stdin().lock(), path) } else { store::read_text(path) };
    let text = text.map_err(|error| stored(&error, Kind::BadPlan, words))?;
    let plan = read(&text, path, words)?;
    Ok((text, plan))
}

/// Parses the text of the plan file at `path`.
pub(super) fn read(text: &str, path: &Path, words: &Words) -> Result<Plan, Failure> {
    plan::read(text).map_err(|problems| bad_plan(&problems, text, path, words))
}

/// Returns the text of a plan file with the changes from `before` to `after`. Keeps comments and order if the result
/// still reads as `after`, and writes the plan anew otherwise.
pub(super) fn changed(text: &str, before: &Plan, after: &Plan) -> String {
    let merged = interview::merge(text, before, after);
    let merged = merged.filter(|merged| plan::read(merged).is_ok_and(|read| read == *after));
    merged.unwrap_or_else(|| plan::write(after))
}

/// Returns a failure that shows every problem of a plan in place.
fn bad_plan(problems: &Problems, text: &str, path: &Path, words: &Words) -> Failure {
    let path = path.display().to_string();
    let choice = anstream::AutoStream::choice(&std::io::stderr());
    let look = Look { coloured: choice != anstream::ColorChoice::Never, width: width() };
    let text = problem::render(words, &path, text, problems, look);
    Failure::text(Kind::BadPlan, text).whole()
}

/// Returns the failure for a file that could not be read or written.
pub(super) fn stored(error: &StoreError, kind: Kind, words: &Words) -> Failure {
    Failure::text(kind, problem::store(words, error)).whole()
}

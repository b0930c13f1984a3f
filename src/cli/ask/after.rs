//! What comes after the check: save, print, change or leave.

use std::path::{Path, PathBuf};

use tallywatt::interview::{self, Input, PromptError, Prompter, Row, Shape, View};
use tallywatt::mend::{self, Mended};
use tallywatt::plan::{Plan, store};
use tallywatt::report::{Repair, Report};
use tallywatt::words::{Words, wrapping};

use super::edited::Edited;
use crate::cli::failure::{Failure, Kind};
use crate::cli::reader::Reader;
use crate::cli::{Done, check, prints, say, width};

/// What to do with a plan that has been checked.
pub(super) enum After {
    Save,
    Print(PathBuf),
    Change,
    /// Ask again what nobody knew.
    Look,
    /// Go on with this plan, which was mended.
    Take(Box<Plan>),
    Leave,
    Interrupted,
    Ended,
}

/// Asks for it.
pub(super) fn after(
    prompter: &mut dyn Prompter,
    plan: &Plan,
    report: &Report,
    edited: Option<&Edited>,
    words: &Words,
) -> Result<After, Failure> {
    let row = |key: &str, value: &str| Row {
        text: words.text(key),
        also: String::new(),
        input: Input::Answer(value.to_owned()),
    };
    let mut mended: Option<(Report, Mended)> = None;
    let mut rows = vec![
        row("interview-after-print", "print"),
        row("interview-after-all", "all"),
        row("interview-after-change", "change"),
        row("interview-after-leave", "leave"),
    ];
    let tally = mend::tally(plan, report);
    if !tally.clear() {
        rows.insert(1, row("interview-after-mend", "mend"));
    }
    let looks = !report.figures.looks.is_empty();
    if looks {
        rows.insert(1, row("interview-after-look", "look"));
    }
    if edited.is_some() {
        rows.insert(0, row("interview-after-save", "save"));
    }
    // Enter alone does not print what must not be started. Looking costs nothing.
    let first = if looks { "look" } else { "mend" };
    let start = rows
        .iter()
        .position(|row| tally.dangers > 0 && row.input == Input::Answer(first.to_owned()))
        .unwrap_or(0);
    let view = |rows: &[Row], start: usize| View {
        progress: String::new(),
        dots: String::new(),
        question: words.text("interview-after"),
        why: words.text("interview-after.why"),
        shape: Shape::List {
            rows: rows.to_vec(),
            start: Some(start),
            marks: None,
        },
        spoken: Vec::new(),
    };
    let mut what = view(&rows, start);
    loop {
        match ask(prompter, &what, words)? {
            Answered::Ended => return Ok(After::Ended),
            Answered::Interrupted => return Ok(After::Interrupted),
            Answered::Input(Input::Back) => return Ok(After::Change),
            Answered::Input(Input::Answer(value)) => match value.as_str() {
                "print" => {}
                "mend" => {
                    mended = say_repairs(plan, words)?;
                    // What is told can be taken, in the place of what told it.
                    let asked = Input::Answer("mend".to_owned());
                    let at = rows.iter().position(|row| row.input == asked);
                    if let Some(at) = at.filter(|_| mended.is_some()) {
                        rows[at] = row("interview-after-take", "take");
                        what = view(&rows, at);
                    }
                    continue;
                }
                "take" => {
                    let told = mended.as_ref();
                    let taken = told
                        .map(|told| take(prompter, plan, told, words))
                        .transpose()?;
                    match taken.flatten() {
                        Some(then) => return Ok(then),
                        None => continue,
                    }
                }
                "all" => {
                    say(&format!("\n{}\n", check::brief(report, words)))?;
                    continue;
                }
                "save" => return Ok(After::Save),
                "change" => return Ok(After::Change),
                "look" => return Ok(After::Look),
                "leave" => return Ok(After::Leave),
                _ => continue,
            },
            Answered::Input(_) => continue,
        }
        if let Some(then) = folder(prompter, plan, edited, words)? {
            return Ok(then);
        }
    }
}

/// Says what would clear the dangers. Gives the plan after it, if there is anything to do and the interview can go on with
/// that plan.
fn say_repairs(plan: &Plan, words: &Words) -> Result<Option<(Report, Mended)>, Failure> {
    let (report, advised) = mend::advised(plan, false);
    let width = width();
    let mut text = words.repairs(&report, width);
    let sharing = &report.figures.sharing;
    let changed = sharing
        .mended
        .as_ref()
        .filter(|_| !sharing.repairs.is_empty());
    if let Some(effect) = changed {
        let people = words.by_hand(effect);
        text = format!("{text}\n{}", textwrap::fill(&people, wrapping(width)));
    }
    say(&format!("\n{text}\n"))?;
    let goes_on = changed.is_some() && interview::draft_of(&advised.plan, "").is_some();
    Ok(goes_on.then_some((report, advised)))
}

/// Asks which of the changes somebody takes; nothing when the reader goes back.
fn take(
    prompter: &mut dyn Prompter,
    plan: &Plan,
    (report, mended): &(Report, Mended),
    words: &Words,
) -> Result<Option<After>, Failure> {
    let value = |at: usize| format!("change {at}");
    let row = |text: String, value: String| Row {
        text,
        also: String::new(),
        input: Input::Answer(value),
    };
    let repairs = report.figures.sharing.repairs.iter().enumerate();
    let is_change = |repair: &Repair| repair.key != "as-the-card";
    let changes = repairs.filter(|(_, repair)| is_change(repair));
    let texts = changes.map(|(at, repair)| (at, words.repair(repair, &report.figures.loads)));
    let mut rows = vec![row(words.text("interview-take-done"), "done".to_owned())];
    rows.extend(texts.map(|(at, text)| row(text, value(at))));
    let marks = rows.iter().enumerate().map(|(at, _)| u8::from(at > 0));
    let which = View {
        progress: String::new(),
        dots: String::new(),
        question: words.text("interview-take"),
        why: words.text("interview-take.why"),
        shape: Shape::List {
            start: Some(0),
            marks: Some(marks.collect()),
            rows,
        },
        spoken: Vec::new(),
    };
    loop {
        let answer = match ask(prompter, &which, words)? {
            Answered::Ended => return Ok(Some(After::Ended)),
            Answered::Interrupted => return Ok(Some(After::Interrupted)),
            Answered::Input(Input::Answer(answer)) => answer,
            Answered::Input(_) => return Ok(None),
        };
        let Some(marked) = which.marked(&answer) else {
            prompter
                .tell(&words.text("reject-choice"))
                .map_err(|error| super::terminal_failed(&error, words))?;
            continue;
        };
        let repairs = &report.figures.sharing.repairs;
        let wanted = |at: usize| !is_change(&repairs[at]) || marked.contains(&value(at));
        let plan = mended.taken(plan, report, wanted);
        return Ok(Some(After::Take(Box::new(plan))));
    }
}

/// Asks for the folder of the prints; nothing when the reader goes back.
fn folder(
    prompter: &mut dyn Prompter,
    plan: &Plan,
    edited: Option<&Edited>,
    words: &Words,
) -> Result<Option<After>, Failure> {
    let usual = format!("tallywatt-{}", interview::stem(&plan.site.name));
    let folder = View {
        progress: String::new(),
        dots: String::new(),
        question: words.text("interview-folder"),
        why: words.text("interview-folder.why"),
        shape: Shape::Line {
            default: Some(usual.clone()),
            hint: String::new(),
        },
        spoken: Vec::new(),
    };
    loop {
        let into = match ask(prompter, &folder, words)? {
            Answered::Ended => return Ok(Some(After::Ended)),
            Answered::Interrupted => return Ok(Some(After::Interrupted)),
            Answered::Input(Input::Back) => return Ok(None),
            Answered::Input(Input::Explain) => {
                prompter
                    .tell(&words.text("interview-folder.help"))
                    .map_err(|error| super::terminal_failed(&error, words))?;
                continue;
            }
            Answered::Input(Input::Answer(text)) if !text.is_empty() => PathBuf::from(text),
            Answered::Input(_) => PathBuf::from(&usual),
        };
        // Another plan may live there, and writing would lose it.
        let own = edited.is_some_and(|edited| edited.is(&into.join("plan.toml")));
        if !own && into.join("plan.toml").exists() || into.is_file() {
            let path = into.display().to_string();
            prompter
                .tell(&words.with("interview-folder-taken", [("dir", path.into())]))
                .map_err(|error| super::terminal_failed(&error, words))?;
            continue;
        }
        return Ok(Some(After::Print(into)));
    }
}

enum Answered {
    Input(Input),
    Interrupted,
    Ended,
}

fn ask(prompter: &mut dyn Prompter, view: &View, words: &Words) -> Result<Answered, Failure> {
    match prompter.ask(view) {
        Ok(input) => Ok(Answered::Input(input)),
        Err(PromptError::Interrupted) => Ok(Answered::Interrupted),
        Err(PromptError::Ended) => Ok(Answered::Ended),
        Err(PromptError::Terminal(error)) => Err(super::terminal_failed(&error, words)),
        Err(error) => Err(Failure::new(Kind::CannotWrite, error)),
    }
}

/// The prints, the report and the plan in one folder.
pub(super) fn print(
    into: &Path,
    plan: &Plan,
    text: &str,
    report: &Report,
    words: &Words,
    reader: &Reader,
) -> Result<Done, Failure> {
    let options = prints::defaults();
    let (prints, _) = prints::render(plan, reader, &options)?;
    let told = prints::told(&prints, options.card, words);
    let mut files = prints.files;
    let json = report
        .to_json()
        .map_err(|error| Failure::new(Kind::CannotWrite, error))?;
    files.push(("report.json".to_owned(), (json + "\n").into_bytes()));
    files.push(("plan.toml".to_owned(), text.as_bytes().to_vec()));
    store::write_set(into, files.iter().map(|(name, bytes)| (name, bytes)))
        .map_err(|error| prints::stored(&error, Kind::CannotWrite, words))?;
    let mut output = prints::wrote(into, files.iter().map(|(name, _)| name), words);
    let told = told.into_iter();
    for text in told.chain(prints::dangers_left(report, words)) {
        output.push('\n');
        output.push_str(&textwrap::fill(&text, wrapping(width())));
        output.push('\n');
    }
    Ok(Done::saying(output))
}

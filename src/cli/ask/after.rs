//! The choices after the check: save, print, change or leave.

use std::path::{Path, PathBuf};

use tallywatt::interview::{self, Input, Notice, Row, Shape, View};
use tallywatt::mend::{self, Mended};
use tallywatt::plan::Plan;
use tallywatt::report::{Marking, Repair, Report};
use tallywatt::words::{Words, wrapping};

use super::edited::Edited;
use super::{Answered, Asker};
use crate::cli::failure::Failure;
use crate::cli::reader::Reader;
use crate::cli::{Done, check, prints, say, width};

/// What to do with a plan that has been checked.
pub(super) enum After {
    /// Write the plan, and print it into this folder if there is one.
    Write(Option<PathBuf>),
    Go(Then),
}

/// What the interview does next.
pub(super) enum Then {
    /// The plan is written.
    Written(Done),
    /// Ask and check again, because someone else changed the file.
    Again,
    Change,
    /// Ask again what the user did not know.
    Look,
    /// Go on with this mended plan.
    Take(Box<Plan>),
    Leave,
    Interrupted,
    Ended,
}

/// Says what to do first, then asks what to do with the plan.
pub(super) fn after(
    asker: &mut Asker<'_>,
    plan: &Plan,
    report: &Report,
    edited: Option<&Edited>,
) -> Result<After, Failure> {
    let words = asker.words;
    let row = |value: &str| {
        let text = words.text(&format!("interview-after-{value}"));
        Row::new(text, Input::Answer(value.to_owned()))
    };
    let mut mended: Option<(Report, Mended)> = None;
    let tally = mend::tally(plan, report);
    // Something not bought yet cannot be looked at.
    let looks = report.figures.looks.iter().any(|look| look.read != Marking::Package);
    let offered = [
        ("save", edited.is_some()),
        ("print", true),
        ("look", looks),
        ("mend", !tally.clear()),
        ("all", true),
        ("change", true),
        ("leave", true),
    ];
    let offered = offered.into_iter().filter(|(_, there)| *there);
    let mut rows: Vec<Row> = offered.map(|(value, _)| row(value)).collect();
    // Pressing Enter must not print a plan that is unsafe to start. Looking costs nothing.
    let first = if looks { "look" } else { "mend" };
    let first = rows.iter().position(|row| row.value() == Some(first));
    let mut start = first.filter(|_| tally.dangers > 0);
    let steps = words.next_steps(report);
    let mut why = if steps.is_empty() { words.text("interview-after.none") } else { words.text("interview-after.why") };
    // Given before the next steps, so that the steps stay beside the question.
    let unserved = words.without_outlet(report);
    if !unserved.is_empty() {
        asker.give(unserved.iter().map(|it| it.join(" ")).collect())?;
    }
    let steps = (1..).zip(steps);
    asker.keep(
        steps.map(|(at, [step, more])| Notice { what: format!("{at}. {step}"), more, todo: String::new() }).collect(),
    )?;
    loop {
        let list = Shape::List { rows: rows.clone(), start: start.or(Some(0)), marks: None };
        // The reason is for the first question only. Later ones follow other output.
        let what = View::plain(words.text("interview-after"), std::mem::take(&mut why), list);
        match asker.ask(&what)? {
            Answered::Ended => return Ok(After::Go(Then::Ended)),
            Answered::Interrupted => return Ok(After::Go(Then::Interrupted)),
            Answered::Input(Input::Back) => return Ok(After::Go(Then::Change)),
            Answered::Input(Input::Answer(value)) => match value.as_str() {
                "print" => {
                    if let Some(then) = folder(asker, plan, edited)? {
                        return Ok(then);
                    }
                }
                "mend" => {
                    mended = say_repairs(plan, words)?;
                    // Repairs that have been shown can be taken, so the row changes.
                    let at = rows.iter().position(|row| row.value() == Some("mend"));
                    if let Some(at) = at.filter(|_| mended.is_some()) {
                        rows[at] = row("take");
                        // Looking stays first: it may make the changes needless.
                        start = if looks { first } else { Some(at) };
                    }
                }
                "take" => {
                    let told = mended.as_ref();
                    let taken = told.map(|told| take(asker, plan, told)).transpose()?;
                    if let Some(then) = taken.flatten() {
                        return Ok(then);
                    }
                }
                "all" => say(&format!("\n{}\n", check::brief(report, words)), words)?,
                "save" => return Ok(After::Write(None)),
                "change" => return Ok(After::Go(Then::Change)),
                "look" if looks => return Ok(After::Go(Then::Look)),
                "look" => asker.tell(&words.text("reject-choice"))?,
                "leave" => return Ok(After::Go(Then::Leave)),
                _ => {}
            },
            Answered::Input(_) => {}
        }
    }
}

/// Says what would clear the dangers. Returns the report and the mended plan if something changed and the interview can
/// go on with that plan.
fn say_repairs(plan: &Plan, words: &Words) -> Result<Option<(Report, Mended)>, Failure> {
    let (report, advised) = mend::advised(plan, false);
    let width = width();
    let mut text = words.repairs(&report, width);
    let sharing = &report.figures.sharing;
    let changed = sharing.mended.as_ref().filter(|_| !sharing.repairs.is_empty());
    if let Some(effect) = changed {
        let people = words.by_hand(effect);
        text = format!("{text}\n{}", textwrap::fill(&people, wrapping(width)));
    }
    say(&format!("\n{text}\n"), words)?;
    let goes_on = changed.is_some() && interview::draft_of(&advised.plan, "").is_some();
    Ok(goes_on.then_some((report, advised)))
}

/// Asks which changes to take. Returns `None` if the user goes back.
fn take(asker: &mut Asker<'_>, plan: &Plan, (report, mended): &(Report, Mended)) -> Result<Option<After>, Failure> {
    let words = asker.words;
    let value = |at: usize| format!("change {at}");
    let repairs = &report.figures.sharing.repairs;
    let is_change = |repair: &Repair| repair.key != "as-the-card";
    let changes = repairs.iter().enumerate().filter(|(_, repair)| is_change(repair));
    let row = |(at, repair)| {
        let text = words.repair(repair, &report.figures.loads);
        Row::new(text, Input::Answer(value(at)))
    };
    let done = words.text("interview-take-done");
    let mut rows = vec![Row::new(done, Input::Answer("done".to_owned()))];
    rows.extend(changes.map(row));
    let marks = (0..rows.len()).map(|at| u8::from(at > 0)).collect();
    let which = View::plain(
        words.text("interview-take"),
        words.text("interview-take.why"),
        Shape::List { rows, start: Some(0), marks: Some(marks) },
    );
    loop {
        let answer = match asker.ask(&which)? {
            Answered::Ended => return Ok(Some(After::Go(Then::Ended))),
            Answered::Interrupted => return Ok(Some(After::Go(Then::Interrupted))),
            Answered::Input(Input::Answer(answer)) => answer,
            Answered::Input(_) => return Ok(None),
        };
        let Some(marked) = which.marked(&answer) else {
            asker.tell(&words.text("reject-choice"))?;
            continue;
        };
        let wanted = |at: usize| !is_change(&repairs[at]) || marked.contains(&value(at));
        let plan = mended.taken(plan, report, wanted);
        return Ok(Some(After::Go(Then::Take(Box::new(plan)))));
    }
}

/// Asks for the folder for the prints. Returns `None` if the user goes back.
fn folder(asker: &mut Asker<'_>, plan: &Plan, edited: Option<&Edited>) -> Result<Option<After>, Failure> {
    let words = asker.words;
    let usual = format!("tallywatt-{}", interview::stem(&plan.site.name));
    let folder = View::plain(
        words.text("interview-folder"),
        words.text("interview-folder.why"),
        Shape::Line { default: Some(usual.clone()), hint: String::new() },
    );
    loop {
        let into = match asker.ask(&folder)? {
            Answered::Ended => return Ok(Some(After::Go(Then::Ended))),
            Answered::Interrupted => return Ok(Some(After::Go(Then::Interrupted))),
            Answered::Input(Input::Back) => return Ok(None),
            Answered::Input(Input::Explain) => {
                asker.tell(&words.text("interview-folder.help"))?;
                continue;
            }
            Answered::Input(Input::Answer(text)) if !text.is_empty() => PathBuf::from(text),
            Answered::Input(_) => PathBuf::from(&usual),
        };
        // The folder may hold another plan, which writing would destroy.
        let own = edited.is_some_and(|edited| edited.is(&into.join("plan.toml")));
        if !own && into.join("plan.toml").exists() || into.is_file() {
            let path = into.display().to_string();
            asker.tell(&words.with("interview-folder-taken", [("dir", path.into())]))?;
            continue;
        }
        return Ok(Some(After::Write(Some(into))));
    }
}

/// Writes the prints, the report and the plan into one folder.
pub(super) fn print(
    into: &Path,
    plan: &Plan,
    text: &str,
    report: &Report,
    words: &Words,
    reader: &Reader,
) -> Result<Done, Failure> {
    let options = prints::defaults();
    let (prints, _) = prints::render(plan, reader, &options, None)?;
    let told = prints::told(&prints, options.card, words);
    let mut files = prints.files;
    files.push(("report.json".to_owned(), check::told(report, text, true, words)?.into_bytes()));
    files.push(("plan.toml".to_owned(), text.as_bytes().to_vec()));
    // Another plan in that folder is someone's work and must not be replaced.
    let gone = prints::write(into, &files, &["plan.toml"], &prints.needless, words)?;
    let mut output = prints::wrote(into, files.iter().map(|(name, _)| name), words);
    for text in gone.into_iter().chain(told).chain(prints::dangers_left(report, words)) {
        output.push('\n');
        output.push_str(&textwrap::fill(&text, wrapping(width())));
        output.push('\n');
    }
    Ok(Done::saying(output))
}

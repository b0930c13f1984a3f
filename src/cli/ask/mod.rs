//! The interview, which runs without a command or as `ask`: questions until there is a plan, then its check and its
//! prints.

mod after;
mod drafts;
mod edited;
mod interrupt;

use std::io::{self, BufRead as _, BufReader, IsTerminal as _};
use std::path::Path;
use std::rc::Rc;

use tallywatt::interview::lines::Lines;
use tallywatt::interview::terminal::{self, Terminal};
use tallywatt::interview::{self, Input, Notice, Outcome, PromptError, Prompter, Start, View};
use tallywatt::judge;
use tallywatt::plan::store::{self, Drafts, Fault, StoreError};
use tallywatt::plan::{self, Plan};
use tallywatt::report::{self, Report};
use tallywatt::words::{Words, wrapping};

use after::{After, Then};
use drafts::{Keeper, Kept, Opened};
use edited::Edited;

use super::args::How;
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, check, command, prints, width};

/// The environment variable that moves the drafts to another folder, for tests and for users who keep them elsewhere.
const DATA: &str = "TALLYWATT_DATA";

/// The name of a new draft on disk.
const STEM: &str = "plan";

/// A prompter and the words for it. Turns terminal errors into failures.
struct Asker<'a> {
    prompter: &'a mut dyn Prompter,
    words: &'a Words,
}

/// The outcome of a question.
enum Answered {
    Input(Input),
    Interrupted,
    Ended,
}

impl Asker<'_> {
    fn tell(&mut self, text: &str) -> Result<(), Failure> {
        let told = self.prompter.tell(text);
        told.map_err(|error| terminal_failed(&error, self.words))
    }

    /// Reports a failure to the user and returns its exit status.
    fn tell_failure(&mut self, failure: &Failure) -> Result<Option<u8>, Failure> {
        self.tell(&failure.shown(self.words))?;
        Ok(Some(failure.status()))
    }

    fn keep(&mut self, notices: Vec<Notice>) -> Result<(), Failure> {
        let kept = self.prompter.keep(notices);
        kept.map_err(|error| terminal_failed(&error, self.words))
    }

    fn give(&mut self, texts: Vec<String>) -> Result<(), Failure> {
        let given = self.prompter.give(texts);
        given.map_err(|error| terminal_failed(&error, self.words))
    }

    fn ask(&mut self, view: &View) -> Result<Answered, Failure> {
        match self.prompter.ask(view) {
            Ok(input) => Ok(Answered::Input(input)),
            Err(PromptError::Interrupted) => Ok(Answered::Interrupted),
            Err(PromptError::Ended) => Ok(Answered::Ended),
            Err(PromptError::Terminal(error)) => Err(terminal_failed(&error, self.words)),
            Err(error) => Err(because("interview-terminal", &error, self.words)),
        }
    }
}

/// Runs the interview for a new plan, or for the plan in a file.
#[allow(clippy::disallowed_methods)] // only the shell asks what kind of terminal this is
pub(super) fn interview(how: &How, file: Option<&Path>, reader: &Reader) -> Result<Done, Failure> {
    let words = &*language(file, reader);
    let plain = how.plain || std::env::var_os("TERM").is_some_and(|term| term == "dumb");
    let said = anstream::stderr;
    let mut typed = io::stdin().lock();
    let (mut prompter, resume): (Box<dyn Prompter + '_>, bool) = match &how.answers {
        Some(path) if path.as_os_str() == "-" => (Box::new(Lines::new(typed, said())), false),
        Some(path) => {
            let open = store::open(path).map_err(|error| prints::stored(&error, Kind::Usage, words))?;
            (Box::new(Lines::new(BufReader::new(open), said())), false)
        }
        None if io::stdin().is_terminal() && plain => (Box::new(Lines::at_a_terminal(typed, said(), words)), true),
        None if terminal::present() => (Box::new(Terminal::new(words)), true),
        // Answers may come through a pipe.
        None if !io::stdin().is_terminal() && typed.fill_buf().is_ok_and(|it| !it.is_empty()) => {
            (Box::new(Lines::new(typed, said())), false)
        }
        None => {
            let why = words.text("interview-no-terminal");
            return Err(Failure::text(Kind::Usage, why).hint(words.text("interview-no-terminal-help")));
        }
    };
    hold(&mut *prompter, resume, file, words, reader)
}

/// Returns the words for the questions: those of the plan being changed if it names a language, else the reader's.
fn language(file: Option<&Path>, reader: &Reader) -> Rc<Words> {
    file.and_then(|path| store::read_text(path).ok())
        .and_then(|text| plan::read(&text).ok())
        .map_or_else(|| Rc::clone(&reader.words), |plan| reader.of_plan(&plan))
}

/// Runs the whole interview. `resume` says whether to offer unfinished plans.
#[allow(clippy::disallowed_methods)] // only the shell asks where drafts are kept
fn hold(
    prompter: &mut dyn Prompter,
    resume: bool,
    file: Option<&Path>,
    words: &Words,
    reader: &Reader,
) -> Result<Done, Failure> {
    let drafts = std::env::var_os(DATA)
        .filter(|folder| !folder.is_empty())
        .map(|folder| Drafts::at(Path::new(&folder)))
        .or_else(Drafts::usual);
    let drafts = drafts.as_ref();
    let in_file = file.map(|path| Edited::open(path, words)).transpose()?;
    let nothing_yet = Failure::text(Kind::Interrupted, words.text("interview-stopped"));
    let breaking_off = interrupt::watch(nothing_yet.shown(words));
    let mut asker = Asker { prompter, words };
    let opened = match &in_file {
        Some(edited) => drafts::open_file(&mut asker, drafts, edited)?,
        None => drafts::open(&mut asker, drafts, resume)?,
    };
    let (kept, mut draft) = match opened {
        Opened::Draft(kept, draft) => (kept, draft),
        Opened::Stopped(stopped) => return Ok(stopped),
    };
    // A draft of changes to a file resumes with that file.
    let edited = match (in_file, &draft.plan) {
        (_, Some(path)) => Some(Edited::resume(&draft, path, words)?),
        (in_file, None) => in_file,
    };
    let mut kept =
        Keeper { kept, unchanged: edited.as_ref().map(|edited| edited.draft.answers.clone()), breaking_off, words };
    let mut before: Option<Report> = None;
    let mut start = Start::First;
    // The exit status of the last write that failed.
    let mut failed = None;
    loop {
        let outcome = interview::run(asker.prompter, &mut kept, words, draft, start)
            .map_err(|error| terminal_failed(&error, words))?;
        let plan = match outcome {
            Outcome::Finished { plan, draft: now } => {
                draft = now;
                *plan
            }
            Outcome::Interrupted { draft } => {
                return Err(stopped(&draft, &kept.kept, words));
            }
            Outcome::Quit { draft } => return Ok(left(&draft, &kept.kept, words)),
        };
        let stands = edited.as_ref().map(|edited| edited.now(words));
        let stands = stands.transpose()?;
        let text = match (&edited, &stands) {
            (Some(edited), Some(stands)) => edited.changed(stands, &plan),
            _ => plan::write(&plan),
        };
        // A plan that cannot be read back would be this program's own fault, and is better found here than at camp.
        let plan = prints::read(&text, Path::new("plan.toml"), words)?;
        let report = judge::build(&plan);
        if let Some(before) = &before {
            asker.tell(&effect(before, &report, words))?;
        }
        asker.tell(&(words.count(&report) + "\n" + &words.text("check-defer")))?;
        let checked = Checked { plan: &plan, report: &report, text: &text, edited: edited.as_ref(), stands };
        let then = checked.settle(&mut asker, reader, &mut failed)?;
        match then {
            Then::Again => {}
            Then::Change => (start, before) = (Start::First, Some(report)),
            Then::Take(plan) => {
                if let Some(now) = interview::draft_of(&plan, &draft.name) {
                    draft.answers = now.answers;
                }
                (start, before) = (Start::First, Some(report));
            }
            Then::Look => (start, before) = (Start::Looking, Some(report)),
            Then::Leave => {
                let left = left(&draft.name, &kept.kept, words);
                return Ok(Done { status: failed.unwrap_or(left.status), ..left });
            }
            Then::Interrupted => return Err(stopped(&draft.name, &kept.kept, words)),
            Then::Ended => {
                let status = failed.unwrap_or(check::status(report.worst()));
                return Ok(Done { output: String::new(), status });
            }
            Then::Written(done) => {
                kept.kept.remove(words)?;
                return Ok(done);
            }
        }
    }
}

/// A plan that has been checked, and the file that it changes, if any.
struct Checked<'a> {
    plan: &'a Plan,
    report: &'a Report,
    text: &'a str,
    edited: Option<&'a Edited>,
    /// The current text of that file.
    stands: Option<String>,
}

impl Checked<'_> {
    /// Asks what to do with the plan until that is done. Reports a failed write, puts its exit status in `failed` and
    /// asks again.
    fn settle(mut self, asker: &mut Asker<'_>, reader: &Reader, failed: &mut Option<u8>) -> Result<Then, Failure> {
        let words = asker.words;
        loop {
            let into = match after::after(asker, self.plan, self.report, self.edited)? {
                After::Write(into) => into,
                After::Go(then) => return Ok(then),
            };
            if let (Some(edited), Some(stands)) = (self.edited, &mut self.stands) {
                match store::rewrite(&edited.path, stands, self.text) {
                    Ok(()) => self.text.clone_into(stands),
                    Err(StoreError { fault: Fault::Changed, .. }) => {
                        let path = edited.path.display().to_string();
                        asker.tell(&words.with("interview-file-changed", [("path", path.into())]))?;
                        return Ok(Then::Again);
                    }
                    Err(error) => {
                        *failed = asker.tell_failure(&prints::stored(&error, Kind::CannotWrite, words))?;
                        continue;
                    }
                }
            }
            let done = match into {
                None => Ok(saved(self.edited.and_then(|edited| edited.path.to_str()).unwrap_or_default(), words)),
                Some(into) => after::print(&into, self.plan, self.text, self.report, words, reader),
            };
            match done {
                Ok(done) => return Ok(Then::Written(done)),
                Err(failure) => *failed = asker.tell_failure(&failure)?,
            }
        }
    }
}

/// Says that the plan was saved and how to print it.
fn saved(path: &str, words: &Words) -> Done {
    let folder = prints::folder_for(Path::new(path));
    let print = command(&["tallywatt", "print", path, "--into", &folder]);
    let values = [("path", path.into()), ("command", print.into())];
    let saved = words.with("interview-saved", values);
    Done::saying(textwrap::fill(&saved, wrapping(width()).break_words(false)) + "\n")
}

/// Describes how a change affected the findings.
fn effect(before: &Report, now: &Report, words: &Words) -> String {
    let without = |all: &Report, others: &Report, key: &str| -> Vec<String> {
        all.findings
            .iter()
            .filter(|finding| {
                let same = |other: &&report::Finding| (other.code, &other.about) == (finding.code, &finding.about);
                others.findings.iter().find(same).is_none()
            })
            .map(|finding| {
                let text = words.finding(finding, &all.figures.loads);
                let values = [("signal", text.signal.into()), ("title", text.title.into())];
                words.with(key, values)
            })
            .collect()
    };
    let mut lines = without(before, now, "interview-effect-gone");
    lines.extend(without(now, before, "interview-effect-new"));
    if lines.is_empty() {
        lines.push(words.text("interview-effect-none"));
    }
    lines.insert(0, words.text("interview-effect"));
    lines.join("\n")
}

/// Returns the failure for a terminal that can no longer be used.
fn terminal_failed(error: &io::Error, words: &Words) -> Failure {
    because("interview-terminal", error, words)
}

/// Returns a failure in the reader's language, with the system's reason as the system words it.
fn because(key: &str, reason: &dyn std::error::Error, words: &Words) -> Failure {
    let reason = reason.to_string();
    Failure::text(Kind::CannotWrite, words.with(key, [("reason", reason.into())]))
}

/// Returns the failure for an interrupted interview. Says how to resume the named draft, if it was kept.
fn stopped(draft: &str, kept: &Kept, words: &Words) -> Failure {
    if kept.is_empty() {
        return Failure::text(Kind::Interrupted, words.text("interview-stopped"));
    }
    if !kept.is_kept() {
        return Failure::text(Kind::Interrupted, words.text("interview-stopped-lost"));
    }
    let draft = draft.to_owned();
    Failure::text(Kind::Interrupted, words.with("interview-kept", [("draft", draft.into())]))
        .hint(words.text("interview-resume"))
}

/// Returns the result of leaving the interview, with the same message as [`stopped`].
fn left(draft: &str, kept: &Kept, words: &Words) -> Done {
    if kept.is_empty() {
        return Done::saying(words.text("interview-stopped") + "\n");
    }
    if !kept.is_kept() {
        return Done::saying(words.text("interview-stopped-lost") + "\n");
    }
    Done::saying(format!(
        "{}\n{}\n",
        words.with("interview-kept", [("draft", draft.to_owned().into())]),
        words.text("interview-resume")
    ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use tallywatt::words::Units;

    /// The failure is in the reader's language and includes the system's reason.
    #[test]
    fn a_failing_terminal_is_told_in_the_readers_language() {
        for tag in ["en", "es", "fr", "de"] {
            let words = Words::new(tag, Units::Metric).unwrap();
            let error = io::Error::other("gone away");
            let said = terminal_failed(&error, &words).shown(&words);
            assert!(said.contains("gone away"), "{tag}: {said}");
            assert!(tag == "en" || !said.contains("the terminal"), "{said}");
            assert_eq!(words.faults(), Vec::<String>::new());
        }
    }
}

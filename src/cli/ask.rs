//! The interview: with no command, questions until there is a plan; then its check and its
//! prints.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{self, BufRead as _, BufReader, IsTerminal as _};
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use tallywatt::interview::lines::Lines;
use tallywatt::interview::terminal::{self, Terminal};
use tallywatt::interview::{
    self, Draft, Input, InterviewError, Keep, Outcome, PromptError, Prompter, Row, Said, Shape,
    View,
};
use tallywatt::plan::store::{self, Drafts, StoreError};
use tallywatt::plan::{self, Id, Plan};
use tallywatt::report::{self, Report};
use tallywatt::words::Words;

use super::failure::{Failure, Kind};
use super::{Done, check, prints, say};

/// Where tests and people with a bin of their own keep drafts.
const DATA: &str = "TALLYWATT_DATA";

/// What a new draft is called on disk.
const STEM: &str = "plan";

/// Interviews for a new plan, or about the one in a file.
pub(super) fn interview(
    answers: Option<&Path>,
    plain: bool,
    file: Option<&Path>,
    words: &Words,
) -> Result<Done, Failure> {
    let plain = plain || std::env::var_os("TERM").is_some_and(|term| term == "dumb");
    let said = anstream::stderr;
    match answers {
        Some(path) if path.as_os_str() == "-" => hold(
            &mut Lines::new(io::stdin().lock(), said()),
            false,
            file,
            words,
        ),
        Some(path) => {
            let open = File::open(path).map_err(|error| {
                let context = words.with(
                    "failure-read",
                    [("path", path.display().to_string().into())],
                );
                Failure::new(Kind::Usage, anyhow::Error::new(error).context(context))
            })?;
            let mut lines = Lines::new(BufReader::new(open), said());
            hold(&mut lines, false, file, words)
        }
        None if io::stdin().is_terminal() && plain => {
            let mut lines = Lines::at_a_terminal(io::stdin().lock(), said(), words);
            hold(&mut lines, true, file, words)
        }
        None if terminal::present() => hold(&mut Terminal::new(words), true, file, words),
        None => {
            // Piped answers, if there are any.
            let mut input = io::stdin().lock();
            let piped =
                !io::stdin().is_terminal() && input.fill_buf().is_ok_and(|bytes| !bytes.is_empty());
            if piped {
                return hold(&mut Lines::new(input, said()), false, file, words);
            }
            Err(
                Failure::text(Kind::Usage, words.text("interview-no-terminal"))
                    .hint(words.text("interview-no-terminal-help")),
            )
        }
    }
}

/// A plan file that is being changed.
struct Edited {
    path: PathBuf,
    /// As it stands on disk.
    text: String,
    /// Its plan as the interview knows it.
    before: Plan,
    /// The answers that make it.
    draft: Draft,
}

impl Edited {
    fn open(path: &Path, words: &Words) -> Result<Self, Failure> {
        let text =
            store::read_text(path).map_err(|error| prints::stored(&error, Kind::Usage, words))?;
        let plan = plan::read(&text)
            .map_err(|problems| prints::bad_plan(&problems, &text, path, words))?;
        let too_large = || {
            let path = path.display().to_string();
            Failure::text(
                Kind::Usage,
                words.with("interview-too-large", [("path", path.into())]),
            )
            .hint(words.text("interview-too-large-help"))
        };
        let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
        let mut draft = interview::draft_of(&plan, STEM).ok_or_else(too_large)?;
        draft.plan = Some(path.display().to_string());
        Ok(Self {
            before: interview::plan_of(&draft, &|key| words.text(key)),
            path,
            text,
            draft,
        })
    }

    /// The file with the changes in it.
    fn changed(&self, plan: &Plan) -> String {
        interview::merge(&self.text, &self.before, plan).unwrap_or_else(|| plan::write(plan))
    }
}

/// The whole of it. `resume`: whether to offer unfinished plans.
fn hold(
    prompter: &mut dyn Prompter,
    resume: bool,
    file: Option<&Path>,
    words: &Words,
) -> Result<Done, Failure> {
    let drafts = std::env::var_os(DATA)
        .filter(|folder| !folder.is_empty())
        .map(|folder| Drafts::at(Path::new(&folder)))
        .or_else(Drafts::usual)
        .ok_or_else(|| Failure::text(Kind::CannotWrite, words.text("interview-no-home")))?;
    let asked = file.map(|path| Edited::open(path, words)).transpose()?;
    let opened = match &asked {
        Some(edited) => open_file(prompter, &drafts, edited, words)?,
        None => open(prompter, &drafts, resume, words)?,
    };
    let (kept, mut draft) = match opened {
        Opened::Draft(kept, draft) => (kept, draft),
        Opened::Stopped(stopped) => return Ok(stopped),
    };
    // A draft of changes to a file goes on with that file.
    let edited = match (asked, &draft.plan) {
        (None, Some(path)) => Some(Edited::open(Path::new(path), words)?),
        (asked, _) => asked,
    };
    let mut kept = Keeper {
        kept,
        unchanged: edited.as_ref().map(|edited| edited.draft.answers.clone()),
    };
    watch_interrupts(&draft.name, words);
    let mut before = None;
    loop {
        let outcome = interview::run(prompter, &mut kept, words, draft)
            .map_err(|error| broken(&error, words))?;
        let plan = match outcome {
            Outcome::Finished { plan, draft: now } => {
                draft = now;
                *plan
            }
            Outcome::Interrupted { draft } => {
                return Err(stopped(&draft, Kind::Interrupted, words));
            }
            Outcome::Quit { draft } => return Ok(left(&draft, words)),
        };
        let text = match &edited {
            Some(edited) => edited.changed(&plan),
            None => plan::write(&plan),
        };
        // A plan that this program made and cannot read back would be its own fault; better
        // said now than found at the camp.
        let plan = plan::read(&text).map_err(|problems| {
            prints::bad_plan(&problems, &text, Path::new("plan.toml"), words)
        })?;
        let report = report::build(&plan);
        say(&check::text(&report, words))?;
        let count = words.count(&report);
        if let Some(before) = before
            .replace(count.clone())
            .filter(|before| *before != count)
        {
            say(&format!(
                "{}\n",
                words.with("interview-effect", [("before", before.into())])
            ))?;
        }
        match after(prompter, &plan, edited.as_ref(), words)? {
            After::Change => {}
            After::Leave => return Ok(left(&draft.name, words)),
            After::Interrupted => return Err(stopped(&draft.name, Kind::Interrupted, words)),
            After::Ended => {
                return Ok(Done {
                    output: String::new(),
                    status: check::status(report.worst()),
                });
            }
            After::Save(path) => {
                store::write_atomic(&path, text.as_bytes())
                    .map_err(|error| prints::stored(&error, Kind::CannotWrite, words))?;
                kept.kept
                    .0
                    .remove()
                    .map_err(|error| prints::stored(&error, Kind::CannotWrite, words))?;
                let path = path.display().to_string();
                let saved = words.with("interview-saved", [("path", path.into())]);
                return Ok(Done::saying(saved + "\n"));
            }
            After::Print(into) => {
                let done = print(&into, &plan, &text, &report, words)?;
                if let Some(edited) = &edited {
                    store::write_atomic(&edited.path, text.as_bytes())
                        .map_err(|error| prints::stored(&error, Kind::CannotWrite, words))?;
                }
                // The plan file holds all of it now.
                let draft = kept.kept.0;
                draft
                    .remove()
                    .map_err(|error| prints::stored(&error, Kind::CannotWrite, words))?;
                return Ok(done);
            }
        }
    }
}

/// Says what Ctrl-C at a question says when it comes between questions, where it is a signal.
fn watch_interrupts(draft: &str, words: &Words) {
    #[cfg(unix)]
    {
        use signal_hook::consts::SIGINT;
        let failure = stopped(draft, Kind::Interrupted, words);
        // Without it, Ctrl-C still ends the program, and the answers are kept all the same.
        if let Ok(mut signals) = signal_hook::iterator::Signals::new([SIGINT]) {
            let message = failure.shown(words);
            std::thread::spawn(move || {
                if signals.forever().next().is_some() {
                    let _ = io::Write::write_all(&mut anstream::stderr(), message.as_bytes());
                    std::process::exit(130);
                }
            });
        }
    }
    #[cfg(not(unix))]
    let _ = (draft, words);
}

/// Keeps the draft, but for one that changes nothing in the plan file it was made from.
struct Keeper {
    kept: Kept,
    unchanged: Option<BTreeMap<String, Said>>,
}

impl Keep for Keeper {
    fn keep(&mut self, draft: &Draft) -> io::Result<()> {
        if self.unchanged.as_ref() == Some(&draft.answers) {
            return Ok(());
        }
        self.unchanged = None;
        self.kept.keep(draft)
    }
}

/// A draft on disk.
struct Kept(store::Draft);

impl Keep for Kept {
    fn keep(&mut self, draft: &Draft) -> io::Result<()> {
        self.0.save(&draft.to_text()).map_err(io::Error::other)
    }
}

enum Opened {
    Draft(Kept, Draft),
    Stopped(Done),
}

/// Goes on with changes to a file that were not saved, else begins with what is in it.
fn open_file(
    prompter: &mut dyn Prompter,
    drafts: &Drafts,
    edited: &Edited,
    words: &Words,
) -> Result<Opened, Failure> {
    let fail = |error: &StoreError| prints::stored(error, Kind::CannotWrite, words);
    for entry in drafts.list().map_err(|error| fail(&error))? {
        // As in `open`: what another run has, or nobody can read, is left alone.
        let Ok(kept) = drafts.open(&entry.name) else {
            continue;
        };
        let Some(mut draft) = kept
            .load()
            .ok()
            .flatten()
            .and_then(|text| Draft::from_text(&text).ok())
        else {
            continue;
        };
        if draft.plan == edited.draft.plan {
            entry.name.as_str().clone_into(&mut draft.name);
            prompter
                .tell(&words.text("interview-goes-on"))
                .map_err(|error| Failure::new(Kind::CannotWrite, error))?;
            return Ok(Opened::Draft(Kept(kept), draft));
        }
    }
    let stem = edited
        .path
        .file_stem()
        .unwrap_or_default()
        .to_string_lossy();
    let stem = Id::new(&interview::stem(&stem))
        .ok_or_else(|| Failure::text(Kind::CannotWrite, STEM.into()))?;
    let name = drafts.free_name(&stem).map_err(|error| fail(&error))?;
    let kept = drafts.open(&name).map_err(|error| fail(&error))?;
    let mut draft = edited.draft.clone();
    name.as_str().clone_into(&mut draft.name);
    Ok(Opened::Draft(Kept(kept), draft))
}

/// Offers to go on with an unfinished plan, else begins a new one.
fn open(
    prompter: &mut dyn Prompter,
    drafts: &Drafts,
    resume: bool,
    words: &Words,
) -> Result<Opened, Failure> {
    let fail = |error: &StoreError| prints::stored(error, Kind::CannotWrite, words);
    let begin = || {
        let stem = Id::new(STEM).ok_or_else(|| Failure::text(Kind::CannotWrite, STEM.into()))?;
        let name = drafts.free_name(&stem).map_err(|error| fail(&error))?;
        let kept = drafts.open(&name).map_err(|error| fail(&error))?;
        Ok(Opened::Draft(Kept(kept), Draft::new(name.as_str())))
    };
    let mut unfinished = Vec::new();
    for entry in drafts.list().map_err(|error| fail(&error))? {
        if !resume {
            break;
        }
        // One that another run has open, or that cannot be read, is left alone.
        let Ok(kept) = drafts.open(&entry.name) else {
            continue;
        };
        let Ok(Some(text)) = kept.load() else {
            continue;
        };
        let Ok(mut draft) = Draft::from_text(&text) else {
            continue;
        };
        entry.name.as_str().clone_into(&mut draft.name);
        if draft.answers.is_empty() {
            // Left before the first answer: nothing to go on with, so nothing to pile up.
            kept.remove().map_err(|error| fail(&error))?;
        } else {
            unfinished.push((kept, draft, entry.saved));
        }
    }
    if unfinished.is_empty() {
        return begin();
    }
    let mut rows: Vec<Row> = unfinished
        .iter()
        .enumerate()
        .map(|(at, (_, draft, saved))| Row {
            text: words.with(
                "interview-resume-row",
                [
                    ("draft", draft.name.as_str().into()),
                    ("name", called(draft).into()),
                    ("count", draft.answers.len().into()),
                    ("age", age(*saved, words).into()),
                ],
            ),
            also: String::new(),
            input: Input::Answer(at.to_string()),
        })
        .collect();
    rows.push(Row {
        text: words.text("interview-resume-new"),
        also: String::new(),
        input: Input::Skip,
    });
    let view = View {
        progress: String::new(),
        question: words.text("interview-resume-question"),
        why: words.text("interview-resume-why"),
        shape: Shape::List {
            rows,
            start: Some(0),
        },
    };
    match prompter.ask(&view) {
        Ok(Input::Answer(at)) => {
            let at = at.parse::<usize>().unwrap_or(0).min(unfinished.len() - 1);
            let (kept, draft, _) = unfinished.swap_remove(at);
            Ok(Opened::Draft(Kept(kept), draft))
        }
        Ok(Input::Back) | Err(PromptError::Ended) => Ok(Opened::Stopped(Done {
            output: String::new(),
            status: 0,
        })),
        Ok(_) => begin(),
        Err(PromptError::Interrupted) => Err(Failure::text(
            Kind::Interrupted,
            words.text("interview-stopped"),
        )),
        Err(error) => Err(Failure::new(Kind::CannotWrite, error)),
    }
}

/// How long ago a draft was saved.
fn age(saved: Option<SystemTime>, words: &Words) -> String {
    let minutes = saved
        .and_then(|saved| saved.elapsed().ok())
        .map_or(0, |passed| passed.as_secs() / 60);
    let (key, count) = match minutes {
        0..60 => ("interview-age-minutes", minutes),
        60..1440 => ("interview-age-hours", minutes / 60),
        _ => ("interview-age-days", minutes / 1440),
    };
    words.with(key, [("count", count.into())])
}

/// What the user calls the weekend or the set of a draft, or else how large the set is.
fn called(draft: &Draft) -> String {
    ["site.name", "generator.name", "generator.rated"]
        .into_iter()
        .filter_map(|key| draft.answers.get(key).and_then(Said::text))
        .find(|text| !text.starts_with('@'))
        .unwrap_or_default()
        .to_owned()
}

enum After {
    Save(PathBuf),
    Print(PathBuf),
    Change,
    Leave,
    Interrupted,
    Ended,
}

/// What to do with a plan that has been checked.
fn after(
    prompter: &mut dyn Prompter,
    plan: &Plan,
    edited: Option<&Edited>,
    words: &Words,
) -> Result<After, Failure> {
    let row = |key: &str, value: &str| Row {
        text: words.text(key),
        also: String::new(),
        input: Input::Answer(value.to_owned()),
    };
    let mut rows = vec![
        row("interview-after-print", "print"),
        row("interview-after-change", "change"),
        row("interview-after-leave", "leave"),
    ];
    if edited.is_some() {
        rows.insert(0, row("interview-after-save", "save"));
    }
    let what = View {
        progress: String::new(),
        question: words.text("interview-after"),
        why: words.text("interview-after.why"),
        shape: Shape::List {
            rows,
            start: Some(0),
        },
    };
    loop {
        match ask(prompter, &what)? {
            Answered::Ended => return Ok(After::Ended),
            Answered::Interrupted => return Ok(After::Interrupted),
            Answered::Input(Input::Back) => return Ok(After::Change),
            Answered::Input(Input::Answer(value)) => match value.as_str() {
                "print" => {}
                "save" => {
                    if let Some(edited) = edited {
                        return Ok(After::Save(edited.path.clone()));
                    }
                }
                "change" => return Ok(After::Change),
                "leave" => return Ok(After::Leave),
                _ => continue,
            },
            Answered::Input(_) => continue,
        }
        let usual = format!("tallywatt-{}", interview::stem(&plan.site.name));
        let folder = View {
            progress: String::new(),
            question: words.text("interview-folder"),
            why: words.text("interview-folder.why"),
            shape: Shape::Line {
                default: Some(usual.clone()),
                hint: words.text("hint-back"),
                spoken: Vec::new(),
            },
        };
        loop {
            let into = match ask(prompter, &folder)? {
                Answered::Ended => return Ok(After::Ended),
                Answered::Interrupted => return Ok(After::Interrupted),
                Answered::Input(Input::Back) => break,
                Answered::Input(Input::Answer(text)) if !text.is_empty() => PathBuf::from(text),
                Answered::Input(_) => PathBuf::from(&usual),
            };
            // Another plan may live there, and writing would lose it.
            let own = edited.is_some_and(|edited| {
                let own = std::fs::canonicalize(&edited.path);
                own.is_ok_and(|own| {
                    std::fs::canonicalize(into.join("plan.toml")).is_ok_and(|other| own == other)
                })
            });
            if !own && into.join("plan.toml").exists() || into.is_file() {
                let path = into.display().to_string();
                prompter
                    .tell(&words.with("interview-folder-taken", [("dir", path.into())]))
                    .map_err(|error| Failure::new(Kind::CannotWrite, error))?;
                continue;
            }
            return Ok(After::Print(into));
        }
    }
}

enum Answered {
    Input(Input),
    Interrupted,
    Ended,
}

fn ask(prompter: &mut dyn Prompter, view: &View) -> Result<Answered, Failure> {
    match prompter.ask(view) {
        Ok(input) => Ok(Answered::Input(input)),
        Err(PromptError::Interrupted) => Ok(Answered::Interrupted),
        Err(PromptError::Ended) => Ok(Answered::Ended),
        Err(error) => Err(Failure::new(Kind::CannotWrite, error)),
    }
}

/// The prints, the report and the plan in one folder.
fn print(
    into: &Path,
    plan: &Plan,
    text: &str,
    report: &Report,
    words: &Words,
) -> Result<Done, Failure> {
    let mut files = prints::render(plan, report, words, &prints::defaults())?;
    let json = report
        .to_json()
        .map_err(|error| Failure::new(Kind::CannotWrite, error))?;
    files.push(("report.json".to_owned(), (json + "\n").into_bytes()));
    files.push(("plan.toml".to_owned(), text.as_bytes().to_vec()));
    store::write_set(into, files.iter().map(|(name, bytes)| (name, bytes)))
        .map_err(|error| prints::stored(&error, Kind::CannotWrite, words))?;
    let shown = std::path::absolute(into).unwrap_or_else(|_| into.to_owned());
    let mut output = words.with("print-wrote", [("dir", shown.display().to_string().into())]);
    for (name, _) in &files {
        output.push_str("\n  ");
        output.push_str(name);
    }
    output.push('\n');
    Ok(Done::saying(output))
}

fn broken(error: &InterviewError, words: &Words) -> Failure {
    match error {
        InterviewError::Keep(error) => {
            let inner = error
                .get_ref()
                .and_then(|inner| inner.downcast_ref::<StoreError>());
            inner.map_or_else(
                || Failure::text(Kind::CannotWrite, error.to_string()),
                |inner| prints::stored(inner, Kind::CannotWrite, words),
            )
        }
        error => Failure::text(Kind::CannotWrite, error.to_string()),
    }
}

fn stopped(draft: &str, kind: Kind, words: &Words) -> Failure {
    Failure::text(
        kind,
        words.with("interview-kept", [("draft", draft.to_owned().into())]),
    )
    .hint(words.text("interview-resume"))
}

fn left(draft: &str, words: &Words) -> Done {
    Done::saying(format!(
        "{}\n{}\n",
        words.with("interview-kept", [("draft", draft.to_owned().into())]),
        words.text("interview-resume")
    ))
}

//! Drafts on disk: which one to resume, and saving each answer.

use std::collections::BTreeMap;
use std::io;
use std::time::SystemTime;

use tallywatt::interview::{self, Draft, Input, Keep, Row, Said, Shape, View};
use tallywatt::plan::Id;
use tallywatt::plan::store::{self, Drafts};
use tallywatt::words::{Words, problem};

use super::edited::Edited;
use super::interrupt;
use super::{Answered, Asker, STEM};
use crate::cli::failure::{Failure, Kind};
use crate::cli::{Done, clock, prints};

/// Saves the draft after each answer, but not before the first change to the plan file it was made from.
pub(super) struct Keeper<'a> {
    pub(super) kept: Kept,
    pub(super) unchanged: Option<BTreeMap<String, Said>>,
    /// The message for an interrupt between questions.
    pub(super) breaking_off: interrupt::Said,
    pub(super) words: &'a Words,
}

impl Keep for Keeper<'_> {
    fn keep(&mut self, draft: &Draft) -> io::Result<()> {
        if self.unchanged.as_ref() == Some(&draft.answers) {
            return Ok(());
        }
        self.unchanged = None;
        let kept = self.kept.keep(draft);
        let stopped = super::stopped(&draft.name, &self.kept, self.words);
        self.breaking_off.set(stopped.shown(self.words));
        kept
    }
}

/// A draft on disk. `draft` is `None` where drafts cannot be stored.
pub(super) struct Kept {
    draft: Option<store::Draft>,
    /// Whether the last save failed.
    behind: bool,
    /// Whether there are answers that the plan file may lack.
    holds: bool,
    /// Whether a failed save was reported.
    told: bool,
}

impl Kept {
    const fn of(draft: Option<store::Draft>) -> Self {
        Self { draft, behind: false, holds: false, told: false }
    }

    /// Removes the draft, because the plan file holds all of it.
    pub(super) fn remove(self, words: &Words) -> Result<(), Failure> {
        let Some(draft) = self.draft else {
            return Ok(());
        };
        draft.remove().map_err(|error| prints::stored(&error, Kind::CannotWrite, words))
    }

    /// Whether every answer is on disk.
    pub(super) const fn is_kept(&self) -> bool {
        self.draft.is_some() && !self.behind
    }

    /// Whether no answer needs keeping: there are none, or the plan file holds them all.
    pub(super) const fn is_empty(&self) -> bool {
        !self.holds
    }

    /// Returns the name of the draft, or `stem` if there is no draft.
    fn name(&self, stem: &str) -> String {
        let name = self.draft.as_ref().map(|draft| draft.name().as_str());
        name.unwrap_or(stem).to_owned()
    }
}

impl Keep for Kept {
    /// Tries to save every answer, because a full disk may have room again. Reports only the first failure.
    fn keep(&mut self, draft: &Draft) -> io::Result<()> {
        self.holds = !draft.answers.is_empty();
        let Some(kept) = &self.draft else {
            return Ok(());
        };
        let saved = kept.save(&draft.to_text()).map_err(io::Error::other);
        self.behind = saved.is_err();
        match saved {
            Err(_) if std::mem::replace(&mut self.told, true) => Ok(()),
            saved => saved,
        }
    }
}

/// Begins a draft for this interview. Where there can be none, tells the user why.
fn begin(asker: &mut Asker<'_>, drafts: Option<&Drafts>, stem: &str) -> Result<Kept, Failure> {
    let words = asker.words;
    let begun = Id::new(stem).zip(drafts).map(|(stem, drafts)| drafts.begin(&stem));
    let reason = match begun {
        Some(Ok(draft)) => return Ok(Kept::of(Some(draft))),
        Some(Err(error)) => problem::store_title(words, &error),
        None => words.text("interview-no-home"),
    };
    asker.tell(&words.with("interview-not-kept", [("reason", reason.into())]))?;
    Ok(Kept::of(None))
}

pub(super) enum Opened {
    Draft(Kept, Draft),
    Stopped(Done),
}

/// Resumes unsaved changes to a plan file, or begins with the contents of the file.
pub(super) fn open_file(asker: &mut Asker<'_>, drafts: Option<&Drafts>, edited: &Edited) -> Result<Opened, Failure> {
    for (kept, draft, _) in unfinished(asker, drafts)? {
        if draft.plan == edited.draft.plan {
            asker.tell(&asker.words.text("interview-goes-on"))?;
            return Ok(Opened::Draft(Kept::of(Some(kept)), draft));
        }
    }
    let stem = edited.path.file_stem().unwrap_or_default();
    let stem = interview::stem(&stem.to_string_lossy());
    let kept = begin(asker, drafts, &stem)?;
    let mut draft = edited.draft.clone();
    draft.name = kept.name(&stem);
    Ok(Opened::Draft(kept, draft))
}

/// A draft that can be resumed, and when it was saved.
type Unfinished = (store::Draft, Draft, Option<SystemTime>);

/// Returns the drafts that can be resumed, last saved first. Skips drafts that another run has open, and reports and
/// skips those that cannot be read.
fn unfinished(asker: &mut Asker<'_>, drafts: Option<&Drafts>) -> Result<Vec<Unfinished>, Failure> {
    let mut unfinished = Vec::new();
    // Without a folder there are no drafts. `begin` reports why.
    let Some((drafts, all)) = drafts.and_then(|drafts| Some((drafts, drafts.list().ok()?))) else {
        return Ok(unfinished);
    };
    for entry in all {
        let Ok(kept) = drafts.open(&entry.name) else {
            continue;
        };
        let read = match kept.load() {
            Ok(None) => continue,
            Ok(Some(text)) => Draft::from_text(&text).ok(),
            Err(_) => None,
        };
        let Some(mut draft) = read else {
            let path = kept.path().display().to_string();
            let values = [("path", path.into())];
            asker.tell(&asker.words.with("interview-draft-lost", values))?;
            continue;
        };
        entry.name.as_str().clone_into(&mut draft.name);
        if draft.answers.is_empty() {
            // A draft without answers has nothing to resume, and would only pile up.
            let _ = kept.remove();
        } else {
            unfinished.push((kept, draft, entry.saved));
        }
    }
    Ok(unfinished)
}

/// Offers to resume an unfinished plan, or begins a new one.
pub(super) fn open(asker: &mut Asker<'_>, drafts: Option<&Drafts>, resume: bool) -> Result<Opened, Failure> {
    let words = asker.words;
    let new = |asker: &mut Asker<'_>| {
        let kept = begin(asker, drafts, STEM)?;
        let draft = Draft::new(kept.name(STEM));
        Ok(Opened::Draft(kept, draft))
    };
    let mut unfinished = if resume { unfinished(asker, drafts)? } else { Vec::new() };
    if unfinished.is_empty() {
        return new(asker);
    }
    // A typed number selects a row, so no value may be a number.
    let value = |draft: &Draft| format!("draft {}", draft.name);
    let row = |(_, draft, saved): &Unfinished| {
        let name = called(draft);
        let key = if name.is_empty() { "interview-resume-row-bare" } else { "interview-resume-row" };
        let date = saved.and_then(clock::date).unwrap_or_default();
        let age = saved.map(|saved| clock::age(saved, words));
        let values = [
            ("draft", draft.name.as_str().into()),
            ("date", date.into()),
            ("name", name.into()),
            ("age", age.unwrap_or_default().into()),
        ];
        Row::new(words.with(key, values), Input::Answer(value(draft)))
    };
    let mut rows: Vec<Row> = unfinished.iter().map(row).collect();
    rows.push(Row::new(words.text("interview-resume-new"), Input::Skip));
    let view = View::plain(
        words.text("interview-resume-question"),
        words.text("interview-resume-why"),
        Shape::List { rows, start: Some(0), marks: None },
    );
    // Asks until the answer is a row: the wrong plan would be noticed only many answers later.
    loop {
        let key = match asker.ask(&view)? {
            Answered::Input(Input::Answer(text)) => {
                let mut all = unfinished.iter();
                if let Some(at) = all.position(|(_, draft, _)| value(draft) == text) {
                    let (kept, draft, _) = unfinished.swap_remove(at);
                    return Ok(Opened::Draft(Kept::of(Some(kept)), draft));
                }
                "reject-choice"
            }
            Answered::Input(Input::Skip) => return new(asker),
            Answered::Input(Input::Explain) => "interview-resume-help",
            Answered::Input(Input::Back | Input::Quit) | Answered::Ended => {
                return Ok(Opened::Stopped(Done::saying(String::new())));
            }
            Answered::Input(Input::Unknown | Input::NotBought | Input::Picture) => "reject-choice",
            Answered::Interrupted => {
                let text = words.text("interview-stopped");
                return Err(Failure::text(Kind::Interrupted, text));
            }
        };
        asker.tell(&words.text(key))?;
    }
}

/// Returns what the user calls the weekend or the generator, or else the generator's rated power. Empty if none is
/// known.
fn called(draft: &Draft) -> String {
    ["site.name", "generator.name", "generator.rated"]
        .into_iter()
        .find_map(|key| draft.answers.get(key).and_then(Said::text))
        .unwrap_or_default()
        .to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// With a disk that is full for a while, the failure is reported once and later answers are saved.
    #[test]
    fn what_could_not_be_saved_is_tried_again_and_told_once() {
        let home = tempfile::tempdir().unwrap();
        let drafts = Drafts::at(home.path());
        let begun = drafts.begin(&Id::new("plan").unwrap()).unwrap();
        let file = begun.path().to_owned();
        let mut kept = Kept::of(Some(begun));
        let mut draft = Draft::new("plan");
        kept.keep(&draft).unwrap();
        // A file in place of the folder makes saving fail.
        std::fs::remove_dir_all(drafts.folder()).unwrap();
        store::write_new(drafts.folder(), b"").unwrap();
        let tries: Vec<bool> = (0..3).map(|_| kept.keep(&draft).is_err()).collect();
        assert_eq!(tries, [true, false, false]);
        assert!(!kept.is_kept());
        std::fs::remove_file(drafts.folder()).unwrap();
        std::fs::create_dir(drafts.folder()).unwrap();
        let said = Said::is("2800 W");
        draft.answers.insert("generator.rated".into(), said);
        kept.keep(&draft).unwrap();
        assert!(kept.is_kept());
        assert!(store::read_text(&file).unwrap().contains("2800 W"));
    }
}

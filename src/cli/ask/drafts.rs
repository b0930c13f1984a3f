//! Drafts on disk: which to go on with, and keeping each answer.

use std::collections::BTreeMap;
use std::io;
use std::time::{SystemTime, UNIX_EPOCH};

use tallywatt::interview::{
    self, Draft, Input, Keep, PromptError, Prompter, Row, Said, Shape, View,
};
use tallywatt::plan::Id;
use tallywatt::plan::store::{self, Drafts, StoreError};
use tallywatt::words::Words;

use super::STEM;
use super::edited::Edited;
use crate::cli::failure::{Failure, Kind};
use crate::cli::{Done, prints};

/// Keeps the draft, but for one that changes nothing in the plan file it was made from.
pub(super) struct Keeper {
    pub(super) kept: Kept,
    pub(super) unchanged: Option<BTreeMap<String, Said>>,
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
pub(super) struct Kept(store::Draft);

impl Kept {
    /// The plan file holds all of it now.
    pub(super) fn remove(self, words: &Words) -> Result<(), Failure> {
        self.0
            .remove()
            .map_err(|error| prints::stored(&error, Kind::CannotWrite, words))
    }
}

impl Keep for Kept {
    fn keep(&mut self, draft: &Draft) -> io::Result<()> {
        self.0.save(&draft.to_text()).map_err(io::Error::other)
    }
}

pub(super) enum Opened {
    Draft(Kept, Draft),
    Stopped(Done),
}

/// Goes on with changes to a file that were not saved, else begins with what is in it.
pub(super) fn open_file(
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
                .map_err(|error| super::terminal_failed(&error, words))?;
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
    let kept = drafts.begin(&stem).map_err(|error| fail(&error))?;
    let mut draft = edited.draft.clone();
    kept.name().as_str().clone_into(&mut draft.name);
    Ok(Opened::Draft(Kept(kept), draft))
}

/// A draft that may be gone on with, and when it was saved.
type Unfinished = (store::Draft, Draft, Option<SystemTime>);

/// The drafts that may be gone on with, the last saved first.
fn unfinished(drafts: &Drafts, words: &Words) -> Result<Vec<Unfinished>, Failure> {
    let fail = |error: &StoreError| prints::stored(error, Kind::CannotWrite, words);
    let mut unfinished = Vec::new();
    for entry in drafts.list().map_err(|error| fail(&error))? {
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
    Ok(unfinished)
}

/// Offers to go on with an unfinished plan, else begins a new one.
pub(super) fn open(
    prompter: &mut dyn Prompter,
    drafts: &Drafts,
    resume: bool,
    words: &Words,
) -> Result<Opened, Failure> {
    let fail = |error: &StoreError| prints::stored(error, Kind::CannotWrite, words);
    let begin = || {
        let stem = Id::new(STEM).ok_or_else(|| Failure::text(Kind::CannotWrite, STEM.into()))?;
        let kept = drafts.begin(&stem).map_err(|error| fail(&error))?;
        let draft = Draft::new(kept.name().as_str());
        Ok(Opened::Draft(Kept(kept), draft))
    };
    let mut unfinished = if resume {
        unfinished(drafts, words)?
    } else {
        Vec::new()
    };
    if unfinished.is_empty() {
        return begin();
    }
    // No value is a number, for a number typed is that of a row.
    let value = |draft: &Draft| format!("draft {}", draft.name);
    let mut rows: Vec<Row> = unfinished
        .iter()
        .map(|(_, draft, saved)| Row {
            text: {
                let name = called(draft);
                let key = if name.is_empty() {
                    "interview-resume-row-bare"
                } else {
                    "interview-resume-row"
                };
                words.with(
                    key,
                    [
                        ("draft", draft.name.as_str().into()),
                        ("date", saved.and_then(date).unwrap_or_default().into()),
                        ("name", name.into()),
                        ("age", age(*saved, words).into()),
                    ],
                )
            },
            also: String::new(),
            input: Input::Answer(value(draft)),
        })
        .collect();
    rows.push(Row {
        text: words.text("interview-resume-new"),
        also: String::new(),
        input: Input::Skip,
    });
    let view = View {
        progress: String::new(),
        dots: String::new(),
        question: words.text("interview-resume-question"),
        why: words.text("interview-resume-why"),
        shape: Shape::List {
            rows,
            start: Some(0),
            marks: None,
        },
        spoken: Vec::new(),
    };
    let failed = |error: &io::Error| super::terminal_failed(error, words);
    // Until a row is meant: going on with the wrong plan would be found out many answers later.
    loop {
        let key = match prompter.ask(&view) {
            Ok(Input::Answer(text)) => {
                let at = unfinished
                    .iter()
                    .position(|(_, draft, _)| value(draft) == text);
                if let Some(at) = at {
                    let (kept, draft, _) = unfinished.swap_remove(at);
                    return Ok(Opened::Draft(Kept(kept), draft));
                }
                "reject-choice"
            }
            Ok(Input::Skip) => return begin(),
            Ok(Input::Explain) => "interview-resume-help",
            Ok(Input::Back | Input::Quit) | Err(PromptError::Ended) => {
                return Ok(Opened::Stopped(Done {
                    output: String::new(),
                    status: 0,
                }));
            }
            Ok(Input::Unknown | Input::Picture) => "reject-choice",
            Err(PromptError::Interrupted) => {
                return Err(Failure::text(
                    Kind::Interrupted,
                    words.text("interview-stopped"),
                ));
            }
            Err(PromptError::Terminal(error)) => return Err(failed(&error)),
            Err(error) => return Err(super::because("interview-terminal", &error, words)),
        };
        prompter
            .tell(&words.text(key))
            .map_err(|error| failed(&error))?;
    }
}

/// How long ago a draft was saved.
#[allow(clippy::disallowed_methods)] // the shell tells how old a draft is
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

/// The day a draft was saved, as ISO 8601 writes it in every language: `2001-09-09`. It is the
/// day in UTC, for the standard library knows no time zones, so late in an evening it may be the
/// next; how long ago it was stands beside it. `None` before 1970.
pub(in crate::cli) fn date(saved: SystemTime) -> Option<String> {
    let seconds = saved.duration_since(UNIX_EPOCH).ok()?.as_secs();
    let (year, month, day) = civil(seconds / 86_400);
    Some(format!("{year:04}-{month:02}-{day:02}"))
}

/// Year, month and day of the Gregorian calendar, so many days after 1970-01-01.
///
/// Years are counted from March, so that the day a leap year adds is the last of its year, and
/// the months before it have lengths that repeat: 153 days in five of them. A cycle of 400 years
/// has 146,097 days; 719,468 are from 0000-03-01 to 1970-01-01.
const fn civil(days: u64) -> (u64, u64, u64) {
    let days = days + 719_468;
    let in_cycle = days % 146_097;
    let year_of_cycle = (in_cycle - in_cycle / 1460 + in_cycle / 36_524 - in_cycle / 146_096) / 365;
    let in_year = in_cycle - (365 * year_of_cycle + year_of_cycle / 4 - year_of_cycle / 100);
    let from_march = (5 * in_year + 2) / 153;
    let day = in_year - (153 * from_march + 2) / 5 + 1;
    let month = if from_march < 10 {
        from_march + 3
    } else {
        from_march - 9
    };
    let year = days / 146_097 * 400 + year_of_cycle + (month <= 2) as u64;
    (year, month, day)
}

/// What the user calls the weekend or the set of a draft, or else how large the set is.
fn called(draft: &Draft) -> String {
    ["site.name", "generator.name", "generator.rated"]
        .into_iter()
        .find_map(|key| draft.answers.get(key).and_then(Said::text))
        .unwrap_or_default()
        .to_owned()
}

#[cfg(test)]
mod tests {
    use std::time::Duration;

    use super::*;

    /// As `date -u -d @SECONDS +%F` of GNU coreutils prints them.
    #[test]
    fn days_of_known_seconds() {
        for (seconds, day) in [
            (0, "1970-01-01"),
            (951_782_399, "2000-02-28"),
            (951_782_400, "2000-02-29"),
            (951_868_800, "2000-03-01"),
            (1_000_000_000, "2001-09-09"),
            (1_234_567_890, "2009-02-13"),
            (1_798_761_599, "2026-12-31"),
            (2_147_483_648, "2038-01-19"),
            (4_107_456_000, "2100-02-28"),
            (4_107_542_400, "2100-03-01"),
        ] {
            let saved = UNIX_EPOCH + Duration::from_secs(seconds);
            assert_eq!(date(saved).as_deref(), Some(day), "{seconds}");
        }
        assert_eq!(date(UNIX_EPOCH - Duration::from_secs(1)), None);
    }

    /// Day after day for 800 years, by the lengths of the months.
    #[test]
    fn no_day_is_left_out_or_comes_twice() {
        let (mut year, mut month, mut day) = (1970, 1, 1);
        for days in 0..292_194 {
            assert_eq!(civil(days), (year, month, day));
            let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
            let length = match month {
                2 if leap => 29,
                2 => 28,
                4 | 6 | 9 | 11 => 30,
                _ => 31,
            };
            day += 1;
            if day > length {
                (month, day) = (month + 1, 1);
            }
            if month > 12 {
                (year, month) = (year + 1, 1);
            }
        }
    }
}

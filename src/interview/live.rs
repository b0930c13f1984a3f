//! What can be told while the answers still come: dangers that they make certain, and a picture
//! of what is plugged into what.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use super::build;
use super::draft::Draft;
use crate::judge;
use crate::plan::{Answer, Ground, Id, Plan, Stands};
use crate::quantity::Length;
use crate::report::{Finding, Report, Signal};
use crate::words::{Show, Words};

/// Far enough for exhaust, until the distance has been asked.
const NOT_ASKED_YET: Length = Length::from_millimetres(1_000_000);

/// The dangers that are certain from the answers so far. What has not been asked yet is taken
/// for harmless here, and only here: a danger that hangs on a question to come is told when that
/// is answered. `unfinished` are the ids of parts whose questions are not all answered.
///
/// `judge` makes the report: [`judge::judge`] is enough to see what has changed; [`judge::build`] tells what
/// a danger rests on as well, and takes longer.
pub(super) fn dangers(
    draft: &Draft,
    unfinished: &BTreeSet<String>,
    judge: fn(&Plan) -> Report,
) -> Vec<Finding> {
    let mut plan = build::plan(draft, &|key| key.to_owned());
    forget(&mut plan, unfinished);
    let site = &mut plan.site;
    harmless(&mut site.ground, Ground::Dry);
    harmless(&mut site.sleepers_at, NOT_ASKED_YET);
    harmless(&mut site.co_alarm, true);
    harmless(&mut site.feeds_building, false);
    harmless(&mut site.stands, Stands::Open);
    if let Some(parallel) = &mut plan.generator.parallel {
        harmless(&mut parallel.kit, true);
    }
    for outlet in &mut plan.generator.outlets {
        harmless(&mut outlet.breaker, outlet.shape.0.rating());
        harmless(&mut outlet.gfci, true);
    }
    let mut findings = judge(&plan).findings;
    findings.retain(|finding| finding.signal == Signal::Danger);
    findings
}

fn harmless<T>(answer: &mut Answer<T>, value: T) {
    if matches!(answer, Answer::Missing) {
        *answer = Answer::Known(value);
    }
}

/// Takes parts out, and unplugs what is plugged into them.
fn forget(plan: &mut Plan, ids: &BTreeSet<String>) {
    let gone = |id: &Id| {
        let id = id.as_str();
        ids.contains(id) || id.split_once('.').is_some_and(|(id, _)| ids.contains(id))
    };
    let mut places: BTreeSet<String> = ids.clone();
    for holder in plan.boxes.iter().filter(|holder| gone(&holder.id)) {
        places.extend(holder.outlets.iter().map(|outlet| outlet.id.to_string()));
    }
    plan.cords.retain(|cord| !gone(&cord.id));
    plan.boxes.retain(|holder| !gone(&holder.id));
    plan.loads.retain(|load| !gone(&load.id));
    let gone = |id: &Id| {
        let id = id.as_str();
        places.contains(id)
            || id
                .split_once('.')
                .is_some_and(|(id, _)| places.contains(id))
    };
    let feeds = plan.cords.iter_mut().map(|cord| &mut cord.from);
    let feeds = feeds.chain(plan.boxes.iter_mut().map(|holder| &mut holder.from));
    for feed in feeds.chain(plan.loads.iter_mut().map(|load| &mut load.on)) {
        if feed.as_ref().is_some_and(gone) {
            *feed = None;
        }
    }
}

/// The dangers that have been told.
#[derive(Debug, Default)]
pub(super) struct Told(Vec<Finding>);

/// What became of a danger.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum News {
    /// It was not there before.
    New(Finding),
    /// It was there, and now names more parts.
    Also(Finding),
    /// It is there no longer.
    Gone(Finding),
}

impl Told {
    /// Puts in what each danger rests on, from the same dangers worked out in full.
    pub(super) fn in_full(news: &mut [News], full: &[Finding]) {
        for news in news {
            if let News::New(finding) | News::Also(finding) = news {
                let same = |it: &&Finding| (it.code, &it.about) == (finding.code, &finding.about);
                if let Some(full) = full.iter().find(same) {
                    *finding = full.clone();
                }
            }
        }
    }

    pub(super) const fn already(dangers: Vec<Finding>) -> Self {
        Self(dangers)
    }

    /// Takes what is dangerous now; gives what has changed. While questions are still to come
    /// (`open`), none is told to be gone: the next answer may bring it back.
    pub(super) fn update(&mut self, now: Vec<Finding>, open: bool) -> Vec<News> {
        let alike = |one: &Finding, other: &Finding| one.code == other.code;
        let mut news = Vec::new();
        for finding in &now {
            let before: Vec<&Finding> = self.0.iter().filter(|old| alike(old, finding)).collect();
            let known = |id: &Id| before.iter().any(|old| old.about.contains(id));
            if before.is_empty() {
                news.push(News::New(finding.clone()));
            } else if !finding.about.iter().all(known) {
                news.push(News::Also(finding.clone()));
            }
        }
        let before = std::mem::replace(&mut self.0, now);
        for old in before {
            match self.0.iter_mut().find(|finding| alike(finding, &old)) {
                // Those parts too that it named before.
                Some(finding) if open => {
                    let more = old.about.into_iter();
                    let more: Vec<Id> = more.filter(|id| !finding.about.contains(id)).collect();
                    finding.about.extend(more);
                }
                Some(_) => {}
                None if open => self.0.push(old),
                None => news.push(News::Gone(old)),
            }
        }
        news
    }
}

/// The line of the review page that a field of the plan stands on, if any answer would tell it; `line_of` finds the
/// line of a part's id.
pub(super) fn line(field: &str, line_of: impl Fn(&str) -> Option<String>) -> Option<String> {
    let mut parts = field.split('.');
    match (parts.next()?, parts.next()?) {
        ("site", _) => Some("site".into()),
        ("generator", "outlet") => {
            let id = parts.next()?;
            if parts.next() == Some("gfci") {
                Some("outlets".into())
            } else {
                line_of(id)
            }
        }
        // What full load adds to the noise: no answer would tell.
        ("generator", "noise") if parts.next() == Some("full_load") => None,
        ("generator", "fuel" | "rated_on" | "tank" | "runtime" | "noise") => Some("fuel".into()),
        ("generator", _) => Some("generator".into()),
        ("box", id) => match parts.next() {
            Some("outlet") => line_of(parts.next()?),
            _ => line_of(id),
        },
        (_, id) => line_of(id),
    }
}

/// What is plugged into what so far, each place with what it can carry, and what would stand
/// there. One line each, so that it can be read aloud too.
pub(super) fn picture(words: &Words, plan: &Plan) -> String {
    let report = judge::judge(plan);
    let mut out = words.with(
        "picture-set",
        [("name", plan.generator.name.as_str().into())],
    );
    let ids: BTreeSet<&Id> = report
        .figures
        .limits
        .iter()
        .map(|limit| &limit.id)
        .collect();
    for limit in &report.figures.limits {
        let places = limit.path.iter().filter(|id| ids.contains(id)).count();
        let indent = "  ".repeat(places.max(1));
        let amps = words.amount(limit.short_amps, Show::Capacity);
        let line = words.with(
            if report.refused(&limit.id).is_some() {
                "picture-refused"
            } else if report.guarded(&limit.id).is_some() && report.guarded_ahead(&limit.id) {
                "picture-guarded-ahead"
            } else if report.guarded(&limit.id).is_some() {
                "picture-guarded"
            } else {
                "picture-place"
            },
            [
                ("id", limit.id.as_str().into()),
                ("shape", limit.told_shape().into()),
                ("amps", amps.into()),
            ],
        );
        let _ = write!(out, "\n{indent}{line}");
        for placed in &report.figures.sharing.placed {
            if placed.at == limit.id {
                let line = words.with("picture-load", [("load", placed.load.as_str().into())]);
                let _ = write!(out, "\n{indent}  {line}");
            }
        }
    }
    let unplaced = &report.figures.sharing.unplaced;
    if !unplaced.is_empty() {
        let loads: Vec<&str> = unplaced.iter().map(|load| load.load.as_str()).collect();
        let line = words.with("picture-unplaced", [("ids", words.list(&loads).into())]);
        let _ = write!(out, "\n{line}");
    }
    let loose: Vec<&str> = plan
        .cords
        .iter()
        .filter(|cord| cord.from.is_none())
        .map(|cord| cord.id.as_str())
        .chain(
            plan.boxes
                .iter()
                .filter(|holder| holder.from.is_none())
                .map(|holder| holder.id.as_str()),
        )
        .collect();
    if !loose.is_empty() {
        let line = words.with("picture-loose", [("ids", words.list(&loose).into())]);
        let _ = write!(out, "\n{line}");
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::interview::Said;

    fn draft(answers: &[(&str, &str)]) -> Draft {
        let mut draft = Draft::new("t");
        for (key, text) in answers {
            draft.answers.insert((*key).into(), Said::is(*text));
        }
        draft
    }

    fn codes(draft: &Draft, unfinished: &[&str]) -> Vec<&'static str> {
        let unfinished = unfinished.iter().map(|id| (*id).to_owned()).collect();
        dangers(draft, &unfinished, judge::judge)
            .iter()
            .map(|found| found.code)
            .collect()
    }

    #[test]
    fn what_is_not_asked_yet_is_no_danger_and_what_is_answered_is() {
        let mut answers = vec![
            ("generator.rated", "2800 W"),
            ("generator.voltage", "120"),
            ("outlet.1.face", "5-20R"),
            ("outlet.1.breaker", "20 A"),
            ("outlet.2.face", "done"),
        ];
        assert_eq!(codes(&draft(&answers), &[]), Vec::<&str>::new());
        answers.push(("outlets.gfci", "none"));
        answers.push(("load.1.what", "kettle"));
        answers.push(("load.2.what", "done"));
        assert_eq!(codes(&draft(&answers), &[]), Vec::<&str>::new());
        answers.push(("site.ground", "wet"));
        assert_eq!(codes(&draft(&answers), &[]), ["SHOCK001"]);
        answers.push(("site.feeds_building", "yes"));
        assert_eq!(codes(&draft(&answers), &[]).len(), 2);
    }

    #[test]
    fn a_part_that_is_being_asked_about_is_left_out() {
        let answers = [
            ("generator.rated", "2800 W"),
            ("generator.voltage", "120"),
            ("outlet.1.face", "L5-30R"),
            ("outlet.1.breaker", "30 A"),
            ("outlets.gfci", "all"),
            ("gear.1.what", "split-30"),
        ];
        assert_eq!(codes(&draft(&answers), &["cord1"]), Vec::<&str>::new());
        // A splitter without breakers behind 30 A.
        assert_eq!(codes(&draft(&answers), &[]), ["OVER001"]);
    }

    #[test]
    fn a_danger_is_told_once_and_again_when_it_is_gone() {
        let with = draft(&[("site.feeds_building", "yes")]);
        let without = draft(&[("site.feeds_building", "no")]);
        let none = BTreeSet::new();
        let mut told = Told::default();
        assert!(matches!(
            told.update(dangers(&with, &none, judge::judge), false)[..],
            [News::New(_)]
        ));
        assert_eq!(told.update(dangers(&with, &none, judge::judge), false), []);
        assert!(matches!(
            told.update(dangers(&without, &none, judge::judge), false)[..],
            [News::Gone(_)]
        ));
        // While there are questions, it may come back: it is neither gone nor told as new again.
        told.update(dangers(&with, &none, judge::judge), true);
        assert_eq!(
            told.update(dangers(&without, &none, judge::judge), true),
            []
        );
        assert_eq!(told.update(dangers(&with, &none, judge::judge), true), []);
        told.update(dangers(&without, &none, judge::judge), true);
        assert!(matches!(
            told.update(dangers(&without, &none, judge::judge), false)[..],
            [News::Gone(_)]
        ));
    }
}

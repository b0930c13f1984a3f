//! What can be shown while answers come in: dangers that are certain by now, and a picture of what is plugged into
//! what.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use super::build;
use super::draft::Draft;
use crate::judge;
use crate::plan::{Answer, Ground, Id, Plan, Stands};
use crate::quantity::Length;
use crate::report::{Finding, Report, Signal};
use crate::words::{Show, Words};

/// A distance that is safe for exhaust, assumed until the distance is asked.
const NOT_ASKED_YET: Length = Length::from_millimetres(1_000_000);

/// The codes of exhaust findings, which are shown even below the danger signal.
const EXHAUST: [&str; 3] = ["AIR001", "AIR002", "AIR003"];

/// Returns the dangers that the answers so far make certain.
///
/// Only here, whatever has not been asked yet counts as harmless, so a danger that depends on a later question is shown
/// once that is answered. Parts in `unfinished` have open questions and are left out. A part that is not bought yet
/// counts as the right one.
///
/// `report` makes the report. [`judge::judge`] is enough to see what changed. [`judge::build`] also tells what each
/// danger rests on, and takes longer.
pub(super) fn dangers(draft: &Draft, unfinished: &BTreeSet<String>, report: fn(&Plan) -> Report) -> Vec<Finding> {
    let mut findings = findings(draft, unfinished, report);
    findings.retain(is_told);
    findings
}

/// Whether a finding is shown while answers come in.
fn is_told(finding: &Finding) -> bool {
    finding.signal == Signal::Danger || EXHAUST.contains(&finding.code)
}

/// Returns the same together with all milder findings.
pub(super) fn findings(draft: &Draft, unfinished: &BTreeSet<String>, report: fn(&Plan) -> Report) -> Vec<Finding> {
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
        harmless(&mut plan.generator.inverter, true);
    }
    for outlet in &mut plan.generator.outlets {
        harmless(&mut outlet.breaker, outlet.shape.0.rating());
        harmless(&mut outlet.gfci, true);
    }
    report(&judge::as_bought(&plan)).findings
}

fn harmless<T>(answer: &mut Answer<T>, value: T) {
    if matches!(answer, Answer::Missing) {
        *answer = Answer::Known(value);
    }
}

/// Removes parts, and unplugs what is plugged into them.
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
        places.contains(id) || id.split_once('.').is_some_and(|(id, _)| places.contains(id))
    };
    let feeds = plan.cords.iter_mut().map(|cord| &mut cord.from);
    let feeds = feeds.chain(plan.boxes.iter_mut().map(|holder| &mut holder.from));
    for feed in feeds.chain(plan.loads.iter_mut().map(|load| &mut load.on)) {
        if feed.as_ref().is_some_and(gone) {
            *feed = None;
        }
    }
}

/// The ids of the parts and loads.
#[derive(Debug, Default)]
pub(super) struct Parts {
    /// Those whose questions are all answered.
    pub(super) finished: BTreeSet<String>,
    /// The others, which are not in the plan yet.
    pub(super) waiting: BTreeSet<String>,
    /// The cords and boxes that the plan plugs in nowhere, or cannot, because nobody knows their shape.
    pub(super) unplugged: BTreeSet<Id>,
}

/// The dangers shown so far.
#[derive(Debug, Default)]
pub(super) struct Told {
    dangers: Vec<Finding>,
    /// The parts whose questions were all answered.
    finished: BTreeSet<String>,
}

/// A change to a danger.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum News {
    /// It is new.
    New(Finding),
    /// It was there, and now affects these parts too.
    Also(Finding, Vec<Id>),
    /// It is gone.
    Gone(Finding),
    /// It is not there now, only because these parts are not plugged in.
    Unplugged(Finding, Vec<Id>),
    /// It is no longer a danger, but still this milder finding.
    Milder(Finding),
}

impl Told {
    /// Replaces each new danger with its full version, which tells what it rests on.
    pub(super) fn in_full(news: &mut [News], full: &[Finding]) {
        for news in news {
            if let News::New(finding) | News::Also(finding, _) = news {
                let same = |it: &&Finding| (it.code, &it.about) == (finding.code, &finding.about);
                if let Some(full) = full.iter().find(same) {
                    *finding = full.clone();
                }
            }
        }
    }

    pub(super) fn already(dangers: Vec<Finding>, parts: Parts) -> Self {
        Self { dangers, finished: parts.finished }
    }

    /// Takes the current findings and returns what changed.
    ///
    /// While a finished part is being asked about again, it is out of the plan. No danger counts as gone then, since it
    /// may be missing only because of that part.
    pub(super) fn update(&mut self, now: Vec<Finding>, parts: Parts) -> Vec<News> {
        let (now, milder): (Vec<Finding>, Vec<Finding>) = now.into_iter().partition(is_told);
        let open = parts.waiting.iter().any(|id| self.finished.contains(id));
        self.finished.retain(|id| parts.waiting.contains(id));
        self.finished.extend(parts.finished);
        let alike = |one: &Finding, other: &Finding| one.code == other.code;
        let mut news = Vec::new();
        for finding in &now {
            // A caution that becomes a danger is shown again.
            let before = self.dangers.iter().filter(|old| old.signal <= finding.signal);
            let before: Vec<&Finding> = before.filter(|old| alike(old, finding)).collect();
            let known = |id: &Id| before.iter().any(|old| old.about.contains(id));
            let more = finding.about.iter().filter(|id| !known(id));
            let more: Vec<Id> = more.cloned().collect();
            if before.is_empty() {
                news.push(News::New(finding.clone()));
            } else if !more.is_empty() {
                news.push(News::Also(finding.clone(), more));
            }
        }
        let before = std::mem::replace(&mut self.dangers, now);
        for old in before {
            match self.dangers.iter_mut().find(|it| alike(it, &old)) {
                // Keep the parts it named before.
                Some(finding) if open => {
                    let more = old.about.into_iter();
                    let more: Vec<Id> = more.filter(|id| !finding.about.contains(id)).collect();
                    finding.about.extend(more);
                }
                None if open => self.dangers.push(old),
                None if old.signal == Signal::Danger => {
                    let left = |it: &&Finding| {
                        let same_parts = it.about.is_empty() || it.about.iter().any(|id| old.about.contains(id));
                        alike(it, &old) && same_parts && it.signal <= Signal::Caution
                    };
                    let left = milder.iter().find(left).cloned();
                    let out = old.about.iter().filter(|id| parts.unplugged.contains(id));
                    let out: Vec<Id> = out.cloned().collect();
                    news.push(match left {
                        Some(left) => News::Milder(left),
                        None if out.is_empty() => News::Gone(old),
                        None => News::Unplugged(old, out),
                    });
                }
                Some(_) | None => {}
            }
        }
        news
    }
}

/// Returns the review line that a plan field is on, or `None` if no answer could settle the field. `line_of` finds the
/// line of a part by its id.
pub(super) fn line(field: &str, line_of: impl Fn(&str) -> Option<String>) -> Option<String> {
    let mut parts = field.split('.');
    match (parts.next()?, parts.next()?) {
        ("site", _) => Some("site".into()),
        ("generator", "outlet") => {
            let id = parts.next()?;
            if parts.next() == Some("gfci") { Some("outlets".into()) } else { line_of(id) }
        }
        // What full load adds to the noise, which no answer settles.
        ("generator", "noise") if parts.next() == Some("full_load") => None,
        ("generator", "fuel" | "rated_on" | "tank" | "runtime" | "noise") => Some("fuel".into()),
        ("generator", _) => Some("generator".into()),
        ("box", id) => {
            let outlet = parts.next().filter(|part| *part == "outlet");
            line_of(outlet.and_then(|_| parts.next()).unwrap_or(id))
        }
        (_, id) => line_of(id),
    }
}

/// Returns a picture of what is plugged into what, with the current each place can carry and the loads that would be
/// there.
///
/// It has one place or load per line, so that it can be read aloud.
pub(super) fn picture(words: &Words, plan: &Plan) -> String {
    let report = judge::judge(plan);
    let mut out = words.with("picture-set", [("name", plan.generator.name.as_str().into())]);
    let ids: BTreeSet<&Id> = report.figures.limits.iter().map(|limit| &limit.id).collect();
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
            [("id", limit.id.as_str().into()), ("shape", limit.told_shape().into()), ("amps", amps.into())],
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
        .chain(plan.boxes.iter().filter(|holder| holder.from.is_none()).map(|holder| holder.id.as_str()))
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
    use crate::interview::{Machine, Said};

    fn draft(answers: &[(&str, &str)]) -> Draft {
        let mut draft = Draft::new("t");
        for (key, text) in answers {
            draft.answers.insert((*key).into(), Said::is(*text));
        }
        draft
    }

    fn codes(draft: &Draft, unfinished: &[&str]) -> Vec<&'static str> {
        let unfinished = unfinished.iter().map(|id| (*id).to_owned()).collect();
        dangers(draft, &unfinished, judge::judge).iter().map(|found| found.code).collect()
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
    fn a_part_that_is_being_asked_about_has_unknown_shape() {
        let answers = [
            ("generator.rated", "2800 W"),
            ("generator.voltage", "120"),
            ("outlet.1.face", "L5-30R"),
            ("outlet.1.breaker", "30 A"),
            ("outlets.gfci", "all"),
            ("gear.1.what", "split-30"),
        ];
        assert_eq!(codes(&draft(&answers), &["splitter"]), Vec::<&str>::new());
        // A splitter without breakers on a 30 A outlet.
        assert_eq!(codes(&draft(&answers), &[]), ["OVER001"]);
    }

    /// A danger is shown once, and shown as gone by the answer that clears it, with questions still to come.
    #[test]
    fn a_danger_is_told_once_and_again_when_it_is_gone() {
        let with = draft(&[("site.feeds_building", "yes")]);
        let without = draft(&[("site.feeds_building", "no")]);
        let mut told = Told::default();
        let mut update = |draft: &Draft| {
            let now = dangers(draft, &BTreeSet::new(), judge::judge);
            told.update(now, Parts::default())
        };
        assert!(matches!(update(&with)[..], [News::New(_)]));
        assert_eq!(update(&with), []);
        assert!(matches!(update(&without)[..], [News::Gone(_)]));
        assert!(matches!(update(&with)[..], [News::New(_)]));
    }

    /// Without a load, an unprotected outlet on wet ground is only a caution. The danger is reported as milder, not as
    /// gone.
    #[test]
    fn a_danger_that_became_milder_is_not_told_as_gone() {
        let with = |what| {
            let answers = [
                ("generator.rated", "2800 W"),
                ("generator.voltage", "120"),
                ("outlet.1.face", "5-20R"),
                ("outlet.1.breaker", "20 A"),
                ("outlet.2.face", "done"),
                ("outlets.gfci", "none"),
                ("load.1.what", what),
                ("load.2.what", "done"),
                ("site.ground", "wet"),
            ];
            findings(&draft(&answers), &BTreeSet::new(), judge::judge)
        };
        let mut told = Told::default();
        assert!(matches!(told.update(with("kettle"), Parts::default())[..], [News::New(_)]));
        let news = told.update(with("removed"), Parts::default());
        let [News::Milder(left)] = &news[..] else { panic!("{news:?}") };
        assert_eq!((left.code, left.signal), ("SHOCK001", Signal::Caution));
    }

    /// A part that is asked about again leaves the plan, and its danger with it. The danger is neither gone then, nor
    /// new when the part is back. A second part with the same danger is named.
    #[test]
    fn what_was_only_taken_out_is_not_gone() {
        let answers = [
            ("generator.rated", "2800 W"),
            ("generator.voltage", "120"),
            ("outlet.1.face", "L5-30R"),
            ("outlet.1.breaker", "30 A"),
            ("outlet.2.face", "L5-30R"),
            ("outlet.2.breaker", "30 A"),
            ("outlets.gfci", "all"),
            ("gear.1.what", "split-30"),
            ("gear.1.from", "outlet 1"),
            ("gear.1.name", "red"),
        ];
        let one = draft(&answers);
        let two = draft(
            &[&answers[..], &[("gear.2.what", "split-30"), ("gear.2.from", "outlet 2"), ("gear.2.name", "blue")]]
                .concat(),
        );
        let mut told = Told::default();
        let mut update = |draft: &Draft, waiting: &[&str]| {
            let set = |ids: &[&str]| ids.iter().map(|id| (*id).to_owned()).collect::<BTreeSet<_>>();
            let waiting = set(waiting);
            let now = dangers(draft, &waiting, judge::judge);
            let finished = &set(&["red", "blue"]) - &waiting;
            told.update(now, Parts { finished, waiting, ..Parts::default() })
        };
        assert!(matches!(update(&one, &["blue"])[..], [News::New(_)]));
        assert_eq!(update(&one, &["red", "blue"]), []);
        assert_eq!(update(&one, &["blue"]), []);
        let news = update(&two, &[]);
        let [News::Also(_, more)] = &news[..] else { panic!("{news:?}") };
        let more: Vec<&str> = more.iter().map(Id::as_str).collect();
        assert!(more.contains(&"blue") && !more.contains(&"red"), "{more:?}");
    }

    /// A splitter that is put in no outlet any more clears nothing. Near miss: one that the plan no longer has.
    #[test]
    fn a_danger_of_a_part_that_came_out_is_not_told_as_gone() {
        let answers = [
            ("generator.rated", "2800 W"),
            ("generator.voltage", "120"),
            ("outlet.1.face", "L5-30R"),
            ("outlet.1.breaker", "30 A"),
            ("outlets.gfci", "all"),
            ("gear.1.what", "split-30"),
            ("gear.1.from", "outlet 1"),
            ("gear.1.name", "red"),
        ];
        let before = draft(&answers);
        let machine = |edits: &[(&str, &str)]| Machine::new(draft(&[&answers[..], edits].concat()));
        let news = |edits: &[(&str, &str)]| {
            let mut told = Told::default();
            assert!(matches!(
                told.update(dangers(&before, &BTreeSet::new(), judge::judge), Parts::default())[..],
                [News::New(_)]
            ));
            let machine = machine(edits);
            let parts = Parts { waiting: BTreeSet::new(), ..machine.told_parts() };
            told.update(dangers(machine.draft(), &BTreeSet::new(), judge::judge), parts)
        };
        let told = news(&[("gear.1.from", "none")]);
        let [News::Unplugged(finding, out)] = &told[..] else { panic!("{told:?}") };
        assert_eq!((finding.code, out[0].as_str()), ("OVER001", "red"));
        let told = news(&[("gear.1.what", "removed")]);
        assert!(matches!(told[..], [News::Gone(_)]), "{told:?}");
    }

    /// Exhaust findings are shown as soon as the distance is answered: a danger at 19 ft, a caution at 20 ft, nothing
    /// at 25 ft.
    #[test]
    fn exhaust_is_told_from_a_caution_on() {
        let at = |distance| codes(&draft(&[("site.sleepers_at", distance)]), &[]);
        assert_eq!(at("19 ft"), ["AIR001"]);
        assert_eq!(at("20 ft"), ["AIR001"]);
        assert_eq!(at("25 ft"), Vec::<&str>::new());
    }
}

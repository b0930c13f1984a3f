//! A user who answers "I don't know", then looks where the plan says and answers what they see, gets no more findings
//! than a user who knew at once.

use std::collections::BTreeSet;

use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;

use super::people::LENT_BOX;
use super::*;
use crate::interview;
use crate::judge;
use crate::plan::{Id, arbitrary};
use crate::report::{Finding, Marking, Signal};
use crate::rules::testing::{LENT_BOX as LENT_BOX_LOOKED, lent_box_before};

fn plain(draft: &Draft) -> Plan {
    plan_of(draft, &|key| key.to_owned())
}

/// Returns the keys of the answered questions that could have been answered "I don't know" and looked up later.
fn may_be_unknown(draft: &Draft) -> Vec<String> {
    let plan = plain(draft);
    let loads = plan.loads.iter().filter_map(|it| it.on.as_ref());
    let fed: Vec<&Id> = plan.gear().filter_map(|it| it.from).chain(loads).collect();
    let ids = parts::Ids::new(draft);
    let feeds = |n: &str| {
        let id = ids.gear(n.parse().expect("a number"));
        fed.iter().any(|at| plan.part_of(at).is_some_and(|part| part.as_str() == id))
    };
    let chosen = |key: &str| {
        let path: Vec<&str> = key.split('.').collect();
        match path[..] {
            // Looking does not answer these. See `WITHOUT_ANSWER` in `judge::unknowns`. Dry ground is wet after the
            // next rain, and where a part goes is a decision. A part of unknown shape feeds nothing, so a shape stays
            // known where something is plugged in.
            ["load", _, "plug" | "backup"]
            | ["site", "quiet_hours" | "ground"]
            | ["fuel", "runtime" | "noise"]
            | ["gear", _, "from"] => true,
            ["gear", n, "plug" | "ends" | "outs"] => feeds(n),
            _ => false,
        }
    };
    let mut machine = Machine::new(draft.clone());
    let answered = draft.answers.iter().filter(|(key, said)| said.text().is_some() && !chosen(key));
    let keys = answered.map(|(key, _)| key.clone());
    keys.filter(|key| {
        machine.went_back_for_tests(key);
        let question = machine.question();
        // A plan file may hold answers that the interview does not accept.
        let again = || Machine::clone(&machine).answer(known(draft, key)).is_ok();
        question.key == *key && question.allows(&Input::Unknown) && again()
    })
    .collect()
}

/// Returns what a user would answer who knows everything in this draft.
fn known(draft: &Draft, key: &str) -> Input {
    let mut machine = Machine::new(draft.clone());
    machine.went_back_for_tests(key);
    let question = machine.question();
    assert_eq!(question.key, key);
    match question.default {
        Suggestion::Said(Said::Is(text)) => Input::Answer(text),
        Suggestion::Said(Said::None) => Input::Skip,
        Suggestion::Said(Said::Word(_)) => Input::Answer(String::new()),
        Suggestion::Said(Said::Unknown) | Suggestion::Nothing => Input::Unknown,
    }
}

/// Makes the answers in `gone` unknown, writes and reopens the plan, and looks up everything it says to look at.
///
/// Returns the result and the keys of the questions asked meanwhile, or `None` if some answer cannot be given again.
fn looked_up(draft: &Draft, gone: &[String]) -> Option<(Machine, BTreeSet<String>)> {
    let mut without = draft.clone();
    without.answers.extend(gone.iter().map(|key| (key.clone(), Said::Unknown)));
    let plan = plain(&without);
    let read = plan::read(&plan::write(&plan)).ok()?;
    let mut machine = Machine::new(draft_of(&read, "t").expect("a draft"));
    let mut asked = BTreeSet::new();
    // The last answers may bring more to look at.
    for _ in 0..9 {
        let before = asked.len();
        machine.start_looking();
        while machine.question().key != "review" {
            let key = machine.question().key;
            machine.answer(known(draft, &key)).ok()?;
            asked.insert(key);
        }
        if asked.len() == before {
            break;
        }
    }
    Some((machine, asked))
}

/// Whether this rule has no finding at least as grave among the known ones.
fn is_more(finding: &Finding, known: &[Finding]) -> bool {
    known.iter().all(|it| it.code != finding.code || it.signal > finding.signal)
}

/// Returns the dangers and warnings of the looked-up plan that the known plan does not have, and that rest only on
/// answers that were unknown and never asked.
fn missed(draft: &Draft, gone: &[String]) -> Vec<Finding> {
    // A plan file may hold answers that the interview does not accept.
    let Some((machine, asked)) = looked_up(draft, gone) else {
        return Vec::new();
    };
    let known = judge::build(&plain(draft)).findings;
    let mut found = judge::build(&plain(machine.draft())).findings;
    found.retain(|it| it.signal <= Signal::Warning && is_more(it, &known) && it.guessed());
    found.retain(|it| {
        let fields: Vec<String> = it.rests_on.iter().map(|it| it.field.clone()).collect();
        let keys = machine.questions(&fields);
        keys.iter().all(|question| gone.contains(&question.key) && !asked.contains(&question.key))
    });
    found
}

/// In the usual interviews, everything that can be unknown is unknown at once.
#[test]
fn what_usual_people_look_up_rests_on_nothing_more() {
    for text in [COMMON, LENT_BOX] {
        let (Outcome::Finished { draft, .. }, ..) = answers(&script(text)) else { panic!("not finished") };
        // Reopened, so that its parts are numbered as in the file.
        let draft = draft_of(&plain(&draft), "t").expect("a draft");
        let all = may_be_unknown(&draft);
        assert!(all.len() > 8, "{all:?}");
        let missed = missed(&draft, &all);
        assert!(missed.is_empty(), "{missed:#?}\n{all:?}");
    }
}

/// The look sheet and the questions about things to look up are the same list.
#[test]
fn what_the_sheet_asks_is_asked_in_its_order() {
    let mut runner = TestRunner::deterministic();
    let mut asked = 0;
    for _ in 0..24 {
        let drawn = arbitrary::camp().new_tree(&mut runner).expect("a plan").current();
        let Some(draft) = draft_of(&drawn, "t") else {
            continue;
        };
        // As the interview writes it, since a plan file may say more about a cord than anybody can type.
        let text = plan::write(&plain(&draft));
        let Ok(drawn) = plan::read(&text) else {
            continue;
        };
        let draft = draft_of(&drawn, "t").expect("a draft");
        let looks = judge::build(&drawn).figures.looks;
        assert_eq!(judge::build(&plain(&draft)).figures.looks, looks, "{text}");
        let seen = looks.iter().filter(|look| look.read != Marking::Package);
        let fields: Vec<String> = seen.flat_map(|look| look.fields.clone()).collect();
        let sheet: Vec<String> = interview::questions(&drawn, &fields).into_iter().map(|it| it.key).collect();
        let mut machine = Machine::new(draft);
        machine.start_looking();
        for key in &sheet {
            assert_eq!(machine.question().key, *key, "{sheet:?}\n{text}");
            let input = if machine.question().allows(&Input::Unknown) { Input::Unknown } else { Input::Skip };
            machine.answer(input).expect("an answer");
            asked += 1;
        }
    }
    assert!(asked > 24, "{asked}");
}

/// Who looks at the lent box answers exactly what is on the sheet. Once the tent is moved too, the plan is as good as
/// that of someone who knew it all, and whatever must run has an outlet.
#[test]
fn the_sheet_of_the_lent_box_is_enough() {
    let read = |text: &str| plan::read(text).expect("a plan");
    let (before, after) = (read(&lent_box_before()), read(LENT_BOX_LOOKED));
    let knows = draft_of(&after, "t").expect("a draft");
    let looks = judge::build(&before).figures.looks;
    assert!(looks.len() <= 6, "{looks:#?}");
    let fields: Vec<String> = looks.into_iter().flat_map(|look| look.fields).collect();
    let sheet: Vec<String> = interview::questions(&before, &fields).into_iter().map(|it| it.key).collect();
    let mut machine = Machine::new(draft_of(&before, "t").expect("a draft"));
    machine.start_looking();
    let mut asked = Vec::new();
    while machine.question().key != "review" {
        let key = machine.question().key;
        machine.answer(known(&knows, &key)).expect("an answer");
        asked.push(key);
    }
    assert_eq!(asked, sheet);
    let mut looked = plain(machine.draft());
    assert!(judge::build(&looked).count(Signal::Danger) > 0, "the tent stands too near");
    looked.site.sleepers_at = after.site.sleepers_at;
    let (found, wanted) = (judge::build(&looked), judge::build(&after));
    let told = |it: &Finding| (it.code, it.signal, it.about.clone(), it.fix.key);
    let told = |findings: &[Finding]| findings.iter().map(told).collect::<Vec<_>>();
    assert_eq!(told(&found.findings), told(&wanted.findings));
    assert_eq!(found.figures.sharing.unplaced, []);
    assert_eq!(found.figures.looks, wanted.figures.looks);
}

/// With a single figure, the peak, the running power is looked up among the other things, and the peak stays.
#[test]
fn the_running_power_is_looked_up_beside_the_peak() {
    let text = "3300 W\npeak\n\n2 x 5-20R 20 A, L5-30R 30 A\nnumber\n120\n1\nnone\nkettle, coffee-maker, coolbox-compressor, phone\n\
        wet\n40 ft\nopen\nyes\nno\n\ntwist-30, box-twist-30\n\n\n75 ft\nno\n\n2 x 5-20R 20 A\n\nacross\ncheck\n";
    let (Outcome::Finished { plan, .. }, ..) = answers(&script(text)) else { panic!("not finished") };
    let fields = judge::build(&plan).figures.looks.into_iter().flat_map(|look| look.fields);
    assert!(fields.collect::<Vec<_>>().contains(&"generator.rated".to_owned()));
    let mut machine = Machine::new(draft_of(&plan, "t").expect("a draft"));
    machine.start_looking();
    let mut asked = Vec::new();
    while machine.question().key != "review" {
        let question = machine.question();
        let input = match question.id {
            "generator-rated" => Input::Answer("2800 W".to_owned()),
            _ if question.kind == Kind::YesNo => Input::Answer("yes".to_owned()),
            _ => Input::Unknown,
        };
        machine.answer(input).expect("an answer");
        asked.push(question.key);
    }
    assert!(asked.iter().any(|key| key == "generator.rated"), "{asked:?}");
    let set = plain(machine.draft()).generator;
    assert_eq!(
        (set.rated.known(), set.peak.known()),
        (bounds::RATED.read("2800 W").ok().as_ref(), bounds::PEAK.read("3300 W").ok().as_ref(),)
    );
}

#[test]
fn what_is_looked_up_rests_on_nothing_more() {
    let mut runner = TestRunner::deterministic();
    for _ in 0..6 {
        let drawn = (arbitrary::camp(), proptest::collection::vec(any::<bool>(), 64)).new_tree(&mut runner);
        let (mut plan, away) = drawn.expect("a plan").current();
        // Nobody looks at a thing that is not bought yet.
        plan.generator.bought = None;
        plan.cords.iter_mut().for_each(|it| it.bought = None);
        plan.boxes.iter_mut().for_each(|it| it.bought = None);
        let Some(draft) = draft_of(&plan, "t") else {
            continue;
        };
        let keys = may_be_unknown(&draft).into_iter().zip(away.iter().cycle());
        let gone: Vec<String> = keys.filter(|(_, away)| **away).map(|(key, _)| key).collect();
        let missed = missed(&draft, &gone);
        assert!(missed.is_empty(), "{missed:#?}\n{gone:?}\n{}", plan::write(&plan));
    }
}

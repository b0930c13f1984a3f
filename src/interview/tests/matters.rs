//! No question is asked if its answer makes no difference.

use super::*;
use crate::report::Report;

/// Answers of every form, at least two of each.
const TYPED: &[&str] = &[
    "1000 W, 1500 W",
    "6000 W, 7000 W",
    "800 W",
    "3000 W",
    "2500 W",
    "9000 W",
    "12 A",
    "20 A",
    "50 A",
    "8 A",
    "16 A",
    "4 ft",
    "150 ft",
    "9000 ft",
    "0 °C",
    "40 °C",
    "1 gal",
    "9 gal",
    "0.5",
    "1",
    "2",
    "4",
    "left-one",
    "right-one",
    "SPT 16/2",
    "SJTW 10/3",
    "18 AWG",
    "8 AWG",
    "50 dBA at 23 ft, 25 %",
    "75 dBA at 23 ft, 25 %",
    "50 % 1 h",
    "50 % 20 h",
    "08:00-09:00",
    "20:00-07:00",
    "A",
    "B",
];

/// Returns the report on these answers, and the names that are printed.
fn told(machine: &Machine) -> (Report, [String; 2]) {
    let plan = plan_of(machine.draft(), &|key| key.to_owned());
    (judge::build(&plan), [plan.site.name, plan.generator.name])
}

/// Returns the machine at this question.
pub(super) fn at(machine: &Machine, key: &str) -> Machine {
    let mut at = machine.clone();
    at.went_back_for_tests(key);
    at
}

/// Returns the outcome of each known answer to a question.
fn outcomes(machine: &Machine, key: &str) -> impl Iterator<Item = (Report, [String; 2])> {
    let asked = at(machine, key);
    let texts: Vec<String> = match asked.question().kind {
        Kind::Choice(items) | Kind::Many(items) | Kind::Page(items) => {
            items.into_iter().map(|item| item.value).collect()
        }
        Kind::YesNo => ["yes", "no"].map(str::to_owned).into(),
        Kind::Text(_) => TYPED.iter().map(|text| (*text).to_owned()).collect(),
    };
    texts.into_iter().filter_map(move |text| {
        let mut other = asked.clone();
        other.answer(Input::Answer(text)).ok()?;
        Some(told(&other))
    })
}

/// Whether some known answers to a question have different outcomes, given the other answers.
fn matters(machine: &Machine, key: &str) -> bool {
    let mut outcomes = outcomes(machine, key);
    let first = outcomes.next();
    outcomes.any(|other| Some(other) != first)
}

/// Returns the keys of the questions that were asked in turn although no answer makes a difference.
pub(super) fn needless(draft: &Draft) -> Vec<String> {
    let machine = Machine::new(draft.clone());
    let mut asked = machine.asked_for_tests();
    asked.retain(|key| !matters(&machine, key));
    asked
}

/// For every question there is a plan in which two known answers give different reports.
#[test]
fn every_question_matters() {
    let mut waiting: Vec<&steps::Step> = steps::all().collect();
    assert!(waiting.len() > 50);
    let mut runner = TestRunner::deterministic();
    for _ in 0..120 {
        let plan = arbitrary::camp().new_tree(&mut runner).expect("a plan").current();
        let Some(mut draft) = draft_of(&plan, "t") else {
            continue;
        };
        // Only users without a plan file are asked how outlets that look alike are arranged, and what color a cord is.
        let named = |key: &str| match key.rsplit_once('.') {
            Some((_, "ids")) => true,
            Some((part, "name")) => part.starts_with("outlet.") || part == "gear.1",
            _ => false,
        };
        draft.answers.retain(|key, _| !named(key));
        let machine = Machine::new(draft);
        for key in machine.asked_for_tests().into_iter().chain(machine.waiting()) {
            let question = at(&machine, &key).question();
            let is_it = |step: &&steps::Step| (step.group, step.id) == (question.group, question.id);
            if waiting.iter().any(is_it) && matters(&machine, &key) {
                waiting.retain(|step| !is_it(step));
            }
        }
    }
    // Arrangement within a box is asked only if the box has one kind of outlet, which no generated plan has. `needless`
    // covers it.
    let ids: Vec<&str> = waiting.iter().map(|step| step.id).collect();
    assert_eq!(ids, ["out-places"]);
}

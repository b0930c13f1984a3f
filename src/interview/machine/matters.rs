//! Nothing is asked whose answer changes nothing.

use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;

use super::*;
use crate::interview::{draft_of, plan_of};
use crate::judge;
use crate::plan::arbitrary;
use crate::report::Report;

/// Answers of every form, two at least of each.
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

/// What is told of these answers, and the names that are printed.
fn told(machine: &Machine) -> (Report, [String; 2]) {
    let plan = plan_of(&machine.draft, &|key| key.to_owned());
    (judge::build(&plan), [plan.site.name, plan.generator.name])
}

/// What comes of each known answer to a question.
fn outcomes<'m>(machine: &'m Machine, place: &'m Place) -> impl Iterator<Item = (Report, [String; 2])> + 'm {
    let texts: Vec<String> = match place.step.items(&machine.draft, place.at) {
        Some(items) => items.into_iter().map(|item| item.value).collect(),
        None if matches!(place.step.takes, Takes::YesNo) => ["yes", "no"].map(str::to_owned).into(),
        None => TYPED.iter().map(|text| (*text).to_owned()).collect(),
    };
    texts.into_iter().filter_map(|text| {
        let mut other = Machine::new(machine.draft.clone());
        other.cursor = Cursor::At { key: place.key(), from_page: None };
        other.answer(Input::Answer(text)).ok()?;
        Some(told(&other))
    })
}

/// Whether two known answers to a question are told apart, as the others stand.
fn matters(machine: &Machine, place: &Place) -> bool {
    let mut outcomes = outcomes(machine, place);
    let first = outcomes.next();
    outcomes.any(|other| Some(other) != first)
}

/// Of these answers the questions that somebody was asked in their turn for nothing.
pub(in crate::interview) fn needless(draft: &Draft) -> Vec<String> {
    let machine = Machine::new(draft.clone());
    let asked = machine.flow().into_iter();
    asked.filter(|place| !matters(&machine, place)).map(|place| place.key()).collect()
}

/// For every question there is a plan with two known answers of which something else is told.
#[test]
fn every_question_matters() {
    let mut waiting: Vec<&Step> = steps::all().collect();
    assert!(waiting.len() > 50);
    let mut runner = TestRunner::deterministic();
    for _ in 0..120 {
        let plan = arbitrary::camp().new_tree(&mut runner).expect("a plan").current();
        let Some(mut draft) = draft_of(&plan, "t") else {
            continue;
        };
        // Who has no file is asked how the outlets of a box lie.
        draft.answers.retain(|key, _| key.rsplit('.').next() != Some("ids"));
        let machine = Machine::new(draft);
        for place in machine.places() {
            if waiting.contains(&place.step) && matters(&machine, &place) {
                waiting.retain(|step| *step != place.step);
            }
        }
    }
    // How they lie is asked of a box with no others, which is in no such plan: `needless` looks at it.
    let ids: Vec<&str> = waiting.iter().map(|step| step.id).collect();
    assert_eq!(ids, ["out-places"]);
}

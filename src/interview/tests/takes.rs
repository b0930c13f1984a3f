//! Whatever the interview takes, the reader takes: nobody is asked thirty-five questions and then
//! sent out for the answer to one of them.

use proptest::prelude::*;

use super::*;

/// What people may type, at any question: what fits it, what is a little beyond, what means
/// something elsewhere.
const TYPED: &[&str] = &[
    "2800 W",
    "1500 W",
    "1000 W",
    "50 W",
    "20 W",
    "0 W",
    "100 kW",
    "101 kW",
    "1,500 W",
    "1.500 W",
    "1.875 W",
    "1,875 kW",
    "0.5 A",
    "1 A",
    "17 A",
    "20 A",
    "30 A",
    "401 A",
    "10 hp",
    "15 hp",
    "1/2 hp code G",
    "120V~ 60Hz 3A",
    "120V 500000W",
    "58 dBA at 23 ft",
    "200 dBA at 7 m",
    "58 dBA at 2 km",
    "58 dBA, 7 m, 25 %",
    "25 % 8.5 h, 100 % 3.1 h",
    "25 % 5000 h",
    "0 ft",
    "25 ft",
    "6,096 m",
    "4,201 ft",
    "2 km",
    "60000 ft",
    "-2000 ft",
    "90 °F",
    "400 °F",
    "1.2 gal",
    "5000 gal",
    "0.8",
    "0.05",
    "1",
    "2",
    "3",
    "12",
    "21",
    "22-6",
    "2200-0600",
    "08:00-09:00, 18-22",
    "12/3",
    "SJTW 14/3",
    "3G2.5",
    "10 AWG",
    "500 mm2",
    "5-20R, 5-20R",
    "5-15R,5-15R,5-15R,5-15R,5-15R,5-15R,5-15R,5-15R,5-15R,5-15R,5-15R,5-15R",
    "cord1",
    "cord2",
    "box1",
    "box1-1",
    "regular",
    "regular-2",
    "kettle",
    "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx",
    "the \"big\" one\\",
    "@ the lake",
    "turned \u{202e}about",
];

/// Answers as the numbers say, and then whatever it takes to come to the review page.
fn walk(draws: &[u32]) -> Machine {
    let mut machine = Machine::new(Draft::new("walk"));
    let mut draws = draws.iter().map(|draw| *draw as usize);
    // Once they are over, Enter; and where that is refused, one after the other.
    let mut tries = 0..2000_usize;
    loop {
        let question = machine.question();
        let usual = Input::Answer(String::new());
        let Some(draw) = draws.next() else {
            if question.key == "review" {
                return machine;
            }
            let input = match &question.kind {
                Kind::Page(_) => Input::Back,
                _ => usual,
            };
            if machine.answer(input).is_ok() {
                continue;
            }
            let at = tries.next();
            let at = at.unwrap_or_else(|| panic!("no way on from {}", question.key));
            let _ = machine.answer(any_of(&question, at));
            continue;
        };
        // Lists come to an end soon, or nothing but lists would be looked at.
        let ends = matches!(
            question.id,
            "gear-what" | "out-face" | "load-what" | "outlet-face"
        );
        let input = match draw % 8 {
            0 | 1 if !matches!(question.kind, Kind::Page(_)) => usual,
            2..=5 if ends => usual,
            2 if question.unknown => Input::Unknown,
            3 if question.none => Input::Skip,
            _ => any_of(&question, draw / 8),
        };
        // What is refused is asked again.
        let _ = machine.answer(input);
    }
}

/// An answer of the kind that the question takes.
fn any_of(question: &Question, at: usize) -> Input {
    Input::Answer(match &question.kind {
        Kind::Choice(rows) | Kind::Page(rows) => {
            assert!(!rows.is_empty(), "nothing to pick at {}", question.key);
            rows[at % rows.len()].value.clone()
        }
        Kind::YesNo => ["yes", "no"][at % 2].to_owned(),
        Kind::Text(_) => TYPED[at % TYPED.len()].to_owned(),
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn whatever_the_interview_takes_the_reader_takes(
        draws in prop::collection::vec(any::<u32>(), 0..120)
    ) {
        let machine = walk(&draws);
        let plan = plan_of(machine.draft(), &|key| key.to_owned());
        let text = plan::write(&plan);
        match plan::read(&text) {
            Ok(read) => prop_assert_eq!(read, plan, "{}", text),
            Err(problems) => prop_assert!(false, "{}\n{}", problems, text),
        }
    }
}

//! The plan reader accepts whatever the interview accepts. Nobody should answer thirty-five questions and then be sent
//! away over one of them.

use proptest::prelude::*;

use super::*;

/// What people may type at any question: valid answers, values just out of bounds, and answers to other questions.
pub(super) const TYPED: &[&str] = &[
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
    "cord",
    "cord2",
    "box",
    "box-1",
    "regular",
    "regular-2",
    "kettle",
    "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx",
    "the \"big\" one\\",
    "@ the lake",
    "turned \u{202e}about",
];

/// Gives answers chosen by the numbers, and then whatever leads to the review page.
fn walk(draws: &[u32]) -> Machine {
    walk_and(draws, &mut |_| ())
}

/// Does the same, and calls `after` for each accepted answer.
fn walk_and(draws: &[u32], after: &mut dyn FnMut(&Machine)) -> Machine {
    let mut machine = Machine::new(Draft::new("walk"));
    let mut draws = draws.iter().map(|draw| *draw as usize);
    // After the last number, press Enter, and where that is refused, try one answer after another.
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
                after(&machine);
                continue;
            }
            let at = tries.next();
            let at = at.unwrap_or_else(|| panic!("no way on from {}", question.key));
            if machine.answer(any_of(&question, at)).is_ok() {
                after(&machine);
            }
            continue;
        };
        // End lists early, or the walk would see nothing but lists.
        let ends = matches!(question.id, "gear-list" | "out-list" | "load-list" | "outlet-list");
        let input = match draw % 8 {
            0 | 1 if !matches!(question.kind, Kind::Page(_)) => usual,
            2..=5 if ends => usual,
            2 if question.allows(&Input::Unknown) => Input::Unknown,
            3 if question.allows(&Input::Skip) => Input::Skip,
            _ => any_of(&question, draw / 8),
        };
        // A refused answer is asked again.
        if machine.answer(input).is_ok() {
            after(&machine);
        }
    }
}

/// Returns an answer of the kind that the question takes.
fn any_of(question: &Question, at: usize) -> Input {
    Input::Answer(match &question.kind {
        Kind::Choice(rows) | Kind::Page(rows) => {
            assert!(!rows.is_empty(), "nothing to pick at {}", question.key);
            rows[at % rows.len()].value.clone()
        }
        Kind::Many(rows) => {
            let value = &rows[at % rows.len()].value;
            format!("{} x {value}, {}", at / 7 % 3 + 1, rows[at / 3 % rows.len()].value)
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

/// Returns the dangers that were reported as gone and came back although every answer from then still stands, so that
/// only open questions were answered since.
///
/// Also returns how often a danger was reported as gone.
fn back_again(draws: &[u32]) -> (Vec<String>, usize) {
    let mut told = live::Told::default();
    let mut gone: Vec<(crate::report::Finding, Draft)> = Vec::new();
    let mut back = Vec::new();
    walk_and(draws, &mut |machine| {
        let now = machine.dangers(crate::judge::judge);
        for news in told.update(now, machine.told_parts()) {
            match news {
                live::News::Gone(finding) => gone.push((finding, machine.draft().clone())),
                live::News::Milder(_) | live::News::Unplugged(..) => {}
                live::News::New(finding) | live::News::Also(finding, _) => {
                    for (before, then) in &gone {
                        let same = before.code == finding.code
                            && (before.about.is_empty() || before.about.iter().any(|id| finding.about.contains(id)));
                        let mut answers = then.answers.iter();
                        let stands = answers.all(|(key, said)| machine.draft().get(key) == Some(said));
                        if same && stands {
                            back.push(format!("{finding:?}"));
                        }
                    }
                }
            }
        }
    });
    (back, gone.len())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// A danger reported as gone comes back only if an answer changes, never by answering an open question.
    #[test]
    fn what_is_told_to_be_gone_comes_back_by_a_change_only(
        draws in prop::collection::vec(any::<u32>(), 0..120)
    ) {
        let (back, _) = back_again(&draws);
        prop_assert!(back.is_empty(), "{:?}", back);
    }
}

/// On some walks a danger goes. Otherwise the property above would test nothing.
#[test]
fn on_some_walks_dangers_go() {
    let mut seed = 1_u32;
    let mut draws = || -> Vec<u32> {
        (0..120)
            .map(|_| {
                seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                seed >> 8
            })
            .collect()
    };
    assert!((0..40).any(|_| back_again(&draws()).1 > 0));
}

//! Whole interviews on the pure machine.

mod looked_up;
mod matters;
mod people;
mod spoken;
mod takes;
mod unknown;

use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;

use super::view::label;
use super::*;
use crate::plan::{self, Answer, arbitrary, bounds};
use crate::quantity::Quantity;
use crate::words::{Library, Units};

/// A keeper that records every state.
#[derive(Default)]
struct Kept(Vec<Draft>);

impl Keep for Kept {
    fn keep(&mut self, draft: &Draft) -> std::io::Result<()> {
        self.0.push(draft.clone());
        Ok(())
    }
}

fn answers(text: &str) -> (Outcome, Kept, String) {
    let words = Words::english();
    let mut said = Vec::new();
    let mut kept = Kept::default();
    let outcome =
        run(&mut lines::Lines::new(text.as_bytes(), &mut said), &mut kept, &words, Draft::new("test"), Start::First)
            .unwrap();
    assert_eq!(words.faults(), Vec::<String>::new());
    (outcome, kept, String::from_utf8(said).unwrap())
}

/// Returns the answers of one person, one per line, without trailing blanks and comments after `#`.
fn script(text: &str) -> String {
    text.lines()
        .map(|line| line.split('#').next().unwrap_or_default().trim())
        .fold(String::new(), |all, line| all + line + "\n")
}

/// A camp with one generator, one cord, one box, and six loads.
const COMMON: &str = "\
2800 W, 3300 W
               # nobody knows whether its neutral floats
5-20R 20 A, L5-30R 30 A
120
1              # one generator
none           # no shock protection on it
kettle, coffee-maker, coolbox-compressor, phone, lamp-string, heater-low
               # wet
40 ft
open
yes            # an alarm
no             # feeds no building
               # nobody knows how high it is
twist-30, box-twist-30
               # its color tells nothing here
SJTW 10/3
75 ft
no             # not coiled
yes            # the box is factory made
2 x 5-20R 20 A
yes            # shock protection on them
across         # left and right
               # check
";

/// Returns the plan of a script, which must end on the review page. The plan must survive being written and read back.
fn planned(text: &str) -> Plan {
    let (outcome, _, said) = answers(&script(text));
    let Outcome::Finished { plan, .. } = outcome else { panic!("{outcome:?} after:\n{said}") };
    let written = plan::write(&plan);
    match plan::read(&written) {
        Ok(read) => assert_eq!(read, *plan, "{written}"),
        Err(problems) => panic!("{problems:?} in\n{written}"),
    }
    *plan
}

/// "Nobody sleeps here" is an answer to the question about the alarm, and adds no question.
#[test]
fn nobody_sleeps_here() {
    let sleeps = planned(COMMON);
    assert_eq!(sleeps.site.co_alarm, Answer::Known(true));
    assert_eq!(sleeps.site.people_sleep, Answer::Missing);
    let market = planned(&COMMON.replacen("yes            # an alarm", "nobody         # an alarm", 1));
    assert_eq!(market.site.co_alarm, Answer::Missing);
    assert_eq!(market.site.people_sleep, Answer::Known(false));
    let codes = |plan: &Plan| -> Vec<&str> {
        let findings = crate::judge::judge(plan).findings;
        findings.iter().map(|finding| finding.code).collect()
    };
    for code in ["AIR006", "HEALTH002"] {
        assert!(codes(&sleeps).contains(&code), "{code}");
        assert!(!codes(&market).contains(&code), "{code}");
    }
    assert!(!codes(&market).contains(&"AIR002"));
    // People are still there, so the distance still matters.
    let near = COMMON.replacen("yes            # an alarm", "nobody         # an alarm", 1);
    let near = planned(&near.replacen("40 ft", "12 ft", 1));
    assert!(codes(&near).contains(&"AIR001"));
}

#[test]
fn the_common_case_and_how_many_answers_it_takes() {
    let (outcome, kept, _) = answers(&script(COMMON));
    assert!(matches!(outcome, Outcome::Finished { .. }));
    people::person("common_case", COMMON);
    let lines = COMMON.lines().count();
    // One save at the start, and one after each answer.
    assert_eq!(kept.0.len(), lines + 1);
    assert_eq!(lines, 23, "answers of the common case, the check included");
    let enter = script(COMMON).lines().filter(|line| line.is_empty()).count();
    // Answers that lives depend on are never Enter alone: where it stands, feeding a building, whether a cord lies
    // flat.
    assert_eq!(enter, 5, "Enter alone: nobody has a thing by it");
}

#[test]
fn every_answer_is_kept_before_the_next_question() {
    let typed = script(COMMON);
    let (_, kept, _) = answers(&typed);
    for ((before, after), line) in kept.0.iter().zip(&kept.0[1..]).zip(typed.lines()) {
        let new = after.answers.len() - before.answers.len();
        let question = Machine::new(before.clone()).question();
        // Each item stores one answer. A generator outlet also stores its breaker, and a kind of box outlet its breaker
        // and a count above one. The end of the list is one more.
        let of_a_part = |(count, _): (u8, &str)| match question.id {
            "outlet-list" => 2 * usize::from(count),
            "out-list" => 2 + usize::from(count > 1),
            _ => usize::from(count),
        };
        let wanted = match (question.id, question.kind) {
            ("review", _) => 0,
            // The rated power and the peak.
            ("generator-rated", _) => 2,
            (_, Kind::Many(_)) => {
                let picks = form::picks(line).expect("a list").into_iter();
                1 + picks.map(of_a_part).sum::<usize>()
            }
            _ => 1,
        };
        assert_eq!(new, wanted, "{} {before:?} {after:?}", question.key);
        // The saved draft is enough to resume from.
        assert_eq!(&Draft::from_text(&after.to_text()).unwrap(), after);
    }
}

#[test]
fn goes_on_from_any_draft_to_the_same_plan() {
    let text = script(COMMON);
    let lines: Vec<&str> = text.lines().collect();
    let whole = planned(COMMON);
    let (_, kept, _) = answers(&text);
    let words = Words::english();
    for cut in 0..lines.len() {
        let rest = lines[cut..].join("\n") + "\n";
        let mut said = Vec::new();
        let resumed = run(
            &mut lines::Lines::new(rest.as_bytes(), &mut said),
            &mut Kept::default(),
            &words,
            kept.0[cut].clone(),
            Start::First,
        )
        .unwrap();
        let Outcome::Finished { plan, .. } = resumed else {
            panic!("cut at {cut}: {}", String::from_utf8_lossy(&said))
        };
        assert_eq!(*plan, whole, "cut at {cut}");
    }
}

#[test]
fn a_bad_answer_says_what_is_taken_and_asks_again() {
    let (outcome, kept, said) = answers("2.8\nlots\n2800 V\n0 W\n?\n2.8 kW\n");
    assert!(matches!(outcome, Outcome::Interrupted { .. }));
    for expected in [
        "“2.8” has no unit. Add one: W, kW.",
        "Start with a number, then its unit (W, kW).",
        "“V” does not fit here. Use one of: W, kW.",
        "Rated power must be from 50\u{a0}W to 100,000\u{a0}W.",
        "The smaller one is the running or rated power",
    ] {
        assert!(said.contains(expected), "{expected} not in\n{said}");
    }
    assert_eq!(kept.0.last().unwrap().text("generator.rated"), Some("2.8 kW"));
}

/// A bare number gets the unit shown with the question, and is echoed. If that is out of bounds, or if amperes are as
/// likely as watts, the unit is asked for.
#[test]
fn a_bare_number_is_taken_in_the_unit_that_is_shown() {
    let (_, kept, said) = answers("4000\n");
    assert!(said.contains("That is 4,000\u{a0}W."), "{said}");
    let draft = kept.0.last().unwrap();
    assert_eq!(draft.text("generator.rated"), Some("4000 W"));
    for (units, form, typed, taken) in [
        (Units::Customary, Form::Length(&bounds::LENGTH), "50", Some("50 ft")),
        (Units::Metric, Form::Length(&bounds::LENGTH), "15", Some("15 m")),
        (Units::Customary, Form::Power(&bounds::RATED), "2.8", None),
        (Units::Customary, Form::Draw, "1500", Some("1500 W")),
        (Units::Customary, Form::Draw, "12", None),
        (Units::Customary, Form::Name, "1500", None),
    ] {
        let words = Words::new("en", units).unwrap();
        assert_eq!(with_unit(&words, form, typed).as_deref(), taken, "{typed}");
    }
}

/// A 240 V receptacle settles the voltage over the answer given, and removes no other answer.
#[test]
fn an_early_change_asks_again_only_what_no_longer_makes_sense() {
    let (_, kept, _) = answers(&script(COMMON));
    let mut machine = Machine::new(kept.0.last().unwrap().clone());
    assert_eq!(machine.question().key, "review");
    // The twist-lock outlet becomes a four-slot one. The cord no longer fits it, and everything else stays.
    for line in ["outlet.2", "outlet.2.face", "L14-30R 30 A", "back"] {
        machine.answer(Input::Answer(line.into())).unwrap();
    }
    assert_eq!(machine.question().key, "review");
    let plan = plan_of(machine.draft(), &|key| key.to_owned());
    assert_eq!(plan.generator.voltage, Answer::Known(plan::System::V120_240));
    assert_eq!(plan.cords[0].from, None);
    assert_eq!(plan.boxes[0].from.as_ref().map(ToString::to_string).as_deref(), Some("cord"));
    assert_eq!(plan.loads.len(), 6);
    // After changing it back, the voltage answer holds again.
    for line in ["outlet.2", "outlet.2.face", "L5-30R 30 A", "back"] {
        machine.answer(Input::Answer(line.into())).unwrap();
    }
    let words = Words::english();
    let plan = plan_of(machine.draft(), &|key| words.text(key));
    assert_eq!(plan, planned(COMMON));
}

/// After going back and changing an answer, the user passes every question in between again, and no answer is lost.
#[test]
fn after_a_change_the_next_question_is_the_next() {
    let (_, kept, _) = answers(&script(COMMON));
    let mut machine = Machine::new(kept.0[8].clone());
    assert_eq!(machine.question().key, "site.sleepers_at");
    for _ in 0..5 {
        machine.answer(Input::Back).unwrap();
    }
    assert_eq!(machine.question().key, "generator.voltage");
    let mut asked = Vec::new();
    for line in ["120-240", "", "", "damp", "30 ft"] {
        asked.push(machine.question().key);
        machine.answer(Input::Answer(line.into())).unwrap();
    }
    assert_eq!(asked, ["generator.voltage", "outlets.gfci", "loads.what", "site.ground", "site.sleepers_at"]);
    assert_eq!(machine.question().key, "site.stands");
    let plan = plan_of(machine.draft(), &|key| key.to_owned());
    assert_eq!((plan.loads.len(), plan.generator.outlets.len()), (6, 2));
}

/// Answering a list again keeps the items still marked, removes the others, and adds new ones with their counts.
#[test]
fn a_list_that_is_answered_again_keeps_what_stays() {
    let (_, kept, _) = answers(&script(COMMON));
    let mut machine = Machine::new(kept.0.last().unwrap().clone());
    let words = Words::english();
    let mut again = |key: &str, line: &str| {
        machine.went_back_for_tests(key);
        machine.answer(Input::Answer(line.into())).unwrap();
        plan_of(machine.draft(), &|key| words.text(key))
    };
    let before = again("loads.what", "");
    assert_eq!(before, planned(COMMON));
    let plan = again("loads.what", "phone, 3 x kettle, projector, 2 x own");
    let loads: Vec<(String, u8)> = plan.loads.iter().map(|it| (it.id.to_string(), it.count)).collect();
    let loads: Vec<(&str, u8)> = loads.iter().map(|(id, count)| (id.as_str(), *count)).collect();
    assert_eq!(loads, [("kettle", 3), ("projector", 1), ("load", 1), ("phone", 1), ("load-2", 1)]);
    let plan = again("gear.2.outs", "5-20R 20 A, 5-15R 15 A");
    let shapes: Vec<String> = plan.boxes[0].outlets.iter().map(|it| it.shape.to_string()).collect();
    assert_eq!(shapes, ["5-20R", "5-15R"]);
    assert_eq!(plan.boxes[0].outlets[0].gfci, Answer::Known(true));
    let plan = again("outlets.faces", "L5-30R 30 A, 2 x 5-15R 15 A");
    let ids: Vec<&str> = plan.generator.outlets.iter().map(|it| it.id.as_str()).collect();
    assert_eq!(ids, ["regular-1", "twist", "regular-2"]);
    assert_eq!(plan.cords[0].from.as_ref().map(plan::Id::as_str), Some("twist"));
}

/// From any state, going back leads to the first question and changes nothing, and every question has its texts.
#[test]
fn every_question_has_words_and_a_way_back() {
    let words = Words::english();
    let mut asked = std::collections::BTreeSet::new();
    for text in [COMMON] {
        let (_, kept, _) = answers(&script(text));
        for draft in &kept.0 {
            let mut machine = Machine::new(draft.clone());
            let mut steps = 0;
            loop {
                let question = machine.question();
                asked.insert(question.id);
                let view = view(&words, &question);
                assert!(view.question.chars().count() < 60 || question.about.is_some());
                if machine.answer(Input::Back).is_err() {
                    break;
                }
                steps += 1;
                assert!(steps < 100, "no way back from {}", question.key);
            }
            assert_eq!(machine.draft(), draft, "going back changed an answer");
            assert_eq!(machine.question().key, "generator.rated");
        }
    }
    for step in steps::all() {
        let key = format!("ask-{}", step.id);
        for part in ["", ".why", ".help", ".row"] {
            assert!(words.has(&format!("{key}{part}")), "{key}{part}");
        }
        let question = words.with(&key, [("about", "".into())]);
        assert!(question.chars().count() < 60, "{question}");
        if step.none {
            assert!(words.has(&format!("pick-{}-none", step.id)), "{}", step.id);
        }
    }
    assert_eq!(asked.len(), 23);
    assert_eq!(words.faults(), Vec::<String>::new());
}

/// Every choice of every list has a text, and every refusal has a message.
#[test]
fn every_choice_has_words() {
    let words = Words::english();
    let mut draft = Draft::new("t");
    for (key, text) in [
        ("generator.voltage", "120-240"),
        ("outlet.1.face", "L14-30R"),
        ("outlet.2.face", "5-20R"),
        ("outlet.3.face", "done"),
        ("load.1.what", "kettle"),
        ("gear.1.what", "box"),
        ("gear.1.plug", "L14-30P"),
        ("gear.1.out.1.face", "5-20R"),
    ] {
        draft.answers.insert(key.into(), Said::is(text));
    }
    let at = steps::At { n: 1, m: 1 };
    for step in steps::all() {
        for item in step.items(&draft, at).into_iter().flatten() {
            label(&words, &item.label);
        }
    }
    for reject in REJECTS {
        assert!(words.has(&format!("reject-{reject}")), "{reject}");
    }
    assert_eq!(words.faults(), Vec::<String>::new());
}

/// "I don't know" is the last answer of every list that accepts it, just above the help row.
#[test]
fn i_do_not_know_stands_in_one_place_in_every_list() {
    let words = Words::english();
    let listed = |step: &&steps::Step| step.unknown && !matches!(step.takes, steps::Takes::Typed(_));
    let mut waiting: Vec<&steps::Step> = steps::all().filter(listed).collect();
    assert!(waiting.len() > 20);
    let mut runner = TestRunner::deterministic();
    for _ in 0..40 {
        let plan = arbitrary::camp().new_tree(&mut runner).expect("a plan").current();
        let Some(draft) = draft_of(&plan, "t") else {
            continue;
        };
        let machine = Machine::new(draft);
        for key in machine.asked_for_tests().into_iter().chain(machine.waiting()) {
            let mut at = machine.clone();
            at.went_back_for_tests(&key);
            let question = at.question();
            let Shape::List { rows, .. } = view(&words, &question).shape else {
                continue;
            };
            assert_eq!(rows.last().map(|row| &row.input), Some(&Input::Explain), "{key}");
            let answer = if question.id == "outlet-list" { Input::Quit } else { Input::Unknown };
            if let Some(place) = rows.iter().position(|row| row.input == answer) {
                assert_eq!(place + 2, rows.len(), "{key}");
                waiting.retain(|step| (step.group, step.id) != (question.group, question.id));
            }
        }
    }
    let ids: Vec<&str> = waiting.iter().map(|step| step.id).collect();
    assert_eq!(ids, [""; 0]);
}

/// Every text shown comes from the language files. The test language marks each text and doubles its length, so that
/// unmarked text and cut text are both found.
#[test]
fn all_that_is_asked_comes_from_a_language_folder() {
    use crate::words::language::{marked, unmarked};
    let words = marked(2);
    let (_, kept, _) = answers(&script(COMMON));
    for draft in &kept.0 {
        let mut draft = draft.clone();
        draft.called = called(&words);
        let question = Machine::new(draft.clone()).question();
        let known: Vec<&str> = draft.answers.values().filter_map(Said::text).collect();
        let known = format!("{} kettle", known.join(" "));
        let asked = view(&words, &question);
        let mut said = vec![asked.progress, asked.question, asked.why, explanation(&words, &question).join("\n")];
        match asked.shape {
            Shape::Line { default, hint, .. } => said.extend(default.into_iter().chain([hint])),
            Shape::List { rows, .. } => {
                for row in rows {
                    said.extend([row.text, row.also]);
                }
            }
        }
        for text in said {
            let found = unmarked(&text, &known);
            assert!(found.is_empty(), "{found:?} in {text} of {}", question.key);
        }
    }
    assert_eq!(words.faults(), Vec::<String>::new());
}

const REJECTS: &[&str] = &[
    "choice",
    "nothing-inside",
    "mark-one",
    "ready-made",
    "yes-no",
    "empty-text",
    "no-number",
    "no-unit",
    "unknown-unit",
    "out-of-range",
    "two-readings",
    "zero",
    "ratio",
    "count",
    "ident",
    "ident-taken",
    "name-empty",
    "name-long",
    "name-signs",
    "name-letters",
    "wire",
    "jacket",
    "noise",
    "runtime",
    "span",
    "draw",
    "draw-code",
    "start",
    "plug-amps",
    "legs",
    "legs-count",
    "peak",
    "starting",
    "trips",
    "shares",
    "no-unknown",
    "unknown-shape",
    "no-skip",
    "first",
    "full",
];

#[test]
fn what_the_set_has_left_is_told_as_things_are_named() {
    let (_, _, said) = answers(&script(COMMON));
    assert!(said.contains("need 3,555\u{a0}W, but the generator gives 2,800\u{a0}W. They must take turns"));
    let few = COMMON.lines().take(6).collect::<Vec<_>>().join("\n");
    let (_, _, said) = answers(&script(&(few + "\nphone, lamp-string")));
    let told = said.lines().find(|line| line.contains("Your list adds up to"));
    let told = told.unwrap_or_else(|| panic!("{said}"));
    let watts = |from: &str| -> i64 {
        let text = told.split(from).nth(1).expect(from);
        let digits = text.chars().filter(|c| *c != ',');
        let digits = digits.take_while(char::is_ascii_digit);
        digits.collect::<String>().parse().expect(from)
    };
    assert!(told.contains("W left"), "{told}");
    assert_eq!(watts("so far. "), watts(" of ") - watts("adds up to "), "{told}");
}

#[test]
fn units_of_the_user_are_kept() {
    let plan = planned(COMMON);
    assert_eq!(plan.cords[0].length.known().unwrap().amount().to_string(), "22.86");
    let (_, kept, _) = answers(&script(COMMON));
    assert_eq!(kept.0.last().unwrap().text("gear.1.length"), Some("75 ft"));
}

#[test]
fn a_danger_is_told_when_its_answer_is_given() {
    let (_, _, said) = answers(&script(COMMON));
    let wet = said.find("How wet is the ground").unwrap();
    let far = said.find("How far from the generator").unwrap();
    let danger = said.find("DANGER: No GFCI protects").unwrap();
    assert!(wet < danger && danger < far, "{said}");
    // With the reason and what to do, and not again until something changes.
    assert!(said[danger..far].contains("Why: ") && said[danger..far].contains("Do: "));
    assert_eq!(said.matches("DANGER: No GFCI protects").count(), 1);
}

#[test]
fn the_tree_so_far_is_shown_on_request() {
    // Asked for on the review page, in place of the last answer.
    let (_, _, said) = answers(&(script(COMMON).trim_end().to_owned() + "\ntree\n"));
    insta::assert_snapshot!(said[said.rfind("> tree").unwrap()..].trim());
}

/// Enter alone answers "I don't know" to where the generator stands and whether it feeds a building. The danger that
/// follows is shown at once.
#[test]
fn no_harmless_answer_is_taken_by_enter_where_lives_hang_on_it() {
    let before = script(COMMON).lines().take(9).collect::<Vec<_>>().join("\n");
    let (_, kept, said) = answers(&(before + "\n\nyes\n\n"));
    let draft = kept.0.last().unwrap();
    for key in ["site.stands", "site.feeds_building"] {
        assert_eq!(draft.get(key), Some(&Said::Unknown), "{key}");
    }
    assert!(said.contains("DANGER: The generator might be closed in or covered"), "{said}");
    assert!(said.contains("DANGER: This might feed a building’s wiring"), "{said}");
}

#[test]
fn a_shape_that_nobody_can_name_has_no_place_in_a_plan() {
    let text = script("2800 W\n\n\nunknown\nidk\n5-20R 20 A\n");
    let (_, kept, said) = answers(&text);
    assert_eq!(said.matches("DO NOT USE").count(), 2, "{said}");
    // The drawings come first, and then the same question again.
    assert_eq!(said.matches("L14-30R 14-50R").count(), 2, "{said}");
    let draft = kept.0.last().unwrap();
    assert_eq!(draft.text("outlet.2.face"), Some("done"));
}

/// On a terminal of 40 columns, 36 are left for a row. Cutting it could lose a breaker's rating, or the word that tells
/// two rows apart.
#[test]
fn rows_to_pick_fit_a_narrow_terminal_in_every_language() {
    use unicode_width::UnicodeWidthStr;
    let mut draft = Draft::new("t");
    draft.answers.insert("generator.voltage".into(), Said::is("120-240"));
    let at = steps::At { n: 1, m: 0 };
    for tag in Library::built_in().offered() {
        let words = Words::new(tag, Units::Customary).unwrap();
        let mut cut = Vec::new();
        for step in steps::all() {
            for item in step.items(&draft, at).into_iter().flatten() {
                let row = label(&words, &item.label);
                if row.width() > 36 {
                    cut.push(row);
                }
            }
        }
        assert!(cut.is_empty(), "{tag}: {cut:#?}");
    }
}

/// Returns the common case up to the review page.
fn all_but_check() -> String {
    let text = script(COMMON);
    let lines: Vec<&str> = text.lines().collect();
    lines[..lines.len() - 1].join("\n")
}

/// A name is any text, even one that looks like the key of a message.
#[test]
fn a_name_may_begin_with_any_sign() {
    for name in ["@ the lake", "@suggest-site-name"] {
        let named = [&all_but_check(), "site", "site.name", name, "back", "check"];
        let plan = planned(&named.join("\n"));
        assert_eq!(plan.site.name, name);
        // It stays when the plan is reopened.
        let words = Words::english();
        let draft = draft_of(&plan, "t").unwrap();
        let mut machine = Machine::new(draft);
        let again = plan_of(machine.draft(), &|key| words.text(key));
        assert_eq!(again.site.name, name);
        machine.answer(Input::Answer("site".into())).unwrap();
        let shown = format!("{:?}", view(&words, &machine.question()).shape);
        assert!(shown.contains(name), "{shown}");
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

/// A suggested name is stored as its key, and put into words when the plan is made.
#[test]
fn a_suggested_name_follows_the_language() {
    let (_, kept, _) = answers(&[&all_but_check(), "site", "site.name", "\n"].join("\n"));
    let draft = kept.0.last().unwrap();
    let word = Said::Word("suggest-site-name".into());
    assert_eq!(draft.get("site.name"), Some(&word));
    let german = Words::new("de", Units::Metric).unwrap();
    let plan = plan_of(draft, &|key| german.text(key));
    assert_eq!(plan.site.name, german.text("suggest-site-name"));
    assert_eq!(german.faults(), Vec::<String>::new());
}

/// A number that reads differently in the two number formats gets the reader's own reading if the other is impossible.
/// Otherwise both are shown.
#[test]
fn a_number_with_two_readings_is_asked_back_in_every_language() {
    for (tag, typed, kept) in [
        ("en", "1,440 W", Some("1440 W")),
        ("en", "1.440 kW", Some("1.44 kW")),
        ("de", "1.440 W", Some("1440 W")),
        ("de", "1,440 kW", Some("1.44 kW")),
        // Only the other reading is possible.
        ("en", "1,440 kW", None),
        ("de", "1.440 kW", None),
    ] {
        let words = Words::new(tag, Units::Customary).unwrap();
        let mut keeper = Kept::default();
        let mut said = Vec::new();
        let mut lines = lines::Lines::new(typed.as_bytes(), &mut said);
        run(&mut lines, &mut keeper, &words, Draft::new("t"), Start::First).unwrap();
        assert_eq!(keeper.0.last().unwrap().text("generator.rated"), kept, "{tag} {typed}");
        let said = String::from_utf8(said).unwrap();
        assert_eq!(said.contains("1440"), kept.is_none() || typed.contains("1440"), "{said}");
        assert_eq!(words.faults(), Vec::<String>::new());
    }
    // Both are possible: 20 ft to the millimeter, or six kilometers.
    let before = script(COMMON).lines().take(8).collect::<Vec<_>>().join("\n");
    let (_, kept, said) = answers(&(before + "\n6,096 m\n"));
    assert!(said.contains("6,096 can mean 6.0960 or 6096."), "{said}");
    assert_eq!(kept.0.last().unwrap().get("site.sleepers_at"), None);
}

#[test]
fn what_clashes_with_another_answer_is_refused_or_asked_again() {
    let draft = |answers: &[(&str, &str)]| {
        let mut draft = Draft::new("t");
        for (key, text) in answers {
            draft.answers.insert((*key).into(), Said::is(*text));
        }
        draft
    };
    let at = |draft: &Draft, key: &str, text: &str| {
        let mut machine = Machine::new(draft.clone());
        assert_eq!(machine.question().key, key);
        machine.answer(Input::Answer(text.into())).map_err(|reject| reject.key)
    };
    let set = [
        ("generator.rated", "2800 W"),
        ("generator.peak", "3300 W"),
        ("generator.voltage", "120"),
        ("generator.sets", "1"),
        ("generator.neutral", "floating"),
        ("generator.inverter", "yes"),
        ("outlet.1.face", "L5-30R"),
        ("outlet.1.breaker", "30 A"),
        ("outlet.2.face", "5-20R"),
        ("outlet.2.breaker", "20 A"),
        ("outlet.3.face", "done"),
        ("outlets.gfci", "none"),
        ("outlets.odd", "share"),
    ];
    let shares = draft(&set);
    assert_eq!(at(&shares, "outlet.2.shares", "outlet 1"), Err("shares"));
    assert!(at(&shares, "outlet.2.shares", "own").is_ok());
    let mut own = draft(&set);
    for (key, text) in [
        ("outlets.odd", "no"),
        ("load.1.what", "own"),
        ("load.1.name", "pump"),
        ("load.1.kind", "motor"),
        ("load.1.running", "1500 W"),
        ("load.2.what", "done"),
    ] {
        own.answers.insert(key.into(), Said::is(text));
    }
    assert_eq!(at(&own, "load.1.starting", "1000 W"), Err("starting"));
    assert!(at(&own, "load.1.starting", "1500 W").is_ok());
    // A kettle's starting power is asked only on the review page, unless it contradicts the running power.
    own.answers.insert("load.1.what".into(), Said::is("kettle"));
    own.answers.insert("load.1.starting".into(), Said::is("1000 W"));
    assert_eq!(Machine::new(own).question().key, "load.1.starting");
}

/// Creates a draft with these answers.
fn drafted(answers: &[(&str, &str)]) -> Draft {
    let mut draft = Draft::new("t");
    for (key, text) in answers {
        draft.answers.insert((*key).into(), Said::is(*text));
    }
    draft
}

/// A generator up to its voltage with one outlet, and the beginning of one load of the user's own.
const SET: [(&str, &str); 12] = [
    ("generator.rated", "2800 W"),
    ("generator.peak", "3300 W"),
    ("generator.voltage", "120-240"),
    ("generator.neutral", "floating"),
    ("generator.inverter", "yes"),
    ("outlet.1.face", "5-20R"),
    ("outlet.1.breaker", "20 A"),
    ("outlet.2.face", "done"),
    ("outlets.gfci", "none"),
    ("outlets.odd", "no"),
    ("load.2.what", "done"),
    ("load.1.what", "own"),
];

/// A single power figure brings the question of which one it is.
///
/// If nobody knows, it counts as the peak, and the rated power is three quarters of it (common practice, no source). A
/// plan file says which of the two its figure is.
#[test]
fn one_figure_alone_is_asked_for_what_it_is() {
    use crate::plan::Answer::{Known, Missing, Unknown};
    use crate::quantity::Power;
    let watts = |watts: i64| Power::from_milliwatts(watts * 1000);
    for (said, rated, peak, left) in [
        (Said::is("running"), Known(4500), Unknown, 4500),
        (Said::is("peak"), Unknown, Known(4500), 3375),
        (Said::Unknown, Unknown, Known(4500), 3375),
    ] {
        let mut draft = drafted(&[("generator.rated", "4500 W")]);
        let answers = &mut draft.answers;
        answers.insert("generator.peak".into(), Said::Unknown);
        let mut machine = Machine::new(draft.clone());
        assert_eq!(machine.question().id, "generator-figure");
        let input = match &said {
            Said::Is(text) => Input::Answer(text.clone()),
            _ => Input::Unknown,
        };
        machine.answer(input).expect("an answer");
        let plan = plan_of(machine.draft(), &|key| key.to_owned());
        let known = |answer: plan::Answer<i64>| match answer {
            Known(count) => Known(watts(count)),
            Unknown => Unknown,
            Missing => Missing,
        };
        assert_eq!(plan.generator.rated, known(rated));
        assert_eq!(plan.generator.peak, known(peak));
        // The power available at sea level on a cool day.
        let mut plan = plan;
        plan.site.altitude = Known(crate::quantity::Length::ZERO);
        plan.site.air = Known(crate::quantity::Temperature::from_millicelsius(15_000));
        let supply = crate::supply::Supply::build(&plan);
        assert_eq!(supply.rated, watts(left), "{said:?}");
    }
    // With both figures or neither, there is nothing to ask.
    let both = drafted(&[("generator.rated", "4500 W"), ("generator.peak", "5000 W")]);
    assert_eq!(Machine::new(both).question().id, "generator-neutral");
    let mut neither = Draft::new("t");
    for key in ["generator.rated", "generator.peak"] {
        neither.answers.insert(key.into(), Said::Unknown);
    }
    assert_eq!(Machine::new(neither).question().id, "generator-neutral");
    let file = "format = 1\n[generator]\nrated = \"4500 W\"\nvoltage = \"120 V\"\n\
                [[generator.outlet]]\nid = \"front\"\nshape = \"5-20R\"\n";
    let plan = plan::read(file).expect("a plan");
    let opened = draft_of(&plan, "t").expect("a draft");
    let again = plan_of(&opened, &|key| key.to_owned());
    assert_eq!(again.generator.rated, Known(watts(4500)));
}

/// 2000 W at 125 V is 16 A, and a 5-15P is rated for 15 A (NEMA WD 6, from memory), so one of the two answers is wrong.
#[test]
fn more_than_a_plug_is_rated_for_is_refused_where_it_is_typed() {
    let at = |more: &[(&str, &str)], key: &str, text: &str| {
        let draft = drafted(&[&SET[..], more].concat());
        let mut machine = Machine::new(draft);
        assert_eq!(machine.question().key, key);
        let answer = machine.answer(Input::Answer(text.into()));
        answer.map_err(|reject| reject.key)
    };
    let pump = |draw| {
        [
            ("load.1.name", "Thing"),
            ("load.1.kind", "electronic"),
            ("load.1.running", draw),
            ("load.1.count", "1"),
            ("load.1.continuous", "no"),
        ]
    };
    assert_eq!(at(&pump("2000 W"), "load.1.plug", "5-15P"), Err("plug-amps"));
    assert!(at(&pump("2000 W"), "load.1.plug", "5-20P").is_ok());
    assert!(at(&pump("1875 W"), "load.1.plug", "5-15P").is_ok());
    assert_eq!(at(&pump("15.5 A"), "load.1.plug", "5-15P"), Err("plug-amps"));
    assert!(at(&pump("15 A"), "load.1.plug", "5-15P").is_ok());
    // A load from the table has a household plug, so it is the watts that are refused.
    let mut machine = Machine::new(drafted(&[&SET[..11], &[("load.1.what", "kettle")]].concat()));
    let mut said = |key: &str, text: &str| {
        machine.cursor_for_tests(key);
        let answer = machine.answer(Input::Answer(text.into()));
        answer.map_err(|reject| reject.key)
    };
    assert_eq!(said("load.1.running", "2000 W"), Err("plug-amps"));
    assert!(said("load.1.running", "1800 W").is_ok());
    // The refusal in words, with the figures.
    let words = Words::english();
    let (_, _, told) = answers(&script(&[COMMON_TO_LOADS, OWN].concat()));
    assert!(told.contains("That is 16.67\u{a0}A. Its plug, 5-15P, is rated for 15\u{a0}A."), "{told}");
    assert_eq!(words.faults(), Vec::<String>::new());
}

/// The common case up to its loads.
const COMMON_TO_LOADS: &str = "2800 W, 3300 W\n\nL5-30R 30 A\n120\n1\nnone\n";
/// A load of the user's own that draws too much for its plug.
const OWN: &str = "own\nThing\nelectronic\n2000 W\n5-15P\n";

/// Starting watts and starting amperes are one question and two keys of the plan, and come back as they were.
#[test]
fn amps_at_the_start_come_into_the_plan_and_back() {
    use crate::plan::Answer::{Known, Missing, Unknown};
    let with = |text: &str| {
        let pump =
            [("load.1.name", "Pump"), ("load.1.kind", "motor"), ("load.1.running", "8 A"), ("load.1.count", "1")];
        let mut machine = Machine::new(drafted(&[&SET[..], &pump].concat()));
        assert_eq!(machine.question().key, "load.1.starting");
        let answer = machine.answer(Input::Answer(text.into()));
        answer.map_err(|reject| reject.key)?;
        let plan = plan_of(machine.draft(), &|key| key.to_owned());
        Ok::<_, &str>((plan.loads[0].starting, plan.loads[0].starting_current))
    };
    let amps = |milliamps| Known(crate::quantity::Current::from_milliamps(milliamps));
    let watts = Known(crate::quantity::Power::from_milliwatts(4_680_000));
    assert_eq!(with("LRA 39"), Ok((Missing, amps(39_000))));
    assert_eq!(with("39 A"), Ok((Missing, amps(39_000))));
    assert_eq!(with("4680 W"), Ok((watts, Missing)));
    assert_eq!(with("7 A"), Err("starting"));
    assert_eq!(with("39"), Err("start"));
    for (line, expected) in [
        ("starting_current = \"39 A\"", (Missing, amps(39_000))),
        ("starting = \"4680 W\"", (watts, Missing)),
        ("", (Unknown, Missing)),
    ] {
        let text = format!(
            "format = 1\n[generator]\nrated = \"4500 W\"\nvoltage = \"120 V\"\n[[generator.outlet]]\n\
             id = \"front\"\nshape = \"5-20R\"\n[[load]]\nid = \"pump\"\nkind = \"motor\"\n\
             current = \"8 A\"\n{line}\n"
        );
        let plan = plan::read(&text).expect("a plan");
        let draft = draft_of(&plan, "t").expect("a draft");
        let load = &plan_of(&draft, &|key| key.to_owned()).loads[0];
        assert_eq!((load.starting, load.starting_current), expected, "{line}");
    }
}

/// Whether a load uses 240 V only is asked if its plug has four contacts, and never otherwise.
#[test]
fn what_uses_240_volts_only_is_asked_where_it_may_be() {
    use crate::plan::{Answer, Uses};
    let heater = |plug| {
        let heater = [
            ("load.1.name", "Boiler"),
            ("load.1.kind", "heater"),
            ("load.1.running", "4000 W"),
            ("load.1.count", "1"),
            ("load.1.continuous", "no"),
            ("load.1.plug", plug),
        ];
        Machine::new(drafted(&[&SET[..], &heater].concat()))
    };
    for (text, uses) in [("120", Uses::V120), ("240", Uses::V240), ("120-240", Uses::V120AndV240)] {
        let mut machine = heater("L14-30P");
        assert_eq!(machine.question().key, "load.1.voltage");
        machine.answer(Input::Answer(text.into())).expect("an answer");
        let plan = plan_of(machine.draft(), &|key| key.to_owned());
        assert_eq!(plan.loads[0].voltage, Answer::Known(uses));
        let back = plan::read(&plan::write(&plan)).expect("it reads");
        let draft = draft_of(&back, "t").expect("a draft");
        assert_eq!(draft.text("load.1.voltage"), Some(text));
    }
    for plug in ["6-20P", "TT-30P"] {
        // 4000 W is too much for a TT-30P at 120 V, and a 6-20P has nothing but 240 V.
        let key = heater(plug).question().key;
        assert_ne!(key, "load.1.voltage", "{plug}");
    }
}

/// The leg of each box outlet survives in the plan and back, whether answered once for all or for each.
#[test]
fn the_legs_of_a_box_come_back() {
    let text = "format = 1\n[generator]\nrated = \"7 kW\"\nvoltage = \"120/240 V\"\n[[generator.outlet]]\n\
                id = \"big\"\nshape = \"L14-30R\"\n[[box]]\nid = \"box\"\nfrom = \"big\"\n\
                inlet = \"L14-30P\"\n";
    let outlet =
        |number: usize, leg: &str| format!("[[box.outlet]]\nid = \"box-{number}\"\nshape = \"5-20R\"\n{leg}\n");
    let (a, b, none) = ("leg = \"A\"", "leg = \"B\"", "");
    for (legs, kinds) in
        [(&[a, a, b, b][..], 1), (&[b, b], 1), (&[a, b, none], 2), (&[none, none], 1), (&[a, none, b], 3)]
    {
        let outlets: String = (1..).zip(legs).map(|(n, leg)| outlet(n, leg)).collect();
        let load = "[[load]]\nid = \"lamp\"\nkind = \"lamp\"\nrunning = \"9 W\"\nplug = \"5-15P\"\n";
        let plan = plan::read(&format!("{text}{outlets}{load}")).expect("a plan");
        let draft = draft_of(&plan, "t").expect("a draft");
        let back = plan_of(&draft, &|key| key.to_owned());
        let known = |plan: &Plan| -> Vec<_> {
            let outlets = plan.boxes[0].outlets.iter();
            outlets.map(|it| it.leg.known().copied()).collect()
        };
        assert_eq!(known(&back), known(&plan), "{legs:?}");
        let told = parts::outs(&draft, 1).count();
        assert_eq!(told, kinds, "{legs:?}");
        // Nothing is left to ask.
        assert_eq!(Machine::new(draft).question().key, "review", "{legs:?}");
    }
}

/// A plan holds a limited number of loads, however they are entered.
#[test]
fn more_than_a_plan_holds_is_refused() {
    let mut draft = Draft::new("t");
    for n in 1..=4 {
        draft.answers.insert(format!("load.{n}.what"), Said::is("phone"));
        draft.answers.insert(format!("load.{n}.count"), Said::is("100"));
    }
    draft.answers.remove("load.4.count");
    draft.answers.insert("load.3.count".into(), Said::is("99"));
    draft.answers.insert("load.5.what".into(), Said::is("done"));
    assert_eq!(parts::load_count(&draft), plan::MOST_LOADS);
    let (_, kept, _) = answers(&script(COMMON));
    let mut full = kept.0.last().unwrap().clone();
    full.answers.extend(draft.answers);
    let mut machine = Machine::new(full);
    assert_eq!(machine.question().key, "review");
    for line in ["load.3", "load.3.count"] {
        machine.answer(Input::Answer(line.into())).unwrap();
    }
    let more = machine.answer(Input::Answer("100".into()));
    assert_eq!(more.map_err(|reject| reject.key), Err("full"));
    assert!(machine.answer(Input::Answer("98".into())).is_ok());
}

/// Generated ids avoid the names that users gave.
#[test]
fn no_two_parts_are_called_the_same() {
    let mut draft = Draft::new("t");
    let long = "x".repeat(40);
    for (key, text) in [
        ("generator.rated", "2800 W"),
        ("generator.voltage", "120"),
        ("outlet.1.face", "5-20R"),
        ("outlet.1.name", "cord2"),
        ("outlet.2.face", "5-20R"),
        ("gear.1.what", "extension"),
        ("gear.2.what", "extension"),
        ("gear.3.what", "box"),
        ("gear.3.plug", "5-15P"),
        ("gear.3.name", "regular"),
        ("gear.3.out.1.face", "5-20R"),
        ("gear.3.out.1.count", "3"),
        ("gear.4.what", "box"),
        ("gear.4.plug", "5-15P"),
        ("gear.4.name", &long),
        ("gear.4.out.1.face", "5-20R"),
        ("gear.4.out.1.count", "12"),
        ("load.1.what", "own"),
        ("load.1.name", "regular-2"),
        ("load.1.kind", "lamp"),
    ] {
        draft.answers.insert(key.into(), Said::is(text));
    }
    let plan = plan_of(&draft, &|key| key.to_owned());
    let text = plan::write(&plan);
    assert_eq!(plan::read(&text), Ok(plan.clone()), "{text}");
    assert_eq!(plan.boxes[1].outlets.len(), 12);
    let ids = plan.generator.outlets.iter().map(|outlet| outlet.id.as_str());
    assert_eq!(ids.collect::<Vec<_>>(), ["cord2", "regular-2"]);
    let ids = plan.cords.iter().map(|cord| cord.id.as_str());
    assert_eq!(ids.collect::<Vec<_>>(), ["cord", "cord3"]);
}

/// Opens a plan with a twist-lock and a household outlet, the parts in `more`, and a lamp.
fn opened(more: &str) -> Machine {
    let text = format!(
        "format = 1\n[site]\nground = \"dry\"\n[generator]\nrated = \"2800 W\"\nvoltage = \"120 V\"\n\
         [[generator.outlet]]\nid = \"twist\"\nshape = \"L5-30R\"\nbreaker = \"30 A\"\n\
         [[generator.outlet]]\nid = \"front\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\n{more}\
         [[load]]\nid = \"lamp\"\nkind = \"lamp\"\nrunning = \"5 W\"\nplug = \"5-15P\"\n"
    );
    let plan = plan::read(&text).unwrap_or_else(|problems| panic!("{problems:?} in {text}"));
    Machine::new(draft_of(&plan, "t").expect("the interview can ask all of it"))
}

/// Returns the choices of the current question.
fn choices(machine: &Machine) -> Vec<String> {
    match machine.question().kind {
        Kind::Choice(items) => items.into_iter().map(|item| item.value).collect(),
        kind => panic!("{kind:?} is no choice"),
    }
}

/// Of two boxes in one socket, the first keeps it and the second is asked about. The taken socket is not offered to it,
/// and is refused.
#[test]
fn a_socket_that_is_taken_is_not_offered_to_a_part() {
    let boxes = |second: &str| {
        let of = |id: &str, from: &str| {
            format!(
                "[[box]]\nid = \"{id}\"\nfrom = \"{from}\"\ninlet = \"L5-30P\"\n\
                 [[box.outlet]]\nid = \"{id}-1\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\n"
            )
        };
        of("one", "twist") + &of("two", second)
    };
    let mut machine = opened(&boxes("twist"));
    assert_eq!(machine.question().key, "gear.2.from");
    assert_eq!(choices(&machine), ["none"]);
    let refused = machine.answer(Input::Answer("outlet 1".into()));
    assert_eq!(refused.map_err(|reject| reject.key), Err("choice"));
    machine.answer(Input::Answer("none".into())).expect("the only choice");
    assert_eq!(machine.question().key, "review");
    // Three cords do not fit in two sockets, and two do.
    let cord = |n: u8| format!("[[cord]]\nid = \"c{n}\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"TT-30R\"]\n");
    assert_eq!(opened(&(cord(1) + &cord(2) + &cord(3))).question().key, "gear.3.from");
    assert_eq!(opened(&(cord(1) + &cord(2))).question().key, "review");
}

/// Returns where a cord is suggested to be plugged in, if the generator also has these outlets.
fn suggested(outlets: &[(&str, bool)]) -> Suggestion {
    let outlet = |(id, gfci): &(&str, bool)| {
        format!("[[generator.outlet]]\nid = \"{id}\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = {gfci}\n")
    };
    let outlets = outlets.iter().map(outlet).collect::<String>();
    let machine = opened(&format!(
        "{outlets}[[cord]]\nid = \"c\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
         [[cord]]\nid = \"d\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\", \"5-15R\"]\n"
    ));
    let mut draft = machine.draft().clone();
    draft.answers.remove("gear.1.from");
    let mut machine = Machine::new(draft);
    machine.cursor_for_tests("gear.1.from");
    machine.question().default
}

/// Enter alone plugs into the outlet nearest the generator that has a working GFCI and a known breaker, never into the
/// end of a cord. Without such an outlet it answers "I don't know".
#[test]
fn enter_alone_plugs_in_where_a_gfci_works() {
    let at = |n: u8| Suggestion::Said(Said::Is(format!("outlet {n}")));
    assert_eq!(suggested(&[("a", false), ("b", true), ("c2", true)]), at(4));
    assert_eq!(suggested(&[("a", true), ("b", false)]), at(3));
    assert_eq!(suggested(&[("a", false), ("b", false)]), Suggestion::Said(Said::Unknown));
}

/// The same holds for loads that are on at the same time, and for loads together with gear.
#[test]
fn a_socket_that_is_taken_is_not_offered_to_a_load() {
    let load = |id: &str, hours: &str| {
        format!(
            "[[load]]\nid = \"{id}\"\nkind = \"lamp\"\nrunning = \"60 W\"\nplug = \"5-15P\"\non = \"front\"\nhours = [\"{hours}\"]\n"
        )
    };
    let three = |hours: &str| load("a", "18:00-19:00") + &load("b", "18:00-19:00") + &load("c", hours);
    let mut machine = opened(&three("18:30-20:00"));
    assert_eq!(machine.question().key, "load.3.on");
    assert_eq!(choices(&machine), ["any"]);
    machine.answer(Input::Answer("any".into())).expect("the only choice");
    assert_eq!(machine.question().key, "review");
    // Loads that are on one after the other share a socket.
    assert_eq!(opened(&three("19:00-20:00")).question().key, "review");
    let cord = "[[cord]]\nid = \"c\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"TT-30R\"]\n";
    let with_cord = cord.to_owned() + &load("a", "18:00-19:00") + &load("b", "18:00-19:00");
    assert_eq!(opened(&with_cord).question().key, "load.2.on");
}

/// Cords are named by their colors, or by any word. Only of two alike does each need one, and not the same.
#[test]
fn cords_are_named_by_their_colors() {
    let ids = |text: &str| -> Vec<String> {
        let (_, kept, _) = answers(&script(text));
        let plan = plan_of(kept.0.last().expect("answers"), &|key| key.to_owned());
        let boxes = plan.boxes.iter().map(|holder| holder.id.to_string());
        plan.cords.iter().map(|cord| cord.id.to_string()).chain(boxes).collect()
    };
    assert_eq!(ids(COMMON), ["cord", "box"]);
    let twist = "twist-30, box-twist-30\n";
    let color = |gear: &str, lines: &str| {
        let before = COMMON.find(twist).expect("the list of gear") + twist.len();
        let (head, tail) = COMMON.split_at(before);
        let tail = tail.split_once('\n').expect("the color").1;
        [&head.replacen(twist, gear, 1), lines, tail].concat()
    };
    assert_eq!(ids(&color(twist, "orange\n")), ["orange-cord", "box"]);
    assert_eq!(ids(&color(twist, "own\nUncle’s one\n")), ["Uncles-one", "box"]);
    // The first of two alike is orange, so the second cannot be, nor can it go without a name. The third is told from
    // the first by its shape.
    let three = "2 x extension, twist-30, box-twist-30\n";
    let own = |second: &str| format!("orange\nSJTW 12/3\n50 ft\nno\n{second}SJTW 14/3\n25 ft\nno\noutlet 1\norange\n");
    let wanted = ["orange-regular-cord", "blue-cord", "orange-twist-cord", "box"];
    assert_eq!(ids(&color(three, &own("blue\n"))), wanted);
    assert_eq!(ids(&color(three, &own("orange\nnone\nunknown\n\nblue\n"))), wanted);
    // A part that a plan file names keeps its name, and nobody is asked.
    let plan = planned(&color(twist, "orange\n"));
    let machine = Machine::new(draft_of(&plan, "t").expect("a draft"));
    assert_eq!(machine.question().key, "review");
    assert!(machine.of_part_for_tests("gear.1").contains(&"gear.1.name".to_owned()));
}

/// Colored names are words of the reader's language, and ids.
#[test]
fn colors_are_in_the_language_of_the_reader() {
    for (tag, cord, holder) in [
        ("en", "red-cord", "white-box"),
        ("es", "cable-rojo", "caja-blanca"),
        ("fr", "rallonge-rouge", "coffret-blanc"),
        ("de", "kabel-rot", "kasten-weiß"),
    ] {
        let words = Words::new(tag, Units::Customary).expect(tag);
        let called = called(&words);
        assert_eq!((called.word("red-cord"), called.word("white-box")), (cord, holder));
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

/// That a cord stays unplugged is told once, with what it leaves without power.
#[test]
fn what_an_unplugged_cord_leaves_without_power_is_told() {
    let (_, kept, _) = answers(&script(COMMON));
    let draft = Draft { name: "again".into(), ..kept.0.last().expect("answers").clone() };
    let words = Words::english();
    // The box is asked for next, since it fits the outlet too.
    let lines = "gear.1\ngear.1.from\nunknown\nunknown\ngear.1\ngear.1.from\nunknown\ngear.2\nback\ncheck\n";
    let mut said = Vec::new();
    let mut prompter = lines::Lines::new(lines.as_bytes(), &mut said);
    run(&mut prompter, &mut Kept::default(), &words, draft, Start::First).expect("an interview");
    let said = String::from_utf8(said).expect("text");
    let told = "in the plan it stays unplugged, and nothing past it has power: “box”.";
    assert_eq!(said.matches(told).count(), 1, "{said}");
    assert_eq!(said.matches("in the plan it stays unplugged").count(), 2, "once for each: {said}");
}

/// What was refused stays in the line, to be completed. Where answers are whole lines, its unit alone completes it.
#[test]
fn what_was_refused_is_completed() {
    /// A prompter that holds what each question began with.
    struct Held<'a>(std::vec::IntoIter<&'a str>, Vec<String>);
    impl Prompter for Held<'_> {
        fn ask(&mut self, view: &View) -> Result<Input, PromptError> {
            self.1.push(view.refused.clone());
            self.0.next().map(|text| Input::Answer(text.to_owned())).ok_or(PromptError::Ended)
        }

        fn tell(&mut self, _: &str) -> std::io::Result<()> {
            Ok(())
        }
    }
    let mut held = Held(vec!["2.8", "kW", "28000000 W"].into_iter(), Vec::new());
    let mut kept = Kept::default();
    run(&mut held, &mut kept, &Words::english(), Draft::new("t"), Start::First).expect("an interview");
    // The second question is which of the two figures it is, and a list.
    assert_eq!(held.1, ["", "2.8", "", ""]);
    assert_eq!(kept.0.last().expect("a draft").text("generator.rated"), Some("2.8 kW"));
    let (.., said) = answers("12 parsecs\n2.8\nkW\n");
    assert!(said.contains("That is 2.8\u{a0}kW."), "{said}");
}

/// The words that people have for what they see find the outlet.
#[test]
fn outlets_are_found_by_what_the_holes_look_like() {
    let words = Words::english();
    let machine =
        Machine::new(Draft::from_text(&answers("2800 W, 3300 W\n\n").1.0.last().expect("one").to_text()).expect("it"));
    let question = machine.question();
    assert_eq!(question.id, "outlet-list");
    let shown = view(&words, &question);
    assert!(shown.drawing.contains("L14-30R"));
    let Shape::List { rows, .. } = &shown.shape else { panic!("no list") };
    let rows: Vec<&Row> = rows.iter().collect();
    for (typed, code) in [
        ("fat", "TT-30R"),
        ("four slots", "L14-30R"),
        ("4 slots", "14-50R"),
        ("round", "L5-30R"),
        ("twisty 3 slots", "L5-30R"),
        ("camper", "TT-30R"),
    ] {
        let found = view::Found::of(&rows, typed);
        assert!(found.whole, "{typed}");
        assert!(found.rows.iter().any(|at| rows[*at].text.contains(code)), "{typed}");
        assert!(found.rows.len() < 12, "{typed}");
    }
}

/// While somebody looks, each question says how many there are, and the number never grows within a list.
#[test]
fn looking_says_how_far_one_is() {
    let plan = planned(people::LENT_BOX);
    let mut machine = Machine::new(draft_of(&plan, "t").expect("a draft"));
    assert_eq!(machine.question().look, None);
    machine.start_looking();
    let words = Words::english();
    let first = view(&words, &machine.question());
    let total = machine.question().look.expect("a look").total;
    assert_eq!(first.progress, format!("Look 1 of {total}"));
    assert_eq!(first.dots.chars().count(), total);
    let mut before: Option<LookAt> = None;
    let mut counted = false;
    while machine.question().key != "review" {
        let look = machine.question().look.expect("a look");
        if let Some(before) = before.filter(|before| before.more == look.more && look.at > 0) {
            assert!(look.at > before.at && look.total == before.total, "{look:?} after {before:?}");
        }
        assert!(look.at < look.total);
        counted |= look.at > 0;
        before = Some(look);
        machine.answer(Input::Unknown).or_else(|_| machine.answer(Input::Skip)).expect("an answer");
    }
    assert!(counted);
}

fn say(machine: &mut Machine, line: &str) -> Result<Vec<Note>, &'static str> {
    let said = machine.answer(Input::Answer(line.into()));
    said.map_err(|refusal| refusal.key)
}

/// A list can be answered over and over without running out of room, and nothing stays plugged into an outlet that was
/// replaced.
#[test]
fn a_list_can_be_corrected_any_number_of_times() {
    let (_, kept, _) = answers(&script(COMMON));
    let mut draft = kept.0.last().expect("answers").clone();
    draft.answers.insert("load.1.on".into(), Said::is("outlet 1"));
    let mut machine = Machine::new(draft);
    for _ in 0..4 {
        for outlets in ["6 x 5-15R 15 A", "7 x 5-20R 20 A"] {
            machine.went_back_for_tests("outlets.faces");
            say(&mut machine, outlets).expect(outlets);
            let plan = plan_of(machine.draft(), &|key| key.to_owned());
            let shapes = plan.generator.outlets.iter();
            let shapes: Vec<String> = shapes.map(|it| it.shape.to_string()).collect();
            let (count, shape) = outlets.split_once(" x ").expect("several");
            assert_eq!(shapes.len().to_string(), count);
            assert!(shapes.iter().all(|it| shape.starts_with(it.as_str())));
            assert_eq!(plan.loads[0].on, None);
        }
    }
}

/// The question about watts accepts two figures and shows both again. A different single figure replaces both.
#[test]
fn another_figure_leaves_nothing_of_those_before() {
    let rated = "generator.rated";
    let mut machine = Machine::new(Draft::new("t"));
    say(&mut machine, "2800 W, 3300 W").expect("two figures");
    machine.went_back_for_tests(rated);
    let both = Suggestion::Said(Said::is("2800 W, 3300 W"));
    assert_eq!(machine.question().default, both);
    say(&mut machine, "").expect("Enter");
    let told = |machine: &Machine, key: &str| machine.draft().text(key).map(str::to_owned);
    assert_eq!(told(&machine, "generator.peak").as_deref(), Some("3300 W"));
    machine.went_back_for_tests(rated);
    say(&mut machine, "1500 W").expect("one figure");
    assert_eq!(told(&machine, "generator.peak"), None);
    assert_eq!(machine.question().key, "generator.figure");
    say(&mut machine, "running").expect("which it is");
    machine.went_back_for_tests(rated);
    say(&mut machine, "3300 W").expect("another");
    assert_eq!(machine.question().key, "generator.figure");
    assert_eq!(told(&machine, "generator.figure"), None);
}

/// An empty answer is refused for a new list, and accepted for adding to an existing one.
#[test]
fn nothing_is_marked_where_something_is_there_already() {
    let mut machine = Machine::new(drafted(&[("generator.rated", "2000 W")]));
    machine.went_back_for_tests("outlets.faces");
    for nothing in ["done", ""] {
        assert_eq!(say(&mut machine, nothing), Err("mark-one"));
    }
    let (_, kept, _) = answers(&script(COMMON));
    let before = kept.0.last().expect("answers").clone();
    let mut machine = Machine::new(before.clone());
    for nothing in ["done", ""] {
        for line in ["add", "add load"] {
            say(&mut machine, line).expect(line);
        }
        assert_eq!(say(&mut machine, "2 x occasion-tent"), Err("ready-made"));
        say(&mut machine, nothing).expect("nothing more");
        assert_eq!(machine.question().key, "review");
        assert_eq!(machine.draft(), &before);
    }
}

/// An answer to a list of changes marks the named changes, whatever their counts. Enter keeps the marked ones, and
/// unknown ones are refused.
#[test]
fn what_a_list_marks() {
    let row =
        |value: &str| Row { text: String::new(), also: String::new(), size: 0, input: Input::Answer(value.into()) };
    let list = View {
        progress: String::new(),
        dots: String::new(),
        question: String::new(),
        why: String::new(),
        drawing: String::new(),
        refused: String::new(),
        shape: Shape::List {
            rows: ["done", "change 0", "change 1", "change 2"].map(row).into(),
            start: Some(0),
            marks: Some(vec![0, 1, 1, 0]),
        },
        spoken: Vec::new(),
    };
    let marked = |answer: &str| list.marked(answer).map(|all| all.join(", "));
    assert_eq!(marked("").as_deref(), Some("change 0, change 1"));
    assert_eq!(marked("2 x change 1, change 2").as_deref(), Some("change 1, change 2"));
    assert_eq!(marked("done").as_deref(), Some(""));
    assert_eq!(marked("change 3"), None);
    assert_eq!(marked("300 x change 1"), None);
}

/// A question about several outlets of a box names them, in line mode too.
#[test]
fn a_question_about_several_outlets_names_them() {
    let (_, _, said) = answers(&script(COMMON));
    assert!(said.contains("box-1, box-2: TEST and RESET"), "{said}");
    let many = COMMON.replacen("2 x 5-20R 20 A", "5 x 5-20R 20 A", 1);
    let (_, _, said) = answers(&script(&many));
    assert!(said.contains("box-1 … box-5: TEST and RESET"), "{said}");
}

/// Keys are named below the list at the terminal, not in the questions, which a pipe shows too.
#[test]
fn no_question_speaks_of_keys() {
    for tag in ["en", "es", "es-ES", "fr", "de"] {
        let words = Words::new(tag, Units::Customary).expect("a language");
        let steps = steps::all().map(|step| format!("ask-{}", step.id));
        for key in steps.chain(["interview-take".to_owned()]) {
            for part in ["", ".why", ".help"] {
                let text = words.with(&format!("{key}{part}"), [("about", "".into())]);
                assert!(!text.contains(['→', '←']), "{tag} {key}{part}: {text}");
            }
        }
        assert!(words.text("hint-many").contains("← →"), "{tag}");
    }
}

/// A review line is marked if its own questions leave something open. The number of such questions is shown once, at
/// the row that asks them.
#[test]
fn the_review_page_marks_what_its_questions_leave_open() {
    let words = Words::english();
    let rows = |text: &str| -> Vec<String> {
        let (_, kept, _) = answers(&script(text));
        let machine = Machine::new(kept.0.last().expect("answers").clone());
        let Kind::Page(rows) = machine.question().kind else { panic!("no page") };
        rows.iter().map(|row| label(&words, &row.label)).collect()
    };
    let marked = |text: &str| -> Vec<String> {
        let rows = rows(text).into_iter();
        let marked = rows.filter_map(|row| Some(row.strip_prefix("! ")?.to_owned()));
        let title = |row: String| row.split(':').next().map(str::to_owned);
        marked.filter_map(title).collect()
    };
    assert_eq!(marked(COMMON), ["Generator", "Site", "Fuel and noise"]);
    let lent = marked(people::LENT_BOX);
    let gear = ["orange-cord", "box", "Outlets of box"];
    assert!(lent.ends_with(&gear.map(str::to_owned)), "{lent:?}");
    let mut counted = rows(people::LENT_BOX);
    counted.retain(|row| row.contains("not know ("));
    assert_eq!(counted.len(), 1, "{counted:?}");
    // A part plugged in without a question shows where it is plugged in.
    assert!(rows(COMMON).iter().any(|row| row.ends_with("in cord")));
    // The outlets that have a GFCI are named, instead of "some".
    let some = COMMON.replacen("none           # no shock", "some\nyes\nno    # no shock", 1);
    let all = rows(&some);
    assert!(all.contains(&"GFCIs: regular".to_owned()), "{all:#?}");
}

/// On the review page, the number of plugs that a box outlet takes can be answered once for all outlets alike.
#[test]
fn the_plugs_of_a_box_are_counted_on_the_review_page() {
    let (_, kept, _) = answers(&script(COMMON));
    let mut machine = Machine::new(kept.0.last().expect("answers").clone());
    let counted = |machine: &Machine| -> Vec<Option<u8>> {
        let plan = plan_of(machine.draft(), &|key| key.to_owned());
        let back = draft_of(&plan, "t").expect("a draft");
        let back = plan_of(&back, &|key| key.to_owned());
        back.boxes[0].outlets.iter().map(|it| it.sockets).collect()
    };
    assert_eq!(counted(&machine), [None, None]);
    for line in ["gear.2.out.1", "gear.2.out.1.sockets"] {
        say(&mut machine, line).expect(line);
    }
    // Until then, the number that the plan assumes is suggested.
    assert_eq!(machine.question().default, Suggestion::Said(Said::is("2")));
    say(&mut machine, "1").expect("one");
    assert_eq!(counted(&machine), [Some(1), Some(1)]);
}

//! Interviews of users who do not know, have not bought yet, or have nowhere to plug in.

use super::*;

/// Gives these answers, where "unknown" and "not bought" stand for the inputs. Returns the machine, the keys of the
/// questions answered, and the last notes.
fn after(lines: &[&str]) -> (Machine, Vec<String>, Vec<Note>) {
    let mut machine = Machine::new(Draft::new("t"));
    let (mut asked, mut notes) = (Vec::new(), Vec::new());
    for line in lines {
        asked.push(machine.question().key);
        let input = match *line {
            "unknown" => Input::Unknown,
            "not bought" => Input::NotBought,
            typed => Input::Answer(typed.to_owned()),
        };
        let told = machine.answer(input);
        notes = told.unwrap_or_else(|refusal| panic!("{refusal:?} to {line} at {asked:?}"));
    }
    (machine, asked, notes)
}

/// Returns the answers for a generator with one household outlet, up to the list of gear, followed by `more`.
fn up_to_gear<'a>(more: &[&'a str]) -> Vec<&'a str> {
    let set = ["2800 W, 3300 W", "unknown", "5-20R 20 A", "120", "1", "all"];
    let site = ["kettle", "dry", "60 ft", "open", "yes", "no", "unknown"];
    [&set[..], &site, more].concat()
}

fn plan(machine: &Machine) -> Plan {
    plan_of(machine.draft(), &|key| key.to_owned())
}

/// After an unknown plug or unknown outlets are looked up and the plan is reopened, the rest of the part's questions
/// are asked, and the plan is the same as if everything had been known at once.
#[test]
fn a_part_of_unknown_shape_waits_until_it_is_known() {
    let words = Words::english();
    let box_then = ["yes", "5-20R 20 A", "yes"];
    let cord_then = ["5-15R", "SJTW 14/3", "25 ft", "no"];
    for (what, first, unknown, shape, then) in [
        ("box", &[][..], "gear.1.plug", "5-15P", &box_then[..]),
        ("camper", &[], "gear.1.plug", "5-15P", &["unknown", "kettle"]),
        ("cord", &["none"], "gear.1.plug", "5-15P", &cord_then),
        ("cord", &["none", "5-15P"], "gear.1.ends", "5-15R", &cord_then[1..]),
        ("box-camper-30", &["yes"], "gear.1.outs", "5-20R 20 A", &["yes"]),
    ] {
        let lines = up_to_gear(&[&[what], first, &[shape], then].concat());
        let (known, asked, _) = after(&lines);
        assert_eq!(known.question().key, "review", "{what}: {asked:?}");
        let answer_of = |key: &str| asked.iter().position(|it| it == key).map(|at| lines[at]);

        let (mut machine, asked, _) = after(&up_to_gear(&[&[what], first, &["unknown"]].concat()));
        assert_eq!(asked.last().map(String::as_str), Some(unknown), "{what}");
        assert_eq!(machine.question().key, "review", "{what}: nothing more is asked of it");
        let before = plan(&machine);
        let text = plan::write(&before);
        assert_eq!(plan::read(&text).as_ref(), Ok(&before), "{what}");

        let mut opened = Machine::new(draft_of(&before, "t").unwrap());
        for machine in [&mut machine, &mut opened] {
            let Kind::Page(rows) = machine.question().kind else { panic!("no page") };
            let row = rows.iter().find(|row| row.value == "gear.1").unwrap();
            let row = label(&words, &row.label);
            assert!(row.starts_with("! ") && row.contains("do not use"), "{what}: {row}");
            let before = plan(machine);
            machine.start_looking();
            let mut asked = Vec::new();
            while machine.question().key != "review" {
                let key = machine.question().key;
                let input = answer_of(&key).filter(|said| key.starts_with("gear.") && *said != "unknown");
                machine.answer(input.map_or(Input::Unknown, |said| Input::Answer(said.to_owned()))).unwrap();
                asked.push(key);
            }
            assert!(asked.iter().any(|key| key == unknown), "{what}: {asked:?}");
            let merged = merge(&text, &before, &plan(machine)).unwrap();
            assert_eq!(plan::read(&merged).as_ref(), Ok(&plan(&known)), "{what}: {asked:?}\n{merged}");
        }
    }
}

/// A load stays in its camper when the camper's plug becomes unknown. What was plugged into a cord is unplugged.
#[test]
fn nothing_is_plugged_into_a_part_of_unknown_shape() {
    let lines = up_to_gear(&["camper", "5-15P", "unknown", "kettle"]);
    let (mut machine, ..) = after(&lines);
    let camper = plan(&machine).loads[0].on.clone();
    assert!(camper.is_some());
    machine.cursor_for_tests("gear.1.plug");
    machine.answer(Input::Unknown).unwrap();
    assert_eq!(machine.question().key, "review", "it stays where it is, and nobody is asked");
    let left = plan(&machine);
    assert_eq!((left.boxes.len(), &left.loads[0].on, &left.boxes[0].from), (1, &camper, &None));
    assert_eq!(plan::read(&plan::write(&left)), Ok(left));

    let cord = ["cord, box-twist-30", "", "5-15P", "L5-30R", "14/3", "25 ft", "yes", "no", "yes", "5-20R 20 A", "yes"];
    let (mut machine, ..) = after(&up_to_gear(&cord));
    let fed = plan(&machine);
    assert_eq!(fed.boxes[0].from.as_ref(), Some(&fed.cords[0].id));
    machine.cursor_for_tests("gear.1.ends");
    machine.answer(Input::Unknown).unwrap();
    let left = plan(&machine);
    assert_eq!((&left.cords[0].ends, &left.boxes[0].from), (&Answer::Unknown, &None));
    assert_eq!(plan::read(&plan::write(&left)), Ok(left));
}

/// "I don't know" is an answer to where a part goes, and so is Enter if no place is good. The part stays unplugged.
#[test]
fn what_goes_nobody_knows_where_stays_unplugged() {
    let set = ["2800 W", "running", "unknown", "2 x 5-20R 20 A", "number", "120", "1", "none"];
    let site = ["kettle", "dry", "60 ft", "open", "yes", "no", "unknown"];
    let cord = ["extension", "", "14/3", "25 ft", "yes", "no"];
    for said in ["", "unknown"] {
        let (machine, asked, _) = after(&[&set[..], &site, &cord, &[said]].concat());
        assert_eq!(asked.last().map(String::as_str), Some("gear.1.from"));
        assert_eq!(machine.question().key, "review");
        assert_eq!(plan(&machine).cords[0].from, None);
    }
}

/// No question holds up a user who does not know. Each accepts Enter or "I don't know", or has a row that says what to
/// do instead.
#[test]
fn every_question_has_a_way_on_for_who_does_not_know() {
    let mut draft = Draft::new("t");
    for (key, text) in [
        ("outlet.1.face", "5-20R"),
        ("outlet.2.face", "L14-30R"),
        ("load.1.what", "own"),
        ("gear.1.what", "box"),
        ("gear.1.plug", "L14-30P"),
        ("gear.1.out.1.face", "5-20R"),
    ] {
        draft.answers.insert(key.into(), Said::is(text));
    }
    let at = steps::At { n: 1, m: 1 };
    let stuck = steps::all().filter(|step| {
        let suggested = (step.suggest)(&draft, at) != Suggestion::Nothing;
        !step.unknown && !suggested && !step.none
    });
    let stuck: Vec<&str> = stuck.map(|step| step.id).collect();
    // The exceptions: lines of the review page, where the part can be removed; a list that Enter ends; whether a thing
    // got hot, which needs no answer; and what no plan works without.
    let others = ["outlet-face", "load-what", "gear-what", "out-face", "gear-inside", "hot"];
    let needed = ["outlet-list", "load-list"];
    for id in stuck {
        assert!(others.contains(&id) || needed.contains(&id), "{id}");
    }
    let words = Words::english();
    let (machine, ..) = after(&["2800 W", "running", "unknown"]);
    let Shape::List { rows, .. } = view(&words, &machine.question()).shape else { panic!("no list") };
    assert!(rows.iter().any(|row| row.input == Input::Quit && row.text.contains("don’t know")));
}

/// For a thing that is not bought yet, only its buyer's choices are asked, and nobody is sent to look at it.
#[test]
fn what_is_not_bought_is_asked_for_what_one_chooses() {
    let (machine, asked, _) = after(&[
        "not bought",
        "5-20R 20 A, L5-30R",
        "kettle",
        "dry",
        "60 ft",
        "open",
        "yes",
        "no",
        "unknown",
        "extension, box-twist-30",
        "none",
        "not bought",
        "25 ft",
        "not bought",
        "5-20R",
        "unknown",
    ]);
    let asked: Vec<&str> = asked.iter().map(String::as_str).collect();
    assert_eq!(asked[..3], ["generator.rated", "outlets.faces", "loads.what"]);
    assert_eq!(
        asked[10..],
        ["gear.1.color", "gear.1.jacket", "gear.1.length", "gear.2.listed", "gear.2.outs", "gear.1.from"]
    );
    assert_eq!(machine.question().key, "review");
    let plan = plan(&machine);
    assert_eq!(plan.generator.bought, Some(false));
    let report = crate::judge::build(&plan);
    let looks =
        machine.questions(&report.figures.looks.iter().flat_map(|look| look.fields.clone()).collect::<Vec<_>>());
    assert!(!looks.is_empty(), "they would be asked");
    let Kind::Page(rows) = machine.question().kind else { panic!("no page") };
    let look = rows.iter().any(|row| row.value == "look");
    let mut looked = machine.clone();
    if look {
        looked.start_looking();
    }
    while looked.question().key != "review" {
        let key = looked.question().key;
        assert!(!key.starts_with("gear.") && !key.starts_with("generator."), "{key}");
        looked.answer(Input::Unknown).unwrap();
    }
}

/// The outlets of a generator that is still to be bought may stay open. The plan goes on without them, and lists what
/// its package must say.
#[test]
fn the_outlets_of_a_generator_to_buy_may_be_open() {
    let words = Words::english();
    let (machine, ..) = after(&["not bought"]);
    assert_eq!(machine.question().key, "outlets.faces");
    let Shape::List { rows, .. } = view(&words, &machine.question()).shape else { panic!("no list") };
    assert!(rows.iter().all(|row| row.input != Input::Quit));
    assert!(rows.iter().any(|row| row.input == Input::NotBought));
    let site = ["not bought", "not bought", "kettle", "dry", "60 ft", "open", "yes", "no", "unknown"];
    let (machine, asked, notes) = after(&[&site[..], &["extension", "", "SJTW 14/3", "25 ft", "no"]].concat());
    assert_eq!(machine.question().key, "review", "{asked:?}");
    assert_eq!(notes, []);
    let before = plan(&machine);
    assert_eq!(before.generator.outlets, []);
    let before = plan::read(&plan::write(&before)).unwrap();
    let opened = Machine::new(draft_of(&before, "t").unwrap());
    assert_eq!((opened.question().key.as_str(), plan(&opened)), ("review", before.clone()));
    let report = crate::judge::build(&before);
    let buy = report.figures.looks.iter().flat_map(|look| &look.buy).map(|it| it.key).collect::<Vec<_>>();
    assert!(buy.contains(&"rated") && !buy.contains(&"outlet"), "{buy:?}");
    // A generator that is there has outlets to look at.
    let (mut machine, ..) = after(&["2800 W", "running", "unknown"]);
    assert!(machine.answer(Input::NotBought).is_err());
    let (mut machine, ..) = after(&["not bought", "5-20R 20 A", "kettle"]);
    machine.went_back_for_tests("outlets.faces");
    machine.answer(Input::NotBought).unwrap();
    assert_eq!(plan(&machine).generator.outlets, []);
}

/// With any other parts, a plan with an unbought generator and open outlets can be judged, saved, and reopened.
#[test]
fn any_plan_is_judged_without_the_outlets_of_its_generator() {
    use proptest::strategy::{Strategy as _, ValueTree as _};
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut judged = 0;
    for _ in 0..24 {
        let drawn = plan::arbitrary::camp().new_tree(&mut runner).expect("a plan").current();
        let Some(mut draft) = draft_of(&drawn, "t") else {
            continue;
        };
        draft.answers.insert("generator.bought".into(), Said::is("no"));
        let mut machine = Machine::new(draft);
        machine.went_back_for_tests("outlets.faces");
        machine.answer(Input::NotBought).unwrap();
        let open = plan(&machine);
        assert_eq!(open.generator.outlets, []);
        let text = plan::write(&open);
        let open = plan::read(&text).unwrap_or_else(|problems| panic!("{problems:?}\n{text}"));
        let report = crate::judge::build(&open);
        assert!(report.figures.sharing.placed.iter().all(|it| open.part_of(&it.at).is_some()), "{text}");
        assert!(draft_of(&open, "t").is_some());
        judged += 1;
    }
    assert!(judged > 12, "{judged}");
}

/// No danger asks for the print on a cord that is not bought yet.
#[test]
fn no_danger_is_told_of_the_print_on_a_cord_to_buy() {
    let lines = up_to_gear(&["extension", "", "not bought", "50 ft"]);
    let (machine, ..) = after(&lines);
    let told = |machine: &Machine| machine.dangers(crate::judge::judge);
    assert_eq!(told(&machine), []);
    assert!(machine.asks_of_thing_to_buy("gear.1.length"), "nobody paces it off");
    let (machine, ..) = after(&up_to_gear(&["extension", "", "unknown", "50 ft", "no"]));
    assert!(!machine.asks_of_thing_to_buy("gear.1.length"));
    assert!(!told(&machine).is_empty());
}

/// "Some of them" without saying which is shown as not known, rather than none.
#[test]
fn some_of_which_nobody_knows_is_not_none() {
    let words = Words::english();
    let set = ["2800 W", "running", "unknown", "5-20R 20 A, L5-30R 30 A", "120", "1", "some"];
    let site = ["kettle", "wet", "60 ft", "open", "yes", "no", "unknown", "done"];
    let line = |which: [&str; 2]| {
        let (machine, ..) = after(&[&set[..], &which, &site].concat());
        let Kind::Page(rows) = machine.question().kind else { panic!("no page") };
        label(&words, &rows.iter().find(|row| row.value == "outlets").unwrap().label)
    };
    let unknown = line(["unknown", "unknown"]);
    assert!(unknown.starts_with("! ") && unknown.ends_with("not known"), "{unknown}");
    let none = line(["no", "no"]);
    assert!(!none.starts_with("! ") && !none.ends_with("not known"), "{none}");
}

/// A part that fits one place is reported as plugged in there. For a part that fits nowhere, the adapter that would
/// help is named.
#[test]
fn where_a_part_goes_is_told_when_nobody_is_asked() {
    let keys = |notes: &[Note]| notes.iter().map(|note| note.key).collect::<Vec<_>>();
    let (.., notes) = after(&up_to_gear(&["box-camper-30"]));
    assert_eq!(keys(&notes), ["fits-by-adapter"]);
    let adapters = notes[0].values.iter().find(|(name, _)| *name == "adapters");
    let home = problem_words(&["pick-gear-what-camper-to-home"]);
    assert_eq!(adapters.map(|(_, value)| value), Some(&home));
    let (.., notes) = after(&up_to_gear(&["box-50"]));
    assert_eq!(keys(&notes), ["fits-nowhere"]);
    // The cord fits one outlet, which is reported once all its questions are answered.
    let set = ["2800 W", "running", "unknown", "5-20R 20 A, L5-30R 30 A", "120", "1", "none"];
    let site = ["kettle", "dry", "60 ft", "open", "yes", "no", "unknown"];
    let cord = ["twist-30", "", "a yellow cord, SJTW 10/3, 300 V", "25 ft"];
    let (mut machine, _, notes) = after(&[&set[..], &site, &cord].concat());
    assert_eq!(keys(&notes), Vec::<&str>::new());
    let notes = machine.answer(Input::Answer("no".into())).unwrap();
    assert_eq!(keys(&notes), ["plugged"]);
}

fn problem_words(keys: &[&str]) -> Value {
    Value::Words(keys.iter().map(|key| (*key).to_owned()).collect())
}

/// What was read from the print on a cord is echoed, whatever else was typed.
#[test]
fn what_was_read_on_a_cord_is_said_back() {
    for (typed, told) in [
        ("Heavy duty, 12/3 AWG SJTW 300 V", "We read: wire size 12 AWG, 3 wires, outdoor."),
        ("SPT 16/2", "We read: wire size 16 AWG, 2 wires, indoor."),
        ("14 AWG", "We read: wire size 14 AWG."),
    ] {
        let (.., notes) = after(&up_to_gear(&["extension", "", typed]));
        let words = Words::english();
        let text = words.with(&format!("note-{}", notes[0].key), words.spoken(&notes[0].values));
        assert_eq!(text, told, "{typed}");
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

/// A camper in which nothing runs is rare, and Enter is easily pressed, so it is asked twice.
#[test]
fn that_nothing_runs_in_a_camper_is_asked_once_more() {
    let (mut machine, ..) = after(&up_to_gear(&["camper", "5-15P", "unknown"]));
    assert_eq!(machine.question().key, "gear.1.inside");
    let nothing = || Input::Answer("done".into());
    let refused = machine.answer(nothing()).unwrap_err();
    assert_eq!(refused.key, "nothing-inside");
    machine.answer(nothing()).unwrap();
    assert_ne!(machine.question().key, "gear.1.inside");
}

/// Esc on the first page of a reopened plan asks whether to quit.
#[test]
fn back_on_a_plan_that_was_opened_again_leaves() {
    let (made, ..) = after(&up_to_gear(&["done"]));
    let draft = Draft { plan: Some("camp.toml".into()), ..draft_of(&plan(&made), "t").unwrap() };
    let mut machine = Machine::new(draft);
    assert_eq!(machine.question().key, "review");
    machine.answer(Input::Back).unwrap();
    assert_eq!(machine.question().id, "review-quit");
    let words = Words::english();
    let Shape::List { rows, .. } = view(&words, &machine.question()).shape else { panic!("no list") };
    assert_eq!(rows[0].input, Input::Quit);
    machine.answer(Input::Back).unwrap();
    assert_eq!(machine.question().key, "review");
}

/// What is assumed about an unknown answer is shown before the cord is plugged in.
#[test]
fn what_is_assumed_is_told_before_a_cord_is_plugged_in() {
    let set = ["2800 W", "running", "unknown", "2 x 5-20R 20 A", "number", "120", "1", "none"];
    let site = ["kettle", "dry", "60 ft", "open", "yes", "no", "unknown"];
    let (machine, ..) = after(&[&set[..], &site, &["extension", "", "unknown", "unknown"]].concat());
    for key in ["gear.1.jacket", "gear.1.length"] {
        assert!(!machine.taken(key).is_empty(), "{key}");
    }
}

/// The best match comes first, and of equal matches the smaller load.
#[test]
fn what_is_typed_finds_what_it_names_first() {
    let words = Words::english();
    let (machine, ..) = after(&up_to_gear(&[])[..6]);
    let first = |machine: &Machine, typed: &str| {
        let Shape::List { rows, .. } = view(&words, &machine.question()).shape else { panic!("no list") };
        let all: Vec<&Row> = rows.iter().collect();
        let found = super::super::view::Found::of(&all, typed).rows;
        found.first().map_or_else(String::new, |at| rows[*at].text.clone())
    };
    let finds = |machine: &Machine, typed: &str, text: &str| {
        let found = first(machine, typed);
        assert!(found.starts_with(text), "{typed}: {found}");
    };
    for (typed, text) in
        [("fan", "Desk fan"), ("air", "Air"), ("kettle", "Travel kettle"), ("fridge", "Small refrigerator")]
    {
        finds(&machine, typed, text);
    }
    let Shape::List { rows, .. } = view(&words, &machine.question()).shape else { panic!("no list") };
    let all: Vec<&Row> = rows.iter().collect();
    let as_they_stand = super::super::view::Found::of(&all, "").rows;
    assert!(as_they_stand.into_iter().eq(0..rows.len()));
    // A size word beside the thing counts wherever a row has it. If no row has the word, only the thing counts.
    for (typed, text) in [
        ("mini fridge", "Small refrigerator"),
        ("small fridge", "Small refrigerator"),
        ("big fridge", "Kitchen refrigerator"),
        ("small fan", "Desk fan"),
        ("big fan", "Box fan"),
        ("enormous toaster", "Toaster"),
        ("heater", "Space heater, "),
    ] {
        finds(&machine, typed, text);
    }
    // The catch-all row comes below.
    let found = super::super::view::Found::of(&all, "enormous toaster");
    assert!(!found.whole && !found.lost);
    assert_eq!(found.rows.last().and_then(|at| rows[*at].value()), Some("own"));
    assert!(super::super::view::Found::of(&all, "spaceship").lost);
    let (machine, ..) = after(&["2800 W", "running", "unknown"]);
    for (typed, text) in [
        ("round", "twist"),
        ("twisty", "twist"),
        ("round 30", "twist"),
        ("L5-30R", "(L5-30R), breaker 30"),
        ("5-20R", "T slot (5-20R), breaker 20"),
    ] {
        let found = first(&machine, typed);
        assert!(found.contains(text), "{typed}: {found}");
    }
    let (machine, ..) = after(&up_to_gear(&[]));
    finds(&machine, "cord", "Extension cord");
    finds(&machine, "gray box", "Box");
}

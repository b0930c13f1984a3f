//! The text of the card as printed: first what kills, then where to plug in.

use super::legible::capitals;
use super::*;

/// Returns the text of each side of a whole-sheet card.
fn sides(text: &str) -> [String; 2] {
    let (plan, report) = demo(text);
    let options = Options { only: vec![Document::Card], ..Options::default() };
    let files = print(&plan, &report, &options).expect("printed");
    show(&files, "card");
    let text = text_of(&files[0].1).replace('\u{a0}', " ");
    let (one, two) = text.split_once("Side 2").expect("two sides");
    [one.to_owned(), two.to_owned()]
}

/// Checks that these texts occur in this order.
fn in_order(text: &str, wanted: &[&str]) {
    let mut from = 0;
    for words in wanted {
        let at = text[from..].find(words);
        from += at.unwrap_or_else(|| panic!("{words} after {from} in {text}"));
    }
}

#[test]
fn the_exhaust_stands_first_and_can_be_read_from_two_metres() {
    let [one, _] = sides(crate::plan::demo::WEEKEND);
    let first = ["DANGER", "Exhaust kills", "25 ft", "CO alarm where you sleep", "4 dangers", "front"];
    in_order(&one, &first);
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let options = Options { only: vec![Document::Card], ..Options::default() };
    let data = template_data(&plan, &report, &Words::english(), &options).expect("data");
    let paged = typeset(Document::Card, data[0].1.clone(), &options).expect("typeset");
    let mut found = Vec::new();
    capitals(&paged.pages()[0].frame, &mut found);
    let high = |words: &str| {
        let of = found.iter().filter(|(text, _)| text.contains(words));
        of.map(|(_, high)| *high).fold(f64::MAX, f64::min)
    };
    for words in ["kills", "alarm where", "DANGER"] {
        assert!((2000.0 / 300.0..100.0).contains(&high(words)), "{words}");
    }
    // In a row, the figure is the largest, then what plugs in, then its name, then its shape.
    let row = ["12.8 A", "Toaster, String", "box-right", "5-20R"].map(|words| {
        let spaced = words.replace(' ', "\u{a0}");
        high(words).min(high(&spaced))
    });
    assert!(row.windows(2).all(|two| two[0] > two[1]), "{row:?}");
}

/// If the outlets in use cannot carry all of the generator's power, the card says so beside its watts.
#[test]
fn what_the_outlets_in_use_cannot_carry_is_told() {
    let one = |edits: &[(&str, &str)]| sides(&crate::rules::testing::edited(edits))[0].clone();
    // Everything hangs on the 30 A outlet, which gives 3,600 W at 120 V.
    let larger = [("rated = \"3600 W\"", "rated = \"7000 W\""), ("peak = \"4500 W\"", "peak = \"8000 W\"")];
    let told = one(&larger);
    assert!(told.contains("Through the outlets you use: 3,600 W of 7,000 W"), "{told}");
    let told = one(&[]);
    assert!(!told.contains("Through the outlets"), "{told}");
}

/// The three-way cord on a 20 A breaker and the splitter that must not be used are each described once.
#[test]
fn what_holds_for_a_part_and_its_ends_is_said_once() {
    let [one, _] = sides(crate::plan::demo::MENDED);
    assert_eq!(one.matches("Add up amps").count(), 2, "{one}");
    let [one, _] = sides(crate::plan::demo::WEEKEND);
    for words in ["DO NOT USE", "ONLY A GFCI CORD HERE", "PLUG INTO A GFCI CORD"] {
        assert_eq!(one.matches(words).count(), 1, "{words}: {one}");
    }
    in_order(&one, &["triple", "DO NOT USE", "triple.3"]);
}

#[test]
fn choices_are_told_by_when_they_are_for_and_only_where_there_are_some() {
    let mended = crate::plan::demo::MENDED;
    let [one, two] = sides(mended);
    let wanted = ["Never together", "Kettle + Toaster", "breakfast", "3 breakfast, evening"];
    in_order(&one, &wanted);
    assert!(!one.contains("column A") && two.contains("With everything in column 1 on"));
    // With no hours in the plan, the columns have no times.
    let lines = mended.lines().filter(|line| !line.starts_with("hours = "));
    let [one, _] = sides(&lines.collect::<Vec<_>>().join("\n"));
    assert!(one.contains("Pick one column") && !one.contains("breakfast"));
    // The plan needs only one column. The others are for loads that are not in it.
    let lines = mended.lines().filter(|line| !line.starts_with("hours = ") || line.contains("\"07:20-07:40\""));
    let [one, _] = sides(&lines.collect::<Vec<_>>().join("\n"));
    in_order(&one, &["Together", "Pick one column", "breakfast"]);
    // A single column is no choice, on either side.
    let [one, _] = sides(&mended.replacen("plug = \"L5-30P\"", "plug = \"unknown\"", 1));
    in_order(&one, &["Together", "You may run all of these"]);
    assert!(!one.contains("Pick one column"), "{one}");
    // The worksheet names them the same way.
    let (plan, report) = demo(mended);
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let sheet = text_of(&files[3].1);
    let sheet: String = sheet.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(sheet.contains("3 (breakfast, evening)"), "{sheet}");

    let twelve = include_str!("../../../tests/plans/large/twelve.toml");
    let [one, two] = sides(twelve);
    let said = "all of it can be on at the same time";
    assert!(one.contains(said) && !one.contains("Pick one") && !one.contains("Never together"), "{one}");
    assert!(one.contains("leg A") && one.contains("24 A on A and 24 A on B"));
    assert!(!two.contains("column 1") && two.contains("With everything on"), "{two}");
}

/// As on its label, a receptacle that the plan has no use for is not offered for plugging in.
#[test]
fn the_card_marks_what_nothing_is_planned_for() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let card = super::agree::data_of(&plan, &report, Document::Card).expect("a card");
    let rows = card["rows"].as_array().expect("rows");
    let only = |row: &&serde_json::Value| row["only"] == "NOTHING PLANNED HERE";
    let marked: Vec<&serde_json::Value> = rows.iter().filter(only).collect();
    assert_eq!(marked.iter().map(|row| &row["id"]).collect::<Vec<_>>(), ["box-lamp", "box-through"]);
    assert!(marked.iter().all(|row| row["long"].is_null()), "{marked:?}");
}

/// Nameplates say watts, so each row that takes appliances shows the same watts as its label. Near miss: a row that only
/// takes a box.
#[test]
fn a_row_where_appliances_go_in_has_its_watts() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let card = super::agree::data_of(&plan, &report, Document::Card).expect("a card");
    let labels = super::agree::data_of(&plan, &report, Document::Labels).expect("labels");
    let of = |list: &serde_json::Value, id: &str| {
        let mut found = list.as_array().expect("a list").iter();
        found.find(|it| it["id"] == id).unwrap_or_else(|| panic!("no {id}")).clone()
    };
    let watts = |id: &str| of(&card["rows"], id)["watts"].clone();
    for id in ["tents.1", "box-left", "box-right"] {
        assert!(watts(id).is_string(), "{id}");
        assert_eq!(watts(id), of(&labels["items"], id)["long"]["watts"], "{id}");
    }
    for id in ["twist", "long", "box", "box-lamp", "box-through"] {
        assert!(watts(id).is_null(), "{id}");
    }
}

/// Two different outlets of a box are asked about one at a time, each by its name.
#[test]
fn the_look_sheet_asks_nothing_twice() {
    let boxed = "[[box]]\nid = \"odd\"\nfrom = \"box-through\"\ninlet = \"L5-30P\"\nlisted = \"unknown\"\n\
        [[box.outlet]]\nid = \"odd-1\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = \"unknown\"\n\
        [[box.outlet]]\nid = \"odd-2\"\nshape = \"5-15R\"\nbreaker = \"15 A\"\ngfci = \"unknown\"\n";
    let (plan, report) = demo(&format!("{}\n{boxed}", crate::plan::demo::MENDED));
    let sheet = super::agree::data_of(&plan, &report, Document::Look).expect("a look sheet");
    let mut asked = Vec::new();
    for look in sheet["looks"].as_array().expect("looks") {
        let questions = look["questions"].as_array().expect("questions");
        asked.extend(questions.iter().filter_map(|it| it["text"].as_str()));
    }
    let once: std::collections::BTreeSet<&&str> = asked.iter().collect();
    assert_eq!(once.len(), asked.len(), "{asked:?}");
    for outlet in ["odd-1: TEST", "odd-2: TEST"] {
        assert!(asked.iter().any(|it| it.starts_with(outlet)), "{asked:?}");
    }
}

#[test]
fn the_other_side_begins_with_whom_to_call() {
    let [_, two] = sides(crate::plan::demo::MENDED);
    let order = [
        "Call 911",
        "Site number",
        "Hospital",
        "CO alarm, or",
        "Someone gets a shock",
        "Set up",
        "Test",
        "Stop and refuel",
    ];
    in_order(&two, &order);
    assert_eq!(two.matches("should read 118.2 V").count(), 1, "{two}");
}

/// The code depends on what the card says, not on when it was printed.
#[test]
fn the_code_goes_by_what_is_said() {
    let code = |text: &str, date: Option<&str>| {
        let (plan, report) = demo(text);
        let options = Options {
            only: vec![Document::Card],
            date: date.map(|date| date.parse().expect("a date")),
            ..Options::default()
        };
        let data = template_data(&plan, &report, &Words::english(), &options).expect("data");
        let data: serde_json::Value = serde_json::from_str(&data[0].1).expect("JSON");
        data["common"]["code"].as_str().expect("a code").to_owned()
    };
    // Each side has its own code.
    let sides_of = |text: &str| {
        let (plan, report) = demo(text);
        let data = super::agree::data_of(&plan, &report, Document::Card).expect("a card");
        let codes = data["codes"].as_array().expect("codes").clone();
        let codes: Vec<String> = codes.iter().map(|code| code.as_str().expect("a code").to_owned()).collect();
        for (side, code) in sides(text).iter().zip(&codes) {
            assert!(side.contains(code), "{code}: {side}");
        }
        codes
    };
    let mended = crate::plan::demo::MENDED;
    let own = code(mended, None);
    assert_eq!(own.len(), "code 12345 12345".len());
    assert_eq!(code(mended, Some("2026-07-04")), own);
    let other = mended.replacen("length = \"25 ft\"", "length = \"26 ft\"", 1);
    assert_ne!(mended, other);
    assert_ne!(code(&other, None), own);
    // The print settings are not part of what it says.
    let (plan, report) = demo(mended);
    let a4 = Options { only: vec![Document::Card], paper: Paper::A4, ink: Ink::Black, ..Options::default() };
    let data = template_data(&plan, &report, &Words::english(), &a4).expect("data");
    assert!(data[0].1.contains(&own));
    let (before, after) = (sides_of(mended), sides_of(&other));
    assert!(before[0] != after[0] && before[1] == after[1], "{before:?} {after:?}");
    let (old, new) = (demo(mended), demo(&other));
    let words = Words::english();
    let again = outdated((&old.0, &old.1), (&new.0, &new.1), &words).expect("told");
    assert_eq!(again.sides, [1]);
    let propane = mended.replacen("fuel = \"gasoline\"", "fuel = \"propane\"", 1);
    let after = sides_of(&propane);
    assert!(before[1] != after[1], "{before:?} {after:?}");
}

/// If no outlet has amps, the column and its heading are dropped.
#[test]
fn no_head_stands_over_figures_that_are_not_there() {
    let alone = "format = 1\nregion = \"north-america\"\n[generator]\nrated = \"2000 W\"\nvoltage = \"120 V\"\n\
        [[generator.outlet]]\nid = \"front\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\n";
    for (text, head) in [(alone, false), (crate::plan::demo::MENDED, true)] {
        let [one, _] = sides(text);
        assert_eq!(one.contains("3 h or more"), head, "{one}");
    }
}

/// The card names nothing to keep off beside a column. Only loads with a dot in it may run.
#[test]
fn the_lent_box_has_a_card_of_two_sides() {
    let lent = include_str!("../../../tests/plans/large/lent-box.toml");
    let [one, two] = sides(lent);
    assert!(one.contains("Never together") && !one.contains("With column 1 on"), "{one}");
    assert!(two.contains("Local codes"), "{two}");
    let (plan, report) = demo(lent);
    let options = Options { only: vec![Document::Card], ..Options::default() };
    let prints = prints(&plan, &report, &Words::english(), &options).expect("printed");
    assert_eq!(prints.card_sheets, 1);
}

/// A load that must not be plugged in is not switched to its battery, as if it had been on. Near miss: it has an
/// outlet.
#[test]
fn a_breathing_machine_without_a_place_runs_on_its_battery_alone() {
    let weekend = crate::plan::demo::WEEKEND;
    let cpap = "name = \"CPAP machine\"";
    assert!(weekend.contains(cpap));
    let [one, two] = sides(weekend);
    assert!(one.contains("DO NOT PLUG IN: CPAP machine"), "{one}");
    assert!(one.contains("only on a battery"), "{one}");
    assert!(!two.contains("to battery power"), "{two}");
    let placed = crate::plan::demo::MENDED.replacen("kind = \"lamp\"", "kind = \"medical\"", 1);
    let [one, two] = sides(&placed);
    assert!(!one.contains("only on a battery") && two.contains("to battery power"), "{two}");
    assert!(one.contains("have a battery ready"), "{one}");
}

/// All emergencies are on one leaf in every language, however much room the first side takes.
#[test]
fn emergencies_stay_on_one_leaf() {
    let lent = include_str!("../../../tests/plans/large/lent-box.toml");
    for text in [crate::plan::demo::MENDED, crate::plan::demo::WEEKEND, lent] {
        let (plan, report) = demo(text);
        for words in super::hostile::languages() {
            for card in [CardSize::Half, CardSize::Pocket] {
                let options = Options { card, only: vec![Document::Card], ..Options::default() };
                let data = template_data(&plan, &report, &words, &options).expect("data");
                let told: serde_json::Value = serde_json::from_str(&data[0].1).expect("JSON");
                let titles: Vec<&str> = told["emergencies"]
                    .as_array()
                    .expect("emergencies")
                    .iter()
                    .filter_map(|it| it["title"].as_str())
                    .collect();
                let paged = typeset(Document::Card, data[0].1.clone(), &options).expect("typeset");
                // The last match, since the band on side 1 may begin with the same words.
                let on = |title: &str| {
                    paged.pages().iter().rposition(|page| {
                        let mut found = Vec::new();
                        super::legible::drawn(&page.frame, (0.0, 0.0), &mut found);
                        // Its first line.
                        let begins = |text: &str| text.len() >= 3 && title.starts_with(text.trim());
                        found.iter().any(|(_, _, _, text)| begins(text))
                    })
                };
                let leaves: Vec<Option<usize>> = titles.iter().map(|title| on(title)).collect();
                assert!(
                    leaves[0].is_some() && leaves.iter().all(|leaf| *leaf == leaves[0]),
                    "{} {card:?}: {leaves:?}",
                    words.language()
                );
            }
        }
    }
}

/// Returns the text of each page of a card as drawn.
fn pages(text: &str, card: CardSize) -> Vec<String> {
    super::legible::pages(text, Document::Card, &Options { card, ..Options::default() })
}

/// Side 1 gives the first thing to do when the alarm sounds, and says where the rest is.
#[test]
fn side_one_says_what_to_do_when_the_alarm_sounds() {
    let turned = [
        (CardSize::Sheet, "Turn this card over."),
        (CardSize::Half, "Turn this card over."),
        (CardSize::Phone, "See side 2."),
    ];
    for (card, where_to) in turned {
        let pages = pages(crate::plan::demo::MENDED, card);
        in_order(&pages[0], &["Exhaust kills", "Get everyone out. Call 911.", where_to, "front"]);
    }
}

/// Forty loads do not fit on one side. Side 2 stays on its back, the rest comes after it, and the first page says what
/// is there. Near miss: the demo.
#[test]
fn what_runs_over_comes_after_the_emergencies() {
    let market = include_str!("../../../tests/plans/large/market.toml");
    let all = pages(market, CardSize::Sheet);
    assert_eq!(all.len(), 3);
    in_order(&all[0], &["row10", "Never together", "Side 1 goes on", "3 / 3", "Together"]);
    in_order(&all[1], &["Call 911", "Someone gets a shock", "Stop and refuel"]);
    in_order(&all[2], &["Side 1 goes on", "Together", "Mist fan"]);
    assert_eq!(pages(crate::plan::demo::MENDED, CardSize::Sheet).len(), 2);
    // A tree higher than a sheet continues there too, but what must not be plugged in stays on side 1.
    let outlet = |at: usize| {
        format!(
            "[[box.outlet]]\nid = \"row{at}\"\nshape = \"5-20R\"\nsockets = 2\nbreaker = \"20 A\"\ngfci = true\n\
             leg = \"A\"\nwire = \"12 AWG\"\n"
        )
    };
    let oven = "[[load]]\nid = \"oven\"\nname = \"Oven\"\nkind = \"heater\"\nrunning = \"3500 W\"\nplug = \"5-15P\"\n";
    let outlets: String = (11..=60).map(outlet).collect();
    let high = market.replacen("[[load]]", &format!("{outlets}{oven}[[load]]"), 1);
    let all = pages(&high, CardSize::Sheet);
    in_order(&all[0], &["row10", "DO NOT PLUG IN: Oven", "Side 1 goes on"]);
    let on = |words: &str| all.iter().position(|page| page.contains(words));
    assert!(on("Site number") == Some(1) && on("row60") > Some(1), "{all:?}");
    // A small card omits the table and says so.
    let half = pages(market, CardSize::Half).concat();
    assert!(half.contains("What may run together: see the worksheet."), "{half}");
    assert!(!half.contains("Pick one column"), "{half}");
}

/// For a phone, each side is one page as wide as a screen, with an image of it, and says what the sheet says.
#[test]
fn the_card_for_a_phone_is_one_narrow_column() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let options = Options { card: CardSize::Phone, only: vec![Document::Card], ..Options::default() };
    let prints = prints(&plan, &report, &Words::english(), &options).expect("printed");
    show(&prints.files, "phone");
    let names: Vec<&str> = prints.files.iter().map(|(name, _)| &**name).collect();
    assert_eq!(names, ["card.pdf", "card-1.png", "card-2.png"]);
    assert_eq!(prints.card_sheets, 0);
    let pdf = pdf_extract::Document::load_mem(&prints.files[0].1).expect("a PDF");
    assert_eq!(pdf.get_pages().len(), 2);
    for page in pdf.get_pages().into_values() {
        let size = pdf.get_dictionary(page).and_then(|page| page.get(b"MediaBox"));
        let size = size.and_then(pdf_extract::Object::as_array).expect("a size");
        let width = size[2].as_float().expect("a width");
        assert!((width - 360.0).abs() < 0.01, "{width}");
    }
    let phone = text_of(&prints.files[0].1);
    // Text that only paper needs.
    let words = Words::english();
    let paper = ["turn", "flip", "site", "ranger", "hospital"];
    let paper = paper.map(|key| words.text(&format!("print-card-{key}"))).join(" ");
    for word in sides(crate::plan::demo::MENDED).concat().split_whitespace() {
        if !paper.contains(word) && word.chars().all(char::is_alphabetic) {
            assert!(phone.contains(word), "{word}");
        }
    }
}

/// If both sides of the card are on one sheet, the PDF asks the printer to flip it on the long edge.
#[test]
fn the_card_asks_for_both_sides_of_its_sheet() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    for (card, date) in
        [(CardSize::Sheet, None), (CardSize::Sheet, Date::from_str("2026-07-04").ok()), (CardSize::Half, None)]
    {
        let options = Options { card, date, ..Options::default() };
        for (name, bytes) in print(&plan, &report, &options).expect("printed") {
            let pdf = pdf_extract::Document::load_mem(&bytes).expect("a PDF");
            let wishes = pdf.catalog().and_then(|it| it.get(b"ViewerPreferences"));
            let wishes = wishes.and_then(pdf_extract::Object::as_dict).expect("wishes");
            let duplex = wishes.get(b"Duplex").and_then(pdf_extract::Object::as_name);
            let asked = duplex.is_ok_and(|how| how == b"DuplexFlipLongEdge");
            assert_eq!(asked, name == "card.pdf" && card == CardSize::Sheet, "{name} {card:?}");
        }
    }
}

/// Buttons are drawn next to the question about buttons, but not next to the one about a breaker's amps.
#[test]
fn the_look_sheet_draws_what_is_looked_for() {
    let drawn = |edits: &[(&str, &str)]| {
        let plan = crate::plan::read(&crate::rules::testing::edited(edits)).expect("a plan");
        let report = crate::judge::build(&plan);
        let sheet = super::agree::data_of(&plan, &report, Document::Look).expect("a sheet");
        let looks = sheet["looks"].as_array().expect("looks").clone();
        let mut of_front = looks.iter().filter(|look| look["what"].to_string().contains("front"));
        of_front.next().expect("it is looked at")["drawn"].clone()
    };
    assert_eq!(drawn(&[("gfci = true # front", "gfci = \"unknown\"")]), "face");
    let unread = ("breaker = \"20 A\" # front", "breaker = \"unknown\"");
    assert!(drawn(&[unread]).is_null());
}

/// Until somebody has looked, the card begins with what to do and what to look at, and a part that must not be used has
/// one row with all that it feeds.
#[test]
fn looks_come_ahead_of_a_tree_that_rests_on_guesses() {
    let lent = include_str!("../../../tests/plans/large/lent-box.toml");
    let before = crate::rules::testing::lent_box_before();
    let [one, _] = sides(&before);
    let at = |words: &str| one.find(words).unwrap_or_else(|| panic!("no {words}: {one}"));
    assert!(at("What to do next") < at("Look at these first"));
    assert!(at("Exhaust is only 15 ft from people") < at("Look at these first"));
    assert!(at("Look at these first") < at("DO NOT USE"));
    // The outlets of the box are told with it.
    let tree = &one[at("DO NOT USE")..];
    assert!(!tree.contains("box1-1"), "{tree}");
    // Nothing is moved where there are no dangers.
    let [one, _] = sides(lent);
    assert!(!one.contains("What to do next"), "{one}");
}

/// Small enough to send from a camp.
#[test]
fn card_and_labels_of_a_sound_plan_are_under_100_kb() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    for paper in [Paper::Letter, Paper::A4] {
        let options = Options { paper, only: vec![Document::Card, Document::Labels], ..Options::default() };
        for (name, bytes) in print(&plan, &report, &options).expect("printed") {
            assert!(bytes.len() < 100_000, "{name} {paper:?}: {}", bytes.len());
        }
    }
}

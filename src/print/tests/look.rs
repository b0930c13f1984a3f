//! The look sheet: a single page for looking at the gear.

use super::agree::{data_of, text_of};
use super::*;
use crate::rules::testing::{LENT_BOX, lent_box_before};

/// Returns the questions of the sheet by line.
fn questions(text: &str) -> Vec<Vec<String>> {
    let (plan, report) = demo(text);
    let data = data_of(&plan, &report, Document::Look).expect("data");
    let lines = data["looks"].as_array().into_iter().flatten();
    let of_line = |line: &serde_json::Value| {
        let all = line["questions"].as_array().into_iter().flatten();
        all.map(|it| text_of(it, "text").to_owned()).collect()
    };
    lines.map(of_line).collect()
}

/// Returns the words on each page of the sheet.
fn pages(text: &str) -> Vec<String> {
    super::legible::pages(text, Document::Look, &Options::default())
}

/// What is not bought yet is under a heading of its own. Nothing is if all of it is bought.
#[test]
fn what_to_buy_has_a_heading() {
    let headed = |bought: &str| {
        let wire = format!("wire = \"unknown\"\n{bought}");
        let text = crate::plan::demo::WEEKEND.replacen("wire = \"10 AWG\"", &wire, 1);
        assert_ne!(text, crate::plan::demo::WEEKEND);
        pages(&text).concat().contains("Not bought yet")
    };
    assert!(headed("bought = false"));
    assert!(!headed("bought = true"));
}

/// Two outlets of one shape have unread breakers. Names are not written on the gear, so each question names its outlet
/// and the sheet says how outlets are counted.
#[test]
fn each_question_names_its_outlet() {
    let text = r#"
format = 1
[site]
ground = "wet"
sleepers_at = "30 ft"
altitude = "0 ft"
co_alarm = true
feeds_building = false
stands = "open"
[generator]
rated = "2000 W"
peak = "2200 W"
voltage = "120 V"
neutral = "floating"
inverter = true
[[generator.outlet]]
id = "regular"
shape = "5-15R"
breaker = "unknown"
gfci = true
[[generator.outlet]]
id = "regular-2"
shape = "5-15R"
breaker = "unknown"
gfci = true
[[cord]]
id = "one"
from = "regular"
plug = "5-15P"
ends = ["5-15R"]
wire = "16 AWG"
conductors = 3
length = "25 ft"
outdoor = true
coiled = false
[[cord]]
id = "two"
from = "regular-2"
plug = "5-15P"
ends = ["5-15R"]
wire = "16 AWG"
conductors = 3
length = "25 ft"
outdoor = true
coiled = false
[[load]]
id = "kettle"
kind = "cooker"
running = "1000 W"
wanted = "must"
plug = "5-15P"
"#;
    let asked = questions(text).concat();
    let breakers: Vec<&String> = asked.iter().filter(|it| it.contains("breaker")).collect();
    assert_eq!(
        breakers,
        ["regular (5-15R): What number is on its breaker?", "regular-2 (5-15R): What number is on its breaker?"]
    );
    let counted = |text: &str| {
        let (plan, report) = demo(text);
        let data = data_of(&plan, &report, Document::Look).expect("data");
        data["count"].is_string()
    };
    assert!(counted(text));
    assert!(!counted(&text.replace("regular-2", "rear")));
}

/// Someone who knows next to nothing gets at most six lines, on one page. With the best answer to each and the tent
/// moved, no danger remains.
#[test]
fn the_lent_box_is_looked_at_on_one_page() {
    let before = lent_box_before();
    let (_, report) = demo(&before);
    assert!(report.count(Signal::Danger) > 0);
    assert!((1..=6).contains(&report.figures.looks.len()));
    assert_eq!(pages(&before).len(), 1);
    assert_eq!(demo(LENT_BOX).1.count(Signal::Danger), 0);
}

/// If nothing is left to look at, a look sheet printed earlier is reported as obsolete.
#[test]
fn a_sheet_that_is_done_with_goes() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    assert_eq!(report.figures.looks, []);
    let set = |only| {
        let options = Options { only, ..Options::default() };
        prints(&plan, &report, &Words::english(), &options).expect("printed")
    };
    assert_eq!(set(Vec::new()).needless, ["look.pdf"]);
    let look = set(vec![Document::Look]);
    assert_eq!(look.needless, [""; 0]);
}

//! Emergencies and setup, on paper and in every language.

use std::collections::BTreeSet;

use super::*;
use crate::tables::emergency::EMERGENCIES;
use crate::words::language::Catalog;
use crate::words::{Library, Units};

const LANGUAGES: [&str; 4] = ["en", "es", "fr", "de"];

fn data(text: &str, words: &Words, document: Document) -> serde_json::Value {
    let (plan, report) = demo(text);
    let all = template_data(&plan, &report, words, &Options::default()).expect("data");
    let (_, found) = all.into_iter().find(|(kind, _)| *kind == document).expect("the document");
    serde_json::from_str(&found).expect("JSON")
}

fn texts(of: &serde_json::Value) -> Vec<&str> {
    let list = of.as_array().expect("a list").iter();
    list.map(|text| text.as_str().expect("text")).collect()
}

#[test]
fn card_and_cautions_say_the_same_of_the_same_emergencies() {
    for tag in LANGUAGES {
        let words = Words::new(tag, Units::default()).expect("a language");
        let text = crate::plan::demo::MENDED;
        let card = data(text, &words, Document::Card);
        let cautions = data(text, &words, Document::Cautions);
        assert_eq!(card["emergencies"], cautions["emergencies"], "{tag}");
        let said = card["emergencies"].as_array().expect("a list");
        assert_eq!(said.len(), EMERGENCIES.len());
        for (emergency, said) in EMERGENCIES.iter().zip(said) {
            assert_eq!(texts(&said["steps"]).len(), emergency.steps.len());
        }
        // Both printed documents contain it.
        let (plan, report) = demo(text);
        let options = Options { only: vec![Document::Card, Document::Cautions], ..Options::default() };
        let files = render(&plan, &report, &words, &options).expect("printed");
        show(&files, &format!("emergency-{tag}"));
        let squeezed = |text: &str| -> String {
            text.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
        };
        for (name, pdf) in &files {
            let paper = squeezed(&text_of(pdf));
            for one in said {
                for step in texts(&one["steps"]) {
                    assert!(paper.contains(&squeezed(step)), "{tag} {name}: {step}");
                }
            }
        }
    }
}

/// A message that no emergency uses would amount to a second list.
#[test]
fn every_message_of_an_emergency_is_a_step_of_one() {
    let library = Library::built_in();
    let english = Catalog::of(library.folder("en").expect("English"));
    let written: BTreeSet<&str> = english
        .items
        .iter()
        .filter_map(|item| item.key.strip_prefix("print-emergency-"))
        .filter(|key| *key != "title")
        .collect();
    let used: BTreeSet<&str> =
        EMERGENCIES.iter().flat_map(|emergency| emergency.steps.iter().copied().chain([emergency.name])).collect();
    assert_eq!(written, used);
}

#[test]
fn what_nobody_may_forget_stands_in_its_emergency() {
    let words = Words::english();
    let card = data(crate::plan::demo::MENDED, &words, Document::Card);
    let steps = |name: &str| -> String {
        let at = EMERGENCIES.iter().position(|it| it.name == name);
        texts(&card["emergencies"][at.expect("an emergency")]["steps"]).join("\n")
    };
    for (name, said) in [
        ("fire", "911"),
        ("fire", "Wake everyone"),
        ("fire", "only if the way to it is clear"),
        ("fire", "not put water on burning fuel"),
        ("fire", "the way out behind you"),
        ("fire", "stop, drop, roll"),
        ("fire", "20 minutes"),
        ("alarm", "only one person feels sick"),
        ("alarm", "will not wake"),
        ("alarm", "911"),
        ("alarm", "Only in fresh air"),
        ("alarm", "only gasps, start CPR"),
        ("alarm", "until the fire department says so"),
        ("shock", "only with the engine off and the cord unplugged"),
        ("shock", "911"),
        ("shock", "only gasps, start CPR"),
        ("shock", "AED"),
        ("breaker", "before you touch any cord"),
    ] {
        assert!(steps(name).contains(said), "{name}: {said}");
    }
    // Nobody goes in to give CPR: every step about CPR first says where.
    let alarm = steps("alarm");
    for step in alarm.lines().filter(|step| step.contains("CPR")) {
        assert!(step.starts_with("Only in fresh air:"), "{step}");
    }
    assert!(alarm.find("Do not go in") < alarm.find("CPR"), "{alarm}");
    // Nobody feels along a cord while the engine runs.
    let breaker = steps("breaker");
    assert!(breaker.find("Stop the engine") < breaker.find("Feel along"), "{breaker}");
}

/// Stopping the engine cuts power to a breathing machine, so the step about its battery comes first. Without such a
/// machine there is no such step.
#[test]
fn what_a_life_depends_on_comes_before_the_engine_stops() {
    let words = Words::english();
    let last = EMERGENCIES.len() - 1;
    assert_eq!(EMERGENCIES[last].name, "breaker");
    let first = |text: &str| -> String {
        let card = data(text, &words, Document::Card);
        texts(&card["emergencies"][last]["steps"])[0].to_owned()
    };
    let mended = crate::plan::demo::MENDED;
    assert!(first(mended).starts_with("Stop the engine"));
    let lamp = "kind = \"lamp\"";
    assert!(mended.contains(lamp));
    let medical = mended.replacen(lamp, "kind = \"medical\"", 1);
    assert!(first(&medical).contains("battery"), "{}", first(&medical));
}

/// On card and cautions, whoever got a shock comes first, and right after that the battery of a breathing machine that
/// the engine powered, only if there is one. Where everyone leaves, nobody stays for it.
#[test]
fn what_a_life_depends_on_comes_right_after_the_engine_stops_for_a_shock() {
    let words = Words::english();
    let mended = crate::plan::demo::MENDED;
    let medical = mended.replacen("kind = \"lamp\"", "kind = \"medical\"", 1);
    for document in [Document::Card, Document::Cautions] {
        let battery = |text: &str, name: &str| {
            let print = data(text, &words, document);
            let at = EMERGENCIES.iter().position(|it| it.name == name);
            let steps = &print["emergencies"][at.expect("an emergency")]["steps"];
            texts(steps).iter().position(|step| step.contains("battery"))
        };
        // In the same step as stopping the engine.
        assert_eq!(battery(&medical, "shock"), Some(0));
        assert_eq!(battery(mended, "shock"), None);
        assert_eq!(battery(&medical, "fire"), None);
        assert_eq!(battery(&medical, "alarm"), None);
    }
}

/// If dangers leave no outlet for the loads, the card says so and does not speak of power. Near miss: with the GFCIs
/// that the plan has.
#[test]
fn what_danger_keeps_out_is_told_so() {
    let words = Words::english();
    let mended = crate::plan::demo::MENDED;
    let bare = mended.replace("gfci = true", "gfci = false");
    for (text, refused) in [(bare.as_str(), true), (mended, false)] {
        let card = data(text, &words, Document::Card);
        let card = card["unplaced"].as_str().unwrap_or_default();
        assert_eq!(card.contains("Every outlet that fits is full or must not be used"), refused, "{card}");
    }
}

/// Cords and boxes are connected while nothing is live, everything is off when the engine starts, and loads are
/// switched on last.
#[test]
fn cords_are_joined_before_the_engine_starts() {
    for tag in LANGUAGES {
        let words = Words::new(tag, Units::default()).expect("a language");
        let card = data(crate::plan::demo::MENDED, &words, Document::Card);
        let steps = texts(&card["setup"]);
        let at = |key: &str| {
            let text = words.text(&format!("print-setup-{key}"));
            steps.iter().position(|step| *step == text).expect("a step")
        };
        let order = ["look", "uncoil", "plug", "start", "test", "load"].map(at);
        assert!(order.is_sorted(), "{tag}: {order:?}");
    }
}

/// In every language both sides are one sheet. In the smallest size, each side takes two.
#[test]
fn the_card_keeps_to_its_sides_in_every_language() {
    // The packed plan has a medical device and so more steps.
    let demos = [crate::plan::demo::MENDED, crate::plan::demo::WEEKEND].map(demo);
    for (tag, (plan, report)) in LANGUAGES.iter().flat_map(|tag| demos.iter().map(move |it| (tag, it))) {
        let words = Words::new(tag, Units::default()).expect("a language");
        for (card, paper, pages) in [
            (CardSize::Sheet, Paper::Letter, 2),
            (CardSize::Sheet, Paper::A4, 2),
            (CardSize::Half, Paper::Letter, 1),
            (CardSize::Half, Paper::A4, 1),
            (CardSize::Pocket, Paper::Letter, 2),
        ] {
            let options = Options { card, paper, only: vec![Document::Card], ..Options::default() };
            let files = render(plan, report, &words, &options).expect("printed");
            let pdf = pdf_extract::Document::load_mem(&files[0].1).expect("a PDF");
            let count = pdf.get_pages().len();
            assert!(count <= pages, "{tag} {card:?} {paper:?}: {count}");
        }
    }
}

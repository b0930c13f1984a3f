//! Letters are high enough for the distance at which each document is read, in every language and on every stock.

use typst::layout::{Frame, FrameItem};

use super::*;
use crate::words::{Library, Units};

/// The distance from each document to the eye, in millimeters. Labels, on gear that lies or hangs, and the card beside
/// it are read at arm's length. Cautions are held in the hand. The worksheet and the alignment page lie on a table, as
/// far from the eye.
const DISTANCES: [(Document, f64); 5] = [
    (Document::Labels, 600.0),
    (Document::Card, 600.0),
    (Document::Cautions, 400.0),
    (Document::Worksheet, 400.0),
    (Document::Alignment, 400.0),
];

/// Returns the height of the signal word at a distance, in the same unit: ANSI Z535.2-1998 9.2.3, from a secondary
/// copy.
fn signal_height(distance: f64) -> f64 {
    distance / 150.0
}

/// Returns the height of other words at a distance, from the same source.
fn message_height(distance: f64) -> f64 {
    distance / 300.0
}

/// The worked example of the same clause, from the same secondary copy: at 25 ft a message is 1.00 in high and its
/// signal word 2.00 in.
#[test]
fn the_heights_are_those_of_the_published_example() {
    let distance = 25.0 * 12.0;
    assert!((message_height(distance) - 1.00).abs() < 1e-9);
    assert!((signal_height(distance) - 2.00).abs() < 1e-9);
}

/// The check that refuses small text uses the same distances.
#[test]
fn printing_stops_at_the_same_heights() {
    for (document, distance) in DISTANCES {
        let least = check::reading_distance(document) * check::MESSAGE;
        assert!((least - message_height(distance)).abs() < 1e-9);
    }
}

/// Collects every piece of text in a frame with the height of its capitals as drawn. Nothing is scaled, only moved and
/// rotated.
pub(super) fn capitals(frame: &Frame, found: &mut Vec<(String, f64)>) {
    for (_, item) in frame.items() {
        match item {
            FrameItem::Group(group) => {
                let of = group.transform;
                let (wide, high) = (of.sx.get().hypot(of.ky.get()), of.sy.get().hypot(of.kx.get()));
                assert!((wide - 1.0).abs() < 1e-6 && (high - 1.0).abs() < 1e-6);
                capitals(&group.frame, found);
            }
            FrameItem::Text(text) => {
                found.push((text.text.trim().to_owned(), check::capital(text)));
            }
            _ => {}
        }
    }
}

/// Checks the height of every text that these options print, as a message or as a signal word. Returns the number of
/// signal words in each document.
fn all_is_high_enough(
    what: &str,
    (plan, report): &(Plan, Report),
    words: &Words,
    options: &Options,
) -> BTreeMap<&'static str, usize> {
    let signals = [Signal::Danger, Signal::Warning, Signal::Caution, Signal::Notice].map(|signal| words.signal(signal));
    let mut counted = BTreeMap::new();
    for (document, data) in data::all(plan, report, words, options).expect("worded") {
        let (_, distance) = DISTANCES.into_iter().find(|(of, _)| *of == document).expect("a distance");
        let paged = typeset(document, data, options).unwrap_or_else(|error| panic!("{what} {document:?}: {error}"));
        let mut found = Vec::new();
        for page in paged.pages() {
            capitals(&page.frame, &mut found);
        }
        assert!(!found.is_empty(), "{what}: nothing in {document:?}");
        for (text, height) in found {
            // In the worksheet's table they are not panels but words in a row.
            let signal = signals.contains(&text) && document != Document::Worksheet;
            let least = if signal {
                *counted.entry(document.name()).or_insert(0) += 1;
                signal_height(distance)
            } else {
                message_height(distance)
            };
            assert!(height >= least, "{what} {document:?}: {text:?} is {height:.2} mm high, not {least:.2} mm");
        }
    }
    counted
}

/// Returns the words of every offered language.
fn languages() -> Vec<(String, Words)> {
    Library::built_in()
        .offered()
        .map(|tag| {
            let words = Words::new(tag, Units::Metric).expect("an offered language");
            (tag.to_string(), words)
        })
        .collect()
}

#[test]
fn every_word_of_every_label_is_high_enough() {
    let weekend = demo(crate::plan::demo::WEEKEND);
    let languages = languages();
    for (turn, name) in Stock::names().into_iter().enumerate() {
        let options = Options {
            stock: Some(Stock::named(&name).expect("a stock")),
            only: vec![Document::Labels],
            alignment: true,
            ..Options::default()
        };
        // English on each stock, and one other language in turn.
        let others = languages.iter().skip(turn % languages.len()).take(1);
        let english = ("en".to_owned(), Words::english());
        for (tag, words) in std::iter::once(&english).chain(others) {
            let what = format!("{name} {tag}");
            let signals = all_is_high_enough(&what, &weekend, words, &options);
            assert!(signals.contains_key("labels"), "{what}: no signal word");
        }
    }
}

/// Twelve receptacles downstream of a part that must not be used, in the language with the longest words for that. If
/// one did not fit its label, the sheet would not print.
#[test]
fn a_large_plan_has_room_on_every_stock() {
    let text = include_str!("../../../tests/plans/large/twelve.toml");
    let thin = text.replacen("wire = \"10 AWG\"", "wire = \"12 AWG\"", 1);
    let twelve = demo(&thin);
    let words = Words::new("es", Units::Metric).expect("an offered language");
    for name in Stock::names() {
        let options = Options {
            stock: Some(Stock::named(&name).expect("a stock")),
            only: vec![Document::Labels],
            ..Options::default()
        };
        let signals = all_is_high_enough(&name, &twelve, &words, &options);
        assert!(signals.contains_key("labels"), "{name}: no signal word");
    }
}

#[test]
fn every_word_of_cards_cautions_and_worksheets_is_high_enough() {
    let plans = [crate::plan::demo::WEEKEND, crate::plan::demo::MENDED].map(demo);
    let languages = languages();
    let cards = [CardSize::Sheet, CardSize::Half, CardSize::Pocket];
    let papers = [Paper::Letter, Paper::A4];
    let all = cards.into_iter().flat_map(|card| papers.map(|paper| (card, paper)));
    for (turn, (card, paper)) in all.enumerate() {
        let options = Options {
            paper,
            card,
            only: vec![Document::Card, Document::Cautions, Document::Worksheet],
            ..Options::default()
        };
        for (which, words) in [(0, &Words::english()), (turn % 2, &languages[turn % languages.len()].1)] {
            let what = format!("{card:?} {paper:?} {turn}");
            let signals = all_is_high_enough(&what, &plans[which], words, &options);
            assert!(signals.contains_key("cautions"), "{what}: no signal word");
            // Only this plan has dangers.
            if which == 0 {
                assert!(signals.contains_key("card"), "{what}: no signal word");
            }
        }
    }
}

/// A user's template that prints smaller text is refused, and the text is named.
#[test]
fn what_is_too_small_to_read_stops_the_press() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let built_in = |wanted: &str| {
        let all = templates();
        let found = all.iter().find(|(path, _)| *path == wanted);
        found.expect("a template").1.to_owned()
    };
    let labels = built_in("labels.typ");
    let with = |text: String| {
        let options = Options {
            only: vec![Document::Labels],
            templates: [("labels.typ".to_owned(), text)].into(),
            ..Options::default()
        };
        print(&plan, &report, &options)
    };
    // 7.8 pt gives capitals of 2.006 mm, and 7.7 pt of 1.98 mm.
    let fold = "size: 7.8pt,\n    top-edge";
    assert!(labels.contains(fold));
    with(labels.clone()).expect("printed");
    match with(labels.replace(fold, "size: 7.7pt,\n    top-edge")) {
        Err(PrintError::TooSmall { text, percent, .. }) => {
            assert_eq!((text.as_str(), percent), ("Fold here around the cord", 99));
        }
        other => panic!("{:?}", other.map(|files| files.len())),
    }
}

/// What does not fit on a label is dropped, the path back to the generator first, but never what protects people.
#[test]
fn a_full_label_says_less_and_not_smaller() {
    let (mut plan, _) = demo(crate::plan::demo::MENDED);
    let options = Options { only: vec![Document::Labels], ..Options::default() };
    let label_of = |plan: &Plan| {
        let report = crate::judge::judge(plan);
        let files = print(plan, &report, &options).expect("printed");
        show(&files, &format!("full-{}", plan.loads[0].name.len()));
        let text = text_of(&files[0].1);
        // From the name of one receptacle to that of the next.
        let from = text.find("box-left\n").expect("its label");
        let to = text[from..].find("box-right").map_or(text.len(), |at| from + at);
        text[from..to].replace('\u{a0}', " ")
    };
    let keeps = |label: &str| {
        for text in ["16 A", "1,920 W", "GFCI: YES"] {
            assert!(label.contains(text), "{text}: {label}");
        }
    };
    let label = label_of(&plan);
    keeps(&label);
    for text in ["Gets power from", "19.2 A", "PLUG IN HERE"] {
        assert!(label.contains(text), "{text}: {label}");
    }
    // The kettle and griddle are planned there.
    for (times, plug_in) in [(5, true), (40, false)] {
        for load in &mut plan.loads {
            load.name = "a kettle of Robin's ".repeat(times) + load.id.as_str();
        }
        let label = label_of(&plan);
        keeps(&label);
        assert!(!label.contains("Gets power from"), "{label}");
        assert_eq!(label.contains("PLUG IN HERE"), plug_in, "{label}");
    }
}

/// Collects the drawn texts as left edge, right edge, line and text.
pub(super) fn drawn(frame: &Frame, (x, y): (f64, f64), found: &mut Vec<(f64, f64, f64, String)>) {
    for (at, item) in frame.items() {
        let (x, y) = (x + at.x.to_pt(), y + at.y.to_pt());
        match item {
            FrameItem::Group(group) => {
                let of = group.transform;
                drawn(&group.frame, (x + of.tx.to_pt(), y + of.ty.to_pt()), found);
            }
            FrameItem::Text(text) => {
                let right = x + text.width().to_pt();
                found.push((x, right, y, text.text.to_string()));
            }
            _ => {}
        }
    }
}

/// Returns the words on each page of a document as drawn.
pub(super) fn pages(text: &str, document: Document, options: &Options) -> Vec<String> {
    let (plan, report) = demo(text);
    let options = Options { only: vec![document], ..options.clone() };
    let data = template_data(&plan, &report, &Words::english(), &options).expect("data");
    let paged = typeset(document, data[0].1.clone(), &options).expect("typeset");
    let of_page = |page: &typst_layout::Page| {
        let mut found = Vec::new();
        drawn(&page.frame, (0.0, 0.0), &mut found);
        let words: Vec<String> = found.into_iter().map(|(_, _, _, text)| text.replace('\u{a0}', " ")).collect();
        words.join(" ").split_whitespace().collect::<Vec<_>>().join(" ")
    };
    paged.pages().iter().map(of_page).collect()
}

/// Returns all texts on a page after checking that none overlaps another.
fn apart(frame: &Frame, what: &str) -> Vec<String> {
    let mut found = Vec::new();
    drawn(frame, (0.0, 0.0), &mut found);
    found.sort_by(|one, other| one.0.total_cmp(&other.0));
    for (at, one) in found.iter().enumerate() {
        for other in &found[at + 1..] {
            let beside = (one.2 - other.2).abs() < 2.0;
            assert!(!beside || other.0 >= one.1 - 0.1, "{what}: {one:?} runs into {other:?}");
        }
    }
    found.into_iter().map(|(_, _, _, text)| text).collect()
}

/// Builds a plan with forty loads and twelve outlets, with ids of 23 letters, on a box and a two-leg generator.
fn forty() -> String {
    let outlet = |of: &str, id: &str, shape: &str, amps: u32| {
        format!("[[{of}.outlet]]\nid = \"{id}\"\nshape = \"{shape}\"\nbreaker = \"{amps} A\"\ngfci = true\n")
    };
    let mut plan = "format = 1\nregion = \"north-america\"\n[site]\nground = \"damp\"\nco_alarm = true\n\
        stands = \"open\"\nsleepers_at = \"40 ft\"\n[generator]\nrated = \"6500 W\"\npeak = \"8000 W\"\n\
        voltage = \"120/240 V\"\nneutral = \"floating\"\n"
        .to_owned();
    for letter in ["a", "b", "c"] {
        plan += &outlet("generator", &format!("generator-front-panel-{letter}"), "5-20R", 20);
    }
    plan += &outlet("generator", "generator-front-panel-d", "L14-30R", 30);
    plan += "[[cord]]\nid = \"heavy-cord-to-the-tents\"\nfrom = \"generator-front-panel-d\"\nplug = \"L14-30P\"\n\
        ends = [\"L14-30R\"]\nwire = \"10 AWG\"\nconductors = 4\nlength = \"50 ft\"\noutdoor = true\ncoiled = false\n\
        [[box]]\nid = \"box-in-the-large-tent-x\"\nfrom = \"heavy-cord-to-the-tents\"\ninlet = \"L14-30P\"\n\
        listed = true\nbond = false\n";
    for letter in ["a", "b", "c", "d", "e", "f", "g", "h"] {
        plan += &outlet("box", &format!("box-outlet-number-long-{letter}"), "5-20R", 20);
    }
    for number in 0..40 {
        let (name, kind, watts) = [
            ("Kettle", "cooker", 1200),
            ("Lamps", "lamp", 40),
            ("Radio", "electronic", 15),
            ("Phone charger", "electronic", 20),
        ][number % 4];
        let load = format!(
            "[[load]]\nid = \"load-number-{number}\"\nname = \"{name} {number}\"\nkind = \"{kind}\"\n\
             running = \"{watts} W\"\n"
        );
        plan += &load;
    }
    plan
}

/// On page 1 of the worksheet each part keeps to its columns, and the whole case, with the signature, is on that
/// page.
#[test]
fn forty_loads_have_room_on_every_print() {
    let (plan, report) = demo(&forty());
    let words = Words::english();
    for paper in [Paper::Letter, Paper::A4] {
        let options = Options { paper, only: vec![Document::Card, Document::Worksheet], ..Options::default() };
        for (document, data) in data::all(&plan, &report, &words, &options).expect("worded") {
            let paged = typeset(document, data, &options).unwrap_or_else(|error| panic!("{document:?}: {error}"));
            let first = apart(&paged.pages()[0].frame, "forty").concat();
            match document {
                Document::Card => assert!(paged.pages().len() <= 4),
                _ => assert!(first.contains("Signature"), "{first}"),
            }
        }
    }
}

/// In no language does a word of the cautions overlap what is beside it. A long signal word can reach the title.
#[test]
fn nothing_on_the_cautions_runs_into_another() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    for (tag, words) in languages() {
        let options = Options { only: vec![Document::Cautions], ..Options::default() };
        for (document, data) in data::all(&plan, &report, &words, &options).expect("worded") {
            let paged = typeset(document, data, &options).expect("typeset");
            let mut signals = 0;
            let warning = words.signal(Signal::Warning);
            for page in paged.pages() {
                let found = apart(&page.frame, &tag);
                signals += found.iter().filter(|text| **text == warning).count();
            }
            assert!(signals > 0, "{tag}: no signal word");
        }
    }
}

//! The text of labels as printed: the place, one figure, what plugs in, and whether shock protection works.

use super::legible::capitals;
use super::*;

/// Returns the texts of a plan's labels on a stock, in drawing order, with the height of their capitals.
fn drawn(text: &str, stock: &str) -> Vec<(String, f64)> {
    let (plan, report) = demo(text);
    let options = Options {
        stock: Some(Stock::named(stock).expect("a stock")),
        only: vec![Document::Labels],
        ..Options::default()
    };
    let mut data = template_data(&plan, &report, &Words::english(), &options).expect("data");
    let (document, data) = data.swap_remove(0);
    let paged = typeset(document, data, &options).expect("typeset");
    let mut found = Vec::new();
    for page in paged.pages() {
        capitals(&page.frame, &mut found);
    }
    found.into_iter().map(|(text, high)| (text.replace('\u{a0}', " "), high)).collect()
}

/// Returns the height of the first text with these words on the label of `of`. Searching starts at the last mention of
/// `of`, since the label of its box names it too.
fn high(drawn: &[(String, f64)], of: &str, words: &str) -> f64 {
    let from = drawn.iter().rposition(|(text, _)| text == of);
    let from = from.unwrap_or_else(|| panic!("no {of}: {drawn:?}"));
    let found = drawn[from..].iter().find(|(text, _)| text.contains(words));
    found.unwrap_or_else(|| panic!("no {words} after {of}: {drawn:?}")).1
}

/// Returns the texts from the largest mention of `of` on: its name on its own label.
fn named<'a>(drawn: &'a [(String, f64)], of: &str) -> &'a [(String, f64)] {
    let mentions = drawn.iter().enumerate().filter(|(_, (text, _))| text == of);
    let largest = mentions.max_by(|(_, (_, one)), (_, (_, other))| one.total_cmp(other));
    &drawn[largest.unwrap_or_else(|| panic!("no {of}: {drawn:?}")).0..]
}

/// The height of capitals that people act on, at 600 mm, in millimeters: those of type of 3 mm, which is 8.5 pt.
fn acted_on() -> f64 {
    8.5 / 7.8 * 600.0 * check::MESSAGE
}

/// The order of sizes and places holds on each stock.
#[test]
fn the_figure_is_the_largest_and_what_plugs_in_comes_next() {
    for stock in Stock::names() {
        let drawn = drawn(crate::plan::demo::MENDED, &stock);
        let [amps, plugs, guard] = ["16 A", "Toaster", "GFCI"].map(|words| high(&drawn, "box-right", words));
        assert!(amps > plugs && plugs >= guard, "{stock}: {amps} {plugs} {guard}");
        let label = named(&drawn, "box-right");
        let at = |words: &str| label.iter().position(|(text, _)| text.contains(words));
        assert!(at("Toaster") > at("16 A"), "{stock}: {label:?}");
        // What plugs in stays on the label even if the feed, the reason and the figure for a short time do not fit.
        for load in ["Cooler", "Fan", "Electric", "CPAP", "chargers", "Kettle"] {
            // The generator's facts name one of them too.
            let of_load = drawn.iter().filter(|(text, _)| text.contains(load)).map(|(_, high)| *high);
            let high = of_load.fold(0.0, f64::max);
            assert!(high >= acted_on() - 1e-3, "{stock}: {load} {high}");
        }
        for order in ["NO APPLIANCES HERE", "ADD UP THE AMPS"] {
            let found = drawn.iter().find(|(text, _)| text == order);
            assert!(found.is_none_or(|(_, high)| *high >= acted_on() - 1e-3), "{stock}: {found:?}");
        }
        // The figure for a short time, if there is room for it.
        let short = label.iter().find(|(text, _)| text == "19.2 A");
        assert!(short.is_none_or(|(_, high)| *high <= plugs), "{stock}: {short:?} {plugs}");
    }
}

/// Whether a GFCI works is told as yes, no or not known, also for a cord of several ends.
#[test]
fn every_label_says_yes_or_no_to_a_gfci() {
    let mended = crate::plan::demo::MENDED;
    let (before, twist) = mended.split_once("id = \"twist\"").expect("an outlet");
    let twist = twist.replacen("gfci = false", "gfci = \"unknown\"", 1);
    let unknown = format!("{before}id = \"twist\"{twist}");
    for stock in Stock::names() {
        let said = |drawn: &[(String, f64)], of: &str| {
            let said = named(drawn, of).iter().find(|(text, _)| text.starts_with("GFCI: "));
            said.map(|(text, _)| text.clone()).unwrap_or_default()
        };
        let known = drawn(mended, &stock);
        let of_cords = [("tents", "GFCI: YES"), ("long", "GFCI: NO")];
        for (of, wanted) in of_cords.into_iter().chain([("box-lamp", "GFCI: YES"), ("twist", "GFCI: NO")]) {
            assert!(said(&known, of).starts_with(wanted), "{stock} {of}: {known:?}");
        }
        assert!(said(&drawn(&unknown, &stock), "twist").starts_with("GFCI: NOT KNOWN"), "{stock}");
    }
}

/// The signal word exceeds the words of its message by half (ANSI Z535.4, from a secondary copy).
#[test]
fn the_signal_word_is_half_as_high_again_as_its_message() {
    for stock in Stock::names() {
        for text in [crate::plan::demo::MENDED, crate::plan::demo::WEEKEND] {
            let drawn = drawn(text, &stock);
            let messages = ["Exhaust kills", "puts small outlets", "No GFCI protects"];
            let is_message = |text: &str| messages.iter().any(|message| text.contains(message));
            for (at, (message, high)) in drawn.iter().enumerate().filter(|(_, (text, _))| is_message(text)) {
                // The panel above it.
                let signal = drawn[..at].iter().rfind(|(text, _)| text == "DANGER").expect("a panel");
                assert!(signal.1 >= 1.499 * high, "{stock}: {message} {high} {}", signal.1);
            }
        }
    }
}

/// If not everything fits, the first ones stay, with how many more there are. No label omits what plugs in.
#[test]
fn small_labels_name_the_first_and_count_the_rest() {
    let market = include_str!("../../../tests/plans/large/market.toml");
    for stock in ["letter-30", "a4-24", "letter-14", "roll-12"] {
        let drawn = drawn(market, stock);
        for (first, last) in [("Card reader", "Speaker"), ("Freezer", "Battery charger"), ("Blender", "Slicer")] {
            // A name may be on two lines.
            let text = drawn.iter().map(|(text, _)| text.as_str()).collect::<Vec<_>>().join(" ");
            assert!(text.contains(first), "{stock}: {first}");
            assert!(text.contains(last) || text.contains(" more"), "{stock}: {last}");
        }
    }
}

/// An outlet may be used, but the plan does not use it and it has no GFCI. No figure on its label is larger than the
/// words that nothing is planned there, and nothing invites anyone to plug in.
#[test]
fn no_label_invites_to_an_outlet_without_protection_that_nothing_is_planned_for() {
    for stock in Stock::names() {
        let drawn = drawn(crate::plan::demo::MENDED, &stock);
        let from = drawn.iter().rposition(|(text, _)| text == "box-through");
        let of_it = &drawn[from.expect("its label")..];
        let [words, amps] = ["NOTHING PLANNED", "19.2 A"].map(|it| high(of_it, "box-through", it));
        assert!(words >= amps, "{stock}: {words} {amps}");
        let invited = |(text, _): &(String, f64)| text.to_lowercase().contains("plug in here");
        assert!(!of_it.iter().any(invited), "{stock}: {of_it:?}");
    }
}

/// A cord that feeds only a box that must not be used is not told to be plugged in, on the label of its outlet or its
/// own. Near miss: the box may be used.
#[test]
fn no_label_sends_anyone_to_plug_in_what_leads_nowhere() {
    let told = |bond: &str| {
        let box_of = include_str!("../../../tests/plans/usual/b08-bonded-box.toml").replace("bond = true", bond);
        let drawn = drawn(&box_of, "roll-62");
        let label = named(&drawn, "twist").iter().take_while(|(text, _)| text != "long");
        let text = label.map(|(text, _)| text.to_lowercase()).collect::<Vec<_>>().join(" ");
        text.contains("plug in here")
    };
    assert!(told("bond = false"));
    assert!(!told("bond = true") && !told("bond = \"unknown\""));
}

/// Even a GFCI cord may draw no more than the outlet's limit.
#[test]
fn where_only_a_gfci_cord_may_go_in_the_limit_is_told() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let limit = report.figures.limits.iter().find(|it| it.id == id("front"));
    let most = Words::english().amount(limit.expect("a limit").continuous_amps, crate::words::Show::Capacity);
    let spaced = |bytes: &[u8]| text_of(bytes).split_whitespace().collect::<Vec<_>>().join(" ");
    let most = most.replace('\u{a0}', " ");
    for (file, words) in [(0, "Use at most "), (1, "use at most ")] {
        let text = spaced(&files[file].1).replace('\u{a0}', " ");
        assert!(text.contains(&format!("{words}{most}")), "{most}: {text}");
    }
}

/// The splitter and its ends share one tag, on which the order is larger than the signal word.
#[test]
fn what_must_not_be_used_has_one_tag() {
    for stock in Stock::names() {
        let drawn = drawn(crate::plan::demo::WEEKEND, &stock);
        let orders: Vec<f64> = drawn.iter().filter(|(text, _)| text == "DO NOT USE").map(|(_, high)| *high).collect();
        assert_eq!(orders.len(), 1, "{stock}: {drawn:?}");
        let signal = drawn.iter().find(|(text, _)| text == "DANGER").expect("a panel");
        assert!(stock == "roll-12" || orders[0] > signal.1, "{stock}: {orders:?} {signal:?}");
    }
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let labels = text_of(&files[0].1);
    assert!(labels.contains("With triple.1, triple.2, triple.3"), "{labels}");
}

/// The exhaust warning is a panel above the watts.
#[test]
fn the_generator_tells_of_its_exhaust() {
    for stock in Stock::names() {
        let drawn = drawn(crate::plan::demo::MENDED, &stock);
        let at = |words: &str| {
            let found = drawn.iter().position(|(text, _)| text.contains(words));
            found.unwrap_or_else(|| panic!("{stock}: no {words}"))
        };
        assert!(at("DANGER") < at("2,310 W"), "{stock}");
        assert!(at("Exhaust kills") < at("2,310 W"), "{stock}");
    }
}

/// Each label has its own code, which depends only on what it says.
#[test]
fn every_label_has_the_code_of_what_it_says() {
    let codes = |text: &str, stock: Option<&str>| -> BTreeMap<String, String> {
        let (plan, report) = demo(text);
        let options = Options {
            stock: stock.map(|name| Stock::named(name).expect("a stock")),
            start_at: usize::from(stock.is_some()),
            only: vec![Document::Labels],
            ..Options::default()
        };
        let data = template_data(&plan, &report, &Words::english(), &options).expect("data");
        let labels = data::labels_in(&data[0].1).into_iter();
        let code = |label: &serde_json::Value| label["code"].as_str().expect("a code").to_owned();
        labels.map(|(name, label)| (name, code(&label))).collect()
    };
    let mended = crate::plan::demo::MENDED;
    let before = codes(mended, None);
    assert_eq!(codes(mended, Some("letter-30")), before);
    let other = mended.replacen("name = \"Toaster\"", "name = \"Toast\"", 1);
    assert_ne!(mended, other);
    let after = codes(&other, None);
    let changed: Vec<&String> = before.keys().filter(|name| before[*name] != after[*name]).collect();
    assert_eq!(changed, ["box-right"]);
    // All labels show it but those on the narrowest tape.
    for stock in Stock::names().iter().filter(|name| *name != "roll-12") {
        let text = drawn(mended, stock);
        for code in before.values() {
            let digits = code.trim_start_matches(|c: char| !c.is_ascii_digit());
            assert!(text.iter().any(|(text, _)| text == code || text == digits), "{stock}: {code}");
        }
    }
}

#[test]
fn the_next_free_label_is_told() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let used = |stock: &str, start_at: usize| {
        let options = Options {
            stock: Some(Stock::named(stock).expect("a stock")),
            start_at,
            only: vec![Document::Labels],
            ..Options::default()
        };
        prints(&plan, &report, &Words::english(), &options).expect("printed").labels
    };
    let told = |count: usize, next: Option<usize>| Some(LabelsUsed { count, next });
    // The demo has seventeen labels.
    assert_eq!(used("letter-8", 1), told(17, Some(2)));
    assert_eq!(used("letter-8", 8), told(17, None));
    assert_eq!(used("letter-30", 3), told(17, Some(20)));
    assert_eq!(used("roll-24", 1), None);
}

/// Words are separated by one space, with no gap that a text reader would take for two or none.
#[test]
fn labels_are_set_with_single_spaces() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let options = Options::default();
    let mut data = template_data(&plan, &report, &Words::english(), &options).expect("data");
    let (document, data) = data.swap_remove(0);
    let paged = typeset(document, data, &options).expect("typeset");
    let mut found = Vec::new();
    for page in paged.pages() {
        super::legible::drawn(&page.frame, (0.0, 0.0), &mut found);
    }
    let text: String = found.into_iter().map(|(_, _, _, text)| text).collect();
    for words in ["Gets power from the blue one", "Plug into twist"] {
        assert!(text.contains(words), "{words}: {text}");
    }
    assert!(!text.contains("  "), "{text}");
}

//! Tests that every rule has the same form, and every remedy its words.

use std::collections::BTreeSet;

use super::{all, find};
use crate::tables::emergency::CALL;
use crate::words::{Library, PAGES, PARTS, Units, Words, list_of_rules};

#[test]
fn codes_and_names_are_unique_and_found() {
    let mut seen = BTreeSet::new();
    for rule in all() {
        assert!(seen.insert(rule.code), "{} twice", rule.code);
        assert!(seen.insert(rule.name), "{} twice", rule.name);
        for text in [rule.code, rule.name, &rule.code.to_lowercase()] {
            assert_eq!(find(text).map(|found| found.code), Some(rule.code));
        }
        let area: String = rule.code.chars().filter(char::is_ascii_alphabetic).collect();
        assert!(rule.area.to_uppercase().starts_with(&area), "{}", rule.code);
        assert_eq!(rule.code.len(), area.len() + 3, "{}", rule.code);
    }
    assert!(find("AIR999").is_none());
}

#[test]
fn codes_stand_in_order_within_their_area() {
    let rules: Vec<_> = all().collect();
    for pair in rules.windows(2) {
        assert!(
            pair[0].area != pair[1].area || pair[0].code < pair[1].code,
            "{} before {}",
            pair[0].code,
            pair[1].code
        );
    }
}

#[test]
fn every_page_has_its_title_and_parts() {
    let words = Words::english();
    for rule in all() {
        let page = words.page(rule);
        assert_eq!(page.title, format!("{} {}", rule.code, rule.name));
        assert_eq!(page.parts.len(), PARTS.len(), "{}", rule.code);
        for (part, (heading, text)) in PARTS.iter().zip(&page.parts) {
            assert_eq!(heading, &words.text(&format!("page-{part}")), "{}", rule.code);
            assert!(text.chars().count() > 40, "{}: {heading} says too little", rule.code);
        }
    }
    assert_eq!(words.faults(), Vec::<String>::new());
}

/// In every language, a rule's page lists exactly the sources that its findings carry, in the same words and with the
/// same marks.
#[test]
fn every_page_lists_its_sources_with_their_marks() {
    let bare = |text: &str| text.replace('\u{a0}', " ");
    for tag in Library::built_in().offered() {
        let words = Words::new(tag, Units::Metric).expect("it is offered");
        for rule in all() {
            assert!(!rule.sources.is_empty(), "{} has no authority", rule.code);
            let page = words.page(rule);
            let section = bare(page.part("sources"));
            let items: Vec<&str> = section.lines().collect();
            assert!(items.iter().all(|item| item.starts_with("- ")), "{tag} {}", rule.code);
            for source in rule.sources {
                let cited = bare(&words.source(source));
                let (said, mark) = match cited.rsplit_once(" (") {
                    Some((said, mark)) => (said, format!("({mark}")),
                    None => ("", cited.clone()),
                };
                assert!(
                    items.iter().any(|item| item.contains(said) && item.contains(&mark)),
                    "{tag} {}: its page lacks {cited}",
                    rule.code
                );
            }
            assert!(items.len() >= rule.sources.len(), "{tag} {}: fewer items than sources", rule.code);
        }
    }
}

#[test]
fn every_rule_has_words() {
    let words = Words::english();
    for rule in all() {
        assert!(words.has(rule.code), "{}", rule.code);
        assert!(words.has(&format!("{}.why", rule.code)), "{}", rule.code);
        assert!(!rule.fixes.is_empty(), "{}", rule.code);
        for fix in rule.fixes {
            let key = format!("{}.fix-{fix}", rule.code);
            assert!(words.has(&key), "{key}");
        }
    }
    assert_eq!(words.faults(), Vec::<String>::new());
}

#[test]
fn nothing_is_called_safe() {
    let files = include_dir::include_dir!("$CARGO_MANIFEST_DIR/i18n/en");
    let english = Words::english();
    let pages = all().map(|rule| (rule.code.to_owned(), format!("{:?}", english.page(rule))));
    let words = files.files().map(|file| {
        let text = file.contents_utf8().unwrap_or_default();
        // Comments are for translators.
        let text = text
            .lines()
            .filter(|line| !line.starts_with('#') && !line.starts_with("language-never-say"))
            .collect::<Vec<_>>()
            .join("\n");
        (file.path().display().to_string(), text)
    });
    for (place, text) in pages.chain(words) {
        let claims = text
            .split(|c: char| !c.is_alphabetic())
            .any(|word| ["safe", "safely", "harmless"].contains(&word.to_lowercase().as_str()));
        assert!(!claims, "{place}");
    }
}

#[test]
fn the_list_has_a_line_for_every_rule() {
    assert_eq!(list_of_rules().lines().count(), 2 + all().count());
    for tag in Library::built_in().offered() {
        let words = Words::new(tag, Units::Metric).expect("it is offered");
        for rule in all() {
            let summary = words.page(rule).summary();
            assert!(summary.ends_with('.'), "{tag} {}: {summary}", rule.code);
            assert!(!summary.contains(['|', '\n']), "{tag} {}: {summary}", rule.code);
        }
    }
}

/// The example plan is in order, so whatever an edited one sets off is the edit's doing. Its one finding: the GFCIs are
/// in the box, as is usual, so protection begins behind the cord that feeds it.
#[test]
fn the_example_plan_sets_nothing_else_off() {
    assert_eq!(super::testing::codes(&[]), ["SHOCK012"]);
}

#[test]
fn every_rule_is_set_off_and_spared() {
    for rule in all() {
        assert!(!rule.fires.is_empty() && !rule.spares.is_empty(), "{}", rule.code);
        for edits in rule.fires {
            let codes = super::testing::codes(edits);
            assert!(codes.contains(&rule.code), "{} not in {codes:?} for {edits:?}", rule.code);
        }
        for edits in rule.spares {
            let codes = super::testing::codes(edits);
            assert!(!codes.contains(&rule.code), "{} in {codes:?} for {edits:?}", rule.code);
        }
    }
}

/// No rule claims a worse signal than it can give. The assertion in `Findings::add` covers the other direction.
#[test]
fn every_rule_reaches_its_worst() {
    for rule in all() {
        let plans = rule.fires.iter();
        let worst = plans.flat_map(|edits| super::testing::signals(rule.code, edits)).min();
        assert_eq!(worst, Some(rule.worst), "{}", rule.code);
    }
}

/// Rules with no amount to report: what they find is either there or not, such as a homemade box.
const WITHOUT_AMOUNT: &[&str] = &[
    "CORD002", "CORD009", "SHOCK002", "SHOCK003", "SHOCK005", "SHOCK006", "SHOCK009", "SHOCK010", "SHOCK013", "FIT001",
    "AIR002", "AIR004",
];

/// Every finding gives an amount in its title, its reason or its remedy.
#[test]
fn every_finding_says_how_much() {
    let words = Words::english();
    for rule in all() {
        let told = rule.fires.iter().any(|edits| {
            super::testing::findings(edits)
                .iter()
                .filter(|found| found.code == rule.code)
                .map(|found| words.finding(found, &[]))
                .any(|text| {
                    let all = format!("{} {} {}", text.title, text.why, text.fix);
                    // The emergency number is not an amount.
                    let all = all.replace(CALL, "");
                    all.contains(|c: char| c.is_ascii_digit())
                })
        });
        assert_eq!(told, !WITHOUT_AMOUNT.contains(&rule.code), "{}", rule.code);
    }
}

/// The plans that set a rule off use every remedy it has, and each finding says what, why, what to do and on what
/// authority, with no gap in any sentence.
#[test]
fn every_remedy_is_used_and_every_sentence_is_whole() {
    let words = Words::english();
    for rule in all() {
        let mut used = BTreeSet::new();
        for edits in rule.fires {
            for finding in super::testing::findings(edits) {
                if finding.code == rule.code {
                    used.insert(finding.fix.key);
                }
                let text = words.finding(&finding, &[]);
                assert!(!text.sources.is_empty(), "{}", rule.code);
                for sentence in [&text.title, &text.why, &text.fix] {
                    assert!(sentence.chars().count() > 10, "{}: {sentence}", rule.code);
                    assert!(!sentence.contains(['{', '}', '$']), "{sentence}");
                }
            }
        }
        assert_eq!(used, rule.fixes.iter().copied().collect(), "{}", rule.code);
    }
    assert_eq!(words.faults(), Vec::<String>::new());
}

/// Returns the numbers that precede this unit in a text.
fn numbers_before<'t>(text: &'t str, unit: &str) -> Vec<&'t str> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let before = words.windows(2).filter(|pair| {
        let named = pair[1].trim_end_matches(|c: char| !c.is_alphanumeric());
        named == unit && pair[0].starts_with(|c: char| c.is_ascii_digit())
    });
    before.map(|pair| pair[0]).collect()
}

/// Amounts that a page gives in both units agree: "25 ft (7.7 m)", "95 °F (35 °C)". Conversions round up, except for
/// what must not be longer: the 2 m of adapters.
#[test]
fn pages_give_one_amount_in_both_units() {
    let number = |text: &str| -> Option<f64> { text.rsplit(['\n', ' ', '(']).next()?.parse().ok() };
    let english = Library::built_in().folder("en").expect("English");
    let mut found = 0;
    for rule in all() {
        let page = &english.files[&format!("{PAGES}/{}.md", rule.code)];
        let page = page.split_whitespace().collect::<Vec<_>>().join(" ");
        for (customary, metric, step) in [("ft", "m", 0.3048), ("°F", "°C", 1.0)] {
            for (before, after) in
                page.match_indices(&format!(" {customary} (")).map(|(at, sign)| (&page[..at], &page[at + sign.len()..]))
            {
                let Some((inside, _)) = after.split_once(&format!(" {metric})")) else {
                    panic!("{}: {customary} without {metric}: {after}", rule.code);
                };
                let (Some(theirs), Some(ours)) = (number(before), number(inside)) else {
                    panic!("{}: {before} {inside}", rule.code);
                };
                let exact = match customary {
                    "ft" => theirs * step,
                    // A difference of 18 °F is one of 10 °C, and one of 10 °F is one of 5.6 °C.
                    _ if ["10", "5.6"].contains(&inside) => theirs / 1.8,
                    _ => (theirs - 32.0) / 1.8,
                };
                let over = ours - exact;
                let most = if theirs < 1000.0 { 0.1 } else { 0.5 };
                assert!(over.abs() < most, "{}: {theirs} {ours}", rule.code);
                let need = ["20", "25", "10", "15", "3"].contains(&theirs.to_string().as_str());
                assert!(!need || over >= 0.0, "{}: {theirs} {ours}", rule.code);
                found += 1;
            }
        }
    }
    assert!(found > 40, "{found}");
}

/// A distance or cord that is too short never reads as the required one: for a person at 19.99 ft no text says "20 ft",
/// nor "25 ft" for a cord of 24.99 ft.
#[test]
fn what_is_too_near_never_looks_as_far_as_it_must_be() {
    let said = |words: &Words, code: &str, edits: &[(&str, &str)]| -> Vec<(String, String)> {
        super::testing::findings(edits)
            .iter()
            .filter(|finding| finding.code == code)
            .map(|finding| {
                let text = words.finding(finding, &[]);
                (text.title, format!("{} {}", text.why, text.fix))
            })
            .collect()
    };
    let customary = (Words::english(), "ft");
    let metric = Words::new("en", Units::Metric).expect("English");
    for (words, unit) in [customary, (metric, "m")] {
        let numbers = |text: &str| -> Vec<String> {
            let text = text.replace('\u{a0}', " ");
            numbers_before(&text, unit).iter().map(|&it| it.to_owned()).collect()
        };
        let (mut near, mut short) = (0, 0);
        // 20 ft and 25 ft, and up to 40 mm less.
        for bound in [6_096, 7_620] {
            for millimetres in bound - 40..bound {
                let at = format!("sleepers_at = \"{millimetres} mm\"");
                for (title, rest) in said(&words, "AIR001", &[("sleepers_at = \"60 ft\"", &at)]) {
                    let is = numbers(&title);
                    assert_eq!(is.len(), 1, "{title}");
                    assert!(!numbers(&rest).contains(&is[0]), "{title} {rest}");
                    near += 1;
                }
                let length = format!("length = \"{millimetres} mm\"");
                for (_, rest) in said(&words, "AIR005", &[("length = \"50 ft\"", &length)]) {
                    let both = numbers(&rest);
                    assert!(both.len() >= 2 && both[0] != both[1], "{rest}");
                    short += 1;
                }
            }
            // At the bound itself, the distance is enough.
            let at = format!("sleepers_at = \"{bound} mm\"");
            let found = said(&words, "AIR001", &[("sleepers_at = \"60 ft\"", &at)]);
            assert_eq!(found.is_empty(), bound == 7_620);
        }
        assert_eq!((near, short), (80, 80));
    }
}

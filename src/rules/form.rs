//! Every rule has the same form, and every remedy its words.

use std::collections::BTreeSet;

use super::{HEADINGS, all, find, list_markdown};
use crate::tables::source::Mark;
use crate::words::Words;

#[test]
fn codes_and_names_are_unique_and_found() {
    let mut seen = BTreeSet::new();
    for rule in all() {
        assert!(seen.insert(rule.code), "{} twice", rule.code);
        assert!(seen.insert(rule.name), "{} twice", rule.name);
        for text in [rule.code, rule.name, &rule.code.to_lowercase()] {
            assert_eq!(find(text).map(|found| found.code), Some(rule.code));
        }
        let area: String = rule
            .code
            .chars()
            .filter(char::is_ascii_alphabetic)
            .collect();
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
fn every_page_has_the_fixed_headings_in_order() {
    for rule in all() {
        let page = rule.page();
        let found: Vec<_> = page.lines().filter(|line| line.starts_with('#')).collect();
        let mut expected = vec![format!("# {} {}", rule.code, rule.name)];
        expected.extend(HEADINGS.iter().map(|heading| format!("## {heading}")));
        assert_eq!(found, expected, "{}", rule.code);
        for heading in HEADINGS {
            assert!(
                rule.section(heading).chars().count() > 40,
                "{}: {heading} says too little",
                rule.code
            );
        }
    }
}

/// The page lists exactly the sources that a finding carries, with the same marks.
#[test]
fn every_page_lists_its_sources_with_their_marks() {
    for rule in all() {
        assert!(!rule.sources.is_empty(), "{} has no authority", rule.code);
        let section = rule.section("Sources").replace('\n', " ");
        let items: Vec<&str> = section.split("- ").filter(|item| item.len() > 3).collect();
        for source in rule.sources {
            let mark = match source.mark {
                Mark::Confirmed => "(confirmed)",
                Mark::Secondary => "(from a secondary copy)",
                Mark::Memory => "(from memory, not verified)",
                Mark::CommonPractice => "common practice, no source",
            };
            assert!(
                items.iter().any(|item| {
                    let item = item.split_whitespace().collect::<Vec<_>>().join(" ");
                    [source.document, source.clause, source.edition, mark]
                        .iter()
                        .all(|part| item.contains(part))
                }),
                "{}: its page lacks {source:?}",
                rule.code
            );
        }
        assert!(
            items.len() >= rule.sources.len(),
            "{}: fewer items than sources",
            rule.code
        );
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
    let pages = all().map(|rule| (rule.code.to_owned(), rule.page()));
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
    assert_eq!(list_markdown().lines().count(), 2 + all().count());
    for rule in all() {
        assert!(rule.summary().ends_with('.'), "{}", rule.code);
        assert!(!rule.summary().contains('|'), "{}", rule.code);
    }
}

/// The example itself is in order, so that what an edited one sets off is the edit's doing; but its
/// protection is in its box, as it usually is, and so begins behind the cord that feeds it.
#[test]
fn the_example_plan_sets_nothing_else_off() {
    assert_eq!(super::testing::codes(&[]), ["SHOCK012"]);
}

#[test]
fn every_rule_is_set_off_and_spared() {
    for rule in all() {
        assert!(
            !rule.fires.is_empty() && !rule.spares.is_empty(),
            "{}",
            rule.code
        );
        for edits in rule.fires {
            let codes = super::testing::codes(edits);
            assert!(
                codes.contains(&rule.code),
                "{} not in {codes:?} for {edits:?}",
                rule.code
            );
        }
        for edits in rule.spares {
            let codes = super::testing::codes(edits);
            assert!(
                !codes.contains(&rule.code),
                "{} in {codes:?} for {edits:?}",
                rule.code
            );
        }
    }
}

/// No rule is called graver than it is; that none finds worse is asserted where findings are added.
#[test]
fn every_rule_reaches_its_worst() {
    for rule in all() {
        let plans = rule.fires.iter();
        let worst = plans
            .flat_map(|edits| super::testing::signals(rule.code, edits))
            .min();
        assert_eq!(worst, Some(rule.worst), "{}", rule.code);
    }
}

/// Rules that have no amount to tell: what they find is there or it is not, as a box is home made.
const WITHOUT_AMOUNT: &[&str] = &[
    "CORD002", "SHOCK002", "SHOCK003", "SHOCK005", "SHOCK006", "SHOCK009", "SHOCK010", "SHOCK013",
    "FIT001", "AIR002", "AIR004",
];

/// Every finding says how much, in its title, its reason or its remedy.
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
                    all.contains(|c: char| c.is_ascii_digit())
                })
        });
        assert_eq!(told, !WITHOUT_AMOUNT.contains(&rule.code), "{}", rule.code);
    }
}

/// The plans that set a rule off use every remedy it has, and each finding says what, why, what
/// to do and by what authority, with no hole in any sentence.
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

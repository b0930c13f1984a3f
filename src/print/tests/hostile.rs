//! Names that nobody should type and somebody will, on every stock and print. Either every letter is printed within its
//! own label, cell and page, or nothing is printed and the text is named.

use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

use super::*;
use crate::words::{Library, Units};

fn name() -> impl Strategy<Value = String> {
    let word = prop_oneof![
        // Long, with no place to break.
        4 => "[A-Za-z]{1,60}",
        4 => "[W_m.-]{1,60}",
        // Right to left, alone and mixed.
        4 => "[א-ת ]{1,30}",
        4 => "[ا-ي]{1,20} [0-9]{1,4}",
        // Stacked combining marks.
        4 => "(e\u{301}|n\u{303}|a\u{308}\u{323}){1,20}",
        // The typesetter's own markup.
        4 => Just("#panic() $x$ *b* _i_ @ref <l> \\ `r` // {}[] #let".to_owned()),
        4 => Just("= Heading - list / term: x".to_owned()),
        4 => "[ -~]{0,80}",
        // In no font.
        1 => "[一-十]{1,12}",
        1 => Just("🔌🏕️👩‍👧".to_owned()),
        // Direction marks and control characters.
        1 => "[\u{0}-\u{1f}\u{7f}\u{200e}\u{202a}-\u{202e}\u{2066}-\u{2069}\u{feff}]{1,3}",
        1 => any::<String>(),
    ];
    proptest::collection::vec(word, 1..3).prop_map(|words| words.join(" "))
}

/// Returns the plan with this name for its site, its generator or one of its loads.
fn named(plan: &Plan, which: usize, name: String) -> Plan {
    let mut plan = plan.clone();
    match which {
        0 => plan.site.name = name,
        1 => plan.generator.name = name,
        _ => plan.loads[1].name = name,
    }
    plan
}

/// Returns the words of every offered language.
pub(super) fn languages() -> Vec<Words> {
    let tags = Library::built_in().offered();
    tags.map(|tag| Words::new(tag, Units::Metric).expect("an offered language")).collect()
}

/// Returns whether printing succeeded. If it stopped, checks that the error names the text.
fn printed_or_named(
    plan: &Plan,
    report: &Report,
    words: &Words,
    options: &Options,
    turned: bool,
) -> Result<bool, TestCaseError> {
    match render(plan, report, words, options) {
        Ok(_) => Ok(true),
        Err(PrintError::NoGlyph { characters, .. }) => {
            prop_assert!(!characters.is_empty());
            Ok(false)
        }
        Err(PrintError::TooLong { misfits, .. }) => {
            for misfit in misfits {
                prop_assert!(!misfit.text.is_empty() && misfit.percent < 100, "{misfit:?}");
            }
            Ok(false)
        }
        // If directions or marks mix in one word, the typesetter sometimes sets its end beside the line. The final
        // check catches that and prints nothing. In a reordered text, the piece it names is not a piece of the name.
        Err(PrintError::OffPage { text, .. }) => {
            let names = [&plan.site.name, &plan.generator.name, &plan.loads[1].name];
            prop_assert!(names.contains(&&text) || turned && !text.is_empty(), "{text:?}");
            Ok(false)
        }
        Err(other) => Err(TestCaseError::fail(other.to_string())),
    }
}

/// Prints the plan `cases` times, each with a random hostile name and the next options in turn. The language changes
/// when all options were used. At least `least` cases must print, since the test would prove nothing if everything were
/// refused.
fn through(text: &str, turns: usize, cases: usize, least: usize, options: impl Fn(usize) -> Options) {
    let (plan, _) = demo(text);
    let languages = languages();
    let whole = std::cell::Cell::new(0);
    let turn = std::cell::Cell::new(0);
    let mut runner = TestRunner::new(Config {
        cases: u32::try_from(cases).expect("few"),
        failure_persistence: None,
        ..Config::default()
    });
    runner
        .run(&(0_usize..3, name()), |(which, name)| {
            let turned = name.chars().any(world::runs_left);
            let plan = named(&plan, which, name);
            let report = crate::judge::judge(&plan);
            let now = turn.get();
            turn.set(now + 1);
            let words = &languages[(now + now / turns) % languages.len()];
            if printed_or_named(&plan, &report, words, &options(now % turns), turned)? {
                whole.set(whole.get() + 1);
            }
            Ok(())
        })
        .expect("whole or named");
    assert!(whole.get() >= least, "{} printed", whole.get());
}

#[test]
fn hostile_names_print_whole_or_are_named_on_every_stock() {
    let stocks = Stock::names();
    // Each stock in turn, so that none is left out.
    let turns = stocks.len();
    through(crate::plan::demo::MENDED, turns, 2 * turns, 5, |turn| Options {
        stock: Some(Stock::named(&stocks[turn]).expect("a stock")),
        only: vec![Document::Labels],
        ..Options::default()
    });
}

#[test]
fn hostile_names_print_whole_or_are_named_on_every_card_and_list() {
    through(crate::plan::demo::WEEKEND, 6, 18, 2, |turn| Options {
        card: [CardSize::Sheet, CardSize::Half, CardSize::Pocket][turn % 3],
        paper: [Paper::Letter, Paper::A4][turn % 2],
        only: vec![Document::Card, Document::Cautions, Document::Worksheet],
        ..Options::default()
    });
}

/// A fixed name of each kind on every stock.
#[test]
fn a_name_of_each_kind_goes_through_every_stock() {
    let (plan, _) = demo(crate::plan::demo::MENDED);
    for (name, prints) in [
        ("קומקום 12 (גדול)", true),
        ("e\u{301}\u{323}tang", true),
        ("#set page(width: 1pt)", true),
        ("湖", false),
        ("🔌", false),
        // Signs that hide are written out.
        ("a\u{202e}b", true),
        ("a\u{7}b", true),
    ] {
        let mut plan = plan.clone();
        plan.loads[0].name = name.to_owned();
        let report = crate::judge::judge(&plan);
        for stock in Stock::names() {
            let options = Options {
                stock: Some(Stock::named(&stock).expect("a stock")),
                only: vec![Document::Labels],
                ..Options::default()
            };
            match print(&plan, &report, &options) {
                Ok(_) => assert!(prints, "{name:?} on {stock}"),
                Err(PrintError::NoGlyph { .. }) => assert!(!prints, "{name:?} on {stock}"),
                Err(other) => panic!("{name:?} on {stock}: {other}"),
            }
        }
    }
}

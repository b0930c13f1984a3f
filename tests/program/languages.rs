//! Every offered language as users meet it: which one is chosen, and that no English is left in messages and prints.

use std::path::Path;
use std::process::Output;

use assert_cmd::Command;
use tallywatt::plan::demo::WEEKEND;
use tallywatt::words::language::Catalog;
use tallywatt::words::{FIRST_LANGUAGE, Library, Units, Words};

fn tallywatt(arguments: &[&str], locale: &str, within: &Path) -> Output {
    Command::new(env!("CARGO_BIN_EXE_tallywatt"))
        .args(arguments)
        .current_dir(within)
        .env("NO_COLOR", "1")
        .env("COLUMNS", "80")
        .env("LC_ALL", locale)
        .env_remove("LANGUAGE")
        .env("TALLYWATT_DATA", within.join("data"))
        .output()
        .expect("the program starts")
}

fn words(tag: &str) -> Words {
    Words::new(tag, Units::Metric).expect("an offered language")
}

/// Returns the offered languages other than English.
fn others() -> impl Iterator<Item = &'static str> {
    Library::built_in().offered().filter(|tag| *tag != FIRST_LANGUAGE)
}

/// The requested language counts first, then the plan's, then the system's, then English.
#[test]
fn the_language_is_chosen_in_that_order() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let signal = |output: &Output, tag: &str| {
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        let signal = words(tag).signal(tallywatt::report::Signal::Warning);
        assert!(said.contains(&format!(" {signal} ")), "{tag}: {said}");
    };
    let plan = |language: &str| {
        let text = WEEKEND.replacen("format = 1", &format!("format = 1\n{language}"), 1);
        std::fs::write(dir.path().join("plan.toml"), text).expect("written");
    };
    plan("");
    let check = |more: &[&str], locale: &str| {
        let arguments = [&["check", "plan.toml"], more].concat();
        tallywatt(&arguments, locale, dir.path())
    };
    signal(&check(&[], "C"), "en");
    // No such language is offered.
    signal(&check(&[], "tlh_AQ.UTF-8"), "en");
    for tag in others() {
        let locale = format!("{}.UTF-8", tag.replace('-', "_"));
        plan("");
        signal(&check(&[], &locale), tag);
        signal(&check(&["--language", "en"], &locale), "en");
        signal(&check(&["--language", tag], "C"), tag);
        plan(&format!("language = \"{tag}\""));
        signal(&check(&[], "C"), tag);
        signal(&check(&["--language", "en"], "C"), "en");
        plan("language = \"en\"");
        signal(&check(&[], &locale), "en");
    }
    let lost = check(&["--language", "tlh"], "C");
    assert_eq!(lost.status.code(), Some(64));
    let said = String::from_utf8_lossy(&lost.stderr).into_owned();
    assert!(said.contains("tlh") && said.contains("en"), "{said}");
}

/// Splits a message into pieces of plain text long enough to be distinctive.
fn pieces(written: &str) -> impl Iterator<Item = String> + '_ {
    written
        .split(['{', '}', '\n', '[', ']', '*'])
        .map(squeezed)
        .filter(|piece| piece.len() > 14 && !piece.contains(['$', '"', '-']))
}

/// Removes white space, because lines break anywhere.
fn squeezed(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}

#[test]
fn no_english_is_left_in_the_prints_of_another_language() {
    let library = Library::built_in();
    let english = Catalog::of(library.folder(FIRST_LANGUAGE).expect("English"));
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut tags: Vec<&str> = others().collect();
    // English comes first to check the test itself: English must be found in English.
    tags.insert(0, FIRST_LANGUAGE);
    for tag in tags {
        let into = dir.path().join(tag);
        let into = into.to_str().expect("a path of the test");
        let made = tallywatt(&["demo", "--into", into, "--language", tag], "C", dir.path());
        let said = String::from_utf8_lossy(&made.stdout).into_owned();
        let failed = String::from_utf8_lossy(&made.stderr).into_owned();
        assert!(made.status.success(), "{tag}: {failed}");
        let mut text = squeezed(&said);
        for name in ["labels.pdf", "card.pdf", "cautions.pdf", "worksheet.pdf"] {
            let page = Path::new(into).join(name);
            text.push_str(&squeezed(&pdf_extract::extract_text(page).expect("text")));
        }
        let base = tag.split('-').next().unwrap_or(tag);
        let own: String = [base, tag]
            .into_iter()
            .filter_map(|tag| library.folder(tag))
            .flat_map(|folder| folder.files.values())
            .map(|file| squeezed(file))
            .collect();
        let left: Vec<String> = english
            .items
            .iter()
            .flat_map(|item| pieces(&item.written).collect::<Vec<_>>())
            .filter(|piece| text.contains(piece.as_str()))
            .filter(|piece| tag == FIRST_LANGUAGE || !own.contains(piece.as_str()))
            .collect();
        if tag == FIRST_LANGUAGE {
            assert!(left.len() > 100, "English is not found in English: {left:?}");
        } else {
            assert_eq!(left, Vec::<String>::new(), "{tag}");
        }
    }
}

/// A host who reads one language can print cards for guests who read others.
#[test]
fn prints_in_several_languages_at_once() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let tags: Vec<&str> = Library::built_in().offered().collect();
    let several = tags.join(",");
    let made = tallywatt(&["demo", "--into", "paper", "--print-language", &several], "C", dir.path());
    let failed = String::from_utf8_lossy(&made.stderr).into_owned();
    assert!(made.status.success(), "{failed}");
    for tag in &tags {
        let name = match tags.as_slice() {
            [_] => "card.pdf".to_owned(),
            _ => format!("card-{tag}.pdf"),
        };
        assert!(dir.path().join("paper").join(&name).is_file(), "{name}");
    }
    let said = String::from_utf8_lossy(&made.stdout).into_owned();
    assert!(said.contains(&words("en").text("check-next")), "{said}");
}

/// Nothing overflows on any label sheet or tape, or on a half or pocket card, in any language.
#[test]
fn nothing_printed_overflows_in_any_language() {
    use tallywatt::print::{CardSize, Document, Options, Stock, render};
    let plan = tallywatt::plan::read(WEEKEND).expect("the demo reads");
    let report = tallywatt::judge::build(&plan);
    for tag in Library::built_in().offered() {
        let words = words(tag);
        let labels = Stock::names().into_iter().map(|name| Options {
            stock: Stock::named(&name).ok(),
            only: vec![Document::Labels],
            ..Options::default()
        });
        let cards = [CardSize::Half, CardSize::Pocket].map(|card| Options {
            card,
            only: vec![Document::Card],
            ..Options::default()
        });
        for options in labels.chain(cards) {
            if let Err(error) = render(&plan, &report, &words, &options) {
                let stock = options.stock.map(|stock| stock.name);
                panic!("{tag}, {stock:?}: {}", error.in_words(&Words::english()));
            }
        }
        assert_eq!(words.faults(), Vec::<String>::new(), "{tag}");
    }
}

/// The pages and the list of the rules are in the reader's language, with meters and without feet.
#[test]
fn rules_are_explained_in_every_language() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let say = |arguments: &[&str], tag: &str| {
        let all = [arguments, &["--language", tag, "--units", "metric"]].concat();
        let said = tallywatt(&all, "C", dir.path());
        assert!(said.status.success(), "{tag}");
        String::from_utf8_lossy(&said.stdout).replace('\u{a0}', " ")
    };
    let (page, list) = (say(&["explain", "AIR001"], "en"), say(&["explain"], "en"));
    for tag in others() {
        let words = words(tag);
        let own = say(&["explain", "AIR001"], tag);
        for part in tallywatt::words::PARTS {
            let heading = words.text(&format!("page-{part}"));
            assert!(own.contains(&format!("\n{heading}\n")), "{tag}: {own}");
        }
        assert!(own.contains("7,7 m") || own.contains("7.7 m"), "{tag}: {own}");
        assert!(!own.contains(" ft") && !own.contains('{'), "{tag}: {own}");
        let lines = |text: &str| -> Vec<String> {
            // The first line of a page is the rule's name.
            let long = text.lines().skip(1).filter(|line| line.len() > 30);
            long.map(str::to_owned).collect()
        };
        let theirs = lines(&page);
        let same: Vec<String> = lines(&own).into_iter().filter(|it| theirs.contains(it)).collect();
        assert_eq!(same, Vec::<String>::new(), "{tag}");
        let theirs = lines(&list);
        let own = say(&["explain"], tag);
        let same = lines(&own).into_iter().filter(|it| theirs.contains(it));
        // Codes and names are the same in every language.
        let same: Vec<String> = same.filter(|line| line.starts_with(' ')).collect();
        assert_eq!(same, Vec::<String>::new(), "{tag}");
        assert_eq!(words.faults(), Vec::<String>::new(), "{tag}");
    }
}

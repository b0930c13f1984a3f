//! A test language that nobody speaks: the first language with accents on its letters, repeated if wanted. Text without
//! the accents did not come from a language folder. Text that overflows when doubled would overflow in the longest
//! language.

use std::collections::BTreeSet;

use fluent_syntax::ast::{Entry, Expression, Pattern, PatternElement, Resource};
use fluent_syntax::serializer::serialize;

use crate::words::{ABOUT, FIRST_LANGUAGE, Library, Units, Words};

/// Its tag, from the range for private use.
const TAG: &str = "qps";

/// Plain letters, and below the accented ones that replace them.
const PLAIN: &str = "aeiouycnszAEIOUCNSZ";
const WITH_MARKS: &str = "äëïöüÿçñšžÄËÏÖÜÇÑŠŽ";

/// Returns the words of the test language, with each sentence repeated `times` times.
///
/// # Panics
/// Never: the first language is built into the program.
#[must_use]
pub fn marked(times: usize) -> Words {
    let built_in = Library::built_in();
    let mut library = Library::default();
    library.add(TAG, ABOUT, "language-state = complete\n");
    let first = built_in.folder(FIRST_LANGUAGE);
    for (name, text) in first.iter().flat_map(|folder| folder.messages()) {
        let parsed = fluent_syntax::parser::parse(text.clone().into_owned());
        let (Ok(mut resource) | Err((mut resource, _))) = parsed;
        mark(&mut resource, times);
        library.add(TAG, name, serialize(&resource));
    }
    let chain = library.chain(TAG).expect("the folder made above");
    Words::of(&chain, Units::Customary)
}

/// Returns the words in `text` that lack accents: three ASCII letters or more with a vowel, and not in `known`, which
/// lists what comes from no language folder (names, codes, citations, units).
#[must_use]
pub fn unmarked(text: &str, known: &str) -> BTreeSet<String> {
    let known: BTreeSet<&str> = words(known).collect();
    words(text)
        .filter(|word| word.len() > 2 && word.is_ascii() && word.contains(vowel))
        .filter(|word| !known.contains(word))
        .map(str::to_owned)
        .collect()
}

fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !c.is_alphabetic())
}

fn vowel(letter: char) -> bool {
    "aeiouAEIOU".contains(letter)
}

fn mark(resource: &mut Resource<String>, times: usize) {
    for entry in &mut resource.body {
        if let Entry::Message(message) = entry {
            let attributes = message.attributes.iter_mut().map(|it| &mut it.value);
            for found in message.value.iter_mut().chain(attributes) {
                pattern(found, times);
            }
        }
    }
}

fn pattern(found: &mut Pattern<String>, times: usize) {
    for element in &mut found.elements {
        match element {
            PatternElement::TextElement { value } => *value = with_marks(value, times),
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                for variant in variants {
                    pattern(&mut variant.value, times);
                }
            }
            PatternElement::Placeable { .. } => {}
        }
    }
}

fn with_marks(text: &str, times: usize) -> String {
    let marked: String = text
        .chars()
        .map(|letter| {
            let at = PLAIN.chars().position(|plain| plain == letter);
            at.and_then(|at| WITH_MARKS.chars().nth(at)).unwrap_or(letter)
        })
        .collect();
    // Drawings are equally wide in every language.
    if marked.chars().filter(|c| c.is_alphabetic()).count() * 2 < marked.chars().count() {
        return marked;
    }
    let line = marked.trim_end_matches('\n');
    let end = &marked[line.len()..];
    let mut out = line.to_owned();
    for _ in 1..times {
        out.push(' ');
        out.push_str(line.trim_start());
    }
    out + end
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::judge;
    use crate::plan::demo::{MENDED, WEEKEND};
    use crate::print::{Document, Options, PrintError, render};
    use crate::report::Report;
    use crate::rules;
    use crate::tables::volts;
    use crate::words::problem::{self, Look};

    /// Returns text that comes from no language folder: what the owner wrote, the report's codes and ids, unit symbols
    /// and citations.
    fn known(text: &str, report: &Report) -> String {
        let report = report.to_json().expect("a report is plain data");
        let cited: Vec<String> = rules::all()
            .flat_map(|rule| rule.sources)
            .chain([&volts::RANGE_A])
            .map(|source| format!("{} {}", source.document, source.clause))
            .collect();
        let tables = [
            include_str!("../../tables/appliances.toml"),
            include_str!("../../tables/conductor.toml"),
            include_str!("../../tables/copper.toml"),
            include_str!("../../tables/derating.toml"),
            include_str!("../../tables/kinds.toml"),
            include_str!("../../tables/motors.toml"),
        ];
        let documents: Vec<&str> =
            tables.iter().flat_map(|table| table.lines()).filter(|line| line.contains("document = ")).collect();
        let (cited, documents) = (cited.join(" "), documents.join(" "));
        format!("{text} {report} {cited} {documents} GFCI TEST RESET AWG dBA iii max min log")
    }

    #[test]
    fn a_sentence_without_marks_is_found() {
        let words = marked(2);
        assert_eq!(words.text("signal-danger"), "DÄÑGËR DÄÑGËR");
        assert!(unmarked(&words.text("check-defer"), "").is_empty());
        let found = unmarked("Löçäl çödëš decide. 12 AWG on “long”.", "long AWG");
        assert_eq!(found.into_iter().collect::<Vec<_>>(), ["decide"]);
        assert_eq!(words.faults(), Vec::<String>::new());
    }

    #[test]
    fn everything_on_the_screen_comes_from_a_language_folder() {
        for times in [1, 2] {
            let words = marked(times);
            for text in [WEEKEND, MENDED] {
                let plan = crate::plan::read(text).expect("a demo reads");
                let (report, _) = crate::mend::advised(&plan, false);
                let known = known(text, &report);
                let wrapped = |text: String| textwrap::fill(&text, crate::words::wrapping(80));
                let said = [
                    words.troubles(&report, 80),
                    words.limits(&report, 80),
                    words.sharing(&report, 80),
                    wrapped(words.count(&report)),
                    words.brief(&report, 80),
                    words.repairs(&report, 80),
                ];
                for said in said {
                    let said = anstream::adapter::strip_str(&said).to_string();
                    assert_eq!(unmarked(&said, &known), BTreeSet::new(), "{said}");
                    let wide: Vec<&str> =
                        said.lines().filter(|line| textwrap::core::display_width(line) > 80).collect();
                    assert_eq!(wide, Vec::<&str>::new());
                }
            }
            assert_eq!(words.faults(), Vec::<String>::new());
        }
    }

    #[test]
    fn a_bad_plan_is_told_from_a_language_folder() {
        let words = marked(2);
        let text = "format = 1\n[generator]\nrated = 2800\nneutral = \"wobbly\"\n";
        let problems = crate::plan::read(text).expect_err("a bad plan");
        let look = Look { coloured: false, width: 80 };
        let said = problem::render(&words, "a.toml", text, &problems, look);
        // Keys of the plan file are the same in every language.
        let known = format!("{WEEKEND} {text} a.toml bonded parallel");
        assert_eq!(unmarked(&said, &known), BTreeSet::new(), "{said}");
    }

    /// Returns the text of every print, as extracted from the PDF file.
    fn prints(words: &Words, text: &str) -> (Report, Result<Vec<(String, String)>, PrintError>) {
        let plan = crate::plan::read(text).expect("a demo reads");
        let (report, _) = crate::mend::advised(&plan, false);
        let files = render(&plan, &report, words, &Options::default());
        let texts = files.map(|files| {
            files
                .into_iter()
                .map(|(name, bytes)| {
                    let text = pdf_extract::extract_text_from_mem(&bytes).expect("text");
                    (name, text)
                })
                .collect()
        });
        (report, texts)
    }

    /// No language is twice as long as English. Labels have little room and may reject the longest of these texts by
    /// name. The sheets hold them all.
    #[test]
    fn paper_takes_sentences_twice_as_long() {
        let words = marked(2);
        let plan = crate::plan::read(WEEKEND).expect("a demo reads");
        let report = judge::build(&plan);
        for document in Document::ALL {
            let options = Options { only: vec![document], ..Options::default() };
            let made = render(&plan, &report, &words, &options);
            match made {
                Ok(_) => {}
                Err(PrintError::TooLong { misfits, .. }) if document == Document::Labels => {
                    assert!(misfits.iter().all(|it| it.percent >= 75), "{misfits:?}");
                }
                Err(error) => panic!("{}", error.in_words(&Words::english())),
            }
        }
    }

    #[test]
    fn everything_on_paper_comes_from_a_language_folder() {
        let words = marked(1);
        for text in [WEEKEND, MENDED] {
            let (report, files) = prints(&words, text);
            let known = known(text, &report);
            for (name, said) in files.expect("it fits") {
                // Small print may break a word at the end of a line.
                assert_eq!(unmarked(&said, &known), BTreeSet::new(), "{name}");
            }
        }
    }
}

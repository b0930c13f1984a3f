//! What can be told about a translation without knowing its language.

use std::collections::{BTreeMap, BTreeSet};

use unicode_width::UnicodeWidthStr;

use super::catalog::{ByKey, Catalog, Item, Parts, parts};
use super::formats;
use crate::words::pages::{self, PARTS};
use crate::words::{FIRST_LANGUAGE, Folder, Library, Units, Words};

/// What is wrong with a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kind {
    /// There is no such language folder.
    NoFolder,
    /// The lines cannot be read as a message.
    Junk(String),
    /// The key is there twice.
    Twice,
    /// The first language has no such message, or it stands in another file there.
    Unused(String),
    /// It is not translated yet. All that can be wrong with a draft.
    Missing,
    /// It takes a value that nobody gives.
    UnknownValue(String),
    /// The first language shows this value, and this message does not.
    LostValue(String),
    /// The first language chooses by this number, and this message does not.
    NoPlural(String),
    /// A case that this language tells apart has no words.
    NoCase(String, String),
    /// A case that never comes about.
    UnknownCase(String, String),
    /// There is no such term.
    UnknownTerm(String),
    /// It could not be put together with these values.
    Fault(String),
    /// It does not give the numbers that the first language gives.
    Numbers(String, String),
    /// A word that the language may not use.
    NeverSay(String),
    /// It is the first language's sentence.
    Untranslated,
    /// So many columns, and so many at most.
    TooWide(usize, usize),
    /// Signs that a letter cannot have: a replacement mark, a control sign.
    BadSign(char),
    /// A page has this heading where it should have the other.
    Heading(String, String),
    /// It does not name the rules, standards and shapes that the first language names.
    Codes(String, String),
}

impl Kind {
    /// Names the message that says it, `words-problem-CODE`.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NoFolder => "no-folder",
            Self::Junk(_) => "junk",
            Self::Twice => "twice",
            Self::Unused(_) => "unused",
            Self::Missing => "missing",
            Self::UnknownValue(_) => "unknown-value",
            Self::LostValue(_) => "lost-value",
            Self::NoPlural(_) => "no-plural",
            Self::NoCase(..) => "no-case",
            Self::UnknownCase(..) => "unknown-case",
            Self::UnknownTerm(_) => "unknown-term",
            Self::Fault(_) => "fault",
            Self::Numbers(..) => "numbers",
            Self::NeverSay(_) => "never-say",
            Self::Untranslated => "untranslated",
            Self::TooWide(..) => "too-wide",
            Self::BadSign(_) => "bad-sign",
            Self::Heading(..) => "heading",
            Self::Codes(..) => "codes",
        }
    }

    /// What the message is about, and what it is held against.
    pub fn details(&self) -> (String, String) {
        match self {
            Self::NoFolder | Self::Twice | Self::Missing | Self::Untranslated => Default::default(),
            Self::Junk(text)
            | Self::Unused(text)
            | Self::UnknownValue(text)
            | Self::LostValue(text)
            | Self::NoPlural(text)
            | Self::UnknownTerm(text)
            | Self::Fault(text)
            | Self::NeverSay(text) => (text.clone(), String::new()),
            Self::NoCase(one, other)
            | Self::UnknownCase(one, other)
            | Self::Numbers(one, other)
            | Self::Heading(one, other)
            | Self::Codes(one, other) => (one.clone(), other.clone()),
            Self::TooWide(found, most) => (found.to_string(), most.to_string()),
            Self::BadSign(sign) => (sign.escape_unicode().to_string(), String::new()),
        }
    }
}

/// One thing that is wrong, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// The folder.
    pub folder: String,
    /// The file in it.
    pub file: String,
    /// The message.
    pub key: String,
    /// What is wrong.
    pub kind: Kind,
}

/// Everything that is wrong with a language or variant, in the order of its files; what is missing
/// comes last. A folder of which nothing is said can be offered.
pub fn check(library: &Library, tag: &str) -> Vec<Problem> {
    let base = tag.split('-').next().unwrap_or(tag);
    let (Some(first), Some(language), Some(own)) =
        (library.folder(FIRST_LANGUAGE), library.folder(base), library.folder(tag))
    else {
        return vec![problem(tag, "", "", Kind::NoFolder)];
    };
    let never_say = language.never_say().chain(own.never_say()).collect();
    let [first, language, own] = [first, language, own].map(Catalog::of);
    // A variant is held to what it makes together with its language.
    let layers: Vec<&Catalog> = if base == tag { vec![&own] } else { vec![&language, &own] };
    let english = Catalog::by_key([&first]);
    let there = Catalog::by_key(layers.iter().copied());
    let words = library.draft_chain(&tag_of_a_reader(library, tag)).map(|chain| Words::of(&chain, Units::default()));
    let judge = Judge {
        english: &english,
        there: &there,
        translated: base != FIRST_LANGUAGE,
        terms: layers.iter().flat_map(|layer| layer.terms.keys().map(String::as_str)).collect(),
        categories: words.as_ref().map(formats::categories).unwrap_or_default(),
        never_say,
    };

    let mut found = Vec::new();
    for (file, text) in &own.junk {
        let start = text.trim().chars().take(60).collect();
        found.push(problem(tag, file, "", Kind::Junk(start)));
    }
    for (file, key) in &own.twice {
        found.push(problem(tag, file, key, Kind::Twice));
    }
    if base != tag {
        let strange = |name: &&String| !language.terms.contains_key(*name);
        for name in own.terms.keys().filter(strange) {
            found.push(problem(tag, "", name, Kind::Unused(base.to_owned())));
        }
    }
    for item in &own.items {
        let kinds = match english.get(item.key.as_str()) {
            None => vec![Kind::Unused(String::new())],
            Some(model) => judge.kinds(item, model),
        };
        let place = |kind| problem(tag, &item.file, &item.key, kind);
        found.extend(kinds.into_iter().map(place));
    }
    if let Some(words) = &words {
        let folder = library.folder(tag);
        for (code, text) in folder.into_iter().flat_map(Folder::pages) {
            for (heading, part) in pages::headings(text).zip(PARTS) {
                let wanted = words.text(&format!("page-{part}"));
                if heading != wanted {
                    let key = format!("page-{code}.{part}");
                    let kind = Kind::Heading(heading.to_owned(), wanted);
                    found.push(problem(tag, &pages::file(code), &key, kind));
                }
            }
        }
        // Of a variant all messages: its terms change those of its language.
        for item in there.values() {
            if let Some(model) = english.get(item.key.as_str()) {
                let (its, models) = (parts(item, &there), parts(model, &english));
                for fault in formats::faults(words, item, &its, model, &models) {
                    found.push(problem(tag, &item.file, &item.key, Kind::Fault(fault)));
                }
            }
        }
    }
    for (key, model) in &english {
        if !there.contains_key(key) {
            found.push(problem(tag, &model.file, key, Kind::Missing));
        }
    }
    found
}

/// The tag by which a reader gets this folder.
fn tag_of_a_reader(library: &Library, tag: &str) -> String {
    let language = tag.split('-').next().unwrap_or(tag);
    let region = library.folder(tag).and_then(|folder| folder.regions().next());
    region.map_or_else(|| language.to_owned(), |region| format!("{language}-{region}"))
}

fn problem(folder: &str, file: &str, key: &str, kind: Kind) -> Problem {
    Problem { folder: folder.to_owned(), file: file.to_owned(), key: key.to_owned(), kind }
}

struct Judge<'c> {
    english: &'c ByKey<'c>,
    there: &'c ByKey<'c>,
    /// Whether it is another than the first language.
    translated: bool,
    terms: BTreeSet<&'c str>,
    /// The cases of number that the language tells apart.
    categories: BTreeSet<String>,
    never_say: BTreeSet<&'c str>,
}

impl Judge<'_> {
    fn kinds(&self, item: &Item, model: &Item) -> Vec<Kind> {
        let its = parts(item, self.there);
        let models = parts(model, self.english);
        let mut kinds = Vec::new();
        if model.file != item.file {
            kinds.push(Kind::Unused(model.file.clone()));
        }
        for term in &its.terms {
            if !self.terms.contains(term.as_str()) {
                kinds.push(Kind::UnknownTerm(term.clone()));
            }
        }
        // "both" and "all" tell numbers apart, not kinds of number.
        let by_kind = |cases: &BTreeSet<String>| {
            let kinds = cases.iter().filter(|case| case.parse::<u32>().is_err());
            plural(cases) && kinds.count() > 1
        };
        let kinds_of = |name: &String| models.choices.iter().any(|(number, cases)| number == name && by_kind(cases));
        for (number, cases) in &its.choices {
            if !(by_kind(cases) || plural(cases) && kinds_of(number)) {
                continue;
            }
            for case in self.categories.difference(cases) {
                kinds.push(Kind::NoCase(number.clone(), case.clone()));
            }
        }
        if let Some(sign) = its.text.chars().find(|&sign| bad(sign)) {
            kinds.push(Kind::BadSign(sign));
        }
        // What people type is not what they are told.
        if !matches!(item.key.split_once('.'), Some((_, "also"))) {
            let lower = its.text.to_lowercase();
            let said = lower.split(|c: char| !c.is_alphabetic()).find(|word| self.never_say.contains(word));
            kinds.extend(said.map(|word| Kind::NeverSay(word.to_owned())));
        }
        if let Some((wide, most)) = too_wide(&item.key, &its) {
            kinds.push(Kind::TooWide(wide, most));
        }
        if self.translated {
            kinds.extend(values(&its, &models, model));
            kinds.extend(sentences(&its, &models, model));
        }
        kinds
    }
}

/// The values of a translation against those of its model.
fn values(its: &Parts, models: &Parts, model: &Item) -> Vec<Kind> {
    let mut kinds = Vec::new();
    let choices = |parts: &Parts| -> BTreeMap<String, BTreeSet<String>> { parts.choices.iter().cloned().collect() };
    let (its_choices, model_choices) = (choices(its), choices(models));
    let given = |name: &str| {
        models.shown.contains(name)
            || model_choices.contains_key(name)
            || model.context.iter().any(|remark| names(remark, name))
    };
    let used: BTreeSet<&String> = its.shown.iter().chain(its_choices.keys()).collect();
    for name in used {
        if !given(name) {
            kinds.push(Kind::UnknownValue(name.clone()));
        }
    }
    for name in models.shown.difference(&its.shown) {
        // "1 danger" names its number in one language and not in another.
        if !its_choices.contains_key(name) {
            kinds.push(Kind::LostValue(name.clone()));
        }
    }
    for (name, cases) in &model_choices {
        let own = its_choices.get(name);
        if plural(cases) && own.is_none() {
            kinds.push(Kind::NoPlural(name.clone()));
        }
        // A choice by words may be left out where the sentence is the same in all cases; what
        // it has must exist.
        if let Some(own) = own.filter(|_| !plural(cases)) {
            for case in own.difference(cases) {
                kinds.push(Kind::UnknownCase(name.clone(), case.clone()));
            }
            for case in cases.difference(own) {
                kinds.push(Kind::NoCase(name.clone(), case.clone()));
            }
        }
    }
    kinds
}

/// The plain text of a translation against that of its model.
fn sentences(its: &Parts, models: &Parts, model: &Item) -> Vec<Kind> {
    let mut kinds = Vec::new();
    let free = model.context.iter().any(|remark| remark.contains("Numbers may differ"));
    let (own, wanted) = (numbers(&its.text), numbers(&models.text));
    if !free && own != wanted {
        let list = |set: BTreeSet<String>| set.into_iter().collect::<Vec<_>>().join(" ");
        kinds.push(Kind::Numbers(list(own), list(wanted)));
    }
    let (own, wanted) = (codes(&its.text), codes(&models.text));
    if model.key.starts_with("page-") && own != wanted {
        let list = |set: BTreeSet<&str>| set.into_iter().collect::<Vec<_>>().join(" ");
        kinds.push(Kind::Codes(list(own), list(wanted)));
    }
    let words = |text: &str| {
        text.split(|c: char| !c.is_alphabetic())
            .filter(|word| word.len() > 2 && word.chars().any(char::is_lowercase))
            .count()
    };
    if its.text.trim() == models.text.trim() && words(&its.text) >= 3 {
        kinds.push(Kind::Untranslated);
    }
    kinds
}

/// Whether a remark tells of a value: "$count: how many".
fn names(remark: &str, name: &str) -> bool {
    remark.split('$').skip(1).any(|rest| rest.split(|c: char| !(c.is_alphanumeric() || c == '-')).next() == Some(name))
}

/// Whether the cases of a choice are numbers and kinds of number.
pub(super) fn plural(cases: &BTreeSet<String>) -> bool {
    cases.iter().all(|case| {
        ["zero", "one", "two", "few", "many", "other"].contains(&case.as_str()) || case.parse::<u32>().is_ok()
    })
}

/// The names of standards, rules and shapes in a text: a capital and a figure, or capitals only. Of a word
/// like "AWG-Zahl" its first part.
fn codes(text: &str) -> BTreeSet<&str> {
    let small = |word: &str| word.chars().any(char::is_lowercase);
    let named = |word: &&str| {
        let capitals = word.chars().filter(char::is_ascii_uppercase).count();
        let figures = word.chars().any(|c| c.is_ascii_digit());
        !small(word) && (figures && capitals > 0 || capitals > 2)
    };
    text.split(|c: char| !(c.is_alphanumeric() || "-.()&".contains(c)))
        .map(|word| word.trim_matches(['.', '(', ')', '-', '&']))
        .flat_map(|word| {
            let apart = if small(word) { '-' } else { '\0' };
            word.split(apart)
        })
        .filter(named)
        // What a language calls by a word of its own.
        .filter(|word| *word != "GFCI")
        .collect()
}

/// The numbers in a text, with a point for the decimal mark, and hours as on a clock of 24.
fn numbers(text: &str) -> BTreeSet<String> {
    let text = &of_24_hours(text);
    let mut found = BTreeSet::new();
    let mut number = String::new();
    for c in text.chars().chain([' ']) {
        if c.is_ascii_digit() {
            number.push(c);
        } else if matches!(c, '.' | ',') && !number.is_empty() && !number.ends_with('.') {
            number.push('.');
        } else if !number.is_empty() {
            found.insert(number.trim_end_matches('.').to_owned());
            number.clear();
        }
    }
    found
}

/// A text with "22:00" for "10 PM".
fn of_24_hours(text: &str) -> String {
    let words: Vec<&str> = text.split(' ').collect();
    let mut out: Vec<String> = Vec::new();
    for word in words {
        let half = word.trim_end_matches(|c: char| !c.is_alphanumeric());
        let later = match half {
            "AM" => 0,
            "PM" => 12,
            _ => {
                out.push(word.to_owned());
                continue;
            }
        };
        match out.last().and_then(|hour| hour.parse::<u32>().ok()) {
            Some(hour) => {
                out.pop();
                let rest = &word[half.len()..];
                out.push(format!("{:02}:00{rest}", hour % 12 + later));
            }
            None => out.push(word.to_owned()),
        }
    }
    out.join(" ")
}

fn bad(sign: char) -> bool {
    // U+0001 stands for a value here; the first language uses no other.
    sign == '\u{fffd}' || (sign.is_control() && !matches!(sign, '\n' | '\u{1}'))
}

/// The columns of a text that stands where there are only so many.
fn too_wide(key: &str, its: &Parts) -> Option<(usize, usize)> {
    let most =
        WIDTHS.iter().find(|(start, end, _)| key.starts_with(start) && key.ends_with(end)).map(|(.., most)| *most)?;
    let wide = its.text.replace('\u{1}', "").lines().map(|line| line.trim_end().width()).max()?;
    (its.choices.is_empty() && wide > most).then_some((wide, most))
}

/// How a key begins and ends, and the columns there are. The first that fits counts.
///
/// A question stays on one line of a narrow window of 60 columns, its row of the review page
/// stands in front of an answer; a hint of a list that wraps is drawn badly by a terminal of 40, and an
/// answer to pick is cut off there.
const WIDTHS: &[(&str, &str, usize)] = &[
    ("", ".also", usize::MAX),
    ("ask-", ".help", usize::MAX),
    ("ask-", ".row", 28),
    ("ask-", ".why", 76),
    ("ask-", "", 59),
    ("face-", "", 18),
    ("shape-", "", 52),
    ("pick-", "", 36),
    ("interview-after-", "", 36),
    ("interview-take-", "", 36),
    ("interview-resume-new", "", 36),
    ("hint-list", "", 37),
    ("hint-many", "", 60),
    ("list-nothing", "", 36),
    ("hint-", "", 24),
    ("drawn-", "", 40),
    ("signal-", "", 14),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::ABOUT;

    /// Whatever folder there is. A draft may lack messages, and have nothing else wrong with it.
    #[test]
    fn every_language_is_in_order() {
        let library = Library::built_in();
        assert!(library.offered().any(|tag| tag == FIRST_LANGUAGE));
        for (tag, folder) in library.folders() {
            let mut found = check(library, tag);
            if !folder.complete() {
                found.retain(|problem| problem.kind != Kind::Missing);
            }
            assert_eq!(found, [], "{tag}");
            assert!(!folder.name().is_empty(), "{tag}");
            assert!(folder.never_say().count() > 0 || tag.contains('-'), "{tag}");
        }
    }

    #[test]
    fn what_a_page_says_is_held_against_its_english() {
        let kinds = |page: &'static str| -> Vec<Kind> {
            let mut library = Library::built_in().clone();
            library.add("de", "explain/FIT002.md", page);
            let found = check(&library, "de").into_iter();
            found.map(|problem| problem.kind).collect()
        };
        let german = Library::built_in().folder("de").expect("German");
        let page: &'static str = match &german.files["explain/FIT002.md"] {
            std::borrow::Cow::Borrowed(text) => text,
            std::borrow::Cow::Owned(_) => panic!("it is built in"),
        };
        assert_eq!(kinds(page), []);
        let changed = |from: &str, to: &str| -> Vec<Kind> {
            assert!(page.contains(from), "{from}");
            kinds(page.replace(from, to).leak())
        };
        let has = |found: Vec<Kind>, code: &str| {
            assert!(found.iter().any(|kind| kind.code() == code), "{code}: {found:?}");
        };
        has(changed("OVER001", "OVER002"), "codes");
        has(changed("30", "50"), "numbers");
        has(changed("## Quellen", "## Woher"), "heading");
        has(changed("## Quellen\n", ""), "missing");
        has(changed("## Quellen\n", "## Mehr\n\nA.\n\n## Quellen\n"), "unused");
        has(changed("# FIT002", "# FIT003"), "junk");
        has(changed("Adapter", "{ -adapter }"), "unknown-term");
        has(changed("Adapter", "sicher"), "never-say");
        assert_eq!(numbers("from 10 PM to 6 AM, not 12 AM."), numbers("22:00 06:00 00:00"));
    }

    /// How long an engine or a burn cools is one number: messages name `{ $cooling }` and `{ $burn }`,
    /// and a step by which somebody paces out a length is `{ $step }`.
    #[test]
    fn no_message_spells_its_own_minutes_of_cooling_or_its_own_step() {
        // A look at a warm plug, and how long ago something was kept.
        let other = ["CORD008.fix-warm", "interview-age-minutes"];
        let spelled = ["fifteen", "twenty", "quince", "veinte", "quinze", "vingt", "fünfzehn", "zwanzig"];
        let own_minutes = |text: &str| {
            let lower = text.to_lowercase();
            let words: Vec<&str> = lower.split(|c: char| c.is_whitespace() || c == '\u{a0}').collect();
            words.windows(2).any(|pair| {
                pair[1].starts_with("minut")
                    && (pair[0].ends_with(|c: char| c.is_ascii_digit()) || spelled.contains(&pair[0]))
            })
        };
        // How long an alarm takes, and the sources, are told on pages; only what to do is held to this.
        let page = |key: &str| {
            let part = key.strip_prefix("page-").and_then(|key| key.split_once('.'));
            part.is_some_and(|(_, part)| part != "do")
        };
        for (wrong, text) in [
            (true, "off, cool for 15 minutes"),
            (true, "laissez refroidir 20\u{a0}minutes"),
            (true, "zwanzig Minuten abkühlen"),
            (false, "{ $cooling } minutes"),
            (false, "run for two minutes"),
        ] {
            assert_eq!(own_minutes(text), wrong, "{text}");
        }
        let library = Library::built_in();
        let mut named: BTreeMap<&str, usize> = BTreeMap::new();
        for (tag, folder) in library.folders() {
            for item in Catalog::of(folder).items {
                let key = &item.key;
                assert!(
                    other.contains(&key.as_str()) || page(key) || !own_minutes(&item.written),
                    "{tag} {key}: {}",
                    item.written
                );
                // Another region has another number.
                let call = crate::tables::emergency::CALL;
                assert!(!item.written.contains(call), "{tag} {key}");
                for figure in ["cooling", "burn", "step"] {
                    if item.written.contains(&format!("{{ ${figure} }}")) {
                        *named.entry(figure).or_default() += 1;
                        // No second one beside it.
                        let digits = item.written.contains(|c: char| c.is_ascii_digit());
                        assert!(!digits || figure != "step" || key.starts_with("page-"), "{tag} {key}");
                    }
                }
            }
        }
        assert!(named["cooling"] >= 16 && named["burn"] >= 4 && named["step"] >= 8, "{named:?}");
        // What a reader gets is the number of the table.
        let words = Words::english();
        let minutes = crate::tables::cooling::ENGINE_MINUTES.to_string();
        assert!(words.text("print-stop-2").contains(&minutes));
        let minutes = crate::tables::cooling::BURN_MINUTES.to_string();
        assert!(words.text("print-emergency-burns").contains(&minutes));
    }

    /// English with one message, and what is wrong with a translation of it.
    fn said(english: &str, translation: &str) -> Vec<&'static str> {
        let mut library = Library::default();
        library.add("en", ABOUT, "language-state = complete\n");
        library.add("en", "a.ftl", english.to_owned());
        let about = "language-state = draft\nlanguage-never-say = sicher\n";
        library.add("de", ABOUT, about);
        library.add("de", "a.ftl", translation.to_owned());
        let found = check(&library, "de");
        found.iter().map(|problem| problem.kind.code()).collect()
    }

    #[test]
    fn what_a_translation_can_get_wrong() {
        let plural = "a = { $n ->\n    [one] 1 day\n   *[other] { $n } days\n  }\n";
        let word = "a = { $fix ->\n    [this] one\n   *[that] other\n  }\n";
        for (english, translation, codes) in [
            ("a = Stop at { $x }", "a = Halt bei { $x }", &[][..]),
            ("a = Stop", "a = Halt\na = Halt", &["twice"]),
            ("a = Stop", "a = Halt\nb = Halt", &["unused"]),
            ("a = Stop", "", &["missing"]),
            ("a = Stop", "a Halt", &["junk", "missing"]),
            ("a = At { $x }", "a = Bei { $y }", &["unknown-value", "lost-value", "fault"]),
            ("# $y: more\na = At { $x }", "a = Bei { $x }{ $y }", &[]),
            ("a = Stop", "a = Halt { -da }", &["unknown-term", "fault"]),
            ("a = Wait 20 minutes", "a = Warte 2 Minuten", &["numbers"]),
            ("a = Keep 1.5 m off", "a = Halte 1,5 m Abstand", &[]),
            ("a = Stop", "a = Das ist sicher.", &["never-say"]),
            ("a = Stop", "a = Sicherung", &[]),
            ("a = Stop the engine now", "a = Stop the engine now", &["untranslated"]),
            ("a = Stop", "a = Ha\u{fffd}lt", &["bad-sign"]),
            ("signal-x = DANGER", "signal-x = LEBENSGEFAHR AUA", &["too-wide"]),
            (plural, "a = { $n ->\n    [one] 1 Tag\n   *[other] { $n } Tage\n  }\n", &[]),
            (plural, "a = { $n } Tage", &["numbers", "no-plural"]),
            (plural, "a = { $n ->\n   *[other] 1: { $n } Tage\n  }\n", &["no-case"]),
            (word, "a = { $fix ->\n    [dies] eins\n   *[that] zwei\n  }\n", &["no-case", "unknown-case"]),
        ] {
            let mut expected = codes.to_vec();
            let mut found = said(english, translation);
            expected.sort_unstable();
            found.sort_unstable();
            assert_eq!(found, expected, "{english} / {translation}");
        }
    }

    #[test]
    fn a_variant_says_only_what_differs() {
        let mut library = Library::default();
        library.add("en", "a.ftl", "a = Ground\nb = Stop");
        library.add("fr", "a.ftl", "-ground = terre\na = { -ground }\nb = Halte");
        library.add("fr-FR", ABOUT, "language-regions = FR");
        library.add("fr-FR", "a.ftl", "-ground = { $x ->\n   *[one] masse\n  }");
        assert_eq!(check(&library, "fr-FR"), []);
        library.add("fr-FR", "a.ftl", "-sky = ciel\nc = Halte");
        let found = check(&library, "fr-FR");
        let codes: Vec<_> = found.iter().map(|problem| problem.kind.code()).collect();
        assert_eq!(codes, ["unused", "unused"]);
    }
}

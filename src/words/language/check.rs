//! Checks of a translation that need no knowledge of its language.

use std::collections::{BTreeMap, BTreeSet};

use unicode_width::UnicodeWidthStr;

use super::catalog::{ByKey, Catalog, Item, Parts, parts};
use super::formats;
use crate::words::pages::{self, PARTS};
use crate::words::{FIRST_LANGUAGE, Folder, Library, Units, Words};

/// What is wrong with a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The language folder does not exist.
    NoFolder,
    /// The lines do not parse as a message.
    Junk(String),
    /// The key occurs twice.
    Twice,
    /// The first language has no such message, or has it in the file named here. For a variant's term, names the
    /// language that lacks it.
    Unused(String),
    /// It is not translated yet. A draft may have no other problem.
    Missing,
    /// It uses a value that nothing provides.
    UnknownValue(String),
    /// The first language shows this value, but this message does not.
    LostValue(String),
    /// The first language selects on this number, but this message does not.
    NoPlural(String),
    /// A case that this language distinguishes has no text.
    NoCase(String, String),
    /// A case that never occurs.
    UnknownCase(String, String),
    /// The term does not exist.
    UnknownTerm(String),
    /// Formatting it failed with this error.
    Fault(String),
    /// Its numbers differ from those in the first language.
    Numbers(String, String),
    /// It contains a word that the language forbids.
    NeverSay(String),
    /// It is identical to the first language's text.
    Untranslated,
    /// Its width in columns, and the most it may have.
    TooWide(usize, usize),
    /// It contains a character that no letter has: a replacement or a control character.
    BadSign(char),
    /// A number and its unit with a plain space between them, which a line can end at.
    PlainSpace(String),
    /// A page's heading, and the one it should have.
    Heading(String, String),
    /// Its rules, standards and shapes differ from those that the first language names.
    Codes(String, String),
}

impl Kind {
    /// Returns the `CODE` of the message that reports it, `words-problem-CODE`.
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
            Self::PlainSpace(_) => "plain-space",
            Self::Heading(..) => "heading",
            Self::Codes(..) => "codes",
        }
    }

    /// Returns what the message is about and what it was compared with, each empty if there is none.
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
            | Self::NeverSay(text)
            | Self::PlainSpace(text) => (text.clone(), String::new()),
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

/// One problem, and where it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// The folder.
    pub folder: String,
    /// The file in the folder.
    pub file: String,
    /// The message key.
    pub key: String,
    /// What is wrong.
    pub kind: Kind,
}

/// Returns everything wrong with a language or variant, in file order, with missing messages last. A folder without
/// problems can be offered to readers.
pub fn check(library: &Library, tag: &str) -> Vec<Problem> {
    let base = tag.split('-').next().unwrap_or(tag);
    let (Some(first), Some(language), Some(own)) =
        (library.folder(FIRST_LANGUAGE), library.folder(base), library.folder(tag))
    else {
        return vec![problem(tag, "", "", Kind::NoFolder)];
    };
    let never_say = language.never_say().chain(own.never_say()).collect();
    let [first, language, own] = [first, language, own].map(Catalog::of);
    // A variant is checked together with its language.
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
        // For a variant, check all messages, since its terms also change those of its language.
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

/// Returns the tag with which a reader gets this folder.
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
    /// Whether the language is not the first one.
    translated: bool,
    terms: BTreeSet<&'c str>,
    /// The plural categories of the language.
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
        // Cases that are plain numbers, such as those for "both" and "all", do not depend on plural categories.
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
        // Forbidden words are allowed in what people type.
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

/// Compares the values of a translation with those of its model.
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
        // One language shows the number in "1 danger", another only selects on it.
        if !its_choices.contains_key(name) {
            kinds.push(Kind::LostValue(name.clone()));
        }
    }
    for (name, cases) in &model_choices {
        let own = its_choices.get(name);
        if plural(cases) && own.is_none() {
            kinds.push(Kind::NoPlural(name.clone()));
        }
        // A translation may drop a choice between words if its sentence is the same in all cases. A choice it keeps
        // must have exactly the model's cases.
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

/// Compares the plain text of a translation with that of its model.
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
    kinds.extend(apart(&its.text).map(Kind::PlainSpace));
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

/// Returns a number and its unit that a line can end between. What is typed stands in straight quotation marks, and has
/// plain spaces.
fn apart(text: &str) -> Option<String> {
    text.split('"').step_by(2).find_map(|said| {
        let words: Vec<&str> = said.split([' ', '\n']).collect();
        let pair = words.windows(2).find(|pair| {
            let unit = pair[1].trim_end_matches(|c: char| c != '%' && c.is_ascii_punctuation() || "”“»…".contains(c));
            pair[0].ends_with(|c: char| c.is_ascii_digit()) && UNITS.contains(&unit)
        });
        pair.map(|pair| pair.join(" "))
    })
}

/// The units that stand after a number. "in" is a word in German.
const UNITS: [&str; 24] = [
    "A", "mA", "V", "W", "kW", "VA", "kVA", "Ω", "AWG", "dB", "dBA", "h", "min", "s", "%", "°C", "°F", "mm", "mm²",
    "m", "ft", "L", "gal", "ppm",
];

/// Whether a comment describes a value: "$count: how many".
fn names(remark: &str, name: &str) -> bool {
    remark.split('$').skip(1).any(|rest| rest.split(|c: char| !(c.is_alphanumeric() || c == '-')).next() == Some(name))
}

/// Whether the cases of a choice are numbers and plural categories.
pub(super) fn plural(cases: &BTreeSet<String>) -> bool {
    cases.iter().all(|case| {
        ["zero", "one", "two", "few", "many", "other"].contains(&case.as_str()) || case.parse::<u32>().is_ok()
    })
}

/// Returns the names of standards, rules and shapes in a text: words with a capital and a digit, or with more than two
/// capitals. Of a word like "AWG-Zahl", only the first part counts.
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
        // Languages have their own words for it.
        .filter(|word| *word != "GFCI")
        .collect()
}

/// Returns the numbers in a text, with a point as the decimal mark and times on the 24-hour clock.
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

/// Returns the text with "10 PM" written as "22:00".
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
    // U+0001 stands for a value here. The first language uses no other control character.
    sign == '\u{fffd}' || (sign.is_control() && !matches!(sign, '\n' | '\u{1}'))
}

/// Returns the width of the text and the width available, if it is too wide.
fn too_wide(key: &str, its: &Parts) -> Option<(usize, usize)> {
    let most =
        WIDTHS.iter().find(|(start, end, _)| key.starts_with(start) && key.ends_with(end)).map(|(.., most)| *most)?;
    let wide = its.text.replace('\u{1}', "").lines().map(|line| line.trim_end().width()).max()?;
    (its.choices.is_empty() && wide > most).then_some((wide, most))
}

/// How a key begins and ends, and how many columns its text may take. The first match counts.
///
/// A question stays on one line of a window of 60 columns, and its row on the review page precedes an answer. A
/// terminal of 40 columns draws wrapped hints of a list badly, and cuts off answers to pick from.
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

    /// Holds for every folder. A draft may lack messages but may have no other problem.
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

    /// How long an engine or a burn must cool is one number each, and so is the length of a pacing step. Messages refer
    /// to them as `{ $cooling }`, `{ $burn }` and `{ $step }`.
    #[test]
    fn no_message_spells_its_own_minutes_of_cooling_or_its_own_step() {
        // A look at a warm plug, and how long ago an interview was saved.
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
        // Pages also state how long an alarm takes, and sources. Only their "do" part is held to this.
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
                // The emergency number differs by region.
                let call = crate::tables::emergency::CALL;
                assert!(!item.written.contains(call), "{tag} {key}");
                for figure in ["cooling", "burn", "step"] {
                    if item.written.contains(&format!("{{ ${figure} }}")) {
                        *named.entry(figure).or_default() += 1;
                        // No second figure beside it.
                        let digits = item.written.contains(|c: char| c.is_ascii_digit());
                        assert!(!digits || figure != "step" || key.starts_with("page-"), "{tag} {key}");
                    }
                }
            }
        }
        assert!(named["cooling"] >= 16 && named["burn"] >= 4 && named["step"] >= 8, "{named:?}");
        // A reader gets the number in the table.
        let words = Words::english();
        let minutes = crate::tables::cooling::ENGINE_MINUTES.to_string();
        assert!(words.text("print-stop-2").contains(&minutes));
        let minutes = crate::tables::cooling::BURN_MINUTES.to_string();
        assert!(words.text("print-emergency-burns").contains(&minutes));
    }

    /// Checks a translation of a single English message and returns the codes of its problems.
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
            ("a = Keep 1.5 m off", "a = Halte 1,5\u{a0}m Abstand", &[]),
            ("a = Stop", "a = Das ist sicher.", &["never-say"]),
            ("a = Stop", "a = Sicherung", &[]),
            ("a = Stop the engine now", "a = Stop the engine now", &["untranslated"]),
            ("a = Stop", "a = Ha\u{fffd}lt", &["bad-sign"]),
            ("a = Carries 15 A.", "a = Trägt 15 A.", &["plain-space"]),
            ("a = Carries 15 A.", "a = Trägt 15\u{a0}A.", &[]),
            ("a = Type \"15 A\".", "a = Tippen Sie \"15 A\".", &[]),
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

//! Checks the English messages against the style sheet in `i18n/README.md`, which gives the reason for each rule. The
//! list of forbidden words is read from that file, so there is no second one.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement, VariantKey};

use super::catalog::{ByKey, Catalog, Item};
use crate::words::{FIRST_LANGUAGE, Library, PAGES};

const PAGE: &str = include_str!("../../../i18n/README.md");
const README: &str = include_str!("../../../README.md");

/// Lists of appliance and document names, which the sentence rules and formula do not fit.
const NAMES: [&str; 2] = ["appliances.ftl", "sources.ftl"];
/// Keys of lists of symbols, where a semicolon ends a line.
const SIGNS: &str = "print-ws-symbols-";

/// What a page cites. The sentence rules and formula do not fit it either.
const CITED: &str = ".sources";

/// The most words in a sentence.
const SENTENCE: usize = 22;
/// The most words in a finding's title, not counting names.
const TITLE: usize = 8;
/// The most sentences that explain why, not counting a list of what it is about.
const WHY: usize = 2;
/// The most sentences that say what to do.
const DO: usize = 3;
/// The most orders that say what to do.
const ORDERS: usize = 3;
/// Remedies that keep a fourth order; the page says why.
const FOUR: [&str; 3] = ["AIR001 closed", "AIR002 alarm", "AIR002 look"];
/// The highest reading grade for a file and for a finding.
const FILE_GRADE: f64 = 6.0;
const FINDING_GRADE: f64 = 6.0;

/// A placeholder for a value.
pub(in crate::words) const VALUE: &str = "\u{1}";

/// Returns the possible texts of a pattern, one for each combination of cases. With `fix`, a choice between remedies
/// yields only that remedy's case, or the default.
fn texts(pattern: &Pattern<String>, all: &ByKey<'_>, fix: Option<&str>, depth: usize) -> Vec<String> {
    let mut texts = vec![String::new()];
    for element in &pattern.elements {
        let next = match element {
            PatternElement::TextElement { value } => vec![value.clone()],
            PatternElement::Placeable { expression } => shown(expression, all, fix, depth),
        };
        texts = texts.iter().flat_map(|text| next.iter().map(move |more| format!("{text}{more}"))).collect();
    }
    texts
}

fn shown(expression: &Expression<String>, all: &ByKey<'_>, fix: Option<&str>, depth: usize) -> Vec<String> {
    match expression {
        Expression::Select { selector, variants } => {
            let by_fix = matches!(selector, InlineExpression::VariableReference { id } if id.name == "fix");
            let named = |wanted: Option<&str>| -> Vec<_> {
                let is = |key: &VariantKey<String>| matches!(key, VariantKey::Identifier { name } if Some(name.as_str()) == wanted);
                variants.iter().filter(|variant| is(&variant.key)).collect()
            };
            let wanted = fix.filter(|_| by_fix);
            let cases: Vec<_> = match (wanted, named(wanted)) {
                (None, _) => variants.iter().collect(),
                (Some(_), named) if named.is_empty() => variants.iter().filter(|variant| variant.default).collect(),
                (Some(_), named) => named,
            };
            let of = |case: &fluent_syntax::ast::Variant<String>| texts(&case.value, all, fix, depth);
            cases.into_iter().flat_map(of).collect()
        }
        Expression::Inline(InlineExpression::StringLiteral { value }) => vec![value.clone()],
        Expression::Inline(InlineExpression::Placeable { expression }) => shown(expression, all, fix, depth),
        Expression::Inline(InlineExpression::MessageReference { id, attribute }) => {
            let key = match attribute {
                Some(attribute) => format!("{}.{}", id.name, attribute.name),
                None => id.name.clone(),
            };
            match all.get(key.as_str()) {
                Some(item) if depth < 5 => texts(&item.pattern, all, fix, depth + 1),
                _ => vec![VALUE.to_owned()],
            }
        }
        Expression::Inline(_) => vec![VALUE.to_owned()],
    }
}

/// Splits a text into sentences. A sentence ends with a period, question mark or exclamation mark not followed by a
/// lowercase letter, or at a line break.
fn sentences(text: &str) -> Vec<String> {
    let mut found = vec![String::new()];
    for line in text.split('\n') {
        let words: Vec<&str> = line.split_whitespace().collect();
        for (at, word) in words.iter().enumerate() {
            let sentence = found.last_mut().expect("there is one");
            sentence.push_str(word);
            sentence.push(' ');
            let ends = word.trim_end_matches(['”', '’', '"', ')']).ends_with(['.', '?', '!']);
            let goes_on = words.get(at + 1).is_some_and(|next| next.starts_with(char::is_lowercase));
            if ends && !goes_on {
                found.push(String::new());
            }
        }
        found.push(String::new());
    }
    found.retain(|sentence| words(sentence).count() > 0);
    found
}

/// Splits a text at spaces and dashes into words: pieces with a letter, a number or a value.
fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| c.is_whitespace() || "–—".contains(c))
        .filter(|word| word.contains(|c: char| c.is_alphanumeric() || c == '\u{1}'))
}

/// Whether a sentence only lists what a finding is about: "Look at: “kettle”."
fn is_list(sentence: &str) -> bool {
    sentence.trim().strip_suffix(&format!(": {VALUE}.")).is_some_and(|head| words(head).count() <= 4)
}

/// What orders begin with. A sentence of a remedy begins with one of these or with one of [`NO_ORDER`].
const VERBS: &str = "add ask bring call change charge check close cook correct count do feed find get give go have join keep \
    know lay leave let look mark measure move never open pace plan plug point press print put read refuel run see \
    set stand start stay step stop switch take treat turn unplug unwind use warm write";

/// What other sentences of a remedy begin with.
const NO_ORDER: &str = "a after all before better codes even every first for if in it no once only or past switching test that the \
    then to until wind \u{1}";

/// Returns the orders in a text: its clauses that begin with a verb. What follows "or" is another way to do the same, and
/// what follows "never" or "do not" in a list is the same order.
fn orders(text: &str) -> Vec<String> {
    let bare = outside(&outside(text, '(', ')'), '“', '”');
    let mut found = Vec::new();
    for sentence in sentences(&bare) {
        let mut listed = false;
        // Each clause after the word or sign ahead of it.
        let mut clauses: Vec<(&str, Vec<String>)> = vec![("", Vec::new())];
        for word in sentence.split_whitespace() {
            let plain = word.trim_matches(|c: char| !c.is_alphanumeric());
            // What stands in capitals is what is printed on something.
            let printed = plain.len() > 1 && plain.chars().all(char::is_uppercase);
            let plain = if printed { "…".to_owned() } else { plain.to_lowercase() };
            match plain.as_str() {
                "and" => clauses.push(("and", Vec::new())),
                "or" => clauses.push(("or", Vec::new())),
                "then" | "only" | "better" | "instead" | "first"
                    if clauses.last().is_some_and(|(_, it)| it.is_empty()) => {}
                _ => clauses.last_mut().expect("there is one").1.push(plain),
            }
            if word.ends_with([',', ':', ';']) {
                clauses.push((",", Vec::new()));
            }
        }
        clauses.retain(|(_, words)| !words.is_empty());
        for (ahead, words) in clauses {
            // A roof is open on all sides.
            let open_on = words[0] == "open" && words.get(1).is_some_and(|next| next == "on");
            let is_verb = |word: &String| VERBS.split(' ').any(|verb| verb == *word);
            let never = words[0] == "never" && !words.get(1).is_some_and(is_verb);
            let order = !open_on && !never && is_verb(&words[0]);
            if order && ahead != "or" && !(listed && ahead == ",") {
                listed = matches!(words[0].as_str(), "never" | "do");
                found.push(words.join(" "));
            }
        }
    }
    found
}

/// Returns a text without what stands between these signs.
fn outside(text: &str, open: char, close: char) -> String {
    let mut inside = false;
    let mut kept = |c: char| {
        inside = if c == close { false } else { inside || c == open };
        !inside && c != close
    };
    text.chars().filter(|&c| kept(c)).collect()
}

/// Counts the syllables of a word by its vowels. Adjacent vowels count as one, and a final e is silent.
fn syllables(word: &str) -> usize {
    let lower = word.to_lowercase();
    let word = lower.trim_end_matches("’s").trim_end_matches("'s");
    let letters: Vec<char> = word.chars().filter(char::is_ascii_lowercase).collect();
    let vowel = |at: usize| letters.get(at).is_some_and(|letter| "aeiouy".contains(*letter));
    let text: String = letters.iter().collect();
    let mut count = (0..letters.len()).filter(|at| vowel(*at) && (*at == 0 || !vowel(at - 1))).count();
    // "Appliance", "radio" and "studio" have two syllables where "tion" and "cial" have one.
    count += ["ia", "io", "iu"]
        .iter()
        .flat_map(|pair| text.match_indices(pair))
        .filter(|(at, _)| *at > 0 && !text[..*at].ends_with(['t', 's', 'c', 'g', 'x']))
        .count();
    let before = |back: usize| letters.len().checked_sub(back).map(|at| (vowel(at), letters[at]));
    let silent = if text.ends_with("le") {
        before(3).is_some_and(|(vowel, _)| vowel)
    } else if text.ends_with('e') {
        before(2).is_some_and(|(vowel, _)| !vowel)
    } else if text.ends_with("ed") {
        before(3).is_some_and(|(vowel, letter)| !vowel && !"td".contains(letter))
    } else if text.ends_with("es") {
        before(3).is_some_and(|(vowel, letter)| !vowel && !"sxzcghl".contains(letter))
    } else {
        false
    };
    (count - usize::from(silent && count > 1)).max(1)
}

/// Returns the reading grade of texts by the formula of J. P. Kincaid, R. P. Fishburne, R. L. Rogers and B. S. Chissom,
/// *Derivation of New Readability Formulas for Navy Enlisted Personnel*, Research Branch Report 8-75, 1975, known as
/// Flesch-Kincaid (its figures from memory, not verified). A value counts as a word of one syllable.
#[expect(clippy::cast_precision_loss, reason = "some thousand words at most")]
fn grade<'t>(texts: impl IntoIterator<Item = &'t str>) -> f64 {
    let mut counts = [0_usize; 3];
    for text in texts {
        counts[0] += sentences(text).len();
        counts[1] += words(text).count();
        counts[2] += words(text).map(syllables).sum::<usize>();
    }
    let [sentences, words, syllables] = counts.map(|count| count.max(1) as f64);
    0.39 * words / sentences + 11.8 * syllables / words - 15.59
}

/// Returns the rows of the table under a heading of the style sheet.
fn table(heading: &str) -> Vec<Vec<&'static str>> {
    let (_, rest) = PAGE.split_once(heading).expect("the heading");
    rest.lines()
        .skip_while(|line| !line.starts_with('|'))
        .take_while(|line| line.starts_with('|'))
        .skip(2)
        .map(|row| row.trim_matches('|').split(" | ").map(str::trim).collect())
        .collect()
}

/// Returns the phrases to avoid, each with what to say instead and why.
fn never() -> Vec<(&'static str, &'static str, &'static str)> {
    table("### Words not to use")
        .into_iter()
        .flat_map(|row| {
            let [say, not, why] = row[..] else { panic!("three columns: {row:?}") };
            not.split(", ").map(move |phrase| (phrase, say, why))
        })
        .collect()
}

/// Returns the words of a text in lowercase, without surrounding punctuation.
fn plain(text: &str) -> Vec<String> {
    text.to_lowercase()
        .replace('\'', "’")
        .split(|c: char| !(c.is_alphanumeric() || "’…\u{1}".contains(c)))
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect()
}

/// Whether the words of a phrase occur in a text one after another. "…" stands for any ending.
fn says(text: &[String], phrase: &[String]) -> bool {
    text.windows(phrase.len()).any(|window| {
        window.iter().zip(phrase).all(|(word, wanted)| match wanted.strip_suffix('…') {
            Some(start) => word.starts_with(start),
            None => word == wanted,
        })
    })
}

/// Returns what is wrong with a text, wherever it is used.
fn faults(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    for sentence in sentences(text) {
        let count = words(&sentence).count();
        if count > SENTENCE {
            found.push(format!("{count} words: {sentence}"));
        }
    }
    found.append(&mut words_not_to_use(text));
    found
}

/// Returns the forbidden words in a text.
fn words_not_to_use(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    let said = plain(text);
    for (phrase, say, why) in never() {
        if says(&said, &plain(phrase)) {
            found.push(format!("“{phrase}”, not “{say}” ({why}): {text}"));
        }
    }
    found
}

/// Returns each finding in each of its forms, by code and remedy: title, why, and what to do.
fn findings(all: &ByKey<'_>) -> BTreeMap<String, [Vec<String>; 3]> {
    all.iter()
        .filter_map(|(key, remedy)| {
            let (code, fix) = key.split_once(".fix-")?;
            let of = |item: &Item| texts(&item.pattern, all, Some(fix), 0);
            let title = of(all.get(code)?);
            let why = of(all.get(format!("{code}.why").as_str())?);
            Some((format!("{code} {fix}"), [title, why, of(remedy)]))
        })
        .collect()
}

/// Returns what is too long or too hard to read in a finding as a whole.
fn too_long([title, why, remedy]: &[Vec<String>; 3]) -> Vec<String> {
    let mut found = Vec::new();
    for text in title {
        let own = words(text).filter(|word| !word.contains(VALUE)).count();
        if own > TITLE {
            found.push(format!("title of {own} words: {text}"));
        }
    }
    for text in why {
        let count = sentences(text).iter().filter(|sentence| !is_list(sentence)).count();
        if count > WHY {
            found.push(format!("{count} sentences of why: {text}"));
        }
    }
    for text in remedy {
        let count = sentences(text).len();
        if count > DO {
            found.push(format!("{count} sentences to do: {text}"));
        }
        let orders = orders(text);
        if orders.len() > ORDERS {
            found.push(format!("{} orders: {orders:?}", orders.len()));
        }
    }
    let longest = |texts: &[String]| texts.iter().max_by_key(|text| text.len()).cloned().unwrap_or_default();
    let whole = [title, why, remedy].map(|texts| longest(texts));
    let grade = grade(whole.iter().map(String::as_str));
    if grade > FINDING_GRADE {
        found.push(format!("grade {grade:.1}: {whole:?}"));
    }
    found
}

fn english() -> Catalog {
    let folder = Library::built_in().folder(FIRST_LANGUAGE).expect("English");
    Catalog::of(folder)
}

/// Whether a reader is shown the message, rather than typing it.
fn told(item: &Item) -> bool {
    let attribute = item.key.rsplit_once('.').map(|(_, name)| name);
    attribute != Some("also") && !["typed-", "learned-word-"].iter().any(|it| item.key.starts_with(it))
}

/// Returns every English message that a reader is shown, by key, with its possible texts. A page is not a message here.
pub(in crate::words) fn shown_to_readers() -> Vec<(String, Vec<String>)> {
    let catalog = english();
    let all = Catalog::by_key([&catalog]);
    let shown = catalog.items.iter().filter(|item| told(item) && !item.file.starts_with(PAGES));
    shown.map(|item| (item.key.clone(), texts(&item.pattern, &all, None, 0))).collect()
}

/// Whether the message is a page's list of sources.
fn cites(item: &Item) -> bool {
    item.file.starts_with(PAGES) && item.key.ends_with(CITED)
}

#[test]
fn no_sentence_is_long_and_no_word_is_forbidden() {
    let catalog = english();
    let all = Catalog::by_key([&catalog]);
    let mut wrong = Vec::new();
    for item in catalog.items.iter().filter(|item| told(item)) {
        let mut of_item: Vec<String> = texts(&item.pattern, &all, None, 0)
            .iter()
            .map(|text| if item.key.starts_with(SIGNS) { text.replace(';', "\n") } else { text.clone() })
            .flat_map(|text| if cites(item) { words_not_to_use(&text) } else { faults(&text) })
            .map(|fault| format!("{} {}: {fault}", item.file, item.key))
            .collect();
        of_item.sort();
        of_item.dedup();
        wrong.append(&mut of_item);
    }
    assert!(wrong.is_empty(), "{}\n{}", wrong.len(), wrong.join("\n"));
}

/// Text that readers see has typographic apostrophes. Only what they type has straight ones.
#[test]
fn apostrophes_are_those_of_print() {
    for (tag, folder) in Library::built_in().folders() {
        let items = Catalog::of(folder).items;
        let straight = |item: &&Item| {
            let signs: Vec<char> = item.written.chars().collect();
            let between = |three: &[char]| three[1] == '\'' && three[0].is_alphabetic() && three[2].is_alphabetic();
            signs.windows(3).any(between)
        };
        let found = items.iter().filter(|item| told(item)).filter(straight);
        let found: Vec<&str> = found.map(|item| item.key.as_str()).collect();
        assert_eq!(found, [""; 0], "{tag}");
    }
}

#[test]
fn a_finding_is_short() {
    let catalog = english();
    let all = Catalog::by_key([&catalog]);
    let findings = findings(&all);
    assert!(findings.len() > 150, "{}", findings.len());
    let wrong: Vec<String> = findings
        .iter()
        .flat_map(|(code, parts)| too_long(parts).into_iter().map(move |fault| format!("{code}: {fault}")))
        .filter(|fault| !FOUR.iter().any(|code| fault.starts_with(&format!("{code}: 4 orders"))))
        .collect();
    assert!(wrong.is_empty(), "{}\n{}", wrong.len(), wrong.join("\n"));
}

/// Returns the sentences of the README as a reader sees them: without code, tables and where links lead. Each paragraph
/// and each point of a list is one line.
fn readme() -> String {
    let mut lines = vec![String::new()];
    // Every second piece is code.
    for line in README.split("```").step_by(2).flat_map(str::lines) {
        let point = line.starts_with(['-', '#']);
        if line.is_empty() || line.starts_with('|') || point {
            lines.push(String::new());
        }
        if !line.starts_with('|') {
            let last = lines.last_mut().expect("there is one");
            *last = format!("{last} {}", line.trim_start_matches(['-', '#', ' ']));
        }
    }
    // Code inside a sentence is a name.
    let text = lines.join("\n").replace("](", " ](");
    let words = text.split(' ').filter(|word| !word.starts_with("]("));
    let text = words.collect::<Vec<_>>().join(" ").replace(['[', '*'], "");
    let pieces = text.split('`').enumerate();
    pieces.map(|(at, piece)| if at % 2 == 0 { piece } else { VALUE }).collect()
}

#[test]
fn the_readme_keeps_the_rules() {
    let text = readme();
    assert!(sentences(&text).len() > 60, "{text}");
    assert_eq!(faults(&text), [""; 0]);
    let grade = grade([text.as_str()]);
    assert!(grade <= FILE_GRADE, "grade {grade:.1}");
}

/// The name of a rule is the title of its page.
#[test]
fn names_of_rules_are_words() {
    let names = crate::rules::all().flat_map(|rule| words_not_to_use(&rule.name.replace('-', " ")));
    assert_eq!(names.collect::<Vec<_>>(), [""; 0]);
}

#[test]
fn a_sixth_grader_reads_every_file() {
    let catalog = english();
    let all = Catalog::by_key([&catalog]);
    let mut files: BTreeMap<&str, Vec<String>> = BTreeMap::new();
    for item in catalog
        .items
        .iter()
        .filter(|item| told(item))
        .filter(|item| !NAMES.contains(&item.file.as_str()) && !cites(item))
    {
        files.entry(&item.file).or_default().extend(texts(&item.pattern, &all, None, 0));
    }
    assert!(files.len() > 70, "{}", files.len());
    for (file, texts) in &files {
        let grade = grade(texts.iter().map(String::as_str));
        assert!(grade <= FILE_GRADE, "{file}: grade {grade:.1}");
    }
}

/// Otherwise an order with a verb of its own would not count.
#[test]
fn every_order_begins_with_a_verb_that_is_known() {
    let catalog = english();
    let all = Catalog::by_key([&catalog]);
    let remedies: Vec<String> = findings(&all).into_values().flat_map(|[_, _, remedy]| remedy).collect();
    let known: Vec<&str> = VERBS.split(' ').chain(NO_ORDER.split(' ')).collect();
    let first = |text: &String| plain(&text.replace(VALUE, &format!(" {VALUE} "))).swap_remove(0);
    let mut unknown: BTreeSet<String> = remedies.iter().flat_map(|text| sentences(text)).map(|it| first(&it)).collect();
    unknown.retain(|word| !known.contains(&word.as_str()));
    // What is printed on a cord.
    assert_eq!(unknown.into_iter().collect::<Vec<_>>(), ["2", "3"]);
    let said: BTreeSet<String> = remedies.iter().flat_map(|text| orders(text)).map(|it| first(&it)).collect();
    let unused: Vec<&str> = VERBS.split(' ').filter(|verb| !said.contains(*verb)).collect();
    assert_eq!(unused, [""; 0]);
    for code in FOUR {
        let remedy = &findings(&all)[code][2];
        assert_eq!(remedy.iter().map(|text| orders(text).len()).max(), Some(4), "{code}");
    }
}

/// Every phrase in the table is found in a sentence, so no row is dead. The better sentence of every pair passes the
/// rules.
#[test]
fn the_page_is_what_is_held_to() {
    let never = never();
    assert!(never.len() > 150, "{}", never.len());
    for (phrase, say, why) in &never {
        assert!(!phrase.is_empty() && !say.is_empty() && !why.is_empty(), "{phrase} {say} {why}");
        let sentence = format!("Now {} here.", phrase.replace('…', "s"));
        assert!(!faults(&sentence).is_empty(), "{phrase}");
    }
    let pairs = table("### Before and after");
    assert!(pairs.len() >= 20, "{}", pairs.len());
    for row in pairs {
        let [before, after, wrong] = row[..] else { panic!("three columns: {row:?}") };
        assert_eq!(faults(after), Vec::<String>::new(), "{before}: {wrong}");
    }
    for (what, most) in
        [("| a sentence | ", SENTENCE), ("| title of a finding | ", TITLE), ("| why | ", WHY), ("| what to do | ", DO)]
    {
        assert!(PAGE.contains(&format!("{what}{most} ")), "{what}{most}");
    }
    assert!(PAGE.contains(&format!("grade {FILE_GRADE} for each file and grade {FINDING_GRADE} for each finding")));
}

/// Each rule catches a violation and lets the near miss pass.
#[test]
fn what_breaks_a_rule_is_found() {
    for (text, wrong) in [
        ("The set is on.", true),
        ("The settings are on.", false),
        ("The limit sets this.", false),
        ("Its colour is red.", true),
        ("Nobody knows why.", true),
        ("So wet was taken.", true),
        ("The “part” hangs on it.", true),
        ("Leave it out.", true),
        ("Leave it on.", false),
    ] {
        assert_eq!(!faults(text).is_empty(), wrong, "{text}");
    }
    let long = |count: usize| format!("{}.", vec!["word"; count].join(" "));
    assert_eq!(faults(&long(SENTENCE)).len(), 0);
    assert_eq!(faults(&long(SENTENCE + 1)).len(), 1);
    // An abbreviation ends no sentence. Closing brackets and quotation marks do not hide an end.
    assert_eq!(sentences("Use 2.5 mm, e.g. this one. Then stop (soon). “Yes.” \u{1} runs.").len(), 4);
    assert!(is_list("Look at: \u{1}.") && !is_list("It is on: \u{1} and so.") && !is_list("Stop."));

    let finding =
        |title: &str, why: &str, remedy: &str| too_long(&[title, why, remedy].map(|text| vec![text.to_owned()]));
    assert_eq!(
        finding("Too much is on at \u{1}", "It is. It was. Look at: \u{1}.", "Go. Go. Go."),
        Vec::<String>::new()
    );
    assert_eq!(finding(&["a"; 9].join(" "), "It is.", "Go.").len(), 1);
    assert_eq!(finding("Too much", "It is. It was. It will.", "Go.").len(), 1);
    assert_eq!(finding("Too much", "It is.", "So. So. So. So.").len(), 1);
    assert_eq!(finding("Too much", "It is.", "Stop it, let it cool, and move it. Then look.").len(), 1);
    for (count, text) in [
        (3, "Stop the engine. Once it is cool, move it, and point it away (press TEST)."),
        (1, "Run them in turns, or leave one at home. Or use another."),
        (1, "Do not open, join or rewire anything."),
        (2, "Plug it in: “DO NOT USE”. A plug or cord goes first. Then look."),
        (0, "A roof must be high, and open on all sides."),
    ] {
        assert_eq!(orders(text).len(), count, "{text}");
    }
    let heavy = "Electricity generation equipment necessitates professional examination";
    assert_eq!(finding(heavy, heavy, heavy).len(), 1);
}

#[test]
fn syllables_and_grades_are_counted() {
    for (count, listed) in [
        (1, "stop wire wires plugged trips burned use safe the one cord load breathe charged"),
        (2, "breaker outlet people engine loaded needed cable table carbon inches melted"),
        (3, "gasoline battery appliance radio"),
        (4, "generator electrical receptacle overloaded"),
        (5, "electricity"),
    ] {
        for word in listed.split(' ') {
            assert_eq!(syllables(word), count, "{word}");
        }
    }
    // Ten words and eleven syllables in two sentences: 0.39 × 5 + 11.8 × 1.1 − 15.59.
    let text = "Stop the engine now or else. Then go and look.";
    assert!((grade([text]) - (-0.66)).abs() < 0.005, "{}", grade([text]));
}

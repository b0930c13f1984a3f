//! Questions, notes and dangers in words.

use std::cmp::{Ordering, Reverse};

use super::draft::Said;
use super::form::{self, Form};
use super::live;
use super::machine::{Input, Kind, Machine, Question};
use super::steps::{GENERATOR_AFTER, Group, Label, Suggestion};
use crate::loads::{self, LoadFacts};
use crate::words::Words;

/// A question in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct View {
    /// The position in the interview: "Part 2 of 5: its outlets".
    pub progress: String,
    /// The same position as one dot per part. Empty outside any part.
    pub dots: String,
    /// The question itself.
    pub question: String,
    /// Why it is asked, or where to read the answer.
    pub why: String,
    /// The kind of input it takes.
    pub shape: Shape,
    /// Drawings of what the list names, a line each, with blank lines between those that belong together. Empty if none.
    pub drawing: String,
    /// The typed answer that was refused, to be completed. Empty if none.
    pub refused: String,
    /// The words that stand for an input when typed, such as "unknown" or "none". The plan file's own words always
    /// work, in every language.
    pub spoken: Vec<(String, Input)>,
}

/// The kind of input that a question takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shape {
    /// A list to pick from.
    List {
        /// The rows of the list.
        rows: Vec<Row>,
        /// The row that Enter accepts, or `None` if the user must choose.
        start: Option<usize>,
        /// The count marked for each row, in a list that takes several. The first row ends the list.
        marks: Option<Vec<u8>>,
    },
    /// A line to type.
    Line {
        /// What Enter accepts.
        default: Option<String>,
        /// What else can be typed. Empty if nothing.
        hint: String,
    },
}

/// A row of a list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The text that is shown.
    pub text: String,
    /// Further words to find it by.
    pub also: String,
    /// The sort key among equal matches in a search. The smaller comes first.
    pub size: u32,
    /// The input that picking it gives.
    pub input: Input,
}

impl Row {
    /// Creates a row that is found by its text alone.
    pub fn new(text: impl Into<String>, input: Input) -> Self {
        Self { text: text.into(), also: String::new(), size: 0, input }
    }

    /// Returns the answer that picking it gives, or `None` if it gives another input.
    #[must_use]
    pub fn value(&self) -> Option<&str> {
        match &self.input {
            Input::Answer(value) => Some(value),
            _ => None,
        }
    }

    /// Returns the typed words, in lower case, that occur in the row's text or its further words.
    fn held<'t>(&self, typed: &'t str) -> Vec<&'t str> {
        let (text, also) = (self.text.to_lowercase(), self.also.to_lowercase());
        typed.split_whitespace().filter(|word| text.contains(*word) || also.contains(*word)).collect()
    }

    /// Scores how well the row matches the typed words it holds. The higher, the better.
    ///
    /// Whole words of its text score best, then the beginning of its text, then whole words found in its further words.
    /// Among equals, shorter names win ("heater" over "heater on low"), then smaller sizes.
    fn likeness(&self, typed: &str) -> i64 {
        let (text, also) = (self.text.to_lowercase(), self.also.to_lowercase());
        let typed = self.held(typed);
        // A shape's name is one word including its hyphen: "5-20R" does not match "L5-20R".
        let words_of = |text: &str| {
            let parts = text.split(|c: char| !c.is_alphanumeric());
            let whole = text.split(|c: char| !c.is_alphanumeric() && c != '-');
            let of: Vec<&str> = parts.chain(whole).collect();
            typed.iter().all(|word| of.contains(word))
        };
        let likeness = if words_of(&text) {
            3
        } else if text.starts_with(&typed.join(" ")) {
            2
        } else if words_of(&[text, also].join(" ")) {
            1
        } else {
            return -i64::from(self.size);
        };
        // Text after a comma is not part of the name.
        let name = self.text.split(',').next().unwrap_or_default();
        let words = i64::try_from(name.split_whitespace().count()).unwrap_or(0);
        (likeness << 48) - (words << 32) - i64::from(self.size)
    }
}

/// The values of the catch-all rows, for things that are not in the list.
const OTHERS: [&str; 3] = ["own", "cord", "box"];

/// The rows that match a search.
pub(super) struct Found {
    /// Their places in the list, best match first.
    pub(super) rows: Vec<usize>,
    /// Whether they hold every typed word.
    pub(super) whole: bool,
    /// Whether no row holds any typed word, or no answer all of them. The rows are the catch-all rows and help then.
    pub(super) lost: bool,
}

impl Found {
    /// Finds the rows that hold the most typed words. An answer has to hold all of them.
    ///
    /// For "big fan" in a list without "big", these are the fans, followed by the catch-all rows.
    pub(super) fn of(rows: &[&Row], typed: &str) -> Self {
        let typed = typed.to_lowercase();
        let words = typed.split_whitespace().count();
        let held: Vec<usize> = rows.iter().map(|row| row.held(&typed).len()).collect();
        let most = held.iter().copied().max().unwrap_or(0);
        let whole = most == words;
        let is_other = |at: &usize| rows[*at].value().is_some_and(|value| OTHERS.contains(&value));
        let all = 0..rows.len();
        // Among things, some of the words are a start. Among answers, "no idea" is not "No".
        let lost = words > 0 && (most == 0 || !whole && !all.clone().any(|at| is_other(&at)));
        let mut found: Vec<usize> = all.clone().filter(|at| !lost && held[*at] == most).collect();
        // Without a search, keep the order of the list.
        if words > 0 {
            found.sort_by_cached_key(|at| Reverse(rows[*at].likeness(&typed)));
        }
        if !whole {
            found.retain(|at| !is_other(at));
            found.extend(all.clone().filter(is_other));
        }
        found.extend(all.clone().filter(|at| lost && rows[*at].input == Input::Explain));
        // A page may have no help row, and no search should end with an empty list.
        if found.is_empty() {
            found.extend(all);
        }
        Self { rows: found, whole, lost }
    }
}

impl View {
    /// Creates a question outside any part of the interview.
    #[must_use]
    pub const fn plain(question: String, why: String, shape: Shape) -> Self {
        Self {
            progress: String::new(),
            dots: String::new(),
            question,
            why,
            shape,
            drawing: String::new(),
            refused: String::new(),
            spoken: Vec::new(),
        }
    }

    /// Returns the values that an answer to a list of several marks. An empty answer keeps the marked ones.
    ///
    /// `None` if the answer names something that is in no row.
    #[must_use]
    pub fn marked(&self, answer: &str) -> Option<Vec<String>> {
        let Shape::List { rows, marks: Some(marks), .. } = &self.shape else {
            return None;
        };
        if answer.trim().is_empty() {
            let marked = rows.iter().zip(marks).filter(|(_, count)| **count > 0);
            let marked = marked.filter_map(|(row, _)| row.value());
            return Some(marked.map(str::to_owned).collect());
        }
        let picks = form::picks(answer).ok()?.into_iter();
        let known = |pick: &str| rows.iter().any(|row| row.value() == Some(pick));
        picks.map(|(_, pick)| known(pick).then(|| pick.to_owned())).collect()
    }
}

/// Returns the text of a danger: what, why and what to do, or a short form if it was shown before.
pub(super) fn news_text(words: &Words, news: &live::News, loads: &[LoadFacts]) -> String {
    let (key, finding, more) = match news {
        live::News::New(finding) => ("note-danger", finding, &[][..]),
        live::News::Also(finding, more) => ("note-danger-also", finding, more.as_slice()),
        live::News::Gone(finding) => ("note-danger-gone", finding, &[][..]),
        live::News::Unplugged(finding, out) => ("note-danger-unplugged", finding, out.as_slice()),
        live::News::Milder(finding) => ("note-danger-milder", finding, &[][..]),
    };
    let text = words.finding(finding, loads);
    // If the title names all the parts, do not name them again.
    let more = crate::words::names_of(more, loads).into_iter();
    let named = |name: &&str| !text.title.contains(&words.quoted([*name].into_iter()));
    let more: Vec<&str> = if more.clone().any(|name| named(&name)) { more.collect() } else { Vec::new() };
    let named = if more.is_empty() { "yes" } else { "no" };
    let more = words.quoted(more.into_iter());
    // If the title says what is unknown, do not say it again.
    let told = key == "note-danger" && !text.look.is_empty() && crate::words::title_says_unknown(finding);
    let key = if told { "note-danger-unknown" } else { key };
    // For a danger that rests on a guess, where to look matters more than why.
    let why = if text.look.is_empty() { text.why } else { text.look.join(" ") };
    words.with(
        key,
        [
            ("signal", text.signal.into()),
            ("title", text.title.into()),
            ("named", named.into()),
            ("more", more.into()),
            ("why", why.into()),
            ("fix", text.fix.into()),
        ],
    )
}

/// Returns the text of a label.
pub(super) fn label(words: &Words, label: &Label) -> String {
    match label {
        Label::Plain(text) => text.clone(),
        Label::Numbers(text) => words.typed_numbers(text),
        Label::Word(key, values) => words.with(key, words.spoken(values)),
        Label::Place(id, shape) => {
            words.with("label-place", [("id", id.as_str().into()), ("shape", shape.to_string().into())])
        }
        Label::Marked(row) => {
            let row = self::label(words, row);
            words.with("label-marked", [("row", row.into())])
        }
        Label::Row(title, shown) => {
            let title = self::label(words, title);
            let shown: Vec<String> = shown.iter().map(|part| self::label(words, part)).collect();
            words.with("label-row", [("title", title.into()), ("shown", shown.join(&words.text("list-comma")).into())])
        }
    }
}

/// Returns the generator outlet that a question is about, if it is asked of one outlet after another. On screen, the
/// question's reason names the outlet.
pub fn outlet(words: &Words, question: &Question) -> Option<String> {
    let about = question.about.as_ref();
    let about = about.filter(|_| question.group == Group::Outlet);
    about.map(|about| label(words, about))
}

/// Puts a question into words.
pub fn view(words: &Words, question: &Question) -> View {
    let about = question.about.as_ref().map(|about| label(words, about)).unwrap_or_default();
    let text = |part: &str| words.with(&format!("ask-{}{part}", question.id), [("about", about.as_str().into())]);
    let (progress, dots) = progress(words, question).unwrap_or_default();
    let drawing = if question.drawn() { words.text(drawing(question)) } else { String::new() };
    View {
        progress,
        dots,
        question: text(""),
        why: text(".why"),
        shape: shape(words, question),
        drawing,
        refused: String::new(),
        spoken: key_words(words, question),
    }
}

/// Returns the position of a question in words and in dots: among the parts of the interview, or among the things to
/// look at.
fn progress(words: &Words, question: &Question) -> Option<(String, String)> {
    let section = section(question).filter(|_| question.in_turn);
    let (key, at, total) = match (question.look, section) {
        (Some(look), _) => (if look.more { "progress-look-more" } else { "progress-look" }, look.at, look.total),
        (None, at) => ("progress", at?, SECTIONS.len()),
    };
    let mut values = vec![("number", (at + 1).to_string().into()), ("total", total.to_string().into())];
    values.extend(section.map(|at| ("part", words.text(SECTIONS[at]).into())));
    let dot = |other: usize| match other.cmp(&at) {
        Ordering::Less => "●",
        Ordering::Equal => "◉",
        Ordering::Greater => "○",
    };
    Some((words.with(key, values), (0..total).map(dot).collect()))
}

/// The parts of the interview in order, as the progress line names them.
const SECTIONS: [&str; 5] =
    ["part-asked-generator", "part-asked-outlets", "part-asked-loads", "part-asked-site", "part-asked-gear"];

/// Returns the index of the part that a question belongs to. `None` for pages, and for fuel, which is asked only on
/// request.
fn section(question: &Question) -> Option<usize> {
    match question.group {
        _ if matches!(question.kind, Kind::Page(_)) => None,
        // These come after the outlets, which may answer them.
        Group::Generator if GENERATOR_AFTER.iter().any(|step| step.id == question.id) => Some(1),
        Group::Generator => Some(0),
        Group::Outlet | Group::Outlets => Some(1),
        Group::Load | Group::Loads => Some(2),
        Group::Site => Some(3),
        Group::Gear | Group::Gears | Group::Out => Some(4),
        Group::Fuel => None,
    }
}

/// Returns the words that mean something other than an answer, in the reader's language and in the plan file's.
fn key_words(words: &Words, question: &Question) -> Vec<(String, Input)> {
    // A name may be any word.
    if matches!(question.kind, Kind::Text(Form::Name)) {
        return Vec::new();
    }
    let mut spoken = Vec::new();
    let mut say = |key: &str, stable: &str, input: &Input| {
        let own = [words.text(key), words.text(&format!("{key}.also"))].join(",");
        spoken.extend(own.split(',').chain([stable]).map(|word| (word.trim().to_lowercase(), input.clone())));
    };
    // "Unknown" is understood even where it is not an answer, because the refusal says where to look.
    say("typed-unknown", "unknown", &Input::Unknown);
    if question.allows(&Input::Skip) {
        say("typed-none", "none", &Input::Skip);
    }
    if question.allows(&Input::NotBought) {
        say("typed-not-bought", "not bought", &Input::NotBought);
    }
    say("typed-picture", "tree", &Input::Picture);
    spoken
}

fn shape(words: &Words, question: &Question) -> Shape {
    let mut rows: Vec<Row> = match &question.kind {
        Kind::Choice(items) | Kind::Many(items) | Kind::Page(items) => items
            .iter()
            .map(|item| Row {
                text: label(words, &item.label),
                also: item.also.as_ref().map(|key| words.text(key)).unwrap_or_default(),
                size: item.watts,
                input: Input::Answer(item.value.clone()),
            })
            .collect(),
        Kind::YesNo => ["yes", "no"]
            .map(|value| Row {
                text: words.text(&format!("pick-{value}")),
                also: words.text(&format!("pick-{value}.also")),
                size: 0,
                input: Input::Answer(value.to_owned()),
            })
            .into(),
        Kind::Text(_) => return line(words, question),
    };
    let many = matches!(question.kind, Kind::Many(_));
    if many {
        let done = words.text(&format!("pick-{}-done", question.id));
        rows.insert(0, Row::new(done, Input::Answer("done".to_owned())));
    }
    let to_buy = question.allows(&Input::NotBought);
    if to_buy {
        let row = Row::new(words.text("pick-not-bought"), Input::NotBought);
        // Near the top of a long list, where it is seen.
        rows.insert(if many { 1 } else { rows.len() }, row);
    }
    let review = question.key == "review";
    if question.id == "review-quit" {
        rows.insert(0, Row::new(words.text("pick-review-quit"), Input::Quit));
    }
    if review || matches!(question.id, "gear-from" | "load-on") {
        rows.push(Row::new(words.text("pick-picture"), Input::Picture));
    }
    // Always the last answer of a list, so that nobody has to search for it.
    let (key, unknown) = match question.id {
        // No plan works without its generator's outlets, unless the generator is still to be bought. Users who do not
        // know them have to go and look.
        "outlet-list" => ("pick-look-first", Input::Quit),
        _ => ("pick-unknown", Input::Unknown),
    };
    if question.allows(&Input::Unknown) && unknown == Input::Unknown || question.drawn() && !(many && to_buy) {
        rows.push(Row { text: words.text(key), also: words.text("pick-unknown.also"), size: 0, input: unknown });
    }
    if review {
        // No help row here. The page explains itself, and the whole plan has to fit on one screen.
        rows.push(Row::new(words.text("pick-review-quit"), Input::Quit));
    } else {
        rows.push(Row::new(words.text("pick-explain"), Input::Explain));
    }
    let wanted = match &question.default {
        Suggestion::Said(Said::Is(text)) => Some(Input::Answer(text.clone())),
        Suggestion::Said(Said::Unknown) => Some(Input::Unknown),
        _ => None,
    };
    if many {
        let said = match &wanted {
            Some(Input::Answer(text)) => form::picks(text).unwrap_or_default(),
            _ => Vec::new(),
        };
        let mark = |row: &Row| {
            let mut these = said.iter().filter(|(_, value)| row.value() == Some(value));
            these.next().map_or(0, |(count, _)| *count)
        };
        return Shape::List { marks: Some(rows.iter().map(mark).collect()), rows, start: Some(0) };
    }
    let start = wanted.and_then(|wanted| rows.iter().position(|row| row.input == wanted));
    Shape::List { rows, start, marks: None }
}

fn line(words: &Words, question: &Question) -> Shape {
    let mut hints = Vec::new();
    if question.allows(&Input::Unknown) {
        let enter = question.default == Suggestion::Said(Said::Unknown);
        // With both hints, a narrow terminal has room only for the bare words.
        hints.push(words.text(match (question.allows(&Input::Skip), enter) {
            (true, _) => "typed-unknown",
            (false, true) => "hint-enter-unknown",
            (false, false) => "hint-unknown",
        }));
    }
    if question.allows(&Input::Skip) {
        hints.push(words.text("hint-none"));
    }
    if question.allows(&Input::NotBought) {
        hints.push(words.text("typed-not-bought"));
    }
    let default = match &question.default {
        Suggestion::Nothing => None,
        Suggestion::Said(Said::Unknown) => Some(words.text("typed-unknown")),
        Suggestion::Said(Said::None) => Some(words.text("typed-none")),
        Suggestion::Said(Said::Word(word)) => Some(words.text(word)),
        Suggestion::Said(Said::Is(text)) => Some(match &question.kind {
            Kind::Text(form) if form.has_numbers() => words.typed_numbers(text),
            _ => text.clone(),
        }),
    };
    Shape::Line { default, hint: hints.join(&words.text("hint-between")) }
}

/// Returns what `?` shows: the help of the question, and drawings where they help.
pub(super) fn explanation(words: &Words, question: &Question) -> Vec<String> {
    let key = format!("ask-{}.help", question.id);
    let mut texts = vec![words.text(&key)];
    if question.drawn() || matches!(question.id, "gear-list" | "gear-what" | "load-plug") {
        texts.push(words.text(drawing(question)));
    }
    texts
}

/// Returns the key of the drawings that help with a question.
pub(super) fn drawing(question: &Question) -> &'static str {
    if question.asks_plug() { "drawn-plugs" } else { "drawn-faces" }
}

/// Returns what follows from an unknown answer, or how to find out the answer.
///
/// `past` names what was plugged in past the part before the answer.
pub(super) fn not_known(
    words: &Words,
    machine: &Machine,
    question: &Question,
    past: &[Label],
    explained: bool,
) -> String {
    let about = question.about.as_ref().map(|about| label(words, about));
    if question.id == "gear-from" {
        let past: Vec<String> = past.iter().map(|it| label(words, it)).collect();
        let rest = words.quoted(past.iter().map(String::as_str));
        let values = [("part", about.unwrap_or_default().into()), ("count", past.len().into()), ("rest", rest.into())];
        return words.with("note-unplugged", values);
    }
    let taken = machine.taken(&question.key);
    if !taken.is_empty() {
        let plan = super::plan_of(machine.draft(), &|key| words.text(key));
        return words.assumed_together(&taken, &loads::facts(&plan));
    }
    let noted = words.text("note-unknown");
    if explained {
        return noted;
    }
    noted + "\n" + &explanation(words, question).join("\n\n")
}

/// Returns what a typed line means: help for `?`, the input that its words stand for, or an answer.
pub(super) fn typed(text: &str, spoken: &[(String, Input)]) -> Input {
    let trimmed = text.trim();
    if trimmed == "?" {
        return Input::Explain;
    }
    let lower = trimmed.to_lowercase();
    spoken
        .iter()
        .find(|(word, _)| *word == lower)
        .map_or_else(|| Input::Answer(trimmed.to_owned()), |(_, input)| input.clone())
}

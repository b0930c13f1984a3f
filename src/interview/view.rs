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
    /// Where one is: "Part 2 of 5: its outlets".
    pub progress: String,
    /// The same for the eye: one sign for each part. None outside any.
    pub dots: String,
    /// The question.
    pub question: String,
    /// Why it is asked, or where to read the answer.
    pub why: String,
    /// What is asked for.
    pub shape: Shape,
    /// Typed words that stand for an input: "unknown", "none". Those of the plan file are always
    /// among them, whatever the language.
    pub spoken: Vec<(String, Input)>,
}

/// What a question looks like.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shape {
    /// A list to pick from.
    List {
        /// Its rows.
        rows: Vec<Row>,
        /// The row that Enter takes; `None` where the user must choose.
        start: Option<usize>,
        /// Of a list that takes several: how many of each row are marked. The first row ends it.
        marks: Option<Vec<u8>>,
    },
    /// A line to type.
    Line {
        /// What Enter takes.
        default: Option<String>,
        /// What else may be typed; empty where nothing.
        hint: String,
    },
}

/// A row of a list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// What is shown.
    pub text: String,
    /// Further words by which it is found.
    pub also: String,
    /// Of rows that are found alike the smaller comes first.
    pub size: u32,
    /// What picking it means.
    pub input: Input,
}

impl Row {
    /// What means this input, and nothing else finds it.
    pub fn new(text: impl Into<String>, input: Input) -> Self {
        Self { text: text.into(), also: String::new(), size: 0, input }
    }

    /// The answer that picking it gives, if it is one.
    #[must_use]
    pub fn value(&self) -> Option<&str> {
        match &self.input {
            Input::Answer(value) => Some(value),
            _ => None,
        }
    }

    /// Those of the words typed, in small letters, that are in the row or in its further words.
    fn held<'t>(&self, typed: &'t str) -> Vec<&'t str> {
        let (text, also) = (self.text.to_lowercase(), self.also.to_lowercase());
        typed.split_whitespace().filter(|word| text.contains(*word) || also.contains(*word)).collect()
    }

    /// How much it is what was typed, by the words that it holds: most where they are words of it, then where it begins so,
    /// then where they are words by which it is found. Of equals the one that says no more than others, "heater" and not
    /// "heater on low", and then the smaller.
    fn likeness(&self, typed: &str) -> i64 {
        let (text, also) = (self.text.to_lowercase(), self.also.to_lowercase());
        let typed = self.held(typed);
        // The name of a shape is a word with its hyphen: "L5-20R" is not "5-20R".
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
        // What stands behind a comma is no part of the name.
        let name = self.text.split(',').next().unwrap_or_default();
        let words = i64::try_from(name.split_whitespace().count()).unwrap_or(0);
        (likeness << 48) - (words << 32) - i64::from(self.size)
    }
}

/// What things are picked as that no row names.
const OTHERS: [&str; 3] = ["own", "cord", "box"];

/// The rows of a list that somebody means.
pub(super) struct Found {
    /// As places in the list, the likeliest first.
    pub(super) rows: Vec<usize>,
    /// Whether they hold all that was typed.
    pub(super) whole: bool,
    /// Whether no row holds any of it: these are what is in no list, and help.
    pub(super) lost: bool,
}

impl Found {
    /// Those that hold most of the words typed. Of a "big fan" where none is big, the fans, and then what is in no list.
    pub(super) fn of(rows: &[&Row], typed: &str) -> Self {
        let typed = typed.to_lowercase();
        let words = typed.split_whitespace().count();
        let held: Vec<usize> = rows.iter().map(|row| row.held(&typed).len()).collect();
        let most = held.iter().copied().max().unwrap_or(0);
        let (whole, lost) = (most == words, most == 0 && words > 0);
        let all = 0..rows.len();
        let mut found: Vec<usize> = all.clone().filter(|at| !lost && held[*at] == most).collect();
        // As they stand, until something is typed.
        if words > 0 {
            found.sort_by_cached_key(|at| Reverse(rows[*at].likeness(&typed)));
        }
        if !whole {
            let is_other = |at: &usize| rows[*at].value().is_some_and(|value| OTHERS.contains(&value));
            found.retain(|at| !is_other(at));
            found.extend(all.clone().filter(is_other));
        }
        found.extend(all.clone().filter(|at| lost && rows[*at].input == Input::Explain));
        // On a page without help nobody is left with nothing.
        if found.is_empty() {
            found.extend(all);
        }
        Self { rows: found, whole, lost }
    }
}

impl View {
    /// A question outside any part of the interview, and what it takes.
    #[must_use]
    pub const fn plain(question: String, why: String, shape: Shape) -> Self {
        Self { progress: String::new(), dots: String::new(), question, why, shape, spoken: Vec::new() }
    }

    /// The values that an answer to a list of several marks: nothing typed keeps those that are marked. `None` where it
    /// names what is in no row.
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

/// A danger in words: what, why and what to do; short when it was told before.
pub(super) fn news_text(words: &Words, news: &live::News, loads: &[LoadFacts]) -> String {
    let (key, finding, more) = match news {
        live::News::New(finding) => ("note-danger", finding, &[][..]),
        live::News::Also(finding, more) => ("note-danger-also", finding, more.as_slice()),
        live::News::Gone(finding) => ("note-danger-gone", finding, &[][..]),
        live::News::Milder(finding) => ("note-danger-milder", finding, &[][..]),
    };
    let text = words.finding(finding, loads);
    // Where the title names them all, once is enough.
    let more = crate::words::names_of(more, loads).into_iter();
    let named = |name: &&str| !text.title.contains(&words.quoted([*name].into_iter()));
    let more: Vec<&str> = if more.clone().any(|name| named(&name)) { more.collect() } else { Vec::new() };
    let named = if more.is_empty() { "yes" } else { "no" };
    let more = words.quoted(more.into_iter());
    // Where the title says what is not known, that is not said again.
    let told = key == "note-danger" && !text.look.is_empty() && crate::words::title_says_unknown(finding);
    let key = if told { "note-danger-unknown" } else { key };
    // Of a guess, where to look says more than what it would mean.
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

/// A label in words.
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

/// The outlet of the generator that a question is asked of, where it is asked of one after another: on the screen its
/// reason names it.
pub fn outlet(words: &Words, question: &Question) -> Option<String> {
    let about = question.about.as_ref();
    let about = about.filter(|_| question.group == Group::Outlet);
    about.map(|about| label(words, about))
}

/// A question in words.
pub fn view(words: &Words, question: &Question) -> View {
    let about = question.about.as_ref().map(|about| label(words, about)).unwrap_or_default();
    let text = |part: &str| words.with(&format!("ask-{}{part}", question.id), [("about", about.as_str().into())]);
    let at = section(question).filter(|_| question.in_turn);
    let progress = at.map(|at| {
        let number = [
            ("number", (at + 1).to_string().into()),
            ("total", SECTIONS.len().to_string().into()),
            ("part", words.text(SECTIONS[at]).into()),
        ];
        words.with("progress", number)
    });
    let dot = |at: usize, other: usize| match other.cmp(&at) {
        Ordering::Less => "●",
        Ordering::Equal => "◉",
        Ordering::Greater => "○",
    };
    let dots = at.map(|at| (0..SECTIONS.len()).map(|other| dot(at, other)).collect());
    View {
        progress: progress.unwrap_or_default(),
        dots: dots.unwrap_or_default(),
        question: text(""),
        why: text(".why"),
        shape: shape(words, question),
        spoken: key_words(words, question),
    }
}

/// The parts of the interview, in their order, as the progress line says them.
const SECTIONS: [&str; 5] =
    ["part-asked-generator", "part-asked-outlets", "part-asked-loads", "part-asked-site", "part-asked-gear"];

/// The part a question belongs to: its number in their order. Fuel is asked on request only.
fn section(question: &Question) -> Option<usize> {
    match question.group {
        _ if matches!(question.kind, Kind::Page(_)) => None,
        // What its outlets may tell.
        Group::Generator if GENERATOR_AFTER.iter().any(|step| step.id == question.id) => Some(1),
        Group::Generator => Some(0),
        Group::Outlet | Group::Outlets => Some(1),
        Group::Load | Group::Loads => Some(2),
        Group::Site => Some(3),
        Group::Gear | Group::Gears | Group::Out => Some(4),
        Group::Fuel => None,
    }
}

/// What typed words mean besides an answer: the language's own and those of the plan file.
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
    // Said where it cannot be taken, "unknown" is still understood: the reply says where to look.
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
        // Above a long list it is seen.
        rows.insert(if many { 1 } else { rows.len() }, row);
    }
    let review = question.key == "review";
    if question.id == "review-quit" {
        rows.insert(0, Row::new(words.text("pick-review-quit"), Input::Quit));
    }
    if review || matches!(question.id, "gear-from" | "load-on") {
        rows.push(Row::new(words.text("pick-picture"), Input::Picture));
    }
    // In every list the last answer: there nobody has to look for it.
    let (key, unknown) = match question.id {
        // Without its outlets there is no generator to plan with, unless it is to be bought: who does not know them goes
        // and looks.
        "outlet-list" => ("pick-look-first", Input::Quit),
        _ => ("pick-unknown", Input::Unknown),
    };
    if question.allows(&Input::Unknown) && unknown == Input::Unknown || question.drawn() && !(many && to_buy) {
        rows.push(Row { text: words.text(key), also: words.text("pick-unknown.also"), size: 0, input: unknown });
    }
    if review {
        // Without a row for help: what it would tell stands above, and the whole plan has to fit
        // on one screen.
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
        // With both there is no room on a narrow terminal for more than the words themselves.
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

/// What `?` tells: the help of the question, and the drawings of faces where they help.
pub(super) fn explanation(words: &Words, question: &Question) -> Vec<String> {
    let key = format!("ask-{}.help", question.id);
    let mut texts = vec![words.text(&key)];
    if question.drawn() || matches!(question.id, "gear-list" | "gear-what" | "load-plug") {
        texts.push(words.text(drawing(question)));
    }
    texts
}

/// The drawings that help with a question.
pub(super) fn drawing(question: &Question) -> &'static str {
    if question.asks_plug() { "drawn-plugs" } else { "drawn-faces" }
}

/// What follows from an answer that nobody knows, and how to find it out.
pub(super) fn not_known(words: &Words, machine: &Machine, question: &Question, explained: bool) -> String {
    let about = question.about.as_ref().map(|about| label(words, about));
    let part = [("part", about.unwrap_or_default().into())];
    if question.id == "gear-from" {
        return words.with("note-unplugged", part);
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

/// What a typed line means: a spoken word, a key word for back or help, or an answer.
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

//! Formats what is wrong with a plan file: every problem with its line and what would be right. The messages are in
//! `plan.ftl`.

use std::ops::Range;

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Group, Level, Origin, Renderer, Snippet, normalize_untrusted_str};
use fluent_bundle::FluentValue;

use super::{Show, Words, escaped};
use crate::plan::problem::Value;
use crate::plan::store::{Fault, StoreError};
use crate::plan::{Problem, Problems, Refusal, hides};
use crate::quantity::Unit;

/// How problems are displayed.
#[derive(Clone, Copy, Debug)]
pub struct Look {
    /// Whether to use color and line-drawing characters.
    pub coloured: bool,
    /// The width in columns.
    pub width: usize,
}

impl Default for Look {
    fn default() -> Self {
        Self { coloured: false, width: 100 }
    }
}

/// The most problems shown. A file with more is probably not the file its owner thinks it is.
const MOST_SHOWN: usize = 40;

/// The longest line shown, in bytes. A longer one is only named.
const LONGEST_LINE: usize = 2000;

/// Formats every problem in the text of a plan file, ending with a line that counts them.
pub fn render(words: &Words, path: &str, text: &str, problems: &Problems, look: Look) -> String {
    let renderer = if look.coloured { Renderer::styled().decor_style(DecorStyle::Unicode) } else { Renderer::plain() };
    let renderer = renderer.term_width(look.width.max(40));
    let (path, text) = (&*escaped(path), &disarmed(text));
    let mut out = String::new();
    for problem in problems.0.iter().take(MOST_SHOWN) {
        let spoken = speak(words, &problem.why);
        let group = group(words, path, text, problem, &spoken);
        out.push_str(&renderer.render(&[group]));
        out.push_str("\n\n");
    }
    let count = problems.0.len();
    if count > MOST_SHOWN {
        out.push_str(&words.with("plan-more", [("count", (count - MOST_SHOWN).into())]));
        out.push('\n');
    }
    out.push_str(&words.with("plan-nothing-done", [("count", count.into()), ("path", path.to_owned().into())]));
    out.push('\n');
    out
}

/// Replaces each hidden character with a visible one of the same length in bytes, so that spans stay valid. The
/// renderer replaces control characters itself, but not all direction marks.
fn disarmed(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c.len_utf8() {
            2 if hides(c) && !c.is_control() => out.push_str("??"),
            3 if hides(c) => out.push('\u{fffd}'),
            _ => out.push(c),
        }
    }
    out
}

/// Formats what is wrong with a file or folder and what to do about it, in two lines.
pub fn store(words: &Words, error: &StoreError) -> String {
    let help = words.with(&format!("{}.help", error.key()), store_values(error));
    format!("{}\n{help}\n", store_title(words, error))
}

/// Formats what is wrong with a file or folder in one sentence.
pub fn store_title(words: &Words, error: &StoreError) -> String {
    words.with(error.key(), store_values(error))
}

fn store_values(error: &StoreError) -> [(&'static str, FluentValue<'static>); 3] {
    let reason = match &error.fault {
        Fault::System(error) => error.to_string(),
        _ => String::new(),
    };
    let line = match error.fault {
        Fault::NotText { line } => line,
        _ => 0,
    };
    [("path", error.path.display().to_string().into()), ("reason", reason.into()), ("line", line.to_string().into())]
}

/// A problem in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ProblemText {
    /// What was found.
    pub title: String,
    /// What would be right.
    pub help: String,
}

/// Formats one problem without its location.
pub fn speak(words: &Words, why: &Refusal) -> ProblemText {
    let help = if why.near { "help-near" } else { "help" };
    let said = |key: &str| words.with(key, words.spoken(&why.values));
    ProblemText { title: said(&format!("plan-{}", why.key)), help: said(&format!("plan-{}.{help}", why.key)) }
}

impl Words {
    /// Formats why an answer is not accepted.
    pub(crate) fn refused(&self, why: &Refusal) -> String {
        self.with(&format!("reject-{}", why.key), self.spoken(&why.values))
    }

    /// Formats values, keeping their names.
    pub(crate) fn spoken<'v>(
        &self,
        values: &'v [(&'static str, Value)],
    ) -> impl Iterator<Item = (&'v str, FluentValue<'v>)> {
        let told = |(name, value): &'v (&'static str, Value)| (*name, self.told(value).into());
        values.iter().map(told)
    }

    fn told(&self, value: &Value) -> String {
        match value {
            Value::Text(text) => text.clone(),
            Value::Word(key) => self.text(key),
            Value::Words(keys) => {
                // Quoted, because one of them is “Electric cooler, compressor”.
                let quoted = |key: &String| self.with("id-quoted", [("id", self.text(key).into())]);
                let all: Vec<String> = keys.iter().map(quoted).collect();
                all.join(&self.text("list-comma"))
            }
            Value::All(items) => self.list(items),
            Value::Any(items) => self.joined(items, "list-or"),
            Value::Numbers(text) => self.said_numbers(text),
            Value::Units(unit) => self.units_for(*unit),
            // An actual distance rounds down: 19.99 ft is not 20.
            Value::Amount(amount) if amount.unit == Unit::Metre => self.amount(*amount, Show::AtMost),
            Value::Amount(amount) => self.amount(*amount, Show::Exact),
        }
    }
}

fn group<'a>(words: &Words, path: &'a str, text: &'a str, problem: &Problem, spoken: &ProblemText) -> Group<'a> {
    let group = Level::ERROR
        .with_name(words.text("plan-problem"))
        .primary_title(spoken.title.clone())
        .elements(Vec::<Origin<'a>>::new());
    let group = match window(text, &problem.span) {
        Place::File => group.element(Origin::path(path)),
        Place::Line { line, column } => group.element(Origin::path(path).line(line).char_column(column)),
        Place::Shown(shown) => {
            let mut snippet = Snippet::source(&text[shown.lines.clone()])
                .path(path)
                .line_start(shown.line)
                .annotation(AnnotationKind::Primary.span(shown.span));
            if let Some(first) = &problem.first {
                // Shown only if it is within the same lines. The title names its line.
                let within = shown.lines.start <= first.start && first.end <= shown.lines.end;
                if within {
                    let first = first.start - shown.lines.start..first.end - shown.lines.start;
                    snippet =
                        snippet.annotation(AnnotationKind::Context.span(first).label(words.text("plan-first-here")));
                }
            }
            group.element(snippet)
        }
    };
    group.element(Level::HELP.with_name(words.text("plan-help")).message(normalize_untrusted_str(&spoken.help)))
}

enum Place {
    /// The file as a whole.
    File,
    /// A location in a line too long to show.
    Line { line: usize, column: usize },
    /// Lines to show.
    Shown(Shown),
}

struct Shown {
    /// The byte range of the lines.
    lines: Range<usize>,
    /// The number of the first line, counting from one.
    line: usize,
    /// The bytes to mark, relative to the start of the lines.
    span: Range<usize>,
}

/// Returns the line of a span and the line before it, which is often a heading.
fn window(text: &str, span: &Range<usize>) -> Place {
    if span.end == 0 || text.get(span.clone()).is_none() {
        return Place::File;
    }
    let line_start = text[..span.start].rfind('\n').map_or(0, |at| at + 1);
    let line_end = text[span.start..].find('\n').map_or(text.len(), |at| span.start + at);
    let line = text[..line_start].matches('\n').count() + 1;
    if line_end - line_start > LONGEST_LINE {
        let column = text[line_start..span.start].chars().count() + 1;
        return Place::Line { line, column };
    }
    let before = text[..line_start.saturating_sub(1)].rfind('\n').map_or(0, |at| at + 1);
    let start = if line_start - before > LONGEST_LINE { line_start } else { before };
    Place::Shown(Shown {
        lines: start..line_end,
        line: if start < line_start { line - 1 } else { line },
        span: span.start - start..span.end.min(line_end).max(span.start) - start,
    })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    /// Each message appears for some plan that is wrong in that way, both with and without a guess at what was meant if
    /// it has text for both.
    #[test]
    #[allow(clippy::disallowed_methods)] // tests read plain files
    fn every_problem_is_met_and_no_words_are_left_over() {
        let words = Words::english();
        let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/plans/bad");
        let files = std::fs::read_dir(folder).unwrap();
        let read = |entry: std::io::Result<std::fs::DirEntry>| std::fs::read_to_string(entry.unwrap().path()).unwrap();
        let deep = format!("a = {}", "[".repeat(200));
        let many = (0..300).map(|n| format!("[[cord]]\nid = \"c{n}\"\n"));
        let many: String = many.collect();
        let few = [
            "language = \"!!\"",
            "# \u{1}",
            "ä = 1",
            "a = 1 = 2",
            &deep,
            &many,
            "site = 3",
            "[generator]\nbonding_plug = false\nbonding_plug_in = \"a\"",
            "[generator]\n[[generator.outlet]]\nid = \"a\"\nshares = \"a\"",
            "[generator]\n[[generator.outlet]]\nid = \"a\"\nshares = \"zebra\"",
            "[[load]]\non = \"unknown\"",
        ];
        let few = few.map(|lines| format!("format = 1\n{lines}\n"));
        let found = files.map(read).chain(few).flat_map(|text| {
            let problems = crate::plan::read(&text).expect_err(&text);
            problems.0.into_iter().map(|problem| problem.why)
        });
        let mut said = crate::words::spoken::Once::default();
        // No parser reports this one yet.
        let found = found.chain([Refusal::new("syntax")]);
        let mut used: BTreeSet<String> = BTreeSet::new();
        for why in found {
            let spoken = speak(&words, &why);
            assert!(!spoken.title.is_empty() && !spoken.help.is_empty());
            said.add(&format!("{} {}", spoken.title, spoken.help));
            let help = if why.near { "help-near" } else { "help" };
            used.insert(format!("plan-{}.{help}", why.key));
            used.extend(why.values.into_iter().filter_map(|(_, value)| match value {
                Value::Word(key) => Some(key),
                _ => None,
            }));
        }
        assert_eq!(words.faults(), Vec::<String>::new());
        let mut there: BTreeSet<String> = BTreeSet::new();
        let mut key = "";
        for line in include_str!("../../i18n/en/plan.ftl").lines() {
            let word = line.trim_start().split(' ').next().unwrap_or_default();
            match word {
                _ if line.starts_with("plan-type-") => {
                    there.insert(word.to_owned());
                }
                _ if !line.starts_with(' ') => key = word,
                // Messages printed around the problems have no help.
                _ if key.starts_with("plan-") && word.starts_with('.') => {
                    there.insert(format!("{key}{word}"));
                }
                _ => {}
            }
        }
        assert_eq!(used, there);
        insta::assert_snapshot!("errors_in_plans", said.text);
    }

    #[test]
    fn every_fault_of_a_file_has_its_words() {
        use std::io::ErrorKind;
        let words = Words::english();
        let mut all = crate::words::spoken::Once::default();
        let mut used: BTreeSet<&str> = BTreeSet::new();
        for writing in [true, false] {
            let system = [
                ErrorKind::NotFound,
                ErrorKind::PermissionDenied,
                ErrorKind::StorageFull,
                ErrorKind::NotADirectory,
                ErrorKind::Other,
            ]
            .map(|kind| Fault::System(kind.into()));
            for fault in system.into_iter().chain([
                Fault::Folder,
                Fault::Exists,
                Fault::NotOurs,
                Fault::Changed,
                Fault::Silent,
                Fault::Name,
                Fault::TooLarge,
                Fault::NotText { line: 3 },
                Fault::InUse,
            ]) {
                let error = StoreError { path: "camp.toml".into(), writing, fault };
                let said = store(&words, &error);
                assert!(said.lines().count() == 2, "{said}");
                all.add(&said);
                used.insert(error.key());
            }
        }
        assert_eq!(words.faults(), Vec::<String>::new());
        let there: BTreeSet<&str> = include_str!("../../i18n/en/plan.ftl")
            .lines()
            .filter(|line| line.starts_with("store-"))
            .filter_map(|line| line.split(' ').next())
            .collect();
        assert_eq!(used, there);
        insta::assert_snapshot!("errors_of_files", all.text);
    }

    #[test]
    fn colour_changes_nothing_but_the_look() {
        let words = Words::english();
        let text = "format = 1\n[generator]\nrated = 2800\nvoltage = \"120 V\"\n";
        let problems = crate::plan::read(text).unwrap_err();
        let look = Look { coloured: true, width: 60 };
        let coloured = render(&words, "a.toml", text, &problems, look);
        assert!(coloured.contains('\u{1b}'));
        let bare = anstream::adapter::strip_str(&coloured).to_string();
        assert!(bare.contains("a.toml:3:9") && bare.contains("2800"), "{bare}");
    }

    #[test]
    fn text_that_would_steer_the_terminal_is_disarmed() {
        let words = Words::english();
        let text = "format = 1\nname = \"\u{202e}x\"\n[\"a\\u001b[2J\"]\n";
        let problems = crate::plan::read(text).unwrap_err();
        let shown = render(&words, "\u{1b}[2Ja.toml", text, &problems, Look::default());
        assert!(!shown.contains('\u{1b}') && !shown.contains('\u{202e}'), "{shown}");
        // Also in the name of a file, and in anything else inserted into a message.
        let error = StoreError { path: "\u{1b}[2J\u{202e}.toml".into(), writing: false, fault: Fault::Folder };
        assert!(store(&words, &error).contains("\\u{1b}[2J\\u{202e}.toml is a folder"), "{}", store(&words, &error));
    }
}

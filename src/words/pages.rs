//! The rules' pages, which `explain` prints: a file for each rule in a language's folder `explain`, with five parts
//! under fixed headings.
//!
//! For judging translations, each part is a message, `page-CODE.PART`, and may use terms and figures as messages do. If
//! a page states an amount in feet and in meters, `25 ft (7.7 m)`, a reader gets only one of them.

use std::borrow::Cow;
use std::fmt::Write as _;

use fluent_bundle::{FluentArgs, FluentResource};
use fluent_syntax::ast::Entry;

use super::library::page_code;
use super::{FIRST_LANGUAGE, Library, PAGES, Units, Words};
use crate::rules::{self, Rule};

/// The parts of a page in order. The heading of each is the message `page-PART`.
pub const PARTS: [&str; 5] = ["checks", "hurts", "arithmetic", "do", "sources"];

/// A rule's page in the reader's language and units.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Page {
    /// The rule's code and name.
    pub title: String,
    /// The heading and text of each part, with one line for each paragraph and list item.
    pub parts: Vec<(String, String)>,
}

impl Page {
    /// Returns the text of one of the [`PARTS`], or an empty string if the page lacks it.
    #[must_use]
    pub fn part(&self, name: &str) -> &str {
        PARTS.iter().position(|part| *part == name).and_then(|at| self.parts.get(at)).map_or("", |(_, text)| text)
    }

    /// Returns the first sentence of what the rule checks.
    #[must_use]
    pub fn summary(&self) -> String {
        let text = self.part(PARTS[0]);
        match text.split_once(". ") {
            Some((first, _)) => format!("{first}."),
            None => text.to_owned(),
        }
    }
}

impl Words {
    /// Returns a rule's page, in the first language if this one has none.
    pub fn page(&self, rule: &Rule) -> Page {
        let (page, faults) = self.page_of(rule.code);
        for fault in faults {
            self.fault(fault);
        }
        page
    }

    fn page_of(&self, code: &str) -> (Page, Vec<String>) {
        let english = || {
            let first = Library::built_in().folder(FIRST_LANGUAGE)?;
            let mut pages = first.pages();
            pages.find(|(its, _)| *its == code).map(|(_, text)| text)
        };
        let Some(text) = self.pages.get(code).or_else(english) else {
            return (Page::default(), vec![format!("no page {code}")]);
        };
        let mut faults = Vec::new();
        let messages = FluentResource::try_new(as_messages(code, text));
        let messages = messages.unwrap_or_else(|(partial, errors)| {
            faults.push(format!("page {code}: {errors:?}"));
            partial
        });
        let mut parts = Vec::new();
        let none = FluentArgs::new();
        let args = self.with_figures(&none);
        for entry in messages.entries() {
            let Entry::Message(message) = entry else {
                continue;
            };
            for (attribute, heading) in message.attributes.iter().zip(headings(text)) {
                let mut errors = Vec::new();
                let pattern = &attribute.value;
                let said = self.bundle.format_pattern(pattern, Some(&args), &mut errors);
                if !errors.is_empty() {
                    faults.push(format!("page {code}: {errors:?}"));
                }
                parts.push((heading.to_owned(), in_units(&said, self.units())));
            }
        }
        let title = text.lines().next().unwrap_or_default();
        let title = title.trim_start_matches('#').trim().to_owned();
        (Page { title, parts }, faults)
    }

    /// Formats a part of a page by its message key, or returns what is wrong with the page. `None` if it is not such a
    /// key.
    pub(super) fn part_of_page(&self, key: &str) -> Option<Result<String, String>> {
        let (code, part) = key.strip_prefix("page-")?.split_once('.')?;
        let (page, mut faults) = self.page_of(code);
        Some(match faults.pop() {
            Some(fault) => Err(fault),
            None => Ok(page.part(part).to_owned()),
        })
    }
}

/// Returns the rules as a Markdown table for the developer documentation.
#[must_use]
pub fn list_of_rules() -> String {
    let words = Words::english();
    let mut table = String::from("| code | hazard | area | what it checks |\n| --- | --- | --- | --- |\n");
    for rule in rules::all() {
        let summary = words.page(rule).summary();
        // Writing to a String cannot fail.
        let _ = writeln!(table, "| {} | {} | {} | {summary} |", rule.code, rule.name, rule.area);
    }
    table
}

/// Returns the path of a rule's page in a language folder.
pub(super) fn file(code: &str) -> String {
    format!("{PAGES}/{code}.md")
}

/// Returns the headings of a page below its title.
pub(super) fn headings(page: &str) -> impl Iterator<Item = &str> {
    page.lines().filter_map(|line| line.strip_prefix("## "))
}

/// Returns a file's text as messages. A page becomes one message with an attribute for each part.
pub(super) fn messages<'t>(file: &str, text: &'t str) -> Cow<'t, str> {
    match page_code(file) {
        Some(code) => as_messages(code, text).into(),
        None => text.into(),
    }
}

/// Returns a page as one message. What does not belong on a page becomes a line that is no valid message.
fn as_messages(code: &str, page: &str) -> String {
    let mut out = format!("## Safety. What “tallywatt explain {code}” says.\n\npage-{code} =\n");
    let mut parts = page.split("\n## ");
    let title = parts.next().unwrap_or_default();
    for (at, part) in parts.enumerate() {
        let (_, text) = part.split_once('\n').unwrap_or((part, ""));
        let name = PARTS.get(at).map_or_else(|| format!("part-{}", at + 1), |&name| name.to_owned());
        let _ = writeln!(out, "    .{name} =");
        for line in joined(text) {
            // These would start an attribute or a case.
            let guard = if line.starts_with(['.', '*', '[', '}']) { "{\"\"}" } else { "" };
            let _ = match line.as_str() {
                "" => writeln!(out),
                line => writeln!(out, "        {guard}{line}"),
            };
        }
    }
    if !title.starts_with(&format!("# {code} ")) || title.trim().contains('\n') {
        let _ = writeln!(out, "\n\"{}\"", title.trim());
    }
    out
}

/// Joins the lines of each paragraph and list item into one, and keeps blank lines.
fn joined(text: &str) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for line in text.trim().lines().map(str::trim) {
        match lines.last_mut() {
            Some(last) if !last.is_empty() && !line.is_empty() && !line.starts_with("- ") => {
                last.push(' ');
                last.push_str(line);
            }
            _ => lines.push(line.to_owned()),
        }
    }
    lines
}

/// The characters between a number and its unit.
const BLANKS: [char; 2] = [' ', '\u{a0}'];

/// Reduces each amount stated twice, `25 ft (7.7 m)`, to the one in the reader's unit.
fn in_units(text: &str, units: Units) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once(" (") {
        out.push_str(before);
        let second = after.split_once(')').filter(|(inside, _)| amount_at_end(inside) == Some(*inside));
        if let (Some(first), Some((second, after))) = (amount_at_end(before), second) {
            if second.rsplit(BLANKS).next().is_some_and(|unit| units.include(unit)) {
                out.truncate(out.len() - first.len());
                out.push_str(second);
            }
            rest = after;
        } else {
            out.push_str(" (");
            rest = after;
        }
    }
    out.push_str(rest);
    out
}

/// Returns the amount at the end of a text, if its unit is used by only one kind of reader.
fn amount_at_end(text: &str) -> Option<&str> {
    let (front, unit) = text.rsplit_once(BLANKS)?;
    let theirs = Units::Customary.include(unit) != Units::Metric.include(unit);
    let number = front.rsplit(char::is_whitespace).next()?;
    let plain = number.starts_with(|c: char| c.is_ascii_digit());
    (theirs && plain).then(|| &text[front.len() - number.len()..])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_amount_given_twice_is_told_once() {
        for (text, customary, metric) in [
            ("At 25 ft (7.7 m) or more.", "At 25 ft or more.", "At 7.7 m or more."),
            ("7,7\u{a0}m (25\u{a0}ft): (so)", "25\u{a0}ft: (so)", "7,7\u{a0}m: (so)"),
            ("up to 95 °F (35 °C), 5 ft (2 m)", "up to 95 °F, 5 ft", "up to 35 °C, 2 m"),
            ("16 AWG (1.31 mm²) (or 2 m)", "16 AWG (1.31 mm²) (or 2 m)", "16 AWG (1.31 mm²) (or 2 m)"),
            ("4.6 m (confirmed)", "4.6 m (confirmed)", "4.6 m (confirmed)"),
            ("1 m (2 m", "1 m (2 m", "1 m (2 m"),
        ] {
            assert_eq!(in_units(text, Units::Customary), customary);
            assert_eq!(in_units(text, Units::Metric), metric);
        }
    }

    #[test]
    fn a_page_is_a_message_with_its_parts() {
        let page = "# AIR001 name\n\n## One\nA\nb. C.\n\n*d*\n- e\n  f\n- g\n\n## Two\n{ $call }\n";
        let code = "AIR001";
        let resource = FluentResource::try_new(as_messages(code, page)).expect("a message");
        let found: Vec<&str> = resource
            .entries()
            .filter_map(|entry| match entry {
                Entry::Message(message) => Some(message),
                _ => None,
            })
            .flat_map(|message| message.attributes.iter().map(|it| it.id.name))
            .collect();
        assert_eq!(found, PARTS[..2]);
        assert_eq!(headings(page).collect::<Vec<_>>(), ["One", "Two"]);

        let words = Words::english();
        let mut library = Library::default();
        library.add("en", "explain/AIR001.md", page);
        let chain = library.draft_chain("en").expect("a folder");
        let words_of_it = Words::of(&chain, words.units());
        let rule = rules::find(code).expect("a rule");
        let page = words_of_it.page(rule);
        assert_eq!(page.title, "AIR001 name");
        assert_eq!(page.part("checks"), "A b. C.\n\n*d*\n- e f\n- g");
        assert_eq!(page.part("hurts"), crate::tables::emergency::CALL);
        assert_eq!(page.summary(), "A b.");
        // A rule whose page is missing in this language gets its English one.
        let other = rules::find("AIR002").expect("a rule");
        assert_eq!(words_of_it.page(other), words.page(other));
        assert_eq!(words_of_it.faults(), Vec::<String>::new());
    }

    /// What does not belong on a page is reported like junk in a message file.
    #[test]
    fn what_is_no_page_is_not_taken_for_one() {
        for (page, wrong) in [
            ("# AIR001 name\n\n## One\nA.\n", false),
            ("# AIR002 name\n\n## One\nA.\n", true),
            ("# AIR001 name\nMore.\n\n## One\nA.\n", true),
            ("# AIR001 name\n\n## One\nA { b.\n", true),
        ] {
            let read = FluentResource::try_new(as_messages("AIR001", page));
            assert_eq!(read.is_err(), wrong, "{page}");
        }
    }
}

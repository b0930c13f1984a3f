//! `explain`: shows a rule's page, or lists the rules.

use std::fmt::Write as _;

use anstyle::Style;
use tallywatt::rules;
use tallywatt::words::{Page, Words, wrapping};

use super::args::Explain;
use super::failure::{Failure, Kind};
use super::{Done, nearest, width};

pub(super) fn run(arguments: &Explain, words: &Words) -> Result<Done, Failure> {
    let Some(code) = &arguments.code else {
        let mut list = String::new();
        for rule in rules::all() {
            let about = wrapping(width()).initial_indent("  ").subsequent_indent("  ");
            let summary = words.page(rule).summary();
            let _ = writeln!(list, "{}  {}", rule.code, rule.name);
            let _ = writeln!(list, "{}", textwrap::fill(&summary, about));
        }
        return Ok(Done::saying(list));
    };
    if let Some(rule) = rules::find(code) {
        return Ok(Done::saying(laid_out(&words.page(rule), width())));
    }
    let near = nearest(code, rules::all().flat_map(|rule| [rule.code, rule.name]));
    let failure = Failure::text(Kind::Usage, words.with("failure-no-rule", [("code", code.as_str().into())]));
    Err(failure.near(near, words).hint(words.text("failure-no-rule-hint")))
}

/// Formats a page for a terminal, with bold headings and wrapped paragraphs and list items.
fn laid_out(page: &Page, width: usize) -> String {
    let bold = Style::new().bold();
    let mut out = format!("{bold}{}{bold:#}\n", page.title);
    for (heading, text) in &page.parts {
        let _ = writeln!(out, "\n{bold}{heading}{bold:#}");
        for line in text.lines() {
            let rest = if line.starts_with("- ") { "  " } else { "" };
            let options = wrapping(width).subsequent_indent(rest);
            let _ = writeln!(out, "{}", textwrap::fill(line, options));
        }
    }
    out
}

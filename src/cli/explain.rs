//! `explain`: a rule's page, or the list of rules.

use std::fmt::Write as _;

use anstyle::Style;
use tallywatt::rules;
use tallywatt::words::{FIRST_LANGUAGE, Words, wrapping};

use super::args::Explain;
use super::failure::{Failure, Kind};
use super::{Done, width};

pub(super) fn run(arguments: &Explain, words: &Words) -> Result<Done, Failure> {
    let Some(code) = &arguments.code else {
        let mut list = String::new();
        for rule in rules::all() {
            let about = wrapping(width())
                .initial_indent("  ")
                .subsequent_indent("  ");
            let _ = writeln!(list, "{}  {}", rule.code, rule.name);
            let _ = writeln!(list, "{}", textwrap::fill(&rule.summary(), about));
        }
        return Ok(Done::saying(list));
    };
    match rules::find(code) {
        Some(rule) => {
            let mut text = String::new();
            if words.language().language.as_str() != FIRST_LANGUAGE {
                // The pages are the rules' own, and have one language.
                let note = words.text("explain-language");
                let _ = writeln!(text, "{}\n", textwrap::fill(&note, wrapping(width())));
            }
            text.push_str(&laid_out(&rule.page().replace("**", ""), width()));
            Ok(Done::saying(text))
        }
        None => Err(Failure::text(
            Kind::Usage,
            words.with("failure-no-rule", [("code", code.as_str().into())]),
        )
        .hint(words.text("failure-no-rule-hint"))),
    }
}

/// A page as a terminal shows it: headings bold instead of marked, each paragraph and item wrapped anew.
fn laid_out(page: &str, width: usize) -> String {
    let bold = Style::new().bold();
    let mut blocks: Vec<String> = Vec::new();
    let mut open = false;
    for line in page.lines() {
        let goes_on = open && !line.starts_with("- ");
        if let Some(heading) = line.strip_prefix('#') {
            let heading = heading.trim_start_matches('#').trim();
            blocks.push(format!("{bold}{heading}{bold:#}"));
            open = false;
        } else if line.trim().is_empty() {
            blocks.push(String::new());
            open = false;
        } else if let Some(last) = blocks.last_mut().filter(|_| goes_on) {
            last.push(' ');
            last.push_str(line.trim());
        } else {
            blocks.push(line.trim().to_owned());
            open = true;
        }
    }
    let mut out = String::new();
    for block in blocks {
        let rest = if block.starts_with("- ") { "  " } else { "" };
        let options = wrapping(width).subsequent_indent(rest);
        let _ = writeln!(out, "{}", textwrap::fill(&block, options));
    }
    out
}

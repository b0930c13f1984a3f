//! `explain`: a rule's page, or the list of rules.

use std::fmt::Write as _;

use tallywatt::rules;
use tallywatt::words::{FIRST_LANGUAGE, Words, wrapping};

use super::args::Explain;
use super::failure::{Failure, Kind};
use super::{Done, width};

pub(super) fn run(arguments: &Explain, words: &Words) -> Result<Done, Failure> {
    let Some(code) = &arguments.code else {
        let mut list = String::new();
        for rule in rules::all() {
            let _ = writeln!(list, "{:<10} {}", rule.code, rule.name);
        }
        return Ok(Done::saying(list));
    };
    match rules::find(code) {
        Some(rule) => {
            let page = rule.page();
            let mut text = String::new();
            if words.language().language.as_str() != FIRST_LANGUAGE {
                // The pages are the rules' own, and have one language.
                let note = words.text("explain-language");
                let _ = writeln!(text, "{}\n", textwrap::fill(&note, wrapping(width())));
            }
            text.push_str(page.trim_end());
            Ok(Done::saying(text + "\n"))
        }
        None => Err(Failure::text(
            Kind::Usage,
            words.with("failure-no-rule", [("code", code.as_str().into())]),
        )
        .hint(words.text("failure-no-rule-hint"))),
    }
}

//! `explain`: a rule's page, or the list of rules.

use std::fmt::Write as _;

use tallywatt::rules;
use tallywatt::words::Words;

use super::Done;
use super::args::Explain;
use super::failure::{Failure, Kind};

pub(super) fn run(arguments: &Explain, words: &Words) -> Result<Done, Failure> {
    let Some(code) = &arguments.code else {
        let mut list = String::new();
        for rule in rules::all() {
            let _ = writeln!(list, "{:<10} {}", rule.code, rule.name);
        }
        return Ok(Done::saying(list));
    };
    match rules::find(code) {
        Some(rule) => Ok(Done::saying(format!("{}\n", rule.page().trim_end()))),
        None => Err(Failure::text(
            Kind::Usage,
            words.with("failure-no-rule", [("code", code.as_str().into())]),
        )
        .hint(words.text("failure-no-rule-hint"))),
    }
}

//! Sorts the errors of the TOML parser into kinds. Only their English text tells them apart, so wording that changes in
//! a later version becomes `syntax`, which is less helpful but never wrong.

use std::ops::Range;

use super::fields::Sink;
use super::problem::Refusal;

/// Reports the first error on each damaged line and returns these lines.
pub(super) fn report(text: &str, errors: &[toml::de::Error], sink: &Sink) -> Vec<Range<usize>> {
    /// A file with more errors is not merely mistyped, and each one takes a scan for its line.
    const MOST: usize = 100;
    let mut damaged = Vec::new();
    for error in errors.iter().take(MOST) {
        let span = inside(text, error.span().unwrap_or(0..0));
        let line = line_of(text, &span);
        // The first error on a line is the one to fix. The others follow from it.
        if !damaged.contains(&line) {
            let kind = match kind(error.message()) {
                // There is no value at all.
                "unquoted" if span.is_empty() => "no-value",
                kind => kind,
            };
            sink.put(span, Refusal::new(kind));
            damaged.push(line);
        }
    }
    damaged
}

/// Returns the span with both ends inside the text and on character boundaries.
fn inside(text: &str, span: Range<usize>) -> Range<usize> {
    let floor = |at: usize| {
        let mut at = at.min(text.len());
        while !text.is_char_boundary(at) {
            at -= 1;
        }
        at
    };
    let (start, end) = (floor(span.start), floor(span.end));
    start..end.max(start)
}

fn line_of(text: &str, span: &Range<usize>) -> Range<usize> {
    let start = text[..span.start].rfind('\n').map_or(0, |at| at + 1);
    let end = text[span.end..].find('\n').map_or(text.len(), |at| span.end + at);
    start..end
}

/// The beginnings of the parser's messages and the kinds they stand for. The first match counts.
const KINDS: &[(&str, &str)] = &[
    ("duplicate key", "duplicate-key"),
    ("cannot extend", "duplicate-key"),
    ("string values must be quoted", "unquoted"),
    // Any value that begins like true, false, nan or inf.
    ("invalid boolean", "unquoted"),
    ("invalid float, expected `nan`", "unquoted"),
    ("invalid float, expected `inf`", "unquoted"),
    ("key with no value", "no-equals"),
    ("missing value for key", "no-equals"),
    ("missing assignment", "no-equals"),
    ("unclosed array table", "bad-heading"),
    ("unclosed table", "bad-heading"),
    ("missing table open", "bad-heading"),
    ("unclosed array", "bad-list"),
    ("extra comma in array", "bad-list"),
    ("missing comma between array", "bad-list"),
    ("unexpected `=` in array", "bad-list"),
    ("missing array opening", "bad-list"),
    ("unclosed inline table", "bad-inline"),
    ("extra comma in inline", "bad-inline"),
    ("missing comma between key", "bad-inline"),
    ("missing inline table", "bad-inline"),
    ("missing key for inline", "bad-inline"),
    ("invalid inline table", "bad-inline"),
    ("extra assignment", "bad-inline"),
    ("extra `=`", "extra"),
    ("unexpected key or value", "extra"),
    ("invalid unquoted key", "bad-key"),
    ("unquoted keys cannot", "bad-key"),
    ("keys cannot", "bad-key"),
    ("invalid key-value pair", "bad-key"),
    ("cannot recurse", "too-deep"),
    ("recursion limit", "too-deep"),
    ("missing opening quote", "bad-string"),
    ("invalid basic string", "bad-string"),
    ("invalid literal string", "bad-string"),
    ("invalid multi-line", "bad-string"),
    ("missing escaped", "bad-string"),
    ("too few unicode", "bad-string"),
    ("invalid value", "bad-string"),
    ("redundant", "bad-number"),
    ("unexpected leading zero", "bad-number"),
    ("unexpected sign", "bad-number"),
    ("`_` may only", "bad-number"),
    ("radix", "bad-number"),
    ("integers with", "bad-number"),
    ("invalid hexadecimal", "bad-number"),
    ("invalid octal", "bad-number"),
    ("invalid binary", "bad-number"),
    ("invalid float", "bad-number"),
    ("invalid fraction", "bad-number"),
    ("invalid exponent", "bad-number"),
    ("invalid mantissa", "bad-number"),
    ("invalid date", "bad-number"),
    ("invalid time", "bad-number"),
    ("invalid comment", "bad-character"),
    ("carriage return", "bad-character"),
];

fn kind(message: &str) -> &'static str {
    KINDS.iter().find(|(start, _)| message.starts_with(start)).map_or("syntax", |(_, kind)| *kind)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use toml::de::DeTable;

    use super::*;

    /// Catches a parser that changes its wording: each beginning still occurs, and no text causes a message that is not
    /// listed.
    #[test]
    fn the_parser_still_says_it_in_these_words() {
        let deep = [format!("a = {}", "[".repeat(200)), format!("{}a = 1", "a.".repeat(300))];
        #[rustfmt::skip]
        let wrong = [
            "a = 1\na = 2", "a = 1\na.b = 2",
            "a = propane", "a = floating", "a = none", "a = inside",
            "a", ".a", "a = {b 1}",
            "[[a", "[a", "]",
            "a = [1", "a = [,1]", "a = [1 = 2]", "a = [=]", "a = ]",
            "a = {b = 1", "a = {,b = 1}", "a = {b = 1 c = 2}", "a = }", "a = {[]}", "a = {]}", "a = {b = = 1}",
            "a == 1", "a = 1 = 2",
            "ä = 1", "[]", "\"\"\"a\"\"\" = 1", "{}",
            "a = x\"", "a = \"x", "a = 'x", "a = '''x", "a = \"\\q\"", "a = \"\\u12\"", "a = \"\\uD800\"",
            "a = ++1", "a = 01", "a = 0x+1", "a = 1_", "a = 0X1", "a = +0x1", "a = 0xG", "a = 0o9", "a = 0b2",
            "a = 1..2", "a = 1.", "a = 1e", "a = .5", "a = 2020-13-45", "a = 7:00",
            "# \u{1}", "a = 1\rb = 2",
        ];
        let mut met = BTreeSet::new();
        for text in wrong.into_iter().chain(deep.iter().map(String::as_str)) {
            for error in DeTable::parse_recoverable(text).1 {
                let message = error.message();
                let known = KINDS.iter().find(|(start, _)| message.starts_with(start));
                let (start, _) = known.unwrap_or_else(|| panic!("{text:?}: {message}"));
                met.insert(*start);
            }
        }
        for (start, _) in KINDS {
            assert!(met.contains(start), "nothing is refused with: {start}");
        }
    }
}

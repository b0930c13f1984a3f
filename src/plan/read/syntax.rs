//! What the TOML parser refuses, in our own kinds. The parser tells its errors apart by English
//! text alone; whatever a later version calls otherwise becomes [`Syntax::Other`], which is less
//! helpful but never wrong.

use std::ops::Range;

use super::fields::Sink;
use super::problem::{ProblemKind, Syntax};

/// Reports the errors and gives the lines that they damage.
pub(super) fn report(text: &str, errors: &[toml::de::Error], sink: &Sink) -> Vec<Range<usize>> {
    /// More than this is no slip of the pen, and each takes a look for its line.
    const MOST: usize = 100;
    let mut damaged = Vec::new();
    for error in errors.iter().take(MOST) {
        let span = inside(text, error.span().unwrap_or(0..0));
        let line = line_of(text, &span);
        // The first error of a line is the one to mend; others are its echo.
        if !damaged.contains(&line) {
            let kind = match kind(error.message()) {
                // A value of nothing at all.
                Syntax::Unquoted if span.is_empty() => Syntax::NoValue,
                kind => kind,
            };
            sink.put(span, ProblemKind::Syntax(kind));
            damaged.push(line);
        }
    }
    damaged
}

/// The span with both ends inside the text and on whole characters.
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
    let end = text[span.end..]
        .find('\n')
        .map_or(text.len(), |at| span.end + at);
    start..end
}

/// How messages begin, and what they are to us. Of two that fit the first counts.
const KINDS: &[(&str, Syntax)] = &[
    ("duplicate key", Syntax::DuplicateKey),
    ("cannot extend", Syntax::DuplicateKey),
    ("string values must be quoted", Syntax::Unquoted),
    // Whatever begins as true, false, nan or inf do.
    ("invalid boolean", Syntax::Unquoted),
    ("invalid float, expected `nan`", Syntax::Unquoted),
    ("invalid float, expected `inf`", Syntax::Unquoted),
    ("key with no value", Syntax::NoEquals),
    ("missing value for key", Syntax::NoEquals),
    ("missing assignment", Syntax::NoEquals),
    ("unclosed array table", Syntax::BadHeading),
    ("unclosed table", Syntax::BadHeading),
    ("missing table open", Syntax::BadHeading),
    ("unclosed array", Syntax::BadList),
    ("extra comma in array", Syntax::BadList),
    ("missing comma between array", Syntax::BadList),
    ("unexpected `=` in array", Syntax::BadList),
    ("missing array opening", Syntax::BadList),
    ("unclosed inline table", Syntax::BadInline),
    ("extra comma in inline", Syntax::BadInline),
    ("missing comma between key", Syntax::BadInline),
    ("missing inline table", Syntax::BadInline),
    ("missing key for inline", Syntax::BadInline),
    ("invalid inline table", Syntax::BadInline),
    ("extra assignment", Syntax::BadInline),
    ("extra `=`", Syntax::Extra),
    ("unexpected key or value", Syntax::Extra),
    ("invalid unquoted key", Syntax::BadKey),
    ("unquoted keys cannot", Syntax::BadKey),
    ("keys cannot", Syntax::BadKey),
    ("invalid key-value pair", Syntax::BadKey),
    ("cannot recurse", Syntax::TooDeep),
    ("recursion limit", Syntax::TooDeep),
    ("missing opening quote", Syntax::BadString),
    ("invalid basic string", Syntax::BadString),
    ("invalid literal string", Syntax::BadString),
    ("invalid multi-line", Syntax::BadString),
    ("missing escaped", Syntax::BadString),
    ("too few unicode", Syntax::BadString),
    ("invalid value", Syntax::BadString),
    ("redundant", Syntax::BadNumber),
    ("unexpected leading zero", Syntax::BadNumber),
    ("unexpected sign", Syntax::BadNumber),
    ("`_` may only", Syntax::BadNumber),
    ("radix", Syntax::BadNumber),
    ("integers with", Syntax::BadNumber),
    ("invalid hexadecimal", Syntax::BadNumber),
    ("invalid octal", Syntax::BadNumber),
    ("invalid binary", Syntax::BadNumber),
    ("invalid float", Syntax::BadNumber),
    ("invalid fraction", Syntax::BadNumber),
    ("invalid exponent", Syntax::BadNumber),
    ("invalid mantissa", Syntax::BadNumber),
    ("invalid date", Syntax::BadNumber),
    ("invalid time", Syntax::BadNumber),
    ("invalid comment", Syntax::BadCharacter),
    ("carriage return", Syntax::BadCharacter),
];

fn kind(message: &str) -> Syntax {
    KINDS
        .iter()
        .find(|(start, _)| message.starts_with(start))
        .map_or(Syntax::Other, |(_, kind)| *kind)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use toml::de::DeTable;

    use super::*;

    /// A parser that says it in other words is noticed here: each beginning is still met, and no text
    /// gives a message that has none.
    #[test]
    fn the_parser_still_says_it_in_these_words() {
        let deep = [
            format!("a = {}", "[".repeat(200)),
            format!("{}a = 1", "a.".repeat(300)),
        ];
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

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

fn kind(message: &str) -> Syntax {
    const KINDS: &[(&str, Syntax)] = &[
        ("duplicate key", Syntax::DuplicateKey),
        ("cannot extend", Syntax::DuplicateKey),
        ("string values must be quoted", Syntax::Unquoted),
        ("key with no value", Syntax::NoEquals),
        ("missing assignment", Syntax::NoEquals),
        ("missing value", Syntax::NoValue),
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
        ("unexpected content", Syntax::Extra),
        ("invalid unquoted key", Syntax::BadKey),
        ("unquoted keys cannot", Syntax::BadKey),
        ("keys cannot", Syntax::BadKey),
        ("invalid key", Syntax::BadKey),
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
        ("invalid integer", Syntax::BadNumber),
        ("invalid float", Syntax::BadNumber),
        ("invalid decimal", Syntax::BadNumber),
        ("invalid hexadecimal", Syntax::BadNumber),
        ("invalid date", Syntax::BadNumber),
        ("invalid comment", Syntax::BadCharacter),
        ("carriage return", Syntax::BadCharacter),
    ];
    KINDS
        .iter()
        .find(|(start, _)| message.starts_with(start))
        .map_or(Syntax::Other, |(_, kind)| *kind)
}

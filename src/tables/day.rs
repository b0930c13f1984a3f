//! The parts of a day, by the minute. Our own choice, no source.

use crate::plan::Span;

/// The parts with their keys.
pub const PARTS: [(&str, Span); 5] = [
    ("breakfast", span(5, 10)),
    ("midday", span(10, 14)),
    ("afternoon", span(14, 17)),
    ("evening", span(17, 22)),
    ("night", span(22, 5)),
];

const fn span(from: u16, to: u16) -> Span {
    Span { from: from * 60, to: to * 60 }
}

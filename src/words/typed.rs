//! Converts numbers as readers type them to the form that plans keep: a decimal point and no thousands separators.
//!
//! In half of the world "1.500" is fifteen hundred, in the other half one and a half. The reader's language says only
//! which is usual, since they may be copying a nameplate printed for the other half. So an ambiguous number is returned
//! with both readings, and the caller, which knows what was asked, decides whether both are plausible.

use std::ops::Range;

use rust_decimal::Decimal;

use super::{Show, Words};
use crate::quantity::one_reading;
use crate::tables::exhaust::STEP;

/// A number that some readers take for one value and others for another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TwoMeanings {
    /// The number as typed.
    pub found: String,
    /// Read with its mark as a decimal mark, in the reader's notation.
    pub decimals: String,
    /// Read with its mark as a thousands separator, in the reader's notation.
    pub thousands: String,
    /// The whole answer with the mark read as a decimal mark, in the form that plans keep.
    pub as_decimals: String,
    /// The whole answer with the mark read as a thousands separator, in the form that plans keep.
    pub as_thousands: String,
    /// Whether the mark is the decimal mark of the reader's language.
    pub decimals_are_usual: bool,
}

/// The attributes of message `typed-unit`, which hold the reader's words for a unit, and the unit each stands for.
const UNITS: [(&str, &str); 10] = [
    ("typed-unit.ft", "ft"),
    ("typed-unit.m", "m"),
    ("typed-unit.in", "in"),
    ("typed-unit.A", "A"),
    ("typed-unit.V", "V"),
    ("typed-unit.W", "W"),
    ("typed-unit.h", "h"),
    ("typed-unit.min", "min"),
    ("typed-unit.gal", "gal"),
    ("typed-unit.L", "L"),
];

impl Words {
    /// Converts an answer with numbers in it to the form that plans keep.
    ///
    /// # Errors
    /// Fails if a number in it has two readings.
    pub fn plain_numbers(&self, text: &str) -> Result<String, Box<TwoMeanings>> {
        let text = &self.without_about(text);
        if let Some(length) = self.paced(text) {
            return Ok(length);
        }
        let mark = self.numbers.decimal_mark();
        let read = |reading| self.plain_units(&numbers(text, reading));
        let Some(found) = first_of_two(text) else {
            return Ok(read(Reading::Thousands));
        };
        let decimals = one_reading(&found.replace(',', "."));
        Err(Box::new(TwoMeanings {
            found: found.to_owned(),
            decimals: decimals.replace('.', &mark.to_string()),
            thousands: found.replace(['.', ','], ""),
            as_decimals: read(Reading::Decimals),
            as_thousands: read(Reading::Thousands),
            decimals_are_usual: found.contains(mark),
        }))
    }

    /// Leaves out the words for a figure judged by eye, such as "about" ahead of a number or "or so" at the end.
    ///
    /// Words that say that the true figure is larger or smaller stay, and whatever parses the answer refuses it.
    pub(crate) fn without_about(&self, text: &str) -> String {
        let [ahead, past] = ["typed-about", "typed-about.after"].map(|key| self.text(key));
        let mut text = text.trim().to_owned();
        while let Some(range) = said_ahead(&text, &ahead).or_else(|| said_past(&text, &past)) {
            text.replace_range(range, "");
        }
        text
    }

    /// Converts a number of steps to a length. Each step is as long as the questions say.
    fn paced(&self, text: &str) -> Option<String> {
        let text = text.trim().to_lowercase();
        let (count, word) = text.split_at(text.find(char::is_alphabetic)?);
        let count: u16 = count.trim().parse().ok()?;
        let names = self.text("typed-unit.step");
        names.split(' ').find(|name| *name == word)?;
        let (each, unit) = self.numbers.shown(STEP.into(), Show::AtMost);
        let length = (each * Decimal::from(count)).normalize();
        Some(format!("{length} {unit}"))
    }

    /// Converts an answer from the form that plans keep to what the reader would type.
    pub fn typed_numbers(&self, text: &str) -> String {
        let mark = self.numbers.decimal_mark();
        if mark == '.' {
            return text.to_owned();
        }
        let mut out = String::new();
        for piece in pieces(text) {
            let point = piece.starts_with(|c: char| c.is_ascii_digit())
                && piece.matches('.').count() == 1
                && !piece.contains(',');
            // "1.125" would be ambiguous when it is read back.
            let decimals = piece.rsplit('.').next().map_or(0, str::len);
            if point && (decimals != 3 || piece.starts_with("0.")) {
                out.push_str(&piece.replace('.', &mark.to_string()));
            } else {
                out.push_str(piece);
            }
        }
        out
    }

    /// Converts an answer from the form that plans keep to how the reader's texts show numbers.
    pub(super) fn said_numbers(&self, text: &str) -> String {
        let each = pieces(text).into_iter().map(|piece| match piece.parse() {
            Ok(number) => self.numbers.digits(number),
            // A number is never separated from its unit at the end of a line.
            Err(_) if piece.starts_with(' ') => piece.replacen(' ', "\u{a0}", 1),
            Err(_) => piece.to_owned(),
        });
        each.collect()
    }

    fn plain_units(&self, text: &str) -> String {
        let at = self.text("typed-at");
        let mut out = String::new();
        for word in text.split_inclusive(|c: char| !c.is_alphabetic()) {
            let letters = word.trim_end_matches(|c: char| !c.is_alphabetic());
            let lower = letters.to_lowercase();
            let unit =
                UNITS.iter().find(|(key, _)| !lower.is_empty() && self.text(key).split(' ').any(|name| name == lower));
            let alone = out.ends_with(' ') && word.len() > letters.len();
            match unit {
                Some((_, unit)) => out.push_str(unit),
                None if alone && lower == at => out.push_str("at"),
                None => out.push_str(letters),
            }
            out.push_str(&word[letters.len()..]);
        }
        out
    }
}

/// Returns the place of one of these words, up to the number that it stands ahead of.
fn said_ahead(text: &str, words: &str) -> Option<Range<usize>> {
    let mut places = text.char_indices().map(|(at, _)| at).filter(|at| {
        let before = text[..*at].chars().next_back();
        before.is_none_or(|c| c.is_whitespace() || matches!(c, ',' | ';' | '@'))
    });
    places.find_map(|at| {
        let end = at
            + said(&text[at..], words, |word| {
                let number = text[at + word..].trim_start();
                number.trim_start_matches(['-', '−', '+', '.', ',']).starts_with(|c: char| c.is_ascii_digit())
            })?;
        let number = text[end..].trim_start();
        Some(at..text.len() - number.len())
    })
}

/// Returns the place of one of these words at the end of an answer or of a part of it, from the end of its figure.
fn said_past(text: &str, words: &str) -> Option<Range<usize>> {
    let mut places = text.char_indices().filter(|(_, c)| c.is_whitespace()).map(|(at, c)| (at, at + c.len_utf8()));
    places.find_map(|(space, at)| {
        let figure = text[..space].trim_end().trim_end_matches(',');
        let end = at
            + said(&text[at..], words, |word| {
                let rest = text[at + word..].trim_start();
                rest.is_empty() || rest.starts_with([',', ';'])
            })?;
        figure.contains(|c: char| c.is_ascii_digit()).then_some(figure.len()..end)
    })
}

/// Returns the length of the first of these words, set apart by commas, with which the text begins and that has this
/// after it.
fn said(text: &str, words: &str, after: impl Fn(usize) -> bool) -> Option<usize> {
    let mut lengths = words.split(',').map(str::trim).filter_map(|word| {
        let begins = text.get(..word.len()).is_some_and(|it| it.to_lowercase() == word);
        begins.then_some(word.len())
    });
    lengths.find(|length| after(*length))
}

/// Splits a text into its numbers and what is between them. A number consists of digits, marks followed by a digit, and
/// spaces between thousands.
fn pieces(text: &str) -> Vec<&str> {
    let mut pieces = Vec::new();
    let mut rest = text;
    while !rest.is_empty() {
        let start = rest.find(|c: char| c.is_ascii_digit()).unwrap_or(rest.len());
        if start > 0 {
            pieces.push(&rest[..start]);
            rest = &rest[start..];
            continue;
        }
        let mut end = 0;
        let mut signs = rest.char_indices().peekable();
        while let Some((at, sign)) = signs.next() {
            let digit_next = signs.peek().is_some_and(|(_, next)| next.is_ascii_digit());
            let belongs = sign.is_ascii_digit()
                || digit_next && matches!(sign, '.' | ',')
                || is_space(sign)
                    && thousands_follow(&rest[at + sign.len_utf8()..])
                    && rest[..at].chars().rev().take_while(char::is_ascii_digit).count() <= 3;
            if !belongs {
                break;
            }
            end = at + sign.len_utf8();
        }
        pieces.push(&rest[..end]);
        rest = &rest[end..];
    }
    pieces
}

/// Whether the character is a space or mark that only ever separates thousands.
fn is_space(sign: char) -> bool {
    matches!(sign, ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}' | '\'' | '’')
}

/// Whether exactly three digits come next and no slash follows, as it would in a fraction.
fn thousands_follow(rest: &str) -> bool {
    let digits = rest.chars().take_while(char::is_ascii_digit).count();
    digits == 3 && !rest[3..].starts_with('/')
}

/// The reading of a mark before three digits, if it could be either.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Reading {
    Decimals,
    Thousands,
}

/// Whether a number has two readings: a single mark, with one to three digits before it and three after, and no spaces,
/// which only ever separate thousands.
fn has_two(piece: &str) -> bool {
    let mut groups = piece.split(['.', ',']);
    let digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit());
    match (groups.next(), groups.next(), groups.next()) {
        (Some(whole), Some(three), None) => {
            (1..=3).contains(&whole.len())
                && !whole.starts_with('0')
                && three.len() == 3
                && digits(whole)
                && digits(three)
        }
        _ => false,
    }
}

/// Returns the first number in a text that has two readings.
fn first_of_two(text: &str) -> Option<&str> {
    pieces(text).into_iter().find(|piece| has_two(piece))
}

fn numbers(text: &str, reading: Reading) -> String {
    let mut out = String::new();
    for piece in pieces(text) {
        if !piece.starts_with(|c: char| c.is_ascii_digit()) {
            out.push_str(piece);
        } else if has_two(piece) {
            out.push_str(&match reading {
                Reading::Decimals => one_reading(&piece.replace(',', ".")),
                Reading::Thousands => piece.replace(['.', ','], ""),
            });
        } else {
            let tight: String = piece.chars().filter(|sign| !is_space(*sign)).collect();
            out.push_str(&number(&tight));
        }
    }
    out
}

/// Converts a number that has only one reading.
fn number(tight: &str) -> String {
    let signs: Vec<char> = tight.chars().filter(|sign| !sign.is_ascii_digit()).collect();
    let groups: Vec<&str> = tight.split(['.', ',']).collect();
    let grouped = |groups: &[&str]| groups[0].len() <= 3 && groups[1..].iter().all(|group| group.len() == 3);
    let joined = groups.concat();
    match signs.as_slice() {
        [] => joined,
        // "1 500,125": the space already separates the thousands.
        [_] => tight.replace(',', "."),
        // "1.500,5" and "1,500.5": the last mark is the decimal mark.
        [thousands @ .., last] if thousands.iter().all(|sign| sign != last) => {
            let (decimals, whole) = groups.split_last().unwrap_or((&"", &[]));
            if grouped(whole) { format!("{}.{decimals}", whole.concat()) } else { tight.to_owned() }
        }
        // "1.500.000".
        _ if grouped(&groups) => joined,
        // Not a number. Whatever parses it reports that.
        _ => tight.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_of_one_reading() {
        for (typed, plain) in [
            ("7,5 m", "7.5 m"),
            ("7.5 m", "7.5 m"),
            ("0,125 kW", "0.125 kW"),
            ("0.125 kW", "0.125 kW"),
            ("12,25 A", "12.25 A"),
            ("1500 W", "1500 W"),
            ("1500,125 W", "1500.125 W"),
            ("6,0960 m", "6.0960 m"),
            ("1 500 W", "1500 W"),
            ("1 500,125 W", "1500.125 W"),
            ("12\u{202f}500,5 W", "12500.5 W"),
            ("1’500 W", "1500 W"),
            ("1.500,5 W", "1500.5 W"),
            ("1,500.5 W", "1500.5 W"),
            ("1.500.000 mW", "1500000 mW"),
            ("58,5 dBA, 7,5 m, 25 %", "58.5 dBA, 7.5 m, 25 %"),
            ("25 % 8,5 h, 100 % 3,1 h", "25 % 8.5 h, 100 % 3.1 h"),
            ("1 1/2 hp", "1 1/2 hp"),
            ("3G1,5", "3G1.5"),
            ("12/3", "12/3"),
            ("100 % 3 h", "100 % 3 h"),
        ] {
            assert_eq!(first_of_two(typed), None, "{typed}");
            for reading in [Reading::Decimals, Reading::Thousands] {
                assert_eq!(numbers(typed, reading), plain, "{typed}");
                // The result means the same when it is read again.
                assert_eq!(numbers(plain, reading), plain, "{typed}");
            }
        }
    }

    #[test]
    fn numbers_of_two_readings() {
        for (typed, decimals, thousands) in [
            ("1,500 kW", "1.5 kW", "1500 kW"),
            ("1.500 W", "1.5 W", "1500 W"),
            ("6,096 m", "6.0960 m", "6096 m"),
            ("12.125 A", "12.1250 A", "12125 A"),
            ("58 dBA, 7,625 m, 25 %", "58 dBA, 7.6250 m, 25 %", "58 dBA, 7625 m, 25 %"),
        ] {
            assert_eq!(numbers(typed, Reading::Decimals), decimals, "{typed}");
            assert_eq!(numbers(typed, Reading::Thousands), thousands, "{typed}");
            for one in [decimals, thousands] {
                assert_eq!(first_of_two(one), None, "{typed}");
            }
        }
        assert_eq!(
            Words::english().plain_numbers("1,875 kW"),
            Err(Box::new(TwoMeanings {
                found: "1,875".into(),
                decimals: "1.8750".into(),
                thousands: "1875".into(),
                as_decimals: "1.8750 kW".into(),
                as_thousands: "1875 kW".into(),
                decimals_are_usual: false,
            }))
        );
    }

    #[test]
    fn a_figure_judged_by_eye_is_the_figure() {
        for (tag, typed) in [
            ("en", ["15 m or so", "about 15 m", "Around 15 meters", "~15 m", "roughly 15 m, more or less"]),
            ("es", ["15 m más o menos", "unos 15 metros", "como unos 15 m", "≈ 15 m", "aprox. 15 m"]),
            ("fr", ["15 m environ", "environ 15 mètres", "À peu près 15 m", "~ 15 m", "15 m à peu près"]),
            ("de", ["15 m oder so", "ca. 15 Meter", "Ungefähr 15 m", "~15m", "so um die 15 m"]),
        ] {
            let words = Words::new(tag, crate::words::Units::Metric).expect(tag);
            for typed in typed {
                let plain = words.plain_numbers(typed).map(|plain| plain.replace("15m", "15 m"));
                assert_eq!(plain, Ok("15 m".to_owned()), "{tag}: {typed}");
            }
        }
        let words = Words::english();
        for (typed, plain) in [
            ("58 dBA at about 23 ft, 25 % or so", "58 dBA at 23 ft, 25 %"),
            ("~ -5 °C", "-5 °C"),
            ("about 40 steps", "80 ft"),
            // What makes a figure larger or smaller, or doubtful, stays and is refused.
            ("almost 15 ft", "almost 15 ft"),
            ("about 15 to 20 ft", "15 to 20 ft"),
            ("15 ft or less", "15 ft or less"),
            ("at least 15 ft", "at least 15 ft"),
            ("-~15 ft", "-~15 ft"),
            ("about", "about"),
            ("or so", "or so"),
        ] {
            assert_eq!(words.plain_numbers(typed), Ok(plain.to_owned()), "{typed}");
        }
        assert_eq!(words.faults(), Vec::<String>::new());
    }

    #[test]
    fn the_readers_words_for_units() {
        let words = Words::english();
        assert_eq!(words.plain_numbers("40 feet"), Ok("40 ft".to_owned()));
        // As long as the questions say a step is.
        assert_eq!(words.plain_numbers("40 steps"), Ok("80 ft".to_owned()));
        assert_eq!(words.plain_numbers("1 step"), Ok("2 ft".to_owned()));
        let metric = Words::new("de", crate::words::Units::Metric).unwrap();
        assert_eq!(metric.plain_numbers("40 Schritte"), Ok("24 m".to_owned()));
        assert_eq!(words.plain_numbers("58 dBA at 23 ft"), Ok("58 dBA at 23 ft".to_owned()));
        assert_eq!(words.typed_numbers("12.5 A"), "12.5 A");
        for (kept, english, german) in [
            ("12.5 A", "12.5\u{a0}A", "12,5\u{a0}A"),
            // A German reads "4.000" as a guest would not.
            ("4000 W, 12500 W", "4,000\u{a0}W, 12,500\u{a0}W", "4000\u{a0}W, 12500\u{a0}W"),
            ("1 1/2 hp", "1\u{a0}1/2\u{a0}hp", "1\u{a0}1/2\u{a0}hp"),
        ] {
            assert_eq!((words.said_numbers(kept), metric.said_numbers(kept)), (english.into(), german.into()));
        }
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

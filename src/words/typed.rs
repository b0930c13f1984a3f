//! Numbers as readers type them, made into the form that plans keep: a point before decimals and
//! nothing between thousands.
//!
//! In half of the world "1.500" is fifteen hundred and in the other half one and a half. Where a
//! reader's language writes a comma before decimals, a number that could be either is refused and
//! both readings are shown: one may well copy a plate that was printed for the other half.

use super::Words;

/// A number that means one thing to some readers and another to others.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TwoMeanings {
    /// As it was typed.
    pub found: String,
    /// With its mark before decimals, in the reader's way.
    pub decimals: String,
    /// With its mark between thousands, likewise.
    pub thousands: String,
}

/// Words for units in the reader's language: the attributes of message `typed-unit` are named by
/// the unit they stand for.
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
    /// An answer with numbers in it, as plans keep it.
    ///
    /// # Errors
    /// When a number in it has two meanings.
    pub fn plain_numbers(&self, text: &str) -> Result<String, TwoMeanings> {
        let plain = numbers(text, self.numbers.decimal_mark())?;
        Ok(self.plain_units(&plain))
    }

    /// The same the other way: an answer that a plan keeps, as the reader would type it.
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
            // "1.125" would have two meanings when it comes back.
            let decimals = piece.rsplit('.').next().map_or(0, str::len);
            if point && (decimals != 3 || piece.starts_with("0.")) {
                out.push_str(&piece.replace('.', &mark.to_string()));
            } else {
                out.push_str(piece);
            }
        }
        out
    }

    fn plain_units(&self, text: &str) -> String {
        let at = self.text("typed-at");
        let mut out = String::new();
        for word in text.split_inclusive(|c: char| !c.is_alphabetic()) {
            let letters = word.trim_end_matches(|c: char| !c.is_alphabetic());
            let lower = letters.to_lowercase();
            let unit = UNITS.iter().find(|(key, _)| {
                !lower.is_empty() && self.text(key).split(' ').any(|name| name == lower)
            });
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

/// The numbers of a text and what stands between them, in turn. A digit, a mark or a space
/// between two digits belongs to a number.
fn pieces(text: &str) -> Vec<&str> {
    let mut pieces = Vec::new();
    let mut rest = text;
    while !rest.is_empty() {
        let start = rest
            .find(|c: char| c.is_ascii_digit())
            .unwrap_or(rest.len());
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
                    && rest[..at]
                        .chars()
                        .rev()
                        .take_while(char::is_ascii_digit)
                        .count()
                        <= 3;
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

/// Spaces and marks that stand between thousands and nowhere else.
fn is_space(sign: char) -> bool {
    matches!(sign, ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}' | '\'' | '’')
}

/// Whether three digits come next and no more.
fn thousands_follow(rest: &str) -> bool {
    let digits = rest.chars().take_while(char::is_ascii_digit).count();
    digits == 3 && !rest[3..].starts_with('/')
}

fn numbers(text: &str, mark: char) -> Result<String, TwoMeanings> {
    let mut out = String::new();
    for piece in pieces(text) {
        if !piece.starts_with(|c: char| c.is_ascii_digit()) {
            out.push_str(piece);
            continue;
        }
        let tight: String = piece.chars().filter(|sign| !is_space(*sign)).collect();
        out.push_str(&number(&tight, piece, mark)?);
    }
    Ok(out)
}

fn number(tight: &str, found: &str, mark: char) -> Result<String, TwoMeanings> {
    let signs: Vec<char> = tight
        .chars()
        .filter(|sign| !sign.is_ascii_digit())
        .collect();
    let groups: Vec<&str> = tight.split(['.', ',']).collect();
    let grouped =
        |groups: &[&str]| groups[0].len() <= 3 && groups[1..].iter().all(|group| group.len() == 3);
    let joined = groups.concat();
    match signs.as_slice() {
        [] => Ok(joined),
        [one] => {
            let two = groups[1].len() == 3
                && groups[0].len() <= 3
                && !groups[0].starts_with('0')
                // Spaces between the thousands leave only one reading.
                && tight == found;
            let with_point = tight.replace(',', ".");
            match (two, mark, one) {
                // Where decimals have a point, a comma before three digits stands between
                // thousands, and a point never does.
                (true, '.', ',') => Ok(joined),
                (true, ',', _) => Err(TwoMeanings {
                    found: found.to_owned(),
                    decimals: tight
                        .replace(['.', ','], ",")
                        .trim_end_matches('0')
                        .trim_end_matches(',')
                        .to_owned(),
                    thousands: joined,
                }),
                _ => Ok(with_point),
            }
        }
        // "1.500,5" and "1,500.5": the last is the decimal's.
        [thousands @ .., last] if thousands.iter().all(|sign| sign != last) => {
            let (decimals, whole) = groups.split_last().unwrap_or((&"", &[]));
            if grouped(whole) {
                Ok(format!("{}.{decimals}", whole.concat()))
            } else {
                Ok(tight.to_owned())
            }
        }
        // "1.500.000".
        _ if grouped(&groups) => Ok(joined),
        // No number; what reads it says so.
        _ => Ok(tight.to_owned()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_comma_before_decimals() {
        for (typed, plain) in [
            ("7,5 m", "7.5 m"),
            ("7.5 m", "7.5 m"),
            ("0,125 kW", "0.125 kW"),
            ("12,25 A", "12.25 A"),
            ("1500 W", "1500 W"),
            ("1 500 W", "1500 W"),
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
            assert_eq!(numbers(typed, ',').as_deref(), Ok(plain), "{typed}");
        }
        for typed in ["1,500 kW", "1.500 W", "12.125 A", "999,999 m"] {
            assert!(numbers(typed, ',').is_err(), "{typed}");
        }
        assert_eq!(
            numbers("1,500 kW", ','),
            Err(TwoMeanings {
                found: "1,500".into(),
                decimals: "1,5".into(),
                thousands: "1500".into(),
            })
        );
    }

    #[test]
    fn a_point_before_decimals() {
        for (typed, plain) in [
            ("7.5 m", "7.5 m"),
            ("7,5 m", "7.5 m"),
            ("1,500 W", "1500 W"),
            ("1.125 in", "1.125 in"),
            ("1,500.5 W", "1500.5 W"),
            ("1 500 W", "1500 W"),
        ] {
            assert_eq!(numbers(typed, '.').as_deref(), Ok(plain), "{typed}");
        }
    }

    /// Whatever is taken means the same when it is read again, whoever reads it.
    #[test]
    fn what_was_made_plain_stays_so() {
        for mark in ['.', ','] {
            for typed in ["0,125 kW", "12.5 A", "1500.5 W", "1.500,5 W", "3 m"] {
                let plain = numbers(typed, mark).expect("one meaning");
                assert_eq!(numbers(&plain, '.').as_deref(), Ok(plain.as_str()));
            }
        }
    }

    #[test]
    fn the_readers_words_for_units() {
        let words = Words::english();
        assert_eq!(words.plain_numbers("40 feet").as_deref(), Ok("40 ft"));
        assert_eq!(
            words.plain_numbers("58 dBA at 23 ft").as_deref(),
            Ok("58 dBA at 23 ft")
        );
        assert_eq!(words.typed_numbers("12.5 A"), "12.5 A");
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

//! Taking a table apart: which keys are there, what kind of value each has, and what is wrong
//! with it. Nothing here knows what a generator is.

use std::cell::RefCell;
use std::ops::Range;

use rust_decimal::Decimal;
use toml::de::{DeTable, DeValue};

use super::nearest;
use super::problem::{Problem, ProblemKind, Type};
use crate::plan::bounds::{Bounds, Refused, Whole};
use crate::plan::{Answer, Choice, Id, LONGEST_NAME, Span, hides};
use crate::quantity::{Amount, Quantity, QuantityError, Unit, Wire, allowed_units};
use crate::tables::shape::{Configuration, Plug, Receptacle};

/// The word for "I don't know".
const UNKNOWN: &str = "unknown";

/// Where problems are put.
#[derive(Debug, Default)]
pub(crate) struct Sink(RefCell<Vec<Problem>>);

impl Sink {
    pub(crate) fn put(&self, span: Range<usize>, kind: ProblemKind) {
        self.0.borrow_mut().push(Problem { span, kind });
    }

    pub(crate) fn into_problems(self) -> Vec<Problem> {
        self.0.into_inner()
    }
}

/// A table of the file.
pub(crate) struct Fields<'t> {
    pub(super) sink: &'t Sink,
    pub(super) span: Range<usize>,
    table: &'t DeTable<'t>,
}

/// One value with its key, under which to report what is wrong with it.
pub(crate) struct Field<'t> {
    pub(super) sink: &'t Sink,
    pub(super) key: &'static str,
    pub(super) span: Range<usize>,
    /// Whether "unknown" is an answer here.
    or_unknown: bool,
    value: &'t DeValue<'t>,
}

impl<'t> Fields<'t> {
    /// A table, after every key without a meaning here was reported.
    pub(crate) fn open(
        sink: &'t Sink,
        table: &'t DeTable<'t>,
        span: Range<usize>,
        allowed: &[&'static str],
    ) -> Self {
        for (key, value) in table {
            let found = key.get_ref().as_ref();
            if !allowed.contains(&found) {
                sink.put(
                    key.span(),
                    ProblemKind::UnknownKey {
                        found: shorten(found),
                        nearest: nearest(found, allowed.iter().copied()),
                        allowed: allowed.to_vec(),
                        // A heading's span is that of its brackets, and holds its key.
                        heading: value.span().start < key.span().start,
                    },
                );
            }
        }
        Self { sink, span, table }
    }

    /// A table whose keys are another's business.
    pub(crate) fn peek(sink: &'t Sink, table: &'t DeTable<'t>) -> Self {
        Self {
            sink,
            span: 0..0,
            table,
        }
    }

    /// Reports something about the table as a whole.
    pub(crate) fn put(&self, kind: ProblemKind) {
        self.sink.put(self.span.clone(), kind);
    }

    /// The value of a key, if the key is there, and whether it may be unknown.
    pub(crate) fn get(&self, key: &'static str, or_unknown: bool) -> Option<Field<'t>> {
        self.table.get(key).map(|value| Field {
            sink: self.sink,
            key,
            span: value.span(),
            or_unknown,
            value: value.get_ref(),
        })
    }

    /// Reports every key but the first of those that say the same.
    pub(crate) fn one_of(&self, keys: &[&'static str]) {
        let mut given = keys.iter().filter_map(|key| self.get(key, true));
        if let Some(Field { key: first, .. }) = given.next() {
            for field in given {
                let second = field.key;
                field.put(ProblemKind::TwoDraws { first, second });
            }
        }
    }

    /// A value that may be left out or unknown.
    pub(crate) fn answer<T>(
        &self,
        key: &'static str,
        read: impl FnOnce(&Field<'t>) -> Option<T>,
    ) -> Answer<T> {
        match self.get(key, true) {
            None => Answer::Missing,
            Some(field) if field.is_unknown() => Answer::Unknown,
            Some(field) => read(&field).map_or(Answer::Missing, Answer::Known),
        }
    }

    /// A value that may be left out but not be unknown.
    pub(crate) fn optional<T>(
        &self,
        key: &'static str,
        read: impl FnOnce(&Field<'t>) -> Option<T>,
    ) -> Option<T> {
        self.known(key, true, read)
    }

    fn known<T>(
        &self,
        key: &'static str,
        optional: bool,
        read: impl FnOnce(&Field<'t>) -> Option<T>,
    ) -> Option<T> {
        let field = self.get(key, false)?;
        if field.is_unknown() {
            field.put(ProblemKind::UnknownNotAllowed { key, optional });
            return None;
        }
        read(&field)
    }

    /// A value that must be there.
    pub(crate) fn required<T>(
        &self,
        key: &'static str,
        example: &'static str,
        read: impl FnOnce(&Field<'t>) -> Option<T>,
    ) -> Option<T> {
        if self.get(key, false).is_none() {
            self.put(ProblemKind::MissingKey { key, example });
        }
        self.known(key, false, read)
    }

    /// The tables under a heading in two square brackets.
    pub(crate) fn tables(&self, key: &'static str, allowed: &[&'static str]) -> Vec<Fields<'t>> {
        let Some(field) = self.get(key, false) else {
            return Vec::new();
        };
        let Some(items) = field.value.as_array() else {
            field.wrong::<()>(Type::Tables);
            return Vec::new();
        };
        items
            .iter()
            .filter_map(|item| {
                let field = Field {
                    span: item.span(),
                    value: item.get_ref(),
                    ..field
                };
                field.table(allowed)
            })
            .collect()
    }
}

impl<'t> Field<'t> {
    pub(crate) fn put(&self, kind: ProblemKind) {
        self.sink.put(self.span.clone(), kind);
    }

    pub(crate) fn is_unknown(&self) -> bool {
        self.value
            .as_str()
            .is_some_and(|text| text.trim().eq_ignore_ascii_case(UNKNOWN))
    }

    fn found(&self) -> Type {
        match self.value {
            DeValue::String(_) => Type::Text,
            DeValue::Integer(_) => Type::Whole,
            DeValue::Float(_) => Type::Number,
            DeValue::Boolean(_) => Type::YesNo,
            DeValue::Datetime(_) => Type::Date,
            DeValue::Array(array)
                if !array.is_empty() && array.iter().all(|item| item.get_ref().is_table()) =>
            {
                Type::Tables
            }
            DeValue::Array(_) => Type::List,
            DeValue::Table(_) => Type::Table,
        }
    }

    /// Whether it is a whole number, as it should be; else that is reported.
    pub(crate) fn is_whole(&self) -> bool {
        matches!(self.value, DeValue::Integer(_)) || self.wrong::<()>(Type::Whole).is_some()
    }

    fn wrong<T>(&self, wanted: Type) -> Option<T> {
        self.put(ProblemKind::WrongType {
            key: self.key,
            found: self.found(),
            wanted,
        });
        None
    }

    /// A number without quotes, as it is written.
    fn bare_number(&self) -> Option<String> {
        match self.value {
            DeValue::Integer(whole) => Some(whole.to_string()),
            DeValue::Float(number) => Some(number.to_string()),
            _ => None,
        }
    }

    /// A table in its own right.
    pub(crate) fn table(&self, allowed: &[&'static str]) -> Option<Fields<'t>> {
        match self.value {
            DeValue::Table(table) => {
                Some(Fields::open(self.sink, table, self.span.clone(), allowed))
            }
            _ => self.wrong(Type::Table),
        }
    }

    /// A list, item by item.
    pub(crate) fn list<T>(
        &self,
        wanted: Type,
        mut read: impl FnMut(&Self) -> Option<T>,
    ) -> Option<Vec<T>> {
        let Some(items) = self.value.as_array() else {
            return self.wrong(wanted);
        };
        let read: Vec<Option<T>> = items
            .iter()
            .map(|item| {
                read(&Field {
                    span: item.span(),
                    value: item.get_ref(),
                    ..*self
                })
            })
            .collect();
        read.into_iter().collect()
    }

    /// A text.
    pub(crate) fn text(&self) -> Option<&'t str> {
        match self.value.as_str() {
            Some(text) if text.trim().is_empty() => {
                self.put(ProblemKind::EmptyText { key: self.key });
                None
            }
            Some(text) => Some(text.trim()),
            None => self.wrong(Type::Text),
        }
    }

    /// A text that is printed: one line, not endless.
    pub(crate) fn name(&self) -> Option<String> {
        let name = crate::plan::name(self.text()?);
        if name.is_none() {
            self.put(ProblemKind::BadText {
                key: self.key,
                most: LONGEST_NAME,
            });
        }
        name
    }

    /// Yes or no.
    pub(crate) fn yes_no(&self) -> Option<bool> {
        match self.value {
            DeValue::Boolean(yes) => Some(*yes),
            _ => self.wrong(Type::YesNoUnknown),
        }
    }

    /// A whole number within bounds.
    pub(crate) fn whole(&self, bounds: Whole) -> Option<u8> {
        let DeValue::Integer(whole) = self.value else {
            return self.wrong(Type::Whole);
        };
        let number = i64::from_str_radix(whole.as_str(), whole.radix())
            .ok()
            .and_then(|number| u8::try_from(number).ok())
            .filter(|number| bounds.hold(*number));
        if number.is_none() {
            self.put(ProblemKind::OutOfRange {
                key: self.key,
                found: shorten(&whole.to_string()),
                least: Amount::count(bounds.least.into()),
                most: Amount::count(bounds.most.into()),
            });
        }
        number
    }

    /// A quantity within bounds.
    pub(crate) fn quantity<Q: Quantity>(&self, bounds: &Bounds<Q>) -> Option<Q> {
        let key = self.key;
        if let Some(found) = self.bare_number() {
            self.put(ProblemKind::NoUnit {
                key,
                found: shorten(&found),
                allowed: allowed_units(Q::UNIT).collect(),
            });
            return None;
        }
        let Some(text) = self.value.as_str() else {
            return self.wrong(Type::Quantity);
        };
        self.quantity_of(text, bounds)
    }

    fn quantity_of<Q: Quantity>(&self, text: &str, bounds: &Bounds<Q>) -> Option<Q> {
        let key = self.key;
        let found = || shorten(text.trim());
        let problem = match bounds.read(text) {
            Ok(quantity) => return Some(quantity),
            Err(Refused::TwoReadings([decimals, thousands])) => ProblemKind::TwoReadings {
                key,
                found: found(),
                decimals: shorten(&decimals),
                thousands: shorten(&thousands),
            },
            Err(Refused::Outside | Refused::Not(QuantityError::OutOfRange)) => {
                ProblemKind::OutOfRange {
                    key,
                    found: found(),
                    least: Amount::of(bounds.least),
                    most: Amount::of(bounds.most),
                }
            }
            Err(Refused::Not(QuantityError::Empty)) => ProblemKind::EmptyText { key },
            Err(Refused::Not(QuantityError::NoNumber)) => ProblemKind::NoNumber {
                key,
                found: found(),
                example: example(Q::UNIT),
            },
            Err(Refused::Not(QuantityError::NoUnit)) => ProblemKind::NoUnit {
                key,
                found: found(),
                allowed: allowed_units(Q::UNIT).collect(),
            },
            Err(Refused::Not(QuantityError::UnknownUnit { found })) => ProblemKind::UnknownUnit {
                key,
                found: shorten(&found),
                allowed: allowed_units(Q::UNIT).collect(),
            },
        };
        self.put(problem);
        None
    }

    /// A ratio: a number without a unit, and here without quotes.
    pub(crate) fn number<Q: Quantity>(&self, bounds: &Bounds<Q>) -> Option<Q> {
        let Some(found) = self.bare_number() else {
            return self.wrong(Type::Number);
        };
        let number = found
            .parse()
            .or_else(|_| Decimal::from_scientific(&found))
            .ok()
            .and_then(|number: Decimal| Q::parse(&number.to_string(), bounds.round).ok())
            .filter(|number| bounds.hold(*number));
        if number.is_none() {
            self.put(ProblemKind::OutOfRange {
                key: self.key,
                found: shorten(&found),
                least: Amount::of(bounds.least),
                most: Amount::of(bounds.most),
            });
        }
        number
    }

    /// A ratio that may be a fraction and so stands in quotes: "1/2". A bare number will do.
    pub(crate) fn ratio_in_text<Q: Quantity>(&self, bounds: &Bounds<Q>) -> Option<Q> {
        if self.bare_number().is_some() {
            return self.number(bounds);
        }
        let text = self.text()?;
        let text = text.strip_suffix("hp").map_or(text, str::trim_end);
        self.quantity_of(text, bounds)
    }

    /// The size of a wire.
    pub(crate) fn wire(&self) -> Option<Wire> {
        const UNITS: [&str; 2] = ["AWG", "mm²"];
        let key = self.key;
        if let Some(found) = self.bare_number() {
            self.put(ProblemKind::NoUnit {
                key,
                found: shorten(&found),
                allowed: UNITS.to_vec(),
            });
            return None;
        }
        let Some(text) = self.value.as_str() else {
            return self.wrong(Type::Quantity);
        };
        let found = || shorten(text.trim());
        let problem = match Wire::parse(text) {
            Ok(wire) => return Some(wire),
            Err(QuantityError::Empty) => ProblemKind::EmptyText { key },
            Err(QuantityError::NoNumber) => ProblemKind::NoNumber {
                key,
                found: found(),
                example: Wire::Awg(12).to_string(),
            },
            Err(QuantityError::NoUnit) => ProblemKind::NoUnit {
                key,
                found: found(),
                allowed: UNITS.to_vec(),
            },
            Err(QuantityError::UnknownUnit { found }) => ProblemKind::UnknownUnit {
                key,
                found: shorten(&found),
                allowed: UNITS.to_vec(),
            },
            Err(QuantityError::OutOfRange) => ProblemKind::WireSize { found: found() },
        };
        self.put(problem);
        None
    }

    /// One of a few words.
    pub(crate) fn choice<C: Choice>(&self) -> Option<C> {
        let text = self.text()?;
        let squeeze = |text: &str| -> String {
            let kept = text
                .chars()
                .filter(|c| !c.is_whitespace() && !matches!(c, '-' | '_'));
            kept.flat_map(char::to_lowercase).collect()
        };
        let wanted = squeeze(text);
        let row = C::ALL.iter().find(|(_, word)| squeeze(word) == wanted);
        if row.is_none() {
            let allowed: Vec<&str> = C::ALL.iter().map(|(_, word)| *word).collect();
            self.put(ProblemKind::NotAChoice {
                key: self.key,
                found: shorten(text),
                nearest: nearest(text, allowed.iter().copied()),
                allowed,
                or_unknown: self.or_unknown,
            });
        }
        row.map(|(choice, _)| *choice)
    }

    /// The tag of a language, as `es` or `fr-CA`.
    pub(crate) fn language(&self) -> Option<String> {
        let text = self.text()?;
        let tag = text.parse::<unic_langid::LanguageIdentifier>();
        if tag.is_err() {
            let found = shorten(text);
            self.put(ProblemKind::NotALanguage { found });
        }
        tag.ok().map(|tag| tag.to_string())
    }

    /// The shape of a receptacle.
    pub(crate) fn receptacle(&self) -> Option<Receptacle> {
        let text = self.text()?;
        Receptacle::named(text).or_else(|| {
            self.put(match Plug::named(text) {
                Some(plug) => self.wrong_half(text, Receptacle(plug.0).to_string(), false),
                None => self.no_shape(text, |c| Receptacle(c).to_string()),
            });
            None
        })
    }

    /// The shape of a plug.
    pub(crate) fn plug(&self) -> Option<Plug> {
        let text = self.text()?;
        Plug::named(text).or_else(|| {
            self.put(match Receptacle::named(text) {
                Some(half) => self.wrong_half(text, Plug(half.0).to_string(), true),
                None => self.no_shape(text, |c| Plug(c).to_string()),
            });
            None
        })
    }

    fn wrong_half(&self, found: &str, meant: String, plug: bool) -> ProblemKind {
        ProblemKind::WrongHalf {
            key: self.key,
            found: shorten(found),
            meant,
            plug,
        }
    }

    fn no_shape(&self, found: &str, name: impl Fn(Configuration) -> String) -> ProblemKind {
        let allowed: Vec<String> = Configuration::ALL.into_iter().map(name).collect();
        ProblemKind::UnknownShape {
            key: self.key,
            found: shorten(found),
            nearest: nearest(found, allowed.iter().map(String::as_str)).map(str::to_owned),
            allowed,
        }
    }

    /// A new id.
    pub(crate) fn id(&self) -> Option<Id> {
        let text = self.text()?;
        let id = Id::new(text);
        if id.is_none() {
            self.put(ProblemKind::BadId {
                found: shorten(text),
                nearest: mend_id(text),
            });
        }
        id
    }

    /// Whether it stands in square brackets.
    pub(crate) fn is_list(&self) -> bool {
        self.value.is_array()
    }

    /// The letter of a motor that says what it draws while its rotor is locked.
    pub(crate) fn motor_code(&self) -> Option<char> {
        let text = self.text()?;
        let mut letters = text.chars();
        let code = letters
            .next()
            .map(|letter| letter.to_ascii_uppercase())
            .filter(|letter| letters.next().is_none() && "ABCDEFGHJKLMNPRSTUV".contains(*letter));
        if code.is_none() {
            self.put(ProblemKind::MotorCode {
                found: shorten(text),
            });
        }
        code
    }

    /// The text of a reference that cannot be the name of anything.
    pub(super) fn stray(&self) -> Option<&'t str> {
        let text = self.value.as_str()?.trim();
        (!text.is_empty() && Id::reference(text).is_none()).then_some(text)
    }

    /// A part of the day: "22:00-06:00".
    pub(crate) fn hours(&self) -> Option<Span> {
        let text = self.text()?;
        let span = span_of_day(text);
        if span.is_none() {
            self.put(ProblemKind::BadHours {
                key: self.key,
                found: shorten(text),
            });
        }
        span
    }
}

/// An id as near as may be to the text: "big cord" gives "big-cord".
fn mend_id(text: &str) -> Option<String> {
    let mut mended = String::new();
    for c in text.chars().take(Id::LONGEST) {
        if c.is_alphanumeric() || c == '_' {
            mended.push(c);
        } else if !mended.is_empty() && !mended.ends_with('-') {
            mended.push('-');
        }
    }
    let mended = mended.trim_matches(['-', '_']);
    Id::new(mended).map(|id| id.to_string())
}

fn span_of_day(text: &str) -> Option<Span> {
    let (from, to) = text.split_once(['-', '–', '—'])?;
    let (from, to) = (minute(from)?, minute(to)?);
    let to = if to == 0 { Span::DAY } else { to };
    (from < Span::DAY).then_some(Span { from, to })
}

/// "07:20", "7:20", "7" and "24:00" as minutes after midnight.
fn minute(text: &str) -> Option<u16> {
    let text = text.trim();
    let (hour, minute) = text.split_once(':').unwrap_or((text, "00"));
    let digits = |part: &str| part.chars().all(|c| c.is_ascii_digit());
    if hour.len() > 2 || minute.len() != 2 || !digits(hour) || !digits(minute) {
        return None;
    }
    let (hour, minute): (u16, u16) = (hour.parse().ok()?, minute.parse().ok()?);
    let total = hour * 60 + minute;
    (minute < 60 && total <= Span::DAY).then_some(total)
}

/// A quantity that reads well in this unit, for help.
fn example(unit: Unit) -> String {
    let number = match unit {
        Unit::Ampere => "20",
        Unit::Volt => "120",
        Unit::Watt => "1500",
        Unit::Metre | Unit::Percent => "50",
        Unit::Celsius => "80",
        Unit::DecibelA => "58",
        Unit::Hour => "8",
        Unit::One => "1/2",
        _ => "1",
    };
    let name = allowed_units(unit).next().unwrap_or_default();
    format!("{number} {name}").trim_end().to_owned()
}

/// What was found, short enough for a message.
pub(crate) fn shorten(text: &str) -> String {
    const LONGEST: usize = 40;
    let clean = |c: char| if hides(c) { ' ' } else { c };
    if text.chars().count() <= LONGEST {
        return text.chars().map(clean).collect();
    }
    let head: String = text.chars().take(LONGEST - 1).map(clean).collect();
    format!("{head}…")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hours_as_people_write_them() {
        let span = |from, to| Some(Span { from, to });
        for (text, hours) in [
            ("22:00-06:00", span(1320, 360)),
            ("7:00 – 7:20", span(420, 440)),
            ("18-22", span(1080, 1320)),
            ("00:00-24:00", span(0, 1440)),
            ("22:00-00:00", span(1320, 1440)),
            ("24:00-06:00", None),
            ("7:60-8:00", None),
            ("7:5-8:00", None),
            ("25:00-26:00", None),
            ("at night", None),
            ("-", None),
        ] {
            assert_eq!(span_of_day(text), hours, "{text}");
        }
    }

    #[test]
    fn ids_are_mended() {
        assert_eq!(mend_id("big cord").as_deref(), Some("big-cord"));
        assert_eq!(mend_id("--a.b--").as_deref(), Some("a-b"));
        assert_eq!(mend_id("!!"), None);
    }
}

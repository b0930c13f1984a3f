//! Takes a table apart: which keys it has, the type of each value, and what is wrong with it. Nothing here knows what a
//! generator is.

use std::cell::RefCell;
use std::ops::Range;

use rust_decimal::Decimal;
use toml::de::{DeTable, DeValue};

use super::nearest;
use super::problem::{Problem, Refusal, Value, shorten};
use crate::plan::bounds::{Bounds, Whole};
use crate::plan::{Answer, Choice, Id, LONGEST_NAME, Span};
use crate::quantity::{Amount, Quantity, QuantityError, Unit, Wire};
use crate::tables::motors::code_letter;
use crate::tables::shape::{Configuration, Plug, Receptacle};

/// The word that stands for "I don't know".
const UNKNOWN: &str = "unknown";

/// Collects the problems of a plan file.
#[derive(Debug, Default)]
pub(crate) struct Sink(RefCell<Vec<Problem>>);

impl Sink {
    pub(crate) fn put(&self, span: Range<usize>, why: Refusal) {
        let first = None;
        self.0.borrow_mut().push(Problem { span, why, first });
    }

    /// Reports the second of two items that cannot both be there.
    pub(crate) fn put_second(&self, span: Range<usize>, why: Refusal, first: Range<usize>) {
        let first = Some(first);
        self.0.borrow_mut().push(Problem { span, why, first });
    }

    pub(crate) fn into_problems(self) -> Vec<Problem> {
        self.0.into_inner()
    }
}

/// A table of the plan file.
pub(crate) struct Fields<'t> {
    pub(super) sink: &'t Sink,
    pub(super) span: Range<usize>,
    table: &'t DeTable<'t>,
}

/// A value and its key, which appears in reports about the value.
pub(crate) struct Field<'t> {
    pub(super) sink: &'t Sink,
    pub(super) key: &'static str,
    pub(super) span: Range<usize>,
    /// Whether "unknown" is accepted as an answer.
    pub(crate) or_unknown: bool,
    value: &'t DeValue<'t>,
}

impl<'t> Fields<'t> {
    /// Opens a table and reports every key that is not allowed in it.
    pub(crate) fn open(sink: &'t Sink, table: &'t DeTable<'t>, span: Range<usize>, allowed: &[&'static str]) -> Self {
        for (key, value) in table {
            let found = key.get_ref().as_ref();
            if !allowed.contains(&found) {
                // The span of a heading is that of its brackets, which enclose its key.
                let heading = value.span().start < key.span().start;
                let why = Refusal::new(if heading { "unknown-heading" } else { "unknown-key" });
                let why = why.near("nearest", nearest(found, allowed.iter().copied()));
                let allowed = allowed.iter().copied().map(str::to_owned).collect();
                sink.put(key.span(), why.found(found).with("allowed", Value::All(allowed)));
            }
        }
        Self { sink, span, table }
    }

    /// Opens a table without checking its keys.
    pub(crate) fn peek(sink: &'t Sink, table: &'t DeTable<'t>) -> Self {
        Self { sink, span: 0..0, table }
    }

    /// Reports a problem with the table as a whole.
    pub(crate) fn put(&self, why: Refusal) {
        self.sink.put(self.span.clone(), why);
    }

    /// Returns the value of a key, if the key is there.
    pub(crate) fn get(&self, key: &'static str) -> Option<Field<'t>> {
        self.table.get(key).map(|value| Field {
            sink: self.sink,
            key,
            span: value.span(),
            or_unknown: false,
            value: value.get_ref(),
        })
    }

    /// Reports all but the first of the given keys that are present, since they say the same thing.
    pub(crate) fn one_of(&self, keys: &[&'static str]) {
        let mut given = keys.iter().filter_map(|key| self.get(key));
        if let Some(Field { key: first, .. }) = given.next() {
            for field in given {
                let why = Refusal::new("two-draws").with("first", first);
                field.put(why.with("second", field.key));
            }
        }
    }

    /// Reads a value that may be missing or unknown.
    pub(crate) fn answer<T>(&self, key: &'static str, read: impl FnOnce(&Field<'t>) -> Option<T>) -> Answer<T> {
        match self.get(key) {
            None => Answer::Missing,
            Some(field) if field.is_unknown() => Answer::Unknown,
            Some(field) => read(&field).map_or(Answer::Missing, Answer::Known),
        }
    }

    /// Reads a value that may be missing but not unknown.
    pub(crate) fn optional<T>(&self, key: &'static str, read: impl FnOnce(&Field<'t>) -> Option<T>) -> Option<T> {
        self.known(key, true, read)
    }

    fn known<T>(&self, key: &'static str, optional: bool, read: impl FnOnce(&Field<'t>) -> Option<T>) -> Option<T> {
        let field = self.get(key)?;
        if field.is_unknown() {
            field.put(not_unknown(optional));
            return None;
        }
        read(&field)
    }

    /// Reads a required value. `example` is shown if the key is missing.
    pub(crate) fn required<T>(
        &self,
        key: &'static str,
        example: &'static str,
        read: impl FnOnce(&Field<'t>) -> Option<T>,
    ) -> Option<T> {
        if self.get(key).is_none() {
            self.put(missing(key, example));
        }
        self.known(key, false, read)
    }

    /// Returns the tables under a heading in double square brackets.
    pub(crate) fn tables(&self, key: &'static str, allowed: &[&'static str]) -> Vec<Fields<'t>> {
        let Some(field) = self.get(key) else {
            return Vec::new();
        };
        let Some(items) = field.value.as_array() else {
            field.wrong::<()>("tables");
            return Vec::new();
        };
        items
            .iter()
            .filter_map(|item| {
                let field = Field { span: item.span(), value: item.get_ref(), ..field };
                field.table(allowed)
            })
            .collect()
    }
}

impl<'t> Field<'t> {
    /// Reports a problem with this value.
    pub(crate) fn put(&self, why: Refusal) {
        self.sink.put(self.span.clone(), why.with("key", self.key));
    }

    pub(crate) fn is_unknown(&self) -> bool {
        self.value.as_str().is_some_and(|text| text.trim().eq_ignore_ascii_case(UNKNOWN))
    }

    /// Returns the type of the value, as used in the message key `plan-type-KIND`.
    fn found(&self) -> &'static str {
        match self.value {
            DeValue::String(_) => "text",
            DeValue::Integer(_) => "whole",
            DeValue::Float(_) => "number",
            DeValue::Boolean(_) => "yes-no",
            DeValue::Datetime(_) => "date",
            DeValue::Array(array) if !array.is_empty() && array.iter().all(|item| item.get_ref().is_table()) => {
                "tables"
            }
            DeValue::Array(_) => "list",
            DeValue::Table(_) => "table",
        }
    }

    /// Whether the value is a whole number. Reports it if not.
    pub(crate) fn is_whole(&self) -> bool {
        matches!(self.value, DeValue::Integer(_)) || self.wrong::<()>("whole").is_some()
    }

    fn wrong<T>(&self, wanted: &'static str) -> Option<T> {
        let word = |kind: &str| Value::Word(format!("plan-type-{kind}"));
        let why = Refusal::new("wrong-type").with("found", word(self.found()));
        self.put(why.with("wanted", word(wanted)).near("example", example_of(self.key)));
        None
    }

    /// Returns an unquoted number as it is written.
    fn bare_number(&self) -> Option<String> {
        match self.value {
            DeValue::Integer(whole) => Some(whole.to_string()),
            DeValue::Float(number) => Some(number.to_string()),
            _ => None,
        }
    }

    /// Reads the value as a table.
    pub(crate) fn table(&self, allowed: &[&'static str]) -> Option<Fields<'t>> {
        match self.value {
            DeValue::Table(table) => Some(Fields::open(self.sink, table, self.span.clone(), allowed)),
            _ => self.wrong("table"),
        }
    }

    /// Reads the value as a list with `read` for each item. Reads every item, so that all problems are reported.
    pub(crate) fn list<T>(&self, wanted: &'static str, mut read: impl FnMut(&Self) -> Option<T>) -> Option<Vec<T>> {
        let Some(items) = self.value.as_array() else {
            return self.wrong(wanted);
        };
        let read: Vec<Option<T>> =
            items.iter().map(|item| read(&Field { span: item.span(), value: item.get_ref(), ..*self })).collect();
        read.into_iter().collect()
    }

    /// Reads a non-empty text and trims it.
    pub(crate) fn text(&self) -> Option<&'t str> {
        match self.value.as_str() {
            Some(text) if text.trim().is_empty() => {
                self.put(Refusal::new("empty-text"));
                None
            }
            Some(text) => Some(text.trim()),
            None => self.wrong("text"),
        }
    }

    /// Returns `value`, and reports the refusal if it is `None`.
    fn read<T>(&self, value: Option<T>, why_not: impl FnOnce() -> Refusal) -> Option<T> {
        if value.is_none() {
            self.put(why_not());
        }
        value
    }

    /// Returns the text of a value that has a unit. A bare number is refused with `no_unit`.
    fn text_with_unit(&self, no_unit: impl FnOnce(&str) -> Refusal) -> Option<&'t str> {
        match self.bare_number() {
            Some(found) => self.read(None, || no_unit(&found)),
            None => self.value.as_str().or_else(|| self.wrong("quantity")),
        }
    }

    /// Reads a text that is printed: one line of limited length.
    pub(crate) fn name(&self) -> Option<String> {
        let bad = || Refusal::new("bad-text").with("most", LONGEST_NAME.to_string());
        self.read(crate::plan::name(self.text()?), bad)
    }

    /// Reads a yes or no.
    pub(crate) fn yes_no(&self) -> Option<bool> {
        match self.value {
            DeValue::Boolean(yes) => Some(*yes),
            _ => self.wrong("yes-no-unknown"),
        }
    }

    /// Reads a whole number within bounds.
    pub(crate) fn whole(&self, bounds: Whole) -> Option<u8> {
        let DeValue::Integer(whole) = self.value else {
            return self.wrong("whole");
        };
        let number = i64::from_str_radix(whole.as_str(), whole.radix())
            .ok()
            .and_then(|number| u8::try_from(number).ok())
            .filter(|number| bounds.hold(*number));
        self.read(number, || {
            let why = Refusal::new("out-of-range").found(&whole.to_string());
            let why = why.with("least", Amount::count(bounds.least.into()));
            why.with("most", Amount::count(bounds.most.into()))
        })
    }

    /// Reads a quantity within bounds.
    pub(crate) fn quantity<Q: Quantity>(&self, bounds: &Bounds<Q>) -> Option<Q> {
        self.quantity_of(self.text_with_unit(|found| bounds.no_unit(found))?, bounds)
    }

    fn quantity_of<Q: Quantity>(&self, text: &str, bounds: &Bounds<Q>) -> Option<Q> {
        let refused = |why: Refusal| {
            let key = match why.key {
                "no-number" if Q::UNIT == Unit::One => "no-plain-number",
                "unknown-unit" if Q::UNIT == Unit::Watt && of_volt_amperes(&why) => "volt-amperes",
                key => key,
            };
            self.put(Refusal { key, ..why });
        };
        bounds.read(text).map_err(refused).ok()
    }

    /// Reads a ratio: a number with neither unit nor quotes.
    pub(crate) fn number<Q: Quantity>(&self, bounds: &Bounds<Q>) -> Option<Q> {
        let Some(found) = self.bare_number() else {
            return self.wrong("number");
        };
        let number = found
            .parse()
            .or_else(|_| Decimal::from_scientific(&found))
            .ok()
            .and_then(|number: Decimal| Q::parse(&number.to_string(), bounds.round).ok())
            .filter(|number| bounds.hold(*number));
        self.read(number, || bounds.refusal("out-of-range", &found))
    }

    /// Reads a ratio that may be a fraction in quotes, such as "1/2". A bare number works too.
    pub(crate) fn ratio_in_text<Q: Quantity>(&self, bounds: &Bounds<Q>) -> Option<Q> {
        if self.bare_number().is_some() {
            return self.number(bounds);
        }
        let text = self.text()?;
        let text = text.strip_suffix("hp").map_or(text, str::trim_end);
        self.quantity_of(text, bounds)
    }

    /// Reads a wire size.
    pub(crate) fn wire(&self) -> Option<Wire> {
        let no_unit = |found: &str| {
            let why = Refusal::new("no-unit").found(found);
            why.with("example", format!("{} AWG", shorten(found)))
        };
        let text = self.text_with_unit(|found| no_unit(found).with("allowed", wire_units()))?;
        let why = match Wire::parse(text) {
            Ok(wire) => return Some(wire),
            Err(QuantityError::Empty) => Refusal::new("empty-text"),
            Err(QuantityError::NoNumber) => {
                Refusal::new("no-number").found(text).with("example", Wire::Awg(12).to_string())
            }
            Err(QuantityError::NoUnit) => no_unit(text.trim()),
            Err(QuantityError::UnknownUnit { found }) => Refusal::new("unknown-unit").found(&found),
            Err(QuantityError::OutOfRange) => Refusal::new("wire-size").found(text),
        };
        self.put(why.with("allowed", wire_units()));
        None
    }

    /// Reads one of a few words. Ignores case, spaces, hyphens and underscores.
    pub(crate) fn choice<C: Choice>(&self) -> Option<C> {
        let text = self.text()?;
        let squeeze = |text: &str| -> String {
            let kept = text.chars().filter(|c| !c.is_whitespace() && !matches!(c, '-' | '_'));
            kept.flat_map(char::to_lowercase).collect()
        };
        let wanted = squeeze(text);
        let row = C::ALL.iter().find(|(_, word)| squeeze(word) == wanted);
        let choice = row.map(|(choice, _)| *choice);
        self.read(choice, || {
            let words = C::ALL.iter().map(|(_, word)| *word);
            let near = nearest(text, words.clone());
            let unknown = self.or_unknown.then_some(UNKNOWN);
            let why = Refusal::new("not-a-choice").found(text).near("nearest", near);
            why.with("allowed", Value::any(words.chain(unknown)))
        })
    }

    /// Reads a language tag such as `es` or `fr-CA`.
    pub(crate) fn language(&self) -> Option<String> {
        let text = self.text()?;
        let tag = text.parse::<unic_langid::LanguageIdentifier>().ok();
        self.read(tag.map(|tag| tag.to_string()), || Refusal::new("not-a-language").found(text))
    }

    /// Reads the shape of a receptacle.
    pub(crate) fn receptacle(&self) -> Option<Receptacle> {
        let text = self.text()?;
        self.read(Receptacle::named(text), || match Plug::named(text) {
            // A cord with blades at both ends kills, even if it is only a typing mistake.
            Some(plug) => wrong_half(
                if self.key == "ends" { "two-plugs" } else { "wrong-half-receptacle" },
                text,
                Receptacle(plug.0).to_string(),
            ),
            None => no_shape(text, |c| Receptacle(c).to_string()),
        })
    }

    /// Reads the shape of a plug.
    pub(crate) fn plug(&self) -> Option<Plug> {
        let text = self.text()?;
        self.read(Plug::named(text), || match Receptacle::named(text) {
            Some(half) => wrong_half("wrong-half", text, Plug(half.0).to_string()),
            None => no_shape(text, |c| Plug(c).to_string()),
        })
    }

    /// Reads a new id.
    pub(crate) fn id(&self) -> Option<Id> {
        let text = self.text()?;
        self.read(Id::new(text), || Refusal::new("bad-id").found(text).near("nearest", mend_id(text)))
    }

    /// Whether the value is a list.
    pub(crate) fn is_list(&self) -> bool {
        self.value.is_array()
    }

    /// Reads the code letter of a motor, which says what it draws with a locked rotor.
    pub(crate) fn motor_code(&self) -> Option<char> {
        let text = self.text()?;
        self.read(code_letter(text), || Refusal::new("motor-code").found(text))
    }

    /// Returns the text of a reference that cannot be the name of anything.
    pub(super) fn stray(&self) -> Option<&'t str> {
        let text = self.value.as_str()?.trim();
        (!text.is_empty() && Id::reference(text).is_none()).then_some(text)
    }

    /// Reads a part of the day, such as "22:00-06:00".
    pub(crate) fn hours(&self) -> Option<Span> {
        let text = self.text()?;
        self.read(span_of_day(text), || Refusal::new("bad-hours").found(text))
    }
}

/// Returns a valid id close to the text: "big cord" gives "big-cord".
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

/// Reads "07:20", "7:20", "7" or "24:00" as minutes after midnight.
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

/// Returns the refusal for a required key that is missing.
pub(crate) fn missing(key: &'static str, example: &'static str) -> Refusal {
    let why = Refusal::new("missing-key").with("key", key);
    why.with("example", example)
}

/// Returns the refusal for a value that cannot be unknown. `optional` says whether it may be left out.
pub(crate) fn not_unknown(optional: bool) -> Refusal {
    Refusal { near: optional, ..Refusal::new("unknown-not-allowed") }
}

/// Whether the unit found is one of apparent power.
fn of_volt_amperes(why: &Refusal) -> bool {
    why.values.iter().any(|(name, value)| {
        *name == "found" && matches!(value, Value::Text(found) if found.to_ascii_uppercase().ends_with("VA"))
    })
}

fn wire_units() -> Value {
    Value::any(["AWG", "mm²"])
}

fn wrong_half(key: &'static str, found: &str, meant: String) -> Refusal {
    Refusal::new(key).found(found).with("meant", meant)
}

fn no_shape(found: &str, name: impl Fn(Configuration) -> String) -> Refusal {
    let allowed: Vec<String> = Configuration::ALL.into_iter().map(name).collect();
    let near = nearest(found, allowed.iter().map(String::as_str)).map(str::to_owned);
    let why = Refusal::new("unknown-shape").found(found);
    why.near("nearest", near).with("allowed", Value::Any(allowed))
}

/// Returns an example line for a key whose values are more than one text or number.
fn example_of(key: &str) -> Option<&'static str> {
    Some(match key {
        "runtime" => r#"runtime = [{ load = "25 %", lasts = "8.5 h" }]"#,
        "noise" => r#"noise = { level = "58 dBA", at = "23 ft", load = "25 %" }"#,
        "motor" => r#"motor = { hp = "1/2", code = "G" }"#,
        "hours" => r#"hours = ["07:00-07:20", "19:00-19:20"]"#,
        "quiet_hours" => r#"quiet_hours = "22:00-06:00""#,
        "ends" => r#"ends = ["5-15R", "5-15R"]"#,
        "shape" => r#"shape = "5-20R""#,
        "plug" => r#"plug = "5-15P""#,
        "power_factor" => "power_factor = 0.8",
        _ => return None,
    })
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

//! Turns codes and numbers into sentences. This is the only module that knows about languages.
//!
//! Sentences live only in `i18n/LANGUAGE/*.ftl`. If a message is missing or needs a value that was not given, that is
//! recorded in [`Words::faults`]. Tests require that list to be empty, and printing refuses to produce a page with a
//! gap in it.

pub mod language;
mod learned;
mod library;
mod may;
mod mend;
mod number;
mod pages;
pub mod problem;
mod screen;
mod sets;
mod share;
#[cfg(test)]
pub(crate) mod spoken;
mod typed;

use std::borrow::Cow;
use std::cell::RefCell;
use std::collections::BTreeMap;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use rust_decimal::{Decimal, RoundingStrategy};
use unic_langid::LanguageIdentifier;

use crate::plan::{Id, Leg, Span, hides};
use crate::quantity::{Amount, Current, Unit};
use crate::report::{
    Assumption, Finding, LoadFacts, Look, Marking, Next, Property, Report, Signal, Trouble, Value, Values,
};
use crate::tables::cooling;
use crate::tables::emergency::CALL;
use crate::tables::exhaust::{CLEAR, STEP};
use crate::tables::source::{Mark, Source};

pub use library::{ABOUT, Chain, FIRST_LANGUAGE, Folder, Library, PAGES};
pub use number::{Show, Units};
pub use pages::{PARTS, Page, list_of_rules};
pub use screen::wrapping;
pub(crate) use sets::told_apart;
pub use typed::TwoMeanings;

/// One language, loaded and ready to format messages.
pub struct Words {
    language: LanguageIdentifier,
    bundle: FluentBundle<FluentResource>,
    numbers: number::Numbers,
    /// The text of each rule's page, by rule code.
    pages: BTreeMap<String, Cow<'static, str>>,
    /// The published figures that any message may use, formatted for the reader.
    figures: [(&'static str, FluentValue<'static>); 6],
    faults: RefCell<Vec<String>>,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Words").field("language", &self.language).finish_non_exhaustive()
    }
}

/// Whether a character changes how the text around it is displayed. Newlines are allowed.
fn steers(c: char) -> bool {
    c != '\n' && hides(c)
}

/// Returns the text with each character that could steer the display written as an escape sequence.
pub fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        if steers(c) {
            out.extend(c.escape_unicode());
        } else {
            out.push(c);
        }
    }
    out
}

/// Fix keys of findings that are not marked as guesses even if they rest on an assumption. Either the title itself says
/// what is unknown, or the hazard exists whatever the answer, and the answer can only make it graver.
const UNKNOWN_TOLD: [&str; 23] = [
    "ask",
    "box-look",
    "by-day",
    "choose",
    "count",
    "find-out",
    "find-out-box",
    "if-any",
    "if-none",
    "leg-cord",
    "leg-look",
    "life-by-day",
    "life-charged",
    "life-find-out",
    "look",
    "measure",
    "own",
    "plug-look",
    "plug-where",
    "plug-out",
    "shared",
    "unknown",
    "when",
];

/// The keys in [`UNKNOWN_TOLD`] whose hazard exists whatever the answer. Their titles say nothing about the unknown.
const TOLD_ANYHOW: [&str; 4] = ["by-day", "life-by-day", "life-charged", "when"];

/// Whether the finding's own title says what is unknown.
pub(crate) fn title_says_unknown(finding: &Finding) -> bool {
    let key = finding.fix.key;
    UNKNOWN_TOLD.contains(&key) && !TOLD_ANYHOW.contains(&key)
}

/// A finding in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FindingText {
    /// The signal word.
    pub signal: String,
    /// What is wrong.
    pub title: String,
    /// Why, with the numbers.
    pub why: String,
    /// What to do.
    pub fix: String,
    /// The sources, one line each.
    pub sources: Vec<String>,
    /// What else the same remedy clears: titles with their rule codes.
    pub also: Vec<String>,
    /// The assumptions behind the finding, and where to look. A better answer would remove the finding or make it
    /// milder.
    pub look: Vec<String>,
}

/// Something to look at, in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LookText {
    /// The thing to look at. `None` if it is the site or its people.
    pub what: Option<String>,
    /// What to look for.
    pub ask: String,
    /// What the answer may clear.
    pub clears: Option<String>,
}

impl Words {
    /// Returns the words of a language for a reader of the tag's region (`es`, `es-ES`), or `None` if it is not
    /// offered.
    #[must_use]
    pub fn new(tag: &str, units: Units) -> Option<Self> {
        let chain = Library::built_in().chain(tag)?;
        Some(Self::of(&chain, units))
    }

    /// Loads the messages and pages of the folders in the chain.
    #[must_use]
    pub fn of(chain: &Chain<'_>, units: Units) -> Self {
        let mut bundle = FluentBundle::new(vec![chain.tag.clone()]);
        // The isolation marks would print as boxes on a label, and no sentence here mixes writing directions.
        bundle.set_use_isolating(false);
        let mut faults = Vec::new();
        for (at, (tag, folder)) in chain.folders.iter().enumerate() {
            for (name, text) in folder.messages() {
                let resource =
                    FluentResource::try_new(text.clone().into_owned()).unwrap_or_else(|(partial, errors)| {
                        faults.push(format!("{tag}/{name}: {errors:?}"));
                        partial
                    });
                if at > 0 {
                    bundle.add_resource_overriding(resource);
                } else if let Err(errors) = bundle.add_resource(resource) {
                    faults.push(format!("{tag}/{name}: {errors:?}"));
                }
            }
        }
        let pages = chain.folders.iter().flat_map(|(_, folder)| folder.pages());
        let pages = pages.map(|(code, text)| (code.to_owned(), text.clone()));
        let numbers = number::Numbers::new(&chain.tag.to_string(), units);
        Self {
            language: chain.tag.clone(),
            bundle,
            pages: pages.collect(),
            figures: [
                ("cooling", cooling::ENGINE_MINUTES.into()),
                ("burn", cooling::BURN_MINUTES.into()),
                ("call", CALL.into()),
                ("step", numbers.amount(STEP.into(), Show::AtMost).into()),
                ("clear", numbers.amount(CLEAR.into(), Show::AtLeast).into()),
                ("measure", units.name().into()),
            ],
            numbers,
            faults: RefCell::new(faults),
        }
    }

    /// Returns English with the default units.
    ///
    /// # Panics
    /// Never: the English folder is built into the program.
    #[must_use]
    pub fn english() -> Self {
        Self::new(FIRST_LANGUAGE, Units::default()).expect("the first language is built in")
    }

    /// The language of the messages.
    #[must_use]
    pub const fn language(&self) -> &LanguageIdentifier {
        &self.language
    }

    /// Formats a message without values. `key` may name an attribute: `POWER001.why`.
    pub fn text(&self, key: &str) -> String {
        self.format(key, &FluentArgs::new())
    }

    /// Formats a message with values. Each is either text or a whole number that selects a plural.
    pub fn with<'a>(&self, key: &str, args: impl IntoIterator<Item = (&'a str, FluentValue<'a>)>) -> String {
        self.format(key, &args.into_iter().collect())
    }

    /// Whether the message exists.
    pub fn has(&self, key: &str) -> bool {
        self.pattern(key).is_some()
    }

    /// Returns every message found missing or incomplete so far.
    pub fn faults(&self) -> Vec<String> {
        self.faults.borrow().clone()
    }

    fn format(&self, key: &str, args: &FluentArgs<'_>) -> String {
        match self.try_format(key, args) {
            Ok(text) => text,
            Err(fault) => {
                self.fault(fault);
                self.at_any_rate(key, args)
            }
        }
    }

    /// Formats the message, or returns what is wrong with it.
    fn try_format(&self, key: &str, args: &FluentArgs<'_>) -> Result<String, String> {
        let Some(pattern) = self.pattern(key) else {
            return Err(format!("no message {key}"));
        };
        let mut errors = Vec::new();
        let args = self.with_figures(args);
        let text = self.bundle.format_pattern(pattern, Some(&args), &mut errors);
        if errors.is_empty() { Ok(text.into_owned()) } else { Err(format!("{key}: {errors:?}")) }
    }

    /// Returns the message's values plus the figures that any message may use. Characters in them that could steer the
    /// terminal, as in a file name or an argument, are escaped.
    fn with_figures<'a>(&self, args: &'a FluentArgs<'_>) -> FluentArgs<'a> {
        let mut all: FluentArgs<'a> = self.figures.iter().cloned().collect();
        for (name, value) in args.iter() {
            all.set(
                name,
                match value {
                    FluentValue::String(text) if text.contains(steers) => escaped(text).into(),
                    value => value.clone(),
                },
            );
        }
        all
    }

    /// Formats as much of an incomplete message as there is.
    fn at_any_rate(&self, key: &str, args: &FluentArgs<'_>) -> String {
        let args = &self.with_figures(args);
        self.pattern(key).map_or_else(
            || key.to_owned(),
            |pattern| self.bundle.format_pattern(pattern, Some(args), &mut Vec::new()).into_owned(),
        )
    }

    fn pattern(&self, key: &str) -> Option<&fluent_syntax::ast::Pattern<&str>> {
        let (id, attribute) = split(key);
        let message = self.bundle.get_message(id)?;
        match attribute {
            Some(name) => message.get_attribute(name).map(|found| found.value()),
            None => message.value(),
        }
    }

    fn fault(&self, fault: String) {
        let mut faults = self.faults.borrow_mut();
        if !faults.contains(&fault) {
            faults.push(fault);
        }
    }

    /// The reader's units.
    #[must_use]
    pub const fn units(&self) -> Units {
        self.numbers.units()
    }

    /// Formats an amount in the reader's notation and units.
    pub fn amount(&self, amount: impl Into<Amount>, show: Show) -> String {
        self.numbers.amount(amount.into(), show)
    }

    /// Formats the amps of a part fed by these legs. If there are two, the text says that the amps are on each leg, so
    /// that nobody takes them for a sum.
    pub fn amps_on(&self, amps: Current, legs: &[Leg], show: Show) -> String {
        self.amps_of("amps-both", amps, legs, show)
    }

    /// Formats amps with the message `both` if both legs feed the part.
    fn amps_of(&self, both: &str, amps: Current, legs: &[Leg], show: Show) -> String {
        let amps = self.amount(amps, show);
        match legs {
            [_, _] => self.with(both, [("amps", amps.into())]),
            _ => amps,
        }
    }

    /// Returns the units in which the reader may give a quantity as text, the likeliest first.
    pub(crate) fn units_for(&self, unit: Unit) -> String {
        self.likely_units(unit).join(&self.text("list-comma"))
    }

    /// Returns the units in which the reader may give a quantity, the likeliest first.
    pub(crate) fn likely_units(&self, unit: Unit) -> Vec<&'static str> {
        let units = self.units();
        let mut all: Vec<&str> = crate::quantity::allowed_units(unit).collect();
        // Nobody's gear is labeled in milliwatts or millivolts.
        all.retain(|unit| units.include(unit) && !["mW", "mV"].contains(unit));
        all
    }

    /// Formats a minute of the day as the reader's clock shows it.
    pub fn clock(&self, minute: u16) -> String {
        let half = match minute % Span::DAY {
            0 => "midnight",
            720 => "noon",
            1..720 => "am",
            _ => "pm",
        };
        let time = self.numbers.clock(minute);
        self.with(&format!("clock-{half}"), [("time", time.into())])
    }

    /// Formats a part of the day as the reader's clock shows it.
    pub fn span(&self, span: Span) -> String {
        let (from, to) = (self.clock(span.from), self.clock(span.to));
        self.with("clock-span", [("from", from.into()), ("to", to.into())])
    }

    /// Formats a wire size as marked. A metric reader also gets its cross-section.
    pub fn wire(&self, wire: crate::quantity::Wire) -> String {
        self.numbers.wire(wire)
    }

    /// Formats a bare number with all its digits.
    pub fn number(&self, number: Decimal) -> String {
        self.numbers.digits(number.normalize())
    }

    /// Formats a finding's value: an amount in full, a name unchanged, a word from its message, parts as a list.
    pub fn value(&self, value: &Value) -> String {
        match value {
            Value::Amount(amount) if amount.unit == Unit::Metre => self.amount(*amount, Show::AtMost),
            Value::Amount(amount) => self.amount(*amount, Show::Exact),
            Value::Count(count) => count.to_string(),
            Value::Name(name) => name.clone(),
            Value::Time(minute) => self.clock(*minute),
            Value::Hours(spans) => {
                let spans: Vec<String> = spans.iter().map(|span| self.span(*span)).collect();
                spans.join(&self.text("list-comma"))
            }
            Value::Word { word } => self.text(word),
            Value::Parts(ids) => self.quoted(ids.iter().map(Id::as_str)),
            Value::Shapes(shapes) => self.shapes(shapes),
        }
    }

    /// The signal word.
    pub fn signal(&self, signal: Signal) -> String {
        self.text(&format!("signal-{}", signal.name()))
    }

    /// Formats a value for use in a sentence. Unlike [`Self::value`], it replaces a load's id with its name, rounds an
    /// amount as its name requires, and keeps a count as a number.
    fn named<'a>(&self, name: &str, value: &Value, loads: &[LoadFacts]) -> FluentValue<'a> {
        match value {
            Value::Amount(amount) => self.rounded(name, *amount).into(),
            Value::Count(count) => (*count).into(),
            Value::Name(id) => name_of(id, loads).to_owned().into(),
            // Any of these will do, so they are joined with "or".
            Value::Parts(ids) if matches!(name, "others" | "sockets" | "free") => {
                self.any_of(names_of(ids, loads).into_iter()).into()
            }
            Value::Parts(ids) => self.quoted(names_of(ids, loads).into_iter()).into(),
            Value::Time(_) | Value::Hours(_) | Value::Word { .. } | Value::Shapes(_) => self.value(value).into(),
        }
    }

    /// Formats shapes for somebody who buys a part. Equal shapes are counted.
    fn shapes(&self, shapes: &[String]) -> String {
        let mut told: Vec<String> = Vec::new();
        for shape in shapes {
            let name = self.text(&format!("shape-{shape}"));
            let name = self.with("id-quoted", [("id", name.into())]);
            let count = shapes.iter().filter(|it| *it == shape).count();
            let counted = match count {
                1 => name,
                _ => self.with("print-several", [("name", name.into()), ("count", count.into())]),
            };
            if !told.contains(&counted) {
                told.push(counted);
            }
        }
        self.list(&told)
    }

    /// Formats an amount by its name in a finding. Capacity is never shown as more than it is, and demand never as
    /// less.
    fn rounded(&self, name: &str, amount: Amount) -> String {
        // Actual distances and reaches round down, required ones up.
        match (name, amount.unit) {
            ("distance" | "reach", Unit::Metre) => return self.amount(amount, Show::AtMost),
            ("least" | "ample" | "needed" | "clear" | "flames", Unit::Metre) => {
                return self.amount(amount, Show::AtLeast);
            }
            ("burns", Unit::Percent) => return self.tanks(amount.amount),
            _ => {}
        }
        self.amount(as_told(name, amount), Show::Exact)
    }

    /// Formats a percentage of a tank as a number of tanks, rounded up.
    fn tanks(&self, percent: Decimal) -> String {
        let tanks = (percent / Decimal::ONE_HUNDRED).round_dp_with_strategy(1, RoundingStrategy::ToPositiveInfinity);
        let tanks = tanks.normalize();
        let count = tanks.to_string();
        let count = FluentValue::try_number(count.as_str());
        self.with("tanks", [("count", count), ("amount", self.numbers.digits(tanks).into())])
    }

    fn values<'a>(&self, values: &'a Values, loads: &[LoadFacts]) -> FluentArgs<'a> {
        let mut args: FluentArgs<'a> =
            values.iter().map(|(name, value)| (*name, self.named(name, value, loads))).collect();
        // A reader who subtracts one of these numbers from the other must get the third.
        let told = |name| match values.get(name) {
            Some(Value::Amount(amount)) => Some(as_told(name, *amount)),
            _ => None,
        };
        if let (Some(over), Some(demand), Some(limit)) = (told("over"), told("demand"), told("limit"))
            && over.unit == demand.unit
            && over.unit == limit.unit
        {
            let over = Amount { amount: demand.amount - limit.amount, unit: over.unit };
            args.set("over", FluentValue::from(self.amount(over, Show::Exact)));
        }
        args
    }

    /// Formats a finding from message `CODE` and its attributes `why` and `fix-KEY`. The message gets what the finding
    /// is about as `about` (all of it, as a list) and `first`. Parts appear by their ids, which are on their labels,
    /// and `loads` by their names.
    pub fn finding(&self, finding: &Finding, loads: &[LoadFacts]) -> FindingText {
        self.finding_with(finding, &[], loads)
    }

    /// Formats a finding whose remedy also applies to other findings of its rule. The remedy names the first thing of
    /// each.
    fn finding_with(&self, finding: &Finding, others: &[&Finding], loads: &[LoadFacts]) -> FindingText {
        let mut args = self.values(&finding.values, loads);
        for (name, value) in &finding.fix.values {
            args.set(*name, self.named(name, value, loads));
        }
        let names = names_of(&finding.about, loads);
        let first = self.quoted(names.iter().copied().take(1));
        args.set("first", FluentValue::from(first));
        // A single part is named in the sentence itself and needs no list after it.
        let alone = if names.len() == 1 { "yes" } else { "no" };
        args.set("alone", FluentValue::from(alone));
        // For use after a "not": "do not use one or the other".
        args.set("any", FluentValue::from(self.any_of(names.iter().copied())));
        args.set("about", FluentValue::from(self.quoted(names.into_iter())));
        // Whether every load here that may be medical is known to be.
        let life = loads.iter().filter(|load| load.life());
        let mut about = life.filter(|load| {
            let about = |id: &Id| *id == load.id || *id == load.of;
            finding.about.iter().any(about)
        });
        let sure = about.all(|load| load.kind.is_known());
        args.set("sure", FluentValue::from(if sure { "yes" } else { "no" }));
        // The remedy's key, so that a sentence can select a case by it.
        args.set("fix", FluentValue::from(finding.fix.key));
        let look = self.told_once(finding.rests_on.iter(), loads, true);
        let look: Vec<String> = look.into_iter().map(|(_, text)| text).collect();
        // A guess must not read as a fact. Some findings say themselves what is unknown.
        let assumed = finding.guessed() && !UNKNOWN_TOLD.contains(&finding.fix.key);
        let told = |key: &str, name: &'static str, text: String| {
            if assumed { self.with(key, [(name, text.into())]) } else { text }
        };
        let title = self.format(finding.code, &args);
        let why = self.format(&format!("{}.why", finding.code), &args);
        let all = std::iter::once(finding).chain(others.iter().copied());
        let firsts: Vec<Id> = all.filter_map(|it| it.about.first().cloned()).collect();
        let each = names_of(&firsts, loads);
        let any = self.any_of(each.iter().copied());
        args.set("any-first", FluentValue::from(any));
        args.set("first", FluentValue::from(self.quoted(each.into_iter())));
        FindingText {
            signal: self.signal(finding.signal),
            title: told("trouble-assumed", "title", title),
            why: told("trouble-assumed-why", "why", why),
            fix: self.format(&format!("{}.fix-{}", finding.code, finding.fix.key), &args),
            sources: finding.sources.iter().map(|source| self.source(source)).collect(),
            also: Vec::new(),
            look,
        }
    }

    /// Formats a trouble in the words of its most severe finding, with what else it covers. `None` if it has no
    /// findings.
    pub fn trouble(&self, report: &Report, trouble: &Trouble) -> Option<FindingText> {
        let loads = &report.figures.loads;
        let mut findings = report.findings_of(trouble);
        let lead = findings.next()?;
        let rest: Vec<&Finding> = findings.collect();
        let alike = rest.iter().copied();
        // Equipment with the same remedy, such as two outlets of a box, is named together. For loads, the remedy names
        // only the one that needs the most.
        let of_gear = |id: &Id| loads.iter().all(|load| load.id != *id && load.of != *id);
        let gear = lead.about.first().is_some_and(of_gear);
        let alike = alike.filter(|it| gear && it.code == lead.code && it.fix.key == lead.fix.key);
        let mut text = self.finding_with(lead, &alike.collect::<Vec<_>>(), loads);
        text.also = rest
            .into_iter()
            .map(|finding| {
                let title = self.finding(finding, loads).title;
                self.with("trouble-also", [("title", title.into()), ("code", finding.code.into())])
            })
            .collect();
        Some(text)
    }

    /// Formats ids as a list in quotation marks. Without them, "front carries less" would read like a garbled sentence.
    pub fn quoted<'i>(&self, ids: impl Iterator<Item = &'i str>) -> String {
        self.list(&self.each_quoted(ids))
    }

    /// Formats ids for use after a "not", where "and" could mean both at once: "do not use “left” or “right”".
    fn any_of<'i>(&self, ids: impl Iterator<Item = &'i str>) -> String {
        self.joined(&self.each_quoted(ids), "list-or")
    }

    fn each_quoted<'i>(&self, ids: impl Iterator<Item = &'i str>) -> Vec<String> {
        ids.map(|id| self.with("id-quoted", [("id", id.into())])).collect()
    }

    /// Returns the separator for names: a semicolon if an unquoted name contains a comma, otherwise a comma.
    fn between<T: AsRef<str>>(&self, items: &[T]) -> String {
        let mut items = items.iter().map(AsRef::as_ref);
        let comma = items.any(|item| item.contains(',') && !item.starts_with(['“', '«', '„']));
        self.text(if comma { "list-semicolon" } else { "list-comma" })
    }

    /// Joins names with commas: "kettle, heater, fridge".
    pub(crate) fn in_a_row<T: AsRef<str>>(&self, items: &[T]) -> String {
        let names: Vec<&str> = items.iter().map(AsRef::as_ref).collect();
        names.join(&self.between(items))
    }

    /// Joins names as a list: "kettle, heater and fridge".
    pub fn list<T: AsRef<str>>(&self, items: &[T]) -> String {
        self.joined(items, "list-and")
    }

    /// Joins names with commas, and with the word of message `key` before the last.
    fn joined<T: AsRef<str>>(&self, items: &[T], key: &str) -> String {
        let names: Vec<&str> = items.iter().map(AsRef::as_ref).collect();
        match names.as_slice() {
            [] => String::new(),
            [one] => (*one).to_owned(),
            [first @ .., last] => {
                self.with(key, [("first", first.join(&self.between(items)).into()), ("last", (*last).into())])
            }
        }
    }

    /// Formats a source in one line, with how it was verified.
    pub fn source(&self, source: &Source) -> String {
        let mark = self.text(match source.mark {
            Mark::Confirmed => "mark-confirmed",
            Mark::Secondary => "mark-secondary",
            Mark::Memory => "mark-memory",
            Mark::CommonPractice => "mark-common-practice",
        });
        let clause = match source.note {
            "" => source.clause.to_owned(),
            note => self.with(&format!("source-{note}"), [("clause", source.clause.into())]),
        };
        let cited = [source.document, &clause, source.edition]
            .into_iter()
            .filter(|part| !part.is_empty())
            .collect::<Vec<_>>()
            .join(", ");
        if cited.is_empty() { mark } else { format!("{cited} ({mark})") }
    }

    /// Returns the selected assumptions in order, each as its value and its sentence, with where to look if `look` is
    /// set. Assumptions that differ only in their part share one sentence, which names the other parts at its end.
    pub fn assumptions(
        &self,
        report: &Report,
        asked_for: impl Fn(&Assumption) -> bool,
        look: bool,
    ) -> Vec<(String, String)> {
        let assumed = report.figures.assumed.iter();
        self.told_once(assumed.filter(|it| asked_for(it)), &report.figures.loads, look)
    }

    fn told_once<'a>(
        &self,
        assumed: impl Iterator<Item = &'a Assumption>,
        loads: &[LoadFacts],
        look: bool,
    ) -> Vec<(String, String)> {
        let mut alike: Vec<(&Assumption, Vec<&str>)> = Vec::new();
        for assumption in assumed {
            let same = |(first, _): &&mut (&Assumption, Vec<&str>)| {
                first.why == assumption.why && first.value == assumption.value
            };
            match alike.iter_mut().find(same) {
                Some((_, others)) => others.push(part_of(&assumption.field)),
                None => alike.push((assumption, Vec::new())),
            }
        }
        alike
            .into_iter()
            .map(|(first, mut others)| {
                let mut text = self.assumed(first, loads);
                if let Some(place) = self.where_to_look(first).filter(|_| look) {
                    text = format!("{text} {place}");
                }
                let named = part_of(&first.field);
                others.retain(|part| *part != named);
                if !others.is_empty() {
                    let parts = self.quoted(others.into_iter().map(|part| name_of(part, loads)));
                    text = self.with("assume-also", [("text", text.into()), ("parts", parts.into())]);
                }
                (self.value(&first.value), text)
            })
            .collect()
    }

    /// Formats what was assumed for one unknown, perhaps for several parts, with where to look.
    pub fn assumed_together(&self, assumed: &[Assumption], loads: &[LoadFacts]) -> String {
        let told = self.told_once(assumed.iter(), loads, true).into_iter();
        told.map(|(_, text)| text).collect::<Vec<String>>().join(" ")
    }

    /// Formats an assumption from message `assume-WHY`. The message gets `field`, the `part` of the plan that the field
    /// belongs to, and `value`.
    pub(crate) fn assumed(&self, assumption: &Assumption, loads: &[LoadFacts]) -> String {
        let part = name_of(part_of(&assumption.field), loads).to_owned();
        self.with(
            &format!("assume-{}", assumption.why),
            [
                ("field", assumption.field.clone().into()),
                ("part", part.into()),
                ("value", self.value(&assumption.value).into()),
            ],
        )
    }

    /// Returns where to look for the true answer, if it can be seen anywhere.
    fn where_to_look(&self, assumption: &Assumption) -> Option<String> {
        let key = format!("assume-{}.look", assumption.why);
        self.has(&key).then(|| self.text(&key))
    }

    /// Formats a look: the things to look at, what to look for, and what that may clear.
    pub fn look(&self, report: &Report, look: &Look) -> LookText {
        let loads = &report.figures.loads;
        if look.read == Marking::Package {
            return self.purchase(look);
        }
        let all = &report.figures.assumed;
        let assumed = look.fields.iter();
        let assumed = assumed.filter_map(|field| all.iter().find(|it| it.field == *field));
        let mut parts: Vec<&str> = Vec::new();
        let mut asks: Vec<String> = Vec::new();
        for assumption in assumed {
            let part = name_of(part_of(&assumption.field), loads);
            if !parts.contains(&part) {
                parts.push(part);
            }
            let ask = self.where_to_look(assumption);
            asks.extend(ask.filter(|ask| !asks.contains(ask)));
        }
        let what = look.at.as_ref().map(|id| {
            if id.as_str() == Id::SET && parts == [Id::SET] {
                self.text("look-generator")
            } else {
                self.quoted(parts.into_iter())
            }
        });
        LookText { what, ask: asks.join(" "), clears: self.then(report, look).or_else(|| self.clears(look)) }
    }

    /// Formats a look at something not bought yet: everything that its package must say.
    fn purchase(&self, look: &Look) -> LookText {
        let what = look.at.as_ref().map(|id| match id.as_str() {
            Id::SET => self.text("look-generator"),
            id => self.quoted(std::iter::once(id)),
        });
        let property = |it: &Property| {
            let value = match &it.value {
                // `reach` is a lower limit. `length` and `long` are upper limits.
                Value::Amount(amount) if it.key == "reach" => self.amount(*amount, Show::AtLeast),
                Value::Amount(amount) if matches!(it.key, "length" | "long") => self.amount(*amount, Show::AtMost),
                value => self.value(value),
            };
            let value = [("value", value.into())];
            self.with(&format!("buy-{}", it.key), value)
        };
        let list: Vec<String> = look.buy.iter().map(property).collect();
        let ask =
            if look.wrong_anyway() { list.concat() } else { self.with("look-buy", [("list", list.join("; ").into())]) };
        LookText { what, ask, clears: self.clears(look) }
    }

    /// Formats what is gone after a look, and what has to be found for that.
    fn then(&self, report: &Report, look: &Look) -> Option<String> {
        let findings: Vec<&Finding> = look.gone.iter().map(|at| &report.findings[*at]).collect();
        let gone = findings.first().map(|first| {
            let key = match (look.left, first.signal) {
                (Some(_), _) => "look-only",
                (None, Signal::Danger) => "look-gone-dangers",
                (None, Signal::Warning) => "look-gone-warnings",
                (None, Signal::Caution | Signal::Notice) => "look-gone-cautions",
            };
            let left = look.left.map_or_else(String::new, |left| self.signal(left));
            // Without the remark that it is the worst case.
            let known = findings.iter().map(|it| Finding { rests_on: Vec::new(), ..(*it).clone() });
            let titles: Vec<String> = known.map(|it| self.finding(&it, &report.figures.loads).title).collect();
            let titles = titles.join(&self.text("list-semicolon"));
            self.with(key, [("count", findings.len().into()), ("titles", titles.into()), ("signal", left.into())])
        });
        let part = look.at.as_ref().map_or_else(String::new, ToString::to_string);
        let carries = look.carries.map(|amps| self.amount(Amount::of(amps), Show::Capacity));
        let key = match (&carries, &gone) {
            (Some(_), Some(_)) => "look-then-cord",
            (Some(_), None) => "look-then-cord-only",
            (None, Some(_)) => "look-then",
            (None, None) => return None,
        };
        let [gone, amps] = [gone, carries].map(Option::unwrap_or_default);
        let values = [("found", self.found(look)), ("gone", gone), ("part", part), ("amps", amps)];
        Some(self.with(key, values.map(|(name, text)| (name, text.into()))))
    }

    /// Formats what has to be found in a look as clauses of a condition.
    fn found(&self, look: &Look) -> String {
        let value = |name: &str| {
            let mut all = look.find.iter().filter(|it| it.field.rsplit('.').next() == Some(name));
            all.find_map(|it| it.value.as_ref())
        };
        let mut clauses: Vec<String> = Vec::new();
        for found in &look.find {
            let name = found.field.rsplit('.').next().unwrap_or_default();
            let prints =
                if look.read == Marking::Print { prints(value("wire"), value("conductors")) } else { Vec::new() };
            let printed = matches!(name, "wire" | "conductors") && !prints.is_empty();
            let clause = if printed {
                self.with("look-if-print", [("prints", self.joined(&prints, "list-or").into())])
            } else {
                let key = format!("look-if-{name}");
                // A height that is enough may not be known.
                let known = self.has(&key) && (name != "altitude" || found.value.is_some());
                let key = if known { key.as_str() } else { "look-if-well" };
                let value = found.value.as_ref().map_or_else(String::new, |value| match (value, name) {
                    (Value::Amount(amount), "sleepers_at") => self.amount(*amount, Show::AtLeast),
                    (Value::Amount(amount), "altitude") => self.amount(self.even_height(*amount), Show::AtMost),
                    (Value::Amount(amount), _) => self.amount(*amount, Show::AtMost),
                    (value, _) => self.value(value),
                });
                self.with(key, [("value", value.into())])
            };
            if !clauses.contains(&clause) {
                clauses.push(clause);
            }
        }
        if clauses.is_empty() {
            clauses.push(self.text("look-if-well"));
        }
        self.list(&clauses)
    }

    /// Returns a height in hundreds of meters, never more, for a metric reader. Maps say no more than that.
    fn even_height(&self, height: Amount) -> Amount {
        let hundred = Decimal::ONE_HUNDRED;
        if self.units() == Units::Metric && height.unit == Unit::Metre {
            return Amount { amount: (height.amount / hundred).floor() * hundred, ..height };
        }
        height
    }

    fn clears(&self, look: &Look) -> Option<String> {
        let clears = match (look.dangers, look.warnings) {
            (0, 0) => None,
            (0, _) => Some("look-clears-warnings"),
            _ => Some("look-clears-dangers"),
        };
        let counts = [("dangers", look.dangers.into()), ("warnings", look.warnings.into())];
        clears.map(|key| self.with(key, counts))
    }

    /// Formats a look as two texts: what to look at and for, and what that may clear, which may be empty.
    fn look_step(&self, report: &Report, look: &Look) -> [String; 2] {
        let LookText { what, ask, clears } = self.look(report, look);
        let asked = match what {
            Some(what) => self.with("look-at", [("what", what.into()), ("ask", ask.into())]),
            None => ask,
        };
        [asked, clears.unwrap_or_default()]
    }

    /// Formats a look as one paragraph.
    pub fn look_line(&self, report: &Report, look: &Look) -> String {
        self.look_step(report, look).join(" ").trim_end().to_owned()
    }

    /// Returns what to do next, in order: at most three things.
    pub fn next(&self, report: &Report) -> Vec<String> {
        let steps = self.next_steps(report).into_iter();
        steps.map(|step| step.join(" ").trim_end().to_owned()).collect()
    }

    /// Returns the title and reason of each finding about a load without an outlet, except for findings that the next
    /// steps already cover.
    pub fn without_outlet(&self, report: &Report) -> Vec<[String; 2]> {
        let figures = &report.figures;
        // A trouble is worded by its first finding, the gravest.
        let told = |at: usize| {
            let mut next = figures.next.iter();
            next.any(|next| matches!(next, Next::Trouble(it) if figures.troubles[*it].findings.first() == Some(&at)))
        };
        let of = |unit: &Id| figures.load(unit).map(|load| load.of.clone());
        let lost = |id: &Id| {
            let mut unplaced = figures.sharing.unplaced.iter();
            unplaced.any(|it| it.load == *id || of(&it.load).as_ref() == Some(id))
        };
        let found = report.findings.iter().enumerate();
        let found = found.filter(|(at, it)| it.area == "fit" && it.about.iter().any(lost) && !told(*at));
        let told = found.map(|(_, finding)| {
            let text = self.finding(finding, &figures.loads);
            [self.with("next-trouble", [("title", text.title.into())]), text.why]
        });
        told.collect()
    }

    /// Returns what to do next, each as a headline and its details.
    pub fn next_steps(&self, report: &Report) -> Vec<[String; 2]> {
        let figures = &report.figures;
        let told = figures.next.iter().filter_map(|next| match next {
            Next::Look(at) => Some(self.look_step(report, &figures.looks[*at])),
            Next::Trouble(at) => {
                let text = self.trouble(report, &figures.troubles[*at])?;
                let title = self.with("next-trouble", [("title", text.title.into())]);
                Some([title, text.fix])
            }
        });
        told.collect()
    }
}

/// Returns the prints of a cord, as "12/3", with this wire or thicker. Empty if the wire does not matter.
fn prints(wire: Option<&Value>, wires: Option<&Value>) -> Vec<String> {
    let Some(Value::Name(least)) = wire else {
        return Vec::new();
    };
    let wires = wires.and_then(|it| if let Value::Count(count) = it { Some(*count) } else { None });
    let sold = ["16 AWG", "14 AWG", "12 AWG", "10 AWG"];
    let thicker = sold.iter().skip_while(|size| *size != least);
    let print = |size: &&str| match (wires, size.split_once(' ')) {
        (Some(wires), Some((gauge, _))) => format!("{gauge}/{wires}"),
        _ => (*size).to_owned(),
    };
    thicker.map(print).collect()
}

/// Rounds an amount as its name in a finding requires: capacity down, demand up. Other names are left alone.
fn as_told(name: &str, amount: Amount) -> Amount {
    let strategy = match (name, amount.unit) {
        ("limit" | "rating" | "rated" | "reachable" | "reach" | "leg" | "feed" | "tank", _) => {
            RoundingStrategy::ToNegativeInfinity
        }
        ("demand" | "long" | "over" | "stretch" | "starting" | "sum", _) | ("peak" | "fault", Unit::Ampere) => {
            RoundingStrategy::ToPositiveInfinity
        }
        _ => return amount,
    };
    // As many decimals as are shown in these units, which are the same for every reader.
    let places = match amount.unit {
        Unit::Ampere | Unit::Hour => 1,
        Unit::Watt | Unit::VoltAmpere | Unit::Percent => 0,
        _ => return amount,
    };
    let rounded = amount.amount.round_dp_with_strategy(places, strategy);
    if rounded.is_zero() {
        return amount;
    }
    Amount { amount: rounded, unit: amount.unit }
}

/// Returns what people call the thing with this id. A load goes by the name its owner gave it, a part by its id, which
/// is on its label.
fn name_of<'a>(id: &'a str, loads: &'a [LoadFacts]) -> &'a str {
    let is = |load: &&LoadFacts| load.id.as_str() == id || load.of.as_str() == id;
    loads.iter().find(is).map_or(id, |load| load.name.as_str())
}

/// Returns the names of several ids, each name once.
pub(crate) fn names_of<'a>(ids: &'a [Id], loads: &'a [LoadFacts]) -> Vec<&'a str> {
    let mut names: Vec<&str> = Vec::new();
    for id in ids {
        let name = name_of(id.as_str(), loads);
        if !names.contains(&name) {
            names.push(name);
        }
    }
    names
}

/// Returns the id in the path of a field: `front` for `generator.outlet.front.gfci`, `long.2` for `cord.long.2.leg`.
/// Fields of the site or the generator have no id, so they give the name of their table.
fn part_of(field: &str) -> &str {
    let (path, _) = field.rsplit_once('.').unwrap_or((field, ""));
    let (table, rest) = path.split_once('.').unwrap_or((path, path));
    match table {
        "generator" => rest.strip_prefix("outlet.").unwrap_or(rest),
        // A box id contains no dot.
        "box" => rest.split_once('.').and_then(|(_, outlet)| outlet.strip_prefix("outlet.")).unwrap_or(rest),
        _ => rest,
    }
}

fn split(key: &str) -> (&str, Option<&str>) {
    key.split_once('.').map_or((key, None), |(id, attribute)| (id, Some(attribute)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_part_that_a_field_is_of() {
        for (field, part) in [
            ("generator.outlet.front.gfci", "front"),
            ("box.kitchen.outlet.left.breaker", "left"),
            ("box.kitchen.bond", "kitchen"),
            ("cord.long.2.leg", "long.2"),
            ("load.outlet.running", "outlet"),
            ("generator.peak", "generator"),
            ("site.air", "site"),
        ] {
            assert_eq!(part_of(field), part, "{field}");
        }
    }

    /// Capacity rounds down and demand up: a tank of 5.263 h shows as 5.2 h, a stretch of 24.01 h as 24.1 h. Same for
    /// amps.
    #[test]
    fn what_is_carried_rounds_down_and_what_is_asked_up() {
        let words = Words::english();
        let hours = |milli| Amount::of(crate::quantity::Hours::from_millihours(milli));
        let amps = |milli| Amount::of(crate::quantity::Current::from_milliamps(milli));
        for (name, amount, shown) in [
            ("tank", hours(5_263), "5.2\u{a0}h"),
            ("stretch", hours(24_010), "24.1\u{a0}h"),
            ("limit", amps(4_096), "4\u{a0}A"),
            ("demand", amps(4_861), "4.9\u{a0}A"),
            ("demand", amps(15_000), "15\u{a0}A"),
        ] {
            assert_eq!(words.rounded(name, amount), shown, "{name}");
        }
        // Two tanks and a drop are more than two.
        for (milli, shown) in [(200_001, "2.1 tanks"), (200_000, "2 tanks"), (91_528, "1 tank"), (126_985, "1.3 tanks")]
        {
            let burns = Amount::of(crate::quantity::Percent::from_millipercent(milli));
            assert_eq!(words.rounded("burns", burns), shown);
        }
        // The size of the tank itself rounds to the nearest: 2 gal is 7570.8 mL, here 7570.
        let size = crate::quantity::Volume::from_millilitres(7_570).into();
        assert_eq!(words.rounded("tank", size), "2\u{a0}gal");
    }

    /// At a demand of 34.03 A and a limit of 19.25 A, the shown 34.1 A less the shown 19.2 A gives 14.9 A, not 14.8.
    #[test]
    fn what_is_too_much_is_the_difference_of_what_is_told() {
        let amps = |milli| Value::Amount(crate::quantity::Current::from_milliamps(milli).into());
        let mut values: Values =
            [("demand", 34_030), ("limit", 19_250), ("over", 14_780)].map(|(name, milli)| (name, amps(milli))).into();
        let words = Words::english();
        let told = |values: &Values| match words.values(values, &[]).get("over") {
            Some(FluentValue::String(text)) => text.to_string(),
            other => panic!("{other:?}"),
        };
        assert_eq!(told(&values), "14.9\u{a0}A");
        values.remove("limit");
        assert_eq!(told(&values), "14.8\u{a0}A");
    }

    /// Times follow the reader's clock. A name that looks like a time stays as it is.
    #[test]
    fn a_time_of_day_is_written_as_the_reader_does() {
        let (english, german) = (Words::english(), Words::new("de", Units::Metric));
        let german = german.expect("a language");
        let night = Span { from: 22 * 60, to: 6 * 60 };
        for (time, said, other) in [
            (Value::Time(22 * 60), "10\u{a0}PM", "22:00"),
            (Value::Time(7 * 60 + 30), "7:30\u{a0}AM", "07:30"),
            (Value::Time(12 * 60), "noon", "12:00"),
            (Value::Time(24 * 60), "midnight", "24:00"),
            (Value::Time(0), "midnight", "00:00"),
            (Value::Hours(vec![night]), "10\u{a0}PM to 6\u{a0}AM", "22:00 bis 06:00"),
            (Value::Name("07:30".to_owned()), "07:30", "07:30"),
            (Value::Name("box-left".to_owned()), "box-left", "box-left"),
        ] {
            assert_eq!(english.value(&time), said);
            assert_eq!(german.value(&time), other);
            assert_eq!(english.named("at", &time, &[]), FluentValue::from(said));
        }
        assert_eq!(english.faults(), Vec::<String>::new());
    }

    /// Two outlets of a box with breakers too big for their wire get one remedy that names both.
    #[test]
    fn a_remedy_names_every_part_that_it_is_done_to() {
        let report = crate::rules::testing::report(&[
            ("breaker = \"15 A\" # left", "breaker = \"30 A\""),
            ("breaker = \"15 A\" # right", "breaker = \"25 A\""),
        ]);
        let of_rule = |it: &&Trouble| report.findings_of(it).all(|it| it.code == "OVER001");
        let mut troubles = report.figures.troubles.iter().filter(of_rule);
        let trouble = troubles.next().expect("a trouble");
        let text = Words::english().trouble(&report, trouble).expect("words");
        assert!(text.fix.starts_with("Do not use “left” or “right”"), "{}", text.fix);
        assert!(troubles.next().is_none());
    }

    /// A title that says what we do not know is not prefixed with a second statement of doubt.
    #[test]
    fn what_is_not_known_is_said_once() {
        let words = Words::english();
        let mut told = 0;
        for rule in crate::rules::all() {
            for finding in rule.fires.iter().flat_map(|it| crate::rules::testing::report(it).findings) {
                let said = words.finding(&finding, &[]);
                if said.title.contains("We do not know") {
                    told += 1;
                    let alone = said.title.starts_with("We do not know");
                    assert!(alone, "{} {}", finding.code, finding.fix.key);
                }
            }
        }
        assert!(told > 10, "{told}");
    }

    /// Each load without an outlet is named with the reason of its finding. Nothing is named if all have one.
    #[test]
    fn what_has_no_outlet_is_named_with_why() {
        let words = Words::english();
        let told = |edits: &[crate::rules::Edit]| words.without_outlet(&crate::rules::testing::report(edits));
        assert_eq!(told(&[]), [[""; 2]; 0]);
        let told = told(&[("gfci = true # left", "gfci = false")]);
        let [[what, why]] = &told[..] else { panic!("{told:?}") };
        assert!(what.contains("“Kettle”") && why.contains("You must not plug it in"), "{told:?}");
    }

    /// A danger that rests on an unknown comes before a warning that is certain.
    #[test]
    fn everything_found_is_told_worst_first() {
        let report = crate::rules::testing::report(&[
            ("gfci = true # left", "gfci = \"unknown\""),
            ("co_alarm = true", "co_alarm = false"),
        ]);
        let told = Words::english().brief(&report, 400);
        let (_, found) = told.split_once("Everything we found, worst first").expect("a list");
        let at = |signal: &str| found.find(&format!(" {signal} ")).expect(signal);
        assert!(at("DANGER") < at("WARNING"), "{found}");
        let lead = report.findings.iter().find(|it| it.signal == Signal::Danger);
        assert!(lead.is_some_and(|it| !it.rests_on.is_empty()));
    }

    /// A question about several parts of one finding is asked once.
    #[test]
    fn where_to_look_is_told_once_of_all_that_are_alike() {
        let found = crate::rules::testing::report(&[
            ("gfci = true # left", "gfci = \"unknown\""),
            ("gfci = true # right", "gfci = \"unknown\""),
        ]);
        let mut found = found.findings.iter();
        let found = found.find(|it| it.code == "SHOCK001" && it.about.len() == 2);
        let look = Words::english().finding(found.expect("found"), &[]).look;
        let asks: Vec<&String> = look.iter().filter(|it| it.contains("TEST and RESET")).collect();
        assert_eq!(asks.len(), 1, "{look:#?}");
        assert!(asks[0].contains("The same goes for"), "{look:#?}");
    }

    #[test]
    fn assumptions_that_are_alike_are_one_sentence() {
        let text = crate::plan::demo::WEEKEND;
        let plan = crate::plan::read(text).expect("the demo reads");
        let mut report = crate::judge::build(&plan);
        let one = |field: &str, why, yes| Assumption { field: field.to_owned(), why, value: Value::yes_no(yes) };
        report.figures.assumed = vec![
            one("box.b.outlet.b-1.gfci", "no-gfci", false),
            one("cord.thin.outdoor", "cord-outdoor", false),
            one("box.b.outlet.b-2.gfci", "no-gfci", false),
            one("cord.long.outdoor", "cord-outdoor", true),
            one("generator.outlet.front.gfci", "no-gfci", false),
        ];
        let said: Vec<String> =
            Words::english().assumptions(&report, |_| true, true).into_iter().map(|(_, text)| text).collect();
        assert_eq!(said.len(), 3, "{said:#?}");
        assert!(said[0].contains("“b-1”"), "{said:#?}");
        assert!(said[0].ends_with("The same goes for “b-2” and “front”."), "{said:#?}");
        assert!(said[1].contains("“thin”") && said[2].contains("“long”"), "{said:#?}");
    }
}

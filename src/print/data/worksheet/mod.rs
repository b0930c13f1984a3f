//! The worksheet: every number with its formula, inputs and source, so that someone else can recalculate it by hand.
//!
//! A mark behind a figure says where it comes from: the plan, a numbered source with how that was verified, or an
//! assumption. A figure without a mark is calculated from marked figures by the formulas of its section.

mod case;
mod gear;
mod noise;
mod sums;
mod uses;

pub(super) use gear::{ohms_per, ohms_per_thousand};
pub(super) use uses::MOST_SETS;

use std::cell::RefCell;

use serde::Serialize;

use super::plot::{self, Plot};
use super::{Common, Context, proofs, volts};
use crate::plan::Answer;
use crate::quantity::{Percent, Ratio};
use crate::tables::source::{Mark, Source};

/// The data of `worksheet.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Worksheet {
    common: Common,
    case: case::Case,
    /// The marks behind figures, each with its meaning.
    marks: Vec<(String, String)>,
    sections: Vec<Section>,
    plot: Option<Plot>,
    rules: Vec<Cited>,
    /// Every source once, by its number.
    sources: Vec<(String, String)>,
}

/// A rule with findings, and the numbers of the sources that it rests on.
#[derive(Debug, Serialize)]
struct Cited {
    code: &'static str,
    title: String,
    sources: String,
}

#[derive(Debug, Serialize)]
pub(super) struct Section {
    /// The section's key, which selects its formulas in `lib/formula.typ`.
    key: String,
    title: String,
    /// The meaning of the letters in those formulas.
    symbols: Option<String>,
    /// How the figures are calculated.
    formulas: Vec<String>,
    /// The numbers of the sources for its formulas.
    sources: String,
    columns: Vec<Column>,
    rows: Vec<Vec<Cell>>,
}

#[derive(Debug, Serialize)]
struct Column {
    title: String,
    /// Whether it holds figures, which are right-aligned.
    figures: bool,
    /// Its share of the width.
    share: u8,
}

/// One cell of a table.
#[derive(Debug, Default, Serialize)]
pub(super) struct Cell {
    pub(super) text: String,
    /// Where the text comes from. Empty if it is calculated.
    mark: String,
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Self { text, mark: String::new() }
    }
}

/// The sections with formulas in letters.
const LETTERED: [&str; 10] =
    ["power", "limits", "cords", "loads", "drops", "longest", "sums", "starts", "energy", "noise"];

const KEYS: &[&str] = &[
    "ws-source",
    "ws-sources",
    "ws-rules",
    "ws-intro",
    "defer",
    "do-not-use",
    "ws-no-danger",
    "ws-diagram",
    "ws-dangers",
    "ws-assumed",
    "ws-sign-name",
    "ws-sign-license",
    "ws-sign-date",
    "ws-sign-signature",
    "ws-symbol-generator",
    "ws-reason-breaker",
    "ws-part-cord",
    "ws-symbol-box",
    "ws-part-receptacle",
    "ws-column-part",
    "ws-column-type",
    "ws-column-breaker",
    "ws-column-gfci",
    "ws-column-wire",
    "ws-column-hours",
    "ws-column-short",
    "ws-column-hours-watts",
    "ws-column-short-watts",
    "ws-marks",
    "plot-title",
];

pub(super) fn data(context: &Context<'_>) -> Worksheet {
    let sheet = &Sheet { context, cited: RefCell::default() };
    let case = case::data(sheet);
    let deciding = &sums::deciding(context);
    let mut sections = vec![
        gear::power(sheet),
        gear::limits(sheet),
        gear::cords(sheet),
        gear::protection(sheet),
        uses::loads(sheet),
        uses::sharing(sheet, deciding),
        sums::sets(sheet, deciding),
        sums::starts(sheet),
        volts::drops(sheet),
        volts::longest(sheet),
        uses::energy(sheet),
        noise::section(sheet),
        proofs::worksheet(sheet),
        uses::mend(sheet),
        uses::assumed(sheet),
    ];
    sections.retain(|section| !section.rows.is_empty());
    let mut marks = vec![
        (sheet.plan_mark(), context.say("ws-mark-plan-is", &[])),
        (sheet.assumed_mark(), context.say("ws-mark-assumed-is", &[])),
    ];
    let checked = [
        (Mark::Confirmed, "mark-confirmed"),
        (Mark::Secondary, "mark-secondary"),
        (Mark::Memory, "mark-memory"),
        (Mark::CommonPractice, "mark-common-practice"),
    ];
    marks.extend(checked.map(|(mark, key)| (sign(mark).to_owned(), context.words.text(key))));
    let rules = rules(sheet);
    Worksheet {
        common: context.common("ws-title", KEYS),
        case,
        marks,
        sections,
        plot: plot::data(context),
        rules,
        sources: sheet.sources(),
    }
}

/// Returns the rules with findings, each once, in the order of the findings.
fn rules(sheet: &Sheet<'_>) -> Vec<Cited> {
    let (report, words) = (sheet.context.report, sheet.context.words);
    let mut rules: Vec<Cited> = Vec::new();
    for finding in &report.findings {
        if rules.iter().all(|known| known.code != finding.code) {
            rules.push(Cited {
                code: finding.code,
                title: words.finding(finding, &report.figures.loads).title,
                sources: sheet.numbers(finding.sources.iter()),
            });
        }
    }
    rules
}

/// Returns the sign for how a source was verified: the fuller, the better.
const fn sign(mark: Mark) -> &'static str {
    match mark {
        Mark::Confirmed => "●",
        Mark::Secondary => "◐",
        Mark::Memory => "○",
        Mark::CommonPractice => "◇",
    }
}

/// The worksheet under construction.
pub(super) struct Sheet<'a> {
    pub(super) context: &'a Context<'a>,
    /// The sources cited so far. The index is the source's number, counting from one.
    cited: RefCell<Vec<Source>>,
}

impl Sheet<'_> {
    /// Cites a source: returns its number with its sign.
    fn cite(&self, source: &Source) -> String {
        let mut cited = self.cited.borrow_mut();
        let at = cited.iter().position(|known| known == source);
        let at = at.unwrap_or_else(|| {
            cited.push(*source);
            cited.len() - 1
        });
        format!("{}{}", at + 1, sign(source.mark))
    }

    /// Cites some sources.
    fn numbers<'s>(&self, sources: impl Iterator<Item = &'s Source>) -> String {
        let numbers: Vec<String> = sources.map(|source| self.cite(source)).collect();
        numbers.join(", ")
    }

    /// Returns every cited source with its number.
    fn sources(&self) -> Vec<(String, String)> {
        let cited = self.cited.borrow();
        let numbered = cited.iter().enumerate().map(|(at, source)| {
            let number = format!("{}{}", at + 1, sign(source.mark));
            (number, self.context.words.source(source))
        });
        numbered.collect()
    }

    fn plan_mark(&self) -> String {
        self.context.say("ws-mark-plan", &[])
    }

    fn assumed_mark(&self) -> String {
        self.context.say("ws-mark-assumed", &[])
    }

    /// Returns a figure from a source.
    pub(super) fn sourced(&self, text: String, source: &Source) -> Cell {
        Cell { text, mark: self.cite(source) }
    }

    /// Returns a figure from the plan.
    fn planned(&self, text: String) -> Cell {
        Cell { text, mark: self.plan_mark() }
    }

    /// Returns what was assumed for this field of the plan, if it was unknown.
    fn taken(&self, field: &str) -> Option<String> {
        let assumed = &self.context.report.figures.assumed;
        let found = assumed.iter().find(|taken| taken.field == field)?;
        Some(self.context.words.value(&found.value))
    }

    /// Returns an answer, or what was assumed for it, marked as such and with its source if it has one.
    fn answered<T>(
        &self,
        answer: &Answer<T>,
        field: &str,
        source: Option<&Source>,
        write: impl Fn(&T) -> String,
    ) -> Cell {
        if let Answer::Known(value) = answer {
            return self.planned(write(value));
        }
        match self.taken(field) {
            Some(text) => self.assumed_to_be(text, source),
            None => self.context.say("ws-not-known", &[]).into(),
        }
    }

    /// Returns a figure that was assumed because nobody knew it.
    fn assumed_to_be(&self, text: String, source: Option<&Source>) -> Cell {
        let source = source.map_or_else(String::new, |source| self.cite(source));
        Cell { text, mark: format!("{}{source}", self.assumed_mark()) }
    }

    /// Returns a section. Its words are `ws-KEY` and, for each column, `ws-column-NAME`. A column whose name begins
    /// with `#` holds figures, and its number is its share of the width. `sources` are those of the formulas. Those of
    /// figures are in the marks of their cells.
    pub(super) fn section<C: Into<Cell>>(
        &self,
        key: &str,
        formulas: Vec<String>,
        sources: &[Source],
        columns: &[(&str, u8)],
        rows: Vec<Vec<C>>,
    ) -> Section {
        let context = self.context;
        let rows: Vec<Vec<Cell>> = rows.into_iter().map(|row| row.into_iter().map(Into::into).collect()).collect();
        let sources = if rows.is_empty() { String::new() } else { self.numbers(sources.iter()) };
        Section {
            key: key.to_owned(),
            symbols: LETTERED.contains(&key).then(|| context.say(&format!("ws-symbols-{key}"), &[])),
            title: context.say(&format!("ws-{key}"), &[]),
            formulas,
            sources,
            columns: columns
                .iter()
                .map(|(name, share)| {
                    let (figures, name) = name.strip_prefix('#').map_or((false, *name), |name| (true, name));
                    Column { title: context.say(&format!("ws-column-{name}"), &[]), figures, share: *share }
                })
                .collect(),
            rows,
        }
    }
}

impl Context<'_> {
    fn percent(&self, ratio: Ratio) -> String {
        self.exact(Percent::from_millipercent(ratio.permille() * 100))
    }
}

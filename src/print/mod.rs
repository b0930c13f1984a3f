//! Paper: labels, card, cautions, look sheet and worksheet, typeset in memory from a report.
//!
//! Nothing is calculated here: every number comes from the report. [`data`] puts it into words, a closed [`world`]
//! typesets it, and [`check`] inspects the result before anyone prints it.

mod check;
mod contact;
mod data;
mod error;
mod stock;
mod world;

use std::collections::BTreeMap;
use std::str::FromStr;

use serde::{Deserialize, Serialize};
use typst::diag::{Severity, SourceDiagnostic};
use typst::foundations::{Datetime, Smart};
use typst::syntax::{DiagSpan, Source};
use typst::{World, WorldExt};
use typst_layout::{Page, PagedDocument};
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};

use crate::plan::Plan;
use crate::report::Report;
use crate::words::Words;

pub use error::{Misfit, PrintError};
pub use stock::{Offset, Stock};

/// Pixels per point for PNG pages: 150 per inch, enough to read the smallest type on a screen.
const PIXELS_PER_POINT: f64 = 150.0 / 72.0;
/// Pixels per point for the phone card. A phone screen shows 360 points in about 1,000 pixels.
const PIXELS_ON_A_PHONE: f64 = 3.0;

/// A paper size.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Paper {
    /// US letter, 8½ by 11 in.
    #[default]
    Letter,
    /// ISO A4, 210 by 297 mm.
    A4,
}

impl Paper {
    /// Width and height, in micrometers.
    pub(crate) const fn micrometres(self) -> (i64, i64) {
        match self {
            Self::Letter => (215_900, 279_400),
            Self::A4 => (210_000, 297_000),
        }
    }
}

/// A day, printed on the documents and set as their date.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Date {
    /// The year.
    pub year: i32,
    /// 1 to 12.
    pub month: u8,
    /// 1 to 31.
    pub day: u8,
}

impl FromStr for Date {
    type Err = ();

    /// Reads `2026-07-04`.
    fn from_str(text: &str) -> Result<Self, ()> {
        let mut parts = text.splitn(3, '-');
        let mut part = || parts.next().ok_or(());
        let date = Self {
            year: part()?.parse().map_err(|_| ())?,
            month: part()?.parse().map_err(|_| ())?,
            day: part()?.parse().map_err(|_| ())?,
        };
        // Typst knows the length of months.
        date.datetime().map(|_| date).ok_or(())
    }
}

impl std::fmt::Display for Date {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

impl Date {
    fn datetime(self) -> Option<Datetime> {
        Datetime::from_ymd(self.year, self.month, self.day)
    }
}

/// Print options.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Options {
    /// The sheet for card, cautions, look sheet and worksheet, and for the labels if `stock` is `None`.
    pub paper: Paper,
    /// The label stock. `None` means plain paper with cut marks.
    pub stock: Option<Stock>,
    /// The first position to print on a partly used sheet, counting from one. 0 counts as one.
    pub start_at: usize,
    /// The number of copies of each label. 0 counts as one.
    pub copies: usize,
    /// How far labels are moved on their sheet, for a printer that feeds off-center.
    pub offset: Offset,
    /// Whether to print the alignment sheet, which shows where the labels fall.
    pub alignment: bool,
    /// The documents to print. If empty, all that the plan needs.
    pub only: Vec<Document>,
    /// The size of the card.
    pub card: CardSize,
    /// The available colors.
    pub ink: Ink,
    /// The date to print, never taken from the clock. If given, the PDFs also conform to PDF/A-2a, for archiving.
    pub date: Option<Date>,
    /// Whether to also write each page, and a contact sheet of all pages, as PNG.
    pub png: bool,
    /// Templates that replace or extend the built-in ones: text by path in the template folder, such as `lib/tree.typ`.
    pub templates: BTreeMap<String, String>,
}

/// A card size.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum CardSize {
    /// One whole sheet for each side.
    #[default]
    Sheet,
    /// Half a sheet: A5 or half letter. Both sides are on one sheet with a fold between them.
    Half,
    /// 99 by 142 mm, folded like [`Self::Half`].
    Pocket,
    /// For a phone: each side is one narrow page, as long as needed, and is also written as PNG.
    Phone,
}

/// The colors that the printer has.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Ink {
    /// Signal words on their standard colors.
    #[default]
    Colour,
    /// Black on white, without gray.
    Black,
}

impl Options {
    /// Returns the stock that the labels are printed on.
    fn labels_on(&self) -> Result<Stock, PrintError> {
        self.stock.clone().map_or_else(|| Stock::plain(self.paper), Ok)
    }
}

/// A kind of printed document.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Document {
    /// One label for each receptacle, cord and box, and one for the generator.
    Labels,
    /// Two sides to laminate.
    Card,
    /// A checklist for each setup.
    Cautions,
    /// What to go and look at, with room to write. Printed if anything needs a look, or on request.
    Look,
    /// Every number, with what is needed to recalculate it by hand.
    Worksheet,
    /// Where the labels should be on their sheet. Printed only on request.
    Alignment,
}

impl Document {
    /// All documents about a plan, in print order.
    pub const ALL: [Self; 5] = [Self::Look, Self::Labels, Self::Card, Self::Cautions, Self::Worksheet];

    /// The name in file names and messages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Labels => "labels",
            Self::Card => "card",
            Self::Cautions => "cautions",
            Self::Look => "look",
            Self::Worksheet => "worksheet",
            Self::Alignment => "alignment",
        }
    }

    /// The name of the PDF file.
    #[must_use]
    pub const fn file_name(self) -> &'static str {
        match self {
            Self::Labels => "labels.pdf",
            Self::Card => "card.pdf",
            Self::Cautions => "cautions.pdf",
            Self::Look => "look.pdf",
            Self::Worksheet => "worksheet.pdf",
            Self::Alignment => "alignment.pdf",
        }
    }
}

/// Returns the built-in templates and label stocks as path and text.
#[must_use]
pub fn templates() -> Vec<(&'static str, &'static str)> {
    world::embedded()
}

/// The finished files, with facts about them for the user.
#[derive(Clone, Debug, Default)]
pub struct Prints {
    /// File names and contents.
    pub files: Vec<(String, Vec<u8>)>,
    /// The files of plan documents that this plan does not need. A file that an earlier run left under one of these
    /// names describes another plan.
    pub needless: Vec<String>,
    /// The sheets of paper that the card takes, printed on both sides unless folded. 0 if there is no card or it is for
    /// a phone.
    pub card_sheets: usize,
    /// What the labels used of their sheets. `None` if there are no labels, or if each is a piece of tape.
    pub labels: Option<LabelsUsed>,
}

/// How much of the label sheets is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LabelsUsed {
    /// The number of labels.
    pub count: usize,
    /// The first free position on the last sheet, counting from one. `None` if that sheet is full.
    pub next: Option<usize>,
}

impl LabelsUsed {
    /// Returns what `count` labels use, beginning at position `start_at`.
    fn of(count: usize, stock: &Stock, start_at: usize) -> Option<Self> {
        let used = (start_at.max(1) - 1 + count) % stock.count();
        (count > 0 && stock.paper.is_some()).then_some(Self { count, next: (used > 0).then_some(used + 1) })
    }
}

/// Typesets all documents in memory. Returns file names and contents: one PDF for each document, PNG pages named
/// `labels-1.png` and so on where requested or for the phone card, and `contact.png` with all pages if requested.
///
/// # Errors
/// If a message is missing, a character has no glyph, or a text does not fit. See [`PrintError`].
pub fn render(
    plan: &Plan,
    report: &Report,
    words: &Words,
    options: &Options,
) -> Result<Vec<(String, Vec<u8>)>, PrintError> {
    prints(plan, report, words, options).map(|prints| prints.files)
}

/// Like [`render`], and also returns facts about the files for the user.
///
/// # Errors
/// As [`render`].
pub fn prints(plan: &Plan, report: &Report, words: &Words, options: &Options) -> Result<Prints, PrintError> {
    let mut files = Vec::new();
    let mut card_sheets = 0;
    let mut labels = None;
    let mut seen = Vec::new();
    let pool = rayon::ThreadPoolBuilder::new().num_threads(1).build().ok();
    for (document, data) in data::all(plan, report, words, options)? {
        if document == Document::Labels {
            let count = data::labels_in(&data).len();
            labels = LabelsUsed::of(count, &options.labels_on()?, options.start_at);
        }
        let paged = alone(pool.as_ref(), || typeset(document, data, options)).map_err(|error| error.of_whole(plan))?;
        if document == Document::Card {
            let count = paged.pages().len();
            card_sheets = match options.card {
                CardSize::Sheet => count.div_ceil(2),
                CardSize::Half | CardSize::Pocket => count,
                CardSize::Phone => 0,
            };
        }
        files.push((document.file_name().to_owned(), alone(pool.as_ref(), || export(document, &paged, options))?));
        // The phone card is read as images, so they need no request.
        let for_phone = document == Document::Card && options.card == CardSize::Phone;
        if options.png || for_phone {
            for (index, page) in paged.pages().iter().enumerate() {
                let name = format!("{}-{}.png", document.name(), index + 1);
                let density = if for_phone { PIXELS_ON_A_PHONE } else { PIXELS_PER_POINT };
                files.push(picture(name, page, density)?);
            }
        }
        if options.png {
            seen.extend_from_slice(paged.pages());
        }
        // The typesetter's cache of one document hardly helps with the next, and together the caches are several times
        // the size of any document.
        drop(paged);
        typst::comemo::evict(0);
    }
    if options.png {
        files.push(picture("contact.png".to_owned(), &contact::sheet(&seen), PIXELS_PER_POINT)?);
    }
    let made = |it: &Document| files.iter().any(|(name, _)| name == it.file_name());
    let needless = Document::ALL.iter().filter(|it| options.only.is_empty() && !made(it));
    Ok(Prints { needless: needless.map(|it| it.file_name().to_owned()).collect(), files, card_sheets, labels })
}

/// Returns what each template reads as `data.json`, for template authors and for comparison with standalone Typst.
///
/// # Errors
/// If a message is missing or a character has no glyph.
pub fn template_data(
    plan: &Plan,
    report: &Report,
    words: &Words,
    options: &Options,
) -> Result<Vec<(Document, String)>, PrintError> {
    data::all(plan, report, words, options)
}

/// The prints that differ between two plans: labels by name, sides of the card, and other documents.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outdated {
    /// The names on labels that are new or changed.
    pub labels: Vec<String>,
    /// The names on labels that no longer exist.
    pub gone: Vec<String>,
    /// The changed sides of the card, counting from one.
    pub sides: Vec<usize>,
    /// The other changed documents.
    pub documents: Vec<Document>,
}

impl Outdated {
    /// Whether every print is still good.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.labels.is_empty() && self.gone.is_empty() && self.sides.is_empty() && self.documents.is_empty()
    }
}

/// Compares the prints of an old plan with those of a new one.
///
/// # Errors
/// If a message is missing or a character has no glyph.
pub fn outdated(old: (&Plan, &Report), new: (&Plan, &Report), words: &Words) -> Result<Outdated, PrintError> {
    let options = Options::default();
    let data = |(plan, report)| -> Result<BTreeMap<_, _>, PrintError> {
        let all = data::all(plan, report, words, &options)?;
        Ok(all.into_iter().collect())
    };
    let (old, new) = (data(old)?, data(new)?);
    let mut outdated = Outdated::default();
    for (document, now) in &new {
        let before = old.get(document);
        if before == Some(now) {
            continue;
        }
        if *document == Document::Labels {
            let before = before.map_or_else(Vec::new, |text| data::labels_in(text));
            let now = data::labels_in(now);
            let missing = |(name, _): &&_| !now.iter().any(|(other, _)| other == name);
            let gone = before.iter().filter(missing);
            outdated.gone.extend(gone.map(|(name, _)| name.clone()));
            let new = now.into_iter().filter(|label| !before.contains(label));
            outdated.labels.extend(new.map(|(name, _)| name));
        } else if *document == Document::Card {
            let before = before.map_or_else(Vec::new, |text| data::side_codes(text));
            let now = data::side_codes(now).into_iter().enumerate();
            let new = now.filter(|(at, code)| before.get(*at) != Some(code));
            outdated.sides.extend(new.map(|(at, _)| at + 1));
        } else {
            outdated.documents.push(*document);
        }
    }
    Ok(outdated)
}

/// Runs the job on the pool's only thread. More threads speed up typesetting little, and each keeps its own memory.
fn alone<T: Send>(pool: Option<&rayon::ThreadPool>, job: impl FnOnce() -> T + Send) -> T {
    match pool {
        Some(pool) => pool.install(job),
        None => job(),
    }
}

fn typeset(document: Document, data: String, options: &Options) -> Result<PagedDocument, PrintError> {
    let main = format!("{}.typ", document.name());
    let today = options.date.and_then(Date::datetime);
    let world = world::PrintWorld::new(&main, data, today, &options.templates);
    let compiled = typst::compile::<PagedDocument>(&world);
    // The cached layout is larger than the layout itself, and the export does not use it.
    typst::comemo::evict(0);
    let paged = compiled.output.map_err(|errors| diagnosed(&world, &errors))?;
    // A warning from the typesetter always means a faulty template here.
    if !compiled.warnings.is_empty() {
        return Err(diagnosed(&world, &compiled.warnings));
    }
    let cells = match document {
        Document::Labels => check::Cell::labels(&options.labels_on()?, options.offset),
        _ => Vec::new(),
    };
    check::check(document, &paged, &cells)?;
    Ok(paged)
}

fn export(document: Document, paged: &PagedDocument, options: &Options) -> Result<Vec<u8>, PrintError> {
    let fault = |message: String| PrintError::Template {
        file: format!("{}.typ", document.name()),
        line: 0,
        column: 0,
        message,
    };
    // PDF/UA for accessibility. PDF/A as well only with a date, which it requires.
    let standards: &[PdfStandard] =
        if options.date.is_some() { &[PdfStandard::Ua_1, PdfStandard::A_2a] } else { &[PdfStandard::Ua_1] };
    let standards = PdfStandards::new(standards).map_err(|error| fault(error.message().to_string()))?;
    let timestamp = options.date.and_then(Date::datetime).map(Timestamp::new_utc);
    let two_sided = document == Document::Card && options.card == CardSize::Sheet;
    let options = PdfOptions {
        // Fixed, so that the same plan gives the same bytes.
        ident: Smart::Custom(format!("tallywatt/{}", document.name())),
        creator: Smart::Custom(Some("tallywatt".to_owned())),
        timestamp,
        page_ranges: None,
        standards,
        tagged: true,
        pretty: false,
    };
    let pdf = typst_pdf::pdf(paged, &options)
        .map_err(|errors| fault(errors.iter().map(|error| error.message.as_str()).collect::<Vec<_>>().join("; ")))?;
    finished(&pdf, two_sided).map_err(|error| fault(error.to_string()))
}

/// Rewrites the exporter's file. What the exporter has no option for is set, and every object that is not a stream goes
/// into compressed ones: most of a card is its tags, which the exporter writes as plain text.
fn finished(pdf: &[u8], two_sided: bool) -> Result<Vec<u8>, lopdf::Error> {
    let mut pdf = lopdf::Document::load_mem(pdf)?;
    let catalog = pdf.catalog_mut()?;
    // It is the default. Some readers (poppler to 22.12 at least) report it as a syntax error.
    catalog.get_mut(b"MarkInfo")?.as_dict_mut()?.remove(b"Suspects");
    if two_sided {
        // The sheet is flipped on its long edge (ISO 32000-1, table 150).
        let flip = lopdf::Object::Name(b"DuplexFlipLongEdge".to_vec());
        catalog.get_mut(b"ViewerPreferences")?.as_dict_mut()?.set("Duplex", flip);
    }
    let mut out = Vec::new();
    pdf.save_modern(&mut out)?;
    Ok(out)
}

fn picture(name: String, page: &Page, density: f64) -> Result<(String, Vec<u8>), PrintError> {
    let options = typst_render::RenderOptions { pixel_per_pt: density.into(), render_bleed: false };
    let png = typst_render::render(page, &options).encode_png().map_err(|error| PrintError::Template {
        file: name.clone(),
        line: 0,
        column: 0,
        message: error.to_string(),
    })?;
    Ok((name, png))
}

/// Returns the first error, or else the first warning, with its position.
fn diagnosed(world: &world::PrintWorld, diagnostics: &[SourceDiagnostic]) -> PrintError {
    let worst = diagnostics.iter().find(|diagnostic| diagnostic.severity == Severity::Error).or(diagnostics.first());
    let Some(worst) = worst else {
        unreachable!("a failed compilation says why");
    };
    let span: DiagSpan = worst.span;
    let (file, line, column) = place(world, span).unwrap_or_default();
    let mut message = worst.message.to_string();
    for hint in &worst.hints {
        message.push_str("; ");
        message.push_str(&hint.v);
    }
    PrintError::Template { file, line, column, message }
}

fn place(world: &world::PrintWorld, span: DiagSpan) -> Option<(String, usize, usize)> {
    let id = span.id()?;
    let source: Source = world.source(id).ok()?;
    let file = id.get().vpath().get_without_slash().to_owned();
    let start = world.range(span)?.start;
    let line = source.lines().byte_to_line(start)?;
    let column = source.lines().byte_to_column(start)?;
    Some((file, line + 1, column + 1))
}

#[cfg(test)]
mod tests;

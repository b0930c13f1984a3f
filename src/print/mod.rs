//! Paper: labels, card, cautions and worksheet, typeset in memory from a report.
//!
//! Nothing here works anything out: every number is the report's own. [`data`] words it, a
//! closed [`world`] typesets it, [`check`] looks at the result before anybody prints it.

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

/// Pixels a point for pictures: 150 a inch, enough to read the smallest type on a screen.
const PIXELS_PER_POINT: f64 = 150.0 / 72.0;
/// And on a phone, whose screen shows 360 points in some thousand pixels.
const PIXELS_ON_A_PHONE: f64 = 3.0;

/// A size of sheet.
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
    /// Width and height.
    pub(crate) const fn micrometres(self) -> (i64, i64) {
        match self {
            Self::Letter => (215_900, 279_400),
            Self::A4 => (210_000, 297_000),
        }
    }
}

/// A day, as printed on the documents and set as their date.
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
        // The library knows the length of months.
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

/// How to print.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Options {
    /// The sheet of card, cautions and worksheet, and of the labels when `stock` is not given.
    pub paper: Paper,
    /// What the labels are printed on. `None`: plain paper with cut marks.
    pub stock: Option<Stock>,
    /// The first position to print on a part-used sheet, counting from one; 0 counts as one.
    pub start_at: usize,
    /// How many of each label; 0 counts as one.
    pub copies: usize,
    /// How far labels are moved on their sheet, for a printer that feeds askew.
    pub offset: Offset,
    /// Whether to print the sheet that shows where the labels fall.
    pub alignment: bool,
    /// The documents to print; none given, all.
    pub only: Vec<Document>,
    /// The size of the card.
    pub card: CardSize,
    /// What colours there are.
    pub ink: Ink,
    /// A date to print. Never taken from the clock. With it the files are fit for archives, too
    /// (PDF/A-2a).
    pub date: Option<Date>,
    /// Whether to make pictures of the pages too, and one of all of them.
    pub png: bool,
    /// Templates that stand in for those that come with the program: their text by their path in
    /// the folder of templates, as `lib/tree.typ`.
    pub templates: BTreeMap<String, String>,
}

/// A size of card.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum CardSize {
    /// A whole sheet for each side.
    #[default]
    Sheet,
    /// Half a sheet, both sides on one sheet with a fold between them: A5 or half letter.
    Half,
    /// 99 by 142 mm, folded as the half is.
    Pocket,
    /// Each side one narrow page as long as it takes, to be read on a phone; with its pictures.
    Phone,
}

/// What the printer prints with.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Ink {
    /// Signal words on their colours.
    #[default]
    Colour,
    /// Black on white, without a grey.
    Black,
}

impl Options {
    /// The stock the labels are printed on.
    fn labels_on(&self) -> Result<Stock, PrintError> {
        self.stock.clone().map_or_else(|| Stock::plain(self.paper), Ok)
    }
}

/// One of the prints.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Document {
    /// One label for each receptacle, cord and box, and one for the generator.
    Labels,
    /// Two sides to laminate.
    Card,
    /// A list to tick at each set-up.
    Cautions,
    /// What to go and look at, with room to write; only where something is to be looked at, or when it is asked for.
    Look,
    /// Every number, to be worked out again by hand.
    Worksheet,
    /// Where the labels ought to be on their sheet: only when it is asked for.
    Alignment,
}

impl Document {
    /// All that belong to a plan.
    pub const ALL: [Self; 5] = [Self::Look, Self::Labels, Self::Card, Self::Cautions, Self::Worksheet];

    /// Its name in files and messages.
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

    /// The file it is written to.
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

/// The templates and the label stock that come with the program, by their path.
#[must_use]
pub fn templates() -> Vec<(&'static str, &'static str)> {
    world::embedded()
}

/// The finished prints.
#[derive(Clone, Debug, Default)]
pub struct Prints {
    /// File names and contents.
    pub files: Vec<(String, Vec<u8>)>,
    /// The files of documents that belong to a plan and that this one has no need of: what an earlier set left under
    /// these names tells of another plan.
    pub needless: Vec<String>,
    /// How many sheets of paper, printed on both sides where it is not folded, the card takes; 0
    /// where there is none.
    pub card_sheets: usize,
    /// What the labels took of their sheets; none where there are no labels, or each is a piece of tape.
    pub labels: Option<LabelsUsed>,
}

/// How much of sheets of labels is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LabelsUsed {
    /// The labels.
    pub count: usize,
    /// The first free one of the last sheet, counting from one; none where that is full.
    pub next: Option<usize>,
}

impl LabelsUsed {
    /// So many labels from this position of a sheet on.
    fn of(count: usize, stock: &Stock, start_at: usize) -> Option<Self> {
        let used = (start_at.max(1) - 1 + count) % stock.count();
        (count > 0 && stock.paper.is_some()).then_some(Self { count, next: (used > 0).then_some(used + 1) })
    }
}

/// Typesets all the documents in memory. Gives file names and contents: the four PDFs and, if
/// asked for, their pages as `labels-1.png` and so on, and `contact.png` with all of them.
///
/// # Errors
/// When a message is missing, a character has no glyph, or a text does not fit.
pub fn render(
    plan: &Plan,
    report: &Report,
    words: &Words,
    options: &Options,
) -> Result<Vec<(String, Vec<u8>)>, PrintError> {
    prints(plan, report, words, options).map(|prints| prints.files)
}

/// The same with what there is to tell of them.
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
        // A phone shows pictures without being asked to.
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
        // What the typesetter remembers of one document is of little use to the next, and
        // together it is several times the size of any of them.
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

/// What the templates read as `data.json`: for whoever writes templates, and for comparing with
/// the typesetter alone.
///
/// # Errors
/// When a message is missing or a character has no glyph.
pub fn template_data(
    plan: &Plan,
    report: &Report,
    words: &Words,
    options: &Options,
) -> Result<Vec<(Document, String)>, PrintError> {
    data::all(plan, report, words, options)
}

/// The prints of which two plans give others: the labels by their names, and the documents.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outdated {
    /// The names on the labels that are new or say something else now.
    pub labels: Vec<String>,
    /// The names on the labels that there are none of any more.
    pub gone: Vec<String>,
    /// The sides of the card that do, counting from one.
    pub sides: Vec<usize>,
    /// Whatever else says something else now.
    pub documents: Vec<Document>,
}

impl Outdated {
    /// Whether all prints are still good.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.labels.is_empty() && self.gone.is_empty() && self.documents.is_empty()
    }
}

/// What was printed of a plan and is to be printed again of another.
///
/// # Errors
/// When a message is missing or a character has no glyph.
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

/// Runs the job on the pool's only thread: more threads gain the typesetter little, and each keeps memory of its own.
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
    // What the typesetter remembers of the layout is larger than the layout, and of no use to the export.
    typst::comemo::evict(0);
    let paged = compiled.output.map_err(|errors| diagnosed(&world, &errors))?;
    // A warning from the typesetter is always a fault of a template here.
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
    // For people who cannot see it; and to be kept, which asks for a date, and the only date there
    // is has been given.
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
    let mut pdf = typst_pdf::pdf(paged, &options)
        .map_err(|errors| fault(errors.iter().map(|error| error.message.as_str()).collect::<Vec<_>>().join("; ")))?;
    leave_out_default(&mut pdf);
    if two_sided {
        ask_for_both_sides(&mut pdf);
    }
    Ok(pdf)
}

/// The viewer preference that printing turns the sheet about its long edge (ISO 32000-1, table 150), which the exporter
/// cannot write. Its catalog is the last object of the file: what is added there moves nothing but the table of places
/// behind it, and where that begins is told at the end. A file that is not so is left as it is.
fn ask_for_both_sides(pdf: &mut Vec<u8>) {
    const PREFERENCES: &[u8] = b"/ViewerPreferences<<";
    const DUPLEX: &[u8] = b"/Duplex/DuplexFlipLongEdge";
    const START: &[u8] = b"startxref\n";
    let last = |wanted: &[u8], pdf: &[u8]| pdf.windows(wanted.len()).rposition(|it| it == wanted);
    let (Some(table), Some(start)) = (last(b"\nxref\n", pdf), last(START, pdf)) else {
        return;
    };
    let object = last(b" 0 obj\n", &pdf[..table]);
    let within = |at: &usize| object.is_some_and(|object| object < *at);
    let Some(at) = last(PREFERENCES, &pdf[..table]).filter(within) else {
        return;
    };
    let number = format!("{}\n%%EOF", table + 1 + DUPLEX.len());
    pdf.truncate(start + START.len());
    pdf.extend(number.bytes());
    let at = at + PREFERENCES.len();
    pdf.splice(at..at, DUPLEX.iter().copied());
}

/// The exporter writes that there is nothing suspect about the tags, which is what a reader takes
/// for granted; some readers (poppler to 22.12 at least) call the word itself a syntax error. It
/// becomes as many blanks, so that everything else stays where the file says it is.
fn leave_out_default(pdf: &mut [u8]) {
    const MARKED: &[u8] = b"/MarkInfo<</Marked true/Suspects false>>";
    const WORD: &[u8] = b"/Suspects false";
    let mut found = pdf
        .windows(MARKED.len())
        .enumerate()
        .filter(|(_, bytes)| *bytes == MARKED)
        .map(|(at, _)| at + MARKED.len() - WORD.len() - b">>".len());
    // Twice would mean that somebody's title says so.
    if let (Some(at), None) = (found.next(), found.next()) {
        pdf[at..at + WORD.len()].fill(b' ');
    }
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

/// The first error, or else warning, with its place.
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

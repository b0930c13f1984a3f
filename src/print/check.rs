//! The final check of a laid-out document before it is exported: nothing extends past its page or label, every
//! character has a glyph, and the template could fit everything.

use typst::foundations::{Label, Selector, Value};
use typst::introspection::{Introspector, MetadataElem};
use typst::layout::{Abs, Frame, FrameItem, Point, Size, Transform};
use typst::text::TextItem;
use typst::utils::PicoStr;
use typst_layout::PagedDocument;

use super::error::Misfit;
use super::stock::millimetres;
use super::{Document, Offset, PrintError, Stock};

/// Tolerance for floating-point layout: a thousandth of an inch cuts nothing off.
const SLACK_PT: f64 = 0.072;

/// The Typst label of a block that must contain all of its text, as in `#block[..]<cell>`.
const CELL: &str = "cell";

/// How far glyphs may extend below the last line of such a block, or above its first, in multiples of the type size.
/// Lines are measured from cap height to baseline, and the padding around them is wider than this.
const HANGING: f64 = 0.3;

/// The distance from the reader's eye to a document, in millimeters. It sets the minimum cap height: ANSI Z535.2-1998
/// 9.2.3, from a secondary copy. Labels and the card are read at arm's length. The others are held in the hand or lie
/// on a table in front of the reader.
pub(super) const fn reading_distance(document: Document) -> f64 {
    match document {
        Document::Labels | Document::Card => 600.0,
        Document::Cautions | Document::Look | Document::Worksheet | Document::Alignment => 400.0,
    }
}

/// The minimum cap height, as a share of the reading distance.
pub(super) const MESSAGE: f64 = 1.0 / 300.0;

/// How far some letters (J, f) extend beside their advance width, in multiples of the type size.
const LEANING: f64 = 0.1;

/// A rectangle on a page, in points from its upper left corner.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cell {
    left: f64,
    top: f64,
    right: f64,
    bottom: f64,
}

impl Cell {
    /// Returns the labels of a sheet. They come from the stock, not from the template under test.
    pub(super) fn labels(stock: &Stock, offset: Offset) -> Vec<Self> {
        let points = |micrometres: i64| millimetres(micrometres) * 72.0 / 25.4;
        stock
            .corners()
            .map(|(left, top)| (left + offset.across, top + offset.down))
            .map(|(left, top)| Self {
                left: points(left),
                top: points(top),
                right: points(left + stock.width),
                bottom: points(top + stock.height),
            })
            .collect()
    }

    /// Returns the bounding box of a frame of this size. A rotated frame has its corners elsewhere, so all four are
    /// used.
    fn of(size: Size, transform: Transform) -> Self {
        Self::between(Point::zero(), size.to_point(), transform)
    }

    fn between(min: Point, max: Point, transform: Transform) -> Self {
        let corners =
            [min, Point::new(max.x, min.y), Point::new(min.x, max.y), max].map(|corner| corner.transform(transform));
        let least = |of: fn(Point) -> f64| corners.map(of).into_iter().fold(f64::MAX, f64::min);
        let most = |of: fn(Point) -> f64| corners.map(of).into_iter().fold(f64::MIN, f64::max);
        Self {
            left: least(|corner| corner.x.to_pt()),
            top: least(|corner| corner.y.to_pt()),
            right: most(|corner| corner.x.to_pt()),
            bottom: most(|corner| corner.y.to_pt()),
        }
    }

    fn larger(&self, beside: f64, above: f64) -> Self {
        Self {
            left: self.left - beside,
            top: self.top - above,
            right: self.right + beside,
            bottom: self.bottom + above,
        }
    }

    fn holds(&self, other: &Self) -> bool {
        other.left >= self.left - SLACK_PT
            && other.top >= self.top - SLACK_PT
            && other.right <= self.right + SLACK_PT
            && other.bottom <= self.bottom + SLACK_PT
    }

    fn touches(&self, other: &Self) -> bool {
        other.left < self.right - SLACK_PT
            && other.right > self.left + SLACK_PT
            && other.top < self.bottom - SLACK_PT
            && other.bottom > self.top + SLACK_PT
    }
}

/// Checks the whole document. `cells` are the labels of a sheet. Each text must be inside one of them or clear of all.
pub(super) fn check(document: Document, paged: &PagedDocument, cells: &[Cell]) -> Result<(), PrintError> {
    let misfits = misfits(paged);
    if !misfits.is_empty() {
        return Err(PrintError::TooLong { document, misfits });
    }
    for (index, page) in paged.pages().iter().enumerate() {
        let size = page.frame.size();
        let mut walk = Walk {
            document,
            page: index + 1,
            sheet: Cell::of(size, Transform::identity()),
            cells,
            within: Vec::new(),
            cell: Label::new(PicoStr::intern(CELL)),
        };
        walk.frame(&page.frame, Transform::identity())?;
    }
    Ok(())
}

/// Returns what the templates' fitting recorded as `metadata((text: .., percent: ..)) <misfit>`.
fn misfits(paged: &PagedDocument) -> Vec<Misfit> {
    let Some(label) = Label::new(PicoStr::intern("misfit")) else {
        return Vec::new();
    };
    let mut misfits = Vec::new();
    for element in paged.introspector().query(&Selector::Label(label)) {
        let Some(Value::Dict(dict)) = element.to_packed::<MetadataElem>().map(|metadata| metadata.value.clone()) else {
            continue;
        };
        let text = match dict.get("text") {
            Ok(Value::Str(text)) => as_typed(text),
            _ => String::new(),
        };
        let percent = match dict.get("percent") {
            Ok(Value::Int(percent)) => u32::try_from(*percent).unwrap_or_default(),
            _ => 0,
        };
        let misfit = Misfit { text, percent };
        if !misfits.contains(&misfit) {
            misfits.push(misfit);
        }
    }
    misfits
}

/// Returns the text without its possible line breaks.
fn as_typed(text: &str) -> String {
    text.replace('\u{200b}', "")
}

/// Returns the cap height of this text before any scaling, in millimeters, measured on the drawn H. The cap height that
/// these fonts declare is greater than what they draw. For a face without an H, the declared height is used.
pub(super) fn capital(text: &TextItem) -> f64 {
    let face = text.font.ttf();
    let drawn = face.glyph_index('H').and_then(|letter| face.glyph_bounding_box(letter)).map(|bounds| bounds.y_max);
    let high = drawn.or(face.capital_height()).unwrap_or_default();
    f64::from(high) / f64::from(face.units_per_em()) * text.size.to_mm()
}

struct Walk<'a> {
    document: Document,
    page: usize,
    sheet: Cell,
    cells: &'a [Cell],
    /// The template's blocks around the current position.
    within: Vec<Cell>,
    cell: Option<Label>,
}

impl Walk<'_> {
    fn frame(&mut self, frame: &Frame, transform: Transform) -> Result<(), PrintError> {
        for (position, item) in frame.items() {
            let here = transform.pre_concat(Transform::translate(position.x, position.y));
            match item {
                FrameItem::Group(group) => {
                    let here = here.pre_concat(group.transform);
                    let holds = group.label.is_some() && group.label == self.cell;
                    if holds {
                        self.within.push(Cell::of(group.frame.size(), here));
                    }
                    self.frame(&group.frame, here)?;
                    if holds {
                        self.within.pop();
                    }
                }
                FrameItem::Text(text) => self.text(text, here)?,
                _ => {}
            }
        }
        Ok(())
    }

    /// Returns the cap height on paper, in percent of the minimum for the reading distance.
    fn percent_of_legible(&self, text: &TextItem, transform: Transform) -> u32 {
        let up = Point::new(Abs::zero(), Abs::mm(capital(text)));
        let (from, to) = (Point::zero().transform(transform), up.transform(transform));
        let high = (to.x - from.x).to_mm().hypot((to.y - from.y).to_mm());
        let least = reading_distance(self.document) * MESSAGE;
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // a small percentage
        let percent = (high / least * 100.0 + 0.01).floor().min(1e6) as u32;
        percent
    }

    fn text(&self, text: &TextItem, transform: Transform) -> Result<(), PrintError> {
        let missing: String =
            text.glyphs.iter().filter(|glyph| glyph.id == 0).filter_map(|glyph| text.text.get(glyph.range())).collect();
        if !missing.is_empty() {
            return Err(PrintError::NoGlyph { text: text.text.to_string(), characters: missing });
        }
        if text.text.trim().is_empty() {
            return Ok(());
        }
        let percent = self.percent_of_legible(text, transform);
        if percent < 100 {
            return Err(PrintError::TooSmall {
                document: self.document,
                text: text.text.to_string(),
                page: self.page,
                percent,
            });
        }
        // In the frame and in the text's box alike, y points down.
        let bounds = text.bbox();
        let drawn = Cell::between(bounds.min, bounds.max, transform);
        let size = text.size.to_pt();
        let inside = self.sheet.holds(&drawn)
            && self.cells.iter().all(|cell| cell.holds(&drawn) || !cell.touches(&drawn))
            && self.within.iter().all(|cell| cell.larger(size * LEANING, size * HANGING).holds(&drawn));
        if inside {
            Ok(())
        } else {
            Err(PrintError::OffPage { document: self.document, text: as_typed(&text.text), page: self.page })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_lies_in_one_label_or_beside_all() {
        let stock = Stock::named("letter-30").expect("a stock");
        let cells = Cell::labels(&stock, Offset::default());
        assert_eq!(cells.len(), 30);
        // The second label of the first row begins 4.763 + 69.85 mm from the left.
        let second = cells[1];
        assert!((second.left - 74.613 * 72.0 / 25.4).abs() < 1e-6);
        let across = Cell { left: second.left - 5.0, right: second.left + 5.0, ..second };
        assert!(!second.holds(&across) && second.touches(&across));
        let gap = Cell { left: cells[0].right + 1.0, right: second.left - 1.0, ..second };
        assert!(cells.iter().all(|cell| !cell.touches(&gap)));
    }
}

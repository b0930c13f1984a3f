//! Label stock: where the labels are on a sheet or tape. Each stock is a TOML file in `label-templates/stock/`, named
//! after paper and label count, or after the width of the tape.

use std::str::FromStr;

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::{Deserialize, Serialize};

use super::{Paper, PrintError, world};

/// One kind of label sheet or tape. Lengths are in micrometers.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stock {
    /// The name, which is that of its file.
    pub name: String,
    /// The sheet. `None` for a tape, which is cut after every page.
    pub paper: Option<Paper>,
    /// The number of labels from left to right.
    pub columns: usize,
    /// The number of labels from top to bottom.
    pub rows: usize,
    /// The width of one label.
    pub width: i64,
    /// The height of one label.
    pub height: i64,
    /// The distance from the sheet's left edge to the first label.
    pub left: i64,
    /// The distance from the sheet's top edge to the first label.
    pub top: i64,
    /// The distance from one label's left edge to that of the next.
    pub across: i64,
    /// The distance from one label's top edge to that of the next.
    pub down: i64,
    /// The radius of the label corners.
    pub corner: i64,
    /// Whether this is plain paper, to be cut along marks.
    pub cut_marks: bool,
}

/// What the printer is fed with.
#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Feed {
    Letter,
    A4,
    Roll,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    paper: Feed,
    columns: usize,
    rows: usize,
    width: String,
    height: String,
    left: String,
    top: String,
    across: Option<String>,
    down: Option<String>,
    corner: Option<String>,
    #[serde(default)]
    cut_marks: bool,
}

/// What the template reads, in millimeters.
#[derive(Debug, Serialize)]
pub(super) struct StockData {
    tape: bool,
    sheet_width: f64,
    sheet_height: f64,
    columns: usize,
    rows: usize,
    width: f64,
    height: f64,
    left: f64,
    top: f64,
    across: f64,
    down: f64,
    corner: f64,
    cut_marks: bool,
}

impl Stock {
    /// Returns the names of the built-in stocks.
    #[must_use]
    pub fn names() -> Vec<String> {
        world::embedded_in("stock").into_iter().map(|(name, _)| name.to_owned()).collect()
    }

    /// Returns the built-in stock with this name.
    ///
    /// # Errors
    /// If there is none, or its file is invalid.
    pub fn named(name: &str) -> Result<Self, PrintError> {
        let text = world::embedded_in("stock")
            .into_iter()
            .find(|(known, _)| *known == name)
            .ok_or_else(|| PrintError::UnknownStock { name: name.to_owned(), known: Self::names() })?
            .1;
        Self::read(name, text)
    }

    /// Returns plain paper with cut marks.
    ///
    /// # Errors
    /// Never: a test reads every built-in stock.
    pub fn plain(paper: Paper) -> Result<Self, PrintError> {
        Self::named(match paper {
            Paper::Letter => "letter-plain-6",
            Paper::A4 => "a4-plain-6",
        })
    }

    /// Parses stock from the text of its file.
    ///
    /// # Errors
    /// If a field is missing, unknown or not a length, or if labels overlap or extend past the sheet.
    pub fn read(name: &str, text: &str) -> Result<Self, PrintError> {
        let bad = |message: String| PrintError::BadStock { name: name.to_owned(), message };
        let file: File = toml::from_str(text).map_err(|error| bad(error.to_string()))?;
        let length = |field: &str, text: &str| micrometres(text).ok_or_else(|| bad(format!("{field} = {text:?}")));
        let width = length("width", &file.width)?;
        let height = length("height", &file.height)?;
        let pitch = |field: &str, text: Option<&String>, size: i64| text.map_or(Ok(size), |text| length(field, text));
        let stock = Self {
            name: name.to_owned(),
            paper: match file.paper {
                Feed::Letter => Some(Paper::Letter),
                Feed::A4 => Some(Paper::A4),
                Feed::Roll => None,
            },
            columns: file.columns,
            rows: file.rows,
            width,
            height,
            left: length("left", &file.left)?,
            top: length("top", &file.top)?,
            across: pitch("across", file.across.as_ref(), width)?,
            down: pitch("down", file.down.as_ref(), height)?,
            corner: pitch("corner", file.corner.as_ref(), 0)?,
            cut_marks: file.cut_marks,
        };
        stock.check().map_err(|field| bad(field.to_owned()))?;
        Ok(stock)
    }

    /// Returns an error with the field that makes the sheet impossible.
    fn check(&self) -> Result<(), &'static str> {
        let (paper_width, paper_height) = self.sheet();
        let span = |count: usize, pitch: i64, size: i64| Some(span(count, pitch, size));
        if !(1..=40).contains(&self.columns) {
            return Err("columns");
        }
        if !(1..=80).contains(&self.rows) {
            return Err("rows");
        }
        if self.width <= 0 || (self.columns > 1 && self.across < self.width) {
            return Err("across");
        }
        if self.height <= 0 || (self.rows > 1 && self.down < self.height) {
            return Err("down");
        }
        let fits = |from: i64, span: Option<i64>, room: i64| from >= 0 && span.is_some_and(|span| from + span <= room);
        if !fits(self.left, span(self.columns, self.across, self.width), paper_width) {
            return Err("left");
        }
        if !fits(self.top, span(self.rows, self.down, self.height), paper_height) {
            return Err("top");
        }
        Ok(())
    }

    /// Width and height of a page: the sheet, or one piece of tape with its margins.
    #[must_use]
    pub fn sheet(&self) -> (i64, i64) {
        self.paper.map_or_else(
            || {
                (
                    2 * self.left + span(self.columns, self.across, self.width),
                    2 * self.top + span(self.rows, self.down, self.height),
                )
            },
            Paper::micrometres,
        )
    }

    /// Returns the upper left corner of each label, row by row.
    pub fn corners(&self) -> impl Iterator<Item = (i64, i64)> + '_ {
        let along = |from: i64, pitch: i64, index: usize| from + pitch * i64::try_from(index).unwrap_or_default();
        (0..self.rows).flat_map(move |row| {
            (0..self.columns)
                .map(move |column| (along(self.left, self.across, column), along(self.top, self.down, row)))
        })
    }

    /// The number of labels on a sheet.
    #[must_use]
    pub const fn count(&self) -> usize {
        self.columns * self.rows
    }

    pub(super) fn data(&self) -> StockData {
        let (sheet_width, sheet_height) = self.sheet();
        StockData {
            tape: self.paper.is_none(),
            sheet_width: millimetres(sheet_width),
            sheet_height: millimetres(sheet_height),
            columns: self.columns,
            rows: self.rows,
            width: millimetres(self.width),
            height: millimetres(self.height),
            left: millimetres(self.left),
            top: millimetres(self.top),
            across: millimetres(self.across),
            down: millimetres(self.down),
            corner: millimetres(self.corner),
            cut_marks: self.cut_marks,
        }
    }
}

/// Returns the distance from the first label's near edge to the last one's far edge.
fn span(count: usize, pitch: i64, size: i64) -> i64 {
    let gaps = i64::try_from(count).unwrap_or(i64::MAX).saturating_sub(1);
    gaps.saturating_mul(pitch).saturating_add(size)
}

/// How far a print is moved on its sheet, in micrometers.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Offset {
    /// Rightward.
    pub across: i64,
    /// Downward.
    pub down: i64,
}

impl Offset {
    /// The largest offset. Anything more is another position, not a printer that feeds off-center.
    const MOST: i64 = 10_000;
}

impl FromStr for Offset {
    type Err = ();

    /// Parses "1 mm, -0.5 mm": rightward, then downward.
    fn from_str(text: &str) -> Result<Self, ()> {
        let (across, down) = text.split_once(',').ok_or(())?;
        let signed = |text: &str| {
            let text = text.trim();
            let (sign, size) = text.strip_prefix(['-', '−']).map_or((1, text), |size| (-1, size));
            micrometres(size).filter(|size| *size <= Self::MOST).map(|size| sign * size).ok_or(())
        };
        Ok(Self { across: signed(across)?, down: signed(down)? })
    }
}

/// Parses "101.6 mm", "4 in" or "2.5 cm" to whole micrometers.
fn micrometres(text: &str) -> Option<i64> {
    let text = text.trim();
    let end = text.find(|c: char| c.is_alphabetic())?;
    let (number, unit) = text.split_at(end);
    let number: Decimal = number.trim().parse().ok()?;
    let scale = match unit {
        "mm" => 1_000,
        "cm" => 10_000,
        "in" => 25_400,
        _ => return None,
    };
    // No sheet here is longer than a meter.
    (number.checked_mul(Decimal::from(scale))?).round().to_i64().filter(|length| (0..=1_000_000).contains(length))
}

/// Converts to millimeters, for drawing only.
pub(super) fn millimetres(micrometres: i64) -> f64 {
    Decimal::new(micrometres, 3).to_f64().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_stock_reads_and_is_named_by_its_paper_and_count() {
        let names = Stock::names();
        for (start, least) in [("letter-", 8), ("a4-", 8), ("roll-", 5)] {
            let count = names.iter().filter(|name| name.starts_with(start)).count();
            assert!(count >= least, "{names:?}");
        }
        for name in names {
            let stock = Stock::named(&name).expect("readable stock");
            let start = match stock.paper {
                Some(Paper::Letter) => "letter",
                Some(Paper::A4) => "a4",
                None => "roll",
            };
            assert!(name.starts_with(start), "{name}");
            let end = match stock.paper {
                Some(_) => format!("-{}", stock.count()),
                None => format!("-{}", stock.height / 1_000),
            };
            assert!(name.ends_with(&end), "{name}");
        }
    }

    #[test]
    fn an_offset_is_small_and_has_a_sign_and_units() {
        let offset = |across, down| Ok(Offset { across, down });
        assert_eq!("1 mm, -0.5 mm".parse(), offset(1_000, -500));
        assert_eq!("−0.02 in,0 mm".parse(), offset(-508, 0));
        for bad in ["1 mm", "1, 2", "1 mm, 11 mm", "--1 mm, 0 mm", ""] {
            assert_eq!(bad.parse::<Offset>(), Err(()), "{bad}");
        }
    }

    #[test]
    fn lengths_have_a_unit() {
        assert_eq!(micrometres("101.6 mm"), Some(101_600));
        assert_eq!(micrometres("4 in"), Some(101_600));
        assert_eq!(micrometres("4"), None);
        assert_eq!(micrometres("4 parsec"), None);
        assert_eq!(micrometres("-1 mm"), None);
    }

    #[test]
    fn a_sheet_that_cannot_be_is_refused() {
        let sheet = |width: &str, left: &str, across: &str| {
            Stock::read(
                "mine",
                &format!(
                    "paper = \"letter\"\ncolumns = 2\nrows = 1\nwidth = \"{width}\"\n\
                     height = \"50 mm\"\nleft = \"{left}\"\ntop = \"10 mm\"\nacross = \"{across}\"\n"
                ),
            )
        };
        assert!(sheet("100 mm", "5 mm", "102 mm").is_ok());
        let field = |result: Result<Stock, PrintError>| match result {
            Err(PrintError::BadStock { message, .. }) => message,
            other => panic!("{other:?}"),
        };
        assert_eq!(field(sheet("100 mm", "5 mm", "90 mm")), "across");
        assert_eq!(field(sheet("100 mm", "50 mm", "102 mm")), "left");
        assert_eq!(field(sheet("wide", "5 mm", "102 mm")), "width = \"wide\"");
    }
}

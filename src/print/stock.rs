//! Label stock: where the labels stand on a sheet or tape. One TOML file each in
//! `label-templates/stock/`, named by paper and count, or by the width of the tape.

use std::str::FromStr;

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::{Deserialize, Serialize};

use super::{Paper, PrintError, world};

/// One kind of label sheet. Lengths are in micrometres.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stock {
    /// Its name.
    pub name: String,
    /// The sheet; `None` for a tape, which is cut after every page.
    pub paper: Option<Paper>,
    /// Labels from left to right.
    pub columns: usize,
    /// Labels from top to bottom.
    pub rows: usize,
    /// Size of one label.
    pub width: i64,
    /// Size of one label.
    pub height: i64,
    /// From the sheet's left edge to the first label.
    pub left: i64,
    /// From the sheet's top edge to the first label.
    pub top: i64,
    /// From one label's left edge to the next one's.
    pub across: i64,
    /// From one label's top edge to the next one's.
    pub down: i64,
    /// Radius of the labels' corners.
    pub corner: i64,
    /// Whether it is plain paper, to be cut along marks.
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

/// What the template reads. Millimetres.
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
    /// The names of the stock that comes with the program.
    #[must_use]
    pub fn names() -> Vec<String> {
        world::embedded_in("stock").into_iter().map(|(name, _)| name.to_owned()).collect()
    }

    /// The stock of this name.
    ///
    /// # Errors
    /// When there is none, or its file cannot be used.
    pub fn named(name: &str) -> Result<Self, PrintError> {
        let text = world::embedded_in("stock")
            .into_iter()
            .find(|(known, _)| *known == name)
            .ok_or_else(|| PrintError::UnknownStock { name: name.to_owned(), known: Self::names() })?
            .1;
        Self::read(name, text)
    }

    /// Plain paper with cut marks.
    ///
    /// # Errors
    /// Never for the stock that comes with the program, which a test reads whole.
    pub fn plain(paper: Paper) -> Result<Self, PrintError> {
        Self::named(match paper {
            Paper::Letter => "letter-plain-6",
            Paper::A4 => "a4-plain-6",
        })
    }

    /// Stock from the text of its file.
    ///
    /// # Errors
    /// When a field is missing, unknown or no length, or when the labels overlap or leave the
    /// sheet.
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

    /// The field that makes the sheet impossible, if one does.
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

    /// Width and height of a page: of the sheet, or of a tape's one piece with its margins.
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

    /// The upper left corner of each label, row by row.
    pub fn corners(&self) -> impl Iterator<Item = (i64, i64)> + '_ {
        let along = |from: i64, pitch: i64, index: usize| from + pitch * i64::try_from(index).unwrap_or_default();
        (0..self.rows).flat_map(move |row| {
            (0..self.columns)
                .map(move |column| (along(self.left, self.across, column), along(self.top, self.down, row)))
        })
    }

    /// How many labels a sheet has.
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

/// So many labels from the first one's near edge to the last one's far edge.
fn span(count: usize, pitch: i64, size: i64) -> i64 {
    let gaps = i64::try_from(count).unwrap_or(i64::MAX).saturating_sub(1);
    gaps.saturating_mul(pitch).saturating_add(size)
}

/// How far a print is moved on its sheet: to the right and down, in micrometres.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Offset {
    /// To the right.
    pub across: i64,
    /// Down.
    pub down: i64,
}

impl Offset {
    /// Farther than this is another position, not a printer that feeds askew.
    const MOST: i64 = 10_000;
}

impl FromStr for Offset {
    type Err = ();

    /// Reads "1 mm, -0.5 mm": to the right, then down.
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

/// "101.6 mm", "4 in" or "2.5 cm", in whole micrometres.
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
    // A metre is more than any sheet here.
    (number.checked_mul(Decimal::from(scale))?).round().to_i64().filter(|length| (0..=1_000_000).contains(length))
}

/// For drawing only.
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

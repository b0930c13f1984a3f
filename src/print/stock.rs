//! Label stock: where the labels stand on a sheet. One TOML file each in
//! `label-templates/stock/`, named by paper and count only.

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::{Deserialize, Serialize};

use super::{Paper, PrintError, world};

/// One kind of label sheet. Lengths are in micrometres.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stock {
    /// Its name.
    pub name: String,
    /// The sheet.
    pub paper: Paper,
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

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    paper: Paper,
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
        world::embedded_in("stock")
            .into_iter()
            .map(|(name, _)| name.to_owned())
            .collect()
    }

    /// The stock of this name.
    ///
    /// # Errors
    /// When there is none, or its file cannot be used.
    pub fn named(name: &str) -> Result<Self, PrintError> {
        let text = world::embedded_in("stock")
            .into_iter()
            .find(|(known, _)| *known == name)
            .ok_or_else(|| PrintError::UnknownStock {
                name: name.to_owned(),
                known: Self::names(),
            })?
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
        let bad = |message: String| PrintError::BadStock {
            name: name.to_owned(),
            message,
        };
        let file: File = toml::from_str(text).map_err(|error| bad(error.to_string()))?;
        let length = |field: &str, text: &str| {
            micrometres(text).ok_or_else(|| bad(format!("{field} = {text:?}")))
        };
        let width = length("width", &file.width)?;
        let height = length("height", &file.height)?;
        let pitch = |field: &str, text: Option<&String>, size: i64| {
            text.map_or(Ok(size), |text| length(field, text))
        };
        let stock = Self {
            name: name.to_owned(),
            paper: file.paper,
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
        let (paper_width, paper_height) = self.paper.micrometres();
        let span = |count: usize, pitch: i64, size: i64| {
            i64::try_from(count)
                .ok()
                .and_then(|count| (count - 1).checked_mul(pitch)?.checked_add(size))
        };
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
        let fits = |from: i64, span: Option<i64>, room: i64| {
            from >= 0 && span.is_some_and(|span| from + span <= room)
        };
        if !fits(
            self.left,
            span(self.columns, self.across, self.width),
            paper_width,
        ) {
            return Err("left");
        }
        if !fits(
            self.top,
            span(self.rows, self.down, self.height),
            paper_height,
        ) {
            return Err("top");
        }
        Ok(())
    }

    /// How many labels a sheet has.
    #[must_use]
    pub const fn count(&self) -> usize {
        self.columns * self.rows
    }

    pub(super) fn data(&self) -> StockData {
        StockData {
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
    (number.checked_mul(Decimal::from(scale))?)
        .round()
        .to_i64()
        .filter(|length| (0..=1_000_000).contains(length))
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
        assert!(names.len() >= 4, "{names:?}");
        for name in names {
            let stock = Stock::named(&name).expect("readable stock");
            let paper = match stock.paper {
                Paper::Letter => "letter",
                Paper::A4 => "a4",
            };
            assert!(name.starts_with(paper), "{name}");
            assert!(name.ends_with(&format!("-{}", stock.count())), "{name}");
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

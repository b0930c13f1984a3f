//! Positions on the finished paper, read back from the PDF and compared with the millimeters in the stock's own file,
//! which is parsed here by separate code.

use pdf_extract::content::Content;
use pdf_extract::{Document as Pdf, MediaBox, OutputDev, OutputError, Transform, output_doc};

use super::*;

/// Half the feed error of a good printer.
const WITHIN_MM: f64 = 0.1;
const MM: f64 = 25.4 / 72.0;

/// Left, top, right and bottom in millimeters from the sheet's upper left corner.
type Box4 = [f64; 4];

fn field(stock: &toml::Table, name: &str) -> Option<f64> {
    let text = stock.get(name)?.as_str()?;
    let (number, unit) = text.split_once(' ')?;
    let scale = if unit == "in" { 25.4 } else { 1.0 };
    number.parse::<f64>().ok().map(|number| number * scale)
}

/// Computes the labels of a sheet from the text of the stock's file.
fn expected(name: &str) -> Vec<Box4> {
    let path = format!("{}/label-templates/stock/{name}.toml", env!("CARGO_MANIFEST_DIR"));
    let text = crate::plan::store::read_text(path.as_ref()).expect("a stock file");
    let stock: toml::Table = text.parse().expect("TOML");
    let count = |name: &str| stock[name].as_integer().expect("a number");
    let width = field(&stock, "width").expect("a width");
    let height = field(&stock, "height").expect("a height");
    let across = field(&stock, "across").unwrap_or(width);
    let down = field(&stock, "down").unwrap_or(height);
    let (left, top) = (field(&stock, "left"), field(&stock, "top"));
    let (left, top) = (left.expect("left"), top.expect("top"));
    let mut boxes = Vec::new();
    for row in 0..count("rows") {
        for column in 0..count("columns") {
            #[allow(clippy::cast_precision_loss)] // a few dozen at most
            let (x, y) = (left + across * column as f64, top + down * row as f64);
            boxes.push([x, y, x + width, y + height]);
        }
    }
    boxes
}

type Matrix = [f64; 6];

fn times(a: Matrix, b: Matrix) -> Matrix {
    [
        a[0] * b[0] + a[1] * b[2],
        a[0] * b[1] + a[1] * b[3],
        a[2] * b[0] + a[3] * b[2],
        a[2] * b[1] + a[3] * b[3],
        a[4] * b[0] + a[5] * b[2] + b[4],
        a[4] * b[1] + a[5] * b[3] + b[5],
    ]
}

/// Returns the boxes of all painted paths, by page.
fn painted(pdf: &Pdf) -> Vec<Vec<Box4>> {
    pdf.get_pages()
        .into_values()
        .map(|page| {
            let media = pdf.get_dictionary(page).expect("a page");
            let media = media.get(b"MediaBox").and_then(|o| o.as_array()).expect("a box");
            let height = f64::from(media[3].as_float().expect("a number"));
            let content = pdf.get_page_content(page).expect("content");
            let content = Content::decode(&content).expect("operations");
            let (mut at, mut saved) = ([1.0, 0.0, 0.0, 1.0, 0.0, 0.0], Vec::new());
            let (mut path, mut boxes) = (Vec::new(), Vec::new());
            for operation in content.operations {
                let numbers: Vec<f64> =
                    operation.operands.iter().filter_map(|operand| operand.as_float().ok().map(f64::from)).collect();
                let mut add = |at: Matrix, points: &[f64]| {
                    for point in points.chunks_exact(2) {
                        let [x, y] = [point[0], point[1]];
                        path.push((at[0] * x + at[2] * y + at[4], at[1] * x + at[3] * y + at[5]));
                    }
                };
                match operation.operator.as_str() {
                    "q" => saved.push(at),
                    "Q" => at = saved.pop().expect("balanced"),
                    "cm" => at = times(numbers.try_into().expect("six numbers"), at),
                    "m" | "l" | "c" | "v" | "y" => add(at, &numbers),
                    "re" => {
                        let [x, y, w, h] = numbers[..] else { panic!("{operation:?}") };
                        add(at, &[x, y, x + w, y + h]);
                    }
                    "n" => path.clear(),
                    "f" | "F" | "f*" | "S" | "s" | "B" | "B*" | "b" | "b*" => {
                        let xs = path.iter().map(|point: &(f64, f64)| point.0 * MM);
                        let ys = path.iter().map(|point: &(f64, f64)| (height - point.1) * MM);
                        boxes.push([
                            xs.clone().fold(f64::MAX, f64::min),
                            ys.clone().fold(f64::MAX, f64::min),
                            xs.fold(f64::MIN, f64::max),
                            ys.fold(f64::MIN, f64::max),
                        ]);
                        path.clear();
                    }
                    _ => {}
                }
            }
            boxes
        })
        .collect()
}

/// Collects the origins of glyphs, by page, in millimeters from the upper left corner.
#[derive(Default)]
struct Glyphs {
    height: f64,
    pages: Vec<Vec<(f64, f64)>>,
}

impl OutputDev for Glyphs {
    fn begin_page(&mut self, _: u32, media: &MediaBox, _: Option<(f64, f64, f64, f64)>) -> Result<(), OutputError> {
        self.height = media.ury;
        self.pages.push(Vec::new());
        Ok(())
    }
    fn end_page(&mut self) -> Result<(), OutputError> {
        Ok(())
    }
    fn output_character(&mut self, at: &Transform, _: f64, _: f64, _: f64, text: &str) -> Result<(), OutputError> {
        if !text.trim().is_empty() {
            let page = self.pages.last_mut().expect("a page");
            page.push((at.m31 * MM, (self.height - at.m32) * MM));
        }
        Ok(())
    }
    fn begin_word(&mut self) -> Result<(), OutputError> {
        Ok(())
    }
    fn end_word(&mut self) -> Result<(), OutputError> {
        Ok(())
    }
    fn end_line(&mut self) -> Result<(), OutputError> {
        Ok(())
    }
}

fn near(one: &Box4, other: &Box4) -> bool {
    one.iter().zip(other).all(|(a, b)| (a - b).abs() <= WITHIN_MM)
}

fn inside(outer: &Box4, x: f64, y: f64) -> bool {
    x >= outer[0] - WITHIN_MM && x <= outer[2] + WITHIN_MM && y >= outer[1] - WITHIN_MM && y <= outer[3] + WITHIN_MM
}

/// Returns a generator with one receptacle, which makes two labels.
fn two_labels() -> (Plan, Report) {
    let (mut plan, mut report) = small();
    plan.cords.clear();
    plan.boxes.clear();
    plan.generator.outlets.truncate(1);
    report.figures.limits.truncate(1);
    report.figures.limits[0].path = vec![id("front")];
    report.figures.sharing = Sharing::default();
    (plan, report)
}

fn labels(plan: &Plan, report: &Report, options: Options) -> Pdf {
    let options = Options { only: vec![Document::Labels], ..options };
    let files = print(plan, report, &options).expect("printed");
    Pdf::load_mem(&files[0].1).expect("a PDF")
}

#[test]
fn every_label_lies_where_its_stock_says_from_every_start() {
    let (plan, report) = two_labels();
    for name in Stock::names() {
        let expected = expected(&name);
        for start in 0..expected.len() {
            let pdf = labels(
                &plan,
                &report,
                Options {
                    stock: Some(Stock::named(&name).expect("a stock")),
                    start_at: start + 1,
                    ..Options::default()
                },
            );
            let pages = painted(&pdf);
            let mut glyphs = Glyphs::default();
            output_doc(&pdf, &mut glyphs).expect("glyphs");
            for label in start..start + 2 {
                let (page, place) = (label / expected.len(), label % expected.len());
                let place = &expected[place];
                assert!(
                    pages[page].iter().any(|drawn| near(drawn, place)),
                    "{name} from {start}: {place:?} in {:?}",
                    pages[page]
                );
                // Not only the background but also text.
                let words = glyphs.pages[page].iter();
                let count = words.filter(|(x, y)| inside(place, *x, *y)).count();
                assert!(count > 10, "{name} from {start}: {count} glyphs");
            }
            // Nothing is on the positions to be left empty.
            for place in &expected[..start] {
                assert!(glyphs.pages[0].iter().all(|(x, y)| !inside(place, *x, *y)), "{name} from {start}: {place:?}");
            }
        }
    }
}

#[test]
fn an_offset_moves_every_label_by_that_much() {
    let (plan, report) = two_labels();
    let stock = || Some(Stock::named("letter-30").expect("a stock"));
    let moved = labels(
        &plan,
        &report,
        Options { stock: stock(), offset: "1.5 mm, -0.75 mm".parse().expect("an offset"), ..Options::default() },
    );
    let pages = painted(&moved);
    for place in &expected("letter-30")[..2] {
        let place = [place[0] + 1.5, place[1] - 0.75, place[2] + 1.5, place[3] - 0.75];
        assert!(pages[0].iter().any(|drawn| near(drawn, &place)), "{place:?}");
    }
}

#[test]
fn copies_fill_the_sheet() {
    let (plan, report) = two_labels();
    let pdf = labels(
        &plan,
        &report,
        Options { stock: Some(Stock::named("a4-24").expect("a stock")), copies: 12, ..Options::default() },
    );
    let pages = painted(&pdf);
    assert_eq!(pages.len(), 1);
    for place in expected("a4-24") {
        assert!(pages[0].iter().any(|drawn| near(drawn, &place)), "{place:?}");
    }
}

#[test]
fn the_alignment_page_frames_every_label() {
    let (plan, report) = two_labels();
    for name in Stock::names() {
        let options = Options {
            stock: Some(Stock::named(&name).expect("a stock")),
            only: vec![Document::Labels],
            alignment: true,
            ..Options::default()
        };
        let files = print(&plan, &report, &options).expect("printed");
        show(&files, &format!("alignment-{name}"));
        assert_eq!(files[1].0, "alignment.pdf");
        let pages = painted(&Pdf::load_mem(&files[1].1).expect("a PDF"));
        for place in expected(&name) {
            assert!(pages[0].iter().any(|drawn| near(drawn, &place)), "{name}: {place:?}");
        }
        // The bar for checking the scale has its stated length.
        if !name.starts_with("roll") {
            assert!(pages[0].iter().any(|drawn| bar(drawn, 50.0)), "{name}");
            // Instructions for the page are in one label.
            let pdf = Pdf::load_mem(&files[1].1).expect("a PDF");
            let mut glyphs = Glyphs::default();
            output_doc(&pdf, &mut glyphs).expect("glyphs");
            let glyphs = &glyphs.pages[0];
            let told = |place: &Box4| glyphs.iter().filter(|(x, y)| inside(place, *x, *y)).count();
            let full = expected(&name).iter().filter(|place| told(place) > 150).count();
            assert_eq!(full, 1, "{name}");
        }
    }
}

/// Whether the box is a horizontal line of this length.
fn bar(drawn: &Box4, length: f64) -> bool {
    (drawn[2] - drawn[0] - length).abs() <= WITHIN_MM && drawn[3] - drawn[1] < 0.01
}

#[test]
fn the_bar_on_plain_paper_is_as_long_as_it_says() {
    let (plan, report) = two_labels();
    for name in ["letter-plain-6", "a4-plain-6"] {
        let options = Options { stock: Some(Stock::named(name).expect("a stock")), ..Options::default() };
        let pages = painted(&labels(&plan, &report, options));
        assert!(pages[0].iter().any(|drawn| bar(drawn, 50.0)), "{name}");
    }
}

/// Everything is painted in black or white, with no colors and no grays that a printer would halftone.
#[test]
fn one_ink_has_no_colours_and_no_greys() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    let shades = |ink: Ink| {
        let options = Options { ink, ..Options::default() };
        let mut shades = Vec::new();
        for (name, bytes) in print(&plan, &report, &options).expect("printed") {
            let pdf = Pdf::load_mem(&bytes).expect("a PDF");
            for page in pdf.get_pages().into_values() {
                let content = pdf.get_page_content(page).expect("content");
                let content = Content::decode(&content).expect("operations");
                for operation in content.operations {
                    let colour = ["g", "G", "rg", "RG", "k", "K", "sc", "SC", "scn", "SCN"];
                    if colour.contains(&operation.operator.as_str()) {
                        let numbers = operation.operands.iter();
                        let numbers: Vec<f32> = numbers.filter_map(|number| number.as_float().ok()).collect();
                        shades.push((name.clone(), numbers));
                    }
                }
            }
        }
        shades
    };
    let unshaded = |(_, numbers): &(String, Vec<f32>)| {
        numbers.windows(2).all(|two| (two[0] - two[1]).abs() < 0.001)
            && numbers.iter().all(|number| number.abs() < 0.001 || (number - 1.0).abs() < 0.001)
    };
    assert!(!shades(Ink::Colour).iter().all(unshaded));
    let black = shades(Ink::Black);
    assert!(!black.is_empty());
    for shade in &black {
        assert!(unshaded(shade), "{shade:?}");
    }
}

/// The trim corners are 3 mm inside the pouch, which is half the size of the sheet.
#[test]
fn a_folded_card_is_trimmed_for_its_pouch() {
    let (plan, report) = two_labels();
    for (card, paper, pouch) in [
        (CardSize::Half, Paper::A4, (148.5, 210.0)),
        (CardSize::Half, Paper::Letter, (139.7, 215.9)),
        (CardSize::Pocket, Paper::A4, (105.0, 148.0)),
        (CardSize::Pocket, Paper::Letter, (105.0, 148.0)),
    ] {
        let options = Options { card, paper, only: vec![Document::Card], ..Options::default() };
        let files = print(&plan, &report, &options).expect("printed");
        let pages = painted(&Pdf::load_mem(&files[0].1).expect("a PDF"));
        // The fold is vertical, without width, from trim edge to trim edge.
        let fold =
            pages[0].iter().find(|drawn| drawn[2] - drawn[0] < 0.01 && drawn[3] - drawn[1] > 120.0).expect("a fold");
        let sides = pages[0].iter().filter(|drawn| drawn[3] - drawn[1] > 0.1);
        let left = sides.map(|drawn| drawn[0]).fold(f64::MAX, f64::min);
        assert!((fold[3] - fold[1] - (pouch.1 - 6.0)).abs() <= WITHIN_MM, "{fold:?}");
        // Nothing but the marks themselves is beyond the trim edge.
        let edge = fold[0] - (pouch.0 - 6.0);
        let corners = pages[0]
            .iter()
            .filter(|drawn| (drawn[2] - edge).abs() <= WITHIN_MM || (drawn[0] - edge).abs() <= WITHIN_MM);
        assert!(corners.count() >= 2, "{card:?} {paper:?} {left} {edge}");
    }
}

/// After an offset is set, the alignment page prints again with it.
#[test]
fn the_alignment_page_moves_with_its_labels() {
    let (plan, report) = small();
    for name in Stock::names() {
        for offset in ["3 mm, -2 mm", "-10 mm, 10 mm", "10 mm, -10 mm"] {
            let options = Options {
                stock: Some(Stock::named(&name).expect("a stock")),
                offset: offset.parse().expect("an offset"),
                alignment: true,
                only: vec![Document::Alignment],
                ..Options::default()
            };
            let tape = options.stock.as_ref().is_some_and(|stock| stock.paper.is_none());
            match print(&plan, &report, &options) {
                Ok(files) => assert_eq!(files.len(), 1, "{name} {offset}"),
                // A tape has no room to move.
                Err(error) => assert!(tape, "{name} {offset}: {error}"),
            }
        }
    }
}

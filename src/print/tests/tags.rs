//! Walks the tags of the finished PDF, which are what a screen reader reads.

use pdf_extract::{Dictionary, Document as Pdf, Object};

use super::*;

/// Calls `visit` with every element of the structure tree and the kinds of its ancestors.
fn walk(pdf: &Pdf, object: &Object, above: &mut Vec<String>, visit: &mut impl FnMut(&Dictionary, &[String])) {
    match object {
        Object::Reference(id) => {
            if let Ok(object) = pdf.get_object(*id) {
                walk(pdf, object, above, visit);
            }
        }
        Object::Array(items) => {
            for item in items {
                walk(pdf, item, above, visit);
            }
        }
        Object::Dictionary(element) => {
            let kind = element.get(b"S").and_then(Object::as_name);
            if let Ok(kind) = kind {
                visit(element, above);
                above.push(String::from_utf8_lossy(kind).into_owned());
            }
            if let Ok(kids) = element.get(b"K") {
                walk(pdf, kids, above, visit);
            }
            if kind.is_ok() {
                above.pop();
            }
        }
        _ => {}
    }
}

/// Returns every element: its kind, its alternative text, and the kinds of its ancestors.
fn elements(bytes: &[u8]) -> Vec<(String, Option<Vec<u8>>, Vec<String>)> {
    let pdf = Pdf::load_mem(bytes).expect("a PDF");
    let root = pdf.catalog().expect("a catalogue");
    let root = root.get(b"StructTreeRoot").expect("tags");
    let mut found = Vec::new();
    walk(&pdf, root, &mut Vec::new(), &mut |element, above| {
        let kind = element.get(b"S").and_then(Object::as_name).expect("a kind");
        let alt = element.get(b"Alt").and_then(Object::as_str).ok();
        found.push((String::from_utf8_lossy(kind).into_owned(), alt.map(<[u8]>::to_vec), above.to_vec()));
    });
    found
}

#[test]
fn every_drawing_has_words_and_every_table_has_a_head() {
    for text in [crate::plan::demo::WEEKEND, crate::plan::demo::MENDED] {
        let (plan, report) = demo(text);
        for (name, bytes) in print(&plan, &report, &Options::default()).expect("printed") {
            let elements = elements(&bytes);
            let kinds = |kind: &'static str| elements.iter().filter(move |found| found.0 == kind);
            assert!(kinds("H1").count() >= 1, "{name} has no heading");
            for (_, alt, _) in kinds("Figure").chain(kinds("Formula")) {
                assert!(alt.as_ref().is_some_and(|alt| alt.len() > 3), "{name}");
            }
            let headed = kinds("TH").filter(|(_, _, above)| above.contains(&"Table".to_owned())).count();
            assert!(headed >= kinds("Table").count(), "{name}");
            // So has every row of figures.
            let rows = kinds("TR").count();
            assert!(
                !["card.pdf", "worksheet.pdf"].contains(&name.as_str()) || headed >= rows,
                "{name}: {headed} {rows}"
            );
            // The drawings are the faces on the labels, the sign on the card and the curves on the worksheet.
            let drawn = match name.as_str() {
                "labels.pdf" => 10,
                "card.pdf" | "worksheet.pdf" => 1,
                _ => 0,
            };
            assert!(kinds("Figure").count() >= drawn, "{name}");
        }
    }
}

/// The supply tree is read as nested lists: each row is an item of a list inside the item that feeds it.
#[test]
fn the_tree_is_a_list_of_lists() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let elements = elements(&files[1].1);
    let depths: Vec<usize> = elements
        .iter()
        .filter(|(kind, ..)| kind == "LI")
        .map(|(_, _, above)| above.iter().filter(|kind| *kind == "L").count())
        .collect();
    // The generator, its outlets, their cords, the ends of those or the box, and its outlets.
    let count = |depth: usize| depths.iter().filter(|it| **it == depth).count();
    assert_eq!([1, 2, 3, 4, 5].map(count), [1, 2, 3, 7, 4], "{depths:?}");
}

#[test]
fn headings_leave_out_no_level() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    for (name, bytes) in print(&plan, &report, &Options::default()).expect("printed") {
        let mut last = 0;
        for (kind, _, _) in elements(&bytes) {
            if let Some(level) = kind.strip_prefix('H').and_then(|level| level.parse().ok()) {
                let level: u8 = level;
                assert!(level <= last + 1, "{name}: H{last}, then {kind}");
                last = level;
            }
        }
        assert!(last > 0, "{name}");
    }
}

#[test]
fn the_word_that_some_readers_stumble_over_is_left_out() {
    let (plan, report) = small();
    for (name, bytes) in print(&plan, &report, &Options::default()).expect("printed") {
        let pdf = Pdf::load_mem(&bytes).expect("a PDF");
        let marked = pdf.catalog().expect("a catalogue").get(b"MarkInfo");
        let marked = marked.and_then(Object::as_dict).expect("marked");
        assert!(marked.get(b"Suspects").is_err(), "{name}");
        assert!(marked.get(b"Marked").and_then(Object::as_bool).expect("said"));
    }
}

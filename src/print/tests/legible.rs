//! Letters high enough for the distance that each document is read from.

use typst::layout::{Frame, FrameItem};
use typst::text::TextItem;

use super::*;

/// From labels to the eye: arm's length.
const LABELS: f64 = 600.0;
/// From card and cautions to the eye: held in the hand.
const IN_HAND: f64 = 400.0;

/// Height of the signal word for a distance to the eye, both in the same unit: ANSI Z535.2-1998
/// 9.2.3, from a secondary copy.
fn signal_height(distance: f64) -> f64 {
    distance / 150.0
}

/// Height of the other words, likewise.
fn message_height(distance: f64) -> f64 {
    distance / 300.0
}

/// The worked example of the same clause, from the same secondary copy: at 25 ft a message is
/// 1.00 in high and its signal word 2.00 in.
#[test]
fn the_heights_are_those_of_the_published_example() {
    let distance = 25.0 * 12.0;
    assert!((message_height(distance) - 1.00).abs() < 1e-9);
    assert!((signal_height(distance) - 2.00).abs() < 1e-9);
}

/// How high a capital of this text is, in millimetres: its H as it is drawn, since the height that
/// these fonts state for their capitals is more than that.
fn capital(text: &TextItem) -> f64 {
    let face = text.font.ttf();
    let letter = face.glyph_index('H').expect("an H");
    let high = face.glyph_bounding_box(letter).expect("its box").y_max;
    f64::from(high) / f64::from(face.units_per_em()) * text.size.to_mm()
}

/// Every piece of text of a frame with the height of its capitals. Nothing is scaled, only moved and
/// turned.
fn capitals(frame: &Frame, found: &mut Vec<(String, f64)>) {
    for (_, item) in frame.items() {
        match item {
            FrameItem::Group(group) => capitals(&group.frame, found),
            FrameItem::Text(text) => {
                found.push((text.text.trim().to_owned(), capital(text)));
            }
            _ => {}
        }
    }
}

/// What the laid-out pages of one document hold.
fn laid_out(document: Document, options: &Options) -> Vec<(String, f64)> {
    let options = Options {
        only: vec![document],
        ..options.clone()
    };
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    let mut found = Vec::new();
    for (document, data) in data::all(&plan, &report, &Words::english(), &options).expect("worded")
    {
        let paged = typeset(document, data, &options).expect("typeset");
        for page in paged.pages() {
            capitals(&page.frame, &mut found);
        }
    }
    found
}

/// Checks every signal word of a document. There has to be one.
fn signal_words_are_high_enough(what: &str, found: &[(String, f64)], distance: f64) {
    let words = ["DANGER", "WARNING", "CAUTION", "NOTICE"];
    let signals: Vec<_> = found
        .iter()
        .filter(|(text, _)| words.contains(&text.as_str()))
        .collect();
    assert!(!signals.is_empty(), "{what}: no signal word");
    for (text, height) in signals {
        assert!(
            *height >= signal_height(distance),
            "{what}: {text} is {height:.2} mm high, not {:.2} mm",
            signal_height(distance)
        );
    }
}

/// Checks every other word of a document.
fn messages_are_high_enough(what: &str, found: &[(String, f64)], distance: f64) {
    for (text, height) in found {
        assert!(
            *height >= message_height(distance),
            "{what}: {text} is {height:.2} mm high, not {:.2} mm",
            message_height(distance)
        );
    }
}

#[test]
fn signal_words_of_labels_are_high_enough() {
    for name in Stock::names() {
        let options = Options {
            stock: Some(Stock::named(&name).expect("a stock")),
            ..Options::default()
        };
        signal_words_are_high_enough(&name, &laid_out(Document::Labels, &options), LABELS);
    }
}

#[test]
fn words_of_cards_are_high_enough() {
    for card in [CardSize::Sheet, CardSize::Half, CardSize::Pocket] {
        for paper in [Paper::Letter, Paper::A4] {
            let options = Options {
                paper,
                card,
                ..Options::default()
            };
            let what = format!("{card:?} {paper:?}");
            let found = laid_out(Document::Card, &options);
            signal_words_are_high_enough(&what, &found, IN_HAND);
            messages_are_high_enough(&what, &found, IN_HAND);
        }
    }
}

#[test]
fn words_of_cautions_are_high_enough() {
    let found = laid_out(Document::Cautions, &Options::default());
    signal_words_are_high_enough("cautions", &found, IN_HAND);
    messages_are_high_enough("cautions", &found, IN_HAND);
}

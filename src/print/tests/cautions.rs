//! The cautions fit on one page for a sound plan and on two for a bad one.

use super::legible::pages;
use super::*;
use crate::rules::testing::{LENT_BOX, lent_box_before};

fn cautions(text: &str, paper: Paper) -> Vec<String> {
    pages(text, Document::Cautions, &Options { paper, ..Options::default() })
}

#[test]
fn one_page_for_a_sound_plan_and_two_for_a_bad_one() {
    let before = lent_box_before();
    for paper in [Paper::Letter, Paper::A4] {
        assert_eq!(cautions(crate::plan::demo::MENDED, paper).len(), 1, "{paper:?}");
        for text in [crate::plan::demo::WEEKEND, LENT_BOX, &before] {
            assert!(cautions(text, paper).len() <= 2, "{paper:?}");
        }
    }
}

/// The sheet has what to do; reasons are on the worksheet.
#[test]
fn each_danger_is_what_to_do_and_not_why() {
    let (_, report) = demo(crate::plan::demo::WEEKEND);
    let words = Words::english();
    let sheet = cautions(crate::plan::demo::WEEKEND, Paper::Letter).concat();
    for trouble in &report.figures.troubles {
        let text = words.trouble(&report, trouble).expect("words");
        let plain = |text: &str| text.replace('\u{a0}', " ");
        assert!(sheet.contains(&plain(&text.fix)), "{}", text.fix);
        assert!(!sheet.contains(&plain(&text.why)), "{}", text.why);
    }
}

#[test]
fn leaving_has_a_place_of_its_own() {
    let sheet = cautions(crate::plan::demo::MENDED, Paper::Letter).concat();
    let (_, leaving) = sheet.split_once("When you leave").expect("the place");
    assert!(leaving.contains("Never leave while it runs."), "{leaving}");
}

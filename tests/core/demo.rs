//! The complete reports of both demo plans. A change here changes what people are told.

use tallywatt::judge;
use tallywatt::plan::{self, demo};

fn report_of(text: &str) -> String {
    let plan = plan::read(text).expect("a demo plan has no problems");
    judge::build(&plan).to_json().expect("a report is JSON")
}

#[test]
fn the_weekend_as_packed() {
    insta::assert_snapshot!(report_of(demo::WEEKEND));
}

#[test]
fn the_weekend_put_right() {
    insta::assert_snapshot!(report_of(demo::MENDED));
}

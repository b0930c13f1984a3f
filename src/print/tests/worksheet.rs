//! The worksheet: where each figure is from.

use super::*;

/// Every figure that a load is given has a mark for where it is from: the plan, or an assumption
/// and its source, each named with how it was checked.
#[test]
fn each_figure_of_the_worksheet_says_where_it_is_from() {
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let data = template_data(&plan, &report, &Words::english(), &Options::default());
    let (document, sheet) = data.expect("data").swap_remove(3);
    assert_eq!(document, Document::Worksheet);
    let sheet: serde_json::Value = serde_json::from_str(&sheet).expect("JSON");
    let sections = sheet["sections"].as_array().expect("sections");
    let section = |key: &str| sections.iter().find(|it| it["key"] == key).expect("one");
    let row_of = |key: &str, name: &str| {
        let rows = section(key)["rows"].as_array().expect("rows");
        let found = rows.iter().find(|row| row[0]["text"] == name);
        found.expect("a row").clone()
    };
    let cell = |row: &serde_json::Value, at: usize| {
        let text = |name: &str| row[at][name].as_str().expect("text").replace('\u{a0}', " ");
        (text("text"), text("mark"))
    };
    let source_of = |key: &str, mark: &str| {
        let sources = section(key)["sources"].as_array().expect("sources");
        let number = mark.trim_start_matches(['A', 'P']);
        let found = sources.iter().find(|it| it[0] == number);
        found.expect("a source")[1]
            .as_str()
            .expect("text")
            .to_owned()
    };
    // The fan: watts of the plan; its power factor and its start of nobody, so of the tables.
    let fan = row_of("loads", "Fan");
    assert_eq!(cell(&fan, 2), ("55 W".into(), "P".into()));
    let (factor, mark) = cell(&fan, 3);
    assert!(
        factor == "0.8" && mark.starts_with('A') && mark.ends_with('○'),
        "{mark}"
    );
    assert_eq!(source_of("loads", &mark), "from memory, not verified");
    let (times, mark) = cell(&fan, 6);
    assert!(times == "× 6" && mark.ends_with('●'), "{times} {mark}");
    assert_eq!(
        source_of("loads", &mark),
        "NFPA 70 (NEC), 430.251(A) (confirmed)"
    );
    // The cool box: all three of the plan.
    let cool_box = row_of("loads", "Cool box");
    for (at, text) in [(2, "60 W"), (3, "0.7"), (7, "180 W")] {
        assert_eq!(cell(&cool_box, at), (text.into(), "P".into()));
    }
    // A cord: ohms of 1,000 ft as chapter 9 table 8 prints them.
    let (ohms, mark) = cell(&row_of("cords", "long"), 3);
    assert_eq!(ohms, "1.24 Ω");
    assert_eq!(
        source_of("cords", &mark),
        "NFPA 70 (NEC), chapter 9, table 8 (confirmed)"
    );
    // Whatever is marked with a number is named in its own section.
    for section in sections {
        let key = section["key"].as_str().expect("a key");
        for row in section["rows"].as_array().expect("rows") {
            for cell in row.as_array().expect("cells") {
                let mark = cell["mark"].as_str().expect("a mark");
                if !mark.trim_start_matches(['A', 'P']).is_empty() {
                    source_of(key, mark);
                }
            }
        }
    }
}

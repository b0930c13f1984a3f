//! The prints that `demo` writes, read back as text and compared with the report beside them.

use std::path::Path;

use assert_cmd::Command;

fn demo(within: &Path, fixed: bool) -> (serde_json::Value, Vec<(&'static str, String)>) {
    let into = within.join("paper");
    let mut command = Command::new(env!("CARGO_BIN_EXE_tallywatt"));
    command.args(["demo", "--into"]).arg(&into);
    if fixed {
        command.arg("--fixed");
    }
    command.env("LC_ALL", "C").env_remove("LANGUAGE");
    command.current_dir(within).assert().success();
    let report = std::fs::read_to_string(into.join("report.json")).expect("a report");
    let report = serde_json::from_str(&report).expect("JSON");
    let texts = ["labels.pdf", "card.pdf", "cautions.pdf", "worksheet.pdf"]
        .into_iter()
        .map(|name| {
            let text = pdf_extract::extract_text(into.join(name)).expect("text");
            (name, text.chars().filter(|c| !c.is_whitespace()).collect())
        })
        .collect();
    (report, texts)
}

fn list<'a>(report: &'a serde_json::Value, field: &str) -> &'a [serde_json::Value] {
    report[field].as_array().map_or(&[], Vec::as_slice)
}

#[test]
fn every_finding_of_the_report_is_on_the_cautions_and_the_worksheet() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let (report, texts) = demo(dir.path(), false);
    let findings = list(&report, "findings");
    assert!(!findings.is_empty());
    for finding in findings {
        let code = finding["code"].as_str().expect("a code");
        for (name, text) in &texts[2..] {
            assert!(text.contains(code), "{code} on {name}");
        }
    }
    assert!(texts[0].1.contains("DONOTUSE"), "{}", texts[0].1);
}

#[test]
fn every_receptacle_of_the_report_has_a_label_and_a_place_on_the_card() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let (report, texts) = demo(dir.path(), true);
    let limits = list(&report, "limits");
    assert!(!limits.is_empty());
    for limit in limits {
        let id = limit["id"].as_str().expect("an id");
        for (name, text) in &texts {
            if *name != "cautions.pdf" {
                assert!(text.contains(id), "{id} on {name}");
            }
        }
    }
}

/// A card of several sheets is announced once, with the number of sheets in its file. A card of one sheet is not.
#[test]
fn a_card_of_several_sheets_is_said_to_be() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let plan = dir.path().join("plan.toml");
    std::fs::write(&plan, tallywatt::plan::demo::WEEKEND).expect("a plan");
    let printed = |size: &str, languages: &str| {
        let into = dir.path().join(size);
        let mut command = Command::new(env!("CARGO_BIN_EXE_tallywatt"));
        command.arg("print").arg(&plan).arg("--into").arg(&into);
        command.args(["--only", "card", "--card", size]);
        command.args(["--print-language", languages]);
        command.env("LC_ALL", "C").env_remove("LANGUAGE");
        let output = command.assert().success().get_output().stdout.clone();
        let paths = std::fs::read_dir(&into).expect("a folder").map(|entry| entry.expect("an entry").path());
        let sheets = paths.filter(|path| path.extension().is_some_and(|it| it == "pdf")).map(|path| {
            let pdf = std::fs::read(path).expect("a file");
            let pdf = pdf_extract::Document::load_mem(&pdf).expect("a PDF");
            pdf.get_pages().len()
        });
        let sheets = sheets.max().expect("a card");
        (String::from_utf8(output).expect("text"), sheets)
    };
    let (said, sheets) = printed("pocket", "en,de");
    assert!(sheets > 1, "the demo fits on a pocket card now: take a longer plan");
    let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
    assert_eq!(said.matches(&format!("The card takes {sheets} sheets")).count(), 1, "{said}");
    assert!(said.contains("--card half"), "{said}");
    let (said, pages) = printed("sheet", "en");
    assert_eq!((pages, said.contains("The card takes")), (2, false), "{said}");
}

/// The worksheet lists the changes that `mend` suggests for the same plan, in the same order.
#[test]
fn the_worksheet_has_the_changes_that_mend_tells() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let (_, texts) = demo(dir.path(), false);
    let (_, worksheet) = texts.last().expect("four prints");
    let mut mend = Command::new(env!("CARGO_BIN_EXE_tallywatt"));
    mend.arg("mend").arg(dir.path().join("paper/plan.toml"));
    mend.env("LC_ALL", "C").env_remove("LANGUAGE");
    let output = mend.output().expect("it runs");
    let said = String::from_utf8(output.stdout).expect("text");
    // The numbered list ends at the empty line before the tally.
    let (list, _) = said.split_once("\n\n").expect("a list and what it does");
    let mut changes: Vec<String> = Vec::new();
    for line in list.lines().skip(1) {
        let numbered = line.trim_start().split_once(". ");
        match numbered.filter(|(number, _)| number.parse::<usize>().is_ok()) {
            Some((_, text)) => changes.push(text.to_owned()),
            None => changes.last_mut().expect("a change").push_str(line),
        }
    }
    assert!(changes.len() > 2, "{said}");
    let mut rest = worksheet.as_str();
    for change in changes {
        let text = change.split(" (").next().expect("a text");
        let text: String = text.chars().filter(|c| !c.is_whitespace()).collect();
        let at = rest.find(&text);
        rest = &rest[at.unwrap_or_else(|| panic!("{text} in {worksheet}"))..];
    }
}

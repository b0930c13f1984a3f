//! Commands that ask nothing: their output, their files and their exit statuses.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;
use tallywatt::plan::demo::{MENDED, WEEKEND};

/// A full disk is reported by a message and by exit status 73, even when the output is help.
#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_is_told() {
    let dir = folder();
    plan(dir.path(), "mended.toml", MENDED);
    for arguments in [&["--help"][..], &["--version"], &["check", "mended.toml"]] {
        let full = std::fs::File::options().write(true).open("/dev/full").expect("a full disk");
        let output = std::process::Command::new(env!("CARGO_BIN_EXE_tallywatt"))
            .args(arguments)
            .current_dir(dir.path())
            .env("LC_ALL", "C")
            .env_remove("LANGUAGE")
            .stdout(full)
            .output()
            .expect("the program starts");
        let said = text(&output.stderr);
        assert_eq!(output.status.code(), Some(73), "{arguments:?}: {said}");
        assert!(said.contains("no room left") && !said.contains("os error"), "{said}");
    }
}

/// `--color` decides about colors. `auto` means none here, because the output is not a terminal.
#[test]
fn colors_are_there_when_asked_for() {
    let dir = folder();
    plan(dir.path(), "weekend.toml", WEEKEND);
    plan(dir.path(), "bad.toml", "x = 1");
    for (choice, coloured) in [("always", true), ("never", false), ("auto", false)] {
        for name in ["weekend.toml", "bad.toml"] {
            let output = tallywatt(&["check", "--color", choice, name], dir.path());
            let said = text(&output.stdout) + &text(&output.stderr);
            assert_eq!(said.contains('\u{1b}'), coloured, "{choice}, {name}: {said}");
        }
    }
}

/// Names of files and arguments are escaped where they would steer the terminal.
#[test]
fn nothing_that_is_named_steers_the_terminal() {
    let dir = folder();
    plan(dir.path(), "\u{1b}[2Jbad.toml", "x = 1");
    plan(dir.path(), "mended.toml", MENDED);
    for arguments in [
        &["check", "\u{1b}[2Jbad.toml"][..],
        &["check", "\u{1b}[2Jnone.toml"],
        &["\u{1b}[2J"],
        &["check", "mended.toml", "--format", "\u{1b}[2J"],
        &["--language", "\u{1b}[2J"],
        &["explain", "\u{1b}[2J"],
        &["may", "mended.toml", "\u{1b}[2J"],
        &["mend", "mended.toml", "--into", "none/\u{1b}[2J"],
        &["print", "mended.toml", "--into", "d", "--stock", "\u{1b}[2J"],
        &["--answers", "\u{1b}[2J"],
    ] {
        let output = Command::new(env!("CARGO_BIN_EXE_tallywatt"))
            .args(arguments)
            .current_dir(dir.path())
            .env("CLICOLOR_FORCE", "1")
            .env_remove("NO_COLOR")
            .env("LC_ALL", "C")
            .env_remove("LANGUAGE")
            .output()
            .expect("the program starts");
        let said = text(&output.stdout) + &text(&output.stderr);
        assert!(!said.contains("\u{1b}[2J") && said.contains("\\u{1b}[2J"), "{arguments:?}: {said:?}");
    }
}

/// Runs the program without color, with its own data folder and 80 columns wide.
fn tallywatt(arguments: &[&str], within: &Path) -> Output {
    Command::new(env!("CARGO_BIN_EXE_tallywatt"))
        .args(arguments)
        .current_dir(within)
        .env("NO_COLOR", "1")
        .env("COLUMNS", "80")
        .env("LC_ALL", "C")
        .env_remove("LANGUAGE")
        .env("TALLYWATT_DATA", within.join("data"))
        .output()
        .expect("the program starts")
}

fn folder() -> tempfile::TempDir {
    tempfile::tempdir().expect("a temporary folder")
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).expect("the program writes UTF-8")
}

/// Writes a plan file.
fn plan(within: &Path, name: &str, text: &str) -> PathBuf {
    let path = within.join(name);
    std::fs::write(&path, text).expect("the folder can be written");
    path
}

/// Returns the weekend plan with one value changed.
fn weekend_with(from: &str, to: &str) -> String {
    assert!(WEEKEND.contains(from), "the demo plan has {from}");
    WEEKEND.replacen(from, to, 1)
}

/// Usual plans: eleven sound ones (`s`) and twelve with one usual fault (`b`). A sound plan has no danger, no warning
/// and at most three cautions and notices, and its `check` fits on a small laptop's screen of 48 lines.
#[test]
fn a_sound_plan_has_little_to_say() {
    const SCREEN: usize = 48;
    let plans = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/plans/usual");
    let mut paths: Vec<PathBuf> =
        std::fs::read_dir(&plans).expect("the folder is there").map(|entry| entry.expect("a file").path()).collect();
    paths.sort();
    assert_eq!(paths.len(), 23);
    let dir = folder();
    let mut table = String::new();
    for path in paths {
        let name = path.file_stem().expect("a name").to_string_lossy();
        let of = path.to_string_lossy();
        let json = tallywatt(&["check", "--format", "json", &of], dir.path());
        let report: serde_json::Value = serde_json::from_slice(&json.stdout).expect("JSON");
        let troubles = report["troubles"].as_array().expect("a list");
        let counts = ["danger", "warning", "caution", "notice"]
            .map(|signal| troubles.iter().filter(|it| it["signal"] == signal).count());
        // Each trouble by the rules that its remedy clears. Its text comes from the first of them.
        let codes = |trouble: &serde_json::Value| -> String {
            let findings = trouble["findings"].as_array().expect("a list").iter();
            let codes = findings.map(|at| {
                let at = usize::try_from(at.as_u64().expect("a number")).expect("a place");
                report["findings"][at]["code"].as_str().expect("a code").to_owned()
            });
            codes.collect::<Vec<String>>().join("+")
        };
        let told: Vec<String> = troubles.iter().map(codes).collect();
        // No two remedies have the same text.
        let long = text(&tallywatt(&["check", "--long", &of], dir.path()).stdout);
        let mut deeds: Vec<&str> =
            long.split("\n  Do ").skip(1).map(|rest| rest.split("\n\n").next().unwrap_or_default().trim()).collect();
        let all = deeds.len();
        deeds.sort_unstable();
        deeds.dedup();
        assert_eq!(deeds.len(), all, "{name}: {long}");
        assert!(all > 0 || troubles.is_empty(), "{name}: {long}");
        let lines = text(&tallywatt(&["check", &of], dir.path()).stdout).lines().count();
        let told = told.join(" ");
        writeln!(table, "{name}: {counts:?}, {lines} lines: {told}").expect("text is written");
        if name.starts_with('s') {
            let [dangers, warnings, cautions, notices] = counts;
            assert_eq!((dangers, warnings), (0, 0), "{name}");
            assert!(cautions + notices <= 3, "{name}: {counts:?}");
            assert!(lines <= SCREEN, "{name}: {lines} lines");
        }
    }
    insta::assert_snapshot!(table);
}

#[test]
fn the_demo_writes_everything_and_says_what_matters() {
    let dir = folder();
    let output = tallywatt(&["demo"], dir.path());
    assert!(output.status.success(), "{}", text(&output.stderr));
    let said = text(&output.stdout);
    let into = dir.path().join("tallywatt-demo");
    for name in ["labels.pdf", "card.pdf", "cautions.pdf", "worksheet.pdf", "report.json", "plan.toml"] {
        assert!(into.join(name).is_file(), "{name} is written");
        assert!(said.contains(name), "{name} is named in {said}");
    }
    assert!(said.contains("tallywatt-demo"), "it says where: {said}");
    let lines = ["  1. ", "  2. ", "  3. "]
        .map(|start| said.lines().find(|line| line.starts_with(start)).unwrap_or_else(|| panic!("{start} in {said}")));
    assert!(lines[0].contains("Exhaust is only"), "{}", lines[0]);
    // The written plan is the printed plan: it gives the same report.
    let again = tallywatt(&["check", "--format", "json", "tallywatt-demo/plan.toml"], dir.path());
    assert_eq!(again.status.code(), Some(2), "the weekend has a danger");
    assert_eq!(again.stdout, std::fs::read(into.join("report.json")).expect("it was written"));
}

#[test]
fn the_mended_demo_has_no_danger_and_no_warning_left() {
    let dir = folder();
    let output = tallywatt(&["demo", "--fixed"], dir.path());
    assert!(output.status.success(), "{}", text(&output.stderr));
    let check = tallywatt(&["check", "--format", "json", "tallywatt-demo-fixed/plan.toml"], dir.path());
    let report: serde_json::Value = serde_json::from_slice(&check.stdout).expect("JSON");
    let left: Vec<(&str, &str)> = report["findings"]
        .as_array()
        .expect("findings")
        .iter()
        .map(|finding| (finding["signal"].as_str().expect("signal"), finding["code"].as_str().expect("code")))
        .filter(|(signal, _)| ["danger", "warning"].contains(signal))
        .collect();
    assert_eq!(left, []);
    assert_eq!(check.status.code(), Some(0));
}

#[test]
fn the_same_plan_gives_the_same_bytes() {
    let dir = folder();
    for into in ["one", "two"] {
        assert!(tallywatt(&["demo", "--into", into], dir.path()).status.success());
    }
    for name in ["labels.pdf", "card.pdf", "cautions.pdf", "worksheet.pdf", "report.json", "plan.toml"] {
        let read = |into: &str| std::fs::read(dir.path().join(into).join(name)).expect("written");
        assert!(read("one") == read("two"), "{name} differs between two runs");
    }
}

#[test]
fn check_says_what_why_do_and_by_what_authority_worst_first() {
    let dir = folder();
    plan(dir.path(), "weekend.toml", WEEKEND);
    let output = tallywatt(&["check", "weekend.toml"], dir.path());
    assert_eq!(output.status.code(), Some(2));
    insta::assert_snapshot!(text(&output.stdout));
}

/// The README shows the current output word for word.
#[test]
fn the_readme_shows_what_check_and_mend_print() {
    let dir = folder();
    plan(dir.path(), "weekend.toml", WEEKEND);
    let page = include_str!("../../README.md");
    let shown = page.split("```text\n").skip(1);
    let shown: Vec<&str> = shown.filter_map(|rest| rest.split("```").next()).collect();
    let calls = [&["check", "--long", "weekend.toml"][..], &["mend", "weekend.toml"]];
    assert_eq!(shown.len(), calls.len());
    for (call, shown) in calls.into_iter().zip(shown) {
        let printed = text(&tallywatt(call, dir.path()).stdout).replace('\u{a0}', " ");
        assert!(printed.contains(shown), "{shown}\n\n{printed}");
    }
}

#[test]
fn exit_statuses_are_those_of_the_contract() {
    let dir = folder();
    plan(dir.path(), "mended.toml", MENDED);
    plan(dir.path(), "weekend.toml", WEEKEND);
    plan(dir.path(), "bad.toml", "format = 1\nnonsense = 3\n");
    let status = |arguments: &[&str]| tallywatt(arguments, dir.path()).status.code();
    assert_eq!(status(&["check", "weekend.toml"]), Some(2), "a danger");
    assert_eq!(status(&["check", "mended.toml"]), Some(0), "nothing above a caution");
    plan(dir.path(), "no-alarm.toml", &MENDED.replacen("co_alarm = true", "co_alarm = false", 1));
    assert_eq!(status(&["check", "no-alarm.toml"]), Some(1), "a warning");
    assert_eq!(status(&["check", "mended.toml", "weekend.toml"]), Some(2), "the worst of several");
    assert_eq!(status(&["check", "bad.toml"]), Some(65), "a bad plan");
    assert_eq!(status(&["check", "absent.toml"]), Some(65), "no plan");
    assert_eq!(status(&["check"]), Some(64), "no argument");
    assert_eq!(status(&["explain", "NONE999"]), Some(64), "no such rule");
    assert_eq!(status(&["print", "mended.toml", "--into", "mended.toml"]), Some(73), "cannot write");
    assert_eq!(status(&["--help"]), Some(0), "help is asked for");
}

#[test]
fn an_interview_without_a_terminal_is_refused_with_the_other_way() {
    let dir = folder();
    let output = tallywatt(&[], dir.path());
    assert_eq!(output.status.code(), Some(64));
    let said = text(&output.stderr);
    assert!(said.contains("tallywatt check"), "it names the plan-file way: {said}");
}

#[test]
fn a_print_that_cannot_be_written_leaves_the_old_set_alone() {
    let dir = folder();
    plan(dir.path(), "mended.toml", MENDED);
    let output = tallywatt(&["print", "mended.toml", "--into", "paper"], dir.path());
    assert!(output.status.success());
    // The message says what is left of the last label sheet.
    let said = text(&output.stdout);
    let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(said.contains("There are 17 labels") && said.contains("--start-at 6"), "{said}");
    let before = std::fs::read(dir.path().join("paper/card.pdf")).expect("written");
    // A label past the end of the sheet is a usage error, not a print error.
    let past = ["print", "mended.toml", "--into", "paper", "--start-at", "9"];
    let output = tallywatt(&past, dir.path());
    assert_eq!(output.status.code(), Some(64));
    // No built-in font can show this name, so the plan is refused.
    let bad = weekend_with("name = \"Kettle\"", "name = \"水壶\"");
    plan(dir.path(), "bad-name.toml", &bad);
    let output = tallywatt(&["print", "bad-name.toml", "--into", "paper"], dir.path());
    assert_eq!(output.status.code(), Some(65));
    let said = text(&output.stderr);
    assert!(said.contains("水壶"), "it names the text: {said}");
    assert_eq!(before, std::fs::read(dir.path().join("paper/card.pdf")).expect("still there"));
}

/// Templates that ask for data unknown to this version come from another one. The error names their folder and says how
/// to start over.
#[test]
fn templates_of_another_version_are_told_with_their_folder() {
    let dir = folder();
    plan(dir.path(), "mended.toml", MENDED);
    std::fs::create_dir(dir.path().join("ours")).expect("a folder");
    let old = "#let data = json(\"data.json\")\n#data.no-longer-told\n";
    std::fs::write(dir.path().join("ours/card.typ"), old).expect("a template");
    let output = tallywatt(&["print", "mended.toml", "--into", "paper", "--templates", "ours"], dir.path());
    assert_eq!(output.status.code(), Some(73));
    let said = text(&output.stderr);
    assert!(said.contains("card.typ") && said.contains("in ours might be from another version"), "{said}");
    assert!(said.contains("tallywatt templates --into DIR"), "{said}");
}

#[test]
fn json_amounts_are_exact_numbers_with_units() {
    let dir = folder();
    plan(dir.path(), "weekend.toml", WEEKEND);
    let output = tallywatt(&["check", "--format", "json", "weekend.toml"], dir.path());
    let report: serde_json::Value = serde_json::from_slice(&output.stdout).expect("JSON");
    // Every field that the format promises is there.
    for field in ["format", "findings", "limits", "usable", "drops", "sharing", "energy", "noise", "assumed"] {
        assert!(report.get(field).is_some(), "{field}");
    }
    let front = &report["limits"][0];
    assert_eq!(front["id"], "front");
    // A breaker seen to trip at 17 A counts for 16 A for a short time and 80 % of that for hours.
    assert_eq!(front["short_amps"]["amount"].to_string(), "16");
    assert_eq!(front["continuous_amps"]["amount"].to_string(), "12.8");
    assert_eq!(front["continuous_watts"]["amount"].to_string(), "1536");
    assert_eq!(front["set_by"]["reason"], "trips-early");
}

#[test]
fn several_plans_give_one_report_a_line() {
    let dir = folder();
    plan(dir.path(), "a.toml", WEEKEND);
    plan(dir.path(), "b.toml", MENDED);
    let output = tallywatt(&["check", "--format", "json", "a.toml", "b.toml"], dir.path());
    let said = text(&output.stdout);
    assert_eq!(said.lines().count(), 2);
    for line in said.lines() {
        let report: serde_json::Value = serde_json::from_str(line).expect("JSON");
        assert_eq!(report["format"], 3);
    }
}

/// Each finding has its sentences in the reader's language, its place in the file and its remedy.
#[test]
fn findings_for_programs_are_told_and_placed() {
    let dir = folder();
    plan(dir.path(), "weekend.toml", WEEKEND);
    let call = |language| {
        let call = ["--language", language, "check", "--format", "json", "weekend.toml"];
        serde_json::from_slice::<serde_json::Value>(&tallywatt(&call, dir.path()).stdout).expect("JSON")
    };
    let (report, german) = (call("en"), call("de"));
    let lines: Vec<&str> = WEEKEND.lines().collect();
    let findings = report["findings"].as_array().expect("a list");
    for (at, finding) in findings.iter().enumerate() {
        for part in ["title", "why", "todo"] {
            let told = |report: &serde_json::Value| report["findings"][at]["told"][part].as_str().map(str::to_owned);
            assert!(told(&report).is_some_and(|text| !text.is_empty()), "{finding}");
            assert_ne!(told(&report), told(&german), "{finding}");
        }
        let place = &finding["place"];
        let line = usize::try_from(place["line"].as_u64().expect("a line")).expect("a line");
        let part = place["part"].as_str().expect("a part");
        let own = format!("id = \"{part}\"");
        let heading = lines[line - 1];
        assert!(heading == format!("[{part}]") || lines[line..line + 3].contains(&&*own), "{place}: {heading}");
    }
    // The end of a cord, a load, the site and the generator.
    let part = |code: &str| findings.iter().find(|it| it["code"] == code).map(|it| it["place"]["part"].clone());
    assert_eq!(part("SHOCK001"), Some("tents".into()));
    assert_eq!(part("HEALTH001"), Some("cpap".into()));
    assert_eq!(part("AIR001"), Some("site".into()));
    assert_eq!(part("FUEL001"), Some("generator".into()));
}

/// `--fail-on` sets the mildest signal that makes the exit status nonzero.
#[test]
fn a_check_fails_on_what_it_is_told_to() {
    let dir = folder();
    plan(dir.path(), "danger.toml", WEEKEND);
    plan(dir.path(), "warning.toml", &MENDED.replacen("co_alarm = true", "co_alarm = false", 1));
    plan(dir.path(), "caution.toml", MENDED);
    for (name, danger, warning, caution) in [("danger", 2, 2, 2), ("warning", 0, 1, 1), ("caution", 0, 0, 1)] {
        for (least, status) in [("danger", danger), ("warning", warning), ("caution", caution)] {
            let output = tallywatt(&["check", "--fail-on", least, &format!("{name}.toml")], dir.path());
            assert_eq!(output.status.code(), Some(status), "{name}.toml on {least}");
        }
    }
}

/// Every call shown in the help or the README works on the demo plan exactly as it is shown.
#[test]
fn the_examples_of_help_work() {
    let dir = folder();
    let page = |call: &[&str]| text(&tallywatt(call, dir.path()).stdout);
    let all = page(&["--help"]);
    let names = all.lines().skip_while(|line| !line.starts_with("Commands")).skip(1);
    let names = names.take_while(|line| line.starts_with("  ")).filter(|line| !line.starts_with("     "));
    let names: Vec<&str> = names.filter_map(|line| line.split_whitespace().next()).collect();
    assert!(names.len() > 10, "{all}");
    let pages = names.iter().map(|name| {
        // Both ways give the same long page. Only the long page lists exit statuses.
        let long = page(&["help", name]);
        assert_eq!(long, page(&[name, "--help"]), "{name}");
        let short = page(&[name, "-h"]);
        assert!(long.contains("Exit status") && !short.contains("Exit status"), "{name}");
        assert!(short.len() < long.len(), "{name}");
        long
    });
    let mut calls: Vec<String> = pages
        .chain([all.clone()])
        .flat_map(|page| {
            page.lines().filter_map(|line| line.strip_prefix("  tallywatt ").map(str::to_owned)).collect::<Vec<_>>()
        })
        .collect();
    let page = include_str!("../../README.md");
    calls.extend(page.split("`tallywatt ").skip(1).filter_map(|rest| rest.split('`').next()).map(str::to_owned));
    calls.sort_unstable();
    calls.dedup();
    assert!(calls.len() > names.len(), "{calls:?}");
    for call in calls {
        let at = folder();
        plan(at.path(), "plan.toml", WEEKEND);
        plan(at.path(), "old.toml", MENDED);
        plan(at.path(), "new.toml", WEEKEND);
        plan(at.path(), "answers.txt", "check\nleave\n");
        let output = Command::new(env!("CARGO_BIN_EXE_tallywatt"))
            .args(call.split(' '))
            .current_dir(at.path())
            .env("LC_ALL", "C")
            .env_remove("LANGUAGE")
            .env("TALLYWATT_DATA", at.path().join("data"))
            .write_stdin("check\nleave\n")
            .output()
            .expect("the program starts");
        let said = text(&output.stdout) + &text(&output.stderr);
        assert!(matches!(output.status.code(), Some(0..=2)), "{call}: {said}");
    }
}

/// Near misses are reported with what was probably meant.
#[test]
fn slips_are_told_with_what_was_meant() {
    let dir = folder();
    plan(dir.path(), "mended.toml", MENDED);
    for (call, hint) in [
        (&["explain", "AIR01"][..], "Did you mean AIR001?"),
        (&["explain", "monoxide"], "Did you mean carbon-monoxide-distance?"),
        (&["print", "mended.toml", "--into", "d", "--stock", "letter30"], "Did you mean letter-30?"),
        (&["help", "chek"], "Did you mean check?"),
        (&["mended.toml"], "tallywatt check mended.toml"),
        (&["may", "kettle", "mended.toml", "lamps"], "tallywatt may mended.toml kettle lamps"),
        (&["may", "mended.toml", "coffee maker"], "“Cooler”"),
        (&["may", "mended.toml", "strng lights"], "“String lights”"),
        (&["print", "mended.toml", "--into", "d", "--date", "2026-02-30"], "YYYY-MM-DD, such as 2026-07-04"),
        (&["learned", "mended.toml", "front", "hot", "--date", "4 July"], "YYYY-MM-DD, such as 2026-07-04"),
    ] {
        let output = tallywatt(call, dir.path());
        let said = text(&output.stderr);
        assert!(matches!(output.status.code(), Some(64 | 65)), "{call:?}: {said}");
        assert!(said.split_whitespace().collect::<Vec<_>>().join(" ").contains(hint), "{call:?}: {said}");
        assert!(!dir.path().join("d").exists());
    }
    let today = tallywatt(&["learned", "mended.toml", "front", "hot", "--date", "today"], dir.path());
    assert!(matches!(today.status.code(), Some(0..=2)), "{}", text(&today.stderr));
}

#[test]
fn help_is_a_reference() {
    let dir = folder();
    let mut all = String::new();
    for arguments in [
        &["--help"][..],
        &["demo", "--help"],
        &["check", "--help"],
        &["print", "--help"],
        &["may", "--help"],
        &["mend", "--help"],
        &["explain", "--help"],
    ] {
        all.push_str(&text(&tallywatt(arguments, dir.path()).stdout));
        all.push_str("\n----\n");
    }
    insta::assert_snapshot!(all);
}

#[test]
fn a_rule_is_explained_by_code_and_by_name() {
    let dir = folder();
    let by_code = tallywatt(&["explain", "AIR001"], dir.path());
    let by_name = tallywatt(&["explain", "carbon-monoxide-distance"], dir.path());
    assert!(by_code.status.success());
    assert_eq!(by_code.stdout, by_name.stdout);
    let said = text(&by_code.stdout);
    // The page is formatted for a terminal, without Markdown marks.
    assert!(said.contains("\nSources\n") && !said.contains('#'), "{said}");
    // Figures are in the reader's units only.
    assert!(said.contains("25 ft") && !said.contains(" m)"), "{said}");
}

#[test]
fn mend_writes_a_new_plan_that_the_check_finds_clear_and_leaves_the_old_one() {
    let dir = folder();
    plan(dir.path(), "weekend.toml", WEEKEND);
    let output = tallywatt(&["mend", "weekend.toml", "--into", "new.toml"], dir.path());
    let said = text(&output.stdout);
    let words = said.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains("After these steps no dangers"), "{said}");
    // A wish without an outlet is named.
    assert!(words.contains("No outlet for Fan no usable outlet is free"), "{said}");
    assert!(said.contains("new.toml"), "{said}");
    assert!(words.contains("Your gear is not changed yet"), "{said}");
    let old = std::fs::read_to_string(dir.path().join("weekend.toml")).expect("still there");
    assert_eq!(old, WEEKEND);
    // Comments beside unchanged values are kept.
    let new = std::fs::read_to_string(dir.path().join("new.toml")).expect("written");
    let notes = |text: &str| text.lines().filter(|line| line.trim_start().starts_with('#')).count();
    assert!(notes(WEEKEND) > 3);
    assert_eq!(notes(&new), notes(WEEKEND), "{new}");
    let check = tallywatt(&["check", "--format", "json", "new.toml"], dir.path());
    assert_eq!(check.status.code(), output.status.code());
    assert_ne!(check.status.code(), Some(2), "no danger is left");
    let report: serde_json::Value = serde_json::from_slice(&check.stdout).expect("JSON");
    // Every load that must run has its place. The fan and the air pump are wishes.
    let unplaced = report["sharing"]["unplaced"].as_array().expect("a list");
    let wish = |lost: &serde_json::Value| lost["load"] == "fan" || lost["load"] == "pump";
    assert!(unplaced.iter().all(wish), "{unplaced:?}");

    // No file is replaced, neither the old plan nor another.
    let before = std::fs::read(dir.path().join("new.toml")).expect("written");
    for taken in ["new.toml", "weekend.toml"] {
        let again = tallywatt(&["mend", "weekend.toml", "--into", taken], dir.path());
        assert_eq!(again.status.code(), Some(73), "{taken}");
        assert!(text(&again.stderr).contains(taken));
    }
    assert_eq!(before, std::fs::read(dir.path().join("new.toml")).expect("there"));
}

#[test]
fn mend_says_all_of_it_and_gives_the_same_as_json() {
    let dir = folder();
    plan(dir.path(), "weekend.toml", WEEKEND);
    let said = tallywatt(&["mend", "weekend.toml", "--warnings"], dir.path());
    insta::assert_snapshot!(text(&said.stdout));
    let json = tallywatt(&["mend", "weekend.toml", "--format", "json"], dir.path());
    let report: serde_json::Value = serde_json::from_slice(&json.stdout).expect("JSON");
    let sharing = &report["sharing"];
    let mended = &sharing["mended"];
    assert_eq!(mended["before"]["dangers"], 4);
    assert_eq!(mended["after"]["dangers"], 0);
    assert_eq!(mended["after"]["unserved_musts"], 0);
    assert_eq!(mended["proven"], true);
    let costs: u64 = sharing["repairs"]
        .as_array()
        .expect("repairs")
        .iter()
        .map(|repair| repair["cost"].as_u64().expect("a cost"))
        .sum();
    assert_eq!(mended["cost"], costs);
    // `check` itself looks for no repairs.
    let check = tallywatt(&["check", "weekend.toml", "--format", "json"], dir.path());
    let report: serde_json::Value = serde_json::from_slice(&check.stdout).expect("JSON");
    assert_eq!(report["sharing"]["repairs"], serde_json::json!([]));
}

#[test]
fn mend_changes_nothing_where_nothing_is_wrong() {
    let dir = folder();
    plan(dir.path(), "mended.toml", MENDED);
    let output = tallywatt(&["mend", "mended.toml"], dir.path());
    assert_eq!(output.status.code(), Some(0));
    let said = text(&output.stdout);
    let words: Vec<&str> = said.split_whitespace().collect();
    assert!(words.join(" ").contains("Nothing is changed"), "{said}");
    // An unchanged plan is not written, and the output does not call it changed.
    let output = tallywatt(&["mend", "mended.toml", "--into", "new.toml"], dir.path());
    assert_eq!(output.status.code(), Some(0));
    let said = text(&output.stdout);
    assert!(said.contains("we did not write new.toml"), "{said}");
    assert!(!said.contains("We wrote the changed plan"), "{said}");
    assert!(!dir.path().join("new.toml").exists());
}

/// A demo plan that the user changed is theirs and is kept. An unchanged one is replaced, even by one in another
/// language.
#[test]
fn a_changed_demo_plan_is_never_written_over() {
    let dir = folder();
    let demo = |language: &str| tallywatt(&["demo", "--into", "d", "--language", language], dir.path());
    assert_eq!(demo("de").status.code(), Some(0));
    assert_eq!(demo("en").status.code(), Some(0));
    let path = dir.path().join("d/plan.toml");
    let ours = std::fs::read_to_string(&path).expect("the plan");
    let theirs = ours.replacen("50 ft", "60 ft", 1);
    assert_ne!(ours, theirs);
    std::fs::write(&path, &theirs).expect("a change");
    std::fs::write(dir.path().join("d/card.pdf"), "a card").expect("a card");
    let output = demo("en");
    assert_eq!(output.status.code(), Some(73));
    assert!(text(&output.stderr).contains("not as we wrote it"));
    assert_eq!(std::fs::read_to_string(&path).expect("the plan"), theirs);
    let card = std::fs::read(dir.path().join("d/card.pdf")).expect("the card");
    assert_eq!(card, b"a card");
}

/// A file that is not as this program wrote it is kept, and so is everything else in its folder.
#[test]
fn prints_are_written_over_nothing_of_the_users() {
    let dir = folder();
    plan(dir.path(), "mended.toml", MENDED);
    let into = dir.path().join("paper");
    let print = |into: &str| {
        let output = tallywatt(&["print", "mended.toml", "--only", "cautions", "--into", into], dir.path());
        (output.status.code(), text(&output.stderr))
    };
    assert_eq!(print("paper"), (Some(0), String::new()));
    assert_eq!(print("paper"), (Some(0), String::new()));
    // Another program adds a note to the file.
    let path = into.join("cautions.pdf");
    let noted = [std::fs::read(&path).expect("the cautions"), b"% a note".to_vec()].concat();
    std::fs::write(&path, &noted).expect("a note");
    let (status, said) = print("paper");
    assert_eq!(status, Some(73));
    assert!(said.contains("cautions.pdf is not as we wrote it") && said.contains("Name another folder"), "{said}");
    assert_eq!(std::fs::read(&path).expect("the cautions"), noted);
    // A folder that somebody else filled, and a file in place of a folder.
    plan(dir.path(), "cautions.pdf", "theirs");
    assert_eq!(print(".").0, Some(73));
    assert_eq!(std::fs::read(dir.path().join("cautions.pdf")).expect("there"), b"theirs");
    let (status, said) = print("mended.toml");
    assert_eq!(status, Some(73));
    assert!(said.contains("is a file, not a folder") && !said.contains("os error"), "{said}");
}

/// A trip at 13 A goes into the plan. The file keeps its comments and gains a dated line, and the labels to print again
/// are those that differ between the old and new plans.
#[test]
fn what_was_learned_goes_into_the_plan() {
    let dir = folder();
    plan(dir.path(), "old.toml", MENDED);
    plan(dir.path(), "new.toml", MENDED);
    let learned = ["learned", "new.toml", "--date", "2026-07-04"];
    let learn = |words: &[&str]| {
        let output = tallywatt(&[&learned[..], words].concat(), dir.path());
        let said = text(&output.stdout) + &text(&output.stderr);
        (output.status.code(), said)
    };
    let (status, said) = learn(&["front", "tripped", "at", "13", "A"]);
    assert_eq!(status, Some(0), "{said}");
    insta::assert_snapshot!("learned_tripped", said);
    let file = std::fs::read_to_string(dir.path().join("new.toml")).expect("the plan");
    assert!(file.contains("trips_at = \"13 A\"                   # demo-remark-tripped"), "{file}");
    assert!(file.ends_with("\n# 2026-07-04 front tripped at 13 A\n"), "{file}");
    let output = tallywatt(&["reprint", "old.toml", "new.toml"], dir.path());
    let again = text(&output.stdout);
    assert!(said.contains(again.trim()), "{again} in {said}");
    assert!(again.contains("“front”") && !again.contains("“twist”") && again.contains("the card"), "{again}");
    let output = tallywatt(&["reprint", "old.toml", "old.toml"], dir.path());
    assert!(text(&output.stdout).contains("do not need to print"));
    // Standard input cannot be written back.
    let output = tallywatt(&["learned", "-", "front", "hot"], dir.path());
    assert_eq!(output.status.code(), Some(65));
    assert!(!dir.path().join("-").exists());
    // Nobody has an ammeter at camp.
    let (_, said) = learn(&["box left tripped after twenty minutes"]);
    let told = said.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told.starts_with("The plan has 12.5 A there, and the breaker tripped."), "{said}");
    let file = std::fs::read_to_string(dir.path().join("new.toml")).expect("the plan");
    assert!(file.contains("trips_at = \"12.5 A\""), "{file}");
    // A danger, a bad reading, and words that are not understood and change nothing.
    assert_eq!(learn(&["long", "hot"]).0, Some(2));
    assert_eq!(learn(&["box-left 109 V"]).0, Some(2));
    let before = std::fs::read_to_string(dir.path().join("new.toml")).expect("the plan");
    let (status, said) = learn(&["it broke"]);
    assert_eq!(status, Some(64));
    assert!(said.contains("front tripped at 13 A"), "{said}");
    let after = std::fs::read_to_string(dir.path().join("new.toml")).expect("the plan");
    assert_eq!(before, after);
}

#[test]
fn may_says_yes_or_no_and_why() {
    let dir = folder();
    plan(dir.path(), "mended.toml", MENDED);
    plan(dir.path(), "weekend.toml", WEEKEND);
    let ask = |arguments: &[&str]| {
        let output = tallywatt(&[&["may"], arguments].concat(), dir.path());
        let said = text(&output.stdout) + &text(&output.stderr);
        (output.status.code(), said)
    };
    let (yes, said) = ask(&["mended.toml", "kettle", "lamps", "--while", "Cooler"]);
    assert_eq!(yes, Some(0));
    insta::assert_snapshot!("may_yes", said);
    let (no, said) = ask(&["mended.toml", "kettle", "griddle", "--while", "coolbox"]);
    assert_eq!(no, Some(1));
    insta::assert_snapshot!("may_no", said);
    // No load is allowed while there is a danger, however small.
    let (danger, said) = ask(&["weekend.toml", "lamps"]);
    assert_eq!(danger, Some(1));
    assert!(said.starts_with("NO:") && said.contains("AIR001"), "{said}");
    let (unknown, said) = ask(&["mended.toml", "ketle"]);
    assert_eq!(unknown, Some(64));
    assert!(said.contains("ketle") && said.contains("“kettle”"), "{said}");
    let (_, json) = ask(&["mended.toml", "kettle", "--format", "json"]);
    let answer: serde_json::Value = serde_json::from_str(&json).expect("JSON");
    assert_eq!(answer["may"], true);
    assert_eq!(answer["breakers"][0]["amps"]["amount"].to_string(), "12.5");
}

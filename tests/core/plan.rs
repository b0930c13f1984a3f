//! Invalid plans and the messages about them.

use std::fs;
use std::path::{Path, PathBuf};

use proptest::prelude::*;
use tallywatt::plan::{self, demo, read};
use tallywatt::words::Words;
use tallywatt::words::problem::{Look, render};

fn bad_plans() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/plans/bad");
    let mut paths: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|end| end == "toml"))
        .collect();
    paths.sort();
    paths
}

#[test]
fn every_bad_plan_is_explained() {
    let words = Words::english();
    let paths = bad_plans();
    assert!(paths.len() >= 15);
    for path in paths {
        let name = path.file_name().unwrap().to_str().unwrap();
        let text = plan::store::read_text(&path).unwrap();
        let problems = read(&text).expect_err(name);
        assert!(!problems.0.is_empty(), "{name}");
        let shown = render(&words, name, &text, &problems, Look::default());
        let name = name.trim_end_matches(".toml");
        insta::with_settings!({ snapshot_path => "../plans/said", prepend_module_to_snapshot => false, omit_expression => true }, {
            insta::assert_snapshot!(name, shown);
        });
    }
    assert_eq!(words.faults(), Vec::<String>::new());
}

/// Reads a text and renders its problems, if any. Neither may panic, and nothing may be refused without a reason.
fn read_and_show(text: &str) {
    if let Err(problems) = read(text) {
        assert!(!problems.0.is_empty(), "refused without a reason");
        let words = Words::english();
        let shown = render(&words, "plan.toml", text, &problems, Look::default());
        assert!(!shown.is_empty());
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(120))]

    #[test]
    fn no_text_makes_it_panic(text in "\\PC{0,200}") {
        read_and_show(&text);
    }

    #[test]
    fn no_mixture_of_its_own_signs_makes_it_panic(
        text in "([a-z_.]{1,6}|[\\[\\]{}=\",#\\\\'\n\r\t .-]|\\[\\[cord\\]\\]\n|id = \"a\"\n|from = \"a\"\n|[0-9:]{1,4}|é|\u{202e}){0,60}"
    ) {
        read_and_show(&text);
        read_and_show(&format!("format = 1\n{text}"));
    }

    #[test]
    fn no_damage_to_a_plan_makes_it_panic(
        which in any::<bool>(),
        from in any::<prop::sample::Index>(),
        length in 0..30_usize,
        put in "(\\PC{0,4}|\"|\n|\\[|-|0|\\\\)",
    ) {
        let text = if which { demo::WEEKEND } else { demo::MENDED };
        let ends: Vec<usize> = text.char_indices().map(|(at, _)| at).collect();
        let start = from.index(ends.len());
        let end = (start + length).min(ends.len() - 1);
        let damaged = format!("{}{put}{}", &text[..ends[start]], &text[ends[end]..]);
        read_and_show(&damaged);
    }

    #[test]
    fn no_swap_of_values_makes_it_panic(
        a in any::<prop::sample::Index>(),
        b in any::<prop::sample::Index>(),
    ) {
        let mut lines: Vec<&str> = demo::WEEKEND.lines().collect();
        let (a, b) = (a.index(lines.len()), b.index(lines.len()));
        lines.swap(a, b);
        read_and_show(&lines.join("\n"));
    }
}

#[test]
fn deep_nesting_and_long_lines_are_survived() {
    read_and_show(&"[".repeat(100_000));
    read_and_show(&format!("a = {}", "[".repeat(20_000)));
    read_and_show(&format!("a = {}", "{b=".repeat(20_000)));
    read_and_show(&format!("format = 1\nx = \"{}\"", "y".repeat(1_000_000)));
    read_and_show(&"a.".repeat(50_000));
    read_and_show(&"format = 1\n[[load]]\n".repeat(5000));
}

/// Large files of the slowest kinds are each refused quickly. An eighth of the largest size allowed, because tests run
/// unoptimized.
#[test]
fn huge_files_are_refused() {
    let most = usize::try_from(plan::store::LARGEST_PLAN).unwrap() / 8;
    for (start, again) in [
        ("format = 1\n", "[[load]]\nid = \"a\"\n"),
        ("format = 1\n", "[[cord]]\nid = \"a\"\nfrom = \"a\"\n"),
        ("format = 1\n", "[[generator.outlet]]\nshares = \"a\"\n"),
        ("", "= = =\n"),
        ("", "\"\"\" "),
        ("x = [", "a b,"),
        ("format = 1\nx = [", "{a=1},"),
    ] {
        let text = format!("{start}{}", again.repeat((most - start.len()) / again.len()));
        read_and_show(&text);
    }
}

//! What DEVELOPERS.md promises about the code itself, checked against the sources.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// Returns the path below `src` and the code of each source file, without test modules and comments.
fn sources() -> Vec<(String, String)> {
    fn walk(folder: &Path, files: &mut Vec<PathBuf>) {
        for entry in fs::read_dir(folder).expect("a folder of the sources") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                walk(&path, files);
            } else if path.extension().is_some_and(|end| end == "rs") {
                files.push(path);
            }
        }
    }
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut files = Vec::new();
    walk(&root, &mut files);
    files.sort();
    let name = |path: &Path| {
        let within = path.strip_prefix(&root).expect("below the root");
        within.to_string_lossy().replace('\\', "/")
    };
    let texts: Vec<(String, String)> =
        files.iter().map(|path| (name(path), fs::read_to_string(path).expect("a file of the sources"))).collect();
    let of_tests: BTreeSet<String> = texts.iter().flat_map(|(name, text)| modules_of_tests(name, text)).collect();
    texts
        .into_iter()
        .filter(|(name, _)| !of_tests.iter().any(|module| in_module(name, module)))
        .map(|(name, text)| {
            let end = text.find("#[cfg(test)]\nmod tests {").unwrap_or(text.len());
            (name, code(&text[..end]))
        })
        .collect()
}

/// Returns the modules that a file declares for tests only, as paths without extension.
fn modules_of_tests(name: &str, text: &str) -> Vec<String> {
    let folder = match name.strip_suffix("mod.rs") {
        Some(folder) => folder.to_owned(),
        None => format!("{}/", name.trim_end_matches(".rs")),
    };
    let mut found = Vec::new();
    let mut lines = text.lines();
    while let Some(line) = lines.next() {
        if line.trim() != "#[cfg(test)]" {
            continue;
        }
        let next = lines.next().unwrap_or_default();
        let declared = next.split_once("mod ").and_then(|(_, rest)| rest.strip_suffix(';'));
        found.extend(declared.map(|module| format!("{folder}{module}")));
    }
    found
}

fn in_module(name: &str, module: &str) -> bool {
    let rest = name.strip_prefix(module);
    rest.is_some_and(|rest| rest == ".rs" || rest.starts_with('/'))
}

/// Returns the text without comment lines, which may mention anything.
fn code(text: &str) -> String {
    let bare = |line: &str| line.trim_start().starts_with("//");
    let lines: Vec<&str> = text.lines().filter(|line| !bare(line)).collect();
    lines.join("\n")
}

/// Returns the library modules that a text names, each one of a `use crate::{a, b}`. Paths through `super` stay within
/// their folder, so they do not count.
fn reached(text: &str) -> BTreeSet<String> {
    let word = |text: &str| -> String { text.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '_').collect() };
    let mut found = BTreeSet::new();
    for (at, _) in text.match_indices("crate::") {
        let rest = &text[at + "crate::".len()..];
        match rest.strip_prefix('{') {
            // Only the first segment of each item matters, so nested braces are not parsed.
            Some(list) => {
                let list = list.split('}').next().unwrap_or_default();
                found.extend(list.split(',').map(|one| word(one.trim())));
            }
            None => {
                found.insert(word(rest));
            }
        }
    }
    found.remove("");
    found
}

/// The rooms of the core from the bottom up. Each may use itself and those below it. Two in a row use each other: a
/// table says what a plan may contain, and a plan contains what tables list.
const LADDER: &[&[&str]] = &[
    &["quantity", "nearest"],
    &["tables", "plan"],
    &["value"],
    &["supply"],
    &["loads"],
    &["verdict"],
    &["sharing"],
    &["report"],
    &["rules"],
    &["judge"],
    &["mend"],
    &["learned"],
];

/// The one file in the core's folders that belongs to the shell.
const SHELL: &str = "plan/store.rs";

/// Returns the room of a file.
fn room(name: &str) -> &str {
    let top = name.split('/').next().unwrap_or_default();
    top.trim_end_matches(".rs")
}

/// Returns the level of a room, if it is part of the core.
fn rung(room: &str) -> Option<usize> {
    LADDER.iter().position(|rooms| rooms.contains(&room))
}

fn rung_of_file(name: &str) -> Option<usize> {
    rung(room(name)).filter(|_| name != SHELL)
}

#[test]
fn no_room_of_the_core_reaches_for_one_above_it() {
    let mut seen = BTreeSet::new();
    for (name, text) in sources() {
        let Some(own) = rung_of_file(&name) else {
            continue;
        };
        seen.insert(room(&name).to_owned());
        for module in reached(&text) {
            assert!(rung(&module).is_some_and(|other| other <= own), "{name} reaches for {module}");
        }
    }
    // Fails if a room has moved away.
    let rooms = LADDER.iter().copied().flatten();
    let rooms: BTreeSet<String> = rooms.map(|room| (*room).to_owned()).collect();
    assert_eq!(seen, rooms);
}

/// Names from the standard library and elsewhere that give access to the outside world.
const WORLD: &[&str] = &[
    "std::fs",
    "std::env",
    "std::io",
    "std::net",
    "std::process",
    "std::thread",
    "std::time",
    "SystemTime",
    "Instant",
    "print!",
    "println!",
    "eprint!",
    "eprintln!",
    "dbg!",
    "anstream",
    "sys_locale",
    "directories",
    "tempfile",
    "crossterm",
];

#[test]
fn the_core_touches_nothing_of_the_world() {
    for (name, text) in sources() {
        if rung_of_file(&name).is_none() {
            continue;
        }
        for touch in WORLD {
            assert!(!text.contains(touch), "{name} has {touch}");
        }
    }
}

/// A code without a rule would never match, and nobody would notice.
#[test]
fn every_code_that_the_program_names_is_a_rules() {
    let mut named = 0;
    for (name, text) in sources() {
        for word in text.split('"') {
            let letters = word.trim_end_matches(|c: char| c.is_ascii_digit());
            let code = (3..=8).contains(&letters.len())
                && letters.chars().all(|c| c.is_ascii_uppercase())
                && word.len() == letters.len() + 3;
            if code {
                named += 1;
                assert!(tallywatt::rules::find(word).is_some(), "{name}: {word}");
            }
        }
    }
    assert!(named > tallywatt::rules::all().count(), "{named}");
}

/// These tests find what they look for.
#[test]
fn the_reading_of_sources_is_not_blind() {
    let text = "use crate::{words, plan::Id};\nlet a = crate::print::x();\n";
    let found: Vec<String> = reached(text).into_iter().collect();
    assert_eq!(found, ["plan", "print", "words"]);
    assert_eq!(code("//! crate::words\n  // print!\nlet a = 1;"), "let a = 1;");
    let text = "#[cfg(test)]\npub(crate) mod testing;\nmod used;\n";
    assert_eq!(modules_of_tests("rules/mod.rs", text), ["rules/testing"]);
    assert_eq!(modules_of_tests("sharing/from_plan.rs", text), ["sharing/from_plan/testing"]);
    let all = sources();
    let has = |name: &str| all.iter().any(|(other, _)| other == name);
    assert!(has("rules/mod.rs") && has("mend/list.rs") && has("cli/mod.rs"));
    assert!(!has("rules/testing.rs") && !has("plan/arbitrary.rs") && !has("sharing/from_plan/tests.rs"));
}

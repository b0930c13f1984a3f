//! The files at the top level, the folders compiled in, and the dependencies.

use std::path::Path;
use std::process::Command;

use serde_json::Value as Json;

fn text(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(name);
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// Hidden files may belong to an editor, and files ignored by Git may be anywhere.
#[test]
fn the_top_level_holds_what_the_developers_document_names() {
    let named = text("DEVELOPERS.md");
    let ignored = text(".gitignore");
    for entry in std::fs::read_dir(env!("CARGO_MANIFEST_DIR")).expect("the top level") {
        let name = entry.expect("an entry").file_name();
        let name = name.to_str().expect("a plain name");
        assert!(
            name.starts_with('.')
                || ignored.lines().any(|line| line == format!("/{name}"))
                || named.contains(&format!("`{name}`")),
            "{name} lies at the top level, and DEVELOPERS.md does not name it"
        );
    }
}

/// Cargo tracks the files that were compiled in, but not new files in their folders.
#[test]
fn folders_that_are_built_in_are_watched() {
    let watched = text("src/build.rs");
    let mut seen = 0;
    for user in ["src/print/world.rs", "src/words/library.rs", "src/rules/form.rs"] {
        for (at, start) in text(user).match_indices("\"$CARGO_MANIFEST_DIR/") {
            let from = &text(user)[at + start.len()..];
            let end = from.find(['/', '"']).expect("the end of the name");
            let folder = &from[..end];
            assert!(watched.contains(&format!("\"{folder}\"")), "{folder}: src/build.rs");
            seen += 1;
        }
    }
    assert_eq!(seen, 3);
}

/// Returns this package and all its dependencies, including those of its tests, for the host platform.
fn packages() -> Vec<Json> {
    let cargo = std::env::var("CARGO").expect("Cargo runs the tests");
    let run = |arguments: &[&str]| {
        let done =
            Command::new(&cargo).args(arguments).current_dir(env!("CARGO_MANIFEST_DIR")).output().expect("Cargo runs");
        assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
        String::from_utf8(done.stdout).expect("text")
    };
    let about = run(&["-vV"]);
    let mut lines = about.lines();
    let host = lines.find_map(|line| line.strip_prefix("host: "));
    let host = host.expect("the machine's name");
    // Everything was fetched to build this test.
    let told = run(&["metadata", "--locked", "--offline", "--format-version=1", "--filter-platform", host]);
    let told: Json = serde_json::from_str(&told).expect("JSON");
    let packages = told["packages"].as_array().expect("packages").clone();
    assert!(packages.len() > 300, "{}", packages.len());
    packages
}

/// Licenses that require no more than passing on their own text. MPL-2.0 also requires the source of its own files,
/// which anybody can fetch.
const LICENCES: &[&str] = &[
    "0BSD",
    "Apache-2.0",
    "Apache-2.0 WITH LLVM-exception",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "MIT",
    "MPL-2.0",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Whether an SPDX license expression, or one with the older `/` for OR, is allowed. Ignores parentheses and requires
/// each part between ANDs to be allowed, which is never more lenient than the expression.
fn may_be_used(licence: &str) -> bool {
    licence
        .replace(['(', ')'], "")
        .split(" AND ")
        .all(|part| part.replace('/', " OR ").split(" OR ").any(|one| LICENCES.contains(&one.trim())))
}

#[test]
fn what_this_is_built_on_may_be_used() {
    assert!(may_be_used("(LGPL-2.1-or-later OR MIT) AND Unicode-3.0"));
    assert!(!may_be_used("MIT AND GPL-3.0-only"));
    assert!(!may_be_used("MIT AND (GPL-3.0-only OR AGPL-3.0-only)"));
    for package in packages() {
        let licence = package["license"].as_str().unwrap_or_default();
        assert!(may_be_used(licence), "{}: {licence:?}", package["id"]);
    }
}

/// Clippy checks whether this package itself calls anything newer (`incompatible_msrv`).
#[test]
fn nothing_this_is_built_on_needs_a_newer_rust() {
    let version = |text: &str| -> Vec<u32> {
        let numbers = text.split('.').map(|part| part.parse().expect("a number"));
        numbers.collect()
    };
    let packages = packages();
    let own = packages.iter().find(|package| package["name"] == env!("CARGO_PKG_NAME"));
    let own = own.expect("this package")["rust_version"].as_str();
    let own = version(own.expect("a version"));
    for package in &packages {
        if let Some(needed) = package["rust_version"].as_str() {
            // 1.92 and 1.92.0 are the same.
            let mut least = version(needed);
            while least.len() > own.len() && least.last() == Some(&0) {
                least.pop();
            }
            assert!(least <= own, "{} needs {needed}", package["id"]);
        }
    }
}

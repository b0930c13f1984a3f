//! What lies where, what is built in, and what this program is built on.

use std::path::Path;
use std::process::Command;

use serde_json::Value as Json;

fn text(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(name);
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// Hidden files may be anybody's editor's, and what Git does not look at may lie there.
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

/// Cargo follows the files that were built in, and none that is added to their folder.
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

/// This package and all that it and its tests are built on, for the machine that runs this.
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
    // All of it was fetched for this test to be built.
    let told = run(&["metadata", "--locked", "--offline", "--format-version=1", "--filter-platform", host]);
    let told: Json = serde_json::from_str(&told).expect("JSON");
    let packages = told["packages"].as_array().expect("packages").clone();
    assert!(packages.len() > 300, "{}", packages.len());
    packages
}

/// Licences that ask for no more than their own text to be passed on. MPL-2.0 asks for the source of
/// its own files too, which anybody can fetch.
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

/// Whether a licence in the form of SPDX, or with the older `/` for OR, is one of them. Brackets are
/// passed over, and each part between two ANDs must hold: never milder than what is written.
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

/// Clippy looks whether this package calls anything newer (`incompatible_msrv`).
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

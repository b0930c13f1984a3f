//! DEVELOPERS.md lists the rules as they are, and each rule's file opens with its own page.

use std::path::Path;

const START: &str = "<!-- rules -->";
const END: &str = "<!-- /rules -->";

/// DEVELOPERS.md has the list between two marks. It is updated in the same way as the snapshots.
#[test]
fn developers_document_lists_the_rules() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("DEVELOPERS.md");
    let text = std::fs::read_to_string(&path).expect("there is a DEVELOPERS.md");
    let (before, rest) = text.split_once(START).expect("DEVELOPERS.md has a `<!-- rules -->`");
    let (_, after) = rest.split_once(END).expect("DEVELOPERS.md has a `<!-- /rules -->` after its `<!-- rules -->`");
    let fresh = format!("{before}{START}\n\n{}\n{END}{after}", tallywatt::words::list_of_rules());
    if fresh != text && std::env::var_os("INSTA_UPDATE").is_some_and(|how| how == "always") {
        std::fs::write(&path, &fresh).expect("DEVELOPERS.md can be written");
        return;
    }
    assert!(
        fresh == text,
        "DEVELOPERS.md lists other rules than there are: run INSTA_UPDATE=always cargo test --test core rules"
    );
}

/// `cargo doc` shows each rule's page above its code.
#[test]
fn a_file_of_a_rule_opens_with_its_page() {
    let rules = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/rules");
    let mut found = 0;
    for area in rules.read_dir().expect("the rules").flatten() {
        for file in area.path().read_dir().into_iter().flatten().flatten() {
            let text = std::fs::read_to_string(file.path()).expect("text");
            let Some((_, after)) = text.split_once(" code: \"") else {
                continue;
            };
            let (code, _) = after.split_once('"').expect("a code");
            let page = format!("#![doc = include_str!(\"../../../i18n/en/explain/{code}.md\")]\n\n");
            assert!(text.starts_with(&page), "{}", file.path().display());
            found += 1;
        }
    }
    assert_eq!(found, tallywatt::rules::all().count());
}

//! The developers' document lists the rules; the list is made from them.

use std::path::Path;

const START: &str = "<!-- rules -->";
const END: &str = "<!-- /rules -->";

/// DEVELOPERS.md holds the rules' list between two marks, and is renewed as the snapshots are.
#[test]
fn developers_document_lists_the_rules() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("DEVELOPERS.md");
    let text = std::fs::read_to_string(&path).expect("there is a DEVELOPERS.md");
    let (before, rest) = text
        .split_once(START)
        .expect("DEVELOPERS.md has a `<!-- rules -->`");
    let (_, after) = rest
        .split_once(END)
        .expect("DEVELOPERS.md has a `<!-- /rules -->` after its `<!-- rules -->`");
    let fresh = format!(
        "{before}{START}\n\n{}\n{END}{after}",
        tallywatt::rules::list_markdown()
    );
    if fresh != text && std::env::var_os("INSTA_UPDATE").is_some_and(|how| how == "always") {
        std::fs::write(&path, &fresh).expect("DEVELOPERS.md can be written");
        return;
    }
    assert!(
        fresh == text,
        "DEVELOPERS.md lists other rules than there are: run INSTA_UPDATE=always cargo test --test core rules"
    );
}

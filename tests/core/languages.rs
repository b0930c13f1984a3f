//! A language is a folder. What the page in `i18n` says about adding one holds for a fifth language.

use std::path::Path;

use tallywatt::words::language::{Catalog, Kind, check};
use tallywatt::words::{ABOUT, FIRST_LANGUAGE, Library, Units, Words};

const TAG: &str = "eo";

/// Returns the built-in languages plus the folder of a new one, as a contributor would add it.
fn with_a_fifth() -> Library {
    let mut library = Library::built_in().clone();
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/languages/eo");
    for file in folder.read_dir().expect("the folder of the fifth language") {
        let path = file.expect("a file").path();
        let name = path.file_name().and_then(|name| name.to_str());
        let text = std::fs::read_to_string(&path).expect("text");
        library.add(TAG, name.expect("a name"), text);
    }
    library
}

#[test]
fn a_folder_is_a_draft_at_first() {
    let library = with_a_fifth();
    let wrong: Vec<_> = check(&library, TAG).into_iter().filter(|problem| problem.kind != Kind::Missing).collect();
    assert_eq!(wrong, []);
    assert!(library.chain(TAG).is_none(), "a draft is offered to nobody");
    let chain = library.draft_chain(TAG).expect("the folder");
    let words = Words::of(&chain, Units::Metric);
    assert_eq!(words.text("signal-danger"), "DANĜERO");
    assert_eq!(words.list(&["a", "b", "c"]), "a, b kaj c");
    assert_eq!(words.faults(), Vec::<String>::new());
}

#[test]
fn with_all_its_messages_it_is_a_language_like_any_other() {
    let mut library = with_a_fifth();
    // English stands in for what the fifth language does not translate.
    let own = Catalog::of(library.folder(TAG).expect("the folder"));
    let first = library.folder(FIRST_LANGUAGE).expect("English").clone();
    for (name, text) in &first.files {
        if name != ABOUT && !own.items.iter().any(|item| item.file == *name) {
            library.add(TAG, name, text.clone());
        }
    }
    let about = include_str!("../languages/eo/language.ftl").replace("draft", "complete");
    library.add(TAG, ABOUT, about);
    // English has plain spaces between a number and its unit.
    let english = |kind: &Kind| matches!(kind, Kind::Untranslated | Kind::PlainSpace(_));
    let left: Vec<_> = check(&library, TAG).into_iter().filter(|problem| !english(&problem.kind)).collect();
    assert_eq!(left, []);
    assert!(library.offered().any(|tag| tag == TAG));

    let chain = library.chain("eo-CU").expect("it is offered");
    let words = Words::of(&chain, Units::of(&chain.tag));
    let plan = tallywatt::plan::read(tallywatt::plan::demo::WEEKEND).expect("the demo reads");
    let report = tallywatt::judge::build(&plan);
    let said = words.troubles(&report, 80);
    assert!(said.contains("DANĜERO") && !said.contains("DANGER"), "{said}");
    let options = tallywatt::print::Options::default();
    let prints = tallywatt::print::render(&plan, &report, &words, &options);
    assert_eq!(prints.map(|files| files.len()).map_err(|error| error.to_string()), Ok(4));
    assert_eq!(words.faults(), Vec::<String>::new());
}

/// The instructions on the page match the program.
#[test]
fn the_page_names_what_there_is() {
    let page = include_str!("../../i18n/README.md");
    for (_, folder) in with_a_fifth().folders() {
        assert!(folder.files.contains_key(ABOUT));
    }
    for said in [
        "language.ftl",
        "language-state = draft",
        "language-state = complete",
        "language-regions",
        "language-never-say",
        "tallywatt words TAG --check --from i18n",
    ] {
        assert!(page.contains(said), "{said}");
    }
}

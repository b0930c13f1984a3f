//! The language folders, and which of them serve a reader.
//!
//! A folder is named by its tag. `es` is a complete language. `es-ES` beside it is a variant, with only the messages
//! and terms that differ. What a folder says about itself is in its `language.ftl`, so adding a language takes one
//! folder and no code.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::OnceLock;

use fluent_syntax::ast::{Entry, PatternElement};
use include_dir::{Dir, include_dir};
use unic_langid::LanguageIdentifier;

static FOLDERS: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/i18n");

/// The language in which every message is written first.
pub const FIRST_LANGUAGE: &str = "en";

/// The file in which a folder describes itself.
pub const ABOUT: &str = "language.ftl";

/// The subfolder of a language with the rules' pages, such as `explain/AIR001.md`.
pub const PAGES: &str = "explain";

/// A set of language folders.
#[derive(Clone, Debug, Default)]
pub struct Library {
    folders: BTreeMap<String, Folder>,
}

/// One language or variant.
#[derive(Clone, Debug, Default)]
pub struct Folder {
    /// Files by name, such as `rules-air.ftl` and `explain/AIR001.md`.
    pub files: BTreeMap<String, Cow<'static, str>>,
    about: BTreeMap<String, String>,
}

impl Folder {
    /// The rules' pages, by rule code.
    pub(super) fn pages(&self) -> impl Iterator<Item = (&str, &Cow<'static, str>)> {
        self.files.iter().filter_map(|(name, text)| Some((page_code(name)?, text)))
    }

    /// The message files, without the folder's description of itself.
    pub(super) fn messages(&self) -> impl Iterator<Item = (&str, &Cow<'static, str>)> {
        self.files
            .iter()
            .filter(|(name, _)| *name != ABOUT && page_code(name).is_none())
            .map(|(name, text)| (name.as_str(), text))
    }

    fn about(&self, key: &str) -> &str {
        self.about.get(key).map_or("", String::as_str)
    }

    /// What its speakers call it.
    pub fn name(&self) -> &str {
        self.about("language-name")
    }

    /// Whether it is offered to readers. A draft is checked as far as it goes but never shown.
    pub fn complete(&self) -> bool {
        self.about("language-state") == "complete"
    }

    /// The full tag that a tag without a region stands for. The region determines the number format.
    fn stands_for(&self) -> &str {
        self.about("language-stands-for")
    }

    /// The regions whose readers get this variant.
    pub fn regions(&self) -> impl Iterator<Item = &str> {
        self.about("language-regions").split_whitespace()
    }

    /// Words that no message may contain, because they promise that something cannot hurt anyone.
    pub fn never_say(&self) -> impl Iterator<Item = &str> {
        self.about("language-never-say").split_whitespace()
    }
}

/// The folders that serve a reader: a language, and its variant for the reader's region if there is one.
#[derive(Clone, Debug)]
pub struct Chain<'l> {
    /// The reader's tag, with a region.
    pub tag: LanguageIdentifier,
    /// The language first, then the variant that overrides it.
    pub folders: Vec<(&'l str, &'l Folder)>,
}

impl Library {
    /// The folders built into the program.
    pub fn built_in() -> &'static Self {
        static LIBRARY: OnceLock<Library> = OnceLock::new();
        LIBRARY.get_or_init(|| {
            let mut library = Self::default();
            for folder in FOLDERS.dirs() {
                let pages = folder.get_dir(folder.path().join(PAGES));
                let pages = pages.into_iter().flat_map(Dir::files);
                for file in folder.files().chain(pages) {
                    let tag = folder.path().to_str();
                    let name = file.path().strip_prefix(folder.path());
                    let name = name.ok().and_then(|name| name.to_str());
                    if let (Some(tag), Some(name), Some(text)) = (tag, name, file.contents_utf8()) {
                        library.add(tag, name, text);
                    }
                }
            }
            library
        })
    }

    /// Adds a file to a folder, replacing one of the same name.
    pub fn add(&mut self, tag: &str, name: &str, text: impl Into<Cow<'static, str>>) {
        let folder = self.folders.entry(tag.to_owned()).or_default();
        let text = text.into();
        if name == ABOUT {
            folder.about = plain_messages(&text);
        }
        folder.files.insert(name.to_owned(), text);
    }

    /// Every folder, with its tag.
    pub fn folders(&self) -> impl Iterator<Item = (&str, &Folder)> {
        self.folders.iter().map(|(tag, folder)| (tag.as_str(), folder))
    }

    /// The folder with this tag.
    pub fn folder(&self, tag: &str) -> Option<&Folder> {
        self.folders.get(tag)
    }

    /// The tags offered to readers.
    pub fn offered(&self) -> impl Iterator<Item = &str> {
        self.folders().filter(|(_, folder)| folder.complete()).map(|(tag, _)| tag)
    }

    /// Returns the folders for a reader with this tag, or `None` if the language has no complete folder.
    pub fn chain(&self, tag: &str) -> Option<Chain<'_>> {
        self.choose(tag, false)
    }

    /// Like [`Self::chain`], but includes drafts.
    pub fn draft_chain(&self, tag: &str) -> Option<Chain<'_>> {
        self.choose(tag, true)
    }

    fn choose(&self, tag: &str, drafts: bool) -> Option<Chain<'_>> {
        let asked: LanguageIdentifier = tag.parse().ok()?;
        let usable = |(_, folder): &(&str, &Folder)| drafts || folder.complete();
        let (base, whole) = self
            .folders
            .get_key_value(asked.language.as_str())
            .map(|(tag, folder)| (tag.as_str(), folder))
            .filter(usable)?;
        let tag = match asked.region {
            None => whole.stands_for().parse().unwrap_or(asked),
            Some(_) => asked,
        };
        let region = tag.region.as_ref().map_or("", |region| region.as_str());
        let variant = self
            .folders()
            .filter(|(name, _)| name.strip_prefix(base).is_some_and(|rest| rest.starts_with('-')))
            .filter(usable)
            .find(|(_, folder)| folder.regions().any(|its| its == region));
        Some(Chain { tag, folders: [(base, whole)].into_iter().chain(variant).collect() })
    }
}

/// Returns the code of the rule whose page the file is, or `None` if it is no page.
pub(super) fn page_code(name: &str) -> Option<&str> {
    name.strip_prefix(PAGES)?.strip_prefix('/')?.strip_suffix(".md")
}

/// Returns the plain text of the messages in a small file.
fn plain_messages(text: &str) -> BTreeMap<String, String> {
    let resource = match fluent_syntax::parser::parse(text) {
        Ok(resource) | Err((resource, _)) => resource,
    };
    resource
        .body
        .iter()
        .filter_map(|entry| match entry {
            Entry::Message(message) => Some((message.id.name, message.value.as_ref()?)),
            _ => None,
        })
        .map(|(id, pattern)| {
            let text = pattern
                .elements
                .iter()
                .filter_map(|element| match element {
                    PatternElement::TextElement { value } => Some(*value),
                    PatternElement::Placeable { .. } => None,
                })
                .collect();
            (id.to_owned(), text)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn library() -> Library {
        let mut library = Library::default();
        let mut add = |tag: &str, about: &'static str| library.add(tag, ABOUT, about);
        add("en", "language-state = complete\nlanguage-stands-for = en-US\n");
        add("fr", "language-state = complete\nlanguage-stands-for = fr-CA\n");
        add("fr-FR", "language-state = complete\nlanguage-regions = FR BE CH\n");
        add("de", "language-state = draft\nlanguage-stands-for = de-DE\n");
        library
    }

    fn chosen(tag: &str) -> Option<(String, Vec<String>)> {
        let library = library();
        let chain = library.chain(tag)?;
        let folders = chain.folders.iter().map(|(tag, _)| (*tag).to_owned());
        Some((chain.tag.to_string(), folders.collect()))
    }

    #[test]
    fn the_region_chooses_the_variant() {
        for (asked, tag, folders) in [
            ("en", "en-US", &["en"][..]),
            ("en-GB", "en-GB", &["en"]),
            ("fr", "fr-CA", &["fr"]),
            ("fr-CA", "fr-CA", &["fr"]),
            ("fr-FR", "fr-FR", &["fr", "fr-FR"]),
            ("FR_be", "fr-BE", &["fr", "fr-FR"]),
        ] {
            let expected = folders.iter().map(|&name| name.to_owned()).collect();
            assert_eq!(chosen(asked), Some((tag.to_owned(), expected)), "{asked}");
        }
    }

    #[test]
    fn a_draft_is_not_offered() {
        assert_eq!(chosen("de"), None);
        assert_eq!(chosen("it"), None);
        assert_eq!(chosen("no tag at all"), None);
        assert!(library().draft_chain("de-AT").is_some());
        assert_eq!(library().offered().collect::<Vec<_>>(), ["en", "fr", "fr-FR"]);
    }
}

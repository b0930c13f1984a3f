//! The closed world the templates are compiled in: the embedded templates, one data file and a
//! fixed set of fonts. There is no disk, network, clock or environment in it, so that the same
//! data gives the same paper everywhere.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::LazyLock;

use include_dir::{Dir, include_dir};
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Library, LibraryExt, World};

/// The only file that is not a template. Whatever a user typed comes in through it, as data:
/// nothing in it is ever read as markup.
const DATA: &str = "data.json";

static TEMPLATES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/label-templates");

/// With the heads of a table's rows, for people who cannot see it.
static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| {
    let features = [Feature::A11yExtras].into_iter().collect();
    LazyHash::new(Library::builder().with_features(features).build())
});

static SOURCES: LazyLock<BTreeMap<&'static str, Source>> = LazyLock::new(|| {
    embedded()
        .into_iter()
        .filter(|(path, _)| Path::new(path).extension().is_some_and(|end| end == "typ"))
        .map(|(path, text)| (path, Source::new(id(path), text.to_owned())))
        .collect()
});

static FONTS: LazyLock<Fonts> = LazyLock::new(|| {
    let faces = [
        dejavu::sans::regular(),
        dejavu::sans::bold(),
        dejavu::sans_condensed::regular(),
        dejavu::sans_condensed::bold(),
        dejavu::sans_condensed::bold_oblique(),
        // Formulas only.
        dejavu::serif::italic(),
        dejavu::serif::regular(),
    ];
    let fonts: Vec<Font> = faces.into_iter().flat_map(|face| Font::iter(Bytes::new(face))).collect();
    let book = LazyHash::new(FontBook::from_fonts(&fonts));
    Fonts { book, fonts }
});

/// How many of the faces set whatever a user wrote: the first ones.
const TEXT_FACES: usize = 5;

/// The characters that each of these has a glyph for. A face itself is read from its beginning for each question.
static GLYPHS: LazyLock<BTreeSet<u32>> = LazyLock::new(|| {
    let faces = FONTS.fonts.iter().take(TEXT_FACES);
    let glyphs = faces.map(|font| font.info().coverage.iter().collect::<BTreeSet<u32>>());
    glyphs.reduce(|all, face| &all & &face).unwrap_or_default()
});

/// The faces, parsed once for all documents.
struct Fonts {
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
}

/// Every embedded file, by its path below `label-templates/`.
pub(super) fn embedded() -> Vec<(&'static str, &'static str)> {
    fn all(folder: &'static Dir<'_>, into: &mut Vec<(&'static str, &'static str)>) {
        into.extend(folder.files().filter_map(|file| Some((file.path().to_str()?, file.contents_utf8()?))));
        for inner in folder.dirs() {
            all(inner, into);
        }
    }
    let mut files = Vec::new();
    all(&TEMPLATES, &mut files);
    files.sort_unstable();
    files
}

/// The embedded files in this folder below `label-templates/`, in the order of their names.
pub(super) fn embedded_in(folder: &str) -> Vec<(&'static str, &'static str)> {
    let mut files: Vec<_> = TEMPLATES
        .get_dir(folder)
        .into_iter()
        .flat_map(Dir::files)
        .filter_map(|file| Some((file.path().file_stem()?.to_str()?, file.contents_utf8()?)))
        .collect();
    files.sort_unstable();
    files
}

fn id(path: &str) -> FileId {
    let path = VirtualPath::new(path).unwrap_or_else(|_| unreachable!("paths here are fixed"));
    RootedPath::new(VirtualRoot::Project, path).intern()
}

/// Whether a character may be printed: every face that prints use has a glyph for it, and it
/// does not turn the text round it about, as the marks of writing direction do. A line break
/// inside a message is a space.
pub(super) fn can_print(character: char) -> bool {
    character == '\n' || (!crate::plan::hides(character) && GLYPHS.contains(&u32::from(character)))
}

/// Whether a character belongs to a script that runs from right to left: the blocks that Unicode
/// sets apart for them.
pub(super) const fn runs_left(character: char) -> bool {
    matches!(character, '\u{590}'..='\u{8ff}' | '\u{fb1d}'..='\u{fdff}' | '\u{fe70}'..='\u{feff}'
        | '\u{10800}'..='\u{10fff}' | '\u{1e800}'..='\u{1efff}')
}

/// The world of one document.
#[derive(Debug)]
pub(super) struct PrintWorld {
    main: FileId,
    data: Bytes,
    today: Option<Datetime>,
    /// What the user put in the place of templates, or beside them.
    own: BTreeMap<String, Source>,
}

impl PrintWorld {
    /// `template` names the document's template; `data` is the JSON it reads; `today` is the
    /// only date there is; `own` are templates that stand in for the embedded ones.
    pub(super) fn new(template: &str, data: String, today: Option<Datetime>, own: &BTreeMap<String, String>) -> Self {
        let source = |(path, text): (&String, &String)| {
            let inside = VirtualPath::new(path.as_str()).ok()?;
            let id = RootedPath::new(VirtualRoot::Project, inside).intern();
            Some((path.clone(), Source::new(id, text.clone())))
        };
        Self { main: id(template), data: Bytes::from_string(data), today, own: own.iter().filter_map(source).collect() }
    }
}

impl World for PrintWorld {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &FONTS.book
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let path = id.get().vpath().get_without_slash();
        match id.get().root() {
            VirtualRoot::Project => self
                .own
                .get(path)
                .or_else(|| SOURCES.get(path))
                .cloned()
                .ok_or_else(|| FileError::NotFound(path.into())),
            VirtualRoot::Package(_) => Err(FileError::AccessDenied),
        }
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if id.get().vpath().get_without_slash() == DATA {
            return Ok(self.data.clone());
        }
        self.source(id).map(|source| Bytes::from_string(source.text().to_owned()))
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.fonts.get(index).cloned()
    }

    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        self.today
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_outside_can_be_read() {
        let world = PrintWorld::new("labels.typ", "{}".to_owned(), None, &BTreeMap::new());
        assert!(world.source(world.main()).is_ok());
        assert!(world.file(id(DATA)).is_ok());
        for path in ["etc/passwd", "../Cargo.toml", "Cargo.toml", "stock/letter-6.toml"] {
            let Ok(path) = VirtualPath::new(path) else {
                continue;
            };
            let id = RootedPath::new(VirtualRoot::Project, path).intern();
            assert!(world.file(id).is_err(), "{id:?}");
            assert!(world.source(id).is_err(), "{id:?}");
        }
        assert_eq!(world.today(None), None);
    }

    #[test]
    fn marks_that_turn_text_about_are_refused() {
        for plain in ['a', 'é', '5', '·', '●', 'Ω', 'Ж', '\u{a0}'] {
            assert!(can_print(plain), "{plain:?}");
        }
        for bad in ['\u{202e}', '\u{2066}', '\u{7}', '\0', '漢', '🔌'] {
            assert!(!can_print(bad), "{bad:?}");
        }
    }
}

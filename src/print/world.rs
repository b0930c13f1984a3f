//! The closed world that the templates are compiled in: templates, one data file and a fixed set of fonts. It has no
//! disk, network, clock or environment, so the same data gives the same paper everywhere.

use std::collections::BTreeMap;
use std::path::Path;
use std::sync::LazyLock;

use include_dir::{Dir, include_dir};
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Library, LibraryExt, World};

/// The only file that is not a template. Everything a user typed is passed in it as data and is never parsed as markup.
const DATA: &str = "data.json";

static TEMPLATES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/label-templates");

/// The standard library, with accessible table row headers.
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
        // For formulas only.
        dejavu::serif::italic(),
        dejavu::serif::regular(),
    ];
    let fonts: Vec<Font> = faces.into_iter().flat_map(|face| Font::iter(Bytes::new(face))).collect();
    let book = LazyHash::new(FontBook::from_fonts(&fonts));
    Fonts { book, fonts }
});

/// The faces, parsed once for all documents.
struct Fonts {
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
}

/// Returns every embedded file as its path below `label-templates/` and its text.
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

/// Returns the embedded files of this folder below `label-templates/` as file stem and text, sorted by name.
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

/// Whether a character may be printed: every text face has a glyph for it, and it is not one that hides or reorders
/// text, such as a direction mark. A line break inside a message prints as a space.
pub(super) fn can_print(character: char) -> bool {
    character == '\n' || crate::plan::can_print(character)
}

/// Whether a character belongs to a right-to-left script, by the blocks that Unicode reserves for them.
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
    /// The user's templates, which replace or extend the built-in ones.
    own: BTreeMap<String, Source>,
}

impl PrintWorld {
    /// Creates the world of the document whose main template is `template`. The JSON in `data` is what it reads,
    /// `today` is the only date it can see, and templates in `own` replace the embedded ones.
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
    use std::collections::BTreeSet;

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

    /// The number of faces, from the first, that text typed by users may be set in.
    const TEXT_FACES: usize = 5;

    /// What may be printed is what all of these faces have a glyph for, without what hides or reorders text.
    #[test]
    fn what_may_be_printed_is_what_every_face_has() {
        let faces = FONTS.fonts.iter().take(TEXT_FACES);
        // Sets, since a face is scanned from its beginning for each lookup.
        let glyphs = faces.map(|font| font.info().coverage.iter().collect::<BTreeSet<u32>>());
        let glyphs = glyphs.reduce(|all, face| &all & &face).expect("faces");
        for c in '\0'..=char::MAX {
            let fine = !crate::plan::hides(c) && glyphs.contains(&u32::from(c));
            assert_eq!(can_print(c), fine || c == '\n', "{c:?}");
        }
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

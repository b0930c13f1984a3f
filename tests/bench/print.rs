//! Compares the cost of printing with that of the typesetter alone: `cargo bench --bench print`.
//!
//! Each line is a separate process, started cold. "bare" compiles and exports the same documents from the same data,
//! with a minimal world and no checks. Time and peak resident memory are the least of several runs.

// A benchmark starts processes and reads a clock. Nothing that is printed depends on it.
#![allow(clippy::disallowed_methods, clippy::disallowed_macros)]

use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

use tallywatt::print::{Document, Options, render, template_data};
use tallywatt::report::Report;
use tallywatt::words::Words;
use tallywatt::{judge, plan};
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration as Span};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

const RUNS: usize = 5;
/// The number of labels in the longest run.
const MANY: usize = 1_000;

struct Bare {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
    main: FileId,
    data: String,
}

fn file(path: &str) -> FileId {
    let path = VirtualPath::new(path).expect("a path");
    RootedPath::new(VirtualRoot::Project, path).intern()
}

impl World for Bare {
    fn library(&self) -> &LazyHash<Library> {
        &self.library
    }
    fn book(&self) -> &LazyHash<FontBook> {
        &self.book
    }
    fn main(&self) -> FileId {
        self.main
    }
    fn source(&self, id: FileId) -> FileResult<Source> {
        let path =
            Path::new(env!("CARGO_MANIFEST_DIR")).join("label-templates").join(id.get().vpath().get_without_slash());
        let text = std::fs::read_to_string(&path).map_err(|error| FileError::from_io(error, &path))?;
        Ok(Source::new(id, text))
    }
    fn file(&self, _: FileId) -> FileResult<Bytes> {
        Ok(Bytes::from_string(self.data.clone()))
    }
    fn font(&self, index: usize) -> Option<Font> {
        self.fonts.get(index).cloned()
    }
    fn today(&self, _: Option<Span>) -> Option<Datetime> {
        None
    }
}

fn bare(documents: Vec<(Document, String)>) -> usize {
    let fonts: Vec<Font> = [
        dejavu::sans::regular(),
        dejavu::sans::bold(),
        dejavu::sans_condensed::regular(),
        dejavu::sans_condensed::bold(),
        dejavu::sans_condensed::bold_oblique(),
        dejavu::serif::italic(),
        dejavu::serif::regular(),
    ]
    .into_iter()
    .flat_map(|face| Font::iter(Bytes::new(face)))
    .collect();
    let mut world = Bare {
        library: LazyHash::new(Library::builder().with_features([Feature::A11yExtras].into_iter().collect()).build()),
        book: LazyHash::new(FontBook::from_fonts(&fonts)),
        fonts,
        main: file("labels.typ"),
        data: String::new(),
    };
    let options =
        PdfOptions { standards: PdfStandards::new(&[PdfStandard::Ua_1]).expect("a standard"), ..PdfOptions::default() };
    let mut bytes = 0;
    for (document, data) in documents {
        world.main = file(&format!("{}.typ", document.name()));
        world.data = data;
        let paged = typst::compile::<PagedDocument>(&world).output.expect("compiled");
        bytes += typst_pdf::pdf(&paged, &options).expect("exported").len();
        drop(paged);
        typst::comemo::evict(0);
    }
    bytes
}

fn demo() -> (plan::Plan, Report) {
    let plan = plan::read(plan::demo::MENDED).expect("the plan reads");
    let report = judge::build(&plan);
    (plan, report)
}

/// Does the work of one process: which way to print, and which documents.
fn work(how: &str, what: &str) {
    let words = Words::english();
    let options = Options::default();
    let many = what.parse::<usize>().ok();
    let (plan, report) = demo();
    match how {
        "ours" => {
            let options = many.map_or_else(Options::default, |many| labels_only(many, &plan, &report));
            render(&plan, &report, &words, &options).expect("printed");
        }
        "bare" => {
            let mut documents = template_data(&plan, &report, &words, &options).expect("data");
            if let Some(many) = many {
                let (_, data) = documents.swap_remove(0);
                documents = vec![(Document::Labels, repeated(&data, many))];
            } else if what != "all" {
                documents.retain(|(document, _)| document.name() == what);
            }
            bare(documents);
        }
        _ => {}
    }
}

/// Returns options for at least `many` labels, with the same number of copies of each of the demo's labels.
fn labels_only(many: usize, plan: &plan::Plan, report: &Report) -> Options {
    let options = Options { only: vec![Document::Labels], ..Options::default() };
    let data = template_data(plan, report, &Words::english(), &options).expect("data");
    let data: serde_json::Value = serde_json::from_str(&data[0].1).expect("JSON");
    let few = data["items"].as_array().expect("labels").len();
    Options { copies: many.div_ceil(few), ..options }
}

fn repeated(data: &str, count: usize) -> String {
    let mut data: serde_json::Value = serde_json::from_str(data).expect("JSON");
    let items = data["items"].as_array_mut().expect("labels");
    let few = items.clone();
    *items = few.into_iter().cycle().take(count).collect();
    data.to_string()
}

fn measured(how: &str, what: &str, runs: usize) -> Duration {
    let this = std::env::current_exe().expect("this program");
    let mut least = Duration::MAX;
    let mut kibibytes = u64::MAX;
    for _ in 0..runs {
        let start = Instant::now();
        let output = Command::new(&this).args(["work", how, what]).output().expect("run");
        least = least.min(start.elapsed());
        assert!(output.status.success(), "{output:?}");
        let peak = String::from_utf8_lossy(&output.stdout);
        kibibytes = kibibytes.min(peak.trim().parse().unwrap_or(u64::MAX));
    }
    println!("{how:5} {what:10} {least:>9.0?} {:>6} MiB", kibibytes / 1024);
    least
}

fn main() {
    let arguments: Vec<String> = std::env::args().collect();
    if let [_, first, how, what] = arguments.as_slice()
        && first == "work"
    {
        work(how, what);
        let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
        let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:")?.split_whitespace().next());
        println!("{}", peak.unwrap_or_default());
        return;
    }
    measured("none", "all", RUNS);
    for document in Document::ALL {
        measured("bare", document.name(), RUNS);
    }
    let bare = measured("bare", "all", RUNS);
    let ours = measured("ours", "all", RUNS);
    println!("ours / bare: {:.2}", ours.as_secs_f64() / bare.as_secs_f64());
    for count in [MANY / 4, MANY / 2, MANY] {
        measured("bare", &count.to_string(), 1);
        measured("ours", &count.to_string(), 1);
    }
}

//! Prints a small report built by hand, and the demo plans.

mod agree;
mod any;
mod card;
mod cautions;
mod emergency;
mod hostile;
mod labels;
mod legible;
mod look;
mod position;
mod tags;
mod told;
mod worksheet;

use std::str::FromStr;

use super::*;
use crate::plan::*;
use crate::quantity::*;
use crate::report::*;
use crate::supply::LimitReason;
use crate::tables::shape::{Plug, Receptacle};

fn id(text: &str) -> Id {
    Id::reference(text).expect("an id")
}

fn watts(watts: i64) -> Power {
    Power::from_milliwatts(watts * 1000)
}

fn amps(amps: i64) -> Current {
    Current::from_milliamps(amps * 1000)
}

fn outlet(name: &str, shape: &str, breaker: i64, gfci: bool) -> Outlet {
    Outlet {
        id: id(name),
        shape: Receptacle::named(shape).expect("a shape"),
        breaker: Answer::Known(Current::from_milliamps(breaker * 1000)),
        gfci: Answer::Known(gfci),
        ..Outlet::default()
    }
}

fn limit(name: &str, shape: &str, long: i64, short: i64, by: &str, reason: LimitReason, gfci: bool) -> Limit {
    let set_by = SetBy { id: id(by), reason, enforced: reason.enforced(), share: false };
    Limit {
        id: id(name),
        inside: false,
        shape: Receptacle::named(shape).expect("a shape"),
        volts: Voltage::from_millivolts(120_000),
        marked_amps: amps(short),
        continuous_amps: amps(long),
        short_amps: amps(short),
        continuous_watts: watts(long * 120),
        short_watts: watts(short * 120),
        continuous_set_by: SetBy { share: long < short, ..set_by.clone() },
        set_by,
        acts: if reason.enforced() { Acts::AtLimit { id: id(by) } } else { Acts::Never },
        legs: &[Leg::A],
        gfci,
        shock: Shock {
            state: if gfci { ShockState::Works } else { ShockState::None },
            by: gfci.then(|| id(name)),
            joint: None,
        },
        path: vec![id("twist"), id("long"), id(name)],
    }
}

fn verdict(name: &str, loads: &[&str]) -> Verdict {
    Verdict {
        id: id(name),
        admits: Admits::Everything,
        only: Vec::new(),
        bonding_plug: false,
        why: None,
        gfci_cord: None,
        only_if: None,
        loads: loads.iter().map(|load| id(load)).collect(),
        one_at_a_time: false,
        not_together: Vec::new(),
        assumed: Vec::new(),
    }
}

#[allow(clippy::too_many_lines)] // one plan and its report, written out field by field
fn small() -> (Plan, Report) {
    let plan = Plan {
        region: Region::NorthAmerica,
        language: None,
        site: Site { name: "Pebble Tarn".into(), ..Site::default() },
        generator: Generator {
            name: "the blue one".into(),
            rated: Answer::Known(Power::from_milliwatts(2_800_000)),
            outlets: vec![outlet("front", "5-20R", 20, false), outlet("twist", "L5-30R", 30, false)],
            ..Generator::default()
        },
        cords: vec![Cord {
            id: id("long"),
            from: Some(id("twist")),
            plug: Answer::Known(Plug::named("L5-30P").expect("a shape")),
            ends: Answer::Known(vec![Receptacle::named("L5-30R").expect("a shape")]),
            wire: Answer::Known(Wire::Awg(10)),
            conductors: Answer::Known(3),
            length: Answer::Known(Length::from_millimetres(22_860)),
            outdoor: Answer::Known(true),
            coiled: Answer::Known(false),
            ..Cord::default()
        }],
        boxes: vec![DistributionBox {
            id: id("box"),
            from: Some(id("long")),
            inlet: Answer::Known(Plug::named("L5-30P").expect("a shape")),
            listed: Answer::Known(true),
            bond: Answer::Known(false),
            outlets: vec![outlet("box-left", "5-20R", 20, true), outlet("box-lamp", "5-15R", 15, true)],
            ..DistributionBox::default()
        }],
        loads: Vec::new(),
    };
    let load = |name: &str, label: &str, power: i64| LoadFacts {
        id: id(name),
        of: id(name),
        name: label.into(),
        kind: Answer::Known(LoadKind::Heater),
        volts: Voltage::from_millivolts(120_000),
        running_watts: watts(power),
        running_amps: amps(power / 120),
        starting_watts: watts(power),
        starting_amps: amps(power / 120),
        running_volt_amps: ApparentPower::from_millivolt_amps(power * 1000),
        starting_volt_amps: ApparentPower::from_millivolt_amps(power * 1000),
        continuous: false,
    };
    let report = Report {
        format: crate::report::FORMAT,
        findings: Vec::new(),
        figures: Figures {
            spare: Vec::new(),
            protection: Vec::new(),
            limits: vec![
                limit("front", "5-20R", 16, 20, "front", LimitReason::Breaker, false),
                limit("twist", "L5-30R", 23, 23, "twist", LimitReason::RatedPower, false),
                limit("long", "L5-30R", 23, 23, "long", LimitReason::CordAmpacity, false),
                limit("box-left", "5-20R", 16, 20, "box-left", LimitReason::Breaker, true),
                limit("box-lamp", "5-15R", 12, 15, "box-lamp", LimitReason::Breaker, true),
            ],
            troubles: Vec::new(),
            verdicts: vec![verdict("box-left", &["kettle"]), verdict("box-lamp", &["lamp.1", "lamp.2"])],
            loads: vec![
                load("kettle", "Kettle", 1500),
                load("lamp.1", "String lamp", 20),
                load("lamp.2", "String lamp", 20),
            ],
            usable: Usable {
                rated_watts: watts(2800),
                peak_watts: watts(3300),
                reachable_watts: watts(2800),
                stranded_watts: watts(0),
            },
            drops: Vec::new(),
            drops_alone: Vec::new(),
            sharing: Sharing {
                placed: vec![
                    Placed { load: id("kettle"), at: id("box-left") },
                    Placed { load: id("lamp.1"), at: id("box-lamp") },
                    Placed { load: id("lamp.2"), at: id("box-lamp") },
                ],
                together: vec![vec![id("kettle"), id("lamp.1"), id("lamp.2")]],
                never: Vec::new(),
                start_order: vec![StartStep { load: id("kettle"), peak_watts: watts(1500) }],
                start_holds: true,
                ..Sharing::default()
            },
            lives_too_many: Vec::new(),
            energy: EnergyUse::default(),
            noise: NoiseAt::default(),
            volts: crate::report::Volts::default(),
            tests: Vec::new(),
            assumed: Vec::new(),
            matters: Vec::new(),
            looks: Vec::new(),
            next: Vec::new(),
        },
    };
    (plan, report)
}

fn text_of(pdf: &[u8]) -> String {
    pdf_extract::extract_text_from_mem(pdf).expect("text")
}

fn print(plan: &Plan, report: &Report, options: &Options) -> Result<Vec<(String, Vec<u8>)>, PrintError> {
    render(plan, report, &Words::english(), options)
}

/// Writes the printed files to a folder for inspection if the build sets `TALLYWATT_SHOW`.
fn show(files: &[(String, Vec<u8>)], under: &str) {
    if let Some(folder) = option_env!("TALLYWATT_SHOW") {
        let folder = std::path::Path::new(folder).join(under);
        std::fs::create_dir_all(&folder).expect("a folder");
        for (name, bytes) in files {
            crate::plan::store::write_atomic(&folder.join(name), bytes).expect("written");
        }
    }
}

#[test]
fn the_labels_carry_the_numbers_of_the_report() {
    let (plan, report) = small();
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let labels = text_of(&files[0].1);
    for text in ["box-left", "1,920\u{a0}W", "12\u{a0}A", "String lamp × 2", "Kettle"] {
        let spaced = text.replace('\u{a0}', " ");
        assert!(labels.contains(text) || labels.contains(&spaced), "{text} in {labels}");
    }
}

fn demo(text: &str) -> (Plan, Report) {
    let plan = crate::plan::read(text).expect("the demo reads");
    let report = crate::judge::build(&plan);
    (plan, report)
}

/// A plan file may leave out both names. A name of only blanks counts as none.
#[test]
fn a_plan_without_names_prints_under_those_that_the_interview_suggests() {
    for blank in ["", " \u{3000}"] {
        let (mut plan, _) = demo(crate::plan::demo::MENDED);
        plan.site.name = blank.to_owned();
        plan.generator.name = blank.to_owned();
        let report = crate::judge::build(&plan);
        for (name, pdf) in print(&plan, &report, &Options::default()).expect("printed") {
            let text = text_of(&pdf);
            assert!(text.contains("Camp weekend"), "{name}: {text}");
            if name == "labels.pdf" {
                assert!(text.contains("generator"), "{text}");
            }
        }
    }
}

#[test]
fn both_demo_plans_print() {
    for (name, text) in [("packed", crate::plan::demo::WEEKEND), ("mended", crate::plan::demo::MENDED)] {
        let (plan, report) = demo(text);
        let files = print(&plan, &report, &Options::default()).expect("printed");
        show(&files, name);
        assert_eq!(files.len(), 4);
        for (name, pdf) in &files {
            let text = text_of(pdf);
            assert!(text.contains("Juniper Cove"), "{name}: {text}");
        }
    }
}

#[test]
fn every_card_size_prints_in_one_ink() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    for (size, sheets) in [(CardSize::Sheet, 2), (CardSize::Half, 2), (CardSize::Pocket, 4)] {
        for paper in [Paper::Letter, Paper::A4] {
            let options = Options {
                card: size,
                paper,
                ink: Ink::Black,
                only: vec![Document::Card, Document::Cautions, Document::Labels],
                ..Options::default()
            };
            let files = print(&plan, &report, &options).expect("printed");
            show(&files, &format!("card-{size:?}-{paper:?}"));
            let pages = pdf_extract::Document::load_mem(&files[1].1).expect("a PDF");
            assert!(pages.get_pages().len() <= sheets, "{size:?} {paper:?}");
        }
    }
}

#[test]
fn dates_are_days_of_the_calendar() {
    assert_eq!(Date::from_str("2026-07-04").map(|date| date.to_string()), Ok("2026-07-04".to_owned()));
    for bad in ["2026-02-30", "2026-7", "tomorrow", ""] {
        assert_eq!(Date::from_str(bad), Err(()), "{bad}");
    }
}

fn renamed(plan: &mut Plan, name: &str) {
    plan.site.name = name.to_owned();
    plan.generator.name = name.to_owned();
    for load in &mut plan.loads {
        load.name = name.to_owned();
    }
}

#[test]
fn every_number_of_every_limit_is_on_its_label() {
    let words = Words::english();
    let (plan, report) = demo(crate::plan::demo::MENDED);
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let squeezed = |text: &str| -> String { text.chars().filter(|c| !c.is_whitespace()).collect() };
    let labels = squeezed(&text_of(&files[0].1));
    let worksheet = squeezed(&text_of(&files[3].1));
    for limit in &report.figures.limits {
        for amount in [limit.continuous_amps, limit.short_amps] {
            let shown = squeezed(&words.amount(amount, crate::words::Show::Capacity));
            assert!(labels.contains(&shown), "{} {shown}", limit.id);
            let exact = squeezed(&words.amount(amount, crate::words::Show::Exact));
            assert!(worksheet.contains(&exact), "{} {exact}", limit.id);
        }
        assert!(labels.contains(limit.id.as_str()), "{}", limit.id);
    }
}

#[test]
fn a_receptacle_of_a_danger_gets_no_amps_but_a_refusal_and_comes_first() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let labels = text_of(&files[0].1);
    let refused = labels.find("DO NOT USE").expect("a refusal");
    let first = labels.find("3 hours or more").expect("an ordinary label");
    assert!(refused < first);
    // Nobody is told to plug anything into the splitter.
    assert!(!labels.contains("Kettle"), "{labels}");
}

/// On a flag that folds around it and on a small label, with room for the word in every language.
#[test]
fn an_adapter_is_headed_so_on_its_label() {
    let labels = |tag: &str, length: &str, stock: &str| {
        let text = format!(
            "{}\n[[cord]]\nid = \"stub\"\nfrom = \"box-through\"\nplug = \"L5-30P\"\nends = [\"TT-30R\"]\n\
             wire = \"10 AWG\"\nconductors = 3\nlength = \"{length}\"\noutdoor = true\ncoiled = false\n",
            crate::plan::demo::MENDED
        );
        let (plan, report) = demo(&text);
        assert!(report.refused(&id("stub")).is_none());
        let options = Options {
            stock: Some(Stock::named(stock).expect("a stock")),
            only: vec![Document::Labels],
            ..Options::default()
        };
        let words = Words::new(tag, crate::words::Units::Customary).expect("a language");
        let files = render(&plan, &report, &words, &options).expect("printed");
        show(&files, &format!("adapter-{stock}-{tag}"));
        text_of(&files[0].1).to_uppercase()
    };
    for stock in ["letter-plain-6", "letter-8", "roll-24"] {
        assert!(labels("en", "2 ft", stock).contains("ADAPTER"), "{stock}");
        assert!(!labels("en", "25 ft", stock).contains("ADAPTER"), "{stock}");
    }
    for (tag, word) in [("es", "ADAPTADOR"), ("fr", "ADAPTATEUR"), ("de", "ADAPTER")] {
        assert!(labels(tag, "2 ft", "a4-24").contains(word), "{tag}");
    }
}

#[test]
fn the_same_plan_gives_the_same_bytes() {
    let (plan, report) = demo(crate::plan::demo::WEEKEND);
    let once = print(&plan, &report, &Options::default()).expect("printed");
    let again = print(&plan, &report, &Options::default()).expect("printed");
    assert!(once == again);
}

#[test]
fn the_documents_are_tagged_and_say_so() {
    let (plan, report) = small();
    for (name, pdf) in print(&plan, &report, &Options::default()).expect("printed") {
        assert!(String::from_utf8_lossy(&pdf).contains("pdfuaid"), "{name}");
        let pdf = pdf_extract::Document::load_mem(&pdf).expect("a PDF");
        let catalog = pdf.catalog().expect("a catalog");
        let language = catalog.get(b"Lang").and_then(pdf_extract::Object::as_str);
        assert_eq!(language.ok(), Some(b"en".as_slice()), "{name}");
        assert!(catalog.has(b"StructTreeRoot"), "{name}");
    }
}

#[test]
fn a_date_is_printed_only_when_it_is_given() {
    let (plan, report) = small();
    let date = Date::from_str("2026-07-04").ok();
    let options = Options { date, ..Options::default() };
    let with_date = print(&plan, &report, &options).expect("printed");
    let without = print(&plan, &report, &Options::default()).expect("printed");
    for (name, dated) in &with_date {
        let raw = String::from_utf8_lossy(dated);
        assert!(raw.contains("pdfaid"), "{name}");
        assert!(raw.contains("pdfuaid"), "{name}");
    }
    for ((name, dated), (_, plain)) in with_date.iter().zip(&without) {
        assert!(text_of(dated).contains("2026-07-04"), "{name}");
        assert!(!text_of(plain).contains("2026"), "{name}");
    }
}

#[test]
fn every_stock_takes_the_demo_from_any_position() {
    for (name, text) in Stock::names().into_iter().flat_map(|name| {
        let demos = [crate::plan::demo::MENDED, crate::plan::demo::WEEKEND];
        demos.map(|text| (name.clone(), text))
    }) {
        let (plan, report) = demo(text);
        let stock = Stock::named(&name).expect("a stock");
        let count = stock.count();
        let options =
            Options { stock: Some(stock), start_at: count, only: vec![Document::Labels], ..Options::default() };
        let files = print(&plan, &report, &options).unwrap_or_else(|error| panic!("{name}: {error}"));
        show(&files, &name);
        let beyond = Options { start_at: count + 1, ..options };
        assert!(matches!(print(&plan, &report, &beyond), Err(PrintError::BadStart { .. })));
    }
}

#[test]
fn markup_in_a_name_is_only_text() {
    let (mut plan, _) = demo(crate::plan::demo::MENDED);
    let hostile = "#panic() $x^2$ *b* _i_ @ref <l> \\n `r` {}";
    renamed(&mut plan, hostile);
    let report = crate::judge::build(&plan);
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let card = text_of(&files[1].1);
    assert!(card.contains("#panic()"), "{card}");
}

#[test]
fn names_without_glyphs_are_named_whole() {
    for name in ["湖畔", "Kettle 🔌", "bell\u{7}", "turned\u{202e}about"] {
        let (mut plan, _) = demo(crate::plan::demo::MENDED);
        plan.loads[0].name = name.to_owned();
        let report = crate::judge::build(&plan);
        match print(&plan, &report, &Options::default()) {
            Err(PrintError::NoGlyph { text, characters }) => {
                assert!(text.contains(name), "{text:?}");
                assert!(!characters.is_empty());
            }
            other => panic!("{name:?}: {:?}", other.map(|files| files.len())),
        }
    }
}

#[test]
fn names_in_other_scripts_print() {
    for name in ["Čajník Žaneta", "Чайник", "Βραστήρας", "קומקום", "e\u{301}tang"] {
        let (mut plan, _) = demo(crate::plan::demo::MENDED);
        renamed(&mut plan, name);
        let report = crate::judge::build(&plan);
        if let Err(error) = print(&plan, &report, &Options::default()) {
            panic!("{name}: {error}");
        }
    }
}

#[test]
fn long_names_fit_or_are_named() {
    let long = "Extraordinarily long name of a thing that somebody typed without thinking of labels";
    let unbreakable = "W".repeat(120);
    for name in [long, unbreakable.as_str()] {
        let (mut plan, _) = demo(crate::plan::demo::MENDED);
        renamed(&mut plan, name);
        let report = crate::judge::build(&plan);
        match print(&plan, &report, &Options::default()) {
            Ok(_) => {}
            Err(PrintError::TooLong { misfits, .. }) => {
                assert!(misfits.iter().all(|misfit| misfit.percent < 100), "{misfits:?}");
                assert!(misfits.iter().any(|misfit| misfit.text.contains(name)), "{misfits:?}");
            }
            Err(other) => panic!("{name}: {other}"),
        }
    }
}

#[test]
fn the_longest_ids_print() {
    let with = |left: &str, tents: &str| {
        crate::plan::demo::MENDED.replace("box-left", left).replace("\"tents", &format!("\"{tents}"))
    };
    let (left, tents) = ("the-left-receptacle-of-the-yellow-box-01", "cord_from_the_generator_to_the_far_tents");
    assert_eq!((left.len(), tents.len()), (Id::LONGEST, Id::LONGEST));
    let (plan, report) = demo(&with(left, tents));
    let files = print(&plan, &report, &Options::default()).expect("printed");
    show(&files, "long-ids");
    // Forty wide letters take several lines.
    let wide = "m".repeat(Id::LONGEST);
    let (plan, report) = demo(&with(&wide, tents));
    let files = print(&plan, &report, &Options::default()).expect("printed");
    show(&files, "wide-ids");
    // Ids also appear exactly as typed.
    let data = template_data(&plan, &report, &Words::english(), &Options::default());
    let labels = data::labels_in(&data.expect("data")[0].1);
    assert!(labels.iter().any(|(name, _)| *name == wide), "{labels:?}");
    // On small cards too, where our own sentences quote them.
    for card in [CardSize::Half, CardSize::Pocket, CardSize::Phone] {
        for words in hostile::languages() {
            let options = Options { card, only: vec![Document::Card], ..Options::default() };
            let made = render(&plan, &report, &words, &options);
            assert!(made.is_ok(), "{card:?} {}: {:?}", words.language(), made.err());
        }
    }
}

#[test]
fn own_templates_are_used_and_a_broken_one_is_shown_in_its_place() {
    let (plan, report) = small();
    let with = |path: &str, text: String| {
        let options = Options {
            only: vec![Document::Cautions],
            templates: [(path.to_owned(), text)].into(),
            ..Options::default()
        };
        print(&plan, &report, &options)
    };
    let built_in = |wanted: &str| {
        let all = templates();
        let found = all.iter().find(|(path, _)| *path == wanted);
        found.expect("a template").1.to_owned()
    };
    let cautions = built_in("cautions.typ");
    let own = cautions.replace("w.cautions-always", "[Ask Robin first]");
    assert_ne!(own, cautions);
    let files = with("cautions.typ", own).expect("printed");
    assert!(text_of(&files[0].1).contains("Ask Robin first"));
    // A new file beside the templates is accepted too.
    let files = with("lib/ours.typ", "#let x = 1".to_owned()).expect("printed");
    assert_eq!(files.len(), 1);
    let broken = built_in("lib/base.typ") + "\n#let x = no-such-thing\n";
    let lines = broken.lines().count();
    match with("lib/base.typ", broken) {
        Err(PrintError::Template { file, line, column, message }) => {
            assert_eq!((file.as_str(), line, column), ("lib/base.typ", lines, 10));
            assert!(message.contains("no-such-thing"), "{message}");
        }
        other => panic!("{:?}", other.map(|files| files.len())),
    }
}

#[test]
fn all_pages_are_on_the_contact_sheet() {
    let (plan, report) = small();
    let options = Options { png: true, ..Options::default() };
    let files = print(&plan, &report, &options).expect("printed");
    let pictures: Vec<&str> = files
        .iter()
        .map(|(name, _)| name.as_str())
        .filter(|name| !Document::ALL.iter().any(|of| of.file_name() == *name))
        .collect();
    assert!(pictures.contains(&"card-2.png") && pictures.contains(&"contact.png"));
    // The first chunk of a PNG holds its width and height. A row has at most five pages.
    let (_, sheet) = files.last().expect("a contact sheet");
    let number = |at: usize| u32::from_be_bytes(sheet[at..at + 4].try_into().expect("four"));
    let count = u32::try_from(pictures.len() - 1).expect("few");
    let (wide, high) = (number(16), number(20));
    assert!(wide > 400 * count.min(5), "{wide} for {count}");
    assert!(high > 500 * count.div_ceil(5), "{high} for {count}");
    show(&files, "contact");
}

#[test]
fn missing_words_stop_the_press() {
    let (plan, report) = small();
    let words = Words::english();
    let _ = words.text("no-such-message");
    assert!(matches!(render(&plan, &report, &words, &Options::default()), Err(PrintError::WordsIncomplete { .. })));
}

#[test]
fn every_error_has_words() {
    let words = Words::english();
    let text = || "text".to_owned();
    let mut said = crate::words::spoken::Once::default();
    for error in [
        PrintError::WordsIncomplete { faults: vec![text()] },
        PrintError::NoGlyph { text: text(), characters: text() },
        PrintError::TooLong { document: Document::Card, misfits: vec![Misfit { text: text(), percent: 80 }] },
        PrintError::OffPage { document: Document::Card, text: text(), page: 1 },
        PrintError::TooSmall { document: Document::Card, text: text(), page: 1, percent: 90 },
        PrintError::UnknownStock { name: text(), known: Stock::names() },
        PrintError::BadStock { name: text(), message: text() },
        PrintError::BadStart { start_at: 9, count: 6 },
        PrintError::Template { file: text(), line: 1, column: 2, message: text() },
    ] {
        assert!(!error.in_words(&words).is_empty());
        said.add(&error.in_words(&words));
        assert!(words.faults().is_empty(), "{:?}", words.faults());
    }
    insta::assert_snapshot!("errors_of_printing", said.text);
}

/// Hebrew between Latin letters and digits: each keeps its own direction.
#[test]
fn names_from_right_to_left_are_set_apart() {
    let (mut plan, _) = demo(crate::plan::demo::MENDED);
    plan.loads[0].name = "קומקום 7".to_owned();
    let report = crate::judge::build(&plan);
    let data = template_data(&plan, &report, &Words::english(), &Options::default());
    let (_, card) = data.expect("data").swap_remove(1);
    assert!(card.contains("\u{2068}קומקום 7\u{2069}"), "{card}");
    let files = print(&plan, &report, &Options::default()).expect("printed");
    show(&files, "right-to-left");
}

/// A receptacle live at a different voltage is refused by a caution, and its panel has the colors of a caution. A panel
/// for a danger has the colors of a danger.
#[test]
fn a_refusal_has_the_colours_of_its_signal() {
    let levels = |text: &str| -> Vec<(String, String)> {
        let (plan, report) = demo(text);
        let data = template_data(&plan, &report, &Words::english(), &Options::default());
        let (document, labels) = data.expect("data").swap_remove(0);
        assert_eq!(document, Document::Labels);
        let labels: serde_json::Value = serde_json::from_str(&labels).expect("JSON");
        let items = labels["items"].as_array().expect("items");
        let text = |of: &serde_json::Value| of.as_str().map(str::to_owned);
        items.iter().filter_map(|item| Some((text(&item["id"])?, text(&item["level"])?))).collect()
    };
    let adapter = "[[cord]]\nid = \"ad\"\nfrom = \"box-left\"\nplug = \"5-20P\"\nends = [\"6-20R\"]\n\
         wire = \"12 AWG\"\nconductors = 3\nlength = \"1 ft\"\ncoiled = false\n[[load]]";
    let live = crate::plan::demo::MENDED.replacen("[[load]]", adapter, 1);
    let pair = |id: &str, level: &str| (id.to_owned(), level.to_owned());
    let cautioned = levels(&live);
    assert!(cautioned.contains(&pair("ad", "caution")), "{cautioned:?}");
    let refused = levels(crate::plan::demo::WEEKEND);
    assert!(refused.contains(&pair("triple", "danger")), "{refused:?}");
}

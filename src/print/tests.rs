//! Prints of a small report made by hand.

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

fn watts(watts: i64) -> Amount {
    Amount::of(Power::from_milliwatts(watts * 1000))
}

fn amps(amps: i64) -> Amount {
    Amount::of(Current::from_milliamps(amps * 1000))
}

fn outlet(name: &str, shape: &str, breaker: i64, gfci: bool) -> Outlet {
    Outlet {
        id: id(name),
        shape: Receptacle::named(shape).expect("a shape"),
        sockets: None,
        breaker: Answer::Known(Current::from_milliamps(breaker * 1000)),
        shares: None,
        trips_at: None,
        gfci: Answer::Known(gfci),
        wire: Answer::Missing,
        leg: Answer::Missing,
    }
}

fn limit(
    name: &str,
    shape: &str,
    long: i64,
    short: i64,
    by: &str,
    reason: LimitReason,
    gfci: bool,
) -> Limit {
    Limit {
        id: id(name),
        shape: Receptacle::named(shape).expect("a shape"),
        volts: Amount::of(Voltage::from_millivolts(120_000)),
        marked_amps: amps(short),
        continuous_amps: amps(long),
        short_amps: amps(short),
        continuous_watts: watts(long * 120),
        short_watts: watts(short * 120),
        set_by: SetBy {
            id: id(by),
            reason,
            enforced: reason.enforced(),
        },
        gfci,
        path: vec![id("twist"), id("long"), id(name)],
    }
}

fn small() -> (Plan, Report) {
    let plan = Plan {
        region: Region::NorthAmerica,
        site: Site {
            name: "Pebble Tarn".into(),
            ..Site::default()
        },
        generator: Generator {
            name: "the blue one".into(),
            rated: Power::from_milliwatts(2_800_000),
            outlets: vec![
                outlet("front", "5-20R", 20, false),
                outlet("twist", "L5-30R", 30, false),
            ],
            ..Generator::default()
        },
        cords: vec![Cord {
            id: id("long"),
            from: Some(id("twist")),
            plug: Plug::named("L5-30P").expect("a shape"),
            ends: vec![Receptacle::named("L5-30R").expect("a shape")],
            wire: Answer::Known(Wire::Awg(10)),
            conductors: Answer::Known(3),
            length: Answer::Known(Length::from_millimetres(22_860)),
            outdoor: Answer::Known(true),
            coiled: Answer::Known(false),
            gfci: Answer::Missing,
        }],
        boxes: vec![DistributionBox {
            id: id("box"),
            from: Some(id("long")),
            inlet: Plug::named("L5-30P").expect("a shape"),
            listed: Answer::Known(true),
            bond: Answer::Known(false),
            outlets: vec![
                outlet("box-left", "5-20R", 20, true),
                outlet("box-lamp", "5-15R", 15, true),
            ],
        }],
        loads: Vec::new(),
    };
    let load = |name: &str, label: &str, power: i64| LoadFacts {
        id: id(name),
        of: id(name),
        name: label.into(),
        kind: LoadKind::Heater,
        volts: Amount::of(Voltage::from_millivolts(120_000)),
        running_watts: watts(power),
        running_amps: amps(power / 120),
        starting_watts: watts(power),
        starting_amps: amps(power / 120),
        continuous: false,
    };
    let report = Report {
        format: crate::report::FORMAT,
        findings: Vec::new(),
        figures: Figures {
            limits: vec![
                limit(
                    "front",
                    "5-20R",
                    16,
                    20,
                    "front",
                    LimitReason::Breaker,
                    false,
                ),
                limit(
                    "twist",
                    "L5-30R",
                    23,
                    23,
                    "twist",
                    LimitReason::RatedPower,
                    false,
                ),
                limit(
                    "long",
                    "L5-30R",
                    23,
                    23,
                    "long",
                    LimitReason::CordAmpacity,
                    false,
                ),
                limit(
                    "box-left",
                    "5-20R",
                    16,
                    20,
                    "box-left",
                    LimitReason::Breaker,
                    true,
                ),
                limit(
                    "box-lamp",
                    "5-15R",
                    12,
                    15,
                    "box-lamp",
                    LimitReason::Breaker,
                    true,
                ),
            ],
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
            sharing: Sharing {
                placed: vec![
                    Placed {
                        load: id("kettle"),
                        at: id("box-left"),
                    },
                    Placed {
                        load: id("lamp.1"),
                        at: id("box-lamp"),
                    },
                    Placed {
                        load: id("lamp.2"),
                        at: id("box-lamp"),
                    },
                ],
                together: vec![vec![id("kettle"), id("lamp.1"), id("lamp.2")]],
                never: Vec::new(),
                start_order: vec![StartStep {
                    load: id("kettle"),
                    peak_watts: watts(1500),
                }],
                start_holds: true,
                ..Sharing::default()
            },
            energy: EnergyUse::default(),
            noise: NoiseAt::default(),
            assumed: Vec::new(),
        },
    };
    (plan, report)
}

fn text_of(pdf: &[u8]) -> String {
    pdf_extract::extract_text_from_mem(pdf).expect("text")
}

fn print(
    plan: &Plan,
    report: &Report,
    options: &Options,
) -> Result<Vec<(String, Vec<u8>)>, PrintError> {
    render(plan, report, &Words::english(), options)
}

/// Writes what was printed where somebody can look at it, if asked to.
fn show(files: &[(String, Vec<u8>)], under: &str) {
    if let Some(folder) = option_env!("TALLYWATT_SHOW") {
        let folder = std::path::Path::new(folder).join(under);
        std::fs::create_dir_all(&folder).expect("a folder");
        for (name, bytes) in files {
            std::fs::write(folder.join(name), bytes).expect("written");
        }
    }
}

#[test]
fn the_labels_carry_the_numbers_of_the_report() {
    let (plan, report) = small();
    let files = print(&plan, &report, &Options::default()).expect("printed");
    let labels = text_of(&files[0].1);
    for text in [
        "box-left",
        "1,920\u{a0}W",
        "12\u{a0}A",
        "String lamp × 2",
        "Kettle",
    ] {
        let spaced = text.replace('\u{a0}', " ");
        assert!(
            labels.contains(text) || labels.contains(&spaced),
            "{text} in {labels}"
        );
    }
}

fn demo(text: &str) -> (Plan, Report) {
    let plan = crate::plan::read(text).expect("the demo reads");
    let report = crate::report::build(&plan);
    (plan, report)
}

#[test]
fn both_demo_plans_print() {
    for (name, text) in [
        ("packed", crate::plan::demo::WEEKEND),
        ("mended", crate::plan::demo::MENDED),
    ] {
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
fn dates_are_days_of_the_calendar() {
    assert_eq!(
        Date::from_str("2026-07-04").map(|date| date.to_string()),
        Ok("2026-07-04".to_owned())
    );
    for bad in ["2026-02-30", "2026-7", "tomorrow", ""] {
        assert_eq!(Date::from_str(bad), Err(()), "{bad}");
    }
}

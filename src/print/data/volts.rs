//! Volts on paper: what a meter should read at each step, the worst of them, and how long each cord
//! might be.

use super::Context;
use super::worksheet::{Cell, Section, Sheet, ohms_column, ohms_per_thousand};
use crate::plan::Id;
use crate::quantity::{Length, Voltage, Wire};
use crate::report::{Longest, StepVolts, Through, Worst};
use crate::tables::copper::COPPER;
use crate::tables::volts::RANGE_A;

/// What passes each cord times its resistance, cord by cord.
pub(super) fn amps_times_ohms(context: &Context<'_>, cords: &[Through]) -> String {
    let terms: Vec<String> = cords
        .iter()
        .map(|through| {
            let (amps, ohms) = (context.exact(through.amps), context.exact(through.ohms));
            format!("{amps}\u{a0}×\u{a0}{ohms}")
        })
        .collect();
    if terms.is_empty() {
        "–".to_owned()
    } else {
        terms.join(" + ")
    }
}

/// The worksheet's section on each step of switching on.
pub(super) fn steps(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let rows = context.report.figures.volts.steps.iter().map(|step| {
        let boxes: Vec<String> = step
            .boxes
            .iter()
            .map(|reading| format!("{} {}", reading.at, context.capacity(reading.volts)))
            .collect();
        vec![
            context.load_name(&step.load),
            step.receptacle.to_string(),
            context.capacity(step.dips_to),
            context.capacity(step.volts),
            boxes.join(", "),
        ]
    });
    sheet.section(
        "volts",
        vec![
            context.say("ws-volts-how", &[]),
            context.say("ws-volts-low", &[]),
        ],
        &[COPPER.awg_source],
        &[
            ("load", 4),
            ("at", 3),
            ("#dips", 2),
            ("#reads-volts", 2),
            ("boxes", 4),
        ],
        rows.collect::<Vec<Vec<String>>>(),
    )
}

/// The worksheet's section on the worst.
pub(super) fn worst(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let volts = &context.report.figures.volts;
    let row = |key: &str, worst: &Worst| {
        let starts = worst
            .starting
            .as_ref()
            .map_or_else(String::new, |id| context.load_name(id));
        let running: Vec<&Id> = worst
            .running
            .iter()
            .filter(|id| Some(*id) != worst.starting.as_ref())
            .collect();
        vec![
            context.say(key, &[("starts", &starts)]),
            context.load_names(running).join(", "),
            worst.receptacle.to_string(),
            amps_times_ohms(context, &worst.cords),
            context.exact(worst.lost),
            context.exact(worst.percent),
            context.exact(worst.left),
        ]
    };
    let rows = [
        ("ws-worst-running", &volts.worst_running),
        ("ws-worst-start", &volts.worst_start),
    ];
    let rows = rows
        .into_iter()
        .filter_map(|(key, worst)| Some(row(key, worst.as_ref()?)))
        .collect::<Vec<Vec<String>>>();
    let range = |volts: Option<Voltage>| volts.map_or_else(String::new, |it| context.exact(it));
    sheet.section(
        "worst",
        vec![
            context.say("ws-worst-how", &[]),
            context.say("ws-worst-amps", &[]),
            context.say(
                "ws-worst-range",
                &[
                    ("least", &range(volts.service_least)),
                    ("most", &range(volts.service_most)),
                ],
            ),
        ],
        &[RANGE_A],
        &[
            ("what", 3),
            ("beside", 5),
            ("at", 3),
            ("amps-ohms", 5),
            ("#lost", 2),
            ("#lost-percent", 2),
            ("#left", 2),
        ],
        rows,
    )
}

/// Gauges that cords are sold in, thinnest first; the report has others too.
const SOLD: [Wire; 5] = [
    Wire::Awg(16),
    Wire::Awg(14),
    Wire::Awg(12),
    Wire::Awg(10),
    Wire::Awg(8),
];

/// The worksheet's section on how long each cord might be: a row for each gauge that carries what
/// passes the cord.
pub(super) fn longest(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let long = |length: Length| Cell::from(context.capacity(length));
    let row = |of: &Longest| -> Option<Vec<Cell>> {
        let wire = SOLD.iter().find(|wire| wire.to_string() == of.wire)?;
        Some(vec![
            of.cord.to_string().into(),
            context.exact(of.amps).into(),
            of.wire.clone().into(),
            ohms_per_thousand(sheet, *wire),
            long(of.for_3_percent),
            long(of.for_5_percent),
        ])
    };
    let longest = context.report.figures.volts.longest.iter();
    sheet.section(
        "longest",
        vec![
            context.say("ws-longest-how", &[]),
            context.say("ws-longest-advice", &[]),
        ],
        &[crate::rules::DROP_ADVICE],
        &[
            ("cord", 4),
            ("#amps", 2),
            ("wire", 2),
            (ohms_column(context), 3),
            ("#at-3", 2),
            ("#at-5", 2),
        ],
        longest.filter(|of| of.carries).filter_map(row).collect(),
    )
}

/// What a plug-in meter should read when all of the card's start order is on: at each box; where there
/// is none at all, at the receptacle of the last. The worksheet has every place and every step.
pub(super) fn readings(context: &Context<'_>) -> Vec<String> {
    let volts = &context.report.figures.volts.steps;
    let Some(last): Option<&StepVolts> = volts.last() else {
        return Vec::new();
    };
    let say = |key: &str, at: &Id, volts: Voltage| {
        let volts = context.capacity(volts);
        context.say(key, &[("at", at.as_str()), ("volts", &volts)])
    };
    if context.plan.boxes.is_empty() {
        return vec![say("start-meter-outlet", &last.receptacle, last.volts)];
    }
    let boxes = last.boxes.iter();
    let boxes = boxes.filter(|reading| context.report.usable(&reading.at));
    boxes
        .map(|reading| say("start-meter", &reading.at, reading.volts))
        .collect()
}

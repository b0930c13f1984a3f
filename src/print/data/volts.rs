//! Voltage drop on paper: what a meter should read at each step, the worst drops, and how long each cord may be.

use super::worksheet::{Section, Sheet, ohms_per, ohms_per_thousand};
use super::{Context, choices};
use crate::plan::Id;
use crate::quantity::{Length, Voltage, Wire};
use crate::report::{Drop, Limit, Longest, StepVolts, Through, Worst};
use crate::supply::NodeIx;
use crate::tables::copper::COPPER;
use crate::tables::volts::RANGE_A;

/// Formats the current through each cord times its resistance, cord by cord.
pub(super) fn amps_times_ohms(context: &Context<'_>, cords: &[Through]) -> String {
    let terms: Vec<String> = cords
        .iter()
        .map(|through| {
            let (amps, ohms) = (context.exact(through.amps), context.exact(through.ohms));
            format!("{amps}\u{a0}×\u{a0}{ohms}")
        })
        .collect();
    if terms.is_empty() { "–".to_owned() } else { terms.join(" + ") }
}

/// Returns the worksheet's section on voltage drop: the worst while running and at a moment of starting, then the most
/// that is lost at each other receptacle.
pub(super) fn drops(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let figures = &context.report.figures;
    let worst = |key: &str, worst: &Worst| {
        let starts = worst.starting.as_ref();
        let running: Vec<&Id> = worst.running.iter().filter(|id| Some(*id) != starts).collect();
        let starts = starts.map_or_else(String::new, |id| context.load_name(id));
        vec![
            worst.receptacle.to_string(),
            context.say(key, &[("starts", &starts)]),
            context.load_names(running).join(", "),
            amps_times_ohms(context, &worst.cords),
            context.exact(worst.lost),
            context.exact(worst.percent),
            context.exact(worst.left),
        ]
    };
    let (running, start) = (&figures.volts.worst_running, &figures.volts.worst_start);
    let mut rows: Vec<Vec<String>> = Vec::new();
    rows.extend(running.iter().map(|it| worst("ws-worst-running", it)));
    rows.extend(start.iter().map(|it| worst("ws-worst-start", it)));
    let mut told: Vec<&Id> = running.iter().map(|it| &it.receptacle).collect();
    let mut drops: Vec<&Drop> = figures.drops.iter().collect();
    drops.sort_by_key(|drop| std::cmp::Reverse(drop.volts_running));
    for drop in drops {
        if told.contains(&&drop.receptacle) {
            continue;
        }
        told.push(&drop.receptacle);
        rows.push(vec![
            drop.receptacle.to_string(),
            context.say("ws-worst-running", &[]),
            beside(context, drop),
            amps_times_ohms(context, &drop.cords),
            context.exact(drop.volts_running),
            context.exact(drop.percent_running),
            context.exact(drop.volts_left),
        ]);
    }
    let range = |volts: Option<Voltage>| volts.map_or_else(String::new, |it| context.exact(it));
    let range = context.say(
        "ws-worst-range",
        &[("least", &range(figures.volts.service_least)), ("most", &range(figures.volts.service_most))],
    );
    let two_legs = context.supply.node(NodeIx(0)).legs.all().len() > 1;
    let legs = two_legs.then(|| context.say("ws-drops-legs", &[]));
    let says = ["ws-drops-formula", "ws-drops-start"].map(|key| context.say(key, &[]));
    sheet.section(
        "drops",
        says.into_iter().chain(legs).chain([range]).collect(),
        &[RANGE_A],
        &[("at", 3), ("what", 4), ("beside", 7), ("amps-ohms", 5), ("#lost", 2), ("#lost-percent", 2), ("#left", 2)],
        rows,
    )
}

/// Returns what runs beside a load: the number of its set, or the names if the set is not listed.
fn beside(context: &Context<'_>, drop: &Drop) -> String {
    let names = |ids: &[Id]| context.words.set_names(context.report, ids);
    let own = names(&drop.beside);
    let sets = &context.report.figures.sharing.together;
    match sets.iter().position(|set| names(set) == own) {
        Some(at) => context.say("ws-set", &[("number", &(at + 1).to_string())]),
        None => own.join(", "),
    }
}

/// Gauges that cords are sold in, thinnest first. The report has others too.
const SOLD: [Wire; 5] = [Wire::Awg(16), Wire::Awg(14), Wire::Awg(12), Wire::Awg(10), Wire::Awg(8)];

/// Returns the worksheet's section on how long each cord may be, for each gauge that carries the cord's current.
pub(super) fn longest(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let all = &context.report.figures.volts.longest;
    let of = |cord: &Id, length: &dyn Fn(&Longest) -> Length| {
        let gauges = SOLD.iter().filter_map(|wire| {
            let name = wire.to_string();
            let mut longest = all.iter().filter(|it| it.carries);
            let found = longest.find(|it| it.cord == *cord && it.wire == name)?;
            let length = context.capacity(length(found));
            Some(format!("{}\u{a0}{length}", name.replace(' ', "\u{a0}")))
        });
        gauges.collect::<Vec<String>>().join("; ")
    };
    let mut rows: Vec<Vec<String>> = Vec::new();
    for one in all.iter().filter(|it| it.carries) {
        if rows.iter().all(|row| row[0] != one.cord.as_str()) {
            rows.push(vec![
                one.cord.to_string(),
                context.exact(one.amps),
                of(&one.cord, &|it| it.for_3_percent),
                of(&one.cord, &|it| it.for_5_percent),
            ]);
        }
    }
    rows.retain(|row| !row[2].is_empty());
    let ohms = SOLD.map(|wire| {
        let ohms = ohms_per_thousand(sheet, wire).text;
        format!("{wire} {ohms}").replace(' ', "\u{a0}")
    });
    sheet.section(
        "longest",
        vec![
            context.say("ws-longest-how", &[]),
            context
                .say("ws-longest-ohms", &[("per", &context.say(ohms_per(context), &[])), ("ohms", &ohms.join("; "))]),
            context.say("ws-longest-advice", &[]),
        ],
        &[COPPER.awg_source, crate::rules::DROP_ADVICE],
        &[("cord", 4), ("#amps", 2), ("at-3", 9), ("at-5", 9)],
        rows,
    )
}

/// Returns what a plug-in meter should read once everything in the card's start order is on: at each box, or at the
/// last load's receptacle if the plan has no box. The worksheet has every place and every step.
pub(super) fn readings(context: &Context<'_>) -> Vec<String> {
    let volts = &context.report.figures.volts.steps;
    let Some(last): Option<&StepVolts> = volts.last() else {
        return Vec::new();
    };
    // If the card shows a single set, it has no columns.
    let on = match *choices::shown(context) {
        [_] => "all",
        _ => "column",
    };
    let say = |key: &str, at: &Id, volts: Voltage| {
        let volts = context.capacity(volts);
        let nominal = context.exact(context.plan.line_to_neutral());
        let values = [("on", on), ("at", at.as_str()), ("volts", &volts), ("nominal", &nominal)];
        context.say(key, &values)
    };
    if context.plan.boxes.is_empty() {
        // A plug-in meter fits only household receptacles.
        let household = |limit: &Limit| limit.shape.0.household();
        let takes_meter = context.limit(&last.receptacle).is_some_and(household);
        return takes_meter.then(|| say("start-meter-outlet", &last.receptacle, last.volts)).into_iter().collect();
    }
    let boxes = last.boxes.iter();
    let boxes = boxes.filter(|reading| context.report.usable(&reading.at));
    // Nobody knows what is lost in a camper's own cord and wiring.
    let boxes = boxes.filter(|reading| context.plan.camper(&reading.at).is_none());
    boxes.map(|reading| say("start-meter", &reading.at, reading.volts)).collect()
}

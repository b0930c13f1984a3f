//! What the equipment can do: the generator, every point of the supply, cords, and what protects them.

use std::fmt::Write as _;

use rust_decimal::Decimal;

use super::super::Context;
use super::case::lines;
use super::{Cell, Section, Sheet};
use crate::plan::{Answer, Cord, Id};
use crate::quantity::{Current, Length, Power, Ratio, Wire};
use crate::rules;
use crate::supply::{COILED_DIVISOR, LimitReason, Node, NodeIx, NodeKind, UNKNOWN_WIRING, usual_mark};
use crate::tables::conductor::{CONDUCTORS, flexible_ampacity, flexible_source, share_in_air, wiring_source};
use crate::tables::copper::{COPPER, one_way};
use crate::tables::derating::{METHODS, Method, Told};
use crate::tables::shape;
use crate::tables::source::Source;
use crate::words::Units;

/// Formats a published figure in the reader's units, to a tenth. Feet have three figures, as in the manual that gives
/// the meters: 328 and 4000. `zero` is the Fahrenheit temperature at 0 °C: 32 for a
/// temperature, and 0 for a difference.
fn own_units(context: &Context<'_>, count: Decimal, unit: &str, zero: Decimal) -> String {
    let (foot, degree) = (Decimal::new(3048, 4), Decimal::new(18, 1));
    let (count, unit) = match (context.words.units(), unit) {
        (Units::Customary, "m") => ((count / foot).round_sf(3).unwrap_or(count / foot), "ft"),
        (Units::Customary, "°C") => (count * degree + zero, "°F"),
        (Units::Metric, "ft") => (count * foot, "m"),
        (Units::Metric, "°F") => ((count - zero) / degree, "°C"),
        _ => (count, unit),
    };
    let number = context.words.number(count.round_dp(1).normalize());
    format!("{number}\u{a0}{unit}")
}

pub(super) fn power(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let (set, site) = (&context.plan.generator, &context.plan.site);
    let usable = &context.report.figures.usable;
    let line = |key: &str, value: Cell| vec![context.say(key, &[]).into(), value];
    // Whole watts, since the inputs are no finer.
    let gives = |power: Power| Cell::from(context.capacity(power));
    let formula = |key: &str, method: &Method| {
        let step = |(count, unit): Told| own_units(context, count, unit, Decimal::ZERO);
        let place = |(count, unit): Told| own_units(context, count, unit, Decimal::from(32));
        let number = |number: Decimal| context.words.number(number);
        let (altitude, air) = (method.altitude.told, method.air.told);
        context.say(
            key,
            &[
                ("altitude-percent", &number(altitude.0)),
                ("altitude-per", &step(altitude.1)),
                ("altitude-above", &place(altitude.2)),
                ("air-percent", &number(air.0)),
                ("air-per", &step(air.1)),
                ("air-above", &place(air.2)),
            ],
        )
    };
    let mut rows = vec![
        line("ws-power-marked", sheet.answered(&set.rated, "generator.rated", None, |it| context.exact(*it))),
        line("ws-power-peak-marked", sheet.answered(&set.peak, "generator.peak", None, |it| context.exact(*it))),
    ];
    if let Some(left) = sheet.taken("generator.rated_on") {
        rows.push(line("ws-power-propane", sheet.assumed_to_be(left, Some(&METHODS.propane_source))));
    }
    let (altitude, air) = (context.supply.altitude, context.supply.air);
    let place = |known: bool, text: String| {
        if known { sheet.planned(text) } else { sheet.assumed_to_be(text, None) }
    };
    rows.push(line("ws-power-altitude", place(site.altitude.is_known(), context.at_least(altitude))));
    rows.push(line("ws-power-air", place(site.air.is_known(), context.exact(air))));
    for (key, method) in [("ws-power-loss-formula", &METHODS.formula), ("ws-power-loss-thumb", &METHODS.rule_of_thumb)]
    {
        let losses = method.losses(altitude, air);
        let [height, heat] = losses.map(|loss| context.demand(loss));
        rows.push(line(key, sheet.sourced(format!("{height} + {heat}"), &method.source)));
    }
    rows.extend([
        line("ws-power-rated", gives(usable.rated_watts)),
        line("ws-power-peak", gives(usable.peak_watts)),
        line("ws-power-reachable", gives(usable.reachable_watts)),
        line("ws-power-stranded", gives(usable.stranded_watts)),
    ]);
    sheet.section(
        "power",
        vec![
            formula("ws-power-formula", &METHODS.formula),
            formula("ws-power-thumb", &METHODS.rule_of_thumb),
            context.say("ws-power-less", &[]),
        ],
        &[],
        &[("what", 3), ("#figure", 2)],
        rows,
    )
}

/// Whether this is a camper's main breaker whose rating nobody has read.
fn guessed_main(context: &Context<'_>, node: &Node) -> bool {
    let camper = context.plan.camper(&node.id);
    camper.is_some_and(|it| !it.breaker.is_known())
}

/// Returns what a point of the tree carries, with the origin of that figure.
fn rating(sheet: &Sheet<'_>, node: &Node) -> Cell {
    let context = sheet.context;
    let text = context.exact(node.rating);
    match node.kind {
        // Calculated: here, and in the section on cords.
        NodeKind::Source | NodeKind::Cord { .. } => text.into(),
        _ if node.reason == LimitReason::NotFed => text.into(),
        NodeKind::Breaker { .. } if guessed_main(context, node) => sheet.assumed_to_be(text, Some(&rules::CAMPER_MAIN)),
        NodeKind::Breaker { .. } if node.reason != LimitReason::Receptacle => sheet.planned(text),
        // The breaker is unknown, and the receptacles are all there is to go by.
        NodeKind::Breaker { .. } => sheet.assumed_to_be(text, Some(&shape::SOURCE)),
        NodeKind::Wiring => {
            let outlets = context.plan.boxes.iter().flat_map(|holder| &holder.outlets);
            let mut wires = outlets.filter(|it| it.id == node.id).map(|it| it.wire);
            let wire = wires.next().unwrap_or_default().or(UNKNOWN_WIRING);
            sheet.sourced(text, wiring_source(wire))
        }
        NodeKind::Receptacle { .. } | NodeKind::Inlet { .. } => sheet.sourced(text, &shape::SOURCE),
    }
}

/// Returns every line of the diagram, parents first. Each limit is the smallest of those in its line and that of its
/// feed, so that the reader can recalculate one line at a time.
pub(super) fn limits(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let supply = context.supply;
    let lines = lines(&supply.nodes);
    let carries = |ix: &NodeIx| {
        let node = supply.node(*ix);
        let what = context.say(&format!("ws-reason-{}", node.reason.code()), &[]);
        let own = rating(sheet, node);
        let gap = if own.mark.is_empty() { "" } else { "\u{a0}" };
        let mut text = format!("{what} {}{gap}{}", own.text, own.mark);
        if node.continuous != Ratio::from_permille(1000) {
            let share = context.percent(node.continuous);
            let _ = write!(text, "\u{a0}×\u{a0}{share}");
        }
        text
    };
    let rows = lines
        .iter()
        .map(|line| {
            let last = line.nodes.last().copied().unwrap_or(NodeIx(0));
            let limit = supply.limit(last);
            let refused = context.report.refused(&supply.node(last).id).is_some();
            let amps = |amps| {
                if refused { "–".to_owned() } else { context.capacity(amps) }
            };
            let fed_by = line.fed_by.map(|above| lines[above].name(context));
            // The limit inside a camper is that of its inlet.
            let drawn = line.nodes.iter().filter(|ix| !supply.inside(**ix));
            let carries: Vec<String> = drawn.map(carries).collect();
            vec![
                line.name(context),
                fed_by.unwrap_or_default(),
                carries.join("; "),
                amps(limit.continuous),
                amps(limit.short),
            ]
        })
        .collect::<Vec<Vec<String>>>();
    sheet.section(
        "limits",
        context.sentences(&["ws-limits-long", "ws-limits-short", "ws-limits-watts", "ws-limits-first", "ws-limits-80"]),
        &[rules::EIGHTY_PER_CENT],
        &[("part", 4), ("fed-by", 4), ("rating", 12), ("#hours", 3), ("#short", 3)],
        rows,
    )
}

/// Returns the resistance of one conductor per thousand feet or meters, depending on the reader's units.
pub(in crate::print::data) fn ohms_per_thousand(sheet: &Sheet<'_>, wire: Wire) -> Cell {
    let context = sheet.context;
    let length = match context.words.units() {
        Units::Customary => Length::from_millimetres(304_800),
        Units::Metric => Length::from_millimetres(1_000_000),
    };
    let source = match wire {
        Wire::Awg(_) => &COPPER.awg_source,
        Wire::Area(_) => &COPPER.area_source,
    };
    sheet.sourced(context.exact(one_way(wire, length)), source)
}

/// Returns the message key for the unit of [`ohms_per_thousand`].
pub(in crate::print::data) fn ohms_per(context: &Context<'_>) -> &'static str {
    match context.words.units() {
        Units::Customary => "ws-column-ohms-kilofoot",
        Units::Metric => "ws-column-ohms-kilometre",
    }
}

pub(super) fn cords(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let supply = context.supply;
    let rows: Vec<Vec<Cell>> = supply
        .nodes
        .iter()
        .filter_map(|node| match node.kind {
            NodeKind::Cord { plug, resistance } => {
                let cord = context.plan.cord(&node.id)?;
                let row = cord_row(
                    sheet,
                    cord,
                    context.exact(plug.0.rating()),
                    context.exact(resistance),
                    context.exact(node.rating),
                );
                Some(row)
            }
            _ => None,
        })
        .collect();
    let ohms_column = &ohms_per(context).replace("ws-column-", "#");
    // The temperatures of the tables.
    let degrees = |told: &str| {
        let told = told.split_once(' ').unwrap_or_default();
        let count = told.0.parse().unwrap_or_default();
        own_units(context, count, told.1, Decimal::from(32))
    };
    sheet.section(
        "cords",
        vec![
            context.say("ws-cords-ohms", &[("hot", &degrees("75 °C"))]),
            context.say("ws-cords-amps", &[("air", &degrees("30 °C"))]),
            context.say("ws-cords-two", &[]),
        ],
        &[],
        &[
            ("cord", 4),
            ("wire", 5),
            ("#length", 4),
            (ohms_column, 5),
            ("#ohms", 4),
            ("#plug-amps", 4),
            ("#wire-amps", 4),
            ("#air-share", 5),
            ("#coiled", 4),
            ("#mark", 4),
            ("#rating", 4),
        ],
        rows,
    )
}

fn cord_row(sheet: &Sheet<'_>, cord: &Cord, plug: String, ohms: String, carries: String) -> Vec<Cell> {
    let context = sheet.context;
    let field = |name: &str| format!("cord.{}.{name}", cord.id);
    let wire = cord.wire.or(crate::supply::UNKNOWN_CORD);
    let ampacity = flexible_ampacity(wire);
    let coiled = matches!(cord.is_coiled(), Answer::Known(true));
    let assumed = sheet.taken(&field("coiled")).is_some();
    let third = || format!("÷\u{a0}{COILED_DIVISOR}");
    vec![
        cord.id.to_string().into(),
        sheet.answered(&cord.wire, &field("wire"), None, |wire| context.words.wire(*wire)),
        sheet.answered(&cord.length, &field("length"), None, |length| context.at_most(*length)),
        ohms_per_thousand(sheet, wire),
        ohms.into(),
        sheet.sourced(plug, &shape::SOURCE),
        sheet.sourced(context.exact(ampacity), flexible_source(wire)),
        sheet.sourced(context.percent(share_in_air(context.supply.air)), &CONDUCTORS.ambient_source),
        if coiled {
            sheet.sourced(third(), &Source::common_practice())
        } else if assumed {
            sheet.assumed_to_be(third(), Some(&Source::common_practice()))
        } else {
            "–".to_owned().into()
        },
        usual_mark(cord).map_or_else(
            || "–".to_owned().into(),
            |mark| sheet.sourced(context.exact(mark), &CONDUCTORS.marked_source),
        ),
        carries.into(),
    ]
}

/// Returns the parts that need no breaker as small as their own rating, by the allowance that they rely on. Page 1 has
/// the breaker of each.
pub(super) fn protection(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let dash = || "–".to_owned();
    let amps = |amps: Option<Current>| amps.map_or_else(dash, |it| context.exact(it));
    let mut rows: Vec<[String; 4]> = Vec::new();
    let proofs = context.report.figures.protection.iter();
    for proof in proofs.filter(|proof| proof.by != "breaker") {
        let by = context.say(&format!("ws-by-{}", proof.by), &[]);
        let at = proof.breaker_at.as_ref().map_or_else(dash, Id::to_string);
        let mut part = context.load_name(&proof.id);
        // A part that must not be used gets no amps that someone could plan with.
        if proof.by != "nothing" {
            let _ = write!(part, "\u{a0}{}", amps(proof.rating));
        }
        let breaker = amps(proof.breaker);
        let mut known = rows.iter_mut();
        match known.find(|row| row[0] == by && row[2] == breaker && row[3] == at) {
            Some(row) => {
                row[1].push_str(", ");
                row[1].push_str(&part);
            }
            None => rows.push([by, part, breaker, at]),
        }
    }
    sheet.section(
        "protection",
        context.sentences(&["ws-protection-how"]),
        rules::find("OVER001").map_or(&[], |rule| rule.sources),
        &[("protected-by", 8), ("parts", 9), ("#breaker", 2), ("breaker-at", 3)],
        rows.into_iter().map(Vec::from).collect(),
    )
}

//! What the gear can do: the generator, every point of the supply, cords, and what protects them.

use rust_decimal::Decimal;

use super::super::Context;
use super::{Cell, Section, Sheet};
use crate::plan::{Answer, Cord, Id};
use crate::quantity::{Current, Length, Power, Ratio, Temperature, Wire};
use crate::rules;
use crate::supply::{
    COILED_DIVISOR, LimitReason, Node, NodeIx, NodeKind, UNKNOWN_WIRING, usual_mark,
};
use crate::tables::conductor::{
    CONDUCTORS, flexible_ampacity, flexible_source, share_in_air, wiring_source,
};
use crate::tables::copper::{COPPER, one_way};
use crate::tables::derating::{METHODS, Method, Told};
use crate::tables::shape;
use crate::tables::source::Source;
use crate::words::Units;

#[allow(clippy::too_many_lines)] // one table, written out row by row
pub(super) fn power(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let (set, site) = (&context.plan.generator, &context.plan.site);
    let usable = &context.report.figures.usable;
    let line = |key: &str, value: Cell| vec![context.say(key, &[]).into(), value];
    // Whole watts: what they are worked out from is no finer.
    let gives = |power: Power| Cell::from(context.capacity(power));
    let formula = |key: &str, method: &Method| {
        // In the units the figures are published in, whatever the reader's own.
        let number = |number: Decimal| context.words.number(number);
        let told = |(count, unit): Told| format!("{}\u{a0}{unit}", number(count));
        let (altitude, air) = (method.altitude.told, method.air.told);
        context.say(
            key,
            &[
                ("altitude-percent", &number(altitude.0)),
                ("altitude-per", &told(altitude.1)),
                ("altitude-above", &told(altitude.2)),
                ("air-percent", &number(air.0)),
                ("air-per", &told(air.1)),
                ("air-above", &told(air.2)),
            ],
        )
    };
    // One of the ways goes by metres and degrees Celsius, the other by feet and degrees Fahrenheit.
    let both = |own: String, number: Decimal, places: u32, unit: &str| {
        let number = context.words.number(number.round_dp(places).normalize());
        let other = format!("{number}\u{a0}{unit}");
        context.say("ws-both-units", &[("own", &own), ("published", &other)])
    };
    let height = |length: Length| {
        let metres = Decimal::new(length.millimetres(), 3);
        let own = context.exact(length);
        match context.words.units() {
            Units::Customary => both(own, metres, 0, "m"),
            Units::Metric => both(own, metres / Decimal::new(3048, 4), 0, "ft"),
        }
    };
    let degrees = |air: Temperature| {
        let celsius = Decimal::new(air.ninths(), 3) / Decimal::from(9);
        let own = context.exact(air);
        match context.words.units() {
            Units::Customary => both(own, celsius, 1, "°C"),
            Units::Metric => both(
                own,
                celsius * Decimal::new(18, 1) + Decimal::from(32),
                1,
                "°F",
            ),
        }
    };
    let mut rows = vec![
        line(
            "ws-power-marked",
            sheet.answered(&set.rated, "generator.rated", None, |it| context.exact(*it)),
        ),
        line(
            "ws-power-peak-marked",
            sheet.answered(&set.peak, "generator.peak", None, |it| context.exact(*it)),
        ),
    ];
    if let Some(left) = sheet.taken("generator.rated_on") {
        rows.push(line(
            "ws-power-propane",
            sheet.assumed_to_be(left, Some(&METHODS.propane_source)),
        ));
    }
    let (altitude, air) = (context.supply.altitude, context.supply.air);
    // What was assumed is told in the units of the formulas, too.
    let place = |known: bool, text: String| {
        if known {
            sheet.planned(text)
        } else {
            sheet.assumed_to_be(text, None)
        }
    };
    rows.push(line(
        "ws-power-altitude",
        place(site.altitude.is_known(), height(altitude)),
    ));
    rows.push(line(
        "ws-power-air",
        place(site.air.is_known(), degrees(air)),
    ));
    for (key, method) in [
        ("ws-power-loss-formula", &METHODS.formula),
        ("ws-power-loss-thumb", &METHODS.rule_of_thumb),
    ] {
        let losses = method.losses(altitude, air);
        let [height, heat] = losses.map(|loss| context.demand(loss));
        rows.push(line(
            key,
            sheet.sourced(format!("{height} + {heat}"), &method.source),
        ));
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

/// Where what a point of the tree carries is from.
fn rating(sheet: &Sheet<'_>, node: &Node) -> Cell {
    let context = sheet.context;
    let text = context.exact(node.rating);
    match node.kind {
        // Worked out: here, and in the section on cords.
        NodeKind::Source | NodeKind::Cord { .. } => text.into(),
        _ if node.reason == LimitReason::NotFed => text.into(),
        NodeKind::Breaker { marked, early } if early || marked.is_some() => sheet.planned(text),
        // Nobody knows the breaker: the receptacles are all there is to go by.
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

/// Every point of the tree, parents first: each limit is the smaller of its own and that of what
/// feeds it, so that one line at a time can be worked out again.
pub(super) fn limits(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let supply = context.supply;
    let id = |ix: NodeIx| match supply.node(ix).kind {
        NodeKind::Source => context.plan.generator.name.clone(),
        _ => supply.node(ix).id.to_string(),
    };
    let share = |node: &Node| {
        let text = context.percent(node.continuous);
        if node.continuous == Ratio::from_permille(1000) {
            text.into()
        } else {
            sheet.sourced(text, &rules::EIGHTY_PER_CENT)
        }
    };
    let rows = supply
        .nodes
        .iter()
        .enumerate()
        .map(|(index, node)| {
            let ix = NodeIx(index);
            let limit = supply.limit(ix);
            let fed_by = node.parent.map_or_else(String::new, id);
            let reported = match node.kind {
                NodeKind::Receptacle { .. } => context.limit(&node.id),
                _ => None,
            };
            vec![
                id(ix).into(),
                context
                    .say(&format!("ws-reason-{}", node.reason.code()), &[])
                    .into(),
                fed_by.into(),
                rating(sheet, node),
                share(node),
                context.exact(limit.continuous).into(),
                context.exact(limit.short).into(),
                reported
                    .map_or_else(String::new, |limit| context.exact(limit.continuous_watts))
                    .into(),
                reported
                    .map_or_else(String::new, |limit| context.exact(limit.short_watts))
                    .into(),
            ]
        })
        .collect::<Vec<Vec<Cell>>>();
    sheet.section(
        "limits",
        vec![
            context.say("ws-limits-long", &[]),
            context.say("ws-limits-short", &[]),
            context.say("ws-limits-watts", &[]),
            context.say("ws-limits-first", &[]),
            context.say("ws-limits-80", &[]),
        ],
        &[],
        &[
            ("part", 6),
            ("what", 7),
            ("fed-by", 6),
            ("#rating", 5),
            ("#share", 4),
            ("#hours", 5),
            ("#short", 5),
            ("#hours-watts", 5),
            ("#short-watts", 5),
        ],
        rows,
    )
}

/// Ohms of one conductor in the reader's thousand.
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

/// The column of [`ohms_per_thousand`].
pub(in crate::print::data) fn ohms_column(context: &Context<'_>) -> &'static str {
    match context.words.units() {
        Units::Customary => "#ohms-kilofoot",
        Units::Metric => "#ohms-kilometre",
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
                let cord = context.plan.cords.iter().find(|cord| cord.id == node.id)?;
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
    sheet.section(
        "cords",
        vec![
            context.say("ws-cords-ohms", &[]),
            context.say("ws-cords-amps", &[]),
            context.say("ws-cords-two", &[]),
        ],
        &[],
        &[
            ("cord", 4),
            ("wire", 5),
            ("#length", 4),
            (ohms_column(context), 5),
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

fn cord_row(
    sheet: &Sheet<'_>,
    cord: &Cord,
    plug: String,
    ohms: String,
    carries: String,
) -> Vec<Cell> {
    let context = sheet.context;
    let field = |name: &str| format!("cord.{}.{name}", cord.id);
    let wire = cord.wire.or(crate::supply::UNKNOWN_CORD);
    let ampacity = flexible_ampacity(wire);
    let coiled = matches!(cord.coiled, Answer::Known(true));
    let assumed = sheet.taken(&field("coiled")).is_some();
    let third = || format!("÷\u{a0}{COILED_DIVISOR}");
    vec![
        cord.id.to_string().into(),
        sheet.answered(&cord.wire, &field("wire"), None, |wire| {
            context.words.wire(*wire)
        }),
        sheet.answered(&cord.length, &field("length"), None, |length| {
            context.at_most(*length)
        }),
        ohms_per_thousand(sheet, wire),
        ohms.into(),
        sheet.sourced(plug, &shape::SOURCE),
        sheet.sourced(context.exact(ampacity), flexible_source(wire)),
        sheet.sourced(
            context.percent(share_in_air(context.supply.air)),
            &CONDUCTORS.ambient_source,
        ),
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

/// Every part of the supply with the breaker that protects it, or the allowance by which it needs
/// no smaller one.
pub(super) fn protection(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let dash = || "–".to_owned();
    let rows = context
        .report
        .figures
        .protection
        .iter()
        .map(|proof| {
            let at = proof.breaker_at.as_ref().map_or_else(dash, Id::to_string);
            let amps = |amps: Option<Current>| amps.map_or_else(dash, |it| context.exact(it));
            vec![
                context.load_name(&proof.id),
                context.say(&format!("ws-part-{}", proof.part), &[]),
                amps(proof.rating),
                amps(proof.breaker),
                at,
                context.say(&format!("ws-by-{}", proof.by), &[]),
            ]
        })
        .collect::<Vec<Vec<String>>>();
    sheet.section(
        "protection",
        vec![context.say("ws-protection-how", &[])],
        rules::find("OVER001").map_or(&[], |rule| rule.sources),
        &[
            ("part", 4),
            ("what", 4),
            ("#rating", 3),
            ("#breaker", 3),
            ("breaker-at", 3),
            ("protected-by", 11),
        ],
        rows,
    )
}

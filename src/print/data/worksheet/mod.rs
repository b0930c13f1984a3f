//! Every number with its formula, inputs and source, so that somebody else can work it out again
//! by hand.

use rust_decimal::Decimal;
use serde::Serialize;

use super::{Common, Context, proofs, volts};
use crate::plan::{Answer, Id};
use crate::quantity::{Length, Quantity, Ratio, Temperature, Unit};
use crate::report::Amount;
use crate::rules;
use crate::supply::{NodeIx, NodeKind};
use crate::tables::conductor::CONDUCTORS;
use crate::tables::copper::COPPER;
use crate::tables::derating::{METHODS, Method};
use crate::tables::source::{Mark, Source};
use crate::words::Show;

/// The share of a circuit for three hours or more.
const EIGHTY_PER_CENT: Source = Source::new("NFPA 70 (NEC)", "210.21(B)(2)", "", Mark::Secondary);

/// The data of `worksheet.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Worksheet {
    common: Common,
    sections: Vec<Section>,
}

#[derive(Debug, Serialize)]
pub(super) struct Section {
    /// Which; names the formulas of `lib/formula.typ`.
    key: String,
    title: String,
    /// What the letters of those formulas are.
    symbols: Option<String>,
    /// How the figures are worked out.
    formulas: Vec<String>,
    sources: Vec<String>,
    columns: Vec<Column>,
    rows: Vec<Vec<String>>,
}

#[derive(Debug, Serialize)]
struct Column {
    title: String,
    /// Whether it holds figures, which stand at the right.
    figures: bool,
    /// Share of the width.
    share: u8,
}

/// The sections that have formulas in letters.
const LETTERED: [&str; 8] = [
    "power", "limits", "cords", "loads", "drops", "sharing", "energy", "noise",
];

const KEYS: &[&str] = &["ws-how", "ws-source", "ws-intro", "defer", "ws-checked"];

pub(super) fn data(context: &Context<'_>) -> Worksheet {
    let mut sections = vec![
        power(context),
        limits(context),
        cords(context),
        protection(context),
        loads(context),
        drops(context),
        volts::worst(context),
        volts::longest(context),
        sharing(context),
        volts::steps(context),
        mend(context),
        energy(context),
        noise(context),
        proofs::worksheet(context),
        findings(context),
        assumed(context),
    ];
    sections.retain(|section| !section.rows.is_empty());
    Worksheet {
        common: context.common("ws-title", KEYS),
        sections,
    }
}

/// A section; its words are `ws-KEY` and, for each column, `ws-KEY-COLUMN`. A column's name that
/// begins with `#` holds figures; the number is its share of the width.
pub(super) fn section(
    context: &Context<'_>,
    key: &str,
    formulas: Vec<String>,
    sources: &[Source],
    columns: &[(&str, u8)],
    rows: Vec<Vec<String>>,
) -> Section {
    let mut cited: Vec<String> = Vec::new();
    for source in sources {
        let source = context.words.source(source);
        if !cited.contains(&source) {
            cited.push(source);
        }
    }
    Section {
        key: key.to_owned(),
        symbols: LETTERED
            .contains(&key)
            .then(|| context.say(&format!("ws-symbols-{key}"), &[])),
        title: context.say(&format!("ws-{key}"), &[]),
        formulas,
        sources: cited,
        columns: columns
            .iter()
            .map(|(name, share)| {
                let (figures, name) = name
                    .strip_prefix('#')
                    .map_or((false, *name), |name| (true, name));
                Column {
                    title: context.say(&format!("ws-column-{name}"), &[]),
                    figures,
                    share: *share,
                }
            })
            .collect(),
        rows,
    }
}

impl Context<'_> {
    fn exact(&self, amount: &Amount) -> String {
        self.words.amount(amount, Show::Exact)
    }

    fn exactly<Q: Quantity>(&self, quantity: Q) -> String {
        self.exact(&Amount::of(quantity))
    }

    /// An answer, or the word that it is not known.
    fn answer<T: Quantity>(&self, answer: Answer<T>) -> String {
        match answer {
            Answer::Known(value) => self.exactly(value),
            _ => self.say("ws-not-known", &[]),
        }
    }

    fn percent(&self, ratio: Ratio) -> String {
        self.exact(&Amount {
            amount: Decimal::new(ratio.permille(), 1),
            unit: Unit::Percent,
        })
    }
}

fn power(context: &Context<'_>) -> Section {
    let (set, site) = (&context.plan.generator, &context.plan.site);
    let usable = &context.report.figures.usable;
    let line = |key: &str, value: String| vec![context.say(key, &[]), value];
    let formula = |key: &str, method: &Method| {
        // In the units the figures are published in, whatever the reader's own.
        let [altitude, air] = method.lines();
        let number = |count: i64, scale: u32| context.words.number(Decimal::new(count, scale));
        context.say(
            key,
            &[
                ("altitude-percent", &number(altitude.0, 3)),
                ("altitude-per", &number(altitude.1, 3)),
                ("altitude-above", &number(altitude.2, 3)),
                ("air-percent", &number(air.0, 3)),
                ("air-per", &number(air.1, 3)),
                ("air-above", &number(air.2, 3)),
            ],
        )
    };
    let both = |own: String, published: String| {
        if own == published {
            return own;
        }
        context.say("ws-both-units", &[("own", &own), ("published", &published)])
    };
    let metres = |answer: Answer<Length>| match answer {
        Answer::Known(length) => both(
            context.exactly(length),
            format!(
                "{}\u{a0}m",
                context.words.number(Decimal::new(length.millimetres(), 3))
            ),
        ),
        _ => context.say("ws-not-known", &[]),
    };
    let celsius = |answer: Answer<Temperature>| match answer {
        Answer::Known(air) => both(
            context.exactly(air),
            format!(
                "{}\u{a0}°C",
                context
                    .words
                    .number(Decimal::new(air.millicelsius(), 3).round_dp(1))
            ),
        ),
        _ => context.say("ws-not-known", &[]),
    };
    section(
        context,
        "power",
        vec![
            formula("ws-power-formula", &METHODS.formula),
            formula("ws-power-thumb", &METHODS.rule_of_thumb),
            context.say("ws-power-less", &[]),
        ],
        &[METHODS.formula.source, METHODS.rule_of_thumb.source],
        &[("what", 3), ("#figure", 2)],
        vec![
            line("ws-power-marked", context.answer(set.rated)),
            line("ws-power-peak-marked", context.answer(set.peak)),
            line("ws-power-altitude", metres(site.altitude)),
            line("ws-power-air", celsius(site.air)),
            line("ws-power-rated", context.exact(&usable.rated_watts)),
            line("ws-power-peak", context.exact(&usable.peak_watts)),
            line("ws-power-reachable", context.exact(&usable.reachable_watts)),
            line("ws-power-stranded", context.exact(&usable.stranded_watts)),
        ],
    )
}

/// Every point of the tree, parents first: each limit is the smaller of its own and that of what
/// feeds it, so that one line at a time can be worked out again.
fn limits(context: &Context<'_>) -> Section {
    let supply = context.supply;
    let id = |ix: NodeIx| match supply.node(ix).kind {
        NodeKind::Source => context.plan.generator.name.clone(),
        _ => supply.node(ix).id.to_string(),
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
                id(ix),
                context.say(&format!("ws-reason-{}", node.reason.code()), &[]),
                fed_by,
                context.exactly(node.rating),
                context.percent(node.continuous),
                context.exactly(limit.continuous),
                context.exactly(limit.short),
                reported.map_or_else(String::new, |limit| context.exact(&limit.continuous_watts)),
                reported.map_or_else(String::new, |limit| context.exact(&limit.short_watts)),
            ]
        })
        .collect();
    section(
        context,
        "limits",
        vec![
            context.say("ws-limits-long", &[]),
            context.say("ws-limits-short", &[]),
            context.say("ws-limits-watts", &[]),
            context.say("ws-limits-80", &[]),
        ],
        &[
            EIGHTY_PER_CENT,
            CONDUCTORS.flexible_source,
            CONDUCTORS.wiring_source,
        ],
        &[
            ("part", 6),
            ("what", 5),
            ("fed-by", 5),
            ("#rating", 3),
            ("#share", 3),
            ("#hours", 3),
            ("#short", 3),
            ("#hours-watts", 4),
            ("#short-watts", 4),
        ],
        rows,
    )
}

fn cords(context: &Context<'_>) -> Section {
    let rows = context
        .supply
        .nodes
        .iter()
        .filter_map(|node| match node.kind {
            NodeKind::Cord { resistance, .. } => Some((&node.id, node.rating, resistance)),
            _ => None,
        })
        .map(|(id, rating, resistance)| {
            let cord = context.plan.cords.iter().find(|cord| cord.id == *id);
            vec![
                id.to_string(),
                cord.and_then(|cord| cord.wire.known()).map_or_else(
                    || context.say("ws-not-known", &[]),
                    |wire| context.words.wire(*wire),
                ),
                cord.map_or_else(String::new, |cord| context.answer(cord.length)),
                context.exactly(resistance),
                context.exactly(rating),
            ]
        })
        .collect();
    section(
        context,
        "cords",
        vec![
            context.say("ws-cords-ohms", &[]),
            context.say("ws-cords-amps", &[]),
        ],
        &[
            COPPER.awg_source,
            CONDUCTORS.flexible_source,
            CONDUCTORS.ambient_source,
        ],
        &[
            ("cord", 3),
            ("wire", 2),
            ("#length", 2),
            ("#ohms", 2),
            ("#rating", 2),
        ],
        rows,
    )
}

/// Every part of the supply with the breaker that protects it, or the allowance by which it needs
/// no smaller one.
fn protection(context: &Context<'_>) -> Section {
    let dash = || "–".to_owned();
    let rows = context
        .report
        .figures
        .protection
        .iter()
        .map(|proof| {
            let at = proof.breaker_at.as_ref().map_or_else(dash, Id::to_string);
            let amps = |amount: Option<&Amount>| amount.map_or_else(dash, |it| context.exact(it));
            vec![
                proof.id.to_string(),
                context.say(&format!("ws-part-{}", proof.part), &[]),
                amps(proof.rating.as_ref()),
                amps(proof.breaker.as_ref()),
                at,
                context.say(&format!("ws-by-{}", proof.by), &[]),
            ]
        })
        .collect();
    section(
        context,
        "protection",
        vec![context.say("ws-protection-how", &[])],
        rules::find("OVER001").map_or(&[], |rule| rule.sources),
        &[
            ("part", 4),
            ("what", 4),
            ("#rating", 2),
            ("#breaker", 2),
            ("breaker-at", 4),
            ("protected-by", 8),
        ],
        rows,
    )
}

fn loads(context: &Context<'_>) -> Section {
    let rows = context
        .report
        .figures
        .loads
        .iter()
        .map(|load| {
            let at = context
                .report
                .figures
                .sharing
                .placed
                .iter()
                .find(|placed| placed.load == load.id)
                .map_or_else(|| "–".to_owned(), |placed| placed.at.to_string());
            vec![
                load.name.clone(),
                at,
                context.exact(&load.running_watts),
                context.exact(&load.volts),
                context.exact(&load.running_amps),
                context.exact(&load.starting_watts),
                context.exact(&load.starting_amps),
            ]
        })
        .collect();
    section(
        context,
        "loads",
        vec![
            context.say("ws-loads-amps", &[]),
            context.say("ws-loads-start", &[]),
        ],
        &[],
        &[
            ("load", 4),
            ("at", 3),
            ("#watts", 2),
            ("#volts", 2),
            ("#amps", 2),
            ("#start-watts", 2),
            ("#start-amps", 2),
        ],
        rows,
    )
}

fn drops(context: &Context<'_>) -> Section {
    let rows = context
        .report
        .figures
        .drops
        .iter()
        .map(|drop| {
            vec![
                context.load_name(&drop.at),
                drop.receptacle.to_string(),
                context.exact(&drop.volts_running),
                context.exact(&drop.percent_running),
                context.exact(&drop.volts_left),
                context.exact(&drop.volts_starting),
            ]
        })
        .collect();
    section(
        context,
        "drops",
        vec![
            context.say("ws-drops-formula", &[]),
            context.say("ws-drops-with", &[]),
        ],
        &[COPPER.awg_source],
        &[
            ("load", 4),
            ("at", 3),
            ("#lost", 2),
            ("#lost-percent", 2),
            ("#left", 2),
            ("#lost-starting", 2),
        ],
        rows,
    )
}

fn sharing(context: &Context<'_>) -> Section {
    let sharing = &context.report.figures.sharing;
    let names = |ids: &[Id]| context.words.set_names(context.report, ids).join(", ");
    let mut rows: Vec<Vec<String>> = Vec::new();
    for (index, set) in sharing.together.iter().enumerate() {
        rows.push(vec![
            context.say("ws-together-row", &[("number", &(index + 1).to_string())]),
            names(set),
        ]);
    }
    for set in &sharing.never {
        rows.push(vec![context.say("ws-never-row", &[]), names(set)]);
    }
    for (name, last) in context.words.start_steps(context.report) {
        rows.push(vec![
            context.say("ws-start-row", &[("load", &name)]),
            context.say(
                "ws-start-peak",
                &[("peak", &context.exact(&last.peak_watts))],
            ),
        ]);
    }
    if !sharing.start_order.is_empty() {
        rows.push(vec![
            context.say("ws-start-verdict-row", &[]),
            context.words.start_verdict(context.report),
        ]);
    }
    if let Some(order) = context.words.stop_order(context.report) {
        rows.push(vec![context.say("ws-stop-row", &[]), order]);
    }
    for (index, turn) in sharing.turns.iter().enumerate() {
        rows.push(vec![
            context.say("ws-turn-row", &[("number", &(index + 1).to_string())]),
            names(turn),
        ]);
    }
    for unplaced in &sharing.unplaced {
        rows.push(vec![
            context.say(
                "ws-unplaced-row",
                &[("load", &context.load_name(&unplaced.load))],
            ),
            context.say(&format!("ws-{}", unplaced.reason), &[]),
        ]);
    }
    let mut formulas = vec![
        context.say("ws-sharing-formula", &[]),
        context.say("ws-sharing-peak", &[]),
    ];
    if !sharing.families_complete && !sharing.together.is_empty() {
        formulas.push(context.say("ws-sharing-incomplete", &[]));
    }
    section(
        context,
        "sharing",
        formulas,
        &[],
        &[("what", 2), ("which", 5)],
        rows,
    )
}

/// What would help, where that was asked for, with before and after.
fn mend(context: &Context<'_>) -> Section {
    let sharing = &context.report.figures.sharing;
    let words = context.words;
    let mut rows: Vec<Vec<String>> = Vec::new();
    let mut formulas = Vec::new();
    if let Some(effect) = &sharing.mended
        && !sharing.repairs.is_empty()
    {
        rows.extend(
            sharing
                .repairs
                .iter()
                .map(|repair| vec![words.repair(repair), repair.cost.to_string()]),
        );
        rows.push(vec![
            context.say("ws-mend-all", &[]),
            effect.cost.to_string(),
        ]);
        for (key, tally) in [
            ("ws-mend-before", &effect.before),
            ("ws-mend-after", &effect.after),
        ] {
            formulas.push(context.say(key, &[("tally", &words.tally(tally))]));
        }
        formulas.push(words.effect(effect));
    }
    section(
        context,
        "mend",
        formulas,
        &[],
        &[("change", 8), ("#points", 1)],
        rows,
    )
}

fn energy(context: &Context<'_>) -> Section {
    let energy = &context.report.figures.energy;
    let set = &context.plan.generator;
    let mut rows = Vec::new();
    for runtime in &set.runtime {
        rows.push(vec![
            context.say(
                "ws-energy-published",
                &[("load", &context.exactly(runtime.load))],
            ),
            context.exactly(runtime.lasts),
        ]);
    }
    let figures = [
        ("ws-energy-day", &energy.watt_hours_per_day),
        ("ws-energy-tank", &energy.hours_per_tank),
        ("ws-energy-fuel", &energy.fuel_per_day),
    ];
    for (key, figure) in figures {
        if let Some(figure) = figure {
            rows.push(vec![context.say(key, &[]), context.exact(figure)]);
        }
    }
    if let Some(peak) = &energy.peak_hour {
        rows.push(vec![
            context.say(
                "ws-energy-peak",
                &[("hour", &format!("{:02}:00", peak.hour))],
            ),
            context.exact(&peak.watts),
        ]);
    }
    section(
        context,
        "energy",
        vec![
            context.say("ws-energy-formula", &[]),
            context.say("ws-energy-between", &[]),
        ],
        &[],
        &[("what", 3), ("#figure", 2)],
        rows,
    )
}

fn noise(context: &Context<'_>) -> Section {
    let noise = &context.report.figures.noise;
    let mut rows = Vec::new();
    if let Answer::Known(published) = context.plan.generator.noise {
        rows.push(vec![
            context.say(
                "ws-noise-published",
                &[("distance", &context.exactly(published.at))],
            ),
            context.exactly(published.level),
        ]);
    }
    let figures = [
        ("ws-noise-sleepers", &noise.at_sleepers_dba),
        ("ws-noise-50ft", &noise.at_50ft_dba),
        ("ws-noise-quiet", &noise.quiet_from),
    ];
    for (key, figure) in figures {
        if let Some(figure) = figure {
            rows.push(vec![context.say(key, &[]), context.exact(figure)]);
        }
    }
    section(
        context,
        "noise",
        vec![
            context.say("ws-noise-formula", &[]),
            context.say("ws-noise-free-field", &[]),
        ],
        &[Source::common_practice()],
        &[("what", 3), ("#figure", 2)],
        rows,
    )
}

fn findings(context: &Context<'_>) -> Section {
    let rows = context
        .report
        .findings
        .iter()
        .map(|finding| {
            let text = context.words.finding(finding);
            vec![
                finding.code.to_owned(),
                text.signal,
                text.why,
                text.sources.join("; "),
            ]
        })
        .collect();
    section(
        context,
        "findings",
        Vec::new(),
        &[],
        &[("code", 2), ("signal", 2), ("why", 6), ("sources", 4)],
        rows,
    )
}

fn assumed(context: &Context<'_>) -> Section {
    let rows = context
        .report
        .figures
        .assumed
        .iter()
        .map(|assumption| {
            vec![
                context.words.value(&assumption.value),
                context.words.assumption(assumption),
            ]
        })
        .collect();
    section(
        context,
        "assumed",
        std::iter::once(context.say("ws-assumed-how", &[]))
            .chain(context.words.decides(context.report))
            .collect(),
        &[],
        &[("value", 1), ("assumption", 5)],
        rows,
    )
}

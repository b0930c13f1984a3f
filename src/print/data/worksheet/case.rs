//! The whole case on one page: the one-line diagram with what protects and limits each point, the generator's power at
//! this site, neutral and ground, the dangers, and the assumptions.

use std::collections::BTreeMap;

use rust_decimal::Decimal;
use serde::Serialize;

use super::super::Context;
use super::super::labels::gfci_unknown;
use super::{Cell, Sheet};
use crate::plan::{Answer, Id};
use crate::quantity::{Power, Quantity};
use crate::report::{ShockState, Signal, Trouble};
use crate::supply::{Node, NodeIx, NodeKind};

/// The most characters of assumptions that this page has room for above the signature, under a diagram of [`ROWS`] rows.
/// One that is longer than what is left is omitted here. The others have a section of their own.
const ROOM: usize = 1_400;
const ROWS: usize = 13;

/// The characters that have room in place of one row of the diagram, and those that the end of an assumption takes.
const ROW: usize = 130;
const END: usize = 40;

#[derive(Debug, Serialize)]
pub(super) struct Case {
    /// Headings and values.
    facts: Vec<(String, String)>,
    points: Vec<Point>,
    /// The codes and the title of each danger.
    dangers: Vec<(String, String)>,
    assumed: Vec<String>,
    /// Says how many more there are.
    more: Option<String>,
}

/// A part of the plan, which is one line of the diagram.
#[derive(Debug, Serialize)]
struct Point {
    id: String,
    /// The line of the diagram in words.
    alt: String,
    /// For each level above, whether its line continues below. The last is the line that arrives here.
    rails: Vec<bool>,
    /// What to draw, from left to right.
    symbols: Vec<&'static str>,
    /// Whether it must not be used.
    refused: bool,
    shape: String,
    breaker: String,
    gfci: String,
    wire: Cell,
    /// Amps for hours and for a short time, then watts for each.
    limits: [String; 4],
}

fn facts(sheet: &Sheet<'_>) -> Vec<(String, String)> {
    let context = sheet.context;
    let (set, usable) = (&context.plan.generator, &context.report.figures.usable);
    let marked = |power: &Answer<Power>| match power {
        Answer::Known(power) => context.exact(*power),
        _ => context.say("ws-not-known", &[]),
    };
    let kilowatts = |power: Power| {
        let kilowatts =
            (power.amount() / Decimal::ONE_THOUSAND).round_dp_with_strategy(2, rust_decimal::RoundingStrategy::ToZero);
        context.words.number(kilowatts.normalize())
    };
    let mut volts = context.exact(context.supply.volts);
    if context.supply.node(NodeIx(0)).legs.all().len() > 1 {
        volts = context.say("ws-case-legs", &[("volts", &volts)]);
    }
    let mut facts = vec![
        (
            context.say("ws-case-marked", &[("name", &set.name)]),
            context.say("ws-case-powers", &[("running", &marked(&set.rated)), ("peak", &marked(&set.peak))]),
        ),
        (
            context.say("ws-case-here", &[]),
            context.say(
                "ws-case-powers-here",
                &[
                    ("running", &context.capacity(usable.rated_watts)),
                    ("kilowatts", &kilowatts(usable.rated_watts)),
                    ("peak", &context.capacity(usable.peak_watts)),
                    ("elevation", &context.at_least(context.supply.altitude)),
                    ("air", &context.exact(context.supply.air)),
                ],
            ),
        ),
        (context.say("ws-case-system", &[]), volts),
        (context.say("neutral", &[]), context.neutral()),
    ];
    let joins = |holder: &&crate::plan::DistributionBox| holder.joins() == Answer::Known(true);
    let boxes = context.plan.boxes.iter().filter(joins);
    let boxes: Vec<&str> = boxes.map(|holder| holder.id.as_str()).collect();
    if !boxes.is_empty() {
        facts.push((context.say("ws-case-joined", &[]), context.words.quoted(boxes.into_iter())));
    }
    facts
}

/// Whether both nodes are the same part of the plan: a breaker, its wiring and its receptacle share a line.
fn one_line(node: &Node, above: &Node) -> bool {
    node.id == above.id && !matches!(above.kind, NodeKind::Source)
}

/// A line of the diagram.
pub(super) struct Line {
    /// The index of the line that feeds it.
    pub(super) fed_by: Option<usize>,
    /// Its nodes, from the generator outward.
    pub(super) nodes: Vec<NodeIx>,
}

impl Line {
    pub(super) fn name(&self, context: &Context<'_>) -> String {
        let node = context.supply.node(self.nodes[0]);
        match node.kind {
            NodeKind::Source => context.plan.generator.name.clone(),
            _ => node.id.to_string(),
        }
    }
}

/// Returns the lines in drawing order: each is followed by everything that it feeds.
pub(super) fn lines(nodes: &[Node]) -> Vec<Line> {
    let mut below: Vec<Vec<NodeIx>> = vec![Vec::new(); nodes.len()];
    for (at, node) in nodes.iter().enumerate() {
        if let Some(parent) = node.parent {
            below[parent.0].push(NodeIx(at));
        }
    }
    let mut lines: Vec<Line> = Vec::new();
    let mut waiting = vec![(NodeIx(0), None)];
    while let Some((first, fed_by)) = waiting.pop() {
        let mut line = vec![first];
        let mut last = first;
        while let [only] = below[last.0][..] {
            if !one_line(&nodes[only.0], &nodes[last.0]) {
                break;
            }
            line.push(only);
            last = only;
        }
        let own = lines.len();
        waiting.extend(below[last.0].iter().rev().map(|child| (*child, Some(own))));
        lines.push(Line { fed_by, nodes: line });
    }
    lines
}

const fn symbol(kind: &NodeKind) -> Option<&'static str> {
    match kind {
        NodeKind::Source => Some("generator"),
        NodeKind::Breaker { .. } => Some("breaker"),
        NodeKind::Wiring => None,
        NodeKind::Receptacle { .. } => Some("receptacle"),
        NodeKind::Cord { .. } => Some("cord"),
        NodeKind::Inlet { .. } => Some("box"),
    }
}

fn wire(sheet: &Sheet<'_>, id: &Id) -> Cell {
    let (context, plan) = (sheet.context, sheet.context.plan);
    if let Some(cord) = plan.cord(id) {
        let field = format!("cord.{id}.wire");
        return sheet.answered(&cord.wire, &field, None, |it| context.words.wire(*it));
    }
    let mut outlets = plan.boxes.iter().flat_map(|holder| &holder.outlets);
    match outlets.find(|outlet| outlet.id == *id) {
        Some(outlet) if outlet.wire.is_known() => sheet.answered(&outlet.wire, "", None, |it| context.words.wire(*it)),
        _ => "–".to_owned().into(),
    }
}

fn breaker(sheet: &Sheet<'_>, id: &Id) -> String {
    let context = sheet.context;
    // If a box has a main breaker, the last match is downstream of that.
    let mut proofs = context.report.figures.protection.iter();
    let proof = proofs.rfind(|proof| proof.id == *id && proof.breaker.is_some());
    proof.map_or_else(
        || "–".to_owned(),
        |proof| {
            let amps = proof.breaker.map_or_else(String::new, |it| context.exact(it));
            match &proof.breaker_at {
                Some(at) if at != id => context.say("ws-breaker-at", &[("amps", &amps), ("at", at.as_str())]),
                _ => amps,
            }
        },
    )
}

fn gfci(sheet: &Sheet<'_>, id: &Id) -> String {
    let context = sheet.context;
    // As on its label: what may be plugged in there, then whether a GFCI works.
    if let Some(only) = context.guarded_briefly(id) {
        return only;
    }
    let Some(limit) = context.limit(id) else {
        return "–".to_owned();
    };
    match (limit.shock.state, &limit.shock.by) {
        (ShockState::Works, Some(by)) => context.say("ws-gfci-works", &[("by", by.as_str())]),
        (ShockState::None, _) if gfci_unknown(context, limit) => context.say("ws-gfci-unknown", &[]),
        _ => context.say("ws-gfci-no", &[]),
    }
}

fn points(sheet: &Sheet<'_>) -> Vec<Point> {
    let context = sheet.context;
    let supply = context.supply;
    let lines = lines(&supply.nodes);
    let name = |line: usize| lines[line].name(context);
    // The last line of each feed, to tell whether another line with the same feed follows.
    let mut last = BTreeMap::new();
    for (at, line) in lines.iter().enumerate() {
        last.insert(line.fed_by, at);
    }
    let goes_on = |at: usize| last.get(&lines[at].fed_by).is_some_and(|last| *last > at);
    let rails = |at: usize| {
        let above = |at: &usize| lines[*at].fed_by;
        let levels = std::iter::successors(Some(at), above);
        let mut rails: Vec<bool> = levels.filter(|at| above(at).is_some()).map(goes_on).collect();
        rails.reverse();
        rails
    };
    let point = |at: usize| {
        let Line { fed_by, nodes } = &lines[at];
        let drawn = nodes.iter().filter(|ix| !supply.inside(**ix));
        let kinds = drawn.map(|ix| &supply.node(*ix).kind);
        let id = &supply.node(nodes[0]).id;
        let source = fed_by.is_none();
        let last = *nodes.last().unwrap_or(&NodeIx(0));
        let limit = supply.limit(last);
        let amps = [limit.continuous, limit.short].map(|it| context.capacity(it));
        let watts = context.limit(id).map_or_else(
            || [String::new(), String::new()],
            |it| [it.continuous_watts, it.short_watts].map(|it| context.capacity(it)),
        );
        let ([hours, short], [hours_watts, short_watts]) = (amps, watts);
        let shape = nodes.iter().rev().filter(|ix| !supply.inside(**ix)).find_map(|ix| match supply.node(*ix).kind {
            NodeKind::Receptacle { shape, .. } => Some(shape.to_string()),
            NodeKind::Inlet { plug } | NodeKind::Cord { plug, .. } => Some(plug.to_string()),
            _ => None,
        });
        Point {
            id: name(at),
            alt: match fed_by {
                Some(above) => context.say("ws-diagram-fed", &[("part", &name(at)), ("from", &name(*above))]),
                None => name(at),
            },
            rails: rails(at),
            symbols: kinds.filter_map(symbol).collect(),
            refused: !source && context.report.refused(id).is_some(),
            shape: shape.unwrap_or_else(|| "–".to_owned()),
            breaker: if source { "–".to_owned() } else { breaker(sheet, id) },
            gfci: if source { "–".to_owned() } else { gfci(sheet, id) },
            wire: if source { "–".to_owned().into() } else { wire(sheet, id) },
            limits: [hours, short, hours_watts, short_watts],
        }
    };
    (0..lines.len()).map(point).collect()
}

/// An assumption as value and sentence.
type Assumed = (String, String);

/// Returns the assumptions that page 1 has room for, and the others.
pub(super) fn assumptions(context: &Context<'_>) -> (Vec<Assumed>, Vec<Assumed>) {
    let ends = context.plan.cords.iter().map(|cord| cord.ends().len()).filter(|ends| *ends > 1);
    let rows = 1 + context.plan.gear().count() + context.plan.outlets().count() + ends.sum::<usize>();
    let mut room = ROOM + ROW * ROWS.saturating_sub(rows);
    context.words.assumptions(context.report, |_| true, false).into_iter().partition(|(_, text)| {
        let left = room.checked_sub(text.chars().count() + END);
        room = left.unwrap_or(room);
        left.is_some()
    })
}

pub(super) fn data(sheet: &Sheet<'_>) -> Case {
    let context = sheet.context;
    let (report, words) = (context.report, context.words);
    // Counted as on card and cautions. The title is that of the most severe finding, and the codes are those of all.
    let told = |trouble: &Trouble| {
        let title = words.trouble(report, trouble)?.title;
        Some((report.codes_of(trouble), title))
    };
    let dangers = report.figures.troubles.iter().filter(|it| it.signal == Signal::Danger);
    let (assumed, more) = assumptions(context);
    let more = more.len();
    Case {
        facts: facts(sheet),
        points: points(sheet),
        dangers: dangers.filter_map(told).collect(),
        assumed: assumed.into_iter().map(|(_, text)| text).collect(),
        more: (more > 0).then(|| context.say("ws-assumed-more", &[("count", &more.to_string())])),
    }
}

//! What the card says: the supply drawn as a tree, what may run together, and what to do.

use serde::Serialize;

use super::super::CardSize;
use super::emergency::{self, Emergency};
use super::labels::cord_facts;
use super::{Common, Context, proofs, volts};
use crate::plan::{Answer, Cord, DistributionBox, Fuel, Id, Leg, Outlet};
use crate::quantity::Current;
use crate::report::{Admits, Limit, LoadFacts, ShockState, Signal, Unplaced};
use crate::tables::exhaust::CLEAR;
use crate::words::told_apart;

/// Sets and conflicts shown at most; the worksheet has them all.
const COLUMNS: usize = 8;

/// The data of `card.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Card {
    common: Common,
    size: CardSize,
    danger: Option<Strip>,
    rows: Vec<Row>,
    tree_alt: String,
    /// What hangs on nothing.
    loose: Vec<String>,
    /// What no outlet can run, what a life depends on first.
    unplaced: Option<String>,
    /// What to look at.
    looks: Vec<String>,
    together: Together,
    never: Vec<String>,
    never_more: Option<String>,
    /// What stays off for what a life depends on.
    off: Option<String>,
    start_notes: Vec<String>,
    /// What may not start although there is power enough for it, as the answer to whoever asks tells it.
    warned: Vec<String>,
    /// What a meter reads once all of it is on.
    meters: Vec<String>,
    stop_order: Option<String>,
    turns: Vec<String>,
    setup: Vec<String>,
    test: Vec<String>,
    stop: Vec<String>,
    emergencies: Vec<Emergency>,
}

/// What stands over a plan with dangers in it.
#[derive(Debug, Serialize)]
struct Strip {
    word: String,
    sentence: String,
}

/// One point of the tree, in the order it is drawn.
#[derive(Debug, Default, Serialize)]
struct Row {
    kind: &'static str,
    id: String,
    face: Option<String>,
    detail: String,
    long: Option<String>,
    short: Option<String>,
    loads: Vec<String>,
    /// What does not act past its amps: nothing below some figure, or nothing.
    unwatched: Option<String>,
    refused: bool,
    /// What it hangs on that must not be used.
    behind: Option<String>,
    /// What alone may be plugged in here.
    only: Option<String>,
    /// For each level above: whether its line goes on below this row.
    rails: Vec<bool>,
}

/// Loads down, sets across.
#[derive(Debug, Default, Serialize)]
struct Together {
    /// How to read it.
    how: String,
    names: Vec<String>,
    /// For each set, what stands beside each name: nothing, a dot, or how many.
    sets: Vec<Vec<String>>,
    more: Option<String>,
}

const KEYS: &[&str] = &[
    "card-one",
    "card-two",
    "look-first",
    "brief-hours",
    "brief-short",
    "do-not-use",
    "together-title",
    "never-title",
    "never-how",
    "turns-title",
    "start-title",
    "setup-title",
    "test-title",
    "stop-title",
    "loose",
    "defer",
    "card-fold",
    "card-trim",
    "ws-column-load",
];

pub(super) fn data(context: &Context<'_>) -> Card {
    let sharing = &context.report.figures.sharing;
    let rows = Tree { context: *context }.rows();
    let never: Vec<String> = sharing
        .never
        .iter()
        .map(|set| context.words.one_set(context.report, set))
        .collect();
    let more = |count: usize| {
        count
            .checked_sub(COLUMNS)
            .filter(|more| *more > 0)
            .map(|more| context.say("more", &[("count", &more.to_string())]))
    };
    let dangers = context.report.count(Signal::Danger);
    Card {
        size: context.options.card,
        danger: (dangers > 0).then(|| Strip {
            word: context.words.signal(Signal::Danger),
            sentence: context
                .words
                .with("print-card-danger", [("count", dangers.into())]),
        }),
        common: context.common("card-title", KEYS),
        tree_alt: alt(context, &rows),
        loose: loose(context, &rows),
        unplaced: unplaced(context),
        looks: looks(context),
        rows,
        together: together(context, more(sharing.together.len())),
        never_more: more(never.len()),
        never: never.into_iter().take(COLUMNS).collect(),
        off: context.words.off(context.report),
        start_notes: start(context),
        warned: warned(context),
        meters: volts::readings(context),
        stop_order: context.words.stop_order(context.report),
        turns: sharing
            .turns
            .iter()
            .map(|turn| context.words.set_names(context.report, turn).join(", "))
            .collect(),
        setup: setup(context),
        test: proofs::card(context),
        stop: stop(context),
        emergencies: emergency::all(context),
    }
}

/// What to do before the engine stops; first of all for what somebody's health depends on.
fn stop(context: &Context<'_>) -> Vec<String> {
    let rest = match context.plan.generator.fuel {
        Answer::Known(Fuel::Propane) => ["stop-1", "stop-2-propane", "stop-3-propane"],
        _ => ["stop-1", "stop-2", "stop-3"],
    };
    let rest = sentences(context, &rest);
    let first = emergency::life_first(context);
    first.into_iter().chain(rest).collect()
}

/// How to switch on what is in the first column: what may run together is started in any order.
fn start(context: &Context<'_>) -> Vec<String> {
    if context.report.figures.sharing.start_order.is_empty() {
        return Vec::new();
    }
    let any = context.say("start-any", &[]);
    let off = context.words.start_without(context.report);
    std::iter::once(any).chain(off).collect()
}

fn warned(context: &Context<'_>) -> Vec<String> {
    let report = context.report;
    let starts = report.findings.iter().filter(|it| {
        it.code == "VOLT001" && it.signal == Signal::Warning && it.fix.key.starts_with("start")
    });
    let told = starts.map(|finding| {
        let title = context.words.finding(finding, &report.figures.loads).title;
        let named = [
            ("title", title.into()),
            ("code", finding.code.into()),
            ("signal", finding.signal.name().into()),
        ];
        context.words.with("may-but", named)
    });
    told.collect()
}

fn sentences(context: &Context<'_>, keys: &[&str]) -> Vec<String> {
    keys.iter().map(|key| context.say(key, &[])).collect()
}

/// The tree told in one line, for whoever cannot see it.
fn alt(context: &Context<'_>, rows: &[Row]) -> String {
    let parts: Vec<String> = rows
        .iter()
        .map(|row| match (&row.long, &row.behind) {
            _ if row.refused => format!("{} ({})", row.id, context.say("do-not-use", &[])),
            (_, Some(behind)) => format!("{} ({behind})", row.id),
            (Some(amps), None) => context.say("tree-alt-part", &[("id", &row.id), ("amps", amps)]),
            (None, None) => row.id.clone(),
        })
        .collect();
    context.say("tree-alt", &[("parts", &parts.join("; "))])
}

/// What to look at: all of it where the card tells of dangers, which most of it may clear; else what comes first.
fn looks(context: &Context<'_>) -> Vec<String> {
    let report = context.report;
    let all = report.figures.looks.iter();
    let most = if report.count(Signal::Danger) > 0 {
        usize::MAX
    } else {
        1
    };
    all.take(most)
        .map(|look| context.words.look_line(report, look))
        .collect()
}

/// What no outlet can run, in one sentence, what none may be used for, what none that is free can run, and what must
/// not be plugged in where the plan has it.
fn unplaced(context: &Context<'_>) -> Option<String> {
    let planned = |unit: &Id| {
        let mut loads = context.plan.loads.iter();
        let of = context.load(unit).map(|facts| &facts.of);
        loads.any(|load| load.on.is_some() && of == Some(&load.id))
    };
    // Of what the plan puts somewhere, nobody asked whether the others could run it if they were free.
    let key_of = |lost: &Unplaced| match lost.reason {
        _ if !lost.free.is_empty() => "misplaced",
        // Not power, but danger keeps it out.
        "refused" => "refused",
        "no-room" => "none-free",
        reason if reason != "impossible" && planned(&lost.load) => "none-free",
        _ => "unplaced",
    };
    let said = ["unplaced", "refused", "none-free", "misplaced"].map(|key| {
        let unplaced = context.report.figures.sharing.unplaced.iter();
        let unplaced = unplaced.filter(|lost| key_of(lost) == key);
        let mut ids: Vec<&Id> = unplaced.map(|unplaced| &unplaced.load).collect();
        ids.sort_by_key(|id| !context.load(id).is_some_and(LoadFacts::life));
        let names = context.load_names(ids).join(", ");
        (!names.is_empty()).then(|| context.say(key, &[("loads", &names)]))
    });
    let said: Vec<String> = said.into_iter().flatten().collect();
    (!said.is_empty()).then(|| said.join(" "))
}

fn loose(context: &Context<'_>, rows: &[Row]) -> Vec<String> {
    let plan = context.plan;
    plan.cords
        .iter()
        .map(|cord| &cord.id)
        .chain(plan.boxes.iter().map(|part| &part.id))
        .filter(|id| rows.iter().all(|row| row.id != id.as_str()))
        .map(|id| match context.report.refused(id) {
            Some(_) => format!("{id} ({})", context.say("do-not-use", &[])),
            None => id.to_string(),
        })
        .collect()
}

fn together(context: &Context<'_>, more: Option<String>) -> Together {
    let sharing = &context.report.figures.sharing;
    let mut groups: Vec<(String, Vec<&Id>)> = Vec::new();
    for placed in &sharing.placed {
        let mut name = context.load_name(&placed.load);
        // Those at another receptacle are not just as good, and get a row of their own.
        if let Some(at) = told_apart(context.report, &placed.load) {
            let words = context.words;
            name = words.with(
                "load-at",
                [("loads", name.into()), ("at", at.as_str().into())],
            );
        }
        match groups.iter_mut().find(|(known, _)| *known == name) {
            Some((_, ids)) => ids.push(&placed.load),
            None => groups.push((name, vec![&placed.load])),
        }
    }
    let sets: Vec<Vec<String>> = sharing
        .together
        .iter()
        .take(COLUMNS)
        .map(|set| {
            groups
                .iter()
                .map(
                    |(_, ids)| match ids.iter().filter(|id| set.contains(id)).count() {
                        0 => String::new(),
                        count if count == ids.len() => "●".to_owned(),
                        count => count.to_string(),
                    },
                )
                .collect()
        })
        .collect();
    // Only what this table has is explained.
    let counted = sets
        .iter()
        .flatten()
        .any(|cell| cell.parse::<usize>().is_ok());
    let how = [
        (sets.len() > 1).then_some("together-pick"),
        Some("together-how"),
        counted.then_some("together-number"),
    ];
    let how = how.into_iter().flatten().map(|key| context.say(key, &[]));
    Together {
        how: how.collect::<Vec<String>>().join(" "),
        names: groups.into_iter().map(|(name, _)| name).collect(),
        sets,
        more,
    }
}

/// Walks the plan from the generator outwards.
struct Tree<'a> {
    context: Context<'a>,
}

/// What can hang below a receptacle.
enum Fed<'a> {
    Cord(&'a Cord),
    Box(&'a DistributionBox),
}

impl Tree<'_> {
    fn rows(&self) -> Vec<Row> {
        let set = &self.context.plan.generator;
        let usable = &self.context.report.figures.usable;
        let mut rows = vec![Row {
            kind: "generator",
            id: set.name.clone(),
            detail: self.context.say(
                "generator-headline",
                &[
                    ("rated", &self.context.capacity(usable.rated_watts)),
                    ("peak", &self.context.capacity(usable.peak_watts)),
                ],
            ),
            ..Row::default()
        }];
        let last = set.outlets.len();
        for (index, outlet) in set.outlets.iter().enumerate() {
            self.outlet(outlet, None, &[index + 1 < last], &mut rows);
        }
        rows
    }

    fn row(&self, kind: &'static str, id: &Id, rails: &[bool]) -> Row {
        let refused = self.context.report.refused(id);
        Row {
            kind,
            id: id.to_string(),
            rails: rails.to_vec(),
            refused: refused.is_some_and(|why| why.at == *id),
            behind: self.context.behind(id),
            only: self.context.only(id),
            ..Row::default()
        }
    }

    fn with_limit(&self, mut row: Row, limit: Option<&Limit>) -> Row {
        let context = &self.context;
        if let Some(limit) = limit.filter(|limit| context.report.usable(&limit.id)) {
            row.long = Some(context.capacity(limit.continuous_amps));
            row.short = Some(context.capacity(limit.short_amps));
            row.unwatched = context.unwatched_briefly(&limit.set_by, &limit.acts);
            row.detail = on_both(context, row.detail, limit.continuous_amps, limit.legs);
            // Nobody relies on the buttons of one that sees no fault, or might not.
            let gfci = match limit.shock.state {
                ShockState::Works => Some("with-gfci"),
                ShockState::Blind | ShockState::Doubtful => Some("with-no-gfci"),
                ShockState::None => None,
            };
            if let Some(key) = gfci {
                row.detail = context.say(key, &[("facts", &row.detail)]);
            }
        }
        row
    }

    fn loads(&self, id: &Id) -> Vec<String> {
        // What alone may be plugged in is named in the row.
        let verdict = self.context.report.verdict(id);
        let named = verdict.is_some_and(|it| it.admits == Admits::Named);
        if named {
            Vec::new()
        } else {
            self.context.plugged_in(id)
        }
    }

    fn outlet(&self, outlet: &Outlet, owner: Option<&Id>, rails: &[bool], rows: &mut Vec<Row>) {
        let kind = if owner.is_some() {
            "receptacle"
        } else {
            "outlet"
        };
        let mut row = self.row(kind, &outlet.id, rails);
        row.face = Some(outlet.shape.to_string());
        let shape = outlet.shape.to_string();
        let amps = |amps: Current| self.context.capacity(amps);
        row.detail = match (outlet.breaker, outlet.trips_at) {
            (Answer::Known(marked), Some(seen)) if seen < marked => self.context.say(
                "outlet-facts-early",
                &[
                    ("shape", &shape),
                    ("breaker", &amps(marked)),
                    ("seen", &amps(seen)),
                ],
            ),
            (Answer::Known(marked), _) => self.context.say(
                "outlet-facts",
                &[("shape", &shape), ("breaker", &amps(marked))],
            ),
            _ => shape,
        };
        row.loads = self.loads(&outlet.id);
        rows.push(self.with_limit(row, self.context.limit(&outlet.id)));
        self.fed(&outlet.id, rails, rows);
    }

    /// Everything plugged into a receptacle.
    fn fed(&self, at: &Id, rails: &[bool], rows: &mut Vec<Row>) {
        let plan = self.context.plan;
        let cords = plan
            .cords
            .iter()
            .filter(|cord| cord.from.as_ref() == Some(at))
            .map(Fed::Cord);
        let boxes = plan
            .boxes
            .iter()
            .filter(|part| part.from.as_ref() == Some(at))
            .map(Fed::Box);
        // What hangs on nothing is told of by itself.
        let fed = cords.chain(boxes).filter(|part| {
            let id = match part {
                Fed::Cord(cord) => &cord.id,
                Fed::Box(part) => &part.id,
            };
            self.context.feed(id).is_some()
        });
        let fed: Vec<Fed<'_>> = fed.collect();
        let count = fed.len();
        for (index, part) in fed.into_iter().enumerate() {
            let mut below = rails.to_vec();
            below.push(index + 1 < count);
            match part {
                Fed::Cord(cord) => self.cord(cord, &below, rows),
                Fed::Box(part) => self.part(part, &below, rows),
            }
        }
    }

    fn cord(&self, cord: &Cord, rails: &[bool], rows: &mut Vec<Row>) {
        let mut row = self.row("cord", &cord.id, rails);
        row.detail = cord_facts(&self.context, cord, |wire| self.context.words.wire(*wire));
        if let [end] = cord.ends.as_slice() {
            row.face = Some(end.to_string());
            row.loads = self.loads(&cord.id);
            rows.push(self.with_limit(row, self.context.limit(&cord.id)));
            self.fed(&cord.id, rails, rows);
            return;
        }
        row.kind = "splitter";
        rows.push(self.all_together(row, &cord.id));
        let count = cord.ends.len();
        for (index, end) in cord.ends.iter().enumerate() {
            let id = cord.end_id(index);
            let mut below = rails.to_vec();
            below.push(index + 1 < count);
            let mut row = self.row("receptacle", &id, &below);
            row.face = Some(end.to_string());
            row.detail = end.to_string();
            row.loads = self.loads(&id);
            rows.push(self.with_limit(row, self.context.limit(&id)));
            self.fed(&id, &below, rows);
        }
    }

    fn part(&self, part: &DistributionBox, rails: &[bool], rows: &mut Vec<Row>) {
        let mut row = self.row("box", &part.id, rails);
        row.detail = self
            .context
            .say("box-headline", &[("inlet", &part.inlet.to_string())]);
        rows.push(self.all_together(row, &part.id));
        let count = part.outlets.len();
        for (index, outlet) in part.outlets.iter().enumerate() {
            let mut below = rails.to_vec();
            below.push(index + 1 < count);
            self.outlet(outlet, Some(&part.id), &below, rows);
        }
    }

    /// The limit of a splitter's cord or a box's inlet: that of everything on it together.
    fn all_together(&self, mut row: Row, id: &Id) -> Row {
        let context = &self.context;
        let usable = context.report.usable(id);
        if let Some(limit) = context.feed(id).filter(|_| usable) {
            row.long = Some(context.capacity(limit.continuous_amps));
            row.short = Some(context.capacity(limit.short_amps));
            row.unwatched = context.unwatched_briefly(&limit.set_by, &limit.acts);
            row.detail = on_both(context, row.detail, limit.continuous_amps, limit.legs);
        }
        row
    }
}

/// What a row says, with the amps of each leg where both feed it: its own column has room for one figure.
fn on_both(context: &Context<'_>, detail: String, amps: Current, legs: &[Leg]) -> String {
    match legs {
        [_, _] => {
            let amps = context.amps_on(amps, legs);
            context.say("detail-amps", &[("facts", &detail), ("amps", &amps)])
        }
        _ => detail,
    }
}

/// Cords and boxes are joined while nothing is live, and all that they feed is off before the engine
/// starts and comes on one at a time: advice of a power authority, from a secondary copy.
fn setup(context: &Context<'_>) -> Vec<String> {
    let site = &context.plan.site;
    let alarm = if site.co_alarm == Answer::Known(true) {
        "setup-alarm-test"
    } else {
        "setup-alarm"
    };
    // In the order of the cautions: exhaust, then what warns of it.
    let place = context.say("setup-place", &[("ample", &context.ample())]);
    let alarm = site.sleeps().then(|| context.say(alarm, &[]));
    let steps = [
        context.say("setup-clear", &[("clear", &context.at_least(CLEAR))]),
        context.say("setup-look", &[]),
        context.say("setup-uncoil", &[]),
        setup_plug(context),
        context.say("setup-start", &[]),
        context.say("setup-test", &[]),
        context.say("setup-load", &[]),
    ];
    std::iter::once(place).chain(alarm).chain(steps).collect()
}

/// How to join cords and boxes, with what the words on labels mean, as far as a label has them.
fn setup_plug(context: &Context<'_>) -> String {
    let report = context.report;
    let ids = || report.figures.verdicts.iter().map(|it| &it.id);
    let guarded = |ahead: bool| {
        ids().any(|id| report.guarded(id).is_some() && report.guarded_ahead(id) == ahead)
    };
    let parts = [
        ("setup-plug", true),
        (
            "setup-plug-skip",
            ids().any(|id| report.refused(id).is_some()),
        ),
        ("setup-plug-guarded", guarded(false)),
        ("setup-plug-ahead", guarded(true)),
    ];
    let told = parts.into_iter().filter(|(_, told)| *told);
    let told: Vec<String> = told.map(|(key, _)| context.say(key, &[])).collect();
    told.join(" ")
}

//! The card: the supply drawn as a tree, what may run together, and what to do.

use serde::Serialize;

use super::super::CardSize;
use super::emergency::{self, Emergency};
use super::labels::{box_headline, cord_facts, gfci_unknown, leg};
use super::{Common, Context, choices, proofs, reachable, volts, worksheet};
use crate::plan::{Answer, Cord, DistributionBox, Fuel, Id, Leg, LoadKind, Outlet};
use crate::quantity::Current;
use crate::report::{Admits, Feed, Limit, LoadFacts, Next, ShockState, Signal, Unplaced};
use crate::tables::exhaust::CLEAR;
use crate::words::told_apart;

/// The data of `card.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Card {
    common: Common,
    size: CardSize,
    /// The exhaust warning: its signal word, its distance, and the alarm that warns of it.
    exhaust: [String; 3],
    /// What to do at once when the alarm sounds.
    now: String,
    /// The heading of a plan with dangers.
    danger: Option<String>,
    /// What to do next in a plan with dangers, other than the looks.
    next: Vec<String>,
    rows: Vec<Row>,
    /// Cords and boxes that are not plugged in.
    loose: Vec<String>,
    /// What no outlet can run, first of all what a life depends on.
    unplaced: Option<String>,
    /// What to look at.
    looks: Vec<String>,
    /// Whether that comes ahead of the tree, which rests on guesses until somebody has looked.
    looks_first: bool,
    together: Together,
    never: Vec<String>,
    never_more: Option<String>,
    /// What stays off for the sake of what a life depends on.
    off: Option<String>,
    /// Loads that may fail to start although there is enough power, in the same words as answers to questions.
    warned: Vec<String>,
    turns: Vec<String>,
    /// What takes no turns, since a life depends on it.
    no_turns: Option<String>,
    /// Whom to call.
    call: String,
    /// What to write down in advance for that call.
    blanks: Vec<String>,
    setup: Vec<String>,
    test: Vec<String>,
    stop: Vec<String>,
    /// What a meter reads once everything is on.
    meters: Vec<String>,
    emergencies: Vec<Emergency>,
}

/// One point of the tree, in drawing order.
#[derive(Debug, Default, Serialize)]
struct Row {
    kind: &'static str,
    id: String,
    face: Option<String>,
    /// What it is, in small type.
    facts: Vec<String>,
    long: Option<String>,
    /// The same power in watts, for appliances whose nameplate gives watts.
    watts: Option<String>,
    /// `None` if `long` holds for any length of time.
    short: Option<String>,
    loads: Vec<String>,
    /// A warning if nothing trips past the amps, or nothing below some higher figure.
    unwatched: Option<String>,
    /// Whether nothing that the plan has may be plugged in.
    stopped: bool,
    /// The words for that. `None` if a row above says them.
    stop: Option<String>,
    /// The only things that may be plugged in here.
    only: Option<String>,
    /// For each level above, whether its line continues below this row.
    rails: Vec<bool>,
}

/// The table of what may run together, with a row for each load and a column for each set.
#[derive(Debug, Default, Serialize)]
struct Together {
    title: String,
    /// A sentence in place of the table, if everything may run together or there is only one set to show.
    all: Option<String>,
    /// How to read the table.
    how: String,
    names: Vec<String>,
    sets: Vec<Choice>,
    more: Option<String>,
}

/// One set that may run together.
#[derive(Debug, Serialize)]
struct Choice {
    number: String,
    /// When the plan needs it.
    times: String,
    /// The cell for each name: empty, a dot, or a count.
    has: Vec<String>,
}

/// The fields shown on side 2.
pub(super) const SIDE_TWO: &[&str] = &["call", "blanks", "setup", "test", "stop", "meters", "emergencies"];

const KEYS: &[&str] = &[
    "card-one",
    "card-two",
    "card-turn",
    "card-see",
    "card-on",
    "card-flip",
    "card-fold",
    "card-trim",
    "symbol-toxic",
    "look-first",
    "next-title",
    "brief-hours",
    "brief-short",
    "never-title",
    "never-how",
    "together-elsewhere",
    "together-dot",
    "turns-title",
    "setup-title",
    "test-title",
    "stop-title",
    "loose",
    "defer",
    "ws-column-load",
];

pub(super) fn data(context: &Context<'_>) -> Card {
    let sharing = &context.report.figures.sharing;
    let say = |key: &str| context.say(key, &[]);
    let rows = Tree { context: *context }.rows();
    let never = sharing.never.iter();
    let never = never.map(|set| context.words.one_set(context.report, set));
    let dangers = context.report.count(Signal::Danger);
    let danger = [("count", dangers.into())];
    Card {
        size: context.options.card,
        exhaust: [
            context.words.signal(Signal::Danger),
            context.say("air-brief", &[("ample", &context.ample())]),
            say("card-alarm"),
        ],
        now: say("card-now"),
        danger: (dangers > 0).then(|| context.words.with("print-card-danger", danger)),
        common: context.common("card-title", KEYS),
        loose: loose(context),
        unplaced: unplaced(context),
        next: next(context),
        looks: looks(context),
        looks_first: looks_first(context),
        rows,
        together: together(context),
        never_more: never_more(context),
        never: never.take(NEVER_SHOWN).collect(),
        off: context.words.off(context.report),
        warned: warned(context),
        meters: volts::readings(context),
        turns: context.words.turns(context.report),
        no_turns: context.words.no_turns(context.report),
        call: say("card-call"),
        blanks: ["card-site", "card-ranger", "card-hospital"].map(say).into(),
        setup: setup(context),
        test: proofs::card(context),
        stop: stop(context),
        emergencies: emergency::all(context),
    }
}

/// Says how many conflicts are not shown, and whether there might be others that nobody worked out.
fn never_more(context: &Context<'_>) -> Option<String> {
    let sharing = &context.report.figures.sharing;
    let hidden = more(context, "never-more", sharing.never.len().saturating_sub(NEVER_SHOWN));
    let others = (!sharing.families_complete).then(|| context.say("never-unlisted", &[]));
    let told: Vec<String> = hidden.into_iter().chain(others).collect();
    (!told.is_empty()).then(|| told.join(" "))
}

/// Says how many items are not shown, if any.
fn more(context: &Context<'_>, key: &str, hidden: usize) -> Option<String> {
    (hidden > 0).then(|| context.say(key, &[("count", &hidden.to_string())]))
}

/// Returns the steps for stopping the engine, beginning with what someone's health depends on.
fn stop(context: &Context<'_>) -> Vec<String> {
    let rest = match context.plan.generator.fuel {
        Answer::Known(Fuel::Propane) => ["stop-1", "stop-2-propane", "stop-3-propane"],
        _ => ["stop-1", "stop-2", "stop-3"],
    };
    let rest = context.sentences(&rest);
    let first = emergency::life_first(context);
    first.into_iter().chain(rest).collect()
}

/// Returns what to know before anything is switched on: which motors may not start, and which devices need a battery
/// of their own because someone's health depends on them.
fn warned(context: &Context<'_>) -> Vec<String> {
    let report = context.report;
    let needs_battery = |id: &&Id| {
        let mut of_device = report.findings.iter().filter(|it| (it.code, it.fix.key) == ("HEALTH001", "battery"));
        of_device.any(|it| report.figures.load(id).is_some_and(|load| it.about.contains(&load.of)))
    };
    let life: Vec<Id> = context.lives(true).iter().filter(needs_battery).cloned().collect();
    let devices = context.words.set_quoted(report, &life);
    let battery = (!life.is_empty()).then(|| context.say("life-battery", &[("life", &devices)]));
    let starts = report
        .findings
        .iter()
        .filter(|it| it.code == "VOLT001" && it.signal == Signal::Warning && it.fix.key.starts_with("start"));
    let told = starts.map(|finding| {
        let title = context.words.finding(finding, &report.figures.loads).title;
        let named = [("title", title.into()), ("code", finding.code.into()), ("signal", finding.signal.name().into())];
        context.words.with("may-but", named)
    });
    battery.into_iter().chain(told).collect()
}

/// Returns what to look at: everything if the card reports dangers, since looking may clear most of them, and otherwise
/// the first item.
fn looks(context: &Context<'_>) -> Vec<String> {
    let report = context.report;
    let all = report.figures.looks.iter();
    let most = if report.count(Signal::Danger) > 0 { usize::MAX } else { 1 };
    all.take(most).map(|look| context.words.look_line(report, look)).collect()
}

/// Whether the looks come ahead of the tree: if there are dangers, and looking may clear some of them. Small cards keep
/// their room for the tree.
fn looks_first(context: &Context<'_>) -> bool {
    let report = context.report;
    large(context.options.card) && report.count(Signal::Danger) > 0 && !report.figures.looks.is_empty()
}

/// Returns what to do next in a plan with dangers, for which a small card has no room. The looks are listed below it.
fn next(context: &Context<'_>) -> Vec<String> {
    let report = context.report;
    if report.count(Signal::Danger) == 0 || !large(context.options.card) {
        return Vec::new();
    }
    let steps = report.figures.next.iter().zip(context.words.next(report));
    steps.filter(|(next, _)| !matches!(next, Next::Look(_))).map(|(_, said)| said).collect()
}

/// Whether the card has room for everything. Small cards omit what a part is and what it carries for a short time.
const fn large(size: CardSize) -> bool {
    matches!(size, CardSize::Sheet | CardSize::Phone)
}

/// The most conflicts that the card shows. What must not run together belongs on the card itself.
const NEVER_SHOWN: usize = 16;

/// Returns what cannot be run: loads kept out by danger, loads too large for any outlet or for their own, loads without
/// a free or permitted outlet, and loads that must move from where the plan has them.
fn unplaced(context: &Context<'_>) -> Option<String> {
    let load_of = |unit: &Id| {
        let of = &context.load(unit)?.of;
        context.plan.load(of)
    };
    let planned = |unit: &Id| load_of(unit).is_some_and(|load| load.on.is_some());
    // If the plan places a load, nobody checked whether other outlets could run it if they were free.
    let key_of = |lost: &Unplaced| match lost.reason {
        _ if !lost.free.is_empty() => "misplaced",
        // Kept out by danger, not by lack of power.
        "hot" => "felt-hot",
        "refused" => "refused",
        "no-room" => "none-free",
        reason if reason != "impossible" && planned(&lost.load) => "none-free",
        _ => "unplaced",
    };
    let sharing = &context.report.figures.sharing;
    let said = ["felt-hot", "unplaced", "too-large", "refused", "none-free", "misplaced"].map(|key| {
        let unplaced = sharing.unplaced.iter().filter(|lost| key_of(lost) == key);
        let mut ids: Vec<&Id> = unplaced.map(|unplaced| &unplaced.load).collect();
        if key == "too-large" {
            // The plan places these where they are too large even by themselves, and not only for hours.
            let placed = sharing.placed.iter().map(|placed| &placed.load);
            let rests = |load: &Id| {
                let mut found = context.report.findings.iter();
                let named = |about: &[Id]| load_of(load).is_some_and(|load| about.contains(&load.id));
                found.any(|it| it.code == "OVER002" && named(&it.about))
            };
            ids.extend(placed.filter(|load| !context.report.figures.may_run(load) && !rests(load)));
        }
        ids.sort_by_key(|id| !context.load(id).is_some_and(LoadFacts::life));
        let names = context.load_names(ids).join(", ");
        (!names.is_empty()).then(|| context.say(key, &[("loads", &names)]))
    });
    let mut said: Vec<String> = said.into_iter().flatten().collect();
    let medical = |life: &Id| load_of(life).is_some_and(|load| load.kind == Answer::Known(LoadKind::Medical));
    let (known, guessed): (Vec<Id>, Vec<Id>) = context.lives(false).into_iter().partition(medical);
    for (key, lives) in [("unplaced-life", known), ("unplaced-life-maybe", guessed)] {
        if !lives.is_empty() {
            let life = context.words.set_quoted(context.report, &lives);
            said.push(context.say(key, &[("life", &life)]));
        }
    }
    (!said.is_empty()).then(|| said.join(" "))
}

fn loose(context: &Context<'_>) -> Vec<String> {
    let gear = context.plan.gear().map(|it| it.id);
    gear.filter(|id| context.feed(id).is_none())
        .map(|id| match context.report.refused(id) {
            Some(_) => format!("{id} ({})", context.say("do-not-use", &[])),
            None => id.to_string(),
        })
        .collect()
}

fn together(context: &Context<'_>) -> Together {
    let sharing = &context.report.figures.sharing;
    let shown = choices::shown(context);
    let listed = sharing.together.len() <= worksheet::MOST_SETS;
    let hidden = sharing.together.len() - shown.len();
    // If not every mix was worked out, there are others, and nobody knows how many.
    let more = if listed && sharing.families_complete {
        more(context, "more", hidden)
    } else {
        Some(context.say("more-left-out", &[]))
    };
    // With a single set there is nothing to choose, so there is no table.
    let one = match &*shown {
        [one] => {
            let names = context.words.set_names(context.report, one.set).join(", ");
            Some(context.say("together-one", &[("loads", &names)]))
        }
        _ => None,
    };
    let all = context.words.all_together(context.report).or(one);
    // In a plan with dangers the engine must stay off, so the title must not read as permission.
    let danger = context.report.count(Signal::Danger) > 0;
    let title = context.say(if danger { "together-title-danger" } else { "together-title" }, &[]);
    if all.is_some() {
        return Together { title, all, more, ..Together::default() };
    }
    let mut groups: Vec<(String, Vec<&Id>)> = Vec::new();
    for placed in &sharing.placed {
        let mut name = context.load_name(&placed.load);
        // Loads of the same name at another receptacle are not interchangeable, so they get their own row.
        if let Some(at) = told_apart(context.report, &placed.load) {
            let words = context.words;
            name = words.with("load-at", [("loads", name.into()), ("at", at.as_str().into())]);
        }
        match groups.iter_mut().find(|(known, _)| *known == name) {
            Some((_, ids)) => ids.push(&placed.load),
            None => groups.push((name, vec![&placed.load])),
        }
    }
    let cell = |set: &[Id], ids: &[&Id]| match ids.iter().filter(|id| set.contains(id)).count() {
        0 => String::new(),
        count if count == ids.len() => "●".to_owned(),
        count => count.to_string(),
    };
    let column = |it: choices::Choice<'_>| Choice {
        number: it.number.to_string(),
        times: it.times,
        has: groups.iter().map(|(_, ids)| cell(it.set, ids)).collect(),
    };
    let sets: Vec<Choice> = shown.into_iter().map(column).collect();
    // Explain only the cells that this table has.
    let mut cells = sets.iter().flat_map(|set| &set.has);
    let counted = cells.any(|cell| cell.parse::<usize>().is_ok());
    let how = [Some("together-pick"), Some("together-how"), counted.then_some("together-number")];
    let how = how.into_iter().flatten().map(|key| context.say(key, &[]));
    Together {
        title,
        all: None,
        how: how.collect::<Vec<String>>().join(" "),
        names: groups.into_iter().map(|(name, ids)| context.counted(name, ids.len())).collect(),
        more,
        sets,
    }
}

/// Walks the plan downstream from the generator.
struct Tree<'a> {
    context: Context<'a>,
}

/// Returns the rails of each of `count` children. A child's own rail continues if another child follows.
fn below(rails: &[bool], count: usize) -> impl Iterator<Item = Vec<bool>> {
    (1..=count).map(move |at| [rails, &[at < count]].concat())
}

impl Tree<'_> {
    fn rows(&self) -> Vec<Row> {
        let set = &self.context.plan.generator;
        let usable = &self.context.report.figures.usable;
        let headline =
            if usable.peak_watts > usable.rated_watts { "generator-headline" } else { "generator-headline-one" };
        let (rated, peak) = (self.context.capacity(usable.rated_watts), self.context.capacity(usable.peak_watts));
        let mut facts = vec![self.context.say(headline, &[("rated", &rated), ("peak", &peak)])];
        facts.extend(reachable(&self.context).map(|(name, value)| format!("{name}: {value}")).filter(|_| self.large()));
        let mut rows = vec![Row { kind: "generator", id: set.name.clone(), facts, ..Row::default() }];
        for (below, outlet) in below(&[], set.outlets.len()).zip(&set.outlets) {
            self.outlet(outlet, None, &below, &mut rows);
        }
        say_once(&self.context, self.large(), &mut rows);
        // Until somebody has looked, much of the tree must not be used, and is told in few words too.
        let guessed = looks_first(&self.context);
        if guessed || !self.large() {
            without_silent_ends(&mut rows, guessed);
        }
        rows
    }

    fn large(&self) -> bool {
        large(self.context.options.card)
    }

    fn unwatched(&self, feed: &Feed) -> Option<String> {
        let said = self.context.unwatched_briefly(feed)?;
        let brief = || self.context.say("no-breaker-brief", &[]);
        Some(if self.large() { said } else { brief() })
    }

    fn small(&self, facts: String) -> Vec<String> {
        self.large().then_some(facts).into_iter().collect()
    }

    fn row(&self, kind: &'static str, id: &Id, rails: &[bool]) -> Row {
        let report = self.context.report;
        let refused = report.refused(id).map(|_| self.context.say("do-not-use", &[]));
        let only = self.context.only(id);
        let (stop, only) = match refused {
            Some(_) => (refused, None),
            None if report.guarded(id).is_some() => (only, None),
            None => (None, only),
        };
        Row { kind, id: id.to_string(), rails: rails.to_vec(), stopped: stop.is_some(), stop, only, ..Row::default() }
    }

    fn with_limit(&self, mut row: Row, id: &Id) -> Row {
        let context = &self.context;
        let report = context.report;
        let draws = report.usable(id) && !report.only_bonding_plug(id);
        if let Some(limit) = context.limit(id).filter(|_| draws) {
            row.unwatched = self.unwatched(&limit.into());
            if limit.legs.len() == 1 {
                row.facts.extend(leg(context, limit));
            }
            let long = limit.continuous_amps;
            if report.idle(id) {
                // In the facts, since a figure in the column would invite use.
                row.facts.push(context.amps_on(long, limit.legs));
            } else {
                self.amps(&mut row, long, limit.short_amps, limit.legs);
            }
            row.facts.extend(self.gfci(limit));
            // Nameplates give watts, so an outlet that takes appliances gives them too.
            let free = context.plan.gear().all(|it| it.from != Some(id));
            row.watts = (free && row.long.is_some() && self.large()).then(|| context.capacity(limit.continuous_watts));
        }
        row
    }

    /// Returns what the row says about its GFCI. One that sees no fault, or might not, counts as none, so that nobody
    /// relies on its buttons.
    fn gfci(&self, limit: &Limit) -> Option<String> {
        let context = &self.context;
        let key = match limit.shock.state {
            ShockState::Works => "row-gfci",
            ShockState::Blind | ShockState::Doubtful => "tiny-no-gfci",
            ShockState::None => {
                // If a load is plugged in here, silence would look safer than "no GFCI".
                context.report.verdict(&limit.id).filter(|it| !it.loads.is_empty())?;
                match gfci_unknown(context, limit) {
                    true => "tiny-gfci-unknown",
                    // A camper has its own GFCI, which the plan does not ask about.
                    false if limit.inside => return None,
                    false => "tiny-no-gfci",
                }
            }
        };
        Some(context.say(key, &[]))
    }

    /// Fills in the amps. If both legs feed the row, a fact gives the amps of each, since the column has room for one
    /// figure.
    fn amps(&self, row: &mut Row, long: Current, short: Current, legs: &[Leg]) {
        let context = &self.context;
        row.long = Some(context.capacity(long));
        let short = (short > long).then(|| context.capacity(short));
        row.short = short.filter(|_| self.large());
        let both = (legs.len() > 1).then(|| context.amps_on(long, legs));
        row.facts.extend(both);
    }

    fn loads(&self, id: &Id) -> Vec<String> {
        // If only some things may be plugged in, the row names them already.
        let verdict = self.context.report.verdict(id);
        let named = verdict.is_some_and(|it| it.admits == Admits::Named);
        if named { Vec::new() } else { self.context.plugged_in(id) }
    }

    fn outlet(&self, outlet: &Outlet, owner: Option<&Id>, rails: &[bool], rows: &mut Vec<Row>) {
        let kind = if owner.is_some() { "receptacle" } else { "outlet" };
        let mut row = self.row(kind, &outlet.id, rails);
        row.face = Some(outlet.shape.to_string());
        row.facts = self.small(outlet.shape.to_string());
        row.loads = self.loads(&outlet.id);
        rows.push(self.with_limit(row, &outlet.id));
        self.fed(&outlet.id, rails, rows);
    }

    /// Adds rows for everything plugged into a receptacle.
    fn fed(&self, at: &Id, rails: &[bool], rows: &mut Vec<Row>) {
        let plan = self.context.plan;
        // Parts that are not plugged in are listed separately.
        let fed = plan.gear().filter(|it| it.from == Some(at) && self.context.feed(it.id).is_some());
        let fed: Vec<&Id> = fed.map(|it| it.id).collect();
        for (below, id) in below(rails, fed.len()).zip(fed) {
            if let Some(cord) = plan.cord(id) {
                self.cord(cord, &below, rows);
            } else if let Some(part) = plan.holder(id) {
                self.part(part, &below, rows);
            }
        }
    }

    fn cord(&self, cord: &Cord, rails: &[bool], rows: &mut Vec<Row>) {
        let mut row = self.row("cord", &cord.id, rails);
        row.facts = self.small(cord_facts(&self.context, cord, |wire| self.context.words.wire(*wire)));
        if let [end] = cord.ends() {
            row.face = Some(end.to_string());
            row.loads = self.loads(&cord.id);
            rows.push(self.with_limit(row, &cord.id));
            self.fed(&cord.id, rails, rows);
            return;
        }
        row.kind = "splitter";
        rows.push(self.all_together(row, &cord.id));
        let ends = cord.end_ids().zip(cord.ends());
        for (below, (id, end)) in below(rails, cord.ends().len()).zip(ends) {
            let mut row = self.row("receptacle", &id, &below);
            row.face = Some(end.to_string());
            row.facts = self.small(end.to_string());
            row.loads = self.loads(&id);
            rows.push(self.with_limit(row, &id));
            self.fed(&id, &below, rows);
        }
    }

    fn part(&self, part: &DistributionBox, rails: &[bool], rows: &mut Vec<Row>) {
        let mut row = self.row("box", &part.id, rails);
        row.facts = self.small(box_headline(&self.context, part));
        if part.is_camper() {
            row.facts.splice(0..0, self.small(self.context.say("camper", &[])));
            row.loads = self.loads(&part.id);
        }
        let mut row = self.all_together(row, &part.id);
        let inside = self.context.limit(&part.id).filter(|it| it.inside && self.context.report.usable(&it.id));
        row.facts.extend(inside.and_then(|it| self.gfci(it)));
        rows.push(row);
        for (below, outlet) in below(rails, part.outlets.len()).zip(&part.outlets) {
            self.outlet(outlet, Some(&part.id), &below, rows);
        }
    }

    /// Adds the limit of a splitter's cord or a box's inlet, which everything on it shares.
    fn all_together(&self, mut row: Row, id: &Id) -> Row {
        let context = &self.context;
        let usable = context.report.usable(id);
        if let Some(limit) = context.feed(id).filter(|_| usable) {
            row.unwatched = self.unwatched(&limit);
            self.amps(&mut row, limit.continuous_amps, limit.short_amps, limit.legs);
        }
        row
    }
}

/// Removes what a row above already says: an order not to use a part covers everything it feeds, and a warning about a
/// part covers its ends. Large cards also get the most that a GFCI cord may draw.
fn say_once(context: &Context<'_>, large: bool, rows: &mut [Row]) {
    let mut above: Vec<[Option<String>; 3]> = Vec::new();
    for row in rows {
        above.truncate(row.rails.len());
        let most = Id::new(&row.id).and_then(|id| context.guarded_most(&id));
        let own = [row.stop.clone(), row.unwatched.clone(), most.clone()];
        let [stop, unwatched, known] = above.last().cloned().unwrap_or_default();
        row.stop.take_if(|it| stop.as_ref() == Some(it));
        let end = row.kind == "receptacle";
        row.unwatched.take_if(|it| end && unwatched.as_ref() == Some(it));
        let most = most.filter(|it| large && (row.stop.is_some() || known.as_ref() != Some(it)));
        let most = most.map(|amps| context.say("guarded-most", &[("amps", &amps)]));
        row.facts.extend(most);
        above.push(own);
    }
}

/// On a small card, gives a part that must not be used a single row. The rows of its outlets go if they say nothing
/// else and feed nothing, and with `whole` those of all that it feeds.
fn without_silent_ends(rows: &mut Vec<Row>, whole: bool) {
    let mut at = 0;
    while at < rows.len() {
        let depth = rows[at].rails.len();
        let fed = rows[at + 1..].iter();
        let fed = fed.take_while(|row| row.rails.len() > depth);
        let silent = |row: &Row| {
            let end = row.kind == "receptacle" && row.rails.len() == depth + 1;
            (end || whole) && row.stopped && row.stop.is_none() && row.loads.is_empty()
        };
        let count = fed.clone().count();
        if rows[at].stopped && fed.clone().all(silent) {
            rows.drain(at + 1..=at + count);
        }
        at += 1;
    }
}

/// Returns the setup steps. Cords and boxes are connected while nothing is live, all loads are off before the engine
/// starts, and they come on one at a time: advice of a power authority, from a secondary copy.
fn setup(context: &Context<'_>) -> Vec<String> {
    let site = &context.plan.site;
    let alarm = if site.co_alarm == Answer::Known(true) { "setup-alarm-test" } else { "setup-alarm" };
    // In the order of the cautions: exhaust, then the alarm that warns of it.
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

/// Returns how to connect cords and boxes, and what the orders on labels mean if any label has one.
fn setup_plug(context: &Context<'_>) -> String {
    let report = context.report;
    let ids = || report.figures.verdicts.iter().map(|it| &it.id);
    let guarded = |ahead: bool| ids().any(|id| report.guarded(id).is_some() && report.guarded_ahead(id) == ahead);
    let parts = [
        ("setup-plug", true),
        ("setup-plug-skip", ids().any(|id| report.refused(id).is_some())),
        ("setup-plug-guarded", guarded(false)),
        ("setup-plug-ahead", guarded(true)),
    ];
    let told = parts.into_iter().filter(|(_, told)| *told);
    let told: Vec<String> = told.map(|(key, _)| context.say(key, &[])).collect();
    told.join(" ")
}

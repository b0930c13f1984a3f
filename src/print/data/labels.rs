//! The text of each label.

use serde::Serialize;

use super::super::stock::{StockData, millimetres};
use super::{Common, Context, PrintError, reachable};
use crate::plan::{Answer, Cord, DistributionBox, Id, Leg, Outlet};
use crate::quantity::{Amount, Power, Wire};
use crate::report::{Acts, Assumption, Feed, Finding, Limit, Report, Shared, ShockState, Signal};
use crate::supply::NodeIx;

/// The data of `labels.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Labels {
    common: Common,
    stock: StockData,
    /// The number of positions to leave empty on the first sheet.
    skip: usize,
    /// How far to move everything, in millimeters.
    offset_across: f64,
    offset_down: f64,
    items: Vec<Label>,
}

#[derive(Clone, Debug, Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
enum Label {
    Refuse(Refusal),
    Generator(Part),
    Receptacle(Socket),
    Cord(Part),
    Box(Part),
}

/// A receptacle or part that must not be used, or only with one kind of cord.
#[derive(Clone, Debug, Serialize)]
struct Refusal {
    id: String,
    /// The outlets of this part, if the label speaks for them too.
    ends: Option<String>,
    alt: String,
    shape: Option<String>,
    /// The panel's color scheme.
    level: &'static str,
    signal: String,
    /// The order: not to be used, or only in one way.
    stop: String,
    /// The order for a label with little room.
    stop_brief: String,
    /// Whether to draw a prohibition sign. False if one thing may be plugged in.
    forbidden: bool,
    title: String,
    why: String,
    fix: String,
}

/// A receptacle.
#[derive(Clone, Debug, Serialize)]
struct Socket {
    id: String,
    shape: String,
    /// Whether it has two faces.
    double: bool,
    alt: String,
    volts: String,
    /// `None` if nothing that draws current may be plugged in.
    long: Option<Flow>,
    /// `None` if `long` holds for any length of time.
    short: Option<Flow>,
    /// The legs that feed it. `None` if the generator has only one.
    leg: Option<String>,
    /// The legs in fewer words, for a label with little room.
    leg_brief: Option<String>,
    set_by: Option<String>,
    /// A warning if nothing trips past the limit.
    unwatched: Option<String>,
    gfci: bool,
    /// Whether there is shock protection, and where its test button is.
    shock: Option<String>,
    /// The same for a label with little room.
    shock_brief: Option<String>,
    /// The amounts that it shares with other receptacles.
    shared: Vec<Share>,
    /// What plugs in here.
    plugs: Vec<String>,
    /// Shorter and shorter versions of that for labels without room, each with how many more there are.
    plugs_first: Vec<String>,
    /// The only things that may be plugged in.
    only: Option<String>,
    /// The same for a label with little room.
    only_brief: Option<String>,
    /// What may be plugged in, if the plan has nothing for it and no GFCI works there.
    idle: Option<String>,
    /// From the generator to this receptacle, which is not included.
    path: Vec<String>,
}

/// An amount that several receptacles share.
#[derive(Clone, Debug, Serialize)]
struct Share {
    sentence: String,
    /// The same for a label with little room.
    brief: String,
    /// Whether something trips past it. If not, it is on every label, however small.
    enforced: bool,
}

/// A current with the power that it carries, or a power alone.
#[derive(Clone, Debug, Default, Serialize)]
struct Flow {
    /// The main figure, which is watts if this is a power alone.
    amps: String,
    watts: Option<String>,
    how_long: String,
}

/// The generator, a cord or a box.
#[derive(Clone, Debug, Default, Serialize)]
struct Part {
    id: String,
    /// The key of the word for it: a cord may be an adapter, and a box a camper.
    word: &'static str,
    /// The largest line under the name.
    headline: Option<String>,
    /// The signal word of the generator's exhaust warning.
    signal: Option<String>,
    /// The exhaust warning in brief.
    brief: Option<String>,
    long: Option<Flow>,
    short: Option<Flow>,
    set_by: Option<String>,
    unwatched: Option<String>,
    unwatched_brief: Option<String>,
    /// The only things that may be plugged into its one receptacle, or the condition for using it.
    only: Option<String>,
    /// The same for a label with little room.
    only_brief: Option<String>,
    /// What may be plugged into its one receptacle, if the plan has nothing for it and no GFCI works there.
    idle: Option<String>,
    /// Whether a GFCI works at all its receptacles, or inside a camper.
    gfci: bool,
    /// Whether there is shock protection there, and where its test button is. `None` if its receptacles differ.
    shock: Option<String>,
    /// The same for a label with little room.
    shock_brief: Option<String>,
    /// Its receptacles.
    outlets: Vec<Own>,
    /// Names and values.
    facts: Vec<(String, String)>,
}

/// A receptacle listed on the label of its generator or box.
#[derive(Clone, Debug, Serialize)]
struct Own {
    id: String,
    shape: String,
    alt: String,
    amps: String,
    /// What is printed instead of amps if it must not be used, admits one kind of cord, or is idle.
    stop: Option<String>,
}

const KEYS: &[&str] = &[
    "for-hours",
    "plug-in",
    "comes-from",
    "do",
    "scale-bar",
    "fold",
    "flag-alt",
    "generator",
    "cord",
    "adapter",
    "box",
    "camper",
    "short-add-up",
    "tiny-gfci",
];

pub(super) fn data(context: &Context<'_>) -> Result<Labels, PrintError> {
    let stock = context.options.labels_on()?;
    let start_at = context.options.start_at.max(1);
    if start_at > stock.count() {
        return Err(PrintError::BadStart { start_at, count: stock.count() });
    }
    let (refused, rest): (Vec<_>, Vec<_>) =
        labels(context).into_iter().partition(|label| matches!(label, Label::Refuse(_)));
    let copies = context.options.copies.max(1);
    let offset = context.options.offset;
    Ok(Labels {
        common: context.common("labels-title", KEYS),
        stock: stock.data(),
        skip: start_at - 1,
        offset_across: millimetres(offset.across),
        offset_down: millimetres(offset.down),
        items: refused.into_iter().chain(rest).flat_map(|label| std::iter::repeat_n(label, copies)).collect(),
    })
}

/// Returns labels in supply order: the generator and its outlets, cords with their ends, boxes with their outlets.
fn labels(context: &Context<'_>) -> Vec<Label> {
    let plan = context.plan;
    let mut labels = vec![Label::Generator(generator(context))];
    labels.extend(apart(context));
    labels.extend(hot_loads(context));
    for outlet in &plan.generator.outlets {
        labels.extend(socket(context, &outlet.id, None, Some(outlet)));
    }
    for cord in &plan.cords {
        let own = refusal(context, &cord.id, None);
        // The flag of a cord with one end also labels that end.
        let many = if cord.ends().len() > 1 { cord.ends().len() } else { 0 };
        let ends = (0..many).map(|index| cord.end_id(index));
        let ends = ends.filter_map(|end| socket(context, &end, Some(&cord.id), None));
        let whole = || Label::Cord(self::cord(context, cord));
        labels.extend(with_ends(context, own, whole, ends.collect()));
    }
    for part in &plan.boxes {
        let own = refusal(context, &part.id, None);
        let outlets = part.outlets.iter();
        let outlets = outlets.filter_map(|outlet| socket(context, &outlet.id, Some(&part.id), Some(outlet)));
        let whole = || Label::Box(self::part(context, part));
        labels.extend(with_ends(context, own, whole, outlets.collect()));
    }
    labels
}

/// Returns the label of a part, then those of its ends. If the part must not be used and all its ends say the same, its
/// label speaks for them.
fn with_ends(
    context: &Context<'_>,
    own: Option<Label>,
    whole: impl FnOnce() -> Label,
    mut ends: Vec<Label>,
) -> Vec<Label> {
    let Some(Label::Refuse(mut own)) = own else {
        ends.insert(0, whole());
        return ends;
    };
    let same = |end: &Label| match end {
        Label::Refuse(end) if end.stop == own.stop => Some(end.id.clone()),
        _ => None,
    };
    let spoken_for: Option<Vec<String>> = ends.iter().map(same).collect();
    if let Some(named) = spoken_for.filter(|named| !named.is_empty()) {
        own.ends = Some(context.say("refused-ends", &[("ends", &named.join(", "))]));
        ends.clear();
    }
    ends.insert(0, Label::Refuse(own));
    ends
}

/// Returns the label that keeps generators apart if they must not run in parallel, or if nobody knows. As a pair they
/// must not be used, and each by itself is used as its own label says.
fn apart(context: &Context<'_>) -> Option<Label> {
    let report = context.report;
    let keeps_apart =
        |it: &&Finding| matches!((it.code, it.fix.key), ("POWER008", "apart" | "look") | ("SHOCK004", "sets"));
    let told = report.findings.iter().filter(keeps_apart).min_by_key(|it| it.signal)?;
    let id = &context.plan.generator.name;
    let stop = ["apart", "apart-brief"].map(|key| context.say(key, &[]));
    Some(forbidden(context, told, id, stop))
}

/// Returns a label for each load that is kept unplugged because it or its outlet got hot or gave a shock.
fn hot_loads(context: &Context<'_>) -> Vec<Label> {
    let hot = context.report.findings.iter().filter(|it| it.code == "CORD009");
    let labels = hot.flat_map(|told| {
        let loads = context.plan.loads.iter().filter(|load| told.about.contains(&load.id));
        loads.map(|load| {
            let stop = ["do-not-use"; 2].map(|key| context.say(key, &[]));
            forbidden(context, told, &load.name, stop)
        })
    });
    labels.collect()
}

/// Returns the label of something that must not be used, in the words of the finding that says so.
fn forbidden(context: &Context<'_>, told: &Finding, name: &str, stop: [String; 2]) -> Label {
    let mut finding = told.clone();
    finding.signal = context.report.signal_of(told);
    let text = context.words.finding(&finding, &context.report.figures.loads);
    let [stop, stop_brief] = stop;
    Label::Refuse(Refusal {
        id: name.to_owned(),
        ends: None,
        alt: stop.clone(),
        shape: None,
        level: finding.signal.name(),
        signal: text.signal,
        stop,
        stop_brief,
        forbidden: true,
        title: text.title,
        why: text.look.into_iter().next().unwrap_or(text.why),
        fix: context.look_lines(told).unwrap_or(text.fix),
    })
}

/// Returns the label of a part that must not be used, or only with a GFCI cord, in the words of the finding that says
/// why. If the cause is upstream or downstream, the label names that part.
fn refusal(context: &Context<'_>, id: &Id, shape: Option<String>) -> Option<Label> {
    let report = context.report;
    let forbidden = report.refused(id).is_some();
    let why = report.refused(id).or_else(|| report.guarded(id))?;
    let told = report.told_by(why)?;
    let mut finding = told.clone();
    // As severe as the trouble that the finding belongs to, since one fix clears all of it.
    finding.signal = report.signal_of(told);
    // Such a finding lists unrelated parts. The label is about its own.
    if Report::ONE_BY_ONE.contains(&finding.code) {
        let it = if forbidden { &why.at } else { id };
        finding.about = vec![it.clone()];
        // Assumptions about the way to this part come first.
        let verdict = context.report.verdict(id)?;
        let elsewhere = |it: &Assumption| !verdict.assumed.contains(&it.field);
        finding.rests_on.sort_by_key(elsewhere);
    }
    if !forbidden && finding.fix.key == "protect" {
        finding.fix.key = "free";
    }
    let text = context.words.finding(&finding, &context.report.figures.loads);
    // The label admits one kind of cord, but nobody is to pull out the bonding plug for it.
    let plug = !forbidden && context.report.verdict(id)?.bonding_plug;
    let title = if plug { context.say("bonding-plug-stays", &[("title", &text.title)]) } else { text.title };
    let fix = if !forbidden && context.guarded_key(id) == "guarded-cord" {
        context.say("guarded-cord-do", &[])
    } else {
        // What looking may clear needs no electrician yet.
        context.look_lines(&finding).filter(|_| forbidden).unwrap_or(text.fix)
    };
    Some(Label::Refuse(Refusal {
        id: id.to_string(),
        ends: None,
        alt: if forbidden { context.say("refused-alt", &[("id", id.as_str())]) } else { stop(context, id)? },
        shape,
        level: finding.signal.name(),
        signal: text.signal,
        stop: stop(context, id)?,
        stop_brief: stop_briefly(context, id)?,
        forbidden,
        title: context.behind(id).unwrap_or(title),
        // Where to look is more useful than what a guess would mean.
        why: text.look.into_iter().next().unwrap_or(text.why),
        fix: match context.guarded_most(id) {
            Some(amps) => context.say("guarded-do", &[("fix", &fix), ("amps", &amps)]),
            None => fix,
        },
    }))
}

/// Returns what is printed instead of amps if nothing that the plan has may be plugged in.
fn stop(context: &Context<'_>, id: &Id) -> Option<String> {
    let report = context.report;
    let refused = report.refused(id).map(|_| "do-not-use");
    let key = refused.or_else(|| report.guarded(id).map(|_| context.guarded_key(id)))?;
    Some(context.say(key, &[]))
}

/// The short form of [`stop`].
fn stop_briefly(context: &Context<'_>, id: &Id) -> Option<String> {
    context.guarded_briefly(id).or_else(|| stop(context, id))
}

/// Returns the label of a receptacle, or `None` if nothing feeds it.
fn socket(context: &Context<'_>, id: &Id, owner: Option<&Id>, outlet: Option<&Outlet>) -> Option<Label> {
    let limit = context.limit(id)?;
    if let Some(label) = refusal(context, id, Some(limit.shape.to_string())) {
        return Some(label);
    }
    let shape = limit.shape.to_string();
    let draws = (!context.report.only_bonding_plug(id)).then_some(limit);
    Some(Label::Receptacle(Socket {
        id: id.to_string(),
        alt: context.say("face-alt", &[("shape", &shape)]),
        shape,
        double: outlet.is_some_and(|outlet| outlet.plugs().1 == 2),
        volts: context.capacity(limit.volts),
        long: draws.map(|it| long(context, it)),
        short: draws.and_then(|it| short(context, it)),
        leg: leg(context, limit),
        leg_brief: leg(context, limit).map(|_| match limit.legs {
            [_] if !leg_known(context, limit) => context.say("leg-unknown-brief", &[]),
            [Leg::A] => "A".to_owned(),
            [Leg::B] => "B".to_owned(),
            _ => context.say("leg-both-brief", &[]),
        }),
        set_by: draws.map(|it| context.limit_set_by(it)),
        unwatched: draws.and_then(|it| context.unwatched(&it.into())),
        gfci: limit.shock.state == ShockState::Works,
        shock: Some(shock(context, limit)),
        shock_brief: Some(shock_briefly(context, limit)),
        shared: draws.map_or_else(Vec::new, |it| shared(context, it, owner, outlet)),
        plugs: context.plugged_into(std::slice::from_ref(&limit.id)),
        plugs_first: context.first_plugged_in(id),
        only: context.only(id),
        only_brief: context.only_briefly(id),
        idle: context.words.idle(context.report, id).map(|[_, how]| how),
        path: path(context, limit),
    }))
}

fn long(context: &Context<'_>, limit: &Limit) -> Flow {
    flow(
        context,
        limit.continuous_amps,
        Some(limit.continuous_watts),
        limit.legs,
        if limit.short_amps > limit.continuous_amps { "for-hours" } else { "for-any" },
    )
}

/// Returns what holds for a short time, if that is more.
fn short(context: &Context<'_>, limit: &Limit) -> Option<Flow> {
    let watts = Some(limit.short_watts);
    let more = limit.short_amps > limit.continuous_amps;
    more.then(|| flow(context, limit.short_amps, watts, limit.legs, "for-short"))
}

/// Returns what everything on a cord or box may draw together, for hours and for a short time.
fn all_on(context: &Context<'_>, limit: &Feed) -> (Flow, Option<Flow>) {
    let more = limit.short_amps > limit.continuous_amps;
    let long = if more { "all-for-hours" } else { "all-for-any" };
    (
        flow(context, limit.continuous_amps, None, limit.legs, long),
        more.then(|| flow(context, limit.short_amps, None, limit.legs, "for-short")),
    )
}

/// Whether something trips at the limit.
const fn trips(acts: &Acts) -> bool {
    matches!(acts, Acts::AtLimit { .. })
}

/// Returns the legs that feed a receptacle, or `None` if the generator has only one.
pub(super) fn leg(context: &Context<'_>, limit: &Limit) -> Option<String> {
    if context.supply.node(NodeIx(0)).legs.all().len() < 2 {
        return None;
    }
    Some(match limit.legs {
        [_] if !leg_known(context, limit) => context.say("leg-unknown", &[]),
        [Leg::A] => context.say("leg", &[("leg", "A")]),
        [Leg::B] => context.say("leg", &[("leg", "B")]),
        _ => context.say("leg-both", &[]),
    })
}

/// Whether it is known which leg feeds a receptacle or what it is plugged into.
fn leg_known(context: &Context<'_>, limit: &Limit) -> bool {
    let figures = &context.report.figures;
    let mut assumed = figures.assumed.iter();
    !assumed.any(|it| it.field == "generator.voltage" || limit.path.iter().any(|id| it.is_leg_of(id)))
}

/// Whether nobody knows if anything upstream of a receptacle has a GFCI.
pub(super) fn gfci_unknown(context: &Context<'_>, limit: &Limit) -> bool {
    let verdict = context.report.verdict(&limit.id);
    let of_gfci = |field: &String| matches!(field.rsplit_once('.'), Some((_, "gfci")));
    verdict.is_some_and(|it| it.assumed.iter().any(of_gfci))
}

/// Returns whether shock protection works at a receptacle, and where its test button is.
fn shock(context: &Context<'_>, limit: &Limit) -> String {
    let at = limit.shock.by.as_ref().map_or("", |by| by.as_str());
    match limit.shock.state {
        ShockState::Works if at == limit.id.as_str() => context.say("shock-yes", &[]),
        ShockState::Works => context.say("shock-yes-at", &[("at", at)]),
        ShockState::Blind => joined(context, limit, ["shock-blind", "shock-blind-plug"]),
        ShockState::Doubtful => joined(context, limit, ["shock-doubtful", "shock-doubtful-plug"]),
        ShockState::None if gfci_unknown(context, limit) => context.say("shock-unknown", &[]),
        // A camper has its own GFCI, which the plan does not ask about.
        ShockState::None if limit.inside => context.say("shock-camper", &[]),
        ShockState::None => context.say("shock-no", &[]),
    }
}

/// The short form of [`shock`]: yes, no, or not known.
fn shock_briefly(context: &Context<'_>, limit: &Limit) -> String {
    let key = match limit.shock.state {
        ShockState::Works => "short-gfci",
        ShockState::None if gfci_unknown(context, limit) => "tiny-gfci-unknown",
        _ => "tiny-no-gfci",
    };
    context.say(key, &[])
}

/// Adds to the label of a part whether shock protection works at its receptacles, if all say the same.
fn protected<'a>(context: &Context<'_>, mut limits: impl Iterator<Item = &'a Limit>, part: Part) -> Part {
    let Some(first) = limits.next() else {
        return part;
    };
    let said = shock(context, first);
    if !limits.all(|limit| shock(context, limit) == said) {
        return part;
    }
    let gfci = first.shock.state == ShockState::Works;
    Part { gfci, shock: Some(said), shock_brief: Some(shock_briefly(context, first)), ..part }
}

/// Returns what blinds a GFCI: a box that bonds neutral to ground, or a bonding plug.
fn joined(context: &Context<'_>, limit: &Limit, [of_box, of_plug]: [&str; 2]) -> String {
    let joint = limit.shock.joint.as_ref();
    let is_box = context.plan.boxes.iter().any(|it| Some(&it.id) == joint);
    let key = if is_box { of_box } else { of_plug };
    context.say(key, &[("joint", joint.map_or("", Id::as_str))])
}

/// Returns an amount and how long it holds. If both legs feed it, the text gives the amps of each, so that nobody takes
/// the figure for a sum.
fn flow(context: &Context<'_>, first: impl Into<Amount>, watts: Option<Power>, legs: &[Leg], how_long: &str) -> Flow {
    let amps = context.capacity(first);
    let how_long = context.say(how_long, &[]);
    Flow {
        watts: watts.map(|watts| context.capacity(watts)),
        how_long: match legs {
            [_, _] => context.say("on-both", &[("amps", &amps), ("how_long", &how_long)]),
            _ => how_long,
        },
        amps,
    }
}

/// Returns those receptacles of a box or generator that are fed.
fn own(context: &Context<'_>, outlets: &[Outlet]) -> Vec<Own> {
    outlets
        .iter()
        .filter_map(|outlet| {
            let limit = context.limit(&outlet.id)?;
            let shape = outlet.shape.to_string();
            let amps = context.capacity(limit.continuous_amps);
            let amps = match limit.legs {
                [_, _] => context.say("amps-both-brief", &[("amps", &amps)]),
                _ => amps,
            };
            Some(Own {
                id: outlet.id.to_string(),
                alt: context.say("face-alt", &[("shape", &shape)]),
                shape,
                amps,
                stop: stop_briefly(context, &outlet.id)
                    .or_else(|| context.words.idle(context.report, &outlet.id).map(|[short, _]| short)),
            })
        })
        .collect()
}

/// Returns what a receptacle shares. Sockets behind one breaker, ends of one cord and receptacles of one box are a trap
/// for beginners, since each looks as if it had the full amount.
fn shared(context: &Context<'_>, limit: &Limit, owner: Option<&Id>, outlet: Option<&Outlet>) -> Vec<Share> {
    let brief = |amps: &str, at: &str| context.say("short-shared", &[("amps", amps), ("at", at)]);
    let mut shares = Vec::new();
    if let Some(outlet) = outlet {
        let mut sentences = Vec::new();
        let (fewest, sockets) = outlet.plugs();
        // If nobody counted the sockets, each rule assumes its own worst case, so the label gives no number.
        if fewest < sockets {
            sentences.push(context.say("shared-plugs", &[]));
        } else if sockets > 1 {
            sentences.push(context.words.with("print-shared-sockets", [("count", usize::from(sockets).into())]));
        }
        let siblings = context.plan.outlets();
        let breaker = |other: &Outlet| other.shares.clone().unwrap_or_else(|| other.id.clone());
        let others: Vec<&str> = siblings
            .filter(|other| other.id != outlet.id && breaker(other) == breaker(outlet))
            .map(|other| other.id.as_str())
            .collect();
        if !others.is_empty() {
            sentences.push(context.say("shared-outlets", &[("others", &context.words.quoted(others.iter().copied()))]));
        }
        if !sentences.is_empty() {
            let all: Vec<&str> = std::iter::once(outlet.id.as_str()).chain(others).collect();
            shares.push(Share {
                sentence: sentences.join(" "),
                // If only its own sockets share it, the figure is right above.
                brief: match all.as_slice() {
                    [_] => context.say("short-shared-here", &[]),
                    _ => brief(&context.amps_on(limit.continuous_amps, limit.legs), &context.words.list(&all)),
                },
                enforced: trips(&limit.acts),
            });
        }
    }
    shares.extend(owner.and_then(|owner| {
        let Shared { of, ends, feed } = Feed::shared(context.supply, &limit.id, owner)?;
        let amps = context.amps_on(feed.continuous_amps, feed.legs);
        let key = match ends {
            Some(_) if outlet.is_none() => "print-shared-ends",
            _ => "print-shared-box",
        };
        let count = ends.unwrap_or_default();
        let values = [("owner", of.as_str().into()), ("count", count.into()), ("amps", amps.as_str().into())];
        Some(Share {
            sentence: context.words.with(key, values),
            brief: brief(&amps, of.as_str()),
            enforced: trips(&feed.acts),
        })
    }));
    shares
}

/// Returns the generator's name, then the parts between it and the receptacle.
fn path(context: &Context<'_>, limit: &Limit) -> Vec<String> {
    let mut names = vec![context.plan.generator.name.clone()];
    names.extend(limit.path.iter().filter(|id| **id != limit.id).map(Id::to_string));
    names
}

fn generator(context: &Context<'_>) -> Part {
    let set = &context.plan.generator;
    let usable = &context.report.figures.usable;
    // Without room for all of them, a label drops the last one first.
    let mut facts = vec![
        (context.say("air", &[]), context.say("air-value", &[("ample", &context.ample())])),
        (context.say("refuel", &[]), context.say("refuel-value", &[])),
        (context.say("neutral", &[]), context.neutral()),
    ];
    let mut assumed = context.report.figures.assumed.iter();
    if let Some(rated) = assumed.find(|it| it.field == "generator.rated") {
        let taken = context.words.value(&rated.value);
        let left = context.capacity(usable.rated_watts);
        let value = if left == taken {
            context.say("rated-guessed-value", &[("taken", &taken)])
        } else {
            context.say("rated-guessed-less", &[("taken", &taken), ("left", &left)])
        };
        facts.insert(1, (context.say("rated-guessed", &[]), value));
    }
    // Legs that were only assumed are not mentioned.
    if set.voltage.is_known() && context.supply.node(NodeIx(0)).legs.all().len() > 1 {
        facts.insert(2, (context.say("legs", &[]), context.say("legs-value", &[])));
    }
    facts.extend(reachable(context));
    if let Some(hours) = context.report.figures.energy.hours_per_tank {
        let hours = context.capacity(hours);
        let by = context.report.figures.energy.busiest_by.as_ref();
        let value = match by {
            Some(by) => {
                let with = context.load_name(by);
                context.say("tank-value-with", &[("hours", &hours), ("with", &with)])
            }
            None => context.say("tank-value", &[("hours", &hours)]),
        };
        facts.push((context.say("tank", &[]), value));
    }
    Part {
        id: set.name.clone(),
        word: "generator",
        signal: Some(context.words.signal(Signal::Danger)),
        brief: Some(context.say("air-brief", &[("ample", &context.ample())])),
        long: Some(flow(context, usable.rated_watts, None, &[], "all-running")),
        short: (usable.peak_watts > usable.rated_watts)
            .then(|| flow(context, usable.peak_watts, None, &[], "for-seconds")),
        outlets: own(context, &set.outlets),
        facts,
        ..Part::default()
    }
}

fn cord(context: &Context<'_>, cord: &Cord) -> Part {
    let ends: Vec<Id> = cord.end_ids().collect();
    let mut facts = vec![fed_by(context, &cord.id, cord.from.as_ref())];
    let feeds = context.plugged_into(&ends);
    // If there are several ends, their own labels say it.
    if ends.len() == 1 && !feeds.is_empty() {
        facts.push((context.say("feeds", &[]), context.words.list(&feeds)));
    }
    let part = Part {
        id: cord.id.to_string(),
        word: if cord.is_adapter() { "adapter" } else { "cord" },
        // A flag has room only for the wire's marking.
        headline: Some(cord_facts(context, cord, ToString::to_string)),
        only: context.only(&cord.id),
        only_brief: context.only_briefly(&cord.id),
        idle: context.words.idle(context.report, &cord.id).map(|[_, how]| how),
        facts,
        ..Part::default()
    };
    // The flag of a cord with one end also labels that end. If there are several, each has its own label, and the flag
    // says what they share.
    let part = protected(context, ends.iter().filter_map(|end| context.limit(end)), part);
    if let [end] = ends.as_slice()
        && let Some(limit) = context.limit(end)
    {
        Part {
            long: Some(long(context, limit)),
            short: short(context, limit),
            set_by: Some(context.limit_set_by(limit)),
            unwatched: context.unwatched(&limit.into()),
            unwatched_brief: context.unwatched_briefly(&limit.into()),
            ..part
        }
    } else {
        fed(context, &cord.id, part)
    }
}

/// Adds what everything on a part shares, what sets that, and a warning if nothing trips past it.
fn fed(context: &Context<'_>, id: &Id, part: Part) -> Part {
    let Some(limit) = context.feed(id) else {
        return part;
    };
    let (long, short) = all_on(context, &limit);
    Part {
        long: Some(long),
        short,
        set_by: Some(context.set_by(&limit.set_by)),
        unwatched: context.unwatched(&limit),
        unwatched_brief: context.unwatched_briefly(&limit),
        ..part
    }
}

/// Returns where a cord or box plugs in, and what shares the amps there.
fn fed_by(context: &Context<'_>, id: &Id, from: Option<&Id>) -> (String, String) {
    let name = context.say("plug-into", &[]);
    // A part that is not plugged in has no figures.
    let Some(from) = from.filter(|_| context.feed(id).is_some()) else {
        return (name, context.say("plug-into-nothing", &[]));
    };
    // A bonding plug draws nothing.
    let plug = context.say("bonding-plug", &[]);
    let mut others = context.plugged_into(std::slice::from_ref(from));
    others.retain(|other| other != id.as_str() && *other != plug);
    let value = match context.limit(from) {
        Some(limit) if !others.is_empty() => context.say(
            "plug-into-shared",
            &[
                ("at", from.as_str()),
                ("amps", &context.amps_on(limit.continuous_amps, limit.legs)),
                ("others", &context.words.quoted(others.iter().map(String::as_str))),
            ],
        ),
        _ => from.to_string(),
    };
    (name, value)
}

/// Returns wire and length as far as they are known, such as "10 AWG · 75 ft". `sized` writes the wire.
pub(super) fn cord_facts(context: &Context<'_>, cord: &Cord, sized: impl Fn(&Wire) -> String) -> String {
    // A narrow flag has no room for "unknown" twice.
    if !cord.wire.is_known() && !cord.length.is_known() {
        return context.say("cord-unknown", &[]);
    }
    let wire = match &cord.wire {
        Answer::Known(wire) => sized(wire),
        _ => context.say("wire-unknown", &[]),
    };
    let length = match cord.length {
        Answer::Known(length) => context.at_most(length),
        _ => context.say("length-unknown", &[]),
    };
    context.say("cord-facts", &[("wire", &wire), ("length", &length)])
}

/// Returns what a box is, described by its inlet, which is known for any box in use.
pub(super) fn box_headline(context: &Context<'_>, part: &DistributionBox) -> String {
    let inlet = part.inlet.known().map_or_else(String::new, ToString::to_string);
    let key = if part.is_camper() { "camper-headline" } else { "box-headline" };
    context.say(key, &[("inlet", &inlet)])
}

fn part(context: &Context<'_>, part: &DistributionBox) -> Part {
    let mut facts = vec![fed_by(context, &part.id, part.from.as_ref())];
    let inside = context.limit(&part.id).filter(|it| it.inside);
    // What runs inside a camper has no label of its own.
    let loads = context.loads_at(&part.id).filter(|_| inside.is_some());
    facts.extend(loads.map(|loads| (context.say("inside", &[]), loads)));
    let label = Part {
        id: part.id.to_string(),
        only: context.only(&part.id),
        only_brief: context.only_briefly(&part.id),
        word: if part.is_camper() { "camper" } else { "box" },
        headline: Some(box_headline(context, part)),
        outlets: own(context, &part.outlets),
        facts,
        ..Part::default()
    };
    let outlets = part.outlets.iter().filter_map(|outlet| context.limit(&outlet.id));
    fed(context, &part.id, protected(context, inside.into_iter().chain(outlets), label))
}

//! Turns plan, report and words into what the templates draw: finished sentences and a few bare numbers.

mod alignment;
mod card;
mod cautions;
mod choices;
mod emergency;
mod labels;
mod look;
mod plot;
mod proofs;
mod volts;
mod worksheet;

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::hash::Hasher as _;

use fluent_bundle::FluentValue;
use fnv::FnvHasher;
use serde::Serialize;
use unicode_width::UnicodeWidthChar as _;

use super::{Document, Ink, Options, Paper, PrintError, world};
use crate::plan::{Answer, Id, Leg, Neutral, Plan};
use crate::quantity::{Amount, Current, Length, Power};
use crate::report::{Acts, Admits, Feed, Finding, Limit, LoadFacts, OnlyIf, Report, SetBy, Verdict};
use crate::supply::{LimitReason, Supply};
use crate::tables::exhaust::AMPLE;
use crate::words::{Show, Words};

/// Returns the data of each document as JSON, after checking that all messages exist and all characters can be printed.
pub(super) fn all(
    plan: &Plan,
    report: &Report,
    words: &Words,
    options: &Options,
) -> Result<Vec<(Document, String)>, PrintError> {
    let plan = &*with_names(plan, words);
    let context = Context { plan, report, words, options, supply: &Supply::build(plan) };
    // If everything is known, there is nothing to look at.
    let usual = |document: &Document| *document != Document::Look || !report.figures.looks.is_empty();
    let wanted = |document: &Document| options.only.contains(document) || options.only.is_empty() && usual(document);
    let mut documents = Vec::new();
    let sheet = options.alignment.then_some(Document::Alignment);
    for document in Document::ALL.into_iter().filter(wanted).chain(sheet) {
        documents.push((
            document,
            match document {
                Document::Labels => json(&labels::data(&context)?),
                Document::Card => json(&card::data(&context)),
                Document::Cautions => json(&cautions::data(&context)),
                Document::Look => json(&look::data(&context)),
                Document::Worksheet => json(&worksheet::data(&context)),
                Document::Alignment => json(&alignment::data(&context)?),
            },
        ));
    }
    for (document, value) in &mut documents {
        // The alignment sheet is about a label sheet, not a plan.
        if *document != Document::Alignment {
            codes(*document, value, words);
        }
    }
    let faults = words.faults();
    if !faults.is_empty() {
        return Err(PrintError::WordsIncomplete { faults });
    }
    let shown = shown(plan);
    for (_, value) in &mut documents {
        printable(value)?;
        show_names(value, &shown);
    }
    Ok(documents.into_iter().map(|(document, value)| (document, value.to_string())).collect())
}

/// Returns the labels in the data of `labels.typ`: the name on each, and all of its content.
pub(super) fn labels_in(data: &str) -> Vec<(String, serde_json::Value)> {
    let mut data: serde_json::Value = serde_json::from_str(data).unwrap_or_default();
    let items = data["items"].as_array_mut().map(std::mem::take);
    let items = items.unwrap_or_default();
    // As the user typed it, without the possible line breaks.
    let id = |label: &serde_json::Value| {
        let shown = label["id"].as_str().unwrap_or_default();
        shown.replace('\u{200b}', "")
    };
    // Generators that must run apart have a second label of the same name.
    let name = |label: &serde_json::Value| {
        let others = items.iter().filter(|other| id(other) == id(label)).count();
        let stop = label["stop"].as_str().filter(|_| others > 1);
        stop.map_or_else(|| id(label), |stop| format!("{}: {stop}", id(label)))
    };
    let named: Vec<String> = items.iter().map(name).collect();
    named.into_iter().zip(items).collect()
}

/// Returns the codes of the card's sides from the data of `card.typ`.
pub(super) fn side_codes(data: &str) -> Vec<String> {
    let data: serde_json::Value = serde_json::from_str(data).unwrap_or_default();
    let codes = data["codes"].as_array().cloned().unwrap_or_default();
    let text = |code: serde_json::Value| code.as_str().map(str::to_owned);
    codes.into_iter().filter_map(text).collect()
}

/// Returns the plan with a name for its site and its generator. A plan may omit them, but a label or card needs a
/// heading, so it gets the name that the interview suggests.
fn with_names<'a>(plan: &'a Plan, words: &Words) -> Cow<'a, Plan> {
    let mut plan = Cow::Borrowed(plan);
    if plan.site.name.trim().is_empty() {
        plan.to_mut().site.name = words.text("suggest-site-name");
    }
    if plan.generator.name.trim().is_empty() {
        plan.to_mut().generator.name = words.text("suggest-generator-name");
    }
    plan
}

/// Converts data to JSON with numbers as strings, which templates parse with `int` and `float`. With the
/// `arbitrary_precision` feature of `serde_json`, the typesetter would read plain numbers as dictionaries.
fn json(data: &impl Serialize) -> serde_json::Value {
    let mut value =
        serde_json::to_value(data).unwrap_or_else(|_| unreachable!("texts, finite numbers and lists of them"));
    numbers_to_text(&mut value);
    value
}

fn numbers_to_text(value: &mut serde_json::Value) {
    match value {
        serde_json::Value::Number(number) => {
            *value = serde_json::Value::String(number.to_string());
        }
        serde_json::Value::Array(items) => items.iter_mut().for_each(numbers_to_text),
        serde_json::Value::Object(fields) => fields.values_mut().for_each(numbers_to_text),
        _ => {}
    }
}

/// Rejects the first text with a character that cannot be printed, and returns the whole text in the error.
fn printable(value: &serde_json::Value) -> Result<(), PrintError> {
    match value {
        serde_json::Value::String(text) => {
            let characters: String = text.chars().filter(|c| !world::can_print(*c)).collect();
            if characters.is_empty() { Ok(()) } else { Err(PrintError::NoGlyph { text: text.clone(), characters }) }
        }
        serde_json::Value::Array(items) => items.iter().try_for_each(printable),
        serde_json::Value::Object(fields) => fields.values().try_for_each(printable),
        _ => Ok(()),
    }
}

/// Returns the names in the plan that are not printed exactly as typed, longest first, each with its printed form. A
/// name in a right-to-left script is isolated, so that figures and punctuation beside it keep their places (Unicode's
/// first strong isolate, U+2068, and its end, U+2069). A long word gets possible line breaks.
fn shown(plan: &Plan) -> Vec<(String, String)> {
    let loads = plan.loads.iter().map(|load| load.name.clone());
    let ids = plan.gear().map(|it| it.id).chain(plan.outlets().map(|outlet| &outlet.id));
    let names = loads.chain([plan.site.name.clone(), plan.generator.name.clone()]).chain(ids.map(Id::to_string));
    let mut shown: Vec<(String, String)> = names
        .map(|name| {
            let divided = divided(&name);
            let turned = name.chars().any(world::runs_left);
            let shown = if turned { format!("\u{2068}{divided}\u{2069}") } else { divided };
            (name, shown)
        })
        .filter(|(name, shown)| name != shown)
        .collect();
    shown.sort_unstable_by(|(one, _), (other, _)| {
        (std::cmp::Reverse(one.len()), one).cmp(&(std::cmp::Reverse(other.len()), other))
    });
    shown.dedup();
    shown
}

/// The number of letters from which a word may be divided. Every line has room for shorter words, and longer ones are
/// typed, not spoken.
const LONG: usize = 17;

/// Marks where each long word of a name may be divided: after its hyphens, underscores and dots if that is enough,
/// otherwise anywhere except before a combining mark.
fn divided(name: &str) -> String {
    let word = |word: &str| {
        let at_joints: Vec<&str> = word.split_inclusive(['-', '_', '.']).collect();
        if word.chars().count() < LONG {
            word.to_owned()
        } else if at_joints.iter().all(|piece| piece.chars().count() < LONG) {
            at_joints.join("\u{200b}")
        } else {
            let mut divided = String::new();
            for letter in word.chars() {
                if !divided.is_empty() && letter.width().is_some_and(|width| width > 0) {
                    divided.push('\u{200b}');
                }
                divided.push(letter);
            }
            divided
        }
    };
    let words: Vec<String> = name.split(' ').map(word).collect();
    words.join(" ")
}

/// Replaces the names in all texts with their printed forms.
fn show_names(value: &mut serde_json::Value, names: &[(String, String)]) {
    match value {
        serde_json::Value::String(text) => {
            let mut rest = text.as_str();
            let mut all = String::new();
            while let Some(first) = rest.chars().next() {
                let mut found = names.iter();
                if let Some((name, shown)) = found.find(|(name, _)| rest.starts_with(&**name)) {
                    all.push_str(shown);
                    rest = &rest[name.len()..];
                } else {
                    all.push(first);
                    rest = &rest[first.len_utf8()..];
                }
            }
            *text = all;
        }
        serde_json::Value::Array(items) => {
            for item in items {
                show_names(item, names);
            }
        }
        serde_json::Value::Object(fields) => {
            for field in fields.values_mut() {
                show_names(field, names);
            }
        }
        _ => {}
    }
}

/// Adds a code to every document, label and card side. The code depends only on the content, so it tells an old print
/// from a new one.
fn codes(document: Document, value: &mut serde_json::Value, words: &Words) {
    // How and when something is printed is not part of what it says.
    let mut said = value.clone();
    for how in ["size", "stock", "skip", "offset_across", "offset_down"] {
        said[how].take();
    }
    for how in ["date", "paper", "ink"] {
        said["common"][how].take();
    }
    let say = |code: String| words.with("print-code", [("code", code.into())]);
    let all = match document {
        Document::Labels => {
            for label in value["items"].as_array_mut().into_iter().flatten() {
                let digits = code(&[&said["common"], label]);
                label["code"] = say(digits.clone()).into();
                label["digits"] = digits.into();
            }
            code(&[&said])
        }
        Document::Card => {
            let mut two = serde_json::json!({ "common": said["common"] });
            for key in card::SIDE_TWO {
                two[*key] = said[*key].take();
            }
            let sides = [&said, &two].map(|side| code(&[side]));
            let all = sides.join(" ");
            value["codes"] = sides.map(say).to_vec().into();
            all
        }
        _ => code(&[&said]),
    };
    value["common"]["code"] = say(all).into();
}

/// Returns a code of five digits for this content. Digits spell nothing in any language.
fn code(said: &[&serde_json::Value]) -> String {
    // FNV-1a is the same in every build.
    let mut hash = FnvHasher::default();
    for value in said {
        hash.write(value.to_string().as_bytes());
    }
    format!("{:05}", hash.finish() % 100_000)
}

/// What every document has.
#[derive(Debug, Serialize)]
struct Common {
    lang: String,
    title: String,
    site: String,
    date: Option<String>,
    paper: Paper,
    ink: Ink,
    /// The fixed words of the template, by key.
    w: BTreeMap<&'static str, String>,
}

/// Everything that the data is made from.
#[derive(Clone, Copy)]
struct Context<'a> {
    plan: &'a Plan,
    report: &'a Report,
    words: &'a Words,
    options: &'a Options,
    /// The supply tree, which is the same as the report's because it is built from the same plan.
    supply: &'a Supply,
}

/// Returns how much of the generator's power the outlets in use can carry, with its name, unless it is all or nothing.
fn reachable(context: &Context<'_>) -> Option<(String, String)> {
    let usable = &context.report.figures.usable;
    if [usable.stranded_watts, usable.reachable_watts].contains(&Power::ZERO) {
        return None;
    }
    let [reachable, rated] = [usable.reachable_watts, usable.rated_watts].map(|watts| context.capacity(watts));
    let value = context.say("reachable-value", &[("reachable", &reachable), ("rated", &rated)]);
    Some((context.say("reachable", &[]), value))
}

impl<'a> Context<'a> {
    /// Returns the common data. `title` is the key of the title, and `keys` are the template's fixed words: key `x` is
    /// the message `print-x`.
    fn common(&self, title: &str, keys: &[&'static str]) -> Common {
        Common {
            lang: self.words.language().language.to_string(),
            title: self.say(title, &[("site", &self.plan.site.name)]),
            site: self.plan.site.name.clone(),
            date: self.options.date.map(|date| date.to_string()),
            paper: self.options.paper,
            ink: self.options.ink,
            w: keys.iter().map(|key| (*key, self.words.text(&format!("print-{key}")))).collect(),
        }
    }

    /// Returns the message `print-KEY` with these texts in it.
    fn say(&self, key: &str, args: &[(&'static str, &str)]) -> String {
        self.words.with(
            &format!("print-{key}"),
            args.iter().map(|(name, value)| (*name, FluentValue::from((*value).to_owned()))),
        )
    }

    /// Returns the messages `print-KEY`, which take no texts.
    fn sentences(&self, keys: &[&str]) -> Vec<String> {
        keys.iter().map(|key| self.say(key, &[])).collect()
    }

    /// Returns how neutral and ground are connected at the generator.
    fn neutral(&self) -> String {
        let set = &self.plan.generator;
        let key = match (set.neutral, set.bonding_plug) {
            (Answer::Known(Neutral::Bonded), _) => "neutral-bonded",
            (Answer::Known(Neutral::Floating), Answer::Known(true)) => "neutral-plug",
            (Answer::Known(Neutral::Floating), Answer::Unknown) => "neutral-plug-unknown",
            (Answer::Known(Neutral::Floating), _) => "neutral-floating",
            _ => "neutral-unknown",
        };
        self.say(key, &[])
    }

    /// Formats what something can carry, rounded down.
    fn capacity(&self, amount: impl Into<Amount>) -> String {
        self.words.amount(amount, Show::Capacity)
    }

    /// Formats a figure to the nearest, with up to two decimals, or four for ohms.
    fn exact(&self, amount: impl Into<Amount>) -> String {
        self.words.amount(amount, Show::Exact)
    }

    /// Formats an actual length or distance, rounded down.
    fn at_most(&self, length: Length) -> String {
        self.words.amount(length, Show::AtMost)
    }

    /// Formats a required distance, rounded up.
    fn at_least(&self, length: Length) -> String {
        self.words.amount(length, Show::AtLeast)
    }

    /// Formats what something demands, rounded up.
    fn demand(&self, amount: impl Into<Amount>) -> String {
        self.words.amount(amount, Show::Demand)
    }

    fn limit(&self, id: &Id) -> Option<&'a Limit> {
        self.report.figures.limit(id)
    }

    fn load(&self, id: &Id) -> Option<&'a LoadFacts> {
        self.report.figures.load(id)
    }

    /// Returns the loads that someone's health depends on. With `placed`, those that have somewhere to plug in, even if
    /// not where planned. Otherwise those that have nowhere.
    fn lives(&self, placed: bool) -> Vec<Id> {
        let figures = &self.report.figures;
        let free = |life: &Id| match figures.sharing.without_place(life) {
            Some(lost) => !lost.free.is_empty(),
            None => figures.may_run(life) && !figures.lives_too_many.contains(life),
        };
        let mut lives = self.report.lives();
        lives.retain(|life| free(life) == placed);
        lives
    }

    /// Returns the name of a load, or its id if the report does not know it.
    fn load_name(&self, id: &Id) -> String {
        self.load(id).map_or_else(|| id.to_string(), |load| load.name.clone())
    }

    /// Returns the names of loads in the order given. Loads with the same name are counted together.
    fn load_names<'b>(&self, ids: impl IntoIterator<Item = &'b Id>) -> Vec<String> {
        let mut names: Vec<(String, usize)> = Vec::new();
        for id in ids {
            let name = self.load_name(id);
            match names.iter_mut().find(|(known, _)| *known == name) {
                Some((_, count)) => *count += 1,
                None => names.push((name, 1)),
            }
        }
        names.into_iter().map(|(name, count)| self.counted(name, count)).collect()
    }

    /// Adds the count to a name if there is more than one.
    fn counted(&self, name: String, count: usize) -> String {
        match count {
            1 => name,
            _ => self.say("several", &[("name", &name), ("count", &count.to_string())]),
        }
    }

    /// Formats the current of a part that these legs feed.
    fn amps_on(&self, amps: Current, legs: &[Leg]) -> String {
        self.words.amps_on(amps, legs, Show::Capacity)
    }

    /// Returns what sets both figures of a limit: one sentence if the same part sets both, otherwise one for each.
    fn limit_set_by(&self, limit: &Limit) -> String {
        let past = self.set_by(&limit.set_by);
        let same =
            limit.continuous_set_by.id == limit.set_by.id && limit.continuous_set_by.reason == limit.set_by.reason;
        if same || limit.continuous_amps == limit.short_amps {
            return past;
        }
        let hours = self.set_by(&limit.continuous_set_by);
        self.say("set-by-two", &[("hours", &hours), ("past", &past)])
    }

    /// Returns what to do if nothing acts past a limit, naming what acts too late. `None` unless
    /// [`Feed::unwatched`].
    fn unwatched(&self, feed: &Feed) -> Option<String> {
        let limit = feed.unwatched().then(|| self.amps_on(feed.short_amps, feed.legs))?;
        let (key, acts) = match &feed.acts {
            Acts::Above { id, amps } if id.as_str() == Id::SET => ("nothing-below-set", Some(*amps)),
            Acts::Above { amps, .. } => ("nothing-below", Some(*amps)),
            _ => ("nothing-trips", None),
        };
        let acts = acts.map_or_else(String::new, |amps| self.capacity(amps));
        Some(self.say(key, &[("limit", &limit), ("amps", &acts)]))
    }

    /// The short form of [`Self::unwatched`].
    fn unwatched_briefly(&self, feed: &Feed) -> Option<String> {
        let limit = feed.unwatched().then(|| self.amps_on(feed.short_amps, feed.legs))?;
        Some(self.say("no-breaker", &[("limit", &limit)]))
    }

    /// Returns what to plug in at a receptacle besides cords and boxes: the bonding plug that stays in, then the loads.
    fn plugged_in(&self, id: &Id) -> Vec<String> {
        let bonded = |it: &Verdict| it.bonding_plug && self.report.refused(id).is_none();
        let plug = self.report.verdict(id).is_some_and(bonded);
        let plug = plug.then(|| self.say("bonding-plug", &[]));
        plug.into_iter().chain(self.loads_at(id)).collect()
    }

    /// Returns the loads that may run at a receptacle, and whether all at once.
    fn loads_at(&self, id: &Id) -> Option<String> {
        self.first_loads_at(id, usize::MAX)
    }

    /// Like [`Self::loads_at`], but names only the first `most` loads and says how many more there are.
    fn first_loads_at(&self, id: &Id, most: usize) -> Option<String> {
        let verdict = self.report.verdict(id)?;
        let names = self.load_names(&verdict.loads);
        let hidden = names.len().saturating_sub(most);
        let mut names = names[..names.len() - hidden].join(", ");
        if names.is_empty() {
            return None;
        }
        if hidden > 0 {
            names = self.say("plugs-more", &[("loads", &names), ("count", &hidden.to_string())]);
        }
        // With some loads hidden, sets would name loads that the list does not.
        let whole = |sets: &[Vec<Id>]| matches!(sets, [set] if set.len() == verdict.loads.len());
        Some(match &*verdict.not_together {
            [] if verdict.one_at_a_time => self.say("one-at-a-time", &[("loads", &names)]),
            [] => names,
            sets if hidden > 0 || whole(sets) => self.say("not-all-at-once", &[("loads", &names)]),
            sets => {
                let sets: Vec<String> = sets.iter().map(|set| self.words.one_set(self.report, set)).collect();
                self.say("not-together", &[("loads", &names), ("sets", &sets.join("; "))])
            }
        })
    }

    /// Returns what is plugged in at a receptacle for a label without room for all of it: shorter and shorter lists,
    /// each with how many more there are. Parts come before loads.
    fn first_plugged_in(&self, id: &Id) -> Vec<String> {
        const MOST: usize = 4;
        let all = self.plugged_into(std::slice::from_ref(id));
        let loads = self.report.verdict(id).map_or(0, |it| self.load_names(&it.loads).len());
        let parts = if loads > 0 { &all[..all.len() - 1] } else { &all[..] };
        let total = parts.len() + loads;
        let first = |most: usize| {
            if most > parts.len() {
                let loads = self.first_loads_at(id, most - parts.len());
                return parts.iter().cloned().chain(loads).collect::<Vec<_>>().join(", ");
            }
            let (shown, hidden) = (parts[..most].join(", "), total - most);
            self.say("plugs-more", &[("loads", &shown), ("count", &hidden.to_string())])
        };
        (1..total.min(MOST + 1)).rev().map(first).collect()
    }

    /// Returns the key of the message that only a GFCI cord may be plugged in. A cord's label and its card row are not
    /// at the far end that they describe, so they have their own wording. If the GFCI cord goes in upstream, that is
    /// said instead.
    fn guarded_key(&self, id: &Id) -> &'static str {
        if self.report.guarded_ahead(id) {
            "guarded-ahead"
        } else if self.plan.cord(id).is_some() {
            "guarded-cord"
        } else {
            "guarded"
        }
    }

    /// The short form of that message. `None` if other things may be plugged in too.
    fn guarded_briefly(&self, id: &Id) -> Option<String> {
        self.report.guarded(id)?;
        let key = if self.report.guarded_ahead(id) { "guarded-ahead-brief" } else { "guarded-brief" };
        Some(self.say(key, &[]))
    }

    /// Returns the only things that may be plugged in at a receptacle, and the condition that must hold there. `None`
    /// if there is no restriction.
    fn only(&self, id: &Id) -> Option<String> {
        let only_if = self.report.verdict(id).and_then(|it| it.only_if);
        let only_if = only_if.map(|it| self.words.only_if(it));
        let both: Vec<String> = self.only_these(id).into_iter().chain(only_if).collect();
        (!both.is_empty()).then(|| both.join(" "))
    }

    /// The short form of [`Self::only`].
    fn only_briefly(&self, id: &Id) -> Option<String> {
        let idle = self.words.idle(self.report, id).map(|[short, _]| short);
        let these = idle.or_else(|| self.only_these(id).map(|_| self.say("short-only", &[])));
        let only_if = self.report.verdict(id).and_then(|it| it.only_if);
        these.or_else(|| {
            Some(match only_if? {
                OnlyIf::CamperMain { amps } => self.say("short-only-camper", &[("amps", &self.capacity(amps))]),
                OnlyIf::ThisGenerator => self.say("short-only-generator", &[]),
            })
        })
    }

    fn only_these(&self, id: &Id) -> Option<String> {
        if self.report.guarded(id).is_some() {
            return Some(self.say(self.guarded_key(id), &[]));
        }
        let verdict = self.report.verdict(id)?;
        let plug = verdict.bonding_plug.then(|| self.say("bonding-plug", &[]));
        let quoted = |id: &Id| self.words.quoted(std::iter::once(id.as_str()));
        let parts = verdict.only.iter().map(quoted);
        let parts: Vec<String> = parts.chain(plug).collect();
        let parts = self.words.list(&parts);
        let named = verdict.admits == Admits::Named;
        let named = named.then(|| self.say("only-these", &[("parts", &parts)]));
        named.or_else(|| self.words.idle(self.report, id).map(|[short, _]| short))
    }

    /// Returns the lines of the look sheet that may clear a finding. `None` if there are none.
    fn look_lines(&self, finding: &Finding) -> Option<String> {
        let looks = self.report.figures.looks.iter().zip(1_usize..);
        let lines = looks.filter(|(look, _)| finding.rests_on.iter().any(|it| look.fields.contains(&it.field)));
        let lines: Vec<String> = lines.map(|(_, line)| line.to_string()).collect();
        let values = [("lines", self.words.list(&lines).into()), ("count", lines.len().into())];
        (!lines.is_empty()).then(|| self.words.with("print-look-see", values))
    }

    /// Returns how much may be drawn where only a GFCI cord may be plugged in.
    fn guarded_most(&self, id: &Id) -> Option<String> {
        self.report.guarded(id)?;
        let of_limit = self.limit(id).map(|it| (it.continuous_amps, it.legs));
        let of_feed = || self.feed(id).map(|it| (it.continuous_amps, it.legs));
        let (amps, legs) = of_limit.or_else(of_feed)?;
        Some(self.amps_on(amps, legs))
    }

    /// Returns what is plugged into any of these receptacles: parts, then everything else.
    fn plugged_into(&self, ids: &[Id]) -> Vec<String> {
        let there = self.plan.gear().filter(|it| it.from.is_some_and(|from| ids.contains(from)));
        let parts = there.filter(|it| self.feed(it.id).is_some() && self.report.leads_on(it.id));
        let parts = parts.map(|it| it.id.to_string());
        let others = ids.iter().flat_map(|id| self.plugged_in(id));
        parts.chain(others).collect()
    }

    /// Returns the sentence on what sets a figure. It says so if the worst case was only assumed.
    fn set_by(&self, by: &SetBy) -> String {
        let (id, reason) = (&by.id, by.reason);
        if by.share {
            return self.say(&format!("set-by-share-{}", reason.code()), &[("id", id.as_str())]);
        }
        let cord = self.plan.cord(id);
        let guessed = match reason {
            LimitReason::CoiledCord => cord.is_some_and(|cord| !cord.coiled.is_known()),
            LimitReason::HotCord => !self.plan.site.air.is_known(),
            _ => false,
        };
        self.say(
            &format!("set-by-{}{}", reason.code(), if guessed { "-guessed" } else { "" }),
            &[("id", id.as_str()), ("air", &self.exact(self.supply.air))],
        )
    }

    /// Returns the limit of everything on a cord or a box's inlet together.
    fn feed(&self, id: &Id) -> Option<Feed> {
        Feed::of(self.supply, id)
    }

    /// Names the nearest part upstream of this one that must not be used. If the part to avoid is downstream instead,
    /// says that nothing beyond it may be used.
    fn behind(&self, id: &Id) -> Option<String> {
        let why = self.report.refused(id).filter(|why| why.at != *id)?;
        let supply = self.supply;
        // A part that is not plugged in has nothing upstream.
        supply.nodes.iter().find(|node| node.id == *id)?;
        let beyond = supply
            .points()
            .any(|(at, node)| node.id == why.at && supply.up(at).skip(1).any(|(_, above)| above.id == *id));
        let key = if beyond { "dead-end" } else { "behind" };
        Some(self.say(key, &[("id", why.at.as_str())]))
    }

    /// Formats how far exhaust must be from people. All prints give one figure, the larger of the two published ones.
    fn ample(&self) -> String {
        self.at_least(AMPLE)
    }
}

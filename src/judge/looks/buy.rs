//! What has to be on the package of something not bought yet.
//!
//! Unknowns of such a thing are chosen, not looked at: the least demand that leaves as little wrong as anything on
//! sale. A choice is judged as it will be in use, with everything placed again, and with the worst assumed for other
//! unknowns, because people buy before the looks are answered.

use super::{fields_of, reading_in, thing};
use crate::judge::judge;
use crate::judge::unknowns::{all_answered, answer_as, is_found_out};
use crate::plan::{Answer, Choice as _, Generator, Id, Load, Outlet, Plan, Wanted, bounds};
use crate::quantity::{Amount, Current, Power, Quantity};
use crate::report::{Figures, Look, Marking, Property, Report, Signal};
use crate::tables::conductor::{CORD_SET_CIRCUIT, gauge_of};
use crate::tables::shape::Receptacle;
use crate::value::Value;

/// What is on sale, the least demanding first, in the order in which the properties are chosen. Properties not listed
/// here are asked for at their best.
const SOLD: [(&str, &[&str]); 5] = [
    ("voltage", &["120 V", "120/240 V"]),
    ("rated", &["1000 W", "1500 W", "2000 W", "2500 W", "3000 W", "3500 W", "4500 W", "5500 W", "7000 W", "9000 W"]),
    (
        "peak",
        &[
            "1200 W", "1800 W", "2400 W", "3000 W", "3600 W", "4500 W", "5500 W", "7000 W", "9000 W", "12000 W",
            "18000 W",
        ],
    ),
    ("wire", &["16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG"]),
    ("length", &["100 ft", "50 ft", "25 ft", "10 ft"]),
];

/// Whether a package states this field, so that it can be on the list. No package says how a cord will lie, or how a
/// thing is wired inside.
pub(super) fn on_package(field: &str) -> bool {
    let (path, name) = field.rsplit_once('.').unwrap_or(("", field));
    let told: &[&str] = match (path.split('.').next(), path.contains(".outlet.")) {
        (Some("generator" | "box"), true) => &["gfci", "breaker"],
        (Some("generator"), false) => &["rated", "peak", "voltage", "inverter"],
        (Some("box"), false) => &["listed"],
        (Some("cord"), _) => &["wire", "conductors", "outdoor", "length", "gfci"],
        _ => &[],
    };
    told.contains(&name)
}

/// Whether a thing, as named in fields, is not bought yet.
pub(super) fn is_to_buy(plan: &Plan, thing: &str) -> bool {
    let bought = match thing.split_once('.') {
        None if thing == Id::SET => plan.generator.bought,
        Some(("cord", id)) => plan.cord(id).and_then(|it| it.bought),
        Some(("box", id)) => plan.holder(id).and_then(|it| it.bought),
        _ => None,
    };
    bought == Some(false)
}

/// Returns the plan with everything not bought yet as its package will have to say.
pub(crate) fn as_bought(plan: &Plan) -> Plan {
    if all_to_buy(plan).is_empty() {
        return plan.clone();
    }
    let fields = judge(plan).figures.assumed.into_iter().map(|it| it.field);
    let chosen = |field: &String| is_to_buy(plan, reading_in(plan, field).0) && on_package(field);
    all_answered(plan, &fields.filter(chosen).collect::<Vec<_>>())
}

/// Returns everything that is not bought yet, as named in fields.
fn all_to_buy(plan: &Plan) -> Vec<String> {
    let cords = plan.cords.iter().map(|it| format!("cord.{}", it.id));
    let boxes = plan.boxes.iter().map(|it| format!("box.{}", it.id));
    let all = std::iter::once(Id::SET.to_owned()).chain(cords).chain(boxes);
    all.filter(|thing| is_to_buy(plan, thing)).collect()
}

/// Returns the looks at packages, each with what has to be on it, and what goes away with it once the looks before it
/// have the best answers. Completes `packages` to one for each thing not bought yet. If anything is bought and there is
/// no carbon monoxide alarm, one is added.
pub(super) fn purchases(plan: &Plan, report: &Report, looks: &[Look], mut packages: Vec<Look>) -> Vec<Look> {
    let things = all_to_buy(plan);
    if things.is_empty() {
        return packages;
    }
    for to_buy in &things {
        let at = thing(&format!("{to_buy}.bought"));
        if !packages.iter().any(|it| it.at == at) {
            let fields = report.figures.assumed.iter().map(|it| &it.field);
            let its = |field: &&String| {
                let (thing, _) = reading_in(plan, field);
                thing == to_buy && on_package(field) && is_found_out(plan, field)
            };
            packages.push(Look::new(at, Marking::Package, fields.filter(its).cloned().collect()));
        }
    }
    let seen = all_answered(plan, &fields_of(looks));
    let bought = chosen(plan, &seen, &fields_of(&packages));
    // Whether or not anything is looked at.
    let mut listed = plan.clone();
    for look in &packages {
        take(&mut listed, &bought, look.at.as_ref());
    }
    // Nobody should buy what is a danger even as the best of its kind.
    let mut wrong = judge(&bought).findings;
    wrong.retain(|it| it.signal == Signal::Danger);
    for to_buy in &things {
        let at = thing(&format!("{to_buy}.bought"));
        if let Some(look) = packages.iter_mut().find(|it| it.at == at) {
            if at.is_some_and(|id| wrong.iter().any(|it| it.about.contains(&id))) {
                look.buy = vec![Property { key: Property::ANOTHER, value: Value::yes_no(true) }];
                continue;
            }
            look.buy = properties(plan, &bought, to_buy);
            look.buy.extend(reach([&bought, &listed], to_buy).filter(|_| length_is_open(plan, to_buy)));
        }
    }
    if plan.site.co_alarm == Answer::Known(false) && plan.site.sleeps() {
        let alarm = Property { key: "co_alarm", value: Value::yes_no(true) };
        let look = Look::new(None, Marking::Package, vec!["site.co_alarm".to_owned()]);
        packages.push(Look { buy: vec![alarm], ..look });
    }
    // One after the other. What comes back with a later purchase was not gone.
    let mut then = seen;
    let mut left = vec![Wrong::of(&then)];
    for look in &packages {
        if !look.wrong_anyway() {
            take(&mut then, &bought, look.at.as_ref());
        }
        left.push(Wrong::of(&then));
    }
    let (now, mut later) = (left[0], Wrong::default());
    for it in left[1..].iter_mut().rev() {
        later.dangers = later.dangers.max(it.dangers);
        later.warnings = later.warnings.max(it.warnings);
        it.dangers = later.dangers.min(now.dangers);
        it.warnings = later.warnings.min(now.warnings);
    }
    for (look, pair) in packages.iter_mut().zip(left.windows(2)) {
        look.dangers = pair[0].dangers - pair[1].dangers;
        look.warnings = pair[0].warnings - pair[1].warnings;
    }
    packages
}

/// Whether the length of this cord is still open.
fn length_is_open(plan: &Plan, cord: &str) -> bool {
    let cord = cord.strip_prefix("cord.").and_then(|id| plan.cord(id));
    cord.is_some_and(|cord| !cord.length.is_known())
}

/// Returns the least length a cord must have, if a shorter one that is sold leaves more wrong: people would pull the
/// generator closer.
fn reach(worlds: [&Plan; 2], cord: &str) -> Option<Property> {
    let (_, sold) = SOLD.iter().find(|(name, _)| *name == "length")?;
    let no_worse = |world: &Plan, text: &str| {
        let mut other = world.clone();
        answer_as(&mut other, &format!("{cord}.length"), text)?;
        Some(Wrong::of(&other) <= Wrong::of(world))
    };
    let suits = |text: &&&str| worlds.iter().all(|world| no_worse(world, text) == Some(true));
    let shortest = sold.iter().rev().find(suits).filter(|it| Some(*it) != sold.last())?;
    let length = bounds::LENGTH.read(shortest).ok()?;
    Some(Property { key: "reach", value: Amount::of(length).into() })
}

/// What is wrong with a plan, worst first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Wrong {
    dangers: usize,
    warnings: usize,
    /// Whether the generator is too small for all that must run at one time. No rule reports that for loads without an
    /// outlet, and an outlet is easy to get.
    too_small: bool,
    /// How many findings are about exhaust, cautions included: with cords too short, people pull the generator closer.
    exhaust: usize,
    /// How many loads have no outlet.
    unplaced: usize,
}

impl Wrong {
    fn of(plan: &Plan) -> Self {
        let report = judge(plan);
        Self {
            dangers: report.count(Signal::Danger),
            warnings: report.count(Signal::Warning),
            too_small: is_too_small(plan, &report.figures),
            exhaust: report.findings.iter().filter(|it| it.area == "air").count(),
            unplaced: report.figures.sharing.unplaced.len(),
        }
    }
}

/// Whether what must run at one time, or starting any of it while the rest runs, needs more than the generator gives at
/// this altitude and in this air.
fn is_too_small(plan: &Plan, figures: &Figures) -> bool {
    let begins = plan.loads.iter().flat_map(|it| &it.hours).map(|span| span.from);
    begins.chain([0]).any(|minute| {
        let runs = |load: &Load| load.wanted == Wanted::Must && (load.hours.is_empty() || load.wants(minute));
        figures.beyond_the_set(figures.loads.iter().filter(|it| plan.load(&it.of).is_some_and(runs)))
    })
}

/// Returns the plan with these fields chosen: the least demand that leaves the least wrong, both with the looks
/// answered, as in `seen`, and without.
fn chosen(plan: &Plan, seen: &Plan, fields: &[String]) -> Plan {
    let mut worlds = vec![all_answered(plan, fields), all_answered(seen, fields)];
    // No wire makes up for a coil: it is unwound, whatever is bought.
    for cord in worlds.iter_mut().flat_map(|world| &mut world.cords).filter(|it| it.bought == Some(false)) {
        cord.coiled = Answer::Known(cord.coiled == Answer::Known(true));
    }
    // Without looks they are the same.
    worlds.dedup();
    for (name, sold) in SOLD {
        let of_name = |field: &&String| field.rsplit('.').next() == Some(name);
        for field in fields.iter().filter(of_name) {
            let with = |world: &Plan, text: &str| {
                let mut other = world.clone();
                answer_as(&mut other, field, text)?;
                leave_open(&mut other.generator, name, fields);
                if name == "wire" && !is_made(&other, field) {
                    return None;
                }
                let (rated, peak) = (other.generator.rated, other.generator.peak);
                // Equal figures mean that one was taken for the other.
                let possible = match (rated.known(), peak.known()) {
                    (Some(rated), Some(peak)) if name == "peak" => rated < peak,
                    (Some(rated), Some(peak)) => rated <= peak,
                    _ => true,
                };
                possible.then(|| (Wrong::of(&other), other))
            };
            let tried = sold.iter().filter_map(|text| {
                let both = worlds.iter().map(|world| with(world, text));
                both.collect::<Option<Vec<(Wrong, Plan)>>>()
            });
            // The first of equals.
            let least = tried.min_by_key(|both| both.iter().map(|it| it.0).collect::<Vec<_>>());
            if let Some(least) = least {
                worlds = least.into_iter().map(|(_, world)| world).collect();
            }
        }
    }
    // An inverter is asked for only if the lack of one makes things worse.
    if fields.iter().any(|it| it == "generator.inverter") {
        let any = |world: &Plan| {
            let mut other = world.clone();
            other.generator.inverter = plan.generator.inverter;
            other
        };
        let others: Vec<Plan> = worlds.iter().map(any).collect();
        if others.iter().map(Wrong::of).le(worlds.iter().map(Wrong::of)) {
            worlds = others;
        }
    }
    worlds.pop().unwrap_or_else(|| plan.clone())
}

/// Whether cords like this are made: wire thicker than 10 AWG goes to plugs of more than 20 A alone (common practice, no
/// source).
fn is_made(plan: &Plan, field: &str) -> bool {
    let id = field.strip_prefix("cord.").and_then(|rest| rest.strip_suffix(".wire"));
    let Some(cord) = id.and_then(|id| plan.cord(id)) else {
        return true;
    };
    let thick = cord.wire.known().and_then(|wire| gauge_of(*wire)).is_some_and(|gauge| gauge < 10);
    let large = cord.usable_plug().is_some_and(|plug| plug.0.rating() > CORD_SET_CIRCUIT);
    large || !thick
}

/// Leaves room for every later choice: sets what is chosen only after `name` as high as it can be.
fn leave_open(set: &mut Generator, name: &str, fields: &[String]) {
    let asked = |field: &str| fields.iter().any(|it| it == field);
    let most = Power::from_milliwatts(9_000_000);
    if name == "voltage" && asked("generator.rated") {
        let peak = set.peak.known().filter(|_| !asked("generator.peak"));
        set.rated = Answer::Known(peak.map_or(most, |peak| most.min(*peak)));
    }
    if matches!(name, "voltage" | "rated") && asked("generator.peak") {
        let rated = set.rated.or(most).milliwatts();
        set.peak = Answer::Known(Power::from_milliwatts(rated.saturating_mul(2)));
    }
}

/// Copies what one look at a package is about from one plan to the other.
fn take(plan: &mut Plan, bought: &Plan, at: Option<&Id>) {
    match at {
        None => plan.site.co_alarm = Answer::Known(true),
        Some(id) if id.as_str() == Id::SET => plan.generator.clone_from(&bought.generator),
        Some(id) => {
            if let Some((cord, other)) = plan.cord_mut(id).zip(bought.cord(id)) {
                // How it will lie, no package says.
                let coiled = cord.coiled;
                cord.clone_from(other);
                cord.coiled = coiled;
            }
            if let Some((holder, other)) = plan.holder_mut(id).zip(bought.holder(id)) {
                holder.clone_from(other);
            }
        }
    }
}

/// Returns what has to be on the package of a thing, from the plan itself and one in which its unknowns are answered.
fn properties(plan: &Plan, best: &Plan, thing: &str) -> Vec<Property> {
    // A length that somebody chose is not "or less".
    let length = if length_is_open(plan, thing) { "length" } else { "long" };
    let mut all: Vec<(&'static str, Option<Value>)> = Vec::new();
    let name = |text: String| Some(Value::Name(text));
    let yes = |answer: Answer<bool>| (answer == Answer::Known(true)).then(|| Value::yes_no(true));
    match thing.split_once('.') {
        Some(("cord", id)) => {
            let cord = best.cord(id);
            all.extend(cord.into_iter().flat_map(|cord| {
                [
                    ("plug", cord.plug.known().and_then(|it| name(it.to_string()))),
                    ("ends", kinds(cord.ends().iter().map(|it| (*it, Answer::Missing)))),
                    ("outdoor", yes(cord.outdoor)),
                    ("wire", cord.wire.known().and_then(|it| name(it.to_string()))),
                    ("conductors", cord.conductors.known().map(|it| Value::Count((*it).into()))),
                    (length, amount(cord.length)),
                    ("gfci", yes(cord.gfci)),
                ]
            }));
        }
        Some(("box", id)) => {
            all.extend(best.holder(id).into_iter().flat_map(|holder| {
                [
                    ("inlet", holder.inlet.known().and_then(|it| name(it.to_string()))),
                    ("outlet", of_outlets(&holder.outlets)),
                    ("gfci", protected(&holder.outlets)),
                    ("listed", yes(holder.listed)),
                ]
            }));
        }
        _ => {
            let set = &best.generator;
            all.extend([
                ("rated", amount(set.rated)),
                ("peak", amount(set.peak)),
                ("voltage", set.voltage.known().and_then(|it| name(it.word().to_owned()))),
                ("outlet", of_outlets(&set.outlets)),
                ("gfci", protected(&set.outlets)),
                ("inverter", yes(set.inverter)),
            ]);
        }
    }
    let known = all.into_iter();
    known.filter_map(|(key, value)| Some(Property { key, value: value? })).collect()
}

fn amount<Q: Quantity>(answer: Answer<Q>) -> Option<Value> {
    answer.known().map(|it| Amount::of(*it).into())
}

/// Lists shapes with their breakers, each once with its count. `None` without outlets.
fn kinds(outlets: impl Iterator<Item = (Receptacle, Answer<Current>)>) -> Option<Value> {
    let mut kinds: Vec<(String, usize)> = Vec::new();
    for (shape, breaker) in outlets {
        let breaker = breaker.known().map(|amps| format!(" {} A", amps.amount()));
        let text = format!("{shape}{}", breaker.unwrap_or_default());
        match kinds.iter_mut().find(|(other, _)| *other == text) {
            Some((_, count)) => *count += 1,
            None => kinds.push((text, 1)),
        }
    }
    let text = kinds.into_iter().map(|(text, count)| match count {
        1 => text,
        count => format!("{count} × {text}"),
    });
    let text = text.collect::<Vec<_>>().join(", ");
    (!text.is_empty()).then_some(Value::Name(text))
}

fn of_outlets(outlets: &[Outlet]) -> Option<Value> {
    kinds(outlets.iter().map(|it| (it.shape, it.breaker)))
}

/// Returns the GFCI property, if any outlet is known to have one.
fn protected(outlets: &[Outlet]) -> Option<Value> {
    let mut gfci = outlets.iter().map(|it| it.gfci);
    gfci.any(|it| it == Answer::Known(true)).then(|| Value::yes_no(true))
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::plan::arbitrary;
    use crate::plan::row::Part;
    use crate::rules::testing::{edited, plan, report};
    use crate::supply::Supply;

    /// Returns how many dangers the package clears, and what has to be on it.
    fn wanted(edits: &[(&str, &str)]) -> (usize, Vec<(&'static str, String)>) {
        let report: Report = report(edits);
        let look = report.figures.looks.iter().find(|it| it.read == Marking::Package);
        let look = look.expect("a package");
        let text = |it: &crate::report::Property| {
            let words = crate::words::Words::english();
            (it.key, words.value(&it.value))
        };
        (look.dangers, look.buy.iter().map(text).collect())
    }

    const NOT_BOUGHT: [(&str, &str); 4] = [
        ("wire = \"10 AWG\" # long", "wire = \"unknown\"\nbought = false"),
        ("conductors = 3 # long", "conductors = \"unknown\""),
        ("length = \"50 ft\" # long", "length = \"unknown\""),
        ("outdoor = true # long", "outdoor = \"unknown\""),
    ];

    /// Everything in one line, and no more than it takes: 10 AWG on a 30 A breaker, 16 AWG on a 20 A one.
    #[test]
    fn what_is_not_known_of_a_cord_to_buy_is_chosen() {
        let all = |edits: &[(&str, &str)]| {
            let (dangers, buy) = wanted(edits);
            assert!(dangers > 0);
            let buy: Vec<String> = buy.iter().map(|(key, text)| format!("{key} {text}")).collect();
            buy.join(", ")
        };
        assert_eq!(
            all(&NOT_BOUGHT),
            "plug L5-30P, ends L5-30R, outdoor yes, wire 10 AWG, conductors 3, length 100\u{a0}ft, reach 25\u{a0}ft"
        );
        let smaller = ("breaker = \"30 A\" # twist", "breaker = \"20 A\"");
        let found = all(&[&NOT_BOUGHT[..], &[smaller]].concat());
        assert!(found.contains("wire 16 AWG"), "{found}");
    }

    /// A cord that is too short for how far the generator must stand is not what the list asks for.
    #[test]
    fn a_cord_to_buy_is_long_enough() {
        let long = |edits: &[(&str, &str)]| -> Vec<(&'static str, String)> {
            let (_, mut buy) = wanted(edits);
            buy.retain(|(key, _)| matches!(*key, "reach" | "length" | "long"));
            buy
        };
        let told = |key, text: &str| (key, text.to_owned());
        assert_eq!(long(&NOT_BOUGHT), [told("length", "100\u{a0}ft"), told("reach", "25\u{a0}ft")]);
        // Near misses: who has said how long it will be, and a cord of which nothing needs to be far away.
        let chosen = [&NOT_BOUGHT[..2], &NOT_BOUGHT[3..]].concat();
        assert_eq!(long(&chosen), [told("long", "50\u{a0}ft")]);
        let unused = crate::judge::build(&plan(AT_THE_SHOP)).figures.looks;
        assert!(unused.iter().flat_map(|it| &it.buy).all(|it| it.key != "reach"), "{unused:?}");
    }

    /// Small outlets on a 30 A breaker are a danger with any wire, so the list says to choose another kind. A cord for a
    /// 50 A breaker is listed with wire that is thick enough.
    #[test]
    fn nothing_is_on_the_list_that_is_a_danger_anyway() {
        let splitter = ("ends = [\"L5-30R\"] # long", "ends = [\"5-20R\", \"5-20R\"]");
        let loose = ("from = \"long\"\n", "");
        let (_, buy) = wanted(&[&NOT_BOUGHT[..], &[splitter, loose]].concat());
        assert_eq!(buy, [("another", "yes".to_owned())]);
        let fifty = [
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"14-50R\"\nbreaker = \"50 A\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"] # long", "plug = \"14-50P\"\nends = [\"14-50R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"14-50P\""),
        ];
        let (_, buy) = wanted(&[&NOT_BOUGHT[..], &fifty].concat());
        assert!(buy.contains(&("wire", "6 AWG".to_owned())), "{buy:?}");
    }

    /// A thing with no unknowns is on the list as well, and so is an alarm if there is none.
    #[test]
    fn all_that_is_not_bought_yet_is_on_the_list() {
        let bought = ("wire = \"10 AWG\" # long", "wire = \"10 AWG\"\nbought = false");
        let (dangers, buy) = wanted(&[bought]);
        assert_eq!((dangers, buy.len()), (0, 6));
        let no_alarm = ("co_alarm = true", "co_alarm = false");
        let keys = |edits: &[(&str, &str)]| -> Vec<&'static str> {
            let looks = report(edits).figures.looks;
            looks.iter().flat_map(|it| &it.buy).map(|it| it.key).collect()
        };
        assert!(keys(&[bought, no_alarm]).contains(&"co_alarm"));
        assert_eq!(keys(&[no_alarm]), [""; 0]);
    }

    /// Returns the plan with exactly what the list says bought.
    fn bought(plan: &Plan, looks: &[Look]) -> Plan {
        let mut plan = plan.clone();
        for look in looks {
            for Property { key, value } in &look.buy {
                let text = match value {
                    Value::Amount(it) => format!("{} {}", it.amount, it.unit.code()),
                    Value::Count(count) => count.to_string(),
                    Value::Name(text) => text.clone(),
                    _ => "yes".to_owned(),
                };
                let Some(id) = &look.at else {
                    plan.site.co_alarm = Answer::Known(true);
                    continue;
                };
                if id.as_str() == Id::SET {
                    take(&mut plan.generator, key, &text);
                    plan.generator.outlets.iter_mut().for_each(|it| outlet(it, key, &text));
                }
                for cord in plan.cords.iter_mut().filter(|it| it.id == *id) {
                    take(cord, key, &text);
                }
                for holder in plan.boxes.iter_mut().filter(|it| it.id == *id) {
                    take(holder, key, &text);
                    holder.outlets.iter_mut().for_each(|it| outlet(it, key, &text));
                }
            }
        }
        plan
    }

    /// Sets one field of a part, if the part has it.
    fn take<P: Part>(part: &mut P, key: &str, text: &str) {
        if matches!(key, "plug" | "ends" | "inlet" | "outlet") {
            return;
        }
        if let Some(row) = P::row(key) {
            row.take(part, Answer::Known(text));
        }
    }

    /// Sets one field of an outlet. Its breaker is listed with its shape, if it has one.
    fn outlet(outlet: &mut Outlet, key: &str, text: &str) {
        let rating = outlet.shape.0.rating();
        let listed = || text.split(", ").any(|it| it.ends_with(&format!("{} {} A", outlet.shape, rating.amount())));
        match key {
            "outlet" if outlet.shares.is_none() && !outlet.breaker.is_known() && listed() => {
                outlet.breaker = Answer::Known(rating);
            }
            "gfci" if !outlet.gfci.is_known() => outlet.gfci = Answer::Known(true),
            _ => {}
        }
    }

    /// Nothing is bought yet, and next to nothing is known. A 1000 W kettle, an air mattress pump and lamps may run at
    /// any hour, on one box. They take 1355 W in all, at 5000 ft because the altitude is unknown.
    const AT_THE_SHOP: &str = r#"
format = 1
[site]
ground = "unknown"
sleepers_at = "40 ft"
altitude = "unknown"
co_alarm = false
feeds_building = false
stands = "open"
[generator]
rated = "unknown"
peak = "unknown"
voltage = "unknown"
neutral = "unknown"
inverter = "unknown"
bought = false
[[generator.outlet]]
id = "regular"
shape = "5-15R"
sockets = 2
breaker = "15 A"
gfci = "unknown"
[[cord]]
id = "cord"
from = "regular"
plug = "5-15P"
ends = ["5-15R", "5-15R", "5-15R"]
wire = "unknown"
conductors = "unknown"
length = "unknown"
outdoor = "unknown"
coiled = "unknown"
bought = false
[[box]]
id = "box"
from = "regular"
inlet = "5-15P"
listed = "unknown"
bond = "unknown"
bought = false
[[box.outlet]]
id = "out"
shape = "5-15R"
breaker = "unknown"
gfci = "unknown"
wire = "unknown"
[[load]]
id = "kettle"
kind = "cooker"
running = "1000 W"
wanted = "must"
plug = "5-15P"
[[load]]
id = "pump"
kind = "motor"
running = "150 W"
starting = "450 W"
power_factor = 0.7
wanted = "must"
plug = "5-15P"
[[load]]
id = "lamps"
kind = "lamp"
running = "205 W"
wanted = "must"
plug = "5-15P"
"#;

    /// Buying what the list says runs everything that must run at one time.
    #[test]
    fn the_list_is_enough_for_all_that_must_run() {
        let plan = plan(AT_THE_SHOP);
        let now = crate::judge::build(&plan);
        let looks = &now.figures.looks;
        let then = crate::judge::build(&bought(&plan, looks));
        let power = then.findings.iter().filter(|it| it.area == "power" && it.signal <= Signal::Warning);
        assert_eq!(power.map(|it| it.code).collect::<Vec<_>>(), [""; 0], "{looks:#?}");
        assert!(now.findings.iter().any(|it| it.code == "POWER001"));
        // At 5000 ft, with the pump starting while the others run, including loads without a socket.
        let supply = Supply::build(&bought(&plan, looks));
        assert!(supply.rated >= Power::from_milliwatts(1_355_000), "{looks:#?}");
        assert!(supply.peak >= Power::from_milliwatts(1_655_000), "{looks:#?}");
        assert!(then.count(Signal::Danger) < now.count(Signal::Danger));
        let set = looks.iter().find(|it| it.at.as_ref().is_some_and(|it| it.as_str() == Id::SET));
        let keys: Vec<&str> = set.expect("a generator").buy.iter().map(|it| it.key).collect();
        assert_eq!(keys, ["rated", "peak", "voltage", "outlet", "gfci"]);
        assert!(looks.iter().flat_map(|it| &it.buy).any(|it| it.key == "co_alarm"));
    }

    /// No package says how a cord will lie, where neutral is joined to ground, or what is behind an outlet.
    #[test]
    fn nobody_looks_on_a_package_for_what_is_inside() {
        let looks = crate::judge::build(&plan(AT_THE_SHOP)).figures.looks;
        let fields: Vec<&String> = looks.iter().flat_map(|it| &it.fields).collect();
        for inside in ["coiled", "neutral", "bond", "box.box.outlet.out.wire", "leg"] {
            assert!(!fields.iter().any(|it| it.ends_with(inside)), "{inside}: {fields:?}");
        }
        assert!(fields.iter().any(|it| *it == "box.box.outlet.out.breaker"));
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(48))]

        /// After all the looks before it, buying what the list says clears at least what it promises.
        #[test]
        fn what_is_bought_clears_what_is_promised(mut plan in arbitrary::camp()) {
            plan.generator.bought = Some(false);
            plan.cords.iter_mut().for_each(|it| it.bought = Some(false));
            plan.boxes.iter_mut().for_each(|it| it.bought = Some(false));
            let looks = crate::judge::build(&plan).figures.looks;
            let (packages, looked): (Vec<Look>, Vec<Look>) =
                looks.into_iter().partition(|it| it.read == Marking::Package);
            let seen = all_answered(&plan, &fields_of(&looked));
            let then = bought(&seen, &packages);
            let (now, then) = (judge(&seen), judge(&then));
            let promised = |count: fn(&Look) -> usize| packages.iter().map(count).sum::<usize>();
            for (signal, promised) in [
                (Signal::Danger, promised(|it| it.dangers)),
                (Signal::Warning, promised(|it| it.warnings)),
            ] {
                let gone = now.count(signal).saturating_sub(then.count(signal));
                prop_assert!(promised <= gone, "{signal:?} {packages:#?}");
            }
        }
    }

    /// After buying exactly that, nothing is left to look at.
    #[test]
    fn what_is_bought_by_the_list_clears_what_was_told() {
        let before: Plan = plan(&edited(&NOT_BOUGHT));
        let now = crate::judge::build(&before);
        let mut after = before;
        let cord = &mut after.cords[0];
        cord.wire = crate::quantity::Wire::parse("10 AWG").map_or(Answer::Unknown, Answer::Known);
        cord.conductors = Answer::Known(3);
        cord.length = Answer::Known(crate::quantity::Length::from_millimetres(30_480));
        cord.outdoor = Answer::Known(true);
        cord.bought = None;
        let then = crate::judge::build(&after);
        assert!(now.worst() < then.worst(), "{:?}", then.findings);
        assert_eq!(then.figures.looks, []);
    }
}

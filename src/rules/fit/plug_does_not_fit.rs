#![doc = include_str!("../../../i18n/en/explain/FIT001.md")]

use crate::plan::{Answer, DistributionBox, Id, Load, LoadKind};
use crate::rules::demand::{Need, busiest};
use crate::rules::prelude::*;
use crate::supply::{DetachReason, NodeIx, NodeKind};
use crate::tables::shape::{Plug, Receptacle};
use crate::verdict::wrong_anywhere;

pub(super) const RULE: Rule = Rule {
    code: "FIT001",
    name: "plug-does-not-fit",
    area: "fit",
    worst: Signal::Danger,
    sources: &[cite::WD_6],
    fixes: &["load", "dead", "part", "lost", "bonding-plug", "loose", "misplaced", "unusable", "unknown"],
    check,
    #[cfg(test)]
    fires: &[
        &[("plug = \"5-15P\" # kettle", "plug = \"14-30P\""), ("on = \"left\" # kettle", "")],
        &[("plug = \"L5-30P\" # long", "plug = \"TT-30P\"")],
        // The end of an adapter that brings 240 V.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("[[box]]", "[[cord]]\nid = \"trap\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [\"5-20R\"]\n[[box]]"),
            ("on = \"left\" # kettle", "on = \"trap\""),
        ],
        // The one household outlet of the generator with the kettle in its only socket, and a bonding plug.
        &[
            ("bonding_plug = false", "bonding_plug = true"),
            ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ],
        // The same with a cord in it.
        &[
            ("bonding_plug = false", "bonding_plug = true"),
            ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\""),
            (
                "[[cord]]",
                "[[cord]]\nid = \"other\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\nwire = \"12 AWG\"\n\
                 conductors = 3\nlength = \"10 ft\"\noutdoor = true\ncoiled = false\n[[cord]]",
            ),
        ],
        // A cord in the one socket where the plan has the bonding plug, beside a free outlet.
        &[
            ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\""),
            ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\""),
            SECOND,
        ],
        // The kettle in that socket.
        &[
            ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\""),
            ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ],
        // A plug that fits another receptacle than the one in the plan.
        &[("plug = \"5-15P\" # kettle", "plug = \"5-20P\"")],
        // A box that is plugged into nothing.
        &[("from = \"long\"\ninlet", "inlet")],
        // An unplugged box that would be wrong anywhere.
        &[
            ("from = \"long\"\ninlet", "inlet"),
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bond = false", "bond = true"),
        ],
        // A second cord in a single receptacle, one that must not be used anywhere.
        &[(
            "[[box]]",
            "[[cord]]\nid = \"other\"\nfrom = \"twist\"\nplug = \"L5-30P\"\nends = [\"L5-30R\"]\nconductors = 2\n[[box]]",
        )],
        // A second cord in a single receptacle.
        &[(
            "[[box]]",
            "[[cord]]\nid = \"other\"\nfrom = \"twist\"\nplug = \"L5-30P\"\nends = [\"L5-30R\"]\nwire = \"10 AWG\"\nconductors = 3\n[[box]]",
        )],
        // A cord whose plug is unknown.
        &[("[[box]]", "[[cord]]\nid = \"other\"\nplug = \"unknown\"\nends = [\"5-15R\"]\n[[box]]")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("plug = \"5-15P\" # kettle", "plug = \"1-15P\"")],
        // Nothing that must run is on it.
        &[
            ("from = \"long\"\ninlet", "inlet"),
            ("wanted = \"must\" # kettle", "wanted = \"wish\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
        // The plan has the plug in the other outlet.
        &[
            ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"back\""),
            ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\""),
            SECOND,
        ],
        // A socket is left for it, even if a load could be sent there.
        &[
            ("bonding_plug = false", "bonding_plug = true"),
            ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\""),
            ("on = \"left\" # kettle", ""),
            ("shape = \"5-15R\" # left", "shape = \"TT-30R\""),
            ("on = \"right\" # fan", ""),
        ],
    ],
};

/// A cord in the front outlet, and one more outlet.
#[cfg(test)]
const SECOND: crate::rules::Edit = (
    "[[cord]]",
    "[[generator.outlet]]\nid = \"back\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = true\n\
     [[cord]]\nid = \"other\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\nwire = \"12 AWG\"\n\
     conductors = 3\nlength = \"10 ft\"\noutdoor = true\ncoiled = false\n[[cord]]",
);

/// Returns the loads that get no socket at the receptacle where the plan puts them, although it takes their plug, each
/// with that receptacle. These cannot wait until another load is unplugged.
pub(super) fn crowded_out<'a>(facts: &Facts<'a>) -> Vec<(&'a Id, &'a Id)> {
    let needs = facts.needs();
    let sharing = &facts.figures.sharing;
    let lost = |need: &&Need<'_>| sharing.without_place(&need.facts.id).is_some();
    needs
        .iter()
        .filter(lost)
        .filter_map(|need| {
            let on = need.load.on.as_ref()?;
            let at = need.at.filter(|at| facts.gives(*at))?;
            (fits(facts, need, at) && full(facts, &needs, at)).then_some((&need.load.id, on))
        })
        .collect()
}

/// Whether a load's plug fits, or may fit, there.
fn fits(facts: &Facts<'_>, need: &Need<'_>, at: NodeIx) -> bool {
    match facts.supply.node(at).kind {
        NodeKind::Receptacle { shape, .. } => need.fits(shape),
        _ => false,
    }
}

/// Whether gear or the bonding plug takes all the sockets, or more loads are on at one time than are left.
fn full(facts: &Facts<'_>, needs: &[Need<'_>], at: NodeIx) -> bool {
    let mut here = needs.to_vec();
    here.retain(|need| need.at == Some(at));
    let most = busiest(&here, <[_]>::len).on.len();
    let left = facts.verdicts.grounding.beside_gear(at);
    left == 0 || most > left
}

/// Returns what is plugged into a socket that is not there, by the receptacle that should have it.
fn lost(facts: &Facts<'_>) -> Vec<(Id, Vec<Id>)> {
    let gear = facts.plan.gear().filter_map(|it| {
        let part = facts.supply.detached.iter().find(|part| part.id == *it.id)?;
        // Anything connected to a detached part needs no line of its own.
        matches!(part.reason, DetachReason::NoFreeSocket | DetachReason::NoSuchReceptacle | DetachReason::Loop)
            .then_some((it.id, it.from?))
    });
    let mut places = Vec::new();
    for (id, at) in gear.chain(crowded_out(facts)) {
        note(&mut places, at, id);
    }
    places
}

/// Adds an id at a place, in plan order. Ids play no part in the order.
fn note<K: Clone + PartialEq>(places: &mut Vec<(K, Vec<Id>)>, at: &K, id: &Id) {
    match places.iter_mut().find(|(place, _)| place == at) {
        Some((_, there)) if there.contains(id) => {}
        Some((_, there)) => there.push(id.clone()),
        None => places.push((at.clone(), vec![id.clone()])),
    }
}

/// Returns the loads that must run, or that somebody's health depends on, by the detached part that they hang from.
fn loose(facts: &Facts<'_>) -> Vec<(Id, Vec<Id>)> {
    let mut parts = Vec::new();
    let loads = facts.plan.loads.iter();
    for load in loads.filter(|load| load.is_needed()) {
        let on = load.on.as_ref();
        if let Some(part) = on.and_then(|on| facts.supply.loose_part(facts.plan, on)) {
            note(&mut parts, part, &load.id);
        }
    }
    parts
}

/// Whether a household socket of the generator is left for the bonding plug.
fn bonding_plug_fits(facts: &Facts<'_>) -> bool {
    let needs = facts.needs();
    let mut outlets = facts.plan.generator.outlets.iter();
    outlets.any(|outlet| {
        let Some(ix) = facts.supply.receptacle(&outlet.id) else {
            return false;
        };
        // A load that the plug keeps out has no socket there.
        let loads = needs.iter().filter(|need| need.at == Some(ix) && need.placed()).count();
        let taken = facts.supply.fed_from(ix).count() + loads;
        outlet.shape.takes(Plug::BONDING) && taken < usize::from(outlet.plugs().1)
    })
}

/// Returns the receptacle where the plan puts a load, if its plug does not fit.
fn misplaced<'a>(facts: &Facts<'a>, load: &'a Load) -> Option<&'a Id> {
    let on = load.on.as_ref()?;
    let (at, plug) = (facts.supply.receptacle(on)?, load.plug.known()?);
    match facts.supply.node(at).kind {
        NodeKind::Receptacle { shape, .. } => (!shape.takes(*plug)).then_some(on),
        _ => None,
    }
}

/// Whether any receptacle that may be used takes a load's plug.
fn takes_elsewhere(facts: &Facts<'_>, load: &Load) -> bool {
    facts.supply.receptacles().any(|(at, _, shape, _)| {
        let takes = load.plug.known().is_some_and(|plug| shape.takes(*plug));
        takes && facts.open(at)
    })
}

/// Returns where a load could be plugged in instead, as the card and the answers say.
fn free_for(facts: &Facts<'_>, load: &Id) -> Vec<Id> {
    let mut units = facts.figures.units(load);
    let lost = units.find_map(|unit| facts.figures.sharing.without_place(&unit.id));
    lost.map(|lost| lost.free.clone()).unwrap_or_default()
}

/// Returns where any of these loads could be plugged in instead; empty if there are fewer outlets than loads.
fn free_for_all(facts: &Facts<'_>, loads: &[Id]) -> Vec<Id> {
    let mut all = loads.iter().map(|load| free_for(facts, load));
    let mut free = all.next().unwrap_or_default();
    for other in all {
        free.retain(|at| other.contains(at));
    }
    if free.len() < loads.len() { Vec::new() } else { free }
}

/// Returns where any of these cords and boxes fits with a socket left; empty if there are fewer outlets than parts. No
/// cord goes into the end of another.
fn free_for_parts(facts: &Facts<'_>, parts: &[Id]) -> Vec<Id> {
    let (plan, needs) = (facts.plan, facts.needs());
    let cord = |id: &Id| plan.cord(id);
    let inlet = |id: &Id| plan.holder(id)?.usable_inlet();
    let of_cord = |at: &Id| plan.part_of(at).is_some_and(|part| cord(part).is_some());
    let all = facts.supply.receptacles().filter(|(at, node, shape, _)| {
        let takes = |part: &Id| match cord(part) {
            Some(cord) => cord.usable_plug().is_some_and(|plug| shape.takes(plug)) && !of_cord(&node.id),
            None => inlet(part).is_some_and(|plug| shape.takes(plug)),
        };
        let loads = needs.iter().filter(|need| need.at == Some(*at)).count();
        let left = loads < facts.verdicts.grounding.beside_gear(*at);
        left && facts.open(*at) && parts.iter().all(takes)
    });
    let all: Vec<Id> = all.map(|(_, node, ..)| node.id.clone()).collect();
    if all.len() < parts.len() { Vec::new() } else { all }
}

/// Returns the values for a box or camper that fits an outlet with an adapter sold for it, whose plug is rated for the
/// outlet's breaker: the outlet with the largest breaker, and the adapter's two shapes.
fn adapted(facts: &Facts<'_>, part: &Id) -> crate::rules::Values {
    let needs = facts.needs();
    let inlet = facts.plan.holder(part).and_then(DistributionBox::usable_inlet);
    let all = facts.supply.receptacles().filter_map(|(at, node, shape, _)| {
        let (plug, end) = shape.adapter(inlet?)?;
        let outlet = facts.plan.outlet(&node.id)?;
        let breaker = *outlet.breaker.known()?;
        let loads = needs.iter().filter(|need| need.at == Some(at)).count();
        let left = loads < facts.verdicts.grounding.beside_gear(at);
        (left && facts.open(at) && breaker <= plug.0.rating()).then_some((breaker, &node.id, plug, end))
    });
    let all: Vec<_> = all.collect();
    // The first if several are equal.
    let best = all.iter().rev().max_by_key(|(breaker, ..)| *breaker);
    let (plug, end) = best.map_or_else(Default::default, |(.., plug, end)| (plug.to_string(), end.to_string()));
    values([
        ("adapted", Value::yes_no(best.is_some())),
        ("outlet", Value::Parts(best.map(|(_, id, ..)| (*id).clone()).into_iter().collect())),
        ("plug", Value::Name(plug)),
        ("end", Value::Name(end)),
    ])
}

/// Returns what is wrong with a part that must not be used wherever it is plugged in, if so: the faulty part, and the
/// rule that reports it.
fn unusable(facts: &Facts<'_>, part: &Id) -> Option<crate::rules::Values> {
    let (refusal, at, _) = wrong_anywhere(facts.plan, part)?;
    let rule = Value::Name(refusal.cause.code().to_owned());
    Some(values([("place", Value::Parts(vec![at])), ("rule", rule)]))
}

/// Collects the outlets free for a detached part, and those free for the loads on it.
fn free_values(sockets: Vec<Id>, others: Vec<Id>) -> crate::rules::Values {
    values([
        ("fits", Value::yes_no(!sockets.is_empty())),
        ("free", Value::yes_no(!others.is_empty())),
        ("sockets", Value::Parts(sockets)),
        ("others", Value::Parts(others)),
    ])
}

/// Reports the parts that no other outlet would make usable, and returns the rest.
fn told_apart(facts: &Facts<'_>, parts: Vec<Id>, signal: Signal, found: &mut Findings<'_>) -> Vec<Id> {
    let mut left = Vec::new();
    for part in parts {
        match unusable(facts, &part) {
            Some(wrong) => found.add(signal, vec![part], wrong, "unusable", values([])),
            None => left.push(part),
        }
    }
    left
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let without_taker = |load: &Load| {
        facts.figures.sharing.unplaced.iter().any(|unplaced| {
            unplaced.reason == "no-receptacle-fits" && (unplaced.load == load.id || unplaced.load == load.id.end(1))
        })
    };
    // Rule FIT006 says more about a load that needs 240 V where there is none.
    let wrong_volts = super::wrong_voltage::unserved(facts);
    let crowded = crowded_out(facts);
    let loads: Vec<Id> = facts
        .plan
        .loads
        .iter()
        .filter(|load| !wrong_volts.contains(&load.id))
        // What is built into a camper has no plug, and rule FIT006 reports its voltage.
        .filter(|load| facts.plan.around(load).is_none())
        .filter(|load| crowded.iter().all(|(id, _)| **id != load.id))
        // Of a detached part and what is on it, only the part is reported.
        .filter(|load| load.on.as_ref().is_none_or(|on| facts.supply.receptacle(on).is_some()))
        .filter(|load| without_taker(load) || misplaced(facts, load).is_some())
        .map(|load| load.id.clone())
        .collect();
    // If another receptacle takes it, it is only in the wrong place. Free ones that could run it are named.
    let mut elsewhere = Vec::new();
    let mut left = Vec::new();
    for id in loads {
        let load = facts.plan.load(&id);
        let place = load.and_then(|load| misplaced(facts, load));
        let taken = load.is_some_and(|load| takes_elsewhere(facts, load));
        match place {
            Some(place) if taken => {
                let free = free_for(facts, &id);
                note(&mut elsewhere, &(place.clone(), free), &id);
            }
            _ => left.push(id),
        }
    }
    let loads = left;
    for ((place, others), about) in elsewhere {
        let place = values([("place", Value::Parts(vec![place]))]);
        let free = Value::yes_no(!others.is_empty());
        let others = values([("others", Value::Parts(others)), ("free", free)]);
        found.add(Signal::Caution, about, place, "misplaced", others);
    }
    // A receptacle that takes its plug exists, but gives nothing, or the wrong voltage.
    let dead = |id: &Id| {
        let load = facts.plan.load(id);
        let plug = load.and_then(|load| load.plug.known());
        facts
            .supply
            .receptacles()
            .any(|(at, _, shape, _)| !facts.gives(at) && plug.is_some_and(|plug| shape.takes(*plug)))
    };
    let (dead, without): (Vec<Id>, Vec<Id>) = loads.into_iter().partition(dead);
    let depends = |id: &Id| facts.plan.load(id).is_some_and(|load| load.may_be(LoadKind::Medical));
    for (fix, about) in [("load", without), ("dead", dead)] {
        let (life, others): (Vec<Id>, Vec<Id>) = about.into_iter().partition(depends);
        for (signal, about) in [(Signal::Warning, life), (Signal::Caution, others)] {
            if !about.is_empty() {
                found.add(signal, about, values([]), fix, values([]));
            }
        }
    }
    let parts: Vec<Id> = facts
        .supply
        .detached
        .iter()
        .filter(|part| part.reason == DetachReason::PlugDoesNotFit)
        .map(|part| part.id.clone())
        .collect();
    let parts = told_apart(facts, parts, Signal::Caution, found);
    let yes = Value::yes_no(true);
    let helped = |part: &Id| adapted(facts, part).get("adapted") == Some(&yes);
    let (helped, parts): (Vec<Id>, Vec<Id>) = parts.into_iter().partition(helped);
    let others = parts.first().cloned().map(|first| (first, parts));
    let helped = helped.into_iter().map(|part| (part.clone(), vec![part]));
    for (first, about) in helped.chain(others) {
        let adapter = adapted(facts, &first);
        found.add(Signal::Caution, about, values([]), "part", adapter);
    }
    // Where the plan says which outlet it is in, everything else there gives way to it.
    let set = &facts.plan.generator;
    if set.bonding_plug == Answer::Known(true) && set.bonding_plug_in.is_none() && !bonding_plug_fits(facts) {
        found.add(Signal::Caution, vec![], values([]), "bonding-plug", values([]));
    }
    let on_loose = loose(facts);
    without_socket(facts, &on_loose, found);
    of_unknown_shape(facts, &on_loose, found);
}

/// Reports the parts that nobody can use until their shape is known. If a load must run from one, it is a warning and
/// names the load.
fn of_unknown_shape(facts: &Facts<'_>, on_loose: &[(Id, Vec<Id>)], found: &mut Findings<'_>) {
    for it in facts.plan.of_unknown_shape() {
        let needed = on_loose.iter().find(|(place, _)| place == it.part).map(|(_, loads)| loads);
        let signal = if needed.is_some() { Signal::Warning } else { Signal::Caution };
        let about = std::iter::once(it.part).chain(needed.into_iter().flatten());
        let of = match (it.plug, it.outlets) {
            (Some(_), None) => "plug",
            (None, Some(_)) => "outlets",
            _ => "both",
        };
        let of = values([("of", Value::Name(of.to_owned()))]);
        found.add(signal, about.cloned().collect(), of, "unknown", values([]));
    }
}

/// Reports parts that are plugged into nothing, or into a socket that is not there.
fn without_socket(facts: &Facts<'_>, on_loose: &[(Id, Vec<Id>)], found: &mut Findings<'_>) {
    let unknown = |place: &Id| facts.plan.of_unknown_shape().any(|it| it.part == place);
    for (place, about) in on_loose.iter().filter(|(place, _)| !unknown(place)).cloned() {
        if let Some(wrong) = unusable(facts, &place) {
            found.add(Signal::Warning, about, wrong, "unusable", values([]));
            continue;
        }
        let sockets = free_for_parts(facts, std::slice::from_ref(&place));
        let inside = facts.plan.camper(&place).is_some();
        let adapter = adapted(facts, &place);
        let place = Value::Parts(vec![place]);
        let mut free = free_values(sockets, free_for_all(facts, &about));
        free.insert("inside", Value::yes_no(inside));
        free.extend(adapter);
        found.add(Signal::Warning, about, values([("place", place)]), "loose", free);
    }
    for (place, about) in lost(facts) {
        let about = told_apart(facts, about, Signal::Danger, found);
        if about.is_empty() {
            continue;
        }
        // Three-way cords with a GFCI exist in household shapes only. A bonding plug at the end of one would blind it.
        let household = facts.supply.receptacle(&place).is_some_and(|at| {
            let takes = |shape: Receptacle| shape.takes(Plug::BONDING);
            matches!(facts.supply.node(at).kind, NodeKind::Receptacle { shape, .. } if takes(shape))
                && !facts.verdicts.full_of_bonding_plug(at)
        });
        let household = Value::yes_no(household);
        let place = Value::Parts(vec![place]);
        let is_load = |id: &Id| facts.plan.load(id).is_some();
        let (loads, parts): (Vec<Id>, Vec<Id>) = about.iter().cloned().partition(is_load);
        let past = on_loose.iter().filter(|(part, _)| parts.contains(part));
        let past: Vec<Id> = past.flat_map(|(_, loads)| loads).cloned().collect();
        let sockets = match (loads.is_empty(), parts.is_empty()) {
            (false, true) => free_for_all(facts, &loads),
            (true, false) => free_for_parts(facts, &parts),
            _ => Vec::new(),
        };
        let others = if loads.is_empty() { free_for_all(facts, &past) } else { Vec::new() };
        let mut room = free_values(sockets, others);
        room.extend([("household", household), ("past", Value::Parts(past))]);
        found.add(Signal::Danger, about, values([("place", place)]), "lost", room);
    }
}

#[cfg(test)]
mod tests {
    use crate::report::{Signal, Value};
    use crate::rules::testing::{codes, findings};

    /// Returns what has no socket, and where.
    fn lost(edits: &[(&str, &str)]) -> Vec<(Vec<String>, Value)> {
        let found = findings(edits);
        let lost = found
            .iter()
            .filter(|found| found.code == "FIT001" && found.fix.key == "lost")
            .inspect(|found| assert_eq!(found.signal, Signal::Danger));
        lost.map(|found| {
            let about = found.about.iter().map(ToString::to_string).collect();
            (about, found.values["place"].clone())
        })
        .collect()
    }

    fn at(place: &str) -> Value {
        Value::Parts(vec![crate::plan::Id::new(place).expect("an id")])
    }

    /// A part of unknown shape is reported alone, and as a warning with the loads if any must run from it. It counts as
    /// plugged in nowhere.
    #[test]
    fn what_nobody_knows_the_shape_of_is_not_to_be_used() {
        let of = |word: &str| Value::Name(word.to_owned());
        let spare = "[[cord]]\nid = \"spare\"\nplug = \"5-15P\"\nends = \"unknown\"\n[[box]]";
        for (edit, part, signal, told) in [
            (("plug = \"L5-30P\" # long", "plug = \"unknown\""), "long", Signal::Warning, "plug"),
            (("inlet = \"L5-30P\" # box", "inlet = \"unknown\""), "box", Signal::Warning, "plug"),
            (("[[box]]", spare), "spare", Signal::Caution, "outlets"),
        ] {
            let report = crate::rules::testing::report(&[edit]);
            let found: Vec<_> = report.findings.iter().filter(|it| it.code == "FIT001").collect();
            let [found] = found[..] else { panic!("{found:?}") };
            assert_eq!((found.fix.key, found.about[0].as_str(), found.signal), ("unknown", part, signal));
            assert_eq!(found.values["of"], of(told));
            // The loads that must run from it are named with it.
            let needs = |load: &str| found.about.iter().any(|id| id.as_str() == load);
            assert_eq!(["kettle", "fan"].map(needs), [signal == Signal::Warning; 2], "{part}");
            assert!(found.guessed() && report.refused(&found.about[0]).is_some(), "{part}");
            let at = |look: &&crate::report::Look| look.at.as_ref() == Some(&found.about[0]);
            assert!(report.figures.looks.iter().any(|it| at(&it)), "{part} is looked at");
        }
    }

    /// No outlet takes the plug, or only one that gives nothing: a warning where somebody's health depends on the load,
    /// or might, a wish or not. What else has the same plug stays a caution.
    #[test]
    fn a_life_without_an_outlet_is_a_warning_and_the_rest_a_caution() {
        let free = [("on = \"left\" # kettle", ""), ("on = \"right\" # fan", "")];
        let plugs =
            [("plug = \"5-15P\" # kettle", "plug = \"L5-20P\""), ("plug = \"5-15P\" # fan", "plug = \"L5-20P\"")];
        let told = |edits: &[(&str, &str)]| -> Vec<(&'static str, Signal, Vec<String>)> {
            let found = findings(edits);
            let found = found.iter().filter(|it| it.code == "FIT001");
            found.map(|it| (it.fix.key, it.signal, it.about.iter().map(ToString::to_string).collect())).collect()
        };
        let (kettle, fan) = (vec!["kettle".to_owned()], vec!["fan".to_owned()]);
        let both = vec!["kettle".to_owned(), "fan".to_owned()];
        assert_eq!(told(&[&free[..], &plugs].concat()), [("load", Signal::Caution, both)]);
        for kind in ["kind = \"medical\"", "kind = \"unknown\""] {
            for wanted in ["must", "wish"] {
                let wanted = format!("wanted = \"{wanted}\"");
                let life = [("kind = \"electronic\" # fan", kind), ("wanted = \"must\" # fan", &*wanted)];
                let each = [("load", Signal::Warning, fan.clone()), ("load", Signal::Caution, kettle.clone())];
                assert_eq!(told(&[&free[..], &plugs, &life].concat()), each, "{kind} {wanted}");
            }
        }
        // The end of an adapter that brings 240 V takes its plug, and nothing else does.
        let trap = [
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("[[box]]", "[[cord]]\nid = \"trap\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [\"L5-20R\"]\n[[box]]"),
            ("kind = \"electronic\" # fan", "kind = \"medical\""),
        ];
        let each = [("dead", Signal::Warning, fan), ("dead", Signal::Caution, kettle)];
        assert_eq!(told(&[&free[..], &plugs, &trap].concat()), each);
    }

    /// The finding names the box, or the cord ahead of it. A wish gets no finding; a breathing aid does, required or
    /// not.
    #[test]
    fn what_must_run_on_a_part_that_is_plugged_into_nothing_is_told_once() {
        let loose = |edits: &[(&str, &str)]| -> Vec<(Signal, Vec<String>, Value)> {
            let found = findings(edits);
            let loose = found.iter().filter(|it| it.code == "FIT001" && it.fix.key == "loose");
            loose
                .map(|it| {
                    let about = it.about.iter().map(ToString::to_string).collect();
                    (it.signal, about, it.values["place"].clone())
                })
                .collect()
        };
        let both = vec!["kettle".to_owned(), "fan".to_owned()];
        let no_box = ("from = \"long\"\ninlet", "inlet");
        let no_cord = ("from = \"twist\"\nplug", "plug");
        assert_eq!(loose(&[no_box]), [(Signal::Warning, both.clone(), at("box"))]);
        assert_eq!(loose(&[no_cord]), [(Signal::Warning, both, at("long"))]);
        assert_eq!(loose(&[]), []);
        let wish = [
            no_box,
            ("wanted = \"must\" # kettle", "wanted = \"wish\""),
            ("wanted = \"must\" # fan", "wanted = \"wish\""),
        ];
        assert_eq!(loose(&wish), []);
        let medical = [wish[0], wish[1], wish[2], ("kind = \"electronic\" # fan", "kind = \"medical\"")];
        assert_eq!(loose(&medical), [(Signal::Warning, vec!["fan".to_owned()], at("box"))]);
        let reasons: Vec<&str> =
            crate::rules::testing::report(&[no_box]).figures.sharing.unplaced.iter().map(|it| it.reason).collect();
        assert_eq!(reasons, ["no-power"; 2]);
    }

    /// For a load on a detached part, or whose plug does not fit where the plan has it, the report names another free
    /// outlet, as the card and the answers do. Near miss: that outlet is taken.
    #[test]
    fn another_outlet_that_is_free_is_found_whatever_keeps_it_out() {
        let free = |edits: &[(&str, &str)]| -> Vec<String> {
            let report = crate::rules::testing::report(edits);
            let mut lost = report.figures.sharing.unplaced.iter();
            let lost = lost.find(|it| it.load.as_str() == "kettle").expect("no place");
            lost.free.iter().map(ToString::to_string).collect()
        };
        let no_box = ("from = \"long\"\ninlet", "inlet");
        let plug = ("plug = \"5-15P\" # kettle", "plug = \"5-20P\"");
        let fans = ("on = \"right\" # fan", "count = 2\non = \"front\"");
        assert_eq!(free(&[no_box]), ["front"]);
        assert_eq!(free(&[plug]), ["front"]);
        assert_eq!(free(&[no_box, fans]), [""; 0]);
        assert_eq!(free(&[plug, fans]), [""; 0]);
    }

    /// A 20 A plug at a 15 A end: the outlet takes it. If it has no place there either, no receptacle does.
    #[test]
    fn what_is_told_is_what_is_wrong() {
        let told = |edits: &[(&str, &str)]| -> Vec<(&'static str, Vec<String>)> {
            let found = findings(edits);
            let found = found.iter().filter(|it| it.code == "FIT001");
            found.map(|it| (it.fix.key, it.about.iter().map(ToString::to_string).collect())).collect()
        };
        let kettle = vec!["kettle".to_owned()];
        let plug = ("plug = \"5-15P\" # kettle", "plug = \"5-20P\"");
        assert_eq!(told(&[plug]), [("misplaced", kettle.clone())]);
        let found = findings(&[plug]);
        let found = found.iter().find(|it| it.code == "FIT001").expect("found");
        assert_eq!(found.values["place"], at("left"));
        assert_eq!(found.fix.values["others"], at("front"));
        let bare = ("gfci = true # front", "gfci = false");
        assert_eq!(told(&[plug, bare]), [("load", kettle.clone())]);
        // Taken: the plug fits there but has no socket.
        let fans = ("on = \"right\" # fan", "count = 2\non = \"front\"");
        assert_eq!(told(&[plug, fans]), [("misplaced", kettle)]);
        let found = findings(&[plug, fans]);
        let found = found.iter().find(|it| it.code == "FIT001").expect("found");
        assert_eq!(found.fix.values["others"], Value::Parts(vec![]));
    }

    #[test]
    fn two_boxes_in_one_receptacle_are_a_danger() {
        let second = (
            "[[load]]\nid = \"kettle\"",
            "[[box]]\nid = \"second\"\nfrom = \"long\"\ninlet = \"L5-30P\"\nlisted = true\nbond = false\n\
             [[box.outlet]]\nid = \"there\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = true\n\
             [[load]]\nid = \"kettle\"",
        );
        assert_eq!(lost(&[second]), [(vec!["second".to_owned()], at("long"))]);
        // From an outlet of its own.
        let own = (second.0, &*second.1.replace("\"long\"", "\"twist\""));
        let cord_elsewhere = ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\"");
        assert_eq!(lost(&[own, cord_elsewhere]), []);
    }

    /// One socket with a cord in it; and two sockets for three loads at once.
    #[test]
    fn a_load_where_every_socket_is_taken_is_a_danger() {
        let on_long = ("on = \"left\" # kettle", "on = \"long\"");
        let plug = ("plug = \"5-15P\" # kettle", "plug = \"L5-30P\"");
        assert_eq!(lost(&[plug, on_long]), [(vec!["kettle".to_owned()], at("long"))]);
        let three = |hours: &str| {
            let count = format!("count = 2\nhours = [{hours}]");
            lost(&[("on = \"right\" # fan", "on = \"left\""), ("hours = [\"18:30-19:00\"]", &count)])
        };
        assert_eq!(three("\"18:30-19:00\"").len(), 1);
        // One after the other in the same socket.
        assert_eq!(three("\"16:00-17:00\""), []);
    }

    /// For a household outlet there are three-way cords; for a twist-lock one there are none with a GFCI.
    #[test]
    fn room_is_made_with_a_cord_that_exists() {
        let told = |edits: &[(&str, &str)]| -> Value {
            let found = findings(edits);
            let found = found.iter().find(|it| it.code == "FIT001" && it.fix.key == "lost");
            found.expect("found").fix.values["household"].clone()
        };
        let twist = [("plug = \"5-15P\" # kettle", "plug = \"L5-30P\""), ("on = \"left\" # kettle", "on = \"long\"")];
        let front =
            [("on = \"left\" # kettle", "on = \"front\""), ("on = \"right\" # fan", "count = 2\non = \"front\"")];
        assert_eq!(told(&twist), Value::Name("no".to_owned()));
        assert_eq!(told(&front), Value::Name("yes".to_owned()));
    }

    /// It is reported once, and not as a plug that nothing takes.
    #[test]
    fn what_is_crowded_out_is_told_once() {
        let edits = [
            ("gfci = false # twist", "gfci = true"),
            ("plug = \"5-15P\" # kettle", "plug = \"L5-30P\""),
            ("on = \"left\" # kettle", "on = \"long\""),
        ];
        let of_fit: Vec<_> = codes(&edits).into_iter().filter(|code| code.starts_with("FIT")).collect();
        assert_eq!(of_fit, ["FIT001"]);
    }

    /// For a box whose plug does not fit, what must run from it is reported as one trouble with the box. A wish is not.
    #[test]
    fn what_must_run_on_a_part_that_does_not_fit_is_told() {
        let misfit = ("inlet = \"L5-30P\" # box", "inlet = \"TT-30P\"");
        let wish = ("wanted = \"must\" # kettle", "wanted = \"wish\"");
        for (edits, about) in [(vec![misfit], vec!["kettle", "fan"]), (vec![misfit, wish], vec!["fan"])] {
            let report = crate::rules::testing::report(&edits);
            let told = |key| {
                let mut found = report.findings.iter().enumerate();
                found.find(|(_, it)| it.code == "FIT001" && it.fix.key == key).expect("it is told")
            };
            let ((part, _), (loose, found)) = (told("part"), told("loose"));
            let ids: Vec<_> = found.about.iter().map(crate::plan::Id::as_str).collect();
            assert_eq!((found.signal, ids), (Signal::Warning, about));
            let mut troubles = report.figures.troubles.iter();
            let both = |of: &[usize]| of.contains(&part) && of.contains(&loose);
            assert!(troubles.any(|trouble| both(&trouble.findings)));
        }
    }

    /// A camper plug fits no outlet of the generator. The adapter sold for it is named, for a box that is plugged into
    /// nothing and for one that the plan puts there. Near miss: a breaker larger than the adapter's plug rating, or
    /// unknown.
    #[test]
    fn an_adapter_that_is_sold_is_named() {
        let words = crate::words::Words::english();
        let no_cord = ("from = \"twist\"\nplug", "plug");
        let protected = ("gfci = false # twist", "gfci = true");
        for (from, key) in [("", "loose"), ("from = \"twist\"\n", "part")] {
            for (breaker, named) in [("30 A", true), ("50 A", false), ("unknown", false)] {
                let inlet = format!("{from}inlet = \"TT-30P\"");
                let breaker = format!("breaker = \"{breaker}\"");
                let found = findings(&[
                    no_cord,
                    protected,
                    ("from = \"long\"\ninlet = \"L5-30P\"", &inlet),
                    ("breaker = \"30 A\" # twist", &breaker),
                ]);
                let told = found.iter().filter(|it| it.code == "FIT001" && it.fix.key == key);
                let fixes: Vec<String> = told.map(|it| words.finding(it, &[]).fix).collect();
                let adapter = "into “twist” with a listed adapter (L5-30P to TT-30R)";
                assert!(!fixes.is_empty() && fixes.iter().any(|fix| fix.contains(adapter)) == named, "{fixes:?}");
            }
        }
    }

    /// For a box that is plugged into nothing, or has no socket, and the kettle on it, an outlet that takes either and
    /// has a socket left is named. Near miss: that outlet is taken, or has another shape.
    #[test]
    fn a_free_outlet_that_fits_is_named() {
        let words = crate::words::Words::english();
        let fixes = |edits: &[(&str, &str)]| -> Vec<String> {
            let found = findings(edits);
            let told = found.iter().filter(|it| it.code == "FIT001" && matches!(it.fix.key, "loose" | "lost"));
            told.map(|it| words.finding(it, &[]).fix).collect()
        };
        let no_box = ("from = \"long\"\ninlet", "inlet");
        let fan = ("wanted = \"must\" # fan", "wanted = \"wish\"");
        let told = fixes(&[no_box, fan]);
        assert_eq!(told.len(), 1, "{told:?}");
        assert!(told[0].contains("Plug “box” into “long”, or plug “kettle” into “front”."), "{told:?}");
        // The end of the cord and the front outlet are taken.
        let other = (
            "[[box]]",
            "[[cord]]\nid = \"other\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
             wire = \"12 AWG\"\nconductors = 3\nlength = \"10 ft\"\noutdoor = true\ncoiled = false\n\
             [[box]]\nid = \"more\"\nfrom = \"long\"\ninlet = \"L5-30P\"\nlisted = true\nbond = false\n\
             [[box.outlet]]\nid = \"six\"\nshape = \"6-20R\"\nbreaker = \"20 A\"\n[[box]]",
        );
        let one = ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\"");
        let told = fixes(&[no_box, fan, other, one]);
        assert!(told.iter().any(|fix| fix.contains("into an outlet where it fits")), "{told:?}");
        assert!(told.iter().all(|fix| !fix.contains("into “front”")), "{told:?}");
        // Two boxes at one end.
        let second = (
            "[[box]]",
            "[[box]]\nid = \"more\"\nfrom = \"long\"\ninlet = \"L5-30P\"\nlisted = true\nbond = false\n\
             [[box.outlet]]\nid = \"six\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = true\n[[box]]",
        );
        // Too much in a household outlet, and a box with room; then a box with no outlet of that shape.
        let three =
            [("on = \"right\" # fan", "count = 2\non = \"front\""), ("on = \"left\" # kettle", "on = \"front\"")];
        let told = fixes(&three);
        assert!(told.iter().any(|fix| fix.contains("use “left” or “right”")), "{told:?}");
        let lock =
            [("shape = \"5-15R\" # left", "shape = \"L5-20R\""), ("shape = \"5-15R\" # right", "shape = \"L5-20R\"")];
        let told = fixes(&[&three[..], &lock].concat());
        assert!(told.iter().any(|fix| fix.contains("three-way cord")), "{told:?}");
        let told = fixes(&[second, fan]);
        let lost = "If it has no room there, plug “kettle” into ";
        assert!(told.iter().any(|fix| fix.contains(lost)), "{told:?}");
    }
}

#![doc = include_str!("../../../i18n/en/explain/OVER006.md")]

use std::cmp::Reverse;

use crate::plan::{Id, Leg};
use crate::quantity::Current;
use crate::rules::demand::{Beside, Need, beside, busiest, ids, once, planned, when};
use crate::rules::halves::Halves;
use crate::rules::prelude::*;
use crate::supply::{LimitReason, Node, NodeIx, NodeKind};

use crate::verdict::own_limit;

pub(super) const RULE: Rule = Rule {
    code: "OVER006",
    name: "breaker-overloaded",
    area: "overcurrent",
    worst: Signal::Warning,
    sources: &[cite::PRACTICE],
    fixes: &["turns", "turns-only", "hours", "leg-look", "leg-cord", "life-off", "life-turns", "life-apart"],
    check,
    #[cfg(test)]
    fires: &[
        // 20.4 A on 20 A, behind a cord that carries 10 A if it is coiled. Laid out, it carries 30 A.
        &[
            ON_LEFT,
            ("running = \"50 W\"", "running = \"950 W\""),
            ("shape = \"5-15R\" # left", "shape = \"5-20R\""),
            ("breaker = \"15 A\" # left", "breaker = \"20 A\""),
            ("wire = \"14 AWG\" # left", "wire = \"12 AWG\""),
            ("coiled = false", "coiled = \"unknown\""),
        ],
        // 12.5 A and 2.9 A on 15 A.
        &[ON_LEFT, ("running = \"50 W\"", "running = \"350 W\"")],
        // No other outlet may be used.
        &[
            ON_LEFT,
            ("running = \"50 W\"", "running = \"350 W\""),
            ("gfci = true # front", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ],
        // The plan gives no hours.
        &[
            ON_LEFT,
            ("running = \"50 W\"", "running = \"350 W\""),
            ("hours = [\"18:00-23:00\"]", ""),
            ("hours = [\"18:30-19:00\"]", ""),
        ],
        // On the two ends of a four-contact cord, whose halves nobody knows.
        &ON_ENDS,
        // The same on two outlets of a box.
        &IN_BOX,
        // The fan is a breathing aid: beside a kettle, beside two kettles, and two fans.
        &[ON_LEFT, LIFE, ("running = \"50 W\"", "running = \"350 W\"")],
        &[
            ON_LEFT,
            LIFE,
            ("running = \"1500 W\"", "count = 2\nrunning = \"900 W\""),
            ("shape = \"5-15R\" # left", "shape = \"5-15R\"\nsockets = 3"),
        ],
        &[
            ON_LEFT,
            LIFE,
            ("running = \"50 W\"", "count = 2\nrunning = \"1000 W\""),
            ("on = \"left\" # kettle", "on = \"right\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        // 12.5 A and 2.5 A on 15 A.
        &[ON_LEFT, ("running = \"50 W\"", "running = \"300 W\"")],
        // At different hours.
        &[
            ON_LEFT,
            ("running = \"50 W\"", "running = \"350 W\""),
            ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-23:00\"]"),
        ],
        // On separate breakers.
        &[("running = \"50 W\"", "running = \"350 W\"")],
        // 12.5 A and 7.5 A, on both halves or on one.
        &[
            ON_ENDS[0],
            ON_ENDS[1],
            ON_ENDS[2],
            ON_ENDS[3],
            ON_ENDS[4],
            ON_ENDS[5],
            ON_ENDS[6],
            ON_ENDS[7],
            ON_ENDS[8],
            ON_ENDS[9],
            ("running = \"50 W\"", "running = \"900 W\""),
        ],
    ],
};

/// 12.5 A and 10 A on 20 A for each half, at the two ends of a cord.
#[cfg(test)]
const ON_ENDS: [(&str, &str); 11] = [
    ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
    ("rated = \"3600 W\"", "rated = \"6000 W\""),
    ("peak = \"4500 W\"", "peak = \"7000 W\""),
    ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"L14-20R\"\nbreaker = \"20 A\""),
    ("gfci = false # twist", "gfci = true"),
    ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"] # long", "plug = \"L14-20P\"\nends = [\"5-20R\", \"5-20R\"]"),
    ("from = \"long\"\n", ""),
    ("on = \"left\" # kettle", "on = \"long.1\""),
    ("on = \"right\" # fan", "on = \"long.2\""),
    ("conductors = 3 # long", "conductors = 4"),
    ("running = \"50 W\"", "running = \"1200 W\""),
];

/// The same on two outlets of a box.
#[cfg(test)]
const IN_BOX: [(&str, &str); 9] = [
    ON_ENDS[0],
    ON_ENDS[1],
    ON_ENDS[2],
    ON_ENDS[3],
    ON_ENDS[4],
    ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"] # long", "plug = \"L14-20P\"\nends = [\"L14-20R\"]"),
    ON_ENDS[9],
    ("inlet = \"L5-30P\"", "inlet = \"L14-20P\""),
    ON_ENDS[10],
];

#[cfg(test)]
const ON_LEFT: (&str, &str) = ("on = \"right\" # fan", "on = \"left\"");

/// An edit that makes the fan a breathing aid.
#[cfg(test)]
const LIFE: (&str, &str) = ("kind = \"electronic\" # fan", "kind = \"medical\"");

/// Parts on one path that are overloaded by loads on at the same time.
#[derive(Clone, Debug)]
pub(in crate::rules) struct Overload<'a> {
    /// The part with the lowest limit comes first. Of several equal ones it is one that trips, which spares the others,
    /// and of these the one nearest the generator.
    pub parts: Vec<NodeIx>,
    /// The loads on then, on the busier leg.
    on: Vec<Need<'a>>,
    minute: u16,
    demand: Current,
    /// The limit of the first part.
    limit: Current,
    /// Whether loads that must run and cannot wait are enough to overload it.
    musts: bool,
    /// How many loads are plugged in beyond the first part.
    beyond: usize,
    /// The key for how to find out the halves of the generator, if it rests on assumed ones.
    halves: Option<&'static str>,
}

impl<'a> Overload<'a> {
    /// Returns the overload of a part by these loads in the worst minute; `None` if they fit.
    fn of(facts: &Facts<'a>, part: NodeIx, these: &[Need<'a>], musts: bool) -> Option<Self> {
        let limit = facts.supply.node(part).rating;
        let busiest = busiest(these, |on| facts.worst_leg(on));
        let legs = [Leg::A, Leg::B].map(|leg| facts.those_on_leg(&busiest.on, leg));
        let sum = |on: &[Need<'_>]| facts.amps_of(on);
        let on = legs.into_iter().rev().max_by_key(|on| sum(on))?;
        let demand = sum(&on);
        // On a part with one leg they are together anyway.
        let both = facts.supply.node(part).legs.all().len() > 1;
        let halves = || {
            let halves = Halves::of(facts, &busiest.on);
            // Milliamperes times millivolts are microwatts; a thousandth of that is milliwatts.
            let holds = limit.milliamps() * facts.supply.volts.millivolts() / 1000;
            let spread = halves.least().is_none_or(|least| least <= holds);
            (both && spread).then(|| halves.assumed()).flatten()
        };
        (demand > limit).then(|| Self {
            halves: halves(),
            parts: vec![part],
            on,
            minute: busiest.minute,
            demand,
            limit,
            musts,
            beyond: these.len(),
        })
    }
}

/// Whether this rule judges the part. Other rules report the generator, cords, and parts that give nothing.
fn is_judged(facts: &Facts<'_>, part: NodeIx) -> bool {
    let node = facts.supply.node(part);
    node.kind != NodeKind::Source
        && !node.kind.is_cord()
        && node.reason != LimitReason::NotFed
        && own_limit(facts.plan, facts.supply).is_none_or(|own| !own.spares(node.rating))
}

/// Returns every overloaded part, with parts on one path grouped if the same loads overload them.
pub(in crate::rules) fn overloads<'a>(facts: &Facts<'a>) -> Vec<Overload<'a>> {
    let mut list: Vec<Overload<'a>> = Vec::new();
    // A load that is too much alone is no better in turns; rule FIT004 reports it.
    let alone = |need: &Need<'_>| {
        let mut way = need.at.into_iter().flat_map(|at| facts.supply.up(at));
        way.any(|(ix, node)| is_judged(facts, ix) && need.amps() > node.rating)
    };
    // Farthest from the generator first.
    for at in (0..facts.supply.nodes.len()).rev() {
        let part = NodeIx(at);
        if !is_judged(facts, part) {
            continue;
        }
        let limit = facts.supply.node(part).rating;
        let all = facts.placed_through(part);
        // No minute can exceed all of them at once.
        if facts.worst_leg(all) <= limit {
            continue;
        }
        let mut through = all.to_vec();
        through.retain(|need| !alone(need));
        let mut waits_for_nothing = through.clone();
        waits_for_nothing.retain(Need::cannot_wait);
        let Some(mut over) =
            Overload::of(facts, part, &waits_for_nothing, true).or_else(|| Overload::of(facts, part, &through, false))
        else {
            continue;
        };
        over.beyond = through.len();
        let beyond = |known: &Overload<'_>| {
            let part_of = known.parts[0];
            facts.supply.up(part_of).any(|(ix, _)| ix == part)
        };
        // How much the parts beyond are overloaded. It may explain this overload too.
        let below: Vec<usize> = (0..list.len()).filter(|known| beyond(&list[*known])).collect();
        let excess: Current = below.iter().map(|known| list[*known].demand - list[*known].limit).sum();
        let same = below.iter().find(|known| list[**known].beyond == over.beyond);
        let explained = over.demand - excess <= limit;
        match same.or_else(|| below.first().filter(|_| explained)) {
            Some(known) if list[*known].musts || !over.musts => {
                let known = &mut list[*known];
                let trips = |it: &Overload<'_>| facts.supply.node(it.parts[0]).reason.enforced();
                let first = over.limit < known.limit || over.limit == known.limit && trips(&over) >= trips(known);
                if known.beyond == over.beyond && first {
                    over.parts.append(&mut known.parts);
                    over.musts |= known.musts;
                    *known = over;
                } else {
                    known.parts.push(part);
                }
            }
            _ => list.push(over),
        }
    }
    list.reverse();
    list
}

/// Returns the word for what stops the overload, if anything.
fn acts(facts: &Facts<'_>, over: &Overload<'_>) -> &'static str {
    let breakers = || {
        let way = facts.supply.up(over.parts[0]).map(|(_, node)| node);
        way.filter(|node| matches!(node.kind, NodeKind::Breaker { .. }))
    };
    let trips = breakers().filter_map(Node::acts_past).min();
    let early = |node: &Node| node.reason == LimitReason::TripsEarly && node.rating < over.demand;
    let is_breaker = matches!(facts.supply.node(over.parts[0]).kind, NodeKind::Breaker { .. });
    match trips.filter(|trips| *trips < over.demand) {
        Some(trips) if is_breaker || trips <= over.limit => "overload-trips",
        Some(_) => "overload-late",
        None if breakers().any(early) => "overload-early",
        None => "overload-hot",
    }
}

/// Whether another receptacle takes a load's plug, may be used, and is behind none of these parts.
fn elsewhere(facts: &Facts<'_>, over: &Overload<'_>, load: &Id) -> bool {
    let load = facts.plan.load(load);
    let plug = load.filter(|it| facts.plan.around(it).is_none()).map(|it| it.plug);
    facts.supply.receptacles().any(|(at, _, shape, _)| {
        let takes = plug.is_some_and(|plug| plug.known().is_none_or(|plug| shape.takes(*plug)));
        takes && facts.open(at) && facts.supply.up(at).all(|(ix, _)| !over.parts.contains(&ix))
    })
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    for over in facts.overloads() {
        let mut on = over.on.clone();
        on.sort_by_key(|need| Reverse(need.amps()));
        let loads = ids(&on);
        let Some(largest) = loads.first().cloned() else {
            continue;
        };
        let mut shown = values([
            ("demand", over.demand.into()),
            ("limit", over.limit.into()),
            ("over", (over.demand - over.limit).into()),
            ("what", Value::Word { word: acts(facts, over) }),
            ("planned", planned(over.on.iter().map(|need| need.load))),
            ("half", Value::Name(over.halves.map_or("known", |_| "assumed").to_owned())),
        ]);
        shown.extend(when(over.minute, &over.on));
        let mut remedy = values([]);
        let fits = |on: &[Need<'_>]| facts.worst_leg(on) <= over.limit;
        let fix = match beside(&over.on, fits) {
            Beside::Nothing if over.halves.is_some() => over.halves.unwrap_or("turns-only"),
            Beside::Nothing if over.on.iter().all(Need::any_time) => "hours",
            Beside::Nothing if elsewhere(facts, over, &largest) => {
                remedy.insert("largest", (&largest).into());
                "turns"
            }
            Beside::Nothing => "turns-only",
            Beside::TooMuch(life) => {
                shown.insert("life", Value::Parts(life));
                "life-apart"
            }
            Beside::Off { life, off } => {
                let fix = if off.is_empty() { "life-turns" } else { "life-off" };
                shown.insert("life", Value::Parts(life));
                remedy.insert("off", Value::Parts(off));
                fix
            }
        };
        shown.insert("loads", Value::Parts(loads.clone()));
        let mut about: Vec<Id> = once(over.parts.iter().map(|part| &facts.supply.node(*part).id));
        about.extend(loads);
        let signal = if over.musts { Signal::Warning } else { Signal::Caution };
        found.add(signal, about, shown, fix, remedy);
    }
}

#[cfg(test)]
mod tests {
    use super::{LIFE, ON_LEFT};
    use crate::quantity::Current;
    use crate::report::{Finding, Signal, Value};
    use crate::rules::testing::{findings, report};

    fn found(edits: &[(&str, &str)]) -> Vec<Finding> {
        let mut found = findings(edits);
        found.retain(|finding| finding.code == "OVER006");
        found
    }

    fn amps(milliamps: i64) -> Value {
        Current::from_milliamps(milliamps).into()
    }

    fn about(finding: &Finding) -> Vec<&str> {
        finding.about.iter().map(crate::plan::Id::as_str).collect()
    }

    /// For loads without a place in the plan, the words say what they would draw.
    #[test]
    fn what_is_not_planned_is_told_with_an_if() {
        let words = crate::words::Words::english();
        let told = |edits: &[(&str, &str)]| {
            let report = report(edits);
            let found = report.findings.iter().find(|it| it.code == "OVER006").expect("found");
            words.finding(found, &report.figures.loads).why
        };
        let most = ("running = \"50 W\"", "running = \"350 W\"");
        assert!(told(&[ON_LEFT, most]).starts_with("At "));
        let one = [
            ("from = \"twist\"\nplug", "plug"),
            ("running = \"50 W\"", "running = \"1200 W\""),
            ("on = \"left\" # kettle", ""),
            ("on = \"right\" # fan", "on = \"front\""),
        ];
        assert!(told(&one).starts_with("If all of these are plugged in there"));
    }

    /// Edits that put both loads on the generator's 20 A outlet.
    const AT_FRONT: [(&str, &str); 2] =
        [("on = \"left\" # kettle", "on = \"front\""), ("on = \"right\" # fan", "on = \"front\"")];

    fn word(finding: &Finding) -> &'static str {
        match finding.values["what"] {
            Value::Word { word } => word,
            _ => panic!("what is no word"),
        }
    }

    /// 12.5 A and 10 A on 20 A are too much; 12.5 A and 7.5 A are exactly 20 A.
    #[test]
    fn two_at_once_on_one_breaker_are_a_warning() {
        let on_front = |watts| {
            let watts = format!("running = \"{watts} W\"");
            found(&[AT_FRONT[0], AT_FRONT[1], ("running = \"50 W\"", watts.as_str())])
        };
        let [over] = &on_front(1200)[..] else { panic!("one finding") };
        assert_eq!((over.signal, over.fix.key), (Signal::Warning, "turns"));
        for (name, milliamps) in [("demand", 22_500), ("limit", 20_000), ("over", 2_500)] {
            assert_eq!(over.values[name], amps(milliamps), "{name}");
        }
        assert_eq!((about(over), word(over)), (vec!["front", "kettle", "fan"], "overload-trips"));
        assert_eq!(on_front(900), []);
    }

    /// The ends of a 15 A cord on a 20 A breaker, which stops more than 20 A, but not in time for the cord. Near miss:
    /// a 15 A breaker.
    #[test]
    fn a_larger_breaker_trips_too_late() {
        let on_cord = |breaker: &str, watts: i64| {
            let watts = format!("running = \"{watts} W\"");
            let found = found(&[
                (
                    "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"] # long",
                    "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]",
                ),
                ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"long\"\ninlet = \"5-15P\""),
                ("breaker = \"20 A\" # front", breaker),
                ("running = \"50 W\"", watts.as_str()),
            ]);
            found.iter().map(word).collect::<Vec<_>>()
        };
        assert_eq!(on_cord("breaker = \"20 A\"", 1400), ["overload-late"]);
        assert_eq!(on_cord("breaker = \"20 A\"", 600), ["overload-hot"]);
        assert_eq!(on_cord("breaker = \"15 A\"", 600), ["overload-trips"]);
    }

    /// The same breaker trips at 17 A, so 16 A count: 12.5 A and 3.6 A are too much, 12.5 A and 3.5 A are not.
    #[test]
    fn a_breaker_that_trips_early_holds_no_more_than_that() {
        let early = ("breaker = \"20 A\" # front", "breaker = \"20 A\"\ntrips_at = \"17 A\"");
        for (watts, seen) in [(430, true), (420, false)] {
            let watts = format!("running = \"{watts} W\"");
            let found = found(&[AT_FRONT[0], AT_FRONT[1], early, ("running = \"50 W\"", watts.as_str())]);
            let words: Vec<_> = found.iter().map(word).collect();
            let expected = if seen { vec!["overload-early"] } else { vec![] };
            assert_eq!(words, expected, "{watts}");
        }
    }

    /// 12.5 A each on a breaker that trips at 11 A are too much even in turns, so only rule FIT004 reports them. If it
    /// trips at 14 A, 13 A count: each may run, but not both.
    #[test]
    fn what_turns_do_not_help_is_not_told_to_take_turns() {
        let told = |trips: &str| -> Vec<&str> {
            let trips = format!("breaker = \"20 A\"\ntrips_at = \"{trips}\"");
            let edits = [
                AT_FRONT[0],
                AT_FRONT[1],
                ("breaker = \"20 A\" # front", trips.as_str()),
                ("running = \"50 W\"", "running = \"1500 W\""),
            ];
            let told = findings(&edits).iter().map(|it| it.code).collect::<Vec<_>>();
            told.into_iter().filter(|code| ["OVER006", "FIT004"].contains(code)).collect()
        };
        assert_eq!(told("11 A"), ["FIT004"; 2]);
        assert_eq!(told("14 A"), ["OVER006"]);
    }

    /// Two kettles at two receptacles on one 20 A breaker.
    #[test]
    fn what_shares_a_breaker_adds_up() {
        let shared = |right: &str| {
            let breaker = format!("{right}\ngfci = true # right");
            found(&[
                ("breaker = \"15 A\" # left", "breaker = \"20 A\""),
                ("wire = \"14 AWG\" # left", "wire = \"12 AWG\""),
                ("breaker = \"15 A\" # right\ngfci = true # right", breaker.as_str()),
                ("wire = \"14 AWG\" # right", "wire = \"12 AWG\""),
                ("running = \"50 W\"", "running = \"1500 W\""),
            ])
        };
        let [over] = &shared("shares = \"left\"")[..] else { panic!("one finding") };
        assert_eq!(over.signal, Signal::Warning);
        assert_eq!((&over.values["demand"], &over.values["limit"]), (&amps(25_000), &amps(20_000)));
        assert_eq!(about(over), ["left", "kettle", "fan"]);
        assert_eq!(shared("breaker = \"20 A\""), []);
    }

    /// A shared breaker of unknown rating passes no more than the smaller of its receptacles is rated for: 12.5 A and
    /// 4.2 A are too much together, but not on separate breakers.
    #[test]
    fn what_shares_a_breaker_that_nobody_read_adds_up() {
        let boxed = |right: &str| {
            let right = format!("{right}\ngfci = true # right");
            found(&[
                ("breaker = \"30 A\" # twist", "breaker = \"20 A\""),
                ("breaker = \"15 A\" # left", "breaker = \"unknown\""),
                ("wire = \"14 AWG\" # left", "wire = \"12 AWG\""),
                ("wire = \"14 AWG\" # right", "wire = \"12 AWG\""),
                ("breaker = \"15 A\" # right\ngfci = true # right", right.as_str()),
                ("running = \"50 W\"", "running = \"500 W\""),
            ])
        };
        let [over] = &boxed("shares = \"left\"")[..] else { panic!("one finding") };
        assert_eq!((&over.values["demand"], &over.values["limit"]), (&amps(16_667), &amps(15_000)));
        assert_eq!((about(over), word(over)), (vec!["left", "kettle", "fan"], "overload-hot"));
        assert_eq!(boxed("breaker = \"unknown\""), []);
    }

    /// Four loads of 6 A on a 20 A outlet with four sockets.
    #[test]
    fn four_of_a_kind_count_four_times() {
        for (count, seen) in [(3, false), (4, true)] {
            let running = format!("count = {count}\ncurrent = \"6 A\"");
            let found = found(&[
                ("breaker = \"20 A\" # front", "sockets = 4\nbreaker = \"20 A\""),
                ("on = \"left\" # kettle", "on = \"front\""),
                ("running = \"1500 W\"\npower_factor = 1.0", running.as_str()),
            ]);
            assert_eq!(found.len(), usize::from(seen), "{count}: {found:?}");
            assert!(found.iter().all(|over| over.values["demand"] == amps(24_000)));
        }
    }

    /// 15 A receptacles on a 20 A breaker: at 16 A nothing trips, and at 20.8 A not in time.
    #[test]
    fn a_receptacle_gets_hot_where_no_breaker_is_small_enough() {
        let on_left = |watts| {
            let watts = format!("running = \"{watts} W\"");
            found(&[
                ON_LEFT,
                ("breaker = \"15 A\" # left", "breaker = \"20 A\""),
                ("wire = \"14 AWG\" # left", "wire = \"12 AWG\""),
                ("running = \"50 W\"", watts.as_str()),
            ])
        };
        for (watts, expected) in [(300, None), (420, Some("overload-hot")), (1000, Some("overload-late"))] {
            let found = on_left(watts);
            assert_eq!(found.first().map(word), expected, "{watts}");
            assert!(found.iter().all(|over| over.values["limit"] == amps(15_000)), "{watts}");
        }
    }

    /// 15.4 A on a 15 A branch, with 15 A on the other, also overload the 30 A upstream: one remedy.
    #[test]
    fn what_is_too_much_only_by_what_is_too_much_beyond_is_not_told_again() {
        let more = |watts| {
            let load = format!(
                "[[load]]\nid = \"grill\"\nname = \"Grill\"\nkind = \"heater\"\nrunning = \"{watts} W\"\n\
                 continuous = false\nhours = [\"18:30-19:00\"]\nplug = \"5-15P\"\non = \"right\"\n[[load]]\nid = \"fan\""
            );
            found(&[
                ("rated = \"3600 W\"", "rated = \"6000 W\""),
                ("peak = \"4500 W\"", "peak = \"7000 W\""),
                ON_LEFT,
                ("running = \"50 W\"", "running = \"350 W\""),
                ("[[load]]\nid = \"fan\"", load.as_str()),
            ])
        };
        let one = more(1790);
        assert_eq!(one.len(), 1, "{one:#?}");
        assert_eq!(about(&one[0])[..4], ["left", "box", "long", "twist"]);
        // Neither branch is overloaded, but they add up to 30.1 A.
        let trunk = found(&[
            ("rated = \"3600 W\"", "rated = \"6000 W\""),
            ("peak = \"4500 W\"", "peak = \"7000 W\""),
            ("breaker = \"15 A\" # right", "breaker = \"20 A\""),
            ("shape = \"5-15R\" # right", "shape = \"5-20R\""),
            ("wire = \"14 AWG\" # right", "wire = \"12 AWG\""),
            ("running = \"1500 W\"", "running = \"1700 W\""),
            ("running = \"50 W\"", "running = \"1920 W\""),
            ("plug = \"5-15P\" # fan", "plug = \"5-20P\""),
        ]);
        assert_eq!(trunk.len(), 1, "{trunk:#?}");
        assert_eq!(trunk[0].values["limit"], amps(30_000));
    }

    /// A wish can wait, and so can a load without hours that does not run for long.
    #[test]
    fn it_is_a_warning_only_where_nothing_can_wait() {
        const HEAVY: (&str, &str) = ("running = \"50 W\"", "running = \"350 W\"");
        let signal = |edits: &[(&str, &str)]| {
            let mut all = vec![ON_LEFT, HEAVY];
            all.extend_from_slice(edits);
            found(&all).first().map(|over| over.signal)
        };
        assert_eq!(signal(&[]), Some(Signal::Warning));
        let wish = ("wanted = \"must\" # kettle", "wanted = \"wish\"");
        assert_eq!(signal(&[wish]), Some(Signal::Caution));
        let no_hours = ("hours = [\"18:30-19:00\"]", "");
        assert_eq!(signal(&[wish, no_hours]), None);
        assert_eq!(signal(&[no_hours]), Some(Signal::Caution));
        // The kettle runs for long.
        assert_eq!(signal(&[no_hours, ("continuous = false # kettle", "continuous = true")]), Some(Signal::Warning));
    }

    /// A generator that cannot give 15 A does not overload a 15 A part. That it is too small is reported once.
    #[test]
    fn what_the_generator_cannot_overload_is_not_found() {
        let small = [
            ON_LEFT,
            ("running = \"50 W\"", "running = \"350 W\""),
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1800 W\""),
            ("peak = \"4500 W\"", "peak = \"2400 W\""),
        ];
        assert_eq!(found(&small), []);
        assert!(findings(&small).iter().any(|found| found.code == "POWER001"));
        assert_eq!(found(&small[..2]).len(), 1);
    }

    /// What this rule reports as too much together, the card lists under never together.
    #[test]
    fn the_card_says_the_same() {
        for edits in super::RULE.fires {
            let report = report(edits);
            for finding in report.findings.iter().filter(|found| found.code == "OVER006") {
                let Value::Parts(loads) = &finding.values["loads"] else { panic!("loads are parts") };
                let of = |id: &crate::plan::Id| {
                    let facts = report.figures.loads.iter().find(|load| load.id == *id);
                    facts.is_some_and(|facts| loads.contains(&facts.of))
                };
                let sharing = &report.figures.sharing;
                assert!(sharing.never.iter().any(|set| set.iter().all(of)), "{edits:?}");
            }
        }
    }

    /// The plan can give the half of an outlet, but not of a cord end. Near misses: the plan puts both on one half, and
    /// loads that are too much however they are spread.
    #[test]
    fn a_half_that_was_assumed_is_no_fact() {
        let told = |edits: &[(&str, &str)]| -> Vec<(&'static str, Value)> {
            let found = found(edits).into_iter();
            found.map(|it| (it.fix.key, it.values["half"].clone())).collect()
        };
        let half = |word: &str| Value::Name(word.to_owned());
        assert_eq!(told(&super::ON_ENDS), [("leg-cord", half("assumed"))]);
        assert_eq!(told(&super::IN_BOX), [("leg-look", half("assumed"))]);
        let mut known = super::IN_BOX.to_vec();
        known.push(("breaker = \"15 A\" # left", "breaker = \"15 A\"\nleg = \"A\""));
        known.push(("breaker = \"15 A\" # right", "breaker = \"15 A\"\nleg = \"A\""));
        let found = told(&known);
        assert!(found.len() == 1 && found[0].1 == half("known"), "{found:?}");
        // 12.5 A and twice 10.5 A: two of the three are on one half in any case.
        let outlet = "[[box.outlet]]\nid = \"third\"\nshape = \"5-15R\"\nbreaker = \"15 A\"\ngfci = true\nwire = \"14 AWG\"\n\
                      [[load]]\nid = \"kettle\"";
        let grill = "[[load]]\nid = \"grill\"\nname = \"Grill\"\nkind = \"heater\"\nrunning = \"1260 W\"\n\
                     continuous = false\nhours = [\"18:30-19:00\"]\nplug = \"5-15P\"\non = \"third\"\n[[load]]\nid = \"fan\"";
        let mut three = super::IN_BOX.to_vec();
        three[8] = ("running = \"50 W\"", "running = \"1260 W\"");
        three.push(("[[load]]\nid = \"kettle\"", outlet));
        three.push(("[[load]]\nid = \"fan\"", grill));
        let found = told(&three);
        assert!(found.len() == 1 && found[0].1 == half("known"), "{found:?}");
        let words = crate::words::Words::english();
        let title = |edits: &[(&str, &str)]| {
            let report = report(edits);
            let found = report.findings.iter().find(|it| it.code == "OVER006").expect("found");
            words.finding(found, &report.figures.loads).title
        };
        assert!(title(&super::ON_ENDS).contains("might"));
        assert!(!title(&known).contains("might"));
    }

    #[test]
    fn what_a_life_depends_on_comes_first() {
        let found = found(&[ON_LEFT, LIFE, ("running = \"50 W\"", "running = \"350 W\"")]);
        let id = |text| crate::plan::Id::new(text).expect("an id");
        assert_eq!(found[0].values["life"], Value::Parts(vec![id("fan")]));
        assert_eq!(found[0].fix.values["off"], Value::Parts(vec![id("kettle")]));
    }

    /// No move to another breaker is advised if no other outlet may be used: the box's other receptacle and the
    /// generator's own outlet have no GFCI, on wet ground.
    #[test]
    fn a_move_is_advised_only_where_there_is_a_place() {
        let both = [ON_LEFT, ("running = \"50 W\"", "running = \"350 W\"")];
        let bare = [("gfci = true # front", "gfci = false"), ("gfci = true # right", "gfci = false")];
        let fix = |edits: &[(&str, &str)]| found(edits)[0].fix.key;
        assert_eq!(fix(&both), "turns");
        assert_eq!(fix(&[both[0], both[1], bare[0]]), "turns");
        assert_eq!(fix(&[both[0], both[1], bare[0], bare[1]]), "turns-only");
    }
}

#![doc = include_str!("../../../i18n/en/explain/OVER002.md")]

use std::cmp::Reverse;
use std::collections::BTreeSet;

use crate::loads::CONTINUOUS_MINUTES;
use crate::plan::{Leg, Span};
use crate::quantity::{ApparentPower, Current};
use crate::rules::demand::{Busiest, Need, ids, minutes, when};
use crate::rules::prelude::*;
use crate::supply::{Node, NodeIx, NodeKind};

pub(super) const RULE: Rule = Rule {
    code: "OVER002",
    name: "continuous-over-80-percent",
    area: "overcurrent",
    worst: Signal::Warning,
    sources: &[cite::NEC_210_20, cite::NEC_210_21_B2],
    fixes: &["move", "rest", "life"],
    check,
    #[cfg(test)]
    fires: &[
        // 12.1 A on a 15 A breaker.
        &[("running = \"50 W\"", "running = \"1452 W\""), ("hours = [\"18:30-19:00\"]", "hours = [\"08:00-09:00\"]")],
        // 12.5 A for half an hour beside 2.5 A for hours: 15.6 A counted, on 15 A.
        &[("running = \"50 W\"", "running = \"300 W\""), ("on = \"right\" # fan", "on = \"left\"")],
        // 12.5 A for two hours, and 12.1 A for the next two.
        &IN_A_ROW,
        // The fan is a breathing aid.
        &[
            ("kind = \"electronic\" # fan", "kind = \"medical\""),
            ("running = \"50 W\"", "running = \"1452 W\""),
            ("hours = [\"18:30-19:00\"]", "hours = [\"08:00-09:00\"]"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        // 12 A on a 15 A breaker (210.21(B)(2)).
        &[("running = \"50 W\"", "running = \"1440 W\""), ("hours = [\"18:30-19:00\"]", "hours = [\"08:00-09:00\"]")],
        // The same as the first above, but for two hours.
        &[
            ("running = \"50 W\"", "running = \"1452 W\""),
            ("hours = [\"18:30-19:00\"]", "hours = [\"08:00-09:00\"]"),
            ("hours = [\"18:00-23:00\"]", "hours = [\"18:00-20:00\"]"),
            ("continuous = true # fan", "continuous = false"),
        ],
        // In a row as above, but with an hour between them.
        &[
            IN_A_ROW[0],
            IN_A_ROW[1],
            IN_A_ROW[2],
            IN_A_ROW[3],
            ("hours = [\"18:00-23:00\"]", "hours = [\"20:00-22:00\"]"),
        ],
        // Two and three quarters of an hour in all.
        &[
            IN_A_ROW[0],
            IN_A_ROW[1],
            IN_A_ROW[2],
            IN_A_ROW[3],
            ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-19:45\"]"),
        ],
    ],
};

/// Two heavy loads on one outlet, one after the other.
#[cfg(test)]
const IN_A_ROW: [(&str, &str); 5] = [
    ("running = \"50 W\"", "running = \"1452 W\""),
    ("continuous = true # fan", "continuous = false"),
    ("on = \"right\" # fan", "on = \"left\""),
    ("hours = [\"18:30-19:00\"]", "hours = [\"17:00-19:00\"]"),
    ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-21:00\"]"),
];

/// The loads on at a part in one minute, and how much of their current lasts for hours.
struct Demand<'a> {
    minute: u16,
    on: Vec<Need<'a>>,
    /// What flows for three hours or more, on the leg with the greatest demand.
    long: ApparentPower,
    /// The loads before and after it, if only a row of them lasts for hours.
    in_a_row: Vec<Need<'a>>,
    /// What the part must be rated for: others × share + continuous, against rating × share. Scaled like [`room`], so
    /// that nothing is rounded.
    asked: i128,
}

impl<'a> Demand<'a> {
    fn of(facts: &Facts<'a>, node: &Node, these: &[Need<'a>], at: Busiest<'a>) -> Self {
        let share = i128::from(node.continuous.permille());
        let long: Vec<_> = at.on.iter().copied().filter(Need::continuous).collect();
        let legs = [Leg::B, Leg::A].map(|leg| {
            let all = facts.apparent_on_leg(&at.on, leg);
            let (level, in_a_row) = in_a_row(facts, these, at.minute, leg);
            let long = facts.apparent_on_leg(&long, leg) + level;
            let [all, lasts] = [all, long].map(|it| i128::from(it.millivolt_amps()));
            (all * share + lasts * (1000 - share), long, in_a_row)
        });
        // Leg A, which comes last, if both are equal.
        let [b, a] = legs;
        let (asked, long, in_a_row) = if b.0 > a.0 { b } else { a };
        Self { minute: at.minute, on: at.on, long, in_a_row, asked }
    }

    /// Returns the minute of greatest demand among those whose loads would not fit for hours.
    fn busiest(facts: &Facts<'a>, node: &Node, these: &[Need<'a>]) -> Option<Self> {
        let crowded = minutes(these).filter(|at| !fits_for_hours(facts, node, &at.on));
        let minutes = crowded.map(|at| Self::of(facts, node, these, at));
        minutes.reduce(|most, next| if next.asked > most.asked { next } else { most })
    }
}

/// Returns the volt-amperes that other loads, one after another, sustain through three hours around a minute, and those
/// loads. A row of them heats a breaker as a single load does. Loads that run for hours by themselves are counted
/// separately.
fn in_a_row<'a>(facts: &Facts<'a>, these: &[Need<'a>], minute: u16, leg: Leg) -> (ApparentPower, Vec<Need<'a>>) {
    const DAY: u16 = Span::DAY;
    let back = |minutes: u16| (minute + DAY - minutes) % DAY;
    let since = |from: u16, at: u16| (at + DAY - from) % DAY;
    let none = (ApparentPower::default(), Vec::new());
    let others = these.iter().filter(|need| !(need.load.hours.is_empty() || need.continuous() && need.on(minute)));
    let others = others.map(|need| (*need, facts.apparent_on_leg([need], leg)));
    let others: Vec<(Need<'a>, ApparentPower)> = others.filter(|(_, asks)| *asks > none.0).collect();
    if !others.iter().any(|(need, _)| need.on(minute)) {
        return none;
    }
    let hours = others.iter().flat_map(|(need, _)| &need.load.hours);
    let edges: BTreeSet<u16> = hours.flat_map(|span| [span.from, span.to % DAY]).collect();
    // Of all three-hour windows around the minute, only those that begin at a change or end at the minute matter.
    let begins = edges.iter().copied().filter(|edge| since(*edge, minute) < CONTINUOUS_MINUTES);
    let all = begins.chain([back(CONTINUOUS_MINUTES - 1)]).filter_map(|from| {
        let within = edges.iter().copied().filter(|edge| since(from, *edge) < CONTINUOUS_MINUTES);
        let changes: BTreeSet<u16> = within.chain([from]).collect();
        // A load that is on throughout, but that the plan calls short, does not really run all that time.
        let comes_or_goes = |need: &Need<'_>| {
            let on = changes.iter().filter(|at| need.on(**at)).count();
            on > 0 && on < changes.len()
        };
        let row: Vec<_> = others.iter().filter(|(need, _)| comes_or_goes(need)).collect();
        let level =
            |at: &u16| row.iter().filter(|(need, _)| need.on(*at)).map(|(_, asks)| *asks).sum::<ApparentPower>();
        let least = changes.iter().map(level).min()?;
        (least > none.0).then(|| (least, row.iter().map(|(need, _)| *need).collect()))
    });
    all.max_by_key(|(least, _)| *least).unwrap_or(none)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let mut named: Vec<NodeIx> = Vec::new();
    // If even a short time is too much, another finding reports that.
    let short: Vec<NodeIx> = facts.overloads().iter().flat_map(|over| over.parts.clone()).collect();
    for (ix, node) in facts.supply.points() {
        if matches!(node.kind, NodeKind::Source)
            || short.contains(&ix)
            || facts.supply.up(ix).any(|(above, _)| named.contains(&above))
        {
            continue;
        }
        let through = facts.placed_through(ix);
        if fits_for_hours(facts, node, through) {
            continue;
        }
        let mut waits_for_nothing = through.to_vec();
        waits_for_nothing.retain(Need::cannot_wait);
        let clash = too_long(facts, node, &waits_for_nothing);
        let signal = if clash.is_some() { Signal::Warning } else { Signal::Caution };
        let Some(busiest) = clash.or_else(|| too_long(facts, node, through)) else {
            continue;
        };
        named.push(ix);
        let mut about = vec![node.id.clone()];
        let mut all = busiest.on.clone();
        all.sort_by_key(|need| Reverse(need.running()));
        all.extend(&busiest.in_a_row);
        let loads = ids(&all);
        let about_loads = loads.len();
        about.extend(loads);
        let life: Vec<Need<'_>> = all.iter().copied().filter(Need::life).collect();
        let life = ids(&life);
        // A single load would be too much for another breaker of that size as well, and a load in a camper has no other
        // outlet.
        let inside = all.iter().all(|need| facts.plan.around(need.load).is_some());
        let fix = match (&life[..], about_loads) {
            ([], 1) => "rest",
            ([], _) if inside => "rest",
            ([], _) => "move",
            _ => "life",
        };
        let demand = facts.worst_leg(&busiest.on);
        let long = Current::of_apparent(busiest.long, facts.supply.volts);
        let lasts = if !busiest.in_a_row.is_empty() {
            "in-a-row"
        } else if long == demand {
            "all"
        } else {
            "part"
        };
        found.add(
            signal,
            about,
            values([
                ("demand", demand.into()),
                ("long", long.into()),
                ("lasts", Value::Name(lasts.to_owned())),
                ("limit", node.rating.scaled_down(node.continuous).into()),
            ])
            .into_iter()
            .chain(when(busiest.minute, &busiest.on))
            .collect(),
            fix,
            values([("life", Value::Parts(life))]),
        );
    }
}

/// Returns what the part may be asked for, on the same scale as [`Demand::asked`].
fn room(facts: &Facts<'_>, node: &Node) -> i128 {
    let room = ApparentPower::of_capacity(node.rating, facts.supply.volts);
    i128::from(room.millivolt_amps()) * i128::from(node.continuous.permille())
}

/// Whether all of these at once fit for hours, so that no minute can be too much.
fn fits_for_hours(facts: &Facts<'_>, node: &Node, these: &[Need<'_>]) -> bool {
    let legs = [Leg::A, Leg::B].map(|leg| facts.apparent_on_leg(these, leg));
    i128::from(legs[0].max(legs[1]).millivolt_amps()) * 1000 <= room(facts, node)
}

/// Whether the loads plugged in are too much for a part upstream, for a short time or for hours.
pub(in crate::rules) fn crowded(facts: &Facts<'_>) -> bool {
    facts.supply.points().skip(1).any(|(at, node)| {
        let through = facts.placed_through(at);
        !fits_for_hours(facts, node, through)
            && Demand::busiest(facts, node, through).is_some_and(|busiest| busiest.asked > room(facts, node))
    })
}

/// Returns the busiest minute of these, if loads that run for hours make it too much.
fn too_long<'a>(facts: &Facts<'a>, node: &Node, these: &[Need<'a>]) -> Option<Demand<'a>> {
    let busiest = Demand::busiest(facts, node, these)?;
    // If it is too much even for a short time, here or anywhere upstream, other rules report that, because a rest would
    // not help.
    let mut on_the_way = busiest.on.iter().filter_map(|need| need.at).flat_map(|at| facts.supply.up(at));
    let passed = |ix: NodeIx| facts.worst_leg(&facts.through(&busiest.on, ix)) > facts.supply.node(ix).rating;
    let too_long = busiest.long > ApparentPower::default()
        && !on_the_way.any(|(ix, _)| passed(ix))
        && busiest.asked > room(facts, node);
    too_long.then_some(busiest)
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::{codes, signals};

    /// By hand: 12.5 A for half an hour and 2.5 A for hours are 12.5 + 2.5 / 0.8 = 15.625 A on 15 A. A wish can wait. A
    /// load that must run and is too much alone is as bad.
    #[test]
    fn what_must_run_and_may_not_is_a_warning() {
        const ON_LEFT: (&str, &str) = ("on = \"right\" # fan", "on = \"left\"");
        let wish = ("wanted = \"must\" # kettle", "wanted = \"wish\"");
        let fan = |watts: &'static str| ("running = \"50 W\"", watts);
        for (edits, expected) in [
            (vec![ON_LEFT, fan("running = \"300 W\"")], vec![Signal::Warning]),
            (vec![ON_LEFT, fan("running = \"240 W\"")], vec![]),
            (vec![ON_LEFT, fan("running = \"300 W\""), wish], vec![Signal::Caution]),
            (vec![fan("running = \"1600 W\"")], vec![Signal::Warning]),
            (
                vec![fan("running = \"1600 W\""), ("wanted = \"must\" # fan", "wanted = \"wish\"")],
                vec![Signal::Caution],
            ),
        ] {
            assert_eq!(signals("OVER002", &edits), expected, "{edits:?}");
        }
    }

    /// 12.2 A for hours at the end of a cord is too much for its 15 A outlet. If the 16 AWG cord is longer than 50 ft,
    /// it is too much for the cord at once, which a rest does not mend (10 A, UL 817, as in rule CORD001).
    #[test]
    fn what_a_cord_does_not_carry_at_all_needs_no_rest() {
        for (feet, expected) in [(50, "OVER002"), (100, "CORD001")] {
            let length = format!("length = \"{feet} ft\"");
            let edits = [
                (
                    "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                    "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]",
                ),
                ("from = \"long\"\ninlet", "inlet"),
                ("wire = \"10 AWG\" # long", "wire = \"16 AWG\""),
                ("length = \"50 ft\"", length.as_str()),
                ("running = \"50 W\"", "running = \"1464 W\""),
                ("on = \"left\" # kettle", "on = \"front\""),
                ("on = \"right\" # fan", "on = \"long\""),
                ("hours = [\"18:30-19:00\"]", "hours = [\"08:00-09:00\"]"),
            ];
            let mut codes = codes(&edits);
            codes.retain(|code| matches!(*code, "OVER002" | "CORD001"));
            assert_eq!(codes, [expected], "{feet} ft");
        }
    }

    /// NEC 210.21(B)(2): 12, 16 and 24 A on receptacles of 15, 20 and 30 A (from a secondary copy).
    #[test]
    fn the_published_currents_pass_and_the_next_tenth_does_not() {
        for (amps, shape, plug) in [(15, "5-15R", "5-15P"), (20, "5-20R", "5-20P"), (30, "L5-30R", "L5-30P")] {
            let largest = match amps {
                15 => 120,
                20 => 160,
                _ => 240,
            };
            for (tenths, found) in [(largest, false), (largest + 1, true)] {
                let shape = format!("shape = \"{shape}\"");
                let breaker = format!("breaker = \"{amps} A\"");
                let draw = format!("current = \"{}.{} A\"", tenths / 10, tenths % 10);
                let plug = format!("plug = \"{plug}\"");
                let edits = [
                    ("shape = \"5-20R\"", shape.as_str()),
                    ("breaker = \"20 A\" # front", &breaker),
                    ("running = \"50 W\"\npower_factor = 1.0", &draw),
                    ("plug = \"5-15P\" # fan", &plug),
                    ("on = \"right\" # fan", "on = \"front\""),
                    ("hours = [\"18:30-19:00\"]", "hours = [\"08:00-09:00\"]"),
                ];
                assert_eq!(codes(&edits).contains(&"OVER002"), found, "{tenths} tenths on {amps}");
            }
        }
    }
}

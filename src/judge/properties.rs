//! What changing a plan may do to its report, tried on random plans that cover every field of the format, known or not,
//! sensible or not.

use std::collections::BTreeMap;

use proptest::prelude::*;
use proptest::sample::Index;

use super::{build, judge};
use crate::loads::{self, LoadUnit};
use crate::plan::{Answer, Id, Plan, Span, Wanted, arbitrary};
use crate::quantity::{Current, Length, Power, Voltage, Wire};
use crate::report::{Finding, Report, Signal, Stretch, Value};
use crate::supply::drop::{Draws, Running, lost};
use crate::supply::{Node, NodeIx, Supply};

/// Returns the dangers as pairs of a code and a part of the gear, one for each part that a danger names. The loads it
/// names may change, since one more load can take another's place.
fn dangers(plan: &Plan, report: &Report) -> Vec<(&'static str, Option<Id>)> {
    serious(plan, report, Signal::Danger)
}

/// Returns the same for all findings at least as severe as `signal`.
fn serious(plan: &Plan, report: &Report, signal: Signal) -> Vec<(&'static str, Option<Id>)> {
    let loads: Vec<&Id> = report.figures.loads.iter().flat_map(|load| [&load.id, &load.of]).collect();
    let gear = |id: &&Id| !loads.contains(id) && plan.loads.iter().all(|load| load.id != **id);
    report
        .findings
        .iter()
        .filter(|finding| finding.signal <= signal)
        .flat_map(|finding| {
            let mut parts: Vec<Option<Id>> = finding.about.iter().filter(gear).cloned().map(Some).collect();
            if parts.is_empty() {
                parts.push(None);
            }
            parts.into_iter().map(|part| (finding.code, part))
        })
        .collect()
}

/// Returns the worst signal of a rule's findings.
fn worst(report: &Report, code: &str) -> Option<Signal> {
    report.findings.iter().filter(|finding| finding.code == code).map(|finding| finding.signal).min()
}

/// Returns the same plan with every id replaced.
fn renamed(plan: &Plan, new: &BTreeMap<Id, Id>) -> Plan {
    let one = |id: &Id| -> Id {
        match id.as_str().rsplit_once('.') {
            Some((base, end)) => {
                let base = Id::new(base).expect("the id of a cord");
                new[&base].end(end.parse().expect("the number of an end"))
            }
            None => new[id].clone(),
        }
    };
    let maybe = |id: &Option<Id>| id.as_ref().map(one);
    let mut plan = plan.clone();
    for outlet in plan.outlets_mut() {
        outlet.id = one(&outlet.id);
        outlet.shares = maybe(&outlet.shares);
    }
    plan.generator.bonding_plug_in = maybe(&plan.generator.bonding_plug_in);
    for cord in &mut plan.cords {
        cord.id = one(&cord.id);
        cord.from = maybe(&cord.from);
    }
    for part in &mut plan.boxes {
        part.id = one(&part.id);
        part.from = maybe(&part.from);
    }
    for load in &mut plan.loads {
        load.id = one(&load.id);
        load.on = maybe(&load.on);
        load.now = maybe(&load.now);
    }
    plan
}

/// Returns every id that a plan defines.
fn ids(plan: &Plan) -> Vec<Id> {
    let outlets = plan.generator.outlets.iter().map(|it| &it.id);
    outlets
        .chain(plan.cords.iter().map(|it| &it.id))
        .chain(plan.boxes.iter().flat_map(|it| std::iter::once(&it.id).chain(it.outlets.iter().map(|it| &it.id))))
        .chain(plan.loads.iter().map(|it| &it.id))
        .cloned()
        .collect()
}

/// Returns the report as JSON, with its findings in an order that does not depend on ids.
fn sorted(report: &Report, back: impl Fn(String) -> String) -> (String, Vec<String>) {
    let json = |it: &dyn Fn() -> serde_json::Result<String>| back(it().expect("it is JSON"));
    let mut findings: Vec<String> =
        report.findings.iter().map(|finding: &Finding| json(&|| serde_json::to_string(finding))).collect();
    // Troubles refer to findings by index, and a finding that fits two troubles goes with the first.
    findings.sort();
    let mut figures = report.figures.clone();
    figures.troubles.clear();
    (json(&|| serde_json::to_string(&figures)), findings)
}

/// Generates plans. One in four is anything that parses. The others could be a camp's.
fn any_plan() -> impl Strategy<Value = Plan> {
    prop_oneof![1 => arbitrary::plan(), 3 => arbitrary::camp()]
}

/// Returns the settings for these tests. `PROPTEST_CASES=5000 PROPTEST_RNG_SEED=7 cargo test properties` tries more and
/// different plans.
fn config() -> ProptestConfig {
    // The library's default count is taken to mean that nobody asked for one.
    const CASES: u32 = 96;
    let mut config = ProptestConfig::default();
    if config.cases == 256 {
        config.cases = CASES;
    }
    ProptestConfig { max_global_rejects: 4 * config.cases, failure_persistence: None, ..config }
}

/// What is plugged in behind a cord.
struct Behind {
    supply: Supply,
    units: Vec<LoadUnit>,
    places: BTreeMap<Id, NodeIx>,
    loads: Vec<Id>,
}

impl Behind {
    fn new(plan: &Plan, report: &Report, cord: &Id) -> Self {
        let supply = Supply::build(plan);
        let sharing = &report.figures.sharing;
        let places: BTreeMap<Id, NodeIx> = (sharing.placed.iter())
            .filter_map(|placed| Some((placed.load.clone(), supply.receptacle(&placed.at)?)))
            .collect();
        let passes = |at: NodeIx| {
            let mut up = supply.up(at);
            up.any(|(_, node)| node.id == *cord && node.kind.is_cord())
        };
        let behind = places.iter().filter(|(_, at)| passes(**at));
        Self { loads: behind.map(|(id, _)| id.clone()).collect(), units: loads::units(plan).0, places, supply }
    }

    fn touches(&self, id: &Id) -> bool {
        self.loads.contains(id)
    }

    fn heats(&self) -> bool {
        let units = self.units.iter().filter(|unit| self.touches(&unit.id));
        units.into_iter().any(|unit| unit.draws() == Draws::Resistance)
    }

    /// Returns what a load loses with these running, with the heaters behind the cord at their full current.
    fn full_heat(&self, own: &Id, beside: &[Id]) -> Voltage {
        let running = |unit: &LoadUnit| {
            let draws = match unit.draws() {
                Draws::Resistance if self.touches(&unit.id) => Draws::Current,
                draws => draws,
            };
            Some(Running {
                at: *self.places.get(&unit.id)?,
                current: unit.running_current,
                draws,
                one_leg: unit.one_leg,
            })
        };
        let of = |id: &Id| self.units.iter().find(|unit| unit.id == *id).and_then(running);
        let all: Vec<Running> = beside.iter().filter_map(of).collect();
        let own = of(own).expect("it is plugged in");
        self.supply.settled_flow(&all).map_or(self.supply.volts_of(&own), |flow| lost(flow.lost_by(&own)))
    }
}

/// Returns a wire one step of gauge thicker, or half as much cross section again.
fn thicker(wire: Wire) -> Wire {
    match wire {
        Wire::Awg(gauge) => Wire::Awg(gauge - 2),
        Wire::Area(area) => Wire::Area(area + area / 2),
    }
}

proptest! {
    #![proptest_config(config())]

    /// With one more load, a danger about a part is still a danger about it.
    #[test]
    fn one_more_load_never_clears_a_danger(
        plan in any_plan(), mut load in arbitrary::load(), on in any::<Option<Index>>(), likely: bool,
    ) {
        let before = judge(&plan);
        let mut more = plan.clone();
        load.id = Id::new("one-more").expect("an id");
        let limits = &before.figures.limits;
        load.on = on.map(|index| index.get(limits).id.clone());
        if likely {
            let shapes = limits.iter().map(|limit| (limit.id.clone(), limit.shape)).collect();
            arbitrary::likely_load(&mut load, &shapes);
        }
        more.loads.push(load);
        let after = judge(&more);
        // The other loads must stay plugged in where they were: one whose socket is taken no longer draws on the cord
        // it hung on.
        let placed = |report: &Report| report.figures.sharing.placed.clone();
        let stays = placed(&after);
        prop_assume!(placed(&before).iter().all(|one| stays.contains(one)));
        // An unseen bonding plug must be assumed in the same place: it is not in a socket that the new load takes.
        let plug = |report: &Report| {
            let assumed = report.figures.assumed.iter();
            let mut of_plug = assumed.filter(|it| it.why == "bonding-plug-in");
            of_plug.next().map(|it| it.value.clone())
        };
        prop_assume!(plug(&before) == plug(&after));
        let after = dangers(&more, &after);
        for danger in dangers(&plan, &before) {
            prop_assert!(after.contains(&danger), "{danger:?} is not in {after:#?}");
        }
    }

    /// A bigger breaker protects nothing better. A load that then goes elsewhere leaves its outlet empty, which is
    /// reported as such.
    #[test]
    fn a_bigger_breaker_never_turns_an_overcurrent_danger_off(
        plan in any_plan(), which: Index, more in 1_i64..30_000,
    ) {
        let before = judge(&plan);
        let mut bigger = plan.clone();
        let mut breakers: Vec<&mut Answer<Current>> = bigger
            .outlets_mut()
            .map(|outlet| &mut outlet.breaker)
            .filter(|breaker| breaker.is_known())
            .collect();
        prop_assume!(!breakers.is_empty());
        let which = which.index(breakers.len());
        if let Answer::Known(amps) = &mut *breakers[which] {
            *amps = Current::from_milliamps(amps.milliamps() + more);
        }
        let judged = judge(&bigger);
        let after = dangers(&bigger, &judged);
        for danger in dangers(&plan, &before).into_iter().filter(|(code, _)| code.starts_with("OVER")) {
            let mut empty = judged.findings.iter().filter(|it| (it.code, it.fix.key) == ("OVER001", "free"));
            let left_empty = danger.1.as_ref().is_some_and(|at| empty.any(|it| it.about.contains(at)));
            prop_assert!(left_empty || after.contains(&danger), "{danger:?} is not in {after:#?}");
        }
    }

    /// With the same loads running, no place behind a better cord gets a lower voltage, and no finding about cords or
    /// volts is worse or new. A heater behind the cord then draws a little more: loads that share its path lose no more
    /// than with that heater at its full current.
    #[test]
    fn a_thicker_or_shorter_cord_never_worsens_volts_or_cords(
        plan in any_plan(), which: Index, shorter: bool,
    ) {
        prop_assume!(!plan.cords.is_empty());
        let which = which.index(plan.cords.len());
        let mut plan = plan;
        let cord = &mut plan.cords[which];
        let (wire, length) = (cord.wire.or(Wire::Awg(14)), cord.length.or(Length::from_millimetres(30_000)));
        (cord.wire, cord.length) = (Answer::Known(wire), Answer::Known(length));
        let mut better = plan.clone();
        let cord = &mut better.cords[which];
        if shorter {
            cord.length = Answer::Known(Length::from_millimetres(length.millimetres() * 2 / 3));
        } else {
            cord.wire = Answer::Known(thicker(wire));
        }
        let (before, after) = (judge(&plan), judge(&better));
        // A load that a thin cord ruled out may run with a thicker one. Then other parts carry more, and there is
        // nothing to compare.
        let together = |report: &Report| {
            let sharing = &report.figures.sharing;
            (sharing.placed.clone(), sharing.together.clone(), sharing.families_complete)
        };
        prop_assume!(together(&before) == together(&after));
        let behind = Behind::new(&plan, &before, &plan.cords[which].id);
        for (one, other) in before.figures.drops.iter().zip(&after.figures.drops) {
            prop_assert_eq!(&one.at, &other.at);
            let most = one.volts_running.max(if behind.touches(&one.at) {
                Voltage::ZERO
            } else {
                behind.full_heat(&one.at, &other.beside)
            });
            prop_assert!(other.volts_running <= most, "{}", one.at);
            let most = one.volts_starting.max(most);
            prop_assert!(other.volts_starting <= most, "{}", one.at);
        }
        for finding in &after.findings {
            if matches!(finding.area, "voltage" | "cord") {
                let was = worst(&before, finding.code);
                // Elsewhere the voltage may be slightly lower because of a heater behind the cord.
                let elsewhere = finding.code == "VOLT001"
                    && behind.heats()
                    && !finding.about.iter().any(|id| behind.touches(id));
                // A cord too thin in any air may become too thin only in hot air, which the worse finding hid.
                let part = &plan.cords[which].id;
                let hid_behind_worse = finding.about.contains(part)
                    && before.findings.iter().any(|worse| {
                        worse.area == finding.area
                            && worse.signal < finding.signal
                            && worse.about.contains(part)
                    });
                prop_assert!(
                    was.is_some_and(|was| was <= finding.signal) || hid_behind_worse || elsewhere,
                    "{was:?} {finding:?}"
                );
            }
        }
    }

    /// No demand that the generator can supply empties a tank sooner than the label says, and a tank that does not last
    /// between two chances to refuel is found.
    #[test]
    fn no_tank_lasts_less_than_is_told(plan in any_plan()) {
        let report = judge(&plan);
        let energy = &report.figures.energy;
        let sets = plan.generator.sets();
        if let (Some(told), Answer::Known(rated)) = (energy.hours_per_tank, plan.generator.rated) {
            let most = Power::from_milliwatts(rated.milliwatts() * sets);
            for burn in energy.burns.iter().filter(|burn| burn.watts <= most) {
                prop_assert!(burn.hours_per_tank >= told, "{burn:?} {told:?}");
            }
        }
        let long = energy.stretch.as_ref().is_some_and(Stretch::is_too_long);
        let found = report.findings.iter().any(|finding| finding.code == "FUEL001");
        prop_assert_eq!(long, found);
    }

    /// A load that must run and cannot is in some finding.
    #[test]
    fn what_must_run_and_cannot_is_in_some_finding(plan in any_plan()) {
        let report = judge(&plan);
        for lost in &report.figures.sharing.unplaced {
            let of = &report.figures.loads.iter().find(|load| load.id == lost.load).expect("a load").of;
            let load = plan.load(of).expect("of the plan");
            if load.wanted == Wanted::Wish {
                continue;
            }
            prop_assert!(
                report.findings.iter().any(|finding| {
                    finding.about.iter().any(|id| *id == lost.load || id == of)
                }),
                "{lost:?} is in none of {:#?}", report.findings
            );
        }
    }

    /// No two parts of a report contradict each other. Loads that a finding says are too much together are in no set
    /// that may run at once, and a medical load is in every turn and never stays off.
    #[test]
    fn no_advice_stands_against_another(plan in any_plan()) {
        let report = judge(&plan);
        let sharing = &report.figures.sharing;
        let units = |ids: &[Id]| -> Vec<Id> {
            let loads = report.figures.loads.iter().filter(|load| ids.contains(&load.of));
            loads.map(|load| load.id.clone()).collect()
        };
        let at_once = |ids: &[Id]| {
            let ids = units(ids);
            sharing.together.iter().any(|set| ids.iter().all(|id| set.contains(id)))
        };
        for finding in &report.findings {
            // In a row they are too much for hours, but not at once.
            let in_a_row = finding.values.get("lasts") == Some(&Value::Name("in-a-row".to_owned()));
            if in_a_row || !matches!(finding.code, "POWER001" | "POWER002" | "OVER002" | "OVER006") {
                continue;
            }
            prop_assert!(!at_once(&finding.about), "{finding:#?} {:#?}", sharing.together);
            let parts = |value: Option<&Value>| match value {
                Some(Value::Parts(ids)) => ids.clone(),
                _ => Vec::new(),
            };
            let life = parts(finding.values.get("life"));
            for off in parts(finding.fix.values.get("off")) {
                prop_assert!(!life.contains(&off), "{finding:#?}");
                let mut both = life.clone();
                both.push(off);
                prop_assert!(!at_once(&both), "{finding:#?} {:#?}", sharing.together);
            }
        }
        let loads = || report.figures.loads.iter();
        let life = loads().filter(|load| load.life()).map(|load| &load.id);
        let placed: Vec<&Id> = life
            .filter(|id| sharing.placed.iter().any(|placed| placed.load == **id))
            .collect();
        prop_assert!(placed.iter().all(|id| !sharing.off.contains(id)));
        if sharing.together.iter().any(|set| placed.iter().all(|id| set.contains(id))) {
            // A turn with any load that may be on together with a medical load contains that medical load.
            let of = |id: &Id| plan.loads.iter().find(|load| load.id == report.figures.load(id).expect("a load").of);
            let meet = |one: &Id, other: &Id| {
                let [one, other] = [one, other].map(|id| &of(id).expect("of the plan").hours);
                let on = |hours: &[Span], minute: u16| hours.is_empty() || hours.iter().any(|it| it.contains(minute));
                (0..Span::DAY).any(|minute| on(one, minute) && on(other, minute))
            };
            for turn in &sharing.turns {
                for id in &placed {
                    let meets = || turn.iter().any(|other| meet(id, other));
                    prop_assert!(turn.contains(id) || !meets(), "{turn:?}");
                }
            }
            prop_assert!(placed.iter().all(|id| sharing.stays_on.contains(id)));
        }
        // A set with any load that may be on together with what stays on contains that too.
        let load_of = |id: &Id| plan.load(&report.figures.load(id).expect("a load").of).expect("of the plan");
        for life in &sharing.stays_on {
            let beside = |id: &Id| !report.lives().contains(id) && load_of(id).may_meet(load_of(life));
            for set in &sharing.together {
                prop_assert!(set.contains(life) || !set.iter().any(beside), "{life} {set:?}");
            }
        }
        // Nobody is told to run at once what is listed as never together.
        if sharing.families_complete {
            // Units of one load at one place are interchangeable.
            let kind = |id: &Id| {
                let placed = sharing.placed.iter().find(|it| it.load == *id).map(|it| &it.at);
                (report.figures.load(id).map(|it| &it.of), placed)
            };
            let many = |set: &[Id], of: &Id| set.iter().filter(|id| kind(id) == kind(of)).count();
            for turn in &sharing.turns {
                let within = |set: &Vec<Id>| turn.iter().all(|id| many(turn, id) <= many(set, id));
                prop_assert!(sharing.together.iter().any(within), "{turn:?} {:#?}", sharing.together);
            }
        }
    }

    /// If loads that must run want the same hour, and the card lists them as never together because a part on their way
    /// carries less than they need, then a warning or danger names the part, or says that the generator is too small.
    #[test]
    fn what_clashes_at_a_part_is_a_warning(plan in any_plan()) {
        let report = judge(&plan);
        let supply = Supply::build(&plan);
        let figures = &report.figures;
        let load = |id: &Id| {
            let facts = figures.loads.iter().find(|load| load.id == *id).expect("a load");
            let load = plan.load(&facts.of).expect("of the plan");
            (facts, load)
        };
        let place = |id: &Id| {
            let placed = figures.sharing.placed.iter().find(|placed| placed.load == *id)?;
            supply.receptacle(&placed.at)
        };
        let on = |id: &Id, minute: u16| {
            let (facts, load) = load(id);
            if load.hours.is_empty() {
                facts.continuous || facts.life()
            } else {
                load.wants(minute)
            }
        };
        let must = |id: &Id| load(id).1.wanted == Wanted::Must || load(id).0.life();
        let starts = plan.loads.iter().flat_map(|load| &load.hours).map(|span| span.from);
        let minutes: Vec<u16> = starts.chain([0]).collect();
        let warned = |code: &str, part: Option<&Id>| {
            report.findings.iter().any(|found| {
                found.signal <= Signal::Warning
                    && found.code.starts_with(code)
                    && part.is_none_or(|part| found.about.contains(part))
            })
        };
        // A breaker that protects a cord trips first, so it is the one to be named.
        let first = |node: &Node| {
            let (breaker, marked) = node.protected_at?;
            let cord = node.kind.is_cord();
            (cord && marked <= node.rating).then(|| supply.node(breaker).id.clone())
        };
        let clashes = figures.sharing.never.iter().filter(|set| set.len() > 1);
        for set in clashes.filter(|set| set.iter().all(must)) {
            if !minutes.iter().any(|minute| set.iter().all(|id| on(id, *minute))) {
                continue;
            }
            for (at, node) in supply.nodes.iter().enumerate().skip(1) {
                for leg in node.legs.all() {
                    let here = |id: &&Id| place(id).is_some_and(|place| {
                        supply.up(place).any(|(ix, _)| ix.0 == at)
                            && supply.node(place).legs.all().contains(leg)
                    });
                    let amps = set.iter().filter(here);
                    let sum: Current = amps.map(|id| load(id).0.running_amps).sum();
                    prop_assert!(
                        sum <= node.rating
                            || warned("OVER", Some(&node.id))
                            || warned("CORD", Some(&node.id))
                            || first(node).is_some_and(|first| warned("OVER", Some(&first)))
                            || warned("POWER001", None),
                        "{set:?} at {}: {sum:?} of {:?} {:#?}", node.id, node.rating, report.findings
                    );
                }
            }
        }
    }

    /// Ids are only names: whatever they are, the report says the same about the same parts. Only the order of findings
    /// that are otherwise equal may differ.
    #[test]
    fn other_ids_change_nothing(plan in any_plan(), shift: Index) {
        // Names of one length, in another order, that are part of no other word.
        let old = ids(&plan);
        let count = old.len();
        let shift = shift.index(count.max(1));
        let new: BTreeMap<Id, Id> = old
            .iter()
            .enumerate()
            .map(|(at, id)| {
                let letter = u32::try_from((at * 7 + shift) % 61).expect("few");
                let text = format!("QZ{letter:02}x{at:02}W");
                (id.clone(), Id::new(&text).expect("an id"))
            })
            .collect();
        let back = |text: String| {
            new.iter().fold(text, |text, (old, new)| text.replace(new.as_str(), old.as_str()))
        };
        let before = build(&plan);
        let after = build(&renamed(&plan, &new));
        prop_assert_eq!(sorted(&before, |text| text), sorted(&after, back));
    }

    /// An unknown counts as the unsafe case: no answer brings a danger or a warning about a part that was not reported
    /// without it, and a danger was reported as a danger.
    #[test]
    fn no_answer_brings_what_was_not_told_before(plan in arbitrary::camp(), which in 0..forget::KINDS) {
        let mut less = plan.clone();
        let forgotten = forget::one(&mut less, which);
        let (before, after) = (judge(&less), judge(&plan));
        // An answer may change where loads plug in, and with it what each part carries.
        prop_assume!(forgotten && before.figures.sharing.placed == after.figures.sharing.placed);
        let dangers_told = dangers(&less, &before);
        // A part that must not be used, or an outlet that only feeds such parts, is not used. That no breaker protects
        // it, or that the air is too hot for it, is then no news.
        let refused = |part: &Option<Id>| {
            let fed = |id: &Id| {
                let mut fed = less.gear().filter(|it| it.from == Some(id)).map(|it| before.refused(it.id)).peekable();
                fed.peek().is_some() && fed.all(|why| why.is_some())
            };
            // Nor is what may lack 240 V, before anybody has read the generator's voltage.
            let doubtful = |part: &Id| {
                let mut beyond = before.figures.limits.iter().filter(|limit| limit.path.contains(part));
                beyond.any(|limit| before.refused(&limit.id).is_some_and(|why| why.code == "FIT003"))
            };
            part.as_ref().is_some_and(|part| before.refused(part).is_some() || fed(part) || doubtful(part))
        };
        for least in [Signal::Danger, Signal::Warning] {
            let told = match least {
                Signal::Danger => serious(&less, &before, Signal::Danger),
                _ => serious(&less, &before, Signal::Notice),
            };
            for found in serious(&plan, &after, least) {
                // A worse finding of the same area covers it, as a cord that is too thin covers one that is only hot.
                let worse = |it: &(&str, Option<Id>)| it.1 == found.1 && it.0[..4] == found.0[..4];
                // Loads that may not run together are not started together either, and a load that the generator cannot
                // run or start needs no place. The rules about the peak and about places are silent then.
                let silenced = match found.0 {
                    // If the generator cannot start it, that it cannot run it either is no news.
                    "POWER001" => &["POWER002"][..],
                    "POWER002" => &["POWER001", "FIT004"],
                    // A load that the generator cannot run burns no fuel. One on a cord that it makes too hot is told of
                    // that cord.
                    "FIT004" => &["POWER001", "POWER002", "CORD001"],
                    "FUEL001" => &["POWER001", "POWER002"],
                    _ => &[],
                };
                let covers = |it: &(&str, Option<Id>)| {
                    // If even a short time is too much, nothing is reported about hours.
                    let hours = found.0 == "OVER002" && it.0 == "OVER006";
                    // If neutral and ground are joined in two places, the rule about one box yields to the one about
                    // both.
                    let bonds = found.0 == "SHOCK005" && it.0 == "SHOCK004";
                    // A load that may be a camper by its plug brings its own cord.
                    let camper = found.0 == "AIR005" && less.loads.iter().any(crate::verdict::camper);
                    // If a load is too much by itself, or for the generator, nothing is reported about it together with
                    // others or over hours.
                    let alone = match found.0 {
                        "OVER002" => it.0 == "POWER001",
                        "OVER006" => ["POWER001", "FIT004"].contains(&it.0),
                        _ => false,
                    };
                    alone
                        || camper
                        || (it.0 == found.0 || hours || bonds || silenced.contains(&it.0))
                        && (found.1.is_none() || it.1 == found.1)
                };
                // Nor is it news that a camper there would have no GFCI upstream, or a blind one, which is a warning.
                let no_news = match least {
                    Signal::Danger => &["OVER001", "CORD001", "CORD006"][..],
                    _ => &["OVER001", "CORD001", "CORD006", "SHOCK001", "SHOCK013"],
                };
                if dangers_told.iter().any(worse) || no_news.contains(&found.0) && refused(&found.1) {
                    continue;
                }
                prop_assert!(told.iter().any(covers), "{found:?} is not in {told:#?}");
            }
        }
        // Each unknown of what is plugged in has its entry. What a load burns is of no interest where it may not run.
        let of_load = |field: &str| field.starts_with("load.") && field.rsplit('.').next() == Some("hours");
        let burns = |field: &str| field == "generator.runtime" || of_load(field);
        let asked = |report: &Report| report.figures.assumed.iter().filter(|it| !burns(&it.field)).count();
        prop_assert!(asked(&before) >= asked(&after));
    }
}

/// Takes answers back.
mod forget {
    use crate::loads::least_current;
    use crate::plan::{Answer, Draw, Load, Plan, System};
    use crate::quantity::{Current, Ratio};
    use crate::supply::{UNKNOWN_CORD, UNKNOWN_RATED, UNKNOWN_WIRING, rated_of_peak};
    use crate::tables::conductor::{flexible_ampacity, wiring_ampacity};
    use crate::tables::kinds::of_kind;
    use crate::tables::shape::Circuit;

    /// How many kinds of answer can be taken back. A load's plug is not one: the usual plug is assumed for it, and a
    /// 240 V one may bring findings that nobody could predict (FIT006).
    pub(super) const KINDS: usize = 35;

    fn take<T>(answer: &mut Answer<T>) -> bool {
        let known = answer.is_known();
        *answer = Answer::Unknown;
        known
    }

    fn within<T>(answer: &mut Answer<T>, usual: impl Fn(&T) -> bool) -> bool {
        answer.known().is_some_and(usual) && take(answer)
    }

    fn all<'a, T: 'a>(answers: impl Iterator<Item = &'a mut Answer<T>>) -> bool {
        answers.fold(false, |any, answer| take(answer) | any)
    }

    /// Takes back every answer of one kind. Returns whether there was any.
    pub(super) fn one(plan: &mut Plan, which: usize) -> bool {
        let Plan { site, generator, cords, boxes, loads, .. } = plan;
        let outlets = generator.outlets.iter_mut().chain(boxes.iter_mut().flat_map(|part| &mut part.outlets));
        match which {
            0 => take(&mut site.ground),
            1 => take(&mut site.sleepers_at),
            2 => take(&mut site.co_alarm),
            3 => take(&mut site.feeds_building),
            4 => take(&mut generator.neutral),
            5 => take(&mut generator.bonding_plug),
            6 => take(&mut generator.inverter),
            7 => all(outlets.map(|it| &mut it.gfci)),
            8 => all(generator.outlets.iter_mut().map(|it| &mut it.breaker)),
            // An unknown wire is assumed to be the thinnest usual one.
            9 => cords.iter_mut().fold(false, |any, cord| {
                let least = flexible_ampacity(UNKNOWN_CORD);
                within(&mut cord.wire, |wire| flexible_ampacity(*wire) >= least) | any
            }),
            10 => all(cords.iter_mut().map(|it| &mut it.conductors)),
            11 => all(cords.iter_mut().map(|it| &mut it.length)),
            12 => all(cords.iter_mut().map(|it| &mut it.outdoor)),
            13 => all(cords.iter_mut().map(|it| &mut it.coiled)),
            14 => all(cords.iter_mut().map(|it| &mut it.gfci)),
            15 => all(boxes.iter_mut().map(|it| &mut it.bond)),
            16 => all(boxes.iter_mut().map(|it| &mut it.listed)),
            17 => all(boxes.iter_mut().flat_map(|it| &mut it.outlets).map(|it| &mut it.breaker)),
            18 => take(&mut site.stands),
            // A missing answer means the same.
            19 => std::mem::take(&mut site.stands).is_known(),
            20 => all(generator.parallel.iter_mut().map(|it| &mut it.kit)),
            21 => take(&mut generator.rated_on),
            22 => all(loads.iter_mut().map(|it| &mut it.backup)),
            23 => take(&mut generator.voltage),
            24 => all(loads.iter_mut().map(|it| &mut it.kind)),
            // The assumption for these is the worst usual case, not the worst possible one.
            25 => within(&mut site.altitude, |it| it.millimetres() <= 1_524_000),
            26 => within(&mut site.air, |it| it.millicelsius() <= 37_778),
            27 => {
                let least = match generator.peak {
                    Answer::Known(peak) => rated_of_peak(peak),
                    Answer::Missing | Answer::Unknown => UNKNOWN_RATED,
                };
                within(&mut generator.rated, |it| *it >= least)
            }
            28 => take(&mut generator.peak),
            29 => loads.iter_mut().fold(false, |any, load| {
                let usual = of_kind(load.kind).running;
                let (factor, plug) = (load.power_factor, load.plug);
                // A draw that its plug cannot carry is no answer (POWER009).
                let fits =
                    |draw: &Draw| plug.known().is_none_or(|plug| least_current(draw, factor, *plug) <= plug.0.rating());
                let usual = |draw: &Draw| matches!(draw, Draw::Power(power) if *power <= usual) && fits(draw);
                within(&mut load.running, usual) | any
            }),
            30 => all(outlets.map(|it| &mut it.leg)),
            // A box's listing covers its wires.
            31 => boxes
                .iter_mut()
                .filter(|it| it.is_listed() != Answer::Known(true))
                .flat_map(|it| &mut it.outlets)
                .fold(false, |any, outlet| {
                    let least = wiring_ampacity(UNKNOWN_WIRING);
                    within(&mut outlet.wire, |wire| wiring_ampacity(*wire) >= least) | any
                }),
            32 => {
                let taken: Vec<Current> = starts(loads);
                loads
                    .iter_mut()
                    .zip(taken)
                    .fold(false, |any, (load, most)| within(&mut load.starting_current, |it| *it <= most) | any)
            }
            // Without 240 V, a load that needs it is reported, and so is one without a plug for it (FIT006).
            33 if generator.voltage == Answer::Known(System::V120_240) => {
                let both = |load: &&mut Load| {
                    let plug = load.plug.known();
                    plug.is_some_and(|plug| plug.0.circuit() == Circuit::TwoLegsNeutral)
                };
                all(loads.iter_mut().filter(both).map(|it| &mut it.voltage))
            }
            // A missing answer means yes.
            34 => take(&mut site.people_sleep),
            _ => false,
        }
    }

    /// Returns the starting current assumed for each load when it is unknown.
    fn starts(loads: &[Load]) -> Vec<Current> {
        let multiple = |load: &Load| match load.running {
            Answer::Known(Draw::Motor { .. }) => Ratio::from_permille(6000),
            _ => of_kind(load.kind).starting,
        };
        let least = |load: &Load| match &load.running {
            Answer::Known(Draw::Current(amps)) => *amps,
            // For the others it depends on volts and power factor, so none of them is tried.
            _ => Current::ZERO,
        };
        let taken = |load: &Load| least(load).scaled_down(multiple(load));
        loads.iter().map(taken).collect()
    }
}

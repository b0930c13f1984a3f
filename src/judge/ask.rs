//! Answers the question before plugging in: may these be switched on while those run?
//!
//! The answer uses the placing of the report, so that it never differs from the card, and checks the supply tree point
//! by point for what is exceeded and by how much. A plan with a danger never gets a yes: an uncleared danger means that
//! the engine stays off.

use std::collections::BTreeSet;

use serde::Serialize;

use crate::judge::unknowns;
use crate::loads::{LoadUnit, units};
use crate::nearest::{likeness, nearest};
use crate::plan::{Id, Leg, LoadKind, Plan};
use crate::quantity::{ApparentPower, Current, Voltage, narrow};
use crate::report::{Assumption, Finding, Report, Signal, Trouble, leg_names};
use crate::sharing::model::{Fixed, FixedRow};
use crate::sharing::set::LoadSet;
use crate::sharing::start;
use crate::supply::drop::{Flow, Running, lost};
use crate::supply::{Legs, NodeIx, NodeKind, Supply};
use crate::verdict::Grounding;

/// How a limit is exceeded.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Passed {
    /// More than the point carries even for a short time.
    Short,
    /// More than it carries for three hours or more.
    Hours,
    /// More than the generator gives at the moment one of the loads starts.
    Starting,
}

/// A limit that would be exceeded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Over {
    /// The part.
    pub at: Id,
    /// Whether it is the generator itself.
    pub set: bool,
    /// Which limit.
    pub passed: Passed,
    /// The current it would have to carry, on the busiest leg. For [`Passed::Hours`], loads that run for less count
    /// less, in proportion to the lower limit for hours.
    pub asks: Current,
    /// What it carries, or for [`Passed::Hours`] what it carries that long.
    pub limit: Current,
    /// How much `asks` exceeds `limit`.
    pub over: Current,
    /// The load whose start exceeds it.
    pub by: Option<Id>,
    /// The legs that feed it. With two, the amps are those of one.
    #[serde(serialize_with = "leg_names")]
    pub legs: &'static [Leg],
}

/// One step of switching on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Step {
    /// The load.
    pub load: Id,
    /// The receptacle it is plugged into.
    pub at: Id,
    /// The greatest current on a leg of the generator at that moment.
    pub peak_amps: Current,
    /// The legs of the generator in use by then. With two, the amps are those of one. Empty if it is one of two, and
    /// nobody knows which.
    #[serde(serialize_with = "leg_names")]
    pub legs: &'static [Leg],
}

/// The highest meter reading at a breaker.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct AtBreaker {
    /// The outlet that the breaker belongs to.
    pub breaker: Id,
    /// The current with everything on, on the busiest leg.
    pub amps: Current,
    /// The legs in use there. With two, the amps are those of one. Empty if it is one of two, and nobody knows which.
    #[serde(serialize_with = "leg_names")]
    pub legs: &'static [Leg],
}

/// The lowest meter reading at a receptacle while the generator gives its nominal voltage.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct AtReceptacle {
    /// The receptacle.
    pub receptacle: Id,
    /// The voltage with everything on.
    pub volts: Voltage,
}

/// A warning that goes with the answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Warned {
    /// The code of the rule.
    pub code: &'static str,
    /// What it is about. Empty if it is about the generator or the site.
    pub about: Vec<Id>,
    /// Its index among the troubles of the report.
    #[serde(skip)]
    pub trouble: usize,
}

/// The answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Answer {
    /// Whether the loads may be switched on.
    pub may: bool,
    /// The loads that run already.
    pub running: Vec<Id>,
    /// Those of them that nobody named: somebody's health depends on them, or might, and the plan may have them on at
    /// the same time of day.
    pub stays_on: Vec<Id>,
    /// The loads to switch on.
    pub wanted: Vec<Id>,
    /// The codes of the plan's dangers. With any, the answer is no.
    pub dangers: Vec<&'static str>,
    /// Warnings about these loads, a part on their way, or the whole plan.
    pub warnings: Vec<Warned>,
    /// Those of the loads that have no place to plug in.
    pub no_place: Vec<Id>,
    /// Those of the loads whose socket is taken by another of them, which uses it at other hours.
    pub taken: Vec<Id>,
    /// Every limit that would be exceeded, worst first.
    pub over: Vec<Over>,
    /// The assumptions behind a no. With a better answer to one, fewer limits are exceeded or another load has a place.
    pub rests_on: Vec<Assumption>,
    /// Whether any order of switching on will do.
    pub any_order: bool,
    /// The order of switching on with the least peak. Empty if even that exceeds the generator's peak.
    pub order: Vec<Step>,
    /// Readings at the breakers.
    pub breakers: Vec<AtBreaker>,
    /// Readings at the receptacles.
    pub receptacles: Vec<AtReceptacle>,
}

/// A name that matches no load.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoSuchLoad {
    /// What was asked for.
    pub asked: String,
    /// The nearest name or id, if any is near.
    pub nearest: Option<String>,
}

/// Returns the loads that somebody means: one by its id, or all units of a load by its id, its name, or words that only
/// its name has. Ignores case.
///
/// # Errors
/// When nothing matches, with the nearest name.
pub fn named(report: &Report, asked: &str) -> Result<Vec<Id>, NoSuchLoad> {
    /// Below this likeness, a suggestion would be a guess.
    const NEAR: f64 = 0.5;
    let wanted = asked.trim().to_lowercase();
    let is = |text: &str| text.to_lowercase() == wanted;
    let loads = &report.figures.loads;
    let pick = |by: &dyn Fn(&crate::report::LoadFacts) -> bool| -> Vec<Id> {
        loads.iter().filter(|load| by(load)).map(|load| load.id.clone()).collect()
    };
    for found in [pick(&|load| is(load.id.as_str())), pick(&|load| is(load.of.as_str())), pick(&|load| is(&load.name))]
    {
        if !found.is_empty() {
            return Ok(found);
        }
    }
    let holds = |text: &str| {
        let text = text.to_lowercase();
        let has = |word: &str| text.split(|c: char| !c.is_alphanumeric()).any(|it| it == word);
        !wanted.is_empty() && wanted.split_whitespace().all(has)
    };
    let entries: BTreeSet<&Id> =
        loads.iter().filter(|load| holds(&load.name) || holds(load.of.as_str())).map(|load| &load.of).collect();
    if let (Some(only), 1) = (entries.first(), entries.len()) {
        return Ok(pick(&|load| load.of == **only));
    }
    let names = loads.iter().flat_map(|load| [load.of.as_str(), load.name.as_str()]);
    let nearest = nearest(names, NEAR, |name| likeness(&wanted, &name.to_lowercase()));
    Err(NoSuchLoad { asked: asked.to_owned(), nearest: nearest.map(str::to_owned) })
}

/// Answers whether `wanted` may be switched on while `running` is on, and what a life depends on and may be on at the
/// same time of day. `report` is the plan's own. Ids that are no load are ignored. Use [`named`] to resolve them first.
#[must_use]
pub fn ask(plan: &Plan, report: &Report, wanted: &[Id], running: &[Id]) -> Answer {
    let supply = Supply::build(plan);
    let (units, _) = units(plan);
    let chosen =
        |ids: &[Id]| -> Vec<usize> { (0..units.len()).filter(|load| ids.contains(&units[*load].id)).collect() };
    let mut before = chosen(running);
    let mut after = chosen(wanted);
    after.retain(|load| !before.contains(load));
    let load_of = |load: &usize| &plan.loads[units[*load].load];
    let mut stays_on = chosen(&report.figures.sharing.stays_on);
    stays_on.retain(|life| {
        let mut others = before.iter().chain(&after).filter(|load| !load_of(load).may_be(LoadKind::Medical));
        !before.contains(life) && !after.contains(life) && others.any(|load| load_of(load).may_meet(load_of(life)))
    });
    before.extend(&stays_on);
    before.sort_unstable();
    let id = |load: &usize| units[*load].id.clone();
    let place = |load: usize| supply.receptacle(report.figures.sharing.place(&units[load].id)?);
    let both: Vec<usize> = before.iter().chain(&after).copied().collect();
    let on: Vec<(usize, NodeIx)> = both.iter().filter_map(|load| Some((*load, place(*load)?))).collect();
    let scene = Scene { supply: &supply, units: &units, on: &on };
    let no_place: Vec<Id> = both.iter().filter(|load| place(**load).is_none()).map(id).collect();
    let grounding = Grounding::new(plan, &supply);
    let taken: Vec<Id> =
        on.iter().filter(|(load, at)| scene.socket_taken(*load, *at, &grounding)).map(|(load, _)| id(load)).collect();
    let troubles = report.figures.troubles.iter();
    let dangers: Vec<&'static str> = troubles
        .filter(|trouble| trouble.signal == Signal::Danger)
        .filter_map(|trouble| Some(report.findings_of(trouble).next()?.code))
        .collect();
    let over = scene.over();
    let rests_on = rests_on(plan, report, &both, &over, &no_place);
    let mut on_the_way: Vec<&Id> = Vec::new();
    for load in &after {
        on_the_way.extend([&units[*load].id, &plan.loads[units[*load].load].id]);
        let way = place(*load).into_iter().flat_map(|at| supply.up(at));
        on_the_way.extend(way.map(|(_, node)| &node.id));
    }
    let flowing = scene.flowing();
    let settled = supply.settled_flow(&flowing);
    Answer {
        warnings: warned(report, &on_the_way),
        may: dangers.is_empty() && no_place.is_empty() && taken.is_empty() && over.is_empty() && !after.is_empty(),
        running: before.iter().map(id).collect(),
        stays_on: stays_on.iter().map(id).collect(),
        wanted: after.iter().map(id).collect(),
        any_order: over.is_empty(),
        order: scene.order(&before),
        breakers: scene.breakers(settled.as_ref()),
        receptacles: scene.receptacles(settled.as_ref()),
        dangers,
        no_place,
        taken,
        over,
        rests_on,
    }
}

/// Returns the warnings about what is on and the parts on its way.
fn warned(report: &Report, on_the_way: &[&Id]) -> Vec<Warned> {
    let warnings = report.figures.troubles.iter().enumerate();
    // A box on the way that may join neutral and ground matters, even as a caution.
    let doubtful = |trouble: &Trouble| {
        let mut findings = report.findings_of(trouble);
        findings.any(|it| matches!(it.code, "SHOCK004" | "SHOCK005" | "FIT006"))
    };
    let warnings = warnings.filter(|(_, trouble)| match trouble.signal {
        Signal::Warning => true,
        Signal::Caution => doubtful(trouble),
        Signal::Danger | Signal::Notice => false,
    });
    let told = warnings.filter_map(|(at, trouble)| {
        let on = |id: &&Id| on_the_way.contains(id);
        let is_load = |id: &&Id| report.figures.loads.iter().any(|it| [&it.id, &it.of].contains(id));
        let concerns = |found: &Finding| match found.code {
            // An overload applies only if all of its loads are on.
            "POWER001" | "OVER006" => found.about.iter().filter(is_load).all(|id| on(&id)),
            _ => found.about.is_empty() || found.about.iter().any(|id| on(&id)),
        };
        let mut findings = report.findings_of(trouble);
        if !findings.any(concerns) {
            return None;
        }
        let found = report.findings_of(trouble).next()?;
        Some(Warned { code: found.code, about: found.about.clone(), trouble: at })
    });
    told.collect()
}

/// Returns the legs that something draws on. `either`: it is on one leg, which one being unknown, and counts on both.
fn drawn_on(legs: &'static [Leg], on_leg: impl Fn(&Leg) -> i64, either: bool) -> &'static [Leg] {
    match legs {
        [_, _] if either => &[],
        [one, other] if on_leg(one) == 0 && on_leg(other) > 0 => &legs[1..],
        [one, other] if on_leg(other) == 0 && on_leg(one) > 0 => &legs[..1],
        _ => legs,
    }
}

/// Returns what was assumed behind limits exceeded and loads without a place: each unknown whose best answer clears one
/// of these limits, or else those that do so together. For a load without a place, what the findings about it rest on.
fn rests_on(plan: &Plan, report: &Report, on: &[usize], over: &[Over], no_place: &[Id]) -> Vec<Assumption> {
    let assumed = &report.figures.assumed;
    let helps = |answered: &Plan| {
        let (supply, (units, _)) = (Supply::build(answered), units(answered));
        let place = |load: &usize| {
            let at = report.figures.sharing.place(&units[*load].id)?;
            Some((*load, supply.receptacle(at)?))
        };
        let on: Vec<(usize, NodeIx)> = on.iter().filter_map(place).collect();
        let scene = Scene { supply: &supply, units: &units, on: &on };
        let then = scene.over();
        let is_passed = |it: &Over| (then.iter()).any(|then| then.at == it.at && then.passed == it.passed);
        over.iter().any(|it| !is_passed(it))
    };
    let mut fields: Vec<String> = Vec::new();
    if !over.is_empty() {
        let all = assumed.iter().map(|it| it.field.clone());
        let asked: Vec<String> = all.take(unknowns::MOST_ASKED).collect();
        fields = unknowns::that_suffice(plan, asked, helps);
    }
    let of = |id: &Id| report.figures.load(id).map(|load| &load.of);
    let lost = |about: &Id| no_place.iter().any(|id| id == about || of(id) == Some(about));
    let findings = report.findings.iter().filter(|it| it.about.iter().any(lost));
    fields.extend(findings.flat_map(|it| &it.rests_on).map(|it| it.field.clone()));
    let told = assumed.iter().filter(|it| fields.contains(&it.field));
    told.cloned().collect()
}

/// The loads that are on, each with its receptacle.
struct Scene<'a> {
    supply: &'a Supply,
    units: &'a [LoadUnit],
    on: &'a [(usize, NodeIx)],
}

impl Scene<'_> {
    /// Whether gear, a bonding plug and the loads before this one take every socket there.
    fn socket_taken(&self, load: usize, at: NodeIx, grounding: &Grounding<'_>) -> bool {
        let before = self.on.iter().take_while(|(other, _)| *other != load);
        before.filter(|(_, place)| *place == at).count() >= grounding.beside_gear(at)
    }

    /// Returns what flows through a node on one leg, in millivolt-amperes: of loads that run for hours, and of the
    /// rest.
    fn through(&self, at: NodeIx, leg: crate::plan::Leg) -> (i64, i64) {
        let mut sums = (0, 0);
        for (load, place) in self.on {
            let passes = self.supply.up(*place).any(|(ix, _)| ix == at) && self.supply.counts_on(*place).contains(&leg);
            if passes {
                let unit = &self.units[*load];
                *(if unit.continuous { &mut sums.0 } else { &mut sums.1 }) += unit.running_apparent.millivolt_amps();
            }
        }
        sums
    }

    fn over(&self) -> Vec<Over> {
        let mut list: Vec<Over> = Vec::new();
        for (at, node) in self.supply.points() {
            let set = matches!(node.kind, NodeKind::Source);
            let mut note = |passed, asks: i64, limit: Current, by| {
                let asks = self.amps(asks);
                list.push(Over {
                    at: node.id.clone(),
                    set,
                    passed,
                    asks,
                    limit,
                    over: asks - limit,
                    by,
                    legs: node.legs.all(),
                });
            };
            let (room, rating) = (self.supply.room(at), node.rating);
            for leg in node.legs.all() {
                let (long, short) = self.through(at, *leg);
                let share = i128::from(node.continuous.permille().max(1));
                // A load that runs for hours counts more, in proportion to the lower limit for hours. Rounded up.
                let counted = short + narrow((i128::from(long) * 1000 + share - 1) / share);
                if long + short > room.millivolt_amps() {
                    note(Passed::Short, long + short, rating, None);
                } else if counted > room.millivolt_amps() {
                    // Reported against the label's limit for hours, so loads that run for less count less.
                    let asks = long + narrow((i128::from(short) * share + 999) / 1000);
                    note(Passed::Hours, asks, rating.scaled_down(node.continuous), None);
                }
                if set {
                    let steps = self.on.iter().filter(|(_, place)| self.supply.counts_on(*place).contains(leg));
                    let worst = steps
                        .map(|(load, _)| (self.step(*load), *load))
                        .max_by_key(|(step, load)| (*step, std::cmp::Reverse(*load)));
                    if let Some((step, load)) = worst {
                        let by = Some(self.units[load].id.clone());
                        let asks = long + short + step;
                        if asks > self.supply.peak_room().millivolt_amps() {
                            note(Passed::Starting, asks, self.supply.leg_peak, by);
                        }
                    }
                }
            }
        }
        // Worst first. To a person a breaker, its wiring and its receptacle are one part, and so are a cord and its
        // end. If something is too much even briefly, hours do not matter.
        list.sort_by_key(|over| std::cmp::Reverse(over.over));
        if list.iter().any(|over| over.passed == Passed::Short) {
            list.retain(|over| over.passed != Passed::Hours);
        }
        let mut seen: Vec<(Id, Passed)> = Vec::new();
        list.retain(|over| {
            let key = (over.at.clone(), over.passed);
            let new = !seen.contains(&key);
            seen.push(key);
            new
        });
        list
    }

    /// Whether a load draws on one leg only and nobody knows which.
    fn on_either(&self, load: usize, place: NodeIx) -> bool {
        let node = self.supply.node(place);
        node.on_either() || node.legs == Legs::Both && self.units[load].volts == self.supply.volts
    }

    /// Returns how much starting exceeds running, in millivolt-amperes.
    fn step(&self, load: usize) -> i64 {
        let unit = &self.units[load];
        (unit.starting_apparent - unit.running_apparent).millivolt_amps().max(0)
    }

    /// Returns the current of an apparent power on one leg, rounded up.
    fn amps(&self, millivolt_amps: i64) -> Current {
        let apparent = ApparentPower::from_millivolt_amps(millivolt_amps);
        Current::of_apparent(apparent, self.supply.volts)
    }

    /// Returns the order of switching on the loads that do not run yet, while the others run.
    fn order(&self, before: &[usize]) -> Vec<Step> {
        let legs = self.supply.node(NodeIx(0)).legs.all();
        let count = self.on.len().min(LoadSet::CAPACITY);
        let on = &self.on[..count];
        let of = |value: &dyn Fn(usize) -> i64, leg| -> Vec<i64> {
            on.iter()
                .map(|(load, place)| {
                    let there = self.supply.counts_on(*place).contains(leg);
                    if there { value(*load) } else { 0 }
                })
                .collect()
        };
        let fixed = Fixed {
            loads: count,
            rows: legs
                .iter()
                .map(|leg| FixedRow {
                    capacity: self.supply.peak_room().millivolt_amps(),
                    sums: of(&|load| self.units[load].running_apparent.millivolt_amps(), leg),
                    // A load that already runs does not start.
                    peaks: of(
                        &|load| {
                            if before.contains(&load) { 0 } else { self.step(load) }
                        },
                        leg,
                    ),
                })
                .collect(),
        };
        let runs = |at: usize| before.contains(&on[at].0);
        let running: LoadSet = (0..count).filter(|at| runs(*at)).collect();
        let first: Vec<LoadSet> = (0..count).map(|at| if runs(at) { LoadSet::default() } else { running }).collect();
        let Some(order) = start::order(&fixed, &LoadSet::below(count), &first) else {
            return Vec::new();
        };
        let (mut so_far, mut either) = (LoadSet::default(), true);
        let mut steps = Vec::new();
        for at in order {
            so_far.insert(at);
            either &= self.on_either(on[at].0, on[at].1);
            if runs(at) {
                continue;
            }
            let on_leg = |leg: &Leg| {
                let row = legs.iter().position(|it| it == leg).map(|row| &fixed.rows[row]);
                row.map_or(0, |row| row.sum(&so_far) + row.peak_of(at))
            };
            let drawn_on = drawn_on(legs, on_leg, either);
            steps.push(Step {
                load: self.units[on[at].0].id.clone(),
                at: self.supply.node(on[at].1).id.clone(),
                peak_amps: self.amps(legs.iter().map(on_leg).max().unwrap_or(0)),
                legs: drawn_on,
            });
        }
        steps
    }

    /// Returns what is on, in the form that the voltage drop needs.
    fn flowing(&self) -> Vec<Running> {
        self.on
            .iter()
            .map(|(load, place)| Running {
                at: *place,
                current: self.units[*load].running_current,
                draws: self.units[*load].draws(),
                one_leg: self.units[*load].one_leg,
            })
            .collect()
    }

    /// Uses whichever is more, the nominal current or the settled one: as the voltage falls, a motor draws more and a
    /// heater less.
    fn breakers(&self, settled: Option<&Flow<'_>>) -> Vec<AtBreaker> {
        (self.supply.points())
            .filter(|(_, node)| matches!(node.kind, NodeKind::Breaker { .. }))
            .filter_map(|(at, node)| {
                let on_leg = |leg: &Leg| {
                    let (long, short) = self.through(at, *leg);
                    long + short
                };
                let past = |place: NodeIx| self.supply.up(place).any(|(ix, _)| ix == at);
                let either = self.on.iter().all(|(load, place)| !past(*place) || self.on_either(*load, *place));
                let amps = node.legs.all().iter().map(on_leg).max().filter(|amps| *amps > 0)?;
                let legs = drawn_on(node.legs.all(), on_leg, either);
                let sunk = settled.map_or(Current::ZERO, |flow| flow.through(at));
                Some(AtBreaker { breaker: node.id.clone(), amps: self.amps(amps).max(sunk), legs })
            })
            .collect()
    }

    fn receptacles(&self, settled: Option<&Flow<'_>>) -> Vec<AtReceptacle> {
        let mut places: Vec<NodeIx> = self.on.iter().map(|(_, place)| *place).collect();
        places.sort_unstable();
        places.dedup();
        places
            .into_iter()
            .map(|place| {
                let volts = self.supply.volts_at(place);
                let gone = settled.map_or(volts, |flow| lost(flow.drop(place)));
                AtReceptacle { receptacle: self.supply.node(place).id.clone(), volts: volts - gone.min(volts) }
            })
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::demo::{MENDED, WEEKEND};

    fn of(text: &str) -> (Plan, Report) {
        let plan = crate::plan::read(text).expect("a demo plan");
        let report = crate::judge::build(&plan);
        (plan, report)
    }

    fn id(text: &str) -> Id {
        Id::reference(text).expect("an id")
    }

    /// The card and the answer are computed in two ways. Every pair and every triple of the demo's loads must come out
    /// the same, whichever of them run already.
    #[test]
    fn the_answer_is_the_card_s() {
        let (plan, report) = of(MENDED);
        let ids: Vec<Id> = report.figures.loads.iter().map(|load| load.id.clone()).collect();
        let sharing = &report.figures.sharing;
        assert!(sharing.families_complete);
        let holds = |set: &[Id]| sharing.together.iter().any(|all| set.iter().all(|id| all.contains(id)));
        let (mut yes, mut no) = (0, 0);
        for a in 0..ids.len() {
            for b in a + 1..ids.len() {
                for c in b..ids.len() {
                    let mut set = vec![ids[a].clone(), ids[b].clone(), ids[c].clone()];
                    set.dedup();
                    let (running, wanted) = set.split_at(1);
                    let answer = ask(&plan, &report, wanted, running);
                    assert_eq!(answer.may, holds(&set), "{set:?} {:?}", answer.over);
                    *(if answer.may { &mut yes } else { &mut no }) += 1;
                }
            }
        }
        assert!(yes > 0 && no > 0);
    }

    #[test]
    fn kettle_and_griddle_by_hand() {
        // 1500 W and 1400 W at 120 V are 12.5 A and 11.667 A, rounded up: 24.167 A. The generator gives 2310 W there,
        // 19.25 A, so that is 4.917 A too much.
        let (plan, report) = of(MENDED);
        let answer = ask(&plan, &report, &[id("kettle"), id("griddle")], &[]);
        assert!(!answer.may);
        let over = answer.over.iter().find(|over| over.set).expect("the set is asked too much");
        assert_eq!(over.passed, Passed::Short);
        assert_eq!(over.asks, Current::from_milliamps(24_167));
        assert_eq!(over.limit, Current::from_milliamps(19_250));
        assert_eq!(over.over, Current::from_milliamps(4_917));
        // The kettle alone takes 12.5 A at its breaker and at the one that feeds the box.
        let answer = ask(&plan, &report, &[id("kettle")], &[]);
        assert!(answer.may && answer.any_order);
        let kettle = Current::from_milliamps(12_500);
        let breakers = answer.breakers.iter();
        let amps: Vec<(&str, Current)> = breakers.map(|it| (it.breaker.as_str(), it.amps)).collect();
        assert_eq!(amps, [("twist", kettle), ("box-left", kettle)]);
    }

    /// With a fan of 0.417 A on, the generator supplies more than the kettle's own 12.5 A, and the step says so. With
    /// nothing on, it supplies just that.
    #[test]
    fn the_amps_of_a_step_are_told_as_the_generator_s() {
        let (plan, report) = of(&crate::rules::testing::edited(&[]));
        for (running, milliamps, told) in [(vec![id("fan")], 12_917, "13 A"), (vec![], 12_500, "12.5 A")] {
            let answer = ask(&plan, &report, &[id("kettle")], &running);
            let amps = Current::from_milliamps(milliamps);
            assert_eq!(answer.order[0].peak_amps, amps);
            let words = crate::words::Words::english();
            let text = words.may(&report, &answer, 200).replace('\u{a0}', " ");
            let step = format!("the generator then supplies up to {told} in all");
            assert!(text.contains(&step), "{text}");
        }
    }

    /// Of 1500 W and 50 W, 1540 W runs either, but not both. 1400 W never runs the first.
    #[test]
    fn a_no_to_both_is_told_from_a_no_to_each() {
        for (rated, told) in [
            ("1540 W", "NO: do not run “Kettle” and “Fan” at the same time."),
            ("1400 W", "NO: do not switch on “Kettle” or “Fan”."),
        ] {
            let rated = format!("rated = \"{rated}\"");
            let (plan, report) = of(&crate::rules::testing::edited(&[("rated = \"3600 W\"", &rated)]));
            let answer = ask(&plan, &report, &[id("kettle"), id("fan")], &[]);
            let text = crate::words::Words::english().may(&report, &answer, 200);
            assert!(text.starts_with(told), "{text}");
        }
    }

    /// A device that a life depends on needs 100 W of 1600 W. It counts as on beside the kettle of 1500 W, whose hours
    /// it shares, and with 1590 W that is too much. Near miss: where they are on at different times, the kettle has the
    /// generator to itself.
    #[test]
    fn what_a_life_depends_on_is_on_beside_what_is_asked_for() {
        let told = |rated: &str, hours: &str| {
            let text = crate::rules::testing::edited(&[
                ("rated = \"3600 W\"", &format!("rated = \"{rated} W\"")),
                ("kind = \"electronic\" # fan", "kind = \"medical\""),
                ("running = \"50 W\"", "running = \"100 W\""),
                ("hours = [\"18:00-23:00\"]", &format!("hours = [\"{hours}\"]")),
            ]);
            let (plan, report) = of(&text);
            let answer = ask(&plan, &report, &[id("kettle")], &[]);
            let text = crate::words::Words::english().may(&report, &answer, 200);
            (answer.may, text)
        };
        let (may, text) = told("1600", "18:45-23:00");
        assert!(
            may && text.starts_with("YES: you may switch on “Kettle” while “Fan” runs, with everything else off."),
            "{text}"
        );
        assert!(text.contains("Someone’s health depends on “Fan”, so we counted it as on."), "{text}");
        let (may, text) = told("1590", "18:45-23:00");
        assert!(!may && text.starts_with("NO: do not switch on “Kettle” while “Fan” runs."), "{text}");
        let (may, text) = told("1590", "19:00-23:00");
        assert!(may && text.starts_with("YES: you may switch on “Kettle”, with everything else off."), "{text}");
        assert!(!text.contains("health"), "{text}");
    }

    /// 10 A of constant power behind 0.396 ohm (100 ft of 12 AWG, 1.98 ohm per 1000 ft, NEC Chapter 9 Table 8, out and
    /// back): v^2 - 120 v + 1200 * 0.396 = 0 leaves 115.90 V, so 10.354 A flows. A heater falls below its 10 A.
    #[test]
    fn a_meter_shows_what_flows_once_the_volts_have_sunk() {
        for (kind, expected) in [("electronic", 10_354), ("heater", 10_000)] {
            let kind = format!("kind = \"{kind}\"");
            let (plan, report) = of(&crate::rules::testing::edited(&[
                (
                    "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                    "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]",
                ),
                ("from = \"long\"\ninlet", "inlet"),
                ("wire = \"10 AWG\" # long", "wire = \"12 AWG\""),
                ("length = \"50 ft\"", "length = \"100 ft\""),
                ("kind = \"heater\" # kettle", &kind),
                ("running = \"1500 W\"", "running = \"1200 W\""),
                ("on = \"left\" # kettle", "on = \"long\""),
                ("on = \"right\" # fan", "on = \"front\""),
            ]));
            let answer = ask(&plan, &report, &[id("kettle")], &[]);
            assert!(answer.may);
            let amps: Vec<i64> = (answer.breakers.iter()).map(|it| it.amps.milliamps()).collect();
            assert_eq!(amps, [expected], "{kind}");
        }
    }

    /// A cord that carries 10 A, whose 15 A end carries 12 A for hours, is one limit.
    #[test]
    fn a_cord_and_its_end_have_one_limit() {
        let (plan, report) = of(&crate::rules::testing::edited(&[
            (
                "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]",
            ),
            ("from = \"long\"\ninlet", "inlet"),
            ("wire = \"10 AWG\" # long", "wire = \"16 AWG\""),
            ("length = \"50 ft\"", "length = \"100 ft\""),
            ("running = \"50 W\"", "running = \"1464 W\""),
            ("on = \"left\" # kettle", "on = \"front\""),
            ("on = \"right\" # fan", "on = \"long\""),
        ]));
        let answer = ask(&plan, &report, &[id("fan")], &[]);
        let over = answer.over.iter().filter(|over| over.at == id("long"));
        let told: Vec<_> = over.map(|over| (over.passed, over.limit)).collect();
        assert_eq!(told, [(Passed::Short, Current::from_milliamps(10_000))]);
    }

    #[test]
    fn no_yes_while_the_plan_has_a_danger() {
        let (plan, report) = of(WEEKEND);
        let answer = ask(&plan, &report, &[id("lamps")], &[]);
        assert!(!answer.may && answer.over.is_empty());
        assert!(answer.dangers.contains(&"AIR001"));
    }

    /// A warning comes with a yes if it is about the load, a part on its way or the generator, and not if it is about
    /// another load.
    #[test]
    fn a_yes_says_what_is_warned_of() {
        let told = |edits: &[(&str, &str)], load: &str| {
            let (plan, report) = of(&crate::rules::testing::edited(edits));
            let answer = ask(&plan, &report, &[id(load)], &[]);
            let words = crate::words::Words::english().may(&report, &answer, 200);
            let codes: Vec<&str> = answer.warnings.iter().map(|it| it.code).collect();
            (answer.may, codes, words.matches("The plan also has a warning (").count())
        };
        assert_eq!(told(&[], "kettle"), (true, vec![], 0));
        let on_front = ("on = \"right\" # fan", "on = \"front\"");
        let single = [
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"5-15R\"\nsockets = 1\nbreaker = \"20 A\""),
            on_front,
        ];
        assert_eq!(told(&single, "fan"), (true, vec!["OVER001"], 1));
        assert_eq!(told(&single, "kettle"), (true, vec![], 0));
        let bonds = [
            ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\""),
            ("gfci = true # front", "gfci = false"),
        ];
        assert_eq!(told(&bonds, "kettle"), (true, vec!["SHOCK004"], 1));
        // Kettle and fan are too much together, but the fan alone is not.
        let much = [
            ("rated = \"3600 W\"", "rated = \"2000 W\""),
            ("peak = \"4500 W\"", "peak = \"2200 W\""),
            ("running = \"50 W\"", "running = \"900 W\""),
        ];
        let codes = |load| told(&much, load).1;
        assert!(!codes("fan").contains(&"POWER001"), "{:?}", codes("fan"));
        let life = [("kind = \"electronic\" # fan", "kind = \"medical\"")];
        assert_eq!(told(&life, "fan"), (true, vec!["HEALTH001"], 1));
        assert_eq!(told(&life, "kettle"), (true, vec![], 0));
    }

    #[test]
    fn names_are_found_and_the_nearest_is_told() {
        let (_, report) = of(MENDED);
        assert_eq!(named(&report, "COOLER"), Ok(vec![id("coolbox")]));
        assert_eq!(named(&report, "KETTLE"), Ok(vec![id("kettle")]));
        // A word is enough if only one load has it.
        assert_eq!(named(&report, "blanket"), Ok(vec![id("blanket")]));
        assert_eq!(named(&report, "phone chargers").map(|found| found.len()), Ok(1));
        let two = MENDED.replacen("name = \"Fan\"", "name = \"Kettle fan\"", 1);
        assert_eq!(named(&of(&two).1, "Kettle"), Ok(vec![id("kettle")]), "a whole name comes first");
        assert!(named(&of(&two.replacen("\"Kettle\"", "\"Tea kettle\"", 1)).1, "kettles").is_err());
        let lost = named(&report, "ketle").expect_err("no such load");
        assert_eq!(lost.nearest.as_deref(), Some("kettle"));
        assert_eq!(named(&report, "zzzz").expect_err("none").nearest, None);
        let several = MENDED.replacen("id = \"lamps\"", "id = \"lamps\"\ncount = 2", 1);
        let (_, report) = of(&several);
        assert_eq!(named(&report, "lamps"), Ok(vec![id("lamps.1"), id("lamps.2")]));
        assert_eq!(named(&report, "lamps.2"), Ok(vec![id("lamps.2")]));
    }

    #[test]
    fn an_order_may_hold_where_any_order_does_not() {
        let motor = |id: &str| {
            format!(
                "[[load]]\nid = \"{id}\"\nname = \"{id}\"\nkind = \"motor\"\nrunning = \"600 W\"\n\
                 starting = \"1500 W\"\npower_factor = 1.0\ncontinuous = false\nplug = \"5-15P\"\n"
            )
        };
        let head = r#"
            format = 1
            [site]
            ground = "dry"
            sleepers_at = "60 ft"
            stands = "open"
            altitude = "0 ft"
            air = "59 °F"
            [generator]
            name = "set"
            rated = "1800 W"
            peak = "2000 W"
            voltage = "120 V"
            [[generator.outlet]]
            id = "front"
            shape = "5-20R"
            sockets = 2
            breaker = "20 A"
        "#;
        let heater = "[[load]]\nid = \"heater\"\nname = \"h\"\nkind = \"heater\"\nrunning = \"480 W\"\n\
                      continuous = false\nplug = \"5-15P\"\n";
        let (plan, report) = of(&format!("{head}\n{}{heater}", motor("pump")));
        // By hand: 600 + 480 W run, and starting takes 900 W more: 1980 W of 2000 W, so any order holds.
        let answer = ask(&plan, &report, &[id("pump"), id("heater")], &[]);
        assert!(answer.may && answer.any_order);
        let order: Vec<&str> = answer.order.iter().map(|step| step.load.as_str()).collect();
        assert_eq!(order, ["pump", "heater"]);
        // With 510 W of heat, pump first takes 1500 W, then 1110 W run. But if the pump restarts by itself, that takes
        // 2010 W of 2000 W. 500 W would just fit.
        let heater = heater.replace("480 W", "510 W");
        let (plan, report) = of(&format!("{head}\n{}{heater}", motor("pump")));
        let answer = ask(&plan, &report, &[id("pump"), id("heater")], &[]);
        assert!(!answer.may && !answer.any_order && !answer.order.is_empty());
        assert_eq!(answer.over[0].passed, Passed::Starting);
        assert_eq!(answer.over[0].by, Some(id("pump")));
    }

    /// 12 A at 120 V in a camper of 50 A are on one half of the generator, and nobody knows which. If nobody knows the
    /// voltage either, they count on both.
    #[test]
    fn what_uses_120_volts_in_a_camper_is_told_on_one_leg() {
        for (volts, step, breaker) in
            [("voltage = \"120 V\"\n", " on one leg", " A\n"), ("", " on A and up to 12 A on B", " A on B\n")]
        {
            let (plan, report) = of(&format!(
                "format = 1\nregion = \"north-america\"\n[site]\nground = \"dry\"\nsleepers_at = \"60 ft\"\n\
                 altitude = \"0 ft\"\nair = \"70 °F\"\nco_alarm = true\nfeeds_building = false\nstands = \"open\"\n\
                 [generator]\nname = \"set\"\nrated = \"5500 W\"\npeak = \"6800 W\"\nvoltage = \"120/240 V\"\n\
                 neutral = \"bonded\"\nbonding_plug = false\n\
                 [[generator.outlet]]\nid = \"main\"\nshape = \"14-50R\"\nbreaker = \"50 A\"\ngfci = true\n\
                 [[box]]\nid = \"camper\"\nkind = \"camper\"\nfrom = \"main\"\ninlet = \"14-50P\"\n\
                 [[load]]\nid = \"roof\"\nname = \"Roof\"\nkind = \"electronic\"\ncurrent = \"12 A\"\n{volts}\
                 on = \"camper\"\nhours = [\"10:00-11:00\"]\n"
            ));
            let answer = ask(&plan, &report, &[id("roof")], &[]);
            let told = crate::words::Words::english().may(&report, &answer, 2000).replace('\u{a0}', " ");
            assert!(told.contains(&format!("up to 12 A{step}\n")), "{told}");
            let of_main = told.lines().find(|line| line.contains("breaker of “main”")).expect("its reading");
            assert!(format!("{of_main}\n").ends_with(breaker), "{told}");
        }
    }

    /// A range with a four-slot plug, which may or may not use only 240 V. All of it is assumed to be on one half, and
    /// the no says so. Near miss: with its volts on the nameplate it may.
    #[test]
    fn a_no_says_what_it_assumed_and_where_to_look() {
        let text = |volts: &str| {
            format!(
                "format = 1\nregion = \"north-america\"\n[site]\nground = \"dry\"\nsleepers_at = \"60 ft\"\n\
                 altitude = \"0 ft\"\nair = \"70 °F\"\nco_alarm = true\nfeeds_building = false\nstands = \"open\"\n\
                 [generator]\nname = \"set\"\nrated = \"5500 W\"\npeak = \"6800 W\"\nvoltage = \"120/240 V\"\n\
                 neutral = \"bonded\"\nbonding_plug = false\n\
                 [[generator.outlet]]\nid = \"main\"\nshape = \"L14-30R\"\nbreaker = \"30 A\"\ngfci = true\n\
                 [[load]]\nid = \"range\"\nname = \"Range\"\nkind = \"cooker\"\nrunning = \"4000 W\"\n{volts}\
                 plug = \"L14-30P\"\nhours = [\"10:00-11:00\"]\non = \"main\"\n"
            )
        };
        let words = crate::words::Words::english();
        for (volts, may) in [("", false), ("voltage = \"240 V\"\n", true)] {
            let (plan, report) = of(&text(volts));
            let answer = ask(&plan, &report, &[id("range")], &[]);
            assert_eq!(answer.may, may, "{:?}", answer.over);
            let told = words.may(&report, &answer, 2000);
            let says = told.contains("We do not know if “Range” uses 240");
            assert_eq!(says && told.contains("Look on its nameplate"), !may, "{told}");
            assert_eq!(answer.rests_on.is_empty(), may);
        }
        // A no from known facts rests on nothing.
        let (plan, report) = of(MENDED);
        let answer = ask(&plan, &report, &[id("kettle"), id("griddle")], &[]);
        assert!(!answer.may);
        assert_eq!(answer.rests_on, []);
    }
}

//! Asking before plugging in: may these be switched on while those run?
//!
//! The answer goes by the placing of the report, so that it never differs from the card, and asks
//! the supply tree itself, point by point, for what is passed and by how much. A plan with a
//! danger in it gets no yes: a danger that is not mended means that the engine stays off.

use serde::Serialize;

use crate::judge::unknowns;
use crate::loads::{LoadUnit, units};
use crate::plan::{Id, Leg, Plan};
use crate::quantity::{ApparentPower, Current, Voltage, narrow};
use crate::report::{Assumption, Finding, Report, Signal, Trouble, leg_names};
use crate::sharing::model::{Fixed, FixedRow};
use crate::sharing::set::LoadSet;
use crate::sharing::start;
use crate::supply::drop::{Flow, Running, lost};
use crate::supply::{NodeIx, NodeKind, Supply};
use crate::verdict::Grounding;

/// What is passed at one point.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Passed {
    /// More than the point carries even for a short time.
    Short,
    /// More than it carries for three hours or more.
    Hours,
    /// More than the set gives in the moment one of them starts.
    Starting,
}

/// One limit that would be passed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Over {
    /// The part.
    pub at: Id,
    /// Whether it is the set itself.
    pub set: bool,
    /// Which limit.
    pub passed: Passed,
    /// What would be asked of it, on the leg that is asked most. For hours, what runs for less counts less, by as much
    /// as the limit for hours is less.
    pub asks: Current,
    /// What it carries; for hours, what it carries that long.
    pub limit: Current,
    /// The difference.
    pub over: Current,
    /// The load that asks it by starting.
    pub by: Option<Id>,
    /// The legs that feed it; of two, amps are those of one.
    #[serde(serialize_with = "leg_names")]
    pub legs: &'static [Leg],
}

/// One step of switching on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Step {
    /// The load.
    pub load: Id,
    /// Where it is plugged in.
    pub at: Id,
    /// The greatest current of a leg of the set in that moment.
    pub peak_amps: Current,
    /// The legs of the set that anything draws on by then; of two, amps are those of one.
    #[serde(serialize_with = "leg_names")]
    pub legs: &'static [Leg],
}

/// What a meter shows at most at a breaker.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct AtBreaker {
    /// The outlet it belongs to.
    pub breaker: Id,
    /// The current with everything on, on the leg that carries most.
    pub amps: Current,
    /// The legs that anything draws on there; of two, amps are those of one.
    #[serde(serialize_with = "leg_names")]
    pub legs: &'static [Leg],
}

/// What a meter shows at least at a receptacle, while the set gives its nominal voltage.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct AtReceptacle {
    /// The receptacle.
    pub receptacle: Id,
    /// The voltage with everything on.
    pub volts: Voltage,
}

/// A warning beside the answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Warned {
    /// The rule.
    pub code: &'static str,
    /// What it is about; nothing where it is about the set or the site.
    pub about: Vec<Id>,
    /// Its place among the troubles of the report.
    #[serde(skip)]
    pub trouble: usize,
}

/// The whole answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Answer {
    /// Whether they may.
    pub may: bool,
    /// What runs already.
    pub running: Vec<Id>,
    /// What is to be switched on.
    pub wanted: Vec<Id>,
    /// The codes of the plan's dangers. With any, they may not.
    pub dangers: Vec<&'static str>,
    /// What the rules warn of that touches those: of them, of a part on their way, or of the whole plan.
    pub warnings: Vec<Warned>,
    /// Those of them that have no place to plug in.
    pub no_place: Vec<Id>,
    /// Those of them that use a socket at other hours than something else of these, which is in it.
    pub taken: Vec<Id>,
    /// Every limit that would be passed, the worst first.
    pub over: Vec<Over>,
    /// What was only assumed in a no: with a better answer to it less is passed, or one of them has a place.
    pub rests_on: Vec<Assumption>,
    /// Whether any order of switching on is as good.
    pub any_order: bool,
    /// The order to switch on with the least peak; none when even that passes the peak.
    pub order: Vec<Step>,
    /// Readings at the breakers.
    pub breakers: Vec<AtBreaker>,
    /// Readings at the receptacles.
    pub receptacles: Vec<AtReceptacle>,
}

/// Whom nobody of that name is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoSuchLoad {
    /// What was asked for.
    pub asked: String,
    /// The nearest name or id there is.
    pub nearest: Option<String>,
}

/// The loads that someone means: one by its id, all of an entry by its id or name. Case does not
/// matter.
///
/// # Errors
/// When there is none, with the nearest.
pub fn named(report: &Report, asked: &str) -> Result<Vec<Id>, NoSuchLoad> {
    /// Below this, a suggestion is a guess.
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
    let nearest = loads
        .iter()
        .flat_map(|load| [load.of.as_str(), load.name.as_str()])
        .map(|text| (strsim::normalized_damerau_levenshtein(&wanted, &text.to_lowercase()), text))
        .filter(|(likeness, _)| *likeness >= NEAR)
        // The first of equals.
        .rev()
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(_, text)| text.to_owned());
    Err(NoSuchLoad { asked: asked.to_owned(), nearest })
}

/// May these be switched on while those run? `report` is the plan's own. Ids that are no load
/// are left out: ask [`named`] for them.
#[must_use]
pub fn ask(plan: &Plan, report: &Report, wanted: &[Id], running: &[Id]) -> Answer {
    let supply = Supply::build(plan);
    let (units, _) = units(plan);
    let chosen =
        |ids: &[Id]| -> Vec<usize> { (0..units.len()).filter(|load| ids.contains(&units[*load].id)).collect() };
    let before = chosen(running);
    let mut after = chosen(wanted);
    after.retain(|load| !before.contains(load));
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

/// The warnings of what is on and on the way to it.
fn warned(report: &Report, on_the_way: &[&Id]) -> Vec<Warned> {
    let warnings = report.figures.troubles.iter().enumerate();
    // A box that may join neutral and ground on the way is no small thing, whatever is in use.
    let doubtful = |trouble: &Trouble| {
        let mut findings = report.findings_of(trouble);
        findings.any(|it| matches!(it.code, "SHOCK004" | "SHOCK005"))
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
            // Of what is too much together, all of it is on, or it is not this.
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

/// Those of one or two legs on which something is drawn.
fn drawn_on(legs: &'static [Leg], on_leg: impl Fn(&Leg) -> i64) -> &'static [Leg] {
    match legs {
        [one, other] if on_leg(one) == 0 && on_leg(other) > 0 => &legs[1..],
        [one, other] if on_leg(other) == 0 && on_leg(one) > 0 => &legs[..1],
        _ => legs,
    }
}

/// What was assumed in these limits passed and loads without a place: each unknown with whose best answer one limit is
/// passed no longer, or those that together are needed for that; of a load without a place, what the rules say of it.
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

/// The loads that are on, each at its receptacle.
struct Scene<'a> {
    supply: &'a Supply,
    units: &'a [LoadUnit],
    on: &'a [(usize, NodeIx)],
}

impl Scene<'_> {
    /// Whether gear, a bonding plug and the loads told before this one have every socket there.
    fn socket_taken(&self, load: usize, at: NodeIx, grounding: &Grounding<'_>) -> bool {
        let before = self.on.iter().take_while(|(other, _)| *other != load);
        before.filter(|(_, place)| *place == at).count() >= grounding.beside_gear(at)
    }

    /// What passes a node on one leg, in millivolt-amperes: of what runs for hours, and of the rest.
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
                // What runs for hours counts as much more as the limit for hours is less. Up.
                let counted = short + narrow((i128::from(long) * 1000 + share - 1) / share);
                if long + short > room.millivolt_amps() {
                    note(Passed::Short, long + short, rating, None);
                } else if counted > room.millivolt_amps() {
                    // Told with the limit that the label has for hours: what runs for less counts less.
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
        // Worst first; a breaker, its wiring and its receptacle are one part to a person, and so are a cord and its
        // end. Where something is too much at all, hours make no difference.
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

    /// Starting less running.
    fn step(&self, load: usize) -> i64 {
        let unit = &self.units[load];
        (unit.starting_apparent - unit.running_apparent).millivolt_amps().max(0)
    }

    /// The amperes of so many millivolt-amperes on a leg, rounded up.
    fn amps(&self, millivolt_amps: i64) -> Current {
        let apparent = ApparentPower::from_millivolt_amps(millivolt_amps);
        Current::of_apparent(apparent, self.supply.volts)
    }

    /// The order of switching on those that do not run yet, beside those that do.
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
                    // What runs already does not start now.
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
        let mut so_far = LoadSet::default();
        let mut steps = Vec::new();
        for at in order {
            so_far.insert(at);
            if runs(at) {
                continue;
            }
            let on_leg = |leg: &Leg| {
                let row = legs.iter().position(|it| it == leg).map(|row| &fixed.rows[row]);
                row.map_or(0, |row| row.sum(&so_far) + row.peak_of(at))
            };
            let drawn_on = drawn_on(legs, on_leg);
            steps.push(Step {
                load: self.units[on[at].0].id.clone(),
                at: self.supply.node(on[at].1).id.clone(),
                peak_amps: self.amps(drawn_on.iter().map(on_leg).max().unwrap_or(0)),
                legs: drawn_on,
            });
        }
        steps
    }

    /// What is on, as the volts lost see it.
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

    /// With nominal volts, or with those that are left: a motor draws more as they sink, a heater less.
    fn breakers(&self, settled: Option<&Flow<'_>>) -> Vec<AtBreaker> {
        (self.supply.points())
            .filter(|(_, node)| matches!(node.kind, NodeKind::Breaker { .. }))
            .filter_map(|(at, node)| {
                let on_leg = |leg: &Leg| {
                    let (long, short) = self.through(at, *leg);
                    long + short
                };
                let legs = drawn_on(node.legs.all(), on_leg);
                let amps = legs.iter().map(on_leg).max().filter(|amps| *amps > 0)?;
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

    /// The card and the answer are two ways of working it out; every pair and every triple of
    /// loads of the demo has to come out alike, whichever of them run already.
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
        // 1500 W and 1400 W at 120 V are 12.5 A and 11.667 A, rounded up: 24.167 A. The set gives
        // 2310 W there, 19.25 A: 4.917 A too much.
        let (plan, report) = of(MENDED);
        let answer = ask(&plan, &report, &[id("kettle"), id("griddle")], &[]);
        assert!(!answer.may);
        let over = answer.over.iter().find(|over| over.set).expect("the set is asked too much");
        assert_eq!(over.passed, Passed::Short);
        assert_eq!(over.asks, Current::from_milliamps(24_167));
        assert_eq!(over.limit, Current::from_milliamps(19_250));
        assert_eq!(over.over, Current::from_milliamps(4_917));
        // The kettle alone: 12.5 A at its breaker and at the one that feeds the box.
        let answer = ask(&plan, &report, &[id("kettle")], &[]);
        assert!(answer.may && answer.any_order);
        let kettle = Current::from_milliamps(12_500);
        let breakers = answer.breakers.iter();
        let amps: Vec<(&str, Current)> = breakers.map(|it| (it.breaker.as_str(), it.amps)).collect();
        assert_eq!(amps, [("twist", kettle), ("box-left", kettle)]);
    }

    /// Beside a fan of 0.417 A the generator gives more than the kettle's own 12.5 A, and that is what a step says it is
    /// of; with nothing on, these alone.
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

    /// 1500 and 50 W of 1540 W: either, but not both. Of 1400 W the first never.
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

    /// 10 A of constant power past 0.396 ohm (100 ft of 12 AWG, 1.98 ohm per 1000 ft, NEC Chapter 9 Table 8, out and
    /// back): v^2 - 120 v + 1200 * 0.396 = 0 leaves 115.90 V, so 10.354 A flow. A heater sinks below its 10 A.
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

    /// A cord that carries 10 A, whose end of 15 A carries 12 A for hours: one limit is told.
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

    /// What the rules warn of stands beside a yes where it is of the load, of a part on its way or of the set, and
    /// not where it is of another.
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
        // Kettle and fan are too much together, and the fan alone is not.
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
        // By hand: 600 + 480 W run, 900 W more to start: 1980 W of 2000 W, any order holds.
        let answer = ask(&plan, &report, &[id("pump"), id("heater")], &[]);
        assert!(answer.may && answer.any_order);
        let order: Vec<&str> = answer.order.iter().map(|step| step.load.as_str()).collect();
        assert_eq!(order, ["pump", "heater"]);
        // 500 W of heat: pump first takes 1500 W, then 1100 W run. But if the pump starts again
        // by itself it is 2000 W and no more; 510 W is too much for that.
        let heater = heater.replace("480 W", "510 W");
        let (plan, report) = of(&format!("{head}\n{}{heater}", motor("pump")));
        let answer = ask(&plan, &report, &[id("pump"), id("heater")], &[]);
        assert!(!answer.may && !answer.any_order && !answer.order.is_empty());
        assert_eq!(answer.over[0].passed, Passed::Starting);
        assert_eq!(answer.over[0].by, Some(id("pump")));
    }

    /// A range with a plug of four slots, of which nobody knows if it uses 240 V alone: all of it is taken to be on one
    /// half, and the no says so. Near miss: with its volts on the nameplate it may.
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
        // What is too much by what is known rests on nothing.
        let (plan, report) = of(MENDED);
        let answer = ask(&plan, &report, &[id("kettle"), id("griddle")], &[]);
        assert!(!answer.may);
        assert_eq!(answer.rests_on, []);
    }
}

//! Sharing for a plan: its supply tree and loads as rows, solved, and given back in terms of ids.
//!
//! **The rows.** Every node of the tree is a thermal row for each leg it is fed from, with its own rating times the
//! voltage of a leg and its own share for three hours or more. The source is also a surge row for each leg. A load adds
//! its volt-amperes to the legs it uses at its receptacle, so that nothing is rounded before it is added up. A cord or
//! box takes up a socket of the receptacle it is plugged into. A receptacle that is not fed is no place.
//!
//! **What is placed.** First comes the best placing by [`place`](mod@super::place): the most that can be served at
//! once, each load in its hours, with sockets counted for the whole day. Loads that never overlap in time do not add,
//! and a load without hours may be on at any time. But campers expect a socket for everything, and take turns with what
//! cannot run at once. So every load that can run alone somewhere then gets a free socket there, where it leaves the
//! most headroom counting everything plugged in. No load that was served moves for it. What may be on at once is in
//! `together`, `never` and `turns`, not in `placed`.
//!
//! A load goes only where the verdict on the receptacle allows loads ([`Verdicts::no_loads`]), whether the plan puts it
//! there or not. A load that fits nowhere else has no place, and the rules say why. Among allowed places, those with
//! working ground-fault protection go before those without, unless the ground is dry.
//!
//! A load that the plan already puts somewhere (`on`) is a fact, not a proposal. Its socket is kept for it, and it
//! stays there even if it is too large for that receptacle. It is then a set of its own in `never`, and the rules see
//! it where it is. If the plan puts more loads at a receptacle than there are sockets, and gives hours for each, those
//! with different hours use a socket one after the other. They are then together in `never`, whatever the receptacle
//! carries.
//!
//! **Where it is used.** Among placings that serve as much, the one with the fewest loads away from where they are used
//! is best. That is where a load is at present, if it may be moved (`now`), or else as far out on cords as exhaust
//! keeps the generator from people. Nothing is used at the generator that another place can take. How full things are
//! counts only beyond the 80 % allowed for hours.
//!
//! **Alike.** Units of one load at one receptacle are interchangeable. Of sets that differ only in which of them they
//! contain, `together` and `never` hold the one with the first of them.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};

use super::budget::Budget;
use super::model::{Fixed, Load, Model, Row, Sums, mask, plugged};
use super::place::{Placing, place};
use super::set::LoadSet;
use super::together::{Alike, Family, conflicts, largest};
use super::told::{Clash, Placed, Sharing, Start, StartStep, StartVerdict, Unplaced};
use super::{start, turns};
use crate::loads::LoadUnit;
use crate::plan::{self, Answer, Cord, Ground, Id, Leg, LoadKind, Plan, Wanted};
use crate::quantity::{ApparentPower, Current, Length, Power, narrow};
use crate::supply::{CONTINUOUS, Legs, NodeIx, NodeKind, Supply};
use crate::tables::exhaust::AMPLE;
use crate::tables::shape::Circuit;
use crate::verdict::Verdicts;

/// The part of a whole check's work that a trial gets, as a divisor.
const TRIAL: u64 = 24;
/// The least work of a trial: enough for the few loads of most plans.
const LEAST: u64 = 80_000;
/// The most sets of a family that are found. Nobody can use more.
const MOST_SETS: usize = 1000;
/// The most loads at a receptacle of which every mix is tried, and the most of those mixes that a label has room for.
const MOST_MIXED: usize = 8;
const MOST_TOLD: usize = 6;
/// A cord of up to this length ends at the generator (common practice, no source, as in rule CORD005).
pub(crate) const AT_SET: Length = Length::from_millimetres(2_000);

/// Returns how far a cord leads. One of unknown length barely leads away from the generator.
pub(crate) fn length_of(cord: &Cord) -> Length {
    cord.length.or(AT_SET + Length::from_millimetres(1))
}

/// Works out where each load plugs in, what may run together, in what order to start, and whose turn it is.
///
/// `units` are the loads as [`crate::loads::units`] gives them. Does not look for changes that would help. Takes no
/// more work than [`Budget::for_loads`].
#[must_use]
pub fn share(plan: &Plan, supply: &Supply, verdicts: &Verdicts<'_>, units: &[LoadUnit]) -> Sharing {
    let budget = &mut Budget::for_loads(units.len());
    let mut setting = Setting::new(plan, supply, verdicts, units);
    let placing = budget.share(3, 4, |budget| place(&setting.model, budget));
    let (at, mut sharing) = setting.told(plan, &placing, budget);
    let fixed = setting.model.at(&at);
    let all = plugged(&at);
    let life_of = |load: usize| plan.loads[units[load].load].may_be(LoadKind::Medical);
    let life: LoadSet = all.iter().filter(|load| life_of(*load)).collect();
    let stays_on = setting.keep_on(plan, &fixed, &all, &life);
    let (setting, model, units) = (&setting, &setting.model, setting.units);
    let alike = alike(units, &at);
    let ids = |set: &LoadSet| set.iter().map(|load| units[load].id.clone()).collect();
    sharing.stays_on = ids(&stays_on);
    sharing.clashes = setting.clashes(&fixed, &at, &alike, budget);

    let mut together = budget.share(1, 2, |budget| largest(&fixed, &all, &alike, &setting.along, MOST_SETS, budget));
    if !together.complete {
        // The most important set may not be among those found.
        let first = setting.grow(&fixed, LoadSet::default(), &all);
        if !together.sets.contains(&first) {
            together.sets.push(first);
        }
        // Nor is every load that can run necessarily in one.
        for load in all.iter() {
            let alone = setting.along[load].with(load);
            if fixed.holds(&alone) && !together.sets.iter().any(|set| set.contains(load)) {
                together.sets.push(setting.grow(&fixed, alone, &all));
            }
        }
    }
    together.sets.retain(|set| !set.is_empty());
    together.sets.sort_by_cached_key(|set| {
        let weigh = |must: bool| -> u64 {
            set.iter().filter(|load| model.loads[*load].must == must).map(|load| model.loads[load].weight).sum()
        };
        (Reverse(weigh(true)), Reverse(weigh(false)), set.iter().collect::<Vec<_>>())
    });
    // Nobody reads this many. After the first set, list the fewest that cover each load, greedily.
    if together.sets.len() > MANY_SETS {
        let mut covered = together.sets[0];
        for at in 1..together.sets.len() {
            let adds = |of: &usize| together.sets[*of].minus(&covered).len();
            let Some(next) = (at..together.sets.len()).rev().max_by_key(adds).filter(|next| adds(next) > 0) else {
                break;
            };
            covered = covered.union(&together.sets[next]);
            together.sets[at..=next].rotate_right(1);
        }
    }
    sharing.families_complete &= together.complete;
    sharing.together = together.sets.iter().map(ids).collect();

    let first = together.sets.first().copied().unwrap_or_default();
    let anyhow = vec![LoadSet::default(); units.len()];
    if let Some(order) = start::order(&fixed, &first, &anyhow) {
        sharing.start_order = setting.start_steps(&order);
        sharing.start_holds = true;
    }
    sharing.start = budget.share(1, 2, |budget| setting.start(&fixed, first, &all, budget));
    let mut stop: Vec<usize> = first.iter().collect();
    stop.sort_by_key(|load| (life_of(*load), Reverse(model.loads[*load].running), *load));
    sharing.stop_order = stop.iter().map(|load| units[*load].id.clone()).collect();

    let (turns, off) = setting.turns(&fixed, &all.minus(&life), &stays_on, budget);
    sharing.turns = turns.iter().map(ids).collect();
    sharing.off = ids(&off);
    sharing
}

/// More sets than this are not read one by one.
const MANY_SETS: usize = 99;

/// Works out the same with little work, and without sets that may run together, orders and turns: the placed and
/// unplaced loads and `never`. For callers that try many plans. Small changes mostly find the best placing, so only a
/// short search is left.
pub(crate) fn places(plan: &Plan, supply: &Supply, verdicts: &Verdicts<'_>, units: &[LoadUnit]) -> Sharing {
    let budget = &mut Budget::of((Budget::for_loads(units.len()).left() / TRIAL).max(LEAST));
    let setting = Setting::new(plan, supply, verdicts, units);
    // Even a long search for places leaves enough to see what may not run together.
    let placing = budget.share(3, 4, |budget| place(&setting.model, budget));
    setting.told(plan, &placing, budget).1
}

/// Returns, for each load, the unit of the same load at the same place that comes just before it.
fn alike(units: &[LoadUnit], at: &[Option<usize>]) -> Alike {
    Alike::new(
        (0..units.len())
            .map(|load| (0..load).rev().find(|other| units[*other].load == units[load].load && at[*other] == at[load])),
    )
}

/// Returns the smallest conflicts: all of them if possible, else those of a few loads.
fn never(fixed: &Fixed, all: &LoadSet, alike: &Alike, budget: &mut Budget) -> Family {
    let mut of_size = |size| budget.share(1, 4, |budget| conflicts(fixed, all, alike, size, MOST_SETS, budget));
    let mut family = of_size(usize::MAX);
    if !family.complete {
        let few = [3, 2].into_iter().map(of_size).find(|few| few.complete);
        // Else those that were found, which are conflicts all the same.
        family.sets = few.map_or(family.sets, |few| few.sets);
        // Whether a load can run at all is known in any case.
        let alone = all.iter().map(|load| LoadSet::default().with(load));
        family.sets.extend(alone.filter(|load| !fixed.holds(load) && alike.leads(load)));
        family.sets.sort_unstable();
        family.sets.dedup();
    }
    family.sets.sort_by_cached_key(|set| (set.len(), set.iter().collect::<Vec<_>>()));
    family
}

/// Whether a load by itself is within the limits of a receptacle and of the generator.
fn could_run(supply: &Supply, at: NodeIx, unit: &LoadUnit) -> bool {
    let limit = supply.limit(at);
    let most = if unit.continuous { limit.continuous } else { limit.short };
    // A receptacle that gives nothing is refused for that, and not for the size of the load.
    (unit.running_current <= most || limit.short <= Current::ZERO)
        && unit.running_apparent <= supply.room(NodeIx(0))
        && unit.starting_apparent <= supply.peak_room()
}

/// The model of a plan, and what its places are.
struct Setting<'a> {
    supply: &'a Supply,
    units: &'a [LoadUnit],
    model: Model,
    /// The receptacle of each place. A receptacle with sockets kept for loads that the plan puts there is one place for
    /// these, and another for the rest.
    places: Vec<NodeIx>,
    /// For each place, whether a GFCI works there.
    protected: Vec<bool>,
    /// For each load, the places that its plug fits and that feed its legs, whatever they carry.
    fits: Vec<Vec<usize>>,
    /// For each load, whether the plan says where it is.
    settled: Vec<bool>,
    /// For each load that fits a receptacle where no load may be plugged in, whether it could run there.
    refused: Vec<Option<bool>>,
    /// For each load that fits a receptacle full of cords, boxes or a bonding plug, whether it could run there.
    taken: Vec<Option<bool>>,
    /// For each load, what a life depends on and stays on with it. Empty until the loads are placed.
    along: Vec<LoadSet>,
    /// Loads beyond what a model can hold.
    beyond: &'a [LoadUnit],
    /// Whether the model holds all loads and places.
    whole: bool,
}

impl<'a> Setting<'a> {
    #[allow(clippy::too_many_lines)] // one model, written out part by part
    fn new(plan: &'a Plan, supply: &'a Supply, verdicts: &Verdicts<'_>, units: &'a [LoadUnit]) -> Self {
        let (units, beyond) = units.split_at(units.len().min(LoadSet::CAPACITY));
        let lengths: BTreeMap<&Id, Length> = (plan.cords.iter()).map(|cord| (&cord.id, length_of(cord))).collect();
        let on = |unit: &LoadUnit| plan.loads[unit.load].on.as_ref();
        let mut places = Vec::new();
        let mut sockets = Vec::new();
        let mut kept = Vec::new();
        let mut shared: Vec<(NodeIx, u32)> = Vec::new();
        // The farthest first, because ties go to the first place, which should be near its users.
        let mut receptacles: Vec<_> = supply.receptacles().collect();
        receptacles.sort_by_cached_key(|(ix, ..)| Reverse(cords(&lengths, supply, *ix).min(AMPLE)));
        for (ix, node, ..) in receptacles {
            let beside_gear = verdicts.grounding.beside_gear(ix);
            let free = u32::try_from(beside_gear).unwrap_or(u32::MAX);
            if supply.limit(ix).short.milliamps() <= 0 || verdicts.no_loads(ix).is_some() {
                continue;
            }
            // What got hot is plugged in nowhere.
            let there = units.iter().filter(|unit| unit.barred != Some("hot") && on(unit) == Some(&node.id));
            let mut settled = u32::try_from(there.clone().count()).unwrap_or(u32::MAX);
            let each = there.map(|unit| (&plan.loads[unit.load], 1));
            if settled > free && one_by_one(&each).is_some_and(|most| most <= beside_gear) {
                shared.push((ix, free));
            } else {
                settled = settled.min(free);
            }
            for (sockets_here, keep) in [(settled, true), (free.saturating_sub(settled), false)] {
                if sockets_here > 0 {
                    places.push(ix);
                    sockets.push(sockets_here);
                    kept.push(keep);
                }
            }
        }
        let whole = places.len() <= Model::MOST_PLACES;
        places.truncate(Model::MOST_PLACES);
        sockets.truncate(Model::MOST_PLACES);

        let dry = plan.site.ground == Answer::Known(Ground::Dry);
        let protected: Vec<bool> = (places.iter()).map(|place| verdicts.protected(*place)).collect();
        let sound: Vec<bool> = protected.iter().map(|it| dry || *it).collect();
        let mut fits: Vec<Vec<usize>> = units
            .iter()
            .map(|unit| {
                let fitting: Vec<usize> = (0..places.len())
                    .filter(|place| {
                        let node = supply.node(places[*place]);
                        let there = match on(unit) {
                            Some(on) => kept[*place] && node.id == *on,
                            None => !kept[*place],
                        };
                        there && unit.barred.is_none() && fits_at(supply, places[*place], unit)
                    })
                    .collect();
                // Unprotected places only where there are no others. The rules then say what is wrong.
                if fitting.iter().any(|place| sound[*place]) {
                    fitting.into_iter().filter(|place| sound[*place]).collect()
                } else {
                    fitting
                }
            })
            .collect();
        let out: Vec<Length> = (places.iter()).map(|place| cords(&lengths, supply, *place)).collect();
        let limits: Vec<(Current, Current)> =
            (places.iter()).map(|place| supply.limit(*place)).map(|limit| (limit.continuous, limit.short)).collect();
        let far: Vec<Vec<usize>> =
            (units.iter().zip(&fits)).map(|(unit, fits)| far(unit, fits, &limits, &out)).collect();
        beside_beds(plan, units, &far, &sockets, &mut fits);
        let loads: Vec<Load> =
            (units.iter().zip(&fits)).map(|(unit, fits)| load(plan, unit, fits, units.len())).collect();
        let costs = loads.iter().zip(units).zip(&far).flat_map(|((load, unit), far)| {
            let now = plan.loads[unit.load].now.as_ref();
            let is_now = |place: &usize| Some(&supply.node(places[*place]).id) == now;
            let now = load.allowed.iter().copied().find(is_now);
            costs(load, far, now, units.len(), &out, &protected)
        });
        let costs = costs.collect();

        let no_loads: Vec<(NodeIx, &Id)> = supply
            .receptacles()
            .filter(|(ix, ..)| verdicts.no_loads(*ix).is_some())
            .map(|(ix, node, ..)| (ix, &node.id))
            .collect();
        let gear_only: Vec<(NodeIx, &Id)> = supply
            .receptacles()
            .filter(|(ix, ..)| {
                let open = verdicts.no_loads(*ix).is_none() && supply.limit(*ix).short > Current::ZERO;
                open && !places.contains(ix)
            })
            .map(|(ix, node, ..)| (ix, &node.id))
            .collect();
        // Whether a load could run at any of these receptacles that its plug fits. `None` where it fits none.
        let runs_at = |at: &[(NodeIx, &Id)], unit: &LoadUnit| {
            let there = at.iter().filter(|(ix, id)| on(unit).is_none_or(|on| on == *id) && fits_at(supply, *ix, unit));
            let runs = there.map(|(ix, _)| could_run(supply, *ix, unit));
            runs.reduce(|any, other| any || other)
        };
        let of_all = |at: &[(NodeIx, &Id)]| units.iter().map(|unit| runs_at(at, unit)).collect();
        let (mut refused, taken): (Vec<Option<bool>>, Vec<Option<bool>>) = (of_all(&no_loads), of_all(&gear_only));
        // A load that the plan puts where nothing may be plugged in is refused for that, and not for its size, if
        // another receptacle could carry it.
        for (refused, unit) in refused.iter_mut().zip(units) {
            let mut open = places.iter().filter(|at| fits_at(supply, **at, unit));
            if *refused == Some(false) && on(unit).is_some() {
                *refused = Some(open.any(|at| could_run(supply, *at, unit)));
            }
        }
        let mut setting = Self {
            supply,
            whole: whole && beyond.is_empty(),
            beyond,
            units,
            model: Model {
                loads,
                sockets,
                rows: Vec::new(),
                implied: Vec::new(),
                moments: Vec::new(),
                costs,
                enough: CONTINUOUS.permille(),
            },
            places,
            protected,
            settled: units.iter().map(|unit| on(unit).is_some()).collect(),
            refused,
            taken,
            fits,
            along: Vec::new(),
        };
        setting.add_rows();
        for (at, sockets) in shared {
            setting.one_after_the_other(at, sockets);
        }
        let spans = |unit: &LoadUnit| plan.loads[unit.load].hours.iter();
        // The set of loads that are on grows only at a minute when some hours begin.
        let mut minutes: Vec<u16> = units.iter().flat_map(spans).map(|span| span.from).collect();
        minutes.push(0);
        setting.model.set_moments(minutes.into_iter().map(|minute| {
            units
                .iter()
                .enumerate()
                .filter(|(_, unit)| {
                    let load = &plan.loads[unit.load];
                    load.hours.is_empty() || load.wants(minute)
                })
                .map(|(load, _)| load)
                .collect()
        }));
        setting
    }

    /// Returns the result for a placing, once every load left over has a place if possible. Includes what may not run
    /// together.
    fn told(&self, plan: &Plan, placing: &Placing, budget: &mut Budget) -> (Vec<Option<usize>>, Sharing) {
        let at = self.fill(&placing.at);
        let mut sharing = Sharing { proven: placing.proven && self.whole, ..Sharing::default() };
        // Includes the loads that are offered another outlet, so that a free socket is promised only once.
        let mut promised = at.clone();
        // The loads that somebody's health depends on choose first, then those that must run.
        let mut homeless: Vec<usize> = (0..self.units.len()).filter(|load| at[*load].is_none()).collect();
        homeless.sort_by_key(|load| Reverse((self.model.loads[*load].weight, self.model.loads[*load].must)));
        let mut offers: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
        for load in homeless {
            let free = self.elsewhere(plan, load, &promised);
            promised[load] = free.first().copied();
            offers.insert(load, free);
        }
        for (load, unit) in self.units.iter().enumerate() {
            if let Some(place) = at[load] {
                sharing.placed.push(Placed { load: unit.id.clone(), at: self.outlet_of(place) });
                continue;
            }
            let free = offers.remove(&load).unwrap_or_default();
            let mut ids: Vec<Id> = free.into_iter().map(|place| self.outlet_of(place)).collect();
            ids.dedup();
            sharing.unplaced.push(Unplaced { load: unit.id.clone(), reason: self.reason(plan, load), free: ids });
        }
        sharing.unplaced.extend(self.beyond.iter().map(|unit| Unplaced {
            load: unit.id.clone(),
            reason: "no-room",
            free: Vec::new(),
        }));
        let never = never(&self.model.at(&at), &plugged(&at), &alike(self.units, &at), budget);
        let ids = |set: &LoadSet| set.iter().map(|load| self.units[load].id.clone()).collect();
        sharing.never = never.sets.iter().map(ids).collect();
        sharing.families_complete = never.complete;
        (at, sharing)
    }

    /// Allows no more loads at once than there are sockets, where the plan puts more.
    fn one_after_the_other(&mut self, at: NodeIx, sockets: u32) {
        let here = (0..self.places.len()).filter(|place| self.places[*place] == at);
        self.model.rows.push(Row {
            capacity: i64::from(sockets),
            balanced: false,
            places: mask(here),
            sums: self.settled.iter().map(|settled| i64::from(*settled)).collect(),
            peaks: Vec::new(),
        });
    }

    fn add_rows(&mut self) {
        let supply = self.supply;
        let under: Vec<Vec<bool>> = self
            .places
            .iter()
            .map(|place| {
                let mut under = vec![false; supply.nodes.len()];
                for (ix, _) in supply.up(*place) {
                    under[ix.0] = true;
                }
                under
            })
            .collect();
        let legs: Vec<&'static [Leg]> = self.places.iter().map(|place| supply.counts_on(*place)).collect();
        for (ix, node) in supply.nodes.iter().enumerate() {
            let carries = |leg: Leg| {
                let (under, legs) = (&under, &legs);
                move |place: usize| under[place][ix] && legs[place].contains(&leg)
            };
            let legs = node.legs.all();
            let source = matches!(node.kind, NodeKind::Source);
            for leg in legs {
                let limit = supply.room(NodeIx(ix)).millivolt_amps();
                let share = node.continuous.permille();
                self.model.thermal(limit, share, !source, carries(*leg));
            }
            if legs.len() == 2 {
                self.model.both_legs();
            }
            if source {
                for leg in legs {
                    let limit = supply.peak_room().millivolt_amps();
                    self.model.surge(limit, carries(*leg));
                }
                if legs.len() == 2 {
                    self.model.both_legs();
                }
            }
        }
        self.model.tighten();
    }

    /// Whether a load keeps every limit at a place by itself.
    fn runs_alone(&self, load: usize, place: usize) -> bool {
        let mut rows = self.model.rows.iter().filter(|row| row.has(place));
        rows.all(|row| row.sums[load] + row.peak(load) <= row.capacity)
    }

    /// Gives a place to the loads that have none, without moving those that have one.
    fn fill(&self, served: &[Option<usize>]) -> Vec<Option<usize>> {
        let mut seats = Seats {
            at: vec![None; served.len()],
            free: self.model.sockets.clone(),
            sums: vec![0; self.model.rows.len()],
            seen: 0,
        };
        for (load, place) in served.iter().enumerate() {
            if let Some(place) = *place {
                self.put(&mut seats, load, place);
            }
        }
        let mut waiting: Vec<usize> = (0..served.len()).filter(|load| served[*load].is_none()).collect();
        waiting.sort_by_key(|load| {
            let of = &self.model.loads[*load];
            (!of.must, Reverse(of.weight), *load)
        });
        let movable: LoadSet = waiting.iter().copied().collect();
        for load in waiting {
            seats.seen = 0;
            self.seat(load, &movable, &mut seats);
        }
        seats.at
    }

    fn put(&self, seats: &mut Seats, load: usize, place: usize) {
        self.take(seats, load);
        seats.at[load] = Some(place);
        seats.free[place] -= 1;
        self.count(seats, load, place, 1);
    }

    fn take(&self, seats: &mut Seats, load: usize) {
        if let Some(place) = seats.at[load].take() {
            seats.free[place] += 1;
            self.count(seats, load, place, -1);
        }
    }

    fn count(&self, seats: &mut Seats, load: usize, place: usize, sign: i64) {
        for (sum, row) in seats.sums.iter_mut().zip(&self.model.rows) {
            if row.has(place) {
                *sum += sign * row.sums[load];
            }
        }
    }

    /// Seats a waiting load, moving other waiting ones if that makes room. This is the augmenting path of bipartite
    /// matching, so as many as possible are seated, the first of them first.
    fn seat(&self, load: usize, movable: &LoadSet, seats: &mut Seats) -> bool {
        let mut places: Vec<usize> = self.fits[load]
            .iter()
            .copied()
            .filter(|place| self.settled[load] || self.runs_alone(load, *place))
            .collect();
        places.sort_by_cached_key(|place| {
            let cost = self.model.cost(load, *place);
            (cost, self.fullness(seats, load, *place))
        });
        if let Some(place) = places.iter().find(|place| seats.free[**place] > 0) {
            self.put(seats, load, *place);
            return true;
        }
        for &place in &places {
            if seats.seen >> place & 1 == 1 {
                continue;
            }
            seats.seen |= 1 << place;
            let guests = movable.iter().filter(|l| seats.at[*l] == Some(place));
            let guests: Vec<usize> = guests.collect();
            for guest in guests {
                if self.seat(guest, movable, seats) {
                    self.put(seats, load, place);
                    return true;
                }
            }
        }
        false
    }

    /// Returns how full the fullest row would be with the load there, counting everything plugged in, in millionths.
    fn fullness(&self, seats: &Seats, load: usize, place: usize) -> i64 {
        let rows = self.model.rows.iter().zip(&seats.sums);
        rows.filter(|(row, _)| row.has(place) && row.sums[load] > 0)
            .map(|(row, sum)| {
                let full = i128::from(sum + row.sums[load]) * 1_000_000;
                narrow(full / i128::from(row.capacity.max(1)))
            })
            .max()
            .unwrap_or(0)
    }

    fn reason(&self, plan: &Plan, load: usize) -> &'static str {
        let fits = &self.fits[load];
        let on = plan.loads[self.units[load].load].on.as_ref();
        if let Some(why) = self.units[load].barred {
            why
        } else if on.is_some_and(|on| self.supply.loose_part(plan, on).is_some()) {
            "no-power"
        } else if fits.is_empty() && self.refused[load].or(self.taken[load]).is_some() {
            // A receptacle that it is too large for anyway is not what keeps it out.
            match (self.refused[load], self.taken[load]) {
                (Some(true), _) => "refused",
                (_, Some(true)) => "no-room",
                _ => "too-large",
            }
        } else if fits.is_empty() {
            // Every receptacle that takes its plug may be full of loads that the plan puts there.
            let unit = &self.units[load];
            let full = self.places.iter().filter(|at| on.is_none() && fits_at(self.supply, **at, unit));
            match full.map(|at| could_run(self.supply, *at, unit)).reduce(|any, other| any || other) {
                Some(true) => "no-room",
                Some(false) => "too-large",
                None => "no-receptacle-fits",
            }
        } else if fits.iter().any(|place| self.runs_alone(load, *place)) {
            "no-room"
        } else {
            "too-large"
        }
    }

    fn outlet_of(&self, place: usize) -> Id {
        self.supply.node(self.places[place]).id.clone()
    }

    /// Returns the places with a free socket that can run a load for which there is none where the plan puts it. If
    /// some have a working GFCI, only those.
    fn elsewhere(&self, plan: &Plan, load: usize, at: &[Option<usize>]) -> Vec<usize> {
        let unit = &self.units[load];
        let told = &plan.loads[unit.load];
        // A load in a camper goes to no other outlet.
        if told.on.is_none() || plan.around(told).is_some() || unit.barred.is_some() {
            return Vec::new();
        }
        let used = |place: usize| at.iter().filter(|at| **at == Some(place)).count();
        let free = |place: &usize| {
            fits_at(self.supply, self.places[*place], unit)
                && self.runs_alone(load, *place)
                && used(*place) < usize::try_from(self.model.sockets[*place]).unwrap_or(usize::MAX)
        };
        let mut free: Vec<usize> = (0..self.places.len()).filter(free).collect();
        if free.iter().any(|place| self.protected[*place]) {
            free.retain(|place| self.protected[*place]);
        }
        free
    }

    /// Returns the steps of an order, each with its power: volt-amperes counted as watts, which are never more.
    fn start_steps(&self, order: &[usize]) -> Vec<StartStep> {
        let mut running = ApparentPower::ZERO;
        order
            .iter()
            .map(|load| {
                let unit = &self.units[*load];
                let legs = unit.volts.millivolts() / self.supply.volts.millivolts().max(1);
                let all =
                    |on_a_leg: ApparentPower| ApparentPower::from_millivolt_amps(on_a_leg.millivolt_amps() * legs);
                let peak = running + all(unit.starting_apparent);
                running = running + all(unit.running_apparent);
                StartStep { load: unit.id.clone(), peak_watts: Power::from_milliwatts(peak.millivolt_amps()) }
            })
            .collect()
    }

    /// Whether the first set, and what else could run with it, can be switched on.
    fn start(&self, fixed: &Fixed, first: LoadSet, all: &LoadSet, budget: &mut Budget) -> Start {
        let anyhow = vec![LoadSet::default(); self.units.len()];
        let loads = self.grow(&fixed.once_started(), first, all);
        let order = start::order(fixed, &loads, &anyhow);
        let ids = |loads: &mut dyn Iterator<Item = usize>| -> Vec<Id> {
            loads.map(|load| self.units[load].id.clone()).collect()
        };
        let verdict = match &order {
            // A set that holds at once holds with any one of its loads starting.
            _ if fixed.holds(&loads) => StartVerdict::AnyOrder,
            Some(_) => StartVerdict::ThisOrder,
            None => StartVerdict::NoOrder,
        };
        let reason = order.is_none().then(|| {
            let rank = |load: usize| {
                let of = &self.model.loads[load];
                (of.must, Reverse(of.excess()), load)
            };
            start::reason(fixed, &loads, &anyhow, rank, budget)
        });
        Start {
            verdict,
            loads: ids(&mut loads.iter()),
            order: ids(&mut order.into_iter().flatten()),
            reason: reason.flatten().map(|load| self.units[load].id.clone()),
        }
    }

    /// Sets what stays on with each load: what a life depends on, or might, and may be on at the same time of day.
    /// Returns all of that. Of several such devices that are too much together, as many as fit count.
    fn keep_on(&mut self, plan: &Plan, fixed: &Fixed, all: &LoadSet, life: &LoadSet) -> LoadSet {
        let load_of = |load: usize| &plan.loads[self.units[load].load];
        let stays_on = self.grow(&fixed.by_moment(&self.model.moments(), all), LoadSet::default(), life);
        let along = |load: usize| -> LoadSet {
            if life.contains(load) {
                return LoadSet::default();
            }
            stays_on.iter().filter(|life| load_of(load).may_meet(load_of(*life))).collect()
        };
        self.along = (0..self.units.len()).map(along).collect();
        stays_on
    }

    /// Whether a set may run at once with what stays on with its loads.
    fn may_run(&self, fixed: &Fixed, set: &LoadSet) -> bool {
        fixed.holds(&set.iter().map(|load| self.along[load]).fold(*set, |all, along| all.union(&along)))
    }

    /// Returns the receptacles whose loads may not all run at once. Each takes one check, and few need more.
    fn clashes(&self, fixed: &Fixed, at: &[Option<usize>], alike: &Alike, budget: &mut Budget) -> Vec<Clash> {
        let mut here: BTreeMap<NodeIx, LoadSet> = BTreeMap::new();
        for (load, place) in at.iter().enumerate() {
            let runs = place.filter(|_| fixed.holds(&LoadSet::default().with(load)));
            if let Some(place) = runs {
                here.entry(self.places[place]).or_default().insert(load);
            }
        }
        let crowded = here.into_iter().filter(|(_, loads)| !self.may_run(fixed, loads));
        let crowded = crowded.filter(|(_, loads)| loads.len() > 1);
        let told = crowded.map(|(place, loads)| {
            let never = budget.share(1, 8, |budget| self.mixes(fixed, &loads, alike, budget));
            let ids = |set: &LoadSet| set.iter().map(|load| self.units[load].id.clone()).collect();
            Clash { at: self.supply.node(place).id.clone(), never: never.iter().map(ids).collect() }
        });
        told.collect()
    }

    /// Returns the smallest sets of these loads that may not run at once. See [`Clash::never`].
    fn mixes(&self, fixed: &Fixed, loads: &LoadSet, alike: &Alike, budget: &mut Budget) -> Vec<LoadSet> {
        let list: Vec<usize> = loads.iter().collect();
        let work = (fixed.rows.len() * loads.len()) as u64;
        let pairs =
            list.iter().enumerate().flat_map(|(at, one)| list[at + 1..].iter().map(move |other| [*one, *other]));
        let any_two = pairs.map(|pair| pair.into_iter().collect()).any(|pair| {
            // Where nobody knows, some two might.
            !budget.spend(work) || self.may_run(fixed, &pair)
        });
        if !any_two {
            return Vec::new();
        }
        let mut never: Vec<LoadSet> = Vec::new();
        let mut subsets: Vec<u32> = if list.len() > MOST_MIXED { Vec::new() } else { (0..1 << list.len()).collect() };
        subsets.retain(|subset| subset.count_ones() > 1);
        subsets.sort_by_key(|subset| (subset.count_ones(), *subset));
        for subset in &subsets {
            let set: LoadSet = (0..list.len()).filter(|at| subset >> at & 1 == 1).map(|at| list[at]).collect();
            if never.iter().any(|known| known.is_subset(&set)) || !alike.leads(&set) {
                continue;
            }
            if !budget.spend(work) {
                return vec![*loads];
            }
            if !self.may_run(fixed, &set) {
                never.push(set);
            }
        }
        if never.is_empty() || never.len() > MOST_TOLD { vec![*loads] } else { never }
    }

    /// Returns the fewest turns in which all of `others` get to run in their hours, or none if everything may be on
    /// whenever it is wanted. Also returns the loads that get no turn, because they are too much together with what
    /// stays on with them.
    ///
    /// A turn also contains whatever else fits, so that what runs all the time need not wait. Everything in a turn may
    /// be on at once whatever its hours, so no turn contradicts `never`. What a life depends on is in every turn of a
    /// load that may be on while it runs.
    fn turns(
        &self,
        fixed: &Fixed,
        others: &LoadSet,
        stays_on: &LoadSet,
        budget: &mut Budget,
    ) -> (Vec<LoadSet>, LoadSet) {
        let all = others.union(stays_on);
        let alone = |load: &usize| fixed.holds(&LoadSet::default().with(*load));
        let off: LoadSet =
            others.iter().filter(alone).filter(|load| !self.may_run(fixed, &LoadSet::default().with(*load))).collect();
        let by_hours = fixed.by_moment(&self.model.moments(), &all).essential(&all);
        let found = turns::fewest(&by_hours, others, stays_on, budget);
        if found.groups.len() <= 1 {
            return (Vec::new(), off);
        }
        let able = others.minus(&found.cannot_run).minus(&off);
        let fixed = fixed.essential(&all);
        let mut classes: Vec<LoadSet> = able.iter().map(|load| self.along[load]).collect();
        classes.sort_by_key(|along| (Reverse(along.len()), *along));
        classes.dedup();
        let mut turns: Vec<LoadSet> = Vec::new();
        for along in classes {
            let left = turns.iter().fold(able, LoadSet::minus);
            let left: LoadSet = left.iter().filter(|load| self.along[*load] == along).collect();
            let groups = turns::fewest(&fixed, &left, &along, budget).groups.into_iter();
            turns.extend(groups.map(|group| self.grow(&fixed, group.union(&along), &able.union(stays_on))));
        }
        turns.sort_by_key(|turn| Reverse(turn.intersection(stays_on).len()));
        (turns, off)
    }

    /// Returns the set with whatever of `others` holds together with it and with what stays on with it: what stays on
    /// first, then musts, then loads that run for hours.
    fn grow(&self, fixed: &Fixed, set: LoadSet, others: &LoadSet) -> LoadSet {
        let stays_on = self.along.iter().fold(LoadSet::default(), LoadSet::union);
        let mut order: Vec<usize> = others.iter().collect();
        order.sort_by_key(|load| {
            let of = &self.model.loads[*load];
            (!stays_on.contains(*load), !of.must, !of.continuous, Reverse(of.weight), *load)
        });
        let mut sums = Sums::of(fixed, &set);
        let mut grown = set;
        for load in order {
            let alone = self.along.get(load).is_none_or(|along| along.is_subset(&grown));
            if !grown.contains(load) && alone && sums.fit(fixed, load) {
                sums.add(fixed, load);
                grown.insert(load);
            }
        }
        grown
    }
}

/// A placing while more loads are seated.
struct Seats {
    at: Vec<Option<usize>>,
    free: Vec<u32>,
    /// For each row, the sum of everything plugged in, on or off.
    sums: Vec<i64>,
    /// The places already tried for the load being seated, as bits.
    seen: u64,
}

/// Builds one load for the model. A medical load counts as a must and outweighs all the rest.
fn load(plan: &Plan, unit: &LoadUnit, fits: &[usize], count: usize) -> Load {
    let medical = unit.kind == LoadKind::Medical;
    Load {
        running: unit.running_apparent.millivolt_amps(),
        starting: unit.starting_apparent.millivolt_amps(),
        continuous: unit.continuous,
        must: medical || plan.loads[unit.load].wanted == Wanted::Must,
        weight: if medical { count as u64 + 1 } else { 1 },
        allowed: fits.to_vec(),
    }
}

/// Restricts medical loads that the plan puts nowhere to places where a sleeper can use them, if there is room for all
/// of them there.
fn beside_beds(plan: &Plan, units: &[LoadUnit], far: &[Vec<usize>], sockets: &[u32], fits: &mut [Vec<usize>]) {
    let lives: Vec<usize> = (0..units.len())
        .filter(|load| units[*load].kind == LoadKind::Medical && !far[*load].is_empty())
        .filter(|load| plan.loads[units[*load].load].on.is_none())
        .collect();
    let there: BTreeSet<usize> = lives.iter().flat_map(|load| &far[*load]).copied().collect();
    let room: u32 = there.iter().map(|place| sockets[*place]).sum();
    if usize::try_from(room).is_ok_and(|room| room >= lives.len()) {
        for load in lives {
            fits[load].clone_from(&far[load]);
        }
    }
}

/// Returns the places among these where people can use a thing, as the generator must stand far from them: as far out
/// on cords as exhaust demands, or else the farthest. Empty if all are at the generator. Only places that can run the
/// load count.
fn far(unit: &LoadUnit, fitting: &[usize], limits: &[(Current, Current)], out: &[Length]) -> Vec<usize> {
    let runs = |place: usize| {
        let (continuous, short) = limits[place];
        unit.running_current <= if unit.continuous { continuous } else { short }
    };
    let mut far: Vec<usize> =
        (fitting.iter().copied()).filter(|place| out[*place] > Length::ZERO && runs(*place)).collect();
    let farthest = far.iter().map(|place| out[*place]).max();
    far.retain(|place| farthest.is_some_and(|farthest| out[*place] >= farthest.min(AMPLE)));
    far
}

/// Returns how far cords lead away from the generator. Zero up to [`AT_SET`].
fn cords(lengths: &BTreeMap<&Id, Length>, supply: &Supply, place: NodeIx) -> Length {
    let long: Length = supply
        .up(place)
        .filter(|(_, node)| node.kind.is_cord())
        .filter_map(|(_, node)| lengths.get(&node.id).copied())
        .sum();
    if long > AT_SET { long } else { Length::ZERO }
}

/// Returns the cost of a load at each place. A place away from where it is used costs more the more the load weighs,
/// and one more if the load is moved from where it is. A place without a working GFCI costs two. All these small costs
/// together never outweigh one load that is away.
fn costs(load: &Load, far: &[usize], now: Option<usize>, count: usize, out: &[Length], protected: &[bool]) -> Vec<i64> {
    let stays = now.filter(|now| far.is_empty() || out[*now] > Length::ZERO);
    let near = stays.as_ref().map_or(far, std::slice::from_ref);
    let count = i64::try_from(count).unwrap_or(i64::MAX / 4);
    let away = i64::try_from(load.weight).unwrap_or(1) * (3 * count + 1);
    let cost = |place: usize| {
        let bare = |place: usize| 2 * i64::from(!protected[place]);
        if near.is_empty() || near.contains(&place) {
            bare(place)
        } else {
            away + bare(place) + i64::from(now.is_some_and(|now| now != place))
        }
    };
    (0..out.len()).map(cost).collect()
}

/// Returns the most of these loads, each with a count, that are plugged in at once if each is only in its hours. `None`
/// if one has no hours.
pub(crate) fn one_by_one<'l>(loads: &(impl Iterator<Item = (&'l plan::Load, usize)> + Clone)) -> Option<usize> {
    let on = |minute: u16| loads.clone().filter(|(load, _)| load.wants(minute)).map(|(_, count)| count).sum();
    // The number of loads that are on grows only at a minute when some hours begin.
    let begins = loads.clone().flat_map(|(load, _)| &load.hours).map(|span| on(span.from));
    (loads.clone().all(|(load, _)| !load.hours.is_empty())).then(|| begins.max().unwrap_or(0))
}

/// Whether the plug fits and every leg it uses is fed. A load counted with all of its current on one leg runs on a
/// single leg too, except for its 240 V parts, which rule FIT006 covers.
fn fits_at(supply: &Supply, place: NodeIx, unit: &LoadUnit) -> bool {
    let node = supply.node(place);
    let NodeKind::Receptacle { shape, .. } = node.kind else {
        return false;
    };
    let one_leg = unit.volts == supply.volts || unit.either_volts;
    let fed = match unit.plug.0.circuit() {
        Circuit::OneLeg => matches!(node.legs, Legs::One(_)),
        Circuit::TwoLegs => matches!(node.legs, Legs::Between | Legs::Both),
        Circuit::TwoLegsNeutral => match node.legs {
            Legs::Both => true,
            Legs::One(_) => one_leg,
            Legs::Between => false,
        },
    };
    // If the generator's voltage is unknown, only one leg is certain.
    let sure = supply.volts_known || one_leg;
    shape.takes(unit.plug) && fed && sure
}

#[cfg(test)]
mod tests;

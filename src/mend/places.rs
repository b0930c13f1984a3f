//! What is plugged in where, and how many sockets that leaves.

use std::collections::{BTreeMap, BTreeSet};

use crate::plan::{Cord, Id, Load, LoadKind, Plan};
use crate::quantity::Length;
use crate::report::{LoadFacts, Report};
use crate::sharing::{AT_SET, length_of, one_by_one};
use crate::supply::{DetachReason, NodeIx, Supply};
use crate::tables::shape::{Plug, Receptacle};
use crate::verdict::{Verdicts, of_camper};

/// The receptacles of a cord or box, and of a camper the place inside.
pub(super) fn ends_of(plan: &Plan, part: &Id) -> Vec<Id> {
    let of_cord = plan.cord(part).into_iter().flat_map(Cord::end_ids);
    let of_box = plan.holder(part).into_iter().flat_map(|it| &it.outlets).map(|outlet| outlet.id.clone());
    let inside = plan.camper(part).map(|it| it.id.clone());
    of_cord.chain(of_box).chain(inside).collect()
}

/// How many plugs of loads the plan has at a receptacle.
pub(super) fn plugs_at(plan: &Plan, at: &Id) -> usize {
    let loads = plan.loads.iter();
    loads.filter(|load| load.plugged_into() == Some(at)).map(|load| usize::from(load.count)).sum()
}

/// How many sockets loads take up at once, at the most, if each is plugged in only in its hours; all of them
/// where one has none.
pub(super) fn at_once(loads: &[&Load]) -> usize {
    let each = loads.iter().map(|load| (*load, usize::from(load.count)));
    one_by_one(&each).unwrap_or_else(|| each.map(|(_, count)| count).sum())
}

/// How far cords lead to each receptacle of cords and boxes, fed or not.
pub(super) struct Leads<'a> {
    /// For each: the length of its cord, nothing where it is of a box, and what that is plugged into.
    holders: BTreeMap<Id, (Option<Length>, Option<&'a Id>)>,
}

impl<'a> Leads<'a> {
    pub fn of(plan: &'a Plan) -> Self {
        let cords = plan.cords.iter().flat_map(|cord| {
            let holder = (Some(length_of(cord)), cord.from.as_ref());
            cord.end_ids().map(move |end| (end, holder))
        });
        let boxes = plan.boxes.iter().flat_map(|it| {
            let inside = it.is_camper().then_some(&it.id);
            let ends = it.outlets.iter().map(|outlet| &outlet.id).chain(inside);
            ends.map(|end| (end.clone(), (None, it.from.as_ref())))
        });
        Self { holders: boxes.chain(cords).collect() }
    }

    /// From a receptacle to the last that is known on the way to the set. A plan is no circle, but one that nobody
    /// has checked may be.
    fn way<'s>(&'s self, at: &'s Id) -> impl Iterator<Item = &'s Id> {
        let from = |at: &&'s Id| self.holders.get(*at).and_then(|(_, from)| *from);
        std::iter::successors(Some(at), from).take(self.holders.len() + 1)
    }

    /// From the set, or from the last box if `from_box`.
    fn length(&self, at: &Id, from_box: bool) -> Length {
        let cords = self.way(at).map_while(|at| self.holders.get(at));
        let cords = cords.map_while(|(cord, _)| cord.or((!from_box).then_some(Length::ZERO)));
        cords.fold(Length::ZERO, |all, cord| all + cord)
    }

    /// How far from the set cords lead by way of one of these receptacles, at most.
    pub fn through(&self, ends: &[Id]) -> Length {
        let mut past = self.holders.keys().collect::<Vec<_>>();
        past.retain(|at| self.way(at).any(|it| ends.contains(it)));
        let lengths = past.into_iter().map(|at| self.length(at, false));
        lengths.max().unwrap_or(Length::ZERO)
    }

    /// Whether a receptacle is at the end of a long cord: another long one is not plugged in there.
    pub fn ends_long(&self, at: &Id) -> bool {
        self.length(at, true) > AT_SET
    }
}

/// Whether a thing is used where people are, and not where the set stands: by its light or its warmth, or
/// because a life depends on it. A camper brings a cord of its own.
fn beside_people(plan: &Plan, load: &Load, facts: &LoadFacts) -> bool {
    let warms = load.may_be(LoadKind::Heater) && facts.continuous;
    (warms || load.may_be(LoadKind::Lamp) || load.may_be(LoadKind::Medical)) && !of_camper(plan, load)
}

/// The loads that are used where people are, or are a camper, and have their places at the set itself, on no cord to
/// speak of. Whoever wants to use one brings the set closer.
pub(super) fn at_the_set(plan: &Plan, report: &Report) -> BTreeSet<Id> {
    of_loads(plan, report, |load, facts, reach| {
        (beside_people(plan, load, facts) || of_camper(plan, load)) && reach.is_some_and(|reach| reach <= AT_SET)
    })
}

/// The loads that have their places at the end of a cord.
pub(super) fn on_cords(plan: &Plan, report: &Report) -> BTreeSet<Id> {
    of_loads(plan, report, |_, _, reach| reach.is_some_and(|reach| reach > AT_SET))
}

/// The loads that have their places on gear at the set that `before` has not: whoever buys gear for what is used
/// elsewhere buys it with a cord.
pub(super) fn on_bought_gear(plan: &Plan, report: &Report, before: &Plan) -> BTreeSet<Id> {
    let bought = |at: &Id| plan.part_of(at).is_some_and(|part| before.gear_of(part).is_none());
    of_loads(plan, report, |_, facts, reach| {
        reach.is_some_and(|reach| reach <= AT_SET) && report.figures.sharing.place(&facts.id).is_some_and(bought)
    })
}

/// The campers that no long cord leads to: each brings one of its own.
pub(super) fn campers_on_no_cord(plan: &Plan, report: &Report) -> BTreeSet<Id> {
    of_loads(plan, report, |load, _, reach| of_camper(plan, load) && reach.is_none_or(|reach| reach <= AT_SET))
}

/// The loads of which this is so, with how far cords take each from the set, where it has a place.
fn of_loads(plan: &Plan, report: &Report, is_so: impl Fn(&Load, &LoadFacts, Option<Length>) -> bool) -> BTreeSet<Id> {
    let cords = Leads::of(plan);
    let wanted = |facts: &&LoadFacts| {
        let Some(load) = plan.load(&facts.of) else {
            return false;
        };
        let place = report.figures.sharing.place(&facts.id).or(load.plugged_into());
        is_so(load, facts, place.map(|at| cords.length(at, false)))
    };
    let loads = report.figures.loads.iter().filter(wanted);
    loads.map(|facts| facts.of.clone()).collect()
}

/// The loads that are used where people are, and have their places there and not at the set.
pub(super) fn used_apart(plan: &Plan, report: &Report) -> BTreeSet<Id> {
    let at_set = at_the_set(plan, report);
    let apart = report.figures.loads.iter().filter(|facts| {
        let load = plan.load(&facts.of);
        load.is_some_and(|load| beside_people(plan, load, facts)) && !at_set.contains(&facts.of)
    });
    apart.map(|facts| facts.of.clone()).collect()
}

/// A receptacle that the generator feeds.
struct Socket {
    ix: NodeIx,
    shape: Receptacle,
    /// How many sockets no cord, box or bonding plug is in.
    beside_gear: usize,
    /// How many nothing at all is in.
    free: usize,
    /// Why nothing at all may be used there, if so: the rule that tells of it, and the part that is wrong.
    refused: Option<(&'static str, Id)>,
}

/// The sockets of a plan as it stands.
pub(super) struct Sockets {
    supply: Supply,
    all: BTreeMap<Id, Socket>,
}

impl Sockets {
    pub fn of(plan: &Plan) -> Self {
        let supply = Supply::build(plan);
        let verdicts = Verdicts::of(plan, &supply);
        let all = supply
            .receptacles()
            .map(|(ix, node, shape, _)| {
                let beside_gear = verdicts.grounding.beside_gear(ix);
                let refused = verdicts.refused(ix);
                let socket = Socket {
                    ix,
                    shape,
                    beside_gear,
                    free: beside_gear.saturating_sub(plugs_at(plan, &node.id)),
                    refused: refused.map(|it| (it.cause.code(), supply.node(it.at).id.clone())),
                };
                (node.id.clone(), socket)
            })
            .collect();
        Self { supply, all }
    }

    /// Whether the receptacle is connected to the generator and takes this plug.
    pub fn takes(&self, at: &Id, plug: Plug) -> bool {
        self.all.get(at).is_some_and(|it| it.shape.takes(plug))
    }

    /// Whether something may be plugged in there, if only gear with protection of its own.
    pub fn usable(&self, at: &Id) -> bool {
        self.all.get(at).is_some_and(|it| it.refused.is_none())
    }

    /// Why nothing at all may be plugged in there: the rule that tells of it, and the part that is wrong.
    pub fn refused(&self, at: &Id) -> Option<&(&'static str, Id)> {
        self.all.get(at)?.refused.as_ref()
    }

    /// The sockets that no cord, box or bonding plug is in. None where the generator does not feed it.
    pub fn beside_gear(&self, at: &Id) -> usize {
        self.all.get(at).map_or(0, |it| it.beside_gear)
    }

    /// The sockets that nothing at all is in.
    pub fn free(&self, at: &Id) -> usize {
        self.all.get(at).map_or(0, |it| it.free)
    }

    /// Whether more gear is said to be in this receptacle than it has sockets for.
    pub fn crowded(&self, plan: &Plan, at: &Id) -> bool {
        let lost = self.supply.detached.iter().filter(|it| it.reason == DetachReason::NoFreeSocket);
        lost.filter_map(|it| plan.gear_of(&it.id)).any(|it| it.from == Some(at))
    }

    /// Whether this receptacle hangs on the part.
    pub fn hangs_on(&self, at: &Id, part: &Id) -> bool {
        self.all
            .get(at)
            .is_some_and(|it| self.supply.up(it.ix).any(|(_, node)| node.id == *part && node.kind.is_gear()))
    }
}

//! Where things are plugged in, and which sockets that leaves free.

use std::collections::{BTreeMap, BTreeSet};

use crate::plan::{Cord, Id, Load, LoadKind, Plan};
use crate::quantity::Length;
use crate::report::{LoadFacts, Report};
use crate::sharing::{AT_SET, length_of, one_by_one};
use crate::supply::{DetachReason, NodeIx, Supply};
use crate::tables::shape::{Plug, Receptacle};
use crate::verdict::{Verdicts, of_camper};

/// Returns the receptacles of a cord or box, and for a camper the place inside it.
pub(super) fn ends_of(plan: &Plan, part: &Id) -> Vec<Id> {
    let of_cord = plan.cord(part).into_iter().flat_map(Cord::end_ids);
    let of_box = plan.holder(part).into_iter().flat_map(|it| &it.outlets).map(|outlet| outlet.id.clone());
    let inside = plan.camper(part).map(|it| it.id.clone());
    of_cord.chain(of_box).chain(inside).collect()
}

/// Counts the plugs of loads that the plan has at a receptacle.
pub(super) fn plugs_at(plan: &Plan, at: &Id) -> usize {
    let loads = plan.loads.iter();
    loads.filter(|load| load.plugged_into() == Some(at)).map(|load| usize::from(load.count)).sum()
}

/// Returns the most sockets that loads occupy at once if each is plugged in only during its hours. Counts all of them
/// if any load has no hours.
pub(super) fn at_once(loads: &[&Load]) -> usize {
    let each = loads.iter().map(|load| (*load, usize::from(load.count)));
    one_by_one(&each).unwrap_or_else(|| each.map(|(_, count)| count).sum())
}

/// The cord lengths to every receptacle of cords and boxes, fed or not.
pub(super) struct Leads<'a> {
    /// For each receptacle: the length of its cord (`None` for a box), and what the cord or box is plugged into.
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

    /// Walks from a receptacle toward the generator. Bounded, because a plan that has not been checked may contain a
    /// cycle.
    fn way<'s>(&'s self, at: &'s Id) -> impl Iterator<Item = &'s Id> {
        let from = |at: &&'s Id| self.holders.get(*at).and_then(|(_, from)| *from);
        std::iter::successors(Some(at), from).take(self.holders.len() + 1)
    }

    /// Sums the cord lengths from the generator, or from the nearest box if `from_box`.
    fn length(&self, at: &Id, from_box: bool) -> Length {
        let cords = self.way(at).map_while(|at| self.holders.get(at));
        let cords = cords.map_while(|(cord, _)| cord.or((!from_box).then_some(Length::ZERO)));
        cords.fold(Length::ZERO, |all, cord| all + cord)
    }

    /// Returns the longest cord run from the generator through any of these receptacles.
    pub fn through(&self, ends: &[Id]) -> Length {
        let mut past = self.holders.keys().collect::<Vec<_>>();
        past.retain(|at| self.way(at).any(|it| ends.contains(it)));
        let lengths = past.into_iter().map(|at| self.length(at, false));
        lengths.max().unwrap_or(Length::ZERO)
    }

    /// Whether a receptacle ends a long cord. Another long cord is not plugged in there.
    pub fn ends_long(&self, at: &Id) -> bool {
        self.length(at, true) > AT_SET
    }
}

/// Whether a load is used near people rather than at the generator: for its light or warmth, or because a life depends
/// on it. A camper is excluded, since it brings its own cord.
fn beside_people(plan: &Plan, load: &Load, facts: &LoadFacts) -> bool {
    let warms = load.may_be(LoadKind::Heater) && facts.continuous;
    (warms || load.may_be(LoadKind::Lamp) || load.may_be(LoadKind::Medical)) && !of_camper(plan, load)
}

/// Returns the loads that are used near people, and the campers, placed at the generator on no cord to speak of. People
/// would bring the generator closer to use them.
pub(super) fn at_the_set(plan: &Plan, report: &Report) -> BTreeSet<Id> {
    of_loads(plan, report, |load, facts, reach| {
        (beside_people(plan, load, facts) || of_camper(plan, load)) && reach.is_some_and(|reach| reach <= AT_SET)
    })
}

/// Returns the loads placed at the end of a cord.
pub(super) fn on_cords(plan: &Plan, report: &Report) -> BTreeSet<Id> {
    of_loads(plan, report, |_, _, reach| reach.is_some_and(|reach| reach > AT_SET))
}

/// Returns the loads placed on gear at the generator that `before` lacks. Gear bought for what is used elsewhere comes
/// with a cord.
pub(super) fn on_bought_gear(plan: &Plan, report: &Report, before: &Plan) -> BTreeSet<Id> {
    let bought = |at: &Id| plan.part_of(at).is_some_and(|part| before.gear_of(part).is_none());
    of_loads(plan, report, |_, facts, reach| {
        reach.is_some_and(|reach| reach <= AT_SET) && report.figures.sharing.place(&facts.id).is_some_and(bought)
    })
}

/// Returns the campers that no long cord reaches. Each brings its own cord.
pub(super) fn campers_on_no_cord(plan: &Plan, report: &Report) -> BTreeSet<Id> {
    of_loads(plan, report, |load, _, reach| of_camper(plan, load) && reach.is_none_or(|reach| reach <= AT_SET))
}

/// Returns the loads for which the predicate holds. It is given the length of cord to each load, if the load has a
/// place.
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

/// Returns the loads that are used near people and have their places there, not at the generator.
pub(super) fn used_apart(plan: &Plan, report: &Report) -> BTreeSet<Id> {
    let at_set = at_the_set(plan, report);
    let apart = report.figures.loads.iter().filter(|facts| {
        let load = plan.load(&facts.of);
        load.is_some_and(|load| beside_people(plan, load, facts)) && !at_set.contains(&facts.of)
    });
    apart.map(|facts| facts.of.clone()).collect()
}

/// A receptacle that is fed by the generator.
struct Socket {
    ix: NodeIx,
    shape: Receptacle,
    /// Sockets without a cord, box or bonding plug in them.
    beside_gear: usize,
    /// Sockets with nothing in them.
    free: usize,
    /// Why nothing may be used there, if so: the rule's code and the part at fault.
    refused: Option<(&'static str, Id)>,
}

/// The fed receptacles of a plan as it stands.
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

    /// Whether the generator feeds the receptacle and the receptacle takes this plug.
    pub fn takes(&self, at: &Id, plug: Plug) -> bool {
        self.all.get(at).is_some_and(|it| it.shape.takes(plug))
    }

    /// Whether anything may be plugged in there, even if only gear with its own protection.
    pub fn usable(&self, at: &Id) -> bool {
        self.all.get(at).is_some_and(|it| it.refused.is_none())
    }

    /// Returns why nothing may be plugged in there: the rule's code and the part at fault.
    pub fn refused(&self, at: &Id) -> Option<&(&'static str, Id)> {
        self.all.get(at)?.refused.as_ref()
    }

    /// Returns how many sockets hold no cord, box or bonding plug; 0 where the generator does not feed it.
    pub fn beside_gear(&self, at: &Id) -> usize {
        self.all.get(at).map_or(0, |it| it.beside_gear)
    }

    /// Returns how many sockets hold nothing.
    pub fn free(&self, at: &Id) -> usize {
        self.all.get(at).map_or(0, |it| it.free)
    }

    /// Whether the plan puts more gear into this receptacle than it has sockets for.
    pub fn crowded(&self, plan: &Plan, at: &Id) -> bool {
        let lost = self.supply.detached.iter().filter(|it| it.reason == DetachReason::NoFreeSocket);
        lost.filter_map(|it| plan.gear_of(&it.id)).any(|it| it.from == Some(at))
    }

    /// Whether this receptacle is downstream of the part.
    pub fn hangs_on(&self, at: &Id, part: &Id) -> bool {
        self.all
            .get(at)
            .is_some_and(|it| self.supply.up(it.ix).any(|(_, node)| node.id == *part && node.kind.is_gear()))
    }
}

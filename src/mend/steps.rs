//! Puts changes into an order in which people can make them: each step finds its part, and its socket free and fed.

use super::change::{Change, Seat};
use super::places::{Sockets, at_once};
use crate::plan::{Id, Load, Plan};
use crate::report::Report;

/// A thing to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// The change to make.
    pub change: Change,
    /// Whether another change brings it about and its cost includes this one.
    pub comes_along: bool,
}

impl Step {
    fn along(change: Change) -> Self {
        Self { change, comes_along: true }
    }
}

/// Returns the changes together with the moves that follow from them. `mended` is the plan with all changes and
/// `report` its report.
///
/// Each load that has to leave its receptacle gets a step of its own: to where the sharing puts it if `seated`, else to
/// wherever it fits by then.
pub(super) fn with_moves(
    before: &Plan,
    changes: &[Change],
    (mended, report): (&Plan, &Report),
    seated: bool,
) -> Vec<Step> {
    let mut steps: Vec<Step> =
        changes.iter().map(|change| Step { change: change.clone(), comes_along: false }).collect();
    for load in &mended.loads {
        let Some(old) = before.load(&load.id) else {
            continue;
        };
        let shares = |change: &Change| match change {
            Change::TakeTurns { load: one, with, .. } => *one == load.id || with.contains(&load.id),
            _ => false,
        };
        if changes.iter().any(shares) {
            continue;
        }
        let Some(to) = goes(old, load, report) else {
            continue;
        };
        let change = match to {
            Goes::Nowhere => Change::Unplug(load.id.clone()),
            Goes::To(seat) => Change::Move {
                load: load.id.clone(),
                to: Some(seat).filter(|seat| seated || load.on.as_ref() == Some(&seat.at)),
            },
            Goes::Anywhere => Change::moved(load.id.clone()),
        };
        let moved = Change::moved(load.id.clone());
        match steps.iter_mut().find(|step| step.change == moved) {
            Some(step) => step.change = change,
            None => steps.push(Step::along(change)),
        }
    }
    // A cord left without anything to feed comes out too.
    for change in changes {
        let Change::SetAside(part) = change else {
            continue;
        };
        let mut at = from_of(before, part);
        while let Some(cord) = at.and_then(|at| before.part_of(at)) {
            if from_of(mended, cord).is_some() || from_of(before, cord).is_none() {
                break;
            }
            let out = Change::SetAside(cord.clone());
            if !steps.iter().any(|step| step.change == out) {
                steps.push(Step::along(out));
            }
            at = from_of(before, cord);
        }
    }
    // What was plugged into a replaced part goes into the new one.
    for now in mended.gear() {
        // The box for a splitter is reported together with where it plugs in.
        let told = |step: &Step| {
            matches!(&step.change, Change::Replug { part: it, .. } | Change::BoxForSplitter { cord: it, .. }
                if it == now.id)
        };
        if let (Some(was), Some(to)) = (before.gear_of(now.id), now.from)
            && was.from != now.from
            && !steps.iter().any(told)
        {
            steps.push(Step::along(Change::Replug { part: now.id.clone(), to: to.clone() }));
        }
    }
    steps
}

/// Returns what a cord or box is plugged into.
fn from_of<'a>(plan: &'a Plan, part: &Id) -> Option<&'a Id> {
    plan.gear_of(part)?.from
}

/// Where a load goes.
enum Goes {
    To(Seat),
    /// Identical units go to more than one receptacle, or not all of them have a place.
    Anywhere,
    Nowhere,
}

/// Returns where a load goes that was plugged in somewhere, or `None` if it stays there.
fn goes(old: &Load, load: &Load, report: &Report) -> Option<Goes> {
    let was = old.plugged_into()?;
    if let Some(on) = &load.on {
        // Its receptacle is the one it had, or the one that the changed plan gives it.
        let seat = Seat { at: on.clone(), stays: true };
        return (on != was).then_some(Goes::To(seat));
    }
    let figures = &report.figures;
    let mut places: Vec<&Id> = figures.units(&load.id).filter_map(|unit| figures.sharing.place(&unit.id)).collect();
    let all = places.len() == usize::from(load.count);
    places.dedup();
    match places.as_slice() {
        [] => Some(Goes::Nowhere),
        _ if !all => Some(Goes::Anywhere),
        [at] if *at == was && old.on.is_none() => None,
        [at] => Some(Goes::To(Seat { at: (*at).clone(), stays: old.on.is_some() })),
        _ => Some(Goes::Anywhere),
    }
}

/// Unplugs each load that would move "where the card shows" if the card does not show it. It has no place in the plan
/// either way. Returns whether there was any.
pub(super) fn pull_out_what_is_nowhere(steps: &mut [Step], report: &Report) -> bool {
    let figures = &report.figures;
    let mut any = false;
    for step in steps {
        let Change::Move { load, to: None } = &step.change else {
            continue;
        };
        if !figures.units(load).any(|unit| figures.sharing.place(&unit.id).is_some()) {
            step.change = Change::Unplug(load.clone());
            any = true;
        }
    }
    any
}

/// Orders the steps, unplugging first whatever is in the way, and returns them with the resulting plan. `None` if there
/// is no such order.
pub(super) fn in_order(before: &Plan, steps: Vec<Step>) -> Option<(Vec<Step>, Plan)> {
    let mut plan = before.clone();
    let mut left = steps;
    left.sort_by(|a, b| a.change.cmp(&b.change));
    let mut done: Vec<Step> = Vec::new();
    while !left.is_empty() {
        let sockets = Sockets::of(&plan);
        let open = |step: &Step| matches!(step.change, Change::Move { to: None, .. });
        // Loads that go wherever they fit come after all that have fixed places.
        let settled = left.iter().all(|step| open(step) || !places(&step.change));
        let ready = |step: &Step| (!open(step) || settled) && finds_all(&plan, &sockets, &step.change);
        let next = match left.iter().position(ready) {
            Some(at) => left.remove(at),
            None => Step::along(Change::Unplug(in_the_way(&plan, &left)?)),
        };
        // Loads on a part that was set aside are out already.
        if let Change::Unplug(id) = &next.change
            && plan.load(id).is_some()
            && place_of(&plan, id).is_none()
        {
            continue;
        }
        if !next.change.apply(&mut plan) {
            return None;
        }
        done.push(next);
    }
    Some((done, plan))
}

/// Whether a change plugs something in.
const fn places(change: &Change) -> bool {
    needs(change).is_some() || matches!(change, Change::Move { .. })
}

/// Returns the receptacle that a change plugs something into.
const fn needs(change: &Change) -> Option<&Id> {
    match change {
        Change::Move { to: Some(Seat { at, .. }), .. }
        | Change::Replug { to: at, .. }
        | Change::ProtectedOutlet { at, .. }
        | Change::ThreeWay { at, .. }
        | Change::TakeTurns { at, .. }
        | Change::BondingPlug(at)
        | Change::NewBox(at) => Some(at),
        _ => None,
    }
}

/// Returns where a load is plugged in, if anywhere.
fn place_of<'a>(plan: &'a Plan, load: &Id) -> Option<&'a Id> {
    plan.load(load)?.plugged_into()
}

/// Whether a change finds every socket it needs. `apply` tells whether it finds its part.
fn finds_all(plan: &Plan, sockets: &Sockets, change: &Change) -> bool {
    match change {
        Change::Move { load, to: Some(seat) } => {
            let count = plan.load(load).map_or(1, |load| usize::from(load.count));
            place_of(plan, load) == Some(&seat.at) || sockets.free(&seat.at) >= count
        }
        Change::TakeTurns { load, with, at } => {
            let among = |id: &Id| id == load || with.contains(id);
            let there = |load: &&Load| among(&load.id) || place_of(plan, &load.id) == Some(at);
            let there: Vec<&Load> = plan.loads.iter().filter(there).collect();
            at_once(&there) <= sockets.beside_gear(at)
        }
        Change::Replug { part, to } => {
            let fits = |plug| sockets.takes(to, plug) && sockets.free(to) > 0 && !sockets.hangs_on(to, part);
            plan.gear_of(part).is_some_and(|it| it.plug.is_some_and(|plug| it.from == Some(to) || fits(plug)))
        }
        Change::ProtectedOutlet { at, sockets: many } => sockets.beside_gear(at) >= usize::from(*many),
        Change::ThreeWay { at, clears: true } => sockets.beside_gear(at) > 0,
        Change::BondingPlug(at) | Change::ThreeWay { at, clears: false } | Change::NewBox(at) => sockets.free(at) > 0,
        _ => true,
    }
}

/// Returns a load or part that holds a needed receptacle and is itself to go elsewhere.
fn in_the_way(plan: &Plan, left: &[Step]) -> Option<Id> {
    let wanted = |at: &Id| left.iter().any(|step| needs(&step.change) == Some(at));
    left.iter().find_map(|step| match &step.change {
        Change::Move { load, to } => {
            let at = place_of(plan, load)?;
            let elsewhere = to.as_ref().is_none_or(|seat| seat.at != *at);
            (elsewhere && wanted(at)).then(|| load.clone())
        }
        Change::Replug { part, to } => {
            let at = from_of(plan, part)?;
            (at != to && wanted(at)).then(|| part.clone())
        }
        _ => None,
    })
}

//! The stated list: for each problem, every change on it that may have a part in clearing it.
//!
//! A list errs on the long side. The search needs it to hold at least one change of every set
//! that clears the problem; a change on it that does not help costs only time, since every set
//! is judged by the whole check.

use std::cell::OnceCell;
use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};

use super::change::{Change, LENGTHS, apart, begun_at, shape_of};
use super::places::{Leads, Sockets, at_once, ends_of, plugs_at};
use crate::plan::{
    Answer, Cord, DistributionBox, Draw, Gear, Id, Load, LoadKind, Neutral, Plan, Span, Stands, System, Wanted,
};
use crate::quantity::Length;
use crate::report::{Finding, Limit, LoadFacts, Placed, Report, Signal, Value};
use crate::rules;
use crate::sharing::{AT_SET, length_of};
use crate::tables::conductor::gauge_of;
use crate::tables::exhaust::AMPLE;
use crate::tables::night::{self, NIGHT};
use crate::tables::shape::{Circuit, Configuration, Plug, Receptacle};
use crate::verdict::{of_camper, wrong_anywhere};

/// Cords are sold in these sizes, thinnest first.
const GAUGES: [i8; 6] = [16, 14, 12, 10, 8, 6];
/// How many sizes thicker are tried.
const THICKER: usize = 3;
/// How many other hours are tried for each of a load's.
const OTHER_HOURS: usize = 4;
/// How many places are tried for what may go to any.
const PLACES: usize = 2;
/// The areas whose dangers lie in the gear.
const OF_GEAR: [&str; 4] = ["overcurrent", "fit", "shock", "cord"];
/// One over so much of its power: how much smaller an appliance is tried.
const PARTS: [u8; 2] = [2, 3];

/// Something that a repair has to clear.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Problem {
    /// A finding, one problem for each part where each needs its own remedy.
    Finding {
        /// The rule's code.
        code: &'static str,
        /// What it is about.
        about: Vec<Id>,
    },
    /// A must without a place, or musts that cannot all be on when they are wanted.
    Waits(Vec<Id>),
    /// A load that is used where people are, and would be brought to the set.
    AtTheSet(Id),
}

/// The problems of this signal or worse, and the musts that wait.
pub(super) fn problems(plan: &Plan, report: &Report, down_to: Signal) -> Vec<Problem> {
    let mut list: Vec<Problem> = Vec::new();
    let findings = report.findings.iter().filter(|finding| finding.signal <= down_to);
    for finding in findings {
        for about in split(finding) {
            list.push(Problem::Finding { code: finding.code, about });
        }
    }
    let too_much = too_much_already(plan, report);
    // Who has no room because another is on gets it, or does not, once that is settled.
    let unplaced = &report.figures.sharing.unplaced;
    let no_room = |id: &Id| unplaced.iter().any(|it| it.load == *id && it.reason == "no-room");
    let settled_first = |set: &Vec<Id>| match set.as_slice() {
        [id] => no_room(id) && too_much.iter().any(|pair| pair.contains(id)),
        _ => false,
    };
    let waiting = waiting(plan, report).into_iter();
    let waiting = waiting.filter(|set| !settled_first(set));
    list.extend(waiting.chain(too_much.iter().cloned()).map(Problem::Waits));
    list
}

impl Problem {
    /// Whether this is what is left of another one, or it itself.
    pub(super) fn within(&self, other: &Self) -> bool {
        let among = |these: &[Id], those: &[Id]| these.iter().all(|id| those.contains(id));
        match (self, other) {
            (Self::Finding { code, about }, Self::Finding { code: of, about: whole }) => {
                code == of && among(about, whole)
            }
            (Self::Waits(loads), Self::Waits(whole)) => among(loads, whole),
            (Self::AtTheSet(load), Self::AtTheSet(other)) => load == other,
            _ => false,
        }
    }

    /// Whether as much of a check as this report is would find it.
    pub(super) fn is_found_in(&self, report: &Report) -> bool {
        match self {
            Self::Finding { code, .. } => report.findings.iter().any(|it| it.code == *code),
            Self::Waits(_) | Self::AtTheSet(_) => true,
        }
    }

    /// How many things it names, at least one.
    pub(super) fn size(&self) -> usize {
        match self {
            Self::Finding { about: named, .. } | Self::Waits(named) => named.len().max(1),
            Self::AtTheSet(_) => 1,
        }
    }
}

/// Most rules name what has a part in one hazard; some, parts that are each cured by themselves.
fn split(finding: &Finding) -> Vec<Vec<Id>> {
    if Report::ONE_BY_ONE.contains(&finding.code) {
        finding.about.iter().map(|id| vec![id.clone()]).collect()
    } else {
        vec![finding.about.clone()]
    }
}

/// What the plan says of each load of its report.
struct Wants<'a> {
    plan: &'a Plan,
    report: &'a Report,
    /// More is on than a minute before only where some hours begin.
    begins: Vec<u16>,
}

impl<'a> Wants<'a> {
    fn of(plan: &'a Plan, report: &'a Report) -> Self {
        let spans = plan.loads.iter().flat_map(|it| &it.hours);
        let begins = std::iter::once(0).chain(spans.map(|span| span.from));
        Self { plan, report, begins: begins.collect() }
    }

    fn load(&self, id: &Id) -> Option<(&'a Load, &'a LoadFacts)> {
        let fact = self.report.figures.load(id)?;
        Some((self.plan.load(&fact.of)?, fact))
    }

    fn must(&self, id: &Id) -> bool {
        self.load(id).is_some_and(|(it, _)| it.wanted == Wanted::Must || it.may_be(LoadKind::Medical))
    }

    /// Whether it is on at that minute. What has no hours and does not run for long waits without harm.
    fn on(&self, id: &Id, minute: u16) -> bool {
        self.load(id).is_some_and(|(it, fact)| {
            if it.hours.is_empty() { fact.continuous || it.may_be(LoadKind::Medical) } else { it.wants(minute) }
        })
    }

    fn at_one_time(&self, set: &[Id]) -> bool {
        let mut begins = self.begins.iter();
        begins.any(|minute| set.iter().all(|id| self.on(id, *minute)))
    }
}

/// The musts without a place, and the sets of musts that are wanted at one time and may not be
/// on together.
pub(super) fn waiting(plan: &Plan, report: &Report) -> Vec<Vec<Id>> {
    let wants = Wants::of(plan, report);
    let sharing = &report.figures.sharing;
    let lost = sharing.unplaced.iter().map(|unplaced| &unplaced.load);
    let lost = lost.filter(|id| wants.must(id)).map(|id| vec![id.clone()]);
    let clash = sharing
        .never
        .iter()
        .filter(|set| set.iter().all(|id| wants.must(id)) && (set.len() == 1 || wants.at_one_time(set)));
    lost.chain(clash.cloned()).collect()
}

/// Two musts that are wanted at one time and are too much for the set, wherever they will be plugged in:
/// one of them has no place yet.
fn too_much_already(plan: &Plan, report: &Report) -> Vec<Vec<Id>> {
    let wants = Wants::of(plan, report);
    let musts: Vec<&Id> = report.figures.loads.iter().map(|fact| &fact.id).collect();
    let sharing = &report.figures.sharing;
    // What is too much for every place, or for its own plug, gets none because something else is moved.
    let lost = |id: &Id| {
        let lost = sharing.without_place(id);
        lost.is_some_and(|it| !matches!(it.reason, "too-large" | "impossible" | "hot"))
    };
    let mut pairs = Vec::new();
    for one in musts.iter().filter(|id| lost(id) && wants.must(id)) {
        for other in musts.iter().filter(|id| *id != one && wants.must(id)) {
            // Of two that are lost once.
            let pair = [(*one).clone(), (*other).clone()];
            if (!lost(other) || one < other) && beyond_the_set(report, &pair) && wants.at_one_time(&pair) {
                pairs.push(pair.into());
            }
        }
    }
    pairs
}

/// Whether these ask for more than the set gives.
fn beyond_the_set(report: &Report, loads: &[Id]) -> bool {
    report.figures.beyond_the_set(loads.iter().filter_map(|id| report.figures.load(id)))
}

/// When nothing is moved to that makes a noise: the night, and the camp's quiet hours, which are taken
/// for the night where nobody knows them.
fn silent(plan: &Plan) -> Vec<Span> {
    let quiet = night::quiet(&plan.site);
    std::iter::once(NIGHT).chain(quiet.iter().copied()).collect()
}

/// The list of a plan.
pub(super) struct List<'a> {
    plan: &'a Plan,
    report: &'a Report,
    sockets: Sockets,
    /// The receptacles that may be used, if only by what has protection of its own: those that are protected first,
    /// then those that carry most.
    /// Each with how many sockets nothing is in.
    sound: Vec<(&'a Limit, usize)>,
    /// The cords and boxes that are plugged into nothing and with which nothing is wrong, with their receptacles:
    /// worked out when the first change asks.
    spare: OnceCell<Vec<(&'a Id, Vec<Receptacle>)>>,
    /// The cords and boxes into which nothing at all may be plugged: pulled out, they only leave a socket.
    dead: Vec<Gear<'a>>,
    leads: Leads<'a>,
    /// The cords and boxes that people have, by their own ids and those of their receptacles. What is only
    /// to be bought is not changed again.
    parts: BTreeMap<Id, &'a Id>,
}

impl<'a> List<'a> {
    /// `report` is the plan's own, at least as much of it as a trial gives; `before`, the plan without
    /// changes.
    pub fn of(plan: &'a Plan, report: &'a Report, before: &Plan) -> Self {
        let mut parts = BTreeMap::new();
        for id in plan.gear().map(|it| it.id).filter(|id| before.gear_of(id).is_some()) {
            parts.insert(id.clone(), id);
            parts.extend(ends_of(plan, id).into_iter().map(|end| (end, id)));
        }
        let sockets = Sockets::of(plan);
        let limits = report.figures.limits.iter();
        let sound = limits.filter(|it| sockets.usable(&it.id));
        let mut sound: Vec<_> = sound.map(|limit| (limit, sockets.free(&limit.id))).collect();
        sound.sort_by_key(|(limit, _)| Reverse((limit.gfci, limit.short_amps)));
        let all_refused = |part: &Id| ends_of(plan, part).iter().all(|end| sockets.refused(end).is_some());
        let dead = plan.gear().filter(|it| all_refused(it.id)).collect();
        Self { plan, report, sound, dead, sockets, spare: OnceCell::new(), leads: Leads::of(plan), parts }
    }

    /// Every change of the list that may have a part in clearing the problem.
    pub fn changes(&self, problem: &Problem) -> Vec<Change> {
        let mut changes = match problem {
            Problem::Finding { code, about } => self.for_finding(code, about),
            Problem::Waits(loads) => self.for_waiting(loads),
            Problem::AtTheSet(load) => self.for_brought(load),
        };
        // Nobody puts a box in the place of a camper.
        let camper = |id: &Id| self.plan.camper(id).is_some();
        changes.retain(|change| !matches!(change, Change::ListedBox(id) if camper(id)));
        changes.sort();
        changes.dedup();
        changes
    }

    fn for_finding(&self, code: &str, about: &[Id]) -> Vec<Change> {
        let mut changes = Vec::new();
        match code {
            "AIR001" => changes.push(self.away()),
            "AIR002" => changes.push(Change::Alarm),
            "AIR003" => changes.push(Change::OpenAir),
            "AIR006" => {
                let site = &self.plan.site;
                if !self.in_the_open() || site.sleepers_at.known().is_none_or(|at| *at < AMPLE) {
                    changes.push(self.away());
                }
                if site.co_alarm != Answer::Known(true) {
                    changes.push(Change::Alarm);
                }
                // What a life depends on, or may, is switched off for nothing.
                let others = self.plan.loads.iter().filter(|load| about.contains(&load.id));
                let others = others.filter(|load| !load.may_be(LoadKind::Medical));
                changes.extend(others.map(|load| Change::OffAtNight(load.id.clone())));
            }
            "SHOCK003" => changes.push(Change::NoBuilding),
            "POWER008" => changes.push(Change::RunAlone),
            "SHOCK001" => {
                for id in about {
                    changes.extend(self.protection(id, 0));
                }
            }
            "SHOCK013" => changes.extend(self.joint_elsewhere(code, about)),
            "CORD002" => changes.extend(about.iter().cloned().map(Change::OutdoorCord)),
            "CORD004" | "SHOCK011" => {
                changes.extend(about.iter().cloned().map(Change::GroundedCord));
            }
            // Another cord or box.
            "CORD009" => {
                for id in about {
                    if self.cord(id).is_some() {
                        changes.push(Change::GroundedCord(id.clone()));
                    }
                    changes.extend(self.box_of(id).cloned().map(Change::ListedBox));
                    changes.extend(self.left_home(id));
                }
            }
            "SHOCK004" | "SHOCK005" | "SHOCK006" => {
                changes.extend(about.iter().cloned().map(Change::ListedBox));
                let set = &self.plan.generator;
                if code == "SHOCK004" && set.neutral == Answer::Known(Neutral::Bonded) {
                    let plug = set.bonding_plug == Answer::Known(true);
                    changes.extend(plug.then_some(Change::BondingPlugOut));
                    changes.extend(set.parallel.as_ref().map(|_| Change::RunAlone));
                }
            }
            "HEALTH002" => changes.extend(about.iter().cloned().map(Change::OffAtNight)),
            // No other cord or box makes the neutral or the volts that are not there.
            "FIT006" => changes.extend(about.iter().filter_map(|id| self.left_home(id))),
            "POWER001" | "POWER002" => changes.extend(self.load_changes(about)),
            // What carries too much, or is protected too little, at whatever part.
            _ => {
                changes.extend(self.load_changes(about));
                if code == "OVER002" {
                    let loads = about.iter().filter_map(|id| self.load_of(id));
                    changes.extend(loads.flat_map(|load| self.less_time(load)));
                }
                for id in about.iter().chain(self.places_of(about)) {
                    changes.extend(self.part_changes(id));
                    for part in self.path(id) {
                        changes.extend(self.part_changes(&part));
                    }
                }
            }
        }
        // Whatever is wrong with gear, it can be left unused.
        let of_gear = |rule: &rules::Rule| OF_GEAR.contains(&rule.area);
        if rules::find(code).is_some_and(of_gear) {
            for id in about {
                changes.extend(self.unplugged(id));
            }
        }
        changes
    }

    fn in_the_open(&self) -> bool {
        matches!(self.plan.site.stands, Answer::Known(Stands::Open | Stands::Roof))
    }

    /// Away from people: out of what it stands in, if it does.
    fn away(&self) -> Change {
        if self.in_the_open() { Change::Distance } else { Change::OpenAir }
    }

    /// Where these have their places, of those that are loads.
    fn places_of<'b>(&'b self, ids: &'b [Id]) -> impl Iterator<Item = &'b Id> {
        let placed = self.report.figures.sharing.placed.iter();
        let of = |it: &Placed| self.load_of(&it.load).is_some_and(|load| ids.contains(&load.id));
        placed.filter(move |it| ids.contains(&it.load) || of(it)).map(|it| &it.at)
    }

    /// What takes the joint of neutral and ground away from beyond a GFCI, or the GFCI to beyond it.
    fn joint_elsewhere(&self, code: &str, about: &[Id]) -> Vec<Change> {
        let mut changes: Vec<Change> = about.iter().flat_map(|id| self.protection(id, 0)).collect();
        let findings = self.report.findings.iter();
        let of_these = findings.filter(|it| it.code == code && about.iter().all(|id| it.about.contains(id)));
        for finding in of_these {
            let Some(Value::Name(joint)) = finding.values.get("joint") else {
                continue;
            };
            if let Some(it) = self.plan.holder(joint) {
                changes.push(Change::ListedBox(it.id.clone()));
                changes.push(Change::SetAside(it.id.clone()));
            } else {
                // Nobody is told to put one in: only one that is there moves.
                let there = self.plan.generator.bonding_plug == Answer::Known(true);
                let outlets = self.plan.generator.outlets.iter();
                let fine = outlets.filter(|outlet| {
                    there
                        && outlet.shape.takes(Plug::BONDING)
                        && outlet.gfci == Answer::Known(false)
                        && self.sockets.free(&outlet.id) > 0
                });
                changes.extend(fine.map(|outlet| Change::BondingPlug(outlet.id.clone())));
            }
        }
        changes
    }

    /// What takes a part out of use, or a receptacle: the part itself, whatever it hangs on, and what is
    /// plugged in there, which may go elsewhere, or has no other place, if it is only a wish.
    fn unplugged(&self, id: &Id) -> Vec<Change> {
        let mut changes = self.moves(id);
        let there = self.plan.loads.iter().filter(|load| load.on.as_ref() == Some(id));
        let wishes = there.chain(self.kept_out(id));
        let wishes = wishes.filter(|load| load.wanted == Wanted::Wish);
        changes.extend(wishes.filter_map(|load| self.left_home(&load.id)));
        let hangs_on = self.ahead_of(id).chain([id]);
        let parts = hangs_on.filter_map(|id| self.part(id));
        changes.extend(parts.map(Change::SetAside));
        for part in self.gear_at(id) {
            changes.extend(self.replugs(&part));
            changes.push(Change::SetAside(part));
        }
        changes
    }

    /// The cords and boxes that are plugged in somewhere.
    fn gear_at(&self, at: &Id) -> Vec<Id> {
        let there = self.plan.gear().filter(|it| it.from == Some(at) && self.parts.contains_key(it.id));
        there.map(|it| it.id.clone()).collect()
    }

    /// The cord or box that this is, or is a receptacle of.
    fn part(&self, id: &Id) -> Option<Id> {
        self.parts.get(id).map(|part| (*part).clone())
    }

    /// A load that nothing here can run is not used. What somebody's health depends on is no such.
    fn left_home(&self, id: &Id) -> Option<Change> {
        let load = self.load_of(id)?;
        (!load.may_be(LoadKind::Medical)).then(|| Change::LeaveHome(load.id.clone()))
    }

    /// The parts from the set to a receptacle.
    fn path(&self, at: &Id) -> Vec<Id> {
        self.report.figures.limit(at).map(|limit| limit.path.clone()).unwrap_or_default()
    }

    /// What a part or receptacle hangs on, from the set on.
    fn ahead_of(&self, id: &Id) -> impl Iterator<Item = &Id> {
        let limits = self.report.figures.limits.iter();
        let mut through = limits.filter(|limit| limit.id == *id || limit.path.contains(id));
        let path = through.next().map(|limit| limit.path.iter());
        path.into_iter().flatten().take_while(move |ahead| *ahead != id)
    }

    /// The cord that this is, or is an end of: a path names a cord by its own id, or by that of an end.
    fn cord(&self, id: &Id) -> Option<&Cord> {
        self.plan.cord(self.parts.get(id)?)
    }

    /// The box that is this, or has this outlet.
    fn box_of(&self, id: &Id) -> Option<&Id> {
        self.plan.holder(self.parts.get(id)?).map(|it| &it.id)
    }

    /// What protects a receptacle, with what is planned for it and so many plugs `more`.
    fn protection(&self, at: &Id, more: usize) -> Vec<Change> {
        let mut changes: Vec<Change> = self.moves(at);
        let there = self.plan.loads.iter();
        let there = there.filter(|load| load.on.as_ref() == Some(at));
        changes.extend(there.flat_map(|load| self.turns(load, plug_of(load))));
        // Whoever is kept out of here may be served elsewhere.
        for load in self.kept_out(at) {
            let limits = self.report.figures.limits.iter();
            let others = limits.filter(|it| !it.gfci && it.id != *at && it.shape.takes(plug_of(load)));
            changes.extend(others.flat_map(|it| self.devices(&it.id, 1)));
            changes.extend(self.turns(load, plug_of(load)));
        }
        // A plug that the generator needs not, and that blinds what is there.
        let set = &self.plan.generator;
        if set.neutral == Answer::Known(Neutral::Bonded) && set.bonding_plug == Answer::Known(true) {
            changes.push(Change::BondingPlugOut);
        }
        changes.extend(self.devices(at, more));
        changes
    }

    /// The devices that protect a receptacle, and the protected ones that what it hangs on may be plugged into.
    fn devices(&self, at: &Id, more: usize) -> Vec<Change> {
        let mut changes = Vec::new();
        let mut path = self.path(at);
        path.push(at.clone());
        for id in path {
            if let Some(cord) = self.cord(&id) {
                changes.push(Change::ProtectedCord(cord.id.clone()));
                changes.extend(self.box_for(cord));
                changes.extend(self.replugs(&cord.id));
            } else if let Some(it) = self.box_of(&id) {
                changes.push(Change::ListedBox(it.clone()));
                changes.extend(self.replugs(it));
            }
        }
        if self.cord(at).is_none() {
            let placed = self.report.figures.sharing.placed.iter();
            let placed = placed.filter(|placed| placed.at == *at).count();
            let planned = placed.max(plugs_at(self.plan, at)) + more.max(self.kept_out(at).count());
            let room = self.sockets.beside_gear(at);
            // Some of what is planned for it may find another place.
            changes.extend((1..=planned.min(room)).filter_map(|sockets| {
                Some(Change::ProtectedOutlet { at: at.clone(), sockets: u8::try_from(sockets).ok()? })
            }));
            // What has its place elsewhere may come too, and a thing or two need no more protection then.
            let plugs: usize = self.plan.loads.iter().map(|load| usize::from(load.count)).sum();
            if planned > 0 && plugs > 1 && room > 0 {
                changes.extend(self.three_way(at));
            }
        }
        changes
    }

    /// The loads, each of a count, that would go there, or elsewhere, if they might.
    fn kept_out(&self, at: &Id) -> impl Iterator<Item = &Load> {
        let unplaced = self.report.figures.sharing.unplaced.iter();
        let refused = unplaced.filter(|lost| lost.reason == "refused");
        let loads = refused.filter_map(|lost| self.load_of(&lost.load));
        loads
            .filter(|load| load.on.is_none())
            .filter(move |load| load.plug.known().is_none_or(|plug| self.sockets.takes(at, *plug)))
    }

    /// A cord with three ends in a household receptacle, which what is there makes room for. It has protection of its
    /// own: none goes into a new cord or adapter that is there for that.
    fn three_way(&self, at: &Id) -> Option<Change> {
        let part = self.plan.part_of(at);
        let new = part.is_some_and(|part| !self.parts.contains_key(part));
        if new && self.plan.cords.iter().any(|it| Some(&it.id) == part && it.gfci == Answer::Known(true)) {
            return None;
        }
        let Receptacle(shape) = shape_of(self.plan, at)?;
        matches!(shape, Configuration::N5_15 | Configuration::N5_20)
            .then(|| Change::ThreeWay { at: at.clone(), clears: self.sockets.free(at) == 0 })
    }

    /// The loads that the plan puts at a receptacle, moved.
    fn moves(&self, at: &Id) -> Vec<Change> {
        self.plan
            .loads
            .iter()
            .filter(|load| load.on.as_ref() == Some(at))
            .map(|load| Change::moved(load.id.clone()))
            .collect()
    }

    fn load_of(&self, id: &Id) -> Option<&crate::plan::Load> {
        let fact = self.report.figures.load(id);
        let of = fact.map_or(id, |fact| &fact.of);
        self.plan.load(of)
    }

    /// Moved, at another hour or smaller: of the ids that are loads.
    fn load_changes(&self, ids: &[Id]) -> Vec<Change> {
        let mut changes = Vec::new();
        let mut loads: Vec<&Load> = ids.iter().filter_map(|id| self.load_of(id)).collect();
        loads.dedup_by_key(|load| &load.id);
        for load in &loads {
            if load.on.is_some() {
                changes.push(Change::moved(load.id.clone()));
            }
            // Nobody's health is put off or made smaller.
            if load.may_be(LoadKind::Medical) {
                continue;
            }
            // Nobody buys a smaller camper for it.
            let known = matches!(load.running, Answer::Known(Draw::Power(_)));
            if known && !of_camper(self.plan, load) {
                for part in PARTS {
                    changes.push(Change::Smaller { load: load.id.clone(), part });
                }
            }
            let others: Vec<&Load> = loads.iter().filter(|it| it.id != load.id).copied().collect();
            for span in 0..load.hours.len() {
                let hours = self.other_hours(load, span, &others);
                changes.extend(hours.into_iter().map(|to| Change::Shift { load: load.id.clone(), span, to }));
            }
        }
        changes
    }

    /// For less than three hours, of what makes heat while people are there and draws no more than something that
    /// takes its plug carries so long.
    fn less_time(&self, load: &Load) -> Vec<Change> {
        let heat = matches!(load.kind, Answer::Known(LoadKind::Heater | LoadKind::Cooker));
        let mut units = self.report.figures.units(&load.id).filter(|unit| unit.continuous);
        let enough = units.any(|unit| {
            let mut limits = self.report.figures.limits.iter();
            limits.any(|limit| {
                let there = load.on.as_ref().is_none_or(|on| *on == limit.id);
                let amps = unit.running_amps;
                there && limit.shape.takes(plug_of(load)) && limit.continuous_amps < amps && amps <= limit.short_amps
            })
        });
        let spans = (0..load.hours.len()).filter(|_| heat && enough);
        spans.map(|span| Change::LessTime { load: load.id.clone(), span }).collect()
    }

    /// When one of a load's stretches may begin instead, the nearest first: where some other stretch
    /// ends, or so that it ends where one begins. Never in the night or the quiet hours, and never when
    /// all the `others` that it clashes with are on as well.
    fn other_hours(&self, load: &Load, span: usize, others: &[&Load]) -> Vec<u16> {
        let hours = load.hours[span];
        let silent = silent(self.plan);
        let spans = self.plan.loads.iter().flat_map(|load| &load.hours);
        let mut begins: Vec<u16> = spans
            .chain(&silent)
            .flat_map(|it| [it.to, it.from + Span::DAY - hours.minutes()])
            .map(|minute| minute % Span::DAY)
            .filter(|begin| *begin != hours.from)
            .filter(|begin| {
                let there = begun_at(hours, *begin);
                let apart = |it: &Span| there.minutes_in_both(*it) == 0;
                let own = load.hours.iter().enumerate();
                let mut own = own.filter(|(at, _)| *at != span).map(|(_, it)| it);
                silent.iter().all(apart) && own.all(apart) && !all_on(others, there)
            })
            .collect();
        begins.sort_unstable_by_key(|begin| (apart(hours.from, *begin), *begin));
        begins.dedup();
        begins.truncate(OTHER_HOURS);
        begins
    }

    /// What may be done to a cord or a box, whichever this id is of.
    fn part_changes(&self, id: &Id) -> Vec<Change> {
        let mut changes = self.moves(id);
        if let Some(cord) = self.cord(id) {
            let id = || cord.id.clone();
            changes.extend(self.replugs(&cord.id));
            if cord.coiled != Answer::Known(false) {
                changes.push(Change::Uncoil(id()));
            }
            changes.extend(self.box_for(cord));
            let now = cord.wire.known().and_then(|wire| gauge_of(*wire));
            let thicker = GAUGES.iter().filter(|gauge| now.is_none_or(|now| **gauge < now));
            for (step, gauge) in thicker.take(THICKER).enumerate() {
                changes.push(Change::Thicker {
                    cord: id(),
                    gauge: *gauge,
                    steps: u32::try_from(step + 1).unwrap_or(u32::MAX),
                });
            }
            // Whoever has too short a cord brings the set closer.
            let people = self.plan.site.sleepers_at.known().copied();
            let reaches = |length: &Length| people.is_none_or(|at| at <= *length);
            for length in LENGTHS.into_iter().filter(reaches) {
                if cord.length.known().is_none_or(|now| length < *now) {
                    changes.push(Change::Shorter { cord: id(), length });
                }
            }
        } else if let Some(it) = self.box_of(id) {
            changes.push(Change::ListedBox(it.clone()));
            changes.extend(self.replugs(it));
        }
        changes
    }

    /// A box for a splitter, or for an adapter with smaller ends than its plug: where that is.
    fn box_for(&self, cord: &Cord) -> Option<Change> {
        let plug = cord.usable_plug()?;
        let smaller = |end: &Receptacle| end.0.rating() < plug.0.rating();
        let long = length_of(cord) > AT_SET;
        let chained = (cord.from.as_ref()).is_some_and(|from| self.leads.ends_long(from));
        // Of two in one socket a box is the one that gets no power.
        let crowded = cord.from.as_ref().is_some_and(|from| self.sockets.crowded(self.plan, from));
        (!crowded && (cord.ends().len() > 1 || cord.ends().iter().any(smaller)))
            .then(|| Change::BoxForSplitter { cord: cord.id.clone(), far: long && !chained })
    }

    /// The other receptacles that a part's plug goes into and that have a socket open; none
    /// that hangs on the part itself, or that must not be used. What must not be used and has the socket
    /// is pulled out of it.
    fn replugs(&self, part: &Id) -> Vec<Change> {
        let gear = self.plan.gear_of(part);
        let Some((gear, plug)) = gear.and_then(|gear| Some((gear, gear.plug?))) else {
            return Vec::new();
        };
        let long = self.plan.cord(part).is_some_and(|it| length_of(it) > AT_SET);
        let other =
            |at: &Id| Some(at) != gear.from && !(long && self.leads.ends_long(at)) && !self.sockets.hangs_on(at, part);
        let free = self.sound(plug).filter(|(at, free)| *free > 0 && other(at));
        let replugs = free.take(PLACES).map(|(to, _)| Change::Replug { part: part.clone(), to: to.clone() });
        let taken = self.sound(plug).filter(|(_, free)| *free == 0);
        let dead = taken.flat_map(|(at, _)| self.dead.iter().filter(move |it| it.from == Some(at)));
        let dead = dead.filter(|it| it.id != part && self.parts.contains_key(it.id) && it.from.is_some_and(other));
        replugs.chain(dead.take(PLACES).map(|it| Change::SetAside(it.id.clone()))).collect()
    }

    /// The sound receptacles that take a plug, each with how many sockets nothing is in.
    fn sound(&self, plug: Plug) -> impl Iterator<Item = (&Id, usize)> {
        let take = self.sound.iter().filter(move |(it, _)| it.shape.takes(plug));
        take.map(|(limit, free)| (&limit.id, *free))
    }

    /// Taking turns at the sockets of things that are on at other hours. What somebody's health
    /// depends on keeps its own.
    fn turns(&self, load: &Load, plug: Plug) -> Vec<Change> {
        let shares = |load: &Load| load.count == 1 && !load.hours.is_empty() && !load.may_be(LoadKind::Medical);
        if !shares(load) {
            return Vec::new();
        }
        let sharing = &self.report.figures.sharing;
        let turns = |at: &Id| {
            let placed = sharing.placed.iter().filter(|placed| placed.at == *at);
            let mut with: Vec<&Load> = placed.filter_map(|it| self.load_of(&it.load)).collect();
            // Nobody is there: with another that has no place.
            if with.is_empty() {
                let lost = sharing.unplaced.iter();
                let mut lost = lost.filter_map(|it| self.load_of(&it.load));
                with.extend(lost.find(|it| {
                    let apart = at_once(&[*it, load]) <= self.sockets.beside_gear(at);
                    it.id != load.id && shares(it) && self.sockets.takes(at, plug_of(it)) && apart
                }));
            }
            let all: Vec<&Load> = with.iter().copied().chain([load]).collect();
            let fine = !with.is_empty()
                && with.iter().all(|with| with.id != load.id && shares(with))
                && at_once(&all) <= self.sockets.beside_gear(at);
            fine.then(|| Change::TakeTurns {
                load: load.id.clone(),
                with: with.iter().map(|with| with.id.clone()).collect(),
                at: at.clone(),
            })
        };
        self.sound(plug).filter_map(|(at, _)| turns(at)).take(PLACES).collect()
    }

    /// For musts without a place, or that cannot be on together.
    fn for_waiting(&self, loads: &[Id]) -> Vec<Change> {
        let mut changes = match loads {
            [id] => self.for_unplaced(id),
            _ if beyond_the_set(self.report, loads) => {
                // More than the set gives, wherever they are plugged in.
                let mut changes = self.load_changes(loads);
                changes.retain(|change| !matches!(change, Change::Move { .. }));
                changes
            }
            _ => {
                let mut changes = self.load_changes(loads);
                for load in loads.iter().filter_map(|id| self.load_of(id)) {
                    changes.extend(self.wider(plug_of(load)));
                }
                changes
            }
        };
        self.keep_gear(&mut changes);
        changes
    }

    /// Less gear carries no more, but what must not be used takes up a socket.
    fn keep_gear(&self, changes: &mut Vec<Change>) {
        changes.retain(|change| match change {
            Change::SetAside(part) => self.dead.iter().any(|it| it.id == part),
            _ => true,
        });
    }

    /// For what is to be used where people are and not at the set: whatever gives it a place at the end of a
    /// cord.
    fn for_brought(&self, id: &Id) -> Vec<Change> {
        let Some(load) = self.load_of(id) else {
            return Vec::new();
        };
        let plug = plug_of(load);
        let mut changes = self.load_changes(std::slice::from_ref(&load.id));
        changes.extend(self.wider(plug));
        changes.extend(self.made_room(load, plug));
        self.keep_gear(&mut changes);
        changes
    }

    /// For a must that has no place, or is too much where it is.
    fn for_unplaced(&self, id: &Id) -> Vec<Change> {
        let Some(load) = self.load_of(id) else {
            return Vec::new();
        };
        // It stays in its camper.
        if let Some(camper) = self.plan.around(load) {
            let mut changes = self.load_changes(std::slice::from_ref(&load.id));
            changes.extend(self.replugs(&camper.id));
            changes.extend(camper.inlet.known().into_iter().flat_map(|inlet| self.wider(*inlet)));
            return changes;
        }
        let plug = plug_of(load);
        // No gear here makes 240 V of what the set gives.
        let two_legs = self.plan.generator.voltage == Answer::Known(System::V120_240);
        if plug.0.circuit() == Circuit::TwoLegs && !two_legs {
            return self.left_home(id).into_iter().collect();
        }
        let reason = self.report.figures.sharing.without_place(id);
        let mut changes = Vec::new();
        match reason.map(|lost| lost.reason) {
            Some("too-large") | None => {
                changes.extend(self.load_changes(std::slice::from_ref(&load.id)));
                changes.extend(self.less_time(load));
                changes.extend(self.wider(plug));
            }
            Some(_) => {
                changes.extend(load.on.as_ref().map(|_| Change::moved(load.id.clone())));
                changes.extend(self.made_room(load, plug));
                changes.extend(self.more_sockets(plug));
            }
        }
        changes
    }

    /// What makes room for a load in the receptacles that take its plug.
    fn made_room(&self, load: &Load, plug: Plug) -> Vec<Change> {
        let mut changes = self.turns(load, plug);
        changes.extend(self.when_others_are_off(load));
        let limits = self.report.figures.limits.iter();
        for limit in limits.filter(|limit| limit.shape.takes(plug)) {
            if let Some((code, part)) = self.sockets.refused(&limit.id) {
                changes.extend(self.for_finding(code, std::slice::from_ref(part)));
                continue;
            }
            // A place that nobody is sent to becomes one with protection.
            if !limit.gfci {
                changes.extend(self.protection(&limit.id, 1));
            }
            // What has the socket goes elsewhere.
            changes.extend(self.moves(&limit.id));
            for part in self.gear_at(&limit.id) {
                changes.extend(self.replugs(&part));
                changes.push(Change::SetAside(part));
            }
        }
        changes
    }

    /// Other hours of a load, when not all of those are on that are on in its own.
    fn when_others_are_off(&self, load: &Load) -> Vec<Change> {
        if load.may_be(LoadKind::Medical) {
            return Vec::new();
        }
        let spans = load.hours.iter().enumerate();
        let changes = spans.flat_map(|(span, hours)| {
            let meets = |it: &Span| it.minutes_in_both(*hours) > 0;
            let others = self.plan.loads.iter().filter(|it| it.id != load.id);
            let others: Vec<&Load> = others.filter(|it| it.hours.iter().any(meets)).collect();
            let begins = self.other_hours(load, span, &others);
            begins.into_iter().map(move |to| Change::Shift { load: load.id.clone(), span, to })
        });
        changes.collect()
    }

    /// What lets more pass where a plug goes in: whatever lies on the way there may be too weak.
    fn wider(&self, plug: Plug) -> Vec<Change> {
        let mut changes = self.more_sockets(plug);
        // Most have the same cord or box on the way.
        let mut parts: BTreeSet<&Id> = BTreeSet::new();
        let limits = self.report.figures.limits.iter();
        for limit in limits.filter(|limit| limit.shape.takes(plug)) {
            if !limit.gfci {
                changes.extend(self.protection(&limit.id, 1));
            }
            parts.extend(limit.path.iter().chain([&limit.id]));
        }
        changes.extend(parts.into_iter().flat_map(|id| self.part_changes(id)));
        changes
    }

    /// The spare cords and boxes that take this plug.
    fn spare(&self, plug: Plug) -> impl Iterator<Item = &Id> {
        let all = self.spare.get_or_init(|| {
            let cords = self.plan.cords.iter().filter(|it| it.from.is_none());
            let cords = cords.map(|it| (&it.id, it.ends().to_vec()));
            let boxes = self.plan.boxes.iter().filter(|it| it.from.is_none());
            let ends = |it: &DistributionBox| it.outlets.iter().map(|outlet| outlet.shape).collect();
            let parts = cords.chain(boxes.map(|it| (&it.id, ends(it))));
            let sound = |id: &Id| self.parts.contains_key(id) && wrong_anywhere(self.plan, id).is_none();
            parts.filter(|(id, _)| sound(id)).collect()
        });
        let take = (all.iter()).filter(move |(_, ends)| ends.iter().any(|end| end.takes(plug)));
        take.map(|(id, _)| *id)
    }

    /// More sockets: of what people have and that is plugged into nothing, and new ones, which are of the household
    /// shape.
    fn more_sockets(&self, plug: Plug) -> Vec<Change> {
        let spare = self.spare(plug);
        let mut changes: Vec<Change> = spare.flat_map(|part| self.replugs(part)).collect();
        if !Receptacle(Configuration::N5_20).takes(plug) {
            return changes;
        }
        for limit in &self.report.figures.limits {
            let id = &limit.id;
            if self.sockets.free(id) == 0 || !self.sockets.usable(id) {
                continue;
            }
            match shape_of(self.plan, id).map(|Receptacle(shape)| shape) {
                Some(Configuration::N5_15 | Configuration::N5_20) => {
                    changes.extend(self.three_way(id));
                }
                Some(shape) if shape != Configuration::N6_20 && shape != Configuration::N1_15 => {
                    changes.push(Change::NewBox(id.clone()));
                }
                _ => {}
            }
        }
        changes
    }
}

/// Whether all of these are on at some minute of a stretch. What has no hours may be on at any.
fn all_on(loads: &[&Load], hours: Span) -> bool {
    let on = |load: &&Load, minute| load.hours.is_empty() || load.wants(minute);
    // More is on than a minute before only where some hours begin.
    let spans = loads.iter().flat_map(|load| &load.hours);
    let mut begins = spans.map(|span| span.from).filter(|minute| hours.contains(*minute));
    let all = |minute| loads.iter().all(|load| on(load, minute));
    all(hours.from) || begins.any(all)
}

/// A load's plug, or what is taken for it.
fn plug_of(load: &Load) -> Plug {
    let known = load.plug.known().copied();
    known.unwrap_or(Plug(Configuration::N5_15))
}

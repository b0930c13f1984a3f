//! For each problem, every change that may help to clear it.
//!
//! A list errs on the long side. It must hold at least one change of every set that clears the problem. A useless
//! change costs only time, since every set is judged by the whole check.

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

/// The sizes in which cords are sold, AWG, thinnest first.
const GAUGES: [i8; 6] = [16, 14, 12, 10, 8, 6];
/// How many thicker sizes to try.
const THICKER: usize = 3;
/// How many other starts to try for each of a load's hours.
const OTHER_HOURS: usize = 4;
/// How many receptacles to try for a part or a load that fits in many.
const PLACES: usize = 2;
/// The rule areas whose dangers lie in the gear.
const OF_GEAR: [&str; 4] = ["overcurrent", "fit", "shock", "cord"];
/// The divisors of power to try for a smaller appliance.
const PARTS: [u8; 2] = [2, 3];

/// A problem that a repair has to clear.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Problem {
    /// A finding. One problem for each part, where each part needs its own remedy.
    Finding {
        /// The rule's code.
        code: &'static str,
        /// The parts and loads it names.
        about: Vec<Id>,
    },
    /// A must without a place, or musts that are wanted together but may not be on together.
    Waits(Vec<Id>),
    /// A load that is used near people and would be brought to the generator.
    AtTheSet(Id),
}

/// Lists the findings at `down_to` or graver, and the musts that wait.
pub(super) fn problems(plan: &Plan, report: &Report, down_to: Signal) -> Vec<Problem> {
    let mut list: Vec<Problem> = Vec::new();
    let findings = report.findings.iter().filter(|finding| finding.signal <= down_to);
    for finding in findings {
        for about in split(finding) {
            list.push(Problem::Finding { code: finding.code, about });
        }
    }
    let too_much = too_much_already(plan, report);
    // If a load lacks room only because another is on, settling the pair settles its place too.
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
    /// Whether this problem is `other` or what remains of it.
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

    /// Whether a check with the scope of `report` would find it.
    pub(super) fn is_found_in(&self, report: &Report) -> bool {
        match self {
            Self::Finding { code, .. } => report.findings.iter().any(|it| it.code == *code),
            Self::Waits(_) | Self::AtTheSet(_) => true,
        }
    }

    /// Returns how many things it names, at least one.
    pub(super) fn size(&self) -> usize {
        match self {
            Self::Finding { about: named, .. } | Self::Waits(named) => named.len().max(1),
            Self::AtTheSet(_) => 1,
        }
    }
}

/// Splits a finding into problems. Most rules name everything that takes part in one hazard, but some name parts that
/// are each cured separately.
fn split(finding: &Finding) -> Vec<Vec<Id>> {
    if Report::ONE_BY_ONE.contains(&finding.code) {
        finding.about.iter().map(|id| vec![id.clone()]).collect()
    } else {
        vec![finding.about.clone()]
    }
}

/// What the plan wants of each load in its report.
struct Wants<'a> {
    plan: &'a Plan,
    report: &'a Report,
    /// The minutes at which more loads may be on than a minute before: the starts of hours, and midnight.
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
        self.load(id).is_some_and(|(it, _)| it.is_needed())
    }

    /// Whether a load is on at that minute. A load without hours that runs only briefly can wait.
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

/// Lists the musts without a place, and the sets of musts that are wanted together and may not be on together.
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

/// Lists pairs of musts that are wanted together and exceed the generator wherever they are plugged in, where at least
/// one has no place yet.
fn too_much_already(plan: &Plan, report: &Report) -> Vec<Vec<Id>> {
    let wants = Wants::of(plan, report);
    let musts: Vec<&Id> = report.figures.loads.iter().map(|fact| &fact.id).collect();
    let sharing = &report.figures.sharing;
    // Moving other loads does not help a load that is too much for every receptacle or for its own plug.
    let lost = |id: &Id| {
        let lost = sharing.without_place(id);
        lost.is_some_and(|it| !matches!(it.reason, "too-large" | "impossible" | "hot"))
    };
    let mut pairs = Vec::new();
    for one in musts.iter().filter(|id| lost(id) && wants.must(id)) {
        for other in musts.iter().filter(|id| *id != one && wants.must(id)) {
            // A pair without places comes up twice, so keep it once.
            let pair = [(*one).clone(), (*other).clone()];
            if (!lost(other) || one < other) && beyond_the_set(report, &pair) && wants.at_one_time(&pair) {
                pairs.push(pair.into());
            }
        }
    }
    pairs
}

/// Whether these loads ask for more than the generator gives.
fn beyond_the_set(report: &Report, loads: &[Id]) -> bool {
    report.figures.beyond_the_set(loads.iter().filter_map(|id| report.figures.load(id)))
}

/// Returns the hours to which no load is shifted, because it may make noise: the night and the camp's quiet hours.
/// Unknown quiet hours are taken to be the night.
fn silent(plan: &Plan) -> Vec<Span> {
    let quiet = night::quiet(&plan.site);
    std::iter::once(NIGHT).chain(quiet.iter().copied()).collect()
}

/// The changes that a plan allows.
pub(super) struct List<'a> {
    plan: &'a Plan,
    report: &'a Report,
    sockets: Sockets,
    /// The receptacles that may be used, even if only by gear with its own protection, each with its number of empty
    /// sockets. Those with GFCI protection first, then by what they carry.
    sound: Vec<(&'a Limit, usize)>,
    /// The sound cords and boxes that are plugged into nothing, with their receptacles. Computed on first use.
    spare: OnceCell<Vec<(&'a Id, Vec<Receptacle>)>>,
    /// The cords and boxes whose receptacles must all stay unused. Pulling one out only frees a socket.
    dead: Vec<Gear<'a>>,
    leads: Leads<'a>,
    /// The cords and boxes that people own, by their ids and the ids of their receptacles. Gear that is yet to be
    /// bought is not changed again.
    parts: BTreeMap<Id, &'a Id>,
}

impl<'a> List<'a> {
    /// Builds the list. `report` is the plan's own, at least to the depth of a trial; `before` is the plan without
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

    /// Returns every change that may help to clear the problem.
    pub fn changes(&self, problem: &Problem) -> Vec<Change> {
        let mut changes = match problem {
            Problem::Finding { code, about } => self.for_finding(code, about),
            Problem::Waits(loads) => self.for_waiting(loads),
            Problem::AtTheSet(load) => self.for_brought(load),
        };
        // A camper is not replaced by a box.
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
                // Medical equipment is never switched off at night.
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
            // Replace the cord or the box.
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
            // No other cord or box supplies a neutral or a voltage that is not there.
            "FIT006" => changes.extend(about.iter().filter_map(|id| self.left_home(id))),
            "POWER001" | "POWER002" => changes.extend(self.load_changes(about)),
            // Overloaded or underprotected, at any part on the path.
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
        // Faulty gear can always be left unused.
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

    /// Returns the change that moves the generator away from people, and out of any enclosure.
    fn away(&self) -> Change {
        if self.in_the_open() { Change::Distance } else { Change::OpenAir }
    }

    /// Returns the receptacles where these loads or units are placed.
    fn places_of<'b>(&'b self, ids: &'b [Id]) -> impl Iterator<Item = &'b Id> {
        let placed = self.report.figures.sharing.placed.iter();
        let of = |it: &Placed| self.load_of(&it.load).is_some_and(|load| ids.contains(&load.id));
        placed.filter(move |it| ids.contains(&it.load) || of(it)).map(|it| &it.at)
    }

    /// Lists changes that remove a neutral-to-ground bond downstream of a GFCI, or put the GFCI downstream of the bond.
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
                // Nobody is told to plug in a bonding plug. Only an existing one is moved.
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

    /// Lists changes that take a part or receptacle out of use: unplug it or anything upstream, and move what is
    /// plugged in there. A wish with no other place may also be left at home.
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

    /// Returns the owned cords and boxes plugged into a receptacle.
    fn gear_at(&self, at: &Id) -> Vec<Id> {
        let there = self.plan.gear().filter(|it| it.from == Some(at) && self.parts.contains_key(it.id));
        there.map(|it| it.id.clone()).collect()
    }

    /// Returns the owned cord or box that has this id or this receptacle.
    fn part(&self, id: &Id) -> Option<Id> {
        self.parts.get(id).map(|part| (*part).clone())
    }

    /// Returns the change that leaves a load at home because nothing here can run it, or `None` for medical equipment.
    fn left_home(&self, id: &Id) -> Option<Change> {
        let load = self.load_of(id)?;
        (!load.may_be(LoadKind::Medical)).then(|| Change::LeaveHome(load.id.clone()))
    }

    /// Returns the parts from the generator to a receptacle.
    fn path(&self, at: &Id) -> Vec<Id> {
        self.report.figures.limit(at).map(|limit| limit.path.clone()).unwrap_or_default()
    }

    /// Returns what is upstream of a part or receptacle, from the generator on.
    fn ahead_of(&self, id: &Id) -> impl Iterator<Item = &Id> {
        let limits = self.report.figures.limits.iter();
        let mut through = limits.filter(|limit| limit.id == *id || limit.path.contains(id));
        let path = through.next().map(|limit| limit.path.iter());
        path.into_iter().flatten().take_while(move |ahead| *ahead != id)
    }

    /// Returns the cord with this id or this end. A path names a cord by either.
    fn cord(&self, id: &Id) -> Option<&Cord> {
        self.plan.cord(self.parts.get(id)?)
    }

    /// Returns the box with this id or this outlet.
    fn box_of(&self, id: &Id) -> Option<&Id> {
        self.plan.holder(self.parts.get(id)?).map(|it| &it.id)
    }

    /// Lists changes that protect a receptacle for what is planned there and `more` plugs.
    fn protection(&self, at: &Id, more: usize) -> Vec<Change> {
        let mut changes: Vec<Change> = self.moves(at);
        let there = self.plan.loads.iter();
        let there = there.filter(|load| load.on.as_ref() == Some(at));
        changes.extend(there.flat_map(|load| self.turns(load, plug_of(load))));
        // Loads kept out of this receptacle may find a protected place elsewhere.
        for load in self.kept_out(at) {
            let limits = self.report.figures.limits.iter();
            let others = limits.filter(|it| !it.gfci && it.id != *at && it.shape.takes(plug_of(load)));
            changes.extend(others.flat_map(|it| self.devices(&it.id, 1)));
            changes.extend(self.turns(load, plug_of(load)));
        }
        // A bonded generator needs no bonding plug, and the plug defeats the GFCI.
        let set = &self.plan.generator;
        if set.neutral == Answer::Known(Neutral::Bonded) && set.bonding_plug == Answer::Known(true) {
            changes.push(Change::BondingPlugOut);
        }
        changes.extend(self.devices(at, more));
        changes
    }

    /// Lists GFCI devices that protect a receptacle, and moves of its upstream gear to protected receptacles.
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
            // Fewer than planned may do, since some loads may find another place.
            changes.extend((1..=planned.min(room)).filter_map(|sockets| {
                Some(Change::ProtectedOutlet { at: at.clone(), sockets: u8::try_from(sockets).ok()? })
            }));
            // Other loads may move here too, so one three-way cord can replace several devices.
            let plugs: usize = self.plan.loads.iter().map(|load| usize::from(load.count)).sum();
            if planned > 0 && plugs > 1 && room > 0 {
                changes.extend(self.three_way(at));
            }
        }
        changes
    }

    /// Returns the refused loads that could be plugged in here, once for each unit.
    fn kept_out(&self, at: &Id) -> impl Iterator<Item = &Load> {
        let unplaced = self.report.figures.sharing.unplaced.iter();
        let refused = unplaced.filter(|lost| lost.reason == "refused");
        let loads = refused.filter_map(|lost| self.load_of(&lost.load));
        loads
            .filter(|load| load.on.is_none())
            .filter(move |load| load.plug.known().is_none_or(|plug| self.sockets.takes(at, *plug)))
    }

    /// Returns the change that adds a three-way cord to a household receptacle and makes room for it. The cord has its
    /// own GFCI, so it never goes into a new cord or adapter bought for its GFCI.
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

    /// Lists the moves that free the loads the plan fixes at a receptacle.
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

    /// Lists moves, other hours and smaller replacements for the loads among these ids.
    fn load_changes(&self, ids: &[Id]) -> Vec<Change> {
        let mut changes = Vec::new();
        let mut loads: Vec<&Load> = ids.iter().filter_map(|id| self.load_of(id)).collect();
        loads.dedup_by_key(|load| &load.id);
        for load in &loads {
            if load.on.is_some() {
                changes.push(Change::moved(load.id.clone()));
            }
            // Medical equipment is neither put off nor made smaller.
            if load.may_be(LoadKind::Medical) {
                continue;
            }
            // Nobody buys a smaller camper for this.
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

    /// Lists runs of less than three hours for a heat appliance, if some receptacle carries it only for that long.
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

    /// Returns other starts for one of a load's stretches, the nearest first: where another stretch ends, or so that it
    /// ends where one begins.
    ///
    /// Never in the night or the quiet hours, and never when all the `others` that it clashes with are on.
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

    /// Lists changes to the cord or box that has this id or this receptacle.
    fn part_changes(&self, id: &Id) -> Vec<Change> {
        let mut changes = self.moves(id);
        if let Some(cord) = self.cord(id) {
            let id = || cord.id.clone();
            changes.extend(self.replugs(&cord.id));
            if cord.is_coiled() != Answer::Known(false) {
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
            // With too short a cord people would bring the generator closer.
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

    /// Returns the change that puts a box in place of a splitter, or of an adapter whose ends are rated below its plug.
    fn box_for(&self, cord: &Cord) -> Option<Change> {
        let plug = cord.usable_plug()?;
        let smaller = |end: &Receptacle| end.0.rating() < plug.0.rating();
        let long = length_of(cord) > AT_SET;
        let chained = (cord.from.as_ref()).is_some_and(|from| self.leads.ends_long(from));
        // Of two parts in one socket the box counts as the one without power.
        let crowded = cord.from.as_ref().is_some_and(|from| self.sockets.crowded(self.plan, from));
        (!crowded && (cord.ends().len() > 1 || cord.ends().iter().any(smaller)))
            .then(|| Change::BoxForSplitter { cord: cord.id.clone(), far: long && !chained })
    }

    /// Lists other sound receptacles to plug a part into, with a free socket and not downstream of it. Gear that must
    /// not be used is pulled out if it holds the socket.
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

    /// Returns the sound receptacles that take a plug, each with its number of empty sockets.
    fn sound(&self, plug: Plug) -> impl Iterator<Item = (&Id, usize)> {
        let take = self.sound.iter().filter(move |(it, _)| it.shape.takes(plug));
        take.map(|(limit, free)| (&limit.id, *free))
    }

    /// Lists sockets that a load can share with loads of different hours. Medical equipment keeps its own.
    fn turns(&self, load: &Load, plug: Plug) -> Vec<Change> {
        let shares = |load: &Load| load.count == 1 && !load.hours.is_empty() && !load.may_be(LoadKind::Medical);
        if !shares(load) {
            return Vec::new();
        }
        let sharing = &self.report.figures.sharing;
        let turns = |at: &Id| {
            let placed = sharing.placed.iter().filter(|placed| placed.at == *at);
            let mut with: Vec<&Load> = placed.filter_map(|it| self.load_of(&it.load)).collect();
            // Nothing is placed there: pair it with another load that has no place.
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

    /// Lists changes for musts without a place, or that may not be on together.
    fn for_waiting(&self, loads: &[Id]) -> Vec<Change> {
        let mut changes = match loads {
            [id] => self.for_unplaced(id),
            _ if beyond_the_set(self.report, loads) => {
                // It exceeds the generator, so moving does not help.
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

    /// Drops the changes that set gear aside, since less gear carries no more. Gear that must not be used still goes,
    /// because it takes up a socket.
    fn keep_gear(&self, changes: &mut Vec<Change>) {
        changes.retain(|change| match change {
            Change::SetAside(part) => self.dead.iter().any(|it| it.id == part),
            _ => true,
        });
    }

    /// Lists changes that give a load used near people a place at the end of a cord.
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

    /// Lists changes for a must that has no place, or too weak a one.
    fn for_unplaced(&self, id: &Id) -> Vec<Change> {
        let Some(load) = self.load_of(id) else {
            return Vec::new();
        };
        // A load inside a camper stays in it.
        if let Some(camper) = self.plan.around(load) {
            let mut changes = self.load_changes(std::slice::from_ref(&load.id));
            changes.extend(self.replugs(&camper.id));
            changes.extend(camper.inlet.known().into_iter().flat_map(|inlet| self.wider(*inlet)));
            return changes;
        }
        let plug = plug_of(load);
        // No gear on the list turns 120 V into 240 V.
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

    /// Lists changes that make room for a load in the receptacles that take its plug.
    fn made_room(&self, load: &Load, plug: Plug) -> Vec<Change> {
        let mut changes = self.turns(load, plug);
        changes.extend(self.when_others_are_off(load));
        let limits = self.report.figures.limits.iter();
        for limit in limits.filter(|limit| limit.shape.takes(plug)) {
            if let Some((code, part)) = self.sockets.refused(&limit.id) {
                changes.extend(self.for_finding(code, std::slice::from_ref(part)));
                continue;
            }
            // Protection opens a receptacle that was refused for lack of it.
            if !limit.gfci {
                changes.extend(self.protection(&limit.id, 1));
            }
            // Move what holds the socket.
            changes.extend(self.moves(&limit.id));
            for part in self.gear_at(&limit.id) {
                changes.extend(self.replugs(&part));
                changes.push(Change::SetAside(part));
            }
        }
        changes
    }

    /// Lists hours for a load in which the loads it overlaps with are not all on.
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

    /// Lists changes that let more power through to this plug, since any part on the way may be too weak.
    fn wider(&self, plug: Plug) -> Vec<Change> {
        let mut changes = self.more_sockets(plug);
        // Collected first, because most paths share a cord or box.
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

    /// Returns the spare cords and boxes that take this plug.
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

    /// Lists changes that add sockets: spare gear that people own, or new gear with household receptacles.
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

/// Whether all these loads are on at some minute of a stretch. A load without hours may be on at any.
fn all_on(loads: &[&Load], hours: Span) -> bool {
    let on = |load: &&Load, minute| load.hours.is_empty() || load.wants(minute);
    // The number of loads that are on rises only where hours begin.
    let spans = loads.iter().flat_map(|load| &load.hours);
    let mut begins = spans.map(|span| span.from).filter(|minute| hours.contains(*minute));
    let all = |minute| loads.iter().all(|load| on(load, minute));
    all(hours.from) || begins.any(all)
}

/// Returns a load's plug, or 5-15P where it is unknown.
fn plug_of(load: &Load) -> Plug {
    let known = load.plug.known().copied();
    known.unwrap_or(Plug(Configuration::N5_15))
}

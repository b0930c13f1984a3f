//! The stated list: for each problem, every change on it that may have a part in clearing it.
//!
//! A list errs on the long side. The search needs it to hold at least one change of every set
//! that clears the problem; a change on it that does not help costs only time, since every set
//! is judged by the whole check.

use rust_decimal::Decimal;

use super::change::{Change, shape_of};
use crate::plan::{Answer, Cord, Draw, Id, LoadKind, Plan, Span, Stands};
use crate::quantity::Length;
use crate::report::{Finding, Report, Signal};
use crate::supply::LimitReason;
use crate::tables::conductor::gauge_of;
use crate::tables::exhaust::AMPLE;
use crate::tables::shape::{Configuration, Plug, Receptacle};

/// Cords are sold in these sizes, thinnest first.
const GAUGES: [i8; 6] = [16, 14, 12, 10, 8, 6];
/// How many sizes thicker are tried.
const THICKER: usize = 3;
/// Cords are sold in these lengths: 25 ft and 50 ft.
const LENGTHS: [Length; 2] = [
    Length::from_millimetres(7_620),
    Length::from_millimetres(15_240),
];
/// How many later hours are tried for each load.
const LATER: usize = 4;
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
}

/// The problems of this signal or worse, and the musts that wait.
pub(super) fn problems(plan: &Plan, report: &Report, down_to: Signal) -> Vec<Problem> {
    let mut list: Vec<Problem> = Vec::new();
    let findings = report
        .findings
        .iter()
        .filter(|finding| finding.signal <= down_to);
    for finding in findings {
        for about in split(finding) {
            list.push(Problem::Finding {
                code: finding.code,
                about,
            });
        }
    }
    list.extend(waiting(plan, report).into_iter().map(Problem::Waits));
    list
}

/// Most rules name what has a part in one hazard; some, parts that are each cured by themselves.
fn split(finding: &Finding) -> Vec<Vec<Id>> {
    if Report::ONE_BY_ONE.contains(&finding.code) {
        finding.about.iter().map(|id| vec![id.clone()]).collect()
    } else {
        vec![finding.about.clone()]
    }
}

/// The musts without a place, and the sets of musts that are wanted at one time and may not be
/// on together. What has no hours and does not run for long waits without harm.
pub(super) fn waiting(plan: &Plan, report: &Report) -> Vec<Vec<Id>> {
    let facts = &report.figures.loads;
    let load = |id: &Id| {
        let fact = facts.iter().find(|fact| fact.id == *id)?;
        plan.loads.iter().find(|load| load.id == fact.of)
    };
    let must = |id: &Id| {
        load(id).is_some_and(|it| {
            it.wanted == crate::plan::Wanted::Must || it.may_be(LoadKind::Medical)
        })
    };
    let on = |id: &Id, minute: u16| {
        load(id).is_some_and(|it| {
            if it.hours.is_empty() {
                let continuous = facts.iter().any(|fact| fact.id == *id && fact.continuous);
                continuous || it.may_be(LoadKind::Medical)
            } else {
                it.hours.iter().any(|span| span.contains(minute))
            }
        })
    };
    // More is on than a minute before only where some hours begin.
    let minutes: Vec<u16> = std::iter::once(0)
        .chain(
            plan.loads
                .iter()
                .flat_map(|it| &it.hours)
                .map(|span| span.from),
        )
        .collect();
    let sharing = &report.figures.sharing;
    let lost = sharing
        .unplaced
        .iter()
        .filter(|unplaced| must(&unplaced.load))
        .map(|unplaced| vec![unplaced.load.clone()]);
    let clash = sharing.never.iter().filter(|set| {
        set.iter().all(must)
            && (set.len() == 1
                || minutes
                    .iter()
                    .any(|minute| set.iter().all(|id| on(id, *minute))))
    });
    lost.chain(clash.cloned()).collect()
}

/// Every change of the list that may have a part in clearing the problem.
pub(super) fn changes(plan: &Plan, report: &Report, problem: &Problem) -> Vec<Change> {
    let list = List { plan, report };
    let mut changes = match problem {
        Problem::Finding { code, about } => list.for_finding(code, about),
        Problem::Waits(loads) => list.for_waiting(loads),
    };
    changes.sort();
    changes.dedup();
    changes
}

struct List<'a> {
    plan: &'a Plan,
    report: &'a Report,
}

impl List<'_> {
    fn for_finding(&self, code: &str, about: &[Id]) -> Vec<Change> {
        let mut changes = Vec::new();
        match code {
            "AIR001" => changes.push(Change::Distance),
            "AIR002" => changes.push(Change::Alarm),
            "AIR003" => changes.push(Change::OpenAir),
            "AIR006" => {
                let site = &self.plan.site;
                if !site.sleepers_at.known().is_some_and(|at| *at >= AMPLE) {
                    changes.push(Change::Distance);
                }
                if site.co_alarm != Answer::Known(true) {
                    changes.push(Change::Alarm);
                }
                if !matches!(site.stands, Answer::Known(Stands::Open | Stands::Roof)) {
                    changes.push(Change::OpenAir);
                }
                // What a life depends on, or may, is switched off for nothing.
                let others = self
                    .plan
                    .loads
                    .iter()
                    .filter(|load| about.contains(&load.id));
                let others = others.filter(|load| !load.may_be(LoadKind::Medical));
                changes.extend(others.map(|load| Change::OffAtNight(load.id.clone())));
            }
            "SHOCK003" => changes.push(Change::NoBuilding),
            "SHOCK001" => {
                for id in about {
                    changes.extend(self.protection(id));
                }
            }
            "CORD002" => {
                for id in about {
                    changes.push(Change::OutdoorCord(id.clone()));
                    changes.push(Change::SetAside(id.clone()));
                }
            }
            "CORD004" => {
                for id in about {
                    changes.push(Change::GroundedCord(id.clone()));
                    changes.push(Change::SetAside(id.clone()));
                }
            }
            "SHOCK004" | "SHOCK005" | "SHOCK006" => {
                for id in about {
                    changes.push(Change::ListedBox(id.clone()));
                    changes.push(Change::SetAside(id.clone()));
                }
            }
            "HEALTH002" => changes.extend(about.iter().cloned().map(Change::OffAtNight)),
            // No other cord or box makes the neutral that is not there.
            "FIT006" => {
                for id in about {
                    let cord = self.cord(id).map(|cord| cord.id.clone());
                    let part = cord.or_else(|| self.box_of(id).cloned());
                    changes.extend(part.map(Change::SetAside));
                }
            }
            "POWER001" | "POWER002" => changes.extend(self.load_changes(about)),
            // What carries too much, or is protected too little, at whatever part.
            _ => {
                changes.extend(self.load_changes(about));
                for id in about {
                    changes.extend(self.part_changes(id));
                    for part in self.path(id) {
                        changes.extend(self.part_changes(&part));
                    }
                }
            }
        }
        changes
    }

    /// The parts from the set to a receptacle.
    fn path(&self, at: &Id) -> Vec<Id> {
        self.report
            .figures
            .limits
            .iter()
            .find(|limit| limit.id == *at)
            .map(|limit| limit.path.clone())
            .unwrap_or_default()
    }

    fn cord(&self, id: &Id) -> Option<&Cord> {
        // A path names a cord by its own id, or by that of one of its ends.
        self.plan
            .cords
            .iter()
            .find(|cord| cord.id == *id || (0..cord.ends.len()).any(|end| cord.end_id(end) == *id))
    }

    /// The box that is this, or has this outlet.
    fn box_of(&self, id: &Id) -> Option<&Id> {
        self.plan
            .boxes
            .iter()
            .find(|it| it.id == *id || it.outlets.iter().any(|outlet| outlet.id == *id))
            .map(|it| &it.id)
    }

    /// What protects a receptacle, or takes it out of use.
    fn protection(&self, at: &Id) -> Vec<Change> {
        let mut changes: Vec<Change> = self.moves(at);
        let mut path = self.path(at);
        path.push(at.clone());
        for id in path {
            if let Some(cord) = self.cord(&id) {
                changes.push(Change::ProtectedCord(cord.id.clone()));
                changes.push(Change::SetAside(cord.id.clone()));
                if cord.ends.len() > 1 {
                    changes.push(Change::BoxForSplitter(cord.id.clone()));
                }
                changes.extend(self.replugs(&cord.id));
            } else if let Some(it) = self.box_of(&id) {
                changes.push(Change::ListedBox(it.clone()));
                changes.push(Change::SetAside(it.clone()));
                changes.extend(self.replugs(it));
            }
        }
        if self.cord(at).is_none() {
            let sockets = self.free(at);
            if sockets > 0 {
                changes.push(Change::ProtectedOutlet {
                    at: at.clone(),
                    sockets,
                });
            }
        }
        changes
    }

    /// How many sockets of a receptacle no cord or box takes up.
    fn free(&self, at: &Id) -> u8 {
        let boxes = self.plan.boxes.iter();
        let outlets = self.plan.generator.outlets.iter();
        let sockets = outlets
            .chain(boxes.clone().flat_map(|it| &it.outlets))
            .find(|outlet| outlet.id == *at)
            .map_or(1, crate::plan::Outlet::socket_count);
        let taken = self
            .plan
            .cords
            .iter()
            .map(|cord| &cord.from)
            .chain(boxes.map(|it| &it.from))
            .filter(|from| from.as_ref() == Some(at))
            .count();
        sockets.saturating_sub(u8::try_from(taken).unwrap_or(u8::MAX))
    }

    /// The sockets that nothing at all is plugged into.
    fn open(&self, at: &Id) -> u8 {
        let loads = self
            .plan
            .loads
            .iter()
            .filter(|load| load.on.as_ref() == Some(at))
            .map(|load| load.count)
            .fold(0, u8::saturating_add);
        self.free(at).saturating_sub(loads)
    }

    /// The loads that the plan puts at a receptacle, moved.
    fn moves(&self, at: &Id) -> Vec<Change> {
        self.plan
            .loads
            .iter()
            .filter(|load| load.on.as_ref() == Some(at))
            .map(|load| Change::Move(load.id.clone()))
            .collect()
    }

    fn load_of(&self, id: &Id) -> Option<&crate::plan::Load> {
        let fact = self.report.figures.loads.iter().find(|fact| fact.id == *id);
        let of = fact.map_or(id, |fact| &fact.of);
        self.plan.loads.iter().find(|load| load.id == *of)
    }

    /// Moved, later or smaller: of the ids that are loads.
    fn load_changes(&self, ids: &[Id]) -> Vec<Change> {
        let mut changes = Vec::new();
        for load in ids.iter().filter_map(|id| self.load_of(id)) {
            if load.on.is_some() {
                changes.push(Change::Move(load.id.clone()));
            }
            // Nobody's health is put off or made smaller.
            if load.may_be(LoadKind::Medical) {
                continue;
            }
            // Nobody buys a smaller camper for it.
            let known = matches!(load.running, Answer::Known(Draw::Power(_)));
            if known && !crate::rules::camper(load) {
                for part in PARTS {
                    changes.push(Change::Smaller {
                        load: load.id.clone(),
                        part,
                    });
                }
            }
            for (span, hours) in load.hours.iter().enumerate() {
                changes.extend(self.later(*hours).map(|to| Change::Shift {
                    load: load.id.clone(),
                    span,
                    to,
                }));
            }
        }
        changes
    }

    /// The ends of other hours after this one began, out of quiet hours, the nearest first.
    fn later(&self, hours: Span) -> impl Iterator<Item = u16> {
        let quiet = self.plan.site.quiet_hours.known().copied();
        let mut ends: Vec<u16> = self
            .plan
            .loads
            .iter()
            .flat_map(|load| &load.hours)
            .map(|span| span.to % Span::DAY)
            .filter(|end| *end > hours.from)
            .filter(|end| {
                let to = (end + hours.minutes()) % Span::DAY;
                let moved = Span { from: *end, to };
                quiet.is_none_or(|quiet| !quiet.contains(*end) && !moved.contains(quiet.from))
            })
            .collect();
        ends.sort_unstable();
        ends.dedup();
        ends.into_iter().take(LATER)
    }

    /// What may be done to a cord or a box, whichever this id is of.
    fn part_changes(&self, id: &Id) -> Vec<Change> {
        let mut changes = self.moves(id);
        if let Some(cord) = self.cord(id) {
            let id = || cord.id.clone();
            changes.push(Change::SetAside(id()));
            changes.extend(self.replugs(&cord.id));
            if cord.coiled != Answer::Known(false) {
                changes.push(Change::Uncoil(id()));
            }
            if cord.ends.len() > 1 {
                changes.push(Change::BoxForSplitter(id()));
            }
            let now = cord.wire.known().and_then(|wire| gauge_of(*wire));
            let thicker = GAUGES
                .iter()
                .filter(|gauge| now.is_none_or(|now| **gauge < now));
            for (step, gauge) in thicker.take(THICKER).enumerate() {
                changes.push(Change::Thicker {
                    cord: id(),
                    gauge: *gauge,
                    steps: u32::try_from(step + 1).unwrap_or(u32::MAX),
                });
            }
            for length in LENGTHS {
                if cord.length.known().is_none_or(|now| length < *now) {
                    changes.push(Change::Shorter { cord: id(), length });
                }
            }
        } else if let Some(it) = self.box_of(id) {
            changes.push(Change::ListedBox(it.clone()));
            changes.push(Change::SetAside(it.clone()));
            changes.extend(self.replugs(it));
        }
        changes
    }

    /// The other receptacles that a part's plug goes into and that have a socket open; none
    /// that hangs on the part itself, or that must not be used.
    fn replugs(&self, part: &Id) -> Vec<Change> {
        let cord = self.plan.cords.iter().find(|it| it.id == *part);
        let it = self.plan.boxes.iter().find(|it| it.id == *part);
        let (plug, from) = match (cord, it) {
            (Some(cord), _) => (cord.plug, &cord.from),
            (None, Some(it)) => (it.inlet, &it.from),
            (None, None) => return Vec::new(),
        };
        self.sound(plug)
            .filter(|at| Some(*at) != from.as_ref())
            .filter(|at| !self.path(at).contains(part))
            .map(|to| Change::Replug {
                part: part.clone(),
                to: to.clone(),
            })
            .collect()
    }

    /// Receptacles with a socket open that take a plug and may be used.
    fn sound(&self, plug: Plug) -> impl Iterator<Item = &Id> {
        self.report
            .figures
            .limits
            .iter()
            .filter(move |limit| limit.shape.takes(plug))
            .filter(|limit| limit.set_by.reason != LimitReason::NotFed)
            .filter(|limit| {
                // Bare ones become sound with the protection that new parts bring.
                let refused = self.report.refused(&limit.id);
                refused.is_none_or(|why| ["SHOCK001", "SHOCK013"].contains(&why.code))
            })
            .map(|limit| &limit.id)
            .filter(|at| self.open(at) > 0)
    }

    /// For musts without a place, or that cannot be on together.
    fn for_waiting(&self, loads: &[Id]) -> Vec<Change> {
        let mut changes = self.load_changes(loads);
        if loads.len() > 1 && self.beyond_the_set(loads) {
            // More than the set gives, wherever they are plugged in.
            changes.retain(|change| !matches!(change, Change::Move(_)));
            return changes;
        }
        let household = |plug: Plug| {
            matches!(
                plug.0,
                Configuration::N1_15 | Configuration::N5_15 | Configuration::N5_20
            )
        };
        for id in loads {
            let Some(load) = self.load_of(id) else {
                continue;
            };
            let unplaced = self.report.figures.sharing.unplaced.iter();
            let reason = unplaced
                .filter(|unplaced| unplaced.load == *id)
                .map(|unplaced| unplaced.reason)
                .next();
            let plug = load
                .plug
                .known()
                .copied()
                .unwrap_or(Plug(Configuration::N5_15));
            let fitting = self.report.figures.limits.iter();
            for limit in fitting.filter(|limit| limit.shape.takes(plug)) {
                // A place that nobody is sent to becomes one with protection.
                if !limit.gfci {
                    changes.extend(self.protection(&limit.id));
                }
                changes.extend(self.moves(&limit.id));
                if reason == Some("no-room") {
                    continue;
                }
                // Whatever lies on the way there may be too weak.
                for id in limit.path.iter().chain([&limit.id]) {
                    changes.extend(self.part_changes(id));
                }
            }
            if household(plug) {
                changes.extend(self.more_sockets());
            }
        }
        // Less gear carries no more.
        changes.retain(|change| !matches!(change, Change::SetAside(_)));
        changes
    }

    /// Whether these ask for more than the set gives, running or with one of them starting. Of
    /// a set with two legs only their sum is asked: where they are plugged in decides the rest.
    fn beyond_the_set(&self, loads: &[Id]) -> bool {
        let facts = || {
            loads
                .iter()
                .filter_map(|id| self.report.figures.loads.iter().find(|fact| fact.id == *id))
        };
        // Volt-amperes: what a leg carries is counted in amps.
        let running: Decimal = facts()
            .map(|fact| fact.running_amps.amount * fact.volts.amount)
            .sum();
        let step = facts()
            .map(|fact| (fact.starting_amps.amount - fact.running_amps.amount) * fact.volts.amount)
            .max()
            .unwrap_or_default();
        let usable = &self.report.figures.usable;
        running > usable.rated_watts.amount || running + step > usable.peak_watts.amount
    }

    /// New sockets for household plugs.
    fn more_sockets(&self) -> Vec<Change> {
        let mut changes = Vec::new();
        for limit in &self.report.figures.limits {
            let id = &limit.id;
            if self.open(id) == 0 || limit.set_by.reason == LimitReason::NotFed {
                continue;
            }
            match shape_of(self.plan, id).map(|Receptacle(shape)| shape) {
                Some(Configuration::N5_15 | Configuration::N5_20) => {
                    changes.push(Change::ThreeWay(id.clone()));
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

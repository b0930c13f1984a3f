//! What is on at the same time, and how much of it passes each node of the supply tree.
//!
//! A load with hours is on during them. A load without hours that must run may be on at any minute, so it always
//! counts. A wish without hours can wait for its turn and does not count.

use std::collections::BTreeMap;

use crate::plan::{Answer, Id, Leg, Load, LoadKind, Plan, Span};
use crate::quantity::{ApparentPower, Current, Length, Power, Ratio};
use crate::report::{Figures, LoadFacts, Value, Values};
use crate::rules::Facts;
use crate::supply::{NodeIx, Supply, UNKNOWN_LENGTH};
use crate::tables::shape::Receptacle;
use crate::verdict::Verdicts;

/// One thing that plugs in: a load, or one of several alike.
#[derive(Clone, Copy, Debug)]
pub(super) struct Need<'a> {
    /// The load in the plan.
    pub load: &'a Load,
    /// What it draws.
    pub facts: &'a LoadFacts,
    /// The receptacle it is plugged into, if any.
    pub at: Option<NodeIx>,
    /// Whether the sharing gives it a place. Without one it is not switched on.
    placed: bool,
    /// Whether it has no place only because of the gear: what would take it must not be used, or has too little
    /// capacity, and that only on a guess.
    by_gear: bool,
    /// Whether it runs inside a camper and nowhere else.
    inside: bool,
}

/// Returns a time of day as a value.
pub(super) fn clock(minute: u16) -> Value {
    Value::Time(minute % Span::DAY)
}

/// Returns when these are on: at this minute, or at any hour if none of them has hours in the plan.
pub(super) fn when(minute: u16, on: &[Need<'_>]) -> Values {
    let timed = on.iter().any(|need| !need.load.hours.is_empty());
    let time = timed.then(|| ("time", clock(minute)));
    let timed = ("timed", Value::yes_no(timed));
    std::iter::once(timed).chain(time).collect()
}

/// Whether the plan says where each of these is plugged in. For the others, a finding says what they would draw.
pub(super) fn planned<'a>(mut loads: impl Iterator<Item = &'a Load>) -> Value {
    Value::yes_no(loads.all(|load| load.on.is_some()))
}

impl Need<'_> {
    /// Whether it counts at this minute of the day.
    pub fn on(&self, minute: u16) -> bool {
        if self.load.hours.is_empty() { self.any_time() } else { self.load.wants(minute) }
    }

    /// Whether it counts all day because the plan gives no hours.
    pub fn any_time(&self) -> bool {
        self.load.hours.is_empty() && self.load.is_needed()
    }

    /// Whether it runs for three hours or more at a stretch.
    pub fn continuous(&self) -> bool {
        self.facts.continuous
    }

    /// Whether it is ever on. A wish without hours waits for its turn.
    pub fn ever_on(&self) -> bool {
        self.any_time() || !self.load.hours.is_empty()
    }

    /// Whether it must run and cannot wait for its turn: it has hours, or runs for long, or somebody's health depends
    /// on it.
    pub fn cannot_wait(&self) -> bool {
        self.load.is_needed() && (!self.load.hours.is_empty() || self.continuous() || self.life())
    }

    /// Whether somebody's health depends on it, or may.
    pub fn life(&self) -> bool {
        self.load.may_be(LoadKind::Medical)
    }

    /// Whether its watts alone show what it demands of the generator. With a power factor below 1 it draws more amperes
    /// than its watts suggest, and a generator with one leg has no more amperes to give.
    pub fn by_watts(&self, supply: &Supply) -> bool {
        // Watts and amperes were rounded separately.
        let rounding = Current::from_milliamps(1);
        let unity = Ratio::from_permille(1000);
        let told = |watts, amps| amps <= Current::of_load(watts, unity, supply.volts) + rounding;
        let facts = self.facts;
        supply.node(NodeIx(0)).legs.all().len() > 1
            || (told(facts.running_watts, facts.running_amps) && told(facts.starting_watts, facts.starting_amps))
    }

    /// Whether it may be switched on.
    pub const fn placed(&self) -> bool {
        self.placed
    }

    /// Whether its plug fits, or may fit, this shape. A load inside a camper has no plug.
    pub fn fits(&self, shape: Receptacle) -> bool {
        !self.inside && self.load.plug.known().is_none_or(|plug| shape.takes(*plug))
    }

    /// Whether it has no place only because of the gear.
    pub const fn by_gear(&self) -> bool {
        self.by_gear
    }

    /// Whether it may be switched on, now or once the gear is put right: the generator has to supply it either way. A
    /// load that is known to be medical and has no place is left out, because its missing place is reported instead of
    /// what to leave off beside it. For a load of unknown kind, both are reported.
    pub fn asks_the_set(&self) -> bool {
        self.placed || (self.by_gear && self.load.kind != Answer::Known(LoadKind::Medical))
    }

    /// Running power.
    pub const fn running(&self) -> Power {
        self.facts.running_watts
    }

    /// Starting power; never less than running.
    pub const fn starting(&self) -> Power {
        self.facts.starting_watts
    }

    /// Running current.
    pub const fn amps(&self) -> Current {
        self.facts.running_amps
    }

    /// Running volt-amperes on each leg, in which simultaneous loads add up.
    pub const fn apparent(&self) -> ApparentPower {
        self.facts.running_volt_amps
    }

    /// Starting volt-amperes on each leg; never less than running.
    pub const fn starting_apparent(&self) -> ApparentPower {
        self.facts.starting_volt_amps
    }

    /// Starting current; never less than running.
    pub const fn starting_amps(&self) -> Current {
        self.facts.starting_amps
    }
}

/// The busiest minute by some measure, and what is on then.
#[derive(Clone, Debug)]
pub(super) struct Busiest<'a> {
    /// The minute of the day.
    pub minute: u16,
    /// What is on.
    pub on: Vec<Need<'a>>,
}

impl Busiest<'_> {
    /// Returns the loads that are on, largest first, each once.
    pub fn ids(&self) -> Vec<Id> {
        let mut on = self.on.clone();
        on.sort_by_key(|need| std::cmp::Reverse(need.running()));
        ids(&on)
    }
}

/// Returns each id once, in order of first appearance.
pub(super) fn once<'a>(ids: impl IntoIterator<Item = &'a Id>) -> Vec<Id> {
    let mut found: Vec<Id> = Vec::new();
    for id in ids {
        if !found.contains(id) {
            found.push(id.clone());
        }
    }
    found
}

/// Returns the minute at which `measure` of what is on is greatest; the earliest if several are equal.
pub(super) fn busiest<'a, M: Ord>(needs: &[Need<'a>], measure: impl Fn(&[Need<'a>]) -> M) -> Busiest<'a> {
    let nothing = Busiest { minute: 0, on: Vec::new() };
    minutes(needs)
        .map(|busiest| (measure(&busiest.on), busiest))
        .reduce(|best, next| if next.0 > best.0 { next } else { best })
        .map_or(nothing, |(_, busiest)| busiest)
}

/// Returns the busiest minute, then every other in which somebody's health depends on a running load, busiest first.
/// What must stay off for that load is reported for each.
pub(super) fn busy<'a, M: Ord>(needs: &[Need<'a>], measure: impl Fn(&[Need<'a>]) -> M) -> Vec<Busiest<'a>> {
    let mut all: Vec<Busiest<'a>> = minutes(needs).collect();
    all.sort_by_cached_key(|busiest| std::cmp::Reverse(measure(&busiest.on)));
    let mut first = true;
    all.retain(|busiest| std::mem::take(&mut first) || busiest.on.iter().any(Need::life));
    all
}

/// Iterates over the minutes at which what is on can grow. Only the starts of hours matter, because at any other minute
/// there is the same or less.
pub(super) fn minutes<'a>(needs: &[Need<'a>]) -> impl Iterator<Item = Busiest<'a>> {
    let hours = needs.iter().flat_map(|need| &need.load.hours);
    let mut begins: Vec<u16> = hours.map(|span: &Span| span.from).collect();
    begins.push(0);
    begins.sort_unstable();
    begins.dedup();
    begins
        .into_iter()
        .map(|minute| Busiest { minute, on: (needs.iter().filter(|need| need.on(minute))).copied().collect() })
}

/// What to do where loads are on together and are too much. A load on which somebody's health depends takes no turns.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Beside {
    /// Nobody's health depends on any of them.
    Nothing,
    /// The loads somebody's health depends on are too much even without anything else.
    TooMuch(Vec<Id>),
    /// The others that are too much beside those loads stay off. None do if each of them alone would fit.
    Off {
        /// The loads somebody's health depends on.
        life: Vec<Id>,
        /// The loads that stay off.
        off: Vec<Id>,
    },
}

/// Returns what to do where these are on together and do not fit. `fits` tells whether a subset fits.
pub(super) fn beside<'a>(on: &[Need<'a>], fits: impl Fn(&[Need<'a>]) -> bool) -> Beside {
    let life: Vec<Need<'a>> = on.iter().filter(|need| need.life()).copied().collect();
    if life.is_empty() {
        return Beside::Nothing;
    }
    if !fits(&life) {
        return Beside::TooMuch(ids(&life));
    }
    let off: Vec<Need<'a>> = on
        .iter()
        .filter(|need| !need.life())
        .filter(|need| {
            let mut with = life.clone();
            with.push(**need);
            !fits(&with)
        })
        .copied()
        .collect();
    Beside::Off { life: ids(&life), off: ids(&off) }
}

/// Returns the id of each load once, in this order.
pub(super) fn ids(needs: &[Need<'_>]) -> Vec<Id> {
    once(needs.iter().map(|need| &need.load.id))
}

/// Returns every load, each unit separately, with its receptacle.
pub(super) fn needs<'a>(
    plan: &'a Plan,
    supply: &Supply,
    verdicts: &Verdicts<'_>,
    figures: &'a Figures,
) -> Vec<Need<'a>> {
    let sharing = &figures.sharing;
    let loads: BTreeMap<&Id, &Load> = plan.loads.iter().map(|load| (&load.id, load)).collect();
    let seats: BTreeMap<&Id, &Id> = (sharing.placed.iter()).map(|placed| (&placed.load, &placed.at)).collect();
    let left: BTreeMap<&Id, &str> = (sharing.unplaced.iter()).map(|it| (&it.load, it.reason)).collect();
    let mut crowded = None;
    figures
        .loads
        .iter()
        .filter_map(|facts| {
            let load = *loads.get(&facts.of)?;
            let placed = seats.get(&facts.id).copied();
            // What got hot is plugged in nowhere, so it draws nothing and holds no socket. Rule CORD009 says why.
            if left.get(&facts.id) == Some(&"hot") {
                return None;
            }
            let by_gear = match left.get(&facts.id) {
                Some(&"refused") => true,
                Some(&"too-large") => guessed(supply, load, facts),
                Some(&"no-room") => {
                    crowded.get_or_insert_with(|| crowded_for_nothing(supply, verdicts)).iter().any(|(id, shape)| {
                        match &load.on {
                            Some(on) => on == *id,
                            None => load.plug.known().is_none_or(|plug| shape.takes(*plug)),
                        }
                    })
                }
                _ => false,
            };
            Some(Need {
                load,
                facts,
                at: placed.or(load.on.as_ref()).and_then(|at| supply.receptacle(at)),
                placed: placed.is_some(),
                by_gear,
                inside: plan.around(load).is_some(),
            })
        })
        .collect()
}

/// Returns the full outlets that gain a free socket once gear that leads to nothing usable is unplugged.
fn crowded_for_nothing<'s>(supply: &'s Supply, verdicts: &Verdicts<'_>) -> Vec<(&'s Id, Receptacle)> {
    let bonded = verdicts.grounding.bonding_socket().map(|socket| socket.at);
    let opens = |at: NodeIx, sockets: u8| {
        let mut stays = supply.fed_from(at).map(|(fed, _)| fed).collect::<Vec<_>>();
        stays.retain(|fed| verdicts.leads_on(*fed));
        stays.len() + usize::from(bonded == Some(at)) < usize::from(sockets)
    };
    let all = supply.receptacles().filter(|(at, _, _, sockets)| {
        verdicts.no_loads(*at).is_none()
            && verdicts.grounding.beside_gear(*at) == 0
            && opens(*at, *sockets)
            && supply.limit(*at).short > Current::ZERO
    });
    all.map(|(_, node, shape, _)| (&node.id, shape)).collect()
}

/// Whether a load's demand, or what the generator or the gear has for it, is only a guess.
fn guessed(supply: &Supply, load: &Load, facts: &LoadFacts) -> bool {
    // Assumed fields that affect no limit.
    const NO_LIMIT: [&str; 4] = ["gfci", "leg", "conductors", "length"];
    let starts = load.starting.is_known() || load.starting_current.is_known();
    let mut fields = supply.assumed.iter().map(|it| it.field.rsplit('.').next());
    !load.kind.is_known()
        || !load.running.is_known()
        || !starts && facts.starting_watts > facts.running_watts
        || fields.any(|last| last.is_some_and(|last| !NO_LIMIT.contains(&last)))
}

impl<'a> Facts<'a> {
    /// Returns the length of a cord, or the assumed one; `None` if this is not a cord.
    pub(super) fn length_of(&self, cord: &Id) -> Option<Length> {
        let cord = self.plan.cord(cord)?;
        Some(cord.length.or(UNKNOWN_LENGTH))
    }

    /// Whether a receptacle delivers power as its shape promises.
    pub(super) fn gives(&self, at: NodeIx) -> bool {
        self.supply.limit(at).short > Current::ZERO
    }

    /// Whether something may be plugged in here and gets power.
    pub(super) fn open(&self, at: NodeIx) -> bool {
        self.gives(at) && self.verdicts.no_loads(at).is_none()
    }

    /// Returns every load, each unit separately, with its receptacle.
    pub(super) fn needs(&self) -> Vec<Need<'a>> {
        self.needs.clone()
    }

    /// Returns the needs that have a place and may be switched on.
    pub(super) fn placed(&self) -> Vec<Need<'a>> {
        self.needs.iter().filter(|need| need.placed()).copied().collect()
    }

    /// Returns the needs that may be switched on and whose current passes this node.
    pub(super) fn placed_through(&self, point: NodeIx) -> &[Need<'a>] {
        let passing = self.passing.get_or_init(|| {
            let mut passing = vec![Vec::new(); self.supply.nodes.len()];
            for need in self.needs.iter().filter(|need| need.placed()) {
                for (ix, _) in need.at.into_iter().flat_map(|at| self.supply.up(at)) {
                    passing[ix.0].push(*need);
                }
            }
            passing
        });
        &passing[point.0]
    }

    /// Returns those of `needs` whose current passes this node.
    pub(super) fn through(&self, needs: &[Need<'a>], point: NodeIx) -> Vec<Need<'a>> {
        needs
            .iter()
            .filter(|need| need.at.is_some_and(|at| self.supply.up(at).any(|(ix, _)| ix == point)))
            .copied()
            .collect()
    }

    /// Whether a need draws on a leg. A 240 V load draws on both.
    fn draws_on(&self, need: &Need<'_>, leg: Leg) -> bool {
        match need.at.map(|at| self.supply.counts_on(at)) {
            Some(legs) => legs.contains(&leg),
            // With no known place, it counts on the stand-in for an unknown leg.
            None => leg == self.supply.unknown_leg || need.load.needs_240(),
        }
    }

    /// Whether a load that draws on one leg alone could move to the other: a usable receptacle there has a free socket,
    /// takes its plug and carries its current.
    pub(super) fn moves_to(&self, need: &Need<'_>, leg: Leg) -> bool {
        let on = |at: NodeIx| self.supply.counts_on(at);
        let alone = need.at.is_some_and(|at| on(at).len() == 1 && on(at) != [leg]);
        let mut receptacles = self.supply.receptacles();
        alone
            && receptacles.any(|(at, _, shape, _)| {
                let limit = self.supply.limit(at);
                let most = if need.continuous() { limit.continuous } else { limit.short };
                let there = self.needs.iter().filter(|it| it.at == Some(at)).count();
                on(at) == [leg]
                    && self.open(at)
                    && need.fits(shape)
                    && need.amps() <= most
                    && there < self.verdicts.grounding.beside_gear(at)
            })
    }

    /// Returns those of `needs` that draw on a leg.
    pub(super) fn those_on_leg(&self, needs: &[Need<'a>], leg: Leg) -> Vec<Need<'a>> {
        let on = needs.iter().filter(|need| self.draws_on(need, leg));
        on.copied().collect()
    }

    /// Returns the total volt-amperes of those of `needs` that draw on a leg.
    pub(super) fn apparent_on_leg<'n>(&self, needs: impl IntoIterator<Item = &'n Need<'n>>, leg: Leg) -> ApparentPower {
        let on = needs.into_iter().filter(|need| self.draws_on(need, leg));
        on.map(Need::apparent).sum()
    }

    /// Returns the current of these needs on one leg, rounded up once.
    pub(super) fn on_leg(&self, needs: &[Need<'_>], leg: Leg) -> Current {
        Current::of_apparent(self.apparent_on_leg(needs, leg), self.supply.volts)
    }

    /// Returns the current of these needs if all of them are on one leg.
    pub(super) fn amps_of(&self, needs: &[Need<'_>]) -> Current {
        Current::of_apparent(needs.iter().map(Need::apparent).sum(), self.supply.volts)
    }

    /// Returns the greatest current of these needs on either leg.
    pub(super) fn worst_leg(&self, needs: &[Need<'_>]) -> Current {
        self.on_leg(needs, Leg::A).max(self.on_leg(needs, Leg::B))
    }
}

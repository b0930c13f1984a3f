//! Voltage drop at each placed load.
//!
//! While loads run, each draws what it takes at the voltage left to it ([`LoadUnit::draws`]): as the voltage falls, a
//! heater takes less current and everything else more. At the moment one of them starts, all count with their nominal
//! current.

use std::collections::BTreeMap;

use super::{Drop, Sharing, Through};
use crate::loads::LoadUnit;
use crate::plan::Id;
use crate::quantity::{Current, Percent, Voltage, narrow};
use crate::supply::drop::{Flow, Microvolts, Running, lost};
use crate::supply::{NodeIx, NodeKind, Supply};

/// What each member of a set loses once the flow has settled, by index of the set.
pub(super) type Settled = BTreeMap<usize, Vec<Microvolts>>;

/// A load at its receptacle.
pub(super) struct Placed<'a> {
    /// The load.
    pub unit: &'a LoadUnit,
    /// Its draw while it runs.
    pub load: Running,
}

impl Placed<'_> {
    /// Returns its draw at the moment it starts.
    pub fn starting(&self) -> Running {
        Running { current: self.unit.starting_current, ..self.load }
    }

    /// Whether it takes more to start than to run.
    pub fn starts(&self) -> bool {
        self.unit.starting_current > self.unit.running_current
    }
}

/// Everything that is placed, and which of it may run together.
pub(super) struct Scene<'a> {
    supply: &'a Supply,
    /// The placed loads, in the order of the loads.
    pub placed: Vec<Placed<'a>>,
    /// The sets, as indices of `placed`. A single set of everything where the sets are not all known.
    pub sets: Vec<Vec<usize>>,
    /// The volts that each running load (second index) costs the place of each load (first index). Losses add up over
    /// the loads, so each load's part is computed only once.
    shares: Vec<Vec<Microvolts>>,
    /// The same while the second load starts.
    starting_shares: Vec<Vec<Microvolts>>,
    /// For each set, what each member loses with the whole set running at nominal current.
    costs: Vec<Vec<Microvolts>>,
    /// The least share of its volts, in millionths, that any load keeps once any of the sets has settled. `None` where
    /// no bound is known in advance.
    least_left: Option<i128>,
}

/// A member of a set: the set, its index there, and its loss.
type Member = (usize, usize, Microvolts);

impl<'a> Scene<'a> {
    pub fn new(supply: &'a Supply, units: &'a [LoadUnit], sharing: &Sharing) -> Self {
        let receptacles: BTreeMap<&Id, NodeIx> =
            sharing.placed.iter().filter_map(|placed| Some((&placed.load, supply.receptacle(&placed.at)?))).collect();
        let placed: Vec<Placed<'a>> = units
            .iter()
            .filter_map(|unit| {
                let load = Running {
                    at: *receptacles.get(&unit.id)?,
                    current: unit.running_current,
                    draws: unit.draws(),
                    one_leg: unit.one_leg,
                };
                Some(Placed { unit, load })
            })
            .collect();
        let index: BTreeMap<&Id, usize> = placed.iter().enumerate().map(|(at, placed)| (&placed.unit.id, at)).collect();
        let sets = if sharing.families_complete {
            // What stays off beside what a life depends on is in no set with others.
            let alone = sharing.off.iter().map(std::slice::from_ref);
            let sets = sharing.together.iter().map(Vec::as_slice).chain(alone);
            sets.map(|set| set.iter().filter_map(|id| index.get(id).copied()).collect()).collect()
        } else {
            vec![(0..placed.len()).collect()]
        };
        let shares = |of: &dyn Fn(&Placed<'a>) -> Running| -> Vec<Vec<Microvolts>> {
            let flows = placed.iter().map(|other| supply.nominal_flow(&[of(other)]));
            let flows: Vec<Flow<'_>> = flows.collect();
            placed.iter().map(|here| flows.iter().map(|flow| flow.lost_by(&here.load)).collect()).collect()
        };
        let (running, starting) = (shares(&|placed| placed.load), shares(&Placed::starting));
        let costs = sets
            .iter()
            .map(|set: &Vec<usize>| {
                let cost = |own: &usize| set.iter().map(|other| running[*own][*other]).sum();
                set.iter().map(cost).collect()
            })
            .collect();
        let mut scene =
            Self { supply, shares: running, starting_shares: starting, costs, sets, placed, least_left: None };
        scene.least_left = scene.least_left();
        scene
    }

    /// Returns the value of the field, 1 - m in millionths.
    ///
    /// If no load loses more than the share x of its volts at nominal current, none loses more than m = x / (1 - m)
    /// once settled, because no current exceeds 1 / (1 - m) of its nominal one. For x above a quarter there is no such
    /// m.
    fn least_left(&self) -> Option<i128> {
        let most = self
            .costs()
            .flatten()
            .map(|(own, cost)| share(cost, self.supply.volts_of(&self.placed[own].load)) + 1)
            .max()
            .unwrap_or(0);
        let under = 1_000_000 - 4 * most;
        // (1 + sqrt(1 - 4 x)) / 2
        (under >= 0).then(|| i128::midpoint(1_000_000, (under * 1_000_000).isqrt()))
    }

    /// Returns an upper bound on the settled loss, from the loss at nominal current.
    fn at_most(&self, cost: Microvolts) -> Option<Microvolts> {
        // Each cord is rounded up to a microvolt.
        const ROUNDING: Microvolts = 1_000;
        Some(cost * 1_000_000 / self.least_left? + ROUNDING)
    }

    /// Returns the member that loses the largest share of its volts once its set has settled. Among equals, one that
    /// loses the most at nominal current. `settled` caches what each set settles to.
    pub(super) fn worst_of(
        &self,
        members: impl Iterator<Item = Member> + Clone,
        settled: &mut Settled,
    ) -> Option<Member> {
        let part = |(set, at, cost): Member| {
            let own = self.sets[set][at];
            share(cost, self.supply.volts_of(&self.placed[own].load))
        };
        let lost = |member: Member, settled: &mut Settled| {
            let (set, at, _) = member;
            let all = settled.entry(set).or_insert_with(|| self.settle(set));
            part((set, at, all[at]))
        };
        let first = members.clone().max_by_key(|member| part(*member))?;
        let (mut worst, mut most) = (first, lost(first, settled));
        for member in members {
            let (set, at, cost) = member;
            let may = self.at_most(cost).map(|cost| part((set, at, cost)));
            if may.is_none_or(|may| may > most) {
                let lost = lost(member, settled);
                if lost > most {
                    (worst, most) = (member, lost);
                }
            }
        }
        Some(worst)
    }

    /// Returns what each member of a set loses once settled. All of its volts where the line cannot carry the set.
    fn settle(&self, set: usize) -> Vec<Microvolts> {
        let running: Vec<Running> = self.sets[set].iter().map(|at| self.placed[*at].load).collect();
        let flow = self.supply.settled_flow(&running);
        let all = |load: &Running| i128::from(self.supply.volts_of(load).millivolts()) * 1000;
        running.iter().map(|load| flow.as_ref().map_or_else(|| all(load), |flow| flow.lost_by(load))).collect()
    }

    /// Returns, for each set, its members, each with what it loses with the whole set running at nominal current.
    pub fn costs(&self) -> impl Iterator<Item = impl Iterator<Item = (usize, Microvolts)>> {
        self.sets.iter().zip(&self.costs).map(|(set, costs)| set.iter().copied().zip(costs.iter().copied()))
    }

    /// Returns the placed load with this id.
    pub fn of(&self, id: &Id) -> Option<&Placed<'a>> {
        self.placed.iter().find(|placed| placed.unit.id == *id)
    }

    /// Returns the volts that `other`, running, costs the place of `own`.
    pub fn share(&self, own: usize, other: usize) -> Microvolts {
        self.shares[own][other]
    }

    /// Returns the same while `other` starts.
    pub fn starting_share(&self, own: usize, other: usize) -> Microvolts {
        self.starting_shares[own][other]
    }

    /// Returns the set containing this load that costs it the most volts once settled. `None` where it is in no set,
    /// and so may not run at all.
    fn worst_set(&self, own: usize, settled: &mut Settled) -> Option<Vec<usize>> {
        let alike = |one: usize, other: usize| {
            let (one, other) = (&self.placed[one], &self.placed[other]);
            one.unit.load == other.unit.load && one.load.at == other.load.at
        };
        let has_twin = (0..self.placed.len()).any(|other| other != own && alike(own, other));
        // A set costs a load what it costs its twin, and serves for either.
        let member = |(set, members): (usize, &Vec<usize>)| {
            let at = members.iter().position(|at| *at == own);
            let twin = || members.iter().position(|at| has_twin && alike(own, *at));
            let at = at.or_else(twin)?;
            Some((set, at, self.costs[set][at]))
        };
        let members = self.sets.iter().enumerate().filter_map(member);
        let (set, ..) = self.worst_of(members, settled)?;
        with_own(&self.sets[set], own, alike)
    }

    /// Returns the drop at a placed load. `None` if it may not even run alone.
    pub fn drop_at(&self, own: usize, settled: &mut Settled) -> Option<Drop> {
        self.worst_set(own, settled).map(|set| self.drop_in(own, &set))
    }

    /// Returns the drop at a placed load while all of `worst`, which includes it, run.
    fn drop_in(&self, own: usize, worst: &[usize]) -> Drop {
        let Placed { unit, load } = &self.placed[own];
        let supply = self.supply;
        let mut running: Vec<Running> = worst.iter().map(|at| self.placed[*at].load).collect();
        let volts = supply.volts_of(load);
        // A line that cannot carry the set loses everything.
        let settled = supply.settled_flow(&running);
        let lost_running = settled.as_ref().map(|flow| lost(flow.lost_by(load)));
        let lost_running = lost_running.map_or(volts, |lost| lost.min(volts));
        let cords = settled.map(|flow| flow.through_cords_to(load));
        let cords = cords.unwrap_or_default();
        for (at, other) in worst.iter().zip(&mut running) {
            if *at == own {
                other.current = unit.starting_current;
            }
        }
        // A load that takes no more to start dips no further than while it runs.
        let lost_starting = if self.placed[own].starts() {
            lost(supply.nominal_flow(&running).lost_by(load)).min(volts)
        } else {
            lost_running
        };
        Drop {
            at: unit.id.clone(),
            receptacle: supply.node(load.at).id.clone(),
            volts_running: lost_running,
            percent_running: percent(lost_running, volts),
            volts_starting: lost_starting.max(lost_running),
            volts_left: volts - lost_running,
            beside: worst.iter().map(|at| self.placed[*at].unit.id.clone()).collect(),
            cords: through(supply, cords),
        }
    }
}

/// Returns the current through each cord, with its resistance.
pub(super) fn through(supply: &Supply, cords: Vec<(NodeIx, Current)>) -> Vec<Through> {
    let told = cords.into_iter().filter_map(|(at, amps)| {
        let node = supply.node(at);
        let NodeKind::Cord { resistance, .. } = node.kind else {
            return None;
        };
        Some(Through { cord: node.id.clone(), amps, ohms: resistance })
    });
    told.collect()
}

/// Whether the generator by itself can start and run a placed load.
fn set_runs(scene: &Scene<'_>, own: usize) -> bool {
    let (unit, supply) = (scene.placed[own].unit, scene.supply);
    unit.running_apparent <= supply.room(NodeIx(0)) && unit.starting_apparent <= supply.peak_room()
}

/// Returns one entry for each placed load that may run, in the order of the loads, and separately one for each that is
/// too much for the generator, with what it would lose by itself.
///
/// What runs alongside a load is the set, of all that may run together, that costs it the most volts. Where the sets
/// are not all known, it is everything that is placed.
pub(super) fn of_scene(scene: &Scene<'_>) -> (Vec<Drop>, Vec<Drop>) {
    let mut settled = Settled::new();
    let (mut drops, mut alone) = (Vec::new(), Vec::new());
    for own in 0..scene.placed.len() {
        match scene.drop_at(own, &mut settled) {
            Some(drop) => drops.push(drop),
            None if !set_runs(scene, own) => alone.push(scene.drop_in(own, &[own])),
            None => {}
        }
    }
    (drops, alone)
}

/// Returns a set with this load in it: the set itself, or the set with this load in place of its twin.
fn with_own(set: &[usize], own: usize, alike: impl Fn(usize, usize) -> bool) -> Option<Vec<usize>> {
    if set.contains(&own) {
        return Some(set.to_vec());
    }
    let instead = set.iter().position(|other| alike(own, *other))?;
    let mut set = set.to_vec();
    set[instead] = own;
    Some(set)
}

/// Returns a part of a voltage in millionths.
pub(super) fn share(part: Microvolts, whole: Voltage) -> i128 {
    let whole = whole.millivolts().max(1);
    let millionths = part * 1000;
    match i64::try_from(millionths) {
        Ok(millionths) => i128::from(millionths / whole),
        Err(_) => millionths / i128::from(whole),
    }
}

/// Returns a part of a voltage as a percentage, rounded up.
pub(super) fn percent(part: Voltage, whole: Voltage) -> Percent {
    let whole = i128::from(whole.millivolts().max(1));
    let up = i128::from(part.millivolts()) * 100_000;
    Percent::from_millipercent(narrow((up + whole - 1) / whole))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Quantity as _;

    /// Checked the way the worksheet shows it: amps times ohms, added up over the cords. The amps are rounded up to a
    /// milliampere, so the result is no smaller, and at most that much larger.
    #[test]
    fn volts_lost_are_the_amps_times_ohms_that_are_told() {
        for text in [crate::plan::demo::WEEKEND, crate::plan::demo::MENDED] {
            let plan = crate::plan::read(text).expect("a demo");
            let report = crate::judge::build(&plan);
            assert!(!report.figures.drops.is_empty());
            let agrees = |at: &Id, cords: &[Through], lost: Voltage| {
                assert!(!cords.is_empty(), "{at}");
                let terms = cords.iter().map(|it| it.amps.amount() * it.ohms.amount());
                let told: rust_decimal::Decimal = terms.sum();
                let more = told - lost.amount();
                let ohms = cords.iter().map(|it| it.ohms.amount());
                let milli = rust_decimal::Decimal::new(1, 3);
                // The loss is rounded up to a millivolt, too.
                let most = ohms.sum::<rust_decimal::Decimal>() * milli;
                assert!(more >= -milli && more <= most, "{at}: {more}");
            };
            for drop in &report.figures.drops {
                assert!(drop.beside.contains(&drop.at));
                agrees(&drop.at, &drop.cords, drop.volts_running);
            }
            let volts = &report.figures.volts;
            for worst in [&volts.worst_running, &volts.worst_start] {
                let worst = worst.as_ref().expect("both are in the demos");
                agrees(&worst.at, &worst.cords, worst.lost);
            }
        }
    }

    /// 2400 W of a camper's heater, all on one leg of 120 V: 6 ohm behind 0.1 kft x 2 x 0.491 ohm/kft (6 AWG, NEC
    /// Chapter 9 Table 8), 0.0982 ohm, loses 120 x 0.0982 / 6.0982 = 1.9324 V, 1.61 % of 120 V. Given in amps, which
    /// are per leg, the same 10 A on both is 24 ohm at 240 V: 0.9780 V, 0.41 %. At 120 V, or if nobody knows, it is
    /// 12 ohm on one leg: 0.9741 V, 0.81 %.
    #[test]
    fn a_camper_may_lose_its_volts_on_one_leg() {
        let percent = |draw: &str| {
            let text = format!(
                r#"
                format = 1
                [site]
                ground = "dry"
                [generator]
                name = "set"
                rated = "9 kW"
                voltage = "120/240 V"
                [[generator.outlet]]
                id = "big"
                shape = "14-50R"
                breaker = "50 A"
                [[cord]]
                id = "long"
                from = "big"
                plug = "14-50P"
                ends = ["14-50R"]
                wire = "6 AWG"
                conductors = 4
                length = "100 ft"
                coiled = false
                [[load]]
                id = "coach"
                name = "Coach"
                kind = "heater"
                {draw}
                plug = "14-50P"
                on = "long"
                "#
            );
            let plan = crate::plan::read(&text).expect("a plan");
            let report = crate::judge::build(&plan);
            let [drop] = &report.figures.drops[..] else { panic!("one load") };
            // The worst of one is that one.
            let worst = report.figures.volts.worst_running.as_ref();
            let worst = worst.expect("a worst");
            assert_eq!((worst.lost, worst.percent), (drop.volts_running, drop.percent_running));
            (drop.volts_running.amount().to_string(), drop.percent_running.amount().to_string())
        };
        let told = |(volts, percent): (&str, &str)| (volts.to_owned(), percent.to_owned());
        assert_eq!(percent("running = \"2400 W\""), told(("1.933", "1.611")));
        for (voltage, lost) in [
            ("voltage = \"120/240 V\"", ("0.978", "0.408")),
            ("voltage = \"240 V\"", ("0.978", "0.408")),
            ("voltage = \"120 V\"", ("0.975", "0.813")),
            ("", ("0.975", "0.813")),
        ] {
            assert_eq!(percent(&format!("current = \"10 A\"\n{voltage}")), told(lost), "{voltage}");
        }
    }

    #[test]
    fn a_set_told_for_one_of_several_alike_serves_for_each() {
        // 1 and 2 are alike.
        let alike = |one: usize, other: usize| (1..=2).contains(&one) && (1..=2).contains(&other);
        assert_eq!(with_own(&[0, 1], 1, alike), Some(vec![0, 1]));
        assert_eq!(with_own(&[0, 1], 2, alike), Some(vec![0, 2]));
        assert_eq!(with_own(&[0, 1], 3, alike), None);
    }

    #[test]
    fn shares_round_up() {
        let volts = Voltage::from_millivolts;
        // 7.85 V of 120 V: 6.5416... %.
        assert_eq!(percent(volts(7850), volts(120_000)).millipercent(), 6542);
        assert_eq!(percent(volts(6000), volts(120_000)).millipercent(), 5000);
    }
}

//! Voltage drop at each placed load.
//!
//! A heater is counted with its nominal current, as anyone would check it by hand: current times
//! resistance. It really loses a little less, because it takes less current at less voltage
//! ([`crate::supply::drop::volts_left_heater`]). Everything else takes more current as the
//! voltage sinks, and that is counted.

use std::collections::BTreeMap;

use super::loads::LoadUnit;
use super::{Drop, Sharing};
use crate::plan::{Id, LoadKind};
use crate::quantity::{Percent, Voltage, narrow};
use crate::supply::drop::{Draws, Microvolts, Running, lost};
use crate::supply::{NodeIx, Supply};

/// One entry for each placed load, in the order of the loads.
///
/// What runs beside a load is the set, of all that may run together, that costs it the most
/// volts; where those sets are not all known, everything that is placed.
#[must_use]
pub(super) fn of_placed(supply: &Supply, units: &[LoadUnit], sharing: &Sharing) -> Vec<Drop> {
    let receptacles: BTreeMap<&Id, NodeIx> = sharing
        .placed
        .iter()
        .filter_map(|placed| Some((&placed.load, supply.receptacle(&placed.at)?)))
        .collect();
    let placed: Vec<(&LoadUnit, Running)> = units
        .iter()
        .filter_map(|unit| {
            let load = Running {
                at: *receptacles.get(&unit.id)?,
                current: unit.running_current,
                draws: if unit.kind == LoadKind::Heater {
                    Draws::Current
                } else {
                    Draws::Power
                },
            };
            Some((unit, load))
        })
        .collect();
    let index: BTreeMap<&Id, usize> = placed
        .iter()
        .enumerate()
        .map(|(at, (unit, _))| (&unit.id, at))
        .collect();
    let sets: Vec<Vec<usize>> = sharing
        .together
        .iter()
        .map(|set| set.iter().filter_map(|id| index.get(id).copied()).collect())
        .collect();
    let alike = |one: usize, other: usize| {
        placed[one].0.load == placed[other].0.load && placed[one].1.at == placed[other].1.at
    };
    (0..placed.len())
        .map(|own| {
            let (unit, load) = placed[own];
            let worst = if sharing.families_complete {
                // Volts are sums over the loads, so each load's share is worked out once.
                let shares: Vec<Microvolts> = placed
                    .iter()
                    .map(|(_, other)| supply.nominal_drop(load.at, &[*other]))
                    .collect();
                sets.iter()
                    .filter_map(|set| with_own(set, own, alike))
                    .max_by_key(|set| set.iter().map(|at| shares[*at]).sum::<Microvolts>())
                    // In no set: it may not run at all, and then not beside others.
                    .unwrap_or_else(|| vec![own])
            } else {
                (0..placed.len()).collect()
            };
            let mut running: Vec<Running> = worst.iter().map(|at| placed[*at].1).collect();
            let volts = supply.volts_at(load.at);
            // A line that cannot carry them at all loses everything.
            let lost_running = supply
                .settled_drop(load.at, &running)
                .map_or(volts, lost)
                .min(volts);
            for (at, other) in worst.iter().zip(&mut running) {
                if *at == own {
                    other.current = unit.starting_current;
                }
            }
            let lost_starting = lost(supply.nominal_drop(load.at, &running)).min(volts);
            Drop {
                at: unit.id.clone(),
                receptacle: supply.node(load.at).id.clone(),
                volts_running: lost_running.into(),
                percent_running: percent(lost_running, volts).into(),
                volts_starting: lost_starting.max(lost_running).into(),
                volts_left: (volts - lost_running).into(),
            }
        })
        .collect()
}

/// A set that may run together, with this load in it: as it stands, or with the load in the place
/// of one just like it, for which the set was told.
fn with_own(set: &[usize], own: usize, alike: impl Fn(usize, usize) -> bool) -> Option<Vec<usize>> {
    let mut set = set.to_vec();
    if !set.contains(&own) {
        let instead = set.iter().position(|other| alike(own, *other))?;
        set[instead] = own;
    }
    Some(set)
}

/// A part of a voltage, rounded up.
fn percent(part: Voltage, whole: Voltage) -> Percent {
    let whole = i128::from(whole.millivolts().max(1));
    let up = i128::from(part.millivolts()) * 100_000;
    Percent::from_millipercent(narrow((up + whole - 1) / whole))
}

#[cfg(test)]
mod tests {
    use super::*;

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

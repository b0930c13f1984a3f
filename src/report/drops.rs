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
use crate::supply::drop::{Running, lost};
use crate::supply::{NodeIx, Supply};

/// One entry for each placed load, in the order of the loads.
///
/// What runs beside a load is the set, of all that may run together, that costs it the most
/// volts; where those sets are not all known, everything that is placed.
#[must_use]
pub(super) fn of_placed(supply: &Supply, units: &[LoadUnit], sharing: &Sharing) -> Vec<Drop> {
    let places: BTreeMap<&Id, NodeIx> = sharing
        .placed
        .iter()
        .filter_map(|placed| Some((&placed.load, supply.receptacle(&placed.at)?)))
        .collect();
    let running: BTreeMap<&Id, Running> = units
        .iter()
        .filter_map(|unit| {
            let at = *places.get(&unit.id)?;
            let load = Running {
                at,
                current: unit.running_current,
                constant_power: unit.kind != LoadKind::Heater,
            };
            Some((&unit.id, load))
        })
        .collect();
    let everything: Vec<&Id> = running.keys().copied().collect();
    let alike = |unit: &LoadUnit, other: &Id| {
        units.iter().any(|one| {
            one.id == *other && one.load == unit.load && places.get(other) == places.get(&unit.id)
        })
    };
    units
        .iter()
        .filter_map(|unit| {
            let own = *running.get(&unit.id)?;
            let loads_of =
                |set: &[&Id]| -> Vec<Running> { set.iter().map(|id| running[*id]).collect() };
            let worst = if sharing.families_complete {
                sharing
                    .together
                    .iter()
                    .filter_map(|set| with_own(set, &unit.id, |other| alike(unit, other)))
                    .filter(|set| set.iter().all(|id| running.contains_key(*id)))
                    .max_by_key(|set| supply.nominal_drop(own.at, &loads_of(set)))
                    // In no set: it may not run at all, and then not beside others.
                    .unwrap_or_else(|| vec![&unit.id])
            } else {
                everything.clone()
            };
            let volts = supply.volts_at(own.at);
            // A line that cannot carry them at all loses everything.
            let lost_running = supply
                .settled_drop(own.at, &loads_of(&worst))
                .map_or(volts, lost)
                .min(volts);
            let starting: Vec<Running> = worst
                .iter()
                .map(|id| {
                    let load = running[*id];
                    if **id == unit.id {
                        Running {
                            current: unit.starting_current,
                            ..load
                        }
                    } else {
                        load
                    }
                })
                .collect();
            let lost_starting = lost(supply.nominal_drop(own.at, &starting)).min(volts);
            Some(Drop {
                at: unit.id.clone(),
                receptacle: supply.node(own.at).id.clone(),
                volts_running: lost_running.into(),
                percent_running: percent(lost_running, volts).into(),
                volts_starting: lost_starting.max(lost_running).into(),
                volts_left: (volts - lost_running).into(),
            })
        })
        .collect()
}

/// A set that may run together, with this load in it: as it stands, or with the load in the place
/// of one just like it, for which the set was told.
fn with_own<'a>(set: &'a [Id], own: &'a Id, alike: impl Fn(&Id) -> bool) -> Option<Vec<&'a Id>> {
    if set.contains(own) {
        return Some(set.iter().collect());
    }
    let instead = set.iter().position(alike)?;
    let mut set: Vec<&Id> = set.iter().collect();
    set[instead] = own;
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
        let id = |text: &str| Id::reference(text).expect("an id");
        let set = [id("kettle"), id("lamp.1")];
        let lamp = |other: &Id| other.as_str().starts_with("lamp");
        let (second, fan) = (id("lamp.2"), id("fan"));
        assert_eq!(with_own(&set, &set[1], lamp), Some(vec![&set[0], &set[1]]));
        assert_eq!(with_own(&set, &second, lamp), Some(vec![&set[0], &second]));
        assert_eq!(with_own(&set, &fan, |_| false), None);
    }

    #[test]
    fn shares_round_up() {
        let volts = Voltage::from_millivolts;
        // 7.85 V of 120 V: 6.5416... %.
        assert_eq!(percent(volts(7850), volts(120_000)).millipercent(), 6542);
        assert_eq!(percent(volts(6000), volts(120_000)).millipercent(), 5000);
    }
}

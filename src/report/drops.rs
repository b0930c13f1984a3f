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
    let sets: Vec<Vec<&Id>> = sharing
        .together
        .iter()
        .map(|set| set.iter().filter(|id| running.contains_key(id)).collect())
        .collect();
    units
        .iter()
        .filter_map(|unit| {
            let own = *running.get(&unit.id)?;
            let loads_of =
                |set: &[&Id]| -> Vec<Running> { set.iter().map(|id| running[*id]).collect() };
            let nominal = |set: &Vec<&Id>| supply.nominal_drop(own.at, &loads_of(set));
            let worst = sets
                .iter()
                .filter(|set| sharing.families_complete && set.contains(&&unit.id))
                .max_by_key(|set| nominal(set))
                .unwrap_or(&everything);
            let volts = supply.volts_at(own.at);
            // A line that cannot carry them at all loses everything.
            let lost_running = supply
                .settled_drop(own.at, &loads_of(worst))
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

/// A part of a voltage, rounded up.
fn percent(part: Voltage, whole: Voltage) -> Percent {
    let whole = i128::from(whole.millivolts().max(1));
    let up = i128::from(part.millivolts()) * 100_000;
    Percent::from_millipercent(narrow((up + whole - 1) / whole))
}

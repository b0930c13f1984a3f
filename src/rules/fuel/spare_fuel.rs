//! # FUEL003 spare-fuel
//!
//! ## What it checks
//! Whether a day of the plan burns more than one tank, so that spare fuel stands in the camp.
//!
//! ## Why it hurts
//! Vapor of gasoline creeps along the ground to the hot muffler, a lantern or a stove and lights
//! there. In a tent or a vehicle it also poisons. Propane that leaks is heavier than air and does the
//! same.
//!
//! ## The arithmetic
//! What burns in each minute of the day, added up, against one tank: see rule FUEL001. Loads without
//! hours that run for less than three hours at a stretch are counted for three, on their own.
//!
//! ## What to do
//! Keep spare gasoline in an approved can, closed, in the shade, away from the generator and from
//! anything that burns, never in a tent or where people sleep. Plan a break to refuel with the engine off
//! and cool. Spilled: move away from it, and let the vapor clear before anyone starts the engine.
//! Spare cylinders of propane stand upright outdoors. A smell of gas: close the valve, move away, and
//! let it clear.
//!
//! ## Sources
//! - FEMA, generator advice, 2020: off and cool before refuelling (from a secondary copy).
//! - New York State DHSES, generator fire hazards: approved containers, away from living areas and
//!   flames; vapors of a spill travel far (confirmed).
//! - Suppliers of propane, advice to customers: upright, outdoors, heavier than air (from a secondary
//!   copy).
//! - How far engines lie from a straight line, and that the vapor clears before a start, are common
//!   practice, no source.

use crate::plan::{Answer, Fuel};
use crate::quantity::Percent;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "FUEL003",
    name: "spare-fuel",
    area: "fuel",
    worst: Signal::Caution,
    text: include_str!("spare_fuel.rs"),
    sources: &[
        cite::FEMA_2020,
        cite::NY_DHSES,
        cite::PROPANE,
        cite::PRACTICE,
    ],
    fixes: &["store", "store-propane"],
    check,
    #[cfg(test)]
    // 24 h on a tank that lasts 14 h.
    fires: &[
        &[ALL_DAY],
        &[ALL_DAY, ("fuel = \"gasoline\"", "fuel = \"propane\"")],
        // However much it holds.
        &[ALL_DAY, ("tank = \"3 gal\"", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // The kettle takes 0:30 h, and 13:30 h of 14 h are not the whole rest.
        &[(HOURS, "hours = [\"18:00-07:00\"]")],
    ],
};

#[cfg(test)]
const HOURS: &str = "hours = [\"18:00-23:00\"]";
#[cfg(test)]
const ALL_DAY: (&str, &str) = (HOURS, "hours = [\"00:00-24:00\"]");

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let energy = &facts.figures.energy;
    let Some(tanks) = energy.tanks_per_day else {
        return;
    };
    if tanks > Percent::from_millipercent(100_000) {
        let fix = match facts.plan.generator.fuel {
            Answer::Known(Fuel::Propane) => "store-propane",
            _ => "store",
        };
        let shown = values([("burns", tanks.into())]);
        found.add(Signal::Caution, vec![], shown, fix, values([]));
    }
}

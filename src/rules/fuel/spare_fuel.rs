//! # FUEL003 spare-fuel
//!
//! ## What it checks
//! Whether a day of the plan burns more than one tank, so that spare fuel stands in the camp.
//!
//! ## Why it hurts
//! Vapour of gasoline creeps along the ground to the hot muffler, a lantern or a stove and lights
//! there. In a tent or a vehicle it also poisons.
//!
//! ## The arithmetic
//! Fuel for the day against the tank. Fuel is tank over hours on one tank, times the hours anything
//! runs. Hours on one tank come from the published ones: between two of them the fuel burnt in an
//! hour is taken for a straight line in the load. With the usual two points, at a quarter and at
//! full load, engines burn up to about a tenth more or less than that in between (common practice);
//! below the least published load no longer time is promised.
//!
//! ## What to do
//! Keep spare fuel in an approved can, closed, in the shade, away from the set and from anything that
//! burns, never in a tent or where people sleep. Plan a break to refuel with the engine off and
//! cool.
//!
//! ## Sources
//! - FEMA, generator advice, 2020: off and cool before refuelling (from a secondary copy).
//! - How far engines lie from a straight line is common practice, no source.

use crate::quantity::Volume;
use crate::rules::demand::quantity;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "FUEL003",
    name: "spare-fuel",
    area: "fuel",
    worst: Signal::Caution,
    text: include_str!("spare_fuel.rs"),
    sources: &[cite::FEMA_2020, cite::PRACTICE],
    fixes: &["store"],
    check,
    #[cfg(test)]
    // 24 h on a tank that lasts 14 h.
    fires: &[&[("hours = [\"18:00-23:00\"]", "hours = [\"00:00-24:00\"]")]],
    #[cfg(test)]
    spares: &[&[]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let (Some(day), Some(tank)) = (
        &facts.figures.energy.fuel_per_day,
        facts.plan.generator.tank.known(),
    ) else {
        return;
    };
    let day: Volume = quantity(day);
    if day > *tank {
        found.add(
            Signal::Caution,
            vec![],
            values([("day", day.into()), ("tank", (*tank).into())]),
            "store",
            values([]),
        );
    }
}

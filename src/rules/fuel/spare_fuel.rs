#![doc = include_str!("../../../i18n/en/explain/FUEL003.md")]

use crate::plan::{Answer, Fuel};
use crate::quantity::Percent;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "FUEL003",
    name: "spare-fuel",
    area: "fuel",
    worst: Signal::Caution,
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
        // 13 h on a tank that lasts 14 h, half an hour of it with the kettle.
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

//! # FUEL001 refuelling
//!
//! ## What it checks
//! Whether something is meant to run for longer at a stretch than one tank lasts.
//!
//! ## Why it hurts
//! The set runs dry or has to be refuelled in the middle, often at night. Fuel spilled on a hot
//! engine catches fire at once and burns whoever pours it.
//!
//! ## The arithmetic
//! The hours of all loads are joined, and the longest unbroken stretch is set against the hours per
//! tank at the mean demand while anything runs. A medical load without hours counts all day; other
//! loads without hours can wait while you refuel. Hours per tank are interpolated between
//! published points, so take them as a rough figure. Where no running time is known, 3 h are taken,
//! what small sets last at full load (common practice), and the finding says so.
//!
//! ## What to do
//! Plan a pause. What somebody's health depends on needs a battery made for it, or the supplier's
//! reserve, for as long: with neither nobody relies on the set for it. Turn everything off, stop the engine, and let it cool for 20 minutes before
//! you open the tank. Refuel in daylight, away from flames, and not in rain. Keep spare fuel in a
//! proper can, well away from the set and the tents.
//!
//! ## Sources
//! - FEMA, generator advice, 2020: off and cool for 15 to 20 minutes before refuelling, not in rain
//!   (from a secondary copy).
//! - 3 h on a tank that nobody knows is common practice, no source.

use crate::plan::{Id, LoadKind, Plan, Span};
use crate::quantity::Hours;
use crate::rules::demand::quantity;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "FUEL001",
    name: "refuelling",
    area: "fuel",
    worst: Signal::Caution,
    text: include_str!("refuelling.rs"),
    sources: &[cite::FEMA_2020, cite::PRACTICE],
    fixes: &["pause", "find-out", "life-pause", "life-find-out"],
    check,
    #[cfg(test)]
    fires: &[
        &[
            ("running = \"50 W\"", "running = \"1800 W\""),
            ("hours = [\"18:00-23:00\"]", "hours = [\"00:00-24:00\"]"),
        ],
        &[(RUNTIME, "")],
        // A breathing aid without hours runs all day.
        &[LIFE, ("hours = [\"18:00-23:00\"]", "")],
        &[LIFE, (RUNTIME, "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            (RUNTIME, ""),
            ("hours = [\"18:00-23:00\"]", "hours = [\"18:00-21:00\"]"),
        ],
    ],
};

#[cfg(test)]
const LIFE: (&str, &str) = ("kind = \"electronic\" # fan", "kind = \"medical\"");

/// The running times of the example plan.
#[cfg(test)]
const RUNTIME: &str =
    "runtime = [ { load = \"25 %\", lasts = \"14 h\" }, { load = \"100 %\", lasts = \"5 h\" } ]";

/// A tank of which nobody knows how long it lasts (common practice, no source): that of a small set at
/// full load.
pub(in crate::rules) const UNKNOWN_TANK: Hours = Hours::from_millihours(3_000);

/// The longest unbroken run of minutes, round the clock, in which any of the spans is on.
fn longest(spans: &[Span]) -> usize {
    const DAY: usize = Span::DAY as usize;
    // Each span marks its own minutes: many spans cost no more than their lengths.
    let mut on = [false; DAY];
    for span in spans {
        for minute in 0..usize::from(span.minutes()) {
            on[(usize::from(span.from) + minute) % DAY] = true;
        }
    }
    let mut longest = 0;
    let mut run = 0;
    // Twice round, so that a stretch over midnight is seen whole.
    for on in on.iter().chain(&on) {
        run = if *on { run + 1 } else { 0 };
        longest = longest.max(run);
    }
    longest.min(DAY)
}

/// How long something is to run without a break.
pub(in crate::rules) fn stretch(plan: &Plan) -> Hours {
    let whole_day = [Span {
        from: 0,
        to: Span::DAY,
    }];
    let spans: Vec<Span> = plan
        .loads
        .iter()
        .flat_map(|load| {
            if load.hours.is_empty() && load.may_be(LoadKind::Medical) {
                &whole_day[..]
            } else {
                &load.hours
            }
        })
        .copied()
        .collect();
    let minutes = i64::try_from(longest(&spans)).unwrap_or(i64::MAX);
    // Up: a demand.
    Hours::from_millihours((minutes * 1000 + 59) / 60)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let energy = &facts.figures.energy;
    if energy.watt_hours_per_day.is_none() {
        // Nothing runs.
        return;
    }
    let (tank, fix) = match &energy.hours_per_tank {
        Some(tank) => (quantity(tank), "pause"),
        None => (UNKNOWN_TANK, "find-out"),
    };
    let stretch = stretch(facts.plan);
    if stretch > tank {
        let loads = facts.plan.loads.iter();
        let life: Vec<Id> = loads
            .filter(|load| load.may_be(LoadKind::Medical))
            .map(|load| load.id.clone())
            .collect();
        let fix = match (fix, life.is_empty()) {
            (fix, true) => fix,
            ("pause", false) => "life-pause",
            (_, false) => "life-find-out",
        };
        found.add(
            Signal::Caution,
            life.clone(),
            values([("stretch", stretch.into()), ("tank", tank.into())]),
            fix,
            values([("life", Value::Parts(life))]),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stretch_passes_midnight() {
        let span = |from: u16, to: u16| Span {
            from: from * 60,
            to: to * 60,
        };
        assert_eq!(longest(&[]), 0);
        assert_eq!(longest(&[span(22, 6), span(5, 7), span(12, 13)]), 9 * 60);
        assert_eq!(longest(&[span(0, 24)]), 24 * 60);
    }
}

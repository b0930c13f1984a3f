//! # POWER002 peak-exceeded
//!
//! ## What it checks
//! Whether the moment of starting asks for more than the generator's peak. Motors, compressors and
//! some chargers draw several times their running power for a moment when they start.
//!
//! ## Why it hurts
//! The engine bogs down and the voltage drops for everything else. The set may trip or stall,
//! taking lamps and anything medical with it; a motor that cannot start sits there and overheats.
//!
//! ## The arithmetic
//! For the minute of greatest demand: the running watts of everything that is on, plus the largest
//! step from running to starting among them, against the peak watts after derating (the rated
//! watts where no peak is known). If that is too much, the same loads are switched on one by one,
//! largest step first, each step's sum against the peak: no other order does better. If this
//! order holds, the remedy is the order; if one load is too much even alone, no order helps. What
//! cannot even run together is rule POWER001's.
//! What a starting motor draws is its own figure where given, else the locked-rotor figure by its
//! code letter or six times its running current.
//!
//! ## What to do
//! Switch on one thing at a time, the largest starter first, and wait for it to settle. Leave at
//! home what the set cannot start even alone.
//!
//! ## Sources
//! - NFPA 70 (NEC), 430.251(A): locked rotor at six times full load (confirmed).
//! - Starting the largest first is arithmetic and common practice, no source.

use crate::plan::Id;
use crate::quantity::Power;
use crate::rules::demand::{Need, busiest, clock, quantity};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "POWER002",
    name: "peak-exceeded",
    area: "power",
    text: include_str!("peak_exceeded.rs"),
    sources: &[cite::NEC_430_251, cite::PRACTICE],
    fixes: &["alone", "order", "fewer"],
    check,
    #[cfg(test)]
    fires: &[
        &[("power_factor = 1.0", "starting = \"4501 W\"")],
        &[("power_factor = 1.0", "starting = \"4500 W\"")],
        // Two starters, each well alone, but not the second beside the first in either order.
        &[
            ("running = \"1500 W\"", "running = \"2000 W\""),
            ("power_factor = 1.0", "starting = \"4000 W\""),
            ("running = \"50 W\"", "running = \"1500 W\"\nstarting = \"3500 W\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        // 4450 W + 50 W is exactly the peak.
        &[("power_factor = 1.0", "starting = \"4450 W\"")],
    ],
};

fn step(need: &Need<'_>) -> Power {
    need.starting() - need.running()
}

/// Whether starting in this order never passes the peak.
fn holds(order: &[Need<'_>], peak: Power) -> bool {
    let mut running = Power::ZERO;
    order.iter().all(|need| {
        let fits = running + need.starting() <= peak;
        running = running + need.running();
        fits
    })
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let needs = facts.needs();
    let peak: Power = quantity(&facts.figures.usable.peak_watts);
    // At whatever hour: these cannot be started at all, and leave nothing to say about an order.
    let mut alone: Vec<&Need<'_>> = needs.iter().filter(|need| need.starting() > peak).collect();
    alone.sort_by_key(|need| std::cmp::Reverse(need.starting()));
    if let Some(largest) = alone.first() {
        let demand = largest.starting();
        let mut about: Vec<Id> = Vec::new();
        for need in &alone {
            if !about.contains(&need.load.id) {
                about.push(need.load.id.clone());
            }
        }
        found.add(
            Signal::Caution,
            about,
            values([
                ("demand", demand.into()),
                ("limit", peak.into()),
                ("over", (demand - peak).into()),
            ]),
            "alone",
            values([]),
        );
        return;
    }
    let rated: Power = quantity(&facts.figures.usable.rated_watts);
    let worst = |on: &[Need<'_>]| {
        on.iter().map(Need::running).sum::<Power>()
            + on.iter().map(step).max().unwrap_or(Power::ZERO)
    };
    let busiest = busiest(&needs, worst);
    let demand = worst(&busiest.on);
    let mut order = busiest.on.clone();
    order.sort_by_key(|need| std::cmp::Reverse(step(need)));
    let Some(largest) = order.first() else {
        return;
    };
    // Too much running is another rule's finding; this one is about starting.
    if demand <= peak || step(largest) == Power::ZERO {
        return;
    }
    let (signal, fix) = if busiest.running() > rated {
        // They cannot even run together: rule POWER001 says so, and the order is no help.
        return;
    } else if holds(&order, peak) {
        (Signal::Notice, "order")
    } else {
        (Signal::Caution, "fewer")
    };
    let mut about = Vec::new();
    for need in &order {
        if !about.contains(&need.load.id) {
            about.push(need.load.id.clone());
        }
    }
    found.add(
        signal,
        about,
        values([
            ("demand", demand.into()),
            ("limit", peak.into()),
            ("over", (demand - peak).into()),
            ("time", clock(busiest.minute)),
        ]),
        fix,
        values([]),
    );
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::findings;

    /// NEC 430.251(A): a ½ hp motor at 115 V has 58.8 A locked rotor, six times its 9.8 A. At the
    /// 120 V that are reckoned with here that is 7056 W, more than the 4500 W of the set.
    #[test]
    fn a_motor_starts_at_six_times_its_running_current() {
        let motor = [
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("running = \"1500 W\"\npower_factor = 1.0", "motor = { hp = \"1/2\" }"),
        ];
        let found = findings(&motor);
        let peak = found.iter().find(|it| it.code == "POWER002");
        let demand = peak.and_then(|it| it.values.get("demand"));
        assert_eq!(
            demand,
            Some(&crate::quantity::Power::from_milliwatts(7_056_000).into())
        );
    }
}

//! # POWER001 rated-power-exceeded
//!
//! ## What it checks
//! Whether the loads that are on at the same time ask for more than the generator can keep up.
//! A load with hours counts in its hours. A load that must run and has no hours counts all day.
//! A wish without hours can wait its turn and does not count.
//!
//! ## Why it hurts
//! An overloaded set runs hot, its voltage sags, and it trips or stalls, often at the worst
//! moment. Heat and low voltage ruin windings, motors and chargers, and can start a fire.
//!
//! ## The arithmetic
//! For each minute at which some hours begin: add the running watts of everything that is on, and
//! compare the sum with the rated ("running") watts after derating for altitude and hot air
//! (Army manual: less 1.3 % of rated for each 100 m above 1219 m, less 3 % for each 10 °C above
//! 35 °C; the trade's rule of thumb where it is more cautious). Then the same with amperes on
//! each leg against the leg's share, because a low power factor or one busy leg can use a set up
//! while its watts still look fine. What is too much for a leg by itself is told alone. The peak figure on the box is for a few seconds and is not
//! used here.
//!
//! ## What to do
//! Run things in turns: give each its hours, largest first, or leave one at home. Heat for cooking
//! is usually the largest: use one heating thing at a time.
//!
//! ## Sources
//! - US Army TM 9-6115-673-13&P, Table 2-3: derating by altitude and air (confirmed).
//! - The sum of the loads against the rated power is arithmetic: common practice, no source.

use crate::plan::Id;
use crate::quantity::{Current, Power};
use crate::rules::demand::{Need, busiest, clock, quantity};
use crate::rules::prelude::*;
use crate::supply::Legs;

pub(super) const RULE: Rule = Rule {
    code: "POWER001",
    name: "rated-power-exceeded",
    area: "power",
    worst: Signal::Warning,
    text: include_str!("rated_power_exceeded.rs"),
    sources: &[cite::ARMY_TM, cite::PRACTICE],
    fixes: &["turns", "hours", "leg", "leg-alone", "amps"],
    check,
    #[cfg(test)]
    fires: &[
        &[("running = \"1500 W\"", "running = \"3600 W\"")],
        // Nobody said when.
        &[
            ("running = \"1500 W\"", "running = \"3600 W\""),
            ("hours = [\"18:00-23:00\"]", ""),
            ("hours = [\"18:30-19:00\"]", ""),
        ],
        // 1800 VA for 900 W on the set's 30 A.
        &[
            ("running = \"1500 W\"", "running = \"1900 W\""),
            ("power_factor = 1.0", "power_factor = 0.5"),
        ],
        // 16.7 A on a leg of 15 A, and then 12.5 A and 3.3 A.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("running = \"1500 W\"", "running = \"2000 W\""),
        ],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("running = \"50 W\"", "running = \"400 W\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        // 3550 W + 50 W is exactly rated.
        &[("running = \"1500 W\"", "running = \"3550 W\"")],
        // More than rated in all, at different hours.
        &[
            ("running = \"1500 W\"", "running = \"3550 W\""),
            ("running = \"50 W\"", "running = \"500 W\""),
            ("hours = [\"18:00-23:00\"]", "hours = [\"20:00-23:00\"]"),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let needs = facts.needs();
    let rated: Power = quantity(&facts.figures.usable.rated_watts);
    let busiest_hour = busiest(&needs, |on| {
        on.iter().map(Need::running).sum::<Power>()
    });
    let demand = busiest_hour.running();
    if demand > rated {
        found.add(
            Signal::Warning,
            busiest_hour.ids(),
            values([
                ("demand", demand.into()),
                ("limit", rated.into()),
                ("over", (demand - rated).into()),
                ("time", clock(busiest_hour.minute)),
            ]),
            if busiest_hour.on.iter().all(Need::any_time) {
                "hours"
            } else {
                "turns"
            },
            values([]),
        );
        return;
    }
    let fullest = busiest(&needs, |on| facts.worst_leg(on));
    let demand: Current = facts.worst_leg(&fullest.on);
    let limit = facts.supply.leg_rated;
    // Each current was rounded up by less than a milliampere; that alone is no overload.
    let rounding = Current::from_milliamps(i64::try_from(fullest.on.len()).unwrap_or(0));
    if demand > limit + rounding {
        let two_legs = facts.supply.nodes[0].legs == Legs::Both;
        // What is too much for a leg by itself is as much on the other.
        let alone: Vec<&Need<'_>> = fullest
            .on
            .iter()
            .filter(|need| two_legs && need.amps() > limit)
            .collect();
        if let Some(most) = alone.iter().map(|need| need.amps()).max() {
            let mut about: Vec<Id> = alone.iter().map(|need| need.load.id.clone()).collect();
            about.dedup();
            found.add(
                Signal::Warning,
                about,
                values([
                    ("demand", most.into()),
                    ("limit", limit.into()),
                    ("over", (most - limit).into()),
                    ("time", clock(fullest.minute)),
                ]),
                "leg-alone",
                values([]),
            );
            return;
        }
        found.add(
            Signal::Warning,
            fullest.ids(),
            values([
                ("demand", demand.into()),
                ("limit", limit.into()),
                ("over", (demand - limit).into()),
                ("time", clock(fullest.minute)),
            ]),
            if two_legs {
                "leg"
            } else {
                "amps"
            },
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::{codes, findings};

    /// A 3600 W set of two legs gives 15 A on each. 2000 W at 120 V are 16.7 A, too much for either;
    /// 12.5 A and 3.3 A are too much for one and not for two.
    #[test]
    fn a_move_is_advised_only_where_it_helps() {
        let two_legs = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
        for (edit, fix, about) in [
            (("running = \"1500 W\"", "running = \"2000 W\""), "leg-alone", vec!["kettle"]),
            (("running = \"50 W\"", "running = \"400 W\""), "leg", vec!["kettle", "fan"]),
        ] {
            let found = findings(&[two_legs, edit]);
            let found = found.iter().find(|it| it.code == "POWER001").expect("found");
            let ids: Vec<_> = found.about.iter().map(crate::plan::Id::as_str).collect();
            assert_eq!((found.fix.key, ids), (fix, about));
        }
    }

    #[test]
    fn a_wish_without_hours_waits_its_turn() {
        let heavy = ("running = \"1500 W\"", "running = \"3600 W\"");
        let no_hours = ("hours = [\"18:00-23:00\"]", "");
        assert!(codes(&[heavy, no_hours]).contains(&"POWER001"));
        assert!(
            !codes(&[heavy, no_hours, ("wanted = \"must\" # fan", "wanted = \"wish\"")])
                .contains(&"POWER001")
        );
    }
}

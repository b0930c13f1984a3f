#![doc = include_str!("../../../i18n/en/explain/OVER003.md")]

use crate::rules::prelude::*;
use crate::supply::LimitReason;
use crate::verdict::Overcurrent;

pub(super) const RULE: Rule = Rule {
    code: "OVER003",
    name: "cord-limits-load",
    area: "overcurrent",
    worst: Signal::Notice,
    sources: &[cite::NEC_240_5_B3, cite::NEC_240_5_B4, cite::UL_817, cite::NEC_400_5, cite::BS_7671],
    fixes: &["add-up"],
    check,
    #[cfg(test)]
    // 12.5 A and 0.8 A at different hours, on 13 A.
    fires: &[&[
        ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
        ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
        ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
        ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"long\"\ninlet = \"5-20P\""),
        ("running = \"50 W\"", "running = \"100 W\""),
        ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-23:00\"]"),
    ]],
    #[cfg(test)]
    spares: &[
        &[],
        // 12.5 A and 0.4 A on 13 A.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"long\"\ninlet = \"5-20P\""),
        ],
        // 12 AWG carries what the breaker lets through.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"12 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"long\"\ninlet = \"5-20P\""),
            ("running = \"50 W\"", "running = \"1000 W\""),
            ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-21:00\"]"),
        ],
        // Behind 30 A it is a danger, which another rule reports.
        &[("wire = \"10 AWG\"", "wire = \"14 AWG\"")],
        // The generator gives 12.5 A, and 16.7 A for a moment; 16 AWG carries 13 A.
        &[
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1500 W\""),
            ("peak = \"4500 W\"", "peak = \"2000 W\""),
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"long\"\ninlet = \"5-20P\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    // A coil is another rule's finding, with another remedy.
    for (at, node) in facts.supply.cords().filter(|(_, node)| node.reason != LimitReason::CoiledCord) {
        let beyond = facts.through(&facts.needs(), at);
        if facts.worst_leg(&beyond) <= node.rating {
            continue;
        }
        if let Overcurrent::Allowed { breaker, .. } = Overcurrent::of(facts.plan, facts.supply, at) {
            found.add(
                Signal::Notice,
                vec![node.id.clone()],
                values([("limit", node.rating.into()), ("breaker", breaker.into())]),
                "add-up",
                values([]),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::quantity::Current;
    use crate::report::{Signal, Value};
    use crate::rules::testing::findings;

    /// UL 817 as quoted by a cord supplier and a forum (secondary): 16 AWG 13 A up to 50 ft and 10 A beyond, 14 AWG 15
    /// and 13 A. A 15 A breaker lets more through. A cord of unknown length counts as long.
    #[test]
    fn a_long_thin_cord_carries_less_than_its_wire() {
        for (wire, length, breaker, limit) in [
            ("16 AWG", "\"50 ft\"", "15 A", Some(13_000)),
            ("16 AWG", "\"51 ft\"", "15 A", Some(10_000)),
            ("14 AWG", "\"50 ft\"", "15 A", None),
            ("14 AWG", "\"100 ft\"", "15 A", Some(13_000)),
            ("14 AWG", "\"unknown\"", "15 A", Some(13_000)),
            ("12 AWG", "\"100 ft\"", "15 A", None),
            ("12 AWG", "\"100 ft\"", "20 A", Some(15_000)),
            ("12 AWG", "\"50 ft\"", "20 A", None),
            ("10 AWG", "\"100 ft\"", "20 A", None),
        ] {
            let (wire, length) = (format!("wire = \"{wire}\""), format!("length = {length} # long"));
            let before = format!("breaker = \"{breaker}\"");
            let found = findings(&[
                (
                    "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                    "from = \"front\"\nplug = \"5-20P\"\nends = [\"5-20R\"]",
                ),
                ("from = \"long\"\ninlet", "inlet"),
                ("breaker = \"20 A\" # front", before.as_str()),
                ("wire = \"10 AWG\" # long", wire.as_str()),
                ("length = \"50 ft\" # long", length.as_str()),
                ("on = \"left\" # kettle", "on = \"front\""),
                ("on = \"right\" # fan", "on = \"long\""),
                ("running = \"50 W\"", "running = \"1000 W\"\ncount = 2"),
                ("hours = [\"18:00-23:00\"]", ""),
            ]);
            let found: Vec<_> = found.iter().filter(|found| found.code == "OVER003").collect();
            assert!(found.iter().all(|found| found.signal == Signal::Notice));
            let limits: Vec<Value> = found.iter().map(|found| found.values["limit"].clone()).collect();
            let expected: Vec<Value> = limit.into_iter().map(|limit| Current::from_milliamps(limit).into()).collect();
            assert_eq!(limits, expected, "{wire} {length} {breaker}");
        }
    }
}

#![doc = include_str!("../../../i18n/en/explain/POWER009.md")]

use crate::loads::exceeds_its_plug;
use crate::plan::{Answer, Draw};
use crate::quantity::Current;
use crate::rules::demand::once;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "POWER009",
    name: "plug-too-small",
    area: "power",
    worst: Signal::Warning,
    sources: &[cite::WD_6, cite::NEC_430_248, cite::PRACTICE],
    fixes: &["plate", "motor"],
    check,
    #[cfg(test)]
    fires: &[
        // 2000 W at 125 V are 16 A.
        &[("running = \"1500 W\"", "running = \"2000 W\"")],
        &[("running = \"1500 W\"\npower_factor = 1.0", "current = \"15.1 A\"")],
        // 1500 W at 0.7 and 125 V are 17.1 A.
        &[("power_factor = 1.0", "power_factor = 0.7")],
        // 3 hp are at least 2235 W, 17.9 A.
        &[
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("running = \"1500 W\"\npower_factor = 1.0", "motor = { hp = \"3\" }"),
        ],
        // 1 hp is 16 A by the table of NEC 430.248, and may be less by its nameplate.
        &[
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("running = \"1500 W\"\npower_factor = 1.0", "motor = { hp = \"1\" }"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // 15 A at 125 V.
        &[("running = \"1500 W\"", "running = \"1875 W\"")],
        &[("running = \"1500 W\"\npower_factor = 1.0", "current = \"15 A\"")],
        // An unknown power factor may be 1.
        &[("kind = \"heater\" # kettle", "kind = \"electronic\""), ("power_factor = 1.0", "")],
        // 3/4 hp is 13.8 A by that table.
        &[
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("running = \"1500 W\"\npower_factor = 1.0", "motor = { hp = \"3/4\" }"),
        ],
        // A larger plug.
        &[
            ("running = \"1500 W\"", "running = \"2000 W\""),
            ("plug = \"5-15P\" # kettle", "plug = \"5-20P\""),
            ("on = \"left\" # kettle", "on = \"front\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    for load in &facts.plan.loads {
        let Some(plug) = load.plug.known() else {
            continue;
        };
        let demand = facts.figures.units(&load.id).next().map_or(Current::ZERO, |it| it.running_amps);
        let motor = matches!(load.running, Answer::Known(Draw::Motor { .. }));
        let (signal, fix) = if exceeds_its_plug(load) {
            (Signal::Warning, "plate")
        } else if motor && demand > plug.0.rating() {
            (Signal::Caution, "motor")
        } else {
            continue;
        };
        found.add(
            signal,
            once([&load.id]),
            values([
                ("demand", demand.into()),
                ("limit", plug.0.rating().into()),
                ("plug", Value::Name(plug.to_string())),
            ]),
            fix,
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use crate::report::{Signal, Value};
    use crate::rules::testing::{findings, signals};

    /// 2000 W at 120 V are 16.667 A, through a 15 A plug (NEMA WD 6, from memory).
    #[test]
    fn the_amps_and_the_plug_are_told() {
        let found = findings(&[("running = \"1500 W\"", "running = \"2000 W\"")]);
        let found = found.iter().find(|it| it.code == "POWER009").expect("found");
        let amps = |milliamps| Value::from(crate::quantity::Current::from_milliamps(milliamps));
        assert_eq!(found.values["demand"], amps(16_667));
        assert_eq!(found.values["limit"], amps(15_000));
        assert_eq!(found.about[0].as_str(), "kettle");
    }

    /// By table 430.248 of the NEC (secondary), 1 1/2 hp takes 20 A at 115 V and 10 A at 230 V, and 3/4 hp takes 13.8 A
    /// at 115 V. 3 hp takes at least 17.9 A.
    #[test]
    fn the_horsepower_of_a_motor_may_be_too_much_for_its_plug() {
        let with = |hp: &str, plug: &str| {
            let (motor, plug) = (format!("motor = {{ hp = \"{hp}\" }}"), format!("plug = \"{plug}\""));
            signals(
                "POWER009",
                &[
                    ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                    ("kind = \"heater\" # kettle", "kind = \"motor\""),
                    ("running = \"1500 W\"\npower_factor = 1.0", motor.as_str()),
                    ("plug = \"5-15P\" # kettle", plug.as_str()),
                    ("on = \"left\" # kettle", ""),
                ],
            )
        };
        assert_eq!(with("1 1/2", "5-15P"), [Signal::Caution]);
        assert_eq!(with("1 1/2", "5-20P"), []);
        assert_eq!(with("1 1/2", "6-20P"), []);
        assert_eq!(with("3/4", "5-15P"), []);
        assert_eq!(with("3", "5-15P"), [Signal::Warning]);
    }

    /// 7680 W at 240 V alone are 32 A on each leg, more than an L14-30P is rated for, and still 30.72 A at its rated
    /// 250 V. A 14-50P carries them. At 250 V, 30 A are 7500 W.
    #[test]
    fn a_plug_with_two_legs_carries_its_amps_on_each() {
        let with = |plug: &str, watts: &str| {
            let plug = format!("plug = \"{plug}\"");
            let watts = format!("running = \"{watts}\"");
            signals(
                "POWER009",
                &[
                    ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                    ("plug = \"5-15P\" # kettle", plug.as_str()),
                    ("running = \"1500 W\"", watts.as_str()),
                    ("on = \"left\" # kettle", ""),
                ],
            )
        };
        assert_eq!(with("L14-30P", "7680 W"), [Signal::Warning]);
        assert_eq!(with("L14-30P", "7500 W"), []);
        assert_eq!(with("14-50P", "7680 W"), []);
        assert_eq!(with("6-20P", "5001 W"), [Signal::Warning]);
        assert_eq!(with("6-20P", "5000 W"), []);
    }
}

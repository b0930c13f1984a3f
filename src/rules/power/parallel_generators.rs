#![doc = include_str!("../../../i18n/en/explain/POWER008.md")]

use crate::plan::Answer;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "POWER008",
    name: "parallel-generators",
    area: "power",
    worst: Signal::Danger,
    sources: &[cite::PRACTICE],
    fixes: &["apart", "look", "sum"],
    check,
    #[cfg(test)]
    fires: &[
        // Sets that do not synchronize.
        &[("inverter = false", "inverter = false\nparallel = { sets = 2, limit = \"30 A\", kit = true }")],
        &[("inverter = false", "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = false }")],
        &[("inverter = false", "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = \"unknown\" }")],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("inverter = false", "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = true }"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("inverter = false", "inverter = true")],
        // Each set has a bond: there is no sum, and rule SHOCK004 keeps them apart.
        &[("inverter = false", "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = true }")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let set = &facts.plan.generator;
    let Some(may_join) = set.may_join() else {
        return;
    };
    let (signal, fix) = match may_join {
        Answer::Known(false) => (Signal::Danger, "apart"),
        // Sets with a bond each have no sum: SHOCK004 keeps them apart.
        Answer::Known(true) if set.run_as_one() != Some(may_join) => return,
        Answer::Known(true) => (Signal::Notice, "sum"),
        Answer::Missing | Answer::Unknown => (Signal::Danger, "look"),
    };
    found.add(
        signal,
        vec![],
        values([
            ("sets", Value::Count(usize::try_from(set.sets()).unwrap_or(1))),
            ("rated", facts.supply.rated.into()),
            ("leg", facts.supply.leg_rated.into()),
        ]),
        fix,
        values([]),
    );
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::{report, signals};

    const FLOATING: crate::rules::Edit = ("neutral = \"bonded\"", "neutral = \"floating\"");

    fn joined(limit: &str) -> String {
        format!("inverter = true\nparallel = {{ sets = 2, {limit}kit = true }}")
    }

    /// By hand: two sets of 3600 W make 7200 W. A 30 A kit at 120 V passes 3600 W of that, a 50 A kit 6000 W; an
    /// unknown kit counts as one set.
    #[test]
    fn the_sum_is_no_more_than_the_kit_passes() {
        for (limit, watts) in [
            ("limit = \"30 A\", ", 3600),
            ("limit = \"50 A\", ", 6000),
            ("limit = \"80 A\", ", 7200),
            ("limit = \"unknown\", ", 3600),
            ("", 3600),
        ] {
            let text = joined(limit);
            let report = report(&[FLOATING, ("inverter = false", &text)]);
            let rated = report.figures.usable.rated_watts;
            assert_eq!(rated.milliwatts(), watts * 1000, "{limit}");
            let said = report.figures.assumed.iter().any(|it| it.why == "parallel-limit");
            assert_eq!(said, !limit.contains('A'), "{limit}");
        }
    }

    /// Without the kit the sets run separately, and an outlet has the power of one.
    #[test]
    fn what_may_not_be_joined_has_the_power_of_one() {
        let rated = |kit: &str| {
            let text = format!("inverter = true\nparallel = {{ sets = 2, limit = \"80 A\", kit = {kit} }}");
            report(&[FLOATING, ("inverter = false", &text)]).figures.usable.rated_watts.milliwatts()
        };
        assert_eq!(rated("false"), 3_600_000);
        // Unknown counts as separate.
        assert_eq!(rated("\"unknown\""), 3_600_000);
        assert_eq!(rated("true"), 7_200_000);
        // Each set has a bond.
        let bonded = joined("limit = \"80 A\", ");
        let bonded = report(&[("inverter = false", &bonded)]);
        assert_eq!(bonded.figures.usable.rated_watts.milliwatts(), 3_600_000);
    }

    /// Twice the tanks at half the load each never burn less fuel than one set.
    #[test]
    fn each_has_a_tank_of_its_own() {
        let fuel = |edits: &[(&str, &str)]| -> i64 {
            report(edits).figures.energy.fuel_per_day.expect("a figure").millilitres()
        };
        let text = joined("limit = \"80 A\", ");
        assert!(fuel(&[FLOATING, ("inverter = false", &text)]) > fuel(&[FLOATING]));
    }

    #[test]
    fn what_nobody_knows_of_it_is_a_danger() {
        for unknown in ["inverter = \"unknown\"", ""] {
            let text = format!("{unknown}\nparallel = {{ sets = 2, limit = \"30 A\", kit = true }}");
            let found = signals("POWER008", &[("inverter = false", &text)]);
            assert_eq!(found, [Signal::Danger], "{unknown}");
        }
    }
}

#![doc = include_str!("../../../i18n/en/explain/CORD006.md")]

use super::cord_too_thin::{Asked, asked, stops_first};
use crate::rules::prelude::*;
use crate::supply::LimitReason;

pub(super) const RULE: Rule = Rule {
    code: "CORD006",
    name: "hot-cord",
    area: "cord",
    worst: Signal::Warning,
    sources: &[cite::NEC_310_15, cite::NEC_400_5],
    fixes: &["less", "unwind", "cooler"],
    check,
    #[cfg(test)]
    fires: &[
        // Air so hot that the cord carries nothing.
        &[("air = \"59 °F\"", "air = \"132 °F\"")],
        // 12.9 A through 14 AWG, which carries 18 A, and 10.44 A at 50 °C.
        &[("air = \"59 °F\"", "air = \"122 °F\""), ("wire = \"10 AWG\"", "wire = \"14 AWG\"")],
        // 9.6 A through a coil of 10 AWG, which carries 10 A in cool air, and at 40 °C a third of 24.6 A: 8.2 A.
        &[
            ("air = \"59 °F\"", "air = \"104 °F\""),
            ("coiled = false # long", "coiled = true"),
            ("running = \"1500 W\"", "running = \"1100 W\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // 7.9 A are less than that.
        &[
            ("air = \"59 °F\"", "air = \"104 °F\""),
            ("coiled = false # long", "coiled = true"),
            ("running = \"1500 W\"", "running = \"900 W\""),
        ],
        // At 45 °C it carries 12.78 A, and the fan is off.
        &[
            ("air = \"59 °F\"", "air = \"113 °F\""),
            ("wire = \"10 AWG\"", "wire = \"14 AWG\""),
            ("hours = [\"18:00-23:00\"]", "hours = [\"20:00-23:00\"]"),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let needs = facts.needs();
    for (ix, node) in facts.supply.cords().filter(|(_, node)| node.reason != LimitReason::NotFed) {
        if node.too_hot() {
            let air = values([("air", facts.supply.air.into())]);
            found.add(Signal::Warning, vec![node.id.clone()], air, "cooler", values([]));
            continue;
        }
        // Laid out first, and then as it lies. More than it carries that way in any air is for rule CORD001.
        let both = [(node.unwound, node.laid_out, "less"), (node.rating, node.when_cool, "unwind")];
        let asked = both.into_iter().find_map(|(hot, cool, fix)| {
            if hot >= cool || stops_first(facts, ix, hot) {
                return None;
            }
            let asked = asked(facts, &needs, ix, hot).filter(|asked| asked.demand <= cool)?;
            Some((hot, cool, fix, asked))
        });
        let Some((hot, cool, fix, Asked { demand, about })) = asked else {
            continue;
        };
        found.add(
            Signal::Warning,
            about,
            values([
                ("air", facts.supply.air.into()),
                ("limit", hot.into()),
                ("cool", cool.into()),
                ("demand", demand.into()),
            ]),
            fix,
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::report;

    /// Returns what is found of the cord in air at 60 °C (140 °F), where a cord carries nothing at all (NEC Table
    /// 310.15(B)(1)(1), column of 60 °C). Coiled, 10 AWG carries 10 A of its 30 A in cool air.
    fn coiled_in_60_degrees(kettle_on: &str) -> (Vec<(&'static str, &'static str)>, &'static str) {
        let on = format!("on = \"{kettle_on}\"");
        let report = report(&[
            ("air = \"59 °F\"", "air = \"60 °C\""),
            ("coiled = false # long", "coiled = true"),
            ("on = \"left\" # kettle", on.as_str()),
        ]);
        let of_cord = report.findings.iter().filter(|found| found.area == "cord");
        let limits = &report.figures.limits;
        let end = limits.iter().find(|limit| limit.id.as_str() == "long").expect("its end");
        (of_cord.map(|found| (found.code, found.fix.key)).collect(), end.set_by.reason.code())
    }

    /// In air this hot the cord must not be used even unwound: with 0.42 A planned on it, and with 12.9 A, which the
    /// coil could not carry in cool air either.
    #[test]
    fn what_the_heat_takes_no_unwinding_brings_back() {
        let (coil, heat) = (("CORD003", "unwind"), ("CORD006", "cooler"));
        let (found, reason) = coiled_in_60_degrees("front");
        assert_eq!((found, reason), (vec![coil, heat], "hot-cord"));
        let (found, _) = coiled_in_60_degrees("left");
        assert_eq!(found, [("CORD001", "unwind"), coil, heat]);
        let long = crate::plan::Id::new("long").expect("an id");
        let refused = |air| {
            let report = report(&[("air = \"59 °F\"", air)]);
            report.refused(&long).map(|why| why.code)
        };
        assert_eq!(refused("air = \"132 °F\""), Some("CORD006"));
        // 55 °C is the hottest air for which there is a factor.
        assert_eq!(refused("air = \"55 °C\""), None);
    }

    /// A coil and hot air use up the same temperature rise, so their factors multiply. By hand, for 12 AWG, 25 A (NEC
    /// Table 400.5(A)(1)), at 40 °C, 0.82: 25 / 3 x 0.82 = 6.83 A, laid out 20.5 A; at 30 °C coiled 8.33 A. The third
    /// is common practice, no source.
    #[test]
    fn a_coil_in_hot_air_has_both_factors() {
        for (air, coiled, milliamps, reason) in [
            ("104 °F", "true", 6_833, "coiled-cord"),
            ("86 °F", "true", 8_333, "coiled-cord"),
            ("104 °F", "false", 20_000, "breaker"),
            ("113 °F", "false", 17_750, "hot-cord"),
        ] {
            let (air, coiled) = (format!("air = \"{air}\""), format!("coiled = {coiled}"));
            let report = report(&[
                ("air = \"59 °F\"", air.as_str()),
                ("from = \"twist\"\nplug = \"L5-30P\" # long", "from = \"front\"\nplug = \"5-20P\""),
                ("wire = \"10 AWG\"", "wire = \"12 AWG\""),
                ("coiled = false", coiled.as_str()),
            ]);
            let limits = &report.figures.limits;
            let limit = limits.iter().find(|limit| limit.id.as_str() == "long").expect("its end");
            assert_eq!(limit.short_amps.milliamps(), milliamps, "{air}");
            assert_eq!(limit.set_by.reason.code(), reason, "{air}");
        }
    }

    /// NEC Table 310.15(B)(1)(1), column of 60 °C, applied to Table 400.5(A)(1): 14 AWG carries 18 A at 30 °C and 0.71
    /// of that at 45 °C (113 °F), 12.78 A. The label beyond the cord gives that figure and the reason.
    #[test]
    fn the_labels_beyond_a_cord_count_the_heat() {
        for (air, milliamps, reason) in [("86 °F", 18_000, "cord-ampacity"), ("113 °F", 12_780, "hot-cord")] {
            let air = format!("air = \"{air}\"");
            let report = report(&[
                ("air = \"59 °F\"", air.as_str()),
                ("wire = \"10 AWG\"", "wire = \"14 AWG\""),
                ("rated = \"3600 W\"", "rated = \"6000 W\""),
                ("peak = \"4500 W\"", "peak = \"7000 W\""),
            ]);
            let limit =
                report.figures.limits.iter().find(|limit| limit.id.as_str() == "long").expect("the cord has an end");
            assert_eq!(limit.short_amps.milliamps(), milliamps, "{air}");
            assert_eq!(limit.set_by.reason.code(), reason, "{air}");
        }
    }
}

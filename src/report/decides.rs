//! Which unknown, if somebody found it out, would change most.
//!
//! Each unknown is given its best answer in turn, all others staying as they were taken, and the
//! rules are asked again with everything plugged in where it is. What clears the most dangers
//! comes first, then the most warnings, then what raises the limits most.

use serde::Serialize;

use super::{Amount, Figures, Finding, Signal};
use crate::plan::{Answer, Draw, Fuel, Ground, Leg, Neutral, Outlet, Plan, Stands, System};
use crate::quantity::{Current, Length, Power, Ratio, Temperature, Wire};
use crate::rules::{Rule, quantity};
use crate::tables::shape::{Circuit, Configuration};

/// The unknown that decides most.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Decides {
    /// Its field, as in `assumed`.
    pub field: String,
    /// How many dangers a good answer clears.
    pub dangers: usize,
    /// How many warnings.
    pub warnings: usize,
    /// How much it raises the limits, all receptacles added up.
    pub amps: Amount,
}

/// At most so many unknowns are tried, the first ones: a plan with more than these is not told
/// by one line any more.
const MOST: usize = 24;

/// Rules that never find more than a caution. They are not asked again: only dangers and warnings
/// are counted, and some of these need figures that take long to work out.
const MINOR: [&str; 28] = [
    "AIR004", "CORD005", "FIT001", "FIT002", "FIT003", "FIT004", "FIT005", "FIT007", "FUEL001",
    "FUEL002", "FUEL003", "NOISE001", "NOISE002", "OVER002", "OVER003", "OVER004", "OVER005",
    "POWER002", "POWER003", "POWER004", "POWER005", "POWER006", "POWER007", "SHOCK002", "SHOCK007",
    "SHOCK008", "SHOCK009", "VOLT001",
];

/// Whether a rule is asked again.
pub(super) fn counts(rule: &Rule) -> bool {
    !MINOR.contains(&rule.code)
}

/// Dangers, warnings, and the sum of all limits.
#[derive(Clone, Copy)]
pub(super) struct Standing {
    dangers: usize,
    warnings: usize,
    limits: i64,
}

impl Standing {
    pub(super) fn of(figures: &Figures, findings: &[Finding]) -> Self {
        let count = |signal: Signal| {
            findings
                .iter()
                .filter(|finding| finding.signal == signal)
                .count()
        };
        let limits = figures
            .limits
            .iter()
            .map(|limit| quantity::<Current>(&limit.short_amps).milliamps())
            .sum();
        Self {
            dangers: count(Signal::Danger),
            warnings: count(Signal::Warning),
            limits,
        }
    }
}

/// Whether an answer to this field can change the supply. That of a load cannot, nor what is round
/// the set: then the supply and its limits serve again.
pub(super) fn changes_supply(field: &str) -> bool {
    const ROUND_THE_SET: [&str; 5] = [
        "site.ground",
        "site.sleepers_at",
        "site.co_alarm",
        "site.feeds_building",
        "site.stands",
    ];
    !field.starts_with("load.") && !ROUND_THE_SET.contains(&field)
}

/// Whether an answer to this field can change what a load draws.
pub(super) fn changes_loads(field: &str) -> bool {
    field.starts_with("load.") || field == "generator.voltage"
}

/// The unknown that decides most; `None` when none changes anything. `again` tells where the plan
/// stands with another answer to that field; it leaves the figures as they were.
#[must_use]
pub(super) fn most(
    plan: &Plan,
    figures: &mut Figures,
    findings: &[Finding],
    again: impl Fn(&Plan, &str, &mut Figures) -> Standing,
) -> Option<Decides> {
    let now = Standing::of(figures, findings);
    let fields: Vec<String> = figures
        .assumed
        .iter()
        .take(MOST)
        .map(|assumption| assumption.field.clone())
        .collect();
    let mut best: Option<((usize, usize, i64), String)> = None;
    for field in fields {
        let Some(answered) = answered(plan, &field) else {
            continue;
        };
        let then = again(&answered, &field, figures);
        let gain = (
            now.dangers.saturating_sub(then.dangers),
            now.warnings.saturating_sub(then.warnings),
            (then.limits - now.limits).max(0),
        );
        if gain > (0, 0, 0) && best.as_ref().is_none_or(|(most, _)| gain > *most) {
            best = Some((gain, field));
        }
    }
    best.map(|((dangers, warnings, limits), field)| Decides {
        field,
        dangers,
        warnings,
        amps: Current::from_milliamps(limits).into(),
    })
}

/// The plan with the best answer to one field; `None` for a field without an answer of its own.
fn answered(plan: &Plan, field: &str) -> Option<Plan> {
    let mut plan = plan.clone();
    let (path, name) = field.rsplit_once('.')?;
    let (table, id) = path.split_once('.').unwrap_or((path, ""));
    match table {
        "site" => answer_site(&mut plan, name)?,
        "generator" => match id.strip_prefix("outlet.") {
            Some(id) => answer_outlet(&mut plan.generator.outlets, id, name)?,
            None => answer_set(&mut plan, name)?,
        },
        "box" => {
            let (id, outlet) = id
                .split_once(".outlet.")
                .map_or((id, None), |(id, outlet)| (id, Some(outlet)));
            let holder = plan.boxes.iter_mut().find(|it| it.id.as_str() == id)?;
            match (outlet, name) {
                (Some(outlet), _) => answer_outlet(&mut holder.outlets, outlet, name)?,
                (None, "bond") => holder.bond = Answer::Known(false),
                (None, "listed") => holder.listed = Answer::Known(true),
                (None, _) => return None,
            }
        }
        "cord" => {
            let cord = plan.cords.iter_mut().find(|it| it.id.as_str() == id)?;
            match name {
                "wire" => cord.wire = Answer::Known(Wire::Awg(10)),
                "conductors" => cord.conductors = Answer::Known(conductors(cord.plug.0)),
                // 25 ft, the shortest that is commonly sold.
                "length" => cord.length = Answer::Known(Length::from_millimetres(7_620)),
                "outdoor" => cord.outdoor = Answer::Known(true),
                "coiled" => cord.coiled = Answer::Known(false),
                "gfci" => cord.gfci = Answer::Known(true),
                _ => return None,
            }
        }
        "load" => {
            let load = plan.loads.iter_mut().find(|it| it.id.as_str() == id)?;
            match name {
                "running" => {
                    load.running = Answer::Known(Draw::Power(Power::from_milliwatts(10_000)));
                }
                "power_factor" => load.power_factor = Answer::Known(Ratio::from_permille(1000)),
                // What it needs to start and how long it runs never set off more than a caution. A
                // battery that nobody told of is bought, not found out.
                _ => return None,
            }
        }
        _ => return None,
    }
    Some(plan)
}

fn answer_site(plan: &mut Plan, name: &str) -> Option<()> {
    let site = &mut plan.site;
    match name {
        "ground" => site.ground = Answer::Known(Ground::Dry),
        // 100 ft.
        "sleepers_at" => site.sleepers_at = Answer::Known(Length::from_millimetres(30_480)),
        "altitude" => site.altitude = Answer::Known(Length::ZERO),
        "air" => site.air = Answer::Known(Temperature::from_millicelsius(15_000)),
        "co_alarm" => site.co_alarm = Answer::Known(true),
        "feeds_building" => site.feeds_building = Answer::Known(false),
        "stands" => site.stands = Answer::Known(Stands::Roof),
        _ => return None,
    }
    Some(())
}

fn answer_set(plan: &mut Plan, name: &str) -> Option<()> {
    let set = &mut plan.generator;
    match name {
        // The largest that people carry about.
        "rated" => set.rated = Answer::Known(Power::from_milliwatts(9_000_000)),
        // More than any kit passes.
        "limit" => set.parallel.as_mut()?.limit = Answer::Known(Current::from_milliamps(50_000)),
        "rated_on" => set.rated_on = Answer::Known(Fuel::Propane),
        "peak" => {
            // As much again: few sets have more.
            let rated = set.rated.known()?.milliwatts();
            set.peak = Answer::Known(Power::from_milliwatts(rated.saturating_mul(2)));
        }
        "voltage" => set.voltage = Answer::Known(System::V120),
        "neutral" => set.neutral = Answer::Known(Neutral::Bonded),
        "bonding_plug" => set.bonding_plug = Answer::Known(false),
        _ => return None,
    }
    Some(())
}

fn answer_outlet(outlets: &mut [Outlet], id: &str, name: &str) -> Option<()> {
    let outlet = outlets.iter_mut().find(|it| it.id.as_str() == id)?;
    match name {
        "breaker" => outlet.breaker = Answer::Known(outlet.shape.0.rating()),
        "gfci" => outlet.gfci = Answer::Known(true),
        "leg" => outlet.leg = Answer::Known(Leg::B),
        "wire" => outlet.wire = Answer::Known(Wire::Awg(10)),
        _ => return None,
    }
    Some(())
}

/// As many as the shape has contacts.
const fn conductors(shape: Configuration) -> u8 {
    let live = match shape.circuit() {
        Circuit::OneLeg | Circuit::TwoLegs => 2,
        Circuit::TwoLegsNeutral => 3,
    };
    if shape.grounded() { live + 1 } else { live }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::plan::arbitrary;
    use crate::report::{Report, build, loads};
    use crate::rules::testing::report;
    use crate::rules::{self, Facts};
    use crate::supply::Supply;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        /// What is said to serve again is what would be built again.
        #[test]
        fn an_answer_changes_no_more_than_is_told(plan in arbitrary::camp()) {
            let supply = |plan: &Plan| format!("{:?}", Supply::build(plan));
            let units = |plan: &Plan| format!("{:?}", loads::units(plan).0);
            for assumption in build::judge(&plan).figures.assumed {
                let field = assumption.field.as_str();
                let Some(answered) = answered(&plan, field) else {
                    continue;
                };
                if !changes_supply(field) {
                    prop_assert_eq!(supply(&plan), supply(&answered), "{}", field);
                }
                if !changes_loads(field) {
                    prop_assert_eq!(units(&plan), units(&answered), "{}", field);
                }
            }
        }
    }

    /// The same without anything left out: the supply, what loads draw and every rule anew.
    fn plainly(plan: &Plan) -> Option<Decides> {
        let Report {
            findings,
            mut figures,
            ..
        } = build::judge(plan);
        most(plan, &mut figures, &findings, |answered, _, figures| {
            let supply = Supply::build(answered);
            let mut figures = figures.clone();
            figures.limits = build::limits(&supply);
            figures.loads = build::facts(answered, &loads::units(answered).0);
            let found = rules::check(&Facts {
                plan: answered,
                supply: &supply,
                figures: &figures,
            });
            Standing::of(&figures, &found)
        })
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        #[test]
        fn what_is_left_out_decides_nothing(plan in arbitrary::camp()) {
            prop_assert_eq!(build::build(&plan).figures.decides, plainly(&plan));
        }
    }

    /// By the rule's own file: what is not in it cannot be found.
    #[test]
    fn rules_that_are_not_asked_again_find_no_more_than_a_caution() {
        let grave = ["Danger", "Warning"].map(|signal| format!("Signal::{signal}"));
        let minor: Vec<&Rule> = rules::all().filter(|rule| !counts(rule)).collect();
        assert_eq!(minor.len(), MINOR.len());
        for rule in minor {
            for signal in &grave {
                assert!(
                    !rule.text.contains(signal),
                    "{} may find {signal}",
                    rule.code
                );
            }
        }
    }

    fn decides(edits: &[(&str, &str)]) -> Option<(String, usize, usize)> {
        report(edits)
            .figures
            .decides
            .map(|found| (found.field, found.dangers, found.warnings))
    }

    #[test]
    fn where_all_is_known_nothing_decides() {
        assert_eq!(decides(&[]), None);
    }

    #[test]
    fn a_breaker_nobody_read_decides_over_a_cord_nobody_looked_at() {
        let (field, dangers, _) = decides(&[
            ("breaker = \"30 A\" # twist", "breaker = \"unknown\""),
            ("outdoor = true # long", "outdoor = \"unknown\""),
        ])
        .expect("something decides");
        assert_eq!(field, "generator.outlet.twist.breaker");
        assert_eq!(dangers, 1);
    }

    #[test]
    fn without_a_danger_the_limits_decide() {
        let found = report(&[
            ("altitude = \"0 ft\"", "altitude = \"unknown\""),
            ("outdoor = true # long", "outdoor = \"unknown\""),
        ])
        .figures
        .decides
        .expect("something decides");
        assert_eq!(found.field, "site.altitude");
        assert_eq!((found.dangers, found.warnings), (0, 0));
        // Thin air cuts the 30 A of the twist outlet, of the cord's end and of nothing smaller.
        assert!(found.amps.amount > rust_decimal::Decimal::ZERO);
    }

    /// Measured by doing it: the report with the answer in the plan has so many dangers fewer.
    #[test]
    fn what_is_promised_is_what_the_answer_does() {
        let unknown = [
            ("ground = \"wet\"", "ground = \"unknown\""),
            ("gfci = true # left", "gfci = \"unknown\""),
        ];
        let known = [
            ("ground = \"wet\"", "ground = \"unknown\""),
            ("gfci = true # left", "gfci = true"),
        ];
        let dangers = |edits: &[(&str, &str)]| {
            report(edits)
                .findings
                .iter()
                .filter(|found| found.signal == crate::report::Signal::Danger)
                .count()
        };
        // Dry ground would clear the danger as well; of equals the first in the list is told.
        let (field, cleared, _) = decides(&unknown).expect("something decides");
        assert_eq!(field, "box.box.outlet.left.gfci");
        assert_eq!(dangers(&unknown) - dangers(&known), cleared);
    }
}

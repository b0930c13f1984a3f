//! What holds for the report of any plan.

use proptest::prelude::*;
use rust_decimal::Decimal;

use super::*;
use crate::plan::arbitrary;
use crate::quantity::Quantity as _;
use crate::words::Words;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn any_plan_gives_one_report(plan in arbitrary::plan()) {
        let report = build(&plan);
        let figures = &report.figures;
        let usable = &figures.usable;
        prop_assert!(usable.stranded_watts.amount >= Decimal::ZERO);
        prop_assert_eq!(
            usable.reachable_watts.amount + usable.stranded_watts.amount,
            usable.rated_watts.amount
        );
        for limit in &figures.limits {
            prop_assert!(limit.continuous_amps.amount <= limit.short_amps.amount);
            prop_assert!(limit.short_amps.amount <= limit.shape.0.rating().amount());
        }
        for load in &figures.loads {
            prop_assert!(load.starting_watts.amount >= load.running_watts.amount);
            prop_assert!(load.starting_amps.amount >= load.running_amps.amount);
            // Real power is never more than apparent power (half a watt for rounding).
            let apparent = load.running_amps.amount * load.volts.amount;
            prop_assert!(load.running_watts.amount <= apparent + Decimal::new(5, 1));
        }
        for drop in &figures.drops {
            prop_assert!(drop.volts_left.amount >= Decimal::ZERO);
            prop_assert!(drop.volts_starting.amount >= drop.volts_running.amount);
        }
        // Each unit is either placed or not.
        let sharing = &figures.sharing;
        prop_assert_eq!(sharing.placed.len() + sharing.unplaced.len(), figures.loads.len());
        prop_assert_eq!(&report, &build(&plan));
    }

    #[test]
    fn everything_assumed_has_words(plan in arbitrary::plan()) {
        let words = Words::english();
        for assumption in &build(&plan).figures.assumed {
            words.assumption(assumption, &[]);
        }
        prop_assert_eq!(words.faults(), Vec::<String>::new());
    }
}

//! What holds for the report of any plan.

use proptest::prelude::*;
use rust_decimal::Decimal;

use super::build;
use crate::plan::arbitrary;
use crate::quantity::{Power, Quantity as _, Voltage};
use crate::words::Words;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn any_plan_gives_one_report(plan in arbitrary::plan()) {
        let report = build(&plan);
        let figures = &report.figures;
        let usable = &figures.usable;
        prop_assert!(usable.stranded_watts >= Power::ZERO);
        prop_assert_eq!(
            usable.reachable_watts + usable.stranded_watts,
            usable.rated_watts
        );
        for limit in &figures.limits {
            prop_assert!(limit.continuous_amps <= limit.short_amps);
            prop_assert!(limit.short_amps <= limit.shape.0.rating());
        }
        for load in &figures.loads {
            prop_assert!(load.starting_watts >= load.running_watts);
            prop_assert!(load.starting_amps >= load.running_amps);
            // Real power never exceeds apparent power, give or take half a watt for rounding.
            let apparent = load.running_amps.amount() * load.volts.amount();
            prop_assert!(load.running_watts.amount() <= apparent + Decimal::new(5, 1));
        }
        for drop in &figures.drops {
            prop_assert!(drop.volts_left >= Voltage::ZERO);
            prop_assert!(drop.volts_starting >= drop.volts_running);
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
            words.assumed_together(std::slice::from_ref(assumption), &[]);
        }
        prop_assert_eq!(words.faults(), Vec::<String>::new());
    }
}

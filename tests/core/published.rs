//! Small published tables and limits, retyped from print. The larger ones are tested in place, in `src/tables` and
//! `src/supply/drop.rs`.

use tallywatt::judge;
use tallywatt::plan;
use tallywatt::quantity::{Current, Length, Percent, Power, Temperature, Voltage};
use tallywatt::tables::shape::{Circuit, Configuration, Receptacle};
use tallywatt::tables::{derating, exhaust, gfci, volts};

/// NEMA WD 6, from memory, not verified: amperes, conductors including ground, and whether 240 V is available.
#[test]
fn configurations_of_wd_6() {
    for (name, amps, wires, two_legs) in [
        ("1-15R", 15, 2, false),
        ("5-15R", 15, 3, false),
        ("5-20R", 20, 3, false),
        ("TT-30R", 30, 3, false),
        ("L5-20R", 20, 3, false),
        ("L5-30R", 30, 3, false),
        ("6-20R", 20, 3, true),
        ("L14-20R", 20, 4, true),
        ("L14-30R", 30, 4, true),
        ("14-30R", 30, 4, true),
        ("14-50R", 50, 4, true),
    ] {
        let shape = Receptacle::named(name).expect("a configuration").0;
        assert_eq!(shape.rating().milliamps(), amps * 1000, "{name}");
        let live = match shape.circuit() {
            Circuit::OneLeg | Circuit::TwoLegs => 2,
            Circuit::TwoLegsNeutral => 3,
        };
        assert_eq!(live + i32::from(shape.grounded()), wires, "{name}");
        let volts = if two_legs { 240_000 } else { 120_000 };
        assert_eq!(shape.volts().millivolts(), volts, "{name}");
    }
    assert_eq!(Configuration::ALL.len(), 11);
}

/// NEC 210.21(B)(3), from a secondary copy, for circuits with two or more receptacles: 15 A receptacles on 15 A and
/// 20 A, 20 A on 20 A, 30 A on 30 A, 50 A on 40 A and 50 A. A receptacle larger than its circuit violates it too, but
/// causes no fire.
#[test]
fn receptacles_on_circuits() {
    for (shape, rating) in [("5-15R", 15), ("5-20R", 20), ("L5-30R", 30), ("14-50R", 50)] {
        for breaker in [15, 20, 30, 40, 50] {
            let text = format!(
                "format = 1\n[generator]\nrated = \"20 kW\"\nvoltage = \"120/240 V\"\n\
                 [[generator.outlet]]\nid = \"one\"\nshape = \"{shape}\"\nsockets = 2\n\
                 breaker = \"{breaker} A\"\ngfci = true\n"
            );
            let report = judge::build(&plan::read(&text).expect("a plan"));
            let found = report.findings.iter().any(|found| found.code == "OVER001");
            let allowed = breaker <= rating || (rating, breaker) == (15, 20);
            assert_eq!(found, !allowed, "{shape} on {breaker} A");
        }
    }
}

/// Thin air holds less oxygen, so an engine without a blower keeps no more of its power than the air keeps of its
/// density. ISO 2533 (confirmed), ratio to sea level at 15 °C there.
#[test]
fn what_is_left_at_altitude_is_no_more_than_the_air() {
    for (metres, density) in [(0, 10_000), (1000, 9075), (1500, 8638), (2000, 8217), (3000, 7422)] {
        let left = derating::left(
            Power::from_milliwatts(10_000),
            Length::from_millimetres(metres * 1000),
            Temperature::from_millicelsius(15_000),
        );
        assert!(left.milliwatts() <= density, "{metres} m: {left:?}");
    }
}

#[test]
fn distances_volts_and_currents_as_printed() {
    let feet = |feet: i64| Length::from_millimetres(feet * 3048 / 10);
    // CPSC 2020-07-24 and FEMA (from a secondary copy): at least 20 ft. NIST 2009 (from a secondary copy): up to 25 ft.
    // FEMA 2011 (confirmed): 3 to 4 ft clear on all sides.
    assert_eq!(exhaust::LEAST, feet(20));
    assert_eq!(exhaust::AMPLE, feet(25));
    assert_eq!(exhaust::CLEAR, feet(4));
    // NEC 210.19(A), informational note 4, 2023 (from a secondary copy): 3 % and 5 %.
    assert_eq!(volts::NOTED, Percent::from_millipercent(3_000));
    assert_eq!(volts::MUCH, Percent::from_millipercent(5_000));
    // COMAR 20.50.07.02 (confirmed), like ANSI C84.1 range A: 114 to 126 V.
    assert_eq!(volts::SERVICE_LEAST, Voltage::from_millivolts(114_000));
    assert_eq!(volts::SERVICE_MOST, Voltage::from_millivolts(126_000));
    // NEC article 100, note on class A (confirmed): not below 4 mA, at 6 mA and more.
    assert_eq!(gfci::NEVER_BELOW, Current::from_milliamps(4));
    assert_eq!(gfci::ALWAYS_FROM, Current::from_milliamps(6));
}

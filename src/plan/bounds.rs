//! The allowed range and rounding of each figure in a plan, one table for plan files and the interview. An answer
//! accepted here also reads back.
//!
//! Demands round up, capacities round down, and so do distances to people. The limits are far beyond what a camp has.
//! They catch a slipped digit or a wrong unit, not rare equipment, and no rule judges by them.

use super::read::problem::shorten;
use super::{Refusal, problem::Value};
use crate::quantity::{
    Amount, Current, Hours, Length, Percent, Power, Quantity, QuantityError, Ratio, Round, SoundLevel, Temperature,
    Unit, Volume, allowed_units, two_readings,
};

/// The allowed range of a quantity, inclusive, and its rounding.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bounds<Q> {
    /// The cautious direction.
    pub round: Round,
    /// The least value accepted.
    pub least: Q,
    /// The greatest value accepted.
    pub most: Q,
}

/// The allowed range of a count, inclusive.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Whole {
    /// The least count accepted.
    pub least: u8,
    /// The greatest count accepted.
    pub most: u8,
}

const fn up<Q>(least: Q, most: Q) -> Bounds<Q> {
    Bounds { round: Round::Up, least, most }
}

const fn down<Q>(least: Q, most: Q) -> Bounds<Q> {
    Bounds { round: Round::Down, least, most }
}

/// Converts whole feet to a length.
const fn feet(feet: i64) -> Length {
    Length::from_millimetres(feet * 3048 / 10)
}

/// Far beyond what a person can carry.
const MOST_POWER: Power = Power::from_milliwatts(100_000_000);
const MOST_CURRENT: Current = Current::from_milliamps(400_000);
/// The smallest generators sold deliver several times as much.
const LEAST_SET: Power = Power::from_milliwatts(50_000);

/// `rated`: the power that the generator delivers for hours.
pub const RATED: Bounds<Power> = down(LEAST_SET, MOST_POWER);
/// `peak`: the power that it delivers for a moment.
pub const PEAK: Bounds<Power> = down(LEAST_SET, MOST_POWER);
/// `limit`: the current that a parallel kit can carry.
pub const KIT_LIMIT: Bounds<Current> = down(Current::from_milliamps(1000), MOST_CURRENT);
/// `tank`: the capacity of the tank.
pub const TANK: Bounds<Volume> = down(Volume::from_millilitres(1), Volume::from_millilitres(1_000_000));
/// `load` of a running time or sound level: the share of rated power.
pub const SHARE: Bounds<Percent> = down(Percent::from_millipercent(1), Percent::from_millipercent(100_000));
/// `lasts`: the hours on one tank.
pub const LASTS: Bounds<Hours> = down(Hours::from_millihours(1), Hours::from_millihours(1_000_000));
/// `level`: how loud the generator is.
pub const NOISE_LEVEL: Bounds<SoundLevel> =
    up(SoundLevel::from_millidecibels(20_000), SoundLevel::from_millidecibels(140_000));
/// `at`: the distance of a sound measurement. The same level at a greater distance means a louder generator.
pub const NOISE_AT: Bounds<Length> = up(feet(1), feet(500));
/// `breaker`: its marked rating.
pub const BREAKER: Bounds<Current> = down(Current::from_milliamps(1000), MOST_CURRENT);
/// `trips_at`: the current at which it was seen to trip.
pub const TRIPS_AT: Bounds<Current> = down(Current::from_milliamps(100), MOST_CURRENT);
/// `length` of a cord.
pub const LENGTH: Bounds<Length> = up(Length::ZERO, feet(3000));
/// `sleepers_at`: the distance from the generator to people.
pub const SLEEPERS_AT: Bounds<Length> = down(Length::ZERO, feet(50_000));
/// `altitude`: from the shore of the lowest lake without an outflow to heights where no engine runs.
pub const ALTITUDE: Bounds<Length> = up(feet(-1500), feet(20_000));
/// `air`: the hottest expected air.
pub const AIR: Bounds<Temperature> =
    up(Temperature::from_millicelsius(-60_000), Temperature::from_millicelsius(70_000));
/// `running`: the power that a load draws.
pub const RUNNING: Bounds<Power> = up(Power::from_milliwatts(1), MOST_POWER);
/// `current`: the same in amperes.
pub const CURRENT: Bounds<Current> = up(Current::from_milliamps(1), MOST_CURRENT);
/// `starting`: the power that a load draws for a moment.
pub const STARTING: Bounds<Power> = up(Power::from_milliwatts(1), MOST_POWER);
/// `starting_current`: the same in amperes.
pub const STARTING_CURRENT: Bounds<Current> = up(Current::from_milliamps(1), MOST_CURRENT);
/// `hp` of a motor, a bare number.
pub const HORSEPOWER: Bounds<Ratio> = up(Ratio::from_permille(1), Ratio::from_permille(10_000));
/// `power_factor`: a lower one means a larger current.
pub const POWER_FACTOR: Bounds<Ratio> = down(Ratio::from_permille(100), Ratio::from_permille(1000));

/// `sets` joined in parallel.
pub const SETS: Whole = Whole { least: 2, most: 4 };
/// `sockets` of one receptacle.
pub const SOCKETS: Whole = Whole { least: 1, most: 20 };
/// `conductors` of a cord.
pub const CONDUCTORS: Whole = Whole { least: 2, most: 5 };
/// `count` of a load.
pub const COUNT: Whole = Whole { least: 1, most: 100 };

impl<Q: Quantity> Bounds<Q> {
    /// Whether the quantity is in range.
    pub fn hold(&self, quantity: Q) -> bool {
        (self.least..=self.most).contains(&quantity)
    }

    /// Parses a quantity and rounds it in the cautious direction.
    ///
    /// The reader's own decimal mark does not decide, because a file may come from anywhere and a nameplate may be
    /// printed for another part of the world. Fifteen hundred watts read as one and a half would be a load that hardly
    /// counts; six meters read as six thousand would be people far away. So a number with two readings is accepted only
    /// if the other reading is impossible here.
    ///
    /// # Errors
    /// Returns a [`Refusal`] if the text is no such quantity, has two readings, or is out of range.
    pub fn read(&self, text: &str) -> Result<Q, Refusal> {
        let parsed = Q::parse(text, self.round);
        let fits = |text: &str| Q::parse(text, self.round).is_ok_and(|read| self.hold(read));
        if let Some(readings) = two_readings(text) {
            let both = readings.iter().all(|reading| fits(reading));
            let one = readings.iter().any(|reading| fits(reading));
            let usual = parsed.as_ref().is_ok_and(|read| self.hold(*read));
            if both || (one && !usual) || parsed == Err(QuantityError::NoUnit) {
                let [decimals, thousands] = readings.map(|reading| shorten(&reading));
                let why = self.refusal("two-readings", text);
                return Err(why.with("decimals", decimals).with("thousands", thousands));
            }
        }
        match parsed {
            Ok(quantity) if self.hold(quantity) => Ok(quantity),
            Ok(_) | Err(QuantityError::OutOfRange) => Err(self.refusal("out-of-range", text)),
            Err(QuantityError::Empty) => Err(self.refusal("empty-text", text)),
            Err(QuantityError::NoNumber) => {
                let why = self.refusal("no-number", text);
                Err(why.with("example", example(Q::UNIT)))
            }
            Err(QuantityError::NoUnit) => Err(self.no_unit(text)),
            Err(QuantityError::UnknownUnit { found }) => Err(self.refusal("unknown-unit", &found)),
        }
    }

    /// Returns the refusal of a number without a unit.
    pub(crate) fn no_unit(&self, found: &str) -> Refusal {
        let unit = allowed_units(Q::UNIT).next().unwrap_or_default();
        let example = format!("{} {unit}", shorten(found.trim()));
        self.refusal("no-unit", found).with("example", example)
    }

    /// Returns a refusal that states what was found and what would be accepted.
    pub(crate) fn refusal(&self, key: &'static str, found: &str) -> Refusal {
        Refusal::new(key)
            .found(found)
            .with("least", Amount::of(self.least))
            .with("most", Amount::of(self.most))
            .with("units", Q::UNIT)
            .with("allowed", Value::any(allowed_units(Q::UNIT)))
    }
}

/// Returns a typical quantity in this unit, for help texts.
fn example(unit: Unit) -> String {
    let number = match unit {
        Unit::Ampere => "20",
        Unit::Volt => "120",
        Unit::Watt => "1500",
        Unit::Metre | Unit::Percent => "50",
        Unit::Celsius => "80",
        Unit::DecibelA => "58",
        Unit::Hour => "8",
        Unit::One => "1/2",
        _ => "1",
    };
    let name = allowed_units(unit).next().unwrap_or_default();
    format!("{number} {name}").trim_end().to_owned()
}

impl Whole {
    /// Whether the count is in range.
    #[must_use]
    pub fn hold(self, count: u8) -> bool {
        (self.least..=self.most).contains(&count)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn what_could_be_read_in_two_ways_is_taken_in_neither() {
        for (text, decimals, thousands) in [
            // 20 ft and 15 ft to the millimeter.
            ("6,096 m", "6.0960 m", "6096 m"),
            ("4.572 m", "4.5720 m", "4572 m"),
            ("7.620 m", "7.62 m", "7620 m"),
            ("12.000 m", "12 m", "12000 m"),
        ] {
            let refused = SLEEPERS_AT.read(text).expect_err(text);
            assert_eq!(refused.key, "two-readings", "{text}");
            for (name, reading) in [("decimals", decimals), ("thousands", thousands)] {
                assert!(refused.values.contains(&(name, reading.into())), "{refused:?}");
                // The suggested spellings read.
                assert!(SLEEPERS_AT.read(reading).is_ok(), "{reading}");
            }
        }
        assert_eq!(RUNNING.read("1.234 kW"), Ok(Power::from_milliwatts(1_234_000)));
        assert_eq!(RATED.read("1,440 W"), Ok(Power::from_milliwatts(1_440_000)));
        // The usual reading is out of range, but the other one is not.
        let power = |text| RUNNING.read(text).expect_err(text).key;
        assert_eq!(power("1,440 kW"), "two-readings");
        assert_eq!(AIR.read("31,125 °C").unwrap_err().key, "two-readings");
        assert_eq!(power("1440 kW"), "out-of-range");
    }

    proptest! {
        /// With either mark, a text is only accepted for one of its two readings if the other is out of range.
        #[test]
        fn marks_never_change_what_is_taken(
            whole in 1..1000_u32,
            three in 0..1000_u32,
            unit in prop::sample::select(vec!["m", "ft", "mm", "cm"]),
        ) {
            let as_decimals = Length::parse(&format!("{whole}.{three:03}0 {unit}"), Round::Down);
            let as_thousands = Length::parse(&format!("{whole}{three:03} {unit}"), Round::Down);
            for mark in ['.', ','] {
                if let Ok(taken) = SLEEPERS_AT.read(&format!("{whole}{mark}{three:03} {unit}")) {
                    let other = if Ok(taken) == as_decimals { &as_thousands } else { &as_decimals };
                    prop_assert!(Ok(taken) == as_decimals || Ok(taken) == as_thousands);
                    prop_assert!(!other.as_ref().is_ok_and(|other| SLEEPERS_AT.hold(*other)));
                }
            }
        }
    }
}

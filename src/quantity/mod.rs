//! Physical quantities as newtypes over integers.
//!
//! Every quantity counts a small fixed unit (a milliampere, a millimeter, ...), named in the type's documentation, so
//! that arithmetic is exact and identical on every machine. Where a conversion is inexact, the caller states the
//! cautious direction: demands round up, capacities round down (see [`Round`]).
//!
//! Parsing ("25 ft") is in [`parse`]. Formatting for readers is in [`crate::words`], because the unit and the decimal
//! mark depend on the language.

mod amount;
mod gauge;
mod logarithm;
mod parse;

pub use amount::Amount;
pub use gauge::Wire;
pub(crate) use logarithm::{BITS, exp2, log2};
pub use parse::{QuantityError, Round, allowed_units, one_reading, two_readings};

use std::iter::Sum;
use std::ops::{Add, Sub};

use rust_decimal::Decimal;
use serde::{Serialize, Serializer};

/// The interface shared by all quantity types, so that parsing, formatting and reporting are written once.
pub trait Quantity: Copy + Ord + std::fmt::Debug {
    /// The unit of this quantity in reports, as in `"A"`.
    const UNIT: Unit;
    /// The decimal places of [`Self::UNIT`] that one count represents: 3 for milliamperes.
    const SCALE: u32;
    /// Returns the quantity with this many small units.
    fn from_count(count: i64) -> Self;
    /// Returns the number of small units.
    fn count(self) -> i64;
    /// Returns the exact amount in [`Self::UNIT`].
    fn amount(self) -> Decimal {
        Decimal::new(self.count(), Self::SCALE).normalize()
    }
    /// Parses text such as `"12.5 A"`, in any unit allowed for this quantity.
    ///
    /// # Errors
    /// Returns an error if there is no number or no unit, the unit is unknown, or the amount does not fit.
    fn parse(text: &str, round: Round) -> Result<Self, QuantityError> {
        parse::parse(text, Self::UNIT, Self::SCALE, round).map(Self::from_count)
    }
}

/// The units used in reports.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Unit {
    /// Ampere.
    Ampere,
    /// Volt.
    Volt,
    /// Watt: real power.
    Watt,
    /// Volt-ampere: apparent power, which is not watts.
    VoltAmpere,
    /// Watt-hour.
    WattHour,
    /// Ohm.
    Ohm,
    /// Meter.
    Metre,
    /// Degree Celsius.
    Celsius,
    /// A-weighted decibel.
    DecibelA,
    /// Hour.
    Hour,
    /// Liter.
    Litre,
    /// Percent.
    Percent,
    /// A bare number: a count or a ratio.
    One,
}

impl Unit {
    /// Returns the unit's code in JSON reports.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::Ampere => "A",
            Self::Volt => "V",
            Self::Watt => "W",
            Self::VoltAmpere => "VA",
            Self::WattHour => "Wh",
            Self::Ohm => "ohm",
            Self::Metre => "m",
            Self::Celsius => "degC",
            Self::DecibelA => "dBA",
            Self::Hour => "h",
            Self::Litre => "L",
            Self::Percent => "%",
            Self::One => "1",
        }
    }

    /// Returns the name of a thousandth of this unit, if people use one.
    #[must_use]
    pub const fn thousandth(self) -> Option<&'static str> {
        match self {
            Self::Ampere => Some("mA"),
            Self::Volt => Some("mV"),
            Self::Watt => Some("mW"),
            Self::Metre => Some("mm"),
            Self::Litre => Some("mL"),
            _ => None,
        }
    }
}

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $unit:expr, $scale:expr, $ctor:ident, $getter:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(i64);

        impl $name {
            /// Zero.
            pub const ZERO: Self = Self(0);
            /// Creates the quantity from a number of small units.
            #[must_use]
            pub const fn $ctor(count: i64) -> Self { Self(count) }
            /// Returns the number of small units.
            #[must_use]
            pub const fn $getter(self) -> i64 { self.0 }
        }

        impl Quantity for $name {
            const UNIT: Unit = $unit;
            const SCALE: u32 = $scale;
            fn from_count(count: i64) -> Self { Self(count) }
            fn count(self) -> i64 { self.0 }
        }

        /// Serializes as the exact amount with its unit: `{"amount": 12.5, "unit": "A"}`.
        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                Amount::of(*self).serialize(serializer)
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self { Self(self.0 + other.0) }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self { Self(self.0 - other.0) }
        }

        impl Sum for $name {
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
                items.fold(Self::ZERO, Add::add)
            }
        }
    };
}

quantity!(/// Electric current in milliamperes.
    Current, Unit::Ampere, 3, from_milliamps, milliamps);
quantity!(/// Electric potential in millivolts.
    Voltage, Unit::Volt, 3, from_millivolts, millivolts);
quantity!(/// Real power in milliwatts. Apparent power is [`ApparentPower`].
    Power, Unit::Watt, 3, from_milliwatts, milliwatts);
quantity!(/// Apparent power in millivolt-amperes.
    ApparentPower, Unit::VoltAmpere, 3, from_millivolt_amps, millivolt_amps);
quantity!(/// Energy in milliwatt-hours.
    Energy, Unit::WattHour, 3, from_milliwatt_hours, milliwatt_hours);
quantity!(/// Resistance in micro-ohms.
    Resistance, Unit::Ohm, 6, from_microohms, microohms);
quantity!(/// Length in millimeters.
    Length, Unit::Metre, 3, from_millimetres, millimetres);
quantity!(/// Temperature in thousandths of a degree Celsius.
    Temperature, Unit::Celsius, 3, from_millicelsius, millicelsius);
quantity!(/// A-weighted sound pressure level in thousandths of a decibel.
    SoundLevel, Unit::DecibelA, 3, from_millidecibels, millidecibels);
quantity!(/// A span of time in thousandths of an hour (3.6 s).
    Hours, Unit::Hour, 3, from_millihours, millihours);
quantity!(/// Volume in milliliters.
    Volume, Unit::Litre, 3, from_millilitres, millilitres);
quantity!(/// A share in thousandths of a percent.
    Percent, Unit::Percent, 3, from_millipercent, millipercent);
quantity!(/// A power factor or other ratio in thousandths.
    Ratio, Unit::One, 3, from_permille, permille);

impl Current {
    /// Returns the current of a load: power over power factor and voltage, rounded **up**.
    ///
    /// A `power_factor` of zero or less counts as one thousandth, the lowest that can be written.
    #[must_use]
    pub fn of_load(power: Power, power_factor: Ratio, volts: Voltage) -> Self {
        let numerator = i128::from(power.0) * 1_000_000;
        let denominator = i128::from(volts.0.max(1)) * i128::from(power_factor.0.max(1));
        Self(narrow((numerator + denominator - 1) / denominator))
    }

    /// Returns the current for an apparent power, rounded **up**.
    #[must_use]
    pub fn of_apparent(apparent: ApparentPower, volts: Voltage) -> Self {
        Self(product_up(apparent.0, 1000, volts.0.max(1)))
    }

    /// Returns the current that a capacity in watts delivers at unity power factor, rounded **down**.
    #[must_use]
    pub fn of_capacity(power: Power, volts: Voltage) -> Self {
        Self(product_down(power.0, 1000, volts.0.max(1)))
    }

    /// Scales a current capacity by a ratio, rounding **down**.
    #[must_use]
    pub fn scaled_down(self, ratio: Ratio) -> Self {
        Self(product_down(self.0, ratio.0, 1000))
    }
}

impl Power {
    /// Returns the power that a capacity in amperes carries at unity power factor, rounded **down**.
    #[must_use]
    pub fn of_capacity(amps: Current, volts: Voltage) -> Self {
        Self(product_down(amps.0, volts.0, 1000))
    }

    /// Scales a power capacity by a ratio, rounding **down**.
    #[must_use]
    pub fn scaled_down(self, ratio: Ratio) -> Self {
        Self(product_down(self.0, ratio.0, 1000))
    }
}

impl ApparentPower {
    /// Returns the apparent power that a current draws at a voltage, rounded **up**.
    #[must_use]
    pub fn of_load(amps: Current, volts: Voltage) -> Self {
        Self(product_up(amps.0, volts.0, 1000))
    }

    /// Returns the apparent power that a capacity in amperes carries at a voltage, rounded **down**.
    #[must_use]
    pub fn of_capacity(amps: Current, volts: Voltage) -> Self {
        Self(product_down(amps.0, volts.0, 1000))
    }
}

impl Temperature {
    /// Returns the temperature in ninths of a thousandth of a degree Celsius, a unit in which tenths of a degree of
    /// either scale are whole numbers.
    ///
    /// A value read from tenths of a degree Fahrenheit is returned as exactly that, not as the rounded thousandth of a
    /// degree Celsius.
    #[must_use]
    pub const fn ninths(self) -> i64 {
        // A tenth of a degree Fahrenheit is 500 units, and 0 °F is 160,000 units below 0 °C.
        const TENTH: i64 = 500;
        const ZERO: i64 = -160_000;
        let upper = self.0 * 9;
        let fahrenheit = upper - (upper - ZERO).rem_euclid(TENTH);
        if upper - fahrenheit < 9 { fahrenheit } else { upper }
    }
}

/// Returns `a * b / by`, rounded **down**, for capacities. `by` must be positive.
pub(crate) fn product_down(a: i64, b: i64, by: i64) -> i64 {
    product_over(a, b, 0, by)
}

/// Returns `a * b / by`, rounded **up**, for loads. `by` must be positive.
pub(crate) fn product_up(a: i64, b: i64, by: i64) -> i64 {
    product_over(a, b, by - 1, by)
}

/// Returns `(a * b + plus) / by`, in 64 bits where they suffice, which is many times faster.
fn product_over(a: i64, b: i64, plus: i64, by: i64) -> i64 {
    let product = a.checked_mul(b);
    product.and_then(|product| product.checked_add(plus)).map_or_else(
        || narrow((i128::from(a) * i128::from(b) + i128::from(plus)) / i128::from(by)),
        |product| product / by,
    )
}

/// Narrows an intermediate result, saturating. The plan's bounds reject sums that large long before.
pub(crate) fn narrow(wide: i128) -> i64 {
    i64::try_from(wide).unwrap_or(if wide < 0 { i64::MIN } else { i64::MAX })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn loads_round_up_and_capacities_down() {
        // 1,000 W at 120 V is 8.333... A.
        let watts = Power::from_milliwatts(1_000_000);
        let volts = Voltage::from_millivolts(120_000);
        assert_eq!(Current::of_load(watts, Ratio::from_permille(1000), volts).milliamps(), 8334);
        assert_eq!(Current::of_capacity(watts, volts).milliamps(), 8333);
    }

    #[test]
    fn arithmetic_of_common_practice() {
        // Oracle row 17: 3,600 W and 3,000 W at 120 V (common practice, arithmetic).
        let volts = Voltage::from_millivolts(120_000);
        for (watts, amps) in [(3600, 30_000), (3000, 25_000)] {
            let power = Power::from_milliwatts(watts * 1000);
            assert_eq!(Current::of_load(power, Ratio::from_permille(1000), volts).milliamps(), amps);
        }
    }

    /// In every profile, so also with `cargo test --release`: a wrong number on a label is worse than none.
    #[test]
    #[should_panic(expected = "overflow")]
    fn a_sum_never_wraps_round() {
        let most = std::hint::black_box(Current::from_milliamps(i64::MAX));
        let _ = std::hint::black_box(most + Current::from_milliamps(1));
    }

    /// °C = (°F − 32) × 5 / 9, so a tenth of a degree Fahrenheit is 500 ninths of a thousandth.
    #[test]
    fn degrees_of_both_scales_are_whole() {
        for (text, ninths) in [
            ("0 °C", 0),
            ("15 °C", 135_000),
            ("32 °F", 0),
            ("59 °F", 135_000),
            ("60 °F", 140_000),
            ("60.1 °F", 140_500),
            ("-40 °F", -360_000),
            ("-40 °C", -360_000),
            ("100 °F", 340_000),
            ("37.777 °C", 339_993),
            ("15.5 °C", 139_500),
        ] {
            let read = Temperature::parse(text, Round::Up).map(Temperature::ninths);
            assert_eq!(read, Ok(ninths), "{text}");
        }
        // Never more than the stored value, and always in the same order.
        let mut before = i64::MIN;
        for count in -60_000..=70_000 {
            let ninths = Temperature::from_millicelsius(count).ninths();
            assert!(ninths <= count * 9 && ninths > count * 9 - 9 && ninths > before);
            before = ninths;
        }
    }

    #[test]
    fn amounts_are_exact_decimals() {
        assert_eq!(Length::from_millimetres(7620).amount().to_string(), "7.62");
    }
}

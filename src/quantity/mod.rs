//! Physical quantities as newtypes over small whole numbers.
//!
//! Every quantity counts a fixed small unit (a milliampere, a millimetre, ...), named in the
//! type's documentation, so that the arithmetic of the core is exact and the same on every
//! machine. Where a conversion is not exact the caller says which way is cautious:
//! demands round up, capacities round down (see [`Round`]).
//!
//! Reading ("25 ft") is in [`parse`]; writing for a reader is in [`crate::words`], because the
//! choice of unit and decimal mark is a matter of language and not of physics.

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

/// What every quantity type has in common, so that reading, writing and reporting are
/// written once.
pub trait Quantity: Copy + Ord + std::fmt::Debug {
    /// The unit that reports use for this quantity, as in `"A"`.
    const UNIT: Unit;
    /// How many decimal places of [`Self::UNIT`] one count is worth: 3 for milliamperes.
    const SCALE: u32;
    /// The quantity that is `count` small units.
    fn from_count(count: i64) -> Self;
    /// The number of small units.
    fn count(self) -> i64;
    /// The exact amount in [`Self::UNIT`].
    fn amount(self) -> Decimal {
        Decimal::new(self.count(), Self::SCALE).normalize()
    }
    /// Reads text such as `"12.5 A"`, in any unit listed for this quantity.
    ///
    /// # Errors
    /// When there is no number, no unit, an unknown unit, or the amount does not fit.
    fn parse(text: &str, round: Round) -> Result<Self, QuantityError> {
        parse::parse(text, Self::UNIT, Self::SCALE, round).map(Self::from_count)
    }
}

/// The units that reports are written in. `code` is their form in JSON.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Unit {
    /// Ampere.
    Ampere,
    /// Volt.
    Volt,
    /// Watt: real power.
    Watt,
    /// Volt-ampere: apparent power, never to be confused with watts.
    VoltAmpere,
    /// Watt-hour.
    WattHour,
    /// Ohm.
    Ohm,
    /// Metre.
    Metre,
    /// Degree Celsius.
    Celsius,
    /// A-weighted decibel.
    DecibelA,
    /// Hour.
    Hour,
    /// Litre.
    Litre,
    /// Per cent.
    Percent,
    /// A bare number: a count or a ratio.
    One,
}

impl Unit {
    /// The unit's form in JSON reports.
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

    /// The unit of which a thousand make one, where people write one.
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
            /// None of it.
            pub const ZERO: Self = Self(0);
            /// The quantity that is so many small units.
            #[must_use]
            pub const fn $ctor(count: i64) -> Self { Self(count) }
            /// How many small units it is.
            #[must_use]
            pub const fn $getter(self) -> i64 { self.0 }
        }

        impl Quantity for $name {
            const UNIT: Unit = $unit;
            const SCALE: u32 = $scale;
            fn from_count(count: i64) -> Self { Self(count) }
            fn count(self) -> i64 { self.0 }
        }

        /// As its amount and unit, exactly: `{"amount": 12.5, "unit": "A"}`.
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
quantity!(/// Length in millimetres.
    Length, Unit::Metre, 3, from_millimetres, millimetres);
quantity!(/// Temperature in thousandths of a degree Celsius.
    Temperature, Unit::Celsius, 3, from_millicelsius, millicelsius);
quantity!(/// A-weighted sound pressure level in thousandths of a decibel.
    SoundLevel, Unit::DecibelA, 3, from_millidecibels, millidecibels);
quantity!(/// A span of time in thousandths of an hour (3.6 s).
    Hours, Unit::Hour, 3, from_millihours, millihours);
quantity!(/// Volume in millilitres.
    Volume, Unit::Litre, 3, from_millilitres, millilitres);
quantity!(/// A share in thousandths of a per cent.
    Percent, Unit::Percent, 3, from_millipercent, millipercent);
quantity!(/// A power factor or other ratio in thousandths.
    Ratio, Unit::One, 3, from_permille, permille);

impl Current {
    /// The current of a load: power over power factor and voltage, rounded **up**.
    ///
    /// `power_factor` of zero or less counts as one thousandth, the worst that can be written.
    #[must_use]
    pub fn of_load(power: Power, power_factor: Ratio, volts: Voltage) -> Self {
        let numerator = i128::from(power.0) * 1_000_000;
        let denominator = i128::from(volts.0.max(1)) * i128::from(power_factor.0.max(1));
        Self(narrow((numerator + denominator - 1) / denominator))
    }

    /// The current of an apparent power, rounded **up**.
    #[must_use]
    pub fn of_apparent(apparent: ApparentPower, volts: Voltage) -> Self {
        Self(product_up(apparent.0, 1000, volts.0.max(1)))
    }

    /// The current that a capacity in watts gives at unity power factor, rounded **down**.
    #[must_use]
    pub fn of_capacity(power: Power, volts: Voltage) -> Self {
        Self(product_down(power.0, 1000, volts.0.max(1)))
    }

    /// This current scaled by a ratio, rounded **down**, for capacities.
    #[must_use]
    pub fn scaled_down(self, ratio: Ratio) -> Self {
        Self(product_down(self.0, ratio.0, 1000))
    }
}

impl Power {
    /// The power a capacity in amperes carries at unity power factor, rounded **down**.
    #[must_use]
    pub fn of_capacity(amps: Current, volts: Voltage) -> Self {
        Self(product_down(amps.0, volts.0, 1000))
    }

    /// This power scaled by a ratio, rounded **down**, for capacities.
    #[must_use]
    pub fn scaled_down(self, ratio: Ratio) -> Self {
        Self(product_down(self.0, ratio.0, 1000))
    }
}

impl ApparentPower {
    /// What a current takes at a voltage, rounded **up**.
    #[must_use]
    pub fn of_load(amps: Current, volts: Voltage) -> Self {
        Self(product_up(amps.0, volts.0, 1000))
    }

    /// What a capacity in amperes carries at a voltage, rounded **down**.
    #[must_use]
    pub fn of_capacity(amps: Current, volts: Voltage) -> Self {
        Self(product_down(amps.0, volts.0, 1000))
    }
}

impl Temperature {
    /// In ninths of a thousandth of a degree Celsius, in which degrees of both scales are whole. What
    /// reads as tenths of a degree Fahrenheit is just that, and not the thousandth of a degree Celsius
    /// above it.
    #[must_use]
    pub const fn ninths(self) -> i64 {
        // Tenths of a degree Fahrenheit are 500 of these; its zero is 160,000 of them below.
        const TENTH: i64 = 500;
        const ZERO: i64 = -160_000;
        let upper = self.0 * 9;
        let fahrenheit = upper - (upper - ZERO).rem_euclid(TENTH);
        if upper - fahrenheit < 9 { fahrenheit } else { upper }
    }
}

/// A product over a divisor above zero, rounded **down**, for capacities.
pub(crate) fn product_down(a: i64, b: i64, by: i64) -> i64 {
    product_over(a, b, 0, by)
}

/// A product over a divisor above zero, rounded **up**, for loads.
pub(crate) fn product_up(a: i64, b: i64, by: i64) -> i64 {
    product_over(a, b, by - 1, by)
}

/// In 64 bits, which is many times quicker, wherever these are enough.
fn product_over(a: i64, b: i64, plus: i64, by: i64) -> i64 {
    let product = a.checked_mul(b);
    product.and_then(|product| product.checked_add(plus)).map_or_else(
        || narrow((i128::from(a) * i128::from(b) + i128::from(plus)) / i128::from(by)),
        |product| product / by,
    )
}

/// Brings a wide intermediate result back, holding at the ends: a sum that large is refused by
/// the plan reader's bounds long before it comes here.
pub(crate) fn narrow(wide: i128) -> i64 {
    i64::try_from(wide).unwrap_or(if wide < 0 { i64::MIN } else { i64::MAX })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn loads_round_up_and_capacities_down() {
        // 1000 W at 120 V is 8.333... A.
        let watts = Power::from_milliwatts(1_000_000);
        let volts = Voltage::from_millivolts(120_000);
        assert_eq!(Current::of_load(watts, Ratio::from_permille(1000), volts).milliamps(), 8334);
        assert_eq!(Current::of_capacity(watts, volts).milliamps(), 8333);
    }

    #[test]
    fn arithmetic_of_common_practice() {
        // Oracle row 17: 3600 W and 3000 W at 120 V (common practice, arithmetic).
        let volts = Voltage::from_millivolts(120_000);
        for (watts, amps) in [(3600, 30_000), (3000, 25_000)] {
            let power = Power::from_milliwatts(watts * 1000);
            assert_eq!(Current::of_load(power, Ratio::from_permille(1000), volts).milliamps(), amps);
        }
    }

    /// In every profile: a wrong number on a label is worse than none. `cargo test --release` too.
    #[test]
    #[should_panic(expected = "overflow")]
    fn a_sum_never_wraps_round() {
        let most = std::hint::black_box(Current::from_milliamps(i64::MAX));
        let _ = std::hint::black_box(most + Current::from_milliamps(1));
    }

    /// °C = (°F − 32) × 5 / 9, so that ninths of a thousandth are 500 for each tenth of a degree
    /// Fahrenheit.
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
        // Never more than what is held, and never in another order.
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

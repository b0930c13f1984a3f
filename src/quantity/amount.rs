//! A quantity of any kind, as reports and problems hold it.

use rust_decimal::Decimal;
use serde::{Serialize, Serializer};

use super::{Quantity, Unit};

/// An exact amount with its unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Amount {
    /// How much. Never rounded for display. In JSON a number, digit for digit.
    #[serde(with = "rust_decimal::serde::arbitrary_precision")]
    pub amount: Decimal,
    /// Of what.
    #[serde(serialize_with = "unit_code")]
    pub unit: Unit,
}

impl Amount {
    /// The amount of a quantity in its report unit.
    #[must_use]
    pub fn of<Q: Quantity>(quantity: Q) -> Self {
        Self {
            amount: quantity.amount(),
            unit: Q::UNIT,
        }
    }

    /// A bare count.
    #[must_use]
    pub fn count(count: usize) -> Self {
        Self {
            amount: Decimal::from(count),
            unit: Unit::One,
        }
    }

    /// The quantity that this is the amount of. Amounts come from quantities, so nothing is lost.
    ///
    /// # Panics
    /// When it is the amount of another quantity: amperes read for volts would be a wrong number
    /// that nobody sees.
    #[must_use]
    pub fn quantity<Q: Quantity>(&self) -> Q {
        assert_eq!(self.unit, Q::UNIT, "an amount read as what it is not");
        let (digits, scale) = (self.amount.mantissa(), self.amount.scale());
        let counts = if scale <= Q::SCALE {
            digits.saturating_mul(10_i128.pow(Q::SCALE - scale))
        } else {
            digits / 10_i128.pow(scale - Q::SCALE)
        };
        Q::from_count(i64::try_from(counts).unwrap_or(i64::MAX))
    }
}

impl<Q: Quantity> From<Q> for Amount {
    fn from(quantity: Q) -> Self {
        Self::of(quantity)
    }
}

// serde hands every field to its serializer by reference.
#[allow(clippy::trivially_copy_pass_by_ref)]
fn unit_code<S: Serializer>(unit: &Unit, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(unit.code())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{ApparentPower, Current, Power, Resistance, Voltage};

    #[test]
    fn a_quantity_comes_back_whole() {
        for count in [0, 1, -1, 1_000, 12_500, 7_620_001] {
            let amps = Current::from_milliamps(count);
            assert_eq!(Amount::of(amps).quantity::<Current>(), amps);
            let ohms = Resistance::from_microohms(count);
            assert_eq!(Amount::of(ohms).quantity::<Resistance>(), ohms);
        }
    }

    #[test]
    #[should_panic(expected = "read as what it is not")]
    fn amperes_are_never_read_as_volts() {
        let _: Voltage = Amount::of(Current::from_milliamps(1)).quantity();
    }

    #[test]
    #[should_panic(expected = "read as what it is not")]
    fn volt_amperes_are_never_read_as_watts() {
        let _: Power = Amount::of(ApparentPower::from_millivolt_amps(1)).quantity();
    }
}

//! An amount with its unit, as in JSON, in words and in the values of findings and problems.

use rust_decimal::Decimal;
use serde::{Serialize, Serializer};

use super::{Quantity, Unit};

/// An exact amount with its unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Amount {
    /// The number, never rounded for display. In JSON a number, digit for digit.
    #[serde(with = "rust_decimal::serde::arbitrary_precision")]
    pub amount: Decimal,
    /// The unit.
    #[serde(serialize_with = "unit_code")]
    pub unit: Unit,
}

impl Amount {
    /// Returns the amount of a quantity in its report unit.
    #[must_use]
    pub fn of<Q: Quantity>(quantity: Q) -> Self {
        Self { amount: quantity.amount(), unit: Q::UNIT }
    }

    /// Returns a bare count.
    #[must_use]
    pub fn count(count: usize) -> Self {
        Self { amount: Decimal::from(count), unit: Unit::One }
    }
}

impl<Q: Quantity> From<Q> for Amount {
    fn from(quantity: Q) -> Self {
        Self::of(quantity)
    }
}

// Serde passes every field to its serializer by reference.
#[allow(clippy::trivially_copy_pass_by_ref)]
fn unit_code<S: Serializer>(unit: &Unit, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(unit.code())
}

#[cfg(test)]
mod tests {
    use crate::quantity::{Current, Resistance, Volume};

    /// Quantities serialize as amount and unit, digit for digit.
    #[test]
    fn a_quantity_is_written_whole() {
        let json = |amps: i64| serde_json::to_string(&Current::from_milliamps(amps));
        for (milliamps, amount) in [(0, "0"), (-1, "-0.001"), (1_000, "1"), (12_500, "12.5")] {
            let wanted = format!(r#"{{"amount":{amount},"unit":"A"}}"#);
            assert_eq!(json(milliamps).expect("written"), wanted);
        }
        let both = (Resistance::from_microohms(7_620_001), Volume::from_millilitres(7_570));
        let wanted = r#"[{"amount":7.620001,"unit":"ohm"},{"amount":7.57,"unit":"L"}]"#;
        assert_eq!(serde_json::to_string(&both).expect("written"), wanted);
    }
}

//! Conductor sizes in either trade system.

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

use super::QuantityError;
use super::parse::plain;

/// The marked size of a copper conductor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Wire {
    /// American wire gauge. A larger number is a thinner wire.
    Awg(i8),
    /// The cross-section in thousandths of a square millimeter.
    Area(i32),
}

impl Wire {
    /// Parses "10 AWG", "#12", "4 mm²" or "2.5mm2".
    ///
    /// # Errors
    /// Returns an error if the number or the unit is missing, or if it is no conductor size.
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let text = text.trim();
        if text.is_empty() {
            return Err(QuantityError::Empty);
        }
        let (text, hashed) = text.strip_prefix('#').map_or((text, false), |rest| (rest.trim_start(), true));
        let end = text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ','))).unwrap_or(text.len());
        let (number, unit) = text.split_at(end);
        let number = plain(&number.replace(',', "."))?;
        let written = unit.trim();
        let unit = written.to_ascii_lowercase();
        match unit.as_str() {
            "awg" | "ga" | "gauge" | "gage" => Self::awg(number),
            "" if hashed => Self::awg(number),
            "" => Err(QuantityError::NoUnit),
            "mm²" | "mm2" | "sq mm" | "mm^2" => number
                .checked_mul(Decimal::from(1000))
                .and_then(|area| area.to_i32())
                .filter(|area| (100..=400_000).contains(area))
                .map(Self::Area)
                .ok_or(QuantityError::OutOfRange),
            _ => Err(QuantityError::UnknownUnit { found: written.to_owned() }),
        }
    }

    fn awg(number: Decimal) -> Result<Self, QuantityError> {
        number
            .to_i8()
            .filter(|gauge| Decimal::from(*gauge) == number && (0..=30).contains(gauge))
            .map(Self::Awg)
            .ok_or(QuantityError::OutOfRange)
    }
}

/// The form in plan files, the same in every language. [`Wire::parse`] reads it back.
impl std::fmt::Display for Wire {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Awg(gauge) => write!(f, "{gauge} AWG"),
            Self::Area(area) => write!(f, "{} mm²", Decimal::new(i64::from(*area), 3).normalize()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_both_systems_and_writes_them_back() {
        for (text, wire) in [
            ("10 AWG", Wire::Awg(10)),
            ("#12", Wire::Awg(12)),
            ("4 mm²", Wire::Area(4000)),
            ("2,5mm2", Wire::Area(2500)),
        ] {
            assert_eq!(Wire::parse(text), Ok(wire), "{text}");
            assert_eq!(Wire::parse(&wire.to_string()), Ok(wire));
        }
        assert_eq!(Wire::parse("12"), Err(QuantityError::NoUnit));
        assert_eq!(Wire::parse("12.5 AWG"), Err(QuantityError::OutOfRange));
        for endless in [
            "70000000000000000000000000000 mm2",
            "99999999999999999999999999999999999999 mm2",
            "99999999999999999999999999999999999999 AWG",
        ] {
            assert_eq!(Wire::parse(endless), Err(QuantityError::OutOfRange), "{endless}");
        }
    }
}

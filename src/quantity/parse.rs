//! Parsing of quantities with units.

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

use super::Unit;

/// The rounding of an amount that falls between two counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Round {
    /// To the greater count, for demands.
    Up,
    /// To the smaller count, for capacities.
    Down,
}

/// The reason why a text is no quantity. The messages are in the language files.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum QuantityError {
    /// Empty or blank text.
    Empty,
    /// No number at the start.
    NoNumber,
    /// A number without a unit. [`allowed_units`] lists the units it may have.
    NoUnit,
    /// A unit in which this quantity is not measured.
    UnknownUnit {
        /// The unit as written.
        found: String,
    },
    /// A number that is too large, or negative where that is impossible.
    OutOfRange,
}

/// The spellings of a unit and its exact conversion to the base unit:
/// `base = (amount + offset_before) * numerator / denominator`.
struct UnitForm {
    spellings: &'static [&'static str],
    numerator: &'static str,
    denominator: i64,
    offset_before: i64,
}

const fn form(spellings: &'static [&'static str], numerator: &'static str) -> UnitForm {
    UnitForm { spellings, numerator, denominator: 1, offset_before: 0 }
}

/// Returns the forms of a unit, the likeliest first. Messages suggest the first spelling of each.
fn forms(unit: Unit) -> &'static [UnitForm] {
    const AMPERE: &[UnitForm] =
        &[form(&["A", "amp", "amps", "ampere", "amperes"], "1"), form(&["mA", "milliamp", "milliamps"], "0.001")];
    const VOLT: &[UnitForm] = &[
        form(&["V", "volt", "volts", "vac"], "1"),
        form(&["mV", "millivolt", "millivolts"], "0.001"),
        form(&["kV"], "1000"),
    ];
    const WATT: &[UnitForm] =
        &[form(&["W", "watt", "watts"], "1"), form(&["kW", "kilowatt", "kilowatts"], "1000"), form(&["mW"], "0.001")];
    const VOLT_AMPERE: &[UnitForm] = &[form(&["VA"], "1"), form(&["kVA"], "1000")];
    const WATT_HOUR: &[UnitForm] = &[form(&["Wh"], "1"), form(&["kWh"], "1000")];
    const OHM: &[UnitForm] = &[form(&["ohm", "ohms", "Ω"], "1"), form(&["mohm", "mΩ"], "0.001")];
    const METRE: &[UnitForm] = &[
        form(&["ft", "foot", "feet", "'", "′"], "0.3048"),
        form(&["m", "metre", "metres", "meter", "meters"], "1"),
        form(&["in", "inch", "inches", "\"", "″"], "0.0254"),
        form(&["yd", "yard", "yards"], "0.9144"),
        form(&["cm"], "0.01"),
        form(&["mm"], "0.001"),
        form(&["km"], "1000"),
        form(&["mi", "mile", "miles"], "1609.344"),
    ];
    const CELSIUS: &[UnitForm] = &[
        UnitForm { spellings: &["°F", "F", "degF", "fahrenheit"], numerator: "5", denominator: 9, offset_before: -32 },
        form(&["°C", "C", "degC", "celsius"], "1"),
    ];
    const DECIBEL: &[UnitForm] = &[form(&["dBA", "dB(A)", "dB", "decibel", "decibels"], "1")];
    const HOUR: &[UnitForm] = &[
        form(&["h", "hr", "hrs", "hour", "hours"], "1"),
        UnitForm { spellings: &["min", "minute", "minutes"], numerator: "1", denominator: 60, offset_before: 0 },
    ];
    const LITRE: &[UnitForm] = &[
        form(&["gal", "gallon", "gallons"], "3.785411784"),
        form(&["L", "litre", "litres", "liter", "liters"], "1"),
        form(&["mL", "ml"], "0.001"),
        form(&["qt", "quart", "quarts"], "0.946352946"),
    ];
    const PERCENT: &[UnitForm] = &[form(&["%", "percent", "per cent"], "1")];
    const ONE: &[UnitForm] = &[form(&[""], "1")];
    match unit {
        Unit::Ampere => AMPERE,
        Unit::Volt => VOLT,
        Unit::Watt => WATT,
        Unit::VoltAmpere => VOLT_AMPERE,
        Unit::WattHour => WATT_HOUR,
        Unit::Ohm => OHM,
        Unit::Metre => METRE,
        Unit::Celsius => CELSIUS,
        Unit::DecibelA => DECIBEL,
        Unit::Hour => HOUR,
        Unit::Litre => LITRE,
        Unit::Percent => PERCENT,
        Unit::One => ONE,
    }
}

/// Returns the units in which a quantity may be written, in their usual spelling, the likeliest first.
pub fn allowed_units(unit: Unit) -> impl Iterator<Item = &'static str> {
    forms(unit).iter().map(|form| form.spellings[0]).filter(|spelling| !spelling.is_empty())
}

/// The largest amount of any quantity, in base units. Far beyond a camp, and small enough that the sum of thousands
/// fits in 64 bits.
const LARGEST: i64 = 10_000_000;

pub(super) fn parse(text: &str, unit: Unit, scale: u32, round: Round) -> Result<i64, QuantityError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(QuantityError::Empty);
    }
    let (number, rest) = split_number(text)?;
    let written = rest.trim();
    let form = if written.is_empty() {
        match unit {
            Unit::One => &forms(unit)[0],
            _ => return Err(QuantityError::NoUnit),
        }
    } else {
        find_form(unit, written).ok_or_else(|| QuantityError::UnknownUnit { found: written.to_owned() })?
    };
    let factor: Decimal = form.numerator.parse().map_err(|_| QuantityError::OutOfRange)?;
    // The number may be in thousandths of the unit.
    if number.abs() > Decimal::from(LARGEST * 1000) {
        return Err(QuantityError::OutOfRange);
    }
    if number.is_sign_negative() && !number.is_zero() && unit != Unit::Celsius && unit != Unit::Metre {
        return Err(QuantityError::OutOfRange);
    }
    let base = (number + Decimal::from(form.offset_before)) * factor;
    if base.abs() > Decimal::from(LARGEST) * Decimal::from(form.denominator) {
        return Err(QuantityError::OutOfRange);
    }
    let counts = base * Decimal::from(10_i64.pow(scale)) / Decimal::from(form.denominator);
    let counts = match round {
        Round::Up => counts.ceil(),
        Round::Down => counts.floor(),
    };
    counts.to_i64().ok_or(QuantityError::OutOfRange)
}

fn find_form(unit: Unit, written: &str) -> Option<&'static UnitForm> {
    // Case distinguishes mW from MW, so an exact spelling wins. Otherwise case is ignored ("8M", "12 a"), unless two
    // units of the quantity would match or a capital M would stand for milli.
    let exact = forms(unit).iter().find(|form| form.spellings.contains(&written));
    exact.or_else(|| {
        let mut near = forms(unit).iter().filter(|form| form.spellings.iter().any(|s| s.eq_ignore_ascii_case(written)));
        let first = near.next()?;
        let milli = written.starts_with('M') && first.spellings[0].starts_with('m') && written.len() == 2;
        (near.next().is_none() && !milli).then_some(first)
    })
}

/// Splits off a leading number: digits with a decimal point or comma, thousands separated by "," as in "1,440", and
/// fractions ("1/2", "1 1/2").
fn split_number(text: &str) -> Result<(Decimal, &str), QuantityError> {
    let end = text
        .char_indices()
        .find(|&(at, c)| !(c.is_ascii_digit() || matches!(c, '.' | ',') || (at == 0 && matches!(c, '-' | '+' | '−'))))
        .map_or(text.len(), |(at, _)| at);
    let (head, rest) = text.split_at(end);
    let number = decimal(head)?;
    // "1/2" and "1 1/2".
    if let Some(denominator) = rest.strip_prefix('/') {
        let (lower, rest) = whole(denominator)?;
        let number = number.checked_div(lower).ok_or(QuantityError::NoNumber)?;
        return Ok((number, rest));
    }
    if let Ok((upper, after)) = whole(rest.trim_start())
        && let Some(denominator) = after.strip_prefix('/')
    {
        let (lower, rest) = whole(denominator)?;
        let part = upper.checked_div(lower).ok_or(QuantityError::NoNumber)?;
        // In a negative number the fraction counts downward.
        let number = if head.starts_with(['-', '−']) { number.checked_sub(part) } else { number.checked_add(part) };
        return Ok((number.ok_or(QuantityError::OutOfRange)?, rest));
    }
    Ok((number, rest))
}

/// Returns both readings of a number that means one thing to half of the world and another to the rest: "1.500 W" and
/// "1,500 W" are `["1.5 W", "1500 W"]`. `None` if there is only one.
///
/// Each is spelled so that it has a single reading itself: "1.875 W" gives `["1.8750 W", "1875 W"]`. A number has two
/// readings if it has one mark, one to three digits before it and three after it.
#[must_use]
pub fn two_readings(text: &str) -> Option<[String; 2]> {
    let text = text.trim();
    let unsigned = text.trim_start_matches(['-', '+', '−']);
    let sign = &text[..text.len() - unsigned.len()];
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    let (whole, rest) = unsigned.split_once(['.', ','])?;
    let end = rest.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ','))).unwrap_or(rest.len());
    let (three, unit) = rest.split_at(end);
    let two = digits(whole) && whole.len() <= 3 && !whole.starts_with('0') && digits(three) && three.len() == 3;
    two.then(|| {
        let decimals = one_reading(&format!("{whole}.{three}"));
        [format!("{sign}{decimals}{unit}"), format!("{sign}{whole}{three}{unit}")]
    })
}

/// Respells a number that has three decimals with fewer or with one more, so that nobody takes the point for a
/// thousands separator.
#[must_use]
pub fn one_reading(decimals: &str) -> String {
    if decimals.ends_with('0') {
        let decimals = decimals.trim_end_matches('0');
        decimals.trim_end_matches('.').to_owned()
    } else {
        format!("{decimals}0")
    }
}

fn whole(text: &str) -> Result<(Decimal, &str), QuantityError> {
    let end = text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    let (head, rest) = text.split_at(end);
    Ok((plain(head)?, rest))
}

fn decimal(head: &str) -> Result<Decimal, QuantityError> {
    let head = head.replace('−', "-");
    let three = |group: &str| group.len() == 3;
    let digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit());
    let (whole, decimals) = head.split_once('.').map_or((head.as_str(), ""), |(w, d)| (w, d));
    let mut groups = whole.trim_start_matches(['-', '+']).split(',');
    let first = groups.next().unwrap_or_default();
    // "1,440" and "1,440.5" group thousands. "0,5", "12,5" and "1500,000" have decimal commas.
    let grouped = (1..=3).contains(&first.len()) && !first.starts_with('0') && groups.all(three) && digits(decimals);
    match (head.matches(',').count(), head.contains('.')) {
        (0, _) => plain(&head),
        _ if grouped => plain(&head.replace(',', "")),
        (1, false) => plain(&head.replace(',', ".")),
        _ => Err(QuantityError::NoNumber),
    }
}

/// Parses a plain decimal. One too long for the type is reported as out of range, not as no number.
pub(super) fn plain(text: &str) -> Result<Decimal, QuantityError> {
    text.trim_start_matches('+').parse().map_err(|_| {
        let unsigned = text.trim_start_matches(['-', '+']);
        let digits = |part: &str| !part.is_empty() && part.bytes().all(|b| b.is_ascii_digit());
        let number = match unsigned.split_once('.') {
            Some((whole, decimals)) => digits(whole) && digits(decimals),
            None => digits(unsigned),
        };
        if number { QuantityError::OutOfRange } else { QuantityError::NoNumber }
    })
}

#[cfg(test)]
mod tests {
    use super::super::*;

    #[test]
    fn reads_what_people_write() {
        for (text, millimetres) in [
            ("25 ft", 7620),
            ("25ft", 7620),
            ("8m", 8000),
            ("8 M", 8000),
            ("7,5 m", 7500),
            ("1/2 in", 12),
            ("40'", 12192),
        ] {
            assert_eq!(Length::parse(text, Round::Down).map(Length::millimetres), Ok(millimetres), "{text}");
        }
        for (text, milliwatts) in
            [("3.1 kW", 3_100_000), ("1,440 W", 1_440_000), ("2800 watts", 2_800_000), ("1,44 kW", 1_440_000)]
        {
            assert_eq!(Power::parse(text, Round::Up).map(Power::milliwatts), Ok(milliwatts), "{text}");
        }
        assert_eq!(Temperature::parse("95 °F", Round::Up).map(Temperature::millicelsius), Ok(35_000));
        assert_eq!(Hours::parse("90 min", Round::Up).map(Hours::millihours), Ok(1500));
    }

    #[test]
    fn refuses_what_could_mean_two_things() {
        assert_eq!(Power::parse("1500", Round::Up), Err(QuantityError::NoUnit));
        assert_eq!(Power::parse("1500 VA", Round::Up), Err(QuantityError::UnknownUnit { found: "VA".into() }));
        assert_eq!(Current::parse("lots", Round::Up), Err(QuantityError::NoNumber));
        assert_eq!(Current::parse("-3 A", Round::Up), Err(QuantityError::OutOfRange));
        assert_eq!(Power::parse("3 MW", Round::Up), Err(QuantityError::UnknownUnit { found: "MW".into() }));
    }

    #[test]
    fn both_readings_of_a_number_that_has_two() {
        for (text, decimals, thousands) in [
            ("1.500 W", "1.5 W", "1500 W"),
            ("1,500 W", "1.5 W", "1500 W"),
            (" 2,800W ", "2.8W", "2800W"),
            ("12.350 kW", "12.35 kW", "12350 kW"),
            ("100.000 m", "100 m", "100000 m"),
            ("-1.050 m", "-1.05 m", "-1050 m"),
            ("1.500", "1.5", "1500"),
            ("1.234 kW", "1.2340 kW", "1234 kW"),
            ("1,234 W", "1.2340 W", "1234 W"),
            ("6,096 m", "6.0960 m", "6096 m"),
        ] {
            let readings = [decimals, thousands].map(str::to_owned);
            assert_eq!(two_readings(text), Some(readings), "{text}");
        }
        for text in [
            "1.5 W",
            "1.50 W",
            "1.5000 W",
            "0.500 A",
            "0,500 A",
            "1500 W",
            "1500.000 W",
            "1.2340 kW",
            "1,500.5 W",
            "1.500,5 W",
            "1,500,000 mW",
            ".500 A",
            "1/2 in",
            "W 1.500",
            "1.50é",
            "",
        ] {
            assert_eq!(two_readings(text), None, "{text}");
        }
    }

    #[test]
    fn numbers_of_any_size_are_refused_and_not_fallen_over() {
        for text in [
            "79228162514264337593543950335 1/1 W",
            "79228162514264337593543950336 W",
            "99999999999999999999999999999999999999 W",
            "1/99999999999999999999999999999999999999 W",
            "1 1/99999999999999999999999999999999999999 W",
        ] {
            assert_eq!(Power::parse(text, Round::Up), Err(QuantityError::OutOfRange), "{text}");
        }
    }

    #[test]
    fn a_fraction_goes_the_way_of_its_sign() {
        for (text, millicelsius) in [("-1 1/2 °C", -1500), ("−1/2 °C", -500), ("-0 1/2 °C", -500), ("1 1/2 °C", 1500)]
        {
            let read = Temperature::parse(text, Round::Up).map(Temperature::millicelsius);
            assert_eq!(read, Ok(millicelsius), "{text}");
        }
    }

    #[test]
    fn a_comma_groups_thousands_only_behind_one_to_three_digits() {
        for (text, milliwatts) in [
            ("1500,000 W", Ok(1_500_000)),
            (",914 W", Ok(914)),
            ("12,500 W", Ok(12_500_000)),
            ("1.5,000 W", Err(QuantityError::NoNumber)),
            ("1500,000,000 mW", Err(QuantityError::NoNumber)),
        ] {
            let read = Power::parse(text, Round::Up).map(Power::milliwatts);
            assert_eq!(read, milliwatts, "{text}");
        }
    }

    #[test]
    fn rounds_the_cautious_way() {
        assert_eq!(Length::parse("1 in", Round::Up).map(Length::millimetres), Ok(26));
        assert_eq!(Length::parse("1 in", Round::Down).map(Length::millimetres), Ok(25));
    }
}

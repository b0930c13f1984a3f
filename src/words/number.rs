//! Formats numbers and units for the reader.

use fixed_decimal::Decimal as Digits;
use icu_decimal::DecimalFormatter;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use rust_decimal::{Decimal, RoundingStrategy};

use unic_langid::LanguageIdentifier;

use crate::plan::Span;
use crate::quantity::{Amount, Unit, Wire};
use crate::tables::conductor::CONDUCTORS;

/// How capacity is rounded.
const DOWN: RoundingStrategy = RoundingStrategy::ToNegativeInfinity;

/// Meters per foot.
const FOOT: Decimal = Decimal::from_parts(3048, 0, 0, false, 4);

/// How an amount is rounded for display. The core itself never rounds for display.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Show {
    /// To the nearest, with up to two decimals, or four for ohms.
    Exact,
    /// Few digits, never more than the amount: for what a part can carry.
    Capacity,
    /// Few digits, never less than the amount: for what a load demands.
    Demand,
    /// As many digits as [`Self::Exact`], never more than the amount: for an actual distance. If the distance is a
    /// whole number of feet, a metric reader gets one digit less, since nobody measured 15.24 m.
    AtMost,
    /// One decimal, never less than the amount: for a required distance. A requirement reads the same everywhere: 25 ft
    /// is 7.7 m.
    AtLeast,
}

/// The system of units.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Units {
    /// Feet, gallons, degrees Fahrenheit.
    #[default]
    Customary,
    /// Meters, liters, degrees Celsius.
    Metric,
}

impl Units {
    /// Returns the units used in the reader's region. By the Unicode locale data, the United States, Liberia and
    /// Myanmar have not adopted the metric system (from memory, not verified). Without a region, the rules' own region
    /// decides, which is North America.
    #[must_use]
    pub fn of(reader: &LanguageIdentifier) -> Self {
        match reader.region.as_ref().map(unic_langid::subtags::Region::as_str) {
            None | Some("US" | "LR" | "MM") => Self::Customary,
            Some(_) => Self::Metric,
        }
    }

    /// Whether these readers use the unit. Neither kind is shown the other's feet or meters.
    pub(super) fn include(self, unit: &str) -> bool {
        let others: &[&str] = match self {
            Self::Customary => &["m", "cm", "mm", "km", "°C", "L", "mL"],
            Self::Metric => &["ft", "in", "yd", "mi", "°F", "gal", "qt"],
        };
        !others.contains(&unit)
    }

    /// The name of the case of `{ $measure }` in a message.
    pub(super) const fn name(self) -> &'static str {
        match self {
            Self::Customary => "customary",
            Self::Metric => "metric",
        }
    }
}

pub(super) struct Numbers {
    formatter: Option<DecimalFormatter>,
    units: Units,
    /// Whether the reader writes percentages and times of day as Americans do.
    american: bool,
}

impl Numbers {
    pub(super) fn new(language: &str, units: Units) -> Self {
        let formatter = |options| {
            let locale = language.parse::<icu_locale_core::Locale>().ok()?;
            DecimalFormatter::try_new(locale.into(), options).ok()
        };
        let mut numbers = Self {
            formatter: formatter(DecimalFormatterOptions::default()),
            units,
            american: language.starts_with("en"),
        };
        if numbers.decimal_mark() != '.' {
            // Guests read labels too, and some of them would read "2.309 W" as two watts. So nothing separates
            // thousands where it could pass for a decimal mark.
            let mut options = DecimalFormatterOptions::default();
            options.grouping_strategy = Some(GroupingStrategy::Never);
            numbers.formatter = formatter(options);
        }
        numbers
    }

    pub(super) const fn units(&self) -> Units {
        self.units
    }

    /// Returns the reader's decimal mark.
    pub(super) fn decimal_mark(&self) -> char {
        self.digits(Decimal::new(5, 1)).chars().find(|sign| !sign.is_alphanumeric()).unwrap_or('.')
    }

    /// Returns an amount converted to the reader's unit and rounded for display, with the unit.
    pub(super) fn shown(&self, amount: Amount, show: Show) -> (Decimal, &'static str) {
        let (number, unit) = self.in_reader_units(amount);
        let places = match (unit, show) {
            ("m", Show::AtMost) if whole_feet(amount.amount) => 1,
            _ => places(unit, show),
        };
        let strategy = match show {
            Show::Exact => RoundingStrategy::MidpointNearestEven,
            Show::Capacity | Show::AtMost => DOWN,
            Show::Demand | Show::AtLeast => RoundingStrategy::ToPositiveInfinity,
        };
        let mut rounded = number.round_dp_with_strategy(places, strategy);
        if show == Show::AtMost && unit == "ft" {
            rounded = as_typed(amount.amount, rounded, places);
        }
        (rounded.normalize(), unit)
    }

    pub(super) fn amount(&self, amount: Amount, show: Show) -> String {
        let (number, unit) = self.shown(amount, show);
        let digits = self.digits(number);
        match unit {
            "" => digits,
            // Percent and degree signs follow the International System, with a no-break space so that a number never
            // gets separated from its unit at the end of a line. In English, the percent sign directly follows the
            // number.
            "%" if self.american => format!("{digits}%"),
            _ => format!("{digits}\u{a0}{unit}"),
        }
    }

    /// Formats a minute of the day, on a 12-hour clock or as in plan files. The caller adds AM or PM.
    pub(super) fn clock(&self, minute: u16) -> String {
        let (hour, minutes) = (minute / 60, minute % 60);
        match (self.american, (hour + 11) % 12 + 1) {
            (true, hour) if minutes == 0 => hour.to_string(),
            (true, hour) => format!("{hour}:{minutes:02}"),
            (false, _) => Span::clock(minute),
        }
    }

    /// Formats a marked wire size. The marking is what is printed on the cord, so it stays. A metric reader also gets
    /// its cross-section.
    pub(super) fn wire(&self, wire: Wire) -> String {
        let area = match (wire, self.units) {
            (Wire::Awg(gauge), Units::Metric) => {
                let mut sections = CONDUCTORS.section.iter();
                sections.find(|(marked, _)| *marked == gauge)
            }
            _ => None,
        };
        match area {
            Some((_, thousandths)) => {
                let area = Decimal::new(*thousandths, 3).round_dp_with_strategy(1, DOWN);
                let area = self.digits(area);
                format!("{wire} ({area}\u{a0}mm²)")
            }
            None => wire.to_string(),
        }
    }

    pub(super) fn digits(&self, number: Decimal) -> String {
        let plain = number.to_string();
        match (&self.formatter, Digits::try_from_str(&plain)) {
            (Some(formatter), Ok(digits)) => formatter.format(&digits).to_string(),
            _ => plain,
        }
    }

    fn in_reader_units(&self, amount: Amount) -> (Decimal, &'static str) {
        let customary = self.units == Units::Customary;
        let number = amount.amount;
        match amount.unit {
            Unit::Metre if customary => (number / FOOT, "ft"),
            Unit::Litre if customary => (number / Decimal::new(3_785_411_784, 9), "gal"),
            Unit::Celsius if customary => (number * Decimal::from(9) / Decimal::from(5) + Decimal::from(32), "°F"),
            Unit::Celsius => (number, "°C"),
            // Devices state leakage and GFCI trip currents in milliamps.
            Unit::Ampere if !number.is_zero() && number.abs() < SMALL_AMPS => (number * Decimal::ONE_THOUSAND, "mA"),
            Unit::Ohm => (number, "Ω"),
            Unit::One => (number, ""),
            unit => (number, unit.code()),
        }
    }
}

/// Currents below this are shown in milliamps. With one decimal in amps, they would show as zero or as twice the value.
const SMALL_AMPS: Decimal = Decimal::from_parts(5, 0, 0, false, 2);

/// The number of decimals shown. Fewer than an instrument shows would hide a margin, and more would pretend to
/// precision.
fn places(unit: &str, show: Show) -> u32 {
    match (unit, show) {
        ("W" | "VA" | "Wh" | "dBA" | "°F" | "°C" | "ft" | "mA", Show::Capacity | Show::Demand) => 0,
        ("Ω", _) => 4,
        ("W" | "VA" | "Wh" | "dBA" | "°F" | "°C" | "ft" | "V" | "%" | "h", _)
        | (_, Show::Capacity | Show::Demand)
        | ("m", Show::AtLeast) => 1,
        (_, Show::Exact | Show::AtMost | Show::AtLeast) => 2,
    }
}

/// Whether the distance is a whole number of feet. Lengths are kept in whole millimeters.
fn whole_feet(metres: Decimal) -> bool {
    let feet = (metres / FOOT).round_dp_with_strategy(0, RoundingStrategy::ToPositiveInfinity);
    (feet * FOOT).round_dp_with_strategy(3, DOWN) == metres
}

/// Corrects a number of feet that was rounded down: one digit up, if that still reads as no more than these meters.
/// 19.9 ft is kept as 6.065 m and must not show as 19.8. Lengths are kept in whole millimeters.
fn as_typed(metres: Decimal, feet: Decimal, places: u32) -> Decimal {
    let up = feet + Decimal::new(1, places);
    let reads = (up * FOOT).round_dp_with_strategy(3, DOWN);
    if reads <= metres { up } else { feet }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 3.31 mm² and 1.31 mm²: ASTM B258 (from memory, not verified).
    #[test]
    fn a_gauge_has_its_cross_section_for_a_metric_reader() {
        let shown = |tag, units, wire| Numbers::new(tag, units).wire(wire);
        assert_eq!(shown("en-US", Units::Customary, Wire::Awg(12)), "12 AWG");
        assert_eq!(shown("de-DE", Units::Metric, Wire::Awg(12)), "12 AWG (3,3\u{a0}mm²)");
        assert_eq!(shown("fr-CA", Units::Metric, Wire::Awg(16)), "16 AWG (1,3\u{a0}mm²)");
        assert_eq!(shown("de-DE", Units::Metric, Wire::Awg(3)), "3 AWG");
        assert_eq!(shown("de-DE", Units::Metric, Wire::Area(2500)), "2.5 mm²");
    }

    /// Number formats by the Unicode locale data (from memory, not verified): a decimal point in the United States,
    /// Mexico and Switzerland, a comma in Spain, France, French Canada and Germany. Thousands are separated only where
    /// the decimal mark is a point.
    #[test]
    fn marks_of_numbers_by_language_and_region() {
        for (tag, shown) in [
            ("en-US", "2,309.5\u{a0}W"),
            ("es-US", "2,309.5\u{a0}W"),
            ("es-MX", "2,309.5\u{a0}W"),
            ("es-ES", "2309,5\u{a0}W"),
            ("fr-CA", "2309,5\u{a0}W"),
            ("fr-FR", "2309,5\u{a0}W"),
            ("de-DE", "2309,5\u{a0}W"),
            ("de-CH", "2'309.5\u{a0}W"),
        ] {
            let numbers = Numbers::new(tag, Units::Metric);
            let watts = Amount { amount: Decimal::new(23095, 1), unit: Unit::Watt };
            assert_eq!(numbers.amount(watts, Show::Exact), shown, "{tag}");
            let mark = if shown.contains(",5") { ',' } else { '.' };
            assert_eq!(numbers.decimal_mark(), mark, "{tag}");
        }
    }

    /// A class A GFCI trips at 6 mA and not below 4 mA (NEC article 100).
    #[test]
    fn small_currents_are_told_in_milliamps() {
        let numbers = Numbers::new("en-US", Units::Customary);
        for (milliamps, show, shown) in [
            (0, Show::Exact, "0\u{a0}A"),
            (5, Show::Exact, "5\u{a0}mA"),
            (6, Show::Demand, "6\u{a0}mA"),
            (49, Show::Capacity, "49\u{a0}mA"),
            (50, Show::Exact, "0.05\u{a0}A"),
            (12_500, Show::Exact, "12.5\u{a0}A"),
        ] {
            let amount = Amount { amount: Decimal::new(milliamps, 3), unit: Unit::Ampere };
            assert_eq!(numbers.amount(amount, show), shown, "{milliamps} mA");
        }
    }

    /// 20 ft is 6.096 m (the international foot, 0.3048 m). An actual distance never shows as more, a required one
    /// never as less, and what somebody typed shows as it was typed.
    #[test]
    fn a_distance_as_it_is_never_looks_like_the_distance_it_must_be() {
        let metre = |millimetres: i64| Amount { amount: Decimal::new(millimetres, 3), unit: Unit::Metre };
        let feet = Numbers::new("en-US", Units::Customary);
        for (millimetres, show, shown) in [
            (6_092, Show::AtMost, "19.9\u{a0}ft"),
            (6_095, Show::AtMost, "19.9\u{a0}ft"),
            (6_096, Show::AtMost, "20\u{a0}ft"),
            (6_096, Show::AtLeast, "20\u{a0}ft"),
            (6_097, Show::AtLeast, "20.1\u{a0}ft"),
            // 19.9 ft, rounded down, and 24 ft, rounded up.
            (6_065, Show::AtMost, "19.9\u{a0}ft"),
            (7_316, Show::AtMost, "24\u{a0}ft"),
            // 4 ft, kept one millimeter short.
            (1_219, Show::AtLeast, "4\u{a0}ft"),
        ] {
            assert_eq!(feet.amount(metre(millimetres), show), shown, "{millimetres} mm");
        }
        let metres = Numbers::new("de-DE", Units::Metric);
        for (millimetres, show, shown) in [
            (6_097, Show::AtMost, "6,09\u{a0}m"),
            (6_096, Show::AtLeast, "6,1\u{a0}m"),
            // 20, 50 and 75 ft, and one that was typed in meters.
            (6_096, Show::AtMost, "6\u{a0}m"),
            (15_240, Show::AtMost, "15,2\u{a0}m"),
            (22_860, Show::AtMost, "22,8\u{a0}m"),
            (7_650, Show::AtMost, "7,65\u{a0}m"),
        ] {
            assert_eq!(metres.amount(metre(millimetres), show), shown);
        }
        // One millimeter short of every distance that may be required.
        for numbers in [feet, metres] {
            for must in 500..9_000 {
                let wanted = numbers.amount(metre(must), Show::AtLeast);
                let short = numbers.amount(metre(must - 1), Show::AtMost);
                assert_ne!(short, wanted, "{must} mm");
            }
        }
    }

    #[test]
    fn a_distance_that_must_be_kept_has_one_figure() {
        use crate::tables::exhaust::{AMPLE, CLEAR, LEAST};
        let shown = |tag, units| {
            let numbers = Numbers::new(tag, units);
            [LEAST, AMPLE, CLEAR].map(|length| numbers.amount(length.into(), Show::AtLeast))
        };
        assert_eq!(shown("en-US", Units::Customary), ["20\u{a0}ft", "25\u{a0}ft", "4\u{a0}ft"]);
        assert_eq!(shown("fr-CA", Units::Metric), ["6,1\u{a0}m", "7,7\u{a0}m", "1,3\u{a0}m"]);
    }

    #[test]
    fn units_by_region() {
        for (tag, units) in [
            ("en", Units::Customary),
            ("es-US", Units::Customary),
            ("es-MX", Units::Metric),
            ("fr-CA", Units::Metric),
            ("de-DE", Units::Metric),
        ] {
            let tag: LanguageIdentifier = tag.parse().expect("a tag");
            assert_eq!(Units::of(&tag), units, "{tag}");
        }
    }
}

//! How much power a generator keeps in thin or hot air.

use std::sync::LazyLock;

use rust_decimal::Decimal;
use serde::Deserialize;

use super::data::{self, Cited};
use super::source::Source;
use crate::quantity::{Length, Percent, Power, Quantity, Round, Temperature, narrow};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    formula: MethodText,
    rule_of_thumb: MethodText,
    propane: PropaneText,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct PropaneText {
    source: Cited,
    percent: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct MethodText {
    source: Cited,
    altitude: LineText,
    air: LineText,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct LineText {
    percent: String,
    per: String,
    above: String,
}

/// A figure as it is shown: a number and its unit.
pub type Told = (Decimal, &'static str);

/// A linear loss above a reference: `millipercent` thousandths of a percent for every `per` counts above `above`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Line {
    millipercent: i64,
    per: i64,
    above: i64,
    /// The figures as shown: the loss in percent, the step and the reference.
    pub told: (Decimal, Told, Told),
}

impl Line {
    /// Reads a line. `counts` converts a text to counts, both as a difference and as a position.
    fn read(text: LineText, counts: impl Fn(&'static str) -> (i64, i64)) -> Self {
        let (per, above): (&'static str, &'static str) = (text.per.leak(), text.above.leak());
        let percent = text.percent.parse().expect("a number of the table");
        Self {
            millipercent: data::count(&text.percent, 3),
            per: counts(per).0,
            above: counts(above).1,
            told: (percent, told(per), told(above)),
        }
    }

    /// Reads a line over altitude, in millimeters.
    fn of_height(text: LineText) -> Self {
        Self::read(text, |text| {
            let height = Length::parse(text, Round::Up).expect("a height of the table");
            (height.millimetres(), height.millimetres())
        })
    }

    /// Reads a line over temperature, in ninths of a thousandth of a degree Celsius.
    fn of_degrees(text: LineText) -> Self {
        Self::read(text, |text| {
            let there = Temperature::parse(text, Round::Up).expect("degrees of the table");
            // A difference counts from the zero of its own scale.
            let (_, unit) = told(text);
            let zero = Temperature::parse(&format!("0 {unit}"), Round::Up).expect("a scale");
            (there.ninths() - zero.ninths(), there.ninths())
        })
    }

    /// Returns the loss in millionths of a percent, rounded up. Below the reference there is neither loss nor gain.
    fn loss(self, at: i64) -> i128 {
        let over = i128::from((at - self.above).max(0));
        let per = i128::from(self.per);
        (over * i128::from(self.millipercent) * 1000 + per - 1) / per
    }
}

/// Splits a figure of the table into number and unit.
fn told(text: &'static str) -> Told {
    let (number, unit) = text.split_once(' ').expect("a unit of the table");
    (number.parse().expect("a number of the table"), unit)
}

/// A method to compute the loss.
#[derive(Clone, Copy, Debug)]
pub struct Method {
    /// Its source.
    pub source: Source,
    /// The loss to altitude.
    pub altitude: Line,
    /// The loss to air temperature.
    pub air: Line,
}

impl Method {
    /// Returns the power that is left at this altitude and air temperature, rounded down.
    #[must_use]
    pub fn left(&self, power: Power, altitude: Length, air: Temperature) -> Power {
        const WHOLE: i128 = 100_000_000;
        let loss = self.altitude.loss(altitude.millimetres()) + self.air.loss(air.ninths());
        let left = (WHOLE - loss).max(0);
        Power::from_milliwatts(narrow(i128::from(power.milliwatts()) * left / WHOLE))
    }

    /// Returns the losses to altitude and to air temperature, each rounded up, for readers who check the arithmetic.
    #[must_use]
    pub fn losses(&self, altitude: Length, air: Temperature) -> [Percent; 2] {
        [self.altitude.loss(altitude.millimetres()), self.air.loss(air.ninths())]
            .map(|loss| Percent::from_millipercent(narrow((loss + 999) / 1000)))
    }
}

impl From<MethodText> for Method {
    fn from(text: MethodText) -> Self {
        Self { source: text.source.into(), altitude: Line::of_height(text.altitude), air: Line::of_degrees(text.air) }
    }
}

/// The derating methods.
#[derive(Clone, Copy, Debug)]
pub struct Methods {
    /// The formula of a published manual.
    pub formula: Method,
    /// The rule of thumb of the trade.
    pub rule_of_thumb: Method,
    /// The source of the share on propane.
    pub propane_source: Source,
    /// The share left on propane, in thousandths of a percent.
    propane: i64,
}

/// The methods, read once.
pub static METHODS: LazyLock<Methods> = LazyLock::new(|| {
    let file: File = data::read("derating.toml", include_str!("derating.toml"));
    Methods {
        formula: file.formula.into(),
        rule_of_thumb: file.rule_of_thumb.into(),
        propane_source: file.propane.source.into(),
        propane: data::count(&file.propane.percent, 3),
    }
});

/// Returns the power that is left by the more cautious method.
#[must_use]
pub fn left(power: Power, altitude: Length, air: Temperature) -> Power {
    METHODS.formula.left(power, altitude, air).min(METHODS.rule_of_thumb.left(power, altitude, air))
}

/// Returns the power left on propane of a power rated on gasoline, rounded down.
#[must_use]
pub fn on_propane(power: Power) -> Power {
    Power::from_milliwatts(narrow(i128::from(power.milliwatts()) * i128::from(METHODS.propane) / 100_000))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::bounds;

    fn at(metres: i64, celsius: i64) -> (Length, Temperature) {
        (Length::from_millimetres(metres * 1000), Temperature::from_millicelsius(celsius * 1000))
    }

    #[test]
    fn two_kilowatts_at_2000_m_and_40_degrees() {
        // US Army TM 9-6115-673-13&P table 2-3: 1766.9 W.
        let (altitude, air) = at(2000, 40);
        let power = Power::from_milliwatts(2_000_000);
        let left_by_formula = METHODS.formula.left(power, altitude, air).milliwatts();
        assert_eq!(left_by_formula / 100, 17_669);
        // The rule of thumb takes more here: 6562 ft x 3.5 % = 22.97 %, 44 °F x 0.1 = 4.4 %.
        let cautious = left(power, altitude, air).milliwatts();
        assert!(cautious < left_by_formula);
        assert_eq!(cautious / 1_000, 1452);
    }

    #[test]
    fn the_losses_are_those_of_the_table() {
        // US Army TM 9-6115-673-13&P table 2-3, at 2000 m and 40 °C: (2000 - 1219) / 100 x 1.3 % and (40 - 35) / 10 x
        // 3 %.
        let (altitude, air) = at(2000, 40);
        let losses = METHODS.formula.losses(altitude, air);
        assert_eq!(losses.map(Percent::millipercent), [10_153, 1_500]);
    }

    #[test]
    fn nothing_is_lost_at_the_reference_and_nothing_ever_gained() {
        let power = Power::from_milliwatts(2_800_000);
        for (metres, celsius) in [(0, 15), (-50, -10)] {
            let (altitude, air) = at(metres, celsius);
            assert_eq!(left(power, altitude, air), power);
        }
        let (altitude, air) = at(1219, 35);
        assert_eq!(METHODS.formula.left(power, altitude, air), power);
        let (altitude, air) = at(9000, 60);
        assert!(left(power, altitude, air).milliwatts() >= 0);
    }

    /// Any published reference, typed in any unit, leaves all of the power. 59 °F and 15 °C are the standard day of
    /// ISO 2533, manufacturers rate at 60, 77 and 86 °F, and 4000 ft and 1219 m are the Army manual's. Each method is
    /// tested alone, up to its own reference.
    #[test]
    fn no_reference_point_shaves_a_rating() {
        let read_height = |text: &str| bounds::ALTITUDE.read(text).expect("a height");
        let read_air = |text: &str| bounds::AIR.read(text).expect("degrees");
        let thumb = (
            &METHODS.rule_of_thumb,
            ["0 ft", "0 m", "-10 ft", "-280 ft", "-86 m"].as_slice(),
            ["-40 °F", "32 °F", "0 °C", "59 °F", "15 °C", "15.5 °C", "60 °F", "60 F"].as_slice(),
        );
        let formula = (
            &METHODS.formula,
            ["0 ft", "0 m", "500 ft", "150 m", "1000 ft", "300 m", "1000 m", "3000 ft", "3999 ft", "1219 m"].as_slice(),
            ["59 °F", "15 °C", "60 °F", "77 °F", "25 °C", "86 °F", "30 °C", "95 °F", "35 °C"].as_slice(),
        );
        for (method, heights, airs) in [thumb, formula] {
            for height in heights {
                for air in airs {
                    for watts in [700_000, 999_999, 1_800_000, 3_000_000, 12_345_678] {
                        let power = Power::from_milliwatts(watts);
                        let left = method.left(power, read_height(height), read_air(air));
                        assert_eq!(left, power, "{height}, {air}");
                    }
                }
            }
            // A tenth of a degree or a foot above the reference counts as above.
            let power = Power::from_milliwatts(3_000_000);
            let (height, air) = (heights[0], airs[0]);
            let hotter = Temperature::from_millicelsius(35_056);
            assert!(method.left(power, read_height(height), hotter) < power);
            assert!(method.left(power, read_height("4004 ft"), read_air(air)) < power);
        }
        let air =
            |text: &str| METHODS.rule_of_thumb.left(Power::from_milliwatts(3_000_000), Length::ZERO, read_air(text));
        assert_eq!(air("60.1 °F").milliwatts(), 2_999_700);
    }

    /// 88 °F is 28 °F above 60 °F, which takes 2.8 %; 4,200 ft takes 14.7 %. That leaves exactly 2310 W of 2800 W. No
    /// decimal in degrees Celsius equals 88 °F, and it must not be rounded up.
    #[test]
    fn degrees_fahrenheit_are_held_for_what_they_are() {
        let altitude = bounds::ALTITUDE.read("4200 ft").expect("a height");
        let air = bounds::AIR.read("88 °F").expect("degrees");
        let power = Power::from_milliwatts(2_800_000);
        assert_eq!(left(power, altitude, air).milliwatts(), 2_310_000);
    }
}

//! How much of its power a set keeps in thin or hot air.

use std::sync::LazyLock;

use serde::Deserialize;

use super::data::{self, Cited};
use super::source::Source;
use crate::quantity::{Length, Percent, Power, Temperature, narrow};

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
    altitude: AltitudeText,
    air: AirText,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AltitudeText {
    percent: String,
    per_metres: String,
    above_metres: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AirText {
    percent: String,
    per_degrees: String,
    above_celsius: String,
}

/// A straight-line loss: so many thousandths of a per cent per so many counts above a
/// reference.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Line {
    millipercent: i64,
    per: i64,
    above: i64,
}

impl Line {
    /// Loss in millionths of a per cent, rounded up. Below the reference none, and no gain.
    fn loss(self, at: i64) -> i128 {
        let over = i128::from((at - self.above).max(0));
        let per = i128::from(self.per);
        (over * i128::from(self.millipercent) * 1000 + per - 1) / per
    }
}

/// One way to reckon the loss.
#[derive(Clone, Copy, Debug)]
pub struct Method {
    /// Where it comes from.
    pub source: Source,
    altitude: Line,
    air: Line,
}

impl Method {
    /// What is left of a power at this altitude and air, rounded down.
    #[must_use]
    pub fn left(&self, power: Power, altitude: Length, air: Temperature) -> Power {
        const WHOLE: i128 = 100_000_000;
        let loss = self.altitude.loss(altitude.millimetres()) + self.air.loss(air.millicelsius());
        let left = (WHOLE - loss).max(0);
        Power::from_milliwatts(narrow(i128::from(power.milliwatts()) * left / WHOLE))
    }
}

impl Method {
    /// What is lost to altitude and to air, for a reader who works it out again: each rounded up.
    #[must_use]
    pub fn losses(&self, altitude: Length, air: Temperature) -> [Percent; 2] {
        [
            self.altitude.loss(altitude.millimetres()),
            self.air.loss(air.millicelsius()),
        ]
        .map(|loss| Percent::from_millipercent(narrow((loss + 999) / 1000)))
    }

    /// The figures, for a reader who works it out again: for altitude and then for air, the loss
    /// in thousandths of a per cent, for each so much, above so much (millimetres; thousandths of
    /// a degree Celsius).
    #[must_use]
    pub const fn lines(&self) -> [(i64, i64, i64); 2] {
        [
            (
                self.altitude.millipercent,
                self.altitude.per,
                self.altitude.above,
            ),
            (self.air.millipercent, self.air.per, self.air.above),
        ]
    }
}

impl From<MethodText> for Method {
    fn from(text: MethodText) -> Self {
        Self {
            source: text.source.into(),
            altitude: Line {
                millipercent: data::count(&text.altitude.percent, 3),
                per: data::count(&text.altitude.per_metres, 3),
                above: data::count(&text.altitude.above_metres, 3),
            },
            air: Line {
                millipercent: data::count(&text.air.percent, 3),
                per: data::count(&text.air.per_degrees, 3),
                above: data::count(&text.air.above_celsius, 3),
            },
        }
    }
}

/// Both ways.
#[derive(Clone, Copy, Debug)]
pub struct Methods {
    /// The formula of a published manual.
    pub formula: Method,
    /// What the trade says.
    pub rule_of_thumb: Method,
    /// Where the share on propane comes from.
    pub propane_source: Source,
    /// Thousandths of a per cent that are left on propane.
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

/// What is left of a power by the more cautious of the methods.
#[must_use]
pub fn left(power: Power, altitude: Length, air: Temperature) -> Power {
    METHODS
        .formula
        .left(power, altitude, air)
        .min(METHODS.rule_of_thumb.left(power, altitude, air))
}

/// What is left on propane of a power that is given for gasoline, rounded down.
#[must_use]
pub fn on_propane(power: Power) -> Power {
    Power::from_milliwatts(narrow(
        i128::from(power.milliwatts()) * i128::from(METHODS.propane) / 100_000,
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(metres: i64, celsius: i64) -> (Length, Temperature) {
        (
            Length::from_millimetres(metres * 1000),
            Temperature::from_millicelsius(celsius * 1000),
        )
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
        // US Army TM 9-6115-673-13&P table 2-3, at 2000 m and 40 °C: (2000 - 1219) / 100 x 1.3 % and
        // (40 - 35) / 10 x 3 %.
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
}

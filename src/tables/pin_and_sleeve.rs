//! Pin-and-sleeve configurations of IEC 60309-2, for regions to come.
//!
//! They are apart from [`super::shape`], whose shapes a plan of today may name: their voltages are
//! those of other regions, and nothing here reckons with three phases yet.

use std::sync::LazyLock;

use serde::Deserialize;

use super::data::{self, Rows};
use super::source::Source;
use crate::quantity::{Current, Voltage};

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct RowText {
    amps: i64,
    least_volts: i64,
    most_volts: i64,
    poles: String,
    wires: u8,
    earth: u8,
    colour: String,
}

/// One configuration.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PinAndSleeve {
    /// Rated current.
    pub rating: Current,
    /// Rated voltage between its conductors, from and to.
    pub volts: (Voltage, Voltage),
    /// Its poles as the trade writes them: `2P+E`.
    pub poles: String,
    /// How many conductors it has, earth included.
    pub wires: u8,
    /// Where its earth contact stands, hours on a clock face with the keyway at 6.
    pub earth: u8,
    /// The colour of its housing, which says the voltage.
    pub colour: String,
}

/// All of them, by voltage and current.
pub static PIN_AND_SLEEVE: LazyLock<(Source, Vec<PinAndSleeve>)> = LazyLock::new(|| {
    let file: Rows<RowText> = data::read("pin_and_sleeve.toml", include_str!("pin_and_sleeve.toml"));
    let row = |row: RowText| PinAndSleeve {
        rating: Current::from_milliamps(row.amps * 1000),
        volts: (Voltage::from_millivolts(row.least_volts * 1000), Voltage::from_millivolts(row.most_volts * 1000)),
        poles: row.poles,
        wires: row.wires,
        earth: row.earth,
        colour: row.colour,
    };
    (file.source.into(), file.rows.into_iter().map(row).collect())
});

#[cfg(test)]
mod tests {
    use super::*;

    /// IEC 60309-2, from secondary copies: yellow 100 to 130 V with earth at 4 h, blue 200 to 250 V at
    /// 6 h, red 380 to 415 V at 6 h. What the poles are called says how many wires there are.
    #[test]
    fn colour_voltage_and_earth_go_together() {
        let (_, rows) = &*PIN_AND_SLEEVE;
        assert_eq!(rows.len(), 8);
        for row in rows {
            let (least, most, earth) = match row.colour.as_str() {
                "yellow" => (100, 130, 4),
                "blue" => (200, 250, 6),
                "red" => (380, 415, 6),
                other => panic!("{other}"),
            };
            assert_eq!(row.volts.0.millivolts(), least * 1000, "{row:?}");
            assert_eq!(row.volts.1.millivolts(), most * 1000, "{row:?}");
            assert_eq!(row.earth, earth, "{row:?}");
            let wires = match row.poles.as_str() {
                "2P+E" => 3,
                "3P+E" => 4,
                "3P+N+E" => 5,
                other => panic!("{other}"),
            };
            assert_eq!(row.wires, wires, "{row:?}");
            assert!([16_000, 32_000].contains(&row.rating.milliamps()));
        }
    }

    /// No two of the same current take each other's plug: poles, earth or colour differ.
    #[test]
    fn each_fits_only_its_own() {
        let (_, rows) = &*PIN_AND_SLEEVE;
        for (at, one) in rows.iter().enumerate() {
            for other in &rows[at + 1..] {
                let alike = (one.rating, one.earth, one.wires) == (other.rating, other.earth, other.wires);
                assert!(!alike, "{one:?} {other:?}");
            }
        }
    }
}

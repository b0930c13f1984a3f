//! Resistance of copper conductors at working temperature.

use std::sync::LazyLock;

use serde::Deserialize;

use super::data::{self, Rows};
use super::source::Source;
use crate::quantity::{Current, Length, Resistance, Voltage, Wire, narrow};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    awg: Rows<AwgText>,
    area: Rows<AreaText>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AwgText {
    gauge: i8,
    stranded: String,
    solid: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AreaText {
    area: String,
    ohm: String,
}

/// A row of NEC chapter 9 table 8, at 75 °C.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AwgRow {
    /// American wire gauge.
    pub gauge: i8,
    /// Stranded: micro-ohms per 1000 ft.
    pub stranded: i64,
    /// Solid: micro-ohms per 1000 ft, for gauges that are made solid.
    pub solid: Option<i64>,
}

/// A row of IEC 60228 class 5, at 20 °C.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AreaRow {
    /// The cross-section in thousandths of a square millimeter.
    pub area: i32,
    /// The greatest resistance, in micro-ohms per km at 20 °C.
    pub ohm: i64,
}

/// The resistance tables.
#[derive(Debug)]
pub struct Copper {
    /// By gauge, thinnest first.
    pub awg: Vec<AwgRow>,
    /// The source of `awg`.
    pub awg_source: Source,
    /// By area, thinnest first.
    pub area: Vec<AreaRow>,
    /// The source of `area`.
    pub area_source: Source,
}

/// The tables, read once.
pub static COPPER: LazyLock<Copper> = LazyLock::new(|| {
    let file: File = data::read("copper.toml", include_str!("copper.toml"));
    Copper {
        awg: file
            .awg
            .rows
            .iter()
            .map(|row| AwgRow {
                gauge: row.gauge,
                stranded: data::count(&row.stranded, 6),
                solid: row.solid.as_deref().map(|text| data::count(text, 6)),
            })
            .collect(),
        awg_source: file.awg.source.into(),
        area: file
            .area
            .rows
            .iter()
            .map(|row| AreaRow { area: narrow_area(data::count(&row.area, 3)), ohm: data::count(&row.ohm, 6) })
            .collect(),
        area_source: file.area.source.into(),
    }
});

fn narrow_area(area: i64) -> i32 {
    i32::try_from(area).expect("an area of the table")
}

/// Tenths of a millimeter in 1000 ft.
const KILOFOOT: i128 = 3_048_000;
/// Tenths of a millimeter in a kilometer.
const KILOMETRE: i128 = 10_000_000;

/// Returns the resistance of one conductor, as micro-ohms and the length in tenths of a millimeter that has them.
///
/// Stranded, at 75 °C by gauge and 70 °C by area. That is hotter than a cord should ever get, so the real resistance is
/// lower. A size between two rows counts as the thinner, and one thicker than all as the thickest.
fn of_wire(wire: Wire) -> (i128, i128) {
    match wire {
        Wire::Awg(gauge) => {
            let thinnest = COPPER.awg[0];
            if gauge > thinnest.gauge {
                // Each gauge step is 92^(2/39) = 1.26100 in area (ASTM B258, from memory). 1.262 is cautious.
                let steps = (gauge - thinnest.gauge).unsigned_abs();
                let micro = (0..steps).fold(i128::from(thinnest.stranded), |micro, _| (micro * 1_262 + 999) / 1000);
                return (micro, KILOFOOT);
            }
            let row = COPPER.awg.iter().rfind(|row| row.gauge >= gauge).unwrap_or(&thinnest);
            (i128::from(row.stranded), KILOFOOT)
        }
        Wire::Area(area) => {
            let thinnest = COPPER.area[0];
            let at_20 = if area < thinnest.area {
                i128::from(thinnest.ohm) * i128::from(thinnest.area) / i128::from(area.max(1)) + 1
            } else {
                let row = COPPER.area.iter().rfind(|row| row.area <= area).unwrap_or(&thinnest);
                i128::from(row.ohm)
            };
            // 1 + 0.00393/K x 50 K = 1.1965 (coefficient of annealed copper, from memory).
            ((at_20 * 11_965 + 9_999) / 10_000, KILOMETRE)
        }
    }
}

/// Returns the resistance of one conductor of this length, rounded up.
#[must_use]
pub fn one_way(wire: Wire, length: Length) -> Resistance {
    let (micro, per) = of_wire(wire);
    let tenths = i128::from(length.millimetres().max(0)) * 10;
    Resistance::from_microohms(narrow((micro * tenths + per - 1) / per))
}

/// Returns the resistance of a cord of this length, out and back, rounded up.
#[must_use]
pub fn out_and_back(wire: Wire, length: Length) -> Resistance {
    let (micro, per) = of_wire(wire);
    let tenths = i128::from(length.millimetres().max(0)) * 10;
    Resistance::from_microohms(narrow((2 * micro * tenths + per - 1) / per))
}

/// Returns the length of the longest cord that drops no more than `lost` at `current`, out and back, rounded down.
#[must_use]
pub fn longest(wire: Wire, lost: Voltage, current: Current) -> Length {
    let (micro, per) = of_wire(wire);
    // Millivolts over milliamperes are ohms, and the current flows out and back, hence the 2. The quotient is in tenths
    // of a millimeter.
    let above = i128::from(lost.millivolts().max(0)) * 1_000_000 * per;
    let below = 2 * micro * i128::from(current.milliamps().max(1));
    Length::from_millimetres(narrow(above / below / 10))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_longest_loses_just_so_much() {
        // 1.98 ohm/kft (NFPA 70 (NEC), Chapter 9 Table 8, confirmed), 15 A, 3.6 V (3 % of 120 V): 3.6 / (2 x 15 x 1.98)
        // x 1000 = 60.606 ft = 18 472 mm.
        let volts = Voltage::from_millivolts(3_600);
        let amps = Current::from_milliamps(15_000);
        let length = longest(Wire::Awg(12), volts, amps);
        assert_eq!(length.millimetres(), 18_472);
        // And back: that length drops no more, and a slightly longer one does.
        let lost = |millimetres| {
            let ohms = out_and_back(Wire::Awg(12), Length::from_millimetres(millimetres));
            ohms.microohms() * amps.milliamps() / 1_000_000
        };
        assert!(lost(18_472) <= 3_600 && lost(18_480) > 3_600);
    }

    #[test]
    fn a_thousand_feet_of_one_conductor_are_the_printed_figure() {
        // NEC chapter 9 table 8, 10 AWG stranded: 1.24 ohm per 1000 ft.
        let kilofoot = Length::from_millimetres(304_800);
        assert_eq!(one_way(Wire::Awg(10), kilofoot).microohms(), 1_240_000);
    }

    #[test]
    fn the_printed_table_8() {
        // NEC chapter 9 table 8, uncoated copper, 75 °C: milliohms per 1000 ft.
        let printed = [
            (18, 7950, Some(7770)),
            (16, 4990, Some(4890)),
            (14, 3140, Some(3070)),
            (12, 1980, Some(1930)),
            (10, 1240, Some(1210)),
            (8, 778, Some(764)),
            (6, 491, None),
            (4, 308, None),
            (2, 194, None),
        ];
        assert_eq!(COPPER.awg.len(), printed.len());
        for (row, (gauge, stranded, solid)) in COPPER.awg.iter().zip(printed) {
            assert_eq!(row.gauge, gauge);
            assert_eq!(row.stranded, stranded * 1000);
            assert_eq!(row.solid, solid.map(|milliohms: i64| milliohms * 1000));
        }
    }

    #[test]
    fn the_printed_class_5() {
        // IEC 60228 class 5, plain copper, 20 °C, from a secondary copy: mm2 and milliohms per km.
        let printed = [
            (500, 39_000),
            (750, 26_000),
            (1000, 19_500),
            (1500, 13_300),
            (2500, 7980),
            (4000, 4950),
            (6000, 3300),
            (10_000, 1910),
            (16_000, 1210),
        ];
        assert_eq!(COPPER.area.len(), printed.len());
        for (row, (area, milliohms)) in COPPER.area.iter().zip(printed) {
            assert_eq!((row.area, row.ohm), (area, milliohms * 1000));
        }
    }

    #[test]
    fn the_table_agrees_with_first_principles() {
        // Solid wire of d = 0.127 mm x 92^((36 - n)/39) (ASTM B258, from memory) at 20 °C with 1.7241e-8 ohm m (IACS,
        // from a secondary copy), computed elsewhere in floating point: micro-ohms per 1000 ft. The table is for 75 °C:
        // R2 = R1 (1 + 0.00323 (T2 - 75)).
        let at_20 = [(18, 6_385_000), (16, 4_016_000), (14, 2_525_000), (12, 1_588_000), (10, 998_800), (8, 628_200)];
        for (gauge, first_principles) in at_20 {
            let row = COPPER.awg.iter().find(|row| row.gauge == gauge).expect("a row");
            let solid = row.solid.expect("solid");
            let cold = solid * (100_000 - 323 * 55) / 100_000;
            let apart = (cold - first_principles).abs() * 1000 / first_principles;
            // Within one percent, because the table has three digits.
            assert!(apart <= 10, "{gauge} AWG: {cold}, {first_principles}");
            // Stranding makes the wire longer, by one to three percent.
            let more = (row.stranded - solid) * 1000 / solid;
            assert!((10..=30).contains(&more), "{gauge} AWG: {more}");
        }
    }

    #[test]
    fn hot_copper_by_an_aviation_manual() {
        // FAA: 254.5 / (234.5 + T) takes 100 ft at 20 °C to 82.23 ft at 75 °C. The same law gives 1.1965 at 70 °C, the
        // correction for areas, to within a thousandth.
        assert_eq!((10_000 * 2545 * 10 / (2345 + 750) + 5) / 10, 8223);
        let by_law = (2345 + 700) * 10_000 / 2545;
        assert!((by_law - 11_965_i32).abs() <= 12, "{by_law}");
    }

    #[test]
    fn sizes_outside_the_table_are_never_flattered() {
        let at = |wire| out_and_back(wire, Length::from_millimetres(30_480)).microohms();
        // 100 ft out and back of 10 AWG: 0.2 x 1.24 (NEC chapter 9 table 8).
        assert_eq!(at(Wire::Awg(10)), 248_000);
        assert_eq!(at(Wire::Awg(11)), at(Wire::Awg(12)));
        assert_eq!(at(Wire::Awg(0)), at(Wire::Awg(2)));
        assert!(at(Wire::Awg(20)) > at(Wire::Awg(18)));
        assert_eq!(at(Wire::Area(2000)), at(Wire::Area(1500)));
        assert!(at(Wire::Area(250)) >= 2 * at(Wire::Area(500)));
        // 30.48 m of 2.5 mm2 out and back at 70 °C: 60.96 m x 7.98 x 1.1965 / 1000.
        assert_eq!(at(Wire::Area(2500)), 582_051);
    }
}

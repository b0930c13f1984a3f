//! Ampacities of conductors.

use std::sync::LazyLock;

use serde::Deserialize;

use super::data::{self, Rows};
use super::source::Source;
use crate::quantity::{Current, Length, Ratio, Temperature, Wire};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    flexible: Rows<FlexibleText>,
    flexible_area: Rows<AreaText>,
    ambient: Rows<AmbientText>,
    r#box: Rows<BoxText>,
    box_area: Rows<AreaText>,
    marked: Rows<MarkedText>,
    section: Rows<SectionText>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct FlexibleText {
    gauge: i8,
    a: String,
    b: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AreaText {
    area: String,
    amps: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AmbientText {
    up_to: String,
    factor: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct BoxText {
    gauge: i8,
    amps: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct MarkedText {
    gauge: i8,
    feet: i64,
    amps: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SectionText {
    gauge: i8,
    area: String,
}

/// A row of NEC table 400.5(A)(1).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FlexibleRow {
    /// American wire gauge.
    pub gauge: i8,
    /// Column A: three current-carrying conductors.
    pub a: Current,
    /// Column B: two current-carrying conductors.
    pub b: Current,
}

/// The usual marking of a cord set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MarkedRow {
    /// American wire gauge.
    pub gauge: i8,
    /// The greatest length with this marking.
    pub length: Length,
    /// The marked current.
    pub amps: Current,
}

/// The tables in this module.
#[derive(Debug)]
pub struct Conductors {
    /// Flexible cord by gauge, thinnest first.
    pub flexible: Vec<FlexibleRow>,
    /// The source of `flexible`.
    pub flexible_source: Source,
    /// Flexible cord by thousandths of a square millimeter, thinnest first.
    pub flexible_area: Vec<(i64, Current)>,
    /// The source of `flexible_area`.
    pub flexible_area_source: Source,
    /// The share of ampacity that remains in air up to a temperature, coolest first.
    pub ambient: Vec<(Temperature, Ratio)>,
    /// The source of `ambient`.
    pub ambient_source: Source,
    /// Box wiring by gauge, thinnest first.
    pub wiring: Vec<(i8, Current)>,
    /// The source of `wiring`.
    pub wiring_source: Source,
    /// Box wiring by thousandths of a square millimeter, thinnest first.
    pub wiring_area: Vec<(i64, Current)>,
    /// The source of `wiring_area`.
    pub wiring_area_source: Source,
    /// The usual markings of cord sets.
    pub marked: Vec<MarkedRow>,
    /// The source of `marked`.
    pub marked_source: Source,
    /// The cross-section in thousandths of a square millimeter by gauge, thinnest first.
    pub section: Vec<(i8, i64)>,
    /// The source of `section`.
    pub section_source: Source,
}

/// The tables, read once.
pub static CONDUCTORS: LazyLock<Conductors> = LazyLock::new(|| {
    let file: File = data::read("conductor.toml", include_str!("conductor.toml"));
    let amps = |text: &str| Current::from_milliamps(data::count(text, 3));
    let by_area = |rows: &[AreaText]| {
        let row = |row: &AreaText| (data::count(&row.area, 3), amps(&row.amps));
        rows.iter().map(row).collect()
    };
    Conductors {
        flexible_area: by_area(&file.flexible_area.rows),
        flexible_area_source: file.flexible_area.source.into(),
        wiring_area: by_area(&file.box_area.rows),
        wiring_area_source: file.box_area.source.into(),
        flexible: file
            .flexible
            .rows
            .iter()
            .map(|row| FlexibleRow { gauge: row.gauge, a: amps(&row.a), b: amps(&row.b) })
            .collect(),
        flexible_source: file.flexible.source.into(),
        ambient: file
            .ambient
            .rows
            .iter()
            .map(|row| {
                (
                    Temperature::from_millicelsius(data::count(&row.up_to, 3)),
                    Ratio::from_permille(data::count(&row.factor, 3)),
                )
            })
            .collect(),
        ambient_source: file.ambient.source.into(),
        wiring: file.r#box.rows.iter().map(|row| (row.gauge, amps(&row.amps))).collect(),
        wiring_source: file.r#box.source.into(),
        marked: file
            .marked
            .rows
            .iter()
            .map(|row| MarkedRow {
                gauge: row.gauge,
                // A foot is 304.8 mm.
                length: Length::from_millimetres(row.feet * 3048 / 10),
                amps: amps(&row.amps),
            })
            .collect(),
        marked_source: file.marked.source.into(),
        section: file.section.rows.iter().map(|row| (row.gauge, data::count(&row.area, 3))).collect(),
        section_source: file.section.source.into(),
    }
});

/// The largest breaker that may protect a cord set of 16 AWG or thicker whose ampacity is lower (NEC 240.5(B)(4),
/// confirmed).
pub const CORD_SET_CIRCUIT: Current = Current::from_milliamps(20_000);

/// Returns the gauge that a wire is at least as thick as: its own, or for an area the thickest gauge that is no
/// thicker. `None` if it is thinner than every gauge in the table.
///
/// For rules stated in gauges. Ampacity is looked up in the wire's own system.
#[must_use]
pub fn gauge_of(wire: Wire) -> Option<i8> {
    match wire {
        Wire::Awg(gauge) => Some(gauge),
        Wire::Area(area) => {
            CONDUCTORS.section.iter().rfind(|(_, section)| *section <= i64::from(area)).map(|(gauge, _)| *gauge)
        }
    }
}

fn flexible_row(gauge: i8) -> Option<&'static FlexibleRow> {
    CONDUCTORS.flexible.iter().rfind(|row| row.gauge >= gauge)
}

/// Returns the current of the thickest row that is no thicker than `area`.
fn by_area(rows: &[(i64, Current)], area: i32) -> Option<Current> {
    rows.iter().rfind(|(listed, _)| *listed <= i64::from(area)).map(|(_, amps)| *amps)
}

/// Returns the ampacity of a flexible cord at 30 °C with two current-carrying conductors, hot and neutral or two hots:
/// by gauge from NEC table 400.5(A)(1), column B, by area from BS 7671.
///
/// The ground never counts, nor does a neutral that carries only the imbalance of two hots (400.5(A), 2023, from a
/// secondary copy). A size between two rows counts as the thinner, and one thicker than all as the thickest. One
/// thinner than all has no published ampacity and gets zero.
#[must_use]
pub fn flexible_ampacity(wire: Wire) -> Current {
    match wire {
        Wire::Awg(gauge) => flexible_row(gauge).map(|row| row.b),
        Wire::Area(area) => by_area(&CONDUCTORS.flexible_area, area),
    }
    .unwrap_or(Current::ZERO)
}

/// Returns the source of [`flexible_ampacity`].
#[must_use]
pub fn flexible_source(wire: Wire) -> &'static Source {
    match wire {
        Wire::Awg(_) => &CONDUCTORS.flexible_source,
        Wire::Area(_) => &CONDUCTORS.flexible_area_source,
    }
}

/// Returns the share of ampacity that remains in air of this temperature: all of it up to 30 °C, none beyond the last
/// row. A temperature between two rows counts as the hotter.
#[must_use]
pub fn share_in_air(air: Temperature) -> Ratio {
    CONDUCTORS.ambient.iter().find(|(up_to, _)| air <= *up_to).map_or(Ratio::from_permille(0), |(_, factor)| *factor)
}

/// Returns the ampacity that remains in air of this temperature ([`share_in_air`]), rounded down.
#[must_use]
pub fn in_air(ampacity: Current, air: Temperature) -> Current {
    ampacity.scaled_down(share_in_air(air))
}

/// Returns the ampacity of wiring inside a box.
///
/// By gauge it is the rating of the breaker commonly used ahead of it. A thinner gauge gets the ampacity of a flexible
/// cord by column A, because nobody knows what runs next to it. Areas have a table of their own. A size thicker than
/// all counts as the thickest.
#[must_use]
pub fn wiring_ampacity(wire: Wire) -> Current {
    match wire {
        Wire::Awg(gauge) => CONDUCTORS
            .wiring
            .iter()
            .rfind(|(listed, _)| *listed >= gauge)
            .map(|(_, amps)| *amps)
            .or_else(|| flexible_row(gauge).map(|row| row.a)),
        Wire::Area(area) => by_area(&CONDUCTORS.wiring_area, area),
    }
    .unwrap_or(Current::ZERO)
}

/// Returns the source of [`wiring_ampacity`].
#[must_use]
pub fn wiring_source(wire: Wire) -> &'static Source {
    match wire {
        Wire::Awg(_) => &CONDUCTORS.wiring_source,
        Wire::Area(_) => &CONDUCTORS.wiring_area_source,
    }
}

/// Returns the rows of [`Conductors::marked`] for a wire, shortest first. A size between two rows or marked by area
/// counts as the thinner. One thicker than all has no rows.
fn marks(wire: Wire) -> impl DoubleEndedIterator<Item = &'static MarkedRow> {
    let listed = gauge_of(wire).and_then(|gauge| {
        let listed = CONDUCTORS.marked.iter().map(|row| row.gauge);
        let thickest = listed.clone().min();
        listed.filter(|listed| *listed >= gauge && Some(gauge) >= thickest).min()
    });
    CONDUCTORS.marked.iter().filter(move |row| Some(row.gauge) == listed)
}

/// Returns the usual marking of a household cord set of this size and length. A cord longer than all rows counts as the
/// longest. `None` if the wire is so thick that the plug sets the marking, or thinner than every row.
#[must_use]
pub fn usual_mark(wire: Wire, length: Length) -> Option<Current> {
    marks(wire).find(|row| length <= row.length).or_else(|| marks(wire).next_back()).map(|row| row.amps)
}

/// Returns how long a household cord set of this size may be and still be marked with `amps`. `None` if its marking
/// sets no limit.
#[must_use]
pub fn longest_marked(wire: Wire, amps: Current) -> Option<Length> {
    let ends = marks(wire).next_back()?.amps < amps;
    ends.then(|| marks(wire).rfind(|row| row.amps >= amps).map_or(Length::ZERO, |row| row.length))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_printed_table_400_5_a_1() {
        let printed = [(18, 7, 10), (16, 10, 13), (14, 15, 18), (12, 20, 25), (10, 25, 30), (8, 35, 40), (6, 45, 55)];
        assert_eq!(CONDUCTORS.flexible.len(), printed.len());
        for (gauge, a, b) in printed {
            let wire = Wire::Awg(gauge);
            let column_a = flexible_row(gauge).map(|row| row.a.milliamps());
            assert_eq!(column_a, Some(a * 1000), "{gauge} AWG");
            assert_eq!(flexible_ampacity(wire).milliamps(), b * 1000, "{gauge} AWG");
        }
    }

    /// NEC (2023) table 310.15(B)(1)(1), 60 °C column, as printed in a state's residential code (E3705.2).
    #[test]
    fn the_printed_factors_for_hot_air() {
        let printed = [(30, 100), (35, 91), (40, 82), (45, 71), (50, 58), (55, 41)];
        assert_eq!(CONDUCTORS.ambient.len(), printed.len());
        for (celsius, hundredths) in printed {
            let left = |millicelsius| {
                in_air(Current::from_milliamps(10_000), Temperature::from_millicelsius(millicelsius)).milliamps()
            };
            assert_eq!(left(celsius * 1000), hundredths * 100, "{celsius} °C");
            assert!(left(celsius * 1000 + 1) < hundredths * 100, "{celsius} °C");
        }
    }

    #[test]
    fn a_size_between_two_counts_as_the_thinner() {
        let two = |wire| flexible_ampacity(wire).milliamps();
        assert_eq!(two(Wire::Awg(13)), two(Wire::Awg(14)));
        assert_eq!(two(Wire::Awg(4)), 55_000);
        assert_eq!(two(Wire::Awg(20)), 0);
        assert_eq!(two(Wire::Area(2000)), two(Wire::Area(1500)));
        assert_eq!(two(Wire::Area(95_000)), two(Wire::Area(10_000)));
        assert_eq!(two(Wire::Area(499)), 0);
        assert_eq!(wiring_ampacity(Wire::Awg(12)).milliamps(), 20_000);
        assert_eq!(wiring_ampacity(Wire::Awg(16)).milliamps(), 10_000);
    }

    /// BS 7671 tables 4F3A and 4F1A, retyped from a trade copy (secondary), and never more than RoSPA's table of flexes
    /// (confirmed), which has 13.5 A for 1.25 mm². A wire is looked up in its own system: a 0.75 mm² cord carries 6 A,
    /// even though it is thinner than 18 AWG.
    #[test]
    fn a_wire_in_square_millimetres_has_a_table_of_its_own() {
        let printed = [
            (500, 3_000),
            (750, 6_000),
            (1000, 10_000),
            (1250, 13_000),
            (1500, 16_000),
            (2500, 25_000),
            (4000, 30_000),
            (6000, 39_000),
            (10_000, 51_000),
        ];
        assert_eq!(CONDUCTORS.flexible_area.len(), printed.len());
        for (area, milliamps) in printed {
            let wire = Wire::Area(area);
            assert_eq!(flexible_ampacity(wire).milliamps(), milliamps, "{wire}");
            assert_eq!(flexible_source(wire).document, "BS 7671");
        }
        // The marking is that of the next thinner gauge: 1.5 mm² lies between 16 and 14 AWG.
        for (area, gauge) in [(1000, 18), (1500, 16), (2500, 14), (4000, 12)] {
            for length in [10_000, 30_000].map(Length::from_millimetres) {
                let mark = |wire| usual_mark(wire, length);
                assert_eq!(mark(Wire::Area(area)), mark(Wire::Awg(gauge)), "{area}");
            }
        }
        assert_eq!(usual_mark(Wire::Area(750), Length::from_millimetres(30_000)), None);
        let rospa = [(750, 6_000), (1000, 10_000), (1250, 13_500), (1500, 16_000)];
        for (area, milliamps) in rospa {
            assert!(flexible_ampacity(Wire::Area(area)).milliamps() <= milliamps);
        }
        // Inside a box: three current-carrying conductors (4F3A), and leads for 32 A and 63 A (table 721).
        let printed = [
            (500, 3_000),
            (750, 6_000),
            (1000, 10_000),
            (1500, 16_000),
            (2500, 20_000),
            (4000, 25_000),
            (6000, 32_000),
            (16_000, 63_000),
        ];
        assert_eq!(CONDUCTORS.wiring_area.len(), printed.len());
        for (area, milliamps) in printed {
            assert_eq!(wiring_ampacity(Wire::Area(area)).milliamps(), milliamps);
        }
    }

    #[test]
    fn sections_agree_with_the_resistance_of_copper() {
        // rho = R A / l at 20 °C is 1.7241e-8 ohm m (IACS, from a secondary copy). R by first principles in micro-ohms
        // per 1000 ft, as in `copper`; A from the table.
        for (gauge, ohms) in [
            (18, 6_385_000),
            (16, 4_016_000),
            (14, 2_525_000),
            (12, 1_588_000),
            (10, 998_800),
            (8, 628_200),
            (6, 395_100),
        ] {
            let (_, area) = CONDUCTORS.section.iter().find(|(listed, _)| *listed == gauge).expect("a row");
            // Micro-ohms x 10^-9 m2 / 304.8 m, as 10^-12 ohm m.
            let rho = ohms * area * 10 / 3048 / 1000;
            assert!((17_190..=17_300).contains(&rho), "{gauge} AWG: {rho}");
        }
    }

    /// UL 817 as quoted by a cord supplier and a forum (secondary): the current of 120 V cord sets up to 50 ft, and
    /// beyond.
    #[test]
    fn the_usual_marks_by_length() {
        let feet = |feet: i64| Length::from_millimetres(feet * 3048 / 10);
        let told = [(18, 10, 7), (16, 13, 10), (14, 15, 13), (12, 20, 15)];
        assert_eq!(CONDUCTORS.marked.len(), 2 * told.len());
        for (gauge, short, long) in told {
            let wire = Wire::Awg(gauge);
            let mark = |length| usual_mark(wire, feet(length)).map(|amps| amps.milliamps() / 1000);
            assert_eq!(mark(1), Some(short), "{gauge} AWG");
            assert_eq!(mark(50), Some(short), "{gauge} AWG");
            assert_eq!(mark(51), Some(long), "{gauge} AWG");
            assert_eq!(mark(100), Some(long), "{gauge} AWG");
            // Longer than any that UL 817 lists without further conditions.
            assert_eq!(mark(150), Some(long), "{gauge} AWG");
            let longest = |amps| longest_marked(wire, Current::from_milliamps(amps * 1000));
            assert_eq!(longest(short + 1), Some(Length::ZERO), "{gauge} AWG");
            assert_eq!(longest(short), Some(feet(50)), "{gauge} AWG");
            assert_eq!(longest(long), None, "{gauge} AWG");
        }
        // The plug sets the marking of a thicker cord. A size between two counts as the thinner.
        assert_eq!(usual_mark(Wire::Awg(10), feet(100)), None);
        assert_eq!(longest_marked(Wire::Awg(10), Current::from_milliamps(20_000)), None);
        assert_eq!(usual_mark(Wire::Awg(15), feet(100)), usual_mark(Wire::Awg(16), feet(100)));
    }
}

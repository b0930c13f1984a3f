//! Writes a [`Plan`] as plan file text, in one canonical order and spelling.
//!
//! The text reads back as the same plan, count for count, for every plan that the reader can produce. Each quantity is
//! written in the first common unit whose text parses to the very same count.

use std::fmt::Write;

use rust_decimal::Decimal;

use super::row::Part;
use super::{Choice, FORMAT, Plan, Site};
use crate::quantity::{Length, Quantity, Ratio, Round, Temperature, Unit, Volume};

/// Returns the plan as the text of a plan file.
#[must_use]
pub fn write(plan: &Plan) -> String {
    let mut out = format!("format = {FORMAT}\nregion = {}\n", quoted(plan.region.word()));
    if let Some(language) = &plan.language {
        put(&mut out, "language", &quoted(language));
    }
    if plan.site != Site::default() {
        table(&mut out, "[site]", &plan.site);
    }
    table(&mut out, "[generator]", &plan.generator);
    for outlet in &plan.generator.outlets {
        table(&mut out, "[[generator.outlet]]", outlet);
    }
    for cord in &plan.cords {
        table(&mut out, "[[cord]]", cord);
    }
    for part in &plan.boxes {
        table(&mut out, "[[box]]", part);
        if part.outlets_unknown() {
            put(&mut out, "outlet", &quoted("unknown"));
        }
        for outlet in &part.outlets {
            table(&mut out, "[[box.outlet]]", outlet);
        }
    }
    for load in &plan.loads {
        table(&mut out, "[[load]]", load);
    }
    out
}

fn table<P: Part>(out: &mut String, heading: &str, part: &P) {
    // Writing to a string cannot fail.
    let _ = writeln!(out, "\n{heading}");
    for (key, value) in part.written() {
        put(out, key, &value);
    }
}

fn put(out: &mut String, key: &str, value: &str) {
    let _ = writeln!(out, "{key} = {value}");
}

/// Quotes text as a TOML basic string.
pub(super) fn quoted(text: &str) -> String {
    let mut quoted = String::with_capacity(text.len() + 2);
    quoted.push('"');
    for c in text.chars() {
        match c {
            '"' | '\\' => {
                quoted.push('\\');
                quoted.push(c);
            }
            c if c.is_control() => {
                let _ = write!(quoted, "\\u{:04X}", u32::from(c));
            }
            c => quoted.push(c),
        }
    }
    quoted.push('"');
    quoted
}

/// Returns the first common spelling that parses to this very count and that nobody reads as another. "1.875 W" would
/// be 1,875 W to some.
pub(super) fn natural<Q: Quantity>(quantity: Q, round: Round) -> String {
    let exact = quantity.amount();
    let in_unit = |unit: &str| match unit {
        "ft" => exact / Decimal::new(3048, 4),
        "gal" => exact / Decimal::new(3_785_411_784, 9),
        "°F" => exact * Decimal::from(9) / Decimal::from(5) + Decimal::from(32),
        _ => exact,
    };
    // Whole feet before odd meters, round meters before odd feet.
    let forms: &[(&str, u32)] = match Q::UNIT {
        unit if unit == Length::UNIT => &[("ft", 0), ("m", 1), ("ft", 2)],
        unit if unit == Volume::UNIT => &[("gal", 1), ("L", 1), ("gal", 2)],
        unit if unit == Temperature::UNIT => &[("°F", 0), ("°C", 1), ("°F", 2)],
        _ => &[],
    };
    for (unit, places) in forms {
        let text = format!("{} {unit}", in_unit(unit).round_dp(*places).normalize());
        if Q::parse(&text, round) == Ok(quantity) {
            return text;
        }
    }
    if exact.scale() == 3
        && let Some(unit) = Q::UNIT.thousandth()
    {
        return format!("{} {unit}", quantity.count());
    }
    let unit = match Q::UNIT {
        Unit::Celsius => "°C",
        Unit::One => "",
        unit => unit.code(),
    };
    format!("{exact} {unit}").trim_end().to_owned()
}

pub(super) fn horsepower(millihorsepower: u32) -> String {
    let count = Ratio::from_permille(i64::from(millihorsepower));
    ["1/12", "1/10", "1/8", "1/6", "1/5", "1/4", "1/3", "1/2", "3/4", "1 1/2"]
        .into_iter()
        .find(|text| Ratio::parse(text, Round::Up) == Ok(count))
        .map_or_else(|| natural(count, Round::Up), str::to_owned)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::plan::{arbitrary, demo, read};
    use crate::quantity::Power;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(400))]

        #[test]
        fn what_is_written_reads_back_the_same(plan in arbitrary::plan()) {
            let text = write(&plan);
            match read(&text) {
                Ok(back) => prop_assert_eq!(back, plan),
                Err(problems) => prop_assert!(false, "{}\n{}", problems, text),
            }
        }
    }

    #[test]
    fn the_demo_plans_keep_their_units() {
        let plan = read(demo::WEEKEND).unwrap();
        let text = write(&plan);
        for line in [
            r#"sleepers_at = "12 ft""#,
            r#"altitude = "4200 ft""#,
            r#"air = "88 °F""#,
            r#"quiet_hours = "22:00-06:00""#,
            r#"tank = "1.2 gal""#,
            r#"noise = { level = "58 dBA", at = "23 ft", load = "25 %" }"#,
            r#"length = "75 ft""#,
            r#"ends = ["5-20R", "5-20R", "5-20R"]"#,
            "power_factor = 0.7",
            r#"outdoor = "unknown""#,
        ] {
            assert!(text.lines().any(|found| found == line), "{line}\n{text}");
        }
        assert_eq!(read(&text), Ok(plan));
    }

    #[test]
    fn the_natural_unit_is_found() {
        for (text, round) in [
            ("25 ft", Round::Up),
            ("12 ft", Round::Down),
            ("8 m", Round::Up),
            ("7.5 m", Round::Down),
            ("25.5 ft", Round::Up),
        ] {
            assert_eq!(natural(Length::parse(text, round).unwrap(), round), text);
        }
        for text in ["88 °F", "31 °C"] {
            let air = Temperature::parse(text, Round::Up).unwrap();
            assert_eq!(natural(air, Round::Up), text);
        }
        for text in ["1.2 gal", "5 L"] {
            let tank = Volume::parse(text, Round::Down).unwrap();
            assert_eq!(natural(tank, Round::Down), text);
        }
        assert_eq!(natural(Power::from_milliwatts(1_500_000), Round::Up), "1500 W");
        for (text, written) in [("1.8750 W", "1875 mW"), ("0.0015 kW", "1.5 W"), ("1234.567 W", "1234567 mW")] {
            let power = Power::parse(text, Round::Up).unwrap();
            assert_eq!(natural(power, Round::Up), written);
        }
        let far = Length::from_millimetres(6_095);
        assert_eq!(natural(far, Round::Down), "6095 mm");
        assert_eq!((horsepower(500), horsepower(334)), ("1/2".into(), "1/3".into()));
    }
}

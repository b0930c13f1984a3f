//! [`Plan`] to plan file text, in one canonical order and spelling.
//!
//! What is written reads back as the same plan, count for count: every quantity is written in the
//! first unit, of those people use, whose text the reader takes back to the very same count.
//! This holds for every plan that the reader can produce.

use std::fmt::{Display, Write};

use rust_decimal::Decimal;

use super::{
    Answer, Choice, Cord, DistributionBox, Draw, FORMAT, Generator, Id, Load, Outlet, Parallel,
    Plan, Site,
};
use crate::quantity::{Length, Quantity, Ratio, Round, Temperature, Unit, Volume};

/// The plan as the text of a plan file.
#[must_use]
pub fn write(plan: &Plan) -> String {
    let mut out = Out::default();
    out.raw("format", FORMAT);
    out.text("region", plan.region.word());
    if let Some(language) = &plan.language {
        out.text("language", language);
    }
    if plan.site != Site::default() {
        site(&mut out, &plan.site);
    }
    generator(&mut out, &plan.generator);
    for part in &plan.cords {
        cord(&mut out, part);
    }
    for part in &plan.boxes {
        distribution_box(&mut out, part);
    }
    for part in &plan.loads {
        load(&mut out, part);
    }
    out.0
}

/// The text so far. Writing to a string cannot fail, so the results are dropped.
#[derive(Default)]
struct Out(String);

impl Out {
    fn heading(&mut self, heading: &str) {
        let _ = write!(self.0, "\n{heading}\n");
    }

    fn raw(&mut self, key: &str, value: impl Display) {
        let _ = writeln!(self.0, "{key} = {value}");
    }

    fn text(&mut self, key: &str, value: impl Display) {
        self.raw(key, quoted(&value.to_string()));
    }

    fn optional(&mut self, key: &str, value: Option<impl Display>) {
        if let Some(value) = value {
            self.text(key, value);
        }
    }

    /// An answer whose value is written as `form` gives it, as TOML.
    fn answer<T>(&mut self, key: &str, answer: &Answer<T>, form: impl FnOnce(&T) -> String) {
        match answer {
            Answer::Missing => {}
            Answer::Unknown => self.text(key, "unknown"),
            Answer::Known(value) => self.raw(key, form(value)),
        }
    }

    fn yes_no(&mut self, key: &str, answer: Answer<bool>) {
        self.answer(key, &answer, bool::to_string);
    }

    fn choice<C: Choice>(&mut self, key: &str, answer: Answer<C>) {
        self.answer(key, &answer, |choice| quoted(choice.word()));
    }

    fn quantity<Q: Quantity>(&mut self, key: &str, answer: &Answer<Q>, round: Round) {
        self.answer(key, answer, |value| quoted(&natural(*value, round)));
    }
}

fn site(out: &mut Out, site: &Site) {
    out.heading("[site]");
    out.optional("name", (!site.name.is_empty()).then_some(&site.name));
    out.choice("ground", site.ground);
    out.quantity("sleepers_at", &site.sleepers_at, Round::Down);
    out.quantity("altitude", &site.altitude, Round::Up);
    out.quantity("air", &site.air, Round::Up);
    out.answer("quiet_hours", &site.quiet_hours, |spans| {
        let texts: Vec<String> = spans.iter().map(|span| quoted(&span.to_string())).collect();
        match texts.as_slice() {
            [one] => one.clone(),
            _ => format!("[{}]", texts.join(", ")),
        }
    });
    out.yes_no("co_alarm", site.co_alarm);
    out.yes_no("feeds_building", site.feeds_building);
    out.choice("stands", site.stands);
    out.yes_no("people_sleep", site.people_sleep);
}

fn generator(out: &mut Out, generator: &Generator) {
    out.heading("[generator]");
    out.optional(
        "name",
        (!generator.name.is_empty()).then_some(&generator.name),
    );
    out.quantity("rated", &generator.rated, Round::Down);
    out.quantity("peak", &generator.peak, Round::Down);
    out.choice("voltage", generator.voltage);
    out.choice("neutral", generator.neutral);
    out.yes_no("bonding_plug", generator.bonding_plug);
    out.optional("bonding_plug_in", generator.bonding_plug_in.as_ref());
    out.yes_no("inverter", generator.inverter);
    out.choice("fuel", generator.fuel);
    out.choice("rated_on", generator.rated_on);
    if let Some(joined) = &generator.parallel {
        out.raw("parallel", parallel(joined));
    }
    out.quantity("tank", &generator.tank, Round::Down);
    if !generator.runtime.is_empty() {
        let times: Vec<String> = generator
            .runtime
            .iter()
            .map(|time| {
                format!(
                    "{{ load = {}, lasts = {} }}",
                    quoted(&natural(time.load, Round::Down)),
                    quoted(&natural(time.lasts, Round::Down))
                )
            })
            .collect();
        out.raw("runtime", format!("[{}]", times.join(", ")));
    }
    out.answer("noise", &generator.noise, |noise| {
        let load = match noise.load {
            Answer::Missing => String::new(),
            Answer::Unknown => format!(", load = {}", quoted("unknown")),
            Answer::Known(load) => format!(", load = {}", quoted(&natural(load, Round::Down))),
        };
        format!(
            "{{ level = {}, at = {}{load} }}",
            quoted(&natural(noise.level, Round::Up)),
            quoted(&natural(noise.at, Round::Up)),
        )
    });
    for part in &generator.outlets {
        out.heading("[[generator.outlet]]");
        outlet(out, part);
    }
}

fn parallel(joined: &Parallel) -> String {
    let limit = match joined.limit {
        Answer::Missing => String::new(),
        Answer::Unknown => format!(", limit = {}", quoted("unknown")),
        Answer::Known(limit) => format!(", limit = {}", quoted(&natural(limit, Round::Down))),
    };
    let kit = match joined.kit {
        Answer::Missing => String::new(),
        Answer::Unknown => format!(", kit = {}", quoted("unknown")),
        Answer::Known(kit) => format!(", kit = {kit}"),
    };
    format!("{{ sets = {}{limit}{kit} }}", joined.sets)
}

fn outlet(out: &mut Out, outlet: &Outlet) {
    out.text("id", &outlet.id);
    out.text("shape", outlet.shape);
    if let Some(sockets) = outlet.sockets {
        out.raw("sockets", sockets);
    }
    out.quantity("breaker", &outlet.breaker, Round::Down);
    out.optional("shares", outlet.shares.as_ref());
    out.optional(
        "trips_at",
        outlet.trips_at.map(|amps| natural(amps, Round::Down)),
    );
    out.yes_no("gfci", outlet.gfci);
    out.answer("wire", &outlet.wire, |wire| quoted(&wire.to_string()));
    out.choice("leg", outlet.leg);
}

fn cord(out: &mut Out, cord: &Cord) {
    out.heading("[[cord]]");
    out.text("id", &cord.id);
    out.optional("from", cord.from.as_ref());
    out.text("plug", cord.plug);
    let ends: Vec<String> = cord
        .ends
        .iter()
        .map(|end| quoted(&end.to_string()))
        .collect();
    out.raw("ends", format!("[{}]", ends.join(", ")));
    out.answer("wire", &cord.wire, |wire| quoted(&wire.to_string()));
    out.answer("conductors", &cord.conductors, u8::to_string);
    out.quantity("length", &cord.length, Round::Up);
    out.yes_no("outdoor", cord.outdoor);
    out.yes_no("coiled", cord.coiled);
    out.yes_no("gfci", cord.gfci);
}

fn distribution_box(out: &mut Out, part: &DistributionBox) {
    out.heading("[[box]]");
    out.text("id", &part.id);
    out.optional("from", part.from.as_ref());
    out.text("inlet", part.inlet);
    out.yes_no("listed", part.listed);
    out.yes_no("bond", part.bond);
    for part in &part.outlets {
        out.heading("[[box.outlet]]");
        outlet(out, part);
    }
}

fn load(out: &mut Out, load: &Load) {
    out.heading("[[load]]");
    out.text("id", &load.id);
    out.optional(
        "name",
        (load.name != load.id.as_str()).then_some(&load.name),
    );
    out.text(
        "kind",
        // It may not be left out.
        load.kind.known().map_or("unknown", |kind| kind.word()),
    );
    match &load.running {
        Answer::Missing => {}
        Answer::Unknown => out.text("running", "unknown"),
        Answer::Known(Draw::Power(power)) => out.text("running", natural(*power, Round::Up)),
        Answer::Known(Draw::Current(amps)) => out.text("current", natural(*amps, Round::Up)),
        Answer::Known(Draw::Motor {
            millihorsepower,
            code,
        }) => {
            let code = code.map_or_else(String::new, |code| {
                format!(", code = {}", quoted(&code.to_string()))
            });
            let hp = quoted(&horsepower(*millihorsepower));
            out.raw("motor", format!("{{ hp = {hp}{code} }}"));
        }
    }
    if load.count != 1 {
        out.raw("count", load.count);
    }
    out.quantity("starting", &load.starting, Round::Up);
    out.quantity("starting_current", &load.starting_current, Round::Up);
    out.answer("power_factor", &load.power_factor, |ratio| {
        let number = ratio.amount().to_string();
        if number.contains('.') {
            number
        } else {
            format!("{number}.0")
        }
    });
    out.yes_no("continuous", load.continuous);
    out.text("wanted", load.wanted.word());
    if !load.hours.is_empty() {
        let spans: Vec<String> = load
            .hours
            .iter()
            .map(|span| quoted(&span.to_string()))
            .collect();
        out.raw("hours", format!("[{}]", spans.join(", ")));
    }
    out.answer("plug", &load.plug, |plug| quoted(&plug.to_string()));
    out.choice("voltage", load.voltage);
    out.optional("on", load.on.as_ref().map(Id::as_str));
    out.yes_no("backup", load.backup);
    out.optional("now", load.now.as_ref().map(Id::as_str));
}

/// A TOML basic string.
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

/// The first of the spellings people use that reads back to this very count, and to nobody as
/// another: "1.875 W" would be eighteen hundred to some.
fn natural<Q: Quantity>(quantity: Q, round: Round) -> String {
    let exact = quantity.amount();
    let in_unit = |unit: &str| match unit {
        "ft" => exact / Decimal::new(3048, 4),
        "gal" => exact / Decimal::new(3_785_411_784, 9),
        "°F" => exact * Decimal::from(9) / Decimal::from(5) + Decimal::from(32),
        _ => exact,
    };
    // Round feet before odd metres, round metres before odd feet.
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

fn horsepower(millihorsepower: u32) -> String {
    let count = Ratio::from_permille(i64::from(millihorsepower));
    [
        "1/12", "1/10", "1/8", "1/6", "1/5", "1/4", "1/3", "1/2", "3/4", "1 1/2",
    ]
    .into_iter()
    .find(|text| Ratio::parse(text, Round::Up) == Ok(count))
    .map_or_else(|| natural(count, Round::Up), str::to_owned)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::plan::bounds::{self, Bounds};
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

        /// Each figure of each field, over all of its bounds and not only where plans mostly are:
        /// what is written is read, as the same, and by nobody as another.
        #[test]
        fn every_figure_reads_back_the_same(at in 0..=1_000_000_u32, near in any::<bool>()) {
            fn whole<Q: Quantity>(bounds: &Bounds<Q>, at: u32, near: bool) -> Result<(), TestCaseError> {
                let (least, most) = (bounds.least.count(), bounds.most.count());
                // Most of those with two readings are at the lower end.
                let count = if near {
                    least.saturating_add(i64::from(at)).min(most)
                } else {
                    least + (most - least) / 1_000_000 * i64::from(at)
                };
                let text = natural(Q::from_count(count), bounds.round);
                prop_assert_eq!(bounds.read(&text), Ok(Q::from_count(count)), "{}", text);
                Ok(())
            }
            whole(&bounds::RATED, at, near)?;
            whole(&bounds::PEAK, at, near)?;
            whole(&bounds::KIT_LIMIT, at, near)?;
            whole(&bounds::TANK, at, near)?;
            whole(&bounds::SHARE, at, near)?;
            whole(&bounds::LASTS, at, near)?;
            whole(&bounds::NOISE_LEVEL, at, near)?;
            whole(&bounds::NOISE_AT, at, near)?;
            whole(&bounds::BREAKER, at, near)?;
            whole(&bounds::TRIPS_AT, at, near)?;
            whole(&bounds::LENGTH, at, near)?;
            whole(&bounds::SLEEPERS_AT, at, near)?;
            whole(&bounds::ALTITUDE, at, near)?;
            whole(&bounds::AIR, at, near)?;
            whole(&bounds::RUNNING, at, near)?;
            whole(&bounds::CURRENT, at, near)?;
            whole(&bounds::STARTING, at, near)?;
            whole(&bounds::STARTING_CURRENT, at, near)?;
            whole(&bounds::HORSEPOWER, at, near)?;
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
        assert_eq!(
            natural(Power::from_milliwatts(1_500_000), Round::Up),
            "1500 W"
        );
        for (text, written) in [
            ("1.8750 W", "1875 mW"),
            ("0.0015 kW", "1.5 W"),
            ("1234.567 W", "1234567 mW"),
        ] {
            let power = Power::parse(text, Round::Up).unwrap();
            assert_eq!(natural(power, Round::Up), written);
        }
        let far = Length::from_millimetres(6_095);
        assert_eq!(natural(far, Round::Down), "6095 mm");
        assert_eq!(
            (horsepower(500), horsepower(334)),
            ("1/2".into(), "1/3".into())
        );
    }
}

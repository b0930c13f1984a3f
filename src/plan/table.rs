//! The fields of each part of a plan, key by key. The range of each figure is in [`bounds`].

#[cfg(test)]
use proptest::prelude::*;

use super::bounds;
use super::kinds::{Bare, FACE, HOURS, ID, Inline, List, NAME, PLUG, REFERENCE, WIRE, YesNo, list};
use super::read::{Field, Fields};
use super::row::{Kind, Part, Row, row};
use super::write::{horsepower, quoted};
use super::{
    Answer, BoxKind, Choice, Cord, DistributionBox, Draw, Fuel, Generator, Ground, Leg, Load, LoadKind, Neutral, Noise,
    Outlet, Parallel, Runtime, Site, Stands, System, Uses, Wanted,
};

impl Part for Site {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Site.name: NAME).unless(|site| site.name.is_empty()),
        &row!(Site.ground: Ground::ALL).best("dry"),
        &row!(Site.sleepers_at: bounds::SLEEPERS_AT).best("100 ft"),
        &row!(Site.altitude: bounds::ALTITUDE).best("0 ft"),
        &row!(Site.air: bounds::AIR).best("15 °C"),
        &row!(Site.quiet_hours: List {
            alone: true,
            ..list(HOURS)
        }),
        &row!(Site.co_alarm: YesNo).best("yes"),
        &row!(Site.feeds_building: YesNo).best("no"),
        &row!(Site.stands: Stands::ALL).best("roof"),
        &row!(Site.people_sleep: YesNo).best("no"),
    ];
}

impl Part for Generator {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Generator.name: NAME).unless(|set| set.name.is_empty()),
        &row!(Generator.rated: bounds::RATED).needed(r#"rated = "2800 W""#),
        &row!(Generator.peak: bounds::PEAK),
        // Assuming one leg would make a two-leg generator seem to deliver twice what any outlet can.
        &row!(Generator.voltage: System::ALL).needed(r#"voltage = "120 V""#).best("120"),
        &row!(Generator.neutral: Neutral::ALL).best("bonded"),
        &row!(Generator.bonding_plug: YesNo).best("no"),
        &row!(Generator.bonding_plug_in: REFERENCE),
        // Only an inverter generator limits its own current, and only those may be paralleled.
        &row!(Generator.inverter: YesNo).best("yes"),
        &row!(Generator.fuel: Fuel::ALL),
        &row!(Generator.rated_on: Fuel::ALL).best("propane"),
        &row!(Generator.parallel: Inline::<Parallel>::with(", ")),
        &row!(Generator.tank: bounds::TANK),
        &row!(Generator.runtime: list(Inline::<Runtime>::with(" "))).unless(|set| set.runtime.is_empty()),
        &row!(Generator.noise: Inline::<Noise>::with(", ")),
        &row!(Generator.bought: YesNo),
    ];
}

impl Part for Parallel {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Parallel.sets: bounds::SETS).needed("sets = 2"),
        // At best more than any kit can carry.
        &row!(Parallel.limit: bounds::KIT_LIMIT).best("50 A"),
        &row!(Parallel.kit: YesNo).best("yes"),
    ];
}

impl Part for Runtime {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Runtime.load: bounds::SHARE).needed(r#"load = "25 %""#),
        &row!(Runtime.lasts: bounds::LASTS).needed(r#"lasts = "8.5 h""#),
    ];
}

impl Part for Noise {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Noise.level: bounds::NOISE_LEVEL).needed(r#"level = "58 dBA""#),
        &row!(Noise.at: bounds::NOISE_AT).needed(r#"at = "23 ft""#),
        &row!(Noise.load: bounds::SHARE),
    ];
}

impl Part for Outlet {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Outlet.id: ID).needed(r#"id = "front""#),
        &row!(Outlet.shape: FACE).needed(r#"shape = "5-20R""#),
        &row!(Outlet.sockets: bounds::SOCKETS),
        &row!(Outlet.breaker: bounds::BREAKER),
        &row!(Outlet.shares: REFERENCE),
        &row!(Outlet.trips_at: bounds::TRIPS_AT),
        &row!(Outlet.gfci: YesNo).best("yes"),
        &row!(Outlet.wire: WIRE).best("10 AWG"),
        &row!(Outlet.leg: Leg::ALL),
        &row!(Outlet.hot: YesNo).best("no"),
    ];
}

impl Part for Cord {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Cord.id: ID).needed(r#"id = "long""#),
        &row!(Cord.from: REFERENCE),
        &row!(Cord.plug: PLUG).needed(r#"plug = "5-15P""#),
        &row!(Cord.ends: List {
            least: 1,
            ..list(FACE)
        })
        .needed(r#"ends = ["5-15R"]"#),
        &row!(Cord.wire: WIRE).best("10 AWG"),
        &row!(Cord.conductors: bounds::CONDUCTORS),
        // At best the shortest commonly sold.
        &row!(Cord.length: bounds::LENGTH).best("25 ft"),
        &row!(Cord.outdoor: YesNo).best("yes"),
        &row!(Cord.coiled: YesNo).best("no"),
        &row!(Cord.gfci: YesNo).best("yes"),
        &row!(Cord.hot: YesNo).best("no"),
        &row!(Cord.bought: YesNo),
    ];
}

impl Part for DistributionBox {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(DistributionBox.id: ID).needed(r#"id = "box""#),
        &row!(DistributionBox.kind: BoxKind::ALL).unless(|part| part.kind == BoxKind::Distribution),
        &row!(DistributionBox.from: REFERENCE),
        &row!(DistributionBox.inlet: PLUG).needed(r#"inlet = "L5-30P""#),
        &row!(DistributionBox.breaker: bounds::BREAKER),
        &row!(DistributionBox.listed: YesNo).best("yes"),
        &row!(DistributionBox.bond: YesNo).best("no"),
        &row!(DistributionBox.hot: YesNo).best("no"),
        &row!(DistributionBox.bought: YesNo),
    ];
}

impl Part for Load {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Load.id: ID).needed(r#"id = "kettle""#),
        &row!(Load.name: NAME).unless(|load| load.name == load.id.as_str()),
        &row!(Load.kind: LoadKind::ALL).needed(r#"kind = "heater""#),
        &Running,
        &row!(Load.count: bounds::COUNT).unless(|load| load.count == 1),
        &row!(Load.starting: bounds::STARTING),
        &row!(Load.starting_current: bounds::STARTING_CURRENT),
        &row!(Load.power_factor: Bare(bounds::POWER_FACTOR)).best("1"),
        &row!(Load.continuous: YesNo).best("no"),
        &row!(Load.wanted: Wanted::ALL),
        &row!(Load.hours: list(HOURS)).unless(|load| load.hours.is_empty()),
        &row!(Load.plug: PLUG),
        // At best split equally between the legs.
        &row!(Load.voltage: Uses::ALL).best("240"),
        &row!(Load.on: REFERENCE),
        &row!(Load.backup: YesNo),
        &row!(Load.now: REFERENCE),
        &row!(Load.hot: YesNo).best("no"),
    ];
}

/// What a load draws, under one of three keys.
struct Running;

impl Row<Load> for Running {
    fn keys(&self) -> &'static [&'static str] {
        &["running", "current", "motor"]
    }

    fn read(&self, fields: &Fields<'_>, load: &mut Load) {
        fields.one_of(self.keys());
        // All three are read so that each is checked. The first that is given counts.
        let all = [
            fields.answer("running", |field| field.quantity(&bounds::RUNNING).map(Draw::Power)),
            fields.answer("current", |field| field.quantity(&bounds::CURRENT).map(Draw::Current)),
            fields.answer("motor", motor),
        ];
        let said = all.into_iter().find(|answer| *answer != Answer::Missing);
        load.running = said.unwrap_or_default();
    }

    fn write(&self, load: &Load) -> Option<(&'static str, String)> {
        Some(match &load.running {
            Answer::Missing => return None,
            Answer::Unknown => ("running", quoted("unknown")),
            Answer::Known(Draw::Power(power)) => ("running", bounds::RUNNING.toml(power)),
            Answer::Known(Draw::Current(amps)) => ("current", bounds::CURRENT.toml(amps)),
            Answer::Known(Draw::Motor { millihorsepower, code }) => {
                let code = code.map(|code| format!(", code = {}", quoted(&code.to_string())));
                let hp = quoted(&horsepower(*millihorsepower));
                let motor = format!("{{ hp = {hp}{} }}", code.unwrap_or_default());
                ("motor", motor)
            }
        })
    }

    fn text(&self, load: &Load) -> Answer<String> {
        match &load.running {
            Answer::Missing => Answer::Missing,
            Answer::Unknown => Answer::Unknown,
            Answer::Known(draw) => Answer::Known(match draw {
                Draw::Power(power) => bounds::RUNNING.text(power),
                Draw::Current(amps) => bounds::CURRENT.text(amps),
                Draw::Motor { millihorsepower, code } => {
                    let code = code.map_or_else(String::new, |code| format!(" code {code}"));
                    format!("{} hp{code}", horsepower(*millihorsepower))
                }
            }),
        }
    }

    fn best(&self) -> Option<&'static str> {
        None
    }

    fn take(&self, load: &mut Load, said: Answer<&str>) {
        // People copy this from a nameplate in many forms, which the interview parses.
        if said == Answer::Unknown {
            load.running = Answer::Unknown;
        }
    }

    #[cfg(test)]
    fn copy(&self, from: &Load, to: &mut Load) {
        to.running = from.running.clone();
    }

    #[cfg(test)]
    fn any(&self) -> BoxedStrategy<Load> {
        let code = proptest::option::of(proptest::sample::select(vec!['A', 'G', 'V']));
        let draw = prop_oneof![
            bounds::RUNNING.any().prop_map(Draw::Power),
            bounds::CURRENT.any().prop_map(Draw::Current),
            (1..=10_000_u32, code).prop_map(|(millihorsepower, code)| Draw::Motor { millihorsepower, code }),
        ];
        super::row::Holds::any(draw.boxed(), false).prop_map(|running| Load { running, ..Load::default() }).boxed()
    }
}

fn motor(field: &Field<'_>) -> Option<Draw> {
    let fields = field.table(&["hp", "code"])?;
    let horsepower = fields.required("hp", r#"hp = "1/2""#, |field| field.ratio_in_text(&bounds::HORSEPOWER));
    let code = fields.answer("code", Field::motor_code);
    Some(Draw::Motor { millihorsepower: u32::try_from(horsepower?.permille()).ok()?, code: code.known().copied() })
}

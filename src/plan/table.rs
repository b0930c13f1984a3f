//! What a plan may say, part by part and key by key. What each figure may be is in [`bounds`].

#[cfg(test)]
use proptest::prelude::*;

use super::bounds;
use super::kinds::{Bare, FACE, HOURS, ID, Inline, List, NAME, PLUG, REFERENCE, WIRE, YesNo, list};
use super::read::{Field, Fields};
use super::row::{Kind, Part, Row, row};
use super::write::{horsepower, quoted};
use super::{
    Answer, Choice, Cord, DistributionBox, Draw, Fuel, Generator, Ground, Leg, Load, LoadKind,
    Neutral, Noise, Outlet, Parallel, Runtime, Site, Stands, System, Uses, Wanted,
};

impl Part for Site {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Site.name: NAME).unless(|site| site.name.is_empty()),
        &row!(Site.ground: Ground::ALL),
        &row!(Site.sleepers_at: bounds::SLEEPERS_AT),
        &row!(Site.altitude: bounds::ALTITUDE),
        &row!(Site.air: bounds::AIR),
        &row!(Site.quiet_hours: List {
            alone: true,
            ..list(HOURS)
        }),
        &row!(Site.co_alarm: YesNo),
        &row!(Site.feeds_building: YesNo),
        &row!(Site.stands: Stands::ALL),
        &row!(Site.people_sleep: YesNo),
    ];
}

impl Part for Generator {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Generator.name: NAME).unless(|set| set.name.is_empty()),
        &row!(Generator.rated: bounds::RATED).needed(r#"rated = "2800 W""#),
        &row!(Generator.peak: bounds::PEAK),
        // A set of two legs that passed for one would seem to give twice what an outlet of it can.
        &row!(Generator.voltage: System::ALL).needed(r#"voltage = "120 V""#),
        &row!(Generator.neutral: Neutral::ALL),
        &row!(Generator.bonding_plug: YesNo),
        &row!(Generator.bonding_plug_in: REFERENCE),
        &row!(Generator.inverter: YesNo),
        &row!(Generator.fuel: Fuel::ALL),
        &row!(Generator.rated_on: Fuel::ALL),
        &row!(Generator.parallel: Inline::<Parallel>::with(", ")),
        &row!(Generator.tank: bounds::TANK),
        &row!(Generator.runtime: list(Inline::<Runtime>::with(" ")))
            .unless(|set| set.runtime.is_empty()),
        &row!(Generator.noise: Inline::<Noise>::with(", ")),
    ];
}

impl Part for Parallel {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(Parallel.sets: bounds::SETS).needed("sets = 2"),
        &row!(Parallel.limit: bounds::KIT_LIMIT),
        &row!(Parallel.kit: YesNo),
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
        &row!(Outlet.gfci: YesNo),
        &row!(Outlet.wire: WIRE),
        &row!(Outlet.leg: Leg::ALL),
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
        &row!(Cord.wire: WIRE),
        &row!(Cord.conductors: bounds::CONDUCTORS),
        &row!(Cord.length: bounds::LENGTH),
        &row!(Cord.outdoor: YesNo),
        &row!(Cord.coiled: YesNo),
        &row!(Cord.gfci: YesNo),
    ];
}

impl Part for DistributionBox {
    const ROWS: &'static [&'static dyn Row<Self>] = &[
        &row!(DistributionBox.id: ID).needed(r#"id = "box""#),
        &row!(DistributionBox.from: REFERENCE),
        &row!(DistributionBox.inlet: PLUG).needed(r#"inlet = "L5-30P""#),
        &row!(DistributionBox.listed: YesNo),
        &row!(DistributionBox.bond: YesNo),
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
        &row!(Load.power_factor: Bare(bounds::POWER_FACTOR)),
        &row!(Load.continuous: YesNo),
        &row!(Load.wanted: Wanted::ALL),
        &row!(Load.hours: list(HOURS)).unless(|load| load.hours.is_empty()),
        &row!(Load.plug: PLUG),
        &row!(Load.voltage: Uses::ALL),
        &row!(Load.on: REFERENCE),
        &row!(Load.backup: YesNo),
        &row!(Load.now: REFERENCE),
    ];
}

/// What a load draws, by whichever of three keys is there.
struct Running;

impl Row<Load> for Running {
    fn keys(&self) -> &'static [&'static str] {
        &["running", "current", "motor"]
    }

    fn read(&self, fields: &Fields<'_>, load: &mut Load) {
        fields.one_of(self.keys());
        // All three are read, so that each is checked; the first that says something counts.
        let all = [
            fields.answer("running", |field| {
                field.quantity(&bounds::RUNNING).map(Draw::Power)
            }),
            fields.answer("current", |field| {
                field.quantity(&bounds::CURRENT).map(Draw::Current)
            }),
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
            Answer::Known(Draw::Motor {
                millihorsepower,
                code,
            }) => {
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
                Draw::Motor {
                    millihorsepower,
                    code,
                } => {
                    let code = code.map_or_else(String::new, |code| format!(" code {code}"));
                    format!("{} hp{code}", horsepower(*millihorsepower))
                }
            }),
        }
    }

    fn take(&self, load: &mut Load, said: Answer<&str>) {
        // What people type is read off a plate in many ways: that is the interview's.
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
            (1..=10_000_u32, code).prop_map(|(millihorsepower, code)| Draw::Motor {
                millihorsepower,
                code
            }),
        ];
        super::row::Holds::any(draw.boxed(), false)
            .prop_map(|running| Load {
                running,
                ..Load::default()
            })
            .boxed()
    }
}

fn motor(field: &Field<'_>) -> Option<Draw> {
    let fields = field.table(&["hp", "code"])?;
    let horsepower = fields.required("hp", r#"hp = "1/2""#, |field| {
        field.ratio_in_text(&bounds::HORSEPOWER)
    });
    let code = fields.answer("code", Field::motor_code);
    Some(Draw::Motor {
        millihorsepower: u32::try_from(horsepower?.permille()).ok()?,
        code: code.known().copied(),
    })
}

//! The loads of a plan as units that each take one socket, with every figure the core needs.

use super::{Amount, Assumption, LoadFacts, Value};
use crate::plan::{Answer, Draw, Id, Load, LoadKind, Plan};
use crate::quantity::{ApparentPower, Current, Power, Ratio, Voltage, narrow};
use crate::tables::kinds::{self, KindFigures};
use crate::tables::motors;
use crate::tables::shape::{Circuit, Configuration, Plug};

/// The most a small plug is taken for when nobody knows it: every camp load has this one.
const UNKNOWN_PLUG: Plug = Plug(Configuration::N5_15);
/// Three hours: from here on a load is continuous (NEC article 100).
const CONTINUOUS_MINUTES: u16 = 180;

/// One thing that takes one socket: a load, or one of several alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LoadUnit {
    /// Its id; of several, `lamp.2`.
    pub id: Id,
    /// Where its load is in [`Plan::loads`].
    pub load: usize,
    /// Its name.
    pub name: String,
    /// How it behaves.
    pub kind: LoadKind,
    /// Its plug, or what is taken for it.
    pub plug: Plug,
    /// Nominal voltage at the plug.
    pub volts: Voltage,
    /// Running power, rounded up.
    pub running: Power,
    /// Running current on each of its legs, rounded up.
    pub running_current: Current,
    /// Starting power, rounded up, never less than running. An upper bound at unity power
    /// factor where only the starting current is known.
    pub starting: Power,
    /// Starting current on each of its legs, rounded up, never less than running.
    pub starting_current: Current,
    /// Whether it counts as running for three hours or more.
    pub continuous: bool,
}

impl LoadUnit {
    /// What the report says of it.
    #[must_use]
    pub fn facts(&self, plan: &Plan) -> LoadFacts {
        LoadFacts {
            id: self.id.clone(),
            of: plan.loads[self.load].id.clone(),
            name: self.name.clone(),
            kind: self.kind,
            volts: self.volts.into(),
            running_watts: self.running.into(),
            running_amps: self.running_current.into(),
            starting_watts: self.starting.into(),
            starting_amps: self.starting_current.into(),
            continuous: self.continuous,
        }
    }
}

/// Every load of the plan as units, in the order of the plan, and what had to be assumed.
#[must_use]
pub fn units(plan: &Plan) -> (Vec<LoadUnit>, Vec<Assumption>) {
    let mut assumed = Vec::new();
    let mut units = Vec::new();
    for (at, load) in plan.loads.iter().enumerate() {
        let one = unit(plan, at, load, &mut assumed);
        if load.count <= 1 {
            units.push(one);
        } else {
            units.extend((1..=usize::from(load.count)).map(|number| LoadUnit {
                id: load.id.end(number),
                ..one.clone()
            }));
        }
    }
    (units, assumed)
}

/// Collects assumptions about one load.
struct Assume<'a> {
    load: &'a Id,
    list: &'a mut Vec<Assumption>,
}

impl Assume<'_> {
    fn note(&mut self, field: &str, value: impl Into<Value>, why: &'static str) {
        self.list.push(Assumption {
            field: format!("load.{}.{field}", self.load),
            value: value.into(),
            why,
        });
    }
}

fn unit(plan: &Plan, at: usize, load: &Load, assumed: &mut Vec<Assumption>) -> LoadUnit {
    let kind = kinds::of_kind(load.kind);
    let mut assume = Assume {
        load: &load.id,
        list: assumed,
    };
    let plug = if let Answer::Known(plug) = load.plug {
        plug
    } else {
        assume.note("plug", Value::Name(UNKNOWN_PLUG.to_string()), "load-plug");
        UNKNOWN_PLUG
    };
    let legs = match plug.0.circuit() {
        Circuit::OneLeg => 1,
        Circuit::TwoLegs | Circuit::TwoLegsNeutral => 2,
    };
    let volts = Voltage::from_millivolts(plan.line_to_neutral().millivolts() * legs);
    let (running, running_current, factor) = running(load, kind, volts, &mut assume);
    let (starting, starting_current) = starting(
        load,
        kind,
        volts,
        factor,
        running,
        running_current,
        &mut assume,
    );
    LoadUnit {
        id: load.id.clone(),
        load: at,
        name: load.name.clone(),
        kind: load.kind,
        plug,
        volts,
        running,
        running_current,
        starting: starting.max(running),
        starting_current: starting_current.max(running_current),
        continuous: continuous(load, &mut assume),
    }
}

/// Running power and current, and the power factor that the load has.
fn running(
    load: &Load,
    kind: &KindFigures,
    volts: Voltage,
    assume: &mut Assume<'_>,
) -> (Power, Current, Ratio) {
    let factor = |assume: &mut Assume<'_>| {
        if let Answer::Known(factor) = load.power_factor {
            return Ratio::from_permille(factor.permille().clamp(1, 1000));
        }
        // Resistance heat is at unity: nothing is assumed there.
        if kind.power_factor.permille() != 1000 {
            assume.note(
                "power_factor",
                Amount::of(kind.power_factor),
                "power-factor",
            );
        }
        kind.power_factor
    };
    match &load.running {
        Answer::Known(Draw::Power(power)) => {
            let factor = factor(assume);
            (*power, Current::of_load(*power, factor, volts), factor)
        }
        // A current is apparent already. Without a power factor of its own the watts are taken
        // for as many as the volt-amperes, their upper bound.
        Answer::Known(Draw::Current(current)) => {
            let known = Ratio::from_permille(
                load.power_factor
                    .or(Ratio::from_permille(1000))
                    .permille()
                    .clamp(1, 1000),
            );
            (real_power(*current, volts, known), *current, known)
        }
        Answer::Known(Draw::Motor {
            millihorsepower, ..
        }) => {
            let known = Ratio::from_permille(
                load.power_factor
                    .or(Ratio::from_permille(1000))
                    .permille()
                    .clamp(1, 1000),
            );
            let current = motor_current(*millihorsepower, volts);
            (real_power(current, volts, known), current, known)
        }
        Answer::Missing | Answer::Unknown => {
            assume.note("running", Amount::of(kind.running), "running");
            let factor = factor(assume);
            (
                kind.running,
                Current::of_load(kind.running, factor, volts),
                factor,
            )
        }
    }
}

/// Full-load current by NEC table 430.248; at twice the voltage half of it, rounded up.
fn motor_current(millihorsepower: u32, volts: Voltage) -> Current {
    let at_115 = motors::full_load_at_115(millihorsepower);
    if volts.millivolts() >= 200_000 {
        Current::from_milliamps((at_115.milliamps() + 1) / 2)
    } else {
        at_115
    }
}

/// Watts of a current, rounded up.
fn real_power(current: Current, volts: Voltage, factor: Ratio) -> Power {
    let product = i128::from(current.milliamps())
        * i128::from(volts.millivolts())
        * i128::from(factor.permille());
    Power::from_milliwatts(narrow((product + 999_999) / 1_000_000))
}

/// Current of an apparent power, rounded up.
fn current_of(apparent: ApparentPower, volts: Voltage) -> Current {
    let volts = i128::from(volts.millivolts().max(1));
    let up = i128::from(apparent.millivolt_amps()) * 1000;
    Current::from_milliamps(narrow((up + volts - 1) / volts))
}

/// Starting power and current.
fn starting(
    load: &Load,
    kind: &KindFigures,
    volts: Voltage,
    factor: Ratio,
    running: Power,
    running_current: Current,
    assume: &mut Assume<'_>,
) -> (Power, Current) {
    const UNITY: Ratio = Ratio::from_permille(1000);
    if let Answer::Known(power) = load.starting {
        return (power, Current::of_load(power, factor, volts));
    }
    let current = match &load.running {
        // The letter on the nameplate tells; a motor without one starts at six times its
        // full-load current (NEC 430.251(A)).
        Answer::Known(Draw::Motor {
            millihorsepower,
            code,
        }) => code
            .and_then(|letter| motors::locked_rotor(*millihorsepower, letter))
            .map_or_else(
                || {
                    Current::from_milliamps(
                        running_current
                            .milliamps()
                            .saturating_mul(motors::MOTORS.multiple),
                    )
                },
                |apparent| current_of(apparent, volts),
            ),
        _ if kind.starting.permille() <= 1000 => return (running, running_current),
        _ => {
            let wide =
                i128::from(running_current.milliamps()) * i128::from(kind.starting.permille());
            Current::from_milliamps(narrow((wide + 999) / 1000))
        }
    };
    // At the start nearly all of it is reactive; how much nobody knows, so every volt-ampere
    // is counted as a watt, the upper bound.
    let power = real_power(current, volts, UNITY);
    assume.note("starting", Amount::of(power), "starting");
    (power, current)
}

/// Whether the load counts as running for three hours or more. Its hours tell where the plan
/// does not; with neither it does, which gives it the lower limit.
fn continuous(load: &Load, assume: &mut Assume<'_>) -> bool {
    match load.continuous {
        Answer::Known(continuous) => continuous,
        Answer::Missing if !load.hours.is_empty() => load
            .hours
            .iter()
            .any(|span| span.minutes() >= CONTINUOUS_MINUTES),
        Answer::Missing | Answer::Unknown => {
            assume.note(
                "continuous",
                Value::Word {
                    word: "assumed-yes",
                },
                "continuous",
            );
            true
        }
    }
}

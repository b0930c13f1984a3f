//! The plan's loads as units that take one receptacle each, with every figure the core needs.

use serde::{Serialize, Serializer};

use crate::plan::{Answer, Choice, Draw, Id, Load, LoadKind, Plan, Span, System, Uses};
use crate::quantity::{ApparentPower, Current, Power, Ratio, Voltage, narrow};
use crate::supply::drop::Draws;
use crate::tables::kinds::{self, KindFigures};
use crate::tables::motors;
use crate::tables::shape::{Circuit, Configuration, Plug};
use crate::value::{Assumption, Value};

/// The plug assumed where it is unknown: the ordinary one, which every camp load has.
const UNKNOWN_PLUG: Plug = Plug(Configuration::N5_15);
/// The voltage that household plugs, and each leg of larger ones, are made for: 125 V (NEMA WD 6, from memory, not
/// verified).
const PLUG_VOLTS: Voltage = Voltage::from_millivolts(125_000);
/// Watts per horsepower, rounded down: 550 foot-pounds a second, 745.7 W, by definition. A motor never gives more than
/// it takes.
const HORSEPOWER: i64 = 745;
const UNITY: Ratio = Ratio::from_permille(1000);
/// Three hours, from which on a load is continuous (NEC article 100).
pub(crate) const CONTINUOUS_MINUTES: u16 = 180;

/// One thing that takes one receptacle: a load, or one of several of the same kind.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LoadUnit {
    /// Its id, numbered as in `lamp.2` if there are several.
    pub id: Id,
    /// The index of its load in [`Plan::loads`].
    pub load: usize,
    /// Its name.
    pub name: String,
    /// How it behaves. An unknown kind counts as medical: that has the most weight, and draws more current as the
    /// voltage falls, as most kinds do.
    pub kind: LoadKind,
    /// Its plug, known or assumed. In a camper, the camper's inlet unless the load's own plug is known.
    pub plug: Plug,
    /// The nominal voltage that its current is computed at: that of the plug, or of one leg for a load that may have
    /// all of its current on one.
    pub volts: Voltage,
    /// Whether all of its current may be on one leg of a two-leg plug.
    pub one_leg: bool,
    /// Whether it is in a camper and may be for one leg or for both, so that it has a place on either. Its amps flow on
    /// each leg there is.
    pub either_volts: bool,
    /// Running power, rounded up.
    pub running: Power,
    /// Running current on each leg it uses, rounded up.
    pub running_current: Current,
    /// Running volt-amperes on each leg it uses. Loads that are on together are added up in these and rounded to
    /// amperes once: three times 800 W is exactly 20 A at 120 V.
    pub running_apparent: ApparentPower,
    /// Starting power, rounded up, never less than running. Where only the starting current is known, an upper bound at
    /// unity power factor.
    pub starting: Power,
    /// Starting current on each leg it uses, rounded up, never less than running.
    pub starting_current: Current,
    /// Starting volt-amperes on each leg it uses, added up like the running ones.
    pub starting_apparent: ApparentPower,
    /// Whether it counts as running for three hours or more.
    pub continuous: bool,
    /// Why it must not be plugged in anywhere, as the word used in `unplaced`.
    pub barred: Option<&'static str>,
}

impl LoadUnit {
    /// Returns how its current changes as the voltage falls. A heater is a plain resistance. Everything else is assumed
    /// to be the worse case, drawing constant power.
    #[must_use]
    pub fn draws(&self) -> Draws {
        if self.kind.heats() { Draws::Resistance } else { Draws::Power }
    }

    /// Returns the facts for the report.
    #[must_use]
    pub fn facts(&self, plan: &Plan) -> LoadFacts {
        LoadFacts {
            id: self.id.clone(),
            of: plan.loads[self.load].id.clone(),
            name: self.name.clone(),
            kind: plan.loads[self.load].kind,
            volts: self.volts,
            running_watts: self.running,
            running_amps: self.running_current,
            starting_watts: self.starting,
            starting_amps: self.starting_current,
            running_volt_amps: self.running_apparent,
            starting_volt_amps: self.starting_apparent,
            continuous: self.continuous,
        }
    }
}

/// A load as the core sees it, so that prints need not look into the plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct LoadFacts {
    /// Its id, numbered as in `lamp.2` if there are several.
    pub id: Id,
    /// The id of the load in the plan, without the number.
    pub of: Id,
    /// Its name.
    pub name: String,
    /// Its kind, or `unknown`.
    #[serde(serialize_with = "kind_code")]
    pub kind: Answer<LoadKind>,
    /// The nominal voltage that its current is computed at.
    pub volts: Voltage,
    /// Running power.
    pub running_watts: Power,
    /// Running current. It comes from apparent power, so it may be more than watts over volts.
    pub running_amps: Current,
    /// Starting power. Where only the starting current is known, at unity power factor.
    pub starting_watts: Power,
    /// Starting current.
    pub starting_amps: Current,
    /// Running volt-amperes on each leg it uses. Add these up for several loads, and round up to amperes once.
    pub running_volt_amps: ApparentPower,
    /// Starting volt-amperes on each leg it uses. See [`Self::running_volt_amps`].
    pub starting_volt_amps: ApparentPower,
    /// Whether it counts as running for three hours or more.
    pub continuous: bool,
}

impl LoadFacts {
    /// Returns how many legs it is counted on, with its full current on each.
    pub(crate) const fn legs(&self) -> i64 {
        if two_legs(self.volts) { 2 } else { 1 }
    }

    /// Whether somebody's health depends on it, or might.
    #[must_use]
    pub fn life(&self) -> bool {
        self.kind.known().is_none_or(|kind| *kind == LoadKind::Medical)
    }
}

#[allow(clippy::trivially_copy_pass_by_ref)]
fn kind_code<S: Serializer>(kind: &Answer<LoadKind>, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(kind.known().map_or("unknown", |kind| kind.word()))
}

/// Returns the facts of every load of the plan.
#[must_use]
pub fn facts(plan: &Plan) -> Vec<LoadFacts> {
    units(plan).0.iter().map(|unit| unit.facts(plan)).collect()
}

/// Returns every load of the plan as units, in plan order, and what had to be assumed.
#[must_use]
pub fn units(plan: &Plan) -> (Vec<LoadUnit>, Vec<Assumption>) {
    let mut assumed = Vec::new();
    let mut units = Vec::new();
    for (at, load) in plan.loads.iter().enumerate() {
        let one = unit(plan, at, load, &mut assumed);
        if load.count <= 1 {
            units.push(one);
        } else {
            units.extend(
                (1..=usize::from(load.count)).map(|number| LoadUnit { id: load.id.end(number), ..one.clone() }),
            );
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
        self.list.push(Assumption { field: format!("load.{}.{field}", self.load), value: value.into(), why });
    }
}

fn unit(plan: &Plan, at: usize, load: &Load, assumed: &mut Vec<Assumption>) -> LoadUnit {
    let kind = kinds::of_kind(load.kind);
    let mut assume = Assume { load: &load.id, list: assumed };
    if !load.kind.is_known() {
        let word = "assumed-worst-kind";
        assume.note("kind", Value::Word { word }, "load-kind");
    }
    let around = plan.around(load);
    let plug = match (load.plug, around) {
        (Answer::Known(plug), _) => plug,
        (_, Some(camper)) => camper.inlet.or(UNKNOWN_PLUG),
        _ => {
            assume.note("plug", Value::Name(UNKNOWN_PLUG.to_string()), "load-plug");
            UNKNOWN_PLUG
        }
    };
    // Watts do not tell how a load with two hots and a neutral divides them between the legs, so all of it may be on
    // either. This does not apply to amps, which are per leg, to motors for 240 V, which have no neutral, or to loads
    // that use only 240 V, which draw the same on each. What uses only 120 V has all of it on one.
    let neutral = plug.0.circuit() == Circuit::TwoLegsNeutral;
    let amps = matches!(load.running, Answer::Known(Draw::Current(_)));
    let motor = matches!(load.running, Answer::Known(Draw::Motor { .. }));
    let lopsided = neutral
        && match load.voltage {
            Answer::Known(Uses::V120) => true,
            Answer::Known(Uses::V240) => false,
            Answer::Known(Uses::V120AndV240) => !amps && !motor,
            Answer::Missing | Answer::Unknown => !amps,
        };
    let either_volts = neutral && amps && !load.voltage.is_known() && around.is_some();
    if neutral && (either_volts || plan.generator.voltage != Answer::Known(System::V120)) {
        let (one, both) = (Value::Word { word: "assumed-one-leg" }, Value::Word { word: "assumed-leg-both" });
        match load.voltage {
            Answer::Missing | Answer::Unknown if amps => assume.note("voltage", both, "load-amps-voltage"),
            Answer::Missing | Answer::Unknown => assume.note("voltage", one, "load-voltage"),
            Answer::Known(Uses::V120AndV240) if lopsided => assume.note("legs", one, "load-one-leg"),
            Answer::Known(_) => {}
        }
    }
    let legs = if lopsided || plug.0.circuit() == Circuit::OneLeg { 1 } else { 2 };
    let volts = Voltage::from_millivolts(plan.line_to_neutral().millivolts() * legs);
    let (running, running_current, factor) = running(load, kind, plug, volts, &mut assume);
    let (running, running_current) = match load.running {
        Answer::Known(Draw::Power(_)) if around.is_none() => at_the_plug(load.kind, plug, running, running_current),
        _ => (running, running_current),
    };
    let (starting, starting_current) = starting(load, kind, volts, factor, running, running_current, &mut assume);
    let (starting, starting_current) = match load.starting {
        Answer::Known(_) if around.is_none() => at_the_plug(load.kind, plug, starting, starting_current),
        _ => (starting, starting_current),
    };
    let (volts, running_current, starting_current) = if lopsided && load.voltage != Answer::Known(Uses::V120) {
        past_one_leg(plug, volts, running_current, starting_current)
    } else {
        (volts, running_current, starting_current)
    };
    let starting_current = starting_current.max(running_current);
    let on_a_leg = |power, amps| on_a_leg(power, factor, amps, volts, plan.line_to_neutral());
    let of_watts = !matches!(load.running, Answer::Known(Draw::Current(_) | Draw::Motor { .. }));
    let running_apparent = on_a_leg(Some(running).filter(|_| of_watts), running_current);
    let starting_apparent = if starting_current == running_current {
        running_apparent
    } else {
        on_a_leg(load.starting.known().copied(), starting_current)
    };
    LoadUnit {
        id: load.id.clone(),
        load: at,
        name: load.name.clone(),
        kind: load.kind.or(LoadKind::Medical),
        plug,
        volts,
        // Unknown amps count on both legs, and lose their volts as if on one, which is more.
        one_leg: lopsided || neutral && amps && !load.voltage.is_known(),
        running,
        running_current,
        running_apparent,
        starting: starting.max(running),
        starting_current,
        starting_apparent: starting_apparent.max(running_apparent),
        continuous: continuous(load, &mut assume),
        either_volts,
        barred: barred(plan, load),
    }
}

/// Returns the volt-amperes on each leg. Where the current was computed from `power`, that is power over power factor.
/// Where the current was given, or capped by the plug, it is that current.
fn on_a_leg(power: Option<Power>, factor: Ratio, amps: Current, volts: Voltage, leg: Voltage) -> ApparentPower {
    let of_amps = ApparentPower::of_load(amps, leg);
    let Some(power) = power.filter(|power| Current::of_load(*power, factor, volts) == amps) else {
        return of_amps;
    };
    let up = i128::from(power.milliwatts()) * 1000 * i128::from(leg.millivolts());
    let over = i128::from(factor.permille().max(1)) * i128::from(volts.millivolts().max(1));
    ApparentPower::from_millivolt_amps(narrow((up + over - 1) / over)).min(of_amps)
}

/// Caps a heater's draw at its plug. Its watts hold at the voltage that its household plug is made for, and at a lower
/// voltage it takes fewer amps. If the plug carries the watts at that voltage, no more counts than the plug's amps, and
/// the watts they make.
fn at_the_plug(kind: Answer<LoadKind>, plug: Plug, power: Power, amps: Current) -> (Power, Current) {
    let most = plug.0.rating();
    if kind.known().is_some_and(|kind| kind.heats())
        && plug.0.household()
        && power <= Power::of_capacity(most, PLUG_VOLTS)
        && amps > most
    {
        (Power::of_capacity(most, plug.0.volts()), most)
    } else {
        (power, amps)
    }
}

/// Returns the voltage and current of a load that has all of its current on one leg. If that exceeds the plug, the leg
/// gets what the plug carries, or half of the total if that is more, and the other leg may have as much.
fn past_one_leg(plug: Plug, volts: Voltage, running: Current, starting: Current) -> (Voltage, Current, Current) {
    let rating = plug.0.rating();
    if running <= rating {
        return (volts, running, starting);
    }
    let half = Current::from_milliamps((running.milliamps() + 1) / 2);
    let leg = rating.max(half);
    let more = starting.max(running) - running;
    (Voltage::from_millivolts(volts.millivolts() * 2), leg, leg + more)
}

/// Returns the running power and current, and the power factor.
fn running(
    load: &Load,
    kind: &KindFigures,
    plug: Plug,
    volts: Voltage,
    assume: &mut Assume<'_>,
) -> (Power, Current, Ratio) {
    let factor = |assume: &mut Assume<'_>| {
        if let Answer::Known(factor) = load.power_factor {
            return Ratio::from_permille(factor.permille().clamp(1, 1000));
        }
        // Resistance heat has unity power factor, which is no assumption.
        if kind.power_factor.permille() != 1000 {
            assume.note("power_factor", kind.power_factor, "power-factor");
        }
        kind.power_factor
    };
    match &load.running {
        Answer::Known(Draw::Power(power)) => {
            let factor = factor(assume);
            let amps = Current::of_load(*power, factor, volts);
            // An assumed power factor never raises the current past what the load's own plug carries.
            let most = match (load.power_factor, load.plug) {
                (Answer::Missing | Answer::Unknown, Answer::Known(plug)) => plug.0.rating(),
                _ => amps,
            };
            let least = Current::of_load(*power, UNITY, volts);
            (*power, amps.min(most.max(least)), factor)
        }
        // A current is apparent already. Without a stated power factor, the watts are as many as the volt-amperes,
        // their upper bound.
        Answer::Known(Draw::Current(current)) => {
            let known =
                Ratio::from_permille(load.power_factor.or(Ratio::from_permille(1000)).permille().clamp(1, 1000));
            (real_power(*current, volts, known), *current, known)
        }
        Answer::Known(Draw::Motor { millihorsepower, .. }) => {
            let known =
                Ratio::from_permille(load.power_factor.or(Ratio::from_permille(1000)).permille().clamp(1, 1000));
            let current = motor_current(*millihorsepower, volts);
            (real_power(current, volts, known), current, known)
        }
        Answer::Missing | Answer::Unknown => {
            let power = unknown_power(load.kind, kind, plug, volts);
            assume.note("running", power, "running");
            // A load that fills its plug does so at any power factor, so every volt-ampere counts as a watt.
            let factor = if fills_its_plug(load.kind) {
                load.power_factor.or(Ratio::from_permille(1000))
            } else {
                factor(assume)
            };
            let factor = Ratio::from_permille(factor.permille().clamp(1, 1000));
            let amps = Current::of_load(power, factor, volts);
            (power, amps.min(plug.0.rating()), factor)
        }
    }
}

/// Whether some load of this kind takes all that a plug carries. An unknown kind may be one of these.
pub(crate) const fn fills_its_plug(kind: Answer<LoadKind>) -> bool {
    !matches!(kind, Answer::Known(LoadKind::Lamp | LoadKind::Medical))
}

/// Returns the power assumed for a load of unknown power: the most of its kind, up to all that its plug carries. The
/// rule that it may draw only 80 % of that for hours binds its maker, and promises nothing about what it draws for
/// less.
fn unknown_power(of: Answer<LoadKind>, kind: &KindFigures, plug: Plug, volts: Voltage) -> Power {
    if !fills_its_plug(of) {
        return kind.running;
    }
    let most = Power::of_capacity(plug.0.rating(), volts);
    most.max(kind.running)
}

/// Returns why a load must not be plugged in, wherever there is room. `hot`: it or its outlet was felt hot or gave a
/// shock (rule CORD009). `impossible`: it is said to draw more than its own plug is rated for, so one of the two is
/// wrong (rule POWER009).
fn barred(plan: &Plan, load: &Load) -> Option<&'static str> {
    let felt_hot = |at: &Id| plan.outlets().any(|it| it.id == *at && it.hot == Some(true));
    let in_hot = || load.plugged_into().is_some_and(felt_hot);
    if load.hot.unwrap_or_else(in_hot) { Some("hot") } else { exceeds_its_plug(load).then_some("impossible") }
}

/// Whether a load is said to draw more than its own plug is rated for.
pub(crate) fn exceeds_its_plug(load: &Load) -> bool {
    let (Answer::Known(plug), Some(draw)) = (load.plug, load.running.known()) else {
        return false;
    };
    least_current(draw, load.power_factor, plug) > plug.0.rating()
}

/// Returns the least current that something with this plug draws on a leg, whatever else is unknown: its watts at the
/// voltage that the plug is made for, divided evenly between the legs. Rounded down.
pub(crate) fn least_current(draw: &Draw, factor: Answer<Ratio>, plug: Plug) -> Current {
    let watts = match draw {
        Draw::Current(amps) => return *amps,
        Draw::Power(power) => *power,
        Draw::Motor { millihorsepower, .. } => Power::from_milliwatts(i64::from(*millihorsepower) * HORSEPOWER),
    };
    let legs = match plug.0.circuit() {
        Circuit::OneLeg => 1,
        Circuit::TwoLegs | Circuit::TwoLegsNeutral => 2,
    };
    // A motor's horsepower is its output, so no power factor applies.
    let factor = match draw {
        Draw::Power(_) => factor.or(UNITY).permille().clamp(1, 1000),
        _ => 1000,
    };
    let at_unity = i128::from(watts.milliwatts()) * 1_000_000;
    let volts = i128::from(PLUG_VOLTS.millivolts() * legs);
    Current::from_milliamps(narrow(at_unity / volts / i128::from(factor)))
}

/// Returns the full-load current by NEC table 430.248: at twice the voltage, half of it, rounded up.
fn motor_current(millihorsepower: u32, volts: Voltage) -> Current {
    let at_115 = motors::full_load_at_115(millihorsepower);
    if two_legs(volts) { Current::from_milliamps((at_115.milliamps() + 1) / 2) } else { at_115 }
}

/// Returns the rated voltage of a motor for this supply: 115 V or 230 V.
fn motor_volts(volts: Voltage) -> Voltage {
    let legs = if two_legs(volts) { 2 } else { 1 };
    Voltage::from_millivolts(motors::RATED_VOLTS.millivolts() * legs)
}

const fn two_legs(volts: Voltage) -> bool {
    volts.millivolts() >= 200_000
}

/// Returns the power of a current, rounded up.
fn real_power(current: Current, volts: Voltage, factor: Ratio) -> Power {
    let product = i128::from(current.milliamps()) * i128::from(volts.millivolts()) * i128::from(factor.permille());
    Power::from_milliwatts(narrow((product + 999_999) / 1_000_000))
}

/// Returns the starting power and current.
fn starting(
    load: &Load,
    kind: &KindFigures,
    volts: Voltage,
    factor: Ratio,
    running: Power,
    running_current: Current,
    assume: &mut Assume<'_>,
) -> (Power, Current) {
    if let Answer::Known(power) = load.starting {
        return (power, Current::of_load(power, factor, volts));
    }
    // Amps are what flows, whatever the power factor. Every volt-ampere counts as a watt.
    if let Answer::Known(amps) = load.starting_current {
        return (real_power(amps, volts, UNITY), amps);
    }
    let times = |multiple: i64| Current::from_milliamps(running_current.milliamps().saturating_mul(multiple));
    let mut why = Some("starting");
    let current = match &load.running {
        // The code letter decides. A motor without one starts at six times its full-load current (NEC 430.251(A)).
        Answer::Known(Draw::Motor { millihorsepower, code }) => {
            let told = code.and_then(|letter| {
                let apparent = motors::locked_rotor(*millihorsepower, letter)?;
                Some((letter, Current::of_apparent(apparent, motor_volts(volts))))
            });
            match told {
                Some((letter, least)) if letter.eq_ignore_ascii_case(&motors::NO_UPPER_END) => {
                    why = Some("starting-code-v");
                    least
                }
                Some((_, most)) => {
                    why = None;
                    most
                }
                None => times(motors::MOTORS.multiple),
            }
        }
        _ if kind.starting.permille() <= 1000 => return (running, running_current),
        _ => {
            let wide = i128::from(running_current.milliamps()) * i128::from(kind.starting.permille());
            Current::from_milliamps(narrow((wide + 999) / 1000))
        }
    };
    // Starting current is nearly all reactive, but how much is unknown, so every volt-ampere counts as a watt, the
    // upper bound.
    let power = real_power(current, volts, UNITY);
    if let Some(why) = why {
        assume.note("starting", power, why);
    }
    (power, current)
}

/// Whether the load counts as running for three hours or more. Where the plan does not say, its hours decide. Without
/// either, it does, which gives the lower limit. A plan may say that a tool is used on and off all day, but what heats
/// a room or a bed is on for all of its hours.
fn continuous(load: &Load, assume: &mut Assume<'_>) -> bool {
    let for_hours = || longest_stretch(&load.hours) >= CONTINUOUS_MINUTES;
    match load.continuous {
        Answer::Known(said) => said || load.may_be(LoadKind::Heater) && for_hours(),
        Answer::Missing | Answer::Unknown if !load.hours.is_empty() => for_hours(),
        Answer::Missing | Answer::Unknown => {
            assume.note("continuous", Value::Word { word: "assumed-yes" }, "continuous");
            true
        }
    }
}

/// Returns the longest run of minutes that the spans cover together, across midnight too.
fn longest_stretch(spans: &[Span]) -> u16 {
    if let [span] = spans {
        return span.minutes();
    }
    let (mut longest, mut current) = (0, 0);
    // Two days in a row, so that a stretch across midnight is seen whole.
    for minute in (0..Span::DAY).chain(0..Span::DAY) {
        current = if spans.iter().any(|span| span.contains(minute)) { current + 1 } else { 0 };
        longest = longest.max(current);
    }
    longest.min(Span::DAY)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan;

    /// Returns the units of a plan with these loads, and what was assumed, each as `FIELD WHY`.
    fn units_of(loads: &str) -> (Vec<LoadUnit>, Vec<String>) {
        let text = format!(
            r#"
format = 1
region = "north-america"
[site]
name = "Test"
[generator]
name = "set"
rated = "5 kW"
voltage = "120/240 V"
[[generator.outlet]]
id = "front"
shape = "5-20R"
breaker = "20 A"
{loads}"#
        );
        let plan = plan::read(&text).unwrap_or_else(|problems| panic!("{problems:?}"));
        let (units, assumed) = units(&plan);
        let assumed =
            assumed.into_iter().map(|assumption| format!("{} {}", assumption.field, assumption.why)).collect();
        (units, assumed)
    }

    fn one(lines: &str) -> (LoadUnit, Vec<String>) {
        let (units, assumed) =
            units_of(&format!("[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"5-15P\"\ncontinuous = false\n{lines}\n"));
        assert_eq!(units.len(), 1);
        (units[0].clone(), assumed)
    }

    #[test]
    fn a_heater_is_plain_arithmetic() {
        let (unit, assumed) = one("kind = \"heater\"\nrunning = \"1500 W\"");
        assert_eq!(unit.running_current.milliamps(), 12_500);
        assert_eq!(unit.starting_current.milliamps(), 12_500);
        assert!(assumed.is_empty(), "{assumed:?}");
    }

    #[test]
    fn watts_are_not_volt_amperes() {
        // 300 W at a power factor of 0.6 is 500 VA: 4.167 A, not 2.5 A.
        let (unit, _) = one("kind = \"electronic\"\nrunning = \"300 W\"\npower_factor = 0.6");
        assert_eq!(unit.running_current.milliamps(), 4167);
        // An unknown factor gives the same, and is reported.
        let (unit, assumed) = one("kind = \"electronic\"\nrunning = \"300 W\"");
        assert_eq!(unit.running_current.milliamps(), 4167);
        assert_eq!(assumed, ["load.x.power_factor power-factor"]);
        // A nameplate current is used as it is. The watts are at most its volt-amperes.
        let (unit, assumed) = one("kind = \"electronic\"\ncurrent = \"2 A\"");
        assert_eq!(unit.running_current.milliamps(), 2000);
        assert_eq!(unit.running.milliwatts(), 240_000);
        assert!(assumed.is_empty(), "{assumed:?}");
    }

    #[test]
    fn motors_start_at_their_locked_rotor_current() {
        // NEC 430.251(A): 1/2 hp at 115 V has a full load of 9.8 A and a locked rotor of 58.8 A.
        let (unit, assumed) = one("kind = \"motor\"\nmotor = { hp = \"1/2\" }");
        assert_eq!(unit.running_current.milliamps(), 9800);
        assert_eq!(unit.starting_current.milliamps(), 58_800);
        assert_eq!(assumed, ["load.x.starting starting"]);
        // NEC table 430.7(B): code G is at most 6.29 kVA per hp, at the motor's own 115 V (430.248): 3145 VA for 1/2
        // hp, 27.348 A. The letter decides, so nothing is assumed.
        let (unit, assumed) = one("kind = \"motor\"\nmotor = { hp = \"1/2\", code = \"G\" }");
        assert_eq!(unit.starting_current.milliamps(), 27_348);
        assert!(assumed.is_empty(), "{assumed:?}");
        // U ends at 22.39 kVA per hp. V begins at 22.4 and has no upper end: 11 200 VA, 97.392 A.
        for (code, milliamps, assumes) in [("U", 97_348, 0), ("V", 97_392, 1), ("v", 97_392, 1)] {
            let (unit, assumed) = one(&format!("kind = \"motor\"\nmotor = {{ hp = \"1/2\", code = \"{code}\" }}"));
            assert_eq!(unit.starting_current.milliamps(), milliamps, "{code}");
            assert_eq!(assumed, vec!["load.x.starting starting-code-v"; assumes], "{code}");
        }
    }

    #[test]
    fn a_motor_without_a_starting_figure() {
        let (unit, assumed) = one("kind = \"motor\"\nrunning = \"160 W\"\npower_factor = 0.8");
        // 160 W / (0.8 x 120 V) = 1.667 A, times six.
        assert_eq!(unit.starting_current.milliamps(), 6 * 1667);
        assert_eq!(assumed, ["load.x.starting starting"]);
        // Where the running power is a guess, the start is at least the guess.
        let (unit, _) = one("kind = \"motor\"\nrunning = \"unknown\"\nstarting = \"100 W\"");
        assert_eq!(unit.running.milliwatts(), 1_800_000);
        assert_eq!(unit.starting, unit.running);
        assert_eq!(unit.starting_current, unit.running_current);
    }

    /// An unknown load draws all that its plug carries at 120 V, or at 240 V for a 6-20P. A lamp or medical device
    /// draws the most of its kind.
    #[test]
    fn an_unknown_load_is_the_worst_of_its_kind() {
        for (kind, plug, watts, milliamps) in [
            ("heater", "5-15P", 1800, 15_000),
            ("motor", "5-15P", 1800, 15_000),
            ("electronic", "5-15P", 1800, 15_000),
            ("electronic", "5-20P", 2400, 20_000),
            ("motor", "TT-30P", 3600, 30_000),
            ("heater", "6-20P", 4800, 20_000),
            // 500 W and 600 W at a power factor of 0.6.
            ("lamp", "5-15P", 500, 6_945),
            ("medical", "5-15P", 600, 8_334),
        ] {
            let (units, assumed) = units_of(&format!(
                "[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"{plug}\"\ncontinuous = false\n\
                 kind = \"{kind}\"\nrunning = \"unknown\"\n"
            ));
            assert_eq!(units[0].running.milliwatts(), watts * 1000, "{kind} {plug}");
            assert_eq!(units[0].running_current.milliamps(), milliamps, "{kind} {plug}");
            assert!(assumed.contains(&"load.x.running running".to_owned()), "{assumed:?}");
        }
    }

    /// 60 W at 0.6, the lowest power factor of any kind, is 100 VA, 0.834 A. A motor starts at six times that (NEC
    /// 430.251(A)).
    #[test]
    fn of_an_unknown_kind_the_worst_of_each_figure_is_taken_and_said() {
        let (unit, assumed) = one("kind = \"unknown\"\nrunning = \"60 W\"");
        assert_eq!(unit.running_current.milliamps(), 834);
        assert_eq!(unit.starting_current.milliamps(), 6 * 834);
        assert_eq!(assumed, ["load.x.kind load-kind", "load.x.power_factor power-factor", "load.x.starting starting"]);
        // With unknown watts too, as many as a heater.
        let (unit, assumed) = one("kind = \"unknown\"\nrunning = \"unknown\"");
        assert_eq!(unit.running.milliwatts(), 1_800_000);
        // The plug caps the current at any power factor.
        assert_eq!(unit.running_current.milliamps(), 15_000);
        assert_eq!(assumed.len(), 3, "{assumed:?}");
        // No known kind with the same answers demands more of anything.
        for draw in ["60 W", "unknown"] {
            let of = |kind: &str| one(&format!("kind = \"{kind}\"\nrunning = \"{draw}\"")).0;
            let worst = of("unknown");
            for kind in ["heater", "motor", "electronic", "lamp", "medical"] {
                let known = of(kind);
                assert!(known.running <= worst.running, "{kind}");
                assert!(known.running_current <= worst.running_current, "{kind}");
                assert!(known.starting <= worst.starting, "{kind}");
                assert!(known.starting_current <= worst.starting_current, "{kind}");
            }
        }
    }

    /// 1875 W is 15 A at 125 V, which a 5-15P is made for (NEMA WD 6, from memory). At 120 V it draws fewer watts.
    #[test]
    fn a_heater_takes_no_more_amps_than_the_plug_that_carries_its_watts() {
        for (watts, milliamps) in [(1800, 15_000), (1875, 15_000), (1876, 15_634)] {
            let (unit, _) = one(&format!("kind = \"heater\"\nrunning = \"{watts} W\""));
            assert_eq!(unit.running_current.milliamps(), milliamps, "{watts} W");
            assert_eq!(unit.starting_current.milliamps(), milliamps, "{watts} W");
            let watts = if watts == 1875 { 1800 } else { watts };
            assert_eq!(unit.running.milliwatts(), watts * 1000);
        }
        // Electronics take more amps at a lower voltage.
        let (unit, _) = one("kind = \"electronic\"\nrunning = \"1875 W\"\npower_factor = 1.0");
        assert_eq!(unit.running_current.milliamps(), 15_625);
        // A nameplate current is not capped.
        let (unit, _) = one("kind = \"heater\"\ncurrent = \"15.3 A\"");
        assert_eq!(unit.running_current.milliamps(), 15_300);
        assert_eq!(unit.starting_current.milliamps(), 15_300);
    }

    /// 3000 W at a power factor of 0.8 and 120 V is 31.25 A, all on one leg. 9600 W would be 80 A, but a 14-50P carries
    /// 50 A and the other leg has the rest. 19.2 kW is 80 A on each of two legs.
    #[test]
    fn a_thing_with_a_neutral_may_have_all_of_it_on_one_leg() {
        for (draw, milliamps, volts, said) in [
            ("running = \"3000 W\"\npower_factor = 0.8", 31_250, 120, true),
            ("running = \"9600 W\"\npower_factor = 1.0", 50_000, 240, true),
            ("running = \"19200 W\"\npower_factor = 1.0", 80_000, 240, true),
            // NEC table 430.248: 9.8 A at 115 V, and half of it at 230 V.
            ("motor = { hp = \"1/2\" }", 9_800, 120, true),
            ("motor = { hp = \"1/2\" }\nvoltage = \"240 V\"", 4_900, 240, false),
        ] {
            let (units, assumed) = units_of(&format!(
                "[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"14-50P\"\ncontinuous = false\n\
                 kind = \"electronic\"\n{draw}\n"
            ));
            assert_eq!(units[0].running_current.milliamps(), milliamps, "{draw}");
            assert_eq!(units[0].volts.millivolts(), volts * 1000, "{draw}");
            let told = assumed.contains(&"load.x.voltage load-voltage".to_owned());
            assert_eq!(told, said, "{assumed:?}");
        }
    }

    /// 16 A at 120 V are 1920 W on one leg (arithmetic). If nobody knows the voltage, it may be 240 V, and there are
    /// twice as many.
    #[test]
    fn amps_at_120_volts_are_on_one_leg() {
        for (voltage, volts, watts, said) in [
            ("", 240, 3840, Some("load.x.voltage load-amps-voltage")),
            ("voltage = \"unknown\"", 240, 3840, Some("load.x.voltage load-amps-voltage")),
            ("voltage = \"120 V\"", 120, 1920, None),
            ("voltage = \"240 V\"", 240, 3840, None),
            ("voltage = \"120/240 V\"", 240, 3840, None),
        ] {
            let (units, assumed) = units_of(&format!(
                "[[box]]\nid = \"camper\"\nkind = \"camper\"\ninlet = \"14-50P\"\n\
                 [[load]]\nid = \"x\"\nname = \"X\"\non = \"camper\"\ncontinuous = false\n\
                 kind = \"electronic\"\ncurrent = \"16 A\"\n{voltage}\n"
            ));
            assert_eq!(units[0].running_current.milliamps(), 16_000, "{voltage}");
            assert_eq!(units[0].volts.millivolts(), volts * 1000, "{voltage}");
            assert_eq!(units[0].running.milliwatts(), watts * 1000, "{voltage}");
            let said: Vec<&str> = said.into_iter().collect();
            assert_eq!(assumed, said, "{voltage}");
        }
    }

    /// 7680 W at 240 V only is 32 A on each leg (arithmetic, common practice), whatever the plug. With a neutral in
    /// use, or possibly in use, 64 A could be on one leg, and is capped at what the plug carries.
    #[test]
    fn what_uses_240_volts_only_has_as_much_on_each_leg() {
        for (plug, voltage, milliamps, volts, said) in [
            ("14-50P", "voltage = \"240 V\"", 32_000, 240, None),
            ("L14-30P", "voltage = \"240 V\"", 32_000, 240, None),
            ("14-50P", "voltage = \"120/240 V\"", 50_000, 240, Some("load.x.legs load-one-leg")),
            ("14-50P", "voltage = \"unknown\"", 50_000, 240, Some("load.x.voltage load-voltage")),
            ("14-50P", "", 50_000, 240, Some("load.x.voltage load-voltage")),
            // Without a neutral contact there is nothing to ask.
            ("6-20P", "", 32_000, 240, None),
        ] {
            let (units, assumed) = units_of(&format!(
                "[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"{plug}\"\ncontinuous = false\n\
                 kind = \"heater\"\nrunning = \"7680 W\"\n{voltage}\n"
            ));
            assert_eq!(units[0].running_current.milliamps(), milliamps, "{plug} {voltage}");
            assert_eq!(units[0].volts.millivolts(), volts * 1000, "{plug} {voltage}");
            let said: Vec<&str> = said.into_iter().collect();
            assert_eq!(assumed, said, "{plug} {voltage}");
        }
    }

    /// Locked-rotor amps are used as they are: 39 A at 120 V is 4680 VA, counted as watts, and no power factor divides
    /// it. 4680 W at 0.8 would be 48.75 A.
    #[test]
    fn amps_at_the_start_are_what_flows() {
        let motor = "kind = \"motor\"\nrunning = \"700 W\"\npower_factor = 0.8";
        let (unit, assumed) = one(&format!("{motor}\nstarting_current = \"39 A\""));
        assert_eq!(unit.starting_current.milliamps(), 39_000);
        assert_eq!(unit.starting.milliwatts(), 4_680_000);
        assert!(assumed.is_empty(), "{assumed:?}");
        let (unit, _) = one(&format!("{motor}\nstarting = \"4680 W\""));
        assert_eq!(unit.starting_current.milliamps(), 48_750);
        // On two legs, the nameplate amps flow on each.
        let (units, _) = units_of(
            "[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"6-20P\"\ncontinuous = false\n\
             kind = \"motor\"\ncurrent = \"8 A\"\nstarting_current = \"40 A\"\n",
        );
        assert_eq!(units[0].starting_current.milliamps(), 40_000);
        assert_eq!(units[0].starting.milliwatts(), 9_600_000);
    }

    /// 1500 W at 0.6, the lowest power factor of any kind, would be 20.8 A, more than a 5-15P is made for. An assumed
    /// power factor is capped by the plug. One from the nameplate is not.
    #[test]
    fn a_power_factor_that_is_taken_goes_no_further_than_the_plug() {
        let (unit, assumed) = one("kind = \"electronic\"\nrunning = \"1500 W\"");
        assert_eq!(unit.running_current.milliamps(), 15_000);
        assert_eq!(assumed, ["load.x.power_factor power-factor"]);
        let (unit, _) = one("kind = \"electronic\"\nrunning = \"1500 W\"\npower_factor = 0.6");
        assert_eq!(unit.running_current.milliamps(), 20_834);
        // Stated watts are not capped.
        let (unit, _) = one("kind = \"electronic\"\nrunning = \"2000 W\"");
        assert_eq!(unit.running_current.milliamps(), 16_667);
    }

    #[test]
    fn two_legs_halve_the_current() {
        let (units, _) = units_of(
            "[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"6-20P\"\ncontinuous = false\n\
             kind = \"heater\"\nrunning = \"2400 W\"\n",
        );
        assert_eq!(units[0].running_current.milliamps(), 10_000);
        // NEC table 430.248: at 230 V, half of it.
        let (units, _) = units_of(
            "[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"6-20P\"\ncontinuous = false\n\
             kind = \"motor\"\nmotor = { hp = \"1/2\" }\n",
        );
        assert_eq!(units[0].running_current.milliamps(), 4900);
        // Code G at 230 V: 3145 / 230 = 13.674 A.
        let (units, _) = units_of(
            "[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"6-20P\"\ncontinuous = false\n\
             kind = \"motor\"\nmotor = { hp = \"1/2\", code = \"G\" }\n",
        );
        assert_eq!(units[0].starting_current.milliamps(), 13_674);
    }

    #[test]
    fn several_alike_are_several_units() {
        let (units, _) = units_of(
            "[[load]]\nid = \"lamp\"\nname = \"Lamp\"\nplug = \"1-15P\"\ncount = 3\n\
             kind = \"lamp\"\nrunning = \"9 W\"\nhours = [\"18:00-22:00\"]\n",
        );
        let ids: Vec<&str> = units.iter().map(|unit| unit.id.as_str()).collect();
        assert_eq!(ids, ["lamp.1", "lamp.2", "lamp.3"]);
        // Four hours at a stretch is continuous.
        assert!(units.iter().all(|unit| unit.continuous));
    }

    #[test]
    fn hours_tell_whether_it_is_continuous() {
        let with = |lines: &str| {
            let (units, assumed) = units_of(&format!(
                "[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"5-15P\"\nkind = \"heater\"\n\
                 running = \"100 W\"\n{lines}\n"
            ));
            (units[0].continuous, assumed.len())
        };
        assert_eq!(with("hours = [\"07:00-09:59\"]"), (false, 0));
        assert_eq!(with("hours = [\"07:00-10:00\"]"), (true, 0));
        // Two spans that meet are one stretch, across midnight too.
        assert_eq!(with("hours = [\"07:00-09:00\", \"09:00-10:00\"]"), (true, 0));
        assert_eq!(with("hours = [\"22:00-24:00\", \"00:00-01:00\"]"), (true, 0));
        assert_eq!(with("hours = [\"07:00-09:00\", \"09:01-10:00\"]"), (false, 0));
        assert_eq!(with(""), (true, 1));
        assert_eq!(with("continuous = false"), (false, 0));
        // Where a heater's two answers disagree, the cautious one counts.
        let short = "continuous = false\nhours = [\"07:00-09:59\"]";
        assert_eq!(with(short), (false, 0));
        let long = "continuous = false\nhours = [\"07:00-10:00\"]";
        assert_eq!(with(long), (true, 0));
    }
}

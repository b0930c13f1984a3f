//! Voltage drop over the cords, in whole numbers.
//!
//! Only resistance counts. Leaving out reactance and the power factor angle makes the drop slightly too large. The
//! generator's own voltage sag is unknown and not counted, nor is the wiring of boxes, which is short. On two legs the
//! neutral carries all of one leg's current: the part that the other leg cancels is ignored.
//!
//! As the voltage sinks, a heater draws less and constant power more: both are solved together.

use super::{Legs, NodeIx, NodeKind, Supply};
use crate::plan::Leg;
use crate::quantity::{Current, Resistance, Voltage, narrow};

/// A voltage in microvolts, finer than [`Voltage`].
pub type Microvolts = i128;

/// Returns the volts a current loses in an out-and-back resistance, in microvolts, rounded up.
#[must_use]
pub fn volts_lost(resistance: Resistance, current: Current) -> Microvolts {
    // Micro-ohms times milliamperes are nanovolts.
    let nanovolts = i128::from(resistance.microohms()) * i128::from(current.milliamps());
    div_up(nanovolts, 1000)
}

/// Divides a non-negative number, rounding up. Nearly all values fit `i64`, whose division is native.
fn div_up(value: i128, by: i128) -> i128 {
    let up = value + by - 1;
    match (i64::try_from(up), i64::try_from(by)) {
        (Ok(up), Ok(by)) => i128::from(up / by),
        _ => up / by,
    }
}

fn nominal_currents(loads: &[Running]) -> Vec<i128> {
    loads.iter().map(|load| i128::from(load.current.milliamps()) * 1000).collect()
}

/// A running load, as the drop sees it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Running {
    /// The receptacle it is plugged into.
    pub at: NodeIx,
    /// Its current at nominal voltage.
    pub current: Current,
    /// How its current changes as the voltage sinks.
    pub draws: Draws,
    /// Whether all of its current may be on one leg, whichever, of a receptacle with both. Its voltage is then that of
    /// one leg.
    pub one_leg: bool,
}

/// What a load draws below its nominal voltage.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Draws {
    /// Its nominal current at any voltage: starting loads.
    Current,
    /// The same power, so more current: switched-mode supplies, loaded motors.
    Power,
    /// Less current, like a plain resistance: heaters.
    Resistance,
}

impl Supply {
    /// Returns the out-and-back resistance of all cords from the generator to a node.
    #[must_use]
    pub fn resistance_to(&self, at: NodeIx) -> Resistance {
        self.up(at)
            .filter_map(|(_, node)| match node.kind {
                NodeKind::Cord { resistance, .. } => Some(resistance),
                _ => None,
            })
            .sum()
    }

    /// Returns the volts lost between the generator and a node while these loads run at nominal current. In microvolts,
    /// on the leg that loses most; for a node on both legs, the loss between them.
    #[must_use]
    pub fn nominal_drop(&self, at: NodeIx, loads: &[Running]) -> Microvolts {
        self.nominal_flow(loads).drop(at)
    }

    /// Returns the same drop with each load drawing what it draws at the voltage left to it ([`Draws`]). `None` if that
    /// does not settle: the line cannot carry them.
    #[must_use]
    pub fn settled_drop(&self, at: NodeIx, loads: &[Running]) -> Option<Microvolts> {
        Some(self.settled_flow(loads)?.drop(at))
    }

    /// Returns what flows while each load draws its nominal current.
    #[must_use]
    pub fn nominal_flow(&self, loads: &[Running]) -> Flow<'_> {
        self.flow(loads, &nominal_currents(loads))
    }

    /// Returns what flows once each load draws what it draws at the voltage left to it; `None` if that does not settle.
    ///
    /// Each load in turn is solved exactly against what the others draw: a resistance and its line share the volts, and
    /// a constant power is a quadratic. Resistances alone settle on any line. A line that cannot carry a constant power
    /// is distinguished from one where another load's current has yet to drop.
    #[must_use]
    pub fn settled_flow(&self, loads: &[Running]) -> Option<Flow<'_>> {
        // Each round comes closer, by less each time. A line that loses so much that this takes longer is unusable
        // anyway.
        const ROUNDS: usize = 64;
        const SETTLED: Microvolts = 10;
        let mut flow = self.nominal_flow(loads);
        let mut currents = nominal_currents(loads);
        let lines: Vec<i128> = loads.iter().map(|load| i128::from(self.resistance_to(load.at).microohms())).collect();
        for _ in 0..ROUNDS {
            let (mut settled, mut carried) = (true, true);
            for ((load, line), current) in loads.iter().zip(&lines).zip(&mut currents) {
                let nominal = self.nominal(load);
                let own = div_up(line * *current, 1_000_000);
                let offered = nominal - (flow.lost_by(load) - own);
                let at_nominal = i128::from(load.current.milliamps()) * 1000;
                let drawn = match load.draws {
                    Draws::Current => Some(at_nominal),
                    Draws::Power => of_power(at_nominal, nominal, offered, *line),
                    Draws::Resistance => Some(of_resistance(at_nominal, nominal, offered, *line)),
                };
                carried &= drawn.is_some();
                // Only when the other currents have settled is it known whether the line can carry this one.
                let drawn = drawn.unwrap_or(2 * at_nominal);
                let more = drawn - *current;
                settled &= more.abs() <= 1 || (line * more).abs() <= SETTLED * 1_000_000;
                flow.add(load, more);
                *current = drawn;
            }
            if settled {
                return carried.then_some(flow);
            }
        }
        None
    }

    /// Returns the nominal voltage across a load.
    #[must_use]
    pub fn volts_of(&self, load: &Running) -> Voltage {
        if load.one_leg { self.volts } else { self.volts_at(load.at) }
    }

    fn nominal(&self, load: &Running) -> Microvolts {
        i128::from(self.volts_of(load).millivolts()) * 1000
    }

    /// Returns the flow for these `currents`, one per load, in microamperes.
    fn flow(&self, loads: &[Running], currents: &[i128]) -> Flow<'_> {
        let mut flow = Flow { supply: self, through: vec![Carried::default(); self.nodes.len()] };
        for (load, current) in loads.iter().zip(currents) {
            flow.add(load, *current);
        }
        flow
    }
}

/// Returns the microamperes that a constant power draws, given its current at nominal voltage and the voltage offered
/// at the head of its line. `None` if the line cannot carry it, or only below half the nominal voltage, where nothing
/// settles.
fn of_power(current: i128, nominal: Microvolts, offered: Microvolts, line: i128) -> Option<i128> {
    if current <= 0 {
        return Some(0);
    }
    if offered <= 0 {
        return None;
    }
    // (E + sqrt(E^2 - 4 R P)) / 2; micro-ohms times microamperes times microvolts are 10^-18 V^2.
    let four = 4 * (line * current) * nominal / 1_000_000;
    let under = offered * offered - four;
    if under < 0 {
        return None;
    }
    let left = i128::midpoint(offered, under.isqrt());
    (left * 2 >= nominal).then(|| div_up(current * nominal, left.max(1)))
}

/// Returns the same for a resistance, which shares the offered voltage with the line.
fn of_resistance(current: i128, nominal: Microvolts, offered: Microvolts, line: i128) -> i128 {
    // I E / (V + R I), with I at V.
    let both = nominal + line * current / 1_000_000;
    div_up(current * offered.max(0), both.max(1))
}

const fn side(leg: Leg) -> usize {
    match leg {
        Leg::A => 0,
        Leg::B => 1,
    }
}

/// The current through a node, in microamperes.
#[derive(Clone, Copy, Debug, Default)]
struct Carried {
    /// On leg A and on leg B.
    legs: [i128; 2],
    /// On one of them, which one being unknown.
    either: i128,
}

impl Carried {
    /// Returns the most that may be on a leg.
    const fn on(&self, leg: Leg) -> i128 {
        self.legs[side(leg)] + self.either
    }
}

/// The currents through the tree while some loads run.
#[derive(Clone, Debug)]
pub struct Flow<'a> {
    supply: &'a Supply,
    through: Vec<Carried>,
}

impl Flow<'_> {
    /// Adds current to a load, in microamperes.
    fn add(&mut self, load: &Running, more: i128) {
        let node = self.supply.node(load.at);
        for (ix, _) in self.supply.up(load.at) {
            let through = &mut self.through[ix.0];
            if node.on_either() {
                through.either += more;
            } else {
                for leg in node.legs.all() {
                    through.legs[side(*leg)] += more;
                }
            }
        }
    }

    /// Returns the volts lost between the generator and a node, in microvolts: on the leg that loses most, or between
    /// the legs for a node on both.
    #[must_use]
    pub fn drop(&self, at: NodeIx) -> Microvolts {
        let node = self.supply.node(at);
        match node.legs {
            Legs::One(_) if node.on_either() => self.on_leg(at, self.worst_leg(at)),
            Legs::One(leg) => self.on_leg(at, leg),
            // Each leg's wire loses half of what its current loses out and back. Between the legs the two halves add
            // up.
            Legs::Between | Legs::Both => {
                let legs = [Leg::A, Leg::B].map(|leg| self.lost(at, |it| it.legs[side(leg)]));
                div_up(legs.iter().sum::<Microvolts>() + self.lost(at, |it| it.either), 2)
            }
        }
    }

    /// Returns the volts lost on the way to a load, at its own voltage ([`Supply::volts_of`]).
    #[must_use]
    pub fn lost_by(&self, load: &Running) -> Microvolts {
        if load.one_leg { self.on_leg(load.at, self.worst_leg(load.at)) } else { self.drop(load.at) }
    }

    fn on_leg(&self, at: NodeIx, leg: Leg) -> Microvolts {
        self.lost(at, |carried| carried.on(leg))
    }

    /// Returns the microvolts that a chosen part of the cords' current loses on the way to a node.
    fn lost(&self, at: NodeIx, amps: impl Fn(&Carried) -> i128) -> Microvolts {
        let lost = |(cord, resistance): (NodeIx, Resistance)| {
            // Micro-ohms times microamperes are 10^-12 V.
            div_up(i128::from(resistance.microohms()) * amps(&self.through[cord.0]), 1_000_000)
        };
        self.cords_to(at).map(lost).sum()
    }

    /// Returns the leg that loses more on the way to a node.
    fn worst_leg(&self, at: NodeIx) -> Leg {
        if self.on_leg(at, Leg::B) > self.on_leg(at, Leg::A) { Leg::B } else { Leg::A }
    }

    /// Returns the current through a node, on the leg that carries most, rounded up.
    #[must_use]
    pub fn through(&self, at: NodeIx) -> Current {
        let carried = self.through[at.0];
        let most = carried.on(Leg::A).max(carried.on(Leg::B));
        Current::from_milliamps(narrow(div_up(most, 1000)))
    }

    /// Returns the current through each cord from the generator to a node, in that order: the currents that
    /// [`Self::drop`] multiplies by the cords' resistances. Rounded up; for a node on both legs, the mean of the two.
    #[must_use]
    pub fn through_cords(&self, at: NodeIx) -> Vec<(NodeIx, Current)> {
        let node = self.supply.node(at);
        if node.on_either() {
            self.through_cords_on(at, &[self.worst_leg(at)])
        } else {
            self.through_cords_on(at, node.legs.all())
        }
    }

    /// Returns the currents behind [`Self::lost_by`] in the same form.
    #[must_use]
    pub fn through_cords_to(&self, load: &Running) -> Vec<(NodeIx, Current)> {
        if load.one_leg {
            self.through_cords_on(load.at, &[self.worst_leg(load.at)])
        } else {
            self.through_cords(load.at)
        }
    }

    /// Returns the mean current of these legs through each cord, in the same order.
    fn through_cords_on(&self, at: NodeIx, legs: &[Leg]) -> Vec<(NodeIx, Current)> {
        let share = i128::try_from(legs.len()).unwrap_or(1).max(1);
        let mut through: Vec<(NodeIx, Current)> = self
            .cords_to(at)
            .map(|(cord, _)| {
                let carried = self.through[cord.0];
                let known: i128 = legs.iter().map(|leg| carried.legs[side(*leg)]).sum();
                let all = known + carried.either;
                let milliamps = narrow(div_up(all, 1000 * share));
                (cord, Current::from_milliamps(milliamps))
            })
            .collect();
        through.reverse();
        through
    }

    /// Iterates over the cords upstream of a node, nearest first, each with its resistance.
    fn cords_to(&self, at: NodeIx) -> impl Iterator<Item = (NodeIx, Resistance)> {
        self.supply.up(at).filter_map(|(ix, node)| match node.kind {
            NodeKind::Cord { resistance, .. } => Some((ix, resistance)),
            _ => None,
        })
    }
}

/// Converts lost microvolts to a voltage, rounded up.
#[must_use]
pub fn lost(microvolts: Microvolts) -> Voltage {
    Voltage::from_millivolts(narrow(div_up(microvolts.max(0), 1000)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Length, Power};
    /// Returns the volts left at a resistance heater of this power and nominal voltage, in microvolts, rounded down.
    /// Its resistance is fixed, so it draws less as the voltage sinks.
    fn volts_left_heater(source: Voltage, power: Power, resistance: Resistance) -> Microvolts {
        let volts = i128::from(source.millivolts());
        let power = i128::from(power.milliwatts());
        if volts <= 0 || power <= 0 {
            return volts * 1000;
        }
        // V Rl / (Rl + R) with Rl = V^2 / P is V^3 / (V^2 + P R). Both terms of the denominator are in 10^-9 V^2:
        // milliwatts times micro-ohms are that, and square millivolts a thousand of it.
        let square = volts * volts * 1000;
        let line = power * i128::from(resistance.microohms());
        volts * 1000 * square / (square + line)
    }

    /// Returns the volts left at a load of constant power, as switched-mode supplies are, in microvolts, rounded down.
    /// It draws more current as the voltage sinks. `None` if the line cannot carry that power at all.
    fn volts_left_constant_power(source: Voltage, power: Power, resistance: Resistance) -> Option<Microvolts> {
        let volts = i128::from(source.millivolts()) * 1000;
        // (V + sqrt(V^2 - 4 R P)) / 2; micro-ohms times milliwatts are 10^-9 V^2, and V^2 in microvolts is 10^-12.
        let four = 4 * i128::from(resistance.microohms()) * i128::from(power.milliwatts()) * 1000;
        let under = volts * volts - four;
        (under >= 0).then(|| i128::midpoint(volts, under.isqrt()))
    }

    /// Returns the out-and-back resistance from micro-ohms per 1000 ft of one conductor, rounded up.
    fn out_and_back(per_kilofoot: i64, length: Length) -> Resistance {
        const KILOFOOT: i64 = 304_800;
        Resistance::from_microohms((2 * per_kilofoot * length.millimetres() + KILOFOOT - 1) / KILOFOOT)
    }

    /// Returns the same for a length in feet.
    fn two_wire(per_kilofoot: i64, feet: i64) -> Resistance {
        out_and_back(per_kilofoot, Length::from_millimetres(feet * 3048 / 10))
    }

    /// Returns the drop in one conductor only, with the airframe as the return: half of out and back.
    fn one_wire_drop(per_kilofoot: i64, tenths_of_feet: i64, milliamps: i64) -> Microvolts {
        let both = out_and_back(per_kilofoot, Length::from_millimetres((tenths_of_feet * 3048 + 50) / 100));
        volts_lost(both, Current::from_milliamps(milliamps)) / 2
    }

    fn drop(per_kilofoot: i64, feet: i64, milliamps: i64) -> Microvolts {
        volts_lost(two_wire(per_kilofoot, feet), Current::from_milliamps(milliamps))
    }

    /// Asserts that two values differ by at most `half`, which is half of the last published digit, in microvolts.
    fn near(found: Microvolts, expected: Microvolts, half: Microvolts) {
        assert!((found - expected).abs() <= half, "{found} is not {expected}");
    }

    #[test]
    fn a_training_lesson_of_electrician2_com() {
        // Lesson 135: 4.99 ohm/kft, 100 ft, 4 A, 24 V: 4.0 V, 16.7 %; exactly 3.992 V.
        let lost = drop(4_990_000, 100, 4000);
        assert_eq!(lost, 3_992_000);
        near(lost * 100_000 / 24_000_000, 16_633, 1);
    }

    #[test]
    fn an_article_on_the_nec() {
        // 1.93 ohm/kft, 100 ft, 15 A, 120 V: 5.79 V, 4.83 % (a secondary copy).
        let lost = drop(1_930_000, 100, 15_000);
        assert_eq!(lost, 5_790_000);
        assert_eq!((lost * 100_000 / 120_000_000 + 5) / 10, 483);
    }

    #[test]
    fn a_long_thin_pair_of_a_radio_amateur() {
        // vk3kid.org: 2.525 ohm/kft at 20 °C, 4200 ft, 0.25 A: 5.3025 V.
        near(drop(2_525_000, 4200, 250), 5_302_500, 1);
    }

    #[test]
    fn volts_left_at_250_feet() {
        // 250 ft, 0.5 A, 12 V: 10.06, 10.78, 11.23 V left; exactly 10.0575, 10.7775, 11.2325.
        for (per_kilofoot, left) in [(7_770_000, 10_057_500), (4_890_000, 10_777_500), (3_070_000, 11_232_500)] {
            near(12_000_000 - drop(per_kilofoot, 250, 500), left, 1);
        }
    }

    #[test]
    fn an_aviation_manual_with_one_conductor() {
        // FAA AC 43.13-1B table 11-7, 20 A, one conductor. Lengths are whole millimeters here, which costs the fifth
        // digit.
        near(one_wire_drop(440_000, 1070, 20_000), 941_600, 50);
        near(one_wire_drop(280_000, 900, 20_000), 504_000, 50);
        near(one_wire_drop(3_060_000, 1000, 20_000), 6_120_000, 50);
        // Table 11-8, No. 10, 1.26 ohm/kft: 39, 156 and 273 ft: 0.98, 3.93 and 6.88 V.
        near(one_wire_drop(1_260_000, 390, 20_000), 982_800, 50);
        near(one_wire_drop(1_260_000, 1560, 20_000), 3_931_200, 50);
        near(one_wire_drop(1_260_000, 2730, 20_000), 6_879_600, 50);
    }

    #[test]
    fn heaters_and_constant_power_against_a_power_flow() {
        // A power-flow library (pandapower 3.5.6) and exact algebra, to the millivolt.
        for (volts, per_kilofoot, feet, watts, heater, constant) in [
            (120, 3_140_000, 100, 1500, 112_632, 111_556),
            (120, 1_980_000, 50, 1800, 117_102, 116_953),
            (230, 500_000, 100, 2000, 229_134, 229_127),
        ] {
            let source = Voltage::from_millivolts(volts * 1000);
            let power = Power::from_milliwatts(watts * 1000);
            let line = two_wire(per_kilofoot, feet);
            near(volts_left_heater(source, power, line), heater * 1000, 500);
            let left = volts_left_constant_power(source, power, line).expect("a solution");
            near(left, constant * 1000, 500);
        }
    }

    #[test]
    fn between_two_legs_each_wire_loses_its_own() {
        let plan = crate::plan::read(
            r#"
format = 1
region = "north-america"
[site]
name = "Test"
[generator]
name = "set"
rated = "7200 W"
voltage = "120/240 V"
[[generator.outlet]]
id = "big"
shape = "L14-30R"
breaker = "30 A"
[[cord]]
id = "cord"
from = "big"
plug = "L14-30P"
ends = ["L14-30R", "6-20R", "5-20R"]
wire = "10 AWG"
length = "100 ft"
coiled = false
"#,
        )
        .expect("a plan");
        let supply = Supply::build(&plan);
        let at = |id: &str| {
            let id = crate::plan::Id::reference(id).expect("an id");
            supply.receptacle(&id).expect("a receptacle")
        };
        let load = |id: &str, milliamps: i64, draws: Draws| Running {
            at: at(id),
            current: Current::from_milliamps(milliamps),
            draws,
            one_leg: false,
        };
        // Out and back, 0.2 x 1.24 ohm. 10 A at 240 V lose 2.48 V, as they do at 120 V.
        let heavy = load("cord.2", 10_000, Draws::Current);
        assert_eq!(supply.nominal_drop(at("cord.2"), &[heavy]), 2_480_000);
        let light = load("cord.3", 10_000, Draws::Current);
        assert_eq!(supply.nominal_drop(at("cord.3"), &[light]), 2_480_000);
        // Both together: leg A carries 20 A and leg B 10 A.
        let both = [heavy, light];
        assert_eq!(supply.nominal_drop(at("cord.3"), &both), 4_960_000);
        assert_eq!(supply.nominal_drop(at("cord.2"), &both), 3_720_000);
        // Nothing is lost at the generator itself.
        assert_eq!(supply.nominal_drop(at("big"), &both), 0);
        // All of it on one leg, at 120 V: the worse leg counts, beside the other load on it.
        let camper = Running { one_leg: true, ..heavy };
        assert_eq!(supply.volts_of(&camper).millivolts(), 120_000);
        let flow = supply.nominal_flow(&[camper, light]);
        assert_eq!(flow.lost_by(&camper), 4_960_000);
        assert_eq!(flow.through_cords_to(&camper)[0].1.milliamps(), 20_000);
        // Constant power loses more than its nominal current does.
        let constant = load("cord.3", 10_000, Draws::Power);
        let settled = supply.settled_drop(at("cord.3"), &[constant]).expect("it settles");
        let exact = 120_000_000
            - volts_left_constant_power(
                Voltage::from_millivolts(120_000),
                Power::from_milliwatts(1_200_000),
                supply.resistance_to(at("cord.3")),
            )
            .expect("a solution");
        near(settled, exact, 20);
        // 1000 A would lose more than there is.
        let wild = load("cord.3", 1_000_000, Draws::Power);
        assert_eq!(supply.settled_drop(at("cord.3"), &[wild]), None);
    }

    /// Behind one trunk a heater draws less as the volts sink, and electronics more. By exact algebra, for a heater of
    /// P1 and a constant power of P2 at V behind R, v is the greater root of v^2 (1/R + P1/V^2) - v V/R + P2 = 0.
    /// Losses in microvolts, computed independently to twelve digits.
    #[test]
    fn a_heater_and_electronics_behind_one_trunk() {
        for (ohms, heater, electronics, lost) in [
            (396_000, 1500, 300, 5_752_555),
            (396_000, 1500, 0, 4_753_902),
            (396_000, 0, 300, 998_305),
            (636_000, 1800, 600, 12_114_004),
            // The line and the heater share the volts evenly: an iteration by full steps never settles there.
            (9_600_000, 1500, 0, 60_000_000),
            (96_000_000, 1500, 0, 109_090_909),
        ] {
            let supply = trunk(ohms);
            let at = supply.receptacles().last().expect("an end").0;
            let load = |watts: i64, draws| Running {
                at,
                current: Current::from_milliamps(watts * 1000 / 120),
                draws,
                one_leg: false,
            };
            let loads = [load(heater, Draws::Resistance), load(electronics, Draws::Power)];
            for loads in [loads, [loads[1], loads[0]]] {
                let found = supply.settled_drop(at, &loads).expect("it settles");
                // Each current may be off by a microampere.
                near(found, lost, 20 + i128::from(ohms) / 500_000);
            }
        }
        // If the heater leaves the line too few volts, the answer is `None` in either order.
        let supply = trunk(4_800_000);
        let at = supply.receptacles().last().expect("an end").0;
        let load =
            |milliamps, draws| Running { at, current: Current::from_milliamps(milliamps), draws, one_leg: false };
        let (heater, electronics) = (load(12_500, Draws::Resistance), load(6_000, Draws::Power));
        assert_eq!(supply.settled_drop(at, &[heater, electronics]), None);
        assert_eq!(supply.settled_drop(at, &[electronics, heater]), None);
        // With the heater at its full current nothing would be left for the small load. There is, as the heater's
        // current drops: v^2 (1/4.8 + 1/9.6) - 25 v + 120 = 0, v = 74.8712 V.
        let little = load(1_000, Draws::Power);
        let found = supply.settled_drop(at, &[heater, little]);
        near(found.expect("it settles"), 45_128_808, 20);
    }

    /// Builds a generator with one cord of this resistance.
    fn trunk(microohms: i64) -> Supply {
        let mut supply = Supply::build(
            &crate::plan::read(
                "format = 1\n[generator]\nrated = \"9 kW\"\nvoltage = \"120 V\"\n\
                 [[generator.outlet]]\nid = \"set\"\nshape = \"5-20R\"\n[[cord]]\nid = \"trunk\"\n\
                 from = \"set\"\nplug = \"5-15P\"\nends = [\"5-20R\"]\n",
            )
            .expect("a plan"),
        );
        for node in &mut supply.nodes {
            if let NodeKind::Cord { resistance, .. } = &mut node.kind {
                *resistance = Resistance::from_microohms(microohms);
            }
        }
        supply
    }

    #[test]
    fn a_line_that_cannot_carry_it_says_so() {
        // 120 V over 4 ohm gives at most 120^2 / 16 = 900 W.
        let source = Voltage::from_millivolts(120_000);
        let line = Resistance::from_microohms(4_000_000);
        let left = |watts: i64| volts_left_constant_power(source, Power::from_milliwatts(watts * 1000), line);
        assert_eq!(left(900), Some(60_000_000));
        assert_eq!(left(901), None);
    }
}

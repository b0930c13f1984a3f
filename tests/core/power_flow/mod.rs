//! Voltage drop against a power-flow library (pandapower 3.5.6), on random trees.
//!
//! `record.py` made `record.jsonl`. The library is not needed to run these tests.

use std::fmt::Write as _;

use serde::Deserialize;
use tallywatt::plan::Id;
use tallywatt::quantity::{Current, Quantity as _};
use tallywatt::supply::Supply;
use tallywatt::supply::drop::{Draws, Microvolts, Running};

#[derive(Deserialize)]
struct Cord {
    from: i32,
    gauge: i8,
    feet: u32,
}

#[derive(Deserialize)]
struct Load {
    at: usize,
    watts: i64,
    kind: String,
}

#[derive(Deserialize)]
struct Tree {
    cords: Vec<Cord>,
    loads: Vec<Load>,
    /// The volts at the end of each cord, with each load drawing its nominal current.
    nominal: Vec<f64>,
    /// The same, with heaters as resistances and electronics at constant power.
    settled: Vec<f64>,
}

fn trees() -> Vec<Tree> {
    include_str!("record.jsonl").lines().skip(1).map(|line| serde_json::from_str(line).expect("a tree")).collect()
}

impl Tree {
    /// Returns the plan text of the tree, with `more` extra ends on each cord.
    fn text(&self, more: usize) -> String {
        let mut text = String::from(
            "format = 1\nregion = \"north-america\"\n[site]\nname = \"x\"\naltitude = \"0 ft\"\nair = \"59 °F\"\nground = \"dry\"\n[generator]\n\
             name = \"g\"\nrated = \"9000 W\"\nvoltage = \"120 V\"\n[[generator.outlet]]\n\
             id = \"set\"\nshape = \"5-20R\"\nsockets = 9\n\
             breaker = \"10 A\"\ngfci = true\n",
        );
        for (index, cord) in self.cords.iter().enumerate() {
            let from = match cord.from {
                -1 => "set".to_owned(),
                above => format!("c{above}.{}", index + 1),
            };
            // One end for every possible cord, so that each of them finds a free one.
            let ends = vec!["\"5-20R\""; self.cords.len() + 1 + more].join(", ");
            let _ = write!(
                text,
                "[[cord]]\nid = \"c{index}\"\nfrom = \"{from}\"\nplug = \"5-15P\"\n\
                 ends = [{ends}]\nwire = \"{} AWG\"\nconductors = 3\nlength = \"{} ft\"\n\
                 coiled = false\n",
                cord.gauge, cord.feet
            );
        }
        text
    }

    fn supply(&self) -> Supply {
        let text = self.text(0);
        let plan = tallywatt::plan::read(&text).unwrap_or_else(|error| panic!("{error:?}\n{text}"));
        let supply = Supply::build(&plan);
        assert!(supply.detached.is_empty(), "{:?}", supply.detached);
        supply
    }

    /// Returns the plan text of the tree with its loads.
    fn camp(&self) -> String {
        let mut text = self.text(self.loads.len());
        for (index, load) in self.loads.iter().enumerate() {
            let kind = match load.kind.as_str() {
                "heater" => "heater",
                _ => "electronic",
            };
            let _ = write!(
                text,
                "[[load]]\nid = \"load{index}\"\nkind = \"{kind}\"\nrunning = \"{} W\"\n\
                 power_factor = 1.0\ncontinuous = false\nplug = \"5-15P\"\non = \"c{}.{}\"\n",
                load.watts,
                load.at,
                self.cords.len() + 2 + index
            );
        }
        text
    }

    fn running(&self, supply: &Supply, draws: impl Fn(&Load) -> Draws) -> Vec<Running> {
        self.loads
            .iter()
            .map(|load| Running {
                at: end(supply, load.at),
                // At 120 V. The record has whole tenths of an ampere.
                current: Current::from_milliamps(load.watts * 1000 / 120),
                draws: draws(load),
                one_leg: false,
            })
            .collect()
    }
}

fn end(supply: &Supply, cord: usize) -> tallywatt::supply::NodeIx {
    let id = Id::reference(&format!("c{cord}.1")).expect("an id");
    supply.receptacle(&id).expect("a receptacle")
}

/// Converts volts from the record to whole microvolts.
#[allow(clippy::cast_possible_truncation)]
fn microvolts(volts: f64) -> Microvolts {
    (volts * 1e6).round() as Microvolts
}

/// The tolerance: each cord rounds up by a microvolt, and the library adds a milliohm of reactance.
const NEAR: Microvolts = 200;
const FULL: Microvolts = 120_000_000;

#[test]
fn nominal_currents_lose_what_the_library_says() {
    let trees = trees();
    assert!(trees.len() >= 200, "{} trees", trees.len());
    for tree in trees {
        let supply = tree.supply();
        let running = tree.running(&supply, |_| Draws::Current);
        for (cord, volts) in tree.nominal.iter().enumerate() {
            let left = FULL - supply.nominal_drop(end(&supply, cord), &running);
            let expected = microvolts(*volts);
            assert!((left - expected).abs() <= NEAR, "c{cord}: {left}, not {expected}");
        }
    }
}

#[test]
fn resistances_and_constant_power_settle_where_the_library_does() {
    for tree in trees() {
        let supply = tree.supply();
        let running = tree.running(&supply, |load| match load.kind.as_str() {
            "heater" => Draws::Resistance,
            _ => Draws::Power,
        });
        for (cord, volts) in tree.settled.iter().enumerate() {
            let drop = supply.settled_drop(end(&supply, cord), &running).expect("the library found a solution");
            let expected = microvolts(*volts);
            assert!((FULL - drop - expected).abs() <= NEAR, "c{cord}: {}, not {expected}", FULL - drop);
        }
    }
}

/// The report of a trunk with a heater and electronics at its end, which may run at once, agrees with the library and
/// with exact algebra.
#[test]
fn what_the_report_tells_is_what_is_lost() {
    let mut told = 0;
    for tree in trees() {
        let text = tree.camp();
        let plan = tallywatt::plan::read(&text).unwrap_or_else(|error| panic!("{error:?}\n{text}"));
        let report = tallywatt::judge::judge(&plan);
        let sharing = &report.figures.sharing;
        // The record assumes that all loads run at once.
        if !sharing.unplaced.is_empty() || sharing.together.len() != 1 || !sharing.never.is_empty() {
            continue;
        }
        for (drop, load) in report.figures.drops.iter().zip(&tree.loads) {
            let left: f64 = drop.volts_left.amount().to_string().parse().expect("a number");
            let expected = microvolts(tree.settled[load.at]);
            // The report rounds down to a millivolt.
            let less = expected - microvolts(left);
            assert!((-NEAR..=1_000 + NEAR).contains(&less), "{}: {less}", drop.at);
        }
        told += 1;
    }
    assert!(told >= 20, "{told} trees");
}

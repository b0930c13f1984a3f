//! A small plan in good order, and what the rules find when it is edited.

use crate::plan::Plan;
use crate::report::{Finding, Report, Signal};

/// The example plan. It has nothing worse than the caution of rule SHOCK012: its ground-fault protection is in the box.
pub(super) const EXAMPLE: &str = r#"
format = 1
region = "north-america"

[site]
name = "Alder Flat"
ground = "wet"
sleepers_at = "60 ft"
altitude = "0 ft"
air = "59 °F"
quiet_hours = "23:00-07:00"
co_alarm = true
feeds_building = false
stands = "roof"

[generator]
name = "the grey one"
rated = "3600 W"
peak = "4500 W"
voltage = "120 V"
neutral = "bonded"
bonding_plug = false
inverter = false
fuel = "gasoline"
tank = "3 gal"
runtime = [ { load = "25 %", lasts = "14 h" }, { load = "100 %", lasts = "5 h" } ]
noise = { level = "56 dBA", at = "23 ft", load = "25 %" }

[[generator.outlet]]
id = "front"
shape = "5-20R"
breaker = "20 A" # front
gfci = true # front

[[generator.outlet]]
id = "twist"
shape = "L5-30R"
breaker = "30 A" # twist
gfci = false # twist

[[cord]]
id = "long"
from = "twist"
plug = "L5-30P" # long
ends = ["L5-30R"] # long
wire = "10 AWG" # long
conductors = 3 # long
length = "50 ft" # long
outdoor = true # long
coiled = false # long

[[box]]
id = "box"
from = "long"
inlet = "L5-30P" # box
listed = true
bond = false

[[box.outlet]]
id = "left"
shape = "5-15R" # left
breaker = "15 A" # left
gfci = true # left
wire = "14 AWG" # left

[[box.outlet]]
id = "right"
shape = "5-15R" # right
breaker = "15 A" # right
gfci = true # right
wire = "14 AWG" # right

[[load]]
id = "kettle"
name = "Kettle"
kind = "heater" # kettle
running = "1500 W"
power_factor = 1.0
continuous = false # kettle
wanted = "must" # kettle
hours = ["18:30-19:00"]
plug = "5-15P" # kettle
on = "left" # kettle

[[load]]
id = "fan"
name = "Fan"
kind = "electronic" # fan
running = "50 W"
power_factor = 1.0 # fan
continuous = true # fan
wanted = "must" # fan
hours = ["18:00-23:00"]
plug = "5-15P" # fan
on = "right" # fan
"#;

/// Returns the example's text with these edits.
///
/// # Panics
/// If a text to replace is missing: the test would test nothing.
pub(crate) fn edited(edits: &[(&str, &str)]) -> String {
    edits.iter().fold(EXAMPLE.to_owned(), |text, (from, to)| {
        assert!(text.contains(from), "no `{from}` in the example plan");
        text.replacen(from, to, 1)
    })
}

/// The gear of a first-time camper with a lent box: the tent moved, and everything read that keeps it from a danger.
pub(crate) const LENT_BOX: &str = include_str!("../../tests/plans/large/lent-box.toml");

/// Returns the same before anybody looked: the tent is near, and everything that can be looked up is unknown.
pub(crate) fn lent_box_before() -> String {
    let unknown = [
        ("sleepers_at = \"30 ft\"", "sleepers_at = \"15 ft\""),
        ("altitude = \"500 ft\"", "altitude = \"unknown\""),
        ("co_alarm = true", "co_alarm = \"unknown\""),
        ("stands = \"open\"", "stands = \"unknown\""),
        ("gfci = true", "gfci = \"unknown\""),
        ("listed = true", "listed = \"unknown\""),
        ("wire = \"12 AWG\"", "wire = \"unknown\""),
        ("conductors = 3", "conductors = \"unknown\""),
        ("length = \"50 ft\"", "length = \"unknown\""),
        ("outdoor = true", "outdoor = \"unknown\""),
    ];
    unknown.iter().fold(LENT_BOX.to_owned(), |text, (from, to)| {
        assert!(text.contains(from), "{from}");
        text.replace(from, to)
    })
}

/// Reads a plan, panicking on errors.
pub(crate) fn plan(text: &str) -> Plan {
    match crate::plan::read(text) {
        Ok(plan) => plan,
        Err(errors) => panic!("{errors:?}\n{text}"),
    }
}

/// Returns the full report on the edited example.
pub(crate) fn report(edits: &[(&str, &str)]) -> Report {
    crate::judge::build(&plan(&edited(edits)))
}

/// Returns the findings in the edited example.
pub(super) fn findings(edits: &[(&str, &str)]) -> Vec<Finding> {
    report(edits).findings
}

/// Returns the codes of the findings, in order.
pub(super) fn codes(edits: &[(&str, &str)]) -> Vec<&'static str> {
    findings(edits).iter().map(|found| found.code).collect()
}

/// Returns the signals of one rule's findings, worst first.
pub(super) fn signals(code: &str, edits: &[(&str, &str)]) -> Vec<Signal> {
    findings(edits).iter().filter(|found| found.code == code).map(|found| found.signal).collect()
}

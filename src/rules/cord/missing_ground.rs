#![doc = include_str!("../../../i18n/en/explain/CORD004.md")]

use crate::plan::{Answer, Cord, Ground};
use crate::rules::prelude::*;
use crate::verdict::lifts_ground;

pub(super) const RULE: Rule = Rule {
    code: "CORD004",
    name: "missing-ground",
    area: "cord",
    worst: Signal::Danger,
    sources: &[cite::OSHA_334],
    fixes: &["replace", "count"],
    check,
    #[cfg(test)]
    fires: &[
        &[("conductors = 3 # long", "conductors = 2")],
        &[("conductors = 3 # long", "conductors = \"unknown\"")],
        &[("conductors = 3 # long", "")],
        // A ground-lifting adapter.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"1-15P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-15R\"]"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("conductors = 3 # long", "conductors = 4")],
        // Not in use, because its shape is unknown.
        &[("plug = \"L5-30P\" # long", "plug = \"unknown\"")],
        // An adapter from four slots to one 120 V receptacle: hot, neutral and ground are enough.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\"", "shape = \"L14-30R\"\nbreaker = \"30 A\""),
            ("plug = \"L5-30P\" # long", "plug = \"L14-30P\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let signal = if facts.plan.site.ground == Answer::Known(Ground::Dry) { Signal::Warning } else { Signal::Danger };
    let plugged_in = || facts.plan.cords.iter().filter(|cord| cord.from.is_some());
    let with =
        |lifts: Option<bool>| -> Vec<&Cord> { plugged_in().filter(|cord| lifts_ground(cord) == lifts).collect() };
    let (broken, mut doubtful) = (with(Some(true)), with(None));
    // A cord of unknown shape is not in use, and rule FIT001 reports it.
    doubtful.retain(|cord| cord.usable_plug().is_some());
    for (cords, fix) in [(broken, "replace"), (doubtful, "count")] {
        if !cords.is_empty() {
            let about = cords.iter().map(|cord| cord.id.clone()).collect();
            found.add(signal, about, values([]), fix, values([]));
        }
    }
}

#![doc = include_str!("../../../i18n/en/explain/FIT005.md")]

use crate::plan::Id;
use crate::quantity::Current;
use crate::rules::prelude::*;
use crate::tables::shape::Configuration::{self, L5_20, L5_30, L14_20, L14_30, N5_20, N6_20, N14_30, N14_50};

pub(super) const RULE: Rule = Rule {
    code: "FIT005",
    name: "look-alike-shapes",
    area: "fit",
    worst: Signal::Caution,
    sources: &[cite::WD_6, cite::PRACTICE],
    fixes: &["look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("shape = \"5-15R\" # right", "shape = \"L5-20R\"")],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"6-20R\"\nbreaker = \"20 A\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // A 240 V shape that gets only 120 V, and a 120 V shape that gets 240 V.
        &[("shape = \"5-15R\" # right", "shape = \"6-20R\"")],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("[[box]]", "[[cord]]\nid = \"trap\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [\"5-20R\"]\n[[box]]"),
        ],
        &[("shape = \"5-15R\" # right", "shape = \"TT-30R\"")],
    ],
};

const PAIRS: [(Configuration, Configuration); 5] =
    [(N5_20, N6_20), (L5_30, L14_30), (L5_20, L5_30), (L14_20, L14_30), (N14_30, N14_50)];

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let of = |shape: Configuration| -> Vec<Id> {
        facts
            .figures
            .limits
            .iter()
            .filter(|limit| limit.shape.0 == shape && !limit.inside)
            // If an adapter delivers the wrong voltage for its shape, another rule reports it.
            .filter(|limit| limit.short_amps > Current::ZERO)
            .map(|limit| limit.id.clone())
            .collect()
    };
    // A shape for both legs gives less where its feed has one leg.
    let volts = |shape: Configuration, ids: &[Id]| {
        let mut limits = ids.iter().filter_map(|id| facts.figures.limit(id));
        if limits.all(|limit| limit.legs.len() == 1) { facts.supply.volts } else { shape.volts() }
    };
    for (one, other) in PAIRS {
        let (mut about, others) = (of(one), of(other));
        if about.is_empty() || others.is_empty() {
            continue;
        }
        let (volts_one, volts_other) = (volts(one, &about), volts(other, &others));
        about.extend(others);
        found.add(
            if volts_one == volts_other { Signal::Notice } else { Signal::Caution },
            about,
            values([
                ("one", Value::Name(one.name().to_owned())),
                ("other", Value::Name(other.name().to_owned())),
                ("volts", volts_one.into()),
                ("volts-other", volts_other.into()),
            ]),
            "look",
            values([]),
        );
    }
}

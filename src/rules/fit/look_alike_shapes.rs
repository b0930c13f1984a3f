//! # FIT005 look-alike-shapes
//!
//! ## What it checks
//! Whether the gear has two receptacle shapes that are easily taken for each other by hand in the
//! dark.
//!
//! ## Why it hurts
//! Somebody forces the plug, bends a blade or breaks the ground pin, or hunts for an adapter that
//! fits: 240 V where 120 V belongs, or 30 A behind a plug for 20 A.
//!
//! ## The arithmetic
//! None: pairs of one family that differ in size only (L5-20 and L5-30, L14-20 and L14-30), in one
//! blade (5-20 and 6-20; 14-30 and 14-50), or in the number of blades (L5-30 and L14-30). Where the
//! two of a pair give different volts it is a caution, else a notice. What is not fed, or not with the
//! volts of its shape, is left out: rules FIT003 and FIT006 name it.
//!
//! ## What to do
//! Put the printed label on each, and look at the drawn face before you push. A plug that needs force
//! is in the wrong place.
//!
//! ## Sources
//! - NEMA WD 6: configurations (from memory, not verified).
//! - Which are easily mistaken is common practice, no source.

use crate::plan::Id;
use crate::quantity::Current;
use crate::rules::prelude::*;
use crate::tables::shape::Configuration::{self, L5_20, L5_30, L14_20, L14_30, N5_20, N6_20, N14_30, N14_50};

pub(super) const RULE: Rule = Rule {
    code: "FIT005",
    name: "look-alike-shapes",
    area: "fit",
    worst: Signal::Caution,
    text: include_str!("look_alike_shapes.rs"),
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
        // A 240 V shape where only 120 V arrives, and a 120 V shape where 240 V does.
        &[("shape = \"5-15R\" # right", "shape = \"6-20R\"")],
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            (
                "[[box]]",
                "[[cord]]\nid = \"trap\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [\"5-20R\"]\n[[box]]",
            ),
        ],
        &[("shape = \"5-15R\" # right", "shape = \"TT-30R\"")],
    ],
};

const PAIRS: [(Configuration, Configuration); 5] = [
    (N5_20, N6_20),
    (L5_30, L14_30),
    (L5_20, L5_30),
    (L14_20, L14_30),
    (N14_30, N14_50),
];

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let of = |shape: Configuration| -> Vec<Id> {
        facts
            .figures
            .limits
            .iter()
            .filter(|limit| limit.shape.0 == shape)
            // What an adapter cannot give is another rule's: its volts are not its shape's.
            .filter(|limit| limit.short_amps > Current::ZERO)
            .map(|limit| limit.id.clone())
            .collect()
    };
    for (one, other) in PAIRS {
        let (mut about, others) = (of(one), of(other));
        if about.is_empty() || others.is_empty() {
            continue;
        }
        about.extend(others);
        found.add(
            if one.volts() == other.volts() {
                Signal::Notice
            } else {
                Signal::Caution
            },
            about,
            values([
                ("one", Value::Name(one.name().to_owned())),
                ("other", Value::Name(other.name().to_owned())),
                ("volts", one.volts().into()),
                ("volts-other", other.volts().into()),
            ]),
            "look",
            values([]),
        );
    }
}

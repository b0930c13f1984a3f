//! # CORD002 indoor-cord-outdoors
//!
//! ## What it checks
//! Whether each cord in use is marked for outdoor use.
//!
//! ## Why it hurts
//! The jacket of an indoor cord cracks in sun and cold and lets water in. It is thin, and feet, car
//! tyres and tent pegs cut it. A bare wire in wet grass shocks whoever picks the cord up.
//!
//! ## The arithmetic
//! None. A cord known to be for indoor use is a warning, or a caution where the ground is dry. One of
//! which nobody knows is a caution.
//!
//! ## What to do
//! Use cords whose jacket is marked for outdoors (a W in its type letters, as in SJTW or SJEOW, or
//! the words "for outdoor use"). Leave the others for indoors.
//!
//! ## Sources
//! - NFPA 70 (NEC), Table 400.4, note 9: the W after the type letters (from a secondary copy).

use crate::plan::{Answer, Ground, Id};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "CORD002",
    name: "indoor-cord-outdoors",
    area: "cord",
    worst: Signal::Warning,
    text: include_str!("indoor_cord_outdoors.rs"),
    sources: &[cite::NEC_400_4],
    fixes: &["replace", "look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("outdoor = true # long", "outdoor = false")],
        &[("outdoor = true # long", "outdoor = \"unknown\"")],
        &[("outdoor = true # long", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // It stays in the bin.
        &[
            ("outdoor = true # long", "outdoor = false"),
            ("from = \"twist\"\n", ""),
            ("from = \"long\"\n", ""),
            ("on = \"left\" # kettle", "on = \"front\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let with = |wanted: fn(Answer<bool>) -> bool| -> Vec<Id> {
        facts
            .plan
            .cords
            .iter()
            .filter(|cord| cord.from.is_some() && wanted(cord.outdoor))
            .map(|cord| cord.id.clone())
            .collect()
    };
    let indoor = with(|outdoor| outdoor == Answer::Known(false));
    if !indoor.is_empty() {
        let signal = if facts.plan.site.ground == Answer::Known(Ground::Dry) {
            Signal::Caution
        } else {
            Signal::Warning
        };
        found.add(signal, indoor, values([]), "replace", values([]));
    }
    let doubtful = with(|outdoor| !outdoor.is_known());
    if !doubtful.is_empty() {
        found.add(Signal::Caution, doubtful, values([]), "look", values([]));
    }
}

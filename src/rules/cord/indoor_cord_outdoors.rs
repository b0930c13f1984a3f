#![doc = include_str!("../../../i18n/en/explain/CORD002.md")]

use crate::plan::{Answer, Ground, Id};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "CORD002",
    name: "indoor-cord-outdoors",
    area: "cord",
    worst: Signal::Warning,
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
        let signal =
            if facts.plan.site.ground == Answer::Known(Ground::Dry) { Signal::Caution } else { Signal::Warning };
        found.add(signal, indoor, values([]), "replace", values([]));
    }
    let doubtful = with(|outdoor| !outdoor.is_known());
    if !doubtful.is_empty() {
        found.add(Signal::Caution, doubtful, values([]), "look", values([]));
    }
}

#![doc = include_str!("../../../i18n/en/explain/SHOCK006.md")]

use crate::plan::{Answer, Ground, Id};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK006",
    name: "unlisted-box",
    area: "shock",
    worst: Signal::Warning,
    sources: &[cite::NEC_110_3],
    fixes: &["home-made", "look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("listed = true", "listed = false")],
        &[("listed = true", "listed = \"unknown\"")],
        &[("listed = true", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // It stays in the bin.
        &[
            ("listed = true", "listed = false"),
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
            .boxes
            .iter()
            .filter(|it| it.from.is_some() && wanted(it.is_listed()))
            .map(|it| it.id.clone())
            .collect()
    };
    let home_made = with(|listed| listed == Answer::Known(false));
    if !home_made.is_empty() {
        let signal =
            if facts.plan.site.ground == Answer::Known(Ground::Dry) { Signal::Caution } else { Signal::Warning };
        found.add(signal, home_made, values([]), "home-made", values([]));
    }
    let doubtful = with(|listed| !listed.is_known());
    if !doubtful.is_empty() {
        found.add(Signal::Caution, doubtful, values([]), "look", values([]));
    }
}

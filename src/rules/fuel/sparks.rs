#![doc = include_str!("../../../i18n/en/explain/FUEL002.md")]

use crate::plan::{Answer, Ground};
use crate::rules::prelude::*;
use crate::tables::exhaust::CLEAR;

pub(super) const RULE: Rule = Rule {
    code: "FUEL002",
    name: "sparks",
    area: "fuel",
    worst: Signal::Caution,
    sources: &[cite::USFS_ORDER, cite::USFS_ARRESTER, cite::FEMA_2011],
    fixes: &["arrester"],
    check,
    #[cfg(test)]
    fires: &[&[("ground = \"wet\"", "ground = \"dry\"")]],
    #[cfg(test)]
    spares: &[&[], &[("ground = \"wet\"", "ground = \"damp\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.plan.site.ground == Answer::Known(Ground::Dry) {
        found.add(Signal::Caution, vec![], values([("clear", CLEAR.into())]), "arrester", values([]));
    }
}

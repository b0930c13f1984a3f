#![doc = include_str!("../../../i18n/en/explain/SHOCK008.md")]

use crate::plan::Id;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK008",
    name: "gfci-past-gfci",
    area: "shock",
    worst: Signal::Notice,
    sources: &[crate::tables::gfci::CURVE, cite::NEC_CLASS_A],
    fixes: &["reset"],
    check,
    #[cfg(test)]
    fires: &[&[("gfci = false # twist", "gfci = true")]],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("gfci = false # twist", "gfci = true"),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ],
        // The box's bond is beyond the outlet's own GFCI, which is therefore blind.
        &[("gfci = false # twist", "gfci = true"), ("bond = false", "bond = true")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let mut about: Vec<Id> = Vec::new();
    let mut count = 0;
    for need in facts.needs() {
        let Some(at) = need.at else { continue };
        // A blind GFCI trips on no fault. A protected outlet's breaker and receptacle count as one device.
        let devices = facts.verdicts.grounding.working(at);
        let mut devices: Vec<Id> = devices.map(|it| facts.supply.node(it).id.clone()).collect();
        devices.dedup();
        if devices.len() < 2 {
            continue;
        }
        count = count.max(devices.len());
        // From the generator outward, in the order in which they are reset.
        for id in devices.into_iter().rev() {
            if !about.contains(&id) {
                about.push(id);
            }
        }
    }
    if count > 1 {
        found.add(Signal::Notice, about, values([("count", Value::Count(count))]), "reset", values([]));
    }
}

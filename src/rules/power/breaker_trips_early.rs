#![doc = include_str!("../../../i18n/en/explain/POWER004.md")]

use crate::plan::Outlet;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "POWER004",
    name: "breaker-trips-early",
    area: "power",
    worst: Signal::Caution,
    sources: &[cite::PRACTICE],
    fixes: &["service", "late"],
    check,
    #[cfg(test)]
    fires: &[
        &[("breaker = \"30 A\" # twist", "breaker = \"30 A\"\ntrips_at = \"29 A\"")],
        &[("breaker = \"30 A\" # twist", "breaker = \"30 A\"\ntrips_at = \"31 A\"")],
    ],
    #[cfg(test)]
    spares: &[&[("breaker = \"30 A\" # twist", "breaker = \"30 A\"\ntrips_at = \"30 A\"")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let boxes = facts.plan.boxes.iter().flat_map(|it| &it.outlets);
    let outlets = facts.plan.generator.outlets.iter().chain(boxes);
    for Outlet {
        id,
        breaker,
        trips_at,
        ..
    } in outlets
    {
        if let (Some(marked), Some(trips)) = (breaker.known(), trips_at)
            && trips != marked
        {
            let fix = if trips < marked { "service" } else { "late" };
            found.add(
                Signal::Caution,
                vec![id.clone()],
                values([("marked", (*marked).into()), ("trips", (*trips).into())]),
                fix,
                values([]),
            );
        }
    }
}

#![doc = include_str!("../../../i18n/en/explain/POWER004.md")]

use crate::plan::Outlet;
use crate::rules::prelude::*;
use crate::supply::below_trip;

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
    for Outlet { id, breaker, trips_at, .. } in facts.plan.outlets() {
        if let (Some(marked), Some(trips)) = (breaker.known(), trips_at)
            && trips != marked
        {
            let fix = if trips < marked { "service" } else { "late" };
            found.add(
                Signal::Caution,
                vec![id.clone()],
                values([
                    ("marked", (*marked).into()),
                    ("trips", (*trips).into()),
                    ("counted", below_trip(*trips).into()),
                ]),
                fix,
                values([]),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::plan::Id;
    use crate::quantity::Current;
    use crate::report::Acts;
    use crate::rules::testing::report;

    /// A 15 A cord on a 20 A breaker that once tripped at 13 A: 12 A is planned, but the cord is no better protected.
    /// The outlet itself is rated 20 A. Near miss: a breaker marked 15 A.
    #[test]
    fn an_early_trip_protects_nothing() {
        let acts = |breaker: &str, at: &str| {
            let cord = "[[cord]]\nid = \"table\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
                        wire = \"12 AWG\"\nconductors = 3\nlength = \"25 ft\"\noutdoor = true\ncoiled = false\n[[box]]";
            let report = report(&[("breaker = \"20 A\" # front", breaker), ("[[box]]", cord)]);
            let limit = report.figures.limits.iter().find(|it| it.id.as_str() == at);
            let limit = limit.expect("it is there").clone();
            (limit.short_amps.milliamps(), limit.acts)
        };
        let id = || Id::new("front").expect("an id");
        let above = Acts::Above { id: id(), amps: Current::from_milliamps(20_000) };
        let early = "breaker = \"20 A\"\ntrips_at = \"13 A\"";
        assert_eq!(acts(early, "table"), (12_000, above.clone()));
        assert_eq!(acts(early, "front"), (12_000, Acts::AtLimit { id: id() }));
        assert_eq!(acts("breaker = \"20 A\"", "table"), (15_000, above));
        assert_eq!(acts("breaker = \"15 A\"", "table"), (15_000, Acts::AtLimit { id: id() }));
        // A breaker that nobody has read protects nothing.
        let unread = "breaker = \"unknown\"\ntrips_at = \"13 A\"";
        assert_eq!(acts(unread, "table"), (12_000, Acts::Never));
    }
}

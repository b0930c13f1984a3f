#![doc = include_str!("../../../i18n/en/explain/CORD008.md")]

use crate::plan::{Answer, Id, LoadKind};
use crate::quantity::Power;
use crate::rules::demand::Need;
use crate::rules::prelude::*;
use crate::supply::NodeKind;

pub(super) const RULE: Rule = Rule {
    code: "CORD008",
    name: "heater-on-cord",
    area: "cord",
    worst: Signal::Caution,
    sources: &[cite::CPSC_HEATERS, cite::NFPA_USFA_HEATERS],
    fixes: &["warm", "less"],
    check,
    #[cfg(test)]
    fires: &[
        &[("running = \"1500 W\"", "running = \"500 W\""), ("continuous = false # kettle", "continuous = true")],
        // A roaster.
        &[("kind = \"heater\" # kettle", "kind = \"cooker\""), ("continuous = false # kettle", "continuous = true")],
        &[
            ("kind = \"heater\" # kettle", "kind = \"cooker\""),
            ("continuous = false # kettle", ""),
            ("hours = [\"18:30-19:00\"]", "hours = [\"18:30-21:30\"]"),
        ],
    ],
    #[cfg(test)]
    spares: &[
        // Not for long.
        &[],
        // A coffee maker whose running time nobody knows.
        &[
            ("kind = \"heater\" # kettle", "kind = \"cooker\""),
            ("continuous = false # kettle", "continuous = \"unknown\""),
            ("hours = [\"18:30-19:00\"]", ""),
        ],
        // One watt less.
        &[("running = \"1500 W\"", "running = \"499 W\""), ("continuous = false # kettle", "continuous = true")],
        // Directly at the generator.
        &[("on = \"left\" # kettle", "on = \"front\""), ("continuous = false # kettle", "continuous = true")],
        // Not a heater.
        &[("running = \"50 W\"", "running = \"800 W\"")],
    ],
};

/// The power of a small room heater, and more than that of a heated blanket.
const MUCH: Power = Power::from_milliwatts(500_000);

/// Returns the key of the remedy for a load that makes heat for hours; `None` for any other.
fn heats_for_hours(need: &Need<'_>) -> Option<&'static str> {
    let load = need.load;
    if !load.may_heat() || !need.continuous() {
        return None;
    }
    match load.kind {
        Answer::Known(LoadKind::Heater) => Some("warm"),
        // If the plan does not say how long, nobody cooks for hours.
        Answer::Known(_) => {
            let told = load.continuous.is_known() || !load.hours.is_empty();
            told.then_some("less")
        }
        // It may not be for keeping warm.
        Answer::Unknown | Answer::Missing => Some("less"),
    }
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let mut named: Vec<Id> = Vec::new();
    for need in facts.needs() {
        let fix = heats_for_hours(&need).filter(|_| need.running() >= MUCH);
        let Some((at, fix)) = need.at.zip(fix) else {
            continue;
        };
        let inside = facts.plan.around(need.load).is_some();
        let cords: Vec<Id> = facts
            .supply
            .up(at)
            .filter(|(_, node)| match node.kind {
                // A camper's own plug is made for everything inside, heat included.
                NodeKind::Cord { plug, .. } => !inside || plug.0.household(),
                _ => false,
            })
            .map(|(_, node)| node.id.clone())
            .collect();
        // Several alike may be on different cords; the first on any cord is enough.
        if cords.is_empty() || named.contains(&need.load.id) {
            continue;
        }
        named.push(need.load.id.clone());
        let mut about = vec![need.load.id.clone()];
        about.extend(cords);
        found.add(
            Signal::Caution,
            about,
            values([
                ("watts", need.running().into()),
                // The same figure that the rules on limits give.
                ("amps", facts.worst_leg(&[need]).into()),
            ]),
            fix,
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::testing::findings;

    /// Bedding and clothes warm people, not coffee.
    #[test]
    fn nobody_is_told_to_keep_warm_in_place_of_cooking() {
        let long = ("continuous = false # kettle", "continuous = true");
        for (kind, warm) in [("heater", true), ("cooker", false), ("unknown", false)] {
            let kind = format!("kind = \"{kind}\"");
            let found = findings(&[long, ("kind = \"heater\" # kettle", kind.as_str())]);
            let found = found.iter().find(|it| it.code == "CORD008").expect("found");
            let said = crate::words::Words::english().finding(found, &[]);
            assert_eq!(said.fix.contains("bedding"), warm, "{kind}: {}", said.fix);
        }
    }

    /// A heater is reported with one figure: the amperes here are those of the rule on limits, which does not repeat
    /// them. Beside loads that run for a short time, it gives both figures.
    #[test]
    fn one_heater_has_one_figure() {
        let long = ("continuous = false # kettle", "continuous = true");
        let hours = ("hours = [\"18:30-19:00\"]", "hours = [\"08:00-13:00\"]");
        let told = |edits: &[crate::rules::Edit]| {
            let found = findings(edits);
            let of = |code| found.iter().find(|it| it.code == code).expect("found");
            let (cord, over) = (of("CORD008"), of("OVER002"));
            let said = crate::words::Words::english().finding(over, &[]).why;
            (cord.values["amps"] == over.values["demand"], said.contains("of which"))
        };
        assert_eq!(told(&[long, hours]), (true, false));
        let beside = [
            ("hours = [\"18:00-23:00\"]", "hours = [\"09:00-10:00\"]"),
            ("continuous = true # fan", "continuous = false"),
            ("on = \"right\" # fan", "on = \"left\""),
        ];
        assert_eq!(told(&[&[long, hours][..], &beside].concat()), (false, true));
    }

    #[test]
    fn every_cord_on_the_way_is_named() {
        let found =
            findings(&[("continuous = false # kettle", "continuous = \"unknown\""), ("hours = [\"18:30-19:00\"]", "")]);
        let found = found.iter().find(|it| it.code == "CORD008").expect("found");
        let about: Vec<_> = found.about.iter().map(Id::as_str).collect();
        assert_eq!(about, ["kettle", "long"]);
    }
}

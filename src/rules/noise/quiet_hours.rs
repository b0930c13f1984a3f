#![doc = include_str!("../../../i18n/en/explain/NOISE002.md")]

use crate::plan::{Answer, Id, LoadKind, Span};
use crate::rules::prelude::*;
use crate::tables::night::quiet;

pub(super) const RULE: Rule = Rule {
    code: "NOISE002",
    name: "quiet-hours",
    area: "noise",
    worst: Signal::Notice,
    sources: &[cite::PRACTICE],
    fixes: &["move", "life", "move-assumed", "life-assumed"],
    check,
    #[cfg(test)]
    fires: &[
        &[("hours = [\"18:00-23:00\"]", "hours = [\"18:00-23:01\"]")],
        &[(HOURS, ""), ("kind = \"electronic\" # fan", "kind = \"medical\"")],
        // Quiet hours unknown: from 22:00 to 06:00.
        &[(QUIET, ""), (HOURS, "hours = [\"18:00-22:01\"]")],
        &[(QUIET, "quiet_hours = \"unknown\""), (HOURS, ""), ("kind = \"electronic\" # fan", "kind = \"medical\"")],
        // Generator hours from 08:00 to 10:00 and from 16:00 to 20:00.
        &[(QUIET, "quiet_hours = [\"10:00-16:00\", \"20:00-08:00\"]"), (HOURS, "hours = [\"15:59-20:00\"]")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[(HOURS, "")],
        &[(QUIET, ""), (HOURS, "hours = [\"18:00-22:00\"]")],
        &[(QUIET, "quiet_hours = []"), (HOURS, "hours = [\"00:00-24:00\"]")],
        &[
            (QUIET, "quiet_hours = [\"10:00-16:00\", \"20:00-08:00\"]"),
            (HOURS, "hours = [\"08:00-10:00\", \"16:00-20:00\"]"),
        ],
        // On its battery at night.
        &[(HOURS, ""), ("kind = \"electronic\" # fan", "kind = \"medical\"\nbackup = true")],
        &[("kind = \"electronic\" # fan", "kind = \"medical\"\nbackup = true")],
    ],
};

#[cfg(test)]
const HOURS: &str = "hours = [\"18:00-23:00\"]";
#[cfg(test)]
const QUIET: &str = "quiet_hours = \"23:00-07:00\"";

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let site = &facts.plan.site;
    let quiet = quiet(site);
    let loud = |life: bool| -> Vec<Id> {
        facts
            .plan
            .loads
            .iter()
            .filter(|load| load.may_be(LoadKind::Medical) == life)
            // Its battery carries it through the night. If its hours say otherwise, rule AIR006 finds them.
            .filter(|load| !(life && load.backup == Answer::Known(true)))
            .filter(|load| {
                if load.hours.is_empty() {
                    return life && !quiet.is_empty();
                }
                // Two spans overlap exactly when one begins inside the other.
                let meets = |span: &Span| {
                    let mut quiet = quiet.iter();
                    quiet.any(|quiet| span.contains(quiet.from) || quiet.contains(span.from))
                };
                load.hours.iter().any(meets)
            })
            .map(|load| load.id.clone())
            .collect()
    };
    let known = site.quiet_hours.is_known();
    let life = loud(true);
    let of_life = values([("life", Value::Parts(life.clone()))]);
    for (about, fix, assumed, named) in
        [(loud(false), "move", "move-assumed", values([])), (life, "life", "life-assumed", of_life)]
    {
        if !about.is_empty() {
            found.add(
                Signal::Notice,
                about,
                values([("quiet", Value::Hours(quiet.to_vec()))]),
                if known { fix } else { assumed },
                named,
            );
        }
    }
}

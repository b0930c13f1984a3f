#![doc = include_str!("../../../i18n/en/explain/SHOCK005.md")]

use crate::plan::Id;
use crate::rules::prelude::*;
use crate::verdict::{bonded_boxes, bonds_at_set, doubtful_boxes};

pub(super) const RULE: Rule = Rule {
    code: "SHOCK005",
    name: "bond-in-box",
    area: "shock",
    worst: Signal::Warning,
    sources: &[cite::NEC_250_142],
    fixes: &["known", "unknown"],
    check,
    #[cfg(test)]
    fires: &[
        &[("neutral = \"bonded\"", "neutral = \"floating\""), ("bond = false", "bond = true")],
        &[("bond = false", "bond = \"unknown\"")],
        // Unknown and not listed: as bad as a known bond.
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bond = false", "bond = \"unknown\""),
            ("listed = true", "listed = false"),
        ],
        &[("neutral = \"bonded\"", "neutral = \"floating\""), ("bond = false", ""), ("listed = true", "")],
    ],
    #[cfg(test)]
    spares: &[&[], &[("bond = false", "")]],
};

/// Returns whether these boxes may be used until somebody knows how they are wired, in the words of every finding that
/// sends the reader to find out: `no` if any must not be, and `none` if there are none.
pub(super) fn used(facts: &Facts<'_>, boxes: &[Id]) -> Value {
    let refused = |id: &Id| {
        let mut points = facts.supply.points();
        points.any(|(at, node)| node.id == *id && node.kind.is_gear() && facts.verdicts.refused(at).is_some())
    };
    match boxes {
        [] => Value::Name("none".to_owned()),
        boxes => Value::yes_no(!boxes.iter().any(refused)),
    }
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let bonded = bonded_boxes(facts.plan);
    if bonds_at_set(facts.plan) + bonded.len() == 1 && !bonded.is_empty() {
        found.add(Signal::Warning, bonded, values([]), "known", values([]));
    }
    let doubtful = doubtful_boxes(facts.plan);
    if !doubtful.is_empty() {
        let used = used(facts, &doubtful);
        found.add(Signal::Caution, doubtful, values([]), "unknown", values([("used", used)]));
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::report;
    use crate::words::Words;

    /// For a listed box, the remedy asks only for what is unknown. An unlisted one counts as having a bond, and is not
    /// used.
    #[test]
    fn what_is_known_of_a_box_is_not_asked_for() {
        let words = Words::english();
        let told = |edits: &[(&str, &str)]| {
            let report = report(edits);
            let found = report.findings.iter().find(|it| it.code == "SHOCK005").expect("found");
            words.finding(found, &report.figures.loads).fix
        };
        let unknown = ("bond = false", "bond = \"unknown\"");
        let listed = told(&[unknown]);
        assert!(listed.contains("neutral") && !listed.contains("listed"), "{listed}");
        let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
        let unlisted = told(&[floating, unknown, ("listed = true", "listed = false")]);
        assert!(unlisted.starts_with("Do not use"), "{unlisted}");
    }
}

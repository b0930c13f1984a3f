#![doc = include_str!("../../../i18n/en/explain/SHOCK004.md")]

use super::bond_in_box::used;
use crate::plan::{Answer, Plan};
use crate::rules::prelude::*;
use crate::verdict::{bonded_boxes, bonds_at_set, doubtful_boxes};

pub(super) const RULE: Rule = Rule {
    code: "SHOCK004",
    name: "two-bonds",
    area: "shock",
    worst: Signal::Warning,
    sources: &[cite::NEC_250_142],
    fixes: &["plug", "sets", "box", "find-out", "find-out-box"],
    check,
    #[cfg(test)]
    fires: &[
        &[("bonding_plug = false", "bonding_plug = true")],
        // Two sets, each bonded by its maker, and no plug.
        &[("inverter = false", "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = true }")],
        &[("bond = false", "bond = true")],
        &[("neutral = \"bonded\"", "neutral = \"unknown\""), ("bonding_plug = false", "bonding_plug = true")],
        &[("bonding_plug = false", "bonding_plug = \"unknown\"")],
        &[("bond = false", "bond = \"unknown\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // One joint at most, wherever it is.
        &[("neutral = \"bonded\"", "neutral = \"unknown\"")],
        // Silence about a plug means that there is none.
        &[("bonding_plug = false", "")],
        &[("neutral = \"bonded\"", "neutral = \"floating\""), ("bonding_plug = false", "bonding_plug = true")],
    ],
};

/// Returns how many more joints there may be at the generator.
fn doubtful_at_set(plan: &Plan) -> usize {
    let sets = usize::try_from(plan.generator.sets()).unwrap_or(1);
    sets * usize::from(!plan.generator.neutral.is_known()) + usize::from(plan.generator.bonding_plug == Answer::Unknown)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let at_set = bonds_at_set(facts.plan);
    let boxes = bonded_boxes(facts.plan);
    let doubtful = doubtful_boxes(facts.plan);
    let sure = at_set + boxes.len();
    // The reader is not sent to look up what is known of the generator.
    let find_out = if doubtful_at_set(facts.plan) > 0 { "find-out" } else { "find-out-box" };
    // One finding per remedy, each for its own place, so that no two share a title. Without the box, the generator's
    // own joints may still be too many.
    let mut told = Vec::new();
    if sure < 2 {
        let all = sure + doubtful_at_set(facts.plan) + doubtful.len();
        let about = [boxes, doubtful].concat();
        told.push((Signal::Caution, find_out, all, about));
    } else {
        if !boxes.is_empty() {
            told.push((Signal::Warning, "box", sure, boxes));
        }
        // Even without the boxes that have a bond, each of these may be one too many.
        if at_set + doubtful.len() > 1 && !doubtful.is_empty() {
            told.push((Signal::Caution, find_out, sure + doubtful.len(), doubtful));
        }
        if at_set > 1 {
            // Without a plug, only the makers' own joints are left.
            let plug = facts.plan.generator.bonding_plug == Answer::Known(true);
            told.push((Signal::Warning, if plug { "plug" } else { "sets" }, sure, Vec::new()));
        }
    }
    for (signal, fix, bonds, about) in told {
        if bonds > 1 {
            let used = used(facts, &about);
            found.add(signal, about, values([("bonds", Value::Count(bonds))]), fix, values([("used", used)]));
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::findings;

    /// Of three joints, two are left without the box, so the plug comes out as well. Of two, only the box goes.
    #[test]
    fn each_joint_too_many_has_its_deed() {
        let bond = ("bond = false", "bond = true");
        let plug = ("bonding_plug = false", "bonding_plug = true");
        let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
        let told = |edits: &[crate::rules::Edit]| -> Vec<&'static str> {
            let found = findings(edits);
            let found = found.iter().filter(|it| it.code == "SHOCK004");
            found.map(|it| it.fix.key).collect()
        };
        assert_eq!(told(&[bond, plug]), ["box", "plug"]);
        assert_eq!(told(&[bond]), ["box"]);
        assert_eq!(told(&[bond, plug, floating]), ["box"]);
        // A box whose bond is unknown is reported as well as the plug.
        assert_eq!(told(&[("bond = false", "bond = \"unknown\""), plug]), ["plug", "find-out-box"]);
    }

    /// A box with a bond and a listed one that may have one are reported separately, so that no title says that the
    /// second has one.
    #[test]
    fn each_box_is_told_as_what_is_known_of_it() {
        let second = "[[box]]\nid = \"other\"\nfrom = \"front\"\ninlet = \"5-20P\"\nlisted = true\nbond = \"unknown\"\n\
                      [[box.outlet]]\nid = \"spare\"\nshape = \"5-20R\"\n[[load]]\nid = \"kettle\"";
        let told = |edits: &[crate::rules::Edit]| -> Vec<(&'static str, Vec<String>)> {
            let found = findings(edits);
            let found = found.iter().filter(|it| it.code == "SHOCK004");
            found.map(|it| (it.fix.key, it.about.iter().map(ToString::to_string).collect())).collect()
        };
        let both = [("bond = false", "bond = true"), ("[[load]]\nid = \"kettle\"", second)];
        let of = |id: &str| vec![id.to_owned()];
        assert_eq!(told(&both), [("box", of("box")), ("find-out-box", of("other"))]);
        assert_eq!(told(&both[..1]), [("box", of("box"))]);
        // If nothing else joins neutral and ground, a box that may is no joint too many.
        let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
        assert_eq!(told(&[floating, both[1]]), []);
    }

    /// With everything known about the generator, the reader is sent to the box's papers and not to the manual.
    #[test]
    fn only_what_is_not_known_is_looked_at() {
        let maybe = ("bond = false", "bond = \"unknown\"");
        let told = |edits: &[crate::rules::Edit]| -> (&'static str, String) {
            let report = crate::rules::testing::report(edits);
            let found = report.findings.iter().find(|it| it.code == "SHOCK004").expect("found");
            let text = crate::words::Words::english().finding(found, &report.figures.loads);
            (found.fix.key, text.fix)
        };
        let (key, text) = told(&[maybe]);
        assert_eq!(key, "find-out-box");
        assert!(text.contains("papers of “box”") && !text.contains("manual"), "{text}");
        let neutral = ("neutral = \"bonded\"", "neutral = \"unknown\"");
        let (key, text) = told(&[maybe, neutral]);
        assert_eq!(key, "find-out");
        assert!(text.contains("generator’s manual"), "{text}");
    }

    /// On wet ground the box must not be used, and on dry ground its label names what plugs in there: the remedy says the
    /// same.
    #[test]
    fn a_box_that_is_used_until_somebody_knows_is_told_so() {
        for (ground, used, says) in
            [("wet", false, "Do not use “box” until you know."), ("dry", true, "count on no GFCI past “box”.")]
        {
            let ground = format!("ground = \"{ground}\"");
            for neutral in ["bonded", "unknown"] {
                let neutral = format!("neutral = \"{neutral}\"");
                let report = crate::rules::testing::report(&[
                    ("ground = \"wet\"", ground.as_str()),
                    ("bond = false", "bond = \"unknown\""),
                    ("neutral = \"bonded\"", neutral.as_str()),
                    ("gfci = false # twist", "gfci = true"),
                    ("gfci = true # left", "gfci = false"),
                    ("gfci = true # right", "gfci = false"),
                ]);
                let words = crate::words::Words::english();
                assert_eq!(report.usable(&crate::plan::Id::new("box").expect("an id")), used, "{ground}");
                for code in ["SHOCK004", "SHOCK005"] {
                    let found = report.findings.iter().find(|it| it.code == code).expect("found");
                    let text = words.finding(found, &report.figures.loads);
                    assert!(text.fix.contains(says), "{ground} {neutral}: {}", text.fix);
                }
            }
        }
    }

    /// Only a generator that has a bonding plug is told to take it out.
    #[test]
    fn a_plug_is_named_only_where_there_is_one() {
        let joined = ("inverter = false", "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = true }");
        let plug = ("bonding_plug = false", "bonding_plug = true");
        for (edits, fix) in [(vec![joined], "sets"), (vec![plug], "plug"), (vec![joined, plug], "plug")] {
            let found = findings(&edits);
            let found = found.iter().find(|it| it.code == "SHOCK004").expect("found");
            assert_eq!(found.fix.key, fix, "{edits:?}");
        }
    }
}

#![doc = include_str!("../../../i18n/en/explain/SHOCK013.md")]

use super::exposed::{Exposed, by_ground, exposed, ids, milder};
use crate::plan::{Answer, Neutral};
use crate::report::Values;
use crate::rules::prelude::*;
use crate::supply::{NodeIx, NodeKind};
use crate::verdict::{Protection, may_be_wet};

pub(super) const RULE: Rule = Rule {
    code: "SHOCK013",
    name: "blind-protection",
    area: "shock",
    worst: Signal::Danger,
    sources: &[cite::NEC_250_142, cite::PRACTICE],
    fixes: &[
        "plug",
        "plug-look",
        "plug-where",
        "plug-alone",
        "plug-better",
        "plug-first",
        "plug-out",
        "box",
        "box-look",
        "shared",
        "if-any",
        "if-none",
    ],
    check,
    #[cfg(test)]
    fires: &[
        // The bonding plug in the one socket that the kettle is not in.
        &[FLOATING, PLUG, AT_FRONT],
        // Two protected household outlets, and the plan does not say which one the plug is in.
        &[FLOATING, PLUG, AT_FRONT, SECOND],
        // Nobody knows whether there is a plug.
        &[("bonding_plug = false", "bonding_plug = \"unknown\""), AT_FRONT],
        // Nothing else is plugged in behind that GFCI.
        &[FLOATING, PLUG],
        &[FLOATING, PLUG, ("ground = \"wet\"", "ground = \"dry\"")],
        // A cord without a GFCI in that outlet.
        &[FLOATING, PLUG, LEAD],
        // A bonded generator needs no bonding plug.
        &[PLUG, AT_FRONT],
        // A box with a bond behind the generator's GFCI.
        &[FLOATING, BEHIND, BARE_LEFT, BARE_RIGHT, ("bond = false", "bond = true")],
        &[FLOATING, BEHIND, BARE_LEFT, BARE_RIGHT, ("bond = false", "bond = \"unknown\"")],
        // The kettle is on an outlet that shares the plug outlet's breaker, and may share its GFCI.
        &[FLOATING, IN_BACK, AT_FRONT, SHARED],
        // The plug's outlet has no buttons of its own, and may be fed by the other.
        &[FLOATING, IN_BACK, AT_FRONT, SHARED, ("gfci = true\n[[cord]]", "gfci = false\n[[cord]]")],
        // Nobody looked for its buttons.
        &[FLOATING, MAYBE, BARE_LEFT, BARE_RIGHT, ("bond = false", "bond = true")],
        &[FLOATING, MAYBE, BARE_LEFT, BARE_RIGHT, ("bond = false", "bond = \"unknown\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // It has a breaker of its own.
        &[FLOATING, IN_BACK, AT_FRONT, SECOND, ("gfci = true\n[[cord]]", "gfci = false\n[[cord]]")],
        // The plug is in an outlet without a GFCI.
        &[FLOATING, PLUG, AT_FRONT, ("gfci = true # front", "gfci = false")],
        // The receptacles of the box have a GFCI each: the joint is ahead of them.
        &[FLOATING, BEHIND, ("bond = false", "bond = true")],
        &[FLOATING, BEHIND, BARE_LEFT, BARE_RIGHT],
        &[FLOATING, MAYBE, BARE_LEFT, BARE_RIGHT],
        &[FLOATING, BARE_LEFT, BARE_RIGHT, ("bond = false", "bond = true")],
    ],
};

#[cfg(test)]
const FLOATING: crate::rules::Edit = ("neutral = \"bonded\"", "neutral = \"floating\"");
#[cfg(test)]
const PLUG: crate::rules::Edit = ("bonding_plug = false", "bonding_plug = true");
#[cfg(test)]
const AT_FRONT: crate::rules::Edit = ("on = \"left\" # kettle", "on = \"front\"");
#[cfg(test)]
const SECOND: crate::rules::Edit =
    ("[[cord]]", "[[generator.outlet]]\nid = \"back\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = true\n[[cord]]");
#[cfg(test)]
const SHARED: crate::rules::Edit = (
    "[[cord]]",
    "[[generator.outlet]]\nid = \"back\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\nshares = \"front\"\ngfci = true\n\
     [[cord]]",
);
#[cfg(test)]
const IN_BACK: crate::rules::Edit = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"back\"");
#[cfg(test)]
const LEAD: crate::rules::Edit = (
    "[[box]]",
    "[[cord]]\nid = \"lead\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\nwire = \"12 AWG\"\n\
     conductors = 3\nlength = \"3 ft\"\noutdoor = true\ncoiled = false\n[[box]]",
);
#[cfg(test)]
const BEHIND: crate::rules::Edit = ("gfci = false # twist", "gfci = true");
#[cfg(test)]
const MAYBE: crate::rules::Edit = ("gfci = false # twist", "gfci = \"unknown\"");
#[cfg(test)]
const BARE_LEFT: crate::rules::Edit = ("gfci = true # left", "gfci = false");
#[cfg(test)]
const BARE_RIGHT: crate::rules::Edit = ("gfci = true # right", "gfci = false");

/// A device, the joint beyond it, and whether that joint is known.
type Pair = (NodeIx, NodeIx, bool);

fn pair(protection: Protection) -> Option<Pair> {
    match protection {
        Protection::Blind { device, joint } => Some((device, joint, true)),
        Protection::Doubtful { device, joint } => Some((device, joint, false)),
        Protection::Works(_) | Protection::None => None,
    }
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let mut pairs: Vec<Pair> = Vec::new();
    for (at, ..) in facts.supply.receptacles() {
        let new = pair(facts.verdicts.protection(at));
        pairs.extend(new.filter(|new| !pairs.contains(new)));
    }
    let (signal, ground) = by_ground(facts);
    let set = &facts.plan.generator;
    let needless = set.neutral == Answer::Known(Neutral::Bonded) && set.bonding_plug == Answer::Known(true);
    for of in pairs {
        let (device, joint, known) = of;
        let Exposed { used, campers, free } =
            exposed(facts, Some(device), |at| pair(facts.verdicts.protection(at)) == Some(of));
        let boxed = matches!(facts.supply.node(joint).kind, NodeKind::Inlet { .. });
        let past = facts.supply.up(joint).any(|(above, _)| above == device);
        let fix = match (boxed, known) {
            // The same as SHOCK004 says, wherever the plug is.
            (false, _) if needless => "plug-out",
            (false, _) if !past => "shared",
            (false, true) => "plug",
            // There is a plug, but nobody knows where.
            (false, false) if set.bonding_plug == Answer::Known(true) => "plug-where",
            (false, false) => "plug-look",
            (true, true) => "box",
            (true, false) => "box-look",
        };
        let id = |at: NodeIx| Value::from(&facts.supply.node(at).id);
        let mut shown = values([("device", id(device)), ("joint", id(joint)), ("ground", ground.clone())]);
        // Not using the box clears everything that it blinds. On dry ground its label keeps nobody out, so neither do
        // the words; a camper's label never does.
        let wet = may_be_wet(facts.plan);
        let fix_values = |strict: bool| match fix {
            "box" | "box-look" => values([
                ("part", Value::Parts(ids(facts, &[joint]))),
                // A camper, or a box with a lab's mark, is used all the same.
                ("used", Value::yes_no(facts.verdicts.refused(joint).is_none())),
            ]),
            "plug" | "shared" => values([("wet", Value::yes_no(strict))]),
            _ => values([]),
        };
        let mut tell = |at: Vec<NodeIx>, signal, fix, shown: &Values, strict| {
            if !at.is_empty() {
                found.add(signal, ids(facts, &at), shown.clone(), fix, fix_values(strict));
            }
        };
        let nobody = used.is_empty() && campers.is_empty();
        tell(used, signal, fix, &shown, wet);
        tell(campers, of_campers(signal), fix, &shown, false);
        // An outlet nobody plugs into is no danger, but its label reports the blind GFCI.
        if nobody && !boxed {
            let mut at = free;
            at.retain(|at| *at != joint);
            at.insert(0, joint);
            let first = facts.verdicts.to_go_past(joint);
            let alone = match first.is_empty() {
                // On damp or dry ground its label keeps nobody out.
                true if !wet => "plug-better",
                true => "plug-alone",
                false => "plug-first",
            };
            shown.insert("parts", Value::Parts(ids(facts, &first)));
            tell(at, Signal::Caution, if fix == "plug" { alone } else { fix }, &shown, wet);
        } else {
            tell(free, Signal::Caution, fix, &shown, wet);
        }
    }
    if_any(facts, signal, &ground, found);
}

/// Returns the signal for a camper's feed: one step milder, but at least a caution.
fn of_campers(signal: Signal) -> Signal {
    milder(signal).min(Signal::Caution)
}

/// Reports receptacles without a known device for which rule SHOCK001 advises looking for one that would be blind.
fn if_any(facts: &Facts<'_>, signal: Signal, ground: &Value, found: &mut Findings<'_>) {
    let would_be = |at: NodeIx| {
        let none = facts.verdicts.protection(at) == Protection::None;
        none.then(|| facts.verdicts.grounding.would_be_blind(at)).flatten()
    };
    let mut pairs: Vec<(NodeIx, NodeIx)> = Vec::new();
    for (at, ..) in facts.supply.receptacles() {
        pairs.extend(would_be(at).filter(|new| !pairs.contains(new)));
    }
    for of in pairs {
        let Exposed { used, campers, .. } = exposed(facts, Some(of.0), |at| would_be(at) == Some(of));
        let id = |at: NodeIx| Value::from(&facts.supply.node(at).id);
        let shown = values([("device", id(of.0)), ("joint", id(of.1)), ("ground", ground.clone())]);
        for (at, signal) in [(used, signal), (campers, of_campers(signal))] {
            if !at.is_empty() {
                // A cord with a GFCI goes into nothing that is refused for another reason.
                let usable = at.iter().filter(|at| facts.verdicts.refused(**at).is_none());
                let mut places: Vec<NodeIx> = Vec::new();
                for at in usable.map(|at| facts.verdicts.guard_goes(*at).unwrap_or(*at)) {
                    if !places.contains(&at) {
                        places.push(at);
                    }
                }
                let fix = if places.is_empty() { "if-none" } else { "if-any" };
                let places = values([("parts", Value::Parts(ids(facts, &places)))]);
                found.add(signal, ids(facts, &at), shown.clone(), fix, places);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::report::{Admits, ShockState};
    use crate::rules::testing::{report, signals};

    const WET: &str = "ground = \"wet\"";

    /// A bonding plug behind the kettle's GFCI is a danger on wet ground, and the label refuses the outlet.
    #[test]
    fn a_bonding_plug_behind_the_same_gfci_blinds_it() {
        let edits = [FLOATING, PLUG, AT_FRONT];
        assert_eq!(signals("SHOCK013", &edits), [Signal::Danger]);
        let report = report(&edits);
        let front = crate::plan::Id::new("front").expect("an id");
        let limit = report.figures.limits.iter().find(|limit| limit.id == front);
        let shock = &limit.expect("it is there").shock;
        assert_eq!((shock.state, shock.joint.as_ref()), (ShockState::Blind, Some(&front)));
        assert_ne!(report.verdict(&front).expect("a verdict").admits, Admits::Everything);
        for (ground, signal) in [
            ("ground = \"damp\"", Signal::Warning),
            ("ground = \"dry\"", Signal::Caution),
            ("ground = \"unknown\"", Signal::Danger),
        ] {
            let edits = [FLOATING, PLUG, AT_FRONT, (WET, ground)];
            assert_eq!(signals("SHOCK013", &edits), [signal], "{ground}");
        }
    }

    /// Alone behind a GFCI, a bonding plug blinds it for nobody, but the GFCI may cut the plug off unnoticed: a caution
    /// on any ground. On dry ground the label keeps nobody out, and neither do the words.
    #[test]
    fn a_bonding_plug_alone_behind_a_gfci_is_a_caution() {
        for (ground, fix) in [(WET, "plug-alone"), ("ground = \"dry\"", "plug-better")] {
            let report = report(&[FLOATING, PLUG, (WET, ground)]);
            let found: Vec<_> = report.findings.iter().filter(|it| it.code == "SHOCK013").collect();
            let told: Vec<_> = found.iter().map(|it| (it.signal, it.fix.key)).collect();
            assert_eq!(told, [(Signal::Caution, fix)], "{ground}");
            // The plug is known to be there, so the words do not guess.
            let text = crate::words::Words::english().finding(found[0], &[]);
            assert_eq!(text.title, "A GFCI can cut off the bonding plug", "{ground}");
            assert!(text.why.starts_with("The bonding plug in “front” is past a GFCI."), "{}", text.why);
        }
    }

    /// Where the label of an outlet in use keeps nobody out, the words only advise.
    #[test]
    fn words_forbid_no_more_than_the_label() {
        for (ground, strict) in [(WET, true), ("ground = \"dry\"", false)] {
            let report = report(&[FLOATING, PLUG, AT_FRONT, (WET, ground)]);
            let front = crate::plan::Id::new("front").expect("an id");
            let open = report.verdict(&front).expect("a verdict").admits == Admits::Everything;
            let found = report.findings.iter().find(|it| it.code == "SHOCK013").expect("found");
            let fix = crate::words::Words::english().finding(found, &[]).fix;
            assert_eq!((open, !fix.contains("better plug")), (!strict, strict), "{ground}: {fix}");
        }
    }

    /// The reason names the same outlet that the reader is told was assumed: one with no known GFCI, where one would be
    /// blind. Near miss: it surely has none, so the plug does no harm anywhere.
    #[test]
    fn why_and_look_name_one_outlet() {
        let maybe = ("bonding_plug = false", "bonding_plug = \"unknown\"");
        let back = ("gfci = true\n[[cord]]", "gfci = false\n[[cord]]");
        let told = |front: &str| -> (Vec<Value>, Option<Value>) {
            let report = report(&[FLOATING, maybe, AT_FRONT, SECOND, back, ("gfci = true # front", front)]);
            let found = report.findings.iter().filter(|it| it.code == "SHOCK013");
            let looked = report.figures.assumed.iter().find(|it| it.why == "bonding-plug-in");
            (found.map(|it| it.values["joint"].clone()).collect(), looked.map(|it| it.value.clone()))
        };
        let id = |id: &str| crate::plan::Id::new(id).expect("an id");
        let (joints, looked) = told("gfci = \"unknown\"");
        assert_eq!(joints, [Value::from(&id("front"))]);
        assert_eq!(looked, Some(Value::Parts(vec![id("front")])));
        let (joints, looked) = told("gfci = false");
        assert_eq!(joints, []);
        assert_eq!(looked, Some(Value::Parts(vec![id("back")])));
    }

    /// In a bonded generator the plug comes out, wherever it is, and this is the same remedy as that of SHOCK004. If
    /// the plug or the neutral is unknown, nothing is taken out.
    #[test]
    fn a_plug_that_is_not_needed_comes_out() {
        let in_front = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\"");
        let told = |edits: &[crate::rules::Edit]| -> Vec<_> {
            let report = report(edits);
            let mut of = report.figures.troubles.iter();
            let shown = of.find(|it| report.findings_of(it).any(|it| it.code == "SHOCK013"));
            let shown = shown.expect("a trouble");
            report.findings_of(shown).map(|it| (it.code, it.fix.key)).collect()
        };
        let out = [("SHOCK013", "plug-out"), ("SHOCK004", "plug")];
        assert_eq!(told(&[in_front, AT_FRONT]), out);
        assert_eq!(told(&[PLUG, AT_FRONT, SECOND])[..1], out[..1]);
        let unknown = ("neutral = \"bonded\"", "neutral = \"unknown\"");
        assert_eq!(told(&[unknown, in_front, AT_FRONT])[0].1, "plug");
        let maybe = ("bonding_plug = false", "bonding_plug = \"unknown\"");
        assert_eq!(told(&[maybe, AT_FRONT])[0].1, "plug-look");
    }

    /// A box with a bond behind the generator's GFCI, with no GFCIs of its own.
    #[test]
    fn a_box_behind_the_sets_gfci_blinds_it() {
        let edits = [FLOATING, BEHIND, ("bond = false", "bond = true"), BARE_LEFT, BARE_RIGHT];
        assert_eq!(signals("SHOCK013", &edits), [Signal::Danger]);
        assert_eq!(signals("SHOCK013", &edits[..3]), []);
    }

    /// Two loads that take turns leave a socket for the plug; two at once fill the outlet, but only in the plan. With
    /// nothing planned at either of two outlets, the plug may be in each. It does no harm if the plan puts it in the
    /// outlet without a GFCI, or if there is no plug.
    #[test]
    fn the_plug_may_be_wherever_it_fits() {
        let bare = ("gfci = true\n[[cord]]", "gfci = false\n[[cord]]");
        let fan = ("on = \"right\" # fan", "on = \"front\"");
        let turns = ("hours = [\"18:00-23:00\"]", "hours = [\"20:00-21:00\"]");
        let edits = [FLOATING, PLUG, AT_FRONT, SECOND, bare, fan, turns];
        assert_eq!(signals("SHOCK013", &edits), [Signal::Danger]);
        assert_eq!(signals("SHOCK013", &edits[..6]), [Signal::Danger]);
        let in_back = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"back\"");
        let said = [FLOATING, in_back, AT_FRONT, SECOND, bare, fan, turns];
        assert_eq!(signals("SHOCK013", &said), []);
        assert_eq!(signals("SHOCK013", &[FLOATING, AT_FRONT, SECOND, bare, fan, turns]), []);

        let anywhere = [
            FLOATING,
            PLUG,
            SECOND,
            ("from = \"twist\"\nplug", "plug"),
            ("on = \"left\" # kettle", ""),
            ("on = \"right\" # fan", ""),
        ];
        assert_eq!(signals("SHOCK013", &anywhere), [Signal::Danger; 2]);
        let report = report(&anywhere);
        let assumed = report.figures.assumed.iter().find(|it| it.why == "bonding-plug-in");
        let ids = ["front", "back"].map(|id| crate::plan::Id::new(id).expect("an id"));
        assert_eq!(assumed.map(|it| &it.value), Some(&Value::Parts(ids.to_vec())));
    }

    /// Two outlets with TEST buttons on one breaker, the plug in one and the kettle in the other: one GFCI may serve
    /// both, and also if nobody looked for the second outlet's buttons. On a breaker of its own, the plug does no harm.
    #[test]
    fn one_gfci_may_serve_both_outlets_of_a_breaker() {
        let shared = |edits: &[crate::rules::Edit]| -> Vec<_> {
            let report = report(edits);
            let found = report.findings.iter().filter(|it| it.fix.key == "shared");
            found.map(|it| (it.signal, it.about.iter().map(ToString::to_string).collect())).collect()
        };
        let told: Vec<(_, Vec<_>)> = vec![(Signal::Danger, vec!["front".to_owned()])];
        let edits = [FLOATING, IN_BACK, AT_FRONT, SHARED];
        assert_eq!(shared(&edits), told);
        let unknown = ("gfci = true\n[[cord]]", "gfci = \"unknown\"\n[[cord]]");
        assert_eq!(shared(&[&edits[..], &[unknown]].concat()), told);
        // Without buttons of its own, it may be fed by the other.
        let none = ("gfci = true\n[[cord]]", "gfci = false\n[[cord]]");
        assert_eq!(shared(&[&edits[..], &[none]].concat()), told);
        assert_eq!(shared(&[FLOATING, IN_BACK, AT_FRONT, SECOND]), []);
        let report = report(&edits);
        let front = crate::plan::Id::new("front").expect("an id");
        assert_eq!(report.verdict(&front).expect("a verdict").admits, Admits::Guarded);
    }

    /// A cord with a GFCI is advised only for what may be used, not for the outlet whose breaker is too big.
    #[test]
    fn a_cord_with_a_gfci_goes_into_nothing_refused() {
        let told = |left: &str| -> Vec<_> {
            let left = format!("breaker = \"{left} A\"");
            let left = ("breaker = \"15 A\" # left", left.as_str());
            let both = [FLOATING, MAYBE, BARE_LEFT, BARE_RIGHT, ("bond = false", "bond = \"unknown\""), left];
            let report = report(&both);
            let found = report.findings.iter().filter(|it| it.code == "SHOCK013");
            found.map(|it| (it.fix.key, it.fix.values.get("parts").cloned())).collect()
        };
        let parts = |ids: &[&str]| {
            let id = |id: &&str| crate::plan::Id::new(id).expect("an id");
            Some(Value::Parts(ids.iter().map(id).collect()))
        };
        assert_eq!(told("15"), [("if-any", parts(&["left", "right"]))]);
        assert_eq!(told("30"), [("if-any", parts(&["right"]))]);
    }

    /// A plug that is said to be in the outlet without a GFCI does no harm.
    #[test]
    fn where_the_plug_is_decides() {
        let bare = ("gfci = true\n[[cord]]", "gfci = false\n[[cord]]");
        let in_back = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"back\"");
        let in_front = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\"");
        assert_eq!(signals("SHOCK013", &[FLOATING, in_back, AT_FRONT, SECOND, bare]), []);
        assert_eq!(signals("SHOCK013", &[FLOATING, in_front, AT_FRONT, SECOND, bare]), [Signal::Danger]);
    }
}

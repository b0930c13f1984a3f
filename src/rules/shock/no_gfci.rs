#![doc = include_str!("../../../i18n/en/explain/SHOCK001.md")]

use super::exposed::{Exposed, by_ground, exposed, ids, milder};
use crate::rules::prelude::*;
use crate::supply::{NodeIx, NodeKind};
use crate::verdict::{Protection, may_be_wet, splitter};

pub(super) const RULE: Rule = Rule {
    code: "SHOCK001",
    name: "no-gfci",
    area: "shock",
    worst: Signal::Danger,
    sources: &[
        cite::NEC_590_6,
        cite::NEC_551_71,
        cite::NEC_445_20,
        cite::OSHA_404_B,
        cite::NEC_CLASS_A,
        crate::tables::gfci::CURVE,
    ],
    fixes: &["protect", "better", "camper", "free", "named", "first"],
    check,
    #[cfg(test)]
    fires: &[
        &[("gfci = true # left", "gfci = false")],
        &[("gfci = true # left", "gfci = \"unknown\"")],
        // Nothing is on it, but a socket is free.
        &[("gfci = true # front", "gfci = false")],
        &[("gfci = true # left", "")],
        // A cord with a GFCI, and one without.
        &[("gfci = true # front", "gfci = false"), GUARD],
        &[("gfci = true # front", "gfci = false"), PLAIN],
        // A camper on the 30 A outlet.
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"5-20P\""),
            ("shape = \"L5-30R\"\nbreaker", "shape = \"TT-30R\"\nbreaker"),
            ("kind = \"heater\" # kettle", "kind = \"electronic\""),
            ("plug = \"5-15P\" # kettle", "plug = \"TT-30P\""),
            ("on = \"left\" # kettle", "on = \"twist\""),
        ],
        &[("gfci = true # left", "gfci = false"), ("ground = \"wet\"", "")],
        &[("gfci = true # left", "gfci = false"), ("ground = \"wet\"", "ground = \"dry\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // Protected further upstream.
        &[("gfci = true # left", "gfci = false"), ("gfci = false # twist", "gfci = true")],
    ],
};

#[cfg(test)]
const GUARD: crate::rules::Edit = (
    "[[box]]",
    "[[cord]]\nid = \"lead\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\nwire = \"12 AWG\"\n\
     conductors = 3\nlength = \"3 ft\"\noutdoor = true\ncoiled = false\ngfci = true\n[[box]]",
);
#[cfg(test)]
const PLAIN: crate::rules::Edit = (
    "[[box]]",
    "[[cord]]\nid = \"lead\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\nwire = \"12 AWG\"\n\
     conductors = 3\nlength = \"3 ft\"\noutdoor = true\ncoiled = false\ngfci = false\n[[box]]",
);

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let Exposed { mut used, campers, free } =
        exposed(facts, None, |at| facts.verdicts.protection(at) == Protection::None);
    let (signal, ground) = by_ground(facts);
    let mut tell = |at: &[NodeIx], signal, fix, remedy| {
        if !at.is_empty() {
            found.add(signal, ids(facts, at), values([("ground", ground.clone())]), fix, remedy);
        }
    };
    // One cord with a GFCI can protect several receptacles: one remedy for all of them, reported once.
    let mut rest = free.clone();
    let goes = |at: &NodeIx| facts.verdicts.guard_goes(*at);
    let mut places: Vec<NodeIx> = Vec::new();
    for at in used.iter().chain(&free).filter_map(goes) {
        if !places.contains(&at) && !facts.verdicts.to_go_past(at).is_empty() {
            places.push(at);
        }
    }
    for at in places {
        let past = |other: &NodeIx| goes(other) == Some(at);
        let (these, others): (Vec<_>, Vec<_>) = used.into_iter().partition(past);
        let (unused, free): (Vec<_>, Vec<_>) = rest.into_iter().partition(past);
        let worst = if these.is_empty() { Signal::Caution } else { signal };
        // A receptacle nobody plugs into is no danger, but ends of one shape on one cord look alike.
        let cord = |at: &NodeIx| {
            let of = splitter(facts.supply, *at)?;
            let NodeKind::Receptacle { shape, .. } = facts.supply.node(*at).kind else {
                return None;
            };
            Some((of, shape))
        };
        let alike = |end: &NodeIx| cord(end).is_some_and(|of| these.iter().any(|used| cord(used) == Some(of)));
        let (ends, here): (Vec<_>, Vec<_>) = unused.into_iter().partition(alike);
        let mut these = [these, ends].concat();
        these.sort_unstable();
        let [first, place] = [&facts.verdicts.to_go_past(at)[..], &[at]].map(|these| Value::Parts(ids(facts, these)));
        let remedy = values([("parts", first), ("place", place)]);
        if worst == Signal::Caution {
            tell(&[here, these].concat(), worst, "first", remedy);
        } else {
            tell(&these, worst, "first", remedy.clone());
            tell(&here, Signal::Caution, "first", remedy);
        }
        (used, rest) = (others, free);
    }
    // On damp or dry ground, neither the label nor an answer keeps anybody out.
    let fix = if may_be_wet(facts.plan) { "protect" } else { "better" };
    tell(&used, signal, fix, values([]));
    tell(&campers, milder(signal), "camper", values([]));
    // What is plugged in, and what may stay, is reported for each receptacle separately.
    for at in rest.clone() {
        let (only, plug) = facts.verdicts.named(at);
        if plug || !only.is_empty() {
            let said = match (plug, only.is_empty()) {
                (false, _) => "no",
                (true, true) => "alone",
                (true, false) => "yes",
            };
            let only = Value::Parts(ids(facts, &only));
            let only = values([("parts", only), ("plug", Value::Name(said.to_owned()))]);
            tell(&[at], Signal::Caution, "named", only);
            rest.retain(|other| *other != at);
        }
    }
    tell(&rest, Signal::Caution, "free", values([]));
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::signals;

    /// The kettle's plug fits no outlet of the box beside it, so that box, behind the same cord, is only a caution. An
    /// unused end of the kettle's own cord is as much of a danger as the end in use.
    #[test]
    fn only_ends_of_one_cord_look_alike() {
        let bare = ("gfci = true # front", "gfci = false");
        let lead = "[[cord]]\nid = \"lead\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\", \"5-15R\", \"5-15R\"]\n\
                 wire = \"12 AWG\"\nconductors = 3\nlength = \"25 ft\"\noutdoor = true\ncoiled = false\n[[box]]\nid = \"lock\"\n\
                 from = \"lead.2\"\ninlet = \"5-15P\"\nlisted = true\nbond = false\n[[box.outlet]]\n\
                 id = \"twist-lock\"\nshape = \"L5-20R\"\nbreaker = \"15 A\"\n[[box]]\nid";
        let report = crate::rules::testing::report(&[
            bare,
            ("on = \"left\" # kettle", "on = \"lead.1\""),
            ("[[box]]\nid", lead),
        ]);
        let told = |id: &str| {
            let mut of_rule = report.findings.iter().filter(|it| it.code == "SHOCK001");
            let told = of_rule.find(|it| it.about.iter().any(|at| at.as_str() == id));
            told.map(|it| it.signal)
        };
        assert_eq!(told("lead.1"), Some(Signal::Danger));
        assert_eq!(told("lead.3"), Some(Signal::Danger));
        assert_eq!(told("twist-lock"), Some(Signal::Caution));
    }

    #[test]
    fn the_wetter_the_worse_and_unknown_is_wet() {
        for (ground, signal) in [
            ("ground = \"wet\"", Signal::Danger),
            ("ground = \"damp\"", Signal::Warning),
            ("ground = \"dry\"", Signal::Caution),
            ("ground = \"unknown\"", Signal::Danger),
        ] {
            assert_eq!(
                signals("SHOCK001", &[("gfci = true # left", ""), ("ground = \"wet\"", ground)]),
                [signal],
                "{ground}"
            );
        }
    }

    /// Where neither the label nor an answer keeps anybody out, the words keep nobody out.
    #[test]
    fn on_damp_ground_a_gfci_is_better() {
        for (ground, fix) in [
            ("ground = \"wet\"", "protect"),
            ("ground = \"unknown\"", "protect"),
            ("ground = \"damp\"", "better"),
            ("ground = \"dry\"", "better"),
        ] {
            let report =
                crate::rules::testing::report(&[("gfci = true # left", "gfci = false"), ("ground = \"wet\"", ground)]);
            let mut of_rule = report.findings.iter().filter(|it| it.code == "SHOCK001");
            let told = of_rule.find(|it| it.about.iter().any(|id| id.as_str() == "left"));
            assert_eq!(told.map(|it| it.fix.key), Some(fix), "{ground}");
            let left = crate::plan::Id::new("left").expect("an id");
            let open = report.verdict(&left).is_some_and(|it| it.why.is_none());
            assert_eq!(open, fix == "better", "{ground}");
        }
    }

    /// A receptacle nobody plugs into is one caution and no danger. One that a load needs for want of another place is
    /// a danger.
    #[test]
    fn a_free_receptacle_is_a_caution_and_one_that_is_needed_a_danger() {
        let bare = ("gfci = true # front", "gfci = false");
        assert_eq!(signals("SHOCK001", &[bare]), [Signal::Caution]);
        // The box stays home, so the kettle and the fan have nowhere else to go.
        let home =
            [bare, ("from = \"twist\"\nplug", "plug"), ("on = \"left\" # kettle", ""), ("on = \"right\" # fan", "")];
        assert_eq!(signals("SHOCK001", &home), [Signal::Danger]);
        // On damp or dry ground nobody is kept out, and a free receptacle is not worth mentioning.
        let damp = [bare, ("ground = \"wet\"", "ground = \"damp\"")];
        assert_eq!(signals("SHOCK001", &damp), []);
    }

    /// The remedy that the finding names, a cord with a GFCI in one socket of an unprotected duplex: its end may be
    /// used, and the other socket is a caution.
    #[test]
    fn a_protected_cord_in_a_bare_duplex_may_be_used() {
        let cord = "[[cord]]\nid = \"guard\"\nfrom = \"front\"\nplug = \"5-15P\"\n\
                    ends = [\"5-15R\"]\nwire = \"12 AWG\"\nconductors = 3\nlength = \"3 ft\"\n\
                    outdoor = true\ncoiled = false\ngfci = true\n[[box]]";
        let edits =
            [("gfci = true # front", "gfci = false"), ("[[box]]", cord), ("on = \"left\" # kettle", "on = \"guard\"")];
        assert_eq!(signals("SHOCK001", &edits), [Signal::Caution]);
        let report = crate::rules::testing::report(&edits);
        let verdict = |id: &str| {
            let id = crate::plan::Id::new(id).expect("an id");
            report.verdict(&id).expect("it is connected").clone()
        };
        assert_eq!(verdict("front").admits, crate::report::Admits::Named);
        assert_eq!(verdict("front").only.len(), 1);
        assert_eq!(verdict("guard").admits, crate::report::Admits::Everything);
        // A plain cord there is no better than the socket itself.
        let plain = cord.replace("gfci = true", "gfci = false");
        let plain = [edits[0], ("[[box]]", plain.as_str()), edits[2]];
        assert_eq!(signals("SHOCK001", &plain), [Signal::Danger, Signal::Caution]);
    }

    /// The finding on an unprotected outlet says what its label says: a cord with a GFCI and the bonding plug may stay
    /// in, and a plain cord comes out and goes into one with a GFCI.
    #[test]
    fn what_is_in_a_bare_outlet_is_told_as_its_label_tells_it() {
        let bare = ("gfci = true # front", "gfci = false");
        let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
        let plug = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\"");
        let told = |edits: &[crate::rules::Edit]| -> Vec<_> {
            let report = crate::rules::testing::report(edits);
            let found = report.findings.iter().filter(|it| it.code == "SHOCK001");
            found.map(|it| (it.fix.key, it.about.iter().map(ToString::to_string).collect::<Vec<_>>())).collect()
        };
        let front = || vec!["front".to_owned()];
        assert_eq!(told(&[bare]), [("free", front())]);
        assert_eq!(told(&[bare, super::GUARD]), [("named", front())]);
        assert_eq!(told(&[bare, floating, plug]), [("named", front())]);
        let both = vec!["front".to_owned(), "lead".to_owned()];
        assert_eq!(told(&[bare, super::PLAIN]), [("first", both)]);
    }

    /// A camper plug in an outlet that it does not fit does not make that outlet a camper's feed: a load that needs it
    /// for want of another place is still a danger.
    #[test]
    fn what_does_not_fit_makes_nothing_milder() {
        let edits = [
            ("gfci = true # front", "gfci = false"),
            ("from = \"twist\"\nplug", "plug"),
            ("on = \"left\" # kettle", ""),
            ("plug = \"5-15P\" # fan", "plug = \"L14-30P\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ];
        assert_eq!(signals("SHOCK001", &edits), [Signal::Danger]);
    }

    /// An empty locking outlet for appliances, and a cord end with a homemade box in it: no appliance may be plugged in
    /// there, so the finding names them.
    #[test]
    fn what_may_not_be_used_is_told() {
        let locking = [
            ("shape = \"L5-30R\"\nbreaker = \"30 A\"", "shape = \"L5-20R\"\nbreaker = \"20 A\""),
            ("from = \"twist\"\nplug", "plug"),
            ("on = \"left\" # kettle", "on = \"front\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ];
        let ends = [
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"5-15P\""),
            ("listed = true", "listed = false"),
            ("gfci = true # front", "gfci = false"),
        ];
        for (edits, id) in [(&locking[..], "twist"), (&ends[..], "long")] {
            let report = crate::rules::testing::report(edits);
            let id = crate::plan::Id::new(id).expect("an id");
            let why = report.guarded(&id).expect("nothing goes in but a cord with a GFCI");
            assert_eq!((why.code, &why.at), ("SHOCK001", &id));
            assert!(report.told_by(why).is_some(), "{id}");
        }
    }

    /// NEC 551.71(F) asks for no GFCI at 30 A and 50 A camper outlets (from a secondary copy). A load about which the
    /// plan is silent is not a camper.
    #[test]
    fn a_campers_feed_is_a_warning_on_wet_ground() {
        let found = |outlet: &str, kind: &str, voltage: &str, ground: &str| {
            let large = outlet.starts_with('1') || outlet.starts_with("L1");
            let shape = format!("shape = \"{outlet}R\"\nbreaker");
            let kind = format!("kind = {kind}");
            let plug = format!("plug = \"{outlet}P\"\n{voltage}");
            let ground = format!("ground = \"{ground}\"");
            let mut edits = vec![
                ("from = \"twist\"\nplug = \"L5-30P\"", "plug = \"L5-30P\""),
                ("shape = \"L5-30R\"\nbreaker", shape.as_str()),
                ("kind = \"heater\" # kettle", &kind),
                ("plug = \"5-15P\" # kettle", &plug),
                ("on = \"left\" # kettle", "on = \"twist\""),
                ("on = \"right\" # fan", "on = \"front\""),
                ("ground = \"wet\"", &ground),
            ];
            if large {
                edits.push(("voltage = \"120 V\"", "voltage = \"120/240 V\""));
            }
            signals("SHOCK001", &edits)
        };
        let (motor, both) = ("\"motor\"", "voltage = \"120/240 V\"");
        assert_eq!(found("TT-30", motor, "", "wet"), [Signal::Warning]);
        assert_eq!(found("TT-30", motor, "", "damp"), [Signal::Caution]);
        assert_eq!(found("14-50", motor, both, "wet"), [Signal::Warning]);
        // A load that may use 240 V alone may be no camper, a cooker is none, and appliances have locking plugs too.
        for (outlet, kind, voltage) in [
            ("14-50", motor, ""),
            ("14-50", motor, "voltage = \"unknown\""),
            ("14-50", motor, "voltage = \"240 V\""),
            ("14-50", "\"cooker\"", both),
            ("TT-30", "\"cooker\"", ""),
            ("TT-30", "\"unknown\"", ""),
            ("L5-30", motor, ""),
            ("L14-30", motor, ""),
            ("L14-30", motor, both),
        ] {
            let said = found(outlet, kind, voltage, "wet");
            assert_eq!(said, [Signal::Danger], "{outlet} {kind} {voltage}");
        }
    }
}

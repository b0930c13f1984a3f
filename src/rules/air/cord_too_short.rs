#![doc = include_str!("../../../i18n/en/explain/AIR005.md")]

use crate::plan::{Answer, Id, LoadKind, Stands};
use crate::quantity::Length;
use crate::rules::demand::Need;
use crate::rules::prelude::*;
use crate::supply::NodeIx;
use crate::tables::exhaust::AMPLE;
use crate::verdict::of_camper;

pub(super) const RULE: Rule = Rule {
    code: "AIR005",
    name: "cord-too-short",
    area: "air",
    worst: Signal::Warning,
    sources: &[cite::NIST_2021, cite::CPSC_DISTANCE, cite::PRACTICE],
    fixes: &["longer", "no-cord", "measure", "bedside", "at-set", "stated"],
    check,
    #[cfg(test)]
    fires: &[
        &[("length = \"50 ft\"", "length = \"24 ft\"")],
        &[("length = \"50 ft\"", "length = \"unknown\"")],
        // Both at the generator's own outlet.
        &[("on = \"left\" # kettle", "on = \"front\""), ("on = \"right\" # fan", "on = \"front\"")],
        &[("length = \"50 ft\"", "length = \"24 ft\""), ("kind = \"electronic\" # fan", "kind = \"medical\"")],
        // At the generator's own outlet.
        &[("kind = \"electronic\" # fan", "kind = \"medical\""), ("on = \"right\" # fan", "on = \"front\"")],
        // People at 60 ft.
        &[("kind = \"electronic\" # fan", "kind = \"medical\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("length = \"50 ft\"", "length = \"25 ft\"")],
        // However loud it is: the limit is measured at a fixed distance, so a longer cord does not help.
        &[("level = \"56 dBA\"", "level = \"90 dBA\"")],
        // A camper on its own cord, at the generator itself.
        &CAMPER,
        // Only one of several loads is plugged in at the generator itself.
        &[("on = \"left\" # kettle", "on = \"front\"")],
        &[
            ("kind = \"electronic\" # fan", "kind = \"medical\""),
            ("sleepers_at = \"60 ft\"", "sleepers_at = \"50 ft\""),
        ],
    ],
};

/// Edits that make both loads campers, one at the generator's own outlet, one at a box.
#[cfg(test)]
const CAMPER: [(&str, &str); 6] = [
    ("shape = \"L5-30R\"", "shape = \"TT-30R\""),
    ("from = \"twist\"\nplug = \"L5-30P\"", "plug = \"L5-30P\""),
    ("plug = \"5-15P\" # kettle", "plug = \"TT-30P\""),
    ("on = \"left\" # kettle", "on = \"twist\""),
    ("plug = \"5-15P\" # fan", "plug = \"L5-30P\""),
    ("on = \"right\" # fan", ""),
];

/// How far the cords from the generator reach.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Reach {
    /// The total length, as far as it is known.
    length: Length,
    /// Whether the length of any of the cords is unknown.
    unsure: bool,
    /// The cords, from the generator on.
    cords: Vec<Id>,
}

fn reach(facts: &Facts<'_>, at: NodeIx) -> Reach {
    let mut reach = Reach { length: Length::ZERO, unsure: false, cords: Vec::new() };
    for (_, node) in facts.supply.up(at).filter(|(_, node)| node.kind.is_cord()) {
        let cord = facts.plan.cord(&node.id);
        match cord.map(|cord| cord.length) {
            Some(Answer::Known(length)) => reach.length = reach.length + length,
            _ => reach.unsure = true,
        }
        reach.cords.insert(0, node.id.clone());
    }
    reach
}

/// Whether it is plugged in at the outside of a camper, with the camper's own cord ahead of it.
fn past_camper(facts: &Facts<'_>, need: &Need<'_>) -> bool {
    let mut way = need.at.into_iter().flat_map(|at| facts.supply.up(at));
    way.any(|(_, node)| facts.plan.camper(&node.id).is_some())
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let needs = facts.needs();
    let reaches = |wanted: fn(&Need<'_>) -> bool| -> Vec<(Id, Reach)> {
        needs
            .iter()
            .filter(|need| wanted(need))
            // A camper brings its own cord.
            .filter(|need| !of_camper(facts.plan, need.load) && !past_camper(facts, need))
            // A receptacle that gives nothing brings nothing closer.
            .filter_map(|need| Some((need, need.at.filter(|at| facts.gives(*at))?)))
            .map(|(need, at)| (need.load.id.clone(), reach(facts, at)))
            .collect()
    };
    // A load with its own battery for the night runs from the generator only by day.
    let medical = reaches(|need| need.load.may_be(LoadKind::Medical) && need.load.backup != Answer::Known(true));
    bedside(facts, found, &medical);
    // Reported once, as the worse finding.
    let told = medical.iter().any(|(_, reach)| reach.unsure && reach.length < AMPLE);
    let mut all = reaches(|_| true);
    if facts.plan.site.stands == Answer::Known(Stands::Enclosed) {
        // Nobody goes in there to plug anything in; see rule AIR003.
        all.retain(|(_, reach)| !reach.cords.is_empty());
    }
    // A load that is to be brought to the bedside is already reported.
    all.retain(|(load, reach)| !reach.cords.is_empty() || medical.iter().all(|(other, _)| other != load));
    // Nobody is sent to an outlet that must not be used.
    let told_of = |need: &&Need<'_>| all.iter().any(|(load, _)| *load == need.load.id);
    let open = needs.iter().filter(told_of).all(|need| need.at.is_some_and(|at| facts.open(at)));
    everything(found, all, told, open);
}

/// Reports if even the farthest load is too close to the generator.
fn everything(found: &mut Findings<'_>, all: Vec<(Id, Reach)>, measure_is_told: bool, open: bool) {
    let unsure = all.iter().any(|(_, reach)| reach.unsure);
    let loads: Vec<Id> = all.iter().map(|(load, _)| load.clone()).collect();
    // The first if several are equal.
    let farthest = all.into_iter().map(|(_, reach)| reach).reduce(
        |best, next| {
            if next.length > best.length { next } else { best }
        },
    );
    let Some(farthest) = farthest else {
        return;
    };
    if farthest.length >= AMPLE {
        return;
    }
    let fix = match (unsure, farthest.cords.is_empty()) {
        (true, _) if measure_is_told => return,
        (true, _) => "measure",
        (false, true) => "no-cord",
        (false, false) => "longer",
    };
    let mut about = if fix == "no-cord" || farthest.cords.is_empty() { loads } else { farthest.cords };
    about.dedup();
    let shown = values([("reach", farthest.length.into()), ("needed", AMPLE.into())]);
    let remedy = if fix == "no-cord" { values([("open", Value::yes_no(open))]) } else { values([]) };
    found.add(Signal::Caution, about, shown, fix, remedy);
}

/// Reports loads beside a sleeper whose cords do not reach far enough.
fn bedside(facts: &Facts<'_>, found: &mut Findings<'_>, medical: &[(Id, Reach)]) {
    let stated = facts.plan.site.sleepers_at.known().copied();
    let mut tell = |signal, fix, needed: Length, which: &dyn Fn(&Reach) -> bool| {
        let short: Vec<&(Id, Reach)> =
            medical.iter().filter(|(_, reach)| reach.length < needed && which(reach)).collect();
        let Some(shortest) = short.iter().map(|(_, reach)| reach.length).min() else {
            return;
        };
        let mut about: Vec<Id> = short.iter().map(|(load, _)| load.clone()).collect();
        about.dedup();
        let shown = values([("reach", shortest.into()), ("needed", needed.into())]);
        found.add(signal, about, shown, fix, values([]));
    };
    tell(Signal::Warning, "at-set", AMPLE, &|reach| reach.cords.is_empty());
    tell(Signal::Warning, "measure", AMPLE, &|reach| reach.unsure);
    tell(Signal::Warning, "bedside", AMPLE, &|reach| !reach.cords.is_empty() && !reach.unsure);
    if let Some(stated) = stated {
        tell(Signal::Caution, "stated", stated, &|reach| reach.length >= AMPLE && !reach.unsure);
    }
}

#[cfg(test)]
mod tests {
    /// Whoever plugs in at the generator is told to step away, not to stay there.
    #[test]
    fn whoever_plugs_in_at_the_generator_steps_away() {
        let words = crate::words::Words::english();
        for edits in super::RULE.fires {
            for found in crate::rules::testing::findings(edits) {
                let said = words.finding(&found, &[]).fix;
                let there = said.contains("at the generator");
                assert!(!there || said.contains("then step away, to the side the wind comes from"), "{said}");
            }
        }
    }

    use crate::quantity::Length;
    use crate::report::{Signal, Value};
    use crate::rules::testing::{findings, signals};

    /// 25 ft is the larger published distance (NIST, 2021). Two cords in a row reach as far as both.
    #[test]
    fn the_lengths_of_a_chain_add_up() {
        let more = |feet: u32| {
            format!(
                "[[cord]]\nid = \"more\"\nfrom = \"long\"\nplug = \"L5-30P\"\nends = [\"L5-30R\"]\n\
                 wire = \"10 AWG\"\nconductors = 3\nlength = \"{feet} ft\"\noutdoor = true\n\
                 coiled = false\n[[box]]\nid = \"box\"\nfrom = \"more\""
            )
        };
        let short = ("length = \"50 ft\"", "length = \"15 ft\"");
        for (feet, signal) in [(9, vec![Signal::Caution]), (10, vec![])] {
            let more = more(feet);
            let edits = [short, ("[[box]]\nid = \"box\"\nfrom = \"long\"", more.as_str())];
            assert_eq!(signals("AIR005", &edits), signal, "{feet}");
        }
        let more = more(9);
        let edits = [short, ("[[box]]\nid = \"box\"\nfrom = \"long\"", more.as_str())];
        let found = findings(&edits);
        let found = found.iter().find(|it| it.code == "AIR005").expect("found");
        // 15 ft and 9 ft at 304.8 mm, each rounded up to a whole millimeter.
        let reach = Length::from_millimetres(4_572 + 2_744);
        assert_eq!(found.values["reach"], reach.into());
        let about: Vec<_> = found.about.iter().map(crate::plan::Id::as_str).collect();
        assert_eq!(about, ["long", "more"]);
    }

    /// With its own battery for the night, it charges by day, wherever the generator is.
    #[test]
    fn a_battery_for_the_night_needs_no_cord_at_night() {
        let medical = ("kind = \"electronic\" # fan", "kind = \"medical\"\nbackup = true");
        let at_set = ("on = \"right\" # fan", "on = \"front\"");
        assert_eq!(signals("AIR005", &[medical, at_set]), []);
        let without = ("kind = \"electronic\" # fan", "kind = \"medical\"");
        assert_eq!(signals("AIR005", &[without, at_set]), [Signal::Warning]);
    }

    #[test]
    fn beside_a_sleeper_it_is_worse() {
        let medical = ("kind = \"electronic\" # fan", "kind = \"medical\"");
        for (feet, expected) in [
            (24, vec![Signal::Warning, Signal::Caution]),
            // 60 ft to the nearest sleeper, by the plan.
            (50, vec![Signal::Caution]),
            (60, vec![]),
        ] {
            let length = format!("length = \"{feet} ft\"");
            let edits = [medical, ("length = \"50 ft\"", length.as_str())];
            assert_eq!(signals("AIR005", &edits), expected, "{feet}");
        }
    }

    /// A camper's own cord is not asked about. A load on short cords beside it is still too near.
    #[test]
    fn a_camper_brings_its_own_cord() {
        use super::CAMPER;
        assert_eq!(signals("AIR005", &CAMPER), []);
        let short = ("length = \"50 ft\"", "length = \"24 ft\"");
        let beside = [CAMPER[0], short, CAMPER[2], CAMPER[3]];
        let plug = ("plug = \"L5-30P\" # long", "plug = \"TT-30P\"");
        let ends = [beside[0], plug, beside[1], beside[2], beside[3]];
        assert_eq!(signals("AIR005", &ends), [Signal::Caution]);
        // The same at the same outlet, but with a household plug: it has no cord of its own.
        assert_eq!(
            signals(
                "AIR005",
                &[("on = \"left\" # kettle", "on = \"front\""), ("on = \"right\" # fan", "on = \"front\"")]
            ),
            [Signal::Caution]
        );
    }

    /// A cord that nobody measured may be too short.
    #[test]
    fn an_unknown_length_reaches_nowhere() {
        let unknown = ("length = \"50 ft\"", "length = \"unknown\"");
        let medical = ("kind = \"electronic\" # fan", "kind = \"medical\"");
        assert_eq!(signals("AIR005", &[unknown]), [Signal::Caution]);
        assert_eq!(signals("AIR005", &[unknown, medical]), [Signal::Warning]);
    }

    /// On wet ground nobody is sent to an outlet without a GFCI.
    #[test]
    fn nobody_is_sent_to_an_outlet_that_must_not_be_used() {
        let at_front = [("on = \"left\" # kettle", "on = \"front\""), ("on = \"right\" # fan", "on = \"front\"")];
        let bare = ("gfci = true # front", "gfci = false");
        for (edits, open) in [(vec![], "yes"), (vec![bare], "no")] {
            let found = findings(&[at_front.to_vec(), edits].concat());
            let found = found.iter().find(|it| it.code == "AIR005").expect("found");
            assert_eq!(found.fix.key, "no-cord");
            assert_eq!(found.fix.values["open"], Value::Name(open.to_owned()));
        }
    }
}

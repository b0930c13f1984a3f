#![doc = include_str!("../../../i18n/en/explain/OVER001.md")]

use std::collections::BTreeMap;

use crate::plan::Id;
use crate::quantity::Current;
use crate::rules::demand::Need;
use crate::rules::prelude::*;
use crate::supply::{NodeIx, NodeKind};
use crate::tables::conductor::CORD_SET_CIRCUIT;
use crate::verdict::{Overcurrent, OwnLimit, own_limit, splitter};

pub(super) const RULE: Rule = Rule {
    code: "OVER001",
    name: "unprotected-rating",
    area: "overcurrent",
    worst: Signal::Danger,
    sources: &[
        cite::NEC_240_4,
        cite::NEC_240_5_B1,
        cite::NEC_240_5_B3,
        cite::NEC_240_5_B4,
        cite::NEC_240_6,
        cite::NEC_210_21_B1,
        cite::NEC_210_21_B3,
        cite::NEC_400_5,
        cite::BS_7671,
        cite::NEC_400_5_A,
        cite::NEC_445_12,
        cite::NEC_551_42,
        cite::UL_489,
        cite::PRACTICE,
    ],
    fixes: &[
        "splitter",
        "receptacle",
        "no-breaker",
        "single",
        "single-look",
        "cord",
        "thicker",
        "inlet",
        "wiring",
        "unknown",
        "own",
        "camper",
        "free",
    ],
    check,
    #[cfg(test)]
    fires: &[
        // A splitter with no breakers.
        &[("ends = [\"L5-30R\"]", "ends = [\"L5-30R\", \"5-20R\"]"), ("from = \"long\"", "from = \"long.1\"")],
        &[("breaker = \"20 A\" # front", "breaker = \"30 A\"")],
        &[("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"5-15R\"\nsockets = 1\nbreaker = \"20 A\"")],
        // The same, but nobody counted its sockets.
        &[("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"5-15R\"\nbreaker = \"20 A\"")],
        &[("wire = \"10 AWG\"", "wire = \"12 AWG\"")],
        &[("wire = \"10 AWG\"", "wire = \"14 AWG\"")],
        &[("wire = \"10 AWG\"", "wire = \"18 AWG\"")],
        &[
            ("shape = \"L5-30R\"\nbreaker = \"30 A\"", "shape = \"L5-20R\"\nbreaker = \"30 A\""),
            ("plug = \"L5-30P\"", "plug = \"L5-20P\""),
        ],
        &[("from = \"long\"\ninlet = \"L5-30P\"", "from = \"front\"\ninlet = \"5-15P\""), HOME_MADE],
        &[("wire = \"14 AWG\" # left", "wire = \"16 AWG\"")],
        &[("breaker = \"15 A\" # left", ""), ("wire = \"14 AWG\" # left", "wire = \"10 AWG\"")],
        &[("breaker = \"30 A\" # twist", "breaker = \"unknown\"")],
        // 20 A and a peak of 25 A through a 15 A plug.
        &[
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"2400 W\""),
            ("peak = \"4500 W\"", "peak = \"3000 W\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"front\"\ninlet = \"5-15P\""),
            HOME_MADE,
        ],
        // 30 A and a peak of 37.5 A: what the twist-lock itself is rated for.
        &[("inverter = false", "inverter = true"), ("breaker = \"30 A\" # twist", "breaker = \"unknown\"")],
        CAMPER,
        // 10.8 A and a peak of 12.5 A through 18 AWG.
        &[
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1300 W\""),
            ("peak = \"4500 W\"", "peak = \"1500 W\""),
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-15P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-15R\"]"),
            ("from = \"long\"\ninlet", "inlet"),
            ("wire = \"10 AWG\"", "wire = \"18 AWG\""),
        ],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // The same, but a factory-made box, with a 15 A plug on a 20 A breaker.
        &[("from = \"long\"\ninlet = \"L5-30P\"", "from = \"front\"\ninlet = \"5-15P\"")],
        // A two-wire lamp cord of 16 AWG on a 20 A breaker (240.5(B)(2)).
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"1-15P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"1-15R\"]"),
            ("wire = \"10 AWG\"", "wire = \"16 AWG\""),
            ("conductors = 3 # long", "conductors = 2"),
            ("from = \"long\"\ninlet", "inlet"),
            ("on = \"left\" # kettle", "on = \"front\""),
            ("plug = \"5-15P\" # fan\non = \"right\" # fan", "plug = \"1-15P\"\non = \"long\""),
        ],
        // 7.5 A and a peak of 8.3 A through 100 ft of 18 AWG, marked 7 A, whose wire carries 10 A.
        &[
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"900 W\""),
            ("peak = \"4500 W\"", "peak = \"1000 W\""),
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-15P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-15R\"]"),
            ("from = \"long\"\ninlet", "inlet"),
            ("wire = \"10 AWG\"", "wire = \"18 AWG\""),
            ("length = \"50 ft\"", "length = \"100 ft\""),
        ],
        // 15 A and a peak of 20 A through a 15 A plug.
        &[
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1800 W\""),
            ("peak = \"4500 W\"", "peak = \"2400 W\""),
            ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"front\"\ninlet = \"5-15P\""),
        ],
        // The same shapes behind breakers of their own.
        &[("shape = \"5-15R\" # left", "shape = \"5-20R\"")],
        &[("wire = \"14 AWG\" # left", "wire = \"12 AWG\"")],
        // Going up in shape is no overcurrent hazard.
        &[("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\"")],
    ],
};

#[cfg(test)]
const HOME_MADE: crate::rules::Edit = ("listed = true", "listed = false");

/// A camper on an adapter from a 50 A outlet.
#[cfg(test)]
const CAMPER: &[crate::rules::Edit] = &[
    ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
    ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"14-50R\"\nbreaker = \"50 A\" # twist"),
    ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"] # long", "plug = \"14-50P\"\nends = [\"TT-30R\"] # long"),
    ("from = \"long\"\ninlet", "inlet"),
    ("plug = \"5-15P\" # kettle\non = \"left\" # kettle", "plug = \"TT-30P\"\non = \"long\" # kettle"),
    ("on = \"right\" # fan", "on = \"front\""),
];

/// Why a part fails: the kind of failure and the breaker. Parts that fail for the same reason share one remedy.
type Reason = (std::mem::Discriminant<Overcurrent>, Option<NodeIx>);

/// A hazard in one place: the part where it begins, and everything downstream that fails with it.
struct Place {
    first: NodeIx,
    failing: Overcurrent,
    about: Vec<Id>,
    weakest: Current,
    /// The least that any of it carries in the expected air, with any coil undone before a breaker is sought.
    carries: Current,
}

/// Returns the largest standard breaker up to a current, among the sizes found in camps: 15 A to 50 A in steps of 5 A
/// (NEC 240.6(A), from memory, not verified).
fn standard_breaker(most: Current) -> Option<Current> {
    const STEP: i64 = 5_000;
    const LEAST: i64 = 15_000;
    const MOST: i64 = 50_000;
    let size = most.milliamps().min(MOST) / STEP * STEP;
    (size >= LEAST).then_some(Current::from_milliamps(size))
}

/// Whether an outlet for the plug of a cord or box can be on so small a breaker. A 30 A outlet is sometimes on a 20 A
/// breaker, but never on a 15 A one (common practice, no source).
fn is_for_its_plug(facts: &Facts<'_>, at: NodeIx, breaker: Current) -> bool {
    match facts.supply.node(at).kind {
        NodeKind::Cord { plug, .. } | NodeKind::Inlet { plug } => {
            breaker.milliamps() * 3 >= plug.0.rating().milliamps() * 2
        }
        _ => true,
    }
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    // Where the hazard of each failing part begins, so that parts downstream of a hazard join it.
    let mut begins: BTreeMap<NodeIx, (Reason, NodeIx)> = BTreeMap::new();
    let mut places: Vec<(Reason, NodeIx, Place)> = Vec::new();
    for at in 0..facts.supply.nodes.len() {
        let ix = NodeIx(at);
        let failing = Overcurrent::of(facts.plan, facts.supply, ix);
        if failing.holds() {
            continue;
        }
        let node = facts.supply.node(ix);
        let reason = (std::mem::discriminant(&failing), node.protected_at.map(|(breaker, _)| breaker));
        let above = facts.supply.up(ix).skip(1).find_map(|(ix, _)| {
            let (why, begin) = begins.get(&ix)?;
            (*why == reason).then_some(*begin)
        });
        // The ends of a splitter are one hazard, the splitter's.
        let begin = above.unwrap_or_else(|| splitter(facts.supply, ix).unwrap_or(ix));
        begins.insert(ix, (reason, begin));
        let known = places.iter().position(|(why, at, _)| *why == reason && *at == begin);
        let known = known.unwrap_or_else(|| {
            let place = Place {
                first: ix,
                failing,
                about: vec![facts.supply.node(begin).id.clone()],
                weakest: node.laid_out,
                carries: node.unwound,
            };
            places.push((reason, begin, place));
            places.len() - 1
        });
        let place = &mut places[known].2;
        place.weakest = place.weakest.min(node.laid_out);
        place.carries = place.carries.min(node.unwound);
        // A splitter is named with its ends, even if the hazard begins upstream.
        let ends_of = splitter(facts.supply, ix).map(|cord| &facts.supply.node(cord).id);
        for id in ends_of.into_iter().chain([&node.id]) {
            if !place.about.contains(id) {
                place.about.push(id.clone());
            }
        }
    }
    for (_, _, place) in places {
        let (signal, breaker) = match place.failing {
            Overcurrent::Single { breaker, sure: false } | Overcurrent::Camper { breaker, sure: true } => {
                (Signal::Caution, Some(breaker))
            }
            Overcurrent::Single { breaker, .. } | Overcurrent::Camper { breaker, .. } => {
                (Signal::Warning, Some(breaker))
            }
            Overcurrent::TooHigh { breaker } => (Signal::Danger, Some(breaker)),
            _ => (Signal::Danger, None),
        };
        // An outlet that nobody uses hurts nobody.
        let free = signal == Signal::Danger && is_free(facts, place.first);
        let signal = if free { Signal::Caution } else { signal };
        let own = own_limit(facts.plan, facts.supply);
        // The generator stops before the breaker does, but too late for the part.
        let stops = own.filter(|own| breaker.is_some_and(|breaker| own.peak < breaker));
        let not_known = Value::Word { word: "not-known" };
        let mut shown = values([
            ("rating", place.weakest.into()),
            ("breaker", breaker.map_or(not_known, Value::from)),
            ("known", Value::yes_no(!wire_is_guessed(facts, &place.about))),
            ("stops", Value::Name(if stops.is_some() { "set" } else { "breaker" }.to_owned())),
        ]);
        shown.extend(stops.map(|own| ("peak", own.peak.into())));
        if let Overcurrent::Camper { sure, .. } = place.failing {
            shown.insert("main", Value::yes_no(sure));
        }
        let fits = standard_breaker(place.carries).filter(|fits| is_for_its_plug(facts, place.first, *fits));
        let fix = match (remedy(facts, place.first, place.failing), fits) {
            ("cord", None) => "thicker",
            ("inlet", None) => "wiring",
            ("receptacle" | "wiring", _) if free => "free",
            (fix, _) => fix,
        };
        let mut told = values([]);
        if let (Some(fits), "cord" | "inlet") = (fits, fix) {
            told.insert("fits", fits.into());
        }
        if let (Some(breaker), "cord" | "thicker") = (breaker, fix) {
            let (cord, made) = cord_instead(facts, place.first, breaker, own);
            told.insert("cord", Value::Name(cord.to_owned()));
            // Nobody sells a cord by a fraction of an ampere.
            let whole = Current::from_milliamps((made.milliamps() + 999) / 1000 * 1000);
            told.insert("made", whole.into());
        }
        found.add(signal, place.about, shown, fix, told);
    }
    own_receptacles(facts, found);
}

/// Whether this is an outlet of the generator or of a box, or its wiring, with nothing plugged in and no load that
/// needs it for want of another. The ends of a cord count as the cord.
fn is_free(facts: &Facts<'_>, at: NodeIx) -> bool {
    let supply = facts.supply;
    let mut above = supply.up(at).map(|(_, node)| &node.kind);
    if matches!(above.find(|kind| kind.is_gear()), Some(NodeKind::Cord { .. })) {
        return false;
    }
    let node = supply.node(at);
    let outlet = match node.kind {
        NodeKind::Receptacle { .. } => Some(at),
        NodeKind::Wiring => supply.receptacle(&node.id),
        _ => None,
    };
    let Some((at, NodeKind::Receptacle { shape, .. })) = outlet.map(|at| (at, &supply.node(at).kind)) else {
        return false;
    };
    let wanted = |need: &Need<'_>| need.at == Some(at) || need.at.is_none() && need.fits(*shape);
    supply.fed_from(at).next().is_none() && !facts.needs().iter().any(wanted)
}

/// Whether any wire of these was assumed to be the thinnest because it is unknown. The finding says so.
fn wire_is_guessed(facts: &Facts<'_>, about: &[Id]) -> bool {
    facts.supply.assumed.iter().any(|it| {
        let mut names = about.iter().map(Id::as_str);
        it.field.rsplit('.').next() == Some("wire") && names.any(|id| it.field.split('.').any(|part| part == id))
    })
}

/// Reports the generator's own receptacles with an unknown breaker, if the generator limits its own current enough.
fn own_receptacles(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let Some(own) = own_limit(facts.plan, facts.supply) else {
        return;
    };
    let outlets = facts.plan.generator.outlets.iter();
    let unknown: Vec<(&Id, Current)> = outlets
        .filter_map(|outlet| {
            let ix = facts.supply.receptacle(&outlet.id)?;
            let node = facts.supply.node(ix);
            let bare = node.protected_at.is_none();
            (bare && Overcurrent::of(facts.plan, facts.supply, ix) == Overcurrent::Source)
                .then_some((&outlet.id, node.laid_out))
        })
        .collect();
    let Some(least) = unknown.iter().map(|(_, rating)| *rating).min() else {
        return;
    };
    found.add(
        Signal::Caution,
        unknown.into_iter().map(|(id, _)| id.clone()).collect(),
        values([("demand", own.hours.into()), ("rating", least.into())]),
        "own",
        values([]),
    );
}

/// Returns which cord may replace this one: one thick enough for the cord set allowance (`gauge`), one made for the
/// returned current (`amps`), or `none`, because its plug is rated for less.
fn cord_instead(facts: &Facts<'_>, at: NodeIx, breaker: Current, own: Option<OwnLimit>) -> (&'static str, Current) {
    let made = own.map_or(breaker, |own| own.least_rating().min(breaker));
    let cord = match facts.supply.node(at).kind {
        _ if breaker <= CORD_SET_CIRCUIT => "gauge",
        NodeKind::Cord { plug, .. } if plug.0.rating() < made => "none",
        _ => "amps",
    };
    (cord, made)
}

/// Whether a receptacle has a breaker to look at. Those of a box may have none of their own.
fn has_breaker(facts: &Facts<'_>, at: NodeIx) -> bool {
    let id = &facts.supply.node(at).id;
    let of_boxes = facts.plan.boxes.iter().flat_map(|part| &part.outlets);
    of_boxes.filter(|outlet| outlet.id == *id).all(|outlet| outlet.breaker.is_known())
}

fn remedy(facts: &Facts<'_>, first: NodeIx, failing: Overcurrent) -> &'static str {
    match (&facts.supply.node(first).kind, failing) {
        (_, Overcurrent::Unknown) => "unknown",
        (_, Overcurrent::Single { sure: true, .. }) => "single",
        (_, Overcurrent::Single { .. }) => "single-look",
        (_, Overcurrent::Camper { .. }) => "camper",
        (NodeKind::Receptacle { .. }, _) if splitter(facts.supply, first).is_some() => "splitter",
        // Whatever the cord's wire, small receptacles directly on a big breaker are the worst of it. If even its plug
        // is too small for that breaker, the fault is upstream of the plug.
        (NodeKind::Cord { plug, .. }, Overcurrent::TooHigh { breaker })
            if breaker > CORD_SET_CIRCUIT
                && plug.0.rating() >= breaker
                && facts
                    .supply
                    .fed_from(first)
                    .any(|(end, _)| !Overcurrent::of(facts.plan, facts.supply, end).holds()) =>
        {
            "splitter"
        }
        (NodeKind::Receptacle { .. }, _) if !has_breaker(facts, first) => "no-breaker",
        (NodeKind::Receptacle { .. }, _) => "receptacle",
        (NodeKind::Cord { .. }, _) => "cord",
        (NodeKind::Inlet { .. }, _) => "inlet",
        (NodeKind::Wiring | NodeKind::Source | NodeKind::Breaker { .. }, _) => "wiring",
    }
}

#[cfg(test)]
mod tests {
    use crate::quantity::Current;
    use crate::report::{Finding, Signal};
    use crate::rules::testing::findings;

    /// Returns the findings of this rule as remedies and ids.
    fn found(edits: &[(&str, &str)]) -> Vec<(&'static str, Vec<String>)> {
        findings(edits)
            .into_iter()
            .filter(|finding| finding.code == "OVER001")
            .map(|Finding { fix, about, .. }| (fix.key, about.iter().map(ToString::to_string).collect()))
            .collect()
    }

    /// If there is no breaker, nobody is sent to look at it: the box is replaced. A breaker that is too big is looked
    /// at.
    #[test]
    fn a_breaker_is_looked_at_where_there_is_one() {
        let wire = ("wire = \"14 AWG\" # left", "wire = \"10 AWG\"");
        for (breaker, fix) in [("", "no-breaker"), ("breaker = \"30 A\"", "receptacle")] {
            let found = findings(&[("breaker = \"15 A\" # left", breaker), wire]);
            let found = found.iter().find(|it| it.code == "OVER001").expect("found");
            assert_eq!(found.fix.key, fix);
        }
    }

    /// A spare outlet of a box behind too large a breaker is a caution. One in use is a danger, and so is the spare end
    /// of a splitter.
    #[test]
    fn a_spare_outlet_of_a_box_is_a_caution() {
        let over = |edits: &[(&str, &str)]| {
            let found = findings(edits).into_iter();
            let found = found.filter(|it| it.code == "OVER001");
            found.map(|it| (it.signal, it.fix.key)).collect::<Vec<_>>()
        };
        let none = ("breaker = \"15 A\" # right", "");
        assert_eq!(over(&[none]).first().map(|it| it.0), Some(Signal::Danger));
        let moved = ("on = \"right\" # fan", "on = \"front\"");
        assert_eq!(over(&[none, moved]), [(Signal::Caution, "free")]);
    }

    /// A spare outlet of the generator with too large a breaker is a caution: nobody can change it, and nothing goes
    /// in.
    #[test]
    fn a_spare_outlet_of_the_generator_is_a_caution() {
        let large = ("breaker = \"20 A\" # front", "breaker = \"30 A\"");
        let over = |edits: &[(&str, &str)]| {
            let found = findings(edits).into_iter();
            let found = found.filter(|it| it.code == "OVER001");
            found.map(|it| (it.signal, it.fix.key)).collect::<Vec<_>>()
        };
        assert_eq!(over(&[large]), [(Signal::Caution, "free")]);
        // Something is plugged in there, or has nowhere else to go.
        let used = ("on = \"right\" # fan", "on = \"front\"");
        assert_eq!(over(&[large, used]), [(Signal::Danger, "receptacle")]);
        let away =
            [large, ("from = \"twist\"\nplug", "plug"), ("on = \"left\" # kettle", ""), ("on = \"right\" # fan", "")];
        assert_eq!(over(&away), [(Signal::Danger, "receptacle")]);
    }

    const FROM_FRONT: (&str, &str) = (
        "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
        "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\", \"5-15R\", \"5-15R\"]",
    );
    const BOX_AWAY: (&str, &str) = ("from = \"long\"\ninlet", "inlet");
    const KETTLE: (&str, &str) = ("on = \"left\" # kettle", "on = \"front\"");
    const FAN: (&str, &str) = ("on = \"right\" # fan", "");

    fn household(wire: &'static str) -> Vec<(&'static str, &'static str)> {
        vec![FROM_FRONT, BOX_AWAY, KETTLE, FAN, ("wire = \"10 AWG\"", wire)]
    }

    /// NEC 240.5(B)(4): cord sets of 16 AWG or larger on a 20 A circuit.
    #[test]
    fn a_cord_set_on_twenty_amperes_is_allowed_from_sixteen_gauge_up() {
        for wire in ["wire = \"16 AWG\"", "wire = \"14 AWG\"", "wire = \"1.5 mm²\""] {
            assert_eq!(found(&household(wire)), [], "{wire}");
        }
        for wire in ["wire = \"18 AWG\"", "wire = \"1.25 mm²\"", "wire = \"unknown\""] {
            let found = found(&household(wire));
            assert_eq!(found.len(), 1, "{wire}: {found:?}");
            assert_eq!(found[0].0, "thicker", "{wire}");
        }
    }

    /// 12 AWG carries 25 A (NEC table 400.5(A)(1)), and 82 % of that in air at 40 °C: 20.5 A, so a 20 A breaker. 14 AWG
    /// carries 18 A, so a 15 A breaker, but no outlet for its 30 A plug is on one. In air at 55 °C, 12 AWG has 10.25 A
    /// left, and 18 AWG never carries more than 10 A: no breaker is that small.
    #[test]
    fn the_breaker_named_is_one_that_the_cord_holds_and_that_is_made() {
        for (wire, air, fix, fits) in [
            ("12 AWG", "30 °C", "cord", Some(25_000)),
            ("12 AWG", "40 °C", "cord", Some(20_000)),
            ("14 AWG", "30 °C", "thicker", None),
            ("12 AWG", "55 °C", "thicker", None),
            ("18 AWG", "30 °C", "thicker", None),
        ] {
            for coiled in ["coiled = false # long", "coiled = true"] {
                let wire = format!("wire = \"{wire}\"");
                let air = format!("air = \"{air}\"");
                let found = findings(&[
                    ("wire = \"10 AWG\"", &wire),
                    ("air = \"59 °F\"", &air),
                    ("coiled = false # long", coiled),
                ]);
                let of_cord = found.iter().find(|it| it.code == "OVER001").expect("a finding");
                assert_eq!(of_cord.fix.key, fix, "{wire} {air}");
                let amps = fits.map(|fits| crate::report::Value::from(Current::from_milliamps(fits)));
                assert_eq!(of_cord.fix.values.get("fits"), amps.as_ref(), "{wire} {air} {coiled}");
            }
        }
    }

    /// The same cord set behind 30 A, where the allowance ends.
    #[test]
    fn behind_thirty_amperes_the_same_cord_is_a_danger() {
        let mut edits = household("wire = \"14 AWG\"");
        edits.push(("breaker = \"20 A\" # front", "breaker = \"30 A\""));
        let found = found(&edits);
        // The receptacle itself comes first, and everything downstream is the same hazard.
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].0, "receptacle");
        assert_eq!(found[0].1, ["front", "long", "long.1", "long.2", "long.3"]);
    }

    /// 10 AWG carries 30 A in two conductors and 25 A in three, 12 AWG 25 A and 20 A (NEC table 400.5(A)(1)). By hand:
    /// with I on one leg and i on the other, I² + i² + (I - i)² is at most 2 I², what two conductors would make.
    #[test]
    fn a_neutral_that_carries_only_the_difference_is_not_counted() {
        for (wire, breaker, expected) in [
            ("wire = \"10 AWG\"", "breaker = \"30 A\" # twist", 0),
            ("wire = \"12 AWG\"", "breaker = \"30 A\" # twist", 1),
            ("wire = \"10 AWG\"", "breaker = \"35 A\"", 1),
            ("wire = \"unknown\"", "breaker = \"30 A\" # twist", 1),
        ] {
            let edits = [
                ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                ("shape = \"L5-30R\"", "shape = \"L14-30R\""),
                ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-30P\"\nends = [\"L14-30R\"]"),
                ("inlet = \"L5-30P\"", "inlet = \"L14-30P\""),
                ("conductors = 3", "conductors = 4"),
                ("wire = \"10 AWG\"", wire),
                ("breaker = \"30 A\" # twist", breaker),
            ];
            let found: Vec<_> =
                found(&edits).into_iter().filter(|(_, about)| about.contains(&"long".to_owned())).collect();
            assert_eq!(found.len(), expected, "{wire} {breaker}: {found:?}");
        }
    }

    /// Uncounted sockets may be a single one: a caution, and an assumption. Two outlets on one breaker are two sockets.
    #[test]
    fn what_nobody_counted_may_be_a_single_receptacle() {
        let lone = |sockets: &str| {
            let outlet = format!("shape = \"5-15R\"\n{sockets}breaker = \"20 A\" # front");
            let edits = [("shape = \"5-20R\"\nbreaker = \"20 A\" # front", outlet.as_str())];
            let report = crate::rules::testing::report(&edits);
            let found: Vec<_> = report.findings.iter().filter(|it| it.code == "OVER001").collect();
            let told: Vec<_> = found.iter().map(|it| (it.signal, it.fix.key)).collect();
            let fields: Vec<_> = report.figures.assumed.iter().map(|it| it.field.clone()).collect();
            (told, fields.contains(&"generator.outlet.front.sockets".to_owned()))
        };
        assert_eq!(lone(""), (vec![(Signal::Caution, "single-look")], true));
        assert_eq!(lone("sockets = 1\n"), (vec![(Signal::Warning, "single")], false));
        assert_eq!(lone("sockets = 2\n"), (vec![], false));
        let pair = [
            ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"5-15R\"\nbreaker = \"20 A\""),
            (
                "[[cord]]",
                "[[generator.outlet]]\nid = \"other\"\nshape = \"5-15R\"\nshares = \"front\"\ngfci = true\n[[cord]]",
            ),
        ];
        assert_eq!(found(&pair), []);
    }

    /// A household plug is rated 15 A, so no cord with one is made for 30 A. On 20 A a cord set of 16 AWG will do (NEC
    /// 240.5(B)(4)). An inverter generator of 15 A with a peak of 18.3 A cannot harm a 15 A cord, and stops below the
    /// breaker.
    #[test]
    fn the_cord_that_is_asked_for_can_be_had() {
        let told = |edits: &[(&str, &str)]| {
            let found = findings(edits);
            let found = found.iter().find(|it| it.code == "OVER001" && it.about[0].as_str() == "long");
            let found = found.expect("a finding");
            let name = |value: &crate::report::Value| match value {
                crate::report::Value::Name(name) => name.clone(),
                other => panic!("{other:?}"),
            };
            (name(&found.values["stops"]), name(&found.fix.values["cord"]), found.fix.values["made"].clone())
        };
        let amps = |amps| crate::report::Value::from(Current::from_milliamps(amps));
        let breaker = "breaker".to_owned();
        let thin = household("wire = \"18 AWG\"");
        assert_eq!(told(&thin), (breaker.clone(), "gauge".to_owned(), amps(20_000)));
        let twist = [("wire = \"10 AWG\"", "wire = \"14 AWG\"")];
        assert_eq!(told(&twist), (breaker, "amps".to_owned(), amps(30_000)));
        let inverter = ("inverter = false", "inverter = true");
        let behind = |rated: &'static str, peak: &'static str| {
            let mut edits = household("wire = \"16 AWG\"");
            // 20 A ends on a 15 A plug.
            edits[0].1 = "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-20R\"]";
            edits.extend([
                inverter,
                ("breaker = \"20 A\" # front", "breaker = \"30 A\""),
                ("rated = \"3600 W\"", rated),
                ("peak = \"4500 W\"", peak),
            ]);
            told(&edits)
        };
        let set = "set".to_owned();
        assert_eq!(behind("rated = \"1800 W\"", "peak = \"2200 W\""), (set.clone(), "amps".to_owned(), amps(15_000)));
        assert_eq!(behind("rated = \"2160 W\"", "peak = \"2200 W\""), (set, "none".to_owned(), amps(18_000)));
    }

    #[test]
    fn a_splitter_is_one_danger_whatever_is_plugged_in() {
        let splitter = ("ends = [\"L5-30R\"]", "ends = [\"5-20R\", \"5-20R\"]");
        for wire in ["wire = \"10 AWG\"", "wire = \"12 AWG\""] {
            let edits = [splitter, BOX_AWAY, KETTLE, FAN, ("wire = \"10 AWG\"", wire)];
            let found = found(&edits);
            assert_eq!(found.len(), 1, "{wire}: {found:?}");
            assert_eq!(found[0].0, "splitter", "{wire}");
            assert_eq!(found[0].1, ["long", "long.1", "long.2"]);
        }
    }

    /// Wiring inside a box: 14 AWG goes behind 15 A, and 16 AWG carries 10 A (NEC table 400.5(A)(1), column A). Unknown
    /// wire is no better than the thin wire that it may be. A listing answers for the wire.
    #[test]
    fn wire_that_nobody_knows_is_no_better_than_thin_wire() {
        for (listed, wire, is_danger) in [
            ("false", "wire = \"14 AWG\"", false),
            ("false", "wire = \"16 AWG\"", true),
            ("false", "wire = \"unknown\"", true),
            ("\"unknown\"", "", true),
            ("true", "wire = \"unknown\"", false),
        ] {
            let found = found(&[("listed = true", &*format!("listed = {listed}")), ("wire = \"14 AWG\" # left", wire)]);
            let expected = if is_danger { vec![("wiring", vec!["left".to_owned()])] } else { vec![] };
            assert_eq!(found, expected, "{listed} {wire}");
        }
    }

    #[test]
    fn a_receptacle_behind_no_breaker_of_its_own_counts_on_the_feed() {
        // A box that passes its 30 A feed on to a 15 A receptacle.
        let found = found(&[("breaker = \"15 A\" # left\n", "\n")]);
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].1, ["left"]);
    }

    /// NEC 210.21(B)(1): a single receptacle on its own circuit has that circuit's rating. With no breaker of its own
    /// it shares that of "front", and (B)(3) allows it.
    #[test]
    fn a_breaker_that_nobody_knows_may_have_one_receptacle_behind_it() {
        for (breaker, single) in [("\"20 A\"", true), ("\"unknown\"", true), ("", false)] {
            let left = match breaker {
                "" => "sockets = 1\n".to_owned(),
                _ => format!("sockets = 1\nbreaker = {breaker}\n"),
            };
            let edits = [
                ("from = \"long\"\ninlet = \"L5-30P\"", "from = \"front\"\ninlet = \"5-20P\""),
                ("breaker = \"15 A\" # left\n", &*left),
                ("wire = \"14 AWG\" # left", "wire = \"12 AWG\""),
            ];
            let found: Vec<_> =
                found(&edits).into_iter().filter(|(_, about)| about.contains(&"left".to_owned())).collect();
            assert_eq!(found.len(), usize::from(single), "{breaker}: {found:?}");
            assert!(found.iter().all(|(fix, _)| *fix == "single"), "{found:?}");
        }
    }

    /// NEC 210.21(B)(3): 40 A circuits may have 50 A receptacles. A receptacle larger than its breaker is never the
    /// hazard.
    #[test]
    fn a_breaker_below_the_rating_protects() {
        assert_eq!(found(&[("breaker = \"30 A\" # twist", "breaker = \"20 A\"")]), []);
    }

    /// 1716 W at 120 V are 14.3 A, and 2100 W 17.5 A: an inlet and a cord with 15 A plugs on a 20 A breaker, and on an
    /// unknown one. 2500 W are 20.84 A, more than 1.35 times 15 A.
    #[test]
    fn what_the_generator_cannot_overload_is_not_found() {
        const SMALL: [(&str, &str); 6] = [
            ("inverter = false", "inverter = true"),
            ("rated = \"3600 W\"", "rated = \"1716 W\""),
            ("peak = \"4500 W\"", "peak = \"2100 W\""),
            (
                "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
                "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]",
            ),
            ("wire = \"10 AWG\"", "wire = \"14 AWG\""),
            ("inlet = \"L5-30P\"", "inlet = \"5-15P\""),
        ];
        let codes = |more: &[(&'static str, &'static str)]| {
            let mut edits = SMALL.to_vec();
            edits.extend_from_slice(more);
            let found = findings(&edits).into_iter();
            let of_parts = ["OVER001", "OVER003", "OVER006", "CORD001"];
            found.filter(|it| of_parts.contains(&it.code)).map(|it| (it.code, it.signal)).collect::<Vec<_>>()
        };
        assert_eq!(codes(&[]), []);
        // 12.5 A and 3.3 A at different hours, which the cord's 15 A would not carry at once.
        let more = ("running = \"50 W\"", "running = \"400 W\"");
        let after = ("hours = [\"18:00-23:00\"]", "hours = [\"19:00-21:00\"]");
        assert_eq!(codes(&[more, after]), []);
        // Demand beyond what the generator gives is another rule's finding.
        assert_eq!(codes(&[("running = \"1500 W\"", "running = \"1790 W\"")]), []);
        let unknown = ("breaker = \"20 A\" # front", "breaker = \"unknown\"");
        let twist = ("breaker = \"30 A\" # twist", "breaker = \"unknown\"");
        assert_eq!(codes(&[unknown, twist]), [("OVER001", Signal::Caution)]);
        // The cord is allowed behind 20 A, but the inlet of a homemade box is not.
        let found = [("OVER001", Signal::Danger), ("OVER003", Signal::Notice)];
        for near_miss in [
            ("inverter = true", "inverter = false"),
            ("inverter = true", "inverter = \"unknown\""),
            ("peak = \"2100 W\"", "peak = \"2500 W\""),
            ("peak = \"2100 W\"", "peak = \"unknown\""),
            ("rated = \"1716 W\"", "rated = \"1801 W\""),
            ("rated = \"1716 W\"", "rated = \"unknown\""),
            ("inverter = true", "inverter = true\nparallel = { sets = 2, kit = true, limit = \"15 A\" }"),
        ] {
            assert_eq!(codes(&[near_miss, more, after, super::HOME_MADE]), found, "{near_miss:?}");
        }
    }

    /// The camper's own breaker protects the adapter; no other load has one.
    #[test]
    fn an_adapter_before_a_camper_is_a_warning() {
        let signals = |more: &[(&'static str, &'static str)]| {
            let mut edits = super::CAMPER.to_vec();
            edits.extend_from_slice(more);
            let found = findings(&edits);
            let of_adapter = found
                .iter()
                .filter(|it| it.code == "OVER001")
                .filter(|it| it.about.iter().any(|id| id.as_str() == "long"));
            of_adapter.map(|it| (it.signal, it.fix.key)).collect::<Vec<_>>()
        };
        assert_eq!(signals(&[]), [(Signal::Warning, "camper")]);
        // The camper's own cord behind the adapter: with 30 A wire it is judged like the adapter.
        let cord = |wire| {
            format!(
                "[[cord]]\nid = \"own\"\nfrom = \"long\"\nplug = \"TT-30P\"\nends = [\"TT-30R\"]\nwire = \"{wire}\"\n\
                 conductors = 3\nlength = \"25 ft\"\noutdoor = true\ncoiled = false\n[[box]]"
            )
        };
        for (wire, expected) in [("10 AWG", Signal::Warning), ("12 AWG", Signal::Danger)] {
            let cord: &'static str = cord(wire).leak();
            let edits =
                [("[[box]]", cord), ("plug = \"TT-30P\"\non = \"long\" # kettle", "plug = \"TT-30P\"\non = \"own\"")];
            let found = signals(&edits);
            assert!(found.iter().all(|it| it.0 == expected) && !found.is_empty(), "{wire} {found:?}");
        }
        for near_miss in [
            // Nobody said that it is for a camper.
            ("plug = \"TT-30P\"\non = \"long\" # kettle", "plug = \"5-15P\""),
            ("running = \"1500 W\"", "count = 2\nrunning = \"1500 W\""),
            // 25 A.
            ("wire = \"10 AWG\"", "wire = \"12 AWG\""),
            ("breaker = \"50 A\" # twist", "breaker = \"60 A\""),
            // A box, whose breakers are no main breaker.
            ("\ninlet = \"L5-30P\"", "\nfrom = \"long\"\ninlet = \"TT-30P\""),
        ] {
            let found = signals(&[near_miss]);
            assert!(matches!(found[..], [(Signal::Danger, "splitter" | "receptacle")]), "{near_miss:?}: {found:?}");
        }
    }

    /// A single 15 A receptacle on 20 A is a warning, and the 18 AWG cord in it is a separate danger.
    #[test]
    fn a_milder_hazard_hides_no_graver_one() {
        let mut edits = household("wire = \"18 AWG\"");
        edits.push((
            "shape = \"5-20R\"\nbreaker = \"20 A\" # front",
            "shape = \"5-15R\"\nsockets = 1\nbreaker = \"20 A\"",
        ));
        edits.retain(|edit| *edit != KETTLE);
        edits.push(("on = \"left\" # kettle", ""));
        let found = findings(&edits);
        let found: Vec<_> = found
            .iter()
            .filter(|it| it.code == "OVER001")
            .map(|it| (it.signal, it.fix.key, it.about[0].as_str()))
            .collect();
        assert_eq!(found, [(Signal::Danger, "thicker", "long"), (Signal::Warning, "single", "front")]);
    }

    /// 18 A of cord behind 30 A, and 15 A of wire in the box behind 20 A: each is reported with its own figures.
    #[test]
    fn what_fails_behind_another_breaker_is_told_by_itself() {
        let found = findings(&[
            ("wire = \"10 AWG\"", "wire = \"14 AWG\""),
            ("breaker = \"15 A\" # left", "sockets = 2\nbreaker = \"20 A\""),
        ]);
        let found: Vec<_> = found.iter().filter(|it| it.code == "OVER001").collect();
        let about: Vec<Vec<&str>> =
            found.iter().map(|it| it.about.iter().map(crate::plan::Id::as_str).collect()).collect();
        assert_eq!(about, [vec!["long"], vec!["left"]]);
        let amps = |milliamps| crate::report::Value::from(Current::from_milliamps(milliamps));
        let shown = |at: usize| (found[at].values["rating"].clone(), found[at].values["breaker"].clone());
        assert_eq!(shown(0), (amps(18_000), amps(30_000)));
        assert_eq!(shown(1), (amps(15_000), amps(20_000)));
        assert_eq!((found[0].fix.key, found[1].fix.key), ("thicker", "wiring"));
    }

    /// A breaker that has tripped early may not do so next time.
    #[test]
    fn an_early_trip_protects_nothing() {
        let found = found(&[("breaker = \"20 A\" # front", "breaker = \"30 A\"\ntrips_at = \"15 A\"")]);
        assert_eq!(found.len(), 1, "{found:?}");
    }

    #[test]
    fn a_coil_is_another_rule() {
        assert_eq!(found(&[("coiled = false # long", "coiled = true")]), []);
    }
}

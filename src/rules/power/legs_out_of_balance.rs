#![doc = include_str!("../../../i18n/en/explain/POWER006.md")]

use crate::plan::Leg;
use crate::quantity::Current;
use crate::rules::demand::{Need, busiest, once, when};
use crate::rules::prelude::*;
use crate::supply::NodeIx;

pub(super) const RULE: Rule = Rule {
    code: "POWER006",
    name: "legs-out-of-balance",
    area: "power",
    worst: Signal::Notice,
    sources: &[cite::PRACTICE],
    fixes: &["move"],
    check,
    #[cfg(test)]
    // 8.3 A and 4.2 A on one leg of 15 A, nothing on the other.
    fires: &[&[
        LEGS,
        FRONT_B,
        TWIST_A,
        LEFT_A,
        RIGHT_A,
        ("running = \"1500 W\"", "running = \"1000 W\""),
        ("running = \"50 W\"", "running = \"500 W\""),
    ]],
    #[cfg(test)]
    spares: &[
        &[],
        // 12.5 A alone would be as much on the other leg.
        &[("voltage = \"120 V\"", "voltage = \"120/240 V\"")],
        // The same as above, but no outlet on the other leg.
        &[
            LEGS,
            ("running = \"1500 W\"", "running = \"1000 W\""),
            ("running = \"50 W\"", "running = \"500 W\""),
        ],
        // 5 A is a third of a leg.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("running = \"1500 W\"", "running = \"600 W\""),
        ],
    ],
};

#[cfg(test)]
const LEGS: crate::rules::Edit = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
#[cfg(test)]
const FRONT_B: crate::rules::Edit = ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nleg = \"B\"");
#[cfg(test)]
const TWIST_A: crate::rules::Edit = ("breaker = \"30 A\" # twist", "breaker = \"30 A\"\nleg = \"A\"");
#[cfg(test)]
const LEFT_A: crate::rules::Edit = ("breaker = \"15 A\" # left", "breaker = \"15 A\"\nleg = \"A\"");
#[cfg(test)]
const RIGHT_A: crate::rules::Edit = ("breaker = \"15 A\" # right", "breaker = \"15 A\"\nleg = \"A\"");

/// A move is worth it from this fraction of a leg's current: one tenth.
const WORTH: i64 = 10;

fn times(current: Current, by: i64) -> Current {
    Current::from_milliamps(current.milliamps() * by)
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.supply.node(NodeIx(0)).legs.all().len() < 2 {
        return;
    }
    let needs = facts.placed();
    let on_legs = |on: &[_]| {
        let (a, b) = (facts.on_leg(on, Leg::A), facts.on_leg(on, Leg::B));
        (a.max(b), a.min(b))
    };
    let busiest = busiest(&needs, |on| {
        let (heavy, light) = on_legs(on);
        heavy - light
    });
    let (heavy, light): (Current, Current) = on_legs(&busiest.on);
    let leg = facts.supply.leg_rated;
    let (twice_heavy, twice_light) = (heavy + heavy, light + light);
    if twice_heavy > leg && twice_light < heavy && heavy <= leg {
        let lighter = if facts.on_leg(&busiest.on, Leg::A) == heavy { Leg::B } else { Leg::A };
        // The current of the busier leg once this load has moved.
        let after = |need: &Need<'_>| (heavy - need.amps()).max(light + need.amps());
        let mut moves: Vec<&Need<'_>> = busiest
            .on
            .iter()
            .filter(|need| !need.life() && facts.moves_to(need, lighter))
            .filter(|need| times(heavy - after(need).min(heavy), WORTH) >= leg)
            .collect();
        // The best move first; the first in the plan if equal.
        moves.sort_by_key(|need| after(need));
        if moves.is_empty() {
            return;
        }
        let about = once(moves.into_iter().map(|need| &need.load.id));
        found.add(
            Signal::Notice,
            about,
            values([
                ("heavy", heavy.into()),
                ("light", light.into()),
                ("neutral", (heavy - light).into()),
                ("leg", leg.into()),
            ])
            .into_iter()
            .chain(when(busiest.minute, &busiest.on))
            .collect(),
            "move",
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use crate::quantity::Current;
    use crate::rules::testing::findings;

    /// A 3600 W generator with two legs gives 15 A on each. On leg A, the 1000 W kettle takes 8.333 A and the 600 W fan
    /// 5 A; leg B is empty. The neutral carries the difference (Kirchhoff's current law). Moving the fan leaves 8.333 A
    /// against 5 A, and so does moving the kettle.
    #[test]
    fn what_is_worth_a_move_is_named_and_the_neutral_carries_the_difference() {
        let edits = [
            super::LEGS,
            super::FRONT_B,
            super::TWIST_A,
            super::LEFT_A,
            super::RIGHT_A,
            ("running = \"1500 W\"", "running = \"1000 W\""),
            ("running = \"50 W\"", "running = \"600 W\""),
            // A breathing aid stays where it is.
            ("kind = \"electronic\" # fan", "kind = \"medical\""),
        ];
        let told = |edits: &[crate::rules::Edit]| -> Vec<String> {
            let mut found = findings(edits).into_iter();
            let found = found.find(|it| it.code == "POWER006").expect("it is found");
            found.about.iter().map(ToString::to_string).collect()
        };
        assert_eq!(told(&edits), ["kettle"]);
        let found = findings(&edits[..7]);
        let found = found.iter().find(|it| it.code == "POWER006").expect("it is found");
        let about: Vec<_> = found.about.iter().map(crate::plan::Id::as_str).collect();
        assert_eq!(about, ["kettle", "fan"]);
        for (name, amps) in [("heavy", 13_334), ("light", 0), ("neutral", 13_334), ("leg", 15_000)] {
            assert_eq!(found.values[name], Current::from_milliamps(amps).into(), "{name}");
        }
    }

    /// A kettle alone on the generator is as heavy on either leg. With a lamp beside it, a move of 0.4 A makes no
    /// difference that anybody would feel.
    #[test]
    fn where_no_move_helps_nothing_is_said() {
        let two_legs = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
        let leg_b = ("id = \"front\"\nshape = \"5-20R\"", "id = \"front\"\nleg = \"B\"\nshape = \"5-20R\"");
        let fan_on_b = ("on = \"right\" # fan", "on = \"front\"");
        for edits in [vec![two_legs], vec![two_legs, leg_b, fan_on_b]] {
            let found = findings(&edits);
            assert!(found.iter().all(|it| it.code != "POWER006"), "{edits:?}");
        }
    }
}

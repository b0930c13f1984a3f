//! # POWER006 legs-out-of-balance
//!
//! ## What it checks
//! On a 120/240 V set, whether one leg carries far more than the other.
//!
//! ## Why it hurts
//! Each leg gives half of the set's power and no more. With one heavy 120 V load on a leg the set
//! trips although half of it is idle; the loaded leg sags and the other rises, which is hard on
//! electronics, and the neutral carries the difference.
//!
//! ## The arithmetic
//! At the busiest minute the currents of the loads are added up for each leg; a 240 V load counts on
//! both. The neutral carries the difference of the two. When the heavier leg is above half of what a
//! leg can give and the lighter is below half of the heavier, it is a notice. Too much on a leg is
//! rule POWER001's.
//!
//! ## What to do
//! Move a load to a receptacle on the other leg. The plan, the labels and the card say which is on
//! which leg, as far as anybody knows.
//!
//! ## Sources
//! - Where a balance is called uneven is common practice, no source.

use crate::plan::Leg;
use crate::quantity::Current;
use crate::rules::demand::{Busiest, Need, busiest, clock};
use crate::rules::prelude::*;
use crate::supply::{Legs, NodeIx};

pub(super) const RULE: Rule = Rule {
    code: "POWER006",
    name: "legs-out-of-balance",
    area: "power",
    text: include_str!("legs_out_of_balance.rs"),
    sources: &[cite::PRACTICE],
    fixes: &["move"],
    check,
    #[cfg(test)]
    // 12.5 A and nothing, of 15 A a leg.
    fires: &[&[("voltage = \"120 V\"", "voltage = \"120/240 V\"")]],
    #[cfg(test)]
    spares: &[
        &[],
        // 5 A is a third of a leg.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("running = \"1500 W\"", "running = \"600 W\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if facts.supply.node(NodeIx(0)).legs.all().len() < 2 {
        return;
    }
    let needs = facts.needs();
    let on_legs = |on: &[_]| {
        let (a, b) = (facts.on_leg(on, Leg::A), facts.on_leg(on, Leg::B));
        (a.max(b), a.min(b))
    };
    // Only what is on the heavier leg alone can be moved to the other.
    let movable = |need: &&Need<'_>, leg: Leg| {
        need.at
            .is_some_and(|at| facts.supply.node(at).legs == Legs::One(leg))
    };
    let busiest = busiest(&needs, |on| {
        let (heavy, light) = on_legs(on);
        heavy - light
    });
    let (heavy, light): (Current, Current) = on_legs(&busiest.on);
    let leg = facts.supply.leg_rated;
    let (twice_heavy, twice_light) = (heavy + heavy, light + light);
    if twice_heavy > leg && twice_light < heavy && heavy <= leg {
        let heavier = if facts.on_leg(&busiest.on, Leg::A) == heavy {
            Leg::A
        } else {
            Leg::B
        };
        let on_heavier = Busiest {
            minute: busiest.minute,
            on: busiest
                .on
                .iter()
                .filter(|need| movable(need, heavier))
                .copied()
                .collect(),
        };
        found.add(
            Signal::Notice,
            on_heavier.ids(),
            values([
                ("heavy", heavy.into()),
                ("light", light.into()),
                ("neutral", (heavy - light).into()),
                ("leg", leg.into()),
                ("time", clock(busiest.minute)),
            ]),
            "move",
            values([]),
        );
    }
}

#[cfg(test)]
mod tests {
    use crate::quantity::Current;
    use crate::rules::demand::quantity;
    use crate::rules::testing::findings;
    use crate::report::Value;

    /// A 3600 W set of two legs: 15 A each. The kettle of 1500 W alone on leg A takes 12.5 A, the
    /// fan of 50 W on leg B 0.417 A; the neutral carries the difference (Kirchhoff's current law).
    #[test]
    fn one_heavy_load_is_named_and_the_neutral_carries_the_difference() {
        let found = findings(&[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            (
                "id = \"front\"\nshape = \"5-20R\"",
                "id = \"front\"\nleg = \"B\"\nshape = \"5-20R\"",
            ),
            ("on = \"right\" # fan", "on = \"front\""),
        ]);
        let found = found.iter().find(|it| it.code == "POWER006").expect("it is found");
        assert_eq!(found.about.iter().map(crate::plan::Id::as_str).collect::<Vec<_>>(), ["kettle"]);
        let milliamps = |name: &str| match &found.values[name] {
            Value::Amount(amount) => quantity::<Current>(amount).milliamps(),
            other => panic!("{other:?}"),
        };
        assert_eq!(milliamps("heavy"), 12_500);
        assert_eq!(milliamps("light"), 417);
        assert_eq!(milliamps("neutral"), 12_083);
        assert_eq!(milliamps("leg"), 15_000);
    }
}

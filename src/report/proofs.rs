//! What each test of a receptacle shows on this very setup, and what that proves.
//!
//! A three-lamp tester compares hot, neutral and ground with one another. Its button passes a small current from hot to
//! ground. The TEST button of a GFCI passes one around its own sensor and needs no ground. So the first two depend on
//! where neutral and ground are joined, and the third does not.
//!
//! Parts that must not be used are left out, and so are joints in them: they are not plugged in, and what may be used
//! has a ground all the way (common practice, no source; that a tester's reading depends on how the generator is
//! arranged: OSHA letter of interpretation, 1993-09-03, confirmed). With a floating neutral, only a meter tells whether
//! a ground wire is whole (29 CFR 1926.404(b)(1)(iii) asks for that test of every cord set on construction sites;
//! confirmed).

use serde::Serialize;

use crate::plan::Id;
use crate::quantity::Resistance;
use crate::supply::{LimitReason, NodeIx, Supply};
use crate::tables::shape::{Circuit, Configuration, Plug};
use crate::verdict::{Grounding, Sure, Verdicts};

/// What a lamp of the tester does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Lamp {
    /// It lights.
    Lit,
    /// It stays dark, or glows weakly from filter leakage.
    Dark,
    /// Either, and nobody knows which.
    Either,
}

impl From<Sure> for Lamp {
    fn from(sure: Sure) -> Self {
        match sure {
            Sure::Yes => Self::Lit,
            Sure::No => Self::Dark,
            Sure::Unknown => Self::Either,
        }
    }
}

/// What the lamps together mean by the tester's own key.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Reads {
    /// Wired correctly.
    Correct,
    /// Open ground, though the ground wire may be whole: the neutral floats.
    OpenGroundFloating,
    /// Either, and nobody knows which.
    Either,
}

/// The three lamps and what they prove.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
pub struct Lamps {
    /// Hot against neutral.
    pub hot_neutral: Lamp,
    /// Hot against ground.
    pub hot_ground: Lamp,
    /// Neutral against ground.
    pub neutral_ground: Lamp,
    /// What the lamps mean together.
    pub reads: Reads,
}

/// What a button does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Button {
    /// It cuts the power.
    Trips,
    /// It does nothing, though the protection may work: the current has no way back.
    NoWayBack,
    /// It does nothing: the current comes back through the protection itself, which is blind to it.
    Blind,
    /// It may do either.
    Either,
    /// There is no protection upstream, or none is known.
    NoProtection,
}

/// The tests of one receptacle.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Proof {
    /// The receptacle.
    pub at: Id,
    /// What a plug-in tester shows. `None` where none fits.
    pub lamps: Option<Lamps>,
    /// The nearest part with a TEST button that cuts the power here.
    pub protected_by: Option<Id>,
    /// Whether that device sees a fault as well.
    pub works: bool,
    /// What must stay unplugged for that, because it joins neutral and ground downstream of the sensor.
    pub without: Option<Id>,
    /// What that TEST button does.
    pub own_button: Button,
    /// What the tester's button does. `None` where no tester fits.
    pub tester_button: Option<Button>,
    /// The most resistance between the ground contact and the generator's bare frame, with everything stopped, less
    /// that of the meter's own leads. It is half of what the cords have out and back, because the ground wire is as
    /// thick as the others (common practice, no source).
    pub ground_to_frame: Resistance,
    /// Whether a meter finds neutral joined to ground here, with the generator stopped and nothing plugged in. `None`
    /// where there is no neutral.
    pub neutral_to_ground: Option<Sure>,
}

/// Returns the tests of every receptacle that is fed, may be used and has a ground contact, in tree order.
pub(super) fn of_plan(supply: &Supply, verdicts: &Verdicts<'_>) -> Vec<Proof> {
    let grounding = verdicts.grounding_in_use();
    let joined = grounding.joined();
    supply
        .receptacles()
        .filter(|(ix, node, shape, _)| {
            let used = node.reason != LimitReason::NotFed && verdicts.refused(*ix).is_none();
            used && shape.0.grounded()
        })
        .map(|(ix, node, shape, _)| {
            let tester = shape.takes(Plug(Configuration::N5_15));
            let protection = grounding.protection(ix);
            let device = protection.device();
            // The label treats the joint as plugged in, since only the joint's own label keeps it out.
            let without = verdicts.protection(ix).joint().filter(|_| protection.works());
            Proof {
                at: node.id.clone(),
                lamps: tester.then(|| Lamps {
                    hot_neutral: Lamp::Lit,
                    hot_ground: joined.into(),
                    neutral_ground: Lamp::Dark,
                    reads: match joined {
                        Sure::Yes => Reads::Correct,
                        Sure::No => Reads::OpenGroundFloating,
                        Sure::Unknown => Reads::Either,
                    },
                }),
                protected_by: device.map(|by| supply.node(by).id.clone()),
                works: protection.works(),
                without: without.map(|joint| supply.node(joint).id.clone()),
                own_button: device.map_or(Button::NoProtection, |_| Button::Trips),
                tester_button: tester.then(|| device.map_or(Button::NoProtection, |by| tester_button(&grounding, by))),
                ground_to_frame: half(supply.resistance_to(ix)),
                neutral_to_ground: (shape.0.circuit() != Circuit::TwoLegs).then_some(joined),
            }
        })
        .collect()
}

/// Returns half of a resistance, rounded up.
fn half(resistance: Resistance) -> Resistance {
    Resistance::from_microohms((resistance.microohms() + 1) / 2)
}

/// Returns what the tester's button does at a receptacle behind this protection. Its current leaves through the
/// protection and returns by ground and a joint: either past the protection, which then trips, or through it, which
/// then sees nothing. The result is open if nobody knows which outlet a bonding plug is in, or if one device serves two
/// outlets.
fn tester_button(grounding: &Grounding<'_>, protection: NodeIx) -> Button {
    if grounding.may_hold_joint(protection) {
        return Button::Either;
    }
    let past = grounding.joined_beyond(protection, false);
    let through = grounding.joined_beyond(protection, true);
    match (past, through) {
        (Sure::Yes, Sure::No) => Button::Trips,
        (Sure::No, Sure::Yes) => Button::Blind,
        (Sure::No, Sure::No) => Button::NoWayBack,
        _ => Button::Either,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::testing::report;

    fn proof(edits: &[(&str, &str)], at: &str) -> Proof {
        let proofs = report(edits).figures.tests;
        let found = proofs.into_iter().find(|proof| proof.at.as_str() == at);
        found.expect("a receptacle")
    }

    fn reads(edits: &[(&str, &str)], at: &str) -> (Reads, Button, Button) {
        let proof = proof(edits, at);
        (
            proof.lamps.expect("a tester plugs in").reads,
            proof.own_button,
            proof.tester_button.expect("a tester plugs in"),
        )
    }

    const FLOATING: (&str, &str) = ("neutral = \"bonded\"", "neutral = \"floating\"");
    const UNKNOWN: (&str, &str) = ("neutral = \"bonded\"", "neutral = \"unknown\"");
    const PLUG: (&str, &str) = ("bonding_plug = false", "bonding_plug = true");
    const BOX_BOND: (&str, &str) = ("bond = false", "bond = true");
    const BOX_MAY_BOND: (&str, &str) = ("bond = false", "bond = \"unknown\"");
    const DRY: (&str, &str) = ("ground = \"wet\"", "ground = \"dry\"");
    const TWO_WIRES: (&str, &str) = ("conductors = 3 # long", "conductors = 2");

    /// Each kind of neutral with and without a bonding plug, as common practice has it.
    #[test]
    fn the_joint_at_the_set_decides_what_a_tester_says() {
        use Button::{Blind, Either, NoWayBack, Trips};
        use Reads::{Correct, OpenGroundFloating};
        // The plug is in the generator's only household outlet, behind its GFCI. There the current of the tester's
        // button comes back through that GFCI. At the box it does not.
        for (edits, reading, front, left) in [
            (vec![], Correct, Trips, Trips),
            (vec![PLUG], Correct, Either, Trips),
            (vec![FLOATING], OpenGroundFloating, NoWayBack, NoWayBack),
            (vec![FLOATING, PLUG], Correct, Blind, Trips),
            (vec![UNKNOWN], Reads::Either, Either, Either),
            (vec![UNKNOWN, PLUG], Correct, Either, Trips),
        ] {
            for (at, tester) in [("front", front), ("left", left)] {
                assert_eq!(reads(&edits, at), (reading, Trips, tester), "{at} {edits:?}");
            }
        }
    }

    /// Two household outlets with a GFCI each, and the plan does not say which of them has the plug.
    #[test]
    fn a_plug_that_nobody_has_found_tells_nothing_of_a_button() {
        let second = "[[generator.outlet]]\nid = \"back\"\nshape = \"5-20R\"\n\
                      breaker = \"20 A\"\ngfci = true\n[[cord]]";
        for (said, front, back) in [
            ("bonding_plug = true", Button::Either, Button::Either),
            ("bonding_plug = true\nbonding_plug_in = \"back\"", Button::Trips, Button::Blind),
        ] {
            let edits = [FLOATING, ("bonding_plug = false", said), ("[[cord]]", second)];
            for (at, button) in [("front", front), ("back", back), ("left", Button::Trips)] {
                assert_eq!(reads(&edits, at).2, button, "{at} {said}");
            }
        }
    }

    /// A cord that may lack its ground, and a box that joins neutral and ground, must not be used. What is downstream
    /// of them is left out, and the generator's outlets are reported as they are without them.
    #[test]
    fn what_must_not_be_used_is_not_plugged_in() {
        use Button::{NoWayBack, Trips};
        let unknown = ("conductors = 3 # long", "conductors = \"unknown\"");
        let set_protects = ("gfci = false # twist", "gfci = true");
        let floats = (Reads::OpenGroundFloating, Trips, NoWayBack);
        for (edits, front) in [
            (vec![TWO_WIRES], (Reads::Correct, Trips, Trips)),
            (vec![unknown], (Reads::Correct, Trips, Trips)),
            (vec![unknown, DRY], (Reads::Correct, Trips, Trips)),
            (vec![FLOATING, BOX_BOND], floats),
            (vec![FLOATING, BOX_BOND, set_protects], floats),
            // If nobody knows, and the ground is damp or the box's own GFCIs are ahead of the joint, it may be used.
            (vec![FLOATING, BOX_MAY_BOND], (Reads::Either, Trips, Button::Either)),
        ] {
            assert_eq!(reads(&edits, "front"), front, "{edits:?}");
            let tests = report(&edits).figures.tests;
            let told = tests.iter().any(|proof| proof.at.as_str() == "left");
            assert_eq!(told, edits.contains(&BOX_MAY_BOND), "{edits:?}");
        }
    }

    /// A box that may join neutral and ground behind the generator's GFCI, on damp ground, may be used, and what a
    /// tester does there is open.
    #[test]
    fn a_joint_that_nobody_knows_of_leaves_both_open() {
        let edits = [
            FLOATING,
            BOX_MAY_BOND,
            ("ground = \"wet\"", "ground = \"damp\""),
            ("gfci = false # twist", "gfci = true"),
            ("gfci = true # left", "gfci = false"),
        ];
        let open = (Reads::Either, Button::Trips, Button::Either);
        assert_eq!(reads(&edits, "left"), open);
        let none = [edits[0], edits[2], edits[3], edits[4]];
        let floats = (Reads::OpenGroundFloating, Button::Trips, Button::NoWayBack);
        assert_eq!(reads(&none, "left"), floats);
    }

    #[test]
    fn without_protection_there_is_nothing_to_press() {
        let none = ("gfci = true # left", "gfci = false");
        let found = proof(&[none], "left");
        assert_eq!(found.protected_by, None);
        assert_eq!(found.own_button, Button::NoProtection);
        assert_eq!(found.tester_button, Some(Button::NoProtection));
    }

    #[test]
    fn a_tester_plugs_into_household_shapes_only() {
        let twist = proof(&[], "twist");
        assert_eq!((twist.lamps, twist.tester_button), (None, None));
        // A meter reaches every ground contact: 50 ft of 10 AWG at 1.24 ohm per 1000 ft is 62 milliohms one way (NFPA
        // 70 (NEC), Chapter 9 Table 8, confirmed).
        assert_eq!(twist.ground_to_frame, Resistance::ZERO);
        let left = proof(&[], "left").ground_to_frame;
        assert_eq!(left, Resistance::from_microohms(62_000));
    }

    #[test]
    fn a_meter_finds_the_joint_that_the_tester_would() {
        assert_eq!(proof(&[], "left").neutral_to_ground, Some(Sure::Yes));
        assert_eq!(proof(&[FLOATING], "left").neutral_to_ground, Some(Sure::No));
        assert_eq!(proof(&[UNKNOWN], "left").neutral_to_ground, Some(Sure::Unknown));
    }
}

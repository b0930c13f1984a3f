//! # SHOCK002 floating-neutral-tester
//!
//! ## What it checks
//! Whether nobody knows if the generator's neutral floats, so that a plug-in tester may tell less than
//! it seems to. Where it is known to float, the generator's label and the card say what a tester shows.
//!
//! ## Why it hurts
//! On a floating neutral a three-lamp tester shows "open ground" though nothing is broken, and its
//! test button does not trip a GFCI that works. People then throw away good protection, or make
//! a joint between neutral and ground inside a box, which makes a real hazard.
//!
//! ## The arithmetic
//! None: it is a question of the return path. A GFCI's own TEST button passes a small current round its own
//! sensor and needs no ground. A plug-in tester's button passes it from hot to the ground pin, and it only
//! comes back if neutral and ground are joined at the generator. So:
//! - floating: own TEST button trips it, which proves the device; the tester reads open ground and
//!   its button trips nothing, which proves nothing;
//! - bonded, or with a bonding plug in: both trip it, and the tester reads correct wiring;
//! - unknown: the tester tells you which of the two you have.
//!
//! ## What to do
//! Test with the device's own TEST button before each use: the power must go off; then press RESET. Do not
//! join neutral and ground anywhere yourself. Ask a licensed electrician or the maker whether the generator
//! may have a bonding plug.
//!
//! ## Sources
//! - OSHA letter of interpretation, 1993-09-03: what a receptacle tester shows depends on how the
//!   generator is arranged (confirmed).
//! - NFPA 70 (NEC), 250.34(A): when a portable set needs no ground rod (confirmed).
//! - Which button trips what: common practice, no source.

use crate::rules::prelude::*;
use crate::verdict::Sure;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK002",
    name: "floating-neutral-tester",
    area: "shock",
    worst: Signal::Notice,
    text: include_str!("floating_neutral_tester.rs"),
    sources: &[cite::OSHA_LETTER, cite::NEC_250_34, cite::PRACTICE],
    fixes: &["find-out"],
    check,
    #[cfg(test)]
    fires: &[
        &[("neutral = \"bonded\"", "neutral = \"unknown\"")],
        &[("neutral = \"bonded\"", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[("neutral = \"bonded\"", "neutral = \"floating\"")],
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bonding_plug = false", "bonding_plug = true"),
        ],
        // A joint in a box: the tester reads correct wiring.
        &[
            ("neutral = \"bonded\"", "neutral = \"floating\""),
            ("bond = false", "bond = true"),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    // A joint in a box that may be used is seen by every tester.
    if facts.verdicts.grounding_in_use().joined() == Sure::Unknown {
        found.add(Signal::Notice, vec![], values([]), "find-out", values([]));
    }
}

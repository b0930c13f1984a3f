//! # SHOCK006 unlisted-box
//!
//! ## What it checks
//! Whether a distribution box in use is home made, or nobody knows whether it is factory made and
//! listed by a testing laboratory.
//!
//! ## Why it hurts
//! Nobody has tested a home-made box for rain, strain on its cords, loose joints, wire size, or a
//! missing ground. Any of these can shock or burn, and none of them shows from outside.
//!
//! ## The arithmetic
//! None. A box known not to be listed is a warning on wet, damp or unknown ground, else a caution. One of
//! which nobody knows is a caution. What the plan says of its breakers and wire is counted with all the
//! same.
//!
//! ## What to do
//! Use a factory-made box with a testing laboratory's mark, made for outdoors. Or have a licensed
//! electrician look at this one. Do not open it yourself.
//!
//! ## Sources
//! - NFPA 70 (NEC), 110.2 and 110.3: equipment is approved, and suitable by its listing (from memory,
//!   not verified).

use crate::plan::{Answer, Ground, Id};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "SHOCK006",
    name: "unlisted-box",
    area: "shock",
    worst: Signal::Warning,
    text: include_str!("unlisted_box.rs"),
    sources: &[cite::NEC_110_3],
    fixes: &["home-made", "look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("listed = true", "listed = false")],
        &[("listed = true", "listed = \"unknown\"")],
        &[("listed = true", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // It stays in the bin.
        &[
            ("listed = true", "listed = false"),
            ("from = \"long\"\n", ""),
            ("on = \"left\" # kettle", "on = \"front\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let with = |wanted: fn(Answer<bool>) -> bool| -> Vec<Id> {
        facts
            .plan
            .boxes
            .iter()
            .filter(|it| it.from.is_some() && wanted(it.listed))
            .map(|it| it.id.clone())
            .collect()
    };
    let home_made = with(|listed| listed == Answer::Known(false));
    if !home_made.is_empty() {
        let signal = if facts.plan.site.ground == Answer::Known(Ground::Dry) {
            Signal::Caution
        } else {
            Signal::Warning
        };
        found.add(signal, home_made, values([]), "home-made", values([]));
    }
    let doubtful = with(|listed| !listed.is_known());
    if !doubtful.is_empty() {
        found.add(Signal::Caution, doubtful, values([]), "look", values([]));
    }
}

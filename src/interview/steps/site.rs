//! Questions about the site.

use super::Takes::{OneOf, Typed, Words, YesNo};
use super::{Group, Step, Takes, choices, flow_if, said, step, word};
use crate::interview::form::Form::{Length, Name, Spans, Temperature};
use crate::interview::parts;
use crate::plan::{Choice, Ground, Stands, bounds};

const fn site(field: &'static str, id: &'static str, takes: Takes) -> Step {
    step(Group::Site, field, id, takes)
}

pub(in crate::interview) const SITE: &[Step] = &[
    site("name", "site-name", Typed(Name)).later().suggest(|_, _| word("suggest-site-name")),
    site(
        "ground",
        "site-ground",
        // Worst first, where Enter finds it.
        OneOf(|id| choices::<Ground>(id).into_iter().rev().collect()),
    )
    .unknown()
    .suggest(|_, _| said(Ground::Wet.pick())),
    site("sleepers_at", "site-sleepers", Typed(Length(&bounds::SLEEPERS_AT))).rather_unknown(),
    site("stands", "site-stands", OneOf(choices::<Stands>))
        // Enter alone never accepts the usual place. A wrong answer can kill, so someone has to give it.
        .rather_unknown(),
    // One question covers both, so that "nobody sleeps here" is an answer where there is no alarm.
    site("alarm", "site-alarm", Words(&["yes", "no", "nobody"])).rather_unknown(),
    site("feeds_building", "site-building", YesNo).rather_unknown(),
    site("altitude", "site-altitude", Typed(Length(&bounds::ALTITUDE))).rather_unknown(),
    site("air", "site-air", Typed(Temperature(&bounds::AIR))).rather_unknown().later(),
    site("quiet_hours", "site-quiet", Typed(Spans))
        .rather_unknown()
        .none()
        // Without quiet hours every load can run by day, except one that someone's health depends on.
        .when(|draft, _| {
            flow_if(parts::loads(draft).any(|n| {
                let hours = draft.text(&format!("load.{n}.hours")).is_some();
                hours || parts::is_medical(draft, n)
            }))
        }),
];

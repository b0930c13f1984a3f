//! The place.

use super::{Group, Step, Takes, choices, flow_if, said, step, word, words};
use crate::interview::form::Form;
use crate::interview::parts;
use crate::plan::{Choice, Ground, Stands, bounds};

pub(in crate::interview) const SITE: &[Step] = &[
    step(Group::Site, "name", "site-name", Takes::Typed(Form::Name))
        .later()
        .suggest(|_, _| word("suggest-site-name")),
    step(
        Group::Site,
        "ground",
        "site-ground",
        // The worst first, where Enter finds it.
        Takes::Pick(|_, _| choices::<Ground>("site-ground").into_iter().rev().collect()),
    )
    .unknown()
    .suggest(|_, _| said(Ground::Wet.pick())),
    step(
        Group::Site,
        "sleepers_at",
        "site-sleepers",
        Takes::Typed(Form::Length(&bounds::SLEEPERS_AT)),
    )
    .rather_unknown(),
    step(
        Group::Site,
        "stands",
        "site-stands",
        Takes::Pick(|_, _| choices::<Stands>("site-stands")),
    )
    // Not the usual place by Enter alone: of what kills, somebody has to have thought.
    .rather_unknown(),
    // One question for both: who has no alarm because nobody sleeps here can say so.
    step(
        Group::Site,
        "alarm",
        "site-alarm",
        Takes::Pick(|_, _| words("site-alarm", &["yes", "no", "nobody"])),
    )
    .rather_unknown(),
    step(Group::Site, "feeds_building", "site-building", Takes::YesNo).rather_unknown(),
    step(
        Group::Site,
        "altitude",
        "site-altitude",
        Takes::Typed(Form::Length(&bounds::ALTITUDE)),
    )
    .rather_unknown(),
    step(
        Group::Site,
        "air",
        "site-air",
        Takes::Typed(Form::Temperature(&bounds::AIR)),
    )
    .rather_unknown()
    .later(),
    step(
        Group::Site,
        "quiet_hours",
        "site-quiet",
        Takes::Typed(Form::Spans),
    )
    .rather_unknown()
    .none()
    // Without hours everything can run by day, but for what someone's health depends on.
    .when(|draft, _| {
        flow_if(parts::loads(draft).any(|n| {
            let hours = draft.text(&format!("load.{n}.hours")).is_some();
            hours || parts::is_medical(draft, n)
        }))
    }),
];

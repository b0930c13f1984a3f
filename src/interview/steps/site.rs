//! The place.

use super::{Group, Step, Suggestion, Takes, flow_if, said, step, words};
use crate::interview::form::Form;
use crate::interview::parts;
use crate::plan::LoadKind;
use crate::tables::appliances;

pub(in crate::interview) const SITE: &[Step] = &[
    step(Group::Site, "name", "site-name", Takes::Typed(Form::Name))
        .later()
        .suggest(|_, _| Suggestion::Word("suggest-site-name")),
    step(
        Group::Site,
        "ground",
        "site-ground",
        Takes::Pick(|_, _| words("site-ground", &["wet", "damp", "dry"])),
    )
    .unknown()
    .suggest(|_, _| said("wet")),
    step(
        Group::Site,
        "sleepers",
        "site-sleepers",
        Takes::Typed(Form::Length),
    )
    .rather_unknown(),
    step(
        Group::Site,
        "stands",
        "site-stands",
        Takes::Pick(|_, _| words("site-stands", &["open", "roof", "covered", "enclosed"])),
    )
    // Not the usual place by Enter alone: of what kills, somebody has to have thought.
    .rather_unknown(),
    step(Group::Site, "alarm", "site-alarm", Takes::YesNo).rather_unknown(),
    step(Group::Site, "building", "site-building", Takes::YesNo).rather_unknown(),
    step(
        Group::Site,
        "altitude",
        "site-altitude",
        Takes::Typed(Form::Length),
    )
    .rather_unknown(),
    step(
        Group::Site,
        "air",
        "site-air",
        Takes::Typed(Form::Temperature),
    )
    .rather_unknown()
    .later(),
    step(Group::Site, "quiet", "site-quiet", Takes::Typed(Form::Span))
        .rather_unknown()
        .none()
        // Without hours everything can run by day, but for what someone's health depends on.
        .when(|draft, _| {
            flow_if(parts::loads(draft).any(|n| {
                let hours = draft.text(&format!("load.{n}.hours")).is_some();
                let table = draft
                    .text(&format!("load.{n}.what"))
                    .and_then(appliances::named)
                    .is_some_and(|table| table.kind == LoadKind::Medical);
                let told = draft.text(&format!("load.{n}.kind"));
                hours || told.map_or(table, |kind| kind == "medical")
            }))
        }),
];

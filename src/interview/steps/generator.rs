//! The set itself; its fuel, tank and noise.

use super::{Ask, At, Group, Step, Suggestion, Takes, flow_if, said, step, words};
use crate::interview::draft::Draft;
use crate::interview::form::Form;

/// Asked once the review page has been told to; none of it is about danger.
fn more(draft: &Draft, _: At) -> Ask {
    flow_if(draft.text("fuel.more") == Some("yes"))
}

pub(in crate::interview) const GENERATOR: &[Step] = &[
    step(
        Group::Generator,
        "name",
        "generator-name",
        Takes::Typed(Form::Name),
    )
    .later()
    .suggest(|_, _| Suggestion::Word("suggest-generator-name")),
    step(
        Group::Generator,
        "rated",
        "generator-rated",
        Takes::Typed(Form::Power),
    )
    .rather_unknown(),
    step(
        Group::Generator,
        "peak",
        "generator-peak",
        Takes::Typed(Form::Power),
    )
    .rather_unknown(),
    step(
        Group::Generator,
        "voltage",
        "generator-voltage",
        Takes::Pick(|_, _| words("generator-voltage", &["120", "120-240"])),
    )
    .unknown()
    .suggest(|_, _| said("120")),
    step(
        Group::Generator,
        "neutral",
        "generator-neutral",
        Takes::Pick(|_, _| words("generator-neutral", &["floating", "plug", "bonded"])),
    )
    .rather_unknown(),
    step(
        Group::Generator,
        "inverter",
        "generator-inverter",
        Takes::YesNo,
    )
    .rather_unknown(),
];

/// Fuel, tank and noise.
pub(in crate::interview) const FUEL: &[Step] = &[
    step(
        Group::Fuel,
        "fuel",
        "generator-fuel",
        Takes::Pick(|_, _| words("generator-fuel", &["gasoline", "propane", "diesel"])),
    )
    .unknown()
    .when(more)
    .suggest(|_, _| said("gasoline")),
    step(
        Group::Fuel,
        "tank",
        "generator-tank",
        Takes::Typed(Form::Volume),
    )
    .rather_unknown()
    .when(more),
    step(
        Group::Fuel,
        "runtime",
        "generator-runtime",
        Takes::Typed(Form::Runtime),
    )
    .rather_unknown()
    .when(more),
    step(
        Group::Fuel,
        "noise",
        "generator-noise",
        Takes::Typed(Form::Noise),
    )
    .rather_unknown()
    .when(more),
];

//! The set itself; its fuel, tank and noise.

use super::{Ask, At, Group, Step, Takes, choices, flow_if, only_if, said, step, word, words};
use crate::interview::draft::{Draft, Said};
use crate::interview::form::Form;
use crate::interview::parts;
use crate::plan::{Choice, Fuel, System, bounds};

/// Asked once the review page has been told to; none of it is about danger.
fn more(draft: &Draft, _: At) -> Ask {
    flow_if(draft.text("fuel.more") == Some("yes"))
}

/// Only where one figure of its power is known, which a beginner may have read off its name.
fn one_figure(draft: &Draft, _: At) -> Ask {
    let known = |key: &str| draft.text(key).is_some();
    only_if(known("generator.rated") && !known("generator.peak"))
}

/// Only where several sets run as one.
fn joined(draft: &Draft, _: At) -> Ask {
    only_if(draft.text("generator.sets").is_some_and(|sets| sets != "1"))
}

/// Only where it may run on another fuel than its watts are given for: a diesel burns nothing else.
fn other_fuel(draft: &Draft, at: At) -> Ask {
    match draft.get("fuel.fuel") {
        Some(Said::Unknown) => more(draft, at),
        Some(Said::Is(fuel)) if Fuel::named(fuel) == Some(Fuel::Propane) => more(draft, at),
        _ => Ask::No,
    }
}

pub(in crate::interview) const GENERATOR: &[Step] = &[
    step(
        Group::Generator,
        "name",
        "generator-name",
        Takes::Typed(Form::Name),
    )
    .later()
    .suggest(|_, _| word("suggest-generator-name")),
    step(
        Group::Generator,
        "rated",
        "generator-rated",
        Takes::Typed(Form::Watts),
    )
    .rather_unknown(),
    step(
        Group::Generator,
        "peak",
        "generator-peak",
        Takes::Typed(Form::Power(&bounds::PEAK)),
    )
    // The question before takes both.
    .rather_unknown()
    .later(),
    step(
        Group::Generator,
        "figure",
        "generator-figure",
        Takes::Pick(|_, _| words("generator-figure", &["running", "peak"])),
    )
    .rather_unknown()
    .when(one_figure),
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
    .rather_unknown()
    .later(),
    // Few have two: only the review page asks, and what follows from it comes at once.
    step(
        Group::Generator,
        "sets",
        "generator-sets",
        Takes::Pick(|_, _| {
            let counts: Vec<String> = (1..=bounds::SETS.most).map(|n| n.to_string()).collect();
            let counts: Vec<&str> = counts.iter().map(String::as_str).collect();
            words("generator-sets", &counts)
        }),
    )
    .later()
    .suggest(|_, _| said("1")),
    step(Group::Generator, "kit", "generator-kit", Takes::YesNo)
        .rather_unknown()
        .when(joined),
    step(
        Group::Generator,
        "limit",
        "generator-limit",
        Takes::Typed(Form::Current(&bounds::KIT_LIMIT)),
    )
    .rather_unknown()
    .when(joined),
];

/// Asked after its outlets, which may tell.
pub(in crate::interview) const GENERATOR_AFTER: &[Step] = &[step(
    Group::Generator,
    "voltage",
    "generator-voltage",
    Takes::Pick(|_, _| choices::<System>("generator-voltage")),
)
// Nobody has 120 V only by Enter: on half of what it makes a thing may get no power, or too many volts.
.rather_unknown()
.when(|draft, _| only_if(!parts::has_240_volts(draft)))];

/// Fuel, tank and noise.
pub(in crate::interview) const FUEL: &[Step] = &[
    step(
        Group::Fuel,
        "fuel",
        "generator-fuel",
        Takes::Pick(|_, _| choices::<Fuel>("generator-fuel")),
    )
    .unknown()
    .when(more)
    .suggest(|_, _| said(Fuel::Gasoline.pick())),
    step(
        Group::Fuel,
        "rated_on",
        "generator-rated-on",
        // No set that burns diesel burns anything else.
        Takes::Pick(|_, _| {
            let fuels = choices::<Fuel>("generator-rated-on").into_iter();
            fuels
                .filter(|fuel| fuel.value != Fuel::Diesel.pick())
                .collect()
        }),
    )
    .rather_unknown()
    .when(other_fuel),
    step(
        Group::Fuel,
        "tank",
        "generator-tank",
        Takes::Typed(Form::Volume(&bounds::TANK)),
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

//! Questions about the generator itself, and about its fuel, tank and noise.

use super::Takes::{OneOf, Pick, Typed, Words, YesNo};
use super::{Ask, At, Group, Step, Takes, bought, choices, flow_if, only_if, said, step, word, words};
use crate::interview::draft::{Draft, Said};
use crate::interview::form::Form::{Current, Name, Noise, Power, Runtime, Volume, Watts};
use crate::interview::parts;
use crate::plan::{Choice, Fuel, System, bounds};

/// Asks only after the user opened the fuel line on the review page. None of it concerns danger.
fn more(draft: &Draft, _: At) -> Ask {
    flow_if(draft.text("fuel.more") == Some("yes"))
}

/// Asks only if a single power figure is known, which a beginner may have read off the model's name.
fn one_figure(draft: &Draft, _: At) -> Ask {
    let known = |key: &str| draft.text(key).is_some();
    only_if(known("generator.rated") && !known("generator.peak"))
}

/// Asks only if several sets run in parallel.
fn joined(draft: &Draft, _: At) -> Ask {
    only_if(draft.text("generator.sets").is_some_and(|sets| sets != "1"))
}

/// Asks only if the generator may burn another fuel than the one it is rated on. A diesel engine burns nothing else.
fn other_fuel(draft: &Draft, at: At) -> Ask {
    match draft.get("fuel.fuel") {
        Some(Said::Unknown) => more(draft, at),
        Some(Said::Is(fuel)) if Fuel::named(fuel) == Some(Fuel::Propane) => more(draft, at),
        _ => Ask::No,
    }
}

const fn generator(field: &'static str, id: &'static str, takes: Takes) -> Step {
    step(Group::Generator, field, id, takes)
}

const fn fuel(field: &'static str, id: &'static str, takes: Takes) -> Step {
    step(Group::Fuel, field, id, takes)
}

pub(in crate::interview) const GENERATOR: &[Step] = &[
    generator("name", "generator-name", Typed(Name)).later().suggest(|_, _| word("suggest-generator-name")),
    generator("rated", "generator-rated", Typed(Watts)).rather_unknown().or_to_buy(),
    generator("peak", "generator-peak", Typed(Power(&bounds::PEAK)))
        // The question before takes both figures.
        .rather_unknown()
        .later(),
    generator("figure", "generator-figure", Words(&["running", "peak"])).rather_unknown().when(one_figure),
    generator("neutral", "generator-neutral", Words(&["floating", "plug", "bonded"])).rather_unknown(),
    bought(Group::Generator),
];

/// Questions asked after the outlets, which may answer them.
pub(in crate::interview) const GENERATOR_AFTER: &[Step] = &[
    generator("voltage", "generator-voltage", OneOf(choices::<System>))
        // Enter alone never accepts 120 V only. On a two-leg generator, a load may find no power on its half, or too
        // high a voltage.
        .rather_unknown()
        .when(|draft, _| only_if(!parts::has_240_volts(draft))),
    // Generators that can be joined are inverters and give 120 V. For others, only the review page asks.
    generator(
        "sets",
        "generator-sets",
        Pick(|_, _| {
            let counts: Vec<String> = (1..=bounds::SETS.most).map(|n| n.to_string()).collect();
            let counts: Vec<&str> = counts.iter().map(String::as_str).collect();
            words("generator-sets", &counts)
        }),
    )
    .when(|draft, _| {
        let open_frame = draft.text("generator.inverter") == Some("no");
        flow_if(parts::legs(draft) == Some(System::V120) && !open_frame)
    })
    .suggest(|_, _| said("1")),
    generator("inverter", "generator-inverter", YesNo).rather_unknown().when(|draft, at| match joined(draft, at) {
        Ask::Flow => Ask::Flow,
        _ => Ask::Later,
    }),
    generator("kit", "generator-kit", YesNo).rather_unknown().when(joined),
    generator("limit", "generator-limit", Typed(Current(&bounds::KIT_LIMIT))).rather_unknown().when(joined),
];

/// Questions about fuel, tank and noise.
pub(in crate::interview) const FUEL: &[Step] = &[
    fuel("fuel", "generator-fuel", OneOf(choices::<Fuel>))
        .unknown()
        .when(more)
        .suggest(|_, _| said(Fuel::Gasoline.pick())),
    fuel(
        "rated_on",
        "generator-rated-on",
        // A generator that burns diesel burns nothing else.
        Words(&["gasoline", "propane"]),
    )
    .rather_unknown()
    .when(other_fuel),
    fuel("runtime", "generator-runtime", Typed(Runtime)).rather_unknown().when(more),
    // The size of the tank matters only for tanks per day, which need the runtime on one tank.
    fuel("tank", "generator-tank", Typed(Volume(&bounds::TANK))).rather_unknown().when(|draft, at| {
        match draft.text("fuel.runtime") {
            Some(_) => more(draft, at),
            None => Ask::Later,
        }
    }),
    fuel("noise", "generator-noise", Typed(Noise)).rather_unknown().when(more),
];

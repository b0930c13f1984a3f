//! What the loads demand: each of them, who runs together, and energy. Also repairs and assumptions.

use rust_decimal::Decimal;

use super::super::choices;
use super::sums::Deciding;
use super::{Cell, Section, Sheet};
use crate::loads::fills_its_plug;
use crate::plan::{Answer, Draw, Id, Load};
use crate::quantity::{Hours, Quantity, Ratio};
use crate::report::LoadFacts;
use crate::tables::kinds;
use crate::tables::motors::MOTORS;

/// Returns what one load demands, with the origin of each figure.
fn load_row(sheet: &Sheet<'_>, facts: &LoadFacts, load: &Load) -> Vec<Cell> {
    let context = sheet.context;
    let kind = kinds::of_kind(load.kind);
    let field = |name: &str| format!("load.{}.{name}", load.id);
    let at = context.report.figures.sharing.place(&facts.id).map_or_else(|| "–".to_owned(), Id::to_string);
    let number = |ratio: Ratio| context.words.number(ratio.amount());
    let (watts, amps) = (context.exact(facts.running_watts), context.exact(facts.running_amps));
    // Of watts and amps, one is given and the other is calculated.
    let (watts, amps) = match &load.running {
        // A heater that is rated for 125 V draws fewer watts here than its nameplate says.
        Answer::Known(Draw::Power(power)) if *power != facts.running_watts => {
            let plate = context.exact(*power);
            (sheet.planned(format!("{plate} → {watts}")), amps.into())
        }
        Answer::Known(Draw::Power(_)) => (sheet.planned(watts), amps.into()),
        Answer::Known(Draw::Current(_)) => (watts.into(), sheet.planned(amps)),
        Answer::Known(Draw::Motor { .. }) => (watts.into(), sheet.sourced(amps, &MOTORS.full_load_source)),
        _ => (sheet.assumed_to_be(watts, Some(&kind.running_source)), amps.into()),
    };
    let factor = match (&load.power_factor, &load.running) {
        (Answer::Known(factor), _) => sheet.planned(number(*factor)),
        // Volt-amperes count as watts, which is the most that they can be.
        (_, Answer::Known(Draw::Current(_) | Draw::Motor { .. })) => number(Ratio::from_permille(1000)).into(),
        (_, Answer::Missing | Answer::Unknown) if fills_its_plug(load.kind) => {
            number(Ratio::from_permille(1000)).into()
        }
        _ if sheet.taken(&field("power_factor")).is_some() => {
            sheet.assumed_to_be(number(kind.power_factor), Some(&kind.power_factor_source))
        }
        _ => sheet.sourced(number(kind.power_factor), &kind.power_factor_source),
    };
    let (start_watts, start_amps) = (context.exact(facts.starting_watts), context.exact(facts.starting_amps));
    let dash = || Cell::from("–".to_owned());
    let times = |text: String| format!("×\u{a0}{text}");
    let (times, start_watts) = match (&load.starting, &load.running) {
        (Answer::Known(_), _) => (dash(), sheet.planned(start_watts)),
        // The amps are from the plan, and the watts are calculated.
        _ if load.starting_current.is_known() => (dash(), start_watts.into()),
        (_, Answer::Known(Draw::Motor { code: Some(_), .. })) => {
            let kva = "kVA".to_owned();
            let cell = if sheet.taken(&field("starting")).is_some() {
                sheet.assumed_to_be(kva, Some(&MOTORS.locked_rotor_source))
            } else {
                sheet.sourced(kva, &MOTORS.locked_rotor_source)
            };
            (cell, start_watts.into())
        }
        (_, Answer::Known(Draw::Motor { .. })) => {
            (sheet.assumed_to_be(times(MOTORS.multiple.to_string()), Some(&MOTORS.multiple_source)), start_watts.into())
        }
        _ if kind.starting.permille() <= 1000 => {
            (sheet.sourced(times(number(kind.starting)), &kind.starting_source), start_watts.into())
        }
        _ => (sheet.assumed_to_be(times(number(kind.starting)), Some(&kind.starting_source)), start_watts.into()),
    };
    let volts = context.exact(facts.volts);
    vec![
        facts.name.clone().into(),
        at.into(),
        watts,
        factor,
        if volts_assumed(sheet, load) { sheet.assumed_to_be(volts, None) } else { volts.into() },
        amps,
        times,
        start_watts,
        if load.starting_current.is_known() { sheet.planned(start_amps) } else { start_amps.into() },
    ]
}

/// Whether the voltage of a load with a neutral, or how it divides between the legs, was assumed.
fn volts_assumed(sheet: &Sheet<'_>, load: &Load) -> bool {
    let field = |name: &str| format!("load.{}.{name}", load.id);
    let mut fields = ["voltage", "legs"].into_iter();
    fields.any(|name| sheet.taken(&field(name)).is_some())
}

pub(super) fn loads(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let loads = context.report.figures.loads.iter();
    let rows: Vec<Vec<Cell>> =
        loads.filter_map(|facts| Some(load_row(sheet, facts, context.plan.load(&facts.of)?))).collect();
    let mut how = context.sentences(&["ws-loads-amps", "ws-loads-start"]);
    let mut loads = context.plan.loads.iter();
    if loads.any(|load| volts_assumed(sheet, load) && !matches!(load.running, Answer::Known(Draw::Current(_)))) {
        how.push(context.say("ws-loads-leg", &[]));
    }
    sheet.section(
        "loads",
        how,
        &[],
        &[
            ("load", 7),
            ("at", 4),
            ("#watts", 4),
            ("#factor", 3),
            ("#volts", 3),
            ("#amps", 3),
            ("#start-times", 3),
            ("#start-watts", 4),
            ("#start-amps", 3),
        ],
        rows,
    )
}

/// The most sets that are listed, apart from those whose sums decide.
pub(in super::super) const MOST_SETS: usize = 12;

pub(super) fn sharing(sheet: &Sheet<'_>, deciding: &Deciding) -> Section {
    let context = sheet.context;
    let sharing = &context.report.figures.sharing;
    let names = |ids: &[Id]| context.words.set_names(context.report, ids).join(", ");
    let mut rows: Vec<Vec<String>> = Vec::new();
    let shown = |at: usize| at < MOST_SETS || deciding.fullest.iter().any(|(of, _)| *of == at);
    for (index, set) in sharing.together.iter().enumerate().filter(|(at, _)| shown(*at)) {
        rows.push(vec![context.say("ws-together-row", &[("number", &(index + 1).to_string())]), names(set)]);
    }
    for (index, set) in sharing.never.iter().enumerate() {
        rows.push(vec![
            context.say("ws-never-row", &[("number", &(index + 1).to_string())]),
            match set.as_slice() {
                [_] => context.words.one_set(context.report, set),
                _ => names(set),
            },
        ]);
    }
    let mut formulas = context.sentences(&["ws-sharing-formula"]);
    let groups = choices::titles(context).join("; ");
    if !groups.is_empty() {
        formulas.push(context.say("ws-sharing-times", &[("groups", &groups)]));
    }
    let more = sharing.together.len() - (0..sharing.together.len()).filter(|at| shown(*at)).count();
    if more > 0 {
        formulas.push(context.say("ws-sharing-more", &[("count", &more.to_string())]));
    }
    if !sharing.families_complete && !sharing.together.is_empty() {
        formulas.push(context.say("ws-sharing-incomplete", &[]));
    }
    sheet.section("sharing", formulas, &[], &[("what", 2), ("which", 5)], rows)
}

/// Returns the section on what would help, with before and after. Empty if nobody asked for repairs.
pub(super) fn mend(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let sharing = &context.report.figures.sharing;
    let words = context.words;
    let mut rows: Vec<Vec<String>> = Vec::new();
    let mut formulas = Vec::new();
    if let Some(effect) = &sharing.mended
        && !sharing.repairs.is_empty()
    {
        rows.extend(
            sharing
                .repairs
                .iter()
                .map(|repair| vec![words.repair(repair, &context.report.figures.loads), repair.cost.to_string()]),
        );
        rows.push(vec![context.say("ws-mend-all", &[]), effect.cost.to_string()]);
        for (key, tally) in [("ws-mend-before", &effect.before), ("ws-mend-after", &effect.after)] {
            formulas.push(context.say(key, &[("tally", &words.tally(tally))]));
        }
        formulas.push(words.effect(effect));
    }
    sheet.section("mend", formulas, &[], &[("change", 8), ("#points", 1)], rows)
}

/// Formats hours and minutes, such as "0:40 h", rounded to the minute, so that thirds of an hour stay exact.
fn clock(hours: Hours) -> String {
    minutes((hours.amount() * Decimal::from(60)).round())
}

/// Like [`clock`], but rounded down.
fn lasts(hours: Hours) -> String {
    minutes((hours.amount() * Decimal::from(60)).floor())
}

fn minutes(minutes: Decimal) -> String {
    let hours = (minutes / Decimal::from(60)).floor();
    let rest = minutes - hours * Decimal::from(60);
    format!("{hours}:{rest:0>2}\u{a0}h")
}

pub(super) fn energy(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let energy = &context.report.figures.energy;
    let set = &context.plan.generator;
    let mut rows: Vec<Vec<Cell>> = Vec::new();
    for one in &energy.loads {
        let facts = context.load(&one.load);
        let watts = facts.map_or_else(String::new, |facts| context.exact(facts.running_watts));
        let hours = clock(one.hours);
        let field = facts.map_or_else(String::new, |facts| format!("load.{}.hours", facts.of));
        let run = format!("{watts} × {hours}");
        rows.push(vec![
            context.load_name(&one.load).into(),
            if sheet.taken(&field).is_some() { sheet.assumed_to_be(run, None) } else { sheet.planned(run) },
            context.exact(one.watt_hours).into(),
        ]);
    }
    // A row without a calculation.
    let line = |key: &str, args: &[(&'static str, &str)], figure: Cell| {
        vec![context.say(key, args).into(), String::new().into(), figure]
    };
    if let Some(day) = energy.watt_hours_per_day {
        rows.push(line("ws-energy-day", &[], context.exact(day).into()));
    }
    for runtime in &set.runtime {
        let load = context.exact(runtime.load);
        let lasts = sheet.planned(context.exact(runtime.lasts));
        rows.push(line("ws-energy-published", &[("load", &load)], lasts));
    }
    for burn in &energy.burns {
        let watts = context.exact(burn.watts);
        let (run, tank) = (clock(burn.hours), lasts(burn.hours_per_tank));
        rows.push(vec![
            context.say("ws-energy-burns", &[("watts", &watts)]).into(),
            format!("{run} ÷ {tank}").into(),
            context.demand(burn.burns).into(),
        ]);
    }
    if let Some(tanks) = energy.tanks_per_day {
        rows.push(line("ws-energy-tanks", &[], context.demand(tanks).into()));
    }
    if let Answer::Known(tank) = set.tank {
        let tank = sheet.planned(context.exact(tank));
        rows.push(line("ws-energy-size", &[], tank));
        let fuel = energy.fuel_per_day.map(|fuel| context.exact(fuel).into());
        rows.extend(fuel.map(|fuel| line("ws-energy-fuel", &[], fuel)));
    }
    if let Some(hours) = energy.hours_per_tank {
        rows.push(line("ws-energy-tank", &[], lasts(hours).into()));
    }
    // Without burn rows, nothing above leads to it.
    if let Some(stretch) = energy.stretch.as_ref().filter(|_| !energy.burns.is_empty()) {
        let (span, burns) = (context.words.span(stretch.span), context.demand(stretch.burns));
        rows.push(line("ws-energy-stretch", &[("span", &span)], burns.into()));
    }
    if let Some(peak) = &energy.peak_hour {
        let hour = context.words.clock(u16::from(peak.hour) * 60);
        let watts = context.exact(peak.watts);
        rows.push(line("ws-energy-peak", &[("hour", &hour)], watts.into()));
    }
    sheet.section(
        "energy",
        context.sentences(&["ws-energy-formula", "ws-energy-between"]),
        &[],
        &[("what", 4), ("#watts-hours", 3), ("#figure", 2)],
        rows,
    )
}

/// Returns the section on the assumptions that page 1 has no room for.
pub(super) fn assumed(sheet: &Sheet<'_>) -> Section {
    let (_, others) = super::case::assumptions(sheet.context);
    let rows: Vec<Vec<String>> = others.into_iter().map(|(value, text)| vec![value, text]).collect();
    sheet.section(
        "assumed",
        sheet.context.sentences(&["ws-assumed-how"]),
        &[],
        &[("value", 1), ("assumption", 5)],
        rows,
    )
}

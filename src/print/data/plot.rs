//! The two small plots of the worksheet: volts and noise, for a longer cord and a more distant generator.

use rust_decimal::prelude::ToPrimitive;
use serde::Serialize;

use super::Context;
use crate::quantity::{Length, Percent, Quantity, SoundLevel, Voltage};
use crate::report::{Farther, Place};
use crate::tables::volts::{MUCH, NOTED};
use crate::words::Units;

/// Points of a curve per step of its scale.
const TO_A_STEP: i64 = 8;

/// What `lib/plot.typ` draws. Numbers are positions on a scale. Anything to be read is text.
#[derive(Debug, Serialize)]
pub(super) struct Plot {
    how: String,
    alt: String,
    length: f64,
    /// The marks on the scale of lengths.
    lengths: Vec<Mark>,
    /// The title of that scale.
    along: String,
    curves: Vec<Curve>,
}

#[derive(Debug, Serialize)]
struct Curve {
    title: String,
    low: f64,
    high: f64,
    /// Both ends of the scale.
    ends: Vec<Mark>,
    points: Vec<(f64, f64)>,
    bounds: Vec<Bound>,
    /// The point of this plan.
    here: Mark,
}

/// A horizontal line across the plot.
#[derive(Debug, Serialize)]
struct Bound {
    at: f64,
    /// The figure on the scale.
    text: String,
    /// The meaning of the line.
    name: String,
}

#[derive(Debug, Serialize)]
struct Mark {
    at: f64,
    text: String,
}

/// Converts to a position on a scale, for drawing only.
fn place<Q: Quantity>(quantity: Q) -> f64 {
    quantity.amount().to_f64().unwrap_or_default()
}

pub(super) fn data(context: &Context<'_>) -> Option<Plot> {
    let farther = Farther::of(context.plan, context.report)?;
    let here = farther.with(farther.length)?;
    let (step, steps) = scale(farther.length, context.words.units());
    let along = |part: i64, of: i64| Length::from_millimetres(step.millimetres() * part / of);
    let mut places: Vec<Place> =
        (0..=steps * TO_A_STEP).filter_map(|point| farther.with(along(point, TO_A_STEP))).chain([here]).collect();
    places.sort_by_key(|place| place.length);
    let long = |length: Length| context.demand(length);
    let load = context.load_name(farther.load);
    let cord = farther.cord.as_str();
    let mut curves = vec![volts(context, &farther, &places, &here, &load)];
    let length = context.at_most(farther.length);
    let mut alt = context
        .say("plot-alt", &[("cord", cord), ("length", &length), ("load", &load), ("volts", &curves[0].here.text)]);
    if let Some(noise) = noise(context, &places, &here) {
        let level = &noise.here.text;
        alt = format!("{alt} {}", context.say("plot-alt-noise", &[("noise", level)]));
        curves.push(noise);
    }
    let how = if curves.len() > 1 { "plot-how" } else { "plot-how-volts" };
    Some(Plot {
        how: context.say(how, &[("cord", cord), ("length", &length)]),
        alt,
        length: place(farther.length),
        lengths: (0..=steps)
            .map(|part| along(part, 1))
            .map(|length| Mark { at: place(length), text: long(length) })
            .collect(),
        along: context.say("plot-along", &[("cord", cord)]),
        curves,
    })
}

fn volts(context: &Context<'_>, farther: &Farther<'_>, places: &[Place], here: &Place, load: &str) -> Curve {
    let bounds = [NOTED, MUCH].map(|lost| {
        let percent = context.exact(lost);
        Bound {
            at: place(farther.left(lost)),
            text: context.capacity(farther.left(lost)),
            name: context.say("plot-lost", &[("percent", &percent)]),
        }
    });
    let lowest = places.iter().map(|place| place.volts).min();
    // Losses beyond 20 % are off the scale.
    let bottom = farther.left(Percent::from_millipercent(20_000));
    let low = lowest.unwrap_or(bottom).max(bottom).min(farther.left(MUCH));
    // The whole volt that is at least one volt below the lowest.
    let low = Voltage::from_millivolts((low.millivolts() - 1000).div_euclid(1000) * 1000);
    let mark = |volts: Voltage| Mark { at: place(volts), text: context.capacity(volts) };
    Curve {
        title: context.say("plot-volts", &[("load", load)]),
        low: place(low),
        high: place(farther.nominal),
        ends: vec![mark(low), mark(farther.nominal)],
        points: places
            .iter()
            .filter(|place| place.volts >= bottom)
            .map(|there| (place(there.length), place(there.volts)))
            .collect(),
        bounds: bounds.into(),
        here: mark(here.volts),
    }
}

fn noise(context: &Context<'_>, places: &[Place], here: &Place) -> Option<Curve> {
    let level = here.noise?;
    let points: Vec<(f64, f64)> =
        places.iter().filter_map(|there| Some((place(there.length), place(there.noise?)))).collect();
    let levels = || places.iter().filter_map(|there| there.noise);
    // Whole decibels, with a little room above and below.
    let whole = |level: SoundLevel, more: i64| {
        SoundLevel::from_millidecibels((level.millidecibels().div_euclid(1000) + more) * 1000)
    };
    let ends = [whole(levels().min()?, -6), whole(levels().max()?, 3)];
    let mark = |level: SoundLevel| Mark { at: place(level), text: context.demand(level) };
    Some(Curve {
        title: context.say("plot-noise", &[]),
        low: place(ends[0]),
        high: place(ends[1]),
        ends: ends.map(mark).into(),
        points,
        // No bounds: parks measure at a fixed distance, wherever the generator is.
        bounds: Vec::new(),
        here: mark(level),
    })
}

/// Returns a step that is round in the reader's units, and how many steps cover twice the cord's length.
fn scale(length: Length, units: Units) -> (Length, i64) {
    // In tenths of a millimeter, where a foot is a whole number.
    let (unit, steps): (i64, [i64; 6]) = match units {
        Units::Customary => (3_048, [5, 10, 25, 50, 100, 250]),
        Units::Metric => (10_000, [2, 5, 10, 20, 50, 100]),
    };
    let wanted = (2 * length.millimetres()).max(1);
    let steps = steps.map(|step| step * unit / 10);
    let step = steps.into_iter().find(|step| wanted <= 5 * step).unwrap_or(wanted);
    // A scale needs at least two steps.
    let count = ((wanted + step - 1) / step).max(2);
    (Length::from_millimetres(step), count)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scale_is_round_and_takes_in_twice_the_cord() {
        let feet = |feet: i64| Length::from_millimetres(feet * 3_048 / 10);
        assert_eq!(scale(feet(50), Units::Customary), (feet(25), 4));
        assert_eq!(scale(feet(75), Units::Customary), (feet(50), 3));
        assert_eq!(scale(feet(3), Units::Customary), (feet(5), 2));
        let (step, count) = scale(Length::from_millimetres(15_000), Units::Metric);
        assert_eq!((step.millimetres(), count), (10_000, 3));
    }
}

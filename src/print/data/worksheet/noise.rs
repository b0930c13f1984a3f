//! Noise: as published, at the places that matter, and what full load adds.

use super::{Cell, Section, Sheet};
use crate::plan::{Answer, Noise};
use crate::quantity::SoundLevel;
use crate::report::Amount;
use crate::report::noise::{BOUND, MEASURED_AT, more_of_several};
use crate::tables::sound::{UNKNOWN_LOAD, more_at_full_load};
use crate::tables::source::Source;

/// Three columns: what, at which distance, and the level.
struct Rows<'a> {
    sheet: &'a Sheet<'a>,
    rows: Vec<Vec<Cell>>,
}

impl Rows<'_> {
    fn add(&mut self, key: &str, distance: Cell, level: Cell) {
        let what = self.sheet.context.say(key, &[]).into();
        self.rows.push(vec![what, distance, level]);
    }

    /// What the set's maker says, and what the plan makes of it.
    fn published(&mut self, noise: Noise) {
        let (sheet, context) = (self.sheet, self.sheet.context);
        let practice = &Source::common_practice();
        let nothing = || Cell::from(String::new());
        self.add(
            "ws-noise-published",
            sheet.planned(context.exactly(noise.at)),
            sheet.planned(context.exactly(noise.level)),
        );
        let load = match noise.load {
            Answer::Known(load) => sheet.planned(context.exactly(load)),
            _ => sheet.assumed_to_be(context.exactly(UNKNOWN_LOAD), Some(practice)),
        };
        self.add("ws-noise-load", nothing(), load);
        let sets = context.plan.generator.sets();
        if sets > 1 {
            let what = context.say("ws-noise-sets", &[("sets", &sets.to_string())]);
            let more = context.exactly(more_of_several(sets)).into();
            self.rows.push(vec![what.into(), nothing(), more]);
        }
        let more = more_at_full_load(noise.load);
        if more > SoundLevel::ZERO {
            let more = sheet.assumed_to_be(context.exactly(more), Some(practice));
            self.add("ws-noise-full", nothing(), more);
        }
    }

    /// The figures for one load: that of the published level, or full load.
    fn places(
        &mut self,
        keys: [&str; 3],
        sleepers: Option<&Amount>,
        at_50ft: Option<&Amount>,
        from: Option<&Amount>,
    ) {
        let (sheet, context) = (self.sheet, self.sheet.context);
        let parks = crate::rules::find("NOISE001").and_then(|rule| rule.sources.first());
        let of_parks = |text: String| match parks {
            Some(source) => sheet.sourced(text, source),
            None => text.into(),
        };
        let [at_sleepers, at_parks, quiet] = keys;
        if let (Some(level), Answer::Known(distance)) = (sleepers, context.plan.site.sleepers_at) {
            let distance = sheet.planned(context.at_most(distance));
            self.add(at_sleepers, distance, context.exact(level).into());
        }
        if let Some(level) = at_50ft {
            let distance = of_parks(context.exactly(MEASURED_AT));
            self.add(at_parks, distance, context.exact(level).into());
        }
        if let Some(distance) = from {
            let bound = of_parks(context.exactly(BOUND));
            self.add(quiet, context.exact(distance).into(), bound);
        }
    }
}

pub(super) fn section(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let noise = &context.report.figures.noise;
    let mut rows = Rows {
        sheet,
        rows: Vec::new(),
    };
    let mut formulas = vec![
        context.say("ws-noise-formula", &[]),
        context.say("ws-noise-free-field", &[]),
    ];
    if let Answer::Known(published) = context.plan.generator.noise {
        rows.published(published);
        if context.plan.generator.sets() > 1 {
            formulas.push(context.say("ws-noise-sets-formula", &[]));
        }
    }
    rows.places(
        ["ws-noise-sleepers", "ws-noise-50ft", "ws-noise-quiet"],
        noise.at_sleepers_dba.as_ref(),
        noise.at_50ft_dba.as_ref(),
        noise.quiet_from.as_ref(),
    );
    if noise.at_50ft_full_dba != noise.at_50ft_dba {
        formulas.push(context.say("ws-noise-full-formula", &[]));
        rows.places(
            [
                "ws-noise-sleepers-full",
                "ws-noise-50ft-full",
                "ws-noise-quiet-full",
            ],
            noise.at_sleepers_full_dba.as_ref(),
            noise.at_50ft_full_dba.as_ref(),
            noise.quiet_from_full.as_ref(),
        );
    }
    sheet.section(
        "noise",
        formulas,
        &[Source::common_practice()],
        &[("what", 4), ("#distance", 3), ("#level", 2)],
        rows.rows,
    )
}

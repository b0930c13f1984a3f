//! The noise section: the published level, the level where it matters, and what the busiest minute of the plan adds.

use super::{Cell, Section, Sheet};
use crate::plan::{Answer, Noise};
use crate::quantity::SoundLevel;
use crate::report::noise::{MEASURED_AT, more_of_several};
use crate::tables::sound::{ALL, UNKNOWN_LOAD};
use crate::tables::source::Source;

/// Rows of three columns: what, at which distance, and the level.
struct Rows<'a> {
    sheet: &'a Sheet<'a>,
    rows: Vec<Vec<Cell>>,
}

impl Rows<'_> {
    fn add(&mut self, key: &str, distance: Cell, level: Cell) {
        let what = self.sheet.context.say(key, &[]).into();
        self.rows.push(vec![what, distance, level]);
    }

    /// Adds what the generator's maker publishes, and how the plan changes it.
    fn published(&mut self, noise: Noise) {
        let (sheet, context) = (self.sheet, self.sheet.context);
        let practice = &Source::common_practice();
        let nothing = || Cell::from(String::new());
        self.add(
            "ws-noise-published",
            sheet.planned(context.exact(noise.at)),
            sheet.planned(context.exact(noise.level)),
        );
        let load = match noise.load {
            Answer::Known(load) => sheet.planned(context.exact(load)),
            _ => sheet.assumed_to_be(context.exact(UNKNOWN_LOAD), Some(practice)),
        };
        self.add("ws-noise-load", nothing(), load);
        let sets = context.plan.generator.sets();
        if sets > 1 {
            let what = context.say("ws-noise-sets", &[("sets", &sets.to_string())]);
            let more = context.exact(more_of_several(sets)).into();
            self.rows.push(vec![what.into(), nothing(), more]);
        }
        let more = context.report.figures.noise.more_at_busiest;
        if let Some(more) = more.filter(|more| *more > SoundLevel::ZERO) {
            let load = context.report.figures.energy.busiest_load;
            let load = match load {
                Some(load) => context.exact(load).into(),
                None => sheet.assumed_to_be(context.exact(ALL), Some(practice)),
            };
            self.add("ws-noise-busiest-load", nothing(), load);
            let more = sheet.assumed_to_be(context.exact(more), Some(practice));
            self.add("ws-noise-busiest", nothing(), more);
        }
    }

    /// Adds the levels where people sleep and where parks measure, for the published load or the busiest minute.
    fn places(&mut self, keys: [&str; 2], sleepers: Option<SoundLevel>, at_50ft: Option<SoundLevel>) {
        let (sheet, context) = (self.sheet, self.sheet.context);
        let parks = crate::rules::find("NOISE001").and_then(|rule| rule.sources.first());
        let of_parks = |text: String| match parks {
            Some(source) => sheet.sourced(text, source),
            None => text.into(),
        };
        let [at_sleepers, at_parks] = keys;
        if let (Some(level), Answer::Known(distance)) = (sleepers, context.plan.site.sleepers_at) {
            let distance = sheet.planned(context.at_most(distance));
            self.add(at_sleepers, distance, context.exact(level).into());
        }
        if let Some(level) = at_50ft {
            let distance = of_parks(context.at_most(MEASURED_AT));
            self.add(at_parks, distance, context.exact(level).into());
        }
    }
}

pub(super) fn section(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let noise = &context.report.figures.noise;
    let mut rows = Rows { sheet, rows: Vec::new() };
    let mut formulas = context.sentences(&["ws-noise-formula", "ws-noise-free-field"]);
    if let Answer::Known(published) = context.plan.generator.noise {
        rows.published(published);
        if context.plan.generator.sets() > 1 {
            formulas.push(context.say("ws-noise-sets-formula", &[]));
        }
    }
    rows.places(["ws-noise-sleepers", "ws-noise-50ft"], noise.at_sleepers_dba, noise.at_50ft_dba);
    if noise.at_50ft_busiest_dba != noise.at_50ft_dba {
        formulas.push(context.say("ws-noise-busiest-formula", &[]));
        rows.places(
            ["ws-noise-sleepers-busiest", "ws-noise-50ft-busiest"],
            noise.at_sleepers_busiest_dba,
            noise.at_50ft_busiest_dba,
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

//! When people sleep, and what runs from the generator then.

use crate::plan::{Answer, LoadKind, Site, Span};

use super::demand::Need;
use crate::report::Value;
use crate::tables::night as tables;

/// Returns when people sleep: the camp's quiet hours, or the usual night. `None` if nobody sleeps there.
pub(crate) fn night(site: &Site) -> Option<Span> {
    site.sleeps().then(|| tables::night(site))
}

/// Returns how those hours are known, for a finding that rests on them.
pub(super) fn how_known(site: &Site) -> Value {
    let word = if tables::told(site).is_some() { "night-told" } else { "night-assumed" };
    Value::Word { word }
}

/// Whether and how a load runs at night.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum AtNight {
    /// It does not run.
    Not,
    /// It runs for this many minutes.
    Runs(u16),
    /// It may run, because the plan gives no hours.
    May,
}

impl Need<'_> {
    /// Returns whether it runs in the night: by its hours, or, without hours, because it runs or may run for three
    /// hours or more at a stretch. Nobody cooks in their sleep.
    pub(super) fn at_night(&self, night: Span) -> AtNight {
        if self.load.hours.is_empty() {
            let cooks = self.load.kind == Answer::Known(LoadKind::Cooker);
            return if self.continuous() && !cooks { AtNight::May } else { AtNight::Not };
        }
        let minutes: u32 = self.load.hours.iter().map(|span| u32::from(span.minutes_in_both(night))).sum();
        match u16::try_from(minutes).unwrap_or(u16::MAX) {
            0 => AtNight::Not,
            minutes => AtNight::Runs(minutes),
        }
    }

    /// Returns whether the generator runs for it in the night. Without hours, a load with its own battery needs no
    /// generator at night, and any other that somebody's health depends on runs all night. Hours in the plan are always
    /// on the generator, as the fuel figures count them.
    pub(super) fn generator_at_night(&self, night: Span) -> AtNight {
        if self.load.backup == Answer::Known(true) && self.load.hours.is_empty() {
            return AtNight::Not;
        }
        match self.load.kind {
            Answer::Known(LoadKind::Medical) if self.load.hours.is_empty() => AtNight::Runs(night.minutes()),
            // It may be medical.
            Answer::Unknown | Answer::Missing if self.load.hours.is_empty() => AtNight::May,
            _ => self.at_night(night),
        }
    }
}

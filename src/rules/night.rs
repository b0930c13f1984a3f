//! When people sleep, and what runs from the generator then.

use crate::plan::{Answer, LoadKind, Site, Span};

use super::demand::Need;
use crate::report::Value;
use crate::tables::night as tables;

/// When people sleep: the camp's quiet hours, or the usual night. `None` where nobody sleeps.
pub(crate) fn night(site: &Site) -> Option<Span> {
    site.sleeps().then(|| tables::night(site))
}

/// How those hours are known, for a finding that rests on them.
pub(super) fn how_known(site: &Site) -> Value {
    let word = if tables::told(site).is_some() { "night-told" } else { "night-assumed" };
    Value::Word { word }
}

/// How something comes to run at night.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum AtNight {
    /// It does not.
    Not,
    /// For so many minutes.
    Runs(u16),
    /// Nobody said when it runs.
    May,
}

impl Need<'_> {
    /// Whether it runs in the night: by its hours, or because nobody said when it runs and it runs for
    /// three hours or more at a stretch, or may. Nobody cooks in their sleep.
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

    /// Whether the generator runs for it in the night. Without hours a battery of its own carries a thing through the
    /// night, and else what somebody's health depends on runs all night. Hours that are told are on the generator, as
    /// its fuel counts them.
    pub(super) fn generator_at_night(&self, night: Span) -> AtNight {
        if self.load.backup == Answer::Known(true) && self.load.hours.is_empty() {
            return AtNight::Not;
        }
        match self.load.kind {
            Answer::Known(LoadKind::Medical) if self.load.hours.is_empty() => AtNight::Runs(night.minutes()),
            // It may be of that kind.
            Answer::Unknown | Answer::Missing if self.load.hours.is_empty() => AtNight::May,
            _ => self.at_night(night),
        }
    }
}

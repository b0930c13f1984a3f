//! What is assumed of a load by its kind when its owner does not know.

use std::sync::LazyLock;

use serde::Deserialize;

use super::data::{self, Cited};
use super::source::Source;
use crate::plan::{Answer, LoadKind};
use crate::quantity::{Power, Ratio};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    heater: KindText,
    motor: KindText,
    electronic: KindText,
    lamp: KindText,
    medical: KindText,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct KindText {
    running: FigureText,
    power_factor: FigureText,
    starting: FigureText,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct FigureText {
    amount: String,
    source: Cited,
}

/// The figures for a kind of load.
#[derive(Clone, Copy, Debug)]
pub struct KindFigures {
    /// The running power, if unknown.
    pub running: Power,
    /// The source of `running`.
    pub running_source: Source,
    /// The ratio of real to apparent power.
    pub power_factor: Ratio,
    /// The source of `power_factor`.
    pub power_factor_source: Source,
    /// The ratio of apparent power while starting to that while running.
    pub starting: Ratio,
    /// The source of `starting`.
    pub starting_source: Source,
}

impl From<KindText> for KindFigures {
    fn from(text: KindText) -> Self {
        Self {
            running: Power::from_milliwatts(data::count(&text.running.amount, 3)),
            running_source: text.running.source.into(),
            power_factor: Ratio::from_permille(data::count(&text.power_factor.amount, 3)),
            power_factor_source: text.power_factor.source.into(),
            starting: Ratio::from_permille(data::count(&text.starting.amount, 3)),
            starting_source: text.starting.source.into(),
        }
    }
}

static KINDS: LazyLock<[KindFigures; 5]> = LazyLock::new(|| {
    let file: File = data::read("kinds.toml", include_str!("kinds.toml"));
    [file.heater.into(), file.motor.into(), file.electronic.into(), file.lamp.into(), file.medical.into()]
});

/// The worst figure of all kinds, each with the source of its kind.
static WORST: LazyLock<KindFigures> = LazyLock::new(|| {
    KINDS.iter().fold(KINDS[0], |mut worst, kind| {
        if kind.running > worst.running {
            (worst.running, worst.running_source) = (kind.running, kind.running_source);
        }
        // A lower power factor means a larger current.
        if kind.power_factor < worst.power_factor {
            worst.power_factor = kind.power_factor;
            worst.power_factor_source = kind.power_factor_source;
        }
        if kind.starting > worst.starting {
            (worst.starting, worst.starting_source) = (kind.starting, kind.starting_source);
        }
        worst
    })
});

/// Returns the figures for a kind, or the worst of all kinds if it is unknown.
#[must_use]
pub fn of_kind(kind: Answer<LoadKind>) -> &'static KindFigures {
    match kind {
        Answer::Known(LoadKind::Heater | LoadKind::Cooker) => &KINDS[0],
        Answer::Known(LoadKind::Motor) => &KINDS[1],
        Answer::Known(LoadKind::Electronic) => &KINDS[2],
        Answer::Known(LoadKind::Lamp) => &KINDS[3],
        Answer::Known(LoadKind::Medical) => &KINDS[4],
        Answer::Missing | Answer::Unknown => &WORST,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Choice;

    #[test]
    fn nothing_starts_below_its_running_power() {
        for (kind, _) in LoadKind::ALL {
            let figures = of_kind(Answer::Known(*kind));
            assert!(figures.starting.permille() >= 1000, "{kind:?}");
            assert!((1..=1000).contains(&figures.power_factor.permille()), "{kind:?}");
        }
        // NEC 430.251(A): locked-rotor current is six times full-load current.
        let motor = of_kind(Answer::Known(LoadKind::Motor));
        assert_eq!(motor.starting.permille(), 6000);
    }

    /// A heater's watts, an electronic supply's power factor and a motor's start.
    #[test]
    fn of_a_kind_nobody_knows_each_figure_is_the_worst() {
        for kind in [Answer::Unknown, Answer::Missing] {
            let figures = of_kind(kind);
            assert_eq!(figures.running.milliwatts(), 1_800_000);
            assert_eq!(figures.power_factor.permille(), 600);
            assert_eq!(figures.starting.permille(), 6000);
            let motor = of_kind(Answer::Known(LoadKind::Motor));
            assert_eq!(figures.starting_source, motor.starting_source);
        }
    }

    /// The same watts, typed again: 15 A at 120 V, a halogen work light, home oxygen. A hair dryer is rated at 125 V,
    /// so at 120 V it draws 120² / 125² of its rating.
    #[test]
    fn nothing_unknown_is_taken_for_less_than_an_appliance_of_its_kind() {
        let all = [
            (LoadKind::Heater, 1800),
            (LoadKind::Cooker, 1800),
            (LoadKind::Motor, 1800),
            (LoadKind::Electronic, 1800),
            (LoadKind::Lamp, 500),
            (LoadKind::Medical, 600),
        ];
        for (kind, watts) in all {
            assert_eq!(of_kind(Answer::Known(kind)).running.milliwatts(), watts * 1000, "{kind:?}");
        }
        for appliance in crate::tables::appliances::all() {
            let kind = of_kind(Answer::Known(appliance.kind));
            let watts = appliance.running.milliwatts() / 1000;
            let taken = match appliance.kind {
                heats if heats.heats() && watts > 1800 => watts * 120 * 120 / (125 * 125),
                _ => watts,
            };
            assert!(taken * 1000 <= kind.running.milliwatts(), "{}", appliance.key);
        }
    }
}

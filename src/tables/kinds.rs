//! What is taken for a load when its owner does not know, by its kind.

use std::sync::LazyLock;

use serde::Deserialize;

use super::data::{self, Cited};
use super::source::Source;
use crate::plan::LoadKind;
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

/// The figures of one kind of load.
#[derive(Clone, Copy, Debug)]
pub struct KindFigures {
    /// Running power when nobody knows it.
    pub running: Power,
    /// Its source.
    pub running_source: Source,
    /// Real over apparent power.
    pub power_factor: Ratio,
    /// Its source.
    pub power_factor_source: Source,
    /// Apparent power at the start over the running one.
    pub starting: Ratio,
    /// Its source.
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
    [
        file.heater.into(),
        file.motor.into(),
        file.electronic.into(),
        file.lamp.into(),
        file.medical.into(),
    ]
});

/// The figures of a kind.
#[must_use]
pub fn of_kind(kind: LoadKind) -> &'static KindFigures {
    &KINDS[match kind {
        LoadKind::Heater => 0,
        LoadKind::Motor => 1,
        LoadKind::Electronic => 2,
        LoadKind::Lamp => 3,
        LoadKind::Medical => 4,
    }]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_starts_below_its_running_power() {
        for kind in [
            LoadKind::Heater,
            LoadKind::Motor,
            LoadKind::Electronic,
            LoadKind::Lamp,
            LoadKind::Medical,
        ] {
            let figures = of_kind(kind);
            assert!(figures.starting.permille() >= 1000, "{kind:?}");
            assert!(
                (1..=1000).contains(&figures.power_factor.permille()),
                "{kind:?}"
            );
        }
        // NEC 430.251(A): locked rotor is six times full load.
        assert_eq!(of_kind(LoadKind::Motor).starting.permille(), 6000);
    }
}

//! Common appliances and their usual figures, from `appliances.toml`.

use std::sync::OnceLock;

use serde::Deserialize;

use super::source::Mark;
use crate::plan::{Choice, LoadKind};
use crate::quantity::{Power, Quantity, Ratio, Round};

/// A common appliance. Its figures are typical and near the upper end; a nameplate overrides them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Appliance {
    /// The key, with which the ids of loads made from it begin. The name is the message `appliance-KEY`, with more
    /// search words in its attribute `also`.
    pub key: String,
    /// The electrical behavior.
    pub kind: LoadKind,
    /// The running power.
    pub running: Power,
    /// The starting power. From memory in every row.
    pub starting: Power,
    /// The ratio of real to apparent power. From memory in every row.
    pub power_factor: Ratio,
    /// Whether it usually runs for three hours or more.
    pub continuous: bool,
    /// The document that states `running`, empty if there is none.
    pub document: String,
    /// How well `running` was checked.
    pub mark: Mark,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Row {
    key: String,
    kind: String,
    running: String,
    starting: String,
    power_factor: String,
    continuous: bool,
    document: String,
    mark: Mark,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    appliance: Vec<Row>,
}

/// Returns all appliances in the order of the file, which is by use.
///
/// # Panics
/// Panics if the compiled-in file is invalid, which the tests rule out.
pub fn all() -> &'static [Appliance] {
    static TABLE: OnceLock<Vec<Appliance>> = OnceLock::new();
    TABLE.get_or_init(|| {
        let file: File = toml::from_str(include_str!("appliances.toml")).expect("the table is part of the program");
        file.appliance.into_iter().map(read).collect()
    })
}

/// Returns the appliance with this key.
pub fn named(key: &str) -> Option<&'static Appliance> {
    all().iter().find(|appliance| appliance.key == key)
}

fn read(row: Row) -> Appliance {
    let power = |text: &str| Power::parse(text, Round::Up).expect("a power of the table");
    Appliance {
        running: power(&row.running),
        starting: power(&row.starting),
        power_factor: Ratio::parse(&row.power_factor, Round::Down).expect("a ratio of the table"),
        kind: LoadKind::named(&row.kind).expect("a kind of the table"),
        key: row.key,
        continuous: row.continuous,
        document: row.document,
        mark: row.mark,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Units;
    use std::collections::BTreeSet;

    #[test]
    fn every_row_reads_and_makes_sense() {
        let keys: BTreeSet<&str> = all().iter().map(|a| a.key.as_str()).collect();
        assert_eq!(keys.len(), all().len(), "a key twice");
        assert!(all().len() >= 80);
        for a in all() {
            assert!(a.running > Power::ZERO && a.starting >= a.running, "{}", a.key);
            assert!((500..=1000).contains(&a.power_factor.permille()), "{}", a.key);
            assert_eq!(a.document.is_empty(), a.mark == Mark::Memory, "{}", a.key);
            assert!(crate::plan::Id::new(&a.key).is_some());
            if a.kind.heats() {
                assert_eq!(a.power_factor.permille(), 1000, "{}", a.key);
            }
        }
    }

    /// A 5-15P carries 15 A (NEMA WD 6, from memory). Heaters are rated at 125 V, so up to 1,875 W.
    #[test]
    fn none_asks_for_more_than_its_plug_carries() {
        for a in all() {
            let milliwatts = a.running.milliwatts();
            if a.kind.heats() {
                assert!(milliwatts <= 15 * 125_000, "{}", a.key);
            } else {
                assert!(milliwatts <= 15 * 120 * a.power_factor.permille(), "{}", a.key);
            }
        }
    }

    /// Heat for cooking is one kind and heat for rooms and beds another. A mobility scooter counts as medical, because
    /// its user goes nowhere without it.
    #[test]
    fn kinds_by_what_people_do_with_them() {
        for (kind, keys) in [
            (LoadKind::Cooker, &["coffee-maker", "kettle", "griddle", "waffle-iron", "water-heater"][..]),
            (LoadKind::Heater, &["heater", "heater-oil", "blanket", "heating-pad"]),
            (LoadKind::Medical, &["scooter", "cpap", "oxygen"]),
        ] {
            for key in keys {
                assert_eq!(named(key).map(|it| it.kind), Some(kind), "{key}");
            }
        }
    }

    /// The upper ends published by the US Department of Energy.
    #[test]
    fn published_figures() {
        for (key, watts) in [
            ("coffee-maker", 1200),
            ("toaster", 1400),
            ("hair-dryer", 1875),
            ("microwave-small", 1100),
            ("laptop", 50),
            ("blanket", 60),
            ("blanket-double", 100),
            ("fan-window", 250),
            ("refrigerator", 725),
        ] {
            let found = named(key).unwrap();
            assert_eq!(found.running.milliwatts(), watts * 1000, "{key}");
            assert_eq!(found.mark, Mark::Confirmed, "{key}");
        }
    }

    /// Names are listed with commas between them.
    #[test]
    fn every_one_has_a_name_without_a_comma() {
        for tag in ["en", "es", "es-ES", "fr", "fr-FR", "de"] {
            let words = crate::words::Words::new(tag, Units::Metric).expect("a language");
            for a in all() {
                assert!(words.has(&format!("appliance-{}.also", a.key)), "{tag} {}", a.key);
                let name = words.text(&format!("appliance-{}", a.key));
                assert!(!name.contains(',') && words.faults().is_empty(), "{tag} {name}");
            }
        }
    }
}

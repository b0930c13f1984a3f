//! What people usually plug in, by occasion, from `occasions.toml`.

use std::sync::OnceLock;

use serde::Deserialize;

/// An occasion with its usual appliances.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Occasion {
    /// The key. The name is the message `occasion-KEY`.
    pub key: String,
    /// The keys of its appliances in [`super::appliances`].
    pub appliances: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    occasion: Vec<Occasion>,
}

/// Returns all occasions in the order of the file.
///
/// # Panics
/// Panics if the compiled-in file is invalid, which the tests rule out.
pub fn all() -> &'static [Occasion] {
    static TABLE: OnceLock<Vec<Occasion>> = OnceLock::new();
    TABLE.get_or_init(|| {
        let file: File = toml::from_str(include_str!("occasions.toml")).expect("the table is part of the program");
        file.occasion
    })
}

/// Returns the occasion with this key.
pub fn named(key: &str) -> Option<&'static Occasion> {
    all().iter().find(|occasion| occasion.key == key)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::appliances;

    #[test]
    fn every_one_has_a_name_and_appliances_that_exist() {
        let words = crate::words::Words::english();
        for occasion in all() {
            assert!(words.has(&format!("occasion-{}", occasion.key)));
            assert!(occasion.appliances.len() > 2);
            for key in &occasion.appliances {
                assert!(appliances::named(key).is_some(), "{key}");
            }
        }
    }
}

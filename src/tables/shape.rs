//! Plug and receptacle configurations of NEMA WD 6, by their published names.
//!
//! Volts, amperes, poles and wires of each configuration are from memory, not verified against the standard.

use super::source::{Mark, Source};
use crate::quantity::{Current, Voltage};

/// The source of the configurations.
pub const SOURCE: Source = Source::new("NEMA WD 6", "", "", Mark::Memory);

/// The blade pattern that a plug shares with its receptacle.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Configuration {
    /// 1-15: two blades, 15 A 125 V, no ground.
    N1_15,
    /// 5-15: 15 A 125 V.
    #[default]
    N5_15,
    /// 5-20: 20 A 125 V.
    N5_20,
    /// TT-30: 30 A 120 V, the travel trailer shape.
    TT30,
    /// L5-20: 20 A 125 V, locking.
    L5_20,
    /// L5-30: 30 A 125 V, locking.
    L5_30,
    /// 6-20: 20 A 250 V.
    N6_20,
    /// L14-20: 20 A 125/250 V, locking.
    L14_20,
    /// L14-30: 30 A 125/250 V, locking.
    L14_30,
    /// 14-30: 30 A 125/250 V.
    N14_30,
    /// 14-50: 50 A 125/250 V.
    N14_50,
}

/// The conductors that a configuration provides, apart from ground.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Circuit {
    /// One leg and neutral, 120 V.
    OneLeg,
    /// Both legs, no neutral: 240 V only.
    TwoLegs,
    /// Both legs and neutral: 120 V on each and 240 V between.
    TwoLegsNeutral,
}

impl Circuit {
    /// Returns the number of conductors, without ground.
    #[must_use]
    pub const fn conductors(self) -> u8 {
        match self {
            Self::OneLeg | Self::TwoLegs => 2,
            Self::TwoLegsNeutral => 3,
        }
    }
}

impl Configuration {
    /// All configurations, in the order in which lists show them.
    pub const ALL: [Self; 11] = [
        Self::N5_15,
        Self::N5_20,
        Self::TT30,
        Self::L5_20,
        Self::L5_30,
        Self::L14_20,
        Self::L14_30,
        Self::N14_30,
        Self::N14_50,
        Self::N6_20,
        Self::N1_15,
    ];

    /// Returns the published name without the letter for plug or receptacle.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::N1_15 => "1-15",
            Self::N5_15 => "5-15",
            Self::N5_20 => "5-20",
            Self::TT30 => "TT-30",
            Self::L5_20 => "L5-20",
            Self::L5_30 => "L5-30",
            Self::N6_20 => "6-20",
            Self::L14_20 => "L14-20",
            Self::L14_30 => "L14-30",
            Self::N14_30 => "14-30",
            Self::N14_50 => "14-50",
        }
    }

    /// Returns the rated current.
    #[must_use]
    pub const fn rating(self) -> Current {
        Current::from_milliamps(match self {
            Self::N1_15 | Self::N5_15 => 15_000,
            Self::N5_20 | Self::L5_20 | Self::N6_20 | Self::L14_20 => 20_000,
            Self::TT30 | Self::L5_30 | Self::L14_30 | Self::N14_30 => 30_000,
            Self::N14_50 => 50_000,
        })
    }

    /// Returns the conductors that it provides.
    #[must_use]
    pub const fn circuit(self) -> Circuit {
        match self {
            Self::N1_15 | Self::N5_15 | Self::N5_20 | Self::TT30 | Self::L5_20 | Self::L5_30 => Circuit::OneLeg,
            Self::N6_20 => Circuit::TwoLegs,
            Self::L14_20 | Self::L14_30 | Self::N14_30 | Self::N14_50 => Circuit::TwoLegsNeutral,
        }
    }

    /// Whether it has a ground contact.
    #[must_use]
    pub const fn grounded(self) -> bool {
        !matches!(self, Self::N1_15)
    }

    /// Whether it is a household shape: 15 or 20 A at 120 V, straight blades.
    #[must_use]
    pub const fn household(self) -> bool {
        matches!(self, Self::N1_15 | Self::N5_15 | Self::N5_20)
    }

    /// Returns the nominal voltage between the conductors that a single load would use.
    #[must_use]
    pub const fn volts(self) -> Voltage {
        Voltage::from_millivolts(match self.circuit() {
            Circuit::OneLeg => 120_000,
            Circuit::TwoLegs | Circuit::TwoLegsNeutral => 240_000,
        })
    }
}

/// Adapters sold for campers, as plug and end (common practice). They keep a single circuit, and the end is no smaller
/// than the plug, so a breaker that suits the plug suits the end. Adapters from a larger plug to a smaller end are sold
/// too, but they are a trap.
const ADAPTERS: [(Configuration, Configuration); 2] =
    [(Configuration::L5_30, Configuration::TT30), (Configuration::N5_15, Configuration::TT30)];

macro_rules! half {
    ($(#[$doc:meta])* $name:ident, $letter:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub struct $name(pub Configuration);

        impl $name {
            /// Parses a published name with its letter. Ignores case, a missing hyphen after "L" or "TT", and a leading
            /// "NEMA".
            #[must_use]
            pub fn named(text: &str) -> Option<Self> {
                let squeeze = |s: &str| -> String {
                    let s: String = s.chars().filter(|c| !c.is_whitespace() && *c != '-' && *c != '_').collect();
                    s.to_ascii_uppercase()
                };
                let wanted = squeeze(text);
                let wanted = wanted.strip_prefix("NEMA").unwrap_or(&wanted);
                Configuration::ALL
                    .into_iter()
                    .find(|c| squeeze(&format!("{}{}", c.name(), $letter)) == wanted)
                    .map(Self)
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.pad(&format!("{}{}", self.0.name(), $letter))
            }
        }
    };
}

half!(/// The half with blades, such as `5-15P`.
    Plug, "P");
half!(/// The half with slots, such as `5-15R`.
    Receptacle, "R");

impl Plug {
    /// The shape of a bonding plug, which joins neutral to ground (common practice, no source).
    pub(crate) const BONDING: Self = Self(Configuration::N5_15);
}

impl Receptacle {
    /// Returns how many sockets a receptacle usually has: two for 5-15R and 5-20R, which are usually duplex, otherwise
    /// one (common practice, no source).
    #[must_use]
    pub const fn usual_sockets(self) -> u8 {
        match self.0 {
            Configuration::N5_15 | Configuration::N5_20 => 2,
            _ => 1,
        }
    }

    /// Returns the adapter sold for a plug that does not fit here, as its own plug and end.
    #[must_use]
    pub fn adapter(self, plug: Plug) -> Option<(Plug, Self)> {
        let sold = ADAPTERS.iter().map(|(plug, end)| (Plug(*plug), Self(*end)));
        let mut fits = sold.filter(|(own, end)| self.takes(*own) && end.takes(plug));
        fits.next().filter(|_| !self.takes(plug))
    }

    /// Whether the plug fits. Besides its own shape, a 5-20R takes a 5-15P, and both take the two-blade 1-15P (NEMA
    /// WD 6, from memory).
    #[must_use]
    pub fn takes(self, plug: Plug) -> bool {
        use Configuration::{N1_15, N5_15, N5_20};
        self.0 == plug.0 || matches!((self.0, plug.0), (N5_20, N5_15) | (N5_15 | N5_20, N1_15))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_read_back() {
        for configuration in Configuration::ALL {
            let receptacle = Receptacle(configuration);
            assert_eq!(Receptacle::named(&receptacle.to_string()), Some(receptacle));
        }
        assert_eq!(Plug::named("tt30p"), Some(Plug(Configuration::TT30)));
        assert_eq!(Plug::named("NEMA 5-15P"), Some(Plug(Configuration::N5_15)));
        assert_eq!(Plug::named("5-15R"), None);
    }

    #[test]
    fn a_fifteen_ampere_plug_fits_upwards_and_not_down() {
        let (small, large) = (Configuration::N5_15, Configuration::N5_20);
        assert!(Receptacle(large).takes(Plug(small)));
        assert!(!Receptacle(small).takes(Plug(large)));
    }
}

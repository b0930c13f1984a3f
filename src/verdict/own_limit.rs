//! The most that a generator which limits its own current can drive through a part.

use crate::plan::{Answer, Plan};
use crate::quantity::{Current, Power, Ratio};
use crate::supply::Supply;

/// The share of its marking that a breaker may pass for an hour (UL 489, from a secondary copy).
const HELD: Ratio = Ratio::from_permille(1350);

/// The current past which a generator stops by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct OwnLimit {
    /// The current it sustains.
    pub hours: Current,
    /// The current it gives before it stops.
    pub peak: Current,
}

impl OwnLimit {
    /// Returns the least rating of a part that it [spares](Self::spares).
    pub(crate) fn least_rating(self) -> Current {
        let by_peak = (self.peak.milliamps() * 1000 + HELD.permille() - 1) / HELD.permille();
        self.hours.max(Current::from_milliamps(by_peak))
    }

    /// Whether a part of this rating stands everything the generator can give: it sustains no more than the rating, and
    /// its peak is no more than a breaker of that rating may pass for an hour.
    pub(crate) fn spares(self, rating: Current) -> bool {
        self.hours <= rating && self.peak <= rating.scaled_down(HELD)
    }
}

/// Returns the generator's limit on any leg; `None` unless it is known to limit its current and its peak is known. This
/// is the worse case that the page of rule OVER001 describes.
pub(crate) fn own_limit(plan: &Plan, supply: &Supply) -> Option<OwnLimit> {
    let set = &plan.generator;
    // One that is not bought yet may turn out larger.
    if set.inverter != Answer::Known(true) || set.bought == Some(false) {
        return None;
    }
    // As marked, not derated. The electronics limit the current, not the engine: thin or hot air and another fuel stop
    // no overload, and the trade's deratings exceed what some generators lose.
    let peak = *set.peak.known()?;
    let hours = set.rated.or(peak);
    let amps = |power: Power| {
        let all = Power::from_milliwatts(power.milliwatts().saturating_mul(set.sets()));
        Current::of_load(all, Ratio::from_permille(1000), supply.volts)
    };
    Some(OwnLimit { hours: amps(hours), peak: amps(peak.max(hours)) })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::testing::{edited, plan};

    fn own(edits: &[(&str, &str)]) -> Option<(i64, i64)> {
        let mut all = vec![("inverter = false", "inverter = true")];
        all.extend_from_slice(edits);
        let plan = plan(&edited(&all));
        let own = own_limit(&plan, &Supply::build(&plan))?;
        Some((own.hours.milliamps(), own.peak.milliamps()))
    }

    /// 3600 W at 120 V are 30 A and 4500 W are 37.5 A, at altitude, in heat and on another fuel as well.
    #[test]
    fn only_what_is_marked_counts() {
        for edit in [
            ("altitude = \"0 ft\"", "altitude = \"9000 ft\""),
            ("altitude = \"0 ft\"", "altitude = \"unknown\""),
            ("air = \"59 °F\"", "air = \"110 °F\""),
            ("fuel = \"gasoline\"", "fuel = \"propane\"\nrated_on = \"gasoline\""),
        ] {
            assert_eq!(own(&[edit]), Some((30_000, 37_500)), "{edit:?}");
        }
        // If the sustained power is unknown, it is taken for the peak.
        assert_eq!(own(&[("rated = \"3600 W\"", "rated = \"unknown\"")]), Some((37_500, 37_500)));
        assert_eq!(own(&[("peak = \"4500 W\"", "")]), None);
        assert_eq!(own(&[("peak = \"4500 W\"", "peak = \"4500 W\"\nbought = false")]), None);
        assert_eq!(own(&[("inverter = true", "inverter = \"unknown\"")]), None);
        assert_eq!(own(&[("inverter = true", "inverter = false")]), None);
    }

    /// All of the current may be on one leg, from both sets, whatever the kit between them is rated for.
    #[test]
    fn legs_and_kits_stop_nothing() {
        let two_legs = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
        assert_eq!(own(&[two_legs]), Some((30_000, 37_500)));
        let joined = ("inverter = true", "inverter = true\nparallel = { sets = 2, limit = \"40 A\", kit = true }");
        assert_eq!(own(&[joined]), Some((60_000, 75_000)));
    }

    /// UL 489 (secondary): a 15 A breaker may pass 20.25 A for an hour.
    #[test]
    fn a_part_stands_what_its_own_breaker_would_let_pass() {
        let amps = Current::from_milliamps;
        for (hours, peak, stands) in
            [(15_000, 20_250, true), (14_300, 18_400, true), (15_001, 20_250, false), (15_000, 20_251, false)]
        {
            let own = OwnLimit { hours: amps(hours), peak: amps(peak) };
            assert_eq!(own.spares(amps(15_000)), stands, "{own:?}");
            let least = own.least_rating();
            assert!(own.spares(least) && !own.spares(least - amps(1)), "{own:?}");
        }
    }
}

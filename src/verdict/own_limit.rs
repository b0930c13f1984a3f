//! The most that a generator which limits its own current can drive through any part.

use crate::plan::{Answer, Plan};
use crate::quantity::{Current, Power, Ratio};
use crate::supply::Supply;

/// A breaker may let this share of its marking pass for an hour (UL 489, from a secondary copy).
const HELD: Ratio = Ratio::from_permille(1350);

/// The current of a generator past which it stops by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct OwnLimit {
    /// What it keeps up.
    pub hours: Current,
    /// What it gives before it stops.
    pub peak: Current,
}

impl OwnLimit {
    /// The least rating of a part that it [spares](Self::spares).
    pub(crate) fn least_rating(self) -> Current {
        let by_peak = (self.peak.milliamps() * 1000 + HELD.permille() - 1) / HELD.permille();
        self.hours.max(Current::from_milliamps(by_peak))
    }

    /// Whether a part of this rating stands all that the generator can give: it keeps up no more, and its
    /// peak is no more than a breaker of that rating may let pass for an hour.
    pub(crate) fn spares(self, rating: Current) -> bool {
        self.hours <= rating && self.peak <= rating.scaled_down(HELD)
    }
}

/// That current, on any leg, of a generator that is known to limit it. What the page of rule OVER001 says of
/// the worse case is done here.
pub(crate) fn own_limit(plan: &Plan, supply: &Supply) -> Option<OwnLimit> {
    let set = &plan.generator;
    if set.inverter != Answer::Known(true) {
        return None;
    }
    // As marked. Its electronics limit the current, not its engine: thin or hot air and another fuel stop no
    // overload, and what the trade takes off for them is more than some sets lose.
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

    /// 3600 W at 120 V are 30 A, 4500 W 37.5 A, on a mountain, in the heat and on another fuel as well.
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
        // Nobody said what it keeps up: then all of its peak.
        assert_eq!(own(&[("rated = \"3600 W\"", "rated = \"unknown\"")]), Some((37_500, 37_500)));
        assert_eq!(own(&[("peak = \"4500 W\"", "")]), None);
        assert_eq!(own(&[("inverter = true", "inverter = \"unknown\"")]), None);
        assert_eq!(own(&[("inverter = true", "inverter = false")]), None);
    }

    /// All of it on one leg, of both sets, whatever the kit between them is for.
    #[test]
    fn legs_and_kits_stop_nothing() {
        let two_legs = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
        assert_eq!(own(&[two_legs]), Some((30_000, 37_500)));
        let joined = ("inverter = true", "inverter = true\nparallel = { sets = 2, limit = \"40 A\", kit = true }");
        assert_eq!(own(&[joined]), Some((60_000, 75_000)));
    }

    /// UL 489 (secondary): a breaker of 15 A may let 20.25 A pass for an hour.
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

//! What moving the generator farther away on a longer cord costs in volts, and gains in quiet.
//!
//! Each point is a whole plan with one cord of another length. Where loads plug in and what runs together stay as they
//! are.

use super::noise::{busiest, level_at, source};
use super::{Report, drops};
use crate::loads;
use crate::plan::{Answer, Id, Plan};
use crate::quantity::{Length, Percent, SoundLevel, Voltage, narrow};
use crate::supply::Supply;
use crate::tables::exhaust::AMPLE;

/// The load at the end of a cord that loses the largest share of its volts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Farther<'a> {
    plan: &'a Plan,
    report: &'a Report,
    /// The longest cord on the way to it.
    pub cord: &'a Id,
    /// The load.
    pub load: &'a Id,
    /// The nominal voltage there.
    pub nominal: Voltage,
    /// The length of the cord.
    pub length: Length,
}

/// The situation with a cord of some length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Place {
    /// The cord's length.
    pub length: Length,
    /// Volts left at the load.
    pub volts: Voltage,
    /// The sound level where people sleep at the busiest minute, with the generator moved away from them by as much as
    /// the cord is longer. `None` where the plan does not say, or exhaust rules out standing there.
    pub noise: Option<SoundLevel>,
}

impl<'a> Farther<'a> {
    /// Finds the load that loses the largest share and the longest cord on its way. `None` if nothing that runs hangs
    /// on a cord of known length.
    #[must_use]
    pub fn of(plan: &'a Plan, report: &'a Report) -> Option<Self> {
        let mut drops: Vec<_> = report.figures.drops.iter().collect();
        drops.sort_by_key(|drop| std::cmp::Reverse(drop.percent_running));
        drops.into_iter().find_map(|drop| {
            let limit = report.figures.limit(&drop.receptacle)?;
            let (cord, length) = plan
                .cords
                .iter()
                .filter(|cord| limit.path.contains(&cord.id))
                .filter_map(|cord| Some((&cord.id, *cord.length.known()?)))
                .max_by_key(|(_, length)| *length)?;
            Some(Self { plan, report, cord, load: &drop.at, nominal: limit.volts, length })
        })
    }

    /// Returns the nominal voltage less this share, rounded down.
    pub(crate) fn left(&self, lost: Percent) -> Voltage {
        let nominal = i128::from(self.nominal.millivolts());
        let left = nominal * i128::from(100_000 - lost.millipercent()) / 100_000;
        Voltage::from_millivolts(narrow(left))
    }

    /// Returns the situation with a cord of this length. `None` if the load is no longer placed, or may not run.
    #[must_use]
    pub fn with(&self, length: Length) -> Option<Place> {
        let mut plan = self.plan.clone();
        let cord = plan.cord_mut(self.cord)?;
        cord.length = Answer::Known(length);
        let supply = Supply::build(&plan);
        let (units, _) = loads::units(&plan);
        let scene = drops::Scene::new(&supply, &units, &self.report.figures.sharing);
        let own = scene.placed.iter().position(|it| it.unit.id == *self.load)?;
        let drop = scene.drop_at(own, &mut drops::Settled::new())?;
        Some(Place { length, volts: drop.volts_left, noise: self.noise(length) })
    }

    fn noise(&self, length: Length) -> Option<SoundLevel> {
        let noise = source(self.plan)?;
        let away = *self.plan.site.sleepers_at.known()? + length - self.length;
        let (busy, _) = busiest(noise, &self.report.figures.energy);
        (away >= AMPLE).then(|| level_at(busy, away))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::judge::build;
    use crate::plan::demo::MENDED;

    fn feet(feet: i64) -> Length {
        Length::from_millimetres(feet * 3048 / 10)
    }

    #[test]
    fn the_plan_itself_lies_on_the_curve() {
        let joined = "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = true }";
        for text in [MENDED, &MENDED.replacen("inverter = true", joined, 1)] {
            lies_on_the_curve(text);
        }
    }

    fn lies_on_the_curve(text: &str) {
        let plan = crate::plan::read(text).expect("the demo reads");
        let report = build(&plan);
        let farther = Farther::of(&plan, &report).expect("a cord");
        let here = farther.with(farther.length).expect("a place");
        let drop = report.figures.drops.iter();
        let drop = drop.max_by_key(|drop| drop.percent_running);
        assert_eq!(Some(here.volts), drop.map(|drop| drop.volts_left));
        assert_eq!(here.noise, report.figures.noise.at_sleepers_busiest_dba);
    }

    #[test]
    fn farther_is_quieter_and_lower() {
        let plan = crate::plan::read(MENDED).expect("the demo reads");
        let report = build(&plan);
        let farther = Farther::of(&plan, &report).expect("a cord");
        let place = |length| farther.with(length).expect("a place");
        let (near, far) = (place(farther.length), place(farther.length + feet(100)));
        assert!(far.volts < near.volts && far.noise < near.noise);
        // From the published table: twice the distance is 6.02 dB less.
        let sleepers = *plan.site.sleepers_at.known().expect("known");
        let twice = place(farther.length + sleepers).noise.expect("a level");
        let lost = near.noise.expect("a level").millidecibels() - twice.millidecibels();
        assert!((lost - 6_020).abs() <= 2, "{lost}");
        // Where exhaust rules out standing, no level is given.
        let near = farther.length - (sleepers - AMPLE);
        assert!(near > Length::from_millimetres(2) && place(near).noise.is_some());
        assert_eq!(place(near - Length::from_millimetres(1)).noise, None);
    }

    #[test]
    fn a_plan_without_a_cord_has_no_curve() {
        let plan = crate::plan::read(MENDED).expect("the demo reads");
        let mut report = build(&plan);
        report.figures.drops.clear();
        assert_eq!(Farther::of(&plan, &report), None);
    }
}

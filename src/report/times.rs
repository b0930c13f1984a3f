//! When the plan needs each of the sets that may run together.

use super::Report;
use crate::plan::{Id, Plan, Span};
use crate::tables::day::PARTS;

impl Report {
    /// Returns, for each set of [`super::Sharing::together`], the keys of the parts of the day for which it is the
    /// first that contains everything the plan wants on. A load without hours is never wanted at any particular time.
    #[must_use]
    pub fn times(&self, plan: &Plan) -> Vec<Vec<&'static str>> {
        let sharing = &self.figures.sharing;
        let of = |unit: &Id| plan.load(&self.figures.load(unit)?.of);
        let mut times = vec![Vec::new(); sharing.together.len()];
        for (key, time) in PARTS {
            for minute in (0..Span::DAY).filter(|minute| time.contains(*minute)) {
                let on = |load: &&Id| of(load).is_some_and(|load| load.wants(minute));
                let placed = sharing.placed.iter().map(|placed| &placed.load);
                let wanted: Vec<&Id> = placed.filter(on).collect();
                let holds = |set: &Vec<Id>| wanted.iter().all(|load| set.contains(load));
                let Some(first) = sharing.together.iter().position(holds) else {
                    continue;
                };
                if !wanted.is_empty() && !times[first].contains(&key) {
                    times[first].push(key);
                }
            }
        }
        times
    }
}

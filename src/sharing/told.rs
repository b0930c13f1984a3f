//! A sharing in terms of ids, and what would mend it.

use serde::Serialize;

use crate::loads::LoadFacts;
use crate::plan::Id;
use crate::quantity::Power;
use crate::value::{Finding, Values};

/// A load at a receptacle. A load with a count has one numbered entry per unit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Placed {
    /// The load, numbered as in `lamp.2` if there are several.
    pub load: Id,
    /// The receptacle.
    pub at: Id,
}

/// A load without a place, and why.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Unplaced {
    /// The load.
    pub load: Id,
    /// `no-receptacle-fits`, `no-room` or `too-large`. `no-power`: the part that the plan puts it on is not plugged in.
    /// `refused`: no appliance may be plugged in where it fits. `impossible`: the plan says that it draws more than its
    /// own plug is rated for. `hot`: it was felt hot, or gave a shock.
    pub reason: &'static str,
    /// For a load that cannot have the place the plan gives it, the receptacles with a free socket that can run it. If
    /// some have a working GFCI, only those.
    pub free: Vec<Id>,
}

/// One step of switching on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct StartStep {
    /// The load to switch on.
    pub load: Id,
    /// The greatest power during the step.
    pub peak_watts: Power,
}

/// Whether some order of switching on holds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum StartVerdict {
    /// Every order holds: any one may start with all the others running.
    #[default]
    AnyOrder,
    /// Some order holds, but not every one.
    ThisOrder,
    /// No order holds.
    NoOrder,
}

/// The first set of `together`, and what else could run with it once started.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Start {
    /// Whether all of these can be started.
    pub verdict: StartVerdict,
    /// The first set of `together`, and the loads that only the moment of starting keeps out of it.
    pub loads: Vec<Id>,
    /// An order that holds. Empty if there is none.
    pub order: Vec<Id>,
    /// If no order holds, the load without which one does. Of several, a wish before a must, then the one that needs
    /// the most to start.
    pub reason: Option<Id>,
}

/// A receptacle whose loads may not all run at once.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Clash {
    /// The receptacle.
    pub at: Id,
    /// The smallest sets of its loads that may not run at once, or all of them as one set where there are too many to
    /// tell. Empty if no two of them may.
    pub never: Vec<Vec<Id>>,
}

/// Where each load plugs in, and what may run together.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Sharing {
    /// The placed loads.
    pub placed: Vec<Placed>,
    /// The loads without a place.
    pub unplaced: Vec<Unplaced>,
    /// Every largest set that may run at once, regardless of hours, the most important first. With each load it has
    /// what a life depends on, or might, and may be on at the same time of day. Of interchangeable units of one load at
    /// one receptacle it names the first, and any others do as well.
    pub together: Vec<Vec<Id>>,
    /// Every smallest set that may not run at once, likewise, the smallest first. A set of one is a load too large for
    /// where it is, and each of those is here even if others are missing.
    pub never: Vec<Vec<Id>>,
    /// Every receptacle whose loads may not all run at once, even if `together` and `never` are not complete. The verdict
    /// on it tells them.
    #[serde(skip)]
    pub(crate) clashes: Vec<Clash>,
    /// What a life depends on, or might, and has power. It takes no turns: it counts as on with everything that may be
    /// on at the same time of day.
    #[serde(skip)]
    pub(crate) stays_on: Vec<Id>,
    /// An order of switching on for the first set of `together`.
    pub start_order: Vec<StartStep>,
    /// Whether that order stays below the peak at every step.
    pub start_holds: bool,
    /// Whether the order of switching on matters.
    pub start: Start,
    /// The loads of `start_order` in the order to switch off: the largest first, and last what a life depends on, or
    /// might. Any order of switching off holds.
    pub stop_order: Vec<Id>,
    /// The fewest groups that take turns, if not everything fits whenever its hours want it. Otherwise empty. A load is
    /// in every group that it fits into, so a load in all of them need not wait. What a life depends on takes no turns:
    /// it is in each group with a load that may be on at the same time of day.
    pub turns: Vec<Vec<Id>>,
    /// Loads in no turn and in no set of `together`: they can run, but not together with what a life depends on and may
    /// be on at the same time of day. So these stay off while that runs.
    pub off: Vec<Id>,
    /// The cheapest changes that clear every danger and serve every must, and what they bring about at no extra cost,
    /// in an order in which each can be made. Filled only on request (see [`crate::mend`]).
    pub repairs: Vec<Repair>,
    /// The effect of all repairs together, likewise.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mended: Option<Effect>,
    /// Whether the placing is proven best.
    pub proven: bool,
    /// Whether `together` and `never` are complete.
    pub families_complete: bool,
}

impl Sharing {
    /// Returns the receptacle where a load is placed, if it is.
    pub(crate) fn place(&self, load: &Id) -> Option<&Id> {
        self.placed.iter().find(|placed| placed.load == *load).map(|placed| &placed.at)
    }

    /// Returns why a load has no place, if it has none.
    pub(crate) fn without_place(&self, load: &Id) -> Option<&Unplaced> {
        self.unplaced.iter().find(|lost| lost.load == *load)
    }

    /// Whether a load may run at all. What is listed for one unit holds for the other units of its load at the same
    /// place. `of` maps a unit to its load in the plan.
    pub(crate) fn may_run<'a>(&self, load: &Id, of: impl Fn(&Id) -> Option<&'a Id>) -> bool {
        let alike = |other: &Id| {
            let of = of(load).is_some_and(|it| Some(it) == of(other));
            of && self.place(load).is_some_and(|it| Some(it) == self.place(other))
        };
        let mut alone = self.never.iter().filter(|set| set.len() == 1);
        !alone.any(|set| set[0] == *load || alike(&set[0]))
    }
}

/// A change that would help.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Repair {
    /// Its message key.
    pub key: &'static str,
    /// The parts or loads that change.
    pub about: Vec<Id>,
    /// The values its message needs.
    pub values: Values,
    /// Its cost on the published list.
    pub cost: u32,
}

/// What is wrong with a plan, counted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Tally {
    /// Troubles that are dangers.
    pub dangers: usize,
    /// Troubles that are warnings.
    pub warnings: usize,
    /// Musts without a place, or that cannot all be on when they are wanted.
    pub unserved_musts: usize,
    /// Loads of the original plan that are left at home: neither served nor counted as unserved.
    pub at_home: usize,
}

impl Tally {
    /// Whether there is neither a danger nor an unserved must.
    #[must_use]
    pub const fn clear(&self) -> bool {
        self.dangers == 0 && self.unserved_musts == 0
    }
}

/// The effect of all repairs together.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Effect {
    /// The plan as it is.
    pub before: Tally,
    /// The plan with every repair.
    pub after: Tally,
    /// The total cost on the published list.
    pub cost: u32,
    /// Whether the search was complete: nothing cheaper on the list does as much.
    pub proven: bool,
    /// Whether something is left, and the search stopped before it had tried everything, so that a change might still
    /// clear it.
    pub stopped: bool,
    /// What has no place after every repair, and why. Wishes are not promised a place.
    pub unplaced: Vec<Unplaced>,
    /// The dangers and warnings that remain after every repair, one for each trouble.
    pub left: Vec<Finding>,
    /// Whether loads take turns after every repair, because not all can run whenever they are wanted.
    pub turns: bool,
    /// The loads after every repair, whose names the rest uses.
    #[serde(skip)]
    pub loads: Vec<LoadFacts>,
}

//! What a sharing is, told in ids, and what would mend it.

use serde::Serialize;

use crate::loads::LoadFacts;
use crate::plan::Id;
use crate::quantity::Power;
use crate::value::{Finding, Values};

/// A load at a receptacle. A load with a count of several has one entry for each, numbered.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Placed {
    /// The load; of several, `lamp.2`.
    pub load: Id,
    /// The receptacle.
    pub at: Id,
}

/// A load that found no place, and why.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Unplaced {
    /// The load.
    pub load: Id,
    /// `no-receptacle-fits`, `no-room` or `too-large`; `no-power`: the part that the plan puts it on is plugged
    /// into nothing; `refused`: no appliance may be plugged in where it fits; `impossible`: the plan says that
    /// it draws more than its own plug is rated for; or `hot`: it was felt hot, or gave a shock.
    pub reason: &'static str,
    /// Of a load that has no place where the plan puts it: the receptacles with a free socket that can run it, only
    /// those with a working GFCI where there are any.
    pub free: Vec<Id>,
}

/// One step of starting up.
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
    /// Every order holds: with all the others running, any one of them may start.
    #[default]
    AnyOrder,
    /// Some order holds, and not every one.
    ThisOrder,
    /// None holds.
    NoOrder,
}

/// The first set of `together`, and what else could run beside it once it is started.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Start {
    /// Whether all of these can be started.
    pub verdict: StartVerdict,
    /// The loads: the first set of `together`, and those that only the moment of starting keeps
    /// out of it.
    pub loads: Vec<Id>,
    /// An order that holds; none when there is none.
    pub order: Vec<Id>,
    /// When no order holds: the load without which one does. Of several, a wish before a must,
    /// then the one that asks most for starting.
    pub reason: Option<Id>,
}

/// Who plugs in where and what may run together.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Sharing {
    /// The placing.
    pub placed: Vec<Placed>,
    /// What found no place.
    pub unplaced: Vec<Unplaced>,
    /// Every largest set that may run at once, hours not asked, the one that matters most first. Of
    /// loads of one count at one receptacle it names the first ones; any others of them do as well.
    pub together: Vec<Vec<Id>>,
    /// Every smallest set that may not, likewise, the smallest first. A set of one load is a load
    /// that is too large for where it is.
    pub never: Vec<Vec<Id>>,
    /// An order to switch on, for the first set of `together`.
    pub start_order: Vec<StartStep>,
    /// Whether that order stays below the peak at every step.
    pub start_holds: bool,
    /// Whether it matters in what order things are switched on.
    pub start: Start,
    /// The same loads as in `start_order`, to switch off: the largest first, and last what a life
    /// depends on, or may. Any order of switching off holds.
    pub stop_order: Vec<Id>,
    /// Fewest groups when not everything fits whenever its hours want it; else none. A load is in
    /// every group it fits into, so those in all of them need not wait.
    pub turns: Vec<Vec<Id>>,
    /// What is in no turn: it can run, but not beside what a life depends on, when both are wanted.
    /// That is in every turn, and this stays off for it.
    pub off: Vec<Id>,
    /// The cheapest changes that clear every danger and serve every must, and what they bring about at
    /// no cost of its own, in an order in which each finds what it needs. Only where they were asked
    /// for ([`crate::mend`]).
    pub repairs: Vec<Repair>,
    /// What they do together, likewise.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mended: Option<Effect>,
    /// Whether the placing is proved best.
    pub proven: bool,
    /// Whether `together` and `never` are complete.
    pub families_complete: bool,
}

impl Sharing {
    /// Where a load has its place, if it has one.
    pub(crate) fn place(&self, load: &Id) -> Option<&Id> {
        self.placed.iter().find(|placed| placed.load == *load).map(|placed| &placed.at)
    }

    /// Why a load has no place, if it has none.
    pub(crate) fn without_place(&self, load: &Id) -> Option<&Unplaced> {
        self.unplaced.iter().find(|lost| lost.load == *load)
    }

    /// Whether a load may run at all. What is told of one of several alike at one place holds for each of them:
    /// `of` tells the load of the plan that one is of.
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
    /// The parts or loads changed.
    pub about: Vec<Id>,
    /// Its numbers.
    pub values: Values,
    /// Its cost on the stated list.
    pub cost: u32,
}

/// What is wrong with a plan, counted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Tally {
    /// Troubles of danger.
    pub dangers: usize,
    /// Troubles of warning.
    pub warnings: usize,
    /// Musts that have no place, or that cannot all be on when they are wanted.
    pub unserved_musts: usize,
    /// Things of the plan as it is that are left at home: neither served nor counted among those that are not.
    pub at_home: usize,
}

impl Tally {
    /// Whether there is neither a danger nor a must that is not served.
    #[must_use]
    pub const fn clear(&self) -> bool {
        self.dangers == 0 && self.unserved_musts == 0
    }
}

/// What all repairs together do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Effect {
    /// As the plan is.
    pub before: Tally,
    /// With every repair made.
    pub after: Tally,
    /// What all of it costs on the stated list.
    pub cost: u32,
    /// Whether the search came to its end: nothing cheaper that the list reaches does as much.
    pub proven: bool,
    /// Whether something is left and the search was stopped before it had tried everything: there may be a change
    /// that clears it.
    pub stopped: bool,
    /// What has no place with every repair made, and why: of wishes nothing is promised.
    pub unplaced: Vec<Unplaced>,
    /// The dangers and warnings that stay with every repair made, one of each trouble.
    pub left: Vec<Finding>,
    /// Whether things take turns with every repair made, since not all can run whenever they are wanted.
    pub turns: bool,
    /// The loads with every repair made, by whose names the rest is told.
    #[serde(skip)]
    pub loads: Vec<LoadFacts>,
}

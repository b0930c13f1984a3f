//! Placing: which loads are served and where each is plugged in, for the whole day.
//!
//! In order of priority: the greatest weight of musts, then of wishes, then the least cost of places, then the lowest
//! maximum use of the balanced rows, which counts only beyond what is enough. The first two are one search for the least
//! weight left out. The others repeatedly ask whether the same weight still fits at a lower cost, or with every
//! balanced row cut down further. Of equal placings, the result is one in which no single load could be at an earlier
//! place, or be served instead of a later one.
//!
//! | file | contents |
//! | --- | --- |
//! | [`draft`] | a good first answer by small changes, and the choice among equals |
//! | [`search`] | the search: which, then where |
//! | [`table`] | the rows at each moment, as one search sees them |
//! | [`bound`] | what must be left out for want of room or sockets |
//!
//! Every pruning step comes with its proof. Other methods were measured on the given cases: prices on limits (the bound
//! of the linear relaxation), exact sums of sizes, a memory of failed states, and solving each part of the tree by
//! itself. None of them is needed to prove any case, and all take longer than they save.

mod bound;
mod draft;
mod search;
mod table;

use super::budget::Budget;
use super::model::{Model, Places};
use draft::Draft;
use search::Search;
use table::Alike;

/// The worth of a placing besides the weight it leaves out: its cost, then its greatest use in thousandths. Less is
/// better.
type Worth = [i64; 2];
/// The upper limits of both.
const ALL: Worth = [i64::MAX, 1000];

/// A placing and what is known about it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placing {
    /// Where each load is plugged in. `None` is not served.
    pub at: Vec<Option<usize>>,
    /// The weight of the served musts and wishes.
    pub weights: (u64, u64),
    /// The greatest use, in thousandths.
    pub use_permille: i64,
    /// Whether no placing is better.
    pub proven: bool,
    /// An upper bound on the weight of any placing.
    pub weights_at_most: (u64, u64),
    /// A lower bound on the use of any placing of that weight and cost.
    pub use_at_least: i64,
}

/// Finds the best placing within a budget. Small changes give a first answer, and for most plans the search only has to
/// show that there is none better.
#[must_use]
pub fn place(model: &Model, budget: &mut Budget) -> Placing {
    let tariff = Tariff::of(model);
    let mut open = Open::new(model, &tariff, budget);
    let alike = Alike::of(model, budget);
    if !open.settled() {
        open.serve(&alike, budget);
        open.least_cost(budget);
        open.lower(0, &alike, budget);
        open.lower(1, &alike, budget);
    }
    open.placing(&alike, budget)
}

/// The best placing so far, and the bounds on any placing.
struct Open<'a> {
    model: &'a Model,
    tariff: &'a Tariff,
    total: u64,
    draft: Draft<'a>,
    /// The loss of the draft, and a lower bound on any loss.
    loss: u64,
    least_loss: u64,
    /// The cost and use of the draft, and lower bounds on them: on the cost at this loss, and on the use at this cost.
    worth: Worth,
    least: Worth,
}

impl<'a> Open<'a> {
    fn new(model: &'a Model, tariff: &'a Tariff, budget: &mut Budget) -> Self {
        let mut open = Self {
            model,
            tariff,
            total: tariff.loss.iter().sum(),
            draft: Draft::new(model, tariff),
            loss: u64::MAX,
            least_loss: 0,
            worth: [0, 0],
            least: [0, model.enough],
        };
        budget.share(1, 4, |budget| open.mend(budget));
        open
    }

    fn settled(&self) -> bool {
        self.loss == self.least_loss && self.worth == self.least
    }

    /// Improves the placing by small changes.
    fn mend(&mut self, budget: &mut Budget) {
        self.draft.mend(budget);
        let (loss, worth) = self.draft.worth();
        if loss < self.loss {
            self.least[0] = 0;
        }
        if loss < self.loss || worth[0] < self.worth[0] {
            self.least[1] = self.model.enough;
        }
        (self.loss, self.worth) = (loss, worth);
    }

    /// Adopts a better placing.
    fn take(&mut self, at: &Places, budget: &mut Budget) {
        self.draft.set(at);
        self.mend(budget);
    }

    /// Looks for a placing that loses less, until there is none.
    fn serve(&mut self, alike: &Alike, budget: &mut Budget) {
        if self.loss == self.least_loss {
            return;
        }
        let mut search = Search::new(self.model, self.tariff, alike, ALL, self.loss, false);
        let complete = search.run(budget);
        if let Some(at) = search.best.take() {
            self.take(&at, budget);
        }
        let bound = if complete { self.loss } else { search.root_loss };
        self.least_loss = self.least_loss.max(bound.min(self.loss));
    }

    /// Finds a lower bound on the cost of any placing with this loss.
    ///
    /// Proof. A load that weighs more than may be left out is either at one of its cheapest places, or costs at least
    /// the difference to its next cheapest places more. The loads at their cheapest places fit there with the rest
    /// removed. So take the problem of placing loads only at their cheapest places, where leaving one out loses that
    /// difference. Its least loss is no more than the extra cost of any real placing.
    fn least_cost(&mut self, budget: &mut Budget) {
        if self.loss > self.least_loss || self.worth[0] == self.least[0] {
            return;
        }
        let mut near = self.model.clone();
        near.costs.clear();
        let mut least = 0;
        let mut more = vec![0; near.loads.len()];
        for (index, load) in near.loads.iter_mut().enumerate() {
            let places = std::mem::take(&mut load.allowed);
            if self.tariff.loss[index] <= self.loss {
                continue;
            }
            let cost = |place: &usize| self.model.cost(index, *place);
            let cheapest = places.iter().map(cost).min().unwrap_or(0);
            least += cheapest;
            let others = places.iter().map(cost).filter(|cost| *cost > cheapest);
            if let Some(next) = others.min() {
                more[index] = (next - cheapest).unsigned_abs();
                load.allowed = places;
                load.allowed.retain(|place| cost(place) == cheapest);
            }
        }
        let tariff = Tariff { loss: more, wishes: 0 };
        let alike = Alike::of(&near, budget);
        let mut search = Search::new(&near, &tariff, &alike, ALL, u64::MAX / 8, false);
        let lost = if budget.share(1, 4, |budget| search.run(budget)) { search.allowance } else { search.root_loss };
        self.least[0] = least + i64::try_from(lost).unwrap_or(0);
    }

    /// Lowers the cost or the greatest use of a placing that is optimal in everything before it.
    ///
    /// Whether the same weight fits within a given use is monotone: a row cut down further admits no set that it did
    /// not admit before. The same goes for cost. Small changes mostly find the least at once, so the first question is
    /// whether one less will do. After a yes the step doubles, up to half of the range, and after a no the range is
    /// halved.
    fn lower(&mut self, what: usize, alike: &Alike, budget: &mut Budget) {
        let mut less = 1;
        while self.loss == self.least_loss
            && self.worth[..what] == self.least[..what]
            && self.least[what] < self.worth[what]
        {
            let (low, high) = (self.least[what], self.worth[what]);
            let asked = (high - less).max(low.midpoint(high));
            let mut cut = ALL;
            cut[..what].copy_from_slice(&self.worth[..what]);
            cut[what] = asked;
            let mut search = Search::new(self.model, self.tariff, alike, cut, self.loss + 1, true);
            let settled = search.run(budget);
            if let Some(at) = search.best.take() {
                self.take(&at, budget);
                less *= 2;
            } else if settled {
                self.least[what] = asked + 1;
                less = high - asked - 1;
            } else {
                return;
            }
        }
    }

    fn placing(mut self, alike: &Alike, budget: &mut Budget) -> Placing {
        let proven = self.settled();
        self.draft.press(budget);
        let mut at = self.draft.at().to_vec();
        alike.order(&mut at);
        Placing {
            at,
            weights: self.tariff.split(self.total - self.loss),
            use_permille: self.worth[1],
            proven,
            weights_at_most: self.tariff.split(self.total - self.least_loss),
            use_at_least: self.least[1],
        }
    }
}

/// One number for each load that puts musts before wishes.
struct Tariff {
    loss: Vec<u64>,
    wishes: u64,
}

impl Tariff {
    fn of(model: &Model) -> Self {
        let wishes = model.loads.iter().filter(|load| !load.must).map(|load| load.weight).sum();
        Self {
            loss: model.loads.iter().map(|load| load.weight * if load.must { wishes + 1 } else { 1 }).collect(),
            wishes,
        }
    }

    /// Splits a sum of losses into the weights of musts and wishes. Exact, because all wishes together weigh less than
    /// one unit of a must.
    const fn split(&self, sum: u64) -> (u64, u64) {
        (sum / (self.wishes + 1), sum % (self.wishes + 1))
    }
}

/// A placing as the plain slice that the model takes.
impl AsRef<Places> for Placing {
    fn as_ref(&self) -> &Places {
        &self.at
    }
}

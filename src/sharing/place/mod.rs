//! Placing: which loads are served and where each is plugged in, for the whole day.
//!
//! In this order: the greatest weight of musts, then of wishes, then the least cost of places,
//! then the least greatest use of any balanced row that is more than enough. The first two are one search
//! for the least weight left out; the others ask again and again whether the same weight still fits at so
//! much cost, and when every balanced row is cut down to so many thousandths. Of equals one is given in
//! which no load by itself could be at a place before its own, or instead of a later one.
//!
//! | file | what is there |
//! | --- | --- |
//! | [`draft`] | a good first answer by small changes, and of equals the one that is given |
//! | [`search`] | the search: which, then where |
//! | [`table`] | the rows at each moment, as one search sees them |
//! | [`bound`] | what must be left out for want of room or sockets |
//!
//! Every prune has its proof beside it. Other ways were measured on the given cases: prices on limits
//! (the bound of the linear relaxation), exact sums of sizes, a memory of failed states, and asking each
//! part of the tree by itself. None of them is needed to prove any, and all take longer than they save.

mod bound;
mod draft;
mod search;
mod table;

use super::budget::Budget;
use super::model::{Model, Places};
use draft::Draft;
use search::Search;
use table::Alike;

/// What a placing is worth beside the weight it leaves out: its cost, then its greatest use in
/// thousandths. Less is better.
type Worth = [i64; 2];
/// As much as there may be of both.
const ALL: Worth = [i64::MAX, 1000];

/// A placing and what is known of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placing {
    /// Where each load is plugged in; `None` is not served.
    pub at: Vec<Option<usize>>,
    /// Weight of the served musts and wishes.
    pub weights: (u64, u64),
    /// The greatest use, in thousandths.
    pub use_permille: i64,
    /// Whether no placing is better.
    pub proven: bool,
    /// No placing has more weight than this.
    pub weights_at_most: (u64, u64),
    /// No placing of that weight and cost has less use than this.
    pub use_at_least: i64,
}

/// Finds the best placing, within a budget: small changes give a first answer, and for most plans the
/// search only has to show that there is no better.
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

/// What is known so far: the best placing, and how good any can be.
struct Open<'a> {
    model: &'a Model,
    tariff: &'a Tariff,
    total: u64,
    draft: Draft<'a>,
    /// Loss of the draft, and what no placing loses less than.
    loss: u64,
    least_loss: u64,
    /// Cost and use of the draft; what no placing of that loss costs less than, and of that cost
    /// uses less than.
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

    /// Makes the placing better by small changes.
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

    /// Takes a placing that is better.
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

    /// Finds what no placing of this loss costs less than.
    ///
    /// Proof. What weighs more than may be left out is at its cheapest places, or costs as much
    /// more as the next cheapest do; and what is at its cheapest places fits there with the rest
    /// away. So leaving that out of the cheapest places, at the loss of what it costs more
    /// elsewhere, loses no less than the least that can be.
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

    /// Lowers the cost or the greatest use of a placing that is as good as any by what goes before.
    ///
    /// Whether the same weight fits within so many thousandths is monotone in them: a row cut
    /// down further admits no set that it did not admit before. So it is with the cost. Small changes
    /// mostly find the least at once, so the first question is whether one less will do; what
    /// will is asked in longer and longer steps, up to half the range, and after a no it is
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

/// One number for each load that orders must before wish.
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

    /// A sum of losses as weight of musts and of wishes. Exact, because all wishes together
    /// weigh less than one unit of a must.
    const fn split(&self, sum: u64) -> (u64, u64) {
        (sum / (self.wishes + 1), sum % (self.wishes + 1))
    }
}

/// A placing as the plain slice the model's questions take.
impl AsRef<Places> for Placing {
    fn as_ref(&self) -> &Places {
        &self.at
    }
}

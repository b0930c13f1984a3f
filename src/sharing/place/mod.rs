//! Placing: which loads are served and where each is plugged in, for the whole day.
//!
//! In this order: the greatest weight of musts, then of wishes, then the least cost of places,
//! then the least greatest use of any balanced row that is more than enough, then the first by a
//! fixed rule ([`ties`]). The first two are one search for the least weight left out; the others
//! ask again and again whether the same weight still fits at so much cost, and when every balanced
//! row is cut down to so many thousandths.
//!
//! | file | what is there |
//! | --- | --- |
//! | [`table`] | the rows at each moment, as one search sees them |
//! | [`same`] | places that nothing tells apart, taken for one |
//! | [`search`] | the search: which, then where |
//! | [`parts`] | where, of each part of the tree by itself |
//! | [`ledger`] | what is taken up and what is open while it goes on |
//! | [`twins`] | places that differ in name only: one of them is tried |
//! | [`memory`] | states from which there is no way, each tried once |
//! | [`bound`] | what must be left out for want of room or sockets |
//! | [`fill`] | how much of the room can be used by loads of these sizes |
//! | [`prices`] | a bound as good as the linear relaxation's, and what it rules out |
//! | [`first`] | a good first answer by small changes |
//! | [`ties`] | of equals, the one that is given |
//!
//! Every prune has its proof beside it. Work is counted in steps; a step is one node of a search.

mod bound;
mod fill;
mod first;
mod ledger;
mod memory;
mod parts;
mod prices;
mod same;
mod search;
mod table;
mod ties;
mod twins;

use super::budget::Budget;
use super::model::{Model, Places};
use first::Draft;
use same::Joined;
use search::Search;
use table::Facts;

/// Steps that are enough for every plan known and end within a second on a small computer: one
/// takes up to 50 µs at 40 loads.
pub const STEPS: u64 = 20_000;
/// Of these, for the plain search. Most plans need a tenth of it.
const PLAIN: u64 = 3000;
/// Steps for choosing among equals.
const TIES: u64 = 4_000;
/// How often a draft is shaken.
const SHAKES: u32 = 60;

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
    /// Whether no placing of that worth comes before it. Asked only of a proven one.
    pub first: bool,
}

/// Finds the best placing, within a budget.
///
/// Small changes give a first answer, and the plain search with most plans only has to show that
/// there is no better. What it leaves open gets more changes and the search with prices, which costs
/// more for each step and takes fewer.
#[must_use]
pub fn place(model: &Model, budget: &mut Budget) -> Placing {
    let mut plain = budget.part(PLAIN);
    let placing = place_within(model, &mut plain, budget);
    budget.put_back(&plain);
    placing
}

/// The same, with a budget of its own for the plain search.
#[must_use]
pub fn place_within(model: &Model, plain: &mut Budget, budget: &mut Budget) -> Placing {
    let tariff = Tariff::of(model);
    let joined = Joined::new(model);
    let facts = Facts::of(&joined.model);
    let mut open = Open::new(&facts, &tariff);
    open.mend();
    open.serve(plain, Effort::Plain);
    open.mend();
    open.better(plain, Effort::Plain, &[1]);
    if !open.settled() {
        open.shake();
        open.serve(budget, Effort::Priced);
        open.better(budget, Effort::Priced, &[8, 2, 1]);
    }
    let mut placing = open.placing();
    placing.at = joined.apart(&placing.at);
    if placing.proven {
        let mut budget = Budget::steps(TIES);
        let worth = (open.loss, open.worth);
        let (at, first) = ties::first(model, &tariff, &placing.at, worth, &mut budget);
        placing.at = at;
        placing.first = first;
    }
    placing
}

/// How hard a search tries at each step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Effort {
    /// With the bounds that cost little.
    Plain,
    /// With prices, and with what room can be used.
    Priced,
}

/// What is known so far: the best placing, and how good any can be.
struct Open<'a> {
    facts: &'a Facts<'a>,
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
    fn new(facts: &'a Facts<'a>, tariff: &'a Tariff) -> Self {
        let total = tariff.loss.iter().sum();
        Self {
            facts,
            tariff,
            total,
            draft: Draft::new(facts.model, tariff),
            loss: total,
            least_loss: 0,
            worth: [0, facts.model.enough],
            least: [0, facts.model.enough],
        }
    }

    fn settled(&self) -> bool {
        self.loss == self.least_loss && self.worth == self.least
    }

    /// Takes a placing that is better.
    fn take(&mut self, at: &[Option<usize>]) {
        self.draft.set(at);
        self.note();
    }

    fn note(&mut self) {
        let (loss, worth) = self.draft.worth();
        if loss < self.loss {
            self.least[0] = 0;
        }
        if loss < self.loss || worth[0] < self.worth[0] {
            self.least[1] = self.facts.model.enough;
        }
        (self.loss, self.worth) = (loss, worth);
    }

    /// Makes the placing better by small changes.
    fn mend(&mut self) {
        self.draft.mend();
        self.note();
    }

    /// A good placing by small changes.
    fn shake(&mut self) {
        self.draft.mend();
        let least = if self.loss == self.least_loss {
            self.least
        } else {
            [0, 0]
        };
        self.draft.shake(SHAKES, (self.least_loss, least));
        self.note();
    }

    /// Looks for a placing that loses less, until there is none.
    fn serve(&mut self, budget: &mut Budget, effort: Effort) {
        if self.loss == self.least_loss {
            return;
        }
        let mut search = Search::new(self.facts, self.tariff, ALL, self.loss, effort);
        let complete = search.run(budget, false);
        if let Some(at) = search.best.take() {
            self.take(&at);
        }
        let bound = if complete {
            self.loss
        } else {
            search.root_loss
        };
        self.least_loss = self.least_loss.max(bound.min(self.loss));
    }

    /// What no placing of this loss costs less than.
    ///
    /// Proof. What weighs more than may be left out is at its cheapest places, or costs as much
    /// more as the next cheapest do; and what is at its cheapest places fits there with the rest
    /// away. So leaving that out of the cheapest places, at the loss of what it costs more
    /// elsewhere, loses no less than the least that can be.
    fn least_cost(&self, budget: &mut Budget) -> i64 {
        let model = self.facts.model;
        let mut near = model.clone();
        near.costs.clear();
        let mut cost = 0;
        let mut more = vec![0; near.loads.len()];
        for (index, load) in near.loads.iter_mut().enumerate() {
            let places = std::mem::take(&mut load.allowed);
            if self.tariff.loss[index] <= self.loss {
                continue;
            }
            let cost_at = |place: &usize| model.cost(index, *place);
            let least = places.iter().map(cost_at).min().unwrap_or(0);
            cost += least;
            let others = places.iter().map(cost_at).filter(|cost| *cost > least);
            if let Some(next) = others.min() {
                more[index] = (next - least).unsigned_abs();
                load.allowed = places;
                load.allowed.retain(|place| cost_at(place) == least);
            }
        }
        let tariff = Tariff {
            loss: more,
            wishes: 0,
        };
        let facts = Facts::of(&near);
        let mut search = Search::new(&facts, &tariff, ALL, u64::MAX / 8, Effort::Plain);
        let mut slice = budget.part(budget.left() / 4);
        let found = search.run(&mut slice, false);
        budget.put_back(&slice);
        let lost = if found {
            search.allowance
        } else {
            search.root_loss
        };
        cost + i64::try_from(lost).unwrap_or(0)
    }

    /// Lowers the cost of a placing of the least loss, then the greatest use of one of the least
    /// cost.
    fn better(&mut self, budget: &mut Budget, effort: Effort, parts: &[u64]) {
        if self.worth[0] > self.least[0] {
            self.least[0] = self.least[0].max(self.least_cost(budget));
        }
        self.lower(0, budget, effort, parts);
        self.lower(1, budget, effort, parts);
    }

    /// Lowers the cost or the greatest use of a placing that is as good as any by what goes before.
    ///
    /// Whether the same weight fits within so many thousandths is monotone in them: a row cut
    /// down further admits no set that it did not admit before. So it is with the cost. Small changes mostly find the
    /// least use at once, so the first question is whether one thousandth less will do; what
    /// will is asked in longer and longer steps, up to half the range, and after a no it is
    /// halved. Each question gets a part of the budget; one that this leaves open is put aside,
    /// and what is left of the range gets a larger part.
    fn lower(&mut self, what: usize, budget: &mut Budget, effort: Effort, parts: &[u64]) {
        for part in parts {
            // An open question is taken for a no, and in a second round for a yes.
            for open_is_no in [true, false] {
                let (mut low, mut high) = (self.least[what], self.worth[what]);
                let mut less = 1;
                while low < high
                    && self.loss == self.least_loss
                    && self.worth[..what] == self.least[..what]
                {
                    let asked = (high - less).max(low.midpoint(high));
                    let mut cut = ALL;
                    cut[..what].copy_from_slice(&self.worth[..what]);
                    cut[what] = asked;
                    let allowance = self.loss + 1;
                    let mut search = Search::new(self.facts, self.tariff, cut, allowance, effort);
                    let slice = budget.left() / part;
                    let mut slice = budget.part(slice);
                    let settled = search.run(&mut slice, true);
                    budget.put_back(&slice);
                    if let Some(at) = search.best.take() {
                        self.take(&at);
                        self.mend();
                        high = self.worth[what].min(high);
                        less *= 2;
                    } else if settled {
                        self.least[what] = asked + 1;
                        low = self.least[what];
                        less = high - low;
                    } else if open_is_no {
                        low = asked + 1;
                        less = high - low;
                    } else {
                        high = asked;
                        less *= 2;
                    }
                }
                if self.worth[what] == self.least[what] || budget.spent() {
                    return;
                }
            }
        }
    }

    fn placing(&self) -> Placing {
        Placing {
            at: self.draft.at().to_vec(),
            weights: self.tariff.split(self.total - self.loss),
            use_permille: self.worth[1],
            proven: self.settled(),
            weights_at_most: self.tariff.split(self.total - self.least_loss),
            use_at_least: self.least[1],
            first: false,
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
        let wishes = model
            .loads
            .iter()
            .filter(|load| !load.must)
            .map(|load| load.weight)
            .sum();
        Self {
            loss: model
                .loads
                .iter()
                .map(|load| load.weight * if load.must { wishes + 1 } else { 1 })
                .collect(),
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

//! Placing: which loads are served and where each is plugged in, for the whole day.
//!
//! In this order: the greatest weight of musts, then of wishes, then the least greatest use of
//! any balanced row, then the fewest cord moves, then the first by a fixed rule ([`ties`]). The
//! first two are one search for the least weight left out; the third asks again and again whether
//! the same weight still fits when every balanced row is cut down to so many thousandths.
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
    /// No placing of that weight has less use than this.
    pub use_at_least: i64,
    /// How many loads are plugged in elsewhere than where they are now.
    pub moves: usize,
    /// Whether no placing of that worth has fewer moves, and of those none comes before it. Asked
    /// only of a proven one.
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
    open.level(plain, Effort::Plain, &[1]);
    if !open.settled() {
        open.shake();
        open.serve(budget, Effort::Priced);
        open.level(budget, Effort::Priced, &[8, 2, 1]);
    }
    let mut placing = open.placing();
    placing.at = joined.apart(&placing.at);
    placing.moves = ties::moves(model, &placing.at);
    if placing.proven {
        let mut budget = Budget::steps(TIES);
        let worth = (open.loss, open.used);
        let (at, first) = ties::first(model, &tariff, &placing.at, worth, &mut budget);
        placing.moves = ties::moves(model, &at);
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
    /// Use of the draft, and what no placing of that loss uses less than.
    used: i64,
    least_use: i64,
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
            used: 0,
            least_use: 0,
        }
    }

    fn settled(&self) -> bool {
        self.loss == self.least_loss && self.used == self.least_use
    }

    /// Takes a placing that is better.
    fn take(&mut self, at: &[Option<usize>]) {
        self.draft.set(at);
        self.note();
    }

    fn note(&mut self) {
        let (loss, used) = self.draft.cost();
        if loss < self.loss {
            self.least_use = 0;
        }
        (self.loss, self.used) = (loss, used);
    }

    /// Makes the placing better by small changes.
    fn mend(&mut self) {
        self.draft.mend();
        self.note();
    }

    /// A good placing by small changes.
    fn shake(&mut self) {
        self.draft.mend();
        let least_use = if self.loss == self.least_loss {
            self.least_use
        } else {
            0
        };
        self.draft.shake(SHAKES, (self.least_loss, least_use));
        self.note();
    }

    /// Looks for a placing that loses less, until there is none.
    fn serve(&mut self, budget: &mut Budget, effort: Effort) {
        if self.loss == self.least_loss {
            return;
        }
        let mut search = Search::new(self.facts, self.tariff, 1000, self.loss, effort);
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

    /// Lowers the greatest use of a placing of the least loss.
    ///
    /// Whether the same weight fits within so many thousandths is monotone in them: a row cut
    /// down further admits no set that it did not admit before. Small changes mostly find the
    /// least use at once, so the first question is whether one thousandth less will do; what
    /// will is asked in longer and longer steps, up to half the range, and after a no it is
    /// halved. Each question gets a part of the budget; one that this leaves open is put aside,
    /// and what is left of the range gets a larger part.
    fn level(&mut self, budget: &mut Budget, effort: Effort, parts: &[u64]) {
        for part in parts {
            // An open question is taken for a no, and in a second round for a yes.
            for open_is_no in [true, false] {
                let (mut low, mut high) = (self.least_use, self.used);
                let mut less = 1;
                while low < high && self.loss == self.least_loss {
                    let asked = (high - less).max(low.midpoint(high));
                    let allowance = self.loss + 1;
                    let mut search = Search::new(self.facts, self.tariff, asked, allowance, effort);
                    let slice = budget.left() / part;
                    let mut slice = budget.part(slice);
                    let settled = search.run(&mut slice, true);
                    budget.put_back(&slice);
                    if let Some(at) = search.best.take() {
                        self.take(&at);
                        self.mend();
                        high = self.used.min(high);
                        less *= 2;
                    } else if settled {
                        self.least_use = asked + 1;
                        low = self.least_use;
                        less = high - low;
                    } else if open_is_no {
                        low = asked + 1;
                        less = high - low;
                    } else {
                        high = asked;
                        less *= 2;
                    }
                }
                if self.settled() || budget.spent() {
                    return;
                }
            }
        }
    }

    fn placing(&self) -> Placing {
        Placing {
            at: self.draft.at().to_vec(),
            weights: self.tariff.split(self.total - self.loss),
            use_permille: self.used,
            proven: self.settled(),
            weights_at_most: self.tariff.split(self.total - self.least_loss),
            use_at_least: self.least_use,
            moves: 0,
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

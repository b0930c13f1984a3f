//! The search itself: depth first, in two layers.
//!
//! First it decides **which** loads are served, the worthiest for their size first; what a load
//! adds at every place it may go to is counted from then on. **Where** they go is asked of the tree,
//! part by part (`parts.rs`), for what was decided so far: what has no places is given up at once.
//! Where that is no tree, or too large a question, it looks when all is decided: the load with the
//! fewest places left, the emptiest place first.
//!
//! Each prune has its proof beside it: `least_loss` and `unmatched` (in `bound.rs`), `cramped` (in
//! `fill.rs`), `price` (in `prices.rs`), the memory of failed states, places that are twins, and
//! here the allowance and loads that are alike.

use std::cell::OnceCell;
use std::collections::HashSet;

use super::super::budget::Budget;
use super::super::model::Model;
use super::super::set::LoadSet;
use super::fill::{Measure, measures};
use super::parts::Parts;
use super::prices::Prices;
use super::table::{Constraint, Facts, Region, Table, Touch, Touches, bits, regions};
use super::twins::Twins;
use super::{Effort, Tariff, Worth};

/// Rounds of looking for prices at the start, and at each node after.
const ROOT_ROUNDS: u32 = 200;
const NODE_ROUNDS: u32 = 2;

/// What came of a question with one load held somewhere.
pub(super) enum Answer {
    /// With this placing.
    Yes(Vec<Option<usize>>),
    /// There is none.
    No,
    /// The budget ended first.
    Open,
}

pub(super) struct Search<'a> {
    pub(super) model: &'a Model,
    pub(super) facts: &'a Facts<'a>,
    pub(super) loss: &'a [u64],
    pub(super) constraints: Vec<Constraint>,
    /// For each mask of places that some constraint has, the constraints with it, and the masks
    /// directly inside it that share no place with each other.
    pub(super) regions: Vec<Region>,
    pub(super) touches: Touches,
    /// A load's size: its greatest share of any row, for choosing among equals.
    pub(super) size: Vec<i64>,
    /// Its weight for that size.
    pub(super) value: Vec<u128>,
    pub(super) used: Vec<i64>,
    pub(super) peak: Vec<i64>,
    pub(super) sockets: Vec<u32>,
    pub(super) heaviest_first: Vec<usize>,
    pub(super) undecided: LoadSet,
    /// The greatest sum that the undecided loads can still add to each constraint.
    pub(super) demand: Vec<i64>,
    /// For each load, the most it can add to each constraint wherever it goes.
    pub(super) demands: Vec<Vec<(usize, i64)>>,
    /// For each load, what it adds to constraints wherever it goes.
    pub(super) pledges: Vec<Vec<Touch>>,
    /// Loads that are to be served, among them all that must be.
    pub(super) committed: LoadSet,
    /// Sum and greatest peak pledged by loads that are to be served and have no place yet.
    pub(super) pledged: Vec<i64>,
    pub(super) pledged_peak: Vec<i64>,
    pub(super) at: Vec<Option<usize>>,
    pub(super) best: Option<Vec<Option<usize>>>,
    /// Only placings that lose less than this are wanted.
    pub(super) allowance: u64,
    pub(super) root_loss: u64,
    pub(super) memory: HashSet<(LoadSet, Box<[i64]>)>,
    pub(super) memory_words: usize,
    pub(super) first_only: bool,
    /// Loss of the loads that were left out for good.
    pub(super) settled_loss: u64,
    pub(super) prices: Prices,
    pub(super) moments: &'a [LoadSet],
    pub(super) measures: Vec<Measure>,
    /// For each load, the one before it that is alike in everything.
    pub(super) alike: &'a [Option<usize>],
    /// For each load, the places it may be plugged in at no more than the whole cost.
    pub(super) allowed: Vec<u64>,
    pub(super) twins: OnceCell<Twins>,
    pub(super) parts: OnceCell<Option<Parts>>,
}

impl<'a> Search<'a> {
    /// A search for a placing that loses less than the allowance, costs no more than this, and
    /// has every balanced row cut down to so many thousandths.
    pub(super) fn new(
        facts: &'a Facts<'a>,
        tariff: &'a Tariff,
        cut: Worth,
        allowance: u64,
        effort: Effort,
    ) -> Self {
        let model = facts.model;
        let loads = model.loads.len();
        let table = Table::new(facts, &tariff.loss, cut);
        let count = table.constraints.len();
        let prices = Prices::new(
            &table,
            model.sockets.len(),
            tariff.loss.iter().sum(),
            effort == Effort::Priced,
        );
        let measures = if effort == Effort::Priced {
            measures(model, &tariff.loss, &table.constraints)
        } else {
            Vec::new()
        };
        let mut heaviest_first: Vec<usize> = (0..loads).collect();
        heaviest_first.sort_by_key(|load| (std::cmp::Reverse(tariff.loss[*load]), *load));
        let mut search = Self {
            model,
            facts,
            loss: &tariff.loss,
            regions: regions(&table.constraints, model.sockets.len()),
            used: vec![0; count],
            peak: vec![0; count],
            demand: vec![0; count],
            demands: table.demands,
            pledges: table.pledges,
            committed: LoadSet::default(),
            pledged: vec![0; count],
            pledged_peak: vec![0; count],
            constraints: table.constraints,
            touches: table.touches,
            value: tariff
                .loss
                .iter()
                .zip(&table.size)
                .map(|(loss, size)| {
                    u128::from(*loss) * 1_000_000 / u128::from(size.unsigned_abs().max(1))
                })
                .collect(),
            size: table.size,
            sockets: model.sockets.clone(),
            heaviest_first,
            undecided: LoadSet::below(loads),
            at: vec![None; loads],
            best: None,
            allowance,
            root_loss: 0,
            memory: HashSet::new(),
            memory_words: 0,
            first_only: false,
            settled_loss: 0,
            prices,
            moments: &facts.moments,
            measures,
            alike: &facts.alike,
            allowed: (0..loads)
                .map(|load| {
                    let open = bits(facts.allowed[load]);
                    let within = open.filter(|place| model.cost(load, *place) <= cut[0]);
                    within.fold(0, |mask, place| mask | 1 << place)
                })
                .collect(),
            twins: OnceCell::new(),
            parts: OnceCell::new(),
        };
        for load in 0..loads {
            search.count_demand(load, 1);
        }
        search
    }

    /// Searches. `true` when the answer is final: nothing loses less than `allowance` now says.
    pub(super) fn run(&mut self, budget: &mut Budget, first_only: bool) -> bool {
        self.first_only = first_only;
        let mut domains = self.open();
        let plain = self
            .least_loss(&domains)
            .max(self.unmatched(&domains))
            .max(self.cramped(&domains));
        let allowance = self.allowance;
        let priced = self.price(&mut domains, allowance, ROOT_ROUNDS);
        self.root_loss = plain.max(priced.bound).min(self.loss.iter().sum());
        if self.prices.usable {
            budget.spend(u64::from(ROOT_ROUNDS) / 4);
        }
        if self.root_loss >= self.allowance {
            return true;
        }
        self.descend(0, &domains, budget)
    }

    /// Whether the undecided loads find places with this one there, losing less than the
    /// allowance in all. `domains` are the places open to them without it.
    pub(super) fn with(
        &mut self,
        load: usize,
        place: usize,
        domains: &[u64],
        allowance: u64,
        budget: &mut Budget,
    ) -> Answer {
        if domains[load] >> place & 1 == 0 {
            return Answer::No;
        }
        let places = self.model.sockets.len();
        self.first_only = true;
        self.best = None;
        self.allowance = allowance;
        let pledges = self.commit(load);
        self.undecided.remove(load);
        self.count_demand(load, -1);
        let known = self.forget(place);
        let undo = self.put(load, place, places);
        let settled = self.descend(self.settled_loss, domains, budget);
        self.take(load, place, places, &undo);
        self.recall(known);
        self.count_demand(load, 1);
        self.undecided.insert(load);
        self.release(load, &pledges);
        match self.best.take() {
            Some(at) => Answer::Yes(at),
            None if settled => Answer::No,
            None => Answer::Open,
        }
    }

    /// Puts a load somewhere, or nowhere, for good.
    pub(super) fn settle(&mut self, load: usize, place: Option<usize>) {
        if let Some(place) = place {
            self.commit(load);
            self.put(load, place, self.model.sockets.len());
            self.forget(place);
        } else {
            self.settled_loss += self.loss[load];
        }
        self.undecided.remove(load);
        self.count_demand(load, -1);
    }

    /// Decides which loads are served, then where.
    fn descend(&mut self, lost: u64, before: &[u64], budget: &mut Budget) -> bool {
        if lost >= self.allowance {
            return true;
        }
        if !budget.step() {
            return false;
        }
        // A load that weighs more than may still be lost must be served: leaving it out would
        // lose at least the allowance. Its weight is compared with all that may be lost, not with
        // any guess of what will be.
        let spare = self.allowance - 1 - lost;
        let forced: Vec<(usize, Vec<i64>)> = self
            .undecided
            .minus(&self.committed)
            .iter()
            .filter(|load| self.loss[*load] > spare)
            .collect::<Vec<_>>()
            .into_iter()
            .map(|load| (load, self.commit(load)))
            .collect();
        let complete = self.choose(lost, before, budget);
        for (load, undo) in forced.into_iter().rev() {
            self.release(load, &undo);
        }
        complete
    }

    fn choose(&mut self, lost: u64, before: &[u64], budget: &mut Budget) -> bool {
        let mut domains = self.domains(before);
        let bound = self.least_loss(&domains).max(self.unmatched(&domains));
        if lost.saturating_add(bound) >= self.allowance {
            return true;
        }
        // What is to be served needs places, whatever else comes.
        let places = self.finds_places(budget);
        if places == Some(false) {
            return true;
        }
        let bound = self.cramped(&domains);
        if lost.saturating_add(bound) >= self.allowance {
            return true;
        }
        if places == Some(true)
            && self.undecided.is_subset(&self.committed)
            && let Some(at) = self.found_places(budget)
        {
            self.allowance = lost;
            self.best = Some(at);
            return true;
        }
        let allowed = self.allowance - lost;
        let verdict = self.price(&mut domains, allowed, NODE_ROUNDS);
        if verdict.bound >= allowed {
            return true;
        }
        let forced: Vec<(usize, Vec<i64>)> = verdict
            .serve
            .iter()
            .map(|load| (load, self.commit(load)))
            .collect();
        let complete = self.branch(lost, &domains, budget);
        for (load, undo) in forced.into_iter().rev() {
            self.release(load, &undo);
        }
        complete
    }

    fn branch(&mut self, lost: u64, domains: &[u64], budget: &mut Budget) -> bool {
        let open = self.undecided.minus(&self.committed);
        // Most weight for its size first; what fits nowhere before all.
        let Some(load) = open.iter().min_by_key(|load| {
            let value = (domains[*load] == 0, self.value[*load]);
            (std::cmp::Reverse(value), *load)
        }) else {
            return self.seat_all(lost, domains, budget);
        };
        let mut complete = true;
        if domains[load] != 0 {
            let undo = self.commit(load);
            complete = self.descend(lost, domains, budget);
            self.release(load, &undo);
        }
        if !complete || self.done() {
            return complete;
        }
        // Without this load, none of those alike that come after it is served either: exchanging
        // two of them changes nothing, so some best placing serves the first of them.
        let mut out = vec![load];
        for other in open.iter() {
            if self.alike[other].is_some_and(|before| out.contains(&before)) {
                out.push(other);
            }
        }
        let lost = out.iter().fold(lost, |lost, load| lost + self.loss[*load]);
        if lost < self.allowance {
            for load in &out {
                self.undecided.remove(*load);
                self.count_demand(*load, -1);
            }
            complete = self.descend(lost, domains, budget);
            for load in &out {
                self.count_demand(*load, 1);
                self.undecided.insert(*load);
            }
        }
        complete
    }

    /// Every load left is to be served; finds each a place.
    fn seat_all(&mut self, lost: u64, before: &[u64], budget: &mut Budget) -> bool {
        if self.undecided.is_empty() {
            self.allowance = lost;
            self.best = Some(self.at.clone());
            return true;
        }
        if !budget.step() {
            return false;
        }
        let mut domains = self.domains(before);
        if self.least_loss(&domains).max(self.unmatched(&domains)) > 0 {
            return true;
        }
        let key = self.state();
        if self.known_failure(&key) {
            return true;
        }
        if self.cramped(&domains) > 0 {
            self.remember(key);
            return true;
        }
        // All that is left is to be served, so nothing more may be lost.
        if self.price(&mut domains, 1, NODE_ROUNDS).bound > 0 {
            self.remember(key);
            return true;
        }
        let load = self
            .undecided
            .iter()
            // Of loads alike the first: the others wait for it.
            .filter(|load| self.alike[*load].is_none_or(|before| !self.undecided.contains(before)))
            .min_by_key(|load| (domains[*load].count_ones(), -self.size[*load], *load))
            .unwrap_or_default();
        let places = self.model.sockets.len();
        let mut order: Vec<usize> = bits(domains[load]).collect();
        self.without_twins(&mut order);
        order.sort_by_cached_key(|place| (self.pressure(load, *place), *place));

        let allowance = self.allowance;
        self.undecided.remove(load);
        self.count_demand(load, -1);
        let mut complete = true;
        for place in order {
            let undo = self.put(load, place, places);
            complete = self.seat_all(lost, &domains, budget);
            self.take(load, place, places, &undo);
            // Any way of seating them all loses the same, so the first is as good as any.
            if !complete || self.allowance < allowance {
                break;
            }
        }
        self.count_demand(load, 1);
        self.undecided.insert(load);
        if complete && self.allowance == allowance {
            self.remember(key);
        }
        complete
    }

    fn done(&self) -> bool {
        self.first_only && self.best.is_some()
    }
}

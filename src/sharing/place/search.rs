//! The search itself: depth first, in two layers.
//!
//! First it decides **which** loads are served, those with the most weight for their size first, and from then on
//! counts what each adds at every place it may go to. Then it decides **where** they go: loads with one place left
//! first, then the largest, each at the emptiest place first.
//!
//! Every pruning step comes with its proof: the bounds in `bound.rs`, and here the allowance and the equality of loads
//! and places.

use std::cell::Cell;

use super::super::budget::Budget;
use super::super::model::{Model, bits};
use super::super::set::LoadSet;
use super::table::{Alike, Table, Touch, share};
use super::{Tariff, Worth};

pub(super) struct Search<'a> {
    pub(super) model: &'a Model,
    pub(super) table: Table,
    pub(super) loss: &'a [u64],
    /// The weight of each load for its size.
    value: Vec<u128>,
    alike: &'a Alike,
    pub(super) heaviest_first: Vec<usize>,
    /// For each constraint, the sum and the greatest peak of the placed loads.
    pub(super) used: Vec<i64>,
    pub(super) peak: Vec<i64>,
    /// The same for committed loads that count there wherever they go.
    pledged: Vec<i64>,
    pub(super) pledged_peak: Vec<i64>,
    /// The greatest sum that the undecided loads can still add.
    pub(super) demand: Vec<i64>,
    /// The free sockets at each place.
    pub(super) sockets: Vec<u32>,
    /// The cost of the placed loads.
    pub(super) cost: i64,
    at: Vec<Option<usize>>,
    /// Loads that are neither placed nor left out.
    pub(super) undecided: LoadSet,
    /// Loads that are to be served.
    pub(super) committed: LoadSet,
    /// Work done and not yet taken from the budget.
    work: Cell<u64>,
    /// The best placing found.
    pub(super) best: Option<Vec<Option<usize>>>,
    /// Only placings that lose less than this are wanted.
    pub(super) allowance: u64,
    /// A lower bound on any loss.
    pub(super) root_loss: u64,
    first_only: bool,
}

impl<'a> Search<'a> {
    /// Creates a search for a placing that loses less than the allowance, costs at most `cut[0]`, and uses at most
    /// `cut[1]` thousandths of every balanced row. With `first_only` any such placing will do, else the best.
    pub(super) fn new(
        model: &'a Model,
        tariff: &'a Tariff,
        alike: &'a Alike,
        cut: Worth,
        allowance: u64,
        first_only: bool,
    ) -> Self {
        let loads = model.loads.len();
        let table = Table::new(model, &tariff.loss, cut);
        let count = table.constraints.len();
        let value = |(loss, size): (&u64, &i64)| u128::from(*loss) * 1_000_000 / u128::from(size.unsigned_abs().max(1));
        let mut heaviest_first: Vec<usize> = (0..loads).collect();
        heaviest_first.sort_by_key(|load| (std::cmp::Reverse(tariff.loss[*load]), *load));
        let mut search = Self {
            model,
            loss: &tariff.loss,
            value: tariff.loss.iter().zip(&table.size).map(value).collect(),
            table,
            alike,
            heaviest_first,
            used: vec![0; count],
            peak: vec![0; count],
            pledged: vec![0; count],
            pledged_peak: vec![0; count],
            demand: vec![0; count],
            sockets: model.sockets.clone(),
            cost: 0,
            at: vec![None; loads],
            undecided: LoadSet::below(loads),
            committed: LoadSet::default(),
            work: Cell::new(0),
            best: None,
            allowance,
            root_loss: 0,
            first_only,
        };
        for load in 0..loads {
            search.count_demand(load, 1);
        }
        let looks: usize = search.table.constraints.iter().map(|it| it.loads.len()).sum();
        search.charge(looks + model.rows.len() * model.moments().len());
        search
    }

    /// Counts looks at loads.
    pub(super) fn charge(&self, work: usize) {
        let work = u64::try_from(work).unwrap_or(u64::MAX);
        self.work.set(self.work.get().saturating_add(work));
    }

    /// Searches. Returns `true` if the result is final: no placing loses less than `allowance`.
    pub(super) fn run(&mut self, budget: &mut Budget) -> bool {
        let domains = self.domains(&self.table.allowed);
        self.root_loss = self.least_loss(&domains).min(self.loss.iter().sum());
        self.root_loss >= self.allowance || self.descend(0, &domains, budget)
    }

    /// Decides which loads are served, then where.
    fn descend(&mut self, lost: u64, before: &[u64], budget: &mut Budget) -> bool {
        if lost >= self.allowance {
            return true;
        }
        if !budget.spend(self.work.take() + 1) {
            return false;
        }
        // A load that weighs more than may still be lost must be served, because leaving it out would lose at least the
        // allowance. Its weight is compared with all that may be lost, not with an estimate of what will be.
        let spare = self.allowance - 1 - lost;
        let open = self.undecided.minus(&self.committed);
        let forced: Vec<(usize, Vec<i64>)> = (open.iter())
            .filter(|load| self.loss[*load] > spare)
            .collect::<Vec<_>>()
            .into_iter()
            .map(|load| (load, self.commit(load)))
            .collect();
        let domains = self.domains(before);
        let bound = self.least_loss(&domains);
        let complete = lost.saturating_add(bound) >= self.allowance || self.branch(lost, &domains, budget);
        for (load, undo) in forced.into_iter().rev() {
            self.release(load, undo);
        }
        complete
    }

    fn branch(&mut self, lost: u64, domains: &[u64], budget: &mut Budget) -> bool {
        let open = self.undecided.minus(&self.committed);
        // Loads that fit nowhere first, then the most weight for their size.
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
            self.release(load, undo);
        }
        if !complete || (self.first_only && self.best.is_some()) {
            return complete;
        }
        // Without this load, its equals after it are not served either. Exchanging two of them changes nothing, so some
        // best placing serves the first of them.
        let mut out = vec![load];
        for other in open.iter() {
            if self.alike.loads[other].is_some_and(|before| out.contains(&before)) {
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

    /// Finds a place for each load left, all of which are to be served.
    fn seat_all(&mut self, lost: u64, before: &[u64], budget: &mut Budget) -> bool {
        if self.undecided.is_empty() {
            self.allowance = lost;
            self.best = Some(self.at.clone());
            return true;
        }
        if !budget.spend(self.work.take() + 1) {
            return false;
        }
        let domains = self.domains(before);
        if self.least_loss(&domains) > 0 {
            return true;
        }
        let key = |load: &usize| (domains[*load].count_ones() > 1, -self.table.size[*load], *load);
        let Some(load) = self.undecided.iter().min_by_key(key) else {
            return true;
        };
        // Of equal empty places only the first is tried, because exchanging two of them changes nothing.
        let bare = |place: usize| !self.at.contains(&Some(place));
        let kind = |place: usize| self.alike.places[place];
        let mut places: Vec<usize> = Vec::new();
        for place in bits(domains[load]) {
            let same = |other: &usize| kind(*other) == kind(place) && bare(*other);
            if !bare(place) || !places.iter().any(same) {
                places.push(place);
            }
        }
        places.sort_by_cached_key(|place| (self.fullness(load, *place), *place));

        let allowance = self.allowance;
        self.undecided.remove(load);
        self.count_demand(load, -1);
        let mut complete = true;
        for place in places {
            let undo = self.put(load, place);
            complete = self.seat_all(lost, &domains, budget);
            self.take(load, place, undo);
            // Every way of seating them all loses the same, so the first will do.
            if !complete || self.allowance < allowance {
                break;
            }
        }
        self.count_demand(load, 1);
        self.undecided.insert(load);
        complete
    }

    /// Returns the places where each undecided load still fits.
    fn domains(&self, before: &[u64]) -> Vec<u64> {
        let free = |place: usize| u64::from(self.sockets[place] > 0) << place;
        let free = (0..self.sockets.len()).fold(0, |mask, place| mask | free(place));
        let mut domains = before.to_vec();
        self.charge(domains.len());
        for load in self.undecided.iter() {
            let committed = self.committed.contains(load);
            let mut fits = before[load] & free;
            self.charge(self.table.touches[load].len());
            for touch in &self.table.touches[load] {
                let c = touch.constraint;
                let constraint = &self.table.constraints[c];
                let own = if committed && touch.always { touch.sum } else { 0 };
                let room = constraint.capacity - self.used[c] - self.pledged[c] + own;
                let peak = self.peak[c].max(self.pledged_peak[c]).max(touch.peak);
                if touch.sum + peak > room {
                    fits &= !constraint.places;
                }
            }
            domains[load] = fits;
        }
        self.strike_dear(&mut domains);
        domains
    }

    /// Removes places that cost more than what the other committed loads leave.
    fn strike_dear(&self, domains: &mut [u64]) {
        if self.model.costs.is_empty() {
            return;
        }
        let least: Vec<i64> = (0..domains.len()).map(|load| self.cheapest(load, domains[load])).collect();
        let served = self.undecided.intersection(&self.committed);
        let all: i64 = served.iter().map(|load| least[load]).sum();
        let spare = self.table.most_cost - self.cost - all;
        for load in self.undecided.iter() {
            let own = if served.contains(load) { least[load] } else { 0 };
            self.charge(domains[load].count_ones() as usize);
            let most = spare.saturating_add(own);
            let costs = self.table.costs[load].iter();
            let kept = costs.take_while(|(cost, _)| *cost <= most);
            domains[load] &= kept.fold(0, |kept, (_, places)| kept | places);
        }
    }

    /// Commits to serving a load wherever it goes. What it adds to a constraint at every place it may go to is certain
    /// from now on. Returns the previous peaks.
    fn commit(&mut self, load: usize) -> Vec<i64> {
        self.committed.insert(load);
        let mut undo = Vec::new();
        for touch in self.table.touches[load].iter().filter(|it| it.always) {
            let c = touch.constraint;
            self.pledged[c] += touch.sum;
            undo.push(self.pledged_peak[c]);
            self.pledged_peak[c] = self.pledged_peak[c].max(touch.peak);
        }
        undo
    }

    fn release(&mut self, load: usize, undo: Vec<i64>) {
        self.committed.remove(load);
        let pledges = self.table.touches[load].iter().filter(|it| it.always);
        for (touch, peak) in pledges.zip(undo) {
            self.pledged[touch.constraint] -= touch.sum;
            self.pledged_peak[touch.constraint] = peak;
        }
    }

    /// Returns the effects of a load at a place.
    fn touches(&self, load: usize, place: usize) -> impl Iterator<Item = &Touch> {
        let there = move |touch: &&Touch| self.table.constraints[touch.constraint].places >> place & 1 == 1;
        self.table.touches[load].iter().filter(there)
    }

    /// Puts a load at a place. Returns the previous peaks.
    fn put(&mut self, load: usize, place: usize) -> Vec<i64> {
        self.at[load] = Some(place);
        self.sockets[place] -= 1;
        self.cost += self.model.cost(load, place);
        let mut undo = Vec::new();
        for touch in &self.table.touches[load] {
            let c = touch.constraint;
            // What was pledged is now counted in place. A pledged peak may stay, because the real one is no less.
            if touch.always {
                self.pledged[c] -= touch.sum;
            }
            undo.push(self.peak[c]);
            if self.table.constraints[c].places >> place & 1 == 1 {
                self.used[c] += touch.sum;
                self.peak[c] = self.peak[c].max(touch.peak);
            }
        }
        undo
    }

    fn take(&mut self, load: usize, place: usize, undo: Vec<i64>) {
        self.at[load] = None;
        self.sockets[place] += 1;
        self.cost -= self.model.cost(load, place);
        for (touch, peak) in self.table.touches[load].iter().zip(undo) {
            let c = touch.constraint;
            if touch.always {
                self.pledged[c] += touch.sum;
            }
            self.peak[c] = peak;
            if self.table.constraints[c].places >> place & 1 == 1 {
                self.used[c] -= touch.sum;
            }
        }
    }

    /// Returns how full the fullest constraint would be with this load there, in millionths.
    fn fullness(&self, load: usize, place: usize) -> i64 {
        let full = |touch: &Touch| {
            let c = touch.constraint;
            let full = self.used[c] + touch.sum + self.peak[c].max(touch.peak);
            share(full, self.table.constraints[c].capacity)
        };
        self.touches(load, place).map(full).max().unwrap_or(0)
    }

    fn count_demand(&mut self, load: usize, sign: i64) {
        for touch in &self.table.touches[load] {
            self.demand[touch.constraint] += sign * (touch.sum + touch.peak);
        }
    }
}

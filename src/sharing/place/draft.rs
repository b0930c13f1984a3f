//! A placing by small changes: filled greedily, improved, and moved toward the first places.
//!
//! If nothing is short, it is already the best. Otherwise the search only looks for something better.

use super::super::budget::Budget;
use super::super::model::{Model, Row, bits, mask, permille_up};
use super::super::set::LoadSet;
use super::{Tariff, Worth};

/// A placing that loads are added to and removed from one at a time.
pub(super) struct Draft<'a> {
    model: &'a Model,
    loss: &'a [u64],
    moments: Vec<LoadSet>,
    at: Vec<Option<usize>>,
    free: Vec<u32>,
    /// What is used, and the greatest peak, for each row and moment (`row * moments + moment`).
    used: Vec<i64>,
    peak: Vec<i64>,
    /// For each load, the moments when it is on.
    on: Vec<Vec<usize>>,
    /// For each place, the rows that cover it.
    rows: Vec<Vec<usize>>,
    /// Loads in order of weight for their size, greatest first.
    order: Vec<usize>,
    /// The budget on loan while it works.
    budget: Budget,
}

impl<'a> Draft<'a> {
    pub(super) fn new(model: &'a Model, tariff: &'a Tariff) -> Self {
        let moments = model.moments();
        let loads = model.loads.len();
        let on = |load: usize| {
            let on = |moment: &usize| moments[*moment].contains(load);
            (0..moments.len()).filter(on).collect()
        };
        let rows = |place: usize| {
            let rows = 0..model.rows.len();
            rows.filter(|row| model.rows[*row].has(place)).collect()
        };
        let rows: Vec<Vec<usize>> = (0..model.sockets.len()).map(rows).collect();
        let size = |load: usize| -> i64 {
            let share = |row: &usize| {
                let row = &model.rows[*row];
                permille_up(row.sums[load], row.capacity)
            };
            let places = model.loads[load].allowed.iter();
            let fullest = places.map(|place| rows[*place].iter().map(share).max().unwrap_or(0));
            fullest.min().unwrap_or(0)
        };
        let mut order: Vec<usize> = (0..loads).collect();
        order.sort_by_cached_key(|load| {
            let value = u128::from(tariff.loss[*load]) * 1_000_000;
            let value = value / u128::from(size(*load).unsigned_abs().max(1));
            (!model.loads[*load].must, std::cmp::Reverse(value), *load)
        });
        Self {
            model,
            loss: &tariff.loss,
            at: vec![None; loads],
            free: model.sockets.clone(),
            used: vec![0; model.rows.len() * moments.len()],
            peak: vec![0; model.rows.len() * moments.len()],
            on: (0..loads).map(on).collect(),
            moments,
            rows,
            order,
            budget: Budget::of(0),
        }
    }

    pub(super) fn at(&self) -> &[Option<usize>] {
        &self.at
    }

    pub(super) fn set(&mut self, at: &[Option<usize>]) {
        for load in 0..self.at.len() {
            self.take(load);
        }
        for (load, place) in at.iter().enumerate() {
            if let Some(place) = *place {
                self.put(load, place);
            }
        }
    }

    /// Counts one look at a load in this many rows.
    fn charge(&mut self, load: usize, rows: usize) {
        let work = rows * self.on[load].len();
        self.budget.spend(u64::try_from(work).unwrap_or(u64::MAX));
    }

    fn put(&mut self, load: usize, place: usize) {
        self.at[load] = Some(place);
        self.free[place] -= 1;
        self.charge(load, self.rows[place].len());
        for &row in &self.rows[place] {
            let of = &self.model.rows[row];
            for &moment in &self.on[load] {
                let index = row * self.moments.len() + moment;
                self.used[index] += of.sums[load];
                self.peak[index] = self.peak[index].max(of.peak(load));
            }
        }
    }

    fn take(&mut self, load: usize) -> Option<usize> {
        let place = self.at[load].take()?;
        self.free[place] += 1;
        self.charge(load, self.rows[place].len());
        let mut again = 0;
        for &row in &self.rows[place] {
            let of = &self.model.rows[row];
            for &moment in &self.on[load] {
                let index = row * self.moments.len() + moment;
                self.used[index] -= of.sums[load];
                // The greatest peak may have been this load's.
                if of.peak(load) > 0 && self.peak[index] == of.peak(load) {
                    again += self.at.len();
                    let peaks = self.moments[moment].iter().filter(|other| {
                        let at = self.at.get(*other).copied().flatten();
                        at.is_some_and(|at| of.has(at))
                    });
                    self.peak[index] = peaks.map(|other| of.peak(other)).max().unwrap_or(0);
                }
            }
        }
        self.budget.spend(u64::try_from(again).unwrap_or(u64::MAX));
        Some(place)
    }

    /// Whether a row has room for an unplaced load.
    fn takes(&self, row: usize, load: usize) -> bool {
        let of = &self.model.rows[row];
        let (sum, own) = (of.sums[load], of.peak(load));
        if sum == 0 && own == 0 {
            return true;
        }
        self.on[load].iter().all(|moment| {
            let index = row * self.moments.len() + moment;
            self.used[index] + sum + self.peak[index].max(own) <= of.capacity
        })
    }

    /// Whether an unplaced load fits at a place.
    fn fits(&mut self, load: usize, place: usize) -> bool {
        self.charge(load, self.rows[place].len());
        self.free[place] > 0 && (self.rows[place].iter()).all(|row| self.takes(*row, load))
    }

    /// Returns the allowed places where an unplaced load fits.
    fn open(&mut self, load: usize) -> u64 {
        self.charge(load, self.model.rows.len());
        let allowed = self.model.loads[load].allowed.iter().copied();
        let mut open = mask(allowed.filter(|place| self.free[*place] > 0));
        for (row, of) in self.model.rows.iter().enumerate() {
            if open & of.places != 0 && !self.takes(row, load) {
                open &= !of.places;
            }
        }
        open
    }

    /// Returns the greatest use of a row at the moments of a load, with this much added.
    fn use_of(&self, row: usize, load: usize, more: i64) -> i64 {
        let used = |moment: &usize| self.used[row * self.moments.len() + moment];
        let most = self.on[load].iter().map(used).max();
        most.map_or(0, |most| permille_up(most + more, self.model.rows[row].capacity))
    }

    /// Returns the greatest use of the balanced rows that count a load at this place. With `more`, as if the load were
    /// added there.
    fn use_there(&mut self, load: usize, place: usize, more: bool) -> i64 {
        self.charge(load, self.rows[place].len());
        let counts = |row: &&usize| {
            let of = &self.model.rows[**row];
            of.balanced && of.sums[load] > 0
        };
        let more = |row: usize| {
            if more { self.model.rows[row].sums[load] } else { 0 }
        };
        let rows = self.rows[place].iter().filter(counts);
        let used = rows.map(|row| self.use_of(*row, load, more(*row)));
        used.max().unwrap_or(0)
    }

    /// Returns the place where it fits at the least cost, then with the least use. The first wins a tie.
    fn roomiest(&mut self, load: usize) -> Option<usize> {
        let open = self.open(load);
        let cost = |place: &usize| self.model.cost(load, *place);
        let least = bits(open).map(|place| cost(&place)).min()?;
        let cheapest: Vec<usize> = bits(open).filter(|place| cost(place) == least).collect();
        (cheapest.into_iter()).min_by_key(|place| self.use_there(load, *place, true))
    }

    /// Returns the greatest use, if it is more than enough, and the row and moment that have it.
    fn fullest(&self) -> (i64, usize, usize) {
        let mut most = (self.model.enough, 0, 0);
        for (row, of) in self.model.rows.iter().enumerate() {
            if of.balanced {
                for moment in 0..self.moments.len() {
                    let used = self.used[row * self.moments.len() + moment];
                    let here = permille_up(used, of.capacity);
                    if here > most.0 {
                        most = (here, row, moment);
                    }
                }
            }
        }
        most
    }

    /// Returns the weight left out, and the rest of the worth. Less is better.
    pub(super) fn worth(&self) -> (u64, Worth) {
        let out = (0..self.at.len()).filter(|load| self.at[*load].is_none());
        let cost = self.model.cost_of(&self.at);
        let loss = out.map(|load| self.loss[load]).sum();
        (loss, [cost, self.fullest().0])
    }

    /// Places what fits, worthiest first. Then serves more by removing one load for another, and moving it elsewhere if
    /// it fits there.
    fn serve(&mut self) {
        for again in [false, true, true] {
            for step in 0..self.order.len() {
                let load = self.order[step];
                if self.at[load].is_some() {
                    continue;
                }
                if let Some(place) = self.roomiest(load) {
                    self.put(load, place);
                } else if again {
                    self.make_room(load);
                }
            }
        }
    }

    fn make_room(&mut self, load: usize) {
        let mut swap: Option<(u64, usize, usize)> = None;
        for guest in 0..self.at.len() {
            if self.budget.spent() {
                return;
            }
            let Some(was) = self.take(guest) else {
                continue;
            };
            if let Some(place) = self.roomiest(load) {
                self.put(load, place);
                if let Some(elsewhere) = self.roomiest(guest) {
                    self.put(guest, elsewhere);
                    return;
                }
                self.take(load);
                let loss = self.loss[guest];
                if loss < self.loss[load] && swap.is_none_or(|(least, ..)| loss < least) {
                    swap = Some((loss, guest, place));
                }
            }
            self.put(guest, was);
        }
        if let Some((_, guest, place)) = swap {
            self.take(guest);
            self.put(load, place);
        }
    }

    /// Moves loads to where they cost less.
    fn cheapen(&mut self) {
        for load in 0..self.at.len() {
            if self.at[load].is_some_and(|place| self.model.cost(load, place) > 0)
                && let Some(was) = self.take(load)
            {
                let place = self.roomiest(load).unwrap_or(was);
                self.put(load, place);
            }
        }
    }

    /// Moves or exchanges loads of the fullest row while that costs no more, lowers its use, and keeps every other row
    /// it touches below that use.
    fn level(&mut self) {
        while !self.budget.spent() {
            let (most, row, moment) = self.fullest();
            self.budget.spend(u64::try_from(self.used.len()).unwrap_or(u64::MAX));
            if most <= self.model.enough {
                return;
            }
            let of: &Row = &self.model.rows[row];
            let guests = self.moments[moment].iter().filter(|load| {
                let at = self.at.get(*load).copied().flatten();
                at.is_some_and(|place| of.has(place)) && of.sums[*load] > 0
            });
            let guests: Vec<usize> = guests.collect();
            if !guests.into_iter().any(|guest| self.lighten(guest, most)) {
                return;
            }
        }
    }

    fn lighten(&mut self, guest: usize, most: i64) -> bool {
        let Some(was) = self.take(guest) else {
            return false;
        };
        let model = self.model;
        let places = &model.loads[guest].allowed;
        let here = model.cost(guest, was);
        for &place in places.iter().filter(|place| **place != was) {
            if model.cost(guest, place) <= here && self.fits(guest, place) && self.use_there(guest, place, true) < most
            {
                self.put(guest, place);
                return true;
            }
        }
        // An exchange with a load placed elsewhere, or with an unplaced one of the same weight.
        for other in 0..self.at.len() {
            if other == guest || self.budget.spent() || !model.loads[other].allowed.contains(&was) {
                continue;
            }
            let there = model.cost(other, was);
            let Some(place) = self.at[other] else {
                if self.loss[other] == self.loss[guest]
                    && there <= here
                    && self.fits(other, was)
                    && self.use_there(other, was, true) < most
                {
                    self.put(other, was);
                    return true;
                }
                continue;
            };
            let before = here + model.cost(other, place);
            if place == was || !places.contains(&place) || model.cost(guest, place) + there > before {
                continue;
            }
            self.take(other);
            if self.fits(other, was) {
                self.put(other, was);
                if self.fits(guest, place) {
                    self.put(guest, place);
                    if self.use_there(guest, place, false) < most && self.use_there(other, was, false) < most {
                        return true;
                    }
                    self.take(guest);
                }
                self.take(other);
            }
            self.put(other, place);
        }
        self.put(guest, was);
        false
    }

    /// Makes every small change that helps, within the budget. Whatever fits is placed in any case.
    pub(super) fn mend(&mut self, budget: &mut Budget) {
        std::mem::swap(&mut self.budget, budget);
        self.serve();
        self.cheapen();
        self.level();
        std::mem::swap(&mut self.budget, budget);
    }

    /// Moves single loads to the first place that takes them as things are, and serves a load instead of a later one of
    /// the same weight, as long as the placing is worth no less. So what comes first in the plan is served, where a
    /// reader looks first, and a small change to a plan changes little.
    pub(super) fn press(&mut self, budget: &mut Budget) {
        std::mem::swap(&mut self.budget, budget);
        let (_, most) = self.worth();
        let mut again = true;
        while again && !self.budget.spent() {
            again = false;
            for load in 0..self.at.len() {
                again |= match self.take(load) {
                    Some(was) => self.goes_before(load, was, most),
                    None => self.goes_for_another(load, most),
                };
            }
        }
        std::mem::swap(&mut self.budget, budget);
    }

    fn goes_before(&mut self, load: usize, was: usize, most: Worth) -> bool {
        let open = self.open(load) & ((1 << was) - 1);
        let place = bits(open).find(|place| self.is_no_worse(load, *place, most));
        self.put(load, place.unwrap_or(was));
        place.is_some()
    }

    fn goes_for_another(&mut self, load: usize, most: Worth) -> bool {
        for other in load + 1..self.at.len() {
            if self.loss[other] == self.loss[load]
                && let Some(was) = self.take(other)
            {
                let open = self.open(load);
                if let Some(place) = bits(open).find(|it| self.is_no_worse(load, *it, most)) {
                    self.put(load, place);
                    return true;
                }
                self.put(other, was);
            }
        }
        false
    }

    /// Whether the placing is worth no less with this unplaced load added at this place.
    fn is_no_worse(&mut self, load: usize, place: usize, [cost, used]: Worth) -> bool {
        self.model.cost_of(&self.at) + self.model.cost(load, place) <= cost && self.use_there(load, place, true) <= used
    }
}

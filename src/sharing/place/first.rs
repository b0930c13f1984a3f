//! A first answer, which is often the best one: filled in greedily, mended by small changes, and
//! shaken a few times.
//!
//! Nothing rests on it but the speed of the search, which only looks for what is better.

use super::super::model::{Model, permille_up};
use super::{Tariff, Worth};

/// A placing on which loads are put and taken one by one.
pub(super) struct Draft<'a> {
    model: &'a Model,
    loss: &'a [u64],
    at: Vec<Option<usize>>,
    free: Vec<u32>,
    /// For each row and moment (`row * moments + moment`) what is used.
    used: Vec<i64>,
    moments: usize,
    /// For each load, the moments it is on.
    on: Vec<Vec<usize>>,
    /// For each load at each place, the rows it counts in.
    rows: Vec<Vec<usize>>,
    /// Loads, worthiest for their size first.
    order: Vec<usize>,
}

impl<'a> Draft<'a> {
    pub(super) fn new(model: &'a Model, tariff: &'a Tariff) -> Self {
        let moments = model.moments();
        let (loads, places) = (model.loads.len(), model.sockets.len());
        let on: Vec<Vec<usize>> = (0..loads)
            .map(|load| {
                let on = |moment: &usize| moments[*moment].contains(load);
                (0..moments.len()).filter(on).collect()
            })
            .collect();
        let rows: Vec<Vec<usize>> = (0..loads * places)
            .map(|index| {
                let counts = |row: &usize| {
                    let row = &model.rows[*row];
                    row.sums[index] > 0 || row.peaks.get(index).is_some_and(|peak| *peak > 0)
                };
                (0..model.rows.len()).filter(counts).collect()
            })
            .collect();
        let size = |load: usize| -> i64 {
            let least = |place: &usize| {
                let index = load * places + place;
                let share = |row: &usize| {
                    let row = &model.rows[*row];
                    permille_up(row.sums[index], row.capacity)
                };
                rows[index].iter().map(share).max().unwrap_or(0)
            };
            model.loads[load]
                .allowed
                .iter()
                .map(least)
                .min()
                .unwrap_or(0)
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
            moments: moments.len(),
            on,
            rows,
            order,
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

    /// Puts a load there if it fits as things are, at no more than this cost and without more use
    /// than so many thousandths of the rows it counts in; else leaves it where it is.
    pub(super) fn goes_to(&mut self, load: usize, place: usize, [cost, used]: Worth) -> bool {
        let was = self.take(load);
        if self.fits(load, place)
            && self.model.cost_of(&self.at) + self.model.cost(load, place) <= cost
            && self.use_there(load, place, true) <= used
        {
            self.put(load, place);
            return true;
        }
        if let Some(was) = was {
            self.put(load, was);
        }
        false
    }

    fn index(&self, load: usize, place: usize) -> usize {
        load * self.model.sockets.len() + place
    }

    fn put(&mut self, load: usize, place: usize) {
        self.at[load] = Some(place);
        self.free[place] -= 1;
        self.count(load, place, 1);
    }

    fn take(&mut self, load: usize) -> Option<usize> {
        let place = self.at[load].take()?;
        self.free[place] += 1;
        self.count(load, place, -1);
        Some(place)
    }

    fn count(&mut self, load: usize, place: usize, sign: i64) {
        let index = self.index(load, place);
        for &row in &self.rows[index] {
            for &moment in &self.on[load] {
                self.used[row * self.moments + moment] += sign * self.model.rows[row].sums[index];
            }
        }
    }

    /// The greatest peak of what is plugged in, on a surge row at a moment.
    fn peak(&self, row: usize, moment: usize) -> i64 {
        let peaks = &self.model.rows[row].peaks;
        if peaks.is_empty() {
            return 0;
        }
        let placed = self.at.iter().enumerate();
        placed
            .filter(|(load, _)| self.on[*load].binary_search(&moment).is_ok())
            .filter_map(|(load, place)| Some(peaks[self.index(load, (*place)?)]))
            .max()
            .unwrap_or(0)
    }

    /// Whether a load that is nowhere may be put there.
    fn fits(&self, load: usize, place: usize) -> bool {
        let index = self.index(load, place);
        self.free[place] > 0
            && self.rows[index].iter().all(|row| {
                let of = &self.model.rows[*row];
                let own = of.peaks.get(index).copied().unwrap_or(0);
                self.on[load].iter().all(|moment| {
                    let sum = self.used[row * self.moments + moment] + of.sums[index];
                    sum + own <= of.capacity && sum + self.peak(*row, *moment) <= of.capacity
                })
            })
    }

    /// The greatest use of the balanced rows the load counts in, if it were there as well.
    fn use_there(&self, load: usize, place: usize, more: bool) -> i64 {
        let index = self.index(load, place);
        let mut most = 0;
        for row in &self.rows[index] {
            let of = &self.model.rows[*row];
            if of.balanced {
                let add = if more { of.sums[index] } else { 0 };
                for moment in &self.on[load] {
                    let sum = self.used[row * self.moments + moment] + add;
                    most = most.max(permille_up(sum, of.capacity));
                }
            }
        }
        most
    }

    /// The place where it fits, costs least, and then least is used, the first of equals.
    fn roomiest(&self, load: usize) -> Option<usize> {
        let allowed = self.model.loads[load].allowed.iter().copied();
        allowed
            .filter(|place| self.fits(load, *place))
            .min_by_key(|place| {
                let cost = self.model.cost(load, *place);
                (cost, self.use_there(load, *place, true))
            })
    }

    /// The greatest use, if it is more than enough, and the row and moment that have it.
    fn fullest(&self) -> (i64, usize, usize) {
        let mut most = (self.model.enough, 0, 0);
        for (row, of) in self.model.rows.iter().enumerate() {
            if of.balanced {
                for moment in 0..self.moments {
                    let here = permille_up(self.used[row * self.moments + moment], of.capacity);
                    if here > most.0 {
                        most = (here, row, moment);
                    }
                }
            }
        }
        most
    }

    /// The weight left out, and what else it is worth. Less is better.
    pub(super) fn worth(&self) -> (u64, Worth) {
        let out = (0..self.at.len()).filter(|load| self.at[*load].is_none());
        let cost = self.model.cost_of(&self.at);
        let loss = out.map(|load| self.loss[load]).sum();
        (loss, [cost, self.fullest().0])
    }

    /// Puts what fits, the worthiest first.
    pub(super) fn fill(&mut self) {
        for step in 0..self.order.len() {
            let load = self.order[step];
            if self.at[load].is_none()
                && let Some(place) = self.roomiest(load)
            {
                self.put(load, place);
            }
        }
    }

    /// Serves more by taking one load away for another, moving it elsewhere if it fits there.
    fn serve_more(&mut self) {
        let mut again = true;
        while again {
            again = false;
            for step in 0..self.order.len() {
                let load = self.order[step];
                if self.at[load].is_some() {
                    continue;
                }
                again |= if let Some(place) = self.roomiest(load) {
                    self.put(load, place);
                    true
                } else {
                    self.make_room(load)
                };
            }
        }
    }

    fn make_room(&mut self, load: usize) -> bool {
        let mut swap: Option<(u64, usize, usize)> = None;
        for guest in 0..self.at.len() {
            let Some(was) = self.take(guest) else {
                continue;
            };
            if let Some(place) = self.roomiest(load) {
                self.put(load, place);
                if let Some(elsewhere) = self.roomiest(guest) {
                    self.put(guest, elsewhere);
                    return true;
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
        swap.is_some()
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

    /// Moves or exchanges loads of the fullest row as long as that costs no more, lowers its use
    /// and leaves every other row it touches below it.
    fn level(&mut self) {
        loop {
            let (most, row, moment) = self.fullest();
            if most <= self.model.enough {
                return;
            }
            let guests: Vec<usize> = (0..self.at.len())
                .filter(|load| {
                    let here = |place: usize| self.model.rows[row].sums[self.index(*load, place)];
                    self.at[*load].is_some_and(|place| here(place) > 0)
                        && self.on[*load].binary_search(&moment).is_ok()
                })
                .collect();
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
            if model.cost(guest, place) <= here
                && self.fits(guest, place)
                && self.use_there(guest, place, true) < most
            {
                self.put(guest, place);
                return true;
            }
        }
        // An exchange with one that is elsewhere, or with one of the same worth that is nowhere.
        for other in 0..self.at.len() {
            if other == guest || !model.loads[other].allowed.contains(&was) {
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
            if place == was || !places.contains(&place) || model.cost(guest, place) + there > before
            {
                continue;
            }
            self.take(other);
            if self.fits(other, was) {
                self.put(other, was);
                if self.fits(guest, place) {
                    self.put(guest, place);
                    if self.use_there(guest, place, false) < most
                        && self.use_there(other, was, false) < most
                    {
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

    /// All small changes that help.
    pub(super) fn mend(&mut self) {
        self.fill();
        self.serve_more();
        self.cheapen();
        self.level();
    }

    /// Takes a few loads away by a fixed sequence, fills up again, and keeps what is no worse, so
    /// many times or until it is worth as much as any is known to be at most.
    pub(super) fn shake(&mut self, times: u32, least: (u64, Worth)) {
        let mut chance = 0x2545_f491_4f6c_dd1d_u64;
        let mut next = |below: usize| {
            // Marsaglia's xorshift: any fixed sequence would do.
            chance ^= chance << 13;
            chance ^= chance >> 7;
            chance ^= chance << 17;
            usize::try_from(chance >> 33).unwrap_or(0) % below.max(1)
        };
        let loads = self.at.len();
        let mut worth = self.worth();
        let usual = self.order.clone();
        for _ in 0..times {
            if worth <= least {
                break;
            }
            let before = self.at.clone();
            let (_, row, moment) = self.fullest();
            for turn in 0..2 + next(3) {
                let mut load = next(loads);
                // One of the fullest row first: there a change is needed.
                if turn == 0 && worth.0 <= least.0 {
                    for _ in 0..loads {
                        let here = self.at[load].is_some_and(|place| {
                            let row = self.model.rows.get(row);
                            row.is_some_and(|row| row.sums[self.index(load, place)] > 0)
                        });
                        if here && self.on[load].binary_search(&moment).is_ok() {
                            break;
                        }
                        load = (load + 1) % loads;
                    }
                }
                self.take(load);
            }
            for _ in 0..2 {
                self.order.swap(next(loads), next(loads));
            }
            self.mend();
            self.order.clone_from(&usual);
            let now = self.worth();
            if now <= worth {
                worth = now;
            } else {
                self.set(&before);
            }
        }
    }
}

//! A bound from prices on the limits, and what it rules out.
//!
//! Put a price on a unit of room in each constraint and on each socket. A load then either is
//! left out, at its loss, or pays for what it takes up at its cheapest place.
//!
//! Proof that the sum, less the value of all room, is no more than what must be left out. Take
//! any placing of the undecided loads that keeps the limits. It takes up no more than the room,
//! so with prices that are not negative, what it pays for room is at most the value of all room.
//! Hence its loss is at least its loss, plus what it pays, less that value; and loss plus payment
//! is a sum over loads, of which each is at least that load's cheapest choice. This is the
//! Lagrangian bound, and holds for any prices: how they are found has no part in it, and what is
//! computed here is in whole numbers. The best prices give what the linear relaxation gives.
//!
//! The same proof with one choice of one load held fixed rules that choice out when the bound is
//! then too high: a place is struck from its list, or it must be served.

use super::super::set::LoadSet;
use super::search::Search;
use super::table::{Table, bits};

/// A full constraint, in the units that prices are for.
const FULL: i64 = 1 << 16;
/// Prices are kept below this, so that no sum of them overflows.
const MOST: i64 = 1 << 38;
/// A loss of one in the units of prices, unless losses are very large.
const UNIT: u64 = 1 << 36;
/// All losses together stay below this.
const MOST_LOSS: u64 = 1 << 52;

/// Length of the first step, in parts of [`WHOLE`] of what would close the gap if the sum went on
/// rising straight; what a rise and a stand do to it; after how many rounds of standing.
const FIRST: i128 = WHOLE / 2;
const SHORTEST: i128 = WHOLE / 1024;
const WHOLE: i128 = 1 << 16;
const RISE: (i128, i128) = (11, 10);
const STAND: (i128, i128) = (6, 10);
const PATIENCE: u32 = 4;
/// How much of the direction is new in each round, in 64ths.
const NEW: i64 = 5;

/// Prices, and the constraints in their units.
pub(super) struct Prices {
    /// For each constraint.
    of: Vec<i64>,
    /// For each place.
    socket: Vec<i64>,
    /// Whether losses are small enough for any of this.
    pub(super) usable: bool,
    /// What a loss of one counts.
    unit: i64,
    /// For each load at each place, what it takes up: of constraint, so many of [`FULL`].
    takes: Vec<Vec<(usize, i64)>>,
    /// The direction of the steps: for each constraint, then for each place.
    drift: Vec<i64>,
    /// What each choice costs: `load * places + place`.
    cost: Vec<i64>,
}

/// What the prices rule out.
#[derive(Default)]
pub(super) struct Verdict {
    /// At least this is lost by the undecided.
    pub(super) bound: u64,
    /// Loads that must be served.
    pub(super) serve: LoadSet,
}

impl Prices {
    pub(super) fn new(table: &Table, places: usize, losses: u64, wanted: bool) -> Self {
        let unit = (MOST_LOSS / losses.max(1)).min(UNIT);
        // A part is rounded down: the sum of parts is then no more than the part of the sum.
        let part = |sum: i64, capacity: i64| {
            if sum > capacity || capacity <= 0 {
                FULL
            } else {
                narrow(i128::from(sum) * i128::from(FULL) / i128::from(capacity))
            }
        };
        // Nothing is asked of prices that are not wanted.
        let wanted = wanted && unit > 0;
        let touches = wanted.then(|| table.touches.iter());
        let takes: Vec<Vec<(usize, i64)>> = touches
            .into_iter()
            .flatten()
            .map(|touches| {
                touches
                    .iter()
                    .map(|t| {
                        (
                            t.constraint,
                            part(t.sum, table.constraints[t.constraint].capacity),
                        )
                    })
                    .filter(|(_, part)| *part > 0)
                    .collect()
            })
            .collect();
        Self {
            of: vec![0; table.constraints.len()],
            socket: vec![0; places],
            usable: wanted,
            unit: i64::try_from(unit).unwrap_or(1),
            cost: vec![0; takes.len()],
            takes,
            drift: Vec::new(),
        }
    }
}

fn narrow(wide: i128) -> i64 {
    i64::try_from(wide).unwrap_or(if wide < 0 { i64::MIN } else { i64::MAX })
}

impl Search<'_> {
    /// Looks for prices for so many rounds, and rules out by the best what cannot be. Strikes
    /// places from `domains`. `allowed` is the least loss of undecided loads that is too much.
    ///
    /// The search for prices is the volume algorithm of Barahona and Anbil (2000): each round
    /// goes from the best prices so far along a moving average of what was asked for too much.
    pub(super) fn price(&mut self, domains: &mut [u64], allowed: u64, rounds: u32) -> Verdict {
        let mut verdict = Verdict::default();
        if !self.prices.usable {
            return verdict;
        }
        let mut ask = Ask::new(self);
        let unit = i128::from(self.prices.unit);
        let target = i128::from(allowed) * unit;
        let mut best = self.evaluate(domains, &mut ask);
        let (mut of, mut socket) = (self.prices.of.clone(), self.prices.socket.clone());
        self.prices.drift.clear();
        let mut reach = FIRST;
        let mut idle = 0;
        let mut round = 0;
        loop {
            self.strike(domains, best, allowed, &mut verdict);
            verdict.bound = ceil_div(best, unit);
            if verdict.bound >= allowed {
                break;
            }
            // The next round that is better.
            let better = loop {
                if round == rounds {
                    break None;
                }
                round += 1;
                self.prices.of.clone_from(&of);
                self.prices.socket.clone_from(&socket);
                self.step(&ask, target - best, reach);
                let sum = self.evaluate(domains, &mut ask);
                if sum > best {
                    break Some(sum);
                }
                idle += 1;
                if idle == PATIENCE {
                    idle = 0;
                    reach = (reach * STAND.0 / STAND.1).max(SHORTEST);
                }
            };
            let Some(sum) = better else { break };
            best = sum;
            of.clone_from(&self.prices.of);
            socket.clone_from(&self.prices.socket);
            idle = 0;
            reach = (reach * RISE.0 / RISE.1).min(FIRST);
        }
        self.prices.of = of;
        self.prices.socket = socket;
        verdict
    }

    /// The sum for the prices as they are, in their units; notes in `ask` what is asked for.
    fn evaluate(&mut self, domains: &[u64], ask: &mut Ask) -> i128 {
        let places = self.model.sockets.len();
        for (slope, room) in ask.slope.iter_mut().zip(&ask.room) {
            *slope = -room;
        }
        for (slope, left) in ask.sockets.iter_mut().zip(&self.sockets) {
            *slope = -i64::from(*left);
        }
        let mut sum: i128 = 0;
        for load in self.undecided.iter() {
            let mut cheapest = (self.price_of_leaving(load), None);
            for place in bits(domains[load]) {
                let index = load * places + place;
                let mut cost = self.prices.socket[place];
                for &(c, part) in &self.prices.takes[index] {
                    cost = cost.saturating_add(self.prices.of[c] * part);
                }
                self.prices.cost[index] = cost;
                if cost < cheapest.0 {
                    cheapest = (cost, Some(place));
                }
            }
            sum += i128::from(cheapest.0);
            if let Some(place) = cheapest.1 {
                for &(c, part) in &self.prices.takes[load * places + place] {
                    ask.slope[c] += part;
                }
                ask.sockets[place] += 1;
            }
        }
        for (price, room) in self.prices.of.iter().zip(&ask.room) {
            sum -= i128::from(*price) * i128::from(*room);
        }
        for (price, left) in self.prices.socket.iter().zip(&self.sockets) {
            sum -= i128::from(*price) * i128::from(*left);
        }
        sum
    }

    /// What leaving a load out costs; beyond everything for one that is to be served.
    fn price_of_leaving(&self, load: usize) -> i64 {
        if self.committed.contains(load) {
            i64::MAX
        } else {
            let loss = i64::try_from(self.loss[load]).unwrap_or(i64::MAX);
            self.prices.unit.saturating_mul(loss)
        }
    }

    /// Moves the prices along the average of the slopes, as far as would close the gap if the sum
    /// went on rising straight.
    fn step(&mut self, ask: &Ask, gap: i128, reach: i128) {
        let prices = &mut self.prices;
        // A socket counts as a large part, so that its price moves as fast as the others.
        let scale = FULL / 2;
        let slopes = || {
            let sockets = ask.sockets.iter().map(|slope| slope * scale);
            ask.slope.iter().copied().chain(sockets)
        };
        if prices.drift.is_empty() {
            prices.drift = slopes().collect();
        } else {
            for (drift, slope) in prices.drift.iter_mut().zip(slopes()) {
                *drift = (slope * NEW + *drift * (64 - NEW)) / 64;
            }
        }
        let now = prices.of.iter().chain(&prices.socket);
        let norm: i128 = now
            .zip(&prices.drift)
            .filter(|(price, drift)| **price > 0 || **drift > 0)
            .map(|(_, drift)| i128::from(*drift) * i128::from(*drift))
            .sum();
        if norm == 0 {
            return;
        }
        let (of, sockets) = prices.drift.split_at(prices.of.len());
        let by = |drift: i64| narrow(gap * reach * i128::from(drift) / (norm * WHOLE));
        for (price, drift) in prices.of.iter_mut().zip(of) {
            *price = price.saturating_add(by(*drift)).clamp(0, MOST);
        }
        for (price, drift) in prices.socket.iter_mut().zip(sockets) {
            let by = by(*drift).saturating_mul(scale);
            *price = price.saturating_add(by).clamp(0, MOST * FULL);
        }
    }

    /// Rules out single choices by the sum with that choice held fixed.
    fn strike(&self, domains: &mut [u64], sum: i128, allowed: u64, verdict: &mut Verdict) {
        let places = self.model.sockets.len();
        // The bound is a whole number, and above this it is too high.
        let most = (i128::from(allowed) - 1) * i128::from(self.prices.unit);
        let spare = most - sum;
        if spare < 0 {
            return;
        }
        for load in self.undecided.iter() {
            let out = self.price_of_leaving(load);
            let costs = &self.prices.cost[load * places..(load + 1) * places];
            let least = bits(domains[load]).map(|place| costs[place]).min();
            let least = least.unwrap_or(out).min(out);
            let too_much = |cost: i64| i128::from(cost) - i128::from(least) > spare;
            for place in bits(domains[load]) {
                if too_much(costs[place]) {
                    domains[load] &= !(1 << place);
                }
            }
            if !self.committed.contains(load) && too_much(out) {
                verdict.serve.insert(load);
            }
        }
    }
}

/// What is asked for at some prices, above what there is.
struct Ask {
    room: Vec<i64>,
    slope: Vec<i64>,
    sockets: Vec<i64>,
}

impl Ask {
    fn new(search: &Search<'_>) -> Self {
        // Rounded down; so are the parts, and a sum of them is whole.
        let room = |(c, constraint): (usize, &super::table::Constraint)| {
            let peak = search.peak[c].max(search.pledged_peak[c]);
            let room = constraint.capacity - search.used[c] - peak;
            narrow(i128::from(room) * i128::from(FULL) / i128::from(constraint.capacity.max(1)))
        };
        let room: Vec<i64> = search.constraints.iter().enumerate().map(room).collect();
        Self {
            slope: vec![0; room.len()],
            sockets: vec![0; search.sockets.len()],
            room,
        }
    }
}

fn ceil_div(sum: i128, unit: i128) -> u64 {
    if sum <= 0 {
        0
    } else {
        u64::try_from((sum + unit - 1) / unit).unwrap_or(u64::MAX)
    }
}

//! Lower bounds on what must still be left out, each with its proof.

use super::super::model::bits;
use super::super::set::LoadSet;
use super::search::Search;
use super::table::Constraint;

/// An impossible loss.
const NEVER: u64 = u64::MAX / 4;

impl Search<'_> {
    /// Returns the least weight of undecided loads that must be left out. [`NEVER`] if not everything committed can be
    /// served.
    pub(super) fn least_loss(&self, domains: &[u64]) -> u64 {
        if self.dearest(domains) > self.table.most_cost - self.cost {
            return NEVER;
        }
        let room = self.for_want_of_room(domains);
        if room >= NEVER {
            return NEVER;
        }
        room.max(self.for_want_of_sockets(domains))
    }

    /// Returns the least cost of the committed loads that have no place yet: each at its cheapest place.
    fn dearest(&self, domains: &[u64]) -> i64 {
        if self.model.costs.is_empty() {
            return 0;
        }
        let served = self.undecided.intersection(&self.committed);
        let least = |load: usize| self.cheapest(load, domains[load]);
        served.iter().map(least).sum()
    }

    pub(super) fn cheapest(&self, load: usize, domain: u64) -> i64 {
        self.charge(domain.count_ones() as usize);
        let mut costs = self.table.costs[load].iter();
        let cheapest = costs.find(|(_, places)| places & domain != 0);
        cheapest.map_or(0, |(cost, _)| *cost)
    }

    /// Bounds the loss for want of room.
    ///
    /// Proof. Call a load confined to a constraint if all places left to it are behind it. A load with no place left is
    /// counted separately. The confined loads that are placed add up to no more than the room left in the constraint,
    /// so those left out sum to at least the shortfall. The cheapest way to do that, allowing fractions of a load,
    /// costs no more than any real way. Committed loads are never left out. A surge row is taken with the peak that is
    /// already certain, which is weaker but also true.
    fn for_want_of_room(&self, domains: &[u64]) -> u64 {
        let mut stranded = 0;
        for load in self.undecided.iter().filter(|load| domains[*load] == 0) {
            if self.committed.contains(load) {
                return NEVER;
            }
            stranded += self.loss[load];
        }
        let mut worst = 0;
        self.charge(self.table.constraints.len());
        for (c, constraint) in self.table.constraints.iter().enumerate() {
            let room = constraint.capacity - self.used[c] - self.peak[c].max(self.pledged_peak[c]);
            // Not even everything undecided together exceeds the room.
            if self.demand[c] > room {
                worst = worst.max(self.knapsack(constraint, domains, room));
            }
        }
        stranded.saturating_add(worst).min(NEVER)
    }

    /// Returns the least loss that brings the sum down to the room, allowing fractions of a load.
    fn knapsack(&self, constraint: &Constraint, domains: &[u64], room: i64) -> u64 {
        self.charge(constraint.loads.len());
        let confined = |load: &usize| {
            let domain = domains[*load];
            self.undecided.contains(*load) && domain != 0 && domain & !constraint.places == 0
        };
        let loads = || constraint.loads.iter().filter(|(load, _)| confined(load));
        let mut short = loads().map(|(_, sum)| sum).sum::<i64>() - room;
        let mut lost = 0;
        for &(load, sum) in loads() {
            if short <= 0 {
                return lost;
            }
            if self.committed.contains(load) {
                continue;
            }
            if sum <= short {
                lost += self.loss[load];
            } else {
                // A fraction of the load, rounded up because losses are whole numbers.
                let part = u128::from(self.loss[load]) * u128::from(short.unsigned_abs());
                let part = part.div_ceil(u128::from(sum.unsigned_abs()));
                lost += u64::try_from(part).unwrap_or(self.loss[load]);
            }
            short -= sum;
        }
        if short > 0 { NEVER } else { lost }
    }

    /// Bounds the loss for want of sockets.
    ///
    /// Proof. A placing of the undecided loads is a matching of them to sockets. The sets of loads that can be matched
    /// are the independent sets of a transversal matroid, in which the greedy choice, heaviest first, has the greatest
    /// weight. An augmenting path decides whether one more can be matched in addition to those already matched.
    fn for_want_of_sockets(&self, domains: &[u64]) -> u64 {
        let mut matching = Matching {
            domains,
            free: self.sockets.clone(),
            guests: vec![LoadSet::default(); self.sockets.len()],
            seen: 0,
            work: 0,
        };
        let mut lost = 0;
        let served = self.undecided.intersection(&self.committed);
        let others = self.heaviest_first.iter().copied();
        let others = others.filter(|load| self.undecided.contains(*load) && !served.contains(*load));
        for load in served.iter().chain(others) {
            matching.seen = 0;
            if !matching.seat(load) {
                if served.contains(load) {
                    return NEVER;
                }
                lost += self.loss[load];
            }
        }
        self.charge(matching.work);
        lost
    }
}

/// A matching of loads to sockets.
struct Matching<'a> {
    domains: &'a [u64],
    free: Vec<u32>,
    guests: Vec<LoadSet>,
    seen: u64,
    work: usize,
}

impl Matching<'_> {
    fn seat(&mut self, load: usize) -> bool {
        self.work += 4;
        let place = bits(self.domains[load]).find(|place| self.free[*place] > 0);
        if let Some(place) = place {
            self.free[place] -= 1;
            self.guests[place].insert(load);
            return true;
        }
        for place in bits(self.domains[load]) {
            if self.seen >> place & 1 == 1 {
                continue;
            }
            self.seen |= 1 << place;
            self.work += 1;
            for guest in self.guests[place].iter() {
                self.work += 1;
                if self.seat(guest) {
                    self.guests[place].remove(guest);
                    self.guests[place].insert(load);
                    return true;
                }
            }
        }
        false
    }
}

//! Bounds on what must still be left out, each with its proof.

use super::super::set::LoadSet;
use super::search::Search;
use super::table::Constraint;

/// A loss that cannot be.
pub(super) const NEVER: u64 = u64::MAX / 4;

impl Search<'_> {
    /// At least this much weight of undecided loads must be left out; [`NEVER`] when not all that
    /// is to be served can be.
    ///
    /// Proof. Call a load confined to a region when all places left to it lie in the region; one
    /// with no place left is counted on its own instead. What is placed of the confined loads
    /// adds up, in any one constraint of that region, to no more than the room left there; each
    /// counts at least its least coefficient. So the loads left out sum, in those least
    /// coefficients, to at least the shortfall, and the cheapest way of that, allowing parts of a
    /// load, costs no more than any real way. Loads that are to be served are no choice in it.
    /// Surge rows are taken with the peak that is certain already: a weaker statement that is
    /// also true. Regions without a common place have no confined load in common, so their
    /// losses add; of two bounds on the same loads the greater stands.
    pub(super) fn least_loss(&self, domains: &[u64]) -> u64 {
        let mut stranded = 0;
        for load in self.undecided.iter().filter(|load| domains[*load] == 0) {
            if self.committed.contains(load) {
                return NEVER;
            }
            stranded += self.loss[load];
        }
        let mut losses = vec![0; self.regions.len()];
        // Smaller regions come first, so what is inside is known before what is round it.
        for (index, region) in self.regions.iter().enumerate() {
            let mut worst: u64 = region.inside.iter().map(|inside| losses[*inside]).sum();
            let mut confined = None;
            for &c in &region.constraints {
                let constraint = &self.constraints[c];
                let room =
                    constraint.capacity - self.used[c] - self.peak[c].max(self.pledged_peak[c]);
                // Not even all that is undecided passes it.
                if self.demand[c] <= room {
                    continue;
                }
                let confined = confined.get_or_insert_with(|| -> LoadSet {
                    self.undecided
                        .iter()
                        .filter(|l| domains[*l] != 0 && domains[*l] & !region.places == 0)
                        .collect()
                });
                worst = worst.max(self.knapsack(constraint, confined, room));
                if worst >= NEVER {
                    return NEVER;
                }
            }
            losses[index] = worst;
        }
        // The last region holds all places, so everything is inside it.
        stranded + losses.last().copied().unwrap_or(0)
    }

    /// The least loss, parts of a load allowed, that brings the sum down to the room.
    fn knapsack(&self, constraint: &Constraint, confined: &LoadSet, room: i64) -> u64 {
        let loads = constraint
            .loads
            .iter()
            .filter(|(load, _)| confined.contains(*load));
        let sum: i64 = loads.clone().map(|(_, least)| least).sum();
        let mut short = sum - room;
        let mut lost = 0;
        for &(load, least) in loads {
            if short <= 0 {
                return lost;
            }
            if self.committed.contains(load) {
                continue;
            }
            if least <= short {
                lost += self.loss[load];
            } else {
                // A part of it, rounded up: losses are whole numbers.
                let part = u128::from(self.loss[load]) * u128::from(short.unsigned_abs());
                let part = part.div_ceil(u128::from(least.unsigned_abs()));
                lost += u64::try_from(part).unwrap_or(self.loss[load]);
            }
            short -= least;
        }
        if short > 0 { NEVER } else { lost }
    }

    /// At least this much weight of undecided loads finds no socket, whatever else holds.
    ///
    /// Proof. A placing of the undecided loads is a matching of them to sockets. The sets of
    /// loads that can be matched are the independent sets of a transversal matroid, in which the
    /// greedy choice, heaviest first, has the greatest weight; an augmenting path says whether
    /// one more can be matched beside those that are.
    pub(super) fn unmatched(&self, domains: &[u64]) -> u64 {
        let mut matching = Matching {
            domains,
            free: self.sockets.clone(),
            guests: vec![LoadSet::default(); self.sockets.len()],
            seen: 0,
        };
        let mut lost = 0;
        for load in self.undecided.intersection(&self.committed).iter() {
            matching.seen = 0;
            if !matching.seat(load) {
                return NEVER;
            }
        }
        for &load in &self.heaviest_first {
            if self.undecided.contains(load) && !self.committed.contains(load) {
                matching.seen = 0;
                if !matching.seat(load) {
                    lost += self.loss[load];
                }
            }
        }
        lost
    }
}

/// A matching of loads to sockets.
struct Matching<'a> {
    domains: &'a [u64],
    free: Vec<u32>,
    guests: Vec<LoadSet>,
    seen: u64,
}

impl Matching<'_> {
    fn seat(&mut self, load: usize) -> bool {
        let mut left = self.domains[load];
        while left != 0 {
            let place = left.trailing_zeros() as usize;
            left &= left - 1;
            if self.free[place] > 0 {
                self.free[place] -= 1;
                self.guests[place].insert(load);
                return true;
            }
        }
        let mut left = self.domains[load] & !self.seen;
        while left != 0 {
            let place = left.trailing_zeros() as usize;
            self.seen |= 1 << place;
            for guest in self.guests[place].iter() {
                if self.seat(guest) {
                    self.guests[place].remove(guest);
                    self.guests[place].insert(load);
                    return true;
                }
            }
            left &= left - 1;
            left &= !self.seen;
        }
        false
    }
}

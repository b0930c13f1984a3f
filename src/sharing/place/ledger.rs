//! The books of a search: what is taken up where, and what is still open.

use super::search::Search;
use super::table::{bits, share};

impl Search<'_> {
    /// The places open to each undecided load.
    pub(super) fn open(&self) -> Vec<u64> {
        self.domains(&self.allowed)
    }

    /// The places where each undecided load still fits.
    pub(super) fn domains(&self, before: &[u64]) -> Vec<u64> {
        let places = self.model.sockets.len();
        // What is left of each constraint, and the peak that is certain.
        let left: Vec<(i64, i64)> = (0..self.constraints.len())
            .map(|c| {
                let room = self.constraints[c].capacity - self.used[c] - self.pledged[c];
                (room, self.peak[c].max(self.pledged_peak[c]))
            })
            .collect();
        let free = (0..places).fold(0, |free, place| {
            free | u64::from(self.sockets[place] > 0) << place
        });
        let mut domains = before.to_vec();
        for load in self.undecided.iter() {
            let alike = self.alike[load];
            let committed = self.committed.contains(load);
            // What fits of two alike is the same, unless one is pledged.
            if let Some(first) = alike
                && self.undecided.contains(first)
                && self.committed.contains(first) == committed
                && before[first] == before[load]
            {
                domains[load] = domains[first];
                continue;
            }
            let mut fits = 0;
            for place in bits(before[load] & free) {
                let fine = self.touches.at(load * places + place).iter().all(|touch| {
                    let own = if committed { touch.pledge } else { 0 };
                    let (room, peak) = left[touch.constraint];
                    touch.sum - own + peak.max(touch.peak) <= room
                });
                fits |= u64::from(fine) << place;
            }
            // Loads alike are seated in the order of their numbers at places that never fall:
            // exchanging two of them changes nothing, so every placing has one of that order.
            if let Some(first) = alike.and_then(|before| self.at[before]) {
                fits &= u64::MAX << first;
            }
            domains[load] = fits;
        }
        domains
    }

    /// Notes that a load will be served, wherever: what it adds to a constraint at every place
    /// it may go to is certain from now on.
    pub(super) fn commit(&mut self, load: usize) -> Vec<i64> {
        self.committed.insert(load);
        let mut undo = Vec::new();
        for pledge in &self.pledges[load] {
            let c = pledge.constraint;
            self.pledged[c] += pledge.sum;
            undo.push(self.pledged_peak[c]);
            self.pledged_peak[c] = self.pledged_peak[c].max(pledge.peak);
        }
        undo
    }

    pub(super) fn release(&mut self, load: usize, undo: &[i64]) {
        self.committed.remove(load);
        for (pledge, peak) in self.pledges[load].iter().zip(undo) {
            self.pledged[pledge.constraint] -= pledge.sum;
            self.pledged_peak[pledge.constraint] = *peak;
        }
    }

    pub(super) fn put(&mut self, load: usize, place: usize, places: usize) -> Vec<i64> {
        self.at[load] = Some(place);
        self.sockets[place] -= 1;
        // What was pledged is now counted where it is; a pledged peak may stay, for the real one
        // is no less.
        for pledge in &self.pledges[load] {
            self.pledged[pledge.constraint] -= pledge.sum;
        }
        let mut undo = Vec::new();
        for touch in self.touches.at(load * places + place) {
            let c = touch.constraint;
            self.used[c] += touch.sum;
            if self.constraints[c].surge {
                undo.push(self.peak[c]);
                self.peak[c] = self.peak[c].max(touch.peak);
            }
        }
        undo
    }

    pub(super) fn take(&mut self, load: usize, place: usize, places: usize, undo: &[i64]) {
        self.at[load] = None;
        self.sockets[place] += 1;
        for pledge in &self.pledges[load] {
            self.pledged[pledge.constraint] += pledge.sum;
        }
        let mut undo = undo.iter();
        for touch in self.touches.at(load * places + place) {
            let c = touch.constraint;
            self.used[c] -= touch.sum;
            if self.constraints[c].surge {
                self.peak[c] = undo.next().copied().unwrap_or(0);
            }
        }
    }

    /// How full the fullest row would be, in millionths, with this load there.
    pub(super) fn pressure(&self, load: usize, place: usize) -> i64 {
        self.touches
            .at(load * self.model.sockets.len() + place)
            .iter()
            .map(|touch| {
                let c = touch.constraint;
                let full = self.used[c] + touch.sum + self.peak[c].max(touch.peak);
                share(full, self.constraints[c].capacity)
            })
            .max()
            .unwrap_or(0)
    }

    pub(super) fn count_demand(&mut self, load: usize, sign: i64) {
        for (constraint, greatest) in &self.demands[load] {
            self.demand[*constraint] += sign * greatest;
        }
    }
}

//! States from which seating all that is left was found impossible, so that none is tried twice.

use super::search::Search;

/// How many words the memory of failed states may take: 16 MiB.
const MEMORY_WORDS: usize = 2 << 20;

impl Search<'_> {
    /// What the future depends on, besides which loads are undecided: the room in each constraint
    /// and place, and which loads may still come there. Room that the undecided loads cannot fill
    /// however they are placed is left out, for it decides nothing. Twins are told in an order
    /// that does not depend on their names.
    ///
    /// Proof that two nodes with the same undecided loads and the same key admit the same
    /// completions, but for the names of twins. Send every place to the one at the same spot of
    /// the other key, which is one of its kind: it has as many sockets and is open to the same
    /// loads. A constraint outside the key holds for all completions, one inside has the same
    /// room.
    pub(super) fn state(&self) -> Box<[i64]> {
        let mut key = Vec::new();
        // `demand` counts every undecided load's sum and peak, so at most that much, plus the
        // peak already standing, can still be asked for.
        let tight =
            |c: usize| self.constraints[c].capacity - self.used[c] < self.demand[c] + self.peak[c];
        let tell = |c: usize, key: &mut Vec<i64>| {
            key.push(self.constraints[c].capacity - self.used[c]);
            if self.constraints[c].surge {
                key.push(self.peak[c]);
            }
        };
        let twins = self.twins();
        for &c in &twins.shared {
            if tight(c) {
                key.push(i64::try_from(c).unwrap_or(i64::MAX));
                tell(c, &mut key);
            }
        }
        let undecided = u32::try_from(self.undecided.len()).unwrap_or(u32::MAX);
        let bounds: Vec<usize> = self.bounds().collect();
        let mut places: Vec<(usize, Vec<i64>)> = (0..self.sockets.len())
            .map(|place| {
                let mut here = vec![i64::from(self.sockets[place].min(undecided))];
                let open = bounds.iter().map(|bound| i64::from(*bound <= place));
                here.extend(open);
                for (spot, &c) in twins.own[place].iter().enumerate() {
                    if tight(c) {
                        here.push(i64::try_from(spot).unwrap_or(i64::MAX));
                        tell(c, &mut here);
                    }
                }
                (twins.kind[place], here)
            })
            .collect();
        places.sort();
        for (_, here) in places {
            key.push(-1);
            key.extend(here);
        }
        key.into_boxed_slice()
    }

    /// Whether seating all undecided loads was found impossible from this state before. Only
    /// states whose search came to its end without a placing are kept.
    pub(super) fn known_failure(&self, key: &[i64]) -> bool {
        // The key is compared by value, not by hash alone: equal means equal.
        self.memory.contains(&(self.undecided, Box::from(key)))
    }

    pub(super) fn remember(&mut self, key: Box<[i64]>) {
        if self.memory_words + key.len() <= MEMORY_WORDS {
            self.memory_words += key.len() + 8;
            self.memory.insert((self.undecided, key));
        }
    }
}

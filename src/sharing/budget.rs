//! How much work a command may do. Work is counted, never timed, so that the same plan gives the same answer on every
//! machine. What is counted is what takes time, so that the budget bounds it for a plan of any size.

/// Work left. One unit is one look at one load in one limit, two to five nanoseconds on a current computer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Budget {
    left: u64,
}

impl Budget {
    /// Creates a budget of this much work.
    #[must_use]
    pub const fn of(work: u64) -> Self {
        Self { left: work }
    }

    /// Returns the budget for the whole sharing of this many loads: one or two milliseconds up to 15 loads, ten to
    /// twenty at 40, and in proportion beyond that.
    #[must_use]
    pub const fn for_loads(loads: usize) -> Self {
        const SMALL: u64 = 500_000;
        const LARGE: u64 = 4_000_000;
        let loads = loads as u64;
        Self::of(match loads {
            0..=15 => SMALL,
            16..=40 => LARGE * loads * loads / (40 * 40),
            _ => LARGE * loads / 40,
        })
    }

    /// Spends work. Returns `false` if there is not enough, and then nothing is left.
    pub const fn spend(&mut self, work: u64) -> bool {
        let enough = work <= self.left;
        self.left = self.left.saturating_sub(work);
        enough
    }

    /// Whether nothing is left.
    #[must_use]
    pub const fn spent(&self) -> bool {
        self.left == 0
    }

    /// Returns how much work is left.
    #[must_use]
    pub const fn left(&self) -> u64 {
        self.left
    }

    /// Runs `work` on `parts / of` of what is left, and gives back what it does not spend.
    pub fn share<T>(&mut self, parts: u64, of: u64, work: impl FnOnce(&mut Self) -> T) -> T {
        let given = self.left / of * parts;
        let mut part = Self::of(given);
        let result = work(&mut part);
        self.left -= given - part.left;
        result
    }
}

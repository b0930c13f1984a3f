//! How much work a command may do. Counted, never timed, so that the same plan gives the same answer on
//! every machine; and counted in what takes time, so that it bounds that whatever the size of the plan.

/// Work left: one for each time that a load is looked at in a limit, which takes two to five
/// nanoseconds on a computer of the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Budget {
    left: u64,
}

impl Budget {
    /// So much work.
    #[must_use]
    pub const fn of(work: u64) -> Self {
        Self { left: work }
    }

    /// What the whole sharing of so many loads may take: one or two milliseconds to 15 loads, ten or
    /// twenty at 40, and from there as their number.
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

    /// Takes so much of it. `false` when there is not so much: then none is left.
    pub const fn spend(&mut self, work: u64) -> bool {
        let enough = work <= self.left;
        self.left = self.left.saturating_sub(work);
        enough
    }

    /// Whether it has come to its end.
    #[must_use]
    pub const fn spent(&self) -> bool {
        self.left == 0
    }

    /// How much is left.
    #[must_use]
    pub const fn left(&self) -> u64 {
        self.left
    }

    /// Does something with so many parts of so many that are left.
    pub fn share<T>(&mut self, parts: u64, of: u64, work: impl FnOnce(&mut Self) -> T) -> T {
        let given = self.left / of * parts;
        let mut part = Self::of(given);
        let result = work(&mut part);
        self.left -= given - part.left;
        result
    }
}

//! How much work a search may do: counted in steps, never in time, so that the same plan gives
//! the same answer on every machine.

/// Steps left to a search.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Budget {
    left: u64,
}

impl Budget {
    /// So many steps.
    #[must_use]
    pub const fn steps(steps: u64) -> Self {
        Self { left: steps }
    }

    /// Takes one step. `false` when none is left.
    pub const fn step(&mut self) -> bool {
        if self.left == 0 {
            return false;
        }
        self.left -= 1;
        true
    }

    /// Whether it has come to its end.
    #[must_use]
    pub const fn spent(&self) -> bool {
        self.left == 0
    }

    /// How many steps are left.
    #[must_use]
    pub const fn left(&self) -> u64 {
        self.left
    }

    /// A budget of its own, of so many steps of this one at most. [`Budget::put_back`] returns
    /// what is left of it.
    #[must_use]
    pub fn part(&mut self, steps: u64) -> Self {
        let steps = steps.min(self.left);
        self.left -= steps;
        Self { left: steps }
    }

    /// Takes back what is left of a part.
    pub const fn put_back(&mut self, part: &Self) {
        self.left += part.left;
    }

    /// Takes several steps at once, or all that are left.
    pub const fn spend(&mut self, steps: u64) {
        self.left = self.left.saturating_sub(steps);
    }
}

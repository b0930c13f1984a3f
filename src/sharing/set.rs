//! A small set of loads, by index in the model.

/// A set of loads as bits. Ordered and hashed by content, so that results are deterministic.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LoadSet([u64; Self::WORDS]);

impl LoadSet {
    const WORDS: usize = 5;

    /// One more than the greatest index it can hold.
    pub const CAPACITY: usize = 64 * Self::WORDS;

    /// Returns the set of all indices below `count`.
    #[must_use]
    pub fn below(count: usize) -> Self {
        (0..count).collect()
    }

    /// Adds a load.
    pub const fn insert(&mut self, load: usize) {
        self.0[load / 64] |= 1 << (load % 64);
    }

    /// Removes a load.
    pub const fn remove(&mut self, load: usize) {
        self.0[load / 64] &= !(1 << (load % 64));
    }

    /// Returns this set with a load added.
    #[must_use]
    pub const fn with(mut self, load: usize) -> Self {
        self.insert(load);
        self
    }

    /// Returns this set with a load removed.
    #[must_use]
    pub const fn without(mut self, load: usize) -> Self {
        self.remove(load);
        self
    }

    /// Whether the load is in the set.
    #[must_use]
    pub const fn contains(&self, load: usize) -> bool {
        self.0[load / 64] >> (load % 64) & 1 == 1
    }

    /// Returns the number of loads in the set.
    #[must_use]
    pub fn len(&self) -> usize {
        self.0.iter().map(|word| word.count_ones() as usize).sum()
    }

    /// Whether it is empty.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0 == [0; Self::WORDS]
    }

    /// Whether every load of this set is in the other.
    #[must_use]
    pub fn is_subset(&self, other: &Self) -> bool {
        self.0.iter().zip(&other.0).all(|(a, b)| a & !b == 0)
    }

    /// Returns the loads in both sets.
    #[must_use]
    pub fn intersection(self, other: &Self) -> Self {
        Self(std::array::from_fn(|word| self.0[word] & other.0[word]))
    }

    /// Returns the loads in either set.
    #[must_use]
    pub fn union(self, other: &Self) -> Self {
        Self(std::array::from_fn(|word| self.0[word] | other.0[word]))
    }

    /// Returns the loads of this set that are not in the other.
    #[must_use]
    pub fn minus(self, other: &Self) -> Self {
        Self(std::array::from_fn(|word| self.0[word] & !other.0[word]))
    }

    /// Iterates over the loads in ascending order.
    pub fn iter(self) -> impl Iterator<Item = usize> {
        let mut left = self.0;
        let mut first = 0;
        std::iter::from_fn(move || {
            first += left[first..].iter().position(|bits| *bits != 0)?;
            let bits = &mut left[first];
            let bit = bits.trailing_zeros() as usize;
            *bits &= *bits - 1;
            Some(first * 64 + bit)
        })
    }
}

impl FromIterator<usize> for LoadSet {
    fn from_iter<I: IntoIterator<Item = usize>>(numbers: I) -> Self {
        let mut set = Self::default();
        for number in numbers {
            set.insert(number);
        }
        set
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_of_the_set_are_joined() {
        let numbers = [0, 63, 64, 255, LoadSet::CAPACITY - 1];
        let set: LoadSet = numbers.into_iter().collect();
        assert_eq!(set.iter().collect::<Vec<_>>(), numbers);
        assert_eq!(set.len(), numbers.len());
        assert!(set.without(63).is_subset(&set) && !set.is_subset(&set.without(255)));
    }
}

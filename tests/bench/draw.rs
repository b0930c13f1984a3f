//! Repeatable pseudorandom numbers.

/// Marsaglia's 32-bit xorshift.
pub struct Draw(u32);

impl Draw {
    /// Creates a generator whose sequence depends on the seed.
    pub fn new(seed: u32) -> Self {
        let mut draw = Self(seed.wrapping_mul(2_654_435_761) | 1);
        // Sequences of neighboring seeds start out similar.
        for _ in 0..8 {
            draw.below(2);
        }
        draw
    }

    pub fn below(&mut self, most: u32) -> u32 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 17;
        self.0 ^= self.0 << 5;
        self.0 % most
    }

    pub fn one_of<'a>(&mut self, list: &[&'a str]) -> &'a str {
        list[self.below(u32::try_from(list.len()).expect("a short list")) as usize]
    }
}

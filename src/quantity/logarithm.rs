//! Integer logarithms, identical on every machine.

/// The number of fractional bits.
pub(crate) const BITS: u32 = 40;

/// Returns the base-2 logarithm of `above / below` with [`BITS`] fractional bits, rounded down. Arguments below one
/// count as one.
pub(crate) fn log2(above: i64, below: i64) -> i128 {
    // The ratio with 64 fractional bits, as a power of two times a mantissa in 1..2.
    let ratio = (u128::from(above.max(1).unsigned_abs()) << 64) / u128::from(below.max(1).unsigned_abs());
    let whole = i64::from(ratio.max(1).ilog2()) - 64;
    // The mantissa has 63 fractional bits.
    let shift = 63 - 64 - whole;
    let mut mantissa = if shift >= 0 { ratio.max(1) << shift } else { ratio >> -shift };
    // Squaring doubles the logarithm, so each time the mantissa passes two, the next bit is set.
    let mut log = i128::from(whole);
    for _ in 0..BITS {
        mantissa = (mantissa * mantissa) >> 63;
        log <<= 1;
        if mantissa >> 64 != 0 {
            mantissa >>= 1;
            log |= 1;
        }
    }
    log
}

/// Returns `scale` times two to the power of `log`, which has [`BITS`] fractional bits, rounded down. The result must
/// fit in 60 bits.
pub(crate) fn exp2(log: i128, scale: u32) -> u128 {
    const POINT: u32 = 62;
    let mut power: u128 = 1 << POINT;
    // Two, its square root, the square root of that, and so on.
    let mut root: u128 = 2 << POINT;
    for bit in (0..BITS).rev() {
        root = (root << POINT).isqrt();
        if log & (1 << bit) != 0 {
            power = (power * root) >> POINT;
        }
    }
    let whole = log >> BITS;
    let scaled = power * u128::from(scale);
    let down = i128::from(POINT) - whole;
    u32::try_from(down).ok().and_then(|down| scaled.checked_shr(down)).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn powers_and_roots_of_two() {
        assert_eq!(log2(8, 1), 3 << BITS);
        assert_eq!(log2(1, 4), -(2 << BITS));
        assert_eq!(exp2(3 << BITS, 1000), 8000);
        assert_eq!(exp2(-(2 << BITS), 1000), 250);
        // The square root of two is 1.41421356.
        assert_eq!(exp2(1 << (BITS - 1), 100_000_000), 141_421_356);
    }

    #[test]
    fn one_undoes_the_other() {
        for (above, below) in [(3, 1), (20, 264), (7, 5), (1, 1000)] {
            let there = exp2(log2(above, below), 1_000_000);
            let exact = u128::from(above.unsigned_abs()) * 1_000_000 / u128::from(below.unsigned_abs());
            assert!(there.abs_diff(exact) <= 1, "{above}/{below}: {there}");
        }
    }
}

//! Finds the name that somebody probably meant.

/// Returns the candidate with the greatest likeness, the first of equals, or `None` if none has at least `least`.
pub fn nearest<'c>(
    candidates: impl IntoIterator<Item = &'c str>,
    least: f64,
    likeness: impl Fn(&str) -> f64,
) -> Option<&'c str> {
    let all = candidates.into_iter().map(|candidate| (likeness(candidate), candidate));
    let alike = all.filter(|(likeness, _)| *likeness >= least);
    alike.reduce(|best, next| if next.0 > best.0 { next } else { best }).map(|(_, nearest)| nearest)
}

/// Returns how similar two texts are, from 0 to 1.
#[must_use]
pub fn likeness(one: &str, other: &str) -> f64 {
    strsim::normalized_damerau_levenshtein(one, other)
}

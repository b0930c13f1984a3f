//! Two invented plans for `demo`: a weekend as a family might pack for it, and the same weekend
//! put right. Invented people, place and gear.

/// The weekend as packed, with dangers in it.
pub const WEEKEND: &str = include_str!("weekend.toml");

/// The same weekend with every danger and warning cleared that its owners can clear.
pub const MENDED: &str = include_str!("weekend-mended.toml");

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Answer, LoadKind, read};

    #[test]
    fn both_read_without_problems() {
        for text in [WEEKEND, MENDED] {
            let plan = read(text).unwrap_or_else(|problems| panic!("{problems}"));
            assert!(plan.loads.len() >= 8);
        }
    }

    #[test]
    fn mending_takes_the_splitter_and_the_medical_load_away() {
        let (packed, mended) = (read(WEEKEND).unwrap(), read(MENDED).unwrap());
        let splitter = |plan: &crate::plan::Plan| {
            plan.cords
                .iter()
                .any(|cord| cord.ends.len() > 1 && cord.plug.0.rating().milliamps() > 20_000)
        };
        let medical = |plan: &crate::plan::Plan| {
            plan.loads
                .iter()
                .any(|load| load.kind == Answer::Known(LoadKind::Medical))
        };
        assert!(splitter(&packed) && !splitter(&mended));
        assert!(medical(&packed) && !medical(&mended));
        assert!(packed.site.sleepers_at.known() < mended.site.sleepers_at.known());
    }
}

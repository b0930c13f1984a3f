//! When a camp is quiet, and when people in it sleep.

use std::borrow::Cow;

use crate::plan::{Site, Span};

/// The quiet hours that are taken where nobody knows them: 22:00 to 06:00 (common practice, no source).
pub const NIGHT: Span = Span {
    from: 22 * 60,
    to: 6 * 60,
};

/// Longer quiet hours than these, in minutes, are no night: a camp that lets engines run for an hour or
/// two at noon does not sleep for the rest of the day.
const LONGEST_NIGHT: u16 = 12 * 60;

/// When the camp must be quiet; where nobody knows, [`NIGHT`]. Empty where somebody said that it need
/// not be.
#[must_use]
pub fn quiet(site: &Site) -> Cow<'_, [Span]> {
    match site.quiet_hours.known() {
        Some(spans) => Cow::Borrowed(spans),
        None => Cow::Owned(vec![NIGHT]),
    }
}

/// When people are taken to sleep: of the quiet hours those that share the most minutes with
/// [`NIGHT`], and [`NIGHT`] itself where none do.
#[must_use]
pub fn night(site: &Site) -> Span {
    let known = site.quiet_hours.known().map_or(&[][..], Vec::as_slice);
    let nights = known
        .iter()
        .rev()
        .map(|span| (span.minutes_in_both(NIGHT), *span));
    let nights = nights.filter(|(shared, span)| *shared > 0 && span.minutes() <= LONGEST_NIGHT);
    // The first of several alike: `max_by_key` gives the last.
    nights
        .max_by_key(|(shared, _)| *shared)
        .map_or(NIGHT, |(_, span)| span)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Answer;

    fn span(from: u16, to: u16) -> Span {
        Span {
            from: from * 60,
            to: to * 60,
        }
    }

    fn site(quiet: Answer<Vec<Span>>) -> Site {
        Site {
            quiet_hours: quiet,
            ..Site::default()
        }
    }

    #[test]
    fn the_night_is_the_quiet_hours_in_which_people_sleep() {
        for (quiet, expected) in [
            (vec![span(23, 7)], span(23, 7)),
            // Generator hours from 8 to 10 and from 16 to 20.
            (vec![span(10, 16), span(20, 8)], span(20, 8)),
            (vec![span(20, 8), span(10, 16)], span(20, 8)),
            // A nap is no night, and neither is a camp in which engines run for four hours a day.
            (vec![span(13, 15)], NIGHT),
            (vec![span(14, 10)], NIGHT),
            (vec![], NIGHT),
            // The first of two that are alike.
            (vec![span(22, 2), span(2, 6)], span(22, 2)),
        ] {
            assert_eq!(
                night(&site(Answer::Known(quiet.clone()))),
                expected,
                "{quiet:?}"
            );
        }
        assert_eq!(night(&site(Answer::Unknown)), NIGHT);
        assert_eq!(night(&site(Answer::Missing)), NIGHT);
    }

    #[test]
    fn what_nobody_knows_is_quiet_at_night_and_none_is_none() {
        assert_eq!(*quiet(&site(Answer::Unknown)), [NIGHT]);
        assert_eq!(*quiet(&site(Answer::Missing)), [NIGHT]);
        assert!(quiet(&site(Answer::Known(vec![]))).is_empty());
    }
}

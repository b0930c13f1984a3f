//! When a camp is quiet, and when people in it sleep.

use std::borrow::Cow;

use crate::plan::{Site, Span};

/// The quiet hours assumed where they are unknown: 22:00 to 06:00 (common practice, no source).
pub const NIGHT: Span = Span { from: 22 * 60, to: 6 * 60 };

/// The longest quiet hours that count as a night, in minutes. A camp that allows engines for an hour or two at noon
/// does not sleep the rest of the day.
const LONGEST_NIGHT: u16 = 12 * 60;

/// Returns when the camp must be quiet. Where that is unknown, [`NIGHT`] if anybody sleeps here. Empty if the plan says
/// that it need not be quiet.
#[must_use]
pub fn quiet(site: &Site) -> Cow<'_, [Span]> {
    match site.quiet_hours.known() {
        Some(spans) => Cow::Borrowed(spans),
        None if site.sleeps() => Cow::Owned(vec![NIGHT]),
        None => Cow::Borrowed(&[]),
    }
}

/// Returns the quiet hours of the plan that overlap most with [`NIGHT`], or `None` if none do or they are unknown.
#[must_use]
pub fn told(site: &Site) -> Option<Span> {
    let known = site.quiet_hours.known()?;
    // Reversed, because `max_by_key` returns the last of equals and the first is wanted.
    let nights = known.iter().rev();
    let nights = nights.map(|span| (span.minutes_in_both(NIGHT), *span));
    let nights = nights.filter(|(shared, span)| *shared > 0 && span.minutes() <= LONGEST_NIGHT);
    nights.max_by_key(|(shared, _)| *shared).map(|(_, span)| span)
}

/// Returns the night according to the quiet hours, or else [`NIGHT`].
#[must_use]
pub fn night(site: &Site) -> Span {
    told(site).unwrap_or(NIGHT)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Answer;

    fn span(from: u16, to: u16) -> Span {
        Span { from: from * 60, to: to * 60 }
    }

    fn site(quiet: Answer<Vec<Span>>) -> Site {
        Site { quiet_hours: quiet, ..Site::default() }
    }

    #[test]
    fn the_night_is_the_quiet_hours_in_which_people_sleep() {
        for (quiet, expected) in [
            (vec![span(23, 7)], Some(span(23, 7))),
            // Engines may run from 8 to 10 and from 16 to 20.
            (vec![span(10, 16), span(20, 8)], Some(span(20, 8))),
            (vec![span(20, 8), span(10, 16)], Some(span(20, 8))),
            // A nap is no night, and neither are quiet hours that leave only four hours for engines.
            (vec![span(13, 15)], None),
            (vec![span(14, 10)], None),
            (vec![], None),
            // The first of two equals.
            (vec![span(22, 2), span(2, 6)], Some(span(22, 2))),
        ] {
            let site = site(Answer::Known(quiet));
            assert_eq!(told(&site), expected, "{site:?}");
            assert_eq!(night(&site), expected.unwrap_or(NIGHT), "{site:?}");
        }
        assert_eq!(night(&site(Answer::Unknown)), NIGHT);
        assert_eq!(night(&site(Answer::Missing)), NIGHT);
    }

    #[test]
    fn what_nobody_knows_is_quiet_at_night_and_none_is_none() {
        assert_eq!(*quiet(&site(Answer::Unknown)), [NIGHT]);
        assert_eq!(*quiet(&site(Answer::Missing)), [NIGHT]);
        assert!(quiet(&site(Answer::Known(vec![]))).is_empty());
        // Where nobody sleeps, nobody need be quiet unless the plan says so.
        let market = |quiet_hours| Site { people_sleep: Answer::Known(false), ..site(quiet_hours) };
        assert!(quiet(&market(Answer::Unknown)).is_empty());
        let noon = vec![span(12, 14)];
        assert_eq!(*quiet(&market(Answer::Known(noon.clone()))), noon);
    }
}

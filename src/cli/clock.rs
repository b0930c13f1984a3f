//! The clock and the calendar, which only the shell reads.

use std::time::{SystemTime, UNIX_EPOCH};

use tallywatt::words::Words;

/// Returns today's date in UTC, as [`date`] formats it.
#[allow(clippy::disallowed_methods)] // only the shell reads the clock
pub(super) fn today() -> String {
    date(SystemTime::now()).unwrap_or_default()
}

/// Says how long ago something was saved.
#[allow(clippy::disallowed_methods)] // only the shell tells how old a draft is
pub(super) fn age(saved: SystemTime, words: &Words) -> String {
    let minutes = saved.elapsed().map_or(0, |passed| passed.as_secs() / 60);
    let (key, count) = match minutes {
        0..60 => ("interview-age-minutes", minutes),
        60..1440 => ("interview-age-hours", minutes / 60),
        _ => ("interview-age-days", minutes / 1440),
    };
    words.with(key, [("count", count.into())])
}

/// Returns the UTC date of a moment in ISO 8601, the same in every language: `2001-09-09`. `None` before 1970.
///
/// The standard library knows no time zones, so late in the evening the date may be the next day. A draft's age is
/// shown beside it.
pub(super) fn date(saved: SystemTime) -> Option<String> {
    let seconds = saved.duration_since(UNIX_EPOCH).ok()?.as_secs();
    let (year, month, day) = civil(seconds / 86_400);
    Some(format!("{year:04}-{month:02}-{day:02}"))
}

/// Returns the Gregorian year, month and day that lie `days` after 1970-01-01.
///
/// Years count from March, so that a leap day is the last of its year and the lengths of the months before it repeat:
/// 153 days in every five. A cycle of 400 years has 146,097 days, and 719,468 days lie between 0000-03-01 and
/// 1970-01-01.
const fn civil(days: u64) -> (u64, u64, u64) {
    let days = days + 719_468;
    let in_cycle = days % 146_097;
    let year_of_cycle = (in_cycle - in_cycle / 1460 + in_cycle / 36_524 - in_cycle / 146_096) / 365;
    let in_year = in_cycle - (365 * year_of_cycle + year_of_cycle / 4 - year_of_cycle / 100);
    let from_march = (5 * in_year + 2) / 153;
    let day = in_year - (153 * from_march + 2) / 5 + 1;
    let month = if from_march < 10 { from_march + 3 } else { from_march - 9 };
    let year = days / 146_097 * 400 + year_of_cycle + (month <= 2) as u64;
    (year, month, day)
}

#[cfg(test)]
mod tests {
    use std::time::Duration;

    use super::*;

    /// The dates match those of GNU coreutils: `date -u -d @SECONDS +%F`.
    #[test]
    fn days_of_known_seconds() {
        for (seconds, day) in [
            (0, "1970-01-01"),
            (951_782_399, "2000-02-28"),
            (951_782_400, "2000-02-29"),
            (951_868_800, "2000-03-01"),
            (1_000_000_000, "2001-09-09"),
            (1_234_567_890, "2009-02-13"),
            (1_798_761_599, "2026-12-31"),
            (2_147_483_648, "2038-01-19"),
            (4_107_456_000, "2100-02-28"),
            (4_107_542_400, "2100-03-01"),
        ] {
            let saved = UNIX_EPOCH + Duration::from_secs(seconds);
            assert_eq!(date(saved).as_deref(), Some(day), "{seconds}");
        }
        assert_eq!(date(UNIX_EPOCH - Duration::from_secs(1)), None);
    }

    /// Every day for 800 years agrees with the lengths of the months.
    #[test]
    fn no_day_is_left_out_or_comes_twice() {
        let (mut year, mut month, mut day) = (1970, 1, 1);
        for days in 0..292_194 {
            assert_eq!(civil(days), (year, month, day));
            let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
            let length = match month {
                2 if leap => 29,
                2 => 28,
                4 | 6 | 9 | 11 => 30,
                _ => 31,
            };
            day += 1;
            if day > length {
                (month, day) = (month + 1, 1);
            }
            if month > 12 {
                (year, month) = (year + 1, 1);
            }
        }
    }
}

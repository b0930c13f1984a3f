//! Fuel over a day: what burns minute by minute, and how much of it between two chances to refuel.
//!
//! Between two published loads, the fuel burned in an hour is taken from a straight line plus a tenth, because engines
//! burn up to about that much more (common practice, no source), but never more than at the next published load. Below
//! the least published load the time stays the same. Above the greatest it falls in proportion.

use std::collections::BTreeMap;

use super::{Burn, Stretch};
use crate::plan::{Generator, Site, Span};
use crate::quantity::{Hours, Percent, Power, narrow};
use crate::tables::cooling::ENGINE_MINUTES;
use crate::tables::night::night;
use crate::tables::refuel::{BESIDE, POUR, UNKNOWN_TANK, USABLE_FOR_LIFE};

/// Minutes in a day.
pub(super) const DAY: usize = Span::DAY as usize;
/// The parts in a tank, the unit in which fuel is counted.
const TANK: i128 = 1_000_000_000_000;
/// A whole tank, or all of the rated power.
const WHOLE: Percent = Percent::from_millipercent(100_000);

/// What runs in each minute of a day.
pub(super) struct Day {
    /// The demand on all generators together, in milliwatts.
    pub demand: [i64; DAY],
    /// Whether something runs that does not wait for refueling.
    pub busy: [bool; DAY],
    /// Whether something runs that somebody's health depends on.
    pub life: [bool; DAY],
}

/// Fuel over a day.
pub(super) struct Fuel {
    /// What each demand of the day burns, greatest first. Empty where no running time is known.
    pub burns: Vec<Burn>,
    /// The share of a tank that each generator burns in the day. `None` where no running time is known.
    pub day: Option<Percent>,
    /// The stretch between two chances to refuel that burns the most of what may be used.
    pub stretch: Option<Stretch>,
}

/// Computes the fuel for a day. `apart` is a demand in milliwatts, and the minutes it lasts at a time when nothing else
/// runs.
pub(super) fn of_day(set: &Generator, site: &Site, day: &Day, apart: (i64, i64)) -> Fuel {
    let runs = running(&day.demand);
    let mut minutes: BTreeMap<i64, i64> = BTreeMap::new();
    for (demand, runs) in day.demand.iter().zip(&runs) {
        if *runs {
            *minutes.entry(*demand).or_default() += 1;
        }
    }
    let rates: BTreeMap<i64, Rate> = minutes.keys().map(|demand| (*demand, Rate::of(set, *demand))).collect();
    let by_minute: Vec<i128> = day
        .demand
        .iter()
        .zip(&runs)
        .map(|(demand, runs)| match rates.get(demand) {
            Some(rate) if *runs => rate.of_minutes(1, TANK),
            _ => 0,
        })
        .collect();
    let stretch = worst(&by_minute, &refuelled(site, day), &day.life);
    if !is_known(set) {
        return Fuel { burns: Vec::new(), day: None, stretch };
    }
    if apart.0 > 0 {
        *minutes.entry(apart.0).or_default() += apart.1;
    }
    let burns: Vec<Burn> = minutes
        .iter()
        .rev()
        .filter_map(|(demand, minutes)| {
            let part = Rate::of(set, *demand).of_minutes(*minutes, WHOLE.millipercent().into());
            Some(Burn {
                watts: Power::from_milliwatts(*demand),
                hours: Hours::from_millihours((minutes * 1000 + 59) / 60),
                hours_per_tank: hours_per_tank(set, Power::from_milliwatts(*demand))?,
                burns: Percent::from_millipercent(narrow(part)),
            })
        })
        .collect();
    // Summed in parts, since each entry of `burns` is already rounded up.
    let day = minutes.iter().map(|(demand, minutes)| Rate::of(set, *demand).of_minutes(*minutes, TANK));
    Fuel { day: Some(told(day.sum())), burns, stretch }
}

/// Returns the minutes in which the engine runs: while there is demand, and through breaks too short to stop it for.
fn running(demand: &[i64; DAY]) -> [bool; DAY] {
    let idle = demand.map(|demand| demand == 0);
    let mut runs = idle.map(|idle| !idle);
    if runs.contains(&true) {
        let before = lengths(&idle);
        for end in 0..DAY {
            // The last minute of a short break.
            let length = before[end];
            if length > 0 && length < usize::from(ENGINE_MINUTES + POUR) && !idle[(end + 1) % DAY] {
                for back in 0..length {
                    runs[(end + DAY - back) % DAY] = true;
                }
            }
        }
    }
    runs
}

/// Returns, for each minute, the length of the run of `true` that ends with it, across midnight too.
fn lengths(so: &[bool; DAY]) -> [usize; DAY] {
    let mut lengths = [0; DAY];
    let mut length = 0;
    // Twice around, so that a run across midnight is seen whole.
    for minute in (0..DAY).chain(0..DAY) {
        length = if so[minute] { length + 1 } else { 0 };
        lengths[minute] = length;
    }
    lengths
}

/// Returns the minutes at whose start the tank may be full. Before that the engine was off and cooling, and then
/// somebody poured, by day, and not within an hour of the night of a load that somebody's health depends on.
fn refuelled(site: &Site, day: &Day) -> [bool; DAY] {
    let night = night(site);
    let mut dark = [false; DAY];
    for (minute, dark) in (0..).zip(&mut dark) {
        // Pouring is quiet, so for an early start it may be done just before the day begins.
        *dark = night.contains(minute) && night.contains((minute + POUR) % Span::DAY);
    }
    let near = beside(&day.life, &dark);
    let off = lengths(&day.busy.map(|busy| !busy));
    let mut fit = [false; DAY];
    for minute in 0..DAY {
        fit[minute] = !day.busy[minute] && !dark[minute] && !near[minute];
    }
    let fit = lengths(&fit);
    let mut full = [false; DAY];
    for minute in 0..DAY {
        full[(minute + 1) % DAY] =
            off[minute] >= usize::from(ENGINE_MINUTES + POUR) && fit[minute] >= usize::from(POUR);
    }
    full
}

/// Returns the minutes of every run in `life` that reaches into the dark, and the hour on either side of it.
fn beside(life: &[bool; DAY], dark: &[bool; DAY]) -> [bool; DAY] {
    let mut near = [false; DAY];
    for forward in [true, false] {
        let mut reaches = false;
        // Minutes still to mark after the run.
        let mut left = 0;
        for step in 0..2 * DAY {
            let at = if forward { step } else { 2 * DAY - 1 - step };
            let minute = at % DAY;
            reaches = life[minute] && (reaches || dark[minute]);
            left = if reaches { BESIDE + 1 } else { left };
            if left > 0 {
                near[minute] = true;
                left -= 1;
            }
        }
    }
    near
}

/// Returns the stretch between two chances to refuel that burns the most of what may be used. The first wins a tie.
fn worst(burnt: &[i128], full: &[bool; DAY], life: &[bool; DAY]) -> Option<Stretch> {
    let starts: Vec<usize> = (0..DAY).filter(|minute| full[*minute]).collect();
    let stretch = |from: usize, minutes: usize| -> Option<Stretch> {
        let minute = |at: usize| (from + at) % DAY;
        let first = (0..minutes).find(|at| burnt[minute(*at)] > 0)?;
        let last = (0..minutes).rfind(|at| burnt[minute(*at)] > 0)?;
        let lives = (first..=last).any(|at| life[minute(at)]);
        let sum: i128 = (first..=last).map(|at| burnt[minute(at)]).sum();
        let clock = |minute: usize| u16::try_from(minute).unwrap_or(Span::DAY);
        let lasts = i64::try_from(last + 1 - first).unwrap_or(i64::MAX);
        Some(Stretch {
            span: Span { from: clock(minute(first)), to: clock(minute(last) + 1) },
            hours: Hours::from_millihours((lasts * 1000 + 59) / 60),
            burns: told(sum),
            usable: if lives { USABLE_FOR_LIFE } else { WHOLE },
            life: Vec::new(),
        })
    };
    let mut all: Vec<Stretch> = Vec::new();
    for (at, from) in starts.iter().enumerate() {
        let next = starts.get(at + 1).map_or(starts[0] + DAY, |next| *next);
        all.extend(stretch(*from, next - from));
    }
    if starts.is_empty() {
        all.extend(stretch(0, DAY));
    }
    let need = |it: &Stretch| {
        let of = |part: Percent| i128::from(part.millipercent());
        of(it.burns) * 1_000_000 / of(it.usable)
    };
    all.into_iter().reduce(|worst, next| if need(&next) > need(&worst) { next } else { worst })
}

/// Converts parts to a percentage of a tank, rounded up. Each minute was rounded up by less than one part, so fewer
/// than a million parts are dropped first.
fn told(parts: i128) -> Percent {
    let millionths = parts / (TANK / 1_000_000);
    Percent::from_millipercent(narrow((millionths + 9) / 10))
}

/// Returns the share of its rated power that each generator gives at this total demand, in thousandths of a percent,
/// rounded up. `None` where the rated power is unknown.
fn share(set: &Generator, demand: Power) -> Option<i128> {
    let sets = set.sets();
    // Generators in parallel share the load evenly, each from its own tank.
    let each = i128::from((demand.milliwatts() + sets - 1) / sets);
    let rated = i128::from(set.rated.known()?.milliwatts());
    (rated > 0).then(|| (each * i128::from(WHOLE.millipercent()) + rated - 1) / rated)
}

/// Returns the share of its rated power that each generator gives at this demand, at most all of it. `None` where the
/// rated power is unknown.
pub(super) fn load(set: &Generator, demand: Power) -> Option<Percent> {
    let share = share(set, demand)?;
    Some(Percent::from_millipercent(narrow(share)).min(WHOLE))
}

/// Whether a time on one tank can be given: rated power and some running time are known.
fn is_known(set: &Generator) -> bool {
    hours_per_tank(set, Power::ZERO).is_some()
}

/// Returns the time on one tank at this total demand, rounded down. `None` without a rated power or published running
/// times.
pub(super) fn hours_per_tank(set: &Generator, demand: Power) -> Option<Hours> {
    Some(Rate::published(set, share(set, demand)?)?.lasts())
}

/// Returns the time on one tank that counts where none can be given: 3 h, or the published time at full load if that is
/// shorter. Rounded down.
pub(crate) fn assumed_hours(set: &Generator) -> Hours {
    Rate::assumed(set).lasts()
}

/// Tanks burned in an hour, as the fraction `above / below`.
#[derive(Clone, Copy, Debug)]
struct Rate {
    above: i128,
    below: i128,
}

impl Rate {
    fn at(lasts: Hours) -> Self {
        Self { above: 1000, below: lasts.millihours().into() }
    }

    /// Returns what each generator burns at this total demand in milliwatts, or the assumed rate where no running time
    /// is known.
    fn of(set: &Generator, demand: i64) -> Self {
        let share = share(set, Power::from_milliwatts(demand));
        share.and_then(|share| Self::published(set, share)).unwrap_or_else(|| Self::assumed(set))
    }

    /// Returns the rate where no time on one tank can be given. With an unknown rated power, full load is the most that
    /// it can burn.
    fn assumed(set: &Generator) -> Self {
        let unknown = Self::at(UNKNOWN_TANK);
        let full = Self::published(set, WHOLE.millipercent().into());
        full.filter(|full| full.exceeds(unknown)).unwrap_or(unknown)
    }

    /// Returns the time on one tank, rounded down.
    fn lasts(self) -> Hours {
        Hours::from_millihours(narrow(1000 * self.below / self.above))
    }

    /// Returns the rate at this share of rated load, in thousandths of a percent. `None` without published running
    /// times.
    fn published(set: &Generator, share: i128) -> Option<Self> {
        let mut points: Vec<(i128, i128)> = set
            .runtime
            .iter()
            .filter(|point| point.lasts.millihours() > 0)
            .map(|point| (i128::from(point.load.millipercent()), i128::from(point.lasts.millihours())))
            .collect();
        points.sort_unstable();
        // A time that grows with the load is probably mixed up, so it is cut to the time at the smaller load.
        let mut least = i128::MAX;
        for (_, lasts) in &mut points {
            least = least.min(*lasts);
            *lasts = least;
        }
        let above = points.iter().find(|(load, _)| *load >= share);
        let below = points.iter().rfind(|(load, _)| *load < share);
        Some(match (below, above) {
            (_, None) => {
                let (load, lasts) = *points.last()?;
                Self { above: 1000 * share, below: (load * lasts).max(1) }
            }
            (Some((from, a)), Some((to, b))) if *to > share => {
                // 1 / a + (1 / b - 1 / a) x, where x is the fraction of the way from one load to the other, plus a
                // tenth.
                let width = to - from;
                let line =
                    Self { above: 11 * 1000 * (b * width + (a - b) * (share - from)), below: 10 * a * b * width };
                let most = Self { above: 1000, below: *b };
                if line.exceeds(most) { most } else { line }
            }
            (_, Some((_, lasts))) => Self { above: 1000, below: *lasts },
        })
    }

    const fn exceeds(self, other: Self) -> bool {
        self.above * other.below > other.above * self.below
    }

    /// Returns what burns in this many minutes, rounded up, in parts of which a tank has `tank`.
    fn of_minutes(self, minutes: i64, tank: i128) -> i128 {
        let below = self.below * 60;
        (i128::from(minutes) * self.above * tank + below - 1) / below
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Answer, Runtime};

    /// Returns a generator of 2,000 W: 8 h at a quarter load and 3 h at full load.
    fn set() -> Generator {
        let point = |percent: i64, millihours: i64| Runtime {
            load: Percent::from_millipercent(percent * 1000),
            lasts: Hours::from_millihours(millihours),
        };
        Generator {
            rated: Answer::Known(Power::from_milliwatts(2_000_000)),
            runtime: vec![point(100, 3000), point(25, 8000)],
            ..Generator::default()
        }
    }

    fn hours(watts: i64) -> i64 {
        hours_per_tank(&set(), Power::from_milliwatts(watts * 1000)).expect("running times").millihours()
    }

    #[test]
    fn published_times_are_met_and_never_exceeded() {
        assert_eq!(hours(500), 8000);
        assert_eq!(hours(2000), 3000);
        // Less load promises no more time, and more load burns more.
        assert_eq!(hours(100), 8000);
        assert_eq!(hours(4000), 1500);
    }

    #[test]
    fn between_two_points_fuel_lies_a_tenth_above_the_line() {
        // Halfway from 25 % to 100 %: (1/8 + 1/3) / 2 tanks an hour plus a tenth is 3.9669 h.
        assert_eq!(hours(1250), 3966);
        // Never more than at the next published load: at 96 % the line plus a tenth would be 0.3544 tanks.
        assert_eq!(hours(1920), 3000);
        let mut last = i64::MAX;
        for watts in (100..3000).step_by(50) {
            assert!(hours(watts) <= last, "{watts} W");
            last = hours(watts);
        }
    }

    #[test]
    fn no_published_time_no_promise() {
        let mut set = set();
        set.runtime.clear();
        assert_eq!(hours_per_tank(&set, Power::from_milliwatts(1_000_000)), None);
    }

    /// If two figures are mixed up, the time at the higher load promises no more than the other.
    #[test]
    fn more_load_never_lasts_longer() {
        let mut set = set();
        set.runtime.swap(0, 1);
        let point = |at: usize| set.runtime[at].lasts;
        let (first, second) = (point(0), point(1));
        set.runtime[0].lasts = second;
        set.runtime[1].lasts = first;
        let hours = |watts: i64| hours_per_tank(&set, Power::from_milliwatts(watts * 1000));
        assert_eq!(hours(500), hours(2000));
        assert_eq!(hours(2000), Some(Hours::from_millihours(3000)));
    }

    /// Returns a day in which loads run, each given as from, to, watts, and whether it "waits" for refueling or
    /// somebody's "life" depends on it.
    fn day(loads: &[(u16, u16, i64, &str)]) -> Day {
        let mut day = Day { demand: [0; DAY], busy: [false; DAY], life: [false; DAY] };
        for (from, to, watts, how) in loads {
            let span = Span { from: *from, to: *to };
            for minute in (0..DAY).filter(|it| span.contains(u16::try_from(*it).expect("a minute"))) {
                day.demand[minute] += watts * 1000;
                day.busy[minute] |= *how != "waits";
                day.life[minute] |= *how == "life";
            }
        }
        day
    }

    /// Returns the worst stretch of a day whose night is 22:00-06:00: its span, what it burns, and what may be used.
    fn stretch(set: &Generator, loads: &[(u16, u16, i64, &str)]) -> (String, i64, i64) {
        let site = Site::default();
        let fuel = of_day(set, &site, &day(loads), (0, 0));
        let worst = fuel.stretch.expect("something runs");
        (worst.span.to_string(), worst.burns.millipercent(), worst.usable.millipercent())
    }

    const H: u16 = 60;

    #[test]
    fn a_full_tank_lasts_to_its_last_minute() {
        // 3 h at full load is exactly one tank, to the minute.
        let at = |to: u16| stretch(&set(), &[(9 * H, to, 2000, "")]);
        assert_eq!(at(12 * H), ("09:00-12:00".into(), 100_000, 100_000));
        assert_eq!(at(12 * H + 1), ("09:00-12:01".into(), 100_556, 100_000));
    }

    /// Three demands that burn 3, 1 and 3 of a tank's 7 hours burn one tank, though each part is rounded up.
    #[test]
    fn a_day_is_as_much_as_its_parts() {
        let day_of = |to: u16| {
            let mut set = set();
            set.runtime[1].lasts = Hours::from_millihours(7000);
            let loads = [(9 * H, 12 * H, 100, ""), (12 * H, 13 * H, 90, ""), (15 * H, to, 80, "")];
            let fuel = of_day(&set, &Site::default(), &day(&loads), (0, 0));
            fuel.day.expect("running times").millipercent()
        };
        assert_eq!(day_of(18 * H), 100_000);
        assert_eq!(day_of(18 * H + 15), 103_572);
    }

    /// The tank is full after a daytime break in which the engine cools for 20 minutes and somebody pours for 10.
    #[test]
    fn a_tank_is_full_after_a_break_by_day() {
        let with = |second: u16| {
            let loads = [(9 * H, 11 * H, 2000, ""), (second, second + 2 * H, 2000, "")];
            stretch(&set(), &loads)
        };
        assert_eq!(with(11 * H + 30), ("09:00-11:00".into(), 66_667, 100_000));
        // With a minute less nobody stops the engine, and it burns as at the least load.
        let (span, burns, _) = with(11 * H + 29);
        assert_eq!(span, "09:00-13:29");
        assert!((133_334 + 6_041..=133_334 + 6_043).contains(&burns), "{burns}");
        // A long enough break at night is no chance to refuel, but the engine is off in it.
        let night = [(20 * H, 22 * H, 2000, ""), (2 * H, 4 * H, 2000, "")];
        assert_eq!(stretch(&set(), &night), ("20:00-04:00".into(), 133_334, 100_000));
        // The last ten minutes of the night are enough to pour.
        let night = [(20 * H, 22 * H, 2000, ""), (6 * H, 8 * H, 2000, "")];
        assert_eq!(stretch(&set(), &night).1, 66_667);
        let night = [(20 * H, 22 * H, 2000, ""), (6 * H - 1, 8 * H, 2000, "")];
        assert_eq!(stretch(&set(), &night).0, "20:00-08:00");
    }

    /// The night of a breathing machine and a breakfast right after it share one tank, also with a gap of less than 70
    /// minutes. Only nine tenths of the tank count.
    #[test]
    fn nobody_pours_beside_the_night_of_what_a_life_depends_on() {
        let with = |breakfast: u16, how| {
            let loads = [(22 * H, 6 * H, 100, how), (breakfast, breakfast + H, 1200, "")];
            stretch(&set(), &loads)
        };
        assert_eq!(with(6 * H, "life").0, "22:00-07:00");
        // An hour, and ten minutes to pour.
        assert_eq!(with(7 * H + 9, "life").0, "22:00-08:09");
        assert_eq!(with(7 * H + 10, "life"), ("22:00-06:00".into(), 100_000, 90_000));
        // For any other load only the length of the break counts.
        assert_eq!(with(6 * H + 30, ""), ("22:00-06:00".into(), 100_000, 100_000));
        // A daytime nap is no night.
        let nap = [(12 * H, 13 * H, 100, "life"), (13 * H + 30, 14 * H, 2000, "")];
        assert_eq!(stretch(&set(), &nap).0, "13:30-14:00");
    }

    /// A load without hours waits for refueling, but burns fuel. One that a life depends on does not wait.
    #[test]
    fn what_waits_is_refuelled_for_and_burns() {
        let all_day = |how| stretch(&set(), &[(0, 24 * H, 500, how)]);
        // From the last chance in the evening to the first in the morning: 8 h of 8 h.
        assert_eq!(all_day("waits"), ("22:00-06:00".into(), 100_000, 100_000));
        assert_eq!(all_day("life"), ("00:00-24:00".into(), 300_000, 90_000));
    }

    /// Without a running time, 3 h is assumed whatever the demand. With an unknown rated power, the worst published
    /// time is used if that is shorter.
    #[test]
    fn a_tank_that_nobody_knows_lasts_three_hours() {
        let loads = [(9 * H, 12 * H, 10, "")];
        let mut unknown = set();
        unknown.runtime.clear();
        assert_eq!(stretch(&unknown, &loads).1, 100_000);
        let mut unknown = set();
        unknown.rated = Answer::Unknown;
        assert_eq!(assumed_hours(&unknown), UNKNOWN_TANK);
        unknown.runtime[0].lasts = Hours::from_millihours(2000);
        assert_eq!(stretch(&unknown, &loads).1, 150_000);
        assert_eq!(assumed_hours(&unknown), Hours::from_millihours(2000));
        // More than 3 h at full load promises nothing while the load is no share of anything.
        unknown.runtime[0].lasts = Hours::from_millihours(5000);
        assert_eq!(assumed_hours(&unknown), UNKNOWN_TANK);
    }

    /// Each of two generators carries half of the load, from its own tank.
    #[test]
    fn sets_in_parallel_share_the_load() {
        let mut two = set();
        two.parallel = Some(crate::plan::Parallel { sets: 2, limit: Answer::Unknown, kit: Answer::Unknown });
        let loads = [(9 * H, 12 * H, 4000, "")];
        assert_eq!(stretch(&two, &loads).1, 100_000);
        assert_eq!(stretch(&set(), &loads).1, 200_000);
    }
}

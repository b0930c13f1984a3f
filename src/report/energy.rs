//! Energy and fuel over a day.

use super::fuel::{self, DAY, Day};
use super::{Assumption, EnergyUse, LoadEnergy, PeakHour, Sharing};
use crate::loads::LoadUnit;
use crate::plan::{Answer, Generator, Id, Load, LoadKind, Plan, Span};
use crate::quantity::{Energy, Hours, Power, Volume, narrow};
use crate::supply::Supply;

/// How many minutes a day a load without hours counts as running if it does not run for three hours or more: the limit
/// that it stays just below.
const SHORT_RUN: i64 = 180;

/// Whether a load without hours runs around the clock. A heating load does not unless the plan says so: nobody boils
/// water all day, and rule HEALTH002 asks about heat at night.
fn all_day(load: &Load, unit: &LoadUnit) -> bool {
    let heats = load.may_heat() && !load.may_be(LoadKind::Medical);
    unit.continuous && (load.continuous.is_known() || !heats)
}

/// Whether somebody's health depends on the load, or might, and no battery takes over when the power goes off.
fn life(load: &Load) -> bool {
    load.may_be(LoadKind::Medical) && load.backup != Answer::Known(true)
}

/// A placed load and when it runs.
struct Run<'a> {
    unit: &'a LoadUnit,
    load: &'a Load,
    /// The minutes of the day in which it is on. `None`: for a while, at any time.
    on: Option<[bool; DAY]>,
}

impl<'a> Run<'a> {
    fn of(plan: &'a Plan, unit: &'a LoadUnit) -> Self {
        let load = &plan.loads[unit.load];
        let mut on = [false; DAY];
        if !load.hours.is_empty() {
            mark(&mut on, &load.hours, true);
        } else if all_day(load, unit) {
            on = [true; DAY];
            // Stated quiet hours are kept, except by what a life depends on.
            if let (false, Answer::Known(quiet)) = (life(load), &plan.site.quiet_hours) {
                mark(&mut on, quiet, false);
            }
        } else {
            return Self { unit, load, on: None };
        }
        Self { unit, load, on: Some(on) }
    }

    /// Whether it does not wait for refueling.
    fn busy(&self) -> bool {
        !self.load.hours.is_empty() || life(self.load)
    }

    /// Returns how many minutes of the day it runs.
    fn minutes(&self) -> i64 {
        self.on.as_ref().map_or(SHORT_RUN, |on| {
            let minutes = on.iter().filter(|on| **on).count();
            i64::try_from(minutes).unwrap_or(i64::MAX)
        })
    }

    const fn power(&self) -> i64 {
        self.unit.running.milliwatts()
    }
}

/// Marks the minutes of each span. The cost is the total length of the spans.
fn mark(on: &mut [bool; DAY], spans: &[Span], as_: bool) {
    for span in spans {
        for minute in 0..usize::from(span.minutes()) {
            on[(usize::from(span.from) + minute) % DAY] = as_;
        }
    }
}

fn of_minutes(minutes: i64) -> Hours {
    Hours::from_millihours((minutes * 1000 + 59) / 60)
}

/// Returns the loads that run. A load that takes turns runs in its turn, and one that only runs too long runs for less.
/// One that may not even run alone does not run.
fn runs<'a>(plan: &'a Plan, supply: &Supply, units: &'a [LoadUnit], sharing: &Sharing) -> Vec<Run<'a>> {
    let of = |load: &Id| {
        let unit = units.iter().find(|unit| unit.id == *load);
        unit.map(|unit| &plan.loads[unit.load].id)
    };
    let placed = |unit: &&LoadUnit| {
        let at = sharing.place(&unit.id).and_then(|at| supply.receptacle(at));
        at.is_some_and(|at| {
            let held = unit.running_current <= supply.limit(at).short;
            sharing.may_run(&unit.id, of) || unit.continuous && held
        })
    };
    units.iter().filter(placed).map(|unit| Run::of(plan, unit)).collect()
}

/// Returns the figures for the placed loads, and what had to be assumed.
pub(super) fn of_plan(
    plan: &Plan,
    supply: &Supply,
    units: &[LoadUnit],
    sharing: &Sharing,
) -> (EnergyUse, Vec<Assumption>) {
    let mut assumed: Vec<Assumption> = Vec::new();
    let runs = runs(plan, supply, units, sharing);
    let mut day = Day { demand: [0; DAY], busy: [false; DAY], life: [false; DAY] };
    // The total of the loads that may run at any time, kept apart.
    let mut any_time = 0_i64;
    let mut milliwatt_minutes = 0_i128;
    let mut loads = Vec::new();
    for run in &runs {
        let minutes = run.minutes();
        let field = format!("load.{}.hours", run.load.id);
        if run.load.hours.is_empty() && !assumed.iter().any(|it| it.field == field) {
            assumed.push(Assumption { field, value: of_minutes(minutes).into(), why: "all-day" });
        }
        match &run.on {
            Some(on) => {
                let (busy, life) = (run.busy(), life(run.load));
                for minute in (0..DAY).filter(|minute| on[*minute]) {
                    day.demand[minute] += run.power();
                    day.busy[minute] |= busy;
                    day.life[minute] |= life;
                }
            }
            None => any_time += run.power(),
        }
        let own = i128::from(run.power()) * i128::from(minutes);
        milliwatt_minutes += own;
        loads.push(LoadEnergy {
            load: run.unit.id.clone(),
            hours: of_minutes(minutes),
            watt_hours: Energy::from_milliwatt_hours(narrow((own + 59) / 60)),
        });
    }
    if milliwatt_minutes == 0 {
        return (idle(&plan.generator), assumed);
    }
    let set = &plan.generator;
    let energy = Energy::from_milliwatt_hours(narrow((milliwatt_minutes + 59) / 60));
    let timed = day.demand.iter().filter(|power| **power > 0).count();
    let minutes = i64::try_from(timed).unwrap_or(i64::from(Span::DAY));
    let minutes = if any_time > 0 { minutes.max(SHORT_RUN) } else { minutes };
    let mean = Power::from_milliwatts(narrow((milliwatt_minutes + i128::from(minutes) - 1) / i128::from(minutes)));
    let busiest = busiest(&runs, &day.demand, any_time);
    // No generator keeps up more than its rated power, whatever the demand.
    let rated = set.rated.known().map(|rated| rated.milliwatts() * set.sets());
    let asked = Power::from_milliwatts(busiest.power.min(rated.unwrap_or(i64::MAX)));
    let per_tank = fuel::hours_per_tank(set, asked);
    let mut fuel = fuel::of_day(set, &plan.site, &day, (any_time, SHORT_RUN));
    if let Some(stretch) = &mut fuel.stretch {
        stretch.life = of_life(&runs, stretch.span);
        // With running times, what is unknown is the rated power, which is told apart.
        if per_tank.is_none() && set.runtime.is_empty() && stretch.is_too_long() {
            assumed.push(Assumption {
                field: "generator.runtime".to_owned(),
                value: fuel::assumed_hours(set).into(),
                why: "runtime",
            });
        }
    }
    let volume = fuel.day.and_then(|day| {
        let tank = i128::from(set.tank.known()?.millilitres());
        let up = i128::from(day.millipercent()) * tank * i128::from(set.sets());
        let whole = 100_000;
        Some(Volume::from_millilitres(narrow((up + whole - 1) / whole)))
    });
    let use_of_energy = EnergyUse {
        watt_hours_per_day: Some(energy),
        peak_hour: peak_hour(&day.demand, any_time),
        hours_per_tank: per_tank,
        fuel_per_day: volume,
        loads,
        hours_per_day: Some(of_minutes(minutes)),
        mean_watts: Some(mean),
        busiest_load: fuel::load(set, asked),
        busiest_by: busiest.by,
        burns: fuel.burns,
        tanks_per_day: fuel.day,
        stretch: fuel.stretch,
    };
    (use_of_energy, assumed)
}

/// Returns the figures when nothing is on: the generator runs without a load.
fn idle(set: &Generator) -> EnergyUse {
    EnergyUse { busiest_load: fuel::load(set, Power::ZERO), ..EnergyUse::default() }
}

/// The demand at the busiest minute, and the load with the largest part in it.
struct Busiest {
    power: i64,
    by: Option<Id>,
}

fn busiest(runs: &[Run<'_>], demand: &[i64; DAY], any_time: i64) -> Busiest {
    let most = demand.iter().copied().max().unwrap_or_default();
    let minute = demand.iter().position(|power| *power == most).unwrap_or_default();
    let on = runs.iter().filter(|run| run.on.is_none_or(|on| on[minute]));
    // `max_by_key` returns the last of equals, and the first is wanted.
    let by = on.rev().max_by_key(|run| run.power());
    Busiest { power: most + any_time, by: by.map(|run| run.unit.id.clone()) }
}

/// Returns the loads that somebody's health depends on and that run in these hours, each once.
fn of_life(runs: &[Run<'_>], hours: Span) -> Vec<Id> {
    let within = |run: &&Run<'_>| {
        let on = run.on.as_ref();
        life(run.load) && on.is_some_and(|on| (0..).zip(on).any(|(at, on)| *on && hours.contains(at)))
    };
    let mut ids: Vec<Id> = runs.iter().filter(within).map(|run| run.load.id.clone()).collect();
    ids.dedup();
    ids
}

/// Returns the hour with the greatest demand of any minute in it. The first wins a tie.
fn peak_hour(demand: &[i64; DAY], any_time: i64) -> Option<PeakHour> {
    let (hour, power) = demand
        .chunks(60)
        .map(|minutes| minutes.iter().copied().max().unwrap_or_default() + any_time)
        .enumerate()
        // `max_by_key` returns the last of equals, and the first is wanted.
        .rev()
        .max_by_key(|(_, power)| *power)?;
    Some(PeakHour { hour: u8::try_from(hour).ok()?, watts: Power::from_milliwatts(power) })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Quantity as _;
    use crate::rules::testing::report;

    /// A kettle without hours runs for three, and around the clock only if the plan says so. A motor does run around
    /// the clock, but not through this plan's eight quiet hours. A medical load ignores quiet hours, unless it has a
    /// backup battery.
    #[test]
    fn a_kettle_without_hours_does_not_boil_all_day() {
        let day = |kind: &str, continuous: &str| {
            let report = report(&[
                ("hours = [\"18:30-19:00\"]", ""),
                ("hours = [\"18:00-23:00\"]", "hours = []"),
                ("kind = \"heater\" # kettle", kind),
                ("continuous = false # kettle", continuous),
            ]);
            let loads = report.figures.energy.loads;
            let kettle = loads.into_iter().find(|it| it.load.as_str() == "kettle");
            kettle.expect("it is placed").hours
        };
        let hours = |hours: i64| Hours::from_millihours(hours * 1000);
        assert_eq!(day("kind = \"heater\"", ""), hours(3));
        assert_eq!(day("kind = \"heater\"", "continuous = true"), hours(16));
        assert_eq!(day("kind = \"motor\"", ""), hours(16));
        assert_eq!(day("kind = \"medical\"", ""), hours(24));
        assert_eq!(day("kind = \"medical\"\nbackup = true", ""), hours(16));
    }

    /// Unknown quiet hours reduce nothing. Stated ones are kept only by loads without hours.
    #[test]
    fn quiet_hours_are_kept_by_what_is_counted() {
        let fan = |quiet: &str, hours: &str| {
            let report = report(&[("quiet_hours = \"23:00-07:00\"", quiet), ("hours = [\"18:00-23:00\"]", hours)]);
            let loads = report.figures.energy.loads;
            let fan = loads.into_iter().find(|it| it.load.as_str() == "fan");
            let hours = fan.expect("it is placed").hours;
            let told = report.figures.assumed.into_iter();
            let told = told.filter(|it| it.field == "load.fan.hours").map(|it| it.value);
            (hours.amount().to_string(), told.collect::<Vec<_>>() == [hours.into()])
        };
        let quiet = "quiet_hours = \"23:00-07:00\"";
        assert_eq!(fan(quiet, ""), ("16".to_owned(), true));
        let two = "quiet_hours = [\"10:00-16:00\", \"20:00-08:00\"]";
        assert_eq!(fan(two, ""), ("6".to_owned(), true));
        assert_eq!(fan("quiet_hours = \"unknown\"", ""), ("24".to_owned(), true));
        assert_eq!(fan("quiet_hours = []", ""), ("24".to_owned(), true));
        assert_eq!(fan(quiet, "hours = [\"20:00-04:00\"]"), ("8".to_owned(), false));
    }

    /// 12.5 A never runs behind a 10 A breaker. 12.5 A for five hours, where 12 A may run that long, runs for less, or
    /// takes turns with the fan. Both of these count.
    #[test]
    fn what_may_never_run_burns_no_fuel() {
        let counted = |edits: &[(&str, &str)]| {
            let energy = report(edits).figures.energy;
            let loads = energy.loads.iter().map(|it| it.load.to_string());
            let by = energy.busiest_by.map(|it| it.to_string());
            (loads.collect::<Vec<_>>(), by)
        };
        let never = ("breaker = \"15 A\" # left", "breaker = \"10 A\"");
        let fan = "fan".to_owned();
        assert_eq!(counted(&[never]), (vec![fan.clone()], Some(fan)));
        let long = (
            "continuous = false # kettle\nwanted = \"must\" # kettle\nhours = [\"18:30-19:00\"]",
            "continuous = true\nhours = [\"18:00-23:00\"]",
        );
        let both = vec!["kettle".to_owned(), "fan".to_owned()];
        for edits in [&[][..], &[long]] {
            assert_eq!(counted(edits), (both.clone(), Some("kettle".to_owned())));
        }
        let turns = [("on = \"right\" # fan", "on = \"left\""), ("running = \"50 W\"", "running = \"350 W\"")];
        assert_eq!(counted(&turns), (both, Some("kettle".to_owned())));
    }

    #[test]
    fn the_first_of_equal_hours_and_loads_of_any_time_in_each() {
        let mut demand = [0; DAY];
        demand[7 * 60 + 59] = 500;
        demand[19 * 60] = 500;
        let peak = peak_hour(&demand, 100).expect("a peak");
        assert_eq!(peak.hour, 7);
        assert_eq!(peak.watts, Power::from_milliwatts(600));
    }
}

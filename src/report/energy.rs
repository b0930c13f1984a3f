//! Energy and fuel over a day.

use super::loads::LoadUnit;
use super::{Amount, Assumption, EnergyUse, LoadEnergy, PeakHour, Sharing};
use crate::plan::{Generator, Load, LoadKind, Plan, Span};
use crate::quantity::{Energy, Hours, Power, Volume, narrow};

const DAY: usize = Span::DAY as usize;
/// What a load with no hours runs in a day when it is not one of three hours or more: as near
/// to them as it can come.
const SHORT_RUN: i64 = 180;

/// Whether a load with no hours runs round the clock. What makes heat does not unless somebody said
/// so: nobody boils water for a day, and heat at night is asked about by rule HEALTH002.
fn all_day(load: &Load, unit: &LoadUnit) -> bool {
    let heats = load.may_heat() && !load.may_be(LoadKind::Medical);
    unit.continuous && (load.continuous.is_known() || !heats)
}

/// The figures for the placed loads, and what had to be assumed.
#[must_use]
pub(super) fn of_plan(
    plan: &Plan,
    units: &[LoadUnit],
    sharing: &Sharing,
) -> (EnergyUse, Vec<Assumption>) {
    let mut assumed: Vec<Assumption> = Vec::new();
    // Milliwatts in each minute, and apart from them the loads that may run at any time.
    let mut demand = [0_i64; DAY];
    let mut any_time = 0_i64;
    let mut milliwatt_minutes = 0_i128;
    let mut loads = Vec::new();
    for unit in units {
        if !sharing.placed.iter().any(|placed| placed.load == unit.id) {
            continue;
        }
        let load = &plan.loads[unit.load];
        let power = unit.running.milliwatts();
        let whole_day = [Span {
            from: 0,
            to: Span::DAY,
        }];
        let spans: &[Span] = if load.hours.is_empty() {
            let minutes = if all_day(load, unit) {
                i64::from(Span::DAY)
            } else {
                SHORT_RUN
            };
            let field = format!("load.{}.hours", load.id);
            if !assumed.iter().any(|assumption| assumption.field == field) {
                assumed.push(Assumption {
                    field,
                    value: Amount::of(Hours::from_millihours(minutes * 1000 / 60)).into(),
                    why: "all-day",
                });
            }
            if all_day(load, unit) {
                &whole_day
            } else {
                any_time += power;
                &[]
            }
        } else {
            &load.hours
        };
        let mut minutes = if spans.is_empty() { SHORT_RUN } else { 0 };
        for minute in 0..Span::DAY {
            if spans.iter().any(|span| span.contains(minute)) {
                demand[usize::from(minute)] += power;
                minutes += 1;
            }
        }
        let own = i128::from(power) * i128::from(minutes);
        milliwatt_minutes += own;
        loads.push(LoadEnergy {
            load: unit.id.clone(),
            hours: Hours::from_millihours((minutes * 1000 + 59) / 60).into(),
            watt_hours: Energy::from_milliwatt_hours(narrow((own + 59) / 60)).into(),
        });
    }
    if milliwatt_minutes == 0 {
        return (EnergyUse::default(), assumed);
    }
    let energy = Energy::from_milliwatt_hours(narrow((milliwatt_minutes + 59) / 60));
    let timed = demand.iter().filter(|power| **power > 0).count();
    let minutes = i64::try_from(timed).unwrap_or(i64::from(Span::DAY));
    let minutes = if any_time > 0 {
        minutes.max(SHORT_RUN)
    } else {
        minutes
    };
    let mean = Power::from_milliwatts(narrow(
        (milliwatt_minutes + i128::from(minutes) - 1) / i128::from(minutes),
    ));
    // Sets in parallel share the load evenly, each from a tank of its own.
    let sets = plan.generator.sets();
    let each = Power::from_milliwatts((mean.milliwatts() + sets - 1) / sets);
    let per_tank = hours_per_tank(&plan.generator, each);
    let fuel = per_tank.and_then(|hours| {
        let tank = plan.generator.tank.known()?.millilitres();
        let hours = i128::from(hours.millihours());
        let up = i128::from(tank) * i128::from(minutes) * 1000 * i128::from(sets);
        let below = hours * 60;
        (below > 0).then(|| Volume::from_millilitres(narrow((up + below - 1) / below)))
    });
    let use_of_energy = EnergyUse {
        watt_hours_per_day: Some(energy.into()),
        peak_hour: peak_hour(&demand, any_time),
        hours_per_tank: per_tank.map(Amount::of),
        fuel_per_day: fuel.map(Amount::of),
        loads,
        hours_per_day: Some(Hours::from_millihours((minutes * 1000 + 59) / 60).into()),
        mean_watts: Some(mean.into()),
    };
    (use_of_energy, assumed)
}

/// The hour with the greatest demand of any minute in it, the first of several.
fn peak_hour(demand: &[i64; DAY], any_time: i64) -> Option<PeakHour> {
    let (hour, power) = demand
        .chunks(60)
        .map(|minutes| minutes.iter().copied().max().unwrap_or_default() + any_time)
        .enumerate()
        // `max_by_key` gives the last of equal ones; the first is wanted.
        .rev()
        .max_by_key(|(_, power)| *power)?;
    Some(PeakHour {
        hour: u8::try_from(hour).ok()?,
        watts: Power::from_milliwatts(power).into(),
    })
}

/// Time on one tank at this demand, rounded down; `None` without a rated power
/// or published running times.
///
/// Between two published loads the fuel burnt per hour is taken to lie on a straight line;
/// that is nearer to how engines burn than a straight line in hours, and gives fewer. Below
/// the least load no longer time is promised; above the greatest, less in proportion.
#[must_use]
pub(super) fn hours_per_tank(set: &Generator, demand: Power) -> Option<Hours> {
    let rated = i128::from(set.rated.known()?.milliwatts());
    if rated <= 0 {
        return None;
    }
    // Thousandths of a per cent of rated load, rounded up.
    let share = (i128::from(demand.milliwatts()) * 100_000 + rated - 1) / rated;
    let mut points: Vec<(i128, i128)> = set
        .runtime
        .iter()
        .filter(|point| point.lasts.millihours() > 0)
        .map(|point| {
            (
                i128::from(point.load.millipercent()),
                i128::from(point.lasts.millihours()),
            )
        })
        .collect();
    points.sort_unstable();
    let above = points.iter().find(|(load, _)| *load >= share);
    let below = points.iter().rfind(|(load, _)| *load < share);
    let millihours = match (below, above) {
        (_, None) => {
            let (load, lasts) = *points.last()?;
            lasts * load / share.max(1)
        }
        (None, Some((_, lasts))) => *lasts,
        // 1 / (1/a + (1/b - 1/a) x), with x the way from the one load to the other.
        (Some((from, a)), Some((to, b))) => {
            let width = to - from;
            a * b * width / (b * width + (a - b) * (share - from))
        }
    };
    Some(Hours::from_millihours(narrow(millihours)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Answer, Runtime};
    use crate::quantity::Percent;

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
        hours_per_tank(&set(), Power::from_milliwatts(watts * 1000))
            .expect("running times")
            .millihours()
    }

    #[test]
    fn published_times_are_met_and_never_exceeded() {
        assert_eq!(hours(500), 8000);
        assert_eq!(hours(2000), 3000);
        // Less load promises no longer time; more burns more.
        assert_eq!(hours(100), 8000);
        assert_eq!(hours(4000), 1500);
    }

    #[test]
    fn between_two_points_fuel_is_interpolated() {
        // Half way from 25 % to 100 %: (1/8 + 1/3) / 2 tanks an hour, 4.3636 h.
        assert_eq!(hours(1250), 4363);
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
        assert_eq!(
            hours_per_tank(&set, Power::from_milliwatts(1_000_000)),
            None
        );
    }

    /// A kettle of 1800 W without hours: 5.4 kWh for three hours, and for a day only if somebody said
    /// that it runs on and on. A fridge runs on and on.
    #[test]
    fn a_kettle_without_hours_does_not_boil_all_day() {
        let day = |kind: &str, continuous: &str| {
            let report = crate::rules::testing::report(&[
                ("hours = [\"18:30-19:00\"]", ""),
                ("hours = [\"18:00-23:00\"]", "hours = []"),
                ("kind = \"heater\" # kettle", kind),
                ("continuous = false # kettle", continuous),
            ]);
            let loads = report.figures.energy.loads;
            let kettle = loads.into_iter().find(|it| it.load.as_str() == "kettle");
            kettle.expect("it is placed").hours
        };
        let hours = |hours: i64| Amount::of(Hours::from_millihours(hours * 1000));
        assert_eq!(day("kind = \"heater\"", ""), hours(3));
        assert_eq!(day("kind = \"heater\"", "continuous = true"), hours(24));
        assert_eq!(day("kind = \"motor\"", ""), hours(24));
        assert_eq!(day("kind = \"medical\"", ""), hours(24));
    }

    #[test]
    fn the_first_of_equal_hours_and_loads_of_any_time_in_each() {
        let mut demand = [0; DAY];
        demand[7 * 60 + 59] = 500;
        demand[19 * 60] = 500;
        let peak = peak_hour(&demand, 100).expect("a peak");
        assert_eq!(peak.hour, 7);
        assert_eq!(peak.watts, Power::from_milliwatts(600).into());
    }
}

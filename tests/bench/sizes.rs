//! Times how `check`, `may` and `mend` grow with the size of a plan: `cargo bench --bench sizes`. Numbers of loads
//! (`-- 40 100`) restrict it to camps of those sizes.
//!
//! Camps of 10 to 300 loads on 1 to 20 boxes, with and without hours, with and without unknowns, are judged in this
//! process and checked against the limits. `mend` is timed up to 40 loads. Exits with 1 if a limit is missed.

// A benchmark prints and reads a clock.
#![allow(clippy::disallowed_methods, clippy::disallowed_macros)]

use std::time::{Duration, Instant};

#[allow(missing_docs)]
mod camps;
#[allow(missing_docs)]
mod draw;

use camps::Camp;
use tallywatt::judge::ask::ask;
use tallywatt::plan::{Plan, read};
use tallywatt::sharing::share;
use tallywatt::{judge, loads};

const SIZES: [(u32, &[u32]); 8] = [
    (10, &[1, 2]),
    (15, &[2]),
    (20, &[2, 3]),
    (30, &[2, 3]),
    (40, &[2, 3, 12]),
    (100, &[3, 8, 20]),
    (200, &[8, 20]),
    (300, &[8, 12]),
];

/// Returns the time limit of `check` and `may` for this many loads.
fn bar(loads: u32) -> Duration {
    Duration::from_millis(match loads {
        0..=15 => 5,
        16..=40 => 50,
        _ => 1000,
    })
}

/// Returns the time limit of `mend`, if there is one.
fn bar_of_mend(loads: u32) -> Option<Duration> {
    match loads {
        0..=20 => Some(Duration::from_millis(300)),
        21..=40 => Some(Duration::from_secs(2)),
        _ => None,
    }
}

/// Returns the thread's CPU time where the system provides it, else the elapsed time, so that other programs do not
/// make this one miss a limit.
fn now(start: Instant) -> Duration {
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").ok();
    let nanos = told.and_then(|told| told.split(' ').next()?.parse().ok());
    nanos.map_or_else(|| start.elapsed(), Duration::from_nanos)
}

fn timed<T>(run: impl Fn() -> T) -> (Duration, T) {
    let start = Instant::now();
    let before = now(start);
    let result = run();
    let mut runs = 1;
    // The system counts in steps of some milliseconds.
    while now(start).saturating_sub(before) < Duration::from_millis(100) {
        run();
        runs += 1;
    }
    (now(start).saturating_sub(before) / runs, result)
}

fn sharing(plan: &Plan) -> Duration {
    let supply = tallywatt::supply::Supply::build(plan);
    let verdicts = tallywatt::verdict::Verdicts::of(plan, &supply);
    let (units, _) = loads::units(plan);
    timed(|| share(plan, &supply, &verdicts, &units)).0
}

fn main() -> std::process::ExitCode {
    let mut missed: Vec<String> = Vec::new();
    let only: Vec<u32> = (std::env::args().skip(1)).filter_map(|arg| arg.parse().ok()).collect();
    println!("loads boxes hours known     check   sharing       may      mend proven whole");
    for (loads, boxes) in SIZES {
        if !only.is_empty() && !only.contains(&loads) {
            continue;
        }
        for boxes in boxes {
            for (hours, known) in [(true, true), (true, false), (false, true), (false, false)] {
                let camp = Camp { loads, boxes: *boxes, hours, known };
                let text = camp.plan();
                let plan = read(&text).unwrap_or_else(|errors| panic!("{camp:?}: {errors:?}"));
                let (check, report) = timed(|| judge::build(&plan));
                let wanted = &report.figures.loads[..3];
                let wanted: Vec<_> = wanted.iter().map(|load| load.id.clone()).collect();
                let (asked, _) = timed(|| ask(&plan, &report, &wanted, &[]));
                let may = check + asked;
                let mend = (loads <= 40).then(|| timed(|| tallywatt::mend::mend(&plan, true)).0);
                let mut hold = |what: &str, time: Duration, bar: Duration| {
                    if time > bar {
                        missed.push(format!("{what} {camp:?}: {time:.2?}, not {bar:.2?}"));
                    }
                };
                hold("check", check, bar(loads));
                hold("may", may, bar(loads));
                if let (Some(time), Some(bar)) = (mend, bar_of_mend(loads)) {
                    hold("mend", time, bar);
                }
                println!(
                    "{loads:5} {boxes:5} {hours:5} {known:5} {check:>9.2?} {:>9.2?} {may:>9.2?} {:>9} \
                     {:6} {:5}",
                    sharing(&plan),
                    mend.map_or_else(String::new, |time| format!("{time:.2?}")),
                    report.figures.sharing.proven,
                    report.figures.sharing.families_complete,
                );
            }
        }
    }
    if cfg!(debug_assertions) {
        println!("not optimised: {} bars of time are not judged", missed.len());
        missed.clear();
    }
    for bar in &missed {
        println!("MISSED: {bar}");
    }
    std::process::ExitCode::from(u8::from(!missed.is_empty()))
}

//! Times a proven placing by number of loads, next to a general MILP solver on the same instances in the same run:
//! `cargo bench --bench sharing`.
//!
//! Prints a line for each case, checks the results against the recorded optima and the limits, and writes
//! `bench/sharing.svg` and `bench/sharing.csv` into the target folder. Exits with 1 if a limit is missed. Times are the
//! least of several runs, which on a busy machine comes closest to the cost of the work.

// A benchmark prints, reads a clock and writes its results.
#![allow(clippy::disallowed_methods, clippy::disallowed_macros)]

use std::fmt::Write as _;
use std::path::Path;
use std::time::{Duration, Instant};

use tallywatt::sharing::budget::Budget;
use tallywatt::sharing::model::{Model, plugged};
use tallywatt::sharing::place::{Placing, place};
use tallywatt::sharing::set::LoadSet;
use tallywatt::sharing::together::{Alike, conflicts, largest};
use tallywatt::sharing::turns;

#[path = "../core/sharing/case.rs"]
#[allow(dead_code, missing_docs)]
mod case;
mod milp;
#[allow(missing_docs)]
mod picture;
mod shapes;

use milp::Outcome;
use picture::Point;
use shapes::Shape;

/// The budget of the other searches. The placing has its own.
const WORK: u64 = 100_000_000;
const RUNS: usize = 5;
/// The general solver's time limit for each of its two stages.
const LIMIT: Duration = Duration::from_secs(20);
/// The time limit up to 15 loads.
const SMALL: (usize, Duration) = (15, Duration::from_millis(5));
/// The time limit beyond.
const LARGE: Duration = Duration::from_secs(1);
/// How many times faster than the general solver the placing must be at the typical size, 9 to 15 loads.
const FASTER: f64 = 10.0;
/// The most largest sets to list here.
const MOST_SETS: usize = 50_000;

// Only the benchmark's timing depends on the clock.
fn timed<T>(run: impl FnOnce() -> T) -> (Duration, T) {
    let start = Instant::now();
    let result = run();
    (start.elapsed(), result)
}

fn least<T>(mut run: impl FnMut() -> T) -> (Duration, T) {
    let mut best = timed(&mut run);
    for _ in 1..RUNS {
        let again = timed(&mut run);
        if again.0 < best.0 {
            best = again;
        }
    }
    best
}

/// Runs the general solver, several times if it is fast.
fn general(model: &Model) -> (Duration, Outcome) {
    let mut best = milp::solve(model, LIMIT);
    if best.0 < Duration::from_secs(1) {
        for _ in 1..RUNS {
            let (time, outcome) = milp::solve(model, LIMIT);
            assert_eq!(outcome, best.1, "the general solver differs from itself");
            best.0 = best.0.min(time);
        }
    }
    best
}

fn cases() -> Vec<(case::Case, case::Expected)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/sharing");
    let mut cases: Vec<(case::Case, case::Expected)> = std::fs::read_dir(&folder)
        .expect("the cases")
        .map(|entry| entry.expect("a folder entry").path())
        .filter(|path| path.to_string_lossy().ends_with(".expected.json"))
        .map(|path| {
            let text = path.to_string_lossy().replace(".expected.json", ".json");
            (case::Case::read(Path::new(&text)), case::Expected::read(&path))
        })
        .collect();
    cases.sort_by_key(|(case, _)| (case.loads.len(), case.name.clone()));
    cases
}

/// Runs random problems of every hard shape and prints a line for each shape and size. A proof that the general solver
/// refutes counts as a missed limit.
fn hard(missed: &mut Vec<String>) {
    /// The number of problems of each shape and size.
    const EACH: u64 = 4;
    println!("\nhard shapes, {EACH} of each size: proved, else within 1 % of the bound");
    for shape in Shape::ALL {
        for (loads, places) in [(12, 5), (20, 8), (30, 12), (40, 16)] {
            let (mut proved, mut near, mut slowest) = (0, 0, Duration::ZERO);
            for number in 0..EACH {
                let model = shapes::problem(shape, loads, places, number);
                let (time, placing) = timed(|| place(&model, &mut Budget::for_loads(loads)));
                slowest = slowest.max(time);
                proved += u64::from(placing.proven);
                near += u64::from(!placing.proven && is_near(&placing));
                if loads <= SMALL.0
                    && placing.proven
                    && let (_, Outcome::Best(weights, used)) = milp::solve(&model, LARGE)
                    && (weights, std::cmp::Reverse(used)) > (placing.weights, std::cmp::Reverse(placing.use_permille))
                {
                    missed.push(format!("{shape:?} {loads} {number} is said to be proved"));
                }
            }
            println!(
                "{:14} {loads:3} loads {places:3} places  {proved} proved, {near} near, \
                 {} far, at most {slowest:.2?}",
                format!("{shape:?}"),
                EACH - proved - near,
            );
        }
    }
}

/// Whether an unproven placing is within one percent of its bound.
fn is_near(placing: &Placing) -> bool {
    let (must, wish) = placing.weights;
    let (most_must, most_wish) = placing.weights_at_most;
    must == most_must
        && (most_wish - wish) * 100 <= most_wish
        && (placing.use_permille - placing.use_at_least) * 100 <= placing.use_permille
}

// Benchmark results can be lost without harm.
fn main() -> std::process::ExitCode {
    let mut missed: Vec<String> = Vec::new();
    let mut late: Vec<String> = Vec::new();
    let mut points: Vec<Point> = Vec::new();
    let mut csv = String::from("case,loads,places,placing_us,work,general_us,general\n");
    let mut typical: Vec<f64> = Vec::new();
    println!("case loads places   placing     work proven   general  faster  together     never     turns");
    for (case, expected) in cases() {
        let mut model = case.model();
        // Tightened like a plan's model. The general solver gets the same one.
        model.tighten();
        let loads = case.loads.len();
        let (time, (placing, work)) = least(|| {
            let mut budget = Budget::for_loads(loads);
            let whole = budget.left();
            let placing = place(&model, &mut budget);
            (placing, whole - budget.left())
        });
        let want = &expected.plan;
        let want = ((want.must_weight, want.wish_weight), want.use_permille);
        let name = &case.name;
        if placing.proven && (placing.weights, placing.use_permille) != want {
            missed.push(format!("{name} is said to be proved, and is wrong"));
        }
        let bar = if loads <= SMALL.0 { SMALL.1 } else { LARGE };
        if !placing.proven {
            missed.push(format!("{name} is not proved"));
        } else if time > bar {
            late.push(format!("{name} is not proved within {bar:?}"));
        }
        let (general_time, outcome) = general(&model);
        let general = match outcome {
            Outcome::Best(weights, used) if (weights, used) == want => Some(general_time),
            // A wrong answer or a timeout counts as none.
            _ => None,
        };
        let faster = general_time.as_secs_f64() / time.as_secs_f64().max(1e-9);
        if (9..=SMALL.0).contains(&loads) {
            typical.push(faster);
        }
        points.push(Point { loads, ours: time, general });
        let _ = writeln!(
            csv,
            "{name},{loads},{},{},{work},{},{outcome:?}",
            model.sockets.len(),
            time.as_micros(),
            general_time.as_micros(),
        );

        let at = case.plugged();
        let fixed = model.at(&at);
        let all = plugged(&at);
        let budget = || Budget::of(WORK);
        let (together, _) = least(|| largest(&fixed, &all, &Alike::nothing(), &[], MOST_SETS, &mut budget()));
        let (never, _) = least(|| conflicts(&fixed, &all, &Alike::nothing(), 3, MOST_SETS, &mut budget()));
        let (turn, _) = least(|| turns::fewest(&fixed, &all, &LoadSet::default(), &mut budget()));
        let note = match (general, outcome) {
            (Some(_), _) => "",
            (None, Outcome::Best(..)) => "  general: wrong",
            (None, Outcome::TimeOut) => "  general: out of time",
            (None, Outcome::Failed) => "  general: failed",
        };
        println!(
            "{name:4} {loads:5} {:6} {time:>9.2?} {work:8} {:6} {general_time:>9.2?} {faster:>6.0}× \
             {together:>9.2?} {never:>9.2?} {turn:>9.2?}{note}",
            model.sockets.len(),
            placing.proven,
        );
    }
    typical.sort_by(f64::total_cmp);
    let (slowest, middle) = (typical[0], typical[typical.len() / 2]);
    println!("typical size, 9 to 15 loads: {middle:.0} × as fast (median), at least {slowest:.0} ×");
    if middle < FASTER {
        late.push(format!("only {middle:.0} × as fast at the typical size"));
    }

    hard(&mut missed);

    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("bench");
    let picture = folder.join("sharing.svg");
    std::fs::create_dir_all(&folder)
        .and_then(|()| std::fs::write(&picture, picture::svg(&points, LIMIT)))
        .and_then(|()| std::fs::write(folder.join("sharing.csv"), csv))
        .expect("the target folder can be written");
    println!("picture: {}", picture.display());
    // Without optimization, times say nothing about the limits.
    if cfg!(debug_assertions) {
        println!("not optimised: {} bars of time are not judged", late.len());
    } else {
        missed.append(&mut late);
    }
    for bar in &missed {
        println!("MISSED: {bar}");
    }
    std::process::ExitCode::from(u8::from(!missed.is_empty()))
}

//! How long a proved placing takes, by the number of loads: `cargo bench --bench sharing`.
//!
//! Prints one line a case. Time is the least of several runs, which on a busy machine is nearest
//! to what the work costs.

use std::path::Path;
use std::time::{Duration, Instant};

use tallywatt::sharing::budget::Budget;
use tallywatt::sharing::model::plugged;
use tallywatt::sharing::place::place;
use tallywatt::sharing::set::LoadSet;
use tallywatt::sharing::together::{Alike, conflicts, largest};
use tallywatt::sharing::turns;

#[path = "../core/sharing/case.rs"]
#[allow(dead_code, missing_docs)]
mod case;

const STEPS: u64 = 2_000_000;
const RUNS: usize = 5;
/// More largest sets than this are not listed here.
const MOST_SETS: usize = 50_000;

// A benchmark is about time; nothing that is computed depends on it.
#[allow(clippy::disallowed_methods)]
fn least<T>(mut run: impl FnMut() -> T) -> (Duration, T) {
    let mut best: Option<(Duration, T)> = None;
    for _ in 0..RUNS {
        let start = Instant::now();
        let result = run();
        let time = start.elapsed();
        if best.as_ref().is_none_or(|(least, _)| time < *least) {
            best = Some((time, result));
        }
    }
    best.expect("at least one run")
}

fn main() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/sharing");
    let mut cases: Vec<case::Case> = std::fs::read_dir(&folder)
        .expect("the cases")
        .map(|entry| entry.expect("a folder entry").path())
        .filter(|path| !path.to_string_lossy().ends_with(".expected.json"))
        .map(|path| case::Case::read(&path))
        .collect();
    cases.sort_by_key(|case| (case.loads.len(), case.name.clone()));
    println!("case loads places   placing  steps proven  together     never     turns");
    for case in cases {
        let model = case.model();
        let ((placing, steps), time) = {
            let (time, result) = least(|| {
                let mut budget = Budget::steps(STEPS);
                let placing = place(&model, &mut budget);
                (placing, STEPS - budget.left())
            });
            (result, time)
        };
        let at = case.plugged();
        let fixed = model.at(&at);
        let all = plugged(&at);
        let budget = || Budget::steps(STEPS);
        let (together, _) =
            least(|| largest(&fixed, &all, &Alike::nothing(), MOST_SETS, &mut budget()));
        let (never, _) =
            least(|| conflicts(&fixed, &all, &Alike::nothing(), 3, MOST_SETS, &mut budget()));
        let (turn, _) = least(|| turns::fewest(&fixed, &all, &LoadSet::default(), &mut budget()));
        println!(
            "{:4} {:5} {:6} {:>9.2?} {:6} {:6} {:>9.2?} {:>9.2?} {:>9.2?}",
            case.name,
            case.loads.len(),
            model.sockets.len(),
            time,
            steps,
            placing.proven,
            together,
            never,
            turn,
        );
    }
}

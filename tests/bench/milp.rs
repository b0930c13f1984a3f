//! The placing problem as a mixed integer linear program for a general solver, for comparison.
//!
//! There is a binary variable for each load at each place it may go to, and a row for each limit at each moment, except
//! where even everything at once is within it. A surge row has one more variable, at least what any of its loads adds
//! by starting. The first stage maximizes the weight, the second minimizes the use at that weight.

use std::time::{Duration, Instant};

use microlp::{ComparisonOp, OptimizationDirection, Problem, SolutionStatus, Variable};
use tallywatt::sharing::model::Model;

/// The result of the solver.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// Proven best: the weights of musts and wishes, and the greatest use.
    Best((u64, u64), i64),
    /// It reached its time limit.
    TimeOut,
    /// It gave up.
    Failed,
}

/// Solves both stages, each within `limit`, and returns the total time.
// Only the benchmark's timing depends on the clock.
#[allow(clippy::disallowed_methods)]
pub fn solve(model: &Model, limit: Duration) -> (Duration, Outcome) {
    let start = Instant::now();
    let outcome = stages(model, limit);
    (start.elapsed(), outcome)
}

fn stages(model: &Model, limit: Duration) -> Outcome {
    let wishes: u64 = weights(model, false).sum();
    let weight = match stage(model, limit, wishes, None) {
        Ok(objective) => objective.round(),
        Err(outcome) => return outcome,
    };
    let used = match stage(model, limit, wishes, Some(weight)) {
        Ok(objective) => (objective - 1e-4).ceil().max(0.0),
        Err(outcome) => return outcome,
    };
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let (weight, used) = (weight as u64, used as i64);
    Outcome::Best((weight / (wishes + 1), weight % (wishes + 1)), used)
}

fn weights(model: &Model, must: bool) -> impl Iterator<Item = u64> {
    let loads = model.loads.iter();
    loads.filter(move |load| load.must == must).map(|load| load.weight)
}

/// Returns the greatest weight or, given a weight to keep, the least use in thousandths.
#[allow(clippy::cast_precision_loss)] // the sums are far below 2^52
fn stage(model: &Model, limit: Duration, wishes: u64, keep: Option<f64>) -> Result<f64, Outcome> {
    let mut problem =
        Problem::new(if keep.is_some() { OptimizationDirection::Minimize } else { OptimizationDirection::Maximize });
    problem.set_time_limit(limit);
    let worth = |load: usize| {
        let of = &model.loads[load];
        (of.weight * if of.must { wishes + 1 } else { 1 }) as f64
    };
    let mut at: Vec<Vec<(usize, Variable)>> = Vec::new();
    for (load, of) in model.loads.iter().enumerate() {
        let price = if keep.is_some() { 0.0 } else { worth(load) };
        let there = of.allowed.iter().map(|place| (*place, problem.add_binary_var(price)));
        at.push(there.collect());
    }
    let most = keep.map(|_| problem.add_var(1.0, (0.0, 1000.0)));
    for there in &at {
        let row = there.iter().map(|(_, x)| (*x, 1.0));
        problem.add_constraint(row, ComparisonOp::Le, 1.0);
    }
    for (place, sockets) in model.sockets.iter().enumerate() {
        let row = at.iter().flatten().filter(|(there, _)| *there == place).map(|(_, x)| (*x, 1.0));
        problem.add_constraint(row, ComparisonOp::Le, f64::from(*sockets));
    }
    if let Some(keep) = keep {
        let all = at.iter().enumerate();
        let row = all.flat_map(|(load, there)| there.iter().map(move |(_, x)| (*x, load)));
        let row = row.map(|(x, load)| (x, worth(load)));
        problem.add_constraint(row, ComparisonOp::Ge, keep - 0.5);
    }
    for row in &model.rows {
        // In units of a thousand, so that one count is far above rounding.
        let capacity = row.capacity as f64 / 1000.0;
        for moment in model.moments() {
            let mut sum: Vec<(Variable, f64)> = Vec::new();
            let mut peaks: Vec<Vec<(Variable, f64)>> = Vec::new();
            let (mut worst, mut highest) = (0, 0);
            for load in moment.iter().filter(|load| *load < model.loads.len()) {
                let of = |table: &[i64], place: usize| match table.get(load) {
                    Some(value) if row.has(place) => *value,
                    _ => 0,
                };
                let mut peak = Vec::new();
                for (place, x) in &at[load] {
                    let (running, starting) = (of(&row.sums, *place), of(&row.peaks, *place));
                    if running > 0 {
                        sum.push((*x, running as f64 / 1000.0));
                    }
                    if starting > 0 {
                        peak.push((*x, starting as f64 / 1000.0));
                    }
                }
                let allowed = || model.loads[load].allowed.iter();
                worst += allowed().map(|place| of(&row.sums, *place)).max().unwrap_or(0);
                let high = allowed().map(|place| of(&row.peaks, *place)).max();
                highest = highest.max(high.unwrap_or(0));
                if !peak.is_empty() {
                    peaks.push(peak);
                }
            }
            if let Some(most) = most.filter(|_| row.balanced && worst > 0) {
                let mut within = sum.clone();
                within.push((most, -capacity / 1000.0));
                problem.add_constraint(within, ComparisonOp::Le, 0.0);
            }
            if worst + highest <= row.capacity {
                continue;
            }
            if row.is_surge() {
                let step = problem.add_var(0.0, (0.0, capacity));
                for mut peak in peaks {
                    peak.push((step, -1.0));
                    problem.add_constraint(peak, ComparisonOp::Le, 0.0);
                }
                sum.push((step, 1.0));
            }
            problem.add_constraint(sum, ComparisonOp::Le, capacity);
        }
    }
    let Ok(outcome) = problem.solve() else {
        return Err(Outcome::Failed);
    };
    let solution = outcome.into_solution().map_err(|_| Outcome::TimeOut)?;
    if solution.status() == SolutionStatus::Optimal { Ok(solution.objective()) } else { Err(Outcome::TimeOut) }
}

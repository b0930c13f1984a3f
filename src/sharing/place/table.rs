//! The rows of a model as one search sees them: a constraint for each row and moment that can be exceeded at all, and
//! what each load does to it.

use std::collections::BTreeMap;

use super::super::budget::Budget;
use super::super::model::{Model, Row, bits, mask};
use super::super::set::LoadSet;
use super::Worth;
use crate::quantity::product_down;

/// One row at one moment.
pub(super) struct Constraint {
    pub(super) capacity: i64,
    /// The places it covers.
    pub(super) places: u64,
    /// The loads that can be behind it at that moment, with what each adds. Cheapest to leave out first, by loss per
    /// unit.
    pub(super) loads: Vec<(usize, i64)>,
}

/// What a load adds to a constraint.
#[derive(Clone, Copy)]
pub(super) struct Touch {
    pub(super) constraint: usize,
    pub(super) sum: i64,
    pub(super) peak: i64,
    /// Whether it adds that wherever it is placed.
    pub(super) always: bool,
}

/// The constraints and costs of one search.
pub(super) struct Table {
    pub(super) constraints: Vec<Constraint>,
    /// For each load, its effects.
    pub(super) touches: Vec<Vec<Touch>>,
    /// For each load, the places where it may be plugged in for no more than the total cost.
    pub(super) allowed: Vec<u64>,
    /// For each load, the costs of these places, cheapest first, with the places of each cost.
    pub(super) costs: Vec<Vec<(i64, u64)>>,
    /// For each load, the greatest share it takes of any constraint, in millionths.
    pub(super) size: Vec<i64>,
    pub(super) most_cost: i64,
}

impl Table {
    /// Builds the table for a total cost, with every balanced row cut down to this many thousandths.
    pub(super) fn new(model: &Model, loss: &[u64], [cost, permille]: Worth) -> Self {
        let loads = model.loads.len();
        let allowed = |load: usize| {
            let places = model.loads[load].allowed.iter().copied();
            mask(places.filter(|place| model.cost(load, *place) <= cost))
        };
        let allowed: Vec<u64> = (0..loads).map(allowed).collect();
        let costs = |load: usize| {
            let mut costs: BTreeMap<i64, u64> = BTreeMap::new();
            for place in bits(allowed[load]) {
                *costs.entry(model.cost(load, place)).or_default() |= 1 << place;
            }
            costs.into_iter().collect()
        };
        let mut table = Self {
            constraints: Vec::new(),
            touches: vec![Vec::new(); loads],
            costs: (0..loads).map(costs).collect(),
            allowed,
            size: vec![0; loads],
            most_cost: cost,
        };
        let moments = model.moments();
        for row in model.rows.iter().chain(&model.implied) {
            let capacity = if row.balanced { scaled(row.capacity, permille) } else { row.capacity };
            let sockets = bits(row.places).map(|place| model.sockets[place]).sum();
            for moment in &moments {
                table.add(loss, row, *moment, capacity, sockets);
            }
        }
        table
    }

    /// Adds a row at a moment, unless nothing can exceed it: not all its loads at once, nor as many of the largest as
    /// there are sockets.
    fn add(&mut self, loss: &[u64], row: &Row, moment: LoadSet, capacity: i64, sockets: u32) {
        let counts = |load: &usize| {
            self.allowed.get(*load).is_some_and(|mask| mask & row.places != 0)
                && (row.sums[*load] > 0 || row.peak(*load) > 0)
        };
        let mut loads: Vec<(usize, i64)> = (moment.iter().filter(counts)).map(|load| (load, row.sums[load])).collect();
        let highest = loads.iter().map(|(load, _)| row.peak(*load)).max();
        loads.sort_unstable_by_key(|(load, sum)| (std::cmp::Reverse(*sum), *load));
        let sockets = usize::try_from(sockets).unwrap_or(usize::MAX);
        let most: i64 = loads.iter().take(sockets).map(|(_, sum)| sum).sum();
        if most + highest.unwrap_or(0) <= capacity {
            return;
        }
        for (load, sum) in &loads {
            self.size[*load] = self.size[*load].max(share(*sum, capacity));
            self.touches[*load].push(Touch {
                constraint: self.constraints.len(),
                sum: *sum,
                peak: row.peak(*load),
                always: self.allowed[*load] & !row.places == 0,
            });
        }
        loads.sort_by(|(a, of_a), (b, of_b)| {
            let left = u128::from(loss[*a]) * u128::from(of_b.unsigned_abs());
            let right = u128::from(loss[*b]) * u128::from(of_a.unsigned_abs());
            left.cmp(&right).then(a.cmp(b))
        });
        self.constraints.push(Constraint { capacity, places: row.places, loads });
    }
}

/// Returns a sum in millionths of a capacity.
pub(super) fn share(sum: i64, capacity: i64) -> i64 {
    product_down(sum, 1_000_000, capacity.max(1))
}

fn scaled(capacity: i64, permille: i64) -> i64 {
    // ceil(1000 * sum / capacity) <= permille  <=>  sum <= floor(capacity * permille / 1000).
    product_down(capacity, permille, 1000)
}

/// Loads and places that differ only in name.
pub(super) struct Alike {
    /// For each load, the nearest one before it that is the same in everything a placing depends on.
    pub(super) loads: Vec<Option<usize>>,
    /// For each place, the first that can be exchanged with it while both are empty: it has equal limits of its own,
    /// and shares all the others.
    pub(super) places: Vec<usize>,
}

impl Alike {
    /// Gives the first of equal loads the first of their places.
    pub(super) fn order(&self, at: &mut [Option<usize>]) {
        for load in 0..at.len() {
            let (mut this, mut before) = (load, self.loads[load]);
            while let Some(first) = before
                && at[this].is_some_and(|place| at[first].is_none_or(|it| place < it))
            {
                at.swap(first, this);
                (this, before) = (first, self.loads[first]);
            }
        }
    }

    pub(super) fn of(model: &Model, budget: &mut Budget) -> Self {
        let (loads, places) = (model.loads.len(), model.sockets.len());
        budget.spend(((loads + places) * (model.rows.len() + loads + places)) as u64);
        let first = |place: usize| (0..place).find(|before| same_place(model, *before, place));
        Self {
            loads: (0..loads).map(|load| (0..load).rev().find(|before| same_load(model, *before, load))).collect(),
            places: (0..places).map(|place| first(place).unwrap_or(place)).collect(),
        }
    }
}

fn same_load(model: &Model, a: usize, b: usize) -> bool {
    let (one, other) = (&model.loads[a], &model.loads[b]);
    (one.must, one.weight, &one.allowed) == (other.must, other.weight, &other.allowed)
        && (model.rows.iter()).all(|row| (row.sums[a], row.peak(a)) == (row.sums[b], row.peak(b)))
        && (model.moments.iter()).all(|moment| moment.contains(a) == moment.contains(b))
        && (one.allowed.iter()).all(|place| model.cost(a, *place) == model.cost(b, *place))
}

fn same_place(model: &Model, a: usize, b: usize) -> bool {
    let own = |place: usize| {
        let own = model.rows.iter().filter(move |row| row.places == 1 << place);
        own.map(|row| (row.capacity, row.balanced, &row.sums, &row.peaks))
    };
    let shared = |row: &Row| row.places.is_power_of_two() || row.has(a) == row.has(b);
    model.sockets[a] == model.sockets[b]
        && model.rows.iter().chain(&model.implied).all(shared)
        && own(a).eq(own(b))
        && (model.loads.iter().enumerate()).all(|(load, of)| {
            of.allowed.contains(&a) == of.allowed.contains(&b) && model.cost(load, a) == model.cost(load, b)
        })
}

//! What the rows of a model come to for one search: a constraint for each row at each moment that
//! can be passed at all, and what each load at each place does to it.

use super::super::model::{Model, Row};
use super::super::set::LoadSet;
use super::Worth;

/// One row at one moment.
pub(super) struct Constraint {
    pub(super) capacity: i64,
    /// Places with any coefficient in it.
    pub(super) places: u64,
    /// The loads that can matter to it, cheapest to leave out first (by loss for each unit),
    /// with the least coefficient each can have in it.
    pub(super) loads: Vec<(usize, i64)>,
    /// The same, the least coefficient first.
    pub(super) by_size: Vec<(usize, i64)>,
    pub(super) surge: bool,
    /// The numbers of the row and of the moment.
    pub(super) row: usize,
    pub(super) moment: usize,
}

/// What putting a load somewhere does to a constraint.
#[derive(Clone, Copy)]
pub(super) struct Touch {
    pub(super) constraint: usize,
    pub(super) sum: i64,
    pub(super) peak: i64,
    /// The part of `sum` that it adds wherever it is put.
    pub(super) pledge: i64,
}

/// What every search of a model asks of it.
pub(super) struct Facts<'a> {
    pub(super) model: &'a Model,
    pub(super) moments: Vec<LoadSet>,
    /// For each load, the places it may be plugged in.
    pub(super) allowed: Vec<u64>,
    /// For each load, the one before it that is alike in everything.
    pub(super) alike: Vec<Option<usize>>,
    /// For each row, what each load does to it; then what it costs.
    pub(super) rows: Vec<Vec<Doing>>,
    /// The row of costs. What is on or not, is all one to it, so that it has a moment of its own
    /// after those of the model, with everything on.
    costs: Row,
}

/// What a load does to a row, of the places it may be plugged in.
#[derive(Default)]
pub(super) struct Doing {
    /// Those where it does anything.
    pub(super) places: u64,
    /// Sum and peak, if they are the same at all of these.
    pub(super) same: Option<(i64, i64)>,
    /// The least sum there.
    least_there: i64,
    /// The greatest of sum and peak together.
    most: i64,
    greatest: i64,
    highest: i64,
    /// The least anywhere.
    least: i64,
    least_peak: i64,
}

impl Doing {
    fn of(model: &Model, row: &Row, load: usize) -> Self {
        let places = model.sockets.len();
        let mut doing = Self::default();
        for (number, place) in model.loads[load].allowed.iter().enumerate() {
            let (sum, peak) = coefficients(row, load * places + place);
            if number == 0 {
                (doing.least, doing.least_peak) = (sum, peak);
            }
            doing.least = doing.least.min(sum);
            doing.least_peak = doing.least_peak.min(peak);
            doing.greatest = doing.greatest.max(sum);
            doing.highest = doing.highest.max(peak);
            doing.most = doing.most.max(sum + peak);
            if sum > 0 || peak > 0 {
                if doing.places == 0 {
                    doing.same = Some((sum, peak));
                    doing.least_there = sum;
                }
                doing.same = doing.same.filter(|same| *same == (sum, peak));
                doing.least_there = doing.least_there.min(sum);
                doing.places |= 1 << place;
            }
        }
        doing
    }
}

impl<'a> Facts<'a> {
    pub(super) fn of(model: &'a Model) -> Self {
        let loads = 0..model.loads.len();
        let doing = |row| {
            loads
                .clone()
                .map(|load| Doing::of(model, row, load))
                .collect()
        };
        let costs = Row {
            capacity: 0,
            balanced: false,
            sums: model.costs.clone(),
            peaks: Vec::new(),
        };
        let costly = !costs.sums.is_empty();
        let daily = costly.then(|| LoadSet::below(model.loads.len()));
        Self {
            model,
            moments: model.moments().into_iter().chain(daily).collect(),
            allowed: model.loads.iter().map(|l| mask(&l.allowed)).collect(),
            alike: alike(model),
            rows: model
                .rows
                .iter()
                .chain(costly.then_some(&costs))
                .map(doing)
                .collect(),
            costs,
        }
    }

    fn row(&self, row: usize) -> &Row {
        self.model.rows.get(row).unwrap_or(&self.costs)
    }
}

/// For each load at each place, what it does to constraints, in their order.
pub(super) struct Touches {
    starts: Vec<usize>,
    list: Vec<Touch>,
}

impl Touches {
    fn new(facts: &Facts<'_>, constraints: &[Constraint]) -> Self {
        let model = facts.model;
        let (loads, places) = (model.loads.len(), model.sockets.len());
        let mut touches = Self {
            starts: Vec::with_capacity(loads * places + 1),
            list: Vec::with_capacity(loads * constraints.len()),
        };
        let mut of_load = Vec::new();
        for load in 0..loads {
            of_load.clear();
            for (c, constraint) in constraints.iter().enumerate() {
                let doing = &facts.rows[constraint.row][load];
                if doing.places != 0 && facts.moments[constraint.moment].contains(load) {
                    of_load.push((c, facts.row(constraint.row), doing));
                }
            }
            for place in 0..places {
                touches.starts.push(touches.list.len());
                for (c, row, doing) in &of_load {
                    if doing.places >> place & 1 == 1 {
                        let (sum, peak) = coefficients(row, load * places + place);
                        touches.list.push(Touch {
                            constraint: *c,
                            sum,
                            peak,
                            pledge: doing.least,
                        });
                    }
                }
            }
        }
        touches.starts.push(touches.list.len());
        touches
    }

    /// By `load * places + place`.
    pub(super) fn at(&self, index: usize) -> &[Touch] {
        &self.list[self.starts[index]..self.starts[index + 1]]
    }

    pub(super) fn iter(&self) -> impl Iterator<Item = &[Touch]> {
        self.starts
            .windows(2)
            .map(|ends| &self.list[ends[0]..ends[1]])
    }
}

/// What the rows come to, for one search.
pub(super) struct Table {
    pub(super) constraints: Vec<Constraint>,
    pub(super) touches: Touches,
    pub(super) demands: Vec<Vec<(usize, i64)>>,
    pub(super) pledges: Vec<Vec<Touch>>,
    pub(super) size: Vec<i64>,
}

impl Table {
    pub(super) fn new(facts: &Facts<'_>, loss: &[u64], [cost, permille]: Worth) -> Self {
        let model = facts.model;
        let loads = model.loads.len();
        let mut table = Self {
            constraints: Vec::new(),
            touches: Touches {
                starts: Vec::new(),
                list: Vec::new(),
            },
            demands: vec![Vec::new(); loads],
            pledges: vec![Vec::new(); loads],
            size: vec![0; loads],
        };
        let days = facts.moments.len() - usize::from(!model.costs.is_empty());
        for (row, of) in model.rows.iter().enumerate() {
            let capacity = if of.balanced {
                scaled(of.capacity, permille)
            } else {
                of.capacity
            };
            for moment in 0..days {
                table.add(facts, loss, row, moment, capacity);
            }
        }
        if days < facts.moments.len() {
            table.add(facts, loss, model.rows.len(), days, cost);
        }
        table.touches = Touches::new(facts, &table.constraints);
        table
    }

    /// Adds a row at a moment, unless even everything at once keeps it.
    fn add(&mut self, facts: &Facts<'_>, loss: &[u64], row: usize, moment: usize, capacity: i64) {
        let model = facts.model;
        let doing = &facts.rows[row];
        let on = facts.moments[moment];
        let on = || on.iter().filter(|load| *load < model.loads.len());
        let (mut mask, mut highest, mut all) = (0_u64, 0, 0);
        for load in on() {
            mask |= doing[load].places;
            highest = highest.max(doing[load].highest);
            all += doing[load].greatest;
        }
        if all + highest <= capacity {
            return;
        }
        // No more of them can come there than there are sockets.
        let sockets: u32 = bits(mask).map(|place| model.sockets[place]).sum();
        let sockets = usize::try_from(sockets).unwrap_or(usize::MAX);
        let mut most: Vec<i64> = on().map(|load| doing[load].greatest).collect();
        most.sort_unstable_by_key(|sum| std::cmp::Reverse(*sum));
        if most.iter().take(sockets).sum::<i64>() + highest <= capacity {
            return;
        }
        let c = self.constraints.len();
        let mut members = Vec::new();
        for load in on() {
            let doing = &doing[load];
            let pledge = Touch {
                constraint: c,
                sum: doing.least,
                peak: doing.least_peak,
                pledge: 0,
            };
            if pledge.sum > 0 || pledge.peak > 0 {
                self.pledges[load].push(pledge);
            }
            if doing.most > 0 {
                self.demands[load].push((c, doing.most));
            }
            // A load confined to the row's places may still add nothing at one of them.
            let inside = facts.allowed[load] & mask;
            let least = if inside & !doing.places == 0 {
                doing.least_there
            } else {
                0
            };
            if least > 0 {
                members.push((load, least));
                self.size[load] = self.size[load].max(share(least, capacity));
            }
        }
        members.sort_by(|a, b| {
            let left = u128::from(loss[a.0]) * u128::from(b.1.unsigned_abs());
            let right = u128::from(loss[b.0]) * u128::from(a.1.unsigned_abs());
            left.cmp(&right).then(a.0.cmp(&b.0))
        });
        let mut by_size = members.clone();
        by_size.sort_by_key(|(load, least)| (*least, *load));
        self.constraints.push(Constraint {
            capacity,
            places: mask,
            by_size,
            loads: members,
            surge: facts.row(row).is_surge(),
            row,
            moment,
        });
    }
}

pub(super) struct Region {
    pub(super) places: u64,
    pub(super) constraints: Vec<usize>,
    pub(super) inside: Vec<usize>,
}

/// Groups constraints by the places they cover and nests the groups: each goes inside the
/// smallest that holds it and whose other contents it does not overlap. The last holds all.
pub(super) fn regions(constraints: &[Constraint], places: usize) -> Vec<Region> {
    let all = if places >= 64 {
        u64::MAX
    } else {
        (1 << places) - 1
    };
    let mut masks: Vec<u64> = constraints
        .iter()
        .map(|constraint| constraint.places)
        .filter(|mask| *mask != all)
        .collect();
    masks.sort_by_key(|mask| (mask.count_ones(), *mask));
    masks.dedup();
    masks.push(all);
    let mut regions: Vec<Region> = masks
        .iter()
        .map(|places| Region {
            places: *places,
            constraints: (0..constraints.len())
                .filter(|c| constraints[*c].places == *places)
                .collect(),
            inside: Vec::new(),
        })
        .collect();
    for index in 0..regions.len() {
        // The largest not yet covered ones that fit inside and share no place.
        let mut covered = 0;
        let mut inside = Vec::new();
        for other in (0..index).rev() {
            let places = regions[other].places;
            if places & !regions[index].places == 0 && places & covered == 0 {
                covered |= places;
                inside.push(other);
            }
        }
        regions[index].inside = inside;
    }
    regions
}

fn coefficients(row: &Row, index: usize) -> (i64, i64) {
    let peak = row.peaks.get(index).copied().unwrap_or(0);
    (row.sums[index], peak)
}

/// The places of a mask, rising.
pub(super) fn bits(mut mask: u64) -> impl Iterator<Item = usize> {
    std::iter::from_fn(move || {
        (mask != 0).then(|| {
            let bit = mask.trailing_zeros() as usize;
            mask &= mask - 1;
            bit
        })
    })
}

/// A sum in millionths of a capacity.
pub(super) fn share(sum: i64, capacity: i64) -> i64 {
    if let Some(millionths) = sum.checked_mul(1_000_000) {
        return millionths / capacity.max(1);
    }
    let wide = i128::from(sum) * 1_000_000 / i128::from(capacity.max(1));
    i64::try_from(wide).unwrap_or(i64::MAX)
}

pub(super) fn mask(places: &[usize]) -> u64 {
    places.iter().fold(0, |mask, place| mask | 1 << place)
}

pub(super) fn scaled(capacity: i64, permille: i64) -> i64 {
    // ceil(1000 * sum / capacity) <= permille  <=>  sum <= floor(capacity * permille / 1000).
    let wide = i128::from(capacity) * i128::from(permille) / 1000;
    i64::try_from(wide).unwrap_or(i64::MAX)
}

/// For each load, the one before it that is the same in everything a placing depends on.
fn alike(model: &Model) -> Vec<Option<usize>> {
    let places = model.sockets.len();
    let same = |a: usize, b: usize| {
        let (one, other) = (&model.loads[a], &model.loads[b]);
        (one.must, one.weight, &one.allowed) == (other.must, other.weight, &other.allowed)
            && (model.moments.iter()).all(|moment| moment.contains(a) == moment.contains(b))
            && model.rows.iter().all(|row| {
                one.allowed.iter().all(|place| {
                    coefficients(row, a * places + place) == coefficients(row, b * places + place)
                })
            })
            && (one.allowed.iter()).all(|place| model.cost(a, *place) == model.cost(b, *place))
    };
    (0..model.loads.len())
        .map(|load| (0..load).rev().find(|before| same(*before, load)))
        .collect()
}

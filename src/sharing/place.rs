//! Placing: which loads are served and where each is plugged in, for the whole day.
//!
//! In this order: the greatest weight of musts, then of wishes, then the least greatest use of
//! any balanced row. The first two are one search for the least weight left out; the third asks,
//! by halving the range, whether the same weight still fits when every balanced row is cut down
//! to so many thousandths.
//!
//! The search goes depth first, in two layers. First it decides **which** loads are served, the
//! worthiest for their size first; what a load adds at every place it may go to is counted from then on. When all
//! is decided it looks for **where**: the load with the fewest places left, the emptiest place
//! first. Each prune has its proof beside it: `Search::least_loss` and `Search::unmatched`
//! (bounds on the weight that must still be left out), `Search::known_failure` (a state seen
//! before), and the allowance in `Search::descend`.

use std::collections::HashSet;

use super::budget::Budget;
use super::model::{Model, Places, Row};
use super::set::LoadSet;

/// A placing and what is known of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placing {
    /// Where each load is plugged in; `None` is not served.
    pub at: Vec<Option<usize>>,
    /// Weight of the served musts and wishes.
    pub weights: (u64, u64),
    /// The greatest use, in thousandths.
    pub use_permille: i64,
    /// Whether no placing is better.
    pub proven: bool,
    /// No placing has more weight than this.
    pub weights_at_most: (u64, u64),
    /// No placing of that weight has less use than this.
    pub use_at_least: i64,
}

/// Finds the best placing, within a budget.
#[must_use]
pub fn place(model: &Model, budget: &mut Budget) -> Placing {
    let tariff = Tariff::of(model);
    let total: u64 = tariff.loss.iter().sum();

    let mut search = Search::new(model, &tariff, 1000, total + 1);
    let complete = search.run(budget, false);
    let mut at = search.best.unwrap_or_else(|| vec![None; model.loads.len()]);
    let loss = search.allowance.min(total);
    let served = tariff.split(total - loss);
    let bound = if complete { loss } else { search.root_loss };

    // Whether the same weight fits within so many thousandths; the answer is monotone in them,
    // for a row cut down further admits no set that it did not admit before.
    let mut least = 0;
    let mut most = model.use_permille(&at);
    let mut proven = complete;
    while complete && least < most {
        let middle = least.midpoint(most);
        let mut search = Search::new(model, &tariff, middle, loss + 1);
        let settled = search.run(budget, true);
        if let Some(better) = search.best {
            most = model.use_permille(&better).min(middle);
            at = better;
        } else if settled {
            least = middle + 1;
        } else {
            proven = false;
            break;
        }
    }
    Placing {
        use_permille: model.use_permille(&at),
        at,
        weights: served,
        proven,
        weights_at_most: tariff.split(total - bound),
        use_at_least: least,
    }
}

/// One number for each load that orders must before wish.
struct Tariff {
    loss: Vec<u64>,
    wishes: u64,
}

impl Tariff {
    fn of(model: &Model) -> Self {
        let wishes = model
            .loads
            .iter()
            .filter(|load| !load.must)
            .map(|load| load.weight)
            .sum();
        Self {
            loss: model
                .loads
                .iter()
                .map(|load| load.weight * if load.must { wishes + 1 } else { 1 })
                .collect(),
            wishes,
        }
    }

    /// A sum of losses as weight of musts and of wishes. Exact, because all wishes together
    /// weigh less than one unit of a must.
    const fn split(&self, sum: u64) -> (u64, u64) {
        (sum / (self.wishes + 1), sum % (self.wishes + 1))
    }
}

/// One row at one moment.
struct Constraint {
    capacity: i64,
    /// Places with any coefficient in it.
    places: u64,
    /// The loads that can matter to it, cheapest to leave out first (by loss for each unit),
    /// with the least coefficient each can have in it.
    loads: Vec<(usize, i64)>,
    surge: bool,
}

/// What putting a load somewhere does to a constraint.
#[derive(Clone, Copy)]
struct Touch {
    constraint: usize,
    sum: i64,
    peak: i64,
    /// The part of `sum` that it adds wherever it is put.
    pledge: i64,
}

struct Search<'a> {
    model: &'a Model,
    loss: &'a [u64],
    constraints: Vec<Constraint>,
    /// For each mask of places that some constraint has, the constraints with it, and the masks
    /// directly inside it that share no place with each other.
    regions: Vec<Region>,
    touches: Vec<Vec<Touch>>,
    /// A load's size: its greatest share of any row, for choosing among equals.
    size: Vec<i64>,
    /// Its weight for that size.
    value: Vec<u128>,
    used: Vec<i64>,
    peak: Vec<i64>,
    sockets: Vec<u32>,
    heaviest_first: Vec<usize>,
    undecided: LoadSet,
    /// The greatest sum that the undecided loads can still add to each constraint.
    demand: Vec<i64>,
    /// For each load, the most it can add to each constraint wherever it goes.
    demands: Vec<Vec<(usize, i64)>>,
    /// For each load, what it adds to constraints wherever it goes.
    pledges: Vec<Vec<Touch>>,
    /// Loads that are to be served, among them all that must be.
    committed: LoadSet,
    /// Sum and greatest peak pledged by loads that are to be served and have no place yet.
    pledged: Vec<i64>,
    pledged_peak: Vec<i64>,
    at: Vec<Option<usize>>,
    best: Option<Vec<Option<usize>>>,
    /// Only placings that lose less than this are wanted.
    allowance: u64,
    root_loss: u64,
    memory: HashSet<(LoadSet, Box<[i64]>)>,
    memory_words: usize,
    first_only: bool,
}

/// A matching of loads to sockets.
struct Matching<'a> {
    domains: &'a [u64],
    free: Vec<u32>,
    guests: Vec<LoadSet>,
    seen: u64,
}

impl Matching<'_> {
    fn seat(&mut self, load: usize) -> bool {
        let mut left = self.domains[load];
        while left != 0 {
            let place = left.trailing_zeros() as usize;
            left &= left - 1;
            if self.free[place] > 0 {
                self.free[place] -= 1;
                self.guests[place].insert(load);
                return true;
            }
        }
        let mut left = self.domains[load] & !self.seen;
        while left != 0 {
            let place = left.trailing_zeros() as usize;
            self.seen |= 1 << place;
            for guest in self.guests[place].iter() {
                if self.seat(guest) {
                    self.guests[place].remove(guest);
                    self.guests[place].insert(load);
                    return true;
                }
            }
            left &= left - 1;
            left &= !self.seen;
        }
        false
    }
}

struct Region {
    places: u64,
    constraints: Vec<usize>,
    inside: Vec<usize>,
}

/// A loss that cannot be.
const NEVER: u64 = u64::MAX / 4;

/// How many words the memory of failed states may take: 16 MiB.
const MEMORY_WORDS: usize = 2 << 20;

/// What the rows come to, for one search.
struct Table {
    constraints: Vec<Constraint>,
    touches: Vec<Vec<Touch>>,
    demands: Vec<Vec<(usize, i64)>>,
    pledges: Vec<Vec<Touch>>,
    size: Vec<i64>,
}

impl Table {
    fn new(model: &Model, loss: &[u64], permille: i64) -> Self {
        let loads = model.loads.len();
        let mut table = Self {
            constraints: Vec::new(),
            touches: vec![Vec::new(); loads * model.sockets.len()],
            demands: vec![Vec::new(); loads],
            pledges: vec![Vec::new(); loads],
            size: vec![0; loads],
        };
        let moments = model.moments();
        for row in &model.rows {
            let capacity = if row.balanced {
                scaled(row.capacity, permille)
            } else {
                row.capacity
            };
            for moment in &moments {
                table.add(model, loss, row, moment, capacity);
            }
        }
        table
    }

    /// Adds a row at a moment, unless even everything at once keeps it.
    fn add(&mut self, model: &Model, loss: &[u64], row: &Row, moment: &LoadSet, capacity: i64) {
        let places = model.sockets.len();
        let on = || moment.iter().filter(|load| *load < model.loads.len());
        let of = |load: usize, place: usize| coefficients(row, load * places + place);
        let (mut mask, mut worst, mut highest) = (0_u64, 0, 0);
        for load in on() {
            let mut greatest = 0;
            for &place in &model.loads[load].allowed {
                let (sum, peak) = of(load, place);
                greatest = greatest.max(sum);
                highest = highest.max(peak);
                if sum > 0 || peak > 0 {
                    mask |= 1 << place;
                }
            }
            worst += greatest;
        }
        if worst + highest <= capacity {
            return;
        }
        let c = self.constraints.len();
        let mut members = Vec::new();
        for load in on() {
            let allowed = || model.loads[load].allowed.iter().copied();
            let pledge = Touch {
                constraint: c,
                sum: allowed().map(|place| of(load, place).0).min().unwrap_or(0),
                peak: allowed().map(|place| of(load, place).1).min().unwrap_or(0),
                pledge: 0,
            };
            if pledge.sum > 0 || pledge.peak > 0 {
                self.pledges[load].push(pledge);
            }
            let mut greatest = 0;
            for place in allowed() {
                let (sum, peak) = of(load, place);
                if sum > 0 || peak > 0 {
                    greatest = greatest.max(sum + peak);
                    self.touches[load * places + place].push(Touch {
                        constraint: c,
                        sum,
                        peak,
                        pledge: pledge.sum,
                    });
                }
            }
            if greatest > 0 {
                self.demands[load].push((c, greatest));
            }
            // A load confined to the row's places may still add nothing at one of them.
            let least = allowed()
                .filter(|place| mask >> place & 1 == 1)
                .map(|place| of(load, place).0)
                .min()
                .unwrap_or(0);
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
        self.constraints.push(Constraint {
            capacity,
            places: mask,
            loads: members,
            surge: row.is_surge(),
        });
    }
}

impl<'a> Search<'a> {
    fn new(model: &'a Model, tariff: &'a Tariff, permille: i64, allowance: u64) -> Self {
        let loads = model.loads.len();
        let table = Table::new(model, &tariff.loss, permille);
        let count = table.constraints.len();
        let mut heaviest_first: Vec<usize> = (0..loads).collect();
        heaviest_first.sort_by_key(|load| (std::cmp::Reverse(tariff.loss[*load]), *load));
        let mut search = Self {
            model,
            loss: &tariff.loss,
            regions: regions(&table.constraints, model.sockets.len()),
            used: vec![0; count],
            peak: vec![0; count],
            demand: vec![0; count],
            demands: table.demands,
            pledges: table.pledges,
            committed: LoadSet::default(),
            pledged: vec![0; count],
            pledged_peak: vec![0; count],
            constraints: table.constraints,
            touches: table.touches,
            value: tariff
                .loss
                .iter()
                .zip(&table.size)
                .map(|(loss, size)| {
                    u128::from(*loss) * 1_000_000 / u128::from(size.unsigned_abs().max(1))
                })
                .collect(),
            size: table.size,
            sockets: model.sockets.clone(),
            heaviest_first,
            undecided: LoadSet::below(loads),
            at: vec![None; loads],
            best: None,
            allowance,
            root_loss: 0,
            memory: HashSet::new(),
            memory_words: 0,
            first_only: false,
        };
        for load in 0..loads {
            search.count_demand(load, 1);
        }
        search
    }

    /// Searches. `true` when the answer is final: nothing loses less than `allowance` now says.
    fn run(&mut self, budget: &mut Budget, first_only: bool) -> bool {
        self.first_only = first_only;
        let domains = self.domains(
            &self
                .model
                .loads
                .iter()
                .map(|l| mask(&l.allowed))
                .collect::<Vec<_>>(),
        );
        self.root_loss = self
            .least_loss(&domains)
            .max(self.unmatched(&domains))
            .min(self.loss.iter().sum());
        self.descend(0, &domains, budget)
    }

    /// The places where each undecided load still fits.
    fn domains(&self, before: &[u64]) -> Vec<u64> {
        let places = self.model.sockets.len();
        let mut domains = before.to_vec();
        for load in self.undecided.iter() {
            let mut left = before[load];
            let mut fits = 0;
            while left != 0 {
                let place = left.trailing_zeros() as usize;
                left &= left - 1;
                let fine = self.sockets[place] > 0
                    && self.touches[load * places + place].iter().all(|touch| {
                        let c = touch.constraint;
                        let own = if self.committed.contains(load) {
                            touch.pledge
                        } else {
                            0
                        };
                        self.used[c] + self.pledged[c] - own
                            + touch.sum
                            + self.peak[c].max(self.pledged_peak[c]).max(touch.peak)
                            <= self.constraints[c].capacity
                    });
                fits |= u64::from(fine) << place;
            }
            domains[load] = fits;
        }
        domains
    }

    /// Decides which loads are served, then where.
    fn descend(&mut self, lost: u64, before: &[u64], budget: &mut Budget) -> bool {
        if lost >= self.allowance {
            return true;
        }
        if !budget.step() {
            return false;
        }
        // A load that weighs more than may still be lost must be served: leaving it out would
        // lose at least the allowance. Its weight is compared with all that may be lost, not with
        // any guess of what will be.
        let spare = self.allowance - 1 - lost;
        let forced: Vec<(usize, Vec<i64>)> = self
            .undecided
            .minus(&self.committed)
            .iter()
            .filter(|load| self.loss[*load] > spare)
            .collect::<Vec<_>>()
            .into_iter()
            .map(|load| (load, self.commit(load)))
            .collect();
        let complete = self.choose(lost, before, budget);
        for (load, undo) in forced.into_iter().rev() {
            self.release(load, &undo);
        }
        complete
    }

    fn choose(&mut self, lost: u64, before: &[u64], budget: &mut Budget) -> bool {
        let domains = self.domains(before);
        let bound = self.least_loss(&domains).max(self.unmatched(&domains));
        if lost.saturating_add(bound) >= self.allowance {
            return true;
        }
        let open = self.undecided.minus(&self.committed);
        // Most weight for its size first; what fits nowhere before all.
        let Some(load) = open.iter().min_by_key(|load| {
            let value = (domains[*load] == 0, self.value[*load]);
            (std::cmp::Reverse(value), *load)
        }) else {
            return self.seat_all(lost, &domains, budget);
        };
        let mut complete = true;
        if domains[load] != 0 {
            let undo = self.commit(load);
            complete = self.descend(lost, &domains, budget);
            self.release(load, &undo);
        }
        if complete && !self.done() && lost + self.loss[load] < self.allowance {
            self.undecided.remove(load);
            self.count_demand(load, -1);
            complete = self.descend(lost + self.loss[load], &domains, budget);
            self.count_demand(load, 1);
            self.undecided.insert(load);
        }
        complete
    }

    /// Every load left is to be served; finds each a place.
    fn seat_all(&mut self, lost: u64, before: &[u64], budget: &mut Budget) -> bool {
        if self.undecided.is_empty() {
            self.allowance = lost;
            self.best = Some(self.at.clone());
            return true;
        }
        if !budget.step() {
            return false;
        }
        let domains = self.domains(before);
        if self.least_loss(&domains).max(self.unmatched(&domains)) > 0 {
            return true;
        }
        let key = self.state();
        if self.known_failure(&key) {
            return true;
        }
        let load = self
            .undecided
            .iter()
            .min_by_key(|load| (domains[*load].count_ones(), -self.size[*load], *load))
            .unwrap_or_default();
        let places = self.model.sockets.len();
        let mut order: Vec<(i64, usize)> = self.model.loads[load]
            .allowed
            .iter()
            .filter(|place| domains[load] >> **place & 1 == 1)
            .map(|place| (self.pressure(load, *place), *place))
            .collect();
        order.sort_by_key(|(pressure, _)| *pressure);

        let allowance = self.allowance;
        self.undecided.remove(load);
        self.count_demand(load, -1);
        let mut complete = true;
        for (_, place) in order {
            let undo = self.put(load, place, places);
            complete = self.seat_all(lost, &domains, budget);
            self.take(load, place, places, &undo);
            // Any way of seating them all loses the same, so the first is as good as any.
            if !complete || self.allowance < allowance {
                break;
            }
        }
        self.count_demand(load, 1);
        self.undecided.insert(load);
        if complete && self.allowance == allowance {
            self.remember(key);
        }
        complete
    }

    /// Notes that a load will be served, wherever: what it adds to a constraint at every place
    /// it may go to is certain from now on.
    fn commit(&mut self, load: usize) -> Vec<i64> {
        self.committed.insert(load);
        let mut undo = Vec::new();
        for pledge in &self.pledges[load] {
            let c = pledge.constraint;
            self.pledged[c] += pledge.sum;
            undo.push(self.pledged_peak[c]);
            self.pledged_peak[c] = self.pledged_peak[c].max(pledge.peak);
        }
        undo
    }

    fn release(&mut self, load: usize, undo: &[i64]) {
        self.committed.remove(load);
        for (pledge, peak) in self.pledges[load].iter().zip(undo) {
            self.pledged[pledge.constraint] -= pledge.sum;
            self.pledged_peak[pledge.constraint] = *peak;
        }
    }

    fn done(&self) -> bool {
        self.first_only && self.best.is_some()
    }

    fn put(&mut self, load: usize, place: usize, places: usize) -> Vec<i64> {
        self.at[load] = Some(place);
        self.sockets[place] -= 1;
        // What was pledged is now counted where it is; a pledged peak may stay, for the real one
        // is no less.
        for pledge in &self.pledges[load] {
            self.pledged[pledge.constraint] -= pledge.sum;
        }
        let mut undo = Vec::new();
        for touch in &self.touches[load * places + place] {
            let c = touch.constraint;
            self.used[c] += touch.sum;
            if self.constraints[c].surge {
                undo.push(self.peak[c]);
                self.peak[c] = self.peak[c].max(touch.peak);
            }
        }
        undo
    }

    fn take(&mut self, load: usize, place: usize, places: usize, undo: &[i64]) {
        self.at[load] = None;
        self.sockets[place] += 1;
        for pledge in &self.pledges[load] {
            self.pledged[pledge.constraint] += pledge.sum;
        }
        let mut undo = undo.iter();
        for touch in &self.touches[load * places + place] {
            let c = touch.constraint;
            self.used[c] -= touch.sum;
            if self.constraints[c].surge {
                self.peak[c] = undo.next().copied().unwrap_or(0);
            }
        }
    }

    /// How full the fullest row would be, in millionths, with this load there.
    fn pressure(&self, load: usize, place: usize) -> i64 {
        self.touches[load * self.model.sockets.len() + place]
            .iter()
            .map(|touch| {
                let c = touch.constraint;
                let full = self.used[c] + touch.sum + self.peak[c].max(touch.peak);
                share(full, self.constraints[c].capacity)
            })
            .max()
            .unwrap_or(0)
    }

    fn count_demand(&mut self, load: usize, sign: i64) {
        for (constraint, greatest) in &self.demands[load] {
            self.demand[*constraint] += sign * greatest;
        }
    }

    /// At least this much weight of undecided loads must be left out; [`NEVER`] when not all that
    /// is to be served can be.
    ///
    /// Proof. Call a load confined to a region when all places left to it lie in the region; one
    /// with no place left is counted on its own instead. What is placed of the confined loads
    /// adds up, in any one constraint of that region, to no more than the room left there; each
    /// counts at least its least coefficient. So the loads left out sum, in those least
    /// coefficients, to at least the shortfall, and the cheapest way of that, allowing parts of a
    /// load, costs no more than any real way. Loads that are to be served are no choice in it.
    /// Surge rows are taken with the peak that is certain already: a weaker statement that is
    /// also true. Regions without a common place have no confined load in common, so their
    /// losses add; of two bounds on the same loads the greater stands.
    fn least_loss(&self, domains: &[u64]) -> u64 {
        let mut stranded = 0;
        for load in self.undecided.iter().filter(|load| domains[*load] == 0) {
            if self.committed.contains(load) {
                return NEVER;
            }
            stranded += self.loss[load];
        }
        let mut losses = vec![0; self.regions.len()];
        // Smaller regions come first, so what is inside is known before what is round it.
        for (index, region) in self.regions.iter().enumerate() {
            let mut worst: u64 = region.inside.iter().map(|inside| losses[*inside]).sum();
            let mut confined = None;
            for &c in &region.constraints {
                let constraint = &self.constraints[c];
                let room =
                    constraint.capacity - self.used[c] - self.peak[c].max(self.pledged_peak[c]);
                // Not even all that is undecided passes it.
                if self.demand[c] <= room {
                    continue;
                }
                let confined = confined.get_or_insert_with(|| -> LoadSet {
                    self.undecided
                        .iter()
                        .filter(|l| domains[*l] != 0 && domains[*l] & !region.places == 0)
                        .collect()
                });
                worst = worst.max(self.knapsack(constraint, confined, room));
                if worst >= NEVER {
                    return NEVER;
                }
            }
            losses[index] = worst;
        }
        // The last region holds all places, so everything is inside it.
        stranded + losses.last().copied().unwrap_or(0)
    }

    /// The least loss, parts of a load allowed, that brings the sum down to the room.
    fn knapsack(&self, constraint: &Constraint, confined: &LoadSet, room: i64) -> u64 {
        let loads = constraint
            .loads
            .iter()
            .filter(|(load, _)| confined.contains(*load));
        let sum: i64 = loads.clone().map(|(_, least)| least).sum();
        let mut short = sum - room;
        let mut lost = 0;
        for &(load, least) in loads {
            if short <= 0 {
                return lost;
            }
            if self.committed.contains(load) {
                continue;
            }
            if least <= short {
                lost += self.loss[load];
            } else {
                // A part of it, rounded up: losses are whole numbers.
                let part = u128::from(self.loss[load]) * u128::from(short.unsigned_abs());
                let part = part.div_ceil(u128::from(least.unsigned_abs()));
                lost += u64::try_from(part).unwrap_or(self.loss[load]);
            }
            short -= least;
        }
        if short > 0 { NEVER } else { lost }
    }

    /// At least this much weight of undecided loads finds no socket, whatever else holds.
    ///
    /// Proof. A placing of the undecided loads is a matching of them to sockets. The sets of
    /// loads that can be matched are the independent sets of a transversal matroid, in which the
    /// greedy choice, heaviest first, has the greatest weight; an augmenting path says whether
    /// one more can be matched beside those that are.
    fn unmatched(&self, domains: &[u64]) -> u64 {
        let mut matching = Matching {
            domains,
            free: self.sockets.clone(),
            guests: vec![LoadSet::default(); self.sockets.len()],
            seen: 0,
        };
        let mut lost = 0;
        for load in self.undecided.intersection(&self.committed).iter() {
            matching.seen = 0;
            if !matching.seat(load) {
                return NEVER;
            }
        }
        for &load in &self.heaviest_first {
            if self.undecided.contains(load) && !self.committed.contains(load) {
                matching.seen = 0;
                if !matching.seat(load) {
                    lost += self.loss[load];
                }
            }
        }
        lost
    }

    /// What the future depends on: which loads are undecided, and the room in each constraint and
    /// place. Room that the undecided loads cannot fill however they are placed is left out of
    /// the key, for it decides nothing.
    fn state(&self) -> Box<[i64]> {
        let mut key = Vec::new();
        for (c, constraint) in self.constraints.iter().enumerate() {
            let room = constraint.capacity - self.used[c];
            // `demand` counts every undecided load's sum and peak, so at most that much, plus the
            // peak already standing, can still be asked for.
            if room < self.demand[c] + self.peak[c] {
                key.push(i64::try_from(c).unwrap_or(i64::MAX));
                key.push(room);
                if constraint.surge {
                    key.push(self.peak[c]);
                }
            }
        }
        let undecided = u32::try_from(self.undecided.len()).unwrap_or(u32::MAX);
        key.extend(
            self.sockets
                .iter()
                .map(|left| i64::from(*left.min(&undecided))),
        );
        key.into_boxed_slice()
    }

    /// Whether seating all undecided loads was found impossible from this state before.
    ///
    /// Proof. Two nodes with the same undecided loads and the same key admit the same
    /// completions: a constraint outside the key holds for all of them, one inside has the same
    /// room. Only states whose search came to its end without a placing are kept.
    fn known_failure(&self, key: &[i64]) -> bool {
        // The key is compared by value, not by hash alone: equal means equal.
        self.memory.contains(&(self.undecided, Box::from(key)))
    }

    fn remember(&mut self, key: Box<[i64]>) {
        if self.memory_words + key.len() <= MEMORY_WORDS {
            self.memory_words += key.len() + 8;
            self.memory.insert((self.undecided, key));
        }
    }
}

fn coefficients(row: &Row, index: usize) -> (i64, i64) {
    let peak = row.peaks.get(index).copied().unwrap_or(0);
    (row.sums[index], peak)
}

/// A sum in millionths of a capacity.
fn share(sum: i64, capacity: i64) -> i64 {
    let wide = i128::from(sum) * 1_000_000 / i128::from(capacity.max(1));
    i64::try_from(wide).unwrap_or(i64::MAX)
}

fn mask(places: &[usize]) -> u64 {
    places.iter().fold(0, |mask, place| mask | 1 << place)
}

fn scaled(capacity: i64, permille: i64) -> i64 {
    // ceil(1000 * sum / capacity) <= permille  <=>  sum <= floor(capacity * permille / 1000).
    let wide = i128::from(capacity) * i128::from(permille) / 1000;
    i64::try_from(wide).unwrap_or(i64::MAX)
}

/// Groups constraints by the places they cover and nests the groups: each goes inside the
/// smallest that holds it and whose other contents it does not overlap. The last holds all.
fn regions(constraints: &[Constraint], places: usize) -> Vec<Region> {
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

/// A placing as the plain slice the model's questions take.
impl AsRef<Places> for Placing {
    fn as_ref(&self) -> &Places {
        &self.at
    }
}

//! How much of each limit can be used at all, by loads of the sizes there are.
//!
//! Room of 8 A is no use beyond 5 A to loads of 5 A. Where few sockets are left, the greatest sum
//! that fits is found exactly; what a group of places can take up is no more than what its parts
//! can; and what is still to be plugged in has to fit into that.

use super::super::model::Model;
use super::super::set::LoadSet;
use super::bound::NEVER;
use super::search::Search;
use super::table::{Constraint, Region};

/// Up to so many sockets the greatest sum is found exactly.
const FEW: usize = 3;

/// The greatest sum of at most `count` of the sizes, which rise, that is no more than the room;
/// no less than that when more than [`FEW`] may come.
pub(super) fn greatest(sizes: &[i64], room: i64, count: usize) -> i64 {
    let sizes = &sizes[..sizes.partition_point(|size| *size <= room)];
    let largest: i64 = sizes.iter().rev().take(count).sum();
    if largest <= room {
        return largest;
    }
    match count {
        0 => 0,
        1 => sizes.last().copied().unwrap_or(0),
        2 => pair(sizes, room),
        FEW => sizes
            .iter()
            .enumerate()
            .map(|(index, size)| size + pair(&sizes[..index], room - size))
            .max()
            .unwrap_or(0),
        _ => room,
    }
}

/// The greatest sum of at most two of the sizes that is no more than the room.
fn pair(sizes: &[i64], room: i64) -> i64 {
    let end = sizes.partition_point(|size| *size <= room);
    let mut best = if end == 0 { 0 } else { sizes[end - 1] };
    let (mut low, mut high) = (0, end);
    while low + 1 < high {
        let sum = sizes[low] + sizes[high - 1];
        if sum <= room {
            best = best.max(sum);
            low += 1;
        } else {
            high -= 1;
        }
    }
    best
}

/// What loads measure.
pub(super) struct Measure {
    of: Vec<i64>,
    /// Loads, cheapest to leave out first for their measure.
    cheapest: Vec<usize>,
    /// For each constraint, its loads with their sizes, most measure for its size first.
    dearest: Vec<Vec<(usize, i64)>>,
}

/// The measures that are tried: what loads take while they run, and what they take where loads
/// that run for hours count more.
pub(super) fn measures(model: &Model, loss: &[u64], constraints: &[Constraint]) -> Vec<Measure> {
    let places = model.sockets.len();
    let plain: Vec<i64> = model.loads.iter().map(|load| load.running * 1000).collect();
    let mut counted = plain.clone();
    for row in model.rows.iter().filter(|row| !row.is_surge()) {
        let times = |load: usize| {
            let size = (0..places)
                .map(|place| row.sums[load * places + place])
                .max();
            size.unwrap_or(0) / model.loads[load].running.max(1)
        };
        let loads = || (0..model.loads.len()).filter(|load| times(*load) > 0);
        let least = loads().map(times).min().unwrap_or(1);
        for load in loads() {
            let here = model.loads[load].running * 1000 / least * times(load);
            counted[load] = counted[load].max(here);
        }
    }
    let mut list = vec![plain];
    if counted != list[0] {
        list.push(counted);
    }
    let measure = |of: Vec<i64>| {
        // More of `a` for each of `b`, without dividing.
        let by = |a: (u64, i64), b: (u64, i64)| {
            let left = u128::from(a.0) * u128::from(b.1.unsigned_abs());
            let right = u128::from(b.0) * u128::from(a.1.unsigned_abs());
            left.cmp(&right)
        };
        let mut cheapest: Vec<usize> = (0..of.len()).filter(|load| of[*load] > 0).collect();
        cheapest.sort_by(|a, b| by((loss[*a], of[*a]), (loss[*b], of[*b])));
        let dearest = constraints
            .iter()
            .map(|constraint| {
                let mut loads = constraint.loads.clone();
                let worth = |load: usize| of[load].unsigned_abs();
                loads.sort_by(|a, b| by((worth(b.0), b.1), (worth(a.0), a.1)));
                loads
            })
            .collect();
        Measure {
            of,
            cheapest,
            dearest,
        }
    };
    list.into_iter().map(measure).collect()
}

impl Search<'_> {
    /// At least this much weight must be left out for want of room that can be used; [`NEVER`]
    /// when not all that is to be served can be.
    ///
    /// Proof. Give each load a measure. In a constraint, the loads that come sum up to no more
    /// than [`greatest`] finds, and their measure to no more than that sum buys, the loads of
    /// most measure for their size first. A load comes to one place only, so the measure that a
    /// region takes up is no more than the sum over parts of it that share no place. All the
    /// measure that is served lies in the last region, which holds all places; so the rest is
    /// left out, and that costs at least what the cheapest way of it costs, parts of a load
    /// allowed.
    pub(super) fn cramped(&self, domains: &[u64]) -> u64 {
        if self.measures.is_empty() {
            return 0;
        }
        let mut worst = 0;
        for moment in 0..self.moments.len() {
            let on: LoadSet = self
                .undecided
                .intersection(&self.moments[moment])
                .iter()
                .filter(|load| domains[*load] != 0)
                .collect();
            let here: Vec<LoadSet> = self
                .regions
                .iter()
                .map(|region| {
                    on.iter()
                        .filter(|l| domains[*l] & region.places != 0)
                        .collect()
                })
                .collect();
            for measure in &self.measures {
                let room = self.takes_up(domains, measure, moment, &here);
                worst = worst.max(self.left_out(measure, room, &on));
                if worst >= NEVER {
                    return NEVER;
                }
            }
        }
        worst
    }

    /// How much of a measure can come, at one moment. `here`: the loads that may come to each
    /// region.
    fn takes_up(&self, domains: &[u64], measure: &Measure, moment: usize, here: &[LoadSet]) -> i64 {
        let mut rooms = vec![0; self.regions.len()];
        for (index, region) in self.regions.iter().enumerate() {
            let here = &here[index];
            let mut room: i64 = here.iter().map(|load| measure.of[load]).sum();
            let mut covered = 0;
            let mut parts: i64 = 0;
            for inside in &region.inside {
                covered |= self.regions[*inside].places;
                parts += rooms[*inside];
            }
            let open = region.places & !covered;
            if open != 0 {
                let loose = here.iter().filter(|load| domains[*load] & open != 0);
                parts += loose.map(|load| measure.of[load]).sum::<i64>();
            }
            room = room.min(parts);
            let count = self.sockets_of(region);
            for &c in &region.constraints {
                if self.constraints[c].moment == moment {
                    room = room.min(self.buys(measure, c, here, count));
                }
            }
            rooms[index] = room;
        }
        rooms.last().copied().unwrap_or(i64::MAX)
    }

    fn sockets_of(&self, region: &Region) -> usize {
        let places = (0..self.sockets.len()).filter(|place| region.places >> place & 1 == 1);
        let sockets: u32 = places.map(|place| self.sockets[place]).sum();
        usize::try_from(sockets).unwrap_or(usize::MAX)
    }

    /// The most measure that the room left in a constraint buys, of the loads that may come.
    fn buys(&self, measure: &Measure, c: usize, here: &LoadSet, count: usize) -> i64 {
        let constraint = &self.constraints[c];
        let room = constraint.capacity - self.used[c] - self.peak[c];
        if room <= 0 {
            // What counts nothing here comes all the same.
            let all = here
                .iter()
                .all(|load| constraint.loads.iter().any(|(l, _)| *l == load));
            return if all { 0 } else { i64::MAX };
        }
        let mut sum = room;
        if count <= FEW {
            let sizes: Vec<i64> = constraint
                .by_size
                .iter()
                .filter(|(load, _)| here.contains(*load))
                .map(|(_, size)| *size)
                .collect();
            sum = greatest(&sizes, room, count);
        }
        let (mut bought, mut met) = (0, 0);
        for &(load, size) in &measure.dearest[c] {
            if !here.contains(load) {
                continue;
            }
            met += 1;
            if sum <= 0 {
                continue;
            }
            if size <= sum {
                bought += measure.of[load];
            } else {
                let part = i128::from(measure.of[load]) * i128::from(sum) + i128::from(size) - 1;
                bought += i64::try_from(part / i128::from(size)).unwrap_or(i64::MAX);
            }
            sum -= size;
        }
        // Some load counts nothing here, and comes for nothing.
        if met < here.len() { i64::MAX } else { bought }
    }

    /// The least loss that brings the measure of what is on down to the room.
    fn left_out(&self, measure: &Measure, room: i64, on: &LoadSet) -> u64 {
        let mut short: i64 = on.iter().map(|load| measure.of[load]).sum::<i64>() - room;
        let mut lost = 0;
        for &load in &measure.cheapest {
            if short <= 0 {
                return lost;
            }
            if !on.contains(load) || self.committed.contains(load) {
                continue;
            }
            if measure.of[load] <= short {
                lost += self.loss[load];
            } else {
                let part = u128::from(self.loss[load]) * u128::from(short.unsigned_abs());
                let part = part.div_ceil(u128::from(measure.of[load].unsigned_abs()));
                lost += u64::try_from(part).unwrap_or(self.loss[load]);
            }
            short -= measure.of[load];
        }
        if short > 0 { NEVER } else { lost }
    }
}

//! Whether a set of loads finds places, asked of one part of the tree at a time.
//!
//! What hangs on two breakers has only the loads in common that it is dealt. So a set of loads is
//! dealt to the parts of the tree, each part is asked by itself whether it can take what it was
//! dealt, and deals it on to its own parts. The answer for a part and a set is kept: it is asked
//! for again with every other way of dealing the rest.
//!
//! Proof that this is the whole answer. Every limit is the own one of just one part: it touches no
//! place outside, and all of the part's loads add to it the same wherever in there they go. So
//! whether a set keeps it does not depend on how the set is dealt on; what is left to keep are the
//! limits of the parts it is dealt to, and none of these has anything to do with another. A set
//! thus has places in a part exactly if it keeps the part's own limits and can be dealt to its
//! parts so that each has places for what it gets, and at a single place if there are sockets
//! enough. Of places where loads are plugged in for good, what they take up counts beforehand.

use std::collections::HashMap;
use std::hash::{BuildHasherDefault, Hasher};

use super::super::budget::Budget;
use super::super::set::LoadSet;
use super::search::Search;
use super::table::{Constraint, Doing, Facts, bits, share};

/// Steps for one question. What is not settled by then is left to the search.
const QUESTION: u32 = 4000;
/// The same after one was left open: others of that search mostly are, too.
const LATER: u32 = 500;
/// So many of these steps take as long as one of the search.
const IN_ONE: u32 = 64;
/// How many answers are kept.
const MOST_KNOWN: usize = 1 << 16;

/// Places with the limits that hold for all of them, and the parts they fall into otherwise.
struct Part {
    places: u64,
    /// The limits that hold for all of it.
    own: Vec<usize>,
    /// For each load, what it adds to them, wherever in here it goes.
    adds: Vec<Vec<Add>>,
    /// Its parts, in the order of their first places; none if it is one place.
    parts: Vec<usize>,
    /// For each of these, where its own limits begin among those of all.
    starts: Vec<usize>,
    /// The first part that is the same in all but its name and sockets.
    kind: usize,
    /// All loads, in the order in which they are dealt.
    order: Vec<usize>,
}

/// What a load adds to a limit.
#[derive(Clone, Copy, PartialEq, Eq)]
struct Add {
    /// The limit's place among a part's own.
    limit: usize,
    sum: i64,
    peak: i64,
    /// The sum in millionths of the capacity, for choosing among equals.
    share: i64,
}

/// The tree, and what is known of it.
pub(super) struct Parts {
    tree: Vec<Part>,
    known: Vec<Known>,
    /// For each part and load, the part of it that it was dealt to when all went well.
    habit: Vec<Vec<usize>>,
    /// Steps for the next question.
    allowance: u32,
    /// Steps not yet taken from a budget.
    owed: u32,
}

/// For each set that was asked about, whether the part can take it; nothing if that is open.
type Known = HashMap<LoadSet, Option<bool>, BuildHasherDefault<Quick>>;

/// Hashing of a few words, by multiplication as in Knuth, The Art of Computer Programming 3, 6.4.
#[derive(Default)]
struct Quick(u64);

impl Hasher for Quick {
    fn finish(&self) -> u64 {
        self.0 ^ (self.0 >> 32)
    }

    fn write(&mut self, bytes: &[u8]) {
        for chunk in bytes.chunks(8) {
            let mut word = [0; 8];
            word[..chunk.len()].copy_from_slice(chunk);
            self.write_u64(u64::from_le_bytes(word));
        }
    }

    fn write_u64(&mut self, word: u64) {
        self.0 = (self.0.rotate_left(23) ^ word).wrapping_mul(0x9e37_79b9_7f4a_7c15);
    }

    fn write_usize(&mut self, _: usize) {
        // The length of the array: the same for all.
    }
}

impl Parts {
    /// The tree of these limits; `None` if some load adds to a limit more here than there within a
    /// part that has it for its own, as one of either leg does.
    fn new(
        constraints: &[Constraint],
        facts: &Facts<'_>,
        size: &[i64],
        allowed: &[u64],
    ) -> Option<Self> {
        let open = allowed.iter().fold(0, |all, mask| all | mask);
        if open == 0 {
            return None;
        }
        // By the places of the whole row, for rows nest, and what is on at a moment need not.
        let of_row = |row: &Vec<Doing>| row.iter().fold(0, |all, doing| all | doing.places);
        let of_row: Vec<u64> = facts.rows.iter().map(of_row).collect();
        let places: Vec<u64> = constraints.iter().map(|c| of_row[c.row]).collect();
        let mut all: Vec<usize> = (0..constraints.len()).collect();
        all.sort_by_key(|c| std::cmp::Reverse(places[*c].count_ones()));
        let mut grower = Grower {
            constraints,
            places,
            facts,
            size,
            allowed,
            tree: Vec::new(),
        };
        grower.grow(open, all)?;
        let tree = grower.tree;
        Some(Self {
            known: tree.iter().map(|_| Known::default()).collect(),
            habit: vec![vec![usize::MAX; size.len()]; tree.len()],
            tree,
            allowance: QUESTION,
            owed: 0,
        })
    }

    /// Takes out what is known of the parts with this place, which is about to change.
    fn forget(&mut self, place: usize) -> Vec<(usize, Known)> {
        let here = (0..self.tree.len()).filter(|part| self.tree[*part].places >> place & 1 == 1);
        here.map(|part| (part, std::mem::take(&mut self.known[part])))
            .collect()
    }
}

struct Grower<'a> {
    constraints: &'a [Constraint],
    /// The places of each constraint.
    places: Vec<u64>,
    facts: &'a Facts<'a>,
    size: &'a [i64],
    allowed: &'a [u64],
    tree: Vec<Part>,
}

impl Grower<'_> {
    /// Adds the part with these places and the limits that touch no others, the widest first, and
    /// the parts in it.
    fn grow(&mut self, places: u64, limits: Vec<usize>) -> Option<usize> {
        // The widest limits are its own, until those left fall apart.
        let mut own = limits;
        let mut inside = own.clone();
        let mut groups = vec![places];
        if places.is_power_of_two() {
            inside.clear();
        } else {
            loop {
                groups = self.groups(places, &inside);
                let Some(widest) = inside.first() else { break };
                if groups.len() > 1 {
                    break;
                }
                let widest = self.places[*widest];
                inside.retain(|c| self.places[*c] != widest);
            }
        }
        own.retain(|c| !inside.contains(c));
        let adds = (0..self.size.len())
            .map(|load| self.adds(load, places, &own))
            .collect::<Option<Vec<_>>>()?;
        let at = self.tree.len();
        self.tree.push(Part {
            places,
            own,
            adds,
            parts: Vec::new(),
            starts: Vec::new(),
            kind: at,
            order: Vec::new(),
        });
        if places.is_power_of_two() {
            self.name_kind(at);
            return Some(at);
        }
        let mut parts = Vec::new();
        let mut starts = Vec::new();
        let mut count = 0;
        for group in &groups {
            let limits = inside.iter().copied();
            let limits = limits.filter(|c| self.places[*c] & group != 0);
            let part = self.grow(*group, limits.collect())?;
            parts.push(part);
            starts.push(count);
            count += self.tree[part].own.len();
        }
        // What goes to few of the parts first, then the largest.
        let mut order: Vec<usize> = (0..self.size.len()).collect();
        let choices = |load: usize| {
            let allowed = self.allowed[load];
            let open = groups.iter().filter(|group| *group & allowed != 0);
            open.count()
        };
        order.sort_by_cached_key(|load| (choices(*load), -self.size[*load], *load));
        let part = &mut self.tree[at];
        part.parts = parts;
        part.starts = starts;
        part.order = order;
        self.name_kind(at);
        Some(at)
    }

    /// Finds the first part that is the same in all but its name, with the parts in it.
    fn name_kind(&mut self, at: usize) {
        let same = (0..self.tree.len()).find(|other| *other == at || self.twins(at, *other));
        self.tree[at].kind = same.unwrap_or(at);
    }

    /// The places in groups that no limit has in common, in the order of their first places.
    fn groups(&self, places: u64, limits: &[usize]) -> Vec<u64> {
        let mut groups: Vec<u64> = bits(places).map(|place| 1 << place).collect();
        for c in limits {
            let mask = self.places[*c] & places;
            let met = groups.iter().filter(|group| *group & mask != 0);
            let joined = met.fold(0, |joined, group| joined | group);
            if joined.count_ones() > 1 {
                groups.retain(|group| group & mask == 0);
                groups.push(joined);
            }
        }
        groups.sort_by_key(|group| group.trailing_zeros());
        groups
    }

    /// What a load adds to these limits, if it is the same wherever here it goes.
    fn adds(&self, load: usize, places: u64, own: &[usize]) -> Option<Vec<Add>> {
        let inside = places & self.allowed[load];
        let mut adds = Vec::new();
        for (limit, c) in own.iter().enumerate() {
            let of = &self.constraints[*c];
            let doing = &self.facts.rows[of.row][load];
            if inside & doing.places == 0 || !self.facts.moments[of.moment].contains(load) {
                continue;
            }
            // Something here, and nothing or another thing there.
            if inside & !doing.places != 0 {
                return None;
            }
            let (sum, peak) = doing.same?;
            adds.push(Add {
                limit,
                sum,
                peak,
                share: share(sum, of.capacity),
            });
        }
        Some(adds)
    }

    /// Whether two parts are the same in all but their names and sockets.
    fn twins(&self, one: usize, other: usize) -> bool {
        let (one, other) = (&self.tree[one], &self.tree[other]);
        let told = |c: &usize| {
            let of = &self.constraints[*c];
            (of.moment, of.surge, of.capacity)
        };
        let kinds = |part: &Part| -> Vec<usize> {
            let parts = part.parts.iter().map(|part| self.tree[*part].kind);
            parts.collect()
        };
        let open = |mask: &u64| (mask & one.places == 0) == (mask & other.places == 0);
        one.own.iter().map(told).eq(other.own.iter().map(told))
            && one.adds == other.adds
            && self.allowed.iter().all(open)
            && kinds(one) == kinds(other)
    }
}

/// What is taken up and what is left of the limits and sockets before anything is dealt.
struct Room<'a> {
    constraints: &'a [Constraint],
    used: &'a [i64],
    peak: &'a [i64],
    sockets: &'a [u32],
    allowed: &'a [u64],
    alike: &'a [Option<usize>],
}

impl Room<'_> {
    fn sockets(&self, places: u64) -> u32 {
        bits(places).map(|place| self.sockets[place]).sum()
    }
}

/// One round of dealing.
struct Dealer<'a> {
    tree: &'a [Part],
    known: &'a mut [Known],
    habit: &'a mut [Vec<usize>],
    room: Room<'a>,
    steps: u32,
}

/// What was dealt to the parts of one part so far.
struct Table {
    order: Vec<usize>,
    sets: Vec<LoadSet>,
    free: Vec<u32>,
    /// For each own limit of each part: sum, greatest peak, and the sum in millionths.
    used: Vec<(i64, i64, i64)>,
    /// For each load, which of the parts it was dealt to.
    to: Vec<usize>,
}

const NOWHERE: usize = usize::MAX;

impl Dealer<'_> {
    /// Whether the part, whose own limits the set keeps, has places for all of it; `None` when
    /// the steps ended first.
    fn fits(&mut self, at: usize, set: LoadSet) -> Option<bool> {
        if self.tree[at].parts.is_empty() {
            return Some(true);
        }
        if let Some(known) = self.known[at].get(&set) {
            return *known;
        }
        let mut table = self.table(at, &set);
        let found = self.deal(at, &mut table, 0);
        if found == Some(true) {
            for load in &table.order {
                self.habit[at][*load] = table.to[*load];
            }
        }
        if self.known[at].len() < MOST_KNOWN {
            self.known[at].insert(set, found);
        }
        found
    }

    fn table(&self, at: usize, set: &LoadSet) -> Table {
        let part = &self.tree[at];
        let room = &self.room;
        let own = part.parts.iter().flat_map(|part| &self.tree[*part].own);
        let places = part.parts.iter().map(|part| self.tree[*part].places);
        Table {
            order: part
                .order
                .iter()
                .copied()
                .filter(|l| set.contains(*l))
                .collect(),
            sets: vec![LoadSet::default(); part.parts.len()],
            free: places.map(|places| room.sockets(places)).collect(),
            used: own
                .map(|c| {
                    let used = room.used[*c];
                    let full = if used == 0 {
                        0
                    } else {
                        share(used, room.constraints[*c].capacity)
                    };
                    (used, room.peak[*c], full)
                })
                .collect(),
            to: vec![NOWHERE; room.allowed.len()],
        }
    }

    /// Deals the loads from this step on.
    ///
    /// Proof that leaving out twins and going in order among loads alike misses nothing. Of the
    /// ways to deal all of them take the one in which the first load goes to the first part it can,
    /// then the second, and so on: the least by the order of dealing. If of two loads alike the
    /// one dealt first went to a later part than the other, exchanging them would give a lesser one.
    /// If a load went to a place to which nothing was dealt before it, and another place before that
    /// one were the same and as empty, exchanging what is dealt to the two would.
    fn deal(&mut self, at: usize, table: &mut Table, step: usize) -> Option<bool> {
        let Some(&load) = table.order.get(step) else {
            return Some(true);
        };
        self.steps = self.steps.checked_sub(1)?;
        let tree = self.tree;
        let part = &tree[at];
        // The part of the one alike that was dealt before.
        let mut before = self.room.alike[load];
        while let Some(other) = before
            && table.to[other] == NOWHERE
        {
            before = self.room.alike[other];
        }
        let first = before.map_or(0, |other| table.to[other]);
        let habit = self.habit[at][load];
        let mut tried = 0_u64;
        loop {
            // What was right before, then the emptiest.
            let mut next: Option<(i64, usize)> = None;
            for index in first..part.parts.len() {
                if tried >> index & 1 == 1 {
                    continue;
                }
                let Some(full) = self.takes(part, table, index, load) else {
                    tried |= 1 << index;
                    continue;
                };
                let full = if index == habit { -1 } else { full };
                if next.is_none_or(|(least, _)| full < least) {
                    next = Some((full, index));
                }
            }
            let Some((_, index)) = next else {
                return Some(false);
            };
            tried |= 1 << index;
            let undo = put(tree, part, table, index, load);
            let below = part.parts[index];
            let fits = self.fits(below, table.sets[index])? && self.deal(at, table, step + 1)?;
            if fits {
                return Some(true);
            }
            take(tree, part, table, index, load, &undo);
        }
    }

    /// Whether a part can take the load beside what it was dealt, by its own limits, and how full it
    /// then is.
    fn takes(&self, part: &Part, table: &Table, index: usize, load: usize) -> Option<i64> {
        let below = &self.tree[part.parts[index]];
        if table.free[index] == 0 || self.room.allowed[load] & below.places == 0 {
            return None;
        }
        let mut full = 0;
        let start = part.starts[index];
        for add in &below.adds[load] {
            let (sum, peak, share) = table.used[start + add.limit];
            let capacity = self.room.constraints[below.own[add.limit]].capacity;
            if sum + add.sum + peak.max(add.peak) > capacity {
                return None;
            }
            full = full.max(share + add.share);
        }
        // Of parts that are the same, and as empty, the first only.
        let untouched = |index: usize| table.sets[index].is_empty();
        let same =
            |other: usize| untouched(other) && self.as_empty(part.parts[other], part.parts[index]);
        if untouched(index) && (0..index).any(same) {
            return None;
        }
        Some(full)
    }

    /// Whether two parts are the same, and what is plugged in there is, before anything is dealt.
    fn as_empty(&self, one: usize, other: usize) -> bool {
        let (one, other) = (&self.tree[one], &self.tree[other]);
        let room = &self.room;
        one.kind == other.kind
            && room.sockets(one.places) == room.sockets(other.places)
            && (one.own.iter().zip(&other.own))
                .all(|(a, b)| room.used[*a] == room.used[*b] && room.peak[*a] == room.peak[*b])
            && (one.parts.iter().zip(&other.parts)).all(|(one, other)| self.as_empty(*one, *other))
    }

    /// Where the loads of a set that fits are plugged in.
    fn seats(&mut self, at: usize, set: LoadSet, places: &mut [Option<usize>]) -> Option<()> {
        let tree = self.tree;
        let part = &tree[at];
        if part.parts.is_empty() {
            for load in set.iter() {
                places[load] = Some(part.places.trailing_zeros() as usize);
            }
            return Some(());
        }
        let mut table = self.table(at, &set);
        if self.deal(at, &mut table, 0) != Some(true) {
            return None;
        }
        for (index, below) in part.parts.iter().enumerate() {
            self.seats(*below, table.sets[index], places)?;
        }
        Some(())
    }
}

fn put(tree: &[Part], part: &Part, table: &mut Table, index: usize, load: usize) -> Vec<i64> {
    let below = &tree[part.parts[index]];
    table.sets[index].insert(load);
    table.free[index] -= 1;
    table.to[load] = index;
    let mut undo = Vec::new();
    for add in &below.adds[load] {
        let used = &mut table.used[part.starts[index] + add.limit];
        used.0 += add.sum;
        used.2 += add.share;
        if add.peak > 0 {
            undo.push(used.1);
            used.1 = used.1.max(add.peak);
        }
    }
    undo
}

fn take(tree: &[Part], part: &Part, table: &mut Table, index: usize, load: usize, undo: &[i64]) {
    let below = &tree[part.parts[index]];
    table.sets[index].remove(load);
    table.free[index] += 1;
    table.to[load] = NOWHERE;
    let mut undo = undo.iter();
    for add in &below.adds[load] {
        let used = &mut table.used[part.starts[index] + add.limit];
        used.0 -= add.sum;
        used.2 -= add.share;
        if add.peak > 0 {
            used.1 = undo.next().copied().unwrap_or(0);
        }
    }
}

impl Search<'_> {
    /// Whether all that is to be served and has no place finds places; `None` when that is left to
    /// the search.
    pub(super) fn finds_places(&mut self, budget: &mut Budget) -> Option<bool> {
        let set = self.undecided.intersection(&self.committed);
        if set.is_empty() {
            return None;
        }
        self.dealing(budget, |dealer| {
            let root = &dealer.tree[0];
            let before = &dealer.room;
            if usize::try_from(before.sockets(root.places)).is_ok_and(|free| free < set.len()) {
                return Some(false);
            }
            for (limit, c) in root.own.iter().enumerate() {
                let (mut sum, mut peak) = (before.used[*c], before.peak[*c]);
                for load in set.iter() {
                    let adds = root.adds[load].iter().find(|add| add.limit == limit);
                    sum += adds.map_or(0, |add| add.sum);
                    peak = peak.max(adds.map_or(0, |add| add.peak));
                }
                if sum + peak > before.constraints[*c].capacity {
                    return Some(false);
                }
            }
            if set.iter().any(|load| before.allowed[load] == 0) {
                return Some(false);
            }
            dealer.fits(0, set)
        })
    }

    /// The places for all that is left, which is to be served and for which there are places.
    pub(super) fn found_places(&mut self, budget: &mut Budget) -> Option<Vec<Option<usize>>> {
        let set = self.undecided;
        let mut places = self.at.clone();
        self.dealing(budget, |dealer| dealer.seats(0, set, &mut places))?;
        Some(places)
    }

    fn dealing<T>(
        &mut self,
        budget: &mut Budget,
        ask: impl FnOnce(&mut Dealer<'_>) -> Option<T>,
    ) -> Option<T> {
        self.grow_parts();
        let parts = self.parts.get_mut()?.as_mut()?;
        let mut dealer = Dealer {
            tree: &parts.tree,
            known: &mut parts.known,
            habit: &mut parts.habit,
            room: Room {
                constraints: &self.constraints,
                used: &self.used,
                peak: &self.peak,
                sockets: &self.sockets,
                allowed: &self.allowed,
                alike: self.alike,
            },
            steps: parts.allowance,
        };
        let answer = ask(&mut dealer);
        parts.owed += parts.allowance - dealer.steps;
        if dealer.steps == 0 {
            parts.allowance = LATER;
        }
        budget.spend(u64::from(parts.owed / IN_ONE));
        parts.owed %= IN_ONE;
        answer
    }

    fn grow_parts(&self) {
        self.parts
            .get_or_init(|| Parts::new(&self.constraints, self.facts, &self.size, &self.allowed));
    }

    /// What is known of the parts with this place no longer holds. Returns it, to be held again
    /// when what changes is undone.
    pub(super) fn forget(&mut self, place: usize) -> Forgotten {
        self.grow_parts();
        let parts = self.parts.get_mut().and_then(Option::as_mut);
        Forgotten(parts.map_or(Vec::new(), |parts| parts.forget(place)))
    }

    /// Things are again as they were when this was known.
    pub(super) fn recall(&mut self, known: Forgotten) {
        if let Some(Some(parts)) = self.parts.get_mut() {
            for (part, known) in known.0 {
                parts.known[part] = known;
            }
        }
    }
}

/// What was known of some parts before something changed there.
pub(super) struct Forgotten(Vec<(usize, Known)>);

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::super::super::model::{Load, Model};
    use super::super::table::Facts;
    use super::super::{Effort, Tariff};
    use super::*;

    const LOADS: usize = 5;

    /// What becomes of a load in its turn.
    #[derive(Clone, Copy, Debug)]
    enum Turn {
        Out,
        /// Plugged in for good, at the first place from this one on where it fits.
        Settled(usize),
        /// To be served.
        Served,
    }

    /// Two or three branches of one or two receptacles. Limits are few, so that a branch may have
    /// those of a receptacle, and be as empty, without being the same.
    fn tree() -> impl Strategy<Value = Model> {
        let limit = || prop::sample::select(vec![None, Some(3_i64), Some(5)]);
        let receptacle = (limit(), 1_u32..3);
        let branch = prop_oneof![
            (limit(), prop::collection::vec(receptacle, 1..=2)),
            Just((Some(5), vec![(Some(3), 1), (Some(3), 1)])),
            Just((None, vec![(Some(5), 2)])),
        ];
        let load = (
            1_i64..6,
            0_i64..3,
            prop::sample::select(vec![15_u64, 15, 15, 6, 9]),
        );
        (
            prop::collection::vec(branch, 2..=3),
            prop::collection::vec(load, LOADS),
            8_i64..20,
            prop::option::of(1_u8..32),
        )
            .prop_map(|(branches, loads, set, on)| {
                let mut model = Model::default();
                let mut of = Vec::new();
                for (branch, (_, receptacles)) in branches.iter().enumerate() {
                    for (limit, sockets) in receptacles {
                        of.push((branch, *limit));
                        model.sockets.push(*sockets);
                    }
                }
                model.loads = loads
                    .iter()
                    .map(|(running, excess, mask)| Load {
                        running: *running,
                        starting: running + excess,
                        continuous: false,
                        must: true,
                        weight: 1,
                        allowed: (0..of.len()).filter(|p| mask >> (p % 4) & 1 == 1).collect(),
                    })
                    .collect();
                for (branch, (limit, _)) in branches.iter().enumerate() {
                    if let Some(limit) = limit {
                        model.thermal(*limit, 1000, false, |_, place| of[place].0 == branch);
                    }
                }
                for (at, (_, limit)) in of.iter().enumerate() {
                    if let Some(limit) = limit {
                        model.thermal(*limit, 1000, false, |_, place| place == at);
                    }
                }
                model.surge(set, |_, _| true);
                if let Some(on) = on {
                    let half = |bit: u8| -> LoadSet {
                        (0..LOADS).filter(|load| on >> load & 1 == bit).collect()
                    };
                    model.set_moments([half(0), half(1)]);
                }
                model
            })
    }

    fn turns() -> impl Strategy<Value = Vec<Turn>> {
        let turn = prop_oneof![
            1 => Just(Turn::Out),
            3 => (0_usize..6).prop_map(Turn::Settled),
            4 => Just(Turn::Served),
        ];
        prop::collection::vec(turn, LOADS)
    }

    /// Tries every place for every load of the set.
    fn has_places(model: &Model, set: &LoadSet, at: &mut Vec<Option<usize>>) -> bool {
        let Some(load) = set.iter().next() else {
            return model.holds_all_day(at);
        };
        let rest = set.without(load);
        let found = model.loads[load].allowed.iter().any(|place| {
            at[load] = Some(*place);
            has_places(model, &rest, at)
        });
        at[load] = None;
        found
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 3000, failure_persistence: None, ..ProptestConfig::default() })]

        #[test]
        fn a_set_has_places_exactly_if_one_of_all_ways_holds(model in tree(), turns in turns()) {
            let facts = Facts::of(&model);
            let tariff = Tariff::of(&model);
            let cut = [0, 1000];
            let mut search = Search::new(&facts, &tariff, cut, u64::MAX / 8, Effort::Plain);
            let mut budget = Budget::steps(1_000_000);
            for (load, turn) in turns.into_iter().enumerate() {
                match turn {
                    Turn::Served => {
                        search.commit(load);
                    }
                    Turn::Out => search.settle(load, None),
                    Turn::Settled(from) => {
                        let open = search.open()[load];
                        let place = bits(open).find(|place| *place >= from);
                        search.settle(load, place.or_else(|| bits(open).next()));
                    }
                }
                let set = search.undecided.intersection(&search.committed);
                let has = has_places(&model, &set, &mut search.at.clone());
                // Asked before and after something is tried somewhere.
                for place in 0..model.sockets.len() {
                    let found = search.finds_places(&mut budget);
                    prop_assert_eq!(found, (!set.is_empty()).then_some(has), "{:?}", set);
                    let known = search.forget(place);
                    search.sockets[place] -= u32::from(search.sockets[place] > 0);
                    search.finds_places(&mut budget);
                    search.sockets[place] = model.sockets[place]
                        - u32::try_from(search.at.iter().filter(|at| **at == Some(place)).count()).unwrap_or(0);
                    search.recall(known);
                }
            }
            let left: LoadSet = search.undecided.minus(&search.committed).iter().collect();
            prop_assert!(left.is_empty());
            if search.finds_places(&mut budget) == Some(true) {
                let at = search.found_places(&mut budget).expect("places were found");
                prop_assert!(model.holds_all_day(&at));
                prop_assert!(search.undecided.iter().all(|load| at[load].is_some()));
            }
        }
    }
}

//! Random problems harder than a camp is likely to be, from fixed seeds, so that every run gets the same ones.
//!
//! Each is a tree of a generator, outlets, boxes and receptacles. What makes them hard differs: see [`Shape`].

use tallywatt::sharing::model::{Load, Model};
use tallywatt::sharing::set::LoadSet;

/// What makes a problem hard.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// Only its size: loads, weights and limits vary freely.
    Mixed,
    /// A few sorts of load, many of each, all with the same weight.
    Equal,
    /// Sizes within a few percent of each other, and limits between whole multiples of them.
    NearTied,
    /// Weights proportional to the sizes, so that no load is worth more for its size than another.
    Proportional,
    /// Two legs, with loads on one or on both and few that may go to either.
    TwoLegs,
    /// Every load has its own hours, so each limit applies at many moments.
    Hours,
    /// Hardly more sockets than loads, and plugs that fit few of them.
    FewSockets,
    /// Motors that start at several times their running current, and a surge limit at every box.
    Motors,
}

impl Shape {
    /// All shapes.
    pub const ALL: [Self; 8] = [
        Self::Mixed,
        Self::Equal,
        Self::NearTied,
        Self::Proportional,
        Self::TwoLegs,
        Self::Hours,
        Self::FewSockets,
        Self::Motors,
    ];
}

/// Pseudorandom numbers that are the same everywhere: "SplitMix64" by Steele, Lea and Flood (2014).
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut word = self.0;
        word = (word ^ (word >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        word = (word ^ (word >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        word ^ (word >> 31)
    }

    /// Returns a number from `low` to `high`, inclusive.
    fn within(&mut self, low: i64, high: i64) -> i64 {
        let count = high.abs_diff(low) + 1;
        low + i64::try_from(self.next() % count).unwrap_or(0)
    }

    fn percent(&mut self, share: u64) -> bool {
        self.next() % 100 < share
    }

    fn index(&mut self, below: usize) -> usize {
        usize::try_from(self.next() % (below as u64)).unwrap_or(0)
    }

    fn of<T: Copy>(&mut self, list: &[T]) -> T {
        list[self.index(list.len())]
    }
}

/// A node of the tree: its limits, and the places downstream.
struct Node {
    limit: i64,
    permille: i64,
    surge: Option<i64>,
    places: u64,
    /// The depth in the tree, 0 for the generator.
    depth: u8,
}

/// Returns a problem of this shape with this many loads and places.
#[must_use]
pub fn problem(shape: Shape, loads: usize, places: usize, number: u64) -> Model {
    let mut chance = Chance(
        number.wrapping_mul(0x1000_0001).wrapping_add(loads as u64 * 64 + places as u64) ^ ((shape as u64) << 40),
    );
    let list: Vec<Load> = (0..loads).map(|index| load(&mut chance, shape, index, places)).collect();
    let demand: i64 = list.iter().map(|load| load.running).sum();
    let mut sockets = vec![1_u32; places];
    let spare = if shape == Shape::FewSockets { 0 } else { 2 };
    for _ in places..(loads + spare).max(places + 1) {
        sockets[chance.index(places)] += 1;
    }
    let nodes = tree(&mut chance, shape, places, demand);
    let mut model = Model { loads: list, sockets, ..Model::default() };
    let legs: Vec<u8> = (0..places).map(|_| chance.of(&[1_u8, 1, 2, 2, 3])).collect();
    let sides: &[u8] = if shape == Shape::TwoLegs { &[1, 2] } else { &[3] };
    if shape == Shape::TwoLegs {
        // A two-leg load goes where both legs are, other loads where there is one.
        for load in &mut model.loads {
            let both = chance.percent(25);
            load.allowed.retain(|place| (legs[*place] == 3) == both);
        }
    }
    for node in nodes {
        for side in sides {
            let carries = |place: usize| node.places >> place & 1 == 1 && legs[place] & side != 0;
            model.thermal(node.limit, node.permille, node.depth > 0, carries);
            if let Some(surge) = node.surge {
                model.surge(surge, carries);
            }
        }
    }
    if shape == Shape::Hours || (shape == Shape::Mixed && number % 2 == 1) {
        let spans: Vec<(i64, i64)> = (0..loads).map(|_| (chance.within(0, 23), chance.within(1, 9))).collect();
        model.set_moments((0..24).map(|hour| -> LoadSet {
            (0..loads).filter(|load| (hour - spans[*load].0).rem_euclid(24) < spans[*load].1).collect()
        }));
    }
    model.tighten();
    model
}

fn load(chance: &mut Chance, shape: Shape, index: usize, places: usize) -> Load {
    let running = match shape {
        Shape::Equal => [417, 1250, 3340, 5000][index % 4],
        Shape::NearTied => chance.within(4_800, 5_050),
        _ => {
            if chance.percent(45) {
                chance.within(150, 1_800)
            } else {
                chance.within(1_800, 11_000)
            }
        }
    };
    let motor = match shape {
        Shape::Motors => chance.percent(60),
        Shape::Equal => index % 4 == 2,
        _ => chance.percent(35),
    };
    let times = if shape == Shape::Equal { 30 } else { chance.within(11, 50) };
    let starting = if motor { running * times / 10 } else { running };
    let weight = match shape {
        Shape::Equal => 1,
        Shape::Proportional => running.unsigned_abs() / 100 + 1,
        Shape::NearTied => chance.next() % 2 + 1,
        _ => chance.next() % 6 + 1,
    };
    let fits = match shape {
        Shape::FewSockets => 25,
        Shape::Equal => 100,
        _ => chance.of(&[20, 50, 100]),
    };
    let mut allowed: Vec<usize> = (0..places).filter(|_| chance.percent(fits)).collect();
    if allowed.is_empty() {
        allowed.push(index % places);
    }
    Load {
        running,
        starting,
        continuous: if shape == Shape::Equal { index % 4 < 2 } else { chance.percent(45) },
        must: if shape == Shape::Equal { index.is_multiple_of(8) } else { chance.percent(25) },
        weight,
        allowed,
    }
}

/// Builds a generator with two or three outlets, a box on each, and branches of one to three receptacles.
fn tree(chance: &mut Chance, shape: Shape, places: usize, demand: i64) -> Vec<Node> {
    let tight = chance.within(45, 85);
    let limit = |chance: &mut Chance, share: i64| (demand * share / 100 + chance.within(0, 999)).max(6_000);
    let all = (1_u64 << places) - 1;
    let total = limit(chance, tight);
    let mut nodes = vec![Node {
        limit: total,
        permille: 900,
        surge: Some(total * chance.within(110, 140) / 100),
        places: all,
        depth: 0,
    }];
    let outlets = if places > 9 { 3 } else { 2 };
    let mut first = 0;
    for outlet in 0..outlets {
        let last = if outlet + 1 == outlets { places } else { places * (outlet + 1) / outlets };
        let under = (first..last).fold(0, |mask, place| mask | 1_u64 << place);
        let inside = i64::from(under.count_ones() * 100 / all.count_ones());
        let part = chance.of(&[90, 110, 130]);
        let carries = limit(chance, tight * inside * part / 10_000);
        nodes.push(Node {
            limit: carries,
            permille: chance.of(&[800, 1000]),
            surge: (shape == Shape::Motors || chance.percent(25)).then_some(carries * 12 / 10),
            places: under,
            depth: 1,
        });
        let mut at = first;
        while at < last {
            let count = usize::try_from(chance.within(1, 3)).unwrap_or(1).min(last - at);
            let branch = (at..at + count).fold(0, |mask, place| mask | 1_u64 << place);
            let carries = chance.of(&[10_000, 13_000, 15_000, 20_000]);
            nodes.push(Node {
                limit: carries,
                permille: 800,
                surge: (shape == Shape::Motors).then_some(carries * 15 / 10),
                places: branch,
                depth: 2,
            });
            for place in at..at + count {
                nodes.push(Node {
                    limit: chance.of(&[10_000, 13_000, 15_000]).min(carries),
                    permille: chance.of(&[800, 1000]),
                    surge: None,
                    places: 1 << place,
                    depth: 3,
                });
            }
            at += count;
        }
        first = last;
    }
    nodes
}

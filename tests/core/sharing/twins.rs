//! The solvers against exhaustive search where exchanges change little or nothing: receptacles behind breakers of the
//! same size or none of their own, and loads of few sorts.

use proptest::prelude::*;
use tallywatt::sharing::model::{Load, Model};

use super::brute::{cases, is_best_and_pressed, placings, worth};
use super::placed::holds_all_day;

const PLACES: usize = 5;
const LOADS: usize = 5;

/// Running current, starting less running current, whether it is continuous, whether it is a must, its weight, and a
/// bit mask of the places it fits.
type Sort = (i64, i64, bool, bool, u64, u8);

fn sort() -> impl Strategy<Value = Sort> {
    let places = prop_oneof![3 => Just(31_u8), 1 => 1_u8..32];
    (1_i64..6, 0_i64..3, any::<bool>(), any::<bool>(), 1_u64..3, places)
}

/// Builds loads of two sorts. `which` tells those of the first sort, and the pattern of places repeats where there are
/// more.
fn loads((one, other, which): (Sort, Sort, [bool; LOADS]), places: usize) -> Vec<Load> {
    let load = |number: usize| {
        let (running, excess, continuous, must, weight, fits) = if which[number] { one } else { other };
        let allowed: Vec<usize> = (0..places).filter(|p| fits >> (p % PLACES) & 1 == 1).collect();
        Load { running, starting: running + excess, continuous, must, weight, allowed }
    };
    (0..LOADS).map(load).collect()
}

/// Returns a cost of one for every place but home.
fn costs(places: usize, homes: Option<[Option<usize>; LOADS]>) -> Vec<i64> {
    let of = |home: Option<usize>| (0..places).map(move |place| i64::from(home.is_some_and(|home| home != place)));
    homes.map_or(Vec::new(), |homes| homes.into_iter().flat_map(of).collect())
}

/// Generates two feeds under one generator, with receptacles on each: behind breakers of one size, of another, or none.
fn racks() -> impl Strategy<Value = Model> {
    let receptacle = (prop_oneof![3 => Just(0_usize), 2 => Just(1), 2 => Just(2)], 1_u32..3);
    (
        (sort(), sort(), prop::array::uniform5(any::<bool>())),
        (2_i64..9, 2_i64..9, any::<bool>()),
        prop::array::uniform5(receptacle),
        (1_usize..5, 4_i64..14, 4_i64..14, 8_i64..24),
        prop::option::of(1_u8..32),
        prop::option::of(prop::array::uniform5(prop::option::of(0..PLACES))),
    )
        .prop_map(|(sorts, breakers, receptacles, feeds, on, homes)| {
            let mut model = Model {
                sockets: receptacles.iter().map(|(_, sockets)| *sockets).collect(),
                loads: loads(sorts, PLACES),
                costs: costs(PLACES, homes),
                ..Model::default()
            };
            let (small, large, first) = breakers;
            for (place, (breaker, _)) in receptacles.iter().enumerate() {
                match breaker {
                    0 => model.thermal(small, 800, true, |at| at == place),
                    1 => model.thermal(large, 1000, true, |at| at == place),
                    _ => {}
                }
            }
            let (split, left, right, set) = feeds;
            model.thermal(left, 800, true, |at| at < split);
            model.thermal(right, 1000, true, |at| at >= split);
            if first {
                // A second limit on the way, like a cord behind a breaker.
                model.thermal(left + 1, 1000, true, |at| at < split);
            }
            model.thermal(set, 1000, false, |_| true);
            model.surge(set + 2, |_| true);
            if let Some(on) = on {
                model.set_moments([
                    (0..LOADS).filter(|load| on >> load & 1 == 1).collect(),
                    (0..LOADS).filter(|load| on >> load & 1 == 0).collect(),
                ]);
            }
            model
        })
}

/// A branch and its receptacles, each with the number of sockets. `Some` is a breaker, large or small; `None` means no
/// limit of its own.
type Branch = (Option<bool>, Vec<(Option<bool>, u32)>);

/// Generates a tree of two levels, with breakers of two sizes on both. A branch may have the limits of a receptacle, or
/// those of another branch with fewer sockets.
fn trees() -> impl Strategy<Value = Model> {
    let limit = || prop_oneof![Just(None), Just(Some(false)), Just(Some(true))];
    let branch = (limit(), prop::collection::vec((limit(), 1_u32..3), 1..=2));
    let branches = prop::collection::vec(branch, 2..=3);
    let sorts = (sort(), sort(), prop::array::uniform5(any::<bool>()));
    (
        sorts,
        branches,
        (2_i64..7, 5_i64..12, 8_i64..24),
        prop::option::of(1_u8..32),
        prop::option::of(prop::array::uniform5(prop::option::of(0..3_usize))),
    )
        .prop_map(|(sorts, branches, limits, on, homes)| tree(sorts, &branches, limits, on, homes))
}

fn tree(
    sorts: (Sort, Sort, [bool; LOADS]),
    branches: &[Branch],
    (small, large, set): (i64, i64, i64),
    on: Option<u8>,
    homes: Option<[Option<usize>; LOADS]>,
) -> Model {
    let mut model = Model::default();
    // The branch of each place and its own limit.
    let mut of: Vec<(usize, Option<bool>)> = Vec::new();
    for (branch, (_, receptacles)) in branches.iter().enumerate() {
        for (limit, sockets) in receptacles {
            of.push((branch, *limit));
            model.sockets.push(*sockets);
        }
    }
    model.loads = loads(sorts, of.len());
    model.costs = costs(of.len(), homes);
    let size = |is_large: bool| if is_large { large } else { small };
    for (branch, (limit, _)) in branches.iter().enumerate() {
        if let Some(limit) = limit {
            model.thermal(size(*limit), 800, true, |at| of[at].0 == branch);
        }
    }
    for (place, (_, limit)) in of.iter().enumerate() {
        if let Some(limit) = limit {
            model.thermal(size(*limit), 800, true, |at| at == place);
        }
    }
    model.thermal(set, 1000, false, |_| true);
    model.surge(set + 2, |_| true);
    if let Some(on) = on {
        model.set_moments([
            (0..LOADS).filter(|load| on >> load & 1 == 1).collect(),
            (0..LOADS).filter(|load| on >> load & 1 == 0).collect(),
        ]);
    }
    model
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn no_placing_on_trees_is_better(model in trees()) {
        is_best_and_pressed(&model)?;
    }
}

proptest! {
    #![proptest_config(cases(200))]

    #[test]
    fn no_placing_on_racks_is_better(model in racks()) {
        is_best_and_pressed(&model)?;
    }
}

proptest! {
    #![proptest_config(cases(20))]

    /// Dropping rows that another row implies changes nothing.
    #[test]
    fn a_tight_model_says_the_same(model in racks()) {
        let mut tight = model.clone();
        tight.tighten();
        prop_assert!(tight.rows.len() <= model.rows.len());
        for at in placings(&model) {
            prop_assert_eq!(holds_all_day(&tight, &at), holds_all_day(&model, &at));
            prop_assert_eq!(worth(&tight, &at), worth(&model, &at));
        }
    }
}

//! The solvers against exhaustive search, on small random problems of any shape. Rows need not form a tree here, and a
//! row may carry only some of the loads, as a leg does.

use proptest::prelude::*;
use tallywatt::sharing::budget::Budget;
use tallywatt::sharing::model::{Fixed, Load, Model, plugged};
use tallywatt::sharing::place::{Placing, place};
use tallywatt::sharing::set::LoadSet;
use tallywatt::sharing::together::{Alike, conflicts, largest};
use tallywatt::sharing::{start, turns};

use super::placed::{holds_all_day, use_permille, weights};

const MOMENTS: usize = 3;

/// Failures are printed, not stored in a file next to the source.
pub(super) fn cases(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() }
}

pub(super) fn budget() -> Budget {
    Budget::of(1_000_000_000)
}

prop_compose! {
    fn load(places: usize)(
        running in 1_i64..12,
        excess in prop_oneof![Just(0_i64), 0_i64..20],
        continuous: bool,
        must: bool,
        weight in 1_u64..5,
        allowed in proptest::sample::subsequence((0..places).collect::<Vec<_>>(), 0..=places),
    ) -> Load {
        Load { running, starting: running + excess, continuous, must, weight, allowed }
    }
}

/// Generates the cost of each place for each load, or none.
fn costs(count: usize) -> impl Strategy<Value = Vec<i64>> {
    let near = prop::collection::vec(prop::sample::select(vec![0_i64, 0, 1, 1, 3]), count);
    prop_oneof![1 => Just(Vec::new()), 2 => near]
}

fn enough() -> impl Strategy<Value = i64> {
    prop_oneof![Just(0_i64), 0_i64..1000]
}

#[derive(Clone, Debug)]
struct Limit {
    capacity: i64,
    permille: i64,
    balanced: bool,
    surge: bool,
    places: u8,
    loads: u8,
}

prop_compose! {
    fn limit()(
        capacity in 0_i64..40,
        permille in prop_oneof![Just(800_i64), Just(900), Just(1000)],
        balanced: bool,
        surge in proptest::bool::weighted(0.3),
        places: u8,
        loads in prop_oneof![3 => Just(u8::MAX), 1 => any::<u8>()],
    ) -> Limit {
        Limit { capacity, permille, balanced, surge, places, loads }
    }
}

fn model() -> impl Strategy<Value = Model> {
    (1_usize..=3, 1_usize..=5)
        .prop_flat_map(|(places, loads)| {
            (
                prop::collection::vec(load(places), loads),
                prop::collection::vec(1_u32..4, places),
                prop::collection::vec(limit(), 1..6),
                prop::collection::vec(any::<u8>(), 0..=MOMENTS),
                costs(places * loads),
                enough(),
            )
        })
        .prop_map(|(loads, sockets, limits, moments, costs, enough)| {
            let mut model = Model { loads, sockets, costs, enough, ..Model::default() };
            for row in limits {
                let carries = |place: usize| row.places >> place & 1 == 1;
                if row.surge {
                    model.surge(row.capacity, carries);
                } else {
                    model.thermal(row.capacity, row.permille, row.balanced, carries);
                }
                let of = model.rows.last_mut().expect("just added");
                for load in (0..model.loads.len()).filter(|load| row.loads >> load & 1 == 0) {
                    of.sums[load] = 0;
                    if row.surge {
                        of.peaks[load] = 0;
                    }
                }
            }
            let count = model.loads.len();
            model.set_moments(moments.iter().map(|on| (0..count).filter(|load| on >> load & 1 == 1).collect()));
            model
        })
}

/// Generates many small loads that fit everywhere, but barely, so that the same room is reached in many ways.
fn crowded() -> impl Strategy<Value = Model> {
    (2_usize..=3)
        .prop_flat_map(|places| {
            (
                prop::collection::vec((1_i64..5, any::<bool>(), 0_i64..3), 6),
                prop::collection::vec((3_i64..9, any::<bool>()), places),
                8_i64..18,
                costs(6 * places),
                enough(),
            )
        })
        .prop_map(|(loads, limits, root, costs, enough)| {
            let places = limits.len();
            let mut model = Model {
                loads: loads
                    .iter()
                    .map(|(running, continuous, excess)| Load {
                        running: *running,
                        starting: running + excess,
                        continuous: *continuous,
                        must: true,
                        weight: 1,
                        allowed: (0..places).collect(),
                    })
                    .collect(),
                sockets: vec![4; places],
                costs,
                enough,
                ..Model::default()
            };
            for (index, (limit, continuous)) in limits.into_iter().enumerate() {
                let permille = if continuous { 1000 } else { 800 };
                model.thermal(limit, permille, true, |place| place == index);
            }
            model.surge(root, |_| true);
            model
        })
}

/// Generates two sorts of load, three of each, and two or three places. Most exchanges change nothing.
fn strings() -> impl Strategy<Value = Model> {
    let sort = || (1_i64..6, 0_i64..4, any::<bool>(), any::<bool>(), 1_u64..3);
    let limits = prop::collection::vec((2_i64..12, any::<bool>()), 2..=3);
    ([sort(), sort()], limits, 6_i64..24, prop::option::of(1_u8..64), (costs(6), enough())).prop_map(
        |(sorts, limits, root, on, (costs, enough))| {
            let places = limits.len();
            let load = |(running, excess, continuous, must, weight): (i64, i64, bool, bool, u64)| Load {
                running,
                starting: running + excess,
                continuous,
                must,
                weight,
                allowed: (0..places).collect(),
            };
            // All loads of a sort cost the same.
            let costs = match costs.as_slice() {
                [] => Vec::new(),
                of => [&of[..places], &of[3..3 + places]].concat().repeat(3),
            };
            let mut model = Model {
                // The two sorts alternate.
                loads: (0..6).map(|index| load(sorts[index % 2])).collect(),
                sockets: vec![2; places],
                costs,
                enough,
                ..Model::default()
            };
            for (index, (limit, continuous)) in limits.into_iter().enumerate() {
                let permille = if continuous { 1000 } else { 800 };
                model.thermal(limit, permille, true, |place| place == index);
            }
            model.thermal(root, 900, false, |_| true);
            model.surge(root + 4, |_| true);
            if let Some(on) = on {
                model.set_moments([
                    (0..6).filter(|load| on >> load & 1 == 1).collect(),
                    (0..6).filter(|load| on >> load & 1 == 0).collect(),
                ]);
            }
            model
        },
    )
}

/// Returns every placing, legal or not.
pub(super) fn placings(model: &Model) -> Vec<Vec<Option<usize>>> {
    let mut all = vec![Vec::new()];
    for load in &model.loads {
        all = all
            .iter()
            .flat_map(|at| {
                std::iter::once(None).chain(load.allowed.iter().copied().map(Some)).map(|place| {
                    let mut more = at.clone();
                    more.push(place);
                    more
                })
            })
            .collect();
    }
    all
}

pub(super) type Worth = (u64, u64, std::cmp::Reverse<(i64, i64)>);

pub(super) fn worth(model: &Model, at: &[Option<usize>]) -> Worth {
    let (must, wish) = weights(model, at);
    let rest = (model.cost_of(at), use_permille(model, at));
    (must, wish, std::cmp::Reverse(rest))
}

fn best(model: &Model) -> Worth {
    placings(model)
        .iter()
        .filter(|at| holds_all_day(model, at))
        .map(|at| worth(model, at))
        .max()
        .expect("nothing plugged in holds")
}

/// Plugs each load into its first place, ignoring sockets.
fn plugged_in(model: &Model) -> (Fixed, LoadSet) {
    let at: Vec<Option<usize>> = model.loads.iter().map(|load| load.allowed.first().copied()).collect();
    (model.at(&at), plugged(&at))
}

fn subsets(of: &LoadSet) -> Vec<LoadSet> {
    of.iter().fold(vec![LoadSet::default()], |sets, load| {
        sets.iter().copied().chain(sets.iter().map(|set| set.with(load))).collect()
    })
}

fn orders(set: &LoadSet) -> Vec<Vec<usize>> {
    if set.is_empty() {
        return vec![Vec::new()];
    }
    set.iter()
        .flat_map(|first| {
            orders(&set.without(first)).into_iter().map(move |mut rest| {
                rest.insert(0, first);
                rest
            })
        })
        .collect()
}

/// Checks that the placing found is proven and the best, and that no single load could move to an earlier place without
/// making it worse.
pub(super) fn is_best_and_pressed(model: &Model) -> Result<(), TestCaseError> {
    let placing = place(model, &mut budget());
    prop_assert!(placing.proven && holds_all_day(model, &placing.at));
    let worth_of_it = worth(model, &placing.at);
    prop_assert_eq!(worth_of_it, best(model));
    for (load, was) in placing.at.iter().enumerate() {
        for place in &model.loads[load].allowed {
            if was.is_some_and(|was| *place < was) {
                let mut moved = placing.at.clone();
                moved[load] = Some(*place);
                prop_assert!(!holds_all_day(model, &moved) || worth(model, &moved) < worth_of_it);
            }
        }
    }
    Ok(())
}

/// Checks that what a placing claims is true, no matter when the budget ran out.
fn claims_no_more_than_it_knows(model: &Model, placing: &Placing) -> Result<(), TestCaseError> {
    let best = best(model);
    let got = worth(model, &placing.at);
    prop_assert!(holds_all_day(model, &placing.at));
    prop_assert!(got <= best);
    prop_assert!(!placing.proven || got == best);
    prop_assert!((best.0, best.1) <= placing.weights_at_most);
    if placing.weights == (best.0, best.1) && model.cost_of(&placing.at) == best.2.0.0 {
        prop_assert!(placing.use_at_least <= best.2.0.1);
    }
    Ok(())
}

proptest! {
    #![proptest_config(cases(200))]

    #[test]
    fn no_placing_of_strings_is_better(model in strings()) {
        is_best_and_pressed(&model)?;
    }

    #[test]
    fn no_placing_of_a_crowd_is_better(model in crowded()) {
        is_best_and_pressed(&model)?;
    }
}

proptest! {
    #![proptest_config(cases(1500))]

    #[test]
    fn no_placing_is_better(model in model()) {
        is_best_and_pressed(&model)?;
        let placing = place(&model, &mut budget());
        prop_assert_eq!(placing.weights, placing.weights_at_most);
        prop_assert_eq!(placing.use_permille, placing.use_at_least);
    }

    #[test]
    fn a_small_budget_never_claims_more_than_it_knows(model in model(), work in 0_u64..1000) {
        let placing = place(&model, &mut Budget::of(work));
        claims_no_more_than_it_knows(&model, &placing)?;
    }

    #[test]
    fn a_larger_limit_never_makes_it_worse(model in model(), row: prop::sample::Index) {
        let before = place(&model, &mut budget());
        let mut larger = model.clone();
        let row = row.index(larger.rows.len());
        larger.rows[row].capacity += 5_000;
        let after = place(&larger, &mut budget());
        prop_assert!(worth(&larger, &after.at) >= worth(&model, &before.at));
    }

    #[test]
    fn without_a_load_the_others_are_served_no_worse(model in model(), load: prop::sample::Index) {
        let before = place(&model, &mut budget());
        let load = load.index(model.loads.len());
        // A load that may go nowhere is the same as none.
        let mut fewer = model.clone();
        fewer.loads[load].allowed.clear();
        let after = place(&fewer, &mut budget());
        let served = before.at[load].is_some();
        let of = &model.loads[load];
        let own = match (served, of.must) {
            (false, _) => (0, 0),
            (true, true) => (of.weight, 0),
            (true, false) => (0, of.weight),
        };
        prop_assert!(after.weights >= (before.weights.0 - own.0, before.weights.1 - own.1)
            || after.weights.0 > before.weights.0 - own.0);
        prop_assert!(after.weights <= before.weights);
    }

    #[test]
    fn families_are_complete_and_determine_each_other(model in model()) {
        let (fixed, all) = plugged_in(&model);
        let together = largest(&fixed, &all, &Alike::nothing(), &[], usize::MAX, &mut budget());
        let never = conflicts(
            &fixed, &all, &Alike::nothing(), usize::MAX, usize::MAX, &mut budget(),
        );
        prop_assert!(together.complete && never.complete);
        let sets = subsets(&all);
        let mut maximal: Vec<LoadSet> = sets.iter().copied().filter(|set| {
            fixed.holds(set) && all.minus(set).iter().all(|load| !fixed.holds(&set.with(load)))
        }).collect();
        let mut minimal: Vec<LoadSet> = sets.iter().copied().filter(|set| {
            !fixed.holds(set) && set.iter().all(|load| fixed.holds(&set.without(load)))
        }).collect();
        maximal.sort_unstable();
        minimal.sort_unstable();
        prop_assert_eq!(&together.sets, &maximal);
        prop_assert_eq!(&never.sets, &minimal);
        // The minimal sets that meet the complement of every largest set are the conflicts.
        let meets = |set: &LoadSet| together.sets.iter().all(|largest| {
            !set.intersection(&all.minus(largest)).is_empty()
        });
        let mut hitting: Vec<LoadSet> = sets.iter().copied().filter(|set| {
            meets(set) && set.iter().all(|load| !meets(&set.without(load)))
        }).collect();
        hitting.sort_unstable();
        prop_assert_eq!(&never.sets, &hitting);
        // Conversely, the complements of the minimal sets that meet every conflict are the largest sets.
        let meets = |set: &LoadSet| never.sets.iter().all(|conflict| {
            !set.intersection(conflict).is_empty()
        });
        let mut largest: Vec<LoadSet> = sets.iter().copied().filter(|set| {
            meets(set) && set.iter().all(|load| !meets(&set.without(load)))
        }).map(|set| all.minus(&set)).collect();
        largest.sort_unstable();
        prop_assert_eq!(&together.sets, &largest);
    }

    #[test]
    fn no_division_has_fewer_turns(model in model(), always: u8) {
        let (fixed, all) = plugged_in(&model);
        let always: LoadSet = all.iter().filter(|load| always >> load & 3 == 3).collect();
        let got = turns::fewest(&fixed, &all, &always, &mut budget());
        prop_assert_eq!(got.always_hold, fixed.holds(&always));
        if got.always_hold {
            prop_assert!(got.proven);
            let with = |set: &LoadSet| -> LoadSet { set.iter().chain(always.iter()).collect() };
            let need = all.minus(&always).minus(&got.cannot_run);
            for group in &got.groups {
                prop_assert!(fixed.holds(&with(group)));
            }
            // The fewest groups, layer by layer: what one more set can cover.
            let legal: Vec<LoadSet> =
                subsets(&need).into_iter().filter(|set| fixed.holds(&with(set))).collect();
            let mut left = vec![need];
            let mut count = 0;
            while !left.iter().any(LoadSet::is_empty) {
                left = left.iter().flat_map(|l| legal.iter().map(|s| l.minus(s))).collect();
                left.sort_unstable();
                left.dedup();
                count += 1;
            }
            prop_assert_eq!(got.groups.len(), count);
        }
    }

    #[test]
    fn a_start_order_is_found_whenever_there_is_one(model in model(), rules in any::<[u8; 5]>()) {
        let (fixed, all) = plugged_in(&model);
        // Only on lower numbers, so that there is no cycle.
        let after: Vec<LoadSet> = (0..model.loads.len())
            .map(|load| (0..load).filter(|other| rules[load] >> other & 3 == 3).collect())
            .collect();
        let in_order = |order: &Vec<usize>| (0..order.len()).all(|i| {
            order[i + 1..].iter().all(|later| !after[order[i]].contains(*later))
        });
        let surges: Vec<_> = fixed.rows.iter().filter(|row| !row.peaks.is_empty()).collect();
        let peak = |order: &[usize], row: &tallywatt::sharing::model::FixedRow| {
            let mut running = 0;
            let mut greatest = 0;
            for load in order {
                if row.sums[*load] > 0 {
                    greatest = greatest.max(running + row.sums[*load] + row.peak_of(*load));
                    running += row.sums[*load];
                }
            }
            greatest
        };
        let legal: Vec<Vec<usize>> = orders(&all).into_iter().filter(in_order).collect();
        let keeps = |order: &Vec<usize>| surges.iter().all(|row| peak(order, row) <= row.capacity);
        let found = start::order(&fixed, &all, &after);
        prop_assert_eq!(found.is_some(), legal.iter().any(&keeps));
        if found.is_none() {
            // The reason is the first load without which there is an order, if there is one.
            let enough = |load: usize| {
                let mut orders = orders(&all.without(load)).into_iter().filter(in_order);
                orders.any(|order| keeps(&order))
            };
            let reason = start::reason(&fixed, &all, &after, |load| load, &mut budget()).expect("a load");
            let first = all.iter().find(|load| enough(*load)).or_else(|| all.iter().next());
            prop_assert_eq!(Some(reason), first);
        }
        if let Some(order) = &found {
            prop_assert!(in_order(order) && keeps(order));
        }
    }
}

//! The sharing solvers against cases on whose optima two independent solvers agree.
//!
//! `tests/sharing/NAME.json` is a case and `NAME.expected.json` its answer. Cases in the folder named by
//! `TALLYWATT_SHARING_CASES` run too.

mod brute;
mod case;
#[path = "../../../src/mend/tests/cheapest.rs"]
mod cheapest;
mod placed;
mod twins;

use std::path::{Path, PathBuf};

use case::{Case, Expected, ListedFamily};
use cheapest::cheapest;
use sha2::{Digest, Sha256};
use tallywatt::sharing::budget::Budget;
use tallywatt::sharing::model::{Fixed, FixedRow};
use tallywatt::sharing::place::place;
use tallywatt::sharing::set::LoadSet;
use tallywatt::sharing::together::{Alike, Family, conflicts, largest};
use tallywatt::sharing::{start, turns};

/// Enough budget to find everything.
const WORK: u64 = 100_000_000;
/// The most sets of changes to try.
const STEPS: u64 = 2_000_000;

fn folders() -> Vec<PathBuf> {
    let own = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/sharing");
    let more = std::env::var_os("TALLYWATT_SHARING_CASES").map(PathBuf::from);
    [own].into_iter().chain(more).collect()
}

fn cases() -> Vec<(Case, Expected)> {
    let mut cases = Vec::new();
    for folder in folders() {
        let mut names: Vec<PathBuf> = std::fs::read_dir(&folder)
            .unwrap_or_else(|error| panic!("{}: {error}", folder.display()))
            .map(|entry| entry.expect("a folder entry").path())
            .filter(|path| path.to_string_lossy().ends_with(".expected.json"))
            .collect();
        names.sort();
        for path in names {
            let expected = Expected::read(&path);
            let text = path.to_string_lossy().replace(".expected.json", ".json");
            cases.push((Case::read(Path::new(&text)), expected));
        }
    }
    assert!(cases.len() >= 20, "only {} cases", cases.len());
    cases
}

#[test]
fn placing_is_as_good_as_the_oracle_says() {
    for (case, expected) in cases() {
        let model = case.model();
        let mut budget = Budget::of(WORK);
        let placing = place(&model, &mut budget);
        let name = &case.name;
        eprintln!("{name}: {} looks, proven {}", WORK - budget.left(), placing.proven);
        let want = &expected.plan;
        let best = (want.must_weight, want.wish_weight);
        assert!(placed::holds_all_day(&model, &placing.at), "{name} does not hold");
        assert_eq!(placed::weights(&model, &placing.at), placing.weights, "{name}");
        let used = placed::use_permille(&model, &placing.at);
        assert_eq!(used, placing.use_permille, "{name}");
        if placing.proven {
            let got = (placing.weights, placing.use_permille);
            assert_eq!(got, (best, want.use_permille), "{name}");
            continue;
        }
        // Not proven: it must claim no more than it knows, and be near its bound.
        assert!(case.loads.len() > 15, "{name} is not proved");
        assert!(best <= placing.weights_at_most, "{name}: a wrong bound");
        assert_eq!(placing.weights, best, "{name}");
        assert!(placing.use_at_least <= want.use_permille, "{name}: a wrong bound");
        let gap = placing.use_permille - placing.use_at_least;
        assert!(gap * 100 <= placing.use_permille, "{name} is not near its bound");
    }
}

/// Returns the minimal sets that meet every given set: each set so far that misses the next one is extended by each of
/// its loads (Berge's multiplication).
fn smallest_that_meet(sets: &[LoadSet]) -> Vec<LoadSet> {
    let mut found = vec![LoadSet::default()];
    for set in sets {
        let (meet, miss): (Vec<LoadSet>, Vec<LoadSet>) =
            found.iter().partition(|other| !other.intersection(set).is_empty());
        let mut next = meet.clone();
        for other in miss {
            for load in set.iter() {
                let more = other.with(load);
                // Skip sets that contain another one.
                if !meet.iter().any(|smaller| smaller.is_subset(&more)) {
                    next.push(more);
                }
            }
        }
        found = next;
    }
    found.sort_unstable();
    found
}

/// Certifies without a solver that neither family lacks a set, since each determines the other.
#[test]
fn families_of_sets_certify_each_other() {
    let mut certified = 0;
    for (case, _) in cases() {
        if case.loads.len() > 15 {
            continue;
        }
        let fixed = case.model().at(&case.plugged());
        let all = LoadSet::below(case.loads.len());
        let nothing = Alike::nothing();
        let most = usize::MAX;
        let together = largest(&fixed, &all, &nothing, &[], most, &mut Budget::of(WORK));
        let never = conflicts(&fixed, &all, &nothing, most, most, &mut Budget::of(WORK));
        let without: Vec<LoadSet> = together.sets.iter().map(|set| all.minus(set)).collect();
        assert_eq!(smallest_that_meet(&without), never.sets, "{}", case.name);
        let meet = smallest_that_meet(&never.sets);
        let mut largest: Vec<LoadSet> = meet.iter().map(|set| all.minus(set)).collect();
        largest.sort_unstable();
        assert_eq!(largest, together.sets, "{}", case.name);
        certified += 1;
    }
    assert!(certified >= 15, "only {certified} cases");
}

fn check_family(name: &str, case: &Case, got: &Family, want: &ListedFamily) {
    let mut lists: Vec<Vec<&str>> = got.sets.iter().map(|set| case.ids(set)).collect();
    lists.sort();
    assert!(got.complete, "{name} is not complete");
    assert_eq!(lists.len(), want.count, "{name}");
    if let Some(sets) = &want.sets {
        assert_eq!(&lists, sets, "{name}");
    }
    let text: String = lists.iter().map(|ids| ids.join(",") + "\n").collect();
    let digest: [u8; 32] = Sha256::digest(text.as_bytes()).into();
    let sum = digest.iter().fold(String::new(), |sum, byte| sum + &format!("{byte:02x}"));
    assert_eq!(sum, want.sha256, "{name}");
}

#[test]
fn families_of_sets_are_those_of_the_oracle() {
    for (case, expected) in cases() {
        let fixed = case.model().at(&case.plugged());
        let all = LoadSet::below(case.loads.len());
        if let Some(want) = &expected.together_maximal {
            let mut budget = Budget::of(WORK);
            let got = largest(&fixed, &all, &Alike::nothing(), &[], usize::MAX, &mut budget);
            eprintln!("{} largest: {} looks", case.name, WORK - budget.left());
            check_family(&format!("{} largest", case.name), &case, &got, want);
        }
        for (want, size) in [(&expected.never_together_minimal, usize::MAX), (&expected.never_together_upto3, 3)] {
            if let Some(want) = want {
                let mut budget = Budget::of(WORK);
                let got = conflicts(&fixed, &all, &Alike::nothing(), size, usize::MAX, &mut budget);
                eprintln!("{} conflicts: {} looks", case.name, WORK - budget.left());
                check_family(&format!("{} conflicts", case.name), &case, &got, want);
            }
        }
    }
}

#[test]
fn start_orders_are_those_of_the_oracle() {
    for (case, expected) in cases() {
        let name = &case.name;
        let want = &expected.start_order;
        let fixed = case.model().at(&case.plugged());
        let set = case.start_set();
        let after = case.after();
        let root =
            fixed.rows.iter().find(|row| !row.peaks.is_empty()).expect("the root, which comes first, has a surge row");
        // There is an order within the least peak, and none below it.
        let within = |capacity: i64| {
            let rows = vec![FixedRow { capacity, ..root.clone() }];
            start::order(&Fixed { loads: fixed.loads, rows }, &set, &after)
        };
        assert_eq!(within(want.least_peak_ma - 1), None, "{name}");
        let order = within(want.least_peak_ma).expect("an order");
        // Compute the peak again, forward.
        let mut running = 0;
        let mut greatest = 0;
        let mut on = LoadSet::default();
        for load in &order {
            for before in after[*load].intersection(&set).iter() {
                assert!(on.contains(before), "{name}: order against `after`");
            }
            greatest = greatest.max(running + root.sums[*load] + root.peak_of(*load));
            running += root.sums[*load];
            on.insert(*load);
        }
        assert_eq!(on, set, "{name}");
        assert_eq!(greatest, want.least_peak_ma, "{name}");
        assert_eq!(root.sum(&set) + root.peak(&set), want.worst_peak_ma, "{name}");
        assert_eq!(greatest <= root.capacity, want.root_limit_holds, "{name}");
        let found = start::order(&fixed, &set, &after);
        assert_eq!(found.is_some(), want.order_exists_all_nodes, "{name}");
    }
}

#[test]
fn turns_are_as_few_as_the_oracle_says() {
    for (case, expected) in cases() {
        let name = &case.name;
        let want = &expected.turns;
        let fixed = case.model().at(&case.plugged());
        let all = LoadSet::below(case.loads.len());
        let always = case.always();
        let mut budget = Budget::of(WORK);
        let got = turns::fewest(&fixed, &all, &always, &mut budget);
        eprintln!("{name} turns: {} looks", WORK - budget.left());
        assert_eq!(got.always_hold, want.always_hold, "{name}");
        if !got.always_hold {
            continue;
        }
        assert_eq!(case.ids(&got.cannot_run), want.cannot_run, "{name}");
        assert_eq!(Some(got.groups.len()), want.fewest_turns, "{name}");
        assert!(got.proven, "{name}");
        let mut covered = LoadSet::default();
        for group in &got.groups {
            let running: LoadSet = group.iter().chain(always.iter()).collect();
            assert!(fixed.holds(&running), "{name}");
            covered = covered.iter().chain(group.iter()).collect();
        }
        assert_eq!(covered, all.minus(&always).minus(&got.cannot_run), "{name}");

        let mut budget = Budget::of(WORK);
        let hours = turns::in_slots(&fixed, &all, &always, &case.windows(), &mut budget);
        eprintln!("{name} windows: {} looks", WORK - budget.left());
        let fewest = hours.ok().map(|turns| {
            assert!(turns.proven, "{name}");
            turns.groups.len()
        });
        assert_eq!(fewest, want.fewest_hours_in_windows, "{name} windows");
    }
}

#[test]
fn repairs_cost_as_little_as_the_oracle_says() {
    for (case, expected) in cases() {
        let costs: Vec<u64> = case.changes.iter().map(|change| change.cost).collect();
        let got =
            cheapest(&costs, |changes| case.may_combine(changes), |changes| case.after_changes(changes).holds(), STEPS);
        assert!(got.proven, "{}", case.name);
        if let Some(changes) = &got.changes {
            let mended = case.after_changes(changes);
            assert!(placed::holds(&mended.model(), &mended.plugged()), "{}", case.name);
        }
        assert_eq!(got.changes.map(|_| got.cost), expected.repair.least_cost, "{}", case.name);
    }
}

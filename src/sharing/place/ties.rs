//! Of placings that are worth the same, the one that is given.
//!
//! The rule: fewest cord moves, that is loads plugged in anywhere but where they are now; of
//! those the one whose movers come first; and of those the first placing, in the order of loads,
//! each at its first receptacle, and nowhere after all receptacles. So equal plans give equal
//! cards, and a small change to a plan changes little.

use super::super::budget::Budget;
use super::super::model::{Model, Places};
use super::first::Draft;
use super::search::{Answer, Search};
use super::table::Facts;
use super::{Effort, Tariff};

/// Steps for each question of the form "might it be there as well?".
const QUESTION: u64 = 300;

/// The placing that the rule picks among those of this loss and no more use, and whether the
/// budget was enough to be sure. `at` is one of them.
pub(super) fn first(
    model: &Model,
    tariff: &Tariff,
    at: &Places,
    (loss, used): (u64, i64),
    budget: &mut Budget,
) -> (Vec<Option<usize>>, bool) {
    let mut ties = Ties {
        tariff,
        loss,
        used,
        at: at.to_vec(),
        sure: true,
    };
    if let Some(still) = ties.fewest_moves(model, budget) {
        ties.first_places(&still, budget);
    } else {
        ties.first_places(model, budget);
    }
    (ties.at, ties.sure)
}

/// How many loads are plugged in elsewhere than where they are now.
pub(super) fn moves(model: &Model, at: &Places) -> usize {
    let loads = model.loads.iter().zip(at);
    loads
        .filter(|(load, place)| load.home.is_some() && place.is_some() && **place != load.home)
        .count()
}

struct Ties<'a> {
    tariff: &'a Tariff,
    loss: u64,
    used: i64,
    at: Vec<Option<usize>>,
    sure: bool,
}

impl Ties<'_> {
    /// The model with every load but the movers held where it is now; `None` when no load is
    /// anywhere yet.
    ///
    /// Sets of movers are tried by their number and then in order, so the first that leaves the
    /// worth as it is has the fewest.
    fn fewest_moves(&mut self, model: &Model, budget: &mut Budget) -> Option<Model> {
        let homed: Vec<usize> = (0..model.loads.len())
            .filter(|load| model.loads[*load].home.is_some())
            .collect();
        if homed.is_empty() {
            return None;
        }
        let hold = |movers: &[usize]| {
            let mut still = model.clone();
            for &load in homed.iter().filter(|load| !movers.contains(load)) {
                let home = model.loads[load].home;
                still.loads[load]
                    .allowed
                    .retain(|place| Some(*place) == home);
            }
            still
        };
        for count in 0..=moves(model, &self.at) {
            let mut movers: Vec<usize> = (0..count).collect();
            loop {
                let chosen: Vec<usize> = movers.iter().map(|index| homed[*index]).collect();
                let still = hold(&chosen);
                let facts = Facts::of(&still);
                let mut search =
                    Search::new(&facts, self.tariff, self.used, self.loss + 1, Effort::Plain);
                let mut slice = budget.part(QUESTION);
                let settled = search.run(&mut slice, true);
                budget.put_back(&slice);
                self.sure &= settled;
                if let Some(at) = search.best.take() {
                    self.at = at;
                    return Some(still);
                }
                if budget.spent() || !next_choice(&mut movers, homed.len()) {
                    break;
                }
            }
        }
        // The budget ended. The movers are those there are.
        let movers: Vec<usize> = homed
            .iter()
            .copied()
            .filter(|load| self.at[*load].is_some() && self.at[*load] != model.loads[*load].home)
            .collect();
        Some(hold(&movers))
    }

    /// Load by load, each at the first place where the rest still finds places as good.
    ///
    /// A place is not asked about when a twin of it was: if this load could be there with the
    /// others somewhere, it could be at the twin, by exchanging the two. Of it and those alike the
    /// one with the least place would then be before this one's, and that place, which is this
    /// load's as well, was found impossible.
    fn first_places(&mut self, model: &Model, budget: &mut Budget) {
        let facts = Facts::of(model);
        let mut search = Search::new(&facts, self.tariff, self.used, self.loss + 1, Effort::Plain);
        let mut draft = Draft::new(model, self.tariff);
        draft.set(&self.at);
        for load in 0..self.at.len() {
            let open = search.open();
            let mut places = model.loads[load].allowed.clone();
            places.sort_unstable();
            let mut refused: Vec<usize> = Vec::new();
            for place in places {
                if self.at[load].is_some_and(|now| now <= place) {
                    break;
                }
                if search.twin_of_any(place, &refused) {
                    continue;
                }
                if draft.goes_to(load, place, self.used) {
                    self.at[load] = Some(place);
                    break;
                }
                let mut slice = budget.part(QUESTION);
                let found = search.with(load, place, &open, self.loss + 1, &mut slice);
                budget.put_back(&slice);
                match found {
                    Answer::Yes(at) => {
                        draft.set(&at);
                        self.at = at;
                    }
                    Answer::No => refused.push(place),
                    Answer::Open => {
                        self.sure = false;
                    }
                }
            }
            search.settle(load, self.at[load]);
        }
    }
}

/// The next choice of as many numbers below `end`, in order. `false` after the last.
fn next_choice(choice: &mut [usize], end: usize) -> bool {
    let count = choice.len();
    for index in (0..count).rev() {
        if choice[index] < end - (count - index) {
            choice[index] += 1;
            for later in index + 1..count {
                choice[later] = choice[later - 1] + 1;
            }
            return true;
        }
    }
    false
}

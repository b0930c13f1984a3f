//! Of placings that are worth the same, the one that is given.
//!
//! The rule: the first placing, in the order of loads, each at its first receptacle, and nowhere
//! after all receptacles. So equal plans give equal cards, and a small change to a plan changes
//! little.

use super::super::budget::Budget;
use super::super::model::{Model, Places};
use super::first::Draft;
use super::search::{Answer, Search};
use super::table::Facts;
use super::{Effort, Tariff, Worth};

/// Steps for each question of the form "might it be there as well?".
const QUESTION: u64 = 300;

/// The placing that the rule picks among those of this loss that are worth no less, and whether the
/// budget was enough to be sure: load by load, each at the first place where the rest still finds
/// places as good. `at` is one of them.
///
/// A place is not asked about when a twin of it was: if this load could be there with the others
/// somewhere, it could be at the twin, by exchanging the two. Of it and those alike the one with the
/// least place would then be before this one's, and that place, which is this load's as well, was
/// found impossible.
pub(super) fn first(
    model: &Model,
    tariff: &Tariff,
    at: &Places,
    (loss, worth): (u64, Worth),
    budget: &mut Budget,
) -> (Vec<Option<usize>>, bool) {
    let facts = Facts::of(model);
    let mut search = Search::new(&facts, tariff, worth, loss + 1, Effort::Plain);
    let mut draft = Draft::new(model, tariff);
    draft.set(at);
    let mut at = at.to_vec();
    let mut sure = true;
    for load in 0..at.len() {
        let open = search.open();
        let mut places = model.loads[load].allowed.clone();
        places.sort_unstable();
        let mut refused: Vec<usize> = Vec::new();
        for place in places {
            if at[load].is_some_and(|now| now <= place) {
                break;
            }
            if search.twin_of_any(place, &refused) {
                continue;
            }
            if draft.goes_to(load, place, worth) {
                at[load] = Some(place);
                break;
            }
            let mut slice = budget.part(QUESTION);
            let found = search.with(load, place, &open, loss + 1, &mut slice);
            budget.put_back(&slice);
            match found {
                Answer::Yes(found) => {
                    draft.set(&found);
                    at = found;
                }
                Answer::No => refused.push(place),
                Answer::Open => sure = false,
            }
        }
        search.settle(load, at[load]);
    }
    (at, sure)
}

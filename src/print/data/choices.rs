//! Names for the sets of loads that may run together, the same on card and worksheet: a number, and the times of day at
//! which the plan needs the set.

use super::Context;
use crate::plan::Id;

/// The most sets that the card shows.
pub(super) const SHOWN: usize = 8;

/// One set of loads that may run together.
pub(super) struct Choice<'a> {
    pub number: usize,
    pub set: &'a [Id],
    /// When the plan needs it. Empty if the plan does not say.
    pub times: String,
}

fn all<'a>(context: &Context<'a>) -> impl Iterator<Item = Choice<'a>> {
    let sets = context.report.figures.sharing.together.iter();
    let numbered = (1..).zip(sets.zip(context.report.times(context.plan)));
    let said = |key: &&str| context.say(&format!("when-{key}"), &[]);
    numbered.map(move |(number, (set, times))| Choice {
        number,
        set,
        times: times.iter().map(said).collect::<Vec<_>>().join(", "),
    })
}

/// Returns the sets that the card shows, by number. The first is always shown, since meter readings are given for it.
/// Then come sets with loads not shown yet, until each load that may run is in one. If the plan says when loads run,
/// the rest are sets needed at some time, and otherwise the next ones.
pub(super) fn shown<'a>(context: &Context<'a>) -> Vec<Choice<'a>> {
    let mut left: Vec<Choice<'_>> = all(context).collect();
    let timed = left.iter().any(|it| !it.times.is_empty());
    let mut shown: Vec<Choice<'_>> = left.drain(..left.len().min(1)).collect();
    while shown.len() < SHOWN {
        let is_new = |id: &&Id| shown.iter().all(|it| !it.set.contains(id));
        let adds = |it: &Choice<'_>| it.set.iter().filter(is_new).count();
        // Of the sets that add a load, prefer one needed at some time, then the one that adds most, then the first.
        let most = left.iter().enumerate().filter(|(_, it)| adds(it) > 0);
        let most = most.max_by_key(|(at, it)| (!it.times.is_empty(), adds(it), std::cmp::Reverse(*at)));
        let Some(at) = most.map(|(at, _)| at) else {
            break;
        };
        shown.push(left.remove(at));
    }
    let wanted = left.into_iter().filter(|it| !timed || !it.times.is_empty());
    let room = SHOWN.saturating_sub(shown.len());
    shown.extend(wanted.take(room));
    shown.sort_by_key(|it| it.number);
    shown
}

/// Returns number and times of each set that has times.
pub(super) fn titles(context: &Context<'_>) -> Vec<String> {
    let wanted = all(context).filter(|it| !it.times.is_empty());
    let title = |it: Choice<'_>| {
        let args = [("number", &*it.number.to_string()), ("times", &*it.times)];
        context.say("choice", &args)
    };
    wanted.map(title).collect()
}

//! What the sets that may run together are called, on card and worksheet alike: by number, and by the times of day
//! for which the plan needs them.

use super::Context;
use crate::plan::Id;

/// Sets and conflicts that the card shows at most; the worksheet has them all.
pub(super) const SHOWN: usize = 8;

/// One set of those that may run together.
pub(super) struct Choice<'a> {
    pub number: usize,
    pub set: &'a [Id],
    /// When the plan needs it.
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

/// Those that the card shows: the first, by what it leaves a meter is read; whatever else it takes for each thing that
/// may run to be in one of them; and, where the plan says when things run, those that it needs then, else the next.
pub(super) fn shown<'a>(context: &Context<'a>) -> Vec<Choice<'a>> {
    let mut left: Vec<Choice<'_>> = all(context).collect();
    let timed = left.iter().any(|it| !it.times.is_empty());
    let mut shown: Vec<Choice<'_>> = left.drain(..left.len().min(1)).collect();
    while shown.len() < SHOWN {
        let is_new = |id: &&Id| shown.iter().all(|it| !it.set.contains(id));
        let adds = |it: &Choice<'_>| it.set.iter().filter(is_new).count();
        // Of those that add something, one that is needed at some hour; of equals the first.
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

/// The numbers of the sets that have times, each with them.
pub(super) fn titles(context: &Context<'_>) -> Vec<String> {
    let wanted = all(context).filter(|it| !it.times.is_empty());
    let title = |it: Choice<'_>| {
        let args = [("number", &*it.number.to_string()), ("times", &*it.times)];
        context.say("choice", &args)
    };
    wanted.map(title).collect()
}

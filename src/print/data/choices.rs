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

/// Those that the card shows. Where the plan says when things run, what it never needs is left to the worksheet; but a
/// meter reads what the first leaves.
pub(super) fn shown<'a>(context: &Context<'a>) -> Vec<Choice<'a>> {
    let mut choices: Vec<Choice<'_>> = all(context).collect();
    if choices.iter().any(|it| !it.times.is_empty()) {
        choices.retain(|it| it.number == 1 || !it.times.is_empty());
    }
    choices.truncate(SHOWN);
    choices
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

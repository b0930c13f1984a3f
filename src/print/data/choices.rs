//! What the sets that may run together are called, on card and worksheet alike: by number, and by the times of day
//! for which the plan needs them.

use super::Context;
use crate::plan::{Id, Span};

/// The parts of a day, by the minute. Our own choice, no source.
const TIMES: [(&str, Span); 5] = [
    ("breakfast", Span { from: 300, to: 600 }),
    ("midday", Span { from: 600, to: 840 }),
    (
        "afternoon",
        Span {
            from: 840,
            to: 1020,
        },
    ),
    (
        "evening",
        Span {
            from: 1020,
            to: 1320,
        },
    ),
    (
        "night",
        Span {
            from: 1320,
            to: 300,
        },
    ),
];

/// For each set of [`crate::report::Sharing::together`] the times of day for which it is the first that holds all
/// that the plan wants on. What has no hours is asked for at none.
pub(super) fn times(context: &Context<'_>) -> Vec<Vec<String>> {
    let sharing = &context.report.figures.sharing;
    let hours = |load: &Id| {
        let of = context.load(load).map(|facts| &facts.of);
        let load = context.plan.loads.iter().find(|it| Some(&it.id) == of);
        load.map_or(&[][..], |load| &load.hours)
    };
    let mut times = vec![Vec::new(); sharing.together.len()];
    for (name, time) in TIMES {
        for minute in (0..Span::DAY).filter(|minute| time.contains(*minute)) {
            let on = |load: &&Id| hours(load).iter().any(|span| span.contains(minute));
            let placed = sharing.placed.iter().map(|placed| &placed.load);
            let wanted: Vec<&Id> = placed.filter(on).collect();
            let holds = |set: &Vec<Id>| wanted.iter().all(|load| set.contains(load));
            let Some(first) = sharing.together.iter().position(holds) else {
                continue;
            };
            let name = context.say(&format!("when-{name}"), &[]);
            if !wanted.is_empty() && !times[first].contains(&name) {
                times[first].push(name);
            }
        }
    }
    times
}

/// The numbers of the sets that have times, each with them.
pub(super) fn titles(context: &Context<'_>) -> Vec<String> {
    let numbered = (1..).zip(times(context));
    let wanted = numbered.filter(|(_, times)| !times.is_empty());
    let title = |(number, times): (usize, Vec<String>)| {
        let args = [
            ("number", &*number.to_string()),
            ("times", &*times.join(", ")),
        ];
        context.say("choice", &args)
    };
    wanted.map(title).collect()
}

//! What to do when something goes wrong: the same on the card and on the cautions.

use serde::Serialize;

use super::Context;
use crate::tables::emergency::EMERGENCIES;

/// One emergency in words.
#[derive(Debug, Serialize)]
pub(super) struct Emergency {
    title: String,
    steps: Vec<String>,
}

/// All that there are.
pub(super) fn all(context: &Context<'_>) -> Vec<Emergency> {
    let say = |key: &str| context.say(&format!("emergency-{key}"), &[]);
    EMERGENCIES
        .iter()
        .map(|emergency| {
            let mut steps: Vec<String> = emergency.steps.iter().map(|step| say(step)).collect();
            match emergency.battery_after {
                Some(0) => steps = life_first(context).into_iter().chain(steps).collect(),
                // On the line of the step before it: cards have little room.
                Some(after) => {
                    let then = to_battery(context, "stopped-life");
                    steps[after - 1].extend(then.map(|then| format!(" {then}")));
                }
                None => {}
            }
            Emergency { title: say(emergency.name), steps }
        })
        .collect()
}

/// What comes before the engine stops: of what somebody's health depends on.
pub(super) fn life_first(context: &Context<'_>) -> Option<String> {
    to_battery(context, "stop-life")
}

/// That what somebody's health depends on goes on its battery; none where no such thing may be plugged in.
fn to_battery(context: &Context<'_>, key: &str) -> Option<String> {
    let life = context.lives(true);
    let names = context.words.set_quoted(context.report, &life);
    (!life.is_empty()).then(|| context.say(key, &[("life", &names)]))
}

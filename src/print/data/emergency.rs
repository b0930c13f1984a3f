//! What to do in an emergency, the same on card and cautions.

use serde::Serialize;

use super::Context;
use crate::tables::emergency::EMERGENCIES;

/// One emergency in words.
#[derive(Debug, Serialize)]
pub(super) struct Emergency {
    title: String,
    steps: Vec<String>,
}

/// Returns all emergencies in order.
pub(super) fn all(context: &Context<'_>) -> Vec<Emergency> {
    let say = |key: &str| context.say(&format!("emergency-{key}"), &[]);
    EMERGENCIES
        .iter()
        .map(|emergency| {
            let mut steps: Vec<String> = emergency.steps.iter().map(|step| say(step)).collect();
            match emergency.battery_after {
                Some(0) => steps = life_first(context).into_iter().chain(steps).collect(),
                // On the line of the step before it, since cards have little room.
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

/// Returns the step before the engine is stopped: a device that someone's health depends on goes on its battery.
pub(super) fn life_first(context: &Context<'_>) -> Option<String> {
    to_battery(context, "stop-life")
}

/// Says that devices someone's health depends on go on their batteries. `None` if no such device may be plugged in.
fn to_battery(context: &Context<'_>, key: &str) -> Option<String> {
    let life = context.lives(true);
    let names = context.words.set_quoted(context.report, &life);
    (!life.is_empty()).then(|| context.say(key, &[("life", &names)]))
}

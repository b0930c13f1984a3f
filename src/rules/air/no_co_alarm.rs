#![doc = include_str!("../../../i18n/en/explain/AIR002.md")]

use crate::plan::Answer;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "AIR002",
    name: "no-co-alarm",
    area: "air",
    worst: Signal::Warning,
    sources: &[cite::CPSC_LEVELS, cite::UL_2034, cite::PRACTICE],
    fixes: &["alarm", "look"],
    check,
    #[cfg(test)]
    fires: &[
        &[("co_alarm = true", "co_alarm = false")],
        &[("co_alarm = true", "co_alarm = \"unknown\"")],
        &[("co_alarm = true", "")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // Nobody sleeps here.
        &[("co_alarm = true", ""), ("stands = \"roof\"", "stands = \"roof\"\npeople_sleep = false")],
    ],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    if !facts.plan.site.sleeps() {
        return;
    }
    let fix = match facts.plan.site.co_alarm {
        Answer::Known(true) => return,
        Answer::Known(false) => "alarm",
        Answer::Unknown | Answer::Missing => "look",
    };
    found.add(Signal::Warning, vec![], values([]), fix, values([]));
}

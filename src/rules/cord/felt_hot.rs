#![doc = include_str!("../../../i18n/en/explain/CORD009.md")]

use crate::plan::Id;
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "CORD009",
    name: "felt-hot",
    area: "cord",
    worst: Signal::Danger,
    sources: &[cite::CPSC_CORDS],
    fixes: &["cord", "box", "outlet", "load"],
    check,
    #[cfg(test)]
    fires: &[
        &[("coiled = false # long", "coiled = false\nhot = true")],
        &[("bond = false", "bond = false\nhot = true")],
        &[("gfci = false # twist", "gfci = false\nhot = true")],
        &[("breaker = \"15 A\" # left", "breaker = \"15 A\"\nhot = true")],
        &[("on = \"left\" # kettle", "on = \"left\"\nhot = true")],
        // In the bin.
        &[("coiled = false # long", "coiled = false\nhot = true"), ("from = \"twist\"\n", "")],
    ],
    #[cfg(test)]
    spares: &[&[], &[("coiled = false # long", "coiled = false\nhot = false")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let plan = facts.plan;
    let mut tell = |signal, id: &Id, fix| {
        found.add(signal, vec![id.clone()], values([]), fix, values([]));
    };
    for id in plan.felt_hot() {
        let (used, fix) = match plan.gear_of(id) {
            Some(gear) => (gear.from.is_some(), if plan.cord(id).is_some() { "cord" } else { "box" }),
            None => (plan.takes(id), "outlet"),
        };
        // If it is not in use, its label is enough to keep people from plugging in.
        tell(if used { Signal::Danger } else { Signal::Caution }, id, fix);
    }
    for load in plan.loads.iter().filter(|load| load.hot == Some(true)) {
        tell(Signal::Danger, &load.id, "load");
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Signal;
    use crate::rules::testing::report;

    /// A hot outlet in use is a danger, because what is in it has to come out. One that nobody uses is only a caution.
    #[test]
    fn an_outlet_that_nobody_uses_is_no_danger() {
        let signal = |edits: &[(&str, &str)]| {
            let report = report(edits);
            let hot = report.findings.iter().find(|it| it.code == "CORD009");
            hot.map(|it| it.signal)
        };
        let twist = ("gfci = false # twist", "gfci = false\nhot = true");
        assert_eq!(signal(&[twist]), Some(Signal::Danger));
        let front = ("gfci = true # front", "gfci = true\nhot = true");
        assert_eq!(signal(&[front]), Some(Signal::Caution));
        let kettle = ("on = \"left\" # kettle", "on = \"front\"");
        assert_eq!(signal(&[front, kettle]), Some(Signal::Danger));
        // The same for a cord or a box that is plugged into nothing.
        let cord = ("coiled = false # long", "coiled = false\nhot = true");
        let holder = ("bond = false", "bond = false\nhot = true");
        let (no_cord, no_box) = (("from = \"twist\"\nplug", "plug"), ("from = \"long\"\ninlet", "inlet"));
        assert_eq!(signal(&[cord]), Some(Signal::Danger));
        assert_eq!(signal(&[cord, no_cord]), Some(Signal::Caution));
        assert_eq!(signal(&[holder, no_box]), Some(Signal::Caution));
        assert_eq!(signal(&[no_cord, no_box]), None);
    }
}

#![doc = include_str!("../../../i18n/en/explain/CORD009.md")]

use crate::plan::{Answer, Id, Load};
use crate::rules::prelude::*;

pub(super) const RULE: Rule = Rule {
    code: "CORD009",
    name: "felt-hot",
    area: "cord",
    worst: Signal::Danger,
    sources: &[cite::CPSC_CORDS],
    fixes: &["cord", "box", "outlet", "outlet-in-use", "load"],
    check,
    #[cfg(test)]
    fires: &[
        &[("coiled = false # long", "coiled = false\nhot = true")],
        &[("bond = false", "bond = false\nhot = true")],
        &[("gfci = false # twist", "gfci = false\nhot = true")],
        &[("breaker = \"15 A\" # left", "breaker = \"15 A\"\nhot = true")],
        &[("on = \"left\" # kettle", "on = \"left\"\nhot = true")],
        // With nothing in it.
        &[("gfci = true # front", "gfci = true\nhot = true")],
        // In the bin.
        &[("coiled = false # long", "coiled = false\nhot = true"), ("from = \"twist\"\n", "")],
    ],
    #[cfg(test)]
    spares: &[&[], &[("coiled = false # long", "coiled = false\nhot = false")]],
};

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let plan = facts.plan;
    for id in plan.felt_hot() {
        // If it is not in use, its label is enough to keep people from plugging in.
        let signal = |used| if used { Signal::Danger } else { Signal::Caution };
        if let Some(gear) = plan.gear_of(id) {
            let fix = if plan.cord(id).is_some() { "cord" } else { "box" };
            found.add(signal(gear.from.is_some()), vec![id.clone()], values([]), fix, values([]));
            continue;
        }
        let gear = plan.gear().filter(|it| it.from == Some(id)).map(|it| it.id);
        // What stands there only now, with a plug that stayed cool, moves elsewhere by itself.
        let moves = |load: &&Load| load.on.is_none() && load.hot == Some(false);
        let loads = plan.loads.iter().filter(|load| load.plugged_into() == Some(id) && !moves(load));
        // A plug got as hot as its outlet unless the plan says that it did not. That load runs nowhere.
        let as_hot = loads.clone().filter(|load| load.hot.is_none()).map(|load| &load.id);
        let about = std::iter::once(id).chain(as_hot).cloned().collect();
        let plugged: Vec<Id> = gear.chain(loads.map(|load| &load.id)).cloned().collect();
        let set = &plan.generator;
        let joined = set.bonding_plug == Answer::Known(true) && set.bonding_plug_in.as_ref() == Some(id);
        if plugged.is_empty() {
            found.add(signal(joined), about, values([]), "outlet", values([]));
        } else {
            let plugged = values([("plugged", Value::Parts(plugged))]);
            found.add(signal(true), about, values([]), "outlet-in-use", plugged);
        }
    }
    for load in plan.loads.iter().filter(|load| load.hot == Some(true)) {
        found.add(Signal::Danger, vec![load.id.clone()], values([]), "load", values([]));
    }
}

#[cfg(test)]
mod tests {
    use crate::plan::Id;
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
        // A bonding plug there has to come out as well.
        let bonded = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\"");
        let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
        assert_eq!(signal(&[front, bonded, floating]), Some(Signal::Danger));
        // What may leave it has to come out too, unless its plug stayed cool: then it is plugged in elsewhere.
        let fan = ("on = \"left\" # kettle", "now = \"front\"");
        assert_eq!(signal(&[front, fan]), Some(Signal::Danger));
        let cool = ("on = \"left\" # kettle", "now = \"front\"\nhot = false");
        assert_eq!(signal(&[front, cool]), Some(Signal::Caution));
        // The same for a cord or a box that is plugged into nothing.
        let cord = ("coiled = false # long", "coiled = false\nhot = true");
        let holder = ("bond = false", "bond = false\nhot = true");
        let (no_cord, no_box) = (("from = \"twist\"\nplug", "plug"), ("from = \"long\"\ninlet", "inlet"));
        assert_eq!(signal(&[cord]), Some(Signal::Danger));
        assert_eq!(signal(&[cord, no_cord]), Some(Signal::Caution));
        assert_eq!(signal(&[holder, no_box]), Some(Signal::Caution));
        assert_eq!(signal(&[no_cord, no_box]), None);
    }

    /// A load that must not be plugged in holds no socket, and no rule sends anyone to plug it in. Near miss: one that
    /// may be leaves no socket for the other.
    #[test]
    fn what_got_hot_leaves_its_socket() {
        for (hot, free) in [("hot = true", true), ("hot = false", false)] {
            let on = format!("on = \"left\"\n{hot}");
            let report = report(&[
                ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"L5-20R\"\nbreaker = \"20 A\""),
                ("shape = \"5-15R\" # left", "shape = \"5-15R\"\nsockets = 1"),
                ("shape = \"5-15R\" # right", "shape = \"TT-30R\""),
                ("on = \"left\" # kettle", on.as_str()),
                ("on = \"right\" # fan", ""),
            ]);
            let [kettle, fan] = ["kettle", "fan"].map(|id| Id::new(id).expect("an id"));
            assert_eq!(report.figures.sharing.place(&fan).is_some(), free, "{hot}");
            assert_eq!(report.figures.sharing.place(&kettle).is_some(), !free, "{hot}");
            let told = report.findings.iter().filter(|it| it.about.contains(&kettle)).map(|it| it.code);
            assert_eq!(told.collect::<Vec<_>>(), if free { vec!["CORD009"] } else { vec![] }, "{hot}");
        }
    }

    /// The plug of what is in a hot outlet got as hot, even if it may leave that outlet.
    #[test]
    fn what_is_in_a_hot_outlet_runs_nowhere() {
        for key in ["on", "now"] {
            let front = ("gfci = true # front", "gfci = true\nhot = true");
            let report = report(&[front, ("on = \"left\" # kettle", &format!("{key} = \"front\""))]);
            let lost = report.figures.sharing.without_place(&Id::new("kettle").expect("an id")).expect("no place");
            assert_eq!(lost.reason, "hot", "{key}");
        }
    }
}

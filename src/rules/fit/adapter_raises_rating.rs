#![doc = include_str!("../../../i18n/en/explain/FIT002.md")]

use crate::quantity::Current;
use crate::rules::prelude::*;
use crate::supply::NodeIx;

pub(super) const RULE: Rule = Rule {
    code: "FIT002",
    name: "adapter-raises-rating",
    area: "fit",
    worst: Signal::Notice,
    sources: &[cite::WD_6],
    fixes: &["plan"],
    check,
    #[cfg(test)]
    fires: &[
        &[("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-15P\"")],
        // A 15 A box with a 20 A receptacle.
        &[INLET, FROM_FRONT, ("shape = \"5-15R\" # right", "shape = \"5-20R\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        &[
            ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-20P\""),
            ("ends = [\"L5-30R\"]", "ends = [\"5-20R\"]"),
            ("inlet = \"L5-30P\"", "inlet = \"5-20P\""),
        ],
        &[INLET, FROM_FRONT],
    ],
};

#[cfg(test)]
const INLET: crate::rules::Edit = ("inlet = \"L5-30P\"", "inlet = \"5-15P\"");

#[cfg(test)]
const FROM_FRONT: crate::rules::Edit = ("from = \"long\"\n", "from = \"front\"\n");

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let largest = |ratings: &mut dyn Iterator<Item = Current>| ratings.max().unwrap_or(Current::ZERO);
    let cords = facts.plan.cords.iter().map(|cord| {
        let end = largest(&mut cord.ends().iter().map(|end| end.0.rating()));
        (&cord.id, &cord.from, cord.usable_plug(), end)
    });
    let boxes = facts.plan.boxes.iter().map(|holder| {
        let end = largest(&mut holder.outlets.iter().map(|outlet| outlet.shape.0.rating()));
        (&holder.id, &holder.from, holder.usable_inlet(), end)
    });
    for (id, from, plug, end) in cords.chain(boxes) {
        let Some(plug) = plug.map(|plug| plug.0.rating()) else {
            continue;
        };
        // The plug's feed may give less, and less still for hours, as the label says.
        let mut parts = facts.supply.nodes.iter().enumerate();
        let part = parts.find(|(_, node)| node.id == *id && node.kind.is_gear());
        let given = part.map(|(at, _)| facts.supply.limit(NodeIx(at)));
        let least = |given: Option<Current>| given.filter(|it| *it > Current::ZERO).map_or(plug, |it| plug.min(it));
        let limit = least(given.as_ref().map(|it| it.continuous));
        let short = least(given.as_ref().map(|it| it.short));
        if from.is_some() && end > plug {
            found.add(
                Signal::Notice,
                vec![id.clone()],
                values([
                    ("limit", limit.into()),
                    ("short", short.into()),
                    ("hours", Value::yes_no(limit < short)),
                    ("plug", plug.into()),
                    ("shape", end.into()),
                ]),
                "plan",
                values([]),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Value;
    use crate::rules::testing::findings;

    /// A 15 A plug with a 30 A end, in a 20 A outlet: 15 A. On a 1200 W generator, no more than 10 A.
    #[test]
    fn the_limit_is_that_of_all_ahead_of_it() {
        let adapter = ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-15P\"");
        for (edits, milliamps) in
            [(vec![adapter], 15_000), (vec![adapter, ("rated = \"3600 W\"", "rated = \"1200 W\"")], 10_000)]
        {
            let found = findings(&edits);
            let found = found.iter().find(|it| it.code == "FIT002").expect("found");
            let limit = crate::quantity::Current::from_milliamps(milliamps);
            assert_eq!(found.values["limit"], Value::from(limit), "{edits:?}");
        }
    }

    /// The remedy gives the limits for hours and for less separately if they differ: 12 A and 15 A on a 15 A breaker,
    /// but 15 A on a 20 A breaker, which carries 16 A for hours.
    #[test]
    fn the_limit_for_hours_is_told_as_one() {
        let told = |breaker: &str| {
            let breaker = format!("breaker = \"{breaker} A\" # front");
            let report = crate::rules::testing::report(&[
                ("from = \"twist\"\nplug = \"L5-30P\"", "from = \"front\"\nplug = \"5-15P\""),
                ("breaker = \"20 A\" # front", breaker.as_str()),
            ]);
            let found = report.findings.iter().find(|it| it.code == "FIT002").expect("found");
            let words = crate::words::Words::english();
            words.finding(found, &report.figures.loads).fix.replace('\u{a0}', " ")
        };
        assert!(told("15").contains("plan with 12 A for three hours or more, and 15 A for less."), "{}", told("15"));
        assert!(told("20").contains("plan with 15 A. Mark"), "{}", told("20"));
    }
}

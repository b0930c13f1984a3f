#![doc = include_str!("../../../i18n/en/explain/POWER001.md")]

use crate::plan::{Id, Leg};
use crate::quantity::{ApparentPower, Current, Power};
use crate::report::Values;
use crate::rules::demand::{Beside, Busiest, Need, beside, busy, ids, when};
use crate::rules::halves::Halves;
use crate::rules::prelude::*;
use crate::supply::{Legs, NodeIx};

pub(super) const RULE: Rule = Rule {
    code: "POWER001",
    name: "rated-power-exceeded",
    area: "power",
    worst: Signal::Warning,
    sources: &[cite::ARMY_TM, cite::PRACTICE],
    fixes: &[
        "turns",
        "hours",
        "leg",
        "leg-turns",
        "leg-look",
        "leg-cord",
        "leg-alone",
        "amps",
        "alone",
        "amps-alone",
        "life-alone",
        "life-off",
        "life-turns",
    ],
    check,
    #[cfg(test)]
    fires: &[
        // 1500 W and 50 W of 1540 W.
        &[SMALL],
        // 1500 W and twice 800 W of 2300 W: any two of the three run.
        &[
            ("rated = \"3600 W\"", "rated = \"2300 W\""),
            ("running = \"50 W\"", "count = 2\nrunning = \"800 W\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
        // The plan gives no hours.
        &[SMALL, ("hours = [\"18:00-23:00\"]", ""), ("hours = [\"18:30-19:00\"]", "")],
        // 1780 VA for 890 W, beside the fan's 50, of 1800.
        &[
            ("kind = \"heater\" # kettle", "kind = \"electronic\""),
            ("rated = \"3600 W\"", "rated = \"1800 W\""),
            ("running = \"1500 W\"", "running = \"890 W\""),
            ("power_factor = 1.0", "power_factor = 0.5"),
        ],
        // 20 A on each leg of 15 A, of something that may be for 120 V or 240 V.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"L14-30R\"\nbreaker = \"30 A\" # twist"),
            ("from = \"twist\"\n", ""),
            ("running = \"1500 W\"", "current = \"20 A\""),
            ("plug = \"5-15P\" # kettle\non = \"left\" # kettle", "plug = \"L14-30P\"\non = \"twist\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ],
        // 16.7 A on a leg of 15 A, and then 12.5 A and 3.3 A.
        &[("voltage = \"120 V\"", "voltage = \"120/240 V\""), ("running = \"1500 W\"", "running = \"2000 W\"")],
        &[("voltage = \"120 V\"", "voltage = \"120/240 V\""), ("running = \"50 W\"", "running = \"400 W\"")],
        // The same at the ends of a cord.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"L14-20R\"\nbreaker = \"20 A\""),
            ("plug = \"L5-30P\" # long\nends = [\"L5-30R\"]", "plug = \"L14-20P\"\nends = [\"5-20R\", \"5-20R\"]"),
            ("conductors = 3 # long", "conductors = 4"),
            ("from = \"long\"\ninlet", "inlet"),
            ("running = \"50 W\"", "running = \"400 W\""),
            ("on = \"left\" # kettle", "on = \"long.1\""),
            ("on = \"right\" # fan", "on = \"long.2\""),
        ],
        // The same, with the half in the plan.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nleg = \"A\""),
            ("on = \"left\" # kettle", "on = \"front\""),
            ("on = \"right\" # fan", "on = \"front\""),
            ("running = \"50 W\"", "running = \"400 W\""),
        ],
        // And an outlet on the other half.
        &[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nleg = \"A\""),
            ("breaker = \"30 A\" # twist", "breaker = \"30 A\"\nleg = \"B\""),
            ("on = \"left\" # kettle", "on = \"front\""),
            ("on = \"right\" # fan", "on = \"front\""),
            ("running = \"50 W\"", "running = \"400 W\""),
        ],
        // By itself.
        &[("running = \"1500 W\"", "running = \"3601 W\"")],
        &[
            ("kind = \"heater\" # kettle", "kind = \"electronic\""),
            ("running = \"1500 W\"", "running = \"1900 W\""),
            ("power_factor = 1.0", "power_factor = 0.5"),
        ],
        // The fan is a breathing aid: too large itself, beside a kettle, and beside a kettle and a heater.
        &[LIFE, ("running = \"50 W\"", "running = \"3601 W\"")],
        &[LIFE, SMALL],
        &[LIFE, SMALL, ("running = \"1500 W\"", "running = \"750 W\""), ("[[load]]\nid = \"fan\"", SECOND)],
    ],
    #[cfg(test)]
    spares: &[
        // 1500 W + 50 W is exactly the rated power.
        &[("rated = \"3600 W\"", "rated = \"1550 W\"")],
        // More than the rated power in all, but at different hours.
        &[
            ("rated = \"3600 W\"", "rated = \"1550 W\""),
            ("running = \"50 W\"", "running = \"500 W\""),
            ("hours = [\"18:00-23:00\"]", "hours = [\"20:00-23:00\"]"),
        ],
        // The kettle has no place, so it is not on.
        &[("running = \"1500 W\"", "running = \"3600 W\"")],
    ],
};

/// An edit that makes the fan a breathing aid.
#[cfg(test)]
const LIFE: (&str, &str) = ("kind = \"electronic\" # fan", "kind = \"medical\"");

/// An edit to a generator that can run either load, but not both.
#[cfg(test)]
const SMALL: (&str, &str) = ("rated = \"3600 W\"", "rated = \"1540 W\"");

/// A grill that runs at the same time as the kettle.
#[cfg(test)]
const SECOND: &str = "[[load]]\nid = \"grill\"\nname = \"Grill\"\nkind = \"heater\"\nrunning = \"750 W\"\n\
     hours = [\"18:30-19:00\"]\nplug = \"5-15P\"\n[[load]]\nid = \"fan\"";

/// The unit in which demand is judged: watts of the whole generator, or amperes of its fuller leg.
struct Judge<'j, 'a> {
    sum: &'j dyn Fn(&[Need<'a>]) -> i64,
    /// Whether this unit alone shows what a load demands.
    judges: &'j dyn Fn(&Need<'a>) -> bool,
    limit: i64,
    value: &'j dyn Fn(i64) -> Value,
    /// The limit as findings report it.
    told: Value,
    /// The keys of the remedies: too much alone, too much together.
    fixes: [&'static str; 2],
}

impl<'a> Judge<'_, 'a> {
    fn fits(&self, on: &[Need<'a>]) -> bool {
        (self.sum)(on) <= self.limit
    }

    fn shown(&self, demand: i64) -> Values {
        values([
            ("demand", (self.value)(demand)),
            ("limit", self.told.clone()),
            ("over", (self.value)(demand - self.limit)),
        ])
    }

    /// Reports loads that are too much alone, at any hour, and removes them from `needs`.
    fn alone(&self, needs: &mut Vec<Need<'a>>, found: &mut Findings<'_>) {
        let demand = |need: &Need<'a>| (self.sum)(std::slice::from_ref(need));
        let over = |need: &Need<'a>| need.ever_on() && (self.judges)(need) && demand(need) > self.limit;
        for life in [true, false] {
            let mut alone = needs.clone();
            alone.retain(|need| need.life() == life && over(need));
            let Some(most) = alone.iter().map(demand).max() else {
                continue;
            };
            let fix = if life { "life-alone" } else { self.fixes[0] };
            found.add(Signal::Warning, ids(&alone), self.shown(most), fix, values([]));
        }
        needs.retain(|need| !over(need));
    }

    /// Reports what is too much together: in the busiest minute, unless that is `done`, and in every other minute in
    /// which a life depends on a running load. Returns whether the busiest minute is reported, here or before. Reported
    /// loads are added to `told`.
    fn together(
        &self,
        facts: &Facts<'a>,
        needs: &[Need<'a>],
        done: bool,
        told: &mut Vec<Id>,
        found: &mut Findings<'_>,
    ) -> bool {
        let mut first = done;
        for (rank, busiest) in busy(needs, self.sum).iter().enumerate() {
            if rank == 0 && !done {
                first = self.at(facts, busiest, told, found);
            } else if busiest.on.iter().any(Need::life) {
                self.at(facts, busiest, told, found);
            }
        }
        first
    }

    /// Does the same for one minute. Returns whether there is anything to report.
    fn at(&self, facts: &Facts<'a>, busiest: &Busiest<'a>, told: &mut Vec<Id>, found: &mut Findings<'_>) -> bool {
        if self.fits(&busiest.on) || !busiest.on.iter().all(self.judges) {
            return false;
        }
        let mut shown = self.shown((self.sum)(&busiest.on));
        let mut fix_values = values([]);
        // What draws only on the other half is not in the sum.
        let halves = Halves::of(facts, &busiest.on);
        let on = if self.fixes[1] == "leg" { halves.fuller() } else { busiest.on.clone() };
        let busiest = &Busiest { minute: busiest.minute, on };
        let mut about = busiest.ids();
        let fix = match beside(&busiest.on, |on| self.fits(on)) {
            Beside::Nothing if self.fixes[1] == "turns" && busiest.on.iter().all(Need::any_time) => "hours",
            Beside::Nothing if self.fixes[1] == "leg" => {
                let spread = halves.least().filter(|least| *least > self.limit);
                if halves.known() || spread.is_some() {
                    // However these are spread, only the certain amount.
                    shown = self.shown(spread.unwrap_or((self.sum)(&busiest.on)));
                    match halves.to_move(facts, self.limit) {
                        Some(id) if halves.known() => {
                            fix_values.insert("move", Value::Parts(vec![id.clone()]));
                            "leg"
                        }
                        _ => "leg-turns",
                    }
                } else {
                    halves.look()
                }
            }
            Beside::Nothing => self.fixes[1],
            Beside::TooMuch(life) => {
                let alone: Vec<Need<'a>> = busiest.on.iter().filter(|need| need.life()).copied().collect();
                shown = self.shown((self.sum)(&alone));
                about = life;
                "life-alone"
            }
            Beside::Off { life, off } => {
                let fix = if off.is_empty() { "life-turns" } else { "life-off" };
                shown.insert("life", Value::Parts(life));
                fix_values.insert("off", Value::Parts(off));
                fix
            }
        };
        shown.extend(when(busiest.minute, &busiest.on));
        if !about.iter().all(|id| told.contains(id)) {
            found.add(Signal::Warning, about.clone(), shown, fix, fix_values);
            told.extend(about);
        }
        true
    }
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let mut needs = facts.needs();
    let rated = facts.supply.rated;
    let watts = Judge {
        sum: &|on| on.iter().map(Need::running).sum::<Power>().milliwatts(),
        judges: &|need| need.by_watts(facts.supply),
        limit: rated.milliwatts(),
        value: &|count| Power::from_milliwatts(count).into(),
        told: rated.into(),
        fixes: ["alone", "turns"],
    };
    let amps = Judge {
        sum: &|on| {
            let legs = [Leg::A, Leg::B].map(|leg| facts.apparent_on_leg(on, leg));
            legs[0].max(legs[1]).millivolt_amps()
        },
        judges: &|_| true,
        limit: facts.supply.room(NodeIx(0)).millivolt_amps(),
        value: &|count| {
            let apparent = ApparentPower::from_millivolt_amps(count);
            Current::of_apparent(apparent, facts.supply.volts).into()
        },
        told: facts.supply.leg_rated.into(),
        fixes: if facts.supply.nodes[0].legs == Legs::Both { ["leg-alone", "leg"] } else { ["amps-alone", "amps"] },
    };
    // A load that can never run stays home, and the rest is judged without it.
    watts.alone(&mut needs, found);
    amps.alone(&mut needs, found);
    needs.retain(Need::asks_the_set);
    let mut told = Vec::new();
    let done = watts.together(facts, &needs, false, &mut told, found);
    amps.together(facts, &needs, done, &mut told, found);
}

#[cfg(test)]
mod tests {
    use crate::report::Value;
    use crate::rules::testing::{codes, findings, report};

    /// If the generator's watts are unknown and too few, the finding rests on them.
    #[test]
    fn what_an_unknown_generator_cannot_give_rests_on_its_watts() {
        let unknown = [("rated = \"3600 W\"", "rated = \"unknown\""), ("peak = \"4500 W\"", "peak = \"unknown\"")];
        let found = findings(&unknown);
        let found = found.iter().find(|it| it.code == "POWER001").expect("found");
        assert!(found.rests_on.iter().any(|it| it.field == "generator.rated"), "{found:?}");
        let known = findings(&[("rated = \"3600 W\"", "rated = \"1200 W\"")]);
        let known = known.iter().find(|it| it.code == "POWER001").expect("found");
        assert!(known.rests_on.is_empty(), "{known:?}");
    }

    /// A 3600 W generator with two legs gives 15 A on each. 2000 W at 120 V are 16.7 A, too much for either leg; 12.5 A
    /// and 3.3 A are too much for one leg but not for two.
    #[test]
    fn a_move_is_advised_only_where_it_helps() {
        let two_legs = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
        for (edit, fix, about) in [
            (("running = \"1500 W\"", "running = \"2000 W\""), "leg-alone", vec!["kettle"]),
            (("running = \"50 W\"", "running = \"400 W\""), "leg-look", vec!["kettle", "fan"]),
        ] {
            let found = findings(&[two_legs, edit]);
            let found = found.iter().find(|it| it.code == "POWER001").expect("found");
            let ids: Vec<_> = found.about.iter().map(crate::plan::Id::as_str).collect();
            assert_eq!((found.fix.key, ids), (fix, about));
        }
    }

    /// 12.5 A and 3.3 A on one half, and a lamp on the other, which is not named. Near miss: the lamp's half is
    /// unknown, so it may be part of it.
    #[test]
    fn what_is_on_the_other_half_is_not_named() {
        for (leg, named) in [("leg = \"B\"", vec!["kettle", "fan"]), ("", vec!["kettle", "fan", "lamp"])] {
            let twist = format!("breaker = \"30 A\"\n{leg}");
            let lamp = "[[load]]\nid = \"lamp\"\nname = \"Lamp\"\nkind = \"lamp\"\nrunning = \"20 W\"\n\
                        hours = [\"18:00-23:00\"]\nplug = \"5-15P\"\non = \"right\"\n[[load]]\nid = \"fan\"";
            let found = findings(&[
                ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nsockets = 2\nleg = \"A\""),
                ("breaker = \"30 A\" # twist", twist.as_str()),
                ("on = \"left\" # kettle", "on = \"front\""),
                ("[[load]]\nid = \"fan\"", lamp),
                ("on = \"right\" # fan", "on = \"front\""),
                ("running = \"50 W\"", "running = \"400 W\""),
            ]);
            let found = found.iter().find(|it| it.code == "POWER001").expect("found");
            let ids: Vec<_> = found.about.iter().map(crate::plan::Id::as_str).collect();
            assert_eq!(ids, named, "{leg}");
        }
    }

    /// A breathing machine and a kettle are too much for their half. Another breathing machine on the other half has no
    /// part in that, unless it may be on theirs.
    #[test]
    fn no_life_on_the_other_half_is_named() {
        for (leg, life) in [("leg = \"B\"", vec!["fan"]), ("", vec!["fan", "lamp"])] {
            let twist = format!("breaker = \"30 A\"\n{leg}");
            let lamp = "[[load]]\nid = \"lamp\"\nname = \"Lamp\"\nkind = \"medical\"\nrunning = \"20 W\"\n\
                        hours = [\"18:00-23:00\"]\nplug = \"5-15P\"\non = \"right\"\n[[load]]\nid = \"fan\"";
            let found = findings(&[
                super::LIFE,
                ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nsockets = 2\nleg = \"A\""),
                ("breaker = \"30 A\" # twist", twist.as_str()),
                ("on = \"left\" # kettle", "on = \"front\""),
                ("[[load]]\nid = \"fan\"", lamp),
                ("on = \"right\" # fan", "on = \"front\""),
                ("running = \"50 W\"", "running = \"400 W\""),
            ]);
            let found = found.iter().find(|it| it.code == "POWER001").expect("found");
            let mut named = match &found.values["life"] {
                Value::Parts(named) => named.clone(),
                other => panic!("{other:?}"),
            };
            named.sort_unstable();
            let named: Vec<&str> = named.iter().map(crate::plan::Id::as_str).collect();
            assert_eq!(named, life, "{leg}");
        }
    }

    /// A 240 V load draws on both halves, so it is not moved, and beside it the other load is too much on either half,
    /// known or not. Near misses: two loads too much for one half, with room and an outlet on the other; and an unknown
    /// half.
    #[test]
    fn only_what_helps_moves_and_what_is_certain_is_told_so() {
        let base = [
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"6-20R\"\nbreaker = \"20 A\""),
            ("from = \"twist\"\nplug = \"L5-30P\" # long", "plug = \"L5-30P\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ];
        let fan = |draws: &'static str| ("running = \"50 W\"", draws);
        let big = ("plug = \"5-15P\" # kettle", "plug = \"6-20P\"");
        let on_twist = ("on = \"left\" # kettle", "on = \"twist\"");
        let known = ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nleg = \"A\"");
        let told = |edits: &[crate::rules::Edit]| -> Vec<_> {
            let found = findings(edits);
            let found = found.iter().filter(|it| it.code == "POWER001");
            found.map(|it| (it.fix.key, it.fix.values.get("move").cloned())).collect()
        };
        // 6.25 A on both halves, and 12.5 A on one, of 15 A.
        let both = [&base[..], &[big, on_twist, fan("running = \"1500 W\"")]].concat();
        assert_eq!(told(&[&both[..], &[known]].concat()), [("leg-turns", None)]);
        assert_eq!(told(&both), [("leg-turns", None)]);
        // 12.5 A and 3.3 A on one half, and an outlet on the other.
        let moves = [
            base[0],
            known,
            ("breaker = \"30 A\" # twist", "breaker = \"30 A\"\nleg = \"B\""),
            ("on = \"left\" # kettle", "on = \"front\""),
            base[3],
            fan("running = \"400 W\""),
        ];
        let id = crate::plan::Id::new("fan").expect("an id");
        assert_eq!(told(&moves), [("leg", Some(Value::Parts(vec![id])))]);
        let home = ("from = \"twist\"\nplug = \"L5-30P\" # long", "plug = \"L5-30P\"");
        assert_eq!(told(&[&moves[..], &[home]].concat()), [("leg-turns", None)]);
        assert_eq!(told(&[base[0], fan("running = \"400 W\"")]), [("leg-look", None)]);
    }

    /// No outlet may be used until it has a GFCI. The generator must still supply both loads, including one that may be
    /// medical. For one that is known to be medical, the missing place is reported instead.
    #[test]
    fn what_the_gear_keeps_out_asks_the_generator() {
        for (kind, told) in [("electronic", true), ("unknown", true), ("medical", false)] {
            let kind = format!("kind = \"{kind}\"");
            let edits = [
                super::SMALL,
                ("kind = \"electronic\" # fan", kind.as_str()),
                ("gfci = true # front", "gfci = false"),
                ("gfci = true # left", "gfci = false"),
                ("gfci = true # right", "gfci = false"),
                ("on = \"left\" # kettle", ""),
                ("on = \"right\" # fan", ""),
            ];
            let report = report(&edits);
            assert_eq!(report.figures.sharing.placed, []);
            assert_eq!(codes(&edits).contains(&"POWER001"), told, "{kind}");
        }
    }

    /// The only outlet that takes their plugs is filled by a cord that must not be used. Once that is out, the
    /// generator must supply both loads. A cord that may be used stays in.
    #[test]
    fn what_a_refused_cord_keeps_out_asks_the_generator() {
        for (wire, told) in [("18 AWG", true), ("10 AWG", false)] {
            let wire = format!("wire = \"{wire}\"");
            let edits = [
                super::SMALL,
                ("plug = \"5-15P\" # kettle\non = \"left\" # kettle", "plug = \"L5-30P\""),
                ("plug = \"5-15P\" # fan\non = \"right\" # fan", "plug = \"L5-30P\""),
                ("wire = \"10 AWG\"", wire.as_str()),
                ("gfci = false # twist", "gfci = true"),
            ];
            let report = report(&edits);
            assert_eq!(report.figures.sharing.placed, []);
            assert_eq!(codes(&edits).contains(&"POWER001"), told, "{wire}");
        }
    }

    /// 12.5 A on leg B and 4.2 A on an unknown leg: that may be B too, and then only half the power is available. With
    /// the plan saying A, all of it is.
    #[test]
    fn an_outlet_of_unknown_leg_is_with_those_that_are_known() {
        let both = |twist: &str| {
            let twist = format!("breaker = \"30 A\"{twist}");
            report(&[
                ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nleg = \"B\""),
                ("breaker = \"30 A\" # twist", twist.as_str()),
                ("on = \"left\" # kettle", "on = \"front\""),
                ("running = \"50 W\"", "running = \"500 W\""),
            ])
        };
        for (twist, watts, found) in [("", 1800, true), ("\nleg = \"A\"", 3600, false)] {
            let report = both(twist);
            let reachable = report.figures.usable.reachable_watts;
            assert_eq!(reachable, crate::quantity::Power::from_milliwatts(watts * 1000), "{twist}");
            assert_eq!(report.findings.iter().any(|it| it.code == "POWER001"), found, "{twist}");
        }
    }

    /// A load on which somebody's health depends takes no turns: the others give way.
    #[test]
    fn what_a_life_depends_on_comes_first() {
        let edits = [super::LIFE, super::SMALL];
        let found = findings(&edits);
        let found = found.iter().find(|it| it.code == "POWER001").expect("found");
        let id = |text| crate::plan::Id::new(text).expect("an id");
        assert_eq!(found.fix.key, "life-off");
        assert_eq!(found.values["life"], Value::Parts(vec![id("fan")]));
        assert_eq!(found.fix.values["off"], Value::Parts(vec![id("kettle")]));
    }

    /// The grill in the morning and the kettle in the evening are each too much beside the fan, which runs all day:
    /// each is reported. If no life depends on the fan, only the busiest minute is.
    #[test]
    fn what_a_life_depends_on_is_told_of_at_every_hour() {
        let morning = super::SECOND.replace("18:30-19:00", "07:00-07:30");
        let all_day = ("hours = [\"18:00-23:00\"]", "hours = [\"06:00-23:00\"]");
        let alone = ("running = \"1500 W\"", "running = \"800 W\"");
        let small = ("rated = \"3600 W\"", "rated = \"780 W\"");
        let edits = [("[[load]]\nid = \"fan\"", morning.as_str()), all_day, alone, small];
        let off = |edits: &[(&str, &str)]| -> Vec<String> {
            let found = findings(edits);
            let found = found.iter().filter(|it| it.code == "POWER001");
            let mut off: Vec<_> = found.map(|it| format!("{:?}", it.fix.values.get("off"))).collect();
            off.sort_unstable();
            off
        };
        let id = |text| format!("{:?}", Some(Value::Parts(vec![crate::plan::Id::new(text).expect("an id")])));
        // The kettle is too much alone.
        assert_eq!(off(&[&[super::LIFE], &edits[..]].concat()), ["None".to_owned(), id("grill")]);
        let both = [("rated = \"3600 W\"", "rated = \"845 W\"")];
        let larger = ("running = \"750 W\"", "running = \"820 W\"");
        let edits = [&edits[..3], &both, &[("running = \"50 W\"", "running = \"60 W\"")]].concat();
        let mut edits: Vec<(&str, &str)> = edits;
        let grill = morning.replace(larger.0, larger.1);
        edits[0].1 = grill.as_str();
        assert_eq!(off(&[&[super::LIFE], &edits[..]].concat()), [id("grill"), id("kettle")]);
        assert_eq!(off(&edits).len(), 1);
    }

    /// For a load of unknown kind, the words do not say that somebody's health depends on it.
    #[test]
    fn what_nobody_knows_is_said_to_be_unknown() {
        let words = crate::words::Words::english();
        for (kind, said) in [("medical", "Someone’s health depends"), ("unknown", "We do not know if")] {
            let kind = format!("kind = \"{kind}\"");
            let report = report(&[("kind = \"electronic\" # fan", kind.as_str()), super::SMALL]);
            let found = report.findings.iter().find(|it| it.code == "POWER001").expect("found");
            let text = words.finding(found, &report.figures.loads);
            assert!(text.why.starts_with(said), "{}", text.why);
        }
    }

    #[test]
    fn a_wish_without_hours_waits_its_turn() {
        let heavy = super::SMALL;
        let no_hours = ("hours = [\"18:00-23:00\"]", "");
        assert!(codes(&[heavy, no_hours]).contains(&"POWER001"));
        assert!(!codes(&[heavy, no_hours, ("wanted = \"must\" # fan", "wanted = \"wish\"")]).contains(&"POWER001"));
    }

    /// Two 120 V receptacles on one breaker that the plan puts on both legs share one leg if nobody knows whether the
    /// generator has two.
    #[test]
    fn no_leg_is_relied_on_where_the_voltage_is_not_known() {
        for (voltage, legs) in [("120/240 V", ["A", "B"]), ("unknown", ["B", "B"])] {
            let voltage = format!("voltage = \"{voltage}\"");
            let report = report(&[
                ("voltage = \"120 V\"", voltage.as_str()),
                (
                    "shape = \"L5-30R\"\nbreaker = \"30 A\" # twist",
                    "shape = \"L5-30R\"\nshares = \"front\"\nleg = \"B\"",
                ),
                ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nleg = \"A\""),
            ]);
            let limits = report.figures.limits.iter();
            let of_set = limits.filter(|limit| ["front", "twist"].contains(&limit.id.as_str()));
            let found: Vec<String> = of_set.map(|limit| format!("{:?}", limit.legs)).collect();
            assert_eq!(found, legs.map(|leg| format!("[{leg}]")));
        }
    }

    /// If the halves are unknown, the remedy is to find them out first.
    #[test]
    fn nothing_is_moved_to_a_half_that_nobody_knows() {
        for (leg, fix) in [("", "leg-look"), ("leg = \"A\"\n", "leg-turns")] {
            let box_leg = format!("{leg}breaker = \"15 A\"");
            let edits = [
                ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                ("breaker = \"30 A\" # twist", "breaker = \"30 A\"\nleg = \"A\""),
                ("on = \"left\" # kettle", "on = \"front\""),
                ("breaker = \"20 A\" # front", &*format!("{leg}breaker = \"20 A\"")),
                ("breaker = \"15 A\" # left", box_leg.as_str()),
                ("running = \"50 W\"", "running = \"400 W\""),
            ];
            let found = findings(&edits);
            let found = found.iter().find(|it| it.code == "POWER001").expect("found");
            assert_eq!(found.fix.key, fix, "{leg}");
        }
    }
}

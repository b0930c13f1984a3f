//! Plans of which the cheapest remedy is plain to see.

use super::*;
use crate::plan::Span;

/// A set of 2400 W that can run two things of 1500 W only one after the other, on dry ground.
fn camp(more: &str) -> String {
    format!(
        r#"
        format = 1
        [site]
        ground = "dry"
        sleepers_at = "60 ft"
        altitude = "0 ft"
        air = "70 °F"
        co_alarm = true
        stands = "open"
        quiet_hours = "22:00-06:00" # quiet
        [generator]
        name = "set"
        rated = "2400 W"
        peak = "3000 W"
        voltage = "120 V" # volts
        neutral = "floating"
        inverter = true # inverter
        [[generator.outlet]]
        id = "front"
        shape = "5-20R"
        sockets = 2 # front
        breaker = "20 A"
        gfci = true # front
        {more}
        "#
    )
}

fn heater(id: &str, hours: &str, more: &str) -> String {
    format!(
        "[[load]]\nid = \"{id}\"\nname = \"{id}\"\nkind = \"heater\"\nrunning = \"1500 W\"\n\
         continuous = false\nhours = [\"{hours}\"]\nplug = \"5-15P\"\n{more}\n"
    )
}

/// The hours of a load of the mended plan.
fn hours(mended: &Mended, id: &str) -> Vec<String> {
    let load = mended.plan.loads.iter().find(|load| load.id.as_str() == id);
    let load = load.expect("it is still there");
    load.hours.iter().map(ToString::to_string).collect()
}

fn one(key: &'static str, about: &str) -> Vec<(&'static str, String)> {
    vec![(key, about.to_owned())]
}

/// A quarter of an hour waits for five hours, and not five hours for it; and what is a wish waits
/// whether it is short or long.
#[test]
fn of_two_that_clash_the_shorter_moves() {
    let loads = heater("cooler", "14:00-19:00", "") + &heater("oven", "18:00-18:15", "");
    let mended = mend(&plan(&camp(&loads)), false);
    assert_eq!(keys(&mended), one("another-hour", "oven"));
    assert_eq!((mended.effect.cost, mended.effect.proven), (2, true));
    assert_eq!(hours(&mended, "cooler"), ["14:00-19:00"]);
    assert_eq!(hours(&mended, "oven"), ["19:00-19:15"]);
}

/// Spans are round the clock: where all that clash is after midnight, the hour before it is near.
#[test]
fn a_clash_over_midnight_is_moved_and_nothing_is_bought() {
    for quiet in [
        "",
        "quiet_hours = \"unknown\"",
        "quiet_hours = \"02:00-06:00\"",
    ] {
        let loads = heater("oven", "20:00-00:30", "") + &heater("kettle", "23:50-00:20", "");
        let text = camp(&loads).replacen("quiet_hours = \"22:00-06:00\"", quiet, 1);
        let mended = mend(&plan(&text), false);
        assert_eq!(keys(&mended), one("another-hour", "kettle"), "{quiet}");
        assert_eq!(mended.effect.cost, 2);
        // Not to 00:30, which is nearer, and night whatever the quiet hours are.
        assert_eq!(hours(&mended, "kettle"), ["19:30-20:00"], "{quiet}");
    }
    // The night of a camp that is quiet early is no hour to move to either.
    let loads = heater("oven", "18:00-19:30", "") + &heater("kettle", "18:45-19:15", "");
    let text = camp(&loads).replacen("22:00-06:00", "19:30-07:00", 1);
    let mended = mend(&plan(&text), false);
    assert_eq!(hours(&mended, "kettle"), ["17:30-18:00"]);
}

/// What leaves no free hour outside the night moves nowhere.
#[test]
fn what_has_no_other_hour_stays() {
    let loads = heater("oven", "06:00-22:00", "") + &heater("kettle", "12:00-12:30", "");
    let mended = mend(&plan(&camp(&loads)), false);
    assert!(keys(&mended).iter().all(|(key, _)| *key != "another-hour"));
    for load in &mended.plan.loads {
        let night = Span {
            from: 22 * 60,
            to: 6 * 60,
        };
        assert!(load.hours.iter().all(|it| it.minutes_in_both(night) == 0));
    }
}

/// One socket, and two things that never want it at the same time.
#[test]
fn two_things_of_different_hours_share_a_socket() {
    let loads =
        heater("kettle", "07:00-07:30", "on = \"front\"") + &heater("oven", "18:00-18:40", "");
    let text = camp(&loads).replacen("sockets = 2 # front", "sockets = 1", 1);
    let before = plan(&text);
    let mended = mend(&before, false);
    assert_eq!(keys(&mended), one("take-turns", "oven"));
    assert_eq!(mended.effect.cost, 2);
    assert!(mended.effect.after.clear());
    let sharing = &mended.report.figures.sharing;
    assert_eq!((sharing.placed.len(), sharing.unplaced.len()), (2, 0));
    // One plug goes in at a time, whatever the set could run.
    let both: Vec<Id> = ["kettle", "oven"]
        .map(|id| Id::new(id).expect("an id"))
        .into();
    assert_eq!(sharing.never, std::slice::from_ref(&both));
    let answer = crate::sharing::ask::ask(&mended.plan, &mended.report, &both, &[]);
    assert!(!answer.may);
    let answer = crate::sharing::ask::ask(&mended.plan, &mended.report, &both[..1], &[]);
    assert!(answer.may);

    // At the same hour one of them waits as well.
    let mended = mend(
        &plan(&text.replacen("18:00-18:40", "07:15-07:40", 1)),
        false,
    );
    let told: Vec<&str> = keys(&mended).iter().map(|(key, _)| *key).collect();
    assert_eq!(told, ["another-hour", "take-turns"]);
    assert_eq!(mended.effect.cost, 4);

    // What a life depends on keeps its own socket.
    let life = text.replacen("kind = \"heater\"", "kind = \"medical\"", 1);
    let mended = mend(&plan(&life), false);
    let keys = keys(&mended);
    assert!(keys.iter().all(|(key, _)| *key != "take-turns"), "{keys:?}");
}

/// Adapters that raise what a plug is made for: nothing is bought, they stay out.
#[test]
fn an_adapter_behind_a_danger_is_unplugged() {
    let gear = r#"
        [[generator.outlet]]
        id = "camper"
        shape = "TT-30R"
        breaker = "unknown"
        gfci = true
        [[cord]]
        id = "bone"
        from = "camper"
        plug = "TT-30P"
        ends = ["5-20R"]
        wire = "10 AWG"
        conductors = 3
        length = "1 ft"
        outdoor = true
        coiled = false
    "#;
    let text = camp(&(gear.to_owned() + &heater("kettle", "07:00-07:30", "on = \"bone\"")))
        .replacen("2400 W", "7200 W", 1)
        .replacen("3000 W", "9000 W", 1);
    let before = plan(&text);
    let found = report::build(&before).findings;
    let bone = Id::new("bone").expect("an id");
    let of_bone = |it: &&report::Finding| it.signal == Signal::Danger && it.about.contains(&bone);
    assert!(found.iter().any(|it| of_bone(&it)), "{found:#?}");
    let mended = mend(&before, false);
    assert!(
        keys(&mended).contains(&("set-aside", "bone".to_owned())),
        "{:?}",
        mended.steps
    );
    assert!(mended.effect.cost < 6, "{:?}", mended.steps);
    let found = &mended.report.findings;
    assert!(found.iter().all(|it| !of_bone(&it)), "{found:#?}");
    let on = mended.plan.loads[0].on.as_ref().map(Id::as_str);
    assert_eq!(on, Some("front"));
}

#[test]
fn of_sets_joined_by_a_kit_that_nobody_knows_one_runs() {
    let loads = heater("kettle", "07:00-07:30", "");
    let text = camp(&loads).replacen(
        "inverter = true # inverter",
        "inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = \"unknown\" }",
        1,
    );
    let mended = mend(&plan(&text), false);
    assert_eq!(keys(&mended), one("run-alone", ""));
    assert!(mended.effect.after.clear() && mended.plan.generator.parallel.is_none());
    // With the kit for exactly these sets there is nothing to do.
    let mended = mend(&plan(&text.replacen("\"unknown\"", "true", 1)), false);
    assert_eq!(keys(&mended), []);
}

#[test]
fn what_needs_240_volts_is_left_at_home_where_there_are_none() {
    let loads = heater("kettle", "07:00-07:30", "")
        + &heater("saw", "10:00-10:30", "").replacen("5-15P", "6-20P", 1);
    let text = camp(&loads);
    let mended = mend(&plan(&text), false);
    assert_eq!(keys(&mended), one("leave-home", "saw"));
    assert!(mended.effect.after.clear());
    let left: Vec<&str> = mended.plan.loads.iter().map(|it| it.id.as_str()).collect();
    assert_eq!(left, ["kettle"]);
    // What somebody's health depends on is never left at home.
    let life = text.replace("kind = \"heater\"", "kind = \"medical\"");
    let mended = mend(&plan(&life), false);
    assert_eq!(mended.plan.loads.len(), 2);
    assert!(!mended.effect.after.clear());
}

/// Two that want each other's socket: one of them comes out first.
#[test]
fn plugs_that_change_places_are_pulled_out_first() {
    let text = camp(
        &(heater("kettle", "07:00-07:30", "on = \"front\"")
            + &heater("oven", "18:00-18:40", "on = \"side\"")),
    )
    .replacen("sockets = 2 # front", "sockets = 1", 1)
    .replacen(
        "[[load]]",
        "[[generator.outlet]]\nid = \"side\"\nshape = \"5-20R\"\nsockets = 1\nbreaker = \"20 A\"\n\
             gfci = true\n[[load]]",
        1,
    );
    let before = plan(&text);
    let to = |load: &str, at: &str| {
        let id = |text: &str| Id::new(text).expect("an id");
        let seat = Seat {
            at: id(at),
            stays: true,
        };
        let change = Change::Move {
            load: id(load),
            to: Some(seat),
        };
        Step {
            change,
            comes_along: false,
        }
    };
    let steps = vec![to("kettle", "side"), to("oven", "front")];
    let (steps, after) = super::super::steps::in_order(&before, steps).expect("there is an order");
    let told: Vec<String> = steps
        .iter()
        .map(|step| {
            format!(
                "{} {}",
                step.change.key(),
                step.change.about().expect("a load")
            )
        })
        .collect();
    assert_eq!(told, ["unplug kettle", "move oven", "move kettle"]);
    let on: Vec<&str> = after
        .loads
        .iter()
        .filter_map(|it| Some(it.on.as_ref()?.as_str()))
        .collect();
    assert_eq!(on, ["side", "front"]);
}

/// Nothing is plugged into an adapter that a later step brings, and only what is used is protected.
#[test]
fn protection_is_for_what_is_planned_and_comes_before_it() {
    let wet = |loads: &str| {
        plan(
            &camp(loads)
                .replacen("ground = \"dry\"", "ground = \"wet\"", 1)
                .replacen("sockets = 2 # front", "sockets = 4", 1)
                .replacen("gfci = true # front", "gfci = false", 1),
        )
    };
    let told = |mended: &Mended| -> Vec<String> {
        let steps = mended.steps.iter();
        steps
            .map(|Step { change, .. }| {
                format!("{} {}", change.key(), change.about().expect("an id"))
            })
            .collect()
    };
    let kettle = heater("kettle", "18:00-18:30", "on = \"front\"");
    let mended = mend(&wet(&kettle), false);
    assert_eq!(told(&mended), ["protected-outlet front", "move kettle"]);
    assert_eq!((mended.effect.cost, mended.effect.after.clear()), (6, true));
    let on = mended.plan.loads[0].on.as_ref().map(Id::as_str);
    assert_eq!(on, Some("front-gfci"));

    let both = kettle + &heater("toaster", "18:00-18:30", "on = \"front\"");
    let mended = mend(&wet(&both.replace("1500 W", "800 W")), false);
    let told = told(&mended);
    assert_eq!(
        told,
        ["three-way-cord front", "move kettle", "move toaster"]
    );
    assert_eq!((mended.effect.cost, mended.effect.after.clear()), (9, true));
}

/// A bonding plug, and a kettle beside it on wet ground.
fn bonded(gfci: &str, more: &str) -> Plan {
    let loads = heater("kettle", "18:00-18:30", "on = \"front\"");
    let text = camp(&(more.to_owned() + &loads))
        .replacen("ground = \"dry\"", "ground = \"wet\"", 1)
        .replacen(
            "inverter = true # inverter",
            "bonding_plug = true\nbonding_plug_in = \"front\"",
            1,
        )
        .replacen("gfci = true # front", gfci, 1);
    plan(&text)
}

/// Only what is planned is protected: the bonding plug keeps its socket, and no GFCI is ahead of it.
#[test]
fn a_bonding_plug_keeps_its_socket_out_of_any_gfci() {
    let before = bonded("gfci = false", "");
    let mended = mend(&before, false);
    assert_eq!(keys(&mended), one("protected-outlet", "front"));
    assert_eq!((mended.effect.cost, mended.effect.after.clear()), (6, true));
    let new: Vec<&str> = mended
        .plan
        .cords
        .iter()
        .map(|cord| cord.id.as_str())
        .collect();
    assert_eq!(new, ["front-gfci"]);
    let front = Id::new("front").expect("an id");
    assert_eq!(mended.plan.generator.bonding_plug_in, Some(front));
    let found = &mended.report.findings;
    assert!(
        found
            .iter()
            .all(|it| !matches!(it.code, "FIT001" | "SHOCK013")),
        "{found:#?}"
    );
}

/// Behind the GFCI that the kettle is on it goes to an outlet without one, where there is one.
#[test]
fn a_bonding_plug_that_blinds_a_gfci_is_moved() {
    let back = "[[generator.outlet]]\nid = \"back\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = false\n";
    let mended = mend(&bonded("gfci = true", back), false);
    assert_eq!(keys(&mended), one("bonding-plug", ""));
    assert_eq!((mended.effect.cost, mended.effect.after.clear()), (1, true));
    let socket = mended
        .plan
        .generator
        .bonding_plug_in
        .as_ref()
        .map(Id::as_str);
    assert_eq!(socket, Some("back"));
    // Where every outlet has one, it is never sent into another.
    let mended = mend(
        &bonded("gfci = true", &back.replacen("false", "true", 1)),
        false,
    );
    assert!(keys(&mended).iter().all(|(key, _)| *key != "bonding-plug"));
}

/// A breathing aid on wet ground, at the end of a cord from an outlet of this id, one without protection
/// beside it, and a tank that lasts 10 h.
fn bedside(from: &str, more: &str) -> String {
    let lead = format!(
        "[[cord]]\nid = \"lead\"\nfrom = \"{from}\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
         wire = \"12 AWG\"\nconductors = 3\nlength = \"60 ft\"\noutdoor = true\ncoiled = false\n\
         [[load]]\nid = \"aid\"\nname = \"aid\"\nkind = \"medical\"\nrunning = \"200 W\"\n\
         hours = [\"21:00-07:00\"]\nplug = \"5-15P\"\non = \"lead\"\n"
    );
    let lasts =
        "runtime = [{ load = \"25 %\", lasts = \"10 h\" }, { load = \"100 %\", lasts = \"4 h\" }]";
    camp(&(more.to_owned() + &lead))
        .replacen("ground = \"dry\"", "ground = \"wet\"", 1)
        .replacen("gfci = true # front", "gfci = false", 1)
        .replacen("inverter = true # inverter", lasts, 1)
}

fn warned(report: &Report) -> Vec<&'static str> {
    let found = report.findings.iter();
    let found = found.filter(|it| it.signal == Signal::Warning);
    found.map(|it| it.code).collect()
}

/// That its tank does not last the night is told only of what is plugged in: no reason to leave it out.
#[test]
fn what_had_no_place_gets_one_though_it_brings_a_warning() {
    let before = plan(&bedside("front", ""));
    assert!(!warned(&report::build(&before)).contains(&"FUEL001"));
    let mended = mend(&before, false);
    assert_eq!(keys(&mended), one("protected-cord", "lead"));
    let (was, is) = (mended.effect.before, mended.effect.after);
    assert_eq!((is.unserved_musts, is.warnings), (0, was.warnings + 1));
    assert!(warned(&mended.report).contains(&"FUEL001"));
}

/// What another thing's night would then lack is a warning about that one, and counts.
#[test]
fn no_place_is_given_at_the_cost_of_a_life() {
    let guarded = "[[generator.outlet]]\nid = \"guarded\"\nshape = \"5-20R\"\nsockets = 1\n\
                   breaker = \"20 A\"\ngfci = true\n";
    let front = || Id::new("front").expect("an id");
    let given = Change::ThreeWay {
        at: front(),
        clears: false,
    };
    for (hours, lacks) in [("08:00-12:00", false), ("16:30-20:45", true)] {
        let more = guarded.to_owned() + &heater("griddle", hours, "");
        let text = bedside("guarded", &more).replacen("21:00-07:00", "22:00-06:00", 1);
        let before = plan(&text);
        let report = report::build(&before);
        let placed = &report.figures.sharing.placed;
        let placed: Vec<&str> = placed.iter().map(|it| it.load.as_str()).collect();
        assert_eq!(placed, ["aid"]);
        assert!(!warned(&report).contains(&"FUEL001"));
        let mut with = before.clone();
        assert!(given.apply(&mut with));
        assert_eq!(warned(&report::build(&with)).contains(&"FUEL001"), lacks);

        let mended = mend(&before, false);
        assert!(
            !warned(&mended.report).contains(&"FUEL001"),
            "{:?}",
            mended.steps
        );
        let only = keys(&mended) == one("three-way-cord", "front")
            || keys(&mended) == one("protected-outlet", "front");
        assert_eq!(only, !lacks, "{:?}", mended.steps);
    }
}

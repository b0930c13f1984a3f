//! Small plans whose sharing is worked out by hand.

use super::*;

fn shared(text: &str) -> Sharing {
    let plan = crate::plan::read(text).expect("a plan that reads");
    let supply = Supply::build(&plan);
    let (units, _) = crate::loads::units(&plan);
    share(&plan, &supply, &Verdicts::of(&plan, &supply), &units)
}

fn plan(rest: &str) -> String {
    let head = r#"
        format = 1
        [site]
        ground = "dry"
        altitude = "0 ft"
        air = "70 °F"
        [generator]
        name = "set"
        rated = "2400 W"
        peak = "3000 W"
        voltage = "120 V"
        [[generator.outlet]]
        id = "front"
        shape = "5-20R"
        sockets = 2
        breaker = "20 A"
        [[generator.outlet]]
        id = "side"
        shape = "5-15R"
        sockets = 1
        breaker = "15 A"
    "#;
    format!("{head}\n{rest}")
}

fn heater(id: &str, watts: u32, more: &str) -> String {
    format!(
        r#"
        [[load]]
        id = "{id}"
        name = "{id}"
        kind = "heater"
        running = "{watts} W"
        continuous = false
        plug = "5-15P"
        {more}
        "#
    )
}

fn ids(lists: &[Vec<crate::plan::Id>]) -> Vec<String> {
    lists
        .iter()
        .map(|list| {
            let ids: Vec<&str> = list.iter().map(crate::plan::Id::as_str).collect();
            ids.join(" ")
        })
        .collect()
}

#[test]
fn every_load_of_the_demo_plans_has_a_place_unless_its_place_must_not_be_used() {
    let mended = shared(crate::plan::demo::MENDED);
    assert_eq!(mended.unplaced, []);
    let packed = shared(crate::plan::demo::WEEKEND);
    assert!(!packed.unplaced.is_empty());
    assert!(packed.unplaced.iter().all(|lost| lost.reason == "refused"));
    for sharing in [mended, packed] {
        assert!(sharing.proven && sharing.families_complete && sharing.start_holds);
    }
}

/// On dry ground an outlet without a GFCI may be used, but a free one with a working GFCI comes first.
#[test]
fn on_dry_ground_too_a_load_goes_where_a_gfci_works() {
    for guarded in ["front", "side"] {
        let shape = if guarded == "front" { "5-20R" } else { "5-15R" };
        let shape = format!("shape = \"{shape}\"");
        let text = plan(&heater("heater", 1000, "")).replace(&shape, &format!("{shape}\ngfci = true"));
        let text = text.replace("voltage = \"120 V\"", "voltage = \"120 V\"\nneutral = \"bonded\"");
        let placed = shared(&text).placed;
        assert_eq!(placed[0].at.as_str(), guarded);
    }
}

/// Each leg of 5,000 W has 20.8 A, and one load takes 12.5 A. An outlet of unknown leg that needs as much may be on the
/// same leg. Once it is known to be on the other, both run at once.
#[test]
fn an_outlet_of_unknown_leg_counts_on_both() {
    for (leg, together) in [("", false), ("leg = \"A\"", true)] {
        let loads = heater("one", 1500, "on = \"front\"") + &heater("two", 1500, "on = \"side\"");
        let text = plan(&loads)
            .replace("rated = \"2400 W\"", "rated = \"5000 W\"")
            .replace("peak = \"3000 W\"", "peak = \"5000 W\"")
            .replace("voltage = \"120 V\"", "voltage = \"120/240 V\"")
            .replace("breaker = \"20 A\"", "breaker = \"20 A\"\nleg = \"B\"")
            .replace("breaker = \"15 A\"", &format!("breaker = \"15 A\"\n{leg}"));
        let sets = ids(&shared(&text).together);
        assert_eq!(sets.contains(&"one two".to_owned()), together, "{leg} {sets:?}");
    }
}

/// On wet ground no load is sent to an outlet without protection, and none that the plan puts there is counted. An
/// outlet with protection takes it.
#[test]
fn no_load_has_a_place_where_none_may_be_plugged_in() {
    let wet = |text: String| text.replace("ground = \"dry\"", "ground = \"wet\"");
    for on in ["", "on = \"side\""] {
        let sharing = shared(&wet(plan(&heater("lamp", 100, on))));
        assert_eq!((sharing.placed.len(), sharing.unplaced[0].reason), (0, "refused"));
    }
    let guarded = wet(plan(&heater("lamp", 100, "")));
    let guarded = guarded.replacen("breaker = \"20 A\"", "breaker = \"20 A\"\ngfci = true", 1);
    assert_eq!(shared(&guarded).placed[0].at.as_str(), "front");
}

/// Shares breathing machines, with cords of these lengths in the generator's first outlet, which has two sockets.
fn breathing(count: u32, cords: &[(&str, u32)]) -> Sharing {
    let cord = |(id, feet): &(&str, u32)| {
        format!(
            "[[cord]]\nid = \"{id}\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
             wire = \"12 AWG\"\nconductors = 3\nlength = \"{feet} ft\"\ncoiled = false\n"
        )
    };
    let cords: String = cords.iter().map(cord).collect();
    let machine = format!(
        "[[load]]\nid = \"cpap\"\nname = \"cpap\"\nkind = \"medical\"\nrunning = \"100 W\"\n\
         starting = \"100 W\"\nplug = \"5-15P\"\ncount = {count}\n"
    );
    shared(&plan(&(cords + &machine)))
}

/// Exhaust keeps the generator 25 ft away from sleepers.
#[test]
fn what_a_life_depends_on_runs_beside_the_bed_where_it_can() {
    let at = |sharing: &Sharing| -> Vec<String> { sharing.placed.iter().map(|placed| placed.at.to_string()).collect() };
    assert_eq!(at(&breathing(1, &[])), ["front"]);
    assert_eq!(at(&breathing(1, &[("cord", 50)])), ["cord"]);
    // Farther out than exhaust demands is no better, but nearer is still better than at the generator.
    assert_eq!(at(&breathing(1, &[("short", 10), ("long", 30)])), ["long"]);
    assert_eq!(at(&breathing(1, &[("shorter", 5), ("short", 10)])), ["short"]);
    // A place at the generator is better than none.
    let two = breathing(2, &[("cord", 50)]);
    assert_eq!((at(&two).len(), two.unplaced.len()), (2, 0));
}

#[test]
fn what_cannot_run_at_once_takes_turns_and_still_has_a_socket() {
    // 2400 W at 120 V is 20 A: two loads of 1100 W hold together, three do not.
    let loads = ["a", "b", "c"].map(|id| heater(id, 1100, "")).concat();
    let sharing = shared(&plan(&loads));
    assert_eq!(sharing.unplaced, []);
    assert_eq!(sharing.turns.len(), 2);
    assert_eq!(ids(&sharing.never), ["a b c"]);
    assert_eq!(ids(&sharing.together), ["a b", "a c", "b c"]);
}

#[test]
fn loads_that_never_overlap_need_no_turns() {
    let hours = ["07:00-08:00", "08:00-09:00", "23:00-01:00"];
    let loads: String = ["a", "b", "c"]
        .iter()
        .zip(hours)
        .map(|(id, hours)| heater(id, 1100, &format!("hours = [\"{hours}\"]")))
        .collect();
    let sharing = shared(&plan(&loads));
    assert_eq!(sharing.turns, Vec::<Vec<_>>::new());
    // What may not be on together is independent of hours.
    assert_eq!(ids(&sharing.never), ["a b c"]);
}

/// Two loads clash in their hours. Neither shares its turn with a third that may never run with it, though that one is
/// on at another hour.
#[test]
fn a_turn_holds_nothing_that_is_never_together() {
    let hours = ["07:30-07:50", "07:30-07:40", "18:00-19:00"];
    let loads: String = (["a", "b", "c"].iter().zip(hours))
        .map(|(id, hours)| heater(id, 1300, &format!("hours = [\"{hours}\"]")))
        .collect();
    let sharing = shared(&plan(&loads));
    assert_eq!(ids(&sharing.never), ["a b", "a c", "b c"]);
    assert_eq!(ids(&sharing.turns), ["a", "b", "c"]);
}

/// A device for the afternoon, and two kettles that want the same hour in the morning, each too much together with it:
/// no turn has the device and a kettle. Near miss: a device that runs in the morning too is in every turn and every
/// set, and if it leaves room for one kettle only, that kettle is in a set and the larger one stays off.
#[test]
fn a_turn_at_another_hour_leaves_out_what_is_too_much_beside_it() {
    let aid = |watts, hours: &str| {
        let more = format!("power_factor = 1.0\nstarting = \"{watts} W\"\nhours = [\"{hours}\"]");
        heater("aid", watts, &more).replace("\"heater\"", "\"medical\"")
    };
    let kettles = ["a", "b"].map(|id| heater(id, 1300, "hours = [\"07:00-07:30\"]")).concat();
    let sharing = shared(&plan(&(aid(1200, "14:00-16:30") + &kettles)));
    assert_eq!(ids(&sharing.never), ["aid a", "aid b", "a b"]);
    assert_eq!(ids(&sharing.turns), ["a", "b"]);
    assert_eq!(ids(&sharing.together), ["aid", "a", "b"]);
    let sharing = shared(&plan(&(aid(200, "06:00-08:00") + &kettles)));
    assert_eq!(ids(&sharing.turns), ["aid a", "aid b"]);
    assert_eq!(ids(&sharing.together), ["aid a", "aid b"]);
    let pot = heater("pot", 1000, "hours = [\"07:00-07:30\"]");
    let kettle = heater("kettle", 1300, "hours = [\"07:00-07:30\"]");
    let sharing = shared(&plan(&(aid(1200, "07:15-09:00") + &kettle + &pot)));
    assert_eq!(ids(&sharing.together), ["aid pot"]);
    assert_eq!(sharing.off.iter().map(Id::as_str).collect::<Vec<_>>(), ["kettle"]);
}

/// A breathing device does not wait for a kettle.
#[test]
fn what_a_life_depends_on_is_in_every_turn() {
    let aid = |watts| {
        let more = format!("power_factor = 1.0\nstarting = \"{watts} W\"");
        heater("aid", watts, &more).replace("\"heater\"", "\"medical\"")
    };
    let others = ["a", "b"].map(|id| heater(id, 1100, "")).concat();
    // On 2400 W at 120 V, two loads of 1100 W fit together with 150 W, and one with 250 W.
    for (watts, turns) in [(150, 0), (250, 2)] {
        let sharing = shared(&plan(&(aid(watts) + &others)));
        assert_eq!(sharing.turns.len(), turns);
        let with = |turn: &Vec<crate::plan::Id>| turn.iter().any(|id| id.as_str() == "aid");
        assert!(sharing.turns.iter().all(with), "{:?}", sharing.turns);
        assert_eq!(sharing.off, []);
    }
    // No 1100 W load fits together with 1600 W, so there is nothing to take turns with.
    let sharing = shared(&plan(&(aid(1600) + &others)));
    assert_eq!(sharing.turns, Vec::<Vec<_>>::new());
    assert_eq!(ids(&[sharing.off]), ["a b"]);
    // At different hours both run.
    let aid = aid(1600).replace("continuous", "hours = [\"20:00-06:00\"]\ncontinuous");
    let by_day = others.replace("continuous", "hours = [\"12:00-13:00\"]\ncontinuous");
    let sharing = shared(&plan(&(aid + &by_day)));
    assert_eq!(sharing.off, []);
}

#[test]
fn a_load_that_the_plan_puts_somewhere_stays_there_even_if_it_is_too_large() {
    // 15.4 A at 120 V, but no more than the plug's 15 A at the 125 V that it is made for.
    let big = heater("big", 1850, "on = \"side\"\npower_factor = 1.0");
    let sharing = shared(&plan(&big.replace("\"heater\"", "\"motor\"")));
    assert_eq!(sharing.placed[0].at.as_str(), "side");
    assert_eq!(ids(&sharing.never), ["big"]);
    assert_eq!(ids(&sharing.together), Vec::<String>::new());
}

#[test]
fn reasons_for_having_no_place() {
    let small = heater("many", 100, "count = 4");
    let odd = heater("odd", 100, "").replace("5-15P", "L5-30P");
    let huge = heater("huge", 2450, "").replace("5-15P", "5-20P");
    let wrong = heater("wrong", 2500, "");
    let sharing = shared(&plan(&(small + &huge + &wrong + &odd)));
    let got: Vec<(&str, &str)> =
        sharing.unplaced.iter().map(|unplaced| (unplaced.load.as_str(), unplaced.reason)).collect();
    assert_eq!(
        got,
        [("many.4", "no-room"), ("huge", "too-large"), ("wrong", "impossible"), ("odd", "no-receptacle-fits")]
    );
}

/// An outlet whose only socket is taken by a cord has no room for a plug that fits it. Without the cord, the load has a
/// place.
#[test]
fn an_outlet_that_gear_has_taken_is_one_without_room() {
    let cord = |from: &str| {
        format!(
            "[[cord]]\nid = \"cord\"\n{from}plug = \"5-15P\"\nends = [\"L5-30R\"]\nwire = \"14 AWG\"\n\
             conductors = 3\nlength = \"10 ft\"\ncoiled = false\n"
        )
    };
    let load = heater("one", 100, "on = \"side\"");
    for (from, reasons) in [("from = \"side\"\n", vec!["no-room"]), ("", vec![])] {
        let sharing = shared(&plan(&(cord(from) + &load)));
        let got: Vec<&str> = sharing.unplaced.iter().map(|it| it.reason).collect();
        assert_eq!(got, reasons);
    }
}

#[test]
fn a_cord_takes_up_a_socket() {
    let cord = r#"
        [[cord]]
        id = "cord"
        from = "side"
        plug = "5-15P"
        ends = ["5-15R"]
        wire = "14 AWG"
        conductors = 3
        length = "25 ft"
    "#;
    let sharing = shared(&plan(&(cord.to_owned() + &heater("lamp", 100, "count = 4"))));
    assert_eq!(sharing.placed.len(), 3);
    assert!(sharing.placed.iter().all(|placed| placed.at.as_str() != "side"));
}

#[test]
fn of_loads_alike_one_choice_stands_for_all() {
    // Of eight 500 W loads, any four hold at 20 A. The generator has three sockets, so they are plugged into a
    // splitter.
    let cord = r#"
        [[cord]]
        id = "strip"
        from = "front"
        plug = "5-20P"
        ends = ["5-20R", "5-20R", "5-20R", "5-20R", "5-20R", "5-20R", "5-20R", "5-20R"]
        wire = "12 AWG"
        conductors = 3
        length = "2 ft"
    "#;
    let sharing = shared(&plan(&(cord.to_owned() + &heater("lamp", 500, "count = 8"))));
    assert!(sharing.families_complete);
    assert_eq!(sharing.turns.len(), 2);
    for set in &sharing.together {
        assert_eq!(set.len(), 4);
    }
}

/// Returns a cord in the generator's first outlet.
fn cord(feet: u32, ends: usize, wire: &str) -> String {
    let ends = vec!["\"5-15R\""; ends].join(", ");
    format!(
        "[[cord]]\nid = \"cord\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [{ends}]\n\
         wire = \"{wire}\"\nconductors = 3\nlength = \"{feet} ft\"\ncoiled = false\n"
    )
}

/// Returns a box behind a cord in the generator's first outlet, with this many 20 A outlets.
fn boxed(feet: u32, wire: &str, outlets: usize) -> String {
    let outlet =
        |number| format!("[[box.outlet]]\nid = \"b{number}\"\nshape = \"5-20R\"\nsockets = 1\nbreaker = \"20 A\"\n");
    let outlets: String = (1..=outlets).map(outlet).collect();
    let cord = cord(feet, 1, wire).replace("5-15", "5-20");
    format!("{cord}[[box]]\nid = \"box\"\nfrom = \"cord\"\ninlet = \"5-20P\"\nlisted = true\n{outlets}")
}

fn things(count: u32, watts: u32) -> String {
    (1..=count).map(|number| heater(&format!("l{number}"), watts, "")).collect()
}

fn places(text: &str) -> Vec<String> {
    let placed = shared(&plan(text)).placed;
    placed.iter().map(|placed| placed.at.to_string()).collect()
}

#[test]
fn a_thing_goes_to_the_far_end_of_a_cord_that_can_take_it() {
    let lamp = |cord: &str| places(&(cord.to_owned() + &things(1, 100)));
    assert_eq!(lamp(&cord(50, 1, "14 AWG")), ["cord"]);
    // The longer of two, but no longer than exhaust demands.
    let both = cord(10, 1, "14 AWG") + &cord(50, 1, "14 AWG").replace("\"cord\"", "\"long\"");
    assert_eq!(lamp(&both), ["long"]);
    // No cord, or one that ends at the generator.
    assert_eq!(lamp(""), ["front"]);
    assert_eq!(lamp(&cord(6, 3, "14 AWG")), ["front"]);
    // A cord that cannot carry the load.
    assert_eq!(places(&(cord(50, 1, "18 AWG") + &things(1, 1500))), ["front"]);
}

#[test]
fn what_is_plugged_in_now_stays_unless_more_is_served_elsewhere() {
    let at = |cord: &str, now: &str| places(&(cord.to_owned() + &heater("small", 600, now)));
    let long = cord(50, 3, "14 AWG");
    assert_eq!(at(&long, ""), ["cord.1"]);
    assert_eq!(at(&long, "now = \"cord.2\""), ["cord.2"]);
    // A place at the generator is kept only where there is nothing else.
    assert_eq!(at(&long, "now = \"side\""), ["cord.1"]);
    assert_eq!(at("", "now = \"side\""), ["side"]);
    assert_eq!(at("", ""), ["front"]);
    // Loads without room at the cord's end also stay where they are.
    let rest = heater("b", 600, "now = \"side\"") + &heater("c", 600, "");
    let one_end = cord(50, 1, "14 AWG") + &heater("a", 600, "") + &rest;
    assert_eq!(places(&one_end), ["cord", "side", "front"]);
    // Two loads of 1000 W run at once only if one leaves the 15 A cord.
    let heaters = |watts| {
        let a = heater("a", watts, "now = \"cord.1\"");
        places(&(long.clone() + &a + &heater("b", watts, "now = \"cord.2\"")))
    };
    assert_eq!(heaters(800), ["cord.1", "cord.2"]);
    // Not for the cord's own outlet, whose breaker would then carry more than 16 A.
    assert_eq!(heaters(1000), ["cord.1", "side"]);
}

#[test]
fn a_box_at_the_camp_takes_all_that_it_holds() {
    let at = |outlets, watts| places(&(boxed(75, "12 AWG", outlets) + &things(5, watts)));
    // Five loads of 350 W are 14.6 A, five of 400 W are 16.7 A. The cord carries 15 A.
    assert_eq!(at(6, 350), ["b1", "b2", "b3", "b4", "b5"]);
    assert_eq!(at(6, 400), ["b1", "b2", "b3", "b4", "front"]);
    // The box has no more sockets.
    assert_eq!(at(3, 100), ["b1", "b2", "b3", "front", "side"]);
}

#[test]
fn the_balance_counts_only_beyond_what_holds_for_hours() {
    // 20 A each, 16 A of them for hours.
    let outlets = "
        [[generator.outlet]]
        id = \"a\"
        shape = \"5-20R\"
        sockets = 2
        breaker = \"20 A\"
        [[generator.outlet]]
        id = \"b\"
        shape = \"5-20R\"
        sockets = 2
        breaker = \"20 A\"
    ";
    let at = |watts: u32, hours: &str| {
        let head = plan("").replace("2400 W", "4000 W").replace("3000 W", "4000 W");
        let only = head[..head.find("[[").expect("an outlet")].to_owned();
        let loads = things(2, watts).replace("continuous = false", hours);
        let sharing = shared(&(only + outlets + &loads));
        let places = sharing.placed.iter().map(|placed| placed.at.to_string());
        places.collect::<Vec<_>>()
    };
    assert_eq!(at(950, "continuous = false"), ["a", "a"]);
    assert_eq!(at(1000, "continuous = false"), ["a", "b"]);
    // What runs for hours counts a quarter more.
    assert_eq!(at(750, "continuous = true"), ["a", "a"]);
    assert_eq!(at(950, "continuous = true"), ["a", "b"]);
}

/// Returns a pump with these running and starting watts.
fn pump(watts: u32, starting: u32) -> String {
    heater("pump", watts, &format!("starting = \"{starting} W\""))
        .replace("kind = \"heater\"", "kind = \"motor\"\n            power_factor = 1.0")
}

#[test]
fn any_order_of_what_may_run_together_holds() {
    let sharing = shared(&plan(&(heater("a", 1000, "") + &pump(600, 1800))));
    assert_eq!(sharing.start.verdict, StartVerdict::AnyOrder);
    assert_eq!(ids(&sharing.together), ["a pump"]);
    assert_eq!(ids(&[sharing.start.order, sharing.stop_order]), ["pump a", "a pump"]);
}

/// A medical load is switched off last, however large.
#[test]
fn a_life_is_switched_off_last() {
    for (kind, order) in [("medical", "b a"), ("cooker", "a b")] {
        let kind = format!("kind = \"{kind}\"");
        let known = "starting = \"1000 W\"\npower_factor = 1.0";
        let first = heater("a", 1000, known).replace("kind = \"heater\"", &kind);
        let sharing = shared(&plan(&(first + &heater("b", 500, ""))));
        assert_eq!(ids(&[sharing.stop_order]), [order]);
    }
}

#[test]
fn an_order_that_starts_the_pump_first_is_told_from_none() {
    // The peak is 3000 W, running 1000 + 600 W. By hand: pump first takes 2300 W, then the heater 1600 W. Heater first
    // takes 1000 + 2300 W.
    let sharing = shared(&plan(&(heater("a", 1000, "") + &pump(600, 2300))));
    assert_eq!(ids(&sharing.never), ["a pump"]);
    let start = sharing.start;
    assert_eq!(start.verdict, StartVerdict::ThisOrder);
    assert_eq!(ids(&[start.loads, start.order]), ["a pump", "pump a"]);
    assert_eq!(start.reason, None);
    // Two pumps of 700 W that start at 2500 W: in either order the second takes 700 + 2500 W.
    let two = pump(700, 2500) + &pump(700, 2500).replace("\"pump\"", "\"well\"");
    let sharing = shared(&plan(&(two + &heater("a", 200, "wanted = \"must\""))));
    assert_eq!(sharing.start.verdict, StartVerdict::NoOrder, "{:?}", sharing.start);
    assert_eq!(sharing.start.order, Vec::<Id>::new());
    assert!(sharing.start.reason.is_some_and(|load| load.as_str() != "a"));
}

#[test]
fn each_leg_has_its_own_limit() {
    // 4800 W on two legs is 20 A on each. Two of 12.5 A hold only on different legs. A 240 V load is on both.
    let text = |more: &str| {
        let outlet = |id: &str, leg: &str| {
            format!(
                r#"
                [[generator.outlet]]
                id = "{id}"
                shape = "5-20R"
                sockets = 1
                breaker = "20 A"
                leg = "{leg}"
                "#
            )
        };
        let head = r#"
            format = 1
            [site]
            ground = "dry"
            altitude = "0 ft"
            air = "70 °F"
            [generator]
            name = "set"
            rated = "4800 W"
            peak = "6000 W"
            voltage = "120/240 V"
            [[generator.outlet]]
            id = "large"
            shape = "L14-30R"
            breaker = "30 A"
        "#;
        let outlets = outlet("left", "A") + &outlet("right", "B");
        // Amps are per leg.
        let pump =
            heater("pump", 2400, "").replace("running = \"2400 W\"", "current = \"10 A\"").replace("5-15P", "L14-30P");
        let kettles = heater("one", 1500, "") + &heater("two", 1500, "");
        format!("{head}\n{outlets}\n{kettles}\n{pump}\n{more}")
    };
    let sharing = shared(&text(""));
    assert_eq!(sharing.unplaced, []);
    assert_eq!(ids(&sharing.together), ["one two", "pump"]);
    assert_eq!(ids(&sharing.never), ["one pump", "two pump"]);
}

/// A camper with a four-contact plug, on an adapter from a 120 V outlet: both of its hots are on that one leg, with all
/// of its current, which its watts at 120 V give. What its amps, which are per leg, would add up to there is unknown,
/// so with amps it has no place.
#[test]
fn a_four_contact_plug_runs_on_one_leg_by_its_watts() {
    let with = |draw: &str| {
        let adapter = "[[cord]]\nid = \"ad\"\nfrom = \"front\"\nplug = \"5-20P\"\nends = [\"14-50R\"]\n\
             wire = \"12 AWG\"\nconductors = 3\nlength = \"2 ft\"\ncoiled = false\n";
        plan(&format!(
            "{adapter}[[load]]\nid = \"coach\"\nname = \"coach\"\nkind = \"electronic\"\npower_factor = 1.0\n\
             {draw}\nplug = \"14-50P\"\ncontinuous = false\n"
        ))
    };
    let sharing = shared(&with("running = \"1500 W\""));
    let at: Vec<&str> = sharing.placed.iter().map(|it| it.at.as_str()).collect();
    assert_eq!(at, ["ad"]);
    // 12.5 A at 120 V.
    assert_eq!(sharing.start_order[0].peak_watts, Power::from_milliwatts(1_500_000));
    assert_eq!(shared(&with("current = \"12.5 A\"")).placed, []);
}

/// Three times 800 W is 2400 W: 20 A at 120 V, all of a 20 A breaker and of a 2400 W generator, although each alone is
/// 6.667 A, rounded up. Twice 1000 W is all of a 2000 W generator, although that is 16.666 A, rounded down. One watt
/// more is too much.
#[test]
fn what_is_rounded_is_rounded_once_all_is_added_up() {
    for (rated, each, holds) in [(2400, [800, 800, 800], true), (2400, [800, 800, 801], false)] {
        let loads: String =
            ["a", "b", "c"].iter().zip(each).map(|(id, watts)| heater(id, watts, "on = \"front\"")).collect();
        check_all(&loads, rated, holds);
    }
    for (watts, holds) in [(1000, true), (1001, false)] {
        let loads = heater("a", 1000, "on = \"front\"") + &heater("b", watts, "on = \"side\"");
        check_all(&loads, 2000, holds);
    }
}

/// Checks whether all of these run together, in every part of the report.
fn check_all(loads: &str, rated: u32, holds: bool) {
    let text = plan(loads).replace("sockets = 2", "sockets = 3").replace("70 °F", "60 °F").replace(
        "rated = \"2400 W\"\n        peak = \"3000 W\"",
        &format!("rated = \"{rated} W\"\n        peak = \"{rated} W\""),
    );
    assert!(text.contains(&format!("peak = \"{rated} W\"")));
    let plan = crate::plan::read(&text).expect("a plan that reads");
    let report = crate::judge::judge(&plan);
    let sharing = &report.figures.sharing;
    let all: Vec<Id> = plan.loads.iter().map(|load| load.id.clone()).collect();
    assert_eq!(sharing.never.is_empty(), holds, "{loads}");
    assert_eq!(sharing.together == [all.clone()], holds, "{:?}", sharing.together);
    let answer = crate::judge::ask::ask(&plan, &report, &all, &[]);
    assert_eq!(answer.over.is_empty(), holds, "{:?}", answer.over);
    let too_much = ["OVER002", "OVER006", "POWER001", "POWER002"];
    let told = report.findings.iter().any(|found| too_much.contains(&found.code));
    assert_eq!(told, !holds, "{:#?}", report.findings);
    let supply = Supply::build(&plan);
    let sums = crate::report::sums::Adder::new(&report, &supply).of_set(&all);
    assert_eq!(sums.iter().all(crate::report::sums::Sum::holds), holds, "{sums:?}");
}

/// Eleven heaters for six sockets: placing takes all the work that a trial has for it, and conflicts are found all the
/// same.
#[test]
fn a_trial_sees_what_cannot_run_together() {
    let outlets = ["one", "two", "three"]
        .map(|id| format!("[[generator.outlet]]\nid = \"{id}\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\n"));
    let loads = [
        ("long", 2, ""),
        ("short", 4, "continuous = false"),
        ("start", 1, "starting_current = \"25.1 A\""),
        ("both", 4, "continuous = false\nstarting_current = \"25.1 A\""),
    ];
    let loads = loads.map(|(id, count, more)| {
        format!(
            "[[load]]\nid = \"{id}\"\nname = \"{id}\"\nkind = \"heater\"\ncount = {count}\n\
             wanted = \"wish\"\nplug = \"5-15P\"\n{more}\n"
        )
    });
    let text = format!(
        "format = 1\n[site]\nground = \"dry\"\n[generator]\nname = \"set\"\n\
         rated = \"unknown\"\npeak = \"50000 W\"\nvoltage = \"unknown\"\n{}{}",
        outlets.concat(),
        loads.concat()
    );
    let plan = crate::plan::read(&text).expect("a plan that reads");
    let supply = Supply::build(&plan);
    let (units, _) = crate::loads::units(&plan);
    let trial = super::places(&plan, &supply, &Verdicts::of(&plan, &supply), &units);
    let whole = shared(&text);
    assert!(!whole.never.is_empty());
    assert_eq!(trial.never, whole.never);
}

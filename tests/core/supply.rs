//! The limit at each receptacle in plans as people write them. Each trap has a near miss.

use tallywatt::judge;
use tallywatt::plan::{self, Answer, Id, Plan};
use tallywatt::quantity::{Current, Quantity as _};
use tallywatt::report::{Limit, Report};
use tallywatt::supply::{DetachReason, LimitReason, Supply};

/// Sea level and cool, so that nothing is derated.
const SITE: &str = r#"
format = 1
region = "north-america"
[site]
name = "Test"
ground = "dry"
altitude = "0 ft"
air = "15 °C"
"#;

/// Builds a plan with a generator so powerful that it never sets a limit, with these outlets.
fn set(outlets: &str) -> String {
    format!(
        r#"{SITE}
[generator]
name = "set"
rated = "24 kW"
peak = "24 kW"
voltage = "120 V"
neutral = "floating"
inverter = true
{outlets}"#
    )
}

fn two_leg_set(rated: &str, outlets: &str) -> String {
    set(outlets)
        .replace(r#"rated = "24 kW""#, &format!(r#"rated = "{rated}""#))
        .replace(r#"peak = "24 kW""#, &format!(r#"peak = "{rated}""#))
        .replace(r#"voltage = "120 V""#, r#"voltage = "120/240 V""#)
}

fn outlet(id: &str, shape: &str, breaker: &str, more: &str) -> String {
    format!(
        "[[generator.outlet]]\nid = \"{id}\"\nshape = \"{shape}\"\nbreaker = \"{breaker}\"\n\
         gfci = false\n{more}\n"
    )
}

fn cord(id: &str, from: &str, plug: &str, ends: &str, wire: &str) -> String {
    format!(
        "[[cord]]\nid = \"{id}\"\nfrom = \"{from}\"\nplug = \"{plug}\"\nends = [{ends}]\n\
         wire = \"{wire}\"\nconductors = 3\nlength = \"25 ft\"\noutdoor = true\ncoiled = false\n"
    )
}

fn plan(text: &str) -> Plan {
    plan::read(text).unwrap_or_else(|problems| panic!("{problems:?}\n{text}"))
}

fn limit(report: &Report, id: &str) -> Limit {
    report
        .figures
        .limits
        .iter()
        .find(|limit| limit.id.as_str() == id)
        .unwrap_or_else(|| panic!("no limit for {id}"))
        .clone()
}

/// Returns the short and continuous amps of a receptacle, and what limits the short ones.
fn amps(text: &str, id: &str) -> (String, String, LimitReason) {
    let limit = limit(&judge::build(&plan(text)), id);
    (limit.short_amps.amount().to_string(), limit.continuous_amps.amount().to_string(), limit.set_by.reason)
}

fn is(found: &(String, String, LimitReason), short: &str, long: &str, reason: LimitReason) {
    assert_eq!((found.0.as_str(), found.1.as_str(), found.2), (short, long, reason));
}

/// Returns the current at which a receptacle is protected, in milliamperes.
fn protected(text: &str, id: &str) -> Option<i64> {
    let supply = Supply::build(&plan(text));
    let at = supply.receptacle(&Id::reference(id).unwrap()).unwrap();
    supply.node(at).protected_at.map(|(_, amps)| amps.milliamps())
}

fn assumed(text: &str) -> Vec<String> {
    judge::build(&plan(text))
        .figures
        .assumed
        .into_iter()
        .map(|assumption| format!("{} {}", assumption.field, assumption.why))
        .collect()
}

#[test]
fn largest_load_on_a_receptacle() {
    // NEC 210.21(B)(2), from a secondary copy: 12, 16, 24 A on 15, 20, 30 A receptacles.
    for (shape, breaker, short, long) in
        [("5-15R", "15 A", "15", "12"), ("5-20R", "20 A", "20", "16"), ("L5-30R", "30 A", "30", "24")]
    {
        let text = set(&outlet("front", shape, breaker, ""));
        is(&amps(&text, "front"), short, long, LimitReason::Breaker);
    }
    // A 15 A receptacle behind a 20 A breaker is still a 15 A receptacle, and nothing enforces that.
    let text = set(&outlet("front", "5-15R", "20 A", ""));
    is(&amps(&text, "front"), "15", "12", LimitReason::Receptacle);
    assert!(!limit(&judge::build(&plan(&text)), "front").set_by.enforced);
}

#[test]
fn a_breaker_that_trips_early() {
    let early = set(&outlet("front", "5-20R", "20 A", "trips_at = \"17 A\""));
    // The next whole ampere below, since at 17 A it tripped (common practice, no source).
    is(&amps(&early, "front"), "16", "12.8", LimitReason::TripsEarly);
    // Wire downstream may not count on the early trip.
    assert_eq!(protected(&early, "front"), Some(20_000));
    // It was seen to trip above its marking, so the marking holds.
    let late = set(&outlet("front", "5-20R", "20 A", "trips_at = \"22 A\""));
    is(&amps(&late, "front"), "20", "16", LimitReason::Breaker);
    // The label still shows 20 A.
    let marked = limit(&judge::build(&plan(&early)), "front").marked_amps;
    assert_eq!(marked.amount().to_string(), "20");
}

#[test]
fn outlets_that_share_a_breaker_share_its_node() {
    let text = set(&format!(
        "{}{}",
        outlet("left", "5-20R", "20 A", "trips_at = \"18 A\""),
        "[[generator.outlet]]\nid = \"right\"\nshape = \"L5-20R\"\nshares = \"left\"\ngfci = false\n"
    ));
    let supply = Supply::build(&plan(&text));
    let parent = |id: &str| {
        let at = supply.receptacle(&Id::new(id).unwrap()).unwrap();
        supply.node(at).parent.unwrap()
    };
    assert_eq!(parent("left"), parent("right"));
    is(&amps(&text, "right"), "17", "13.6", LimitReason::TripsEarly);
    // Both halves of a duplex are one node: two sockets, one limit.
    let duplex = supply.receptacles().next().unwrap();
    assert_eq!((duplex.1.id.as_str(), duplex.3), ("left", 2));
    // Without `shares` each has its own breaker.
    let apart = set(&format!(
        "{}{}",
        outlet("left", "5-20R", "20 A", "trips_at = \"18 A\""),
        outlet("right", "L5-20R", "20 A", "")
    ));
    is(&amps(&apart, "right"), "20", "16", LimitReason::Breaker);
}

#[test]
fn every_end_of_a_cord_is_behind_one_cord() {
    let text = format!(
        "{}{}",
        set(&outlet("front", "5-20R", "20 A", "")),
        cord("three", "front", "5-15P", "\"5-15R\", \"5-15R\", \"5-15R\"", "12 AWG")
    );
    let supply = Supply::build(&plan(&text));
    let parents: Vec<_> = ["three.1", "three.2", "three.3"]
        .iter()
        .map(|id| {
            let at = supply.receptacle(&Id::reference(id).unwrap()).unwrap();
            supply.node(at).parent.unwrap()
        })
        .collect();
    assert!(parents.iter().all(|parent| *parent == parents[0]));
    // The 15 A plug limits all three together, which the 20 A breaker does not enforce.
    let limit = limit(&judge::build(&plan(&text)), "three.2");
    assert_eq!(limit.short_amps.amount().to_string(), "15");
    assert!(!limit.set_by.enforced);
    let path: Vec<&str> = limit.path.iter().map(Id::as_str).collect();
    assert_eq!(path, ["front", "three", "three.2"]);
}

#[test]
fn an_unknown_breaker_carries_little_and_protects_nothing() {
    for breaker in ["breaker = \"unknown\"", ""] {
        let text = set(&outlet("front", "L5-30R", "30 A", "")).replace("breaker = \"30 A\"", breaker);
        is(&amps(&text, "front"), "30", "24", LimitReason::Receptacle);
        assert_eq!(protected(&text, "front"), None);
        assert!(assumed(&text).contains(&"generator.outlet.front.breaker breaker-unknown".to_owned()));
    }
    let known = set(&outlet("front", "L5-30R", "30 A", ""));
    assert_eq!(protected(&known, "front"), Some(30_000));
    assert!(!assumed(&known).iter().any(|text| text.contains("breaker")));
}

/// Builds a plan with a box on a 30 A twist-lock, with these lines for its one outlet.
fn boxed(listed: &str, lines: &str) -> String {
    format!(
        "{}[[box]]\nid = \"box\"\nfrom = \"twist\"\ninlet = \"L5-30P\"\nlisted = {listed}\n\
         bond = false\n[[box.outlet]]\nid = \"left\"\nshape = \"5-20R\"\ngfci = true\n{lines}\n",
        set(&outlet("twist", "L5-30R", "30 A", ""))
    )
}

#[test]
fn a_box_outlet_without_a_breaker_is_protected_from_upstream() {
    let without = boxed("true", "");
    assert_eq!(protected(&without, "left"), Some(30_000));
    is(&amps(&without, "left"), "20", "16", LimitReason::Receptacle);
    let unknown = boxed("true", "breaker = \"unknown\"");
    assert_eq!(protected(&unknown, "left"), Some(30_000));
    assert!(assumed(&unknown).contains(&"box.box.outlet.left.breaker no-breaker".to_owned()));
    let with = boxed("true", "breaker = \"20 A\"");
    assert_eq!(protected(&with, "left"), Some(20_000));
    is(&amps(&with, "left"), "20", "16", LimitReason::Breaker);
    // A breaker larger than the feed's adds no protection, since the feed's still trips first.
    let large = boxed("true", "breaker = \"50 A\"");
    assert_eq!(protected(&large, "left"), Some(30_000));
}

#[test]
fn wiring_of_a_box() {
    let thin = boxed("true", "breaker = \"20 A\"\nwire = \"14 AWG\"");
    is(&amps(&thin, "left"), "15", "12", LimitReason::Wiring);
    let right = boxed("true", "breaker = \"20 A\"\nwire = \"12 AWG\"");
    is(&amps(&right, "left"), "20", "16", LimitReason::Breaker);
    // Of unknown wire, a listed box is taken to have what it needs, and a homemade one 18 AWG with 7 A.
    let home = boxed("false", "breaker = \"20 A\"\nwire = \"unknown\"");
    is(&amps(&home, "left"), "7", "5.6", LimitReason::Wiring);
    assert!(assumed(&home).contains(&"box.box.outlet.left.wire box-wire".to_owned()));
    let listed = boxed("true", "breaker = \"20 A\"\nwire = \"unknown\"");
    is(&amps(&listed, "left"), "20", "16", LimitReason::Breaker);
}

#[test]
fn a_cord_set_limits_what_no_breaker_enforces() {
    // NEC table 400.5(A)(1): 16 AWG with two current-carrying conductors, 13 A.
    let with = |wire: &str| {
        format!("{}{}", set(&outlet("front", "5-15R", "15 A", "")), cord("cord", "front", "5-15P", "\"5-15R\"", wire))
    };
    let thin = with("16 AWG");
    is(&amps(&thin, "cord"), "13", "12", LimitReason::CordAmpacity);
    assert!(!limit(&judge::build(&plan(&thin)), "cord").set_by.enforced);
    assert_eq!(protected(&thin, "cord"), Some(15_000));
    let thick = with("14 AWG");
    is(&amps(&thick, "cord"), "15", "12", LimitReason::Breaker);
}

/// NEC 400.5(A), 2023 (from a secondary copy): a neutral that carries only the unbalanced current does not count. So
/// column B of table 400.5(A)(1) applies to a cord with two hots and a neutral: 30 A for 10 AWG.
#[test]
fn a_neutral_between_two_legs_does_not_count() {
    let with = |wire: &str| {
        format!(
            "{}{}",
            two_leg_set("9000 W", &outlet("four", "L14-30R", "30 A", "")),
            cord("cord", "four", "L14-30P", "\"L14-30R\"", wire)
        )
    };
    is(&amps(&with("10 AWG"), "cord"), "30", "24", LimitReason::Breaker);
    is(&amps(&with("12 AWG"), "cord"), "25", "24", LimitReason::CordAmpacity);
    // A splitter may use both legs. An adapter to one leg cannot.
    for ends in ["\"TT-30R\", \"TT-30R\"", "\"TT-30R\""] {
        let text = with("10 AWG").replace("ends = [\"L14-30R\"]", &format!("ends = [{ends}]"));
        let id = if ends.contains(',') { "cord.1" } else { "cord" };
        is(&amps(&text, id), "30", "24", LimitReason::Breaker);
    }
}

#[test]
fn a_coiled_cord_carries_a_third() {
    let flat = format!(
        "{}{}",
        set(&outlet("front", "5-20R", "20 A", "")),
        cord("cord", "front", "5-15P", "\"5-15R\"", "14 AWG")
    );
    is(&amps(&flat, "cord"), "15", "12", LimitReason::Receptacle);
    // A third of 18 A.
    let coiled = flat.replace("coiled = false", "coiled = true");
    is(&amps(&coiled, "cord"), "6", "6", LimitReason::CoiledCord);
    let unknown = flat.replace("coiled = false", "coiled = \"unknown\"");
    is(&amps(&unknown, "cord"), "6", "6", LimitReason::CoiledCord);
    assert!(assumed(&unknown).contains(&"cord.cord.coiled cord-coiled".to_owned()));
    // A half-foot adapter cannot be coiled.
    let adapter = unknown.replace("25 ft", "6 in");
    is(&amps(&adapter, "cord"), "15", "12", LimitReason::Receptacle);
}

#[test]
fn an_unknown_cord_is_taken_for_the_worst() {
    let text = format!(
        "{}{}",
        set(&outlet("front", "5-20R", "20 A", "")),
        cord("cord", "front", "5-15P", "\"5-15R\"", "unknown")
            .replace("\"25 ft\"", "\"unknown\"")
            .replace("conductors = 3", "conductors = \"unknown\"")
    );
    // UL 817 as quoted by a cord supplier: 18 AWG longer than 50 ft is marked 7 A.
    is(&amps(&text, "cord"), "7", "7", LimitReason::CordMark);
    let assumed = assumed(&text);
    for expected in ["cord.cord.wire cord-wire", "cord.cord.length cord-length", "cord.cord.conductors cord-conductors"]
    {
        assert!(assumed.iter().any(|text| text == expected), "{expected}");
    }
    // 100 ft of 18 AWG out and back: 0.2 x 7.95 ohm (NEC chapter 9 table 8).
    let supply = Supply::build(&plan(&text));
    let at = supply.receptacle(&Id::new("cord").unwrap()).unwrap();
    assert_eq!(supply.resistance_to(at).microohms(), 1_590_000);
}

#[test]
fn a_splitter_without_breakers_and_a_box_with_them() {
    let splitter = format!(
        "{}{}",
        set(&outlet("twist", "L5-30R", "30 A", "")),
        cord("split", "twist", "L5-30P", "\"5-20R\", \"5-20R\", \"5-20R\"", "10 AWG")
    );
    for end in ["split.1", "split.2", "split.3"] {
        // Rated 20 A, but 30 A flows before anything trips.
        is(&amps(&splitter, end), "20", "16", LimitReason::Receptacle);
        assert_eq!(protected(&splitter, end), Some(30_000));
    }
    let with_breakers = boxed("true", "breaker = \"20 A\"");
    assert_eq!(protected(&with_breakers, "left"), Some(20_000));
}

#[test]
fn going_up_in_shape_keeps_the_plugs_limit() {
    let text = format!(
        "{}{}",
        set(&outlet("front", "5-20R", "20 A", "")),
        cord("up", "front", "5-15P", "\"TT-30R\"", "10 AWG")
    );
    is(&amps(&text, "up"), "15", "15", LimitReason::Plug);
    // Near miss: a 30 A plug in a 30 A outlet.
    let level = format!(
        "{}{}",
        set(&outlet("twist", "L5-30R", "30 A", "")),
        cord("up", "twist", "L5-30P", "\"TT-30R\"", "10 AWG")
    );
    is(&amps(&level, "up"), "30", "24", LimitReason::Breaker);
}

#[test]
fn one_leg_of_two_is_half_the_power() {
    let text = format!(
        "{}{}",
        two_leg_set("4800 W", &outlet("big", "L14-30R", "20 A", "")),
        cord("adapter", "big", "L14-30P", "\"5-20R\"", "10 AWG")
    );
    let report = judge::build(&plan(&text));
    // 4,800 W is 2,400 W on each leg, 20 A.
    let whole = limit(&report, "big");
    assert_eq!(whole.volts.amount().to_string(), "240");
    assert_eq!(whole.short_amps.amount().to_string(), "20");
    assert_eq!(whole.short_watts.amount().to_string(), "4800");
    // The breaker trips there. Nothing promises that one leg stops by itself.
    assert_eq!(whole.set_by.reason, LimitReason::Breaker);
    let half = limit(&report, "adapter");
    assert_eq!(half.volts.amount().to_string(), "120");
    assert_eq!(half.short_watts.amount().to_string(), "2400");
    assert_eq!(half.set_by.reason, LimitReason::Breaker);
    let less = text.replace("4800 W", "4600 W");
    assert_eq!(limit(&judge::build(&plan(&less)), "adapter").set_by.reason, LimitReason::OneLeg);
    // The power of the other leg is stranded.
    let usable = &report.figures.usable;
    assert_eq!(usable.reachable_watts.amount().to_string(), "2400");
    assert_eq!(usable.stranded_watts.amount().to_string(), "2400");
    assert!(assumed(&text).contains(&"cord.adapter.leg leg".to_owned()));
    // A cord with both legs and the neutral reaches all of it.
    let both = text.replace("ends = [\"5-20R\"]", "ends = [\"L14-30R\"]").replace("conductors = 3", "conductors = 4");
    let report = judge::build(&plan(&both));
    assert_eq!(report.figures.usable.stranded_watts.amount().to_string(), "0");
}

#[test]
fn legs_of_outlets() {
    let known = two_leg_set(
        "4800 W",
        &format!("{}{}", outlet("one", "5-20R", "20 A", "leg = \"A\""), outlet("two", "5-20R", "20 A", "leg = \"B\"")),
    );
    let reach = |text: &str| {
        let usable = judge::build(&plan(text)).figures.usable;
        usable.reachable_watts.amount().to_string()
    };
    assert_eq!(reach(&known), "4800");
    // With an unknown leg both are taken to be on leg A, which leaves the least.
    let unknown = known.replace("leg = \"B\"", "leg = \"unknown\"");
    assert_eq!(reach(&unknown), "2400");
    assert!(assumed(&unknown).contains(&"generator.outlet.two.leg leg".to_owned()));
}

#[test]
fn shapes_that_cannot_be_fed() {
    // 240 V from a 120 V generator.
    let text = set(&outlet("odd", "6-20R", "20 A", ""));
    is(&amps(&text, "odd"), "0", "0", LimitReason::NotFed);
    // 120 V from a 240 V outlet without a neutral.
    let text = format!(
        "{}{}",
        two_leg_set("4800 W", &outlet("heavy", "6-20R", "20 A", "")),
        cord("bad", "heavy", "6-20P", "\"5-20R\"", "12 AWG")
    );
    is(&amps(&text, "bad"), "0", "0", LimitReason::NotFed);
    is(&amps(&text, "heavy"), "20", "16", LimitReason::Breaker);
    // Joining two hots on one leg brings 120 V to a four-pole shape.
    let text = format!(
        "{}{}",
        set(&outlet("twist", "L5-30R", "30 A", "")),
        cord("up", "twist", "L5-30P", "\"14-50R\"", "10 AWG")
    );
    is(&amps(&text, "up"), "30", "24", LimitReason::Breaker);
}

#[test]
fn branches_may_add_up_to_more_than_the_feed() {
    let branch =
        |id: &str| format!("[[box.outlet]]\nid = \"{id}\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\ngfci = true\n");
    let text = format!("{}{}{}", boxed("true", "breaker = \"20 A\""), branch("b"), branch("c"));
    // Each branch keeps its 20 A. All three are fed by the one inlet, whose limit applies to the sum.
    for id in ["left", "b", "c"] {
        is(&amps(&text, id), "20", "16", LimitReason::Breaker);
    }
    let supply = Supply::build(&plan(&text));
    let (inlet, _) = supply.nodes.iter().enumerate().find(|(_, node)| node.id.as_str() == "box").unwrap();
    let fed = supply.fed_from(tallywatt::supply::NodeIx(inlet)).map(|(_, node)| node.rating).sum::<Current>();
    assert_eq!(fed.milliamps(), 60_000);
    assert_eq!(supply.limit(tallywatt::supply::NodeIx(inlet)).short.milliamps(), 30_000);
    // The feed also limits what can be reached.
    let usable = judge::build(&plan(&text)).figures.usable;
    assert_eq!(usable.reachable_watts.amount().to_string(), "3600");
}

#[test]
fn ground_fault_protection_covers_what_is_downstream() {
    let text = format!(
        "{}{}",
        set(&outlet("front", "5-20R", "20 A", "")).replace("gfci = false", "gfci = true"),
        cord("cord", "front", "5-15P", "\"5-15R\"", "12 AWG")
    );
    let gfci = |text: &str, id: &str| limit(&judge::build(&plan(text)), id).gfci;
    assert!(gfci(&text, "front") && gfci(&text, "cord"));
    let without = text.replace("gfci = true", "gfci = \"unknown\"");
    assert!(!gfci(&without, "front") && !gfci(&without, "cord"));
    // Built into a cord, it covers the cord's end but not the outlet.
    let in_cord = format!("{}gfci = true\n", text.replace("gfci = true", "gfci = false"));
    assert!(!gfci(&in_cord, "front") && gfci(&in_cord, "cord"));
}

#[test]
fn parts_that_hang_on_nothing() {
    let text = format!(
        "{}{}{}{}",
        set(&outlet("twist", "L5-30R", "30 A", "")),
        cord("a", "twist", "L5-30P", "\"L5-30R\"", "10 AWG"),
        cord("b", "a", "L5-30P", "\"L5-30R\"", "10 AWG"),
        cord("c", "b", "L5-30P", "\"L5-30R\"", "10 AWG"),
    );
    let good = plan(&text);
    assert_eq!(Supply::build(&good).detached, []);
    let reasons = |plan: &Plan| -> Vec<(String, DetachReason)> {
        Supply::build(plan).detached.into_iter().map(|detached| (detached.id.to_string(), detached.reason)).collect()
    };
    let found = |list: &[(&str, DetachReason)]| -> Vec<(String, DetachReason)> {
        list.iter().map(|(id, reason)| ((*id).to_owned(), *reason)).collect()
    };
    // The changes are made to the plan itself, because most of these plan files would be refused.
    let with = |change: &dyn Fn(&mut Plan)| {
        let mut plan = good.clone();
        change(&mut plan);
        reasons(&plan)
    };
    assert_eq!(
        with(&|plan| plan.cords[0].from = None),
        found(&[
            ("a", DetachReason::NotPluggedIn),
            ("b", DetachReason::UpstreamDetached),
            ("c", DetachReason::UpstreamDetached)
        ])
    );
    assert_eq!(with(&|plan| plan.cords[2].from = Id::new("nowhere")), found(&[("c", DetachReason::NoSuchReceptacle)]));
    // Plugged in or not, a cord of unknown shape is not used.
    let unknown = found(&[("b", DetachReason::UnknownShape), ("c", DetachReason::UpstreamDetached)]);
    assert_eq!(with(&|plan| plan.cords[1].plug = Answer::Unknown), unknown);
    assert_eq!(
        with(&|plan| plan.cords[2].plug = Answer::Known(tallywatt::tables::shape::Plug::named("TT-30P").unwrap())),
        found(&[("c", DetachReason::PlugDoesNotFit)])
    );
    assert_eq!(with(&|plan| plan.cords[2].from = Id::new("twist")), found(&[("c", DetachReason::NoFreeSocket)]));
    assert_eq!(
        with(&|plan| plan.cords[1].from = Id::new("c")),
        found(&[("b", DetachReason::Loop), ("c", DetachReason::Loop)])
    );
}

#[test]
fn an_unknown_site_costs_power() {
    let text = set(&outlet("front", "5-20R", "20 A", ""))
        .replace("rated = \"24 kW\"", "rated = \"2000 W\"")
        .replace("altitude = \"0 ft\"\nair = \"15 °C\"\n", "");
    let plan = plan(&text);
    assert!(!plan.site.altitude.is_known());
    let supply = Supply::build(&plan);
    // 5,000 ft at 3.5 % per 1000 ft and 40 °F at 1 % per 10 °F: 78.5 % of 2000 W.
    assert_eq!(supply.rated.milliwatts(), 1_570_000);
    let mut known = plan.clone();
    known.site.altitude = Answer::Known(tallywatt::quantity::Length::ZERO);
    known.site.air = Answer::Known(tallywatt::quantity::Temperature::ZERO);
    assert_eq!(Supply::build(&known).rated.milliwatts(), 2_000_000);
}

/// Returns the volts lost while running and while starting, and the percentage while running, at the only load.
fn drop_of(load: &str) -> (String, String, String) {
    let text = format!(
        "{}{}[[load]]\nid = \"x\"\nname = \"X\"\nplug = \"5-15P\"\non = \"cord\"\n\
         continuous = false\n{load}\n",
        set(&outlet("front", "5-20R", "20 A", "")),
        cord("cord", "front", "5-15P", "\"5-15R\"", "14 AWG").replace("25 ft", "100 ft")
    );
    let report = judge::build(&plan(&text));
    let [drop] = report.figures.drops.as_slice() else { panic!("{:?}", report.figures.drops) };
    (
        drop.volts_running.amount().to_string(),
        drop.volts_starting.amount().to_string(),
        drop.percent_running.amount().to_string(),
    )
}

#[test]
fn drop_of_constant_power_against_a_power_flow() {
    // 120 V, 3.14 ohm/kft, 100 ft, 1500 W: a power-flow library (pandapower 3.5.6) and exact algebra leave 111.556 V to
    // a load of constant power. That is 8.4442 V lost, rounded up.
    let (running, ..) = drop_of("kind = \"electronic\"\nrunning = \"1500 W\"\npower_factor = 1.0");
    assert_eq!(running, "8.445");
}

#[test]
fn drop_of_a_heater_against_a_power_flow() {
    // The same line and watts leave 112.632 V to a resistance, which draws less current at less voltage: 120 x 0.628 /
    // (9.6 + 0.628) = 7.3680 V lost, rounded up. It draws no more while starting.
    let (running, starting, percent) = drop_of("kind = \"heater\"\nrunning = \"1500 W\"");
    assert_eq!((running.as_str(), starting.as_str()), ("7.369", "7.369"));
    assert_eq!(percent, "6.141");
}

#[test]
fn dip_while_a_motor_starts() {
    // NEC table 430.248 and 430.251(A): 1/6 hp, 4.4 A, locked rotor 26.4 A; times 0.628 ohm.
    let (_, starting, _) = drop_of("kind = \"motor\"\nmotor = { hp = \"1/6\" }");
    assert_eq!(starting, "16.58");
}

#[test]
fn fuel_and_noise_of_a_plan() {
    let text = format!(
        "{}{}{}",
        SITE.replace("[site]\n", "[site]\nsleepers_at = \"80 ft\"\n"),
        "[generator]\nname = \"set\"\nrated = \"2000 W\"\npeak = \"2000 W\"\nvoltage = \"120 V\"\n\
         tank = \"4 L\"\n\
         runtime = [{ load = \"25 %\", lasts = \"8 h\" }, { load = \"100 %\", lasts = \"3 h\" }]\n\
         noise = { level = \"72 dBA\", at = \"20 ft\" }\n",
        outlet("front", "5-20R", "20 A", "")
            + "[[load]]\nid = \"x\"\nname = \"X\"\nkind = \"heater\"\nrunning = \"1250 W\"\n\
               plug = \"5-15P\"\nhours = [\"06:00-07:30\", \"18:00-19:00\"]\n"
    );
    let figures = judge::build(&plan(&text)).figures;
    // 2.5 h at 1250 W, halfway between the published loads: (1/8 + 1/3) / 2 tanks an hour, plus a tenth: 0.252083.
    let energy = figures.energy;
    assert_eq!(energy.watt_hours_per_day.unwrap().amount().to_string(), "3125");
    assert_eq!(energy.hours_per_tank.unwrap().amount().to_string(), "3.966");
    // 4 L x 2.5 x 0.252083 = 2.52083 L, rounded up.
    assert_eq!(energy.fuel_per_day.unwrap().amount().to_string(), "2.521");
    assert_eq!(energy.peak_hour.unwrap().hour, 6);
    // 12.04 dB from 20 to 80 ft (a table of the audio trade): 59.96 dB(A).
    let level = figures.noise.at_sleepers_dba.unwrap().amount().to_string();
    assert!(level.starts_with("59.9"), "{level}");
}

#[test]
fn a_box_behind_a_box() {
    let text = format!(
        "{}{}{}{}",
        boxed("true", "breaker = \"20 A\""),
        "[[box.outlet]]\nid = \"through\"\nshape = \"L5-30R\"\ngfci = false\n",
        cord("link", "through", "L5-30P", "\"L5-30R\"", "10 AWG"),
        "[[box]]\nid = \"second\"\nfrom = \"link\"\ninlet = \"L5-30P\"\nlisted = true\n\
         bond = false\n[[box.outlet]]\nid = \"far\"\nshape = \"5-15R\"\nbreaker = \"15 A\"\n\
         gfci = true\n[[box.outlet]]\nid = \"bare\"\nshape = \"5-15R\"\ngfci = false\n"
    );
    let report = judge::build(&plan(&text));
    let far = limit(&report, "far");
    let path: Vec<&str> = far.path.iter().map(Id::as_str).collect();
    assert_eq!(path, ["twist", "box", "through", "link", "second", "far"]);
    is(&amps(&text, "far"), "15", "12", LimitReason::Breaker);
    assert_eq!(protected(&text, "far"), Some(15_000));
    // Two boxes down, a 15 A receptacle without a breaker is still protected only at 30 A.
    is(&amps(&text, "bare"), "15", "12", LimitReason::Receptacle);
    assert_eq!(protected(&text, "bare"), Some(30_000));
    // Protection at one receptacle of a box does not cover the next one.
    assert!(far.gfci && !limit(&report, "bare").gfci);
}

#[test]
fn power_that_the_outlets_in_use_cannot_reach() {
    let with = |rest: &str| {
        let text = format!(
            "{}{rest}",
            set(&format!("{}{}", outlet("front", "5-20R", "20 A", ""), outlet("twist", "L5-30R", "30 A", "")))
                .replace("24 kW", "3600 W")
        );
        let usable = judge::build(&plan(&text)).figures.usable;
        (usable.reachable_watts.amount().to_string(), usable.stranded_watts.amount().to_string())
    };
    let is = |found: (String, String), reachable: &str, stranded: &str| {
        assert_eq!((found.0.as_str(), found.1.as_str()), (reachable, stranded));
    };
    let kettle = |on: &str| {
        format!(
            "[[load]]\nid = \"kettle\"\nname = \"Kettle\"\nkind = \"heater\"\nrunning = \"1500 W\"\n\
             plug = \"5-15P\"\non = \"{on}\"\ncontinuous = false\n"
        )
    };
    // 20 A of 30 A at 120 V.
    is(with(&kettle("front")), "2400", "1200");
    // A cord on the other outlet reaches all of it.
    let longer = |wire| cord("longer", "twist", "L5-30P", "\"L5-30R\"", wire);
    is(with(&longer("10 AWG")), "3600", "0");
    // A cord too thin for its breaker must not be used and carries nothing.
    is(with(&longer("14 AWG")), "0", "3600");
    is(with(&(longer("14 AWG") + &kettle("front"))), "2400", "1200");
    // With nothing plugged in, all outlets count.
    is(with(""), "3600", "0");
}

#[test]
fn a_plate_nobody_has_read_is_the_smallest_set() {
    let text = tallywatt::plan::demo::WEEKEND;
    let known = tallywatt::judge::build(&tallywatt::plan::read(text).expect("a plan"));
    let text = text.replacen("rated = \"2800 W\"", "rated = \"unknown\"", 1);
    let unknown = tallywatt::judge::build(&tallywatt::plan::read(&text).expect("a plan"));
    assert!(unknown.figures.usable.rated_watts < known.figures.usable.rated_watts);
    // The assumption is reported, and shares of an unknown load give no running time.
    assert!(unknown.figures.assumed.iter().any(|assumed| assumed.field == "generator.rated"));
    assert_eq!(unknown.figures.energy.hours_per_tank, None);
}

#[test]
fn an_unknown_voltage_gives_each_outlet_half() {
    let text = tallywatt::plan::demo::WEEKEND;
    let known = tallywatt::judge::build(&tallywatt::plan::read(text).expect("a plan"));
    let text = text.replacen("voltage = \"120 V\"", "voltage = \"unknown\"", 1);
    let unknown = tallywatt::judge::build(&tallywatt::plan::read(&text).expect("a plan"));
    let amps = |report: &tallywatt::report::Report| {
        let twist = report.figures.limits.iter().find(|limit| limit.id.as_str() == "twist");
        twist.expect("it is fed").short_amps
    };
    // The generator's 2310 W at 120 V, and half of it.
    assert_eq!(amps(&known), Current::from_milliamps(19_250));
    assert_eq!(amps(&unknown), Current::from_milliamps(9_625));
    assert!(unknown.figures.assumed.iter().any(|assumed| assumed.field == "generator.voltage"));
}

#[test]
fn only_an_inverter_set_cuts_out_by_itself() {
    let thin = tallywatt::plan::demo::WEEKEND;
    let thick =
        thin.replace("altitude = \"4200 ft\"", "altitude = \"0 ft\"").replace("air = \"88 °F\"", "air = \"59 °F\"");
    let long = |text: &str, inverter: &str| {
        let text = text.replacen("inverter = true", inverter, 1);
        let report = tallywatt::judge::build(&tallywatt::plan::read(&text).expect("a plan"));
        let assumed = report.figures.assumed.iter().any(|one| one.field == "generator.inverter");
        let limits = report.figures.limits;
        let limit = limits.into_iter().find(|limit| limit.id.as_str() == "long");
        let set_by = limit.expect("it is fed").set_by;
        (set_by.reason.code(), set_by.enforced, assumed)
    };
    assert_eq!(long(&thick, "inverter = true"), ("rated-power", true, false));
    // Its electronics allow the marked power, but thin, hot air leaves the engine less.
    assert_eq!(long(thin, "inverter = true"), ("rated-power-unguarded", false, false));
    assert_eq!(long(&thick, "inverter = false"), ("rated-power-unguarded", false, false));
    assert_eq!(long(&thick, "inverter = \"unknown\""), ("rated-power-unguarded", false, true));
    assert_eq!(long(&thick, ""), ("rated-power-unguarded", false, true));
}

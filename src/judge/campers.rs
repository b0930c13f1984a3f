//! A camper from plan to report: a sound one, and variants with something wrong.

use crate::plan::{self, Id};
use crate::quantity::Current;
use crate::report::{Admits, Report, Signal};
use crate::supply::{LimitReason, Supply};

const SOUND: &str = include_str!("../../tests/plans/usual/s11-camper-inside.toml");

/// Returns the sound plan with some lines replaced.
fn edited(edits: &[(&str, &str)]) -> crate::plan::Plan {
    let mut text = SOUND.to_owned();
    for (was, is) in edits {
        assert_eq!(text.matches(was).count(), 1, "{was}");
        text = text.replace(was, is);
    }
    plan::read(&text).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn report(edits: &[(&str, &str)]) -> Report {
    super::build(&edited(edits))
}

fn id(text: &str) -> Id {
    Id::new(text).expect("an id")
}

/// Returns what a rule finds, each with its signal, remedy and subjects.
fn found(report: &Report, code: &str) -> Vec<(Signal, &'static str, Vec<String>)> {
    let findings = report.findings.iter().filter(|it| it.code == code);
    let told = findings.map(|it| {
        let about = it.about.iter().map(ToString::to_string);
        (it.signal, it.fix.key, about.collect())
    });
    told.collect()
}

/// Returns the reasons for the assumptions about the camper.
fn assumed(report: &Report) -> Vec<&'static str> {
    let assumed = report.figures.assumed.iter();
    let of_it = assumed.filter(|it| it.field.starts_with("box.camper."));
    of_it.map(|it| it.why).collect()
}

#[test]
fn what_is_true_of_every_camper_is_assumed_by_name() {
    let sound = report(&[]);
    assert_eq!(sound.worst().filter(|worst| *worst <= Signal::Warning), None);
    let always = ["camper-listed", "camper-bond", "camper-gfci", "camper-cord"];
    assert_eq!(assumed(&sound), always);
    let unread = report(&[("inlet = \"TT-30P\"\nbreaker = \"30 A\"", "inlet = \"TT-30P\"")]);
    assert_eq!(assumed(&unread), [&["camper-main"][..], &always].concat());
    let main = unread.figures.assumed.iter().find(|it| it.why == "camper-main");
    assert_eq!(main.map(|it| it.field.as_str()), Some("box.camper.breaker"));
    // No look is needed while nothing rests on these.
    assert_eq!(unread.figures.looks, []);
}

/// With a 30 A plug, main breaker and outlet: 24 A for hours, and otherwise 28.3 A, which is 3400 W. With a 20 A main
/// breaker: 16 A and 20 A.
#[test]
fn its_main_limits_what_runs_inside() {
    for (main, long, short) in [("30 A", 24_000, 28_333), ("20 A", 16_000, 20_000)] {
        let main = format!("inlet = \"TT-30P\"\nbreaker = \"{main}\"");
        let report = report(&[
            ("inlet = \"TT-30P\"\nbreaker = \"30 A\"", &main),
            ("altitude = \"600 ft\"", "altitude = \"0 ft\""),
            ("air = \"86 °F\"", "air = \"59 °F\""),
        ]);
        let limit = report.figures.limits.iter().find(|it| it.id == id("camper"));
        let limit = limit.expect("it has one");
        assert!(limit.inside);
        assert_eq!(limit.told_shape(), "TT-30P");
        let amps = [limit.continuous_amps, limit.short_amps].map(Current::milliamps);
        assert_eq!(amps, [long, short], "{main}");
        let verdict = report.verdict(&id("camper")).expect("it has one");
        assert_eq!(verdict.admits, Admits::Everything);
        assert_eq!(verdict.loads.len(), 3);
    }
}

/// What runs inside is placed nowhere else, and nothing else is placed there. A lamp with the camper's kind of plug has
/// no place.
#[test]
fn only_what_runs_inside_is_inside() {
    let lamp = "[[load]]\nid = \"twin\"\nkind = \"electronic\"\nrunning = \"100 W\"\ncontinuous = false\n\
                plug = \"TT-30P\"\n\n[[load]]\nid = \"roof\"";
    let report = report(&[("[[load]]\nid = \"roof\"", lamp)]);
    let placed = report.figures.sharing.placed.iter();
    let inside: Vec<&str> = placed.filter(|it| it.at == id("camper")).map(|it| it.load.as_str()).collect();
    assert_eq!(inside, ["roof", "converter", "microwave"]);
    assert!(report.figures.sharing.without_place(&id("twin")).is_some());
}

/// An adapter people call a dogbone: a household plug ahead of the camper. Its 15 A plug limits everything that runs
/// inside, and the 20 A breaker trips only above that.
#[test]
fn an_adapter_from_a_household_outlet_limits_all_of_it() {
    let adapter = "[[cord]]\nid = \"dogbone\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"TT-30R\"]\nwire = \"10 AWG\"\n\
                   conductors = 3\nlength = \"1 ft\"\noutdoor = true\ncoiled = false\n\n[[box]]";
    let from = ("from = \"rv\"", "from = \"dogbone\"");
    let edits = [("[[box]]", adapter), from];
    let plan = edited(&edits);
    let supply = Supply::build(&plan);
    let at = supply.receptacle(&id("camper")).expect("it is fed");
    let limit = supply.limit(at);
    assert_eq!(limit.short.milliamps(), 15_000);
    assert_eq!(limit.short_by.reason, LimitReason::Plug);
    // At their power factors, 1250 W and 420 W are 11.0 A and 3.9 A, and the microwave takes 11.9 A: never all three.
    let at_noon = [("hours = [\"18:00-18:30\"]", "hours = [\"13:00-13:30\"]")];
    let report = report(&[&edits[..], &at_noon].concat());
    let together = &report.figures.sharing.together;
    assert!(together.iter().all(|set| set.len() < 3), "{together:?}");
    assert_eq!(found(&report, "CORD001")[0].0, Signal::Warning);
    let words = crate::words::Words::english();
    let cord = report.findings.iter().find(|it| it.code == "CORD001");
    let told = cord.map(|it| words.finding(it, &report.figures.loads).fix);
    assert!(told.is_some_and(|it| it.starts_with("Run fewer things inside")));
    // The adapter's heat is reported for a load that makes heat for hours.
    let heater = [("kind = \"electronic\"\nrunning = \"420 W\"", "kind = \"heater\"\nrunning = \"900 W\"")];
    let heater = [&edits[..], &heater].concat();
    let on_cord = found(&super::build(&edited(&heater)), "CORD008");
    assert_eq!(on_cord, [(Signal::Caution, "warm", vec!["converter".to_owned(), "dogbone".to_owned()])]);
}

/// A heater inside, on the camper's own plug.
#[test]
fn a_heater_inside_is_on_no_extension_cord() {
    let heater = ("kind = \"electronic\"\nrunning = \"420 W\"", "kind = \"heater\"\nrunning = \"900 W\"");
    let cord = "[[cord]]\nid = \"more\"\nfrom = \"rv\"\nplug = \"TT-30P\"\nends = [\"TT-30R\"]\nwire = \"10 AWG\"\n\
                conductors = 3\nlength = \"25 ft\"\noutdoor = true\ncoiled = false\n\n[[box]]";
    let edits = [heater, ("[[box]]", cord), ("from = \"rv\"\ninlet", "from = \"more\"\ninlet")];
    assert_eq!(found(&report(&edits), "CORD008"), []);
}

const BIG: [(&str, &str); 4] = [
    ("inverter = true", "inverter = false"),
    ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
    ("shape = \"TT-30R\"\nbreaker = \"30 A\"", "shape = \"14-50R\"\nbreaker = \"50 A\""),
    (
        "[[box]]",
        "[[cord]]\nid = \"step\"\nfrom = \"rv\"\nplug = \"14-50P\"\nends = [\"TT-30R\"]\nwire = \"10 AWG\"\n\
         conductors = 3\nlength = \"1 ft\"\noutdoor = true\ncoiled = false\n\n[[box]]",
    ),
];

/// A 30 A main breaker downstream of an adapter from 50 A, which has no breaker of its own, is a caution. One that
/// nobody has read is a warning that rests on it, and a 50 A one is a danger.
#[test]
fn an_adapter_from_50_a_rests_on_the_main() {
    let over = |main: &str| {
        let main = format!("from = \"step\"\ninlet = \"TT-30P\"{main}");
        let was = "from = \"rv\"\ninlet = \"TT-30P\"\nbreaker = \"30 A\"";
        let report = report(&[&BIG[..], &[(was, &main)]].concat());
        let found = report.findings.iter().find(|it| it.code == "OVER001").cloned();
        let found = found.expect("it is told");
        let proofs = &report.figures.protection;
        let of_adapter = proofs.iter().find(|it| it.id == id("step") && it.part == "cord");
        let by = of_adapter.map(|it| it.by);
        assert_eq!(by == Some("camper-main"), found.signal > Signal::Danger);
        let rests: Vec<String> = found.rests_on.iter().map(|it| it.field.clone()).collect();
        (found.signal, rests)
    };
    assert_eq!(over("\nbreaker = \"30 A\""), (Signal::Caution, vec![]));
    let rests = vec!["box.camper.breaker".to_owned()];
    assert_eq!(over("\nbreaker = \"unknown\""), (Signal::Warning, rests.clone()));
    assert_eq!(over(""), (Signal::Warning, rests));
    assert_eq!(over("\nbreaker = \"50 A\""), (Signal::Danger, vec![]));
}

/// Without a GFCI on wet ground, the camper's feed is a warning about the outlet it is plugged into, not about anything
/// inside.
#[test]
fn a_camper_without_a_gfci_on_wet_ground_is_a_warning() {
    let bare = ("breaker = \"30 A\"\ngfci = true", "breaker = \"30 A\"\ngfci = false");
    for (ground, signal) in [("wet", Signal::Warning), ("damp", Signal::Caution)] {
        let ground = format!("ground = \"{ground}\"");
        let report = report(&[bare, ("ground = \"damp\"", &ground)]);
        let about = vec!["rv".to_owned()];
        assert_eq!(found(&report, "SHOCK001"), [(signal, "camper", about)]);
        assert!(report.findings.iter().all(|it| it.signal > Signal::Danger));
    }
    // With a floating neutral, two loads inside count as one camper.
    assert_eq!(found(&report(&[bare]), "SHOCK009"), []);
    // A small camper with a household plug, on wet ground.
    let small = [
        ("ground = \"damp\"", "ground = \"wet\""),
        ("breaker = \"20 A\"\ngfci = true", "breaker = \"20 A\"\ngfci = false"),
        ("from = \"rv\"\ninlet = \"TT-30P\"\nbreaker = \"30 A\"", "from = \"front\"\ninlet = \"5-15P\""),
    ];
    let report = report(&small);
    let told = found(&report, "SHOCK001");
    assert!(told.contains(&(Signal::Warning, "camper", vec!["front".to_owned()])), "{told:?}");
    let verdict = report.verdict(&id("front")).expect("it has one");
    assert_eq!((verdict.admits, &verdict.only), (Admits::Named, &vec![id("camper")]));
}

/// A bonding plug may be wrong for a camper, which is a notice.
#[test]
fn a_bonding_plug_beside_a_camper_is_told() {
    let plug = ("bonding_plug = false", "bonding_plug = true");
    let found = found(&report(&[plug]), "SHOCK010");
    assert_eq!(found, [(Signal::Notice, "camper", vec!["camper".to_owned()])]);
}

/// A camper that is not plugged in is one finding, not one for each load inside.
#[test]
fn a_camper_that_is_not_plugged_in_is_told_once() {
    let report = report(&[("from = \"rv\"\ninlet", "inlet")]);
    let inside = ["roof", "converter", "microwave"].map(str::to_owned).to_vec();
    assert_eq!(found(&report, "FIT001"), [(Signal::Warning, "loose", inside)]);
    assert_eq!(report.figures.sharing.unplaced.len(), 3);
}

/// In a 50 A camper on 120/240 V, a load inside may be on either half, and a 240 V load is on both.
#[test]
fn what_runs_in_a_camper_of_50_a_may_be_on_one_half() {
    let big = [
        BIG[1],
        BIG[2],
        ("inlet = \"TT-30P\"\nbreaker = \"30 A\"", "inlet = \"14-50P\"\nbreaker = \"50 A\""),
        ("running = \"1350 W\"", "running = \"1350 W\"\nvoltage = \"240 V\""),
    ];
    let report = report(&big);
    let of = |load: &str| {
        let mut loads = report.figures.loads.iter();
        loads.find(|it| it.of == id(load)).expect("it is there").volts.millivolts()
    };
    assert_eq!([of("roof"), of("microwave")], [120_000, 240_000]);
    let legs: Vec<&str> =
        (report.figures.assumed.iter()).filter(|it| it.why == "load-voltage").map(|it| it.field.as_str()).collect();
    assert_eq!(legs, ["load.roof.voltage", "load.converter.voltage"]);
}

/// A camper of 50 A on one leg: what is for 120 V runs, and so does what may be, by its amps. What is for 240 V is built
/// in, so it is told to stay off and not to stay at home.
#[test]
fn what_is_built_in_and_lacks_240_volts_stays_off() {
    let step = "[[cord]]\nid = \"step\"\nfrom = \"rv\"\nplug = \"TT-30P\"\nends = [\"14-50R\"]\nwire = \"10 AWG\"\n\
                conductors = 3\nlength = \"1 ft\"\noutdoor = true\ncoiled = false\n[[box]]";
    let told = |draws: &str| {
        let report = report(&[
            ("[[box]]", step),
            ("from = \"rv\"\ninlet = \"TT-30P\"\nbreaker = \"30 A\"", "from = \"step\"\ninlet = \"14-50P\""),
            ("running = \"1350 W\"\npower_factor = 0.95", draws),
        ]);
        let words = crate::words::Words::english();
        let of_it = report.findings.iter().filter(|it| it.area == "fit" && it.about.contains(&id("microwave")));
        of_it.map(|it| (it.code, words.finding(it, &report.figures.loads).fix)).collect::<Vec<_>>()
    };
    assert_eq!(told("current = \"10 A\""), []);
    assert_eq!(told("current = \"10 A\"\nvoltage = \"120 V\""), []);
    for (voltage, says) in [("240 V", "Leave it switched off, or bring"), ("120/240 V", "leave it switched off.")] {
        let told = told(&format!("current = \"10 A\"\nvoltage = \"{voltage}\""));
        let [("FIT006", text)] = &told[..] else { panic!("{told:?}") };
        assert!(text.contains(says), "{text}");
    }
}

/// No remedy moves what is inside to another outlet or the other half. Only the camper itself can move.
#[test]
fn what_runs_inside_is_told_to_go_nowhere_else() {
    let words = crate::words::Words::english();
    let told = |report: &Report| {
        let texts = report.findings.iter().map(|it| words.finding(it, &report.figures.loads));
        texts.map(|it| it.fix).collect::<Vec<_>>().join("\n")
    };
    let loose = told(&report(&[("from = \"rv\"\ninlet", "inlet")]));
    assert!(loose.contains("Plug “camper” into “rv”. Write"), "{loose}");
    // The 1250 W and 1350 W loads on a 20 A breaker.
    let main = ("inlet = \"TT-30P\"\nbreaker = \"30 A\"", "inlet = \"TT-30P\"\nbreaker = \"20 A\"");
    let two =
        ("running = \"1350 W\"\npower_factor = 0.95", "running = \"1350 W\"\npower_factor = 0.95\nwanted = \"must\"");
    let noon = ("hours = [\"18:00-18:30\"]", "hours = [\"13:00-13:30\"]");
    let over = report(&[main, two, noon]);
    assert!(!found(&over, "OVER006").is_empty());
    assert!(!told(&over).contains("move"), "{}", told(&over));
}

/// 13.9 A for hours and 13.2 A for less, on a 30 A main breaker, count as 30.5 A. The message says which part is for
/// hours.
#[test]
fn what_runs_inside_for_hours_is_told_as_the_part_it_is() {
    let report = report(&[
        ("running = \"420 W\"", "running = \"1500 W\""),
        ("running = \"1250 W\"", "running = \"1500 W\""),
        ("rated = \"3400 W\"", "rated = \"4400 W\""),
        ("peak = \"4200 W\"", "peak = \"5500 W\""),
    ]);
    let mut findings = report.findings.iter();
    let found = findings.find(|it| it.code == "OVER002").expect("found");
    assert_eq!(found.fix.key, "rest");
    let told = crate::words::Words::english().finding(found, &report.figures.loads);
    let why = told.why.replace('\u{a0}', " ");
    assert!(why.contains("it carries 27.1 A, of which 13.9 A is for three hours or more"), "{why}");
    assert!(told.fix.contains("switch off what runs through it"));
}

/// The camper's own cord is also ahead of the receptacles on its outside.
#[test]
fn an_outlet_outside_is_at_the_end_of_its_cord() {
    let lights = "breaker = \"30 A\"\n\n[[box.outlet]]\nid = \"porch\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\n\
                  gfci = true\n\n[[load]]\nid = \"lights\"\nkind = \"lamp\"\nrunning = \"40 W\"\n\
                  continuous = true\nplug = \"5-15P\"\non = \"porch\"\nhours = [\"19:00-21:00\"]\n\n[[load]]\nid = \"roof\"";
    let sound = report(&[("breaker = \"30 A\"\n\n[[load]]\nid = \"roof\"", lights)]);
    assert_eq!(found(&sound, "AIR005"), []);
    let at = |id: &str| sound.figures.sharing.placed.iter().find(|it| it.load.as_str() == id);
    assert_eq!(at("lights").map(|it| it.at.as_str()), Some("porch"));
    // At the generator itself there is no cord.
    let home = lights.replace("on = \"porch\"", "on = \"front\"");
    let near = report(&[("breaker = \"30 A\"\n\n[[load]]\nid = \"roof\"", &home)]);
    assert_eq!(found(&near, "AIR005").len(), 1);
}

/// No box is bought in place of a camper: what is hot on it stays hot, and what is wrong in it stays wrong.
#[test]
fn no_box_is_bought_in_the_place_of_a_camper() {
    let outlet = "breaker = \"30 A\"\n\n[[box.outlet]]\nid = \"porch\"\nshape = \"5-15R\"\nbreaker = \"15 A\"\n\
                  gfci = true\nHOT\n[[load]]\nid = \"lamp\"\nkind = \"lamp\"\nrunning = \"20 W\"\nplug = \"5-15P\"\n\
                  on = \"porch\"\n\n[[load]]\nid = \"roof\"";
    for (hot, more) in [("hot = true\n", ""), ("", "bond = true\nlisted = false\n")] {
        let outlet = outlet.replace("HOT", hot);
        let outlet = format!("{more}{outlet}");
        let before = edited(&[("breaker = \"30 A\"\n\n[[load]]\nid = \"roof\"", &outlet)]);
        let mended = crate::mend::mend(&before, true);
        let was = before.boxes.first().expect("a camper");
        let is = mended.plan.boxes.first().expect("a camper");
        assert_eq!((is.bond, is.listed), (was.bond, was.listed));
        assert_eq!(is.outlets[0].hot, was.outlets[0].hot, "{:?}", mended.steps);
    }
}

/// A homemade camper's neutral may be joined to ground. A factory-made one's is not.
#[test]
fn a_homemade_camper_may_join_neutral_and_ground() {
    let joins = |listed: &str| {
        let listed = format!("inlet = \"TT-30P\"\n{listed}");
        let plan = edited(&[("inlet = \"TT-30P\"", &listed)]);
        plan.boxes[0].joins()
    };
    assert_eq!(joins(""), plan::Answer::Known(false));
    assert_eq!(joins("listed = true\n"), plan::Answer::Known(false));
    assert!(!joins("listed = false\n").is_known());
}

/// With an unread main breaker, the camper's plug sets the limit, and no label names the breaker.
#[test]
fn a_main_that_nobody_has_read_is_told_as_none() {
    let by_main = |breaker: &str| {
        let breaker = format!("inlet = \"5-15P\"\n{breaker}");
        let report =
            report(&[("from = \"rv\"", "from = \"front\""), ("inlet = \"TT-30P\"\nbreaker = \"30 A\"", &breaker)]);
        let mut limits = report.figures.limits.iter();
        let limit = limits.find(|it| it.id == id("camper")).expect("it has one");
        (limit.set_by.id == id("camper"), limit.set_by.reason == LimitReason::Breaker)
    };
    assert_eq!(by_main("breaker = \"12 A\"\n"), (true, true));
    assert_eq!(by_main(""), (true, false));
}

mod cases;
mod cheapest;
mod steps;

use super::list::List;
use super::*;
use crate::plan::demo::{MENDED, WEEKEND};
use crate::plan::read;
use crate::report;

fn plan(text: &str) -> Plan {
    read(text).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn keys(mended: &Mended) -> Vec<(&'static str, String)> {
    mended
        .steps
        .iter()
        .filter(|step| !step.comes_along)
        .map(|Step { change, .. }| {
            let about = change.about().map(Id::to_string).unwrap_or_default();
            (change.key(), about)
        })
        .collect()
}

#[test]
fn a_plan_without_a_danger_is_left_alone() {
    let before = plan(MENDED);
    let mended = mend(&before, false);
    assert_eq!(keys(&mended), []);
    assert_eq!(mended.plan, before);
    assert_eq!(mended.effect.cost, 0);
    assert!(mended.effect.proven && mended.effect.after.clear());
}

#[test]
fn the_weekend_is_mended_and_the_whole_check_agrees() {
    let before = plan(WEEKEND);
    let mended = mend(&before, false);

    // The same count as in the check.
    let told = judge::build(&before).count(report::Signal::Danger);
    assert!(told > 1);
    assert_eq!(mended.effect.before.dangers, told);
    assert!(mended.effect.after.clear(), "{:?}", mended.effect);
    assert!(mended.effect.proven);
    // The report equals that of the plan read back from a file.
    let text = crate::plan::write(&mended.plan);
    let again = judge::build(&plan(&text));
    assert_eq!(again, mended.report);
    assert_eq!(tally(&mended.plan, &again), mended.effect.after);
}

/// Any choice of repairs gives a plan that reads. None gives the original plan, and all give the mended one.
#[test]
fn changes_can_be_taken_one_by_one() {
    let before = plan(WEEKEND);
    let (report, mended) = advised(&before, false);
    let told = report.figures.sharing.repairs.len();
    assert!(told > 2);
    assert_eq!(mended.taken(&before, &report, |_| true), mended.plan);
    assert_eq!(mended.taken(&before, &report, |_| false), before);
    let mut changed = 0;
    for only in 0..told {
        for some in [mended.taken(&before, &report, |at| at == only), mended.taken(&before, &report, |at| at != only)] {
            assert_eq!(plan(&crate::plan::write(&some)), some, "{only}");
            changed += usize::from(some != before);
        }
    }
    assert!(changed > told, "{changed} of {told}");
}

/// The plan does not say whether the outlets have GFCIs. What `mend` leaves of that is marked as a guess, as in
/// `check`.
#[test]
fn what_stays_and_is_only_a_guess_is_told_as_a_guess() {
    let before = plan(include_str!("../../tests/plans/usual/b09-unknowns.toml"));
    let (report, mended) = advised(&before, false);
    assert!(!mended.effect.left.is_empty());
    let words = crate::words::Words::english();
    let after = judge::build(&mended.plan);
    let told = words.troubles(&after, 400);
    let told: Vec<String> = mended
        .effect
        .left
        .iter()
        .map(|finding| {
            let title = words.finding(finding, &report.figures.loads).title;
            assert!(told.contains(&title), "{title} is not in {told}");
            title
        })
        .collect();
    assert!(told.iter().any(|title| title.starts_with("Worst case: ")), "{told:?}");
}

#[test]
fn warnings_are_cleared_as_well_where_asked() {
    let before = plan(WEEKEND);
    let few = mend(&before, false);
    let more = mend(&before, true);

    assert!(more.effect.after.clear());
    assert!(more.effect.after.warnings < few.effect.after.warnings);
    // No cord and no shift clears these two: a life that depends on one generator and on one tank.
    let left: Vec<&str> = more
        .report
        .findings
        .iter()
        .filter(|finding| finding.signal == Signal::Warning)
        .map(|finding| finding.code)
        .collect();
    assert_eq!(left, ["FUEL001", "HEALTH001"]);
}

/// With only one danger at a time, the cheapest remedy can be seen by hand.
#[test]
fn one_danger_has_its_cheapest_remedy() {
    for (from, to, expected) in [
        ("sleepers_at = \"45 ft\"", "sleepers_at = \"12 ft\"", vec![("more-distance", "")]),
        ("feeds_building = false", "feeds_building = true", vec![("no-building", "")]),
    ] {
        assert!(MENDED.contains(from), "{from}");
        let mended = mend(&plan(&MENDED.replacen(from, to, 1)), false);
        let expected: Vec<(&str, String)> = expected.into_iter().map(|(key, about)| (key, about.to_owned())).collect();
        assert_eq!(keys(&mended), expected);
        assert!(mended.effect.proven);
    }
}

#[test]
fn what_makes_heat_is_off_while_people_sleep() {
    // The night of this plan is 22:00-06:00.
    for (hours, expected) in [
        (r#"["21:00-06:00"]"#, "21:00-22:00"),
        (r#"["21:00-07:30"]"#, "06:00-07:30, 21:00-22:00"),
        (r#"["23:00-02:00", "12:00-13:00"]"#, "12:00-13:00"),
        (r#"["23:00-02:00"]"#, "20:00-22:00"),
        (r#"["00:00-24:00"]"#, "06:00-22:00"),
        ("[]", "20:00-22:00"),
    ] {
        let mut changed = plan(WEEKEND);
        let before = changed.clone();
        let blanket = Id::new("blanket").expect("an id");
        let load = changed.loads.iter_mut().find(|it| it.id == blanket);
        let other = WEEKEND.replacen(r#"["21:00-06:00"]"#, hours, 1);
        assert!(other != WEEKEND || hours == r#"["21:00-06:00"]"#, "{hours}");
        let hours = plan(&other).loads.into_iter().find(|it| it.id == blanket);
        load.expect("a blanket").hours = hours.expect("a blanket").hours;
        let change = Change::OffAtNight(blanket);
        assert!(change.apply(&mut changed));
        let repair = change.repair(&before, &changed);
        let told = serde_json::to_value(&repair.values["to"]).expect("JSON");
        assert_eq!(told, expected);
        let found = judge::build(&changed).findings;
        assert!(found.iter().all(|it| it.code != "HEALTH002"));
    }
}

#[test]
fn a_budget_that_ends_the_search_is_said() {
    let told = |effect: &crate::report::Effect| crate::words::Words::english().effect(effect);
    let short = mend_within(&plan(WEEKEND), false, 1).0.effect;
    assert!(!short.proven && short.stopped && !short.after.clear());
    assert!(told(&short).starts_with("We stopped before"), "{}", told(&short));
    assert!(!told(&short).contains("We know"), "{}", told(&short));
    // Near miss: the full budget.
    let whole = mend(&plan(WEEKEND), false).effect;
    assert!(whole.proven && !whole.stopped && whole.after.clear());
}

#[test]
fn nothing_cheaper_among_all_subsets_of_what_was_considered() {
    // Small enough to try every subset: one long thin cord on wet ground.
    let text = r#"
        format = 1
        [site]
        ground = "wet"
        sleepers_at = "12 ft"
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
        sockets = 1
        breaker = "20 A"
        [[cord]]
        id = "thin"
        from = "front"
        plug = "5-15P"
        ends = ["5-15R", "5-15R"]
        wire = "18 AWG"
        conductors = 3
        length = "50 ft"
        outdoor = true
        coiled = false
        [[load]]
        id = "kettle"
        name = "Kettle"
        kind = "heater"
        running = "1500 W"
        hours = ["07:00-07:20"]
        plug = "5-15P"
        [[load]]
        id = "toaster"
        name = "Toaster"
        kind = "heater"
        running = "1000 W"
        hours = ["07:00-07:20"]
        plug = "5-15P"
    "#;
    let before = plan(text);
    let mended = mend(&before, false);
    assert!(mended.effect.after.clear(), "{:?}", keys(&mended));
    let report = judge::build(&before);
    let paid = mended.steps.iter().filter(|step| !step.comes_along);
    // As in the search, which leaves the receptacle to the sharing.
    let paid = paid.map(|step| match &step.change {
        Change::Move { load, .. } => Change::moved(load.clone()),
        change => change.clone(),
    });
    let list = List::of(&before, &report, &before);
    let mut pool: Vec<Change> = list::problems(&before, &report, Signal::Danger)
        .iter()
        .flat_map(|problem| list.changes(problem))
        .chain(paid)
        .collect();
    pool.sort();
    pool.dedup();
    let costs: Vec<u64> = pool.iter().map(|change| u64::from(change.cost())).collect();
    let found = cheapest::cheapest(
        &costs,
        |set| {
            let cost: u64 = set.iter().map(|at| costs[*at]).sum();
            let (newest, earlier) = set.split_last().expect("a set that grew");
            cost <= u64::from(mended.effect.cost) && earlier.iter().all(|at| !pool[*at].clashes(&pool[*newest]))
        },
        |set| {
            let mut plan = before.clone();
            for at in set {
                pool[*at].apply(&mut plan);
            }
            tally(&plan, &judge::build(&plan)).clear()
        },
        20_000,
    );
    assert!(found.proven);
    assert_eq!(found.cost, u64::from(mended.effect.cost), "{:?}", keys(&mended));
}

#[test]
fn what_nobody_can_change_is_left_and_the_rest_is_mended() {
    // Where the unread breaker is a danger, it stays one.
    let text = WEEKEND.replacen("breaker = \"30 A\"", "breaker = \"unknown\"", 1);
    let mended = mend_within(&plan(&text), false, 60).0;
    assert!(mended.effect.after.dangers < mended.effect.before.dangers);
    assert!(mended.plan.site.sleepers_at.is_known());
}

/// No cord or box supplies a neutral, so an adapter from 240 V to a household outlet is set aside.
#[test]
fn an_adapter_with_the_wrong_volts_is_set_aside() {
    let text = MENDED
        .replacen(
            "[[box]]",
            "[[generator.outlet]]\nid = \"six\"\nshape = \"6-20R\"\nbreaker = \"20 A\"\ngfci = true\n\
             [[cord]]\nid = \"trap\"\nfrom = \"six\"\nplug = \"6-20P\"\nends = [\"5-20R\"]\n\
             wire = \"12 AWG\"\nconductors = 3\nlength = \"1 ft\"\noutdoor = true\n[[box]]",
            1,
        )
        .replacen("voltage = \"120 V\"", "voltage = \"120/240 V\"", 1)
        .replacen("rated = \"2800 W\"", "rated = \"5600 W\"", 1)
        .replacen("peak = \"3300 W\"", "peak = \"6600 W\"", 1);
    let before = plan(&text);
    let found = judge::build(&before).findings;
    assert!(found.iter().any(|it| it.code == "FIT006"), "{found:#?}");
    let mended = mend(&before, false);
    let trap = ("set-aside", "trap".to_owned());
    assert!(keys(&mended).contains(&trap), "{:?}", keys(&mended));
    assert_eq!(mended.effect.after.dangers, 0);
}

/// A breathing aid at the end of one long cord, and nothing else.
const BEDSIDE: &str = r#"
    format = 1
    [site]
    ground = "wet"
    sleepers_at = "60 ft"
    altitude = "0 ft"
    air = "77 °F"
    co_alarm = true
    stands = "roof"
    [generator]
    name = "set"
    rated = "3000 W"
    peak = "3600 W"
    voltage = "120 V"
    neutral = "floating"
    inverter = true
    runtime = [{ load = "25 %", lasts = "20 h" }, { load = "100 %", lasts = "8 h" }]
    [[generator.outlet]]
    id = "front"
    shape = "5-20R"
    breaker = "20 A"
    gfci = true
    [[cord]]
    id = "long"
    from = "front"
    plug = "5-15P"
    ends = ["5-15R"]
    wire = "14 AWG" # long
    conductors = 3 # long
    length = "75 ft"
    outdoor = true
    coiled = false
    [[load]]
    id = "aid"
    name = "Breathing aid"
    kind = "medical"
    running = "200 W"
    hours = ["20:00-08:00"]
    plug = "5-15P"
    on = "long"
"#;

/// A bad cord is replaced. Its breathing aid is not moved to the engine instead.
#[test]
fn nobody_is_moved_to_the_engine_to_be_rid_of_a_cord() {
    for (from, to, key) in [("conductors = 3", "conductors = 2", "grounded-cord"), ("14 AWG", "18 AWG", "thicker-cord")]
    {
        let before = plan(&BEDSIDE.replacen(from, to, 1));
        for warnings in [false, true] {
            let mended = mend(&before, warnings);
            assert_eq!(keys(&mended), [(key, "long".to_owned())]);
            let on = mended.plan.loads[0].on.as_ref().map(Id::as_str);
            assert_eq!(on, Some("long"));
            assert!(mended.effect.after.warnings <= mended.effect.before.warnings);
        }
    }
}

#[test]
fn what_comes_out_from_under_a_cover_may_be_rained_on() {
    let text = BEDSIDE.replacen("stands = \"roof\"", "stands = \"covered\"", 1);
    let mended = mend(&plan(&text), false);
    assert!(keys(&mended).contains(&("open-air", String::new())));
    assert_eq!(mended.effect.after.dangers, 0);
}

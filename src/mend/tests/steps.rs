//! For any camp, carrying out the proposed steps gives the promised result.

use std::collections::BTreeSet;

use proptest::prelude::*;

use super::*;
use crate::plan::{Answer, Plan, Span, arbitrary};
use crate::report::Finding;
use crate::supply::Supply;

/// Takes the number of cases from the environment. More, and others, are tried with
/// `PROPTEST_CASES=5000 PROPTEST_RNG_SEED=7 cargo test mend::tests::steps`.
fn config() -> ProptestConfig {
    // 256 is proptest's default, so nobody asked for a number.
    const CASES: u32 = 24;
    let mut config = ProptestConfig::default();
    if config.cases == 256 {
        config.cases = CASES;
    }
    ProptestConfig { failure_persistence: None, ..config }
}

/// Returns every id in the plan: parts, receptacles and loads.
fn ids(plan: &Plan) -> BTreeSet<Id> {
    let mut ids: BTreeSet<Id> = plan.loads.iter().map(|it| it.id.clone()).collect();
    ids.extend(plan.cords.iter().map(|it| it.id.clone()));
    ids.extend(plan.boxes.iter().map(|it| it.id.clone()));
    ids.extend(receptacles(plan).into_iter().map(|(id, _)| id));
    ids
}

/// Returns every receptacle with its number of sockets.
fn receptacles(plan: &Plan) -> Vec<(Id, usize)> {
    let ends = plan.cords.iter().flat_map(|cord| (0..cord.ends().len()).map(|end| (cord.end_id(end), 1)));
    plan.outlets().map(|it| (it.id.clone(), usize::from(it.plugs().1))).chain(ends).collect()
}

/// Returns the most plugs that are in a receptacle at once.
fn plugs(plan: &Plan, at: &Id) -> usize {
    let cords = plan.cords.iter().map(|it| &it.from);
    let boxes = plan.boxes.iter().map(|it| &it.from);
    let parts = cords.chain(boxes).filter(|from| from.as_ref() == Some(at));
    let loads: Vec<_> = plan.loads.iter().filter(|load| load.plugged_into() == Some(at)).collect();
    // Loads with hours can share a socket at different times.
    let at_once = if loads.iter().all(|load| !load.hours.is_empty()) {
        let on = |minute: u16| {
            let on = |load: &&&crate::plan::Load| load.hours.iter().any(|it| it.contains(minute));
            let on = loads.iter().filter(on).map(|load| usize::from(load.count));
            on.sum::<usize>()
        };
        (0..Span::DAY).map(on).max().unwrap_or(0)
    } else {
        loads.iter().map(|load| usize::from(load.count)).sum()
    };
    let bonded = plan.generator.bonding_plug_in.as_ref() == Some(at)
        && matches!(plan.generator.bonding_plug, Answer::Known(true) | Answer::Unknown);
    parts.count() + at_once + usize::from(bonded)
}

/// Returns the receptacle that a step plugs something into.
fn socket_of(change: &Change) -> Option<&Id> {
    match change {
        Change::Move { to: Some(seat), .. } => Some(&seat.at),
        Change::Replug { to: at, .. }
        | Change::ProtectedOutlet { at, .. }
        | Change::ThreeWay { at, .. }
        | Change::NewBox(at)
        | Change::BondingPlug(at)
        | Change::TakeTurns { at, .. } => Some(at),
        _ => None,
    }
}

/// Carries out the steps in their order.
fn carry_out(before: &Plan, mended: &Mended) -> Result<Plan, TestCaseError> {
    let mut plan = before.clone();
    for Step { change, .. } in &mended.steps {
        let known = ids(&plan);
        prop_assert!(change.about().is_none_or(|id| known.contains(id)), "{change:?}");
        let at = socket_of(change);
        prop_assert!(at.is_none_or(|at| known.contains(at)), "{change:?}");
        let was = plan.clone();
        prop_assert!(change.apply(&mut plan), "{change:?}");
        if let Some(at) = at {
            let fed = Supply::build(&plan).receptacle(at);
            prop_assert!(fed.is_some(), "{change:?} of {:?}", mended.steps);
        }
        for (at, sockets) in receptacles(&plan) {
            let most = sockets.max(plugs(&was, &at));
            prop_assert!(plugs(&plan, &at) <= most, "{change:?} at {at} of {:?}", mended.steps);
        }
    }
    Ok(plan)
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn what_is_proposed_and_carried_out_gives_what_was_promised(
        plan in arbitrary::camp(), warnings in any::<bool>(),
    ) {
        let before = judge::judge(&plan);
        let mended = mend_within(&plan, warnings, 40).0;
        let after = carry_out(&plan, &mended)?;
        prop_assert_eq!(&after, &mended.plan);
        let read = |plan: &Plan| crate::plan::read(&crate::plan::write(plan));
        // A random plan may be one that no file can hold.
        let read = if read(&plan).is_ok() {
            read(&after).expect("what is written reads")
        } else {
            after
        };
        let report = judge::build(&read);
        let (was, is) = (tally(&plan, &before), tally(&read, &report));
        let at_home = mended.effect.after.at_home;
        prop_assert_eq!(Tally { at_home, ..is }, mended.effect.after);
        prop_assert_eq!(was, mended.effect.before);

        // No worse, and no new air finding.
        prop_assert!(is.dangers + is.unserved_musts <= was.dangers + was.unserved_musts);
        // A finding that names only loads which had no place before came with them, if it names no more units of an
        // entry than had none.
        let lost = &before.figures.sharing.unplaced;
        let units = &before.figures.loads;
        let of = |id: &Id| units.iter().find(|it| it.id == *id).map_or_else(|| id.clone(), |it| it.of.clone());
        // The id of an entry with several units names all of them.
        let told_in = |id: &Id| match units.iter().filter(|it| it.of == *id).count() {
            0 => 1,
            whole => whole,
        };
        let had_none = |about: &[Id], load: &Id| {
            let same = |id: &&Id| of(id) == of(load);
            about.iter().filter(same).map(told_in).sum::<usize>() <= lost.iter().filter(|it| same(&&it.load)).count()
        };
        let came_along = |about: &[Id]| !about.is_empty() && about.iter().all(|load| had_none(about, load));
        // Clearing a danger may leave a warning that was reported together with it, now on its own. None is new.
        let troubles = report.figures.troubles.iter();
        for trouble in troubles.filter(|it| it.signal == Signal::Warning && !came_along(&it.about)) {
            let told = report.findings_of(trouble).any(|finding| {
                let same = |it: &&Finding| it.code == finding.code && it.signal <= finding.signal;
                let named = |it: &Finding| it.about.iter().any(|id| finding.about.contains(id));
                before.findings.iter().filter(same).any(|it| it.about.is_empty() || named(it))
            });
            prop_assert!(told, "{:?} by {:?}", trouble, mended.steps);
        }
        for finding in &report.findings {
            if finding.area != "air" || finding.code == "AIR004" || finding.signal == Signal::Notice {
                continue;
            }
            if (finding.code, finding.fix.key) == ("AIR005", "no-cord") {
                continue;
            }
            let mild = matches!(finding.code, "AIR005" | "AIR006") && finding.signal == Signal::Caution;
            if mild && came_along(&finding.about) {
                continue;
            }
            let mut there = before.findings.iter().filter(|it| it.code == finding.code);
            prop_assert!(
                there.any(|it| it.signal <= finding.signal),
                "{} by {:?}", finding.code, mended.steps
            );
        }

        // Loads used near people stay away from the generator.
        let at_set = |plan: &Plan, report: &report::Report| super::super::places::at_the_set(plan, report);
        let there = at_set(&plan, &before);
        for load in at_set(&read, &report) {
            prop_assert!(there.contains(&load), "{load} by {:?}", mended.steps);
        }

        // Purchases are used, and nothing that stays refused is plugged in.
        let sockets = super::super::places::Sockets::of(&read);
        for Step { change, .. } in &mended.steps {
            if let Change::Smaller { load, .. } = change {
                let mut units = report.figures.loads.iter().filter(|unit| unit.of == *load);
                let placed = &report.figures.sharing.placed;
                prop_assert!(units.any(|unit| placed.iter().any(|it| it.load == unit.id)), "{change:?}");
            }
            if let Change::Replug { part, .. } = change {
                let ends = super::super::places::ends_of(&read, part);
                prop_assert!(ends.iter().any(|end| sockets.refused(end).is_none()), "{change:?}");
            }
        }

        // The card shows at least one unit of each load that goes "where the card shows".
        for Step { change, .. } in &mended.steps {
            if let Change::Move { load, to: None } = change {
                let mut facts = report.figures.loads.iter().filter(|fact| fact.of == *load);
                let placed = &report.figures.sharing.placed;
                let shown = facts.any(|fact| placed.iter().any(|it| it.load == fact.id));
                prop_assert!(shown, "{change:?}");
            }
        }

        // The report lists the steps in this order, and steps that come along cost nothing.
        let mut told = before.clone();
        mended.tell(&plan, &mut told);
        let repairs = &told.figures.sharing.repairs;
        let repairs: Vec<_> = repairs.iter().filter(|it| it.key != "as-the-card").collect();
        // Several changes to a cord are one purchase.
        let cord = |step: &&Step| {
            let about = step.change.about().filter(|_| step.change.told() == "other-cord");
            about.cloned()
        };
        let mut bought = BTreeSet::new();
        let mut steps: Vec<&Step> = mended.steps.iter().collect();
        steps.retain(|step| cord(step).is_none_or(|cord| bought.insert(cord)));
        prop_assert_eq!(repairs.len(), steps.len());
        for (repair, step) in repairs.iter().zip(steps) {
            prop_assert_eq!(repair.key, step.change.told());
            prop_assert_eq!(repair.cost == 0, step.comes_along);
            let about: Vec<Id> = step.change.about().into_iter().cloned().collect();
            prop_assert_eq!(&repair.about, &about);
        }
        prop_assert_eq!(repairs.iter().map(|it| it.cost).sum::<u32>(), mended.effect.cost);
    }

    /// Each new GFCI adapter has something plugged into it.
    #[test]
    fn no_part_is_brought_that_nothing_is_plugged_into(plan in arbitrary::camp()) {
        let mended = mend_within(&plan, false, 40).0;
        let placed = &mended.report.figures.sharing.placed;
        let was = ids(&plan);
        for Step { change, .. } in &mended.steps {
            let Change::ProtectedOutlet { at, sockets } = change else {
                continue;
            };
            let new = mended.plan.cords.iter().filter(|cord| {
                cord.from.as_ref() == Some(at) && cord.gfci == Answer::Known(true) && !was.contains(&cord.id)
            });
            let used = new.filter(|cord| {
                placed.iter().any(|it| it.at == cord.id)
                    || mended.plan.cords.iter().any(|it| it.from.as_ref() == Some(&cord.id))
                    || mended.plan.boxes.iter().any(|it| it.from.as_ref() == Some(&cord.id))
            });
            prop_assert_eq!(used.count(), usize::from(*sockets), "{:?}", mended.steps);
        }
    }

    /// A trial agrees with the whole check on dangers and places, wherever its short search proves its placing best.
    /// Otherwise the long search may find a better one.
    #[test]
    fn a_trial_is_the_check_of_dangers(plan in arbitrary::camp()) {
        let (all, trial) = (judge::judge(&plan), judge::trial(&plan, Signal::Danger));
        prop_assert_eq!(&all.figures.limits, &trial.figures.limits);
        prop_assert_eq!(&all.figures.loads, &trial.figures.loads);
        prop_assert_eq!(&all.figures.usable.rated_watts, &trial.figures.usable.rated_watts);
        prop_assert_eq!(&all.figures.usable.peak_watts, &trial.figures.usable.peak_watts);
        let (whole, short) = (&all.figures.sharing, &trial.figures.sharing);
        prop_assert!(short.families_complete || !whole.families_complete);
        if !short.proven {
            return Ok(());
        }
        let dangers = |report: &Report| -> Vec<report::Finding> {
            let kept = report.findings.iter();
            kept.filter(|it| it.signal == Signal::Danger).cloned().collect()
        };
        prop_assert_eq!(dangers(&all), dangers(&trial));
        prop_assert_eq!(list::waiting(&plan, &all), list::waiting(&plan, &trial));
        prop_assert_eq!(&whole.placed, &short.placed);
        prop_assert_eq!(&whole.unplaced, &short.unplaced);
        prop_assert_eq!(&whole.never, &short.never);
    }
}

/// An unlisted box comes out. What was to be done to it first is dropped and costs nothing.
#[test]
fn the_cost_is_of_what_is_told() {
    let text = "format = 1\n[site]\nground = \"dry\"\n[generator]\nrated = \"unknown\"\npeak = \"50 W\"\n\
                voltage = \"unknown\"\ninverter = true\n[[generator.outlet]]\nid = \"front\"\nshape = \"5-20R\"\n\
                breaker = \"20 A\"\n[[box]]\nid = \"box\"\nfrom = \"front\"\ninlet = \"5-20P\"\n[[box.outlet]]\n\
                id = \"left\"\nshape = \"5-20R\"\nbreaker = \"20 A\"\n[[load]]\nid = \"load\"\nname = \"Load\"\n\
                kind = \"unknown\"\ncount = 3\nwanted = \"must\"\nplug = \"5-20P\"\non = \"left\"\n";
    let plan = crate::plan::read(text).expect("a plan that reads");
    let mended = mend_within(&plan, false, 40).0;
    let out = |step: &Step| matches!(step.change, Change::SetAside(_));
    assert!(mended.steps.iter().any(out));
    let told = mended.steps.iter().filter(|step| !step.comes_along);
    assert_eq!(mended.effect.cost, told.map(|step| step.change.cost()).sum::<u32>());
}

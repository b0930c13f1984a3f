#![doc = include_str!("../../../i18n/en/explain/FIT004.md")]

use std::collections::BTreeMap;

use crate::loads::exceeds_its_plug;
use crate::plan::Id;
use crate::quantity::Current;
use crate::report::Limit;
use crate::rules::demand::{Need, once};
use crate::rules::prelude::*;
use crate::supply::{LimitReason, NodeIx};

pub(super) const RULE: Rule = Rule {
    code: "FIT004",
    name: "load-without-place",
    area: "fit",
    worst: Signal::Warning,
    sources: &[cite::NEC_210_21_B2, cite::PRACTICE],
    fixes: &["too-large", "no-room", "life-large", "life-room", "refused", "refused-here"],
    check,
    #[cfg(test)]
    fires: &[
        // 12.5 A on 10 A.
        &[("breaker = \"15 A\" # left", "breaker = \"10 A\"")],
        &[("wanted = \"must\" # fan", "count = 9\nwanted = \"must\""), ("on = \"right\" # fan", "")],
        // A breathing aid, required or only wished for.
        &[("kind = \"heater\" # kettle", "kind = \"medical\""), ("running = \"1500 W\"", "running = \"2200 W\"")],
        &[
            ("kind = \"electronic\" # fan", "kind = \"medical\""),
            ("wanted = \"must\" # fan", "count = 9\nwanted = \"wish\""),
            ("on = \"right\" # fan", ""),
        ],
        // Nothing trips before this box is overloaded.
        &[("breaker = \"30 A\" # twist", "breaker = \"unknown\""), FRONT_BARE],
        &[("breaker = \"30 A\" # twist", "breaker = \"unknown\"")],
    ],
    #[cfg(test)]
    spares: &[
        &[],
        // 15 A on 15 A, for half an hour.
        &[("running = \"1500 W\"", "running = \"1800 W\"")],
        // More than its plug is rated for, and than the outlet gives.
        &[("running = \"1500 W\"", "running = \"2200 W\"")],
        &[("wanted = \"must\" # fan", "count = 9\nwanted = \"wish\""), ("on = \"right\" # fan", "")],
    ],
};

#[cfg(test)]
const FRONT_BARE: crate::rules::Edit = ("gfci = true # front", "gfci = false");

/// Returns the limits of receptacles that give power, each with whether it may be used. Other rules report those that
/// give none.
fn live<'a>(facts: &Facts<'a>) -> Vec<(bool, &'a Limit)> {
    let limits = facts.figures.limits.iter();
    let live = limits.filter(|limit| limit.short_amps > Current::ZERO);
    let may_be_used = |limit: &Limit| {
        let at = facts.supply.receptacle(&limit.id);
        at.is_some_and(|at| facts.verdicts.no_loads(at).is_none())
    };
    live.map(|limit| (may_be_used(limit), limit)).collect()
}

/// Returns the best receptacle for a load: the one the plan puts it on, or else the one of highest limit that takes its
/// plug. One that must not be used counts only if there is no other.
fn best<'a>(live: &[(bool, &'a Limit)], need: &Need<'_>) -> Option<(bool, &'a Limit)> {
    let load = need.load;
    live.iter()
        .copied()
        .filter(|(_, limit)| match &load.on {
            Some(on) => *on == limit.id,
            None => need.fits(limit.shape),
        })
        .max_by_key(|(usable, limit)| (*usable, limit.short_amps))
}

/// Returns what the best receptacle carries, if the load draws more, and that receptacle's id if it must not be used,
/// because replacing that part clears both.
fn too_large<'a>(facts: &Facts<'_>, live: &[(bool, &'a Limit)], need: &Need<'_>) -> Option<(Current, Option<&'a Id>)> {
    // More than its own plug is rated for is for rule POWER009, which does not say what to do about a life.
    if exceeds_its_plug(need.load) && !need.life() {
        return None;
    }
    // A load that the generator cannot run anywhere is for rule POWER001.
    let set = facts.supply;
    let one_leg = set.node(NodeIx(0)).legs.all().len() == 1;
    if need.running() > set.rated || (one_leg && need.amps() > set.leg_rated) {
        return None;
    }
    let (usable, best) = best(live, need)?;
    // If the plan puts the load on a thin or coiled cord, the hazard is the cord's, and a cord rule reports it.
    if need.load.on.is_some()
        && matches!(
            best.set_by.reason,
            LimitReason::CordAmpacity | LimitReason::CordMark | LimitReason::CoiledCord | LimitReason::HotCord
        )
    {
        return None;
    }
    // Once the load has a place, rule OVER002 watches the long hours.
    let limit = if !need.placed() && need.continuous() { best.continuous_amps } else { best.short_amps };
    (need.amps() > limit).then_some((limit, (!usable).then_some(&best.id)))
}

/// Returns the parts that keep these loads from every receptacle they may use, if nothing else does.
fn refusing(facts: &Facts<'_>, needs: &[&Need<'_>]) -> Vec<Id> {
    let mut parts: Vec<Id> = Vec::new();
    for (at, node, shape, _) in facts.supply.receptacles() {
        let theirs = |need: &&Need<'_>| need.load.on.as_ref().map_or_else(|| need.fits(shape), |on| *on == node.id);
        if !needs.iter().any(theirs) {
            continue;
        }
        // A part in its place brings no GFCI.
        if facts.verdicts.bare(at) {
            return Vec::new();
        }
        let part = facts.verdicts.refused(at).map(|refusal| &facts.supply.node(refusal.at).id);
        parts.extend(part.filter(|part| !parts.contains(part)).cloned());
    }
    parts
}

fn check(facts: &Facts<'_>, found: &mut Findings<'_>) {
    let unplaced = |need: &Need<'_>, reason: &str| {
        let lost = facts.figures.sharing.without_place(&need.facts.id);
        lost.is_some_and(|lost| lost.reason == reason)
    };
    let must: Vec<Need<'_>> = facts.needs().into_iter().filter(|need| need.load.is_needed()).collect();
    let fed = live(facts);
    // One finding per load that is too large, because each has its own numbers.
    let mut named: Vec<&Id> = Vec::new();
    for need in &must {
        if need.at.is_none() && !unplaced(need, "too-large") {
            continue;
        }
        if let Some((limit, refused)) = too_large(facts, &fed, need)
            && !named.contains(&&need.load.id)
        {
            named.push(&need.load.id);
            let planned = Value::yes_no(need.load.on.is_some());
            let fix = if need.life() { "life-large" } else { "too-large" };
            // If it is plugged in, it trips the breaker or overheats something.
            let signal = if need.life() || need.at.is_some() { Signal::Warning } else { Signal::Caution };
            let mut shown = values([
                ("demand", need.amps().into()),
                ("limit", limit.into()),
                // Another may carry it, so that only the plan is wrong.
                ("planned", planned),
            ]);
            // Replacing that part clears both.
            if let Some(refused) = refused {
                shown.insert("refused", Value::Parts(vec![refused.clone()]));
            }
            found.add(signal, vec![need.load.id.clone()], shown, fix, values([]));
        }
    }
    // A load whose receptacle a cord has taken has no room either. One that only cannot start is for rule POWER002.
    let starts = |need: &Need<'_>| need.starting_amps() <= facts.supply.leg_peak;
    let taken = super::plug_does_not_fit::crowded_out(facts);
    // Everything that would carry it must not be used. That is reported even if it could not start there anyway.
    let (barred, left): (Vec<&Need<'_>>, Vec<&Need<'_>>) = must
        .iter()
        .filter(|need| need.at.is_none() && unplaced(need, "too-large"))
        .filter(|need| !named.contains(&&need.load.id))
        .partition(|need| best(&fed, need).is_some_and(|(usable, _)| !usable));
    // A load that another outlet can run is reported with that outlet.
    let free = |need: &Need<'_>| -> Vec<Id> {
        let lost = facts.figures.sharing.without_place(&need.facts.id);
        lost.map(|lost| lost.free.clone()).unwrap_or_default()
    };
    let no_room = must.iter().filter(|need| unplaced(need, "no-room"));
    let without_room = no_room
        .chain(left.into_iter().filter(|need| starts(need)))
        .filter(|need| taken.iter().all(|(load, _)| **load != need.load.id));
    let (elsewhere, without_room): (Vec<&Need<'_>>, Vec<&Need<'_>>) =
        without_room.partition(|need| !free(need).is_empty());
    let without_room = without_room.into_iter();
    let (life, crowded): (Vec<&Need<'_>>, Vec<&Need<'_>>) = without_room.partition(|need| need.life());
    let ids = |needs: Vec<&Need<'_>>| once(needs.into_iter().map(|need| &need.load.id));
    let (life, crowded) = (ids(life), ids(crowded));
    let refused = must.iter().filter(|need| unplaced(need, "refused"));
    let mut by_free: BTreeMap<(bool, bool, Vec<Id>), Vec<&Need<'_>>> = BTreeMap::new();
    for need in refused.chain(barred).chain(elsewhere) {
        let free = (!need.life(), need.load.on.is_some(), free(need));
        by_free.entry(free).or_default().push(need);
    }
    for ((can_wait, planned, free), needs) in by_free {
        let signal = if can_wait { Signal::Caution } else { Signal::Warning };
        let fix = if free.is_empty() { "refused" } else { "refused-here" };
        let planned = Value::yes_no(planned);
        let life = Value::yes_no(!can_wait);
        let mut shown = values([("free", Value::Parts(free)), ("planned", planned), ("life", life)]);
        // Clearing what is wrong there clears this too. What somebody's health depends on is always reported apart.
        let refusing = if can_wait && fix == "refused" { refusing(facts, &needs) } else { Vec::new() };
        if !refusing.is_empty() {
            shown.insert("refused", Value::Parts(refusing));
        }
        found.add(signal, ids(needs), shown, fix, values([]));
    }
    if !life.is_empty() {
        found.add(Signal::Warning, life, values([]), "life-room", values([]));
    }
    if !crowded.is_empty() {
        found.add(Signal::Caution, crowded, values([]), "no-room", values([]));
    }
}

#[cfg(test)]
mod tests {
    use crate::report::Value;
    use crate::rules::testing::{findings, report};

    /// An outlet in the plan that carries too little is not the best one if another carries the load. And if an outlet
    /// must not be used anyway, its size is not the reason.
    #[test]
    fn what_the_plan_puts_in_the_wrong_place_is_told_so() {
        // 12.5 A on 10 A.
        let left = ("breaker = \"15 A\" # left", "breaker = \"10 A\"");
        let right = ("breaker = \"15 A\" # right", "breaker = \"10 A\"");
        let front = ("breaker = \"20 A\" # front", "breaker = \"10 A\"");
        let anywhere = ("on = \"left\" # kettle", "");
        for (edits, planned) in [(vec![left], "yes"), (vec![left, right, front, anywhere], "no")] {
            let found = findings(&edits);
            let found = found.iter().find(|it| it.code == "FIT004").expect("found");
            assert_eq!(found.values["planned"], Value::Name(planned.to_owned()));
        }
        // 12.5 A on wire for 7 A, which no breaker protects; then nothing else carries it either.
        let bad = [("listed = true", "listed = false"), ("wire = \"14 AWG\" # left", "wire = \"18 AWG\"")];
        let more = [right, front];
        for (edits, reason) in [(bad.to_vec(), "refused"), ([bad, more].concat(), "too-large")] {
            let report = report(&edits);
            let lost = report.figures.sharing.unplaced.iter();
            let reasons: Vec<_> = lost.map(|it| (it.load.as_str(), it.reason)).collect();
            assert_eq!(reasons, [("kettle", reason)]);
        }
    }

    /// The load must not be used where the plan has it. Another outlet that has a free socket and can run it is named.
    /// Near misses: that one is taken, or carries too little.
    #[test]
    fn an_outlet_that_is_free_is_named() {
        let bare = ("gfci = true # left", "gfci = false");
        let thin = ("breaker = \"20 A\" # front", "breaker = \"10 A\"");
        let fan = ("on = \"right\" # fan", "count = 3\non = \"front\"");
        let right = ("breaker = \"15 A\" # right", "breaker = \"10 A\"");
        let told = |edits: &[crate::rules::Edit]| -> Vec<_> {
            let found = findings(edits);
            let found = found.iter().filter(|it| it.code == "FIT004" && it.fix.key.starts_with("refused"));
            found.map(|it| (it.fix.key, it.values["free"].clone())).collect()
        };
        let parts = |ids: &[&str]| {
            let id = |id: &&str| crate::plan::Id::new(id).expect("an id");
            Value::Parts(ids.iter().map(id).collect())
        };
        let all = told(&[bare]);
        assert_eq!(all, [("refused-here", parts(&["right", "front"]))]);
        assert_eq!(told(&[bare, right]), [("refused-here", parts(&["front"]))]);
        assert_eq!(told(&[bare, right, thin]), [("refused", parts(&[]))]);
        assert_eq!(told(&[bare, right, fan]), [("refused", parts(&[]))]);
    }

    /// On damp ground an outlet without a GFCI is not refused, but nobody is sent to it from another if a GFCI works
    /// somewhere. Near miss: none works.
    #[test]
    fn the_outlet_that_is_named_has_a_gfci_where_one_has() {
        let damp = [
            ("ground = \"wet\"", "ground = \"damp\""),
            ("listed = true", "listed = false"),
            ("wire = \"14 AWG\" # left", "wire = \"18 AWG\""),
            ("gfci = true # right", "gfci = false"),
            ("gfci = true # front", "gfci = false"),
        ];
        let free = |edits: &[crate::rules::Edit]| -> Vec<String> {
            let lost = report(edits).figures.sharing.unplaced;
            let lost = lost.iter().find(|it| it.load.as_str() == "kettle").expect("no place");
            lost.free.iter().map(ToString::to_string).collect()
        };
        assert_eq!(free(&damp[..4]), ["front"]);
        assert_eq!(free(&damp), ["right", "front"]);
    }

    /// Nothing that takes its plug may be used, so its size is not the reason. Rule POWER002 reports that the generator
    /// cannot start it, but says nothing of outlets.
    #[test]
    fn what_cannot_be_started_has_no_usable_outlet_either() {
        let start = ("hours = [\"18:30-19:00\"]", "starting = \"9000 W\"");
        let anywhere = ("on = \"left\" # kettle", "");
        let left = ("gfci = true # left", "gfci = \"unknown\"");
        let right = ("gfci = true # right", "gfci = \"unknown\"");
        let front = ("gfci = true # front", "gfci = \"unknown\"");
        for (edits, told) in
            [(vec![start, anywhere, left, right, front], true), (vec![start, anywhere, left, right], false)]
        {
            let found = findings(&edits);
            assert!(found.iter().any(|it| it.code == "POWER002"));
            let mut found = found.iter().filter(|it| it.code == "FIT004");
            let kettle = found.any(|it| it.fix.key == "refused" && it.about.iter().any(|id| id.as_str() == "kettle"));
            assert_eq!(kettle, told);
        }
    }
}

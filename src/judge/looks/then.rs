//! What is gone once something is looked at, and what has to be found there for that.
//!
//! Where there is more to an answer than yes or no, the least demanding one that is enough is named: "12/3", not the
//! thickest wire on sale. It is tried, as everything else.

use super::{Trials, reading};
use crate::judge::unknowns::{Changes, all_answered, answer_as, cleared, counts, eased, left_of};
use crate::plan::{Id, Plan};
use crate::quantity::{Amount, Current, Quantity};
use crate::report::{Finding, Found, Look, Marking, Report, Signal};
use crate::rules;
use crate::supply::Supply;
use crate::value::Value;

/// Answers in steps that people know, the least demanding first. The best answer comes after the last.
const STEPS: [(&str, &[&str]); 4] = [
    ("altitude", &["5000 ft", "4000 ft", "3000 ft", "2000 ft", "1000 ft"]),
    ("sleepers_at", &["25 ft", "30 ft", "40 ft", "60 ft"]),
    ("wire", &["16 AWG", "14 AWG", "12 AWG"]),
    ("length", &["100 ft", "50 ft"]),
];

/// Completes a look with what is gone after it. `before` are the fields answered before it, and `fields` those with it.
pub(super) fn tell<F: FnMut(&Plan, Changes) -> Vec<Finding>>(
    report: &Report,
    trials: &mut Trials<'_, F>,
    before: &[String],
    fields: &[String],
    look: &mut Look,
) {
    let now = if before.is_empty() { report.findings.clone() } else { trials.found(before).to_vec() };
    let then = trials.found(fields).to_vec();
    // Rules that are not run again say nothing here.
    let judged = |it: &Finding| it.signal <= Signal::Caution && rules::find(it.code).is_some_and(counts);
    let all = report.findings.iter().enumerate();
    // What another finding about the same part takes the place of is not gone.
    let is_gone = |it: &Finding, found: &[Finding]| cleared(it, found) && eased(it, &report.findings, found);
    let gone = all.filter(|(_, it)| judged(it) && is_gone(it, &then) && !is_gone(it, &now));
    let mut gone: Vec<(usize, &Finding)> = gone.collect();
    let worst = gone.iter().map(|(_, it)| it.signal).min();
    gone.retain(|(_, it)| Some(it.signal) == worst);
    // What is left of something as grave is told only if nothing of it goes away entirely.
    if gone.iter().any(|(_, it)| left_of(it, &then).is_none()) {
        gone.retain(|(_, it)| left_of(it, &then).is_none());
    }
    let grave = |left: Option<Signal>| left.unwrap_or(Signal::Notice);
    look.left = gone.iter().filter_map(|(_, it)| left_of(it, &then)).min();
    look.gone = gone.iter().map(|(at, _)| *at).collect();
    let gone: Vec<&Finding> = gone.into_iter().map(|(_, it)| it).collect();

    let mut best = all_answered(trials.plan, fields);
    let assumed = carries(look, trials.plan);
    look.carries = carries(look, &best).filter(|amps| Some(*amps) > assumed);
    let bears = |field: &String| {
        let printed =
            look.carries.is_some() && matches!(reading(field).1, Marking::Print) && !field.ends_with("outdoor");
        printed || gone.iter().any(|it| it.rests_on.iter().any(|on| on.field == *field))
    };
    let find: Vec<String> = look.fields.iter().filter(|field| bears(field)).cloned().collect();
    for field in &find {
        let steps = STEPS.iter().find(|(name, _)| field.rsplit('.').next() == Some(name));
        let steps = steps.map_or(&[][..], |(_, steps)| steps);
        // With more or less power, loads may have other places.
        let places = field == "site.altitude";
        let carried = carries(look, &best);
        let mut with = |text: &str| {
            let mut other = best.clone();
            answer_as(&mut other, field, text)?;
            if carries(look, &other) != carried {
                return None;
            }
            let found = (trials.found_with)(&other, Changes { places, ..Changes::of_all(fields) });
            gone.iter().all(|it| cleared(it, &found) && grave(left_of(it, &found)) >= grave(look.left)).then_some(other)
        };
        let (mut least, mut enough) = (None, 0..steps.len());
        while !enough.is_empty() {
            let middle = enough.start.midpoint(enough.end);
            match with(steps[middle]) {
                Some(plan) => (least, enough.end) = (Some(plan), middle),
                None => enough.start = middle + 1,
            }
        }
        let told = steps.is_empty() || least.is_some() || !places;
        best = least.unwrap_or(best);
        look.find.push(Found { value: value(&best, field).filter(|_| told), field: field.clone() });
    }
}

/// Returns what the cord that is looked at can carry, at the end that carries the most.
fn carries(look: &Look, plan: &Plan) -> Option<Current> {
    let cord = look.at.as_ref().filter(|_| look.read == Marking::Print)?;
    let supply = Supply::build(plan);
    let ends = supply.receptacles().filter(|(_, node, ..)| plan.part_of(&node.id) == Some(cord));
    ends.map(|(at, ..)| supply.limit(at).short).max()
}

/// Returns the value of a field, if it is an amount, a count or a name. A generator's power is left out: more of it may
/// bring more into play, so nothing is known to be gone from some figure on.
fn value(plan: &Plan, field: &str) -> Option<Value> {
    fn amount<Q: Quantity>(of: &crate::plan::Answer<Q>) -> Option<Value> {
        of.known().map(|it| Amount::of(*it).into())
    }
    let (path, name) = field.rsplit_once('.')?;
    let id = path.rsplit('.').next()?;
    let cord = || plan.cord(id);
    let outlet = || plan.outlet(&Id::new(id)?);
    match name {
        "altitude" => amount(&plan.site.altitude),
        "sleepers_at" => amount(&plan.site.sleepers_at),
        "length" => amount(&cord()?.length),
        // Of an outlet, or the main breaker of a camper.
        "breaker" => match outlet() {
            Some(outlet) => amount(&outlet.breaker),
            None => amount(&plan.holder(&Id::new(id)?)?.breaker),
        },
        "wire" => cord()?.wire.known().map(|it| Value::Name(it.to_string())),
        "conductors" => cord()?.conductors.known().map(|it| Value::Count((*it).into())),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::judge::build;
    use crate::judge::looks::fields_of;
    use crate::plan::arbitrary;
    use crate::rules::testing::{LENT_BOX, lent_box_before, plan};
    use crate::words::Words;

    /// Returns the line about each look.
    fn lines(plan: &Plan) -> Vec<String> {
        let report = build(plan);
        report.figures.looks.iter().map(|look| Words::english().look_line(&report, look)).collect()
    }

    /// Each line says what to find, and the danger that is gone then. With 14 AWG, the cord is still a danger.
    #[test]
    fn what_an_answer_changes_is_said() {
        let before = plan(&lent_box_before());
        let all = lines(&before).join("\n");
        for told in [
            "If it says 12/3 or 10/3, “cord1” carries 15\u{a0}A, and these dangers are gone: ",
            "“cord1” might have no ground wire.",
            "If TEST and RESET are there and a testing lab’s mark is on it, these dangers are gone: ",
            "If it is in the open or under a high roof, this danger is gone: The generator might be closed in",
            "If it is 1,000\u{a0}ft or lower, this warning is gone: Too much is on together.",
        ] {
            assert!(all.contains(told), "{told}\n{all}");
        }
        let looks = build(&before).figures.looks;
        let mut looked = all_answered(&before, &fields_of(&looks));
        let mut found = |wire: &str, altitude: &str| {
            answer_as(&mut looked, "cord.cord1.wire", wire).expect("a wire");
            answer_as(&mut looked, "site.altitude", altitude).expect("a height");
            let report = build(&looked);
            let cord = report.figures.limit(&looked.cords[0].id).map(|it| it.short_amps.milliamps());
            let is = |code: &str| report.findings.iter().any(|it| it.code == code && it.signal <= Signal::Warning);
            (cord, is("OVER001"), is("POWER001"))
        };
        assert_eq!(found("12 AWG", "1000 ft"), (Some(15_000), false, false));
        assert_ne!(found("14 AWG", "1000 ft"), (Some(15_000), false, false));
        assert_eq!(found("12 AWG", "2000 ft"), (Some(15_000), false, true));
    }

    /// A box that joins neutral and ground is wrong with a floating and with a bonded generator, so no answer about the
    /// generator is said to make it right.
    #[test]
    fn what_is_wrong_either_way_is_not_said_to_go() {
        let text = crate::rules::testing::edited(&[
            ("bond = false", "bond = true"),
            ("neutral = \"bonded\"", "neutral = \"unknown\""),
        ]);
        let told = lines(&plan(&text)).join("\n");
        assert!(!told.contains("Neutral is joined to ground inside"), "{told}");
    }

    /// Where loads get an outlet, they are placed again: at the height that is named, the heater has one.
    #[test]
    fn the_height_at_which_all_have_an_outlet_is_found_by_trial() {
        let thin = LENT_BOX.replacen("altitude = \"500 ft\"", "altitude = \"unknown\"", 1);
        let told = lines(&plan(&thin)).join("\n");
        assert!(told.contains("If it is 4,000\u{a0}ft or lower, this is gone: No usable outlet"), "{told}");
        let lost = |altitude: &str| {
            let text = thin.replacen("altitude = \"unknown\"", &format!("altitude = \"{altitude}\""), 1);
            build(&plan(&text)).figures.sharing.unplaced.len()
        };
        assert_eq!((lost("4000 ft"), lost("5000 ft")), (0, 1));
    }

    /// Without a GFCI, dry ground leaves a caution. A GFCI leaves nothing.
    #[test]
    fn what_becomes_milder_is_not_said_to_go() {
        let told = |gfci: &str| {
            let edits = [("ground = \"wet\"", "ground = \"unknown\""), ("gfci = true # left", gfci)];
            lines(&plan(&crate::rules::testing::edited(&edits))).join("\n")
        };
        let (none, unread) = (told("gfci = false"), told("gfci = \"unknown\""));
        assert!(none.contains("this is only CAUTION: "), "{none}");
        assert!(!none.contains(" gone"), "{none}");
        assert!(unread.contains("this danger is gone: "), "{unread}");
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(48))]

        /// What is said to go is there now, is said to go once, and something has to be found for it.
        #[test]
        fn nothing_goes_twice_or_by_itself(plan in arbitrary::camp()) {
            let report = build(&plan);
            let mut gone: Vec<usize> = Vec::new();
            for look in &report.figures.looks {
                let signals: Vec<Signal> = look.gone.iter().map(|at| report.findings[*at].signal).collect();
                prop_assert!(signals.windows(2).all(|pair| pair[0] == pair[1]));
                prop_assert!(look.left.is_none_or(|left| signals.iter().all(|signal| *signal < left)));
                prop_assert!(look.find.iter().all(|it| look.fields.contains(&it.field)));
                gone.extend(&look.gone);
            }
            let all = gone.len();
            gone.sort_unstable();
            gone.dedup();
            prop_assert_eq!(gone.len(), all);
        }
    }
}

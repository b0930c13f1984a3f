//! What to look at, ordered by how much it clears.
//!
//! Somebody walks up to one thing, such as the generator, a cord or a box, and reads everything it says: the unknowns
//! of one such reading are one look. The looks cover what a danger or warning rests on, or an outlet for what must run,
//! and then markings on the gear that a caution rests on. Those that clear a danger of exhaust come first, then those
//! that clear the most dangers, warnings and cautions. Each look carries what goes away once it and all looks before it
//! get the best answers. Purchases come last, because people look today and buy tomorrow. Looks are numbered in this
//! order.

use std::collections::BTreeMap;

use super::unknowns::{
    Changes, Standing, all_answered, answered_with_more, cleared, deadly, eased, is_found_out, is_left_out, lasts,
};
use crate::plan::{Id, Plan};
use crate::report::{Finding, Look, Marking, Next, Report, Signal};

mod buy;
mod then;

pub(crate) use self::buy::as_bought;

/// As many as fit on one sheet. The rest follow when these are answered.
const MOST: usize = 9;

/// As many as anyone takes along on a sheet, unless a danger needs more.
const ENOUGH: usize = 6;

/// As many as anyone can remember on the way to the generator.
const MOST_NEXT: usize = 3;

/// Returns where a field is found out: the thing, and what to read on it.
fn reading(field: &str) -> (&str, Marking) {
    let (path, name) = field.rsplit_once('.').unwrap_or(("", field));
    let (thing, outlet) = match path.split_once(".outlet.") {
        Some((thing, _)) => (thing, true),
        None => (path, false),
    };
    let read = match (thing.split('.').next().unwrap_or(thing), name) {
        // A main breaker is not among the outlets.
        ("box", "breaker") if !outlet => Marking::Other,
        ("generator" | "box" | "cord", "gfci" | "breaker" | "trips_at" | "sockets")
        | ("box" | "cord", "plug" | "ends" | "inlet" | "outlet") => Marking::Face,
        ("generator", "rated" | "peak" | "voltage" | "inverter" | "rated_on")
        | ("load", "running" | "voltage" | "legs" | "starting" | "power_factor" | "plug") => Marking::Nameplate,
        ("generator", "neutral" | "bonding_plug" | "bonding_plug_in") => Marking::Neutral,
        ("box", "listed" | "bond") | ("box" | "generator", "leg") => Marking::Maker,
        ("box", "wire") if outlet => Marking::Maker,
        ("cord", "wire" | "conductors" | "outdoor") => Marking::Print,
        _ => Marking::Other,
    };
    (thing, read)
}

/// Returns the same for this plan. For a thing not bought yet, everything is on its package.
fn reading_in<'f>(plan: &Plan, field: &'f str) -> (&'f str, Marking) {
    let (thing, read) = reading(field);
    let read = if buy::is_to_buy(plan, thing) { Marking::Package } else { read };
    (thing, read)
}

/// Whether anybody can find it out yet. For a thing not bought yet, only what its package says.
fn can_be_seen(plan: &Plan, field: &str) -> bool {
    !buy::is_to_buy(plan, reading(field).0) || buy::on_package(field)
}

/// Whether one reading answers both fields.
fn together(plan: &Plan, one: &str, other: &str) -> bool {
    let of = reading_in(plan, one);
    of == reading_in(plan, other) && (of.1 != Marking::Other || one == other)
}

/// Whether somebody who reads one field also sees the other and should act on it. With a cord in hand it costs nothing
/// to unwind it and pace it off, at a box one can look for its buttons and its mark, and the generator's watts are next
/// to its volts.
fn at_hand(field: &str, other: &str) -> bool {
    let ((thing, read), (of_other, read_too)) = (reading(field), reading(other));
    let name = other.rsplit('.').next();
    let powers = matches!(other, "generator.voltage" | "generator.rated" | "generator.peak");
    if powers && (read, read_too) == (Marking::Nameplate, Marking::Nameplate) {
        return thing == of_other;
    }
    let printed = (read, read_too) == (Marking::Print, Marking::Print);
    let of_cord = thing.starts_with("cord.") && (printed || matches!(name, Some("coiled" | "length")));
    // This excludes a camper, whose inside is its maker's.
    let of_box = thing.starts_with("box.") && other.contains(".outlet.") && name == Some("gfci");
    let mark = thing.starts_with("box.") && read == Marking::Face && name == Some("listed");
    thing == of_other && (of_cord || of_box || mark)
}

/// Whether it cannot be seen from outside. It has to be asked for, but what the thing itself says may answer it.
fn is_inside(field: &str) -> bool {
    let name = field.rsplit('.').next();
    field.starts_with("box.") && matches!(name, Some("wire" | "bond"))
}

/// Returns the thing a field belongs to, if people can point at it. The end of a cord, such as `long.2`, belongs to the
/// cord.
fn thing(field: &str) -> Option<Id> {
    let mut path = reading(field).0.split('.');
    match path.next()? {
        "site" => None,
        Id::SET => Id::new(Id::SET),
        _ => Id::new(path.next()?),
    }
}

/// Returns the looks for a plan, from the leading findings of its troubles: findings that another action clears go with
/// that. Parts that certainly must not be used need no looking at. `found_with` returns the findings with other answers,
/// which change no more than this. `served` are the findings about loads that get an outlet with the best answers to
/// these fields.
pub(super) fn looks(
    plan: &Plan,
    report: &Report,
    served: &[(usize, Vec<String>)],
    found_with: impl FnMut(&Plan, Changes) -> Vec<Finding>,
) -> Vec<Look> {
    let served = served.iter().map(|(at, fields)| (&report.findings[*at], fields.as_slice())).collect();
    let mut trials = Trials { plan, served, found_with, known: BTreeMap::new() };
    let told = report.figures.troubles.iter();
    let told = told.filter_map(|trouble| report.findings_of(trouble).next());
    let refused = |id: &Id| {
        let told = report.refused(id).and_then(|why| report.told_by(why));
        told.is_some_and(|it| it.rests_on.is_empty())
    };
    let known = |it: &Finding| !it.about.is_empty() && it.about.iter().all(refused);
    // What remains of the findings that rest on an unknown.
    let mut left: Vec<&Finding> =
        told.filter(|it| looked_at(plan, report, it).next().is_some() && !known(it)).collect();
    let told = left.clone();
    let mut answered: Vec<String> = Vec::new();
    let mut looks: Vec<Look> = Vec::new();
    while looks.len() < MOST {
        // In the order in which they were assumed, so that the first wins a tie.
        let mut readings: Vec<(Vec<&str>, Weight)> = Vec::new();
        for finding in &left {
            let alone = !looked_at(plan, report, finding).any(lasts);
            let fields = looked_at(plan, report, finding).filter(|field| alone || lasts(field));
            let mut counted: Vec<usize> = Vec::new();
            for field in fields.filter(|field| answered.iter().all(|it| it != field)) {
                let at = readings.iter().position(|(its, _)| together(plan, its[0], field));
                let at = at.unwrap_or_else(|| {
                    readings.push((vec![field], Weight::default()));
                    readings.len() - 1
                });
                let (fields, weight) = &mut readings[at];
                if !counted.contains(&at) {
                    weight.add(finding);
                    counted.push(at);
                }
                if !fields.contains(&field) {
                    fields.push(field);
                }
            }
        }
        // Reversed because `max_by_key` returns the last of equals.
        readings.reverse();
        let Some((fields, _)) = readings.into_iter().max_by_key(|(_, weight)| *weight) else {
            break;
        };
        let mut fields: Vec<String> = fields.into_iter().map(str::to_owned).collect();
        fields.sort_by_key(|field| is_inside(field));
        let more = report.figures.assumed.iter().map(|it| &it.field);
        let at_hand = |more: &&String| {
            let packed = reading_in(plan, more).1 == Marking::Package;
            let packed = packed && is_found_out(plan, more) && together(plan, &fields[0], more);
            (packed || at_hand(&fields[0], more)) && can_be_seen(plan, more)
        };
        let more = more.filter(|more| at_hand(more) && !answered.contains(more));
        let mut more: Vec<String> = more.filter(|it| !fields.contains(it)).cloned().collect();
        more.sort_by_key(|it| !together(plan, &fields[0], it));
        fields.extend(more);
        answered.extend(fields.iter().cloned());
        let found = trials.found(&answered);
        left.retain(|finding| !cleared(finding, found));
        looks.push(Look::new(thing(&fields[0]), reading_in(plan, &fields[0]).1, fields));
    }
    // What is left with these answers, overall and of each leading finding.
    let standing = |found: &[Finding]| {
        let left = told.iter().map(|it| Left::of(it, &report.findings, found));
        (Standing::of(plan, found), left.collect::<Vec<Left>>())
    };
    // Drops looks that the others make needless, starting with the last, which weighs the least.
    let (best, best_left) = standing(trials.found(&fields_of(&looks)));
    for at in (0..looks.len()).rev() {
        let mut others = looks.clone();
        others.remove(at);
        let (then, left) = standing(trials.found(&fields_of(&others)));
        if then == best && left.iter().zip(&best_left).all(|(then, best)| then <= best) {
            looks = others;
        }
    }
    let (packages, mut looks): (Vec<Look>, Vec<Look>) =
        (looks.into_iter()).partition(|look| look.read == Marking::Package);
    let mut now = Standing { dangers: report.count(Signal::Danger), warnings: report.count(Signal::Warning) };
    for at in 0..looks.len() {
        let fields = fields_of(&looks[..=at]);
        let then = Standing::of(plan, trials.found(&fields));
        looks[at].dangers = now.dangers.saturating_sub(then.dangers);
        looks[at].warnings = now.warnings.saturating_sub(then.warnings);
        now = then;
    }
    while looks.len() > ENOUGH && looks.last().is_some_and(|last| last.dangers == 0) {
        looks.pop();
    }
    for at in 0..looks.len() {
        let (before, fields) = (fields_of(&looks[..at]), fields_of(&looks[..=at]));
        then::tell(report, &mut trials, &before, &fields, &mut looks[at]);
    }
    looks.extend(buy::purchases(plan, report, &looks, packages));
    looks
}

/// What is left of a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Left {
    Nothing,
    /// It is milder, or about fewer parts.
    Less,
    All,
}

impl Left {
    /// Compares a finding before and after. For a caution, some of it counts as all of it: nobody walks for half a
    /// caution.
    fn of(finding: &Finding, now: &[Finding], then: &[Finding]) -> Self {
        if cleared(finding, then) {
            Self::Nothing
        } else if finding.signal <= Signal::Warning && eased(finding, now, then) {
            Self::Less
        } else {
            Self::All
        }
    }
}

/// The findings with the best answers to some fields. Each set of fields is tried once.
struct Trials<'a, F> {
    plan: &'a Plan,
    /// The findings that go once these fields are answered.
    served: Vec<(&'a Finding, &'a [String])>,
    found_with: F,
    known: BTreeMap<Vec<String>, Vec<Finding>>,
}

impl<F: FnMut(&Plan, Changes) -> Vec<Finding>> Trials<'_, F> {
    fn found(&mut self, fields: &[String]) -> &[Finding] {
        let (plan, served, found_with) = (self.plan, &self.served, &mut self.found_with);
        let known = self.known.entry(fields.to_vec());
        known.or_insert_with(|| {
            let changes = Changes::of_all(fields);
            let least = found_with(&all_answered(plan, fields), changes);
            let most = answered_with_more(plan, fields).map(|more| found_with(&more, changes));
            let better = |it: &Vec<Finding>| Standing::of(plan, it) < Standing::of(plan, &least);
            let mut found = most.filter(better).unwrap_or(least);
            for (served, _) in served.iter().filter(|(_, by)| by.iter().all(|it| fields.contains(it))) {
                found.retain(|it| cleared(served, std::slice::from_ref(it)));
            }
            found
        })
    }
}

/// Returns all fields that these looks answer.
fn fields_of(looks: &[Look]) -> Vec<String> {
    looks.iter().flat_map(|look| look.fields.iter().cloned()).collect()
}

/// Returns the fields to look at among those a finding rests on. For a caution, only those that can be read on the
/// spot, unless something that must run has no outlet.
fn looked_at<'f>(plan: &Plan, report: &Report, finding: &'f Finding) -> impl Iterator<Item = &'f str> {
    let left_out = is_left_out(plan, &report.figures, finding);
    let fields = finding.rests_on.iter().map(|it| it.field.as_str());
    let fields = fields.filter(|field| can_be_seen(plan, field));
    fields.filter(move |field| match finding.signal {
        Signal::Danger | Signal::Warning => true,
        Signal::Caution if left_out => true,
        Signal::Caution => reading(field).1 != Marking::Other && !is_inside(field),
        Signal::Notice => false,
    })
}

/// How much rests on a reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Weight {
    /// Whether something kills while nothing looks wrong.
    deadly: bool,
    dangers: usize,
    warnings: usize,
    cautions: usize,
}

impl Weight {
    fn add(&mut self, finding: &Finding) {
        self.deadly |= deadly(finding);
        match finding.signal {
            Signal::Danger => self.dangers += 1,
            Signal::Warning => self.warnings += 1,
            Signal::Caution | Signal::Notice => self.cautions += 1,
        }
    }
}

/// Whether nothing that a finding is about may be used anyway, because of another finding.
fn barred_otherwise(report: &Report, finding: &Finding) -> bool {
    let barred = |id: &Id| report.refused(id).is_some_and(|why| why.code != finding.code);
    !finding.about.is_empty() && finding.about.iter().all(barred)
}

/// Returns the first things to do. What is free comes before what is not: looking clears many dangers without anybody
/// buying anything.
pub(super) fn next(plan: &Plan, report: &Report) -> Vec<Next> {
    // Keeps the order in which the looks were found, because what a look clears assumes those before it.
    let looks = &report.figures.looks;
    let dangers = looks.iter().rposition(|look| look.dangers > 0);
    let serious = report.findings.iter();
    let serious = serious.filter(|it| it.signal <= Signal::Warning || is_left_out(plan, &report.figures, it));
    let serious: Vec<&str> = serious.flat_map(|it| looked_at(plan, report, it)).collect();
    // Any other caution can wait.
    let asked = |look: &Look| look.fields.iter().any(|it| serious.contains(&it.as_str()));
    let looks = looks.iter().enumerate().filter(|(_, look)| asked(look));
    let looks = looks.map(|(at, _)| {
        let rank = if Some(at) <= dangers { 1 } else { 3 };
        (rank, Next::Look(at))
    });
    // A trouble that rests on an unknown is looked at first.
    let troubles = report.figures.troubles.iter().enumerate();
    let known = troubles.filter_map(|(at, trouble)| {
        let lead = report.findings_of(trouble).next()?;
        let rank = match trouble.signal {
            Signal::Danger if deadly(lead) => 0,
            // What must not be used for another reason is told with that reason.
            Signal::Danger if barred_otherwise(report, lead) => 3,
            Signal::Danger => 2,
            Signal::Warning => 4,
            Signal::Caution | Signal::Notice => return None,
        };
        lead.rests_on.is_empty().then_some((rank, Next::Trouble(at)))
    });
    let mut all: Vec<(u8, Next)> = looks.chain(known).collect();
    all.sort_by_key(|(rank, _)| *rank);
    all.truncate(MOST_NEXT);
    all.into_iter().map(|(_, next)| next).collect()
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use proptest::prelude::*;

    use super::*;
    use crate::judge::build;
    use crate::judge::unknowns::counts;
    use crate::loads;
    use crate::plan::arbitrary;
    use crate::report::limits;
    use crate::rules::testing::{LENT_BOX, lent_box_before, report};
    use crate::rules::{self, Facts};
    use crate::supply::Supply;
    use crate::verdict::Verdicts;

    /// A receptacle with its buttons and its breaker is one look, and the print on a cord another. Each thing has looks
    /// of its own.
    #[test]
    fn what_is_read_at_one_thing_is_one_look() {
        let plan = crate::rules::testing::plan(&crate::rules::testing::edited(&[]));
        for (one, other, same) in [
            ("generator.outlet.a.gfci", "generator.outlet.b.breaker", true),
            ("box.b.outlet.a.gfci", "generator.outlet.a.gfci", false),
            ("cord.long.wire", "cord.long.conductors", true),
            ("cord.long.wire", "cord.short.wire", false),
            ("cord.long.wire", "cord.long.coiled", false),
            ("box.b.listed", "box.b.outlet.a.wire", true),
            ("box.b.breaker", "box.b.outlet.a.breaker", false),
            ("site.ground", "site.stands", false),
        ] {
            assert_eq!(together(&plan, one, other), same, "{one} {other}");
        }
        for (field, expected) in [
            ("site.ground", None),
            ("generator.peak", Some("generator")),
            ("generator.outlet.a.gfci", Some("generator")),
            ("box.b.outlet.a.wire", Some("b")),
            ("cord.long.2.leg", Some("long")),
        ] {
            let found = thing(field);
            assert_eq!(found.as_ref().map(Id::as_str), expected, "{field}");
        }
    }

    /// Neutral is joined to ground twice if the generator does it and a plug does: a caution, which is worth a look but
    /// is not among the first things to do. What is known is not looked at.
    #[test]
    fn what_a_caution_rests_on_can_be_looked_at() {
        let looked_at = |plug: &str| {
            let report = report(&[("neutral = \"bonded\"", "neutral = \"unknown\""), ("bonding_plug = false", plug)]);
            assert_eq!(report.worst(), Some(Signal::Caution), "{plug}");
            assert_eq!(report.figures.next, []);
            let looks = report.figures.looks.into_iter();
            looks.flat_map(|it| it.fields).collect::<Vec<_>>()
        };
        let asked = looked_at("bonding_plug = \"unknown\"");
        assert!(asked.contains(&"generator.bonding_plug".to_owned()), "{asked:?}");
        assert_eq!(looked_at("bonding_plug = false"), [""; 0]);
    }

    /// Exhaust comes first. A known shock danger waits until somebody has looked for what is unknown.
    #[test]
    fn looking_comes_ahead_of_what_is_known_but_not_of_exhaust() {
        let near = ("sleepers_at = \"60 ft\"", "sleepers_at = \"8 ft\"");
        let bare = ("gfci = true # left", "gfci = false");
        let wires = ("conductors = 3 # long", "conductors = \"unknown\"");
        let report = report(&[near, bare, wires]);
        let told: Vec<&str> = report
            .figures
            .next
            .iter()
            .map(|next| match next {
                Next::Look(at) => report.figures.looks[*at].fields[0].as_str(),
                Next::Trouble(at) => report.findings[report.figures.troubles[*at].findings[0]].code,
            })
            .collect();
        assert_eq!(told, ["AIR001", "cord.long.conductors", "SHOCK001"]);
        assert_eq!(report.figures.looks[0].dangers, 1);
    }

    /// With unknown volts, watts and altitude, half of the generator cannot run the kettle, which the right volts
    /// clear. They are on the list even though the rest then shows that it is too much for the whole generator too, and
    /// the watts are read along with the volts.
    #[test]
    fn what_a_warning_rests_on_is_on_the_list() {
        let report = report(&[
            ("rated = \"3600 W\"", "rated = \"unknown\""),
            ("peak = \"4500 W\"", "peak = \"2200 W\""),
            ("voltage = \"120 V\"", "voltage = \"unknown\""),
            ("running = \"1500 W\"", "running = \"1000 W\""),
            ("running = \"50 W\"", "running = \"600 W\""),
            ("altitude = \"0 ft\"", "altitude = \"unknown\""),
        ]);
        let found = report.findings.iter().find(|it| it.code == "POWER001");
        let rests = &found.expect("it is too much").rests_on;
        assert!(rests.iter().any(|it| it.field == "generator.voltage"));
        let looks = &report.figures.looks;
        let asked = |field: &str| looks.iter().position(|it| it.fields.iter().any(|it| it == field));
        let volts = asked("generator.voltage");
        assert!(volts.is_some(), "{looks:?}");
        assert_eq!(volts, asked("generator.rated"));
    }

    /// In the thin air that is assumed, there is no outlet for the heater. That rests on the elevation, and looking it up
    /// is the first thing to do. Near misses: the elevation is known, or the heater need not run.
    #[test]
    fn what_must_run_has_no_outlet_because_of_the_power() {
        let look = |edits: &[(&str, &str)]| {
            let text = edits.iter().fold(LENT_BOX.to_owned(), |text, (from, to)| {
                assert!(text.contains(from), "{from}");
                text.replacen(from, to, 1)
            });
            let report = build(&crate::rules::testing::plan(&text));
            let rests = report.findings.iter().filter(|it| it.code == "FIT004").flat_map(|it| &it.rests_on);
            let rests: Vec<String> = rests.map(|it| it.field.clone()).collect();
            let looks: Vec<Vec<String>> = report.figures.looks.iter().map(|it| it.fields.clone()).collect();
            let next = report.figures.next.first() == Some(&Next::Look(0));
            (report.figures.sharing.unplaced.len(), rests, looks, next)
        };
        let thin = ("altitude = \"500 ft\"", "altitude = \"unknown\"");
        let wish = ("continuous = true\nwanted = \"must\"", "continuous = true\nwanted = \"wish\"");
        let (heater, wished) = (format!("starting = \"1500 W\"\npower_factor = 1.0\n{}", wish.0), wish.1);
        let wish = (heater.as_str(), format!("starting = \"1500 W\"\npower_factor = 1.0\n{wished}"));
        let altitude = || "site.altitude".to_owned();
        assert_eq!(look(&[thin]), (1, vec![altitude()], vec![vec![altitude()]], true));
        // Now there is power enough to have it on with the others, which is another matter.
        assert_eq!(look(&[]), (0, vec![], vec![vec!["generator.peak".to_owned()]], true));
        assert_eq!(look(&[thin, (wish.0, &wish.1)]), (1, vec![], vec![], false));
    }

    /// The buttons and the mark of a box are one look, whichever weighs more. With a cord in hand, it is paced off.
    #[test]
    fn what_is_read_at_a_box_or_a_cord_is_one_line() {
        for (field, other, same) in [
            ("box.b.outlet.a.gfci", "box.b.listed", true),
            ("box.b.listed", "box.b.outlet.a.gfci", true),
            ("box.b.outlet.a.gfci", "box.c.listed", false),
            ("box.b.outlet.a.gfci", "box.b.bond", false),
            ("cord.long.wire", "cord.long.length", true),
            ("cord.long.wire", "cord.short.length", false),
        ] {
            assert_eq!(at_hand(field, other), same, "{field} {other}");
        }
        let looks = build(&crate::rules::testing::plan(&lent_box_before())).figures.looks;
        let alone: BTreeSet<&Option<Id>> = looks.iter().map(|it| &it.at).filter(|at| at.is_some()).collect();
        assert_eq!(alone.len(), looks.iter().filter(|it| it.at.is_some()).count(), "{looks:#?}");
        assert!(looks.iter().any(|it| it.fields == ["site.altitude"]), "{looks:#?}");
    }

    /// One manual says which half feeds each outlet of a box.
    #[test]
    fn the_halves_of_one_box_are_one_look() {
        let plan = crate::rules::testing::plan(&crate::rules::testing::edited(&[]));
        let [left, right] = ["left", "right"].map(|id| format!("box.box.outlet.{id}.leg"));
        assert!(together(&plan, &left, &right));
        assert!(!together(&plan, &left, "generator.outlet.front.leg"));
    }

    /// Returns the findings with these answers, with everything plugged in where it is.
    fn found_with(plan: &Plan, report: &Report) -> Vec<Finding> {
        let supply = Supply::build(plan);
        let verdicts = Verdicts::of(plan, &supply);
        let mut figures = report.figures.clone();
        figures.limits = limits(&supply, &verdicts);
        figures.loads = loads::facts(plan);
        rules::check_some(&Facts::new(plan, &supply, &verdicts, &figures), counts)
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(48))]

        /// Whatever a danger or a warning rests on is on the list, unless the list is full, or the finding goes away
        /// with what is listed, or answering it as well would ease nothing.
        #[test]
        fn nothing_serious_rests_on_what_is_on_no_list(plan in arbitrary::camp()) {
            let report = build(&plan);
            let looks = &report.figures.looks;
            let found = |fields: &[String]| -> Vec<Vec<Finding>> {
                let answered = [Some(all_answered(&plan, fields)), answered_with_more(&plan, fields)];
                answered.into_iter().flatten().map(|it| found_with(&it, &report)).collect()
            };
            let then = found(&fields_of(looks));
            let leads = report.figures.troubles.iter();
            let leads = leads.filter_map(|trouble| report.findings_of(trouble).next());
            let refused = |id: &Id| report.refused(id).is_some();
            for lead in leads.filter(|it| it.signal <= Signal::Warning && !it.about.iter().any(refused)) {
                let fields: Vec<&str> = looked_at(&plan, &report, lead).collect();
                let listed = |field: &&str| looks.iter().any(|it| it.fields.iter().any(|it| it == field));
                // Counted as the list does: of more and less power the better result, and on a tie less.
                let with = || {
                    let more = fields.iter().map(|field| (*field).to_owned());
                    let all = found(&fields_of(looks).into_iter().chain(more).collect::<Vec<_>>());
                    all.into_iter().min_by_key(|it| Standing::of(&plan, it)).unwrap_or_default()
                };
                prop_assert!(
                    fields.is_empty()
                        || fields.iter().any(listed)
                        || looks.len() >= ENOUGH
                        || then.iter().any(|it| cleared(lead, it))
                        || !eased(lead, &report.findings, &with()),
                    "{} {:?}: {fields:?} {looks:?}", lead.code, lead.about
                );
            }
        }

        /// Nothing is looked at twice or in vain, and there are looks only if something rests on an unknown.
        #[test]
        fn each_look_is_for_something_that_is_found(plan in arbitrary::camp()) {
            let report = build(&plan);
            let leads = report.figures.troubles.iter();
            let leads = leads.filter_map(|trouble| report.findings_of(trouble).next());
            let rests: BTreeSet<&str> = leads.flat_map(|it| looked_at(&plan, &report, it)).collect();
            let looks = &report.figures.looks;
            let fields: Vec<&str> = looks.iter().flat_map(|it| &it.fields).map(String::as_str).collect();
            let once: BTreeSet<&str> = fields.iter().copied().collect();
            prop_assert_eq!(once.len(), fields.len());
            for look in looks.iter().filter(|look| look.read != Marking::Package) {
                let first = &look.fields[0];
                let mut asked = look.fields.iter().filter(|it| *it == first || !at_hand(first, it));
                prop_assert!(asked.all(|field| rests.contains(field.as_str())));
            }
            prop_assert!(!rests.is_empty() || looks.iter().all(|look| look.read == Marking::Package));
            // Looking comes before buying.
            prop_assert!(looks.is_sorted_by_key(|look| look.read == Marking::Package));
            let looked = looks.iter().filter(|look| look.read != Marking::Package);
            prop_assert!(looked.count() <= MOST);
            // No more dangers go away than there are.
            let gone: usize = looks.iter().map(|it| it.dangers).sum();
            prop_assert!(gone <= report.count(Signal::Danger));
        }
    }
}

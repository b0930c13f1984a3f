//! What to look at, in the order in which it clears most.
//!
//! Somebody walks to one thing, the generator, a cord, a box, and reads there all that it says: the unknowns of
//! one such reading are one look. What a danger or a warning rests on is looked at, and then what is marked on the
//! gear and a caution rests on; what clears a danger of exhaust comes first, then what clears most dangers, most
//! warnings, most cautions. Each is told with what goes away once it and all looks ahead of it have the best answers.
//! What is to be bought comes last: somebody looks today, and buys tomorrow. Whoever numbers the looks counts in this
//! order.

use std::collections::BTreeMap;

use super::unknowns::{Standing, all_answered, answered_with_more, cleared, deadly, eased, is_found_out};
use crate::plan::{Id, Plan};
use crate::report::{Finding, Look, Marking, Next, Report, Signal};

mod buy;

pub(crate) use self::buy::as_bought;

/// As many as one sheet holds; what is left comes when these are answered.
const MOST: usize = 9;

/// As many as anyone takes a sheet for, unless a danger needs more.
const ENOUGH: usize = 6;

/// As many as somebody keeps in mind on the way to the generator.
const MOST_NEXT: usize = 3;

/// Where a field is found out: the thing, and what is read there.
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

/// The same in this plan: of a thing that is not bought yet all stands on its package.
fn reading_in<'f>(plan: &Plan, field: &'f str) -> (&'f str, Marking) {
    let (thing, read) = reading(field);
    let read = if buy::is_to_buy(plan, thing) { Marking::Package } else { read };
    (thing, read)
}

/// Whether anybody can look for it by now: of what is not bought yet, only what its package tells.
fn can_be_seen(plan: &Plan, field: &str) -> bool {
    !buy::is_to_buy(plan, reading(field).0) || buy::on_package(field)
}

/// Whether one reading answers both.
fn together(plan: &Plan, one: &str, other: &str) -> bool {
    let of = reading_in(plan, one);
    of == reading_in(plan, other) && (of.1 != Marking::Other || one == other)
}

/// Whether somebody who reads one field sees the other as well, and had better: who has a cord in hand unwinds it, which
/// costs nothing, who stands at a box looks for its buttons, and who reads the volts of the generator reads its watts.
fn at_hand(field: &str, other: &str) -> bool {
    let ((thing, read), (of_other, read_too)) = (reading(field), reading(other));
    let name = other.rsplit('.').next();
    let powers = matches!(other, "generator.voltage" | "generator.rated" | "generator.peak");
    if powers && (read, read_too) == (Marking::Nameplate, Marking::Nameplate) {
        return thing == of_other;
    }
    let of_cord = thing.starts_with("cord.") && name == Some("coiled");
    // What a camper has inside is its maker's.
    let of_box = other.contains(".outlet.") && thing.starts_with("box.") && name == Some("gfci");
    thing == of_other && (of_cord || of_box)
}

/// Whether nobody sees it from outside: it has to be asked for, and what the thing itself says may answer it.
fn is_inside(field: &str) -> bool {
    let name = field.rsplit('.').next();
    field.starts_with("box.") && matches!(name, Some("wire" | "bond"))
}

/// The thing of a field, if it is one that people point at. The end of a cord, as in `long.2`, is of the cord.
fn thing(field: &str) -> Option<Id> {
    let mut path = reading(field).0.split('.');
    match path.next()? {
        "site" => None,
        Id::SET => Id::new(Id::SET),
        _ => Id::new(path.next()?),
    }
}

/// What is to be looked at in this plan, for the findings in whose words its troubles are told: what the deed for
/// something graver clears goes with that. Of what must not be used for certain nobody has to know more. `found_with`
/// tells what is found with other answers to these fields. With it the plan once all that is to be bought is as the looks
/// say, if anything is.
pub(super) fn looks(
    plan: &Plan,
    report: &Report,
    found_with: impl FnMut(&Plan, &[String]) -> Vec<Finding>,
) -> (Vec<Look>, Option<Plan>) {
    let mut trials = Trials { plan, found_with, known: BTreeMap::new() };
    let told = report.figures.troubles.iter();
    let told = told.filter_map(|trouble| report.findings_of(trouble).next());
    let refused = |id: &Id| {
        let told = report.refused(id).and_then(|why| report.told_by(why));
        told.is_some_and(|it| it.rests_on.is_empty())
    };
    let known = |it: &Finding| !it.about.is_empty() && it.about.iter().all(refused);
    // What is still there, of all that rests on an unknown.
    let mut left: Vec<&Finding> = told.filter(|it| looked_at(plan, it).next().is_some() && !known(it)).collect();
    let told = left.clone();
    let mut answered: Vec<String> = Vec::new();
    let mut looks: Vec<Look> = Vec::new();
    while looks.len() < MOST {
        // In the order in which they were assumed: of two that weigh the same the first is told first.
        let mut readings: Vec<(Vec<&str>, Weight)> = Vec::new();
        for finding in &left {
            // Ground that is dry is wet after the next rain: what the gear says lasts.
            let lasts = |field: &&str| *field != "site.ground";
            let alone = !looked_at(plan, finding).any(|field| lasts(&field));
            let fields = looked_at(plan, finding).filter(|field| alone || lasts(field));
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
        // `max_by_key` would take the last of equals.
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
        let more: Vec<String> = more.filter(|it| !fields.contains(it)).cloned().collect();
        fields.extend(more);
        answered.extend(fields.iter().cloned());
        let found = trials.found(&answered);
        left.retain(|finding| !cleared(finding, found));
        looks.push(Look::new(thing(&fields[0]), reading_in(plan, &fields[0]).1, fields));
    }
    // How much is left with these answers, and of what was told what.
    let standing = |found: &[Finding]| {
        let left = told.iter().map(|it| Left::of(it, &report.findings, found));
        (Standing::of(plan, found), left.collect::<Vec<Left>>())
    };
    // Nobody walks for what the others make needless: the last weighs least.
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
        let then = Standing::of(plan, trials.found(&fields_of(&looks[..=at])));
        looks[at].dangers = now.dangers.saturating_sub(then.dangers);
        looks[at].warnings = now.warnings.saturating_sub(then.warnings);
        now = then;
    }
    while looks.len() > ENOUGH && looks.last().is_some_and(|last| last.dangers == 0) {
        looks.pop();
    }
    let (packages, bought) = buy::purchases(plan, report, &looks, packages);
    looks.extend(packages);
    (looks, bought)
}

/// Whether a finding is there only as long as what is not bought yet is unknown, by what is found once it is bought. Of
/// exhaust nobody is told by a list of what to buy, and what is certain is told whatever is bought.
pub(super) fn is_to_buy(finding: &Finding, bought: &[Finding]) -> bool {
    !finding.rests_on.is_empty() && finding.area != "air" && cleared(finding, bought)
}

/// What is left of a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Left {
    Nothing,
    /// It is milder, or of fewer parts.
    Less,
    All,
}

impl Left {
    /// Of a caution some of it is as much as all of it: nobody walks for half of that.
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

/// What is found with the best answers to some fields, each set of them tried once.
struct Trials<'a, F> {
    plan: &'a Plan,
    found_with: F,
    known: BTreeMap<Vec<String>, Vec<Finding>>,
}

impl<F: FnMut(&Plan, &[String]) -> Vec<Finding>> Trials<'_, F> {
    fn found(&mut self, fields: &[String]) -> &[Finding] {
        let (plan, found_with) = (self.plan, &mut self.found_with);
        let known = self.known.entry(fields.to_vec());
        known.or_insert_with(|| {
            let least = found_with(&all_answered(plan, fields), fields);
            let most = answered_with_more(plan, fields).map(|more| found_with(&more, fields));
            let better = |it: &Vec<Finding>| Standing::of(plan, it) < Standing::of(plan, &least);
            most.filter(better).unwrap_or(least)
        })
    }
}

/// All that is answered by these.
fn fields_of(looks: &[Look]) -> Vec<String> {
    looks.iter().flat_map(|look| look.fields.iter().cloned()).collect()
}

/// What somebody looks at of what a finding rests on. For a caution nobody asks around.
fn looked_at<'f>(plan: &Plan, finding: &'f Finding) -> impl Iterator<Item = &'f str> {
    let fields = finding.rests_on.iter().map(|it| it.field.as_str());
    let fields = fields.filter(|field| can_be_seen(plan, field));
    fields.filter(|field| match finding.signal {
        Signal::Danger | Signal::Warning => true,
        Signal::Caution => reading(field).1 != Marking::Other && !is_inside(field),
        Signal::Notice => false,
    })
}

/// How much rests on a reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Weight {
    /// Whether anything kills while nothing looks wrong.
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

/// The first things to do. What costs nothing comes ahead of what does: looking clears many a danger that nobody
/// would have to buy anything for.
pub(super) fn next(plan: &Plan, report: &Report) -> Vec<Next> {
    // In the order in which they were worked out: what a look clears counts on those ahead of it.
    let looks = &report.figures.looks;
    let dangers = looks.iter().rposition(|look| look.dangers > 0);
    let serious = report.findings.iter();
    let serious: Vec<&str> =
        serious.filter(|it| it.signal <= Signal::Warning).flat_map(|it| looked_at(plan, it)).collect();
    // A caution has time.
    let asked = |look: &Look| look.fields.iter().any(|it| serious.contains(&it.as_str()));
    let looks = looks.iter().enumerate().filter(|(_, look)| asked(look));
    let looks = looks.map(|(at, _)| {
        let rank = if Some(at) <= dangers { 1 } else { 3 };
        (rank, Next::Look(at))
    });
    // What rests on an unknown is looked at first.
    let troubles = report.figures.troubles.iter().enumerate();
    let known = troubles.filter_map(|(at, trouble)| {
        let lead = report.findings_of(trouble).next()?;
        let rank = match trouble.signal {
            Signal::Danger if deadly(lead) => 0,
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
    use crate::rules::testing::report;
    use crate::rules::{self, Facts};
    use crate::supply::Supply;
    use crate::verdict::Verdicts;

    /// A receptacle with its buttons and its breaker is one look, the print on a cord another, and each thing has its own.
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

    /// Neutral is joined to ground in two places, if the generator joins them and a plug does: a caution, which is looked
    /// at and is nothing to do first. What is known is not looked at.
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

    /// Exhaust first; a known danger of shock waits until somebody has looked for what nobody knows.
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

    /// Somebody who does not know the volts, the watts or the height: one half of the generator cannot run the kettle,
    /// which goes away with the volts. They are on the list although the rest then shows that it is too much for the
    /// whole as well, and who reads them reads the watts.
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

    /// Which half feeds each outlet of a box stands in one manual.
    #[test]
    fn the_halves_of_one_box_are_one_look() {
        let plan = crate::rules::testing::plan(&crate::rules::testing::edited(&[]));
        let [left, right] = ["left", "right"].map(|id| format!("box.box.outlet.{id}.leg"));
        assert!(together(&plan, &left, &right));
        assert!(!together(&plan, &left, "generator.outlet.front.leg"));
    }

    /// What is found with these answers, with everything plugged in where it is.
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

        /// Whatever a danger or a warning rests on is on the list, unless that is full, or goes away with what is, or stays as
        /// it is whatever is answered beside that.
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
                let fields: Vec<&str> = looked_at(&plan, lead).collect();
                let listed = |field: &&str| looks.iter().any(|it| it.fields.iter().any(|it| it == field));
                // As the list counts it: of more and less the better, and of equals less.
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

        /// Nothing is looked at twice or for nothing, and what is found to rest on an unknown can be looked at.
        #[test]
        fn each_look_is_for_something_that_is_found(plan in arbitrary::camp()) {
            let report = build(&plan);
            let leads = report.figures.troubles.iter();
            let leads = leads.filter_map(|trouble| report.findings_of(trouble).next());
            let rests: BTreeSet<&str> = leads.flat_map(|it| looked_at(&plan, it)).collect();
            let looks = &report.figures.looks;
            let fields: Vec<&str> = looks.iter().flat_map(|it| &it.fields).map(String::as_str).collect();
            let once: BTreeSet<&str> = fields.iter().copied().collect();
            prop_assert_eq!(once.len(), fields.len());
            for look in looks.iter().filter(|look| look.read != Marking::Package) {
                let first = &look.fields[0];
                let mut asked = look.fields.iter().filter(|it| *it == first || !at_hand(first, it));
                prop_assert!(asked.all(|field| rests.contains(field.as_str())));
            }
            prop_assert!(!rests.is_empty() || looks.is_empty());
            // Somebody looks first, and then buys.
            prop_assert!(looks.is_sorted_by_key(|look| look.read == Marking::Package));
            let looked = looks.iter().filter(|look| look.read != Marking::Package);
            prop_assert!(looked.count() <= MOST);
            // What goes away is there.
            let gone: usize = looks.iter().map(|it| it.dangers).sum();
            let dangers = report.figures.troubles.iter().filter(|it| it.signal == Signal::Danger);
            prop_assert!(gone <= dangers.count());
        }
    }
}

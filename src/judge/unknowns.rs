//! Which findings rest on which unknowns.
//!
//! Each unknown is given its best answer in turn, with all others still assumed, and the rules run again with
//! everything plugged in where it is. A danger that no single answer clears is tried with all of them together.

mod answer;

pub(super) use self::answer::answer_as;
use self::answer::{answer, answer_low};
use super::troubles::of_findings;
use crate::plan::{Id, Load, Plan};
use crate::report::{Figures, Finding, Signal};
use crate::rules::{self, Rule};
use crate::supply::Supply;
use crate::verdict::Verdicts;

/// How many unknowns are tried, from the first. A plan with more than that is beyond one-line advice.
const MOST: usize = 24;

/// How many are tried at most, counting later ones that an unexplained finding may rest on, so that no guess is
/// reported as a fact.
pub(super) const MOST_ASKED: usize = 48;

/// Whether a rule is run again. Only dangers and warnings count, and some rules that find neither need figures that are
/// expensive to compute.
pub(super) fn counts(rule: &Rule) -> bool {
    rule.worst <= Signal::Warning
}

/// Which rules are run again.
pub(super) type Wanted<'a> = &'a dyn Fn(&Rule) -> bool;

/// Returns the sum of all limits where something may be plugged in, in milliamperes. More amps at a part that must not
/// be used anyway would help nobody.
pub(super) fn sum_of_limits(figures: &Figures, supply: &Supply, verdicts: &Verdicts<'_>) -> i64 {
    let limits = figures.limits.iter().filter(|limit| {
        let at = supply.receptacle(&limit.id);
        at.is_some_and(|at| verdicts.refused(at).is_none())
    });
    limits.map(|limit| limit.short_amps.milliamps()).sum()
}

/// Returns the dangers and warnings, which come first.
fn serious(findings: &[Finding]) -> &[Finding] {
    &findings[..findings.partition_point(|finding| finding.signal <= Signal::Warning)]
}

/// The number of troubles of each kind.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Standing {
    pub dangers: usize,
    pub warnings: usize,
}

impl Standing {
    /// Counts troubles, not findings: of two that one action clears, nothing is gone while one is left.
    pub(super) fn of(plan: &Plan, findings: &[Finding]) -> Self {
        let troubles = of_findings(plan, serious(findings));
        let count = |signal: Signal| troubles.iter().filter(|trouble| trouble.signal == signal).count();
        Self { dangers: count(Signal::Danger), warnings: count(Signal::Warning) }
    }
}

/// What another answer can change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Changes {
    /// The supply, and with it the limits.
    pub supply: bool,
    /// What loads draw.
    pub loads: bool,
    /// Where loads are plugged in. Nearly every answer might, but to place them again takes long.
    pub places: bool,
}

impl Changes {
    /// Everything, with each load where it is.
    const ALL: Self = Self { supply: true, loads: true, places: false };
    /// Everything.
    const PLACES: Self = Self { places: true, ..Self::ALL };

    /// Returns what answers to these fields can change.
    pub(super) fn of_all(fields: &[String]) -> Self {
        let none = Self { supply: false, loads: false, places: false };
        fields.iter().map(|field| Self::of(field)).fold(none, |all, one| Self {
            supply: all.supply || one.supply,
            loads: all.loads || one.loads,
            places: false,
        })
    }

    /// Returns what an answer to this field can change.
    fn of(field: &str) -> Self {
        let loads = field.starts_with("load.") || field == "generator.voltage";
        Self { supply: changes_supply(field), loads, places: false }
    }
}

/// Whether an answer to this field can change the supply. Answers about loads and the generator's surroundings cannot.
fn changes_supply(field: &str) -> bool {
    const ROUND_THE_SET: [&str; 6] =
        ["site.ground", "site.sleepers_at", "site.co_alarm", "site.feeds_building", "site.stands", "site.people_sleep"];
    !field.starts_with("load.") && !ROUND_THE_SET.contains(&field)
}

/// What better answers would change.
#[derive(Debug, Default)]
pub(super) struct Answers {
    /// The fields that would change a danger, a warning or a limit.
    pub matters: Vec<String>,
    /// Findings, by index, with a field whose answer they rest on.
    pub rests_on: Vec<(usize, String)>,
    /// Those of them about loads without an outlet, with the fields whose best answers together give them one.
    pub served: Vec<(usize, Vec<String>)>,
}

impl Answers {
    /// Records which unknowns about power keep what must run from an outlet, once all is answered that other findings
    /// rest on. What a part lacks is told with that part.
    fn rest_without_outlet(
        &mut self,
        findings: &[Finding],
        left_out: &[usize],
        fields: &[String],
        mut found_with: impl FnMut(&[String]) -> Vec<Finding>,
    ) {
        let of_power = |field: &&String| left_out.iter().any(|at| is_of_power(field, &findings[*at]));
        let mut power: Vec<String> = fields.iter().filter(of_power).cloned().collect();
        if power.is_empty() {
            return;
        }
        let anyway = |field: &&String| self.rests_on.iter().any(|(_, of)| of == *field) && !power.contains(field);
        let anyway: Vec<String> = fields.iter().filter(anyway).cloned().collect();
        let mut left_after = |power: &[String]| -> Vec<usize> {
            let found = found_with(&[&anyway, power].concat());
            left_out.iter().copied().filter(|at| !cleared(&findings[*at], &found)).collect()
        };
        let (least, most) = (left_after(&power), left_out);
        if least.len() == most.len() {
            return;
        }
        let most = if anyway.is_empty() { most.to_vec() } else { left_after(&[]) };
        let served: Vec<usize> = most.into_iter().filter(|at| !least.contains(at)).collect();
        if served.is_empty() {
            return;
        }
        // The height of the place is easiest to find, and holds as long as the place.
        power.sort_by_key(|field| (lasts(field), field == "site.altitude"));
        let needed = needed(power, |power| left_after(power).iter().all(|at| !served.contains(at)));
        for at in served {
            self.rests_on.extend(needed.iter().map(|field| (at, field.clone())));
            self.served.push((at, needed.clone()));
        }
    }

    /// Records which of these unknowns together clear what no single one does.
    fn rest_on_several(
        &mut self,
        findings: &[Finding],
        several: &[usize],
        mut tried: Vec<String>,
        mut found_with: impl FnMut(&[String]) -> Vec<Finding>,
    ) {
        let cleared_by = |found: &[Finding]| -> Vec<usize> {
            let gone = several.iter().filter(|at| cleared(&findings[**at], found));
            gone.copied().collect()
        };
        let gone = cleared_by(&found_with(&tried));
        if gone.is_empty() {
            return;
        }
        // Gear fields go last, so that they are the ones kept: reading a cord is easier than finding out the
        // generator's peak.
        tried.sort_by_key(|field| is_of_gear(field));
        let needed = needed(tried, |fields| cleared_by(&found_with(fields)) == gone);
        for at in gone {
            let own = |field: &&String| touches(field, &findings[at]);
            let any = needed.iter().any(|field| own(&field));
            let told = needed.iter().filter(|field| tells_of(&findings[at], field));
            for field in told.filter(|field| !any || own(field)) {
                if !self.matters.contains(field) {
                    self.matters.push(field.clone());
                }
                let new = (at, field.clone());
                if !self.rests_on.contains(&new) {
                    self.rests_on.push(new);
                }
            }
        }
    }
}

/// Whether a finding is about something that must run, or that somebody's health depends on, and that has no outlet.
pub(super) fn is_left_out(plan: &Plan, figures: &Figures, finding: &Finding) -> bool {
    let needed = |id: &Id| plan.load(id).is_some_and(Load::is_needed);
    let lost = |id: &Id| figures.units(id).any(|unit| figures.sharing.without_place(&unit.id).is_some());
    finding.area == "fit" && finding.about.iter().any(|id| needed(id) && lost(id))
}

/// Whether a finding is gone, milder, or about fewer parts. A new one of the same area in its place counts as the same
/// finding, if its rule is run again at all.
pub(super) fn eased(finding: &Finding, now: &[Finding], then: &[Finding]) -> bool {
    let new = |other: &Finding| {
        other.area == finding.area
            && rules::find(other.code).is_some_and(counts)
            && now.iter().all(|it| it.code != other.code || it.about != other.about || it.signal > other.signal)
    };
    // A load that was too much by itself, and then only together with others, is eased.
    let alone = |finding: &Finding| finding.fix.key.ends_with("alone");
    let covers = |other: &Finding| {
        (other.code == finding.code || new(other))
            && other.signal <= finding.signal
            && (alone(other) || !alone(finding))
            && finding.about.iter().all(|id| other.about.contains(id))
    };
    !then.iter().any(covers)
}

/// Returns the plan with an answer to a field. `None` if there is no such answer.
fn answered(plan: &Plan, field: &str, answer: fn(&mut Plan, &str) -> Option<()>) -> Option<Plan> {
    let mut plan = plan.clone();
    answer(&mut plan, field).map(|()| plan)
}

/// Whether somebody can find out the answer to this field.
pub(super) fn is_found_out(plan: &Plan, field: &str) -> bool {
    answered(plan, field, answer).is_some()
}

/// Returns the plan with the best answers to all of these fields.
pub(super) fn all_answered(plan: &Plan, fields: &[String]) -> Plan {
    let mut all = plan.clone();
    for field in fields {
        // Several unknowns together more often mean heat in a wire than a motor that does not start.
        let _ = answer_low(&mut all, field).or_else(|| answer(&mut all, field));
    }
    all
}

/// Returns the same, but with the high answer where more is better in one way and less in another, because a motor may
/// need it. `None` if no field is like that.
pub(super) fn answered_with_more(plan: &Plan, fields: &[String]) -> Option<Plan> {
    let both = |field: &String| answered(plan, field, answer_low).is_some();
    fields.iter().any(both).then(|| {
        let mut all = plan.clone();
        for field in fields {
            let _ = answer(&mut all, field);
        }
        all
    })
}

/// Whether an answer still holds tomorrow. Dry ground is wet after the next rain, while what the gear says lasts.
pub(super) fn lasts(field: &str) -> bool {
    !matches!(field, "site.ground" | "site.air")
}

/// Whether a field is about a cord, a box or a receptacle.
fn is_of_gear(field: &str) -> bool {
    let tables = ["cord.", "box.", "generator.outlet."];
    tables.iter().any(|table| field.starts_with(table))
}

/// Whether a field is about one of the finding's subjects, or about the generator or site.
fn touches(field: &str, finding: &Finding) -> bool {
    field.starts_with("generator.") || field.starts_with("site.") || names(field, finding)
}

/// Whether a field is about how much power there is, or how much one of the finding's loads needs.
fn is_of_power(field: &str, finding: &Finding) -> bool {
    const OF_SUPPLY: [&str; 6] =
        ["site.altitude", "site.air", "generator.rated", "generator.rated_on", "generator.peak", "generator.voltage"];
    let of_load = field.starts_with("load.") && names(field, finding);
    OF_SUPPLY.contains(&field) || field.starts_with("generator.parallel.") || of_load
}

/// Whether a finding depends on what an answer to this field may change. An outlet without a GFCI is wrong whichever
/// load needs it, and for whatever reason, so only its GFCI and the ground count.
fn tells_of(finding: &Finding, field: &str) -> bool {
    finding.code != "SHOCK001" || field == "site.ground" || field.rsplit('.').next() == Some("gfci")
}

/// Whether a field is about one of the finding's subjects.
fn names(field: &str, finding: &Finding) -> bool {
    let mut names = finding.about.iter().map(Id::as_str);
    names.any(|name| field.split('.').any(|part| part == name))
}

/// Whether a danger or warning may rest on this field: one about the same thing, or one that is not known to rest on
/// anything yet.
fn may_be_guessed(field: &str, findings: &[Finding], answers: &Answers) -> bool {
    let untold = |at: usize| answers.rests_on.iter().all(|(of, _)| *of != at);
    let mut serious = serious(findings).iter().enumerate();
    serious.any(|(at, finding)| names(field, finding) || untold(at) && touches(field, finding))
}

/// Whether it kills while nothing looks wrong: exhaust, and power fed into a building's wires.
pub(super) fn deadly(finding: &Finding) -> bool {
    let unseen = finding.area == "air" || finding.code == "SHOCK003";
    unseen && finding.signal == Signal::Danger
}

/// Whether nothing as grave is left of a finding.
pub(super) fn cleared(finding: &Finding, then: &[Finding]) -> bool {
    !then.iter().any(|other| other.signal <= finding.signal && is_the_same(finding, other))
}

/// Returns how grave it is, what is left of a finding that anybody has to act on.
pub(super) fn left_of(finding: &Finding, then: &[Finding]) -> Option<Signal> {
    let left = then.iter().filter(|other| is_the_same(finding, other)).map(|other| other.signal);
    left.min().filter(|signal| *signal <= Signal::Caution)
}

/// Whether both are of one rule and about one thing, however grave.
fn is_the_same(finding: &Finding, other: &Finding) -> bool {
    let about = || finding.about.is_empty() || finding.about.iter().any(|id| other.about.contains(id));
    other.code == finding.code && about()
}

/// Returns a minimal subset of the fields that still suffices. Tries to drop half of them at a time, then a quarter,
/// then each, because most are not needed.
fn needed(mut fields: Vec<String>, mut suffice: impl FnMut(&[String]) -> bool) -> Vec<String> {
    let mut size = fields.len();
    while size > 1 {
        size = size.div_ceil(2);
        let mut at = 0;
        while at < fields.len() {
            let mut fewer = fields.clone();
            fewer.drain(at..fields.len().min(at + size));
            if suffice(&fewer) {
                fields = fewer;
            } else {
                at += size;
            }
        }
    }
    fields
}

/// Returns the fields whose best answer helps by itself, or else those that help together.
pub(super) fn that_suffice(plan: &Plan, mut fields: Vec<String>, helps: impl Fn(&Plan) -> bool) -> Vec<String> {
    let alone = |field: &String| {
        let both = [answer, answer_low].map(|answer| answered(plan, field, answer));
        both.iter().flatten().any(&helps)
    };
    let by_itself: Vec<String> = fields.iter().filter(|field| alone(field)).cloned().collect();
    if !by_itself.is_empty() {
        return by_itself;
    }
    fields.retain(|field| answered(plan, field, answer).is_some());
    let together = |fields: &[String]| helps(&all_answered(plan, fields));
    if together(&fields) { needed(fields, together) } else { Vec::new() }
}

/// Returns what better answers would change. `again` returns the sum of all limits with other answers, and what the
/// rules in question then find. It leaves the figures as they were. The fields in `in_vain` could not be found out.
pub(super) fn answers(
    plan: &Plan,
    figures: &mut Figures,
    findings: &[Finding],
    in_vain: &[String],
    limits_now: i64,
    again: impl Fn(&Plan, Changes, Wanted<'_>, &mut Figures) -> (i64, Vec<Finding>),
) -> Answers {
    let now = Standing::of(plan, findings);
    let fields: Vec<String> = figures
        .assumed
        .iter()
        .filter(|assumption| !assumption.of_all_campers())
        .map(|assumption| assumption.field.clone())
        .collect();
    let mut answers = Answers::default();
    // A caution may be a guess, too. Nothing is known about notices, or about rules that are not run again.
    let again_asked = |at: &usize| {
        let finding = &findings[*at];
        finding.signal <= Signal::Caution && rules::find(finding.code).is_some_and(counts)
    };
    let asked: Vec<usize> = (0..findings.len()).filter(again_asked).collect();
    // A finding that another's action clears goes with that one, and what it rests on is not worth a look.
    let leads: Vec<usize> = figures.troubles.iter().filter_map(|it| it.findings.first()).copied().collect();
    let told: Vec<usize> = leads.iter().copied().filter(|at| *at < serious(findings).len()).collect();
    let mut tried: Vec<String> = Vec::new();
    let mut cleared_by_one: Vec<usize> = Vec::new();
    for (at, field) in fields.iter().enumerate() {
        // A field that was not tried may matter.
        let guessed = || tried.len() < MOST_ASKED && may_be_guessed(field, findings, &answers);
        if at >= MOST && !guessed() {
            answers.matters.push(field.clone());
            continue;
        }
        let both = [answer, answer_low].map(|answer| answered(plan, field, answer));
        if both.iter().any(Option::is_some) {
            tried.push(field.clone());
        }
        for answered in both.into_iter().flatten() {
            let (limits, found) = again(&answered, Changes::of(field), &counts, figures);
            // Most answers change nothing serious.
            let same = serious(&found) == serious(findings);
            let then = if same { now } else { Standing::of(plan, &found) };
            let rests = (asked.iter()).filter(|at| {
                let finding = &findings[**at];
                tells_of(finding, field) && eased(finding, findings, &found)
            });
            let rests: Vec<(usize, String)> = rests.map(|at| (*at, field.clone())).collect();
            let better = then.dangers < now.dangers || then.warnings < now.warnings || limits > limits_now;
            let is_told = |(at, _): &(usize, String)| told.contains(at);
            let matters = better || rests.iter().any(is_told);
            if matters && !answers.matters.contains(field) {
                answers.matters.push(field.clone());
            }
            let whole = rests.iter().map(|(at, _)| *at);
            cleared_by_one.extend(whole.filter(|at| cleared(&findings[*at], &found)));
            for new in rests {
                if !answers.rests_on.contains(&new) {
                    answers.rests_on.push(new);
                }
            }
        }
    }
    // A danger that no answer clears by itself may rest on several, and so may a warning not yet known to rest on any.
    let several = |at: &usize| match findings[*at].signal {
        Signal::Danger => !cleared_by_one.contains(at),
        Signal::Warning => answers.rests_on.iter().all(|(of, _)| of != at),
        Signal::Caution | Signal::Notice => false,
    };
    let several: Vec<usize> = asked.into_iter().filter(several).collect();
    let known = |at: &usize| answers.rests_on.iter().all(|(of, _)| of != at);
    let left_out = leads.into_iter().filter(|at| is_left_out(plan, figures, &findings[*at]) && known(at));
    let left_out: Vec<usize> = left_out.collect();
    if !left_out.is_empty() {
        let own = |rule: &Rule| left_out.iter().any(|at| findings[*at].code == rule.code);
        let found_with = |fields: &[String]| {
            let answered = answered_with_more(plan, fields).unwrap_or_else(|| all_answered(plan, fields));
            again(&answered, Changes::PLACES, &own, figures).1
        };
        let fields: Vec<String> = tried.iter().filter(|field| !in_vain.contains(field)).cloned().collect();
        answers.rest_without_outlet(findings, &left_out, &fields, found_with);
    }
    if tried.len() > 1 && !several.is_empty() {
        // A danger's own rule decides whether it is cleared.
        let own = |rule: &Rule| several.iter().any(|at| findings[*at].code == rule.code);
        let found_with = |fields: &[String]| again(&all_answered(plan, fields), Changes::ALL, &own, figures).1;
        answers.rest_on_several(findings, &several, tried, found_with);
    }
    // Fields found together come last, and are put back in the order in which they were assumed.
    let order = |field: &String| fields.iter().position(|it| it == field);
    answers.matters.sort_by_key(order);
    answers
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use proptest::prelude::*;
    use proptest::strategy::ValueTree;
    use proptest::test_runner::TestRunner;

    use super::*;
    use crate::judge::{build, judge};
    use crate::loads;
    use crate::plan::{Answer, Runtime, arbitrary};
    use crate::quantity::{Current, Hours, Percent};
    use crate::report::{Report, limits};
    use crate::rules::Facts;
    use crate::rules::testing::report;
    use crate::sharing::places;
    use crate::tables::shape::{Configuration, Receptacle};

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        /// What is reused as unchanged equals what would be built again.
        #[test]
        fn an_answer_changes_no_more_than_is_told(plan in arbitrary::camp()) {
            let supply = |plan: &Plan| format!("{:?}", Supply::build(plan));
            let units = |plan: &Plan| format!("{:?}", loads::units(plan).0);
            for assumption in judge(&plan).figures.assumed {
                let field = assumption.field.as_str();
                let Some(answered) = answered(&plan, field, answer) else {
                    continue;
                };
                let changes = Changes::of(field);
                if !changes.supply {
                    prop_assert_eq!(supply(&plan), supply(&answered), "{}", field);
                }
                if !changes.loads {
                    prop_assert_eq!(units(&plan), units(&answered), "{}", field);
                }
            }
        }
    }

    /// 3000 W, divided between the halves in an unknown way: on one half it is 25 A, of which there are 15 A. Divided
    /// evenly it is 12.5 A on each, so the finding rests on that.
    #[test]
    fn what_is_too_much_for_one_half_rests_on_how_it_is_shared() {
        let report = report(&[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker", "shape = \"L14-30R\"\nbreaker"),
            ("from = \"twist\"\nplug", "plug"),
            ("running = \"1500 W\"", "running = \"3000 W\"\nvoltage = \"120/240 V\""),
            ("plug = \"5-15P\" # kettle", "plug = \"L14-30P\""),
            ("on = \"left\" # kettle", "on = \"twist\""),
            ("on = \"right\" # fan", "on = \"front\""),
        ]);
        let found = report.findings.iter().find(|it| it.code == "POWER001");
        let rests = found.expect("it is too much").rests_on.iter();
        let fields: Vec<&str> = rests.map(|it| it.field.as_str()).collect();
        assert_eq!(fields, ["load.kettle.legs"]);
    }

    /// Returns the same without shortcuts: the supply, the loads and every rule anew.
    fn plainly(plan: &Plan) -> Answers {
        let Report { findings, mut figures, .. } = judge(plan);
        let supply = Supply::build(plan);
        let verdicts = Verdicts::of(plan, &supply);
        let now = sum_of_limits(&figures, &supply, &verdicts);
        answers(plan, &mut figures, &findings, &[], now, |answered, changes, _, figures| {
            let supply = Supply::build(answered);
            let mut figures = figures.clone();
            let verdicts = Verdicts::of(answered, &supply);
            figures.limits = limits(&supply, &verdicts);
            figures.loads = loads::facts(answered);
            if changes.places {
                figures.sharing = places(answered, &supply, &verdicts, &loads::units(answered).0);
            }
            let found = rules::check(&Facts::new(answered, &supply, &verdicts, &figures));
            (sum_of_limits(&figures, &supply, &verdicts), found)
        })
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        #[test]
        fn what_is_left_out_changes_nothing(plan in arbitrary::camp()) {
            let plainly = plainly(&plan);
            let report = build(&plan);
            let told = report.findings.iter().enumerate();
            let told: Vec<(usize, String)> = told
                .flat_map(|(at, it)| it.rests_on.iter().map(move |on| (at, on.field.clone())))
                .collect();
            let mut rests_on = plainly.rests_on;
            rests_on.sort_by_key(|(at, _)| *at);
            prop_assert_eq!(told, rests_on);
            let matters = report.figures.matters;
            prop_assert!(plainly.matters.iter().all(|field| matters.contains(field)));
        }
    }

    /// Unknowns without a best answer, without the name of the part, each with the reason.
    const WITHOUT_ANSWER: [(&str, &str); 11] = [
        ("box.cord", "a plan file has no such field"),
        ("box.gfci", "a plan file has no such field"),
        ("cord.leg", "a plan file has no such field"),
        ("generator.noise.full_load", "a plan file has no such field"),
        ("load.plug", "what was taken is the usual plug, which fits most"),
        ("load.backup", "a battery nobody told of is bought, not found out"),
        ("site.quiet_hours", "set by a host, as late as anybody's night"),
        ("load.hours", "chosen, not found out; POWER001 asks for it"),
        ("generator.runtime", CAUTION),
        ("generator.noise", CAUTION),
        ("generator.noise.load", CAUTION),
    ];
    const CAUTION: &str = "sets off no more than a caution";

    /// Returns a field without the name of its part.
    fn kind_of(field: &str) -> String {
        let (table, rest) = field.split_once('.').expect("a table");
        let (_, name) = field.rsplit_once('.').expect("a name");
        match (table, rest.split_once('.')) {
            ("generator", Some(("outlet", _))) => format!("outlet.{name}"),
            ("box", _) if field.contains(".outlet.") => format!("outlet.{name}"),
            ("site" | "generator", _) => field.to_owned(),
            _ => format!("{table}.{name}"),
        }
    }

    /// Generates plans until everything that can be assumed has been: every reason that English has words for
    /// (`assume-KEY`), each with an answer or a reason why there is none.
    #[test]
    fn every_unknown_has_an_answer_or_a_reason_why_not() {
        let words = [include_str!("../../i18n/en/assume.ftl"), include_str!("../../i18n/en/rules-assume.ftl")];
        let mut unseen: BTreeSet<&str> = words
            .iter()
            .flat_map(|text| text.lines())
            .filter_map(|line| line.strip_prefix("assume-")?.split_once(" = "))
            .map(|(key, _)| key)
            .filter(|key| *key != "also")
            .collect();
        assert!(unseen.len() > 30, "{unseen:?}");
        let mut without: BTreeSet<String> = BTreeSet::new();
        let mut runner = TestRunner::deterministic();
        for _ in 0..1_000 {
            let tree = arbitrary::camp().new_tree(&mut runner).expect("a plan");
            let mut plan = tree.current();
            // The generated plans state every plug.
            if let Some(load) = plan.loads.first_mut() {
                load.plug = Answer::Unknown;
            }
            // Their outlets fit their breakers.
            if let Some(outlet) = plan.generator.outlets.last_mut() {
                outlet.shape = Receptacle(Configuration::N5_15);
                outlet.breaker = Answer::Known(Current::from_milliamps(20_000));
                outlet.sockets = None;
            }
            for assumption in judge(&plan).figures.assumed {
                unseen.remove(assumption.why);
                if answered(&plan, &assumption.field, answer).is_none() {
                    without.insert(kind_of(&assumption.field));
                }
            }
        }
        assert_eq!(unseen, BTreeSet::new(), "never assumed in these plans");
        let listed = WITHOUT_ANSWER.map(|(field, _)| field.to_owned());
        assert_eq!(without, BTreeSet::from(listed));
    }

    /// Returns the plan with everything stated that is not asked about because it causes no more than a caution. No
    /// danger or warning goes away with it.
    fn told(plan: &Plan) -> Plan {
        let mut plan = plan.clone();
        let set = &mut plan.generator;
        if set.runtime.is_empty() {
            set.runtime =
                vec![Runtime { load: Percent::from_millipercent(100_000), lasts: Hours::from_millihours(9_000) }];
        }
        if !set.noise.is_known() {
            set.noise = Answer::Missing;
        }
        plan
    }

    /// Returns the codes and signals that are only in the first list.
    fn only_in_first(now: &[Finding], then: &[Finding]) -> Vec<(&'static str, Signal)> {
        let told = |found: &Finding| (found.code, found.signal);
        let then: Vec<_> = then.iter().map(told).collect();
        now.iter().map(told).filter(|found| !then.contains(found)).collect()
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        #[test]
        fn what_is_not_asked_about_clears_no_danger(plan in arbitrary::camp()) {
            let Report { findings, mut figures, .. } = judge(&plan);
            let now = Standing::of(&plan, &findings);
            let told = told(&plan);
            figures.loads = loads::facts(&told);
            let supply = Supply::build(&told);
            let verdicts = Verdicts::of(&told, &supply);
            let found = rules::check(&Facts::new(&told, &supply, &verdicts, &figures));
            let then = Standing::of(&told, &found);
            prop_assert!(then.dangers >= now.dangers, "{:?}", only_in_first(&findings, &found));
            prop_assert!(then.warnings >= now.warnings, "{:?}", only_in_first(&findings, &found));
        }
    }

    /// Returns what to look at first, and how many dangers and warnings that clears.
    fn first_look(edits: &[(&str, &str)]) -> Option<(String, usize, usize)> {
        let look = report(edits).figures.looks.into_iter().next()?;
        Some((look.fields[0].clone(), look.dangers, look.warnings))
    }

    #[test]
    fn where_all_is_known_there_is_nothing_to_look_at() {
        assert_eq!(first_look(&[]), None);
    }

    #[test]
    fn a_breaker_nobody_read_comes_ahead_of_a_cord_nobody_looked_at() {
        let (field, dangers, _) = first_look(&[
            ("breaker = \"30 A\" # twist", "breaker = \"unknown\""),
            ("outdoor = true # long", "outdoor = \"unknown\""),
        ])
        .expect("there is something");
        assert_eq!(field, "generator.outlet.twist.breaker");
        assert_eq!(dangers, 1);
    }

    /// An unknown kit passes as much as one generator gives, so the finding that this is too little for the kettle
    /// rests on the kit. With a known kit it rests on nothing, and the warning is a fact.
    #[test]
    fn too_little_power_rests_on_the_kit_that_nobody_knows() {
        let rests = |kit: &str| -> Vec<String> {
            let kit = format!("inverter = true\nparallel = {{ sets = 2, {kit} }}");
            let report = report(&[
                ("neutral = \"bonded\"", "neutral = \"floating\""),
                ("inverter = false", &kit),
                ("rated = \"3600 W\"", "rated = \"1400 W\""),
                ("peak = \"4500 W\"", "peak = \"1800 W\""),
            ]);
            let found = report.findings.iter().find(|it| it.code == "POWER001");
            let rests = found.expect("too much").rests_on.iter();
            rests.map(|it| it.field.clone()).collect()
        };
        let both = ["generator.parallel.limit", "generator.parallel.kit"];
        assert_eq!(rests("kit = \"unknown\", limit = \"unknown\""), both);
        assert_eq!(rests("kit = true, limit = \"10 A\""), [""; 0]);
    }

    /// Each of these alone makes several generators on one kit a danger.
    #[test]
    fn what_nobody_knows_of_sets_that_run_as_one_is_looked_at() {
        for (text, field) in [
            ("inverter = true\nparallel = { sets = 2, limit = \"30 A\", kit = \"unknown\" }", "generator.parallel.kit"),
            ("parallel = { sets = 2, limit = \"30 A\", kit = true }", "generator.inverter"),
        ] {
            let found = first_look(&[("inverter = false", text)]);
            assert_eq!(found, Some((field.to_owned(), 1, 0)));
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        /// Every danger that better answers would clear, with everything plugged in where it is, has something to look
        /// at. The exception is an outlet that still lacks a GFCI then, and is cleared only because no load needs it.
        #[test]
        fn a_danger_that_rests_on_unknowns_says_on_which(plan in arbitrary::camp()) {
            let report = build(&plan);
            let fields: Vec<String> = report.figures.assumed.iter().map(|it| it.field.clone()).collect();
            prop_assume!(fields.len() <= MOST);
            let best = all_answered(&plan, &fields);
            let supply = Supply::build(&best);
            let verdicts = Verdicts::of(&best, &supply);
            let mut figures = report.figures.clone();
            figures.limits = limits(&supply, &verdicts);
            figures.loads = loads::facts(&best);
            let then = rules::check(&Facts::new(&best, &supply, &verdicts, &figures));
            for danger in report.findings.iter().filter(|it| it.signal == Signal::Danger) {
                let bare = |id: &Id| {
                    let at = supply.receptacle(id);
                    at.is_some_and(|at| !verdicts.protected(at))
                };
                let known = danger.code == "SHOCK001" && danger.about.iter().any(bare);
                let told = !danger.rests_on.is_empty() || !cleared(danger, &then) || known;
                prop_assert!(told, "{danger:#?} {fields:?}");
            }
        }
    }

    /// With an unknown breaker and an unknown wire, the cord is still a danger when only one of them is known.
    #[test]
    fn what_several_unknowns_make_together_names_them_all() {
        let rests_on = |edits: &[(&str, &str)], code: &str| -> Vec<String> {
            let report = report(edits);
            let found = report.findings.iter().find(|it| it.code == code).expect("found");
            assert_eq!(found.signal, Signal::Danger);
            found.rests_on.iter().map(|it| it.field.clone()).collect()
        };
        let breaker = ("breaker = \"30 A\" # twist", "breaker = \"unknown\"");
        let wire = ("wire = \"10 AWG\" # long", "wire = \"unknown\"");
        let both = ["generator.outlet.twist.breaker", "cord.long.wire"];
        for (edits, expected) in
            [(vec![breaker], &both[..1]), (vec![wire], &both[1..]), (vec![breaker, wire], &both[..])]
        {
            let found = rests_on(&edits, "OVER001");
            assert!(expected.iter().all(|it| found.iter().any(|field| field == it)), "{found:?}");
            assert_eq!(found.len(), expected.len(), "{found:?}");
        }
    }

    /// The wire of a homemade box that must not be used anyway is not looked at. Behind a 15 A breaker its answer
    /// clears the danger.
    #[test]
    fn a_wire_that_clears_nothing_is_not_looked_at() {
        let wires = |twist: &str| -> (bool, bool) {
            let report = report(&[
                ("breaker = \"30 A\" # twist", twist),
                ("listed = true", "listed = false"),
                ("breaker = \"15 A\" # left\n", ""),
                ("wire = \"14 AWG\" # left\n", ""),
                ("breaker = \"15 A\" # right\n", ""),
                ("wire = \"14 AWG\" # right\n", ""),
            ]);
            let found = report.findings.iter().any(|it| it.code == "OVER001" && it.signal == Signal::Danger);
            let mut matters = report.figures.matters.iter();
            (found, matters.any(|field| field.rsplit('.').next() == Some("wire")))
        };
        assert_eq!(wires("breaker = \"30 A\""), (true, false));
        assert_eq!(wires("breaker = \"15 A\""), (true, true));
    }

    /// A peak of twice the rated power would start a motor, but one no greater than the rated power would spare the
    /// receptacles: 15 A on 15 A.
    #[test]
    fn a_danger_of_a_splitter_rests_on_a_peak_that_nobody_knows() {
        let splitter = |peak: &str| {
            let report = report(&[
                ("inverter = false", "inverter = true"),
                ("rated = \"3600 W\"", "rated = \"1800 W\""),
                ("peak = \"4500 W\"", peak),
                ("ends = [\"L5-30R\"]", "ends = [\"L5-30R\", \"5-15R\"]"),
                ("from = \"long\"", "from = \"long.1\""),
            ]);
            let found = report.findings.iter().find(|it| it.code == "OVER001");
            found.map(|it| it.rests_on.iter().map(|it| it.field.clone()).collect::<Vec<_>>())
        };
        let peak = vec!["generator.peak".to_owned()];
        assert_eq!(splitter("peak = \"unknown\""), Some(peak));
        assert_eq!(splitter("peak = \"4500 W\""), Some(vec![]));
        assert_eq!(splitter("peak = \"2000 W\""), None);
    }

    /// A load of unknown kind counts as medical: a warning.
    #[test]
    fn what_a_thing_is_is_asked() {
        let edit = ("kind = \"electronic\" # fan", "kind = \"unknown\"");
        let found = first_look(&[edit]);
        assert_eq!(found, Some(("load.fan.kind".to_owned(), 0, 1)));
    }

    /// Verified by doing it: with the answer in the plan, the report has that many fewer dangers.
    #[test]
    fn what_is_promised_is_what_the_answer_does() {
        let unknown = [("ground = \"wet\"", "ground = \"unknown\""), ("gfci = true # left", "gfci = \"unknown\"")];
        let known = [("ground = \"wet\"", "ground = \"unknown\""), ("gfci = true # left", "gfci = true")];
        let dangers = |edits: &[(&str, &str)]| {
            report(edits).findings.iter().filter(|found| found.signal == crate::report::Signal::Danger).count()
        };
        // Dry ground would clear the danger too, and the first in the list wins a tie.
        let (field, cleared, _) = first_look(&unknown).expect("there is something");
        assert_eq!(field, "box.box.outlet.left.gfci");
        assert_eq!(dangers(&unknown) - dangers(&known), cleared);
    }

    /// In a plan with more unknowns than are tried, a box with unknown wiring is still reported as a guess.
    #[test]
    fn no_guess_is_told_as_a_fact_however_many_there_are() {
        let outlet = |at: usize| {
            format!(
                "[[box.outlet]]\nid = \"out-{at}\"\nshape = \"5-20R\"\nbreaker = \"unknown\"\n\
                 gfci = \"unknown\"\nwire = \"unknown\"\n"
            )
        };
        let text = |bond: &str| {
            format!(
                "format = 1\n[generator]\nrated = \"unknown\"\nvoltage = \"120 V\"\n\
                 [[generator.outlet]]\nid = \"twist\"\n\
                 shape = \"L5-30R\"\n[[cord]]\nid = \"cord\"\nfrom = \"twist\"\nplug = \"L5-30P\"\n\
                 ends = [\"L5-30R\"]\n[[box]]\nid = \"box\"\nfrom = \"cord\"\ninlet = \"L5-30P\"\n\
                 bond = {bond}\n{}",
                (0..9).map(outlet).collect::<String>()
            )
        };
        for (bond, guessed) in [("\"unknown\"", true), ("true", false)] {
            let report = build(&crate::plan::read(&text(bond)).expect("a plan that reads"));
            assert!(report.figures.assumed.len() > MOST);
            let mut found = report.findings.iter().filter(|it| it.code == "SHOCK005");
            let rests = &found.next().expect("it is found").rests_on;
            assert_eq!(rests.iter().any(|it| it.field == "box.box.bond"), guessed, "{rests:?}");
        }
    }

    /// An overload of a cord and an outlet rests on a wire and a breaker. Whatever their names, what matters is
    /// reported in the order in which it was assumed.
    #[test]
    fn what_matters_is_told_in_one_order_whatever_the_ids() {
        let load = |id: &str, running: &str| {
            format!(
                "[[load]]\nid = \"{id}\"\nname = \"{id}\"\nkind = \"unknown\"\nrunning = \"{running}\"\n\
                 wanted = \"must\"\nplug = \"5-15P\"\n"
            )
        };
        for (cord, outlet) in [("cord", "outlet"), ("outlet", "cord")] {
            let text = format!(
                "format = 1\n[generator]\nname = \"set\"\nrated = \"unknown\"\nvoltage = \"unknown\"\n\
                 [[generator.outlet]]\nid = \"front\"\nshape = \"5-15R\"\nsockets = 1\n\
                 [[cord]]\nid = \"{cord}\"\nfrom = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]\n\
                 coiled = false\n\
                 [[box]]\nid = \"box\"\nfrom = \"{cord}\"\ninlet = \"5-15P\"\n\
                 [[box.outlet]]\nid = \"{outlet}\"\nshape = \"5-15R\"\nsockets = 1\nbreaker = \"30 A\"\n{}{}",
                load("one", "1800.001 W"),
                load("other", "unknown")
            );
            let figures = build(&crate::plan::read(&text).expect("a plan that reads")).figures;
            let assumed = |field: &String| figures.assumed.iter().position(|it| it.field == *field);
            let matters = |field: String| figures.matters.contains(&field);
            assert!(matters(format!("cord.{cord}.wire")));
            assert!(matters("generator.outlet.front.breaker".to_owned()));
            assert!(figures.matters.iter().map(assumed).is_sorted(), "{:?}", figures.matters);
        }
    }

    /// Two outlets of an unknown box with unknown wires, one of them without a breaker. A listed box clears the danger
    /// for one outlet, and the same danger is then reported for the other. With both breakers it is cleared.
    #[test]
    fn no_danger_goes_while_the_same_is_told_of_another() {
        let wires = [
            ("listed = true", "listed = \"unknown\""),
            ("wire = \"14 AWG\" # left", ""),
            ("wire = \"14 AWG\" # right", ""),
        ];
        let bare = ("breaker = \"15 A\" # right", "breaker = \"unknown\"");
        let dangers = |edits: &[crate::rules::Edit]| {
            let report = report(edits);
            let now = report.count(Signal::Danger);
            let mut looks = report.figures.looks.into_iter();
            let listed = looks.find(|it| it.fields.contains(&"box.box.listed".to_owned()));
            (now, listed.map(|it| it.dangers))
        };
        assert_eq!(dangers(&wires), (1, Some(1)));
        assert_ne!(dangers(&[&wires[..], &[bare]].concat()).1, Some(1));
    }
}

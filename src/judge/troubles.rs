//! Groups findings with one cause and one remedy into a trouble, which is reported once.
//!
//! [`DEEDS`] lists which findings one action clears: the same action on the same part or load. Any other finding is a
//! trouble of its own. A trouble is explained in the words of its most severe finding, and names what else the action
//! clears.

use crate::plan::{Answer, Id, Plan};
use crate::report::{Finding, Trouble, Value};

/// One action, and the findings it clears.
struct Deed {
    /// Rules and their remedies. `*` stands for every remedy of a rule.
    clears: &'static [(&'static str, &'static str)],
    /// Others that it clears too, although their own remedies do not clear these.
    also: &'static [(&'static str, &'static str)],
    of: Of,
}

/// Which of those findings one such action clears. Receptacles of a box are parts of it, as the ends of a cord are.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Of {
    /// All of them.
    All,
    /// Those that name a part or load in common.
    Common,
    /// Those that name only what the most severe one names. For anything else, the action may do nothing.
    Within,
}

const fn of_part(clears: &'static [(&'static str, &'static str)]) -> Deed {
    Deed { clears, also: &[], of: Of::Common }
}

const fn of_all(clears: &'static [(&'static str, &'static str)]) -> Deed {
    Deed { clears, also: &[], of: Of::All }
}

/// What the action clears within its own parts. `also` is cleared by no remedy of its own.
const fn of_within(
    clears: &'static [(&'static str, &'static str)],
    also: &'static [(&'static str, &'static str)],
) -> Deed {
    Deed { clears, also, of: Of::Within }
}

/// Remedies of a cord: use another, or none.
const OTHER_CORD: &[(&str, &str)] = &[
    ("CORD001", "thicker"),
    ("CORD001", "unwind-less"),
    ("CORD001", "plug"),
    ("CORD001", "tag"),
    ("CORD002", "replace"),
    ("CORD004", "replace"),
    ("CORD005", "*"),
    ("CORD006", "less"),
    ("OVER001", "cord"),
    ("OVER001", "thicker"),
    ("OVER001", "splitter"),
    ("OVER003", "*"),
    ("VOLT001", "thicker"),
    ("VOLT001", "range-b"),
    ("VOLT001", "below-b"),
    ("VOLT001", "start-alone"),
];

/// Remedies of a box or its outlets: use another, or none.
const OTHER_BOX: &[(&str, &str)] = &[
    ("OVER001", "receptacle"),
    ("OVER001", "no-breaker"),
    ("OVER001", "wiring"),
    ("SHOCK004", "box"),
    ("SHOCK005", "known"),
    ("SHOCK006", "home-made"),
    ("SHOCK013", "box"),
];

const DEEDS: &[Deed] = &[
    // Use another cord, or none.
    of_part(OTHER_CORD),
    of_within(OTHER_CORD, &[("FIT004", "refused")]),
    // Use another cord with as many wires as it needs. It may be just as thin and unprotected.
    of_part(&[("SHOCK011", "leave"), ("CORD004", "replace")]),
    // Read the print on the cord.
    of_part(&[("CORD002", "look"), ("CORD004", "count"), ("SHOCK011", "count")]),
    // See how the cord lies.
    of_part(&[("CORD003", "look"), ("CORD006", "unwind")]),
    // Add up what is on.
    of_all(&[("OVER003", "*")]),
    // Lay the cord out.
    of_part(&[("CORD003", "unwind"), ("CORD001", "unwind"), ("CORD006", "unwind")]),
    // Use another box, or none.
    Deed { clears: OTHER_BOX, also: &[("FIT004", "too-large")], of: Of::Common },
    of_within(OTHER_BOX, &[("FIT004", "refused")]),
    // Look for the mark on the box.
    of_part(&[
        ("SHOCK004", "find-out"),
        ("SHOCK004", "find-out-box"),
        ("SHOCK005", "unknown"),
        ("SHOCK006", "look"),
        ("SHOCK013", "box-look"),
    ]),
    // Put the bonding plug into another outlet, or leave it out.
    of_all(&[
        ("SHOCK004", "plug"),
        ("SHOCK013", "plug"),
        ("SHOCK013", "plug-look"),
        ("SHOCK013", "plug-where"),
        ("SHOCK013", "plug-alone"),
        ("SHOCK013", "plug-better"),
        ("SHOCK013", "plug-first"),
        ("SHOCK013", "shared"),
        ("SHOCK013", "plug-out"),
        ("FIT001", "bonding-plug"),
    ]),
    // Add a GFCI where people plug in. Loads that fit nowhere else wait for it.
    of_all(&[
        ("SHOCK001", "protect"),
        ("SHOCK001", "better"),
        ("SHOCK009", "*"),
        ("OVER005", "set"),
        ("FIT004", "refused"),
        ("FIT004", "refused-here"),
    ]),
    // The same, with the GFCI cord ahead of another cord.
    of_part(&[("SHOCK001", "first"), ("SHOCK009", "*"), ("FIT004", "refused"), ("FIT004", "refused-here")]),
    // Feed the camper from an outlet or a cord with a GFCI.
    of_all(&[("SHOCK001", "camper"), ("OVER005", "set")]),
    // Find out how the neutral is joined.
    of_all(&[("SHOCK002", "*"), ("SHOCK004", "find-out"), ("SHOCK013", "plug-look")]),
    // Take turns, or run a load at another hour. That relieves every part on the way too. The reverse does not hold: a
    // load moved to another breaker takes as much from the generator.
    Deed {
        clears: &[
            ("POWER001", "turns"),
            ("POWER001", "hours"),
            ("POWER001", "leg"),
            ("POWER001", "leg-turns"),
            ("POWER001", "leg-look"),
            ("POWER001", "leg-cord"),
            ("POWER001", "amps"),
            ("POWER001", "life-off"),
            ("POWER001", "life-turns"),
            ("POWER002", "again"),
            ("POWER002", "fewer"),
            ("POWER002", "amps-again"),
            ("POWER002", "amps-fewer"),
            ("POWER002", "life-off"),
            ("POWER002", "life-turns"),
        ],
        also: &[("OVER002", "*"), ("OVER006", "*")],
        of: Of::Common,
    },
    // Take turns at one part. For the generator, that clears only findings about the same loads.
    Deed {
        clears: &[("OVER006", "turns-only")],
        also: &[("POWER001", "turns"), ("POWER002", "again"), ("POWER002", "fewer")],
        of: Of::Within,
    },
    // Switch off before three hours are up.
    of_part(&[("OVER002", "rest"), ("CORD008", "*")]),
    // Use one heavy cord.
    Deed { clears: &[("CORD008", "*")], also: &[("VOLT001", "thicker")], of: Of::Within },
    // Relieve an overloaded part. At another part of the same box, or at another hour, other loads may be involved.
    Deed { clears: &[("OVER002", "*"), ("OVER006", "*"), ("FIT004", "too-large")], also: &[], of: Of::Within },
    // Leave it unused until there is 240 V for it.
    of_part(&[("FIT003", "*"), ("FIT001", "dead"), ("FIT006", "*")]),
    // Plug it in where it fits.
    of_part(&[("FIT001", "lost"), ("FIT001", "part"), ("FIT001", "loose")]),
    // Say when it runs.
    of_part(&[("AIR006", "when"), ("HEALTH002", "when")]),
    // Run one generator alone.
    of_all(&[("POWER008", "*"), ("SHOCK004", "sets")]),
];

/// Remedies after which a cord is not used at all.
const UNUSED: &[(&str, &str)] = &[
    ("OVER001", "cord"),
    ("OVER001", "thicker"),
    ("OVER001", "splitter"),
    ("CORD004", "replace"),
    ("CORD009", "cord"),
    ("FIT006", "adapter"),
];

/// Returns the troubles of these findings, in the order of the findings.
pub(super) fn of_findings(plan: &Plan, findings: &[Finding]) -> Vec<Trouble> {
    let mut troubles: Vec<Trouble> = Vec::new();
    // Only what the remedy of the most severe finding clears, since that is the one reported.
    let mut leads: Vec<Cleared<'_>> = Vec::new();
    // Findings come worst first. Of those alike, one that keeps a box from use clears what else is wrong there.
    let all = findings.iter().map(|finding| Cleared::of(plan, finding));
    let mut all: Vec<(usize, Cleared<'_>)> = all.enumerate().collect();
    all.sort_by_key(|(_, it)| (it.finding.signal, !it.home_made));
    for (at, next) in all {
        let finding = next.finding;
        // If several would clear it, it goes with the first: the most severe is done first, and in two it would count
        // twice.
        let same = leads.iter().position(|lead| one_deed(lead, &next));
        let Some(same) = same else {
            leads.push(next);
            troubles.push(Trouble { signal: finding.signal, about: finding.about.clone(), findings: vec![at] });
            continue;
        };
        let trouble = &mut troubles[same];
        trouble.findings.push(at);
        let more = finding.about.iter().filter(|id| !trouble.about.contains(id));
        let more: Vec<Id> = more.cloned().collect();
        trouble.about.extend(more);
        // Equipment with the same remedy, such as two outlets of a box, is named in it together.
        let lead = &mut leads[same];
        let of_gear = lead.named.first().is_some_and(|id| plan.load(id).is_none());
        if of_gear && (lead.finding.code, lead.finding.fix.key) == (finding.code, finding.fix.key) {
            lead.named.extend(next.named);
            lead.owners.extend(next.owners);
        }
    }
    troubles.sort_by_key(|trouble| trouble.findings.iter().min().copied());
    troubles
}

/// Whether a finding has one of these remedies.
fn is_among(these: &[(&str, &str)], finding: &Finding) -> bool {
    these.iter().any(|it| it.0 == finding.code && (it.1 == "*" || it.1 == finding.fix.key))
}

/// Returns the box or cord that a receptacle belongs to. For anything else, itself.
fn owner<'a>(plan: &'a Plan, id: &'a Id) -> &'a Id {
    plan.part_of(id).unwrap_or(id)
}

/// Returns the parts and loads that a finding is about, then those that its remedy acts on. If a box is left out for
/// its effect on other parts, only that box. If loads are refused everywhere, only the parts that refuse them.
fn named(finding: &Finding) -> impl Iterator<Item = &Id> {
    let value = match (finding.code, finding.fix.key) {
        ("FIT001", "loose" | "unusable") => finding.values.get("place"),
        ("FIT004", _) => finding.values.get("refused"),
        ("FIT006", _) => finding.values.get("unfed"),
        ("SHOCK001", "first") => finding.fix.values.get("place"),
        ("SHOCK013", "box" | "box-look") => finding.fix.values.get("part"),
        _ => None,
    };
    let more = match value {
        Some(Value::Parts(more)) => more.as_slice(),
        _ => &[],
    };
    let only = matches!((finding.code, finding.fix.key), ("SHOCK013", "box" | "box-look") | ("FIT004", "refused"));
    let about = if only && !more.is_empty() { &[] } else { finding.about.as_slice() };
    about.iter().chain(more)
}

/// Returns the loads that a remedy says to leave off.
fn off(finding: &Finding) -> &[Id] {
    match finding.fix.values.get("off") {
        Some(Value::Parts(off)) => off,
        _ => &[],
    }
}

/// A finding and what clears it.
struct Cleared<'a> {
    finding: &'a Finding,
    /// What it names.
    named: Vec<&'a Id>,
    /// The owners of that.
    owners: Vec<&'a Id>,
    /// Whether it keeps boxes from use that are known to be home-made, so that no answer makes them usable.
    home_made: bool,
    /// The entries of [`DEEDS`] whose remedy is its own, as bits.
    by: u32,
    /// The entries that clear it too, as bits.
    also: u32,
}

impl<'a> Cleared<'a> {
    fn of(plan: &'a Plan, finding: &'a Finding) -> Self {
        let named: Vec<&Id> = named(finding).collect();
        let owners: Vec<&Id> = named.iter().map(|id| owner(plan, id)).collect();
        let home_made = |id: &&Id| plan.holder(id).is_some_and(|it| it.listed == Answer::Known(false));
        Self {
            finding,
            home_made: is_among(OTHER_BOX, finding) && owners.iter().all(home_made),
            owners,
            named,
            by: deeds(|deed| is_among(deed.clears, finding)),
            also: deeds(|deed| is_among(deed.also, finding)),
        }
    }
}

/// Returns the matching entries of [`DEEDS`], as bits.
fn deeds(wanted: impl Fn(&Deed) -> bool) -> u32 {
    let all = DEEDS.iter().enumerate();
    all.fold(0, |bits, (at, deed)| bits | u32::from(wanted(deed)) << at)
}

/// Whether one action clears both.
fn one_deed(lead: &Cleared<'_>, with: &Cleared<'_>) -> bool {
    let (one, other) = (lead.finding, with.finding);
    let in_common = || lead.owners.iter().any(|part| with.owners.contains(part));
    let within = || {
        let mut all = with.named.iter().zip(&with.owners);
        all.all(|(id, owner)| lead.named.contains(id) || lead.named.contains(owner))
    };
    // If a cord is not used, nothing else about it needs to be found out.
    let unused = UNUSED.contains(&(one.code, one.fix.key))
        && other.area == "cord"
        && other.signal > one.signal
        && (with.owners[..other.about.len()].iter()).all(|part| lead.owners.contains(part));
    // The loads left off for a medical load at one hour may not be all that is left off at another.
    let as_much = || off(other).iter().all(|id| off(one).contains(id));
    let both = lead.by & (with.by | with.also);
    let any = |of: Of| both & deeds(|deed| deed.of == of) != 0;
    let same = || any(Of::All) || any(Of::Common) && in_common() || any(Of::Within) && within();
    // Nor does a box that stays out of use need a GFCI.
    let unused = unused || lead.home_made && other.code == "SHOCK001" && within();
    unused || both != 0 && same() && as_much()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules;
    use crate::rules::testing::report;

    /// A kettle in the evening and a grill in the morning, each too much together with a medical load, are two
    /// troubles, because each is left off by itself. On the same evening they are one.
    #[test]
    fn what_stays_off_at_another_hour_is_a_trouble_of_its_own() {
        let grill = |hours: &str| {
            format!(
                "[[load]]\nid = \"grill\"\nname = \"Grill\"\nkind = \"heater\"\nrunning = \"1500 W\"\n\
                 hours = [\"{hours}\"]\nplug = \"5-15P\"\n[[load]]\nid = \"fan\""
            )
        };
        for (hours, expected) in [("07:00-07:30", 2), ("18:30-19:00", 1)] {
            let grill = grill(hours);
            let report = report(&[
                ("kind = \"electronic\" # fan", "kind = \"medical\""),
                ("[[load]]\nid = \"fan\"", grill.as_str()),
                ("hours = [\"18:00-23:00\"]", "hours = [\"06:00-23:00\"]"),
                ("rated = \"3600 W\"", "rated = \"1540 W\""),
            ]);
            let of_power = |trouble: &&Trouble| report.findings[trouble.findings[0]].code == "POWER001";
            let count = report.figures.troubles.iter().filter(of_power).count();
            assert_eq!(count, expected, "{hours}");
        }
    }

    /// A cord with its own neutral wire may be just as thin and unprotected, so what else is wrong with the old one
    /// remains.
    #[test]
    fn four_wires_clear_no_breaker_that_is_too_big() {
        let report = report(&[
            ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
            ("shape = \"L5-30R\"\nbreaker = \"30 A\" # twist", "shape = \"14-50R\"\nbreaker = \"50 A\" # twist"),
            (
                "plug = \"L5-30P\" # long\nends = [\"L5-30R\"] # long",
                "plug = \"14-50P\"\nends = [\"L5-30R\", \"L5-30R\"] # long",
            ),
            ("from = \"long\"\ninlet", "from = \"long.1\"\ninlet"),
        ]);
        let leads = |code: &str| {
            let mut troubles = report.figures.troubles.iter();
            troubles.any(|it| report.findings[it.findings[0]].code == code)
        };
        assert!(leads("SHOCK011") && leads("OVER001"));
    }

    /// Every rule and remedy listed exists.
    #[test]
    fn what_deeds_clear_is_found_by_some_rule() {
        for (code, fix) in DEEDS.iter().flat_map(|deed| deed.clears.iter().chain(deed.also)) {
            let rule = rules::find(code).unwrap_or_else(|| panic!("no rule {code}"));
            assert!(*fix == "*" || rule.fixes.contains(fix), "{code} {fix}");
        }
    }

    /// Each finding is in one trouble, and no trouble is less severe than its findings.
    #[test]
    fn no_finding_is_lost_or_told_twice() {
        for rule in rules::all() {
            for edits in rule.fires {
                let report = report(edits);
                let mut told: Vec<usize> = Vec::new();
                for trouble in &report.figures.troubles {
                    for at in &trouble.findings {
                        assert!(report.findings[*at].signal >= trouble.signal);
                        told.push(*at);
                    }
                }
                told.sort_unstable();
                assert_eq!(told, (0..report.findings.len()).collect::<Vec<_>>(), "{edits:?}");
            }
        }
    }

    /// Readers tell troubles apart by their titles. A surplus bonding plug and a box that joins neutral and ground are
    /// two.
    #[test]
    fn no_two_troubles_have_one_title() {
        let words = crate::words::Words::english();
        let bonds = [("bond = false", "bond = true"), ("bonding_plug = false", "bonding_plug = true")];
        let fires = rules::all().flat_map(|rule| rule.fires.iter().copied());
        for edits in fires.chain([&bonds[..]]) {
            let report = report(edits);
            let troubles = report.figures.troubles.iter();
            let mut titles: Vec<String> = troubles
                .filter_map(|trouble| report.findings_of(trouble).next())
                .map(|finding| words.finding(finding, &report.figures.loads).title)
                .collect();
            let all = titles.len();
            titles.sort();
            titles.dedup();
            assert_eq!(titles.len(), all, "{edits:?}: {titles:#?}");
        }
    }

    fn codes(edits: &[(&str, &str)], lead: &str) -> Vec<&'static str> {
        let report = report(edits);
        let all = report.figures.troubles.iter();
        let codes =
            all.map(|trouble| -> Vec<&str> { trouble.findings.iter().map(|at| report.findings[*at].code).collect() });
        let found = codes.filter(|codes| codes[0] == lead).collect::<Vec<_>>();
        assert_eq!(found.len(), 1, "{lead}: {found:?}");
        found[0].iter().map(|code| rules::find(code).expect("a rule").code).collect()
    }

    /// A thin cord that carries too much and is an indoor cord: one cord to replace.
    #[test]
    fn one_cord_to_replace_is_one_trouble() {
        let thin = [
            ("wire = \"10 AWG\" # long", "wire = \"16 AWG\""),
            ("outdoor = true # long", "outdoor = false"),
            ("conductors = 3 # long", "conductors = 2"),
        ];
        let found = codes(&thin, "OVER001");
        let all = ["CORD004", "CORD002"];
        assert!(all.iter().all(|code| found.contains(code)), "{found:?}");
        // A fault of another part is a trouble of its own.
        let too = [thin[0], thin[1], thin[2], ("listed = true", "listed = false")];
        assert_eq!(codes(&too, "SHOCK006"), ["SHOCK006"]);
    }

    /// An engine in a van near people, a breathing machine at night, and a heater at an unknown hour.
    #[test]
    fn what_the_air_asks_for_is_told_once() {
        let shut =
            [("sleepers_at = \"60 ft\"", "sleepers_at = \"12 ft\""), ("stands = \"roof\"", "stands = \"enclosed\"")];
        // Being far from people does not get it out of the van, so each is a trouble.
        assert_eq!(codes(&shut, "AIR001"), ["AIR001"]);
        assert_eq!(codes(&shut, "AIR003"), ["AIR003"]);
        // In the open it is only too near.
        assert_eq!(codes(&shut[..1], "AIR001"), ["AIR001"]);
        let hours = "hours = [\"18:00-23:00\"]";
        let life = [
            ("kind = \"electronic\" # fan", "kind = \"medical\""),
            (hours, ""),
            ("co_alarm = true", "co_alarm = false"),
        ];
        // A battery is one thing to get, but only HEALTH001 covers oxygen.
        assert_eq!(codes(&life, "AIR006"), ["AIR006"]);
        assert_eq!(codes(&life, "HEALTH001"), ["HEALTH001"]);
        let heater = [("hours = [\"18:30-19:00\"]", ""), ("continuous = false # kettle", "continuous = true"), life[2]];
        assert_eq!(codes(&heater, "AIR006"), ["AIR006", "HEALTH002"]);
        // Another load needs another action.
        let fan = [heater[0], heater[1], heater[2], (hours, "hours = [\"18:00-06:00\"]")];
        assert_eq!(codes(&fan, "AIR006"), ["AIR006"]);
    }

    /// A box that joins neutral and ground behind the generator's GFCI: findings about the box and about its
    /// receptacles.
    #[test]
    fn receptacles_are_parts_of_their_box() {
        let joined = [
            ("bond = false", "bond = true"),
            ("gfci = false # twist", "gfci = true"),
            ("gfci = true # left", "gfci = false"),
            ("gfci = true # right", "gfci = false"),
        ];
        let found = report(&joined);
        let about: Vec<_> = ["SHOCK004", "SHOCK013"]
            .map(|code| found.findings.iter().find(|it| it.code == code).expect("it is found"))
            .iter()
            .map(|finding| finding.about.clone())
            .collect();
        assert!(about[0].iter().all(|id| !about[1].contains(id)), "{about:?}");
        let together = found.figures.troubles.iter().any(|trouble| {
            let codes: Vec<_> = found.findings_of(trouble).map(|finding| finding.code).collect();
            codes.contains(&"SHOCK004") && codes.contains(&"SHOCK013")
        });
        assert!(together);
    }

    /// An adapter that gives the wrong voltage stays at home, so the finding that it can carry nothing in this heat
    /// goes with that.
    #[test]
    fn a_cord_that_stays_at_home_is_told_once() {
        let ends = |ends: &str| {
            format!("[[cord]]\nid = \"trap\"\nfrom = \"front\"\nplug = \"6-20P\"\nends = [{ends}]\n[[box]]")
        };
        for (some, end) in [("one", "\"5-20R\""), ("two", "\"5-20R\", \"5-20R\"")] {
            let trap = ends(end);
            let report = report(&[
                ("air = \"59 °F\"", "air = \"60 °C\""),
                ("voltage = \"120 V\"", "voltage = \"120/240 V\""),
                ("shape = \"5-20R\"\nbreaker = \"20 A\" # front", "shape = \"6-20R\"\nbreaker = \"20 A\""),
                ("[[box]]", trap.as_str()),
            ]);
            let of_trap = report.figures.troubles.iter().filter(|it| {
                let found = report.findings_of(it).next().expect("a finding");
                let mut about = found.about.iter();
                found.code == "CORD006" && about.any(|id| id.as_str() == "trap")
            });
            assert_eq!(of_trap.count(), 0, "{some}");
        }
    }

    /// A splitter behind a breaker that is too big is not used, so its unknown jacket is no separate trouble. Behind a
    /// breaker that fits, it is.
    #[test]
    fn of_a_cord_that_is_not_used_nothing_else_is_asked() {
        let splitter = [
            ("ends = [\"L5-30R\"]", "ends = [\"L5-30R\", \"5-20R\"]"),
            ("from = \"long\"", "from = \"long.1\""),
            ("outdoor = true # long", "outdoor = \"unknown\""),
        ];
        assert!(codes(&splitter, "OVER001").contains(&"CORD002"));
        let thin = [("wire = \"10 AWG\"", "wire = \"14 AWG\""), splitter[2]];
        assert!(codes(&thin, "OVER001").contains(&"CORD002"));
        assert_eq!(codes(&splitter[2..], "CORD002"), ["CORD002"]);
    }

    /// A heater on a cord that is too much for its outlet over hours: a rest clears both. If something else is on that
    /// breaker, that may be what has to go.
    #[test]
    fn a_heater_on_a_cord_is_one_thing_to_do() {
        let long = [
            ("continuous = false # kettle", "continuous = true"),
            ("hours = [\"18:30-19:00\"]", "hours = [\"08:00-13:00\"]"),
        ];
        assert_eq!(codes(&long, "OVER002"), ["OVER002", "CORD008"]);
        let beside = [
            long[0],
            long[1],
            ("hours = [\"18:00-23:00\"]", "hours = [\"09:00-10:00\"]"),
            ("continuous = true # fan", "continuous = false"),
            ("on = \"right\" # fan", "on = \"left\""),
        ];
        assert_eq!(codes(&beside, "OVER002"), ["OVER002"]);
        // A heavier cord also loses fewer volts, but not for the fan behind the same cord.
        let far =
            [long[0], ("running = \"1500 W\"", "running = \"1400 W\""), ("length = \"50 ft\"", "length = \"200 ft\"")];
        assert_eq!(codes(&far, "CORD008"), ["CORD008"]);
        let alone = [far[0], far[1], far[2], ("on = \"right\" # fan", "on = \"front\"")];
        assert_eq!(codes(&alone, "CORD008"), ["CORD008", "VOLT001"]);
    }

    /// Returns the codes of each trouble, in its own order.
    fn codes_of(edits: &[(&str, &str)]) -> Vec<Vec<&'static str>> {
        let report = report(edits);
        let codes = |trouble: &Trouble| report.findings_of(trouble).map(|it| it.code).collect();
        report.figures.troubles.iter().map(codes).collect()
    }

    /// A home-made box stays out of use, so nobody is sent to plug a GFCI cord into its outlets. A factory-made one may
    /// turn out well, and then needs one.
    #[test]
    fn a_home_made_box_needs_no_gfci() {
        let bare = [("gfci = true # left", "gfci = false"), ("gfci = true # right", "gfci = false")];
        let thick =
            [("breaker = \"15 A\" # left", "breaker = \"30 A\""), ("breaker = \"15 A\" # right", "breaker = \"30 A\"")];
        let edits = [&bare[..], &thick].concat();
        let told = codes_of(&edits);
        assert!(told.contains(&vec!["OVER001", "OVER001"]), "{told:?}");
        let told = codes_of(&[&edits[..], &[("listed = true", "listed = false")]].concat());
        assert_eq!(told[0][..3], ["OVER001", "OVER001", "SHOCK001"], "{told:?}");
        // The outlet on the right is only home-made, which is a warning.
        let told = codes_of(&[&edits[..3], &[("listed = true", "listed = false")]].concat());
        assert!(told.iter().any(|codes| codes[0] == "SHOCK001"), "{told:?}");
    }

    /// A load that only a bad cord keeps from every outlet is served once that cord is replaced. If another outlet that
    /// takes its plug may not be used either, that is not all there is to do.
    #[test]
    fn what_a_bad_cord_keeps_off_is_cleared_with_it() {
        let thin = ("wire = \"10 AWG\" # long", "wire = \"18 AWG\"");
        let twist = ("gfci = true # front", "gfci = false");
        let told = codes_of(&[thin, twist]);
        assert!(told[0].contains(&"FIT004"), "{told:?}");
        let kettle = ("on = \"left\" # kettle", "");
        let hot = ("breaker = \"15 A\" # right", "breaker = \"15 A\"\nhot = true");
        let told = codes_of(&[thin, twist, kettle, hot]);
        assert!(told.contains(&vec!["OVER001"]), "{told:?}");
    }

    /// A cord that got hot is a fact, and no print on it needs to be read. It is a trouble of its own, apart from
    /// findings that rest on assumptions.
    #[test]
    fn what_got_hot_is_a_trouble_of_its_own() {
        let hot = ("coiled = false # long", "coiled = false\nhot = true");
        for guess in
            [("wire = \"10 AWG\" # long", "wire = \"unknown\""), ("conductors = 3 # long", "conductors = \"unknown\"")]
        {
            let found = report(&[hot, guess]);
            let mut troubles = found.figures.troubles.iter();
            let first = |trouble: &crate::report::Trouble| found.findings[trouble.findings[0]].code;
            let own = troubles.find(|it| first(it) == "CORD009").expect("told");
            assert_eq!(own.signal, crate::report::Signal::Danger);
        }
    }

    /// Two cords with one fault each are two troubles.
    #[test]
    fn two_parts_are_two_troubles() {
        let found = report(&[("coiled = false # long", "coiled = true"), ("gfci = true # left", "gfci = false")]);
        let of = |code: &str| {
            let mut all = found.figures.troubles.iter();
            all.position(|trouble| trouble.findings.iter().any(|at| found.findings[*at].code == code))
        };
        assert!(of("CORD003").is_some() && of("SHOCK001").is_some());
        assert_ne!(of("CORD003"), of("SHOCK001"));
    }
}

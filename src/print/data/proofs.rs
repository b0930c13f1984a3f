//! What each test of a receptacle shows and proves: a section of the worksheet, and the test steps of the card.

use super::Context;
use super::worksheet::{Section, Sheet};
use crate::plan::{Answer, Id};
use crate::quantity::{Current, Resistance};
use crate::report::{Button, Lamp, Proof, Reads, Sure};
use crate::rules;
use crate::tables::gfci;
use crate::tables::source::{Mark, Source};

/// The source for testing the ground wires of cord sets with a meter.
const METER: Source = Source::new("29 CFR", "1926.404(b)(1)(iii)", "", Mark::Confirmed);
/// The leakage currents in milliamps for which the longest trip time is given: a GFCI's trip threshold, a wet hand, a
/// short to ground.
const LEAKS: [i64; 3] = [6, 30, 264];

fn reads_key(reads: Reads) -> &'static str {
    match reads {
        Reads::Correct => "correct",
        Reads::OpenGroundFloating => "floating",
        Reads::Either => "either",
    }
}

fn button_key(button: Button) -> &'static str {
    match button {
        Button::Trips => "trips",
        Button::NoWayBack => "no-way-back",
        Button::Blind => "blind",
        Button::Either => "either",
        Button::NoProtection => "no-protection",
    }
}

fn sure_key(sure: Sure) -> &'static str {
    match sure {
        Sure::Yes => "yes",
        Sure::No => "no",
        Sure::Unknown => "unknown",
    }
}

/// Returns the worksheet's section on tests.
pub(super) fn worksheet(sheet: &Sheet<'_>) -> Section {
    let context = sheet.context;
    let proofs = &context.report.figures.tests;
    let none = || "–".to_owned();
    let lamp = |lamp: Lamp| {
        context.say(
            match lamp {
                Lamp::Lit => "lamp-lit",
                Lamp::Dark => "lamp-dark",
                Lamp::Either => "lamp-either",
            },
            &[],
        )
    };
    let say = |key: &str, which: &str| context.say(&format!("{key}-{which}"), &[]);
    let ground = |proof: &Proof| {
        let key = if proof.ground_to_frame == Resistance::ZERO { "here" } else { "yes" };
        let ohms = context.exact(proof.ground_to_frame);
        context.say(&format!("meter-ground-{key}"), &[("ohms", &ohms)])
    };
    let facts: Vec<Vec<String>> = proofs
        .iter()
        .map(|proof| {
            let lamps = proof.lamps;
            vec![
                lamps.map_or_else(none, |it| [it.hot_neutral, it.hot_ground, it.neutral_ground].map(lamp).join(" ")),
                lamps.map_or_else(none, |it| say("reads", reads_key(it.reads))),
                proof.protected_by.as_ref().map_or_else(|| say("button", "no-protection"), Id::to_string),
                proof.tester_button.map_or_else(none, |button| say("button", button_key(button))),
                ground(proof),
                proof.neutral_to_ground.map_or_else(none, |sure| say("meter-neutral", sure_key(sure))),
            ]
        })
        .collect();
    // Neighbors with the same results share a row.
    let with_ids: Vec<(&Proof, Vec<String>)> = proofs.iter().zip(facts).collect();
    let rows = with_ids
        .chunk_by(|one, other| one.1 == other.1)
        .map(|group| {
            let ids: Vec<&str> = group.iter().map(|(proof, _)| proof.at.as_str()).collect();
            let mut row = vec![ids.join(", ")];
            row.extend(group[0].1.clone());
            row
        })
        .collect::<Vec<Vec<String>>>();
    let mut formulas = context.sentences(&["ws-tests-lamps", "ws-tests-own", "ws-tests-meter"]);
    formulas.extend(without(context));
    formulas.extend(proved(context, proofs));
    formulas.push(context.say("ws-tests-time", &[("times", &times(context))]));
    sheet.section(
        "tests",
        formulas,
        &[rules::TESTER, METER, gfci::CURVE, Source::common_practice()],
        &[("at", 3), ("lamps", 3), ("reads", 4), ("own-button", 3), ("tester-button", 4), ("ground", 4), ("joined", 3)],
        rows,
    )
}

/// Returns what each result that occurs in this setup proves, each once.
fn proved(context: &Context<'_>, proofs: &[Proof]) -> Vec<String> {
    let mut keys: Vec<String> = Vec::new();
    let mut tell = |key: String| {
        if !keys.contains(&key) {
            keys.push(key);
        }
    };
    for lamps in proofs.iter().filter_map(|proof| proof.lamps) {
        tell(format!("proves-reads-{}", reads_key(lamps.reads)));
    }
    for button in proofs.iter().filter_map(|proof| proof.tester_button) {
        if button != Button::NoProtection {
            tell(format!("proves-button-{}", button_key(button)));
        }
    }
    keys.iter().map(|key| context.say(key, &[])).collect()
}

/// Lists the longest trip times, such as "6 mA within 5.6 s".
fn times(context: &Context<'_>) -> String {
    let times: Vec<String> = LEAKS
        .into_iter()
        .filter_map(|leak| {
            let micros = gfci::longest_trip_micros(Current::from_milliamps(leak))?;
            // Rounded up to the millisecond.
            let seconds = rust_decimal::Decimal::from(micros.div_ceil(1_000));
            let seconds = seconds / rust_decimal::Decimal::ONE_THOUSAND;
            Some(context.say("trip-time", &[("leak", &leak.to_string()), ("seconds", &context.words.number(seconds))]))
        })
        .collect();
    context.words.list(&times)
}

/// Returns the card's test steps.
pub(super) fn card(context: &Context<'_>) -> Vec<String> {
    let proofs = &context.report.figures.tests;
    let say = |key: &str| context.say(key, &[]);
    let report = context.report;
    let mut limits = report.figures.limits.iter();
    let mut steps = without(context);
    if limits.any(|limit| limit.gfci && report.refused(&limit.id).is_none()) || proofs.iter().any(|proof| proof.works) {
        steps.extend([say("test-button"), say("test-reset")]);
    } else {
        steps.push(say("test-none"));
    }
    let set = &context.plan.generator;
    let plug = set.bonding_plug == Answer::Known(true);
    if !set.neutral.is_known() && !plug {
        steps.push(say("test-find-out"));
    }
    let testers: Vec<&Proof> = proofs.iter().filter(|it| it.lamps.is_some()).collect();
    steps.extend(grouped(context, &testers, Some("test-everywhere"), |proof| {
        let reads = proof.lamps.map_or(Reads::Either, |lamps| lamps.reads);
        format!("test-reads-{}", reads_key(reads))
    }));
    if !testers.is_empty() {
        steps.push(say("test-other"));
    }
    let protected: Vec<&Proof> = testers.iter().copied().filter(|proof| proof.protected_by.is_some()).collect();
    let button = |proof: &Proof| proof.tester_button.unwrap_or(Button::Either);
    // As on labels: a GFCI blinded by a part that must stay unplugged does not count as working.
    let works = |proof: &&Proof| {
        let works = matches!(button(proof), Button::Trips | Button::NoWayBack);
        works && proof.without.is_none()
    };
    let all = if protected.len() == testers.len() {
        Some("test-everywhere")
    } else {
        // An outlet that nothing protects cannot pass this test.
        protected.iter().all(works).then_some("test-protected")
    };
    steps.extend(grouped(context, &protected, all, |proof| match button(proof) {
        // The TEST button cuts the power, but an actual fault may not.
        Button::Either if !proof.works => "test-tester-doubtful".to_owned(),
        button => format!("test-tester-{}", button_key(button)),
    }));
    steps
}

/// Returns what must stay unplugged, and which GFCIs see no fault while it is plugged in. Their labels name it.
fn without(context: &Context<'_>) -> Vec<String> {
    let mut joints: Vec<(&Id, Vec<&str>)> = Vec::new();
    for proof in &context.report.figures.tests {
        let (Some(joint), Some(device)) = (&proof.without, &proof.protected_by) else {
            continue;
        };
        let device = device.as_str();
        match joints.iter_mut().find(|(known, _)| *known == joint) {
            Some((_, devices)) if devices.contains(&device) => {}
            Some((_, devices)) => devices.push(device),
            None => joints.push((joint, vec![device])),
        }
    }
    let told = joints.into_iter().map(|(joint, devices)| {
        let at = context.words.quoted(devices.into_iter());
        context.say("test-without", &[("joint", joint.as_str()), ("at", &at)])
    });
    told.collect()
}

/// Returns one sentence for each key, with the receptacles that it holds for. If there is only one key, the message
/// `all` stands for all of them.
fn grouped(context: &Context<'_>, of: &[&Proof], all: Option<&str>, key: impl Fn(&Proof) -> String) -> Vec<String> {
    let mut groups: Vec<(String, Vec<&str>)> = Vec::new();
    for proof in of {
        let (key, id) = (key(proof), proof.at.as_str());
        match groups.iter_mut().find(|(known, _)| *known == key) {
            Some((_, ids)) => ids.push(id),
            None => groups.push((key, vec![id])),
        }
    }
    let all = all.filter(|_| groups.len() == 1);
    groups
        .into_iter()
        .map(|(key, ids)| {
            let at = match all {
                Some(all) => context.say(all, &[]),
                None => context.words.quoted(ids.into_iter()),
            };
            context.say(&key, &[("at", &at)])
        })
        .collect()
}

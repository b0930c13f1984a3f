//! Prints, answers and findings never disagree, whatever the plan.

use std::collections::BTreeSet;

use proptest::prelude::*;
use serde_json::Value as Json;

use super::*;
use crate::judge::ask::ask;
use crate::plan::arbitrary;
use crate::report::{Admits, Button, ShockState, Signal};

/// Returns the data of one document as its template receives it.
pub(super) fn data_of(plan: &Plan, report: &Report, document: Document) -> Option<Json> {
    let options = Options { only: vec![document], ..Options::default() };
    let all = data::all(plan, report, &Words::english(), &options).ok()?;
    let (_, text) = all.into_iter().next()?;
    serde_json::from_str(&text).ok()
}

pub(super) fn text_of<'a>(item: &'a Json, key: &str) -> &'a str {
    item[key].as_str().unwrap_or_default()
}

fn config() -> ProptestConfig {
    // For more and different cases: `PROPTEST_CASES=5000 PROPTEST_RNG_SEED=7 cargo test agree`.
    let mut config = ProptestConfig::default();
    if config.cases == 256 {
        config.cases = 64;
    }
    config
}

/// Returns each name of a load, and whether a load of that name is in the set. A name that is part of another is left
/// out, because nobody could tell which of them a line names.
fn names_among<'a>(report: &'a Report, set: &'a [Id]) -> impl Iterator<Item = (&'a str, bool)> {
    let loads = &report.figures.loads;
    let names: BTreeSet<&str> = loads.iter().map(|load| &*load.name).collect();
    let clear = |name: &&str| names.iter().all(|other| other == name || !named(other, name));
    let clear: Vec<&str> = names.iter().copied().filter(clear).collect();
    clear.into_iter().map(|name| (name, loads.iter().any(|load| load.name == name && set.contains(&load.id))))
}

/// Whether a line has this name as words of its own, wherever it may break.
fn named(line: &str, name: &str) -> bool {
    let line = line.replace('\u{200b}', "");
    let within = |c: char| c.is_alphanumeric() || c == '-';
    line.match_indices(name).any(|(at, _)| {
        let (before, after) = (&line[..at], &line[at + name.len()..]);
        !before.ends_with(within) && !after.starts_with(within)
    })
}

/// Checks the label of a receptacle, or its row on the card, against answers about its loads: whether all of them may
/// run at once, any two of them, and each set that it names.
fn says_what_may_says(plan: &Plan, report: &Report, item: &Json) -> Result<(), TestCaseError> {
    let verdict = Id::new(text_of(item, "id")).and_then(|id| report.verdict(&id));
    let Some(verdict) = verdict.filter(|it| it.admits != Admits::Named) else {
        return Ok(());
    };
    let loads = &verdict.loads;
    // Whatever a danger makes of the answer.
    let fits = |set: &[Id]| {
        let answer = ask(plan, report, set, &[]);
        answer.over.is_empty() && answer.taken.is_empty()
    };
    let pairs = || loads.iter().enumerate().flat_map(|(at, one)| loads[at + 1..].iter().map(move |other| [one, other]));
    let all = loads.len() < 2 || fits(loads);
    let some = !all && pairs().any(|pair| fits(&pair.map(Clone::clone)));
    // What stands about the outlet that a part plugs into is about that outlet's loads.
    let mut own = item.clone();
    if let Some(facts) = own["facts"].as_array_mut() {
        facts.retain(|fact| !fact.to_string().contains("shared with"));
    }
    let own = own.to_string();
    let says = |words: &str| own.contains(words);
    prop_assert_eq!(says("one at a time"), !all && !some, "{}", item);
    prop_assert_eq!(says("not together") || says("not all at once"), some, "{}", item);
    prop_assert_eq!(verdict.not_together.is_empty(), !some);
    for set in &verdict.not_together {
        prop_assert!(!fits(set), "{:?}", set);
    }
    // What it does not name may run. Of units alike it names the first, and answers count what must stay on: the first.
    let of = |id: &Id| report.figures.load(id).map(|load| &load.of);
    let many = |set: &[Id], one: &Id| set.iter().filter(|id| of(id) == of(one)).count();
    let first = |pair: &[Id; 2]| {
        let goes_first = |id: &Id, it: &Id| of(it) == of(id) && !pair.contains(it);
        pair.iter().all(|id| !loads.iter().take_while(|it| *it != id).any(|it| goes_first(id, it)))
    };
    for pair in pairs().map(|pair| pair.map(Clone::clone)).filter(first) {
        let named = |set: &Vec<Id>| set.iter().all(|id| many(set, id) <= many(&pair, id));
        let whole = verdict.not_together.iter().any(|set| set.len() == loads.len());
        prop_assert!(all || whole || !some || verdict.not_together.iter().any(named) != fits(&pair), "{:?}", pair);
    }
    Ok(())
}

proptest! {
    #![proptest_config(config())]

    /// Labels agree with answers. If a label forbids use, no answer says yes. If it gives amps, nothing upstream is
    /// forbidden. The loads it names may be on all at once, or else it says which may not.
    #[test]
    fn labels_answers_and_sets_agree(plan in arbitrary::camp()) {
        let report = crate::judge::judge(&plan);
        let Some(labels) = data_of(&plan, &report, Document::Labels) else {
            return Ok(());
        };
        let items = labels["items"].as_array().cloned().unwrap_or_default();
        let refused: BTreeSet<&str> = items
            .iter()
            .filter(|item| text_of(item, "kind") == "refuse")
            .map(|item| text_of(item, "id"))
            .collect();
        // Every receptacle that nothing may be plugged into has such a label, or is named on the label of its part.
        let spoken_for: Vec<String> = items.iter().map(|item| format!("{}, ", text_of(item, "ends"))).collect();
        for limit in &report.figures.limits {
            let named = || spoken_for.iter().any(|ends| ends.contains(&format!("{}, ", limit.id)));
            let told = report.refused(&limit.id).is_none() || refused.contains(limit.id.as_str()) || named();
            prop_assert!(told, "{} {:?}", limit.id, report.verdict(&limit.id));
        }
        // If using a receptacle as it is would be a danger, no label admits whatever fits.
        let shocks = report.findings.iter().filter(|it| ["SHOCK001", "SHOCK013"].contains(&it.code));
        for at in shocks.filter(|it| it.signal == Signal::Danger).flat_map(|it| &it.about) {
            let admits = report.verdict(at).map(|it| it.admits);
            prop_assert!(admits.is_none_or(|it| it != Admits::Everything), "{} {:?}", at, admits);
        }
        let sharing = &report.figures.sharing;
        for load in &report.figures.loads {
            let answer = ask(&plan, &report, std::slice::from_ref(&load.id), &[]);
            let place = sharing.placed.iter().find(|placed| placed.load == load.id);
            if answer.may {
                let place = place.expect("a yes has a place");
                prop_assert!(!refused.contains(place.at.as_str()), "{}", load.id);
                let label = items.iter().find(|item| text_of(item, "id") == place.at.as_str());
                let label = label.expect("a place has a label");
                // JSON escapes names with special characters.
                let plain = load.name.chars().all(char::is_alphanumeric);
                prop_assert!(!plain || label.to_string().contains(&load.name), "{label}");
            }
        }
        for item in items.iter().filter(|item| !item["long"].is_null()) {
            let id = text_of(item, "id");
            let Some(limit) = report.figures.limits.iter().find(|limit| limit.id.as_str() == id) else {
                continue;
            };
            for part in &limit.path {
                prop_assert!(!refused.contains(part.as_str()), "{id} hangs on {part}");
            }
            says_what_may_says(&plan, &report, item)?;
            let works = limit.shock.state == ShockState::Works;
            prop_assert!(!item["shock"].is_string() || item["gfci"] == Json::Bool(works), "{item}");
        }
        // If the worksheet says that nothing protects a receptacle, its label forbids use.
        for proof in report.figures.protection.iter().filter(|it| it.by == "nothing") {
            let at = sharing.placed.iter().find(|it| it.load == proof.id).map_or(&proof.id, |it| &it.at);
            prop_assert!(report.refused(at).is_some(), "{proof:?}");
        }
        // What must not be used has a finding that explains it, and only that has a refusal. This covers cords and
        // boxes too.
        for item in &items {
            let id = Id::new(text_of(item, "id"));
            let Some(verdict) = id.and_then(|id| report.verdict(&id).cloned()) else { continue };
            let why = verdict.why.as_ref();
            prop_assert!(why.is_none_or(|why| report.usable(&verdict.id) || report.told_by(why).is_some()), "{verdict:?}");
            prop_assert_eq!(text_of(item, "kind") != "refuse", report.usable(&verdict.id), "{}", item);
        }
    }

    /// A part that is plugged into nothing has no figures and no row in the tree. If its label forbids use, so does the
    /// card.
    #[test]
    fn what_hangs_on_nothing_carries_nothing(plan in arbitrary::camp()) {
        let report = crate::judge::judge(&plan);
        let (Some(labels), Some(card)) =
            (data_of(&plan, &report, Document::Labels), data_of(&plan, &report, Document::Card))
        else {
            return Ok(());
        };
        let loose: Vec<&str> = card["loose"].as_array().into_iter().flatten().filter_map(Json::as_str).collect();
        for part in crate::supply::Supply::build(&plan).detached {
            let of_it = |item: &&Json| text_of(item, "id") == part.id.as_str();
            let mut rows = card["rows"].as_array().into_iter().flatten();
            prop_assert!(!rows.any(|row| of_it(&row)), "{}", part.id);
            let id = part.id.as_str();
            let told = loose.iter().find(|told| told.split(" (").next() == Some(id));
            prop_assert!(told.is_some(), "{id}");
            let label = labels["items"].as_array().into_iter().flatten().find(of_it);
            let refused = label.is_some_and(|label| label["stop"].is_string());
            prop_assert_eq!(told.is_some_and(|told| *told != id), refused, "{}", id);
            prop_assert!(label.is_none_or(|label| label["long"].is_null()), "{label:?}");
        }
    }

    /// The card agrees with answers: what it lists as never together gets a no, and what it lists as together a yes,
    /// except for dangers. Every switching-on step is for a load that it allows.
    #[test]
    fn the_card_and_the_answers_agree(plan in arbitrary::camp()) {
        let report = crate::judge::judge(&plan);
        let sharing = &report.figures.sharing;
        for set in &sharing.never {
            let answer = ask(&plan, &report, set, &[]);
            prop_assert!(!answer.may, "{set:?}");
        }
        for set in &sharing.together {
            let answer = ask(&plan, &report, set, &[]);
            prop_assert!(answer.no_place.is_empty() && answer.over.is_empty(), "{set:?}: {answer:#?}");
            prop_assert_eq!(answer.may, answer.dangers.is_empty(), "{:?}", set);
            // The card says that any order works.
            prop_assert!(answer.any_order, "{set:?}");
        }
        let Some(card) = data_of(&plan, &report, Document::Card) else {
            return Ok(());
        };
        // What is printed as never together and as together names those loads and no others.
        let lines: Vec<&str> = card["never"].as_array().into_iter().flatten().filter_map(Json::as_str).collect();
        let hidden = sharing.never.len() - lines.len();
        prop_assert_eq!(hidden > 0, card["never_more"].as_str().is_some_and(|more| more.contains(&hidden.to_string())));
        for (line, set) in lines.iter().zip(&sharing.never) {
            for (name, among) in names_among(&report, set) {
                prop_assert_eq!(named(line, name), among, "{}: {}", name, line);
            }
        }
        let table = &card["together"];
        let rows: Vec<&str> = table["names"].as_array().into_iter().flatten().filter_map(Json::as_str).collect();
        for column in table["sets"].as_array().into_iter().flatten() {
            let number: usize = text_of(column, "number").parse().expect("a number");
            let cells = column["has"].as_array().into_iter().flatten().filter_map(Json::as_str);
            let on: Vec<&str> = rows.iter().zip(cells).filter(|(_, cell)| !cell.is_empty()).map(|(row, _)| *row).collect();
            for (name, among) in names_among(&report, &sharing.together[number - 1]) {
                prop_assert_eq!(on.iter().any(|row| named(row, name)), among, "{}: {:?}", name, on);
            }
        }
        let steps: Vec<Id> = sharing.start_order.iter().map(|step| step.load.clone()).collect();
        let within = |set: &Vec<Id>| steps.iter().all(|load| set.contains(load));
        prop_assert!(steps.is_empty() || sharing.together.iter().any(within), "{steps:?}");
        // No row of the tree names a load where nothing may be used.
        for row in card["rows"].as_array().cloned().unwrap_or_default() {
            let id = Id::new(text_of(&row, "id"));
            let refused = id.is_some_and(|id| report.refused(&id).is_some());
            let named = row["loads"].as_array().is_some_and(|loads| !loads.is_empty());
            let stopped = row["stopped"].as_bool() == Some(true);
            prop_assert!(!refused || stopped && !named, "{row}");
            prop_assert!(!stopped || row["long"].is_null(), "{row}");
        }
        // Voltage drops and watts are given only for loads that may run together, and every such load has a receptacle.
        let whole = sharing.families_complete;
        let placed = |load: &Id| sharing.placed.iter().any(|placed| placed.load == *load);
        let allowed = |loads: &[Id]| {
            let mut sets = sharing.together.iter();
            let off = matches!(loads, [one] if sharing.off.contains(one));
            loads.iter().all(placed) && (!whole || off || sets.any(|set| loads.iter().all(|load| set.contains(load))))
        };
        // Units of one entry at one receptacle share one set, given for the first of them.
        let like = |load: &Id| {
            let of = |id: &Id| {
                let facts = report.figures.loads.iter().find(|it| it.id == *id);
                let at = sharing.placed.iter().find(|it| it.load == *id);
                (facts.map(|it| it.of.clone()), at.map(|it| it.at.clone()))
            };
            let own = of(load);
            let first = sharing.placed.iter().find(|it| of(&it.load) == own);
            first.map_or(load.clone(), |it| it.load.clone())
        };
        for drop in &report.figures.drops {
            let alone = std::slice::from_ref(&drop.at);
            prop_assert!(allowed(alone) || allowed(&[like(&drop.at)]), "{drop:?}");
            prop_assert!(drop.beside.iter().all(placed), "{drop:?}");
        }
        let volts = &report.figures.volts;
        for worst in [&volts.worst_running, &volts.worst_start].into_iter().flatten() {
            prop_assert!(allowed(&worst.running), "{worst:?}");
        }
        // Meter readings are for all loads of the start order, at each box that the tree shows and allows, but for
        // campers: nobody knows what is lost in their own wiring. A meter fits household outlets only.
        let on: Vec<Id> = volts.steps.iter().map(|step| step.load.clone()).collect();
        prop_assert_eq!(&on, &steps);
        let lines: Vec<&str> = card["meters"].as_array().into_iter().flatten().filter_map(Json::as_str).collect();
        prop_assert!(lines.is_empty() || !steps.is_empty(), "{lines:?}");
        let told: Vec<&Id> = match volts.steps.last() {
            Some(last) if plan.boxes.is_empty() => {
                let household = |limit: &&Limit| limit.id == last.receptacle && limit.shape.0.household();
                report.figures.limits.iter().find(household).map(|limit| &limit.id).into_iter().collect()
            }
            Some(last) => {
                let camper = |at: &Id| plan.camper(at).is_some();
                last.boxes.iter().map(|it| &it.at).filter(|at| report.usable(at) && !camper(at)).collect()
            }
            None => Vec::new(),
        };
        prop_assert_eq!(lines.len(), told.len());
        for (line, at) in lines.iter().zip(told) {
            prop_assert!(line.contains(at.as_str()) && report.usable(at), "{line}");
        }
    }

    /// The tests and labels agree on whether a GFCI works. For an outlet where no appliance is refused, the tests say
    /// what its label says, or name the same part that blinds it, which is then kept unplugged.
    #[test]
    fn the_tests_and_the_labels_agree(plan in arbitrary::camp()) {
        let report = crate::judge::judge(&plan);
        let (Some(labels), Some(card)) =
            (data_of(&plan, &report, Document::Labels), data_of(&plan, &report, Document::Card))
        else {
            return Ok(());
        };
        let steps: Vec<&str> = card["test"].as_array().into_iter().flatten().filter_map(Json::as_str).collect();
        let tests = &report.figures.tests;
        for proof in tests {
            let limit = report.figures.limits.iter().find(|it| it.id == proof.at).expect("a limit");
            let shock = &limit.shock;
            prop_assert_eq!(proof.protected_by.is_some(), shock.state != ShockState::None, "{:?} {:?}", proof, shock);
            let sees = !matches!(proof.tester_button, Some(Button::Blind));
            match shock.state {
                ShockState::Works => prop_assert!(
                    proof.works && proof.without.is_none() && proof.protected_by == shock.by && sees,
                    "{proof:?} {shock:?}"
                ),
                ShockState::None => prop_assert!(!proof.works && proof.without.is_none(), "{proof:?} {shock:?}"),
                ShockState::Blind | ShockState::Doubtful if proof.works => {
                    prop_assert_eq!(&proof.without, &shock.joint);
                    prop_assert!(shock.joint.as_ref().is_some_and(|joint| report.refused(joint).is_some()), "{shock:?}");
                }
                ShockState::Blind | ShockState::Doubtful => {
                    prop_assert!(proof.without.is_none(), "{proof:?}");
                    let button = proof.tester_button;
                    prop_assert!(!matches!(button, Some(Button::Trips | Button::NoWayBack)), "{proof:?} {shock:?}");
                }
            }
            let Some(joint) = &proof.without else { continue };
            let kept_out = format!("“{joint}”");
            prop_assert!(steps.iter().any(|step| step.starts_with("Keep ") && step.contains(&kept_out)), "{steps:?}");
            let mut items = labels["items"].as_array().into_iter().flatten();
            let told = items.find(|item| text_of(item, "id") == proof.at.as_str() && item["shock"].is_string());
            prop_assert!(told.is_none_or(|item| text_of(item, "shock").contains(&kept_out)), "{told:?}");
        }
        // A GFCI that may be blind counts as none, in the same words on label, card and worksheet.
        for limit in report.figures.limits.iter().filter(|it| report.usable(&it.id)) {
            let mut rows = card["rows"].as_array().into_iter().flatten();
            let row = rows.find(|row| text_of(row, "id") == limit.id.as_str() && !row["long"].is_null());
            let Some(row) = row else { continue };
            let last = row["facts"].as_array().and_then(|facts| facts.last()?.as_str());
            let says = (last == Some("GFCI"), last.is_some_and(|last| last.starts_with("GFCI: NO")));
            let works = limit.shock.state == ShockState::Works;
            let nothing_in = report.verdict(&limit.id).is_none_or(|it| it.loads.is_empty());
            // A camper has its own.
            let own = limit.inside && last.is_none_or(|last| !last.starts_with("GFCI: NOT KNOWN"));
            let unsaid = limit.shock.state == ShockState::None && (nothing_in || own);
            prop_assert_eq!(says, (works, !works && !unsaid), "{:?}", row);
            let mut items = labels["items"].as_array().into_iter().flatten();
            let told = items.find(|item| text_of(item, "id") == limit.id.as_str() && item["shock"].is_string());
            prop_assert!(told.is_none_or(|item| text_of(item, "shock").starts_with("GFCI: YES") == works), "{told:?}");
        }
        let none = steps.iter().any(|step| step.starts_with("We know of no outlet"));
        let limits = report.figures.limits.iter();
        let works = tests.iter().any(|proof| proof.works)
            || limits.clone().any(|it| it.gfci && report.refused(&it.id).is_none());
        prop_assert_ne!(none, works, "{:?}", steps);
    }
}

/// With forty loads, the work is up before every mix is known. Each label and each row of the card is right about its
/// own loads all the same, and the card says that its lists are not complete. By hand: four of the loads at one outlet
/// draw 1300 W at most, which is less than 16 A.
#[test]
fn what_one_outlet_runs_is_known_where_not_every_mix_is() {
    let market = include_str!("../../../tests/plans/large/market.toml");
    let plan = crate::plan::read(market).expect("a plan");
    let report = crate::judge::judge(&plan);
    assert!(!report.figures.sharing.families_complete);
    let (mut all, mut some) = (0, 0);
    for (document, list) in [(Document::Labels, "items"), (Document::Card, "rows")] {
        let data = data_of(&plan, &report, document).expect("data");
        for item in data[list].as_array().into_iter().flatten() {
            if let Err(wrong) = says_what_may_says(&plan, &report, item) {
                panic!("{wrong}");
            }
            let verdict = Id::new(text_of(item, "id")).and_then(|id| report.verdict(&id));
            match verdict.filter(|it| it.loads.len() > 1).map(|it| it.one_at_a_time) {
                Some(true) => some += 1,
                Some(false) => all += 1,
                None => {}
            }
        }
        let told = data.to_string().contains("We did not work out every mix.");
        assert_eq!(told, document == Document::Card);
    }
    assert!(all > 0 && some > 0, "{all} {some}");
}

/// Returns what label and card say about a receptacle or part of the example plan with these edits.
fn said_of(edits: &[(&str, &str)], id: &str) -> [String; 2] {
    let plan = crate::rules::testing::plan(&crate::rules::testing::edited(edits));
    let report = crate::judge::judge(&plan);
    let of = |document, list: &str| {
        let data = data_of(&plan, &report, document).expect("data");
        let mut items = data[list].as_array().into_iter().flatten();
        let item = items.find(|item| text_of(item, "id") == id);
        item.map_or(String::new(), Json::to_string)
    };
    [of(Document::Labels, "items"), of(Document::Card, "rows")]
}

/// The outlet with the bonding plug says that the plug stays, on any ground: where everything may be plugged in, where
/// only a GFCI cord may, and where it takes the only socket. No other outlet says so, nor one without a plug.
#[test]
fn the_outlet_with_the_bonding_plug_says_so() {
    let floating = ("neutral = \"bonded\"", "neutral = \"floating\"");
    let plug = ("bonding_plug = false", "bonding_plug = true\nbonding_plug_in = \"front\"");
    let says = |edits: &[(&str, &str)], id: &str| -> [bool; 2] {
        said_of(edits, id).map(|text| text.to_lowercase().contains("bonding plug"))
    };
    let single = ("breaker = \"20 A\" # front", "sockets = 1\nbreaker = \"20 A\"");
    for ground in ["wet", "damp", "dry", "unknown"] {
        let ground = format!("ground = \"{ground}\"");
        let ground = ("ground = \"wet\"", ground.as_str());
        assert_eq!(says(&[floating, plug, ground], "front"), [true; 2], "{ground:?}");
        assert_eq!(says(&[floating, plug, ground, single], "front"), [true; 2]);
        assert_eq!(says(&[floating, plug, ground], "twist"), [false; 2]);
        assert_eq!(says(&[floating, ground], "front"), [false; 2]);
    }
    let [label, _] = said_of(&[floating, plug, single], "front");
    assert!(label.contains("ONLY bonding plug here"), "{label}");
}

/// Two generators that must run apart, or may have to, get a danger label beside the one for each by itself. With a kit
/// there is no extra label, except a warning if each bonds neutral to ground.
#[test]
fn a_pair_that_must_not_be_joined_has_a_label() {
    let levels = |kit: &str, neutral: &str| -> Vec<String> {
        let joined = format!("inverter = true\nparallel = {{ sets = 2, limit = \"30 A\", kit = {kit} }}");
        let floating = ("neutral = \"bonded\"", neutral);
        let edits = [floating, ("inverter = false", joined.as_str())];
        let plan = crate::rules::testing::plan(&crate::rules::testing::edited(&edits));
        let labels = data_of(&plan, &crate::judge::judge(&plan), Document::Labels).expect("labels");
        let items = labels["items"].as_array().into_iter().flatten();
        let of_pair = items.filter(|item| text_of(item, "id") == plan.generator.name);
        of_pair.map(|item| text_of(item, "level").to_owned()).collect()
    };
    let floating = "neutral = \"floating\"";
    assert_eq!(levels("false", floating), ["danger", ""]);
    assert_eq!(levels("\"unknown\"", floating), ["danger", ""]);
    assert_eq!(levels("true", floating), [""]);
    // Each bonds neutral to ground.
    assert_eq!(levels("true", "neutral = \"bonded\""), ["warning", ""]);
}

/// A label that admits one thing does not also say that nothing may be used. Tried on the outlet without a GFCI and a
/// cord in it: as they are, without the GFCIs of both its cords, and with a breaker too big for it.
#[test]
fn a_label_says_never_or_only_so() {
    let labels = |edits: &[(&str, &str)]| -> Vec<(String, Option<String>, bool)> {
        let text = edits.iter().fold(crate::plan::demo::MENDED.to_owned(), |text, (from, to)| {
            assert!(text.contains(from), "{from}");
            text.replace(from, to)
        });
        let plan = crate::plan::read(&text).expect("a plan");
        let report = crate::judge::judge(&plan);
        let labels = data_of(&plan, &report, Document::Labels).expect("labels");
        let of = |id: &&str| {
            let mut items = labels["items"].as_array().into_iter().flatten();
            let item = items.find(|item| text_of(item, "id") == *id).expect("a label");
            let stop = item["stop"].as_str().map(str::to_owned);
            (text_of(item, "kind").to_owned(), stop, !item["long"].is_null())
        };
        ["front", "tents"].iter().map(of).collect()
    };
    let stopped = |words: &str| ("refuse".to_owned(), Some(words.to_owned()), false);
    let carries = |kind: &str| (kind.to_owned(), None, true);
    assert_eq!(labels(&[]), [carries("receptacle"), carries("cord")]);
    let plain = ("coiled = false\ngfci = true", "coiled = false\ngfci = false");
    assert_eq!(labels(&[plain]), [stopped("ONLY A GFCI CORD HERE"), stopped("PLUG INTO A GFCI CORD")]);
    let big = ("breaker = \"20 A\"\ntrips_at", "breaker = \"60 A\"\ntrips_at");
    assert_eq!(labels(&[plain, big]), [stopped("DO NOT USE"), stopped("DO NOT USE")]);
}

/// Three loads at an outlet of two sockets, 1500 W and two of `lamps` watts, on 2400 W. The label says "one at a time"
/// only if no two may run together. Otherwise it names what may not.
#[test]
fn a_label_says_what_may_not_run_together() {
    let told = |lamps: [&str; 2]| -> String {
        let load = |id: &str, power: &str, hours: &str| {
            format!(
                "[[load]]\nid = \"{id}\"\nname = \"{id}\"\nkind = \"cooker\"\nrunning = \"{power}\"\n\
                 continuous = false\nhours = [\"{hours}\"]\nplug = \"5-15P\"\non = \"front\"\n"
            )
        };
        let head = "format = 1\n[site]\nground = \"dry\"\nsleepers_at = \"60 ft\"\naltitude = \"0 ft\"\n\
            air = \"59 °F\"\nco_alarm = true\nstands = \"open\"\n[generator]\nname = \"set\"\nrated = \"2400 W\"\n\
            peak = \"3000 W\"\nvoltage = \"120 V\"\nneutral = \"floating\"\n[[generator.outlet]]\nid = \"front\"\n\
            shape = \"5-20R\"\nsockets = 2\nbreaker = \"20 A\"\ngfci = true\n";
        let loads = load("pot", "1500 W", "08:00-08:10")
            + &load("iron", lamps[0], "09:00-09:10")
            + &load("lamp", lamps[1], "10:00-10:10");
        let plan = crate::plan::read(&(head.to_owned() + &loads)).expect("a plan");
        let report = crate::judge::judge(&plan);
        let labels = data_of(&plan, &report, Document::Labels).expect("labels");
        let mut items = labels["items"].as_array().into_iter().flatten();
        items.find(|item| text_of(item, "id") == "front").expect("a label").to_string()
    };
    for (lamps, words) in [
        (["50 W", "50 W"], "not all at once: pot, iron, lamp"),
        (["1400 W", "50 W"], "pot, iron, lamp; not together: pot + iron"),
        (["1400 W", "1300 W"], "one at a time: pot, iron, lamp"),
    ] {
        let label = told(lamps);
        assert!(label.contains(words), "{words}: {label}");
    }
}

/// A leg that the plan states is on the label, and a leg that was only assumed is marked unknown. Whatever trips too
/// late is named: the generator itself or a breaker.
#[test]
fn a_label_tells_no_guess_as_a_fact() {
    let label = |edits: &[(&str, &str)], id: &str| {
        let plan = crate::plan::read(&crate::rules::testing::edited(edits)).expect("a plan");
        let report = crate::judge::judge(&plan);
        let labels = data_of(&plan, &report, Document::Labels).expect("labels");
        let mut items = labels["items"].as_array().into_iter().flatten();
        items.find(|item| text_of(item, "id") == id).expect("a label").clone()
    };
    let dry = ("ground = \"wet\"", "ground = \"dry\"");
    for (gfci, told) in [("gfci = \"unknown\"", "GFCI: NOT KNOWN"), ("gfci = false", "GFCI: NO.")] {
        let gfci = ("gfci = true # front", gfci);
        let label = label(&[dry, gfci], "front");
        assert!(text_of(&label, "shock").starts_with(told), "{label}");
    }
    let two_legs = ("voltage = \"120 V\"", "voltage = \"120/240 V\"");
    let said = ("breaker = \"20 A\" # front", "breaker = \"20 A\"\nleg = \"B\"");
    assert_eq!(text_of(&label(&[two_legs, said], "front"), "leg"), "leg B");
    let unknown = label(&[two_legs], "front");
    assert_eq!(text_of(&unknown, "leg"), "leg not known");
    assert_eq!(text_of(&unknown, "leg_brief"), "leg ?");
    // What is plugged into it is on the same leg.
    assert_eq!(text_of(&label(&[two_legs, said], "left"), "leg"), "leg not known");

    let thin = [
        (
            "from = \"twist\"\nplug = \"L5-30P\" # long\nends = [\"L5-30R\"]",
            "from = \"front\"\nplug = \"5-15P\"\nends = [\"5-15R\"]",
        ),
        ("from = \"long\"\ninlet", "inlet"),
        ("wire = \"10 AWG\" # long", "wire = \"16 AWG\""),
        ("length = \"50 ft\"", "length = \"100 ft\""),
        ("on = \"left\" # kettle", "on = \"front\""),
        ("on = \"right\" # fan", "on = \"long\""),
    ];
    let small = [
        ("inverter = false", "inverter = true"),
        ("rated = \"3600 W\"", "rated = \"2000 W\""),
        ("peak = \"4500 W\"", "peak = \"2400 W\""),
    ];
    for (edits, acts) in [
        (thin.to_vec(), "the breaker trips only at 20"),
        ([&thin[..], &small].concat(), "the generator shuts off only above 16.6"),
    ] {
        let told = text_of(&label(&edits, "long"), "unwatched").replace('\u{a0}', " ");
        assert!(told.contains(acts), "{told}");
    }
}

/// A motor that the voltage dip keeps from starting is listed on the card. One on a short cord is not.
#[test]
fn a_card_warns_of_what_may_not_start() {
    let warned = |length: &str| {
        let plan = crate::plan::read(&crate::rules::testing::edited(&[
            ("length = \"50 ft\"", length),
            ("kind = \"heater\" # kettle", "kind = \"motor\""),
            ("power_factor = 1.0", "power_factor = 1.0\nstarting = \"4440 W\""),
        ]))
        .expect("a plan");
        let report = crate::judge::judge(&plan);
        let card = data_of(&plan, &report, Document::Card).expect("a card");
        card["warned"].as_array().expect("a list").len()
    };
    assert_eq!(warned("length = \"200 ft\""), 1);
    assert_eq!(warned("length = \"50 ft\""), 0);
}

/// A box that bonds neutral to ground is in an outlet with a GFCI, on damp ground with a floating neutral. Label and
/// card say what blinds the GFCI, and without it the outlet is tested like any other. A sound box is never named. A
/// bonding plug belongs there, so nobody is told to unplug it.
#[test]
fn a_blind_gfci_is_told_with_what_blinds_it() {
    let told = |bond: bool, plug: bool| {
        let text = format!(
            r#"
            format = 1
            [site]
            ground = "damp"
            sleepers_at = "60 ft"
            co_alarm = true
            stands = "open"
            [generator]
            name = "set"
            rated = "3000 W"
            voltage = "120 V"
            neutral = "floating"
            bonding_plug = {plug}
            [[generator.outlet]]
            id = "front"
            shape = "5-20R"
            sockets = 2
            breaker = "20 A"
            gfci = true
            [[box]]
            id = "one"
            from = "front"
            inlet = "5-15P"
            bond = {bond}
            listed = true
            [[box.outlet]]
            id = "one-1"
            shape = "5-15R"
            breaker = "15 A"
            gfci = false
            "#
        );
        let plan = crate::plan::read(&text).expect("a plan");
        let report = crate::judge::judge(&plan);
        let labels = data_of(&plan, &report, Document::Labels).expect("labels");
        let mut items = labels["items"].as_array().into_iter().flatten();
        let label = items.find(|item| text_of(item, "id") == "front");
        let label = text_of(label.expect("a label"), "shock").to_owned();
        let card = data_of(&plan, &report, Document::Card).expect("a card");
        (label, card["test"].to_string())
    };
    let (label, card) = told(true, false);
    assert_eq!(label, "GFCI: NO. With “one” plugged in, it stops no shock.");
    for words in ["Keep “one” unplugged", "GFCI at “front”", "Press TEST", "OPEN GROUND"] {
        assert!(card.contains(words), "{words}: {card}");
    }
    for words in ["We know of no outlet", "GFCI: YES"] {
        assert!(!card.contains(words), "{words}: {card}");
    }
    let (label, card) = told(false, false);
    assert_eq!(label, "GFCI: YES. Press TEST before use.");
    assert!(!card.contains("Keep “"), "{card}");
    let (label, card) = told(false, true);
    assert_eq!(label, "GFCI: NO. With the bonding plug in “front”, it stops no shock.");
    assert!(!card.contains("Keep “") && card.contains("We know of no outlet"), "{card}");
}

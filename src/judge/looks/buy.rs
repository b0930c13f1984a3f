//! What has to be on the package of what is not bought yet.
//!
//! What nobody knows of such a thing is not looked at but chosen: the least that clears as much as the best answer.

use super::{fields_of, reading, reading_in, thing};
use crate::judge::unknowns::{Standing, all_answered, answer_as, is_found_out};
use crate::plan::{Answer, DistributionBox, Id, Outlet, Plan};
use crate::quantity::{Amount, Current, Quantity};
use crate::report::{Look, Marking, Property, Report};
use crate::tables::shape::Receptacle;
use crate::value::Value;

/// What is sold of a property, the least demand first. What is not in it is asked for at its best.
const SOLD: [(&str, &[&str]); 4] = [
    ("wire", &["16 AWG", "14 AWG", "12 AWG"]),
    ("length", &["100 ft", "50 ft"]),
    ("rated", &["1000 W", "2000 W", "3000 W", "4000 W", "6000 W"]),
    ("peak", &["1200 W", "2400 W", "3600 W", "4800 W", "7200 W"]),
];

/// Whether this thing, as fields name it, is not bought yet.
pub(super) fn is_to_buy(plan: &Plan, thing: &str) -> bool {
    let bought = match thing.split_once('.') {
        None if thing == Id::SET => plan.generator.bought,
        Some(("cord", id)) => plan
            .cords
            .iter()
            .find(|it| it.id.as_str() == id)
            .and_then(|it| it.bought),
        Some(("box", id)) => holder(plan, id).and_then(|it| it.bought),
        _ => None,
    };
    bought == Some(false)
}

fn holder<'p>(plan: &'p Plan, id: &str) -> Option<&'p DistributionBox> {
    plan.boxes.iter().find(|it| it.id.as_str() == id)
}

/// Everything that is not bought yet, as fields name it.
fn all_to_buy(plan: &Plan) -> Vec<String> {
    let cords = plan.cords.iter().map(|it| format!("cord.{}", it.id));
    let boxes = plan.boxes.iter().map(|it| format!("box.{}", it.id));
    let all = std::iter::once(Id::SET.to_owned())
        .chain(cords)
        .chain(boxes);
    all.filter(|thing| is_to_buy(plan, thing)).collect()
}

/// Gives each look at a package what has to be on it, and each thing that is not bought yet such a look. Where things are
/// bought, a carbon monoxide alarm is among them if there is none. `standing` tells how much is left of a plan with
/// answers to these fields.
pub(super) fn complete(
    plan: &Plan,
    report: &Report,
    looks: &mut Vec<Look>,
    mut standing: impl FnMut(&Plan, &[String]) -> (Standing, bool),
) {
    let things = all_to_buy(plan);
    if things.is_empty() {
        return;
    }
    let look = |at: Option<Id>, fields: Vec<String>, buy: Vec<Property>| Look {
        at,
        read: Marking::Package,
        fields,
        dangers: 0,
        warnings: 0,
        buy,
    };
    for to_buy in &things {
        let at = thing(&format!("{to_buy}.bought"));
        let has_one = |it: &Look| it.read == Marking::Package && it.at == at;
        if !looks.iter().any(has_one) {
            let fields = report.figures.assumed.iter().map(|it| &it.field);
            let its = |field: &&String| {
                let (thing, read) = reading_in(plan, field);
                thing == to_buy && read == Marking::Package && is_found_out(plan, field)
            };
            looks.push(look(at, fields.filter(its).cloned().collect(), Vec::new()));
        }
    }
    if plan.site.co_alarm == Answer::Known(false) && plan.site.sleeps() {
        let alarm = Property {
            key: "co_alarm",
            value: Value::yes_no(true),
        };
        looks.push(look(None, vec!["site.co_alarm".to_owned()], vec![alarm]));
    }
    let fields = fields_of(looks);
    let mut best = all_answered(plan, &fields);
    let least = standing(&best, &fields);
    for field in &fields {
        let name = field.rsplit('.').next().unwrap_or_default();
        let sold = SOLD.iter().find(|(key, _)| *key == name);
        let Some((_, sold)) = sold.filter(|_| is_to_buy(plan, reading(field).0)) else {
            continue;
        };
        let enough = sold.iter().find_map(|text| {
            let mut other = best.clone();
            answer_as(&mut other, field, text)?;
            (standing(&other, &fields) == least).then_some(other)
        });
        best = enough.unwrap_or(best);
    }
    for to_buy in &things {
        let at = thing(&format!("{to_buy}.bought"));
        let its = |it: &&mut Look| it.read == Marking::Package && it.at == at;
        if let Some(look) = looks.iter_mut().find(its) {
            look.buy = properties(&best, to_buy);
        }
    }
}

/// What is to be on the package of a thing in a plan that has answers to all that was not known of it.
fn properties(best: &Plan, thing: &str) -> Vec<Property> {
    let mut all: Vec<(&'static str, Option<Value>)> = Vec::new();
    let name = |text: String| Some(Value::Name(text));
    let yes = |answer: Answer<bool>| (answer == Answer::Known(true)).then(|| Value::yes_no(true));
    match thing.split_once('.') {
        Some(("cord", id)) => {
            let cord = best.cords.iter().find(|it| it.id.as_str() == id);
            all.extend(cord.into_iter().flat_map(|cord| {
                [
                    ("plug", name(cord.plug.to_string())),
                    (
                        "ends",
                        Some(kinds(cord.ends.iter().map(|it| (*it, Answer::Missing)))),
                    ),
                    ("outdoor", yes(cord.outdoor)),
                    (
                        "wire",
                        cord.wire.known().and_then(|it| name(it.to_string())),
                    ),
                    (
                        "conductors",
                        cord.conductors.known().map(|it| Value::Count((*it).into())),
                    ),
                    ("length", amount(cord.length)),
                ]
            }));
        }
        Some(("box", id)) => {
            all.extend(holder(best, id).into_iter().flat_map(|holder| {
                [
                    ("inlet", name(holder.inlet.to_string())),
                    ("outlet", Some(of_outlets(&holder.outlets))),
                    ("gfci", protected(&holder.outlets)),
                    ("listed", yes(holder.listed)),
                ]
            }));
        }
        _ => {
            let set = &best.generator;
            all.extend([
                ("rated", amount(set.rated)),
                ("peak", amount(set.peak)),
                ("outlet", Some(of_outlets(&set.outlets))),
                ("gfci", protected(&set.outlets)),
                ("inverter", yes(set.inverter)),
            ]);
        }
    }
    let known = all.into_iter();
    known
        .filter_map(|(key, value)| Some(Property { key, value: value? }))
        .collect()
}

fn amount<Q: Quantity>(answer: Answer<Q>) -> Option<Value> {
    answer.known().map(|it| Amount::of(*it).into())
}

/// Shapes with their breakers, each once with how many there are.
fn kinds(outlets: impl Iterator<Item = (Receptacle, Answer<Current>)>) -> Value {
    let mut kinds: Vec<(String, usize)> = Vec::new();
    for (shape, breaker) in outlets {
        let breaker = breaker.known().map(|amps| format!(" {} A", amps.amount()));
        let text = format!("{shape}{}", breaker.unwrap_or_default());
        match kinds.iter_mut().find(|(other, _)| *other == text) {
            Some((_, count)) => *count += 1,
            None => kinds.push((text, 1)),
        }
    }
    let text = kinds.into_iter().map(|(text, count)| match count {
        1 => text,
        count => format!("{count} × {text}"),
    });
    Value::Name(text.collect::<Vec<_>>().join(", "))
}

fn of_outlets(outlets: &[Outlet]) -> Value {
    kinds(outlets.iter().map(|it| (it.shape, it.breaker)))
}

/// Whether all have a GFCI.
fn protected(outlets: &[Outlet]) -> Option<Value> {
    let all = outlets.iter().all(|it| it.gfci == Answer::Known(true));
    all.then(|| Value::yes_no(true))
}

#[cfg(test)]
mod tests {
    use crate::plan::{Answer, Plan};
    use crate::report::{Marking, Report};
    use crate::rules::testing::{edited, plan, report};

    /// What has to be on the package of this cord.
    fn wanted(edits: &[(&str, &str)]) -> (usize, Vec<(&'static str, String)>) {
        let report: Report = report(edits);
        let look = report
            .figures
            .looks
            .iter()
            .find(|it| it.read == Marking::Package);
        let look = look.expect("a package");
        let text = |it: &crate::report::Property| {
            let words = crate::words::Words::english();
            (it.key, words.value(&it.value))
        };
        (look.dangers, look.buy.iter().map(text).collect())
    }

    const NOT_BOUGHT: [(&str, &str); 4] = [
        (
            "wire = \"10 AWG\" # long",
            "wire = \"unknown\"\nbought = false",
        ),
        ("conductors = 3 # long", "conductors = \"unknown\""),
        ("length = \"50 ft\" # long", "length = \"unknown\""),
        ("outdoor = true # long", "outdoor = \"unknown\""),
    ];

    /// All of it in one line, and no more than it takes: on a breaker of 30 A a cord of 10 AWG, on one of 20 A 16 AWG.
    #[test]
    fn what_is_not_known_of_a_cord_to_buy_is_chosen() {
        let all = |edits: &[(&str, &str)]| {
            let (dangers, buy) = wanted(edits);
            assert!(dangers > 0);
            let buy: Vec<String> = buy
                .iter()
                .map(|(key, text)| format!("{key} {text}"))
                .collect();
            buy.join(", ")
        };
        assert_eq!(
            all(&NOT_BOUGHT),
            "plug L5-30P, ends L5-30R, outdoor yes, wire 10 AWG, conductors 3, length 100\u{a0}ft"
        );
        let smaller = ("breaker = \"30 A\" # twist", "breaker = \"20 A\"");
        let found = all(&[&NOT_BOUGHT[..], &[smaller]].concat());
        assert!(found.contains("wire 16 AWG"), "{found}");
    }

    /// One of which all is known is on the list as well, and an alarm where there is none.
    #[test]
    fn all_that_is_not_bought_yet_is_on_the_list() {
        let bought = (
            "wire = \"10 AWG\" # long",
            "wire = \"10 AWG\"\nbought = false",
        );
        let (dangers, buy) = wanted(&[bought]);
        assert_eq!((dangers, buy.len()), (0, 6));
        let no_alarm = ("co_alarm = true", "co_alarm = false");
        let keys = |edits: &[(&str, &str)]| -> Vec<&'static str> {
            let looks = report(edits).figures.looks;
            looks
                .iter()
                .flat_map(|it| &it.buy)
                .map(|it| it.key)
                .collect()
        };
        assert!(keys(&[bought, no_alarm]).contains(&"co_alarm"));
        assert_eq!(keys(&[no_alarm]), [""; 0]);
    }

    /// Whoever buys just that has nothing left to look at there.
    #[test]
    fn what_is_bought_by_the_list_clears_what_was_told() {
        let before: Plan = plan(&edited(&NOT_BOUGHT));
        let now = crate::judge::build(&before);
        let mut after = before;
        let cord = &mut after.cords[0];
        cord.wire = crate::quantity::Wire::parse("10 AWG").map_or(Answer::Unknown, Answer::Known);
        cord.conductors = Answer::Known(3);
        cord.length = Answer::Known(crate::quantity::Length::from_millimetres(30_480));
        cord.outdoor = Answer::Known(true);
        cord.bought = None;
        let then = crate::judge::build(&after);
        assert!(now.worst() < then.worst(), "{:?}", then.findings);
        assert_eq!(then.figures.looks, []);
    }
}

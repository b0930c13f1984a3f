//! A plan opened in the interview: the answers that make it.

use toml::{Table, Value};

use super::draft::{Draft, Said};
use super::parts;
use super::steps::{COMMON, MOST_GEAR, MOST_LOADS, MOST_OUTLETS, MOST_OUTS};
use crate::plan::{self, Choice, Leg, LoadKind, Plan, System, Uses};

/// The answers that make this plan; those it leaves open count as not known. `None` if it has
/// more parts than the interview asks for.
#[must_use]
pub fn draft_of(plan: &Plan, name: &str) -> Option<Draft> {
    // From its text, so that the user's units are kept as the file writes them.
    let text: Table = toml::from_str(&plan::write(plan)).ok()?;
    let mut open = Open {
        draft: Draft::new(name),
    };
    let empty = Table::new();
    let table = |key: &str| text.get(key).and_then(Value::as_table).unwrap_or(&empty);
    open.generator(table("generator"))?;
    open.loads(list(&text, "load"))?;
    open.site(table("site"));
    open.gear(&list(&text, "cord"), &list(&text, "box"))?;
    open.places(&text);
    Some(open.draft)
}

fn list<'a>(table: &'a Table, key: &str) -> Vec<&'a Table> {
    let array = table.get(key).and_then(Value::as_array);
    array
        .into_iter()
        .flatten()
        .filter_map(Value::as_table)
        .collect()
}

/// A value as the interview keeps it.
fn said(value: Option<&Value>) -> Said {
    match value {
        None => Said::Unknown,
        Some(Value::String(text)) if text == "unknown" => Said::Unknown,
        Some(Value::Boolean(yes)) => Said::is(if *yes { "yes" } else { "no" }),
        Some(value) => Said::is(text_of(value)),
    }
}

/// A choice as the interview keeps it.
fn picked<C: Choice>(value: Option<&Value>) -> Said {
    match said(value) {
        Said::Is(word) => C::named(&word).map_or(Said::Unknown, |choice| Said::Is(choice.pick())),
        other => other,
    }
}

fn text_of(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Array(all) => all.iter().map(text_of).collect::<Vec<_>>().join(", "),
        other => other.to_string(),
    }
}

struct Open {
    draft: Draft,
}

impl Open {
    fn put(&mut self, key: impl Into<String>, said: Said) {
        self.draft.answers.insert(key.into(), said);
    }

    fn is(&mut self, key: impl Into<String>, text: impl Into<String>) {
        self.put(key, Said::Is(text.into()));
    }

    /// What is there; what is not stays unasked.
    fn if_there(&mut self, key: impl Into<String>, value: Option<&Value>) {
        if value.is_some() {
            self.put(key, said(value));
        }
    }

    fn generator(&mut self, set: &Table) -> Option<()> {
        self.if_there("generator.name", set.get("name"));
        for field in ["rated", "peak", "inverter"] {
            self.put(format!("generator.{field}"), said(set.get(field)));
        }
        // A file says which of the two its one figure is.
        if said(set.get("peak")) == Said::Unknown && said(set.get("rated")) != Said::Unknown {
            self.is("generator.figure", "running");
        }
        self.put("generator.voltage", picked::<System>(set.get("voltage")));
        let plug = match set.get("bonding_plug") {
            // Who names its place says that there is one.
            None => set.contains_key("bonding_plug_in"),
            Some(said) => said.as_bool() == Some(true),
        };
        let neutral = match said(set.get("neutral")) {
            Said::Is(text) if text == "floating" && plug => Said::is("plug"),
            other => other,
        };
        self.put("generator.neutral", neutral);
        if let Some(joined) = set.get("parallel").and_then(Value::as_table) {
            self.is("generator.sets", text_of(joined.get("sets")?));
            self.put("generator.kit", said(joined.get("kit")));
            self.put("generator.limit", said(joined.get("limit")));
        }
        self.fuel(set);
        let outlets = list(set, "outlet");
        if plug {
            let within = set.get("bonding_plug_in").map(text_of);
            let at = outlets
                .iter()
                .position(|outlet| outlet.get("id").map(text_of) == within);
            let at = at.filter(|_| within.is_some());
            let said = at.map_or(Said::Unknown, |at| Said::Is(format!("outlet {}", at + 1)));
            self.put("outlets.bonding", said);
        }
        self.outlets(&outlets)
    }

    fn fuel(&mut self, set: &Table) {
        let fields = ["fuel", "rated_on", "tank", "runtime", "noise"];
        if fields.iter().all(|field| !set.contains_key(*field)) {
            return;
        }
        self.is("fuel.more", "yes");
        for field in ["fuel", "rated_on", "tank"] {
            self.put(format!("fuel.{field}"), said(set.get(field)));
        }
        let pair = |table: &Table, keys: [&str; 2], between: &str| {
            let texts: Vec<String> = keys
                .iter()
                .filter_map(|key| table.get(*key).map(text_of))
                .collect();
            texts.join(between)
        };
        let times: Vec<String> = list(set, "runtime")
            .into_iter()
            .map(|time| pair(time, ["load", "lasts"], " "))
            .collect();
        let times = (!times.is_empty()).then(|| Said::Is(times.join(", ")));
        self.put("fuel.runtime", times.unwrap_or(Said::Unknown));
        let noise = set.get("noise").and_then(Value::as_table).map(|noise| {
            let mut text = pair(noise, ["level", "at"], ", ");
            if let Said::Is(load) = said(noise.get("load")) {
                text.push_str(", ");
                text.push_str(&load);
            }
            Said::Is(text)
        });
        self.put("fuel.noise", noise.unwrap_or(Said::Unknown));
    }

    fn outlets(&mut self, outlets: &[&Table]) -> Option<()> {
        let count = numbered(outlets.len(), MOST_OUTLETS)?;
        let gfci: Vec<Said> = outlets
            .iter()
            .map(|outlet| said(outlet.get("gfci")))
            .collect();
        let all = |wanted: &Said| gfci.iter().all(|said| said == wanted);
        let protected = if all(&Said::Unknown) {
            Said::Unknown
        } else if all(&Said::is("yes")) {
            Said::is("all")
        } else if all(&Said::is("no")) {
            Said::is("none")
        } else {
            Said::is("some")
        };
        let some = protected == Said::is("some");
        self.put("outlets.gfci", protected);
        let any = |key: &str| outlets.iter().any(|outlet| outlet.contains_key(key));
        let odd = match (any("shares"), any("trips_at")) {
            (false, false) => "no",
            (true, false) => "share",
            (false, true) => "early",
            (true, true) => "both",
        };
        self.is("outlets.odd", odd);
        for (n, outlet) in (1..).zip(outlets) {
            let key = |field: &str| format!("outlet.{n}.{field}");
            self.is(key("face"), text_of(outlet.get("shape")?));
            self.is(key("name"), text_of(outlet.get("id")?));
            self.put(key("breaker"), said(outlet.get("breaker")));
            self.if_there(key("sockets"), outlet.get("sockets"));
            if let leg @ Said::Is(_) = picked::<Leg>(outlet.get("leg")) {
                self.put(key("leg"), leg);
            }
            if some {
                self.put(key("gfci"), said(outlet.get("gfci")));
            }
            let trips = outlet.get("trips_at").map(text_of);
            self.put(key("trips"), trips.map_or(Said::None, Said::Is));
            let shares = outlet.get("shares").map(text_of);
            let other = shares.and_then(|id| {
                let at = outlets
                    .iter()
                    .position(|other| other.get("id").is_some_and(|other| text_of(other) == id))?;
                Some(format!("outlet {}", at + 1))
            });
            self.is(key("shares"), other.unwrap_or_else(|| "own".into()));
        }
        if count < MOST_OUTLETS {
            self.is(format!("outlet.{}.face", count + 1), "done");
        }
        Some(())
    }

    fn site(&mut self, site: &Table) {
        self.if_there("site.name", site.get("name"));
        for (field, key) in [
            ("ground", "ground"),
            ("sleepers", "sleepers_at"),
            ("alarm", "co_alarm"),
            ("building", "feeds_building"),
            ("stands", "stands"),
            ("altitude", "altitude"),
            ("air", "air"),
        ] {
            self.put(format!("site.{field}"), said(site.get(key)));
        }
        let quiet = site.get("quiet_hours");
        let none = quiet.and_then(Value::as_array).is_some_and(Vec::is_empty);
        self.put("site.quiet", if none { Said::None } else { said(quiet) });
        if said(site.get("people_sleep")) == Said::is("no") {
            self.is("site.alarm", "nobody");
        }
    }

    fn loads(&mut self, loads: Vec<&Table>) -> Option<()> {
        let count = numbered(loads.len(), MOST_LOADS)?;
        for (n, load) in (1..).zip(loads) {
            let key = |field: &str| format!("load.{n}.{field}");
            let id = text_of(load.get("id")?);
            self.is(key("what"), "own");
            self.is(
                key("name"),
                load.get("name").map_or_else(|| id.clone(), text_of),
            );
            self.is(key("id"), id);
            self.put(key("kind"), said(Some(load.get("kind")?)));
            let draw = match (load.get("motor"), load.get("current")) {
                (Some(Value::Table(motor)), _) => {
                    let code = motor.get("code").map(text_of);
                    let code = code.map_or_else(String::new, |code| format!(" code {code}"));
                    Said::Is(format!("{} hp{code}", text_of(motor.get("hp")?)))
                }
                (_, Some(current)) => said(Some(current)),
                _ => said(load.get("running")),
            };
            self.put(key("draw"), draw);
            let count = load.get("count").map_or_else(|| "1".into(), text_of);
            self.is(key("count"), count);
            let starting = match load.get("starting_current") {
                Some(amps) => said(Some(amps)),
                None => said(load.get("starting")),
            };
            self.put(key("starting"), starting);
            self.put(key("voltage"), picked::<Uses>(load.get("voltage")));
            for (field, name) in [
                ("factor", "power_factor"),
                ("continuous", "continuous"),
                ("plug", "plug"),
            ] {
                self.put(key(field), said(load.get(name)));
            }
            self.is(
                key("wanted"),
                load.get("wanted").map_or_else(|| "must".into(), text_of),
            );
            self.if_there(key("hours"), load.get("hours"));
            let backup = match said(load.get("backup")) {
                Said::Is(yes) if yes == "yes" => Said::is("battery"),
                Said::Is(_) => Said::is("none"),
                other => other,
            };
            if load.contains_key("backup")
                || LoadKind::named(&text_of(load.get("kind")?)) == Some(LoadKind::Medical)
            {
                self.put(key("backup"), backup);
            }
        }
        if count < MOST_LOADS {
            self.is(format!("load.{}.what", count + 1), "done");
        }
        Some(())
    }

    fn gear(&mut self, cords: &[&Table], boxes: &[&Table]) -> Option<()> {
        let count = numbered(cords.len() + boxes.len(), MOST_GEAR)?;
        for (n, cord) in (1_u8..).zip(cords) {
            let key = |field: &str| format!("gear.{n}.{field}");
            let plug = text_of(cord.get("plug")?);
            let ends = text_of(cord.get("ends")?);
            let close = ends.replace(' ', "");
            let common = COMMON.iter().find(|(word, with, at_end)| {
                !word.starts_with("box") && *with == plug && *at_end == close
            });
            self.is(key("what"), common.map_or("cord", |(word, ..)| word));
            self.is(key("plug"), plug);
            self.is(key("ends"), ends);
            self.is(key("name"), text_of(cord.get("id")?));
            self.put(key("jacket"), jacket(cord));
            for field in ["length", "outdoor", "coiled", "gfci"] {
                self.put(key(field), said(cord.get(field)));
            }
        }
        for (n, holder) in (1_u8..).skip(cords.len()).zip(boxes) {
            let key = |field: &str| format!("gear.{n}.{field}");
            let inlet = text_of(holder.get("inlet")?);
            let common = COMMON
                .iter()
                .find(|(word, with, _)| word.starts_with("box") && *with == inlet);
            self.is(key("what"), common.map_or("box", |(word, ..)| word));
            self.is(key("plug"), inlet);
            self.is(key("name"), text_of(holder.get("id")?));
            self.put(key("listed"), said(holder.get("listed")));
            self.put(key("bond"), said(holder.get("bond")));
            self.outs(n, &list(holder, "outlet"))?;
        }
        if count < MOST_GEAR {
            self.is(format!("gear.{}.what", count + 1), "done");
        }
        Some(())
    }

    fn outs(&mut self, n: u8, outlets: &[&Table]) -> Option<()> {
        let alike = |one: &&Table, other: &&Table| {
            ["shape", "breaker", "gfci", "wire"]
                .iter()
                .all(|field| one.get(*field) == other.get(*field))
                && leg(one).is_some() == leg(other).is_some()
        };
        let kinds: Vec<&[&Table]> = outlets.chunk_by(alike).collect();
        let count = numbered(kinds.len(), MOST_OUTS)?;
        for (m, kind) in (1..).zip(kinds) {
            let key = |field: &str| format!("gear.{n}.out.{m}.{field}");
            let first = kind.first()?;
            self.is(key("face"), text_of(first.get("shape")?));
            self.is(key("count"), kind.len().to_string());
            let breaker = first.get("breaker");
            self.put(
                key("breaker"),
                breaker.map_or(Said::None, |some| said(Some(some))),
            );
            self.put(key("gfci"), said(first.get("gfci")));
            self.if_there(key("wire"), first.get("wire"));
            let legs: Vec<String> = kind.iter().filter_map(|out| leg(out)).collect();
            let legs = (!legs.is_empty()).then(|| Said::Is(legs.join(" ")));
            self.put(key("leg"), legs.unwrap_or(Said::Unknown));
            let ids: Vec<String> = kind
                .iter()
                .filter_map(|out| out.get("id").map(text_of))
                .collect();
            self.is(key("ids"), ids.join(","));
            if kind.iter().any(|out| out.contains_key("sockets")) {
                let each = kind.iter().map(|out| out.get("sockets").map(text_of));
                let each: Vec<String> = each.map(Option::unwrap_or_default).collect();
                self.is(key("sockets"), each.join(","));
            }
        }
        if count < MOST_OUTS {
            self.is(format!("gear.{n}.out.{}.face", count + 1), "done");
        }
        Some(())
    }

    /// What is plugged into what, when all places are known.
    fn places(&mut self, text: &Table) {
        let ids = parts::Ids::new(&self.draft);
        let places = parts::places(&self.draft);
        let token = |id: &str| {
            let found = places.iter().find(|place| ids.of(**place) == id);
            found.map(|place| place.token())
        };
        let gear = list(text, "cord").into_iter().chain(list(text, "box"));
        for (n, part) in (1_u8..).zip(gear) {
            let from = part.get("from").map(text_of);
            let from = from.and_then(|id| token(&id));
            self.is(
                format!("gear.{n}.from"),
                from.unwrap_or_else(|| "none".into()),
            );
        }
        for (n, load) in (1_u8..).zip(list(text, "load")) {
            let on = load.get("on").map(text_of);
            let on = on.and_then(|id| token(&id));
            self.is(format!("load.{n}.on"), on.unwrap_or_else(|| "any".into()));
        }
    }
}

/// The leg of an outlet, where the file says it.
fn leg(outlet: &Table) -> Option<String> {
    match said(outlet.get("leg")) {
        Said::Is(leg) => Some(leg),
        _ => None,
    }
}

/// How many there are, if the interview has numbers for them.
fn numbered(count: usize, most: u8) -> Option<u8> {
    u8::try_from(count).ok().filter(|count| *count <= most)
}

/// What would be printed on a cord.
fn jacket(cord: &Table) -> Said {
    let Said::Is(wire) = said(cord.get("wire")) else {
        return Said::Unknown;
    };
    let conductors = match said(cord.get("conductors")) {
        Said::Is(count) => Some(count),
        _ => None,
    };
    Said::Is(match (wire.strip_suffix(" AWG"), conductors) {
        (Some(size), Some(count)) => format!("{size}/{count}"),
        (None, Some(count)) => {
            let area = wire.split(' ').next().unwrap_or(&wire);
            format!("{count}G{area}")
        }
        (_, None) => wire,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::interview::{Input, Machine, merge, plan_of};
    use crate::plan::{Answer, arbitrary, demo, read};
    use proptest::prelude::*;

    fn plain(draft: &Draft) -> Plan {
        plan_of(draft, &|key| key.to_owned())
    }

    /// Opens a plan, which must lead straight to the review page.
    fn opened(text: &str) -> Machine {
        let draft = draft_of(&read(text).unwrap(), "t").unwrap();
        let machine = Machine::new(draft);
        assert_eq!(machine.question().key, "review");
        machine
    }

    fn answer(machine: &mut Machine, lines: &[&str]) {
        for line in lines {
            machine.answer(Input::Answer((*line).into())).unwrap();
        }
    }

    #[test]
    fn the_demo_plans_come_back_whole() {
        for text in [demo::WEEKEND, demo::MENDED] {
            let plan = read(text).unwrap();
            let machine = opened(text);
            let mut back = plain(machine.draft());
            // The one thing the interview knows less of: what nobody said is not known.
            let (known, said) = (plan::write(&plan), plan::write(&back));
            for line in known.lines() {
                assert!(
                    said.lines().any(|other| other == line),
                    "{line} not in\n{said}"
                );
            }
            assert_eq!(merge(text, &back.clone(), &back).as_deref(), Some(text));
            back.site.name = "Elsewhere".into();
            assert_ne!(merge(text, &plan, &back).as_deref(), Some(text));
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(100))]

        /// Whatever the plan: unchanged answers leave the file alone, and one changed answer
        /// changes that alone.
        #[test]
        fn any_plan_comes_back(plan in arbitrary::plan()) {
            let text = plan::write(&plan);
            if let Some(mut draft) = draft_of(&plan, "t") {
                let before = plain(&draft);
                let same = merge(&text, &before, &before);
                prop_assert_eq!(same.as_deref(), Some(text.as_str()));
                draft.answers.insert("site.name".into(), Said::is("Elsewhere"));
                let merged = merge(&text, &before, &plain(&draft)).unwrap();
                let mut wanted = plan;
                wanted.site.name = "Elsewhere".into();
                prop_assert_eq!(read(&merged), Ok(wanted), "{}", merged);
            }
        }
    }

    /// The same plan with every table between braces and every list of parts between brackets.
    fn inline(text: &str) -> String {
        let mut document: toml_edit::DocumentMut = text.parse().unwrap();
        for (_, item) in document.iter_mut() {
            let value = std::mem::take(item).into_value().unwrap();
            *item = toml_edit::Item::Value(value);
        }
        document.to_string()
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(100))]

        /// However a file is laid out, what no question asks for stays in it.
        #[test]
        fn what_nobody_is_asked_stays_in_any_layout(plan in arbitrary::plan()) {
            let text = inline(&plan::write(&plan));
            prop_assert!(!text.contains("[["), "{}", text);
            if let Some(draft) = draft_of(&plan, "t") {
                let before = plain(&draft);
                let mut after = before.clone();
                let mut wanted = plan.clone();
                after.site.name = "Elsewhere".into();
                wanted.site.name = "Elsewhere".into();
                for (after, wanted) in after.loads.iter_mut().zip(&mut wanted.loads) {
                    after.name.push('!');
                    wanted.name.push('!');
                }
                let boxes = after.boxes.iter_mut().zip(&mut wanted.boxes);
                for (after, wanted) in boxes.flat_map(|(a, w)| a.outlets.iter_mut().zip(&mut w.outlets)) {
                    after.gfci = Answer::Known(after.gfci != Answer::Known(true));
                    wanted.gfci = after.gfci;
                }
                let merged = merge(&text, &before, &after).unwrap();
                prop_assert_eq!(read(&merged), Ok(wanted), "{}", merged);
            }
        }
    }

    #[test]
    fn a_change_leaves_every_other_line_as_it_was() {
        let text = demo::WEEKEND;
        let mut machine = opened(text);
        let before = plain(machine.draft());
        answer(&mut machine, &["site", "site.sleepers", "80 ft"]);
        let merged = merge(text, &before, &plain(machine.draft())).unwrap();
        let changed: Vec<(&str, &str)> = text
            .lines()
            .zip(merged.lines())
            .filter(|(old, new)| old != new)
            .collect();
        assert_eq!(text.lines().count(), merged.lines().count());
        let [(old, new)] = changed[..] else {
            panic!("{changed:?}")
        };
        assert_eq!(old.replace("\"12 ft\"", "\"80 ft\""), new);
    }

    #[test]
    fn comments_and_order_of_a_hand_edited_file_survive() {
        let text = "\
# Ours, since the flood.
format = 1
[generator] # from uncle
  peak = \"3300 W\"
  rated=\"2800 W\" # on the plate
voltage = \"120 V\"
[[generator.outlet]]
# the one in front
id = \"front\"
shape = \"5-20R\"
breaker = \"20 A\" # looked twice
gfci = false
[site]
ground = \"dry\" # for now
[[load]]
id = \"kettle\" # the old one
kind = \"heater\"
running = \"1500 W\"
plug = \"5-15P\"
# nothing more
";
        let mut machine = opened(text);
        let before = plain(machine.draft());
        answer(
            &mut machine,
            &[
                "site",
                "site.ground",
                "wet",
                "back",
                "outlet.1",
                "outlet.1.name",
                "face",
                "back",
                "add",
                "add load",
                "toaster",
                "done",
            ],
        );
        let merged = merge(text, &before, &plain(machine.draft())).unwrap();
        insta::assert_snapshot!(merged);
        let plan = read(&merged).unwrap();
        assert_eq!(plan.loads.len(), 2);
    }

    /// Nobody sleeps here: so it opens, and an alarm takes it back.
    #[test]
    fn where_nobody_sleeps() {
        let text = demo::MENDED.replacen("co_alarm = true", "people_sleep = false", 1);
        let mut machine = opened(&text);
        assert_eq!(machine.draft().text("site.alarm"), Some("nobody"));
        let before = plain(machine.draft());
        assert_eq!(before.site.people_sleep, Answer::Known(false));
        assert_eq!(before.site.co_alarm, Answer::Missing);
        answer(&mut machine, &["site", "site.alarm", "yes"]);
        let merged = merge(&text, &before, &plain(machine.draft())).unwrap();
        let site = read(&merged).unwrap().site;
        assert_eq!(
            (site.people_sleep, site.co_alarm),
            (Answer::Missing, Answer::Known(true))
        );
    }

    /// "I don't know" stays one: from the draft into the file, and back to the same question.
    #[test]
    fn what_nobody_knows_of_a_load_is_no_motor() {
        let text = "\
format = 1
[site]
ground = \"dry\"
[generator]
rated = \"2000 W\"
voltage = \"120 V\"
[[generator.outlet]]
id = \"front\"
shape = \"5-20R\"
breaker = \"20 A\"
[[load]]
id = \"thing\"
kind = \"unknown\"
running = \"60 W\"
plug = \"5-15P\"
";
        let machine = opened(text);
        let draft = machine.draft();
        assert_eq!(draft.get("load.1.kind"), Some(&Said::Unknown));
        let plan = plain(draft);
        assert_eq!(plan.loads[0].kind, Answer::Unknown);
        assert_eq!(read(&crate::plan::write(&plan)).expect("it reads"), plan);
        // What was taken instead is told where the question is answered so.
        let taken = machine.taken("load.1.kind").expect("something is taken");
        assert_eq!(
            (taken.field.as_str(), taken.why),
            ("load.thing.kind", "load-kind")
        );
    }
}

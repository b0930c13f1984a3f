//! Reopening a plan in the interview: finding the answers that make it.

use super::draft::{Draft, Said};
use super::machine::Machine;
use super::parts::{self, Place};
use super::steps::{
    COMMON, FUEL, GEAR, GENERATOR, GENERATOR_AFTER, LOAD, MOST_GEAR, MOST_LOADS, MOST_OUTLETS, MOST_OUTS, OUT, OUTLET,
    OUTLET_AFTER, SITE, Step,
};
use crate::plan::row::Part;
use crate::plan::{Answer, Choice, Cord, DistributionBox, Generator, Id, Load, LoadKind, Neutral, Outlet, Plan, Site};
use crate::quantity::Wire;

/// Returns the answers that make this plan. What the plan leaves open counts as "I don't know".
///
/// `None` if the plan has more parts than the interview can ask about.
#[must_use]
pub fn draft_of(plan: &Plan, name: &str) -> Option<Draft> {
    let mut open = Open { draft: Draft::new(name), silent: Vec::new() };
    open.generator(&plan.generator)?;
    open.loads(&plan.loads)?;
    open.site(&plan.site);
    open.gear(&plan.cords, &plan.boxes, &plan.loads)?;
    open.places(plan);
    open.forget_silent();
    Some(open.draft)
}

/// Converts a plan field to the answer to its question. `None` if the question needs no answer.
fn said(step: &Step, answer: Answer<String>) -> Option<Said> {
    match answer {
        Answer::Known(text) if !text.is_empty() => Some(Said::Is(text)),
        Answer::Known(_) if step.none => Some(Said::None),
        _ if step.unknown => Some(Said::Unknown),
        _ if step.none => Some(Said::None),
        _ => None,
    }
}

struct Open {
    draft: Draft,
    /// The keys of the questions whose fields the plan leaves out.
    silent: Vec<String>,
}

impl Open {
    fn put(&mut self, key: impl Into<String>, said: Said) {
        self.draft.answers.insert(key.into(), said);
    }

    fn is(&mut self, key: impl Into<String>, text: impl Into<String>) {
        self.put(key, Said::Is(text.into()));
    }

    /// Adds a part's fields as the answers to the questions named after them.
    fn fields<P: Part>(&mut self, part: &P, prefix: &str, steps: &[Step]) {
        for step in steps {
            let Some(row) = P::row(step.field) else {
                continue;
            };
            let key = format!("{prefix}.{}", step.field);
            let told = row.text(part);
            if told == Answer::Missing {
                self.silent.push(key.clone());
            }
            if let Some(said) = said(step, told) {
                self.put(key, said);
            }
        }
    }

    /// Removes "I don't know" where the plan leaves a field out and only the review page asks for it.
    ///
    /// A plan that leaves out a cord's GFCI says that it has none, which is different from not knowing.
    fn forget_silent(&mut self) {
        for key in Machine::new(self.draft.clone()).waiting() {
            if self.silent.contains(&key) && self.draft.get(&key) == Some(&Said::Unknown) {
                self.draft.answers.remove(&key);
            }
        }
    }

    fn generator(&mut self, set: &Generator) -> Option<()> {
        self.fields(set, "generator", GENERATOR);
        self.fields(set, "generator", GENERATOR_AFTER);
        // A plan file says which of the two its single figure is.
        if set.rated.is_known() && !set.peak.is_known() {
            self.is("generator.figure", "running");
        }
        // A plan that names the plug's outlet has a plug.
        let plug = match set.bonding_plug {
            Answer::Missing => set.bonding_plug_in.is_some(),
            said => said == Answer::Known(true),
        };
        if plug && set.neutral == Answer::Known(Neutral::Floating) {
            self.is("generator.neutral", "plug");
        }
        match &set.parallel {
            Some(joined) => self.fields(joined, "generator", GENERATOR_AFTER),
            None => self.is("generator.sets", "1"),
        }
        let says = |step: &Step| Generator::row(step.field).is_some_and(|row| row.write(set).is_some());
        if FUEL.iter().any(says) {
            self.is("fuel.more", "yes");
            self.fields(set, "fuel", FUEL);
        }
        if plug {
            let at = outlet_of(&set.outlets, set.bonding_plug_in.as_ref());
            self.put("outlets.bonding", at.map_or(Said::Unknown, Said::Is));
        }
        self.outlets(&set.outlets)
    }

    fn outlets(&mut self, outlets: &[Outlet]) -> Option<()> {
        let count = numbered(outlets.len(), MOST_OUTLETS)?;
        if outlets.is_empty() {
            self.put("outlets.faces", Said::Unknown);
        }
        let all = |known: Option<bool>| outlets.iter().all(|it| it.gfci.known() == known.as_ref());
        let some = if all(None) {
            self.put("outlets.gfci", Said::Unknown);
            false
        } else {
            let told = match (all(Some(true)), all(Some(false))) {
                (true, _) => "all",
                (_, true) => "none",
                _ => "some",
            };
            self.is("outlets.gfci", told);
            told == "some"
        };
        let share = outlets.iter().any(|outlet| outlet.shares.is_some());
        let early = outlets.iter().any(|outlet| outlet.trips_at.is_some());
        let odd = match (share, early) {
            (false, false) => "no",
            (true, false) => "share",
            (false, true) => "early",
            (true, true) => "both",
        };
        self.is("outlets.odd", odd);
        for (n, outlet) in (1..).zip(outlets) {
            let prefix = format!("outlet.{n}");
            self.fields(outlet, &prefix, OUTLET);
            self.fields(outlet, &prefix, OUTLET_AFTER);
            if !some {
                self.draft.answers.remove(&format!("{prefix}.gfci"));
            }
            self.is(format!("{prefix}.face"), outlet.shape.to_string());
            self.is(format!("{prefix}.name"), outlet.id.to_string());
            let other = outlet_of(outlets, outlet.shares.as_ref());
            self.is(format!("{prefix}.shares"), other.unwrap_or_else(|| "own".into()));
        }
        if count < MOST_OUTLETS {
            self.is(format!("outlet.{}.face", count + 1), "done");
        }
        Some(())
    }

    fn site(&mut self, site: &Site) {
        self.fields(site, "site", SITE);
        let alarm = match (site.people_sleep, site.co_alarm) {
            (Answer::Known(false), _) => Said::is("nobody"),
            (_, Answer::Known(yes)) => Said::is(if yes { "yes" } else { "no" }),
            _ => Said::Unknown,
        };
        self.put("site.alarm", alarm);
    }

    fn loads(&mut self, loads: &[Load]) -> Option<()> {
        let count = numbered(loads.len(), MOST_LOADS)?;
        for (n, load) in (1..).zip(loads) {
            let key = |field: &str| format!("load.{n}.{field}");
            self.fields(load, &format!("load.{n}"), LOAD);
            self.is(key("what"), "own");
            self.is(key("id"), load.id.to_string());
            let amps = Load::row("starting_current").map(|row| row.text(load));
            if let Some(Answer::Known(amps)) = amps {
                self.is(key("starting"), amps);
            }
            match load.backup {
                Answer::Known(yes) => self.is(key("backup"), if yes { "battery" } else { "none" }),
                Answer::Missing if load.kind != Answer::Known(LoadKind::Medical) => {
                    self.draft.answers.remove(&key("backup"));
                }
                Answer::Missing | Answer::Unknown => {}
            }
        }
        if count < MOST_LOADS {
            self.is(format!("load.{}.what", count + 1), "done");
        }
        Some(())
    }

    fn gear(&mut self, cords: &[Cord], boxes: &[DistributionBox], loads: &[Load]) -> Option<()> {
        let count = numbered(cords.len() + boxes.len(), MOST_GEAR)?;
        for (n, cord) in (1_u8..).zip(cords) {
            let key = |field: &str| format!("gear.{n}.{field}");
            self.fields(cord, &format!("gear.{n}"), GEAR);
            self.put(key("jacket"), jacket(cord));
            let plug = cord.plug.known().map_or_else(String::new, ToString::to_string);
            let ends: Vec<String> = cord.ends().iter().map(ToString::to_string).collect();
            let ends = ends.join(",");
            let common = COMMON.iter().find(|(word, with, at_end)| {
                !word.starts_with("box") && !with.is_empty() && *with == plug && *at_end == ends
            });
            if cord.usable_plug().is_none() {
                if !cord.plug.is_known() && !cord.ends.is_known() {
                    self.draft.answers.remove(&key("ends"));
                }
                if cord.wire == Answer::Missing {
                    self.draft.answers.remove(&key("jacket"));
                }
            }
            self.is(key("what"), common.map_or("cord", |(word, ..)| word));
            self.is(key("name"), cord.id.to_string());
        }
        for (n, holder) in (1_u8..).skip(cords.len()).zip(boxes) {
            let key = |field: &str| format!("gear.{n}.{field}");
            self.fields(holder, &format!("gear.{n}"), GEAR);
            let inlet = holder.inlet.known().map(ToString::to_string);
            let common =
                COMMON.iter().find(|(word, with, _)| word.starts_with("box") && Some(*with) == inlet.as_deref());
            let what = common.map_or("box", |(word, ..)| word);
            if holder.is_camper() {
                self.is(key("what"), "camper");
                if holder.inlet.is_known() || loads.iter().any(|load| load.on.as_ref() == Some(&holder.id)) {
                    self.is(key("inside"), "done");
                }
            } else {
                self.is(key("what"), what);
            }
            self.put(key("plug"), inlet.map_or(Said::Unknown, Said::Is));
            self.is(key("name"), holder.id.to_string());
            if !holder.outlets_unknown() {
                self.outs(n, &holder.outlets)?;
            } else if holder.inlet.is_known() {
                self.put(key("outs"), Said::Unknown);
            }
        }
        if count < MOST_GEAR {
            self.is(format!("gear.{}.what", count + 1), "done");
        }
        Some(())
    }

    fn outs(&mut self, n: u8, outlets: &[Outlet]) -> Option<()> {
        let alike = |one: &Outlet, other: &Outlet| {
            (one.shape, one.breaker, one.gfci, one.wire, one.hot)
                == (other.shape, other.breaker, other.gfci, other.wire, other.hot)
                && one.leg.is_known() == other.leg.is_known()
        };
        let kinds: Vec<&[Outlet]> = outlets.chunk_by(alike).collect();
        let count = numbered(kinds.len(), MOST_OUTS)?;
        for (m, kind) in (1..).zip(kinds) {
            let key = |field: &str| format!("gear.{n}.out.{m}.{field}");
            let first = kind.first()?;
            self.fields(first, &format!("gear.{n}.out.{m}"), OUT);
            if first.breaker == Answer::Missing {
                self.put(key("breaker"), Said::None);
            }
            self.is(key("face"), first.shape.to_string());
            self.is(key("count"), kind.len().to_string());
            let each = |text: &dyn Fn(&Outlet) -> String, between: &str| {
                let all: Vec<String> = kind.iter().map(text).collect();
                all.join(between)
            };
            if first.leg.is_known() {
                let leg = |out: &Outlet| out.leg.known().map_or_else(String::new, |leg| leg.pick());
                self.is(key("leg"), each(&leg, " "));
            }
            self.is(key("ids"), each(&|out| out.id.to_string(), ","));
            if kind.iter().any(|out| out.sockets.is_some()) {
                let sockets = |out: &Outlet| out.sockets.map_or_else(String::new, |n| n.to_string());
                let each = each(&sockets, ",");
                // Use a single number if it is the same for all.
                let first = first.sockets.filter(|first| kind.iter().all(|out| out.sockets == Some(*first)));
                self.is(key("sockets"), first.map_or(each, |count| count.to_string()));
            }
        }
        if count < MOST_OUTS {
            self.is(format!("gear.{n}.out.{}.face", count + 1), "done");
        }
        Some(())
    }

    /// Adds what is plugged into what. This has to come after all places are known.
    fn places(&mut self, plan: &Plan) {
        let ids = parts::Ids::new(&self.draft);
        let places = parts::places(&self.draft);
        let token = |to: Option<&Id>, otherwise: &str| {
            let found = to.and_then(|to| places.iter().find(|place| ids.of(**place) == to.as_str()));
            found.map_or_else(|| otherwise.to_owned(), |place| place.token())
        };
        let cords = plan.cords.iter().map(|cord| (cord.usable_plug(), cord.from.as_ref()));
        let boxes = plan.boxes.iter().map(|part| (part.usable_inlet(), part.from.as_ref()));
        for (n, (usable, from)) in (1_u8..).zip(cords.chain(boxes)) {
            // A part that fits nowhere or cannot be used is not asked about. The question comes once there is a place.
            if from.is_some() || usable.is_some() && parts::fits_somewhere(&self.draft, n) {
                self.is(format!("gear.{n}.from"), token(from, "none"));
            }
        }
        for (n, load) in (1_u8..).zip(&plan.loads) {
            self.is(format!("load.{n}.on"), token(load.on.as_ref(), "any"));
        }
    }
}

/// Returns how answers refer to the generator outlet with this id.
fn outlet_of(outlets: &[Outlet], id: Option<&Id>) -> Option<String> {
    let at = outlets.iter().position(|outlet| Some(&outlet.id) == id)?;
    Some(Place::Outlet(u8::try_from(at + 1).ok()?).token())
}

/// Returns the count, or `None` if it is above what the interview has numbers for.
fn numbered(count: usize, most: u8) -> Option<u8> {
    u8::try_from(count).ok().filter(|count| *count <= most)
}

/// Returns what would be printed on a cord.
fn jacket(cord: &Cord) -> Said {
    let Answer::Known(wire) = cord.wire else {
        return Said::Unknown;
    };
    Said::Is(match (wire, cord.conductors) {
        (Wire::Awg(size), Answer::Known(count)) => format!("{size}/{count}"),
        (Wire::Area(_), Answer::Known(count)) => {
            let area = wire.to_string();
            format!("{count}G{}", area.trim_end_matches(" mm²"))
        }
        (wire, _) => wire.to_string(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::interview::{Input, Machine, merge, plan_of};
    use crate::judge;
    use crate::plan::{self, Answer, arbitrary, demo, read};
    use crate::report::Signal;
    use crate::tables::shape::{Circuit, Plug};
    use proptest::prelude::*;
    use std::collections::{BTreeMap, BTreeSet};

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
            // The only loss: what the plan leaves out comes back as unknown.
            let (known, said) = (plan::write(&plan), plan::write(&back));
            for line in known.lines() {
                assert!(said.lines().any(|other| other == line), "{line} not in\n{said}");
            }
            assert_eq!(merge(text, &back.clone(), &back).as_deref(), Some(text));
            back.site.name = "Elsewhere".into();
            assert_ne!(merge(text, &plan, &back).as_deref(), Some(text));
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(100))]

        /// For any plan, unchanged answers leave its file unchanged, and one changed answer changes nothing else.
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

    /// Rewrites a plan with inline tables and arrays only.
    fn inline(text: &str) -> String {
        let mut document: toml_edit::DocumentMut = text.parse().unwrap();
        for (_, item) in document.iter_mut() {
            let value = std::mem::take(item).into_value().unwrap();
            *item = toml_edit::Item::Value(value);
        }
        document.to_string()
    }

    /// Collects the fields in which the reopened plan differs.
    ///
    /// Missing fields come back as unknown, so they are first made unknown in `plan`.
    fn lost<P: Part>(plan: &mut P, back: &P, lost: &mut BTreeSet<String>) {
        let name = std::any::type_name::<P>().rsplit("::").next().unwrap_or_default();
        for row in P::ROWS {
            if (row.text(plan), row.text(back)) == (Answer::Missing, Answer::Unknown) {
                row.take(plan, Answer::Unknown);
            }
            if row.text(plan) != row.text(back) {
                lost.insert(format!("{name}.{}", row.keys()[0]));
            }
        }
    }

    fn outlets(plan: &mut Plan) -> impl Iterator<Item = &mut Outlet> {
        let boxes = plan.boxes.iter_mut().flat_map(|part| &mut part.outlets);
        plan.generator.outlets.iter_mut().chain(boxes)
    }

    /// Reduces a plan to what the interview can ask about. Everything else stays in its file.
    fn askable(mut plan: Plan) -> Plan {
        // Nobody is asked where a part of unknown shape is plugged in.
        let cords = plan.cords.iter_mut().map(|it| (it.usable_plug(), &mut it.from));
        let boxes = plan.boxes.iter_mut().map(|it| (it.usable_inlet(), &mut it.from));
        for (_, from) in cords.chain(boxes).filter(|(usable, _)| usable.is_none()) {
            *from = None;
        }
        // Nor is anything plugged into it.
        let unknown: Vec<Id> = plan.of_unknown_shape().map(|it| it.part.clone()).collect();
        let past = plan.gear().filter_map(|it| it.from.cloned());
        let past: Vec<Id> = past.filter(|at| plan.part_of(at).is_some_and(|it| unknown.contains(it))).collect();
        for (_, from) in plan.gear_mut() {
            from.take_if(|at| past.contains(at));
        }
        // A 240 V receptacle settles the voltage, whatever the plan says.
        let shapes = plan.generator.outlets.iter().map(|outlet| outlet.shape);
        if shapes.map(|it| it.0.circuit()).any(|it| it != Circuit::OneLeg) {
            plan.generator.voltage = Answer::Known(plan::System::V120_240);
        }
        let set = &mut plan.generator;
        // A bonding plug is asked about only if the neutral is floating.
        if set.neutral != Answer::Known(Neutral::Floating) {
            set.bonding_plug = Answer::Missing;
            set.bonding_plug_in = None;
        } else if set.bonding_plug != Answer::Known(true) {
            set.bonding_plug = Answer::Known(false);
            set.bonding_plug_in = None;
        }
        // Its place has to be an outlet that accepts the plug.
        if let Some(at) = &set.bonding_plug_in {
            let outlet = set.outlets.iter().find(|outlet| outlet.id == *at);
            if !outlet.is_some_and(|outlet| outlet.shape.takes(Plug::BONDING)) {
                set.bonding_plug_in = None;
            }
        }
        // Where nobody sleeps, the alarm is not asked about. Otherwise, whether people sleep there is not asked.
        if plan.site.people_sleep == Answer::Known(false) {
            plan.site.co_alarm = Answer::Missing;
        } else {
            plan.site.people_sleep = Answer::Missing;
        }
        for cord in &mut plan.cords {
            // The print on a cord begins with the wire size. Without it there is no count of conductors.
            if !cord.wire.is_known() {
                cord.conductors = Answer::Missing;
            }
        }
        for outlet in plan.boxes.iter_mut().flat_map(|part| &mut part.outlets) {
            outlet.shares = None;
            outlet.trips_at = None;
        }
        let campers = plan.boxes.iter().filter(|it| it.is_camper());
        let campers: BTreeMap<Option<Id>, _> = campers.map(|it| (Some(it.id.clone()), it.inlet)).collect();
        for load in &mut plan.loads {
            load.now = None;
            // An unknown starting draw is stored once, as a power.
            if load.starting_current == Answer::Unknown {
                load.starting_current = Answer::Missing;
                load.starting = Answer::Unknown;
            }
            let plug = match campers.get(&load.on) {
                Some(inlet) => inlet.known(),
                None => load.plug.known(),
            };
            if plug.is_none_or(|plug| plug.0.circuit() != Circuit::TwoLegsNeutral) {
                load.voltage = Answer::Missing;
            }
        }
        plan
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(200))]

        /// A reopened plan has the same value in every field, and the same findings.
        #[test]
        fn what_is_opened_again_says_the_same(plan in arbitrary::camp()) {
            let mut plan = askable(plan);
            if let Some(draft) = draft_of(&plan, "t") {
                let back = plain(&draft);
                let mut different = BTreeSet::new();
                for (part, back) in plan.boxes.iter().zip(&back.boxes) {
                    if part.joins().known() != back.joins().known() {
                        different.insert("joins".to_owned());
                    }
                }
                lost(&mut plan.site, &back.site, &mut different);
                lost(&mut plan.generator, &back.generator, &mut different);
                for (outlet, back) in outlets(&mut plan).zip(outlets(&mut back.clone())) {
                    lost(outlet, back, &mut different);
                }
                for (cord, back) in plan.cords.iter_mut().zip(&back.cords) {
                    lost(cord, back, &mut different);
                }
                for (part, back) in plan.boxes.iter_mut().zip(&back.boxes) {
                    lost(part, back, &mut different);
                }
                for (load, back) in plan.loads.iter_mut().zip(&back.loads) {
                    lost(load, back, &mut different);
                }
                prop_assert_eq!(different, BTreeSet::new());
                let findings = |plan: &Plan| -> Vec<(&str, Signal, Vec<Id>)> {
                    let found = judge::judge(plan).findings.into_iter();
                    found.map(|it| (it.code, it.signal, it.about)).collect()
                };
                prop_assert_eq!(findings(&plan), findings(&back));
            }
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(100))]

        /// In any layout of a file, what no question asks for stays in it.
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
        answer(&mut machine, &["site", "site.sleepers_at", "80 ft"]);
        let merged = merge(text, &before, &plain(machine.draft())).unwrap();
        let changed: Vec<(&str, &str)> = text.lines().zip(merged.lines()).filter(|(old, new)| old != new).collect();
        assert_eq!(text.lines().count(), merged.lines().count());
        let [(old, new)] = changed[..] else { panic!("{changed:?}") };
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
            ],
        );
        let merged = merge(text, &before, &plain(machine.draft())).unwrap();
        insta::assert_snapshot!(merged);
        let plan = read(&merged).unwrap();
        assert_eq!(plan.loads.len(), 2);
    }

    /// "Nobody sleeps here" is reopened as the answer about the alarm, and changing it to an alarm removes it from the
    /// file.
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
        assert_eq!((site.people_sleep, site.co_alarm), (Answer::Missing, Answer::Known(true)));
    }

    /// If a hot cord is replaced by one that is not, its mark goes from the file.
    #[test]
    fn a_hot_cord_goes_from_the_file() {
        let (id, hot) = ("[[cord]]\n", "hot = true\n");
        let text = demo::MENDED.replacen(id, &format!("{id}{hot}"), 1);
        let mut machine = opened(&text);
        let before = plain(machine.draft());
        assert_eq!(before.cords[0].hot, Some(true));
        let mut other = before.clone();
        other.cords[0].hot = None;
        let other = plain(&draft_of(&other, "t").unwrap());
        let merged = merge(&text, &before, &other).unwrap();
        assert_eq!(merged, demo::MENDED);
        // The user can also answer that it was not hot.
        answer(&mut machine, &["gear.1", "gear.1.hot", "no"]);
        let plan = read(&merge(&text, &before, &plain(machine.draft())).unwrap()).unwrap();
        assert_eq!(plan.cords[0].hot, Some(false));
    }

    /// "I don't know" survives from the draft into the file, and back to the same question.
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
        // The assumption made instead is shown at that question.
        let taken = machine.taken("load.1.kind");
        let taken: Vec<_> = taken.iter().map(|it| (it.field.as_str(), it.why)).collect();
        assert_eq!(taken, [("load.thing.kind", "load-kind")]);
    }
}

//! The answer to "may I switch this on?", in words.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use fluent_bundle::FluentValue;

use super::screen::{load_name, paragraph};
use super::{Show, Words};
use crate::judge::ask::{Answer, Over, Passed, Step};
use crate::plan::Id;
use crate::quantity::Current;
use crate::report::Report;

/// The most exceeded limits shown. The rest are exceeded by less.
const SHOWN: usize = 3;

/// Whether the answer is no only because several loads are wanted at once. Each may run without the others.
fn together(report: &Report, answer: &Answer) -> bool {
    let off = &report.figures.sharing.off;
    answer.running.len() == answer.stays_on.len()
        && answer.wanted.len() > 1
        && answer.dangers.is_empty()
        && answer.no_place.is_empty()
        && !answer.over.is_empty()
        && answer.wanted.iter().all(|id| report.figures.may_run(id) && !off.contains(id))
}

impl Words {
    /// Formats the answer, wrapped to `width` columns.
    pub fn may(&self, report: &Report, answer: &Answer, width: usize) -> String {
        let mut out = String::new();
        let together = together(report, answer);
        let wanted = if answer.may || together {
            self.set_quoted(report, &answer.wanted)
        } else {
            self.set_any(report, &answer.wanted)
        };
        let running = self.set_quoted(report, &answer.running);
        let key = match (answer.may, answer.running.is_empty()) {
            (true, true) => "may-yes",
            (true, false) => "may-yes-while",
            (false, _) if together => "may-no-together",
            (false, true) => "may-no",
            (false, false) => "may-no-while",
        };
        if answer.wanted.is_empty() {
            paragraph(&mut out, "", &self.text("may-nothing"), width);
            return out;
        }
        let text = self.with(
            key,
            [("wanted", wanted.into()), ("running", running.into()), ("count", answer.running.len().into())],
        );
        paragraph(&mut out, "", &text, width);
        if !answer.stays_on.is_empty() {
            let known = |id: &Id| report.figures.load(id).is_some_and(|load| load.kind.is_known());
            let known = if answer.stays_on.iter().all(known) { "yes" } else { "no" };
            let life = self.set_quoted(report, &answer.stays_on);
            let text = self.with("may-stays-on", [("life", life.into()), ("known", known.into())]);
            paragraph(&mut out, "  ", &text, width);
        }
        self.reasons(&mut out, report, answer, width);
        let warnings = answer.warnings.iter().filter(|_| answer.may);
        for warned in warnings {
            let trouble = report.figures.troubles.get(warned.trouble);
            let Some(trouble) = trouble else { continue };
            if let Some(text) = self.trouble(report, trouble) {
                let named = [
                    ("title", text.title.into()),
                    ("code", warned.code.into()),
                    ("signal", trouble.signal.name().into()),
                ];
                paragraph(&mut out, "  ", &self.with("may-but", named), width);
                paragraph(&mut out, "  ", &text.fix, width);
            }
        }
        // After a no, an order would read like a way around it.
        if answer.may && !answer.order.is_empty() {
            self.order_and_readings(&mut out, report, answer, width);
        }
        let _ = writeln!(out);
        paragraph(&mut out, "", &self.text("may-as-placed"), width);
        paragraph(&mut out, "", &self.text("check-defer"), width);
        out
    }

    fn reasons(&self, out: &mut String, report: &Report, answer: &Answer, width: usize) {
        let mut say = |text: String| paragraph(out, "  ", &text, width);
        if !answer.dangers.is_empty() {
            let mut codes = answer.dangers.clone();
            codes.dedup();
            say(self.with("may-dangers", [("count", answer.dangers.len().into()), ("codes", self.list(&codes).into())]));
        }
        let mut no_place: BTreeMap<(&str, &[Id]), Vec<Id>> = BTreeMap::new();
        for lost in &report.figures.sharing.unplaced {
            if answer.no_place.contains(&lost.load) {
                no_place.entry((lost.reason, &lost.free)).or_default().push(lost.load.clone());
            }
        }
        for ((reason, free), loads) in no_place {
            let names = free.iter().map(Id::as_str);
            say(self.with(
                match (free, reason) {
                    ([], "refused") => "may-refused",
                    ([], _) => "may-no-place",
                    _ => "may-wrong-place",
                },
                [
                    ("names", self.set_any(report, &loads).into()),
                    ("reason", self.text(&format!("print-ws-{reason}")).into()),
                    ("free", self.quoted(names).into()),
                ],
            ));
        }
        if !answer.taken.is_empty() {
            say(self.with(
                "may-taken",
                [("names", self.set_quoted(report, &answer.taken).into()), ("count", answer.taken.len().into())],
            ));
        }
        for over in answer.over.iter().take(SHOWN) {
            let alone = answer.wanted.len() + answer.running.len() == 1;
            say(self.over(report, over, alone));
        }
        for assumption in &answer.rests_on {
            say(self.assumed_together(std::slice::from_ref(assumption), &report.figures.loads));
        }
        let lives = report.lives();
        let life = |ids: &[Id], wanted: bool| -> Vec<Id> {
            let is = |id: &&Id| lives.contains(id) == wanted;
            ids.iter().filter(is).cloned().collect()
        };
        let (depends, others) = (life(&answer.wanted, true), life(&answer.running, false));
        if !answer.over.is_empty() && !depends.is_empty() && !others.is_empty() {
            say(self.with(
                "may-life",
                [
                    ("life", self.set_quoted(report, &depends).into()),
                    ("others", self.set_quoted(report, &others).into()),
                ],
            ));
        }
        let fits = answer.over.is_empty() && answer.no_place.is_empty();
        if fits && !answer.dangers.is_empty() {
            say(self.text("may-but-amps"));
        }
        let starting_only = answer.over.iter().all(|over| over.passed == Passed::Starting);
        if !answer.over.is_empty() && starting_only && !answer.order.is_empty() {
            say(self.text("may-order-only"));
        }
    }

    fn over(&self, report: &Report, over: &Over, alone: bool) -> String {
        let at =
            if over.set { self.text("may-the-set") } else { self.with("may-part", [("id", over.at.as_str().into())]) };
        let by = over.by.as_ref().map_or("", |by| load_name(report, by));
        let by = self.with("id-quoted", [("id", by.into())]);
        let one_leg = |amps: Current| FluentValue::from(self.amps_of("amps-one-leg", amps, over.legs, Show::Demand));
        // A reader who subtracts one of these numbers from the other must get the third.
        let (asks, limit) = (over.asks.milliamps(), over.limit.milliamps());
        let told = asks.div_euclid(100) + i64::from(asks.rem_euclid(100) > 0) - limit.div_euclid(100);
        let told = Current::from_milliamps(100 * told.max(1));
        self.with(
            match over.passed {
                Passed::Short => "may-over-short",
                Passed::Hours => "may-over-hours",
                Passed::Starting if alone => "may-over-starting-alone",
                Passed::Starting => "may-over-starting",
            },
            [
                ("at", at.into()),
                ("by", by.into()),
                ("asks", one_leg(over.asks)),
                ("limit", self.amps_on(over.limit, over.legs, Show::Capacity).into()),
                ("over", self.amount(told, Show::Demand).into()),
                ("of", if over.set { "set" } else { "part" }.into()),
            ],
        )
    }

    /// Formats the highest current through the generator at the moment of a step.
    fn peak(&self, step: &Step, two_legs: bool) -> String {
        if let [_, _] = step.legs {
            return self.amps_of("amps-both-at-most", step.peak_amps, step.legs, Show::Demand);
        }
        let amps = self.amount(step.peak_amps, Show::Demand);
        let key = if two_legs { "amps-one-leg" } else { "amps-all" };
        self.with(key, [("amps", amps.into())])
    }

    fn order_and_readings(&self, out: &mut String, report: &Report, answer: &Answer, width: usize) {
        let _ = writeln!(out, "\n{}", self.text("may-order"));
        let two_legs = report.figures.limits.iter().any(|limit| limit.legs.len() > 1);
        for (number, step) in answer.order.iter().enumerate() {
            let text = self.with(
                "may-order-step",
                [
                    ("name", load_name(report, &step.load).into()),
                    ("at", step.at.as_str().into()),
                    ("amps", self.peak(step, two_legs).into()),
                ],
            );
            paragraph(out, &format!("{:>3}. ", number + 1), &text, width);
        }
        if answer.any_order && answer.order.len() > 1 {
            paragraph(out, "  ", &self.text("may-any-order"), width);
        }
        let _ = writeln!(out, "\n{}", self.text("may-meter"));
        for reading in &answer.breakers {
            let text = self.with(
                "may-meter-breaker",
                [
                    ("breaker", reading.breaker.as_str().into()),
                    ("amps", self.amps_of("amps-both-at-most", reading.amps, reading.legs, Show::Demand).into()),
                ],
            );
            paragraph(out, "  ", &text, width);
        }
        for reading in &answer.receptacles {
            let limit = report.figures.limit(&reading.receptacle);
            // A plug-in meter fits no other receptacle.
            let Some(limit) = limit.filter(|limit| limit.shape.0.household()) else {
                continue;
            };
            let nominal = self.amount(limit.volts, Show::Exact);
            let text = self.with(
                "may-meter-receptacle",
                [
                    ("receptacle", reading.receptacle.as_str().into()),
                    ("volts", self.amount(reading.volts, Show::Capacity).into()),
                    ("nominal", nominal.into()),
                ],
            );
            paragraph(out, "  ", &text, width);
        }
        paragraph(out, "  ", &self.text("may-meter-if"), width);
    }
}

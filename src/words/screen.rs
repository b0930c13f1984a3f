//! Formats a report for a terminal: troubles, limits, and what to do next.

use std::fmt::Write as _;

use anstyle::{AnsiColor, Style};
use fluent_bundle::FluentValue;

use super::{FindingText, Show, Words};
use crate::plan::Id;
use crate::quantity::{Current, Power};
use crate::report::{Admits, Finding, Limit, Look, Marking, Next, OnlyIf, Report, SetBy, Signal, Trouble, Verdict};

/// Color is only an aid, since the signal word is always shown.
fn style(signal: Signal) -> Style {
    match signal {
        Signal::Danger => AnsiColor::White.on(AnsiColor::Red).bold(),
        Signal::Warning => AnsiColor::Yellow.on_default().bold(),
        Signal::Caution => AnsiColor::Yellow.on_default(),
        Signal::Notice => AnsiColor::Blue.on_default(),
    }
}

/// Options for wrapping lines. They break only at spaces, so ids, shapes and clauses stay whole.
#[must_use]
pub fn wrapping<'a>(width: usize) -> textwrap::Options<'a> {
    textwrap::Options::new(width)
        .word_separator(textwrap::WordSeparator::AsciiSpace)
        .word_splitter(textwrap::WordSplitter::NoHyphenation)
}

/// Returns the rule that forbids using a receptacle and the upstream part at fault, which is `None` if it is the
/// receptacle itself. Returns `None` if it may be used.
fn refusal(report: &Report, limit: &Limit) -> Option<(Option<Id>, &'static str)> {
    let why = report.refused(&limit.id)?;
    Some(((why.at != limit.id).then(|| why.at.clone()), why.code))
}

impl Words {
    /// Formats the troubles, worst first, then what was assumed, wrapped to `width` columns.
    pub fn troubles(&self, report: &Report, width: usize) -> String {
        let mut out = String::new();
        if report.findings.is_empty() {
            paragraph(&mut out, "", &self.text("check-none"), width);
        }
        for trouble in &report.figures.troubles {
            self.one_trouble(&mut out, report, trouble, width);
        }
        let last = report.figures.troubles.last();
        if last.is_some_and(|trouble| trouble.signal == Signal::Notice) {
            out.push('\n');
        }
        let figures = &report.figures;
        let looks: Vec<&Look> = figures.looks.iter().collect();
        self.look_list(&mut out, report, &looks, width);
        let looked_at = |field: &String| looks.iter().any(|look| look.fields.contains(field));
        let rest = self.assumptions(report, |it| figures.matters.contains(&it.field) && !looked_at(&it.field), true);
        if !rest.is_empty() {
            paragraph(&mut out, "", &self.text("check-assumed"), width);
            for (_, assumption) in &rest {
                paragraph(&mut out, "  - ", assumption, width);
            }
        }
        if !rest.is_empty() || !looks.is_empty() {
            // Once for all of them.
            paragraph(&mut out, "", &self.text("trouble-look"), width);
            out.push('\n');
        }
        out
    }

    /// Formats what to look at and what to buy, a paragraph each.
    fn look_list(&self, out: &mut String, report: &Report, looks: &[&Look], width: usize) {
        let (buy, look): (Vec<&Look>, Vec<&Look>) = looks.iter().partition(|look| look.read == Marking::Package);
        for (heading, looks) in [("check-looks", look), ("check-buy", buy)] {
            if !looks.is_empty() {
                paragraph(out, "", &self.text(heading), width);
            }
            for look in looks {
                paragraph(out, "  - ", &self.look_line(report, look), width);
            }
        }
    }

    /// Formats what to look at before anything is bought or changed.
    pub(super) fn look_first(&self, out: &mut String, report: &Report, width: usize) {
        let looks = report.figures.looks.iter().filter(|look| look.read != Marking::Package);
        let looks: Vec<String> = looks.map(|look| self.look_line(report, look)).collect();
        if looks.is_empty() {
            return;
        }
        paragraph(out, "", &self.text("mend-look"), width);
        for look in &looks {
            paragraph(out, "  - ", look, width);
        }
        out.push('\n');
    }

    /// Formats what to do next as a list of at most three, or says that no rule found anything above a caution.
    pub fn next_list(&self, report: &Report, width: usize) -> String {
        let mut out = String::new();
        let next = self.next(report);
        let calm = report.worst().is_none_or(|worst| worst > Signal::Warning);
        let heading = if calm { "next-none" } else { "check-next" };
        paragraph(&mut out, "", &self.text(heading), width);
        for (at, line) in next.iter().enumerate() {
            paragraph(&mut out, &format!("  {}. ", at + 1), line, width);
        }
        out
    }

    /// Formats what to do next, what else to look at, and each trouble with its remedy, worst first. A trouble that
    /// rests on an unknown gets only its title, since the thing to do about it is to look.
    pub fn brief(&self, report: &Report, width: usize) -> String {
        let mut out = self.next_list(report, width) + "\n";
        let figures = &report.figures;
        let told = |at| figures.next.contains(&Next::Look(at));
        let looks = figures.looks.iter().enumerate();
        let looks: Vec<&Look> = looks.filter(|(at, _)| !told(*at)).map(|it| it.1).collect();
        if !looks.is_empty() {
            self.look_list(&mut out, report, &looks, width);
            out.push('\n');
        }
        // A trouble that no look can settle is shown with its remedy.
        let rests = |trouble: &Trouble| {
            let lead = report.findings_of(trouble).next();
            let looked_at = |field: &String| figures.looks.iter().any(|it| it.fields.contains(field));
            lead.is_some_and(|lead| lead.rests_on.iter().any(|it| looked_at(&it.field)))
        };
        let troubles = &figures.troubles;
        if !troubles.is_empty() {
            paragraph(&mut out, "", &self.text("check-found"), width);
            if troubles.iter().any(rests) {
                paragraph(&mut out, "", &self.text("check-guessed"), width);
            }
            for (at, trouble) in troubles.iter().enumerate() {
                let told = rests(trouble) || figures.next.contains(&Next::Trouble(at));
                self.short_trouble(&mut out, report, trouble, !told, width);
            }
            out.push('\n');
        }
        out
    }

    /// Returns a trouble's signal and rule, its words, and its most severe finding.
    fn head<'r>(&self, report: &'r Report, trouble: &'r Trouble) -> Option<(String, FindingText, &'r Finding)> {
        let (lead, text) = (report.findings_of(trouble).next()?, self.trouble(report, trouble)?);
        let style = style(trouble.signal);
        Some((format!("{style} {} {style:#} {}  ", text.signal, lead.code), text, lead))
    }

    /// Formats a trouble in a line, with its remedy below if that was not given already.
    fn short_trouble(&self, out: &mut String, report: &Report, trouble: &Trouble, with_remedy: bool, width: usize) {
        let Some((head, text, _)) = self.head(report, trouble) else {
            return;
        };
        paragraph(out, &head, &text.title, width);
        if with_remedy {
            paragraph(out, "    ", &text.fix, width);
        }
    }

    fn one_trouble(&self, out: &mut String, report: &Report, trouble: &Trouble, width: usize) {
        let Some((head, text, lead)) = self.head(report, trouble) else {
            return;
        };
        let about = self.in_a_row(&super::names_of(&lead.about, &report.figures.loads));
        // A notice hurts nobody, so what it is and what to do is enough. `explain` gives the rest.
        if trouble.signal == Signal::Notice {
            paragraph(out, &head, &text.title, width);
            let label = format!("  {}  ", self.text("check-label-do"));
            paragraph(out, &label, &text.fix, width);
            return;
        }
        let hanging = wrapping(width).initial_indent(&head).subsequent_indent("  ");
        let head = textwrap::fill(&about, hanging);
        let _ = writeln!(out, "{}", head.trim_end());
        let bold = Style::new().bold();
        for line in textwrap::wrap(&text.title, wrapping(width)) {
            let _ = writeln!(out, "{bold}{line}{bold:#}");
        }
        // A full sentence, because a bare “also” next to “No usable outlet” would read as the remedy.
        let also = match text.also.as_slice() {
            [] => String::new(),
            also => self.with("trouble-too", [("troubles", also.join("; ").into())]),
        };
        let rows = [
            ("check-label-why", text.why),
            ("check-label-look", text.look.join(" ")),
            ("check-label-do", text.fix),
            ("check-label-also", also),
        ]
        .map(|(label, body)| (self.text(label), body));
        let wide = |label: &str| textwrap::core::display_width(label);
        let rows: Vec<(String, String)> = rows.into_iter().filter(|(_, body)| !body.is_empty()).collect();
        let column = rows.iter().map(|(label, _)| wide(label)).max().unwrap_or(0);
        for (label, body) in rows {
            let gap = " ".repeat(column - wide(&label));
            paragraph(out, &format!("  {label}{gap}  "), &body, width);
        }
        out.push('\n');
    }

    /// Formats what each receptacle can carry, a block each, so that it also fits a narrow screen. Neighbors that are
    /// alike in everything share a block.
    pub fn limits(&self, report: &Report, width: usize) -> String {
        let mut out = String::new();
        paragraph(&mut out, "", &self.text("check-limits"), width);
        let alike = |one: &Limit, other: &Limit| {
            let only = |of: &Limit| {
                let verdict = report.verdict(&of.id);
                verdict.map(|it| (it.only.clone(), it.bonding_plug, it.only_if))
            };
            let facts = |of: &Limit| {
                (
                    of.told_shape(),
                    of.continuous_amps,
                    of.short_amps,
                    of.legs.len(),
                    refusal(report, of),
                    report.guarded(&of.id).map(|why| why.code),
                    report.guarded_ahead(&of.id),
                    only(of),
                    report.usable(&of.id),
                    self.idle(report, &of.id),
                )
            };
            let set_by = |of: &Limit| {
                let part = |by: &SetBy| ((by.id != of.id).then(|| by.id.clone()), by.reason, by.share);
                (part(&of.continuous_set_by), part(&of.set_by))
            };
            facts(one) == facts(other) && (!report.usable(&one.id) || set_by(one) == set_by(other))
        };
        let of_one_part = |limit: &Limit| {
            let part = |by: &SetBy| (by.id.clone(), by.reason);
            part(&limit.continuous_set_by) == part(&limit.set_by)
        };
        for group in report.figures.limits.chunk_by(alike) {
            let limit = &group[0];
            let ids: Vec<&str> = group.iter().map(|limit| limit.id.as_str()).collect();
            let amps = |amps: Current, watts: Power| {
                let amps = self.amps_on(amps, limit.legs, Show::Capacity);
                let watts = self.amount(watts, Show::Capacity);
                let both = [("amps", amps.into()), ("watts", watts.into())];
                FluentValue::from(self.with("check-limit-amps", both))
            };
            let set_by = |by: &SetBy| {
                let reason = self.text(&format!("reason-{}", by.reason.code()));
                // A receptacle's own rating needs no name, and the generator's reasons already name the generator.
                let own = by.id == limit.id || by.id.as_str() == Id::SET;
                let key = match (own, by.share) {
                    (true, false) => return FluentValue::from(reason),
                    (true, true) => "check-limit-share-own",
                    (false, true) => "check-limit-share",
                    (false, false) => "check-limit-by",
                };
                FluentValue::from(self.with(key, [("id", by.id.to_string().into()), ("reason", reason.into())]))
            };
            let guarded = report.guarded(&limit.id).map(|why| why.code);
            let text = match refusal(report, limit) {
                None if guarded.is_some() => self.with(
                    if report.guarded_ahead(&limit.id) { "check-limit-guarded-ahead" } else { "check-limit-guarded" },
                    [("code", guarded.unwrap_or_default().into())],
                ),
                Some((None, code)) => self.with("check-limit-refused", [("code", code.into())]),
                Some((Some(id), code)) => self.with(
                    "check-limit-behind",
                    [("id", id.to_string().into()), ("code", code.into()), ("count", group.len().into())],
                ),
                None => self.with(
                    if limit.continuous_amps == limit.short_amps {
                        "check-limit-one"
                    } else if of_one_part(limit) {
                        "check-limit-same"
                    } else {
                        "check-limit-two"
                    },
                    [
                        ("long", amps(limit.continuous_amps, limit.continuous_watts)),
                        ("long_by", set_by(&limit.continuous_set_by)),
                        ("short", amps(limit.short_amps, limit.short_watts)),
                        ("short_by", set_by(&limit.set_by)),
                    ],
                ),
            };
            let text = self.with_condition(report, &limit.id, text);
            let shape = limit.told_shape();
            let first = format!("  {} ({shape})  ", ids.join(", "));
            let options = wrapping(width).initial_indent(&first).subsequent_indent("      ");
            let _ = writeln!(out, "{}", textwrap::fill(&text, options));
        }
        out
    }

    /// Formats how many troubles there are of each signal.
    pub fn count(&self, report: &Report) -> String {
        let count = |signal| FluentValue::from(report.count(signal));
        self.with(
            "check-count",
            [
                ("dangers", count(Signal::Danger)),
                ("warnings", count(Signal::Warning)),
                ("cautions", count(Signal::Caution)),
                ("notices", count(Signal::Notice)),
            ],
        )
    }

    /// Formats the dangers, a line each, for the end of a long list, where the screen stops scrolling. Empty if there
    /// are none.
    pub fn dangers(&self, report: &Report, width: usize) -> String {
        let mut out = String::new();
        let mut titles = report
            .figures
            .troubles
            .iter()
            .filter(|trouble| trouble.signal == Signal::Danger)
            .filter_map(|trouble| Some(self.trouble(report, trouble)?.title))
            .peekable();
        if titles.peek().is_some() {
            paragraph(&mut out, "", &self.text("check-dangers"), width);
        }
        for title in titles {
            paragraph(&mut out, "  ! ", &title, width);
        }
        out
    }

    /// Returns a receptacle's figures with the only things that may be plugged in there. If that is just the bonding
    /// plug, the figures are dropped.
    fn only(&self, verdict: &Verdict, limit: String) -> String {
        if verdict.only.is_empty() {
            return self.text("check-limit-bonding-plug");
        }
        let plug = verdict.bonding_plug.then(|| self.text("print-bonding-plug"));
        let parts = verdict.only.iter().map(Id::as_str);
        let parts: Vec<&str> = parts.chain(plug.as_deref()).collect();
        let parts = self.list(&parts);
        self.with("check-limit-only", [("parts", parts.into()), ("limit", limit.into())])
    }

    /// Returns in a few words and in a sentence why nobody is invited to plug in here ([`Report::idle`]), and `None`
    /// elsewhere. Where the plan has something here that must not be used, plugging it in again would not help.
    pub(crate) fn idle(&self, report: &Report, id: &Id) -> Option<[String; 2]> {
        if !report.idle(id) {
            return None;
        }
        let keys = if report.is_taken(id) {
            ["print-leave-empty", "print-leave-empty-how"]
        } else {
            ["print-idle", "print-idle-how"]
        };
        Some(keys.map(|key| self.text(key)))
    }

    /// Returns a receptacle's figures with whatever restricts its use: what alone may be plugged in, that nothing is
    /// planned for it, and the condition for using it.
    fn with_condition(&self, report: &Report, id: &Id, limit: String) -> String {
        let Some(verdict) = report.verdict(id) else {
            return limit;
        };
        let limit = match verdict.admits {
            Admits::Named => self.only(verdict, limit),
            _ => match self.idle(report, id) {
                Some([_, how]) => format!("{how} {limit}"),
                None => limit,
            },
        };
        let only_if = verdict.only_if;
        let only_if = only_if.map(|it| self.only_if(it));
        let both: Vec<String> = std::iter::once(limit).chain(only_if).collect();
        both.join(" ")
    }

    /// Formats the condition for using a part as a sentence.
    pub(crate) fn only_if(&self, only_if: OnlyIf) -> String {
        match only_if {
            OnlyIf::CamperMain { amps } => {
                let amps = self.amount(amps, Show::Capacity);
                self.with("only-if-camper", [("amps", amps.into())])
            }
            OnlyIf::ThisGenerator => self.text("only-if-generator"),
        }
    }
}

/// Appends a wrapped paragraph with a hanging indent as wide as `first`.
pub(super) fn paragraph(out: &mut String, first: &str, body: &str, width: usize) {
    let rest = " ".repeat(textwrap::core::display_width(first));
    let options = wrapping(width).initial_indent(first).subsequent_indent(&rest);
    let _ = writeln!(out, "{}", textwrap::fill(body, options));
}

/// Returns the owner's name for a load.
pub(super) fn load_name<'a>(report: &'a Report, id: &'a Id) -> &'a str {
    report.figures.load(id).map_or_else(|| id.as_str(), |load| load.name.as_str())
}

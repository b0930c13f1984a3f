//! Repairs, in words.

use std::fmt::Write as _;

use fluent_bundle::{FluentArgs, FluentValue};

use super::{Show, Words, name_of, wrapping};
use crate::report::{Effect, LoadFacts, Repair, Report, Tally, Value};

impl Words {
    /// Formats a repair as a sentence, from message `change-KEY` with `first` and its values.
    pub fn repair(&self, repair: &Repair, loads: &[LoadFacts]) -> String {
        let mut args: FluentArgs<'_> = self.values(&repair.values, loads);
        let first = repair
            .about
            .first()
            .map(|id| self.with("id-quoted", [("id", name_of(id.as_str(), loads).into())]))
            .unwrap_or_default();
        args.set("first", FluentValue::from(first));
        // A destination is either an id or "where the card shows". Only an id is quoted.
        if let ("move" | "take-turns", Some(Value::Name(id))) = (repair.key, repair.values.get("to")) {
            let quoted = self.with("id-quoted", [("id", id.as_str().into())]);
            args.set("to", FluentValue::from(quoted));
        }
        // This is how far the generator must be, not how far it is.
        if let Some(Value::Amount(distance)) = repair.values.get("distance") {
            let distance = self.amount(*distance, Show::AtLeast);
            args.set("distance", FluentValue::from(distance));
        }
        self.format(&format!("change-{}", repair.key), &args)
    }

    /// Formats a tally: dangers, warnings, loads that must run and cannot, and loads left at home.
    pub fn tally(&self, tally: &Tally) -> String {
        self.with(
            "mend-tally",
            [
                ("dangers", tally.dangers.into()),
                ("warnings", tally.warnings.into()),
                ("musts", tally.unserved_musts.into()),
                ("home", tally.at_home.into()),
            ],
        )
    }

    /// Says whether there may be an easier way and whether problems remain.
    pub fn effect(&self, effect: &Effect) -> String {
        let sure = self.text(if effect.proven { "mend-proven" } else { "mend-unproven" });
        match (effect.after.clear(), effect.stopped) {
            (true, _) => sure,
            (false, true) => self.of_the_rest(effect, true),
            (false, false) => format!("{sure} {}", self.of_the_rest(effect, true)),
        }
    }

    /// Says whether some change might clear the rest: none is known, or not all were tried. With `changed`, advises to
    /// look again once the changes are made.
    fn of_the_rest(&self, effect: &Effect, changed: bool) -> String {
        let key = if effect.stopped { "mend-stopped" } else { "mend-left" };
        self.with(key, [("changed", (if changed { "yes" } else { "no" }).into())])
    }

    /// Says that people must make the changes themselves, and what comes before starting the engine.
    pub fn by_hand(&self, effect: &Effect) -> String {
        self.text(if effect.after.dangers == 0 { "mend-people" } else { "mend-people-left" })
    }

    /// Returns each remaining danger and warning as its label and title.
    fn left(&self, effect: &Effect) -> Vec<(String, String)> {
        let titles = effect.left.iter().map(|finding| self.finding(finding, &effect.loads).title);
        titles.map(|title| (self.text("mend-stays"), title)).collect()
    }

    /// Formats a report's repairs with the tally before and after, wrapped to `width` columns. Empty if none were
    /// sought.
    pub fn repairs(&self, report: &Report, width: usize) -> String {
        let sharing = &report.figures.sharing;
        let Some(effect) = &sharing.mended else {
            return String::new();
        };
        let mut out = String::new();
        let fill = |out: &mut String, first: &str, rest: &str, text: &str| {
            let options = wrapping(width).initial_indent(first).subsequent_indent(rest);
            let _ = writeln!(out, "{}", textwrap::fill(text, options));
        };
        if sharing.repairs.is_empty() {
            if !effect.before.clear() {
                self.look_first(&mut out, report, width);
            }
            let nothing = effect.before.clear().then(|| self.text("mend-nothing"));
            fill(&mut out, "", "", &nothing.unwrap_or_else(|| self.of_the_rest(effect, false)));
            if effect.turns {
                fill(&mut out, "", "", &self.text("mend-turns"));
            }
            for (label, title) in self.left(effect) {
                fill(&mut out, &format!("  {label}  "), "    ", &title);
            }
            return out;
        }
        // Looking costs nothing, and what is seen may make the rest needless.
        self.look_first(&mut out, report, width);
        let dangers = effect.before.dangers;
        // Changes of hours are made in the plan, not to the gear. Nobody may go into a closed place to stop an engine.
        let only = |keys: &[&str]| sharing.repairs.iter().all(|it| keys.contains(&it.key));
        let how = if only(&["another-hour", "off-at-night"]) {
            "plan"
        } else if sharing.repairs.iter().any(|it| it.key == "open-air") {
            "closed"
        } else {
            "gear"
        };
        let counts = [
            ("how", how.into()),
            ("all", dangers.into()),
            ("cleared", dangers.saturating_sub(effect.after.dangers).into()),
        ];
        fill(&mut out, "", "", &self.with("mend-title", counts));
        for (number, repair) in sharing.repairs.iter().enumerate() {
            let text = self.repair(repair, &report.figures.loads);
            fill(&mut out, &format!("{:>3}. ", number + 1), "     ", &text);
        }
        out.push('\n');
        let rows = [("mend-before", &effect.before), ("mend-after", &effect.after)];
        let rows = rows.map(|(key, tally)| (self.text(key), self.tally(tally)));
        let unplaced = effect.unplaced.iter().map(|lost| {
            let load = name_of(lost.load.as_str(), &effect.loads);
            let label = self.with("print-ws-unplaced-row", [("load", load.into())]);
            (label, self.text(&format!("print-ws-{}", lost.reason)))
        });
        let turns = effect.turns.then(|| {
            let label = self.text("print-turns-title");
            (label, self.text("mend-turns"))
        });
        let rows = rows.into_iter().chain(turns).chain(unplaced);
        let rows: Vec<(String, String)> = rows.chain(self.left(effect)).collect();
        let column = rows.iter().map(|(label, _)| textwrap::core::display_width(label)).max().unwrap_or(0);
        // On a narrow screen, a label gets its own line.
        let beside = 2 * (column + 4) <= width;
        for (label, text) in rows {
            if !beside {
                fill(&mut out, "  ", "  ", &label);
                fill(&mut out, "    ", "    ", &text);
                continue;
            }
            let gap = column - textwrap::core::display_width(&label);
            let first = format!("  {label}{}  ", " ".repeat(gap));
            let rest = " ".repeat(column + 4);
            fill(&mut out, &first, &rest, &text);
        }
        out.push('\n');
        fill(&mut out, "", "", &self.effect(effect));
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Id;
    use crate::words::Units;

    /// What can be looked at comes ahead of any change. Near miss: the elevation is known, and nothing has to change.
    #[test]
    fn looking_comes_ahead_of_changing() {
        use crate::rules::testing::{LENT_BOX, plan};
        let told = |altitude: &str| {
            let text = LENT_BOX.replacen("altitude = \"500 ft\"", &format!("altitude = \"{altitude}\""), 1);
            Words::english().repairs(&crate::mend::advised(&plan(&text), false).0, 400)
        };
        let (thin, known) = (told("unknown"), told("500 ft"));
        let at = |text: &str| thin.find(text).unwrap_or_else(|| panic!("{text}: {thin}"));
        assert_eq!(at("Look first"), 0);
        assert!(at("elevation") < at("  1. "));
        assert!(!known.contains("Look first"), "{known}");
    }

    /// What remains is named as in the changed plan: a replaced load goes by its new name.
    #[test]
    fn what_stays_is_named_as_in_the_changed_plan() {
        let text = include_str!("../../tests/plans/usual/b03-no-alarm.toml");
        let plan = crate::plan::read(text).expect("a plan");
        let (mut report, mended) = crate::mend::advised(&plan, false);
        let load = &mended.effect.loads[0];
        let mut effect = mended.effect.clone();
        effect.left[0].about = vec![load.id.clone()];
        effect.left[0].code = "POWER001";
        effect.left[0].fix.key = "alone";
        effect.loads[0].name = "Half as big".to_owned();
        report.figures.sharing.mended = Some(effect);
        let told = Words::english().repairs(&report, 80);
        assert!(told.contains("Half as big") && !told.contains(&load.name), "{told}");
    }

    #[test]
    fn each_language_quotes_where_a_thing_goes_in_its_own_way() {
        let repair = |to: Value| Repair {
            key: "move",
            about: vec![Id::new("kettle").expect("an id")],
            values: [("to", to), ("some", Value::Name("no".to_owned()))].into(),
            cost: 1,
        };
        for (tag, first, to) in [
            ("en", "“kettle”", "“left”"),
            ("es", "“kettle”", "“left”"),
            ("de", "„kettle“", "„left“"),
            ("fr", "« kettle »", "« left »"),
        ] {
            let words = Words::new(tag, Units::Customary).expect("a language");
            let text = words.repair(&repair(Value::Name("left".to_owned())), &[]);
            let plain = text.replace(['\u{a0}', '\u{202f}'], " ");
            assert!(plain.contains(first) && plain.contains(to), "{tag}: {text}");
            let phrase = words.text("change-by-the-card");
            let word = "change-by-the-card";
            let text = words.repair(&repair(Value::Word { word }), &[]);
            assert!(text.contains(&phrase) && !text.contains(&format!("“{phrase}")), "{text}");
        }
    }
}

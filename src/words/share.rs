//! Formats what may run together, what stays off, and whose turn it is, for the terminal and for the prints.

use super::Words;
use super::screen::paragraph;
use crate::plan::Id;
use crate::report::{Report, Signal};

/// The most sets of each kind shown on a terminal. The worksheet has them all.
const SHOWN: usize = 4;

impl Words {
    /// Formats the section on sharing, wrapped to `width` columns. Empty if nothing is plugged in.
    pub fn sharing(&self, report: &Report, width: usize) -> String {
        let sharing = &report.figures.sharing;
        let mut out = String::new();
        if sharing.placed.is_empty() {
            return out;
        }
        if report.worst() == Some(Signal::Danger) {
            paragraph(&mut out, "", &self.text("share-danger"), width);
        }
        if let Some(all) = self.all_together(report) {
            paragraph(&mut out, "", &all, width);
        } else {
            let together = ("share-together", sharing.together.as_slice());
            self.sets(&mut out, report, together, width);
            self.sets(&mut out, report, ("share-never", &sharing.never), width);
        }
        if !sharing.families_complete {
            paragraph(&mut out, "  ", &self.text("share-incomplete"), width);
        }
        if let Some(off) = self.off(report) {
            paragraph(&mut out, "", &off, width);
        }
        if !sharing.turns.is_empty() {
            paragraph(&mut out, "", &self.text("share-turns"), width);
            for (number, turn) in (1..).zip(self.turns(report)) {
                paragraph(&mut out, &format!("  {number}. "), &turn, width);
            }
            if let Some(life) = self.no_turns(report) {
                paragraph(&mut out, "  ", &life, width);
            }
        }
        out.push('\n');
        out
    }

    /// Says that everything may be on at once, so there is nothing to choose. `None` if that is not so.
    pub fn all_together(&self, report: &Report) -> Option<String> {
        let sharing = &report.figures.sharing;
        let all = sharing.never.is_empty() && sharing.unplaced.is_empty();
        (all && sharing.families_complete && !sharing.placed.is_empty()).then(|| self.text("share-all"))
    }

    fn sets(&self, out: &mut String, report: &Report, (title, sets): (&str, &[Vec<Id>]), width: usize) {
        if sets.is_empty() {
            return;
        }
        paragraph(out, "", &self.text(title), width);
        for set in sets.iter().take(SHOWN) {
            paragraph(out, "  - ", &self.one_set(report, set), width);
        }
        if sets.len() > SHOWN {
            let more = self.with("share-more", [("count", (sets.len() - SHOWN).into())]);
            paragraph(out, "    ", &more, width);
        }
    }

    /// Names the loads of a set, and says so if it is a single load that is too much by itself.
    pub fn one_set(&self, report: &Report, set: &[Id]) -> String {
        let names = self.set_names(report, set).join(" + ");
        if set.len() == 1 && report.figures.sharing.never.iter().any(|never| never == set) {
            self.with("share-alone", [("name", names.into())])
        } else {
            names
        }
    }

    /// Names the loads of each turn, without what a life depends on: that takes no turns. A turn that it is too much
    /// for says so.
    pub fn turns(&self, report: &Report) -> Vec<String> {
        let sharing = &report.figures.sharing;
        let turns = sharing.turns.iter().map(|turn| {
            let life = &sharing.stays_on;
            let without: Vec<Id> = life.iter().filter(|it| !turn.contains(it)).cloned().collect();
            let others: Vec<Id> = turn.iter().filter(|it| !life.contains(it)).cloned().collect();
            let loads = self.in_a_row(&self.set_names(report, &others));
            if without.is_empty() {
                return loads;
            }
            let life = self.set_quoted(report, &without);
            self.with("share-turn-without", [("loads", loads.into()), ("life", life.into())])
        });
        turns.collect()
    }

    /// Says that what a life depends on takes no turns. `None` if there are none, or nothing like it.
    pub fn no_turns(&self, report: &Report) -> Option<String> {
        let sharing = &report.figures.sharing;
        let told = !sharing.turns.is_empty() && !sharing.stays_on.is_empty();
        told.then(|| self.with("share-no-turns", [("life", self.set_quoted(report, &sharing.stays_on).into())]))
    }

    /// Says what stays off for the sake of loads that a life depends on. `None` if nothing has to.
    pub fn off(&self, report: &Report) -> Option<String> {
        let sharing = &report.figures.sharing;
        if sharing.off.is_empty() {
            return None;
        }
        let args = [
            ("life", self.set_quoted(report, &sharing.stays_on).into()),
            ("off", self.set_quoted(report, &sharing.off).into()),
        ];
        Some(self.with("share-off", args))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::demo::MENDED;

    fn report() -> Report {
        let plan = crate::plan::read(MENDED).expect("a demo plan");
        crate::judge::build(&plan)
    }

    #[test]
    fn what_is_cut_short_says_so_and_nothing_else_is() {
        let words = Words::english();
        let mut report = report();
        let set = report.figures.sharing.never[0].clone();
        for (sets, more) in [(SHOWN, None), (SHOWN + 3, Some("and 3 more"))] {
            report.figures.sharing.never = vec![set.clone(); sets];
            report.figures.sharing.together.truncate(1);
            let text = words.sharing(&report, 200);
            assert_eq!(text.contains("more, all on the worksheet"), more.is_some());
            assert!(more.is_none_or(|more| text.contains(more)), "{text}");
        }
    }

    /// Of 1000 W, a device that a life depends on needs 100 W, a lamp 100 W and a kettle 950 W. It is in no line of the
    /// turns, and a line that it is too much for is for other hours. Near miss: with a smaller kettle it runs along with
    /// every line.
    #[test]
    fn what_a_life_depends_on_takes_no_turns() {
        let load = |id: &str, kind: &str, watts: u32, hours: &str| {
            format!(
                "[[load]]\nid = \"{id}\"\nname = \"{id}\"\nkind = \"{kind}\"\nrunning = \"{watts} W\"\n\
                 starting = \"{watts} W\"\npower_factor = 1.0\nhours = [\"{hours}\"]\nplug = \"5-15P\"\n"
            )
        };
        let told = |kettle: u32, hours: &str| {
            let text = "format = 1\n[site]\nground = \"dry\"\naltitude = \"0 ft\"\nair = \"59 °F\"\n[generator]\n\
                        rated = \"1000 W\"\npeak = \"1200 W\"\nvoltage = \"120 V\"\n[[generator.outlet]]\n\
                        id = \"front\"\nshape = \"5-15R\"\nsockets = 3\nbreaker = \"15 A\"\ngfci = true\n"
                .to_owned()
                + &load("aid", "medical", 100, hours)
                + &load("lamp", "lamp", 100, "06:00-08:00")
                + &load("kettle", "cooker", kettle, "07:00-07:30");
            let plan = crate::plan::read(&text).expect("a plan");
            let report = crate::judge::build(&plan);
            let words = Words::english();
            (words.turns(&report), words.no_turns(&report), words.sharing(&report, 200))
        };
        let (turns, no_turns, text) = told(950, "21:00-06:30");
        assert_eq!(turns, ["lamp", "kettle (only while nobody needs “aid”)"]);
        assert!(no_turns.is_some_and(|it| text.contains(&it) && it.contains("never turn it off")), "{text}");
        let (turns, ..) = told(850, "21:00-08:00");
        assert_eq!(turns, ["kettle", "lamp"]);
    }
}

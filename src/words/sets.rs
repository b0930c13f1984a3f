//! Names sets of loads, counting the units of one entry together.

use super::Words;
use crate::plan::Id;
use crate::report::Report;

/// Units of one entry. If the entry's units are spread over several receptacles, only those at one of them.
struct Group<'a> {
    of: &'a Id,
    name: &'a str,
    /// The receptacle, if other units of the entry are elsewhere.
    at: Option<&'a Id>,
    count: usize,
    /// How many units the entry has, or has at that receptacle.
    total: usize,
}

impl Words {
    /// Names the loads of a set: "Kettle", "any 2 of the 4 Lamps". If all units of an entry are at one receptacle, any
    /// of them will do. If they are spread over several, it matters which ones, so the receptacle is named.
    pub fn set_names(&self, report: &Report, ids: &[Id]) -> Vec<String> {
        groups(report, ids).iter().map(|group| self.group(group, group.name)).collect()
    }

    /// Names the loads in a sentence, with each name in quotation marks.
    pub fn set_quoted(&self, report: &Report, ids: &[Id]) -> String {
        self.set_joined(report, ids, "list-and")
    }

    /// Names the loads after a "not": "“Kettle” or “Griddle”". If all units of an entry are meant, only its name is
    /// given, since "not both" would allow one.
    pub fn set_any(&self, report: &Report, ids: &[Id]) -> String {
        self.set_joined(report, ids, "list-or")
    }

    fn set_joined(&self, report: &Report, ids: &[Id], key: &str) -> String {
        let names: Vec<String> = groups(report, ids)
            .iter()
            .map(|group| {
                let name = self.with("id-quoted", [("id", group.name.into())]);
                if key == "list-or" && group.count == group.total && group.at.is_none() {
                    name
                } else {
                    self.group(group, &name)
                }
            })
            .collect();
        self.joined(&names, key)
    }

    fn group(&self, group: &Group<'_>, name: &str) -> String {
        let counted = if group.total == 1 {
            name.to_owned()
        } else {
            self.with(
                // All of them are counted: "both A and B" could be one of each.
                if group.count == group.total { "print-several" } else { "load-some" },
                [("name", name.to_owned().into()), ("count", group.count.into()), ("total", group.total.into())],
            )
        };
        match group.at {
            Some(at) => self.with("load-at", [("loads", counted.into()), ("at", at.as_str().into())]),
            None => counted,
        }
    }
}

/// Returns the receptacle of a load if other units of its entry are at another.
pub(crate) fn told_apart<'a>(report: &'a Report, id: &Id) -> Option<&'a Id> {
    let figures = &report.figures;
    let place = |id: &Id| figures.sharing.place(id);
    let own = figures.load(id)?;
    let at = place(id)?;
    let mut others = figures.units(&own.of).filter_map(|load| place(&load.id));
    others.any(|other| other != at).then_some(at)
}

fn groups<'a>(report: &'a Report, ids: &'a [Id]) -> Vec<Group<'a>> {
    let mut groups: Vec<Group<'_>> = Vec::new();
    for id in ids {
        let fact = report.figures.load(id);
        let (of, name) = fact.map_or((id, id.as_str()), |load| (&load.of, load.name.as_str()));
        let at = told_apart(report, id);
        match groups.iter_mut().find(|it| it.of == of && it.at == at) {
            Some(group) => group.count += 1,
            None => groups.push(Group {
                of,
                name,
                at,
                count: 1,
                total: (report.figures.units(of)).filter(|load| told_apart(report, &load.id) == at).count().max(1),
            }),
        }
    }
    groups
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::demo::MENDED;

    /// Returns the report on the mended demo with `count` string lights.
    fn report(count: &str) -> Report {
        let text = MENDED.replacen("id = \"lamps\"", &format!("id = \"lamps\"\n{count}"), 1);
        let plan = crate::plan::read(&text).unwrap_or_else(|problems| panic!("{problems:?}"));
        crate::judge::build(&plan)
    }

    fn ids(numbers: &[usize]) -> Vec<Id> {
        let of = Id::new("lamps").expect("an id");
        numbers.iter().map(|number| of.end(*number)).collect()
    }

    #[test]
    fn so_many_of_them() {
        let words = Words::english();
        // Without receptacles, the units cannot be told apart.
        let mut report = report("count = 4");
        report.figures.sharing.placed.clear();
        let say = |numbers: &[usize]| words.set_names(&report, &ids(numbers)).join("; ");
        assert_eq!(say(&[1]), "any 1 of the 4 String lights");
        assert_eq!(say(&[1, 2]), "any 2 of the 4 String lights");
        assert_eq!(say(&[1, 2, 3, 4]), "String lights × 4");
        let kettle = [Id::new("kettle").expect("an id")];
        assert_eq!(words.set_names(&report, &kettle), ["Kettle"]);
        assert_eq!(words.set_quoted(&report, &kettle), "“Kettle”");
        assert_eq!(words.faults(), Vec::<String>::new());
    }

    #[test]
    fn at_two_receptacles_it_matters_which() {
        let words = Words::english();
        let mut report = report("count = 3");
        let placed = |load: Id, at: &str| crate::report::Placed { load, at: Id::reference(at).expect("an id") };
        let lamps = ids(&[1, 2, 3]);
        report.figures.sharing.placed = vec![
            placed(lamps[0].clone(), "box-left"),
            placed(lamps[1].clone(), "box-left"),
            placed(lamps[2].clone(), "table"),
        ];
        assert_eq!(
            words.set_names(&report, &[lamps[0].clone(), lamps[2].clone()]),
            ["any 1 of the 2 String lights at “box-left”", "String lights at “table”"]
        );
    }
}

//! Who reads: the language of the screen, that of the prints, and the units.

use std::ffi::OsString;
use std::rc::Rc;

use tallywatt::plan::Plan;
use tallywatt::words::{Library, Units, Words};

/// The options that must be known before the arguments are taken apart, because the parser
/// itself speaks.
const LANGUAGE: &str = "--language";
const UNITS: &str = "--units";

/// The reader.
pub(super) struct Reader {
    /// What is said as long as no plan has a language of its own.
    pub(super) words: Rc<Words>,
    /// Whether the language was asked for, so that no plan changes it.
    asked: bool,
    units: Option<Units>,
    /// The languages of the prints, each with its tag.
    prints: Vec<(String, Rc<Words>)>,
}

/// A language that was asked for and is not there.
#[derive(Debug)]
pub(super) struct NoLanguage(pub(super) String);

impl Reader {
    /// The reader as the arguments and the locale tell.
    ///
    /// # Errors
    /// With the reader that the locale tells, when the language that was asked for is not there.
    pub(super) fn of(arguments: &[OsString]) -> (Self, Option<NoLanguage>) {
        let units = value_of(arguments, UNITS).and_then(|name| units_named(&name));
        let asked = value_of(arguments, LANGUAGE);
        let speaks = |tag: &str| speak(tag, units);
        let words = asked.as_deref().and_then(speaks);
        let lost = match (&asked, &words) {
            (Some(tag), None) => Some(NoLanguage(tag.clone())),
            _ => None,
        };
        let reader = Self {
            asked: words.is_some(),
            words: words.or_else(|| of_locale(units)).unwrap_or_else(|| {
                speak(tallywatt::words::FIRST_LANGUAGE, units).unwrap_or_else(|| Rc::new(Words::english()))
            }),
            units,
            prints: Vec::new(),
        };
        (reader, lost)
    }

    /// With the languages of the prints.
    ///
    /// # Errors
    /// When one of them is not there.
    pub(super) fn printing(mut self, tags: &[String]) -> Result<Self, NoLanguage> {
        for tag in tags {
            let Some(words) = speak(tag, self.units) else {
                return Err(NoLanguage(tag.clone()));
            };
            if self.prints.iter().all(|(known, _)| known != tag) {
                self.prints.push((tag.clone(), words));
            }
        }
        Ok(self)
    }

    /// The words for what is said about a plan: as asked for, else as the plan says, else those
    /// of the locale.
    pub(super) fn of_plan(&self, plan: &Plan) -> Rc<Words> {
        let own = plan.language.as_deref().filter(|_| !self.asked);
        own.and_then(|tag| speak(tag, self.units)).unwrap_or_else(|| Rc::clone(&self.words))
    }

    /// The words of each set of prints, and what its files are marked with if there are several.
    pub(super) fn sets(&self, plan: &Plan) -> Vec<(Option<&str>, Rc<Words>)> {
        match self.prints.as_slice() {
            [] => vec![(None, self.of_plan(plan))],
            [(_, words)] => vec![(None, Rc::clone(words))],
            several => several.iter().map(|(tag, words)| (Some(tag.as_str()), Rc::clone(words))).collect(),
        }
    }
}

fn speak(tag: &str, units: Option<Units>) -> Option<Rc<Words>> {
    let chain = Library::built_in().chain(tag)?;
    let units = units.unwrap_or_else(|| Units::of(&chain.tag));
    Some(Rc::new(Words::of(&chain, units)))
}

/// The first language of the system's that is there. "C" is the standard's name for none.
fn of_locale(units: Option<Units>) -> Option<Rc<Words>> {
    sys_locale::get_locales()
        .take_while(|tag| !matches!(tag.as_str(), "C" | "POSIX"))
        .find_map(|tag| speak(&tag, units))
}

pub(super) fn units_named(name: &str) -> Option<Units> {
    match name {
        "us" => Some(Units::Customary),
        "metric" => Some(Units::Metric),
        _ => None,
    }
}

/// The value of an option, wherever it stands before a lone `--`.
fn value_of(arguments: &[OsString], option: &str) -> Option<String> {
    let mut rest = arguments.iter().map(|argument| argument.to_string_lossy()).take_while(|argument| argument != "--");
    while let Some(argument) = rest.next() {
        if argument == option {
            return rest.next().map(std::borrow::Cow::into_owned);
        }
        if let Some(value) = argument.strip_prefix(option).and_then(|rest| rest.strip_prefix('=')) {
            return Some(value.to_owned());
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_option_is_found_wherever_it_stands() {
        let found = |arguments: &[&str]| {
            let arguments: Vec<OsString> = arguments.iter().map(Into::into).collect();
            value_of(&arguments, LANGUAGE)
        };
        assert_eq!(found(&["--language", "es", "check"]).as_deref(), Some("es"));
        assert_eq!(found(&["check", "--language=es"]).as_deref(), Some("es"));
        assert_eq!(found(&["check", "--", "--language", "es"]), None);
        assert_eq!(found(&["check", "--language"]), None);
        assert_eq!(found(&["check", "--languages=es"]), None);
    }
}

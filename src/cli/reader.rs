//! The reader: the language of the screen, the languages of the prints, and the units.

use std::ffi::OsString;
use std::rc::Rc;

use tallywatt::plan::Plan;
use tallywatt::words::{Library, Units, Words};

/// An option that is looked up before the arguments are parsed, because the parser's own messages depend on it.
const LANGUAGE: &str = "--language";
const UNITS: &str = "--units";

/// The languages and units of the person who reads the output.
pub(super) struct Reader {
    /// The words for output that does not depend on a plan's language.
    pub(super) words: Rc<Words>,
    /// Whether the user asked for the language, which then overrides a plan's.
    asked: bool,
    units: Option<Units>,
    /// The languages of the prints, each with its tag.
    prints: Vec<(String, Rc<Words>)>,
}

/// A requested language that is not available.
#[derive(Debug)]
pub(super) struct NoLanguage(pub(super) String);

impl Reader {
    /// Creates the reader from the arguments and the locale. A requested language that is not available is returned
    /// beside a reader in the locale's language.
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

    /// Sets the languages of the prints.
    ///
    /// # Errors
    /// Returns an error if one of them is not available.
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

    /// Returns the words for output about a plan: in the requested language, else the plan's, else the locale's.
    pub(super) fn of_plan(&self, plan: &Plan) -> Rc<Words> {
        let own = plan.language.as_deref().filter(|_| !self.asked);
        own.and_then(|tag| speak(tag, self.units)).unwrap_or_else(|| Rc::clone(&self.words))
    }

    /// Returns the words of each set of prints, with a tag for its file names if there are several sets.
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

/// Returns the first of the system's languages that is available. "C" and "POSIX" are not languages.
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

/// Returns the value of an option that stands anywhere before a lone `--`.
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

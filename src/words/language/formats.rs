//! Formats messages with every kind of value, including the longest and oddest.

use std::collections::{BTreeMap, BTreeSet};

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

use super::catalog::{Item, Parts};
use super::check::plural;
use crate::words::Words;

/// Numbers for which languages are known to change words, and some that no plan contains.
const COUNTS: [i64; 14] = [0, 1, 2, 3, 4, 5, 10, 11, 12, 21, 100, 101, 500, 1000];

/// A name as long as any that a plan may have.
const LONG: &str = "Wohnwagenvorzeltheizlüfter “Ñandú” 5-15R & <b>~@#$</b> ÅÉÎÕÜ";

/// The most combinations of values tried for one message.
const WAYS: usize = 400;

/// Formats a message with up to [`WAYS`] combinations of values and returns what goes wrong. An empty string means that
/// the result was blank.
pub(super) fn faults(words: &Words, item: &Item, its: &Parts, model: &Item, models: &Parts) -> BTreeSet<String> {
    // Only values that the first language uses, or that its comments name, are provided.
    let mut values: BTreeMap<String, Vec<FluentValue<'static>>> = BTreeMap::new();
    for name in its.shown.iter().chain(&models.shown) {
        values.insert(name.clone(), vec![LONG.into(), "".into()]);
    }
    for (name, cases) in its.choices.iter().chain(&models.choices) {
        let given = if plural(cases) {
            COUNTS.map(FluentValue::from).to_vec()
        } else {
            cases.iter().cloned().map(FluentValue::from).collect()
        };
        values.insert(name.clone(), given);
    }
    let given = |name: &String| {
        models.shown.contains(name)
            || models.choices.iter().any(|(choice, _)| choice == name)
            || model.context.iter().any(|remark| remark.contains(&format!("${name}")))
    };
    values.retain(|name, _| given(name));

    let ways: usize = values.values().map(Vec::len).product();
    let mut faults = BTreeSet::new();
    for way in 0..ways.min(WAYS) {
        let mut rest = way;
        let args: FluentArgs<'_> = values
            .iter()
            .map(|(name, values)| {
                let value = values[rest % values.len()].clone();
                rest /= values.len();
                (name.as_str(), value)
            })
            .collect();
        // Parts of pages take no values.
        let text = words.part_of_page(&item.key);
        match text.unwrap_or_else(|| words.try_format(&item.key, &args)) {
            Ok(text) if text.trim().is_empty() && its.shown.is_empty() => {
                faults.insert(String::new());
            }
            Ok(_) => {}
            Err(fault) => {
                faults.insert(fault);
            }
        }
    }
    faults
}

/// Returns the plural categories of the numbers from 0 to 1000 in the language.
pub(super) fn categories(words: &Words) -> BTreeSet<String> {
    let source = "n = { $n ->\n    [zero] zero\n    [one] one\n    [two] two\n    [few] few\n    \
                  [many] many\n   *[other] other\n  }\n";
    let Ok(resource) = FluentResource::try_new(source.to_owned()) else {
        return BTreeSet::new();
    };
    let mut bundle = FluentBundle::new(vec![words.language().clone()]);
    bundle.add_resource_overriding(resource);
    let Some(pattern) = bundle.get_message("n").and_then(|message| message.value()) else {
        return BTreeSet::new();
    };
    (0..=1000_i64)
        .map(|count| {
            let args: FluentArgs<'_> = [("n", FluentValue::from(count))].into_iter().collect();
            bundle.format_pattern(pattern, Some(&args), &mut Vec::new()).into_owned()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Library, Units};

    /// Unicode plural rules of these languages for whole numbers below a million (from memory, not verified).
    #[test]
    fn kinds_of_number() {
        for (tag, kinds) in [
            ("en", &["one", "other"][..]),
            ("pl", &["few", "many", "one"]),
            ("ja", &["other"]),
            ("ar", &["few", "many", "one", "other", "two", "zero"]),
        ] {
            let mut library = Library::default();
            library.add(tag, "a.ftl", "a = a");
            let chain = library.draft_chain(tag).expect("a folder");
            let found = categories(&Words::of(&chain, Units::default()));
            assert_eq!(found.iter().collect::<Vec<_>>(), kinds, "{tag}");
        }
    }
}

//! Messages with every kind of value in them, the longest and the oddest too.

use std::collections::{BTreeMap, BTreeSet};

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

use super::catalog::{Item, Parts};
use super::check::plural;
use crate::words::Words;

/// Numbers for which languages are known to change words, and some that no plan has.
const COUNTS: [i64; 14] = [0, 1, 2, 3, 4, 5, 10, 11, 12, 21, 100, 101, 500, 1000];

/// A name as long as any that is taken.
const LONG: &str = "Wohnwagenvorzeltheizlüfter “Ñandú” 5-15R & <b>~@#$</b> ÅÉÎÕÜ";

/// The most ways in which one message is put together.
const WAYS: usize = 400;

/// What goes wrong when the message is put together in every way there is.
pub(super) fn faults(words: &Words, item: &Item, its: &Parts, model: &Item, models: &Parts) -> BTreeSet<String> {
    // What is given is what the first language takes, and what its remarks name.
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
        // A part of a page takes no values.
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

/// The kinds of number that the language tells apart among those that come up here.
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

    /// The Unicode plural rules of these languages, for whole numbers below a million; from
    /// memory, not verified.
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

//! Command lines that cannot be understood, explained in the reader's language.

use std::ffi::OsStr;
use std::path::Path;

use clap::error::{ContextKind, ContextValue, ErrorKind};
use tallywatt::words::{Library, Words};

use super::args::EXAMPLES;
use super::failure::{Failure, Kind};
use super::reader::NoLanguage;
use super::{Done, args, command, nearest};

/// Turns an error of the argument parser into a failure with hints.
pub(super) fn failure(error: &clap::Error, call: &[impl AsRef<OsStr>], words: &Words) -> Failure {
    let of = |kind| error.get(kind).map(plain).unwrap_or_default();
    let mut argument = of(ContextKind::InvalidArg);
    let value = of(ContextKind::InvalidValue);
    let key = match error.kind() {
        ErrorKind::UnknownArgument => "usage-unknown-argument",
        ErrorKind::InvalidSubcommand => {
            argument = of(ContextKind::InvalidSubcommand);
            "usage-unknown-command"
        }
        ErrorKind::InvalidValue | ErrorKind::ValueValidation if value.is_empty() => "usage-no-value",
        ErrorKind::InvalidValue | ErrorKind::ValueValidation => "usage-wrong-value",
        ErrorKind::MissingRequiredArgument | ErrorKind::MissingSubcommand => "usage-missing",
        ErrorKind::ArgumentConflict if of(ContextKind::PriorArg) == argument => "usage-twice",
        ErrorKind::ArgumentConflict => "usage-conflict",
        _ => {
            if argument.is_empty() {
                argument = error.kind().to_string();
            }
            "usage-other"
        }
    };
    let text = words.with(
        key,
        [
            ("argument", argument.as_str().into()),
            ("value", value.as_str().into()),
            ("other", of(ContextKind::PriorArg).into()),
        ],
    );
    let mut failure = Failure::text(Kind::Usage, text);
    if error.kind() == ErrorKind::InvalidSubcommand {
        let plan = Path::new(&argument);
        if plan.is_file() || plan.extension().is_some_and(|extension| extension == "toml") {
            let check = command(&["tallywatt", "check", &argument]);
            return failure.hint(words.with("usage-plan", [("command", check.into())]));
        }
    }
    if !value.is_empty() && argument.starts_with("--date") {
        return failure.hint(words.text("usage-date"));
    }
    if let Some(ContextValue::Strings(allowed)) = error.get(ContextKind::ValidValue)
        && !allowed.is_empty()
    {
        let allowed = allowed.join(", ");
        failure = failure.hint(words.with("usage-allowed", [("allowed", allowed.into())]));
    }
    let nearest = [ContextKind::SuggestedArg, ContextKind::SuggestedSubcommand, ContextKind::SuggestedValue]
        .map(of)
        .into_iter()
        .find(|text| !text.is_empty());
    if let Some(nearest) = nearest {
        return failure.near(Some(&nearest), words);
    }
    // The options of a command are listed on its own help page.
    let known = |word: &&str| EXAMPLES.iter().any(|(name, _)| name == word);
    let called = call.iter().skip(1).filter_map(|word| word.as_ref().to_str()).find(known);
    let help: Vec<&str> = ["tallywatt"].into_iter().chain(called).chain(["--help"]).collect();
    failure.hint(words.with("usage-help", [("help", help.join(" ").into())]))
}

/// Returns the help of a command, or of the program itself.
pub(super) fn help(asked: Option<&str>, words: &Words) -> Result<Done, Failure> {
    let mut all = args::command(words, true);
    let Some(name) = asked else {
        return Ok(Done::saying(all.render_help().ansi().to_string()));
    };
    if let Some(page) = all.find_subcommand_mut(name) {
        return Ok(Done::saying(page.render_help().ansi().to_string()));
    }
    let failure = Failure::text(Kind::Usage, words.with("usage-unknown-command", [("argument", name.into())]));
    let near = nearest(name, all.get_subcommands().map(clap::Command::get_name));
    Err(failure.near(near, words))
}

/// Returns the failure for a language that is not available.
pub(super) fn no_language(lost: &NoLanguage, words: &Words) -> Failure {
    let allowed = Library::built_in().offered().collect::<Vec<_>>().join(", ");
    Failure::text(Kind::Usage, words.with("usage-no-language", [("tag", lost.0.as_str().into())]))
        .hint(words.with("usage-allowed", [("allowed", allowed.into())]))
}

/// Returns the failure for answers given to a command that asks nothing.
pub(super) fn answers_elsewhere(words: &Words) -> Failure {
    Failure::text(Kind::Usage, words.text("usage-answers"))
}

fn plain(value: &ContextValue) -> String {
    match value {
        ContextValue::String(text) => text.clone(),
        ContextValue::Strings(texts) => texts.join(", "),
        ContextValue::StyledStr(text) => text.to_string(),
        ContextValue::StyledStrs(texts) => {
            let texts: Vec<String> = texts.iter().map(ToString::to_string).collect();
            texts.join(", ")
        }
        ContextValue::Number(number) => number.to_string(),
        _ => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The hint names the help page of the command. Near miss: without a command, it names the program's.
    #[test]
    fn the_hint_names_the_page_that_has_the_options() {
        let words = Words::english();
        for (call, page) in [
            (&["tallywatt", "print", "a"][..], "“tallywatt print --help”"),
            (&["tallywatt", "may", "a"], "“tallywatt may --help”"),
            (&["tallywatt", "print", "a", "--into", "b", "--start-at", "0"], "“tallywatt print --help”"),
            (&["tallywatt", "--zzz"], "“tallywatt --help”"),
        ] {
            let error = args::command(&words, false).try_get_matches_from(call);
            let said = failure(&error.expect_err("a wrong call"), call, &words).shown(&words);
            assert!(said.contains(page), "{said}");
        }
    }
}

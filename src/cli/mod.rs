//! The shell: the only part of the program that reads the environment, prints and exits.
//!
//! A command returns its output and an exit status, or a [`Failure`] whose kind sets the status. Nothing here computes
//! a number that reaches a label.

mod args;
mod ask;
mod check;
mod clock;
mod demo;
mod explain;
mod failure;
mod learned;
mod may;
mod mend;
mod prints;
mod progress;
mod reader;
mod reprint;
mod templates;
mod usage;
mod words;

use std::ffi::OsString;
use std::io::{ErrorKind, Write as _};
use std::process::ExitCode;
use std::rc::Rc;

use clap::FromArgMatches as _;
use tallywatt::words::Words;

use args::{Arguments, Command};
use failure::{Failure, Kind};
use reader::Reader;

/// The result of a command that succeeded.
struct Done {
    /// The text for standard output.
    output: String,
    /// The exit status.
    status: u8,
}

impl Done {
    fn saying(output: String) -> Self {
        Self { output, status: 0 }
    }
}

/// Runs the program and returns its exit status.
#[allow(clippy::disallowed_methods)] // only the shell reads the arguments
pub(crate) fn run() -> ExitCode {
    let raw: Vec<OsString> = std::env::args_os().collect();
    let (reader, lost) = Reader::of(&raw);
    let words = Rc::clone(&reader.words);
    if let Some(lost) = lost {
        return usage::no_language(&lost, &words).report(&words);
    }
    let arguments = match args::command(&words, raw.iter().any(|it| it == "--help")).try_get_matches_from(&raw) {
        Ok(matches) => Arguments::from_arg_matches(&matches),
        Err(error) => Err(error),
    };
    let arguments = match arguments {
        Ok(arguments) => arguments,
        // Help and version are not errors.
        Err(error) if !error.use_stderr() => {
            let said = say(&error.render().ansi().to_string(), &words);
            return said.map_or_else(|failure| failure.report(&words), |()| ExitCode::SUCCESS);
        }
        Err(error) => return usage::failure(&error, &raw, &words).report(&words),
    };
    anstream::ColorChoice::from(arguments.color).write_global();
    let reader = match reader.printing(&arguments.print_language) {
        Ok(reader) => reader,
        Err(lost) => return usage::no_language(&lost, &words).report(&words),
    };
    match dispatch(&arguments, &reader) {
        Ok(done) => match say(&done.output, &words) {
            Ok(()) => ExitCode::from(done.status),
            Err(failure) => failure.report(&words),
        },
        Err(failure) => failure.report(&words),
    }
}

fn dispatch(arguments: &Arguments, reader: &Reader) -> Result<Done, Failure> {
    let words = &reader.words;
    match &arguments.command {
        Some(command) if arguments.how.given() && !matches!(command, Command::Ask(_)) => {
            Err(usage::answers_elsewhere(words))
        }
        None => ask::interview(&arguments.how, None, reader),
        Some(Command::Ask(ask)) => {
            let how = if arguments.how.given() { &arguments.how } else { &ask.how };
            ask::interview(how, Some(&ask.plan), reader)
        }
        Some(Command::Help(arguments)) => usage::help(arguments.command.as_deref(), words),
        Some(Command::Templates(arguments)) => templates::run(arguments, words),
        Some(Command::Explain(arguments)) => explain::run(arguments, words),
        Some(Command::Words(arguments)) => words::run(arguments, words),
        Some(Command::Demo(arguments)) => progress::during(words, || demo::run(arguments, reader)),
        Some(Command::Check(arguments)) => progress::during(words, || check::run(arguments, reader)),
        Some(Command::Print(arguments)) => progress::during(words, || prints::run(arguments, reader)),
        Some(Command::May(arguments)) => progress::during(words, || may::run(arguments, reader)),
        Some(Command::Reprint(arguments)) => progress::during(words, || reprint::run(arguments, reader)),
        Some(Command::Learned(arguments)) => progress::during(words, || learned::run(arguments, reader)),
        Some(Command::Mend(arguments)) => progress::during(words, || mend::run(arguments, reader)),
    }
}

/// Writes to standard output. A reader that closes the pipe early (`| head`) is not an error.
fn say(text: &str, words: &Words) -> Result<(), Failure> {
    let mut out = anstream::stdout().lock();
    let text = match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() == ErrorKind::BrokenPipe => return Ok(()),
        Err(error) if error.kind() == ErrorKind::StorageFull => words.text("failure-output-full"),
        Err(error) => words.with("failure-output", [("reason", error.to_string().into())]),
        Ok(()) => return Ok(()),
    };
    Err(Failure::text(Kind::CannotWrite, text))
}

/// Returns the number of columns to wrap text to: the terminal's, but from 36 to 92.
fn width() -> usize {
    textwrap::termwidth().clamp(36, 92)
}

/// Returns the candidate most similar to `text`, the first of equals, or `None` if none is similar enough.
fn nearest<'c>(text: &str, candidates: impl IntoIterator<Item = &'c str>) -> Option<&'c str> {
    const ALIKE: f64 = 0.5;
    let wanted = text.trim().to_lowercase();
    let likeness = |candidate: &str| {
        let candidate = candidate.to_lowercase();
        let part = wanted.chars().count() > 2 && candidate.contains(&wanted);
        if part { 1.0 } else { tallywatt::nearest::likeness(&wanted, &candidate) }
    };
    tallywatt::nearest::nearest(candidates, ALIKE, likeness)
}

/// Formats a command as a user types it, with quotation marks around words that need them.
fn command(words: &[&str]) -> String {
    let plain = |c: char| c.is_alphanumeric() || "-_./:\\".contains(c);
    let quoted = |word: &&str| match word {
        word if word.chars().all(plain) => (*word).to_owned(),
        word if cfg!(windows) => format!("\"{word}\""),
        word => format!("'{}'", word.replace('\'', r"'\''")),
    };
    words.iter().map(quoted).collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    #[test]
    fn what_is_alike_is_proposed() {
        let near = |text| super::nearest(text, ["AIR001", "AIR002", "carbon-monoxide-distance"]);
        assert_eq!(near("AIR01"), Some("AIR001"));
        assert_eq!(near("air02"), Some("AIR002"));
        assert_eq!(near("monoxide"), Some("carbon-monoxide-distance"));
        assert_eq!(near("carbon-monoxid-distance"), Some("carbon-monoxide-distance"));
        assert_eq!(near("zebra"), None);
        assert_eq!(near(""), None);
    }

    /// A suggested command can be typed exactly as it is shown.
    #[cfg(unix)]
    #[test]
    fn a_command_is_quoted_where_it_must_be() {
        let told = super::command(&["tallywatt", "check", "/home/a b/it's.toml", "x-1.toml"]);
        assert_eq!(told, r"tallywatt check '/home/a b/it'\''s.toml' x-1.toml");
    }
}

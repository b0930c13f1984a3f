//! The shell: the only part of the program that reads the environment, prints and exits.
//!
//! A command returns what it has to say and an exit status, or a [`Failure`] whose kind decides
//! the status. Nothing in here computes a number that reaches a label.

mod args;
mod ask;
mod check;
mod demo;
mod explain;
mod failure;
mod may;
mod mend;
mod prints;
mod words;

use std::io::Write as _;
use std::process::ExitCode;

use clap::FromArgMatches as _;
use tallywatt::words::{Units, Words};

use args::{Arguments, Command};
use failure::{Failure, Kind};

/// What a command leaves behind when it went well.
struct Done {
    /// For standard output, all at once.
    output: String,
    /// Exit status.
    status: u8,
}

impl Done {
    fn saying(output: String) -> Self {
        Self { output, status: 0 }
    }
}

/// Runs the program.
pub(crate) fn run() -> ExitCode {
    let words = readers_words();
    let arguments = match args::command(&words).try_get_matches() {
        Ok(matches) => Arguments::from_arg_matches(&matches),
        Err(error) => Err(error),
    };
    let arguments = match arguments {
        Ok(arguments) => arguments,
        Err(error) => {
            // Help and version are asked for, and are no mistake.
            let asked = !error.use_stderr();
            let _ = error.print();
            return if asked {
                ExitCode::SUCCESS
            } else {
                Kind::Usage.into()
            };
        }
    };
    match dispatch(&arguments, &words) {
        Ok(done) => match say(&done.output) {
            Ok(()) => ExitCode::from(done.status),
            Err(failure) => failure.report(&words),
        },
        Err(failure) => failure.report(&words),
    }
}

fn dispatch(arguments: &Arguments, words: &Words) -> Result<Done, Failure> {
    match &arguments.command {
        None => ask::interview(&arguments.how, None, words),
        Some(Command::Ask(ask)) => ask::interview(&ask.how, Some(&ask.plan), words),
        Some(Command::Demo(arguments)) => demo::run(arguments, words),
        Some(Command::Check(arguments)) => check::run(arguments, words),
        Some(Command::Print(arguments)) => prints::run(arguments, words),
        Some(Command::May(arguments)) => may::run(arguments, words),
        Some(Command::Mend(arguments)) => mend::run(arguments, words),
        Some(Command::Explain(arguments)) => explain::run(arguments, words),
        Some(Command::Words(arguments)) => words::run(arguments, words),
    }
}

/// The reader's words. There is one language so far; its units follow the region.
fn readers_words() -> Words {
    Words::new("en", Units::Customary).unwrap_or_else(Words::english)
}

/// Writes to standard output. A reader that has seen enough (`| head`) is no mistake.
fn say(text: &str) -> Result<(), Failure> {
    let mut out = anstream::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => {
            Err(Failure::new(Kind::CannotWrite, error))
        }
        _ => Ok(()),
    }
}

/// Columns to write in: the terminal's, within what is comfortable to read.
fn width() -> usize {
    textwrap::termwidth().clamp(36, 92)
}

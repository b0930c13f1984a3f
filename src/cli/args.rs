//! The arguments. Their help is in the language files, like every other sentence.

use std::path::PathBuf;

use clap::{Args, CommandFactory as _, Parser, Subcommand, ValueEnum};
use tallywatt::words;

#[derive(Debug, Parser)]
#[command(name = "tallywatt", version, disable_help_subcommand = true)]
#[command(args_conflicts_with_subcommands = true)]
pub(super) struct Arguments {
    #[command(flatten)]
    pub(super) how: How,
    #[command(subcommand)]
    pub(super) command: Option<Command>,
}

#[derive(Debug, Subcommand)]
pub(super) enum Command {
    Ask(Ask),
    Demo(Demo),
    Check(Check),
    Print(Print),
    May(May),
    Mend(Mend),
    Explain(Explain),
    Words(Words),
}

/// How the questions are asked.
#[derive(Debug, Args)]
pub(super) struct How {
    #[arg(long, value_name = "FILE")]
    pub(super) answers: Option<PathBuf>,
    #[arg(long)]
    pub(super) plain: bool,
}

#[derive(Debug, Args)]
pub(super) struct Ask {
    #[arg(value_name = "PLAN")]
    pub(super) plan: PathBuf,
    #[command(flatten)]
    pub(super) how: How,
}

#[derive(Debug, Args)]
pub(super) struct Demo {
    #[arg(long)]
    pub(super) fixed: bool,
    #[arg(long, value_name = "DIR")]
    pub(super) into: Option<PathBuf>,
}

#[derive(Debug, Args)]
pub(super) struct Check {
    #[arg(required = true, value_name = "PLAN")]
    pub(super) plans: Vec<PathBuf>,
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(super) format: Format,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum Format {
    Text,
    Json,
}

#[derive(Debug, Args)]
pub(super) struct Print {
    #[arg(value_name = "PLAN")]
    pub(super) plan: PathBuf,
    #[arg(long, value_name = "DIR")]
    pub(super) into: PathBuf,
    #[command(flatten)]
    pub(super) paper: PaperOptions,
}

#[derive(Debug, Args)]
pub(super) struct PaperOptions {
    #[arg(long, value_enum, default_value_t = Paper::Letter)]
    pub(super) paper: Paper,
    #[arg(long, value_name = "NAME")]
    pub(super) stock: Option<String>,
    #[arg(long, value_name = "N", default_value_t = 1, value_parser = clap::value_parser!(u32).range(1..))]
    pub(super) start_at: u32,
    #[arg(long, value_name = "N", default_value_t = 1, value_parser = clap::value_parser!(u32).range(1..=1000))]
    pub(super) copies: u32,
    #[arg(long, value_name = "RIGHT, DOWN", value_parser = offset, allow_hyphen_values = true)]
    pub(super) offset: Option<tallywatt::print::Offset>,
    #[arg(long)]
    pub(super) alignment: bool,
    #[arg(long, value_enum, value_name = "PRINT")]
    pub(super) only: Vec<Only>,
    #[arg(long, value_enum, default_value_t = CardSize::Sheet)]
    pub(super) card: CardSize,
    #[arg(long, value_enum, default_value_t = Ink::Colour)]
    pub(super) ink: Ink,
    #[arg(long, value_name = "YYYY-MM-DD", value_parser = date)]
    pub(super) date: Option<tallywatt::print::Date>,
    #[arg(long)]
    pub(super) png: bool,
}

fn date(text: &str) -> Result<tallywatt::print::Date, &'static str> {
    // The argument parser says which argument and which value; the form stands in its name.
    text.parse().map_err(|()| "YYYY-MM-DD")
}

fn offset(text: &str) -> Result<tallywatt::print::Offset, &'static str> {
    text.parse().map_err(|()| "\"1 mm, -0.5 mm\"")
}

/// How large the card is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum CardSize {
    Sheet,
    Half,
    Pocket,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum Ink {
    Colour,
    Black,
}

/// One of the prints.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum Only {
    Labels,
    Card,
    Cautions,
    Worksheet,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum Paper {
    Letter,
    A4,
}

#[derive(Debug, Args)]
pub(super) struct May {
    #[arg(value_name = "PLAN")]
    pub(super) plan: PathBuf,
    #[arg(required = true, value_name = "LOAD")]
    pub(super) loads: Vec<String>,
    #[arg(long = "while", value_name = "LOAD", num_args = 1..)]
    pub(super) r#while: Vec<String>,
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(super) format: Format,
}

#[derive(Debug, Args)]
pub(super) struct Mend {
    #[arg(value_name = "PLAN")]
    pub(super) plan: PathBuf,
    #[arg(long, value_name = "NEW.toml")]
    pub(super) into: Option<PathBuf>,
    #[arg(long)]
    pub(super) warnings: bool,
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(super) format: Format,
}

#[derive(Debug, Args)]
pub(super) struct Explain {
    #[arg(value_name = "CODE")]
    pub(super) code: Option<String>,
}

#[derive(Debug, Args)]
pub(super) struct Words {
    #[arg(value_name = "LANGUAGE")]
    pub(super) languages: Vec<String>,
    #[arg(long)]
    pub(super) check: bool,
    #[arg(long, value_name = "DIR")]
    pub(super) from: Option<PathBuf>,
}

/// The parser, with its words in. An argument without a message is a fault that a test finds.
pub(super) fn command(words: &words::Words) -> clap::Command {
    let mut command = Arguments::command()
        .about(words.text("cli-about"))
        .after_help(words.text("cli-after"))
        .subcommand_help_heading(words.text("cli-heading-commands"))
        .disable_help_flag(true)
        .disable_version_flag(true)
        .mut_arg("answers", |arg| {
            arg.help(words.text("cli-arg-answers"))
                .help_heading(words.text("cli-heading-options"))
        })
        .mut_arg("plain", |arg| {
            arg.help(words.text("cli-arg-plain"))
                .help_heading(words.text("cli-heading-options"))
        })
        .arg(help_flag(words))
        .arg(
            clap::Arg::new("version")
                .long("version")
                .short('V')
                .action(clap::ArgAction::Version)
                .help(words.text("cli-arg-version"))
                .help_heading(words.text("cli-heading-options")),
        );
    for sub in command.get_subcommands_mut() {
        let name = sub.get_name().to_owned();
        let ids: Vec<clap::Id> = sub
            .get_arguments()
            .map(|arg| arg.get_id().clone())
            .collect();
        let mut filled = std::mem::take(sub)
            .about(words.text(&format!("cli-{name}")))
            .disable_help_flag(true)
            .arg(help_flag(words));
        for id in ids {
            let key = format!("cli-{name}-{}", id.as_str().replace('_', "-"));
            filled = filled.mut_arg(id.as_str(), |arg| {
                let heading = if arg.is_positional() {
                    "cli-heading-arguments"
                } else {
                    "cli-heading-options"
                };
                arg.help(words.text(&key)).help_heading(words.text(heading))
            });
        }
        *sub = filled;
    }
    command
}

fn help_flag(words: &words::Words) -> clap::Arg {
    clap::Arg::new("help")
        .long("help")
        .short('h')
        .action(clap::ArgAction::Help)
        .help(words.text("cli-arg-help"))
        .help_heading(words.text("cli-heading-options"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_argument_has_words() {
        let words = words::Words::english();
        command(&words).debug_assert();
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

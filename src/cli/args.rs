//! The arguments. Their help is in the language files, like every other sentence.

use std::path::PathBuf;

use clap::{Args, CommandFactory as _, Parser, Subcommand, ValueEnum};
use tallywatt::words;

#[derive(Debug, Parser)]
#[command(name = "tallywatt", version, disable_help_subcommand = true)]
pub(super) struct Arguments {
    #[command(flatten)]
    pub(super) how: How,
    /// Taken from the arguments before they are parsed; here for its help.
    #[arg(long, global = true, display_order = 900, value_name = "LANGUAGE")]
    pub(super) language: Option<String>,
    /// Likewise.
    #[arg(long, global = true, display_order = 902, value_enum)]
    pub(super) units: Option<UnitsName>,
    #[arg(long, global = true, display_order = 901, value_name = "LANGUAGE", value_delimiter = ',')]
    pub(super) print_language: Vec<String>,
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
    Learned(Learned),
    Reprint(Reprint),
    Templates(Templates),
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

impl How {
    /// Whether anything was said about it.
    pub(super) const fn given(&self) -> bool {
        self.answers.is_some() || self.plain
    }
}

/// Feet or metres.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum UnitsName {
    Us,
    Metric,
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
    #[arg(long, conflicts_with = "format")]
    pub(super) long: bool,
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
    #[arg(long, value_name = "DIR")]
    pub(super) templates: Option<PathBuf>,
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
    Phone,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum Ink {
    #[value(name = "color", alias = "colour")]
    Colour,
    Black,
}

/// One of the prints.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum Only {
    Labels,
    Card,
    Cautions,
    Look,
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
pub(super) struct Learned {
    #[arg(value_name = "PLAN")]
    pub(super) plan: PathBuf,
    #[arg(required = true, value_name = "WORDS")]
    pub(super) words: Vec<String>,
    #[arg(long, value_name = "YYYY-MM-DD", value_parser = date)]
    pub(super) date: Option<tallywatt::print::Date>,
}

#[derive(Debug, Args)]
pub(super) struct Reprint {
    #[arg(value_name = "OLD")]
    pub(super) old: PathBuf,
    #[arg(value_name = "NEW")]
    pub(super) new: PathBuf,
}

#[derive(Debug, Args)]
pub(super) struct Templates {
    #[arg(long, value_name = "DIR")]
    pub(super) into: PathBuf,
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
        .mut_args(|arg| spoken(arg, "arg", words))
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
        // Under a heading of one's own the parser sorts them by their names.
        let mut order = 0;
        *sub = std::mem::take(sub)
            .about(words.text(&format!("cli-{name}")))
            .disable_help_flag(true)
            .mut_args(|arg| {
                order += 1;
                let positional = arg.is_positional();
                let arg = spoken(arg, &name, words);
                if positional { arg.display_order(order) } else { arg }
            })
            .arg(help_flag(words));
    }
    // The parser's own word for it is English.
    let usage =
        format!("{{about-with-newline}}\n{} {{usage}}\n\n{{all-args}}{{after-help}}", words.text("cli-heading-usage"));
    command.build();
    in_all(command, &|command| {
        let short = command.clone().render_usage().to_string();
        let line = short
            .split_once(": ")
            .map_or(short.as_str(), |(_, line)| line)
            .replace("[OPTIONS]", &words.text("cli-value-options"))
            .replace("[COMMAND]", &words.text("cli-value-command"));
        command.override_usage(line.trim().to_owned()).help_template(usage.clone())
    })
}

/// The command and each of its subcommands, changed.
fn in_all(mut command: clap::Command, change: &dyn Fn(clap::Command) -> clap::Command) -> clap::Command {
    for sub in command.get_subcommands_mut() {
        // What every command takes stands in the help of the whole, once.
        let own = std::mem::take(sub).mut_args(|arg| {
            let everywhere = arg.is_global_set();
            arg.hide(everywhere)
        });
        *sub = change(own);
    }
    change(command)
}

/// An argument with its help, what stands for its value, and the values it can have, which the
/// parser would put in its own words.
fn spoken(arg: clap::Arg, of: &str, words: &words::Words) -> clap::Arg {
    let key = format!("cli-{of}-{}", arg.get_id().as_str().replace('_', "-"));
    let heading = if arg.is_positional() { "cli-heading-arguments" } else { "cli-heading-options" };
    let mut help = words.text(&key);
    let takes = arg.get_action().takes_values();
    let possible = arg.get_possible_values();
    if takes && !possible.is_empty() {
        let names: Vec<&str> = possible.iter().map(clap::builder::PossibleValue::get_name).collect();
        help.push(' ');
        help.push_str(&words.with("cli-values", [("values", names.join(", ").into())]));
    }
    if takes && let [value] = arg.get_default_values() {
        let value = value.to_string_lossy().into_owned();
        help.push(' ');
        help.push_str(&words.with("cli-default", [("value", value.into())]));
    }
    let named = arg.get_value_names().and_then(|names| names.first());
    let named = named.filter(|_| takes).map(|name| {
        let name = name.to_lowercase().replace([',', '.', ' '], "-");
        words.text(&format!("cli-value-{}", name.replace("--", "-")))
    });
    let arg = match named {
        Some(name) => arg.value_name(name),
        None => arg,
    };
    let arg = arg.help(help).help_heading(words.text(heading));
    if takes { arg.hide_default_value(true).hide_possible_values(true) } else { arg }
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

    /// In twice as long words that no program has of its own.
    #[test]
    fn all_of_the_help_comes_from_a_language_folder() {
        let words = words::language::marked(2);
        let all = command(&words);
        // What is typed, and is the same in every language.
        let mut known = "tallywatt".to_owned();
        for each in [&all].into_iter().chain(all.get_subcommands()) {
            known = format!("{known} {}", each.get_name());
            for arg in each.get_arguments() {
                let values = arg.get_possible_values();
                let values = values.iter().map(|value| value.get_name().to_owned());
                let values: Vec<String> = values.collect();
                let long = arg.get_long().unwrap_or_default();
                known = format!("{known} {long} {}", values.join(" "));
            }
        }
        for mut each in [&all].into_iter().chain(all.get_subcommands()).cloned() {
            let help = each.render_long_help().to_string();
            let found = words::language::unmarked(&help, &known);
            assert!(found.is_empty(), "{found:?} in {help}");
        }
        for wrong in [
            &["tallywatt", "chek"][..],
            &["tallywatt", "check"],
            &["tallywatt", "check", "--langage"],
            &["tallywatt", "check", "a", "--format", "xml"],
            &["tallywatt", "print", "a", "--into"],
            &["tallywatt", "print", "a", "--into", "b", "--copies", "0"],
            &["tallywatt", "print", "a", "--into", "b", "--into", "c"],
            &["tallywatt", "check", "a", "--format", "text", "--format", "json"],
        ] {
            let error = command(&words).try_get_matches_from(wrong).expect_err("a wrong call");
            let said = super::super::usage::failure(&error, &words).shown(&words);
            let known = format!("{known} {} PLAN", wrong.join(" "));
            let found = words::language::unmarked(&said, &known);
            assert!(found.is_empty(), "{found:?} in {said}");
        }
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

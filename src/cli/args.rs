//! Command-line arguments. Their help is in the language files, like every other message.

use std::fmt::Write as _;
use std::path::PathBuf;

use clap::{Args, CommandFactory as _, Parser, Subcommand, ValueEnum};
use tallywatt::words;

use super::clock;

#[derive(Debug, Parser)]
#[command(name = "tallywatt", version, disable_help_subcommand = true)]
pub(super) struct Arguments {
    #[command(flatten)]
    pub(super) how: How,
    /// Read before the arguments are parsed. Declared here for its help.
    #[arg(long, global = true, display_order = 900, value_name = "LANGUAGE")]
    pub(super) language: Option<String>,
    /// Also read before the arguments are parsed.
    #[arg(long, global = true, display_order = 902, value_enum)]
    pub(super) units: Option<UnitsName>,
    #[arg(long, global = true, display_order = 901, value_name = "LANGUAGE", value_delimiter = ',')]
    pub(super) print_language: Vec<String>,
    #[arg(long, global = true, display_order = 903, value_enum, value_name = "WHEN", default_value_t = Color::Auto)]
    pub(super) color: Color,
    #[command(subcommand)]
    pub(super) command: Option<Command>,
}

/// Whether the output is colored.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum Color {
    Auto,
    Always,
    Never,
}

impl From<Color> for anstream::ColorChoice {
    fn from(color: Color) -> Self {
        match color {
            Color::Auto => Self::Auto,
            Color::Always => Self::Always,
            Color::Never => Self::Never,
        }
    }
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
    Help(Help),
}

/// Options for how the interview asks its questions.
#[derive(Debug, Args)]
pub(super) struct How {
    #[arg(long, value_name = "FILE")]
    pub(super) answers: Option<PathBuf>,
    #[arg(long)]
    pub(super) plain: bool,
}

impl How {
    /// Whether any of these options was given.
    pub(super) const fn given(&self) -> bool {
        self.answers.is_some() || self.plain
    }
}

/// Feet or meters.
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
    #[arg(long, value_enum, value_name = "SIGNAL")]
    pub(super) fail_on: Option<FailOn>,
}

/// The mildest signal that makes `check` exit with a nonzero status.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum FailOn {
    Danger,
    Warning,
    Caution,
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
    let today = text.eq_ignore_ascii_case("today").then(clock::today);
    // The parser names the argument and the value. This is the expected format.
    today.as_deref().unwrap_or(text).parse().map_err(|()| "YYYY-MM-DD")
}

fn offset(text: &str) -> Result<tallywatt::print::Offset, &'static str> {
    text.parse().map_err(|()| "\"1 mm, -0.5 mm\"")
}

/// The size of the card.
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

/// A document to print.
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

#[derive(Debug, Args)]
pub(super) struct Help {
    #[arg(value_name = "COMMAND")]
    pub(super) command: Option<String>,
}

/// Example calls for the help, by command. Those under the empty name are for the program itself. Tests run all of them
/// on the demo plan.
pub(super) const EXAMPLES: [(&str, &[&str]); 13] = [
    ("", &["tallywatt demo", "tallywatt check plan.toml", "tallywatt print plan.toml --into prints"]),
    ("ask", &["tallywatt ask plan.toml", "tallywatt ask plan.toml --answers answers.txt"]),
    ("demo", &["tallywatt demo", "tallywatt demo --fixed --into example"]),
    (
        "check",
        &[
            "tallywatt check plan.toml",
            "tallywatt check --long plan.toml",
            "tallywatt check --fail-on danger --format json plan.toml old.toml",
        ],
    ),
    (
        "print",
        &[
            "tallywatt print plan.toml --into prints",
            "tallywatt print plan.toml --into labels --stock letter-30 --start-at 4",
            "tallywatt print plan.toml --into card --only card --print-language en,es",
        ],
    ),
    ("may", &["tallywatt may plan.toml kettle", "tallywatt may plan.toml kettle lamps --while cooler"]),
    ("mend", &["tallywatt mend plan.toml", "tallywatt mend plan.toml --warnings --into mended.toml"]),
    ("learned", &["tallywatt learned plan.toml front tripped at 13 A", "tallywatt learned plan.toml tents hot"]),
    ("reprint", &["tallywatt reprint old.toml plan.toml"]),
    ("templates", &["tallywatt templates --into templates"]),
    ("explain", &["tallywatt explain", "tallywatt explain AIR001"]),
    ("words", &["tallywatt words es --check"]),
    ("help", &["tallywatt help check"]),
];

/// Returns the exit statuses of a command with their message keys: its own, then those that any command can fail with.
fn statuses(name: &str) -> impl Iterator<Item = (u8, &'static str)> {
    let well: &[(u8, &str)] = match name {
        "check" | "learned" => &[(0, "clear"), (1, "warning"), (2, "danger")],
        "mend" => &[(0, "clear"), (1, "warning"), (2, "danger-or-lost")],
        "may" => &[(0, "yes"), (1, "no")],
        "words" => &[(0, "right"), (1, "wrong")],
        _ => &[(0, "done")],
    };
    let not = [(64, "usage"), (65, "plan"), (73, "write"), (130, "stopped")];
    well.iter().copied().chain(not)
}

/// Returns the part of the long help below the options: examples and exit statuses.
fn more(name: &str, words: &words::Words) -> String {
    let mut out = words.text("cli-heading-examples");
    for call in EXAMPLES.iter().filter(|(command, _)| *command == name).flat_map(|(_, calls)| *calls) {
        let _ = write!(out, "\n  {call}");
    }
    let _ = write!(out, "\n\n{}", words.text("cli-heading-status"));
    for (status, key) in statuses(name) {
        let _ = write!(out, "\n  {status:<3}  {}", words.text(&format!("cli-status-{key}")));
    }
    out
}

/// Builds the parser with its texts in the reader's language. `whole` selects the long help. A test finds arguments
/// without a message.
pub(super) fn command(words: &words::Words, whole: bool) -> clap::Command {
    let below = |name: &str| {
        let help =
            ["tallywatt", name, "--help"].into_iter().filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ");
        if whole { more(name, words) } else { words.with("cli-more", [("help", help.into())]) }
    };
    let mut command = Arguments::command()
        .about(words.text("cli-about"))
        .after_help(format!("{}\n\n{}", below(""), words.text("cli-after")))
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
        // Under a custom heading, the parser would sort positional arguments by name.
        let mut order = 0;
        *sub = std::mem::take(sub)
            .about(words.text(&format!("cli-{name}")))
            .after_help(below(&name))
            .disable_help_flag(true)
            .mut_args(|arg| {
                order += 1;
                let positional = arg.is_positional();
                let arg = spoken(arg, &name, words);
                if positional { arg.display_order(order) } else { arg }
            })
            .arg(help_flag(words));
    }
    // The parser's own heading is in English.
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

/// Applies `change` to the command and each of its subcommands.
fn in_all(mut command: clap::Command, change: &dyn Fn(clap::Command) -> clap::Command) -> clap::Command {
    for sub in command.get_subcommands_mut() {
        // Global options appear once, in the help of the program itself.
        let own = std::mem::take(sub).mut_args(|arg| {
            let everywhere = arg.is_global_set();
            arg.hide(everywhere)
        });
        *sub = change(own);
    }
    change(command)
}

/// Sets the help, the value name and the possible values of an argument, which the parser would word in English.
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
        .action(clap::ArgAction::HelpShort)
        .help(words.text("cli-arg-help"))
        .help_heading(words.text("cli-heading-options"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every command has examples, and every example belongs to a command.
    #[test]
    fn every_command_has_examples() {
        let words = words::Words::english();
        let all = command(&words, true);
        let names = all.get_subcommands().map(clap::Command::get_name);
        let shown = EXAMPLES.iter().map(|(name, _)| *name).filter(|name| !name.is_empty());
        assert_eq!(names.collect::<std::collections::BTreeSet<_>>(), shown.collect());
    }

    /// No message in any language names an option that does not exist.
    #[test]
    fn every_option_that_is_told_of_is_there() {
        let all = command(&words::Words::english(), true);
        let options = |command: &clap::Command| -> Vec<String> {
            command.get_arguments().filter_map(|arg| arg.get_long().map(str::to_owned)).collect()
        };
        let known: Vec<String> = all.get_subcommands().chain([&all]).flat_map(options).collect();
        let i18n = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("i18n");
        let mut seen = 0;
        for tag in words::Library::built_in().folders().map(|(tag, _)| tag) {
            for (file, text) in tallywatt::plan::store::read_folder(&i18n.join(tag), "ftl").unwrap() {
                for (at, _) in text.match_indices("--") {
                    let option = &text[at + 2..];
                    let end = option.find(|c: char| !c.is_ascii_lowercase() && c != '-').unwrap_or(option.len());
                    let option = &option[..end];
                    // Longer runs of dashes belong to drawings.
                    let named = option.starts_with(|c: char| c.is_ascii_lowercase());
                    seen += usize::from(named);
                    assert!(!named || known.iter().any(|it| it == option), "{tag}/{file}: --{option}");
                }
            }
        }
        assert!(seen > 40, "{seen}");
    }

    #[test]
    fn every_argument_has_words() {
        let words = words::Words::english();
        command(&words, true).debug_assert();
        assert_eq!(words.faults(), Vec::<String>::new());
    }

    /// Renders the help in a marked language with every sentence doubled, to find words that come from no language
    /// folder.
    #[test]
    fn all_of_the_help_comes_from_a_language_folder() {
        let words = words::language::marked(2);
        let all = command(&words, true);
        // What users type is the same in every language.
        let calls = EXAMPLES.iter().flat_map(|(_, calls)| *calls).copied();
        let mut known = calls.collect::<Vec<_>>().join(" ");
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
            let help = each.render_help().to_string();
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
            let error = command(&words, true).try_get_matches_from(wrong).expect_err("a wrong call");
            let said = super::super::usage::failure(&error, wrong, &words).shown(&words);
            let known = format!("{known} {} PLAN", wrong.join(" "));
            let found = words::language::unmarked(&said, &known);
            assert!(found.is_empty(), "{found:?} in {said}");
        }
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

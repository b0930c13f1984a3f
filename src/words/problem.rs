//! What is wrong with a plan file, for people: every problem with its line and what would be
//! right. The words are in `plan.ftl`.

use std::ops::Range;

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{
    AnnotationKind, Group, Level, Origin, Renderer, Snippet, normalize_untrusted_str,
};
use fluent_bundle::FluentValue;

use super::{Show, Words};
use crate::plan::store::{Fault, StoreError};
use crate::plan::{FORMAT, Problem, ProblemKind, Problems, hides};

/// How problems are shown.
#[derive(Clone, Copy, Debug)]
pub struct Look {
    /// With colour and line-drawing characters, or with neither.
    pub coloured: bool,
    /// How many columns there are.
    pub width: usize,
}

impl Default for Look {
    fn default() -> Self {
        Self {
            coloured: false,
            width: 100,
        }
    }
}

/// The most problems that are shown. Whoever has more has another file in hand than they think.
const MOST_SHOWN: usize = 40;

/// A line longer than this, in bytes, is named but not shown.
const LONGEST_LINE: usize = 2000;

/// Everything that is wrong with the text of a plan file, ending in a line that counts it.
pub fn render(words: &Words, path: &str, text: &str, problems: &Problems, look: Look) -> String {
    let renderer = if look.coloured {
        Renderer::styled().decor_style(DecorStyle::Unicode)
    } else {
        Renderer::plain()
    };
    let renderer = renderer.term_width(look.width.max(40));
    let text = &disarmed(text);
    let mut out = String::new();
    for problem in problems.0.iter().take(MOST_SHOWN) {
        let spoken = speak(words, &problem.kind);
        let group = group(words, path, text, problem, &spoken);
        out.push_str(&renderer.render(&[group]));
        out.push_str("\n\n");
    }
    let count = problems.0.len();
    if count > MOST_SHOWN {
        out.push_str(&words.with("plan-more", [("count", (count - MOST_SHOWN).into())]));
        out.push('\n');
    }
    out.push_str(&words.with(
        "plan-nothing-done",
        [("count", count.into()), ("path", path.to_owned().into())],
    ));
    out.push('\n');
    out
}

/// The text with a sign in the place of each that hides, byte for byte as long, so that problems
/// stand where they stood. The renderer does it to controls, and not to all marks of direction.
fn disarmed(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c.len_utf8() {
            2 if hides(c) && !c.is_control() => out.push_str("??"),
            3 if hides(c) => out.push('\u{fffd}'),
            _ => out.push(c),
        }
    }
    out
}

/// What is wrong with a file or folder, and what to do, in two lines.
pub fn store(words: &Words, error: &StoreError) -> String {
    let reason = match &error.fault {
        Fault::System(error) => error.to_string(),
        _ => String::new(),
    };
    let line = match error.fault {
        Fault::NotText { line } => line,
        _ => 0,
    };
    let args = || {
        [
            ("path", error.path.display().to_string().into()),
            ("reason", reason.clone().into()),
            ("line", line.to_string().into()),
        ]
    };
    let title = words.with(error.key(), args());
    let help = words.with(&format!("{}.help", error.key()), args());
    format!("{title}\n{help}\n")
}

/// A problem in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ProblemText {
    /// What was found.
    pub title: String,
    /// What would be right.
    pub help: String,
}

/// One problem in words, without its place.
pub fn speak(words: &Words, kind: &ProblemKind) -> ProblemText {
    let (key, near, args) = args(words, kind);
    let help = if near { "help-near" } else { "help" };
    let args = || args.iter().map(|(name, value)| (*name, value.clone()));
    ProblemText {
        title: words.with(&key, args()),
        help: words.with(&format!("{key}.{help}"), args()),
    }
}

fn group<'a>(
    words: &Words,
    path: &'a str,
    text: &'a str,
    problem: &Problem,
    spoken: &ProblemText,
) -> Group<'a> {
    let group = Level::ERROR
        .with_name(words.text("plan-problem"))
        .primary_title(spoken.title.clone())
        .elements(Vec::<Origin<'a>>::new());
    let group = match window(text, &problem.span) {
        Place::File => group.element(Origin::path(path)),
        Place::Line { line, column } => {
            group.element(Origin::path(path).line(line).char_column(column))
        }
        Place::Shown(shown) => {
            let mut snippet = Snippet::source(&text[shown.lines.clone()])
                .path(path)
                .line_start(shown.line)
                .annotation(AnnotationKind::Primary.span(shown.span));
            if let ProblemKind::DuplicateId { first, .. } = &problem.kind {
                // Shown only where it falls into the same lines; the title names its line.
                let within = shown.lines.start <= first.start && first.end <= shown.lines.end;
                if within {
                    let first = first.start - shown.lines.start..first.end - shown.lines.start;
                    snippet = snippet.annotation(
                        AnnotationKind::Context
                            .span(first)
                            .label(words.text("plan-first-here")),
                    );
                }
            }
            group.element(snippet)
        }
    };
    group.element(
        Level::HELP
            .with_name(words.text("plan-help"))
            .message(normalize_untrusted_str(&spoken.help)),
    )
}

enum Place {
    /// The file as a whole.
    File,
    /// A place in a line too long to show.
    Line { line: usize, column: usize },
    /// Lines to show.
    Shown(Shown),
}

struct Shown {
    /// The bytes of the lines.
    lines: Range<usize>,
    /// The number of the first of them, counting from one.
    line: usize,
    /// What to mark, counting from the start of the lines.
    span: Range<usize>,
}

/// The line of a span and the one before it, which is often the heading.
fn window(text: &str, span: &Range<usize>) -> Place {
    if span.end == 0 || text.get(span.clone()).is_none() {
        return Place::File;
    }
    let line_start = text[..span.start].rfind('\n').map_or(0, |at| at + 1);
    let line_end = text[span.start..]
        .find('\n')
        .map_or(text.len(), |at| span.start + at);
    let line = text[..line_start].matches('\n').count() + 1;
    if line_end - line_start > LONGEST_LINE {
        let column = text[line_start..span.start].chars().count() + 1;
        return Place::Line { line, column };
    }
    let before = text[..line_start.saturating_sub(1)]
        .rfind('\n')
        .map_or(0, |at| at + 1);
    let start = if line_start - before > LONGEST_LINE {
        line_start
    } else {
        before
    };
    Place::Shown(Shown {
        lines: start..line_end,
        line: if start < line_start { line - 1 } else { line },
        span: span.start - start..span.end.min(line_end).max(span.start) - start,
    })
}

type Args = Vec<(&'static str, FluentValue<'static>)>;

/// The message key, whether there is a guess at what was meant, and the values.
// Long because there is one arm for each kind; split, it would be harder to see that none lacks.
#[allow(clippy::too_many_lines)]
fn args(words: &Words, kind: &ProblemKind) -> (String, bool, Args) {
    let mut key = kind.key().to_owned();
    let mut near = false;
    let mut args: Args = Vec::new();
    let mut set = |name: &'static str, value: &str| {
        args.push((name, FluentValue::from(value.to_owned())));
    };
    let any = |items: &[&str]| any_of(words, items);
    match kind {
        ProblemKind::Syntax(_) | ProblemKind::Empty | ProblemKind::NoFormat => {}
        ProblemKind::NewerFormat { found } | ProblemKind::NoSuchFormat { found } => {
            set("found", found);
            set("ours", &FORMAT.to_string());
        }
        ProblemKind::MissingKey { key, example } => {
            set("key", key);
            set("example", example);
        }
        ProblemKind::MissingTable { table } => set("table", table),
        ProblemKind::UnknownKey {
            found,
            nearest,
            allowed,
            heading,
        } => {
            if *heading {
                "plan-unknown-heading".clone_into(&mut key);
            }
            near = nearest.is_some();
            set("found", found);
            set("nearest", nearest.unwrap_or_default());
            set("allowed", &words.list(allowed));
        }
        ProblemKind::WrongType { key, found, wanted } => {
            let example = example_of(key);
            near = example.is_some();
            set("key", key);
            set("example", example.unwrap_or_default());
            set("found", &words.text(&format!("plan-type-{}", found.code())));
            set(
                "wanted",
                &words.text(&format!("plan-type-{}", wanted.code())),
            );
        }
        ProblemKind::UnknownNotAllowed { key, optional } => {
            near = *optional;
            set("key", key);
        }
        ProblemKind::EmptyText { key } => set("key", key),
        ProblemKind::BadText { key, most } => {
            set("key", key);
            set("most", &most.to_string());
        }
        ProblemKind::NoUnit {
            key,
            found,
            allowed,
        } => {
            let unit = allowed.first().copied().unwrap_or_default();
            set("key", key);
            set("found", found);
            set("allowed", &any(allowed));
            set("example", &format!("{found} {unit}"));
        }
        ProblemKind::UnknownUnit {
            key: of,
            found,
            allowed,
        } => {
            if allowed.contains(&"W") && found.to_ascii_uppercase().ends_with("VA") {
                "plan-volt-amperes".clone_into(&mut key);
            }
            set("key", of);
            set("found", found);
            set("allowed", &any(allowed));
        }
        ProblemKind::NoNumber {
            key: of,
            found,
            example,
        } => {
            if !example.contains(' ') {
                "plan-no-plain-number".clone_into(&mut key);
            }
            set("key", of);
            set("found", found);
            set("example", example);
        }
        ProblemKind::TwoReadings {
            key,
            found,
            decimals,
            thousands,
        } => {
            set("key", key);
            set("found", found);
            set("decimals", decimals);
            set("thousands", thousands);
        }
        ProblemKind::OutOfRange {
            key,
            found,
            least,
            most,
        } => {
            set("key", key);
            set("found", found);
            set("least", &words.amount(*least, Show::Exact));
            set("most", &words.amount(*most, Show::Exact));
        }
        ProblemKind::WireSize { found }
        | ProblemKind::MotorCode { found }
        | ProblemKind::NotALanguage { found } => set("found", found),
        ProblemKind::NotAChoice {
            key,
            found,
            nearest,
            allowed,
            or_unknown,
        } => {
            near = nearest.is_some();
            let mut choices = allowed.clone();
            if *or_unknown {
                choices.push("unknown");
            }
            set("key", key);
            set("found", found);
            set("nearest", nearest.unwrap_or_default());
            set("allowed", &any(&choices));
        }
        ProblemKind::UnknownShape {
            key,
            found,
            nearest,
            allowed,
        } => {
            near = nearest.is_some();
            let allowed: Vec<&str> = allowed.iter().map(String::as_str).collect();
            set("key", key);
            set("found", found);
            set("nearest", nearest.as_deref().unwrap_or_default());
            set("allowed", &any(&allowed));
        }
        ProblemKind::WrongHalf {
            key: of,
            found,
            meant,
            plug,
        } => {
            // A cord with blades at both ends kills, whoever wrote it down by mistake or not.
            match (*plug, *of) {
                (true, _) => {}
                (false, "ends") => "plan-two-plugs".clone_into(&mut key),
                (false, _) => "plan-wrong-half-receptacle".clone_into(&mut key),
            }
            set("key", of);
            set("found", found);
            set("meant", meant);
        }
        ProblemKind::BadId { found, nearest } => {
            near = nearest.is_some();
            set("found", found);
            set("nearest", nearest.as_deref().unwrap_or_default());
        }
        ProblemKind::DuplicateId { id, line, .. } => {
            set("id", id);
            set("line", &line.to_string());
        }
        ProblemKind::SetsId { id } => set("id", id),
        ProblemKind::UnknownReference {
            key: of,
            found,
            nearest,
        } => {
            if *of == "shares" {
                "plan-unknown-share".clone_into(&mut key);
            }
            near = nearest.is_some();
            set("key", of);
            set("found", found);
            set("nearest", nearest.as_deref().unwrap_or_default());
        }
        ProblemKind::NotAReceptacle {
            key,
            found,
            allowed,
        } => {
            near = !allowed.is_empty();
            let allowed: Vec<&str> = allowed.iter().map(String::as_str).collect();
            set("key", key);
            set("found", found);
            set("allowed", &words.list(&allowed));
        }
        ProblemKind::Loop { through } => {
            if through.len() == 1 {
                "plan-loop-self".clone_into(&mut key);
            }
            let through: Vec<&str> = through.iter().map(crate::plan::Id::as_str).collect();
            set("through", &words.list(&through));
        }
        ProblemKind::BadShare { found, allowed } => {
            near = !allowed.is_empty();
            let allowed: Vec<&str> = allowed.iter().map(String::as_str).collect();
            set("found", found);
            set("allowed", &any(&allowed));
        }
        ProblemKind::ShareDiffers { with } => set("with", with),
        ProblemKind::LessThan {
            key,
            found,
            other,
            least,
        } => {
            set("key", key);
            set("other", other);
            set("found", &words.amount(*found, Show::Exact));
            set("least", &words.amount(*least, Show::Exact));
        }
        ProblemKind::TwoDraws { first, second } => {
            set("first", first);
            set("second", second);
        }
        ProblemKind::PlaceForNoPlug { place, plug } => {
            set("place", place);
            set("plug", plug);
        }
        ProblemKind::BadHours { key, found } => {
            set("key", key);
            set("found", found);
        }
        ProblemKind::NoOutlets { part } => key = format!("{key}-{part}"),
        ProblemKind::TooMany { what, found, most } => {
            set("what", &words.text(&format!("{key}.{what}")));
            set("found", &found.to_string());
            set("most", &most.to_string());
        }
    }
    (key, near, args)
}

/// A line with this key, for keys whose values are more than one text or number.
fn example_of(key: &str) -> Option<&'static str> {
    Some(match key {
        "runtime" => r#"runtime = [{ load = "25 %", lasts = "8.5 h" }]"#,
        "noise" => r#"noise = { level = "58 dBA", at = "23 ft", load = "25 %" }"#,
        "motor" => r#"motor = { hp = "1/2", code = "G" }"#,
        "hours" => r#"hours = ["07:00-07:20", "19:00-19:20"]"#,
        "quiet_hours" => r#"quiet_hours = "22:00-06:00""#,
        "ends" => r#"ends = ["5-15R", "5-15R"]"#,
        "shape" => r#"shape = "5-20R""#,
        "plug" => r#"plug = "5-15P""#,
        "power_factor" => "power_factor = 0.8",
        _ => return None,
    })
}

/// "ft, m or in".
fn any_of(words: &Words, items: &[&str]) -> String {
    match items {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [first @ .., last] => words.with(
            "list-or",
            [
                ("first", first.join(&words.text("list-comma")).into()),
                ("last", (*last).into()),
            ],
        ),
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::plan::{Id, Syntax, Type};
    use crate::quantity::Amount;

    /// Every kind there is, with and without a guess at what was meant.
    #[allow(clippy::too_many_lines)]
    fn samples() -> Vec<ProblemKind> {
        let key = "running";
        let found = || "x".to_owned();
        let amount = || Amount::count(1);
        let id = |text| Id::new(text).unwrap();
        let mut all: Vec<ProblemKind> = [
            Syntax::DuplicateKey,
            Syntax::Unquoted,
            Syntax::BadString,
            Syntax::BadNumber,
            Syntax::NoEquals,
            Syntax::NoValue,
            Syntax::BadList,
            Syntax::BadInline,
            Syntax::BadHeading,
            Syntax::BadKey,
            Syntax::Extra,
            Syntax::TooDeep,
            Syntax::BadCharacter,
            Syntax::Other,
        ]
        .into_iter()
        .map(ProblemKind::Syntax)
        .collect();
        let types = [
            Type::Text,
            Type::Quantity,
            Type::Whole,
            Type::Number,
            Type::YesNo,
            Type::YesNoUnknown,
            Type::Date,
            Type::List,
            Type::Table,
            Type::Tables,
        ];
        for wanted in types {
            for key in ["noise", "id"] {
                all.push(ProblemKind::WrongType {
                    key,
                    found: wanted,
                    wanted,
                });
            }
        }
        for yes in [true, false] {
            let near = yes.then_some("y");
            let near_owned = yes.then(found);
            let some = if yes { vec![found(), found()] } else { vec![] };
            all.extend([
                ProblemKind::UnknownKey {
                    found: found(),
                    nearest: near,
                    allowed: vec!["a", "b"],
                    heading: false,
                },
                ProblemKind::UnknownKey {
                    found: found(),
                    nearest: near,
                    allowed: vec!["a", "b"],
                    heading: true,
                },
                ProblemKind::UnknownNotAllowed { key, optional: yes },
                ProblemKind::NotAChoice {
                    key,
                    found: found(),
                    nearest: near,
                    allowed: vec!["a", "b"],
                    or_unknown: yes,
                },
                ProblemKind::NotALanguage { found: found() },
                ProblemKind::UnknownShape {
                    key,
                    found: found(),
                    nearest: near_owned.clone(),
                    allowed: vec![found()],
                },
                ProblemKind::WrongHalf {
                    key,
                    found: found(),
                    meant: found(),
                    plug: yes,
                },
                ProblemKind::WrongHalf {
                    key: "ends",
                    found: found(),
                    meant: found(),
                    plug: false,
                },
                ProblemKind::BadId {
                    found: found(),
                    nearest: near_owned.clone(),
                },
                ProblemKind::UnknownReference {
                    key: "on",
                    found: found(),
                    nearest: near_owned.clone(),
                },
                ProblemKind::UnknownReference {
                    key: "shares",
                    found: found(),
                    nearest: near_owned,
                },
                ProblemKind::NotAReceptacle {
                    key,
                    found: found(),
                    allowed: some.clone(),
                },
                ProblemKind::BadShare {
                    found: found(),
                    allowed: some,
                },
            ]);
        }
        for what in ["parts", "loads"] {
            let (found, most) = (501, 500);
            all.push(ProblemKind::TooMany { what, found, most });
        }
        for part in ["generator", "box", "cord"] {
            all.push(ProblemKind::NoOutlets { part });
        }
        for example in ["1/2", "20 A"] {
            all.push(ProblemKind::NoNumber {
                key,
                found: found(),
                example: example.into(),
            });
        }
        for unit in ["VA", "ft"] {
            all.push(ProblemKind::UnknownUnit {
                key,
                found: unit.into(),
                allowed: vec!["W", "kW"],
            });
        }
        for through in [vec![id("a")], vec![id("a"), id("b")]] {
            all.push(ProblemKind::Loop { through });
        }
        all.extend([
            ProblemKind::Empty,
            ProblemKind::NoFormat,
            ProblemKind::NewerFormat { found: found() },
            ProblemKind::NoSuchFormat { found: found() },
            ProblemKind::MissingKey { key, example: "x" },
            ProblemKind::MissingTable { table: "generator" },
            ProblemKind::EmptyText { key },
            ProblemKind::BadText { key, most: 60 },
            ProblemKind::NoUnit {
                key,
                found: found(),
                allowed: vec!["W", "kW"],
            },
            ProblemKind::TwoReadings {
                key,
                found: found(),
                decimals: "1.5 W".into(),
                thousands: "1500 W".into(),
            },
            ProblemKind::OutOfRange {
                key,
                found: found(),
                least: amount(),
                most: amount(),
            },
            ProblemKind::WireSize { found: found() },
            ProblemKind::DuplicateId {
                id: found(),
                line: 1,
                first: 0..1,
            },
            ProblemKind::SetsId { id: found() },
            ProblemKind::ShareDiffers { with: found() },
            ProblemKind::LessThan {
                key,
                found: amount(),
                other: "rated",
                least: amount(),
            },
            ProblemKind::TwoDraws {
                first: "running",
                second: "motor",
            },
            ProblemKind::PlaceForNoPlug {
                place: "bonding_plug_in",
                plug: "bonding_plug",
            },
            ProblemKind::BadHours {
                key,
                found: found(),
            },
            ProblemKind::MotorCode { found: found() },
        ]);
        all
    }

    #[test]
    fn every_kind_has_its_words_and_no_words_are_left_over() {
        let words = Words::english();
        let mut used: BTreeSet<String> = BTreeSet::new();
        for kind in samples() {
            let spoken = speak(&words, &kind);
            assert!(
                !spoken.title.is_empty() && !spoken.help.is_empty(),
                "{kind:?}"
            );
            used.insert(args(&words, &kind).0);
        }
        assert_eq!(words.faults(), Vec::<String>::new());
        let there: BTreeSet<String> = include_str!("../../i18n/en/plan.ftl")
            .split("# The TOML itself.")
            .nth(1)
            .unwrap()
            .lines()
            .filter(|line| line.starts_with("plan-"))
            .filter_map(|line| line.split(' ').next().map(str::to_owned))
            .collect();
        assert_eq!(used, there);
    }

    #[test]
    fn every_fault_of_a_file_has_its_words() {
        use std::io::ErrorKind;
        let words = Words::english();
        let mut used: BTreeSet<&str> = BTreeSet::new();
        for writing in [true, false] {
            let system = [
                ErrorKind::NotFound,
                ErrorKind::PermissionDenied,
                ErrorKind::StorageFull,
                ErrorKind::NotADirectory,
                ErrorKind::Other,
            ]
            .map(|kind| Fault::System(kind.into()));
            for fault in system.into_iter().chain([
                Fault::Folder,
                Fault::Exists,
                Fault::Name,
                Fault::TooLarge,
                Fault::NotText { line: 3 },
                Fault::InUse,
            ]) {
                let error = StoreError {
                    path: "camp.toml".into(),
                    writing,
                    fault,
                };
                let said = store(&words, &error);
                assert!(said.lines().count() == 2, "{said}");
                used.insert(error.key());
            }
        }
        assert_eq!(words.faults(), Vec::<String>::new());
        let there: BTreeSet<&str> = include_str!("../../i18n/en/plan.ftl")
            .lines()
            .filter(|line| line.starts_with("store-"))
            .filter_map(|line| line.split(' ').next())
            .collect();
        assert_eq!(used, there);
    }

    #[test]
    fn colour_changes_nothing_but_the_look() {
        let words = Words::english();
        let text = "format = 1\n[generator]\nrated = 2800\nvoltage = \"120 V\"\n";
        let problems = crate::plan::read(text).unwrap_err();
        let look = Look {
            coloured: true,
            width: 60,
        };
        let coloured = render(&words, "a.toml", text, &problems, look);
        assert!(coloured.contains('\u{1b}'));
        let bare = anstream::adapter::strip_str(&coloured).to_string();
        assert!(
            bare.contains("a.toml:3:9") && bare.contains("2800"),
            "{bare}"
        );
    }

    #[test]
    fn text_that_would_steer_the_terminal_is_disarmed() {
        let words = Words::english();
        let text = "format = 1\nname = \"\u{202e}x\"\n[\"a\\u001b[2J\"]\n";
        let problems = crate::plan::read(text).unwrap_err();
        let shown = render(&words, "a.toml", text, &problems, Look::default());
        assert!(
            !shown.contains('\u{1b}') && !shown.contains('\u{202e}'),
            "{shown}"
        );
    }
}

//! `learned`: adds what somebody saw at camp to the plan.

use std::fmt::Write as _;

use tallywatt::judge;
use tallywatt::learned::{self, Unclear};
use tallywatt::plan::{self, store};
use tallywatt::print;
use tallywatt::report::Signal;
use tallywatt::words::{Words, wrapping};

use super::args::Learned;
use super::clock;
use super::failure::{Failure, Kind};
use super::reader::Reader;
use super::{Done, check, prints, width};

pub(super) fn run(arguments: &Learned, reader: &Reader) -> Result<Done, Failure> {
    let path = &arguments.plan;
    // The file is written back, so it cannot be standard input.
    let text = store::read_text(path).map_err(|error| prints::stored(&error, Kind::BadPlan, &reader.words))?;
    let before = prints::read(&text, path, &reader.words)?;
    let words = &*reader.of_plan(&before);
    let said = arguments.words.join(" ");
    let unclear = |unclear: &Unclear| {
        let (why, instead) = words.unclear(unclear, &path.display().to_string());
        Failure::text(Kind::Usage, why).hint(instead)
    };
    // An ambiguous number counts as none.
    let typed = |text: &str| words.plain_numbers(text).ok();
    let seen = learned::understand(&before, &said, &words.vocabulary(), typed).map_err(|error| unclear(&error))?;
    let report = judge::build(&before);
    let learned = learned::learn(&before, &report, &seen).map_err(|error| unclear(&error))?;

    let mut merged = prints::changed(&text, &before, &learned.plan);
    let today = arguments.date.map(|date| date.to_string());
    let today = today.unwrap_or_else(clock::today);
    let line: String = said.chars().filter(|c| !plan::hides(*c)).collect();
    let _ = writeln!(merged, "# {today} {line}");
    // A plan that cannot be read back would be this program's own fault, and is better found here.
    let after = prints::read(&merged, path, words)?;
    store::rewrite(path, &text, &merged).map_err(|error| prints::stored(&error, Kind::CannotWrite, words))?;
    let now = judge::build(&after);
    let outdated = print::outdated((&before, &report), (&after, &now), words)
        .map_err(|error| Failure::text(Kind::CannotWrite, error.in_words(words)))?;

    let mut output = String::new();
    let mut say = |text: &str| {
        let _ = writeln!(output, "{}", textwrap::fill(text, wrapping(width())));
    };
    say(&words.learned(&learned, &report.figures.loads));
    say("");
    // Bad news may change nothing in the plan. Then nobody should hear that the prints are still good.
    let bad_news = learned.signal.is_some() && outdated.is_empty();
    say(&if bad_news { words.text("learned-same") } else { again(&outdated, words) });
    let path = path.display().to_string();
    say(&words.with("learned-wrote", [("path", path.into())]));
    // After a bad reading nothing else counts. With nothing serious left, say nothing that sounds like permission.
    let worst = now.worst();
    let serious = worst.is_some_and(|signal| signal <= Signal::Warning);
    if learned.signal.is_none() && serious {
        let _ = write!(output, "\n{}", words.next_list(&now, width()));
    }
    Ok(Done { output, status: check::status(worst).max(check::status(learned.signal)) })
}

/// Says which prints to make again.
pub(super) fn again(outdated: &print::Outdated, words: &Words) -> String {
    let labels = |key: &str, names: &[String]| {
        let quoted = words.quoted(names.iter().map(String::as_str));
        let count = names.len();
        (count > 0).then(|| words.with(key, [("names", quoted.into()), ("count", count.into())]))
    };
    let documents = outdated.documents.iter();
    let mut all: Vec<String> = labels("learned-labels", &outdated.labels).into_iter().collect();
    let side = match *outdated.sides {
        [] => None,
        [side] => Some(side),
        _ => Some(0),
    };
    all.extend(side.map(|side| words.with("learned-card", [("side", side.into())])));
    all.extend(documents.map(|document| words.text(&format!("learned-{}", document.name()))));
    let gone = labels("learned-take-off", &outdated.gone);
    if all.is_empty() {
        return gone.unwrap_or_else(|| words.text("learned-no-print"));
    }
    let again = words.with("learned-print", [("what", words.list(&all).into())]);
    [Some(again), gone].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

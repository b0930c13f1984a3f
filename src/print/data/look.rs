//! The look sheet: what to go and look at, with room to write down what is found.

use serde::Serialize;

use super::{Common, Context};
use crate::interview::{self, Input, Shape};
use crate::report::{self, Marking};

/// The data of `look.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Sheet {
    common: Common,
    /// How to count similar outlets, if any are asked about.
    count: Option<String>,
    looks: Vec<Look>,
}

#[derive(Debug, Serialize)]
struct Look {
    /// The thing to look at. `None` for the place or its people.
    what: Option<String>,
    /// What is read there, if there is a drawing of it. For a face, only buttons are drawn.
    drawn: Option<Marking>,
    /// What to look for.
    ask: String,
    /// The findings that the look may clear.
    clears: Option<String>,
    /// What to write down: the questions that the interview will ask again.
    questions: Vec<Question>,
}

#[derive(Debug, Serialize)]
struct Question {
    text: String,
    /// The answers to tick. If empty, there is a line to write on.
    answers: Vec<Answer>,
}

#[derive(Debug, Serialize)]
struct Answer {
    text: String,
    /// Whether to also write down which ones are meant.
    which: bool,
}

const KEYS: &[&str] = &["look-how", "look-light", "look-none", "look-buy", "look-after", "defer"];

pub(super) fn data(context: &Context<'_>) -> Sheet {
    let looks = &context.report.figures.looks;
    let counted = looks.iter().any(is_counted);
    let looks = looks.iter().map(|look| {
        let told = context.words.look(context.report, look);
        Look {
            what: told.what,
            drawn: drawn(look),
            ask: told.ask,
            clears: told.clears,
            questions: interview::questions(context.plan, &look.fields)
                .iter()
                .map(|asked| question(context, asked))
                .collect(),
        }
    });
    Sheet {
        looks: looks.collect(),
        count: counted.then(|| context.say("look-count", &[])),
        common: context.common("look-title", KEYS),
    }
}

fn drawn(look: &report::Look) -> Option<Marking> {
    let of_gfci = |field: &String| matches!(field.rsplit_once('.'), Some((_, "gfci")));
    let buttons = look.fields.iter().any(of_gfci);
    Some(look.read).filter(|read| *read != Marking::Face || buttons)
}

/// Whether a look is about one of several similar outlets, so that the reader must know which is meant. The interview
/// gives such outlets names that end in a number.
fn is_counted(look: &report::Look) -> bool {
    let outlets = look.fields.iter().filter_map(|it| it.split_once(".outlet."));
    let mut names = outlets.filter_map(|(_, it)| it.split('.').next()?.rsplit_once('-'));
    let numbered = names.any(|(_, number)| number.parse::<u8>().is_ok());
    look.read != Marking::Package && numbered
}

fn question(context: &Context<'_>, question: &interview::Question) -> Question {
    let view = interview::view(context.words, question);
    // "I don't know" gets no box: the reader ticks nothing.
    let answers = match view.shape {
        Shape::List { rows, .. } => rows
            .into_iter()
            // "No more" ends a list on the screen. On paper there is nothing to tick.
            .filter(|row| matches!(row.input, Input::Answer(_)) && row.value() != Some("done"))
            .map(|row| Answer { which: row.value() == Some("some"), text: row.text })
            .collect(),
        Shape::Line { .. } => Vec::new(),
    };
    let text = match interview::outlet(context.words, question) {
        Some(about) => context.say("look-of", &[("about", &about), ("question", &view.question)]),
        None => view.question,
    };
    Question { text, answers }
}

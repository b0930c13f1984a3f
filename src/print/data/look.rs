//! What to go and look at, with room to write down what is found.

use serde::Serialize;

use super::{Common, Context};
use crate::interview::{self, Input, Shape};
use crate::report::{self, Marking};

/// The data of `look.typ`.
#[derive(Debug, Serialize)]
pub(super) struct Sheet {
    common: Common,
    looks: Vec<Look>,
}

#[derive(Debug, Serialize)]
struct Look {
    /// The thing to go to; none where it is the place or its people.
    what: Option<String>,
    /// What is read there, of which there may be a drawing: of a face the buttons are drawn, and nothing else.
    drawn: Option<Marking>,
    /// What to look for there.
    ask: String,
    /// What that may clear.
    clears: Option<String>,
    /// What to write down: the questions that the interview will ask again.
    questions: Vec<Question>,
}

#[derive(Debug, Serialize)]
struct Question {
    text: String,
    /// To tick; without them there is a line to write on.
    answers: Vec<Answer>,
}

#[derive(Debug, Serialize)]
struct Answer {
    text: String,
    /// Whether there is more to write: which of them it is.
    which: bool,
}

const KEYS: &[&str] = &["look-how", "look-none", "look-buy", "look-after", "defer"];

pub(super) fn data(context: &Context<'_>) -> Sheet {
    // What is looked at, then what is bought.
    let mut looks: Vec<&report::Look> = context.report.figures.looks.iter().collect();
    looks.sort_by_key(|look| look.read == Marking::Package);
    let looks = looks.into_iter().map(|look| {
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
        common: context.common("look-title", KEYS),
    }
}

fn drawn(look: &report::Look) -> Option<Marking> {
    let of_gfci = |field: &String| matches!(field.rsplit_once('.'), Some((_, "gfci")));
    let buttons = look.fields.iter().any(of_gfci);
    Some(look.read).filter(|read| *read != Marking::Face || buttons)
}

fn question(context: &Context<'_>, question: &interview::Question) -> Question {
    let view = interview::view(context.words, question);
    // What nobody knows is left empty.
    let answers = match view.shape {
        Shape::List { rows, .. } => rows
            .into_iter()
            .filter(|row| matches!(row.input, Input::Answer(_)))
            .map(|row| Answer {
                which: row.value() == Some("some"),
                text: row.text,
            })
            .collect(),
        Shape::Line { .. } => Vec::new(),
    };
    Question {
        text: view.question,
        answers,
    }
}

//! The interview: questions a beginner can answer, one at a time, and the plan they make.
//!
//! [`Machine`] is pure: answers in, questions out, no words and no terminal. [`run`] puts its
//! questions into words, asks them through a [`Prompter`] and keeps the draft through a
//! [`Keep`] after every answer, before the next question.

mod build;
mod draft;
mod form;
pub mod lines;
mod live;
mod machine;
mod merge;
mod parts;
mod reopen;
mod steps;
pub mod terminal;
#[cfg(test)]
mod tests;
mod view;

use crate::judge;
use crate::loads;
use crate::plan::problem::Value;
use crate::plan::{Plan, Refusal};
use crate::words::{Words, problem};

pub use build::plan as plan_of;
pub use draft::{Draft, DraftError, Said};
pub use form::Form;
pub use machine::{Input, Kind, Machine, Note, Question};
pub use merge::merge;
pub use reopen::draft_of;
pub use steps::{Group, Item, Label, Suggestion};
pub(crate) use view::outlet;
pub use view::{Row, Shape, View, view};

use view::{explanation, news_text, not_known};

/// Keeps the draft where nothing is lost.
pub trait Keep {
    /// Makes the draft durable before it returns.
    ///
    /// # Errors
    /// When it could not, once: that is said, and the interview goes on.
    fn keep(&mut self, draft: &Draft) -> std::io::Result<()>;
}

/// Whoever asks the questions: a terminal, a file of answers, a test.
pub trait Prompter {
    /// Asks one question.
    ///
    /// # Errors
    /// When the user interrupts, the answers end, or the terminal fails.
    fn ask(&mut self, view: &View) -> Result<Input, PromptError>;
    /// Says something between questions.
    ///
    /// # Errors
    /// When the terminal fails.
    fn tell(&mut self, text: &str) -> std::io::Result<()>;
    /// Says what must still be seen when the next question stands below it.
    ///
    /// # Errors
    /// When the terminal fails.
    fn keep(&mut self, notices: Vec<Notice>) -> std::io::Result<()> {
        notices.iter().try_for_each(|notice| self.tell(&notice.text()))
    }
    /// Gives these to read, one below the other, before the next question.
    ///
    /// # Errors
    /// When the terminal fails.
    fn give(&mut self, texts: Vec<String>) -> std::io::Result<()> {
        self.tell(&texts.join("\n\n"))
    }
}

/// What must be seen before the next question is answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// What it is.
    pub what: String,
    /// More of it, which goes first where there is little room.
    pub more: String,
    /// What to do about it, which never goes.
    pub todo: String,
}

impl Notice {
    /// From lines: the first says what it is, and the last, if there are more, what to do.
    fn of(text: &str) -> Self {
        let lines: Vec<&str> = text.trim_end().lines().collect();
        let (what, rest) = lines.split_first().unwrap_or((&"", &[]));
        let (todo, more) = rest.split_last().unwrap_or((&"", &[]));
        Self { what: (*what).to_owned(), more: more.join("\n"), todo: (*todo).to_owned() }
    }

    /// All of it.
    fn text(&self) -> String {
        let lines = [&self.what, &self.more, &self.todo].map(String::as_str);
        let told: Vec<&str> = lines.into_iter().filter(|line| !line.is_empty()).collect();
        told.join("\n")
    }
}

/// Why no answer came.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum PromptError {
    /// The user interrupted.
    #[error("interrupted")]
    Interrupted,
    /// There are no more answers.
    #[error("no more answers")]
    Ended,
    /// The terminal failed.
    #[error("the terminal failed")]
    Terminal(#[from] std::io::Error),
}

/// How an interview ended.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// With a plan to check and print. The draft makes it possible to come back to the review
    /// page.
    Finished {
        /// The plan.
        plan: Box<Plan>,
        /// The answers behind it.
        draft: Draft,
    },
    /// The user interrupted, or the answers ended early; the draft of this name is kept.
    Interrupted {
        /// Its name.
        draft: String,
    },
    /// The user left from the review page; the draft of this name is kept.
    Quit {
        /// Its name.
        draft: String,
    },
}

/// Where an interview begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Start {
    /// At the first question without a good answer.
    First,
    /// At what is to be looked at.
    Looking,
}

/// Holds an interview from where the draft stands.
///
/// # Errors
/// When the terminal fails.
pub fn run(
    prompter: &mut dyn Prompter,
    keeper: &mut dyn Keep,
    words: &Words,
    draft: Draft,
    start: Start,
) -> std::io::Result<Outcome> {
    let mut machine = Machine::new(Draft { called: called(words), ..draft });
    if start == Start::Looking {
        machine.start_looking();
    }
    keep(keeper, prompter, words, machine.draft())?;
    if machine.draft().answers.is_empty() {
        let welcome = words.text("interview-welcome");
        prompter.tell(&welcome)?;
    }
    let mut told = live::Told::already(machine.dangers(judge::judge), machine.told_parts());
    let mut explained = None;
    loop {
        let question = machine.question();
        let finished = |machine: &Machine| Outcome::Finished {
            plan: Box::new(plan_of(machine.draft(), &|key| words.text(key))),
            draft: machine.draft().clone(),
        };
        let shown = view(words, &question);
        let input = match prompter.ask(&shown) {
            Ok(input) => input,
            Err(PromptError::Ended) if question.key == "review" => return Ok(finished(&machine)),
            Err(PromptError::Interrupted | PromptError::Ended) => {
                return Ok(Outcome::Interrupted { draft: machine.draft().name.clone() });
            }
            Err(PromptError::Terminal(error)) => return Err(error),
        };
        if input == Input::Explain {
            prompter.give(explanation(words, &question))?;
            explained = Some(question.key);
            continue;
        }
        if input == Input::Picture {
            let plan = plan_of(machine.draft(), &|key| words.text(key));
            prompter.tell(&live::picture(words, &plan))?;
            continue;
        }
        let may_change = input != Input::Back && !matches!(question.kind, Kind::Page(_));
        let readable = readable(words, &question, &shown, input.clone());
        let completed = readable.as_ref().ok();
        let completed = completed.and_then(|whole| completed_with_unit(&input, whole));
        match readable.and_then(|input| machine.answer(input)) {
            Ok(notes) => {
                keep(keeper, prompter, words, machine.draft())?;
                if let Some(whole) = completed {
                    let answer = [("answer", Value::Numbers(whole))];
                    prompter.tell(&words.with("note-unit", words.spoken(&answer)))?;
                }
                for note in notes {
                    let values = words.spoken(&note.values);
                    prompter.tell(&words.with(&format!("note-{}", note.key), values))?;
                }
                let unknown = may_change && machine.draft().get(&question.key) == Some(&Said::Unknown);
                if unknown && machine.asks_of_thing_to_buy(&question.key) {
                    prompter.tell(&words.text("note-not-bought"))?;
                } else if unknown {
                    let again = explained.as_ref() == Some(&question.key);
                    prompter.tell(&not_known(words, &machine, &question, again))?;
                }
                if may_change {
                    let mut news = told.update(machine.findings(judge::judge), machine.told_parts());
                    if !news.is_empty() {
                        live::Told::in_full(&mut news, &machine.dangers(judge::build));
                    }
                    let loads = if news.is_empty() {
                        Vec::new()
                    } else {
                        loads::facts(&plan_of(machine.draft(), &|key| words.text(key)))
                    };
                    // What is new says most, and stays whole longest.
                    news.sort_by_key(|news| !matches!(news, live::News::New(_)));
                    let news = news.iter().map(|news| news_text(words, news, &loads));
                    prompter.keep(news.map(|text| Notice::of(&text)).collect())?;
                }
            }
            Err(reject) => {
                // What to do stands below what to compare with, where it is still seen.
                if reject.key == "unknown-shape" {
                    prompter.tell(&words.text(view::drawing(&question)))?;
                }
                prompter.tell(&words.refused(&reject))?;
            }
        }
        if machine.quit() {
            return Ok(Outcome::Quit { draft: machine.draft().name.clone() });
        }
        if machine.finished() {
            return Ok(finished(&machine));
        }
    }
}

/// Keeps the answers, or says once that they are not kept, and why: who has a full disk still gets a plan.
fn keep(keeper: &mut dyn Keep, prompter: &mut dyn Prompter, words: &Words, draft: &Draft) -> std::io::Result<()> {
    let Err(error) = keeper.keep(draft) else {
        return Ok(());
    };
    let stored = error.get_ref().and_then(|inner| inner.downcast_ref());
    let reason = stored.map_or_else(|| error.to_string(), |error| problem::store_title(words, error));
    prompter.tell(&words.with("interview-not-kept", [("reason", reason.into())]))
}

/// The questions that ask for these fields of a plan, each once; none for a plan that has more parts than the interview
/// asks for.
#[must_use]
pub fn questions(plan: &Plan, fields: &[String]) -> Vec<Question> {
    draft_of(plan, "").map_or_else(Vec::new, |draft| Machine::new(draft).questions(fields))
}

/// What parts and loads are called in the reader's language. An id is one word, so of an
/// appliance's name only what stands before a comma.
fn called(words: &Words) -> draft::Called {
    if words.language().language.as_str() == crate::words::FIRST_LANGUAGE {
        // Its words are those of the code.
        return draft::Called::default();
    }
    let parts = parts::WORDS.into_iter().map(|word| (word, words.text(&format!("id-{word}"))));
    let loads = crate::tables::appliances::all().iter().map(|appliance| {
        let name = words.text(&format!("appliance-{}", appliance.key));
        let short = name.split(',').next().unwrap_or_default().to_owned();
        (appliance.key.as_str(), short)
    });
    parts.chain(loads).map(|(word, text)| (word, parts::slug(&text, word))).collect()
}

/// What was typed, with its numbers as plans keep them.
fn readable(words: &Words, question: &Question, shown: &View, input: Input) -> Result<Input, Refusal> {
    let (Kind::Text(form), Input::Answer(text)) = (&question.kind, &input) else {
        return Ok(input);
    };
    if !form.has_numbers() {
        return Ok(input);
    }
    // Enter takes what was shown, which is known to the last digit.
    if let (Shape::Line { default, .. }, Suggestion::Said(Said::Is(own))) = (&shown.shape, &question.default)
        && default.as_ref() == Some(text)
    {
        return Ok(Input::Answer(own.clone()));
    }
    let two = match words.plain_numbers(text) {
        Ok(plain) => {
            let whole = with_unit(words, *form, &plain).unwrap_or(plain);
            return Ok(Input::Answer(whole));
        }
        Err(two) => two,
    };
    // The reader's own reading is taken only if the other one is impossible here.
    let (own, other) =
        if two.decimals_are_usual { (two.as_decimals, two.as_thousands) } else { (two.as_thousands, two.as_decimals) };
    if form.check(&other).is_err() {
        return Ok(Input::Answer(own));
    }
    Err(Refusal::new("two-readings")
        .with("found", two.found)
        .with("decimals", two.decimals)
        .with("thousands", two.thousands))
}

/// The answer with its unit where it was typed without, or as another number: that is said back.
fn completed_with_unit(typed: &Input, whole: &Input) -> Option<String> {
    let (Input::Answer(typed), Input::Answer(whole)) = (typed, whole) else {
        return None;
    };
    let number = |text: &str| -> String {
        let digits = text.trim().chars();
        digits.take_while(char::is_ascii_digit).collect()
    };
    let bare = !typed.contains(char::is_alphabetic);
    let other = number(typed) != number(whole) && !typed.contains(['.', ',']);
    (other || bare && whole != typed.trim()).then(|| whole.clone())
}

/// A bare number with the unit that the question shows first, if that makes it an answer.
fn with_unit(words: &Words, form: Form, text: &str) -> Option<String> {
    // Of two figures the first tells.
    let first = text.split('/').next().and_then(|it| it.split(", ").next());
    let first = first.unwrap_or(text);
    let unit = form.likely_unit(first.trim().parse().ok()?)?;
    let whole = format!("{} {}", text.trim(), words.likely_units(unit).first()?);
    form.check(&whole).is_ok().then_some(whole)
}

/// A name made fit for a file or an id: letters and digits, the rest as single hyphens.
#[must_use]
pub fn stem(name: &str) -> String {
    parts::slug(name, "plan")
}

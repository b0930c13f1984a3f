//! The interview: one question at a time, each of which a beginner can answer, and the plan that the answers make.
//!
//! [`Machine`] is pure: it takes answers and returns questions, with no text and no terminal. [`run`] puts its
//! questions into words, asks them through a [`Prompter`], and saves the draft through a [`Keep`] after every answer,
//! before the next question.

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
pub use machine::{Input, Kind, LookAt, Machine, Note, Question};
pub use merge::merge;
pub use reopen::draft_of;
pub use steps::{Group, Item, Label, Suggestion};
pub(crate) use view::outlet;
pub use view::{Row, Shape, View, view};

use view::{explanation, news_text, not_known};

/// Durable storage for the draft.
pub trait Keep {
    /// Saves the draft, and makes it durable before returning.
    ///
    /// # Errors
    /// When the draft cannot be saved, on the first failure only. The user is told, and the interview goes on.
    fn keep(&mut self, draft: &Draft) -> std::io::Result<()>;
}

/// The source of answers: a terminal, a file of answers, or a test.
pub trait Prompter {
    /// Asks one question.
    ///
    /// # Errors
    /// When the user interrupts, the answers end, or the terminal fails.
    fn ask(&mut self, view: &View) -> Result<Input, PromptError>;
    /// Shows a message between questions.
    ///
    /// # Errors
    /// When the terminal fails.
    fn tell(&mut self, text: &str) -> std::io::Result<()>;
    /// Shows notices that must stay visible above the next question.
    ///
    /// # Errors
    /// When the terminal fails.
    fn keep(&mut self, notices: Vec<Notice>) -> std::io::Result<()> {
        notices.iter().try_for_each(|notice| self.tell(&notice.text()))
    }
    /// Shows texts to read before the next question, one below the other.
    ///
    /// # Errors
    /// When the terminal fails.
    fn give(&mut self, texts: Vec<String>) -> std::io::Result<()> {
        self.tell(&texts.join("\n\n"))
    }
}

/// A message the user must see before answering the next question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// The message itself.
    pub what: String,
    /// Further detail, dropped first when space is short.
    pub more: String,
    /// What to do about it. Never dropped.
    pub todo: String,
}

impl Notice {
    /// Splits a text into its parts: the first line is the message, and the last of several is what to do.
    fn of(text: &str) -> Self {
        let lines: Vec<&str> = text.trim_end().lines().collect();
        let (what, rest) = lines.split_first().unwrap_or((&"", &[]));
        let (todo, more) = rest.split_last().unwrap_or((&"", &[]));
        Self { what: (*what).to_owned(), more: more.join("\n"), todo: (*todo).to_owned() }
    }

    /// Returns the whole notice, one part per line.
    fn text(&self) -> String {
        let lines = [&self.what, &self.more, &self.todo].map(String::as_str);
        let told: Vec<&str> = lines.into_iter().filter(|line| !line.is_empty()).collect();
        told.join("\n")
    }
}

/// Why a question got no answer.
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
    /// The plan is ready to check and print. The draft leads back to the review page.
    Finished {
        /// The plan.
        plan: Box<Plan>,
        /// The answers the plan was built from.
        draft: Draft,
    },
    /// The user interrupted, or the answers ended early. The draft is kept.
    Interrupted {
        /// The draft's name.
        draft: String,
    },
    /// The user quit from the review page. The draft is kept.
    Quit {
        /// The draft's name.
        draft: String,
    },
}

/// Where an interview starts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Start {
    /// At the first question without a valid answer.
    First,
    /// At the first thing to look up.
    Looking,
}

/// Runs an interview from the current state of the draft.
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
    // The typed text that was refused last, to be completed.
    let mut refused = String::new();
    loop {
        let question = machine.question();
        let finished = |machine: &Machine| Outcome::Finished {
            plan: Box::new(plan_of(machine.draft(), &|key| words.text(key))),
            draft: machine.draft().clone(),
        };
        let shown = View { refused: refused.clone(), ..view(words, &question) };
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
        let typed = input.clone();
        let input = completed(words, &question, &shown, input);
        let may_change = input != Input::Back && !matches!(question.kind, Kind::Page(_));
        // That a part stays unplugged is told once, with what it leaves without power.
        let is_news = question.id != "gear-from" || machine.draft().get(&question.key) != Some(&Said::Unknown);
        let past = if question.id == "gear-from" { machine.past(&question.key) } else { Vec::new() };
        let readable = readable(words, &question, &shown, input.clone());
        let with_unit = readable.as_ref().ok().and_then(|whole| completed_with_unit(words, &typed, whole));
        match readable.and_then(|input| machine.answer(input)) {
            Ok(notes) => {
                refused.clear();
                keep(keeper, prompter, words, machine.draft())?;
                if let Some(whole) = with_unit {
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
                } else if unknown && is_news {
                    let again = explained.as_ref() == Some(&question.key);
                    prompter.tell(&not_known(words, &machine, &question, &past, again))?;
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
                    // New dangers matter most, so they come first and are cut last.
                    news.sort_by_key(|news| !matches!(news, live::News::New(_)));
                    let news = news.iter().map(|news| news_text(words, news, &loads));
                    prompter.keep(news.map(|text| Notice::of(&text)).collect())?;
                }
            }
            Err(reject) => {
                refused = match (&question.kind, input) {
                    (Kind::Text(_), Input::Answer(text)) => text,
                    _ => String::new(),
                };
                // Instructions go below the drawings, where they are still on screen.
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

/// Saves the draft, or tells the user why it could not be saved. A user with a full disk still gets a plan.
fn keep(keeper: &mut dyn Keep, prompter: &mut dyn Prompter, words: &Words, draft: &Draft) -> std::io::Result<()> {
    let Err(error) = keeper.keep(draft) else {
        return Ok(());
    };
    let stored = error.get_ref().and_then(|inner| inner.downcast_ref());
    let reason = stored.map_or_else(|| error.to_string(), |error| problem::store_title(words, error));
    prompter.tell(&words.with("interview-not-kept", [("reason", reason.into())]))
}

/// Returns the questions that ask for these plan fields, each once.
///
/// Empty when the plan has more parts than the interview can ask about.
#[must_use]
pub fn questions(plan: &Plan, fields: &[String]) -> Vec<Question> {
    draft_of(plan, "").map_or_else(Vec::new, |draft| Machine::new(draft).questions(fields))
}

/// Returns the words for parts and loads in the reader's language.
///
/// An id is a single word, so an appliance's name is cut at its first comma.
fn called(words: &Words) -> draft::Called {
    if words.language().language.as_str() == crate::words::FIRST_LANGUAGE {
        // The words in the code are already in this language.
        return draft::Called::default();
    }
    let text = |word: &str| words.text(&format!("id-{word}"));
    let parts = parts::WORDS.into_iter().map(|word| (word.to_owned(), text(word)));
    let gear = parts::GEAR_WORDS.into_iter().flat_map(|(alone, among)| {
        let each = std::iter::once(&alone).chain(among).flat_map(|word| {
            let colored = parts::COLORS.into_iter().map(|color| {
                // Its plain word decides the ending of the color.
                let values = [("color", color.into()), ("word", alone.into()), ("called", text(word).into())];
                (parts::colored(color, word), words.with("id-colored", values))
            });
            colored.chain([((*word).to_owned(), text(word))]).collect::<Vec<_>>()
        });
        each.collect::<Vec<_>>()
    });
    let loads = crate::tables::appliances::all().iter().map(|appliance| {
        let name = words.text(&format!("appliance-{}", appliance.key));
        let short = name.split(',').next().unwrap_or_default().to_owned();
        (appliance.key.clone(), short)
    });
    let all = parts.chain(gear).chain(loads);
    let slug = |(word, text): (String, String)| {
        let slug = parts::slug(&text, &word);
        (word, slug)
    };
    all.map(slug).collect()
}

/// Converts the numbers in a typed answer to the notation plans use.
fn readable(words: &Words, question: &Question, shown: &View, input: Input) -> Result<Input, Refusal> {
    let (Kind::Text(form), Input::Answer(text)) = (&question.kind, &input) else {
        return Ok(input);
    };
    if !form.has_numbers() {
        return Ok(input);
    }
    // Enter accepts the default. The draft holds it at full precision, and the screen may not.
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
    // The reader's own convention is safe only when the other reading is impossible here.
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

/// Adds the typed unit to the number that was refused without one, where answers are whole lines.
fn completed(words: &Words, question: &Question, shown: &View, input: Input) -> Input {
    let (Kind::Text(form), Input::Answer(unit)) = (&question.kind, &input) else {
        return input;
    };
    let number = form.has_numbers() && shown.refused.starts_with(|c: char| c.is_ascii_digit());
    if !number || unit.is_empty() || !unit.chars().all(char::is_alphabetic) {
        return input;
    }
    let whole = Input::Answer(format!("{} {unit}", shown.refused));
    match readable(words, question, shown, whole.clone()) {
        Ok(Input::Answer(plain)) if form.check(&plain).is_ok() => whole,
        _ => input,
    }
}

/// Returns the answer to echo when it got a unit, was judged by eye, or its number was rewritten, and `None` otherwise.
fn completed_with_unit(words: &Words, typed: &Input, whole: &Input) -> Option<String> {
    let (Input::Answer(typed), Input::Answer(whole)) = (typed, whole) else {
        return None;
    };
    let number = |text: &str| -> String {
        let digits = text.trim().chars();
        digits.take_while(char::is_ascii_digit).collect()
    };
    let bare = !typed.contains(char::is_alphabetic);
    let other = number(typed) != number(whole) && !typed.contains(['.', ',']);
    let by_eye = words.without_about(typed) != typed.trim();
    (other || by_eye || bare && whole != typed.trim()).then(|| whole.clone())
}

/// Adds the first unit the question shows to a bare number, if that makes a valid answer.
fn with_unit(words: &Words, form: Form, text: &str) -> Option<String> {
    // With two figures, the first one decides the unit.
    let first = text.split('/').next().and_then(|it| it.split(", ").next());
    let first = first.unwrap_or(text);
    let unit = form.likely_unit(first.trim().parse().ok()?)?;
    let whole = format!("{} {}", text.trim(), words.likely_units(unit).first()?);
    form.check(&whole).is_ok().then_some(whole)
}

/// Turns a name into letters and digits separated by single hyphens, for a file name or an id.
#[must_use]
pub fn stem(name: &str) -> String {
    parts::slug(name, "plan")
}

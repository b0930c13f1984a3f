//! The same interview from a file or pipe of answers, one a line.
//!
//! An empty line takes what is suggested; `?`, `unknown`, `none` and `<` (back) mean what they
//! mean at the terminal. A choice may be given by its value, by its number in the list from
//! one, or by the beginning of its text where that is enough.

use std::io::BufRead;

use super::{Input, PromptError, Prompter, Row, Shape, View, typed};

/// Answers from a reader.
#[derive(Debug)]
pub struct Lines<R, W> {
    answers: R,
    said: W,
}

impl<R: BufRead, W: std::io::Write> Lines<R, W> {
    /// Reads answers, and writes questions and what is said between them.
    pub const fn new(answers: R, said: W) -> Self {
        Self { answers, said }
    }
}

impl<R: BufRead, W: std::io::Write> Prompter for Lines<R, W> {
    fn ask(&mut self, view: &View) -> Result<Input, PromptError> {
        let mut line = String::new();
        if self.answers.read_line(&mut line)? == 0 {
            return Err(PromptError::Ended);
        }
        let text = line.trim();
        writeln!(self.said, "{}\n> {text}", view.question)?;
        if text == "<" {
            return Ok(Input::Back);
        }
        Ok(match &view.shape {
            Shape::Line { spoken, .. } => typed(text, spoken),
            Shape::List { rows, start } => pick(rows, *start, text),
        })
    }

    fn tell(&mut self, text: &str) -> std::io::Result<()> {
        writeln!(self.said, "{text}")
    }
}

fn pick(rows: &[Row], start: Option<usize>, text: &str) -> Input {
    if text == "?" {
        return Input::Explain;
    }
    let lower = text.to_lowercase();
    if lower.is_empty() {
        return start.map_or_else(
            || Input::Answer(String::new()),
            |start| rows[start].input.clone(),
        );
    }
    if lower == "tree" {
        return Input::Picture;
    }
    if lower == "unknown" {
        return Input::Unknown;
    }
    let by_value = rows
        .iter()
        .find(|row| matches!(&row.input, Input::Answer(value) if value.to_lowercase() == lower));
    let by_number = || {
        lower
            .parse::<usize>()
            .ok()?
            .checked_sub(1)
            .and_then(|n| rows.get(n))
    };
    let by_text = || {
        let mut found = rows
            .iter()
            .filter(|row| row.text.to_lowercase().starts_with(&lower));
        let first = found.next()?;
        found.next().is_none().then_some(first)
    };
    by_value
        .or_else(by_text)
        .or_else(by_number)
        .map_or_else(|| Input::Answer(text.to_owned()), |row| row.input.clone())
}

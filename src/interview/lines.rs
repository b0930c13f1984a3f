//! The interview line by line, with answers from a file or a pipe, or at a terminal where nothing may be redrawn, as
//! for a screen reader.
//!
//! An empty line accepts the default. `?`, `tree`, `unknown`, `none` and `<` (back) mean the same as at the full
//! terminal, and the reader's own words work too. A choice can be given by its value, which is the plan file's word in
//! every language, by its number in the list from one, or by the beginning or any part of its text that only one row
//! has. For a list that takes several items, they go on one line separated by commas, each with its count: "kettle, 2 x
//! phone".

use std::io::BufRead;

use super::form;
use super::view::{Found, typed};
use super::{Input, PromptError, Prompter, Row, Shape, View};
use crate::plan::hides;
use crate::words::Words;

/// The longest list that is shown whole.
const LONGEST_LIST: usize = 24;

/// A prompter that reads answers line by line.
#[derive(Debug)]
pub struct Lines<'a, R, W> {
    answers: R,
    said: W,
    /// The words to show questions with, for a person at a terminal, which echoes what is typed. `None` for a file or
    /// pipe.
    words: Option<&'a Words>,
}

impl<'a, R: BufRead, W: std::io::Write> Lines<'a, R, W> {
    /// Reads answers from `answers`, and writes the questions and messages to `said`.
    pub const fn new(answers: R, said: W) -> Self {
        Self { answers, said, words: None }
    }

    /// Asks a person at a terminal.
    pub const fn at_a_terminal(answers: R, said: W, words: &'a Words) -> Self {
        Self { answers, said, words: Some(words) }
    }

    /// Shows a question in full.
    fn show(&mut self, view: &View, words: &Words) -> std::io::Result<()> {
        writeln!(self.said)?;
        for text in [&view.progress, &view.question, &view.why] {
            if !text.is_empty() {
                self.fill(text)?;
            }
        }
        match &view.shape {
            Shape::Line { default, hint } => {
                let keys = words.text("plain-line-keys");
                if hint.is_empty() {
                    self.default(default.as_deref(), words)?;
                    return self.fill(&keys);
                }
                // The hint may already say what Enter accepts.
                if let Some(default) = default.as_ref().filter(|text| !hint.contains(*text)) {
                    self.default(Some(default), words)?;
                }
                self.fill(&[hint, &keys].map(String::as_str).join(&words.text("hint-between")))
            }
            Shape::List { rows, start, marks } => {
                if rows.len() > LONGEST_LIST {
                    let long = words.with("plain-list-long", [("count", rows.len().into())]);
                    self.fill(&long)?;
                } else {
                    self.rows(rows.iter().enumerate(), words)?;
                }
                let Some(marks) = marks else {
                    let row = start.and_then(|start| rows.get(start));
                    self.default(row.map(|row| row.text.as_str()), words)?;
                    return self.fill(&words.text("plain-keys"));
                };
                let marked = rows.iter().zip(marks).filter(|(_, count)| **count > 0);
                let marked: Vec<String> = marked.map(|(row, count)| form::picked(*count, &row.text)).collect();
                let marked = (!marked.is_empty()).then(|| marked.join(&words.text("hint-between")));
                self.default(marked.as_deref(), words)?;
                self.fill(&words.text("plain-many-keys"))
            }
        }
    }

    /// Shows what Enter accepts.
    fn default(&mut self, text: Option<&str>, words: &Words) -> std::io::Result<()> {
        match text {
            Some(text) => self.fill(&words.with("plain-default", [("text", text.into())])),
            None => Ok(()),
        }
    }

    fn rows<'r>(&mut self, rows: impl Iterator<Item = (usize, &'r Row)>, words: &Words) -> std::io::Result<()> {
        for (at, row) in rows {
            let line =
                words.with("plain-row", [("number", (at + 1).to_string().into()), ("text", row.text.as_str().into())]);
            self.fill(&line)?;
        }
        Ok(())
    }

    fn fill(&mut self, text: &str) -> std::io::Result<()> {
        let Some(_) = self.words else {
            return writeln!(self.said, "{text}");
        };
        for line in super::terminal::wrap(text) {
            writeln!(self.said, "{line}")?;
        }
        Ok(())
    }
}

impl<R: BufRead, W: std::io::Write> Prompter for Lines<'_, R, W> {
    fn ask(&mut self, view: &View) -> Result<Input, PromptError> {
        if let Some(words) = self.words {
            self.show(view, words)?;
        }
        loop {
            if self.words.is_some() {
                write!(self.said, "> ")?;
                self.said.flush()?;
            }
            let mut line = Vec::new();
            if self.answers.read_until(b'\n', &mut line)? == 0 {
                return Err(PromptError::Ended);
            }
            let line = match (String::from_utf8(line), self.words) {
                (Ok(line), _) => line,
                // A person gets to retype the line. In a file, every later answer would go to the wrong question.
                (Err(_), Some(words)) => {
                    self.fill(&words.text("plain-not-text"))?;
                    continue;
                }
                (Err(error), None) => return Err(std::io::Error::new(std::io::ErrorKind::InvalidData, error).into()),
            };
            let text = line.trim();
            if self.words.is_none() {
                let shown = text.replace(hides, "\u{fffd}");
                writeln!(self.said, "{}\n> {shown}", view.question)?;
            }
            if text == "<" {
                return Ok(Input::Back);
            }
            let (rows, start, many) = match &view.shape {
                Shape::Line { .. } => return Ok(typed(text, &view.spoken)),
                Shape::List { rows, start, marks } => (rows, *start, marks.is_some()),
            };
            let found = if many { pick_many(rows, &view.spoken, text) } else { pick(rows, start, &view.spoken, text) };
            let found = match found {
                // Ending the list by its own row keeps what is marked.
                Ok(Input::Answer(value)) if many && value == "done" && text != "done" => {
                    return Ok(Input::Answer(String::new()));
                }
                Ok(input) => return Ok(input),
                Err(found) => found,
            };
            match self.words {
                Some(words) if !found.is_empty() => {
                    self.rows(found.iter().map(|at| (*at, &rows[*at])), words)?;
                    self.fill(&words.text("plain-list-found"))?;
                }
                _ => return Ok(Input::Answer(text.to_owned())),
            }
        }
    }

    fn tell(&mut self, text: &str) -> std::io::Result<()> {
        self.fill(text)
    }
}

/// Returns what a line marks, or the rows that its first ambiguous piece may mean.
fn pick_many(rows: &[Row], spoken: &[(String, Input)], text: &str) -> Result<Input, Vec<usize>> {
    if text.is_empty() {
        return Ok(Input::Answer(String::new()));
    }
    let mut marked = Vec::new();
    for piece in text.split(',').map(str::trim).filter(|it| !it.is_empty()) {
        let Ok((count, name)) = form::pick(piece) else {
            return Err(Vec::new());
        };
        match pick(rows, None, spoken, name)? {
            Input::Answer(value) => marked.push(form::picked(count, &value)),
            other => return Ok(other),
        }
    }
    Ok(Input::Answer(marked.join(", ")))
}

/// Returns what a line picks, or the rows that it may mean.
fn pick(rows: &[Row], start: Option<usize>, spoken: &[(String, Input)], text: &str) -> Result<Input, Vec<usize>> {
    if text == "?" {
        return Ok(Input::Explain);
    }
    let lower = text.to_lowercase();
    if lower.is_empty() {
        return Ok(start.map_or_else(|| Input::Answer(String::new()), |start| rows[start].input.clone()));
    }
    let by_value =
        rows.iter().position(|row| matches!(&row.input, Input::Answer(value) if value.to_lowercase() == lower));
    if by_value.is_none()
        && let Some((_, input)) = spoken.iter().find(|(word, _)| *word == lower)
    {
        return Ok(input.clone());
    }
    let by_number = || {
        let number = lower.parse::<usize>().ok()?.checked_sub(1)?;
        (number < rows.len()).then_some(number)
    };
    let those = |fits: &dyn Fn(&Row) -> bool| -> Vec<usize> { (0..rows.len()).filter(|at| fits(&rows[*at])).collect() };
    let begin = those(&|row| row.text.to_lowercase().starts_with(&lower));
    if let (None, [only]) = (by_value, begin.as_slice()) {
        return Ok(rows[*only].input.clone());
    }
    if let Some(at) = by_value.or_else(by_number) {
        return Ok(rows[at].input.clone());
    }
    let all: Vec<&Row> = rows.iter().collect();
    let found = Found::of(&all, &lower);
    match found.rows.as_slice() {
        [only] if found.whole => Ok(rows[*only].input.clone()),
        _ if found.lost => Err(Vec::new()),
        _ => {
            let mut those = found.rows;
            those.sort_unstable();
            Err(those)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(text: &str, also: &str) -> Row {
        Row { text: text.into(), also: also.into(), size: 0, input: Input::Answer(text.to_uppercase()) }
    }

    #[test]
    fn part_of_a_name_is_enough_where_only_one_has_it() {
        let rows = [row("Kettle, 1500 W", "tea"), row("Travel kettle, 1000 W", "tea"), row("Fridge", "cold")];
        let answer = |at: usize| Ok(rows[at].input.clone());
        assert_eq!(pick(&rows, None, &[], "cold"), answer(2));
        assert_eq!(pick(&rows, None, &[], "kettle"), answer(0));
        assert_eq!(pick(&rows, None, &[], "2"), answer(1));
        assert_eq!(pick(&rows, None, &[], "travel tea"), answer(1));
        assert_eq!(pick(&rows, None, &[], "tea"), Err(vec![0, 1]));
        assert_eq!(pick(&rows, None, &[], "boat"), Err(vec![]));
        assert_eq!(pick(&rows, Some(2), &[], ""), answer(2));
    }

    #[test]
    fn an_answer_holds_every_word_that_was_typed() {
        let rows = [row("Yes", ""), row("No", ""), row("Dry: a dry floor", "")];
        assert_eq!(pick(&rows, None, &[], "no"), Ok(rows[1].input.clone()));
        for typed in ["no idea", "not dry", "yes I think"] {
            assert_eq!(pick(&rows, None, &[], typed), Err(vec![]), "{typed}");
        }
    }

    /// Scripts of answers work in every language: "yes" and "Sí" both pick the row, "unknown" and "no lo sé" both mean
    /// unknown.
    #[test]
    fn words_of_the_plan_file_and_of_the_reader_both_count() {
        let row = |text: &str, also: &str, value: &str| Row {
            text: text.into(),
            also: also.into(),
            size: 0,
            input: Input::Answer(value.into()),
        };
        let rows = [row("Sí", "s, si", "yes"), row("No", "n", "no")];
        let spoken = ["no lo sé", "unknown"].map(|word| (word.to_owned(), Input::Unknown));
        let picked = |text: &str| pick(&rows, None, &spoken, text).unwrap();
        for text in ["yes", "Sí", "si", "s"] {
            assert_eq!(picked(text), Input::Answer("yes".into()), "{text}");
        }
        for text in ["no", "No", "n", "2"] {
            assert_eq!(picked(text), Input::Answer("no".into()), "{text}");
        }
        for text in ["No lo sé", "unknown"] {
            assert_eq!(picked(text), Input::Unknown, "{text}");
        }
    }

    /// A line with an invalid byte is asked again at a terminal. In a file it ends the answers.
    #[test]
    fn what_is_no_text_is_asked_again() {
        let words = Words::english();
        let shape = Shape::Line { default: None, hint: String::new() };
        let view = View::plain("Which?".into(), String::new(), shape);
        let mut said = Vec::new();
        let answers = &b"k\xe9ttle\nkettle\n"[..];
        let got = Lines::at_a_terminal(answers, &mut said, &words).ask(&view).unwrap();
        assert_eq!(got, Input::Answer("kettle".into()));
        assert!(String::from_utf8(said).unwrap().contains(&words.text("plain-not-text")));
        let got = Lines::new(answers, Vec::new()).ask(&view).unwrap_err();
        assert!(matches!(got, PromptError::Terminal(_)), "{got:?}");
        assert_eq!(words.faults(), Vec::<String>::new());
    }

    #[test]
    fn somebody_at_a_terminal_is_shown_everything_and_told_what_matches() {
        let words = Words::english();
        let view = View {
            progress: "Part 1 of 3".into(),
            dots: String::new(),
            drawing: String::new(),
            refused: String::new(),
            question: "Which?".into(),
            why: "Because.".into(),
            shape: Shape::List {
                rows: (0..30).map(|n| row(&format!("Thing {n} {}", ["red", "blue"][n % 2]), "")).collect(),
                start: Some(0),
                marks: None,
            },
            spoken: Vec::new(),
        };
        let mut said = Vec::new();
        let answers = "7 blue\n";
        let got = Lines::at_a_terminal(answers.as_bytes(), &mut said, &words).ask(&view).unwrap_err();
        // "7" and "blue" are in three rows. They are listed, and then the answers end.
        assert!(matches!(got, PromptError::Ended));
        let said = String::from_utf8(said).unwrap();
        assert!(said.contains("Part 1 of 3\nWhich?\nBecause.\nThere are 30 to choose from"), "{said}");
        assert!(said.contains("8. Thing 7 blue\n18. Thing 17 blue\n28. Thing 27 blue"), "{said}");
        assert!(!said.contains("Thing 3 blue"), "{said}");
        assert_eq!(words.faults(), Vec::<String>::new());
    }
}

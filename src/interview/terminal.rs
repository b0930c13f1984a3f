//! The interview at a terminal. The only file that knows the prompt library.

use std::io::{IsTerminal, Write};

use anstyle::Style;
use crossterm::event::{Event, KeyCode, KeyModifiers};
use inquire::ui::{RenderConfig, StyleSheet, Styled};
use inquire::{InquireError, Select, Text};

use super::view::typed;
use super::{Input, PromptError, Prompter, Row, Shape, View};

/// The narrowest and widest text. Wider lines are hard to read.
const COLUMNS: std::ops::RangeInclusive<usize> = 20..=76;

/// The longest list that somebody would scroll through.
const LONGEST_SCROLLED: usize = 60;

/// Whether questions can be asked here. The prompt library would look for a terminal even where
/// input and output are none, and wait for ever in a script.
#[must_use]
pub fn present() -> bool {
    std::io::stdin().is_terminal() && std::io::stderr().is_terminal()
}

/// Leaves the terminal as it was before a question, for whoever ends the program in the middle of
/// one.
pub fn give_back() {
    if !crossterm::terminal::is_raw_mode_enabled().unwrap_or(false) {
        return;
    }
    let _ = crossterm::terminal::disable_raw_mode();
    let _ = crossterm::execute!(
        std::io::stderr(),
        crossterm::event::DisableBracketedPaste,
        crossterm::cursor::Show,
        crossterm::style::Print("\n")
    );
}

/// Asks at the terminal, on the error stream, so that output can still be sent elsewhere.
#[derive(Debug)]
pub struct Terminal {
    list_keys: String,
    line_keys: String,
    between: String,
    first_line: String,
    colour: bool,
    /// How many lines were said since the last answer.
    said: usize,
    /// The answer was the first of several lines.
    pasted: bool,
    /// Ctrl-C came right behind an answer.
    interrupted: bool,
}

impl Terminal {
    /// With the lines that say what keys do.
    #[must_use]
    pub fn new(words: &crate::words::Words) -> Self {
        Self {
            list_keys: words.text("hint-list"),
            line_keys: words.text("hint-keys"),
            between: words.text("hint-between"),
            first_line: words.text("note-first-line"),
            colour: anstream::AutoStream::choice(&std::io::stderr())
                != anstream::ColorChoice::Never,
            said: 0,
            pasted: false,
            interrupted: false,
        }
    }

    /// Plain signs and no colour: what is picked is marked by a sign, so that it is seen without
    /// colour too.
    fn look(&self) -> RenderConfig<'static> {
        let mut look = RenderConfig::empty()
            .with_prompt_prefix(Styled::new(">"))
            .with_answered_prompt_prefix(Styled::new(">"))
            .with_highlighted_option_prefix(Styled::new("*"))
            .with_scroll_up_prefix(Styled::new("^"))
            .with_scroll_down_prefix(Styled::new("v"))
            .with_canceled_prompt_indicator(Styled::new("<"));
        if self.colour {
            let bold = StyleSheet::new().with_attr(inquire::ui::Attributes::BOLD);
            look = look.with_selected_option(Some(bold)).with_answer(bold);
        }
        look
    }

    fn write(text: &str, bold: bool) -> std::io::Result<()> {
        let style = if bold {
            Style::new().bold()
        } else {
            Style::new()
        };
        let mut out = anstream::AutoStream::auto(std::io::stderr());
        if text.is_empty() {
            writeln!(out)?;
        }
        for line in wrap(text) {
            if line.is_empty() {
                writeln!(out)?;
            } else {
                writeln!(out, "{style}{line}{style:#}")?;
            }
        }
        out.flush()
    }
}

/// How many rows of a list to show: all of them where the screen holds them with the question
/// above and the keys below, which may take two lines each where it is narrow, and with the lines
/// that were said before the question. Of a list that nobody would scroll through, which is read by
/// typing, half as many.
fn page(rows: usize, said: usize) -> usize {
    let (width, height) = crossterm::terminal::size().unwrap_or((80, 24));
    let around = said + if width < 60 { 8 } else { 5 };
    let room = usize::from(height).saturating_sub(around).clamp(5, 40);
    if rows <= LONGEST_SCROLLED {
        room
    } else {
        (room / 2).max(5)
    }
}

fn columns() -> usize {
    (textwrap::termwidth() - 1).clamp(*COLUMNS.start(), *COLUMNS.end())
}

/// Lines that fit. A drawing, which has runs of spaces or begins with one, is left as it is.
pub(super) fn wrap(text: &str) -> Vec<String> {
    let width = columns();
    text.lines()
        .flat_map(|line| {
            if line.contains("  ") || line.starts_with([' ', '+', '|']) {
                vec![line.to_owned()]
            } else {
                textwrap::wrap(line, crate::words::wrapping(width))
                    .into_iter()
                    .map(std::borrow::Cow::into_owned)
                    .collect()
            }
        })
        .collect()
}

/// A row that stays on one line: a list of wrapped rows cannot be read at a glance.
fn cut(text: &str, width: usize) -> String {
    use unicode_width::{UnicodeWidthChar, UnicodeWidthStr};
    if text.width() <= width {
        return text.to_owned();
    }
    let mut cut = String::new();
    let mut used = 0;
    for c in text.chars() {
        used += c.width().unwrap_or(0);
        if used + 1 > width {
            break;
        }
        cut.push(c);
    }
    cut.push('…');
    cut
}

impl Prompter for Terminal {
    fn ask(&mut self, view: &View) -> Result<Input, PromptError> {
        if self.interrupted {
            return Err(PromptError::Interrupted);
        }
        Self::write("", false)?;
        if !view.progress.is_empty() {
            Self::write(&view.progress, false)?;
        }
        Self::write(&view.question, true)?;
        Self::write(&view.why, false)?;
        let answer = match &view.shape {
            Shape::Line { default, hint } => {
                let hint = if hint.is_empty() {
                    self.line_keys.clone()
                } else {
                    [hint.as_str(), &self.line_keys].join(&self.between)
                };
                let mut prompt = Text::new("")
                    .with_render_config(self.look())
                    .with_help_message(&hint);
                if let Some(default) = default {
                    prompt = prompt.with_default(default);
                }
                prompt.prompt().map(|text| {
                    // A paste may have brought several lines.
                    let mut lines = text.lines().filter(|line| !line.trim().is_empty());
                    let first = lines.next().unwrap_or_default();
                    self.pasted = lines.next().is_some();
                    typed(first, &view.spoken)
                })
            }
            Shape::List { rows, start } => self.pick(rows, *start),
        };
        self.said = 0;
        match answer {
            Ok(input) => {
                self.drop_pasted()?;
                Ok(input)
            }
            Err(InquireError::OperationCanceled) => Ok(Input::Back),
            Err(InquireError::OperationInterrupted) => Err(PromptError::Interrupted),
            Err(InquireError::IO(error)) => Err(PromptError::Terminal(error)),
            Err(error) => Err(PromptError::Terminal(std::io::Error::other(error))),
        }
    }

    fn tell(&mut self, text: &str) -> std::io::Result<()> {
        self.said += 1 + wrap(text).len();
        Self::write("", false)?;
        Self::write(text, false)
    }

    fn warn(&mut self, text: &str) -> std::io::Result<()> {
        let (first, rest) = text.split_once('\n').unwrap_or((text, ""));
        self.said += 1 + wrap(text).len();
        Self::write("", false)?;
        Self::write(first, true)?;
        if rest.is_empty() {
            return Ok(());
        }
        Self::write(rest, false)
    }
}

impl Terminal {
    /// What is already waiting when an answer has just been given came with it in one paste: its
    /// further lines would answer questions that nobody has read.
    fn drop_pasted(&mut self) -> std::io::Result<()> {
        let mut dropped = std::mem::take(&mut self.pasted);
        while crossterm::event::poll(std::time::Duration::ZERO)? {
            match crossterm::event::read()? {
                Event::Key(key)
                    if key.code == KeyCode::Char('c')
                        && key.modifiers.contains(KeyModifiers::CONTROL) =>
                {
                    self.interrupted = true;
                }
                Event::Key(_) | Event::Paste(_) => dropped = true,
                _ => {}
            }
        }
        if dropped && !self.interrupted {
            Self::write(&self.first_line, false)?;
        }
        Ok(())
    }

    fn pick(&self, rows: &[Row], start: Option<usize>) -> Result<Input, InquireError> {
        let width = columns().saturating_sub(3);
        let mut rows: Vec<&Row> = rows.iter().collect();
        if start.is_none() {
            // Something is under the cursor always: where Enter may take nothing, help is.
            rows.sort_by_key(|row| row.input != Input::Explain);
        }
        let shown: Vec<String> = rows.iter().map(|row| cut(&row.text, width)).collect();
        // Each typed word must be found, in the row or in its further words; where it begins
        // the row, the row comes first. Where nothing is found, help stays.
        let score = |typed: &str, _: &String, _: &str, at: usize| -> Option<i64> {
            let typed = typed.to_lowercase();
            let row = rows[at];
            if !row.holds(&typed) {
                let lost = row.input == Input::Explain && !rows.iter().any(|row| row.holds(&typed));
                return lost.then_some(0);
            }
            let text = row.text.to_lowercase();
            Some(if text.starts_with(typed.trim()) {
                2
            } else {
                i64::from(text.contains(typed.trim()))
            })
        };
        Select::new("", shown)
            .with_render_config(self.look())
            .with_help_message(&self.list_keys)
            .with_page_size(page(rows.len(), self.said))
            .with_starting_cursor(start.unwrap_or(0))
            .with_scorer(&score)
            .raw_prompt()
            .map(|picked| rows[picked.index].input.clone())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_rows_are_cut_and_wide_letters_counted() {
        assert_eq!(cut("kettle", 6), "kettle");
        assert_eq!(cut("kettles", 6), "kettl…");
        assert_eq!(cut("電気毛布電気", 6), "電気…");
    }
}

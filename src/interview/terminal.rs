//! The interview at a terminal: asks on the error stream, so that output can still be sent elsewhere.

mod editor;
mod list;

use std::io::{IsTerminal, Write};

use anstyle::Style;
use crossterm::event::{Event, KeyCode, KeyEvent, KeyEventKind, KeyModifiers};
use crossterm::{cursor, event, execute, queue, style, terminal};
use inquire::ui::{Attributes, RenderConfig, StyleSheet, Styled};
use inquire::{InquireError, Select};

use self::editor::Editor;
use self::list::List;
use super::view::typed;
use super::{Input, PromptError, Prompter, Row, Shape, View};

/// The narrowest and widest text. Wider lines are hard to read.
const COLUMNS: std::ops::RangeInclusive<usize> = 20..=76;

/// Whether questions can be asked here.
#[must_use]
pub fn present() -> bool {
    std::io::stdin().is_terminal() && std::io::stderr().is_terminal()
}

/// Leaves the terminal as it was before a question, for whoever ends the program in the middle of
/// one.
pub fn give_back() {
    if !terminal::is_raw_mode_enabled().unwrap_or(false) {
        return;
    }
    let _ = terminal::disable_raw_mode();
    let _ = execute!(
        std::io::stderr(),
        event::DisableBracketedPaste,
        cursor::Show,
        style::Print("\n")
    );
}

/// Keys come one by one while it lives.
struct Raw;

impl Raw {
    fn new() -> std::io::Result<Self> {
        terminal::enable_raw_mode()?;
        execute!(std::io::stderr(), event::EnableBracketedPaste, cursor::Hide)?;
        Ok(Self)
    }
}

impl Drop for Raw {
    fn drop(&mut self) {
        let _ = execute!(
            std::io::stderr(),
            event::DisableBracketedPaste,
            cursor::Show
        );
        let _ = terminal::disable_raw_mode();
    }
}

/// What a key did to a prompt.
enum Then {
    /// It goes on.
    On,
    /// This is the answer, and what is left on the screen for it.
    Done(Input, String),
}

/// What keys work on, below a question.
trait Prompt {
    /// The lines of it, no wider than this, no more than so many; what is bold; where the cursor stands in the
    /// first.
    fn lines(&self, width: usize, height: usize) -> (Vec<(String, bool)>, Option<usize>);
    /// A key was pressed.
    fn key(&mut self, key: KeyEvent) -> Then;
    /// Something was pasted; false if some of it was left out.
    fn paste(&mut self, text: &str) -> bool;
}

/// Asks at the terminal.
#[derive(Debug)]
pub struct Terminal {
    list_keys: String,
    many_keys: String,
    line_keys: String,
    nothing: String,
    between: String,
    first_line: String,
    colour: bool,
    /// What was marked in the list that was asked last, below this question: who asked for help has it still.
    marked: Option<(String, Vec<u8>)>,
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
            many_keys: words.text("hint-many"),
            line_keys: words.text("hint-keys"),
            nothing: words.text("list-nothing"),
            between: words.text("hint-between"),
            first_line: words.text("note-first-line"),
            colour: anstream::AutoStream::choice(&std::io::stderr())
                != anstream::ColorChoice::Never,
            marked: None,
            said: 0,
            pasted: false,
            interrupted: false,
        }
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

    /// Lets keys work on a prompt until there is an answer.
    fn hold(&mut self, prompt: &mut dyn Prompt) -> Result<Input, PromptError> {
        let raw = Raw::new()?;
        let mut drawn = Drawn::default();
        let (input, left) = loop {
            drawn.draw(prompt, self.said, self.colour)?;
            match event::read()? {
                Event::Key(key) if key.kind == KeyEventKind::Release => {}
                Event::Key(key) if is_interrupt(key) => {
                    drawn.clear()?;
                    drop(raw);
                    return Err(PromptError::Interrupted);
                }
                Event::Key(key) => {
                    if let Then::Done(input, left) = prompt.key(key) {
                        break (input, left);
                    }
                }
                Event::Paste(text) => self.pasted |= !prompt.paste(&text),
                _ => {}
            }
        };
        drawn.clear()?;
        drop(raw);
        Self::write(&format!("> {left}"), false)?;
        Ok(input)
    }

    /// Plain signs and no colour: what is picked is marked by a sign, so that it is seen without colour too.
    fn look(&self) -> RenderConfig<'static> {
        let mut look = RenderConfig::empty()
            .with_prompt_prefix(Styled::new(">"))
            .with_answered_prompt_prefix(Styled::new(">"))
            .with_highlighted_option_prefix(Styled::new("*"))
            .with_scroll_up_prefix(Styled::new("^"))
            .with_scroll_down_prefix(Styled::new("v"))
            .with_canceled_prompt_indicator(Styled::new("<"));
        if self.colour {
            let bold = StyleSheet::new().with_attr(Attributes::BOLD);
            look = look.with_selected_option(Some(bold)).with_answer(bold);
        }
        look
    }

    /// Lets one row be picked.
    fn pick(&self, rows: &[Row], start: Option<usize>) -> Result<Input, PromptError> {
        let width = columns().saturating_sub(3);
        let mut rows: Vec<&Row> = rows.iter().collect();
        if start.is_none() {
            // Something is under the cursor always: where Enter may take nothing, help is.
            rows.sort_by_key(|row| row.input != Input::Explain);
        }
        let shown: Vec<String> = rows.iter().map(|row| cut(&row.text, width)).collect();
        // Where nothing is found, help stays.
        let score = |typed: &str, _: &String, _: &str, at: usize| -> Option<i64> {
            let row = rows[at];
            if rows.iter().any(|row| row.holds(&typed.to_lowercase())) {
                row.likeness(typed).map(i64::from)
            } else {
                (row.input == Input::Explain).then_some(0)
            }
        };
        let picked = Select::new("", shown)
            .with_render_config(self.look())
            .with_help_message(&self.list_keys)
            .with_page_size(room(self.said).saturating_sub(2))
            .with_starting_cursor(start.unwrap_or(0))
            .with_scorer(&score)
            .with_sorter(&likeliest_first)
            .raw_prompt();
        match picked {
            Ok(picked) => Ok(rows[picked.index].input.clone()),
            Err(InquireError::OperationCanceled) => Ok(Input::Back),
            Err(InquireError::OperationInterrupted) => Err(PromptError::Interrupted),
            Err(InquireError::IO(error)) => Err(PromptError::Terminal(error)),
            Err(error) => Err(PromptError::Terminal(std::io::Error::other(error))),
        }
    }

    /// What is already waiting when an answer has just been given came with it in one paste: its
    /// further lines would answer questions that nobody has read.
    fn drop_pasted(&mut self) -> std::io::Result<()> {
        let mut dropped = std::mem::take(&mut self.pasted);
        let raw = Raw::new()?;
        while event::poll(std::time::Duration::ZERO)? {
            match event::read()? {
                Event::Key(key) if is_interrupt(key) => self.interrupted = true,
                Event::Key(_) | Event::Paste(_) => dropped = true,
                _ => {}
            }
        }
        drop(raw);
        if dropped && !self.interrupted {
            Self::write(&self.first_line, false)?;
        }
        Ok(())
    }
}

/// Rows that are as likely stay in their order, which the library's own way of sorting would lose.
fn likeliest_first(rows: &mut [(usize, i64)]) {
    rows.sort_by_key(|(_, score)| std::cmp::Reverse(*score));
}

fn is_interrupt(key: KeyEvent) -> bool {
    key.code == KeyCode::Char('c') && key.modifiers.contains(KeyModifiers::CONTROL)
}

/// What stands on the screen of a prompt.
#[derive(Default)]
struct Drawn {
    /// How wide each line is.
    widths: Vec<usize>,
    /// The line the cursor is in.
    at: usize,
}

impl Drawn {
    /// A window that became narrower has broken lines in two.
    fn clear(&mut self) -> std::io::Result<()> {
        let columns = usize::from(size().0).max(1);
        let rows = |widths: &[usize]| -> usize {
            widths
                .iter()
                .map(|width| width.div_ceil(columns).max(1))
                .sum()
        };
        let up = rows(&self.widths[..self.at]);
        let mut out = std::io::stderr();
        if up > 0 {
            queue!(out, cursor::MoveUp(u16::try_from(up).unwrap_or(u16::MAX)))?;
        }
        queue!(
            out,
            cursor::MoveToColumn(0),
            terminal::Clear(terminal::ClearType::FromCursorDown)
        )?;
        self.widths.clear();
        self.at = 0;
        out.flush()
    }

    fn draw(&mut self, prompt: &dyn Prompt, said: usize, bold: bool) -> std::io::Result<()> {
        use unicode_width::UnicodeWidthStr;
        self.clear()?;
        let (lines, caret) = prompt.lines(columns(), room(said));
        let mut out = std::io::stderr();
        for (at, (line, strong)) in lines.iter().enumerate() {
            if at > 0 {
                queue!(out, style::Print("\r\n"))?;
            }
            let strong = *strong && bold;
            let style = Style::new().bold();
            let text = if strong {
                format!("{style}{line}{style:#}")
            } else {
                line.clone()
            };
            queue!(out, style::Print(text))?;
            self.widths.push(line.width());
        }
        self.at = lines.len().saturating_sub(1);
        if let Some(column) = caret {
            if self.at > 0 {
                queue!(out, cursor::MoveUp(u16::try_from(self.at).unwrap_or(0)))?;
            }
            let column = u16::try_from(column).unwrap_or(0);
            queue!(out, cursor::MoveToColumn(column), cursor::Show)?;
            self.at = 0;
        }
        out.flush()
    }
}

fn size() -> (u16, u16) {
    terminal::size().unwrap_or((80, 24))
}

/// The lines for a prompt below what was said. The question, its reason and where one is take up to two lines each where
/// it is narrow.
fn room(said: usize) -> usize {
    let around = said + if columns() < 60 { 8 } else { 5 };
    usize::from(size().1).saturating_sub(around).clamp(7, 40)
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
            Self::write(&format!("{} {}", view.dots, view.progress), false)?;
        }
        Self::write(&view.question, true)?;
        Self::write(&view.why, false)?;
        let marked = self.marked.take();
        let marked = marked.filter(|(question, _)| *question == view.question);
        let input = match &view.shape {
            Shape::Line { default, hint } => {
                let hint = if hint.is_empty() {
                    self.line_keys.clone()
                } else {
                    [hint.as_str(), &self.line_keys].join(&self.between)
                };
                let mut editor = Editor::new(default.as_deref(), hint);
                match self.hold(&mut editor)? {
                    Input::Answer(text) => typed(&text, &view.spoken),
                    other => other,
                }
            }
            Shape::List {
                rows,
                start,
                marks: None,
            } => self.pick(rows, *start)?,
            Shape::List {
                rows,
                marks: Some(marks),
                ..
            } => {
                let marks = marked.map_or_else(|| marks.clone(), |(_, marks)| marks);
                let (keys, nothing) = (self.many_keys.clone(), self.nothing.clone());
                let mut list = List::new(rows, marks, keys, nothing);
                let input = self.hold(&mut list)?;
                if input != Input::Back {
                    self.marked = Some((view.question.clone(), list.marks));
                }
                input
            }
        };
        self.said = 0;
        self.drop_pasted()?;
        Ok(input)
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_that_are_as_likely_stay_in_order() {
        let likely = |at: &usize| i64::from(at % 7 == 3);
        let mut rows: Vec<_> = (0..200).map(|at| (at, likely(&at))).collect();
        likeliest_first(&mut rows);
        let wanted = (0..200).filter(|at| likely(at) == 1);
        let wanted = wanted.chain((0..200).filter(|at| likely(at) == 0));
        assert!(rows.iter().map(|(at, _)| *at).eq(wanted));
    }

    #[test]
    fn long_rows_are_cut_and_wide_letters_counted() {
        assert_eq!(cut("kettle", 6), "kettle");
        assert_eq!(cut("kettles", 6), "kettl…");
        assert_eq!(cut("電気毛布電気", 6), "電気…");
    }
}

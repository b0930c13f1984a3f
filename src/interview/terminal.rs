//! The interview at a terminal. Questions go to the error stream, so that output can be redirected.

mod editor;
mod keys;
mod list;

use std::io::{IsTerminal, Write};
use std::sync::atomic::{AtomicBool, Ordering};

use anstyle::Style;
use crossterm::event::{Event, KeyCode, KeyEvent, KeyEventKind, KeyModifiers};
use crossterm::{cursor, event, execute, queue, style, terminal};
use inquire::ui::{Attributes, RenderConfig, StyleSheet, Styled};
use inquire::{InquireError, Select};

use self::editor::Editor;
use self::keys::{Keys, Open};
use self::list::List;
use super::view::typed;
use super::{Input, Notice, PromptError, Prompter, Row, Shape, View};
use crate::words::Words;

/// The narrowest and widest text, in columns. Wider lines are hard to read.
const COLUMNS: std::ops::RangeInclusive<usize> = 20..=76;

/// Whether questions can be asked here.
#[must_use]
pub fn present() -> bool {
    std::io::stdin().is_terminal() && std::io::stderr().is_terminal()
}

/// Whether Ctrl-C was pressed while keys are read here.
static INTERRUPTED: AtomicBool = AtomicBool::new(false);

/// Interrupts the open question, or the next one, once the input typed before Ctrl-C is handled.
///
/// Returns `false` if no keys are read here.
pub fn interrupt() -> bool {
    INTERRUPTED.store(true, Ordering::Relaxed);
    keys::is_held()
}

/// Whether a question is open.
static ASKED: AtomicBool = AtomicBool::new(false);

/// Whether a question is open. If so, input typed before Ctrl-C may still answer it.
pub fn is_asking() -> bool {
    ASKED.load(Ordering::Relaxed)
}

/// Restores the terminal, for code that ends the program during a question.
pub fn give_back() {
    if keys::is_held() {
        let _ = execute!(std::io::stderr(), event::DisableBracketedPaste, cursor::Show, style::Print("\n"));
    }
    keys::give_back();
}

/// An open question with the cursor hidden. A prompt shows the cursor where it belongs.
struct Hidden {
    _open: Open,
}

impl Hidden {
    fn new(keys: &Keys) -> std::io::Result<Self> {
        let open = keys.question()?;
        execute!(std::io::stderr(), cursor::Hide)?;
        ASKED.store(true, Ordering::Relaxed);
        Ok(Self { _open: open })
    }
}

impl Drop for Hidden {
    fn drop(&mut self) {
        ASKED.store(false, Ordering::Relaxed);
        let _ = execute!(std::io::stderr(), cursor::Show);
    }
}

/// What a key did to a prompt.
enum Then {
    /// The prompt goes on.
    On,
    /// The prompt is done, with this input, and with this text to leave on the screen.
    Done(Input, String),
}

/// What keys act on, below a question.
trait Prompt {
    /// Returns the lines to draw, each with whether it is bold, and the column of the cursor in the first line.
    ///
    /// They are at most `width` columns wide, those of the window, and about `height` lines high.
    fn lines(&self, width: usize, height: usize) -> (Vec<(String, bool)>, Option<usize>);
    /// Returns how many lines it needs in a window of this width, even where messages scroll away for it.
    fn needs(&self, _width: usize) -> usize {
        0
    }
    /// Handles a key.
    fn key(&mut self, key: KeyEvent) -> Then;
    /// Handles a paste, and returns whether all of it was used.
    fn paste(&mut self, text: &str) -> bool;
}

/// A prompter at the terminal.
#[derive(Debug)]
pub struct Terminal<'a> {
    words: &'a Words,
    keys: Keys,
    colour: bool,
    /// The marks of the last list, with its question, so that asking for help does not lose them.
    marked: Option<(String, Vec<u8>)>,
    /// The notices that must be visible above the next question.
    kept: Vec<Notice>,
    /// The texts to read before the next question.
    given: Vec<String>,
    /// The number of lines shown since the last answer, which may scroll away.
    told: usize,
    /// The number of lines below them that must stay visible: notices and the question.
    seen: usize,
    /// Whether the answer was the first of several pasted lines.
    pasted: bool,
}

impl<'a> Terminal<'a> {
    /// Takes over the terminal. `words` describe the keys.
    #[must_use]
    pub fn new(words: &'a Words) -> Self {
        keys::take();
        // Enabled for the whole interview, so that a paste between two questions is seen as one.
        let _ = execute!(std::io::stderr(), event::EnableBracketedPaste);
        Self {
            words,
            keys: Keys::default(),
            colour: anstream::AutoStream::choice(&std::io::stderr()) != anstream::ColorChoice::Never,
            marked: None,
            kept: Vec::new(),
            given: Vec::new(),
            told: 0,
            seen: 0,
            pasted: false,
        }
    }

    fn write(&mut self, text: &str, bold: bool) -> std::io::Result<()> {
        let style = if bold { Style::new().bold() } else { Style::new() };
        let mut out = anstream::AutoStream::auto(std::io::stderr());
        let mut lines = wrap(text);
        if text.is_empty() {
            lines.push(String::new());
        }
        self.seen += lines.len();
        for line in lines {
            if line.is_empty() {
                writeln!(out)?;
            } else {
                writeln!(out, "{style}{line}{style:#}")?;
            }
        }
        out.flush()
    }

    /// Writes the kept notices above a question of this many lines.
    ///
    /// If they do not fit even when shortened, they are shown whole, to be read first.
    fn write_kept(&mut self, question: usize) -> Result<(), PromptError> {
        let kept = std::mem::take(&mut self.kept);
        let room = usize::from(size().1).saturating_sub(question);
        let fitting = fitted(&kept, room);
        let whole = || kept.iter().map(Notice::text).collect();
        let texts: Vec<String> = fitting.clone().unwrap_or_else(whole);
        let below = if fitting.is_some() { 0 } else { usize::MAX };
        self.pages(&texts, true, below)
    }

    /// Writes texts a screen at a time, and waits for a key after each screen.
    ///
    /// It also waits after the last one if the `below` lines to come would scroll it away.
    fn pages(&mut self, texts: &[String], bold: bool, below: usize) -> Result<(), PromptError> {
        let rows = usize::from(size().1);
        let mut used = 0;
        for (at, text) in texts.iter().enumerate() {
            let tall = wrap(text).len() + 1;
            if at > 0 && below > 0 && used + tall + 1 > rows {
                self.wait()?;
                used = 0;
            }
            used += tall;
            let (first, rest) = text.split_once('\n').unwrap_or((text, ""));
            self.write("", false)?;
            self.write(first, bold)?;
            if !rest.is_empty() {
                self.write(rest, false)?;
            }
        }
        if used > 0 && used.saturating_add(below) > rows {
            self.wait()?;
        }
        Ok(())
    }

    /// Returns the next key, paste, or change of the window size.
    fn next(&mut self) -> Result<Event, PromptError> {
        loop {
            match self.keys.next()? {
                Some(Event::Key(key)) if key.kind == KeyEventKind::Release => {}
                Some(Event::Key(key)) if is_interrupt(key) => return Err(PromptError::Interrupted),
                Some(event) => return Ok(event),
                None if INTERRUPTED.load(Ordering::Relaxed) => return Err(PromptError::Interrupted),
                None => {}
            }
        }
    }

    /// Waits until the user has read what is on the screen.
    fn wait(&mut self) -> Result<(), PromptError> {
        self.keys.drop_waiting()?;
        let hidden = Hidden::new(&self.keys)?;
        let mut out = std::io::stderr();
        let hint = self.words.text("hint-go-on");
        execute!(out, style::Print(format!("[{hint}]")))?;
        let read = loop {
            match self.next() {
                Ok(Event::Key(KeyEvent { code: KeyCode::Enter | KeyCode::Esc | KeyCode::Char(' '), .. })) => {
                    break Ok(());
                }
                Ok(_) => {}
                Err(error) => break Err(error),
            }
        };
        let line = terminal::Clear(terminal::ClearType::CurrentLine);
        execute!(out, cursor::MoveToColumn(0), line)?;
        drop(hidden);
        // What was read may scroll away.
        self.seen = 0;
        read
    }

    /// Passes keys to a prompt until it has an answer. Input typed while no question was open is dropped.
    fn hold(&mut self, prompt: &mut dyn Prompt) -> Result<Input, PromptError> {
        self.keys.drop_waiting()?;
        let hidden = Hidden::new(&self.keys)?;
        let mut drawn = Drawn::default();
        let answered = loop {
            drawn.draw(prompt, |lines| self.room(lines), self.colour)?;
            match self.next() {
                Ok(Event::Key(key)) => {
                    if let Then::Done(input, left) = prompt.key(key) {
                        break Ok((input, left));
                    }
                }
                Ok(Event::Paste(text)) => self.pasted |= !prompt.paste(&text),
                Ok(_) => {}
                Err(error) => break Err(error),
            }
        };
        drawn.clear()?;
        drop(hidden);
        let (input, left) = answered?;
        self.write(&format!("> {left}"), false)?;
        Ok(input)
    }

    /// Lets one row be picked from a menu.
    fn pick(&mut self, rows: &[Row], start: Option<usize>) -> Result<Input, PromptError> {
        self.keys.drop_waiting()?;
        let width = columns().saturating_sub(3);
        let mut rows: Vec<&Row> = rows.iter().collect();
        if start.is_none() {
            // Where Enter may take nothing, the cursor is on help.
            rows.sort_by_key(|row| row.input != Input::Explain);
        }
        let shown: Vec<String> = rows.iter().map(|row| cut(&row.text, width)).collect();
        let bold = if self.colour { StyleSheet::new().with_attr(Attributes::BOLD) } else { StyleSheet::empty() };
        // Plain signs, so that the row under the cursor is seen without color too.
        let look = RenderConfig::empty()
            .with_prompt_prefix(Styled::new(">"))
            .with_answered_prompt_prefix(Styled::new(">"))
            .with_highlighted_option_prefix(Styled::new("*"))
            .with_scroll_up_prefix(Styled::new("^"))
            .with_scroll_down_prefix(Styled::new("v"))
            .with_canceled_prompt_indicator(Styled::new("<"))
            .with_selected_option(Some(bold))
            .with_answer(bold);
        let hint = self.words.text("hint-list");
        let picked = Select::new("", shown)
            .with_render_config(look)
            .with_help_message(&hint)
            .with_page_size(self.room(short(rows.len())).saturating_sub(2))
            .with_starting_cursor(start.unwrap_or(0))
            // What is typed brings its rows to the top and hides none, so that Enter always has a row to take.
            .with_scorer(&|typed, _, row, _| Some(i64::from(row.to_lowercase().contains(&typed.to_lowercase()))))
            // The library's own order of equals is arbitrary.
            .with_sorter(&|rows| rows.sort_by_key(|(_, score)| std::cmp::Reverse(*score)))
            .raw_prompt();
        match picked {
            Ok(picked) => Ok(rows[picked.index].input.clone()),
            Err(InquireError::OperationCanceled) => Ok(Input::Back),
            Err(InquireError::OperationInterrupted) => Err(PromptError::Interrupted),
            Err(InquireError::IO(error)) if error.kind() == std::io::ErrorKind::Interrupted => {
                Err(PromptError::Interrupted)
            }
            Err(InquireError::IO(error)) => Err(PromptError::Terminal(error)),
            Err(error) => Err(PromptError::Terminal(std::io::Error::other(error))),
        }
    }

    /// Returns the number of lines for a prompt: the free lines below the messages, or else as many as it needs.
    fn room(&self, needs: usize) -> usize {
        let below = usize::from(size().1).saturating_sub(self.seen + 1);
        let free = below.saturating_sub(self.told).max(needs);
        free.min(below).clamp(SHORTEST_LIST, 40)
    }

    /// Drops input that was waiting when the answer was given.
    ///
    /// It came in the same paste, and its lines would answer questions that nobody has read.
    fn drop_pasted(&mut self) -> std::io::Result<()> {
        let waiting = self.keys.drop_waiting()?;
        let dropped = std::mem::take(&mut self.pasted) | waiting;
        if dropped && !INTERRUPTED.load(Ordering::Relaxed) {
            self.write(&self.words.text("note-first-line"), false)?;
        }
        Ok(())
    }
}

fn is_interrupt(key: KeyEvent) -> bool {
    key.code == KeyCode::Char('c') && key.modifiers.contains(KeyModifiers::CONTROL)
}

/// What a prompt has drawn.
#[derive(Default)]
struct Drawn {
    /// The width of each line.
    widths: Vec<usize>,
    /// The line that the cursor is in.
    at: usize,
}

impl Drawn {
    /// Clears the lines, counting those that a narrower window has broken in two.
    fn clear(&mut self) -> std::io::Result<()> {
        let columns = usize::from(size().0).max(1);
        let rows = |widths: &[usize]| -> usize { widths.iter().map(|width| width.div_ceil(columns).max(1)).sum() };
        let up = rows(&self.widths[..self.at]);
        let mut out = std::io::stderr();
        if up > 0 {
            queue!(out, cursor::MoveUp(u16::try_from(up).unwrap_or(u16::MAX)))?;
        }
        queue!(out, cursor::MoveToColumn(0), terminal::Clear(terminal::ClearType::FromCursorDown))?;
        self.widths.clear();
        self.at = 0;
        out.flush()
    }

    fn draw(&mut self, prompt: &dyn Prompt, room: impl Fn(usize) -> usize, bold: bool) -> std::io::Result<()> {
        use unicode_width::UnicodeWidthStr;
        self.clear()?;
        let (lines, caret) = prompt.lines(window(), room(prompt.needs(window())));
        let mut out = std::io::stderr();
        for (at, (line, strong)) in lines.iter().enumerate() {
            if at > 0 {
                queue!(out, style::Print("\r\n"))?;
            }
            let strong = *strong && bold;
            let style = Style::new().bold();
            let text = if strong { format!("{style}{line}{style:#}") } else { line.clone() };
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

/// The fewest lines in which a list is usable, including the typed text and the line of keys.
const SHORTEST_LIST: usize = 6;
/// The lines in which a short list is seen whole.
const SHORT_LIST: usize = 10;

/// Returns the lines in which a list of this many rows is seen, whole if it is short.
fn short(rows: usize) -> usize {
    (rows + 2).min(SHORT_LIST)
}

/// Fits notices into this many lines, each after a blank line, shortening the last ones first.
///
/// `None` if they do not fit even with all detail dropped.
fn fitted(kept: &[Notice], room: usize) -> Option<Vec<String>> {
    let mut texts: Vec<String> = kept.iter().map(Notice::text).collect();
    let tall = |texts: &[String]| -> usize { texts.iter().map(|it| wrap(it).len() + 1).sum() };
    for (at, notice) in kept.iter().enumerate().rev() {
        if tall(&texts) > room {
            let more = String::new();
            let short = Notice { more, ..notice.clone() };
            texts[at] = short.text();
        }
    }
    (tall(&texts) <= room).then_some(texts)
}

/// Returns the columns of the window that can be written to.
fn window() -> usize {
    textwrap::termwidth().saturating_sub(1).max(*COLUMNS.start())
}

fn columns() -> usize {
    text_width(window())
}

/// Returns the width of text in a window of this width.
fn text_width(window: usize) -> usize {
    window.min(*COLUMNS.end())
}

/// Wraps a text into lines that fit. A line with runs of spaces or a leading space belongs to a drawing, and stays as
/// it is.
pub(super) fn wrap(text: &str) -> Vec<String> {
    let width = columns();
    text.lines()
        .flat_map(|line| {
            if line.contains("  ") || line.starts_with([' ', '+', '|']) {
                vec![line.to_owned()]
            } else {
                folded(line, width)
            }
        })
        .collect()
}

/// Wraps the line of keys below a prompt. A key and what it does stay together.
fn keys_line(hint: &str, width: usize) -> impl Iterator<Item = (String, bool)> {
    let joined = format!("[{}]", hint.replace(" : ", "\u{a0}:\u{a0}").replace(": ", ":\u{a0}"));
    let lines = folded(&joined, width).into_iter();
    lines.map(|line| (line.replace('\u{a0}', " "), false))
}

/// Wraps a text at whole words.
fn folded(text: &str, width: usize) -> Vec<String> {
    let lines = textwrap::wrap(text, crate::words::wrapping(width));
    lines.into_iter().map(std::borrow::Cow::into_owned).collect()
}

/// Cuts a text to one line, after a whole word if enough of them fit.
fn cut(text: &str, width: usize) -> String {
    use unicode_width::{UnicodeWidthChar, UnicodeWidthStr};
    if text.width() <= width {
        return text.to_owned();
    }
    let blanks = text.match_indices(' ').map(|(at, _)| &text[..at]);
    let whole = blanks.take_while(|it| it.width() + 2 <= width).last();
    if let Some(whole) = whole.filter(|it| it.width() * 2 > width) {
        return format!("{} …", whole.trim_end_matches([',', ':', ';', ' ']));
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

impl Prompter for Terminal<'_> {
    fn ask(&mut self, view: &View) -> Result<Input, PromptError> {
        if INTERRUPTED.load(Ordering::Relaxed) {
            return Err(PromptError::Interrupted);
        }
        let at = [view.dots.as_str(), &view.progress].join(" ");
        let head = [("", false), (at.trim(), false), (view.question.as_str(), true), (view.why.as_str(), false)];
        let head = head.iter().enumerate().filter(|(at, (text, _))| *at == 0 || !text.is_empty());
        let head: Vec<&(&str, bool)> = head.map(|(_, line)| line).collect();
        let below = match &view.shape {
            Shape::Line { .. } => 3,
            Shape::List { rows, .. } => short(rows.len()),
        };
        let lines = head.iter().map(|(text, _)| wrap(text).len().max(1));
        let lines = lines.sum::<usize>();
        let given = std::mem::take(&mut self.given);
        // The kept notices go between these texts and the question.
        let kept = self.kept.iter().map(|notice| wrap(&notice.text()).len() + 1);
        self.pages(&given, false, kept.sum::<usize>() + lines + SHORTEST_LIST.min(below) + 1)?;
        self.told = std::mem::take(&mut self.seen);
        let kept = self.kept.clone();
        self.write_kept(lines + below + 1)?;
        for (text, bold) in head {
            self.write(text, *bold)?;
        }
        let drawing: Vec<&str> = view.drawing.lines().collect();
        let room = usize::from(size().1).saturating_sub(self.seen + SHORT_LIST + 1);
        if !drawing.is_empty() && !list::goes_beside(&drawing, &view.shape, window()) && drawing.len() < room {
            self.write("", false)?;
            self.write(&view.drawing, false)?;
        }
        let marked = self.marked.take();
        let marked = marked.filter(|(question, _)| *question == view.question);
        let input = match &view.shape {
            Shape::Line { default, hint } => {
                let keys = self.words.text("hint-keys");
                let hint =
                    if hint.is_empty() { keys } else { [hint.as_str(), &keys].join(&self.words.text("hint-between")) };
                let mut editor = Editor::new(default.as_deref(), hint).with(&view.refused);
                match self.hold(&mut editor)? {
                    Input::Answer(text) => typed(&text, &view.spoken),
                    other => other,
                }
            }
            // What to do next, beside the interview: no answer of these decides what the plan says.
            Shape::List { rows, start, marks: None } if view.progress.is_empty() => self.pick(rows, *start)?,
            Shape::List { rows, start, marks: None } => {
                let [keys, nothing] = ["hint-list", "list-nothing"].map(|key| self.words.text(key));
                self.hold(&mut List::of_one(rows, *start, keys, nothing).beside(&view.drawing))?
            }
            Shape::List { rows, marks: Some(marks), .. } => {
                let marks = marked.map_or_else(|| marks.clone(), |(_, marks)| marks);
                let [keys, nothing] = ["hint-many", "list-nothing"].map(|key| self.words.text(key));
                let mut list = List::new(rows, marks, keys, nothing).beside(&view.drawing);
                let input = self.hold(&mut list)?;
                if input != Input::Back {
                    self.marked = Some((view.question.clone(), list.marks));
                }
                input
            }
        };
        // After help or the picture, the same question is asked again, with its notices.
        if matches!(input, Input::Explain | Input::Picture) {
            self.kept = kept;
        }
        self.seen = 0;
        self.drop_pasted()?;
        Ok(input)
    }

    fn tell(&mut self, text: &str) -> std::io::Result<()> {
        self.write("", false)?;
        self.write(text, false)
    }

    fn keep(&mut self, notices: Vec<Notice>) -> std::io::Result<()> {
        self.kept.extend(notices);
        Ok(())
    }

    fn give(&mut self, texts: Vec<String>) -> std::io::Result<()> {
        self.given.extend(texts);
        Ok(())
    }
}

impl Drop for Terminal<'_> {
    fn drop(&mut self) {
        let _ = execute!(std::io::stderr(), event::DisableBracketedPaste);
        keys::give_back();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Detail is dropped first, from the last notice up. What to do is never dropped: if that does not fit, the notices
    /// are read before the question.
    #[test]
    fn what_must_be_seen_is_shortened_until_it_fits_and_never_loses_what_to_do() {
        let danger = |name: &str| Notice {
            what: format!("DANGER: {name}"),
            more: "Why: We do not know why, and so on.".to_owned(),
            todo: "Do: Stop the engine.".to_owned(),
        };
        let both = [danger("one"), danger("two")];
        let shown = |room: usize| Some(fitted(&both, room)?.join("|").replace('\n', " "));
        let whole = "DANGER: one Why: We do not know why, and so on. Do: Stop the engine.";
        assert_eq!(shown(8), Some(format!("{whole}|{}", whole.replace("one", "two"))));
        assert_eq!(shown(7), Some(format!("{whole}|DANGER: two Do: Stop the engine.")));
        assert_eq!(shown(6).as_deref(), Some("DANGER: one Do: Stop the engine.|DANGER: two Do: Stop the engine."));
        assert_eq!(shown(5), None);
    }

    /// In every language, the drawings have room beside the list of outlets in a window of 80 columns.
    #[test]
    fn drawings_fit_beside_the_outlets() {
        use crate::interview::{Draft, Machine, view};
        use crate::words::Units;
        for tag in ["en", "es", "es-ES", "fr", "fr-FR", "de"] {
            let words = Words::new(tag, Units::Customary).expect(tag);
            let mut machine = Machine::new(Draft::new("t"));
            machine.went_back_for_tests("outlets.faces");
            let view = view(&words, &machine.question());
            let drawing: Vec<&str> = view.drawing.lines().collect();
            assert!(drawing.len() > 9 && list::goes_beside(&drawing, &view.shape, 79), "{tag}");
        }
    }

    #[test]
    fn long_rows_are_cut_and_wide_letters_counted() {
        assert_eq!(cut("kettle", 6), "kettle");
        assert_eq!(cut("kettles", 6), "kettl…");
        assert_eq!(cut("電気毛布電気", 6), "電気…");
        assert_eq!(cut("Look at it, and answer", 20), "Look at it, and …");
        assert_eq!(cut("Look at it, and answer", 15), "Look at it …");
    }
}

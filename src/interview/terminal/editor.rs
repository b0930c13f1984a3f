//! A line editor with the usual keys of a shell.

use crossterm::event::{KeyCode, KeyEvent, KeyModifiers};
use unicode_width::UnicodeWidthChar;

use super::{Prompt, Then, cut, keys_line, text_width};
use crate::interview::Input;
use crate::plan::hides;

/// A line being typed.
#[derive(Default)]
pub(super) struct Editor {
    text: Vec<char>,
    /// The position of the cursor, as an index into `text`.
    at: usize,
    /// What Enter accepts. It is hidden once typing begins.
    default: Option<String>,
    hint: String,
}

impl Editor {
    pub(super) fn new(default: Option<&str>, hint: String) -> Self {
        Self { default: default.map(str::to_owned), hint, ..Self::default() }
    }

    /// Puts a text into the line, with the cursor at its end.
    pub(super) fn with(mut self, text: &str) -> Self {
        text.chars().for_each(|c| self.insert(c));
        self
    }

    pub(super) fn text(&self) -> String {
        self.text.iter().collect()
    }

    pub(super) fn is_empty(&self) -> bool {
        self.text.is_empty()
    }

    pub(super) fn empty(&mut self) {
        self.text.clear();
        self.at = 0;
    }

    /// Returns where the word before the cursor begins.
    fn word_left(&self) -> usize {
        let before = &self.text[..self.at];
        let end = before.iter().rposition(|c| !c.is_whitespace());
        let end = end.map_or(0, |at| at + 1);
        let space = before[..end].iter().rposition(|c| c.is_whitespace());
        space.map_or(0, |at| at + 1)
    }

    /// Returns where the word after the cursor ends.
    fn word_right(&self) -> usize {
        let rest = self.text[self.at..].iter();
        let blanks = rest.clone().take_while(|c| c.is_whitespace()).count();
        let letters = rest.skip(blanks).take_while(|c| !c.is_whitespace());
        self.at + blanks + letters.count()
    }

    fn remove(&mut self, from: usize, to: usize) {
        self.text.drain(from..to);
        self.at = from;
    }

    /// Edits the line as the key says, and returns whether it was an editing key.
    pub(super) fn edit(&mut self, key: KeyEvent) -> bool {
        let held = |which| key.modifiers.contains(which);
        let (control, alt) = (held(KeyModifiers::CONTROL), held(KeyModifiers::ALT));
        let by_word = control || alt;
        let (start, end) = (0, self.text.len());
        match key.code {
            KeyCode::Left if by_word => self.at = self.word_left(),
            KeyCode::Right if by_word => self.at = self.word_right(),
            KeyCode::Char('b') if alt => self.at = self.word_left(),
            KeyCode::Char('f') if alt => self.at = self.word_right(),
            KeyCode::Left => self.at = self.at.saturating_sub(1),
            KeyCode::Right => self.at = (self.at + 1).min(end),
            KeyCode::Home => self.at = start,
            KeyCode::End => self.at = end,
            KeyCode::Char('a') if control => self.at = start,
            KeyCode::Char('e') if control => self.at = end,
            KeyCode::Char('u') if control => self.remove(start, self.at),
            KeyCode::Char('k') if control => self.remove(self.at, end),
            KeyCode::Char('w') if control => self.remove(self.word_left(), self.at),
            KeyCode::Backspace if by_word => self.remove(self.word_left(), self.at),
            KeyCode::Char('h') if control => self.remove(self.at.saturating_sub(1), self.at),
            KeyCode::Backspace => self.remove(self.at.saturating_sub(1), self.at),
            KeyCode::Delete if self.at < end => self.remove(self.at, self.at + 1),
            KeyCode::Char(c) if !control && !alt => self.insert(c),
            _ => return false,
        }
        true
    }

    /// Inserts a character, except for hidden ones, which would control the terminal and are not allowed in any answer.
    fn insert(&mut self, c: char) {
        if !hides(c) {
            self.text.insert(self.at, c);
            self.at += 1;
        }
    }

    /// Returns the part of the line that fits, and the column of the cursor in it.
    pub(super) fn shown(&self, width: usize) -> (String, usize) {
        let wide = |c: &char| c.width().unwrap_or(0);
        let mut from = self.at;
        let mut used = 0;
        while from > 0 && used + wide(&self.text[from - 1]) < width {
            from -= 1;
            used += wide(&self.text[from]);
        }
        let mut all = 0;
        let rest = self.text[from..].iter().take_while(|c| {
            all += wide(c);
            all <= width
        });
        (rest.collect(), used)
    }
}

impl Prompt for Editor {
    fn lines(&self, width: usize, _: usize) -> (Vec<(String, bool)>, Option<usize>) {
        let width = text_width(width);
        let (mut line, at) = self.shown(width.saturating_sub(2));
        if let (true, Some(default)) = (self.is_empty(), &self.default) {
            line = format!("({default})");
        }
        let mut lines = vec![(cut(&format!("> {line}"), width), false)];
        lines.extend(keys_line(&self.hint, width));
        (lines, Some(at + 2))
    }

    fn key(&mut self, key: KeyEvent) -> Then {
        match key.code {
            KeyCode::Esc => Then::Done(Input::Back, "<".to_owned()),
            KeyCode::Enter => {
                let text = self.text();
                let usual = self.default.as_ref().filter(|_| text.trim().is_empty());
                let shown = usual.cloned().unwrap_or(text);
                Then::Done(Input::Answer(shown.clone()), shown)
            }
            _ => {
                self.edit(key);
                Then::On
            }
        }
    }

    /// Inserts the first line that is not blank.
    fn paste(&mut self, text: &str) -> bool {
        let mut lines = text.split(['\r', '\n']).filter(|line| !line.trim().is_empty());
        for c in lines.next().unwrap_or_default().chars() {
            self.insert(c);
        }
        lines.next().is_none()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn press(editor: &mut Editor, keys: &[(KeyCode, KeyModifiers)]) {
        for (code, modifiers) in keys {
            editor.key(KeyEvent::new(*code, *modifiers));
        }
    }

    fn typed(text: &str) -> Editor {
        let mut editor = Editor::new(Some("4000 W"), String::new());
        editor.paste(text);
        editor
    }

    #[test]
    fn the_keys_of_a_shell() {
        const NONE: KeyModifiers = KeyModifiers::NONE;
        const CONTROL: KeyModifiers = KeyModifiers::CONTROL;
        let control = |c| (KeyCode::Char(c), CONTROL);
        for (keys, left, at) in [
            (vec![control('u')], "", 0),
            (vec![control('w')], "SJTW 12/3 ", 10),
            (vec![control('w'), control('w')], "SJTW ", 5),
            (vec![(KeyCode::Home, NONE), control('k')], "", 0),
            (vec![(KeyCode::Left, CONTROL)], "SJTW 12/3 50ft", 10),
            (vec![(KeyCode::Home, NONE), (KeyCode::Right, CONTROL)], "SJTW 12/3 50ft", 4),
            (vec![(KeyCode::Home, NONE), (KeyCode::End, NONE)], "SJTW 12/3 50ft", 14),
            (vec![(KeyCode::Left, NONE), (KeyCode::Delete, NONE)], "SJTW 12/3 50f", 13),
            (vec![(KeyCode::Backspace, NONE), (KeyCode::Char('!'), NONE)], "SJTW 12/3 50f!", 14),
        ] {
            let mut editor = typed("SJTW 12/3 50ft");
            press(&mut editor, &keys);
            assert_eq!((editor.text().as_str(), editor.at), (left, at), "{keys:?}");
        }
    }

    #[test]
    fn what_would_steer_the_terminal_is_left_out() {
        assert_eq!(typed("a\u{1b}[2J\u{202e}b").text(), "a[2Jb");
    }

    #[test]
    fn what_is_shown_as_usual_goes_when_typing_begins() {
        let line = |editor: &Editor| editor.lines(40, 9).0[0].0.clone();
        let mut editor = typed("");
        assert_eq!(line(&editor), "> (4000 W)");
        editor.key(KeyEvent::from(KeyCode::Char('2')));
        assert_eq!(line(&editor), "> 2");
        let mut editor = typed("");
        let Then::Done(input, _) = editor.key(KeyEvent::from(KeyCode::Enter)) else { panic!("no answer") };
        assert_eq!(input, Input::Answer("4000 W".into()));
    }

    /// At 27 columns the line of keys wraps onto two lines, between words.
    #[test]
    fn the_line_of_keys_folds() {
        let editor = Editor::new(None, "or unknown, ?: help, Esc: back".to_owned());
        let lines = editor.lines(27, 9).0.into_iter().map(|(line, _)| line);
        assert_eq!(lines.collect::<Vec<_>>(), ["> ", "[or unknown, ?: help,", "Esc: back]"]);
    }

    #[test]
    fn a_long_line_shows_where_the_cursor_is() {
        let editor = typed(&"x".repeat(100));
        let (shown, at) = editor.shown(20);
        assert_eq!((shown.len(), at), (19, 19));
    }
}

//! A list to pick from with arrow keys or by typing: one row, or several with a count of each.

use std::ops::Range;

use crossterm::event::{KeyCode, KeyEvent, KeyModifiers};

use super::{Prompt, Then, cut, folded, keys_line, short, text_width};
use crate::interview::form::MOST_PICKED;
use crate::interview::terminal::editor::Editor;
use crate::interview::view::Found;
use crate::interview::{Input, Row, Shape, form};

/// The longest list that people would scroll through.
const LONGEST_SCROLLED: usize = 60;

pub(super) struct List<'a> {
    rows: Vec<&'a Row>,
    /// Whether several rows can be marked.
    many: bool,
    /// The count marked for each row.
    pub(super) marks: Vec<u8>,
    /// The rows in display order. Marked rows come first, where they are seen.
    order: Vec<usize>,
    typed: Editor,
    /// The cursor's place among the matching rows.
    at: usize,
    /// The place of the cursor while nothing is typed: on the row that Enter alone accepts.
    start: usize,
    hint: String,
    nothing: String,
    /// The lines of a drawing beside the rows.
    drawing: Vec<&'a str>,
}

/// The columns ahead of the text of a row.
const SIGNS: usize = 3;

/// Returns the width of a list with this drawing beside it, or `None` if one of its rows would not fit on a line.
fn width_beside(drawing: &[&str], rows: &[&Row], window: usize) -> Option<usize> {
    let wide = |text: &str| unicode_width::UnicodeWidthStr::width(text);
    let of_drawing = drawing.iter().map(|line| wide(line)).max()?;
    let list = text_width(window.checked_sub(of_drawing + 1)?);
    let fits = list + of_drawing < window && rows.iter().all(|row| wide(&row.text) + SIGNS <= list);
    fits.then_some(list)
}

/// Whether a drawing goes beside the list in this window.
pub(super) fn goes_beside(drawing: &[&str], shape: &Shape, window: usize) -> bool {
    let Shape::List { rows, .. } = shape else {
        return false;
    };
    let rows: Vec<&Row> = rows.iter().collect();
    width_beside(drawing, &rows, window).is_some()
}

/// Returns as many lines of a drawing as have room, and no part of it alone. Without a line that is drawn, none.
fn whole_parts<'d>(drawing: &[&'d str], room: usize) -> Vec<&'d str> {
    let mut ends = (0..=drawing.len()).filter(|end| drawing.get(*end).is_none_or(|line| line.trim().is_empty()));
    let words = ends.next().unwrap_or(0);
    let end = ends.take_while(|end| *end <= room).last().filter(|end| *end > words);
    drawing[..end.unwrap_or(0)].to_vec()
}

impl<'a> List<'a> {
    pub(super) fn new(rows: &'a [Row], marks: Vec<u8>, hint: String, nothing: String) -> Self {
        let rows: Vec<&Row> = rows.iter().collect();
        let order = (0..rows.len()).collect();
        let mut list = Self {
            rows,
            many: true,
            marks,
            order,
            typed: Editor::default(),
            at: 0,
            start: 0,
            hint,
            nothing,
            drawing: Vec::new(),
        };
        list.put_marked_first();
        list
    }

    /// Creates a list that takes one row.
    ///
    /// Without a default, the help row comes first and has the cursor, so that Enter alone accepts no answer.
    pub(super) fn of_one(rows: &'a [Row], start: Option<usize>, hint: String, nothing: String) -> Self {
        let mut list = Self::new(rows, vec![0; rows.len()], hint, nothing);
        list.many = false;
        if start.is_none() {
            list.order.sort_by_key(|row| rows[*row].input != Input::Explain);
        }
        list.start = start.unwrap_or(0);
        list.at = list.start;
        list
    }

    /// Puts a drawing beside the rows, in a window that is wide enough.
    pub(super) fn beside(self, drawing: &'a str) -> Self {
        Self { drawing: drawing.lines().collect(), ..self }
    }

    /// Returns the width of the list with its drawing beside it, if it goes there.
    fn width_beside(&self, window: usize) -> Option<usize> {
        width_beside(&self.drawing, &self.rows, window)
    }

    fn put_marked_first(&mut self) {
        let marks = &self.marks;
        self.order = (0..self.rows.len()).collect();
        self.order.sort_by_key(|row| *row > 0 && marks[*row] == 0);
    }

    /// Returns the rows that match the typed text, and whether none does.
    fn found(&self) -> (Vec<usize>, bool) {
        let rows: Vec<&Row> = self.order.iter().map(|at| self.rows[*at]).collect();
        let found = Found::of(&rows, &self.typed.text());
        (found.rows.into_iter().map(|at| self.order[at]).collect(), found.lost)
    }

    /// Returns the mark of a row, or `None` if it cannot be marked.
    fn mark(&mut self, row: usize) -> Option<&mut u8> {
        // The first row ends the list, and rows such as help are not items.
        let thing = self.many && row > 0 && matches!(self.rows[row].input, Input::Answer(_));
        self.marks.get_mut(row).filter(|_| thing)
    }

    /// Returns everything marked, as the answer and as text to read.
    fn marked(&self) -> (String, String) {
        let all = |text: fn(&Row) -> &str| {
            let marked = self.rows.iter().zip(&self.marks).filter(|(_, count)| **count > 0);
            let each = marked.map(|(row, count)| form::picked(*count, text(row)));
            each.collect::<Vec<_>>().join(", ")
        };
        (all(|row| row.value().unwrap_or_default()), all(|row| &row.text))
    }

    /// Moves to the row that ends the list, and clears the typed text.
    fn go_to_end(&mut self) {
        self.put_marked_first();
        self.typed.empty();
        self.at = 0;
    }

    fn enter(&mut self, row: usize) -> Then {
        if let Some(mark) = self.mark(row) {
            *mark = u8::from(*mark == 0);
            // After a search, show the marked row among the other marked ones.
            if !self.typed.is_empty() {
                self.go_to_end();
                self.at = self.order.iter().position(|it| *it == row).unwrap_or(0);
            }
            return Then::On;
        }
        let input = self.rows[row].input.clone();
        if row == 0 && self.many {
            let (values, texts) = self.marked();
            if !values.is_empty() {
                return Then::Done(Input::Answer(values), texts);
            }
        }
        Then::Done(input, self.rows[row].text.clone())
    }
}

/// Returns the range of rows to show in this many lines: those around `at`, or all of them if they fit.
fn window(rows: &[Vec<String>], at: usize, room: usize) -> Range<usize> {
    let tall = |at: usize| rows.get(at).map_or(0, |lines| lines.len().max(1));
    let (mut from, mut to, mut used) = (at, at + 1, tall(at));
    // Up to half of the lines go to the rows above, the rest to the rows below. What is still free goes to the rows
    // above.
    for most in [room / 2, room] {
        while from > 0 && used + tall(from - 1) <= most {
            from -= 1;
            used += tall(from);
        }
        while to < rows.len() && used + tall(to) <= room {
            used += tall(to);
            to += 1;
        }
    }
    from..to
}

impl Prompt for List<'_> {
    fn needs(&self, window: usize) -> usize {
        let drawing = self.width_beside(window).map_or(0, |_| self.drawing.len() + 1);
        short(self.rows.len()).max(drawing)
    }

    fn lines(&self, columns: usize, height: usize) -> (Vec<(String, bool)>, Option<usize>) {
        let beside = self.width_beside(columns);
        let width = beside.unwrap_or_else(|| text_width(columns));
        let (typed, at) = self.typed.shown(width.saturating_sub(2));
        let mut lines = vec![(format!("> {typed}"), false)];
        let (found, lost) = self.found();
        if lost {
            lines.extend(folded(&self.nothing, width).into_iter().map(|line| (line, false)));
        }
        let keys: Vec<_> = keys_line(&self.hint, text_width(columns)).collect();
        let room = height.saturating_sub(lines.len() + keys.len()).max(4);
        // A list too long to scroll is searched by typing, so half the lines are enough.
        let room = if found.len() > LONGEST_SCROLLED { (room / 2).max(4) } else { room };
        let drawing = whole_parts(&self.drawing, beside.map_or(0, |_| height.saturating_sub(keys.len())));
        let text_at = width;
        let width = width.saturating_sub(SIGNS);
        let text = |row: &usize| &self.rows[*row].text;
        let texts =
            found.iter().map(|row| if self.many { folded(text(row), width) } else { vec![cut(text(row), width)] });
        let texts: Vec<Vec<String>> = texts.collect();
        // The row that ends the list is always shown.
        let end = usize::from(self.many && found.first() == Some(&0));
        let seen = window(&texts[end..], self.at.saturating_sub(end), room - end);
        let seen = seen.start + end..seen.end + end;
        for (place, row) in found.iter().enumerate() {
            if place >= end && !seen.contains(&place) {
                continue;
            }
            let here = place == self.at;
            let more = place == seen.start && place > end;
            let less = place + 1 == seen.end && place + 1 < found.len();
            let sign = match (here, more, less) {
                (true, ..) => '*',
                (_, true, _) => '^',
                (_, _, true) => 'v',
                _ => ' ',
            };
            let thing = *row > 0 && matches!(self.rows[*row].input, Input::Answer(_));
            // One column wide, to leave room for the text on a narrow screen.
            let mark = match self.marks[*row] {
                _ if !self.many => String::new(),
                _ if !thing => " ".to_owned(),
                0 => "□".to_owned(),
                1 => "■".to_owned(),
                count => count.to_string(),
            };
            let head = format!("{sign}{mark} ");
            let rest = std::iter::repeat("   ");
            for (head, text) in std::iter::once(head.as_str()).chain(rest).zip(&texts[place]) {
                lines.push((head.to_owned() + text, here));
            }
        }
        lines.resize(lines.len().max(drawing.len()), (String::new(), false));
        for ((line, _), drawn) in lines.iter_mut().zip(drawing) {
            let blank = (text_at + 1).saturating_sub(unicode_width::UnicodeWidthStr::width(line.as_str()));
            *line = format!("{line}{}{drawn}", " ".repeat(blank));
        }
        lines.extend(keys);
        (lines, Some(at + 2))
    }

    fn key(&mut self, key: KeyEvent) -> Then {
        let (found, _) = self.found();
        let row = found.get(self.at).copied();
        let by_word = key.modifiers.intersects(KeyModifiers::CONTROL | KeyModifiers::ALT);
        let step = |at: usize, by: isize| at.saturating_add_signed(by).min(found.len().saturating_sub(1));
        match (key.code, row) {
            (KeyCode::Esc, _) if self.typed.is_empty() => {
                return Then::Done(Input::Back, "<".to_owned());
            }
            // The first Esc clears the typed text.
            (KeyCode::Esc, _) => {
                self.typed.empty();
                self.at = self.start;
            }
            (KeyCode::Enter, Some(row)) => return self.enter(row),
            (KeyCode::Up, _) if self.at == 0 => self.at = found.len().saturating_sub(1),
            (KeyCode::Tab, _) if self.many => self.go_to_end(),
            (KeyCode::Down, _) if self.at + 1 >= found.len() => self.at = 0,
            (KeyCode::Up, _) => self.at -= 1,
            (KeyCode::Down, _) => self.at += 1,
            (KeyCode::PageUp, _) => self.at = step(self.at, -10),
            (KeyCode::PageDown, _) => self.at = step(self.at, 10),
            (KeyCode::Home, _) if self.typed.is_empty() => self.at = 0,
            (KeyCode::End, _) if self.typed.is_empty() => self.at = step(usize::MAX, 0),
            (KeyCode::Right, Some(row)) if self.many && !by_word => {
                if let Some(mark) = self.mark(row) {
                    *mark = mark.saturating_add(1).min((*mark).max(MOST_PICKED));
                }
            }
            (KeyCode::Left, Some(row)) if self.many && !by_word => {
                if let Some(mark) = self.mark(row) {
                    *mark = mark.saturating_sub(1);
                }
            }
            (KeyCode::Char(' '), Some(row)) if self.typed.is_empty() => {
                if let Some(mark) = self.mark(row) {
                    *mark = u8::from(*mark == 0);
                }
            }
            _ => {
                let before = self.typed.text();
                if self.typed.edit(key) && self.typed.text() != before {
                    self.at = if self.typed.is_empty() { self.start } else { 0 };
                }
            }
        }
        Then::On
    }

    fn paste(&mut self, text: &str) -> bool {
        self.at = 0;
        self.typed.paste(text)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rows(texts: &[&str]) -> Vec<Row> {
        let row = |text: &&str| Row {
            text: (*text).to_owned(),
            also: String::new(),
            size: 0,
            input: Input::Answer(text.to_lowercase()),
        };
        let mut rows: Vec<Row> = texts.iter().map(row).collect();
        rows.push(Row { text: "? Tell me more".to_owned(), also: String::new(), size: 0, input: Input::Explain });
        rows
    }

    /// Presses keys, given as words for special keys and as letters, and returns the resulting input.
    fn press(list: &mut List, keys: &str) -> Option<Input> {
        for word in keys.split(' ') {
            let codes = match word {
                "enter" => vec![KeyCode::Enter],
                "tab" => vec![KeyCode::Tab],
                "esc" => vec![KeyCode::Esc],
                "back" => vec![KeyCode::Backspace],
                "down" => vec![KeyCode::Down],
                "right" => vec![KeyCode::Right],
                "left" => vec![KeyCode::Left],
                "space" => vec![KeyCode::Char(' ')],
                letters => letters.chars().map(KeyCode::Char).collect(),
            };
            for code in codes {
                if let Then::Done(input, _) = list.key(KeyEvent::from(code)) {
                    return Some(input);
                }
            }
        }
        None
    }

    /// Typing and erasing a letter does not move Enter to the first row.
    #[test]
    fn the_cursor_returns_to_the_default_when_nothing_is_typed() {
        let all = rows(&["All of them", "None", "I don't know"]);
        let of_one = |start| List::of_one(&all, Some(start), String::new(), String::new());
        let default = Some(Input::Answer("i don't know".to_owned()));
        assert_eq!(press(&mut of_one(2), "enter"), default);
        assert_eq!(press(&mut of_one(2), "x back enter"), default);
        assert_eq!(press(&mut of_one(2), "x esc enter"), default);
        assert_eq!(press(&mut of_one(2), "non enter"), Some(Input::Answer("none".to_owned())));
    }

    #[test]
    fn enter_marks_what_was_typed_and_tab_goes_to_the_row_that_ends_the_list() {
        let all = rows(&["That is all", "Kettle", "Phone", "Fridge"]);
        let many = || List::new(&all, vec![0; all.len()], String::new(), String::new());
        let marked = |keys: &str| press(&mut many(), keys);
        let answer = |text: &str| Some(Input::Answer(text.to_owned()));
        assert_eq!(marked("kettle enter fr enter tab enter"), answer("kettle, fridge"));
        // The cursor stays on a row that was just marked, whether by search or by arrows. The next key counts it or
        // unmarks it.
        assert_eq!(marked("kettle enter right tab enter"), answer("2 × kettle"));
        assert_eq!(marked("kettle enter enter tab enter"), answer("that is all"));
        assert_eq!(marked("down down enter right tab enter"), answer("2 × phone"));
        assert_eq!(marked("down enter enter enter enter"), None);
        assert_eq!(marked("down space down right right tab enter"), answer("kettle, 2 × phone"));
        assert_eq!(marked("down space space enter down enter"), None);
        assert_eq!(marked("kettle enter kettle left tab enter"), answer("that is all"));
        // A row marked by mistake can be unmarked.
        assert_eq!(marked("kettle enter kettle enter tab enter"), answer("that is all"));
        assert_eq!(marked("kettle enter kettle right tab enter"), answer("2 × kettle"));
        // One key moves to the row that ends the list, even with text typed.
        assert_eq!(marked("down space down down ket tab enter"), answer("kettle"));
        let mut most = List::new(&all, vec![0, u8::MAX, 0, 0, 0], String::new(), String::new());
        assert_eq!(press(&mut most, "down right tab enter"), answer("255 × kettle"));
        // Ending the list with nothing marked.
        assert_eq!(marked("enter"), answer("that is all"));
        // A typed match is not marked until Enter, and the first Esc clears it.
        assert_eq!(marked("kettle esc enter"), answer("that is all"));
        assert_eq!(marked("kettle esc esc"), Some(Input::Back));
        // Help takes Enter, as where an answer is typed.
        assert_eq!(marked("? enter"), Some(Input::Explain));
        let many = "right ".repeat(40);
        assert_eq!(marked(&format!("down {many}tab enter")), answer("12 × kettle"));
    }

    /// In a list that takes one row, Enter accepts it: the best match, or the first of equal matches in list order.
    /// Without a default, the cursor is on help.
    #[test]
    fn enter_takes_the_one_row() {
        let all = rows(&["Small kettle", "Kettle", "Phone", "Pump"]);
        let one = |start, keys: &str| press(&mut List::of_one(&all, start, String::new(), String::new()), keys);
        let answer = |text: &str| Some(Input::Answer(text.to_owned()));
        assert_eq!(one(Some(2), "enter"), answer("phone"));
        assert_eq!(one(Some(2), "down enter"), answer("pump"));
        assert_eq!(one(Some(2), "kettle enter"), answer("kettle"));
        assert_eq!(one(Some(2), "p enter"), answer("phone"));
        assert_eq!(one(Some(2), "right tab space left enter"), answer("phone"));
        assert_eq!(one(None, "enter"), Some(Input::Explain));
        assert_eq!(one(None, "down enter"), answer("small kettle"));
        assert_eq!(one(None, "boat enter"), Some(Input::Explain));
        assert_eq!(one(Some(0), "esc"), Some(Input::Back));
        let list = List::of_one(&all, Some(1), String::new(), String::new());
        let shown: Vec<String> = list.lines(9, 20).0.into_iter().map(|(line, _)| line).collect();
        assert_eq!(shown[..4], ["> ", "  Small…", "* Kettle", "  Phone"]);
    }

    #[test]
    fn what_matches_nothing_says_so() {
        let others = rows(&["That is all", "Kettle", "own"]);
        let marks = vec![0; others.len()];
        let nothing = "Nothing like that".to_owned();
        let mut list = List::new(&others, marks, String::new(), nothing);
        let own = Input::Answer("own".to_owned());
        assert_eq!(press(&mut list, "boat"), None);
        let shown = list.lines(40, 10).0;
        assert!(shown.iter().any(|(line, _)| line.contains("Nothing like that")));
        assert_eq!(press(&mut list, "enter tab enter"), Some(own));
    }

    /// On a narrow screen long rows wrap, and the list shows fewer of them.
    #[test]
    fn long_rows_fold() {
        let all = rows(&["That is all", "Unplug the cord, and do not use it", "Phone"]);
        let mut list = List::new(&all, vec![0; all.len()], String::new(), String::new());
        let shown = |list: &List, height: usize| -> Vec<String> {
            let lines = list.lines(24, height).0;
            lines.into_iter().map(|(line, _)| line).collect()
        };
        let whole = ["> ", "*  That is all", " □ Unplug the cord, and", "   do not use it", " □ Phone"];
        assert_eq!(shown(&list, 20)[..5], whole);
        assert_eq!(shown(&list, 6).len(), 6);
        press(&mut list, "down down");
        assert!(shown(&list, 6).contains(&"*□ Phone".to_owned()));
    }

    /// A drawing stands beside the rows where both fit, and as much of it as has lines. Nothing else is pushed off.
    #[test]
    fn a_drawing_stands_beside_the_rows() {
        let drawing = "Match the holes.\n \n |   |\n   o\n \n (   )\n";
        let rows = rows(&["Regular", "Twist"]);
        let list = || List::of_one(&rows, Some(0), "Enter".into(), String::new()).beside(drawing);
        let lines = |width: usize, height: usize| {
            let lines = list().lines(width, height).0.into_iter().map(|(line, _)| line.trim_end().to_owned());
            lines.collect::<Vec<_>>()
        };
        let beside = lines(39, 9);
        assert_eq!(
            beside,
            [
                ">                      Match the holes.",
                "* Regular",
                "  Twist                 |   |",
                "  ? Tell me more          o",
                "",
                "                        (   )",
                "[Enter]",
            ]
        );
        assert_eq!(list().needs(39), 7);
        // Less room: whole rows of the drawing only.
        assert_eq!(lines(39, 6).last().map(String::as_str), Some("[Enter]"));
        assert!(lines(39, 6).concat().contains("|   |") && !lines(39, 6).concat().contains("(   )"));
        // No room beside the rows.
        assert_eq!(lines(30, 9), [">", "* Regular", "  Twist", "  ? Tell me more", "[Enter]"]);
    }
}

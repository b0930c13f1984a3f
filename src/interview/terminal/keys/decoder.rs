//! Decoding of terminal bytes into events.

use std::collections::VecDeque;
use std::time::Duration;

use crossterm::event::{Event, KeyCode, KeyEvent, KeyModifiers};

use super::SILENCE;

/// The silence after which an unfinished paste is taken as complete. It is long, because a paste may come over a slow
/// line.
const PASTE_SILENCE: Duration = Duration::from_secs(1);

/// The bytes that end a paste.
const PASTE_ENDS: &[u8] = b"\x1b[201~";

/// The bytes received and not yet decoded.
#[derive(Debug, Default)]
pub(super) struct Decoder {
    pub(super) bytes: VecDeque<u8>,
}

/// What the first bytes mean.
enum Read {
    /// This many bytes are this event.
    Is(usize, Event),
    /// This many bytes mean nothing here.
    Nothing(usize),
    /// More bytes have to come.
    Begun,
}

impl Decoder {
    /// Returns the next event, given how long the terminal has been silent.
    pub(super) fn next(&mut self, silent: Duration) -> Option<Event> {
        loop {
            let bytes: &[u8] = self.bytes.make_contiguous();
            if bytes.is_empty() {
                return None;
            }
            let (count, event) = match read(bytes, silent) {
                Read::Is(count, event) => (count, Some(event)),
                Read::Nothing(count) => (count, None),
                Read::Begun => return None,
            };
            self.bytes.drain(..count);
            if event.is_some() {
                return event;
            }
        }
    }
}

fn read(bytes: &[u8], silent: Duration) -> Read {
    let is = |count, code, modifiers| Read::Is(count, Event::Key(KeyEvent::new(code, modifiers)));
    let plain = |code| is(1, code, KeyModifiers::NONE);
    match bytes[0] {
        0x1b => escape(bytes, silent),
        b'\r' | b'\n' => plain(KeyCode::Enter),
        b'\t' => plain(KeyCode::Tab),
        0x7f => plain(KeyCode::Backspace),
        control @ 1..=26 => is(1, KeyCode::Char(char::from(control - 1 + b'a')), KeyModifiers::CONTROL),
        0..=31 => Read::Nothing(1),
        _ => match letter(bytes) {
            Some(c) => is(c.len_utf8(), KeyCode::Char(c), KeyModifiers::NONE),
            None if bytes.len() < 4 && silent < SILENCE => Read::Begun,
            None => Read::Nothing(1),
        },
    }
}

/// Decodes the character at the beginning of these bytes.
fn letter(bytes: &[u8]) -> Option<char> {
    let bytes = &bytes[..bytes.len().min(4)];
    let whole = match std::str::from_utf8(bytes) {
        Ok(text) => text,
        Err(error) => std::str::from_utf8(&bytes[..error.valid_up_to()]).ok()?,
    };
    whole.chars().next()
}

fn escape(bytes: &[u8], silent: Duration) -> Read {
    let open = |most: Duration| if silent < most { Read::Begun } else { Read::Nothing(bytes.len()) };
    let key = |count, code, modifiers| Read::Is(count, Event::Key(KeyEvent::new(code, modifiers)));
    match bytes.get(1) {
        None if silent < SILENCE => Read::Begun,
        None | Some(0x1b) => key(1, KeyCode::Esc, KeyModifiers::NONE),
        Some(b'O') => match bytes.get(2) {
            None => open(SILENCE),
            Some(last) => named(&[], *last).map_or(Read::Nothing(3), |code| key(3, code, KeyModifiers::NONE)),
        },
        Some(b'[') => {
            let rest = &bytes[2..];
            let Some(at) = rest.iter().position(|byte| !(0x20..=0x3f).contains(byte)) else {
                return open(SILENCE);
            };
            let (told, last, count) = (&rest[..at], rest[at], at + 3);
            match (told, last) {
                // The sequence never ended, and this byte begins something else.
                (_, 0..0x40 | 0x7f..) => Read::Nothing(count - 1),
                (b"200", b'~') => {
                    let pasted = &bytes[count..];
                    let end = pasted.windows(PASTE_ENDS.len()).position(|it| it == PASTE_ENDS);
                    let text = |end: usize| Event::Paste(String::from_utf8_lossy(&pasted[..end]).into_owned());
                    match end {
                        Some(end) => Read::Is(count + end + PASTE_ENDS.len(), text(end)),
                        None if silent < PASTE_SILENCE => Read::Begun,
                        None => Read::Is(bytes.len(), text(pasted.len())),
                    }
                }
                // An X10 mouse report, which has three more bytes.
                (b"", b'M') if bytes.len() < count + 3 => open(SILENCE),
                (b"", b'M') => Read::Nothing(count + 3),
                _ => {
                    let mut told = told.split(|byte| *byte == b';');
                    let first = told.next().unwrap_or_default();
                    let held = told.next().and_then(|it| std::str::from_utf8(it).ok()?.parse::<u8>().ok());
                    let held = held.unwrap_or(1).saturating_sub(1);
                    let mut modifiers = KeyModifiers::NONE;
                    modifiers.set(KeyModifiers::SHIFT, held & 1 > 0);
                    modifiers.set(KeyModifiers::ALT, held & 2 > 0);
                    modifiers.set(KeyModifiers::CONTROL, held & 4 > 0);
                    named(first, last).map_or(Read::Nothing(count), |code| key(count, code, modifiers))
                }
            }
        }
        // An escape byte before a key means that Alt was held.
        Some(_) => match read(&bytes[1..], silent) {
            Read::Is(count, Event::Key(mut with)) => {
                with.modifiers.insert(KeyModifiers::ALT);
                Read::Is(count + 1, Event::Key(with))
            }
            Read::Is(..) => Read::Nothing(1),
            Read::Nothing(count) => Read::Nothing(count + 1),
            Read::Begun => Read::Begun,
        },
    }
}

/// Returns the key of a sequence, given its first number and its last byte.
fn named(first: &[u8], last: u8) -> Option<KeyCode> {
    Some(match (first, last) {
        (_, b'A') => KeyCode::Up,
        (_, b'B') => KeyCode::Down,
        (_, b'C') => KeyCode::Right,
        (_, b'D') => KeyCode::Left,
        (_, b'H') | (b"1" | b"7", b'~') => KeyCode::Home,
        (_, b'F') | (b"4" | b"8", b'~') => KeyCode::End,
        (_, b'M') if first.is_empty() => KeyCode::Enter,
        (b"3", b'~') => KeyCode::Delete,
        (b"5", b'~') => KeyCode::PageUp,
        (b"6", b'~') => KeyCode::PageDown,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Decodes these bytes after a silence, and returns the keys as text.
    fn keys(bytes: &[u8]) -> Vec<String> {
        let mut decoder = Decoder::default();
        decoder.bytes.extend(bytes);
        let mut all = Vec::new();
        while let Some(event) = decoder.next(PASTE_SILENCE) {
            all.push(match event {
                Event::Key(key) if key.modifiers.is_empty() => format!("{:?}", key.code),
                Event::Key(key) => format!("{:?}+{:?}", key.modifiers, key.code),
                other => format!("{other:?}"),
            });
        }
        assert!(decoder.bytes.is_empty(), "{bytes:?} leaves {decoder:?}");
        all
    }

    #[test]
    fn keys_of_a_terminal() {
        assert_eq!(keys(b"a\r\t\x7f"), ["Char('a')", "Enter", "Tab", "Backspace"]);
        assert_eq!(keys("é電".as_bytes()), ["Char('é')", "Char('電')"]);
        assert_eq!(keys(b"\x1b[A\x1b[B\x1bOC\x1b[D"), ["Up", "Down", "Right", "Left"]);
        assert_eq!(keys(b"\x1b[H\x1b[4~\x1b[3~\x1b[5~\x1b[6~"), ["Home", "End", "Delete", "PageUp", "PageDown"]);
        assert_eq!(
            keys(b"\x17\x1b[1;5D\x1bb"),
            ["KeyModifiers(CONTROL)+Char('w')", "KeyModifiers(CONTROL)+Left", "KeyModifiers(ALT)+Char('b')",]
        );
        assert_eq!(keys(b"\x1b"), ["Esc"]);
        assert_eq!(keys(b"\x1b\x1b[A"), ["Esc", "Up"]);
        assert_eq!(keys(b"\x1b[200~a\x1b[A\r\x1b[201~b"), ["Paste(\"a\\u{1b}[A\\r\")", "Char('b')"]);
    }

    /// A key that comes after an incomplete sequence and a silence is read.
    #[test]
    fn nothing_that_is_cut_off_swallows_a_key() {
        let halves: [&[u8]; 9] = [
            b"\x1b[",
            b"\x1b[<0;10;5",
            b"\x1b[M",
            b"\x1b[M  ",
            b"\x1bO",
            b"\x1b[1;",
            b"\xe9\x9b",
            b"\x1b[200~never",
            b"\x1b[201",
        ];
        for half in halves {
            let mut decoder = Decoder::default();
            decoder.bytes.extend(half);
            assert_eq!(decoder.next(Duration::ZERO), None, "{half:?}");
            while decoder.next(PASTE_SILENCE).is_some() {}
            decoder.bytes.push_back(b'y');
            let key = Event::Key(KeyEvent::from(KeyCode::Char('y')));
            assert_eq!(decoder.next(Duration::ZERO), Some(key), "{half:?}");
        }
        // A byte that no sequence may contain ends it at once.
        assert_eq!(keys(b"\x1b[<0;10\ry"), ["Enter", "Char('y')"]);
        assert_eq!(keys(b"\x1b[<0;10;5My"), ["Char('y')"]);
        assert_eq!(keys(b"\x1b[M!!!y"), ["Char('y')"]);
        assert_eq!(keys(b"\x1b[201~\xffy"), ["Char('y')"]);
    }

    proptest::proptest! {
        /// Whatever bytes come, nothing is left undecoded after a silence.
        #[test]
        fn nothing_stays_half_read(bytes in proptest::collection::vec(proptest::prelude::any::<u8>(), 0..40)) {
            keys(&bytes);
        }
    }
}

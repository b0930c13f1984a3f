//! Keys as a terminal sends them.
//!
//! A terminal sends bytes, and may send an incomplete sequence: bytes were lost, another program left mouse reports on,
//! or a paste was cut off. A sequence that does not end is given up after a moment, so that it never swallows a key. On
//! Unix, Ctrl-C is always a signal and never a key, even while nothing is read.

#[cfg(any(unix, test))]
mod decoder;

use std::time::Duration;

pub(super) use system::{Keys, Open, give_back, is_held, take};

/// The silence after which an unfinished sequence is given up. A lone escape byte is then the Esc key.
const SILENCE: Duration = Duration::from_millis(50);

#[cfg(unix)]
mod system {
    use std::io;
    use std::sync::{Mutex, PoisonError};
    use std::time::Duration;

    use crossterm::event::Event;
    use crossterm::terminal;
    use rustix::event::{PollFd, PollFlags, Timespec, poll};
    use rustix::io::{Errno, read};
    use rustix::stdio::stdin;
    use rustix::termios::{InputModes, LocalModes, OptionalActions, SpecialCodeIndex, Termios, tcgetattr, tcsetattr};

    use super::SILENCE;
    use super::decoder::Decoder;

    /// The terminal's settings before it was taken over.
    static FOUND: Mutex<Option<Termios>> = Mutex::new(None);

    /// The value that disables a control character.
    const NONE: u8 = if cfg!(target_os = "linux") { 0 } else { 0xff };

    /// Makes the terminal deliver keys one at a time, without echo.
    ///
    /// This holds between questions too, where echoed letters would land anywhere on a page that is being written.
    pub(in super::super) fn take() {
        let Ok(found) = tcgetattr(stdin()) else {
            return;
        };
        let mut modes = found.clone();
        modes.local_modes.remove(LocalModes::ICANON | LocalModes::ECHO | LocalModes::ECHONL | LocalModes::IEXTEN);
        // Keep the input typed before Ctrl-C.
        modes.local_modes.insert(LocalModes::ISIG | LocalModes::NOFLSH);
        modes.input_modes.remove(InputModes::ICRNL | InputModes::INLCR | InputModes::IGNCR);
        modes.input_modes.remove(InputModes::IXON | InputModes::ISTRIP | InputModes::BRKINT);
        modes.special_codes[SpecialCodeIndex::VMIN] = 1;
        modes.special_codes[SpecialCodeIndex::VTIME] = 0;
        // A suspended program would leave the terminal in this state.
        modes.special_codes[SpecialCodeIndex::VSUSP] = NONE;
        modes.special_codes[SpecialCodeIndex::VQUIT] = NONE;
        if tcsetattr(stdin(), OptionalActions::Now, &modes).is_ok() {
            *FOUND.lock().unwrap_or_else(PoisonError::into_inner) = Some(found);
        }
    }

    /// Restores the settings from before.
    pub(in super::super) fn give_back() {
        if let Some(found) = FOUND.lock().unwrap_or_else(PoisonError::into_inner).take() {
            let _ = tcsetattr(stdin(), OptionalActions::Now, &found);
        }
    }

    /// Whether the terminal is taken over.
    pub(in super::super) fn is_held() -> bool {
        FOUND.lock().unwrap_or_else(PoisonError::into_inner).is_some()
    }

    /// An open question. Keys need nothing more while it is open.
    pub(in super::super) struct Open;

    /// A reader of terminal events.
    #[derive(Debug, Default)]
    pub(in super::super) struct Keys {
        decoder: Decoder,
        silent: Duration,
        size: Option<(u16, u16)>,
    }

    impl Keys {
        /// Opens a question. It stays open until the result is dropped.
        #[allow(clippy::unused_self, clippy::unnecessary_wraps)] // the signature it has on other systems
        pub(in super::super) fn question(&self) -> io::Result<Open> {
            Ok(Open)
        }

        /// Returns the next event, or `None` after a moment without one.
        pub(in super::super) fn next(&mut self) -> io::Result<Option<Event>> {
            let size = terminal::size().ok();
            let before = std::mem::replace(&mut self.size, size);
            if let (Some(before), Some(now)) = (before, size)
                && before != now
            {
                return Ok(Some(Event::Resize(now.0, now.1)));
            }
            if let Some(event) = self.decoder.next(self.silent) {
                return Ok(Some(event));
            }
            if self.fill(SILENCE)? {
                self.silent = Duration::ZERO;
            } else {
                self.silent = self.silent.saturating_add(SILENCE);
            }
            Ok(self.decoder.next(self.silent))
        }

        /// Drops all waiting input, and returns whether there was a key or a paste in it.
        pub(in super::super) fn drop_waiting(&mut self) -> io::Result<bool> {
            while self.fill(Duration::ZERO)? {}
            let mut keys = false;
            while let Some(event) = self.decoder.next(Duration::MAX) {
                keys |= matches!(event, Event::Key(_) | Event::Paste(_));
            }
            self.silent = Duration::ZERO;
            Ok(keys)
        }

        /// Reads the bytes that arrive within this time, and returns whether there were any.
        fn fill(&mut self, within: Duration) -> io::Result<bool> {
            let within = Timespec { tv_sec: 0, tv_nsec: within.subsec_nanos().into() };
            let input = stdin();
            match poll(&mut [PollFd::new(&input, PollFlags::IN)], Some(&within)) {
                Ok(0) | Err(Errno::INTR) => return Ok(false),
                Ok(_) => {}
                Err(error) => return Err(error.into()),
            }
            let mut bytes = [0; 1024];
            match read(input, &mut bytes) {
                Ok(0) => Err(io::ErrorKind::UnexpectedEof.into()),
                Ok(count) => {
                    self.decoder.bytes.extend(&bytes[..count]);
                    Ok(true)
                }
                Err(Errno::INTR | Errno::AGAIN) => Ok(false),
                Err(error) => Err(error.into()),
            }
        }
    }
}

/// Other systems deliver whole keys instead of bytes, so no sequence can be incomplete.
#[cfg(not(unix))]
mod system {
    use std::io;

    use crossterm::event::{self, Event};
    use crossterm::terminal;

    use super::SILENCE;

    pub(in super::super) fn take() {}

    pub(in super::super) fn give_back() {
        let _ = terminal::disable_raw_mode();
    }

    pub(in super::super) fn is_held() -> bool {
        terminal::is_raw_mode_enabled().unwrap_or(false)
    }

    /// An open question. While it is open, keys come one at a time. Between questions, Ctrl-C ends the program.
    pub(in super::super) struct Open;

    impl Drop for Open {
        fn drop(&mut self) {
            give_back();
        }
    }

    #[derive(Debug, Default)]
    pub(in super::super) struct Keys;

    impl Keys {
        pub(in super::super) fn question(&self) -> io::Result<Open> {
            terminal::enable_raw_mode()?;
            Ok(Open)
        }

        pub(in super::super) fn next(&mut self) -> io::Result<Option<Event>> {
            if event::poll(SILENCE)? { event::read().map(Some) } else { Ok(None) }
        }

        pub(in super::super) fn drop_waiting(&mut self) -> io::Result<bool> {
            let _open = self.question()?;
            let mut keys = false;
            while event::poll(std::time::Duration::ZERO)? {
                keys |= matches!(event::read()?, Event::Key(_) | Event::Paste(_));
            }
            Ok(keys)
        }
    }
}

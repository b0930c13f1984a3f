//! Keys as a terminal sends them.
//!
//! A terminal sends bytes, and may send half of something: what it lost, a mouse that somebody left on, a paste that was
//! cut off. Whatever begins and does not end is given up after a moment, so that no key is ever waited for in vain. On
//! Unix Ctrl-C is no key but a signal at every moment, whatever is being read, worked out or written.

#[cfg(any(unix, test))]
mod decoder;

use std::time::Duration;

pub(super) use system::{Keys, Open, give_back, is_held, take};

/// After so long a silence what began does not go on: Esc alone is the key.
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

    /// The terminal as it was found.
    static FOUND: Mutex<Option<Termios>> = Mutex::new(None);

    /// No key.
    const NONE: u8 = if cfg!(target_os = "linux") { 0 } else { 0xff };

    /// From now on keys come one by one and are shown by nobody else. Between questions nobody has been asked, and letters
    /// would stand anywhere on a page that is just being written.
    pub(in super::super) fn take() {
        let Ok(found) = tcgetattr(stdin()) else {
            return;
        };
        let mut modes = found.clone();
        modes.local_modes.remove(LocalModes::ICANON | LocalModes::ECHO | LocalModes::ECHONL | LocalModes::IEXTEN);
        // What was typed ahead of Ctrl-C is still read.
        modes.local_modes.insert(LocalModes::ISIG | LocalModes::NOFLSH);
        modes.input_modes.remove(InputModes::ICRNL | InputModes::INLCR | InputModes::IGNCR);
        modes.input_modes.remove(InputModes::IXON | InputModes::ISTRIP | InputModes::BRKINT);
        modes.special_codes[SpecialCodeIndex::VMIN] = 1;
        modes.special_codes[SpecialCodeIndex::VTIME] = 0;
        // Stopped, it would leave the terminal as nobody else wants it.
        modes.special_codes[SpecialCodeIndex::VSUSP] = NONE;
        modes.special_codes[SpecialCodeIndex::VQUIT] = NONE;
        if tcsetattr(stdin(), OptionalActions::Now, &modes).is_ok() {
            *FOUND.lock().unwrap_or_else(PoisonError::into_inner) = Some(found);
        }
    }

    /// As it was found.
    pub(in super::super) fn give_back() {
        if let Some(found) = FOUND.lock().unwrap_or_else(PoisonError::into_inner).take() {
            let _ = tcsetattr(stdin(), OptionalActions::Now, &found);
        }
    }

    /// Whether it is to be given back.
    pub(in super::super) fn is_held() -> bool {
        FOUND.lock().unwrap_or_else(PoisonError::into_inner).is_some()
    }

    /// Nothing else is needed for a question.
    pub(in super::super) struct Open;

    /// Reads the terminal.
    #[derive(Debug, Default)]
    pub(in super::super) struct Keys {
        decoder: Decoder,
        silent: Duration,
        size: Option<(u16, u16)>,
    }

    impl Keys {
        /// A question is open as long as this lives.
        #[allow(clippy::unused_self, clippy::unnecessary_wraps)] // as elsewhere
        pub(in super::super) fn question(&self) -> io::Result<Open> {
            Ok(Open)
        }

        /// What comes next; nothing after a moment in which nothing came.
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

        /// Leaves out what is waiting; tells whether a key or a paste was in it.
        pub(in super::super) fn drop_waiting(&mut self) -> io::Result<bool> {
            while self.fill(Duration::ZERO)? {}
            let mut keys = false;
            while let Some(event) = self.decoder.next(Duration::MAX) {
                keys |= matches!(event, Event::Key(_) | Event::Paste(_));
            }
            self.silent = Duration::ZERO;
            Ok(keys)
        }

        /// Takes what comes within this time; false if nothing does.
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

/// Elsewhere keys are no bytes, and none is half there.
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

    /// Keys come one by one while it lives; between questions Ctrl-C ends the program.
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

//! Ctrl-C between questions, where it arrives as a signal instead of a key.

use std::sync::{Arc, Mutex, PoisonError};

/// The message to print on an interrupt.
#[derive(Clone)]
pub(super) struct Said(Arc<Mutex<String>>);

impl Said {
    /// Replaces the message.
    pub(super) fn set(&self, said: String) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = said;
    }

    #[cfg(unix)]
    fn now(&self) -> String {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }
}

/// Starts to watch for SIGINT and SIGTERM, which restore the terminal, print the message and exit. Called before the
/// first question, because a signal may arrive during any of them.
pub(super) fn watch(said: String) -> Said {
    let said = Said(Arc::new(Mutex::new(said)));
    #[cfg(unix)]
    {
        use std::io::Write as _;

        use signal_hook::consts::{SIGINT, SIGTERM};
        use tallywatt::interview::terminal;

        /// How long to wait at a time for an open question to end.
        const STEP: std::time::Duration = std::time::Duration::from_millis(250);
        let said = said.clone();
        // If this fails, Ctrl-C still ends the program and the answers are still kept.
        if let Ok(mut signals) = signal_hook::iterator::Signals::new([SIGINT, SIGTERM]) {
            std::thread::spawn(move || {
                if let Some(first) = signals.forever().next() {
                    // A menu that any signal wakes sends a SIGINT of its own.
                    let signal = if signals.pending().any(|it| it == SIGTERM) { SIGTERM } else { first };
                    if signal == SIGINT && terminal::interrupt() {
                        // An open question prints the message itself and keeps an answer just given. If it does not end
                        // the program, this thread does.
                        let mut steps = 0..4;
                        std::thread::sleep(STEP);
                        while terminal::is_asking() && steps.next().is_some() {
                            std::thread::sleep(STEP);
                        }
                    }
                    terminal::give_back();
                    let _ = anstream::stderr().write_all(said.now().as_bytes());
                    std::process::exit(128 + signal);
                }
            });
        }
    }
    said
}

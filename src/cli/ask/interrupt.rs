//! Ctrl-C between questions, where it is a signal and not a key.

use std::sync::{Arc, Mutex, PoisonError};

/// What is said when somebody breaks off.
#[derive(Clone)]
pub(super) struct Said(Arc<Mutex<String>>);

impl Said {
    /// From now on this.
    pub(super) fn set(&self, said: String) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = said;
    }

    #[cfg(unix)]
    fn now(&self) -> String {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }
}

/// On an interrupt, or when asked to end: gives the terminal back as it was, says this and ends.
/// From before the first question, for any question may be the one in which it comes.
pub(super) fn watch(said: String) -> Said {
    let said = Said(Arc::new(Mutex::new(said)));
    #[cfg(unix)]
    {
        use std::io::Write as _;

        use signal_hook::consts::{SIGINT, SIGTERM};
        use tallywatt::interview::terminal;

        /// What is under way may take so long.
        const STEP: std::time::Duration = std::time::Duration::from_millis(250);
        let said = said.clone();
        // Without it, Ctrl-C still ends the program, and the answers are kept all the same.
        if let Ok(mut signals) = signal_hook::iterator::Signals::new([SIGINT, SIGTERM]) {
            std::thread::spawn(move || {
                if let Some(signal) = signals.forever().next() {
                    if signal == SIGINT && terminal::interrupt() {
                        // Whoever is asked says it; and an answer that was just given is kept. Whatever does not end by
                        // that, this ends.
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

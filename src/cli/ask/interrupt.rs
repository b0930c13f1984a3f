//! Ctrl-C between questions, where it is a signal and not a key.

/// On an interrupt, or when asked to end: gives the terminal back as it was, says this and ends.
pub(super) fn watch(said: &str) {
    #[cfg(unix)]
    {
        use std::io::Write as _;

        use signal_hook::consts::{SIGINT, SIGTERM};
        let said = said.to_owned();
        // Without it, Ctrl-C still ends the program, and the answers are kept all the same.
        if let Ok(mut signals) = signal_hook::iterator::Signals::new([SIGINT, SIGTERM]) {
            std::thread::spawn(move || {
                if let Some(signal) = signals.forever().next() {
                    tallywatt::interview::terminal::give_back();
                    let _ = anstream::stderr().write_all(said.as_bytes());
                    std::process::exit(128 + signal);
                }
            });
        }
    }
    #[cfg(not(unix))]
    let _ = said;
}

//! A spinner for work that takes a while.

use std::sync::mpsc::{self, RecvTimeoutError};
use std::thread;
use std::time::Duration;

use indicatif::ProgressBar;
use tallywatt::words::Words;

/// How long work may take before the spinner appears.
const WHILE: Duration = Duration::from_millis(500);
/// How often the spinner moves.
const STEP: Duration = Duration::from_millis(120);

/// Runs `work`. On a terminal, a spinner appears after a while and says how to stop the program. Files are written at
/// the very end, so stopping earlier changes nothing.
#[allow(clippy::disallowed_methods)] // only the shell asks what kind of terminal this is
pub(super) fn during<T>(words: &Words, work: impl FnOnce() -> T) -> T {
    // A dumb terminal cannot redraw a line.
    if std::env::var_os("TERM").is_some_and(|term| term == "dumb") {
        return work();
    }
    let said = words.text("working");
    thread::scope(|scope| {
        let (end, ended) = mpsc::channel::<()>();
        scope.spawn(move || {
            if ended.recv_timeout(WHILE) == Err(RecvTimeoutError::Timeout) {
                let sign = ProgressBar::new_spinner().with_message(said);
                sign.enable_steady_tick(STEP);
                // Nothing is ever sent: this waits for the sender to be dropped.
                let _ = ended.recv();
                sign.finish_and_clear();
            }
        });
        let result = work();
        drop(end);
        result
    })
}

//! A sign that something is being done, where that takes a while.

use std::sync::mpsc::{self, RecvTimeoutError};
use std::thread;
use std::time::Duration;

use indicatif::ProgressBar;
use tallywatt::words::Words;

/// What takes no longer than this needs no sign.
const WHILE: Duration = Duration::from_millis(500);
/// How often the sign moves.
const STEP: Duration = Duration::from_millis(120);

/// Does some work and shows after a while, on a terminal, that it is being done and how to stop it. Files are
/// written at the very end, so that whoever stops it before finds everything as it was.
#[allow(clippy::disallowed_methods)] // the shell asks what kind of terminal this is
pub(super) fn during<T>(words: &Words, work: impl FnOnce() -> T) -> T {
    // On such a terminal nothing can be drawn over.
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
                // Nothing is ever sent: this waits for the other end to be dropped.
                let _ = ended.recv();
                sign.finish_and_clear();
            }
        });
        let result = work();
        drop(end);
        result
    })
}

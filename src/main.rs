//! The program: arguments and terminal in, exit status out. The library does the work and `words` does the talking.

mod cli;

use std::process::ExitCode;

fn main() -> ExitCode {
    cli::run()
}

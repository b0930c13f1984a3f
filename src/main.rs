//! The program: arguments and terminal in, exit status out. What is worked out, is worked out in
//! the library; what is said, is said by `words`.

mod cli;

use std::process::ExitCode;

fn main() -> ExitCode {
    cli::run()
}

//! The program as users meet it: its commands, its prints, and its questions in a real terminal.

// Tests prepare plain files and print what they counted.
#![allow(clippy::disallowed_methods, clippy::disallowed_macros)]

#[path = "program/commands.rs"]
mod commands;
#[path = "program/interview.rs"]
mod interview;
#[path = "program/languages.rs"]
mod languages;
#[path = "program/prints.rs"]
mod prints;

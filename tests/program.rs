//! The program as a person meets it: its commands, its paper, and its questions in a real
//! terminal.

// Tests set the stage with plain files, and say what they counted.
#![allow(clippy::disallowed_methods, clippy::disallowed_macros)]

#[path = "program/commands.rs"]
mod commands;
#[path = "program/interview.rs"]
mod interview;
#[path = "program/languages.rs"]
mod languages;
#[path = "program/prints.rs"]
mod prints;

//! Cargo follows the files that were built in, not those that are added later to the same folders:
//! a new label sheet, or a new message file, would wait for the next change of a source.

// Cargo is told by printing.
#![allow(clippy::disallowed_macros)]

fn main() {
    for folder in ["i18n", "label-templates"] {
        println!("cargo::rerun-if-changed={folder}");
    }
}
